"""Where a lot lies, how wet each portion is, day by day, and what it weighs by now.

Shared by cards, yard, season and papers, so that all of them say the same.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date

from farmdesk.picture.curves import TRUSTED_WB_FRAC, KnownMoisture, meter_points, moisture_known, tray_curves
from farmdesk.picture.entries import GREEN, INTAKE, MILL, STORE
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.matter import ledger
from farmdesk.picture.measures import method_of, sent_g, stored_g
from farmdesk.picture.picture import Picture
from farmdesk.text import N_, Fact, Moment, Text

TARGET_WB_FRAC = 0.12

METHOD_WORDS = {
    "W": N_("methods", "washed"),
    "X": N_("methods", "sealed, washed"),
    "N": N_("methods", "natural"),
    "A": N_("methods", "sealed whole, dried whole"),
    "J": N_("methods", "joint lot"),
}

ACCOUNT_WORDS = {
    "top": N_("accounts", "top"),
    "light": N_("accounts", "light"),
    "small": N_("accounts", "small"),
    "peaberry": N_("accounts", "peaberry"),
    "retained": N_("accounts", "retained"),
    "store": N_("accounts", "store"),
    "mill": N_("accounts", "mill"),
    "intake": N_("accounts", "receiving"),
    ">husk": N_("accounts", "husk"),
    ">unexplained": N_("accounts", "unexplained"),
    ">sorted": N_("accounts", "sorted out"),
    ">floaters": N_("accounts", "floaters"),
    ">pulp": N_("accounts", "pulp, mucilage, juice"),
    ">juice": N_("accounts", "juice"),
    ">water": N_("accounts", "water"),
    ">gas": N_("accounts", "gas"),
    ">picked out": N_("accounts", "picked out"),
    ">sample": N_("accounts", "samples"),
    ">sold": N_("accounts", "sold"),
    ">tests": N_("accounts", "tests"),
}


def block_words(code: str) -> Fact:
    """A block, or several, as spoken of after the word block: the code, or that it is not known."""
    return N_("portions", "not known") if code in ("", "?") else code


def method_words(lot: LotPicture) -> Text:
    """The method in the yard's words."""
    return METHOD_WORDS.get(lot.birth.method if lot.birth else lot.code[-1], N_("methods", "method not written"))


def place_list(codes: Iterable[str]) -> str:
    """Places as people say them: `6 8 17–22`, `T1 T2`, `S01–S12`; three or more in a row become a range."""
    rows: dict[str, list[tuple[int, str]]] = {}
    words: list[str] = []
    for code in dict.fromkeys(codes):
        match = re.fullmatch(r"(\D*)(\d+)", code)
        if match:
            rows.setdefault(match[1], []).append((int(match[2]), code))
        else:
            words.append(code)
    parts: list[str] = []
    for letters in sorted(rows):
        run: list[tuple[int, str]] = []
        for number, code in [*sorted(rows[letters]), (1 << 60, "")]:
            if run and number != run[-1][0] + 1:
                parts += [f"{run[0][1]}–{run[-1][1]}"] if len(run) > 2 else [c for _, c in run]
                run = []
            run.append((number, code))
    return " ".join([*parts, *words])


def lies_at(lot: LotPicture, known: Iterable[str]) -> list[str]:
    """The codes among `known` places or vessels where the lot lies now."""
    heaps = lot.heaps
    return [code for code in known if heaps.get(code, 0) > 0]


def state_of(picture: Picture, lot: LotPicture) -> str:
    """How far it has come: to come, picking, vessel, beds, store, mill, green, gone."""
    heaps = lot.heaps
    if not lot.trail:
        return "to come"
    if heaps.get(INTAKE, 0) > 0:
        return "picking"
    if lies_at(lot, picture.things.vessels):
        return "vessel"
    if lies_at(lot, picture.things.places):
        return "beds"
    if heaps.get(MILL, 0) > 0:
        return "mill"
    if any(heaps.get(account, 0) > 0 for account in GREEN):
        return "green"
    if heaps.get(STORE, 0) > 0 and not sent_g(lot):
        return "store"
    return "gone"


def where(picture: Picture, lot: LotPicture) -> Text:
    """The place in words: `beds 12 13 14 16`, `T1 since 17:00`, `in the store`."""
    state = state_of(picture, lot)
    if state == "vessel":
        vessels = lies_at(lot, picture.things.vessels)
        since = min(s.from_utc_s for s in lot.stays if s.until_utc_s is None and s.place in vessels)
        clock = Moment(picture.time.local(since), weekday=True)
        return N_("places", "{vessels} since {since}", vessels=place_list(vessels), since=clock)
    if state == "beds":
        lying = lies_at(lot, picture.things.places)
        beds = [code for code in lying if picture.things.places[code].kind == "bed"]
        if not beds:
            return N_("places", "patio {cells}", cells=place_list(lying))
        if len(beds) == 1 and len(lying) == 1:
            return N_("places", "bed {bed}", bed=beds[0])
        return N_("places", "beds {beds}", beds=place_list(lying))
    return {
        "to come": N_("places", "still to come"),
        "picking": N_("places", "at the receiving scale"),
        "store": N_("places", "in the store"),
        "mill": N_("places", "at the mill"),
        "green": N_("places", "green, on the farm"),
        "gone": N_("places", "gone"),
    }[state]


