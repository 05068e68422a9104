"""Copies: on closing, onto a stick, and which of them stay."""

from __future__ import annotations

import shutil
import sqlite3
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk import paths
from farmdesk.errors import FileTrouble
from farmdesk.notebook import copies
from farmdesk.notebook.copies import KEPT_N, automatic, spare
from farmdesk.notebook.lock import Lock
from farmdesk.notebook.season_file import SeasonFile
from farmdesk.notebook.verify import verify
from tests.conftest import Hands
from tests.notebook.made import THINGS, day, logger_entry, season
from tests.notebook.test_logger_rows import rows


def kept() -> list[str]:
    return sorted(path.name for path in (paths.data_folder() / "copies").glob("*/*"))


def test_closing_keeps_a_copy_named_in_farm_time(tmp_path: Path, at: Hands) -> None:
    at("2025-01-14T23:30-05:00")
    with season(tmp_path, 5) as file:
        written = file.entries()
        assert file.copies == []
    assert kept() == ["2025-01-14 233000.season"]
    (copy,) = file.copies
    assert verify(copy) == []
    with SeasonFile.open(copy, read_only=True) as opened:
        assert opened.entries() == written
        assert opened.things == THINGS


def test_no_copy_where_nothing_changed(tmp_path: Path, at: Hands) -> None:
    with season(tmp_path, 5) as file:
        pass
    for _ in range(3):
        at.forward(60)
        with SeasonFile.open(file.path) as again:
            again.entries()
    assert len(kept()) == 1
    at.forward(60)
    with SeasonFile.open(file.path) as again:
        again.save_things(THINGS)
    assert len(kept()) == 2


def test_what_the_last_program_had_no_time_to_copy_is_copied_by_the_next(tmp_path: Path, at: Hands) -> None:
    with season(tmp_path, 5) as file:
        pass
    at.forward(60)
    lost = SeasonFile.open(file.path)
    lost.append([day(6)])
    lost._wire.close()  # the power went
    lost._lock.release()  # type: ignore[union-attr]
    at.forward(60)
    with SeasonFile.open(file.path):
        pass
    assert len(kept()) == 2
    with SeasonFile.open(file.copies[0], read_only=True) as copy:
        assert len(copy.entries()) == 6


def test_fourteen_stay_and_the_last_of_each_month(tmp_path: Path, at: Hands) -> None:
    at("2024-11-28T18:00-05:00")
    with season(tmp_path, 1) as file:
        pass
    for i in range(40):
        at.forward(86_400)
        with SeasonFile.open(file.path) as again:
            again.append([day(i)])
    names = kept()
    assert len(names) == KEPT_N + 1
    assert [name[:10] for name in (names[0], names[7], names[1])] == ["2024-11-30", "2024-12-31", "2024-12-25"]
    assert names[-1].startswith("2025-01-07")
    at("2020-01-01T06:00-05:00")  # a clock set back does not cost the copy just made
    with SeasonFile.open(file.path) as again:
        again.append([day(99)])
    assert kept()[0].startswith("2020-01-01")


@given(st.lists(st.dates(), unique=True, max_size=60).map(sorted), st.integers(1, 20))
def test_what_goes_is_neither_new_nor_the_last_of_its_month(days: list, kept_n: int) -> None:  # type: ignore[type-arg]
    all_copies = [Path(f"{day:%Y-%m-%d} 180000.season") for day in days]
    gone = spare(all_copies, kept_n)
    stays = [copy for copy in all_copies if copy not in gone]
    assert stays[-kept_n:] == all_copies[-kept_n:]
    assert {copy.name[:7] for copy in stays} == {copy.name[:7] for copy in all_copies}
    assert spare(stays, kept_n) == []
    assert len(stays) <= kept_n + len({copy.name[:7] for copy in all_copies})


def test_other_files_in_the_folder_are_left_alone(tmp_path: Path) -> None:
    for name in ("2025-01-14 180000.season", "2025-01-15 180000.season.part", "before step 2.season", "mine.txt"):
        (tmp_path / name).touch()
    assert [path.name for path in automatic(tmp_path)] == ["2025-01-14 180000.season"]


