"""What air does to resting coffee: equilibrium moisture, water activity, heat to drive the water out.

An `Isotherm` knows its form, its coefficients, the range it was measured in and its source, and answers nothing
outside. `PARCHMENT` carries coefficients written down from memory of Trejos, Roa and Oliveros 1989 (Cenicafé
40(1):5-15, reused by Parra-Coronado et al. 2008, Rev. Bras. Eng. Agríc. Amb. 12(4):415-427): rising in humidity and
falling in temperature everywhere, 12 % at 70 % humidity and 25 °C as the trade says, yet expect 0.8 points of
doubt. A farm's own table (`anchors`) is better.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Final, Generic, TypeAlias

import numpy as np
from numpy.typing import NDArray

from farmdesk.errors import NotPossible
from farmdesk.science.limits import FloatArray, R, fitting, give, single, within
from farmdesk.science.moisture import MOISTURE_DB_FRAC, to_dry_basis
from farmdesk.text import N_, pct

BoolArray: TypeAlias = NDArray[np.bool_]

ISOTHERM_TEMP_C: Final = (10.0, 50.0)  # range of the parchment polynomial
ISOTHERM_RH_FRAC: Final = (0.20, 0.92)  # towards 1 it stays bounded, which no coffee does
WETTING_RH_FRAC: Final = 0.92  # air damper than this is fog, rain or dew to coffee: common practice, no source
NO_MOULD_ACTIVITY_FRAC: Final = 0.68  # ICO and FAO good hygiene practices, section 1: no mould grows below about this
STABLE_ACTIVITY_FRAC: Final = 0.70  # Puerta 2006, Cenicafé Avance Técnico 352
VERY_STABLE_ACTIVITY_FRAC: Final = 0.60  # the same

_DB: Final = N_("science", "A moisture on dry basis")
_TEMP: Final = N_("science", "A temperature for this isotherm")
_RH: Final = N_("science", "A humidity for this isotherm")

# °C, humidity 0..1, coefficients -> moisture in % dry basis
Form: TypeAlias = Callable[[FloatArray, FloatArray, Sequence[float]], FloatArray]


@dataclass(frozen=True, slots=True)
class Equilibrium(Generic[R]):
    """Where coffee comes to rest in air: moisture [dry basis], and whether such air can only wet it.

    Where `wetting`, the air is damper than 92 % and the isotherm (fog, rain, dew): there is no resting point,
    and the moisture given is the last one known, a lower bound.
    """

    moisture_db_frac: R
    wetting: BoolArray


@dataclass(frozen=True, slots=True)
class Activity(Generic[R]):
    """Water activity [0..1] of coffee; where `wet`, it lies above what the isotherm knows, and is a lower bound."""

    activity_frac: R
    wet: BoolArray


@dataclass(frozen=True, slots=True)
class Isotherm:
    """Equilibrium moisture of one material, with the range it was measured in and its source."""

    form: Form
    coefficients: tuple[float, ...]
    temp_c: tuple[float, float]
    rh_frac: tuple[float, float]
    source: str

    @fitting
    def equilibrium(self, temp_c: R, rh_frac: R) -> Equilibrium[R]:
        """Moisture at rest [dry basis] in air at [°C], [0..1].

        Raises NotPossible outside the isotherm's range; damper than both it and 92 % answers `wetting`.
        """
        top = self.rh_frac[1]
        temp = within(temp_c, *self.temp_c, _TEMP, "°C")
        rh = np.asarray(rh_frac, dtype=np.float64)
        wetting = (rh > max(top, WETTING_RH_FRAC)) & (rh <= 1.0)
        known = within(np.where(wetting, top, rh), *self.rh_frac, _RH, "%", 100.0)
        temp, known, wetting = np.broadcast_arrays(temp, known, wetting)
        return Equilibrium(give(self.form(temp, known, self.coefficients) / 100.0, temp_c), wetting)

    @fitting
    def activity(self, moisture_db_frac: R, temp_c: R) -> Activity[R]:
        """Water activity [0..1] of coffee at a moisture [dry basis] and temperature [°C], by bisection.

        Raises NotPossible where the coffee is drier than the isotherm knows, or wetter where the isotherm ends
        below 92 %; wetter than a full isotherm answers `wet`.
        """
        temp = within(temp_c, *self.temp_c, _TEMP, "°C")
        moisture, temp = np.broadcast_arrays(within(moisture_db_frac, *MOISTURE_DB_FRAC, _DB, "%", 100.0) * 100.0, temp)
        low, high = (np.full(moisture.shape, end) for end in self.rh_frac)
        driest, wettest = (self.form(temp, end, self.coefficients) for end in (low, high))
        wet = moisture > wettest
        if (moisture < driest - 1e-9).any() or (wet.any() and self.rh_frac[1] < WETTING_RH_FRAC):
            raise NotPossible(
                N_(
                    "science",
                    "This isotherm knows coffee from {low} to {high}, on dry basis.",
                    low=pct(float(driest.max()) / 100.0),
                    high=pct(float(wettest.min()) / 100.0),
                )
            )
        for _ in range(44):  # halves the range to 1e-13
            middle = 0.5 * (low + high)
            below = self.form(temp, middle, self.coefficients) < moisture
            low, high = np.where(below, middle, low), np.where(below, high, middle)
        return Activity(give(np.asarray(0.5 * (low + high)), moisture_db_frac), wet)


def _roa(t: FloatArray, r: FloatArray, c: Sequence[float]) -> FloatArray:
    rest = r * (c[0] + r * (c[1] + r * c[2]))
    return np.asarray(rest * np.exp(r * (c[3] + r * (c[4] + r * c[5])) * t))


def _modified_henderson(t: FloatArray, r: FloatArray, c: Sequence[float]) -> FloatArray:
    return np.asarray((np.log1p(-r) / (-c[0] * (t + c[1]))) ** (1.0 / c[2]))


def _modified_chung_pfost(t: FloatArray, r: FloatArray, c: Sequence[float]) -> FloatArray:
    return np.asarray(c[0] - c[1] * np.log(-(t + c[2]) * np.log(r)))


def _modified_oswin(t: FloatArray, r: FloatArray, c: Sequence[float]) -> FloatArray:
    return np.asarray((c[0] + c[1] * t) * (r / (1.0 - r)) ** (1.0 / c[2]))


def _modified_halsey(t: FloatArray, r: FloatArray, c: Sequence[float]) -> FloatArray:
    return np.asarray((np.exp(c[0] - c[1] * t) / -np.log(r)) ** (1.0 / c[2]))


def _gab(t: FloatArray, r: FloatArray, c: Sequence[float]) -> FloatArray:
    kr = c[2] * r
    return np.asarray(c[0] * c[1] * kr / ((1.0 - kr) * (1.0 - kr + c[1] * kr)) + 0.0 * t)


def _sabbah(t: FloatArray, r: FloatArray, c: Sequence[float]) -> FloatArray:
    return np.asarray(c[0] * r ** c[1] / t ** c[2])


def _copace(t: FloatArray, r: FloatArray, c: Sequence[float]) -> FloatArray:
    return np.asarray(np.exp(c[0] - c[1] * t + c[2] * r))


def _sigma_copace(t: FloatArray, r: FloatArray, c: Sequence[float]) -> FloatArray:
    return np.asarray(np.exp(c[0] - c[1] * t + c[2] * np.exp(r)))


PARCHMENT: Final = Isotherm(
    _roa,
    (61.030848, -108.37141, 74.461059, -0.037049, 0.070114, -0.035177),
    ISOTHERM_TEMP_C,
    ISOTHERM_RH_FRAC,
    "from memory: Trejos, Roa, Oliveros 1989, Cenicafé 40(1):5-15",
)

# The forms that papers on coffee fit (all give % dry basis; humidity as 0..1, temperature in °C), with the number of
# coefficients. None ships with coefficients: no table of them could be read, so they are typed from a paper at hand.
FORMS: Final[dict[str, tuple[Form, int]]] = {
    "modified Henderson": (_modified_henderson, 3),  # [ln(1-r) / (-a (T+b))]^(1/c)
    "modified Chung-Pfost": (_modified_chung_pfost, 3),  # a - b ln[-(T+c) ln r]
    "modified Oswin": (_modified_oswin, 3),  # (a + b T) [r/(1-r)]^(1/c)
    "modified Halsey": (_modified_halsey, 3),  # [exp(a - b T) / (-ln r)]^(1/c)
    "GAB": (_gab, 3),  # Xm C K r / [(1-Kr)(1-Kr+CKr)], one temperature
    "Sabbah": (_sabbah, 3),  # a r^b / T^c
    "Copace": (_copace, 3),  # exp(a - b T + c r)
    "Sigma-Copace": (_sigma_copace, 3),  # exp(a - b T + c exp r)
}


def isotherm(
    form: str, coefficients: Sequence[float], temp_c: tuple[float, float], rh_frac: tuple[float, float], source: str
) -> Isotherm:
    """An isotherm of a named form (see FORMS) with coefficients from a paper, and the range [°C], [0..1] it holds for.

    Raises NotPossible for an unknown form, a wrong number of coefficients, no source, a range outside 0..60 °C or
    1..99 %, or coefficients that do not make moisture positive and rising with humidity all over that range.
    """
    if form not in FORMS:
        raise NotPossible(N_("science", "There is no isotherm form called {form}.", form=form))
    shape, count = FORMS[form]
    if len(coefficients) != count:
        raise NotPossible(N_("science", "The {form} form takes {count} coefficients.", form=form, count=count))
    figures = tuple(single(c, -1e6, 1e6, N_("science", "A coefficient")) for c in coefficients)
    return _sound(Isotherm(shape, figures, temp_c, rh_frac, source))


def anchors(
    rh_frac: Sequence[float], moisture_wb_frac: Sequence[float], temp_c: tuple[float, float], source: str
) -> Isotherm:
    """An isotherm through a farm's own table: humidity [0..1] and moisture at rest [wet basis], straight in between.

    It holds for the temperatures [°C] given and never beyond its ends. Raises NotPossible for fewer than two rows or
    a table in which moisture does not rise with humidity.
    """
    if len(rh_frac) != len(moisture_wb_frac) or len(rh_frac) < 2:
        raise NotPossible(N_("science", "An anchor table needs two rows or more of humidity and moisture."))
    rh, wet = np.asarray(rh_frac, dtype=np.float64), np.asarray(moisture_wb_frac, dtype=np.float64)
    to_dry_basis(wet)  # says no to what is no moisture
    if not ((np.diff(rh) > 0.0).all() and (np.diff(wet) > 0.0).all()):
        raise NotPossible(N_("science", "In an anchor table humidity and moisture rise together from row to row."))

    def between(t: FloatArray, r: FloatArray, c: Sequence[float]) -> FloatArray:
        middle = np.interp(r, rh, wet)
        return np.asarray(100.0 * middle / (1.0 - middle) + 0.0 * t)

    return _sound(Isotherm(between, (), temp_c, (float(rh[0]), float(rh[-1])), source))


def _sound(made: Isotherm) -> Isotherm:
    """The isotherm, if it can be one."""
    within(np.asarray(made.temp_c), 0.0, 60.0, _TEMP, "°C")
    within(np.asarray(made.rh_frac), 0.01, 0.99, _RH, "%", 100.0)
    temp, rh = np.meshgrid(np.linspace(*made.temp_c, 9), np.linspace(*made.rh_frac, 99), indexing="ij")
    with np.errstate(all="ignore"):  # bad coefficients show themselves as gaps
        table = made.form(temp, rh, made.coefficients)
    if not made.source.strip():
        raise NotPossible(N_("science", "An isotherm needs a source."))
    if made.temp_c[0] > made.temp_c[1] or not (
        np.isfinite(table).all() and (table > 0.0).all() and (np.diff(table, axis=1) > 0.0).all()
    ):
        raise NotPossible(N_("science", "With these figures moisture does not rise with humidity."))
    return made


@fitting
def vaporisation_kj_kg(temp_c: R, moisture_db_frac: R) -> R:
    """Heat to drive a kilogram of water out of parchment [kJ/kg] at [°C] and a moisture [dry basis].

    L = (2502.4 - 2.42958 T)(1 + 1.44408 exp(-21.5011 X)); from memory of Trejos et al. 1989. 10..50 °C, X from 0.05.
    """
    temp = within(temp_c, *ISOTHERM_TEMP_C, N_("science", "A coffee temperature"), "°C")
    dry = within(moisture_db_frac, 0.05, MOISTURE_DB_FRAC[1], _DB, "%", 100.0)
    return give((2502.4 - 2.42958 * temp) * (1.0 + 1.44408 * np.exp(-21.5011 * dry)), temp_c)
