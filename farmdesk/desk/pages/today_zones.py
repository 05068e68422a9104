"""Zones of Today: what to wash first, who picks where, and the yard with its order of opening."""

from __future__ import annotations

import re
from collections.abc import Sequence

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QWidget

from farmdesk.ahead.range import ALARM, Worry
from farmdesk.desk.pages import Desk
from farmdesk.desk.theme import BOLD, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.clock import SMALL_R_PX, paint_clock
from farmdesk.desk.widgets.drawn import Drawn
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.twin import Table
from farmdesk.desk.widgets.yard import YardPlan
from farmdesk.text import Days, Moment
from farmdesk.work.portions import place_list
from farmdesk.work.stories import TodayStory, VesselStory

Hill = Sequence[tuple[str, float, float]]  # block, lowest and highest metre


def code_list(codes: Sequence[str]) -> str:
    """Vessels as people say them: `T1 T2 C1 C2 B1–B6`."""
    parts: list[list[str]] = []
    for code in codes:
        match = re.fullmatch(r"([A-Za-z]+)(\d+)", code)
        last = re.fullmatch(r"([A-Za-z]+)(\d+)", parts[-1][-1]) if parts else None
        if match and last and match[1] == last[1] and int(match[2]) == int(last[2]) + 1:
            parts[-1].append(code)
        else:
            parts.append([code])
    return " ".join(f"{run[0]}–{run[-1]}" if len(run) > 2 else " ".join(run) for run in parts)


