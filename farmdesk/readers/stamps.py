"""Dates and times as loggers write them, a column at a time, and from the farm's clock to UTC.

Each shape of a cell is understood once (which places hold the year, the hour, ...) and then all cells of
that shape are taken apart together. Where day and month could be either, all three parts are kept until
the whole file has been seen; `day_order` then says which order the file itself speaks for.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, fields
from datetime import date, timedelta
from functools import lru_cache
from typing import Any, NamedTuple

import numpy as np
from numpy.typing import NDArray

from farmdesk.clock import DAY_S, UTC, FarmTime
from farmdesk.readers.pieces import Bytes, Ints, by_shape, whole_number

Bools = NDArray[np.bool_]
Whole = NDArray[np.signedinteger[Any]]

FIRST_YEAR, LAST_YEAR = 1990, 2099  # outside, a clock was never set or the cell is no date
NO_OFFSET = 1 << 20  # [s]: the stamp names no zone of its own
_OLD_D, _AHEAD_D = 800, 2  # a file read in is from this season or the last; zones differ by up to a day
ORDERS = ("dmy", "mdy", "ymd")
_EPOCH = date(1970, 1, 1)
_FIRST_S = (date(FIRST_YEAR, 1, 1) - _EPOCH).days * DAY_S
_LAST_S = (date(LAST_YEAR + 1, 1, 1) - _EPOCH).days * DAY_S

_MONTHS = {
    name: number
    for number, names in enumerate(
        ("jan ene", "feb", "mar", "apr abr", "may", "jun", "jul", "aug ago", "sep set", "oct", "nov", "dec dic"), 1
    )
    for name in names.split()
}  # fmt: skip
_GAP = r"[\s\0,_-]*"
_DATES = (
    r"(?P<y>0000)[-/.](?P<m>00?)[-/.](?P<d>00?)",
    r"(?P<a>00?)(?P<by>[-/. ])(?P<b>00?)(?P=by)(?P<c>0000|00)",
    r"(?P<y>0000)(?P<m>00)(?P<d>00)",
    r"(?P<d>00?)[-/. ]?(?:de )?(?P<name>[a-z]{3,10})\.?[-/., ]+(?:de )?(?P<y>0000|00)",
    r"(?P<name>[a-z]{3,10})\.?[- ](?P<d>00?),?[ -]+(?P<y>0000)",
)
_HOURS = (
    r"(?P<h>00?)[:.](?P<i>00)(?:[:.](?P<s>00)(?:[.,:]0{1,9})?)?(?:[\s\0]*(?P<half>[ap])\.?\s?m\.?)?"
    r"(?:[\s\0]*(?P<zone>z|utc|gmt))?(?:[\s\0]*(?P<sign>[+-])(?P<zh>00):?(?P<zi>00)?)?"
)
_SHORT = r"(?P<h>00)(?P<i>00)(?P<s>00)?(?P<zone>z)?"  # after a date without signs: 20250113T170000Z
_WEEKDAY = r"(?:[a-z]{2,9}\.?,?\s+)?"
_FORMS = tuple(
    re.compile(form)
    for form in (
        *(f"{_WEEKDAY}{day}(?:[t]|{_GAP}){_HOURS}" for day in _DATES),
        *(f"{_HOURS}{_GAP}{day}" for day in _DATES),
        f"{_DATES[2]}[t _-]?{_SHORT}",
        *(f"{_WEEKDAY}{day}" for day in _DATES),
        _HOURS,
        r"(?P<seconds>0{10})(?:0{3})?(?:\.0*)?",
    )
)
_HOUR_ALONE = len(_FORMS) - 2


class Recipe(NamedTuple):
    """Where in a cell of one shape the parts of a date stand: name -> (first place, place after the last)."""

    places: dict[str, tuple[int, int]]
    month: int = 0  # of a month written as a word
    half: str = ""  # "a" or "p" of a twelve-hour clock
    sign: int = 0  # of an offset from UTC
    utc: bool = False


@lru_cache(maxsize=4096)
def recipe(shape: str) -> Recipe | None:
    """How to read cells of this shape as an instant, a day or an hour; None where nobody could."""
    for form in _FORMS:
        match = form.fullmatch(shape)
        if match is None:
            continue
        named = {name: text for name, text in match.groupdict().items() if text}
        if form is _FORMS[_HOUR_ALONE] and ":" not in shape:
            continue  # 23.50 is a temperature
        month = _MONTHS.get(named.get("name", "")[:3], 0)
        if "name" in named and not month:
            continue
        places = {name: match.span(name) for name, text in named.items() if text[0] == "0"}
        sign = {"+": 1, "-": -1}.get(named.get("sign", ""), 0)
        return Recipe(places, month, named.get("half", ""), sign, "zone" in named)
    return None


@dataclass(frozen=True, eq=False)
class Stamps:
    """A column of dates, taken apart. `days` since 1970 count where `ok` and not `free`."""

    ok: Bools
    dated: Bools
    timed: Bools
    free: Bools  # day, month and year could stand in more than one order: a, b, c as written
    days: Whole
    second_s: Whole  # since midnight
    offset_s: Whole  # from UTC where the stamp says so, else NO_OFFSET
    a: Whole
    b: Whole
    c: Whole

    def __len__(self) -> int:
        return len(self.ok)

    def only(self, rows: Bools) -> Stamps:
        """These rows alone."""
        return Stamps(*(getattr(self, part.name)[rows] for part in fields(self)))


def joined(parts: list[Stamps]) -> Stamps:
    """Stamps one after the other."""
    return Stamps(*(np.concatenate([getattr(part, name.name) for part in parts]) for name in fields(Stamps)))


def stamps(cells: Bytes) -> Stamps:
    """Take a column's cells apart; what is no date stands with `ok` False."""
    n = len(cells)
    kinds = [bool] * 4 + [np.int32] * 3 + [np.int16] * 3  # small: a million rows are kept until the file ends
    found = Stamps(*(np.zeros(n, kind) for kind in kinds))
    found.offset_s[:] = NO_OFFSET
    for shape, rows in by_shape(cells):
        how = recipe(shape)
        if how is not None:
            _fill(found, how, cells[rows], rows)
    return found


