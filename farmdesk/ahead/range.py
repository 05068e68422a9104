"""A range of time ahead: earliest, likely, latest, what it rests on. Every forecast answers with one.

An answer keeps its draws, so that any question of chance is a count over them, and never a bell curve
laid through three numbers: ends are lopsided, and some lots never get there.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field
from statistics import NormalDist, median
from typing import Final

import numpy as np
from numpy.typing import NDArray

from farmdesk.clock import HOUR_S
from farmdesk.errors import NotPossible
from farmdesk.text import N_, Text

Floats = NDArray[np.float64]

OWN_LOTS_NEEDED = 5  # fewer finished lots than this say less than the settings do; common practice, no source
MAD_TO_SD = 1.4826  # a normal sample's sd over its median absolute deviation: 1 / NormalDist().inv_cdf(0.75)
LEAST_SPREAD_LN = 0.05  # ln of hours; no farm repeats itself closer than 5 %; common practice, no source
_POINTS = 400  # draws of a range that is a formula


def _nothing() -> Floats:
    return np.empty(0)


WARN: Final = "warn"
ALARM: Final = "alarm"


@dataclass(frozen=True, slots=True)
class Worry:
    """Something to look at twice ("warn") or to act on now ("alarm"), as the line to show: action first."""

    level: str
    text: Text


@dataclass(frozen=True, slots=True, eq=False)
class Ahead:
    """When something is reached, as a range; None stands for "open".

    `earliest`, `likely`, `latest` [UTC s] are the 10, 50 and 90 % points, `quarter` and `three_quarters`
    the 25 and 75 %. `never_frac` [0..1] is the chance that it is not reached within the horizon.
    `draws_utc_s` [UTC s, sorted, inf = not reached] is what they were counted from; `over_utc_s` the same
    for "too dry". `times_utc_s`, `low`, `mid`, `high` [n] are the fan (10, 50, 90 %) of moisture
    [fraction wet basis] or pH; empty where there is no curve to show honestly. `source` is one of
    typical, tray, meter, tray+meter, ph. `remark` is a second sentence where there is something to say; `worries`
    are of a vessel at the instant that was asked about, alarms first; by `look_utc_s` [UTC s] it wants to be seen again.
    """

    earliest_utc_s: float | None
    likely_utc_s: float | None
    latest_utc_s: float | None
    quarter_utc_s: float | None
    three_quarters_utc_s: float | None
    never_frac: float
    rests_on: Text
    source: str
    remark: Text | None = None
    draws_utc_s: Floats = field(default_factory=_nothing, repr=False)
    over_utc_s: Floats = field(default_factory=_nothing, repr=False)
    times_utc_s: Floats = field(default_factory=_nothing, repr=False)
    low: Floats = field(default_factory=_nothing, repr=False)
    mid: Floats = field(default_factory=_nothing, repr=False)
    high: Floats = field(default_factory=_nothing, repr=False)
    worries: tuple[Worry, ...] = ()
    look_utc_s: float | None = None

    @property
    def says(self) -> Text:
        """What it rests on, and what else there is to say of it."""
        if self.remark is None:
            return self.rests_on
        return N_("ahead", "{rests_on} {remark}", rests_on=self.rests_on, remark=self.remark)

    def chance_by(self, at_utc_s: float) -> float:
        """The chance [0..1] that it is reached by an instant [UTC s]."""
        return _share(self.draws_utc_s, at_utc_s)

    def chance_over_by(self, at_utc_s: float) -> float:
        """The chance [0..1] that it is over-dried by an instant [UTC s]; 0 where that has no meaning."""
        return _share(self.over_utc_s, at_utc_s)


def _share(sorted_draws: Floats, at_utc_s: float) -> float:
    if sorted_draws.size == 0:
        return 0.0
    return float(np.searchsorted(sorted_draws, at_utc_s, side="right") / sorted_draws.size)


def ahead_of(
    ends_utc_s: Floats,
    rests_on: Text,
    source: str,
    *,
    remark: Text | None = None,
    over_utc_s: Floats | None = None,
    fan: tuple[Floats, Floats, Floats, Floats] | None = None,
) -> Ahead:
    """Count a range from equally likely ends [UTC s, inf = not reached].

    `over_utc_s` [UTC s, inf = never]: when each draw is too dry. `fan`: times [UTC s], low, mid, high.
    Raises NotPossible without any draw.
    """
    draws = np.sort(np.asarray(ends_utc_s, dtype=np.float64))
    if draws.size == 0 or np.isnan(draws[-1]):
        raise NotPossible(N_("ahead", "There is nothing to count a range from."))
    earliest, quarter, likely, three_quarters, latest = (_point(draws, p) for p in (0.10, 0.25, 0.50, 0.75, 0.90))
    times, low, mid, high = fan or (_nothing(), _nothing(), _nothing(), _nothing())
    return Ahead(
        earliest,
        likely,
        latest,
        quarter,
        three_quarters,
        never_frac=float(np.isinf(draws).mean()),
        rests_on=rests_on,
        source=source,
        remark=remark,
        draws_utc_s=draws,
        over_utc_s=_nothing() if over_utc_s is None else np.sort(np.asarray(over_utc_s, dtype=np.float64)),
        times_utc_s=times,
        low=low,
        mid=mid,
        high=high,
    )


def stretched(ahead: Ahead, factor: float, now_utc_s: float) -> Ahead:
    """The same range made wider or narrower about its likely end by a factor [-]; nothing moves before now [UTC s].

    Open ends stay open, and a range whose middle is open stays as it is.
    """
    middle = ahead.likely_utc_s
    if middle is None or factor == 1.0:
        return ahead
    ends = ahead.draws_utc_s.copy()
    there = np.isfinite(ends)
    ends[there] = np.maximum(middle + factor * (ends[there] - middle), min(now_utc_s, middle))
    fan = (ahead.times_utc_s, ahead.low, ahead.mid, ahead.high)
    return ahead_of(ends, ahead.rests_on, ahead.source, remark=ahead.remark, over_utc_s=ahead.over_utc_s, fan=fan)


def _point(sorted_draws: Floats, share: float) -> float | None:
    """The point below which `share` of the draws lie, between its two neighbours; None when open."""
    at = share * (sorted_draws.size - 1)
    below = sorted_draws[math.floor(at)]
    above = sorted_draws[math.ceil(at)]
    if math.isinf(above):
        return None
    return float(below + (at - math.floor(at)) * (above - below))


def spread_of(own_h: Sequence[float]) -> tuple[float, float]:
    """Median [h] and spread [sd of ln h] of finished lots, by median absolute deviation.

    Robust: one forgotten lot does not widen the range of all others. The spread carries the doubt of a
    small sample, sqrt(1 + 1.57/n) (the variance of a median, pi/2 sd²/n).
    """
    ln_h = np.log(np.asarray(own_h, dtype=np.float64)).tolist()
    middle = median(ln_h)  # NumPy's would load its masked arrays, at every start
    sd = max(LEAST_SPREAD_LN, MAD_TO_SD * median(abs(ln - middle) for ln in ln_h))
    return math.exp(middle), sd * math.sqrt(1.0 + math.pi / 2 / len(ln_h))


def typical(
    own_h: Sequence[float],
    settings_h: tuple[float, float, float],
    start_utc_s: float,
    now_utc_s: float,
    *,
    never_frac: float = 0.0,
) -> Ahead:
    """What is typical for this method, known before any reading says more.

    own_h [h]: how long the farm's own finished lots of the method took. settings_h [h]: the 10, 50 and
    90 % points to use while fewer than five lots are finished. start_utc_s, now_utc_s [UTC s]; the range
    is that of a lot that has not finished by now. never_frac [0..1]: of lots by the settings that never
    get there. Raises NotPossible for hours that are not above zero or out of order.
    """
    low_h, middle_h, high_h = settings_h
    if not 0 < low_h <= middle_h <= high_h < math.inf or any(not 0 < h < math.inf for h in own_h):
        raise NotPossible(N_("ahead", "Typical hours must be above zero, and earliest before likely before latest."))
    if not (math.isfinite(start_utc_s) and math.isfinite(now_utc_s)):
        raise NotPossible(N_("ahead", "There is nothing to count a range from."))
    if not 0 <= never_frac < 1:
        raise NotPossible(N_("ahead", "The share of lots that never get there must lie between 0 and 1."))
    p = (np.arange(_POINTS) + 0.5) / _POINTS
    z = np.array([NormalDist().inv_cdf(float(x)) for x in p])
    if len(own_h) >= OWN_LOTS_NEEDED:
        middle_h, sd_ln = spread_of(own_h)
        took_h = middle_h * np.exp(sd_ln * z)
        never_frac = 0.0
        rests_on = N_("ahead", "Typical for this method: your own {n} finished lots.", n=len(own_h))
    else:
        tenth = NormalDist().inv_cdf(0.90)
        down, up = math.log(middle_h / low_h) / tenth, math.log(high_h / middle_h) / tenth
        took_h = middle_h * np.exp(np.where(z < 0, down, up) * z)
        rests_on = N_("ahead", "Typical for this method, from the settings; no reading of this lot says more yet.")
    ends = start_utc_s + took_h * HOUR_S
    left = ends[ends > now_utc_s]
    never = max(round(_POINTS * never_frac / (1 - never_frac)), 0 if left.size else 1)
    remark = None if left.size else N_("ahead", "It has taken longer than such lots do.")
    return ahead_of(np.concatenate([left, np.full(never, np.inf)]), rests_on, "typical", remark=remark)
