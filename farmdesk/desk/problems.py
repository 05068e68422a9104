"""Trouble, said calmly: one sentence on tint above the ruler, or a list of faults, all at once."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPaintEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.theme import SERIF, look
from farmdesk.desk.widgets.ink import Ink, Measure
from farmdesk.errors import FarmError, Problem
from farmdesk.text import Words


def sentence(error: FarmError, words: Words) -> str:
    """What went wrong and what to do next, in the person's language."""
    return " ".join(words.say(text) for text in (error.text, error.hint) if text)


def lines(problems: Sequence[Problem], words: Words) -> list[str]:
    """One line for each fault, with the place where it stands."""
    return [f"{problem.where}: {words.say(problem.text)}" for problem in problems]


class Notice(QWidget):
    """One calm sentence; Esc or a click takes it away. It pushes the page up and covers nothing."""

    gone = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.sentence = ""
        self.hide()

    def say(self, sentence: str) -> None:
        """Show a sentence, or nothing."""
        self.sentence = sentence
        self.setAccessibleName(sentence)
        self.setVisible(bool(sentence))
        self.update()

    def height_for(self, width: int) -> int:
        """How high the sentence stands at a width [px]."""
        rows = Measure().lines(self.sentence, width - look().px(140), 17, family=SERIF)
        return look().px(20) + round(len(rows) * look().px(23)) if rows else 0

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self.gone.emit("")

    def keyPressEvent(self, event: QKeyEvent) -> None:
        event.ignore()

    def paintEvent(self, event: QPaintEvent) -> None:
        px = look().px
        with Ink(self) as ink:
            ink.fill(0, 0, self.width(), self.height(), "tint")
            ink.level(0, self.width(), 1, 1.6, "today")
            ink.wrapped(px(20), px(26), self.width() - px(140), self.sentence, 17, family=SERIF)
            ink.text(self.width() - px(20), px(26), self.tr("Esc closes this"), 14, color="ink2", align="right")
