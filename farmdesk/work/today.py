"""The first screen: what must be opened or washed, which beds first, rain, fruit, gaps, who waits."""

from __future__ import annotations

from datetime import date, timedelta
from statistics import quantiles

from farmdesk.clock import DAY_S, HOUR_S
from farmdesk.picture.entries import Hold, Outlook, Parcel, ParcelNews, Plan, Reading
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.measures import Fill, fills, method_of
from farmdesk.picture.picture import Picture
from farmdesk.picture.things import OPEN, ROOF
from farmdesk.science.isotherms import PARCHMENT
from farmdesk.science.moisture import to_dry_basis
from farmdesk.text import N_, Day, Moment, Num, Text, kg, pct
from farmdesk.work.farm import OpenFarm
from farmdesk.work.forecasts import ferment_ready, now_of
from farmdesk.work.gaps import gaps
from farmdesk.work.portions import METHOD_WORDS, method_words, place_list, portions
from farmdesk.work.road import work_day_n
from farmdesk.work.settings import number
from farmdesk.work.stories import TodayStory, VesselStory, YardStory
from farmdesk.work.yard import yard_of

# worth lost to rain by stage: wet 0.2, 45-30 % 0.4, 30-20 % 0.7, drier 1.0 (the farm's own judgement, a setting)
SENSITIVE = ((0.45, 0.2), (0.30, 0.4), (0.20, 0.7), (0.0, 1.0))
MORNING_C = 20.0  # the air at which the morning's humidity limits are said
SOON_H = 1.0


def today_story(farm: OpenFarm, at_utc_s: int | None = None) -> TodayStory:
    """The first screen at an instant [UTC s], as known then; None is now."""
    picture = farm.seen(at_utc_s)
    now, time = now_of(picture), picture.time
    today = time.farm_day(now)
    yard = yard_of(picture)
    vessels = vessel_stories(picture)
    busy = {v.code for v in vessels}
    free = tuple(c for c, v in picture.things.vessels.items() if c not in busy and v.kind != "liner")
    rain_list, minutes = _rain_list(picture)
    found = gaps(picture)
    due = any(v.due for v in vessels) or bool(yard.todo)
    calm = None if due or found else N_("today", "Nothing is due. The yard may rest, and so may you.")
    if not picture.lots and not found:
        calm = N_("today", "No lot has begun yet. Press g to begin the first.")
    return TodayStory(
        now,
        today,
        work_day_n(picture),
        _night(picture, today),
        yard.used,
        yard.beds,
        yard.water_g,
        vessels,
        free,
        yard,
        _open_first(picture),
        _outlook(picture, today),
        rain_list,
        minutes,
        _picking(picture, today),
        _fruit(picture, today, yard),
        _waiting(picture, now),
        found,
        _jobs(picture, vessels, yard, minutes),
        calm,
        bool(picture.lots),
        _gas(picture) if vessels else None,
    )


def _gas(picture: Picture) -> tuple[str, Text] | None:
    from farmdesk.work.room_gas import room_gas  # only when something ferments: a start need not wait for it

    return room_gas(picture)


def vessel_stories(picture: Picture) -> tuple[VesselStory, ...]:
    """Vessels at work, the earliest end first."""
    now = now_of(picture)
    rows = []
    for lot in picture.lots.values():
        method = method_of(lot, picture.things)
        for fill in fills(lot, picture.things):
            if fill.until_utc_s is not None:
                continue
            ahead = ferment_ready(picture, lot, fill.place)
            ph = _last(lot, fill, "ph")
            mass = _last(lot, fill, "mass_c")
            latest = fill.from_utc_s + int(method.hours_high_h * HOUR_S) if method and method.hours_high_h else None
            due = ""
            if ahead and ahead.earliest_utc_s is not None:
                if ahead.earliest_utc_s <= now + SOON_H * HOUR_S:
                    due = "now"
                elif ahead.earliest_utc_s <= now + 14 * HOUR_S:
                    due = "today"
            rows.append(
                VesselStory(
                    fill.place,
                    lot.code,
                    method_words(lot),
                    fill.from_utc_s,
                    fill.grams,
                    tuple(ph),
                    ph[-1][1] if ph else None,
                    mass[-1][1] if mass else None,
                    max((row[-1][0] for row in (ph, mass) if row), default=None),
                    ahead,
                    latest,
                    due,
                    bool(method and method.sealed),
                )
            )
    return tuple(
        sorted(rows, key=lambda v: (v.ahead.earliest_utc_s if v.ahead and v.ahead.earliest_utc_s else 1e18, v.code))
    )


def _last(lot: LotPicture, fill: Fill, quantity: str) -> list[tuple[int, float]]:
    return [
        (e.happened_utc_s, e.body.value)
        for e in lot.of(Reading)
        if e.body.place == fill.place and e.body.quantity == quantity and e.happened_utc_s >= fill.from_utc_s
    ]


