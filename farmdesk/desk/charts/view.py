"""One panel of a chart as it stands, and a pen to draw on it."""

from __future__ import annotations

from dataclasses import dataclass, field

from PySide6.QtGui import QPainter

from farmdesk.desk.charts.scale import Scale, Taken
from farmdesk.desk.theme import look
from farmdesk.desk.widgets.ink import Ink
from farmdesk.text import Words
from farmdesk.work.figures import Figure
from farmdesk.work.ticks import Tick


class On(Ink):
    """Ink on a painter that somebody else began and will end."""

    def __init__(self, painter: QPainter) -> None:
        self.look = look()
        self.painter = painter
        self.ratio = painter.device().devicePixelRatioF()

    def __enter__(self) -> On:
        return self

    def __exit__(self, *_: object) -> None:
        pass


@dataclass(slots=True)
class View:
    """One panel as it stands: the figure, its scale, the marks of its axes. `second`: it hangs under another."""

    figure: Figure
    scale: Scale
    x_ticks: list[Tick]
    y_ticks: list[Tick]
    words: Words
    second: bool = False
    taken: Taken = field(default_factory=Taken)
