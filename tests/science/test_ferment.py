"""Curves of pH and the hour they meet a target."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk.errors import NotPossible
from farmdesk.science.ferment import (
    ACID,
    ALL_SUGAR,
    ETHANOL,
    REDUCING_SUGAR,
    gompertz_end_h20,
    gompertz_ph,
    logistic_end_h20,
    logistic_ph,
    peleg_end_h20,
    share_done_frac,
    weibull_end_h20,
)

CASE = (5.35, 1.7, 0.085, 5.0)


def test_the_printed_curve_and_ends() -> None:
    got = gompertz_ph(np.arange(0.0, 25.0, 4.0), *CASE)
    assert got == pytest.approx([5.342, 5.2745, 5.0712, 4.7550, 4.4259, 4.1567, 3.9658], abs=0.001)
    assert float(gompertz_end_h20(4.6, *CASE)) == pytest.approx(13.83, abs=0.01)
    assert float(gompertz_end_h20(4.5, *CASE)) == pytest.approx(15.05, abs=0.01)
    assert float(logistic_end_h20(4.5, *CASE)) == pytest.approx(15.00, abs=0.01)
    assert peleg_end_h20(0.9, 8.0, 0.4) == pytest.approx(11.25)
    assert weibull_end_h20(0.5, 12.0, 1.8) == pytest.approx(9.79, abs=0.01)


@given(st.floats(4.5, 6.0), st.floats(0.3, 3.0), st.floats(0.005, 0.3), st.floats(0.1, 40.0), st.floats(0.02, 0.98))
def test_the_end_lies_on_the_curve(p0, fall, steepest, lag, part) -> None:
    target = p0 - fall * part
    for end, curve in ((gompertz_end_h20, gompertz_ph), (logistic_end_h20, logistic_ph)):
        at = end(target, p0, fall, steepest, lag)
        assert float(curve(at, p0, fall, steepest, lag)) == pytest.approx(target, abs=1e-6)


@given(st.floats(4.5, 6.0), st.floats(0.3, 3.0), st.floats(0.005, 0.3), st.floats(0.1, 40.0))
def test_the_curve_only_falls_and_the_steepest_fall_is_mu(p0, fall, steepest, lag) -> None:
    t = np.linspace(0.0, lag + 6 * fall / steepest, 4000)
    for curve in (gompertz_ph, logistic_ph):
        ph = curve(t, p0, fall, steepest, lag)
        assert (np.diff(ph) <= 1e-12).all()
        assert -np.diff(ph).min() / (t[1] - t[0]) == pytest.approx(steepest, rel=0.01)


def test_what_cannot_be_reached_is_open() -> None:
    assert np.isinf(gompertz_end_h20(3.5, *CASE))
    assert np.isneginf(gompertz_end_h20(5.5, *CASE))
    assert np.isinf(logistic_end_h20(3.5, *CASE))
    assert peleg_end_h20(2.6, 8.0, 0.4) == float("inf")
    assert weibull_end_h20(1.0, 12.0, 1.8) == float("inf")


def test_mucilage_acid_leads_sugar_by_a_day() -> None:
    hours = np.array([0.0, 10, 20, 30, 46, 60, 74])
    sugar = [0, 0.063, 0.159, 0.293, 0.569, 0.813, 1]
    acid = [0, 0.156, 0.369, 0.595, 0.854, 0.959, 1]
    ethanol = [0, 0.157, 0.353, 0.558, 0.815, 0.940, 1]
    for which, want in ((REDUCING_SUGAR, sugar), (ACID, acid), (ETHANOL, ethanol)):
        assert share_done_frac(hours, *which) == pytest.approx(want, abs=0.001)
    assert share_done_frac(20.0, *ALL_SUGAR) == pytest.approx(0.184, abs=0.001)


def test_refusals() -> None:
    for bad in ((0.9, 0.0, 0.4), (0.9, 8.0, -1.0)):
        with pytest.raises(NotPossible):
            peleg_end_h20(*bad)
    with pytest.raises(NotPossible):
        share_done_frac(-1.0, *ACID)
    for bad in ((np.nan, 22.0), (0.0, 22.0), (0.076, np.inf), (0.076, np.nan)):
        with pytest.raises(NotPossible):
            share_done_frac(10.0, *bad)
