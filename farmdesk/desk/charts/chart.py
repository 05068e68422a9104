"""A chart on a page: heading, curves, the sentence that says it, and what it rests on.

Keys while it has the focus: left and right move along, + and − come closer and step back, Home shows all.
`toggle_twin` shows the same points as a table. Its accessible name is its sentence.
"""

from __future__ import annotations

from PySide6.QtCore import QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.charts.paint import PAN_FRAC, ZOOM_FACTOR, Plot
from farmdesk.desk.pages import Desk
from farmdesk.desk.tables.points import heads_of, rows_of
from farmdesk.desk.theme import SERIF, look
from farmdesk.desk.widgets.ink import Ink, Measure
from farmdesk.desk.widgets.twin import Table, Twinned
from farmdesk.work.figures import Figure

HEAD_PX = 24
LEAST_PLOT_PX = 96  # a chart lower than this tells less than its sentence


class Chart(Twinned):
    """Made once a page; `show_figure` gives it another figure."""

    looked = Signal()  # the view was moved, or turned between curves and table

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.desk = desk
        self.figure: Figure | None = None
        self.note = ""  # stands after the subtitle: "f next vessel"
        self.plot = Plot(self)
        self.plot.setFocusProxy(self)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        look().changed.connect(self.wear)
        self.wear()

    def show_figure(self, figure: Figure | None) -> None:
        """Show a figure. The same chart with newer readings keeps the view somebody has moved it to."""
        before, self.figure = self.figure, figure
        same = before is not None and figure is not None and _name(before) == _name(figure)
        self.plot.show_figure(figure, self.desk.words, self.desk.time, keep=same)
        self.setAccessibleName(self.sentence)
        self.setAccessibleDescription(self.desk.words.say(figure.rests_on) if figure and figure.rests_on else "")
        self.fill_twin()
        self._lay_out()

    @property
    def sentence(self) -> str:
        """What the chart says, in words."""
        if self.figure is None:
            return self.tr("There is nothing to draw yet.")
        under = self.figure.under
        return " ".join(self.desk.words.say(f.sentence) for f in (self.figure, under) if f is not None)

    def toggle_twin(self) -> None:
        """Turn from the curves to their points as a table, and back."""
        super().toggle_twin()
        self.looked.emit()

    def table(self) -> Table | None:
        """The points of all curves; None without a figure."""
        if self.figure is None:
            return None
        return heads_of(self.figure, self.desk.words), rows_of(self.figure, self.desk.words, self.desk.time)

    def table_name(self) -> str:
        """Its sentence, and that it is a table."""
        return self.tr("{sentence} As a table.").format(sentence=self.sentence)

    def table_box(self) -> QRect:
        """Where the curves stand; head and words stay."""
        return self.plot.geometry()

    def wear(self) -> None:
        """Take the colours and sizes in force."""
        self.plot.wear()
        self._lay_out()
        self.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        moves = {
            Qt.Key.Key_Left: lambda: self.plot.pan(-PAN_FRAC),
            Qt.Key.Key_Right: lambda: self.plot.pan(PAN_FRAC),
            Qt.Key.Key_Plus: lambda: self.plot.zoom(ZOOM_FACTOR),
            Qt.Key.Key_Minus: lambda: self.plot.zoom(1 / ZOOM_FACTOR),
            Qt.Key.Key_Home: self.plot.whole,
        }
        move = moves.get(Qt.Key(event.key()))
        if move is None or self.figure is None or event.modifiers() & Qt.KeyboardModifier.AltModifier:
            event.ignore()
            return
        move()
        self.looked.emit()

    def _words_below(self, ink: Measure) -> list[tuple[str, float, str, str]]:
        """The lines under the curves: text, size, family, colour."""
        if self.figure is None:
            return []
        lines: list[tuple[str, float, str, str]]
        lines = [(row, 15, SERIF, "ink") for row in ink.lines(self._said(), self.width(), 15, family=SERIF)]
        if self.figure.rests_on is not None:
            rests_on = self.desk.words.say(self.figure.rests_on)
            lines += [(row, 14, "", "ink2") for row in ink.lines(rests_on, self.width(), 14)]
        return lines

    def _said(self) -> str:
        assert self.figure is not None
        return self.desk.words.say(self.figure.sentence)

    def _lay_out(self) -> None:
        measure = Measure()
        below = sum(measure.leading(size) for _, size, _, _ in self._words_below(measure)) + look().px(4)
        top = look().px(HEAD_PX)
        box = QRectF(0, top, self.width(), max(0.0, self.height() - top - below)).toRect()
        self.plot.setGeometry(box)
        self.place_twin()
        self.update()

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._lay_out()

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self._ring()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self._ring()

    def _ring(self) -> None:
        self.plot.ringed = self.hasFocus()
        self.plot.viewport().update()

    def paintEvent(self, event: QPaintEvent) -> None:
        px = look().px
        with Ink(self) as ink:
            if self.figure is None:
                return
            words = self.desk.words
            subtitle = words.say(self.figure.subtitle) if self.figure.subtitle else ""
            title = words.say(self.figure.title)
            note = f"{subtitle}   {self.note}" if self.note else subtitle
            room = self.width() - ink.width(title, 18, 600, SERIF) - px(9)
            ink.heading(0, px(17), title, ink.fitted(note, room, 14))
            y: float = self.plot.geometry().bottom() + px(4)
            for text, size, family, color in self._words_below(ink):
                y += ink.leading(size)
                if family:
                    ink.text(0, y - px(3), text, size, family=family, color=color)
                else:
                    ink.text(0, y - px(3), text, size, color=color)

    def minimumSizeHint(self) -> QSize:
        return QSize(look().px(220), look().px(HEAD_PX + LEAST_PLOT_PX + 44))

    def sizeHint(self) -> QSize:
        return QSize(look().px(480), look().px(260))


def _name(figure: Figure) -> tuple[str, str, str]:
    """What makes a chart the same one with newer readings."""
    return str(figure.title), str(figure.subtitle), figure.x_kind
