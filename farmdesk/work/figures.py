"""A chart described once, as data; the screen and the paper each paint it.

Arrays are float64; instants are UTC seconds; moisture is percent wet basis here, because a figure is what
is shown. Nothing in a figure knows a colour.
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from farmdesk.text import Text

Floats = NDArray[np.float64]

# what a curve's points are: drawn the same on screen and paper
TRAY, METER, ANCHOR, HAND, LOGGER, RAW, USUAL = "tray", "meter", "anchor", "hand", "logger", "raw", "usual"
LOT = "lot"  # one of several lots over one another: a line of its own style, named at its end


def nothing() -> Floats:
    """An empty column."""
    return np.empty(0)


@dataclass(frozen=True, eq=False)
class Curve:
    """Points in order of x. `role`: tray (hollow square, line), meter (dot with spread bar), anchor
    (triangle), hand (dot, line), logger (hollow dot or plain line), raw (struck value, small cross), usual
    (dashed), lot (a line in the n-th `style`, named at its end). NaN in y breaks the line: a gap is a gap. `low`,
    `high` are spread bars. `place` names the portion.
    """

    role: str
    x: Floats
    y: Floats
    name: Text | None = None
    low: Floats = field(default_factory=nothing)
    high: Floats = field(default_factory=nothing)
    doubtful: bool = False
    labelled: bool = False
    place: str = ""
    style: int = 0


@dataclass(frozen=True)
class Band:
    """A stretch of x (`along="x"`) or of y: `night`, `target`, `gap`, `estimated`, with its words."""

    kind: str
    low: float
    high: float
    along: str = "y"
    text: Text | None = None


@dataclass(frozen=True)
class Flag:
    """A day or hour flagged ahead; the likely one is heavier."""

    x: float
    text: Text
    likely: bool = False


@dataclass(frozen=True, eq=False)
class Fan:
    """What may come: low, middle and high y over x."""

    x: Floats
    low: Floats
    mid: Floats
    high: Floats


@dataclass(frozen=True, eq=False)
class Figure:
    """One chart. `x_kind`: time, good_h (good drying hours), or since the beginning days, hours, h20 (at 20 °C).

    `target` is a dashed level with its words; `stages` name stretches of y at the right edge; `rain` are
    (from, to, mm) blocks on the axis; `under` is a second, smaller chart on the same x. `marks` are
    instants with words (opened, washed, wetted). `sentence` says the chart in words.
    """

    title: Text
    sentence: Text
    x_kind: str
    y_unit: str
    x_low: float
    x_high: float
    y_low: float
    y_high: float
    curves: tuple[Curve, ...] = ()
    bands: tuple[Band, ...] = ()
    flags: tuple[Flag, ...] = ()
    marks: tuple[Flag, ...] = ()
    fan: Fan | None = None
    target: tuple[float, Text] | None = None
    stages: tuple[tuple[float, float, Text], ...] = ()
    rain: tuple[tuple[float, float, float], ...] = ()
    subtitle: Text | None = None
    rests_on: Text | None = None
    under: Figure | None = None
    y_decimals: int = 0
