"""What is missing or doubtful tonight, oldest first; each can be answered by "not measured"."""

from __future__ import annotations

from datetime import timedelta

from farmdesk.clock import DAY_S, HOUR_S
from farmdesk.picture.entries import Check, Parcel, ParcelNews, Reading, Skipped
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.measures import fills, method_of
from farmdesk.picture.picture import Picture
from farmdesk.text import N_, Day, Fact, Num, Text, kg
from farmdesk.work.carrying import STICK, stick_copy_utc_s
from farmdesk.work.doubts import weights_in_doubt
from farmdesk.work.forecasts import now_of
from farmdesk.work.portions import portions
from farmdesk.work.slips import net_g, sacks_of, unusual
from farmdesk.work.stories import Gap

READ_EVERY_H = 24.0  # a bed is read each afternoon; half a day more is a gap (common practice, no source)
IN_USE_D = 3.0  # an instrument read with in the last days is in use
SATURDAY, STICK_EVERY_D = 5, 7  # the day of the week, and how old a copy on a stick may be [d]; the farm's habit


def _skipped(picture: Picture, lot: LotPicture | None) -> set[tuple[str, str, str]]:
    """(place, quantity, day) that were answered with "not measured"."""
    entries = lot.of(Skipped) if lot else picture.general_of(Skipped)
    return {(e.body.place, e.body.quantity, e.body.day) for e in entries}


def gaps(picture: Picture) -> tuple[Gap, ...]:
    """Everything missing or doubtful at the instant of the picture."""
    rows: list[tuple[float, Gap]] = [
        (float(d.at_utc_s), Gap("doubtful", d.text, d.lot, d.place)) for d in picture.doubts
    ]
    for lot in picture.lots.values():
        rows += _beds(picture, lot)
        rows += _vessels(picture, lot)
        rows += _parcels(picture, lot)
        rows += weights_in_doubt(picture, lot)
    rows += _sacks(picture)
    rows += _instruments(picture)
    rows += _weather(picture)
    rows += _stick(picture)
    return tuple(gap for _, gap in sorted(rows, key=lambda row: (row[0], str(row[1].text))))


def _sacks(picture: Picture) -> list[tuple[float, Gap]]:
    """Today's sacks that are far from what their pickers bring: kept, and named once more this evening."""
    begun, sacks = (
        picture.time.instant(picture.time.farm_day(now_of(picture)), picture.time.day_starts_h),
        sacks_of(picture),
    )
    rows: list[tuple[float, Gap]] = []
    for sack in sacks:
        if sack.happened_utc_s >= begun and (usual := unusual(picture, sack, sacks)):
            body = sack.body
            facts: dict[str, Fact] = {"lot": body.lot, "picker": body.picker, "weight": kg(net_g(body), 1)}
            low, high = Num(usual.low_g / 1000), Num(usual.high_g / 1000, "kg")
            text = N_("gaps", "{lot}: {picker} brought {weight}, usually {low}–{high}", **facts, low=low, high=high)
            rows.append((float(sack.happened_utc_s), Gap("doubtful", text, body.lot)))
    return rows


def _beds(picture: Picture, lot: LotPicture) -> list[tuple[float, Gap]]:
    """Beds whose newest reading is older than a day and a half."""
    now, time = now_of(picture), picture.time
    today = time.farm_day(now)
    answered = _skipped(picture, lot)
    late: dict[int, list[str]] = {}
    for portion in portions(picture, lot):
        known = portion.moisture
        at = known.at_utc_s if known else portion.since_utc_s
        at = max(at, portion.since_utc_s)
        place_answered = ("", "moisture", today.isoformat()) in answered
        place_answered |= (portion.place, "moisture", today.isoformat()) in answered
        if now - at > 1.5 * READ_EVERY_H * HOUR_S and not place_answered:
            late.setdefault(at, []).append(portion.place)
    rows = []
    for at, places in late.items():
        where = places[0] if len(places) == 1 else ""
        text = N_(
            "gaps", "{lot}, {places}: no reading since {day}", lot=lot.code, places=_places(places),
            day=Day(time.farm_day(at), weekday=True),
        )  # fmt: skip
        rows.append((float(at), Gap("missing", text, lot.code, where, "moisture", today.isoformat())))
    return rows


def _places(places: list[str]) -> Text:
    if len(places) == 1:
        return N_("gaps", "bed {place}", place=places[0])
    return N_("gaps", "beds {places}", places=" ".join(places))


