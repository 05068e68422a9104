"""The lock files pin everything by version and hash, name no host, and hold what is installed and handed on."""

from __future__ import annotations

import re
from importlib.metadata import version

import pytest
from packaging.requirements import Requirement

from tests.house.test_floors import PROJECT, plain
from tests.house.tree import ROOT, files, name_of

LOCKS = ("requirements", "requirements-build", "requirements-check")
LINE = re.compile(r"([a-z0-9-]+)==(\S+) \\\n((?:    --hash=sha256:[0-9a-f]{64}(?: \\)?\n)+)(?:    # via .*\n)+")


def lock(name: str) -> str:
    """The text of a lock file."""
    return (ROOT / "installer" / f"{name}.lock").read_text(encoding="utf-8")


def pins(name: str) -> dict[str, tuple[str, frozenset[str]]]:
    """Version and hashes of each package in a lock file."""
    return {package: (pinned, frozenset(hashes.split())) for package, pinned, hashes in LINE.findall(lock(name))}


@pytest.mark.parametrize("name", LOCKS)
def test_every_line_is_pinned_and_hashed_and_names_no_host(name: str) -> None:
    left = "\n".join(line for line in LINE.sub("", lock(name)).splitlines() if line and not line.startswith("#"))
    assert not left, f"not a pin with its hashes: {left[:200]}"


def test_the_check_runs_on_what_is_handed_on() -> None:
    checked = pins("requirements-check")
    assert {name: checked.get(name) for name in pins("requirements")} == pins("requirements")


@pytest.mark.parametrize(
    ("name", "wanted"),
    [
        ("requirements", PROJECT["project"]["dependencies"]),
        ("requirements-check", PROJECT["project"]["optional-dependencies"]["check"]),
    ],
)
def test_the_locks_fit_what_is_declared(name: str, wanted: list[str]) -> None:
    locked = pins(name)
    for requirement in map(Requirement, wanted):
        pinned, _ = locked[plain(requirement.name)]
        assert requirement.specifier.contains(pinned), requirement


def test_what_is_locked_is_installed() -> None:
    locked = {name: pinned for name, (pinned, _) in pins("requirements-check").items()}
    assert {name: version(name) for name in locked} == locked


def test_every_package_has_its_notice() -> None:
    notices = ROOT / "resources" / "licences"
    for name, (pinned, _) in pins("requirements").items():
        text = (notices / f"{name}.txt").read_text(encoding="utf-8")
        assert text.startswith(f"{name} {pinned}\n"), "run installer/licences.py after a change of the lock"
        assert re.search(r"copyright|licen[cs]e", text, re.IGNORECASE)
    for name in ("Qt", "LGPL-3.0", "GPL-3.0"):
        assert (notices / f"{name}.txt").stat().st_size > 1000


def test_every_font_has_its_notice() -> None:
    fonts = [path for path in files() if path.suffix == ".ttf"]
    assert len(fonts) == 7
    for font in fonts:
        family = next(name for name in ("SourceSans3", "SourceSerif4") if font.name.startswith(name))
        for notice in (font.parent / f"{family}-LICENSE.md", ROOT / "resources" / "licences" / f"{family}.txt"):
            assert "SIL OPEN FONT LICENSE Version 1.1" in notice.read_text(encoding="utf-8"), name_of(notice)
