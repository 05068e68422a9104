"""The overview of Picking: blocks where they stand on the hill, their crop, the next rounds, today, how ripe it came."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QPaintEvent, QResizeEvent

from farmdesk.desk.pages.picking_today import Counts, Part, StoryView, Today
from farmdesk.desk.pages.sheet_head import instants
from farmdesk.desk.theme import BOLD, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.title import HEIGHT_PX as TITLE_PX
from farmdesk.desk.widgets.title import Title
from farmdesk.text import Counted, Days

if TYPE_CHECKING:
    from farmdesk.desk.pages.picking import PickingPage
    from farmdesk.work.farm import OpenFarm
    from farmdesk.work.picking_story import BlockStory, PickingStory

SIDE_PX, GUTTER_PX, HILL_PX = 392, 32, 236
NAME_PX, ROUND_PX, HEAD_PX, WORDS_PX, ROW_LEAST_PX = 178, 216, 30, 58, 46
STEP_M, EDGE_M = 20, 1.5  # between two lines of height; left free where blocks meet


class HillView(StoryView):
    """Left the hill, right what came today."""

    def __init__(self, page: PickingPage) -> None:
        super().__init__(page)
        self.page, self.desk = page, page.desk
        self.story = None
        self.title = Title(page.desk, self)
        self.hill = Hill(self)
        self.today = Today(self)
        self.counts = Counts(self)

    def question(self) -> Callable[[OpenFarm, int], Any]:
        """Ask for the overview."""
        from farmdesk.work.picking_story import picking_story

        at, now = instants(self.desk)
        return lambda farm, _: picking_story(farm, at, now_utc_s=now)

    def show_story(self, story: PickingStory) -> None:
        """Show it."""
        self.story = story
        say = self.desk.words.say
        kept = f"{say(story.kept)}." if story.kept is not None else ""
        self.title.say(self.tr("Picking"), " ".join(part for part in (say(story.headline), kept) if part))
        self.setAccessibleName(self.title.accessibleName())
        for part in (self.hill, self.today, self.counts):
            part.told()
        self._lay_out()

    def enter(self) -> None:
        """The page keeps the keys."""
        self.page.setFocus(Qt.FocusReason.OtherFocusReason)

    def letters(self) -> list[Any]:
        """Nothing besides the other views."""
        return []

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._lay_out()

    def _lay_out(self) -> None:
        px = look().px
        top, side = px(TITLE_PX + 8), px(SIDE_PX)
        left = self.width() - side - px(GUTTER_PX)
        self.title.setGeometry(0, 0, self.width(), px(TITLE_PX))
        self.hill.setGeometry(0, top, left, self.height() - top)
        high = min(self.today.tall(), (self.height() - top) // 2)
        self.today.setGeometry(self.width() - side, top, side, high)
        self.counts.setGeometry(self.width() - side, top + high, side, self.height() - top - high)

    def paintEvent(self, event: QPaintEvent) -> None:
        with Ink(self) as ink:
            px = look().px
            x = self.width() - px(SIDE_PX) - px(GUTTER_PX) // 2
            ink.upright(x + 0.5, px(TITLE_PX + 8), self.height(), 1, "hair")


class Hill(Part):
    """Blocks true to their heights; beside each its crop and its next round."""

    rows_x = 0  # where the rows begin: behind the slope, or without it at the left

    def sentence(self) -> str:
        if self.story is None:
            return ""
        if not self.story.blocks:
            return self.tr("No block is written yet. A lot can begin without one; the page Farm writes them: r.")
        return self.tr("{n} {n:block|blocks} from {low} to {high} m. Crop: {crop}.").format(
            n=Counted(len(self.story.blocks)), low=round(min(b.low_m for b in self.story.blocks)),
            high=round(max(b.high_m for b in self.story.blocks)), crop=self.view.desk.words.say(self.story.crop.text),
        )  # fmt: skip

    def table(self):
        say = self.view.desk.words.say
        heads = [
            self.tr("block"), self.tr("height m"), self.tr("picked kg"), self.tr("crop kg"), self.tr("next round"),
            self.tr("pickers"), self.tr("on the trees"),
        ]  # fmt: skip
        rows = []
        for b in self.story.blocks if self.story else ():
            crop = (
                f"{self.kg(b.crop.low_kg * 1000)}–{self.kg(b.crop.high_kg * 1000)}"
                if b.crop
                else self.tr("not counted")
            )
            rows.append([
                f"{b.code} {b.name}", f"{b.low_m:.0f}–{b.high_m:.0f}", self.kg(b.picked_g), crop, self._when(b),
                say(b.pickers) if b.pickers else "", say(b.ripe) if b.ripe else self.tr("not counted"),
            ])  # fmt: skip
        return heads, rows

    def _when(self, block: BlockStory) -> str:
        if block.next_days is None:
            return self.tr("not picked yet")
        days = self.view.desk.words.say(Days(*block.next_days))
        if block.pinned:
            return self.tr("{days}, pinned").format(days=days)
        assert self.story is not None
        if block.next_days[1] < self.story.day:
            return self.tr("was due {days}").format(days=days)
        return days

    # painting

    def paint(self, ink: Ink) -> None:
        story = self.story
        if story is None:
            return
        px = look().px
        if not story.blocks:
            ink.wrapped(0, px(40), px(420), self.sentence(), 17, family=SERIF)
            return
        narrow = self.width() < px(HILL_PX + NAME_PX + ROUND_PX + 110)  # larger letters: the rows without the slope
        self.rows_x = 0 if narrow else px(HILL_PX)
        high, n = self.height() - px(HEAD_PX), len(story.blocks)
        words = (high - px(WORDS_PX)) / n >= px(ROW_LEAST_PX)  # the lowest band is dropped first
        step = min(px(84), (high - px(WORDS_PX if words else 8)) / n)
        top = px(HEAD_PX) + px(8)
        base = top + step * len(story.blocks) - px(18)
        self._heads(ink)
        at = None if narrow else self._slope(ink, top + px(10), base)
        x = self.rows_x
        for i, block in enumerate(story.blocks):
            y = top + step * i
            if at is not None:
                self._leader(ink, at(block, (block.low_m + block.high_m) / 2), x, y + px(18))
            if i:
                ink.level(x, self.width(), y - px(8), 1, "hair")
            self._row(ink, block, x + (0 if narrow else px(12)), y, 2 if step > px(60) else 1)
        if words:
            self._crop_words(ink, top + step * n + px(4))

    def _heads(self, ink: Ink) -> None:
        px = look().px
        y, bar, when = px(16), self.rows_x + px(NAME_PX), self.width() - px(ROUND_PX)
        ink.text(0, y, self.tr("The hill, m") if self.rows_x else self.tr("Blocks"), 18, SEMIBOLD, family=SERIF)
        head = self.tr("picked, of the crop as estimated, kg")
        ink.text(bar, y, ink.fitted(head, when - bar - px(8), 14), 14, color="ink2")
        ink.text(when, y, self.tr("next round"), 14, color="ink2")
        ink.level(0, self.width(), px(HEAD_PX) - 6, 1, "rule")

    def _slope(self, ink: Ink, top: float, base: float) -> Callable[[BlockStory, float], QPointF]:
        """The slope with its lines of height; blocks lie on it from their lowest to their highest metre."""
        assert self.story is not None
        px, blocks = look().px, self.story.blocks
        low = min(b.low_m for b in blocks) // STEP_M * STEP_M
        high = -(-max(b.high_m for b in blocks) // STEP_M) * STEP_M
        left, right = px(46), px(HILL_PX) - px(34)
        each = (base - top) / max(1.0, high - low)

        def spot(metres: float) -> QPointF:
            share = (metres - low) / max(1.0, high - low)
            return QPointF(left + share * (right - left), base - (metres - low) * each)

        metres = low
        while metres <= high:
            y = base - (metres - low) * each
            named = (metres - low) % (2 * STEP_M) == 0
            ink.level(left - px(6), right + px(10), y, 1, "hair")
            if named:
                ink.text(left - px(10), y + px(5), f"{metres:,.0f}", 13, color="ink2", align="right")
            metres += STEP_M
        a, b = spot(low), spot(high)
        ink.line(a.x(), a.y(), b.x(), b.y(), 1.2, "rule")
        aside: dict[str, int] = {}
        for block in sorted(blocks, key=lambda b: (b.low_m, b.code)):
            over = [o for o in aside if _beside(block, next(b for b in blocks if b.code == o))]
            taken = {aside[o] for o in over}
            aside[block.code] = next(n for n in range(len(blocks)) if n not in taken)
        today = {column.block for _, column in self.story.columns}

        def at(block: BlockStory, metres: float) -> QPointF:
            return spot(metres) + QPointF(-px(9), -px(9)) * aside[block.code]

        for block in blocks:
            here = block.code in today
            first, last = at(block, block.low_m + EDGE_M), at(block, block.high_m - EDGE_M)
            ink.line(first.x(), first.y(), last.x(), last.y(), px(9 if here else 6), "ink" if here else "rule")
        return at

    def _leader(self, ink: Ink, at: QPointF, x: float, y: float) -> None:
        """From a block on the slope to its row."""
        ink.line(at.x() + look().px(6), at.y(), x - look().px(8), y - look().px(5), 0.8, "rule")
        ink.level(x - look().px(8), x + look().px(6), y - look().px(5), 1, "rule")

    def _row(self, ink: Ink, block: BlockStory, x: float, y: float, most: int) -> None:
        px, say = look().px, self.view.desk.words.say
        ink.text(x, y + px(22), block.code, 21, BOLD)
        ink.text(x + px(24), y + px(19), ink.fitted(block.name, px(NAME_PX - 44), 15), 15)
        ink.text(x + px(24), y + px(37), ink.fitted(block.variety, px(NAME_PX - 44), 14), 14, color="ink2")
        when = self.width() - px(ROUND_PX)
        self._bar(ink, block, self.rows_x + px(NAME_PX), when - px(24), y)
        end = ink.text(when, y + px(19), self._when(block), 17, SEMIBOLD)
        if block.next_g:
            ink.text(end + px(8), y + px(19), f"≈ {self.kg(block.next_g)} kg", 15)
        line, lines = y + px(37), []
        if block.pickers is not None:
            lines.append(say(block.pickers))
        if block.ripe is not None:
            lines.append(self.tr("{share} on the trees").format(share=say(block.ripe)))
        elif block.next_days is not None:
            lines.append(self.tr("ripeness on the trees not looked at"))
        for said in lines[:most]:
            ink.text(when, line, ink.fitted(said, px(ROUND_PX), 14), 14, color="ink2")
            line += px(17)

    def _bar(self, ink: Ink, block: BlockStory, left: float, right: float, y: float) -> None:
        """Picked in ink; the estimate's range hatched, its middle a line; one scale for all blocks."""
        assert self.story is not None
        px = look().px
        most = max(
            [b.crop.high_kg for b in self.story.blocks if b.crop] + [b.picked_g / 1000 for b in self.story.blocks]
        )
        scale = (right - left) / max(1.0, most)
        bar, tall = y + px(6), px(14)
        ink.level(left, right, bar + tall + 0.5, 1, "hair")
        if block.crop is not None:
            low, high, middle = block.crop.low_kg * scale, block.crop.high_kg * scale, block.crop.kg * scale
            ink.pattern(left + low, bar, high - low, tall, "estimated", "ink2")
            ink.frame(left + low, bar, high - low, tall, 1, "rule")
        picked = block.picked_g / 1000 * scale
        if picked:
            ink.fill(left, bar + px(4), picked, tall - px(8), "ink")
        if block.crop is not None:
            ink.upright(left + middle, bar - px(3), bar + tall + px(3), 2, "ink")
            said = self.tr("{picked} of {low}–{high}").format(
                picked=self.kg(block.picked_g), low=self.kg(block.crop.low_kg * 1000), high=self.kg(block.crop.high_kg * 1000)
            )  # fmt: skip
            x = ink.text(left, y + px(37), said, 15)
            trees = self.tr("{n} {n:tree|trees} looked at").format(n=Counted(block.crop.trees_n))
            ink.text(x + px(10), y + px(37), ink.fitted(trees, right - x - px(10), 14), 14, color="ink2")
        else:
            ink.text(left, y + px(37), self.tr("{picked}; crop not counted").format(picked=self.kg(block.picked_g)), 15)

    def _crop_words(self, ink: Ink, y: float) -> None:
        assert self.story is not None
        px, crop = look().px, self.story.crop
        ink.level(0, self.width(), y - px(4), 1, "rule")
        text = self.view.desk.words.say(crop.text)
        ink.text(
            0,
            y + px(17),
            ink.fitted(self.tr("Crop: {text}.").format(text=text), self.width(), 15, family=SERIF),
            15,
            family=SERIF,
        )
        rests = self.tr(
            "A block’s range rests on its sample of trees; the sum adds variances. Pinned days are never moved."
        )
        ink.text(0, y + px(36), ink.fitted(rests, self.width(), 14), 14, color="ink2")


def _beside(a: BlockStory, b: BlockStory) -> bool:
    """Whether two blocks reach the same heights."""
    return a.low_m < b.high_m and b.low_m < a.high_m
