"""Weights on paper: heaps from cherry to green, the mill's bar, sieves, and the hill the block lies on.

All to scale; a piece keeps its kilograms in words; what was not measured says so; the unexplained is
always drawn. No pies.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from farmdesk.papers.letters import BOLD, LEAST_PT, SEMIBOLD, fitted, shortened, width
from farmdesk.papers.page import Page
from farmdesk.papers.place import Box, Point, in_rows
from farmdesk.text import N_, Num, Text, Words, kg
from farmdesk.work.stories import BalancePart, Weight

NOT_MEASURED = N_("papers", "not measured")
LABEL_PT, ROW_PT, FIGURE_PT = 10.0, 13.0, 15.0
MILL_BAR_PT = 18.0
DOUBTED = ("estimated", "computed")
NEAR_PT = 84.0  # a label may stand this far from its piece
LEAST_PIECE_PT = 3.0  # the unexplained is never drawn thinner
# shades and patterns of the mill's pieces; husk and water are hatched as in the store and on the beds
GROUNDS = {"light": "#C8C8C8", "small": "#E6E6E6", ">sample": "night"}
PATTERNS = {"peaberry": "expected", ">husk": "resting", ">water": "target", ">unexplained": "doubtful"}


def weight_words(grams: int, words: Words, *, about: bool = False, whole: bool | None = None) -> str:
    """`373 kg`; with one decimal where the weight is under 100 kg and not whole, unless `whole` is said."""
    whole = (abs(grams) >= 100_000 or grams % 1000 == 0) if whole is None else whole
    return words.say(kg(grams, 0 if whole else 1, about))


# heaps


@dataclass(frozen=True)
class Heaps:
    """Weights from stage to stage, laid out for a width [pt]: heap by heap to scale, figures and names below."""

    weights: tuple[tuple[Text, Weight], ...]
    width_pt: float
    words: Words
    final: bool = False  # the last one is what is for sale

    @property
    def column(self) -> float:
        """The width of a column [pt]."""
        return min(self.width_pt / max(len(self.weights), 1), self.width_pt / 4)

    def names(self) -> list[tuple[float, list[str]]]:
        """The stages' names, broken to their columns."""
        return [fitted(self.words.say(name), LABEL_PT, self.column - 8) for name, _ in self.weights]

    def words_height(self) -> float:
        """What the words below the heaps take [pt]."""
        figures = max((len(broken) for _, broken, _ in self.figures()), default=1)
        return 17 + (figures - 1) * FIGURE_PT + max((len(broken) for _, broken in self.names()), default=1) * ROW_PT

    def figures(self) -> list[tuple[float, list[str], str]]:
        """The weights in words, or that one was not measured: size, lines, font."""
        found = []
        for _, weight in self.weights:
            if weight.grams is None:
                said, font = self.words.say(NOT_MEASURED), SEMIBOLD
            else:
                said, font = weight_words(weight.grams, self.words, about=weight.mark in DOUBTED), BOLD
            found.append((*fitted(said, 13, self.column - 6, font), font))
        return found

    def paint(self, page: Page, box: Box) -> None:
        """Paint them into a rectangle as wide as was said."""
        foot = box.bottom - self.words_height()
        most = max((weight.grams or 0 for _, weight in self.weights), default=0) or 1
        figures = self.figures()
        below = foot + 14 + (max(len(broken) for _, broken, _ in figures) - 1) * FIGURE_PT if figures else foot
        columns = zip(self.weights, self.names(), figures, strict=True)
        for i, ((_, weight), (size, name), (fit, figure, font)) in enumerate(columns):
            left = box.left + i * self.column
            last = self.final and i == len(self.weights) - 1
            right = left + self.column - (10 if self.column < 120 else 16)
            if weight.grams is None:
                page.frame(Box(left, foot - 10, right, foot), 0.75, "rule", dash=(2.4, 1.8))
            else:
                heap = Box(left, foot - max(1.0, (foot - box.top) * weight.grams / most), right, foot)
                estimated = weight.mark in DOUBTED
                page.frame(heap, 0.75, "ink", "#303030" if last and not estimated else "paper" if estimated else "band")
                if estimated:
                    page.pattern(heap, "estimated")
            for n, line in enumerate(figure):
                page.text(left, foot + 14 + FIGURE_PT * n, line, fit, font)
            for n, line in enumerate(name):
                page.text(left, below + ROW_PT * (n + 1), line, size, color="ink2")


