"""How ripe a delivery came, and what leaves it by hand sort and by floating."""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import suppress
from typing import TYPE_CHECKING

from farmdesk.desk.pages.sheet_head import HALVES
from farmdesk.desk.pages.short_form import ShortForm, Side, read_lot_typed
from farmdesk.desk.widgets.form_row import Act, Field
from farmdesk.errors import FarmError, NotPossible
from farmdesk.picture.entries import Ripeness
from farmdesk.text import N_, Counted
from farmdesk.units import grams_of, read_number
from farmdesk.work.changes import Done, Hand
from farmdesk.work.intake import IntakeStory, Ratio
from farmdesk.work.picking_story import chance, counted

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

WET_FRAC = 0.01, 0.03  # water that drained cherry still carries (common practice, no source)
CLASSES = ("green", "turning", "ripe", "over_ripe", "dried", "bored")


def grams_in(typed: str) -> float | None:
    """A weight as it stands in a box [g]; None for nothing, or what is no weight."""
    with suppress(FarmError):
        return grams_of(read_number(typed, "kg")) if typed.strip() else None
    return None


class CountView(ShortForm):
    """Fruits by class: at least fifty, a hundred is usual."""

    def name(self) -> str:
        return self.tr("Ripeness count")

    def hint(self) -> str:
        return self.tr(
            "Fruits by class, in the order of the tray; half-day 1 morning, 2 afternoon. An empty box is none."
        )

    def fields(self) -> Sequence[Field]:
        return [
            Field("lot", self.tr("lot"), 104, code=True, keeps=True, needed=True),
            Field("block", self.tr("block"), 60, keeps=True, needed=True),
            Field("half", self.tr("half-day"), 72, keeps=True, needed=True), Field("green", self.tr("green"), 74),
            Field("turning", self.tr("turning"), 74), Field("ripe", self.tr("ripe"), 74),
            Field("over_ripe", self.tr("over-ripe"), 104), Field("dried", self.tr("dried"), 74),
            Field("bored", self.tr("bored"), 74),
        ]  # fmt: skip

    def propose(self, story: IntakeStory) -> dict[str, str]:
        code = self.waits(lambda lot: lot.at_intake_g > 0) or (story.lots[0].code if story.lots else "")
        lot = story.lot(code)
        local = self.desk.time.local(self.desk.present)
        half = "1" if 4 <= local.hour < 14 else "2"
        return {"lot": code, "block": (lot.blocks.split("+")[0] if lot else ""), "half": half}

    def first_box(self) -> str:
        return "green"

    def act(self, values: dict[str, str]) -> Act:
        def count(farm: OpenFarm, answers: dict[str, str]) -> Done:
            from farmdesk.work.picking import count_ripeness

            lot, counts = read_lot_typed(farm, values), self.counts(values)
            half = HALVES.get(values["half"].lower(), values["half"])
            if half not in ("am", "pm"):
                raise NotPossible(N_("picking", "A half-day is 1 for the morning or 2 for the afternoon."))
            block = values["block"].upper()
            if farm.things.blocks and block not in farm.things.blocks:
                raise NotPossible(N_("picking", "The farm has no block {block}.", block=block or "?"))
            hand = Hand("caporal", answers=answers)
            return count_ripeness(farm, lot, block, half, counts, farm.written_now(), hand)

        return count

    @staticmethod
    def counts(values: dict[str, str]) -> dict[str, int]:
        """The classes as whole numbers. Raises NotPossible."""
        found = {}
        for name in CLASSES:
            typed = values[name] or "0"
            if not typed.isdigit():
                raise NotPossible(N_("picking", "A count needs whole numbers of fruits in its classes."))
            found[name] = int(typed)
        return found

    def paint_beside(self, side: Side, story: IntakeStory, values: dict[str, str]) -> None:
        lot = self.lot_typed()
        number = self.desk.words.number
        self.paint_lot(side, lot)
        counts = None
        with suppress(FarmError):
            counts = self.counts(values)
        n = sum(counts.values()) if counts else 0
        if counts and n:
            told = counted([Ripeness("", "", "", **counts)], N_("intake", "now"), story.limit_pct)
            side.big(f"{number(100 * told.ripe.value)} %", self.tr("ripe of {n} {n:fruit|fruits}").format(n=Counted(n)))
            for name, share in ((self.tr("ripe"), told.ripe), (self.tr("green"), told.green)):
                low, high = number(100 * share.low, 1), number(100 * share.high, 1)
                side.line(name, self.tr("between {low} and {high} %").format(low=low, high=high), strong=True)
            limit = number(story.limit_pct, 1)
            if told.passes:
                side.note(self.tr("Green within the limit of {limit} % by its low end.").format(limit=limit))
            else:
                side.note(
                    self.tr("Green above the limit of {limit} %, even at the low end of its range.").format(limit=limit)
                )
            if n < 50:
                side.note(self.tr("Fewer than 50 fruits say little; count more."))
        else:
            side.note(self.tr("Count at least 50 fruits; 100 is usual."))
        if lot is not None and lot.counts:
            side.heading(self.tr("Counted before"))
            for count in lot.counts[-5:]:
                low, high = number(100 * count.ripe.low), number(100 * count.ripe.high)
                words = self.tr("{low}–{high} % ripe of {n}").format(low=low, high=high, n=count.fruits_n)
                side.line(self.desk.words.say(count.said), words)
        side.heading(self.tr("What chance does"))
        side.sentence(self.desk.words.say(chance()))


