"""The fixed edges of the season's sheet: weeks and weather above, the names of the rows at the left."""

from __future__ import annotations

from itertools import groupby
from typing import TYPE_CHECKING

from PySide6.QtGui import QPaintEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.ruler import FULL_GOOD_H, FULL_RAIN_MM
from farmdesk.desk.theme import BOLD, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.season_scale import EVENT_PX, MILL_PX, STORE_PX, Days, Levels
from farmdesk.text import Day
from farmdesk.work.season_story import SeasonStory

if TYPE_CHECKING:
    from farmdesk.desk.widgets.season_view import SeasonView

GUTTER_PX, WEEKS_PX, WEATHER_PX = 132, 24, 38
EVERY_NUMBER_PX = 15  # a shelf this high has room for the number of each bed


class Head(QWidget):
    """Week heads, good hours as bars, rain as blocks from above; it follows the sheet sideways."""

    def __init__(self, view: SeasonView) -> None:
        super().__init__(view)
        self.view = view

    def paintEvent(self, event: QPaintEvent) -> None:
        view, px = self.view, look().px
        if view.story is None or view.days is None:
            return
        days, gutter, weeks = view.days, px(GUTTER_PX), px(WEEKS_PX)
        with Ink(self) as ink:
            base = self.height() - 1
            ink.text(0, base - px(20), self.tr("good hours"), 14)
            ink.text(0, base - px(4), self.tr("rain mm"), 14, color="ink2")
            ink.painter.save()
            ink.painter.setClipRect(gutter, 0, self.width() - gutter, self.height())
            ink.painter.translate(gutter - view.left, 0)
            self._paint_days(ink, view.story, days, weeks, base)
            ink.painter.restore()
            self._paint_key(ink, days, gutter, weeks)
            ink.level(0, self.width(), base, 1, "rule")

    def _paint_days(self, ink: Ink, story: SeasonStory, days: Days, weeks: float, base: float) -> None:
        px, say, view = look().px, self.view.words.say, self.view
        seen_left, seen_right = view.left, view.left + self.width()
        for monday in days.mondays:
            x = days.x(monday)
            ink.fill(ink.snap(x - days.day_px), weeks, ink.snap(x) - ink.snap(x - days.day_px), base, "band")
            ink.upright(x, 0, base, 1, "hair")
        now, edge = say(Day(days.today)), days.thread + px(5)
        taken = edge + ink.width(now, 14, SEMIBOLD) + px(6)
        step = 1 + int(px(60) / (7 * days.day_px))
        for monday in days.mondays[::step]:
            name, x = say(Day(monday)), days.x(monday) + px(4)
            if x + ink.width(name, 14, SEMIBOLD) < days.thread - 2 or x > taken:
                ink.text(x, weeks - px(7), name, 14, SEMIBOLD)
        ink.text(edge, weeks - px(7), now, 14, SEMIBOLD)
        for row in story.weather:
            x = days.x(row.day)
            if not seen_left - days.day_px <= x <= seen_right:
                continue
            left, right = ink.snap(x), ink.snap(x + days.day_px)
            if row.good_h:
                high = round(px(26) * min(1.0, row.good_h / FULL_GOOD_H))
                ink.fill(left + 2, base - high, max(1, right - left - 4), high, "hair")
            if row.rain_mm:
                high = max(px(3), round(px(18) * min(1.0, row.rain_mm / FULL_RAIN_MM) ** 0.5))
                wide = max(px(3), round(days.day_px * 0.4))
                ink.fill(round((left + right - wide) / 2), weeks, wide, high, "ink2")
                if days.day_px >= px(16):
                    said = view.words.number(row.rain_mm)
                    ink.text((left + right) / 2, weeks + high + px(11), said, 13, align="middle")
        ink.upright(days.thread, 0, base + 1, 2, "ink", dashed=not view.at_present)

    def _paint_key(self, ink: Ink, days: Days, gutter: float, weeks: float) -> None:
        """What the patterns mean, over the days of which nothing is known; left out where there is no room."""
        px = look().px
        rows = (
            (
                ("expected", 26, self.tr("runs on")),
                ("estimated", 26, self.tr("earliest to latest")),
                ("likely", 3, self.tr("likely")),
            ),
            (("pick", 8, self.tr("picked, height = kg")), ("estimated", 8, self.tr("planned"))),
        )
        wide = max(sum(px(14 + size) + ink.width(words, 13) for _, size, words in row) for row in rows)
        left = self.width() - wide
        if gutter + days.thread - self.view.left > left - px(12):
            return
        for n, row in enumerate(rows):
            x, base = left, weeks + px(13) + n * px(18)
            for kind, size, words in row:
                top, high = base - px(11), px(13)
                if size > 3:
                    ink.fill(x, top, px(size), high, "ink" if kind == "pick" else "paper")
                if kind in ("expected", "estimated"):
                    ink.pattern(x, top, px(size), high, kind, "ink2" if kind == "expected" else "ink")
                    ink.frame(x, top, px(size), high, 1, "ink2")
                elif size <= 3:
                    ink.upright(x + 1, top, top + high, 2.4, "ink")
                x = ink.text(x + px(size + 5), base, words, 13) + px(12)


