"""Water in coffee: wet and dry basis, what weight does as water leaves, tray weights, and the yard's stage words.

`..._wb_frac` is water per coffee as it lies, `..._db_frac` water per dry matter; they are never mixed. Floats give
floats, arrays arrays. The mass sums are exact; what air does to coffee is in `isotherms`.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Final

import numpy as np

from farmdesk.errors import NotPossible
from farmdesk.science.limits import FloatArray, Floats, R, fitting, give, single, within
from farmdesk.text import N_, Text

MOISTURE_WB_FRAC: Final = (0.0, 0.95)  # above, it is water with coffee in it
MOISTURE_DB_FRAC: Final = (0.0, 19.0)  # the same on dry basis
MASS_G: Final = (0.0, 1e9)  # a thousand tonnes
LEAST_G: Final = 1e-3  # under a milligram nothing has been weighed

TRADE_MAX_WB_FRAC: Final = 0.125  # Codex CAC/RCP 69-2009 par. 3; ICO resolution 420: 8.0 to 12.5 %
TRADE_MIN_WB_FRAC: Final = 0.080  # ICO resolution 420

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


@fitting
def dry_matter_g(mass_g: R, moisture_wb_frac: R) -> R:
    """What would be left without any water [g] of a weight [g] at a moisture [wet basis]."""
    return give(_mass(mass_g) * (1.0 - _wb(moisture_wb_frac)), mass_g)


@fitting
def mass_at_g(mass_g: R, moisture_wb_frac: R, other_wb_frac: R) -> R:
    """The same coffee's weight [g] at another moisture [wet basis]: W (1-M) / (1-M')."""
    return give(_mass(mass_g) * (1.0 - _wb(moisture_wb_frac)) / (1.0 - _wb(other_wb_frac)), mass_g)


@fitting
def water_to_leave_g(mass_g: R, moisture_wb_frac: R, target_wb_frac: R) -> R:
    """Water that goes [g] until coffee of this weight [g] reaches the target [wet basis]; negative where it gains."""
    now, then = _wb(moisture_wb_frac), _wb(target_wb_frac)
    return give(_mass(mass_g) * (now - then) / (1.0 - then), mass_g)


@fitting
def shrink_frac(moisture_wb_frac: R, target_wb_frac: R) -> R:
    """Share of the weight [0..1] lost on the way to the target; 53 to 11 % is 0.472."""
    now, then = _wb(moisture_wb_frac), _wb(target_wb_frac)
    return give((now - then) / (1.0 - then), moisture_wb_frac)


def points_per_point_ratio(target_wb_frac: R) -> R:
    """Points of weight lost for each point of moisture, ending at the target [wet basis]: 1.183 at 15.5 %."""
    return give(1.0 / (1.0 - _wb(target_wb_frac)), target_wb_frac)


# --- tray weights -----------------------------------------------------------------------------------------------


@fitting
def moisture_from_dry_wb_frac(mass_g: R, dry_g: R) -> R:
    """Moisture [wet basis] of coffee that weighs [g] and holds this dry matter [g].

    Raises NotPossible where the weight is below the dry matter, or nothing.
    """
    mass, dry = _mass(mass_g), _mass(dry_g)
    if (mass < LEAST_G).any():
        raise NotPossible(N_("science", "A weight of zero says nothing about moisture."))
    return give(within(1.0 - dry / mass, *MOISTURE_WB_FRAC, _WB, "%", 100.0), mass_g)


@fitting
def tray_wb_frac(start_g: R, start_wb_frac: R, mass_g: R) -> R:
    """Moisture [wet basis] of a tray that began at a weight [g] and moisture and now weighs [g]."""
    return moisture_from_dry_wb_frac(mass_g, dry_matter_g(start_g, start_wb_frac))


@fitting
def tray_gain_ratio(start_wb_frac: R, now_wb_frac: R) -> R:
    """How many points the tray's answer is off for each point its starting moisture is off: 1.89 from 53 to 11 % [wet basis]."""
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
        part = single(part_frac, 0.0, 1.0, N_("science", "A share"), "%", 100.0)
        return DryMatter(self.dry_g * part, self.dry_sd_g * part)


