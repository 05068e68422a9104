"""How a logger's file is laid out, found from its first lines: delimiter, columns, unit, zone.

Every delimiter is tried with the same reading that the whole file gets later; the one under which most
lines hold an instant and a number is the file's own.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from farmdesk.errors import Answer, FileTrouble, NotPossible, Question
from farmdesk.readers.numbers import UNITS, numbers
from farmdesk.readers.pieces import BLOCK, Piece, Script, joined_cells, script_of, texts
from farmdesk.readers.stamps import Stamps, stamps
from farmdesk.text import N_, Text

DELIMITERS = ("\t", ";", ",", "|", " ")
MOST_COLUMNS = 40
HEAD = 1 << 16  # bytes looked at: some 2,000 lines, or a long preamble and the first readings
_ZONE = re.compile(r"\b(?:gmt|utc)\b\s*(?:([+-])\s?(\d\d?)(?::?(\d\d))?)?", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Kind:
    """A kind of quantity: its name, the words its column's header has, its unit, and what is likely and possible."""

    name: Text
    header: re.Pattern[str]
    unit: str
    likely: tuple[float, float]
    possible: tuple[float, float]


_TEMPERATURE = re.compile(r"temp|°|º|celsius|fahren|\bgrad|\bt\d?\b", re.IGNORECASE)
# Likely temperatures are the farm's own rule for a ferment's mass; the sensors of cheap loggers end at -40 and
# +85 or +125 °C (common practice, no source). Likely pH: juice at 6.5 down to over-soured mash at 3 (common practice).
KINDS = {
    "mass_c": Kind(N_("logger", "temperature"), _TEMPERATURE, "C", (5.0, 45.0), (-60.0, 130.0)),
    "air_c": Kind(N_("logger", "temperature"), _TEMPERATURE, "C", (-5.0, 50.0), (-60.0, 130.0)),
    "ph": Kind(N_("logger", "pH"), re.compile(r"\bph\b", re.IGNORECASE), "pH", (2.8, 7.5), (0.0, 14.0)),
    "store_rh_frac": Kind(
        N_("logger", "air humidity"), re.compile(r"\brh\b|\bhr\b|humid|humed", re.IGNORECASE), "%", (10.0, 100.0), (0.0, 100.0)
    ),
}  # fmt: skip
_NOT_MEANT = re.compile(r"dew|roc[ií]o|batt?er|volt|rssi|signal|alarm|index|\bno\.?$|^#|^id$|wet bulb", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Layout:
    """Where a file's times and values stand; kept for the logger once a person has said yes to it."""

    delimiter: str
    time_columns: tuple[int, ...]  # one, or the day's and the hour's
    value_column: int
    unit: str = ""  # C, F, pH, %; empty where neither header nor cells say
    day_order: str = ""  # dmy, mdy, ymd; empty: told from the file
    offset_s: int | None = None  # from UTC [s], where the file's header names a zone


@dataclass(frozen=True, slots=True)
class Found:
    """What the first lines show: the layout proposed, its columns and first rows, and a question if one is open."""

    layout: Layout
    quantity: str
    columns: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    value_columns: tuple[int, ...]
    question: Question | None = None


def opened(path: Path) -> tuple[bytes, Script]:
    """The first bytes of a file and its script. Raises FileTrouble where it cannot be read, NotPossible if no table."""
    try:
        with path.open("rb") as file:
            head = file.read(BLOCK)
    except (OSError, ValueError) as error:
        raise unreadable(path, error) from error
    if not head.strip(b"\0\xff\xfe\xef\xbb\xbf \t\r\n"):
        raise NotPossible(N_("logger", "{file} is empty.", file=path.name))
    if head.startswith((b"PK\x03\x04", b"\xd0\xcf\x11\xe0")):
        raise NotPossible(
            N_("logger", "{file} is a workbook, not a table of text.", file=path.name),
            N_("logger", "Save it as CSV in the program it comes from, then read that file."),
        )
    return head, script_of(head)


def unreadable(path: Path, error: Exception) -> FileTrouble:
    """The world's no to a file, with a way out."""
    return FileTrouble(
        N_(
            "logger",
            "{file} cannot be read: {why}.",
            file=path.name,
            why=getattr(error, "strerror", None) or str(error),
        ),
        N_("logger", "Copy it to this computer's own disk, close the program that holds it, and try again."),
    )


def look_at(path: Path, quantity: str = "", column: int | None = None) -> Found:
    """Look at a file's first lines and propose how to read it.

    `quantity` is the one meant (a key of `KINDS`), empty to take the first that is there; `column` the value
    column a person chose. Raises FileTrouble, or NotPossible where no line holds both an instant and a number.
    """
    _, script = opened(path)
    try:
        with path.open("rb") as file:
            head = next(texts(file, script, script.mark_n)).lines
    except (OSError, StopIteration) as error:
        raise unreadable(path, error) from error
    head = head[: head.rfind(b"\n", 0, HEAD) + 1] or head[:HEAD]
    tables = [_Table(Piece(head, delimiter)) for delimiter in DELIMITERS]
    best = max(tables, key=lambda table: table.score)
    if not best.score:
        raise NotPossible(
            N_("logger", "No line of {file} holds both a date with its hour and a number.", file=path.name),
            N_("logger", "It must be a table with a column of dates and times and one of readings."),
        )
    return best.found(path.name, quantity, column)


def stamps_at(piece: Piece, columns: tuple[int, ...]) -> Stamps:
    """The instants of a piece, from one column or from the day's and the hour's."""
    return stamps(joined_cells([piece.cells(column) for column in columns]))


class _Table:
    """The first lines under one delimiter; `score` is how many of them hold an instant and a number."""

    def __init__(self, piece: Piece) -> None:
        self.piece = piece
        self.columns_n = min(piece.most_cells_n, MOST_COLUMNS)
        self.time_columns: tuple[int, ...] = ()
        self.timed = np.zeros(len(piece), bool)
        for columns in self._candidates():
            found = stamps_at(piece, columns)
            timed = found.ok & found.dated & found.timed
            if timed.sum() > self.timed.sum():
                self.time_columns, self.timed = columns, timed
        self.numeric: dict[int, NDArray[np.float64]] = {}  # the readable numbers of each column that has many
        read = {c: numbers(piece.cells(c)) for c in range(self.columns_n) if c not in self.time_columns}
        good = {column: found.ok & self.timed for column, found in read.items()}
        most = max((int(ok.sum()) for ok in good.values()), default=0)
        both = np.zeros(len(piece), bool)
        for column, ok in good.items():
            if ok.any() and int(ok.sum()) * 2 >= most:
                self.numeric[column] = read[column].value[ok]
                both |= ok
        self.score = int(both.sum())

    def _candidates(self) -> Iterator[tuple[int, ...]]:
        dated, hours = [], []
        for column in range(self.columns_n):
            found = stamps(self.piece.cells(column))
            if (found.ok & found.dated & found.timed).any():
                yield (column,)
            if (found.ok & found.dated & ~found.timed).any():
                dated.append(column)
            if (found.ok & found.timed & ~found.dated).any():
                hours.append(column)
        for day in dated:
            for hour in hours:
                if abs(day - hour) == 1:
                    yield day, hour

    def found(self, file: str, quantity: str, column: int | None) -> Found:
        """The proposal for this table. Raises NotPossible where the value cannot be told."""
        piece = self.piece
        first = int(np.flatnonzero(self.timed)[0])
        prose = [piece.row(line) for line in range(max(0, first - 200), first)]
        names = next((row for row in reversed(prose) if len(row) >= max(2, self.columns_n - 1)), [])
        columns = tuple(names[i] if i < len(names) else "" for i in range(self.columns_n))
        quantity, choices = self._values(columns, quantity, file)
        chosen = column if column is not None and column in self.numeric else choices[0]
        rows = tuple(tuple(piece.row(line)) for line in np.flatnonzero(self.timed)[:6].tolist())
        if piece.delimiter == "," and names:
            self._refuse_commas(names, rows[0], chosen, file)
        question = None
        if len(choices) > 1 and chosen != column:
            question = _which(columns, choices, rows[0])
        layout = Layout(
            piece.delimiter, self.time_columns, chosen, self._unit(chosen, columns[chosen], prose, quantity), "",
            _zone([columns[c] for c in self.time_columns]),
        )  # fmt: skip
        return Found(layout, quantity, columns, rows, choices, question)

    def _values(self, columns: tuple[str, ...], quantity: str, file: str) -> tuple[str, tuple[int, ...]]:
        """The quantity, and the columns that may hold it, the likeliest first."""
        free = [c for c in self.numeric if not _NOT_MEANT.search(columns[c])]
        by_header = {
            key: tuple(c for c in free if kind.header.search(columns[c]))
            for key, kind in KINDS.items()
            if key != "air_c"
        }
        by_header["air_c"] = by_header["mass_c"]
        if not quantity:
            quantity = next((key for key, found in by_header.items() if found), "mass_c")
        if by_header[quantity]:
            return quantity, by_header[quantity]
        low, high = KINDS[quantity].possible
        others = {c for key, found in by_header.items() if key != quantity for c in found}
        left = tuple(
            c for c in free
            if c not in others and low <= float(np.median(self.numeric[c])) <= high and not _counts(self.numeric[c])
        )  # fmt: skip
        if not left:
            raise NotPossible(
                N_("logger", "No column of {file} holds {quantity}.", file=file, quantity=KINDS[quantity].name),
                N_("logger", "Choose the column by hand, or another quantity."),
            )
        return quantity, left

    def _refuse_commas(self, names: list[str], row: tuple[str, ...], chosen: int, file: str) -> None:
        """`17:00,23,5` under two headers: the comma parts cells and decimals alike, and 23 would be wrong."""
        behind = row[chosen + 1] if chosen + 1 < len(row) else ""
        if len(row) == len(names) + 1 and chosen + 2 == len(row) and behind.isdigit():
            raise NotPossible(
                N_("logger", "In {file} a comma parts both the columns and the decimals.", file=file),
                N_("logger", "Write it once more with semicolons between the columns, or with a decimal point."),
            )

    def _unit(self, column: int, name: str, prose: list[list[str]], quantity: str) -> str:
        """The unit beside the numbers, or in the header, or in the lines above it."""
        kind = KINDS[quantity]
        if kind.unit != "C":
            return kind.unit
        beside = np.bincount(numbers(self.piece.cells(column)).unit[self.timed], minlength=len(UNITS))[1:]
        if beside.any():
            return UNITS[int(beside.argmax()) + 1]
        for words in (name, " ".join(cell for row in prose for cell in row)):
            fahrenheit = bool(_FAHRENHEIT.search(words))
            if fahrenheit != bool(_CELSIUS.search(words)):
                return "F" if fahrenheit else "C"
        return ""


_FAHRENHEIT = re.compile(r"[°º]\s?F\b|fahrenheit|\bdeg\.? ?F\b|[(\[,_ ]F[)\]]?$|unit\w*[:=\s]+F\b", re.IGNORECASE)
_CELSIUS = re.compile(r"[°º]\s?C\b|celsius|\bdeg\.? ?C\b|[(\[,_ ]C[)\]]?$|unit\w*[:=\s]+C\b", re.IGNORECASE)


def _counts(value: NDArray[np.float64]) -> bool:
    """Whether a column only counts its rows."""
    return len(value) > 2 and bool((np.diff(value) == 1.0).all())


def _zone(names: list[str]) -> int | None:
    """The zone [s from UTC] that a header of times names."""
    match = _ZONE.search(" ".join(names))
    if match is None:
        return None
    sign, hour, minute = match.groups()
    ahead = int(hour or 0) * 3600 + int(minute or 0) * 60
    return (-ahead if sign == "-" else ahead) if ahead <= 14 * 3600 else None


def _which(columns: tuple[str, ...], choices: tuple[int, ...], row: tuple[str, ...]) -> Question:
    answers = []
    for c in choices:
        value = row[c] if c < len(row) else ""
        named = N_("logger", "{name}, at first {value}", name=columns[c], value=value)
        bare = N_("logger", "column {number}, at first {value}", number=c + 1, value=value)
        answers.append(Answer(str(c), named if columns[c] else bare))
    return Question("column", "column", N_("logger", "Which column holds the readings?"), tuple(answers))
