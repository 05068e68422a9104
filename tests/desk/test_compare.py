"""By keys: how a lot was worked out, and lots over one another."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from farmdesk.desk.go import Target
from tests.desk import samples
from tests.desk.evening import open_window, season_copy, type_keys, until


@pytest.fixture
def window(qtbot, at, tmp_path):
    at(samples.EVENING + 60)
    made = open_window(qtbot, season_copy(tmp_path))
    made.open(Target("lot", "25-13W"))
    return made


def turn_axis(qtbot, page, x_kind):
    type_keys(qtbot, "d\n")  # it may begin a day, so it waits a moment for a second letter
    until(qtbot, lambda: page.chart.figure.x_kind == x_kind)


def test_h_opens_the_pane_in_place_of_the_bands_and_esc_gives_the_keys_back(window, qtbot):
    page = window.page
    type_keys(qtbot, "h")
    pane = page.lot.worked
    assert pane.isVisible()
    assert QApplication.focusWidget() is pane
    assert not page.lot.river.isVisible()
    assert not page.lot.numbers.isVisible()
    assert pane.geometry().bottom() <= page.lot.height()
    first = pane.accessibleName()
    assert first.startswith("When it will be dry.")
    qtbot.keyClick(pane, Qt.Key.Key_Right)
    assert pane.accessibleName().startswith("The curve of the tray.")
    qtbot.keyClick(pane, Qt.Key.Key_Left)
    assert pane.accessibleName() == first
    qtbot.keyClick(pane, Qt.Key.Key_Escape)
    assert not pane.isVisible()
    assert page.lot.river.isVisible() or "river" in page.lot.dropped
    assert QApplication.focusWidget() is page.list


def test_another_lot_closes_the_pane(window, qtbot):
    type_keys(qtbot, "h")
    window.open(Target("lot", "25-12A"))
    assert not window.page.lot.worked.isVisible()
    type_keys(qtbot, "h")
    assert window.page.lot.worked.code == "25-12A"


def test_o_lays_lots_over_one_another(window, qtbot):
    type_keys(qtbot, "o")
    page = window.page
    assert page.codes == ("25-13W",)
    type_keys(qtbot, "7x\n8\n")
    assert page.codes == ("25-13W", "25-07X", "25-08W")
    assert page.box.text() == ""
    assert [str(curve.name) for curve in page.chart.figure.curves] == list(page.codes)
    assert "It may not be credited to X." in page.side.accessibleName()
    type_keys(qtbot, "-")
    assert page.codes == ("25-13W", "25-07X")
    turn_axis(qtbot, page, "time")
    turn_axis(qtbot, page, "good_h")
    turn_axis(qtbot, page, "h20")
    turn_axis(qtbot, page, "days")
    type_keys(qtbot, "t")
    assert page.chart.as_table
    type_keys(qtbot, "25-99w\n")
    assert page.codes == ("25-13W", "25-07X")
    assert page.box.text() == "25-99w"  # what cannot be read stays
    qtbot.keyClick(page.box, Qt.Key.Key_Escape)
    assert page.box.text() == ""
    assert window.notice.sentence
    qtbot.keyClick(page.box, Qt.Key.Key_Escape)
    assert window.page.lot.story.card.code == "25-13W"
    assert window.notice.sentence == ""  # what could not be found there means nothing here


def test_the_last_lot_stays_and_a_seventh_is_refused(window, qtbot):
    type_keys(qtbot, "o")
    page = window.page
    type_keys(qtbot, "-")
    assert page.codes == ("25-13W",)
    type_keys(qtbot, "1\n2\n3\n4\n5\n")
    assert len(page.codes) == 6
    type_keys(qtbot, "6\n")
    assert len(page.codes) == 6
    assert page.box.text() == "6"
