"""Care of the data in the real window: copies, a stick, a restore tried, everything out, other seasons."""

from __future__ import annotations

import csv
import json
import sqlite3
from contextlib import closing
from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from farmdesk.desk.go import Target
from farmdesk.desk.pages import care_acts
from farmdesk.desk.theme import look
from farmdesk.errors import Asked, FileTrouble
from farmdesk.notebook.season_file import SeasonFile
from farmdesk.work import carrying, gaps, keeping, setup
from farmdesk.work.changes import Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.seasons import others
from tests.desk.evening import open_window, season_copy, type_keys
from tests.desk.samples import EVENING, TIME, jan

KEY = Qt.Key


@pytest.fixture
def path(tmp_path, at):
    at(EVENING)
    path = season_copy(tmp_path)
    for n in range(2):  # two evenings, so two copies
        at(EVENING + n)
        farm = OpenFarm.open(path)
        keeping.remark(farm, "an evening", EVENING)
        farm.close()
    return path


@pytest.fixture
def window(qtbot, at, path):
    window = open_window(qtbot, path)
    window.open(Target("page", "care"))
    QApplication.processEvents()
    yield window
    window.close()
    look().wear("light", 1.0)


def test_the_copies_are_listed_with_their_times_and_sizes(window):
    copies = window.page.copies.table
    assert copies.rowCount() == 2
    made, size, kept = (copies.index(0, column).data() for column in range(3))
    assert made == "Tue 14 Jan 2025 18:41"
    assert float(size.split("\u202f")[0]) > 0.5
    assert kept == "one of the last 14"
    assert "no copy on a stick yet" in window.page.accessibleName()


def test_the_same_disk_is_asked_about_and_does_not_count_as_a_stick(qtbot, window, tmp_path):
    target = tmp_path / "copy.season"
    type_keys(qtbot, "s\n")
    assert window.page.line.isVisible()
    window.page.line.field.setText(str(target))
    type_keys(qtbot, "\n")
    assert "when it goes, both go" in window.page.guard.sentence
    assert not target.exists()
    type_keys(qtbot, "0")  # another one: the line is asked again
    assert window.page.line.field.text() == str(target)
    type_keys(qtbot, "\n1")
    assert target.exists()
    farm = window.lanes._farm
    rows = len(farm.picture.book.by_id)
    assert f"holds {rows:,} rows and {len(farm.picture.lots)} lots" in window.page.said[0]
    assert "no copy on a stick yet" in window.page.title.sentence
    with SeasonFile.open(target, read_only=True) as copy:
        assert len(copy.entries()) == rows


def test_a_copy_on_another_disk_is_remembered(qtbot, window, tmp_path, monkeypatch):
    monkeypatch.setattr(carrying, "same_disk", lambda a, b: False)
    monkeypatch.setattr(care_acts, "sticks", lambda season: [tmp_path / "stick.season"])
    type_keys(qtbot, "s\n\n")
    assert (tmp_path / "stick.season").exists()
    assert "14 Jan 18:41" in window.page.title.sentence
    assert carrying.stick_copy_utc_s(window.lanes._farm.things, TIME) == EVENING + 1


def test_a_folder_that_is_not_there_is_said(qtbot, window, tmp_path):
    window.page.copy_to(str(tmp_path / "nowhere" / "stick.season"))
    assert "There is no folder" in window.page.said[0]
    with pytest.raises(FileTrouble):
        carrying.same_disk(tmp_path, tmp_path / "nowhere" / "x")


def test_saturdays_ask_for_a_stick_until_one_was_made(path, monkeypatch):
    farm = OpenFarm.open(path)
    try:

        def asked(day: int) -> list[str]:
            picture = farm.picture.at(jan(day, 12))
            return [str(gap.text) for gap in gaps.gaps(picture) if gap.quantity == carrying.STICK]

        assert date(2025, 1, 11).weekday() == gaps.SATURDAY
        assert "no copy on a stick yet" in asked(11)[0]
        monkeypatch.setattr(carrying, "same_disk", lambda a, b: False)
        carrying.copy_to_stick(farm, path.with_name("stick.season"))  # on Tuesday the 14th
        assert asked(17) == asked(18) == asked(24) == []
        assert "last copy on a stick Tue 14 Jan" in asked(25)[0]
        assert len(asked(27)) == 1
    finally:
        farm.close()


