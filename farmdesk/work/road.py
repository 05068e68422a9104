"""What lies under each place of the road at this instant, and the season's ruler."""

from __future__ import annotations

from datetime import date

from farmdesk.picture.entries import GREEN, MILL, STORE, Parcel, ParcelNews, Plan, WeighIn
from farmdesk.picture.fold import NEVER
from farmdesk.picture.measures import sent_g
from farmdesk.picture.picture import Picture
from farmdesk.text import N_, Text, kg
from farmdesk.work.farm import OpenFarm
from farmdesk.work.forecasts import now_of
from farmdesk.work.portions import portions
from farmdesk.work.season import season_days, weather_rows
from farmdesk.work.stories import RoadStory


def work_day_n(picture: Picture) -> int:
    """The how-manyeth day of the season it is, counted from its first work written down."""
    first, _ = season_days(picture)
    days = [
        picture.time.farm_day(e.happened_utc_s)
        for e in picture.general
        if picture.time.farm_day(e.happened_utc_s) >= first
    ]
    days += [picture.time.farm_day(lot.born_utc_s) for lot in picture.lots.values() if lot.birth]
    today = picture.time.farm_day(now_of(picture))
    return max((today - min(days, default=today)).days + 1, 1)


def road_story(farm: OpenFarm, at_utc_s: int | None = None) -> RoadStory:
    """The road and the ruler at an instant [UTC s]; None is now."""
    picture = farm.seen(at_utc_s)
    now, things = now_of(picture), picture.things
    first, last = season_days(picture)
    today = picture.time.farm_day(now)
    begun = sum(1 for lot in picture.lots.values() if lot.of(WeighIn))
    under: dict[str, Text | None] = {
        "picking": _picking(picture, today),
        "ferments": _grams(
            sum(g for lot in picture.lots.values() for a, g in lot.heaps.items() if a in things.vessels)
        ),
        "yard": _yard(picture),
        "store": _grams(sum(lot.balance.get(STORE, 0) for lot in picture.lots.values() if not sent_g(lot))),
        "mill": _grams(sum(lot.balance.get(MILL, 0) for lot in picture.lots.values())),
        "cup": _grams(sum(max(lot.balance.get(a, 0), 0) for lot in picture.lots.values() for a in GREEN)),
        "samples": _waiting(picture),
    }
    return RoadStory(
        today,
        work_day_n(picture),
        now,
        picture.known_at if picture.known_at < NEVER else picture.book.last_written_utc_s,
        begun,
        under,
        weather_rows(picture, first, last),
        first,
        last,
        things.farm.practice,
        things.farm.name,
    )


def _grams(grams: int) -> Text | None:
    return N_("road", "{weight}", weight=kg(grams)) if grams > 0 else None


def _yard(picture: Picture) -> Text | None:
    grams = sum(portion.now_g or 0 for lot in picture.lots.values() for portion in portions(picture, lot))
    return N_("road", "{weight}", weight=kg(grams, about=True)) if grams > 0 else None


def _picking(picture: Picture, today: date) -> Text | None:
    """Today's pick as planned, or what was weighed in today."""
    picked = sum(
        e.body.gross_g - e.body.tare_g
        for lot in picture.lots.values()
        for e in lot.of(WeighIn)
        if picture.time.farm_day(e.happened_utc_s) == today
    )
    if picked:
        return _grams(picked)
    planned = sum(e.body.grams for e in picture.plans if isinstance(e.body, Plan) and e.body.day == today.isoformat())
    return N_("road", "{weight} planned", weight=kg(planned)) if planned else None


def _waiting(picture: Picture) -> Text | None:
    buyers = []
    for lot in picture.lots.values():
        heard = {e.body.parcel for e in lot.of(ParcelNews)}
        buyers += [e.body.buyer for e in lot.of(Parcel) if e.id not in heard]
    if not buyers:
        return None
    if len(buyers) == 1:
        return N_("road", "{buyer} waits", buyer=buyers[0])
    return N_("road", "{n} {n:sample|samples} out", n=len(buyers))
