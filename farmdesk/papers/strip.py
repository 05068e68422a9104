"""The strip of life on paper: a ruler in days, fitted to the width, with what was when.

The same marks as on the screen: notches picks, a low bar vessels, a high bar beds with one water step a
day, slanted strokes rain, a double bar the gate to the store, upright hatch rest, an outlined peak the
mill. What lies ahead is dotted to the earliest day and hatched to the latest. No day is longer than another.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, timedelta

from farmdesk.clock import FarmTime
from farmdesk.papers.letters import SEMIBOLD, width
from farmdesk.papers.page import Page
from farmdesk.papers.place import Box, in_rows
from farmdesk.text import N_, Day, Days, Num, Text, Words, pct
from farmdesk.work.stories import Strip

BAR_PT, VESSEL_PT = 15.0, 3.0
LABEL_PT, LABEL = 10.0, 13.0  # letters above the bar, and from one row of them to the next
RULER_PT = 21.0  # ticks and dates below the line
NEAR_PT = 84.0  # a label may stand this far from its mark
ONE_DAY = timedelta(days=1)


@dataclass(frozen=True)
class _Label:
    day: date
    text: str
    font: str = SEMIBOLD
    color: str = "ink"


class StripDrawing:
    """A strip laid out for a width [pt]; `height` [pt] is known before it is painted."""

    def __init__(self, strip: Strip, width_pt: float, words: Words, time: FarmTime) -> None:
        self.strip, self.words, self.time = strip, words, time
        days_n = max(1, (strip.last_day - strip.first_day).days + 1)
        self.day_pt = width_pt / max(days_n, 12)  # a lot of three days is not drawn as if it were a season
        self.width = width_pt
        self.labels = self._labels()
        wanted = [self._x(label.day) for label in self.labels]
        widths = [width(label.text, LABEL_PT, label.font) for label in self.labels]
        self.rows = in_rows(wanted, widths, 9.0, 0.0, width_pt, NEAR_PT)
        self.height = LABEL * len(self.rows) + 5 + BAR_PT + RULER_PT

    def _x(self, day: date) -> float:
        return (day - self.strip.first_day).days * self.day_pt

    def _x_at(self, at_utc_s: float) -> float:
        local = self.time.local(at_utc_s)
        return self._x(local.date()) + (local.hour + local.minute / 60) / 24 * self.day_pt

    def _labels(self) -> list[_Label]:
        """What is written above the bar, in order of days."""
        strip, say = self.strip, self.words.say
        found = []
        if strip.picks:
            days = Days(strip.picks[0][0], strip.picks[-1][0])
            found.append(_Label(strip.picks[0][0], say(N_("papers", "picked {days}", days=days))))
        elif strip.vessel:
            found.append(_Label(self.time.local(strip.vessel[0][0]).date(), say(N_("papers", "in vessels"))))
        if strip.beds:
            found.append(_Label(strip.beds[0].day, self._beds_words()))
        if strip.gate is not None:
            if not strip.beds:
                found.append(_Label(strip.gate, say(N_("papers", "store {day}", day=Day(strip.gate)))))
        elif strip.ahead is not None:
            first, _, last = strip.ahead
            found.append(_Label(first, say(_expected(strip.in_vessel, first, last)), color="ink2"))
        if strip.milled is not None:
            found.append(_Label(strip.milled, say(N_("papers", "milled {day}", day=Day(strip.milled)))))
        return found

    def _beds_words(self) -> str:
        """`beds 8–19 Jan, 54 → 12 %`: the days and the water between which the steps run."""
        strip = self.strip
        known = [day.moisture_wb_frac for day in strip.beds if day.moisture_wb_frac is not None]
        last = strip.gate or strip.beds[-1].day
        days = Days(strip.beds[0].day, last)
        if len(known) < 2:
            return self.words.say(N_("papers", "beds {days}", days=days))
        return self.words.say(
            N_("papers", "beds {days}, {a} → {b}", days=days, a=Num(known[0] * 100), b=pct(known[-1], 0))
        )

    def paint(self, page: Page, left: float, top: float) -> None:
        """Paint it with its upper left corner there [pt]."""
        base = top + LABEL * len(self.rows) + 5 + BAR_PT
        bar = base - BAR_PT

        def x(day: date) -> float:
            return min(left + self._x(day), left + self.width)

        self._rest(page, x, bar, base)
        self._beds(page, x, bar, base)
        if self.strip.ahead is not None and self.strip.gate is None:
            self._ahead(page, x, bar, base, left + self.width)
        self._vessels(page, left, base)
        self._picks(page, x, base)
        for day, _ in self.strip.rain:
            at = x(day)
            marks = [((at + dx, bar - 0.5), (at + dx + 1.6, bar - 4.5)) for dx in (0.4, 2.6, 4.8)]
            page.strokes([m for m in marks if m[1][0] < left + self.width], 0.9, "ink2")
        if self.strip.gate is not None:
            at = x(self.strip.gate)
            page.strokes([((at + dx, bar - 4), (at + dx, base)) for dx in (-1.2, 1.4)], 1.2)
        if self.strip.milled is not None:
            at = min(max(x(self.strip.milled) + self.day_pt / 2, left + 6.5), left + self.width - 6.5)
            page.shape([(at - 6, base), (at, base - 17), (at + 6, base)], "paper", 1.1)
        self._ruler(page, x, left, base)
        row_y = top + LABEL - 3.5
        for row in self.rows:
            for which, edge in row:
                label = self.labels[which]
                page.text(left + edge, row_y, label.text, LABEL_PT, label.font, label.color)
            row_y += LABEL

    def _beds(self, page: Page, x: Callable[[date], float], bar: float, base: float) -> None:
        """One water step a day; a day without a reading keeps the ground, for nothing may be bridged."""
        days = self.strip.beds
        run = 0
        for i, day in enumerate(days):
            shade = page.water(day.moisture_wb_frac)
            after = days[i + 1] if i + 1 < len(days) else None
            if after is not None and after.day - day.day == ONE_DAY and page.water(after.moisture_wb_frac) == shade:
                continue
            page.fill(Box(x(days[run].day), bar, x(day.day + ONE_DAY), base), shade)
            run = i + 1
        start = 0
        for i in range(1, len(days) + 1):
            if i == len(days) or days[i].day - days[i - 1].day > ONE_DAY:
                page.frame(Box(x(days[start].day), bar, x(days[i - 1].day + ONE_DAY), base), 0.75)
                start = i

    def _rest(self, page: Page, x: Callable[[date], float], bar: float, base: float) -> None:
        strip = self.strip
        if strip.gate is None:
            return
        end = strip.sent or strip.milled or strip.today + ONE_DAY
        box = Box(x(strip.gate), bar, max(x(end), x(strip.gate)), base)
        if box.width <= 0:
            return
        page.pattern(box, "resting", "rule")
        page.frame(box, 0.75, "rule")
        n = (min(end, strip.today + ONE_DAY) - strip.gate).days
        over = strip.sent or strip.milled
        said = self.words.say(
            N_("papers", "at rest, {n} {n:day|days}", n=n)
            if over
            else N_("papers", "at rest, {n} {n:day|days} so far", n=n)
        )
        wide = width(said, LABEL_PT)
        if box.width > wide + 12:
            middle = (box.left + box.right) / 2
            page.fill(Box(middle - wide / 2 - 4, bar + 0.8, middle + wide / 2 + 4, base - 0.8), "paper")
            page.text(middle, base - 4.4, said, LABEL_PT, align="middle")

    def _ahead(self, page: Page, x: Callable[[date], float], bar: float, base: float, right: float) -> None:
        earliest, likely, latest = self.strip.ahead or (self.strip.today, self.strip.today, None)
        now = x((self.strip.beds[-1].day if self.strip.beds else self.strip.today) + ONE_DAY)
        first = max(x(earliest), now)
        last = max(x(latest + ONE_DAY) if latest else right, first)
        if first > now:
            page.pattern(Box(now, bar, first, base), "expected", "ink2")
            page.frame(Box(now, bar, first, base), 0.75, "rule", dash=(2.4, 1.8))
        page.pattern(Box(first, bar, last, base), "estimated")
        page.strokes([((first, y), (last, y)) for y in (bar, base)], 0.75)
        if latest:  # an open end is closed by no line
            page.upright(last, bar, base, 0.75, "ink")
        page.upright(min(max(x(likely) + self.day_pt / 2, first), last), bar - 1, base + 1, 1.8, "ink")

    def _vessels(self, page: Page, left: float, base: float) -> None:
        tomorrow = self._x(self.strip.today + ONE_DAY)
        spans = {
            (self._x_at(start), self._x_at(end) if end is not None else tomorrow) for start, end in self.strip.vessel
        }
        for start, end in sorted(spans):  # twelve sealed bags at once are one bar
            a, b = max(start, 0.0), min(max(end, start + 1.5), self.width)
            page.fill(Box(left + a, base - VESSEL_PT, left + b, base), "ink")

    def _picks(self, page: Page, x: Callable[[date], float], base: float) -> None:
        """A notch for each picking day; its height is its weight beside the heaviest day's."""
        most = max((grams for _, grams in self.strip.picks), default=1) or 1
        for day, grams in self.strip.picks:
            tall = BAR_PT * (0.5 + 0.65 * grams / most)
            page.fill(Box(x(day), base - tall, x(day) + max(2.2, min(self.day_pt * 0.3, 4.0)), base), "ink")

    def _ruler(self, page: Page, x: Callable[[date], float], left: float, base: float) -> None:
        right = left + self.width
        page.level(left, right, base, 1.2, "ink")
        days = [self.strip.first_day + timedelta(days=i) for i in range(int(self.width / self.day_pt + 1e-6) + 1)]
        mondays = [day for day in days if day.weekday() == 0]
        if self.day_pt > 2.2:
            page.strokes([((x(d), base), (x(d), base + 2.4)) for d in days if d.weekday()], 0.5, "rule")
        page.strokes([((x(d), base), (x(d), base + 4.8)) for d in mondays], 0.75, "ink2")
        names = [self.words.say(Day(day)) for day in mondays]
        widest = max((width(name, LABEL_PT) for name in names), default=0.0)
        every = max(1, -(-int(widest + 14) // max(1, int(7 * self.day_pt))))
        for day, name in list(zip(mondays, names, strict=True))[::every]:
            wide = width(name, LABEL_PT)
            at = min(max(x(day) - wide / 2, left), right - wide)
            page.text(at, base + 15, name, LABEL_PT, color="ink2")


def _expected(in_vessel: bool, first: date, last: date | None) -> Text:
    if in_vessel:
        if last is None:
            return N_("papers", "ferment ends on {day} at the earliest", day=Day(first))
        return N_("papers", "ferment ends on {days}, expected", days=Days(first, last))
    if last is None:
        return N_("papers", "dry on {day} at the earliest", day=Day(first))
    return N_("papers", "dry on {days}, expected", days=Days(first, last))
