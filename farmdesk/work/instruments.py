"""Instruments: from when to when each may be trusted, and which readings a correction moves."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from farmdesk.clock import DAY_S
from farmdesk.errors import NotPossible
from farmdesk.picture.entries import Check, Correction, Reading
from farmdesk.picture.measures import correction_at
from farmdesk.picture.picture import Picture
from farmdesk.text import N_, Text
from farmdesk.units import grams_of, read_number, value_of
from farmdesk.work.changes import Hand
from farmdesk.work.forecasts import now_of

UNITS: dict[str, Text] = {
    "mass_g": N_("instruments", "g"), "meter_wb_frac": N_("instruments", "points"), "ph": N_("instruments", "pH"),
    "mass_c": N_("instruments", "°C"), "air_c": N_("instruments", "°C"), "brix": N_("instruments", "°Bx"),
    "store_rh_frac": N_("instruments", "points"), "rain_mm": N_("instruments", "mm"), "aw": N_("instruments", "aw"),
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Trust:
    """One instrument: bands in which it was checked and right [UTC s], and since when it is overdue [UTC s]."""

    code: str
    quantity: str
    every_d: int
    bands: tuple[tuple[int, int], ...]
    last: tuple[int, bool] | None  # the last check, and whether it passed
    overdue_utc_s: int | None


@dataclass(frozen=True, slots=True)
class CheckRow:
    """A check as written."""

    entry: str
    at_utc_s: int
    body: Check


@dataclass(frozen=True, slots=True)
class CorrectionRow:
    """A correction as written."""

    entry: str
    written_utc_s: int
    body: Correction


@dataclass(frozen=True, slots=True)
class Moved:
    """What a correction does to one lot: so many readings, the last of them before and after [fraction wet basis]."""

    lot: str
    readings_n: int
    first_utc_s: int
    last_utc_s: int
    was_wb_frac: float
    now_wb_frac: float


def trusts(picture: Picture) -> tuple[Trust, ...]:
    """Every instrument of the farm, and when it may be trusted."""
    checks: dict[str, list[tuple[int, bool]]] = {}
    for entry in picture.general_of(Check):
        checks.setdefault(entry.body.instrument, []).append((entry.happened_utc_s, entry.body.passed))
    now = now_of(picture)
    return tuple(
        _trust(code, tool.quantity, tool.check_every_d, checks.get(code, []), now)
        for code, tool in picture.things.instruments.items()
    )


def _trust(code: str, quantity: str, every_d: int, checks: Sequence[tuple[int, bool]], now: int) -> Trust:
    """A passed check holds until its interval is over, or a later check fails.

    A check that comes within a day after the interval is in time: bands that nearly touch are one.
    """
    bands: list[tuple[int, int]] = []
    was_right = False
    for i, (at, passed) in enumerate(checks):
        if not passed:
            was_right = False
            continue
        failed = next((later for later, fine in checks[i + 1 :] if not fine), None)
        until = at + every_d * DAY_S if every_d else max(now, at)
        if failed is not None:
            until = min(until, failed)
        if was_right and at <= bands[-1][1] + DAY_S:
            bands[-1] = (bands[-1][0], max(bands[-1][1], until))
        else:
            bands.append((at, until))
        was_right = True
    overdue = bands[-1][1] if bands and bands[-1][1] + DAY_S < now else None
    return Trust(code, quantity, every_d, tuple(bands), checks[-1] if checks else None, overdue)


def check_rows(picture: Picture) -> tuple[CheckRow, ...]:
    """All checks, in order."""
    return tuple(CheckRow(e.id, e.happened_utc_s, e.body) for e in picture.general_of(Check))


def correction_rows(picture: Picture) -> tuple[CorrectionRow, ...]:
    """All corrections that hold, in the order in which they were written."""
    found = [e for e in picture.book.general if type(e.body) is Correction and e.id not in picture.book.struck]
    return tuple(
        CorrectionRow(e.id, e.written_utc_s, e.body)
        for e in sorted(found, key=lambda e: e.written_utc_s)
        if isinstance(e.body, Correction)
    )


def read_add(typed: str, quantity: str, hand: Hand) -> float:
    """What readings count more, in the base unit: points of moisture become a fraction, a weight grams."""
    number = read_number(typed, "g" if quantity == "mass_g" else "", answers=hand.answers)
    if number.value == 0:
        raise NotPossible(N_("instruments", "A correction of nothing corrects nothing."))
    if quantity == "mass_g":
        return float(grams_of(number))
    if quantity.endswith("_frac"):
        return value_of(number, "%") / 100
    if quantity.endswith("_c"):  # of a difference: 1.8 degrees Fahrenheit are one degree
        return number.value / 1.8 if number.unit.casefold().lstrip("°º") == "f" else value_of(number, "°C")
    return value_of(number, {"brix": "°Bx", "rain_mm": "mm"}.get(quantity, ""))


def moved(
    picture: Picture, after: Sequence[Correction], before: Sequence[Correction] | None = None
) -> tuple[Moved, ...]:
    """The lots whose moisture readings differ under other corrections, with the last of them old and new.

    `before` are the corrections that are compared with; None: those that hold now. Raw values stay.
    """
    old = list(picture.corrections if before is None else before)
    new, found = list(after), []
    for lot in picture.lots.values():
        rows = []
        for entry in lot.of(Reading):
            if entry.body.quantity != "meter_wb_frac":
                continue
            at = entry.happened_utc_s
            was = correction_at(old, entry.instrument, "meter_wb_frac", at)
            now = correction_at(new, entry.instrument, "meter_wb_frac", at)
            if was != now:
                rows.append((at, entry.body.value + was, entry.body.value + now))
        if rows:
            found.append(Moved(lot.code, len(rows), rows[0][0], *rows[-1]))
    return tuple(found)
