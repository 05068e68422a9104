"""The season file: made, opened, written and kept."""

from __future__ import annotations

import sqlite3
from pathlib import Path

import pytest
from sqlalchemy.exc import IntegrityError

from farmdesk.clock import FarmTime
from farmdesk.errors import FileTrouble, NotPossible
from farmdesk.notebook.season_file import Held, SeasonFile
from farmdesk.notebook.tables import HAPPENED, KEEP
from farmdesk.notebook.verify import verify
from farmdesk.picture.entries import Birth, Flow, LoggerFile, Posting, Remark, Strike
from farmdesk.picture.things import Farm, Things
from tests.conftest import Hands
from tests.notebook.made import THINGS, day, entry, season


def test_what_was_written_is_there_when_it_is_opened_again(tmp_path: Path) -> None:
    with season(tmp_path, 50) as file:
        written = file.entries()
        file.append([])
        file.append([day(50)])
        assert file.entries()[:50] == written
    with SeasonFile.open(file.path) as again:
        assert again.held is None
        assert again.things == THINGS
        assert len(again.entries()) == 51
        assert again.file_id == file.file_id


def test_a_file_that_is_there_is_not_written_over(tmp_path: Path) -> None:
    with season(tmp_path, 3) as file:
        pass
    before = file.path.read_bytes()
    with pytest.raises(FileTrouble, match=r"There is a file called 25\.season already"):
        season(tmp_path)
    assert file.path.read_bytes() == before


def test_a_file_that_is_not_there(tmp_path: Path) -> None:
    with pytest.raises(FileTrouble, match=r"no file called 25\.season"):
        SeasonFile.open(tmp_path / "25.season")
    with pytest.raises(FileTrouble, match=r"no file called nowhere\.season"):
        SeasonFile.open(tmp_path / "no folder" / "nowhere.season")
    with pytest.raises(FileTrouble, match="cannot be opened"):
        SeasonFile.create(tmp_path / "no folder" / "25.season", THINGS)
    assert list(tmp_path.iterdir()) == []


def test_a_farm_in_no_zone_is_refused(tmp_path: Path) -> None:
    with pytest.raises(NotPossible, match="Nowhere/Land"):
        SeasonFile.create(tmp_path / "25.season", Things(Farm("", "25", "Nowhere/Land")))
    assert list(tmp_path.iterdir()) == []


def test_nothing_lies_beside_a_file_at_rest(tmp_path: Path) -> None:
    with season(tmp_path, 5) as file:
        assert sorted(path.name for path in tmp_path.iterdir()) == ["25.season", "25.season.lock"]
    assert [path.name for path in tmp_path.iterdir()] == ["25.season"]
    file.close()  # a second time does nothing


@pytest.mark.parametrize(
    ("grams", "sentence"), [(1, "More arrives than leaves: 0.001"), (-2500, "More leaves than arrives: 2.500")]
)
def test_typed_weights_must_sum_to_zero(grams: int, sentence: str, tmp_path: Path) -> None:
    short = Flow("25-1W", "move", (Posting("25-1W", "T1", -9000), Posting("25-1W", "1", 9000 + grams)))
    with season(tmp_path, 5) as file:
        written = file.entries()
        with pytest.raises(NotPossible, match=sentence):
            file.append([day(7), entry(short), day(8)])
        assert file.entries() == written
        all_and_rest = (Posting("25-1W", "T1", 0, 1), Posting("25-1W", "1", 8000), Posting("25-1W", ">water", 0, 2))
        file.append([entry(Flow("25-1W", "move", all_and_rest))])
    assert verify(file.path) == []


def test_an_id_cannot_be_used_twice(tmp_path: Path) -> None:
    with season(tmp_path, 5) as file:
        old = file.entries()[0]
        with pytest.raises(IntegrityError):
            file.append([day(5), old])
        assert len(file.entries()) == 5
        file.append([day(6)])
    assert verify(file.path) == []


