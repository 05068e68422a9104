"""Buttons that are words: the key stands first, then what it does."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QPaintEvent
from PySide6.QtWidgets import QAbstractButton, QWidget

from farmdesk.desk.pages import Action
from farmdesk.desk.theme import BOLD, SEMIBOLD, look
from farmdesk.desk.widgets.ink import Ink, Measure

HIGH_PX = 32


class KeyButton(QAbstractButton):
    """`p day sheet`: a press or the letter does it."""

    def __init__(self, action: Action, parent: QWidget) -> None:
        super().__init__(parent)
        self.action = action
        self.setText(action.words)
        self.setAccessibleName(action.words)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.clicked.connect(action.run)

    def sizeHint(self) -> QSize:
        m, px = Measure(), look().px
        wide = m.width(self.action.key, 15, BOLD) + m.width(" " + self.action.words, 15, SEMIBOLD)
        return QSize(round(wide + px(14)), px(HIGH_PX))

    def paintEvent(self, event: QPaintEvent) -> None:
        px = look().px
        with Ink(self) as ink:
            base = self.height() / 2 + px(5)
            x = ink.text(px(4), base, self.action.key, 15, BOLD)
            ink.level(px(4), x, base + 3, 1.6, "ink")
            ink.text(x, base, " " + self.action.words, 15, SEMIBOLD)
            if self.underMouse():
                ink.level(px(4), self.width() - px(8), base + 3, 1.6, "ink")
            if self.hasFocus():
                ink.frame(0, 0, self.width(), self.height(), 3, "focus")


class KeyRow(QWidget):
    """A page's actions in a row."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.buttons: list[KeyButton] = []

    def show_actions(self, actions: Sequence[Action]) -> None:
        """Make one button for each."""
        for button in self.buttons:
            button.hide()
            button.deleteLater()
        self.buttons = [KeyButton(action, self) for action in actions]
        x = 0
        for button in self.buttons:
            size = button.sizeHint()
            button.setGeometry(x, 0, size.width(), size.height())
            button.show()
            x += size.width() + look().px(4)
        self.resize(x, look().px(HIGH_PX))