class Zone(Drawn):
    """A zone of the page: it paints the day's story."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.desk = desk
        self.story: TodayStory | None = None

    def show_story(self, story: TodayStory) -> None:
        """Show a day."""
        self.story = story
        self.told()

    @property
    def day(self) -> TodayStory:
        """The story, once it has come."""
        assert self.story is not None
        return self.story

    @property
    def empty(self) -> bool:
        """Nothing stands here today."""
        return not self.sentence()

    def moment(self, at_utc_s: float) -> str:
        """`06:54`, with its day where that is not today."""
        at = self.desk.time.local(at_utc_s)
        today = self.desk.time.calendar_day(self.day.at_utc_s)
        return self.desk.words.say(Moment(at, clock=True) if at.date() == today else Moment(at, weekday=True))

    def span(self, first: float | None, last: float | None) -> str:
        """`06:00–08:00` today, `8–9 Dec` on other days; open ends in words."""
        if first is None:
            return self.tr("open")
        if last == first:  # what it was waiting for has come already
            return self.tr("since {time}").format(time=self.moment(first))
        if last is None:
            return self.tr("from {time}").format(time=self.moment(first))
        time, say = self.desk.time, self.desk.words.say
        a, b = time.local(first), time.local(last)
        if a.date() == b.date():
            return f"{self.moment(first)}–{say(Moment(b, clock=True))}"
        return say(Days(a.date(), b.date()))


def worry_color(worry: Worry) -> str:
    """The token of the colour in which a worry is said; its words say what to do without it."""
    return "now" if worry.level == ALARM else "ink"


class VesselZone(Zone):
    """What must be opened or washed first, as a clock with its straight figures; then the others."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, parent)
        self.sleep_h = (0.0, 0.0)  # until a story says when people sleep

    def natural_px(self) -> int:
        """How high its words and clock stand [px]."""
        px = look().px
        if self.story is None:
            return px(60)
        calm = px(70) if self.story.calm is not None else 0
        calm += px(56) if self.story.vessels and self.story.vessels[0].worries else 0
        others = len(self._others()) * px(24)
        return calm + (px(250) + others if self.story.vessels else px(84))

    def sentence(self) -> str:
        if self.story is None:
            return ""
        if self.story.calm is not None:
            return self.desk.words.say(self.story.calm)
        return " ".join(
            f"{vessel.code}: {', '.join(filter(None, self._row(vessel)[1:])).rstrip('.')}."
            for vessel in self.story.vessels
        )

    def table(self) -> Table | None:
        heads = [self.tr("vessel"), self.tr("lot"), self.tr("since"), self.tr("ready"), self.tr("pH"), self.tr("°C"),
                 self.tr("to do")]  # fmt: skip
        return heads, [self._row(vessel) for vessel in self.story.vessels] if self.story else []

    def _row(self, vessel: VesselStory) -> list[str]:
        say, number = self.desk.words.say, self.desk.words.number
        none = self.tr("not measured")
        return [
            vessel.code, vessel.lot, say(Moment(self.desk.time.local(vessel.filled_utc_s), weekday=True)),
            self._ready(vessel),
            none if vessel.last_ph is None else number(vessel.last_ph, 2),
            none if vessel.last_mass_c is None else number(vessel.last_mass_c, 1, "°C"),
            " ".join(say(worry.text) for worry in vessel.worries),
        ]  # fmt: skip

    def paint(self, ink: Ink) -> None:
        story, px = self.story, look().px
        if story is None:
            return
        y = float(px(14))
        if story.calm is not None:
            y = ink.wrapped(0, px(20), self.width(), self.desk.words.say(story.calm), 21, family=SERIF) + px(6)
        vessels = list(story.vessels)
        if vessels:
            first = self.tr("Open first") if vessels[0].sealed else self.tr("Wash first")
            ink.heading(0, y, first if any(vessel.due for vessel in vessels) else self.tr("In the vessels"))
            self._paint_first(ink, vessels[0], y)
            y += px(220)
            for worry in vessels[0].worries[:1]:
                said = self.desk.words.say(worry.text)
                y = ink.wrapped(0, y + px(8), self.width(), said, 15, SEMIBOLD, worry_color(worry), most=2) + px(4)
            for group in self._others():
                if y > self.height() - px(28):
                    break
                y = self._paint_line(ink, group, y)
        elif story.calm is None:
            ink.heading(0, y, self.tr("In the vessels"))
            ink.text(0, y + px(26), self.tr("Nothing is in a vessel."), 17, family=SERIF)
            y += px(48)
        if story.free_vessels and y <= self.height():
            words = self.tr("{vessels}: empty").format(vessels=code_list(story.free_vessels))
            ink.wrapped(0, y + px(8), self.width(), words, 15, most=1)

    def _paint_first(self, ink: Ink, vessel: VesselStory, y: float) -> None:
        px, say, number = look().px, self.desk.words.say, self.desk.words.number
        now, local = self.day.at_utc_s, self.desk.time.local
        radius = px(SMALL_R_PX)
        paint_clock(ink, px(96), y + px(110), radius, vessel, now, self.desk.time, self.sleep_h)
        x, room = px(208), self.width() - px(208)
        base = y + px(33)
        end = ink.text(x, base, vessel.code, 26, BOLD)
        ink.text(end + px(12), base, vessel.lot, 17, SEMIBOLD)
        ink.text(x, y + px(53), ink.fitted(say(vessel.method), room, 14), 14, color="ink2")
        line = y + px(86)
        if vessel.ahead is not None:
            words = self.span(vessel.ahead.earliest_utc_s, vessel.ahead.latest_utc_s)
            size = next((s for s in (26, 21, 18, 15) if ink.width(words, s, BOLD) <= room), 14)
            ink.text(x, line, words, size, BOLD, vessel.due or "ink")
            if vessel.ahead.earliest_utc_s == vessel.ahead.latest_utc_s is not None:
                ink.text(x, y + px(104), self.tr("ready"), 15)
            elif vessel.ahead.likely_utc_s is not None:
                likely = self.moment(vessel.ahead.likely_utc_s)
                ready = self.tr("ready; likely {time}").format(time=likely)
                if ink.width(ready, 15) > room:
                    ready = self.tr("likely {time}").format(time=likely)
                ink.text(x, y + px(104), ready, 15)
        else:
            ink.text(x, line, self.tr("end not known"), 17, SEMIBOLD)
        hours, minutes = divmod(round((now - vessel.filled_utc_s) / 60), 60)
        since = say(Moment(local(vessel.filled_utc_s), weekday=True, clock=True))
        since = f"{say(Moment(local(vessel.filled_utc_s), weekday=True)).split(' ')[0]} {since}"
        end = ink.text(x, y + px(132), f"{number(hours, 0, 'h')} {minutes:02d}", 17, SEMIBOLD)
        ink.text(end + px(8), y + px(132), self.tr("since {time}").format(time=since), 14, color="ink2")
        if vessel.last_ph is None:
            end = ink.text(x, y + px(154), self.tr("pH not measured"), 15)
        else:
            end = ink.text(x, y + px(154), f"pH {number(vessel.last_ph, 2)}", 17, SEMIBOLD)
        more = [] if vessel.last_mass_c is None else [number(vessel.last_mass_c, 1, "°C")]
        if vessel.last_utc_s is not None:
            more.append(say(Moment(local(vessel.last_utc_s), clock=True)))
        while more and end + px(8) + ink.width(", ".join(more), 14) > self.width():
            more.pop()
        ink.text(end + px(8), y + px(154), ", ".join(more), 14, color="ink2")
        if vessel.latest_utc_s is not None:
            latest = self.moment(vessel.latest_utc_s)
            end = ink.text(x, y + px(176), self.tr("latest") + " ", 15)
            size = next((s for s in (17, 15) if end + ink.width(latest, s, SEMIBOLD) <= self.width()), 13)
            ink.text(end, y + px(176), latest, size, SEMIBOLD)

    def _ready(self, vessel: VesselStory) -> str:
        ahead = vessel.ahead
        return self.span(ahead.earliest_utc_s, ahead.latest_utc_s) if ahead else self.tr("end not known")

    def _others(self) -> list[list[VesselStory]]:
        """The other vessels; those that hold the same lot and are ready at the same time share a line."""
        groups: dict[tuple[str, str, str], list[VesselStory]] = {}
        for vessel in self.day.vessels[1:]:
            groups.setdefault((vessel.lot, self._ready(vessel), vessel.due), []).append(vessel)
        return list(groups.values())

    def _paint_line(self, ink: Ink, group: Sequence[VesselStory], y: float) -> float:
        px, first = look().px, group[0]
        end = ink.text(0, y + px(8), code_list([vessel.code for vessel in group]), 17, BOLD, first.due or "ink")
        end = ink.text(end + px(10), y + px(8), first.lot, 15, SEMIBOLD)
        end = ink.text(end + px(10), y + px(8), self._ready(first), 15)
        for worry in [worry for vessel in group for worry in vessel.worries][:1]:
            said = ink.fitted(self.desk.words.say(worry.text), self.width() - end - px(10), 15)
            ink.text(end + px(10), y + px(8), said, 15, SEMIBOLD, worry_color(worry))
        return y + px(24)


