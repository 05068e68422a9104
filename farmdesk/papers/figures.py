"""A chart on paper, painted from the same description as the screen's.

A gap is a gap, a range is a hatch, a reading has the shape of its instrument: hollow square tray, dot
meter, triangle anchor, hollow dot logger, cross a value as it was read before its correction.
"""

from __future__ import annotations

import numpy as np

from farmdesk.clock import FarmTime
from farmdesk.papers.letters import BOLD, LEADING, LEAST_PT, SEMIBOLD, lines, width
from farmdesk.papers.page import Page
from farmdesk.papers.place import Box, Point, Scale, Taken, apart, around
from farmdesk.text import N_, Words
from farmdesk.work.figures import ANCHOR, HAND, LOGGER, METER, RAW, TRAY, Band, Curve, Figure
from farmdesk.work.ticks import Tick, number_ticks, time_ticks

SMALL, PLAIN, HEAVY = LEAST_PT, 10.0, 10.5
LINE_PT = 12.5  # from one small baseline to the next
UPPER_FRAC = 0.62  # of the height, where a second chart hangs under the first
DASHES = (3.6, 2.7)
POINTS_SHOWN = 150  # more than this is a line; marks would cover it
EARLIEST_LATEST = N_("papers", "earliest, likely, latest")


def caption(figure: Figure, words: Words) -> str:
    """What the marks of a figure are, in words."""
    said = [words.say(figure.subtitle)] if figure.subtitle else []
    if any(curve.role == RAW for curve in figure.curves):
        said.append(words.say(N_("papers", "crosses: as read, before the correction")))
    return "; ".join(said)


def paint_figure(page: Page, box: Box, figure: Figure, words: Words, time: FarmTime) -> None:
    """Paint a figure into a rectangle, with its axes and words; a second one below it where it has one."""
    names = [words.say(text) for _, _, text in figure.stages]
    right = max((width(name, SMALL) for name in names), default=0.0) + (10 if names else 4)
    inner = Box(box.left + 26, box.top + 4, box.right - right, box.bottom - 15)
    top = LINE_PT * (bool(figure.marks) + 0.3)
    if figure.under is None:
        _Panel(page, Box(inner.left, inner.top + top, inner.right, inner.bottom), figure, words, time).paint()
        return
    middle = inner.top + inner.height * UPPER_FRAC
    _Panel(page, Box(inner.left, inner.top + top, inner.right, middle - 5), figure, words, time, dated=False).paint()
    lower = Box(inner.left, middle + 9, inner.right, inner.bottom)
    _Panel(page, lower, figure.under, words, time, second=True).paint()


