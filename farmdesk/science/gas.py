"""Gas from a ferment: how much carbon dioxide, what it does to a room, a headspace and a lid.

Ideal gas, exact stoichiometry. Two figures for sugar: a likely one to show and a bound to size vents by. The
program never measures the air: it says what the sums say, and that a closed place must be opened first.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np

from farmdesk.science.air import SEA_LEVEL_KPA
from farmdesk.science.limits import Floats, R, fitting, give, single, within
from farmdesk.text import N_, Num, Text

GAS_J_MOL_K: Final = 8.314462618  # CODATA 2018
CO2_G_MOL: Final = 44.0095  # IUPAC 2021 standard atomic weights, as the three below
ETHANOL_G_MOL: Final = 46.069
HEXOSE_G_MOL: Final = 180.156
SUCROSE_G_MOL: Final = 342.297
LACTIC_G_MOL: Final = 90.078

# Grams per gram of sugar, from the equations
HEXOSE_CO2_FRAC: Final = 2 * CO2_G_MOL / HEXOSE_G_MOL  # C6H12O6 -> 2 C2H5OH + 2 CO2
HEXOSE_ETHANOL_FRAC: Final = 2 * ETHANOL_G_MOL / HEXOSE_G_MOL
SUCROSE_CO2_FRAC: Final = 4 * CO2_G_MOL / SUCROSE_G_MOL
SUCROSE_ETHANOL_FRAC: Final = 4 * ETHANOL_G_MOL / SUCROSE_G_MOL
HETEROLACTIC_CO2_FRAC: Final = CO2_G_MOL / HEXOSE_G_MOL  # -> lactic acid + ethanol + CO2; the homolactic way gives none
HETEROLACTIC_ACID_FRAC: Final = LACTIC_G_MOL / HEXOSE_G_MOL
HETEROLACTIC_ETHANOL_FRAC: Final = ETHANOL_G_MOL / HEXOSE_G_MOL

CHERRY_SUGAR_G_KG: Final = 25.0  # fermentable sugar of whole cherry, 15 to 40: own estimate from pulp and mucilage
MUCILAGE_SUGAR_G_KG: Final = 10.0  # the same of pulped coffee, per kg of cherry, 8 to 15
BOUND_SUGAR_G_KG: Final = 100.0  # all juice at 20 °Bx taken as sugar: for vents, not for display
STEEPEST_PER_H: Final = 0.055  # rate of reducing sugar's logistic: Puerta 2013, Cenicafé 64(1):42-59

OUTDOOR_CO2_PPM: Final = 420.0  # global mean of the 2020s (NOAA)
DAY_LIMIT_PPM: Final = 5_000.0  # NIOSH recommended limit, 8 h (IDLH documentation 124-38-9, May 1994)
SHORT_LIMIT_PPM: Final = 30_000.0  # NIOSH, 15 min
DANGER_PPM: Final = 40_000.0  # NIOSH, immediately dangerous to life
OUTDOOR_OXYGEN_PCT: Final = 20.9

CAUTION: Final = N_(
    "ferment",
    "Open outdoors and stand aside. The gas kills without a smell. Never lean in, never open alone in a closed room.",
)
CAUTION_SOURCE: Final = N_(
    "ferment",
    "Carbon dioxide: at most {day} over a working day; {danger} is dangerous at once (NIOSH, IDLH documentation "
    "124-38-9, 1994). Nothing here measures the air. Local safety rules come first.",
    day=Num(DAY_LIMIT_PPM, "ppm"),
    danger=Num(DANGER_PPM, "ppm"),
)
_SUGAR: Final = N_("ferment", "A weight of sugar")


def co2_from_sugar_g(sugar_g: R, alcoholic_frac: float = 1.0) -> R:
    """Carbon dioxide [g] from hexose [g], the share [0..1] of it that goes the alcoholic way."""
    sugar = within(sugar_g, 0.0, 1e9, _SUGAR, "g")
    share = single(alcoholic_frac, 0.0, 1.0, N_("ferment", "A share of sugar"), "%", 100.0)
    return give(sugar * (share * HEXOSE_CO2_FRAC), sugar_g)


def ethanol_from_sugar_g(sugar_g: R, yield_frac: float = 0.92) -> R:
    """Ethanol [g] from hexose [g]; practice reaches 90 to 95 % of theory (winery practice, from memory)."""
    sugar = within(sugar_g, 0.0, 1e9, _SUGAR, "g")
    share = single(yield_frac, 0.0, 1.0, N_("ferment", "A yield"), "%", 100.0)
    return give(sugar * (share * HEXOSE_ETHANOL_FRAC), sugar_g)


def co2_volume_l(co2_g: R, temp_c: float = 20.0, pressure_kpa: float = SEA_LEVEL_KPA) -> R:
    """The room [L] that carbon dioxide [g] takes at a temperature [°C] and the altitude's pressure [kPa]."""
    mass = within(co2_g, 0.0, 1e9, N_("ferment", "A weight of gas"), "g")
    return give(mass / CO2_G_MOL * GAS_J_MOL_K * _kelvin(temp_c) / _pressure(pressure_kpa), co2_g)


