"""The eleven forms, their ranking, and the sphere."""

from __future__ import annotations

import math

import numpy as np
import pytest

from farmdesk.errors import NotPossible
from farmdesk.science.thin_layer import (
    FORMS,
    aicc_of,
    arrhenius_ratio,
    fit_thin_layer,
    sphere_ratio_frac,
)

# parameters in the form's order, and MR at t = 10, worked out apart from this code
VECTORS = {
    "Newton": ((0.12,), 0.301194),
    "Page": ((0.1, 1.05), 0.325622),
    "Henderson and Pabis": ((1.02, 0.12), 0.307218),
    "logarithmic": ((0.95, 0.12, 0.04), 0.326135),
    "two-term": ((0.6, 0.2, 0.4, 0.05), 0.323813),
    "Midilli": ((1.0, 0.1, 1.05, -0.0005), 0.320622),
    "Wang and Singh": ((-0.07, 0.0013), 0.430000),
    "diffusion approach": ((0.6, 0.2, 0.3), 0.300726),
    "Verma": ((0.6, 0.2, 0.05), 0.323813),
    "two-term exponential": ((1.6, 0.15), 0.302577),
    "Thompson": ((-8.0, 0.3), 0.302302),
}


@pytest.mark.parametrize("form", FORMS, ids=lambda form: str(form.name))
def test_each_form_gives_its_printed_ratio_and_starts_at_one(form) -> None:
    values, ratio = VECTORS[str(form.name)]
    assert form.curve(np.array([10.0]), *values)[0] == pytest.approx(ratio, abs=1e-6)
    assert form.curve(np.array([0.0]), *form.first(0.1))[0] == pytest.approx(1.0, abs=1e-9)
    assert len(form.parameters) == len(values)


def test_a_fit_finds_the_form_that_made_the_readings() -> None:
    hours = np.arange(0.0, 60.0, 4.0)
    noise = np.random.default_rng(7).normal(0.0, 0.004, hours.size)
    ranked = fit_thin_layer(hours, np.exp(-0.02 * hours**1.25) + noise)
    assert str(ranked[0].form.name) == "Page"
    assert ranked[0].values == pytest.approx((0.02, 1.25), rel=0.05)
    assert [f.aicc for f in ranked] == sorted(f.aicc for f in ranked)


def test_a_plain_exponential_is_not_given_spare_parameters() -> None:
    hours = np.arange(0.0, 48.0, 4.0)
    ratio = np.exp(-0.08 * hours) + np.random.default_rng(11).normal(0.0, 0.01, hours.size)
    ranked = {str(f.form.name): f for f in fit_thin_layer(hours, ratio)}
    assert ranked["Newton"].aicc < ranked["two-term"].aicc
    assert ranked["two-term"].rss <= ranked["Newton"].rss + 1e-9


def test_few_readings_leave_the_rich_forms_out() -> None:
    ranked = fit_thin_layer([0.0, 10.0, 20.0, 30.0], [1.0, 0.6, 0.36, 0.22])
    assert {len(f.form.parameters) for f in ranked} == {1}
    assert math.isinf(aicc_of(0.1, 4, 2))


@pytest.mark.parametrize(
    ("hours", "ratio"),
    [
        ([0.0, 1.0, 2.0], [1.0, 0.9, 0.8]),
        ([0.0, 1.0, 1.0, 2.0], [1.0, 0.9, 0.9, 0.8]),
        ([0.0, 1.0, 2.0, 3.0], [1.0, 0.9, float("nan"), 0.7]),
        ([0.0, 1.0, 2.0, 3.0], [1.0, 0.9, 2.8, 0.7]),
    ],
)
def test_readings_that_are_no_curve_are_refused(hours, ratio) -> None:
    with pytest.raises(NotPossible):
        fit_thin_layer(hours, ratio)


def test_the_sphere_dries_as_its_series_says() -> None:
    fo = np.array([0.001, 0.01, 0.05, 0.1, 0.2, 0.3])
    assert sphere_ratio_frac(fo) == pytest.approx(
        [0.895953, 0.691486, 0.393060, 0.229521, 0.084504, 0.031475], abs=1e-6
    )
    short = 1.0 - 6.0 * math.sqrt(0.001 / math.pi) + 3.0 * 0.001
    assert sphere_ratio_frac(0.001) == pytest.approx(short, abs=5e-6)
    assert sphere_ratio_frac(0.0) == 1.0
    one_term = 6.0 / math.pi**2 * np.exp(-(math.pi**2) * np.array([0.001, 0.2]))
    exact = sphere_ratio_frac(np.array([0.001, 0.2]))
    assert 1.0 - one_term / exact == pytest.approx([0.33, 0.0007], abs=0.01)


def test_warmth_speeds_drying_by_the_energy() -> None:
    assert arrhenius_ratio(35.0, 25.0) == pytest.approx(1.58, abs=0.01)
    assert arrhenius_ratio(35.0, 25.0, 23_000.0) == pytest.approx(1.35, abs=0.01)
    assert arrhenius_ratio(35.0, 25.0, 47_000.0) == pytest.approx(1.85, abs=0.01)


def test_the_sphere_and_the_energy_refuse_gaps() -> None:
    for call in (
        lambda: sphere_ratio_frac(0.1, 0),
        lambda: arrhenius_ratio(25.0, math.nan),
        lambda: arrhenius_ratio(25.0, 35.0, math.inf),
    ):
        with pytest.raises(NotPossible):
            call()
