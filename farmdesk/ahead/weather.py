"""Drying weather: what the farm's own daily log says of days past, and many possible stories of days to come.

The drive of a day is its good drying hours over six, a usual drying day. Where the hours were not written, the
thirst of the air stands in for them. Days to come are whole days out of the farm's own log, each story going from a
day to what followed a day like it (nearest-neighbour resampling: Lall and Sharma 1996, Water Resour. Res. 32:679),
so that dry spells and rain spells hold together. A short log is filled up with a stock of usual days.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np

from farmdesk.clock import DAY_S, HOUR_S
from farmdesk.errors import NotPossible
from farmdesk.science.air import rh_at_temp_frac, saturation_kpa, vapour_kpa
from farmdesk.science.isotherms import ISOTHERM_TEMP_C, PARCHMENT
from farmdesk.science.limits import FloatArray, within
from farmdesk.text import N_

REFERENCE_GOOD_H: Final = 6.0  # good drying hours of a reference day: a dry season's usual; common practice, no source
REFERENCE_THIRST_KPA: Final = 1.9  # deficit at the warm hours of 25 °C days with 60 % mean humidity: ASHRAE sums
DAY_OPENS_H: Final = 7.0  # coffee is uncovered and dries from here ...
DAY_SHUTS_H: Final = 17.0  # ... to here, farm time, most at noon; a setting of the tropics, no source
STOCK_WEIGHT_D: Final = 8.0  # the stock counts as many days of log as this; our choice
OUTLOOK_TRUST: Final = 0.75  # share of stories that follow a typed outlook word; our choice

# good hours, rain mm, mean humidity of the stock: a made-up three weeks of drying season with one wet spell
_STOCK: Final = (
    (6.5, 0.0, 0.68), (6.0, 0.0, 0.69), (6.6, 0.0, 0.67), (5.4, 0.0, 0.72), (6.2, 0.0, 0.69), (6.8, 0.0, 0.66),
    (6.0, 0.0, 0.68), (5.0, 0.0, 0.74), (3.0, 2.0, 0.82), (1.0, 14.0, 0.91), (2.5, 5.0, 0.85), (4.8, 0.0, 0.75),
    (6.0, 0.0, 0.70), (6.6, 0.0, 0.67), (6.1, 0.0, 0.68), (5.7, 0.0, 0.70), (6.4, 0.0, 0.68), (6.2, 0.0, 0.69),
    (3.2, 0.0, 0.80), (5.0, 0.0, 0.73), (6.3, 0.0, 0.69),
)  # fmt: skip
OUTLOOKS: Final = ("sun", "mixed", "grey", "rain")


@dataclass(frozen=True, slots=True, eq=False)
class WeatherLog:
    """Daily rows, oldest first: local midnights [UTC s] and what was written of each day; NaN where nothing was.

    good_h [h] of good drying, min_c and max_c [°C], rh_frac [0..1, the day's mean], rain_mm [mm].
    Raises NotPossible for midnights that do not rise or values no weather has.
    """

    midnight_utc_s: FloatArray
    good_h: FloatArray
    min_c: FloatArray
    max_c: FloatArray
    rh_frac: FloatArray
    rain_mm: FloatArray

    def __post_init__(self) -> None:
        """Hold the rows to what weather can be."""
        columns = (self.good_h, self.min_c, self.max_c, self.rh_frac, self.rain_mm)
        at = self.midnight_utc_s
        if at.ndim != 1 or any(c.shape != at.shape for c in columns):
            raise NotPossible(N_("weather", "Every weather day needs all its columns."))
        if not np.isfinite(at).all() or (np.diff(at) < DAY_S / 2).any():
            raise NotPossible(N_("weather", "Weather days must follow each other, one row a day."))
        limits = (
            (self.good_h, 0.0, 16.0, N_("weather", "Good drying hours"), "h", 1.0),
            (self.min_c, -20.0, 45.0, N_("weather", "A lowest temperature"), "°C", 1.0),
            (self.max_c, -20.0, 55.0, N_("weather", "A highest temperature"), "°C", 1.0),
            (self.rh_frac, 0.05, 1.0, N_("weather", "A mean humidity"), "%", 100.0),
            (self.rain_mm, 0.0, 1500.0, N_("weather", "A day's rain"), "mm", 1.0),
        )
        for values, low, high, what, unit, scale in limits:
            within(values[~np.isnan(values)], low, high, what, unit, scale)

    def known_by(self, at_utc_s: float) -> WeatherLog:
        """The rows of days that had begun by an instant [UTC s]."""
        rows = self.midnight_utc_s <= at_utc_s
        return WeatherLog(*(getattr(self, name)[rows] for name in self.__slots__))


@dataclass(frozen=True, slots=True, eq=False)
class DryingDays:
    """Days as coffee feels them, one entry a day: drive [reference days], what it comes to rest at by day and by
    night [dry basis], rain [mm], and whether the drive is known from the day itself.
    """

    midnight_utc_s: FloatArray
    drive_d: FloatArray
    day_rest_db_frac: FloatArray
    night_rest_db_frac: FloatArray
    rain_mm: FloatArray
    known: np.ndarray


def day_share(hour_h: FloatArray) -> FloatArray:
    """Share [0..1] of a day's drying done by an hour of the day [h]: a half sine from opening to shutting."""
    part = np.clip((hour_h - DAY_OPENS_H) / (DAY_SHUTS_H - DAY_OPENS_H), 0.0, 1.0)
    return np.asarray((1.0 - np.cos(np.pi * part)) / 2.0)


def day_hour(share: FloatArray) -> FloatArray:
    """The hour of the day [h] by which a share [0..1] of its drying is done: the inverse of `day_share`."""
    part = np.arccos(np.clip(1.0 - 2.0 * share, -1.0, 1.0)) / np.pi
    return np.asarray(DAY_OPENS_H + part * (DAY_SHUTS_H - DAY_OPENS_H))


def rests_of(min_c: FloatArray, max_c: FloatArray, rh_frac: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Equilibrium moisture [dry basis] of coffee in a day's drying hours and in its nights, from the day's lowest and
    highest temperature [°C] and mean humidity [0..1].

    Drying hours are taken near the day's highest temperature, sun warming the coffee as much again as it is short of
    it; nights near the lowest. Vapour is that of the day's mean. Humidity is cut to the isotherm's 20 to 90 %.
    """
    mean_c = (min_c + max_c) / 2.0
    day_c = np.clip(max_c, *ISOTHERM_TEMP_C)
    night_c = np.clip(min_c + (max_c - min_c) / 6.0, *ISOTHERM_TEMP_C)
    day_rh = np.clip(rh_at_temp_frac(mean_c, rh_frac, day_c), 0.20, 0.90)
    night_rh = np.clip(rh_at_temp_frac(mean_c, rh_frac, night_c), 0.20, 0.90)
    return PARCHMENT.equilibrium(day_c, day_rh).moisture_db_frac, PARCHMENT.equilibrium(
        night_c, night_rh
    ).moisture_db_frac


def thirst_kpa(min_c: FloatArray, max_c: FloatArray, rh_frac: FloatArray) -> FloatArray:
    """How thirsty the air is in the warm hours [kPa], from the day's extremes [°C] and mean humidity [0..1]."""
    mean_c = (min_c + max_c) / 2.0
    return np.asarray(np.maximum(saturation_kpa(max_c) - vapour_kpa(mean_c, rh_frac), 0.05))


def climate_thirst_kpa(log: WeatherLog) -> float:
    """The log's usual thirst [kPa], for what speed to expect on a farm with no lots yet; the reference without rows."""
    rows = ~np.isnan(log.min_c + log.max_c + log.rh_frac)
    if not rows.any():
        return REFERENCE_THIRST_KPA
    return float(np.median(thirst_kpa(log.min_c[rows], log.max_c[rows], log.rh_frac[rows])))


def drying_days(log: WeatherLog, first_utc_s: float, last_utc_s: float) -> DryingDays:
    """Every day from that of one instant to that of another [UTC s], gaps filled with the log's usual day."""
    at = _midnights(log, first_utc_s, last_utc_s)
    if log.midnight_utc_s.size:
        row = np.abs(log.midnight_utc_s[None, :] - at[:, None]).argmin(axis=1)
        there = np.abs(log.midnight_utc_s[row] - at) < DAY_S / 4
    else:
        row, there = np.zeros(at.size, dtype=np.int64), np.zeros(at.size, dtype=bool)
    columns = {}
    for name, usual in (("min_c", 14.0), ("max_c", 25.0), ("rh_frac", 0.70), ("rain_mm", 0.0), ("good_h", 5.6)):
        values: FloatArray = getattr(log, name)
        seen = values[~np.isnan(values)]
        middle = float(np.median(seen) if name != "good_h" else seen.mean()) if seen.size else usual
        got = np.full(at.size, np.nan)
        got[there] = values[row[there]]
        columns[name] = np.where(np.isnan(got), np.nan if name == "good_h" else middle, got)
        if name == "good_h":
            usual_h = middle
    low, high = np.minimum(columns["min_c"], columns["max_c"]), np.maximum(columns["min_c"], columns["max_c"])
    thirst = thirst_kpa(low, high, columns["rh_frac"])
    # a day without hours dries as its air is thirsty: exponent of Parra-Coronado et al. 2008 (see science.drying)
    relative = np.minimum(thirst / max(climate_thirst_kpa(log), 1e-3), 1.5) ** 0.88
    written = ~np.isnan(columns["good_h"])
    with_air = there & ~written
    hours = np.where(written, columns["good_h"], usual_h * np.where(with_air, relative, 1.0))
    day_rest, night_rest = rests_of(low, high, columns["rh_frac"])
    return DryingDays(at, hours / REFERENCE_GOOD_H, day_rest, night_rest, columns["rain_mm"], written)


def _midnights(log: WeatherLog, first_utc_s: float, last_utc_s: float) -> FloatArray:
    """Local midnights from the day of one instant to the day of another, on the log's own clock."""
    if log.midnight_utc_s.size:
        anchor = float(log.midnight_utc_s[np.abs(log.midnight_utc_s - last_utc_s).argmin()])
    else:
        anchor = np.floor(first_utc_s / DAY_S) * DAY_S
    begin = np.floor((first_utc_s - anchor) / DAY_S)
    end = np.floor((last_utc_s - anchor) / DAY_S)
    return np.asarray(anchor + DAY_S * np.arange(begin, end + 1))


# --- days to come -----------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True, eq=False)
class Stories:
    """Possible weathers: drive, rests and rain, each shaped (stories, days), from the first day asked on."""

    drive_d: FloatArray
    day_rest_db_frac: FloatArray
    night_rest_db_frac: FloatArray
    rain_mm: FloatArray


def stories(
    log: WeatherLog,
    days_n: int,
    stories_n: int,
    rng: np.random.Generator,
    outlook: Sequence[str | None] = (),
) -> Stories:
    """Days to come after the log's last day, as many stories as wanted.

    outlook: for the first days one of sun, mixed, grey, rain, or None where nobody said; three stories in four
    follow it. Raises NotPossible for another word.
    """
    if any(word is not None and word not in OUTLOOKS for word in outlook):
        raise NotPossible(N_("weather", "An outlook is one of sun, mixed, grey or rain."))
    pool, follows, weight = _pool(log)
    drive = pool.drive_d
    n = drive.size
    near_n = max(3, int(np.sqrt(n)))
    near = np.argsort(np.abs(drive[None, :] - drive[:, None]) + (follows < 0)[None, :] * 1e6, axis=1, kind="stable")[
        :, :near_n
    ]
    chance = weight[near] / (1.0 + np.arange(near_n))
    chance = np.cumsum(chance / chance.sum(axis=1, keepdims=True), axis=1)
    kinds = _kinds(pool)
    last = n - len(_STOCK) - 1  # the log's last day; without a log any stock day
    at = np.full(stories_n, last) if last >= 0 else rng.integers(0, n, stories_n)
    picked = np.empty((stories_n, days_n), dtype=np.int64)
    for day in range(days_n):
        pick = (rng.random(stories_n)[:, None] > chance[at]).sum(axis=1)
        at = follows[near[at, np.minimum(pick, near_n - 1)]]
        word = outlook[day] if day < len(outlook) else None
        if word is not None:
            such = np.flatnonzero(kinds == OUTLOOKS.index(word))
            told = rng.random(stories_n) < OUTLOOK_TRUST
            at = np.where(told, rng.choice(such, stories_n, p=weight[such] / weight[such].sum()), at)
        picked[:, day] = at
    return Stories(drive[picked], pool.day_rest_db_frac[picked], pool.night_rest_db_frac[picked], pool.rain_mm[picked])


def _pool(log: WeatherLog) -> tuple[DryingDays, np.ndarray, FloatArray]:
    """The log's days and then the stock's, which day followed which (-1: none), and what each day counts for."""
    if log.midnight_utc_s.size:
        own = drying_days(log, float(log.midnight_utc_s[0]) + HOUR_S, float(log.midnight_utc_s[-1]) + HOUR_S)
    else:
        none = np.empty(0)
        own = DryingDays(none, none, none, none, none, np.empty(0, dtype=bool))
    hours, rain, rh = (np.array(column) for column in zip(*_STOCK, strict=True))
    low = float(np.nanmedian(log.min_c)) if (~np.isnan(log.min_c)).any() else 14.0
    high = float(np.nanmedian(log.max_c)) if (~np.isnan(log.max_c)).any() else 25.0
    cooler = np.where(rain > 1.0, 3.0, 0.0)
    day_rest, night_rest = rests_of(np.full(hours.size, low), np.maximum(high - cooler, low), rh)
    pool = DryingDays(
        np.concatenate([own.midnight_utc_s, np.zeros(hours.size)]),
        np.concatenate([own.drive_d, hours / REFERENCE_GOOD_H]),
        np.concatenate([own.day_rest_db_frac, day_rest]),
        np.concatenate([own.night_rest_db_frac, night_rest]),
        np.concatenate([own.rain_mm, rain]),
        np.concatenate([own.known, np.ones(hours.size, dtype=bool)]),
    )
    n, stock = own.drive_d.size, hours.size
    follows = np.concatenate([np.arange(1, n + 1), n + (np.arange(stock) + 1) % stock]).astype(np.int64)
    if n:
        follows[n - 1] = -1  # nobody knows yet what follows the last day
    weight = np.concatenate([np.where(own.known, 1.0, 0.25), np.full(stock, STOCK_WEIGHT_D / stock)])
    return pool, follows, weight


def _kinds(days: DryingDays) -> np.ndarray:
    """Which outlook word fits a day: rain by the gauge, else by the drive (G4's sky: sun, thin cloud, grey)."""
    by_drive = np.where(days.drive_d >= 0.95, 0, np.where(days.drive_d >= 0.55, 1, 2))
    return np.where(days.rain_mm >= 1.0, 3, by_drive)