class PickerZone(Zone):
    """Which blocks are picked, on a profile of the hill."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, parent)
        self.hill: Hill = ()

    def sentence(self) -> str:
        if self.story is None:
            return ""
        return " ".join(f"{block}: {self.desk.words.say(words)}." for block, words in self.story.picking)

    def paint(self, ink: Ink) -> None:
        if self.story is None or not self.story.picking:
            return
        px = look().px
        ink.level(0, self.width(), 0.5, 1, "hair")
        ink.heading(0, px(22), self.tr("Pickers"))
        picked = {block for block, _ in self.story.picking}
        self._paint_hill(ink, picked)
        x, y = px(184), float(px(22))
        for block, words in self.story.picking:
            if y > self.height() - px(12):
                break
            ink.text(x, y, block, 21, BOLD)
            y = ink.wrapped(x + px(26), y, self.width() - x - px(26), self.desk.words.say(words), 15) + px(6)

    def _paint_hill(self, ink: Ink, picked: set[str]) -> None:
        """Blocks at their height; the picked ones in ink."""
        px = look().px
        if not self.hill:
            return
        low, high = min(h[1] for h in self.hill), max(h[2] for h in self.hill)
        left, right, top, base = px(4), px(162), px(40), self.height() - px(14)
        base = min(base, top + px(72))

        def at(metres: float) -> QPointF:
            share = (metres - low) / max(1.0, high - low)
            return QPointF(left + share * (right - left), base - share * (base - top))

        ink.line(at(low).x(), at(low).y(), at(high).x(), at(high).y(), 1, "rule")
        reached, aside = -1.0, 0
        for i, (block, a, b) in enumerate(sorted(self.hill, key=lambda h: h[1])):
            aside = 0 if a >= reached else 1 - aside  # a block beside its neighbour stands off the line
            reached = max(reached, b)
            off = QPointF(-px(4), -px(7)) * aside
            first, last = at(a + 3) + off, at(b - 3) + off
            here = block in picked
            ink.line(first.x(), first.y(), last.x(), last.y(), px(8 if here else 4), "ink" if here else "rule")
            below = i % 2 == 0 and not aside
            middle = (first + last) / 2 + (QPointF(px(5), px(18)) if below else QPointF(-px(6), -px(7)))
            size, weight, color = (18, BOLD, "ink") if here else (14, 400, "ink2")
            ink.text(middle.x(), middle.y(), block, size, weight, color, align="middle")


class YardZone(QWidget):
    """The yard's plan, and beside the upper row which beds open when."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.desk = desk
        self.plan = YardPlan(desk, self)
        self.words = _OpenFirst(desk, self)

    def show_story(self, story: TodayStory) -> None:
        """Show a day's yard."""
        self.plan.show_story(story.yard)
        self.words.show_story(story)
        self._lay_out()

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._lay_out()

    def _lay_out(self) -> None:
        px = look().px
        top = px(19)
        self.plan.setGeometry(0, top, self.width(), self.height() - top)
        upper = self.plan.beside
        if self.width() - upper.right() < px(190):
            self.plan.setGeometry(0, top, self.width() - px(220), self.height() - top)
            upper = self.plan.beside
        left = round(max(upper.right() + px(10), 0))
        low = round(upper.bottom()) if upper.bottom() else self.height()
        self.words.setGeometry(left, top, self.width() - left, max(px(100), low + px(8)))
        self.words.raise_()
        self.plan.stackUnder(self.words)

    def paintEvent(self, event: QPaintEvent) -> None:
        with Ink(self) as ink:
            due = self.words.story is not None and bool(self.words.story.open_first)
            head = self.tr("Open, then shut") if due else self.tr("The yard")
            note = self.tr("stronger blue = more water to leave; north up")
            x = ink.heading(0, look().px(14), head)
            ink.text(x + 9, look().px(14), ink.fitted(note, self.width() - x - 9, 14), 14, color="ink2")


