"""The season's page in the real window: read, moved, walked and opened by keys, mouse and table."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QApplication

from farmdesk.clock import DAY_S
from farmdesk.desk.go import Target
from farmdesk.desk.pages.season import SeasonPage
from farmdesk.desk.theme import look
from farmdesk.desk.widgets.season_pieces import BoardPiece, EventPiece, FillPiece, MillPiece, PickPiece, RestPiece
from farmdesk.work.stories import StripDay
from tests.desk import samples_season as samples
from tests.desk.stand_season import drag, has, picture, press, stand

EVENING = samples.TIME.instant(date(2025, 1, 14), 18, 41)
KEY = Qt.Key


def tell(at_utc_s: int):
    return samples.season(samples.TIME.farm_day(at_utc_s))


@pytest.fixture
def window(qtbot):
    return stand(qtbot, "season", SeasonPage, tell, EVENING)


@pytest.fixture
def view(window):
    return window.page.view


def piece(view, kind, lot, n=0):
    return [p for p in view.pieces if isinstance(p, kind) and p.lot == lot][n]


def point(view, rect):
    return QPointF(view.mapFromScene(QPointF(rect.left() + min(6.0, rect.width() / 2), rect.center().y())))


def test_it_says_itself_in_its_headline(window, view):
    said = "18 lots; 14 of 22 beds in use; the next may come free 17 Jan–6 Feb."
    assert window.page.accessibleName() == view.accessibleName() == said
    assert window.page.title.accessibleName() == f"Season. {said}"


def test_some_45_days_around_today_and_their_window_on_the_ruler(window, view):
    first, last = view.days_seen()
    assert 44 <= (last - first).days + 1 <= 47
    assert first < date(2025, 1, 14) < last
    instant = samples.TIME.instant
    assert window.ruler.span == (instant(first), instant(last + timedelta(days=1)))


def test_everything_of_the_season_lies_on_it(view):
    kinds = {type(p) for p in view.pieces}
    assert kinds == {BoardPiece, PickPiece, FillPiece, RestPiece, MillPiece, EventPiece}
    assert piece(view, PickPiece, "25-13W").said == "25-13W: 1,960\u202fkg picked in block C, 7 Jan."
    assert piece(view, PickPiece, "25-17N").said.startswith("25-17N: picking planned in block A")
    assert piece(view, FillPiece, "25-14X").said.startswith(
        "25-14X in B1 B2 B3 B4, Thu 9 Jan 17:00 to Sun 12 Jan 05:00"
    )
    assert piece(view, RestPiece, "25-04W").said == "25-04W in the store since 15 Dec, 215\u202fkg."
    assert piece(view, MillPiece, "25-01W").said == "296\u202fkg sent to the mill on 8 Jan: 25-01W 25-02W."
    assert piece(view, EventPiece, "25-06W").said == "25-06W: 120.0\u202fkg held for R2, 12 Jan."


def test_blocks_stand_highest_first_and_a_notch_is_as_high_as_its_kilograms(view):
    tops = [piece(view, PickPiece, lot).rect.bottom() for lot in ("25-15N", "25-12A", "25-14X", "25-13W", "25-16W")]
    assert tops == sorted(tops)
    small, large = piece(view, PickPiece, "25-15N").rect, piece(view, PickPiece, "25-12A").rect
    assert small.height() < large.height()


def test_a_day_without_a_reading_is_not_bridged(window, view):
    board = next(b for b in view.story.boards if b.lot == "25-10W" and b.place == "13")
    missing = next(row.day for row in board.days if row.moisture_wb_frac is None)
    top = view.levels.tops["13"]
    view.hold(piece(view, BoardPiece, "25-10W"))
    view.hold(None)
    image = picture(view.viewport())
    ratio = image.devicePixelRatio()

    def colors(day):
        x, y = view.days.x(day) - view.left, top - view.verticalScrollBar().value()
        return {
            image.pixelColor(round((x + dx) * ratio), round((y + 6) * ratio)).rgb() for dx in range(4, 22)
        }  # fmt: skip

    water = {color.rgb() for color in look().palette.water}
    assert not colors(missing) & water
    assert look()["paper"].rgb() in colors(missing)
    assert colors(missing + timedelta(days=2)) <= water


def test_codes_of_vessels_never_run_into_the_next_fill(qtbot):
    story = samples.season()
    again = [replace(b, lot="25-98W", from_utc_s=b.until_utc_s + 3600, until_utc_s=b.until_utc_s + 50_000)
             for b in story.vessel_bars if b.lot == "25-13W" and b.vessel == "T1"]  # fmt: skip
    full = replace(story, vessel_bars=(*story.vessel_bars, *again))
    window = stand(qtbot, "season", SeasonPage, lambda at: full, EVENING)
    assert not piece(window.page.view, FillPiece, "25-13W").labelled
    assert piece(window.page.view, FillPiece, "25-98W").labelled


def test_the_season_has_no_warm_pixel_and_nothing_green(window):
    image = picture(window.page)
    assert not has(image, look()["now"])
    assert not has(image, look()["today"])


def test_a_plan_never_hides_what_lies_there(view):
    assert piece(view, BoardPiece, "25-12A").zValue() > piece(view, BoardPiece, "25-17N").zValue()


def test_arrows_move_the_sheet_and_home_is_today(qtbot, window, view):
    first, _ = view.days_seen()
    qtbot.keyClick(view, KEY.Key_Right)
    assert view.days_seen()[0] == first + timedelta(days=1)
    qtbot.keyClick(view, KEY.Key_Left, Qt.KeyboardModifier.ShiftModifier)
    assert view.days_seen()[0] == first - timedelta(days=6)
    assert window.ruler.span[0] == samples.TIME.instant(first - timedelta(days=6))
    qtbot.keyClick(view, KEY.Key_Home)
    assert view.days_seen()[0] == first


def test_plus_and_minus_and_the_wheel_zoom(qtbot, view):
    many = view.day_px
    qtbot.keyClick(view, KEY.Key_Plus)
    assert view.day_px > many
    qtbot.keyClick(view, KEY.Key_Minus)
    assert view.day_px == pytest.approx(many)
    qtbot.keyClick(view, KEY.Key_Right)  # from here on a hand leads, not today
    at = QPointF(200, 100)
    day = (view.left + at.x()) / view.day_px
    turn = QWheelEvent(
        at, view.viewport().mapToGlobal(at), QPoint(), QPoint(0, 120), Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.ControlModifier, Qt.ScrollPhase.NoScrollPhase, False,
    )  # fmt: skip
    QApplication.sendEvent(view.viewport(), turn)
    assert view.day_px > many
    assert (view.left + at.x()) / view.day_px == pytest.approx(day, abs=0.05)


def test_nought_fits_the_season(qtbot, window, view):
    qtbot.keyClick(view, KEY.Key_0)
    assert view.days_seen() == (samples.FIRST, samples.LAST)


def test_page_down_brings_the_store_and_page_up_the_beds(qtbot, view):
    qtbot.keyClick(view, KEY.Key_PageDown)
    assert view.seen().contains(piece(view, RestPiece, "25-11W").rect)
    assert view.seen().top() > view.levels.beds_end
    qtbot.keyClick(view, KEY.Key_PageUp)
    assert view.seen().top() == 0


def test_tab_walks_the_boards_in_view_and_enter_opens(qtbot, window, view):
    assert view.held is None
    qtbot.keyClick(view, KEY.Key_Tab)
    first = view.held
    assert isinstance(first, BoardPiece)
    assert first.rect.intersects(view.seen())
    qtbot.keyClick(view, KEY.Key_Tab)
    assert view.held.stack.first.first_day >= first.stack.first.first_day
    assert view.accessibleName().endswith(view.held.said)
    qtbot.keyClick(view, KEY.Key_Backtab)
    assert view.held is first
    assert has(picture(view.viewport()), look()["focus"])
    qtbot.keyClick(view, KEY.Key_Return)
    assert window.been[-1] == Target("lot", first.lot)


def test_tab_leaves_after_the_last_board_and_esc_lets_go(qtbot, view):
    view.setFocus()
    qtbot.keyClick(view, KEY.Key_Tab)
    qtbot.keyClick(view, KEY.Key_Escape)
    assert view.held is None
    qtbot.keyClick(view, KEY.Key_Tab)
    assert not view.hasFocus()
    view.setFocus()
    for _ in range(len(view.pieces)):
        if not view.hasFocus():
            break
        qtbot.keyClick(view, KEY.Key_Tab)
    assert not view.hasFocus()
    assert view.held is None


def test_arrows_walk_from_board_to_bar_to_notch(qtbot, window, view):
    view.hold(piece(view, BoardPiece, "25-14X"))
    qtbot.keyClick(view, KEY.Key_Up)
    assert isinstance(view.held, FillPiece)
    while isinstance(view.held, FillPiece):
        qtbot.keyClick(view, KEY.Key_Up)
    assert isinstance(view.held, PickPiece)
    qtbot.keyClick(view, KEY.Key_Enter)
    assert window.been[-1].kind == "lot"
    before = view.held.rect.left()
    qtbot.keyClick(view, KEY.Key_Right)
    assert view.held.rect.left() > before


def test_what_is_held_stays_held_through_a_zoom(qtbot, view):
    view.hold(piece(view, BoardPiece, "25-13W"))
    key = view.held.key
    qtbot.keyClick(view, KEY.Key_Plus)
    assert view.held.key == key
    assert view.held in view.pieces


@pytest.mark.parametrize(("kind", "lot"), [(BoardPiece, "25-12A"), (FillPiece, "25-14X"), (PickPiece, "25-12A")])
def test_a_click_opens_the_lot(window, view, kind, lot):
    at = point(view, piece(view, kind, lot).rect)
    drag(view.viewport(), at, at)
    assert window.been == [Target("lot", lot)]


def test_a_drag_moves_the_sheet_and_opens_nothing(window, view):
    at = point(view, piece(view, BoardPiece, "25-12A").rect)
    left = view.left
    drag(view.viewport(), at, at - QPointF(130, 0))
    assert view.left == left + 130
    assert window.been == []


def test_the_sheet_follows_the_handle_until_a_hand_moves_it(qtbot, window, view):
    thread = view.days.thread - view.left
    window.desk.move_to(EVENING - 14 * DAY_S)
    assert view.story.today == date(2024, 12, 31)
    assert view.days.thread - view.left == pytest.approx(thread, abs=1)
    qtbot.keyClick(view, KEY.Key_Right)
    first = view.days_seen()[0]
    window.desk.back_to_now()
    assert view.days_seen()[0] == first


def test_t_turns_to_the_table_and_back(qtbot, window, view):
    qtbot.keyClick(view, KEY.Key_T)
    twin = window.page.twin
    assert twin is not None
    assert twin.hasFocus()
    assert not view.isVisible()
    rows = [list(row) for row in twin.table.rows]
    assert ["8 Jan", "still there", "beds", "25-13W", "12–14 16", "23.0\u202f%", "17–20 Jan, likely 18 Jan"] in rows
    assert ["18 Jan", "", "beds planned", "25-17N", "6 18 20–22", "", "5–12 Feb, likely 9 Feb"] in rows
    assert ["8 Jan", "", "sent to the mill", "25-01W 25-02W", "", "296\u202fkg", ""] in rows
    assert ["3 Jan 17:00", "7 Jan 17:00", "vessel", "25-12A", "C1", "", ""] in rows
    twin.setCurrentIndex(twin.table.index(0, 0))
    qtbot.keyClick(twin, KEY.Key_Return)
    assert window.been == [Target("lot", rows[0][3])]
    window.open(Target("page", "season"))
    qtbot.keyClick(twin, KEY.Key_T)
    assert window.page.twin is None
    assert view.isVisible()
    assert view.hasFocus()


def test_an_unmeasured_stay_says_so_in_the_table(qtbot):
    story = samples.season()
    dry = tuple(
        replace(b, days=tuple(StripDay(row.day, None) for row in b.days)) if b.lot == "25-15N" else b
        for b in story.boards
    )
    window = stand(qtbot, "season", SeasonPage, lambda at: replace(story, boards=dry), EVENING)
    qtbot.keyClick(window.page.view, KEY.Key_T)
    assert any(row[3] == "25-15N" and row[5] == "not measured" for row in window.page.twin.table.rows)


def test_an_empty_season_shows_the_shed_and_the_key_that_begins(qtbot):
    window = stand(qtbot, "season", SeasonPage, lambda at: samples.no_season(), samples.TIME.instant(samples.FIRST, 6))
    view = window.page.view
    assert "Nothing is written yet; p goes to Picking, where the first sack is weighed." in (
        window.page.title.accessibleName()
    )
    assert view.pieces == []
    assert "p" in [action.key for action in window.page.letters()]
    window.page.letters()[-1].run()
    assert window.been == [Target("page", "picking")]
    for key in (KEY.Key_Tab, KEY.Key_PageDown, KEY.Key_0, KEY.Key_Home, KEY.Key_Return):
        qtbot.keyClick(view, key)


def test_off_the_present_the_thread_is_dashed(window, view):
    def thread_colors():
        image = picture(view.viewport())
        x = round(view.days.thread - view.left)
        return {image.pixel(x, y) for y in range(20)}

    whole = thread_colors()
    window.desk.move_to(EVENING - DAY_S)
    assert len(thread_colors()) > len(whole)


def test_a_press_on_bare_paper_opens_nothing(window, view):
    bare = QPointF(view.viewport().width() - 5, 8)
    press(view.viewport(), bare)
    drag(view.viewport(), bare, bare)
    assert window.been == []