def test_two_seasons_of_one_name_do_not_share_their_copies(tmp_path: Path) -> None:
    for folder in ("farm", "practice"):
        (tmp_path / folder).mkdir()
        with season(tmp_path / folder, 1):
            pass
    assert len(list((paths.data_folder() / "copies").iterdir())) == 2


def test_a_copy_to_the_stick_is_opened_and_folded(tmp_path: Path, at: Hands) -> None:
    stick = tmp_path / "stick"
    stick.mkdir()
    with season(tmp_path, 23) as file:
        file.append_logger(logger_entry("L1", "25-9W"), *rows(0, 1234))
        report = file.copy_to(stick / "25.season")
        assert (report.entries_n, report.logger_rows_n, report.lots_n) == (24, 1234, 4)
        assert report.bytes_n == (stick / "25.season").stat().st_size
        assert report.copied_at_utc_s == at.at_utc_s
        file.append([day(24)])
        assert file.copy_to(stick / "25.season").entries_n == 25
        written = file.entries()
    assert [path.name for path in stick.iterdir()] == ["25.season"]
    with SeasonFile.open(stick / "25.season") as copy:
        assert copy.entries() == written


def test_a_private_copy_can_be_taken_to_the_stick_too(tmp_path: Path) -> None:
    with season(tmp_path, 5) as file, SeasonFile.open(file.path) as second:
        assert second.held is not None
        assert second.copy_to(tmp_path / "stick.season").entries_n == 5


def test_a_copy_that_differs_is_not_left_there(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def short(source: sqlite3.Connection, target: Path, *, lasting: bool) -> None:
        shutil.copyfile(tmp_path / "old.season", target)

    with season(tmp_path, 5) as file:
        file.copy_to(tmp_path / "old.season")
        before = (tmp_path / "old.season").read_bytes()
        file.append([day(6)])
        monkeypatch.setattr(copies.connection, "backup", short)
        with pytest.raises(FileTrouble, match="is not the same as the season file"):
            file.copy_to(tmp_path / "new.season")
        with pytest.raises(FileTrouble, match="is not the same as the season file"):
            file.copy_to(tmp_path / "old.season")
        monkeypatch.undo()
    assert (tmp_path / "old.season").read_bytes() == before
    assert not list(tmp_path.glob("new*"))
    assert not list(tmp_path.glob("*.part*"))


def test_no_copy_onto_itself_nor_onto_a_file_in_use_nor_into_nothing(tmp_path: Path) -> None:
    with season(tmp_path, 5) as file:
        with pytest.raises(FileTrouble, match="cannot be copied onto itself"):
            file.copy_to(file.path)
        file.copy_to(tmp_path / "other.season")
        lock = Lock.take(tmp_path / "other.season")
        assert isinstance(lock, Lock)
        with pytest.raises(FileTrouble, match=r"Another program is using other\.season"):
            file.copy_to(tmp_path / "other.season")
        lock.release()
        with pytest.raises(FileTrouble, match="cannot be opened"):
            file.copy_to(tmp_path / "no folder" / "other.season")
        (tmp_path / "a folder").mkdir()
        with pytest.raises(FileTrouble):
            file.copy_to(tmp_path / "a folder")


def test_a_journal_left_beside_an_old_copy_does_not_reach_the_new_one(tmp_path: Path) -> None:
    target = tmp_path / "stick.season"
    with season(tmp_path, 5) as file:
        file.copy_to(target)
        (tmp_path / "stick.season-journal").write_bytes(file.path.read_bytes()[:5000])
        file.copy_to(target)
    assert not (tmp_path / "stick.season-journal").exists()
    assert verify(target) == []


def test_no_room_for_the_automatic_copy_is_said_and_the_file_is_closed(tmp_path: Path) -> None:
    file = season(tmp_path, 5)
    (paths.data_folder() / "copies").write_text("a file where the folder should be")
    with pytest.raises(FileTrouble):
        file.close()
    (paths.data_folder() / "copies").unlink()
    with SeasonFile.open(file.path) as again:
        assert again.held is None
        assert len(again.entries()) == 5
