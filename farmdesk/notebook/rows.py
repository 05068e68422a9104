"""Entries to rows and back, and the chain of hashes that binds each row to the one before it."""

from __future__ import annotations

import gc
import hashlib
import json
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from typing import Any, NamedTuple

from sqlalchemy import Connection, Table, func, select

from farmdesk.errors import NotPossible
from farmdesk.notebook.tables import COERCE, DIALECT, LISTS, SHAPE_OF, SHAPES, Many, Shape, entry, insert_sql, posting
from farmdesk.picture.entries import TYPED, Body, Entry, Line, Posting
from farmdesk.text import N_, Num


class Head(NamedTuple):
    """The header of an entry as it lies in the file, in the order of the columns."""

    seq: int
    id: str
    kind: str
    happened_utc_s: int
    written_utc_s: int
    who: str
    instrument: str
    mark: str
    note: str
    replaces: str
    batch: str
    computer: str
    prev_hash: str
    hash: str


class Torn(ValueError):
    """A row that has lost its body, or is of a kind that nobody knows: the file is damaged."""


def hash_of(head: Head, body: Body, rows_digest: str = "") -> str:
    """The SHA-256 [hex] of what an entry says and of the hash before it; `seq` is the file's own and stays out.

    Fields at their default are left out, so that a kind may gain a field and old hashes still hold.
    `rows_digest` stands for the logger rows under the entry, "" where there are none.
    """
    shape = SHAPE_OF[type(body)]
    said: dict[str, Any] = {}
    for item in shape.fields:
        value = getattr(body, item.name)
        if isinstance(item, Many):
            value = [_plain(item.item, one) for one in value]
            if value:
                said[item.name] = value
        elif item.name not in shape.defaults or value != shape.defaults[item.name]:
            said[item.name] = item.store(value)
    told = [head[1:-1], said, rows_digest] if rows_digest else [head[1:-1], said]
    return hashlib.sha256(json.dumps(told, allow_nan=False, sort_keys=True).encode()).hexdigest()


_COERCE_ITEM = {
    Posting: tuple(COERCE[kind] for kind in (str, str, int, int, str)),
    Line: tuple(COERCE[kind] for kind in (str, float, str)),
}


def _plain(item: type, one: Any) -> tuple[Any, ...]:
    """The columns of one item of a list."""
    if item is str:
        return (str.__str__(one),)
    return tuple(coerce(value) for coerce, value in zip(_COERCE_ITEM[item], one, strict=True))


@dataclass
class Rows:
    """Rows to be added, by table."""

    of: dict[Table, list[tuple[Any, ...]]] = field(default_factory=dict)

    def add(self, head: Head, body: Body) -> None:
        """Lay out one entry."""
        shape = SHAPE_OF[type(body)]
        seq = head.seq
        self._add(entry, tuple(head))
        self._add(shape.table, (seq, *(item.store(getattr(body, item.name)) for item in shape.plain)))
        for item in shape.fields:
            if isinstance(item, Many):
                named = () if item.item is Posting else (item.name,)
                for i, one in enumerate(getattr(body, item.name)):
                    self._add(LISTS[item.item], (seq, *named, i, *_plain(item.item, one)))

    def _add(self, table: Table, row: tuple[Any, ...]) -> None:
        self.of.setdefault(table, []).append(row)

    def write(self, connection: Connection) -> None:
        """Add all rows, headers first."""
        for table, rows in self.of.items():
            connection.exec_driver_sql(insert_sql(table), rows)


def head_of(one: Entry, seq: int, computer: str, prev_hash: str, rows_digest: str = "") -> Head:
    """The header an entry gets in the file, its hash included."""
    head = Head(
        seq, str.__str__(one.id), SHAPE_OF[type(one.body)].name, COERCE[int](one.happened_utc_s),
        COERCE[int](one.written_utc_s), one.who, one.instrument, one.mark, one.note, one.replaces, one.batch,
        computer, prev_hash, "",
    )  # fmt: skip
    return head._replace(hash=hash_of(head, one.body, rows_digest))


def last(connection: Connection) -> tuple[int, str]:
    """The number and the hash of the last entry; (0, "") before the first."""
    row = connection.execute(select(entry.c.seq, entry.c.hash).order_by(entry.c.seq.desc()).limit(1)).first()
    return (row[0], row[1]) if row else (0, "")


