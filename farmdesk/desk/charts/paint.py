"""The one place that knows pyqtgraph: it draws a figure's curves, scrolls and zooms them.

A `Plot` is made once a page and shows one figure after another. Arrays are float64 (dates or frames of
pandas crash pyqtgraph); curves are kept and given new data; a long logger file is thinned to its peaks and
cut to what is in view. Everything that is no curve is painted by `marks`.
"""

from __future__ import annotations

from itertools import zip_longest
from typing import cast

import numpy as np
import pyqtgraph as pg
from pyqtgraph.GraphicsScene.mouseEvents import MouseClickEvent, MouseDragEvent
from PySide6.QtCore import QRect, QRectF, Qt
from PySide6.QtGui import QMouseEvent, QPainter, QPen, QWheelEvent
from PySide6.QtWidgets import QGraphicsGridLayout, QGraphicsSceneWheelEvent, QGraphicsView, QWidget

from farmdesk.clock import FarmTime
from farmdesk.desk.charts import marks
from farmdesk.desk.charts.scale import Scale
from farmdesk.desk.charts.view import On, View
from farmdesk.desk.theme import look
from farmdesk.text import ENGLISH, Words
from farmdesk.work.figures import Curve, Figure
from farmdesk.work.ticks import Tick, number_ticks, time_ticks

UPPER_SHARE, LOWER_SHARE = 62, 38  # of the height, where a second chart hangs under the first
PAN_FRAC, ZOOM_FACTOR = 0.1, 1.25
AFTER_FLAGS_FRAC = 0.15
CLOSEST_FRAC = 0.005  # no closer than a two-hundredth of the whole


class FarmAxis(pg.AxisItem):
    """An axis that counts in the farm's own time, or in plain numbers, in the reader's words."""

    def __init__(self, side: str) -> None:
        super().__init__(side, showValues=True)
        self.kind = "number"
        self.time, self.words = FarmTime("UTC"), ENGLISH
        self._labels: dict[float, str] = {}
        self.enableAutoSIPrefix(False)

    def speak(self, kind: str, time: FarmTime, words: Words) -> None:
        """Count `time`, or `number`, for this farm and this reader."""
        self.kind, self.time, self.words = kind, time, words
        self.picture = None
        self.update()

    def ticks(self, low: float, high: float, size_px: float) -> list[Tick]:
        """The marks between two values on so many pixels."""
        px = look().px
        if self.kind == "time":
            return time_ticks(self.time, self.words, low, high, max(2, int(size_px / px(52))))
        across = self.orientation == "bottom"
        return number_ticks(self.words, low, high, max(2, int(size_px / px(44 if across else 30))), whole=across)

    def tickValues(self, low: float, high: float, size: float) -> list[tuple[float, list[float]]]:
        found = self.ticks(low, high, size)
        self._labels = dict(found)
        return [(1.0, [at for at, _ in found])]

    def tickStrings(self, values: list[float], scale: float, spacing: float) -> list[str]:
        return [self._labels.get(value, "") for value in values]

    # The stock axis would stretch its own scale by wheel and drag; here x alone is moved, by the chart itself.
    def wheelEvent(self, event: QGraphicsSceneWheelEvent) -> None:
        event.ignore()

    def mouseDragEvent(self, event: MouseDragEvent) -> None:
        event.ignore()

    def mouseClickEvent(self, event: MouseClickEvent) -> None:
        event.ignore()


class _Box(pg.ViewBox):
    """Wheel and drag move x only."""

    def __init__(self, plot: Plot) -> None:
        super().__init__(enableMenu=False)
        self._plot = plot
        self.setMouseEnabled(x=True, y=False)
        self.disableAutoRange()

    def mouseDragEvent(self, event: MouseDragEvent, axis: int | None = None) -> None:
        self._plot.moved = True
        super().mouseDragEvent(event, axis)


