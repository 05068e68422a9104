"""Frozen rows of the season's calendar: what lies on which bed and in which vessel, what is picked, rested and milled."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from farmdesk.text import Text
from farmdesk.work.stories import DayWeather, StripDay


@dataclass(frozen=True, slots=True)
class Board:
    """A stretch of one lot on one bed: days with their water; open while it still lies there."""

    lot: str
    place: str
    first_day: date
    last_day: date | None  # the day it left; None while it lies there
    days: tuple[StripDay, ...]
    ahead: tuple[date, date, date | None] | None = None
    planned: bool = False


@dataclass(frozen=True, slots=True)
class VesselBar:
    lot: str
    vessel: str
    from_utc_s: int
    until_utc_s: int | None
    planned: bool = False


@dataclass(frozen=True, slots=True)
class Pick:
    block: str
    day: date
    grams: int
    lot: str
    planned: bool = False


@dataclass(frozen=True, eq=False)
class SeasonStory:
    """The season's calendar."""

    first_day: date
    last_day: date
    today: date
    headline: Text
    weather: tuple[DayWeather, ...]
    blocks: tuple[tuple[str, str, float], ...]  # code, name, middle height [m]
    picks: tuple[Pick, ...]
    vessels: tuple[str, ...]
    vessel_bars: tuple[VesselBar, ...]
    beds: tuple[tuple[str, str, float], ...]  # code, cover, area [m²], in order
    boards: tuple[Board, ...]
    rests: tuple[tuple[str, date, date | None, int], ...]  # lot, into store, sent, grams
    mill_runs: tuple[tuple[date, tuple[str, ...], int], ...]
    events: tuple[tuple[date, str, Text], ...]  # samples, holds, sales: day, lot, words
    tide: tuple[tuple[date, int], ...]  # beds in use by day
