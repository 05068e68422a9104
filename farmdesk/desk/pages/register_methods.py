"""Methods by version: a version that lots were made by stays as it was; a copy of it becomes the next one."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QModelIndex, QRect, Slot
from PySide6.QtGui import QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.pages.short_form import Side
from farmdesk.desk.tables.rows import Rows
from farmdesk.desk.theme import DISPLAY, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.form_lines import FormLines
from farmdesk.desk.widgets.form_row import Field
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.rows_pane import GUTTER_PX, NARROW_PX, PAD_PX
from farmdesk.errors import FarmError
from farmdesk.picture.entries import Birth
from farmdesk.picture.things import Method
from farmdesk.text import Counted
from farmdesk.work import registers
from farmdesk.work.changes import Done, Hand
from farmdesk.work.registers import COLUMNS, TEXT, WAY, YES

if TYPE_CHECKING:
    from farmdesk.desk.pages.registers import RegistersPage
    from farmdesk.work.farm import OpenFarm

HEAD_PX, SAID_PX = 76, 34
WIDE_PX = {
    "letter": 64, "name": 200, "whole": 96, "sealed": 84, "hours_low_h": 96, "hours_high_h": 84, "ends_by": 130,
    "ph_low": 90, "ph_high": 84, "ph_target": 104, "mass_max_c": 128, "yeast_g_kg": 104, "rinses_n": 84,
    "loading_kg_m2": 130, "dry_days_max_d": 130, "start_wb_frac": 150, "start_wb_sd_frac": 84,
    "store_low_wb_frac": 110, "store_high_wb_frac": 84, "rest_days_d": 100,
}  # fmt: skip
Story = tuple[dict[str, Method], dict[str, int]]  # the methods by key, and how many lots each version made


class MethodsPane(QWidget):
    """The versions as a table; the boxes of the next one below it."""

    def __init__(self, page: RegistersPage, register: str) -> None:
        super().__init__(page)
        self.page, self.desk = page, page.desk
        self.story: Story | None = None
        self.before = ""  # the version that is being copied
        self.said = ""
        self.rows = Rows(self.tr("Methods by version"), self)
        self.rows.activated.connect(self._copy)
        self.row = FormLines(page.desk, self)
        self.row.about = {"value": "name"}
        say = self.desk.words.say
        self.row.set_fields([
            Field(c.name, say(c.label), WIDE_PX[c.name], words=c.kind in (TEXT, WAY, YES), needed=c.name in ("letter", "name"))
            for c in COLUMNS["methods"]
        ])  # fmt: skip
        self.row.submitted.connect(self._submitted)
        self.row.wrote.connect(self._wrote)
        self.row.left.connect(self._left)
        self.row.ended.connect(self._left)
        self.row.edited.connect(self.update)
        self.row.resized.connect(self._lay_out)

    def question(self) -> Callable[[OpenFarm, int], Any]:
        """The methods, and how many lots each version made."""

        def ask(farm: OpenFarm, at_utc_s: int) -> Story:
            made: dict[str, int] = {}
            for lot in farm.picture.lots.values():
                for entry in lot.of(Birth):
                    key = f"{entry.body.method}{entry.body.method_version}"
                    made[key] = made.get(key, 0) + 1
            return dict(farm.things.methods), made

        return ask

    def show_story(self, story: Story) -> None:
        """The versions as they stand."""
        self.story = story
        methods, made = story
        self.setAccessibleName(self.tr("Methods, {n} {n:version|versions}").format(n=Counted(len(methods))))
        heads = [self.tr("letter"), self.tr("version"), self.tr("method"), self.tr("hours"), self.tr("pH"),
                 self.tr("loading"), self.tr("dry within"), self.tr("rest"), self.tr("lots made")]  # fmt: skip
        at = self.rows.currentIndex().row()
        say = self.desk.words.number
        self.rows.fill(heads, [
            *([m.letter, str(m.version), m.name, self._span(m.hours_low_h, m.hours_high_h, 0),
               self._span(m.ph_low, m.ph_high, 1), say(m.loading_kg_m2, 1, "kg/m²"), say(m.dry_days_max_d, 0, "d"),
               say(m.rest_days_d, 0, "d"), str(made.get(key, 0) or "")] for key, m in methods.items()),
            ["", "", self.tr("a new method"), "", "", "", "", "", ""],
        ])  # fmt: skip
        self.rows.selectRow(max(at, 0))
        self.update()

    def _span(self, low: float | None, high: float | None, decimals: int) -> str:
        known = [self.desk.words.number(value, decimals) for value in (low, high) if value is not None]
        return "–".join(known)

    # typing

    def enter(self) -> None:
        """The keys go to the table: the version to copy is chosen there."""
        self.rows.setFocus()

    @Slot(QModelIndex)
    def _copy(self, index: QModelIndex) -> None:
        """Copy a version into the boxes."""
        if self.story is None:
            return
        keys = list(self.story[0])
        self.before = keys[index.row()] if index.row() < len(keys) else ""
        self.said = ""
        typed = registers.typed("methods", self.story[0][self.before]) if self.before else {}
        say = self.desk.words.say
        for column in COLUMNS["methods"]:
            words = next((words for way, words in column.ways if way == typed.get(column.name)), None)
            if words is not None:
                typed[column.name] = say(words)
        self.row.fill(typed, "name" if self.before else "letter")
        self.update()

    @Slot(object)
    def _submitted(self, values: dict[str, str]) -> None:
        before, say, meant = self.before, self.desk.words.say, dict(values)
        for column in COLUMNS["methods"]:
            if column.ways:
                try:
                    meant[column.name] = registers.way_of(column, values[column.name], say)
                except FarmError:
                    continue  # the verb says what it may be
        self.row.do(lambda farm, answers: registers.write_row(
            farm, "methods", meant, before=before, hand=Hand("processor", answers=answers)))  # fmt: skip

    @Slot(object, object)
    def _wrote(self, done: Done, values: dict[str, str]) -> None:
        self.said = self.tr("Written as the next version of {letter}; lots begun from now on are made by it.").format(
            letter=values["letter"].upper()
        )
        self.before = ""
        self.row.next_row({})
        self.rows.setFocus()
        self.page.refresh()

    @Slot()
    def _left(self) -> None:
        self.before = ""
        self.row.next_row({})
        self.rows.setFocus()
        self.update()

    # room

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._lay_out()

    @Slot()
    def _lay_out(self) -> None:
        px = look().px
        wide = self.width() - px(NARROW_PX + GUTTER_PX) - 2 * px(PAD_PX)
        high = self.row.fit(wide)
        low = self.height() - px(PAD_PX // 2) - high
        self.row.setGeometry(px(PAD_PX), low, wide, high)
        self.rows.setGeometry(px(PAD_PX), px(HEAD_PX), wide, max(px(96), low - px(SAID_PX + 8) - px(HEAD_PX)))
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        px = look().px
        sheet = self.width() - px(NARROW_PX + GUTTER_PX)
        with Ink(self) as ink:
            top = self.row.y() - px(SAID_PX)
            ink.fill(0, top, sheet, self.height() - top, "sheet")
            ink.frame(0, top, sheet, self.height() - top, 1, "rule")
            ink.text(px(PAD_PX), px(40), self.tr("Methods"), 26, SEMIBOLD, family=DISPLAY)
            hint = self.tr("↑ ↓ choose a version, Enter copies it into the boxes: + writes it as the next one.")
            ink.text(px(PAD_PX), px(64), hint, 14, color="ink2")
            said = self.said or self._open_words()
            ink.text(px(PAD_PX), self.row.y() - px(12), ink.fitted(said, sheet - 2 * px(PAD_PX), 17, family=SERIF), 17,
                     family=SERIF)  # fmt: skip
            self._paint_side(Side(ink, QRect(self.width() - px(NARROW_PX), 0, px(NARROW_PX), self.height())))

    def _open_words(self) -> str:
        letter = self.row.values()["letter"].upper()
        if self.story is None or not letter:
            return self.tr("The next version")
        newest = max((m.version for m in self.story[0].values() if m.letter == letter), default=0)
        return self.tr("Version {n} of {letter}").format(n=newest + 1, letter=letter)

    def _paint_side(self, side: Side) -> None:
        side.title(self.tr("Versions stay"))
        side.sentence(self.tr("A lot keeps the version it was begun with, whatever the method says later."))
        held = next((box for box in self.row.boxes if box.hasFocus()), None)
        column = next((c for c in COLUMNS["methods"] if held is not None and c.name == held.field.name), None)
        if column is not None and column.ways:
            say = self.desk.words.say
            side.heading(say(column.label))
            for n, (_, words) in enumerate(column.ways, start=1):
                side.line(f"{n}  {say(words)}")
