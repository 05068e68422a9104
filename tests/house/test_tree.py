"""The shape of the checkout, and words that have no place in it."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from tests.house.tree import ROOT, files, name_of

TOP = {
    "README.md", "DEVELOPERS.md", "LICENSE", "pyproject.toml",
    "farmdesk", "resources", "tests", "demo_data", "installer",
}  # fmt: skip
MOST_LINES = 400
NO_NAME = re.compile(r"(^|_)(utils?|helpers?|managers?|common|misc)(_|$)")

# Put together from pieces, so that this file does not name what it forbids.
A_HOST = re.compile(
    "|".join(
        re.escape(".".join(parts))
        for parts in (
            ("pypi", "org"), ("pythonhosted", "org"), ("npmjs", "org"), ("npmjs", "com"), ("yarnpkg", "com"),
            ("anaconda", "org"), ("debian", "org"), ("ubuntu", "com"), ("ghcr", "io"), ("docker", "io"),
        )
    ),
    re.IGNORECASE,
)  # fmt: skip
A_MACHINE = re.compile(r"(?<![\w.\-/}])/(work|root|home|Users|opt|mnt|srv|tmp)/\w|[A-Z]:\\\\?Users", re.MULTILINE)
A_WORD = re.compile("seed" + r"[\s_-]+" + "document", re.IGNORECASE)


def texts() -> list[Path]:
    """Every text of the project but the licences, which are others' words."""
    left_out = ("resources/licences/", "resources/fonts/")
    return [
        path for path in files() if not name_of(path).startswith(left_out) and b"\0" not in path.read_bytes()[:1024]
    ]


def strangers(pattern: re.Pattern[str]) -> list[str]:
    """Where a pattern occurs."""
    return [
        f"{name_of(path)}: {found.group()}"
        for path in texts()
        for found in pattern.finditer(path.read_text(encoding="utf-8"))
    ]


def test_the_top_level_is_as_listed() -> None:
    top = {name_of(path).split("/")[0] for path in files()}
    assert {name for name in top if not name.startswith(".")} <= TOP


def test_no_source_is_long() -> None:
    long = {
        name_of(path): lines
        for path in files()
        if path.suffix in (".py", ".sh") and (lines := len(path.read_text(encoding="utf-8").splitlines())) > MOST_LINES
    }
    assert not long


def test_no_name_says_nothing() -> None:
    empty = [name_of(p) for p in files() if p.suffix == ".py" for part in p.parts if NO_NAME.search(Path(part).stem)]
    assert not empty


def test_names_that_say_nothing_are_seen() -> None:
    assert all(NO_NAME.search(name) for name in ("utils", "test_helpers", "lot_manager", "common"))
    assert not any(NO_NAME.search(name) for name in ("managing", "uncommon", "commonplace", "drying"))


@pytest.mark.parametrize("pattern", [A_HOST, A_MACHINE, A_WORD], ids=["registry host", "machine path", "word"])
def test_nothing_names_a_place_of_its_making(pattern: re.Pattern[str]) -> None:
    assert not strangers(pattern)


def test_places_are_seen() -> None:
    assert A_HOST.search("https://files." + "pythonhosted" + ".org/packages")
    assert A_MACHINE.search("see /" + "home/ana/farm")
    assert A_MACHINE.search("'/" + "work/main/x'")
    assert not A_MACHINE.search("farmdesk/work/drying.py and ./home/x")
    assert A_WORD.search("the seed " + "document")
    assert not A_WORD.search("seed of the coffee")


def test_the_checkout_is_read() -> None:
    assert len(texts()) > 50
    assert ROOT / "farmdesk" / "units.py" in texts()
