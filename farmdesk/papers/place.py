"""Rectangles of a sheet [pt, y downwards], a chart's scale, and labels that do not cover one another."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

Point = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Box:
    """A rectangle by its edges [pt]; `top` is the smaller y."""

    left: float
    top: float
    right: float
    bottom: float

    @property
    def width(self) -> float:
        """How wide [pt]."""
        return self.right - self.left

    @property
    def height(self) -> float:
        """How high [pt]."""
        return self.bottom - self.top

    def holds(self, other: Box) -> bool:
        """Whether another box lies inside, to a tenth of a point."""
        return (
            other.left >= self.left - 0.1
            and other.right <= self.right + 0.1
            and other.top >= self.top - 0.1
            and other.bottom <= self.bottom + 0.1
        )

    def meets(self, other: Box) -> bool:
        """Whether another box covers any of this one."""
        return (
            self.left < other.right and other.left < self.right and self.top < other.bottom and other.top < self.bottom
        )


@dataclass(frozen=True, slots=True)
class Scale:
    """A box that shows x from `x_low` to `x_high` and y from `y_low` (below) to `y_high`."""

    box: Box
    x_low: float
    x_high: float
    y_low: float
    y_high: float

    def x(self, value: float) -> float:
        """Where a value of x stands across [pt]."""
        return self.box.left + (value - self.x_low) / ((self.x_high - self.x_low) or 1.0) * self.box.width

    def y(self, value: float) -> float:
        """Where a value of y stands down [pt]."""
        return self.box.bottom - (value - self.y_low) / ((self.y_high - self.y_low) or 1.0) * self.box.height

    def at(self, x: float, y: float) -> Point:
        """Where a point stands, kept inside the box."""
        return min(max(self.x(x), self.box.left), self.box.right), min(max(self.y(y), self.box.top), self.box.bottom)

    def shows(self, x: float) -> bool:
        """Whether a value of x lies in view."""
        return self.x_low <= x <= self.x_high


@dataclass(slots=True)
class Taken:
    """Places that are written on already."""

    boxes: list[Box] = field(default_factory=list)

    def take(self, box: Box) -> None:
        """Nothing else may be written here."""
        self.boxes.append(box)

    def place(self, choices: Iterable[Box], within: Box) -> Box | None:
        """The first of these boxes that is free and inside; it is taken. None when there is none."""
        for box in choices:
            if within.holds(box) and not any(box.meets(other) for other in self.boxes):
                self.take(box)
                return box
        return None


def around(at: Point, width_pt: float, height_pt: float, away_pt: float = 5.0) -> list[Box]:
    """Where a label may stand beside a point: above and right of it first, then all about it."""
    x, y = at
    up, down = y - away_pt - height_pt, y + away_pt
    right, left, middle = x + away_pt, x - away_pt - width_pt, x - width_pt / 2
    spots = (
        (right, up), (middle, up), (right, y - height_pt / 2), (left, up),
        (right, down), (middle, down), (left, down), (left, y - height_pt / 2),
    )  # fmt: skip
    return [Box(a, b, a + width_pt, b + height_pt) for a, b in spots]


def apart(
    wanted: Sequence[float], widths: Sequence[float], gap_pt: float, low_pt: float, high_pt: float
) -> list[float]:
    """Left edges [pt] for labels that would begin at `wanted` (in order), moved so that none overlap.

    They stay between `low_pt` and `high_pt` as far as there is room.
    """
    edges = list(wanted)
    limit = high_pt
    for i in range(len(edges) - 1, -1, -1):
        edges[i] = min(edges[i], limit - widths[i])
        limit = edges[i] - gap_pt
    limit = low_pt
    for i in range(len(edges)):
        edges[i] = max(edges[i], limit)
        limit = edges[i] + widths[i] + gap_pt
    return edges


def in_rows(
    wanted: Sequence[float], widths: Sequence[float], gap_pt: float, low_pt: float, high_pt: float, near_pt: float
) -> list[list[tuple[int, float]]]:
    """Labels set in as few rows as keep each within `near_pt` of where it would begin: (which, left edge [pt]).

    Where no number of rows does, each label has a row of its own.
    """
    for rows_n in range(1, len(wanted) + 1):
        rows = []
        for first in range(rows_n):
            which = range(first, len(wanted), rows_n)
            edges = apart([wanted[i] for i in which], [widths[i] for i in which], gap_pt, low_pt, high_pt)
            rows.append(list(zip(which, edges, strict=True)))
        spots = [(i, edge) for row in rows for i, edge in row]
        fits = all(edge >= low_pt - 0.1 and edge + widths[i] <= high_pt + 0.1 for i, edge in spots)
        close = all(abs(edge - min(max(wanted[i], low_pt), high_pt - widths[i])) <= near_pt for i, edge in spots)
        if fits and close:
            break
    return rows if wanted else []
