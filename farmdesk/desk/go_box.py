"""The go box: it shows what is being typed anywhere, and where Enter would lead."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPaintEvent
from PySide6.QtWidgets import QApplication, QLineEdit, QWidget

from farmdesk.desk.theme import SEMIBOLD, look
from farmdesk.desk.widgets.ink import Ink

WAIT_MS = 600  # a letter that is a command and may begin a place to go waits so long for a second one


class GoBox(QLineEdit):
    """`entered` carries what was typed; `acted` a command letter that was left alone; `left` gives the keys back."""

    entered = Signal(str)
    acted = Signal(str)
    left = Signal()
    back = Signal()

    def __init__(self, leads: Callable[[str], bool], parent: QWidget | None = None) -> None:
        """`leads` says whether what was typed so far may lead somewhere."""
        super().__init__(parent)
        self.leads, self.opens = leads, False
        self.setFocusPolicy(Qt.FocusPolicy.ClickFocus)
        self.setAccessibleName(self.tr("Go to a lot, bed, day or page"))
        self.hint, self.command, self.note, self.off_present = "", "", "", False
        self.wait = QTimer(self)
        self.wait.setSingleShot(True)
        self.wait.setInterval(WAIT_MS)
        self.wait.timeout.connect(self._waited)
        self.textEdited.connect(self._edited)

    def begin(self, letter: str, command: str = "", *, opens: bool = False) -> None:
        """Take the first letter typed anywhere; `command` are the words of what it does when left alone.

        Where it `opens` a box, and what is typed on leads nowhere, it does so at once and the box takes the rest.
        """
        self.opens = opens
        self.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.setText(letter)
        self.command = command
        self.textEdited.emit(letter)
        if command:
            self.command, self.hint = command, command
            self.wait.start()
        self.update()

    def say(self, hint: str) -> None:
        """Where Enter would lead, or why nowhere."""
        if not self.command:
            self.hint = hint
            self.update()

    def empty(self) -> None:
        """Nothing is being typed any more."""
        self.wait.stop()
        self.command = self.hint = ""
        self.opens = False
        self.clear()

    def _edited(self, text: str) -> None:
        if len(text) != 1:
            self.wait.stop()
            self.command = ""

    def _waited(self) -> None:
        letter = self.text()
        self.empty()
        self.left.emit()
        self.acted.emit(letter)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            if self.command:
                self._waited()
            elif self.text():
                self.entered.emit(self.text())
            elif self.off_present:
                self.back.emit()
        elif key == Qt.Key.Key_Escape:
            self.empty()
            self.left.emit()
        elif self.opens and self._goes_on(event.text()):
            self._hand_on(self.text() + event.text())
        else:
            super().keyPressEvent(event)

    def _goes_on(self, text: str) -> bool:
        """Whether what is typed was never meant to go anywhere, but for the box that its first letter opens."""
        if not text or not text.isprintable() or not self.text() or self.cursorPosition() < len(self.text()):
            return False
        return not self.leads(self.text() + text)

    def _hand_on(self, typed: str) -> None:
        self.setText(typed[0])
        self._waited()
        box = QApplication.focusWidget()
        if isinstance(box, QLineEdit) and box is not self:
            for letter in typed[1:]:
                key = ord(letter.upper()) if letter.isascii() else 0
                QApplication.sendEvent(
                    box, QKeyEvent(QEvent.Type.KeyPress, key, Qt.KeyboardModifier.NoModifier, letter)
                )

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if self.off_present and not self.text():
            self.back.emit()
            return
        super().mousePressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        px = look().px
        with Ink(self) as ink:
            right, base = self.width() - px(10), round(self.height() / 2 + px(5))
            if self.text():
                room = right - px(20) - ink.width(self.text(), 15)
                if self.hint and room > px(20):
                    ink.text(right, base, ink.fitted(self.hint, room, 14), 14, color="ink2", align="right")
            elif self.off_present:
                ink.text(px(10), base, self.tr("back to now"), 15, SEMIBOLD)
            elif self.note:
                rows = ink.lines(self.note, self.width() - px(16), 13)[:2]
                for i, row in enumerate(rows):
                    ink.text(px(8), base + (i - (len(rows) - 1) / 2) * px(15), row, 13, color="ink2")
            else:
                words = ink.fitted(self.tr("lot, bed, day or page"), self.width() - px(20), 15)
                ink.text(px(9), base, words, 15, color="ink2")
