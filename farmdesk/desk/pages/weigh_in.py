"""Weigh-in: the clerk's sheet typed with the number pad, one lot, block and half-day at a time.

A row is on disk before the next one opens. Above the first row stands the head of the sheet (lot, block,
half-day, day, hour, unit); below the last one the total that the clerk wrote under the column.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Slot
from PySide6.QtGui import QPaintEvent

from farmdesk.clock import HOUR_S
from farmdesk.desk.pages.sheet_head import instants, joined, nothing, read_head
from farmdesk.desk.pages.weigh_side import WeighSide
from farmdesk.desk.widgets.form_row import Field
from farmdesk.desk.widgets.rows_pane import Written
from farmdesk.errors import Question
from farmdesk.picture.codes import check_character
from farmdesk.text import Counted, Moment
from farmdesk.work.changes import Done, Hand
from farmdesk.work.weigh_grid import SheetKey, WeighSheet, said_of, usual_words

if TYPE_CHECKING:
    from farmdesk.desk.pages.picking import PickingPage
    from farmdesk.work.farm import OpenFarm

SCALE = "scale-1"
USUAL_PX = 66


class WeighInView(WeighSide):
    """Three modes: `head` (which sheet), `rows`, `column` (the total under it)."""

    def __init__(self, page: PickingPage) -> None:
        super().__init__(page.desk, page, lead_px=USUAL_PX, lead="")
        self.page = page
        self.lead = self.tr("usual")
        self.mode = "rows"
        self.key: SheetKey | None = None
        self.hour_utc_s: int | None = None
        self.sheet_story: WeighSheet | None = None
        self.retyping: list[tuple[str, str]] = []  # picker and number of slips that were typed a second time
        self.retyped_from: int | None = None
        self.sitting_utc_s = 0
        self.asked: Question | None = None
        self.sums = ""
        self.row.about = {"weight": "gross", "value": "gross", "column": "total", "time": "gross"}
        self.row.submitted.connect(self._submitted)
        self.row.wrote.connect(self._wrote)
        self.row.ended.connect(self._ended)
        self.row.left.connect(page.leave)
        self.row.edited.connect(self.update)
        self.row.questioned.connect(self._questioned)
        self.correct.connect(self._open_row)
        self.above.connect(self.ask_head)

    # asking and showing

    def question(self) -> Callable[[OpenFarm, int], Any]:
        """Ask for the sheet."""
        from farmdesk.work.weigh_grid import sheet_of

        key, (at, now) = self.key, instants(self.desk)
        return lambda farm, _: sheet_of(farm, key, at, now_utc_s=now)

    def show_story(self, story: WeighSheet) -> None:
        """Show the rows that are on disk; what is being typed stays."""
        other = self.sheet_story is None or self.sheet_story.key != story.key
        self.sheet_story, self.key = story, story.key
        if other:
            self.retyping, self.retyped_from, self.sums = [], None, ""
        say, time = self.desk.words.say, self.desk.time
        rows = []
        for row in story.rows:
            at = time.local(row.written_utc_s)
            note = self.tr("written {hour}").format(hour=f"{at:%H:%M}")
            if not row.known:
                note = self.tr("unassigned, {note}").format(note=note)
            elif row.written_utc_s < self.sitting_utc_s and self.sitting_utc_s:
                note = self.tr("kept {at}").format(at=say(Moment(at, weekday=at.date() != self._today_local())))
            usual = usual_words(story.usual.get(row.picker))
            number = self.desk.words.number
            cells = {
                "picker": row.picker,
                "gross": number(row.gross_g / 1000, 1),
                "tare": number(row.tare_g / 1000, 1) if row.tare_g else "",
                "net": number(row.net_g / 1000, 1),
            }
            rows.append(Written(row.entry, say(usual) if usual else "", cells, note, row.unusual or not row.known))
        if self.mode == "rows":
            self.show_written(rows)
        self._words()

    def _today_local(self) -> date:
        return self.desk.time.local(self.desk.as_of).date()

    def _words(self) -> None:
        story, say = self.sheet_story, self.desk.words.say
        if story is None:
            return
        if self.mode == "head":
            small = self.tr(
                "Which sheet? Blocks by letter or number; half-day 1 morning, 2 afternoon; unit 1 kg, 2 lb, 3 qq."
            )
            self.say(self.tr("Weigh-in"), small)
            return
        hour = say(self.desk.time.night(self._hour()))
        small = self.tr(
            "Same order of boxes as the paper. Weighed {hour}, {scale}; numbers in {unit}. − above the first row: another sheet."
        )
        n = len(story.rows)
        count = self.tr("row {n} of {all}").format(n=n + 1, all=max(len(story.crew), n + 1))
        if self.mode == "column":
            count = self.tr("{n} {n:row|rows}").format(n=Counted(n))
        self.say(
            f"{self.tr('Weigh-in')}  {story.key.lot}", small.format(hour=hour, scale=SCALE, unit=self.unit),
            say(said_of(story.key)), count,
        )  # fmt: skip

    def _hour(self) -> int:
        assert self.sheet_story is not None
        hour = self.hour_utc_s if self.hour_utc_s is not None else self.sheet_story.next_hour_utc_s
        now = instants(self.desk)[1]
        return min(hour, now) if hour - now < HOUR_S else hour  # a little ahead of now is now

    def enter(self) -> None:
        """The view was chosen: an unfinished sheet goes on, otherwise its head is asked for."""
        self.sitting_utc_s = self.desk.present
        story = self.sheet_story
        if story is not None and story.kept is not None and story.rows:
            self.begin_rows()
        else:
            self.ask_head()

    def letters(self) -> Sequence[Any]:
        """In a form letters belong to the boxes."""
        return ()

    # the head

    @Slot()
    def ask_head(self) -> None:
        """Ask which sheet, with the likeliest proposed."""
        story = self.sheet_story
        self.mode, self.at, self.correcting, self.asked = "head", None, None, None
        self.lead, self.after = "", ()
        self.set_fields([
            Field("lot", self.tr("lot"), 110, code=True, needed=True), Field("block", self.tr("block"), 64, needed=True),
            Field("half", self.tr("half-day"), 80, needed=True), Field("day", self.tr("day"), 84, needed=True),
            Field("hour", self.tr("weighed at"), 96), Field("unit", self.tr("unit"), 64, needed=True),
        ])  # fmt: skip
        self.show_written([])
        values = {"unit": self.unit}
        if story is not None:
            key = story.key
            hour = f"{self.desk.time.local(self._hour()):%H:%M}"
            values |= {"lot": key.lot, "block": key.block, "half": "1" if key.half_day == "am" else "2", "hour": hour}
            values["day"] = f"{key.day.day}.{key.day.month}"
        self.row.fill(values)
        self._words()

    def _read_head(self, values: dict[str, str]) -> None:
        from farmdesk.work.weigh_grid import sheet_of

        at, now = instants(self.desk)
        today = self.desk.time.farm_day(now)

        def ask(farm: OpenFarm) -> tuple[WeighSheet, int | None, str]:
            key, hour, unit = read_head(farm, values, today)
            return sheet_of(farm, key, at, now_utc_s=now), hour, unit

        self.desk.lanes.ask(ask, self._head_read, self.row.trouble)

    @Slot(object)
    def _head_read(self, read: tuple[WeighSheet, int | None, str]) -> None:
        story, self.hour_utc_s, self.unit = read
        self.show_story(story)
        self.begin_rows()

    # the rows

    def begin_rows(self) -> None:
        """The next row of the sheet is open."""
        self.mode, self.lead = "rows", self.tr("usual")
        self.set_fields([
            Field("picker", self.tr("picker"), 84), Field("gross", self.tr("gross"), 128, self.unit, needed=True),
            Field("tare", self.tr("tare, kept"), 108, self.unit, keeps=True),
        ])  # fmt: skip
        self.after = (("net", self.tr("net kg"), 84),)
        assert self.sheet_story is not None
        self.show_story(self.sheet_story)
        self.row.next_row({"picker": self.sheet_story.next_picker})
        self._words()

    @Slot(object)
    def _submitted(self, values: dict[str, str]) -> None:
        if self.mode == "head":
            self._read_head(values)
        elif self.mode == "column":
            self._do_column(values)
        elif self.correcting is not None:
            self._do_correction(values)
        elif not values["gross"]:
            self._do_not_weighed(values)
        else:
            self._do_row(values)

    def _do_row(self, values: dict[str, str]) -> None:
        key, hour, unit, retyped = self.key, self._hour(), self.unit, self.retyped_from
        assert key is not None

        def weigh(farm: OpenFarm, answers: dict[str, str]) -> Done:
            from farmdesk.work.pay_story import picker_of
            from farmdesk.work.picking import weigh_in

            return weigh_in(
                farm, key.lot, block=key.block, picker=picker_of(farm.things, values["picker"]), half_day=key.half_day,
                gross=values["gross"], tare=values["tare"], unit=unit, at_utc_s=hour, retyped_from_utc_s=retyped,
                hand=Hand("clerk", SCALE, answers=answers),
            )  # fmt: skip

        self.row.do(weigh)

    def _do_not_weighed(self, values: dict[str, str]) -> None:
        """* in the weight: this picker's sack was not weighed, and the notebook says so."""
        key, hour = self.key, self._hour()
        assert key is not None

        def skip(farm: OpenFarm, answers: dict[str, str]) -> Done:
            from farmdesk.work.keeping import not_measured
            from farmdesk.work.pay_story import picker_of

            picker = picker_of(farm.things, values["picker"])
            what = f"weight {key.half_day}"
            return not_measured(farm, what, key.day, hour, lot=key.lot, place=picker, hand=Hand("clerk"))

        self.row.do(skip)

    @Slot(str)
    def _open_row(self, entry: str) -> None:
        """Open a written row in its place for a correction."""
        assert self.sheet_story is not None
        row = next(row for row in self.sheet_story.rows if row.entry == entry)
        number = row.typed.removesuffix(f" {self.unit}")
        tare = f"{row.tare_g / 1000:g} kg" if row.tare_g else ""
        self.row.fill({"picker": row.picker, "gross": number, "tare": tare}, "gross")
        self._words()

    def _do_correction(self, values: dict[str, str]) -> None:
        assert self.correcting is not None
        entry, sitting, unit = self.written[self.correcting].key, self.sitting_utc_s, self.unit

        def correct(farm: OpenFarm, answers: dict[str, str]) -> Done:
            from farmdesk.work.pay_story import picker_of
            from farmdesk.work.what_moves import correct_later

            gross = values["gross"]
            if unit != "kg" and gross and not gross[-1].isalpha():
                gross = f"{gross} {unit}"
            return correct_later(
                farm, entry, picker=picker_of(farm.things, values["picker"]), gross=gross, tare=values["tare"],
                sitting_utc_s=sitting, hand=Hand(answers=answers),
            )  # fmt: skip

        self.row.do(correct)

    @Slot(object, object)
    def _wrote(self, done: Done, values: dict[str, str]) -> None:
        """It is on disk: the next row opens at once, the sums follow."""
        if self.mode == "column":
            self._column_done(done)
            return
        self.asked = None
        was_correction, self.correcting = self.correcting is not None, None
        if not done.entries and not was_correction:
            self.retyping.append((self.picker_typed(), values["gross"]))
            self.retyped_from = self.retyped_from or self.sitting_utc_s
        self._ask_sheet()
        self.row.next_row({"picker": self._after(values["picker"]) if not was_correction else self._next()})

    def _next(self) -> str:
        return self.sheet_story.next_picker if self.sheet_story else ""

    def _after(self, typed: str) -> str:
        """The code after the one just typed; while slips are typed again, of those that are kept."""
        story = self.sheet_story
        if story is None or not self.retyping:
            return self._next()
        codes = [row.picker for row in story.rows]
        n = len(self.retyping)
        return codes[n] if n < len(codes) else self._next()

    def _ask_sheet(self) -> None:
        self.desk.lanes.ask(self._asked_sheet(), self.show_story, self.desk.lanes.stray)

    def _asked_sheet(self) -> Callable[[OpenFarm], WeighSheet]:
        from farmdesk.work.weigh_grid import sheet_of

        key, (at, now) = self.key, instants(self.desk)
        return lambda farm: sheet_of(farm, key, at, now_utc_s=now)

    @Slot(object)
    def _questioned(self, question: Question | None) -> None:
        self.asked = question
        self.update()

    # the total under the column

    @Slot()
    def _ended(self) -> None:
        """+ on an empty row: the paper's own total is asked for."""
        if self.mode != "rows" or self.sheet_story is None or not self.sheet_story.rows:
            return
        self.mode, self.lead, self.after = "column", "", ()
        self.show_written([])
        self.set_fields([
            Field("total", self.tr("total written under the column"), 236, self.unit),
            Field("platform", self.tr("scale’s total of the day"), 200, self.unit),
        ])  # fmt: skip
        self.row.fill({})
        self._words()

    def _do_column(self, values: dict[str, str]) -> None:
        key, unit, at = self.key, self.unit, self._hour()
        assert key is not None

        def typed(name: str) -> str:
            value = values[name]
            return f"{value} {unit}" if value and not value[-1].isalpha() else value

        def check(farm: OpenFarm, answers: dict[str, str]) -> Done:
            from farmdesk.work.picking import check_column, platform_total

            hand = Hand("clerk", SCALE, answers=answers)
            done = None
            if values["total"]:
                done = check_column(farm, key.lot, key.block, key.half_day, key.day, typed("total"), at, hand)
            if values["platform"]:
                platform = platform_total(farm, key.lot, typed("platform"), at, hand)
                return platform if done is None else joined(done, platform)
            return done if done is not None else nothing(key.lot)

        self.row.do(check)

    def _column_done(self, done: Done) -> None:
        self.sums = self.desk.words.say(done.label)
        self._ask_sheet()
        self.ask_head()

    # beside the sheet

    def paintEvent(self, event: QPaintEvent) -> None:
        usual = usual_words(self.sheet_story.usual.get(self.picker_typed())) if self.sheet_story else None
        self.open_lead = self.desk.words.say(usual) if usual and self.mode == "rows" else ""
        super().paintEvent(event)

    def picker_typed(self) -> str:
        """The code that stands in the box; `7` is P07 where one code alone has that number."""
        if self.sheet_story is None or self.mode != "rows":
            return ""
        typed = self.row.values()["picker"].upper()
        meant = [c for c in self.sheet_story.crew if typed.isdigit() and c[1:].isdigit() and int(c[1:]) == int(typed)]
        return meant[0] if len(meant) == 1 else typed

    def check(self) -> str:
        """The check character of the sheet's lot."""
        return check_character(self.key.lot) if self.key else ""