class Gutter(QWidget):
    """The names of the rows; it follows the sheet up and down."""

    def __init__(self, view: SeasonView) -> None:
        super().__init__(view)
        self.view = view

    def paintEvent(self, event: QPaintEvent) -> None:
        view = self.view
        if view.story is None or view.levels is None:
            return
        with Ink(self) as ink:
            ink.painter.translate(0, -view.verticalScrollBar().value())
            self._paint_blocks(ink, view.story, view.levels)
            self._paint_vessels(ink, view.levels)
            self._paint_beds(ink, view.story, view.levels)
            self._paint_below(ink, view.story, view.levels)

    def _paint_blocks(self, ink: Ink, story: SeasonStory, levels: Levels) -> None:
        px = look().px
        for n, (code, name, _) in enumerate(story.blocks):
            base = levels.blocks_top + levels.block * (n + 1) - px(1)
            ink.text(0, base, code, 14, BOLD)
            ink.text(px(18), base, ink.fitted(name, px(GUTTER_PX - 22), 14), 14, color="ink2")

    def _paint_vessels(self, ink: Ink, levels: Levels) -> None:
        for n, row in enumerate(levels.vessels):
            middle = levels.vessels_top + levels.vessel * (n + 0.5)
            ink.text(0, round(middle + look().px(13) * 0.35), row.name, 13, SEMIBOLD)

    def _paint_beds(self, ink: Ink, story: SeasonStory, levels: Levels) -> None:
        px = look().px
        names = {"roof": self.tr("roof"), "hoops": self.tr("hoops"), "tarp": self.tr("tarps"), "open": self.tr("open")}
        ink.text(0, levels.roof + px(5), self.tr("Beds"), 18, SEMIBOLD, family=SERIF)
        for n, (cover, group) in enumerate(groupby(story.beds, key=lambda bed: bed[1])):
            codes = [code for code, _, _ in group]
            down = px(34) if n == 0 else px(14)
            base = levels.tops[codes[0]] + down
            if base <= levels.tops[codes[-1]] + levels.shelf + px(6):  # a bed or two have no room for it
                ink.text(0, base, names.get(cover, cover), 14)
            middle = codes[(len(codes) - 1) // 2]
            shown = codes if levels.shelf >= px(EVERY_NUMBER_PX) else (codes[0], middle, codes[-1])
            for code in shown:
                base = round(levels.tops[code] + levels.shelf / 2 + px(13) * 0.34)
                ink.text(px(GUTTER_PX - 10), base, code, 13, color="ink2", align="right")

    def _paint_below(self, ink: Ink, story: SeasonStory, levels: Levels) -> None:
        px = look().px
        beds = len(story.beds)
        ink.text(0, levels.tide_top + px(1), self.tr("Area tide"), 18, SEMIBOLD, family=SERIF)
        ink.text(0, levels.tide_top + px(20), self.tr("beds in use"), 14, color="ink2")
        ink.text(0, levels.tide_top + px(37), self.tr("of {n} usable").format(n=beds), 14, color="ink2")
        if levels.store_top > self.view.viewport().height():
            ink.text(0, levels.tide_base + px(2), self.tr("Page Down: store"), 13, color="ink2")
        for top, high, name, there in (
            (levels.store_top, STORE_PX, self.tr("Store"), story.rests),
            (levels.mill_top, MILL_PX, self.tr("Mill"), story.mill_runs),
            (levels.events_top, EVENT_PX, self.tr("Samples, sales"), story.events),
        ):
            base = top + px(high) * (0.8 if high == MILL_PX and there else 0.5) + px(5)
            ink.text(0, base, name, 18, SEMIBOLD, family=SERIF)
            if not there:
                ink.text(0, base + px(18), self.tr("nothing yet"), 14, color="ink2")
