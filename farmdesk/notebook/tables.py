"""The tables of the season file, made from the kinds of entry and of things.

What happened stands in `entry` (its header) and in one typed table for each kind of body; lists inside a
body stand in `posting`, `line` and `word`. Things are ordinary rows. The schema that ships is the numbered
SQL of `steps`; a test holds the two to each other.
"""

from __future__ import annotations

import dataclasses
import operator
import re
from collections.abc import Callable
from dataclasses import dataclass
from types import NoneType
from typing import Any, get_args, get_origin, get_type_hints

from sqlalchemy import (
    REAL,
    CheckConstraint,
    Column,
    ForeignKey,
    Integer,
    MetaData,
    Table,
    Text,
    UniqueConstraint,
    insert,
)
from sqlalchemy.dialects import sqlite
from sqlalchemy.schema import CreateTable

from farmdesk.picture.entries import KINDS, MARKS, Line, Posting
from farmdesk.picture.things import Farm, Method, Things

# The last second that a date can say in any zone: 30 December 9999.
LAST_UTC_S = 253_402_214_400
COLUMN = {str: Text, int: Integer, float: REAL, bool: Integer}
DIALECT = sqlite.dialect()
KEEP = "What happened stays written: strike it with a new entry instead of changing it."

metadata = MetaData(
    naming_convention={
        "pk": "pk_%(table_name)s",
        "fk": "fk_%(table_name)s_%(column_0_name)s",
        "uq": "uq_%(table_name)s_%(column_0_name)s",
        "ck": "ck_%(table_name)s_%(constraint_name)s",
    }
)


def _float(value: float) -> float:
    return float(value) + 0.0  # SQLite keeps no minus zero


def _bool(value: bool) -> int:
    return int(bool(value))


COERCE: dict[type, Callable[[Any], Any]] = {
    str: str.__str__,  # refuses what is no text
    int: operator.index,  # takes NumPy's whole numbers, refuses fractions
    float: _float,
    bool: _bool,
}


@dataclass(frozen=True, slots=True)
class Plain:
    """A field that is a column of its own."""

    name: str
    type: type
    optional: bool

    def store(self, value: Any) -> Any:
        """The value as the column keeps it."""
        return None if value is None and self.optional else COERCE[self.type](value)


@dataclass(frozen=True, slots=True)
class Many:
    """A field that is a list; its items stand in a child table."""

    name: str
    item: type


@dataclass(frozen=True)
class Shape:
    """A dataclass laid out as a table: its fields in order, each a column or a list."""

    cls: type
    name: str
    fields: tuple[Plain | Many, ...]
    table: Table
    defaults: dict[str, Any]

    @property
    def plain(self) -> tuple[Plain, ...]:
        """The fields that are one column each."""
        return tuple(field for field in self.fields if isinstance(field, Plain))

    @property
    def is_simple(self) -> bool:
        """Whether a row's values are the fields' values as they stand."""
        return all(isinstance(field, Plain) and field.type is not bool for field in self.fields)


def fields_of(cls: type) -> tuple[Plain | Many, ...]:
    """The fields of a dataclass as columns and lists. Raises KeyError for a type no column can hold."""
    hints = get_type_hints(cls)
    found: list[Plain | Many] = []
    for field in dataclasses.fields(cls):
        hint = hints[field.name]
        if get_origin(hint) is tuple:
            found.append(Many(field.name, get_args(hint)[0]))
            continue
        types = [part for part in get_args(hint) or (hint,) if part is not NoneType]
        COLUMN[types[0]]
        found.append(Plain(field.name, types[0], NoneType in get_args(hint)))
    return tuple(found)


def table_name(cls: type) -> str:
    """`WeighIn` lies in the table `weigh_in`."""
    return re.sub(r"(?<=[a-z])(?=[A-Z])", "_", cls.__name__).lower()


def _columns(fields: tuple[Plain | Many, ...], keys: tuple[str, ...] = ()) -> list[Any]:
    made: list[Any] = []
    for field in fields:
        if isinstance(field, Many):
            continue
        column: Column[Any] = Column(
            field.name, COLUMN[field.type], nullable=field.optional, primary_key=field.name in keys, autoincrement=False
        )
        made.append(column)
        if field.type is bool:
            made.append(CheckConstraint(column.in_([0, 1]), name=f"{field.name}_yes_or_no"))
        if field.name.endswith("_utc_s"):
            made.append(CheckConstraint(column.between(0, LAST_UTC_S), name=f"{field.name}_an_instant"))
        if field.name == "account":
            made.append(CheckConstraint(column != "", name=f"{field.name}_named"))
    return made


def _shape(cls: type, *before: Any, keys: tuple[str, ...] = ()) -> Shape:
    fields = fields_of(cls)
    table = Table(table_name(cls), metadata, *before, *_columns(fields, keys), sqlite_strict=True)
    defaults = {f.name: f.default for f in dataclasses.fields(cls) if f.default is not dataclasses.MISSING}
    return Shape(cls, table.name, fields, table, defaults)


def _entry_key() -> Column[Any]:
    return Column("entry", Integer, ForeignKey("entry.seq"), primary_key=True, autoincrement=False)


def _child(name: str, *columns: Any) -> Table:
    return Table(name, metadata, _entry_key(), *columns, sqlite_strict=True, sqlite_with_rowid=False)


def _key(name: str, kind: Any) -> Column[Any]:
    return Column(name, kind, primary_key=True, autoincrement=False, nullable=False)


def _need(name: str, kind: Any) -> Column[Any]:
    return Column(name, kind, nullable=False)


