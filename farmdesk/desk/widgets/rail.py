"""The day's rail: 24 hours from four in the morning, one lane for the sky, the office and each pair of hands."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from farmdesk.desk.pages import Desk
from farmdesk.desk.theme import BOLD, REGULAR, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.drawn import Drawn
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.twin import Table
from farmdesk.text import Counted

HEAD_PX, LANE_PX, LANE_MOST_PX, LABEL_PX = 30, 18, 26, 92
FIRST_H = 4.0  # the work day begins at four (clock.FarmTime)

Job = tuple[str, float, float, str, str]  # lane, from [h], until [h], words, due


def hour_text(hour: float) -> str:
    """`07:15`, also for hours past midnight."""
    minutes = round(hour * 60) % 1440
    return f"{minutes // 60:02d}:{minutes % 60:02d}"


class DayRail(Drawn):
    """`show_day` gives it the jobs; lanes stand in the order in which they are first named."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.desk = desk
        self.jobs: list[Job] = []
        self.now_h: float | None = None
        self.sleep_h = (20.0, 4.0)
        self.lane_px = LANE_PX  # set by the page, by the room it has

    def show_day(self, jobs: list[Job], now_h: float | None, sleep_h: tuple[float, float]) -> None:
        """Jobs in hours of the day; hours before four belong to the coming night."""
        self.jobs = [(lane, _late(a), _late(b), words, due) for lane, a, b, words, due in jobs]
        self.now_h = None if now_h is None else _late(now_h)
        self.sleep_h = sleep_h
        self.told()

    @property
    def lanes(self) -> list[str]:
        """The lanes that have something in them, in order."""
        return list(dict.fromkeys(job[0] for job in self.jobs))

    def height_for(self, lanes: int, lane_px: float) -> int:
        """How high so many lanes of that height [px] stand."""
        return look().px(HEAD_PX) + max(1, lanes) * round(lane_px) + 4

    def sentence(self) -> str:
        due = [f"{words} {hour_text(a)}" for _, a, _, words, state in self.jobs if state]
        head = self.tr("The day, {n} {n:job|jobs}.").format(n=Counted(len(self.jobs)))
        return f"{head} {self.tr('Due: {jobs}.').format(jobs=', '.join(due))}" if due else head

    def table(self) -> Table | None:
        rows = [[lane, hour_text(a), hour_text(b), words] for lane, a, b, words, _ in self.jobs]
        return [self.tr("who"), self.tr("from"), self.tr("until"), self.tr("what")], rows

    def x_of(self, hour: float) -> float:
        """Where an hour from four to twenty-eight stands [px]."""
        left = look().px(LABEL_PX)
        return left + (hour - FIRST_H) / 24 * (self.width() - left)

    def paint(self, ink: Ink) -> None:
        px = look().px
        top, low = px(HEAD_PX), self.height() - 4
        ink.level(0, self.width(), 1, 1.6, "ink")
        ink.text(0, px(22), self.tr("The day"), 18, SEMIBOLD, family=SERIF)
        asleep, awake = (_late(h) for h in self.sleep_h)
        awake = awake if awake > asleep else 28.0
        ink.fill(self.x_of(asleep), top, self.x_of(awake) - self.x_of(asleep), low - top, "night")
        for hour in range(4, 29):
            x = min(self.x_of(hour), self.width() - 1)
            ink.upright(x, top, low, 1, "hair")
            if hour % 2 == 0:
                align = "left" if hour == 4 else "right" if hour == 28 else "middle"
                ink.text(x, px(24), f"{hour % 24:02d}", 14, color="ink2", align=align)
        lane_high = self.lane_px
        room = int((low - top) / lane_high)
        due = {job[0] for job in self.jobs if job[4]}
        kept = sorted(self.lanes, key=lambda lane: lane not in due)[:room]  # where somebody must act stays longest
        lanes = [lane for lane in self.lanes if lane in kept]
        for i, lane in enumerate(lanes):
            y = top + i * lane_high
            ink.text(0, y + lane_high / 2 + px(5), ink.fitted(lane, px(LABEL_PX) - 6, 14), 14, color="ink2")
            ink.level(0, self.width(), y + lane_high, 1, "hair")
            self._paint_lane(ink, [job for job in self.jobs if job[0] == lane], y)
        if self.now_h is not None:
            ink.upright(self.x_of(self.now_h), top - px(4), low, 2, "ink")

    def _paint_lane(self, ink: Ink, jobs: list[Job], y: float) -> None:
        px = look().px
        jobs.sort(key=lambda job: job[1])
        taken = float(px(LABEL_PX))
        high = self.lane_px
        base = y + high / 2 + px(5)
        for i, (_, start, end, words, due) in enumerate(jobs):
            left, right = self.x_of(start), max(self.x_of(end), self.x_of(start) + px(4))
            weight = BOLD if due == "now" else SEMIBOLD if due else REGULAR
            free = (self.x_of(jobs[i + 1][1]) if i + 1 < len(jobs) else self.width()) - 4
            ink.fill(left, y + 2, right - left, high - 3, "tint" if due else "paper")
            ink.frame(left, y + 2, right - left, high - 3, {"now": 2.4, "today": 1.6}.get(due, 1), due or "ink")
            rooms = (right - left - px(6), free - right - px(5), left - taken - px(9))  # inside, after, before
            size = next((s for s in (14, 13) if ink.width(words, s, weight) <= max(rooms)), 13)
            wide = ink.width(words, size, weight)
            at = next((n for n in range(3) if wide <= rooms[n]), rooms.index(max(rooms)))
            words = ink.fitted(words, rooms[at], size, weight)
            x = (left + px(4), right + px(5), left - px(5) - ink.width(words, size, weight))[at]
            taken = max(right, ink.text(x, base, words, size, weight))


def _late(hour: float) -> float:
    return hour + 24 if hour < FIRST_H else hour
