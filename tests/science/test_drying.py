"""The drying state: its closed forms, what it may never do, and changing weather."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from farmdesk.errors import NotPossible
from farmdesk.science.drying import (
    drive_needed_d,
    moisture_after_db_frac,
    page_state_after_frac,
    path_db_frac,
    ready_after_steps,
    roa_ratio_frac,
)

WASHED = {"equilibrium_db_frac": 0.10, "rate_per_d": 0.6, "layer_d": 18.2 * 0.47 / 4.05}
NATURAL = {"equilibrium_db_frac": 0.10, "rate_per_d": 0.4, "layer_d": 27.5 * 0.35 / 4.05}

moistures = st.floats(0.0, 3.0)
rests = st.floats(0.0, 0.4)
rates = st.floats(0.02, 5.0)
layers = st.floats(0.0, 10.0)
shapes = st.one_of(st.just(0.0), st.floats(-0.3, 0.3))
drives = st.floats(0.0, 60.0)


def wet(x):
    return 100.0 * x / (1.0 + x)


def test_washed_coffee_at_a_steady_reference_day() -> None:
    days = np.array([0.0, 1.0, 2.0, 4.0, 6.0, 8.0])
    got = wet(moisture_after_db_frac(53 / 47, days, **WASHED))
    assert got == pytest.approx([53.0, 46.69, 39.76, 25.92, 16.10, 11.50], abs=0.01)
    assert drive_needed_d(53 / 47, 11 / 89, **WASHED) == pytest.approx(8.411, abs=1e-3)
    assert drive_needed_d(53 / 47, 12 / 88, **WASHED) == pytest.approx(7.663, abs=1e-3)


@pytest.mark.parametrize(("loading", "days"), [(10.0, 7.455), (25.0, 9.203)])
def test_a_thinner_layer_is_sooner_dry(loading: float, days: float) -> None:
    assert drive_needed_d(53 / 47, 11 / 89, 0.10, 0.6, loading * 0.47 / 4.05) == pytest.approx(days, abs=1e-3)


def test_a_natural_at_a_steady_reference_day() -> None:
    got = wet(moisture_after_db_frac(65 / 35, np.array([1.0, 2.0, 4.0, 8.0, 12.0]), **NATURAL))
    assert got == pytest.approx([61.56, 57.68, 48.58, 28.01, 14.66], abs=0.01)
    assert drive_needed_d(65 / 35, 11 / 89, **NATURAL) == pytest.approx(14.896, abs=1e-3)
    assert drive_needed_d(65 / 35, 11 / 89, 0.10, 0.4, 40 * 0.35 / 4.05) == pytest.approx(16.768, abs=1e-3)


def test_the_lambert_form_says_the_same() -> None:
    from scipy.special import lambertw

    y0, k, b = 53 / 47 - 0.1, 0.6, WASHED["layer_d"]
    days = np.linspace(0.1, 12.0, 40)
    y = lambertw(k * b * y0 * np.exp(k * b * y0 - k * days)).real / (k * b)
    assert moisture_after_db_frac(53 / 47, days, 0.10, k, b) - 0.1 == pytest.approx(y, rel=1e-9)


@given(moistures, drives, rests, rates, layers, shapes)
def test_never_past_equilibrium_and_never_no_number(start, drive, rest, rate, layer, shape) -> None:
    got = moisture_after_db_frac(start, drive, rest, rate, layer, shape)
    assert min(start, rest) - 1e-12 <= got <= max(start, rest) + 1e-12


@given(moistures, rests, rates, layers, shapes)
def test_no_drive_freezes(start, rest, rate, layer, shape) -> None:
    assert moisture_after_db_frac(start, 0.0, rest, rate, layer, shape) == pytest.approx(start, abs=1e-12)


@given(st.floats(0.3, 3.0), st.floats(0.02, 0.98), rates, layers, shapes)
def test_the_time_back_is_the_drive_spent_in_one_step_or_seven(start, part, rate, layer, shape) -> None:
    rest = 0.1
    target = rest + (start - rest) * part
    needed = drive_needed_d(start, target, rest, rate, layer, shape)
    assert moisture_after_db_frac(start, needed, rest, rate, layer, shape) == pytest.approx(target, rel=1e-6)
    in_steps = path_db_frac(start, np.full(7, needed / 7), np.full(7, rest), rate, layer, shape)
    assert in_steps[-1] == pytest.approx(target, rel=1e-6)


@given(st.floats(0.5, 3.0), st.floats(0.05, 2.0), layers, st.floats(0.01, 0.1))
def test_twice_the_drive_is_half_the_time(start, rate, layer, hourly) -> None:
    hours = np.full(1_500, hourly)
    once, twice = (ready_after_steps(start, f * hours, np.full(1_500, 0.1), rate, layer, 0.2) for f in (1.0, 2.0))
    assume(np.isfinite(once))
    assert float(once / twice) == pytest.approx(2.0, rel=0.01)


@given(st.floats(0.3, 3.0), rates, st.floats(0.0, 5.0))
def test_a_heavier_layer_is_never_sooner(start, rate, layer) -> None:
    assert drive_needed_d(start, 0.14, 0.1, rate, layer + 1.0) > drive_needed_d(start, 0.14, 0.1, rate, layer)


@given(st.lists(st.tuples(st.floats(0.0, 3.0), rests), min_size=1, max_size=40), moistures, rates, layers, shapes)
def test_changing_air_always_draws_towards_that_hours_equilibrium(hours, start, rate, layer, shape) -> None:
    drive, rest = np.array(hours).T
    path = path_db_frac(start, drive, rest, rate, layer, shape)
    before = np.concatenate([[start], path[:-1]])
    assert np.isfinite(path).all()
    assert (np.abs(path - rest) <= np.abs(before - rest) + 1e-12).all()
    assert ((path - rest) * (before - rest) >= -1e-12).all()
    dry_kg = 10.0  # water given off by each step and water left add up to the water there was
    given_off = dry_kg * (before - path)
    assert given_off.sum() + dry_kg * path[-1] == pytest.approx(dry_kg * start, abs=1e-9)


@pytest.mark.parametrize(
    "bad",
    [
        {"start_db_frac": -0.1},
        {"start_db_frac": float("nan")},
        {"drive_d": -1.0},
        {"drive_d": float("inf")},
        {"equilibrium_db_frac": float("nan")},
        {"rate_per_d": 0.0},
        {"layer_d": -1.0},
        {"shape": 2.0},
    ],
)
def test_other_input_is_refused(bad) -> None:
    good = {"start_db_frac": 1.1, "drive_d": 1.0, "equilibrium_db_frac": 0.1, "rate_per_d": 0.5, "layer_d": 1.0}
    with pytest.raises(NotPossible):
        moisture_after_db_frac(**{**good, **bad})
    weather = {**good, "drive_d": np.ones(3), "equilibrium_db_frac": np.full(3, 0.1), **bad}
    with pytest.raises(NotPossible):
        path_db_frac(**weather)


def test_members_are_ready_where_their_paths_cross() -> None:
    rng = np.random.default_rng(3)
    drive = rng.uniform(0.0, 0.1, (30, 400))
    rest = np.full((30, 400), 0.1)
    rate = rng.uniform(0.3, 0.9, (4, 30))
    ready = ready_after_steps(1.2, drive, rest, rate, 1.0, 0.136)
    path = path_db_frac(1.2, drive, rest, rate, 1.0)
    assert ready.shape == (4, 30)
    for lot, member in np.ndindex(4, 30):
        below = np.flatnonzero(path[lot, member] <= 0.136)
        if below.size:
            assert below[0] < ready[lot, member] <= below[0] + 1
        else:
            assert np.isinf(ready[lot, member])
    assert ready_after_steps(0.1, drive, rest, 0.5, 1.0, 0.136) == pytest.approx(np.zeros(30))
    assert np.isinf(ready_after_steps(1.2, drive, rest, 0.5, 1.0, 0.09)).all()


def test_members_are_ready_within_the_hour_at_which_the_reference_solver_has_them() -> None:
    from scipy.integrate import solve_ivp

    rng = np.random.default_rng(5)
    hour = np.arange(720) % 24
    sun = np.where((hour >= 8) & (hour < 16), 1 / 8, 0.0)
    drive = sun * np.repeat(rng.uniform(0.2, 1.4, (20, 30)), 24, axis=1)
    rest, start = 0.11 + 0.02 * rng.random((20, 1)), rng.uniform(0.8, 1.3, 20)
    rate, layer = rng.uniform(0.25, 0.6, 20), rng.uniform(0.5, 2.0, 20)
    ready = ready_after_steps(start, drive, rest * np.ones(720), rate, layer, 0.12 / 0.88)
    assert np.isfinite(ready).sum() > 12
    for i in np.flatnonzero(np.isfinite(ready)):

        def fall(t, x, i=i):
            gap = x[0] - rest[i, 0]
            return [-drive[i, min(int(t), 719)] * rate[i] * gap / (1.0 + rate[i] * layer[i] * abs(gap))]

        def dry(t, x):
            return x[0] - 0.12 / 0.88

        dry.terminal = True
        theirs = solve_ivp(fall, (0.0, 720.0), [start[i]], "RK45", events=dry, rtol=1e-6, atol=1e-8, max_step=1.0)
        assert ready[i] == pytest.approx(theirs.t_events[0][0], abs=1.0)


def test_the_stations_equation_prints_its_hours() -> None:
    hours = np.array([0.0, 2.0, 4.0, 8.0, 12.0, 16.0, 24.0, 32.0, 40.0, 48.0])
    x = 0.08450 + (53 / 47 - 0.08450) * roa_ratio_frac(hours, (1 - 0.2846) * 5.6237)
    assert wet(x) == pytest.approx([53.0, 50.66, 48.13, 42.96, 37.91, 33.16, 25.03, 18.95, 14.76, 12.03], abs=0.02)


def test_page_as_a_state_equals_page_in_clock_time() -> None:
    k, n, rest = 0.1 ** (1 / 1.05), 1.05, 0.12
    ratio = 1.0
    for _ in range(4):
        ratio = page_state_after_frac(ratio, 2.5, k, n)
    assert rest + (1.1277 - rest) * ratio == pytest.approx(0.448129, abs=1e-6)
    for t, x in ((20.0, 0.218717), (30.0, 0.148769)):
        assert rest + (1.1277 - rest) * page_state_after_frac(1.0, t, k, n) == pytest.approx(x, abs=1e-6)


@pytest.mark.parametrize(
    "call",
    [
        lambda: moisture_after_db_frac(np.array([1.0, 1.1]), np.array([1.0, 2.0, 3.0]), 0.1, 0.5),
        lambda: path_db_frac(1.1, np.ones(3), np.full(2, 0.1), 0.5),
        lambda: path_db_frac(np.array([1.0, 1.1, 1.2]), np.ones((2, 4)), np.full((2, 4), 0.1), 0.5),
        lambda: path_db_frac(1.1, np.empty(0), np.empty(0), 0.5),
        lambda: ready_after_steps(1.1, np.empty(0), np.empty(0), 0.5, 0.0, 0.13),
        lambda: ready_after_steps(1.1, 1.0, 0.1, 0.5, 0.0, 0.13),  # type: ignore[arg-type]
        lambda: page_state_after_frac(0.5, float("nan"), 0.5, 1.05),
        lambda: page_state_after_frac(0.5, 1.0, -1.0, 1.05),
    ],
)
def test_weather_that_does_not_fit_the_lots_is_refused(call) -> None:
    with pytest.raises(NotPossible):
        call()
