"""What few numbers can and cannot say: ranges for counts, slopes and differences, and honest refusals.

Nothing here needs to believe in a bell curve: Wilson and exact Poisson ranges, Theil-Sen slopes, permutations,
bootstrap. SciPy is loaded only where it is used.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations
from math import comb, sqrt
from statistics import NormalDist
from typing import Final

import numpy as np

from farmdesk.errors import NotPossible
from farmdesk.science.limits import FloatArray, single
from farmdesk.text import N_, Fact, Listing, Num, Text

TOO_FEW_LOTS: Final = 4  # under this many lots in a group only the dots are shown: a rule of the house, no source
EXACT_ARRANGEMENTS: Final = 200_000  # up to here every arrangement is counted, above it a fixed draw of them
_SEED: Final = 20_240_111  # any fixed number: the same data always say the same
_DRAWS: Final = 10_000
MOST: Final = 1e100  # a value beyond it is no measurement, and its square no number
_TWO_GROUPS: Final = N_("counting", "Two groups with a value or more each are needed, without gaps.")


@dataclass(frozen=True, slots=True)
class Range:
    """A value with the range it may as well be."""

    value: float
    low: float
    high: float


def _level(level_frac: float) -> float:
    return single(level_frac, 0.5, 0.999, N_("counting", "A level"), "%", 100.0)


def _row(values: Sequence[float] | FloatArray) -> FloatArray:
    """Values [as given] in a row; what is none is given back empty, and refused by whoever asks."""
    try:
        row = np.asarray(values, dtype=np.float64)
    except (TypeError, ValueError, OverflowError):
        return np.empty(0)
    return row if row.ndim == 1 and not (np.abs(row) > MOST).any() else np.empty(0)


def _whole(number: float, what: Text) -> int:
    counted = single(number, 0.0, 1e12, what)
    if counted != int(counted):
        raise NotPossible(N_("counting", "{what} is a whole number, 0 or more.", what=what))
    return int(counted)


def wilson(hits_n: int, tries_n: int, level_frac: float = 0.95) -> Range:
    """Range of a share [0..1] seen in some of so many tries. Wilson 1927 (score interval, no continuity correction).

    Raises NotPossible for no tries, or more hits than tries.
    """
    hits = _whole(hits_n, N_("counting", "A count"))
    tries = _whole(tries_n, N_("counting", "A count"))
    if tries == 0 or hits > tries:
        raise NotPossible(N_("counting", "{hits} of {tries} is no share.", hits=hits, tries=tries))
    z = NormalDist().inv_cdf(0.5 + _level(level_frac) / 2.0)
    share, spread = hits / tries, 1.0 + z * z / tries
    middle = (share + z * z / (2.0 * tries)) / spread
    half = z / spread * sqrt(share * (1.0 - share) / tries + z * z / (4.0 * tries * tries))
    return Range(share, 0.0 if hits == 0 else middle - half, 1.0 if hits == tries else middle + half)


def poisson_range(count_n: int, level_frac: float = 0.95) -> Range:
    """Exact range of the true mean count behind one count of rare things. Garwood 1936.

    One sample with 5 defects: 1.6 to 11.7.
    """
    from scipy.special import gammaincinv

    count = _whole(count_n, N_("counting", "A count"))
    tail = (1.0 - _level(level_frac)) / 2.0
    low = 0.0 if count == 0 else float(gammaincinv(count, tail))
    return Range(float(count), low, float(gammaincinv(count + 1, 1.0 - tail)))


def t_factor(freedom_n: int, level_frac: float = 0.95) -> float:
    """Student's two-sided factor for so many degrees of freedom: 12.71 for 1, 4.30 for 2."""
    from scipy.special import stdtrit

    if _whole(freedom_n, N_("counting", "A count")) < 1:
        raise NotPossible(N_("counting", "One value alone has no range."))
    return float(stdtrit(freedom_n, 0.5 + _level(level_frac) / 2.0))


