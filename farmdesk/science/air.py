"""Moist air: how much water it holds, how cold it can make a wet surface, what it can still take up.

All pressures are in kPa, all shares fractions 0..1. Two families that must not be mixed in one sum:

* ASHRAE Handbook of Fundamentals 2017, chapter 1 (Hyland and Wexler 1983 for saturation): drying, stores, dew.
  Ideal-gas mixing without the enhancement factor, which costs up to 0.5 % of the humidity ratio.
* FAO Irrigation and Drainage Paper 56 (Allen et al. 1998): names ending in `fao`, and reference evaporation.

Valid here: -40..80 °C, 1..100 % relative humidity, 50..110 kPa. Floats give floats, arrays arrays.
"""

from __future__ import annotations

from typing import Final

import numpy as np

from farmdesk.errors import NotPossible
from farmdesk.science.limits import FloatArray, Floats, R, fitting, give, single, within
from farmdesk.text import N_

SEA_LEVEL_KPA: Final = 101.325  # ASHRAE 2017 ch. 1 eq. 3
TEMP_C: Final = (-40.0, 80.0)  # our validity; Hyland-Wexler itself holds from -100 to 200 °C
RH_FRAC: Final = (0.01, 1.0)  # below 1 % no logger reads
PRESSURE_KPA: Final = (50.0, 110.0)
ALTITUDE_M: Final = (-500.0, 5000.0)

PSYCHROMETER_VENTILATED_PER_C: Final = 0.000662  # FAO-56 eq. 16: Asmann type, air at 5 m/s [1/°C]
PSYCHROMETER_NATURAL_PER_C: Final = 0.000800  # FAO-56 eq. 16: naturally ventilated, about 1 m/s [1/°C]
PSYCHROMETER_INDOORS_PER_C: Final = 0.001200  # FAO-56 eq. 16: still air indoors [1/°C]

_ZERO_K: Final = 273.15
_TRIPLE_C: Final = 0.01  # triple point of water
_RATIO: Final = 0.621945  # ASHRAE 2017 ch. 1 eq. 20: molar mass of water / dry air
# ASHRAE 2017 ch. 1 eq. 5 (ice) and 6 (water), ln p [Pa] over T [K]; powers -1, 0, 1, 2, 3, (4), then ln T
_ICE: Final = (-5.6745359e3, 6.3925247, -9.677843e-3, 6.2215701e-7, 2.0747825e-9, -9.484024e-13, 4.1635019)
_WATER: Final = (-5.8002206e3, 1.3914993, -4.8640239e-2, 4.1764768e-5, -1.4452093e-8, 0.0, 6.5459673)
_BLOCK: Final = 8192  # values solved at a time: stays in the processor's cache and lets other threads in

_AT_ZERO_KPA: Final = 0.6112129  # eq. 6 at 273.15 K: a bulb that is wet, not iced

_TEMP: Final = N_("science", "An air temperature")
_RH: Final = N_("science", "A relative humidity")
_PRESSURE: Final = N_("science", "An air pressure")


def _temp(temp_c: Floats) -> FloatArray:
    return within(temp_c, *TEMP_C, _TEMP, "°C")


def _rh(rh_frac: Floats) -> FloatArray:
    return within(rh_frac, *RH_FRAC, _RH, "%", 100.0)


def _rh_found(rh_frac: FloatArray) -> FloatArray:
    """A computed humidity; a rounding error beyond an end is that end."""
    near = np.clip(rh_frac, *RH_FRAC)
    return _rh(np.where(np.abs(rh_frac - near) < 1e-7, near, rh_frac))


def _pressure(pressure_kpa: Floats) -> FloatArray:
    return within(pressure_kpa, *PRESSURE_KPA, _PRESSURE, "kPa")


# --- saturation, Hyland and Wexler ------------------------------------------------------------------------------


