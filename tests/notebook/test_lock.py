"""One program writes; the lock ends with the program, and the file beside it says whose it is."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import threading
from pathlib import Path

import pytest

from farmdesk.errors import FileTrouble
from farmdesk.notebook import lock as locks
from farmdesk.notebook.ids import computer_name
from farmdesk.notebook.lock import Holder, Lock
from farmdesk.notebook.season_file import SeasonFile
from tests.conftest import Hands
from tests.notebook.made import season


def take(path: Path) -> Lock:
    lock = Lock.take(path)
    assert isinstance(lock, Lock)
    return lock


def test_the_second_is_told_who_has_it(tmp_path: Path, at: Hands) -> None:
    path = tmp_path / "25.season"
    first = take(path)
    second = Lock.take(path)
    assert isinstance(second, Holder)
    assert computer_name() in second.who
    assert (second.since_utc_s, second.pid, second.computer) == (at.at_utc_s, os.getpid(), computer_name())
    first.release()
    assert list(tmp_path.iterdir()) == []
    take(path).release()
    first.release()  # a second time does nothing


@pytest.mark.parametrize(
    "left", [b"", b"{", b"[]", b'{"who": "eva", "since_utc_s": 1, "pid": 1, "computer": "another"}']
)
def test_what_a_crash_left_in_the_file_does_not_hold(left: bytes, tmp_path: Path) -> None:
    (tmp_path / "25.season.lock").write_bytes(left)
    lock = take(tmp_path / "25.season")
    assert json.loads((tmp_path / "25.season.lock").read_bytes())["pid"] == os.getpid()
    lock.release()


def gone_pid() -> int:
    """The number of a program that has ended."""
    ended = subprocess.Popen([sys.executable, "-c", ""])
    ended.wait()
    return ended.pid


@pytest.mark.parametrize(
    ("pid", "computer", "is_held"),
    [("gone", computer_name(), False), ("here", computer_name(), True), ("gone", "another", True)],
)
def test_a_folder_without_locks_goes_by_the_words(
    pid: str, computer: str, is_held: bool, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(locks, "_grab", lambda descriptor: None)
    holder = {"who": "eva", "since_utc_s": 5, "pid": gone_pid() if pid == "gone" else os.getpid(), "computer": computer}
    (tmp_path / "25.season.lock").write_text(json.dumps(holder))
    found = Lock.take(tmp_path / "25.season")
    if is_held:
        assert found == Holder(**holder)  # type: ignore[arg-type]
    else:
        assert isinstance(found, Lock)
        found.release()


def test_many_at_once_and_never_two_inside(tmp_path: Path) -> None:
    path, inside, most, taken = tmp_path / "25.season", [], [], []

    def work() -> None:
        for _ in range(60):
            lock = Lock.take(path)
            if isinstance(lock, Lock):
                inside.append(1)
                most.append(len(inside))
                taken.append(1)
                inside.pop()
                lock.release()

    threads = [threading.Thread(target=work) for _ in range(6)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert max(most) == 1
    assert len(taken) > 60
    assert list(tmp_path.iterdir()) == []


def test_a_file_that_will_not_open_leaves_no_lock(tmp_path: Path) -> None:
    (tmp_path / "25.season").write_bytes(b"no season")
    with pytest.raises(FileTrouble):
        SeasonFile.open(tmp_path / "25.season")
    assert [path.name for path in tmp_path.iterdir()] == ["25.season"]


def test_opened_twice_in_one_program_the_second_reads_a_copy(tmp_path: Path) -> None:
    with season(tmp_path, 3) as first, SeasonFile.open(first.path) as second:
        assert second.held is not None
        assert second.entries() == first.entries()
    with SeasonFile.open(first.path) as third:
        assert third.held is None