@pytest.mark.parametrize("table", HAPPENED, ids=lambda table: table.name)
def test_the_database_itself_keeps_what_happened(table: object, tmp_path: Path) -> None:
    """Not even another program can change or take out a row without first breaking the rules of the file."""
    name = table.name  # type: ignore[attr-defined]
    with season(tmp_path, 20) as file:
        pass
    raw = sqlite3.connect(file.path)
    columns = [row[1] for row in raw.execute(f'PRAGMA table_info("{name}")')]
    if raw.execute(f'SELECT count(*) FROM "{name}"').fetchone() == (0,):
        raw.execute("PRAGMA ignore_check_constraints=ON")
        kinds = [row[2] for row in raw.execute(f'PRAGMA table_info("{name}")')]
        raw.execute(
            f'INSERT INTO "{name}" VALUES ({", ".join("?" * len(kinds))})',
            [
                "x" if kind == "TEXT" else 0 if column == "way" else 1
                for column, kind in zip(columns, kinds, strict=True)
            ],
        )
    for sql in (f'UPDATE "{name}" SET "{columns[-1]}" = "{columns[-1]}"', f'DELETE FROM "{name}"'):
        with pytest.raises(sqlite3.IntegrityError, match=KEEP):
            raw.execute(sql)
    if name == "logger_row":  # a look-up before each of a million rows would cost too much: `verify` sees it
        raw.execute("PRAGMA recursive_triggers=ON")
    with pytest.raises(sqlite3.IntegrityError, match=KEEP):
        raw.execute(f'INSERT OR REPLACE INTO "{name}" SELECT * FROM "{name}"')
    raw.close()


def test_the_clock_may_be_set_back(tmp_path: Path, at: Hands) -> None:
    with season(tmp_path) as file:
        at("2025-01-14T18:00-05:00")
        file.append([entry(Birth("25-1W", "W"))])
        at("2024-01-01T06:00-05:00")
        file.append([entry(Remark("25-1W", "", "note", "the battery of the clock was empty"))])
    with SeasonFile.open(file.path) as file:
        file.append([entry(Strike(file.entries()[1].id))])
        written = file.entries()
        assert [one.id for one in written] == sorted(one.id for one in written)
        assert written[1].written_utc_s < written[0].written_utc_s
    assert verify(file.path) == []


def test_a_computer_whose_clock_is_behind_still_writes_rising_ids(
    tmp_path: Path, at: Hands, monkeypatch: pytest.MonkeyPatch
) -> None:
    at("2035-01-14T18:00-05:00")
    with season(tmp_path, 1) as file:
        pass
    at("2025-01-14T18:00-05:00")
    monkeypatch.setattr("farmdesk.notebook.ids._last_ms", 0)  # another program
    with SeasonFile.open(file.path) as file:
        file.append([day(1)])
        first, second = file.entries()
        assert first.id < second.id


def test_a_copy_to_read_refuses_to_be_written(tmp_path: Path) -> None:
    with season(tmp_path, 5) as file, SeasonFile.open(file.path, read_only=True) as copy:
        assert copy.entries() == file.entries()
        for write in (
            lambda: copy.append([day(6)]),
            lambda: copy.save_things(THINGS),
            lambda: copy.append_logger(entry(LoggerFile("", "", "", "", "", "", 0, 0, 0)), [], []),  # type: ignore[arg-type]
        ):
            with pytest.raises(FileTrouble, match="nothing can be written here"):
                write()
        with pytest.raises(sqlite3.OperationalError, match="readonly"):
            copy._wire.raw.execute("DELETE FROM farm")
        file.append([day(7)])
        assert len(copy.entries()) == 5
        copy.fresh_copy()
        assert len(copy.entries()) == 6
        with pytest.raises(ValueError):
            file.fresh_copy()


def test_who_holds_the_file_is_said_in_farm_time() -> None:
    time = FarmTime("America/Bogota")
    held = Held("ana (office)", 1_736_898_060, 1_736_900_000)
    assert str(held.sentence(time)) == (
        "ana (office) has this season open since 14 Jan 18:41. You are reading a copy made at 14 Jan 19:13; "
        "nothing can be written here."
    )
    assert str(Held("", 0, 1_736_900_000).sentence(time)).startswith("Another program has this season open.")


def test_a_season_folder_may_have_any_name(tmp_path: Path) -> None:
    folder = tmp_path / "año 25 % #1?" / "ñandú's"
    folder.mkdir(parents=True)
    with season(folder, 5, "la cosecha ü?#%41.season") as file:
        report = file.copy_to(folder / "copia ñ %.season")
        assert report.entries_n == 5
    assert verify(file.path) == []
    with SeasonFile.open(report.path) as copy:
        assert len(copy.entries()) == 5
