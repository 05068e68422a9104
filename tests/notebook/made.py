"""Season files and entries for the tests: a small farm, and bodies of every kind, drawn from their own fields."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from hypothesis import strategies as st

from farmdesk import clock
from farmdesk.notebook.season_file import SeasonFile, new_id
from farmdesk.notebook.tables import LAST_UTC_S, SHAPE_OF, Many, triggers
from farmdesk.picture.entries import (
    KINDS,
    MARKS,
    Birth,
    Body,
    Entry,
    Flow,
    Line,
    LoggerFile,
    Posting,
    Reading,
    Remark,
    WeighIn,
)
from farmdesk.picture.things import (
    Block,
    Buyer,
    Farm,
    Instrument,
    Landmark,
    Method,
    Person,
    Place,
    Things,
    Tray,
    Vessel,
)

WASHED = Method(
    "W", 1, "washed", False, False, 12.0, 36.0, 3.8, None, "hand", None, None, None, 3, 12.0, 15, 0.53, 0.02
)  # fmt: skip
THINGS = Things(
    Farm("La Prueba", "25", "America/Bogota", practice=True, altitude_m=1650.5),
    {"B": Block("B", "The bend", 1.5, 1600.0, 1700.0, "caturra", 4200, None)},
    {"T1": Vessel("T1", "tank", 1200.0, 1000.0, False), "V1": Vessel("V1", "barrel", 220.0, 180.0, True)},
    {code: Place(code, "bed", 1.0, 2.0, 1.2, 20.0, "roof", 4.0) for code in ("1", "2", "10")},
    {"tree": Landmark("tree", "tree", 5.0, 6.0, 2.0)},
    {"S1": Instrument("S1", "platform scale", "mass_g", 50.0, 100.0)},
    {"a": Tray("a", 812)},
    {"07": Person("07", "picker")},
    {"W1": WASHED},
    {"R": Buyer("R", "roaster")},
    {"bag_g": "60000"},
)


def season(folder: Path, entries: int = 0, name: str = "25.season") -> SeasonFile:
    """A new season file with so many small entries in it."""
    made = SeasonFile.create(folder / name, THINGS)
    if entries:
        made.append([day(i) for i in range(entries)])
    return made


def entry(body: Body, **header: Any) -> Entry:
    """An entry written now."""
    return Entry(new_id(), header.pop("happened_utc_s", clock.now()), clock.now(), body, **header)


def day(i: int) -> Entry:
    """The i-th of a row of entries of several kinds."""
    lot = f"25-{i // 10}W"
    bodies: tuple[Body, ...] = (
        Birth(lot, "W"),
        WeighIn(lot, "B", "07", "am", 41_500, 500, "41.5"),
        Flow(lot, "fill", (Posting(lot, "intake", -41_000), Posting(lot, "T1", 40_000), Posting(lot, ">pulp", 1_000))),
        Reading(lot, "T1", "ph", (Line("a", 4.5, "4,5"), Line("b", 4.4))),
        Remark(lot, "T1", "note", "smells clean"),
    )
    return entry(bodies[i % 5], who="ana", note=f"row {i}")


def logger_entry(logger: str = "L1", lot: str = "25-1W", place: str = "T1", rows_n: int = 0) -> Entry:
    """The entry of a logger's file."""
    return entry(LoggerFile(lot, place, logger, "mass_c", f"{logger}.csv", "", rows_n, 0, 0))


@contextmanager
def by_hand(path: Path, *, rules: bool = False) -> Iterator[sqlite3.Connection]:
    """The file in somebody else's hands: with `rules` off its triggers are taken away first and put back after."""
    raw = sqlite3.connect(path)
    raw.execute("PRAGMA synchronous=OFF")
    names = [row[0] for row in raw.execute("SELECT name FROM sqlite_master WHERE type = 'trigger'")]
    try:
        for name in names if not rules else ():
            raw.execute(f"DROP TRIGGER {name}")
        yield raw
        for sql in triggers() if not rules else ():
            raw.execute(sql)
        raw.commit()
    finally:
        raw.close()


words = st.text(max_size=12)
PLAIN: dict[type, st.SearchStrategy[Any]] = {
    str: words,
    int: st.integers(-(2**40), 2**40),
    float: st.floats(allow_nan=False, allow_infinity=False),
    bool: st.booleans(),
}
instants = st.integers(0, LAST_UTC_S)
lines = st.builds(Line, words, PLAIN[float], words)
named = st.text(min_size=1, max_size=12)
postings = st.builds(Posting, named, named, st.integers(-(10**9), 10**9), st.integers(0, 2), words)
ITEMS: dict[type, st.SearchStrategy[Any]] = {Line: lines, Posting: postings, str: words}


@st.composite
def bodies(draw: st.DrawFn, kind: type) -> Body:
    """A body of a kind, its fields drawn as their types say; typed postings are made to sum to zero."""
    values: list[Any] = []
    for field in SHAPE_OF[kind].fields:
        if isinstance(field, Many):
            drawn = tuple(draw(st.lists(ITEMS[field.item], max_size=4)))
            if field.item is Posting and drawn and all(posting.way == 0 for posting in drawn):
                drawn += (Posting("x", "y", -sum(posting.grams for posting in drawn)),)
            values.append(drawn)
            continue
        strategy = PLAIN[field.type]
        if field.name.endswith("_utc_s"):
            strategy = instants
        elif field.name == "account":
            strategy = named
        values.append(draw(st.none() | strategy if field.optional else strategy))
    return kind(*values)  # type: ignore[no-any-return]


@st.composite
def entries(draw: st.DrawFn, kind: type | None = None) -> Entry:
    """An entry of a kind, or of any."""
    body = draw(bodies(kind or draw(st.sampled_from(KINDS))))
    return Entry(
        new_id(), draw(instants), draw(instants), body, draw(words), draw(words), draw(st.sampled_from(MARKS)),
        draw(words), draw(words), draw(words),
    )  # fmt: skip