class _Panel:
    """One plot with its kept curves."""

    def __init__(self, plot: Plot, second: bool) -> None:
        self.second = second
        self.figure: Figure | None = None
        self.bottom, self.left = FarmAxis("bottom"), FarmAxis("left")
        self.box = _Box(plot)
        self.item = pg.PlotItem(viewBox=self.box, axisItems={"bottom": self.bottom, "left": self.left})
        self.item.setMenuEnabled(False)
        self.item.hideButtons()
        self.item.setDownsampling(auto=True, mode="peak")
        self.item.setClipToView(True)
        self.curves: list[pg.PlotDataItem] = []

    def show(self, figure: Figure | None, time: FarmTime, words: Words) -> None:
        """Give the kept curves their data; make more only where a figure has more than any before it."""
        self.figure = figure
        self.item.setVisible(figure is not None)
        if self.second:
            self.item.setMaximumHeight(16_777_215 if figure is not None else 0)
        lines = self._lines(figure) if figure else []
        while len(self.curves) < len(lines):
            curve = pg.PlotDataItem(connect="finite", antialias=True)
            self.item.addItem(curve)
            self.curves.append(curve)
        for curve, line in zip_longest(self.curves, lines):
            if line is None:
                curve.setData([], [])
                continue
            x, y, pen = line
            curve.setData(x, y, pen=pen)
        if figure is not None:
            self.bottom.speak("time" if figure.x_kind == "time" else "number", time, words)
            self.left.speak("number", time, words)
            self.box.setYRange(figure.y_low, figure.y_high, padding=0)

    def _lines(self, figure: Figure) -> list[tuple[np.ndarray, np.ndarray, QPen]]:
        curves = list(figure.curves)
        if figure.fan is not None:
            curves.append(Curve("usual", figure.fan.x, figure.fan.mid))
        found = []
        for curve in curves:
            pen = marks.line_pen(curve.role, second=self.second, style=curve.style)
            if pen is not None and curve.x.size:
                found.append((curve.x.astype(np.float64, copy=False), curve.y.astype(np.float64, copy=False), pen))
        return found

    def wear(self, last: bool) -> None:
        """Colours, type and room of the axes; only the last panel writes its x."""
        own = look()
        for axis in (self.bottom, self.left):
            axis.setTickFont(own.font(13))
            axis.setTextPen(own["ink2"])
            axis.setStyle(tickLength=own.px(5) if axis is self.bottom else 0, tickTextOffset=own.px(4))
            axis.setStyle(hideOverlappingLabels=False)  # the first day keeps its month
            axis.setPen(QPen(own["rule"], 1))
        self.left.setPen(QPen(Qt.PenStyle.NoPen))
        self.left.setStyle(tickAlpha=0)
        self.left.setWidth(own.px(36))
        self.bottom.setStyle(showValues=last)
        self.bottom.setHeight(own.px(24) if last else own.px(6))

    def view(self, words: Words) -> View | None:
        """What `marks` needs to know of this panel as it stands."""
        rect: QRectF = self.box.sceneBoundingRect()
        if self.figure is None or rect.width() < 2 or rect.height() < 2:
            return None
        (x_low, x_high), (y_low, y_high) = self.box.viewRange()
        scale = Scale(rect, x_low, x_high, y_low, y_high)
        x_ticks = self.bottom.ticks(x_low, x_high, rect.width())
        y_ticks = self.left.ticks(y_low, y_high, rect.height())
        return View(self.figure, scale, x_ticks, y_ticks, words, self.second)


