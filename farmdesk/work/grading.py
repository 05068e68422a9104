"""What the green is: defects counted by a named standard, the own cup table."""

from __future__ import annotations

from collections.abc import Mapping

from farmdesk.errors import NotPossible
from farmdesk.picture.entries import Cup, Defects, Line, Reading
from farmdesk.text import N_
from farmdesk.work.changes import Done, Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.guards import between, share


def count_defects(
    farm: OpenFarm,
    lot: str,
    *,
    standard: str,
    sample_g: int,
    at_utc_s: int,
    counts: Mapping[str, float] | None = None,
    full_n: float | None = None,
    hand: Hand = Hand(),
) -> Done:
    """A defect count, by type or only its result in full defects, with the standard's name and sample [g]."""
    if sample_g <= 0 or (not counts and full_n is None) or (full_n is not None and full_n < 0):
        raise NotPossible(N_("grading", "A defect count needs its sample's grams and a count."))
    lines = tuple(Line(name, float(n)) for name, n in (counts or {}).items())
    label = N_("grading", "defects of {lot}", lot=lot)
    return farm.write([Defects(lot, standard, sample_g, lines, full_n)], at_utc_s, hand, label, lot=lot)


def cup(
    farm: OpenFarm, lot: str, *, score: str, sittings_n: int, at_utc_s: int, words: str = "", hand: Hand = Hand()
) -> Done:
    """The own table's median score (0–100) of so many sittings, and the words as they were written."""
    value, _ = between(score, 0, 100, "", hand)
    label = N_("grading", "cup table of {lot}", lot=lot)
    return farm.write([Cup(lot, value, sittings_n, words)], at_utc_s, hand, label, lot=lot)


def read_green(
    farm: OpenFarm, lot: str, quantity: str, typed: str, at_utc_s: int, *, product: str = "green", hand: Hand = Hand()
) -> Done:
    """Water activity, density or meter moisture [%] of a sample, with its instrument in `hand`."""
    limits = {"aw": (0.0, 1.0), "density_g_l": (100.0, 1000.0)}
    if quantity == "meter_wb_frac":
        value, text = share(typed, hand)
    elif quantity in limits:
        value, text = between(typed, *limits[quantity], "", hand)
    else:
        raise NotPossible(N_("grading", "“{quantity}” is not read on green coffee here.", quantity=quantity))
    body = Reading(lot, "", quantity, (Line("", value, text),), product=product)
    return farm.write([body], at_utc_s, hand, N_("grading", "reading of {lot}", lot=lot), lot=lot)