origin = Table(
    "origin",
    metadata,
    _key("id", Integer),
    _need("file_id", Text),
    _need("made_utc_s", Integer),
    CheckConstraint("id = 1", name="one_row"),
    sqlite_strict=True,
)
entry = Table(
    "entry",
    metadata,
    Column("seq", Integer, primary_key=True),
    _need("id", Text),
    _need("kind", Text),
    _need("happened_utc_s", Integer),
    _need("written_utc_s", Integer),
    _need("who", Text),
    _need("instrument", Text),
    _need("mark", Text),
    _need("note", Text),
    _need("replaces", Text),
    _need("batch", Text),
    _need("computer", Text),
    _need("prev_hash", Text),
    _need("hash", Text),
    UniqueConstraint("id"),
    CheckConstraint("id <> ''", name="id_not_empty"),
    CheckConstraint(f"happened_utc_s BETWEEN 0 AND {LAST_UTC_S}", name="happened_utc_s_an_instant"),
    CheckConstraint(f"written_utc_s BETWEEN 0 AND {LAST_UTC_S}", name="written_utc_s_an_instant"),
    CheckConstraint("mark IN ({})".format(", ".join(f"'{mark}'" for mark in MARKS)), name="mark_known"),
    sqlite_strict=True,
    sqlite_autoincrement=True,  # sqlite_sequence remembers how many there were, so that a lost tail is seen
)
SHAPES: dict[str, Shape] = {table_name(kind): _shape(kind, _entry_key()) for kind in KINDS}
SHAPE_OF: dict[type, Shape] = {shape.cls: shape for shape in SHAPES.values()}

posting = _child(
    "posting",
    _key("line", Integer),
    _need("lot", Text),
    _need("account", Text),
    _need("grams", Integer),
    _need("way", Integer),
    _need("typed", Text),
    CheckConstraint("lot <> '' AND account <> ''", name="heap_named"),
    CheckConstraint("way IN (0, 1, 2)", name="way_known"),
)
line = _child(
    "line",
    _key("field", Text),
    _key("line", Integer),
    _need("name", Text),
    _need("value", REAL),
    _need("typed", Text),
)
word = _child("word", _key("field", Text), _key("line", Integer), _need("text", Text))
LISTS: dict[type, Table] = {Posting: posting, Line: line, str: word}

logger_row = Table(
    "logger_row",
    metadata,
    Column("entry_seq", Integer, ForeignKey("entry.seq"), primary_key=True, autoincrement=False),
    _key("at_utc_s", Integer),
    _need("value", REAL),
    sqlite_strict=True,
    sqlite_with_rowid=False,  # the key is the index: half the bytes of a table with an index beside it
)

HAPPENED: tuple[Table, ...] = (
    origin, entry, *(shape.table for shape in SHAPES.values()), posting, line, word, logger_row,
)  # fmt: skip


def _thing_shapes() -> dict[str, Shape]:
    """The kinds of things by the name of their room in `Things`."""
    shapes: dict[str, Shape] = {}
    for name, hint in get_type_hints(Things).items():
        cls = get_args(hint)[1] if get_origin(hint) is dict else hint
        if cls is Farm:
            only = CheckConstraint("id = 1", name="one_row")
            shapes[name] = _shape(cls, _key("id", Integer), only)
        elif cls is not str:
            shapes[name] = _shape(cls, keys=("letter", "version") if cls is Method else ("code",))
    return shapes


THINGS: dict[str, Shape] = _thing_shapes()
setting = Table("setting", metadata, _key("name", Text), _need("value", Text), sqlite_strict=True)

# Versions of a method stay as they were too: lots were made by them.
_METHOD = "A method's version stays as it is: make a new version instead."


def triggers() -> list[str]:
    """The SQL of the triggers by which the database itself keeps what happened."""
    made = []
    for table, sentence in [*((table, KEEP) for table in HAPPENED), (THINGS["methods"].table, _METHOD)]:
        quoted = DIALECT.identifier_preparer.quote(table.name)
        made += [
            _trigger(f"{table.name}_no_{act}", f"BEFORE {act.upper()} ON {quoted}", sentence)
            for act in ("update", "delete")
        ]
        if table is logger_row:  # a look-up for each of a million rows would double the time; `verify` sees a swap
            continue
        keys = [c.name for c in table.primary_key.columns]
        same = " AND ".join(f"{key} = NEW.{key}" for key in keys)
        if table is entry:
            same = "seq = NEW.seq OR id = NEW.id"
        swap = f"BEFORE INSERT ON {quoted}\nWHEN EXISTS (SELECT 1 FROM {quoted} WHERE {same})"
        made.append(_trigger(f"{table.name}_no_replace", swap, sentence))
    return made


def _trigger(name: str, when: str, sentence: str) -> str:
    quoted = sentence.replace("'", "''")
    return f"CREATE TRIGGER {name} {when}\nBEGIN\n  SELECT RAISE(ABORT, '{quoted}');\nEND"


def schema_sql() -> list[str]:
    """The SQL statements that make all tables and triggers, in the order in which they can be run."""
    tables = [str(CreateTable(table).compile(dialect=DIALECT)).strip() for table in metadata.sorted_tables]
    even = [re.sub(r"\s*\n\s*", "\n  ", sql) for sql in tables]
    even = [re.sub(r"\s+\)\s+(STRICT|WITHOUT)", r"\n) \1", sql) for sql in even]
    return [re.sub(r",\s+STRICT$", ", STRICT", sql) for sql in even] + triggers()


def insert_sql(table: Table) -> str:
    """The statement that adds one row, its values in the order of the columns."""
    return str(insert(table).compile(dialect=DIALECT))
