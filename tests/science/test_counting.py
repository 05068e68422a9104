"""Few numbers: ranges that cover, refusals, and a method that gets no credit."""

from __future__ import annotations

import subprocess
import sys
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk.errors import NotPossible
from farmdesk.science import counting as c
from farmdesk.text import N_

FACTORS = {"block": N_("counting", "blocks"), "month": N_("counting", "months")}
SEASON = {
    # code: (method, cup, blocks, month)
    "25-01W": ("W", 83, "E", "Nov"),
    "25-02W": ("W", 84, "D", "Nov"),
    "25-04W": ("W", 85, "C", "Dec"),
    "25-06W": ("W", 85, "D", "Dec"),
    "25-07X": ("X", 87, "F", "Dec"),
    "25-08W": ("W", 85, "C", "Dec"),
    "25-10W": ("W", 84, "E", "Dec"),
    "25-11W": ("W", 85, "D", "Dec"),
    "25-13W": ("W", 86, "C", "Jan"),
    "25-14X": ("X", 87, "F", "Jan"),
    "25-16W": ("W", 85, "D", "Jan"),
    "25-18W": ("W", 85, "C", "Jan"),
    "25-20W": ("W", 84, "E", "Jan"),
    "25-21X": ("X", 90, "B", "Feb"),
    "25-22W": ("W", 85, "C", "Feb"),
    "25-24W": ("W", 83, "FA", "Feb"),
}


def lots(changed: dict[str, str] | None = None) -> list[c.LotOf]:
    return [
        c.LotOf(
            code,
            method,
            float(cup),
            {"block": frozenset((changed or {}).get(code, blocks)), "month": frozenset([month])},
        )
        for code, (method, cup, blocks, month) in SEASON.items()
    ]


def test_the_season_review_refuses_to_credit_the_method() -> None:
    found = c.compare(lots(), "X", "W", FACTORS)
    assert (found.first_n, found.second_n, found.first_median, found.second_median) == (3, 13, 87.0, 85.0)
    assert found.chance.difference == pytest.approx(3.5, abs=0.05)
    assert (found.chance.extreme_n, found.chance.arrangements_n, found.chance.exact) == (1, 560, True)
    assert not found.credit
    assert [str(doubt) for doubt in found.doubts] == [
        "X (lots: 3): under 4 is too few to say.",
        "Every X lot (lots: 3) comes from blocks B, F; from B no W; from F only 25-24W of W, in part. "
        "The difference cannot be given to X.",
    ]


def test_a_split_pick_would_let_the_method_be_judged() -> None:
    paired = lots({"25-07X": "C", "25-14X": "D", "25-21X": "E"})
    paired.append(c.LotOf("25-30X", "X", 88.0, {"block": frozenset("C"), "month": frozenset(["Jan"])}))
    found = c.compare(paired, "X", "W", FACTORS)
    assert found.doubts == ()
    assert found.credit


def test_lots_of_two_blocks_meet_nobody() -> None:
    mixed = lots({"25-07X": "CD", "25-14X": "CD", "25-21X": "CE"})
    assert c.confounded(mixed, "X", "W", "block") is not None


def test_methods_that_meet_in_one_block_of_many_are_still_confounded() -> None:
    one_met = lots({"25-07X": "C"})
    sentence = str(c.confounded(one_met, "X", "W", "block"))
    assert "from C only 25-04W, 25-08W, 25-13W, 25-18W, 25-22W of W" in sentence
    assert c.confounded(lots(), "X", "W", "month") is None


def test_lots_without_the_label_met_nobody() -> None:
    bare = [c.LotOf(f"{g}{i}", g, float(i), {}) for g in "XW" for i in range(5)]
    assert "is written down for the X lots" in str(c.confounded(bare, "X", "W", "block", FACTORS["block"]))
    named = [c.LotOf(f"N{i}", "N", float(i), {"block": frozenset("A")}) for i in range(5)]
    assert c.confounded([*bare, *named], "N", "W", "block") is not None
    empty = [c.LotOf(f"{g}{i}", g, float(i), {"block": frozenset()}) for g in "XW" for i in range(5)]
    assert c.confounded(empty, "X", "W", "block") is not None


def test_a_difference_within_chance_gets_no_credit() -> None:
    same = [c.LotOf(f"{g}{i}", g, float(i % 3), {"block": frozenset("A")}) for g in "XW" for i in range(5)]
    found = c.compare(same, "X", "W", {"block": FACTORS["block"]})
    assert not found.credit
    assert "Chance alone" in str(found.doubts[0])


def test_four_lots_are_enough_to_speak() -> None:
    assert c.too_few("X", 3) is not None
    assert c.too_few("X", 4) is None


@given(st.integers(0, 500), st.integers(1, 500), st.floats(0.5, 0.99))
def test_a_share_lies_in_its_range(hits: int, more: int, level: float) -> None:
    found = c.wilson(hits, hits + more, level)
    assert 0.0 <= found.low <= found.value <= found.high <= 1.0
    mirror = c.wilson(more, hits + more, level)
    assert mirror.low == pytest.approx(1.0 - found.high, abs=1e-12)


