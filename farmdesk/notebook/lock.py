"""One program writes. A lock file beside the season file says who.

The lock itself is the operating system's and ends with the program that took it, however it ends; what is
written in the file is only for reading. Where a folder knows no such locks (some network drives), the words
in the file count, unless they name a program of this computer that is gone.
"""

from __future__ import annotations

import errno
import getpass
import json
import os
import sys
import time
from dataclasses import asdict, dataclass
from pathlib import Path

from farmdesk import clock
from farmdesk.notebook.ids import computer_name

FAR = 1 << 30  # Windows locks bytes against reading too: lock one that nobody reads
_NO_LOCKS = {errno.ENOLCK, errno.ENOSYS, errno.EOPNOTSUPP, errno.ENOTSUP, errno.EINVAL}


@dataclass(frozen=True, slots=True)
class Holder:
    """The program that holds a season file: whose it is, since when [UTC s], on which computer."""

    who: str
    since_utc_s: int
    pid: int
    computer: str


class Lock:
    """The right to write, held until `release`."""

    def __init__(self, path: Path, descriptor: int) -> None:
        self.path = path
        self._descriptor: int | None = descriptor

    @classmethod
    def take(cls, season: Path) -> Lock | Holder:
        """Take the lock of a season file, or say who holds it. Raises OSError where no lock file can be made."""
        path = season.with_name(season.name + ".lock")
        for attempt in range(20):
            descriptor = os.open(path, os.O_RDWR | os.O_CREAT, 0o666)
            try:
                held = _grab(descriptor)
                holder = _read(path)
                if held is None:
                    held = holder is None or _is_gone(holder)
                if held and _is_same(path, descriptor):
                    lock = cls(path, descriptor)
                    lock._write()
                    return lock
                if not held and holder is not None:
                    os.close(descriptor)
                    return holder
            except BaseException:
                os.close(descriptor)
                raise
            os.close(descriptor)
            if attempt:  # its holder has not written its name yet, or is just going
                time.sleep(0.01)
        return Holder("", clock.now(), 0, "")

    def release(self) -> None:
        """Let the next program write."""
        if self._descriptor is None:
            return
        descriptor, self._descriptor = self._descriptor, None
        if sys.platform != "win32":  # gone before the lock is, so that nobody can lock a file without a name
            self._remove()
        os.close(descriptor)
        if sys.platform == "win32":
            self._remove()

    def _remove(self) -> None:
        try:
            self.path.unlink()
        except OSError:
            pass  # the stick was pulled out, or the next program has it open already

    def _write(self) -> None:
        holder = Holder(_user(), clock.now(), os.getpid(), computer_name())
        assert self._descriptor is not None
        try:
            os.ftruncate(self._descriptor, 0)
            os.lseek(self._descriptor, 0, os.SEEK_SET)
            os.write(self._descriptor, json.dumps(asdict(holder)).encode())
        except OSError:
            pass  # a full disk: the lock holds without a name, and the season can at least be read


def _grab(descriptor: int) -> bool | None:
    """Whether the operating system gave us the lock; None where it has none to give."""
    try:
        if sys.platform == "win32":
            import msvcrt

            os.lseek(descriptor, FAR, os.SEEK_SET)
            msvcrt.locking(descriptor, msvcrt.LK_NBLCK, 1)
        else:
            import fcntl

            fcntl.flock(descriptor, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except OSError as error:
        return None if error.errno in _NO_LOCKS else False
    return True


def _is_same(path: Path, descriptor: int) -> bool:
    """Whether the file we hold still stands under its name: the last holder may just have removed it."""
    try:
        return os.path.samestat(path.stat(), os.fstat(descriptor))
    except FileNotFoundError:
        return False


def _read(path: Path) -> Holder | None:
    try:
        said = json.loads(path.read_bytes())
        return Holder(str(said["who"]), int(said["since_utc_s"]), int(said["pid"]), str(said["computer"]))
    except (OSError, ValueError, KeyError, TypeError):
        return None  # empty, or cut off while it was written


def _is_gone(holder: Holder) -> bool:
    """Whether the program that wrote its name ran on this computer and runs no more."""
    if holder.computer != computer_name() or sys.platform == "win32":
        return False
    try:
        os.kill(holder.pid, 0)
    except ProcessLookupError:
        return True
    except OSError:
        return False
    return False


def _user() -> str:
    try:
        user = getpass.getuser()
    except (OSError, KeyError, ImportError):
        user = ""
    return f"{user} ({computer_name()})" if user else computer_name()
