"""Where an axis carries a mark, and what is written there. Pure: no Qt, no computer's zone.

Times stand on the farm's own midnights and hours, whatever the zone of the computer is, and follow the
farm's zone through a change of the clocks. Month names come from the reader's language.
"""

from __future__ import annotations

import math
from datetime import date, timedelta

from farmdesk.clock import DAY_S, HOUR_S, FarmTime
from farmdesk.text import Words

Tick = tuple[float, str]

DAY_STEPS = (1, 2, 7, 14)  # days between marks; 7 and 14 fall on Mondays
HOUR_STEPS = (1, 2, 3, 6, 12)
MINUTE_STEPS = (1, 5, 10, 15, 30)


def time_ticks(time: FarmTime, words: Words, low_utc_s: float, high_utc_s: float, most_n: int) -> list[Tick]:
    """At most about `most_n` marks between two instants [UTC s]: days, or hours where it is short.

    The first day written, and every first day of a month, carries the month: `8 Jan`, `10`, `12`.
    Midnight among hours carries its day.
    """
    span_s = high_utc_s - low_utc_s
    if not (math.isfinite(span_s) and span_s > 0):
        return []
    if span_s > 2.5 * DAY_S:
        return _days(time, words, low_utc_s, high_utc_s, most_n)
    if span_s > 2 * HOUR_S:
        return _hours(time, words, low_utc_s, high_utc_s, most_n)
    step_s = 60 * next((m for m in MINUTE_STEPS if span_s / 60 / m <= most_n), 60)
    first = math.ceil(low_utc_s / step_s) * step_s
    return [(float(at), f"{time.local(at):%H:%M}") for at in range(first, math.floor(high_utc_s) + 1, step_s)]


def _days(time: FarmTime, words: Words, low: float, high: float, most_n: int) -> list[Tick]:
    first = time.calendar_day(low)
    days_n = (time.calendar_day(high) - first).days
    step = next((s for s in DAY_STEPS if days_n / s <= most_n), 0)
    marked = [d for d in (first + timedelta(days=i) for i in range(days_n + 1)) if _carries(d, step)]
    if not step and len(marked) > most_n:
        marked = marked[:: math.ceil(len(marked) / most_n)]
    ticks: list[Tick] = []
    month = 0
    for day in marked:
        at = float(time.instant(day))
        if not low <= at <= high:
            continue
        ticks.append((at, words.day(day) if day.month != month else str(day.day)))
        month = day.month
    return ticks


def _carries(day: date, step: int) -> bool:
    if step == 0:
        return day.day == 1
    if step >= 7:
        return day.weekday() == 0 and (day.toordinal() // 7) % (step // 7) == 0
    return day.toordinal() % step == 0


def _hours(time: FarmTime, words: Words, low: float, high: float, most_n: int) -> list[Tick]:
    step = next((s for s in HOUR_STEPS if (high - low) / HOUR_S / s <= most_n), 24)
    day, last = time.calendar_day(low), time.calendar_day(high)
    ticks: dict[float, str] = {}
    while day <= last:
        for hour in range(0, 24, step):
            at = float(time.instant(day, hour))
            if low <= at <= high:  # an hour that the clocks leave out falls on its neighbour, once
                ticks.setdefault(at, words.day(day) if hour == 0 else f"{time.local(at):%H}")
        day += timedelta(days=1)
    return sorted(ticks.items())


def number_step(low: float, high: float, most_n: int) -> float:
    """The distance between marks of a plain axis: 1, 2 or 5 times a power of ten; 0 where there is no stretch."""
    span = high - low
    if not (math.isfinite(span) and span > 0):
        return 0.0
    raw = span / max(most_n, 1)
    unit = 10.0 ** math.floor(math.log10(raw))
    return next(n * unit for n in (1, 2, 5, 10) if n * unit >= raw * (1 - 1e-9))


def number_ticks(words: Words, low: float, high: float, most_n: int, *, whole: bool = False) -> list[Tick]:
    """At most about `most_n` marks between two numbers, written with as many decimals as the step needs.

    whole: nothing between whole numbers is marked (days and hours).
    """
    step = number_step(low, high, most_n)
    if whole and step:
        step = max(step, 1.0)
    if not step:
        return []
    decimals = max(0, -math.floor(math.log10(step) + 1e-9))
    first, last = math.ceil(low / step - 1e-9), math.floor(high / step + 1e-9)
    return [(n * step, words.number(n * step, decimals)) for n in range(first, last + 1)]