def _ln_p(t_k: FloatArray, c: tuple[float, ...]) -> FloatArray:
    """Ln of saturation pressure [ln Pa]."""
    poly = c[1] + t_k * (c[2] + t_k * (c[3] + t_k * (c[4] + t_k * c[5])))
    return c[0] / t_k + poly + c[6] * np.log(t_k)


def _slope(t_k: FloatArray, c: tuple[float, ...]) -> FloatArray:
    """Its derivative by temperature [1/K]."""
    poly = c[2] + t_k * (2 * c[3] + t_k * (3 * c[4] + t_k * 4 * c[5]))
    return -c[0] / (t_k * t_k) + poly + c[6] / t_k


def _saturation(temp_c: FloatArray) -> FloatArray:
    t_k = temp_c + _ZERO_K
    icy = temp_c <= _TRIPLE_C
    ln_pa = np.where(icy, _ln_p(t_k, _ICE), _ln_p(t_k, _WATER)) if icy.any() else _ln_p(t_k, _WATER)
    return np.exp(ln_pa) / 1000.0


def saturation_kpa(temp_c: R) -> R:
    """The vapour pressure of air that holds all the water it can.

    Over ice at and below the triple point, over water above. `temp_c` [°C], any shape; returns [kPa].
    Raises NotPossible outside -40..80 °C. ASHRAE 2017 ch. 1 eq. 5 and 6 (Hyland and Wexler 1983).
    """
    return give(_saturation(_temp(temp_c)), temp_c)


@fitting
def vapour_kpa(temp_c: R, rh_frac: R) -> R:
    """The vapour pressure of air at a temperature [°C] and relative humidity [0..1]; returns [kPa]."""
    return give(_rh(rh_frac) * _saturation(_temp(temp_c)), temp_c)


@fitting
def deficit_kpa(temp_c: R, rh_frac: R) -> R:
    """How thirsty the air is: saturation minus actual vapour pressure [kPa] at [°C], [0..1]."""
    return give((1.0 - _rh(rh_frac)) * _saturation(_temp(temp_c)), temp_c)


def pressure_kpa(altitude_m: R) -> R:
    """Standard air pressure [kPa] at an altitude [m], -500..5,000 m. ASHRAE 2017 ch. 1 eq. 3."""
    height = within(altitude_m, *ALTITUDE_M, N_("science", "An altitude"), "m")
    return give(SEA_LEVEL_KPA * (1.0 - 2.25577e-5 * height) ** 5.2559, altitude_m)


# --- humidity ratio, wet bulb, dew point ------------------------------------------------------------------------


def _ratio(vapour: Floats, pressure: FloatArray) -> FloatArray:
    return np.asarray(_RATIO * vapour / (pressure - vapour))


@fitting
def humidity_ratio_kg_kg(temp_c: R, rh_frac: R, pressure_kpa: Floats = SEA_LEVEL_KPA) -> R:
    """Water in the air [kg per kg dry air] at [°C], [0..1], [kPa]. ASHRAE 2017 ch. 1 eq. 20."""
    vapour = _rh(rh_frac) * _saturation(_temp(temp_c))
    return give(_ratio(vapour, _pressure(pressure_kpa)), temp_c)


@fitting
def rh_from_humidity_ratio_frac(temp_c: R, ratio_kg_kg: R, pressure_kpa: Floats = SEA_LEVEL_KPA) -> R:
    """Relative humidity [0..1] of air at [°C] with this much water [kg/kg] at [kPa]; what heating does to it.

    Raises NotPossible where the air cannot hold that much, or holds under 1 %. ASHRAE 2017 ch. 1 eq. 20.
    """
    ratio = within(ratio_kg_kg, 0.0, 1.0, N_("science", "A humidity ratio"), "kg/kg")
    rh = _pressure(pressure_kpa) * ratio / (_RATIO + ratio) / _saturation(_temp(temp_c))
    return give(_rh_found(rh), temp_c)


