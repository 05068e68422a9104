"""The right of the overview: what was weighed in today against its plan, and how ripe it came."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QWidget

from farmdesk.desk.pages import Desk
from farmdesk.desk.theme import BOLD, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.drawn import Drawn
from farmdesk.desk.widgets.ink import Ink
from farmdesk.science.counting import Range
from farmdesk.text import Counted, Day
from farmdesk.work.picking_story import CountStory, PickingStory


class StoryView(QWidget):
    """What the parts read: the desk and the story shown."""

    desk: Desk
    story: PickingStory | None = None


class Part(Drawn):
    """A picture of the overview."""

    def __init__(self, view: StoryView) -> None:
        super().__init__(view)
        self.view = view

    @property
    def story(self) -> PickingStory | None:
        """What is shown."""
        return self.view.story

    def kg(self, grams: float, decimals: int = 0) -> str:
        """Grams [g] as kilograms, without the unit."""
        return self.view.desk.words.number(grams / 1000, decimals)


class Today(Part):
    """What was weighed in today against its plan."""

    def sentence(self) -> str:
        return self.view.desk.words.say(self.story.headline) if self.story else ""

    def table(self):
        rows = [[lot, c.block, self._half(c.half_day), str(c.sacks_n), self.kg(c.grams, 1)] for lot, c in
                (self.story.columns if self.story else ())]  # fmt: skip
        return [self.tr("lot"), self.tr("block"), self.tr("half-day"), self.tr("sacks"), self.tr("kg")], rows

    def _half(self, half: str) -> str:
        return self.tr("morning") if half == "am" else self.tr("afternoon")

    def tall(self) -> int:
        """Room it wants [px]."""
        rows = len(self.story.columns) if self.story else 0
        return look().px(150 + 22 * rows)

    def paint(self, ink: Ink) -> None:
        story = self.story
        if story is None:
            return
        px, say = look().px, self.view.desk.words.say
        ink.heading(0, px(16), self.tr("Weigh-in"), say(Day(story.day, weekday=True)))
        y = px(54)
        if story.day_g:
            x = ink.text(0, y, self.kg(story.day_g, 1), 28, BOLD)
            x = ink.text(x + px(6), y, "kg", 15)
        else:
            x = ink.text(0, y, self.tr("nothing weighed in yet"), 17)
        if story.plan_g:
            ink.text(x + px(14), y, self.tr("of ≈ {plan} kg planned").format(plan=self.kg(story.plan_g)), 17)
            self._bar(ink, y + px(10), story.day_g, story.plan_g)
            y += px(28)
        if story.plan_rests_on is not None:
            y += px(16)
            ink.text(0, y, say(story.plan_rests_on), 14, color="ink2")
        for lot, column in story.columns:
            y += px(22)
            x = ink.text(0, y, lot, 15, SEMIBOLD)
            sacks = self.tr("{block} {half}, {n} {n:sack|sacks}").format(
                block=column.block, half=self._half(column.half_day), n=Counted(column.sacks_n)
            )
            ink.text(x + px(10), y, sacks, 15)
            ink.text(self.width(), y, f"{self.kg(column.grams, 1)} kg", 15, SEMIBOLD, align="right")

    def _bar(self, ink: Ink, y: float, grams: int, plan_g: int) -> None:
        px, wide = look().px, self.width()
        most = max(grams, plan_g)
        ink.pattern(0, y, wide * plan_g / most, px(12), "expected", "ink2")
        ink.frame(0, y, wide * plan_g / most, px(12), 1, "rule")
        ink.fill(0, y, wide * grams / most, px(12), "ink")


class Counts(Part):
    """How ripe it came: each count with its range; what lies within the limit by chance is no difference."""

    def sentence(self) -> str:
        if self.story is None:
            return ""
        say = self.view.desk.words.say
        if not self.story.counts:
            return self.tr("No ripeness was counted in the last seven days.")
        first = self.story.counts[0]
        return self.tr("{count}: {ripe} % ripe, {green} % green. {chance}").format(
            count=say(first.said), ripe=self._range(first.ripe), green=self._range(first.green),
            chance=say(self.story.chance),
        )  # fmt: skip

    def _range(self, share: Range) -> str:
        number = self.view.desk.words.number
        return f"{number(100 * share.low, 1)}–{number(100 * share.high, 1)}"

    def table(self):
        say = self.view.desk.words.say
        rows = [[say(c.said), str(c.fruits_n), self._range(c.ripe), self._range(c.green)] for c in
                (self.story.counts if self.story else ())]  # fmt: skip
        return [self.tr("count"), self.tr("fruits"), self.tr("ripe %"), self.tr("green %")], rows

    def paint(self, ink: Ink) -> None:
        story = self.story
        if story is None:
            return
        px, say = look().px, self.view.desk.words.say
        ink.level(0, self.width(), px(4), 1, "hair")
        ink.heading(0, px(28), self.tr("How ripe it came"), self.tr("green in 100, range 95 %"))
        if not story.counts:
            ink.text(0, px(54), self.tr("not counted in the last seven days"), 15)
        chance = ink.lines(say(story.chance), self.width(), 15, family=SERIF)
        floor = self.height() - px(21) * len(chance) - px(24)
        left, right = px(190), self.width() - px(86)
        most = max([0.12, *(c.green.high for c in story.counts)])

        def at(share: float) -> float:
            return left + share / most * (right - left)

        y, end = px(52), px(44)
        for count in story.counts:
            if y > floor - px(36):
                break
            self._count(ink, count, y, at)
            end = y + px(6)
            y += px(24)
        if story.counts and end > px(44):
            limit = at(story.limit_pct / 100)
            ink.upright(limit, px(38), end, 1.2, "ink", dashed=True)
            words = self.tr("limit {n} %").format(n=self.view.desk.words.number(story.limit_pct, 1))
            ink.text(limit, end + px(15), words, 13, color="ink2", align="middle")
        ink.wrapped(0, min(floor + px(24), end + px(46)), self.width(), say(story.chance), 15, family=SERIF)

    def _count(self, ink: Ink, count: CountStory, y: float, at: Callable[[float], float]) -> None:
        px = look().px
        ink.text(0, y, ink.fitted(self.view.desk.words.say(count.said), px(180), 14), 14)
        low, high = at(count.green.low), at(count.green.high)
        ink.level(low, high, y - px(5), 2, "ink")
        for edge in (low, high):
            ink.upright(edge, y - px(9), y - px(1), 1, "ink")
        ink.fill(at(count.green.value) - px(3), y - px(8), px(6), px(6), "ink")
        value = self.view.desk.words.number(100 * count.green.value, 1)
        ink.text(self.width(), y, self.tr("{n} % of {all}").format(n=value, all=count.fruits_n), 14, align="right")
