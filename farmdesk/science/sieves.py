"""Bean sizes: what a stack of sieves says about a sample.

A screen number counts 64ths of an inch; the hole sizes that rule books print are something else and live in a table
(`nominal_mm`). Averages are taken over screen numbers, never through millimetres. "On 17" is what passed 18 and
stayed on 17; "17 up" is all that stayed on 17 or above. Shares are of what was recovered, pan included.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from functools import cache
from typing import Final

import numpy as np

from farmdesk import paths
from farmdesk.errors import NotPossible
from farmdesk.science.limits import FloatArray, R, give, single, within
from farmdesk.text import N_, Num, Text, pct
from farmdesk.units import LB_G

INCH_MM: Final = 25.4  # exact, 1959
SCREENS: Final = (4, 24)  # no sieve for coffee lies outside
LARGEST_HOLE_MM: Final = 10.0  # no bean is that wide: a "17 mm" on a price list is screen 17
LOSS_ODD_FRAC: Final = 0.01  # practice: over 1 % gone, or gained, is a slip of the hand; no source
LEAK_MAX_FRAC: Final = 0.10  # Brazil, IN MAPA 8 of 11 June 2003: most that may fall through the declared screen
RUN_OF_MILL_SCREENS: Final = 4  # the same: a lot lying on this many screens is bica corrida


class Holes(StrEnum):
    """The shape of the holes."""

    ROUND = "round"
    SLOT = "slot"


def screen_mm(screen: R) -> R:
    """Exact hole size [mm] of a screen number [64ths of an inch]: 16 is 6.35. NotPossible outside 4..24."""
    number = within(screen, *SCREENS, N_("sieves", "A screen number"))
    return give(number * INCH_MM / 64.0, screen)


def typed_aperture_mm(aperture_mm: float) -> float:
    """A hole size as typed [mm], refused above 10 mm: that is a screen number. NotPossible also at 0 or less."""
    typed = single(aperture_mm, -1e6, 1e6, N_("sieves", "A hole size"), "mm")
    if typed > LARGEST_HOLE_MM:
        raise NotPossible(
            N_("sieves", "{value} is wider than any bean.", value=Num(typed, "mm", 1)),
            N_("sieves", "If it is a screen number, type it as a screen."),
        )
    return single(typed, 0.5, LARGEST_HOLE_MM, N_("sieves", "A hole size"), "mm")


@dataclass(frozen=True, slots=True)
class Apertures:
    """Hole sizes [mm] by screen number as one rule book prints them."""

    key: str
    label: Text
    source: str
    edition: str
    round_mm: Mapping[int, float]


@cache
def apertures() -> Mapping[str, Apertures]:
    """The shipped tables of printed hole sizes, by key."""
    with paths.resource("tables", "apertures.toml").open("rb") as file:
        tables = tomllib.load(file)["table"]
    return {
        table["key"]: Apertures(
            table["key"],
            Text("tables", table["label"]),
            table["source"],
            table["edition"],
            {int(number): typed_aperture_mm(size) for number, size in table["round_mm"].items()},
        )
        for table in tables
    }


def nominal_mm(screen: int, table: str) -> float:
    """Hole size [mm] that a rule book prints for a screen; NotPossible where it prints none."""
    book = apertures().get(table)
    if book is None or screen not in book.round_mm:
        raise NotPossible(N_("sieves", "No hole size is printed there for screen {screen}.", screen=screen))
    return book.round_mm[screen]


@dataclass(frozen=True, slots=True)
class SieveTest:
    """One sample through one stack: screens from largest to smallest with the grams on each, and the pan."""

    start_g: float
    screens: tuple[int, ...]
    on_g: tuple[float, ...]
    pan_g: float
    peaberry_g: float = 0.0  # weighed apart, on slots
    holes: Holes = Holes.ROUND

    @property
    def recovered_g(self) -> float:
        """All that was weighed after sieving [g]."""
        return sum(self.on_g) + self.pan_g + self.peaberry_g

    @property
    def lost_frac(self) -> float:
        """Share of the sample that was not found again [-..1]; negative where more came out than went in."""
        return (self.start_g - self.recovered_g) / self.start_g

    def on_frac(self, screen: int) -> float:
        """Share [0..1] that stayed on this screen; 0 for a screen that was not in the stack."""
        return sum(g for n, g in zip(self.screens, self.on_g, strict=True) if n == screen) / self.recovered_g

    def up_frac(self, screen: int) -> float:
        """Share [0..1] on this screen and above."""
        return sum(g for n, g in zip(self.screens, self.on_g, strict=True) if n >= screen) / self.recovered_g

    @property
    def pan_frac(self) -> float:
        """Share [0..1] that fell through all."""
        return self.pan_g / self.recovered_g

    @property
    def peaberry_frac(self) -> float:
        """Share [0..1] of peaberry weighed apart."""
        return self.peaberry_g / self.recovered_g

    def mean_screen(self, pan_as: int | None = None) -> float:
        """Weighted mean screen number; the pan is left out unless `pan_as` says which screen it counts as."""
        numbers, grams = self._weights(pan_as)
        return float(np.average(numbers, weights=grams))

    def sd_screens(self, pan_as: int | None = None) -> float:
        """Standard deviation in screen numbers, of the beans themselves (population)."""
        numbers, grams = self._weights(pan_as)
        return float(np.sqrt(np.average((numbers - np.average(numbers, weights=grams)) ** 2, weights=grams)))

    def best_two(self) -> tuple[int, int, float]:
        """The two neighbouring screens of the stack that hold most: larger, smaller, share [0..1].

        Raises NotPossible for a stack of one.
        """
        if len(self.screens) < 2:
            raise NotPossible(N_("sieves", "Two screens are needed for this."))
        pairs = zip(self.screens, self.screens[1:], self.on_g, self.on_g[1:], strict=False)
        upper, lower, a, b = max(pairs, key=lambda pair: pair[2] + pair[3])
        return upper, lower, (a + b) / self.recovered_g

    def doubt(self) -> Text | None:
        """What looks like a slip: grams gone or gained, ounces or pounds typed as grams. None where all is well."""
        ratio = self.start_g / self.recovered_g
        for unit, grams in (("oz", LB_G / 16.0), ("lb", LB_G)):
            for off in (ratio * grams, ratio / grams):
                if abs(off - 1.0) < 0.05:
                    return N_("sieves", "Sample and screens seem to be in different units: g and {unit}?", unit=unit)
        if abs(self.lost_frac) > LOSS_ODD_FRAC:
            return N_(
                "sieves",
                "The screens add up to {found}, the sample was {start}: {share} apart.",
                found=Num(self.recovered_g, "g", 1),
                start=Num(self.start_g, "g", 1),
                share=pct(abs(self.lost_frac)),
            )
        return None

    def _weights(self, pan_as: int | None) -> tuple[FloatArray, FloatArray]:
        if pan_as is None:
            return np.array(self.screens, dtype=np.float64), np.array(self.on_g)
        as_screen = single(pan_as, *SCREENS, N_("sieves", "A screen number"))
        return np.array([*self.screens, as_screen], dtype=np.float64), np.array([*self.on_g, self.pan_g])


def sieve(
    start_g: float,
    on_g: Mapping[int, float],
    pan_g: float = 0.0,
    peaberry_g: float = 0.0,
    holes: Holes = Holes.ROUND,
) -> SieveTest:
    """Put down a sieve test: sample [g], grams on each screen number, in the pan, and of peaberry set apart.

    Raises NotPossible for a screen number outside 4..24, a negative weight, an empty stack or an empty sample.
    Weights that do not add up are no refusal: see `SieveTest.doubt`.
    """
    if not on_g:
        raise NotPossible(N_("sieves", "Name one screen or more."))
    within(list(on_g), *SCREENS, N_("sieves", "A screen number"))
    within([*on_g.values(), pan_g, peaberry_g], 0.0, 1e6, N_("sieves", "A weight on a screen"), "g")
    single(start_g, 1e-3, 1e6, N_("sieves", "A sample weight"), "g")
    screens = tuple(sorted(on_g, reverse=True))
    grams = tuple(float(on_g[n]) for n in screens)
    test = SieveTest(float(start_g), screens, grams, float(pan_g), float(peaberry_g), holes)
    if sum(grams) <= 0.0:
        raise NotPossible(N_("sieves", "Nothing lies on the screens."))
    return test


@dataclass(frozen=True, slots=True)
class BrazilSize:
    """Size by Brazil's rule: the highest screen that may be declared, what leaks through it, and the name."""

    declared: int | None
    leak_frac: float
    run_of_mill: bool
    name: Text


