"""The strip of life: a lot on a ruler in days, the same on a card, a page and a paper."""

from __future__ import annotations

from datetime import date, timedelta

from farmdesk.ahead.range import Ahead
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.measures import bed_days, fills, method_of, on_beds, picked_g
from farmdesk.picture.picture import Picture
from farmdesk.work.forecasts import now_of
from farmdesk.work.portions import daily_moisture, rain_days
from farmdesk.work.stories import Strip, StripDay


def ahead_days(picture: Picture, ahead: Ahead | None) -> tuple[date, date, date | None] | None:
    """Earliest, likely, latest farm day of a range; latest None while it is open."""
    if ahead is None or ahead.earliest_utc_s is None or ahead.likely_utc_s is None:
        return None
    day = picture.time.farm_day
    latest = None if ahead.latest_utc_s is None else day(ahead.latest_utc_s)
    return day(ahead.earliest_utc_s), day(ahead.likely_utc_s), latest


def lot_strip(picture: Picture, lot: LotPicture, ahead: Ahead | None) -> Strip:
    """The strip of one lot as far as it is known."""
    time, things = picture.time, picture.things
    today = time.farm_day(now_of(picture))
    picks: dict[date, int] = {}
    for (day, _), grams in picked_g(lot, time).items():
        picks[day] = picks.get(day, 0) + grams
    vessel = tuple(
        (float(f.from_utc_s), None if f.until_utc_s is None else float(f.until_utc_s)) for f in fills(lot, things)
    )
    stays = on_beds(lot, things, time)
    beds: list[StripDay] = []
    rain: list[tuple[date, float]] = []
    span = bed_days(lot, things, time)
    if stays:
        first = span[0] if span else min(s.first for s in stays)
        last = max((s.last or today + timedelta(days=1)) for s in stays)
        known = daily_moisture(picture, lot)
        for n in range((last - first).days):
            day = first + timedelta(days=n)
            beds.append(StripDay(day, known[day].wb_frac if day in known else None))
        rain = rain_days(
            picture, min(s.from_utc_s for s in stays), max(s.until_utc_s or now_of(picture) for s in stays)
        )
    gate = span[1] if span else None
    method = method_of(lot, things)
    acts = {moved.act: time.farm_day(moved.at_utc_s) for moved in lot.trail}
    sent, milled = acts.get("send"), acts.get("back") or acts.get("join")
    rest_until = gate + timedelta(days=method.rest_days_d) if gate and method and not sent else None
    born = time.farm_day(lot.born_utc_s) if lot.birth else today
    days = [*picks, born, *(s.first for s in stays)]
    coming = ahead_days(picture, ahead)
    ends = [d for d in (today if not milled else None, gate, rest_until, milled, *(coming or ())) if d]
    return Strip(
        min(days),
        max([*ends, *days]) + timedelta(days=1),
        today,
        tuple(sorted(picks.items())),
        vessel,
        tuple(beds),
        tuple(rain),
        gate,
        rest_until,
        sent,
        milled,
        coming,
    )
