"""Picking in the real window: the hill, the first forms of a lot, pay, and a lot's family, all by keys."""

from __future__ import annotations

from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from farmdesk.desk.go import Target
from farmdesk.picture.codes import check_character
from farmdesk.picture.entries import FLOATERS, INTAKE, SORTED, Advance, DayWork, PaySheet, Ripeness, Skipped
from farmdesk.work.farm import OpenFarm
from tests.desk import samples
from tests.desk.evening import open_window, season_copy

LOT = "25-16W"
CUT = samples.jan(14, 18) + 45 * 60


def keys(text: str) -> None:
    """Type as a hand does; a new line is Enter."""
    for letter in text:
        widget = QApplication.focusWidget()
        assert widget is not None
        if letter == "\n":
            QTest.keyClick(widget, Qt.Key.Key_Return)
        else:
            QTest.keyClicks(widget, letter)


@pytest.fixture
def window(qtbot, at, tmp_path):
    at(CUT + 60)
    made = open_window(qtbot, season_copy(tmp_path, CUT))
    made.open(Target("page", "picking"))
    return made


def farm(window) -> OpenFarm:
    return window.lanes._farm


# the hill


def test_the_hill_is_drawn_to_its_metres_and_read_as_a_table(window):
    view = window.page.view
    assert "655\u202fkg weighed in today from D. Next block A, 18 Jan." in window.page.accessibleName()
    assert view.hill.accessibleName().startswith("6 blocks from 1460 to 1680 m. Crop: 22,023–32,010\u202fkg of cherry")
    _, rows = view.hill.table()
    assert [row[0][0] for row in rows] == list("BAFCDE")  # from the top of the hill
    d = next(row for row in rows if row[0].startswith("D"))
    assert d[1:4] == ["1500–1550", "5,544", "4,632–10,609"]
    a = next(row for row in rows if row[0].startswith("A"))
    assert a[4] == "18 Jan, pinned"
    assert "pickers, likely" in a[5]


def test_a_pinned_day_is_never_moved(window):
    story = window.page.view.story
    pinned = {block.code: block.next_days for block in story.blocks if block.pinned}
    assert pinned["A"] == (date(2025, 1, 18), date(2025, 1, 18))
    window.desk.move_to(samples.jan(13, 19))
    story = window.page.view.story
    assert {b.code: b.next_days for b in story.blocks if b.pinned}["A"] == pinned["A"]


def test_chance_is_said_in_one_sentence(window):
    said = window.page.view.counts.accessibleName()
    assert "3 green in 100 may be 1.0–8.5\u202f%, 5 in 100 may be 2.2–11.2\u202f%: the ranges overlap" in said


def test_an_empty_farm_says_so(qtbot, at, tmp_path):
    from farmdesk.work.setup import begin_farm

    at(CUT)
    path = tmp_path / "new.season"
    begin_farm(path, "New farm", "25", "America/Guatemala").close()
    window = open_window(qtbot, path)
    window.open(Target("page", "picking"))
    assert window.page.view.hill.accessibleName() == (
        "No block is written yet. A lot can begin without one; the page Farm writes them: r."
    )
    keys("w")
    assert "No lot has begun" in window.notice.sentence


# the first forms of a lot


def test_a_lot_begins_with_a_proposed_code_and_its_check_character(window):
    keys("g")
    view = window.page.view
    assert view.row.values() == {"method": "N", "code": "25-17N", "alias": ""}  # the next planned one
    keys("1")
    assert view.row.values()["code"] == "25-18W"  # another method, another plan
    keys("\n25-21W X\n\n")
    assert "carries the check character" in view.row.guard.sentence  # copied wrong
    keys("\n")
    view.row.focus("code")
    keys(f"25-21W {check_character('25-21W')}+")
    assert farm(window).lot("25-21W").birth is not None
    assert view.written[0].cells["code"] == f"25-21W {check_character('25-21W')}"


def test_a_ripeness_count_shows_its_range_while_it_is_typed(window):
    keys("r")
    view = window.page.view
    assert view.row.values()["lot"] == LOT
    keys("3\n5\n91\n1\n0\n0\n")
    (count,) = farm(window).lot(LOT).of(Ripeness)
    assert (count.body.block, count.body.half_day, count.body.green, count.body.ripe) == ("D", "pm", 3, 91)
    assert view.written[0].cells["ripe"] == "91"
    keys("8\n2.5+")
    assert "whole numbers" in view.row.guard.sentence