@fitting
def rh_at_temp_frac(temp_c: R, rh_frac: R, surface_c: R) -> R:
    """Relative humidity [0..1] the same air has against a surface of another temperature [°C].

    Warm coffee in the sun meets drier air than the station reads; at or under the dew point it is 1.
    """
    vapour = _rh(rh_frac) * _saturation(_temp(temp_c))
    return give(np.minimum(vapour / _saturation(_temp(surface_c)), 1.0), temp_c)


@fitting
def dew_point_c(temp_c: R, rh_frac: R) -> R:
    """The temperature [°C] at which this air [°C, 0..1] begins to wet things (frost point below freezing).

    The inverse of `saturation_kpa`, by Newton steps on ln p; exact to 1e-9 °C.
    """
    vapour = _rh(rh_frac) * _saturation(_temp(temp_c))
    return give(_dew_point(vapour), temp_c)


def _magnus_dew(vapour_kpa: FloatArray) -> FloatArray:
    """Dew point [°C] in closed form: good for a first guess. Magnus form, constants of Sonntag 1990."""
    ln_ratio = np.log(vapour_kpa / 0.6112)
    return np.asarray(243.12 * ln_ratio / (17.62 - ln_ratio))


def _dew_point(vapour_kpa: FloatArray) -> FloatArray:
    ln_pa = np.log(vapour_kpa * 1000.0)
    icy = vapour_kpa <= _saturation(np.asarray(_TRIPLE_C))
    t_k = _magnus_dew(vapour_kpa) + _ZERO_K
    for _ in range(4):
        step = (_ln_p(t_k, _WATER) - ln_pa) / _slope(t_k, _WATER)
        if icy.any():
            step = np.where(icy, (_ln_p(t_k, _ICE) - ln_pa) / _slope(t_k, _ICE), step)
        t_k = t_k - step
    return np.asarray(t_k - _ZERO_K)


@fitting
def rh_from_dew_point_frac(temp_c: R, dew_c: R) -> R:
    """Relative humidity [0..1] of air at [°C] with this dew point [°C]; NotPossible above the air's temperature."""
    rh = _saturation(within(dew_c, -90.0, TEMP_C[1], N_("science", "A dew point"), "°C")) / _saturation(_temp(temp_c))
    return give(_rh_found(rh), temp_c)


@fitting
def wet_bulb_c(temp_c: R, rh_frac: R, pressure_kpa: Floats = SEA_LEVEL_KPA) -> R:
    """The temperature [°C] a wet thing in moving air takes: air at [°C], [0..1], [kPa].

    Solves ASHRAE 2017 ch. 1 eq. 33 (wet bulb at or above 0 °C) and eq. 35 (ice bulb). Just around 0 °C both have
    an answer; the wet one is given. Newton steps on a rising, convex heat balance: sure, and exact to 1e-5 °C.
    """
    temp, rh, pressure = np.broadcast_arrays(_temp(temp_c), _rh(rh_frac), _pressure(pressure_kpa))
    out = np.empty(temp.size)
    flat_t, flat_rh, flat_p = temp.ravel(), rh.ravel(), pressure.ravel()
    for start in range(0, temp.size, _BLOCK):
        part = slice(start, start + _BLOCK)
        out[part] = _wet_bulb(flat_t[part], flat_rh[part], flat_p[part])
    return give(out.reshape(temp.shape), temp_c)


def _wet_bulb(temp: FloatArray, rh: FloatArray, pressure: FloatArray) -> FloatArray:
    vapour = rh * _saturation(temp)
    ratio = _ratio(vapour, pressure)
    ratio_at_zero = _ratio(_AT_ZERO_KPA, pressure)
    wet = 2501.0 * ratio_at_zero - 1.006 * temp <= ratio * (2501.0 + 1.86 * temp)  # eq. 33 is met at 0 °C or above
    guess = _bulb_guess(temp, vapour, pressure)
    if wet.all():
        return np.minimum(_bulb_steps(guess, temp, ratio, pressure, 2501.0, 2.326, 4.186, _WATER), temp)
    out = np.empty_like(temp)
    if wet.any():
        out[wet] = _bulb_steps(guess[wet], temp[wet], ratio[wet], pressure[wet], 2501.0, 2.326, 4.186, _WATER)
    ice = ~wet
    out[ice] = _bulb_steps(guess[ice], temp[ice], ratio[ice], pressure[ice], 2830.0, 0.24, 2.1, _ICE)
    return np.minimum(out, temp)


