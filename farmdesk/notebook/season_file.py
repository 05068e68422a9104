"""The season file: the farm's things, and everything that happened, in one file that one program writes.

What is appended is appended whole, in one transaction, chained to what stood before it. A second program reads
a private copy. Trouble with disks and files is a FileTrouble with a sentence and a way out.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from types import TracebackType

import numpy as np
from sqlalchemy import Connection, Select, func, select

from farmdesk import clock
from farmdesk.clock import FarmTime
from farmdesk.errors import FileTrouble, NotPossible
from farmdesk.notebook import connection, copies, logger_rows, rows, steps, tables
from farmdesk.notebook.copies import CopyReport, PrivateCopy
from farmdesk.notebook.ids import computer_name, new_id, rise_above
from farmdesk.notebook.lock import Holder, Lock
from farmdesk.notebook.things_rows import read_things, write_things
from farmdesk.notebook.trouble import damaged, said
from farmdesk.picture.entries import Entry, LoggerFile
from farmdesk.picture.things import Things
from farmdesk.text import N_, Moment, Text

__all__ = ["CopyReport", "Held", "SeasonFile", "computer_name", "new_id"]


@dataclass(frozen=True, slots=True)
class Held:
    """Another program writes: who, since when [UTC s], and when the copy that is read here was made [UTC s]."""

    who: str
    since_utc_s: int
    copied_at_utc_s: int

    def sentence(self, time: FarmTime) -> Text:
        """Who has the file open, and how old what is seen here is, in farm time."""
        if not self.who:
            return N_(
                "notebook",
                "Another program has this season open. You are reading a copy made at {copied}; nothing can be written here.",
                copied=Moment(time.local(self.copied_at_utc_s)),
            )
        return N_(
            "notebook",
            "{who} has this season open since {since}. You are reading a copy made at {copied}; nothing can be written here.",
            who=self.who,
            since=Moment(time.local(self.since_utc_s)),
            copied=Moment(time.local(self.copied_at_utc_s)),
        )


def _id(look: Connection, question: Select[tuple[str]]) -> str:
    """An id, "" where there is none. Raises Torn for what is none: a torn index answers with its row numbers."""
    found = look.execute(question).scalar() or ""
    if not isinstance(found, str):
        raise rows.Torn(str(found))
    return found


class SeasonFile:
    """One open season file. `held` is not None where another program writes and this one reads a private copy."""

    path: Path
    held: Held | None

    def __init__(self, path: Path, lock: Lock | None, private: PrivateCopy | None, held: Held | None) -> None:
        """Use `create` or `open`."""
        self.path, self.held = path, held
        self._lock, self._private = lock, private
        self._changed = False
        self._wire = _opened(path, private)
        try:
            with self._wire.reading() as look:
                self._things = read_things(look)
                self._file_id = _id(look, select(tables.origin.c.file_id))
                rise_above(_id(look, select(func.max(tables.entry.c.id))))
            self.time.local(0)
        except BaseException:
            self._wire.close()
            raise

    @classmethod
    def create(cls, path: Path, things: Things) -> SeasonFile:
        """Make a new season file and open it. Raises FileTrouble; nothing is left behind then."""
        with said(path):
            lock = Lock.take(path)
            if isinstance(lock, Holder) or path.exists():
                if isinstance(lock, Lock):
                    lock.release()
                raise FileTrouble(
                    N_("notebook", "There is a file called {file} already.", file=path.name),
                    N_("notebook", "Open it, or choose another name."),
                )
            part = path.with_name(path.name + ".part")
            try:
                connection.clear(part)
                _make(part, things)
                connection.clear(path)
                os.replace(part, path)
            except BaseException:
                connection.clear(part)
                lock.release()
                raise
        return cls._open(path, lock, None, None)

    @classmethod
    def open(cls, path: Path, *, read_only: bool = False) -> SeasonFile:
        """Open a season file and take its lock; held elsewhere, or `read_only`, it reads a private copy instead.

        Rolls an unfinished transaction back first; a file of an older version climbs to today's after a copy.
        Raises FileTrouble: not there, not a season file, written by a newer version, damaged, out of reach.
        """
        with said(path):
            if not path.is_file():
                raise FileTrouble(
                    N_("notebook", "There is no file called {file} here any more.", file=path.name),
                    N_("notebook", "Choose where it is now, or open a copy."),
                )
            if read_only:
                return cls._open(path, None, PrivateCopy(path), None)
            lock = Lock.take(path)
            if isinstance(lock, Lock):
                return cls._open(path, lock, None, None)
            private = PrivateCopy(path)
            return cls._open(path, None, private, Held(lock.who, lock.since_utc_s, private.copied_at_utc_s))

    @classmethod
    def _open(cls, path: Path, lock: Lock | None, private: PrivateCopy | None, held: Held | None) -> SeasonFile:
        try:
            with said(path):
                return cls(path, lock, private, held)
        except BaseException as error:
            if lock:
                lock.release()
            if private:
                private.remove()
            if isinstance(error, (rows.Torn, NotPossible)):
                raise damaged(path) from error  # a row that says what no row can say
            raise

    def __enter__(self) -> SeasonFile:
        return self

    def __exit__(self, kind: type[BaseException] | None, error: BaseException | None, at: TracebackType | None) -> None:
        self.close()

    @property
    def can_write(self) -> bool:
        """Whether this program holds the lock; a private copy can only be read."""
        return self._lock is not None

    @property
    def things(self) -> Things:
        """The farm's things as last saved."""
        return self._things

    @property
    def time(self) -> FarmTime:
        """The farm's own time."""
        return FarmTime(self._things.farm.zone, self._things.farm.day_starts_h)

    @property
    def file_id(self) -> str:
        """The id this file was born with; its copies carry it too."""
        return self._file_id

    def save_things(self, things: Things) -> None:
        """Make the file's things these. Raises NotPossible for a changed version of a method, FileTrouble."""
        self._may_write()
        FarmTime(things.farm.zone).local(0)
        with said(self.path), self._wire.writing() as write:
            write_things(write, things)
            now = read_things(write)
        self._things, self._changed = now, True

    def entries(self) -> list[Entry]:
        """All entries, in the order in which they were written. Raises FileTrouble."""
        try:
            with said(self.path), self._wire.reading() as look:
                return rows.entries(rows.read(look))
        except rows.Torn as error:
            raise damaged(self.path) from error

    def append(self, entries: Sequence[Entry]) -> None:
        """Write entries down, all or none, chained to those before them.

        Raises NotPossible when typed grams of a flow do not sum to zero, FileTrouble when the disk says no;
        nothing is written then.
        """
        self._may_write()
        with said(self.path), self._wire.writing() as write:
            seq, prev_hash = rows.last(write)
            first, computer, new = seq + 1, computer_name(), rows.Rows()
            for one in entries:
                seq += 1
                head = rows.head_of(one, seq, computer, prev_hash)
                new.add(head, one.body)
                prev_hash = head.hash
            new.write(write)
            rows.hold_balanced(write, first)
        self._changed = True

    def append_logger(
        self,
        entry: Entry,
        at_utc_s: np.ndarray,
        values: np.ndarray,
        on_progress: Callable[[int], bool] | None = None,
    ) -> int:
        """Write a logger's file down: its entry, and those of its rows that are not in the notebook yet.

        `at_utc_s` [UTC s, int64, shape (n,)], `values` [base unit, float64, shape (n,)]; rows without a number are
        left out. Rows count as known when a live entry of the same logger, quantity, lot and place holds their
        instant: a file read twice adds nothing, not even its entry. `on_progress` is told the rows written so far
        and stops it all by False; nothing is written then. Answers how many rows were added.
        """
        self._may_write()
        if not isinstance(entry.body, LoggerFile):
            raise TypeError(f"{type(entry.body).__name__} holds no logger rows")
        at, value = logger_rows.tidy(at_utc_s, values)
        raw = self._wire.raw
        with said(self.path), self._wire.writing() as write:
            if len(at):
                known = logger_rows.instants(raw, logger_rows.live_like(write, entry.body), int(at[0]), int(at[-1]))
                if len(known):
                    new = ~np.isin(at, known)
                    at, value = at[new], value[new]
            if not len(at):
                return 0
            seq, prev_hash = rows.last(write)
            head = rows.head_of(entry, seq + 1, computer_name(), prev_hash, logger_rows.digest(at, value))
            laid = rows.Rows()
            laid.add(head, entry.body)
            laid.write(write)
            if not logger_rows.write(raw, head.seq, at, value, on_progress):
                raw.rollback()
                return 0
        self._changed = True
        return len(at)

    def logger_rows(self, entry_ids: Sequence[str]) -> tuple[np.ndarray, np.ndarray]:
        """The rows under logger entries: instants [UTC s] and values [base unit], float64, shape (n,), by time."""
        entry = tables.entry.c
        with said(self.path), self._wire.reading() as look:
            seqs = look.execute(select(entry.seq).where(entry.id.in_(entry_ids)).order_by(entry.seq)).scalars().all()
            return logger_rows.read(self._wire.raw, seqs)

    def logger_last_utc_s(self, logger: str) -> int | None:
        """The latest instant [UTC s] that a live entry of this logger holds; None where there is none."""
        with said(self.path), self._wire.reading() as look:
            return logger_rows.last_utc_s(self._wire.raw, logger_rows.live(look, logger=logger))

    def fresh_copy(self) -> None:
        """Take the private copy again, as the file is now. Raises FileTrouble; the old copy stays then."""
        if self._private is None:
            raise ValueError("this program writes the file itself")
        with said(self.path):
            private = PrivateCopy(self.path)
        old_wire, old_private = self._wire, self._private
        held = self.held and Held(self.held.who, self.held.since_utc_s, private.copied_at_utc_s)
        fresh = self._open(self.path, None, private, held)
        self.__dict__.update(fresh.__dict__)
        old_wire.close()
        old_private.remove()

    @property
    def copies(self) -> list[Path]:
        """The automatic copies of this file, the newest first."""
        return copies.automatic(copies.folder_of(self.path, self._file_id))[::-1]

    def copy_to(self, target: Path) -> CopyReport:
        """Copy the file as it is now to a stick or a folder, open the copy, fold it, and hold it against this one.

        Raises FileTrouble; what stood at `target` before stays until the new copy is sound.
        """
        return copies.copy_checked(self._wire, self.path, target)

    def close(self) -> None:
        """Close the file, keep an automatic copy where something changed, and let go of the lock.

        Raises FileTrouble when the copy could not be made; the file is closed all the same.
        """
        try:
            if self._lock and self._wire.is_open:
                with said(self.path):
                    if self._changed:
                        self._wire.raw.execute("PRAGMA optimize")
                    if self._changed or copies.is_due(self.path, self._file_id):
                        copies.keep_copy(self._wire.raw, self.path, self._file_id, self.time)
        finally:
            self._wire.close()
            if self._lock:
                self._lock.release()
            if self._private:
                self._private.remove()

    def _may_write(self) -> None:
        if self._lock is None:
            text = N_("notebook", "This is a copy to read; nothing can be written here.")
            hint = N_("notebook", "Write on the computer that has the season open, or close it there first.")
            raise FileTrouble(self.held.sentence(self.time) if self.held else text, hint)


