"""One ferment, fitted: pH readings in hours at 20 °C of the mass, against what is typical for its style.

The curve is Gompertz, its logistic twin a second opinion. Most likely parameters from four starts, then heavy-tailed
draws around them, weighted by how likely each really is. Parameters: starting pH, ln of the whole fall, ln of the
steepest fall per hour, ln of the lag.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from typing import Final

import numpy as np

from farmdesk.ahead.learning import Layers, LotTaught, Prior, prior_for, row_of
from farmdesk.ahead.posterior import Fit, LeftOver, best_fit, student, weighted_draws
from farmdesk.ahead.range import OWN_LOTS_NEEDED
from farmdesk.errors import NotPossible
from farmdesk.science.ferment import PH, gompertz_end_h20, gompertz_ph
from farmdesk.science.limits import FloatArray, single, within
from farmdesk.science.thermal_time import MASS_C, ferment_hours
from farmdesk.text import N_

DRAWS_N: Final = 2500
FREEDOM: Final = 4.0  # Student's degrees of a reading; our choice
READING_SCALE: Final = (
    0.95  # Student's scale for a reading's sd; 0.71 would give just that sd, 1 its middle; our choice
)
ENOUGH: Final = 100.0  # effective draws; fewer, and the proposal is widened; our choice
_LN_LIMIT: Final = 9.0  # ln of a parameter is cut here, far beyond any ferment, so that no draw overflows

Curve = Callable[..., FloatArray]


@dataclass(frozen=True, slots=True, eq=False)
class FermentLot:
    """A lot in its vessel. style: washed, extended or honey; pitched with yeast or not; filled at [UTC s].

    at_utc_s [UTC s, rising], ph, and paper (True where paper, not a meter) are the readings, [n]. mass_at_utc_s
    [UTC s] and mass_c [°C, NaN for none] are temperatures of the mass, from hand or logger, [k].
    """

    style: str
    start_utc_s: float
    target_ph: float
    at_utc_s: FloatArray = field(default_factory=lambda: np.empty(0))
    ph: FloatArray = field(default_factory=lambda: np.empty(0))
    paper: np.ndarray = field(default_factory=lambda: np.empty(0, dtype=bool))
    mass_at_utc_s: FloatArray = field(default_factory=lambda: np.empty(0))
    mass_c: FloatArray = field(default_factory=lambda: np.empty(0))
    pitched: bool = False

    def __post_init__(self) -> None:
        """Hold readings and instants together."""
        shapes = {self.at_utc_s.shape, self.ph.shape, self.paper.shape}
        if (
            len(shapes) > 1
            or self.at_utc_s.ndim != 1
            or self.mass_c.ndim != 1
            or self.mass_at_utc_s.shape != self.mass_c.shape
        ):
            raise NotPossible(N_("ferment", "Ferment readings need an instant and a value each."))

    def known_by(self, at_utc_s: float) -> FermentLot:
        """The lot as it was known at an instant [UTC s]."""
        rows, mass = self.at_utc_s <= at_utc_s, self.mass_at_utc_s <= at_utc_s
        return FermentLot(
            self.style, self.start_utc_s, self.target_ph, self.at_utc_s[rows], self.ph[rows], self.paper[rows],
            self.mass_at_utc_s[mass], self.mass_c[mass], self.pitched,
        )  # fmt: skip


def ferment_key(lot: FermentLot) -> str:
    """What lots must share to teach each other most: style, and whether yeast was pitched."""
    return f"{lot.style}/{'pitched' if lot.pitched else 'own'}"


def ferment_settings(lot: FermentLot) -> tuple[FloatArray, Layers]:
    """The settings' mean of p0, ln A, ln mu, ln lam, and their spread by layer."""
    row, spread, pitched = (row_of("ferment_defaults", name) for name in (lot.style, "spread", "pitched"))
    if "steepest" not in row:
        raise NotPossible(N_("ferment", "There is no way of fermenting called “{name}”.", name=lot.style))
    fall, lag = float(row["fall"]), float(row["lag"])
    if lot.pitched:
        fall, lag = fall * float(pitched["fall_ratio"]), lag * float(pitched["lag_ratio"])
    mean = np.array([float(row["start"]), np.log(fall), np.log(float(row["steepest"])), np.log(lag)])
    sd = np.array(row["sd"], dtype=np.float64)
    return mean, Layers(*(sd * np.sqrt(float(spread[f"{name}_frac"])) for name in ("farm", "method", "lot")))


def ferment_prior(lot: FermentLot, taught: Sequence[LotTaught] = (), *, wider: float | None = None) -> Prior:
    """What to expect of the next lot. Wider by half until five own lots of the style are closed (`wider` overrides)."""
    mean, layers = ferment_settings(lot)
    prior = prior_for(ferment_key(lot), mean, layers, taught)
    if wider is None:
        wider = 1.0 if prior.own_n >= OWN_LOTS_NEEDED else float(row_of("ferment_defaults", "spread")["until_own"])
    width = single(wider, 0.1, 10.0, N_("ferment", "A factor on the spread"))
    return Prior(prior.mean, prior.covariance * width**2, prior.own_n, prior.says)


@dataclass(frozen=True, slots=True, eq=False)
class Hours:
    """Hours at 20 °C at the readings and now, whether they are plain clock hours, and the mass's temperatures [°C]
    with their instants [UTC s].
    """

    readings_h20: FloatArray
    now_h20: float
    plain: bool
    at_utc_s: FloatArray
    mass_c: FloatArray


