"""A season and a yard as the floors below would tell them: the evening of 14 January, and 23 January after rain."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from farmdesk.clock import FarmTime
from farmdesk.text import N_, Days, Text, kg
from farmdesk.work.season_story import Board, Pick, SeasonStory, VesselBar
from farmdesk.work.stories import (
    Dated,
    DayWeather,
    LotWater,
    Lying,
    RoadStory,
    StripDay,
    ToDo,
    YardMark,
    YardPlace,
    YardStory,
)

TIME = FarmTime("America/Guatemala")
FIRST, LAST = date(2024, 11, 10), date(2025, 3, 12)
GOOD_H = """6.9 6.5 6.7 4.7 6.3 6.4 4.9 5.2 8.5 6.0 4.7 6.7 6.9 6.3 7.3 6.4 5.5 6.9 6.3 5.7 6.8 6.3 6.1 6.2 7.0 6.4 6.2
6.8 5.9 6.3 5.7 6.7 5.8 6.8 0.6 4.3 7.1 5.7 6.5 7.1 6.8 6.7 5.3 6.0 7.0 5.5 4.4 5.2 6.8 6.9 6.7 5.0 5.5 4.9 6.7 6.1 5.6
5.9 7.3 6.2 4.8 5.3 7.2 6.2 6.4 5.2 6.6 6.1 6.8 6.7 6.5 6.1 7.1 0.7 1.0 1.0 0.5 6.1 5.6 6.6""".split()
RAIN_MM = {"11-13": 9, "11-20": 4, "12-14": 12, "12-15": 5, "12-26": 3, "01-09": 2, "01-22": 38, "01-23": 61}
BLOCKS = (
    ("B", "La Peña", 1660.0), ("A", "Arriba", 1640.0), ("F", "La Loma", 1620.0), ("C", "El Ojo", 1580.0),
    ("D", "El Camino", 1525.0), ("E", "Abajo", 1480.0),
)  # fmt: skip
# lot, picked, block, kg, vessel (day before the beds, hours), beds with the day each came and went
LOTS = """
01W 11-18 E 640 T1/13 9:11-19>11-29 10:11-19>11-29
02W 11-22 D 980 T2/12 11:11-23>12-03 12:11-23>12-03 13:11-23>11-28
03N 11-27 D 520 - 1:11-27>12-18 2:11-27>12-18 3:11-27>12-06
04W 12-03 C 1150 T1/12 9:12-04>12-15 10:12-04>12-15 11:12-04>12-15 12:12-04>12-09
05A 12-05 E 560 - 3:12-09>12-31 4:12-09>12-31 5:12-09>12-18
06W 12-10 D 1480 T1/12+T2/12 12:12-11>12-22 13:12-11>12-22 14:12-11>12-22 15:12-11>12-16 16:12-11>12-16
07X 12-13 F 430 B1/48+B2/48 6:12-16>12-28
08W 12-17 C 1520 T1/13 9:12-18>12-29 10:12-18>12-29 11:12-18>12-29 15:12-18>12-23 16:12-18>12-23
09N 12-20 A 610 - 1:12-20>01-11 2:12-20>01-11 5:12-20>12-29
10W 12-23 E 1310 T2/13 12:12-24>01-05 13:12-24>01-05 14:12-24>01-05 15:12-24>12-29
11W 12-31 D 1890 T1/12+T2/12 9:01-01>01-13 10:01-01>01-13 11:01-01>01-13 15:01-01>01-13 16:01-01>01-06 17:01-01>01-06
12A 01-03 A 880 C1/96+C2/96 3:01-08>01-31 4:01-08>01-31 5:01-08>01-31 6:01-08>01-17 7:01-08>01-17
13W 01-07 C 1960 T1/14+T2/14 12:01-08>01-20 13:01-08>01-20 14:01-08>01-20 16:01-08>01-20 17:01-08>01-13 18:01-08>01-13
14X 01-09 F 760 B1/60+B2/60+B3/60+B4/60 1:01-13>01-26 2:01-13>01-26
15N 01-13 B 290 - 8:01-13>02-06 19:01-13>02-06
"""
ENDS = {"12A": (27, 29, 32), "13W": (17, 18, 20), "14X": (24, 26, 28), "15N": (33, 37, 41)}
PLANS = (
    ("16W", "D", 16, 1740, "9 10 11 15 17", (26, 28, 31)),
    ("17N", "A", 18, 940, "6 18 20 21 22", (36, 40, 43)),
    ("18W", "C", 22, 1620, "7 12 13 14 16", (33, 36, 40)),
)
STORED_KG = {"01W": 115, "02W": 181, "03N": 168, "04W": 215, "05A": 176, "06W": 278, "07X": 82, "08W": 287,
             "09N": 201, "10W": 246, "11W": 358}  # fmt: skip


def jan(day: int) -> date:
    """A day of January 2025; days past 31 run on."""
    return date(2025, 1, 1) + timedelta(days=day - 1)


def day_of(text: str) -> date:
    """`12-24` is a day of the season."""
    month, day = map(int, text.split("-"))
    return date(2024 if month > 6 else 2025, month, day)


def wet_frac(lot: str, n: int) -> float:
    """Moisture [fraction wet basis] on the n-th day on a bed, as such lots dry."""
    start, rate = {"W": (0.546, 0.19), "X": (0.546, 0.17)}.get(lot[-1], (0.68, 0.088))
    return 0.105 + (start - 0.105) * (1 - rate) ** n


def weather(until: date) -> tuple[DayWeather, ...]:
    """What was written of each day; nothing is known of those ahead."""
    rows = []
    for n in range((LAST - FIRST).days + 1):
        day = FIRST + timedelta(days=n)
        known = day <= until
        mm = float(RAIN_MM.get(f"{day:%m-%d}", 0)) if known else None
        rows.append(DayWeather(day, float(GOOD_H[n]) if known else None, mm))
    return tuple(rows)


def season(today: date = date(2025, 1, 14), *, plans: bool = True) -> SeasonStory:
    """The season's calendar as known on an evening."""
    picks, bars, boards, rests = [], [], [], []
    for line in LOTS.split("\n"):
        if not line:
            continue
        lot, picked, block, kilos, vessels, *stays = line.split()
        code, day = f"25-{lot}", day_of(picked)
        if day > today:
            continue
        picks.append(Pick(block, day, int(kilos) * 1000, code))
        for part in [] if vessels == "-" else vessels.split("+"):
            vessel, hours = part.split("/")
            filled = TIME.instant(day, 17)
            bars.append(VesselBar(code, vessel, filled, filled + int(hours) * 3600))
        ends = []
        for stay in stays:
            bed, span = stay.split(":")
            first, last = (day_of(part) for part in span.split(">"))
            if first > today:
                continue
            still = last > today
            until = today + timedelta(days=1) if still else last
            days = tuple(
                StripDay(first + timedelta(days=n), None if (lot, n) == ("10W", 5) else wet_frac(lot, n))
                for n in range((until - first).days)
            )
            ahead = tuple(jan(d) for d in ENDS[lot]) if still and lot in ENDS else None
            boards.append(Board(code, bed, first, None if still else last, days, ahead))
            ends.append(None if still else last)
        if lot in STORED_KG and ends and None not in ends:
            rests.append((code, max(ends), None, STORED_KG[lot] * 1000))
    for lot, block, day, kilos, beds, ahead in PLANS if plans else ():
        picks.append(Pick(block, jan(day - 1), kilos * 1000, f"25-{lot}", planned=True))
        ends = tuple(jan(d) for d in ahead)
        boards += [Board(f"25-{lot}", bed, jan(day), None, (), ends, planned=True) for bed in beds.split()]
    used: dict[date, set[str]] = {}
    for board in boards:
        for row in board.days:
            used.setdefault(row.day, set()).add(board.place)
    days = [FIRST + timedelta(days=n) for n in range((LAST - FIRST).days + 1)]
    beds = tuple((str(n), "roof" if n <= 8 else "hoops" if n <= 16 else "tarp", 14.4) for n in range(1, 23))
    events = (
        (date(2025, 1, 10), "25-04W", N_("season", "sample to {buyer}", buyer="R2")),
        (date(2025, 1, 12), "25-06W", N_("season", "{weight} held for {buyer}", weight=kg(120_000, 1), buyer="R2")),
        (date(2025, 1, 13), "25-01W", N_("season", "{weight} sold to {buyer}", weight=kg(60_000, 1), buyer="L1")),
    )
    headline = N_(
        "season", "{n} lots; {used} of {beds} beds in use; the next may come free {when}.",
        n=len(picks), used=14, beds=22, when=Days(jan(17), jan(37)),
    )  # fmt: skip
    return SeasonStory(
        FIRST, LAST, today, headline, weather(today), BLOCKS, tuple(sorted(picks, key=lambda p: (p.day, p.block))),
        ("T1", "T2", "C1", "C2", "B1", "B2", "B3", "B4", "B5", "B6"),
        tuple(sorted(bars, key=lambda b: (b.from_utc_s, b.vessel))), beds,
        tuple(sorted(boards, key=lambda b: (b.first_day, b.lot, b.place))), tuple(rests),
        ((date(2025, 1, 8), ("25-01W", "25-02W"), 296_000),), tuple(events),
        tuple((d, len(used.get(d, ()))) for d in days),
    )  # fmt: skip