def _fill(found: Stamps, how: Recipe, cells: Bytes, rows: Ints) -> None:
    part = {name: whole_number(cells, low, high) for name, (low, high) in how.places.items()}
    if "seconds" in part:
        found.days[rows], found.second_s[rows] = np.divmod(part["seconds"], DAY_S)
        found.offset_s[rows] = 0
        real = (part["seconds"] >= _FIRST_S) & (part["seconds"] < _LAST_S)
        found.dated[rows] = found.timed[rows] = found.ok[rows] = real
        return
    ok = np.ones(len(rows), bool)
    if "h" in part:
        hour, minute, second = part["h"], part["i"], part.get("s", np.zeros(len(rows), np.int64))
        ok &= (hour <= (12 if how.half else 23)) & (minute <= 59) & (second <= 59)
        if how.half:
            hour = hour % 12 + (12 if how.half == "p" else 0)
        found.second_s[rows] = hour * 3600 + minute * 60 + second
        found.timed[rows] = ok
        if how.sign:
            ahead = part["zh"] * 3600 + part.get("zi", np.zeros(len(rows), np.int64)) * 60
            ok &= ahead <= 14 * 3600
            found.offset_s[rows] = how.sign * ahead
        elif how.utc:
            found.offset_s[rows] = 0
    if "a" in part:
        found.free[rows] = True
        found.a[rows], found.b[rows], found.c[rows] = part["a"], part["b"], part["c"]
        found.dated[rows] = ok
        ok = ok & _any_order(part["a"], part["b"], part["c"])
    elif "d" in part:
        month = part["m"] if "m" in part else np.full(len(rows), how.month)
        found.days[rows], real = days_of(part["y"], month, part["d"])
        ok &= real
        found.dated[rows] = ok
    found.ok[rows] = ok


def _any_order(a: Whole, b: Whole, c: Whole) -> Bools:
    real = np.zeros(len(a), bool)
    for order in ORDERS:
        real |= days_in(order, a, b, c)[1]
    return real


def days_of(year: Whole, month: Whole, day: Whole) -> tuple[Ints, Bools]:
    """Days since 1970 of calendar dates, and which of them exist; a year of two digits is of this century."""
    year = np.where(year < 100, year + 2000, year).astype(np.int64)
    real = (year >= FIRST_YEAR) & (year <= LAST_YEAR) & (month >= 1) & (month <= 12) & (day >= 1) & (day <= 31)
    months = np.where(real, (year - 1970) * 12 + month - 1, 0)
    begins = months.astype("M8[M]").astype("M8[D]").astype(np.int64)
    days = begins + np.where(real, day, 1) - 1
    real &= days < (months + 1).astype("M8[M]").astype("M8[D]").astype(np.int64)
    return days, real


def days_in(order: str, a: Whole, b: Whole, c: Whole) -> tuple[Ints, Bools]:
    """Days since 1970 of dates whose parts stand in an order ("dmy", "mdy", "ymd"), and which exist."""
    part = dict(zip(order, (a, b, c), strict=True))
    return days_of(part["y"], part["m"], part["d"])