def peak_flow_l_h(whole_volume_l: R, steepest_per_h: float = STEEPEST_PER_H) -> R:
    """The fastest flow [L/h] while a whole volume [L] comes off along a logistic of rate k [1/h]: k/4 of it."""
    volume = within(whole_volume_l, 0.0, 1e9, N_("ferment", "A volume"), "L")
    rate = single(steepest_per_h, 0.0, 10.0, N_("ferment", "A rate"), "1/h")
    return give(volume * rate / 4.0, whole_volume_l)


@fitting
def closed_room_ppm(gas_l: Floats, room_m3: R) -> R:
    """Carbon dioxide [ppm] added in a closed room [m³] by a volume of gas [L] if nothing leaks: L / (m³ 1000)."""
    room = within(room_m3, 1e-3, 1e6, N_("ferment", "A room"), "m³")
    gas = within(gas_l, 0.0, 1e9, N_("ferment", "A volume"), "L")
    return give(np.minimum(gas / (room * 1000.0), 1.0) * 1e6, room_m3)


@fitting
def aired_room_ppm(flow_l_h: Floats, fresh_air_m3_h: R) -> R:
    """Carbon dioxide [ppm] that a steady flow [L/h] settles at with fresh air [m³/h]: 420 + 1e6 G/Q."""
    air = within(fresh_air_m3_h, 1e-3, 1e6, N_("ferment", "Fresh air"), "m³/h")
    flow = within(flow_l_h, 0.0, 1e9, N_("ferment", "A flow of gas"), "L/h")
    return give(OUTDOOR_CO2_PPM + np.minimum(flow / 1000.0 / air, 1.0) * 1e6, fresh_air_m3_h)


def pressure_rise_kpa(co2_g: R, headspace_l: float, temp_c: float = 20.0) -> R:
    """What a shut headspace [L] at a temperature [°C] gains [kPa] from carbon dioxide [g] that cannot leave."""
    mass = within(co2_g, 0.0, 1e9, N_("ferment", "A weight of gas"), "g")
    space = single(headspace_l, 0.01, 1e6, N_("ferment", "A headspace"), "L")
    return give(mass / CO2_G_MOL * GAS_J_MOL_K * _kelvin(temp_c) / space, co2_g)


def oxygen_left_pct(purges: R) -> R:
    """Oxygen [%] left in a mixed headspace after so many purges [volumes of gas swept through]: 20.9 exp(-n)."""
    swept = within(purges, 0.0, 1000.0, N_("ferment", "Purges"))
    return give(OUTDOOR_OXYGEN_PCT * np.exp(-swept), purges)


