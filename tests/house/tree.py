"""The checkout as the house tests see it: the files git knows (or would take in), and the sources as syntax trees."""

from __future__ import annotations

import ast
import re
import shutil
import subprocess
from collections.abc import Iterator
from functools import cache
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
LEFT_OUT = re.compile(
    r"(^|/)(\.git|\.venv|__pycache__|dist|build|\.[a-z_]+_cache|\.hypothesis|[^/]+\.egg-info)(/|$)|\.pyc$"
)


@cache
def files() -> tuple[Path, ...]:
    """Every file of the project, without what git ignores; an unpacked archive without git is walked."""
    if (ROOT / ".git").exists() and shutil.which("git"):
        listed = subprocess.run(
            ["git", "-C", str(ROOT), "ls-files", "-z", "--cached", "--others", "--exclude-standard"],
            capture_output=True,
            text=True,
            check=True,
        ).stdout.split("\0")
        return tuple(sorted(path for name in set(listed) if name and (path := ROOT / name).is_file()))
    walked = (path for path in ROOT.rglob("*") if path.is_file())
    return tuple(sorted(path for path in walked if not LEFT_OUT.search(name_of(path))))


def name_of(path: Path) -> str:
    """The path as the project writes it."""
    return path.relative_to(ROOT).as_posix()


def python(*under: str) -> list[Path]:
    """The Python files below these folders, all of them when none is named."""
    return [
        p for p in files() if p.suffix == ".py" and (not under or name_of(p).startswith(tuple(f"{u}/" for u in under)))
    ]


@cache
def syntax(path: Path) -> ast.Module:
    """One file's syntax tree."""
    return ast.parse(path.read_text(encoding="utf-8"), str(path))


def public(path: Path) -> Iterator[tuple[str, ast.FunctionDef | ast.ClassDef]]:
    """Public functions, classes and methods of one file, by their dotted name."""
    for node in syntax(path).body:
        if isinstance(node, ast.FunctionDef | ast.ClassDef) and not node.name.startswith("_"):
            yield node.name, node
            if isinstance(node, ast.ClassDef):
                for inner in node.body:
                    if isinstance(inner, ast.FunctionDef) and not inner.name.startswith("_"):
                        yield f"{node.name}.{inner.name}", inner
