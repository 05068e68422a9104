"""A reading in one key beyond its number: written, asked about once, refused in place, and never lost."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from farmdesk.clock import HOUR_S
from farmdesk.desk.go import Target
from farmdesk.picture.entries import Reading
from tests.desk import samples
from tests.desk.evening import open_window, season_copy, type_keys, until


@pytest.fixture
def window(qtbot, at, tmp_path):
    at(samples.EVENING + 60)
    made = open_window(qtbot, season_copy(tmp_path))
    made.open(Target("lot", "25-13W"))
    return made


def readings(window, quantity: str, lot: str = "25-13W"):
    return [e for e in window.lanes._farm.lot(lot).of(Reading) if e.body.quantity == quantity]


def test_a_number_and_enter_write_a_reading_and_everything_follows(window, qtbot):
    before = len(readings(window, "meter_wb_frac"))
    type_keys(qtbot, "19.4\n")
    (new,) = readings(window, "meter_wb_frac")[before:]
    assert new.body.value == pytest.approx(0.194)
    assert new.body.values[0].typed == "19.4"
    assert new.instrument == "meter-1"
    page = window.page
    until(qtbot, lambda: page.lot.story.card.moisture_wb_frac == pytest.approx(0.194))
    assert page.lot.drying.figure.curves[-1].y.size
    assert "19.4" in page.lot.drying.accessibleName()
    row = page.model.rows[page.model.row_of("25-13W")]
    assert "19.4" in row.text
    assert page.lot.form.written is not None
    assert all(box.isHidden() for box in page.lot.form.boxes)


def test_undo_takes_it_back_and_the_page_follows(window, qtbot):
    type_keys(qtbot, "19.4\n")
    page = window.page
    until(qtbot, lambda: page.lot.story.card.moisture_wb_frac == pytest.approx(0.194))
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    until(qtbot, lambda: page.lot.story.card.moisture_wb_frac == pytest.approx(0.197, abs=0.001))


def test_a_stroke_strikes_the_row_just_written_and_lays_it_out_again(window, qtbot):
    before = len(readings(window, "meter_wb_frac"))
    type_keys(qtbot, "19.4+19.2\n")
    type_keys(qtbot, "/")
    form = window.page.lot.form
    assert len(readings(window, "meter_wb_frac")) == before  # struck, and said so in the notebook
    assert (form.value("1"), form.value("2")) == ("19.4", "19.2")
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
    type_keys(qtbot, "19.1\n")
    (new,) = readings(window, "meter_wb_frac")[before:]
    assert [line.typed for line in new.body.values] == ["19.1", "19.2"]


def test_an_unlikely_value_is_asked_once_and_the_answer_writes_it(window, qtbot):
    before = len(readings(window, "meter_wb_frac"))
    type_keys(qtbot, "19.4+23.1\n")
    form = window.page.lot.form
    assert not form.guard.isHidden()
    assert "points above the lowest reading" in form.guard.accessibleName()
    assert form.guard.hasFocus()
    assert len(readings(window, "meter_wb_frac")) == before
    assert window.page.lot.drying.plot.asked[1] == 23.1  # it stands on the curve, crossed, until it is answered
    type_keys(qtbot, "9")  # no such answer: nothing happens
    assert not form.guard.isHidden()
    type_keys(qtbot, "1")
    assert form.guard.isHidden()
    (new,) = readings(window, "meter_wb_frac")[before:]
    assert [line.value for line in new.body.values] == [pytest.approx(0.194), pytest.approx(0.231)]
    assert window.page.lot.drying.plot.asked is None


def test_nought_goes_back_to_the_box_with_what_was_typed(window, qtbot):
    before = len(readings(window, "meter_wb_frac"))
    type_keys(qtbot, "19.4+32.1\n0")
    form = window.page.lot.form
    assert form.value("2") == "32.1"
    assert QApplication.focusWidget() is form._box("2")
    type_keys(qtbot, "19.6\n")  # the box is selected whole, so a new number replaces the old one
    assert len(readings(window, "meter_wb_frac")) == before + 1


def test_what_cannot_be_is_refused_in_place_with_the_numbers(window, qtbot):
    before = len(readings(window, "meter_wb_frac"))
    type_keys(qtbot, "194\n")
    form = window.page.lot.form
    assert form.guard.sentence == "194.0\u202f% cannot be: a percentage lies between 0 and 100."
    assert form.guard.boxes == []
    type_keys(qtbot, "\n")
    assert form.value("1") == "194"
    assert len(readings(window, "meter_wb_frac")) == before
    assert window.notice.sentence == ""


def test_the_row_is_filled_with_the_number_pad_in_the_order_of_the_paper(window, qtbot):
    form = window.page.lot.form
    before = len(readings(window, "tray_g"))
    type_keys(qtbot, "19.4+19.5+*1540+24\n")
    assert [box.name for box in form.boxes] == ["bed", "1", "2", "3", "tray", "bean", "note"]
    (meter,) = [e for e in readings(window, "meter_wb_frac") if e.body.bean_c is not None][-1:]
    assert meter.body.bean_c == 24
    assert len(meter.body.values) == 2
    (tray,) = readings(window, "tray_g")[before:]
    assert tray.body.tray == "5"
    assert tray.body.value == pytest.approx(1540 - window.lanes._farm.things.trays["5"].tare_g)


def test_a_bed_where_the_lot_does_not_lie_is_refused(window, qtbot):
    type_keys(qtbot, "19.4--")  # one box back, and the hand is at the bed
    assert QApplication.focusWidget() is window.page.lot.form._box("bed")
    type_keys(qtbot, "7\n")
    assert "it lies at 12 13 14 16" in window.page.lot.form.guard.sentence
    assert window.page.lot.form.value("1") == "19.4"


@pytest.mark.parametrize(("typed", "code"), [("25-12\n", "25-12A"), ("12a\n", "25-12A")])
def test_a_code_typed_on_the_page_still_leads_to_its_lot(window, qtbot, typed, code):
    type_keys(qtbot, typed)
    assert window.page.lot.story.card.code == code
    assert window.page.lot.form.isHidden()


def test_from_any_page_a_code_and_a_number_open_the_filled_row(window, qtbot):
    before = len(readings(window, "meter_wb_frac"))
    window.open(Target("page", "today"))
    type_keys(qtbot, "25-13 19.7\n")
    page = window.page
    assert page.place == "lots"
    assert page.lot.form.value("1") == "19.7"
    assert len(readings(window, "meter_wb_frac")) == before
    type_keys(qtbot, "\n")
    assert len(readings(window, "meter_wb_frac")) == before + 1


def test_escape_leaves_and_writes_nothing(window, qtbot):
    before = len(readings(window, "meter_wb_frac"))
    type_keys(qtbot, "19.4")
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Escape)
    assert window.page.lot.form.isHidden()
    assert QApplication.focusWidget() is window.page.list
    assert len(readings(window, "meter_wb_frac")) == before


def test_leaving_the_page_saves_nothing(window, qtbot):
    before = len(readings(window, "meter_wb_frac"))
    type_keys(qtbot, "19.4")
    window.open(Target("page", "today"))
    window.open(Target("lot", "25-13W"))
    assert len(readings(window, "meter_wb_frac")) == before
    assert window.page.lot.form.value("1") == "19.4"  # and what was typed is still there


def test_the_past_cannot_be_written_in(window, qtbot):
    window.desk.move_to(samples.jan(12, 18))
    window.page.start_reading("")
    assert window.page.lot.form.isHidden()
    assert "past" in window.notice.sentence


def test_in_a_vessel_a_number_is_a_ph(qtbot, at, tmp_path):
    now = samples.jan(6, 23) + 3000
    at(now + 60)
    window = open_window(qtbot, season_copy(tmp_path, now))
    window.open(Target("lot", "25-13W"))
    before = len(readings(window, "ph"))
    type_keys(qtbot, "4.9+18.4\n")
    (ph,) = readings(window, "ph")[before:]
    assert (ph.body.place, ph.body.value) == ("T1", 4.9)
    assert readings(window, "mass_c")[-1].body.value == 18.4
    page = window.page
    until(qtbot, lambda: "4.90" in page.lot.ferment.accessibleName())
    at.forward(HOUR_S)
    window.desk.advance()
    type_keys(qtbot, "5.6\n")  # it rose by 0.7: asked
    assert "Is the probe clean?" in page.lot.form.guard.accessibleName()
    assert page.lot.ferment.plot.asked[1] == 5.6


def test_a_lot_in_the_store_has_nothing_to_read(window, qtbot):
    window.open(Target("lot", "25-11W"))
    story = window.page.lot.story
    assert story.sensible == "none"
    window.page.start_reading("")
    assert "nothing to read" in window.notice.sentence
    assert window.page.lot.form.isHidden()
