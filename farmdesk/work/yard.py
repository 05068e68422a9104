"""The yard to scale: what lies where, how wet, what changed, what must be done, water still to leave."""

from __future__ import annotations

from datetime import date, timedelta
from itertools import pairwise
from statistics import median

from farmdesk.clock import HOUR_S
from farmdesk.picture.entries import Cover, Entry, Flow, Remark
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.matter import ledger
from farmdesk.picture.picture import Picture
from farmdesk.text import N_, Moment, Num, Text, kg, pct
from farmdesk.work.farm import OpenFarm
from farmdesk.work.forecasts import now_of
from farmdesk.work.portions import TARGET_WB_FRAC, Portion, daily_moisture, lies_at, place_list, portions
from farmdesk.work.stories import Dated, LotWater, Lying, ToDo, YardMark, YardPlace, YardStory

WETTED_FRAC = 0.02  # two points more than the day before is water taken up
SWEAT_H, SWEAT_WB_FRAC = 16.0, 0.30  # covered this long above this moisture is flagged (common practice, no source)
CHANGED_H = 18.0


def covered_at(picture: Picture) -> dict[str, int]:
    """Places that are covered now, and since when [UTC s]."""
    since: dict[str, int] = {}
    for entry in picture.covers:
        body = entry.body
        for place in body.places:
            if body.on:
                since.setdefault(place, entry.happened_utc_s)
            else:
                since.pop(place, None)
    return since


def _took_up(picture: Picture, lot: LotPicture, place: str) -> tuple[float, float] | None:
    """Moistures before and after, where the portion took up two points or more since the day before."""
    days = sorted(daily_moisture(picture, lot, place).items())
    if len(days) < 2 or (picture.time.farm_day(now_of(picture)) - days[-1][0]).days > 1:
        return None
    before, after = days[-2][1].wb_frac, days[-1][1].wb_frac
    return (before, after) if after - before >= WETTED_FRAC else None


def _lying(picture: Picture, lot: LotPicture, portion: Portion) -> Lying:
    known = portion.moisture
    wetted = _took_up(picture, lot, portion.place)
    return Lying(
        lot.code,
        portion.since_utc_s,
        known.wb_frac if known else None,
        known.mark if known else "measured",
        portion.now_g,
        portion.water_left_g,
        last_utc_s=known.at_utc_s if known else None,
        doubtful=bool(known and known.doubtful),
        was_wb_frac=wetted[0] if wetted else None,
    )


def yard_jobs(picture: Picture) -> list[ToDo]:
    """What the yard itself asks for: re-wetted portions, beds covered too long, lots ready for the store."""
    found: list[ToDo] = []
    covered, now = covered_at(picture), now_of(picture)
    for lot in picture.lots.values():
        lying = portions(picture, lot)
        wet: dict[tuple[float, float], list[str]] = {}
        sweating: list[str] = []
        dry: list[str] = []
        for portion in lying:
            known = portion.moisture
            if known is None:
                continue
            took = _took_up(picture, lot, portion.place)
            if took:
                wet.setdefault(took, []).append(portion.place)
            hours = (now - covered[portion.place]) / HOUR_S if portion.place in covered else 0.0
            if hours > SWEAT_H and known.wb_frac > SWEAT_WB_FRAC:
                sweating.append(portion.place)
            if known.wb_frac <= TARGET_WB_FRAC:
                dry.append(portion.place)
        for (before, after), places in wet.items():
            what = N_(
                "yard", "{lot} took up water, {a} to {b}: keep it apart", lot=lot.code, a=pct(before), b=pct(after)
            )
            found.append(ToDo(place_list(places), what, due="now", lot=lot.code))
        if sweating:
            since = Moment(picture.time.local(min(covered[p] for p in sweating)), weekday=True)
            what = N_("yard", "{lot} covered since {since}: open as soon as it is dry", lot=lot.code, since=since)
            found.append(ToDo(place_list(sweating), what, due="now", lot=lot.code))
        if dry:
            driest = min((p.moisture.wb_frac for p in lying if p.moisture), default=0.0)
            what = N_("yard", "{lot} is at {m}: weigh it into the store", lot=lot.code, m=pct(driest))
            found.append(ToDo(place_list(dry), what, lot=lot.code))
    return found


def _changed(picture: Picture) -> tuple[Dated, ...]:
    """What happened on the yard in the last hours, newest last: moves, covers, events."""
    now = now_of(picture)
    first = now - CHANGED_H * HOUR_S
    lines = [(entry, _event_line(entry)) for entry in picture.general if entry.happened_utc_s >= first]
    for lot in picture.lots.values():
        lines += [(entry, _lot_line(lot, entry)) for entry in lot.entries if entry.happened_utc_s >= first]
    rows = [Dated(entry.happened_utc_s, *line) for entry, line in lines if line]
    return tuple(sorted(rows, key=lambda row: row.at_utc_s))


def _event_line(entry: Entry) -> tuple[Text, Text | None] | None:
    body = entry.body
    if isinstance(body, Cover):
        beds = place_list(body.places)
        head = N_("yard", "Covered {beds}.", beds=beds) if body.on else N_("yard", "Opened {beds}.", beds=beds)
        return head, N_("yard", "{text}", text=body.text) if body.text else None
    if isinstance(body, Remark) and body.about == "event":
        return N_("yard", "{text}", text=body.text), None
    return None


