"""A lot's numbers beside the own normal of its method: median and spread of the farm's other lots."""

from __future__ import annotations

from collections.abc import Callable
from statistics import median

from farmdesk.picture.fold import LotPicture
from farmdesk.picture.measures import (
    accepted_g,
    area_days_m2_d,
    dry_days_d,
    fills,
    floaters_g,
    green_g,
    loading_kg_m2,
    method_of,
    outturn_frac,
    ripe_frac,
    spread_g,
    stored_g,
)
from farmdesk.picture.picture import Picture
from farmdesk.text import N_, Num, Text, kg
from farmdesk.work.changes import Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.guards import ask
from farmdesk.work.stories import Normal

ENOUGH_N = 5  # fewer own lots than this are no normal (common practice, no source)
UNUSUAL_MADS = 3.0
LEAST_SPREAD = 0.01  # of the middle: lots that came out alike all but exactly must not make every other one unlikely


def _ratio(part: int | None, whole: int | None) -> float | None:
    return part / whole if part and whole else None


def _hours(picture: Picture, lot: LotPicture) -> float | None:
    hours = [f.hours_h for f in fills(lot, picture.things) if f.hours_h]
    return max(hours) if hours else None


def wet(picture: Picture, lot: LotPicture) -> float | None:
    """Wet weight for accepted cherry."""
    return _ratio(spread_g(lot), accepted_g(lot))


def dry(picture: Picture, lot: LotPicture) -> float | None:
    """Dry weight for accepted cherry."""
    return _ratio(stored_g(lot), accepted_g(lot))


Row = tuple[Text, Callable[[Picture, LotPicture], "float | None"], str, int, float]

ROWS: tuple[Row, ...] = (
    (N_("normals", "ripe"), lambda p, lot: ripe_frac(lot), "%", 0, 100),
    (N_("normals", "floaters"), lambda p, lot: _ratio(floaters_g(lot), lot.delivered_g), "%", 1, 100),
    (N_("normals", "ferment"), _hours, "h", 0, 1),
    (N_("normals", "wet for accepted"), wet, "", 3, 1),
    (N_("normals", "loading"), lambda p, lot: loading_kg_m2(lot, p.things), "kg/m²", 1, 1),
    (N_("normals", "drying"), lambda p, lot: dry_days_d(lot, p.things, p.time), "d", 0, 1),
    (N_("normals", "dry for accepted"), dry, "", 3, 1),
    (N_("normals", "bed-days for accepted"), lambda p, lot: _bed_days(p, lot), "m²·d/kg", 2, 1),
    (N_("normals", "outturn"), lambda p, lot: outturn_frac(lot), "%", 1, 100),
)


def _bed_days(picture: Picture, lot: LotPicture) -> float | None:
    accepted = accepted_g(lot)
    if dry_days_d(lot, picture.things, picture.time) is None or accepted <= 0:
        return None
    return area_days_m2_d(lot, picture.things, picture.time) / (accepted / 1000)


LATER = tuple(row[1] for row in ROWS[-4:])  # what only a finished lot can say


def _others(picture: Picture, lot: LotPicture, measure: Callable[[Picture, LotPicture], float | None]) -> list[float]:
    """The other lots of the method, by a measure, in order."""
    method = method_of(lot, picture.things)
    same = [
        other
        for other in picture.lots.values()
        if other.code != lot.code and method is not None and method_of(other, picture.things) == method
    ]
    return sorted(value for other in same if (value := measure(picture, other)) is not None)


def like_own_lots(farm: OpenFarm, lot: LotPicture, stage: str, grams: int, hand: Hand) -> None:
    """Ask once when a weight (`spread` or `stored`, all of the lot) is far from what own lots of its method came to.

    Far is beyond three median absolute deviations, and never less than 3 % of the middle; fewer than five own
    lots are no normal, and nothing is asked.
    """
    accepted, measure = accepted_g(lot), wet if stage == "spread" else dry
    values = _others(farm.picture, lot, measure)
    if len(values) < ENOUGH_N or accepted <= 0:
        return
    middle = median(values)
    spread = max(1.4826 * median(abs(v - middle) for v in values), LEAST_SPREAD * middle)
    low, high = middle - UNUSUAL_MADS * spread, middle + UNUSUAL_MADS * spread
    if not low <= grams / accepted <= high:
        text = N_(
            "normals", "{weight} of {lot}: by your {n} other lots of this method {low}–{high}. Is the weight right?",
            weight=kg(grams), lot=lot.code, n=len(values), low=Num(low * accepted / 1000), high=kg(high * accepted),
        )  # fmt: skip
        ask(hand, "weight", "own normal", text)


def normals(picture: Picture, lot: LotPicture) -> tuple[tuple[Normal, ...], Text]:
    """Rows of this lot's number and the range of the other lots of its method, and what the range rests on."""
    found: list[Normal] = []
    most = 0
    for name, measure, unit, decimals, scale in ROWS:
        own = measure(picture, lot)
        values = [value * scale for value in _others(picture, lot, measure)]
        most = max(most, len(values))
        normal = None
        unusual = False
        if len(values) >= ENOUGH_N:
            middle = median(values)
            spread = 1.4826 * median(abs(v - middle) for v in values)
            low, high = values[len(values) // 10], values[-1 - len(values) // 10]
            normal = N_("normals", "{low}–{high}", low=Num(low, "", decimals), high=Num(high, unit, decimals))
            unusual = own is not None and abs(own * scale - middle) > UNUSUAL_MADS * max(spread, 10.0**-decimals)
        if own is not None or normal is not None:
            own_words: Text | None
            if own is not None:
                own_words = N_("normals", "{value}", value=Num(own * scale, unit, decimals))
            else:
                own_words = N_("normals", "not yet") if measure in LATER and green_g(lot) is None else None
            found.append(Normal(name, own_words, normal, unusual))
    if most >= ENOUGH_N:
        return tuple(found), N_("normals", "own normal, {n} other lots of this method", n=most)
    return tuple(found), N_("normals", "own normal: {n} other {n:lot|lots} of this method, too few to say", n=most)
