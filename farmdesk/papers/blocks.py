"""Words on a sheet that take as much room as they need: headings, rows of facts, paragraphs.

Each is laid out first, so that its height is known, and painted afterwards. Where a sheet is too small
for all of them, lines are left out at the end and their number is written: nothing goes silently.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from farmdesk.papers.letters import LEADING, LEAST_PT, SANS, SEMIBOLD, SERIF, SERIF_SEMIBOLD, lines, width
from farmdesk.papers.page import Page
from farmdesk.text import N_, Words

HEAD_PT, SUB_PT = 13.5, 10.5
WIDER_FRAC = 0.4  # of the letters' size: further apart, rows fall to pieces
HEAD_FRAC = 0.36  # of a column, at most, for the heads of its rows


@dataclass(frozen=True)
class Heading:
    """A heading with what is said beside it, or below it where there is no room beside."""

    title: str
    beside: str
    width_pt: float

    @property
    def _after(self) -> float:
        return width(self.title, HEAD_PT, SERIF_SEMIBOLD) + 8

    @property
    def _fits(self) -> bool:
        return self._after + width(self.beside, SUB_PT) <= self.width_pt

    def _lines(self) -> list[str]:
        return [self.beside] if self._fits else lines(self.beside, LEAST_PT, self.width_pt)

    @property
    def height(self) -> float:
        """What it takes [pt], with the space below it."""
        titles = lines(self.title, HEAD_PT, self.width_pt, SERIF_SEMIBOLD)
        below = 0 if self._fits or not self.beside else len(self._lines())
        return 18.0 * len(titles) + below * LEAST_PT * LEADING + 2

    def paint(self, page: Page, left: float, top: float) -> None:
        """Paint it with its upper left corner there [pt]."""
        y = top + 12.5
        for line in lines(self.title, HEAD_PT, self.width_pt, SERIF_SEMIBOLD):
            page.text(left, y, line, HEAD_PT, SERIF_SEMIBOLD)
            y += 18
        if self._fits:
            page.text(left + self._after, y - 18, self.beside, SUB_PT, color="ink2")
            return
        y -= 18 - LEAST_PT * LEADING
        for line in self._lines():
            page.text(left, y, line, LEAST_PT, color="ink2")
            y += LEAST_PT * LEADING


@dataclass(frozen=True)
class Row:
    """One row of facts as it is broken; `missing` is written in the second ink."""

    head: tuple[str, ...]
    fact: tuple[str, ...]
    missing: bool = False

    @property
    def lines_n(self) -> int:
        """How many lines it takes."""
        return max(len(self.head), len(self.fact), 1)


@dataclass(frozen=True)
class Rows:
    """Rows of facts in a column: heads, and behind them the facts, all at one size [pt]."""

    rows: tuple[Row, ...]
    head_pt: float
    size: float
    left_out: str = ""

    @property
    def lines_n(self) -> int:
        """How many lines they take."""
        return sum(row.lines_n for row in self.rows) + (1 if self.left_out else 0)

    @property
    def height(self) -> float:
        """What they take [pt]."""
        return self.lines_n * self.leading

    @property
    def leading(self) -> float:
        """From one line to the next [pt]."""
        return self.size * 1.36

    def paint(self, page: Page, left: float, top: float, room_pt: float = 0.0) -> None:
        """Paint them with their upper left corner there [pt]; in more room [pt] the rows stand wider apart."""
        step, count = self.leading, max(len(self.rows), 1)
        apart = min(max((room_pt - self.height) / count, 0.0), self.size * WIDER_FRAC)
        y = top + (step + apart) * 0.5 + self.size * 0.34
        for row in self.rows:
            for n, line in enumerate(row.head):
                page.text(left, y + n * step, line, self.size, SEMIBOLD)
            for n, line in enumerate(row.fact):
                color = "ink2" if row.missing else "ink"
                page.text(left + self.head_pt, y + n * step, line, self.size, color=color)
            y += step * row.lines_n + apart
        if self.left_out:
            page.text(left, y, self.left_out, self.size, color="ink2")


def facts(
    rows: Sequence[tuple[str, str | None]], width_pt: float, size: float, words: Words, missing: str,
    most_n: int | None = None,
) -> Rows:  # fmt: skip
    """Heads and facts broken to a column of a width [pt] at a size [pt]; in at most `most_n` lines."""
    widest = max((width(head, size, SEMIBOLD) for head, _ in rows), default=0.0)
    head_pt = min(widest, width_pt * HEAD_FRAC) + 8
    broken = [
        Row(
            tuple(lines(head, size, head_pt - 7.9, SEMIBOLD)),
            tuple(lines(missing if fact is None else fact, size, width_pt - head_pt)),
            fact is None,
        )
        for head, fact in rows
    ]
    if most_n is None or sum(row.lines_n for row in broken) <= most_n:
        return Rows(tuple(broken), head_pt, size)
    kept: list[Row] = []
    for row in broken:
        if sum(r.lines_n for r in kept) + row.lines_n + 1 > most_n:
            break
        kept.append(row)
    return Rows(tuple(kept), head_pt, size, more(len(broken) - len(kept), words))


def more(count: int, words: Words) -> str:
    """What stands in place of lines that the sheet has no room for."""
    return words.say(N_("papers", "and {n} more in the notebook", n=count))


def paragraph(
    sentences: Sequence[str], width_pt: float, size: float, words: Words, most_n: int | None = None, font: str = SERIF
) -> list[str]:
    """Sentences as one paragraph, broken to a width [pt] at a size [pt]; in at most `most_n` lines."""
    broken = lines(" ".join(sentences), size, width_pt, font)
    if most_n is None or len(broken) <= most_n:
        return broken
    for kept in range(len(sentences) - 1, -1, -1):
        said = more(len(sentences) - kept, words)
        broken = lines(" ".join([*sentences[:kept], f"({said})"]), size, width_pt, font)
        if len(broken) <= most_n:
            break
    return broken


def paint_lines(
    page: Page, left: float, top: float, broken: Sequence[str], size: float, font: str = SANS, color: str = "ink"
) -> float:
    """Paint lines below a height [pt]; gives the height below the last one."""
    for line in broken:
        page.text(left, top + size * 1.02, line, size, font, color)
        top += size * LEADING
    return top