def _bulb_guess(temp: FloatArray, vapour: FloatArray, pressure: FloatArray) -> FloatArray:
    """Where a straight line between dew point and air temperature meets the psychrometer's line; within 2 °C."""
    dew = _magnus_dew(vapour)
    middle = 0.5 * (temp + dew) + 243.12
    slope = 0.6112 * np.exp(17.62 * (middle - 243.12) / middle) * 17.62 * 243.12 / (middle * middle)
    gamma = 0.000665 * pressure  # FAO-56 eq. 8
    return (gamma * temp + slope * dew) / (gamma + slope)


def _bulb_steps(
    t: FloatArray,
    temp: FloatArray,
    ratio: FloatArray,
    pressure: FloatArray,
    h0: float,
    h1: float,
    h2: float,
    c: tuple[float, ...],
) -> FloatArray:
    """Newton on (h0 - h1 t) Ws(t) - 1.006 (T - t) - W (h0 + 1.86 T - h2 t) = 0."""
    for _ in range(20):
        t_k = t + _ZERO_K
        p_s = np.exp(_ln_p(t_k, c)) / 1000.0
        w_s = _ratio(p_s, pressure)
        w_slope = w_s * pressure / (pressure - p_s) * _slope(t_k, c)
        balance = (h0 - h1 * t) * w_s - 1.006 * (temp - t) - ratio * (h0 + 1.86 * temp - h2 * t)
        step = balance / ((h0 - h1 * t) * w_slope - h1 * w_s + 1.006 + h2 * ratio)
        t = t - step
        if np.abs(step).max() < 1e-4:  # the error left is of the order of its square
            break
    return t


# --- FAO-56 -----------------------------------------------------------------------------------------------------

WIND_UNKNOWN_M_S: Final = 2.0  # FAO-56 chapter 3: mean over 2,000 stations, for where no wind is measured
_GSC: Final = 0.0820  # FAO-56 eq. 21: solar constant [MJ/m2/min]
_SIGMA: Final = 4.903e-9  # FAO-56 eq. 39: Stefan-Boltzmann [MJ/K4/m2/d]
_ALBEDO: Final = 0.23  # FAO-56 eq. 38: reference grass


def saturation_fao_kpa(temp_c: R) -> R:
    """Saturation vapour pressure over water as FAO-56 eq. 11 has it (Tetens); [°C] to [kPa]."""
    return give(_tetens(_temp(temp_c)), temp_c)


def _tetens(temp: FloatArray) -> FloatArray:
    return 0.6108 * np.exp(17.27 * temp / (temp + 237.3))


def pressure_fao_kpa(altitude_m: R) -> R:
    """Air pressure [kPa] at an altitude [m], FAO-56 eq. 7."""
    height = within(altitude_m, *ALTITUDE_M, N_("science", "An altitude"), "m")
    return give(101.3 * ((293.0 - 0.0065 * height) / 293.0) ** 5.26, altitude_m)


@fitting
def rh_from_wet_bulb_frac(
    temp_c: R, wet_c: R, altitude_m: Floats = 0.0, psychrometer_per_c: float = PSYCHROMETER_VENTILATED_PER_C
) -> R:
    """Relative humidity [0..1] from a dry [°C] and a wet [°C] thermometer at an altitude [m].

    `psychrometer_per_c` [1/°C] is the instrument's constant. FAO-56 eq. 15 and 16.
    Raises NotPossible where the wet one is warmer, or so cold that no vapour is left.
    """
    rh = vapour_from_wet_bulb_fao_kpa(temp_c, wet_c, altitude_m, psychrometer_per_c) / _tetens(_temp(temp_c))
    return give(_rh_found(np.asarray(rh)), temp_c)


