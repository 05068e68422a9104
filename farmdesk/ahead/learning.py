"""What a farm's own finished lots teach: its ratios, its drying, its ferments. Each says what it rests on.

Priors are learnt by layers: every lot differs from its method on its surface, that from the farm, the farm from the
settings. The joint normal distribution of all lots then says, from those finished, what to expect of the next one
(linear unbiased prediction; Robinson 1991, Stat. Sci. 6:15). One lot moves it a little, eight a lot, and a lot of
another method lends what it tells about the farm.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Any, Final

import numpy as np

from farmdesk.ahead.range import MAD_TO_SD, OWN_LOTS_NEEDED, Ahead
from farmdesk.errors import NotPossible
from farmdesk.paths import resource
from farmdesk.science.limits import FloatArray
from farmdesk.text import N_, Text

_SETTINGS_LOTS: Final = 2.0  # the spread of the settings counts as many lots; our choice
_ROUNDS: Final = 12  # of expectation and maximisation (Dempster, Laird, Rubin 1977); later ones change little
_SURPRISES_NEEDED: Final = 10  # fewer say nothing about one end in ten; our choice
FROM_SETTINGS: Final = N_("learning", "from the settings")


@dataclass(frozen=True, slots=True)
class Ratio:
    """A farm's own ratio of one method: the middle, its spread [as sd], how many lots, and the words for it."""

    middle: float
    spread_sd: float
    own_n: int
    says: Text


def own_ratio(own: Sequence[float], setting: float, setting_sd: float) -> Ratio:
    """Median and spread (median absolute deviation, as sd) of own lots; the setting while there are fewer than five.

    own, setting and setting_sd [all in one unit, whichever]: one figure a finished lot, gaps (NaN) left out; the
    settings' middle and spread.
    """
    figures = np.asarray([x for x in own if np.isfinite(x)], dtype=np.float64)
    if figures.size < OWN_LOTS_NEEDED:
        return Ratio(setting, setting_sd, int(figures.size), FROM_SETTINGS)
    middle = float(np.median(figures))
    spread = MAD_TO_SD * float(np.median(np.abs(figures - middle)))
    return Ratio(middle, spread, int(figures.size), from_own(int(figures.size)))


def from_own(lots_n: int) -> Text:
    """The words for what rests on a number of own lots."""
    return N_("learning", "from {n} own {n:lot|lots}", n=lots_n) if lots_n != 1 else N_("learning", "from one own lot")


@dataclass(frozen=True, slots=True, eq=False)
class Layers:
    """Prior spread of a lot's parameters, layer by layer: sd of the farm, of a method in it, of a lot in that [p]."""

    farm_sd: FloatArray
    method_sd: FloatArray
    lot_sd: FloatArray


@dataclass(frozen=True, slots=True, eq=False)
class LotTaught:
    """What one finished lot said: its method key, how far off [p] the settings its parameters lay, how surely [p, p].

    `surprise` [-]: asked half-way, how far its real end lay from the likely one, in half ranges; None where that
    could not be asked.
    """

    key: str
    off: FloatArray
    covariance: FloatArray
    surprise: float | None = None


def surprise_of(asked: Ahead, real_utc_s: float) -> float | None:
    """How far a real end [UTC s] lay from the likely one, in half ranges of its side; None where the range was open."""
    early, middle, late = asked.earliest_utc_s, asked.likely_utc_s, asked.latest_utc_s
    if early is None or middle is None or late is None:
        return None
    half_s = middle - early if real_utc_s <= middle else late - middle
    return abs(real_utc_s - middle) / max(half_s, 1.0)


def stretch_of(taught: Sequence[LotTaught], key: str) -> float:
    """By how much to widen or narrow ranges so that eight ends in ten would have fallen inside, from own lots.

    The 80 % point of past surprises (split conformal prediction: Vovk, Gammerman and Shafer 2005), drawn towards 1 by
    n / (n + 5); 1 with fewer than ten.
    """
    method = key.split("/")[0]
    past = np.sort([o.surprise for o in taught if o.key.split("/")[0] == method and o.surprise is not None])
    if past.size < _SURPRISES_NEEDED:
        return 1.0
    at = min(int(np.ceil((past.size + 1) * 0.8)), past.size) - 1
    return float(np.clip(past[at], 0.4, 2.5) ** (past.size / (past.size + 5.0)))


@dataclass(frozen=True, slots=True, eq=False)
class Prior:
    """What to expect of the next lot: mean [p], covariance [p, p], own lots of this very method, and the words."""

    mean: FloatArray
    covariance: FloatArray
    own_n: int
    says: Text


