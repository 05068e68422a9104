"""What own lots teach, and the words for it."""

from __future__ import annotations

import numpy as np
import pytest

from farmdesk.ahead.learning import (
    Layers,
    LotTaught,
    own_ratio,
    prior_for,
    row_of,
    stretch_of,
    surprise_of,
    taught_alone,
)
from farmdesk.ahead.range import ahead_of
from farmdesk.errors import NotPossible
from farmdesk.text import N_

LAYERS = Layers(np.array([0.24]), np.array([0.15]), np.array([0.20]))
SETTINGS = np.array([0.0])


def lot(off: float, key: str = "washed/raised", sd: float = 0.05, surprise: float | None = None) -> LotTaught:
    return LotTaught(key, np.array([off]), np.array([[sd**2]]), surprise)


def test_without_lots_the_settings_stand_with_all_three_layers() -> None:
    prior = prior_for("washed/raised", SETTINGS, LAYERS, [])
    assert prior.mean == pytest.approx(SETTINGS)
    assert np.sqrt(prior.covariance[0, 0]) == pytest.approx(0.347, abs=0.001)
    assert "settings" in str(prior.says)


def test_each_lot_moves_it_nearer_and_makes_it_surer() -> None:
    means, spreads = [], []
    for n in (1, 3, 8, 20):
        prior = prior_for("washed/raised", SETTINGS, LAYERS, [lot(0.5)] * n)
        means.append(float(prior.mean[0]))
        spreads.append(float(np.sqrt(prior.covariance[0, 0])))
        assert prior.own_n == n
        assert ("one own lot" if n == 1 else f"{n} own lots") in str(prior.says)
    assert means == sorted(means)
    assert spreads == sorted(spreads, reverse=True)
    assert means[2] > 0.45
    assert spreads[2] < 0.22


def test_one_layer_alone_is_the_textbooks_shrinkage() -> None:
    flat = Layers(np.array([0.3]), np.array([1e-9]), np.array([1e-9]))
    offs, sd = [0.4, 0.1, 0.3], 0.2
    got = prior_for("a/b", SETTINGS, flat, [lot(x, "a/b", sd) for x in offs])
    weight = 3 / sd**2 / (3 / sd**2 + 1 / 0.3**2)
    assert got.mean[0] == pytest.approx(weight * np.mean(offs), rel=1e-3)
    assert got.covariance[0, 0] == pytest.approx(1 / (3 / sd**2 + 1 / 0.3**2), rel=1e-3)


def test_other_methods_lend_what_they_say_of_the_farm_and_the_surface() -> None:
    same_bed, elsewhere = (
        float(prior_for("natural/raised", SETTINGS, LAYERS, [lot(0.5, key)] * 8).mean[0])
        for key in ("washed/raised", "washed/patio")
    )
    own = float(prior_for("natural/raised", SETTINGS, LAYERS, [lot(0.5, "natural/raised")] * 8).mean[0])
    assert 0.2 < elsewhere < same_bed < own
    assert "other methods" in str(prior_for("natural/raised", SETTINGS, LAYERS, [lot(0.5)]).says)


def test_a_steady_farm_learns_that_it_is_steady_and_a_restless_one_that_it_is_not() -> None:
    rng = np.random.default_rng(5)
    steady, restless = (
        prior_for("washed/raised", SETTINGS, LAYERS, [lot(float(x)) for x in 0.3 + sd * rng.normal(size=16)])
        for sd in (0.05, 0.5)
    )
    assert np.sqrt(steady.covariance[0, 0]) < 0.15
    assert np.sqrt(restless.covariance[0, 0]) > 0.3


def test_one_odd_lot_does_not_run_away_with_it() -> None:
    usual = [lot(0.1)] * 6
    before = float(prior_for("washed/raised", SETTINGS, LAYERS, usual).mean[0])
    after = float(prior_for("washed/raised", SETTINGS, LAYERS, [*usual, lot(4.0)]).mean[0])
    assert after - before < 0.25


def test_a_lot_speaks_for_itself_once_the_prior_is_taken_out() -> None:
    data, prior_sd = np.array([[4.0]]), np.array([[2.0]])  # precision of the data, in prior units
    covariance = np.linalg.inv(data + 1.0)
    scaled = covariance @ data @ np.array([0.5])
    alone = taught_alone("a/b", scaled, covariance, prior_sd)
    assert alone.off[0] == pytest.approx(0.5 * 2.0)
    assert alone.covariance[0, 0] == pytest.approx(2.0**2 / 4.0)


def test_own_ratios_need_five_lots() -> None:
    few = own_ratio([0.2, 0.21, 0.19], 0.18, 0.02)
    assert (few.middle, few.spread_sd, few.own_n) == (0.18, 0.02, 3)
    assert "settings" in str(few.says)
    many = own_ratio([0.198, 0.199, 0.198, 0.200, 0.199, float("nan"), 0.5], 0.18, 0.02)
    assert many.middle == pytest.approx(0.199)
    assert many.spread_sd == pytest.approx(1.4826 * 0.001, rel=1e-3)
    assert "6 own lots" in str(many.says)


def test_surprises_stretch_ranges_after_ten_ends() -> None:
    asked = ahead_of(np.linspace(0.0, 100.0, 101), N_("ahead", "There is nothing to count a range from."), "tray")
    assert surprise_of(asked, 90.0) == pytest.approx(1.0)
    assert surprise_of(asked, 30.0) == pytest.approx(0.5)
    open_end = ahead_of(np.array([1.0, 2.0, np.inf]), asked.rests_on, "tray")
    assert surprise_of(open_end, 3.0) is None
    wild = [lot(0.0, surprise=s) for s in (0.2, 0.5, 0.9, 1.1, 1.8, 2.0, 2.2, 2.2, 2.2, 2.2)]
    assert stretch_of(wild[:9], "washed/raised") == 1.0
    assert stretch_of(wild, "washed/roof") == pytest.approx(2.2 ** (10 / 15))
    assert stretch_of(wild, "natural/raised") == 1.0
    assert stretch_of([lot(0.0, surprise=0.5)] * 12, "washed/raised") < 0.7


def test_tables_answer_and_refuse() -> None:
    assert row_of("drying_defaults", "washed")["start_wb_frac"] == 0.53
    with pytest.raises(NotPossible):
        row_of("drying_defaults", "wet hulled")
    with pytest.raises(NotPossible):
        row_of("drying_defaults", "source")
