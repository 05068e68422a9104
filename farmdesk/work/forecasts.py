"""When a lot will be done: the one function through which every forecast answers.

Pages, papers and the command line all ask `ready`; what stands behind it may grow, the question stays.
"""

from __future__ import annotations

from farmdesk.ahead.range import Ahead, typical
from farmdesk.clock import DAY_S, HOUR_S
from farmdesk.picture.fold import NEVER, LotPicture
from farmdesk.picture.measures import bed_days, fills, method_of, on_beds
from farmdesk.picture.picture import Picture
from farmdesk.picture.things import Method

STORE_AT_WB_FRAC = 0.12  # dry enough for the store: the upper edge of the usual band, a setting of the method


def _finished_h(picture: Picture, method: Method, kind: str) -> list[float]:
    """How long the farm's own finished lots of a method took [h]: on the beds, or in a vessel."""
    took: list[float] = []
    for lot in picture.lots.values():
        other = method_of(lot, picture.things)
        if other is None or other.letter != method.letter:
            continue
        if kind == "drying":
            span = bed_days(lot, picture.things, picture.time)
            if span and span[1]:
                took.append(24.0 * max((span[1] - span[0]).days, 1))
        else:
            took += [fill.hours_h for fill in fills(lot, picture.things) if fill.hours_h]
    return took


def drying_ready(picture: Picture, lot: LotPicture) -> Ahead | None:
    """When a lot that lies on the beds will be dry enough for the store; None when it does not lie there."""
    method = method_of(lot, picture.things)
    lying = [s for s in on_beds(lot, picture.things, picture.time) if s.until_utc_s is None]
    if method is None or not lying:
        return None
    start = min(s.from_utc_s for s in on_beds(lot, picture.things, picture.time))
    longest_h = method.dry_days_max_d * 24.0
    settings_h = (0.7 * longest_h, 0.85 * longest_h, longest_h)
    return typical(_finished_h(picture, method, "drying"), settings_h, start, now_of(picture))


def ferment_ready(picture: Picture, lot: LotPicture, place: str) -> Ahead | None:
    """When the vessel's ferment will be done; None when nothing of the lot is in it."""
    method = method_of(lot, picture.things)
    fill = next((f for f in fills(lot, picture.things) if f.place == place and f.until_utc_s is None), None)
    if method is None or fill is None or not method.hours_low_h or not method.hours_high_h:
        return None
    low_h, high_h = method.hours_low_h, method.hours_high_h
    settings_h = (low_h, (low_h + high_h) / 2, max(high_h, low_h * 1.05))
    own = _finished_h(picture, method, "ferment")
    return typical(own, settings_h, fill.from_utc_s, now_of(picture))


def ready(picture: Picture, lot: LotPicture) -> Ahead | None:
    """When the lot is done with what it is at now: its ferment, or its drying; None when neither runs."""
    for account, grams in lot.heaps.items():
        if grams > 0 and account in picture.things.vessels:
            return ferment_ready(picture, lot, account)
    return drying_ready(picture, lot)


def now_of(picture: Picture) -> int:
    """The instant [UTC s] a picture stands at: its own, or that of the last row it knows."""
    if picture.as_of != NEVER:
        return picture.as_of
    latest = picture.book.last_written_utc_s
    return latest if latest else 0


def typical_days_d(picture: Picture, lot: LotPicture) -> tuple[float, float] | None:
    """Shortest and longest drying of the farm's own finished lots of the method [d]; None under two."""
    method = method_of(lot, picture.things)
    took = _finished_h(picture, method, "drying") if method else []
    return (min(took) * HOUR_S / DAY_S, max(took) * HOUR_S / DAY_S) if len(took) > 1 else None
