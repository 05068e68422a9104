"""Yeast for a lot: how much, the water to wake it in, and the steps down to the mass's temperature."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from farmdesk.errors import NotPossible
from farmdesk.science.limits import single
from farmdesk.text import N_, Num

CELLS_PER_G: Final = 2e10  # live cells of active dry yeast, 0.5 to 3e10; winery practice, from memory
TRADE_DOSE_G_KG: Final = (0.5, 1.0)  # per kg cherry; coffee trade custom, no source
TRIAL_DOSE_G_KG: Final = 10.0  # the 1 % of Revista Pakamuros 11(1):123-130, 2023: ten times the trade's
WATER_PER_YEAST: Final = 10.0  # by mass; yeast makers' practice pages agree on 10, older ones say 5
WATER_C: Final = (30.0, 43.0)  # hard limits of the same pages
WATER_BEST_C: Final = 37.0
STILL_MIN: Final = 15.0  # then stir and 5 min more; not over 30
STEP_C: Final = 10.0  # the largest jump a slurry takes without harm
STEP_MIN: Final = 5.0


@dataclass(frozen=True, slots=True)
class Dose:
    """Yeast [g], wetting water [mL], cells per gram of coffee, tempering steps, juice for the first step [mL]."""

    yeast_g: float
    water_ml: float
    cells_per_g: float
    steps_count: int
    juice_ml: float


def yeast_dose(coffee_g: float, dose_g_kg: float, water_c: float = WATER_BEST_C, mass_c: float = 20.0) -> Dose:
    """The recipe for a lot.

    coffee_g [g] accepted; dose_g_kg [g yeast per kg coffee]; water_c [°C] the wetting water; mass_c [°C] the lot.
    Steps = ceil(gap / 10) - 1, each mixing in juice of the lot: V2 = V1 (T1 - Tt) / (Tt - T2), one step being 10 °C.
    Raises NotPossible for water outside 30..43 °C: colder kills up to 60 % of the cells, hotter all.
    """
    coffee = single(coffee_g, 1.0, 1e9, N_("ferment", "A weight of coffee"), "g")
    dose = single(dose_g_kg, 0.0, 50.0, N_("ferment", "A dose of yeast"), "g/kg")
    mass = single(mass_c, -5.0, 50.0, N_("ferment", "A mass temperature"), "°C")
    water = single(water_c, -5.0, 100.0, N_("ferment", "A temperature of the wetting water"), "°C")
    if not WATER_C[0] <= water <= WATER_C[1]:
        raise NotPossible(
            N_(
                "ferment",
                "Wetting water of {temp} harms the yeast; take {low} to {high}.",
                temp=Num(water, "°C"),
                low=Num(WATER_C[0], "°C"),
                high=Num(WATER_C[1], "°C"),
            )
        )
    yeast = coffee / 1000.0 * dose
    wetting = yeast * WATER_PER_YEAST
    steps = max(math.ceil((water - mass) / STEP_C) - 1, 0)
    juice = wetting * STEP_C / (water - STEP_C - mass) if steps else 0.0
    return Dose(yeast, wetting, yeast * CELLS_PER_G / coffee, steps, juice)
