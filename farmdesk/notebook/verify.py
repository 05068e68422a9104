"""Is the season file whole, and is it still what was written?

The file is looked at in a private copy, page for page: nothing here can change the file itself.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import islice
from pathlib import Path

import numpy as np
from sqlalchemy import Connection

from farmdesk.clock import FarmTime
from farmdesk.errors import FileTrouble, NotPossible, Problem
from farmdesk.notebook import connection, logger_rows, rows, steps
from farmdesk.notebook.copies import PrivateCopy
from farmdesk.notebook.rows import Head, Torn
from farmdesk.notebook.things_rows import read_things
from farmdesk.notebook.trouble import damaged, said
from farmdesk.picture.entries import Body, LoggerFile
from farmdesk.picture.picture import fold
from farmdesk.text import N_, Moment, Num, Text

BY_HAND = N_("notebook", "Row {n}, written {at}, was changed by hand.")
MOST = 20  # problems told of one kind: nobody reads more


def verify(path: Path) -> list[Problem]:
    """Everything that is wrong with a season file, the first row changed by hand first; [] when all is well.

    Looks at the pages of the file, the chain of hashes, the sums of postings, folds the whole notebook, and holds
    tables and rules to those of this program. `where` is an entry's id or the file's name. Trouble with the file
    is a Problem too, never raised.
    """
    try:
        with said(path):
            private = PrivateCopy(path)
            try:
                return _verified(private.path)
            finally:
                private.remove()
    except FileTrouble as trouble:
        return [Problem(path.name, trouble.text)]


def _verified(path: Path) -> list[Problem]:
    wire = connection.Wire(connection.connect(path))
    raw = wire.raw
    try:
        steps.hold_known(raw, path)
        pages = [row[0] for row in raw.execute(f"PRAGMA integrity_check({MOST})")]
        found = [Problem(path.name, _damage(what)) for what in pages if what != "ok"]
        if not found:
            steps.climb(raw)
        changed = steps.strangers(raw)
        if not any(kind == "table" for kind, _ in changed):
            try:
                with said(path), wire.reading() as look:
                    found += _content(look, wire, path)
            except (Torn, NotPossible, FileTrouble):
                found = found or [Problem(path.name, damaged(path).text)]
            except (TypeError, ValueError, OverflowError):
                if not found:  # what broken pages hold is of any type; in sound ones it is a bug
                    raise
        for kind, name in changed:
            text = N_(
                "notebook", "The {kind} “{name}” of the file is not as this program made it.", kind=kind, name=name
            )
            found.append(Problem(path.name, text))
        return found
    finally:
        wire.close()


def _damage(what: str) -> Text:
    return N_("notebook", "The file is damaged: {what}.", what=what)


def _content(look: Connection, wire: connection.Wire, path: Path) -> list[Problem]:
    """What is wrong with what is written, the tables being sound."""
    things = read_things(look)
    time = FarmTime(things.farm.zone)
    pairs = rows.read_what_is_left(look)
    told = look.exec_driver_sql("SELECT seq FROM sqlite_sequence WHERE name = 'entry'").scalar() or 0
    found = list(islice(_chain(pairs, wire, time, int(told)), MOST))
    for entry_id, grams in rows.unbalanced(look)[:MOST]:
        over = Num(grams / 1000.0, "kg", 3)
        found.append(
            Problem(entry_id, N_("notebook", "The weights of this row do not sum to zero: {over} over.", over=over))
        )
    orphans = {row[0] for row in look.exec_driver_sql("PRAGMA foreign_key_check")}
    found += [
        Problem(path.name, N_("notebook", "Rows of “{name}” belong to no entry.", name=name))
        for name in sorted(orphans)
    ]
    entries = rows.entries((head, body) for head, body in pairs if body is not None)
    try:
        fold(entries, things)
    except (TypeError, ValueError, LookupError, ArithmeticError) as error:
        found.append(Problem(path.name, N_("notebook", "The notebook cannot be folded: {what}.", what=str(error))))
    return found


def _chain(
    pairs: list[tuple[Head, Body | None]], wire: connection.Wire, time: FarmTime, told: int
) -> Iterator[Problem]:
    """Rows whose hash does not fit what they say, or what stood before them."""
    before: Head | None = None
    accused = ""
    for head, body in pairs:
        missing = head.seq - (before.seq if before else 0) - 1
        if missing:
            text = N_(
                "notebook",
                "{n} {n:row|rows} before the one written {at} {n:is|are} missing: {n:it was|they were} taken out by hand.",
            )
            yield Problem(head.id, _said(text, missing, head, time))
        elif before and head.prev_hash != before.hash and accused != before.id:
            yield Problem(before.id, _said(BY_HAND, before.seq, before, time))
        accused = ""
        if not _fits(head, body, wire):
            accused = head.id
            yield Problem(head.id, _said(BY_HAND, head.seq, head, time))
        before = head
    last = before.seq if before else 0
    if told > last:
        yield Problem(
            before.id if before else "",
            N_(
                "notebook",
                "The last {n} {n:row is|rows are} missing: {n:it was|they were} taken out by hand.",
                n=told - last,
            ),
        )


def _said(text: Text, n: int, head: Head, time: FarmTime) -> Text:
    at = Moment(time.local(head.written_utc_s), year=True)
    return Text(text.context, text.template, (("n", n), ("at", at)))


def _fits(head: Head, body: Body | None, wire: connection.Wire) -> bool:
    if body is None:
        return False
    digest = ""
    if isinstance(body, LoggerFile):
        at_utc_s, values = logger_rows.read(wire.raw, [head.seq])
        if not np.isfinite(at_utc_s).all():  # an instant that a broken page has lost
            return False
        digest = logger_rows.digest(at_utc_s.astype("int64"), values)
    try:
        return rows.hash_of(head, body, digest) == head.hash
    except (TypeError, ValueError, OverflowError):  # what no hand of ours can have written
        return False
