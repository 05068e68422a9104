"""A plain table of words: rows of a fixed height, letters pass on to the window."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QLocale, QModelIndex, QPersistentModelIndex, Qt
from PySide6.QtGui import QFont, QKeyEvent
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QStyledItemDelegate, QTableView, QWidget

from farmdesk.desk.theme import look
from farmdesk.desk.widgets.ink import as_set

Index = QModelIndex | QPersistentModelIndex


class RowsModel(QAbstractTableModel):
    """Heads and rows of text, set whole."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.heads: Sequence[str] = ()
        self.rows: Sequence[Sequence[str]] = ()
        self.struck: Sequence[bool] = ()

    def fill(self, heads: Sequence[str], rows: Sequence[Sequence[str]], struck: Sequence[bool] = ()) -> None:
        """Show these heads and rows; `struck` says which rows are struck through."""
        self.beginResetModel()
        self.heads, self.rows, self.struck = heads, rows, struck
        self.endResetModel()

    def rowCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self.rows)

    def columnCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self.heads)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            row = self.rows[index.row()]
            return row[index.column()] if index.column() < len(row) else ""
        if self.struck and self.struck[index.row()]:
            if role == Qt.ItemDataRole.FontRole:
                font = QFont(look().font(15))
                font.setStrikeOut(True)
                return font
            if role == Qt.ItemDataRole.ForegroundRole:
                return look()["ink2"]
        return None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if orientation == Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return self.heads[section]
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        return None


class AsSet(QStyledItemDelegate):
    """Sets numbers and units apart as painted text does."""

    def displayText(self, value: Any, locale: QLocale | QLocale.Language) -> str:
        return as_set(str(value))


class Rows(QTableView):
    """The view of such a table."""

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self.table = RowsModel(self)
        self.setModel(self.table)
        self.setItemDelegate(AsSet(self))
        self.setShowGrid(False)
        self.setWordWrap(False)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setTabKeyNavigation(False)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.verticalHeader().hide()
        self.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self.horizontalHeader().setHighlightSections(False)
        self.horizontalHeader().setStretchLastSection(True)

    def fill(self, heads: Sequence[str], rows: Sequence[Sequence[str]], struck: Sequence[bool] = ()) -> None:
        """Show these, columns as wide as their first rows need."""
        self.verticalHeader().setDefaultSectionSize(look().px(32))
        self.table.fill(heads, rows, struck)
        metrics, bold = look().metrics(15), look().metrics(14)
        for column, head in enumerate(heads):
            widest = max(
                [bold.horizontalAdvance(head)]
                + [metrics.horizontalAdvance(row[column]) for row in rows[:200] if column < len(row)]
            )
            self.setColumnWidth(column, round(min(widest, look().px(420)) + look().px(28)))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.text().isalnum() or event.key() == Qt.Key.Key_Escape:
            event.ignore()
        else:
            super().keyPressEvent(event)
