"""When a ferment meets its target pH: a curve through few readings, never without its range.

Draws of the fitted curve, only those that have not ended yet, each turned into clock time through a possible
temperature of the mass. The program advises; nose and hand decide.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

import numpy as np

from farmdesk.ahead.ferment_fit import (
    FermentLot,
    Hours,
    check,
    curve_of,
    end_draws,
    ferment_key,
    ferment_prior,
    ferment_settings,
    fit_of,
    hours_of,
    left_over_of,
    off_sd,
    typical_ends_h20,
)
from farmdesk.ahead.learning import LotTaught, Prior, prior_for, row_of, stretch_of, surprise_of, taught_alone
from farmdesk.ahead.posterior import Fit, best_fit
from farmdesk.ahead.range import Ahead, ahead_of, stretched
from farmdesk.clock import HOUR_S
from farmdesk.errors import NotPossible
from farmdesk.science.ferment import gompertz_end_h20, gompertz_ph, logistic_end_h20, logistic_ph
from farmdesk.science.limits import FloatArray
from farmdesk.science.thermal_time import MASS_C, MIXED, rate_at_20_ratio
from farmdesk.text import N_, Text, pct

ENDS_N: Final = 1000
SEED: Final = 20  # one fixed seed: the same question gives the same range
HORIZON_H: Final = 240.0  # the longest ferments run seven days; beyond ten the end is open
CURVE_READINGS_N: Final = 4  # so many readings, and so much fall, before a curve is shown
CURVE_FALL_PH: Final = 0.25
FLAT_PH_PER_H: Final = 0.02  # slower, and the pH says nothing yet: common practice, no source
FAN_H: Final = 72.0
_GRID_H: Final = 0.5
_COURSES_N: Final = 25  # courses the mass's temperature may take
_SETTLE_H: Final = 6.0  # a mass is slow: so long until it may be wholly elsewhere; our choice


def forecast_ferment(
    lot: FermentLot,
    now_utc_s: float,
    taught: Sequence[LotTaught] = (),
    *,
    wider: float | None = None,
    seed: int = SEED,
) -> Ahead:
    """The range in which a lot meets its target pH, asked at an instant [UTC s] with only what was known by then.

    taught: closed lots of the farm. wider: factor on the prior's spread instead of the rule of five own lots.
    With no or one reading: typical for the style, no curve. With two or three: a range, mostly what is typical. With
    four and a fall of 0.25: a curve too. Raises NotPossible for input no lot can have.
    """
    lot = lot.known_by(now_utc_s)
    check(lot, now_utc_s)
    hours = hours_of(lot, now_utc_s)
    prior = ferment_prior(lot, taught, wider=wider)
    rng = np.random.default_rng(seed)
    n = lot.ph.size
    if n and lot.ph[-1] <= lot.target_ph:
        return _arrived(lot)
    typical_ends = typical_ends_h20(lot, prior, rng)
    if n < 2:
        ends = _pick(typical_ends, np.full(typical_ends.size, 1.0 / typical_ends.size), hours.now_h20, rng)
        says = N_("ferment", "Typical for this method, {says}; one reading says no more.", says=prior.says)
        return ahead_of(_clock(ends, hours, now_utc_s, rng), says, "typical", remark=_plain_remark(hours))
    left_over, root = left_over_of(lot, hours, prior, gompertz_ph)
    fit = fit_of(left_over)
    own, ends_h20, weight = end_draws(left_over, root, prior, gompertz_end_h20, lot, fit, rng)
    chosen = _choose(ends_h20, weight, hours.now_h20, rng)
    twin_ends = _twin(lot, hours, prior, fit, rng)
    ends = ends_h20[chosen] if chosen.size else np.full(ENDS_N, np.inf)
    if _apart(ends, twin_ends):
        ends = np.concatenate([ends[::2], twin_ends[::2]])
    prior_frac = _still_prior(typical_ends, ends, hours.now_h20)
    fan = None
    if n >= CURVE_READINGS_N and lot.ph[0] - lot.ph.min() > CURVE_FALL_PH and chosen.size:
        fan = _fan(own[chosen], hours, now_utc_s)
    ahead = ahead_of(
        _clock(ends, hours, now_utc_s, rng),
        _rests_on(n, prior_frac, prior.says),
        "ph",
        remark=_remark(lot, hours, ends, off_sd(lot, hours, prior.mean + root @ fit.values)),
        fan=fan,
    )
    return stretched(ahead, stretch_of(taught, ferment_key(lot)), now_utc_s)


def _choose(ends_h20: FloatArray, weight: FloatArray, now_h20: float, rng: np.random.Generator) -> np.ndarray:
    """Equal draws of those ends that still lie ahead; none where all are past."""
    left = np.where(ends_h20 > now_h20, weight, 0.0)
    if left.sum() <= 1e-12:
        return np.empty(0, dtype=np.int64)
    # evenly spaced shares of the weight: less noise than picking one by one
    shares = (np.arange(ENDS_N) + rng.random()) / ENDS_N
    return np.searchsorted(np.cumsum(left / left.sum()), shares).clip(max=ends_h20.size - 1)


def _pick(ends_h20: FloatArray, weight: FloatArray, now_h20: float, rng: np.random.Generator) -> FloatArray:
    chosen = _choose(ends_h20, weight, now_h20, rng)
    return ends_h20[chosen] if chosen.size else np.full(ENDS_N, np.inf)


def _twin(lot: FermentLot, hours: Hours, prior: Prior, fit: Fit, rng: np.random.Generator) -> FloatArray:
    """Ends by the logistic twin, begun where the first curve came out."""
    left_over, root = left_over_of(lot, hours, prior, logistic_ph)
    twin = best_fit(left_over, fit.values[None])
    _, ends, weight = end_draws(left_over, root, prior, logistic_end_h20, lot, twin, rng)
    return _pick(ends, weight, hours.now_h20, rng)


def _apart(ends: FloatArray, twin: FloatArray) -> bool:
    """Whether the two curves' middles differ by more than half the first one's range: then both are counted."""
    low, middle, high = np.quantile(ends, [0.1, 0.5, 0.9], method="nearest")
    other = np.quantile(twin, 0.5, method="nearest")
    if np.isinf(high):
        return bool(np.isinf(other) != np.isinf(middle))
    return bool(abs(other - middle) > (high - low) / 2.0)


def _clock(ends_h20: FloatArray, hours: Hours, now_utc_s: float, rng: np.random.Generator) -> FloatArray:
    """Instants [UTC s] of ends [h at 20 °C], each through its own possible temperature from now on."""
    grid = np.arange(0.0, HORIZON_H + _GRID_H, _GRID_H)
    wait = ends_h20 - hours.now_h20
    if hours.plain:
        at = np.where(wait <= HORIZON_H, wait, np.inf)
        return np.asarray(now_utc_s + np.maximum(at, 0.0) * HOUR_S)
    course = _course(hours, now_utc_s + grid * HOUR_S, now_utc_s)
    off = float(row_of("ferment_defaults", "spread")["mass_c"]) * rng.standard_normal(_COURSES_N)
    settle = np.minimum(grid / _SETTLE_H, 1.0)
    rate = np.asarray(rate_at_20_ratio(np.clip(course + off[:, None] * settle, *MASS_C), MIXED))
    gained = np.concatenate(
        [np.zeros((_COURSES_N, 1)), np.cumsum((rate[:, 1:] + rate[:, :-1]) / 2.0 * _GRID_H, axis=1)], axis=1
    )
    which = rng.integers(0, _COURSES_N, wait.size)
    out = np.full(wait.size, np.inf)
    for story in range(_COURSES_N):
        rows = which == story
        reached = rows & (wait <= gained[story, -1])
        out[reached] = now_utc_s + np.interp(wait[reached], gained[story], grid) * HOUR_S
    return out


def _course(hours: Hours, at_utc_s: FloatArray, now_utc_s: float) -> FloatArray:
    """The mass's likely temperature [°C]: the last one, plus what it did at this hour of the day before."""
    last = float(hours.mass_c[-1])
    day = 24 * HOUR_S
    if hours.at_utc_s[-1] - hours.at_utc_s[0] < day:
        return np.full(at_utc_s.size, last)
    ago = at_utc_s - day * np.ceil((at_utc_s - hours.at_utc_s[-1]) / day)
    changed = last - float(np.interp(hours.at_utc_s[-1] - day, hours.at_utc_s, hours.mass_c))
    fading = np.exp(-(at_utc_s - now_utc_s) / day)
    return np.asarray(np.interp(ago, hours.at_utc_s, hours.mass_c) + changed * fading)