# the mill


class MillBar:
    """What went to the mill, cut in its pieces in the mill's order, laid out for a width [pt]."""

    def __init__(self, parts: Sequence[BalancePart], width_pt: float, words: Words) -> None:
        self.parts = [part for part in parts if part.grams or part.name == ">unexplained"]
        self.words, self.width = words, width_pt
        whole = all(part.grams % 1000 == 0 for part in self.parts)
        self.said = [
            words.say(
                N_("papers", "{name} {weight}", name=part.label, weight=weight_words(part.grams, words, whole=whole))
            )
            for part in self.parts
        ]
        self.spans = self._spans()
        self.inside = [
            width(said, LABEL_PT, SEMIBOLD) + 12 < b - a for said, (a, b) in zip(self.said, self.spans, strict=True)
        ]
        self.outer = [i for i, fits in enumerate(self.inside) if not fits]
        widths = [width(self.said[i], LABEL_PT) for i in self.outer]
        middles = [sum(self.spans[i]) / 2 - wide / 2 for i, wide in zip(self.outer, widths, strict=True)]
        self.rows = in_rows(middles, widths, 10.0, 0.0, width_pt, NEAR_PT)
        self.height = MILL_BAR_PT + len(self.rows) * ROW_PT + (3 if self.rows else 0)

    def _spans(self) -> list[tuple[float, float]]:
        """Each piece's ends; the unexplained keeps its least width, and the others share what is left."""
        shares = [float(max(part.grams, 0)) for part in self.parts]
        total = sum(shares) or 1.0
        wides = [share / total * self.width for share in shares]
        for i, part in enumerate(self.parts):
            if part.name == ">unexplained" and wides[i] < LEAST_PIECE_PT:
                rest = self.width - wides[i]
                wides = [w * (self.width - LEAST_PIECE_PT) / rest if rest else w for w in wides]
                wides[i] = LEAST_PIECE_PT
        spans, at = [], 0.0
        for wide in wides:
            spans.append((at, min(at + wide, self.width)))
            at += wide
        return spans

    def paint(self, page: Page, left: float, top: float) -> None:
        """Paint it with its upper left corner there [pt]."""
        bottom = top + MILL_BAR_PT
        for i, (part, (a, b)) in enumerate(zip(self.parts, self.spans, strict=True)):
            piece = Box(left + a, top, left + b, bottom)
            page.fill(piece, GROUNDS.get(part.name, "paper"))
            if part.name in PATTERNS:
                page.pattern(piece, PATTERNS[part.name], "rule" if part.name == ">husk" else "ink")
            page.frame(piece, 0.75)
            if self.inside[i]:
                middle, wide = (piece.left + piece.right) / 2, width(self.said[i], LABEL_PT, SEMIBOLD)
                if part.name in PATTERNS:
                    page.fill(Box(middle - wide / 2 - 3, top + 1.5, middle + wide / 2 + 3, bottom - 1.5), "paper")
                page.text(middle, bottom - 5.4, self.said[i], LABEL_PT, SEMIBOLD, align="middle")
        for n, row in enumerate(self.rows):
            for which, edge in row:
                i = self.outer[which]
                y = bottom + 13 + n * ROW_PT
                page.text(left + edge, y, self.said[i], LABEL_PT)
                if n:  # a second row is tied to its piece
                    middle = min(max(left + sum(self.spans[i]) / 2, left + edge), left + self.width)
                    page.upright(middle, bottom, bottom + 3, 0.6, "ink2")


# sieves


