"""The practice season: tables of what hands wrote down, typed in again by the same verbs the window uses.

`demo_data/` holds one table for each kind of paper; every row says when it happened and when it was written,
in farm time. The rows of all tables are written in the order in which hands wrote them, with the program's
clock set from each. Nothing that the picture derives stands in a table.
"""

from __future__ import annotations

import csv
from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path
from typing import Any, cast, get_type_hints

from farmdesk import clock
from farmdesk.clock import FarmTime
from farmdesk.notebook.season_file import SeasonFile
from farmdesk.paths import demo_data
from farmdesk.picture.entries import Entry
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
from farmdesk.work.farm import OpenFarm
from farmdesk.work.practice_rows import WRITERS, Desk, Row

REGISTERS: dict[str, type] = {
    "blocks": Block,
    "vessels": Vessel,
    "places": Place,
    "landmarks": Landmark,
    "instruments": Instrument,
    "trays": Tray,
    "people": Person,
    "methods": Method,
    "buyers": Buyer,
}
# In the tables no column is named after something the picture derives; these limits are called otherwise there.
CALLED = {"dry_days_max_d": "dry_at_most_d", "rest_days_d": "rest_d"}


def practice_things() -> Things:
    """The practice farm's registers, from the tables in `demo_data/farm`."""
    (farm,) = _things(Farm, "farm")
    rooms: dict[str, Any] = {}
    for name, kind in REGISTERS.items():
        made = _things(kind, name)
        key = (lambda m: f"{m.letter}{m.version}") if kind is Method else (lambda m: m.code)
        rooms[name] = {key(thing): thing for thing in made}
    settings = {line["name"]: line["value"] for line in _lines("farm", "settings.csv")}
    return Things(farm, settings=settings, **rooms)


def practice_rows(time: FarmTime) -> list[Row]:
    """All rows of all tables, in the order in which hands wrote them."""
    rows = [Row(table, n, cells, time) for table in WRITERS for n, cells in enumerate(_lines(f"{table}.csv"), start=2)]
    return sorted(rows, key=lambda row: row["written"])


def build_practice(path: Path, until_utc_s: int | None = None) -> OpenFarm:
    """Make the practice season as a new season file, with what was written by an instant [UTC s], or all of it.

    Raises FileTrouble when there is a file at `path` already, or the disk refuses.
    """
    things = practice_things()
    # typed in as any season is: its written instants never run backwards, whatever the computer's clock shows
    farm = OpenFarm.create(path, replace(things, farm=replace(things.farm, practice=False)))
    hour = 0
    try:
        with _Gathered(farm), clock.set_to(lambda: float(hour)):
            desk = Desk(farm)
            wrong = [Row("pc_clock", n, cells, farm.time) for n, cells in enumerate(_lines("pc_clock.csv"), start=2)]
            for row in practice_rows(farm.time):
                written = row.instant("written")
                if until_utc_s is not None and written > until_utc_s:
                    break
                hour = _shown(written, wrong)
                desk.type_in(row)
        farm.save_things(things)
    except BaseException:
        farm.close()
        path.unlink(missing_ok=True)
        raise
    return farm


def _shown(at_utc_s: int, wrong: Sequence[Row]) -> int:
    """What the computer's clock showed [UTC s]: the hour itself, but for the evenings when it was wrong."""
    for row in wrong:
        if row.instant("from") <= at_utc_s < row.instant("until"):
            return row.instant("shows") + at_utc_s - row.instant("from")
    return at_utc_s


class _Gathered:
    """Stands in for the season file while the verbs write, so that a whole season becomes one transaction."""

    def __init__(self, farm: OpenFarm) -> None:
        self.farm, self.file = farm, farm.file
        self.entries: list[Entry] = []

    def __enter__(self) -> None:
        self.farm.file = cast(SeasonFile, self)

    def __exit__(self, kind: type[BaseException] | None, *_: object) -> None:
        self.farm.file = self.file
        if kind is None:
            self.flush()

    def __getattr__(self, name: str) -> Any:
        return getattr(self.file, name)

    def append(self, entries: Sequence[Entry]) -> None:
        self.entries += entries

    def append_logger(self, entry: Entry, *rows: Any) -> int:
        self.flush()
        return self.file.append_logger(entry, *rows)

    def flush(self) -> None:
        self.file.append(self.entries)
        self.entries = []


def _lines(*parts: str) -> list[dict[str, str]]:
    with demo_data(*parts).open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def _things(kind: type, name: str) -> list[Any]:
    """The rows of a register as the frozen things they are; an empty cell leaves the thing's own default."""
    hints = get_type_hints(kind)
    return [
        kind(**{f: _read(hints[f], line[CALLED.get(f, f)]) for f in hints if line.get(CALLED.get(f, f))})
        for line in _lines("farm", f"{name}.csv")
    ]


def _read(hint: object, cell: str) -> object:
    """A cell as the type its field has; `-` is None."""
    if cell == "-":
        return None
    if hint is bool:
        return cell == "yes"
    if hint in (int, int | None):
        return int(cell)
    if hint in (float, float | None):
        return float(cell)
    return cell
