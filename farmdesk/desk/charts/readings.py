"""The readings of a chart: each instrument has its own shape, a doubtful one is crossed, values are written."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter, QPainterPath, QPen, QPolygonF

from farmdesk.desk.charts.scale import around
from farmdesk.desk.charts.view import On, View
from farmdesk.desk.theme import BOLD, REGULAR, SEMIBOLD
from farmdesk.work.figures import ANCHOR, HAND, LOGGER, LOT, METER, RAW, TRAY, Curve, Figure

POINTS_SHOWN = 150  # more than this in view are a line; their marks would cover it


def draw_points(ink: On, view: View, curve: Curve) -> None:
    """The marks of the readings: each instrument has its own shape; a doubtful one is crossed."""
    scale = view.scale
    if curve.role == LOT:
        return  # several lots over one another are lines alone
    seen = np.flatnonzero((curve.x >= scale.x_low) & (curve.x <= scale.x_high) & np.isfinite(curve.y))
    if seen.size > POINTS_SHOWN:
        return
    bars = curve.low.size == curve.x.size and curve.high.size == curve.x.size
    ink.painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for i in seen:
        at = scale.point(float(curve.x[i]), float(curve.y[i]))
        if bars:
            _bar(ink, at, scale.y(float(curve.low[i])), scale.y(float(curve.high[i])))
        point(ink, at, curve.role, second=view.second, doubtful=curve.doubtful)
        view.taken.take(QRectF(at.x() - 4, at.y() - 4, 8, 8))
    ink.painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)


def _bar(ink: On, at: QPointF, low: float, high: float) -> None:
    """The spread of the repeats, beside its dot."""
    if low - high < 2:
        return
    x, px = at.x() + ink.look.px(8), ink.look.px
    ink.upright(x, high, low, 1.2, "ink")
    for y in (low, high):
        ink.level(x - px(3), x + px(3), y, 1.2, "ink")
    ink.painter.setRenderHint(QPainter.RenderHint.Antialiasing)


def point(ink: On, at: QPointF, role: str, *, second: bool = False, doubtful: bool = False) -> None:
    """One reading: solid dot meter or hand, hollow square tray, hollow dot logger or secondary, triangle anchor."""
    px, painter = ink.look.px, ink.painter
    path = QPainterPath()
    hollow = second or role in (TRAY, LOGGER)
    if role == TRAY:
        side = 9 * ink.look.scale  # wide enough that the dot of a meter read at the same hour shows inside
        path.addRect(QRectF(at.x() - side / 2, at.y() - side / 2, side, side))
    elif role == ANCHOR:
        half, top = px(6), at.y() + px(7)
        path.addPolygon(
            QPolygonF([QPointF(at.x(), top), QPointF(at.x() + half, top + px(9)), QPointF(at.x() - half, top + px(9))])
        )
        path.closeSubpath()
    elif role == RAW:
        half = px(3)
        painter.setPen(QPen(ink.color("ink2"), 1.2))
        painter.drawLine(at + QPointF(-half, -half), at + QPointF(half, half))
        painter.drawLine(at + QPointF(-half, half), at + QPointF(half, -half))
        return
    elif role in (METER, HAND, LOGGER):
        radius = (3.0 if role == METER else 3.6) * ink.look.scale
        path.addEllipse(at, radius, radius)
    else:
        return
    painter.fillPath(path, ink.color("paper" if hollow or doubtful else "ink"))
    if doubtful:
        painter.fillPath(path, ink.look.pattern("doubtful", ink.color("ink"), ink.ratio))
    painter.strokePath(path, QPen(ink.color("ink"), 1.3))


def write_values(ink: On, view: View, curve: Curve) -> None:
    """Every value of a labelled curve beside its point, the newest first where room is short."""
    scale, px = view.scale, ink.look.px
    finite = np.flatnonzero(np.isfinite(curve.y))
    if curve.labelled:
        told = finite[::-1]
    elif view.second and finite.size:  # of the smaller chart the highest, the last and the first
        told = np.array(list(dict.fromkeys([finite[np.argmax(curve.y[finite])], finite[-1], finite[0]])))
    else:
        return
    size, weight, color = (13, REGULAR, "ink2") if view.second else (14, SEMIBOLD, "ink")
    decimals = view.figure.y_decimals
    within = scale.box.adjusted(-px(4), -px(20), px(4), 0)
    for i in told[:POINTS_SHOWN]:
        if not scale.shows(float(curve.x[i])):
            continue
        text = view.words.number(float(curve.y[i]), decimals)
        at = scale.point(float(curve.x[i]), float(curve.y[i]))
        spot = view.taken.place(around(at, ink.width(text, size, weight), px(16), px(6)), within)
        if spot is not None:
            ink.text(spot.left(), spot.bottom() - px(4), text, size, weight, color)


@dataclass(frozen=True, slots=True)
class End:
    """The last reading of a curve."""

    x: float
    y: float
    role: str
    place: str
    points_n: int


def ends_of(figure: Figure) -> list[End]:
    """The last readings of an unlabelled chart: of the lot first, then of its portions, each place once.

    The lot's is the one of the curve with the most points, for a portion's curve begins later.
    """
    found: list[End] = []
    for curve in figure.curves:
        finite = np.flatnonzero(np.isfinite(curve.y))
        if curve.role in (TRAY, METER) and not curve.labelled and finite.size:
            last = finite[-1]
            found.append(End(float(curve.x[last]), float(curve.y[last]), curve.role, curve.place, finite.size))
    newest: dict[str, End] = {}
    for end in sorted(found, key=lambda end: (end.x, end.role == METER)):
        newest[end.place] = end
    points_n = {place: max(end.points_n for end in found if end.place == place) for place in newest}
    return sorted(newest.values(), key=lambda end: -points_n[end.place])


def write_latest(ink: On, view: View) -> None:
    """The last reading of an unlabelled chart, written large; those of portions with their place."""
    if view.second:
        return
    scale, px = view.scale, ink.look.px
    within = scale.box.adjusted(0, -px(18), 0, 0)
    for i, end in enumerate(ends_of(view.figure)):
        if not scale.shows(end.x):
            continue
        size, weight, color = (17, BOLD, "ink") if i == 0 else (14, REGULAR, "ink2")
        text = view.words.number(end.y, view.figure.y_decimals)
        text = text if i == 0 or not end.place else f"{end.place}: {text}"
        spots = around(scale.point(end.x, end.y), ink.width(text, size, weight), px(size + 1), px(8))
        if spot := view.taken.place(spots, within):
            ink.text(spot.left(), spot.bottom() - px(4), text, size, weight, color)


def write_names(ink: On, view: View) -> None:
    """The name of each lot at the end of its line; of lines that end close together they keep apart."""
    scale, px = view.scale, ink.look.px
    for curve in view.figure.curves:
        if curve.role == LOT and curve.x.size:  # no name may lie on another lot's line
            along = np.arange(scale.x(float(curve.x[0])), scale.x(float(curve.x[-1])), px(4))
            values = np.interp(along, [scale.x(float(x)) for x in curve.x], [scale.y(float(y)) for y in curve.y])
            for x, y in zip(along, values, strict=True):
                if np.isfinite(y):
                    view.taken.take(QRectF(x - 1, y - 1, 2, 2))
    for curve in view.figure.curves:
        finite = np.flatnonzero(np.isfinite(curve.y))
        if curve.role != LOT or curve.name is None or not finite.size:
            continue
        text = view.words.say(curve.name)
        at = scale.point(float(curve.x[finite[-1]]), float(curve.y[finite[-1]]))
        width, high = ink.width(text, 14, SEMIBOLD), px(16)
        beside = [
            QRectF(at.x() + px(6), at.y() - high / 2 + step * high, width, high) for step in (0, -1, 1, -2, 2, -3, 3)
        ]
        before = [box.translated(-width - px(12), 0) for box in beside]
        if spot := view.taken.place([*beside, *before], scale.box.adjusted(0, -px(18), 0, 0)):
            ink.text(spot.left(), spot.bottom() - px(4), text, 14, SEMIBOLD)
            if abs(spot.center().y() - at.y()) > high / 2:
                ink.line(at.x(), at.y(), spot.left() - px(2), spot.center().y(), 0.8, "ink2")
