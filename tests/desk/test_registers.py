"""Registers in the real window, by keys alone: rows added, corrected, taken out, questioned and taken back."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QWidget

from farmdesk.desk.go import Target
from farmdesk.desk.theme import look
from farmdesk.desk.words import wear, words
from tests.desk.evening import open_window, season_copy, type_keys, until
from tests.desk.samples import EVENING, jan

KEY = Qt.Key


@pytest.fixture
def window(qtbot, at, tmp_path):
    at(EVENING)
    window = open_window(qtbot, season_copy(tmp_path))
    yield window
    window.close()
    wear({})
    look().wear("light", 1.0)


def go(window, register):
    window.open(Target("register", register))
    QApplication.processEvents()
    return window.page.pane


def press(qtbot, *keys) -> None:
    for key in keys:
        qtbot.keyClick(QApplication.focusWidget(), key)


def things(window):
    return window.lanes._farm.things


def shown(pane, index: int) -> list[str]:
    return [pane.written[index].cells.get(box.field.name, "") for box in pane.row.boxes]


def test_from_the_page_farm_and_back(qtbot, window):
    window.open(Target("page", "farm"))
    type_keys(qtbot, "r")
    assert window.page.name == "blocks"
    press(qtbot, KEY.Key_Right)
    assert window.page.name == "places"
    assert window.page.accessibleName().startswith("Beds and patio")
    press(qtbot, KEY.Key_Return)
    assert window.page.pane.row.has_keys()
    press(qtbot, KEY.Key_Escape)
    assert window.page.choice.has_keys()
    press(qtbot, KEY.Key_Escape)
    assert "farm" in window.page.windowTitle().lower()


def test_a_bed_is_added_with_the_keys_of_the_pad_and_taken_back(qtbot, window):
    pane = go(window, "places")
    press(qtbot, KEY.Key_Return)
    assert pane.row.values()["code"] == "23"  # the next free number, beside the last bed
    type_keys(qtbot, "\n\n\n\n\n\n4\n")  # hoops would be 2; 4 is none
    type_keys(qtbot, "\n")
    assert things(window).places["23"].cover == "open"
    assert shown(pane, len(pane.written) - 1)[:4] == ["23", "bed", "1.2", "12"]
    assert pane.row.box("code").hasFocus()
    until(qtbot, lambda: pane.row.values()["code"] == "24")
    window.page.setFocus()
    window.undo()
    until(qtbot, lambda: len(pane.written) == 28)
    assert "23" not in things(window).places


def test_a_bed_that_would_lie_over_another_is_asked_about(qtbot, window):
    pane = go(window, "places")
    press(qtbot, KEY.Key_Return)
    type_keys(qtbot, "7\n")  # a code that is there opens its row
    assert pane.correcting is not None
    assert pane.row.values()["x_m"] == "16.4"
    pane.row.focus("x_m")
    type_keys(qtbot, "18.2")
    assert pane.being_typed().x_m == 18.2
    type_keys(qtbot, "+")
    assert "7 would lie over 8" in pane.row.guard.sentence
    assert things(window).places["7"].x_m == 16.4
    type_keys(qtbot, "0")
    type_keys(qtbot, "17+")
    assert things(window).places["7"].x_m == 17.0
    assert pane.correcting is None


def test_what_cannot_be_is_said_in_its_place(qtbot, window):
    pane = go(window, "vessels")
    press(qtbot, KEY.Key_Return)
    type_keys(qtbot, "T9\n1\n1000\n1200+")
    assert "Of 1,000" in pane.row.guard.sentence
    assert pane.row.guard.isVisible()
    assert "T9" not in things(window).vessels
    type_keys(qtbot, "0")
    type_keys(qtbot, "80 %+")
    assert things(window).vessels["T9"].usable_l == 800


def test_emptying_the_first_box_takes_a_row_out(qtbot, window):
    pane = go(window, "buyers")
    press(qtbot, KEY.Key_Return)
    type_keys(qtbot, "R9\nnobody yet\n")
    assert "R9" in things(window).buyers
    type_keys(qtbot, "R9\n")
    press(qtbot, KEY.Key_Backspace, KEY.Key_Return)
    assert "Take it out" in pane.row.guard.sentence
    type_keys(qtbot, "1")
    assert "R9" not in things(window).buyers


def test_what_the_notebook_names_stays(qtbot, window):
    pane = go(window, "trays")
    press(qtbot, KEY.Key_Return)
    type_keys(qtbot, "1\n")
    press(qtbot, KEY.Key_Backspace, KEY.Key_Return)
    assert "is named in the notebook" in pane.row.guard.sentence
    assert "1" in things(window).trays


def test_escape_leaves_an_opened_row_as_it_was(qtbot, window):
    pane = go(window, "trays")
    press(qtbot, KEY.Key_Return)
    type_keys(qtbot, "1\n\n999")
    press(qtbot, KEY.Key_Escape)
    assert pane.correcting is None
    assert things(window).trays["1"].tare_g == 412
    assert window.page.choice.has_keys()


def test_walking_the_rows_with_the_arrows(qtbot, window):
    pane = go(window, "blocks")
    press(qtbot, KEY.Key_Return, KEY.Key_Up)
    assert pane.at == 5
    press(qtbot, KEY.Key_Up, KEY.Key_Return)
    assert pane.row.values()["code"] == "E"
    type_keys(qtbot, "\n\n\n0.85+")
    assert things(window).blocks["E"].area_ha == 0.85
    assert things(window).blocks["E"].name_local == "Abajo"


def test_an_instrument_says_from_when_to_when_it_is_trusted(window):
    pane = go(window, "instruments")
    overdue = [trust.code for trust in pane.story.trusts if trust.overdue_utc_s is not None]
    assert [row.key for row in pane.written if row.doubtful] == overdue
    trust = next(trust for trust in pane.story.trusts if trust.code == "scale-1")
    assert trust.bands
    assert trust.every_d == 7


def test_a_check_is_written_with_an_hour_of_its_own(qtbot, window):
    pane = go(window, "checks")
    before = len(pane.written)
    press(qtbot, KEY.Key_Return)
    type_keys(qtbot, "3\n2\n0.8\n13\n7:30\nreference jar\n")
    assert len(pane.written) == before + 1
    row = pane.story.checks[-1]
    row = next(r for r in pane.story.checks if r.at_utc_s == jan(13, 7, 30))
    assert (row.body.instrument, row.body.passed, row.body.text) == ("meter-1", False, "reference jar")
    assert row.body.off == pytest.approx(0.008)


def test_a_correction_says_which_lots_it_moves_before_and_after_it_is_written(qtbot, window):
    pane = go(window, "corrections")
    assert not pane.story.corrections
    press(qtbot, KEY.Key_Return)
    type_keys(qtbot, "meter-1\n-1\n14")
    foreseen = pane.moves
    assert {move.lot for move in foreseen} >= {"25-13W"}
    assert all(move.first_utc_s >= jan(14, 4) for move in foreseen)
    own = next(move for move in foreseen if move.lot == "25-13W")
    assert own.was_wb_frac == pytest.approx(0.1973, abs=0.001)
    assert own.now_wb_frac == pytest.approx(own.was_wb_frac - 0.01)
    type_keys(qtbot, "+")
    assert pane.kept == foreseen
    assert [row.body.from_utc_s for row in pane.story.corrections] == [jan(14, 4)]
    cards = window.lanes._farm.picture.corrections
    assert len(cards) == 1

    # changed: from the 13th; the row is struck and written again, and taken back as one
    press(qtbot, KEY.Key_Up, KEY.Key_Return)
    type_keys(qtbot, "\n\n13+")
    assert [row.body.from_utc_s for row in pane.story.corrections] == [jan(13, 4)]
    window.page.setFocus()
    window.undo()
    until(qtbot, lambda: [row.body.from_utc_s for row in pane.story.corrections] == [jan(14, 4)])


def test_a_method_is_copied_into_its_next_version(qtbot, window):
    pane = go(window, "methods")
    press(qtbot, KEY.Key_Return)
    assert pane.rows.hasFocus()
    press(qtbot, KEY.Key_Return)
    assert pane.row.values()["name"] == "washed"
    type_keys(qtbot, "\n\n\n\n10+")
    assert "latest hour" in pane.row.guard.sentence or things(window).methods.get("W2") is not None


def test_a_methods_hours_are_changed_in_a_version_of_their_own(qtbot, window):
    pane = go(window, "methods")
    press(qtbot, KEY.Key_Return, KEY.Key_Return)
    pane.row.focus("hours_high_h")
    type_keys(qtbot, "20+")
    assert things(window).methods["W2"].hours_high_h == 20.0
    assert things(window).methods["W1"].hours_high_h == 14.0
    assert pane.rows.table.rowCount() == 6  # five versions, and a new method
    press(qtbot, KEY.Key_End)
    pane.rows.selectRow(5)
    press(qtbot, KEY.Key_Return)
    assert pane.row.box("letter").hasFocus()


def test_words_are_previewed_in_the_sentences_they_change(qtbot, window):
    pane = go(window, "words")
    press(qtbot, KEY.Key_Return)
    type_keys(qtbot, "2\ncama\ntarima")
    assert pane.language(pane.row.values()["language"]) == "es"
    type_keys(qtbot, "\n")
    assert things(window).settings["word:es:cama"] == "tarima"
    wear(things(window).settings)
    assert "tarima" in words("es").lookup("gaps", "bed {place}")
    assert window.page.name == "words"
    assert pane.row.has_keys()
    press(qtbot, KEY.Key_Up, KEY.Key_Return, KEY.Key_Backspace, KEY.Key_Return)
    assert "word:es:cama" not in things(window).settings


def test_the_own_table_of_defects_is_typed(qtbot, window):
    pane = go(window, "standards")
    assert len(pane.story.shipped) >= 5
    press(qtbot, KEY.Key_Return)
    type_keys(qtbot, "House\n2024\n300\n2\nown\n4 1\n")
    assert not pane.head
    type_keys(qtbot, "1\n1\n1\n")
    type_keys(qtbot, "broken, ch\n5\n2\n")
    assert pane.story.own.items == (("full_black", 1, "primary"), ("broken", 5, "secondary"))
    press(qtbot, KEY.Key_Up, KEY.Key_Up, KEY.Key_Up)
    assert pane.head
    assert pane.row.values()["name"] == "House"
    assert pane.row.values()["also"] == "1 4"


def test_in_the_past_nothing_can_be_typed(qtbot, window):
    go(window, "trays")
    window.desk.move_to(jan(10, 12))
    QApplication.processEvents()
    window.page.choice.take_keys()
    press(qtbot, KEY.Key_Return)
    assert "past" in window.notice.sentence
    assert not window.page.pane.row.has_keys()


@pytest.mark.parametrize("scale", [1.0, 1.3])
@pytest.mark.parametrize(
    "register", ["blocks", "places", "instruments", "methods", "standards", "corrections", "figures"]
)
def test_everything_that_has_the_keys_says_its_name_and_lies_inside(qtbot, window, register, scale):
    look().wear("light", scale)
    pane = go(window, register)
    window.page.refresh()
    QApplication.processEvents()
    press(qtbot, KEY.Key_Return)
    boxes = [
        widget
        for widget in pane.findChildren(QWidget)
        if widget.isVisible() and widget.focusPolicy() & Qt.FocusPolicy.TabFocus
    ]
    assert boxes
    assert all(box.accessibleName() for box in boxes if box.parent() is pane.row)
    assert window.page.choice.geometry().right() <= window.page.width()


def test_a_figure_is_opened_by_its_number_and_set(qtbot, window):
    pane = go(window, "figures")
    press(qtbot, KEY.Key_Return)
    type_keys(qtbot, "2\n")
    until(qtbot, lambda: pane.correcting == 1)
    assert pane.row.values()["figure"].endswith("picking, for ripe cherry")
    press(qtbot, KEY.Key_Return)
    pane.row.box("value").selectAll()
    type_keys(qtbot, "7.25\n")
    until(qtbot, lambda: things(window).settings["picking_local_kg"] == "7.25")
    assert shown(pane, 1)[1] == "7.25"
    window.page.setFocus()
    window.undo()
    until(qtbot, lambda: things(window).settings["picking_local_kg"] == "6.00")


def test_a_figure_is_named_by_its_beginning(qtbot, window):
    pane = go(window, "figures")
    press(qtbot, KEY.Key_Return)
    type_keys(qtbot, "green fruit\n")
    until(qtbot, lambda: pane.correcting is not None)
    assert pane.written[pane.correcting].key == "unripe_limit_pct"
    assert pane.written[pane.correcting].note.endswith("as is common")


def test_a_person_who_may_be_under_age_is_marked(qtbot, window):
    pane = go(window, "people")
    press(qtbot, KEY.Key_Return)
    type_keys(qtbot, "P90\n1\n1\nRosa Vega\nno\n2009\n")
    person = things(window).people["P90"]
    assert (person.name, person.named, person.born) == ("Rosa Vega", False, 2009)
    until(qtbot, lambda: [row.key for row in pane.written if row.doubtful] == ["P90"])
