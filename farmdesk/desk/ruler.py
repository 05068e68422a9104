"""The season's ruler: the band at the bottom of every page, and the one as-of handle of the program.

Good hours stand as bars, rain hangs as blocks. The grip is dragged, or moved with the arrow keys by a day,
with Shift by a week; Home is the season's first day, End is now.
"""

from __future__ import annotations

from datetime import date, timedelta

from PySide6.QtCore import QPointF, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent, QPaintEvent, QPolygonF
from PySide6.QtWidgets import QWidget

from farmdesk.desk.pages import Desk
from farmdesk.desk.theme import SEMIBOLD, look
from farmdesk.desk.widgets.ink import Ink
from farmdesk.text import MONTHS_LONG, Moment
from farmdesk.work.stories import RoadStory

HEIGHT_PX, LOW_PX = 54, 40  # with and without the names of the months
OVER_PX = 6  # the grip stands that far above the band
SIDE_PX = 20
CATCH_PX = 40  # how wide the grip may be caught; it is drawn 14 wide
FULL_GOOD_H, FULL_RAIN_MM = 8.0, 60.0  # a bar and a block of full height


class Ruler(QWidget):
    """Draws the road's story; moves `desk`."""

    caught = Signal(bool)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.desk = desk
        self.story: RoadStory | None = None
        self.span: tuple[int, int] | None = None
        self.typing = False
        self._held = False
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setMouseTracking(True)
        desk.moved.connect(self._say)

    def show_story(self, story: RoadStory) -> None:
        """The season's days and weather as known at the handle."""
        self.story = story
        self._say()

    def show_span(self, span: tuple[int, int] | None) -> None:
        """The stretch [UTC s] that the page shows, drawn as a window on the ruler."""
        self.span = span
        self.update()

    def show_typing(self, typing: bool) -> None:
        """A form is being filled: the handle says so."""
        self.typing = typing
        self._say()

    def label(self) -> str:
        """`as known Tue 21 Jan 05:45`."""
        at = self.desk.words.say(Moment(self.desk.time.local(self.desk.as_of), weekday=True))
        return (self.tr("typing {at}") if self.typing else self.tr("as known {at}")).format(at=at)

    def _say(self) -> None:
        self.setAccessibleName(self.tr("Season's ruler, {label}").format(label=self.label()))
        self.update()

    # where days stand

    @property
    def _season(self) -> RoadStory:
        assert self.story is not None  # nothing is drawn or caught before a story has come
        return self.story

    def _days(self) -> int:
        return max(1, (self._season.last_day - self._season.first_day).days + 1)

    def x_of(self, at_utc_s: float) -> float:
        """Where an instant [UTC s] stands [px]."""
        local = self.desk.time.local(at_utc_s)
        days = (local.date() - self._season.first_day).days + (local.hour + local.minute / 60) / 24
        side = look().px(SIDE_PX)
        return side + min(1.0, max(0.0, days / self._days())) * (self.width() - 2 * side)

    def day_at(self, x: float) -> date:
        """The day under a point of the ruler."""
        side = look().px(SIDE_PX)
        share = (x - side) / max(1, self.width() - 2 * side)
        return self._season.first_day + timedelta(days=int(min(max(share, 0.0), 0.9999) * self._days()))

    def go_to_day(self, day: date) -> None:
        """Put the handle on a day of the season, keeping its hour."""
        if self.story is None:
            return
        local = self.desk.time.local(self.desk.as_of)
        first = self.story.first_day
        day = min(max(day, first), self.story.last_day)
        self.desk.move_to(self.desk.time.instant(day, local.hour, local.minute, local.second))

    def step(self, days: int) -> None:
        """Move the handle by whole days, keeping its hour."""
        if self.story is not None:
            self.go_to_day(self.desk.time.calendar_day(self.desk.as_of) + timedelta(days=days))

    def back(self) -> None:
        """A day back."""
        self.step(-1)

    def on(self) -> None:
        """A day on."""
        self.step(1)

    # hands

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if self.story is None or event.button() != Qt.MouseButton.LeftButton:
            return
        self._held = True
        self.caught.emit(True)
        if abs(event.position().x() - self.x_of(self.desk.as_of)) > look().px(CATCH_PX) / 2:
            self.go_to_day(self.day_at(event.position().x()))

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self.story is None:
            return
        near = abs(event.position().x() - self.x_of(self.desk.as_of)) <= look().px(CATCH_PX) / 2
        self.setCursor(Qt.CursorShape.SizeHorCursor if near or self._held else Qt.CursorShape.ArrowCursor)
        if self._held:
            if event.position().x() >= self.x_of(self.desk.present):
                self.desk.back_to_now()
            else:
                self.go_to_day(self.day_at(event.position().x()))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if self._held:
            self._held = False
            self.caught.emit(False)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        many = 7 if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else 1
        match event.key():
            case Qt.Key.Key_Left:
                self.step(-many)
            case Qt.Key.Key_Right:
                self.step(many)
            case Qt.Key.Key_Home if self.story is not None:
                self.go_to_day(self.story.first_day)
            case Qt.Key.Key_End:
                self.desk.back_to_now()
            case _:
                event.ignore()

    def focusInEvent(self, event: QFocusEvent) -> None:
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        self.update()

    # the drawing

    def paintEvent(self, event: QPaintEvent) -> None:
        with Ink(self) as ink:
            over = look().px(OVER_PX)
            ink.painter.translate(0, over)
            ink.fill(0, 0, self.width(), self.height(), "band")
            ink.level(0, self.width(), 0.5, 1, "rule", dashed=not self.desk.at_present)
            if self.story is not None:
                self._paint_season(ink)
            if self.hasFocus():
                ink.frame(0, 0, self.width(), self.height() - over, 3, "focus")

    def _paint_months(self, ink: Ink, months: list[tuple[float, date]]) -> None:
        """A month's name where there is room for it before the next; the first one written carries the year."""
        px, dated = look().px, False
        ends = [x for x, _ in months[1:]] + [float(self.width())]
        for (x, day), end in zip(months, ends, strict=True):
            name = self.desk.words.say(MONTHS_LONG[day.month - 1]).strip()
            name = name if dated else f"{name} {day.year}"
            if x + px(8) + ink.width(name, 13) <= end:
                ink.text(x + px(4), px(50), name, 13, color="ink2")
                dated = True

    def _paint_season(self, ink: Ink) -> None:
        px, story = look().px, self._season
        side, base = px(SIDE_PX), px(36)
        wide = (self.width() - 2 * side) / self._days()
        labels = self.height() - px(OVER_PX) >= px(HEIGHT_PX) - 2
        day, months = story.first_day, list[tuple[float, date]]()
        for i in range(self._days()):
            x = side + i * wide
            if i == 0 or day.day == 1:
                ink.upright(x, px(4), base, 1, "rule")
                months.append((x, day))
            elif day.weekday() == 0:
                ink.upright(x, base - px(6), base, 1, "rule")
            day += timedelta(days=1)
        if labels:
            self._paint_months(ink, months)
        for row in story.weather:
            x = side + (row.day - story.first_day).days * wide
            if row.good_h:
                high = px(18) * min(1.0, row.good_h / FULL_GOOD_H)
                ink.fill(x + 1, base - high, wide - 2, high, "hair")
            if row.rain_mm:
                high = max(px(3), px(16) * min(1.0, row.rain_mm / FULL_RAIN_MM) ** 0.5)
                ink.fill(x + 1, px(3), max(wide - 2, px(6)), high, "ink2")
        ink.level(side, self.width() - side, base, 1, "rule")
        if self.span is not None:
            left, right = self.x_of(self.span[0]), self.x_of(self.span[1])
            ink.frame(left, 1, right - left, base, 1.2, "ink")
        self._paint_grip(ink)

    def _paint_grip(self, ink: Ink) -> None:
        px = look().px
        x, half = round(self.x_of(self.desk.as_of)), px(7)
        ink.upright(x, 0, self.height() - px(OVER_PX), 2, "ink", dashed=not self.desk.at_present)
        top, low = -px(OVER_PX), px(8)
        grip = QPolygonF(
            [QPointF(x - half, top), QPointF(x + half, top), QPointF(x + half, low - half / 2),
             QPointF(x, low + 1), QPointF(x - half, low - half / 2)]
        )  # fmt: skip
        ink.shape(grip, "ink")
        words = self.label()
        wide = ink.width(words, 13, SEMIBOLD)
        right_side = x + px(12) + wide < self.width() - px(SIDE_PX)
        left = x + px(12) if right_side else x - px(12) - wide
        ink.fill(left - px(3), px(5), wide + px(6), px(17), "band")
        ink.text(left, px(18), words, 13, SEMIBOLD)
