"""Boxes that go on in further lines, each under its label: for a form with more boxes than a row has room for."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtGui import QPaintEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.pages import Desk
from farmdesk.desk.theme import look
from farmdesk.desk.widgets.form_row import BOX_PX, GAP_PX, LABEL_PX, FormRow
from farmdesk.desk.widgets.ink import Ink

LINE_PX = LABEL_PX + BOX_PX + 14


class FormLines(FormRow):
    """A form row that wraps. The question opens under the line of its box; the lines below move down."""

    def __init__(self, desk: Desk, parent: QWidget) -> None:
        super().__init__(desk, parent)
        self._lines_n = 1
        self.resized.connect(self._lay_out)  # a question has opened or gone

    def fit(self, wide_px: int) -> int:
        """Lay the lines out for a width [px]; returns how high they then stand [px]."""
        self.resize(wide_px, self.height())
        self._lay_out()
        return self.height_px()

    def height_px(self) -> int:
        """How much room it takes now."""
        return look().px(LINE_PX) * self._lines_n + self.guard.height_px()

    @Slot()
    def _lay_out(self) -> None:
        px = look().px
        lines: list[list[tuple[QWidget, int, int]]] = [[]]
        x = 0
        for box in self.boxes:
            wide = min(px(box.field.width_px) or self.width(), self.width())
            if x and x + wide > self.width():
                lines.append([])
                x = 0
            lines[-1].append((box, x, wide))
            x += wide + px(GAP_PX)
        self._lines_n = len(lines)
        self.guard.resize(self.width(), self.guard.height())
        at, y = self._last or (self.boxes[-1] if self.boxes else None), 0
        for line in lines:
            for found, left, wide in line:
                found.setGeometry(left, y + px(LABEL_PX), wide, px(BOX_PX))
            if any(found is at for found, _, _ in line):
                below = y + px(LABEL_PX) + px(BOX_PX) + 1
                self.guard.setGeometry(0, below, self.width(), self.guard.height_px())
                y += self.guard.height_px()
            y += px(LINE_PX)
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        with Ink(self) as ink:
            for box in self.boxes:
                ink.text(box.x() + look().px(2), box.y() - look().px(6), box.field.label, 14, color="ink2")
