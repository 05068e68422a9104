"""The bulk table: a logger's rows, straight between NumPy and the file.

Rows go past SQLAlchemy, over the connection underneath, in pieces, so that no single call holds the program.
"""

from __future__ import annotations

import hashlib
import sqlite3
from collections.abc import Callable, Iterable, Iterator, Sequence
from itertools import chain, repeat

import numpy as np
from numpy.typing import NDArray
from sqlalchemy import Connection, select

from farmdesk.notebook.tables import SHAPE_OF, entry
from farmdesk.picture.entries import Entry, LoggerFile, Strike
from farmdesk.picture.fold import struck_by

PIECE_N = 20_000  # rows at a time: some hundredths of a second (measured)
INSERT = "INSERT INTO logger_row (entry_seq, at_utc_s, value) VALUES (?, ?, ?)"

Instants = NDArray[np.int64]
Values = NDArray[np.float64]


def tidy(at_utc_s: Instants, values: Values) -> tuple[Instants, Values]:
    """Rows in order of time, one for each instant (the first), without those that hold no number."""
    at_utc_s, values = np.asarray(at_utc_s, np.int64), np.asarray(values, np.float64)
    if at_utc_s.shape != values.shape or at_utc_s.ndim != 1:
        raise ValueError(f"{at_utc_s.shape} instants for {values.shape} values")
    good = np.isfinite(values)
    if not good.all():
        at_utc_s, values = at_utc_s[good], values[good]
    if (np.diff(at_utc_s) <= 0).any():
        at_utc_s, first = np.unique(at_utc_s, return_index=True)
        values = values[first]
    return at_utc_s, values + 0.0  # SQLite keeps no minus zero


def digest(at_utc_s: Instants, values: Values) -> str:
    """The SHA-256 [hex] of rows, "" where there are none: by it the chain of hashes holds the rows too."""
    if not len(at_utc_s):
        return ""
    told = hashlib.sha256(at_utc_s.astype("<i8").tobytes())
    told.update(values.astype("<f8").tobytes())
    return told.hexdigest()


def write(
    connection: sqlite3.Connection,
    seq: int,
    at_utc_s: Instants,
    values: Values,
    on_progress: Callable[[int], bool] | None,
) -> bool:
    """Add rows in pieces inside the running transaction; False as soon as `on_progress(rows written)` says so."""
    for start in range(0, len(at_utc_s), PIECE_N):
        piece = slice(start, start + PIECE_N)
        connection.executemany(INSERT, zip(repeat(seq), at_utc_s[piece].tolist(), values[piece].tolist()))
        if on_progress is not None and on_progress(min(start + PIECE_N, len(at_utc_s))) is False:
            return False
    return True


def read(connection: sqlite3.Connection, seqs: Iterable[int]) -> tuple[Values, Values]:
    """Instants [UTC s] and values of the rows under these entries, in order of time, each instant once."""
    found = [_under(connection, seq) for seq in seqs]
    rows = found[0] if len(found) == 1 else np.concatenate([np.empty((0, 2)), *found])
    at_utc_s, values = rows[:, 0].copy(), rows[:, 1].copy()
    if len(found) > 1:
        at_utc_s, first = np.unique(at_utc_s, return_index=True)
        values = values[first]
    return at_utc_s, values


def _under(connection: sqlite3.Connection, seq: int) -> Values:
    cursor = connection.execute("SELECT at_utc_s, value FROM logger_row WHERE entry_seq = ? ORDER BY at_utc_s", (seq,))
    flat = chain.from_iterable(chain.from_iterable(_pieces(cursor)))
    return np.fromiter(flat, np.float64).reshape(-1, 2)


def _pieces(cursor: sqlite3.Cursor) -> Iterator[list[tuple[int, float]]]:
    while piece := cursor.fetchmany(PIECE_N):
        yield piece


def instants(connection: sqlite3.Connection, seqs: Sequence[int], first_utc_s: int, last_utc_s: int) -> Instants:
    """The instants [UTC s] that already have a row under one of these entries, within a span."""
    rows = chain.from_iterable(
        connection.execute(
            "SELECT at_utc_s FROM logger_row WHERE entry_seq = ? AND at_utc_s BETWEEN ? AND ?",
            (seq, first_utc_s, last_utc_s),
        )
        for seq in seqs
    )
    return np.fromiter(chain.from_iterable(rows), np.int64)


def last_utc_s(connection: sqlite3.Connection, seqs: Sequence[int]) -> int | None:
    """The latest instant [UTC s] under any of these entries."""
    marks = (connection.execute("SELECT max(at_utc_s) FROM logger_row WHERE entry_seq = ?", (seq,)) for seq in seqs)
    return max((at for cursor in marks for (at,) in cursor if at is not None), default=None)


def live(look: Connection, **same: str) -> list[int]:
    """The numbers of the logger entries that are not struck and whose body has these values."""
    body, strike = SHAPE_OF[LoggerFile].table.c, SHAPE_OF[Strike].table.c
    strikes = select(entry.c.id, entry.c.written_utc_s, strike.target).join_from(
        entry, SHAPE_OF[Strike].table, strike.entry == entry.c.seq
    )
    struck = struck_by(Entry(row[0], row[1], row[1], Strike(row[2])) for row in look.execute(strikes))
    found = select(entry.c.seq, entry.c.id).join_from(entry, SHAPE_OF[LoggerFile].table, body.entry == entry.c.seq)
    found = found.where(*(body[name] == value for name, value in same.items())).order_by(entry.c.seq)
    return [row[0] for row in look.execute(found) if row[1] not in struck]


def live_like(look: Connection, body: LoggerFile) -> list[int]:
    """The numbers of the live logger entries of the same logger, quantity, lot and place."""
    return live(look, logger=body.logger, quantity=body.quantity, lot=body.lot, place=body.place)
