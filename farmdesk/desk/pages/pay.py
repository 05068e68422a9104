"""Pay: the weeks, each picker's row, the envelope and the bank; advances and day work typed, a week signed."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QModelIndex, Qt, Slot
from PySide6.QtGui import QPaintEvent, QResizeEvent

from farmdesk.desk.go import Target
from farmdesk.desk.pages import Action
from farmdesk.desk.pages.pay_side import SIDE_PX, WEEKS_PX, PaySide
from farmdesk.desk.pages.sheet_head import instants, read_day
from farmdesk.desk.tables.money import WeekRows
from farmdesk.desk.theme import BOLD, SERIF, look
from farmdesk.desk.widgets.form_row import Act, Field, FormRow
from farmdesk.desk.widgets.guard import Guard
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.title import HEIGHT_PX as TITLE_PX
from farmdesk.desk.widgets.title import Title
from farmdesk.errors import Answer, Question
from farmdesk.text import N_, Counted, Days
from farmdesk.work.changes import Done, Hand
from farmdesk.work.pay_story import PayStory

if TYPE_CHECKING:
    from farmdesk.desk.pages.picking import PickingPage
    from farmdesk.work.farm import OpenFarm
    from farmdesk.work.pay import PayRow

GUTTER_PX = 28
SIGN = "sign"


class PayView(PaySide):
    """Weeks at the left, the sheet in the middle, one picker's envelope and the bank's notes at the right."""

    def __init__(self, page: PickingPage) -> None:
        super().__init__(page)
        self.page, self.desk = page, page.desk
        self.story: PayStory | None = None
        self.first_day: date | None = None
        self.lists_weeks = True
        self.form = self.said = ""
        self.title = Title(page.desk, self)
        self.rows = WeekRows(self.tr("Pay by picker"), self)
        self.row = FormRow(page.desk, self)
        self.row.hide()
        self.sign = Guard(self)
        self.rows.selectionModel().currentRowChanged.connect(self._moved)
        self.rows.stepped.connect(self.step)
        self.row.submitted.connect(self._submitted)
        self.row.wrote.connect(self._wrote)
        self.row.left.connect(self.close_form)
        self.row.ended.connect(self.close_form)
        self.row.resized.connect(self._lay_out)
        self.sign.answered.connect(self._signed)
        self.sign.went_back.connect(self._keys_to_rows)

    # asking and showing

    def question(self) -> Callable[[OpenFarm, int], Any]:
        """Ask for the chosen week."""
        from farmdesk.work.pay_story import pay_story

        first, (at, now) = self.first_day, instants(self.desk)
        return lambda farm, _: pay_story(farm, first, at, now_utc_s=now)

    def show_story(self, story: PayStory) -> None:
        """Show it; the chosen picker stays chosen."""
        held = self.current()
        self.story = story
        say = self.desk.words.say
        self.title.say(self.tr("Pay"), say(story.headline))
        self.setAccessibleName(self.title.accessibleName())
        heads = [
            self.tr("picker"), self.tr("kg"), self.tr("piece"), self.tr("bonus"), self.tr("top-up"),
            self.tr("day work"), self.tr("advance"), self.tr("adjusted"), self.tr("net"), self.tr("carried"),
        ]  # fmt: skip
        week = story.week
        self.rows.fill(heads, [self._cells(row) for row in week.rows] if week else [])
        self.rows.share_out()
        if week and week.rows:
            at = next((i for i, row in enumerate(week.rows) if held and row.picker == held.picker), 0)
            self.rows.selectRow(at)
        self._lay_out()
        self.update()

    def _cells(self, row: PayRow) -> list[str]:
        return [
            row.picker, self.desk.words.number(row.grams / 1000, 1), self.cents(row.piece_cents - row.bonus_cents),
            self.cents(row.bonus_cents), self.cents(row.top_up_cents), self.cents(row.day_work_cents),
            self.cents(-row.advance_cents), self.cents(row.adjustment_cents), self.cents(row.net_cents, zero=True),
            self.cents(row.carried_cents),
        ]  # fmt: skip

    def cents(self, amount: int, *, zero: bool = False) -> str:
        """An amount [cents]; nothing where there is none."""
        return self.desk.words.number(amount / 100, 2) if amount or zero else ""

    def current(self) -> PayRow | None:
        week, at = self.story.week if self.story else None, self.rows.currentIndex().row()
        return week.rows[at] if week and 0 <= at < len(week.rows) else None

    def enter(self) -> None:
        """The rows take the keys."""
        self._keys_to_rows()

    @Slot()
    def _keys_to_rows(self) -> None:
        self._lay_out()
        self.rows.setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot(QModelIndex, QModelIndex)
    def _moved(self, now: QModelIndex, before: QModelIndex) -> None:
        self.update()

    def letters(self) -> Sequence[Action]:
        """Advances, day work, names, the signature, the paper."""
        found = [
            Action("a", self.tr("advance"), self._advance, opens=True), Action("e", self.tr("day work"), self._day_work, opens=True),
            Action("k", self.tr("pay sheet on paper"), self._paper),
        ]  # fmt: skip
        story = self.story
        if story is not None and story.loose:
            found.insert(
                0, Action("u", self.tr("name {n} {n:sack|sacks}").format(n=Counted(len(story.loose))), self._name)
            )
        if story is not None and story.week is not None and story.week.rows and not story.week.closed:
            found.append(Action("q", self.tr("sign the week"), self._ask_sign))
        found.append(Action("h", self.tr("overview"), self.page.leave))
        return found

    @Slot(int)
    def step(self, by: int) -> None:
        """The week before (−1) or after (1) of those in the list."""
        if self.story is None:
            return
        days = [week.first_day for week in self.story.weeks]  # the newest first
        at = next((i for i, week in enumerate(self.story.weeks) if self.is_shown(week.first_day)), 0)
        self.first_day, self.said = days[min(max(at - by, 0), len(days) - 1)], ""
        self.page.refresh()

    def is_shown(self, first_day: date) -> bool:
        week = self.story.week if self.story else None
        return week is not None and week.first_day == first_day

    # forms

    def _open(self, form: str, fields: Sequence[Field], values: dict[str, str], focus: str) -> None:
        why = self.desk.why_not_write()
        if why:
            self.desk.tell(why)
            return
        self.form = form
        self.sign.close_up()
        self.row.set_fields(fields)
        self.row.show()
        self.row.fill(values, focus)
        self._lay_out()

    def _advance(self) -> None:
        name = self.story.money if self.story else ""
        picker = self.current()
        fields = [
            Field("picker", self.tr("picker"), 90, needed=True), Field("money", self.tr("advance"), 150, name, needed=True),
            Field("words", self.tr("for what"), 0, words=True),
        ]  # fmt: skip
        self._open("advance", fields, {"picker": picker.picker if picker else ""}, "picker")

    def _day_work(self) -> None:
        story, picker = self.story, self.current()
        fields = [
            Field("picker", self.tr("picker"), 90, needed=True), Field("day", self.tr("day"), 90, needed=True, keeps=True),
            Field("money", self.tr("for the day"), 140, story.money if story else "", keeps=True, needed=True),
            Field("part", self.tr("part of it"), 90, "1/1", words=True), Field("words", self.tr("task"), 0, words=True, keeps=True),
        ]  # fmt: skip
        today = self.desk.time.farm_day(self.desk.as_of)
        values = {"picker": picker.picker if picker else "", "day": f"{today.day}.{today.month}"}
        self._open("day work", fields, values, "picker")

    def _name(self) -> None:
        if self.story is not None and self.story.loose:
            self._open("name", [Field("picker", self.tr("picker"), 110, needed=True)], {}, "picker")

    @Slot()
    def close_form(self) -> None:
        """Put the form away."""
        self.row.hide()
        self.form = ""
        self._keys_to_rows()

    @Slot(object)
    def _submitted(self, values: dict[str, str]) -> None:
        acts: dict[str, Callable[[dict[str, str]], Act]] = {
            "advance": self._act_advance, "day work": self._act_day_work, "name": self._act_name,
        }  # fmt: skip
        self.row.do(acts[self.form](values))

    def _act_advance(self, values: dict[str, str]) -> Act:
        def give(farm: OpenFarm, answers: dict[str, str]) -> Done:
            from farmdesk.work.pay import give_advance
            from farmdesk.work.pay_story import read_picker

            hand = Hand("processor", answers=answers)
            picker = read_picker(farm, values["picker"])
            return give_advance(farm, picker, values["money"], farm.written_now(), text=values["words"], hand=hand)

        return give

    def _act_day_work(self, values: dict[str, str]) -> Act:
        today = self.desk.time.farm_day(self.desk.as_of)

        def work(farm: OpenFarm, answers: dict[str, str]) -> Done:
            from farmdesk.work.pay import day_work, share_of
            from farmdesk.work.pay_story import read_picker
            from farmdesk.work.settings import number

            money = values["money"] or str(number(farm.things, "day_work_local") or "")
            return day_work(
                farm, read_picker(farm, values["picker"]), read_day(values["day"], today), money, farm.written_now(),
                share_frac=share_of(values["part"]), task=values["words"], hand=Hand("processor", answers=answers),
            )  # fmt: skip

        return work

    def _act_name(self, values: dict[str, str]) -> Act:
        assert self.story is not None
        entry = self.story.loose[0].entry

        def name(farm: OpenFarm, answers: dict[str, str]) -> Done:
            from farmdesk.work.pay_story import name_sack

            return name_sack(farm, entry, values["picker"], Hand("processor", answers=answers))

        return name

    @Slot(object, object)
    def _wrote(self, done: Done, values: dict[str, str]) -> None:
        self.said = self.tr("{what}: written").format(what=self.desk.words.say(done.label))
        if self.form == "name" and self.story is not None and len(self.story.loose) == 1:
            self.close_form()
        else:
            self.row.next_row({}, "picker")
        self.page.refresh()

    # signing and paper

    def _ask_sign(self) -> None:
        story, why = self.story, self.desk.why_not_write()
        if why or story is None or story.week is None:
            self.desk.tell(why)
            return
        self.row.hide()
        week = story.week
        days = Days(week.first_day, week.last_day)
        text = N_(
            "pay_page", "Sign {days}? A signed week never changes; what is found later is settled in the next one.",
            days=days,
        )  # fmt: skip
        question = Question("week", SIGN, text, (Answer(SIGN, N_("pay_page", "signed by all")),))
        self.sign.resize(self.rows.width(), self.sign.height())
        self.sign.ask(question, self.desk.words, look().px(80))
        self._lay_out()

    @Slot(str)
    def _signed(self, value: str) -> None:
        assert self.story is not None
        assert self.story.week is not None
        first = self.story.week.first_day

        def close(farm: OpenFarm) -> Done:
            from farmdesk.work.pay import close_week

            return close_week(farm, first, farm.written_now(), Hand("processor"))

        self._keys_to_rows()
        self.desk.lanes.do(close, self._is_signed, self._not_signed)

    @Slot(object)
    def _is_signed(self, done: Done) -> None:
        self.page.refresh()

    @Slot(object)
    def _not_signed(self, error: Exception) -> None:
        self.row.trouble(error) if self.row.isVisible() else self.desk.lanes.stray(error)

    def _paper(self) -> None:
        if self.story is not None and self.story.week is not None:
            self.desk.go(Target("paper", f"pay sheet {self.story.week.first_day.isoformat()}"))

    # room and painting

    def left_px(self) -> int:
        """Where the table begins [px]."""
        return look().px(WEEKS_PX + GUTTER_PX) if self.lists_weeks else 0

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._lay_out()

    @Slot()
    def _lay_out(self) -> None:
        px = look().px
        self.title.setGeometry(0, 0, self.width(), px(TITLE_PX))
        self.lists_weeks = self.width() > px(1180)  # larger letters: the table takes the room of the list
        top, left = px(TITLE_PX + 8), self.left_px()
        wide = self.width() - left - px(SIDE_PX + GUTTER_PX)
        form = self.row.height_px()
        if not self.row.isHidden():
            self.row.setGeometry(left, self.height() - form, wide, form)
        asked = self.sign.height_px()
        self.sign.setGeometry(left, self.height() - asked, wide, asked)
        self.rows.setGeometry(left, top, wide, self.height() - top - max(form, asked) - px(34))
        self.rows.share_out()
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        story = self.story
        if story is None:
            return
        px = look().px
        with Ink(self) as ink:
            top = px(TITLE_PX + 8)
            if self.lists_weeks:
                self.paint_weeks(ink, story, top)
                ink.upright(px(WEEKS_PX + GUTTER_PX // 2), top, self.height(), 1, "hair")
            x = self.width() - px(SIDE_PX)
            ink.upright(x - px(GUTTER_PX // 2), top, self.height(), 1, "hair")
            self.paint_envelope(ink, story, x, top)
            left, y = self.left_px(), self.rows.geometry().bottom() + px(24)
            if story.week is not None and story.week.rows:
                total = self.desk.words.number(story.week.total_cents / 100, 2, story.money)
                n = len(story.week.rows)
                said = self.tr("{n} {n:envelope|envelopes}").format(n=Counted(n))
                end = ink.text(left, y, said, 15, color="ink2")
                kilos = self.desk.words.number(sum(r.grams for r in story.week.rows) / 1000, 1, "kg")
                end = ink.text(end + px(14), y, kilos, 15)
                ink.text(end + px(24), y, self.said, 15, family=SERIF)
                ink.text(x - px(GUTTER_PX), y, total, 21, BOLD, align="right")
            elif story.week is None:
                ink.wrapped(left, top + px(60), px(420), self.desk.words.say(story.headline), 17, family=SERIF)
