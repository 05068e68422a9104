"""The floors hold: imports only go down, each library has one room, and everything imported is declared."""

from __future__ import annotations

import ast
import re
import sys
import tomllib
from importlib.metadata import packages_distributions
from pathlib import Path

import pytest
from importlinter.cli import lint_imports

from tests.house.tree import ROOT, name_of, python, syntax

PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))


def plain(name: str) -> str:
    """A package's name as registries compare it."""
    return re.sub(r"[-_.]+", "-", name).lower()


def named(requirements: list[str]) -> set[str]:
    """The packages that requirements name."""
    return {plain(re.split(r"[^\w.-]", requirement, maxsplit=1)[0]) for requirement in requirements}


def imported(path: Path) -> set[str]:
    """Top-level names of the modules a file imports."""
    found = set()
    for node in ast.walk(syntax(path)):
        if isinstance(node, ast.Import):
            found |= {alias.name.split(".")[0] for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and node.module:
            found.add(node.module.split(".")[0])
    return found


def undeclared(paths: list[Path], declared: set[str]) -> list[str]:
    """Imports whose package is not in the list."""
    owners = packages_distributions()
    ours = {"farmdesk", "tests", "demo_data", "installer"} | set(sys.stdlib_module_names)
    return [
        f"{name_of(path)} imports {module}"
        for path in paths
        for module in sorted(imported(path) - ours)
        if not declared & {plain(owner) for owner in owners.get(module, [module])}
    ]


def test_imports_only_go_down(capsys: pytest.CaptureFixture[str]) -> None:
    status = lint_imports(config_filename=str(ROOT / "pyproject.toml"), no_cache=True)
    assert status == 0, capsys.readouterr().out


def test_what_the_program_imports_is_declared() -> None:
    assert not undeclared(python("farmdesk"), named(PROJECT["project"]["dependencies"]) | {"shiboken6"})


def test_what_the_tests_import_is_declared() -> None:
    project = PROJECT["project"]
    declared = named([*project["dependencies"], *project["optional-dependencies"]["check"]])
    assert not undeclared(python("tests", "demo_data", "installer"), declared | {"shiboken6"})