def hours_of(lot: FermentLot, now_utc_s: float) -> Hours:
    """Ferment hours of a lot's readings and of now [UTC s]; plain clock hours where no temperature was read."""
    has = ~np.isnan(lot.mass_c)
    warm_at, warm = lot.mass_at_utc_s[has], lot.mass_c[has]
    at = np.unique(np.concatenate([[lot.start_utc_s, now_utc_s], lot.at_utc_s, warm_at]))
    at = at[at >= lot.start_utc_s]
    mass = np.full(at.size, np.nan)
    inside = warm_at >= lot.start_utc_s
    mass[np.searchsorted(at, warm_at[inside])] = warm[inside]
    counted = ferment_hours(at, mass)
    h20 = np.interp(np.append(lot.at_utc_s, now_utc_s), at, counted.at_20_h20)
    return Hours(h20[:-1], float(h20[-1]), not inside.any(), warm_at[inside], warm[inside])


def check(lot: FermentLot, now_utc_s: float) -> None:
    """Raise NotPossible for a lot that cannot be, at an instant [UTC s]."""
    at = lot.at_utc_s
    for series in (at, lot.mass_at_utc_s):
        if not np.isfinite(series).all() or (np.diff(series) <= 0).any():
            raise NotPossible(N_("ferment", "Ferment readings must follow each other in time."))
    if at.size and (at[0] < lot.start_utc_s - 1.0 or at[-1] > now_utc_s + 1.0):
        raise NotPossible(N_("ferment", "A reading lies before the vessel was filled or after now."))
    if not lot.start_utc_s <= now_utc_s < np.inf:
        raise NotPossible(N_("ferment", "The vessel is not filled yet at that instant."))
    within(lot.ph, *PH, N_("ferment", "A pH"))
    within(lot.target_ph, *PH, N_("ferment", "A target pH"))
    within(lot.mass_c[~np.isnan(lot.mass_c)], *MASS_C, N_("ferment", "A mass temperature"), "°C")


def left_over_of(lot: FermentLot, hours: Hours, prior: Prior, curve: Curve) -> tuple[LeftOver, FloatArray]:
    """The residual function of scaled parameters, and the matrix that unscales them: data by Student, prior by normal."""
    root = np.asarray(np.linalg.cholesky(prior.covariance), dtype=np.float64)
    sd = _reading_sd(lot)

    def left_over(z: FloatArray) -> FloatArray:
        own = prior.mean + z @ root.T
        with np.errstate(all="ignore"):
            says = curve(hours.readings_h20, own[:, :1], *_others(own)[..., None])
        return np.concatenate([student((lot.ph - says) / (sd * READING_SCALE), FREEDOM), z], axis=1)

    return left_over, root


def _reading_sd(lot: FermentLot) -> FloatArray:
    spread = row_of("ferment_defaults", "spread")
    return np.where(lot.paper, float(spread["paper_ph"]), float(spread["meter_ph"]))


def off_sd(lot: FermentLot, hours: Hours, own: FloatArray) -> FloatArray:
    """How far each reading [n] lies from the curve of a lot's own parameters [4], in standard deviations of a reading."""
    return np.asarray((lot.ph - curve_of(gompertz_ph, own[None], hours.readings_h20)[0]) / _reading_sd(lot))


def fit_of(left_over: LeftOver) -> Fit:
    """The most likely scaled parameters, from four starts."""
    starts = np.zeros((4, 4))
    starts[1:, 2:] = [[0.8, 0.8], [-0.8, -0.8], [0.8, -0.8]]
    return best_fit(left_over, starts)


def end_draws(
    left_over: LeftOver, root: FloatArray, prior: Prior, end: Curve, lot: FermentLot, fit: Fit, rng: np.random.Generator
) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Parameters (n, 4), ends [h at 20 °C] and weights [n] of the posterior; root [4, 4] unscales its draws."""
    z, weight, worth = weighted_draws(left_over, fit, DRAWS_N, rng)
    if worth < ENOUGH:
        z, weight, worth = weighted_draws(left_over, fit, DRAWS_N, rng, wider=3.0)
    if worth < ENOUGH:  # the surface is no bump at all: take the wide draws as they are
        weight = np.full(DRAWS_N, 1.0 / DRAWS_N)
    own = prior.mean + z @ root.T
    ends = end(lot.target_ph, own[:, 0], *_others(own))
    return own, ends, weight


def _others(own: FloatArray) -> FloatArray:
    """Fall, steepest fall and lag (3, m) out of their logarithms."""
    return np.asarray(np.exp(np.clip(own[:, 1:], -_LN_LIMIT, _LN_LIMIT)).T)


def curve_of(curve: Curve, own: FloatArray, hours_h20: FloatArray) -> FloatArray:
    """PH by a curve (m, n) for a lot's own parameters [m, 4] after hours at 20 °C [h]."""
    return curve(hours_h20, own[:, :1], *_others(own)[..., None])


def typical_ends_h20(lot: FermentLot, prior: Prior, rng: np.random.Generator) -> FloatArray:
    """Ends [h at 20 °C] by the prior alone; infinite where the target is not met, minus infinite where it is below."""
    own = rng.multivariate_normal(prior.mean, prior.covariance, DRAWS_N, method="cholesky")
    return gompertz_end_h20(lot.target_ph, own[:, 0], *_others(own))