def _fan(own: FloatArray, hours: Hours, now_utc_s: float) -> tuple[FloatArray, FloatArray, FloatArray, FloatArray]:
    """PH from now on, 10, 50 and 90 %, through the likely temperature."""
    grid = np.arange(0.0, FAN_H + _GRID_H, _GRID_H)
    at = now_utc_s + grid * HOUR_S
    if hours.plain:
        h20 = hours.now_h20 + grid
    else:
        rate = np.asarray(rate_at_20_ratio(np.clip(_course(hours, at, now_utc_s), *MASS_C), MIXED))
        h20 = hours.now_h20 + np.concatenate([[0.0], np.cumsum((rate[1:] + rate[:-1]) / 2.0 * _GRID_H)])
    ph = curve_of(gompertz_ph, own[:300], h20)
    low, mid, high = np.quantile(ph, [0.1, 0.5, 0.9], axis=0)
    return at, low, mid, high


def _still_prior(typical_h20: FloatArray, ends_h20: FloatArray, now_h20: float) -> float:
    """How much of the range is still what is typical [0..1]: ratio of the spreads of ln hours, ends ahead only."""
    ahead = typical_h20[typical_h20 > now_h20]
    finite = [x[np.isfinite(x)] for x in (ends_h20, ahead)]
    if min(x.size for x in finite) < 20:
        return 1.0
    spread = [float(np.subtract(*np.quantile(np.log(x), [0.9, 0.1]))) for x in finite]
    return float(np.clip(spread[0] / max(spread[1], 1e-9), 0.0, 1.0))


