"""Beside the yard: what changed, what to do and by when, the water still to leave, lot by lot."""

from __future__ import annotations

from PySide6.QtCore import QPointF, Qt, Signal
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QWidget

from farmdesk.clock import HOUR_S
from farmdesk.desk.pages import Desk
from farmdesk.desk.theme import BOLD, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.drawn import Drawn
from farmdesk.desk.widgets.ink import Ink
from farmdesk.text import Counted, Moment, Num
from farmdesk.work.portions import place_list
from farmdesk.work.stories import Dated, LotWater, ToDo, YardStory
from farmdesk.work.yard import CHANGED_H

LABEL_PX, BAR_PX = 104, 250  # the column of times, beds and lots; the longest bar of water
DATED_PX, TODO_PX, WATER_PX, HEAD_PX, RULE_PX = 48, 26, 24, 26, 16


class YardSide(Drawn):
    """`chosen` carries the lot of a line that was pressed."""

    chosen = Signal(str)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent, keys=False)
        self.desk = desk
        self.story: YardStory | None = None
        self.calm = ""  # what is said instead, where the yard is empty
        self._lines: list[tuple[float, float, str]] = []  # from, until [px], lot
        self.setMouseTracking(True)

    def show_story(self, story: YardStory) -> None:
        """Show this instant."""
        self.story = story
        self.told()

    def sentence(self) -> str:
        """Everything here in words, for those who listen."""
        if self.story is None:
            return ""
        say = self.desk.words.say
        said = [say(row.head) for row in self.story.changed]
        said += [f"{job.where}: {say(job.what)}" for job in self.story.todo]
        said += [f"{row.lot} {self._litres(row.grams)}" for row in self.story.water]
        return ". ".join(part.rstrip(".") for part in said)

    def _litres(self, grams: int, about: bool = False) -> str:
        return self.desk.words.say(Num(grams / 1000, "L", about=about))

    def paint(self, ink: Ink) -> None:
        if self.story is None:
            return
        px, story = look().px, self.story
        self._lines = []
        jobs = HEAD_PX + TODO_PX * len(story.todo)
        water = HEAD_PX + 2 + WATER_PX * len(story.water) + (22 if story.usual_day_g is not None else 0)
        below = px(RULE_PX + jobs + RULE_PX + water)
        y = self._paint_changed(ink, story, px(20), self.height() - below)
        y = self._rule(ink, y)
        y = self._paint_todo(ink, story, y)
        y = self._rule(ink, y)
        self._paint_water(ink, story, y)

    def _rule(self, ink: Ink, y: float) -> float:
        px = look().px
        ink.level(0, self.width(), y - px(8), 1, "hair")
        return y + px(RULE_PX)

    def _paint_changed(self, ink: Ink, story: YardStory, y: float, until: float) -> float:
        """The newest lines that fit, in order of time."""
        px, say = look().px, self.desk.words.say
        since = say(Moment(self.desk.time.local(story.at_utc_s - CHANGED_H * HOUR_S), weekday=True))
        ink.heading(0, y, self.tr("What changed since {when}").format(when=since))
        y += px(HEAD_PX)
        if not story.changed:
            ink.text(0, y, self.tr("Nothing was written in that time."), 15, color="ink2")
            return y + px(HEAD_PX)
        kept: list[Dated] = []
        room = until - y
        for row in reversed(story.changed):
            room -= px(DATED_PX if row.more is not None else 26)
            if kept and room < 0:
                break
            kept.insert(0, row)
        left_out = len(story.changed) - len(kept)
        for i, row in enumerate(kept):
            ink.text(0, y, say(Moment(self.desk.time.local(row.at_utc_s))), 14, color="ink2")
            head = ink.fitted(say(row.head), self.width() - px(LABEL_PX), 17, SEMIBOLD)
            x = ink.text(px(LABEL_PX), y, head, 17, SEMIBOLD)
            if i == 0 and left_out:
                before = self.tr("and {n} before it").format(n=left_out)
                if x + px(12) + ink.width(before, 14) < self.width():
                    ink.text(self.width(), y, before, 14, color="ink2", align="right")
            if row.more is not None:
                ink.text(px(LABEL_PX), y + px(20), ink.fitted(say(row.more), self.width() - px(LABEL_PX), 15), 15)
            y += px(DATED_PX if row.more is not None else 26)
        return y

    def _paint_todo(self, ink: Ink, story: YardStory, y: float) -> float:
        px, jobs = look().px, story.todo
        if not jobs:
            ink.text(0, y, self.calm or self.tr("Nothing on the yard waits for a hand."), 17, family=SERIF)
            return y + px(HEAD_PX)
        now = any(job.due == "now" for job in jobs)
        ink.heading(0, y, self.tr("Act now") if now else self.tr("Act before tonight"))
        y += px(HEAD_PX)
        for job in sorted(jobs, key=lambda job: job.due != "now"):
            self._paint_job(ink, y, job)
            self._lines.append((y - px(18), y + px(8), job.lot))
            y += px(TODO_PX)
        return y

    def _paint_job(self, ink: Ink, y: float, job: ToDo) -> None:
        px = look().px
        weight = BOLD if job.due == "now" else SEMIBOLD
        size = next((s for s in (17, 15, 14) if ink.width(job.where, s, weight) <= px(LABEL_PX) - 8), 13)
        ink.text(0, y, ink.fitted(job.where, px(LABEL_PX) - 4, size, weight), size, weight, job.due or "ink")
        minutes = "" if job.minutes is None else self.desk.words.say(Num(job.minutes, "min"))
        room = self.width() - px(LABEL_PX) - (ink.width(minutes, 15, SEMIBOLD) + px(12) if minutes else 0)
        ink.text(px(LABEL_PX), y, ink.fitted(self.desk.words.say(job.what), room, 15), 15)
        ink.text(self.width(), y, minutes, 15, SEMIBOLD, align="right")

    def _paint_water(self, ink: Ink, story: YardStory, y: float) -> None:
        px = look().px
        ink.heading(0, y, self.tr("Water still to leave"))
        whole = self._litres(story.water_g, about=True) if story.water else "—"
        ink.text(self.width(), y, whole, 21, BOLD, align="right")
        y += px(HEAD_PX + 2)
        most = max((row.grams for row in story.water), default=0)
        usual = px(22) if story.usual_day_g is not None else 0
        fit = max(1, int((self.height() - px(4) - usual - y) / px(WATER_PX)) + 1)
        shown = story.water if len(story.water) <= fit else story.water[: fit - 1]
        for row in shown:
            self._paint_lot(ink, y, row, most)
            self._lines.append((y - px(16), y + px(7), row.lot))
            y += px(WATER_PX)
        rest = story.water[len(shown) :]
        if rest:
            more = self.tr("and {n} more {n:lot|lots}, {litres}")
            litres = self._litres(sum(row.grams for row in rest))
            ink.text(0, y, more.format(n=Counted(len(rest)), litres=litres), 15, color="ink2")
            y += px(WATER_PX)
        if story.usual_day_g is not None:
            told = self.tr("A usual day takes about {litres} from this yard.")
            ink.text(0, y + px(2), told.format(litres=self._litres(story.usual_day_g)), 17, family=SERIF)
            y += px(22)
        if y + px(4) <= self.height():
            told = self.tr("Stronger blue = more water, by tray or meter; hatched = estimated, crossed = doubtful.")
            ink.text(0, y + px(2), ink.fitted(told, self.width(), 14), 14, color="ink2")

    def _paint_lot(self, ink: Ink, y: float, row: LotWater, most: int) -> None:
        """A bar of the lot's litres, cut by beds, each in the blue of its own water."""
        px = look().px
        ink.text(0, y, row.lot, 15, SEMIBOLD)
        beds = place_list([code for code, _, _ in row.parts])
        room = self.width() - px(LABEL_PX) - px(170)
        wide = min(px(BAR_PX), room) * row.grams / most if most else 0.0
        x, top, high = float(px(LABEL_PX)), y - px(13), px(15)
        start = x
        for _, grams, wet in row.parts:
            end = start + wide * (grams / row.grams if row.grams else 0.0)
            ground = look().water(wet)
            ink.fill(start, top, end - start, high, ground)
            if start > x:
                ink.upright(start, top, top + high, 1, look().text_on(ground))
            start = end
        ink.frame(x, top, max(2.0, wide), high, 1, "ink")
        ink.text(x + max(2.0, wide) + px(8), y, self._litres(row.grams), 15, SEMIBOLD)
        words = self.tr("bed {beds}") if len(row.parts) == 1 else self.tr("beds {beds}")
        ink.text(self.width(), y, words.format(beds=beds), 14, color="ink2", align="right")

    # hands

    def _lot_at(self, point: QPointF) -> str:
        return next((lot for top, low, lot in self._lines if top <= point.y() <= low), "")

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        over = self._lot_at(event.position())
        self.setCursor(Qt.CursorShape.PointingHandCursor if over else Qt.CursorShape.ArrowCursor)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        lot = self._lot_at(event.position())
        if lot:
            self.chosen.emit(lot)