def daily_moisture(picture: Picture, lot: LotPicture, place: str = "") -> dict[date, KnownMoisture]:
    """The moisture of a portion by farm day, from the last reading of each day; days without one are left out.

    A place with readings of its own goes by them from its first own reading on; before, and otherwise, by
    the lot's.
    """
    corrections, time = picture.corrections, picture.time
    points = meter_points(lot, corrections)
    trays = tray_curves(lot, picture.things, corrections)
    days: dict[date, KnownMoisture] = {}
    for scope in ("", place) if place else ("",):
        for tray in trays:
            if tray.place == scope or (not scope and not any(not t.place for t in trays)):
                for at, wb, grams in zip(tray.at_utc_s, tray.moisture_wb_frac, tray.grams, strict=True):
                    known = KnownMoisture(float(wb), tray.dry_sd_g / float(grams), "computed", "tray", int(at))
                    days[time.farm_day(at)] = known
        for point in points:
            day = time.farm_day(point.at_utc_s)
            fits = point.place == scope or (not scope and not any(not p.place for p in points))
            if fits and (point.wb_frac <= TRUSTED_WB_FRAC or day not in days):
                days[day] = KnownMoisture(point.wb_frac, point.sd_frac, point.mark, "meter", point.at_utc_s)
    return dict(sorted(days.items()))


@dataclass(frozen=True, slots=True)
class Portion:
    """What lies at one place: its moisture, its weight by now [g] and the water still to leave to 12 % [g]."""

    place: str
    since_utc_s: int
    moisture: KnownMoisture | None
    now_g: int | None
    water_left_g: int | None


def portions(picture: Picture, lot: LotPicture) -> list[Portion]:
    """The portions that lie on drying places now.

    A portion's dry matter is its share of the wet weight in the books times the lot's dry matter at
    spreading; its weight by now is that over (1 − moisture).
    """
    corrections = picture.corrections
    heaps = lot.heaps
    lying = lies_at(lot, picture.things.places)
    if not lying:
        return []
    stages = {stage.name: stage for stage in ledger(lot, picture.things, corrections)}
    spread = stages.get("spread")
    found = []
    for place in lying:
        since = max((s.from_utc_s for s in lot.stays if s.place == place and s.until_utc_s is None), default=0)
        known = moisture_known(lot, picture.things, corrections, place)
        now_g = water_g = None
        if spread is not None and spread.grams:
            dry_g = spread.dry.dry_g * heaps[place] / spread.grams
            if known is not None:
                now_g = round(dry_g / (1 - known.wb_frac))
                water_g = max(0, round(now_g - dry_g / (1 - TARGET_WB_FRAC)))
        found.append(Portion(place, since, known, now_g, water_g))
    return found


def current(picture: Picture, lot: LotPicture) -> tuple[int | None, str, KnownMoisture | None]:
    """Grams [g] of the lot by now, how they are known, and its moisture (weighted by dry matter over portions)."""
    state = state_of(picture, lot)
    if state == "beds":
        lying = portions(picture, lot)
        weights = [p.now_g for p in lying]
        newest = max((p.moisture for p in lying if p.moisture), key=lambda m: m.at_utc_s, default=None)
        if newest is None or any(w is None for w in weights):
            return None, "computed", newest
        total = sum(w or 0 for w in weights)
        dry = sum((p.now_g or 0) * (1 - p.moisture.wb_frac) for p in lying if p.moisture)
        mean = 1 - dry / total if total else newest.wb_frac
        return total, "computed", replace(newest, wb_frac=mean)
    if state == "green":
        return sum(lot.heaps.get(a, 0) for a in GREEN), "measured", None
    if state in ("store", "mill"):
        known = moisture_known(lot, picture.things, picture.corrections)
        return (lot.heaps.get(STORE if state == "store" else MILL, 0) or stored_g(lot)), "measured", known
    if state in ("picking", "vessel"):
        return sum(g for a, g in lot.heaps.items() if g > 0), "measured", None
    return None, "measured", None


def days_listed(days: Sequence[date]) -> tuple[date, date] | None:
    """First and last of some days; None of none."""
    return (min(days), max(days)) if days else None


def is_whole(picture: Picture, lot: LotPicture) -> bool:
    """Whether whole cherry is dried (and not parchment)."""
    method = method_of(lot, picture.things)
    return bool(method and method.whole)


def form_words(picture: Picture, lot: LotPicture) -> tuple[Text, Text]:
    """What is spread and what comes into the store: wet parchment and dry parchment, or cherry and dry cherry."""
    if is_whole(picture, lot):
        return N_("forms", "whole cherry"), N_("forms", "dry cherry")
    return N_("forms", "wet parchment"), N_("forms", "dry parchment")


def rain_days(picture: Picture, from_utc_s: float, until_utc_s: float) -> list[tuple[date, float]]:
    """Days with rain [mm] between two instants [UTC s]."""
    first, last = picture.time.farm_day(from_utc_s), picture.time.farm_day(until_utc_s)
    rows = ((date.fromisoformat(day), w.rain_mm) for day, w in picture.weather.items() if w.rain_mm > 0)
    return sorted((day, mm) for day, mm in rows if first <= day <= last)


def rain_blocks(picture: Picture, from_utc_s: float, until_utc_s: float) -> tuple[tuple[float, float, float], ...]:
    """The same as blocks on an axis of dates: from, until [UTC s], mm. A day's rain is drawn over its light, 6 to 18 h."""
    at = picture.time.instant
    return tuple((float(at(day, 6)), float(at(day, 18)), mm) for day, mm in rain_days(picture, from_utc_s, until_utc_s))
