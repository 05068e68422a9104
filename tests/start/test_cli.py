"""The command line: what it answers, and that bad input is one sentence, exit 2, and nothing written."""

from __future__ import annotations

import json
import sqlite3
from contextlib import closing
from datetime import date

import pytest

from farmdesk import cli
from farmdesk.work.farm import OpenFarm
from tests.desk.evening import season_copy
from tests.desk.samples import TIME


@pytest.fixture
def season(tmp_path):
    return season_copy(tmp_path)


@pytest.fixture
def run(capsys):
    def run(*words):
        code = cli.main([str(word) for word in words])
        told = capsys.readouterr()
        return code, told.out, told.err

    return run


def bad(answer):
    """One plain sentence on the error stream, exit 2."""
    code, out, err = answer
    assert code == 2
    assert out == ""
    assert err.endswith((".\n", ").\n", "?\n"))
    assert err.count("\n") == 1
    assert "Traceback" not in err
    return err


def test_help_can_be_read_by_a_farmer(run):
    code, out, _ = run("--help")
    assert code == 0
    for word in ("practice", "sheet", "ahead", "read", "verify", "copy", "new", "export", "pictures"):
        assert word in out
    assert "open the practice season" in out


@pytest.mark.parametrize("command", cli.COMMANDS)
def test_every_command_has_help(run, command):
    code, out, _ = run(command, "--help")
    assert code == 0
    assert command in out


def test_ahead_is_a_range_with_what_it_rests_on(run, season):
    code, out, _ = run("ahead", "25-13W", season, "--at", "2025-01-14T18:41")
    assert code == 0
    first, rests_on = out.splitlines()[:2]
    assert first.startswith("25-13W: ")
    assert "likely" in first
    assert rests_on.endswith(".")


def test_ahead_as_json(run, season):
    code, out, _ = run("ahead", "25-13W", season, "--at", "2025-01-14T18:41", "--json")
    told = json.loads(out)
    assert code == 0
    assert told["at_utc_s"] == TIME.instant(date(2025, 1, 14), 18, 41)
    assert told["at_utc_s"] < told["earliest_utc_s"] <= told["likely_utc_s"] <= told["latest_utc_s"]
    assert told["rests_on"]


def test_a_sheet_is_written_in_both_languages(run, season, tmp_path):
    for language in ("en", "es"):
        target = tmp_path / f"{language}.pdf"
        assert run("sheet", "25-13W", season, "-o", target, "--lang", language, "--paper", "letter") == (0, "", "")
        assert target.read_bytes().startswith(b"%PDF")


def test_a_copy_is_the_same(run, season, tmp_path):
    (tmp_path / "stick").mkdir()
    code, out, _ = run("copy", season, tmp_path / "stick")
    assert code == 0
    assert (tmp_path / "stick" / season.name).is_file()
    assert "it is the same" in out
    bad(run("copy", season, season))


def test_a_farm_of_ones_own_is_begun_and_never_written_over(run, tmp_path):
    file = tmp_path / "own.season"
    own = ("new", file, "--farm", "La ladera", "--season", "26", "--zone", "America/Bogota", "--beds", "3")
    assert run(*own)[0] == 0
    with closing(OpenFarm.open(file, read_only=True)) as farm:
        assert farm.things.farm.name == "La ladera"
        assert list(farm.things.places) == ["1", "2", "3"]
        assert farm.things.method("W") is not None
    bad(run(*own))
    other = tmp_path / "other.season"
    bad(run("new", other, "--farm", "", "--season", "26", "--zone", "America/Bogota"))
    bad(run("new", other, "--farm", "x", "--season", "26", "--zone", "No/Where"))
    bad(run("new", other, "--farm", "x", "--season", "26", "--zone", "UTC", "--bed", "wide"))
    assert not other.exists()


def test_everything_leaves_as_tables(run, season, tmp_path):
    code, out, _ = run("export", season, "--to", tmp_path / "all")
    assert code == 0
    assert (tmp_path / "all" / "weigh_in.csv").is_file()
    assert "season.json" in out
    bad(run("export", season, "--to", tmp_path / "all"))


def test_verify_says_all_is_well_and_what_is_wrong_first(run, season):
    code, out, _ = run("verify", season)
    assert (code, out) == (0, f"{season.name} is whole, and as it was written.\n")
    raw = sqlite3.connect(season)
    raw.execute("DROP TRIGGER IF EXISTS reading_no_update")
    for (name,) in raw.execute("SELECT name FROM sqlite_master WHERE type = 'trigger'").fetchall():
        raw.execute(f'DROP TRIGGER "{name}"')
    raw.execute("UPDATE entry SET who = 'somebody' WHERE seq = 12")
    raw.commit()
    raw.close()
    code, out, _ = run("verify", season)
    assert code == 1
    assert out.count("\n") == 1
    assert "12" in out


def test_a_logger_file_is_read_once(run, season, tmp_path):
    file = tmp_path / "tank.csv"
    rows = [f"2025-01-09 {18 + i // 60:02d}:{i % 60:02d},{17 + i / 200:.2f}" for i in range(0, 300, 10)]
    file.write_text("time,mass C\n" + "\n".join(rows) + "\n", encoding="utf-8")
    words = ("read", file, season, "--lot", "25-14X", "--place", "B1", "--logger", "L1", "--sure")
    code, out, err = run(*words)
    assert (code, err) == (0, "")
    assert out == "30 of 30 rows were new.\n"
    assert run(*words)[1] == "0 of 30 rows were new.\n"


@pytest.mark.parametrize(
    "words",
    [
        ("ahead", "25-13W", "--at", "soon"),
        ("ahead", "25-99W", "--at", "2025-01-14T18:41"),
        ("ahead", "25-13W"),
        ("ahead", "25-13W", "--at", "2025-01-14T18:41", "--colour"),
        ("sheet", "25-99W", "-o", "{out}"),
        ("sheet", "25-13W", "-o", "{out}", "--paper", "a5"),
        ("sheet", "25-13W", "-o", "{tmp}/no/such/folder.pdf"),
        ("sheet",),
        ("read", "{tmp}/none.csv", "--lot", "25-13W", "--place", "T1", "--logger", "L1"),
        ("read", "{text}", "--lot", "25-13W", "--place", "T1", "--logger", "L1"),
        ("verify", "{tmp}/none.season"),
        ("copy", "{tmp}/none.season", "{out}"),
        ("copy", "{text}", "{out}"),
        ("{tmp}/none.season",),
        ("pictures",),
        ("pictures", "--to", "{text}"),
    ],
    ids=" ".join,
)
def test_bad_input_is_one_sentence_and_writes_nothing(run, season, tmp_path, words):
    text = tmp_path / "notes.txt"
    text.write_text("bring rope\n", encoding="utf-8")
    out = tmp_path / "out.pdf"
    before = season.read_bytes()
    said = [word.format(tmp=tmp_path, out=out, text=text) for word in words]
    if words[0] in ("ahead", "sheet", "read") and len(words) > 1:
        said.insert(2, str(season))
    bad(run(*said))
    assert not out.exists()
    assert season.read_bytes() == before
    assert text.read_text(encoding="utf-8") == "bring rope\n"


def test_where_no_season_is_named_the_practice_season_is_meant(run, own_data):
    assert run("ahead", "25-13W", "--at", "2025-01-14T18:41")[0] == 0
    made = sorted(path.name for path in own_data.glob("practice*.season"))
    assert len(made) == 2
    assert run("verify")[0] == 0
