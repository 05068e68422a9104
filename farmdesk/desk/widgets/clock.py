"""The ferment clock: 24 hours with midnight below, because a tank does not know that people sleep.

The arc is filled until now, hollow dots are readings, the hatched wedge is the range of the end. Longer
ferments wind into a spiral, one turn a day. Straight figures always stand beside it.
"""

from __future__ import annotations

import math
from collections.abc import Callable

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainterPath

from farmdesk.clock import DAY_S, FarmTime
from farmdesk.desk.theme import look
from farmdesk.desk.widgets.ink import Ink
from farmdesk.work.stories import VesselStory

SMALL_R_PX, LARGE_R_PX = 82, 140  # on Today, on Ferments
TURN_PX = 14  # from one day's turn to the next
ARC_STEP = 4  # of the six steps of water: a tank is wet
SLICE_H = 6.0

Spot = Callable[[float, float], QPointF]  # an hour of the day and a radius
Scale = Callable[[float], float]


def angle(hour: float) -> float:
    """Radians of an hour of the day, clockwise from straight down (midnight)."""
    return hour / 24 * math.tau


def paint_clock(
    ink: Ink,
    x: float,
    y: float,
    radius: float,
    vessel: VesselStory,
    now_utc_s: int,
    time: FarmTime,
    sleep_h: tuple[float, float],
) -> None:
    """Draw a vessel's clock about a middle; the radius in screen pixels. `sleep_h`: from, until [h]."""
    middle = QPointF(x, y)

    def at(hour: float, r: float) -> QPointF:
        turn = angle(hour)
        return QPointF(x - r * math.sin(turn), y + r * math.cos(turn))

    def hour(at_utc_s: float) -> float:
        local = time.local(at_utc_s)
        return local.hour + local.minute / 60 + local.second / 3600

    _paint_face(ink, middle, radius, sleep_h, at)
    end = radius * 0.70
    days = max(0.0, (now_utc_s - vessel.filled_utc_s) / DAY_S)
    pitch = min(look().px(TURN_PX), (end - radius * 0.36) / max(1.0, days))
    band = min(radius * 0.14, pitch * 0.78)

    def ring(at_utc_s: float) -> float:
        """Earlier turns lie further in."""
        return end - pitch * max(0.0, (now_utc_s - at_utc_s) / DAY_S) if days > 1 else end

    _paint_arc(ink, vessel, now_utc_s, hour, at, ring, band)
    _paint_wedge(ink, vessel, hour, at, radius)
    for when, _ in vessel.readings:
        if vessel.filled_utc_s <= when <= now_utc_s:
            dot = QPainterPath()
            dot.addEllipse(at(hour(when), ring(when)), band * 0.38, band * 0.38)
            ink.shape(dot, "paper", 1.3, "ink")
    a, b = at(hour(now_utc_s), radius * 0.28), at(hour(now_utc_s), radius * 1.03)
    ink.line(a.x(), a.y(), b.x(), b.y(), 2.4, "ink")


def _paint_face(ink: Ink, middle: QPointF, radius: float, sleep_h: tuple[float, float], at: Spot) -> None:
    px = look().px
    start, end = sleep_h
    night = QPainterPath(middle)
    # Qt counts degrees against the clock from three o'clock; midnight is straight down, 270.
    square = QRectF(middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius)
    night.arcTo(square, 270 - start / 24 * 360, -((end - start) % 24) / 24 * 360)
    night.closeSubpath()
    ink.shape(night, "night")
    rim = QPainterPath()
    rim.addEllipse(middle, radius, radius)
    ink.shape(rim, None, 1, "rule")
    core = QPainterPath()
    core.addEllipse(middle, radius * 0.3, radius * 0.3)
    ink.shape(core, "paper", 1, "hair")
    for hour in range(24):
        inner = at(hour, radius - px(6 if hour % 6 == 0 else 4))
        outer = at(hour, radius)
        ink.line(inner.x(), inner.y(), outer.x(), outer.y(), 1, "rule")
    for hour, dx, dy in ((12, 0, -px(6)), (24, 0, px(17)), (6, -px(11), px(5)), (18, px(13), px(5))):
        spot = at(hour, radius)
        ink.text(spot.x() + dx, spot.y() + dy, str(hour), 13, color="ink2", align="middle")


def _paint_arc(ink: Ink, vessel: VesselStory, now_utc_s: int, hour: Scale, at: Spot, ring: Scale, band: float) -> None:
    """The stretch since filling, as a band of small steps so that a spiral is one shape."""
    span = max(1, now_utc_s - vessel.filled_utc_s)
    steps = max(8, int(span / DAY_S * 144))
    times = [vessel.filled_utc_s + span * i / steps for i in range(steps + 1)]
    path = QPainterPath(at(hour(times[0]), ring(times[0]) + band / 2))
    for when in times[1:]:
        path.lineTo(at(hour(when), ring(when) + band / 2))
    for when in reversed(times):
        path.lineTo(at(hour(when), ring(when) - band / 2))
    path.closeSubpath()
    ink.shape(path, look().palette.water[ARC_STEP], 1.1, "ink")


def _paint_wedge(ink: Ink, vessel: VesselStory, hour: Scale, at: Spot, radius: float) -> None:
    ahead = vessel.ahead
    if ahead is None or ahead.earliest_utc_s is None:
        return
    latest = ahead.latest_utc_s if ahead.latest_utc_s is not None else ahead.earliest_utc_s + DAY_S / 8
    first, span = hour(ahead.earliest_utc_s), min(latest - ahead.earliest_utc_s, DAY_S * 0.98) / 3600
    token = vessel.due or "ink"
    # a short range is a slice of the day; a long one a rim, or it would bury the turns it lies over
    inner, outer = radius * (0.3 if span <= SLICE_H else 0.8), radius * 0.88
    steps = max(24, round(span * 6))
    hours = [first + span * i / steps for i in range(steps + 1)]
    path = QPainterPath(at(hours[0], inner))
    for h in hours:
        path.lineTo(at(h, outer))
    for h in reversed(hours):
        path.lineTo(at(h, inner))
    path.closeSubpath()
    ink.painter.save()
    ink.painter.setBrushOrigin(at(hours[0], inner))
    ink.shape(path, look().pattern("estimated", look()[token], ink.ratio))
    ink.painter.restore()
    ink.shape(path, None, 1.6 if vessel.due else 1.1, token)
