"""Moist air: pairs that undo each other, directions that must hold, and what is refused."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk.errors import NotPossible
from farmdesk.science import air

temps = st.floats(*air.TEMP_C)
humidities = st.floats(*air.RH_FRAC)
pressures = st.floats(*air.PRESSURE_KPA)


@given(temps, humidities, pressures)
def test_the_three_temperatures_stand_in_order(temp: float, rh: float, pressure: float) -> None:
    dew, bulb = air.dew_point_c(temp, rh), air.wet_bulb_c(temp, rh, pressure)
    assert np.isfinite([dew, bulb]).all()
    if temp < 0.02:  # a frost point over ice and a temperature counted over water differ by a breath
        assert dew <= temp + 0.02
    else:
        assert dew <= temp + 1e-6
    assert bulb <= temp
    if dew > 0.02:
        assert dew <= bulb + 0.2  # eq. 33 is not the dew point exactly at saturation, but close


@given(temps, humidities)
def test_dew_point_and_humidity_undo_each_other(temp: float, rh: float) -> None:
    assert air.rh_from_dew_point_frac(temp, air.dew_point_c(temp, rh)) == pytest.approx(rh, rel=1e-6)


@given(temps, humidities, pressures)
def test_humidity_ratio_and_humidity_undo_each_other(temp: float, rh: float, pressure: float) -> None:
    ratio = air.humidity_ratio_kg_kg(temp, rh, pressure)
    if ratio <= 1.0:
        assert air.rh_from_humidity_ratio_frac(temp, ratio, pressure) == pytest.approx(rh, rel=1e-9)


@given(st.floats(0.0, 60.0), st.floats(0.2, 1.0), st.floats(0.0, 2500.0))
def test_fao_psychrometer_reads_the_wet_bulb_back(temp: float, rh: float, altitude: float) -> None:
    # Another formula for the same instrument: they agree within some hundredths
    bulb = air.wet_bulb_c(temp, rh, air.pressure_kpa(altitude))
    if bulb >= 0.0 and temp - bulb < 25.0:
        assert air.rh_from_wet_bulb_frac(temp, bulb, altitude) == pytest.approx(rh, abs=0.03)


@given(temps, humidities)
def test_vapour_and_deficit_make_up_saturation(temp: float, rh: float) -> None:
    total = air.vapour_kpa(temp, rh) + air.deficit_kpa(temp, rh)
    assert total == pytest.approx(air.saturation_kpa(temp), rel=1e-12)


@given(st.floats(-39.0, 79.0), humidities)
def test_warm_coffee_meets_drier_air(temp: float, rh: float) -> None:
    assert air.rh_at_temp_frac(temp, rh, temp) == pytest.approx(rh, rel=1e-12)
    assert air.rh_at_temp_frac(temp, rh, temp + 1.0) < rh
    assert rh <= air.rh_at_temp_frac(temp, rh, temp - 1.0) <= 1.0


def test_saturation_rises_all_the_way() -> None:
    assert (np.diff(air.saturation_kpa(np.linspace(*air.TEMP_C, 4001))) > 0.0).all()


def test_arrays_answer_as_floats_do() -> None:
    temp, rh = np.array([[-10.0, 5.0], [20.0, 41.0]]), np.array([[0.5, 0.2], [1.0, 0.03]])
    for function in (air.wet_bulb_c, air.dew_point_c, air.vapour_kpa, air.humidity_ratio_kg_kg, air.deficit_kpa):
        table: Any = function(temp, rh)
        assert table.shape == (2, 2)
        for place in np.ndindex(2, 2):
            one = function(float(temp[place]), float(rh[place]))
            assert isinstance(one, float)
            assert table[place] == pytest.approx(one, abs=1e-9)


def test_a_long_file_is_solved_in_blocks_and_keeps_its_order() -> None:
    temp, rh = np.linspace(2.0, 44.0, 20_001), np.linspace(1.0, 0.2, 20_001)
    bulb = air.wet_bulb_c(temp, rh)
    for i in (0, 8191, 8192, 16_384, 20_000):
        assert bulb[i] == pytest.approx(air.wet_bulb_c(float(temp[i]), float(rh[i])), abs=1e-6)


BAD_AIR = [(81.0, 0.5), (-41.0, 0.5), (20.0, 0.0), (20.0, 1.01), (float("nan"), 0.5), (20.0, float("nan"))]


@pytest.mark.parametrize(("temp", "rh"), BAD_AIR)
@pytest.mark.parametrize(
    "function", [air.wet_bulb_c, air.dew_point_c, air.vapour_kpa, air.deficit_kpa, air.humidity_ratio_kg_kg]
)
def test_air_outside_validity_is_refused(function: Any, temp: float, rh: float) -> None:
    with pytest.raises(NotPossible):
        function(temp, rh)
    with pytest.raises(NotPossible):
        function(np.array([20.0, temp]), np.array([0.5, rh]))


def test_the_refusal_says_the_number_and_the_limits() -> None:
    with pytest.raises(NotPossible) as caught:
        air.dew_point_c(20.0, 1.2)
    assert str(caught.value.text).replace("\u202f", " ") == "A relative humidity of 120 % is outside 1 % to 100 %."
    with pytest.raises(NotPossible) as caught:
        air.dew_point_c(float("nan"), 0.5)
    assert str(caught.value.text) == "An air temperature is missing."


@pytest.mark.parametrize(
    "call",
    [
        lambda: air.wet_bulb_c(20.0, 0.5, 10.0),
        lambda: air.pressure_kpa(9000.0),
        lambda: air.rh_from_dew_point_frac(20.0, 21.0),
        lambda: air.rh_from_humidity_ratio_frac(20.0, 0.02),
        lambda: air.rh_from_wet_bulb_frac(20.0, 21.0),
        lambda: air.rh_from_wet_bulb_frac(30.0, 5.0),
        lambda: air.sun_mj_m2_d(13.0, 15.0, 1.0),
        lambda: air.reference_et0_mm_d(25.0, 20.0, 1.5, 20.0, 2.0, 15.0, 1500.0, 20.0),
        lambda: air.reference_et0_mm_d(15.0, 25.0, 1.5, 20.0, -1.0, 15.0, 1500.0, 20.0),
        lambda: air.top_sun_mj_m2_d(80.0, 20.0),
        lambda: air.daylight_h(15.0, 367.0),
    ],
)
def test_the_rest_is_refused_too(call: Any) -> None:
    with pytest.raises(NotPossible):
        call()


@given(
    st.floats(0.0, 20.0),
    st.floats(0.0, 15.0),
    st.floats(0.2, 1.0),
    st.floats(0.0, 1.0),
    st.floats(0.0, 6.0),
    st.floats(-30.0, 30.0),
    st.floats(0.0, 3000.0),
    st.integers(1, 366),
)
def test_reference_evaporation_is_a_sane_number(
    low: float, span: float, rh: float, bright: float, wind: float, latitude: float, altitude: float, day: int
) -> None:
    vapour = air.vapour_mean_fao_kpa(low, low + span, rh)
    sun = air.sun_mj_m2_d(bright * air.daylight_h(latitude, float(day)), latitude, float(day))
    et0 = air.reference_et0_mm_d(low, low + span, vapour, sun, wind, latitude, altitude, day)
    assert 0.0 <= et0 < 20.0
    calm = air.reference_et0_mm_d(low, low + span, vapour, 0.5 * sun, wind, latitude, altitude, day)
    assert calm <= et0 + 0.6  # less sun never dries much more (the sky term can turn it slightly)


def test_a_day_of_wide_range_is_taken_for_sunny() -> None:
    dull, bright = air.sun_from_range_mj_m2_d(
        np.array([15.0, 10.0]), np.array([18.0, 25.0]), 15.0, np.array([20.0, 20.0])
    )
    assert dull < bright <= 0.75 * air.top_sun_mj_m2_d(15.0, 20.0)


@pytest.mark.parametrize(
    "call",
    [
        lambda: air.humidity_ratio_kg_kg(np.array([20.0, 25.0]), np.array([0.5, 0.6, 0.7])),
        lambda: air.wet_bulb_c(np.array([20.0, 25.0]), np.array([0.5, 0.6, 0.7])),
        lambda: air.rh_from_dew_point_frac(25.0, float("inf")),
        lambda: air.rh_from_dew_point_frac(25.0, -300.0),
        lambda: air.rh_from_wet_bulb_frac(25.0, 20.0, 0.0, 1e308),
        lambda: air.saturation_kpa("warm"),  # type: ignore[type-var]
        lambda: air.saturation_kpa(None),  # type: ignore[type-var]
        lambda: air.saturation_kpa([20.0, [21.0, 22.0]]),  # type: ignore[type-var]
    ],
)
def test_ragged_and_boundless_input_is_refused(call: Any) -> None:
    with pytest.raises(NotPossible):
        call()


@pytest.mark.parametrize("value", [float("inf"), float("-inf"), float("nan"), 1e308])
def test_a_refusal_of_a_boundless_number_can_be_said(value: float) -> None:
    with pytest.raises(NotPossible) as refused:
        air.saturation_kpa(value)
    assert str(refused.value).startswith("An air temperature")
