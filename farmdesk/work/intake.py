"""A lot's first day as its forms need it: what waits where, what is usual for its method, what it will come to."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from statistics import median

from farmdesk.clock import HOUR_S
from farmdesk.errors import NotPossible
from farmdesk.picture.codes import check_character
from farmdesk.picture.entries import FLOATERS, INTAKE, SORTED, Ripeness
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.measures import (
    accepted_g,
    came_from_field,
    floaters_g,
    method_of,
    outturn_frac,
    sorted_g,
    spread_g,
    stored_g,
)
from farmdesk.picture.picture import Picture
from farmdesk.picture.things import Method
from farmdesk.science.dose import Dose, yeast_dose
from farmdesk.text import N_, Day, Num, Text, kg
from farmdesk.work.cards import blocks_of
from farmdesk.work.crop import boxes
from farmdesk.work.farm import OpenFarm
from farmdesk.work.forecasts import ferment_if_filled, now_of
from farmdesk.work.normals import ENOUGH_N
from farmdesk.work.picking import next_code
from farmdesk.work.picking_story import CountStory, counted
from farmdesk.work.portions import METHOD_WORDS, method_words
from farmdesk.work.settings import asleep_h, kg_a_litre, number

# What cherry comes to where no own lots say it: common practice, no source; a farm's own lots replace them.
DRY_FOR_ACCEPTED = {False: 0.20, True: 0.34}  # dry parchment; dried whole
WET_FOR_ACCEPTED = {False: 0.39, True: 1.0}
GREEN_FOR_DRY = {False: 0.81, True: 0.48}
STARTED_SPREAD_FRAC = 0.06  # either way of a ratio that is not the farm's own (common practice, no source)
RECENT_N = 8  # lots offered in a form


@dataclass(frozen=True, slots=True)
class Ratio:
    """A ratio (middle [kg/kg]) with its range, and how many own lots it rests on; none: from common practice."""

    low: float
    middle: float
    high: float
    lots_n: int


@dataclass(frozen=True, slots=True)
class IntakeLot:
    """A lot on its first day. Weights in grams [g]; `at_intake_g` waits to be sorted, filled or spread."""

    code: str
    check: str
    method: Text
    whole: bool
    blocks: str
    delivered_g: int
    sorted_g: int
    floaters_g: int
    sorted_yet: bool
    at_intake_g: int
    vessels: tuple[tuple[str, int], ...]
    counts: tuple[CountStory, ...]
    floats: Ratio | None  # floaters of what was delivered, own lots
    sorts: Ratio | None
    wet: Ratio  # what is spread, of what was accepted
    loading_kg_m2: float
    will_come: Text | None
    will_rest: Text | None
    yeast_g_kg: float | None = None  # what its method pitches
    takes_h: tuple[float, float] | None = None  # from filling to ready, earliest and latest

    @property
    def accepted_g(self) -> int:
        """What is left after hand sort and floating [g]."""
        return self.delivered_g - self.sorted_g - self.floaters_g

    def ready(self, filled_utc_s: float) -> tuple[float, float] | None:
        """When a vessel filled at an instant would be ready, earliest and latest [UTC s]; None where nobody knows."""
        if self.takes_h is None:
            return None
        return filled_utc_s + self.takes_h[0] * HOUR_S, filled_utc_s + self.takes_h[1] * HOUR_S

    def dose(self, grams: int) -> Dose | None:
        """The yeast for so much of it [g] in a vessel; None where its method pitches none."""
        return yeast_dose(grams, self.yeast_g_kg) if self.yeast_g_kg and grams else None


@dataclass(frozen=True, eq=False)
class IntakeStory:
    """Everything the short forms show."""

    at_utc_s: int
    day: date
    lots: tuple[IntakeLot, ...]  # the newest first
    methods: tuple[tuple[str, Text, str, str], ...]  # letter, words, the next code, its check character
    plans: tuple[tuple[str, str, Text], ...]  # code, method, what is meant; the next day first
    blocks: tuple[str, ...]
    vessels: tuple[tuple[str, float, str], ...]  # code, usable litres, the lot in it or ""
    beds: tuple[tuple[str, float, str], ...]  # code, m², the lot on it or ""
    cherry_kg_l: float
    pulped_kg_l: float
    limit_pct: float
    asleep_h: tuple[float, float] = (20.0, 4.0)

    def later_h(self, hour_h: float) -> float:
        """How much later [h] an hour of the day must fall for people to be awake; 0 where they are."""
        asleep, awake = self.asleep_h
        into_h, night_h = (hour_h - asleep) % 24, (awake - asleep) % 24
        return night_h - into_h if into_h < night_h else 0.0

    def lot(self, typed: str) -> IntakeLot | None:
        """The lot that a hand names by code or number."""
        typed = typed.strip().upper()
        exact = next((lot for lot in self.lots if lot.code == typed), None)
        if exact is not None or not typed.isdigit():
            return exact
        return next((lot for lot in self.lots if lot.code[3:5] == typed.zfill(2)), None)


def intake_story(farm: OpenFarm, at_utc_s: int | None = None, *, now_utc_s: int | None = None) -> IntakeStory:
    """The lots of the last days and where they may go, at an instant [UTC s]; without one all that is known counts,
    said at `now_utc_s` [UTC s].
    """
    picture = farm.seen(at_utc_s)
    things, now = picture.things, now_of(picture) if now_utc_s is None else now_utc_s
    begun = sorted(
        (lot for lot in picture.lots.values() if lot.birth is not None and not _joined(lot)),
        key=lambda lot: (lot.born_utc_s, lot.code), reverse=True,
    )  # fmt: skip
    letters = dict.fromkeys(method.letter for method in things.methods.values())
    methods = []
    for letter in letters:
        code = next_code(farm, letter)
        words = METHOD_WORDS.get(letter, N_("intake", "{name}", name=_name(things.method(letter))))
        methods.append((letter, words, code, check_character(code)))
    return IntakeStory(
        now, picture.time.farm_day(now), tuple(_lot(picture, lot) for lot in begun[:RECENT_N]), tuple(methods),
        _plans(picture), tuple(things.blocks),
        tuple((code, v.usable_l, _holder(picture, code)) for code, v in things.vessels.items()),
        tuple((code, p.area_m2, _holder(picture, code)) for code, p in things.places.items()),
        kg_a_litre(things, True), kg_a_litre(things, False),
        number(things, "unripe_limit_pct") or 0.0, asleep_h(things),
    )  # fmt: skip


def _plans(picture: Picture) -> tuple[tuple[str, str, Text], ...]:
    """Lots that are planned and have not begun."""
    rows = sorted((e.body for e in picture.plans), key=lambda plan: (plan.day, plan.lot))
    return tuple(
        (
            plan.lot, plan.method,
            N_(
                "intake", "{lot}, block {block}, {day}, {weight}", lot=plan.lot, block=plan.block,
                day=Day(date.fromisoformat(plan.day), weekday=True), weight=kg(plan.grams, about=True),
            ),
        )
        for plan in rows
    )  # fmt: skip


def _name(method: Method | None) -> str:
    return method.name if method else ""


def _joined(lot: LotPicture) -> bool:
    """Whether it was made of other lots, so that it had no first day of its own."""
    return any(moved.act == "join" for moved in lot.trail) and not came_from_field(lot)


def _holder(picture: Picture, place: str) -> str:
    return " ".join(picture.lying_at(place))


def _takes_h(picture: Picture, method: Method | None) -> tuple[float, float] | None:
    """How long a vessel takes from filling until it is ready [h]: the range that is typical for the method."""
    ahead = ferment_if_filled(picture, method, 0.0, 0.0) if method else None
    if ahead is None or ahead.earliest_utc_s is None or ahead.latest_utc_s is None:
        return None
    return ahead.earliest_utc_s / HOUR_S, ahead.latest_utc_s / HOUR_S


def _lot(picture: Picture, lot: LotPicture) -> IntakeLot:
    method = method_of(lot, picture.things)
    whole = bool(method and method.whole)
    will, rest = will_come_to(picture, lot.code)
    limit = number(picture.things, "unripe_limit_pct") or 0.0
    counts = tuple(
        counted([e.body], N_("picking_story", "{block} {half}", block=e.body.block, half=e.body.half_day), limit)
        for e in lot.of(Ripeness)
    )
    wet = own_ratio(picture, lot, lambda o: (spread_g(o), accepted_g(o))) or started(WET_FOR_ACCEPTED[whole])
    return IntakeLot(
        lot.code, check_character(lot.code), method_words(lot), whole, "+".join(blocks_of(picture, lot)),
        lot.delivered_g, sorted_g(lot), floaters_g(lot), any(moved.act == "sort" for moved in lot.trail),
        lot.balance.get(INTAKE, 0),
        tuple((code, lot.heaps[code]) for code in picture.things.vessels if lot.heaps.get(code, 0) > 0), counts,
        own_ratio(picture, lot, lambda o: (o.balance.get(FLOATERS), o.delivered_g)),
        own_ratio(picture, lot, lambda o: (o.balance.get(SORTED), o.delivered_g)),
        wet, method.loading_kg_m2 if method else 0.0, will, rest, method.yeast_g_kg if method else None,
        _takes_h(picture, method),
    )  # fmt: skip


def own_ratio(picture: Picture, lot: LotPicture, of: Callable[[LotPicture], tuple[int | None, int]]) -> Ratio | None:
    """A ratio over the farm's other lots of the same method: a tenth from each end, and the middle; None for too few."""
    method = method_of(lot, picture.things)
    found = []
    for other in picture.lots.values():
        if other.code != lot.code and method is not None and method_of(other, picture.things) == method:
            part, all_ = of(other)
            if part and all_ > 0:
                found.append(part / all_)
    if len(found) < ENOUGH_N:
        return None
    found.sort()
    cut = len(found) // 10
    return Ratio(found[cut], median(found), found[-1 - cut], len(found))