def dry_matter(mass_g: float, mass_sd_g: float, moisture_wb_frac: float, moisture_wb_sd: float) -> DryMatter:
    """Dry matter with its doubt from a weight [g] and a moisture [wet basis], each with a standard deviation.

    First order: sd² = ((1-M) sd_W)² + (W sd_M)².
    """
    mass, wet = single(mass_g, *MASS_G, _MASS, "g"), single(moisture_wb_frac, *MOISTURE_WB_FRAC, _WB, "%", 100.0)
    mass_sd, wet_sd = single(mass_sd_g, *MASS_G, _MASS, "g"), single(moisture_wb_sd, *MOISTURE_WB_FRAC, _WB, "%", 100.0)
    return DryMatter(mass * (1.0 - wet), float(np.hypot((1.0 - wet) * mass_sd, mass * wet_sd)))


def moisture_sd_wb_frac(mass_g: float, mass_sd_g: float, matter: DryMatter) -> float:
    """Standard deviation of the moisture [wet basis] that a weight [g] and a dry matter give. First order."""
    mass, mass_sd = (single(grams, *MASS_G, _MASS, "g") for grams in (mass_g, mass_sd_g))
    wet = moisture_from_dry_wb_frac(mass, matter.dry_g)
    return float(np.hypot(matter.dry_sd_g / mass, (1.0 - wet) * mass_sd / mass))


# --- stage names ------------------------------------------------------------------------------------------------


class Stage(StrEnum):
    """What the yard calls coffee on its way down."""

    FRESH = "fresh"
    NOT_SKIN_DRY = "not skin-dry"
    SKIN_DRYING = "skin drying"
    WHITE = "white"
    SOFT_BLACK = "soft black"
    MEDIUM_BLACK = "medium black"
    HARD_BLACK = "hard black"
    WILTED = "wilted"
    HALF_DRY = "half dry"
    RATTLING = "rattling"
    DRY = "dry"
    OVER_DRIED = "over-dried"


STAGE_WORDS: Final[dict[Stage, Text]] = {
    Stage.FRESH: N_("stage", "fresh"),
    Stage.NOT_SKIN_DRY: N_("stage", "not skin-dry"),
    Stage.SKIN_DRYING: N_("stage", "skin drying"),
    Stage.WHITE: N_("stage", "white"),
    Stage.SOFT_BLACK: N_("stage", "soft black"),
    Stage.MEDIUM_BLACK: N_("stage", "medium black"),
    Stage.HARD_BLACK: N_("stage", "hard black"),
    Stage.WILTED: N_("stage", "wilted"),
    Stage.HALF_DRY: N_("stage", "half dry"),
    Stage.RATTLING: N_("stage", "rattling"),
    Stage.DRY: N_("stage", "dry"),
    Stage.OVER_DRIED: N_("stage", "over-dried"),
}

# Kamau 1980, Kenya Coffee 45:343-355, as quoted by others: whole-number bands 55-45, 44-33, 32-22, 21-16, 15-12,
# 11-10 %; the cuts close the gaps between them, and 9.5 % is ours.
_PARCHMENT_CUTS: Final = (
    (0.55, Stage.NOT_SKIN_DRY),
    (0.445, Stage.SKIN_DRYING),
    (0.325, Stage.WHITE),
    (0.215, Stage.SOFT_BLACK),
    (0.155, Stage.MEDIUM_BLACK),
    (0.115, Stage.HARD_BLACK),
    (0.095, Stage.DRY),
)
# Whole cherry: 60 % and more fresh, 35-30 % half dry (Silva and Roberto, FAO), rattling about 20 %, dry at 12 %;
# the cuts between are common practice without a source.
_CHERRY_CUTS: Final = (
    (0.60, Stage.FRESH),
    (0.35, Stage.WILTED),
    (0.25, Stage.HALF_DRY),
    (0.125, Stage.RATTLING),
    (0.095, Stage.DRY),
)


def stage(moisture_wb_frac: float, whole_cherry: bool = False) -> Stage:
    """The yard's word for a moisture [wet basis] of washed parchment, or of whole cherry. NotPossible outside 0..95 %."""
    wet = single(moisture_wb_frac, *MOISTURE_WB_FRAC, _WB, "%", 100.0)
    cuts = _CHERRY_CUTS if whole_cherry else _PARCHMENT_CUTS
    # a cut belongs to the stage above it, but the bands begin at 55 % (skin drying) and at 35 % (half dry)
    return next((name for cut, name in cuts if wet > cut or (wet == cut and cut not in (0.55, 0.35))), Stage.OVER_DRIED)
