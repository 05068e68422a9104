"""Ferment sums against figures others have published."""

from __future__ import annotations

import numpy as np
import pytest

from farmdesk.ahead.ferment_fit import FermentLot, ferment_prior
from farmdesk.science.ferment import REDUCING_SUGAR, gompertz_end_h20, gompertz_ph, share_done_frac
from farmdesk.science.sugar import WATER_20_KG_L, specific_gravity_ratio
from farmdesk.science.thermal_time import LACTIC_RICH, MIXED, YEAST, rate_at_20_ratio, rate_frac


def typical(style: str, pitched: bool = False) -> np.ndarray:
    """Draws of the settings' curves, as rows p0, A, mu, lam."""
    prior = ferment_prior(FermentLot(style, 0.0, 4.5, pitched=pitched), wider=1.0)
    own = np.random.default_rng(6).multivariate_normal(prior.mean, prior.covariance, 4000)
    return np.column_stack([own[:, 0], np.exp(own[:, 1:])])


def test_sugar_left_after_twenty_hours() -> None:
    """Puerta 2013, Cenicafé 64(1):42-59: 15.9 % of the reducing sugar is gone at 20 h of 74."""
    assert share_done_frac(20.0, *REDUCING_SUGAR) == pytest.approx(0.159, abs=0.001)
    assert 0.45 < share_done_frac(46.0, *REDUCING_SUGAR) < 0.60  # "near half by 45 to 47 h"


def test_a_washed_tank_at_a_station_lies_inside_the_typical_range() -> None:
    """Peñuela-Martínez, Oliveros-Tascón, Sanz-Uribe 2010, Cenicafé 61(2):159-173: mucilage off after 15.0 to 16.3 h,
    from pH 5.0 to 3.3. The mucilage goes near pH 4.6 (Jackels et al.; four in ten farms' tanks about 20 °C).
    """
    curves = typical("washed")
    ends = gompertz_end_h20(4.6, *curves.T)
    low, high = np.quantile(ends, [0.1, 0.9], method="nearest")
    assert low < 15.0
    assert high > 16.3
    assert np.quantile(curves[:, 0], 0.05) < 5.0
    assert np.quantile(curves[:, 0] - curves[:, 1], 0.05) < 3.3


def test_whole_cherry_in_tanks_lies_inside_the_typical_range() -> None:
    """Zambrano-Díaz et al., Manglar (UN Tumbes): 21 to 25 °C, pH 5.10 at the start, 3.48 after 168 h."""
    curves = typical("extended")
    hours = 168.0 * float(rate_at_20_ratio(23.0))
    ph = gompertz_ph(hours, *curves.T)
    assert np.quantile(ph, 0.1) < 3.48 < np.quantile(ph, 0.9)
    assert abs(np.median(curves[:, 0]) - 5.10) < 0.05


def test_a_pitched_lot_washed_at_twelve_hours_is_no_outlier() -> None:
    """Revista Pakamuros 11(1):123-130, 2023: the best cup was washed at 12 h, pH 4.872, mucilage 21 °C."""
    ph = gompertz_ph(12.0 * float(rate_at_20_ratio(21.0)), *typical("washed", pitched=True).T)
    assert np.quantile(ph, 0.1) < 4.872 < np.quantile(ph, 0.9)


@pytest.mark.parametrize(("who", "low", "high"), [(MIXED, 2.66, 1.78), (YEAST, 2.40, 1.64), (LACTIC_RICH, 3.03, 2.28)])
def test_no_single_q10(who, low: float, high: float) -> None:
    """Cardinal temperatures of Salvadó et al. 2011 and Matejčeková et al. 2019, ten degrees apart."""
    assert rate_frac(25.0, who) / rate_frac(15.0, who) == pytest.approx(low, abs=0.01)
    assert rate_frac(30.0, who) / rate_frac(20.0, who) == pytest.approx(high, abs=0.01)


def test_a_trade_tale_of_two_tanks() -> None:
    """24 h at 16 °C came out well, 24 h at 26 °C over-fermented: 15.2 against 37 hours at 20 °C."""
    assert 24.0 * rate_at_20_ratio(16.0) == pytest.approx(15.2, abs=0.1)
    assert 24.0 * rate_at_20_ratio(26.0) == pytest.approx(37.0, abs=0.1)


@pytest.mark.parametrize(("height_m", "hours"), [(1000, 13.7), (1300, 15.8), (1600, 18.6), (1900, 22.6), (2200, 28.4)])
def test_eighteen_hours_up_the_mountain(height_m: float, hours: float) -> None:
    """Chaves and Jaramillo 1998, Cenicafé (from memory): T = 29.42 - 0.0061 m over the Colombian Andes."""
    assert 18.0 / rate_at_20_ratio(29.42 - 0.0061 * height_m) == pytest.approx(hours, abs=0.1)


@pytest.mark.parametrize(("brix", "pounds"), [(1, 8.354), (2, 8.387), (4, 8.452), (5, 8.486)])
def test_pounds_per_gallon(brix: float, pounds: float) -> None:
    """NBS Circular C440: weight of a US gallon of sugar solution in air; water 8.322 lb."""
    assert 8.322 * specific_gravity_ratio(float(brix)) == pytest.approx(pounds, abs=0.0006)


def test_the_cubic_in_common_use_runs_backwards_along_ours() -> None:
    brix = np.linspace(1.0, 30.0, 30)
    sg = specific_gravity_ratio(brix)
    assert 143.254 * sg**3 - 648.670 * sg**2 + 1125.805 * sg - 620.389 == pytest.approx(brix, abs=0.03)
    assert pytest.approx(0.9982) == WATER_20_KG_L


def test_rates_of_a_warming_mass() -> None:
    """Cardinal temperatures 3, 32, 42 °C, worked out apart from this code: rates at 18, 20, 23 and 25 °C."""
    assert rate_at_20_ratio(np.array([18.0, 20.0, 23.0, 25.0])) == pytest.approx(
        [0.8126, 1.0, 1.2823, 1.4591], abs=1e-4
    )


@pytest.mark.parametrize(
    ("who", "temp", "hours"),
    [(MIXED, 12, 55.6), (MIXED, 30, 10.1), (LACTIC_RICH, 15, 34.1), (LACTIC_RICH, 25, 11.3), (LACTIC_RICH, 30, 7.9)],
)
def test_eighteen_hours_of_one_organism(who, temp: float, hours: float) -> None:
    """The same of L. plantarum alone (Matejčeková et al. 2019) and of the mixed tank, further out."""
    assert 18.0 / rate_at_20_ratio(float(temp), who) == pytest.approx(hours, abs=0.06)
