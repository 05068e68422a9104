"""The dry mill's sums: what came out of what went in, what is missing, and whose coffee got mixed.

Words used exactly: *hulling yield* is all green out (every grade, rejects too) per parchment or dried cherry in;
*outturn* is saleable green per parchment or dried cherry in; the *yield factor* is kilograms of dry parchment for one
70-kg bag of top green. Shares are fractions 0..1, weights grams. Two lots are compared fairly only when both sides of
a yield stand at the same moisture.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from itertools import combinations
from typing import Final

import numpy as np

from farmdesk.errors import NotPossible
from farmdesk.science.counting import t_factor
from farmdesk.science.limits import FloatArray, Floats, R, fitting, give, single, within
from farmdesk.science.moisture import mass_at_g
from farmdesk.text import N_, Text, kg, pct

BAG_KG: Final = 70.0  # the bag the yield factor is told for (Colombian trade)
BASE_FACTOR_KG: Final = 94.0  # base at which a price is quoted there; it was 92.8 before: a setting
SMALLEST_HULL_TEST_G: Final = 200.0  # 250-300 g is usual; under 200 g a few beans move the answer
MILL_TOLERANCE_FRAC: Final = 0.01  # common practice, no source
MILL_TOLERANCE_G: Final = 1000.0  # the same

# International Coffee Organization, fixed by agreement (as printed in the ITC Coffee Guide): weight of green bean
# equivalent per weight. For reports only; stock moves on scale weights.
ICO_GREEN_RATIO: Final[dict[str, float]] = {
    "dried cherry": 0.5,
    "parchment": 0.8,
    "roasted": 1.19,
    "soluble": 2.6,
    "liquid": 2.6,
    "decaffeinated green": 1.05,
}


class Intake(StrEnum):
    """What goes into the huller."""

    PARCHMENT = "parchment"
    DRY_CHERRY = "dry cherry"


# More green than this cannot come out: husk is 17-20 % of parchment (Puerta 2016, Cenicafé 67(1): 17.4 % in the best
# samples) and 48-55 % of dried cherry (Wintgens, from memory); limits with room for a damp return.
MOST_FRAC: Final = {Intake.PARCHMENT: 0.86, Intake.DRY_CHERRY: 0.58}
# What all green together usually is; a farm's own bands are better.
USUAL_FRAC: Final = {Intake.PARCHMENT: (0.78, 0.84), Intake.DRY_CHERRY: (0.45, 0.52)}

_MASS: Final = N_("hulling", "A weight")


def _mass(mass_g: Floats, least_g: float = 0.0) -> FloatArray:
    return within(mass_g, least_g, 1e9, _MASS, "g")


def green_equivalent_g(mass_g: R, form: str) -> R:
    """Green bean equivalent [g] of a weight [g] in a form named in ICO_GREEN_RATIO, for reports only."""
    if form not in ICO_GREEN_RATIO:
        raise NotPossible(N_("hulling", "There is no agreed factor for {form}.", form=form))
    return give(_mass(mass_g) * ICO_GREEN_RATIO[form], mass_g)


@fitting
def yield_frac(green_g: R, in_g: R) -> R:
    """Green out [g] per coffee in [g], as weighed [0..1]. Raises NotPossible for nothing in or more out than in."""
    green, fed = _mass(green_g), _mass(in_g, 1.0)
    return give(within(green / fed, 0.0, 1.0, N_("hulling", "A share of green coffee"), "%", 100.0), green_g)


@fitting
def yield_dry_frac(green_g: R, green_wb_frac: R, in_g: R, in_wb_frac: R) -> R:
    """The same with both sides at one moisture, G(1-Mg) / P(1-Mp): fair between lots; [g], [wet basis]."""
    return yield_frac(mass_at_g(green_g, green_wb_frac, in_wb_frac), in_g)


def _bag(bag_kg: float) -> float:
    return single(bag_kg, 1.0, 1000.0, N_("hulling", "A bag"), "kg")


@fitting
def yield_factor_kg(parchment_g: R, top_g: R, bag_kg: float = BAG_KG) -> R:
    """Dry parchment for one bag of top green [kg]: 250 g that give 195.5 g [g] make 89.5 at 70 kg."""
    top = _mass(top_g, 1e-3)
    factor = within(_mass(parchment_g) / top, 1.0, 100.0, N_("hulling", "Parchment per top green"))
    return give(factor * _bag(bag_kg), parchment_g)


def price_ratio(factor_kg: R, base_factor_kg: float = BASE_FACTOR_KG) -> R:
    """Price of parchment with this yield factor [kg] per price quoted at the base factor [kg]: 94/F."""
    base = single(base_factor_kg, 60.0, 7000.0, N_("hulling", "A yield factor"), "kg")
    return give(base / within(factor_kg, 60.0, 7000.0, N_("hulling", "A yield factor"), "kg"), factor_kg)


# --- hull test --------------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class HullSample:
    """One sample hulled at the farm: parchment or cherry in, all green, top green, husk [g]."""

    in_g: float
    green_g: float
    top_g: float
    husk_g: float | None = None


@dataclass(frozen=True, slots=True)
class HullTest:
    """Several samples together: mean yield with its range, top share, yield factor, husk share."""

    samples_n: int
    yield_mean_frac: float
    yield_half_frac: float | None  # None for one sample: one says nothing about its own doubt
    top_mean_frac: float
    factor_kg: float
    husk_mean_frac: float


def hull_test(samples: Sequence[HullSample], level_frac: float = 0.95) -> HullTest:
    """Mean of two or three hulled samples with range: t s / sqrt(n), Student's t for so few.

    Husk is what was weighed, or what is missing from the sample. Raises NotPossible for no sample, one under 200 g,
    or parts that weigh more than the sample.
    """
    if not samples:
        raise NotPossible(N_("hulling", "A hull test needs a sample."))
    for one in samples:
        if not one.in_g >= SMALLEST_HULL_TEST_G:
            raise NotPossible(
                N_("hulling", "A hull test needs {least} or more.", least=kg(SMALLEST_HULL_TEST_G, 1)),
                N_("hulling", "Take 250 to 300 g, two or three times."),
            )
        if one.husk_g is not None:
            _mass(one.husk_g)
        if not 0.0 < one.top_g <= one.green_g or not one.green_g + (one.husk_g or 0.0) <= one.in_g < np.inf:
            raise NotPossible(N_("hulling", "The parts of this sample weigh more than the sample."))
    green = np.array([yield_frac(one.green_g, one.in_g) for one in samples])
    top = sum(one.top_g for one in samples) / sum(one.in_g for one in samples)
    husk = np.array([(one.in_g - one.green_g if one.husk_g is None else one.husk_g) / one.in_g for one in samples])
    n = len(samples)
    half = float(t_factor(n - 1, level_frac) * green.std(ddof=1) / np.sqrt(n)) if n > 1 else None
    return HullTest(n, float(green.mean()), half, float(top), BAG_KG / float(top), float(husk.mean()))


# --- mill return ------------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Return:
    """What the mill gave back for one lot [g]; None is "not weighed" or "not measured", never 0."""

    intake: Intake
    in_g: float
    grades_g: Mapping[str, float]
    by_products_g: Mapping[str, float]
    husk_g: float | None = None
    samples_g: float = 0.0
    in_wb_frac: float | None = None
    green_wb_frac: float | None = None
    weighings_n: int = 0
    scale_step_g: float = 0.0

    @property
    def green_g(self) -> float:
        """All green: grades and by-products [g], without the mill's samples."""
        return sum(self.grades_g.values()) + sum(self.by_products_g.values())


