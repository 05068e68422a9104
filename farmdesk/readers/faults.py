"""What is wrong or unlikely in a logger's readings: silences, a flat tail, odd values, a clock elsewhere."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from datetime import timedelta

import numpy as np
from numpy.typing import NDArray

from farmdesk.clock import HOUR_S, FarmTime
from farmdesk.errors import Answer, Problem, Question
from farmdesk.readers.pieces import Ints
from farmdesk.text import N_, Moment, Num, Text

TOLD = 10  # faults of one kind written out; the rest is counted
FLAT_S = 3 * HOUR_S  # the same value to the last digit for longer than this: the logger may have stopped
FLAT_N = 4  # readings that a flat tail has at least: two alike are nothing
SLACK = 1.5  # usual steps without a reading that make a silence

Values = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Fault(Problem):
    """One fault of a logger's file: its kind, and the span [UTC s] it concerns where it has one.

    Kinds: date, number, blank, impossible, order, repeated, two values, hour twice, gap, stopped, more.
    `where` is the line of the file, empty where it concerns no single line.
    """

    kind: str = ""
    from_utc_s: int | None = None
    until_utc_s: int | None = None


class Told:
    """Faults as they are found: the first of each kind in full, the rest as a count."""

    def __init__(self) -> None:
        self._told: list[Fault] = []
        self._n: Counter[str] = Counter()

    def open(self, kind: str) -> int:
        """How many more faults of a kind will be written out."""
        return max(0, TOLD - self._n[kind])

    def add(self, kind: str, text: Text, line: int = 0, span: tuple[int, int] | None = None) -> None:
        """One fault, at a line (0: none) or over a span [UTC s]."""
        if self.open(kind):
            self._told.append(Fault(str(line or ""), text, kind, *(span or (None, None))))
        self._n[kind] += 1

    def count(self, kind: str, n: int) -> None:
        """So many more of a kind, not written out."""
        self._n[kind] += n

    def problems(self) -> list[Problem]:
        """All of them, in order of the lines, silences and tails behind; then what was only counted."""
        ordered = sorted(self._told, key=lambda f: (not f.where, int(f.where or 0), f.from_utc_s or 0))
        told: list[Problem] = [*ordered]
        for kind, n in self._n.items():
            if n > TOLD:
                told.append(
                    Fault(
                        "", N_("logger", "{n} more of the kind “{kind}”.", n=Num(n - TOLD), kind=_NAMES[kind]), "more"
                    )
                )
        return told


_NAMES = {
    "date": N_("logger", "no date"),
    "number": N_("logger", "no number"),
    "blank": N_("logger", "no value"),
    "impossible": N_("logger", "no possible value"),
    "two values": N_("logger", "two values at one time"),
    "gap": N_("logger", "no reading"),
}


def long_of(seconds_s: int) -> Num:
    """A length of time [s] in the unit that suits it: minutes under two hours, then hours."""
    return (
        Num(seconds_s / 60.0, "min")
        if seconds_s < 2 * HOUR_S
        else Num(seconds_s / HOUR_S, "h", 0 if seconds_s % HOUR_S == 0 else 1)
    )


def usual_step_s(at_utc_s: Ints) -> int:
    """The usual time [s] between readings in order of time; 0 for fewer than two.

    The lower quartile of the steps (readings that are missing make others longer, never shorter); or a longer one where at least a twentieth of all steps has that very length (a logger
    that was set from one to fifteen minutes half way has no silence every fifteen minutes).
    """
    steps = np.diff(at_utc_s)
    if not len(steps):
        return 0
    usual = int(np.percentile(steps, 25, method="lower"))
    lengths, counts = np.unique(steps, return_counts=True)
    often = lengths[counts * 20 >= len(steps)]
    return max(usual, int(often.max(initial=0))) if len(steps) >= 20 else usual


def gaps(at_utc_s: Ints) -> Ints:
    """The rows (in order of time) after which readings are missing."""
    return np.flatnonzero(np.diff(at_utc_s) > SLACK * max(usual_step_s(at_utc_s), 1))


def flat_from(at_utc_s: Ints, value: Values) -> int | None:
    """The first row of a tail that keeps its last value to the last digit for 3 h or more; None without one."""
    if not len(value):
        return None
    other = np.flatnonzero(value != value[-1])
    first = int(other[-1]) + 1 if len(other) else 0
    long = at_utc_s[-1] - at_utc_s[first] >= FLAT_S and len(value) - first >= FLAT_N
    return first if long else None


def looks_shifted(first_utc_s: int, filled_utc_s: int, farm: FarmTime | None = None) -> int:
    """The seconds [s] to add to a logger's instants so that its first reading falls on the filling; 0 if it does.

    Whole hours between 1 and 14, with at most 20 minutes left over; or, with the farm's time, the farm's distance
    from UTC where that brings the first reading within an hour of the filling.
    """
    off_s = filled_utc_s - first_utc_s
    if farm is not None:
        zone_s = int((farm.local(filled_utc_s).utcoffset() or timedelta()).total_seconds())
        if zone_s and abs(off_s - zone_s) < min(HOUR_S, abs(off_s)):
            return zone_s
    shift_s = round(off_s / HOUR_S) * HOUR_S
    return shift_s if HOUR_S <= abs(shift_s) <= 14 * HOUR_S and abs(off_s - shift_s) <= HOUR_S / 3 else 0


def clock_question(first_utc_s: int, filled_utc_s: int, farm: FarmTime) -> Question | None:
    """Ask whether the logger's clock stands elsewhere, if its first reading lies hours off the filling."""
    shift_s = looks_shifted(first_utc_s, filled_utc_s, farm)
    if not shift_s:
        return None
    first, filled = Moment(farm.local(first_utc_s)), Moment(farm.local(filled_utc_s))
    zone = farm.local(filled_utc_s).utcoffset()
    utc = zone is not None and zone.total_seconds() == shift_s
    facts = {"first": first, "filled": filled}
    text = (
        N_(
            "logger",
            "The first reading says {first}, but it was filled {filled}. Is the logger's clock in UTC?",
            **facts,
        )
        if utc
        else N_(
            "logger",
            "The first reading says {first}, but it was filled {filled}. Is the logger's clock wrong?",
            **facts,
        )
    )
    hours = Num(shift_s / HOUR_S, "h")
    return Question(
        "clock",
        "clock",
        text,
        (
            Answer(str(shift_s), N_("logger", "Yes: move its readings by {hours}, and remember it", hours=hours)),
            Answer("0", N_("logger", "No: its clock is right")),
        ),
    )