def prior_for(key: str, settings: FloatArray, layers: Layers, taught: Sequence[LotTaught]) -> Prior:
    """The prior for the next lot of a method, from the settings' mean [p] and all finished lots.

    Keys are "method/surface". Covariance between two lots: farm², half method² for the same method, half for the
    same surface; with itself also lot² and its own doubt. The
    spread from lot to lot is learnt as well. A lot further than three sd off counts with its doubt raised to match.
    """
    farm, method, lot = (np.diag(sd**2) for sd in (layers.farm_sd, layers.method_sd, layers.lot_sd))
    own_n = sum(1 for one in taught if one.key == key)
    if not taught:
        return Prior(settings.copy(), farm + method + lot, 0, FROM_SETTINGS)
    keys = np.array([one.key for one in taught])
    p, off = settings.size, np.concatenate([one.off for one in taught])
    shared = np.kron(np.ones((len(taught),) * 2), farm) + np.kron(_alike(keys, keys), method)
    doubt = _blocks([one.covariance * _odd(one, farm + method + lot) for one in taught])
    spread = dict.fromkeys(sorted({*keys.tolist(), key}), lot)
    for _ in range(_ROUNDS):
        known = _inverse(shared + _blocks([spread[one] for one in keys]) + doubt)
        pull = (known @ off).reshape(-1, p)
        inner = known.reshape(len(taught), p, len(taught), p)
        for one in spread:
            rows = np.flatnonzero(keys == one)
            spread[one] = _lot_spread(lot, spread[one], pull[rows], inner[rows, :, rows, :])
    known = _inverse(shared + _blocks([spread[one] for one in keys]) + doubt)
    to_next = np.kron(np.ones((1, len(taught))), farm) + np.kron(_alike(np.array([key]), keys), method)
    gain = to_next @ known
    says = from_own(own_n) if own_n else N_("learning", "from {n} own {n:lot|lots} of other methods", n=len(taught))
    covariance = farm + method + spread[key] - gain @ to_next.T
    return Prior(settings + gain @ off, (covariance + covariance.T) / 2.0, own_n, says)


def _odd(one: LotTaught, layers: FloatArray) -> float:
    """How much to raise the doubt of a lot that lies more than three sd from what the settings allow."""
    return max(1.0, float(one.off @ np.linalg.solve(layers + one.covariance, one.off)) / (9.0 * one.off.size))


def _alike(some: np.ndarray, others: np.ndarray) -> FloatArray:
    """How much of the method's layer two lots share: half for the same method, half for the same surface or start."""
    parts = [np.array([key.split("/") for key in keys]) for keys in (some, others)]
    return np.asarray((parts[0][:, None, :] == parts[1][None, :, :]).mean(axis=2))


def _inverse(matrix: FloatArray) -> FloatArray:
    return np.asarray(np.linalg.inv(matrix), dtype=np.float64)


def _blocks(parts: Sequence[FloatArray]) -> FloatArray:
    p = parts[0].shape[0]
    out = np.zeros((len(parts) * p,) * 2)
    for i, part in enumerate(parts):
        out[i * p : (i + 1) * p, i * p : (i + 1) * p] = part
    return out


def _lot_spread(settings: FloatArray, lot: FloatArray, pull: FloatArray, inner: FloatArray) -> FloatArray:
    """The spread from lot to lot as lots of one method show it, the settings counting as two more (one EM round)."""
    square = ((pull @ lot) ** 2).sum(axis=0) + np.einsum("npp->p", lot - lot @ inner @ lot)
    return np.asarray(np.diag((_SETTINGS_LOTS * np.diag(settings) + square) / (_SETTINGS_LOTS + pull.shape[0])))


def taught_alone(
    key: str, scaled: FloatArray, covariance: FloatArray, root: FloatArray, surprise: float | None = None
) -> LotTaught:
    """What a lot says by itself: its scaled fit [p, in units of the prior] and their covariance [p, p], with the
    prior's part taken out, and its surprise [-].

    root [p, p] turns prior units into the parameters' own. A thousandth of the prior stays, so that a direction the
    lot says nothing about is very unsure and not infinitely so.
    """
    one = np.eye(scaled.size)
    values, vectors = np.linalg.eigh(np.linalg.inv(covariance) - one)
    alone = (vectors / np.maximum(values, 1e-3)) @ vectors.T
    off = alone @ np.linalg.solve(covariance, scaled)
    return LotTaught(key, root @ off, root @ alone @ root.T, surprise)


@cache
def table(name: str) -> Mapping[str, Any]:
    """A table of defaults that ships with the program, by name: drying_defaults, ferment_defaults, ferment_limits."""
    return tomllib.loads(resource("tables", f"{name}.toml").read_text(encoding="utf-8"))


def row_of(name: str, key: str) -> Mapping[str, Any]:
    """One row of such a table. Raises NotPossible for a key it does not know."""
    row = table(name).get(key)
    if not isinstance(row, dict):
        raise NotPossible(N_("learning", "There is no default for “{key}”.", key=key))
    return row
