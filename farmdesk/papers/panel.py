"""The ground of a chart on paper: scale, bands, rain, target, fan, axes, names of stages. Curves come upon it."""

from __future__ import annotations

import numpy as np

from farmdesk.clock import FarmTime
from farmdesk.papers.letters import LEAST_PT, SEMIBOLD, width
from farmdesk.papers.page import Page
from farmdesk.papers.place import Box, Scale, Taken, apart
from farmdesk.text import N_, Words
from farmdesk.work.figures import ANCHOR, Band, Figure
from farmdesk.work.ticks import Tick, number_ticks, time_ticks

SMALL, PLAIN, HEAVY = LEAST_PT, 10.0, 10.5
LINE_PT = 12.5  # from one small baseline to the next
DASHES = (3.6, 2.7)
UNITS = {"good_h": N_("papers", "good hours"), "hours": N_("papers", "hours")}


class Panel:
    """One chart as it stands on the paper. `second`: it hangs under another; `dated`: days stand below it."""

    def __init__(
        self, page: Page, box: Box, figure: Figure, words: Words, time: FarmTime, *, second: bool = False,
        dated: bool = True,
    ) -> None:  # fmt: skip
        self.page, self.box, self.figure, self.words = page, box, figure, words
        self.second, self.dated = second, dated
        self.scale = Scale(box, figure.x_low, figure.x_high, figure.y_low, figure.y_high)
        self.taken = Taken()
        self.hung = any(curve.role == ANCHOR for curve in figure.curves)
        most_x, most_y = max(2, int(box.width / 21)), max(2, int(box.height / 19))
        self.x_ticks: list[Tick] = (
            time_ticks(time, words, figure.x_low, figure.x_high, most_x)
            if figure.x_kind == "time"
            else number_ticks(words, figure.x_low, figure.x_high, most_x, whole=True)
        )
        self.y_ticks = number_ticks(words, figure.y_low, figure.y_high, most_y)

    def grid(self) -> None:
        """Nights, and a level line at every mark of y."""
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

    def band(self, band: Band) -> None:
        """A target or a range as a pattern; a gap as a measure with two ends."""
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

    def fan(self) -> None:
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

    def rain(self) -> None:
        """Blocks standing on the axis, as high as the root of their mm; wet days in a row share one figure."""
        groups: list[list[tuple[Box, float]]] = []
        for low, high, mm in self.figure.rain:
            left, right = self.scale.at(low, 0)[0], self.scale.at(high, 0)[0]
            block = Box(left, self.box.bottom - min(30.0, 4.2 * mm**0.5), max(right, left + 3), self.box.bottom)
            if right > left:
                if not groups or left - groups[-1][-1][0].right > block.width * 1.6:
                    groups.append([])
                groups[-1].append((block, mm))
        for group in groups:
            for block, _ in group:
                self.page.fill(block, "ink2")
                self.taken.take(block)
        for group in groups:
            self._rain_words(Box(group[0][0].left, min(b.top for b, _ in group), group[-1][0].right, self.box.bottom),
                             sum(mm for _, mm in group))  # fmt: skip

    def _rain_words(self, block: Box, mm: float) -> None:
        said = self.words.number(mm, 0 if mm >= 1 else 1, "mm")
        wide, middle = width(said, SMALL), (block.left + block.right) / 2
        target = self.scale.y(self.figure.target[0]) - 2 if self.figure.target else self.box.bottom
        spots = [
            Box(block.right + 2, self.box.bottom - LINE_PT + 2, block.right + 2 + wide, self.box.bottom),
            Box(block.left - 2 - wide, self.box.bottom - LINE_PT + 2, block.left - 2, self.box.bottom),
            *(
                Box(middle - wide / 2, foot - LINE_PT + 2, middle + wide / 2, foot)
                for foot in (block.top - 1, target, *(block.top - 1 - 6 * n for n in range(1, 8)))
            ),
        ]
        if spot := self.taken.place(spots, self.box):
            self.page.text(spot.left, spot.bottom - 2, said, SMALL, color="ink2")

    def target(self) -> None:
        """The dashed level that is aimed at, with its words."""
        assert self.figure.target is not None
        level, text = self.figure.target
        if not self.figure.y_low <= level <= self.figure.y_high:
            return
        y = self.scale.y(level)
        self.page.level(self.box.left, self.box.right, y, 1.05, "ink", DASHES)
        said = self.words.say(text)
        spot = Box(self.box.left + 2, y - LINE_PT, self.box.left + 2 + width(said, PLAIN, SEMIBOLD), y - 1)
        self.taken.take(spot)
        self.taken.take(Box(self.box.left, y - 1, self.box.right, y + 1))
        self.page.text(spot.left, spot.bottom - 2, said, PLAIN, SEMIBOLD)

    def axes(self) -> None:
        """The axis of x with its days or hours, the marks of y, names of stages."""
        page, box, words = self.page, self.box, self.words
        page.level(box.left, box.right, box.bottom, 0.9, "ink")
        for y, said in self.y_ticks:
            page.text(box.left - 5, self.scale.y(y) + 3.2, said, SMALL, color="ink2", align="right")
        base, last, end = box.bottom + (17 if self.hung else 13), box.left - 26, box.right + 4
        if self.dated and self.figure.x_kind in UNITS:
            said = words.say(UNITS[self.figure.x_kind])
            end = box.right - width(said, SMALL) - 5
            page.text(box.right, base, said, SMALL, color="ink2", align="right")
        for x, said in self.x_ticks if self.dated else ():
            at, wide = self.scale.x(x), width(said, SMALL)
            page.upright(at, box.bottom, box.bottom + (6.5 if self.hung else 3), 0.6, "ink2")
            left = max(at - wide / 2, box.left - 20)
            if self.figure.x_kind not in UNITS:
                left = min(left, end - wide)
            if last < left and left + wide <= end:
                last = page.text(left, base, said, SMALL, color="ink2") + 5
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

    def about(self) -> Box:
        """Where words may stand: the chart and a line above it."""
        return Box(self.box.left - 3, self.box.top - LINE_PT - 4, self.box.right + 3, self.box.bottom)
