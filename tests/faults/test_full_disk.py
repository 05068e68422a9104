"""A disk that fills up, or gives out, at any write: one sentence, nothing half written, and it goes on afterwards."""

from __future__ import annotations

import dataclasses
import resource
import shutil
import sqlite3
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

import numpy as np
import pytest

from farmdesk import paths
from farmdesk.errors import FileTrouble
from farmdesk.notebook.season_file import SeasonFile
from farmdesk.notebook.verify import verify
from farmdesk.picture.things import Buyer
from tests.notebook.made import THINGS, day, logger_entry, season

MANY = {f"B{i}": Buyer(f"B{i}", "a roaster with a long description " * 20) for i in range(40)}


def append(file: SeasonFile) -> None:
    file.append([day(i) for i in range(300)])


def append_logger(file: SeasonFile) -> None:
    at = np.arange(1500) * 60
    file.append_logger(logger_entry(), at, np.sin(at))


def save_things(file: SeasonFile) -> None:
    file.save_things(dataclasses.replace(THINGS, buyers=MANY))


WRITES = (append, append_logger, save_things)


@contextmanager
def file_limit(limit_n: int) -> Iterator[None]:
    """No file may grow beyond so many bytes: every write past it fails as on a disk that gives out."""
    soft, hard = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (limit_n, hard))
    try:
        yield
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, (soft, hard))


@pytest.fixture
def stick(tmp_path: Path) -> Path:
    folder = tmp_path / "stick"
    folder.mkdir()
    return folder


def state(file: SeasonFile) -> tuple[object, object, object]:
    return file.entries(), file.things, file.logger_last_utc_s("L1")


@pytest.mark.parametrize("write", WRITES, ids=lambda write: write.__name__)
def test_a_disk_full_at_any_page(write: Callable[[SeasonFile], None], tmp_path: Path) -> None:
    refused = []
    with season(tmp_path, 10) as file:
        raw = file._wire.raw
        pages = raw.execute("PRAGMA page_count").fetchone()[0]
        before = state(file)
        for more in range(200):
            raw.execute(f"PRAGMA max_page_count={pages + more}")
            try:
                write(file)
                break
            except FileTrouble as trouble:
                refused.append(str(trouble))
            assert state(file) == before
        assert len(refused) > 2
        assert all(said.startswith("The disk is full; nothing was written to 25.season.") for said in refused)
        assert state(file) != before
        raw.execute(f"PRAGMA max_page_count={2**30}")
        file.append([day(999)])
    assert verify(file.path) == []


@pytest.mark.parametrize("write", WRITES, ids=lambda write: write.__name__)
def test_a_disk_that_gives_out_at_any_byte(write: Callable[[SeasonFile], None], tmp_path: Path) -> None:
    """The journal and the file itself fail at other moments: while pages are kept, while they are written."""
    with season(tmp_path, 10) as file:
        before = state(file)
        size = file.path.stat().st_size
        refused, limits = [], [0, 1, 100, 512, 513, 4096, 5000, 9000, *range(size - 4096, size + 400_000, 9_999)]
        for limit in limits:
            try:
                with file_limit(limit):
                    write(file)
                break
            except FileTrouble as trouble:
                refused.append(trouble)
            assert state(file) == before, limit
        assert len(refused) > 8
        assert all(trouble.hint for trouble in refused)
        assert state(file) != before
        file.append([day(999)])
    assert verify(file.path) == []


def test_no_room_for_a_new_file_leaves_nothing(tmp_path: Path, stick: Path) -> None:
    for limit in (0, 10, 200, 4096, 50_000, 200_000):
        with pytest.raises(FileTrouble), file_limit(limit):
            season(stick)
        assert list(stick.iterdir()) == []
    season(stick).close()


def test_no_room_on_the_stick_leaves_the_old_copy(tmp_path: Path, stick: Path) -> None:
    target = stick / "25.season"
    with season(tmp_path, 10) as file:
        file.copy_to(target)
        old = target.read_bytes()
        file.append([day(11)])
        for limit in (0, 100, 4096, 100_000, len(old) - 4096):
            for path in (target, stick / "new.season"):
                with pytest.raises(FileTrouble), file_limit(limit):
                    file.copy_to(path)
            assert [path.name for path in stick.iterdir()] == ["25.season"]
            assert target.read_bytes() == old
        file.append([day(12)])
        assert file.copy_to(target).entries_n == 12


def test_no_room_for_a_private_copy_or_the_automatic_one(tmp_path: Path) -> None:
    with season(tmp_path, 10) as file:
        with pytest.raises(FileTrouble), file_limit(50_000):
            SeasonFile.open(file.path)
        with SeasonFile.open(file.path) as second:
            with pytest.raises(FileTrouble), file_limit(50_000):
                second.fresh_copy()
            assert len(second.entries()) == 10
    again = SeasonFile.open(file.path)
    again.append([day(10)])
    kept = sorted((paths.data_folder() / "copies").rglob("*.season"))
    with pytest.raises(FileTrouble), file_limit(50_000):
        again.close()
    assert sorted(path for path in (paths.data_folder() / "copies").rglob("*") if path.is_file()) == kept
    with SeasonFile.open(file.path) as last:
        assert last.held is None
        assert len(last.entries()) == 11


def test_a_step_on_a_full_disk_leaves_the_file_as_it_was(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    from farmdesk.notebook import steps

    with season(tmp_path, 10) as file:
        pass
    more = (*steps.steps(), "CREATE TABLE more AS SELECT hex(zeroblob(200000)) AS a;")
    before = file.path.read_bytes()
    with monkeypatch.context() as patch:
        patch.setattr(steps, "steps", lambda: more)
        with pytest.raises(FileTrouble), file_limit(len(before) + 20_000):
            SeasonFile.open(file.path)
    assert file.path.read_bytes() == before
    assert verify(file.path) == []


def test_a_file_taken_away_while_it_is_open(tmp_path: Path, stick: Path) -> None:
    """The stick was pulled out: what can still be said is said, and closing frees everything."""
    with season(tmp_path, 5) as made:
        made.copy_to(stick / "25.season")
    file = SeasonFile.open(stick / "25.season")
    shutil.rmtree(stick)
    with pytest.raises(FileTrouble, match=r"cannot be opened|did not do its part"):
        file.append([day(6)])
    with pytest.raises(FileTrouble):
        file.close()
    with pytest.raises(sqlite3.ProgrammingError):
        file._wire.raw.execute("SELECT 1")
