"""Ids rise, whatever the clock does, and carry the computer they were made on."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from farmdesk.notebook import ids
from farmdesk.notebook.ids import computer_name, new_id, rise_above
from tests.conftest import Hands


@pytest.fixture(autouse=True)
def fresh(monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    monkeypatch.setattr(ids, "_last_ms", 0)
    monkeypatch.setattr(ids, "_count", 0)
    return


def test_ids_are_unique_and_rise_while_the_clock_stands(at: Hands) -> None:
    made = [new_id() for _ in range(40_000)]
    assert made == sorted(set(made))
    assert {len(one) for one in made} == {20}


def test_ids_rise_while_the_clock_is_set_back(at: Hands) -> None:
    first = new_id()
    at.forward(-86_400)
    second = new_id()
    at.forward(2 * 86_400)
    assert first < second < new_id()


def test_the_time_can_be_read_back(at: Hands) -> None:
    at(1_736_856_000)
    number = 0
    for digit in new_id()[:10]:
        number = number * 32 + ids.DIGITS.index(digit)
    assert number == 1_736_856_000_000


def test_ids_rise_above_the_newest_of_a_file_from_a_clock_ahead(at: Hands) -> None:
    ahead = "7" + "Z" * 19
    rise_above("01M890QQ2F00067QJK1C")
    assert new_id() > "01M890QQ2F00067QJK1C"
    rise_above(ahead)
    assert new_id() > ahead
    rise_above("not an id")
    rise_above("")
    assert new_id() > ahead


def test_two_computers_make_different_ids(at: Hands, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(ids, "computer_name", lambda: "office")
    office = new_id()
    monkeypatch.setattr(ids, "computer_name", lambda: "store")
    assert office[13:16] != new_id()[13:16]


def test_a_computer_has_a_name(monkeypatch: pytest.MonkeyPatch) -> None:
    assert computer_name()
    monkeypatch.setattr("platform.node", lambda: "")
    assert computer_name()
