"""One connection to a season file, with the settings of the house.

A rollback journal and `synchronous=FULL`: a season file is one file at every moment it rests, so that a person
may copy it, and what was said to be saved is saved. SQLAlchemy stands on this one connection; bulk rows go past it.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, create_engine, event
from sqlalchemy.pool import StaticPool

WAIT_S = 5.0  # how long another program's short look at the file is waited for (common practice, no source)
PAGES = 5_000  # pages copied at a time: 20 MB, some hundredths of a second
PRAGMAS = (
    "foreign_keys=ON",
    "recursive_triggers=ON",  # so that REPLACE meets the triggers against deleting
    "trusted_schema=OFF",
    "cell_size_check=ON",
    "cache_size=-32000",  # 32 MB
    "synchronous=FULL",
    "schema_version",  # reads the file, and so rolls back first what a cut-off program left unfinished
)


def connect(path: Path, mode: str = "rw") -> sqlite3.Connection:
    """Open a file: `ro`, `rw`, or `rwc` to make it. Raises sqlite3.Error.

    The connection may be handed from the thread that opens the file to the one that works on it.
    """
    connection = sqlite3.connect(
        f"{path.absolute().as_uri()}?mode={mode}",
        uri=True,
        timeout=WAIT_S,
        isolation_level=None,  # transactions are begun by hand
        check_same_thread=False,
    )
    try:
        for pragma in PRAGMAS:
            connection.execute(f"PRAGMA {pragma}").fetchall()
    except BaseException as error:
        connection.close()
        if getattr(error, "sqlite_errorcode", None) == sqlite3.SQLITE_ERROR:  # "unsupported file format"
            raise Unreadable(str(error)) from error
        raise
    return connection


class Unreadable(sqlite3.DatabaseError):
    """A file whose first page says something that no SQLite of today can read."""

    sqlite_errorcode: Any = sqlite3.SQLITE_NOTADB


class Wire:
    """SQLAlchemy Core on one connection, and the connection itself for bulk rows."""

    def __init__(self, connection: sqlite3.Connection) -> None:
        self.raw = connection
        self.is_open = True
        self._engine = create_engine("sqlite://", creator=lambda: connection, poolclass=StaticPool)
        event.listen(self._engine, "begin", _begin)

    @contextmanager
    def reading(self) -> Iterator[Connection]:
        """One look at the file as it stands."""
        with self._engine.begin() as connection:
            yield connection

    @contextmanager
    def writing(self) -> Iterator[Connection]:
        """One transaction: all of it, or nothing."""
        with self._engine.execution_options(writing=True).begin() as connection:
            yield connection

    def close(self) -> None:
        """Close the file."""
        self.is_open = False
        self._engine.dispose()
        self.raw.close()


def _begin(connection: Connection) -> None:
    writing = connection.get_execution_options().get("writing")
    connection.exec_driver_sql("BEGIN IMMEDIATE" if writing else "BEGIN")


def clear(path: Path) -> None:
    """Take away a database that is not wanted any more, and the journal that a cut-off program left beside it.

    A stranger's journal would be rolled back into the next file of that name.
    """
    path.unlink(missing_ok=True)
    path.with_name(path.name + "-journal").unlink(missing_ok=True)


def backup(source: sqlite3.Connection, target: Path, *, lasting: bool) -> None:
    """Copy a whole database page by page into a new file, through SQLite's own interface.

    `lasting` waits until the copy lies on the disk; a private copy need not. Removes the target when it fails.
    Raises sqlite3.Error; OperationalError with the code BUSY when the source's writer does not let go.
    """
    clear(target)
    tries = 0

    def watch(status: int, remaining: int, total: int) -> None:
        nonlocal tries
        tries = tries + 1 if status in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED) else 0
        if tries > 2:  # each try has waited `WAIT_S` already
            raise Busy

    try:
        copy = connect(target, "rwc")
        try:
            if not lasting:
                copy.execute("PRAGMA synchronous=OFF")
            source.backup(copy, pages=PAGES, progress=watch)
        finally:
            copy.close()
    except BaseException:
        clear(target)
        raise


class Busy(sqlite3.OperationalError):
    """The source of a copy stays in another program's hands."""

    sqlite_errorcode: Any = sqlite3.SQLITE_BUSY