# IN MAPA 8/2003; flat beans on round holes, peaberry on slots
_FLAT: Final = ((17, N_("sieves", "flat, large")), (15, N_("sieves", "flat, medium")), (0, N_("sieves", "flat, small")))
_PEABERRY: Final = (
    (11, N_("sieves", "peaberry, large")),
    (10, N_("sieves", "peaberry, medium")),
    (0, N_("sieves", "peaberry, small")),
)
RUN_OF_MILL: Final = N_("sieves", "run of mill (bica corrida)")


def brazil_size(test: SieveTest) -> BrazilSize:
    """Which size a lot may be called in Brazil (IN MAPA 8 of 11 June 2003).

    The declared screen is the highest through which at most 10 % falls. Where what stays on it and above lies on four
    screens or more, or nothing can be declared, the lot is run of mill. (How the four are counted is our reading: a
    screen counts when anything lies on it; the rule's full text was not at hand.)
    """
    declared = next((n for n in test.screens if 1.0 - test.up_frac(n) <= LEAK_MAX_FRAC + 1e-12), None)
    if declared is None:
        return BrazilSize(None, test.pan_frac, True, RUN_OF_MILL)
    held = sum(1 for n, g in zip(test.screens, test.on_g, strict=True) if n >= declared and g > 0.0)
    leak = 1.0 - test.up_frac(declared)
    if held >= RUN_OF_MILL_SCREENS:
        return BrazilSize(declared, leak, True, RUN_OF_MILL)
    names = _FLAT if test.holes is Holes.ROUND else _PEABERRY
    return BrazilSize(declared, leak, False, next(name for lowest, name in names if declared >= lowest))
