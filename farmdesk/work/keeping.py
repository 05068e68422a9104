"""Keeping the notebook: remarks, plans, gaps answered, corrections, instruments, papers given."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date

from farmdesk.errors import NotPossible
from farmdesk.picture.entries import Check, Correction, PaperGiven, Plan, Remark, Skipped
from farmdesk.text import N_, Text, kg
from farmdesk.work.changes import Changes, Done, Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.guards import weight

ABOUT = ("note", "deviation", "event", "lesson")


def remark(
    farm: OpenFarm,
    text: str,
    at_utc_s: int,
    *,
    lot: str = "",
    place: str = "",
    about: str = "note",
    hand: Hand = Hand(),
) -> Done:
    """Words about a lot, a place or the farm."""
    if not text.strip():
        raise NotPossible(N_("keeping", "A remark needs words."))
    if about not in ABOUT:
        raise NotPossible(N_("keeping", "A remark is a note, a deviation, an event or a lesson."))
    return farm.write([Remark(lot, place, about, text.strip())], at_utc_s, hand, N_("keeping", "remark"), lot=lot)


def plan_lot(
    farm: OpenFarm,
    lot: str,
    *,
    method: str,
    block: str,
    day: date,
    weighed: str,
    at_utc_s: int,
    places: Sequence[str] = (),
    hand: Hand = Hand(),
) -> Done:
    """What is meant to be picked on a day, how it is to be made and where it is to lie."""
    grams, _ = weight(weighed, hand)
    label = N_("keeping", "plan for {lot}, {weight}", lot=lot, weight=kg(grams))
    body = Plan(lot, method, block, day.isoformat(), grams, tuple(places))
    return farm.write([body], at_utc_s, hand, label, lot=lot)


def not_measured(
    farm: OpenFarm, quantity: str, day: date, at_utc_s: int, *, lot: str = "", place: str = "", hand: Hand = Hand()
) -> Done:
    """A gap answered: this was not measured, and will not be."""
    label = N_("keeping", "not measured")
    return farm.write([Skipped(lot, place, quantity, day.isoformat())], at_utc_s, hand, label, lot=lot)


def correct(
    farm: OpenFarm, entries: Sequence[str], reason: str, again: Callable[[OpenFarm], Done], *, hand: Hand = Hand()
) -> Done:
    """Strike entries and write them again as they should have been, by the same verb as the first time.

    Both stand in one act; the picture is as if it had been typed right the first time. The new row is
    tried first, so a refused or questioned value strikes nothing.
    """
    if not reason.strip():
        raise NotPossible(N_("keeping", "A correction needs its reason."))
    done = again(farm)
    struck = farm.strike(entries, reason)
    ids = (*done.entries, *struck.entries)
    label = N_("keeping", "correction")
    return Done(done.changes | struck.changes, ids, label, lambda farm: farm.strike(ids), done.lot)


def check_instrument(
    farm: OpenFarm,
    instrument: str,
    passed: bool,
    at_utc_s: int,
    *,
    off: float | None = None,
    text: str = "",
    hand: Hand = Hand(),
) -> Done:
    """An instrument held against its reference; `off` is what it read too high [its base unit]."""
    _known(farm, instrument)
    label = N_("keeping", "check of {instrument}", instrument=instrument)
    return farm.write([Check(instrument, passed, off, text)], at_utc_s, hand, label)


def correct_instrument(
    farm: OpenFarm,
    instrument: str,
    quantity: str,
    add: float,
    from_utc_s: int,
    at_utc_s: int,
    *,
    until_utc_s: int | None = None,
    hand: Hand = Hand(),
) -> Done:
    """From an instant on (to another), the instrument's readings count `add` more [its base unit]; raw values stay."""
    _known(farm, instrument)
    if until_utc_s is not None and until_utc_s <= from_utc_s:
        raise NotPossible(N_("keeping", "A correction must end after it begins."))
    label: Text = N_("keeping", "correction of {instrument}", instrument=instrument)
    done = farm.write([Correction(instrument, quantity, add, from_utc_s, until_utc_s)], at_utc_s, hand, label)
    return Done(done.changes | Changes(frozenset(farm.picture.lots)), done.entries, label, done.inverse)


def paper_given(farm: OpenFarm, lot: str, paper: str, at_utc_s: int, *, buyer: str = "", hand: Hand = Hand()) -> Done:
    """A paper was given to somebody: it keeps its version, so that it can be printed again the same."""
    before = [e for e in farm.lot(lot).of(PaperGiven) if e.body.paper == paper]
    body = PaperGiven(lot, paper, len(before) + 1, buyer)
    return farm.write([body], at_utc_s, hand, N_("keeping", "{paper} of {lot}", paper=paper, lot=lot), lot=lot)


def _known(farm: OpenFarm, instrument: str) -> None:
    if instrument not in farm.things.instruments:
        raise NotPossible(N_("keeping", "The farm has no instrument {code}.", code=instrument))
