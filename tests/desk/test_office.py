"""Notebook, Papers, Farm and Ferments in the real window, on a copy of the practice season of 14 January."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QFont
from PySide6.QtWidgets import QApplication

from farmdesk.ahead.range import ALARM, Worry
from farmdesk.desk.go import Target
from farmdesk.desk.theme import look
from farmdesk.text import N_, Num
from tests.desk.evening import open_window, season_copy, type_keys
from tests.desk.samples import EVENING, jan

KEY = Qt.Key


@pytest.fixture
def path(tmp_path):
    return season_copy(tmp_path)


@pytest.fixture
def window(qtbot, at, path):
    at(EVENING)
    window = open_window(qtbot, path)
    yield window
    window.close()
    look().wear("light", 1.0)


def page_of(window, name, target=None):
    window.open(target or Target("page", name))
    QApplication.processEvents()
    return window.page


def cell(rows, row, column):
    return rows.table.index(row, column).data()


# notebook


def test_the_last_row_stands_first(window):
    page = page_of(window, "notebook")
    written = [line.row.written_utc_s for line in page.seen]
    assert written == sorted(written, reverse=True)
    assert page.accessibleName().startswith(f"{len(written):,} rows; the last was written Tue 14 Jan")
    assert len(written) == len(window.lanes._farm.picture.book.by_id)


def test_searching_narrows_and_escape_widens(qtbot, window):
    page = page_of(window, "notebook")
    qtbot.keyClick(page.rows, KEY.Key_S)
    qtbot.keyClick(QApplication.focusWidget(), KEY.Key_Return)
    assert page.search.hasFocus()
    qtbot.keyClicks(page.search, "25-13w T1 pH")
    assert page.seen
    assert {(line.row.lot, line.row.place) for line in page.seen} == {("25-13W", "T1")}
    assert page.accessibleName() == f"{len(page.seen)} of {len(page.all):,} rows; Esc shows all again."
    page.search.setText("25-13w nowhere")
    assert page.accessibleName().startswith("None of 1,")
    qtbot.keyClick(page.search, KEY.Key_Escape)
    assert len(page.seen) == len(page.all)
    assert page.rows.hasFocus()
    page.search.setText("25-13w T1 pH")
    qtbot.keyClick(page.rows, KEY.Key_Escape)
    assert len(page.seen) == len(page.all)


def test_what_a_quick_hand_types_after_the_letter_is_searched_for(qtbot, window):
    page = page_of(window, "notebook")
    type_keys(qtbot, "s25-13w T1")
    assert page.search.text() == "25-13w T1"
    assert window.go_box.text() == ""
    qtbot.keyClick(page.search, KEY.Key_Escape)
    type_keys(qtbot, "s12")  # liners are called S01 to S12: this may lead somewhere
    assert window.go_box.text() == "s12"
    type_keys(qtbot, " jan b1")
    assert page.search.text() == "12 jan b1"


def test_a_bed_and_a_day_are_found_whole(qtbot, window):
    page = page_of(window, "notebook")
    page.search.setText("b17 12 jan")
    rows = [line.row for line in page.seen]
    assert rows
    assert all("17" in row.places for row in rows)
    time = window.desk.time
    assert all(date(2025, 1, 12) in (time.calendar_day(row.happened_utc_s), time.farm_day(row.happened_utc_s),
                           time.farm_day(row.written_utc_s)) for row in rows)  # fmt: skip
    page.search.setText("12 jan")
    assert len(page.seen) > len(rows)
    page.search.setText("b99")
    assert not page.seen
    page.search.setText("B1 9 jan 25-14X")  # and a barrel by its name
    assert {line.row.place for line in page.seen} >= {"B1"}


def test_a_row_is_struck_with_a_reason_and_brought_back(qtbot, window, at):
    page = page_of(window, "notebook", Target("rows", "25-13W platform"))
    page.keys_to_rows()
    row = page.seen[0].row
    n = len(page.all)
    at.forward(60)
    qtbot.keyClick(page.rows, KEY.Key_X)
    assert page.ask.isVisible()
    assert "platform total" in page.ask.field.accessibleName()
    qtbot.keyClick(page.ask.field, KEY.Key_Return)
    assert page.ask.sentence == "Say why the row is struck out."
    qtbot.keyClicks(page.ask.field, "read the wrong slip")
    qtbot.keyClick(page.ask.field, KEY.Key_Return)
    assert not page.ask.isVisible()
    qtbot.waitUntil(lambda: len(page.all) == n + 1)
    at_row = next(i for i, line in enumerate(page.seen) if line.row.id == row.id)
    assert page.seen[at_row].row.struck == "read the wrong slip"
    font = page.rows.table.index(at_row, 5).data(Qt.ItemDataRole.FontRole)
    assert isinstance(font, QFont)
    assert font.strikeOut()
    assert cell(page.rows, at_row, 7) == "struck out: read the wrong slip"
    page.rows.selectRow(at_row)
    at.forward(60)
    qtbot.keyClick(page.rows, KEY.Key_X)
    qtbot.waitUntil(lambda: next(line.row for line in page.all if line.row.id == row.id).struck is None)
    assert len(page.all) == n + 2


def test_undo_strikes_and_redo_brings_back(qtbot, window, at):
    page = page_of(window, "notebook", Target("rows", "25-13W platform"))
    page.keys_to_rows()
    row = page.seen[0].row.id
    at.forward(60)
    page.ask.ask("why")
    qtbot.keyClicks(page.ask.field, "wrong slip")
    qtbot.keyClick(page.ask.field, KEY.Key_Return)
    book = lambda: window.lanes._farm.picture.book  # noqa: E731
    assert row in book().struck
    qtbot.keyClick(page.rows, KEY.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert row not in book().struck
    qtbot.keyClick(page.rows, KEY.Key_Y, Qt.KeyboardModifier.ControlModifier)
    assert row in book().struck


def test_nothing_is_struck_in_a_season_that_is_held_elsewhere(qtbot, window):
    page = page_of(window, "notebook")
    window.desk.reading_only = "The office laptop has this season open."
    page.keys_to_rows()
    qtbot.keyClick(page.rows, KEY.Key_X)
    assert not page.ask.isVisible()
    assert window.notice.sentence == "The office laptop has this season open."


def test_only_what_was_written_by_then_is_read(window):
    page = page_of(window, "notebook")
    window.desk.move_to(jan(12, 8))
    assert page.all
    assert all(line.row.written_utc_s <= jan(12, 8) for line in page.all)


def test_a_row_leads_to_its_lot(qtbot, window):
    page = page_of(window, "notebook", Target("rows", "25-12A fill"))
    page.keys_to_rows()
    qtbot.keyClick(page.rows, KEY.Key_Return)
    assert window.page.windowTitle() == "Lots"
    assert window.page.wanted == "25-12A"


# ferments


def test_every_vessel_has_its_clock_and_its_figures(qtbot, window):
    page = page_of(window, "ferments")
    window.desk.move_to(jan(10, 18))
    assert [vessel.code for vessel in page.clocks.vessels] == ["B1", "B2", "B3", "B4"]
    assert "B1 25-14X sealed, washed Thu 9 Jan 17:00" in page.clocks.accessibleName()
    heads, rows = page.clocks.table()
    assert all(len(row) == len(heads) for row in rows)
    assert rows[1][5] == "not measured"
    page.clocks.hold("B2")
    assert page.clocks.held == 1
    qtbot.keyClick(page.clocks, KEY.Key_Return)
    assert window.page.wanted == "25-14X"


def test_a_worry_stands_under_its_clock_and_the_caution_under_all(window):
    page = page_of(window, "ferments")
    window.desk.move_to(jan(10, 18))
    assert page.caution.isVisible()
    assert "Shut up, " in page.caution.accessibleName()  # the practice farm has said how large its room is
    assert page.caution.geometry().top() > page.clocks.geometry().bottom()
    worry = Worry(ALARM, N_("ferment", "Cool it now: the mass is at {temp}.", temp=Num(36.0, "°C", 1)))
    first, *others = page.clocks.vessels
    hot = replace(first, ahead=replace(first.ahead, worries=(worry,)))
    page.clocks.show_vessels([hot, *others], window.desk.as_of, (20.0, 4.0))
    assert "Cool it now: the mass is at 36.0" in page.clocks.accessibleName()
    assert page.clocks.table()[1][0][-1].startswith("Cool it now")
    page.clocks.grab()
    window.desk.move_to(jan(13, 20))
    assert not page.caution.isVisible()


def test_a_long_ferment_and_an_empty_room_are_said(window):
    page = page_of(window, "ferments")
    window.desk.move_to(jan(5, 8))
    assert [vessel.code for vessel in page.clocks.vessels] == ["C1", "C2"]
    assert "Fri 3 Jan 17:00" in page.clocks.accessibleName()
    window.desk.move_to(jan(13, 20))
    assert page.clocks.accessibleName() == "Nothing is in a vessel."


# papers


def test_papers_are_drawn_and_written(qtbot, window, tmp_path):
    page = page_of(window, "papers", Target("paper", "lot sheet 25-13W"))
    assert page.accessibleName() == "Lot sheet 25-13W: 1 page."
    assert page.sheet.image is not None
    assert page.lot.text() == "25-13W"
    assert page.lot.isVisible()
    target = tmp_path / "sheet.pdf"
    page.write_to(str(target))
    assert target.read_bytes() == page.drawing.pdf
    assert target.read_bytes().startswith(b"%PDF")
    page.write_to(str(tmp_path / "no" / "sheet.pdf"))
    assert "could not be written" in window.notice.sentence


def test_the_rain_list_and_other_paper_come_by_keys(qtbot, window):
    page = page_of(window, "papers", Target("paper", "rain list"))
    assert page.accessibleName() == "Rain list: 1 page."
    assert not page.lot.isVisible()
    before = page.drawing.pdf
    page.size_choice._words[1].click()
    assert page.drawing.pdf != before
    assert page.drawing.wish.size == "letter"
    qtbot.keyClick(page.list, KEY.Key_Up)
    assert page.accessibleName() == "Night sheet: 1 page."


def test_a_lot_that_is_not_there_is_said(qtbot, window):
    page = page_of(window, "papers", Target("paper", "lot sheet 25-13W"))
    page.lot.clear()
    qtbot.keyClicks(page.lot, "25-99W")
    qtbot.keyClick(page.lot, KEY.Key_Return)
    assert "25-99W" in window.notice.sentence


# farm


def test_the_farm_says_what_it_has(window, path):
    page = page_of(window, "farm")
    assert "season 25, America/Tegucigalpa" in page.accessibleName()
    assert cell(page.rows, 2, 0) == "C"
    page.registers._words[1].click()
    assert page.rows.table.rowCount() == 28
    page.registers._words[4].click()
    assert [cell(page.rows, row, 0) for row in range(4)] == ["W", "X", "N", "A"]


def test_settings_are_asked_for(qtbot, window):
    page = page_of(window, "farm")
    with qtbot.waitSignal(window.desk.settle) as settled:
        page.look_choice._words[2].click()
    assert settled.args[0].theme == "dark"
    with qtbot.waitSignal(window.desk.settle) as settled:
        page.size_choice._words[1].click()
    assert settled.args[0].scale == 1.15
