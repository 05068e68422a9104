"""A range is counted from its draws, and what is typical comes from the farm's own lots once there are five."""

from __future__ import annotations

import math

import numpy as np
import pytest

from farmdesk.ahead.range import ahead_of, spread_of, typical
from farmdesk.clock import HOUR_S
from farmdesk.errors import NotPossible
from farmdesk.text import N_

WORDS = N_("ahead", "Typical for this method, from the settings; no reading of this lot says more yet.")


def test_points_are_counted_and_open_ends_stay_open() -> None:
    ends = np.concatenate([np.arange(85.0), np.full(15, np.inf)])
    got = ahead_of(np.random.default_rng(1).permutation(ends), WORDS, "tray")
    assert got.never_frac == pytest.approx(0.15)
    assert got.latest_utc_s is None
    assert got.earliest_utc_s == pytest.approx(9.9)
    assert got.likely_utc_s == pytest.approx(49.5)
    assert got.chance_by(41.5) == pytest.approx(0.42)
    assert got.chance_by(1e12) == pytest.approx(0.85)
    assert got.chance_over_by(1e12) == 0.0


def test_no_draws_no_range() -> None:
    with pytest.raises(NotPossible):
        ahead_of(np.empty(0), WORDS, "tray")
    with pytest.raises(NotPossible):
        ahead_of(np.array([1.0, np.nan]), WORDS, "tray")


def test_typical_from_settings_gives_the_settings_back() -> None:
    got = typical([20.0, 21.0], (9.5, 15.7, 26.6), 0.0, 0.0)
    assert got.source == "typical"
    assert "settings" in str(got.rests_on)
    for at, hours in ((got.earliest_utc_s, 9.5), (got.likely_utc_s, 15.7), (got.latest_utc_s, 26.6)):
        assert at is not None
        assert at / HOUR_S == pytest.approx(hours, rel=0.01)


def test_typical_from_five_own_lots_is_their_median_and_mad() -> None:
    own = [210.0, 240.0, 250.0, 260.0, 900.0]  # one forgotten lot does not move the range
    got = typical(own, (1.0, 2.0, 3.0), 1e6, 1e6)
    assert "5" in str(got.rests_on)
    assert got.likely_utc_s == pytest.approx(1e6 + 250 * HOUR_S, rel=1e-4)
    middle, spread = spread_of(own)
    assert middle == pytest.approx(250)
    assert spread == pytest.approx(1.4826 * math.log(250 / 240) * math.sqrt(1 + math.pi / 10), rel=1e-6)


def test_typical_knows_that_the_lot_is_still_running() -> None:
    late = typical([], (9.5, 15.7, 26.6), 0.0, 15.7 * HOUR_S)
    assert late.earliest_utc_s is not None
    assert late.earliest_utc_s > 15.7 * HOUR_S
    gone = typical([], (9.5, 15.7, 26.6), 0.0, 5000 * HOUR_S)
    assert gone.never_frac == 1.0
    assert gone.likely_utc_s is None
    assert gone.remark is not None


def test_typical_keeps_the_lots_that_never_get_there() -> None:
    got = typical([], (37.6, 68.6, 160.0), 0.0, 0.0, never_frac=0.135)
    assert got.never_frac == pytest.approx(0.135, abs=0.002)
    assert got.latest_utc_s is None


@pytest.mark.parametrize("hours", [(0.0, 1.0, 2.0), (3.0, 2.0, 4.0), (1.0, 2.0, math.inf)])
def test_typical_refuses_hours_out_of_order(hours: tuple[float, float, float]) -> None:
    with pytest.raises(NotPossible):
        typical([], hours, 0.0, 0.0)