def _night(picture: Picture, today: date) -> Text | None:
    """Last night, from the weather written for yesterday; the low is of that day."""
    row = picture.weather.get((today - timedelta(days=1)).isoformat())
    if row is None:
        return None
    return N_(
        "today", "yesterday {low}–{high} · {rh} · {rain}", low=Num(row.min_c, "", 1), high=Num(row.max_c, "°C", 1),
        rh=pct(row.rh_frac, 0), rain=Num(row.rain_mm, "mm"),
    )  # fmt: skip


def _open_first(picture: Picture) -> tuple[tuple[Text, tuple[str, ...], Text], ...]:
    """The order of opening: wet beds first; drier ones when the air is drier than they are.

    The limit is the water activity of parchment at the bed's moisture and 20 °C by the parchment isotherm
    (from memory: Trejos, Roa, Oliveros 1989): above it the coffee would take water up.
    """
    groups: dict[int, list[tuple[str, float]]] = {}
    for lot in picture.lots.values():
        for portion in portions(picture, lot):
            wb = portion.moisture.wb_frac if portion.moisture else 0.5
            limit = _limit(wb)
            groups.setdefault(100 if limit is None else 5 * round(20 * limit), []).append((portion.place, wb))
    rows = []
    for limit_pct in sorted(groups, reverse=True):
        members = groups[limit_pct]
        beds = tuple(place for place, _ in members)
        low, high = min(m for _, m in members), max(m for _, m in members)
        wet = (
            pct(low, 0)
            if pct(low, 0) == pct(high, 0)
            else N_("today", "{a}–{b}", a=Num(low * 100, "", 0), b=pct(high, 0))
        )
        if limit_pct == 100:
            rows.append((N_("today", "first"), beds, N_("today", "{wet}: wetter than any morning air", wet=wet)))
        else:
            when = N_("today", "when RH is under {rh}", rh=Num(limit_pct, "%"))
            rows.append((when, beds, N_("today", "{wet}: in damper air they would take water up", wet=wet)))
    return tuple(rows)


def _limit(wb_frac: float) -> float | None:
    """Humidity [0..1] above which coffee at this moisture takes water up; None where no air is that damp."""
    driest = 0.10
    answer = PARCHMENT.activity(float(to_dry_basis(max(wb_frac, driest))), MORNING_C)
    return None if bool(answer.wet) else float(answer.activity_frac)


def _outlook(picture: Picture, today: date) -> Text | None:
    """What the processor expects of the sky in the days ahead, in the farm's own words."""
    words: dict[str, str] = {}
    for entry in picture.general_of(Outlook):
        if entry.body.day >= today.isoformat():
            words[entry.body.day] = entry.body.words
    rain = sorted(day for day, word in words.items() if word == "rain")
    if rain:
        return N_("today", "you expect rain from {day}", day=Day(date.fromisoformat(rain[0]), weekday=True))
    return N_("today", "you expect no rain") if words else None


def _rain_list(picture: Picture) -> tuple[tuple[tuple[tuple[str, ...], float], ...], float]:
    """Open beds in the order in which covering them saves most for a minute; minutes for the crew."""
    crew = max(1, round(number(picture.things, "crew") or 1))
    rows: list[tuple[float, str, float]] = []
    for lot in picture.lots.values():
        for portion in portions(picture, lot):
            place = picture.things.places[portion.place]
            if place.cover in (ROOF, OPEN) or place.cover_min <= 0:
                continue
            wb = portion.moisture.wb_frac if portion.moisture else 0.5
            dry_g = (portion.now_g or 0) * (1 - wb)
            sensitive = next(s for limit, s in SENSITIVE if wb >= limit)
            rows.append((dry_g * sensitive / place.cover_min, portion.place, place.cover_min / crew))
    rows.sort(key=lambda row: -row[0])
    runs: list[tuple[list[str], float]] = []
    for _, code, minutes in rows:
        if (
            runs
            and abs(picture.things.places[runs[-1][0][-1]].cover_min / crew - minutes) < 1e-9
            and len(runs[-1][0]) < 6
        ):
            runs[-1] = ([*runs[-1][0], code], runs[-1][1] + minutes)
        else:
            runs.append(([code], minutes))
    return tuple((tuple(codes), minutes) for codes, minutes in runs), sum(minutes for _, minutes in runs)


def _plans(picture: Picture, day: date) -> list[Plan]:
    return [e.body for e in picture.plans if isinstance(e.body, Plan) and e.body.day == day.isoformat()]


def _picking(picture: Picture, today: date) -> tuple[tuple[str, Text], ...]:
    """Today's and tomorrow's picks as planned."""
    rows = []
    for day in (today, today + timedelta(days=1)):
        for plan in _plans(picture, day):
            when = N_("today", "today") if day == today else N_("today", "tomorrow")
            words = N_(
                "today", "{when}: {weight} for {lot}", when=when, weight=kg(plan.grams, about=True), lot=plan.lot
            )
            rows.append((plan.block, words))
    return tuple(rows)


