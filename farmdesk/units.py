"""Names of units, exact conversions, and numbers as hands write them.

Inside the program a mass is integer grams, a share a fraction 0..1, a temperature °C. A unit stands in
every name; `SUFFIXES` is the list that a test holds all floors to. Definitions: 1 lb = 0.45359237 kg
(international avoirdupois pound, 1959); quintal by setting, 46 kg (accounting quintal) or 100 lb.
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass

from farmdesk.errors import Answer, Asked, NotPossible, Question
from farmdesk.text import N_, Num

LB_G = 453.59237
GRAMS = {"g": 1.0, "kg": 1000.0, "lb": LB_G, "oz": LB_G / 16, "qq": 46_000.0, "t": 1_000_000.0}
SUFFIXES = frozenset(
    "_g _kg _g_m2 _kg_m2 _kg_l _kg_m3 _m _cm _mm _m2 _m3 _l _ml _l_h _l_kg _frac _wb_frac _db_frac _pct _c _k _pa _kpa "
    "_m3_h _s _min _h _d _utc_s _ph _brix _ppm _per_h _per_d _usd_kg _usd _ha _kj_kg _kg_kg _m2_d _count _deg _mj_m2_d "
    "_mm_d _m_s _w_m2 _px _pt _ratio _index _n _sd _ms _mb _g_kg _g_l _kg_d _kg_m2_d _cents _h20 _j_mol".split()
)

_NUMBER = re.compile(r"^([+\-−]?)([0-9][0-9.,\s\u202f]*|[.,][0-9]+)\s*([^\d\s.,].*)?$")
# Plain, or thousands parted by one and the same sign, with at most one other sign for the decimals.
_PARTED = re.compile(
    r"^(?:\d*[.,]?\d*|\d{1,3}(?:,\d{3})+(?:\.\d*)?|\d{1,3}(?:\.\d{3})+(?:,\d*)?|\d{1,3}(?:[\s\u202f]\d{3})+(?:[.,]\d*)?)$"
)


@dataclass(frozen=True, slots=True)
class Typed:
    """A number as a hand wrote it, with the unit it was written in."""

    text: str
    unit: str
    value: float


def read_number(typed: str, default_unit: str = "", *, answers: dict[str, str] | None = None) -> Typed:
    """Read `12,5`, `12.5`, `152 lb`, `1 250`; a comma with three digits after it is asked once.

    Returns the value in the unit that was written (or `default_unit`).
    Raises NotPossible for what is no number; Asked for `1,250` unless `answers["comma"]` is
    "thousands" or "decimal".
    """
    match = _NUMBER.match(typed.strip())
    if not match:
        raise NotPossible(N_("units", "“{typed}” is not a number.", typed=typed.strip()))
    sign, digits, unit = match.groups()
    digits = digits.strip()
    commas, points = digits.count(","), digits.count(".")
    if not _PARTED.match(digits):  # two slips of the finger are no thousands: `12..5`, `5 8.1`
        raise NotPossible(N_("units", "“{typed}” is not a number.", typed=typed.strip()))
    digits = re.sub(r"[\s\u202f]", "", digits)
    if commas and points:  # the last sign is the decimal one
        decimal = "," if digits.rfind(",") > digits.rfind(".") else "."
        digits = digits.replace("." if decimal == "," else ",", "").replace(",", ".")
    elif commas + points > 1:  # 1,250,000: the same sign twice can only part thousands
        digits = digits.replace(",", "").replace(".", "")
    elif commas and re.fullmatch(r"[1-9]\d{0,2},\d{3}", digits):
        answer = (answers or {}).get("comma")
        if answer is None:
            whole, small = float(digits.replace(",", "")), float(digits.replace(",", "."))
            raise Asked(
                Question(
                    "value",
                    "comma",
                    N_("units", "Is {typed} {big} or {small}?", typed=digits, big=Num(whole), small=Num(small, "", 3)),
                    (
                        Answer("thousands", N_("units", "{n}", n=Num(whole))),
                        Answer("decimal", N_("units", "{n}", n=Num(small, "", 3))),
                    ),
                )
            )
        digits = digits.replace(",", "" if answer == "thousands" else ".")
    else:
        digits = digits.replace(",", ".")
    try:
        value = float(digits)
    except ValueError:
        raise NotPossible(N_("units", "“{typed}” is not a number.", typed=typed.strip())) from None
    if sign in ("-", "−"):
        value = -value
    if not math.isfinite(value):
        raise NotPossible(N_("units", "“{typed}” is not a number.", typed=typed.strip()))
    return Typed(typed.strip(), (unit or "").strip() or default_unit, value)


def grams_of(typed: Typed) -> int:
    """Whole grams [g] of a typed weight. Raises NotPossible for a unit that is no weight."""
    factor = GRAMS.get(typed.unit.lower())
    if factor is None:
        raise NotPossible(
            N_("units", "“{unit}” is not a weight; use kg, g, lb, oz or qq.", unit=typed.unit or typed.text)
        )
    return round(typed.value * factor)


def celsius_of(typed: Typed) -> float:
    """Degrees Celsius [°C] of a typed temperature in C or F."""
    unit = typed.unit.upper().replace("°", "").replace("º", "").strip()
    if unit in ("C", ""):
        return typed.value
    if unit == "F":
        return (typed.value - 32.0) * 5.0 / 9.0
    raise NotPossible(N_("units", "“{unit}” is not a temperature; use C or F.", unit=typed.unit))


# What else may be written where a unit is expected: how many of the expected one it is. Exact by definition.
_ALSO: dict[str, dict[str, float]] = {
    "L": {"l": 1.0, "ml": 0.001, "m³": 1000.0, "m3": 1000.0},
    "mm": {"mm": 1.0, "cm": 10.0, "in": 25.4},
    "h": {"h": 1.0, "min": 1 / 60, "d": 24.0},
    "%": {"%": 1.0, "pct": 1.0},
    "m": {"m": 1.0, "cm": 0.01, "ft": 0.3048},
    "ha": {"ha": 1.0, "m²": 1e-4, "m2": 1e-4},
    "°Bx": {"bx": 1.0, "brix": 1.0, "%": 1.0},
    "": {"ph": 1.0, "aw": 1.0, "g/l": 1.0},
}


def value_of(typed: Typed, unit: str) -> float:
    """The number in the unit that is expected, whatever unit was written: `68 F` is 20 °C, `900 g` is 0.9 kg.

    Raises NotPossible for a unit that cannot be turned into the expected one: nothing is taken for what it is not.
    """
    written = typed.unit.strip().casefold().lstrip("°º").strip()
    if typed.unit == unit or written in ("", unit.casefold().lstrip("°")):
        return typed.value
    if unit == "°C":
        return celsius_of(typed)
    factor = _ALSO.get(unit, {}).get(written)
    if unit.casefold() in GRAMS and written in GRAMS:
        factor = GRAMS[written] / GRAMS[unit.casefold()]
    if factor is None:
        text = N_("units", "“{typed}” is in another unit; this is read in {unit}.", typed=typed.text, unit=unit)
        if not unit:
            text = N_("units", "“{typed}” has a unit; this is read without one.", typed=typed.text)
        raise NotPossible(text)
    return typed.value * factor