class Order(NamedTuple):
    """The order the file speaks for, and the others that are as likely (empty where it is sure)."""

    order: str
    others: tuple[str, ...] = ()


def day_order(all_stamps: Stamps, now_utc_s: int) -> Order:
    """Which order of day, month and year fits a file that is read now [UTC s].

    An order under which days do not exist is out; then one that sets the readings in the future or years
    back, where another does not; then the one that scatters them (a logger writes day after day, and in the
    wrong order it leaps from month to month).
    """
    free = all_stamps.only(all_stamps.free & all_stamps.ok)
    if not len(free):
        return Order("dmy")
    read = {order: days_in(order, free.a, free.b, free.c) for order in ORDERS}
    most = max(int(real.sum()) for _, real in read.values())
    # a few broken cells decide nothing
    left = {order: days[real] for order, (days, real) in read.items() if int(real.sum()) >= 0.98 * most}
    today = now_utc_s // DAY_S
    recent = {order: days for order, days in left.items() if today - _OLD_D <= int(days.max()) <= today + _AHEAD_D}
    left = recent or left
    spans = {order: int(np.ptp(days)) for order, days in left.items()}
    least = min(spans.values())
    best = [order for order in left if spans[order] < 3 * least + 1]
    others = [order for order in best[1:] if not np.array_equal(left[order], left[best[0]])]
    return Order(best[0], tuple(others))


def wall_s(all_stamps: Stamps, order: str) -> tuple[Ints, Bools]:
    """Seconds since 1970 on the wall clock of the stamps, and which of them exist in this order."""
    free = all_stamps.free
    if not free.any():
        return all_stamps.days.astype(np.int64) * DAY_S + all_stamps.second_s, all_stamps.ok
    days, real = days_in(order, all_stamps.a, all_stamps.b, all_stamps.c)
    days = np.where(free, days, all_stamps.days)
    return days * DAY_S + all_stamps.second_s, all_stamps.ok & (real | ~free)


def instants(walls_s: Ints, farm: FarmTime) -> tuple[Ints, int]:
    """From the farm's wall clock to UTC [s], rows in the file's order; and how many rows could be either hour.

    Where an hour happens twice, rows after the clock stepped back in the file are of the second one; where
    the file shows no such step they are taken for the first and counted.
    """
    day = walls_s // DAY_S
    starts = np.concatenate(([0], np.flatnonzero(np.diff(day)) + 1)) if len(day) else np.zeros(0, np.int64)
    days, where = np.unique(day[starts], return_inverse=True)
    ahead = np.empty(len(days), np.int64)
    turning = []
    for i, number in enumerate(days.tolist()):
        midnight = _EPOCH + timedelta(number)
        ahead[i] = number * DAY_S - farm.instant(midnight)
        if (number + 1) * DAY_S - farm.instant(midnight + timedelta(1)) != ahead[i]:
            turning.append(number)
    at_utc_s = walls_s - np.repeat(ahead[where], np.diff(starts, append=len(day)))
    unsure_n = sum(_turn(at_utc_s, walls_s, np.flatnonzero(day == number), farm) for number in turning)
    return at_utc_s, unsure_n


def _turn(at_utc_s: Ints, walls_s: Ints, rows: Ints, farm: FarmTime) -> int:
    """Fill in one day on which the clock is set; answers the rows that could be either hour."""
    begin = int(walls_s[rows[0]]) // DAY_S * DAY_S
    day = _EPOCH + timedelta(begin // DAY_S)
    known: dict[int, tuple[int, bool]] = {}
    twice = np.zeros(len(rows), bool)
    back_s = begin + DAY_S - farm.instant(day + timedelta(1)) - begin + farm.instant(day)
    for k, wall in enumerate(walls_s[rows].tolist()):
        if wall not in known:
            minute, second = divmod(wall - begin, 60)
            at = farm.instant(day, minute // 60, minute % 60, second)
            known[wall] = at, _wall(at - back_s, farm) == wall
        at_utc_s[rows[k]], twice[k] = known[wall]
    unsure = rows[twice]
    if back_s >= 0 or not len(unsure):
        return 0
    steps = np.flatnonzero(np.diff(walls_s[unsure]) < 0)
    if len(steps):
        at_utc_s[unsure[steps[0] + 1 :]] -= back_s
        return 0
    return len(unsure)


def _wall(at_utc_s: int, farm: FarmTime) -> int:
    return int(farm.local(at_utc_s).replace(tzinfo=UTC).timestamp())
