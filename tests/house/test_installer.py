"""The set-up on computers that lack something, played with stand-ins for the system's commands."""

from __future__ import annotations

import os
import subprocess
from pathlib import Path

import pytest

from tests.house.tree import ROOT

PREPARE = ROOT / "installer" / "prepare.sh"
KNOWN = "\tlibEGL.so.1 (libc6,x86-64) => /lib/libEGL.so.1\n\tlibGL.so.1 (libc6) => /lib/libGL.so.1\n"


class Computer:
    """A computer with only the commands that a test gives it, before the real ones or instead of them."""

    def __init__(self, folder: Path) -> None:
        self.bin = folder / "bin"
        self.bin.mkdir()
        self.log = folder / "log"
        self.only = False

    def has(self, command: str, script: str) -> None:
        """A command that notes its words and then does what the script says."""
        path = self.bin / command
        path.write_text(f'#!/bin/bash\necho "{command} $*" >>"{self.log}"\n{script}\n')
        path.chmod(0o755)

    def runs(self, line: str, **environment: str) -> subprocess.CompletedProcess[str]:
        """Run one line after reading prepare.sh."""
        path = str(self.bin) if self.only else f"{self.bin}:{os.environ['PATH']}"
        return subprocess.run(
            ["/bin/bash", "-c", f'set -euo pipefail; source "{PREPARE}"; {line}'],
            env={"PATH": path, **environment},
            capture_output=True,
            text=True,
            timeout=30,
        )

    def told(self) -> list[str]:
        """The lines that the stand-ins were called with."""
        return self.log.read_text().splitlines() if self.log.exists() else []


@pytest.fixture
def computer(tmp_path: Path) -> Computer:
    return Computer(tmp_path)


def test_a_missing_library_is_named_by_its_package(computer: Computer) -> None:
    computer.has("ldconfig", f"printf '%s' '{KNOWN}'")
    ran = computer.runs('missing "${to_draw[@]}"')
    assert ran.stdout.split() == ["libdbus-1-3", "libfontconfig1", "libglib2.0-0", "libxkbcommon0"]


def test_where_apt_may_it_adds(computer: Computer) -> None:
    computer.has("id", "echo 0")
    computer.has("apt-get", "")
    ran = computer.runs("add libegl1 libgl1")
    assert ran.returncode == 0
    assert computer.told()[-1] == "apt-get -qq install -y --no-install-recommends libegl1 libgl1"


def test_apt_through_sudo_that_asks_nothing(computer: Computer) -> None:
    computer.has("id", "echo 1000")
    computer.has("apt-get", "")
    computer.has("sudo", 'shift; exec "$@"')
    assert computer.runs("add libegl1").returncode == 0
    assert "apt-get -qq install -y --no-install-recommends libegl1" in computer.told()


@pytest.mark.parametrize(("sudo", "apt"), [("exit 1", "exit 0"), ('shift; exec "$@"', "exit 100")])
def test_where_apt_may_not_one_line_is_said(computer: Computer, sudo: str, apt: str) -> None:
    computer.has("id", "echo 1000")
    computer.has("sudo", sudo)
    computer.has("apt-get", apt)
    ran = computer.runs("add python3.11-venv libegl1")
    assert ran.returncode == 1
    assert ran.stderr.splitlines()[-1].endswith(": sudo apt-get install -y python3.11-venv libegl1")


@pytest.mark.parametrize(("says", "shown"), [("Python 3.9.2", "Python 3.9.2"), ("", "none")])
def test_an_older_python_gets_one_sentence(computer: Computer, says: str, shown: str) -> None:
    computer.only = True
    for name in ("cat", "dirname"):
        (computer.bin / name).symlink_to(f"/usr/bin/{name}")
    if says:
        computer.has("python3", f'[[ $1 == -V ]] && echo "{says}" && exit 0; exit 1')
    ran = computer.runs("find_python")
    assert ran.returncode == 1
    assert ran.stderr == f"Farmdesk needs Python 3.11 to 3.14, and this computer has {shown}.\n"


def test_this_python_is_found(computer: Computer) -> None:
    ran = computer.runs("find_python; check_system; echo $python")
    assert ran.returncode == 0, ran.stderr
    assert ran.stdout.strip().startswith("python3")


def test_a_missing_venv_is_added_before_it_is_used(computer: Computer) -> None:
    computer.has("id", "echo 1000")
    computer.has("sudo", "exit 1")
    computer.has("python3", "case $2 in *ensurepip*) exit 1;; *print*) echo python3.11-venv;; esac")
    ran = computer.runs("make_venv")
    assert ran.returncode == 1
    assert ran.stderr.endswith("sudo apt-get install -y python3.11-venv\n")
    assert not any("-m venv" in line for line in computer.told())


@pytest.mark.parametrize(
    ("environment", "there"),
    [
        ({}, False),
        ({"DISPLAY": ":0"}, True),
        ({"WAYLAND_DISPLAY": "wayland-0"}, True),
        ({"DISPLAY": ":0", "QT_QPA_PLATFORM": "offscreen"}, False),
    ],
)
def test_a_display_is_there_when_one_is_named(computer: Computer, environment: dict[str, str], there: bool) -> None:
    assert (computer.runs("has_display", **environment).returncode == 0) is there


def test_pip_is_held_to_the_hashes_and_told_of_no_host() -> None:
    script = PREPARE.read_text()
    assert "--require-hashes" in script
    assert "--only-binary=:all:" in script
    assert not any(word in script for word in ("--index-url", "--trusted-host", "--find-links", "://"))
