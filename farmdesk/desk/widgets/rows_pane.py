"""A sheet as it is typed: written rows without boxes, one row of boxes, the question under it, and the keys.

Written rows keep an underline and lose their boxes. − walks up to a written row, + down again; Enter or / on
it opens it for a correction, in its place. The rows below move down for a question; nothing is covered.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from PySide6.QtCore import QRect, Qt, Signal, Slot
from PySide6.QtGui import QMouseEvent, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.pages import Desk
from farmdesk.desk.theme import BOLD, DISPLAY, SEMIBOLD, look
from farmdesk.desk.widgets.form_row import ROW_PX, Field, FormRow, RowBox
from farmdesk.desk.widgets.ink import Ink

PAD_PX, HEAD_PX, FOOT_PX, SIDE_PX, GUTTER_PX = 24, 104, 64, 406, 40
NARROW_PX = 324  # the side of a sheet with many columns


@dataclass(frozen=True, slots=True)
class Written:
    """A written row: its key, a text before the boxes, what stood in each, a note, and whether it is in doubt."""

    key: str
    lead: str
    cells: dict[str, str] = field(default_factory=dict)
    note: str = ""
    doubtful: bool = False


class RowsPane(QWidget):
    """Subclasses set `row`'s fields, `written`, the words, and paint the side. `correct` carries a row's key."""

    correct = Signal(str)
    above = Signal()  # − above the first row
    side_px = SIDE_PX

    def __init__(self, desk: Desk, parent: QWidget, *, lead_px: int = 0, lead: str = "") -> None:
        super().__init__(parent)
        self.desk = desk
        self.title, self.small, self.beside, self.count = "", "", "", ""
        self.lead, self.lead_px = lead, lead_px
        self.open_lead = ""  # what stands before the open row
        self.plain: frozenset[str] = frozenset()  # columns of words, whatever their length
        self.after: Sequence[tuple[str, str, int]] = ()  # columns that are reckoned: name, label, width [px]
        self.written: Sequence[Written] = ()
        self.at: int | None = None  # the written row that is walked to
        self.correcting: int | None = None
        self.row = FormRow(desk, self, labels=False)
        self.row.intercept = self._pressed
        self.row.resized.connect(self.lay_out)
        self._first, self._tall = 0, look().px(ROW_PX)

    # what stands in it

    def say(self, title: str, small: str = "", beside: str = "", count: str = "") -> None:
        """The title of the sheet, a line under it, and two lines at the right."""
        self.title, self.small, self.beside, self.count = title, small, beside, count
        self.setAccessibleName(". ".join(part for part in (title, beside, small, count) if part))
        self.update()

    def set_fields(self, fields: Sequence[Field]) -> None:
        """The boxes of the open row, which are the columns of the written ones."""
        self.row.set_fields(fields)
        self.lay_out()

    def show_written(self, rows: Sequence[Written]) -> None:
        """The rows that are on disk, in order."""
        self.written = rows
        if self.at is not None and self.at >= len(rows):
            self.at = None
        if self.correcting is not None and self.correcting >= len(rows):
            self.correcting = None
        self.lay_out()

    def keys(self) -> Sequence[tuple[str, str]]:
        """The keys and what they do, for the foot of the sheet."""
        return (
            (self.tr("Enter"), self.tr("next box")), ("+", self.tr("next row")), ("−", self.tr("row back")),
            ("*", self.tr("not measured")), ("/", self.tr("correct the row above")), (".", self.tr("decimal")),
        )  # fmt: skip

    # walking

    def _pressed(self, box: RowBox, key: str) -> bool:
        """Walk and correct; says whether the key was for that."""
        last = len(self.written) - 1
        if self.correcting is not None:
            if key == "-" and self.row.boxes.index(box) == 0:
                self.leave_correction()
                return True
            return key in ("/",)
        if self.at is not None:
            if key == "-":
                self._walk(max(0, self.at - 1)) if self.at > 0 else self.above.emit()
            elif key in ("+", "down"):
                self._walk(self.at + 1 if self.at < last else None)
            elif key in ("enter", "/"):
                self.begin_correction(self.at)
            return True
        if key == "-" and self.row.boxes.index(box) == 0:
            self._walk(last) if self.written else self.above.emit()
            return True
        if key == "/":
            if self.written:
                self.begin_correction(last)
            return True
        return False

    def _walk(self, to: int | None) -> None:
        self.at = to
        self.lay_out()

    def begin_correction(self, at: int) -> None:
        """Open a written row in its place."""
        self.at, self.correcting = None, at
        self.lay_out()
        self.correct.emit(self.written[at].key)

    def leave_correction(self) -> None:
        """Back to the open row; nothing was changed."""
        self.correcting = None
        self.row.next_row({})
        self.lay_out()

    # room

    def sheet(self) -> QRect:
        """The white sheet."""
        px = look().px
        return QRect(0, 0, self.width() - px(self.side_px + GUTTER_PX), self.height())

    def side(self) -> QRect:
        """What stands beside it."""
        px = look().px
        return QRect(self.width() - px(self.side_px), 0, px(self.side_px), self.height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        self.lay_out()

    @Slot()
    def lay_out(self) -> None:
        """Place the open row behind, or in the place of, the written ones; the latest rows are seen."""
        px = look().px
        sheet = self.sheet()
        left = px(PAD_PX) + px(self.lead_px)
        wide = max(px(200), sheet.width() - left - px(PAD_PX))
        room = sheet.height() - px(HEAD_PX) - px(FOOT_PX)
        self.row.resize(wide, self.row.height())
        tall = max(px(ROW_PX), self.row.height_px())
        here = self.correcting is not None
        open_at = self.correcting if self.correcting is not None else len(self.written)
        fit = max(0, (room - tall) // px(ROW_PX))  # written rows that are seen beside the open one
        after = len(self.written) - open_at - (1 if here else 0)
        first = max(0, open_at - fit + min(after, fit // 2))
        if self.at is not None:
            first = min(first, max(0, self.at - fit // 2))
        self._first, self._tall = first, tall
        y = px(HEAD_PX) + (open_at - first) * px(ROW_PX)
        if y + px(ROW_PX) > px(HEAD_PX) + room + 2:
            y = self.height() + px(ROW_PX)  # walked away from: out of sight, but it keeps the keys
        self.row.setGeometry(left, y, wide, tall)
        self.update()

    def _reckoned(self) -> list[tuple[str, int, int]]:
        """Name, left edge and width [px] of the columns that are reckoned."""
        px, found = look().px, []
        x = self.row.x() + (self.row.spots()[-1][1] + self.row.spots()[-1][2] if self.row.boxes else 0) + px(8)
        for name, _, wide in self.after:
            found.append((name, x, px(wide)))
            x += px(wide) + px(8)
        return found

    def _y_of(self, index: int) -> int:
        """Top of a written row [px]."""
        px = look().px
        y = px(HEAD_PX) + (index - self._first) * px(ROW_PX)
        if self.correcting is not None:
            return y if index <= self.correcting else y + self._tall - px(ROW_PX)
        return y

    # painting

    def paintEvent(self, event: QPaintEvent) -> None:
        with Ink(self) as ink:
            self._paint_sheet(ink)
            self.paint_side(ink, self.side())

    def _paint_sheet(self, ink: Ink) -> None:
        px, sheet = look().px, self.sheet()
        ink.fill(0, 0, sheet.width(), sheet.height(), "sheet")
        ink.frame(0, 0, sheet.width(), sheet.height(), 1, "rule")
        left, right = px(PAD_PX), sheet.width() - px(PAD_PX)
        ink.text(left, px(40), self.title, 26, SEMIBOLD, family=DISPLAY)
        ink.text(right, px(40), self.beside, 17, align="right")
        room = right - left - ink.width(self.count, 14, SEMIBOLD) - px(16)
        ink.text(left, px(64), ink.fitted(self.small, room, 14), 14, color="ink2")
        ink.text(right, px(64), self.count, 14, SEMIBOLD, align="right")
        base = px(HEAD_PX) - px(12)
        ink.text(left, base, self.lead, 14, color="ink2")
        for box in self.row.boxes:
            label = ink.fitted(box.field.label, box.width(), 14)
            ink.text(self.row.x() + box.x() + px(8), base, label, 14, color="ink2")
        for name, x, _ in self._reckoned():
            label = next(label for own, label, _ in self.after if own == name)
            ink.text(x + px(8), base, label, 14, color="ink2")
        ink.level(left, right, px(HEAD_PX) - 1, 1.6, "ink")
        for index in range(self._first, len(self.written)):
            if index != self.correcting:
                self._paint_row(ink, index, left, right)
        if self.open_lead and self.row.y() < sheet.height():
            ink.text(left, self.row.y() + px(31), self.open_lead, 15, color="ink2")
        y = sheet.height() - px(54)
        ink.level(left, right, y, 1, "hair")
        self._paint_keys(ink, left, y + px(14))

    def _paint_row(self, ink: Ink, index: int, left: int, right: int) -> None:
        px, row, y = look().px, self.written[index], self._y_of(index)
        if y + px(ROW_PX) > self.height() - look().px(FOOT_PX) + 2:
            return
        base = y + px(31)
        if index == self.at:
            ink.fill(left - px(8), y + 2, px(5), px(ROW_PX) - 4, "ink")
        if row.doubtful:
            ink.swatch(left if row.lead else left - px(PAD_PX - 3), base, "doubtful", 14 if row.lead else px(12))
            ink.text(left + px(20), base, row.lead, 15, color="ink2")
        else:
            ink.text(left, base, row.lead, 15, color="ink2")
        edge = left
        boxes = [(name, self.row.x() + x, wide) for name, x, wide in self.row.spots()]
        for name, at, wide in (*boxes, *self._reckoned()):
            value = row.cells.get(name, "")
            edge = at + wide
            if not value:
                continue
            number = value[:1].isdigit()
            small = name in self.plain or (not number and len(value) > 4)
            ink.text(at + px(8), base, ink.fitted(value, wide - px(8), 15 if small else 17), 15 if small else 17,
                     400 if small else BOLD)  # fmt: skip
            if (name, at, wide) in boxes:
                ink.level(at, at + wide, base + px(9), 1, "rule")
        if row.note:
            ink.text(edge + px(14), base, ink.fitted(row.note, right - edge - px(14), 14), 14, color="ink2")
        if index + 1 < len(self.written):
            ink.level(left, right, y + px(ROW_PX) - 0.5, 1, "hair")

    def _paint_keys(self, ink: Ink, x: float, y: float) -> None:
        px = look().px
        for key, words in self.keys():
            wide = ink.width(key, 15, BOLD) + px(16)
            if x + wide + px(7) + ink.width(words, 15) > self.sheet().width() - px(PAD_PX):
                break
            ink.fill(x, y, wide, px(26), "paper")
            ink.frame(x, y, wide, px(26), 1, "rule")
            ink.text(x + px(8), y + px(19), key, 15, BOLD)
            x = ink.text(x + wide + px(7), y + px(19), words, 15) + px(18)

    def paint_side(self, ink: Ink, box: QRect) -> None:
        """What belongs to the sheet: sums, plan, what was kept."""

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """A click on a written row walks to it."""
        if event.button() != Qt.MouseButton.LeftButton or self.correcting is not None:
            return
        for index in range(self._first, len(self.written)):
            y = self._y_of(index)
            if y <= event.position().y() < y + look().px(ROW_PX) and event.position().x() < self.sheet().width():
                self._walk(index)
                self.row.focus()
                return
