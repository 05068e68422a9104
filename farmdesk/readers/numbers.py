"""Numbers as loggers write them, a column at a time: point or comma, with or without a unit."""

from __future__ import annotations

import re
from functools import lru_cache
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from farmdesk.readers.pieces import Bytes, by_shape, whole_number

_FORM = re.compile(
    r"(?P<sign>[+-]?)\s*(?P<whole>0{0,9})(?:[.,](?P<part>0{0,20}))?\s*(?:\xc2?\xb0|\xc2?\xba|deg)?\s*"
    r"(?P<unit>c|f|ph|%(?:\s?rh)?)?\.?"
)  # \xb0 is the degree sign in Western European, \xc2\xb0 in UTF-8
UNITS = ("", "C", "F", "pH", "%")


class Numbers(NamedTuple):
    """A column of numbers; `unit` is the place in `UNITS` of the unit written beside each."""

    value: NDArray[np.float64]
    ok: NDArray[np.bool_]
    blank: NDArray[np.bool_]
    unit: NDArray[np.int8]


class _Recipe(NamedTuple):
    whole: tuple[int, int]
    part: tuple[int, int]
    negative: bool
    unit: int


@lru_cache(maxsize=4096)
def _recipe(shape: str) -> _Recipe | None:
    match = _FORM.fullmatch(shape)
    if match is None or not (match["whole"] or match["part"]):
        return None
    unit = {"c": 1, "f": 2, "ph": 3}.get(match["unit"] or "", 4 if match["unit"] else 0)
    return _Recipe(match.span("whole"), match.span("part"), match["sign"] == "-", unit)


def numbers(cells: Bytes) -> Numbers:
    """Read a column; each value is the number nearest to what is written, cut after 15 digits."""
    n = len(cells)
    found = Numbers(np.full(n, np.nan), np.zeros(n, bool), np.asarray(~cells.any(axis=1)), np.zeros(n, np.int8))
    for shape, rows in by_shape(cells):
        how = _recipe(shape)
        if how is None:
            continue
        some = cells[rows]
        value = whole_number(some, *how.whole)
        low, high = how.part
        decimals = min(high - low, 15 - (how.whole[1] - how.whole[0]))
        if decimals:
            value = value * 10**decimals + whole_number(some, low, low + decimals)
        # 15 digits are exact in a float64, and so is the power of ten: the quotient is correctly rounded
        found.value[rows] = (-value if how.negative else value) / 10.0**decimals
        found.ok[rows] = True
        found.unit[rows] = how.unit
    return found
