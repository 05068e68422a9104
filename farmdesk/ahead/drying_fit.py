"""One lot's drying, fitted: tray weights and meter readings joined in one likelihood, through its own weather.

Parameters of a lot, each in units of its prior's spread: ln rate, shape, ln evaporation ceiling, equilibrium offset
(these four are learnt from lot to lot), starting moisture, the meter's bias, a factor for each day's drive, a jump
for each wetting, and the dry matter on each tray. Trays and meter are never averaged: a tray knows the shape of the
curve and not its level, a meter below 30 % knows the level, and the likelihood weighs them reading by reading.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Final

import numpy as np

from farmdesk.ahead.learning import Layers, Prior, row_of
from farmdesk.ahead.posterior import Fit, best_fit, student
from farmdesk.ahead.weather import (
    DAY_OPENS_H,
    DAY_SHUTS_H,
    REFERENCE_THIRST_KPA,
    DryingDays,
    WeatherLog,
    climate_thirst_kpa,
    day_share,
    drying_days,
)
from farmdesk.clock import DAY_S, HOUR_S
from farmdesk.errors import NotPossible
from farmdesk.science.drying import gap_left
from farmdesk.science.limits import FloatArray, within
from farmdesk.text import N_, Num

LEARNT_N: Final = 4  # the first four parameters: ln rate, shape, ln ceiling, equilibrium offset
METER_TOP_WB_FRAC: Final = (
    0.30  # above, bench meters are erratic: Jiménez and Bulgarelli 1992, Agron. Costarric. 16(2):211
)
TRAY_JUMP_LN: Final = 0.015  # a tray this much heavier than before was wetted: four sd of two weighings
METER_JUMP_WB: Final = 0.025  # the same for the meter
READING_FREEDOM: Final = 6.0  # Student's degrees for readings: a slip pulls little; our choice
DAY_FREEDOM: Final = 4.0  # and for days: a log a day out of step must not bend the lot's rate; our choice
DAY_SCALE: Final = 0.9  # Student's scale for a day's sd; 0.71 would give just that sd, 1 its middle; our choice
UNKNOWN_DAY: Final = 2.0  # a day nobody logged varies by so much more; our choice
LONGEST_D: Final = 1000.0  # from spreading to now; more is a date that was typed wrong
_JUMP_SD_DB: Final = 0.15  # of a wetting's jump, dry basis: 5 mm on washed coffee would be 0.6 if all stayed


@dataclass(frozen=True, slots=True, eq=False)
class Tray:
    """A sample tray: instants [UTC s, rising] and net weights [g], both [n]; handfuls taken out already allowed for."""

    at_utc_s: FloatArray
    net_g: FloatArray

    def __post_init__(self) -> None:
        """Hold weights and instants together."""
        _together(self.at_utc_s, self.net_g)


@dataclass(frozen=True, slots=True, eq=False)
class Meter:
    """Meter readings: instants [UTC s], mean of the repeats [wet basis], how many repeats, whether a correction found
    against an oven is already in the figure. All [n].
    """

    at_utc_s: FloatArray
    mean_wb_frac: FloatArray
    reps_n: FloatArray
    corrected: np.ndarray

    def __post_init__(self) -> None:
        """Hold readings and instants together."""
        _together(self.at_utc_s, self.mean_wb_frac, self.reps_n, self.corrected)


@dataclass(frozen=True, slots=True, eq=False)
class DryingLot:
    """A lot on its beds: what it is, when it was spread [UTC s], how thick [kg/m² wet], how it is looked after.

    method: washed, honey or natural. surface: patio, raised, roof or shade. start_wb_frac: moisture when spread,
    None for the method's usual; start_wb_sd its doubt. wettings_utc_s: known rain or spills on it. Under cover at
    night and in rain unless said otherwise.
    """

    method: str
    surface: str
    start_utc_s: float
    loading_kg_m2: float | None = None
    start_wb_frac: float | None = None
    start_wb_sd: float | None = None
    trays: tuple[Tray, ...] = ()
    meter: Meter | None = None
    wettings_utc_s: tuple[float, ...] = ()
    covered_nights: bool = True
    covered_rain: bool = True

    def known_by(self, at_utc_s: float) -> DryingLot:
        """The lot as it was known at an instant [UTC s]: later readings and wettings left out."""
        trays = []
        for tray in self.trays:
            rows = tray.at_utc_s <= at_utc_s
            if rows.any():
                trays.append(Tray(tray.at_utc_s[rows], tray.net_g[rows]))
        meter = self.meter
        if meter is not None:
            rows = meter.at_utc_s <= at_utc_s
            columns = (meter.at_utc_s, meter.mean_wb_frac, meter.reps_n, meter.corrected)
            meter = Meter(*(column[rows] for column in columns)) if rows.any() else None
        wettings = tuple(at for at in self.wettings_utc_s if at <= at_utc_s)
        return DryingLot(
            self.method, self.surface, self.start_utc_s, self.loading_kg_m2, self.start_wb_frac, self.start_wb_sd,
            tuple(trays), meter, wettings, self.covered_nights, self.covered_rain,
        )  # fmt: skip


def key_of(lot: DryingLot) -> str:
    """What lots must share to teach each other most: method and surface."""
    return f"{lot.method}/{lot.surface}"


def drying_layers() -> Layers:
    """Spread of the four learnt parameters by layer, from the table of defaults."""
    spread = row_of("drying_defaults", "spread")
    return Layers(*(np.array(spread[name], dtype=np.float64) for name in ("farm", "method", "lot")))


def drying_settings(lot: DryingLot, log: WeatherLog) -> FloatArray:
    """The settings' mean of the four learnt parameters; a farm in thirstier air than the reference dries faster.

    The exponent 0.88 on the vapour deficit is that of Parra-Coronado et al. 2008 (see science.drying).
    """
    surface = row_of("drying_defaults", "surface").get(lot.surface)
    if surface is None:
        raise NotPossible(N_("drying", "There is no drying surface called “{name}”.", name=lot.surface))
    row = row_of("drying_defaults", lot.method)
    if "rate_per_d" not in row:
        raise NotPossible(N_("drying", "There is no way of drying called “{name}”.", name=lot.method))
    rate = float(row["rate_per_d"]) * float(surface)
    climate = 0.88 * np.log(climate_thirst_kpa(log) / REFERENCE_THIRST_KPA)
    ceiling = float(row_of("drying_defaults", "ceiling")["kg_m2_d"])
    return np.array([np.log(rate) + climate, 0.0, np.log(ceiling), 0.0])


@dataclass(frozen=True, slots=True, eq=False)
class Steps:
    """A stretch of time cut at every opening, shutting, reading and wetting: per step the day it lies in, the share [0..1] of
    the day's drying (0 at night), its length in days, and whether it is night. `ends_utc_s` [UTC s].
    """

    day: np.ndarray
    share: FloatArray
    length_d: FloatArray
    night: np.ndarray
    ends_utc_s: FloatArray


def cut(midnights_utc_s: FloatArray, first_utc_s: float, last_utc_s: float, at_utc_s: FloatArray) -> Steps:
    """Steps from one instant to another [UTC s], ending also at each of `at_utc_s`."""
    edges = np.concatenate([midnights_utc_s + DAY_OPENS_H * HOUR_S, midnights_utc_s + DAY_SHUTS_H * HOUR_S, at_utc_s])
    inner = edges[(edges > first_utc_s) & (edges < last_utc_s)]
    points = np.unique(np.concatenate([[first_utc_s, last_utc_s], inner]))
    begin, end = points[:-1], points[1:]
    day = np.clip(np.searchsorted(midnights_utc_s, (begin + end) / 2.0, side="right") - 1, 0, midnights_utc_s.size - 1)
    h0, h1 = ((t - midnights_utc_s[day]) / HOUR_S for t in (begin, end))
    share = day_share(h1) - day_share(h0)
    return Steps(day, share, (end - begin) / DAY_S, share <= 0.0, end)


@dataclass(eq=False)
class LotModel:
    """One lot with its weather and prior, ready to be asked for residuals. Not for use outside `ahead`."""

    lot: DryingLot
    days: DryingDays
    prior: Prior
    until_utc_s: float
    steps: Steps = field(init=False)
    size_n: int = field(init=False)

    def __post_init__(self) -> None:
        """Check the readings, cut the time, and lay out the parameters."""
        lot, noise = self.lot, row_of("drying_defaults", "noise")
        usual = row_of("drying_defaults", lot.method)
        self.noise = noise
        self.start_wb = lot.start_wb_frac if lot.start_wb_frac is not None else float(usual["start_wb_frac"])
        self.start_sd = lot.start_wb_sd if lot.start_wb_sd is not None else float(usual["start_wb_sd"])
        loading = lot.loading_kg_m2 if lot.loading_kg_m2 is not None else float(usual["loading_kg_m2"])
        self.dry_kg_m2 = float(within(loading, 0.1, 200.0, N_("drying", "A loading"), "kg/m²")) * (1.0 - self.start_wb)
        within(self.start_wb, 0.05, 0.85, N_("drying", "A starting moisture"), "%", 100.0)
        within(self.start_sd, 1e-4, 0.2, N_("drying", "A doubt of the starting moisture"), "%", 100.0)
        for tray in lot.trays:
            _series(tray.at_utc_s, lot.start_utc_s, self.until_utc_s)
            within(tray.net_g, 1.0, 1e6, N_("drying", "A tray weight"), "g")
        meter = lot.meter
        if meter is not None:
            _series(meter.at_utc_s, lot.start_utc_s, self.until_utc_s)
            within(meter.mean_wb_frac, 0.02, 0.80, N_("drying", "A meter reading"), "%", 100.0)
            within(meter.reps_n, 1, 1000, N_("drying", "Repeats of a meter reading"))
        fitted = np.zeros(0, dtype=bool) if meter is None else meter.mean_wb_frac <= METER_TOP_WB_FRAC
        self.meter_rows = np.flatnonzero(fitted)
        self.wettings = self._wettings()
        at = [tray.at_utc_s for tray in lot.trays] + ([meter.at_utc_s[fitted]] if meter is not None else [])
        readings = np.unique(np.concatenate([*at, np.empty(0)]))
        self.readings_utc_s = readings
        end = max(self.until_utc_s, lot.start_utc_s + 1.0)
        self.steps = cut(self.days.midnight_utc_s, lot.start_utc_s, end, np.concatenate([readings, self.wettings]))
        self.tray_at = [self._after(tray.at_utc_s) for tray in lot.trays]
        self.meter_at = self._after(meter.at_utc_s[fitted]) if meter is not None else np.zeros(0, dtype=np.int64)
        self.wet_at = self._after(self.wettings)
        self.days_n = int(self.steps.day.max()) + 1
        root = np.linalg.cholesky(self.prior.covariance + 1e-12 * np.eye(LEARNT_N))
        self.root = np.asarray(root, dtype=np.float64)
        # where each kind of parameter begins
        self.at_days = LEARNT_N + 2
        self.at_wet = self.at_days + self.days_n
        self.at_dry = self.at_wet + self.wettings.size
        self.size_n = self.at_dry + len(lot.trays)
        self.first_dry = np.array([tray.net_g[0] * (1.0 - self._guess_wb(tray)) for tray in lot.trays])

    def _guess_wb(self, tray: Tray) -> float:
        """Moisture of a tray's first weighing before anything is fitted, from how far the lot may have come."""
        gone_d = (tray.at_utc_s[0] - self.lot.start_utc_s) / DAY_S
        x0 = self.start_wb / (1.0 - self.start_wb)
        x = 0.1 + (x0 - 0.1) * np.exp(-0.5 * np.exp(self.prior.mean[0]) * gone_d)
        return float(x / (1.0 + x))

    def _wettings(self) -> FloatArray:
        """Instants at which moisture may have jumped: those told, and readings well above the one before."""
        found = [np.asarray(self.lot.wettings_utc_s, dtype=np.float64)]
        for tray in self.lot.trays:
            up = np.diff(np.log(tray.net_g)) > TRAY_JUMP_LN
            found.append((tray.at_utc_s[:-1] + tray.at_utc_s[1:])[up] / 2.0)
        if self.lot.meter is not None and self.meter_rows.size > 1 and not self.lot.trays:
            at, m = self.lot.meter.at_utc_s[self.meter_rows], self.lot.meter.mean_wb_frac[self.meter_rows]
            found.append(((at[:-1] + at[1:]) / 2.0)[np.diff(m) > METER_JUMP_WB])
        at = np.unique(np.concatenate(found))
        at = at[(at > self.lot.start_utc_s) & (at < self.until_utc_s)]
        # two trays that rose at the same weighing tell of one wetting
        return np.asarray(at[np.concatenate([[True], np.diff(at) > DAY_S / 4])] if at.size else at)

    def _after(self, at_utc_s: FloatArray) -> np.ndarray:
        """How many steps lie before each instant."""
        return np.searchsorted(self.steps.ends_utc_s, at_utc_s - 0.5, side="left") + (
            at_utc_s > self.lot.start_utc_s + 0.5
        )

    def unfold(self, theta: FloatArray) -> dict[str, FloatArray]:
        """The lot's parameters in their own units, each (m, 1) or (m, k), from scaled ones (m, p)."""
        learnt = self.prior.mean + theta[:, :LEARNT_N] @ self.root.T
        start_wb = np.clip(self.start_wb + self.start_sd * theta[:, LEARNT_N], 0.05, 0.85)
        day_sd = float(self.noise["day_ln"]) * np.where(self.days.known[: self.days_n], 1.0, UNKNOWN_DAY)
        return {
            "rate": np.exp(learnt[:, :1]),
            "shape": np.clip(learnt[:, 1:2], -0.3, 0.3),
            "layer": self.dry_kg_m2 / np.exp(learnt[:, 2:3]),
            "rest": learnt[:, 3:4],
            "start": (start_wb / (1.0 - start_wb))[:, None],
            "bias": theta[:, LEARNT_N + 1 : LEARNT_N + 2] * float(self.noise["meter_bias_wb"]),
            "days": theta[:, self.at_days : self.at_wet] * day_sd,
            "wet": theta[:, self.at_wet : self.at_dry] * _JUMP_SD_DB,
            "dry_ln": np.log(self.first_dry) + 0.05 * theta[:, self.at_dry :],
        }

    def path(self, own: dict[str, FloatArray]) -> FloatArray:
        """Moisture [dry basis] at the start and after every step, (steps + 1, m)."""
        x = own["start"]
        rate, held, shape, offset = own["rate"], own["rate"] * own["layer"], own["shape"], own["rest"]
        night_share = float(self.noise["night_share"][0 if self.lot.covered_nights else 1])
        zero = np.zeros(1)
        drive = np.exp(own["days"]) * self.days.drive_d[: self.days_n]
        out = np.empty((self.steps.day.size + 1, x.shape[0]))
        out[0] = x[:, 0]
        for i in range(self.steps.day.size):
            day = self.steps.day[i]
            for jump in np.flatnonzero(self.wet_at == i):
                x = np.maximum(x + own["wet"][:, jump : jump + 1], 0.02)
            if self.steps.night[i]:
                xe = np.maximum(self.days.night_rest_db_frac[day] + offset, 0.02)
                x = xe + gap_left(x - xe, rate * (night_share * self.steps.length_d[i]), zero)
            else:
                xe = np.maximum(self.days.day_rest_db_frac[day] + offset, 0.02)
                x = xe + gap_left(x - xe, rate * drive[:, day : day + 1] * self.steps.share[i], held, shape)
            out[i + 1] = x[:, 0]
        return out

    def left_over(self, theta: FloatArray) -> FloatArray:
        """Residuals (m, r): readings, days in a row, and the prior."""
        own = self.unfold(theta)
        x = self.path(own)
        parts = []
        tray_sd = float(self.noise["tray_ln"])
        for k, (tray, at) in enumerate(zip(self.lot.trays, self.tray_at, strict=True)):
            says = own["dry_ln"][:, k : k + 1] + np.log1p(x[at].T)
            parts.append(student((np.log(tray.net_g) - says) / tray_sd, READING_FREEDOM))
        if self.lot.meter is not None and self.meter_rows.size:
            read = self.lot.meter.mean_wb_frac[self.meter_rows]
            corrected = self.lot.meter.corrected[self.meter_rows]
            wet = x[self.meter_at].T
            wet = wet / (1.0 + wet) + own["bias"] * np.where(corrected, 0.5, 1.0)
            sd = float(self.noise["meter_wb"]) + 0.2 * np.maximum(read - 0.18, 0.0)
            sd = sd / np.sqrt(self.lot.meter.reps_n[self.meter_rows])
            parts.append(student((read - wet) / sd, READING_FREEDOM))
        follow = float(self.noise["day_correlation"])
        factor = theta[:, self.at_days : self.at_wet]
        fresh = (factor[:, 1:] - follow * factor[:, :-1]) / np.sqrt(1.0 - follow**2)
        parts.append(student(np.concatenate([factor[:, :1], fresh], axis=1) / DAY_SCALE, DAY_FREEDOM))
        parts.append(theta[:, : self.at_days])
        parts.append(theta[:, self.at_wet : self.at_dry])
        return np.concatenate(parts, axis=1)

    def fit(self) -> Fit:
        """The most likely parameters, scaled, with their covariance."""
        return best_fit(self.left_over, np.zeros((1, self.size_n)))


