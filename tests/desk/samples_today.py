"""The morning of 21 January as the floors below would tell it: the road, the yard and Today."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from typing import Any

from farmdesk.ahead.range import Ahead
from farmdesk.clock import FarmTime
from farmdesk.desk.go import Known
from farmdesk.text import N_, Text, kg
from farmdesk.work.stories import (
    DayWeather,
    Gap,
    Lying,
    RoadStory,
    TodayStory,
    VesselStory,
    YardMark,
    YardPlace,
    YardStory,
)

TIME = FarmTime("America/Guatemala")
FIRST, LAST = date(2024, 11, 10), date(2025, 3, 12)
MORNING = TIME.instant(date(2025, 1, 21), 5, 45)
HILL = (
    ("A", 1620.0, 1660.0), ("B", 1640.0, 1680.0), ("C", 1560.0, 1600.0), ("D", 1500.0, 1550.0),
    ("E", 1460.0, 1500.0), ("F", 1600.0, 1640.0),
)  # fmt: skip
SLEEP_H = (20.0, 4.0)
RAIN_MM = {date(2024, 11, 13): 9, date(2024, 11, 20): 4, date(2024, 12, 14): 12, date(2024, 12, 15): 5,
           date(2024, 12, 26): 3, date(2025, 1, 9): 2}  # fmt: skip


def say(words: str) -> Text:
    """Words that need no translation in a test."""
    return Text("sample", words)


def on(day: int, hour: int, minute: int = 0) -> int:
    """An instant [UTC s] of January 2025 on the farm."""
    return TIME.instant(date(2025, 1, day), hour, minute)


def weather(until: date = date(2025, 1, 20)) -> tuple[DayWeather, ...]:
    days = (until - FIRST).days + 1
    return tuple(
        DayWeather(d, 5.2 + ((i * 7) % 5) * 0.45, float(RAIN_MM.get(d, 0)))
        for i, d in ((i, FIRST + timedelta(days=i)) for i in range(days))
    )


def road(at_utc_s: int = MORNING, *, practice: bool = False) -> RoadStory:
    under = {
        "picking": say("760–900 kg"), "ferments": say("≈ 300 kg"), "yard": N_("road", "{w}", w=kg(1_630_000)),
        "store": N_("road", "{w}", w=kg(2_680_000)), "mill": None, "cup": None, "samples": say("R2 waits"),
    }  # fmt: skip
    day = TIME.farm_day(at_utc_s)
    return RoadStory(
        day, (day - FIRST).days, at_utc_s, on(20, 19, 12), 18, under, weather(), FIRST, LAST, practice, "Demo farm"
    )


KNOWN = Known(
    tuple(f"25-{n:02d}{m}" for n, m in zip(range(1, 19), "WWNWAWXWNWWAWXNWNW", strict=True)),
    tuple(str(n) for n in range(1, 23)) + tuple(f"P{n}" for n in range(1, 7)),
    ("T1", "T2", "C1", "C2", "B1", "B2", "B3", "B4", "B5", "B6"),
    None,
    "25",
)
LYING = {
    "14X": (0.139, "1 2"), "12A": (0.177, "3 4 5"), "17N": (0.586, "6 18 20 21 22"), "15N": (0.318, "8 19"),
    "16W": (0.228, "9 10 11 15 17"),
}  # fmt: skip
DUE = "6 8 9 10 11 15 17 18 19 20 21 22".split()


def place(n: int, *, due: bool = True) -> YardPlace:
    """One of the practice yard's beds."""
    x, y = (2 + 2.4 * (n - 1), 18) if n <= 8 else (2 + 2.4 * (n - 9), 4) if n <= 16 else (23 + 2.4 * (n - 17), 4)
    cover = "roof" if n <= 8 else "hoops" if n <= 16 else "tarp"
    lying = tuple(
        Lying(f"25-{lot}", on(18, 10), wet, "measured", 80_000, 20_000, last_utc_s=on(20, 16))
        for lot, (wet, beds) in LYING.items()
        if str(n) in beds.split()
    )
    return YardPlace(
        str(n), "bed", x, y, 1.2, 12, cover, cover != "roof", lying,
        arriving="25-18W" if n in (12, 13) else "", due="today" if due and str(n) in DUE else "",
    )  # fmt: skip


