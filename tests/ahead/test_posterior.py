"""The solver against SciPy's, and its draws against what they should be."""

from __future__ import annotations

import numpy as np
import pytest

from farmdesk.ahead.posterior import best_fit, normal_draws, student, weighted_draws

T = np.linspace(0.0, 10.0, 12)
TRUE = np.array([1.3, -0.4])


def left_over(theta: np.ndarray) -> np.ndarray:
    y = np.exp(TRUE[0]) * np.exp(TRUE[1] * T) + 0.02 * np.sin(7 * T)
    says = np.exp(theta[:, :1]) * np.exp(theta[:, 1:] * T)
    return np.concatenate([(y - says) / 0.05, 0.1 * theta], axis=1)


def test_same_answer_as_scipy_from_bad_starts() -> None:
    from scipy.optimize import least_squares

    fit = best_fit(left_over, np.array([[0.0, 0.0], [3.0, 1.0], [-2.0, -2.0]]))
    theirs = least_squares(lambda x: left_over(x[None])[0], [0.0, 0.0], xtol=1e-12)
    assert fit.values == pytest.approx(theirs.x, abs=1e-5)
    assert fit.cost == pytest.approx(theirs.cost, rel=1e-6)
    covariance = np.linalg.inv(theirs.jac.T @ theirs.jac)
    assert fit.covariance == pytest.approx(covariance, rel=1e-2)


def test_students_residuals_are_his_likelihood() -> None:
    from scipy.stats import t

    z = np.array([-9.0, -1.0, 0.0, 0.5, 4.0])
    assert -0.5 * student(z, 4.0) ** 2 == pytest.approx(t.logpdf(z, 4) - t.logpdf(0, 4))
    assert (np.sign(student(z, 4.0)) == np.sign(z)).all()


def test_draws_have_the_fits_spread() -> None:
    fit = best_fit(left_over, np.zeros((1, 2)))
    plain = normal_draws(fit, 20_000, np.random.default_rng(1))
    assert np.cov(plain.T) == pytest.approx(fit.covariance, rel=0.05, abs=1e-6)


def test_weights_turn_a_wide_proposal_into_the_posterior() -> None:
    def bell(theta: np.ndarray) -> np.ndarray:
        return (theta - np.array([1.0, -2.0])) / np.array([0.5, 2.0])

    fit = best_fit(bell, np.zeros((1, 2)))
    draws, weight, worth = weighted_draws(bell, fit, 20_000, np.random.default_rng(2), wider=2.0)
    mean = weight @ draws
    assert mean == pytest.approx([1.0, -2.0], abs=0.05)
    assert np.sqrt(weight @ (draws - mean) ** 2) == pytest.approx([0.5, 2.0], rel=0.03)
    assert 4_000 < worth < 20_000
