"""Water in coffee: wet and dry basis, what weight does as water leaves, and what air does to resting coffee.

`..._wb_frac` is water per coffee as it lies, `..._db_frac` water per dry matter; they are never mixed. Floats give
floats, arrays arrays. The mass sums are exact. The parchment isotherm carries coefficients written down from memory
of Trejos, Roa and Oliveros 1989 (Cenicafé 40(1):5-15, reused by Parra-Coronado et al. 2008, Rev. Bras. Eng. Agríc.
Amb. 12(4):415-427): rising in humidity and falling in temperature everywhere, and 12 % at 70 % humidity and 25 °C as
the trade says, yet expect 0.8 points of doubt. A farm's own anchor table (`Anchors`) is better.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum
from typing import Final, Generic

import numpy as np

from farmdesk.errors import NotPossible
from farmdesk.science.limits import FloatArray, Floats, R, give, within
from farmdesk.text import N_, Text

MOISTURE_WB_FRAC: Final = (0.0, 0.95)  # above, it is water with coffee in it
MOISTURE_DB_FRAC: Final = (0.0, 19.0)  # the same on dry basis
MASS_G: Final = (0.0, 1e9)  # a thousand tonnes
ISOTHERM_TEMP_C: Final = (10.0, 50.0)  # range of the parchment polynomial
ISOTHERM_RH_FRAC: Final = (0.20, 0.92)  # it does not rise without bound towards 1, so rain and dew are not its business

TRADE_MAX_WB_FRAC: Final = 0.125  # Codex CAC/RCP 69-2009 par. 3; ICO resolution 420: 8.0 to 12.5 %
TRADE_MIN_WB_FRAC: Final = 0.080  # ICO resolution 420
NO_MOULD_ACTIVITY_FRAC: Final = 0.68  # ICO and FAO good hygiene practices, section 1: no mould grows below about this
STABLE_ACTIVITY_FRAC: Final = 0.70  # Puerta 2006, Cenicafé Avance Técnico 352
VERY_STABLE_ACTIVITY_FRAC: Final = 0.60  # the same

_WB: Final = N_("science", "A moisture")
_DB: Final = N_("science", "A moisture on dry basis")
_MASS: Final = N_("science", "A weight")


def _wb(values: Floats) -> FloatArray:
    return within(values, *MOISTURE_WB_FRAC, _WB, "%", 100.0)


def _db(values: Floats) -> FloatArray:
    return within(values, *MOISTURE_DB_FRAC, _DB, "%", 100.0)


def _mass(values: Floats) -> FloatArray:
    return within(values, *MASS_G, _MASS, "g")


# --- basis and weight -------------------------------------------------------------------------------------------


def to_dry_basis(moisture_wb_frac: R) -> R:
    """Water per dry matter [0..19] of a wet-basis moisture [0..0.95]. NotPossible outside."""
    wet = _wb(moisture_wb_frac)
    return give(wet / (1.0 - wet), moisture_wb_frac)


def to_wet_basis(moisture_db_frac: R) -> R:
    """Water per coffee [0..0.95] of a dry-basis moisture [0..19]. NotPossible outside."""
    dry = _db(moisture_db_frac)
    return give(dry / (1.0 + dry), moisture_db_frac)


def dry_matter_g(mass_g: R, moisture_wb_frac: R) -> R:
    """What would be left without any water [g] of a weight [g] at a moisture [wet basis]."""
    return give(_mass(mass_g) * (1.0 - _wb(moisture_wb_frac)), mass_g)


def mass_at_g(mass_g: R, moisture_wb_frac: R, other_wb_frac: R) -> R:
    """The same coffee's weight [g] at another moisture [wet basis]: W (1-M) / (1-M')."""
    return give(_mass(mass_g) * (1.0 - _wb(moisture_wb_frac)) / (1.0 - _wb(other_wb_frac)), mass_g)


def water_to_leave_g(mass_g: R, moisture_wb_frac: R, target_wb_frac: R) -> R:
    """Water that goes [g] until coffee of this weight [g] reaches the target [wet basis]; negative where it gains."""
    now, then = _wb(moisture_wb_frac), _wb(target_wb_frac)
    return give(_mass(mass_g) * (now - then) / (1.0 - then), mass_g)


def shrink_frac(moisture_wb_frac: R, target_wb_frac: R) -> R:
    """Share of the weight [0..1] lost on the way to the target; 53 to 11 % is 0.472."""
    now, then = _wb(moisture_wb_frac), _wb(target_wb_frac)
    return give((now - then) / (1.0 - then), moisture_wb_frac)


def points_per_point_ratio(target_wb_frac: R) -> R:
    """Points of weight lost for each point of moisture, ending at the target [wet basis]: 1.183 at 15.5 %."""
    return give(1.0 / (1.0 - _wb(target_wb_frac)), target_wb_frac)


# --- tray weights -----------------------------------------------------------------------------------------------


def moisture_from_dry_wb_frac(mass_g: R, dry_g: R) -> R:
    """Moisture [wet basis] of coffee that weighs [g] and holds this dry matter [g].

    Raises NotPossible where the weight is below the dry matter, or nothing.
    """
    mass, dry = _mass(mass_g), _mass(dry_g)
    if (mass <= 0.0).any():
        raise NotPossible(N_("science", "A weight of zero says nothing about moisture."))
    return give(within(1.0 - dry / mass, *MOISTURE_WB_FRAC, _WB, "%", 100.0), mass_g)


def tray_wb_frac(start_g: R, start_wb_frac: R, mass_g: R) -> R:
    """Moisture [wet basis] of a tray that began at a weight [g] and moisture and now weighs [g]."""
    return moisture_from_dry_wb_frac(mass_g, dry_matter_g(start_g, start_wb_frac))


def tray_gain_ratio(start_wb_frac: R, now_wb_frac: R) -> R:
    """How many points the tray's answer is off for each point its starting moisture is off: 1.89 from 53 to 11 %."""
    return give((1.0 - _wb(now_wb_frac)) / (1.0 - _wb(start_wb_frac)), start_wb_frac)


