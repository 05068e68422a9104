"""The page on which a farm of one's own is begun."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from farmdesk import clock
from farmdesk.clock import zones_like
from farmdesk.desk.go import Target
from farmdesk.desk.theme import look
from farmdesk.notebook.season_file import SeasonFile
from tests.desk.evening import open_window, season_copy, type_keys
from tests.desk.samples import EVENING

KEY = Qt.Key


@pytest.fixture
def window(qtbot, at, tmp_path):
    at(EVENING)
    window = open_window(qtbot, season_copy(tmp_path))
    window.open(Target("page", "farm"))
    type_keys(qtbot, "n\n")
    QApplication.processEvents()
    yield window
    window.close()
    look().wear("light", 1.0)


def test_five_boxes_are_enough(qtbot, window, own_data):
    page = window.page
    assert page.row.box("name").hasFocus()
    assert len(page.row.values()["season"]) == 2
    assert zones_like(page.row.values()["zone"])
    with qtbot.waitSignal(window.desk.open_season) as opened:
        type_keys(qtbot, "La ladera\n26\ntegu\n1,2\n12\n")
    path = opened.args[0]
    assert path == own_data / "la-ladera-26.season"
    with SeasonFile.open(path, read_only=True) as file:
        farm, places = file.things.farm, file.things.places
        assert (farm.name, farm.season, farm.zone, farm.practice) == ("La ladera", "26", "America/Tegucigalpa", False)
        assert [(place.code, place.width_m, place.depth_m) for place in places.values()] == [("1", 1.2, 12.0)]
        assert [method.letter for method in file.things.methods.values()] == ["W", "X", "N", "A"]
        assert not file.entries()
    assert window.page.place == "today"


def test_a_name_alone_is_enough(qtbot, window, own_data):
    with qtbot.waitSignal(window.desk.open_season) as opened:
        type_keys(qtbot, "Arriba\n26\nguat\n")
        type_keys(qtbot, "\n\n")
    with SeasonFile.open(opened.args[0], read_only=True) as file:
        assert not file.things.places
        assert file.things.farm.zone == "America/Guatemala"


@pytest.mark.parametrize(
    ("typed", "sentence"),
    [
        ("x\n261\ntegu\n\n\n", "two figures"),
        ("x\n26\nnowhere\n\n\n", "no time zone like"),
        ("x\n26\ntegu\n1.2\n\n", "width and its length"),
        ("x\n26\ntegu\n4 kg\n40 kg\n", "another unit"),
        ("x\n26\ntegu\nwide\n12\n", "not a number"),
    ],
)
def test_what_cannot_be_is_one_sentence_and_no_file(qtbot, window, own_data, typed, sentence):
    type_keys(qtbot, typed)
    page = window.page
    assert sentence in page.row.guard.sentence
    assert page.row.guard.isVisible()
    assert not list(own_data.glob("*.season"))
    assert abs(clock.now() - EVENING) < 60
    type_keys(qtbot, "0")
    assert page.row.has_keys()


def test_escape_leads_back_to_the_farm(qtbot, window):
    qtbot.keyClick(QApplication.focusWidget(), KEY.Key_Escape)
    assert window.page.windowTitle() == "Farm"


@pytest.mark.parametrize(
    ("part", "zone"),
    [
        ("tegu", "America/Tegucigalpa"),
        ("new york", "America/New_York"),
        ("America/Lima", "America/Lima"),
        ("utc", "UTC"),
    ],
)
def test_a_zone_is_found_by_a_part_of_its_name(part, zone):
    assert zones_like(part)[0] == zone
    assert zones_like("") == []
    assert zones_like("nowhere at all") == []