def test_sort_and_float_leave_the_rest_accepted(window):
    keys("o")
    view = window.page.view
    keys("12.5\n25+")
    balance = farm(window).lot(LOT).balance
    assert (balance[SORTED], balance[FLOATERS], balance[INTAKE]) == (12_500, 25_000, 617_100)
    assert view.written[0].cells["floaters"] == "25"


def test_floaters_not_measured_are_never_nothing(window):
    keys("o12.5\n*+")
    lot = farm(window).lot(LOT)
    assert FLOATERS not in lot.balance
    assert [e.body.quantity for e in lot.of(Skipped)] == ["floaters"]


def test_too_many_floaters_are_asked_about(window):
    keys("o10\n200+")
    assert "of this delivery floated" in window.page.view.row.guard.sentence
    keys("1")
    assert farm(window).lot(LOT).balance[FLOATERS] == 200_000


def test_vessels_by_number_and_beds_in_one_act(window):
    window.page.go("fill")
    view = window.page.view
    assert view.row.values()["lot"] == LOT
    keys("1\n600\n1800+")  # the first vessel of the list
    assert farm(window).lot(LOT).heaps["T1"] == 600_000
    assert view.written[0].cells["vessel"] == "T1"
    window.page.leave()
    window.page.go("spread")
    view = window.page.view
    assert view.row.values()["lot"] == LOT
    keys("9\n120\n10\n118+")
    heaps = farm(window).lot(LOT).heaps
    assert (heaps["9"], heaps["10"]) == (120_000, 118_000)
    assert "T1" not in heaps
    assert farm(window).lot(LOT).streams[">pulp"] == 362_000


def test_a_bed_needs_its_weight(window):
    window.page.go("fill")
    keys("1\n600+")
    window.page.go("spread")
    keys("9\n120\n10+")
    assert "Bed 10 and its weight belong together." in window.page.view.row.guard.sentence


def test_a_wrong_row_of_a_form_is_put_right(window):
    keys("o12.5\n25+")
    keys("/")
    view = window.page.view
    assert view.correcting == 0
    keys("\n22.5\n25+")
    assert farm(window).lot(LOT).balance[SORTED] == 22_500
    assert len(view.written) == 1


def test_what_it_will_come_to_stands_beside(window):
    keys("o")
    story = window.page.view.story
    lot = story.lot("16")
    assert "kg of green; boxes of 30\u202fkg: 3, rest" in str(lot.will_come)
    assert "of 7 own lots" in str(lot.will_rest)
    assert lot.floats.lots_n == 8


# pay


def test_the_pay_of_a_week_by_picker(window):
    keys("z")
    view = window.page.view
    week = view.story.week
    assert (week.first_day, week.last_day) == (date(2025, 1, 12), date(2025, 1, 18))
    assert "5,916.00\u202fL for 22 pickers, not signed yet." in window.page.accessibleName()
    assert sum(note * n for note, n in week.bank.items()) == week.total_cents
    shown = [view.rows.table.rows[0][column] for column in (0, 1, 2, 8)]
    assert shown == ["P01", "33.3", "199.80", "199.80"]
    QTest.keyClick(view.rows, Qt.Key.Key_Left)
    assert view.story.week.first_day == date(2025, 1, 5)
    QTest.keyClick(view.rows, Qt.Key.Key_Right)
    assert view.story.week.first_day == date(2025, 1, 12)


def test_advances_and_day_work_are_typed_there(window):
    keys("za")
    view = window.page.view
    keys("7\n300\nboots\n")
    (entry,) = [e for e in farm(window).picture.general_of(Advance) if e.written_utc_s > CUT]
    assert (entry.body.picker, entry.body.amount_cents, entry.body.text) == ("P07", 30_000, "boots")
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Escape)
    keys("e")
    keys("8\n14\n400\n1/2\nrinsing\n")
    (work,) = [e for e in farm(window).picture.general_of(DayWork) if e.written_utc_s > CUT]
    assert (work.body.picker, work.body.day, work.body.share_frac) == ("P08", "2025-01-14", 0.5)
    rows = {row.picker: row for row in view.story.week.rows}
    assert rows["P07"].advance_cents == 30_000
    assert rows["P08"].day_work_cents == 20_000  # half of 400
    keys("99")
    keys("\n100+")
    assert "no picker 99" in view.row.guard.sentence


