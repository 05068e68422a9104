"""Instruments held against a reference, and what their readings count more from an instant on.

Both are rows of the notebook: a row that is changed is struck and written again, and stays readable.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Slot

from farmdesk.desk.pages.register_rows import paint_trust
from farmdesk.desk.pages.sheet_head import read_day
from farmdesk.desk.pages.short_form import Side
from farmdesk.desk.pages.typed_rows import TypedPane
from farmdesk.desk.widgets.form_row import Act, Field
from farmdesk.desk.widgets.rows_pane import Written
from farmdesk.errors import FarmError
from farmdesk.picture.entries import Correction
from farmdesk.text import N_, Moment, Text, pct
from farmdesk.work.changes import Done, Hand
from farmdesk.work.instruments import UNITS, CheckRow, CorrectionRow, Moved, Trust
from farmdesk.work.registers import YES_NO, Column, way_of

if TYPE_CHECKING:
    from farmdesk.desk.pages.registers import RegistersPage
    from farmdesk.work.farm import OpenFarm

RIGHT = Column("passed", N_("registers", "right"), ways=YES_NO)
LOTS_SHOWN = 11


@dataclass(frozen=True)
class InstrumentStory:
    """Instruments with what each measures, when they may be trusted, and the rows written about them."""

    quantities: dict[str, str]
    trusts: tuple[Trust, ...]
    checks: tuple[CheckRow, ...]
    corrections: tuple[CorrectionRow, ...]


class InstrumentRows(TypedPane):
    """What checks and corrections share: an instrument by code or number, days and hours as typed."""

    def __init__(self, page: RegistersPage, register: str) -> None:
        super().__init__(page, register)
        self.row.about = {"time": "day", "value": "add"}

    def question(self) -> Callable[[OpenFarm, int], Any]:
        def ask(farm: OpenFarm, at_utc_s: int) -> InstrumentStory:
            from farmdesk.work.instruments import check_rows, correction_rows, trusts

            picture = farm.picture.at(at_utc_s)
            quantities = {code: tool.quantity for code, tool in farm.things.instruments.items()}
            return InstrumentStory(quantities, trusts(picture), check_rows(picture), correction_rows(farm.picture))

        return ask

    def code_of(self, row: Written) -> str:
        return ""  # an instrument has many rows: its code opens none of them

    def instrument(self, typed: str) -> str:
        """An instrument's code as a hand writes it: small letters, or its number in the list."""
        codes = list(self.story.quantities) if self.story is not None else []
        found = [code for code in codes if code.casefold() == typed.casefold()]
        if not found and typed.isdigit() and 0 < int(typed) <= len(codes):
            found = [codes[int(typed) - 1]]
        return found[0] if found else typed

    def today(self) -> date:
        """The farm day it is now."""
        return self.desk.time.farm_day(self.desk.as_of)

    def instant(self, day: str, hour: str, *, ends: bool = False) -> int:
        """A day and an hour as typed [UTC s]; without an hour the work day's beginning, or its end."""
        on, time = read_day(day, self.today()) if day else self.today(), self.desk.time
        if hour:
            return time.typed(on, hour)
        return time.instant(on + timedelta(days=1) if ends else on, time.day_starts_h)

    def day_typed(self, at_utc_s: int) -> str:
        """An instant's day as a hand types it."""
        day = self.desk.time.farm_day(at_utc_s)
        return f"{day.day}.{day.month}"

    def hour_typed(self, at_utc_s: int) -> str:
        """An instant's hour as a hand types it."""
        return f"{self.desk.time.local(at_utc_s):%H:%M}"

    def number_typed(self, value: float | None, quantity: str) -> str:
        """A difference in an instrument's base unit, as it is typed."""
        if value is None:
            return ""
        return f"{value * (100 if quantity.endswith('_frac') else 1):.6g}"

    def unit_of(self, quantity: str) -> str:
        """The unit in which a difference is typed."""
        return self.desk.words.say(UNITS.get(quantity, N_("instruments", "as it reads")))

    def list_instruments(self, side: Side) -> None:
        """The instruments by number."""
        held = next((box for box in self.row.boxes if box.hasFocus()), None)
        if held is not None and held.field.name == "instrument":
            side.heading(self.tr("Instruments"))
            for n, (code, quantity) in enumerate(self.story.quantities.items(), start=1):
                side.line(f"{n}  {code}", self.unit_of(quantity))

    def written_again(self, key: str, act: Act, reason: str) -> Act:
        """The verb, or where a row is changed: the old one struck and the new one written, as one act."""
        if not key:
            return act

        def again(farm: OpenFarm, answers: dict[str, str]) -> Done:
            from farmdesk.work.keeping import correct

            return correct(farm, [key], reason, lambda f: act(f, answers))

        return again

    def out(self, key: str) -> Act:
        label = N_("registers", "taken out")
        return lambda farm, answers: farm.strike([key], "taken out", label)


