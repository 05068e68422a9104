"""Files of every released version open, and still say what was written."""

from __future__ import annotations

import gzip
from pathlib import Path

import numpy as np
import pytest

from farmdesk.notebook import steps
from farmdesk.notebook.season_file import SeasonFile
from farmdesk.notebook.verify import verify
from farmdesk.picture.entries import LoggerFile
from tests.notebook.made import THINGS
from tests.notebook.release import RELEASED, ROWS, written

HOW = "a numbered step, and python -m tests.notebook.release for its file"


@pytest.mark.parametrize("kept", sorted(RELEASED.glob("*.season.gz")), ids=lambda path: path.name)
def test_a_released_file_still_says_what_was_written(kept: Path, tmp_path: Path) -> None:
    path = tmp_path / "1.season"
    path.write_bytes(gzip.decompress(kept.read_bytes()))
    assert verify(path) == [], HOW
    with SeasonFile.open(path) as file:
        there = file.entries()
        assert file.things == THINGS
        assert {type(one.body) for one in there} <= {type(one.body) for one in written()}
        loggers = [one.id for one in there if isinstance(one.body, LoggerFile)]
        at, values = file.logger_rows(loggers)
    np.testing.assert_array_equal(at, ROWS[0])
    np.testing.assert_array_equal(values, ROWS[1])


def test_every_version_has_its_file() -> None:
    numbers = {int(path.name.split(".")[0]) for path in RELEASED.glob("*.season.gz")}
    assert numbers == set(range(1, steps.version() + 1)), HOW


def test_the_file_of_today_holds_every_kind(tmp_path: Path) -> None:
    path = tmp_path / "now.season"
    path.write_bytes(gzip.decompress((RELEASED / f"{steps.version()}.season.gz").read_bytes()))
    with SeasonFile.open(path) as file:
        assert file.entries() == written(), HOW
