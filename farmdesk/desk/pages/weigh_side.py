"""Beside the weigh-in sheet: its sum against the plan, the picker's usual, what was kept, and slips typed again."""

from __future__ import annotations

from contextlib import suppress

from PySide6.QtCore import QRect

from farmdesk.desk.theme import BOLD, DISPLAY, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.rows_pane import RowsPane
from farmdesk.errors import FarmError, Question
from farmdesk.text import Counted, Moment
from farmdesk.units import grams_of, read_number
from farmdesk.work.portions import block_words
from farmdesk.work.slips import Usual
from farmdesk.work.weigh_grid import WeighSheet

PAIRS = 8  # slips shown side by side


class WeighSide(RowsPane):
    """What the weigh-in shows beside its rows; the view itself keeps these facts."""

    sheet_story: WeighSheet | None = None
    mode, unit, sums = "rows", "kg", ""
    sitting_utc_s = 0
    asked: Question | None = None
    retyping: list[tuple[str, str]]  # picker and number of slips that were typed a second time

    def picker_typed(self) -> str:
        """The code that stands in the box."""
        raise NotImplementedError

    def paint_side(self, ink: Ink, box: QRect) -> None:
        """Paint the zones from above."""
        story, px = self.sheet_story, look().px
        if story is None:
            return
        left, right = float(box.left()), float(box.right())
        y = self._head(ink, left, right, story)
        y = self._sums(ink, left, right, y, story)
        if self.mode == "rows":
            if self.retyping:
                y = self._side_by_side(ink, left, right, y, story)
            else:
                y = self._usual(ink, left, right, y, story)
        self._kept(ink, left, right, y + px(4), story)

    def _head(self, ink: Ink, left: float, right: float, story: WeighSheet) -> float:
        px = look().px
        x = ink.text(left, px(40), story.key.lot, 26, SEMIBOLD, family=DISPLAY)
        ink.text(x + px(8), px(40), story.check, 17, color="ink2")
        said = self.tr("block {block}").format(block=self.desk.words.say(block_words(story.key.block)))
        said = f"{said}, {story.variety}" if story.variety else said
        ink.text(right, px(40), ink.fitted(said, right - x - px(50), 17), 17, align="right")
        ink.level(left, right, px(54), 1.6, "ink")
        return px(54)

    def _sums(self, ink: Ink, left: float, right: float, y: float, story: WeighSheet) -> float:
        """The sheet's sum, the day's sum against its plan, and the day's columns."""
        px, words = look().px, self.desk.words
        y += px(38)
        x = ink.text(left, y, words.number(story.total_g / 1000, 1), 28, BOLD)
        x = ink.text(x + px(6), y, "kg", 15)
        ink.text(x + px(14), y, self.tr("{n} {n:sack|sacks} on this sheet").format(n=Counted(len(story.rows))), 15)
        if story.plan_g:
            plan = words.number(story.plan_g / 1000)
            y += px(12)
            most, wide = max(story.plan_g, story.day_g), right - left
            ink.pattern(left, y, wide * story.plan_g / most, px(10), "expected", "ink2")
            ink.frame(left, y, wide * story.plan_g / most, px(10), 1, "rule")
            ink.fill(left, y, wide * story.day_g / most, px(10), "ink")
            y += px(28)
            day = self.tr("{sum} kg of ≈ {plan} planned, all sheets").format(
                sum=words.number(story.day_g / 1000, 1), plan=plan
            )
            ink.text(left, y, day, 15, SEMIBOLD)
            if story.plan_rests_on is not None:
                y += px(19)
                ink.text(left, y, words.say(story.plan_rests_on), 14, color="ink2")
        for column in story.columns:
            if (column.block, column.half_day) == (story.key.block, story.key.half_day):
                continue
            y += px(20)
            half = self.tr("morning") if column.half_day == "am" else self.tr("afternoon")
            said = self.tr("block {block}, {half}, {n} {n:sack|sacks}").format(
                block=words.say(block_words(column.block)), half=half, n=Counted(column.sacks_n)
            )
            ink.text(left, y, said, 15)
            ink.text(right, y, f"{words.number(column.grams / 1000, 1)} kg", 15, align="right")
        if story.platform_g is not None:
            y += px(20)
            ink.text(left, y, self.tr("the scale’s own total"), 15)
            ink.text(right, y, f"{words.number(story.platform_g / 1000, 1)} kg", 15, align="right")
        if self.sums:
            y = ink.wrapped(left, y + px(24), right - left, f"{self.sums}.", 15, SEMIBOLD, family=SERIF) - px(20)
        y += px(16)
        ink.level(left, right, y, 1, "hair")
        return y

    def typed_g(self, name: str) -> float | None:
        """What stands in a box as grams [g], or None."""
        with suppress(FarmError, StopIteration):
            text = self.row.box(name).text().strip()
            return grams_of(read_number(text, self.unit)) if text else None
        return None

    def _usual(self, ink: Ink, left: float, right: float, y: float, story: WeighSheet) -> float:
        """The picker's last sacks on a scale, the band of the usual, and the number that is being typed."""
        px, words = look().px, self.desk.words
        picker = self.picker_typed()
        usual = story.usual.get(picker)
        if not picker:
            return y
        y += px(26)
        if usual is None:
            ink.heading(left, y, picker, self.tr("too few sacks to say what is usual"))
            return y + px(20)
        low, high = words.number(usual.low_g / 1000), words.number(usual.high_g / 1000)
        said = self.tr("usually {low}–{high} kg, last {n} {n:sack|sacks}").format(
            low=low, high=high, n=Counted(len(usual.nets_g))
        )
        ink.heading(left, y, picker, said)
        gross = self.typed_g("gross")
        net = gross - (self.typed_g("tare") or 0) if gross is not None else None
        return self._scale(ink, left, right, y + px(20), usual, net)

    def _scale(self, ink: Ink, left: float, right: float, y: float, usual: Usual, net: float | None) -> float:
        px, words = look().px, self.desk.words
        most = 1.1 * max([usual.high_g, *usual.nets_g, net or 0])

        def at(grams: float) -> float:
            return left + grams / most * (right - left)

        base = y + px(34)
        ink.pattern(at(usual.low_g), y + px(12), at(usual.high_g) - at(usual.low_g), px(22), "target", "ink2")
        ink.level(left, right, base, 1, "rule")
        step = 20_000 if most < 160_000 else 50_000
        for grams in range(0, int(most) + 1, step):
            ink.upright(at(grams), base, base + px(4), 1, "rule")
            ink.text(
                at(grams),
                base + px(18),
                words.number(grams / 1000),
                13,
                color="ink2",
                align="middle" if grams else "left",
            )
        for sack in usual.nets_g:
            ink.upright(at(sack), y + px(16), base, 2, "ink")
        if net is not None and net > 0:
            asked = self.asked is not None
            x = at(net)
            side = px(12)
            top = y + px(17)
            if asked:
                ink.pattern(x - side / 2, top, side, side, "doubtful", "today")
                ink.frame(x - side / 2, top, side, side, 2, "today")
            else:
                ink.fill(x - side / 2, top, side, side, "ink")
            said = self.tr("{n} asked") if asked else "{n}"
            near = x > right - px(60)
            ink.text(x, y + px(8), said.format(n=words.number(net / 1000, 1)), 14, SEMIBOLD, "today" if asked else "ink",
                     align="right" if near else "middle")  # fmt: skip
        return base + px(30)

    def _side_by_side(self, ink: Ink, left: float, right: float, y: float, story: WeighSheet) -> float:
        """The slips that are kept, and the same as they are typed now."""
        px, words = look().px, self.desk.words
        y += px(26)
        ink.heading(left, y, self.tr("Same slips"), self.tr("kept once; nothing is written twice"))
        first, second = left + px(130), left + px(270)
        y += px(22)
        ink.text(first, y, self.tr("kept"), 14, color="ink2", align="right")
        ink.text(second, y, self.tr("typed now"), 14, color="ink2", align="right")
        kept = [row for row in story.rows if row.written_utc_s < self.sitting_utc_s]
        n = len(self.retyping)
        start = max(0, min(n - PAIRS + 2, len(kept) - PAIRS))
        for i, row in enumerate(kept[start : start + PAIRS], start):
            y += px(20)
            ink.text(left, y, row.picker, 15)
            ink.text(first, y, words.number(row.gross_g / 1000, 1), 15, SEMIBOLD, align="right")
            if i < n:
                ink.text(second, y, self.retyping[i][1], 15, SEMIBOLD, align="right")
        y += px(22)
        ink.text(left, y, self.tr("{n} of {all} kept slips typed again").format(n=n, all=len(kept)), 14, color="ink2")
        return y + px(10)

    def _kept(self, ink: Ink, left: float, right: float, y: float, story: WeighSheet) -> None:
        px, words = look().px, self.desk.words
        ink.level(left, right, y, 1, "hair")
        y += px(26)
        ink.text(left, y, self.tr("Written so far"), 18, SEMIBOLD, family=SERIF)
        if story.kept is not None and story.rows[-1].written_utc_s < self.sitting_utc_s:
            said = f"{words.say(story.kept)}."
        elif story.rows:
            at = self.desk.time.local(max(row.written_utc_s for row in story.rows))
            today = at.date() == self.desk.time.local(self.desk.as_of).date()
            last = f"{at:%H:%M:%S}" if today else words.say(Moment(at, weekday=True))
            said = self.tr("{n} {n:row|rows}, the last at {at}.").format(n=Counted(len(story.rows)), at=last)
        else:
            said = self.tr("No row yet.")
        y += px(24)
        ink.text(left, y, ink.fitted(said, right - left, 17), 17)
        y += px(20)
        ink.text(left, y, self.tr("Each row is on disk before the next one opens."), 14, color="ink2")
        loose = [row for row in story.rows if not row.known]
        if loose:
            y += px(24)
            x = ink.swatch(left, y, "doubtful")
            codes = " ".join(row.picker for row in loose)
            ink.text(x + px(8), y, self.tr("{codes}: unassigned, to be named before pay").format(codes=codes), 15)