def _opened(path: Path, private: PrivateCopy | None) -> connection.Wire:
    """Open, refuse what is not ours to open, and climb the steps that are missing."""
    raw = connection.connect(private.path if private else path)
    try:
        steps.hold_known(raw, path)
        if raw.execute("PRAGMA quick_check(1)").fetchone()[0] != "ok":
            raise damaged(path)
        raw.execute("PRAGMA journal_mode=DELETE")
        found = steps.version_of(raw)
        if found < steps.version():
            if private is None:
                copies.keep_before_steps(raw, path, raw.execute("SELECT file_id FROM origin").fetchone()[0], found)
            steps.climb(raw)
        if any(kind == "table" for kind, _ in steps.strangers(raw)):
            raise damaged(path)
        if private is not None:
            raw.execute("PRAGMA query_only=ON")
    except BaseException:
        raw.close()
        raise
    return connection.Wire(raw)


def _make(path: Path, things: Things) -> None:
    """A new file with its tables, its id and its things."""
    FarmTime(things.farm.zone).local(0)
    raw = connection.connect(path, "rwc")
    wire = connection.Wire(raw)
    try:
        raw.execute("PRAGMA journal_mode=DELETE")
        steps.climb(raw)
        with wire.writing() as write:
            write.execute(tables.origin.insert().values(id=1, file_id=new_id(), made_utc_s=clock.now()))
            write_things(write, things)
    finally:
        wire.close()
