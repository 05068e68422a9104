"""From a figure's numbers to points of the paper or screen, and labels that do not cover one another."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field

from PySide6.QtCore import QPointF, QRectF


@dataclass(frozen=True, slots=True)
class Scale:
    """A rectangle of pixels that shows x from `x_low` to `x_high` and y from `y_low` (below) to `y_high`."""

    box: QRectF
    x_low: float
    x_high: float
    y_low: float
    y_high: float

    def x(self, value: float) -> float:
        """The pixel across of a value."""
        return self.box.left() + (value - self.x_low) / (self.x_high - self.x_low) * self.box.width()

    def y(self, value: float) -> float:
        """The pixel down of a value."""
        return self.box.bottom() - (value - self.y_low) / (self.y_high - self.y_low) * self.box.height()

    def point(self, x: float, y: float) -> QPointF:
        """The pixel of a point."""
        return QPointF(self.x(x), self.y(y))

    def shows(self, x: float) -> bool:
        """Whether a value of x lies in view."""
        return self.x_low <= x <= self.x_high


@dataclass(slots=True)
class Taken:
    """Places on a chart that are written on already."""

    boxes: list[QRectF] = field(default_factory=list)

    def take(self, box: QRectF) -> None:
        """Nothing else may be written here."""
        self.boxes.append(box)

    def place(self, choices: Iterable[QRectF], within: QRectF) -> QRectF | None:
        """The first of these boxes that is free and inside; it is taken. None when there is none."""
        for box in choices:
            if within.contains(box) and not any(box.adjusted(-2, 0, 2, 0).intersects(other) for other in self.boxes):
                self.take(box)
                return box
        return None


def around(at: QPointF, width_px: float, height_px: float, away_px: float = 7) -> list[QRectF]:
    """Where a label may stand beside a point: right above, above, right, left above, below right, below, left below."""
    x, y = at.x(), at.y()
    up, down = y - away_px - height_px, y + away_px
    right, left, middle = x + away_px, x - away_px - width_px, x - width_px / 2
    spots = (
        (right, up),
        (middle, up),
        (right, y - height_px / 2),
        (left, up),
        (right, down),
        (middle, down),
        (left, down),
    )
    return [QRectF(a, b, width_px, height_px) for a, b in spots]


def apart(wanted: list[float], widths: list[float], gap_px: float, low_px: float, high_px: float) -> list[float]:
    """Left edges for boxes that would stand centred on `wanted` (in order), moved apart so that none overlap.

    They stay between `low_px` and `high_px` as far as there is room.
    """
    edges = [at - width / 2 for at, width in zip(wanted, widths, strict=True)]
    for i in range(1, len(edges)):
        edges[i] = max(edges[i], edges[i - 1] + widths[i - 1] + gap_px)
    if edges and (over := edges[-1] + widths[-1] - high_px) > 0:
        edges[-1] -= over
        for i in range(len(edges) - 2, -1, -1):
            edges[i] = min(edges[i], edges[i + 1] - widths[i] - gap_px)
    if edges and edges[0] < low_px:
        edges[0] = low_px
        for i in range(1, len(edges)):
            edges[i] = max(edges[i], edges[i - 1] + widths[i - 1] + gap_px)
    return edges
