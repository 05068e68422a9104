"""The readings of a logger's file, and the one pass that gathers them from pieces of its lines."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date, timedelta

import numpy as np
from numpy.typing import NDArray

from farmdesk import clock
from farmdesk.clock import FarmTime
from farmdesk.errors import Answer, Question
from farmdesk.readers.faults import (
    Told,
    Values,
    clock_question,
    flat_from,
    gaps,
    long_of,
    range_question,
    stopped_question,
    unit_question,
    usual_step_s,
)
from farmdesk.readers.layout import KINDS, Layout, stamps_at
from farmdesk.readers.numbers import UNITS, Numbers, numbers
from farmdesk.readers.pieces import Ints, Piece, words
from farmdesk.readers.stamps import NO_OFFSET, ORDERS, Bools, Stamps, day_order, days_in, instants, joined, wall_s
from farmdesk.text import N_, Day, Moment, Num, Text

SHOWN = {"C": "°C", "F": "°F", "pH": "", "%": "%"}
Lines = NDArray[np.int32]
_C, _F = UNITS.index("C"), UNITS.index("F")
_SENTENCES = {
    "date": N_("logger", "Line {line}: “{typed}” is no date with its hour."),
    "number": N_("logger", "Line {line}: “{typed}” is no number."),
    "blank": N_("logger", "Line {line} has a time and no value."),
}


@dataclass(frozen=True, slots=True)
class Tail:
    """Where a growing file was left: the place [bytes] and line to go on from, and how it is read."""

    offset_bytes: int
    line_n: int
    layout: Layout
    quantity: str
    clock_shift_s: int
    farm: FarmTime


@dataclass(frozen=True, eq=False)
class LoggerRows:
    """Readings in order of time, each instant once: `at_utc_s` int64 [n], `value` float64 [n] in the base unit.

    `quantity`: mass_c, air_c [°C], ph, store_rh_frac [0..1]. `clock_shift_s` was added to the logger's own
    clock. `questions` are open: the values are the likeliest reading until they are answered.
    """

    at_utc_s: Ints
    value: Values
    quantity: str
    layout: Layout
    columns: tuple[str, ...]
    clock_shift_s: int
    file_name: str
    sha256: str
    lines_n: int
    repeated_n: int
    usual_step_s: int
    questions: tuple[Question, ...]
    tail: Tail

    def __len__(self) -> int:
        return len(self.at_utc_s)


class Pass:
    """One pass over the lines of a file: `take` each piece, then `rows` once."""

    def __init__(
        self, layout: Layout, quantity: str, farm: FarmTime, clock_shift_s: int, line_n: int | None = None
    ) -> None:
        self.told = Told()
        self._layout, self._quantity, self._farm, self._shift_s = layout, quantity, farm, clock_shift_s
        self._kind = KINDS[quantity]
        self._line_n = line_n or 0
        self._open_n = 0  # 1 while the last line may still be being written
        self._begun = line_n is not None  # before the first reading stand headers and prose, which are no faults
        self._stamps: list[Stamps] = []
        self._value: list[Values] = []
        self._bare: list[Bools] = []  # no unit beside the number, nor in the header
        self._line: list[Lines] = []

    def take(self, lines: bytes) -> None:
        """Read one piece of the file."""
        piece = Piece(lines, self._layout.delimiter)
        self._open_n = 0 if lines.endswith(b"\n") else 1
        at, read = stamps_at(piece, self._layout.time_columns), numbers(piece.cells(self._layout.value_column))
        dated = at.ok & at.dated
        good = dated & read.ok
        if not good.all():
            self._note_faults(piece, dated, read)
        self._begun = self._begun or bool(good.any())
        value, unit = read.value[good], read.unit[good]
        if self._kind.unit == "C":
            fahrenheit = (unit == _F) | ((unit != _C) & (self._layout.unit == "F"))
            value = np.where(fahrenheit, _celsius(value), value)
        self._stamps.append(at.only(good))
        self._value.append(value)
        self._bare.append((unit == 0) & (self._layout.unit == ""))
        self._line.append((np.flatnonzero(good) + self._line_n + 1).astype(np.int32))
        self._line_n += len(piece)

    def _note_faults(self, piece: Piece, dated: Bools, read: Numbers) -> None:
        good = dated & read.ok
        if not self._begun and not good.any():
            return
        behind = np.arange(len(piece)) >= (0 if self._begun else int(np.argmax(good)))
        time_cells = piece.cells(self._layout.time_columns[0])
        value_cells = piece.cells(self._layout.value_column)
        empty = read.blank & ~time_cells.any(axis=1)
        for kind, bad, cells in (
            ("date", ~dated & ~empty, time_cells),
            ("number", dated & ~read.ok & ~read.blank, value_cells),
            ("blank", dated & read.blank, value_cells),
        ):
            rows = np.flatnonzero(bad & behind)
            few = self.told.open(kind)
            for row in rows[:few].tolist():
                self._note(kind, self._line_n + row + 1, words(cells[row]))
            self.told.count(kind, max(0, len(rows) - few))

    def _note(self, kind: str, line: int, typed: str) -> None:
        sentence = _SENTENCES[kind]
        self.told.add(kind, Text(sentence.context, sentence.template, (("line", line), ("typed", typed))), line)

    def rows(
        self,
        file_name: str,
        sha256: str,
        columns: tuple[str, ...],
        filled_utc_s: int | None,
        answers: Mapping[str, str],
        end_bytes: int,
    ) -> LoggerRows:
        """What the pieces gave, in order of time, with the faults noted and the open questions."""
        if not self._stamps:
            return self._made(np.zeros(0, np.int64), np.zeros(0), file_name, sha256, columns, end_bytes, 0, ())
        stamps, self._stamps = joined(self._stamps), []
        value, bare, line = np.concatenate(self._value), np.concatenate(self._bare), np.concatenate(self._line)
        self._value, self._bare, self._line = [], [], []

        at_utc_s, real, order_question = self._instants(stamps, line, answers.get("day order", ""))
        value, unit_question_ = self._in_unit(value, bare, answers.get("unit", ""))
        low, high = self._kind.possible
        possible = (value >= low) & (value <= high)
        self._note_impossible(value, line, ~possible & real)
        keep = possible & real
        if not keep.all():
            at_utc_s, value, line = at_utc_s[keep], value[keep], line[keep]
        at_utc_s, value, repeated_n = self._in_order(at_utc_s, value, line)
        at_utc_s, shift_question = self._shifted(at_utc_s, filled_utc_s, answers.get("clock", ""))
        at_utc_s, value, range_question_ = self._in_range(at_utc_s, value, answers.get("range", ""))
        at_utc_s, value, tail_question = self._without_tail(at_utc_s, value, answers.get("stopped", ""))
        self._note_gaps(at_utc_s)
        if self._kind.unit == "%":
            value = value / 100.0
        asked = (order_question, unit_question_, shift_question, range_question_, tail_question)
        questions = tuple(question for question in asked if question is not None)
        return self._made(at_utc_s, value, file_name, sha256, columns, end_bytes, repeated_n, questions)

    def _made(
        self,
        at_utc_s: Ints,
        value: Values,
        file_name: str,
        sha256: str,
        columns: tuple[str, ...],
        end_bytes: int,
        repeated_n: int,
        questions: tuple[Question, ...],
    ) -> LoggerRows:
        tail = Tail(end_bytes, self._line_n - self._open_n, self._layout, self._quantity, self._shift_s, self._farm)
        return LoggerRows(
            at_utc_s, value, self._quantity, self._layout, columns, self._shift_s, file_name, sha256, self._line_n,
            repeated_n, usual_step_s(at_utc_s), questions, tail,
        )  # fmt: skip

    def _instants(self, stamps: Stamps, line: Lines, answer: str) -> tuple[Ints, Bools, Question | None]:
        """The instants [UTC s] by the logger's clock, and which of the stamps exist."""
        question = None
        order = answer if answer in ORDERS else self._layout.day_order
        if stamps.free.any():
            if not order:
                order, others = day_order(stamps, clock.now())
                if others:
                    question = _order_question(stamps, (order, *others))
            self._layout = replace(self._layout, day_order=order)
        walls_s, real = wall_s(stamps, order or "dmy")
        for row in np.flatnonzero(~real)[: self.told.open("date")].tolist():
            self._note("date", int(line[row]), f"{stamps.a[row]}/{stamps.b[row]}/{stamps.c[row]}")
        own = stamps.offset_s != NO_OFFSET
        if not own.any() and self._layout.offset_s is None:
            at_utc_s, unsure_n = instants(walls_s, self._farm)
        else:
            at_utc_s = walls_s - np.where(own, stamps.offset_s, self._layout.offset_s or 0)
            unsure_n = 0
            if self._layout.offset_s is None and not own.all():
                at_utc_s[~own], unsure_n = instants(walls_s[~own], self._farm)
        if unsure_n:
            self.told.add(
                "hour twice",
                N_(
                    "logger",
                    "{n} {n:reading stands|readings stand} in an hour that the clock showed twice; {n:it counts|they count} as the first.",
                    n=Num(unsure_n),
                ),
            )
        return at_utc_s, real, question

    def _in_unit(self, value: Values, bare: Bools, answer: str) -> tuple[Values, Question | None]:
        """Degrees Celsius where bare numbers are Fahrenheit; asked where nothing says so."""
        if self._kind.unit != "C" or not bare.any():
            return value, None
        question = None if answer else unit_question(value[bare], *self._kind.likely)
        unit = answer or ("F" if question else "")
        if unit == "F":
            value = np.where(bare, _celsius(value), value)
        if answer:
            self._layout = replace(self._layout, unit=unit)
        return value, question

    def _note_impossible(self, value: Values, line: Lines, bad: Bools) -> None:
        rows = np.flatnonzero(bad)
        few = self.told.open("impossible")
        for row in rows[:few].tolist():
            number = Num(float(value[row]), SHOWN[self._kind.unit], 1)
            text = N_("logger", "Line {line}: {value} is no possible {quantity}.", line=int(line[row]), value=number, quantity=self._kind.name)  # fmt: skip
            self.told.add("impossible", text, int(line[row]))
        self.told.count("impossible", max(0, len(rows) - few))

    def _in_order(self, at_utc_s: Ints, value: Values, line: Lines) -> tuple[Ints, Values, int]:
        """Sorted by time, each instant once; the first in the file counts."""
        back = np.flatnonzero(np.diff(at_utc_s) < 0)
        if len(back):
            self.told.add(
                "order",
                N_("logger", "From line {line} on the times go back, {n} {n:time|times} in all; they are sorted.", line=int(line[back[0] + 1]), n=Num(len(back))),
                int(line[back[0] + 1]),
            )  # fmt: skip
            order = np.argsort(at_utc_s, kind="stable")
            at_utc_s, value, line = at_utc_s[order], value[order], line[order]
        again = np.flatnonzero(np.diff(at_utc_s) == 0) + 1
        if not len(again):
            return at_utc_s, value, 0
        alike = again[value[again] == value[again - 1]]
        other = again[value[again] != value[again - 1]]
        if len(alike):
            text = N_("logger", "{n} {n:reading stands|readings stand} twice, the first on line {line}; each counts once.", n=Num(len(alike)), line=int(line[alike[0]]))  # fmt: skip
            self.told.add("repeated", text, int(line[alike[0]]))
        few = self.told.open("two values")
        for row in other[:few].tolist():
            moment = Moment(self._farm.local(int(at_utc_s[row])))
            text = N_("logger", "Line {line} gives a second value for {moment}; the first counts.", line=int(line[row]), moment=moment)  # fmt: skip
            self.told.add("two values", text, int(line[row]))
        self.told.count("two values", max(0, len(other) - few))
        once = np.ones(len(at_utc_s), bool)
        once[again] = False
        return at_utc_s[once], value[once], len(again)

    def _shifted(self, at_utc_s: Ints, filled_utc_s: int | None, answer: str) -> tuple[Ints, Question | None]:
        """The instants by the farm's clock; asked where the first lies hours off the filling."""
        if answer.lstrip("-").isdigit():
            self._shift_s += int(answer)
        at_utc_s = at_utc_s + self._shift_s
        if answer or filled_utc_s is None or not len(at_utc_s):
            return at_utc_s, None
        return at_utc_s, clock_question(int(at_utc_s[0]), filled_utc_s, self._farm)

    def _in_range(self, at_utc_s: Ints, value: Values, answer: str) -> tuple[Ints, Values, Question | None]:
        low, high = self._kind.likely
        question = range_question(value, low, high, SHOWN[self._kind.unit])
        if question is not None and answer == "drop":
            likely = (value >= low) & (value <= high)
            return at_utc_s[likely], value[likely], None
        return at_utc_s, value, None if answer else question

    def _without_tail(self, at_utc_s: Ints, value: Values, answer: str) -> tuple[Ints, Values, Question | None]:
        """The rows up to where the tail goes flat, if a person said that the logger stopped there."""
        first = flat_from(at_utc_s, value)
        if first is None:
            return at_utc_s, value, None
        last_utc_s, flat_utc_s = int(at_utc_s[-1]), int(at_utc_s[first])
        shown = Num(float(value[first]), SHOWN[self._kind.unit], 1 if self._kind.unit != "pH" else 2)
        question = stopped_question(last_utc_s, flat_utc_s, shown, self._farm)
        self.told.add("stopped", question.text, span=(flat_utc_s, last_utc_s))
        if answer == "cut":
            return at_utc_s[: first + 1], value[: first + 1], None
        return at_utc_s, value, None if answer else question

    def _note_gaps(self, at_utc_s: Ints) -> None:
        silent = gaps(at_utc_s)
        longest = silent[np.argsort(at_utc_s[silent] - at_utc_s[silent + 1], kind="stable")]
        few = self.told.open("gap")
        for row in longest[:few].tolist():
            begin, end = int(at_utc_s[row]), int(at_utc_s[row + 1])
            text = N_(
                "logger",
                "No reading for {long}, from {begin} to {end}.",
                long=long_of(end - begin),
                begin=Moment(self._farm.local(begin)),
                end=Moment(self._farm.local(end)),
            )
            self.told.add("gap", text, span=(begin, end))
        self.told.count("gap", max(0, len(silent) - few))


def _celsius(fahrenheit: Values) -> Values:
    return (fahrenheit - 32.0) * 5.0 / 9.0


def _order_question(stamps: Stamps, orders: tuple[str, ...]) -> Question:
    row = int(np.argmax(stamps.free & stamps.ok))
    parts = stamps.a[row : row + 1], stamps.b[row : row + 1], stamps.c[row : row + 1]
    answers = []
    for order in orders:
        day = date(1970, 1, 1) + timedelta(int(days_in(order, *parts)[0][0]))
        answers.append(Answer(order, N_("logger", "{day}", day=Day(day, year=True, long=True))))
    written = f"{parts[0][0]}/{parts[1][0]}/{parts[2][0]}"
    return Question(
        "day order",
        "day order",
        N_("logger", "Which day does this logger mean by {written}?", written=written),
        tuple(answers),
    )
