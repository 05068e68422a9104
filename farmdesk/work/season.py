"""The season's calendar: picks by block, vessels, beds as boards, store, mill, samples and sales."""

from __future__ import annotations

from datetime import date, timedelta

from farmdesk.picture.entries import MILL, Hold, Parcel, Sale
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.measures import fills, on_beds, picked_g, stored_g
from farmdesk.picture.picture import Picture
from farmdesk.picture.things import Block
from farmdesk.text import N_, Day, Days, Fact, Text, kg
from farmdesk.work.farm import OpenFarm
from farmdesk.work.forecasts import drying_ready, now_of
from farmdesk.work.portions import daily_moisture
from farmdesk.work.season_story import Board, Pick, SeasonStory, VesselBar
from farmdesk.work.stories import DayWeather, StripDay
from farmdesk.work.strips import ahead_days


def season_days(picture: Picture) -> tuple[date, date]:
    """First and last day of the season's ruler: the farm's own, stretched to what is written."""
    farm, time = picture.things.farm, picture.time
    now = time.farm_day(now_of(picture))
    first = date.fromisoformat(farm.first_day) if farm.first_day else now - timedelta(days=30)
    last = date.fromisoformat(farm.last_day) if farm.last_day else now + timedelta(days=60)
    return first, last


def weather_rows(picture: Picture, first: date, last: date) -> tuple[DayWeather, ...]:
    """The weather of each day of a span; None where it was not written."""
    rows = []
    for n in range((last - first).days + 1):
        day = first + timedelta(days=n)
        w = picture.weather.get(day.isoformat())
        rows.append(DayWeather(day, w.good_h if w else None, w.rain_mm if w else None))
    return tuple(rows)


def boards_of(picture: Picture, lot: LotPicture) -> list[Board]:
    """A lot's stays on beds as boards, each day with its own water."""
    today = picture.time.farm_day(now_of(picture))
    coming = ahead_days(picture, drying_ready(picture, lot))
    found = []
    for stay in on_beds(lot, picture.things, picture.time):
        if picture.things.places[stay.place].kind != "bed":
            continue
        last = stay.last or today + timedelta(days=1)
        known = daily_moisture(picture, lot, stay.place)
        days = tuple(
            StripDay(day, known[day].wb_frac if day in known else None)
            for n in range(max((last - stay.first).days, 1))
            if (day := stay.first + timedelta(days=n))
        )
        found.append(Board(lot.code, stay.place, stay.first, stay.last, days, coming if stay.last is None else None))
    return found


def _planned(picture: Picture) -> tuple[list[Pick], list[Board]]:
    picks, boards = [], []
    for entry in picture.plans:
        plan = entry.body
        day = date.fromisoformat(plan.day)
        picks.append(Pick(plan.block, day, plan.grams, plan.lot, True))
        method = picture.things.method(plan.method)
        longest = method.dry_days_max_d if method else 21
        ahead = (
            day + timedelta(days=round(0.7 * longest)),
            day + timedelta(days=round(0.85 * longest)),
            day + timedelta(days=longest),
        )
        boards += [Board(plan.lot, place, day, None, (), ahead, True) for place in plan.places]
    return picks, boards


