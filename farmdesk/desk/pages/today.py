"""Today: the seven questions of the morning on one sheet.

Three zones (vessels and pickers, the yard, rain and fruit) over the day's rail over the gap list. What is
due is framed in a warm colour; when nothing is, there is no warm pixel here. Low windows lose the gap list
down to one line first, then lanes of the rail.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent, QPaintEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.go import Target
from farmdesk.desk.pages import Action, Desk, Page
from farmdesk.desk.pages.today_right import RightZone
from farmdesk.desk.pages.today_zones import Hill, PickerZone, VesselZone, YardZone
from farmdesk.desk.theme import SEMIBOLD, look
from farmdesk.desk.widgets.gaps import LINE_PX, GapList
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.keys import KeyRow
from farmdesk.desk.widgets.rail import LANE_MOST_PX, LANE_PX, DayRail
from farmdesk.desk.widgets.title import HEIGHT_PX, Title
from farmdesk.text import Day, Moment, Num
from farmdesk.work.stories import Gap, TodayStory

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

LEFT_PX, RIGHT_PX, GUTTER_PX, MARGIN_PX = 352, 362, 32, 20
MIDDLE_LEAST_PX = 430  # a narrower yard cannot be read: then two columns
ZONES_LEAST_PX, ZONES_NARROW_PX, ZONES_ROOMY_PX = 340, 400, 560


class TodayPage(Page):
    place = "today"

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, parent)
        self.setWindowTitle(self.tr("Today"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.story: TodayStory | None = None
        self._rules: list[int] = [0]
        self.title = Title(desk, self)
        self.vessels, self.pickers = VesselZone(desk, self), PickerZone(desk, self)
        self.yard = YardZone(desk, self)
        self.right = RightZone(desk, self)
        self.rail = DayRail(desk, self)
        self.gaps = GapList(desk, self)
        self.keys = KeyRow(self)
        self.yard.plan.chosen.connect(self._bed)
        self.gaps.answered.connect(self._answer)

    def query(self, farm: OpenFarm, at_utc_s: int) -> tuple[TodayStory, Hill, tuple[float, float]]:
        from farmdesk.work.settings import asleep_h
        from farmdesk.work.today import today_story

        blocks = tuple((b.code, b.low_m, b.high_m) for b in farm.things.blocks.values())
        return today_story(farm, at_utc_s), blocks, asleep_h(farm.things)

    def show_story(self, story: Any) -> None:
        day, hill, asleep = story
        self.story = day
        self._say_title(day)
        self.pickers.hill, self.vessels.sleep_h = hill, asleep
        for zone in (self.vessels, self.pickers, self.yard, self.right):
            zone.show_story(day)
        say, local = self.desk.words.say, self.desk.time.local(day.at_utc_s)
        names = {
            "sky": self.tr("sky"), "wet side": self.tr("wet side"), "yard": self.tr("yard"),
            "office": self.tr("office"),
        }  # fmt: skip
        jobs = [(names.get(lane, lane), a, b, say(words), due) for lane, a, b, words, due in day.jobs]
        self.rail.show_day(jobs, local.hour + local.minute / 60, asleep)
        self.gaps.show_gaps(day.gaps)
        self.keys.show_actions(self.letters()[:3])
        self.setAccessibleName(self.title.accessibleName())
        self.lay_out()

    def _say_title(self, day: TodayStory) -> None:
        say = self.desk.words.say
        grey = "ink2"
        facts = [
            [(say(Moment(self.desk.time.local(day.at_utc_s), clock=True)), 17, SEMIBOLD, "ink")],
            [(self.tr("work day"), 17, 400, grey), (str(day.work_day_n), 17, SEMIBOLD, "ink")],
        ]
        if day.last_night is not None:
            facts.append([(say(day.last_night), 17, 400, grey)])
        used = self.tr("{n} of {m}").format(n=day.beds_used, m=day.beds)
        facts.append([(self.tr("on the beds"), 17, 400, grey), (used, 17, SEMIBOLD, "ink")])
        if day.water_g:
            litres = say(Num(day.water_g / 1000, "L", about=True))
            facts.append([(self.tr("still to leave"), 17, 400, grey), (litres, 17, SEMIBOLD, "ink")])
        self.title.say(say(Day(day.day, weekday=True, long=True)), facts=facts)

    def letters(self) -> Sequence[Action]:
        if self.story is not None and not self.story.begun:
            return (Action("g", self.tr("begin a lot"), self._begin_lot),)
        return (
            Action("p", self.tr("day sheet"), self._day_sheet),
            Action("y", self.tr("type the yard sheet"), self._yard_sheet),
            Action("r", self.tr("rain list"), self._rain_list),
            Action("n", self.tr("not measured"), self._not_measured),
        )[: 4 if self.story is not None and self.story.gaps else 3]

    # answers

    def _bed(self, code: str) -> None:
        self.desk.go(Target("bed", code))

    def _begin_lot(self) -> None:
        self.desk.go(Target("picking", "lot"))

    def _day_sheet(self) -> None:
        self.desk.go(Target("paper", "yard day sheet"))

    def _rain_list(self) -> None:
        self.desk.go(Target("paper", "rain list"))

    def _yard_sheet(self) -> None:
        self.desk.go(Target("form", "yard sheet"))

    def _answer(self, gap: Gap) -> None:
        """Where the missing thing can be written: its bed or its lot."""
        if gap.quantity == "stick_copy":
            self.desk.go(Target("page", "care"))
        elif gap.lot:
            self.desk.go(Target("lot", gap.lot))
        elif gap.place:
            self.desk.go(Target("bed", gap.place))
        else:
            self.desk.go(Target("page", "notebook"))

    def _not_measured(self) -> None:
        gap, why = self.gaps.current, self.desk.why_not_write()
        if gap is None:
            return
        if why or not gap.quantity or not gap.day:
            self.desk.tell(why or self.tr("This one cannot be answered with “not measured”; Enter goes to it."))
            return
        from farmdesk.work.keeping import not_measured

        day, at_utc_s = date.fromisoformat(gap.day), self.desk.as_of
        self.desk.lanes.do(lambda farm: not_measured(farm, gap.quantity, day, at_utc_s, lot=gap.lot, place=gap.place))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.gaps.current is not None:
            self._answer(self.gaps.current)
        else:
            event.ignore()

    # room

    def lay_out(self) -> None:
        px = look().px
        left, wide = px(MARGIN_PX), self.width() - 2 * px(MARGIN_PX)
        self.title.setGeometry(left, px(8), wide, px(HEIGHT_PX))
        top, bottom = px(8 + HEIGHT_PX + 8), self.height() - px(6)
        middle = wide - px(LEFT_PX) - px(RIGHT_PX) - 2 * px(GUTTER_PX)
        narrow = middle < px(MIDDLE_LEAST_PX)
        low = self._lay_bands(left, wide, top, bottom, px(ZONES_NARROW_PX if narrow else ZONES_LEAST_PX))
        self._rules = [low]
        if narrow:
            self._lay_narrow(left, wide, top, low)
        else:
            self._lay_three(left, wide, top, low)
        self.update()

    def _lay_bands(self, left: int, wide: int, top: int, bottom: int, least: int) -> int:
        """Gap list and rail from below, as much as the zones leave; returns where the zones end."""
        px = look().px
        lines = self.gaps.rows_for(2)
        keys = self.keys.width()
        right_wide = max(px(RIGHT_PX), keys)
        need = self.rail.height_for(len(self.rail.lanes), px(LANE_PX)) + px(14)
        while lines > 1 and bottom - top - max(px(LINE_PX) * lines, px(32)) - need < least:
            lines -= 1
        gaps_high = max(px(LINE_PX) * lines, px(32))
        gaps_top = bottom - gaps_high
        spare = gaps_top - top - least - px(14)
        lanes = len(self.rail.lanes)
        lane_px = px(LANE_PX)
        while lanes > 1 and self.rail.height_for(lanes, lane_px) > spare:
            lanes -= 1
        shown = lanes > 0 and self.rail.height_for(lanes, lane_px) <= spare
        roomy = spare - self.rail.height_for(lanes, lane_px) - px(ZONES_ROOMY_PX - ZONES_LEAST_PX)
        if shown and roomy > 0:
            lane_px = min(px(LANE_MOST_PX), lane_px + int(roomy / lanes))
        rail_high = self.rail.height_for(lanes, lane_px) if shown else 0
        self.rail.lane_px = lane_px
        self.rail.setVisible(shown)
        self.rail.setGeometry(left, gaps_top - px(8) - rail_high, wide, rail_high)
        self.gaps.setGeometry(left, gaps_top, wide - right_wide - px(8), gaps_high)
        self.keys.move(left + wide - right_wide, bottom - self.keys.height())
        return gaps_top - px(8) - rail_high - px(6)

    def _lay_three(self, left: int, wide: int, top: int, low: int) -> None:
        """Vessels and pickers; the yard, which takes all extra room; rain, fruit and who waits."""
        px = look().px
        side, right_wide, gutter = px(LEFT_PX), px(RIGHT_PX), px(GUTTER_PX)
        pick_high = 0 if self.pickers.empty else px(126)
        vessels_high = min(self.vessels.natural_px(), low - top - pick_high)
        self.pickers.setVisible(pick_high > 0)
        self.vessels.setGeometry(left, top, side + gutter // 2 - 2, vessels_high)
        self.pickers.setGeometry(left, top + vessels_high, side, pick_high)
        right = right_wide + gutter if not self.right.empty else 0
        self.yard.setGeometry(left + side + gutter, top, wide - side - gutter - right, low - top)
        self.right.setGeometry(left + wide - right_wide, top, right_wide, low - top)
        self.right.setVisible(right > 0)
        self._rules = [low, left + side + gutter // 2]
        if right:
            self._rules.append(left + wide - right_wide - gutter // 2)

    def _lay_narrow(self, left: int, wide: int, top: int, low: int) -> None:
        """Large letters or a small window: vessels over rain in one column, the yard beside it."""
        px = look().px
        side, gutter = px(RIGHT_PX), px(GUTTER_PX)
        vessels_high = min(self.vessels.natural_px(), low - top)
        self.pickers.hide()
        self.vessels.setGeometry(left, top, side + gutter // 2 - 2, vessels_high)
        rest = low - top - vessels_high - px(10)
        self.right.setVisible(rest > px(80) and not self.right.empty)
        self.right.setGeometry(left, top + vessels_high + px(10), side, max(0, rest))
        self.yard.setGeometry(left + side + gutter, top, wide - side - gutter, low - top)
        self._rules = [low, left + side + gutter // 2]

    def paintEvent(self, event: QPaintEvent) -> None:
        if self.story is None:
            return
        with Ink(self) as ink:
            low, *xs = self._rules
            for x in xs:
                ink.upright(x, look().px(8 + HEIGHT_PX + 12), low - 6, 1, "hair")
            if not self.rail.isVisible():
                ink.level(self.gaps.x(), self.width() - self.gaps.x(), low + 4, 1.6, "ink")
            if self.gaps.current is not None and self.keys.y() > self.gaps.y() + look().px(4):
                hint = self.tr("Enter answers the first one; “n” writes “not measured”.")
                ink.text(self.keys.x() + look().px(4), self.gaps.y() + look().px(15), hint, 14, color="ink2")
