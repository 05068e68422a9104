"""The farm's things to rows and back: ordinary rows, edited in place; versions of methods alone stay."""

from __future__ import annotations

from typing import Any

from sqlalchemy import Connection, Table, delete, literal_column, select
from sqlalchemy.dialects.sqlite import insert

from farmdesk.errors import NotPossible
from farmdesk.notebook.rows import Torn
from farmdesk.notebook.tables import THINGS, Plain, Shape, setting
from farmdesk.picture.things import Farm, Method, Things
from farmdesk.text import N_

ROWID: Any = literal_column("rowid")  # rises with each new row and stays through an edit


def read_things(connection: Connection) -> Things:
    """All things, each kind in the order in which its rows were first saved. Raises Torn without a farm."""
    rooms: dict[str, Any] = {}
    for room, shape in THINGS.items():
        found = [_thing(shape, row) for row in connection.execute(select(*_columns(shape)).order_by(ROWID))]
        if shape.cls is Farm:
            if not found:
                raise Torn("farm")
            rooms[room] = found[0]
        else:
            rooms[room] = {_key(one): one for one in found}
    settings = connection.execute(select(setting.c.name, setting.c.value).order_by(ROWID))
    return Things(**rooms, settings={row[0]: row[1] for row in settings})


def write_things(connection: Connection, things: Things) -> None:
    """Make the rows what these things say; what is not among them goes, but no version of a method.

    Raises NotPossible for another wording of a method's version that is already in the file.
    """
    for room, shape in THINGS.items():
        if shape.cls is Farm:
            _upsert(connection, shape.table, [{"id": 1, **_row(shape, things.farm)}], ["id"])
            continue
        rows = []
        for key, one in getattr(things, room).items():
            if key != _key(one):
                raise ValueError(f"{room}: {_key(one)!r} stands under {key!r}")
            rows.append(_row(shape, one))
        if shape.cls is Method:
            _add_methods(connection, shape, rows)
        else:
            _replace_all(connection, shape.table, "code", rows)
    _replace_all(
        connection, setting, "name", [{"name": name, "value": value} for name, value in things.settings.items()]
    )


def _key(one: Any) -> str:
    return f"{one.letter}{one.version}" if isinstance(one, Method) else str(one.code)


def _columns(shape: Shape) -> list[Any]:
    return [shape.table.c[item.name] for item in shape.fields]


def _row(shape: Shape, one: Any) -> dict[str, Any]:
    return {item.name: item.store(getattr(one, item.name)) for item in shape.plain}


def _thing(shape: Shape, row: Any) -> Any:
    values = [bool(value) if _is_bool(item) else value for item, value in zip(shape.fields, row, strict=True)]
    return shape.cls(*values)


def _is_bool(item: Any) -> bool:
    return isinstance(item, Plain) and item.type is bool


def _replace_all(connection: Connection, table: Table, key: str, rows: list[dict[str, Any]]) -> None:
    kept = {row[key] for row in rows}
    gone = [old for (old,) in connection.execute(select(table.c[key])) if old not in kept]
    for old in gone:
        connection.execute(delete(table).where(table.c[key] == old))
    _upsert(connection, table, rows, [key])


def _upsert(connection: Connection, table: Table, rows: list[dict[str, Any]], keys: list[str]) -> None:
    if not rows:
        return
    new = insert(table)
    others = {column.name: new.excluded[column.name] for column in table.c if column.name not in keys}
    connection.execute(new.on_conflict_do_update(index_elements=keys, set_=others), rows)


def _add_methods(connection: Connection, shape: Shape, rows: list[dict[str, Any]]) -> None:
    old = {(row["letter"], row["version"]): dict(row) for row in connection.execute(select(shape.table)).mappings()}
    for row in rows:
        before = old.get((row["letter"], row["version"]))
        if before is not None and before != row:
            raise NotPossible(
                N_(
                    "notebook",
                    "Version {version} of method {letter} stays as it is; save the change as version {next}.",
                    version=row["version"],
                    letter=row["letter"],
                    next=max(version for letter, version in old if letter == row["letter"]) + 1,
                )
            )
    new = [row for row in rows if (row["letter"], row["version"]) not in old]
    if new:
        connection.execute(shape.table.insert(), new)