class SortView(ShortForm):
    """What leaves the delivery; what stays is accepted."""

    def name(self) -> str:
        return self.tr("Sort and float")

    def hint(self) -> str:
        return self.tr(
            "What was sorted out by hand, and what floated; what stays is accepted. Nothing is 0, not measured is *."
        )

    def fields(self) -> Sequence[Field]:
        return [
            Field("lot", self.tr("lot"), 120, code=True, needed=True),
            Field("sorted", self.tr("sorted out"), 150, "kg", needed=True),
            Field("floaters", self.tr("floaters"), 150, "kg", needed=True),
            Field("drained", self.tr("if wet, drained"), 130, self.tr("min")),
        ]  # fmt: skip

    def propose(self, story: IntakeStory) -> dict[str, str]:
        return {"lot": self.waits(lambda lot: lot.at_intake_g > 0 and not lot.sorted_yet)}

    def first_box(self) -> str:
        return "sorted" if self.story and self.propose(self.story)["lot"] else "lot"

    def act(self, values: dict[str, str]) -> Act:
        def sort(farm: OpenFarm, answers: dict[str, str]) -> Done:
            from farmdesk.work.picking import sort_and_float

            return sort_and_float(
                farm, read_lot_typed(farm, values), sorted_out=values["sorted"], floaters=values["floaters"],
                at_utc_s=farm.written_now(), drained=values["drained"], hand=Hand("W1", "scale-1", answers=answers),
            )  # fmt: skip

        return sort

    def paint_beside(self, side: Side, story: IntakeStory, values: dict[str, str]) -> None:
        lot, number = self.lot_typed(), self.desk.words.number
        self.paint_lot(side, lot)
        if lot is None:
            side.note(self.tr("No lot waits to be sorted."))
            return
        out, floats = grams_in(values["sorted"]), grams_in(values["floaters"])
        side.line(self.tr("delivered"), self.kg(lot.delivered_g), strong=True)
        rows = ((self.tr("sorted out"), out, lot.sorts), (self.tr("floaters"), floats, lot.floats))
        for name, grams, normal in rows:
            share = f"{number(100 * grams / lot.delivered_g, 1)} %" if grams is not None and lot.delivered_g else ""
            side.line(name, share, strong=True)
            side.note(self._normal(normal))
        if values["drained"] and floats:
            low, high = (number(floats * frac / 1000, 1) for frac in WET_FRAC)
            side.note(
                self.tr("Weighed wet: {low}–{high} kg of it may be water on the skin.").format(low=low, high=high)
            )
        left = lot.delivered_g - lot.sorted_g - lot.floaters_g - (out or 0) - (floats or 0)
        side.heading(self.tr("Accepted"))
        side.big(self.kg(left), self.tr("of {all} delivered").format(all=self.kg(lot.delivered_g)))
        if lot.wet.lots_n and not lot.whole:
            wet = self.between(left * lot.wet.low, left * lot.wet.high)
            side.note(
                self.tr("wet parchment to expect: {wet}, {n} own {n:lot|lots}").format(
                    wet=wet, n=Counted(lot.wet.lots_n)
                )
            )
        self.will_come(side, lot)

    def _normal(self, ratio: Ratio | None) -> str:
        number = self.desk.words.number
        if ratio is None:
            return self.tr("too few own lots of this method to say what is normal")
        low, high = number(100 * ratio.low, 1), number(100 * ratio.high, 1)
        return self.tr("own normal {low}–{high} %, {n} {n:lot|lots} of this method").format(
            low=low, high=high, n=Counted(ratio.lots_n)
        )
