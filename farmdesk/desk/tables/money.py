"""Amounts of money in columns, right under each other."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.tables.rows import Rows, RowsModel
from farmdesk.desk.theme import look


class MoneyModel(RowsModel):
    """Amounts stand under each other at the right; the code at the left."""

    def data(self, index: Any, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role == Qt.ItemDataRole.TextAlignmentRole:
            side = Qt.AlignmentFlag.AlignRight if index.column() else Qt.AlignmentFlag.AlignLeft
            return int(side | Qt.AlignmentFlag.AlignVCenter)
        return super().data(index, role)

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role == Qt.ItemDataRole.TextAlignmentRole and section:
            return int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        return super().headerData(section, orientation, role)


class WeekRows(Rows):
    """The pickers of a week; left and right go to the week before and after."""

    stepped = Signal(int)  # −1 the week before, 1 the week after

    def __init__(self, name: str, parent: QWidget) -> None:
        super().__init__(name, parent)
        self.table = MoneyModel(self)
        self.setModel(self.table)
        self.horizontalHeader().setStretchLastSection(False)

    def share_out(self) -> None:
        """Columns of one width for the amounts; the code takes less."""
        n = self.table.columnCount()
        if n:
            first = look().px(66)
            each = (self.viewport().width() - first) // (n - 1)
            for column in range(n):
                self.setColumnWidth(column, each if column else first)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Left, Qt.Key.Key_Right):
            self.stepped.emit(1 if event.key() == Qt.Key.Key_Right else -1)
        else:
            super().keyPressEvent(event)
