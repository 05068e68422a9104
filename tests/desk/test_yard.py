"""The yard's page in the real window: true to scale, what is due, litres, covers, and the hour handle."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest
from PySide6.QtCore import QPointF, Qt

from farmdesk.clock import DAY_S, HOUR_S
from farmdesk.desk.go import Target
from farmdesk.desk.pages.yard import YardPage
from farmdesk.desk.theme import look
from farmdesk.work.stories import Dated, LotWater, ToDo
from tests.desk import samples_season as samples
from tests.desk.stand_season import drag, has, picture, press, stand

KEY = Qt.Key
NOW = samples.RAIN_NIGHT


@pytest.fixture
def asked():
    return []


@pytest.fixture
def window(qtbot, asked):
    def tell(at_utc_s: int):
        asked.append(at_utc_s)
        return replace(samples.yard(), at_utc_s=at_utc_s)

    return stand(qtbot, "yard", YardPage, tell, NOW)


@pytest.fixture
def plan(window):
    return window.page.plan


def row(plan, code):
    _, rows = plan.table()
    return next(r for r in rows if r[0] == code)


def middle(plan, code):
    return plan.rects[code].center()


def test_it_says_itself_in_its_headline(window, plan):
    said = "Thu 23 Jan 17:00. 22 of 22 beds in use; 61 mm of rain today; 2 to see to at once."
    assert window.page.accessibleName() == plan.accessibleName() == said


def test_beds_stand_true_to_scale(plan):
    one, two, nine, twenty = (plan.rects[code] for code in ("1", "2", "9", "20"))
    assert plan.scale == pytest.approx(16.6, abs=0.5)
    assert two.left() - one.left() == pytest.approx(2.4 * plan.scale, abs=1)
    assert one.height() == pytest.approx(12 * plan.scale, abs=1)
    assert nine.top() - one.bottom() == pytest.approx(2 * plan.scale, abs=1)
    assert twenty.left() - nine.left() == pytest.approx(28.2 * plan.scale, abs=1)
    assert all(r.left() >= 0 and r.right() <= plan.width() and r.bottom() <= plan.height() for r in plan.rects.values())


def test_numbers_are_said_as_they_are_known(plan):
    assert row(plan, "17")[1:5] == ["25-16W", "15.9 → 20.4\u202f%", "90\u202fkg", "8\u202fL"]
    assert row(plan, "6")[2] == "≈\u202f49\u202f%"
    assert row(plan, "8")[2] == "24.7\u202f%"
    assert row(plan, "17")[5:] == ["covered", "now"]
    assert row(plan, "P1")[1] == "free"


def test_a_bed_not_measured_says_so_and_is_crossed(qtbot):
    story = samples.yard()
    places = tuple(
        replace(p, lying=(replace(p.lying[0], moisture_wb_frac=None),)) if p.code == "3" else p for p in story.places
    )
    window = stand(qtbot, "yard", YardPage, lambda at: replace(story, places=places), NOW)
    assert row(window.page.plan, "3")[2] == "not measured"


def test_only_what_is_due_is_warm(qtbot, window, plan):
    image = picture(plan)
    due, calm = plan.rects["17"], plan.rects["16"]
    assert image.pixelColor(round(due.left()) - 5, round(due.center().y())) == look()["now"]
    assert image.pixelColor(round(calm.left()) - 5, round(calm.center().y())) != look()["now"]
    free = stand(qtbot, "yard", YardPage, lambda at: samples.yard(free=True), NOW)
    still = picture(free.page)
    assert not has(still, look()["now"])
    assert not has(still, look()["today"])


def test_more_water_is_stronger_blue_and_an_estimate_is_hatched(plan):
    image = picture(plan)

    def colors(code):
        r = plan.rects[code]
        return {image.pixelColor(round(x), round(r.top()) + 40).rgb() for x in (r.left() + n for n in range(3, 15))}

    water = [color.rgb() for color in look().palette.water]
    assert colors("1") == {water[0]}
    assert colors("3") == {water[1]}
    assert colors("7") == {water[5]}
    assert water[4] in colors("6")
    assert len(colors("6")) > 1


def test_brackets_carry_the_litres_of_their_beds(plan):
    row_ = [p for p in plan.story.places if p.kind == "bed" and p.y_m > 10]
    groups = plan._groups(sorted(row_, key=lambda p: p.x_m))
    assert [plan._labels(g)[0] for g in groups] == ["1\u202fL", "13\u202fL", "46\u202fL", "54\u202fL", "9\u202fL"]


def test_covers_are_said_in_words(plan):
    beds = {cover: [p for p in plan.story.places if p.cover == cover] for cover in ("roof", "hoops", "tarp")}
    assert plan.cover_words(beds["roof"], between=True) == "clear roof above"
    assert plan.cover_words(beds["hoops"]) == "hoops, down since Wed 22 Jan 13:00"
    assert plan.cover_words(beds["hoops"], brief=True) == "hoops, down"
    assert plan.cover_words(beds["tarp"]) == "hand tarps, on since Wed 22 Jan 14:00"
    some = [replace(p, covered=p.code in ("20", "21", "22")) for p in beds["tarp"]]
    assert plan.cover_words(some) == "hand tarps, on 20–22"
    off = [replace(p, covered=False) for p in beds["hoops"]]
    assert plan.cover_words(off) == "hoops, up"


def test_arrows_walk_the_beds_and_enter_opens_the_lot(qtbot, window, plan):
    assert plan.held == ""
    qtbot.keyClick(plan, KEY.Key_Right)
    assert plan.held == "1"
    assert plan.accessibleName().endswith("1 25-14X 11.7\u202f% 90\u202fkg")
    qtbot.keyClick(plan, KEY.Key_Right)
    qtbot.keyClick(plan, KEY.Key_Down)
    assert plan.held == "10"
    assert has(picture(plan), look()["focus"])
    qtbot.keyClick(plan, KEY.Key_Return)
    assert window.been == [Target("lot", "25-16W")]
    qtbot.keyClick(plan, KEY.Key_Escape)
    assert plan.held == ""


def test_a_click_on_a_bed_opens_its_lot(window, plan):
    press(plan, middle(plan, "7"))
    assert window.been == [Target("lot", "25-18W")]


def test_a_free_bed_opens_nothing_and_a_bed_awaited_the_lot_that_comes(qtbot):
    story = samples.yard(free=True)
    places = tuple(replace(p, arriving="25-18W") if p.code == "12" else p for p in story.places)
    window = stand(qtbot, "yard", YardPage, lambda at: replace(story, places=places), NOW)
    plan = window.page.plan
    press(plan, middle(plan, "3"))
    assert window.been == []
    press(plan, middle(plan, "12"))
    assert window.been == [Target("lot", "25-18W")]


def test_b7_typed_anywhere_holds_the_bed(qtbot, window, plan):
    window.open(Target("bed", "7"))
    assert plan.held == "7"
    assert plan.hasFocus()
    window.open(Target("bed", "nowhere"))
    assert plan.held == ""


def test_t_turns_to_the_table_and_back(qtbot, window, plan):
    qtbot.keyClick(plan, KEY.Key_T)
    assert plan.as_table
    assert plan._twin.table.rowCount() == 28
    qtbot.keyClick(plan._twin, KEY.Key_T)
    assert not plan.as_table


def test_the_side_says_what_changed_what_to_do_and_the_water(window):
    said = window.page.side.accessibleName()
    assert "Tarp blew off bed 17" in said
    assert "18 20–22: tie the tarps again" in said
    assert "25-17N 299\u202fL" in said


def test_a_line_of_the_side_opens_its_lot(window):
    side = window.page.side
    picture(side)
    top, low, lot = side._lines[0]
    assert lot == "25-16W"
    press(side, QPointF(40, (top + low) / 2))
    assert window.been == [Target("lot", "25-16W")]


def test_many_lines_keep_the_newest_and_never_run_over(qtbot):
    story = samples.yard()
    many = tuple(Dated(NOW - n * 600, samples.say(f"Opened {n}.")) for n in range(40, 0, -1))
    jobs = tuple(ToDo(str(n), samples.say("rake"), None, "today", "25-12A") for n in range(8))
    lots = tuple(LotWater(f"25-{n:02d}W", ((str(n), 9_000, 0.3),), 9_000) for n in range(1, 15))
    full = replace(story, changed=many, todo=jobs, water=lots, water_g=126_000)
    window = stand(qtbot, "yard", YardPage, lambda at: full, NOW, (1366, 690))
    side = window.page.side
    picture(side)
    assert all(low <= side.height() for _, low, _ in side._lines)
    assert 8 < len(side._lines) < 22


def test_an_empty_yard_is_calm_and_names_the_key_that_begins(qtbot):
    window = stand(qtbot, "yard", YardPage, lambda at: samples.yard(free=True), NOW)
    page = window.page
    assert page.side.calm == "Nothing lies here; p goes to Picking, where the coffee comes from."
    picture(page)
    next(action for action in page.letters() if action.key == "p").run()
    assert window.been == [Target("page", "picking")]


# the hour handle


def test_h_takes_the_hour_handle_and_arrows_move_it(qtbot, window, plan, asked):
    qtbot.keyClick(plan, KEY.Key_H)
    hours = window.page.hours
    assert hours.hasFocus()
    qtbot.keyClick(hours, KEY.Key_Left)
    assert asked[-1] == window.desk.as_of == NOW - HOUR_S
    qtbot.keyClick(hours, KEY.Key_Left, Qt.KeyboardModifier.ShiftModifier)
    assert asked[-1] == NOW - HOUR_S - DAY_S
    assert hours.accessibleName() == "Hour handle, Wed 22 Jan 16:00"
    assert window.ruler.label() == "as known Wed 22 Jan 16:00"
    qtbot.keyClick(hours, KEY.Key_Right)
    assert asked[-1] == NOW - DAY_S
    qtbot.keyClick(hours, KEY.Key_End)
    assert asked[-1] == NOW
    assert window.desk.at_present


def test_it_never_goes_past_now(qtbot, window, asked):
    qtbot.keyClick(window.page.hours, KEY.Key_Right)
    assert window.desk.as_of == NOW


def test_a_pull_to_half_past_three_shows_the_yard_of_that_hour(window, asked):
    hours = window.page.hours
    wanted = samples.TIME.instant(date(2025, 1, 23), 3, 30)
    start, end = QPointF(hours.x_of(NOW), 30), QPointF(hours.x_of(wanted), 30)
    drag(hours, start, end)
    assert asked[-1] == wanted
    assert window.page.story.at_utc_s == wanted
    assert not hours._pause.isActive()


def test_a_pull_asks_no_more_than_it_must(window, asked):
    hours = window.page.hours
    many = len(asked)
    drag(hours, QPointF(hours.x_of(NOW), 30), QPointF(hours.x_of(NOW - 2 * DAY_S), 30))
    assert len(asked) - many <= 3  # four moves in one breath: the first, the last, no more


def test_the_week_stays_while_the_handle_moves_inside_it(qtbot, window):
    hours = window.page.hours
    first = hours.first
    assert first == date(2025, 1, 19)
    qtbot.keyClick(hours, KEY.Key_Left, Qt.KeyboardModifier.ShiftModifier)
    assert hours.first == first
    for _ in range(3):
        qtbot.keyClick(hours, KEY.Key_Left, Qt.KeyboardModifier.ShiftModifier)
    assert hours.first < date(2025, 1, 19) <= samples.TIME.calendar_day(window.desk.as_of)
    left, right = hours._span()
    assert left < hours.x_of(window.desk.as_of) < right


def test_rain_stands_in_millimetres_and_what_is_ahead_is_hatched(window):
    hours = window.page.hours
    image = picture(hours)
    base = hours.height() - 18
    x = round(hours.x_of(samples.TIME.instant(date(2025, 1, 22), 12)))
    assert image.pixelColor(x, base) == look()["ink2"]
    dry = round(hours.x_of(samples.TIME.instant(date(2025, 1, 21), 12)))
    assert image.pixelColor(dry, base) == look()["band"]
    ahead = {image.pixel(round(hours.x_of(NOW + HOUR_S)) + n, base) for n in range(8)}
    assert len(ahead) > 1


def test_every_hour_has_one_place_on_the_band(window):
    hours = window.page.hours
    for n in range(0, 7 * 24, 5):
        at = samples.TIME.instant(hours.first) + n * HOUR_S
        assert hours.instant_at(hours.x_of(at)) == at
