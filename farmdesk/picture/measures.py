"""What can be said of a lot in one number: weights by stage, days, hours, bed-days, yields.

Pure sums over a `LotPicture`; `None` where the papers do not say. Days are farm days. Grams [g] are whole.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from farmdesk.clock import HOUR_S, FarmTime
from farmdesk.picture.entries import (
    FIELD,
    FLOATERS,
    GREEN,
    HUSK,
    MILL,
    SORTED,
    STORE,
    TOP,
    UNEXPLAINED,
    Correction,
    Entry,
    Reading,
    Ripeness,
    WeighIn,
)
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.things import Method, Things


def method_of(lot: LotPicture, things: Things) -> Method | None:
    """The method of a lot, in the version it was begun with."""
    return things.method(lot.birth.method, lot.birth.method_version) if lot.birth else None


def sorted_g(lot: LotPicture) -> int:
    """Grams [g] sorted out by hand."""
    return lot.balance.get(SORTED, 0)


def floaters_g(lot: LotPicture) -> int:
    """Grams [g] floated off."""
    return lot.balance.get(FLOATERS, 0)


def accepted_g(lot: LotPicture) -> int:
    """Grams [g] of cherry left after hand sort and floating."""
    return lot.delivered_g - sorted_g(lot) - floaters_g(lot)


def _into(lot: LotPicture, act: str, accounts: frozenset[str] | None = None) -> int:
    """Grams [g] that arrived by an act: at these accounts, or at any that is a place."""
    return sum(
        grams
        for moved in lot.trail
        if moved.act == act
        for account, grams in moved.lines
        if grams > 0 and (account in accounts if accounts is not None else account[0] not in "<>")
    )


def spread_g(lot: LotPicture) -> int | None:
    """Grams [g] first spread to dry, wet; None before."""
    return _into(lot, "spread") or None


def stored_g(lot: LotPicture) -> int | None:
    """Grams [g] weighed into the store, dry; None before."""
    return _into(lot, "shelve", frozenset({STORE})) or None


def sent_g(lot: LotPicture) -> int | None:
    """Grams [g] sent to the mill; None before."""
    return _into(lot, "send", frozenset({MILL})) or None


def graded_g(lot: LotPicture, account: str) -> int | None:
    """Grams [g] of one grade (or of husk) as the mill's slip, or a joining, gave them; None before."""
    if not any(moved.act in ("back", "join") for moved in lot.trail):
        return None
    accounts = frozenset({account})
    return _into(lot, "back", accounts) + _into(lot, "join", accounts)


def green_g(lot: LotPicture) -> int | None:
    """Grams [g] of green coffee of all grades; None before the mill's slip."""
    parts = [graded_g(lot, account) for account in GREEN]
    return None if parts[0] is None else sum(part or 0 for part in parts)


def top_g(lot: LotPicture) -> int | None:
    """Grams [g] of the top grade; None before the mill's slip."""
    return graded_g(lot, TOP)


def husk_g(lot: LotPicture) -> int | None:
    """Grams [g] of husk on the mill's slip; None before it."""
    return graded_g(lot, HUSK)


def unexplained_g(lot: LotPicture) -> int:
    """Grams [g] that no paper explains (posted where a weighing closed short)."""
    return lot.balance.get(UNEXPLAINED, 0)


def outturn_frac(lot: LotPicture) -> float | None:
    """Green over what was sent [fraction]; None before the mill's slip."""
    sent, green = sent_g(lot), green_g(lot)
    return green / sent if sent and green is not None else None


def pick_days(lot: LotPicture, time: FarmTime) -> list[date]:
    """The farm days on which sacks of this lot were weighed."""
    return sorted({time.farm_day(entry.happened_utc_s) for entry in lot.of(WeighIn)})


def picked_g(lot: LotPicture, time: FarmTime) -> dict[tuple[date, str], int]:
    """Grams [g] delivered by farm day and block."""
    sums: dict[tuple[date, str], int] = {}
    for entry in lot.of(WeighIn):
        body = entry.body
        key = time.farm_day(entry.happened_utc_s), body.block
        sums[key] = sums.get(key, 0) + body.gross_g - body.tare_g
    return sums


def blocks_g(lot: LotPicture, time: FarmTime) -> dict[str, int]:
    """Grams [g] delivered by block, the largest first."""
    sums: dict[str, int] = {}
    for (_, block), grams in picked_g(lot, time).items():
        sums[block] = sums.get(block, 0) + grams
    return dict(sorted(sums.items(), key=lambda item: -item[1]))


def ripe_frac(lot: LotPicture) -> float | None:
    """Share of ripe fruit [fraction] over all counts of the lot; None where none was counted."""
    counts = [entry.body for entry in lot.of(Ripeness)]
    ripe = sum(c.ripe for c in counts if isinstance(c, Ripeness))
    total = sum(
        c.green + c.turning + c.ripe + c.over_ripe + c.dried + c.bored for c in counts if isinstance(c, Ripeness)
    )
    return ripe / total if total else None


@dataclass(frozen=True, slots=True)
class Fill:
    """A vessel held the lot from an instant to another [UTC s]; None while it still does; grams [g] filled."""

    place: str
    from_utc_s: int
    until_utc_s: int | None
    grams: int

    @property
    def hours_h(self) -> float | None:
        """How long it held it [h]."""
        return None if self.until_utc_s is None else (self.until_utc_s - self.from_utc_s) / HOUR_S


