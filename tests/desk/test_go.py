"""What is typed anywhere leads to the place that was meant."""

from __future__ import annotations

from datetime import date

import pytest

from farmdesk.desk.go import Known, Target, begins, find

KNOWN = Known(
    ("25-03N", "25-12A", "25-13W", "25-14X"),
    ("7", "12", "17", "P1"),
    ("T1", "C1"),
    {"Today": "today", "Yard": "yard", "Season": "season", "Samples & sales": "samples", "Store": "store"},
    "25",
)
TODAY = date(2025, 1, 21)


@pytest.mark.parametrize(
    ("typed", "target"),
    [
        ("25-13W", Target("lot", "25-13W")),
        ("25-13", Target("lot", "25-13W")),
        ("25-13w", Target("lot", "25-13W")),
        ("13", Target("lot", "25-13W")),
        ("13w", Target("lot", "25-13W")),
        ("3", Target("lot", "25-03N")),
        ("b7", Target("bed", "7")),
        ("B 17", Target("bed", "17")),
        ("p1", Target("bed", "P1")),
        ("t1", Target("vessel", "T1")),
        ("d14", Target("day", "2025-01-14")),
        ("d14/2", Target("day", "2025-02-14")),
        ("d30 12", Target("day", "2024-12-30")),
        ("ya", Target("page", "yard")),
        ("YA", Target("page", "yard")),
        ("sam", Target("page", "samples")),
        ("sto", Target("page", "store")),
    ],
)
def test_it_leads_there(typed, target):
    assert find(typed, KNOWN, TODAY)[0][1] == target


@pytest.mark.parametrize("typed", ["", " ", "25-99", "b99", "d32", "d0", "d31/2", "qq", "99", "-"])
def test_it_leads_nowhere(typed):
    assert find(typed, KNOWN, TODAY) == []


def test_a_code_and_a_number_are_a_reading():
    assert find("25-13 11,8", KNOWN, TODAY)[0][1].kind == "reading"


def test_letters_that_may_begin_a_place_wait():
    assert begins("y", KNOWN)
    assert begins("b", KNOWN)
    assert begins("2", KNOWN)
    assert not begins("r", KNOWN)
