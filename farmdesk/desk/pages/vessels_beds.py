"""Vessels filled and beds spread: a weight for each, what they hold, and how thick it lies."""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import suppress
from typing import TYPE_CHECKING

from farmdesk.clock import HOUR_S
from farmdesk.desk.pages.intake import grams_in
from farmdesk.desk.pages.short_form import ShortForm, Side, read_lot_typed
from farmdesk.desk.widgets.form_row import Act, Field
from farmdesk.errors import NotPossible
from farmdesk.science.dose import STEP_C, WATER_BEST_C, WATER_C
from farmdesk.text import N_, Counted, Moment
from farmdesk.work.changes import Done, Hand
from farmdesk.work.intake import IntakeLot, IntakeStory

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

QUARTER_S = 900
LATER_MOST_H = 6.0  # fruit does not wait longer than this (common practice, no source)
BEDS = 5  # beds of one row; more go into the next act


def code_among(codes: Sequence[str], typed: str) -> str:
    """A code as a hand writes it, small letters allowed; on the number pad the place in the list, `1` of vessels."""
    typed = typed.strip().upper()
    if typed in codes:
        return typed
    if typed.isdigit() and 0 < int(typed) <= len(codes):
        return codes[int(typed) - 1]
    return typed


class FillView(ShortForm):
    """One vessel a row."""

    def name(self) -> str:
        return self.tr("Fill vessels")

    def hint(self) -> str:
        return self.tr(
            "One vessel a row, by code or by its number in the list; its weight; the hour if it was not now."
        )

    def fields(self) -> Sequence[Field]:
        return [
            Field("lot", self.tr("lot"), 120, code=True, keeps=True, needed=True),
            Field("vessel", self.tr("vessel"), 90, needed=True), Field("weight", self.tr("weight"), 140, "kg", needed=True),
            Field("hour", self.tr("filled at"), 96),
        ]  # fmt: skip

    def propose(self, story: IntakeStory) -> dict[str, str]:
        free = next((code for code, _, holds in story.vessels if not holds), "")
        return {"lot": self.waits(lambda lot: lot.at_intake_g > 0), "vessel": free}

    def first_box(self) -> str:
        return "vessel"

    def act(self, values: dict[str, str]) -> Act:
        day = self.desk.time.farm_day(self.desk.as_of)
        codes = [code for code, _, _ in self.story.vessels] if self.story else []

        def filling(farm: OpenFarm, answers: dict[str, str]) -> Done:
            from farmdesk.work.fermenting import fill

            at = farm.time.typed(day, values["hour"]) if values["hour"] else farm.written_now()
            code = code_among(codes, values["vessel"])
            hand = Hand("W1", "scale-1", answers=answers)
            return fill(farm, read_lot_typed(farm, values), {code: values["weight"]}, at, hand=hand)

        return filling

    def typed_hour(self) -> int | None:
        """The instant [UTC s] that the hour in the box means; None for none."""
        typed = self.row.values().get("hour", "")
        with suppress(NotPossible):
            return self.desk.time.typed(self.desk.time.farm_day(self.desk.as_of), typed) if typed else None
        return None

    def told_hour(self) -> str:
        """The hour that stands in the box as a whole instant; of a small hour with its night. Empty for none."""
        at = self.typed_hour()
        return self.desk.words.say(self.desk.time.night(at)) if at is not None else ""

    def cells(self, done: Done, values: dict[str, str]) -> dict[str, str]:
        codes = [code for code, _, _ in self.story.vessels] if self.story else []
        return {**values, "vessel": code_among(codes, values["vessel"])}

    def paint_beside(self, side: Side, story: IntakeStory, values: dict[str, str]) -> None:
        lot, number, dosed = self.lot_typed(), self.desk.words.number, False
        self.paint_lot(side, lot)
        if lot is None:
            side.note(self.tr("No lot waits at the intake."))
        else:
            side.big(self.kg(lot.at_intake_g), self.tr("waits at the intake"))
            for code, grams in lot.vessels:
                side.line(self.tr("in {vessel} already").format(vessel=code), self.kg(grams))
            typed_g = grams_in(values["weight"])
            code = code_among([c for c, _, _ in story.vessels], values["vessel"])
            room = next((litres for c, litres, _ in story.vessels if c == code), None)
            if typed_g and room:
                each = story.cherry_kg_l if lot.whole else story.pulped_kg_l
                needs = typed_g / 1000 / each
                side.line(self.tr("{vessel} takes").format(vessel=code), number(room, 0, "L"))
                side.line(
                    self.tr("this needs, at {n} kg of cherry a litre").format(n=number(each, 2)),
                    number(needs, 0, "L"),
                    strong=True,
                )
                if needs > room:
                    side.sentence(
                        self.tr("{n} too much for {vessel}.").format(n=number(needs - room, 0, "L"), vessel=code)
                    )
            dosed = self._yeast(side, lot, round(typed_g or 0))
        if self.told_hour():
            side.line(self.tr("filled"), self.told_hour(), strong=True)
        if lot is not None:
            self._ready(side, story, lot)
        side.heading(self.tr("Vessels"))
        for n, (code, litres, holds) in enumerate(story.vessels[: 6 if dosed else 10], start=1):
            side.line(f"{n}  {code}  {number(litres, 0, 'L')}", holds or self.tr("free"))
        if lot is not None:
            self.will_come(side, lot)

    def _ready(self, side: Side, story: IntakeStory, lot: IntakeLot) -> None:
        """When a vessel filled then would be ready; and when to fill it so that nobody gets up for it."""
        filled = self.typed_hour() or self.desk.as_of
        ends = lot.ready(filled)
        if ends is None:
            return
        local, say = self.desk.time.local, self.desk.words.say
        first, last = local(ends[0]), local(ends[1])
        until = Moment(last, clock=True) if first.date() == last.date() else Moment(last, weekday=True)
        span = f"{say(Moment(first, weekday=True))}–{say(until)}"
        side.line(self.tr("then ready, as is typical"), span, strong=True)
        later_h = story.later_h(first.hour + first.minute / 60)
        if 0 < later_h <= LATER_MOST_H:
            quarter = -(-(filled + later_h * HOUR_S) // QUARTER_S) * QUARTER_S
            hour = say(Moment(local(quarter), clock=True))
            side.note(
                self.tr("That is in the night; filled at {hour} it would be ready when people are up.").format(
                    hour=hour
                )
            )

    def _yeast(self, side: Side, lot: IntakeLot, grams: int) -> bool:
        """What is pitched into this vessel: of what lies in it, never of what was delivered. Says whether it is any."""
        dose = lot.dose(grams)
        if dose is None:
            return False
        number = self.desk.words.number
        side.heading(self.tr("Yeast"))
        each = number(lot.yeast_g_kg or 0.0, 1, "g/kg")
        side.big(number(dose.yeast_g, 0, "g"), self.tr("at {dose} of what lies in the vessel").format(dose=each))
        side.note(
            self.tr("Wake it in {water} of water at {best} ({low} to {high}); the maker’s sheet comes first. ").format(
                water=number(dose.water_ml / 1000, 1, "L"), best=number(WATER_BEST_C, 0, "°C"),
                low=number(WATER_C[0]), high=number(WATER_C[1], 0, "°C"),
            ) + self.tr("Mix in juice until it is within {step} of the mass.").format(step=number(STEP_C, 0, "°C"))
        )  # fmt: skip
        return True


class SpreadView(ShortForm):
    """One row is one act: everything leaves the vessel, a weight for each bed, the rest is pulp and juice."""

    def name(self) -> str:
        return self.tr("Spread on beds")

    def hint(self) -> str:
        return self.tr(
            "Bed and its weight, up to five; + writes them together, for what was not weighed is pulp and juice."
        )

    def fields(self) -> Sequence[Field]:
        found = [Field("lot", self.tr("lot"), 104, code=True, needed=True)]
        for n in range(1, BEDS + 1):
            found.append(Field(f"bed{n}", self.tr("bed"), 50, needed=n == 1))
            found.append(Field(f"kg{n}", self.tr("kg"), 78, needed=n == 1))
        return found

    def propose(self, story: IntakeStory) -> dict[str, str]:
        return {"lot": self.waits(lambda lot: bool(lot.vessels)) or self.waits(lambda lot: lot.at_intake_g > 0)}

    def first_box(self) -> str:
        return "bed1" if self.story and self.propose(self.story)["lot"] else "lot"

    def weighed(self, values: dict[str, str]) -> dict[str, str]:
        """Bed -> weight as typed. Raises NotPossible for a bed without a weight, or the same bed twice."""
        found: dict[str, str] = {}
        for n in range(1, BEDS + 1):
            bed, weight = values[f"bed{n}"].upper(), values[f"kg{n}"]
            if not bed and not weight:
                continue
            if not bed or not weight:
                raise NotPossible(N_("intake", "Bed {bed} and its weight belong together.", bed=bed or "?"))
            if bed in found:
                raise NotPossible(N_("intake", "Bed {bed} stands there twice.", bed=bed))
            found[bed] = weight
        return found

    def act(self, values: dict[str, str]) -> Act:
        def spreading(farm: OpenFarm, answers: dict[str, str]) -> Done:
            from farmdesk.work.drying import spread

            beds = self.weighed(values)
            hand = Hand("Y1", "scale-1", answers=answers)
            return spread(farm, read_lot_typed(farm, values), beds, farm.written_now(), hand=hand)

        return spreading

    def paint_beside(self, side: Side, story: IntakeStory, values: dict[str, str]) -> None:
        from farmdesk.work.portions import place_list

        lot, number = self.lot_typed(), self.desk.words.number
        self.paint_lot(side, lot)
        if lot is None:
            side.note(self.tr("No lot waits to be spread."))
            return
        typed = {
            values[f"bed{n}"].upper(): grams_in(values[f"kg{n}"]) or 0 for n in range(1, BEDS + 1) if values[f"bed{n}"]
        }
        total = sum(typed.values())
        low, high = lot.accepted_g * lot.wet.low, lot.accepted_g * lot.wet.high
        if typed:
            side.big(self.kg(total), self.tr("on {places}").format(places=place_list(typed)))
        else:
            side.sentence(self.tr("Nothing is on a bed yet."))
        rests = (
            self.tr("own {n} {n:lot|lots}").format(n=Counted(lot.wet.lots_n))
            if lot.wet.lots_n
            else self.tr("as is common")
        )
        side.line(self.tr("to expect, {rests}").format(rests=rests), self.between(low, high), strong=True)
        side.line(self.tr("accepted"), self.kg(lot.accepted_g))
        areas = {code: area for code, area, _ in story.beds}
        if typed:
            side.heading(self.tr("How thick it lies"))
        for bed, grams in typed.items():
            if areas.get(bed):
                side.line(
                    self.tr("bed {bed}").format(bed=bed), number(grams / 1000 / areas[bed], 1, "kg/m²"), strong=True
                )
        if lot.loading_kg_m2:
            side.note(self.tr("{method}: {n} kg/m² is meant").format(
                method=self.desk.words.say(lot.method), n=number(lot.loading_kg_m2, 1)))  # fmt: skip
        free = [code for code, _, holds in story.beds if not holds and code not in typed]
        side.heading(self.tr("Free beds"))
        side.line(place_list(free) or self.tr("none"))
        self.will_come(side, lot)
