"""Ferment hours counted by warmth: an hour at 30 °C is 1.78 hours at 20 °C.

The rate follows the cardinal temperature model with inflection (CTMI; Rosso, Lobry and Flandrois 1993, J. Theor.
Biol. 162:447-463): nothing at and beyond the lowest and highest temperature, 1 at the best. One Q10 for a farm's
whole range would be wrong: it falls from 2.7 at 15 to 25 °C to 1.8 at 20 to 30 °C. Use the temperature of the
*mass*, never the air: tanks run 10 to 14 °C above it (Peñuela-Martínez et al. 2010, Cenicafé 61(2):159-173).
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum
from typing import Final

import numpy as np
from numpy.typing import ArrayLike, NDArray

from farmdesk.clock import HOUR_S
from farmdesk.errors import NotPossible
from farmdesk.science.limits import FloatArray, R, give, within
from farmdesk.text import N_

MASS_C: Final = (-5.0, 80.0)  # what a probe in a tank may say; outside it is broken
REFERENCE_C: Final = 20.0


@dataclass(frozen=True, slots=True)
class Cardinal:
    """The three temperatures [°C] of an organism: none grows at or below `min_c`, most at `best_c`, none from `max_c`."""

    min_c: float
    best_c: float
    max_c: float

    def __post_init__(self) -> None:
        """Refuse an order that has no rising and falling side (the model needs best above the middle)."""
        if not self.min_c < (self.min_c + self.max_c) / 2 < self.best_c < self.max_c:
            raise NotPossible(
                N_(
                    "ferment",
                    "Cardinal temperatures must rise, with the best one nearer to the highest than the lowest.",
                )
            )


YEAST: Final = Cardinal(
    2.8, 32.3, 45.4
)  # S. cerevisiae: Salvadó et al. 2011, AEM 77:2292-2302 (min: its genus, 1.3-4.3)
LACTIC_RICH: Final = Cardinal(
    2.0, 36.6, 41.0
)  # L. plantarum in MRS: Matejčeková et al. 2019, J. Food Nutr. Res. 58:125
LACTIC_MILK: Final = Cardinal(7.8, 34.7, 41.0)  # the same, in milk
MIXED: Final = Cardinal(3.0, 32.0, 42.0)  # a coffee tank: our compromise between yeast and lactic bacteria


def rate_frac(temp_c: R, cardinal: Cardinal = MIXED) -> R:
    """Speed [0..1 of the best] at a mass temperature [°C]; 0 outside the cardinal range. Raises outside -5..80 °C."""
    t = within(temp_c, *MASS_C, N_("ferment", "A mass temperature"), "°C")
    low, best, high = cardinal.min_c, cardinal.best_c, cardinal.max_c
    bottom = (best - low) * ((best - low) * (t - best) - (best - high) * (best + low - 2.0 * t))
    inside = (t > low) & (t < high)
    top = np.where(inside, (t - high) * (t - low) ** 2, 0.0)
    return give(top / np.where(inside, bottom, 1.0), temp_c)


def rate_at_20_ratio(temp_c: R, cardinal: Cardinal = MIXED) -> R:
    """Hours at 20 °C that one hour at this mass temperature [°C] is worth."""
    return give(np.asarray(rate_frac(temp_c, cardinal)) / rate_frac(REFERENCE_C, cardinal), temp_c)


class Known(IntEnum):
    """How a stretch of ferment hours came about."""

    MEASURED = 0  # a temperature at both ends
    BRIDGED = 1  # one or both ends missing: a straight line to the nearest known ones
    PLAIN = 2  # no temperature at all: clock hours


@dataclass(frozen=True, slots=True, eq=False)
class FermentHours:
    """Clock hours and hours at 20 °C since the first instant, both [n], and how each stretch is known [n-1]."""

    plain_h: FloatArray
    at_20_h20: FloatArray
    known: NDArray[np.int64]


def ferment_hours(at_utc_s: ArrayLike, mass_c: ArrayLike, cardinal: Cardinal = MIXED) -> FermentHours:
    """Count ferment hours through readings of the mass temperature.

    at_utc_s [UTC s, rising, n >= 1]; mass_c [°C, NaN where none was read]. Trapezoids of the rate between
    readings. Without any temperature the clock hours are taken and marked so.
    Raises NotPossible for instants that do not rise, or a temperature outside -5..80 °C.
    """
    try:
        at, mass = (np.asarray(column, dtype=np.float64) for column in (at_utc_s, mass_c))
    except (TypeError, ValueError):
        at = mass = np.empty(0)
    if at.ndim != 1 or at.shape != mass.shape or at.size == 0 or not np.isfinite(at).all() or (np.diff(at) <= 0).any():
        raise NotPossible(
            N_("ferment", "Ferment readings need instants that rise, each with its temperature or a gap.")
        )
    plain = (at - at[0]) / HOUR_S
    has = ~np.isnan(mass)
    if not has.any():
        return FermentHours(plain, plain.copy(), np.full(at.size - 1, Known.PLAIN, dtype=np.int64))
    rate = np.asarray(rate_at_20_ratio(np.interp(at, at[has], mass[has]), cardinal))
    counted = np.concatenate([[0.0], np.cumsum((rate[1:] + rate[:-1]) / 2.0 * np.diff(plain))])
    return FermentHours(plain, counted, np.where(has[1:] & has[:-1], int(Known.MEASURED), int(Known.BRIDGED)))
