"""A program killed in the middle of writing: what it said was saved is there, the rest is not, and all of it is whole."""

from __future__ import annotations

import os
import random
import signal
import time
from collections import Counter
from pathlib import Path

import pytest

from farmdesk.notebook.season_file import SeasonFile
from farmdesk.notebook.verify import verify
from farmdesk.picture.entries import LoggerFile
from tests.faults.conftest import Program
from tests.faults.program import ROWS_N
from tests.notebook.made import season


def hold_whole(path: Path, said: set[str]) -> None:
    """Open what a killed program left, and hold it to what that program said."""
    with SeasonFile.open(path) as file:
        assert file.held is None
        written = file.entries()
        acts = Counter(one.batch for one in written if one.batch)
        assert set(acts.values()) <= {7}
        assert said <= set(acts)
        for one in written:
            if isinstance(one.body, LoggerFile):
                assert len(file.logger_rows([one.id])[0]) == ROWS_N
    assert verify(path) == []


def kill_somewhere(program: Program, path: Path, after_s: float) -> set[str]:
    """Let a child write for a while [s], kill it, and answer the acts it said were saved."""
    child = int(program.ask("write", path).split()[1])
    said = {program.hear()}
    time.sleep(after_s)
    os.kill(child, signal.SIGKILL)
    while (line := program.hear()) != "gone":
        said.add(line)
    return {line.split()[1] for line in said}


def rounds(program: Program, path: Path, n: int, chance: random.Random) -> None:
    said: set[str] = set()
    journal = path.with_name(path.name + "-journal")
    for i in range(n):
        before = path.stat().st_size
        if i % 2:
            said |= kill_somewhere(program, path, chance.uniform(0, 0.15))
        else:
            program.ask("die", path, chance.choice([0, ROWS_N - 1]))
            assert program.hear() == "gone"
            assert journal.stat().st_size > 0  # an unfinished transaction, its pages already in the file
            assert path.stat().st_size > before
        hold_whole(path, said)
        if not i % 2:
            assert not journal.exists()
            assert path.stat().st_size <= before + 8192  # rolled back, but for what closing notes about the tables
    assert len(said) >= n // 2


def test_twenty_kills(tmp_path: Path, program: Program) -> None:
    with season(tmp_path, 10) as file:
        pass
    rounds(program, file.path, 20, random.Random(25))


@pytest.mark.long
def test_two_hundred_kills(tmp_path: Path, program: Program) -> None:
    for i in range(10):
        with season(tmp_path, 10, f"{i}.season") as file:
            pass
        rounds(program, file.path, 20, random.Random(i))


@pytest.mark.parametrize("open_it", ["read only", "verify"])
def test_a_reader_rolls_back_first_too(open_it: str, tmp_path: Path, program: Program) -> None:
    with season(tmp_path, 10) as file:
        written = file.entries()
    program.ask("die", file.path, 0)
    assert program.hear() == "gone"
    if open_it == "verify":
        assert verify(file.path) == []
    else:
        with SeasonFile.open(file.path, read_only=True) as copy:
            assert copy.entries() == written
