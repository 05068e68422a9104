"""A picture on a page: it can say itself in one sentence, and be read as a table behind the key `t`."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QFocusEvent, QKeyEvent, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.twin import Twinned


class Drawn(Twinned):
    """Subclasses give `paint(ink)`, `sentence()` and `table()`; call `told()` after a new story."""

    def __init__(self, parent: QWidget | None = None, *, keys: bool = True) -> None:
        super().__init__(parent)
        if keys:
            self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def paint(self, ink: Ink) -> None:
        """Draw it."""
        raise NotImplementedError

    def sentence(self) -> str:
        """The picture in one factual sentence."""
        return ""

    def table_name(self) -> str:
        """The same sentence."""
        return self.sentence()

    def told(self) -> None:
        """A new story has come: name, table and picture follow."""
        self.setAccessibleName(self.sentence())
        self.fill_twin()
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        with Ink(self) as ink:
            self.paint(ink)
            if self.hasFocus() and self._twin is None:
                self.paint_focus(ink)

    def paint_focus(self, ink: Ink) -> None:
        """The focus ring; a picture with parts rings the part instead."""
        ink.frame(0, 0, self.width(), self.height(), 3, "focus")

    def resizeEvent(self, event: QResizeEvent) -> None:
        self.place_twin()

    def focusInEvent(self, event: QFocusEvent) -> None:
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        self.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        event.ignore()
