"""A page's title: its name in display letters, a sentence or facts beside it, the page rule below.

Off the present the rule is dashed. In a practice season the word *practice* stands after the name.
"""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSize, QTimer
from PySide6.QtGui import QPaintEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.pages import Desk
from farmdesk.desk.theme import DISPLAY, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.ink import Ink, Run

HEIGHT_PX = 48  # from the band above to below the rule
SLOW_MS = 300  # a shorter wait is not worth a word


class Title(QWidget):
    """Set it with `say`; `reading` grows a line under it while something long is under way."""

    def __init__(self, desk: Desk, parent: QWidget) -> None:
        super().__init__(parent)
        self.desk = desk
        self.name, self.sentence, self.small, self.what_if = "", "", "", False
        self.marks_practice = True  # a page that leads out of the practice season does not
        self.facts: Sequence[Sequence[Run]] = ()
        self._share, self._reading = 0.0, ""
        self._slow = QTimer(self)
        self._slow.setSingleShot(True)
        self._slow.setInterval(SLOW_MS)
        self._slow.timeout.connect(self.update)
        desk.moved.connect(self.update)

    def say(
        self, name: str, sentence: str = "", facts: Sequence[Sequence[Run]] = (), *, small: str = "",
        what_if: bool = False,
    ) -> None:  # fmt: skip
        """Name, then a serif sentence or groups of figures parted by hairs; `small` is a check character."""
        self.name, self.sentence, self.facts, self.small, self.what_if = name, sentence, facts, small, what_if
        spoken = [name, self._practice(), sentence]
        spoken += [" ".join(run[0] for run in group) for group in facts]
        self.setAccessibleName(". ".join(part for part in spoken if part))
        self.update()

    def _practice(self) -> str:
        return self.tr("practice") if self.desk.practice and self.marks_practice else ""

    def reading(self, share: float, words: str = "") -> None:
        """Long work is under way: a share [0–1] done, in words; 1 ends it. Nothing shows in the first 300 ms."""
        if share < 1 and not self._reading:
            self._slow.start()
        self._share, self._reading = share, words if share < 1 else ""
        if share >= 1 or not self._slow.isActive():
            self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        px = look().px
        base, rule = px(32), px(46)
        with Ink(self) as ink:
            x = ink.text(0, base, self.name, 32, SEMIBOLD, family=DISPLAY)
            if self.small:
                x = ink.text(x + px(8), base, self.small, 21, color="ink2")
            for word in (self._practice(), self.tr("what if") if self.what_if else ""):
                if word:
                    x = ink.text(x + px(12), base, word, 18, family=SERIF, italic=True, color="ink2")
            x += px(24)
            if self.sentence:
                size = next(
                    (s for s in (18, 17, 16) if ink.width(self.sentence, s, family=SERIF) <= self.width() - x), 15
                )
                ink.text(x, base, ink.fitted(self.sentence, self.width() - x, size, family=SERIF), size, family=SERIF)
            for i, group in enumerate(self.facts):
                wide = sum(ink.width(t, s, w) for t, s, w, _ in group) + px(5) * (len(group) - 1)
                if x + wide + (px(14) if i else 0) > self.width():
                    break
                if i:
                    ink.upright(x, base - px(16), base + px(4), 1, "rule")
                    x += px(14)
                x = ink.runs(x, base, group, px(5)) + px(14)
            ink.level(0, self.width(), rule, 1.6, "ink", dashed=not self.desk.at_present)
            if self._reading and not self._slow.isActive():
                ink.level(0, self.width() * self._share, rule + 3, 2, "ink")
                wide = ink.width(self._reading, 14)
                ink.fill(self.width() - wide - 8, rule - px(20), wide + 8, px(18), "paper")
                ink.text(self.width(), rule - px(6), self._reading, 14, color="ink2", align="right")

    def sizeHint(self) -> QSize:
        return QSize(400, look().px(HEIGHT_PX))
