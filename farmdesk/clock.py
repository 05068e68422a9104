"""Instants and farm days. The only place that knows a time zone or reads the computer's clock.

An instant is an integer of UTC seconds (`..._utc_s`). The farm's zone is a fact of the season file,
never of the computer. A work day begins at 04:00 farm time (a setting): 02:30 on Wednesday morning
belongs to the night of Tuesday.
"""

from __future__ import annotations

import re
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import date, datetime, timedelta, timezone
from functools import lru_cache
from zoneinfo import ZoneInfo, available_timezones

from farmdesk.errors import NotPossible
from farmdesk.text import N_, Day, Moment, Text

HOUR_S = 3600
DAY_S = 86_400
UTC = timezone.utc
_TIME = re.compile(r"^(\d{1,2})(?:[:.,h ]?(\d{2}))?$")

_source: Callable[[], float] = time.time


def now() -> int:
    """The present instant [UTC s], by the clock in force."""
    return int(_source())


def of_the_computer() -> int:
    """The instant [UTC s] by the computer's own clock, whatever hour the practice season is played at."""
    return int(time.time())


def now_ms() -> int:
    """The present instant in UTC milliseconds [ms], for ids that keep their order."""
    return int(_source() * 1000)


def stand_at(at_utc_s: int | None) -> None:
    """From here on the clock runs on from an instant [UTC s]: in the practice season the handle's hour is
    now. None: the computer's own clock again.
    """
    global _source
    if at_utc_s is None:
        _source = time.time
    else:
        ahead = at_utc_s - time.time()
        _source = lambda: time.time() + ahead  # noqa: E731


@contextmanager
def set_to(at_utc_s: Callable[[], float] | float) -> Iterator[None]:
    """Run with another clock: tests and the practice season set the hour themselves."""
    global _source
    before = _source
    _source = at_utc_s if callable(at_utc_s) else (lambda: float(at_utc_s))
    try:
        yield
    finally:
        _source = before


@lru_cache(maxsize=8)
def _zone(name: str) -> ZoneInfo:
    try:
        return ZoneInfo(name)
    except Exception as error:  # ZoneInfo raises four kinds for a bad name
        raise NotPossible(N_("clock", "There is no time zone called {name}.", name=name)) from error


@lru_cache(maxsize=1)
def _zones() -> tuple[str, ...]:
    return tuple(sorted(name for name in available_timezones() if "/" in name or name == "UTC"))


def zones_like(part: str) -> list[str]:
    """The time zones that a part of a name may mean, the likeliest first: `tegu`, `new york`, `America/Lima`."""
    low = "_".join(part.strip().split()).casefold()
    if not low:
        return []

    def order(name: str) -> tuple[int, str]:
        full, city = name.casefold(), name.rsplit("/", 1)[-1].casefold()
        return 0 if full == low else 1 if city == low else 2 if city.startswith(low) else 3, name

    return sorted((name for name in _zones() if low in name.casefold()), key=order)


@dataclass(frozen=True)
class FarmTime:
    """The farm's own time: its IANA zone and the hour [h] at which its work day begins."""

    zone: str
    day_starts_h: int = 4

    def local(self, at_utc_s: float) -> datetime:
        """The wall-clock time on the farm at an instant [UTC s]."""
        return datetime.fromtimestamp(at_utc_s, _zone(self.zone))

    def instant(self, day: date, hour: int = 0, minute: int = 0, second: int = 0) -> int:
        """The instant [UTC s] of a wall-clock time; the earlier one where an hour happens twice."""
        return int(datetime(day.year, day.month, day.day, hour, minute, second, tzinfo=_zone(self.zone)).timestamp())

    def farm_day(self, at_utc_s: float) -> date:
        """The work day an instant belongs to: before `day_starts_h` it is still yesterday."""
        return (self.local(at_utc_s) - timedelta(hours=self.day_starts_h)).date()

    def calendar_day(self, at_utc_s: float) -> date:
        """The calendar day of an instant, midnight to midnight."""
        return self.local(at_utc_s).date()

    def read(self, typed: str) -> int:
        """An instant from ISO text; without an offset it is farm time.

        Raises NotPossible when the text is no date and time.
        """
        try:
            at = datetime.fromisoformat(typed.strip())
        except ValueError:
            raise NotPossible(
                N_("clock", "“{typed}” is not a date and time; write it like 2025-01-14T18:41.", typed=typed)
            ) from None
        return int((at if at.tzinfo else at.replace(tzinfo=_zone(self.zone))).timestamp())

    def typed(self, day: date, typed: str) -> int:
        """The instant [UTC s] of a clock time on the sheet of a work day: `15:20`, `1520`, `15.20`, `9`.

        Hours before the work day begins belong to the night that follows: 02:30 on Tuesday's sheet is
        Wednesday 02:30. Raises NotPossible for what is no time of day.
        """
        match = _TIME.match(typed.strip())
        hour, minute = (int(match[1]), int(match[2] or 0)) if match else (24, 0)
        if hour > 23 or minute > 59:
            raise NotPossible(N_("clock", "“{typed}” is not a time of day; write it like 15:20.", typed=typed.strip()))
        if hour < self.day_starts_h:
            day += timedelta(days=1)
        return self.instant(day, hour, minute)

    def night(self, at_utc_s: float) -> Text:
        """An instant as said on a sheet: `14 Jan 18:41`; of a small hour `02:30 (night of Tue 14 Jan)`."""
        local = self.local(at_utc_s)
        if local.hour >= self.day_starts_h:
            return N_("clock", "{moment}", moment=Moment(local))
        day = Day(self.farm_day(at_utc_s), weekday=True)
        return N_("clock", "{hour} (night of {day})", hour=Moment(local, clock=True), day=day)
