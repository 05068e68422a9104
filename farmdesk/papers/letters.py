"""The letters of the papers: Source Sans counts, Source Serif speaks. Both travel inside every PDF.

A font file is read once for the whole run of the program; each document takes along only the signs it
shows. Nothing on a paper is smaller than `LEAST_PT`.
"""

from __future__ import annotations

import unicodedata
from functools import lru_cache

from reportlab import rl_config
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont

from farmdesk import paths

SANS, SEMIBOLD, BOLD = "SourceSans3-Regular", "SourceSans3-Semibold", "SourceSans3-Bold"
SERIF, SERIF_SEMIBOLD, ITALIC = "SourceSerif4SmText-Regular", "SourceSerif4SmText-Semibold", "SourceSerif4SmText-It"
DISPLAY = "SourceSerif4Display-Semibold"
LEAST_PT = 9.5
LEADING = 4 / 3
STEP_PT = 0.5

UNKNOWN = "?"  # stands where a name has a sign that no font here can draw


@lru_cache(maxsize=1)
def load() -> None:
    """Read the font files, once."""
    vars(rl_config)["useA85"] = 0  # streams stay binary: a fifth smaller, and a quarter of the time of a sheet saved
    for name in (SANS, SEMIBOLD, BOLD, SERIF, SERIF_SEMIBOLD, ITALIC, DISPLAY):
        # ASCII need not be readable in the file, and then only the signs shown are carried along
        pdfmetrics.registerFont(TTFont(name, str(paths.resource("fonts", f"{name}.ttf")), asciiReadable=0))


@lru_cache(maxsize=8)
def signs(font: str) -> frozenset[str]:
    """Every sign a font can draw."""
    load()
    return frozenset(map(chr, pdfmetrics.getFont(font).face.charToGlyph))


@lru_cache(maxsize=8192)
def clean(text: str, font: str = SANS) -> str:
    """A text as the font can draw it: accents joined to their letters, line ends and tabs as one space.

    A sign the font lacks becomes `?`, so that a name never silently loses a letter.
    """
    if text.isascii() and text.isprintable():
        return text
    known = signs(font)
    found = []
    for sign in unicodedata.normalize("NFC", text):
        kind = unicodedata.category(sign)
        if kind in ("Cc", "Zl", "Zp"):
            found.append(" ")
        elif kind != "Cf":  # joiners and marks of direction are never drawn
            found.append(sign if sign in known else UNKNOWN)
    return "".join(found)


@lru_cache(maxsize=16384)
def _unit(text: str, font: str) -> float:
    load()
    return float(pdfmetrics.stringWidth(text, font, 1.0))


def width(text: str, size_pt: float, font: str = SANS) -> float:
    """How wide a text is [pt] at a size [pt]."""
    return _unit(clean(text, font), font) * size_pt


def lines(text: str, size_pt: float, width_pt: float, font: str = SANS) -> list[str]:
    """A text broken between words to a width [pt]; a word that is wider alone is broken inside."""
    room = max(width_pt, 1.0) / size_pt
    words = [piece for word in clean(text, font).split(" ") if word for piece in _pieces(word, font, room)]
    space = _unit(" ", font)
    broken: list[str] = []
    line: list[str] = []
    used = 0.0
    for word in words:
        wide = _unit(word, font)
        if line and used + space + wide > room:
            broken.append(" ".join(line))
            line, used = [], 0.0
        used += wide + (space if line else 0.0)
        line.append(word)
    return [*broken, " ".join(line)] if line else broken


def _pieces(word: str, font: str, room: float) -> list[str]:
    if _unit(word, font) <= room:
        return [word]
    found, piece = [], ""
    for sign in word:
        if piece and _unit(piece + sign, font) > room:
            found.append(piece)
            piece = ""
        piece += sign
    return [*found, piece]


def shortened(text: str, size_pt: float, width_pt: float, font: str = SANS) -> str:
    """A text in one line of a width [pt] at a size [pt]; where it is longer its end is seen to be missing (…)."""
    if width(text, size_pt, font) <= width_pt:
        return text
    return lines(text, size_pt, width_pt - width("…", size_pt, font), font)[0] + "…"


def fitted(
    text: str, size_pt: float, width_pt: float, font: str = SANS, *, most_n: int = 1, least_pt: float = LEAST_PT
) -> tuple[float, list[str]]:
    """A text in at most `most_n` lines of a width [pt]: smaller letters first, down to `least_pt`; then more lines.

    Gives the size [pt] and the lines; nothing is ever cut.
    """
    size = size_pt
    while True:
        broken = lines(text, size, width_pt, font)
        if len(broken) <= most_n or size <= least_pt:
            return size, broken
        size = max(least_pt, size - STEP_PT)