def purge_h(headspace_l: float, flow_l_h: float, purges: float = 3.0) -> float:
    """How long [h] a ferment's own flow [L/h] takes for so many purges [volumes] of its headspace [L]."""
    space = single(headspace_l, 0.0, 1e6, N_("ferment", "A headspace"), "L")
    swept = single(purges, 0.0, 1000.0, N_("ferment", "Purges"))
    return space * swept / single(flow_l_h, 1e-9, 1e9, N_("ferment", "A flow of gas"), "L/h")


def oxygen_beside_co2_pct(co2_ppm: R) -> R:
    """Oxygen [%] in air that carbon dioxide [ppm] has pushed aside.

    At the 40,000 ppm that kill it still reads 20.1 %: an oxygen meter alone does not warn.
    """
    ppm = within(co2_ppm, 0.0, 1e6, N_("ferment", "Carbon dioxide"), "ppm")
    return give(OUTDOOR_OXYGEN_PCT * (1.0 - ppm / 1e6), co2_ppm)


def water_seal_kpa(depth_cm: float) -> float:
    """What a water lock of this depth [cm] holds [kPa] before it lets gas out."""
    return 0.0980665 * single(depth_cm, 0.0, 500.0, N_("ferment", "A water seal"), "cm")


def _kelvin(temp_c: float) -> float:
    return single(temp_c, -5.0, 80.0, N_("ferment", "A temperature"), "°C") + 273.15


def _pressure(pressure_kpa: float) -> float:
    return single(pressure_kpa, 50.0, 110.0, N_("ferment", "An air pressure"), "kPa")


# --- what to say ------------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Gas:
    """A ferment's gas: grams, litres there, the fastest flow, and what a closed room would come to."""

    co2_g: float
    volume_l: float
    flow_l_h: float
    room_ppm: float | None


def gas_of(
    sugar_g: float,
    temp_c: float,
    pressure_kpa: float,
    *,
    used_frac: float = 1.0,
    alcoholic_frac: float = 1.0,
    room_m3: float | None = None,
) -> Gas:
    """All of it from the sugar [g], the part of it used [0..1], temperature [°C], pressure [kPa], room [m³]."""
    sugar = single(sugar_g, 0.0, 1e9, _SUGAR, "g")
    used = single(used_frac, 0.0, 1.0, N_("ferment", "A share of sugar"), "%", 100.0)
    grams = co2_from_sugar_g(sugar * used, alcoholic_frac)
    litres = co2_volume_l(grams, temp_c, pressure_kpa)
    return Gas(grams, litres, peak_flow_l_h(litres), None if room_m3 is None else closed_room_ppm(litres, room_m3))


def gas_words(room_ppm: float | None) -> tuple[str, Text]:
    """How bad it is ("none", "note", "warn", "danger") and the line to print, action first.

    room_ppm [ppm]: as if nothing leaked; None where the room's size is not known. Raises for a negative one.
    """
    if room_ppm is None:
        return "note", N_("gas", "Open outdoors. Gas in here can kill without smell. Never lean in.")
    single(room_ppm, 0.0, 1e6, N_("ferment", "Carbon dioxide"), "ppm")
    ppm = Num(round(room_ppm, -2), "ppm", 0, about=True)
    if room_ppm >= SHORT_LIMIT_PPM:
        return "danger", N_(
            "gas",
            "Open doors and wait before anyone goes in; never lean into the vessel. Shut up, this gas alone would come "
            "to {ppm}; above {limit} minutes are dangerous. Nobody goes in to fetch another.",
            ppm=ppm,
            limit=Num(SHORT_LIMIT_PPM, "ppm"),
        )
    if room_ppm >= DAY_LIMIT_PPM:
        return "warn", N_(
            "gas",
            "Air the room and lead the gas outdoors; never lean into the vessel. Shut up, it would come to {ppm}; "
            "{limit} is the limit for a working day.",
            ppm=ppm,
            limit=Num(DAY_LIMIT_PPM, "ppm"),
        )
    return "none", N_("gas", "Keep the room aired. Shut up, this gas would come to {ppm}.", ppm=ppm)
