"""Today in the real window: what is due stands out, a calm day is calm, room gives way in order, keys answer."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from farmdesk.desk import theme
from farmdesk.desk.go import Target
from farmdesk.desk.lanes import Inline
from farmdesk.desk.pages import Desk
from farmdesk.desk.pages.today import TodayPage
from farmdesk.desk.pages.today_zones import code_list
from farmdesk.desk.theme import look
from farmdesk.desk.window import Window
from farmdesk.text import ENGLISH
from farmdesk.work.changes import Changes, Done
from farmdesk.work.stories import Gap
from tests.desk import samples_today as samples
from tests.desk.stand_season import Gone, has, picture

KEY = Qt.Key


class Writes:
    """Stands in for the open farm: what the verbs would write."""

    def __init__(self):
        self.written = []

    def write(self, bodies, at_utc_s, hand, label, *, replaces="", lot=""):
        self.written += bodies
        return Done(Changes(frozenset({lot})), ("1",), label, None, lot)


@pytest.fixture
def story():
    return [samples.today()]


@pytest.fixture
def window(qtbot, at, story):
    at(samples.MORNING)
    theme.load_fonts()
    look().wear("light", 1.0)
    farm = Writes()
    lanes = Inline()
    lanes.open(lambda: farm)
    lanes.close = lambda: None
    desk = Desk(lanes, ENGLISH, samples.TIME)
    desk.as_of = desk.present = samples.MORNING
    shown = type("Shown", (TodayPage,), {"query": lambda self, farm, at: samples.today_answer(story[0])})
    been: list[Target] = []
    gone = type("Kept", (Gone,), {"been": been})
    makers = {"today": shown, **dict.fromkeys(("lots", "yard", "papers", "notebook"), gone)}
    window = Window(lanes, desk, makers, lambda farm, at: (samples.road(at), samples.KNOWN))
    window.farm, window.been = farm, been
    qtbot.addWidget(window)
    window.resize(1366, 768)
    window.show()
    window.begin()
    QApplication.processEvents()
    yield window
    look().wear("light", 1.0)


def tell(window, story, told):
    story[0] = told
    window.page.refresh()
    QApplication.processEvents()


def warm(image):
    return any(has(image, look()[token]) for token in ("now", "today", "tint"))


def test_the_seven_questions_are_answered_in_words(window):
    page = window.page
    assert "T1: 25-18W, Mon 20 Jan 17:00, 06:00–08:00, 4.11, 16.7\u202f°C." in page.vessels.accessibleName()
    assert page.yard.words.accessibleName().startswith("from 07:15: 6 8–11 15 17–22, 23–59 %")
    assert "38\u202fmin to cover everything. First 9–11 15, then 19, 12 13, 17, last 18 20–22." in (
        page.right.accessibleName()
    )
    assert page.pickers.accessibleName().startswith("C: 18 pickers")
    assert "washed: T1 from 17:00" in page.right.accessibleName()
    assert page.gaps.accessibleName().startswith("Missing or doubtful: Bed 19: no meter reading")
    assert "R2: sample of 25-13W" in page.right.accessibleName()
    assert page.accessibleName().startswith("Tuesday 21 January. 05:45. work day 72. 13.0 °C")


def test_every_picture_can_be_read_as_a_table(qtbot, window):
    page = window.page
    tables = [page.vessels, page.yard.plan, page.yard.words, page.right, page.rail, page.gaps]
    for zone in tables:
        heads, rows = zone.table()
        assert rows
        assert all(len(row) == len(heads) for row in rows)
    page.rail.setFocus()
    qtbot.keyClick(page.rail, KEY.Key_T)
    assert page.rail.as_table
    assert not page.gaps.as_table
    qtbot.keyClick(QApplication.focusWidget(), KEY.Key_T)
    assert not page.rail.as_table


def test_what_is_due_is_warm_and_a_calm_day_is_not(window, story):
    assert warm(picture(window.page))
    tell(window, story, samples.calm())
    calm = picture(window.page)
    assert not warm(calm)
    assert window.page.vessels.accessibleName() == "Nothing has to be opened, washed or covered before tonight."
    assert not window.page.right.isVisible()
    look().wear("dark")
    assert not warm(picture(window.page))


def test_now_and_today_differ_by_more_than_colour(window, story):
    plan = window.page.yard.plan
    bed = plan.rects["9"]
    thick = {}
    for due in ("today", "now"):
        places = tuple(replace(p, due=due if p.code == "9" else "") for p in story[0].yard.places)
        tell(window, story, replace(story[0], yard=replace(story[0].yard, places=places)))
        image = picture(plan)
        y = round(bed.center().y())
        row = [image.pixelColor(x, y) for x in range(round(bed.left()) - 12, round(bed.left()))]
        thick[due] = sum(color == look()[due] for color in row)
    assert thick == {"today": 2, "now": 4}


@pytest.mark.parametrize("size", [(1366, 768), (1366, 690), (1920, 1080), (1100, 700), (1000, 620)])
@pytest.mark.parametrize("scale", [1.0, 1.3])
def test_nothing_covers_anything(window, size, scale):
    window.resize(*size)
    look().wear(scale=scale)
    window.speak(ENGLISH)
    QApplication.processEvents()
    page = window.page
    parts = [page.title, page.vessels, page.pickers, page.yard, page.right, page.rail, page.gaps]
    shown = [part for part in parts if part.isVisible()]
    assert page.vessels in shown
    assert page.yard in shown
    for i, one in enumerate(shown):
        assert one.geometry().bottom() <= page.height()
        for other in shown[i + 1 :]:
            assert not one.geometry().intersects(other.geometry()), (one, other)


def test_a_low_window_drops_gaps_first_then_lanes(window):
    lanes = len(window.page.rail.lanes)
    assert window.page.rail.lane_px == 18
    assert window.page.gaps.rows_for(2) == 2
    window.resize(1366, 690)
    assert window.page.gaps.height() < 2 * 22
    assert window.page.rail.height() < window.page.rail.height_for(lanes, 18)
    assert window.page.vessels.height() >= 200


def test_enter_answers_the_first_gap(qtbot, window):
    qtbot.keyClick(window.page, KEY.Key_Return)
    assert window.been[-1] == Target("lot", "25-15N")


def test_gaps_are_walked_and_answered(qtbot, window):
    gaps = window.page.gaps
    gaps.setFocus()
    qtbot.keyClick(gaps, KEY.Key_Down)
    qtbot.keyClick(gaps, KEY.Key_Return)
    assert window.been[-1] == Target("lot", "25-18W")


def test_n_writes_not_measured(qtbot, window):
    page = window.page
    qtbot.keyClick(page, KEY.Key_N)
    qtbot.keyClick(QApplication.focusWidget(), KEY.Key_Return)
    (skipped,) = window.farm.written
    assert (skipped.lot, skipped.place, skipped.quantity, skipped.day) == (
        "25-15N", "19", "meter_wb_frac", "2025-01-20",
    )  # fmt: skip


def test_n_says_why_it_cannot(qtbot, window, story):
    tell(window, story, replace(story[0], gaps=(Gap("doubtful", samples.say("pH-1 is overdue")),)))
    window.page._not_measured()
    assert "cannot be answered" in window.notice.sentence
    window.desk.at_present = False
    window.page._not_measured()
    assert window.notice.sentence.startswith("This is the past")
    assert window.farm.written == []


def test_at_most_six_gaps_and_how_many_more(window, story):
    many = tuple(Gap("missing", samples.say(f"Bed {n}: no reading")) for n in range(1, 10))
    tell(window, story, replace(story[0], gaps=many))
    assert len(window.page.gaps._seen()) == 6
    assert len(window.page.gaps.table()[1]) == 9


def test_beds_lead_to_the_yard(qtbot, window):
    plan = window.page.yard.plan
    plan.setFocus()
    assert plan.held == "1"
    for key in (KEY.Key_Right, KEY.Key_Right, KEY.Key_Down):
        qtbot.keyClick(plan, key)
    assert plan.held == "11"
    assert "11 25-16W" in plan.accessibleName()
    qtbot.keyClick(plan, KEY.Key_Return)
    assert window.been[-1] == Target("bed", "11")


def test_papers_are_one_key_away(qtbot, window):
    qtbot.keyClick(window.page, KEY.Key_R)
    assert window.been[-1] == Target("paper", "rain list")


def test_vessels_are_said_as_people_say_them():
    assert code_list(("T2", "C1", "C2", "B1", "B2", "B3", "B4", "B5", "B6")) == "T2 C1 C2 B1–B6"
    assert code_list(("B1", "B3", "B4")) == "B1 B3 B4"
    assert code_list(()) == ""
