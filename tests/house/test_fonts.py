"""The fonts have every sign that a screen or a sheet can show, so that no other font slips in."""

from __future__ import annotations

import ast
import re
import unicodedata
from functools import cache
from pathlib import Path
from xml.etree import ElementTree

import pytest
from reportlab.pdfbase.ttfonts import TTFontFile

from tests.house.tree import ROOT, files, name_of, python, syntax

FONTS = ROOT / "resources" / "fonts"
SANS = sorted(FONTS.glob("SourceSans3-*.ttf"))
SERIF = sorted(FONTS.glob("SourceSerif4*.ttf"))
NOT_DRAWN = re.compile(r"[\s\u200b\ufeff]")


@cache
def signs_of(font: Path) -> frozenset[str]:
    """Every character a font file can draw."""
    return frozenset(map(chr, TTFontFile(str(font), charInfo=1).charToGlyph))


def drawn(text: str) -> set[str]:
    """The characters of a text that leave ink, without control characters."""
    return {c for c in NOT_DRAWN.sub("", text) if unicodedata.category(c) not in ("Cc", "Cn", "Co")}


def literals(path: Path) -> str:
    """All string literals of a file but its docstrings."""
    docs = {
        id(node.body[0].value)
        for node in ast.walk(syntax(path))
        if isinstance(node, ast.Module | ast.ClassDef | ast.FunctionDef)
        and node.body
        and isinstance(node.body[0], ast.Expr)
    }
    return "".join(
        node.value
        for node in ast.walk(syntax(path))
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in docs
    )


def sentences() -> dict[str, str]:
    """What the program says: the templates marked for translation, and their translations."""
    said = {}
    for path in python("farmdesk"):
        calls = (node for node in ast.walk(syntax(path)) if isinstance(node, ast.Call))
        said[name_of(path)] = "".join(
            part.value
            for call in calls
            if ast.unparse(call.func).split(".")[-1] in ("N_", "tr", "translate")
            for part in call.args
            if isinstance(part, ast.Constant) and isinstance(part.value, str)
        )
    for path in files():
        if path.suffix == ".ts":
            said[name_of(path)] = "".join(ElementTree.parse(path).getroot().itertext())
    return said


def shown() -> dict[str, str]:
    """All that can come to stand on a screen or a sheet, the sentences among it."""
    tables = [path for path in files() if name_of(path).startswith(("resources/", "demo_data/"))]
    texts = [p for p in tables if p.suffix in (".csv", ".md", ".toml", ".json", ".txt") and "licences" not in p.parts]
    return {name_of(path): literals(path) for path in python("farmdesk")} | {
        name_of(path): path.read_text(encoding="utf-8") for path in texts if path.parent != FONTS
    }


@pytest.mark.parametrize("font", SANS, ids=lambda font: font.stem)
def test_the_sans_has_every_sign(font: Path) -> None:
    lacking = {where: sorted(left) for where, text in shown().items() if (left := drawn(text) - signs_of(font))}
    assert not lacking


@pytest.mark.parametrize("font", [*SANS, *SERIF], ids=lambda font: font.stem)
def test_both_families_can_say_every_sentence(font: Path) -> None:
    lacking = {where: sorted(left) for where, text in sentences().items() if (left := drawn(text) - signs_of(font))}
    assert not lacking


def test_figures_of_the_sans_have_one_width() -> None:
    for font in SANS:
        face = TTFontFile(str(font), charInfo=1)
        assert len({face.charWidths[ord(figure)] for figure in "0123456789"}) == 1, font.name


def test_a_sign_that_is_lacking_is_seen() -> None:
    assert drawn("a □\n") - signs_of(SERIF[0]) == {"□"}
    assert not drawn("≈ 12 °C – ½ ñ ¿") - signs_of(SANS[0])
