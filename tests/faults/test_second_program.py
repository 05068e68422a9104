"""Two programs and one season file: one writes, the other reads a copy of its own and says so."""

from __future__ import annotations

import json
import os
from pathlib import Path

import pytest

from farmdesk.errors import FileTrouble
from farmdesk.notebook import connection
from farmdesk.notebook.ids import computer_name
from farmdesk.notebook.season_file import SeasonFile
from farmdesk.notebook.verify import verify
from tests.faults.conftest import Program
from tests.notebook.made import day, season


@pytest.fixture
def path(tmp_path: Path) -> Path:
    with season(tmp_path, 20) as file:
        return file.path


def test_the_second_program_reads_a_copy_and_can_take_a_fresh_one(path: Path, program: Program) -> None:
    assert program.ask("hold", path) == "writes 20"
    before = path.stat()
    with SeasonFile.open(path) as second:
        assert second.held is not None
        assert computer_name() in second.held.who
        holder = json.loads(path.with_name(path.name + ".lock").read_text())
        assert holder["pid"] == program.process.pid != os.getpid()
        assert second.held.since_utc_s == holder["since_utc_s"] <= second.held.copied_at_utc_s
        assert "has this season open since" in str(second.held.sentence(second.time))
        assert len(second.entries()) == 20
        with pytest.raises(FileTrouble, match="has this season open since"):
            second.append([day(1)])
        assert path.stat().st_mtime_ns == before.st_mtime_ns
        assert program.ask("append") == "done"
        assert len(second.entries()) == 20
        first_copy = second._private.path  # type: ignore[union-attr]
        second.fresh_copy()
        assert second.held is not None
        assert len(second.entries()) == 25
        assert not first_copy.exists()
        own = second._private.path  # type: ignore[union-attr]
        assert own.exists()
        assert own.parent != path.parent
    assert not own.parent.exists()
    assert program.ask("close") == "done"
    with SeasonFile.open(path) as file:
        assert file.held is None
        assert len(file.entries()) == 25
    assert verify(path) == []


def test_this_program_writes_and_the_other_one_reads(path: Path, program: Program) -> None:
    with SeasonFile.open(path) as file:
        who, n = program.ask("hold", path).rsplit(" ", 1)
        assert computer_name() in who
        assert n == "20"
        file.append([day(1)])
        assert program.ask("close") == "done"
        assert path.with_name(path.name + ".lock").exists()
    assert program.ask("hold", path) == "writes 21"
    assert program.ask("close") == "done"


def test_the_lock_of_a_killed_program_is_free(path: Path, program: Program) -> None:
    assert program.ask("hold", path) == "writes 20"
    program.kill()
    assert path.with_name(path.name + ".lock").exists()
    with SeasonFile.open(path) as file:
        assert file.held is None
        file.append([day(1)])
    assert not path.with_name(path.name + ".lock").exists()


def test_what_is_half_written_is_never_seen(path: Path, program: Program, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(connection, "WAIT_S", 0.05)
    assert program.ask("half", path) == "half"
    for read_only in (False, True):
        with pytest.raises(FileTrouble, match=r"Another program is using 25\.season"):
            SeasonFile.open(path, read_only=read_only)
    assert "Another program is using" in str(verify(path)[0].text)
    assert program.ask("go on") == "whole"
    program.end()
    with SeasonFile.open(path) as file:
        assert len(file.entries()) == 21
    assert verify(path) == []
