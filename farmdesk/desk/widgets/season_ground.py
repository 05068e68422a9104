"""What the season's sheet is printed on: weeks, Sundays, rows, the roof line, the tide of area, today's thread."""

from __future__ import annotations

from PySide6.QtCore import QRectF

from farmdesk.desk.theme import look
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.season_scale import STORE_PX, Days, Levels
from farmdesk.work.season_story import SeasonStory


def paint_ground(ink: Ink, story: SeasonStory, days: Days, levels: Levels, seen: QRectF) -> None:
    """Weeks and rows; the shelves of an empty shed are dashed."""
    px = look().px
    left, right, low = seen.left(), seen.right() + 1, max(levels.end, seen.bottom() + 1)
    for monday in days.mondays:
        x = days.x(monday)
        ink.fill(ink.snap(x - days.day_px), 0, ink.snap(x) - ink.snap(x - days.day_px), low, "band")
        ink.upright(x, 0, low, 1, "hair")
    for n in range(len(story.blocks)):
        ink.level(left, right, levels.blocks_top + levels.block * (n + 1), 1, "hair")
    for n in range(len(levels.vessels)):
        ink.level(left, right, levels.vessels_top + levels.vessel * (n + 0.5), 1, "hair")
    for y in (
        levels.vessels_top - px(5), levels.vessels_end, levels.store_top - px(16), levels.mill_top - px(9),
        levels.events_top - px(10),
    ):  # fmt: skip
        ink.level(left, right, y, 1, "rule")
    free = not story.boards
    for top in levels.tops.values():
        ink.level(left, right, top + levels.shelf, 1, "rule" if free else "hair", dashed=free)
    for n in range(len(story.rests)):
        ink.level(left, right, levels.store_top + px(STORE_PX) * (n + 1) - 1, 1, "hair")
    ink.level(left, right, levels.roof, 3, "ink")
    ink.level(left, right, levels.beds_end + 1, 1, "rule")


def paint_tide(ink: Ink, story: SeasonStory, days: Days, levels: Levels, seen: QRectF) -> None:
    """Beds in use, in steps, as far as it is known; the line above is what is usable."""
    beds, high = max(1, len(story.beds)), levels.tide_base - levels.tide_top
    ink.level(seen.left(), seen.right() + 1, levels.tide_top, 2, "ink")
    last = None
    for day, used in story.tide:
        if day > story.today:
            break
        x, y = days.x(day), levels.tide_base - high * min(1.2, used / beds)
        if last is not None and last != y:
            ink.upright(x, min(last, y) - 1, max(last, y) + 1, 1.6, "ink")
        ink.level(x, x + days.day_px, y, 1.6, "ink")
        last = y


def paint_thread(ink: Ink, days: Days, top: float, low: float, at_present: bool) -> None:
    """Where today ends; dashed off the present."""
    ink.upright(days.thread, top, low, 2, "ink", dashed=not at_present)