def screens_of(screens: Sequence[tuple[Text, int]], words: Words) -> tuple[list[tuple[str, int, str]], str]:
    """Names, grams and words of each sieve (weight and share), and the words of their sum."""
    total = sum(grams for _, grams in screens)
    small = 0 < total < 2000  # a hand sieve's sample is told in grams
    rows = []
    for name, grams in screens:
        weight = Num(grams, "g") if small else kg(grams, 0 if all(g % 1000 == 0 for _, g in screens) else 1)
        share = Num(100 * grams / total if total else 0.0, "%")
        rows.append((words.say(name), grams, words.say(N_("papers", "{weight}   {share}", weight=weight, share=share))))
    return rows, words.say(Num(total, "g") if small else kg(total, 0 if total % 1000 == 0 else 1))


def paint_screens(page: Page, box: Box, screens: Sequence[tuple[Text, int]], words: Words, size: float) -> None:
    """A bar for each sieve, with its weight and its share in words; they share the box's height."""
    rows, _ = screens_of(screens, words)
    if not rows:
        return
    step = min(box.height / len(rows), size * 1.76)
    size = max(LEAST_PT, min(size, step / 1.15))
    name_pt = min(max(width(name, size) for name, _, _ in rows), box.width * 0.45)
    said_pt = max(width(said, size) for _, _, said in rows)
    left = box.left + name_pt + 7
    longest = max(box.right - left - said_pt - 8, 6.0)
    most = max((grams for _, grams, _ in rows), default=1) or 1
    for i, (name, grams, said) in enumerate(rows):
        base = box.top + step * (i + 0.5) + size * 0.34
        page.text(left - 7, base, shortened(name, size, name_pt + 0.1), size, align="right")
        tall = min(size * 0.86, step - 3)
        bar = Box(left, base - size * 0.34 - tall / 2, left + longest * grams / most, base - size * 0.34 + tall / 2)
        page.frame(bar, 0.75, "ink", "#C8C8C8")
        page.text(bar.right + 6, base, said, size)


# the hill


def paint_hill(page: Page, box: Box, hill: Sequence[tuple[str, float, float, bool]], words: Words) -> None:
    """The farm's blocks along its slope by their heights [m], the lot's own in ink; no place is given by it."""
    known = [row for row in hill if row[2] > 0]
    if not known:
        return
    low, high = min(row[1] for row in known), max(row[2] for row in known)
    foot, peak = words.say(Num(low, "m")), words.say(Num(high, "m"))
    left, right = box.left + width(foot, LABEL_PT) + 7, box.right - width(peak, LABEL_PT) - 7
    if right - left < 60:
        return
    span = (high - low) or 1.0

    def at(height_m: float) -> Point:
        share = (height_m - low) / span
        return left + share * (right - left), box.bottom - 3 - share * (box.height - 6)

    page.strokes([(at(low), at(high))], 0.75, "rule")
    for own in (False, True):
        for _, lower, upper, ours in known:
            if ours is own:
                (x0, y0), (x1, y1) = at(lower), at(max(upper, lower + span * 0.02))
                inset = min(1.0 / ((x1 - x0) or 1.0), 0.25)  # a sliver of white between neighbours
                dx, dy = (x1 - x0) * inset, (y1 - y0) * inset
                page.strokes([((x0 + dx, y0 + dy), (x1 - dx, y1 - dy))], *((7.0, "ink") if own else (3.5, "hair")))
    page.text(right + 6, box.top + 6, peak, LABEL_PT, color="ink2")
    page.text(left - 6, box.bottom, foot, LABEL_PT, color="ink2", align="right")
    mine = [row for row in known if row[3]]
    if not mine:
        return
    codes = " ".join(row[0] for row in mine)
    name = N_("papers", "block {code}", code=codes) if len(mine) == 1 else N_("papers", "blocks {codes}", codes=codes)
    x, y = at(max((row[1] + row[2]) / 2 for row in mine))
    said = words.say(name)
    if x - 7 - width(said, LABEL_PT, SEMIBOLD) > box.left - 8:  # else the headline alone says it
        page.text(x - 7, y - 5, said, LABEL_PT, SEMIBOLD, align="right")