def season_story(farm: OpenFarm, at_utc_s: int | None = None) -> SeasonStory:
    """The season at an instant [UTC s], as known then; None is now."""
    picture = farm.seen(at_utc_s)
    things, time = picture.things, picture.time
    first, last = season_days(picture)
    today = time.farm_day(now_of(picture))
    picks, boards = _planned(picture)
    bars: list[VesselBar] = []
    rests: list[tuple[str, date, date | None, int]] = []
    runs: dict[date, list[tuple[str, int]]] = {}
    events: list[tuple[date, str, Text]] = []
    for lot in picture.lots.values():
        picks += [Pick(block, day, grams, lot.code) for (day, block), grams in picked_g(lot, time).items()]
        bars += [VesselBar(lot.code, f.place, f.from_utc_s, f.until_utc_s) for f in fills(lot, things)]
        boards += boards_of(picture, lot)
        for moved in lot.trail:
            day = time.farm_day(moved.at_utc_s)
            if moved.act == "send":
                runs.setdefault(day, []).append((lot.code, dict(moved.lines).get(MILL, 0)))
        stored = stored_g(lot)
        if stored:
            came = next(time.farm_day(m.at_utc_s) for m in lot.trail if m.act == "shelve")
            gone = next((time.farm_day(m.at_utc_s) for m in lot.trail if m.act == "send"), None)
            rests.append((lot.code, came, gone, stored))
        events += _promises(picture, lot)
    beds = tuple((p.code, p.cover, p.area_m2) for p in things.places.values() if p.kind == "bed")
    return SeasonStory(
        first,
        last,
        today,
        _headline(picture, boards, len(beds)),
        weather_rows(picture, first, last),
        tuple((b.code, b.name_local or b.name, (b.low_m + b.high_m) / 2) for b in _downhill(picture)),
        tuple(sorted(picks, key=lambda p: (p.day, p.block))),
        tuple(code for code, v in things.vessels.items() if v.kind != "liner"),
        tuple(sorted(bars, key=lambda b: (b.from_utc_s, b.vessel))),
        beds,
        tuple(sorted(boards, key=lambda b: (b.first_day, b.lot, b.place))),
        tuple(sorted(rests, key=lambda r: r[1])),
        tuple((day, tuple(code for code, _ in rows), sum(g for _, g in rows)) for day, rows in sorted(runs.items())),
        tuple(sorted(events, key=lambda e: (e[0], e[1]))),
        _tide(boards, first, last),
    )


def _downhill(picture: Picture) -> list[Block]:
    return sorted(picture.things.blocks.values(), key=lambda b: -(b.low_m + b.high_m))


def _promises(picture: Picture, lot: LotPicture) -> list[tuple[date, str, Text]]:
    day = picture.time.farm_day
    rows = [
        (day(parcel.happened_utc_s), lot.code, N_("season", "sample to {buyer}", buyer=parcel.body.buyer))
        for parcel in lot.of(Parcel)
    ]
    for hold in lot.of(Hold):
        words = N_("season", "{weight} held for {buyer}", weight=kg(hold.body.grams, 1), buyer=hold.body.buyer)
        rows.append((day(hold.happened_utc_s), lot.code, words))
    for sale in lot.of(Sale):
        words = N_("season", "{weight} sold to {buyer}", weight=kg(sale.body.grams, 1), buyer=sale.body.buyer)
        rows.append((day(sale.happened_utc_s), lot.code, words))
    return rows


def _tide(boards: list[Board], first: date, last: date) -> tuple[tuple[date, int], ...]:
    """Beds in use on each day, of what is known (a board still open counts while it has days)."""
    used: dict[date, set[str]] = {}
    for board in boards:
        for row in board.days:
            used.setdefault(row.day, set()).add(board.place)
    return tuple(
        (day, len(used.get(day, ()))) for n in range((last - first).days + 1) if (day := first + timedelta(days=n))
    )


def _headline(picture: Picture, boards: list[Board], beds: int) -> Text:
    today = picture.time.farm_day(now_of(picture))
    lying = {b.place for b in boards if b.last_day is None and not b.planned}
    ahead = [b.ahead for b in boards if b.ahead and not b.planned]
    begun = sum(1 for lot in picture.lots.values() if lot.trail and any(m.act == "weighin" for m in lot.trail))
    if not boards and not begun:
        return N_("season", "Nothing is written yet; the season begins with the first sack weighed.")
    if not lying:
        return N_("season", "{n} {n:lot|lots}; every bed is free.", n=begun)
    facts = {"n": begun, "used": len(lying), "beds": beds}
    if ahead:  # the first to end does so not before the earliest of all, nor after the soonest latest
        first = max(min(range_[0] for range_ in ahead), today)
        lasts = [range_[2] for range_ in ahead if range_[2] is not None]
        when: Fact = Days(first, max(min(lasts), today)) if lasts else N_("season", "from {day}", day=Day(first))
        return N_(
            "season",
            "{n} {n:lot|lots}; {used} of {beds} {beds:bed|beds} in use; the next may come free {when}.",
            **facts,
            when=when,
        )
    return N_("season", "{n} {n:lot|lots}; {used} of {beds} {beds:bed|beds} in use.", **facts)
