"""Hours at 20 °C."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk.errors import NotPossible
from farmdesk.science.thermal_time import (
    LACTIC_RICH,
    MIXED,
    YEAST,
    Cardinal,
    Known,
    ferment_hours,
    rate_at_20_ratio,
    rate_frac,
)


@pytest.mark.parametrize(
    ("who", "want"),
    [
        (YEAST, [0.3458, 0.5965, 0.8302, 0.9802, 0.9682, 0.7016]),
        (LACTIC_RICH, [0.1790, 0.3387, 0.5418, 0.7728, 0.9758, 0.6468]),
        (MIXED, [0.3026, 0.5509, 0.8038, 0.9794, 0.9398, 0.433]),
    ],
)
def test_rates_at_six_temperatures(who: Cardinal, want: list[float]) -> None:
    assert rate_frac(np.array([15.0, 20, 25, 30, 35, 40]), who) == pytest.approx(want, abs=0.001)
    assert rate_frac(who.best_c, who) == pytest.approx(1.0)
    assert rate_frac(np.array([who.min_c, who.max_c, -4.0, 60.0]), who) == pytest.approx([0, 0, 0, 0])


def test_a_warming_tank_counts_its_hours() -> None:
    got = ferment_hours(np.array([0.0, 4, 8, 12]) * 3600, [18.0, 20.0, 23.0, 25.0])
    assert got.at_20_h20[1:] == pytest.approx([3.625, 8.190, 13.673], abs=0.001)
    assert got.plain_h == pytest.approx([0, 4, 8, 12])
    assert (got.known == Known.MEASURED).all()


def test_ten_hours_at_thirty_count_seventeen_point_eight() -> None:
    assert 10 * rate_at_20_ratio(30.0) == pytest.approx(17.8, abs=0.05)
    assert ferment_hours([0.0, 12 * 3600.0], [25.0, 25.0]).at_20_h20[-1] == pytest.approx(17.51, abs=0.01)
    assert ferment_hours([0.0, 12 * 3600.0], [15.0, 15.0]).at_20_h20[-1] == pytest.approx(6.59, abs=0.01)


@pytest.mark.parametrize(("temp", "hours"), [(15, 32.8), (18, 22.2), (22, 15.1), (25, 12.3), (28, 10.7), (35, 10.6)])
def test_eighteen_hours_at_twenty_elsewhere(temp: float, hours: float) -> None:
    assert 18 / rate_at_20_ratio(float(temp)) == pytest.approx(hours, abs=0.06)


def test_gaps_are_bridged_and_marked_and_no_temperature_means_plain_hours() -> None:
    at = np.array([0.0, 2, 4, 6]) * 3600
    bridged = ferment_hours(at, [20.0, np.nan, 24.0, 24.0])
    assert bridged.known.tolist() == [Known.BRIDGED, Known.BRIDGED, Known.MEASURED]
    assert bridged.at_20_h20 == pytest.approx(ferment_hours(at, [20.0, 22.0, 24.0, 24.0]).at_20_h20)
    plain = ferment_hours(at, np.full(4, np.nan))
    assert plain.known.tolist() == [Known.PLAIN] * 3
    assert plain.at_20_h20 == pytest.approx([0, 2, 4, 6])


@given(st.lists(st.tuples(st.floats(0.01, 48.0), st.one_of(st.just(float("nan")), st.floats(-5.0, 60.0))), min_size=1))
def test_hours_never_run_backwards(steps) -> None:
    gaps, temps = np.array(steps).T
    got = ferment_hours(np.cumsum(gaps) * 3600, temps)
    assert np.isfinite(got.at_20_h20).all()
    assert (np.diff(got.at_20_h20) >= 0).all()


def test_refusals() -> None:
    for at, mass in (([0.0, 0.0], [20.0, 20.0]), ([0.0, 1.0], [20.0, 120.0]), ([], []), ([0.0, np.nan], [20.0, 20.0])):
        with pytest.raises(NotPossible):
            ferment_hours(at, mass)
    with pytest.raises(NotPossible):
        Cardinal(3.0, 10.0, 42.0)
    with pytest.raises(NotPossible):
        rate_frac(90.0)