def no_season() -> SeasonStory:
    """The farm's registers and nothing else yet."""
    told = N_("season", "Nothing is written yet; the season begins with the first sack weighed.")
    return replace(
        season(), headline=told, today=FIRST, weather=weather(FIRST - timedelta(days=1)), picks=(), vessel_bars=(),
        boards=(), rests=(), mill_runs=(), events=(), tide=(),
    )  # fmt: skip


def road(at_utc_s: int) -> RoadStory:
    """What the road and the ruler show at an instant."""
    under = {
        "picking": N_("road", "{blocks}", blocks="C, D"), "ferments": N_("road", "{w}", w=kg(325_000, about=True)),
        "yard": N_("road", "{w}", w=kg(1_260_000)), "store": N_("road", "{w}", w=kg(2_307_000)), "mill": None,
        "cup": None, "samples": None,
    }  # fmt: skip
    day = TIME.farm_day(at_utc_s)
    known = tuple(row for row in weather(day) if row.good_h is not None)
    return RoadStory(day, (day - FIRST).days, at_utc_s, at_utc_s, 16, under, known, FIRST, LAST, False, "Demo farm")


RAIN_NIGHT = TIME.instant(date(2025, 1, 23), 17)
# lot, moisture now, before it took up water, beds, litres a bed, mark
ON_BEDS = (
    ("14X", 0.117, None, "1 2", 0.5, "measured"), ("12A", 0.148, None, "3 4 5", 4.3, "measured"),
    ("17N", 0.49, None, "6", 46, "estimated"), ("18W", 0.526, None, "7 12 13 14 16", 53.8, "computed"),
    ("15N", 0.247, None, "8 19", 9, "computed"), ("16W", 0.158, None, "9 10 11 15", 3.5, "measured"),
    ("16W", 0.204, 0.159, "17", 8, "measured"), ("17N", 0.558, 0.495, "18 20 21 22", 63.2, "computed"),
)  # fmt: skip


