"""Boards in a shed: what is joined, where soft ends begin, and that no gap is bridged."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk.desk.widgets import boards, season_scale
from farmdesk.desk.widgets.season_scale import Levels, days_of, packed, vessel_rows
from farmdesk.text import ENGLISH
from farmdesk.work.season_story import Board, VesselBar
from tests.desk import samples_season as samples


@pytest.fixture
def sheet(qtbot):
    story = samples.season()
    days = days_of(story, 26.0, samples.TIME)
    levels = Levels(story, 546.0)
    return story, days, levels


def test_a_lots_adjoining_shelves_are_one_board(sheet):
    story, days, levels = sheet
    found = boards.stacks(story.boards, days, levels)
    assert sorted(stack.places for stack in found if stack.first.lot == "25-13W") == [
        ["12", "13", "14"], ["16"], ["17", "18"],
    ]  # fmt: skip
    assert sorted(len(s.shelves) for s in found if s.first.lot == "25-11W") == [1, 2, 3]


def test_every_board_lies_in_one_stack(sheet):
    story, days, levels = sheet
    lying = [shelf.board for stack in boards.stacks(story.boards, days, levels) for shelf in stack.shelves]
    assert sorted(map(id, lying)) == sorted(map(id, story.boards))


def test_the_largest_stack_of_a_lot_carries_its_words(sheet):
    story, days, levels = sheet
    chief = [s for s in boards.stacks(story.boards, days, levels) if s.first.lot == "25-17N" and s.chief]
    assert [s.places for s in chief] == [["20", "21", "22"]]


def test_beds_of_another_cover_are_not_joined(sheet):
    story, days, levels = sheet
    assert levels.tops["9"] > levels.tops["8"] + levels.shelf
    two = tuple(replace(story.boards[0], lot="25-99W", place=place) for place in ("8", "9"))
    assert len(boards.stacks(two, days, levels)) == 2


def test_ahead_begins_tomorrow(sheet):
    _, days, _ = sheet
    early = Board("25-13W", "12", date(2025, 1, 8), None, (), (date(2025, 1, 12), date(2025, 1, 13), date(2025, 1, 14)))
    assert boards.ahead_of(early, days) == (date(2025, 1, 15),) * 3


def test_an_open_end_runs_to_the_edge_and_says_so(sheet):
    story, days, levels = sheet
    board = next(b for b in story.boards if b.lot == "25-12A")
    open_ = replace(board, ahead=(board.ahead[0], board.ahead[1], None))
    assert boards.shelf_of(open_, days, levels).end == days.end
    (stack,) = boards.stacks([open_], days, levels)
    assert ENGLISH.say(boards.told(stack, days)).endswith("done not before 27 Jan, likely 29 Jan.")
    assert ENGLISH.say(boards.range_words(open_, days)) == "from 27 Jan"


def test_a_board_that_has_ended_has_nothing_ahead(sheet):
    story, days, levels = sheet
    ended = next(b for b in story.boards if b.lot == "25-11W")
    assert boards.ahead_of(ended, days) is None
    shelf = boards.shelf_of(ended, days, levels)
    assert shelf.end == shelf.known_end == days.x(date(2025, 1, 13))


def test_its_sentence_has_beds_water_and_range(sheet):
    story, days, levels = sheet
    by_places = {(s.first.lot, *s.places): s for s in boards.stacks(story.boards, days, levels)}
    told = ENGLISH.say(boards.told(by_places["25-13W", "12", "13", "14"], days))
    assert told == "25-13W on beds 12–14 since 8 Jan, 23.0\u202f% on 14 Jan; done 17–20 Jan, likely 18 Jan."
    planned = ENGLISH.say(boards.told(by_places["25-16W", "9", "10", "11"], days))
    assert planned == "25-16W planned for beds 9–11 from 16 Jan; done 26–31 Jan, likely 28 Jan."
    one = ENGLISH.say(boards.told(by_places["25-15N", "8"], days))
    assert one.startswith("25-15N on bed 8 since 13 Jan")


def test_a_board_without_a_bed_lies_above_the_roof(qtbot):
    story = samples.season()
    homeless = replace(story.boards[-1], place="", lot="25-20W")
    more = replace(story, boards=(*story.boards, homeless))
    levels, before = Levels(more, 546.0), Levels(story, 546.0)
    assert levels.top_of(homeless) + levels.shelf <= levels.roof
    assert levels.roof == before.roof + before.shelf


def test_shelves_grow_where_the_window_is_high(qtbot):
    story = samples.season()
    assert Levels(story, 400.0).shelf == season_scale.SHELF_PX
    assert Levels(story, 900.0).shelf == season_scale.MOST_SHELF_PX


def test_barrels_share_a_row_until_two_lots_overlap(qtbot):
    story = samples.season()
    assert [row.name for row in vessel_rows(story)] == ["T1", "T2", "C1", "C2", "B1–B6"]
    start = samples.TIME.instant(date(2025, 1, 10), 17)
    other = VesselBar("25-99A", "B5", start, start + 3600)
    rows = vessel_rows(replace(story, vessel_bars=(*story.vessel_bars, other)))
    assert [row.name for row in rows] == ["T1", "T2", "C1", "C2", "B1–B6", ""]
    assert [len(bars) for row in rows[4:] for bars in row.bars] == [2, 4, 1]


@given(st.lists(st.tuples(st.floats(0, 100), st.floats(0, 30)), max_size=30), st.floats(0, 5))
def test_things_on_a_lane_never_touch(spans, gap):
    things = [(start, start + long, (start, start + long)) for start, long in spans]
    lanes = packed(things, gap)
    assert sorted(thing for lane in lanes for thing in lane) == sorted(thing for *_, thing in things)
    for lane in lanes:
        assert all(a[1] + gap <= b[0] for a, b in pairwise(lane))


@given(st.lists(st.tuples(st.integers(0, 60), st.integers(1, 30)), max_size=6))
def test_an_outline_leaves_out_just_what_neighbours_cover(taken):
    covered = [(a, a + wide) for a, wide in taken]
    left = boards._without(10, 50, covered)
    inside = {x for x in range(10, 50) if not any(a <= x < b for a, b in covered)}
    assert {x for a, b in left for x in range(int(a), int(b))} == inside


def test_days_and_places_go_both_ways(sheet):
    _, days, _ = sheet
    for n in range(0, 120, 7):
        day = samples.FIRST + timedelta(days=n)
        assert days.day_at(days.x(day) + 1) == day
    noon = samples.TIME.instant(date(2025, 1, 14), 12)
    assert days.x_at(noon) == days.x(date(2025, 1, 14)) + 13
    assert days.thread == days.x(date(2025, 1, 15))


def test_a_plan_is_written_where_nothing_lies_already(sheet):
    story, days, levels = sheet
    found = boards.stacks(story.boards, days, levels)
    plan = next(s for s in found if s.first.lot == "25-17N" and s.places == ["6"])
    assert plan.shelves[0].left < plan.shelves[0].clear == days.x(date(2025, 2, 2))  # 25-12A may lie there till 1 Feb
    free = next(s for s in found if s.first.lot == "25-16W" and s.places == ["9", "10", "11"])
    assert all(shelf.clear == shelf.left for shelf in free.shelves)