def _vessels(picture: Picture, lot: LotPicture) -> list[tuple[float, Gap]]:
    """Vessels not read for one and a half intervals, or past their method's latest hour."""
    now, time = now_of(picture), picture.time
    method = method_of(lot, picture.things)
    answered = _skipped(picture, lot)
    today = time.farm_day(now).isoformat()
    rows = []
    for fill in fills(lot, picture.things):
        if fill.until_utc_s is not None or method is None:
            continue
        every_h = 12.0 if method.sealed else 4.0
        seen = [
            e.happened_utc_s
            for e in lot.of(Reading)
            if e.body.place == fill.place and e.body.quantity in ("ph", "mass_c")
        ]
        last = max(seen, default=fill.from_utc_s)
        if now - last > 1.5 * every_h * HOUR_S and (fill.place, "ph", today) not in answered:
            text = N_(
                "gaps", "{vessel} with {lot}: not read for {hours}", vessel=fill.place, lot=lot.code,
                hours=Num((now - last) / HOUR_S, "h"),
            )  # fmt: skip
            rows.append((float(last), Gap("missing", text, lot.code, fill.place, "ph", today)))
    return rows


def _parcels(picture: Picture, lot: LotPicture) -> list[tuple[float, Gap]]:
    """Samples that should have arrived and of which nothing was heard."""
    now, time = now_of(picture), picture.time
    heard = {e.body.parcel for e in lot.of(ParcelNews)}
    rows = []
    for entry in lot.of(Parcel):
        body = entry.body
        if body.due_utc_s is not None and body.due_utc_s < now and entry.id not in heard:
            text = N_(
                "gaps", "sample of {lot} to {buyer}: due {day}, not arrived", lot=lot.code, buyer=body.buyer,
                day=Day(time.calendar_day(body.due_utc_s)),
            )  # fmt: skip
            rows.append((float(body.due_utc_s), Gap("missing", text, lot.code)))
    return rows


def _instruments(picture: Picture) -> list[tuple[float, Gap]]:
    """Instruments in use whose check is overdue; what lies in the drawer needs none."""
    now = now_of(picture)
    last = {e.body.instrument: e.happened_utc_s for e in picture.general_of(Check) if e.body.passed}
    in_use = {
        entry.instrument
        for lot in picture.lots.values()
        for entry in reversed(lot.entries)
        if entry.instrument and now - entry.happened_utc_s < IN_USE_D * DAY_S
    }
    rows = []
    for code, at in last.items():
        tool = picture.things.instruments.get(code)
        if tool is None or tool.check_every_d <= 0 or code not in in_use:
            continue
        days = (now - at) / DAY_S
        if days > tool.check_every_d + 1:
            day = Day(picture.time.farm_day(at))
            text = N_("gaps", "{code}: last good check {day}, {n} ago", code=code, day=day, n=Num(days, "d"))
            rows.append((float(at), Gap("doubtful", text, quantity=code)))
    return rows


def _stick(picture: Picture) -> list[tuple[float, Gap]]:
    """From a Saturday on, where the season was not copied onto another disk for a week; the copy takes it away."""
    time, now = picture.time, now_of(picture)
    if picture.things.farm.practice or not picture.book.by_id:
        return []
    today = time.farm_day(now)
    saturday = today - timedelta(days=(today.weekday() - SATURDAY) % 7)
    made = stick_copy_utc_s(picture.things, time)
    first = min(entry.written_utc_s for entry in picture.book.by_id.values())
    since = time.farm_day(first if made is None else made)
    if (saturday - since).days < STICK_EVERY_D:
        return []
    text = N_("gaps", "no copy on a stick yet: put the stick in")
    if made is not None:
        text = N_("gaps", "last copy on a stick {day}: put the stick in", day=Day(since, weekday=True))
    return [(float(time.instant(saturday, 12)), Gap("missing", text, quantity=STICK))]


def _weather(picture: Picture) -> list[tuple[float, Gap]]:
    """Yesterday's weather, where the day before was written and the season runs."""
    time = picture.time
    today = time.farm_day(now_of(picture))
    day = today - timedelta(days=1)
    answered = _skipped(picture, None)
    before = (day - timedelta(days=1)).isoformat()
    if day.isoformat() in picture.weather or before not in picture.weather:
        return []
    if ("", "weather", day.isoformat()) in answered:
        return []
    text = N_("gaps", "weather of {day} is not written", day=Day(day, weekday=True))
    return [(float(time.instant(day, 18)), Gap("missing", text, quantity="weather", day=day.isoformat()))]