def fills(lot: LotPicture, things: Things) -> list[Fill]:
    """The lot's time in vessels, in order; it ends when the vessel is emptied."""
    found = []
    for stay in lot.stays:
        if stay.place in things.vessels:
            until = stay.until_utc_s
            grams = sum(
                g
                for moved in lot.trail
                for account, g in moved.lines
                if account == stay.place and g > 0 and stay.from_utc_s <= moved.at_utc_s <= (until or moved.at_utc_s)
            )
            found.append(Fill(stay.place, stay.from_utc_s, until, grams))
    return found


@dataclass(frozen=True, slots=True)
class OnBed:
    """The lot lay on a drying place from one farm day to another (None: still there)."""

    place: str
    from_utc_s: int
    until_utc_s: int | None
    first: date
    last: date | None


def on_beds(lot: LotPicture, things: Things, time: FarmTime) -> list[OnBed]:
    """The lot's time on drying places, in order."""
    return [
        OnBed(
            stay.place,
            stay.from_utc_s,
            stay.until_utc_s,
            time.farm_day(stay.from_utc_s),
            None if stay.until_utc_s is None else time.farm_day(stay.until_utc_s),
        )
        for stay in lot.stays
        if stay.place in things.places
    ]


def first_beds(lot: LotPicture, things: Things) -> list[str]:
    """The beds the lot was first spread on (patio cells are left out), in order of the papers."""
    found: list[str] = []
    for moved in lot.trail:
        if moved.act in ("spread", "move"):
            found += [a for a, g in moved.lines if g > 0 and a in things.places and things.places[a].kind == "bed"]
            if found:
                break
    return found


def bed_days(lot: LotPicture, things: Things, time: FarmTime) -> tuple[date, date | None] | None:
    """First farm day on beds and the day the first of it came into the store (None: not yet)."""
    stays = [s for s in on_beds(lot, things, time) if things.places[s.place].kind == "bed"]
    if not stays:
        return None
    gates = [m.at_utc_s for m in lot.trail if m.act == "shelve"]
    return min(s.first for s in stays), time.farm_day(gates[0]) if gates else None


def dry_days_d(lot: LotPicture, things: Things, time: FarmTime) -> int | None:
    """Days [d] from the first bed to the first of it in the store; None before."""
    span = bed_days(lot, things, time)
    return (span[1] - span[0]).days if span and span[1] else None


def area_days_m2_d(lot: LotPicture, things: Things, time: FarmTime, today: date | None = None) -> float:
    """Square metres of bed times farm days [m²·d]; a bed still in use counts until `today`."""
    total = 0.0
    for stay in on_beds(lot, things, time):
        place = things.places[stay.place]
        last = stay.last or today
        if place.kind == "bed" and last is not None:
            total += place.area_m2 * (last - stay.first).days
    return total


def loading_kg_m2(lot: LotPicture, things: Things) -> float | None:
    """Kilograms spread on a square metre of bed at first [kg/m²]; None before."""
    grams = spread_g(lot)
    area = sum(things.places[code].area_m2 for code in first_beds(lot, things))
    return grams / 1000 / area if grams and area else None


def correction_in_force(
    corrections: list[Correction], instrument: str, quantity: str, at_utc_s: int
) -> Correction | None:
    """The correction of an instrument that holds at an instant [UTC s]; None where it needs none.

    Of several that hold at an instant, the last written counts: a later check knows better.
    """
    held = None
    for c in corrections:
        within = c.from_utc_s <= at_utc_s and (c.until_utc_s is None or at_utc_s <= c.until_utc_s)
        if within and c.instrument == instrument and c.quantity == quantity:
            held = c
    return held


def correction_at(corrections: list[Correction], instrument: str, quantity: str, at_utc_s: int) -> float:
    """What an instrument's reading at an instant [UTC s] counts more, in its base unit."""
    held = correction_in_force(corrections, instrument, quantity, at_utc_s)
    return held.add if held else 0.0


def meter_readings(lot: LotPicture, place: str | None = None) -> list[Entry[Reading]]:
    """Moisture meter readings of the lot, of one place where one is named, in order."""
    return [
        entry
        for entry in lot.of(Reading)
        if entry.body.quantity == "meter_wb_frac" and (place is None or entry.body.place == place)
    ]


def meter_wb_frac(entry: Entry[Reading], corrections: list[Correction]) -> float:
    """The mean of a meter reading's repeats with the correction in force [fraction wet basis]."""
    return entry.body.value + correction_at(corrections, entry.instrument, "meter_wb_frac", entry.happened_utc_s)


def end_wb_frac(lot: LotPicture, corrections: list[Correction]) -> float | None:
    """Moisture at the gate [fraction wet basis]: the last meter reading, corrected, taken by the instant the
    first of the lot was weighed into the store; None where it was not measured or not yet shelved.
    """
    gates = [m.at_utc_s for m in lot.trail if m.act == "shelve"]
    if not gates:
        return None
    before = [e for e in meter_readings(lot) if e.happened_utc_s <= gates[0]]
    return meter_wb_frac(before[-1], corrections) if before else None


def family(lot: LotPicture) -> tuple[dict[str, int], dict[str, int]]:
    """Grams [g] that came from and went to other lots: (parents, children)."""
    parents: dict[str, int] = {}
    children: dict[str, int] = {}
    for entry in lot.entries:
        postings = getattr(entry.body, "postings", ())
        own = sum(p.grams for p in postings if p.lot == lot.code)
        others = {p.lot for p in postings} - {lot.code}
        for other in others:
            grams = sum(p.grams for p in postings if p.lot == other)
            if own >= 0 and grams < 0:
                parents[other] = parents.get(other, 0) - grams
            elif own < 0 and grams > 0:
                children[other] = children.get(other, 0) - own
    return parents, children


def came_from_field(lot: LotPicture) -> bool:
    """Whether sacks of this lot were weighed in (a joint lot has none of its own)."""
    return FIELD in lot.balance
