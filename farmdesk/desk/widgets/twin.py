"""What is drawn and what stands in a table are the same facts: a widget whose picture turns into its rows and back."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QRect
from PySide6.QtWidgets import QWidget

from farmdesk.desk.tables.rows import Rows

Table = tuple[Sequence[str], Sequence[Sequence[str]]]  # heads, rows


class Twinned(QWidget):
    """Subclasses give `table()`, and `table_name()` and `table_box()` where they are not the picture's own."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._twin: Rows | None = None

    def table(self) -> Table | None:
        """Heads and rows of the facts in the picture; None where there is no more in it than its sentence."""
        return None

    def table_name(self) -> str:
        """What the table is called when it is read aloud."""
        return self.accessibleName()

    def table_box(self) -> QRect:
        """Where the table stands."""
        return self.rect()

    @property
    def as_table(self) -> bool:
        """Whether the table is shown now."""
        return self._twin is not None

    def toggle_twin(self) -> None:
        """Turn from picture to table and back; the keys stay with what is shown."""
        if self._twin is None:
            if self.table() is None:
                return
            self._twin = Rows("", self)
            self.fill_twin()
            self.place_twin()
            self._twin.show()
            if self.hasFocus():
                self._twin.setFocus()
            return
        had = self._twin.hasFocus()
        self._twin.hide()
        self._twin.deleteLater()
        self._twin = None
        if had:
            self.setFocus()

    def fill_twin(self) -> None:
        """The facts have changed: the table follows, and goes where there are none left."""
        if self._twin is None:
            return
        facts = self.table()
        if facts is None:
            self.toggle_twin()
            return
        self._twin.setAccessibleName(self.table_name())
        self._twin.fill(*facts)

    def place_twin(self) -> None:
        """The room has changed."""
        if self._twin is not None:
            self._twin.setGeometry(self.table_box())