class _Panel:
    """One chart as it stands on the paper."""

    def __init__(
        self, page: Page, box: Box, figure: Figure, words: Words, time: FarmTime, *, second: bool = False,
        dated: bool = True,
    ) -> None:  # fmt: skip
        self.page, self.box, self.figure, self.words = page, box, figure, words
        self.second, self.dated = second, dated
        self.scale = Scale(box, figure.x_low, figure.x_high, figure.y_low, figure.y_high)
        self.taken = Taken()
        most_x, most_y = max(2, int(box.width / 40)), max(2, int(box.height / 22))
        self.x_ticks: list[Tick] = (
            time_ticks(time, words, figure.x_low, figure.x_high, most_x)
            if figure.x_kind == "time"
            else number_ticks(words, figure.x_low, figure.x_high, most_x)
        )
        self.y_ticks = number_ticks(words, figure.y_low, figure.y_high, most_y)

    def paint(self) -> None:
        """Ground, bands, fan, curves, points, words, in this order."""
        self._grid()
        for band in self.figure.bands:
            self._band(band)
        if self.figure.fan is not None and self.figure.fan.x.size > 1:
            self._fan()
        for low, high, mm in self.figure.rain:
            self._rain(low, high, mm)
        if self.figure.target is not None:
            self._target()
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
        self._axes()

    # ground

    def _grid(self) -> None:
        page, box = self.page, self.box
        for band in self.figure.bands:
            if band.kind == "night":
                page.fill(self._stretch(band), "night")
        for y, _ in self.y_ticks:
            page.level(box.left, box.right, self.scale.y(y), 0.5, "hair")

    def _stretch(self, band: Band) -> Box:
        """The part of the chart a band covers."""
        box = self.box
        if band.along == "x":
            left, _ = self.scale.at(band.low, self.figure.y_low)
            right, _ = self.scale.at(band.high, self.figure.y_low)
            return Box(left, box.top, right, box.bottom)
        _, bottom = self.scale.at(self.figure.x_low, band.low)
        _, top = self.scale.at(self.figure.x_low, band.high)
        return Box(box.left, top, box.right, bottom)

    def _band(self, band: Band) -> None:
        there = self._stretch(band)
        if band.kind in ("target", "estimated"):
            self.page.pattern(there, band.kind, "rule")
            if band.along == "y":
                for y in (there.top, there.bottom):
                    self.page.level(there.left, there.right, y, 0.75, "rule")
        elif band.kind == "gap" and there.width > 0:
            y = self.box.bottom - 6
            self.page.level(there.left, there.right, y, 0.75, "rule", DASHES)
            self.page.strokes([((x, y - 3), (x, y + 3)) for x in (there.left, there.right)], 0.75, "rule")
            self._gap_words(band, there)

    def _gap_words(self, band: Band, there: Box) -> None:
        said = self.words.say(band.text) if band.text else ""
        wide = width(said, SMALL)
        middle = (there.left + there.right) / 2
        spot = Box(middle - wide / 2, self.box.bottom - 9 - LINE_PT, middle + wide / 2, self.box.bottom - 9)
        if said and self.taken.place([spot], self.box):
            self.page.text(spot.left, spot.bottom - 3, said, SMALL, color="ink2")

    def _fan(self) -> None:
        """A hatch between the low and the high course; the middle one dashed."""
        fan = self.figure.fan
        assert fan is not None
        rows = np.isfinite(fan.low) & np.isfinite(fan.high) & (fan.x <= self.figure.x_high)
        x, low, mid, high = (column[rows] for column in (fan.x, fan.low, fan.mid, fan.high))
        there = [self.scale.at(a, b) for a, b in zip(x, high, strict=True)]
        back = [self.scale.at(a, b) for a, b in zip(x, low, strict=True)]
        if len(there) < 2:
            return
        outline = [*there, *reversed(back)]
        xs, ys = [p[0] for p in outline], [p[1] for p in outline]
        self.page.pattern(Box(min(xs), min(ys), max(xs), max(ys)), "estimated", within=outline)
        self.page.shape(outline, None, 0.6, "ink2")
        self.page.course([self.scale.at(a, b) for a, b in zip(x, mid, strict=True)], 1.2, "ink", DASHES)

    def _rain(self, low: float, high: float, mm: float) -> None:
        """A block standing on the axis; its height grows with the root of the mm, its words say them."""
        box = self.box
        left = min(max(self.scale.x(low), box.left), box.right)
        right = min(max(self.scale.x(high), left + 3), box.right)
        if right <= left:
            return
        block = Box(left, box.bottom - min(30.0, 4.2 * mm**0.5), right, box.bottom)
        self.page.fill(block, "ink2")
        said = self.words.number(mm, 0 if mm >= 1 else 1, "mm")
        wide = width(said, SMALL)
        spots = [
            Box(right + 2, box.bottom - LINE_PT, right + 2 + wide, box.bottom),
            Box(left - 2 - wide, box.bottom - LINE_PT, left - 2, box.bottom),
            Box((left + right - wide) / 2, block.top - LINE_PT, (left + right + wide) / 2, block.top - 1),
        ]
        self.taken.take(block)
        if spot := self.taken.place(spots, box):
            self.page.text(spot.left, spot.bottom - 3, said, SMALL, color="ink2")

    def _target(self) -> None:
        assert self.figure.target is not None
        level, text = self.figure.target
        if not self.figure.y_low <= level <= self.figure.y_high:
            return
        y = self.scale.y(level)
        self.page.level(self.box.left, self.box.right, y, 1.05, "ink", DASHES)
        said = self.words.say(text)
        spot = Box(self.box.left + 2, y - LINE_PT, self.box.left + 2 + width(said, PLAIN, SEMIBOLD), y - 1)
        self.taken.take(spot)
        self.page.text(spot.left, spot.bottom - 2, said, PLAIN, SEMIBOLD)

    def _mark(self, x: float, said: str) -> None:
        """An instant with its words: opened, washed, wetted."""
        box = self.box
        self.page.upright(x, box.top, box.bottom, 1.5, "ink", DASHES)
        wide = width(said, PLAIN)
        left = min(max(x - wide / 2, box.left), box.right - wide)
        if self.taken.place([Box(left, box.top - LINE_PT - 2, left + wide, box.top - 2)], self._about()):
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
        top = max(box.top + LINE_PT, foot - max(58.0, box.height * 0.45))
        wanted = [scale.x(flag.x) - wide / 2 for flag, wide in zip(flags, wides, strict=True)]
        lefts = apart(wanted, wides, 4, box.left, box.right)
        for flag, text, font, wide, left in zip(flags, texts, fonts, wides, lefts, strict=True):
            self.page.upright(scale.x(flag.x), top + 15, foot, 1.65 if flag.likely else 0.9, "ink")
            frame = Box(left, top, left + wide, top + 15)
            self.page.frame(frame, 1.5 if flag.likely else 0.9, "ink", "paper")
            self.page.text((frame.left + frame.right) / 2, frame.bottom - 4, text, PLAIN, font, align="middle")
            self.taken.take(frame)
        said = self.words.say(EARLIEST_LATEST)
        left = min(max(lefts[0], box.left), box.right - width(said, SMALL))
        if len(flags) == 3 and left >= box.left:
            self.taken.take(Box(left, top - LINE_PT, left + width(said, SMALL), top - 1))
            self.page.text(left, top - 4, said, SMALL, color="ink2")

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
        x, y = _thinned(curve.x, curve.y, self.box.width)
        holes = np.flatnonzero(~np.isfinite(y))
        for piece in np.split(np.arange(x.size), holes):
            points = [self.scale.at(x[i], y[i]) for i in piece if np.isfinite(y[i])]
            self.page.course(points, weight, color, dash)

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
            self.taken.take(Box(at[0] - 3, at[1] - 3, at[0] + 3, at[1] + 3))

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
            page.frame(Box(x - 3, y - 3, x + 3, y + 3), 0.9, "ink", "paper")
            if curve.doubtful:
                page.pattern(Box(x - 3, y - 3, x + 3, y + 3), "doubtful")
        elif curve.role == ANCHOR:
            top = min(y + 4.5, self.box.bottom - 6.5)
            page.shape([(x, top), (x + 4, top + 6.5), (x - 4, top + 6.5)], "ink")
            self.taken.take(Box(x - 4, top, x + 4, top + 6.5))
        elif curve.role == RAW:
            page.strokes([((x - 2.4, y - 2.4), (x + 2.4, y + 2.4)), ((x - 2.4, y + 2.4), (x + 2.4, y - 2.4))], 0.9, "ink2")
        elif curve.role in (METER, HAND, LOGGER):
            radius = 2.3 if curve.role == METER else 2.6
            page.dot(at, radius, "paper" if hollow else "ink")
            if curve.doubtful:
                page.strokes([((x - 2, y - 2), (x + 2, y + 2)), ((x - 2, y + 2), (x + 2, y - 2))], 0.6)

    # words

    def _about(self) -> Box:
        return Box(self.box.left - 3, self.box.top - LINE_PT - 4, self.box.right + 3, self.box.bottom)

    def _values(self, curve: Curve) -> None:
        """Every value of a labelled curve beside its point, the newest first where room is short."""
        if not curve.labelled:
            return
        for i in reversed(range(curve.x.size)):
            if not (self.scale.shows(curve.x[i]) and np.isfinite(curve.y[i])):
                continue
            said = self.words.number(float(curve.y[i]), self.figure.y_decimals)
            at = self.scale.at(curve.x[i], curve.y[i])
            spot = self.taken.place(around(at, width(said, PLAIN, SEMIBOLD), LINE_PT - 1, 4), self._about())
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
            spots = around(self.scale.at(x, y), width(said, HEAVY, BOLD), LINE_PT)
            if spot := self.taken.place(spots, self._about()):
                self.page.text(spot.left, spot.bottom - 3, said, HEAVY, BOLD)
        places = sorted({place for *_, place in ends if place})
        for place in places if len(places) > 1 else ():
            x, _, y, _ = max(end for end in ends if end[3] == place)
            spots = around(self.scale.at(x, y), width(place, SMALL), LINE_PT - 1)
            if self.scale.shows(x) and (spot := self.taken.place(spots, self._about())):
                self.page.text(spot.left, spot.bottom - 3, place, SMALL, color="ink2")

    def _axes(self) -> None:
        page, box, words = self.page, self.box, self.words
        page.level(box.left, box.right, box.bottom, 0.9, "ink")
        for y, said in self.y_ticks:
            page.text(box.left - 5, self.scale.y(y) + 3.2, said, SMALL, color="ink2", align="right")
        last = box.left - 26
        for x, said in self.x_ticks if self.dated else ():
            at, wide = self.scale.x(x), width(said, SMALL)
            page.upright(at, box.bottom, box.bottom + 3, 0.75, "ink2")
            left = min(max(at - wide / 2, box.left - 20), box.right - wide + 4)
            if left > last:
                last = page.text(left, box.bottom + 13, said, SMALL, color="ink2") + 5
        if self.second:
            said = words.say(self.figure.title)
            wide = width(said, SMALL)
            spots = [
                Box(left, box.top, left + wide, box.top + LINE_PT)
                for left in (box.right - wide - 3, box.left + 3, (box.left + box.right - wide) / 2)
            ]
            spot = self.taken.place(spots, box) or spots[0]
            page.text(spot.left, spot.bottom - 3, said, SMALL, color="ink2")
        self._stages()

    def _stages(self) -> None:
        """Names of the stretches of y at the right edge, a mark at each border."""
        figure, box = self.figure, self.box
        shown = [
            (max(low, figure.y_low), min(high, figure.y_high), self.words.say(text))
            for low, high, text in figure.stages
            if high > figure.y_low and low < figure.y_high
        ]
        shown.sort(reverse=True)
        edges = {edge for low, high, _ in shown for edge in (low, high)} - {figure.y_low}
        self.page.strokes([((box.right + 1, self.scale.y(y)), (box.right + 5, self.scale.y(y))) for y in sorted(edges)])
        tall = SMALL * 1.12
        wanted = [self.scale.y((low + high) / 2) - tall / 2 for low, high, _ in shown]
        tops = apart(wanted, [tall] * len(shown), 0, box.top - 4, box.bottom + 4)
        for (_, _, said), top in zip(shown, tops, strict=True):
            self.page.text(box.right + 8, top + tall - 2.5, said, SMALL, color="ink2")


def _thinned(x: np.ndarray, y: np.ndarray, wide_pt: float) -> tuple[np.ndarray, np.ndarray]:
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


def said_lines(figure: Figure, words: Words, width_pt: float, size_pt: float = PLAIN) -> list[str]:
    """The caption of a figure broken to a width [pt] at a size [pt]."""
    return lines(caption(figure, words), size_pt, width_pt)


def caption_height(count: int, size_pt: float = PLAIN) -> float:
    """How high [pt] so many lines of a caption are at a size [pt]."""
    return count * size_pt * LEADING
