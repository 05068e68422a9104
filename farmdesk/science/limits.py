"""What every formula does first: take floats or arrays, and refuse what lies outside its validity."""

from __future__ import annotations

from collections.abc import Callable
from functools import wraps
from typing import ParamSpec, TypeAlias, TypeVar, cast

import numpy as np
from numpy.typing import ArrayLike, NDArray

from farmdesk.errors import NotPossible
from farmdesk.text import N_, Num, Text

FloatArray: TypeAlias = NDArray[np.float64]
Floats: TypeAlias = float | FloatArray
R = TypeVar("R", float, FloatArray)  # floats in, float out; arrays in, array out
P = ParamSpec("P")
T = TypeVar("T")


def within(values: ArrayLike, low: float, high: float, what: Text, unit: str = "", scale: float = 1.0) -> FloatArray:
    """The values as a float64 array, all between `low` and `high` (both allowed).

    `scale` turns the base unit into the one shown (100 for a fraction said in percent).
    Raises NotPossible, with the first value that is outside; a gap (NaN) is outside too, and so is what is no number.
    """
    try:
        array = np.asarray(values, dtype=np.float64)
    except (TypeError, ValueError, OverflowError):
        raise NotPossible(N_("science", "{what} is not a number.", what=what)) from None
    inside = (array >= low) & (array <= high)  # False for NaN
    if not inside.all():
        worst = float(array[~inside].flat[0])
        raise NotPossible(
            N_("science", "{what} is missing.", what=what)
            if np.isnan(worst)
            else N_(
                "science",
                "{what} of {value} is outside {low} to {high}.",
                what=what,
                value=_num(worst * scale, unit),
                low=_num(low * scale, unit),
                high=_num(high * scale, unit),
            )
        )
    return array


def single(value: ArrayLike, low: float, high: float, what: Text, unit: str = "", scale: float = 1.0) -> float:
    """The same for a single number; several at once are refused."""
    array = within(value, low, high, what, unit, scale)
    if array.ndim:
        raise NotPossible(N_("science", "{what}: one number is wanted here.", what=what))
    return float(array)


def fitting(formula: Callable[P, T]) -> Callable[P, T]:
    """A formula that refuses arrays whose lengths do not go together, before it meets them."""

    @wraps(formula)
    def checked(*args: P.args, **named: P.kwargs) -> T:
        arrays = [np.shape(a) for a in (*args, *named.values()) if isinstance(a, (np.ndarray, list, tuple))]
        if len(arrays) > 1:
            try:
                np.broadcast_shapes(*arrays)
            except ValueError:
                raise NotPossible(N_("science", "These rows of numbers do not have the same length.")) from None
        return formula(*args, **named)

    return checked


def give(result: FloatArray, like: R) -> R:
    """The result as the caller wants it: a float where floats came in (no array anywhere), else the array."""
    return cast(R, float(result) if np.ndim(result) == 0 else result)


def _num(value: float, unit: str) -> Num:
    text = f"{value:.10g}"
    places = len(text.partition(".")[2]) if "e" not in text else 0
    return Num(value, unit, min(places, 4))
