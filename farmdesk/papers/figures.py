"""A chart on paper, painted from the same description as the screen's.

A gap is a gap, a range is a hatch, a reading has the shape of its instrument: hollow square tray, dot
meter, triangle anchor, hollow dot logger, cross a value as it was read before its correction.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

import numpy as np

from farmdesk.clock import FarmTime
from farmdesk.papers.letters import BOLD, SEMIBOLD, width
from farmdesk.papers.page import Page
from farmdesk.papers.panel import DASHES, HEAVY, LINE_PT, PLAIN, SMALL, Panel
from farmdesk.papers.place import Box, Point, apart, around
from farmdesk.text import N_, Words
from farmdesk.work.figures import ANCHOR, HAND, LOGGER, METER, RAW, TRAY, Curve, Figure, Floats

SQUARE_PT, DOT_PT, HAND_PT = 6.2, 1.9, 2.5  # wide enough that a meter's dot of the same hour shows inside
UPPER_FRAC = 0.62  # of the height, where a second chart hangs under the first
STANDS_OFF_FRAC = 0.05  # of the height: nearer than this, two marks are one blot
POINTS_SHOWN = 150  # more than this is a line; marks would cover it
EARLIEST_LATEST = N_("papers", "earliest, likely, latest")


def caption(figure: Figure, words: Words) -> str:
    """What the marks of a figure are, in words."""
    said = [words.say(figure.subtitle)] if figure.subtitle else []
    if any(curve.role == ANCHOR for curve in figure.curves):
        said.append(words.say(N_("papers", "triangles: where it hangs")))
    if _raw_stands_off(figure):
        said.append(words.say(N_("papers", "crosses: as read, before the correction")))
    return "; ".join(said)


def _raw_stands_off(figure: Figure) -> bool:
    """Whether values as read lie far enough from the corrected ones to be seen beside them."""
    span = (figure.y_high - figure.y_low) or 1.0
    raw = [curve for curve in figure.curves if curve.role == RAW]
    ours = {(m.place, x): y for m in figure.curves if m.role == METER for x, y in zip(m.x, m.y, strict=True)}
    return any(
        abs(y - ours.get((curve.place, x), y + span)) > STANDS_OFF_FRAC * span
        for curve in raw
        for x, y in zip(curve.x, curve.y, strict=True)
    )


def paint_figure(page: Page, box: Box, figure: Figure, words: Words, time: FarmTime) -> None:
    """Paint a figure into a rectangle, with its axes and words; a second one below it where it has one."""
    names = [words.say(text) for _, _, text in figure.stages]
    right = max((width(name, SMALL) for name in names), default=0.0) + (10 if names else 4)
    hung = any(curve.role == ANCHOR for curve in figure.curves)
    inner = Box(box.left + 26, box.top + 4, box.right - right, box.bottom - (21 if hung else 15))
    top = LINE_PT * (bool(figure.marks) + 0.3)
    if figure.under is None:
        _Chart(page, Box(inner.left, inner.top + top, inner.right, inner.bottom), figure, words, time).paint()
        return
    middle = inner.top + inner.height * UPPER_FRAC
    _Chart(page, Box(inner.left, inner.top + top, inner.right, middle - 5), figure, words, time, dated=False).paint()
    lower = Box(inner.left, middle + 9, inner.right, inner.bottom)
    _Chart(page, lower, figure.under, words, time, second=True).paint()


class _Chart(Panel):
    """A panel with its curves."""

    def paint(self) -> None:
        """Ground, bands, fan, curves, points, words, in this order."""
        self.crossed = _raw_stands_off(self.figure)
        self.grid()
        for band in self.figure.bands:
            self.band(band)
        if self.figure.fan is not None and self.figure.fan.x.size > 1:
            self.fan()
        self._keep_curves_free()
        if self.figure.target is not None:
            self.target()
        self.rain()
        for mark in self.figure.marks:
            if self.scale.shows(mark.x):
                self._mark(self.scale.x(mark.x), self.words.say(mark.text))
        if self.figure.flags:
            self._flags()
        for curve in self.figure.curves:
            self._line(curve)
        for curve in self.figure.curves:
            self._points(curve)
        for curve in self.figure.curves:
            self._values(curve)
        self._latest()
        self.axes()

    def _mark(self, x: float, said: str) -> None:
        """An instant with its words: opened, washed, wetted."""
        box = self.box
        self.page.upright(x, box.top, box.bottom, 1.5, "ink", DASHES)
        wide = width(said, PLAIN)
        left = min(max(x - wide / 2, box.left), box.right - wide)
        if self.taken.place([Box(left, box.top - LINE_PT - 2, left + wide, box.top - 2)], self.about()):
            self.page.text(left, box.top - 5, said, PLAIN)

    def _flags(self) -> None:
        """Earliest, likely and latest, standing on the target; the likely one is heavier."""
        figure, scale, box = self.figure, self.scale, self.box
        flags = [flag for flag in figure.flags if scale.shows(flag.x)]
        if not flags:
            return
        texts = [self.words.say(flag.text) for flag in flags]
        fonts = [BOLD if flag.likely else SEMIBOLD for flag in flags]
        wides = [width(text, PLAIN, font) + 8 for text, font in zip(texts, fonts, strict=True)]
        foot = scale.y(figure.target[0]) if figure.target else box.bottom
        lefts, top = self._free_place([scale.x(flag.x) for flag in flags], wides, foot - 40)
        for flag, text, font, wide, left in zip(flags, texts, fonts, wides, lefts, strict=True):
            frame, x = Box(left, top, left + wide, top + 15), scale.x(flag.x)
            stem = min(max(x, left), left + wide)  # where a flag had to step aside, its stem bends to its day
            bend = min(frame.bottom + (abs(x - stem) * 0.8), foot)
            course = [(stem, frame.bottom), (x, bend), (x, foot)]
            self.page.course(course, 1.65 if flag.likely else 0.9)
            self._keep_free(course)
            self.page.frame(frame, 1.5 if flag.likely else 0.9, "ink", "paper")
            self.page.text((frame.left + frame.right) / 2, frame.bottom - 4, text, PLAIN, font, align="middle")
            self.taken.take(frame)
        said = self.words.say(EARLIEST_LATEST)
        left = min(max(lefts[0], box.left), box.right - width(said, SMALL))
        if len(flags) == 3 and left >= box.left:
            self.taken.take(Box(left, top - LINE_PT, left + width(said, SMALL), top - 1))
            self.page.text(left, top - 4, said, SMALL, color="ink2")

    def _keep_curves_free(self) -> None:
        """No word may be written on a reading, nor on the line between two."""
        for curve in self.figure.curves:
            if curve.role == ANCHOR or (curve.role == RAW and not self.crossed) or curve.x.size > POINTS_SHOWN:
                continue
            for run in self._runs(curve.x, curve.y):
                for x, y in run:
                    self.taken.take(Box(x - 3, y - 3, x + 3, y + 3))
                if curve.role in (TRAY, HAND):
                    self._keep_free(run)

        if self.figure.fan is not None:
            for edge in (self.figure.fan.low, self.figure.fan.high):
                for run in self._runs(self.figure.fan.x, edge):
                    self._keep_free(run)

    def _keep_free(self, course: Sequence[Point]) -> None:
        """No word may be written on a line through points."""
        for (x0, y0), (x1, y1) in pairwise(course):
            steps_n = 1 + int(max(abs(x1 - x0), abs(y1 - y0)) / 4)
            for i in range(steps_n):
                x, y = x0 + (x1 - x0) * i / steps_n, y0 + (y1 - y0) * i / steps_n
                self.taken.take(Box(x - 1, y - 1, x + 1, y + 1))

    def _runs(self, x: Floats, y: Floats) -> list[list[Point]]:
        """A curve's points on the paper, parted at every hole."""
        pieces = np.split(np.arange(x.size), np.flatnonzero(~np.isfinite(y)))
        runs = [[self.scale.at(x[i], y[i]) for i in piece if np.isfinite(y[i])] for piece in pieces]
        return [run for run in runs if run]

    def _free_place(self, days: Sequence[float], wides: Sequence[float], lowest: float) -> tuple[list[float], float]:
        """Where flags stand (left edges, and their top) so that no curve runs behind their words.

        As low as may be, then up, then aside to the right, where a drying curve has left room.
        """
        courses = [(curve.x, curve.y) for curve in self.figure.curves if curve.x.size <= POINTS_SHOWN]
        if self.figure.fan is not None:
            courses.append((self.figure.fan.x, self.figure.fan.high))
        steps = [
            Box(min(a[0], b[0]), min(a[1], b[1]), max(a[0], b[0]) + 0.1, max(a[1], b[1]) + 0.1)
            for x, y in courses
            for run in self._runs(x, y)
            for a, b in pairwise([*run[:1], *run])
        ]
        highest = self.box.top + LINE_PT
        first: tuple[list[float], float] | None = None
        for aside in range(0, int(self.box.width), 12):
            wanted = [day - wide / 2 + aside for day, wide in zip(days, wides, strict=True)]
            lefts = apart(wanted, wides, 4, self.box.left, self.box.right)
            top = lowest
            while top >= highest:
                place = Box(lefts[0] - 4, top - LINE_PT, lefts[-1] + wides[-1] + 4, top + 17)
                if not any(step.meets(place) for step in steps):
                    return lefts, top
                top -= 6
            first = first or (lefts, max(top, highest))
        return first or (list(days), highest)

    # curves

    def _line(self, curve: Curve) -> None:
        """The line of a role that has one, broken at every hole."""
        pens: dict[str, tuple[float, str, tuple[float, ...]]] = {
            TRAY: (1.0, "ink", ()),
            HAND: (0.9, "ink", DASHES) if self.second else (1.2, "ink", ()),
            LOGGER: (0.75, "ink2", ()),
            "usual": (1.2, "ink", DASHES),
        }
        if curve.role not in pens:
            return
        weight, color, dash = pens[curve.role]
        for run in self._runs(*_thinned(curve.x, curve.y, self.box.width)):
            self.page.course(run, weight, color, dash)

    def _points(self, curve: Curve) -> None:
        seen = [i for i in np.flatnonzero(np.isfinite(curve.y)) if self.scale.shows(curve.x[i])]
        if len(seen) > POINTS_SHOWN:
            return
        bars = curve.low.size == curve.x.size and curve.high.size == curve.x.size
        for i in seen:
            at = self.scale.at(curve.x[i], curve.y[i])
            if bars:
                self._spread(at, self.scale.at(0, curve.low[i])[1], self.scale.at(0, curve.high[i])[1])
            self._point(at, curve)

    def _spread(self, at: Point, low: float, high: float) -> None:
        """The spread of the repeats, beside its dot."""
        if low - high < 1.5:
            return
        x = min(at[0] + 5.5, self.box.right)
        ends = [((x - 2, y), (x + 2, y)) for y in (low, high)]
        self.page.strokes([((x, high), (x, low)), *ends], 0.9)

    def _point(self, at: Point, curve: Curve) -> None:
        page, (x, y) = self.page, at
        hollow = self.second or curve.role == LOGGER or curve.doubtful
        if curve.role == TRAY:
            square = Box(x - SQUARE_PT / 2, y - SQUARE_PT / 2, x + SQUARE_PT / 2, y + SQUARE_PT / 2)
            page.frame(square, 0.75, "ink", "paper")
            if curve.doubtful:
                page.pattern(square, "doubtful")
        elif curve.role == ANCHOR:
            top = self.box.bottom + 1.2  # below the axis, so that the curve stays free
            page.shape([(x, top), (x + 2.6, top + 4.8), (x - 2.6, top + 4.8)], "ink", 0.3)
        elif curve.role == RAW and self.crossed:
            page.strokes(
                [((x - 2.4, y - 2.4), (x + 2.4, y + 2.4)), ((x - 2.4, y + 2.4), (x + 2.4, y - 2.4))], 0.9, "ink2"
            )
        elif curve.role in (METER, HAND, LOGGER):
            radius = DOT_PT if curve.role == METER else HAND_PT
            page.dot(at, radius, "paper" if hollow else "ink")
            if curve.doubtful:
                page.strokes([((x - 2, y - 2), (x + 2, y + 2)), ((x - 2, y + 2), (x + 2, y - 2))], 0.6)

    # words

    def _values(self, curve: Curve) -> None:
        """Every value of a labelled curve beside its point, the newest first where room is short."""
        if not curve.labelled:
            return
        for i in reversed(range(curve.x.size)):
            if not (self.scale.shows(curve.x[i]) and np.isfinite(curve.y[i])):
                continue
            said = self.words.number(float(curve.y[i]), self.figure.y_decimals)
            at = self.scale.at(curve.x[i], curve.y[i])
            spot = self.taken.place(around(at, width(said, PLAIN, SEMIBOLD), LINE_PT - 1, 4), self.about())
            if spot is not None:
                self.page.text(spot.left, spot.bottom - 3, said, PLAIN, SEMIBOLD)

    def _latest(self) -> None:
        """The last reading of an unlabelled chart, written heavier; portions carry their place."""
        ends = []
        for curve in self.figure.curves:
            known = np.flatnonzero(np.isfinite(curve.y))
            if curve.role in (TRAY, METER) and not curve.labelled and known.size:
                i = known[-1]
                ends.append((float(curve.x[i]), curve.role == METER, float(curve.y[i]), curve.place))
        if not ends or self.second:
            return
        x, _, y, _ = max(ends)
        if self.scale.shows(x):
            said = self.words.number(y, self.figure.y_decimals)
            at, wide = self.scale.at(x, y), width(said, HEAVY, BOLD)
            spots = [spot for away in (5.0, 9.0, 14.0, 20.0) for spot in around(at, wide, LINE_PT - 2, away)]
            if spot := self.taken.place(spots, self.about()):
                self.page.text(spot.left, spot.bottom - 3, said, HEAVY, BOLD)
        places = sorted({place for *_, place in ends if place})
        for place in places if len(places) > 1 else ():
            x, _, y, _ = max(end for end in ends if end[3] == place)
            spots = around(self.scale.at(x, y), width(place, SMALL) + 6, LINE_PT - 1)
            if self.scale.shows(x) and (spot := self.taken.place(spots, self.about())):
                self.page.text(spot.left + 3, spot.bottom - 3, place, SMALL, color="ink2")


def _thinned(x: Floats, y: Floats, wide_pt: float) -> tuple[Floats, Floats]:
    """A long logger curve kept to its lowest and highest point in every half point of paper."""
    most = int(wide_pt * 4)
    if x.size <= most:
        return x, y
    size = -(-x.size // (most // 2))
    kept = []
    for start in range(0, x.size, size):
        piece = y[start : start + size]
        if np.isfinite(piece).all():
            kept += sorted({start + int(piece.argmin()), start + int(piece.argmax())})
        else:
            kept += range(start, start + piece.size)
    return x[kept], y[kept]