def _lot_line(lot: LotPicture, entry: Entry) -> tuple[Text, Text | None] | None:
    body = entry.body
    if isinstance(body, Remark) and body.about == "event":
        more = N_("yard", "{lot} on {place}", lot=lot.code, place=body.place) if body.place else None
        return N_("yard", "{text}", text=body.text), more
    if isinstance(body, Flow) and body.act in ("spread", "move", "shelve", "fill"):
        moved = next((m for m in lot.trail if m.entry == entry.id), None)
        if moved is None:
            return None
        grams = sum(g for account, g in moved.lines if g > 0 and account[0] not in "<>")
        into = place_list([account for account, g in moved.lines if g > 0 and account[0] not in "<>"])
        words = {
            "spread": N_("yard", "{lot} spread on {places}.", lot=lot.code, places=into),
            "move": N_("yard", "{lot} moved to {places}.", lot=lot.code, places=into),
            "shelve": N_("yard", "{lot} weighed into the store.", lot=lot.code),
            "fill": N_("yard", "{lot} filled into {places}.", lot=lot.code, places=into),
        }
        return words[body.act], None if body.act == "move" else N_("yard", "{weight}", weight=kg(grams))
    return None


def usual_day_g(picture: Picture) -> int | None:
    """Water [g] that a usual day of the last seven took from the yard; None without readings."""
    taken: dict[date, float] = {}
    today = picture.time.farm_day(now_of(picture))
    for lot in picture.lots.values():
        spread = next((s for s in ledger(lot, picture.things, picture.corrections) if s.name == "spread"), None)
        if spread is None:
            continue
        days = sorted(daily_moisture(picture, lot).items())
        for (day, known), (after, dried) in pairwise(days):
            if (after - day).days == 1 and 0 <= (today - after).days < 7:
                drop = known.wb_frac / (1 - known.wb_frac) - dried.wb_frac / (1 - dried.wb_frac)
                taken[after] = taken.get(after, 0.0) + max(drop, 0.0) * spread.dry.dry_g
    return round(median(taken.values())) if taken else None


def yard_story(farm: OpenFarm, at_utc_s: int | None = None) -> YardStory:
    """The yard at an instant [UTC s], as known then; None is now."""
    return yard_of(farm.seen(at_utc_s))


def yard_of(picture: Picture) -> YardStory:
    """The yard of a picture."""
    things, now = picture.things, now_of(picture)
    covered = covered_at(picture)
    by_place: dict[str, list[Lying]] = {}
    water: list[LotWater] = []
    for lot in picture.lots.values():
        lying = portions(picture, lot)
        for portion in lying:
            by_place.setdefault(portion.place, []).append(_lying(picture, lot, portion))
        parts = tuple(
            (p.place, p.water_left_g, p.moisture.wb_frac if p.moisture else None)
            for p in lying
            if p.water_left_g is not None
        )
        if parts:
            water.append(LotWater(lot.code, parts, sum(part[1] for part in parts)))
    water.sort(key=lambda row: -row.grams)
    todo = yard_jobs(picture)
    due = {place: job.due for job in reversed(todo) for place in _expanded(job.where)}
    arriving = _arriving(picture)
    places = tuple(
        YardPlace(
            p.code, p.kind, p.x_m, p.y_m, p.width_m, p.depth_m, p.cover, p.code in covered,
            tuple(by_place.get(p.code, ())), arriving.get(p.code, ""), due.get(p.code, ""), covered.get(p.code),
        )
        for p in things.places.values()
    )  # fmt: skip
    beds = [p for p in places if p.kind == "bed"]
    used = sum(1 for p in beds if p.lying)
    day = picture.time.farm_day(now)
    week = tuple(
        (day + timedelta(days=n), picture.weather[key].rain_mm)
        for n in range(-6, 4)
        if (key := (day + timedelta(days=n)).isoformat()) in picture.weather
    )
    return YardStory(
        now,
        _headline(picture, used, len(beds), [row for row in todo if row.due == "now"]),
        things.farm.yard_width_m,
        things.farm.yard_depth_m,
        places,
        tuple(YardMark(m.code, m.kind, m.x_m, m.y_m, m.width_m, m.depth_m) for m in things.landmarks.values()),
        _changed(picture),
        tuple(todo),
        tuple(water),
        sum(row.grams for row in water),
        usual_day_g(picture),
        week,
        used,
        len(beds),
    )


def _expanded(places: str) -> list[str]:
    """`17 20–22` -> 17, 20, 21, 22."""
    found: list[str] = []
    for part in places.split():
        if "–" in part:
            first, last = part.split("–")
            letters = first.rstrip("0123456789")
            ends = int(first[len(letters) :]), int(last[len(letters) :])
            found += [f"{letters}{n:0{len(first) - len(letters)}d}" for n in range(ends[0], ends[1] + 1)]
        else:
            found.append(part)
    return found


def _arriving(picture: Picture) -> dict[str, str]:
    """Beds that a lot now in its vessels is planned for, by bed."""
    found: dict[str, str] = {}
    for lot in picture.lots.values():
        if lies_at(lot, picture.things.vessels):
            for entry in lot.entries:
                for place in getattr(entry.body, "places", ()):
                    found[place] = lot.code
    return found


def _headline(picture: Picture, used: int, beds: int, now: list[ToDo]) -> Text:
    local = picture.time.local(now_of(picture))
    rain = picture.weather.get(picture.time.farm_day(now_of(picture)).isoformat())
    at = Moment(local, weekday=True)
    if used == 0:
        return N_("yard", "{at}. Nothing lies on the beds.", at=at)
    line = N_("yard", "{at}. {used} of {beds} {beds:bed|beds} in use", at=at, used=used, beds=beds)
    if rain is not None and rain.rain_mm > 0:
        line = N_("yard", "{line}; {rain} of rain today", line=line, rain=Num(rain.rain_mm, "mm"))
    if now:
        return N_("yard", "{line}; {n} to see to at once.", line=line, n=len(now))
    return N_("yard", "{line}.", line=line)
