"""Thin-layer drying curves: the moisture ratio MR = (X - Xe) / (X0 - Xe) against hours in steady air.

Eleven forms that the coffee papers use, and a fit that ranks them by what each parameter is worth (AICc). They
describe a dryer's steady air; in changing weather clock time means nothing, and `drying.py` has the state form.
Forms: Newton/Lewis 1921, Page 1949, Henderson and Pabis 1961, Midilli 2002 and the others as collected in the
drying reviews of the Viçosa school; Thompson is solved for MR (one printed version lost a bracket).
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import ArrayLike

from farmdesk.errors import NotPossible
from farmdesk.science.limits import FloatArray, R, fitting, give, single, within
from farmdesk.text import N_, Num, Text

HOURS: Final = (0.0, 10_000.0)
Curve = Callable[..., FloatArray]


@dataclass(frozen=True, slots=True)
class ThinLayer:
    """A form: its name, its formula as printed, its parameters' names, and where a fit begins.

    `first(k)` gives starting values from a rough rate k [1/h].
    """

    name: Text
    formula: str
    parameters: tuple[str, ...]
    curve: Curve
    first: Callable[[float], tuple[float, ...]]


def _thompson(t: FloatArray, a: float, b: float) -> FloatArray:
    # t = a ln MR + b (ln MR)²; the branch that falls from 1. b -> 0 is Newton's law with k = -1/a
    root = np.sqrt(np.maximum(a * a + 4.0 * b * t, 0.0))
    return np.exp(2.0 * t / (a - root))


FORMS: Final[tuple[ThinLayer, ...]] = (
    ThinLayer(N_("drying", "Newton"), "exp(-k t)", ("k",), lambda t, k: np.exp(-k * t), lambda k: (k,)),
    ThinLayer(
        N_("drying", "Page"),
        "exp(-k t^n)",
        ("k", "n"),
        lambda t, k, n: np.exp(-k * t**n),
        lambda k: (k, 1.0),
    ),
    ThinLayer(
        N_("drying", "Henderson and Pabis"),
        "a exp(-k t)",
        ("a", "k"),
        lambda t, a, k: a * np.exp(-k * t),
        lambda k: (1.0, k),
    ),
    ThinLayer(
        N_("drying", "logarithmic"),
        "a exp(-k t) + c",
        ("a", "k", "c"),
        lambda t, a, k, c: a * np.exp(-k * t) + c,
        lambda k: (1.0, k, 0.0),
    ),
    ThinLayer(
        N_("drying", "two-term"),
        "a exp(-k0 t) + b exp(-k1 t)",
        ("a", "k0", "b", "k1"),
        lambda t, a, k0, b, k1: a * np.exp(-k0 * t) + b * np.exp(-k1 * t),
        lambda k: (0.6, 1.6 * k, 0.4, 0.6 * k),
    ),
    ThinLayer(
        N_("drying", "Midilli"),
        "a exp(-k t^n) + b t",
        ("a", "k", "n", "b"),
        lambda t, a, k, n, b: a * np.exp(-k * t**n) + b * t,
        lambda k: (1.0, k, 1.0, 0.0),
    ),
    ThinLayer(
        N_("drying", "Wang and Singh"),
        "1 + a t + b t²",
        ("a", "b"),
        lambda t, a, b: 1.0 + a * t + b * t * t,
        lambda k: (-k / 2.0, k * k / 16.0),
    ),
    ThinLayer(
        N_("drying", "diffusion approach"),
        "a exp(-k t) + (1 - a) exp(-k b t)",
        ("a", "k", "b"),
        lambda t, a, k, b: a * np.exp(-k * t) + (1.0 - a) * np.exp(-k * b * t),
        lambda k: (0.6, 1.6 * k, 0.4),
    ),
    ThinLayer(
        N_("drying", "Verma"),
        "a exp(-k t) + (1 - a) exp(-g t)",
        ("a", "k", "g"),
        lambda t, a, k, g: a * np.exp(-k * t) + (1.0 - a) * np.exp(-g * t),
        lambda k: (0.6, 1.6 * k, 0.6 * k),
    ),
    ThinLayer(
        N_("drying", "two-term exponential"),
        "a exp(-k t) + (1 - a) exp(-k a t)",
        ("a", "k"),
        lambda t, a, k: a * np.exp(-k * t) + (1.0 - a) * np.exp(-k * a * t),
        lambda k: (1.6, k),
    ),
    ThinLayer(
        N_("drying", "Thompson"),
        "t = a ln MR + b (ln MR)²",
        ("a", "b"),
        _thompson,
        lambda k: (-1.0 / k, 0.1 / k),
    ),
)


@dataclass(frozen=True, slots=True)
class Fitted:
    """A form laid through readings: parameters in the form's order, what is left over, and its rank.

    `rss` is the sum of squared residuals of MR, `aicc` Akaike's criterion with the small-sample term,
    `converged` whether the solver was content (it is told, not raised: bad data is no exception).
    """

    form: ThinLayer
    values: tuple[float, ...]
    rss: float
    aicc: float
    converged: bool


def aicc_of(rss: float, readings_n: int, parameters_n: int) -> float:
    """Akaike's criterion with the small-sample term; one more parameter is the noise itself.

    n ln(RSS/n) + 2k + 2k(k+1)/(n-k-1), k = parameters + 1 (Burnham and Anderson 2002, sec. 2.4). Infinite where
    there are too few readings to count it.
    """
    k = parameters_n + 1
    if readings_n - k - 1 <= 0:
        return float("inf")
    return readings_n * float(np.log(max(rss, 1e-300) / readings_n)) + 2 * k + 2 * k * (k + 1) / (readings_n - k - 1)


def fit_thin_layer(hours_h: ArrayLike, ratio_frac: ArrayLike) -> tuple[Fitted, ...]:
    """Every form that the readings can carry, best first (lowest AICc).

    hours_h [h] and ratio_frac [MR], shape (n,), n at least 4. Forms with too many parameters for n are left out.
    Raises NotPossible for hours that do not rise, ratios outside -0.2..1.5 (noise and Xe may carry a reading over
    1 or under 0), or fewer than four readings.
    """
    from scipy.optimize import least_squares

    hours = within(hours_h, *HOURS, N_("drying", "A drying time"), "h")
    ratio = within(ratio_frac, -0.2, 1.5, N_("drying", "A moisture ratio"))
    if hours.ndim != 1 or hours.shape != ratio.shape or hours.size < 4:
        raise NotPossible(N_("drying", "A drying curve needs four readings or more; here are {n}.", n=Num(hours.size)))
    if (np.diff(hours) <= 0).any():
        raise NotPossible(N_("drying", "The hours of a drying curve must rise."))
    rough = float(np.clip(-np.log(np.clip(ratio[-1], 0.01, 0.99)) / hours[-1], 1e-6, 1e3))
    found = []
    for form in FORMS:
        if np.isinf(aicc_of(1.0, hours.size, len(form.parameters))):
            continue

        def left_over(values: FloatArray, form: ThinLayer = form) -> FloatArray:
            with np.errstate(all="ignore"):
                got = form.curve(hours, *values)
            return np.asarray(np.nan_to_num(got, nan=1e3, posinf=1e3, neginf=-1e3) - ratio)

        best = least_squares(left_over, form.first(rough), x_scale="jac", xtol=1e-12, ftol=1e-12, max_nfev=2000)
        rss = float(2.0 * best.cost)
        aicc = aicc_of(rss, hours.size, len(form.parameters))
        found.append(Fitted(form, tuple(float(v) for v in best.x), rss, aicc, bool(best.success)))
    return tuple(sorted(found, key=lambda fitted: fitted.aicc))


def sphere_ratio_frac(fourier: R, terms_n: int = 2000) -> R:
    """Moisture ratio of a sphere with constant diffusivity, Fo = D t / r² [-], surface at equilibrium.

    6/pi² sum k^-2 exp(-k² pi² Fo) (Crank 1975, eq. 6.20); 1 at Fo = 0. With one term alone it is a third off at
    Fo = 0.001. Never take a published D of coffee as a constant: laboratories differ tenfold.
    """
    terms = int(single(terms_n, 1, 100_000, N_("drying", "A number of terms")))
    fo = within(fourier, 0.0, 1e6, N_("drying", "A Fourier number"))
    k = np.arange(1, terms + 1, dtype=np.float64)
    weights = 6.0 / (np.pi * k) ** 2
    series = np.exp(-np.multiply.outer(fo, (np.pi * k) ** 2)) @ weights
    return give(np.asarray(np.where(fo == 0.0, 1.0, series)), fourier)


@fitting
def arrhenius_ratio(temp_c: R, from_c: float, energy_j_mol: float = 35_000.0) -> R:
    """How much faster at one temperature [°C] than at another [°C], for an activation energy [J/mol].

    Published energies for coffee run from 23 (Corrêa et al. 2006) to 53 kJ/mol (Alves et al. 2013); 35 ± 12 is a
    middle, and 25 to 35 °C then means 1.35 to 1.85 times.
    """
    here, there = (within(t, -40.0, 100.0, N_("drying", "A temperature"), "°C") + 273.15 for t in (from_c, temp_c))
    energy = single(energy_j_mol, 0.0, 500_000.0, N_("drying", "An activation energy"), "J/mol")
    return give(np.exp(energy / 8.314462618 * (1.0 / here - 1.0 / there)), temp_c)