def started(middle: float) -> Ratio:
    """A ratio (middle [kg/kg]) that is not the farm’s own yet."""
    return Ratio(middle * (1 - STARTED_SPREAD_FRAC), middle, middle * (1 + STARTED_SPREAD_FRAC), 0)


def will_come_to(picture: Picture, code: str) -> tuple[Text | None, Text | None]:
    """What a lot will come to in boxes, as a range, and what that rests on; (None, None) before anything is weighed.

    Once dry it is top grade by own milled lots (`work.crop.boxes`). Before, green coffee: accepted cherry times
    own ratios, or common practice's where fewer than five own lots say.
    """
    lot = picture.lots[code]
    try:
        return boxes(picture, code).text, None
    except NotPossible:
        pass
    accepted = accepted_g(lot)
    if accepted <= 0:
        return None, None
    method = method_of(lot, picture.things)
    whole = bool(method and method.whole)
    dry_g = stored_g(lot)
    dry = own_ratio(picture, lot, lambda o: (stored_g(o), accepted_g(o))) or started(DRY_FOR_ACCEPTED[whole])
    out = own_ratio(picture, lot, _outturn_parts) or started(GREEN_FOR_DRY[whole])
    low = round((dry_g or accepted * dry.low) * out.low)
    high = round((dry_g or accepted * dry.high) * out.high)
    box_g = round((number(picture.things, "box_kg") or 30) * 1000)
    n, rest = divmod(low, box_g)
    text = N_(
        "intake", "{low}–{high} of green; boxes of {box}: {n}, rest {rest}, for samples first", low=Num(low / 1000), high=kg(high), n=n,
        box=kg(box_g), rest=kg(rest, 1),
    )  # fmt: skip
    least_g = round((number(picture.things, "mill_least_kg") or 0) * 1000)
    if (dry_g or accepted * dry.high) < least_g:
        text = N_("intake", "{text}; the mill takes no less than {least} dry", text=text, least=kg(least_g))
    return text, N_(
        "intake", "rests on {dry} and {out}", dry=_of_lots(dry, dry_g is not None), out=_of_lots(out, False)
    )


def _outturn_parts(lot: LotPicture) -> tuple[int | None, int]:
    share = outturn_frac(lot)
    return (round(share * 1_000_000), 1_000_000) if share else (None, 0)


def _of_lots(ratio: Ratio, weighed: bool) -> Text:
    if weighed:
        return N_("intake", "its dry weight")
    if not ratio.lots_n:
        return N_("intake", "{ratio} as is common, no own lots yet", ratio=Num(ratio.middle, "", 2))
    return N_("intake", "{ratio} of {n} own {n:lot|lots}", ratio=Num(ratio.middle, "", 2), n=ratio.lots_n)