@dataclass(frozen=True, slots=True)
class DryMatter:
    """Dry matter [g] and its standard deviation [g]."""

    dry_g: float
    dry_sd_g: float

    def __add__(self, other: DryMatter) -> DryMatter:
        """Two heaps whose errors have nothing to do with each other."""
        return DryMatter(self.dry_g + other.dry_g, float(np.hypot(self.dry_sd_g, other.dry_sd_g)))

    def share(self, part_frac: float) -> DryMatter:
        """A part [0..1] of the heap; its doubt is the heap's."""
        part = float(within(part_frac, 0.0, 1.0, N_("science", "A share"), "%", 100.0))
        return DryMatter(self.dry_g * part, self.dry_sd_g * part)


def dry_matter(mass_g: float, mass_sd_g: float, moisture_wb_frac: float, moisture_wb_sd: float) -> DryMatter:
    """Dry matter with its doubt from a weight [g] and a moisture [wet basis], each with a standard deviation.

    First order: sd² = ((1-M) sd_W)² + (W sd_M)².
    """
    dry = dry_matter_g(mass_g, moisture_wb_frac)
    spread = np.hypot((1.0 - moisture_wb_frac) * float(_mass(mass_sd_g)), mass_g * float(_wb(moisture_wb_sd)))
    return DryMatter(dry, float(spread))


def moisture_sd_wb_frac(mass_g: float, mass_sd_g: float, matter: DryMatter) -> float:
    """Standard deviation of the moisture [wet basis] that a weight [g] and a dry matter give. First order."""
    wet = moisture_from_dry_wb_frac(mass_g, matter.dry_g)
    return float(np.hypot(matter.dry_sd_g / mass_g, (1.0 - wet) * float(_mass(mass_sd_g)) / mass_g))


# --- equilibrium with air ---------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Equilibrium(Generic[R]):
    """Where coffee comes to rest in air: moisture on dry basis, and whether the air only wets it.

    Where `wetting` is true the air is damper than the isotherm knows (above 92 %: fog, rain, dew); there is no
    resting point, and the moisture is the last one known, a lower bound.
    """

    moisture_db_frac: R
    wetting: R | bool | np.ndarray


@dataclass(frozen=True, slots=True)
class Activity(Generic[R]):
    """Water activity [0..1]; where `wet` is true it lies above the isotherm's 0.92 and that is only a lower bound."""

    activity_frac: R
    wet: R | bool | np.ndarray
