"""Numbered steps from an empty file to today's tables: one SQL file each, one transaction each.

A file's `user_version` is the number of its last step. `0001` is made by `schema_sql()` of the tables; from the
first release on a step never changes, and what changes in the tables gets the next number.
"""

from __future__ import annotations

import sqlite3
from functools import cache
from importlib import resources
from pathlib import Path

from farmdesk.notebook.trouble import newer, no_season_file

APPLICATION_ID = 0x4661726D  # "Farm", by which a season file is known


@cache
def steps() -> tuple[str, ...]:
    """The SQL of all steps, in order."""
    files = [file for file in resources.files(__name__).iterdir() if file.name.endswith(".sql")]
    return tuple(file.read_text("utf-8") for file in sorted(files, key=lambda file: file.name))


def version() -> int:
    """The number of the last step this program knows."""
    return len(steps())


def version_of(connection: sqlite3.Connection) -> int:
    """The number of the last step a file has made."""
    return int(connection.execute("PRAGMA user_version").fetchone()[0])


def hold_known(connection: sqlite3.Connection, path: Path) -> None:
    """Raises FileTrouble for a database that is no season file, or one that a newer version wrote."""
    if connection.execute("PRAGMA application_id").fetchone()[0] != APPLICATION_ID or version_of(connection) < 1:
        raise no_season_file(path)
    if version_of(connection) > version():
        raise newer(path)


def climb(connection: sqlite3.Connection, sqls: tuple[str, ...] | None = None) -> None:
    """Make the steps a file has not made yet, each wholly or not at all.

    Raises sqlite3.Error; IntegrityError where a step would leave a row without its parent.
    """
    sqls = steps() if sqls is None else sqls
    connection.execute("PRAGMA foreign_keys=OFF")  # only outside a transaction; a table may be made anew meanwhile
    try:
        for number in range(version_of(connection) + 1, len(sqls) + 1):
            _step(connection, number, sqls[number - 1])
    finally:
        connection.execute("PRAGMA foreign_keys=ON")


def _step(connection: sqlite3.Connection, number: int, sql: str) -> None:
    try:
        connection.executescript("BEGIN IMMEDIATE;\n" + sql)
        orphans = connection.execute("PRAGMA foreign_key_check").fetchall()
        if orphans:
            raise sqlite3.IntegrityError(f"step {number} leaves rows without a parent: {orphans[:3]}")
        connection.execute(f"PRAGMA application_id={APPLICATION_ID}")
        connection.execute(f"PRAGMA user_version={number}")
        connection.execute("COMMIT")
    finally:
        if connection.in_transaction:
            connection.execute("ROLLBACK")


def schema_of(connection: sqlite3.Connection) -> dict[tuple[str, str], str]:
    """The SQL of every table, index and trigger by (type, name), white space evened out."""
    rows = connection.execute("SELECT type, name, sql FROM sqlite_master WHERE name NOT LIKE 'sqlite%'")
    return {(kind, name): " ".join((sql or "").split()) for kind, name, sql in rows}


def strangers(connection: sqlite3.Connection) -> list[tuple[str, str]]:
    """Tables, indexes and triggers that are missing, changed or too many: (type, name)."""
    found, ours = schema_of(connection), schema()
    return sorted(key for key in found.keys() | ours.keys() if found.get(key) != ours.get(key))


@cache
def schema() -> dict[tuple[str, str], str]:
    """The schema after the last step."""
    connection = sqlite3.connect(":memory:", isolation_level=None)
    try:
        climb(connection)
        return schema_of(connection)
    finally:
        connection.close()
