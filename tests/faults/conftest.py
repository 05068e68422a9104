"""Another program, as a process of its own."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]


class Program:
    """A running `program.py`: tell it a line, hear a line."""

    def __init__(self) -> None:
        self.process = subprocess.Popen(
            [sys.executable, "-m", "tests.faults.program"],
            cwd=ROOT,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
        )
        assert self.hear() == "ready"

    def tell(self, *words: object) -> None:
        assert self.process.stdin
        self.process.stdin.write("\t".join(map(str, words)) + "\n")
        self.process.stdin.flush()

    def hear(self) -> str:
        assert self.process.stdout
        return self.process.stdout.readline().rstrip("\n")

    def ask(self, *words: object) -> str:
        self.tell(*words)
        return self.hear()

    def kill(self) -> None:
        self.process.kill()
        self.process.wait()

    def end(self) -> None:
        assert self.process.stdin
        assert self.process.stdout
        self.process.stdin.close()
        self.process.wait(20)
        self.process.stdout.close()


@pytest.fixture
def program(own_data: Path) -> Iterator[Program]:
    started = Program()
    yield started
    if started.process.poll() is None:
        started.end()
    for pipe in (started.process.stdin, started.process.stdout):
        if pipe and not pipe.closed:
            pipe.close()