class ChecksPane(InstrumentRows):
    def fields(self) -> Sequence[Field]:
        return [
            Field("instrument", self.tr("instrument"), 120, words=True, needed=True),
            Field("passed", self.tr("right"), 76, words=True, needed=True),
            Field("off", self.tr("too high by"), 108), Field("day", self.tr("day"), 84), Field("hour", self.tr("at"), 84),
            Field("text", self.tr("held against"), 250, words=True),
        ]  # fmt: skip

    def show_story(self, story: InstrumentStory) -> None:
        """The checks as known now."""
        self.story = story
        self.say(
            self.tr("Checks"),
            self.tr("An instrument by its code or number; right: 1 yes, 2 no; without a day it was just now."), "",
            self.tr("written: {n}").format(n=len(story.checks)),
        )  # fmt: skip
        self.show_rows([Written(row.entry, "", self._cells(row), "", not row.body.passed) for row in story.checks])

    def _cells(self, row: CheckRow) -> dict[str, str]:
        say, body = self.desk.words.say, row.body
        off = self.number_typed(body.off, self.story.quantities.get(body.instrument, ""))
        day = say(Moment(self.desk.time.local(row.at_utc_s))).rsplit(" ", 1)
        right = say(YES_NO[0 if body.passed else 1][1])
        return {"instrument": body.instrument, "passed": right, "off": off, "day": day[0], "hour": day[1],
                "text": body.text}  # fmt: skip

    def typed_of(self, key: str) -> dict[str, str]:
        row = next(row for row in self.story.checks if row.entry == key)
        cells = self._cells(row)
        return {**cells, "day": self.day_typed(row.at_utc_s), "hour": self.hour_typed(row.at_utc_s)}

    def act(self, values: dict[str, str], key: str) -> Act:
        code, say = self.instrument(values["instrument"]), self.desk.words.say
        quantity = self.story.quantities.get(code, "")

        def check(farm: OpenFarm, answers: dict[str, str]) -> Done:
            from farmdesk.work.guards import not_ahead
            from farmdesk.work.instruments import read_add
            from farmdesk.work.keeping import check_instrument

            hand = Hand("processor", answers=answers)
            at = self.instant(values["day"], values["hour"]) if values["day"] or values["hour"] else farm.written_now()
            not_ahead(farm, at, hand)
            passed = way_of(RIGHT, values["passed"], say) == "yes"
            off = read_add(values["off"], quantity, hand) if values["off"] else None
            return check_instrument(farm, code, passed, at, off=off, text=values["text"], hand=hand)

        return self.written_again(key, check, "typed wrong")

    def paint_beside(self, side: Side, values: dict[str, str]) -> None:
        side.title(self.tr("Trusted from–to"))
        paint_trust(side, self.story.trusts, self.desk)
        self.list_instruments(side)