def yard(*, due: bool = True) -> YardStory:
    cells = tuple(
        YardPlace(f"P{i + 1}", "patio", 22 + 6 * (i % 3), 25 - 5 * (i // 3), 6, 5, "open", False, ()) for i in range(6)
    )
    places = tuple(place(n, due=due) for n in range(1, 23)) + cells
    marks = (YardMark("tree", "tree", 20.5, 10, 4, 4), YardMark("store", "store", 38, 0, 4, 8))
    headline = say("Tuesday 21 January, 05:45. 17 of 22 beds; about 470 litres still to leave.")
    return YardStory(MORNING, headline, 42, 32, places, marks, (), (), (), 470_000, 90_000, (), 17, 22)


def ahead(earliest: float, likely: float, latest: float) -> Ahead:
    return Ahead(earliest, likely, latest, earliest, latest, 0.0, say("Rests on five pH readings."), "ph")


def tank(due: str = "now") -> VesselStory:
    readings = ((on(20, 17, 10), 5.4), (on(20, 20), 5.1), (on(20, 23), 4.7), (on(21, 2), 4.4), (on(21, 5), 4.11))
    return VesselStory(
        "T1", "25-18W", say("first fill, block C, washed"), on(20, 17), 470_000, readings, 4.11, 16.7, on(21, 5),
        ahead(on(21, 6), on(21, 7), on(21, 8)), on(21, 10), due,
    )  # fmt: skip


JOBS = (
    ("sky", 8.3, 15.4, say("good hours, usually 5.5–7.0 today"), ""),
    ("office", 5.75, 6.1, say("print day sheet"), ""),
    ("office", 18.5, 19.25, say("type the sheets"), ""),
    ("W1", 6.25, 7.5, say("wash T1"), "now"),
    ("W1", 15.0, 17.0, say("sort and float"), ""),
    ("W1", 17.0, 17.6, say("fill T1"), ""),
    ("Y1", 6.25, 7.5, say("carry 18W"), "now"),
    ("Y1", 7.5, 9.0, say("open 17–22"), ""),
    ("Y1", 11.5, 14.0, say("shade 9–11 15"), ""),
    ("Y1", 16.0, 17.25, say("readings"), ""),
    ("Y1", 18.0, 18.6, say("cover"), ""),
    ("Y2", 7.25, 8.0, say("open"), ""),
    ("Y2", 8.0, 9.9, say("rake 9–11 15 17"), ""),
    ("Y2", 11.0, 12.4, say("rake 18–22"), ""),
    ("Y2", 14.0, 15.2, say("rake 1–8"), ""),
    ("Y2", 18.0, 18.6, say("cover"), ""),
    ("Y3", 8.0, 9.4, say("rake 1–8"), ""),
    ("Y3", 12.0, 13.4, say("rake 3–6 8"), ""),
    ("Y3", 16.0, 17.25, say("readings"), ""),
    ("Y3", 18.0, 18.6, say("cover"), ""),
)
GAPS = (
    Gap("doubtful", say("Bed 19: no meter reading since Sun 19 Jan"), "25-15N", "19", "meter_wb_frac", "2025-01-20"),
    Gap("doubtful", say("pH-1 check is 2 days overdue; 3 lots marked")),
    Gap("missing", say("P22, Mon 20 Jan: morning or afternoon?"), "25-18W"),
    Gap("doubtful", say("meter-1: last checked 10 Jan, 11 days ago")),
)


def today() -> TodayStory:
    """The busy morning of the first mock-up."""
    return TodayStory(
        MORNING, date(2025, 1, 21), 72, say("13.0 °C · 96 % RH · 0 mm"), 17, 22, 470_000,
        (tank(),), ("T2", "C1", "C2", "B1", "B2", "B3", "B4", "B5", "B6"), yard(),
        (
            (say("from 07:15"), tuple(DUE), say("23–59 %: wetter than the morning air")),
            (say("when RH is under 84 %"), ("3", "4", "5"), say("18 %, likely 08:15–09:00")),
            (say("when RH is under 72 %"), ("1", "2"), say("14 %: would take water up before")),
        ),
        say("your words: “from Wednesday”"),
        (
            (("9", "10", "11", "15"), 4.0), (("19",), 5.0), (("12", "13"), 2.0), (("17",), 6.0),
            (("18", "20", "21", "22"), 21.0),
        ),
        38.0,
        (("C", say("18 pickers, rows 1–22; round 4, second day; green: 3 in 100 at most")),),
        (
            (say("washed"), say("T1 from 17:00, ends 06:00–08:00 Wed; beds 7 14 16, free until then")),
            (say("natural"), say("no bed from Wed 22 to Mon 27 if it rains as you say")),
            (say("sell"), say("as cherry: two buyers in the book")),
        ),
        (
            ("R2", say("sample of 25-13W; rest ends 19 Feb")), ("mill", say("call for a slot by Fri 24")),
            ("pay", say("Sat 25: 30,000–33,000 L in notes")),
        ),
        GAPS, JOBS, None,
    )  # fmt: skip


def calm() -> TodayStory:
    """A day on which nothing is due."""
    return replace(
        today(), vessels=(), yard=yard(due=False), open_first=(), gaps=(), waiting=(), picking=(), fruit=(),
        jobs=tuple((*job[:4], "") for job in JOBS if job[0] in ("sky", "Y1")), rain_words=None, rain_list=(),
        calm=say("Nothing has to be opened, washed or covered before tonight."),
    )  # fmt: skip


def today_answer(story: TodayStory | None = None) -> tuple[Any, ...]:
    """What Today's page asks for."""
    return story or today(), HILL, SLEEP_H
