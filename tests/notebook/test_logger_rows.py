"""A logger's rows go in once, whole or not at all, and come back by time."""

from __future__ import annotations

import dataclasses
from pathlib import Path

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from farmdesk.notebook.logger_rows import PIECE_N, tidy
from farmdesk.notebook.season_file import SeasonFile
from farmdesk.notebook.verify import verify
from farmdesk.picture.entries import Strike
from tests.notebook.made import by_hand, day, entry, logger_entry, season


def rows(first: int, n: int) -> tuple[np.ndarray, np.ndarray]:
    at = 1_736_000_000 + 60 * np.arange(first, first + n)
    return at, np.round(20 + 3 * np.sin(at / 9000), 2)


def test_rows_come_back_as_float64_by_time(tmp_path: Path) -> None:
    at, values = rows(0, 3 * PIECE_N + 17)
    told: list[int] = []
    one = logger_entry()
    with season(tmp_path, 5) as file:
        assert file.append_logger(one, at, values, lambda n: not told.append(n)) == len(at)
        assert told == [PIECE_N, 2 * PIECE_N, 3 * PIECE_N, 3 * PIECE_N + 17]
        back_at, back = file.logger_rows([one.id])
        assert back_at.dtype == back.dtype == np.float64
        assert back_at.flags.c_contiguous
        assert back.flags.c_contiguous
        np.testing.assert_array_equal(back_at, at)
        np.testing.assert_array_equal(back, values)
        assert file.entries()[-1] == one
    assert verify(file.path) == []


def test_a_file_read_twice_adds_nothing(tmp_path: Path) -> None:
    with season(tmp_path) as file:
        first = logger_entry()
        assert file.append_logger(first, *rows(0, 500)) == 500
        assert file.append_logger(logger_entry(), *rows(0, 500)) == 0
        assert file.append_logger(logger_entry(), *rows(100, 50)) == 0
        assert file.entries() == [first]


def test_a_growing_file_adds_its_tail_and_a_gap_is_filled(tmp_path: Path) -> None:
    ids = []
    with season(tmp_path) as file:
        for part in (rows(0, 100), rows(150, 50), rows(0, 300)):
            one = logger_entry()
            ids.append(one.id)
            file.append_logger(one, *part)
        assert [len(file.logger_rows([one])[0]) for one in ids] == [100, 50, 150]
        at, values = file.logger_rows(ids)
        np.testing.assert_array_equal(at, rows(0, 300)[0])
        np.testing.assert_array_equal(values, rows(0, 300)[1])
    assert verify(file.path) == []


def test_another_logger_lot_place_or_quantity_is_another_row(tmp_path: Path) -> None:
    with season(tmp_path) as file:
        one = logger_entry()
        others = [logger_entry("L2"), logger_entry(lot="25-2W"), logger_entry(place="1")]
        others.append(dataclasses.replace(logger_entry(), body=dataclasses.replace(one.body, quantity="air_c")))
        for each in (one, *others):
            assert file.append_logger(each, *rows(0, 10)) == 10
        assert len(file.logger_rows([one.id, others[0].id])[0]) == 10  # each instant once
        assert len(file.logger_rows([])[0]) == 0
        assert len(file.logger_rows([day(1).id])[1]) == 0


def test_the_rows_of_a_struck_entry_do_not_count_as_known(tmp_path: Path) -> None:
    with season(tmp_path) as file:
        wrong, again = logger_entry(), logger_entry()
        file.append_logger(wrong, *rows(0, 100))
        assert file.logger_last_utc_s("L1") == rows(99, 1)[0][0]
        strike = entry(Strike(wrong.id, "the clock of the logger was wrong"))
        file.append([strike])
        assert file.logger_last_utc_s("L1") is None
        assert file.append_logger(again, *rows(0, 100)) == 100
        file.append([entry(Strike(strike.id))])
        assert len(file.logger_rows([wrong.id, again.id])[0]) == 100  # both live again, no instant twice
        assert file.logger_last_utc_s("L2") is None


def test_stopped_half_way_nothing_is_written(tmp_path: Path) -> None:
    with season(tmp_path, 5) as file:
        assert file.append_logger(logger_entry(), *rows(0, 5 * PIECE_N), lambda n: n < 3 * PIECE_N) == 0
        assert len(file.entries()) == 5
        assert file.logger_last_utc_s("L1") is None
        with pytest.raises(KeyError):
            file.append_logger(logger_entry(), *rows(0, 5 * PIECE_N), lambda n: {}["trouble in the caller"])
        assert len(file.entries()) == 5
        assert file.append_logger(logger_entry(), *rows(0, 50), lambda n: True) == 50
    assert verify(file.path) == []


def test_only_a_logger_entry_holds_rows(tmp_path: Path) -> None:
    with season(tmp_path) as file:
        with pytest.raises(TypeError):
            file.append_logger(day(1), *rows(0, 3))
        with pytest.raises(ValueError):
            file.append_logger(logger_entry(), rows(0, 3)[0], rows(0, 4)[1])
        assert file.append_logger(logger_entry(), *rows(0, 0)) == 0
        assert file.entries() == []


@given(st.lists(st.tuples(st.integers(0, 40), st.floats()), max_size=30))
def test_tidy_rows_rise_and_hold_numbers(told: list[tuple[int, float]]) -> None:
    at, values = tidy(np.array([row[0] for row in told], np.int64), np.array([row[1] for row in told], np.float64))
    assert (np.diff(at) > 0).all()
    first = {}
    for when, value in told:
        if np.isfinite(value):
            first.setdefault(when, value)
    assert dict(zip(at.tolist(), values.tolist(), strict=True)) == first


@settings(max_examples=20, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(parts=st.lists(st.lists(st.integers(0, 60), max_size=20), min_size=1, max_size=6), data=st.data())
def test_whatever_is_read_again_no_instant_is_doubled(
    parts: list[list[int]], data: st.DataObject, tmp_path_factory: pytest.TempPathFactory
) -> None:
    with season(tmp_path_factory.mktemp("rows")) as file:
        ids, known = [], set()
        for part in parts:
            one = logger_entry()
            added = file.append_logger(one, np.array(part, np.int64), np.array(part, np.float64) / 7)
            assert added == len(set(part) - known)
            known |= set(part)
            if added:
                ids.append(one.id)
        assert [one.id for one in file.entries()] == ids
        at, values = file.logger_rows(ids)
        assert at.tolist() == sorted(known)
        assert values.tolist() == [when / 7 for when in sorted(known)]


def test_a_row_changed_by_hand_is_found(tmp_path: Path) -> None:
    with season(tmp_path, 3) as file:
        one = logger_entry()
        file.append_logger(one, *rows(0, 200))
    for sql in (
        "UPDATE logger_row SET value = value + 0.01 WHERE at_utc_s = 1736000060",
        "DELETE FROM logger_row WHERE at_utc_s = 1736000120",
    ):
        with by_hand(file.path) as raw:
            raw.execute(sql)
        (problem,) = verify(file.path)
        assert problem.where == one.id
        assert str(problem.text).startswith("Row 4, written")
    with SeasonFile.open(file.path) as again:
        assert len(again.logger_rows([one.id])[0]) == 199
