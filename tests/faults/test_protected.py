"""Folders and files that may not be written."""

from __future__ import annotations

import os
import shutil
import tempfile
from collections.abc import Iterator
from pathlib import Path

import pytest

from farmdesk.errors import FileTrouble
from farmdesk.notebook.season_file import SeasonFile
from farmdesk.notebook.verify import verify
from tests.notebook.made import THINGS, day, season

NOBODY = 65_534


@pytest.fixture
def folder(monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    """A season file with ten entries in a folder where nothing can be written, not even by a test run as root."""
    outer = Path(tempfile.mkdtemp(prefix="farmdesk-tests-"))
    outer.chmod(0o755)
    monkeypatch.setenv("FARMDESK_DATA", str(outer / "data"))
    locked = outer / "locked"
    locked.mkdir()
    with season(locked, 10):
        pass
    for path in (outer / "data").rglob("*"):
        path.chmod(0o777)
    (outer / "data").chmod(0o777)
    (locked / "25.season").chmod(0o444)
    locked.chmod(0o555)
    is_root = os.geteuid() == 0
    if is_root:
        os.seteuid(NOBODY)
    try:
        yield locked
    finally:
        if is_root:
            os.seteuid(0)
        locked.chmod(0o755)
        shutil.rmtree(outer)


def test_a_protected_folder_is_said_and_can_still_be_read(folder: Path) -> None:
    path = folder / "25.season"
    with pytest.raises(FileTrouble, match=r"Nothing can be written to 25\.season"):
        SeasonFile.open(path)
    with SeasonFile.open(path, read_only=True) as copy:
        assert len(copy.entries()) == 10
        assert copy.held is None
        with pytest.raises(FileTrouble, match=r"Nothing can be written to new\.season"):
            copy.copy_to(folder / "new.season")
    with pytest.raises(FileTrouble, match=r"Nothing can be written to new\.season"):
        SeasonFile.create(folder / "new.season", THINGS)
    assert verify(path) == []
    assert [path.name for path in folder.iterdir()] == ["25.season"]


def test_a_protected_file_is_said_at_the_first_write(folder: Path) -> None:
    if os.geteuid() == NOBODY:
        os.seteuid(0)
        folder.chmod(0o777)
        os.seteuid(NOBODY)
    else:
        folder.chmod(0o755)
    with SeasonFile.open(folder / "25.season") as file:
        with pytest.raises(FileTrouble, match=r"Nothing can be written to 25\.season"):
            file.append([day(11)])
        assert len(file.entries()) == 10


def test_a_file_that_may_not_be_read(folder: Path) -> None:
    if os.geteuid() == NOBODY:
        os.seteuid(0)
        (folder / "25.season").chmod(0o000)
        os.seteuid(NOBODY)
    else:
        (folder / "25.season").chmod(0o000)
    for read_only in (False, True):
        with pytest.raises(FileTrouble):
            SeasonFile.open(folder / "25.season", read_only=read_only)
    assert len(verify(folder / "25.season")) == 1