@given(st.integers(0, 2000))
def test_a_count_lies_in_its_range_and_more_is_never_less(count: int) -> None:
    found, next_one = c.poisson_range(count), c.poisson_range(count + 1)
    assert found.low <= count < found.high
    assert found.low < next_one.low
    assert found.high < next_one.high


def test_a_count_of_five_cannot_prove_under_five() -> None:
    assert c.poisson_range(5).high > 11.0


@given(st.lists(st.integers(-50, 50), min_size=3, max_size=25, unique=True), st.floats(-5, 5), st.floats(-9, 9))
def test_a_straight_line_has_its_own_slope(x: list[int], slope: float, level: float) -> None:
    found = c.theil_sen([float(v) for v in x], [slope * v + level for v in x])
    assert (found.value, found.low, found.high) == (pytest.approx(slope, abs=1e-9),) * 3


def test_one_wild_point_does_not_turn_the_slope() -> None:
    x = np.arange(12.0)
    y = 0.5 * x
    y[7] = 400.0
    assert c.theil_sen(x, y).value == pytest.approx(0.5)


@given(st.lists(st.integers(0, 20), min_size=1, max_size=6), st.lists(st.integers(0, 20), min_size=1, max_size=6))
def test_a_permutation_share_is_a_share_and_the_same_from_both_sides(a: list[int], b: list[int]) -> None:
    found, turned = c.permutation(a, b), c.permutation(b, a)
    assert 1 <= found.extreme_n <= found.arrangements_n
    assert found.exact
    assert (turned.difference, turned.p_frac) == (pytest.approx(-found.difference), pytest.approx(found.p_frac))


def test_equal_groups_are_parted_by_chance_always() -> None:
    assert c.permutation([85.0, 85.0], [85.0, 85.0, 85.0]).p_frac == 1.0


def test_large_groups_are_drawn_with_a_fixed_seed() -> None:
    random = np.random.default_rng(1)
    a, b = random.normal(0.0, 1.0, 30).tolist(), random.normal(0.9, 1.0, 30).tolist()
    first, again = c.permutation(a, b), c.permutation(a, b)
    assert not first.exact
    assert first == again
    assert 0.0 < first.p_frac < 0.05


def test_bootstrap_says_the_same_twice_and_holds_the_seen_difference() -> None:
    a, b = [87.0, 87.0, 90.0, 88.0], [83.0, 84.0, 85.0, 85.0, 86.0]
    first = c.bootstrap_difference(a, b)
    assert first == c.bootstrap_difference(a, b)
    assert first.value == 2.5
    assert first.low <= first.value <= first.high
    assert c.bootstrap_difference(a, b, np.mean).value == pytest.approx(3.4)


@pytest.mark.parametrize(
    "call",
    [
        lambda: c.wilson(1, 0),
        lambda: c.wilson(5, 4),
        lambda: c.wilson(-1, 4),
        lambda: c.wilson(1, 4, 1.0),
        lambda: c.poisson_range(-1),
        lambda: c.poisson_range(1.5),  # type: ignore[arg-type]
        lambda: c.poisson_range(float("nan")),  # type: ignore[arg-type]
        lambda: c.poisson_range(float("inf")),  # type: ignore[arg-type]
        lambda: c.theil_sen(np.ones((3, 3)), np.ones((3, 3))),
        lambda: c.theil_sen(["a", "b", "c"], [1.0, 2.0, 3.0]),  # type: ignore[list-item]
        lambda: c.permutation([1e308, 1e308], [-1e308, 1e308]),
        lambda: c.permutation(np.ones((2, 2)), [1.0]),  # type: ignore[arg-type]
        lambda: c.bootstrap_difference(3.0, [1.0]),  # type: ignore[arg-type]
        lambda: c.t_factor(0),
        lambda: c.theil_sen([1.0, 2.0], [1.0, 2.0]),
        lambda: c.theil_sen([1.0, 1.0, 1.0], [1.0, 2.0, 3.0]),
        lambda: c.theil_sen([1.0, 2.0, float("nan")], [1.0, 2.0, 3.0]),
        lambda: c.permutation([], [1.0]),
        lambda: c.bootstrap_difference([1.0], [float("nan")]),
        lambda: c.confounded(lots(), "X", "N", "block"),
    ],
)
def test_what_cannot_be_counted_is_refused(call: Any) -> None:
    with pytest.raises(NotPossible):
        call()


def test_scipy_sleeps_until_it_is_needed() -> None:
    code = (
        "import sys\n"
        "from farmdesk.science import air, counting, defects, hulling, isotherms, moisture, sieves\n"
        "counting.wilson(3, 10); counting.permutation([1, 2], [3]); defects.standards()\n"
        "sys.exit('scipy' in sys.modules)"
    )
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0
