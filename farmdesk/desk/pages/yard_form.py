"""The yard sheet as it is typed in: the rows of the paper in its order, and beside them the lot they are about.

Each row is on disk before the next one opens, so a power cut leaves no doubt where one was: written rows have
lost their boxes and keep an underline. The numeric pad alone suffices (widgets/form_row.py).
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QRect, Qt, Slot
from PySide6.QtGui import QMouseEvent, QPaintEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.go import Target
from farmdesk.desk.pages import Action, Desk, Page
from farmdesk.desk.pages.yard_form_side import SheetSide
from farmdesk.desk.theme import BOLD, DISPLAY, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.form_row import BOX_PX, GAP_PX, ROW_PX, Field, FormRow, RowBox
from farmdesk.desk.widgets.ink import Ink
from farmdesk.text import Day, Moment, pct
from farmdesk.work.changes import Done, Hand
from farmdesk.work.yard_sheet import SheetRow, SheetToType, sheet_to_type, write_row

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

MARGIN_PX, PAD_PX, HEAD_PX, FOOT_PX, SIDE_PX, LEAD_PX = 20, 24, 104, 62, 406, 244
LEAST_FORM_PX = 760


class YardFormPage(Page):
    place = "yard"

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, parent)
        self.setWindowTitle(self.tr("Yard sheet"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.sheet: SheetToType | None = None
        self.at = 0
        self.correcting = self._starred = False  # starred: a hand has said of this row that it was not measured
        self.row = FormRow(desk, self, labels=False)
        self.row.set_fields(self.fields())
        self.row.intercept = self._pressed
        self.row.about = {"meter": "1", "bean_c": "bean"}
        self.side = SheetSide(desk, self)
        self.row.submitted.connect(self._submit)
        self.row.wrote.connect(self._wrote)
        self.row.ended.connect(self._skip)
        self.row.left.connect(self._leave)
        self.row.resized.connect(self.lay_out)
        self.row.edited.connect(self._set_letters)
        self.row.hide()

    def fields(self) -> Sequence[Field]:
        """The boxes, in the order of the paper."""
        return (
            Field("1", "1", 84), Field("2", "2", 84), Field("3", "3", 84), Field("tray", self.tr("tray g"), 96),
            Field("bean", self.tr("bean °C"), 76), Field("note", self.tr("note"), 0, words=True),
        )  # fmt: skip

    # what it shows

    def query(self, farm: OpenFarm, at_utc_s: int) -> SheetToType:
        return sheet_to_type(farm, at_utc_s)

    def show_story(self, story: Any) -> None:
        first = self.sheet is None
        self.sheet = story
        if first or self.at >= len(story.rows):
            self.at = self._next_open(0)
        if not story.rows:
            self.row.hide()
        elif first:
            self._open_row(take_keys=True)
        self._say()
        self._tell_side()
        self.lay_out()

    def letters(self) -> Sequence[Action]:
        return (Action("p", self.tr("paper"), self._paper), Action("e", self.tr("type"), self._type))

    @property
    def rows(self) -> Sequence[SheetRow]:
        """The beds of the sheet."""
        return self.sheet.rows if self.sheet is not None else ()

    @property
    def current(self) -> SheetRow | None:
        """The row that is open."""
        return self.rows[self.at] if self.at < len(self.rows) else None

    def written_n(self) -> int:
        """How many rows are on disk."""
        return sum(self._done(row) for row in self.rows)

    def _done(self, row: SheetRow) -> bool:
        return bool(row.entries) or row.skipped

    def _next_open(self, start: int) -> int:
        """The next row without a reading, from one on; the last row where all have one."""
        return next((i for i in range(start, len(self.rows)) if not self._done(self.rows[i])), len(self.rows))

    def _say(self) -> None:
        if self.sheet is None:
            return
        day = self.desk.words.say(Day(self.sheet.day, weekday=True, long=True))
        told = [self.tr("Yard sheet"), day]
        row = self.current
        if row is not None:
            told.append(self.tr("bed {bed}, {lot}, row {n} of {m}").format(
                bed=row.bed, lot=row.lot, n=self.at + 1, m=len(self.rows)))  # fmt: skip
        elif self.rows:
            told.append(self.tr("All rows are written."))
        else:
            told.append(self.tr("Nothing lay on the beds."))
        self.setAccessibleName(". ".join(told))
        self.update()

    def _tell_side(self) -> None:
        row = self.current or (self.rows[-1] if self.rows else None)
        missing = [row for row in self.rows[: self.at] if not self._done(row)]
        last = max((row.written_utc_s or 0 for row in self.rows), default=0)
        self.side.tell(row.lot if row is not None else "", self.written_n(), len(self.rows), last, missing)

    # hands

    def _open_row(self, *, take_keys: bool) -> None:
        row = self.current
        self.correcting, self._starred = row is not None and self._done(row), False
        self.row.setVisible(row is not None)
        if row is None:
            self.lay_out()
            self.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        first = "tray" if row.too_wet and not row.values else "1"
        had = self.row.has_keys()
        self.row.fill(dict(row.values), first)
        if row.too_wet and not row.values:
            for name in ("1", "2", "3"):
                self.row.box(name).setPlaceholderText(self.tr("not meas."))
        self._set_letters()
        if not take_keys and not had:
            self.setFocus(Qt.FocusReason.OtherFocusReason)
        self._say()
        self._tell_side()
        self.lay_out()

    @Slot()
    def _set_letters(self) -> None:
        """A box that is left out says so in smaller letters than its figures have."""
        for box in self.row.boxes:
            small = bool(box.placeholderText()) and not box.text()
            box.setFont(look().font(14) if small or box.field.words else look().font(17, SEMIBOLD))

    def _to(self, at: int) -> None:
        if 0 <= at <= len(self.rows):
            self.at = at
            self._open_row(take_keys=True)

    def _pressed(self, box: RowBox, key: str) -> bool:
        """Rows are walked with − and ↑, and the one above is corrected with /."""
        self._starred |= key == "*"
        if key == "/" or (key == "-" and self.row.boxes.index(box) == 0):
            self._to(max(self.at - 1, 0))
            return True
        if key == "down":
            self._to(self.at + 1)
            return True
        return False

    @Slot(object)
    def _submit(self, values: dict[str, str]) -> None:
        row, sheet = self.current, self.sheet
        if row is None or sheet is None:
            return
        changed = {k: v for k, v in values.items() if v != row.values.get(k, "")}
        if not changed and (self.correcting or not self._starred):
            self._skip()
            return
        reason = self.tr("corrected on the yard sheet") if row.entries else ""
        note = values.get("note", "")

        def act(farm: OpenFarm, answers: dict[str, str]) -> Done:
            return write_row(farm, row, values, sheet, hand=Hand(note=note, answers=answers), reason=reason)

        self.row.do(act)

    @Slot(object, object)
    def _wrote(self, done: Done, values: dict[str, str]) -> None:
        self.refresh()
        self._to(self.at + 1)

    @Slot()
    def _skip(self) -> None:
        """Leave the row as it is, and go on."""
        self._to(self.at + 1)

    @Slot()
    def _leave(self) -> None:
        self.setFocus(Qt.FocusReason.OtherFocusReason)

    def _type(self) -> None:
        if self.current is None:
            self.at = self._next_open(0)
        self._open_row(take_keys=True)

    def _paper(self) -> None:
        self.desk.go(Target("paper", "yard sheet"))

    def open_at(self, target: Target) -> None:
        if self.current is not None:
            self.row.focus("tray" if self.current.too_wet and not self.current.values else "1")

    def mousePressEvent(self, event: QMouseEvent) -> None:
        for i in range(len(self.rows)):
            top = self._top(i)
            if top is not None and top <= event.position().y() < top + look().px(ROW_PX):
                self._to(i)
                return

    # room

    def ground(self) -> QRect:
        """The white sheet."""
        px = look().px
        wide = self.width() - 2 * px(MARGIN_PX)
        side = px(SIDE_PX + 24) if wide - px(SIDE_PX + 24) >= px(LEAST_FORM_PX) else 0
        return QRect(px(MARGIN_PX), px(14), wide - side, self.height() - px(22))

    def _first(self) -> int:
        """The first row that is seen: three written rows stay above the open one."""
        px = look().px
        room = self.ground().height() - px(HEAD_PX + FOOT_PX) - (self.row.height_px() - px(ROW_PX))
        fits = max(1, room // px(ROW_PX))
        return max(0, min(self.at - 3, len(self.rows) - fits))

    def _top(self, i: int) -> float | None:
        """Where a row stands [px]; None when it is not seen."""
        px, ground = look().px, self.ground()
        first = self._first()
        if i < first:
            return None
        top = ground.y() + px(HEAD_PX) + (i - first) * px(ROW_PX)
        if i > self.at and not self.row.isHidden():
            top += self.row.height_px() - px(ROW_PX)
        return top if top + px(ROW_PX) <= ground.bottom() - px(FOOT_PX) else None

    @Slot()
    def lay_out(self) -> None:
        px, ground = look().px, self.ground()
        left = ground.x() + px(PAD_PX + LEAD_PX)
        top = self._top(self.at)
        if self.current is not None and top is not None:
            self.row.setGeometry(left, round(top), ground.right() - px(PAD_PX) - left, self.row.height_px())
        x = ground.right() + px(24)
        self.side.setGeometry(x, ground.y(), max(0, self.width() - px(MARGIN_PX) - x), ground.height())
        self.side.setVisible(self.side.width() > 0)
        self.update()

    # the drawing

    def paintEvent(self, event: QPaintEvent) -> None:
        if self.sheet is None:
            return
        ground = self.ground()
        with Ink(self) as ink:
            ink.fill(ground.x(), ground.y(), ground.width(), ground.height(), "sheet")
            ink.frame(ground.x(), ground.y(), ground.width(), ground.height(), 1, "rule")
            self._paint_head(ink, ground)
            for i, row in enumerate(self.rows):
                top = self._top(i)
                if top is not None:
                    self._paint_row(ink, i, row, top)
            self._paint_keys(ink, ground)

    def _paint_head(self, ink: Ink, ground: QRect) -> None:
        px, say, sheet = look().px, self.desk.words.say, self.sheet
        assert sheet is not None
        left, right, top = ground.x() + px(PAD_PX), ground.right() - px(PAD_PX), ground.y()
        hour = say(Moment(self.desk.time.local(sheet.read_at_utc_s), clock=True))
        end = ink.text(left, top + px(38), self.tr("Yard sheet, readings at {hour}").format(hour=hour), 26, SEMIBOLD,
                       family=DISPLAY)  # fmt: skip
        if self.desk.practice:
            ink.text(end + px(12), top + px(38), self.tr("practice"), 18, family=SERIF, italic=True, color="ink2")
        day = say(Day(sheet.day, weekday=True, long=True))
        ink.text(right, top + px(38), day, 17, align="right")
        ink.text(
            left, top + px(62), self.tr("Same order of boxes as the paper. Another tray: 2:938."), 14, color="ink2"
        )
        n = min(self.at + 1, len(self.rows))
        count = self.tr("row {n} of {m}").format(n=n, m=len(self.rows)) if self.rows else ""
        ink.text(right, top + px(62), count, 14, BOLD, align="right")
        base = top + px(92)
        ink.text(left, base, self.tr("bed"), 14, color="ink2")
        ink.text(left + px(64), base, self.tr("lot"), 14, color="ink2")
        ink.text(left + px(LEAD_PX - 22), base, self.tr("before"), 14, color="ink2", align="right")
        for box, x in self._columns():
            ink.text(x + px(8), base, box.label, 14, color="ink2")
        ink.level(left, right, top + px(HEAD_PX - 4), 2, "ink")
        if not self.rows:
            words = self.tr("Nothing lay on the beds.")
            ink.text(left, top + px(HEAD_PX + 34), words, 17, family=SERIF)

    def _columns(self) -> list[tuple[Field, float]]:
        """Each box's field and left edge [px]."""
        px = look().px
        x = float(self.ground().x() + px(PAD_PX + LEAD_PX))
        found = []
        for field in self.fields():
            found.append((field, x))
            x += px(field.width_px) + px(GAP_PX)
        return found

    def _paint_row(self, ink: Ink, i: int, row: SheetRow, top: float) -> None:
        px, say, ground = look().px, self.desk.words.say, self.ground()
        left, right, base = ground.x() + px(PAD_PX), ground.right() - px(PAD_PX), top + px(31)
        ink.text(left, base, row.bed, 17, BOLD)
        ink.text(left + px(64), base, row.lot, 17)
        was = "—" if row.last_wb_frac is None else say(pct(row.last_wb_frac, 1)).split("\u202f")[0]
        ink.text(left + px(LEAD_PX - 22), base, was, 17, color="ink2", align="right")
        if i == self.at and not self.row.isHidden():
            return
        ink.level(left, right, top + px(ROW_PX), 1, "hair")
        for field, x in self._columns():
            wide = px(field.width_px) or right - x
            value = row.values.get(field.name, "")
            if not self._done(row):
                ink.frame(x, top + px((ROW_PX - BOX_PX) // 2), wide, px(BOX_PX), 1, "hair")
                continue
            if field.name == "note":
                ink.text(x + px(8), base, ink.fitted(self._note(row, value), wide - px(8), 14), 14, color="ink2")
            elif value:
                ink.text(x + px(8), base, ink.fitted(value, wide - px(8), 17, BOLD), 17, BOLD)
            elif field.name != "bean":
                ink.text(x + px(8), base, self.tr("not meas."), 14, color="ink2")
            ink.level(x, x + wide, base + px(9), 1, "rule")

    def _note(self, row: SheetRow, note: str) -> str:
        if row.written_utc_s is None:
            return self.tr("not measured")
        hour = self.desk.words.say(Moment(self.desk.time.local(row.written_utc_s), clock=True))
        told = self.tr("written {hour}").format(hour=hour)
        if not row.scope:
            told = self.tr("{told}, whole lot").format(told=told)
        return f"{note}  {told}".strip()

    def _paint_keys(self, ink: Ink, ground: QRect) -> None:
        px = look().px
        x, y = float(ground.x() + px(PAD_PX)), ground.bottom() - px(24)
        ink.level(x, ground.right() - px(PAD_PX), y - px(28), 1, "hair")
        for key, words in (
            (self.tr("Enter"), self.tr("next box")), ("+", self.tr("next row")), ("−", self.tr("row back")),
            ("*", self.tr("not measured")), ("/", self.tr("correct the row above")), ("Esc", self.tr("leave")),
        ):  # fmt: skip
            wide = ink.width(key, 14, BOLD) + px(16)
            if x + wide + ink.width(words, 14) > ground.right() - px(PAD_PX):
                break
            ink.frame(x, y - px(18), wide, px(25), 1, "rule")
            ink.text(x + px(8), y, key, 14, BOLD)
            x = ink.text(x + wide + px(7), y, words, 14) + px(20)
