"""Files that rows of the bench work on, the same on every run."""

from __future__ import annotations

import sys
from pathlib import Path

import numpy as np

from tests.bench.pairs import run

ROWS_N, TINY_N = 1_000_000, 2_000
STEP_S = 10
FIRST_UTC_S = 1_735_945_200  # 3 January 2025, 17:00 on a farm six hours behind UTC
ZONE = "America/Costa_Rica"


def make(name: str, folder: Path, tiny: bool) -> None:
    """Make one file in the folder, if it is not there.

    In a process of its own: a child's highest memory begins with its parent's, so the bench itself stays small.
    """
    if not (folder / name).exists():
        command = [sys.executable, "-m", "tests.bench.data", str(folder), *(["--tiny"] if tiny else []), name]
        run(command, folder, answers=False)


def readings(n: int) -> tuple[np.ndarray, np.ndarray]:
    """Instants [UTC s] and temperatures [°C, two decimals] of a mass that wanders between 14 and 30."""
    at_utc_s = FIRST_UTC_S + STEP_S * np.arange(n)
    wander = np.cumsum(np.random.default_rng(1).normal(0.0, 0.01, n))
    return at_utc_s, np.round(22.0 + 8.0 * np.sin(wander), 2)


def logger_csv(path: Path, n: int) -> None:
    at_utc_s, value = readings(n)
    wall = (at_utc_s - 6 * 3600).astype("M8[s]").astype(str).tolist()
    with path.open("w", encoding="utf-8") as file:
        file.write("time,mass °C\n")
        file.writelines(f"{at},{celsius:.2f}\n" for at, celsius in zip(wall, value.tolist(), strict=True))


def rows_farm(path: Path, n: int) -> None:
    """A season file that holds the rows under its entry number 1."""
    from farmdesk.notebook.season_file import SeasonFile

    at_utc_s, value = readings(n)
    with SeasonFile.create(path, things()) as season:
        season.append_logger(entry(n, at_utc_s), at_utc_s, value)


def practice_farm(path: Path, n: int) -> None:
    from farmdesk.work.practice import build_practice

    build_practice(path).close()


def sheet_json(path: Path, n: int) -> None:
    from tests.bench.ours.sheet import record

    record(path)


def things():
    from farmdesk.picture.things import Farm, Things

    return Things(Farm("Bench", "25", ZONE))


def entry(n: int, at_utc_s: np.ndarray):
    from farmdesk.picture.entries import Entry, LoggerFile

    first, last = int(at_utc_s[0]), int(at_utc_s[-1])
    body = LoggerFile("25-01W", "T1", "L1", "mass_c", "logger.csv", "", n, first, last)
    return Entry("bench-1", first, last, body, instrument="L1", mark="logger")


MAKERS = {"logger.csv": logger_csv, "rows.farm": rows_farm, "practice.farm": practice_farm, "sheet.json": sheet_json}


if __name__ == "__main__":
    MAKERS[sys.argv[-1]](Path(sys.argv[1]) / sys.argv[-1], TINY_N if "--tiny" in sys.argv else ROWS_N)
