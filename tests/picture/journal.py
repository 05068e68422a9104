"""Journals as readable text: one line an entry, so that a test shows the book it is about.

day 1 08: begin W
day 1 13: pick 1000 kg
day 1 16: sort 20, float 40
day 1 17: fill T1 940
day 2 07: spread 9 190, 10 185
day 5 08: move 10 -> 9
day 12 16: shelve 9 190
day 20 09: send 189
day 30 10: back top 120 light 15 small 12 peaberry 8, husk 33
"""

from __future__ import annotations

import itertools
import re

from farmdesk.picture.entries import (
    ALL,
    FLOATERS,
    HUSK,
    INTAKE,
    MILL,
    PULP,
    REST,
    SORTED,
    STORE,
    UNEXPLAINED,
    WATER,
    Birth,
    Body,
    Entry,
    Flow,
    Line,
    Posting,
    Reading,
    WeighIn,
)  # fmt: skip
from farmdesk.picture.things import Farm, Method, Place, Things, Tray, Vessel

LOT = "25-01W"
START = 1_700_000_000 - 1_700_000_000 % 86_400

WASHED = Method(
    "W", 1, "washed", False, False, 12, 14, 4.4, 4.8, "hand", 4.6, None, None, 3, 8.5, 14, 0.54, 0.02,
)  # fmt: skip

THINGS = Things(
    Farm("Test farm", "25", "UTC", day_starts_h=0),
    vessels={"T1": Vessel("T1", "tank", 1800, 1440, False), "T2": Vessel("T2", "tank", 1800, 1440, False)},
    places={str(n): Place(str(n), "bed", 2.4 * n, 4, 1.2, 12) for n in range(1, 23)}
    | {"P1": Place("P1", "patio", 60, 20, 6, 5)},
    trays={"1": Tray("1", 400)},
    methods={"W1": WASHED},
)


def instant(day: int, hour: float) -> int:
    """UTC seconds of an hour of a journal's day."""
    return START + day * 86_400 + int(hour * 3600)


def kilos(text: str) -> int:
    """Whole grams of kilograms as typed."""
    return round(float(text) * 1000)


def body_of(act: str, lot: str = LOT) -> Body:
    """The body that a line's words stand for."""
    word, _, rest = act.partition(" ")
    pairs = re.findall(r"(\w+) ([\d.]+)", rest)
    match word:
        case "begin":
            return Birth(lot, rest)
        case "pick":
            return WeighIn(lot, "A", "P01", "am", kilos(rest.split()[0]))
        case "sort":
            out, floated = (kilos(n) for n in re.findall(r"[\d.]+", rest))
            return Flow(
                lot,
                "sort",
                (Posting(lot, INTAKE, -out - floated), Posting(lot, SORTED, out), Posting(lot, FLOATERS, floated)),
            )
        case "fill":
            lines = [Posting(lot, place, kilos(w)) for place, w in pairs]
            return Flow(lot, "fill", (Posting(lot, INTAKE, -sum(p.grams for p in lines)), *lines))
        case "spread":
            lines = [Posting(lot, place, kilos(w)) for place, w in pairs]
            return Flow(lot, "spread", (Posting(lot, "T1", way=ALL), *lines, Posting(lot, PULP, way=REST)))
        case "move":
            source, target = rest.split(" -> ")
            out = [Posting(lot, place, way=ALL) for place in source.split()]
            return Flow(lot, "move", (*out, *(Posting(lot, place, way=REST) for place in target.split())))
        case "shelve":
            *places, weight = rest.split()
            out = [Posting(lot, place, way=ALL) for place in places]
            return Flow(lot, "shelve", (*out, Posting(lot, STORE, kilos(weight)), Posting(lot, WATER, way=REST)))
        case "send":
            return Flow(lot, "send", (Posting(lot, STORE, -kilos(rest)), Posting(lot, MILL, kilos(rest))))
        case "back":
            lines = [Posting(lot, HUSK if name == "husk" else name, kilos(w)) for name, w in pairs]
            return Flow(lot, "back", (Posting(lot, MILL, way=ALL), *lines, Posting(lot, UNEXPLAINED, way=REST)))
        case "tray":
            return Reading(lot, "", "tray_g", (Line("", float(rest)),), tray="1")
        case "meter":
            return Reading(
                lot, "", "meter_wb_frac", tuple(Line(str(i), float(v) / 100) for i, v in enumerate(rest.split()))
            )
    raise ValueError(act)


def journal(text: str, lot: str = LOT) -> list[Entry]:
    """Entries of a journal, each written an hour after it happened."""
    entries = []
    numbers = itertools.count()
    for line in text.strip().splitlines():
        match = re.fullmatch(r"\s*day (\d+) ([\d.]+): (.+)", line)
        assert match, line
        at = instant(int(match[1]), float(match[2]))
        entries.append(Entry(f"{lot}-{next(numbers):04d}", at, at + 3600, body_of(match[3].strip(), lot)))
    return entries
