"""Make what a release pins: `python -m tests.notebook.release`.

Steps and the files kept of earlier versions stay as they are: a change of the tables is a new step, written by hand, and
each version keeps a file of its own, which must open for ever.
"""

from __future__ import annotations

import gzip
import os
import tempfile
from pathlib import Path
from typing import Any
from unittest.mock import patch

import numpy as np

from farmdesk import clock
from farmdesk.notebook import season_file, steps
from farmdesk.notebook.season_file import SeasonFile
from farmdesk.notebook.tables import SHAPES, Many
from farmdesk.picture.entries import Entry, Line, LoggerFile, Posting
from tests.notebook.made import THINGS

RELEASED = Path(__file__).with_name("released")
FIRST_UTC_S = 1_736_856_000
VALUES: dict[type, Any] = {str: "año, 12½ °C", int: 7, float: 0.1, bool: True}
ITEMS: dict[type, tuple[Any, ...]] = {
    str: ("10", "2", "ñ"),
    Line: (Line("a", 4.5, "4,5"), Line("b", -3.0)),
    Posting: (Posting("25-1W", "T1", -7000), Posting("25-1W", ">pulp", 7000, 0, "7 kg")),
}
ROWS = (FIRST_UTC_S + 600 * np.arange(300), np.round(20 + np.sin(np.arange(300) / 20), 2))


def written() -> list[Entry]:
    """One entry of every kind, the same on every computer."""
    made = []
    for i, shape in enumerate(SHAPES.values()):
        values: list[Any] = []
        for field in shape.fields:
            if isinstance(field, Many):
                values.append(ITEMS[field.item])
            elif field.name.endswith("_utc_s"):
                values.append(FIRST_UTC_S)
            else:
                values.append(None if field.optional and i % 2 else VALUES[field.type])
        at = FIRST_UTC_S + 60 * i
        made.append(Entry(f"{i:020d}", at, at + 30, shape.cls(*values), "ana", "S1", "measured", "note", "", "act"))
    return made


def make(path: Path) -> None:
    """A season file with one entry of every kind and 300 logger rows."""
    office = patch.object(season_file, "computer_name", lambda: "office")
    with clock.set_to(FIRST_UTC_S), office, SeasonFile.create(path, THINGS) as file:
        for one in written():
            if isinstance(one.body, LoggerFile):
                file.append_logger(one, *ROWS)
            else:
                file.append([one])


def main() -> None:
    """Write the file kept of the newest version, where it has none yet."""
    kept = RELEASED / f"{steps.version()}.season.gz"
    if kept.exists():
        raise SystemExit(f"{kept.name} is there and stays as it is; a change of the tables is a new step.")
    with tempfile.TemporaryDirectory() as folder:
        os.environ["FARMDESK_DATA"] = folder
        path = Path(folder) / f"{steps.version()}.season"
        make(path)
        kept.write_bytes(gzip.compress(path.read_bytes(), mtime=0))


if __name__ == "__main__":
    main()
