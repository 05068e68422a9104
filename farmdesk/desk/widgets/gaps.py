"""What is missing or doubtful: one line each, answered by Enter, or by `n` with "not measured"."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.pages import Desk
from farmdesk.desk.theme import SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.drawn import Drawn
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.twin import Table
from farmdesk.work.stories import Gap

LINE_PX, MOST = 22, 6


class GapList(Drawn):
    """`answered` carries the gap that Enter or a click was on."""

    answered = Signal(object)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.desk = desk
        self.gaps: Sequence[Gap] = ()
        self.at = 0
        self.setCursor(Qt.CursorShape.PointingHandCursor)

    def show_gaps(self, gaps: Sequence[Gap]) -> None:
        """These, in the order they were told."""
        self.gaps = gaps
        self.at = min(self.at, max(0, len(self._seen()) - 1))
        self.told()

    @property
    def current(self) -> Gap | None:
        """The gap that Enter would answer."""
        return self.gaps[self.at] if self.gaps else None

    def rows_for(self, columns: int = 2) -> int:
        """Lines needed in so many columns."""
        return -(-min(len(self.gaps), MOST) // columns)

    def sentence(self) -> str:
        say = self.desk.words.say
        if not self.gaps:
            return self.tr("Nothing is missing or doubtful.")
        return self.tr("Missing or doubtful: {gaps}").format(gaps=" ".join(f"{say(g.text)}." for g in self.gaps))

    def table(self) -> Table | None:
        say = self.desk.words.say
        kind = {"doubtful": self.tr("doubtful"), "missing": self.tr("missing")}
        rows = [[kind.get(g.kind, g.kind), say(g.text), g.lot, g.place] for g in self.gaps]
        return [self.tr("kind"), self.tr("what"), self.tr("lot"), self.tr("place")], rows

    def _columns(self) -> int:
        return 2 if self.width() > look().px(560) else 1

    def _seen(self) -> Sequence[Gap]:
        rows = max(1, int(self.height() / look().px(LINE_PX)))
        places = min(MOST, rows * self._columns())
        if rows == 1 and len(self.gaps) > places:
            places -= 1  # the last place says how many more
        return self.gaps[:places]

    def _spot(self, i: int) -> tuple[float, float, float]:
        """x, baseline and width of the i-th line."""
        px = look().px
        left = px(184)
        column, columns = i % self._columns(), self._columns()
        wide = (self.width() - left) / columns
        return left + column * wide, px(15) + (i // columns) * px(LINE_PX), wide - px(16)

    def paint(self, ink: Ink) -> None:
        px = look().px
        if not self.gaps:
            return
        ink.text(0, px(15), self.tr("Missing or doubtful"), 18, SEMIBOLD, family=SERIF)
        seen = self._seen()
        for i, gap in enumerate(seen):
            x, y, wide = self._spot(i)
            ink.swatch(x, y, "doubtful" if gap.kind == "doubtful" else "estimated")
            words = ink.fitted(self.desk.words.say(gap.text), wide - px(22), 15)
            ink.text(x + px(22), y, words, 15)
        more = len(self.gaps) - len(seen)
        if more > 0:
            low = self.height() < 2 * px(LINE_PX)
            x, y = self._spot(len(seen))[:2] if low else (0, px(15 + LINE_PX))
            ink.text(x, y, self.tr("and {n} more; t shows all").format(n=more), 14, color="ink2")

    def paint_focus(self, ink: Ink) -> None:
        if self.gaps:
            x, y, wide = self._spot(self.at)
            ink.frame(x - look().px(6), y - look().px(16), wide + look().px(6), look().px(LINE_PX), 3, "focus")

    def mousePressEvent(self, event: QMouseEvent) -> None:
        for i in range(len(self._seen())):
            x, y, wide = self._spot(i)
            point = event.position()
            if x <= point.x() <= x + wide and abs(point.y() - (y - look().px(5))) <= look().px(LINE_PX) / 2:
                self.at = i
                self.update()
                self.answered.emit(self.gaps[i])
                return

    def keyPressEvent(self, event: QKeyEvent) -> None:
        step = {Qt.Key.Key_Down: self._columns(), Qt.Key.Key_Up: -self._columns(), Qt.Key.Key_Right: 1,
                Qt.Key.Key_Left: -1}.get(Qt.Key(event.key()))  # fmt: skip
        if step and 0 <= self.at + step < len(self._seen()):
            self.at += step
            self.update()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.current is not None:
            self.answered.emit(self.current)
        elif step is None:
            event.ignore()