@fitting
def vapour_from_wet_bulb_fao_kpa(
    temp_c: R, wet_c: R, altitude_m: Floats = 0.0, psychrometer_per_c: float = PSYCHROMETER_VENTILATED_PER_C
) -> R:
    """Vapour pressure [kPa] from a dry [°C] and a wet [°C] thermometer at an altitude [m]. FAO-56 eq. 15, 16."""
    temp, wet = _temp(temp_c), _temp(wet_c)
    pressure = np.asarray(pressure_fao_kpa(np.asarray(altitude_m, dtype=np.float64)))
    constant = single(psychrometer_per_c, 1e-4, 0.01, N_("science", "A psychrometer constant"), "1/°C")
    vapour = _tetens(wet) - constant * pressure * (temp - wet)
    return give(within(vapour, 0.0, 50.0, N_("science", "A vapour pressure"), "kPa"), temp_c)


@fitting
def vapour_day_fao_kpa(min_c: R, max_c: R, rh_min_frac: R, rh_max_frac: R) -> R:
    """A day's mean vapour pressure [kPa] from its extremes [°C], [0..1]. FAO-56 eq. 17."""
    low, high = _tetens(_temp(min_c)), _tetens(_temp(max_c))
    return give((low * _rh(rh_max_frac) + high * _rh(rh_min_frac)) / 2.0, min_c)


@fitting
def vapour_mean_fao_kpa(min_c: R, max_c: R, rh_mean_frac: R) -> R:
    """A day's mean vapour pressure [kPa] from extremes [°C] and mean humidity [0..1] alone. FAO-56 eq. 19."""
    return give(_rh(rh_mean_frac) * (_tetens(_temp(min_c)) + _tetens(_temp(max_c))) / 2.0, min_c)


@fitting
def wind_2m_m_s(wind_m_s: R, height_m: Floats) -> R:
    """Wind at 2 m [m/s] from wind [m/s] measured at another height [m]. FAO-56 eq. 47."""
    wind = within(wind_m_s, 0.0, 60.0, N_("science", "A wind speed"), "m/s")
    height = within(height_m, 0.5, 200.0, N_("science", "A mast height"), "m")
    return give(wind * 4.87 / np.log(67.8 * height - 5.42), wind_m_s)


def _sun_angles(latitude_deg: Floats, day_of_year: Floats) -> tuple[FloatArray, FloatArray, FloatArray, FloatArray]:
    """Latitude [rad], declination [rad], sunset hour angle [rad], inverse distance: FAO-56 eq. 22 to 25."""
    phi = np.radians(within(latitude_deg, -66.0, 66.0, N_("science", "A latitude"), "°"))
    turn = 2.0 * np.pi / 365.0 * within(day_of_year, 1.0, 366.0, N_("science", "A day of the year"))
    decline = 0.409 * np.sin(turn - 1.39)
    sunset = np.arccos(np.clip(-np.tan(phi) * np.tan(decline), -1.0, 1.0))
    return phi, decline, sunset, 1.0 + 0.033 * np.cos(turn)


@fitting
def top_sun_mj_m2_d(latitude_deg: Floats, day_of_year: R) -> R:
    """Sun above the air [MJ/m2/d] at a latitude [deg, south negative] on a day of the year. FAO-56 eq. 21."""
    phi, decline, sunset, near = _sun_angles(latitude_deg, day_of_year)
    path = sunset * np.sin(phi) * np.sin(decline) + np.cos(phi) * np.cos(decline) * np.sin(sunset)
    return give(24.0 * 60.0 / np.pi * _GSC * near * path, day_of_year)


@fitting
def daylight_h(latitude_deg: Floats, day_of_year: R) -> R:
    """Hours from sunrise to sunset [h] at a latitude [deg] on a day of the year. FAO-56 eq. 34."""
    return give(24.0 / np.pi * _sun_angles(latitude_deg, day_of_year)[2], day_of_year)


