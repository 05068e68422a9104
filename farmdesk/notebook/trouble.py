"""What the disk and SQLite say, in plain sentences. The one place that knows SQLite's error codes."""

from __future__ import annotations

import errno
import sqlite3
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

from sqlalchemy.exc import DBAPIError

from farmdesk.errors import FileTrouble
from farmdesk.text import N_


def busy(path: Path) -> FileTrouble:
    """Somebody else is using the file and does not let go."""
    return FileTrouble(
        N_("notebook", "Another program is using {file} just now.", file=path.name),
        N_("notebook", "Close it there, then try again. Nothing was changed."),
    )


def protected(path: Path) -> FileTrouble:
    """The file, its folder or its stick cannot be written."""
    return FileTrouble(
        N_(
            "notebook",
            "Nothing can be written to {file}: the file, its folder or the stick is write-protected.",
            file=path.name,
        ),
        N_("notebook", "Copy it to a folder of your own and open it there."),
    )


def no_answer(path: Path) -> FileTrouble:
    """The disk failed in the middle of reading or writing."""
    return FileTrouble(
        N_("notebook", "The disk did not do its part while {file} was in use.", file=path.name),
        N_("notebook", "What was saved before is safe. Check the stick or the disk, or save a copy elsewhere."),
    )


def damaged(path: Path) -> FileTrouble:
    """The file is not whole."""
    return FileTrouble(
        N_("notebook", "{file} is damaged and cannot be read whole.", file=path.name),
        N_("notebook", "Open the newest copy from the folder of copies or from the stick; leave this file as it is."),
    )


def full(path: Path) -> FileTrouble:
    """No room on the disk."""
    return FileTrouble(
        N_("notebook", "The disk is full; nothing was written to {file}.", file=path.name),
        N_("notebook", "Make room on the disk, then try again."),
    )


def out_of_reach(path: Path) -> FileTrouble:
    """The file is not there, or the computer does not let us at it."""
    return FileTrouble(
        N_("notebook", "{file} cannot be opened.", file=path.name),
        N_("notebook", "Check that the folder and the file are still there, and that you may open them."),
    )


def no_season_file(path: Path) -> FileTrouble:
    """A file of another kind."""
    return FileTrouble(
        N_("notebook", "{file} is not a season file.", file=path.name),
        N_("notebook", "Choose the file that this program wrote."),
    )


def newer(path: Path) -> FileTrouble:
    """A file that knows more than this program does."""
    return FileTrouble(
        N_("notebook", "{file} was written by a newer version of this program; it was not touched.", file=path.name),
        N_("notebook", "Install the newer version here, or open the file on the other computer."),
    )


# Primary result codes (the low byte; sqlite.org/rescode.html). CONSTRAINT and the rest are bugs and stay what they are.
_BY_CODE: dict[int, Callable[[Path], FileTrouble]] = {
    sqlite3.SQLITE_PERM: protected,
    sqlite3.SQLITE_BUSY: busy,
    sqlite3.SQLITE_LOCKED: busy,
    sqlite3.SQLITE_READONLY: protected,
    sqlite3.SQLITE_IOERR: no_answer,
    sqlite3.SQLITE_CORRUPT: damaged,
    sqlite3.SQLITE_FULL: full,
    sqlite3.SQLITE_CANTOPEN: out_of_reach,
    sqlite3.SQLITE_PROTOCOL: busy,
    sqlite3.SQLITE_NOTADB: no_season_file,
}
_BY_ERRNO: dict[int | None, Callable[[Path], FileTrouble]] = {
    errno.ENOSPC: full,
    errno.EDQUOT: full,
    errno.EFBIG: full,
    errno.EROFS: protected,
    errno.EACCES: protected,
    errno.EPERM: protected,
    errno.EIO: no_answer,
}


def trouble_of(error: BaseException, path: Path) -> FileTrouble | None:
    """The sentence for an error of SQLite or of the disk; None where it is a bug of ours."""
    if isinstance(error, DBAPIError):
        error = error.orig or error
    if isinstance(error, sqlite3.Error):
        code = getattr(error, "sqlite_errorcode", None)
        if code is None:  # text that is no UTF-8 comes without a code
            return damaged(path) if "decode" in str(error).lower() else None
        gone = code == sqlite3.SQLITE_READONLY_DBMOVED  # moved or removed while it was open
        say = out_of_reach if gone else _BY_CODE.get(code & 0xFF)
        return say(path) if say else None
    if isinstance(error, OSError):
        return _BY_ERRNO.get(error.errno, out_of_reach)(path)
    return None


@contextmanager
def said(path: Path) -> Iterator[None]:
    """Turn what SQLite or the disk raises inside into a FileTrouble about this file."""
    try:
        yield
    except UnicodeDecodeError as error:  # SQLite's complaint about a damaged file quotes its bytes
        raise damaged(path) from error
    except (DBAPIError, sqlite3.Error, OSError) as error:
        trouble = trouble_of(error, path)
        if trouble is None:
            raise
        raise trouble from error
