"""A picture on a page: it can say itself in one sentence, and be read as a table behind the key `t`."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtGui import QFocusEvent, QKeyEvent, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.tables.rows import Rows
from farmdesk.desk.widgets.ink import Ink

Table = tuple[Sequence[str], Sequence[Sequence[str]]]  # heads, rows


class Drawn(QWidget):
    """Subclasses give `paint(ink)`, `sentence()` and `table()`; call `told()` after a new story."""

    def __init__(self, parent: QWidget | None = None, *, keys: bool = True) -> None:
        super().__init__(parent)
        self._twin: Rows | None = None
        if keys:
            self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def paint(self, ink: Ink) -> None:
        """Draw it."""
        raise NotImplementedError

    def sentence(self) -> str:
        """The picture in one factual sentence."""
        return ""

    def table(self) -> Table | None:
        """Heads and rows of the same facts; None where there is no more in it than its sentence."""
        return None

    def told(self) -> None:
        """A new story has come: name, table and picture follow."""
        self.setAccessibleName(self.sentence())
        if self._twin is not None:
            twin = self.table()
            if twin is None:
                self.toggle_twin()
            else:
                self._twin.fill(*twin)
        self.update()

    @property
    def as_table(self) -> bool:
        """Whether the table twin is shown."""
        return self._twin is not None

    def toggle_twin(self) -> None:
        """Turn from picture to table and back."""
        if self._twin is not None:
            had = self._twin.hasFocus()
            self._twin.hide()
            self._twin.deleteLater()
            self._twin = None
            if had:
                self.setFocus()
            return
        facts = self.table()
        if facts is None:
            return
        self._twin = Rows(self.sentence(), self)
        self._twin.fill(*facts)
        self._twin.setGeometry(self.rect())
        self._twin.show()
        if self.hasFocus():
            self._twin.setFocus()

    def paintEvent(self, event: QPaintEvent) -> None:
        with Ink(self) as ink:
            self.paint(ink)
            if self.hasFocus() and self._twin is None:
                self.paint_focus(ink)

    def paint_focus(self, ink: Ink) -> None:
        """The focus ring; a picture with parts rings the part instead."""
        ink.frame(0, 0, self.width(), self.height(), 3, "focus")

    def resizeEvent(self, event: QResizeEvent) -> None:
        if self._twin is not None:
            self._twin.setGeometry(self.rect())

    def focusInEvent(self, event: QFocusEvent) -> None:
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        self.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        event.ignore()