def _rests_on(readings_n: int, prior_frac: float, says: Text) -> Text:
    if readings_n < CURVE_READINGS_N:
        return N_(
            "ferment",
            "Rests on {n} {n:reading|readings} and mostly on what is typical, {says}.",
            n=readings_n,
            says=says,
        )
    return N_(
        "ferment",
        "Rests on {n} {n:reading|readings}; about {part} of the range is still what is typical, {says}.",
        n=readings_n,
        part=pct(prior_frac, 0),
        says=says,
    )


def _plain_remark(hours: Hours) -> Text | None:
    return N_("ferment", "No temperature of the mass: plain clock hours.") if hours.plain else None


def _remark(lot: FermentLot, hours: Hours, ends_h20: FloatArray, left: FloatArray) -> Text | None:
    """The one thing most worth saying beside the range."""
    ran_h = (lot.at_utc_s[-1] - lot.at_utc_s[0]) / HOUR_S
    if (np.abs(left) > 3.0).any() or _runs(left):
        return N_("ferment", "The readings do not lie on a usual curve; check the probe and take another.")
    if ran_h > 0 and lot.ph[0] - lot.ph[-1] < FLAT_PH_PER_H * ran_h:
        return N_("ferment", "The pH says nothing yet.")
    if hours.plain:
        return _plain_remark(hours)
    if np.quantile(ends_h20, 0.9, method="nearest") > 2.0 * max(float(hours.readings_h20[-1]), 1e-9):
        return N_("ferment", "The latest end lies further ahead than the readings reach back; take it as open.")
    return None


def _runs(left: FloatArray) -> bool:
    """Three readings in a row on one side, each by more than a standard deviation."""
    side = np.where(np.abs(left) > 1.0, np.sign(left), 0.0)
    return bool((np.abs(np.convolve(side, np.ones(3), mode="valid")) == 3.0).any()) if side.size >= 3 else False


def _arrived(lot: FermentLot) -> Ahead:
    """The lot has met its target: the instant between the last reading above it and the first below."""
    at = crossing_utc_s(lot)
    words = N_("ferment", "The target was met by the readings themselves.")
    return ahead_of(
        np.array([at]), words, "ph", remark=N_("ferment", "The target pH is reached; feel and smell decide.")
    )


def next_check_utc_s(ahead: Ahead, now_utc_s: float, style: str) -> float:
    """When to look again [UTC s]: at the early bound or half-way to it, but within 4 h, or 12 h for extended lots."""
    most = (12.0 if style == "extended" else 4.0) * HOUR_S
    early = ahead.earliest_utc_s
    wait = most if early is None else max((early - now_utc_s) / 2.0, HOUR_S / 2.0)
    return now_utc_s + min(wait, most)


def crossing_utc_s(lot: FermentLot) -> float | None:
    """When the readings first met the target pH [UTC s], a straight line between two; None where they never did."""
    below = np.flatnonzero(lot.ph <= lot.target_ph)
    if not below.size:
        return None
    first = int(below[0])
    at = float(lot.at_utc_s[first])
    if first:
        before, after = lot.ph[first - 1], lot.ph[first]
        at -= float((lot.target_ph - after) / (before - after) * (at - lot.at_utc_s[first - 1]))
    return at


def ferment_taught(lot: FermentLot, closed_utc_s: float, before: Sequence[LotTaught] = ()) -> LotTaught:
    """What a closed lot teaches the next ones, from all its readings up to closed_utc_s [UTC s].

    `before`: what lots closed earlier taught, to tell how well this one would have been foretold. Raises NotPossible with fewer than two readings.
    """
    check(lot, closed_utc_s)
    if lot.ph.size < 2:
        raise NotPossible(N_("ferment", "A lot with fewer than two pH readings teaches nothing."))
    mean, layers = ferment_settings(lot)
    prior = prior_for(ferment_key(lot), mean, layers, ())
    left_over, root = left_over_of(lot, hours_of(lot, closed_utc_s), prior, gompertz_ph)
    fit = fit_of(left_over)
    return taught_alone(ferment_key(lot), fit.values, fit.covariance, root, _surprise(lot, before))


def _surprise(lot: FermentLot, before: Sequence[LotTaught]) -> float | None:
    """The lot asked again at its first reading after half its time, knowing only what was known then."""
    end = crossing_utc_s(lot)
    if end is None:
        return None
    later = lot.at_utc_s[lot.at_utc_s > (lot.start_utc_s + end) / 2.0]
    if not later.size or later[0] >= end or np.searchsorted(lot.at_utc_s, later[0]) < 1:
        return None
    unscaled = [replace(one, surprise=None) for one in before]
    return surprise_of(forecast_ferment(lot, float(later[0]), unscaled), end)
