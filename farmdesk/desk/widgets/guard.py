"""A question under the box it is about: one sentence with the numbers, answers 1, 2, 3, and 0 goes back.

It pushes the rows below it down and covers nothing. Where a value cannot be at all there is no answer but
to go back, and the sentence says why.
"""

from __future__ import annotations

from PySide6.QtCore import QPointF, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPaintEvent, QPolygonF, QResizeEvent
from PySide6.QtWidgets import QAbstractButton, QWidget

from farmdesk.desk.theme import BOLD, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.ink import Ink, Measure
from farmdesk.errors import Question
from farmdesk.text import Words

HIGH_PX, SAID_PX, NOTCH_PX, ANSWER_PX = 96, 48, 10, 34
LEAVE = (Qt.Key.Key_Escape, Qt.Key.Key_Backspace)
BACK = "back"  # an answer of this value goes back, like 0


class AnswerBox(QAbstractButton):
    """One numbered answer."""

    def __init__(self, number: int, value: str, words: str, parent: QWidget) -> None:
        super().__init__(parent)
        self.number, self.value = number, value
        self.setText(words)
        self.setAccessibleName(f"{number} {words}")
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)

    def sizeHint(self) -> QSize:
        m, px = Measure(), look().px
        return QSize(
            round(m.width(str(self.number), 17, BOLD) + m.width(self.text(), 15, SEMIBOLD) + px(38)), px(ANSWER_PX)
        )

    def paintEvent(self, event: QPaintEvent) -> None:
        px = look().px
        with Ink(self) as ink:
            ink.fill(0, 0, self.width(), self.height(), "band" if self.underMouse() else "sheet")
            ink.frame(0, 0, self.width(), self.height(), 1.2)
            x = ink.text(px(12), self.height() / 2 + px(6), str(self.number), 17, BOLD)
            ink.text(x + px(13), self.height() / 2 + px(6), self.text(), 15, SEMIBOLD)


class Guard(QWidget):
    """Hidden until `ask` or `refuse`. `answered` carries the chosen value; `went_back` that there is none."""

    answered = Signal(str)
    went_back = Signal()

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.sentence = ""
        self.notch_x = 0
        self.boxes: list[AnswerBox] = []
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.hide()

    def ask(self, question: Question, words: Words, notch_x: int, *, take_keys: bool = True) -> None:
        """Ask, pointing up to x. A question that nobody's typing has raised leaves the keys where they are."""
        answers = [(a.value, words.say(a.text)) for a in question.answers if a.value != BACK]
        self._open(words.say(question.text), answers, notch_x, take_keys)

    def refuse(self, sentence: str, notch_x: int) -> None:
        """Say why a value cannot be."""
        self._open(sentence, [], notch_x)

    def height_px(self) -> int:
        """How much room it takes now."""
        if self.isHidden():
            return 0
        rows = len(Measure().lines(self.sentence, self.width() - look().px(120), 17, SEMIBOLD, SERIF))
        more = round(Measure().leading(17)) * max(0, rows - 1)
        return look().px(NOTCH_PX) + look().px(HIGH_PX if self.boxes else SAID_PX) + more

    def close_up(self) -> None:
        """Take the question away."""
        self.hide()
        for box in self.boxes:
            box.hide()
            box.deleteLater()
        self.boxes = []

    def _open(self, sentence: str, answers: list[tuple[str, str]], notch_x: int, take_keys: bool = True) -> None:
        self.close_up()
        self.sentence, self.notch_x = sentence, notch_x
        self.boxes = [AnswerBox(i + 1, value, said, self) for i, (value, said) in enumerate(answers)]
        for box in self.boxes:
            box.clicked.connect(self._clicked)
            box.show()
        told = [sentence, *(box.accessibleName() for box in self.boxes), self.tr("0 goes back")]
        self.setAccessibleName(". ".join(told))
        self.show()
        self._lay_out()
        if take_keys:
            self.setFocus(Qt.FocusReason.OtherFocusReason)

    def _clicked(self) -> None:
        box = self.sender()
        assert isinstance(box, AnswerBox)  # only answers are connected here
        self._choose(box.value)

    def _choose(self, value: str) -> None:
        self.close_up()
        self.answered.emit(value)

    def _back(self) -> None:
        self.close_up()
        self.went_back.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        typed = event.text()
        chosen = next((box for box in self.boxes if typed == str(box.number)), None)
        if chosen is not None:
            self._choose(chosen.value)
        elif typed == "0" or event.key() in (LEAVE if self.boxes else (*LEAVE, Qt.Key.Key_Return, Qt.Key.Key_Enter)):
            self._back()
        # any other key is no answer, and must not type into what lies behind

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._lay_out()

    def _lay_out(self) -> None:
        px = look().px
        x, top = px(16), self.height() - px(ANSWER_PX + 12)
        for box in self.boxes:
            size = box.sizeHint()
            box.setGeometry(x, top, size.width(), size.height())
            x += size.width() + px(12)

    def paintEvent(self, event: QPaintEvent) -> None:
        px = look().px
        notch, width, height = px(NOTCH_PX), self.width(), self.height()
        with Ink(self) as ink:
            ink.fill(0, notch, width, height - notch, "tint")
            ink.frame(0, notch, width, height - notch, 1.6, "today")
            at = min(max(self.notch_x, px(16)), width - px(16))
            ink.shape(
                QPolygonF([QPointF(at - notch, notch + 2), QPointF(at, 1), QPointF(at + notch, notch + 2)]), "tint"
            )
            ink.line(at - notch, notch + 1, at, 1, 1.6, "today")
            ink.line(at, 1, at + notch, notch + 1, 1.6, "today")
            ink.wrapped(px(16), notch + px(27), width - px(120), self.sentence, 17, SEMIBOLD, family=SERIF)
            base = height - px(24) if self.boxes else notch + px(27)
            ink.text(width - px(16), base, self.tr("0 goes back"), 14, color="ink2", align="right")
