"""A few words of which one is chosen: buttons in a row, the chosen one in ink."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPaintEvent
from PySide6.QtWidgets import QAbstractButton, QButtonGroup, QWidget

from farmdesk.desk.theme import SEMIBOLD, look
from farmdesk.desk.widgets.ink import Ink, Measure

HIGH_PX = 34


class Word(QAbstractButton):
    """One of the words."""

    def __init__(self, value: str, words: str, parent: QWidget) -> None:
        super().__init__(parent)
        self.value = value
        self.setText(words)
        self.setCheckable(True)
        self.setCursor(Qt.CursorShape.PointingHandCursor)

    def sizeHint(self) -> QSize:
        px = look().px
        return QSize(round(Measure().width(self.text(), 15, SEMIBOLD) + px(24)), px(HIGH_PX))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.text().isalnum():
            event.ignore()
        else:
            super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        px, on = look().px, self.isChecked()
        with Ink(self) as ink:
            ground = "ink" if on else "band" if self.underMouse() else "sheet"
            ink.fill(0, 0, self.width(), self.height(), ground)
            ink.frame(0, 0, self.width(), self.height(), 1, "ink")
            color = "paper" if on else "ink"
            ink.text(self.width() / 2, self.height() / 2 + px(5), self.text(), 15, SEMIBOLD, color, align="middle")
            if self.hasFocus():
                ink.frame(0, 0, self.width(), self.height(), 3, "focus")
                ink.frame(3, 3, self.width() - 6, self.height() - 6, 1, "paper")


class Choices(QWidget):
    """`chosen` carries the value that a hand chose."""

    chosen = Signal(str)

    def __init__(self, name: str, parent: QWidget) -> None:
        super().__init__(parent)
        self.name = name
        self.room_px = 0  # wider than this it goes on in a second line; 0: never
        self.setAccessibleName(name)
        self._group = QButtonGroup(self)
        self._group.buttonClicked.connect(self._clicked)
        self._words: list[Word] = []

    def offer(self, ways: Sequence[tuple[str, str]], value: str) -> None:
        """Offer (value, words), one of them chosen already."""
        for word in self._words:
            self._group.removeButton(word)
            word.hide()
            word.deleteLater()
        self._words = [Word(way, words, self) for way, words in ways]
        for word in self._words:
            word.setAccessibleName(f"{self.name}: {word.text()}")
            self._group.addButton(word)
            word.setChecked(word.value == value)
            word.show()
        self._lay_out()

    def choose(self, value: str) -> None:
        """Show another one as chosen; nobody is told."""
        for word in self._words:
            word.setChecked(word.value == value)

    def take_keys(self) -> None:
        """Give the keys to the chosen word."""
        for word in self._words:
            if word.isChecked():
                word.setFocus(Qt.FocusReason.OtherFocusReason)

    def has_keys(self) -> bool:
        """Whether one of the words has the keys."""
        return any(word.hasFocus() for word in self._words)

    def fit(self, room_px: int) -> None:
        """Go on in a second line where the words need more than a width [px]."""
        self.room_px = room_px
        self._lay_out()

    def _clicked(self, word: Word) -> None:
        self.chosen.emit(word.value)

    def _lay_out(self) -> None:
        px = look().px
        x, y, widest = 0, px(22), 0
        for word in self._words:
            size = word.sizeHint()
            if self.room_px and x + size.width() > self.room_px:
                x, y = 0, y + px(HIGH_PX) - 1
            word.setGeometry(x, y, size.width(), size.height())
            x += size.width() - 1
            widest = max(widest, x)
        self.resize(max(widest + 1, round(Measure().width(self.name, 14)) + 4), y + px(HIGH_PX))

    def paintEvent(self, event: QPaintEvent) -> None:
        with Ink(self) as ink:
            ink.text(0, look().px(14), self.name, 14, color="ink2")