@dataclass(frozen=True, slots=True)
class MillBalance:
    """In = green + husk + samples + water + unexplained [g], and whether the rest is within tolerance.

    `husk_estimated` says the husk was not weighed: then only husk and unexplained together are known.
    `water_g` is None where a moisture is missing (the balance is marked for it); positive where the green dried.
    """

    in_g: float
    green_g: float
    husk_g: float | None
    husk_estimated: bool
    samples_g: float
    water_g: float | None
    unexplained_g: float | None
    husk_and_unexplained_g: float
    tolerance_g: float
    within: bool | None
    trouble: Text | None


def tolerance_g(in_g: float, weighings_n: int, scale_step_g: float) -> float:
    """What a balance may be off [g]: 1 % of the intake, or 1 kg and half a scale step [g] a weighing; the larger."""
    intake, step = (single(grams, 0.0, 1e9, _MASS, "g") for grams in (in_g, scale_step_g))
    weighings = single(weighings_n, 0.0, 1e6, N_("hulling", "A number of weighings"))
    return max(MILL_TOLERANCE_FRAC * intake, MILL_TOLERANCE_G + weighings * step / 2.0)


def mill_balance(back: Return, expected_husk_frac: float | None = None) -> MillBalance:
    """Account for every gram of one lot's mill return.

    Water is what the green lost against its moisture at intake, by dry matter: G ((1-Mg)/(1-Mp) - 1). Husk that was
    not weighed is expected from the hull test's share [0..1] where one is given.
    A return that cannot be true is still balanced, with the reason in `trouble`: it has to be talked about.
    Raises NotPossible for negative weights or nothing sent.
    """
    _mass(back.in_g, 1.0)
    parts = [*back.grades_g.values(), *back.by_products_g.values(), back.samples_g, back.husk_g or 0.0]
    _mass(np.array(parts))
    green = back.green_g
    water = None
    if back.in_wb_frac is not None and back.green_wb_frac is not None:
        out = green + back.samples_g
        water = mass_at_g(out, back.green_wb_frac, back.in_wb_frac) - out
    rest = back.in_g - green - back.samples_g - (water or 0.0)
    husk = back.husk_g
    if husk is None and expected_husk_frac is not None:
        husk = single(expected_husk_frac, 0.0, 1.0, N_("hulling", "A share of husk"), "%", 100.0) * back.in_g
    unexplained = None if husk is None else rest - husk
    allowed = tolerance_g(back.in_g, back.weighings_n, back.scale_step_g)
    return MillBalance(
        back.in_g,
        green,
        husk,
        back.husk_g is None,
        back.samples_g,
        water,
        unexplained,
        rest,
        allowed,
        None if unexplained is None else abs(unexplained) <= allowed,
        impossible(back.intake, back.in_g, green + back.samples_g, back.husk_g),
    )


