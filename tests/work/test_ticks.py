"""Marks of an axis: on the farm's midnights and hours, in the reader's words, never too many."""

from __future__ import annotations

import itertools
import os
import time as clock_of_the_computer
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk.clock import DAY_S, HOUR_S, FarmTime
from farmdesk.text import ENGLISH, Words
from farmdesk.work.ticks import number_ticks, time_ticks

FARM = FarmTime("America/Guatemala")
CHANGING = FarmTime("America/Asuncion")  # turns its clocks on 6 October 2024
SPANISH = Words(lambda context, english: {"Jan": "ene", "Feb": "feb"}.get(english, ""), ",", ".", "es")


def test_days_stand_on_the_farms_midnights_and_name_the_month_once():
    low, high = FARM.instant(date(2025, 1, 8)), FARM.instant(date(2025, 1, 21), 12)
    ticks = time_ticks(FARM, ENGLISH, low, high, 7)
    assert [label for _, label in ticks] == ["9 Jan", "11", "13", "15", "17", "19", "21"]
    assert all(FARM.local(at).hour == 0 for at, _ in ticks)


def test_a_new_month_is_named_in_the_readers_language():
    low, high = FARM.instant(date(2025, 1, 29)), FARM.instant(date(2025, 2, 3))
    assert [label for _, label in time_ticks(FARM, SPANISH, low, high, 7)] == ["29 ene", "30", "31", "1 feb", "2", "3"]


def test_hours_and_midnight_with_its_day():
    low, high = FARM.instant(date(2025, 1, 6), 16), FARM.instant(date(2025, 1, 7), 8)
    assert [label for _, label in time_ticks(FARM, ENGLISH, low, high, 6)] == ["18", "21", "7 Jan", "03", "06"]


def test_the_computers_zone_does_not_matter(monkeypatch):
    low, high = FARM.instant(date(2025, 1, 6), 16), FARM.instant(date(2025, 1, 7), 8)
    here = time_ticks(FARM, ENGLISH, low, high, 6)
    monkeypatch.setenv("TZ", "Europe/Berlin")
    clock_of_the_computer.tzset()
    try:
        assert time_ticks(FARM, ENGLISH, low, high, 6) == here
    finally:
        monkeypatch.undo()
        clock_of_the_computer.tzset()
    assert os.environ.get("TZ") != "Europe/Berlin"


def test_the_night_the_clocks_turn_has_each_hour_once_and_midnights_stay_midnights():
    low = CHANGING.instant(date(2024, 10, 5), 18)
    hours = time_ticks(CHANGING, ENGLISH, low, low + 14 * HOUR_S, 20)
    assert len({at for at, _ in hours}) == len(hours)
    assert [b - a for (a, _), (b, _) in itertools.pairwise(hours)] == [HOUR_S] * (len(hours) - 1)
    days = time_ticks(CHANGING, ENGLISH, CHANGING.instant(date(2024, 10, 3)), CHANGING.instant(date(2024, 10, 9)), 7)
    assert [CHANGING.local(at).day for at, _ in days] == [3, 4, 5, 6, 7, 8, 9]


@given(st.floats(1.7e9, 1.8e9), st.floats(60, 400 * DAY_S), st.integers(2, 12))
def test_marks_are_in_order_inside_and_few(low, span, most_n):
    ticks = [at for at, _ in time_ticks(FARM, ENGLISH, low, low + span, most_n)]
    assert ticks == sorted(set(ticks))
    assert all(low <= at <= low + span for at in ticks)
    assert len(ticks) <= most_n + 2


@pytest.mark.parametrize(
    ("low", "high", "most_n", "labels"),
    [(8, 57, 5, ["10", "20", "30", "40", "50"]), (4.0, 6.0, 5, ["4.0", "4.5", "5.0", "5.5", "6.0"]), (3, 3, 5, [])],
)
def test_numbers_are_round(low, high, most_n, labels):
    assert [label for _, label in number_ticks(ENGLISH, low, high, most_n)] == labels


@given(st.floats(-1e6, 1e6), st.floats(1e-3, 1e6), st.integers(1, 12))
def test_numbers_are_inside_and_few(low, span, most_n):
    ticks = [at for at, _ in number_ticks(ENGLISH, low, low + span, most_n)]
    assert len(ticks) <= most_n + 1
    assert all(low - span * 1e-6 <= at <= low + span * (1 + 1e-6) for at in ticks)
