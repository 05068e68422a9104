"""The strip of life: a lot on a ruler in days, with the same marks on a card, on its page and on paper."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPolygonF
from PySide6.QtWidgets import QWidget

from farmdesk.clock import FarmTime
from farmdesk.desk.theme import SEMIBOLD, look
from farmdesk.desk.widgets.drawn import Drawn
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.twin import Table
from farmdesk.text import N_, Day, Days, Text, Words
from farmdesk.work.stories import Strip

CARD_PX, PAGE_PX = 8.0, 18.0  # a day, on a card and on a page
CARD_HIGH_PX, PAGE_HIGH_PX = 10, 20

Ahead = tuple[date, date, date | None]  # earliest, likely, latest; None: open


def paint_strip(
    ink: Ink,
    rect: QRectF,
    strip: Strip,
    px_per_day: float,
    time: FarmTime,
    words: Words | None = None,
) -> None:
    """Draw a strip in a rectangle; its first day stands at the left edge.

    `px_per_day` [px]: 8 on a card, 18 on a page. With `words` dates stand below the ruler and the stages
    are named; without them it is the bare strip of a card.
    """
    px = look().px
    high = px(PAGE_HIGH_PX if words else CARD_HIGH_PX)
    base = rect.bottom() - (px(26) if words else px(8))
    top = base - high
    left, right = rect.left(), rect.right()

    def x(day: date) -> float:
        return left + (day - strip.first_day).days * px_per_day

    def x_at(at_utc_s: float) -> float:
        local = time.local(at_utc_s)
        return x(local.date()) + (local.hour + local.minute / 60) / 24 * px_per_day

    tomorrow = strip.today + timedelta(days=1)
    begins = strip.gate or (strip.ahead[0] if strip.ahead else None)
    _paint_vessels(ink, strip, x_at, base, tomorrow, x)
    if begins is not None and strip.rest_until is not None and strip.sent is None:
        start = strip.gate or (strip.ahead[2] or strip.ahead[1] if strip.ahead else begins)
        _paint_rest(ink, x(start), min(x(strip.rest_until), right), top, high)
    elif strip.gate is not None and (gone := strip.sent or strip.milled):
        _paint_rest(ink, x(strip.gate), x(gone), top, high)
    elif strip.gate is not None:
        _paint_rest(ink, x(strip.gate), min(x(tomorrow), right), top, high)
    _paint_beds(ink, strip, x, top, high, px_per_day)
    if strip.ahead is not None and strip.gate is None:
        _paint_ahead(ink, strip, strip.ahead, x, top, high, right)
    for day, grams in strip.picks:
        notch = high * (0.5 + 0.8 * min(1.0, grams / 1_200_000))
        ink.fill(x(day), base - notch, max(3, px(px_per_day * 0.22)), notch, "ink")
    for day, _ in strip.rain:
        for i in range(3):
            at = x(day) + px(1 + 3.5 * i)
            ink.line(at, top - px(3), at + px(2), top - px(9), 1.1, "ink2")
    if strip.gate is not None:
        ink.upright(x(strip.gate) - px(1.5), top - px(4), base, 1.6, "ink")
        ink.upright(x(strip.gate) + px(2), top - px(4), base, 1.6, "ink")
    if strip.milled is not None:
        _paint_mill(ink, x(strip.milled), base, high)
    _paint_ruler(ink, strip, x, base, right, words, px_per_day)
    if words is not None:
        _paint_names(ink, strip, x, top, high, words, right)


def _paint_vessels(
    ink: Ink, strip: Strip, x_at: Callable[[float], float], base: float, tomorrow: date, x: Callable[[date], float]
) -> None:
    high = look().px(4)
    for start, end in strip.vessel:
        until = x_at(end) if end is not None else x(tomorrow)
        ink.fill(x_at(start), base - high, max(2, until - x_at(start)), high, "ink")


def _paint_beds(
    ink: Ink, strip: Strip, x: Callable[[date], float], top: float, high: float, wide: float
) -> None:  # fmt: skip
    """One water step a day; a day without a reading keeps the ground, for nothing may be bridged."""
    days = strip.beds
    for day in days:
        ink.fill(x(day.day), top, wide, high, look().water(day.moisture_wb_frac))
    start = 0
    for i in range(1, len(days) + 1):
        if i == len(days) or (days[i].day - days[i - 1].day).days > 1:
            ink.frame(x(days[start].day), top, x(days[i - 1].day) + wide - x(days[start].day), high, 1, "ink")
            start = i


def _paint_ahead(
    ink: Ink, strip: Strip, ahead: Ahead, x: Callable[[date], float], top: float, high: float, right: float
) -> None:
    earliest, likely, latest = ahead
    now = x(strip.beds[-1].day + timedelta(days=1)) if strip.beds else x(strip.today + timedelta(days=1))
    first = min(max(x(earliest), now), right)
    last = min(x(latest) if latest else right, right)
    if first > now:
        ink.pattern(now, top, first - now, high, "expected", "ink2")
        ink.frame(now, top, first - now + 1, high, 1, "rule", dashed=True)
    ink.pattern(first, top, last - first, high, "estimated")
    if latest:
        ink.frame(first, top, last - first, high, 1, "ink")
    else:  # open: no line closes it
        ink.level(first, last, top, 1, "ink")
        ink.level(first, last, top + high, 1, "ink")
    ink.upright(min(x(likely), right), top - 1, top + high + 1, 2.4, "ink")


def _paint_rest(ink: Ink, left: float, right: float, top: float, high: float) -> None:
    if right > left:
        ink.pattern(left, top, right - left, high, "resting", "ink2")
        ink.frame(left, top, right - left, high, 1, "rule")


def _paint_mill(ink: Ink, x: float, base: float, high: float) -> None:
    peak = QPolygonF([QPointF(x - high * 0.5, base), QPointF(x, base - high * 1.2), QPointF(x + high * 0.5, base)])
    ink.shape(peak, "paper", 1.4, "ink")


def _paint_ruler(
    ink: Ink, strip: Strip, x: Callable[[date], float], base: float, right: float, words: Words | None, wide: float
) -> None:
    px = look().px
    ink.level(x(strip.first_day), right, base, 1.6 if words else 1, "ink" if words else "ink2")
    days = int((right - x(strip.first_day)) / wide) + 1
    last_word = -1e9
    for i in range(days):
        day = strip.first_day + timedelta(days=i)
        monday = day.weekday() == 0
        at = x(day)
        if at > right:
            break
        ink.upright(at + 0.5, base, base + px(6 if monday else 3), 1, "rule")
        if words is not None and monday:
            name = words.say(Day(day))
            if at + ink.width(name, 14) < right and at > last_word + px(12):
                last_word = ink.text(at + px(1), base + px(21), name, 14, color="ink2")


def _paint_names(
    ink: Ink, strip: Strip, x: Callable[[date], float], top: float, high: float, words: Words, right: float
) -> None:
    px, say = look().px, words.say
    inside = top + high / 2 + px(5)
    known = [day for day in strip.beds if day.moisture_wb_frac is not None]
    if known:
        start, end = x(known[0].day), x(strip.beds[-1].day + timedelta(days=1))
        name, ground = say(N_("strip", "beds")), look().water(known[0].moisture_wb_frac)
        if end - start > ink.width(name, 14, SEMIBOLD) + px(12):
            ink.text(start + px(5), inside, name, 14, SEMIBOLD, look().text_on(ground))
    taken = -1e9
    if strip.picks:
        left = max(x(strip.picks[0][0]) - px(10), 0)
        taken = ink.text(left, top - px(6), say(N_("strip", "picked")), 14, color="ink2")
    gate = awaited(strip)
    if gate is not None and x(gate[0]) > taken + px(10):
        taken = ink.text(x(gate[0]), top - px(6), say(gate[1]), 14, SEMIBOLD)
    if strip.milled is not None:
        name = say(N_("strip", "milled {day}", day=Day(strip.milled)))
        at = min(x(strip.milled), right - ink.width(name, 14))
        if at > taken + px(10):
            ink.text(at, top - px(8), name, 14, color="ink2")
    start_day = strip.gate or (strip.ahead[2] if strip.ahead else None)
    gone = strip.sent or strip.milled
    end_day = gone or strip.rest_until
    if start_day is not None and end_day is not None and end_day > start_day:
        n = (end_day - start_day).days
        text = (
            N_("strip", "at rest, {n} {n:day|days}", n=n)
            if gone
            else N_("strip", "rest {n} {n:day|days}, until {day}", n=n, day=Day(end_day))
        )
        wide, left, last = ink.width(say(text), 14), x(start_day), min(x(end_day), right)
        if last - left > wide + px(16):
            middle = (left + last) / 2
            ink.fill(middle - wide / 2 - px(5), top + 1, wide + px(10), high - 2, "paper")
            ink.text(middle, inside, say(text), 14, align="middle")


def awaited(strip: Strip) -> tuple[date, Text] | None:
    """The day at which the gate into the store stands, or what is awaited next, and its words."""
    if strip.gate is not None:
        return strip.gate, N_("strip", "gate {days}", days=Day(strip.gate))
    if strip.ahead is None:
        return None
    first, _, last = strip.ahead
    if strip.in_vessel:
        days = N_("strip", "ferment ends {days}", days=Days(first, last)) if last else None
        return first, days or N_("strip", "ferment ends not before {day}", day=Day(first))
    if last is None:
        return first, N_("strip", "gate not before {day}", day=Day(first))
    return first, N_("strip", "gate {days}", days=Days(first, last))


class StripWidget(Drawn):
    """A strip as a picture of its own, fitted to the width it is given."""

    def __init__(self, time: FarmTime, words: Words, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.time, self.words = time, words
        self.strip: Strip | None = None
        self.said = ""

    def show_strip(self, strip: Strip, sentence: str) -> None:
        """Draw this one; the sentence says it."""
        self.strip, self.said = strip, sentence
        self.told()

    def sentence(self) -> str:
        return self.said

    def table(self) -> Table | None:
        if self.strip is None:
            return None
        say = self.words.say
        rows = [[say(Day(d)), self.tr("picked"), self.words.number(g / 1000, 0, "kg")] for d, g in self.strip.picks]
        for start, end in self.strip.vessel:
            until = f"{self.time.local(end):%H:%M}" if end is not None else self.tr("still in it")
            rows.append([say(Day(self.time.local(start).date())), self.tr("vessel"), until])
        for day in self.strip.beds:
            known = day.moisture_wb_frac
            told = self.tr("not measured") if known is None else self.words.number(known * 100, 1, "%")
            rows.append([say(Day(day.day)), self.tr("beds"), told])
        rows += [[say(Day(d)), self.tr("rain"), self.words.number(mm, 0, "mm")] for d, mm in self.strip.rain]
        for when, name in (
            (self.strip.gate, self.tr("into the store")), (self.strip.sent, self.tr("sent to the mill")),
            (self.strip.milled, self.tr("milled")), (self.strip.rest_until, self.tr("rest ends")),
        ):  # fmt: skip
            if when is not None:
                rows.append([say(Day(when)), name, ""])
        return [self.tr("day"), self.tr("where"), self.tr("figure")], rows

    def paint(self, ink: Ink) -> None:
        if self.strip is None:
            return
        days = max(1, (self.strip.last_day - self.strip.first_day).days + 1)
        wide = min(look().px(PAGE_PX) * 2, max(2.0, self.width() / days))
        paint_strip(ink, QRectF(0, 0, self.width(), self.height()), self.strip, wide, self.time, self.words)
