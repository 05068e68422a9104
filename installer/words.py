"""Gathers every sentence of the program into the files of its translators: `words.py FILE.ts …`.

Qt's lupdate passes over a sentence with facts after it or inside an f-string, and knows nothing of the shipped
tables. So they are found here, and given to it as a plain list that is thrown away again.
"""

from __future__ import annotations

import ast
import subprocess
import sys
import tempfile
import tomllib
from collections.abc import Iterator
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]


def marked(node: ast.AST, owner: str = "") -> Iterator[tuple[str, str]]:
    """Context and sentence of every N_(…) and self.tr(…) below a node; `owner` is the class around it."""
    match node:
        case ast.ClassDef(name=owner):
            pass
        case ast.Call(func=ast.Name(id="N_"), args=[ast.Constant(value=str(context)), ast.Constant(value=str(said))]):
            yield context, said
        case ast.Call(func=ast.Attribute(attr="tr"), args=[ast.Constant(value=str(said))]):
            yield owner, said
    for inner in ast.iter_child_nodes(node):
        yield from marked(inner, owner)


def labels(table: dict[str, object]) -> Iterator[tuple[str, str]]:
    """What a shipped table shows of itself: its own label and note, and the labels of its parts."""
    for key, value in table.items():
        if key in ("label", "note"):
            yield "tables", str(value)
        elif isinstance(value, list):
            yield from (found for part in value if isinstance(part, dict) for found in labels(part))


def gather(into: list[str]) -> None:
    """Bring translation files up to date: new sentences are added unfinished, those that are gone are dropped."""
    said = set()
    for file in (ROOT / "farmdesk").rglob("*.py"):
        said.update(marked(ast.parse(file.read_text(encoding="utf-8"))))
    for file in (ROOT / "resources" / "tables").glob("*.toml"):
        said.update(labels(tomllib.loads(file.read_text(encoding="utf-8"))))
    with tempfile.TemporaryDirectory() as folder:
        plain = Path(folder, "plain.py")
        plain.write_text("".join(f"QT_TRANSLATE_NOOP({c!r}, {s!r})\n" for c, s in sorted(said)), encoding="utf-8")
        lupdate = Path(sys.executable).with_name("pyside6-lupdate")
        options = ["-silent", "-no-obsolete", "-locations", "none"]
        subprocess.run([lupdate, *options, plain, "-ts", *into], check=True, capture_output=True)


if __name__ == "__main__":
    gather(sys.argv[1:])
