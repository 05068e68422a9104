"""Curves of a ferment: pH against hours at 20 °C, and the hour a target is met.

Primary form is the Gompertz curve as reparametrised by Zwietering et al. 1990 (AEM 56:1875-1881), with its logistic
twin: p0 where pH starts, A the whole fall, mu the steepest fall per hour, lam the lag. Acid curves have a lag and
are lopsided; forms without a lag (Peleg, Weibull with b = 1) come out early. At hour 0 the curve is not quite at
p0, so p0 is a number to fit and not the first reading. All functions broadcast and are unchecked where said so.
"""

from __future__ import annotations

from typing import Final

import numpy as np

from farmdesk.errors import NotPossible
from farmdesk.science.limits import FloatArray, Floats, R, give, single, within
from farmdesk.text import N_

E: Final = float(np.e)
PH: Final = (2.8, 7.0)  # outside, a probe is broken or a digit wrong: no coffee ferment has been there


def gompertz_ph(hours_h20: FloatArray, p0: Floats, fall: Floats, steepest: Floats, lag: Floats) -> FloatArray:
    """PH after hours at 20 °C: p0 - A exp(-exp(mu e / A (lam - t) + 1)). Unchecked, broadcasts.

    hours_h20 [h at 20 °C]. p0 [pH]. fall: A [pH]. steepest: mu [pH/h]. lag: lam [h at 20 °C].
    """
    z = np.minimum(steepest * E / fall * (lag - hours_h20) + 1.0, 50.0)
    return np.asarray(p0 - fall * np.exp(-np.exp(z)))


def logistic_ph(hours_h20: FloatArray, p0: Floats, fall: Floats, steepest: Floats, lag: Floats) -> FloatArray:
    """The symmetric twin: p0 - A / (1 + exp(4 mu / A (lam - t) + 2)). Arguments as for `gompertz_ph`. Unchecked."""
    z = np.minimum(4.0 * steepest / fall * (lag - hours_h20) + 2.0, 50.0)
    return np.asarray(p0 - fall / (1.0 + np.exp(z)))


def gompertz_end_h20(target_ph: Floats, p0: Floats, fall: Floats, steepest: Floats, lag: Floats) -> FloatArray:
    """Hours at 20 °C to the target: lam + A/(mu e) (1 - ln(-ln d)), d = (p0 - target)/A. Unchecked.

    Infinite where the whole fall does not reach the target, minus infinite where it starts below it. Arguments
    as for `gompertz_ph`.
    """
    d = np.asarray((p0 - target_ph) / fall)
    inside = np.clip(d, 1e-300, 1.0 - 1e-16)
    end = lag + fall / (steepest * E) * (1.0 - np.log(-np.log(inside)))
    return np.asarray(np.where(d >= 1.0, np.inf, np.where(d <= 0.0, -np.inf, end)))


def logistic_end_h20(target_ph: Floats, p0: Floats, fall: Floats, steepest: Floats, lag: Floats) -> FloatArray:
    """The same for the logistic twin: lam + A/(4 mu) (2 - ln(1/d - 1)). Arguments as for `gompertz_ph`. Unchecked."""
    d = np.asarray((p0 - target_ph) / fall)
    inside = np.clip(d, 1e-300, 1.0 - 1e-16)
    end = lag + fall / (4.0 * steepest) * (2.0 - np.log(1.0 / inside - 1.0))
    return np.asarray(np.where(d >= 1.0, np.inf, np.where(d <= 0.0, -np.inf, end)))


def peleg_end_h20(drop: R, k1: float, k2: float) -> R:
    """Hours to a fall of pH by Peleg's curve t/(k1 + k2 t): k1 D / (1 - k2 D); infinite past its asymptote.

    drop: D [pH]. k1 [h/pH]. k2 [1/pH].
    """
    fall = within(drop, 0.0, 5.0, N_("ferment", "A fall of pH"))
    _positive(k1, k2)
    left = 1.0 - k2 * fall
    return give(np.where(left > 0.0, k1 * fall / np.where(left > 0.0, left, 1.0), np.inf), drop)


def weibull_end_h20(share_frac: R, scale_h20: float, power: float) -> R:
    """Hours to a share [0..1) of the whole fall by Weibull's curve: a (-ln(1 - d))^(1/b), a [h] the scale."""
    share = within(share_frac, 0.0, 1.0, N_("ferment", "A share of the fall"))
    _positive(scale_h20, power)
    with np.errstate(divide="ignore"):
        return give(scale_h20 * (-np.log1p(-share)) ** (1.0 / power), share_frac)


def _positive(*values: float) -> None:
    if any(not single(value, -1e9, 1e9, N_("ferment", "A curve's parameter")) > 1e-9 for value in values):
        raise NotPossible(N_("ferment", "A curve's parameters must be above zero."))


# --- mucilage left to itself ------------------------------------------------------------------------------------

# Rate [1/h] and hour of the steepest change, logistic over 74 h at ambient: Puerta 2013, Cenicafé 64(1):42-59
REDUCING_SUGAR: Final = (0.055, 46.0)
ALL_SUGAR: Final = (0.048, 45.0)
ACID: Final = (0.076, 22.0)
ETHANOL: Final = (0.064, 22.0)


def share_done_frac(hours_h: R, rate_per_h: float, steepest_h: float, whole_h: float = 74.0) -> R:
    """Share [0..1] of a mucilage change [rate 1/h] done by an hour [h], 0 at the start and 1 at `whole_h`.

    Acid runs a day ahead of sugar: pH goes flat while half the sugar, and its gas, is still to come.
    """
    hours = within(hours_h, 0.0, 1000.0, N_("ferment", "Ferment hours"), "h")
    rate = single(rate_per_h, 1e-4, 10.0, N_("ferment", "A rate"), "1/h")
    middle = single(steepest_h, -50.0, 1000.0, N_("ferment", "Ferment hours"), "h")
    whole = single(whole_h, 1.0, 1000.0, N_("ferment", "Ferment hours"), "h")
    begin, now, end = (1.0 / (1.0 + np.exp(np.minimum(-rate * (t - middle), 500.0))) for t in (0.0, hours, whole))
    return give(np.asarray((now - begin) / (end - begin)), hours_h)
