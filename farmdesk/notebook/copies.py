"""Copies of the season file: on closing, before a step, onto a stick, and for a second program.

All go through SQLite's backup interface, never over the file itself.
"""

from __future__ import annotations

import os
import shutil
import sqlite3
import tempfile
from dataclasses import dataclass
from pathlib import Path

from farmdesk import clock, paths
from farmdesk.clock import FarmTime
from farmdesk.errors import FileTrouble
from farmdesk.notebook import connection
from farmdesk.notebook.lock import Holder, Lock
from farmdesk.notebook.rows import Torn, entries, read
from farmdesk.notebook.things_rows import read_things
from farmdesk.notebook.trouble import busy, damaged, said
from farmdesk.picture.picture import fold
from farmdesk.text import N_

KEPT_N = 14  # automatic copies kept beside the last one of each month: two weeks of evenings (the farm's habit)


@dataclass(frozen=True, slots=True)
class Counts:
    """What a season file holds, as counted by reading and folding it."""

    entries_n: int
    logger_rows_n: int
    lots_n: int
    grams: int
    last_hash: str


@dataclass(frozen=True, slots=True)
class CopyReport:
    """A copy that was opened, read whole and folded after it was made; `copied_at_utc_s` [UTC s]."""

    path: Path
    bytes_n: int
    entries_n: int
    logger_rows_n: int
    lots_n: int
    copied_at_utc_s: int


def counts(wire: connection.Wire) -> Counts:
    """Read a file whole and fold it. Raises sqlite3.Error, Torn."""
    with wire.reading() as look:
        pairs = read(look)
        things = read_things(look)
        rows_n = int(look.exec_driver_sql("SELECT count(value) FROM logger_row").scalar_one())
    lots = fold(entries(pairs), things).lots
    grams = sum(abs(grams) for lot in lots.values() for grams in lot.balance.values())
    return Counts(len(pairs), rows_n, len(lots), grams, pairs[-1][0].hash if pairs else "")


def copy_checked(wire: connection.Wire, source: Path, target: Path) -> CopyReport:
    """Copy a file under a passing name, open the copy, fold it, hold it against the source, and only then name it.

    A copy that stood there before stays until the new one is sound. Raises FileTrouble.
    """
    part = target.with_name(target.name + ".part")
    with said(target):
        if target.exists() and target.samefile(source):
            raise FileTrouble(
                N_("notebook", "{file} cannot be copied onto itself.", file=target.name),
                N_("notebook", "Choose another folder or another name."),
            )
        lock = Lock.take(target)
        if isinstance(lock, Holder):
            raise busy(target)
        try:
            connection.backup(wire.raw, part, lasting=True)
            copy = connection.Wire(connection.connect(part, "ro"))
            try:
                is_sound = copy.raw.execute("PRAGMA quick_check(1)").fetchone()[0] == "ok"
                found = counts(copy) if is_sound else None
            finally:
                copy.close()
            if found is None or found != counts(wire):
                raise FileTrouble(
                    N_(
                        "notebook",
                        "The copy {file} is not the same as the season file; it was removed.",
                        file=target.name,
                    ),
                    N_("notebook", "Try again, or take another stick."),
                )
            connection.clear(target)
            os.replace(part, target)
        except Torn as error:
            raise damaged(source) from error
        finally:
            connection.clear(part)
            lock.release()
        bytes_n = target.stat().st_size
    return CopyReport(target, bytes_n, found.entries_n, found.logger_rows_n, found.lots_n, clock.now())


def folder_of(source: Path, file_id: str) -> Path:
    """Where the automatic copies of a season file are kept: a folder of its own in the data folder."""
    folder = paths.data_folder() / "copies" / f"{source.stem} {file_id[-4:]}"
    folder.mkdir(parents=True, exist_ok=True)
    return folder


def keep_copy(source: sqlite3.Connection, path: Path, file_id: str, time: FarmTime) -> Path:
    """Make the automatic copy and let the oldest go. Raises sqlite3.Error, OSError."""
    folder = folder_of(path, file_id)
    target = folder / f"{time.local(clock.now()):%Y-%m-%d %H%M%S}{path.suffix}"
    part = target.with_name(target.name + ".part")
    connection.backup(source, part, lasting=True)
    os.replace(part, target)
    for old in spare(automatic(folder)):
        if old != target:  # the newest by its making, whatever its date says: a clock may have been set back
            old.unlink(missing_ok=True)
    return target


def is_due(path: Path, file_id: str) -> bool:
    """Whether the file was written after its newest automatic copy: the last program had no time to make one."""
    made = [copy.stat().st_mtime for copy in automatic(folder_of(path, file_id))]
    return not made or path.stat().st_mtime > max(made)


def keep_before_steps(source: sqlite3.Connection, path: Path, file_id: str, from_version: int) -> Path:
    """Keep the file as it is before numbered steps change its tables. Raises sqlite3.Error, OSError."""
    target = folder_of(path, file_id) / f"before step {from_version + 1}{path.suffix}"
    part = target.with_name(target.name + ".part")
    connection.backup(source, part, lasting=True)
    os.replace(part, target)
    return target


def automatic(folder: Path) -> list[Path]:
    """The automatic copies in a folder, oldest first by the date in their names."""
    return sorted(
        path for path in folder.glob("[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9] *") if path.suffix != ".part"
    )


def spare(copies: list[Path], kept_n: int = KEPT_N) -> list[Path]:
    """Which of the copies (oldest first) may go: all but the newest, and the last one of each month."""
    last_of_month = {path.name[:7]: path for path in copies}
    kept = {*copies[-kept_n:], *last_of_month.values()}
    return [path for path in copies if path not in kept]


class PrivateCopy:
    """A copy that only this program sees, in a folder that goes with it."""

    def __init__(self, source: Path) -> None:
        self.source = source
        self.copied_at_utc_s = clock.now()
        self._folder = Path(tempfile.mkdtemp(prefix="farmdesk-"))
        self.path = self._folder / source.name
        try:
            live = connect_to_read(source)
            try:
                connection.backup(live, self.path, lasting=False)
            finally:
                live.close()
        except BaseException:
            self.remove()
            raise

    def remove(self) -> None:
        """Take the copy away."""
        shutil.rmtree(self._folder, ignore_errors=True)


def connect_to_read(path: Path) -> sqlite3.Connection:
    """A connection to copy from: one that can roll back what a cut-off program left, if the folder can be written."""
    try:
        return connection.connect(path, "rw")
    except sqlite3.OperationalError:
        return connection.connect(path, "ro")
