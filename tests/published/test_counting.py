"""Ranges and tests against SciPy and printed tables."""

from __future__ import annotations

import numpy as np
import pytest
from scipy import stats

from farmdesk.science import counting as c


@pytest.mark.parametrize(
    ("count", "low", "high"),
    [(0, 0.0, 3.689), (1, 0.0253, 5.572), (5, 1.623, 11.668), (8, 3.454, 15.763), (12, 6.201, 20.962)],
)
def test_poisson_ranges_of_garwood(count: int, low: float, high: float) -> None:
    # Garwood 1936, Biometrika 28:437-442, table as printed in every count handbook
    found = c.poisson_range(count)
    assert (found.low, found.high) == (pytest.approx(low, abs=1e-3), pytest.approx(high, abs=1e-3))


def test_poisson_range_is_the_chi_square_form() -> None:
    for count in range(1, 40):
        found = c.poisson_range(count, 0.9)
        assert found.low == pytest.approx(stats.chi2.ppf(0.05, 2 * count) / 2.0)
        assert found.high == pytest.approx(stats.chi2.ppf(0.95, 2 * count + 2) / 2.0)


@pytest.mark.parametrize(("hits", "tries"), [(0, 10), (1, 10), (56, 60), (95, 100), (10, 10), (400, 1000)])
def test_wilson_is_scipys(hits: int, tries: int) -> None:
    theirs = stats.binomtest(hits, tries).proportion_ci(0.95, method="wilson")
    ours = c.wilson(hits, tries)
    assert (ours.low, ours.high) == (pytest.approx(theirs.low, abs=1e-12), pytest.approx(theirs.high, abs=1e-12))


def test_fifty_six_of_sixty_dryings() -> None:
    # Oliveros et al. 2010: 56 of 60 dryings ended within 10 to 12 %; the range is 84 to 97 or 98 %
    found = c.wilson(56, 60)
    assert found.low == pytest.approx(0.84, abs=0.005)
    assert found.high == pytest.approx(0.975, abs=0.005)


@pytest.mark.parametrize(("freedom", "factor"), [(1, 12.706), (2, 4.303), (4, 2.776), (30, 2.042)])
def test_students_factors(freedom: int, factor: float) -> None:
    # Student's t, two-sided 95 %, any printed table
    assert c.t_factor(freedom) == pytest.approx(factor, abs=5e-4)


@pytest.mark.parametrize("seed", range(6))
def test_theil_sen_is_scipys(seed: int) -> None:
    random = np.random.default_rng(seed)
    x = random.normal(size=15 + seed) if seed % 2 else random.integers(0, 6, 15 + seed).astype(float)
    y = np.round(0.7 * x + random.normal(size=len(x)), seed % 3)
    theirs = stats.theilslopes(y, x, 0.95)
    ours = c.theil_sen(x, y)
    assert ours.value == pytest.approx(theirs.slope)
    assert (ours.low, ours.high) == (pytest.approx(theirs.low_slope), pytest.approx(theirs.high_slope))


def test_the_example_of_sen() -> None:
    # Sen 1968, J. Am. Stat. Assoc. 63:1379-1389, section 6: slope 4, range 26/7 to 35/8 at 93 %
    x, y = [1.0, 2.0, 3.0, 4.0, 10.0, 12.0, 18.0], [9.0, 15.0, 19.0, 20.0, 45.0, 55.0, 78.0]
    assert c.theil_sen(x, y).value == pytest.approx(4.0)
    found = c.theil_sen(x, y, 0.93)
    assert (found.low, found.high) == (pytest.approx(26 / 7), pytest.approx(35 / 8))


@pytest.mark.parametrize("seed", range(4))
def test_permutation_is_scipys(seed: int) -> None:
    random = np.random.default_rng(seed)
    a, b = np.round(random.normal(1.0, 1.0, 4 + seed), 1), np.round(random.normal(0.0, 1.0, 6), 1)
    theirs = stats.permutation_test(
        (a, b), lambda p, q, axis: np.mean(p, axis=axis) - np.mean(q, axis=axis), vectorized=True, n_resamples=np.inf
    )
    ours = c.permutation(a.tolist(), b.tolist())
    assert ours.exact
    share = np.abs(theirs.null_distribution) >= abs(theirs.statistic) - 1e-12
    assert ours.p_frac == pytest.approx(share.mean())
    assert ours.difference == pytest.approx(theirs.statistic)


def test_bootstrap_covers_like_scipys() -> None:
    random = np.random.default_rng(5)
    a, b = random.normal(2.0, 1.0, 30), random.normal(0.0, 1.0, 40)
    theirs = stats.bootstrap(
        (a, b),
        lambda p, q, axis: np.mean(p, axis=axis) - np.mean(q, axis=axis),
        method="percentile",
        vectorized=True,
        random_state=1,
    ).confidence_interval
    ours = c.bootstrap_difference(a.tolist(), b.tolist(), np.mean)
    assert (ours.low, ours.high) == (pytest.approx(theirs.low, abs=0.03), pytest.approx(theirs.high, abs=0.03))


def test_ninety_five_ripe_of_a_hundred() -> None:
    # Wilson 1927, as handbooks print it: 88.8 to 97.8 %
    found = c.wilson(95, 100)
    assert (100.0 * found.low, 100.0 * found.high) == (pytest.approx(88.8, abs=0.05), pytest.approx(97.8, abs=0.05))