def unbalanced(connection: Connection, first_seq: int = 1) -> list[tuple[str, int]]:
    """Entries whose postings are all typed and do not sum to zero: (id, grams [g] too many)."""
    query = (
        select(entry.c.id, func.sum(posting.c.grams))
        .join(posting, posting.c.entry == entry.c.seq)
        .where(posting.c.entry >= first_seq)
        .group_by(entry.c.seq, entry.c.id)
        .having(func.max(posting.c.way) == TYPED, func.sum(posting.c.grams) != 0)
        .order_by(entry.c.seq)
    )
    return [(row[0], row[1]) for row in connection.execute(query)]


def hold_balanced(connection: Connection, first_seq: int) -> None:
    """Raises NotPossible when typed postings of an entry from this number on do not sum to zero."""
    for _, grams in unbalanced(connection, first_seq):
        over = Num(abs(grams) / 1000.0, "kg", 3)
        more = N_("notebook", "More arrives than leaves: {over} come from nowhere. Nothing was written.", over=over)
        less = N_("notebook", "More leaves than arrives: {over} go nowhere. Nothing was written.", over=over)
        raise NotPossible(more if grams > 0 else less, N_("notebook", "Name where the difference comes from or goes."))


@contextmanager
def no_collecting() -> Iterator[None]:
    """Python's search for rings of dead objects, put off: among so many new ones it doubled the time (measured)."""
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()


@no_collecting()
def read(connection: Connection) -> list[tuple[Head, Body]]:
    """All headers with their bodies, in the order in which they were written. Raises Torn."""
    whole: list[tuple[Head, Body]] = []
    for head, body in read_what_is_left(connection):
        if body is None:
            raise Torn(head.id)
        whole.append((head, body))
    return whole


@no_collecting()
def read_what_is_left(connection: Connection) -> list[tuple[Head, Body | None]]:
    """All headers in the order in which they were written, with None for a body that is lost or of no known kind."""
    heads = [Head._make(row) for row in _all(connection, entry)]
    lists = _lists(connection)
    names = {head.kind for head in heads}
    bodies = {name: _bodies(connection, SHAPES[name], lists) if name in SHAPES else {} for name in names}
    return [(head, bodies[head.kind].get(head.seq)) for head in heads]


@no_collecting()
def entries(pairs: Iterable[tuple[Head, Body]]) -> list[Entry]:
    """Headers and bodies as the entries that were written."""
    return [Entry(h[1], h[3], h[4], body, h[5], h[6], h[7], h[8], h[9], h[10]) for h, body in pairs]


def _all(connection: Connection, table: Table) -> list[tuple[Any, ...]]:
    """All rows of a table in the order of its key, as plain tuples from the connection underneath."""
    raw: Any = connection.connection.driver_connection
    query = select(table).order_by(*table.primary_key.columns)
    rows: list[tuple[Any, ...]] = raw.execute(str(query.compile(dialect=DIALECT))).fetchall()
    return rows


_Lists = dict[tuple[int, str], list[Any]]


def _lists(connection: Connection) -> _Lists:
    found: _Lists = {}
    for item, table in LISTS.items():
        rows = _all(connection, table)
        if item is Posting:
            for row in rows:
                found.setdefault((row[0], "postings"), []).append(Posting._make(row[2:]))
        else:
            for row in rows:
                found.setdefault((row[0], row[1]), []).append(Line._make(row[3:]) if item is Line else row[3])
    return found


def _bodies(connection: Connection, shape: Shape, lists: _Lists) -> dict[int, Body]:
    rows = _all(connection, shape.table)
    cls = shape.cls
    if shape.is_simple:
        return {row[0]: cls(*row[1:]) for row in rows}
    found: dict[int, Body] = {}
    for row in rows:
        seq, place = row[0], 0
        values: list[Any] = []
        for item in shape.fields:
            if isinstance(item, Many):
                values.append(tuple(lists.get((seq, item.name), ())))
                continue
            place += 1
            value = row[place]
            values.append(bool(value) if item.type is bool and value is not None else value)
        found[seq] = cls(*values)
    return found