class _OpenFirst(Zone):
    """When which beds open, and why."""

    def sentence(self) -> str:
        if self.story is None:
            return ""
        say = self.desk.words.say
        return " ".join(f"{say(when)}: {place_list(beds)}, {say(why)}." for when, beds, why in self.story.open_first)

    def table(self) -> Table | None:
        say = self.desk.words.say
        rows = [[say(when), place_list(beds), say(why)] for when, beds, why in self.day.open_first]
        return [self.tr("when"), self.tr("beds"), self.tr("why")], rows

    def paint(self, ink: Ink) -> None:
        if self.story is None or not self.story.open_first:
            return
        px, say = look().px, self.desk.words.say
        due = any(place.due for place in self.story.yard.places)
        x, y, room = px(18), float(px(18)), self.width() - px(18)
        start = y
        for i, (when, beds, why) in enumerate(self.story.open_first):
            if y > self.height() - px(30):
                break
            ink.text(x, y, ink.fitted(say(when), room, 17, BOLD), 17, BOLD, "today" if due and not i else "ink")
            y = ink.wrapped(x, y + px(19), room, place_list(beds), 17, SEMIBOLD, most=2) - px(4)
            y = ink.wrapped(x, y, room, say(why), 14, color="ink2", most=2) + px(3)
        ink.upright(px(4), start - px(12), min(y - px(12), self.height()), 1, "hair")