def _fruit(picture: Picture, today: date, yard: YardStory) -> tuple[tuple[Text, Text], ...]:
    """Where the coming fruit is to go, and whether there are beds for it."""
    free = [p.code for p in yard.places if p.kind == "bed" and not p.lying]
    rows: list[tuple[Text, Text]] = []
    for plan in [*_plans(picture, today), *_plans(picture, today + timedelta(days=1))]:
        words = METHOD_WORDS.get(plan.method, N_("today", "method not written"))
        if plan.places:
            taken = [p for p in plan.places if p not in free]
            beds = place_list(plan.places)
            line = N_("today", "{lot} to beds {beds}", lot=plan.lot, beds=beds)
            if taken:
                line = N_(
                    "today",
                    "{lot} to beds {beds}; not free yet: {taken}",
                    lot=plan.lot,
                    beds=beds,
                    taken=place_list(taken),
                )
        else:
            line = N_("today", "{lot}, {weight}", lot=plan.lot, weight=kg(plan.grams, about=True))
        rows.append((words, line))
    rows.append(
        (N_("today", "free beds"), N_("today", "{beds}", beds=place_list(free)) if free else N_("today", "none"))
    )
    return tuple(rows)


def _waiting(picture: Picture, now: int) -> tuple[tuple[str, Text], ...]:
    """Who expects something: samples on their way, holds that end within a week."""
    rows: list[tuple[float, str, Text]] = []
    for lot in picture.lots.values():
        heard = {e.body.parcel for e in lot.of(ParcelNews)}
        for entry in lot.of(Parcel):
            body = entry.body
            if entry.id in heard:
                continue
            due = body.due_utc_s or entry.happened_utc_s
            day = Day(picture.time.calendar_day(due))
            line = N_("today", "sample of {lot}, due {day}", lot=lot.code, day=day)
            rows.append((due, body.buyer, line))
        for hold in (entry.body for entry in lot.of(Hold)):
            if now <= hold.until_utc_s <= now + 7 * DAY_S:
                day = Day(picture.time.calendar_day(hold.until_utc_s))
                line = N_("today", "hold of {weight} of {lot} ends {day}", weight=kg(hold.grams), lot=lot.code, day=day)
                rows.append((hold.until_utc_s, hold.buyer, line))
    return tuple((who, what) for _, who, what in sorted(rows, key=lambda row: (row[0], row[1])))


Jobs = tuple[tuple[str, float, float, Text, str], ...]


def _jobs(picture: Picture, vessels: tuple[VesselStory, ...], yard: YardStory, cover_min: float) -> Jobs:
    """The day's rail: usual good hours, ends of ferments, readings, covering, the office."""
    time, now = picture.time, now_of(picture)
    day = time.farm_day(now)
    start = time.instant(day, time.day_starts_h)

    def hour(at_utc_s: float) -> float:
        return time.day_starts_h + (at_utc_s - start) / HOUR_S

    rows: list[tuple[str, float, float, Text, str]] = []
    lately = [w.good_h for d, w in sorted(picture.weather.items()) if d < day.isoformat()][-14:]
    if len(lately) >= 5:
        deciles = quantiles(lately, n=10)
        words = N_("today", "good hours, usually {a}–{b}", a=Num(deciles[0], "", 1), b=Num(deciles[8], "h", 1))
        rows.append(("sky", 8.0, 8.0 + sorted(lately)[len(lately) // 2], words, ""))
    for vessel in vessels:
        if vessel.ahead and vessel.ahead.earliest_utc_s is not None:
            a = max(hour(vessel.ahead.earliest_utc_s), hour(now))
            b = max(hour(vessel.ahead.latest_utc_s or vessel.ahead.earliest_utc_s + 2 * HOUR_S), a + 0.5)
            if 4 <= a < 28:
                clock = Moment(time.local(vessel.ahead.earliest_utc_s), clock=True)
                words = N_("today", "{vessel} {lot} from {at}", vessel=vessel.code, lot=vessel.lot, at=clock)
                rows.append(("wet side", a, min(b, 28.0), words, vessel.due))
    lying = [p.code for p in yard.places if p.lying and p.kind == "bed"]
    if lying:
        rows.append(("yard", 16.0, 17.0, N_("today", "read {n} {n:bed|beds}", n=len(lying)), ""))
        if cover_min:
            minutes = Num(cover_min, "min")
            rows.append(("yard", 18.0, 18.0 + cover_min / 60, N_("today", "cover, {minutes}", minutes=minutes), ""))
    rows.append(("office", 18.5, 19.25, N_("today", "type the sheets"), ""))
    return tuple(rows)
