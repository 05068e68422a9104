"""The hatched edge of a practice season."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QPaintEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.widgets.ink import Ink


class Edge(QWidget):
    """Stands at the left of the page; clicks go through it."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.hide()

    def paintEvent(self, event: QPaintEvent) -> None:
        with Ink(self) as ink:
            ink.pattern(0, 0, self.width(), self.height(), "estimated", "ink2")
