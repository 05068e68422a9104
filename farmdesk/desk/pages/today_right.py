"""Today's right zone: rain and the minutes to cover; where this afternoon's fruit goes; who waits."""

from __future__ import annotations

from PySide6.QtCore import QSize

from farmdesk.desk.pages.today_zones import Zone
from farmdesk.desk.theme import BOLD, SEMIBOLD, look
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.twin import Table
from farmdesk.text import Num
from farmdesk.work.portions import place_list

COMPACT_PX = 370  # a lower zone keeps every line to one row


class RightZone(Zone):
    """Rain and the minutes to cover; where this afternoon's fruit goes; who waits for something."""

    def sentence(self) -> str:
        if self.story is None:
            return ""
        say, story = self.desk.words.say, self.day
        said = []
        if story.rain_list:
            minutes = say(Num(story.rain_minutes, "min"))
            said.append(self.tr("{minutes} to cover everything.").format(minutes=minutes) + " " + self._order())
        said += [f"{say(a)}: {say(b)}." for a, b in story.fruit]
        said += [f"{who}: {say(what)}." for who, what in story.waiting]
        return " ".join(said)

    def table(self) -> Table | None:
        say, number = self.desk.words.say, self.desk.words.number
        rows = [[self.tr("rain"), place_list(beds), number(m, 0, "min")] for beds, m in self.day.rain_list]
        rows += [[self.tr("fruit"), say(a), say(b)] for a, b in self.day.fruit]
        rows += [[self.tr("waits"), who, say(what)] for who, what in self.day.waiting]
        return ["", self.tr("where or who"), self.tr("what")], rows

    def _order(self) -> str:
        """First the best, last what takes longest."""
        groups = [place_list(beds) for beds, _ in self.day.rain_list]
        if len(groups) == 1:
            return self.tr("Cover {beds}.").format(beds=groups[0])
        if len(groups) == 2:
            return self.tr("First {first}, then {last}.").format(first=groups[0], last=groups[1])
        middle = ", ".join(groups[1:-1])
        return self.tr("First {first}, then {middle}, last {last}.").format(
            first=groups[0], middle=middle, last=groups[-1]
        )

    def paint(self, ink: Ink) -> None:
        if self.story is None:
            return
        y = 0.0
        for part in (self._paint_rain, self._paint_fruit, self._paint_waiting):
            end = part(ink, y)
            y = end if end > y else y

    def _rule(self, ink: Ink, y: float) -> float:
        if y > 0:
            ink.level(0, self.width(), y, 1, "hair")
            y += look().px(8)
        return y

    def _paint_rain(self, ink: Ink, y: float) -> float:
        story, px, say = self.day, look().px, self.desk.words.say
        if not story.rain_list and story.rain_words is None:
            return y
        ink.heading(0, y + px(14), self.tr("Rain"), say(story.rain_words) if story.rain_words else "")
        if not story.rain_list:
            return y + px(30)
        end = ink.text(0, y + px(51), say(Num(story.rain_minutes, "min")), 28, BOLD)
        ink.text(end + px(10), y + px(51), self.tr("to cover everything"), 15)
        self._paint_minutes(ink, y + px(64))
        if y + px(130) > self.height():
            return y + px(118)
        return ink.wrapped(0, y + px(130), self.width(), self._order(), 15, most=2) - px(4)

    def _paint_minutes(self, ink: Ink, top: float) -> None:
        """A bar cut by minutes, in the order of covering; the sums below."""
        px, total = look().px, max(1e-9, sum(m for _, m in self.day.rain_list))
        wide, high = self.width() - 1, px(28)
        done, free = 0.0, 0.0
        end = f"{total:.0f}"
        last = wide - ink.width(end, 14) - px(6)
        for i, (beds, minutes) in enumerate(self.day.rain_list):
            left, right = done / total * wide, (done + minutes) / total * wide
            ink.fill(left, top, right - left, high, "band" if i % 2 else "sheet")
            ink.frame(left, top, right - left + 1, high, 1, "ink")
            words = place_list(beds)
            if ink.width(words, 15, SEMIBOLD) < right - left - 4:
                ink.text((left + right) / 2, top + px(19), words, 15, SEMIBOLD, align="middle")
            mark = f"{done:.0f}"
            at = max(left - ink.width(mark, 14) / 2, 0)
            if at >= free and at + ink.width(mark, 14) < last:
                free = ink.text(at, top + high + px(17), mark, 14, color="ink2") + px(4)
            done += minutes
        ink.text(wide, top + high + px(17), end, 14, color="ink2", align="right")

    def _paint_fruit(self, ink: Ink, y: float) -> float:
        if not self.day.fruit:
            return y
        px, say = look().px, self.desk.words.say
        y = self._rule(ink, y)
        ink.heading(0, y + px(14), self.tr("This afternoon’s fruit"))
        y += px(38)
        heads = [say(head) for head, _ in self.day.fruit]
        column = min(max([px(70), *(ink.width(head, 15, SEMIBOLD) for head in heads)]), px(150)) + px(12)
        for i, (head, (_, words)) in enumerate(zip(heads, self.day.fruit, strict=True)):
            if y > self.height() - px(6):
                break
            weight = SEMIBOLD if i == 0 else 400
            ink.text(0, y, ink.fitted(head, column - px(8), 15, weight), 15, weight)
            lines = 2 if self.height() > px(COMPACT_PX) else 1
            y = ink.wrapped(column, y, self.width() - column, say(words), 15, weight, most=lines) + px(2)
        return y - px(10)

    def _paint_waiting(self, ink: Ink, y: float) -> float:
        if not self.day.waiting or y > self.height() - look().px(56):
            return y
        px, say = look().px, self.desk.words.say
        y = self._rule(ink, y)
        ink.heading(0, y + px(14), self.tr("Someone waits"))
        y += px(37)
        for i, (who, what) in enumerate(self.day.waiting):
            left = len(self.day.waiting) - i
            if left > 1 and y + px(21) > self.height() + 2:
                ink.text(0, y, self.tr("and {n} more; t shows all").format(n=left), 14, color="ink2")
                break
            ink.text(0, y, ink.fitted(who, px(40), 15, SEMIBOLD), 15, SEMIBOLD)
            ink.text(px(44), y, ink.fitted(say(what), self.width() - px(44), 15), 15)
            y += px(21)
        return y

    def sizeHint(self) -> QSize:
        return QSize(look().px(362), look().px(380))
