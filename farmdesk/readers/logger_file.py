"""A logger's file becomes readings: instants in UTC, values in the base unit, and every fault of the file at once.

Bad data never raises: it comes back as `Problem`s (kinds in `faults.Fault`) and, where only a person can
tell, as `questions` whose answers go into the next call. What is read meanwhile is the likeliest reading.
The work goes in pieces of at most 20,000 lines, with a word of progress and a look at `stop` between them.
"""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Mapping
from dataclasses import replace
from pathlib import Path

from farmdesk.clock import FarmTime
from farmdesk.errors import FileTrouble, NotPossible, Problem
from farmdesk.readers.faults import Fault, clock_question, looks_shifted
from farmdesk.readers.layout import KINDS, Found, Layout, look_at, opened, unreadable
from farmdesk.readers.pieces import script_of, texts
from farmdesk.readers.rows import LoggerRows, Pass, Tail
from farmdesk.text import N_

__all__ = [
    "KINDS", "Fault", "Found", "Layout", "LoggerRows", "Tail", "clock_question", "look_at", "looks_shifted",
    "read_logger_file", "read_tail",
]  # fmt: skip


def read_logger_file(
    path: Path,
    farm: FarmTime,
    quantity: str = "",
    *,
    layout: Layout | None = None,
    clock_shift_s: int = 0,
    filled_utc_s: int | None = None,
    answers: Mapping[str, str] | None = None,
    on_progress: Callable[[float], None] | None = None,
    stop: Callable[[], bool] | None = None,
) -> tuple[LoggerRows, list[Problem]]:
    """Read a logger's whole file.

    Stamps without a zone are the farm's time, unless the header names one; `clock_shift_s` [s] is added to
    every instant. `quantity` is a key of `KINDS`, or empty for what is there; `layout` is a remembered one;
    `filled_utc_s` [UTC s] is when the vessel was filled; `answers` by question key: column, day order,
    unit, clock, range, stopped. `on_progress` hears the share done [0..1].
    Raises FileTrouble, or NotPossible where the file holds no readings or `stop` answered True.
    """
    path, answers = Path(path), dict(answers or {})
    columns: tuple[str, ...] = ()
    question = None
    if layout is None:
        column = answers.get("column", "")
        found = look_at(path, quantity, int(column) if column.isdigit() else None)
        layout, quantity, columns, question = found.layout, found.quantity, found.columns, found.question
    _, script = opened(path)
    reading = Pass(layout, quantity or "mass_c", farm, clock_shift_s)
    end = script.mark_n
    try:
        with path.open("rb") as file:
            sha256 = hashlib.file_digest(file, "sha256").hexdigest()
            size = max(file.tell(), 1)
            for text in texts(file, script, script.mark_n):
                if stop is not None and stop():
                    raise NotPossible(N_("logger", "Reading {file} was stopped; nothing was kept.", file=path.name))
                reading.take(text.lines)
                end = text.end
                if on_progress is not None:
                    on_progress(min(end / size, 1.0))
    except OSError as error:
        raise unreadable(path, error) from error
    rows = reading.rows(path.name, sha256, columns, filled_utc_s, answers, end)
    if not len(rows):
        raise NotPossible(
            N_("logger", "No line of {file} could be read as a reading.", file=path.name),
            N_("logger", "It may be laid out otherwise than this logger's last file; choose its columns again."),
        )
    return (replace(rows, questions=(question, *rows.questions)) if question else rows), reading.told.problems()


def read_tail(path: Path, tail: Tail) -> tuple[LoggerRows, list[Problem], Tail]:
    """Read only the lines that were added to a growing file; a line still being written waits.

    Rows may be none. Raises FileTrouble where the file has gone, or is shorter than it was: it was begun anew.
    """
    path = Path(path)
    reading = Pass(tail.layout, tail.quantity, tail.farm, tail.clock_shift_s, tail.line_n)
    end = tail.offset_bytes
    try:
        with path.open("rb") as file:
            script = script_of(file.read(4096))
            if file.seek(0, 2) < tail.offset_bytes:
                raise FileTrouble(
                    N_("logger", "{file} is shorter than it was: the logger began it anew.", file=path.name),
                    N_("logger", "Read the whole file once more."),
                )
            for text in texts(file, script, tail.offset_bytes, unfinished=False):
                reading.take(text.lines)
                end = text.end
    except OSError as error:
        raise unreadable(path, error) from error
    rows = reading.rows(path.name, "", (), None, {}, end)
    return rows, reading.told.problems(), rows.tail
