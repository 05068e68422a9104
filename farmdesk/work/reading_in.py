"""A logger's file read in: its rows go under one entry, and only those that are not there yet."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import Path

from farmdesk.clock import HOUR_S
from farmdesk.errors import Asked, NotPossible, Problem
from farmdesk.notebook.season_file import new_id
from farmdesk.picture.entries import Entry, LoggerFile
from farmdesk.picture.measures import fills
from farmdesk.readers.logger_file import read_logger_file as read_file
from farmdesk.text import N_, Num
from farmdesk.work.changes import Changes, Done, Hand
from farmdesk.work.farm import OpenFarm


@dataclass(frozen=True)
class ReadIn:
    """What reading a file in has done: the act (None where nothing was new), rows added, and all its faults."""

    done: Done | None
    added_n: int
    rows_n: int
    problems: tuple[Problem, ...]


def read_logger_file(
    farm: OpenFarm,
    path: Path,
    *,
    lot: str,
    place: str,
    logger: str,
    quantity: str = "",
    hand: Hand = Hand(),
    on_progress: Callable[[float], None] | None = None,
    stop: Callable[[], bool] | None = None,
    sure: bool = False,
) -> ReadIn:
    """Read a logger's file for a vessel (or bed) of a lot.

    The logger's clock shift comes from the farm's instruments, or from the answer given once. Questions
    of the file are raised as Asked unless `sure`; `hand.answers` carries what was answered. A file read
    again adds only what is new. Raises FileTrouble, NotPossible, Asked; nothing is written then.
    """
    books = farm.lot(lot)
    known = farm.things.instruments.get(logger)
    shift_s = known.clock_shift_s if known else 0
    answers: Mapping[str, str] = hand.answers
    filled = [f.from_utc_s for f in fills(books, farm.things) if not place or f.place == place]
    rows, problems = read_file(
        path,
        farm.time,
        quantity,
        clock_shift_s=shift_s,
        filled_utc_s=filled[-1] if filled else None,
        answers=answers,
        on_progress=on_progress,
        stop=stop,
    )
    if rows.questions and not sure:
        raise Asked(rows.questions[0])
    entry = Entry(
        new_id(),
        int(rows.at_utc_s[0]),
        farm.written_now(),
        LoggerFile(
            lot, place, logger, rows.quantity, path.name, rows.sha256, len(rows),
            int(rows.at_utc_s[0]), int(rows.at_utc_s[-1]), rows.clock_shift_s,
        ),
        hand.who, logger, "logger", hand.note,
    )  # fmt: skip
    halted = False

    def going(_rows: int) -> bool:
        nonlocal halted
        halted = stop is not None and stop()
        return not halted

    added = farm.file.append_logger(entry, rows.at_utc_s, rows.value, going)
    if halted:
        raise NotPossible(N_("reading_in", "Reading {file} was stopped; nothing was kept.", file=path.name))
    if not added:
        return ReadIn(None, 0, len(rows), tuple(problems))
    label = N_("reading_in", "{n} {n:row|rows} of {logger}", n=Num(added), logger=logger)
    done = farm.folded_in([entry], label, lot)
    changes = Changes(done.changes.lots, done.changes.places | {place})
    return ReadIn(Done(changes, done.entries, label, done.inverse, lot), added, len(rows), tuple(problems))


def coverage_frac(at_utc_s: list[float], from_utc_s: float, until_utc_s: float, step_s: float = HOUR_S) -> float:
    """Share of a span [0..1] that readings at these instants [UTC s] stand for, each for one step [s] around it."""
    if until_utc_s <= from_utc_s:
        return 0.0
    covered, reached = 0.0, from_utc_s
    for at in sorted(at_utc_s):
        low, high = max(reached, at - step_s / 2), min(until_utc_s, at + step_s / 2)
        if high > low:
            covered += high - low
            reached = high
    return covered / (until_utc_s - from_utc_s)