@fitting
def sun_mj_m2_d(sunshine_h: R, latitude_deg: Floats, day_of_year: R) -> R:
    """Sun reaching the ground [MJ/m2/d] from hours of sunshine [h] at a latitude [deg]. FAO-56 eq. 35, 0.25 + 0.50 n/N.

    Raises NotPossible for more sunshine than daylight.
    """
    share = np.asarray(sunshine_h, dtype=np.float64) / np.asarray(daylight_h(latitude_deg, day_of_year))
    bright = within(share, 0.0, 1.0, N_("science", "A share of the day with sunshine"), "%", 100.0)
    return give((0.25 + 0.50 * bright) * np.asarray(top_sun_mj_m2_d(latitude_deg, day_of_year)), sunshine_h)


@fitting
def sun_from_range_mj_m2_d(min_c: R, max_c: R, latitude_deg: Floats, day_of_year: R) -> R:
    """Sun [MJ/m2/d] guessed from a day's extremes [°C] at a latitude [deg]. FAO-56 eq. 50 (Hargreaves), inland 0.16."""
    span = _span(min_c, max_c)
    top = np.asarray(top_sun_mj_m2_d(latitude_deg, day_of_year))
    return give(np.minimum(0.16 * np.sqrt(span), 0.75) * top, min_c)


def _span(min_c: Floats, max_c: Floats) -> FloatArray:
    span = _temp(max_c) - _temp(min_c)
    if (span < 0.0).any():
        raise NotPossible(N_("science", "The day's lowest temperature is above its highest."))
    return span


@fitting
def reference_et0_mm_d(
    min_c: R,
    max_c: R,
    vapour_kpa: R,
    sun_mj_m2_d: R,
    wind_2m_m_s: Floats,
    latitude_deg: Floats,
    altitude_m: Floats,
    day_of_year: Floats,
) -> R:
    """What open, watered grass gives off in a day [mm/d]: the day's drying power in one figure.

    Lowest and highest air temperature [°C], mean vapour pressure [kPa], sun [MJ/m2/d], wind at 2 m [m/s],
    latitude [deg], altitude [m], day of the year. FAO-56 eq. 6 with eq. 8, 13, 37 to 40; soil heat 0. Never below 0.
    """
    _span(min_c, max_c)
    low, high = _temp(min_c), _temp(max_c)
    vapour = within(vapour_kpa, 0.0, 20.0, N_("science", "A vapour pressure"), "kPa")
    wind = within(wind_2m_m_s, 0.0, 60.0, N_("science", "A wind speed"), "m/s")
    height = within(altitude_m, *ALTITUDE_M, N_("science", "An altitude"), "m")
    sun = within(sun_mj_m2_d, 0.0, 50.0, N_("science", "A day's sun"), "MJ/m²")
    mean = (low + high) / 2.0
    slope = 4098.0 * _tetens(mean) / (mean + 237.3) ** 2
    gamma = 0.000665 * np.asarray(pressure_fao_kpa(height))
    day = np.asarray(day_of_year, dtype=np.float64)
    clear = (0.75 + 2e-5 * height) * np.asarray(top_sun_mj_m2_d(latitude_deg, day))
    cloud = 1.35 * np.minimum(sun / clear, 1.0) - 0.35
    back = _SIGMA * ((low + 273.16) ** 4 + (high + 273.16) ** 4) / 2.0 * (0.34 - 0.14 * np.sqrt(vapour)) * cloud
    radiation = (1.0 - _ALBEDO) * sun - back
    dryness = (_tetens(low) + _tetens(high)) / 2.0 - vapour
    top = 0.408 * slope * radiation + gamma * 900.0 / (mean + 273.0) * wind * dryness
    return give(np.maximum(top / (slope + gamma * (1.0 + 0.34 * wind)), 0.0), min_c)
