"""One row of the bench: pairs of fresh processes, ours and the floor by turns, and the medians of what they say.

A script does its work, clocks it inside itself and prints one line of JSON as its last: figure -> number. A row
with `painted` is clocked from outside instead, from the start of the process to the word "painted".
"""

from __future__ import annotations

import json
import os
import statistics
import subprocess
import sys
import time
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

HERE = Path(__file__).resolve().parent
ROOT = HERE.parents[1]
PAIRS_N = 7
PATIENCE_S = 900.0


@dataclass(frozen=True)
class Figure:
    """One number and its goal: at most so much, at most so many times the floor, or so many times faster than it."""

    key: str
    what: str
    unit: str
    at_most: float | None = None
    ratio_at_most: float | None = None
    faster_at_least: float | None = None

    @property
    def goal(self) -> str:
        goals = []
        if self.at_most is not None:
            goals.append(f"≤ {self.at_most:g} {self.unit}")
        if self.ratio_at_most is not None:
            goals.append(f"≤ {self.ratio_at_most:g}×")
        if self.faster_at_least is not None:
            goals.append(f"{self.faster_at_least:g}× faster")
        return ", ".join(goals)


@dataclass(frozen=True)
class Row:
    """A row: our script (a module of `tests.bench.ours`, or a command), the floor's script, and the figures they give."""

    name: str
    figures: tuple[Figure, ...]
    floor: str = ""
    needs: tuple[str, ...] = ()  # files of `data` that are made beforehand
    painted: bool = False
    pairs_n: int = PAIRS_N


@dataclass(frozen=True)
class Result:
    """One figure measured: medians, and the median of the pairs' ratios."""

    row: str
    what: str
    ours: float | None
    floor: float | None
    ratio: float | None
    unit: str
    goal: str
    met: bool | None
    why: str = ""


class NotThere(Exception):
    """The code that a row measures has not been written yet."""


def measure(row: Row, folder: Path, tiny: bool = False) -> list[Result]:
    """Run a row's pairs after one that is thrown away; `tiny` is one pair alone, to see that it runs."""
    ours, floors = [], []
    try:
        for turn in (1,) if tiny else range(1 + row.pairs_n):
            sides: list[tuple[list[dict[str, float]], Callable[[], dict[str, float]]]] = [
                (ours, lambda: run(ours_command(row, folder, tiny), folder, row.painted))
            ]
            if row.floor:
                sides.append((floors, lambda: run(floor_command(row, folder, tiny), folder, row.painted)))
            for kept, side in sides if turn % 2 else reversed(sides):
                answer = side()
                if turn:
                    kept.append(answer)
    except NotThere as missing:
        return [
            Result(row.name, figure.what, None, None, None, figure.unit, figure.goal, None, str(missing))
            for figure in row.figures
        ]
    return [result_of(row.name, figure, ours, floors) for figure in row.figures]


def result_of(name: str, figure: Figure, ours: list[dict[str, float]], floors: list[dict[str, float]]) -> Result:
    """The medians of a figure, and whether they meet its goal."""
    our = statistics.median(answer[figure.key] for answer in ours)
    floor = ratio = None
    if floors and figure.key in floors[0]:
        floor = statistics.median(answer[figure.key] for answer in floors)
        ratio = statistics.median(a[figure.key] / b[figure.key] for a, b in zip(ours, floors, strict=True))
    met = figure.at_most is None or our <= figure.at_most
    if figure.ratio_at_most is not None:
        met = met and ratio is not None and ratio <= figure.ratio_at_most
    if figure.faster_at_least is not None:
        met = met and ratio is not None and ratio * figure.faster_at_least <= 1.0
    return Result(name, figure.what, our, floor, ratio, figure.unit, figure.goal, met)


def ours_command(row: Row, folder: Path, tiny: bool) -> list[str]:
    if row.painted:
        return [sys.executable, "-m", "farmdesk", "--quit-after-paint", str(folder / row.needs[0])]
    return [sys.executable, "-m", f"tests.bench.ours.{row.name}", str(folder), *(["--tiny"] if tiny else [])]


def floor_command(row: Row, folder: Path, tiny: bool) -> list[str]:
    script = HERE / "floors" / f"{row.floor}.py"
    if not script.exists():
        raise NotThere(f"not there yet: the floor {script.name}")
    return [sys.executable, str(script), str(folder), *(["--tiny"] if tiny else [])]


def run(command: list[str], folder: Path, painted: bool = False, answers: bool = True) -> dict[str, float]:
    """What one fresh process says. Raises NotThere where it lacks code, RuntimeError where it fails."""
    env = {
        "QT_QPA_PLATFORM": "offscreen",
        **os.environ,
        "FARMDESK_DATA": str(folder / "data"),
    }
    begun = time.perf_counter()
    with subprocess.Popen(
        command, cwd=ROOT, env=env, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True
    ) as child:
        painted_s, said = 0.0, ""
        assert child.stdout is not None
        if painted:
            for line in child.stdout:
                if line.strip() == "painted":
                    painted_s = time.perf_counter() - begun
                    break
        try:
            said, wrong = child.communicate(timeout=PATIENCE_S)
        except subprocess.TimeoutExpired:
            child.kill()
            raise
    if child.returncode or (painted and not painted_s):
        last = (wrong.strip().splitlines() or ["it said nothing"])[-1]
        if last.startswith(("ModuleNotFoundError", "ImportError")) or "No module named" in last:
            raise NotThere(f"not there yet: {last}")
        raise RuntimeError(f"{' '.join(command)}: {last}")
    if painted:
        return {"painted_s": painted_s}
    return json.loads(said.strip().splitlines()[-1]) if answers else {}
