"""Sugar in juice and mucilage: what a refractometer reading means.

Degrees Brix are grams of sucrose in 100 g of solution. In mucilage only about half to two thirds of the dissolved
solids ferment (Puerta and Ríos 2011, Cenicafé 62(2):23-40: sugars 6.2 to 7.4 % of a mucilage of 85 to 91 % water).
"""

from __future__ import annotations

from typing import Final

import numpy as np

from farmdesk.errors import NotPossible
from farmdesk.science.limits import R, give, single, within
from farmdesk.text import N_

BRIX: Final = (0.0, 60.0)  # the polynomial's table goes on to 95; no cherry does
# Specific gravity 20/20 °C over Brix/100: Hackbarth 2011, fit to the AOAC tables; agrees with NBS Circular C440
_SG: Final = (
    1.0, 0.3875135555, 0.09702881653, 0.3883357480, -1.782845295, 5.591472292,
    -11.00667976, 13.62230734, -10.33082001, 4.387787019, -0.7995558730,
)  # fmt: skip
WATER_20_KG_L: Final = 0.9982  # density of water at 20 °C
FERMENTABLE_FRAC: Final = (0.50, 0.70)  # of mucilage solids: Puerta and Ríos 2011, rounded
APPARENT_DROP_RATIO: Final = (
    1.29  # true over apparent fall of Brix: nD slopes 0.00148 (sucrose), 0.00065 (ethanol) per %
)


def specific_gravity_ratio(brix: R) -> R:
    """Density of a sugar solution over water's, both at 20 °C, for 0..60 °Bx."""
    share = within(brix, *BRIX, N_("ferment", "A Brix reading"), "°Bx") / 100.0
    return give(np.asarray(np.polynomial.polynomial.polyval(share, _SG)), brix)


def solids_g_l(brix: R) -> R:
    """Dissolved solids [g/L] at 20 °C: 10 Bx SG 0.9982."""
    gravity = np.asarray(specific_gravity_ratio(brix))
    return give(10.0 * np.asarray(brix, dtype=np.float64) * gravity * WATER_20_KG_L, brix)


def brix_of_gravity_brix(specific_gravity: R) -> R:
    """Brix of a specific gravity 20/20: the inverse, by Newton steps from a straight line; exact to 1e-9 °Bx."""
    top = float(specific_gravity_ratio(BRIX[1]))
    gravity = within(specific_gravity, 1.0, top, N_("ferment", "A specific gravity"))
    slope = np.polynomial.polynomial.polyder(_SG)
    share = (gravity - 1.0) * 2.4
    for _ in range(6):
        off = np.polynomial.polynomial.polyval(share, _SG) - gravity
        share = share - off / np.polynomial.polynomial.polyval(share, slope)
    return give(np.asarray(np.maximum(share, 0.0) * 100.0), specific_gravity)


def sugar_used_brix(first_brix: float, now_brix: float) -> float:
    """True fall [°Bx] behind a refractometer's: alcohol hides part of it (good to 10 %).

    Raises NotPossible where it rose: that is another sample, not a ferment.
    """
    first = single(first_brix, *BRIX, N_("ferment", "A Brix reading"), "°Bx")
    now = single(now_brix, *BRIX, N_("ferment", "A Brix reading"), "°Bx")
    if now > first:
        raise NotPossible(N_("ferment", "The Brix rose; take a new sample from several depths."))
    return APPARENT_DROP_RATIO * (first - now)
