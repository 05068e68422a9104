"""The yard: what lies where, how wet, what changed, what waits for a hand, and the hour handle below."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QPaintEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.go import Target
from farmdesk.desk.pages import Action, Desk, Page
from farmdesk.desk.theme import look
from farmdesk.desk.widgets.hour_handle import HIGH_PX, OVER_PX, HourHandle
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.title import HEIGHT_PX, Title
from farmdesk.desk.widgets.yard_full import YardSheet
from farmdesk.desk.widgets.yard_side import YardSide
from farmdesk.work.stories import YardStory

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

MARGIN_PX, GUTTER_PX, SIDE_PX = 20, 32, 570


class YardPage(Page):
    place = "yard"

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, parent)
        self.setWindowTitle(self.tr("Yard"))
        self.story: YardStory | None = None
        self.title = Title(desk, self)
        self.plan = YardSheet(desk, self)
        self.side = YardSide(desk, self)
        self.hours = HourHandle(desk, self)
        self.setFocusProxy(self.plan)
        self.plan.chosen.connect(self._bed)
        self.side.chosen.connect(self._lot)
        self._rule = 0.0

    def query(self, farm: OpenFarm, at_utc_s: int) -> YardStory:
        from farmdesk.work.yard import yard_story

        return yard_story(farm, at_utc_s)

    def show_story(self, story: Any) -> None:
        self.story = story
        sentence = self.desk.words.say(story.headline)
        self.title.say(self.tr("Yard"), sentence)
        told = self.tr("Nothing lies here; p goes to Picking, where the coffee comes from.")
        self.side.calm = "" if any(place.lying for place in story.places) else told
        self.plan.show_story(story)
        self.side.show_story(story)
        self.hours.show_rain(story.rain)
        self.setAccessibleName(sentence)

    def letters(self) -> Sequence[Action]:
        picture = self.tr("picture") if self.plan.as_table else self.tr("table")
        found = [
            Action("t", picture, self.plan.toggle_twin),
            Action("h", self.tr("hour handle"), self._to_hours),
        ]
        if self.side.calm:
            found.append(Action("p", self.tr("picking"), self._to_picking))
        return found

    def open_at(self, target: Target) -> None:
        if target.kind == "bed":
            self.plan.hold(target.value)

    def _to_hours(self) -> None:
        self.hours.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def _to_picking(self) -> None:
        self.desk.go(Target("page", "picking"))

    @Slot(str)
    def _bed(self, code: str) -> None:
        """The lot that lies on a bed, or the one that comes to it."""
        place = next((p for p in self.story.places if p.code == code), None) if self.story is not None else None
        if place is not None:
            self._lot(place.lying[0].lot if place.lying else place.arriving)

    @Slot(str)
    def _lot(self, lot: str) -> None:
        if lot:
            self.desk.go(Target("lot", lot))

    # room

    def lay_out(self) -> None:
        px = look().px
        left, wide, top = px(MARGIN_PX), self.width() - 2 * px(MARGIN_PX), px(2)
        self.title.setGeometry(left, top, wide, px(HEIGHT_PX))
        band = px(HIGH_PX) + px(OVER_PX)
        self.hours.setGeometry(0, self.height() - band, self.width(), band)
        below, low = top + px(HEIGHT_PX) + px(4), self.height() - px(HIGH_PX)
        side = min(px(SIDE_PX), round(wide * 0.43))
        self.plan.setGeometry(left, below, wide - side - px(GUTTER_PX), low - below - px(4))
        self.side.setGeometry(left + wide - side, below, side, low - below - px(6))
        self._rule = left + wide - side - px(GUTTER_PX) / 2
        self.hours.raise_()

    def paintEvent(self, event: QPaintEvent) -> None:
        px = look().px
        with Ink(self) as ink:
            ink.upright(self._rule, self.side.y() + px(8), self.side.y() + self.side.height() - px(4), 1, "hair")
