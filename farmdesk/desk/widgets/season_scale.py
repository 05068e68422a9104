"""Where days and rows stand on the season's sheet: one scale for its head, its gutter and everything between."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta
from itertools import groupby, pairwise
from typing import TypeVar

from PySide6.QtGui import QPainter

from farmdesk.clock import FarmTime
from farmdesk.desk.theme import look
from farmdesk.desk.widgets.ink import Ink, Measure
from farmdesk.work.season_story import Board, SeasonStory, VesselBar

DAY_PX, LEAST_DAY_PX, MOST_DAY_PX = 26.0, 5.0, 80.0
SHELF_PX, MOST_SHELF_PX = 12, 18  # one bed; more where the window is high
BLOCK_PX, VESSEL_PX, STORE_PX, EVENT_PX = 14, 12, 18, 20
TIDE_PX, MILL_PX = 66, 30
SPARE_DAYS_D = 7  # of empty paper before the season and after it
JOINED_FROM = 3  # so many vessels of one letter share a row: barrels

Thing = TypeVar("Thing")


class SceneInk(Ink):
    """Ink on a painter that somebody else has begun."""

    def __init__(self, painter: QPainter) -> None:
        Measure.__init__(self)
        self.painter = painter
        self.ratio = painter.device().devicePixelRatioF()


@dataclass(frozen=True)
class Days:
    """Days from left to right: pixels a day, and where knowledge ends."""

    first_day: date
    last_day: date
    today: date
    day_px: float
    time: FarmTime

    def x(self, day: date) -> float:
        """The left edge of a day [px]."""
        return (day - self.first_day).days * self.day_px

    def x_at(self, at_utc_s: float) -> float:
        """Where an instant [UTC s] stands [px]."""
        local = self.time.local(at_utc_s)
        return self.x(local.date()) + (local.hour + local.minute / 60) / 24 * self.day_px

    def day_at(self, x: float) -> date:
        """The day under a point."""
        return self.first_day + timedelta(days=int(x // self.day_px))

    @property
    def thread(self) -> float:
        """Where today ends and the unknown begins [px]."""
        return self.x(self.today + timedelta(days=1))

    @property
    def end(self) -> float:
        """The right edge of the sheet [px]."""
        return self.x(self.last_day + timedelta(days=1))

    @property
    def mondays(self) -> list[date]:
        first = self.first_day + timedelta(days=-self.first_day.weekday() % 7)
        return [first + timedelta(days=7 * n) for n in range((self.last_day - first).days // 7 + 1)]


def days_of(story: SeasonStory, day_px: float, time: FarmTime) -> Days:
    """The sheet's days: the season, what is expected after it, and a week of paper on either side."""
    spare = timedelta(days=SPARE_DAYS_D)
    ends = [d for board in story.boards for d in board.ahead or () if d is not None]
    return Days(story.first_day - spare, max([story.last_day, *ends]) + spare, story.today, day_px, time)


@dataclass(frozen=True)
class VesselRow:
    """One line of the vessels: a tank, or one of the lanes of the barrels, with the bars on it."""

    name: str
    bars: tuple[tuple[VesselBar, ...], ...]  # bars of one lot that belong together are drawn as one


def vessel_rows(story: SeasonStory) -> list[VesselRow]:
    """Tanks one a row; vessels of a letter with three or more share rows, as many as lots overlap there."""
    rows: list[VesselRow] = []
    for _letter, codes in groupby(story.vessels, key=lambda code: code[:1]):
        group = list(codes)
        if len(group) < JOINED_FROM:
            rows += [VesselRow(code, tuple((b,) for b in story.vessel_bars if b.vessel == code)) for code in group]
            continue
        fills: dict[tuple[str, int], list[VesselBar]] = {}
        for bar in story.vessel_bars:
            if bar.vessel in group:
                fills.setdefault((bar.lot, bar.from_utc_s), []).append(bar)
        lanes = packed([(float(k[1]), max(_until(b) for b in bars), bars) for k, bars in fills.items()], 0.0)
        names = [f"{group[0]}–{group[-1]}", *[""] * (len(lanes) - 1)]
        lanes = lanes or [[]]
        rows += [VesselRow(name, tuple(tuple(bars) for bars in lane)) for name, lane in zip(names, lanes, strict=True)]
    return rows


def _until(bar: VesselBar) -> float:
    return float("inf") if bar.until_utc_s is None else float(bar.until_utc_s)


def packed(spans: Sequence[tuple[float, float, Thing]], gap: float) -> list[list[Thing]]:
    """Things with a from and an until, on as few lanes as they need without touching."""
    lanes: list[list[Thing]] = []
    ends: list[float] = []
    for start, end, thing in sorted(spans, key=lambda span: span[0]):
        lane = next((i for i, last in enumerate(ends) if last + gap <= start), len(lanes))
        if lane == len(lanes):
            lanes.append([])
            ends.append(end)
        lanes[lane].append(thing)
        ends[lane] = end
    return lanes


@dataclass
class Levels:
    """Rows from top to bottom [px]; shelves and rows grow where the window is high."""

    story: SeasonStory
    room: float
    event_lanes: int = 0
    vessels: list[VesselRow] = field(default_factory=list)

    def __post_init__(self) -> None:
        px, story = look().px, self.story
        self.vessels = vessel_rows(story)
        known = {code for code, _, _ in story.beds}
        unplaced = [board for board in story.boards if board.place not in known]
        n_blocks, n_vessels, n_beds = len(story.blocks), len(self.vessels), len(story.beds)
        covers = [cover for _, cover, _ in story.beds]
        breaks = sum(a != b for a, b in pairwise(covers))
        gap = px(4)
        least = (
            px(BLOCK_PX) * n_blocks + px(VESSEL_PX) * n_vessels + px(SHELF_PX) * n_beds + gap * breaks
            + px(SHELF_PX) * len(unplaced) + px(TIDE_PX) + px(74)
        )  # fmt: skip
        extra = max(0.0, self.room - least)
        self.shelf = min(px(MOST_SHELF_PX), px(SHELF_PX) + int(extra * 0.5 / max(1, n_beds)))
        grown = self.shelf / px(SHELF_PX)
        self.block = round(px(BLOCK_PX) * min(grown, 1.4))
        self.vessel = round(px(VESSEL_PX) * min(grown, 1.4))
        self.blocks_top = px(3)
        self.vessels_top = self.blocks_top + self.block * n_blocks + px(9)
        self.vessels_end = self.vessels_top + self.vessel * n_vessels + px(4)
        self.roof = self.vessels_end + px(14) + self.shelf * len(unplaced)
        self.tops: dict[str, float] = {}
        y = self.roof + 2
        for n, (code, cover, _) in enumerate(story.beds):
            y += gap if n and covers[n - 1] != cover else 0
            self.tops[code] = y
            y += self.shelf
        self._above = {id(board): self.roof - 2 - self.shelf * (n + 1) for n, board in enumerate(unplaced)}
        self.beds_end = y
        self.tide_top = y + px(24)
        self.tide_base = self.tide_top + round(px(TIDE_PX) * min(grown, 1.5)) - px(8)
        self.store_top = self.tide_base + px(34)
        self.mill_top = self.store_top + px(STORE_PX) * max(2, len(story.rests)) + px(18)
        self.events_top = self.mill_top + px(MILL_PX) + px(20)
        self.end = self.events_top + px(EVENT_PX) * max(2, self.event_lanes) + px(12)

    def top_of(self, board: Board) -> float:
        """The upper edge of a board's shelf [px]; one without a bed lies above the roof line."""
        return self._above[id(board)] if id(board) in self._above else self.tops[board.place]