def impossible(intake: Intake, in_g: float, green_g: float, husk_g: float | None = None) -> Text | None:
    """Why a return cannot be true [g]: more than was sent, or more green than a bean holds. None where it can be."""
    if green_g + (husk_g or 0.0) > in_g + tolerance_g(in_g, 0, 0.0):
        return N_(
            "hulling", "{back} came back of {sent} sent.", back=kg(green_g + (husk_g or 0.0), 1), sent=kg(in_g, 1)
        )
    if green_g > MOST_FRAC[intake] * in_g * (1.0 + 1e-9):
        return N_(
            "hulling",
            "{green} of {sent} is {share}; it cannot be more than {most}.",
            green=kg(green_g, 1),
            sent=kg(in_g, 1),
            share=pct(green_g / in_g),
            most=pct(MOST_FRAC[intake], 0),
        )
    return None


@dataclass(frozen=True, slots=True)
class Outturn:
    """A lot's four figures; None is "not measured"."""

    yield_frac: float  # all green per dry coffee in
    top_frac: float  # top grade per dry coffee in
    yield_dry_frac: float | None  # all green per dry coffee in, at one moisture
    in_per_top_kg_kg: float  # dry coffee for a kilogram of top grade
    cherry_per_green_kg_kg: float | None  # cherry for a kilogram of green


def outturn(
    in_g: float,
    green_g: float,
    top_g: float,
    in_wb_frac: float | None = None,
    green_wb_frac: float | None = None,
    cherry_g: float | None = None,
) -> Outturn:
    """The figures of a lot card from dry coffee in, all green, top grade [g], moistures [wet basis] and cherry [g].

    Raises NotPossible where parts outweigh the whole, or nothing went in or came out.
    """
    for grams in (green_g, top_g):
        single(grams, 1.0, 1e9, _MASS, "g")
    if top_g > green_g:
        raise NotPossible(N_("hulling", "The top grade weighs more than all the green."))
    dry = None
    if in_wb_frac is not None and green_wb_frac is not None:
        dry = yield_dry_frac(green_g, green_wb_frac, in_g, in_wb_frac)
    cherry = None if cherry_g is None else single(cherry_g, 0.0, 1e9, _MASS, "g") / green_g
    return Outturn(yield_frac(green_g, in_g), yield_frac(top_g, in_g), dry, in_g / top_g, cherry)


# --- lots mixed at the mill -------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class RunLot:
    """One lot of a mill run: what was sent and what green came back under its name [g]."""

    code: str
    intake: Intake
    in_g: float
    green_g: float
    usual_frac: tuple[float, float] | None = None  # its own band, from hull test or farm history


@dataclass(frozen=True, slots=True)
class MixedPair:
    """Two lots of one run with opposite errors that together are normal."""

    rich: str  # came back with too much
    poor: str  # came back with too little
    rich_frac: float
    poor_frac: float
    together_frac: float
    moved_g: float  # green of the poor one that would reconcile both

    @property
    def text(self) -> Text:
        """The finding in a sentence."""
        return N_(
            "hulling",
            "Together {share}, normal: about {mass} of {poor} was labelled {rich}.",
            share=pct(self.together_frac),
            mass=kg(self.moved_g),
            poor=self.poor,
            rich=self.rich,
        )


def mixed_pairs(lots: Sequence[RunLot]) -> tuple[MixedPair, ...]:
    """Pairs of a run whose errors are opposite and cancel: probably mixed; the likeliest first.

    Both must lie outside their usual band, on different sides, and together inside it. The grams are those that bring
    both to their common yield. Lots of different intake are never paired.
    Raises NotPossible for a lot that was not sent.
    """
    found: list[tuple[float, MixedPair]] = []
    for one, other in combinations(lots, 2):
        if one.intake is not other.intake:
            continue
        rich, poor = sorted((one, other), key=lambda lot: float(_mass(lot.green_g)) / float(_mass(lot.in_g, 1.0)))[::-1]
        rich_frac, poor_frac = rich.green_g / rich.in_g, poor.green_g / poor.in_g
        together = (rich.green_g + poor.green_g) / (rich.in_g + poor.in_g)
        low = max(_band(rich)[0], _band(poor)[0])
        high = min(_band(rich)[1], _band(poor)[1])
        if rich_frac > _band(rich)[1] and poor_frac < _band(poor)[0] and low <= together <= high:
            moved = rich.green_g - together * rich.in_g
            pair = MixedPair(rich.code, poor.code, rich_frac, poor_frac, together, moved)
            found.append((abs(together - (low + high) / 2.0), pair))
    return tuple(pair for _, pair in sorted(found, key=lambda item: item[0]))


def _band(lot: RunLot) -> tuple[float, float]:
    return lot.usual_frac or USUAL_FRAC[lot.intake]
