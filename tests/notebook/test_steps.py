"""The numbered steps make the tables; old files climb after a copy, newer ones are refused."""

from __future__ import annotations

import sqlite3
from pathlib import Path

import pytest

from farmdesk import paths
from farmdesk.errors import FileTrouble
from farmdesk.notebook import steps
from farmdesk.notebook.season_file import SeasonFile
from farmdesk.notebook.tables import schema_sql
from farmdesk.notebook.verify import verify
from tests.notebook.made import by_hand, season
from tests.notebook.test_release import HOW

NEXT = """
CREATE TABLE weather_note (entry INTEGER NOT NULL PRIMARY KEY REFERENCES entry (seq), text TEXT NOT NULL) STRICT;
INSERT INTO weather_note SELECT seq, note FROM entry;
"""


@pytest.fixture
def next_step(monkeypatch: pytest.MonkeyPatch) -> None:
    """A program that knows one step more."""
    more = (*steps.steps(), NEXT)
    steps.schema.cache_clear()
    monkeypatch.setattr(steps, "steps", lambda: more)
    yield
    steps.schema.cache_clear()


def test_the_steps_make_what_the_tables_say() -> None:
    ours = sqlite3.connect(":memory:")
    for sql in schema_sql():
        ours.execute(sql)
    from_tables = steps.schema_of(ours)
    ours.close()
    assert steps.schema() == from_tables, HOW


def test_every_table_is_strict_and_every_constraint_named() -> None:
    for sql in schema_sql():
        if sql.startswith("CREATE TABLE"):
            assert sql.endswith("STRICT")
            assert sql.count("CHECK") == sql.count("CONSTRAINT ck_")
            assert sql.count("FOREIGN KEY") == sql.count("CONSTRAINT fk_")
            assert "CASCADE" not in sql


def test_an_old_file_climbs_after_a_copy_is_kept(
    tmp_path: Path, next_step: None, monkeypatch: pytest.MonkeyPatch
) -> None:
    with monkeypatch.context() as before:
        before.setattr(steps, "steps", lambda now=steps.steps(): now[:-1])
        steps.schema.cache_clear()
        with season(tmp_path, 20) as file:
            written = file.entries()
        steps.schema.cache_clear()
    with SeasonFile.open(file.path) as climbed:
        assert climbed.entries() == written
    with by_hand(file.path, rules=True) as raw:
        assert raw.execute("PRAGMA user_version").fetchone() == (steps.version(),)
        assert raw.execute("SELECT count(*) FROM weather_note").fetchone() == (20,)
    assert verify(file.path) == []
    (kept,) = paths.data_folder().rglob(f"before step {steps.version()}*")
    with by_hand(kept, rules=True) as raw:
        assert raw.execute("PRAGMA user_version").fetchone() == (steps.version() - 1,)
        assert raw.execute("SELECT count(*) FROM entry").fetchone() == (20,)


@pytest.mark.parametrize(
    "broken",
    [
        "CREATE TABLE more (a INTEGER) STRICT; INSERT INTO no_such_table VALUES (1);",
        "CREATE TABLE more (a INTEGER REFERENCES entry (seq)) STRICT; INSERT INTO more VALUES (999);",
    ],
)
def test_a_step_is_made_wholly_or_not_at_all(broken: str, tmp_path: Path) -> None:
    with season(tmp_path, 5) as file:
        pass
    raw = sqlite3.connect(file.path, isolation_level=None)
    before = steps.schema_of(raw)
    with pytest.raises(sqlite3.Error):
        steps.climb(raw, (*steps.steps(), broken))
    assert steps.schema_of(raw) == before
    assert steps.version_of(raw) == steps.version()
    assert raw.execute("PRAGMA foreign_keys").fetchone() == (1,)
    raw.close()


def test_a_table_made_anew_in_a_step_keeps_its_children(tmp_path: Path) -> None:
    """What emptied a child table elsewhere: dropping its parent while foreign keys are on."""
    with season(tmp_path, 10) as file:
        pass
    raw = sqlite3.connect(file.path, isolation_level=None)
    raw.execute("PRAGMA foreign_keys=ON")
    names = [
        row[0] for row in raw.execute("SELECT name FROM sqlite_master WHERE type = 'trigger' AND tbl_name = 'entry'")
    ]
    anew = "".join(f"DROP TRIGGER {name};" for name in names) + (
        "CREATE TABLE new_entry AS SELECT * FROM entry; DROP TABLE entry;"
        "CREATE TABLE entry (seq INTEGER PRIMARY KEY, id TEXT, more TEXT) STRICT;"
        "INSERT INTO entry SELECT seq, id, '' FROM new_entry; DROP TABLE new_entry;"
    )
    children = raw.execute("SELECT count(*) FROM posting").fetchone()
    steps.climb(raw, (*steps.steps(), anew))
    assert raw.execute("SELECT count(*) FROM posting").fetchone() == children == (6,)
    raw.close()


@pytest.mark.parametrize("read_only", [False, True])
def test_a_newer_file_is_refused_with_a_sentence_and_not_touched(read_only: bool, tmp_path: Path) -> None:
    with season(tmp_path, 3) as file:
        pass
    with by_hand(file.path, rules=True) as raw:
        raw.execute("PRAGMA user_version = 99")
    before = file.path.read_bytes()
    with pytest.raises(FileTrouble, match=r"25\.season was written by a newer version"):
        SeasonFile.open(file.path, read_only=read_only)
    assert file.path.read_bytes() == before
    assert "newer version" in str(verify(file.path)[0].text)
    assert not list(tmp_path.glob("*.lock"))


@pytest.mark.parametrize(
    "content", [b"", b"hello, this is no season file", b"\0" * 9000, b"SQLite format 3\0" + b"x" * 99]
)
def test_another_file_is_refused(content: bytes, tmp_path: Path) -> None:
    path = tmp_path / "other.season"
    path.write_bytes(content)
    with pytest.raises(FileTrouble, match=r"is not a season file|is damaged"):
        SeasonFile.open(path)
    assert path.read_bytes() == content
    assert [file.name for file in tmp_path.iterdir()] == ["other.season"]


def test_another_programs_database_is_refused_and_left_as_it_was(tmp_path: Path) -> None:
    path = tmp_path / "other.season"
    other = sqlite3.connect(path)
    other.execute("PRAGMA journal_mode=WAL")
    other.execute("CREATE TABLE farm (name TEXT)")
    other.commit()
    other.close()
    before = path.read_bytes()
    with pytest.raises(FileTrouble, match="is not a season file"):
        SeasonFile.open(path)
    assert path.read_bytes() == before


def test_steps_are_numbered_without_a_gap_and_ship_with_the_program() -> None:
    files = sorted(Path(steps.__file__).parent.glob("*.sql"))
    assert [int(path.name[:4]) for path in files] == list(range(1, steps.version() + 1))
    assert [path.read_text("utf-8") for path in files] == list(steps.steps())