class Plot(pg.GraphicsView):
    """A figure on the screen. `moved`: somebody has scrolled or zoomed, so new data leave the view alone."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent, background=None)
        self.setCacheMode(QGraphicsView.CacheModeFlag.CacheNone)  # the ground moves with the curves
        self.setViewportUpdateMode(QGraphicsView.ViewportUpdateMode.FullViewportUpdate)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.moved = self.ringed = False
        self.asked: tuple[float, float] | None = None
        self.words, self.time = ENGLISH, FarmTime("UTC")
        self._views: list[View] = []
        self.upper, self.under = _Panel(self, False), _Panel(self, True)
        self.grid = pg.GraphicsLayout()
        self.grid.setContentsMargins(0, 0, 0, 0)
        self.grid.setSpacing(0)
        self.grid.addItem(self.upper.item, 0, 0)
        self.grid.addItem(self.under.item, 1, 0)
        self.under.box.setXLink(self.upper.box)
        self.setCentralItem(self.grid)
        self.upper.box.sigRangeChanged.connect(self._ranged)
        self.show_figure(None, self.words, self.time)

    def show_figure(self, figure: Figure | None, words: Words, time: FarmTime, *, keep: bool = False) -> None:
        """Show a figure; with `keep` a view that somebody has moved stays where it is."""
        self.words, self.time = words, time
        under = figure.under if figure else None
        self.upper.show(figure, time, words)
        self.under.show(under, time, words)
        rows = _grid_of(self.grid)
        rows.setRowStretchFactor(0, UPPER_SHARE)
        rows.setRowStretchFactor(1, LOWER_SHARE if under else 0)
        if figure is not None:
            span = figure.x_high - figure.x_low
            low, high = figure.x_low - span * 0.02, figure.x_high + span * 0.02
            for panel in (self.upper, self.under):
                panel.box.setLimits(xMin=low, xMax=high, minXRange=span * CLOSEST_FRAC)
            if not (keep and self.moved):
                self.whole()
        self.wear()

    def wear(self) -> None:
        """Take the colours and sizes in force."""
        figure = self.upper.figure
        under = figure is not None and figure.under is not None
        self.upper.wear(not under)
        self.under.wear(True)
        for panel, figure_ in ((self.upper, figure), (self.under, figure.under if figure else None)):
            if figure_ is not None:
                for curve, (_, _, pen) in zip(panel.curves, panel._lines(figure_), strict=False):
                    curve.setPen(pen)
        px = look().px
        right: float = px(8)
        if figure is not None and figure.stages:
            metrics = look().metrics(13)
            right = max(metrics.horizontalAdvance(self.words.say(text)) for _, _, text in figure.stages) + px(14)
        _grid_of(self.upper.item).setContentsMargins(0, px(20), right, 0)
        _grid_of(self.under.item).setContentsMargins(0, px(12), right, 0)
        self.grid.setGeometry(self.range)  # a part that was folded away has let the whole shrink
        self.viewport().update()

    def whole(self) -> None:
        """Show everything up to a little after the latest flag; a fan that runs on is reached by stepping back."""
        figure = self.upper.figure
        self.moved = False
        if figure is not None:
            self.upper.box.setXRange(figure.x_low, _end_of_interest(figure), padding=0)

    def pan(self, by_frac: float) -> None:
        """Move along x by a share of what is in view."""
        (low, high), _ = self.upper.box.viewRange()
        self.moved = True
        shift = (high - low) * by_frac
        self.upper.box.setXRange(low + shift, high + shift, padding=0)

    def zoom(self, factor: float) -> None:
        """Come closer (above 1) or step back, about the middle of what is in view."""
        (low, high), _ = self.upper.box.viewRange()
        self.moved = True
        middle, half = (low + high) / 2, (high - low) / 2 / factor
        self.upper.box.setXRange(middle - half, middle + half, padding=0)

    def show_asked(self, at_utc_s: float, value: float | None) -> None:
        """Show a reading that is not written yet, for it is asked about; None takes it away."""
        figure = self.upper.figure
        timed = figure is not None and figure.x_kind == "time"
        self.asked = (at_utc_s, value) if value is not None and timed else None
        self.viewport().update()

    def in_view(self) -> tuple[float, float]:
        """The stretch of x that is in view."""
        low, high = self.upper.box.viewRange()[0]
        return float(low), float(high)

    def wheelEvent(self, event: QWheelEvent) -> None:
        self.moved = True
        super().wheelEvent(event)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        self.whole()

    def _ranged(self, *_: object) -> None:
        self.viewport().update()

    def drawBackground(self, painter: QPainter, rect: QRectF | QRect) -> None:
        painter.fillRect(rect, look()["paper"])
        self._views = [view for panel in (self.upper, self.under) if (view := panel.view(self.words)) is not None]
        with On(painter) as ink:
            for view in self._views:
                marks.below(ink, view)

    def drawForeground(self, painter: QPainter, rect: QRectF | QRect) -> None:
        with On(painter) as ink:
            for view in self._views:
                marks.above(ink, view)
            if self.asked is not None and self._views:
                marks.asked(ink, self._views[0], *self.asked)
            if self.ringed:
                ink.frame(0, 0, self.width(), self.height(), 3, "focus")


def _grid_of(whole: pg.GraphicsLayout | pg.PlotItem) -> QGraphicsGridLayout:
    """The grid of a whole: pyqtgraph keeps it under the name of the Qt method that would answer it."""
    return cast(QGraphicsGridLayout, whole.layout)


def _end_of_interest(figure: Figure) -> float:
    """Where the view ends when nobody has moved it; with an open end the whole fan is shown."""
    if figure.fan is None or len(figure.flags) < 3:
        return figure.x_high
    last = max([flag.x for flag in figure.flags] + [float(curve.x[-1]) for curve in figure.curves if curve.x.size])
    return min(figure.x_high, last + AFTER_FLAGS_FRAC * (last - figure.x_low))
