"""One line that is asked for before something is done: a serif sentence on tint, a field, Enter or Esc."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QLineEdit, QWidget

from farmdesk.desk.theme import SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.ink import Ink

HIGH_PX = 84


class AskLine(QWidget):
    """Hidden until `ask`. `answered` carries what was typed; Esc gives it up (`left`)."""

    answered = Signal(str)
    left = Signal()

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.sentence = ""
        self.field = QLineEdit(self)
        self.field.returnPressed.connect(self._entered)
        self.hide()

    def ask(self, sentence: str, typed: str = "") -> None:
        """Open with a sentence."""
        self.sentence = sentence
        self.field.setText(typed)
        self.field.setAccessibleName(sentence)
        self.show()
        self.raise_()
        self.field.setFocus(Qt.FocusReason.OtherFocusReason)
        self.update()

    def refuse(self, sentence: str) -> None:
        """Say why what was typed cannot be; the field stays."""
        self.sentence = sentence
        self.field.setAccessibleName(sentence)
        self.update()

    def _entered(self) -> None:
        self.answered.emit(self.field.text())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.hide()
            self.left.emit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        px = look().px
        self.field.setGeometry(px(16), px(40), min(self.width() - px(240), px(560)), px(34))

    def paintEvent(self, event: QPaintEvent) -> None:
        px = look().px
        with Ink(self) as ink:
            ink.fill(0, 0, self.width(), self.height(), "tint")
            ink.frame(0, 0, self.width(), self.height(), 1.6, "today")
            sentence = ink.fitted(self.sentence, self.width() - px(32), 17, SEMIBOLD, SERIF)
            ink.text(px(16), px(26), sentence, 17, SEMIBOLD, family=SERIF)
            hint = self.tr("Enter writes it; Esc goes back")
            ink.text(self.field.geometry().right() + px(16), px(63), hint, 14, color="ink2")