def theil_sen(x: Sequence[float] | FloatArray, y: Sequence[float] | FloatArray, level_frac: float = 0.95) -> Range:
    """Median of all slopes between two points, with its range by Kendall's S. Theil 1950, Sen 1968.

    Raises NotPossible for fewer than three points, gaps, or points that all stand at one x.
    """
    xs, ys = (_row(values) for values in (x, y))
    n = len(xs)
    if n != len(ys) or n < 3 or not (np.isfinite(xs).all() and np.isfinite(ys).all()):
        raise NotPossible(N_("counting", "A slope needs three points or more, without gaps."))
    i, j = np.triu_indices(n, 1)
    across = xs[j] - xs[i]
    slopes = np.sort((ys[j] - ys[i])[across != 0.0] / across[across != 0.0])
    if not slopes.size:
        raise NotPossible(N_("counting", "All points stand at the same place."))
    # Sen 1968 eq. 2.6: variance of Kendall's S with ties in both
    ties = sum(t * (t - 1) * (2 * t + 5) for values in (xs, ys) for t in np.unique(values, return_counts=True)[1])
    spread = NormalDist().inv_cdf(0.5 + _level(level_frac) / 2.0) * sqrt(
        max(n * (n - 1) * (2 * n + 5) - ties, 0) / 18.0
    )
    low = max(round((slopes.size - spread) / 2.0) - 1, 0)
    high = min(round((slopes.size + spread) / 2.0), slopes.size - 1)
    return Range(float(np.median(slopes)), float(slopes[low]), float(slopes[high]))


# --- two groups -------------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Permutation:
    """Difference of means, and how often chance alone would part the groups at least as far; `exact` if all counted."""

    difference: float
    p_frac: float
    extreme_n: int
    arrangements_n: int
    exact: bool


def _groups(a: Sequence[float], b: Sequence[float]) -> tuple[FloatArray, FloatArray]:
    first, second = (_row(values) for values in (a, b))
    if not first.size or not second.size or not (np.isfinite(first).all() and np.isfinite(second).all()):
        raise NotPossible(_TWO_GROUPS)
    return first, second


def permutation(a: Sequence[float], b: Sequence[float]) -> Permutation:
    """Two-sided permutation test on the difference of means, first minus second. Fisher 1935.

    Counts every arrangement up to 200,000; above, 10,000 drawn with a fixed seed, the seen one among them.
    """
    first, second = _groups(a, b)
    pool, k = np.concatenate([first, second]), len(first)
    seen = float(first.mean() - second.mean())
    total = comb(len(pool), k)
    exact = total <= EXACT_ARRANGEMENTS
    if exact:
        picks = np.fromiter((i for pick in combinations(range(len(pool)), k) for i in pick), np.intp, total * k)
        picks = picks.reshape(total, k)
    else:
        total = _DRAWS
        random = np.random.default_rng(_SEED)
        picks = np.vstack([np.arange(k), *(random.permutation(len(pool))[:k] for _ in range(total - 1))])
    sums = pool[picks].sum(axis=1)
    apart = np.abs(sums / k - (pool.sum() - sums) / len(second))
    extreme = int((apart >= abs(seen) - 1e-9 * max(1.0, abs(seen))).sum())
    return Permutation(seen, extreme / total, extreme, total, exact)


def bootstrap_difference(
    a: Sequence[float],
    b: Sequence[float],
    statistic: Callable[..., FloatArray] = np.median,
    level_frac: float = 0.95,
) -> Range:
    """Range of the difference of two medians (or means), first minus second: percentile bootstrap, Efron 1979.

    10,000 draws with a fixed seed. Narrow for very few lots: say how many there are beside it.
    """
    first, second = _groups(a, b)
    random = np.random.default_rng(_SEED)
    draws = [group[random.integers(0, len(group), (_DRAWS, len(group)))] for group in (first, second)]
    gaps = statistic(draws[0], axis=1) - statistic(draws[1], axis=1)
    tail = (1.0 - _level(level_frac)) / 2.0
    low, high = np.quantile(gaps, [tail, 1.0 - tail])
    return Range(float(statistic(first) - statistic(second)), float(low), float(high))


def too_few(group: Fact, lots_n: int) -> Text | None:
    """The sentence for a group too small to speak of; None from four lots on."""
    if lots_n >= TOO_FEW_LOTS:
        return None
    return N_(
        "counting", "{group} (lots: {n}): under {least} is too few to say.", group=group, n=lots_n, least=TOO_FEW_LOTS
    )


# --- is it the method, or where and when? -----------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class LotOf:
    """One lot in a comparison: its code, group, value, and the labels it carries (block -> {F, A}, month -> {Jan})."""

    code: str
    group: str
    value: float
    labels: Mapping[str, frozenset[str]]


