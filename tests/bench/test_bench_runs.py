"""Every row of the bench runs on tiny data; what it measures is asserted nowhere."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from tests.bench.__main__ import of_row
from tests.bench.pairs import HERE, ROOT, Figure, Row, result_of, run
from tests.bench.rows import ROWS


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """One folder for all rows: what one row needs was often made for another."""
    return tmp_path_factory.mktemp("bench")


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row.name)
def test_the_row_runs(folder: Path, row: Row) -> None:
    for result in of_row(row, folder, tiny=True):
        assert result.ours is not None, result.why
        assert result.ours > 0
        assert (result.ratio is not None) == (result.floor is not None)


def test_floors_are_bare() -> None:
    floors = sorted((HERE / "floors").glob("*.py"))
    assert {floor.stem for floor in floors} <= {row.floor for row in ROWS}
    for floor in floors:
        assert "farmdesk" not in floor.read_text(encoding="utf-8")
        assert "tests" not in floor.read_text(encoding="utf-8")


def test_goals() -> None:
    ours, floors = [{"x": 1.0}, {"x": 3.0}, {"x": 2.0}], [{"x": 2.0}, {"x": 2.0}, {"x": 2.0}]
    result = result_of("r", Figure("x", "", "s", ratio_at_most=1.0), ours, floors)
    assert (result.ours, result.floor, result.ratio, result.met) == (2.0, 2.0, 1.0, True)
    assert result_of("r", Figure("x", "", "s", ratio_at_most=0.9), ours, floors).met is False
    assert result_of("r", Figure("x", "", "s", at_most=1.9), ours, []).met is False
    assert result_of("r", Figure("x", "", "s", faster_at_least=2), [{"x": 1.0}], [{"x": 2.0}]).met is True
    assert result_of("r", Figure("x", "", "s", faster_at_least=3), [{"x": 1.0}], [{"x": 2.0}]).met is False


def test_a_row_that_fails_says_why_in_one_line(tmp_path: Path) -> None:
    with pytest.raises(RuntimeError, match="ZeroDivisionError"):
        run([sys.executable, "-c", "1 / 0"], tmp_path)


def test_the_table_prints() -> None:
    said = subprocess.run(
        [sys.executable, "-m", "tests.bench", "--tiny", "fold"], cwd=ROOT, capture_output=True, text=True, check=True
    ).stdout.splitlines()
    assert said[0].split() == ["row", "what", "ours", "floor", "ratio", "goal", "met"]
    assert [line.split()[0] for line in said[1:4]] == ["fold"] * 3
