"""The most likely parameters of a small curve, how sure they are, and draws of what else they may be.

Residual functions take a batch of parameter vectors, (m, p), and answer (m, r): every start, every derivative and
every trial step goes through one call. Parameters are scaled so that the prior's sd is about 1; prior terms are
residuals like any others.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Final

import numpy as np

from farmdesk.science.limits import FloatArray

LeftOver = Callable[[FloatArray], FloatArray]

_DIFFERENCE: Final = 1e-4  # of a prior sd, for derivatives
_DAMPINGS: Final = np.array([1e-3, 1e-1, 10.0])  # tried side by side, times the current one
_MOST_STEPS: Final = 40


@dataclass(frozen=True, slots=True, eq=False)
class Fit:
    """Most likely parameters [p], their covariance [p, p], and half the squared residuals left."""

    values: FloatArray
    covariance: FloatArray
    cost: float


def student(z: FloatArray, freedom: float) -> FloatArray:
    """Residuals whose square is twice Student's minus log likelihood: far-out readings pull ever less.

    sign(z) sqrt((f + 1) ln(1 + z²/f)); the square root of the exact t likelihood with `freedom` degrees.
    """
    return np.asarray(np.sign(z) * np.sqrt((freedom + 1.0) * np.log1p(z * z / freedom)))


def best_fit(left_over: LeftOver, starts: FloatArray) -> Fit:
    """Least squares from several starts (k, p) at once: damped Gauss-Newton (Levenberg 1944, Marquardt 1963)."""
    theta = np.atleast_2d(np.asarray(starts, dtype=np.float64)).copy()
    k, p = theta.shape
    damping = np.full(k, 1.0)
    each = np.arange(k)
    cost = np.full(k, np.inf)
    r0, jacobian = _derived(left_over, theta)
    cost = 0.5 * (r0**2).sum(axis=1)
    for _ in range(_MOST_STEPS):
        normal = np.einsum("kri,krj->kij", jacobian, jacobian)
        slope = np.einsum("kri,kr->ki", jacobian, r0)
        size = np.einsum("kii->ki", normal)
        tried = damping[:, None] * _DAMPINGS
        damped = normal[:, None] + (tried[..., None] * size[:, None] + 1e-12)[..., None] * np.eye(p)
        step = -np.linalg.solve(damped, np.broadcast_to(slope[:, None, :, None], (k, 3, p, 1)))[..., 0]
        trial = theta[:, None] + np.clip(step, -4.0, 4.0)
        costs = 0.5 * (left_over(trial.reshape(-1, p)) ** 2).sum(axis=1).reshape(k, 3)
        best = np.nan_to_num(costs, nan=np.inf).argmin(axis=1)
        better = costs[each, best] < cost
        gain = np.where(better, cost - costs[each, best], 0.0)
        theta = np.where(better[:, None], trial[each, best], theta)
        damping = np.clip(np.where(better, tried[each, best], damping * 100.0), 1e-9, 1e9)
        if better.any():
            r0, jacobian = _derived(left_over, theta)
            cost = 0.5 * (r0**2).sum(axis=1)
        if np.where(better, gain < 1e-4, damping > 1e6).all():
            break
    won = int(cost.argmin())
    normal = jacobian[won].T @ jacobian[won]
    covariance = np.linalg.pinv(normal + 1e-10 * np.eye(p), hermitian=True)
    return Fit(theta[won], covariance, float(cost[won]))


def _derived(left_over: LeftOver, theta: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Residuals (k, r) and their derivatives (k, r, p), one batch."""
    k, p = theta.shape
    moved = np.repeat(theta[:, None], p + 1, axis=1)
    moved[:, 1:] += _DIFFERENCE * np.eye(p)
    got = left_over(moved.reshape(-1, p)).reshape(k, p + 1, -1)
    return got[:, 0], ((got[:, 1:] - got[:, :1]) / _DIFFERENCE).transpose(0, 2, 1)


def normal_draws(fit: Fit, draws_n: int, rng: np.random.Generator) -> FloatArray:
    """Draws (n, p) from the normal curve around the best fit."""
    return np.asarray(fit.values + rng.standard_normal((draws_n, fit.values.size)) @ _root(fit.covariance).T)


def _root(covariance: FloatArray) -> FloatArray:
    """A matrix whose square is the covariance, also where it is all but flat in a direction."""
    values, vectors = np.linalg.eigh((covariance + covariance.T) / 2.0)
    return np.asarray(vectors * np.sqrt(np.maximum(values, 1e-14)))


def weighted_draws(
    left_over: LeftOver, fit: Fit, draws_n: int, rng: np.random.Generator, *, freedom: float = 5.0, wider: float = 1.3
) -> tuple[FloatArray, FloatArray, float]:
    """Draws (n, p) from a heavy-tailed curve around the best fit, weights [n] of the true posterior, and how many
    equal draws they are worth (effective sample size).

    Multivariate t with `freedom` degrees, covariance times `wider`; importance weights posterior / proposal.
    """
    root = _root(fit.covariance * wider)
    p = fit.values.size
    z = rng.standard_normal((draws_n, p))
    stretch = np.sqrt(freedom / rng.chisquare(freedom, draws_n))
    draws = fit.values + (z * stretch[:, None]) @ root.T
    ln_posterior = -0.5 * (left_over(draws) ** 2).sum(axis=1)
    reach = (z**2).sum(axis=1) * stretch**2
    ln_proposal = -0.5 * (freedom + p) * np.log1p(reach / freedom)
    ln_weight = np.nan_to_num(ln_posterior - ln_proposal, nan=-np.inf)
    weight = np.exp(ln_weight - ln_weight.max())
    weight /= weight.sum()
    return draws, weight, float(1.0 / (weight**2).sum())