def test_a_week_is_signed_once_and_stays(window):
    keys("zq")
    view = window.page.view
    assert "A signed week never changes" in view.sign.sentence
    keys("1")
    (sheet,) = farm(window).picture.general_of(PaySheet)
    assert sheet.body.first_day == "2025-01-12"
    assert view.story.week.closed
    assert all(action.key != "q" for action in window.page.letters())


def test_sacks_without_a_picker_are_named_before_a_week_is_signed(window):
    keys("w")
    keys("77\n33+")
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Escape)
    keys("z")
    view = window.page.view
    assert "1 sack has no known picker" in window.page.accessibleName()
    keys("q1")
    assert "no known picker" in window.notice.sentence
    keys("u20+")
    assert not view.story.loose
    assert any(row.picker == "P20" and row.grams >= 33_000 for row in view.story.week.rows)


def test_the_pay_sheet_leads_to_paper(window):
    keys("zk")
    assert window.page.place == "papers"
    assert window.page.wish.kind == "pay sheet"
    assert window.page.wish.week == "2025-01-12"
    window.page.open_at(Target("paper", "weigh sheet"))
    assert window.page.wish.kind == "weigh sheet"


# the family


def test_a_lot_leads_to_its_family_by_a_key(qtbot, at, tmp_path):
    at(samples.jan(90))
    window = open_window(qtbot, season_copy(tmp_path, samples.jan(90)))
    window.open(Target("lot", "25-25W"))
    keys("j")
    page = window.page
    assert page.place == "lots"
    assert "block C 52\u202f%, block D 48\u202f%; of 25-0" in page.accessibleName()
    _, rows = page.tree.table()
    assert ["25-04W", "25-25W " + check_character("25-25W"), "51.6 %"] in rows
    assert page.story.forebears[0].code in ("25-04W", "25-06W")
    assert {code for code, _, _ in page.story.picked} == {"25-04W", "25-06W"}
    assert abs(sum(share.share_frac for share, _ in page.story.blocks) - 1) < 1e-9


def test_merging_asks_about_moisture_and_makes_a_joint_lot(window, at):
    now = farm(window)
    codes = [lot.code for lot in now.picture.lots.values() if lot.heaps.get("store", 0) > 0][:2]
    assert len(codes) == 2
    window.open(Target("family", codes[0]))
    keys("j")
    page = window.page
    assert page.row.values()["at1"] == "store"
    number = codes[1][3:5]
    keys(f"{number}\nstore\nstore+")
    for _ in range(3):
        if page.row.guard.isHidden():
            break
        keys("1")
    joint = page.code
    assert joint not in codes
    assert {share.code for share in page.story.parents} == set(codes)
    assert set(farm(window).lot(joint).heaps) == {"store"}


def test_a_split_asks_for_what_is_missing_and_posts_it(window):
    window.open(Target("family", "25-13W"))
    heap = next(h for h in window.page.story.heaps if h.lot == "25-13W")
    keys("k")
    half = heap.grams // 2 / 1000
    keys(f"{heap.place}\n17\n{half:.1f}\n18\n{half - 3:.1f}+")
    page = window.page
    assert "Where are the other" in page.row.guard.sentence
    keys("1")
    heaps = farm(window).lot("25-13W").heaps
    assert heaps["17"] == round(half, 1) * 1000
    assert "18" in heaps
    assert farm(window).lot("25-13W").balance[">unexplained"] > 2_500


@pytest.mark.parametrize("dark", [False, True])
@pytest.mark.parametrize("view", ["hill", "weigh", "lot", "count", "sort", "fill", "spread", "pay"])
def test_every_view_is_drawn_light_and_dark(window, view, dark):
    from farmdesk.desk import theme

    theme.look().wear("dark" if dark else "light")
    window.page.go(view)
    image = window.grab().toImage()
    assert image.width() == 1366
    assert window.page.accessibleName()
    theme.look().wear("light")