def test_a_restore_is_tried_and_its_counts_are_said(qtbot, window):
    type_keys(qtbot, "r")
    rows = len(window.lanes._farm.picture.book.by_id)
    assert f"holds all of it: {rows} rows" in window.page.said[0]
    keeping.remark(window.lanes._farm, "later", EVENING)
    window.page.copies.selectRow(1)
    type_keys(qtbot, "r")
    assert f"the season in use holds {rows + 1} rows" in window.page.said[0]


def test_everything_goes_out_as_tables_json_and_sheets(qtbot, window, tmp_path):
    folder = tmp_path / "out"
    type_keys(qtbot, "x")
    window.page.line.field.setText(str(folder))
    type_keys(qtbot, "\n")
    with (folder / "weigh_in.csv").open(encoding="utf-8-sig", newline="") as file:
        assert len(list(csv.DictReader(file))) > 300
    assert json.loads((folder / "season.json").read_text(encoding="utf-8"))["entries"]
    born = [lot for lot in window.lanes._farm.picture.lots.values() if lot.birth]
    assert len(list((folder / "sheets").glob("*.pdf"))) == len(born)
    assert f"{len(born)} lot sheets" in window.page.said[0]
    type_keys(qtbot, "x")
    window.page.line.field.setText(str(folder))
    type_keys(qtbot, "\n")
    assert "is not empty" in window.page.said[0]


def test_escape_stops_and_what_was_written_stays(qtbot, window, tmp_path, monkeypatch):
    said = []

    def stop_after_some(done_n: int) -> None:
        said.append(done_n)
        if done_n > 100:
            qtbot.keyClick(window.page, KEY.Key_Escape)

    make = care_acts.Progress

    def made(parent):
        progress = make(parent)
        progress.came.connect(stop_after_some)
        return progress

    monkeypatch.setattr(care_acts, "Progress", made)
    window.page.write_out(str(tmp_path / "out"))
    assert 100 < said[-1] < len(window.lanes._farm.picture.book.by_id)
    assert window.page.said[0].startswith("Stopped.")
    assert list((tmp_path / "out").glob("*.csv"))
    assert not (tmp_path / "out" / "season.json").exists()
    assert window.page.place == "farm"


def test_the_first_fault_is_named(qtbot, window, path):
    type_keys(qtbot, "v")
    assert window.page.said[0] == "The file is whole, and as it was written."
    raw = sqlite3.connect(path)
    raw.execute("DROP TRIGGER IF EXISTS weigh_in_no_update")
    names = [name for (name,) in raw.execute("SELECT name FROM sqlite_master WHERE type='trigger'")]
    for name in names:
        raw.execute(f"DROP TRIGGER {name}")
    raw.execute("UPDATE weigh_in SET gross_g = gross_g + 1000 WHERE rowid = (SELECT min(rowid) FROM weigh_in)")
    raw.commit()
    raw.close()
    type_keys(qtbot, "v")
    assert window.page.said[0].startswith("The first fault: ")


def test_other_seasons_are_read_and_the_next_one_is_begun(qtbot, window, path, own_data):
    with qtbot.waitSignal(window.desk.open_season) as opened:
        type_keys(qtbot, "k")
        assert window.page.line.field.text() == "26"
        type_keys(qtbot, "\n")
    new = opened.args[0]
    assert new.parent == own_data
    with closing(OpenFarm.open(new)) as made:
        assert made.things.farm.season == "26"
        assert made.things.farm.first_day == "2025-11-10"
        assert made.things.places == window.lanes._farm.things.places
        assert any(lot.heaps for lot in made.picture.lots.values())
    assert [one.season for one in others(path, window.lanes._farm.file.file_id)] == ["26"]
    window.open(Target("page", "care"))
    window.page.refresh()
    QApplication.processEvents()
    with qtbot.waitSignal(window.desk.read_season) as read:
        type_keys(qtbot, "p\n\n")
    assert read.args[0] == new.resolve()


def test_copies_of_the_season_are_no_other_season(path, tmp_path):
    farm = OpenFarm.open(path)
    try:
        carrying.copy_to_stick(farm, tmp_path / "again.season", hand=Hand(answers={"disk": "keep"}))
        assert others(path, farm.file.file_id) == []
        with pytest.raises(Asked, match="both go"):
            carrying.copy_to_stick(farm, tmp_path / "again.season")
    finally:
        farm.close()


def test_a_file_name_that_is_taken_is_never_written_over(tmp_path):
    first = setup.begin_season(tmp_path, "La Peña, arriba", "26", "tegu", "1.2", "12")
    second = setup.begin_season(tmp_path, "La Peña, arriba", "26", "tegu", "", "")
    assert [path.name for path in (first, second)] == ["la-pena-arriba-26.season", "la-pena-arriba-26-2.season"]
