"""`verify` names the first row that is not as it was written."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from farmdesk.notebook.rows import Head, hash_of
from farmdesk.notebook.season_file import SeasonFile
from farmdesk.notebook.verify import verify
from farmdesk.picture.entries import Flow, Posting, Remark
from tests.conftest import Hands
from tests.notebook.made import by_hand, day, entry, season

CHANGES = {
    "UPDATE entry SET who = 'eva' WHERE seq = 7": 7,
    "UPDATE entry SET happened_utc_s = happened_utc_s + 1 WHERE seq = 3": 3,
    "UPDATE entry SET written_utc_s = written_utc_s + 1 WHERE seq = 1": 1,
    "UPDATE entry SET computer = 'another' WHERE seq = 20": 20,
    "UPDATE entry SET hash = lower(hex(randomblob(32))) WHERE seq = 9": 9,
    "UPDATE entry SET id = 'X' WHERE seq = 4": 4,
    "UPDATE weigh_in SET gross_g = gross_g + 1000 WHERE entry = 12": 12,
    "UPDATE posting SET grams = grams * 2 WHERE entry = 13": 13,
    "UPDATE posting SET account = '2' WHERE entry = 18 AND line = 1": 18,
    "DELETE FROM posting WHERE entry = 13": 13,
    "INSERT INTO posting VALUES (13, 3, '25-1W', 'T1', 0, 0, '')": 13,
    "UPDATE line SET value = 4.6 WHERE entry = 14 AND line = 0": 14,
    "UPDATE line SET typed = '' WHERE entry = 14 AND line = 0": 14,
    "DELETE FROM remark WHERE entry = 15": 15,
    "UPDATE entry SET kind = 'sale' WHERE seq = 15": 15,
    "UPDATE entry SET kind = 'magic' WHERE seq = 15": 15,
    "UPDATE weigh_in SET typed = '41,5' WHERE entry IN (17, 2, 12)": 2,
}


@pytest.mark.parametrize(("sql", "row"), CHANGES.items())
def test_the_first_row_changed_by_hand_is_named(sql: str, row: int, tmp_path: Path, at: Hands) -> None:
    at("2025-01-14T18:41-05:00")
    with season(tmp_path, 20) as file:
        ids = [one.id for one in file.entries()]
    assert verify(file.path) == []
    with by_hand(file.path) as raw:
        assert raw.execute(sql).rowcount > 0
    first = verify(file.path)[0]
    assert str(first.text) == f"Row {row}, written 14 Jan 2025 18:41, was changed by hand."
    assert first.where == ("X" if "'X'" in sql else ids[row - 1])


def test_a_row_changed_with_its_hash_breaks_the_next_link(tmp_path: Path) -> None:
    with season(tmp_path, 12) as file:
        written = file.entries()
    with by_hand(file.path) as raw:
        head = Head._make(raw.execute("SELECT * FROM entry WHERE seq = 5").fetchone())
        forged = Remark("25-0W", "T1", "note", "smells of nothing")
        raw.execute("UPDATE remark SET text = ? WHERE entry = 5", [forged.text])
        raw.execute("UPDATE entry SET hash = ? WHERE seq = 5", [hash_of(head, forged)])
    (problem,) = verify(file.path)
    assert problem.where == written[4].id
    assert str(problem.text).startswith("Row 5, written")


@pytest.mark.parametrize(
    ("gone", "sentence"),
    [
        ("seq IN (5, 6)", "2 rows before the one written"),
        ("seq > 17", "The last 3 rows are missing"),
        ("seq > 0", "The last 20 rows"),
    ],
)
def test_rows_taken_out_by_hand_are_missed(gone: str, sentence: str, tmp_path: Path) -> None:
    with season(tmp_path, 20) as file:
        pass
    with by_hand(file.path) as raw:
        seqs = [row[0] for row in raw.execute(f"SELECT seq FROM entry WHERE {gone}")]
        for table in ("birth", "weigh_in", "flow", "reading", "remark", "posting", "line"):
            raw.executemany(f"DELETE FROM {table} WHERE entry = ?", [(seq,) for seq in seqs])
        raw.execute(f"DELETE FROM entry WHERE {gone}")
    (problem,) = verify(file.path)
    assert str(problem.text).startswith(sentence)


def test_rows_that_belong_to_no_entry(tmp_path: Path) -> None:
    with season(tmp_path, 4) as file:
        pass
    with by_hand(file.path) as raw:
        raw.execute("INSERT INTO line VALUES (99, 'values', 0, 'a', 1.0, '')")
    assert [str(problem.text) for problem in verify(file.path)] == ["Rows of “line” belong to no entry."]


def test_sums_that_are_not_zero_are_named_too(tmp_path: Path) -> None:
    with season(tmp_path, 3) as file:
        file.append([entry(Flow("25-0W", "move", (Posting("25-0W", "T1", -5), Posting("25-0W", "1", 5))))])
        written = file.entries()
    with by_hand(file.path) as raw:
        raw.execute("UPDATE posting SET grams = 4005 WHERE entry = 4 AND line = 1")
    changed, unbalanced = verify(file.path)
    assert changed.where == unbalanced.where == written[3].id
    assert str(unbalanced.text) == "The weights of this row do not sum to zero: 4.000\u202fkg over."


def test_rules_taken_away_are_named(tmp_path: Path) -> None:
    with season(tmp_path, 3) as file:
        pass
    with by_hand(file.path, rules=True) as raw:
        raw.execute("DROP TRIGGER entry_no_update")
        raw.execute("UPDATE entry SET who = 'eva' WHERE seq = 2")
        raw.execute("CREATE TABLE mine (a)")
    texts = [str(problem.text) for problem in verify(file.path)]
    assert "“mine”" in texts[0]
    assert "“entry_no_update”" in texts[1]
    with by_hand(file.path, rules=True) as raw:
        raw.execute("DROP TABLE mine")
    texts = [str(problem.text) for problem in verify(file.path)]
    assert texts[0].startswith("Row 2, written")
    assert "“entry_no_update”" in texts[1]


def test_the_live_file_is_looked_at_without_touching_it(tmp_path: Path) -> None:
    with season(tmp_path, 10) as file:
        before = file.path.stat()
        assert verify(file.path) == []
        after = file.path.stat()
        assert (before.st_mtime_ns, before.st_ino, before.st_size) == (after.st_mtime_ns, after.st_ino, after.st_size)
        file.append([day(10)])
    assert verify(file.path) == []


def test_what_is_no_season_file_is_one_problem(tmp_path: Path) -> None:
    (tmp_path / "a.json").write_text(json.dumps({"a": 1}))
    (tmp_path / "empty").touch()
    for name in ("a.json", "empty", "not there"):
        (problem,) = verify(tmp_path / name)
        assert problem.where == name
    assert sorted(path.name for path in tmp_path.iterdir()) == ["a.json", "empty"]


def test_a_broken_row_is_still_opened_by_the_farm(tmp_path: Path) -> None:
    """A word changed by hand does not keep the farm from its file; a lost row is damage."""
    with season(tmp_path, 10) as file:
        pass
    with by_hand(file.path) as raw:
        raw.execute("UPDATE remark SET text = 'x'")
    with SeasonFile.open(file.path) as again:
        assert len(again.entries()) == 10