def _together(at_utc_s: FloatArray, *values: np.ndarray) -> None:
    if at_utc_s.ndim != 1 or at_utc_s.size == 0 or any(v.shape != at_utc_s.shape for v in values):
        raise NotPossible(N_("drying", "Readings need an instant and a value each."))


def _series(at_utc_s: FloatArray, first_utc_s: float, last_utc_s: float) -> None:
    if not np.isfinite(at_utc_s).all() or (np.diff(at_utc_s) < 0).any():
        raise NotPossible(N_("drying", "Readings must follow each other in time."))
    if at_utc_s[0] < first_utc_s - 12 * HOUR_S or at_utc_s[-1] > last_utc_s + 1.0:
        raise NotPossible(N_("drying", "A reading lies before the coffee was spread or after now."))


def model_of(lot: DryingLot, log: WeatherLog, prior: Prior, now_utc_s: float) -> LotModel:
    """The lot as a model of all that was known by an instant [UTC s]."""
    if not lot.start_utc_s <= now_utc_s < np.inf:
        raise NotPossible(N_("drying", "The coffee is not spread yet at that instant."))
    within(lot.wettings_utc_s, -1e12, 1e12, N_("drying", "The instant of a wetting"))
    lain = Num((now_utc_s - lot.start_utc_s) / DAY_S, "d", 0)
    if not lain.value <= LONGEST_D:
        raise NotPossible(N_("drying", "No coffee lies out for {lain}; look at the day it was spread.", lain=lain))
    return LotModel(lot.known_by(now_utc_s), drying_days(log, lot.start_utc_s, now_utc_s), prior, now_utc_s)
