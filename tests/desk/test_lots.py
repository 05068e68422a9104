"""The list of lots: groups, filter, what a card says, and that three hundred are no more trouble than ten."""

from __future__ import annotations

import time
from dataclasses import replace
from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from farmdesk.desk.go import Known, Target, find
from farmdesk.desk.tables.cards import CardsModel, arranged, ends, matching, moisture, spoken, weights
from farmdesk.desk.widgets.strip import awaited
from farmdesk.text import ENGLISH
from tests.desk import samples
from tests.desk.evening import open_window, season_copy, type_keys


def kinds(rows):
    return [(row.kind, row.card.code if row.card else row.text) for row in rows]


def test_lots_at_rest_are_one_line_until_their_word_is_typed():
    rows = kinds(arranged(samples.cards(), "", ENGLISH))
    assert rows[:4] == [("card", code) for code in ("25-13W", "25-12A", "25-14X", "25-15N")]
    assert rows[4] == ("head", "In a tank")
    assert rows[-1] == ("line", "In store: 11 lots, 2,307\u202fkg. Type “store” to see them.")
    stored = kinds(arranged(samples.cards(), "store", ENGLISH))
    assert [kind for kind, _ in stored] == ["head", *["card"] * 11]


@pytest.mark.parametrize(
    ("typed", "codes"),
    [
        ("on beds", ["25-13W", "25-12A", "25-14X", "25-15N"]),
        ("natural", ["25-15N"]),
        ("block f", ["25-14X"]),
        ("T1", ["25-16W"]),
        ("25-13", ["25-13W"]),
        ("washed block c", ["25-13W"]),
        ("nowhere", []),
    ],
)
def test_every_typed_word_must_stand_in_the_card(typed, codes):
    assert [card.code for card in matching(samples.cards(), typed, ENGLISH)] == codes


def test_a_season_at_rest_hides_nothing():
    cards = [card for card in samples.cards() if card.state == "store"]
    assert [kind for kind, _ in kinds(arranged(cards, "", ENGLISH))] == ["head", *["card"] * 11]


def test_what_a_card_says():
    card = samples.cards()[0]
    as_of = samples.EVENING
    assert weights(card, ENGLISH) == "1,960 → 1,882 → 734 → now 414\u202fkg"
    assert moisture(card, ENGLISH) == "19.7\u202f%"
    assert moisture(replace(card, moisture_mark="computed"), ENGLISH) == "≈\u202f19.7\u202f%"
    assert moisture(replace(card, moisture_wb_frac=None), ENGLISH) == "not measured"
    assert ends(card, ENGLISH, samples.TIME, as_of) == "12\u202f% 17–19 Jan"
    open_end = replace(card, ahead=samples.ahead(samples.jan(17), samples.jan(20), None))
    assert ends(open_end, ENGLISH, samples.TIME, as_of) == "12\u202f% not before 16 Jan"
    tank = samples.cards()[4]
    assert ends(tank, ENGLISH, samples.TIME, as_of) == "05:00–07:00"
    later = replace(tank, ahead=samples.ahead(samples.jan(17, 5), samples.jan(17, 9), samples.jan(18, 2)))
    assert ends(later, ENGLISH, samples.TIME, as_of) == "17–18 Jan"
    assert "1 doubt" in spoken(samples.cards()[3], ENGLISH)


def test_a_model_finds_a_lot_and_is_valid(qtmodeltester):
    model = CardsModel()
    model.fill(arranged(samples.cards(), "", ENGLISH))
    assert model.row_of("25-12A") == 1
    assert model.row_of("25-01W") == -1
    qtmodeltester.check(model)


def test_a_code_and_a_number_lead_to_a_reading():
    known = Known(lots=("25-13W", "25-31W"), season="25")
    today = samples.date(2025, 1, 14)
    assert find("25-13 19.7", known, today)[0][1] == Target("reading", "25-13W 19.7")
    assert find("13 4,61", known, today)[0][1] == Target("reading", "25-13W 4,61")
    assert find("25-13", known, today)[0][1] == Target("lot", "25-13W")


@pytest.fixture
def window(qtbot, at, tmp_path):
    at(samples.EVENING + 60)
    made = open_window(qtbot, season_copy(tmp_path))
    made.open(Target("page", "lots"))
    return made


def test_arrows_choose_a_lot_and_the_filter_is_typed_into(window, qtbot):
    page = window.page
    page.list.setFocus()
    first = page.lot.story.card.code
    qtbot.keyClick(page.list, Qt.Key.Key_Down)
    assert page.lot.story.card.code != first
    page.filter.setFocus()
    type_keys(qtbot, "natural on beds")
    assert {row.card.code for row in page.model.rows if row.card} == {"25-15N"}
    assert page.lot.story.card.code == "25-15N"
    assert page.filter.count == "1 of 16 lots"
    type_keys(qtbot, "\n")
    assert page.lot.isAncestorOf(QApplication.focusWidget())
    page.filter.setFocus()
    qtbot.keyClick(page.filter, Qt.Key.Key_Escape)
    assert page.filter.text() == ""
    assert len([row for row in page.model.rows if row.card]) > 4


def test_the_store_opens_by_its_line_and_by_the_road(window, qtbot):
    page = window.page
    line = next(i for i, row in enumerate(page.model.rows) if row.kind == "line")
    page.list.setCurrentIndex(page.model.index(line))
    page.list.setFocus()
    qtbot.keyClick(page.list, Qt.Key.Key_Return)
    assert sum(row.card is not None for row in page.model.rows) == 11
    window.open(Target("lying", "beds"))
    assert all(row.card.state == "beds" for row in page.model.rows if row.card)


def test_going_to_a_lot_shows_it_though_the_filter_hid_it(window):
    page = window.page
    page.filter.setText("natural")
    page._filtered()
    window.open(Target("lot", "25-13W"))
    assert page.lot.story.card.code == "25-13W"
    assert page.model.row_of("25-13W") >= 0
    assert page.list.currentIndex().row() == page.model.row_of("25-13W")


def test_three_hundred_lots_are_quick(window):
    page = window.page
    card = samples.cards()[0]
    cards = [replace(card, code=f"25-{n:03d}W", words=f"25-{n:03d}w washed on beds") for n in range(1, 301)]
    page.cards = cards
    began = time.perf_counter()
    page._arrange()
    page.list.grab()
    took_s = time.perf_counter() - began
    assert page.model.rowCount() == 300
    assert took_s < 0.5  # about 30 ms on a slow computer; a wide bound, for tests share theirs
    heights = {page.list.visualRect(page.model.index(i)).height() for i in range(5)}
    assert heights == {112}


def test_what_is_awaited_next_has_its_own_word():
    strip = replace(samples.lot_13w().card.strip, gate=None, ahead=(jan_day(17), jan_day(18), jan_day(20)))
    running = replace(strip, vessel=((float(samples.EVENING), None),))
    assert str(awaited(strip)[1]) == "gate 17–20 Jan"
    assert str(awaited(running)[1]) == "ferment ends 17–20 Jan"
    assert str(awaited(replace(running, ahead=(jan_day(17), jan_day(18), None)))[1]) == "ferment ends not before 17 Jan"


def jan_day(day: int) -> date:
    return date(2025, 1, day)
