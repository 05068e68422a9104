"""How a lot's numbers were worked out, in the place of its river and numbers; left and right turn, Esc closes."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.pages import Desk
from farmdesk.desk.theme import BOLD, REGULAR, SANS, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.drawn import Drawn
from farmdesk.desk.widgets.ink import Ink, Measure
from farmdesk.desk.widgets.twin import Table

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm
    from farmdesk.work.worked_out import WorkedOut

ROW_PX, NAME_PX, GUTTER_PX, HEAD_PX, PAD_PX = 19, 160, 28, 28, 8


class WorkedOutPane(Drawn):
    """One thing at a time of what was worked out of a lot."""

    changed = Signal()  # it opened, closed, or shows something of another height
    closed = Signal()

    def __init__(self, desk: Desk, parent: QWidget) -> None:
        super().__init__(parent)
        self.desk = desk
        self.code = ""
        self.all: Sequence[WorkedOut] = ()
        self.held = 0
        self.hide()

    def turn(self, code: str) -> None:
        """Open for a lot, or close where it is open."""
        if self.code:
            self.close_up()
        else:
            self._ask(code, self._open)

    def follow(self, code: str) -> None:
        """The page shows a lot, or newer facts of one: stay open for the same lot alone."""
        if self.code == code:
            self._ask(code, self._show)
        elif self.code:
            self._away()

    def close_up(self) -> None:
        """Close, and give the keys back."""
        self._away()
        self.closed.emit()

    def _away(self) -> None:
        self.code, self.all, self.held = "", (), 0
        self.hide()
        self.changed.emit()

    def _ask(self, code: str, show: Callable[[tuple[str, Sequence[WorkedOut]]], None]) -> None:
        at_utc_s = self.desk.as_of

        def query(farm: OpenFarm) -> tuple[str, Sequence[WorkedOut]]:
            from farmdesk.work.worked_out import worked_out

            return code, worked_out(farm, code, at_utc_s)

        self.desk.lanes.ask(query, show, self._refused)

    @Slot(object)
    def _open(self, story: tuple[str, Sequence[WorkedOut]]) -> None:
        self.code, self.held = story[0], 0
        self._show(story)
        self.show()
        self.changed.emit()
        self.setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot(object)
    def _show(self, story: tuple[str, Sequence[WorkedOut]]) -> None:
        if story[0] != self.code:
            return  # another lot was opened meanwhile
        self.all = story[1]
        self.held = min(self.held, max(0, len(self.all) - 1))
        self.told()
        self.changed.emit()

    @Slot(object)
    def _refused(self, error: Exception) -> None:
        self.desk.lanes.stray(error)

    # words

    def sentence(self) -> str:
        if not self.all:
            return self.tr("Nothing of this lot was worked out; all of it was measured.")
        one, say = self.all[self.held], self.desk.words.say
        rows = "; ".join(f"{say(name)}: {say(figure)}" for name, figure in one.inputs)
        return f"{say(one.head)}. {say(one.formula)} {rows}. {say(one.source)} {say(one.holds)}"

    def table(self) -> Table | None:
        if not self.all:
            return None
        say, one = self.desk.words.say, self.all[self.held]
        rows = [[say(name), say(figure)] for name, figure in one.inputs]
        more = [[self.tr("source"), say(one.source)], [self.tr("holds"), say(one.holds)]]
        return [say(one.head), ""], [[self.tr("formula"), say(one.formula)], *rows, *more]

    # room and painting

    def height_for(self, width: int) -> int:
        """How tall [px] it is in a width [px]."""
        return round(self._draw(None, width)) + look().px(6)

    def paint(self, ink: Ink) -> None:
        self._draw(ink, self.width())

    def _draw(self, ink: Ink | None, width: int) -> float:
        """Write everything, or only count how far down it goes."""
        px, say, measure = look().px, self.desk.words.say, ink or Measure()
        y: float = px(22)
        near, far = px(PAD_PX), width - px(PAD_PX)
        if ink:
            x = ink.text(near, y, self.tr("How was this worked out?"), 18, SEMIBOLD, family=SERIF) + px(18)
            for i, one in enumerate(self.all):
                end = ink.text(x, y, say(one.head), 15, BOLD if i == self.held else SEMIBOLD,
                               "ink" if i == self.held else "ink2")  # fmt: skip
                if i == self.held:
                    ink.level(x, end, y + 4, 1.6, "ink")
                x = end + px(18)
        if not self.all:
            return self._lines(ink, measure, near, y + px(HEAD_PX), far - near, self.sentence(), SERIF)
        one = self.all[self.held]
        left = round(width * 0.48) - px(GUTTER_PX // 2)
        right = left + px(GUTTER_PX)
        top = y + px(HEAD_PX)
        y = self._lines(ink, measure, near, top, left - near, say(one.formula), SERIF) + px(8)
        y = self._named(ink, measure, near, y, left, self.tr("holds"), say(one.holds))
        beside = top
        for name, figure in one.inputs:
            if ink:
                ink.text(right, beside, ink.fitted(say(name), px(NAME_PX), 14), 14, color="ink2")
            x = right + px(NAME_PX + 8)
            beside = self._lines(ink, measure, x, beside, far - x, say(figure))
        beside = self._named(ink, measure, right, beside + px(8), far, self.tr("source"), say(one.source))
        if ink:
            ink.upright((left + right) / 2, top - px(14), max(y, beside) - px(14), 1, "hair")
        return max(y, beside) - px(8)

    def _named(self, ink: Ink | None, measure: Measure, x: float, y: float, far: float, name: str, said: str) -> float:
        """Write a text from one edge to another behind its name."""
        if ink:
            ink.text(x, y, name, 14, color="ink2")
        x += look().px(54)
        return self._lines(ink, measure, x, y, far - x, said, SANS, 14)

    def _lines(
        self, ink: Ink | None, measure: Measure, x: float, y: float, width: float, said: str, family: str = SANS,
        size: int = 15,
    ) -> float:  # fmt: skip
        """Write a text in a width from a baseline on; answers the next baseline."""
        for row in measure.lines(said, width, size, REGULAR, family):
            if ink:
                ink.text(x, y, row, size, family=family)
            y += look().px(ROW_PX if size > 14 else ROW_PX - 2)
        return y

    def keyPressEvent(self, event: QKeyEvent) -> None:
        step = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}.get(Qt.Key(event.key()))
        if event.key() == Qt.Key.Key_Escape:
            self.close_up()
        elif step and self.all:
            self.held = (self.held + step) % len(self.all)
            self.told()
            self.changed.emit()
        else:
            event.ignore()