@dataclass(frozen=True, slots=True)
class Comparison:
    """Two groups side by side, with every reason not to believe the difference. `credit` only where there is none.

    `first_median`, `second_median` and `gap` stand in the lots' own unit [as given].
    """

    first_n: int
    second_n: int
    first_median: float
    second_median: float
    gap: Range
    chance: Permutation
    doubts: tuple[Text, ...]

    @property
    def credit(self) -> bool:
        """Whether the difference may be given to what names the groups."""
        return not self.doubts


def confounded(
    lots: Sequence[LotOf], first: str, second: str, factor: str, factor_word: Text | None = None
) -> Text | None:
    """The sentence that says two groups hardly met in the same blocks, months or rounds; None where they did.

    A lot can be compared where its label holds a whole lot of the other group (a lot of two blocks is whole in
    neither). The groups met when half or more of each can be compared; a rule of the house, no source.
    """
    ours = [lot for lot in lots if lot.group == first]
    theirs = [lot for lot in lots if lot.group == second]
    if not ours or not theirs:
        raise NotPossible(_TWO_GROUPS)
    met = {label for lot in ours for label in _of(lot, factor)} & {
        label for lot in theirs for label in _of(lot, factor)
    }
    met = {label for label in met if all(any(_of(lot, factor) == {label} for lot in side) for side in (ours, theirs))}
    if all(2 * sum(frozenset() < _of(lot, factor) <= met for lot in side) >= len(side) for side in (ours, theirs)):
        return None
    where = sorted(set().union(*(_of(lot, factor) for lot in ours)))
    word: Fact = factor_word or factor
    if not where:
        return N_(
            "counting",
            "No {factor} is written down for the {first} lots. The difference cannot be given to {first}.",
            factor=word,
            first=first,
        )
    return N_(
        "counting",
        "Every {first} lot (lots: {n}) comes from {factor} {where}; {others}. The difference cannot be given to {first}.",
        n=len(ours),
        first=first,
        factor=word,
        where=Listing(tuple(where)),
        others=Listing(tuple(_presence(theirs, second, factor, label) for label in where), "; "),
    )


def _of(lot: LotOf, factor: str) -> frozenset[str]:
    """What a lot carries of a factor; nothing where nobody wrote it down, and then it met nobody."""
    return lot.labels.get(factor, frozenset())


def _presence(lots: Sequence[LotOf], group: str, factor: str, label: str) -> Text:
    whole = [lot.code for lot in lots if _of(lot, factor) == {label}]
    partly = [lot.code for lot in lots if label in _of(lot, factor) and _of(lot, factor) != {label}]
    if whole:
        return N_(
            "counting", "from {label} only {codes} of {group}", label=label, codes=Listing(tuple(whole)), group=group
        )
    if partly:
        return N_(
            "counting",
            "from {label} only {codes} of {group}, in part",
            label=label,
            codes=Listing(tuple(partly)),
            group=group,
        )
    return N_("counting", "from {label} no {group}", label=label, group=group)


def compare(lots: Sequence[LotOf], first: str, second: str, factors: Mapping[str, Text]) -> Comparison:
    """Compare two groups of lots: medians, gap with range, chance, and the doubts that stand against it.

    `factors` names the labels to look behind (block, month, round) in words. Raises NotPossible for an empty group.
    """
    ours = [lot.value for lot in lots if lot.group == first]
    theirs = [lot.value for lot in lots if lot.group == second]
    gap = bootstrap_difference(ours, theirs)
    doubts = [too_few(first, len(ours)), too_few(second, len(theirs))]
    doubts += [confounded(lots, first, second, factor, word) for factor, word in factors.items()]
    chance = permutation(ours, theirs)
    if chance.p_frac > 0.05:
        doubts.append(
            N_(
                "counting",
                "Chance alone parts such groups as far in {share} of cases.",
                share=Num(100.0 * chance.p_frac, "%", 0 if chance.p_frac > 0.1 else 1),
            )
        )
    return Comparison(
        len(ours),
        len(theirs),
        float(np.median(ours)),
        float(np.median(theirs)),
        gap,
        chance,
        tuple(doubt for doubt in doubts if doubt),
    )