def range_question(value: Values, low: float, high: float, unit: str) -> Question | None:
    """Ask about values outside the likely range; None if there are none."""
    odd = value[(value < low) | (value > high)]
    if not len(odd):
        return None
    signs = unit, 1 if unit else 2
    return Question(
        "range",
        "range",
        N_(
            "logger",
            "Outside {low} to {high}: {n} of the readings, from {least} to {most}. Are they true?",
            n=Num(len(odd)),
            low=Num(low, *signs),
            high=Num(high, *signs),
            least=Num(float(odd.min()), *signs),
            most=Num(float(odd.max()), *signs),
        ),
        (
            Answer("keep", N_("logger", "Yes: keep them")),
            Answer("drop", N_("logger", "No: leave them out")),
        ),
    )


def stopped_question(last_utc_s: int, flat_utc_s: int, value: Num, farm: FarmTime) -> Question:
    """Ask whether the logger stopped where its tail goes flat."""
    return Question(
        "stopped",
        "stopped",
        N_(
            "logger",
            "The last {hours} stand at {value} to the last digit, from {moment}. Did the logger stop?",
            hours=Num((last_utc_s - flat_utc_s) / HOUR_S, "h", 1),
            value=value,
            moment=Moment(farm.local(flat_utc_s)),
        ),
        (
            Answer("cut", N_("logger", "Yes: leave the flat part out")),
            Answer("keep", N_("logger", "No: keep it")),
        ),
    )


def unit_question(value: Values, low: float, high: float) -> Question | None:
    """Ask whether bare numbers are °F: unlikely as °C for most, likely as °F for nearly all."""
    as_c = (value >= low) & (value <= high)
    celsius = (value - 32.0) * 5.0 / 9.0
    as_f = (celsius >= low) & (celsius <= high)
    if not len(value) or as_c.mean() > 0.5 or as_f.mean() < 0.9:
        return None
    return Question(
        "unit",
        "unit",
        N_(
            "logger",
            "The readings run around {value} and name no unit. Are they °F?",
            value=Num(float(np.median(value)), "", 1),
        ),
        (Answer("F", N_("logger", "Yes: they are °F")), Answer("C", N_("logger", "No: they are °C"))),
    )