def bed(n: int, *, free: bool = False) -> YardPlace:
    """One of the practice yard's beds after the night of rain."""
    x, y = (2 + 2.4 * (n - 1), 18) if n <= 8 else (2 + 2.4 * (n - 9), 4) if n <= 16 else (23 + 2.4 * (n - 17), 4)
    cover = "roof" if n <= 8 else "hoops" if n <= 16 else "tarp"
    lying = tuple(
        Lying(f"25-{lot}", RAIN_NIGHT - 5 * 86400, now, mark, 90_000, round(litres * 1000), was_wb_frac=was)
        for lot, now, was, beds, litres, mark in ON_BEDS
        if str(n) in beds.split() and not free
    )
    covered = cover != "roof" and not free
    due = "now" if n in (17, 18, 20, 21, 22) and not free else ""
    since = RAIN_NIGHT - (27 if cover == "tarp" else 28) * 3600 if covered else None
    return YardPlace(
        str(n), "bed", x, y, 1.2, 12, cover, covered, lying, due=due, covered_since_utc_s=since
    )  # fmt: skip


def say(words: str) -> Text:
    """Words that need no translation in a test."""
    return Text("sample", words)


def yard(*, free: bool = False) -> YardStory:
    """23 January, 17:00: 61 mm today, two portions took up water; `free`: the yard before anything lies there."""
    cells = tuple(
        YardPlace(f"P{i + 1}", "patio", 22 + 6 * (i % 3), 20 + 5 * (i // 3), 6, 5, "open", False, ()) for i in range(6)
    )
    marks = (YardMark("shade tree", "tree", 20.5, 10, 4, 0), YardMark("store", "store", 38, 0, 4, 8))
    places = (*(bed(n, free=free) for n in range(1, 23)), *cells)
    if free:
        headline = say("Sun 10 Nov 06:00. Nothing lies on the beds.")
        return YardStory(TIME.instant(FIRST, 6), headline, 42, 32, places, marks, (), (), (), 0, None, (), 0, 22)
    at = TIME.instant
    changed = (
        Dated(at(jan(23), 3, 30), say("Tarp blew off bed 17."), say("25-16W on it: 15.9 → 20.4 %, own portion.")),
        Dated(at(jan(23), 6), say("Tarps leak on 18, 20, 21, 22."), say("25-17N there: 49.5 → 55.8 % by tray.")),
        Dated(at(jan(23), 17), say("25-19A sealed in C1, B5, B6."), say("658 kg; method says open at 84 h.")),
    )
    todo = (
        ToDo("17", say("heap apart, not back to 25-16W: 4.6 points wetter"), 5, "now", "25-16W"),
        ToDo("18 20–22", say("tie the tarps again; open at 07:00 if it is dry"), 40, "now", "25-17N"),
        ToDo("6", say("cut off as its own lot? never wetted, 20 % of 25-17N"), None, "today", "25-17N"),
    )
    water: dict[str, list[tuple[str, int, float | None]]] = {}
    for lot, now, _, beds, litres, _ in ON_BEDS:
        water.setdefault(lot, []).extend((b, round(litres * 1000), now) for b in beds.split())
    rows = [LotWater(f"25-{lot}", tuple(parts), sum(p[1] for p in parts)) for lot, parts in water.items()]
    rows.sort(key=lambda row: -row.grams)
    rain = tuple((jan(d), float(RAIN_MM.get(f"{jan(d):%m-%d}", 0))) for d in range(17, 24))
    headline = say("Thu 23 Jan 17:00. 22 of 22 beds in use; 61 mm of rain today; 2 to see to at once.")
    return YardStory(
        RAIN_NIGHT, headline, 42, 32, places, marks, changed, todo, tuple(rows), sum(r.grams for r in rows), 90_000,
        rain, 22, 22,
    )  # fmt: skip