class CorrectionsPane(InstrumentRows):
    def __init__(self, page: RegistersPage, register: str) -> None:
        super().__init__(page, register)
        self.moves: tuple[Moved, ...] = ()
        self.kept: tuple[Moved, ...] = ()  # what the row just written has moved
        self.row.edited.connect(self._look_ahead)

    def fields(self) -> Sequence[Field]:
        return [
            Field("instrument", self.tr("instrument"), 130, words=True, needed=True),
            Field("add", self.tr("counts more"), 130, words=True, needed=True),
            Field("day", self.tr("from"), 96, needed=True), Field("hour", self.tr("at"), 84),
            Field("until", self.tr("until"), 96), Field("until_hour", self.tr("at"), 84),
        ]  # fmt: skip

    def show_story(self, story: InstrumentStory) -> None:
        """The corrections that hold."""
        self.story = story
        self.say(
            self.tr("Corrections"),
            self.tr("A meter that reads 0.8 points too high counts −0.8. Readings before the first instant stay; raw values stay."),
            "", self.tr("in force: {n}").format(n=len(story.corrections)),
        )  # fmt: skip
        rows = []
        for row in story.corrections:
            written = self.desk.words.say(Moment(self.desk.time.local(row.written_utc_s)))
            rows.append(Written(row.entry, "", self._cells(row), self.tr("written {at}").format(at=written)))
        self.show_rows(rows)

    def _cells(self, row: CorrectionRow) -> dict[str, str]:
        say, body, time = self.desk.words.say, row.body, self.desk.time
        day, hour = say(Moment(time.local(body.from_utc_s))).rsplit(" ", 1)
        cells = {"instrument": body.instrument, "add": self._add(body), "day": day, "hour": hour}
        if body.until_utc_s is not None:
            cells["until"], cells["until_hour"] = say(Moment(time.local(body.until_utc_s))).rsplit(" ", 1)
        return cells

    def _add(self, body: Correction) -> str:
        return f"{self.number_typed(body.add, body.quantity)} {self.unit_of(body.quantity)}".replace("-", "−")

    def typed_of(self, key: str) -> dict[str, str]:
        body = next(row.body for row in self.story.corrections if row.entry == key)
        found = {"instrument": body.instrument, "add": self.number_typed(body.add, body.quantity),
                 "day": self.day_typed(body.from_utc_s), "hour": self.hour_typed(body.from_utc_s)}  # fmt: skip
        if body.until_utc_s is not None:
            found |= {"until": self.day_typed(body.until_utc_s), "until_hour": self.hour_typed(body.until_utc_s)}
        return found

    def read(self, values: dict[str, str], hand: Hand) -> Correction:
        """The correction that the boxes say. Raises NotPossible, Asked."""
        from farmdesk.work.instruments import read_add

        code = self.instrument(values["instrument"])
        quantity = self.story.quantities.get(code, "")
        add = read_add(values["add"].removesuffix(self.unit_of(quantity)), quantity, hand)
        until = self.instant(values["until"], values["until_hour"], ends=True) if values["until"] else None
        return Correction(code, quantity, add, self.instant(values["day"], values["hour"]), until)

    def act(self, values: dict[str, str], key: str) -> Act:
        def corrected(farm: OpenFarm, answers: dict[str, str]) -> Done:
            from farmdesk.work.keeping import correct_instrument

            hand = Hand("processor", answers=answers)
            c = self.read(values, hand)
            at = farm.written_now()
            return correct_instrument(
                farm, c.instrument, c.quantity, c.add, c.from_utc_s, at, until_utc_s=c.until_utc_s, hand=hand
            )

        return self.written_again(key, corrected, "the correction was changed")

    def has_written(self, done: Done) -> None:
        self.kept, self.moves = self.moves, ()

    @Slot(str)
    def _open_row(self, key: str) -> None:
        super()._open_row(key)
        self.kept = ()

    # what it moves

    @Slot()
    def _look_ahead(self) -> None:
        """Which lots the row would move, as it is being typed."""
        self.kept = ()
        try:
            new = self.read(self.row.values(), Hand(answers={"comma": "decimal"}))
        except FarmError:
            self.moves = ()
            return
        left_out = self.written[self.correcting].key if self.correcting is not None else ""

        def ask(farm: OpenFarm) -> tuple[Moved, ...]:
            from farmdesk.work.instruments import correction_rows, moved

            held = [row.body for row in correction_rows(farm.picture) if row.entry != left_out]
            return moved(farm.picture, [*held, new])

        self.desk.lanes.ask(ask, self._looked, self.desk.lanes.stray)

    @Slot(object)
    def _looked(self, moves: tuple[Moved, ...]) -> None:
        self.moves = moves
        self.update()

    def paint_beside(self, side: Side, values: dict[str, str]) -> None:
        moves = self.moves or self.kept
        side.title(self.tr("Lots it moves"))
        if self.said and self.kept:
            side.sentence(f"{self.said[:1].upper()}{self.said[1:]}.")
        if not moves:
            side.note(self.tr("While a correction is typed, the lots whose moisture changes stand here, old → new."))
        else:
            side.note(self.tr("Last reading, old → new; so many readings change."))
        for move in moves[:LOTS_SHOWN]:
            side.line(f"{move.lot}   {self.desk.words.say(self._change(move))}", f"{move.readings_n}", strong=True)
        if len(moves) > LOTS_SHOWN:
            side.note(self.tr("and {n} more").format(n=len(moves) - LOTS_SHOWN))
        if not moves:
            self.list_instruments(side)

    def _change(self, move: Moved) -> Text:
        return N_("instruments", "{was} → {now}", was=pct(move.was_wb_frac), now=pct(move.now_wb_frac))
