"""A lot's page: what it says aloud, which bands give way, river and mill, family, axis and tables."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from farmdesk.desk import theme
from farmdesk.desk.charts.balance import Balance
from farmdesk.desk.charts.river import River
from farmdesk.desk.go import Target
from farmdesk.desk.lanes import Inline
from farmdesk.desk.pages import Desk
from farmdesk.desk.pages.lot import DROPS, LotView
from farmdesk.text import ENGLISH, N_
from farmdesk.work.stories import BalancePart, Reached, Unexplained
from tests.desk import samples
from tests.desk.evening import open_window, season_copy


@pytest.fixture
def view(qtbot, at) -> LotView:
    at(samples.EVENING)
    theme.load_fonts()
    theme.look().wear("light", 1.0)
    desk = Desk(Inline(), ENGLISH, samples.TIME)
    desk.as_of = desk.present = samples.EVENING
    made = LotView(desk, None)
    qtbot.addWidget(made)
    made.resize(900, 660)
    made.show()
    made.show_story(samples.lot_13w())
    QApplication.processEvents()
    return made


def test_every_picture_reads_itself_aloud(view):
    told = {type(p).__name__: p.accessibleName() for p in view.pictures()}
    assert view.title.accessibleName().startswith("25-13W")
    assert told["Chart"].startswith("19.7\u202f% on 14 Jan")
    assert "1,960 delivered, 1,882 accepted, 734 wet parchment, ≈\u202f414 now" in told["River"]
    assert "unexplained: none yet" in told["River"]
    assert "ripe 97 %, own normal, 7 washed lots 91–96" in told["Numbers"]
    assert "No pH reading between 05:00 and the wash at 07:00." in told["Notes"]
    assert "went into 25-04W 12\u202fkg" in told["Notes"]
    assert all(told.values())


def shown(view) -> set[str]:
    return {name for name in (*DROPS, "strip") if not getattr(view, name).isHidden()}


def test_bands_give_way_in_the_stated_order_and_never_overlap(view):
    view.show_story(samples.lot_13w(milled=True))
    gone = []
    for height in range(900, 300, -10):
        view.resize(900, height)
        QApplication.processEvents()
        for name in DROPS:
            if name not in shown(view) and name not in gone:
                gone.append(name)
        edges = sorted(
            (band.geometry().top(), band.geometry().bottom())
            for band in (view.title, view.strip, view.drying, view.balance, view.river, view.numbers, view.notes)
            if not band.isHidden()
        )
        assert all(a[1] < b[0] for a, b in pairwise(edges)), f"bands overlap at {height}"
    assert gone == list(DROPS)
    assert set(view.dropped) == set(DROPS)


def test_what_was_dropped_stands_behind_one_key(view):
    view.resize(900, 420)
    QApplication.processEvents()
    assert "numbers" not in shown(view)
    view.turn()
    assert "numbers" in shown(view)
    assert view.drying.isHidden()
    view.turn()
    assert not view.drying.isHidden()


def test_a_dry_matter_narrowing_without_a_name_is_told(view):
    parts = list(samples.river()[:4])
    river = River(ENGLISH, view)
    river.resize(900, 126)
    river.show_river(tuple(parts), ())
    whole = river.grab().toImage()
    parts[3] = replace(parts[3], missing_g=80_000.0)
    river.show_river(tuple(parts), ())
    assert river.grab().toImage() != whole


def test_a_small_unexplained_is_still_seen_and_the_bar_is_full():
    theme.load_fonts()
    theme.look().wear("light", 1.0)
    bar = Balance(ENGLISH)
    parts = samples.lot_13w(milled=True).balance
    bar.show_balance((*parts[:-1], BalancePart(">unexplained", N_("t", "unexplained"), 100)), None)
    widths = bar.widths(900)
    assert widths[-1] == 4
    assert sum(widths) == pytest.approx(900)
    bar.show_balance(parts, N_("t", "372 kg sent"))
    assert bar.widths(900)[0] / 900 == pytest.approx(238 / 372, abs=0.01)
    assert "unexplained 3.0" in bar.accessibleName()


def test_flagged_weights_and_doubts_stand_first(view):
    story = samples.lot_13w()
    lost = Unexplained(N_("t", "beds"), 20_000.0, 3_000.0, True, N_("t", "On the beds 20 kg are missing."))
    view.show_story(replace(story, unexplained=(lost,)))
    assert [text for _, text in view.notes.lines][:2] == [
        "On the beds 20 kg are missing.",
        "The moisture meter was last checked on 10 January.",
    ]
    assert view.notes.lines[0][0] == "doubtful"


def test_the_family_is_reached_by_keys(view, qtbot):
    gone = []
    view.desk.asked_for.connect(gone.append)
    view.show_story(replace(samples.lot_13w(), parents=(Reached("25-02W", 5_000),)))
    link = view.notes.links[0]
    link.setFocus()
    qtbot.keyClick(link, Qt.Key.Key_Return)
    assert gone == [Target("lot", "25-02W")]


def test_vessels_take_turns_and_tables_turn(view):
    view.show_story(replace(samples.lot_13w(), ferments=(samples.ferment(), samples.ferment(6))))
    first = view.ferment.accessibleName()
    view.next_vessel()
    assert view.ferment.accessibleName() != first
    view.strip.clearFocus()  # the keys are in the list: both curves turn
    view.toggle_tables()
    assert view.ferment.as_table
    assert view.drying.as_table
    view.toggle_tables()
    assert not view.drying.as_table
    view.river.setFocus()  # the keys are in one picture: that one turns
    view.toggle_tables()
    assert view.river.as_table
    assert not view.drying.as_table


def test_the_real_lot_turns_from_dates_to_good_hours_and_back(qtbot, at, tmp_path):
    at(samples.EVENING + 60)
    window = open_window(qtbot, season_copy(tmp_path))
    window.open(Target("lot", "25-13W"))
    page = window.page
    assert page.lot.drying.figure.x_kind == "time"
    next(action for action in page.letters() if action.key == "d").run()
    assert page.lot.drying.figure.x_kind == "good_h"
    next(action for action in page.letters() if action.key == "d").run()
    assert page.lot.drying.figure.x_kind == "time"
    gone = []
    window.desk.asked_for.disconnect(window.open)
    window.desk.asked_for.connect(gone.append)
    next(action for action in page.letters() if action.key == "p").run()
    assert gone == [Target("paper", "lot sheet 25-13W")]


def test_a_handle_before_the_lot_was_begun_shows_another_lot(qtbot, at, tmp_path):
    at(samples.EVENING + 60)
    window = open_window(qtbot, season_copy(tmp_path))
    window.open(Target("lot", "25-13W"))
    window.desk.move_to(samples.jan(2, 12))
    assert window.page.lot.story.card.code != "25-13W"
    assert window.notice.sentence == ""
