"""The yard sheet typed in on the numeric pad: the evening of 14 January, after the power cut at the last row."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication

from farmdesk.desk.go import Target
from farmdesk.picture.office_papers import Skipped
from farmdesk.picture.yard_papers import Reading
from farmdesk.work.farm import OpenFarm
from farmdesk.work.yard_sheet import read_instant
from tests.desk.evening import open_window, season_copy, type_keys, until
from tests.desk.samples import EVENING, TIME, jan

KEY = Qt.Key


@pytest.fixture
def path(tmp_path):
    return season_copy(tmp_path)


@pytest.fixture
def window(qtbot, at, path):
    at(EVENING)
    window = open_window(qtbot, path)
    window.open(Target("form", "yard sheet"))
    QApplication.processEvents()
    yield window
    window.close()


@pytest.fixture
def page(window):
    return window.page


def readings(window, lot, bed):
    return [
        e for e in window.lanes._farm.lot(lot).of(Reading) if e.body.place == bed and e.happened_utc_s == jan(14, 16)
    ]


def test_the_hour_of_the_readings_is_the_last_that_was_passed():
    assert read_instant(TIME, jan(14, 18, 37)) == jan(14, 16)
    assert read_instant(TIME, jan(15, 5, 45)) == jan(14, 16)
    assert read_instant(TIME, jan(14, 16)) == jan(14, 16)


def test_it_opens_at_the_first_row_that_is_not_written(page):
    row = page.current
    assert (row.bed, row.lot) == ("19", "25-15N")
    assert "bed 19, 25-15N, row 13 of 13" in page.accessibleName()
    assert page.row.box("tray").hasFocus()
    assert page.row.box("1").placeholderText() == "not meas."
    assert page.side.accessibleName() == "12 of 13 rows, the last at 18:37:47."


def test_a_row_is_on_disk_before_the_next_one_opens(qtbot, window, page, path, at):
    at.forward(30)
    type_keys(qtbot, "2030")
    qtbot.keyClick(QApplication.focusWidget(), KEY.Key_Plus)
    (entry,) = readings(window, "25-15N", "19")
    assert entry.body.quantity == "tray_g"
    until(qtbot, lambda: page.written_n() == 13)
    assert page.current is None
    assert not page.row.isVisible()
    window.close()
    again = OpenFarm.open(path)
    assert entry.id in again.picture.book.by_id
    again.close()


def test_an_unlikely_value_is_asked_under_its_box_and_answered_on_the_pad(qtbot, window, page, at):
    at.forward(30)
    n = len(window.lanes._farm.picture.book.by_id)
    type_keys(qtbot, "9999")
    qtbot.keyClick(QApplication.focusWidget(), KEY.Key_Plus)
    assert not page.row.guard.isHidden()
    assert "heavier" in page.row.guard.accessibleName()
    assert len(window.lanes._farm.picture.book.by_id) == n
    qtbot.keyClick(page.row.guard, KEY.Key_0)
    assert page.row.box("tray").hasFocus()
    qtbot.keyClick(QApplication.focusWidget(), KEY.Key_Plus)
    qtbot.keyClick(page.row.guard, KEY.Key_1)
    assert len(readings(window, "25-15N", "19")) == 1


def test_a_row_left_out_is_written_as_not_measured(qtbot, window, page, at):
    at.forward(30)
    type_keys(qtbot, "*")
    qtbot.keyClick(QApplication.focusWidget(), KEY.Key_Plus)
    (skipped,) = [e.body for e in window.lanes._farm.lot("25-15N").of(Skipped) if e.body.day == "2025-01-14"]
    assert (skipped.place, skipped.quantity) == ("19", "moisture")
    until(qtbot, lambda: page.written_n() == 13)


def test_the_row_above_is_corrected_in_its_place(qtbot, window, page, at):
    at.forward(30)
    qtbot.keyClick(QApplication.focusWidget(), KEY.Key_Slash)
    assert page.current.bed == "16"
    assert page.correcting
    assert page.row.values()["1"] == page.current.values["1"]
    old = page.current.entries
    qtbot.keyClick(page.row.box("1"), KEY.Key_A, Qt.KeyboardModifier.ControlModifier)
    type_keys(qtbot, "19.8")
    qtbot.keyClick(QApplication.focusWidget(), KEY.Key_Plus)
    struck = window.lanes._farm.picture.book.struck
    assert set(old) <= struck
    until(qtbot, lambda: page.rows[11].values.get("1") == "19.8")
    assert page.rows[11].scope == ""


def test_walking_over_rows_writes_nothing(qtbot, window, page):
    n = len(window.lanes._farm.picture.book.by_id)
    for _ in range(14):
        qtbot.keyClick(QApplication.focusWidget(), KEY.Key_Up)
        if page.row.boxes.index(page.row._last) != 0:
            qtbot.keyClick(QApplication.focusWidget(), KEY.Key_Up)
    for _ in range(20):
        if page.current is not None:
            qtbot.keyClick(QApplication.focusWidget(), KEY.Key_Plus)
    assert page.current is None
    assert len(window.lanes._farm.picture.book.by_id) == n


def test_escape_gives_the_keys_back_and_letters_lead_away(qtbot, window, page):
    qtbot.keyClick(QApplication.focusWidget(), KEY.Key_Escape)
    assert page.hasFocus()
    type_keys(qtbot, "ya\n")
    assert window.page.windowTitle() == "Yard"


def test_a_season_that_is_held_elsewhere_cannot_be_filled(qtbot, window, page):
    window.desk.reading_only = "The office laptop has this season open."
    n = len(window.lanes._farm.picture.book.by_id)
    type_keys(qtbot, "2030")
    qtbot.keyClick(QApplication.focusWidget(), KEY.Key_Plus)
    assert page.row.guard.accessibleName().startswith("The office laptop has this season open.")
    assert len(window.lanes._farm.picture.book.by_id) == n


def test_a_click_opens_a_row(qtbot, page):
    first = page._first()
    qtbot.mouseClick(page, Qt.MouseButton.LeftButton, pos=QPoint(60, round(page._top(first + 1)) + 20))
    assert page.at == first + 1
    assert page.row.has_keys()
