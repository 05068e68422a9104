"""Another program for the tests: started as a process of its own, told what to do on its standard input.

`hold PATH`          opens the season file and answers who holds it, or that it writes
`append`             writes five entries
`close`              closes it
`write PATH`         a child writes acts of seven entries and 30,000 logger rows until it is killed; says each one
`die PATH PIECE`     a child kills itself in the middle of writing logger rows
`half PATH`          stops in the middle of writing logger rows until the next line comes
"""

from __future__ import annotations

import os
import signal
import sys
from pathlib import Path

import numpy as np

from farmdesk.notebook.season_file import SeasonFile, new_id
from tests.notebook.made import day, entry, logger_entry

ROWS_N = 30_000


def say(*words: object) -> None:
    sys.stdout.write(" ".join(map(str, words)) + "\n")
    sys.stdout.flush()


def rows(act: int) -> tuple[np.ndarray, np.ndarray]:
    at = 1_700_000_000 + 60 * (np.arange(ROWS_N) + act * ROWS_N)
    return at, np.sin(at / 9000)


def spill(file: SeasonFile) -> None:
    """A small cache: pages go to the disk in the middle of a transaction, as they do under a million rows."""
    file._wire.raw.execute("PRAGMA cache_size=20")


def write_until_killed(path: Path) -> None:
    with SeasonFile.open(path) as file:
        spill(file)
        first = len(file.entries())
        for act in range(10_000):
            batch = new_id()
            file.append([entry(day(i).body, batch=batch) for i in range(7)])
            say("act", batch)
            if act % 2:
                file.append_logger(logger_entry(f"L{first}"), *rows(act))
                say("rows", batch)


def die(path: Path, piece: int) -> None:
    file = SeasonFile.open(path)
    spill(file)

    def stop(done: int) -> bool:
        if done > piece:
            os.kill(os.getpid(), signal.SIGKILL)
        return True

    file.append_logger(logger_entry(new_id()), *rows(0), stop)


def half(path: Path) -> None:
    file = SeasonFile.open(path)
    spill(file)

    def stop(done: int) -> bool:
        if done < ROWS_N:
            say("half")
            sys.stdin.readline()
        return True

    file.append_logger(logger_entry(), *rows(0), stop)
    say("whole")
    file.close()


def in_a_child(work: object, *arguments: object) -> None:
    """Do it in a child, and say when the child is gone."""
    child = os.fork()
    if child == 0:
        work(*arguments)  # type: ignore[operator]
        os._exit(0)
    say("child", child)
    os.waitpid(child, 0)
    say("gone")


def main() -> None:
    file: SeasonFile | None = None
    say("ready")
    while line := sys.stdin.readline():
        command, *rest = line.rstrip("\n").split("\t")
        if command == "hold":
            file = SeasonFile.open(Path(rest[0]))
            say(file.held.who if file.held else "writes", len(file.entries()))
        elif command == "append" and file:
            file.append([day(i) for i in range(5)])
            say("done")
        elif command == "close" and file:
            file.close()
            say("done")
        elif command == "write":
            in_a_child(write_until_killed, Path(rest[0]))
        elif command == "die":
            in_a_child(die, Path(rest[0]), int(rest[1]))
        elif command == "half":
            half(Path(rest[0]))


if __name__ == "__main__":
    main()
