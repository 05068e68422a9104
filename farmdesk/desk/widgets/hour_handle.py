"""The hour handle: seven days above the ruler, nights shaded, rain in millimetres, what is ahead hatched.

It moves the program's one as-of handle by the hour: left and right one hour, with Shift one day, End is now.
A pull asks at most some twenty times a second.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

from PySide6.QtCore import QPointF, Qt, QTimer
from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent, QPaintEvent, QPolygonF
from PySide6.QtWidgets import QWidget

from farmdesk.clock import DAY_S, HOUR_S
from farmdesk.desk.pages import Desk
from farmdesk.desk.ruler import CATCH_PX, FULL_RAIN_MM
from farmdesk.desk.theme import SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.ink import Ink
from farmdesk.text import WEEKDAYS, Moment

HIGH_PX, OVER_PX = 58, 8  # the grip stands that far above the band
GUTTER_PX, SIDE_PX = 152, 20
DAYS_D, PAST_D = 7, 4  # days shown; of them behind today
DARK_FROM_H, DARK_UNTIL_H = 18, 6  # near enough all year between the tropics; from memory
SNAP_S = 900  # a pull stops at quarters of an hour
PULL_MS = 50


class HourHandle(QWidget):
    """Moves `desk`; shows the week's rain."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.desk = desk
        self.rain: dict[date, float] = {}
        self.first = desk.time.calendar_day(desk.as_of) - timedelta(days=PAST_D)
        self._held = False
        self._wanted: int | None = None
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(PULL_MS)
        self._pause.timeout.connect(self._pulled)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setMouseTracking(True)
        desk.moved.connect(self._say)

    def show_rain(self, rain: Sequence[tuple[date, float]]) -> None:
        """The rain [mm] of the days around, as far as it was written."""
        self.rain.update(rain)
        self._say()

    def label(self) -> str:
        """`Thu 23 Jan 17:00`."""
        return self.desk.words.say(Moment(self.desk.time.local(self.desk.as_of), weekday=True))

    def _say(self) -> None:
        if not self._held:
            self._keep_in_view()
        self.setAccessibleName(self.tr("Hour handle, {label}").format(label=self.label()))
        self.update()

    def _keep_in_view(self) -> None:
        """The seven days stay where they are until the handle comes near their edge."""
        day, now = self.desk.time.calendar_day(self.desk.as_of), self.desk.time.calendar_day(self.desk.present)
        latest = now - timedelta(days=PAST_D)
        inside = self.first < day < self.first + timedelta(days=DAYS_D - 1)
        if not inside or self.first > latest:
            self.first = min(day - timedelta(days=DAYS_D // 2), latest)

    # where hours stand

    def _span(self) -> tuple[int, int]:
        return look().px(GUTTER_PX), self.width() - look().px(SIDE_PX)

    def x_of(self, at_utc_s: float) -> float:
        """Where an instant [UTC s] stands [px]."""
        left, right = self._span()
        start = self.desk.time.instant(self.first)
        return left + (at_utc_s - start) / (DAYS_D * DAY_S) * (right - left)

    def instant_at(self, x: float) -> int:
        """The quarter of an hour under a point [UTC s]."""
        left, right = self._span()
        share = min(max((x - left) / max(1.0, right - left), 0.0), 1.0)
        start = self.desk.time.instant(self.first)
        return start + round(share * DAYS_D * DAY_S / SNAP_S) * SNAP_S

    # hands

    def _pull(self, at_utc_s: int) -> None:
        self._wanted = at_utc_s
        if not self._pause.isActive():
            self._pulled()
            self._pause.start()

    def _pulled(self) -> None:
        wanted, self._wanted = self._wanted, None
        if wanted is not None:
            self.desk.move_to(wanted)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() != Qt.MouseButton.LeftButton or event.position().x() < look().px(GUTTER_PX) - 8:
            return
        self._held = True
        if abs(event.position().x() - self.x_of(self.desk.as_of)) > look().px(CATCH_PX) / 2:
            self._pull(self.instant_at(event.position().x()))

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        near = abs(event.position().x() - self.x_of(self.desk.as_of)) <= look().px(CATCH_PX) / 2
        self.setCursor(Qt.CursorShape.SizeHorCursor if near or self._held else Qt.CursorShape.ArrowCursor)
        if self._held:
            self._pull(self.instant_at(event.position().x()))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if self._held:
            self._held = False
            self._pause.stop()
            self._pulled()
            self._say()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        step = DAY_S if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else HOUR_S
        if event.modifiers() & (Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.AltModifier):
            event.ignore()
        elif event.key() == Qt.Key.Key_Left:
            self.desk.move_to(self.desk.as_of - step)
        elif event.key() == Qt.Key.Key_Right:
            self.desk.move_to(self.desk.as_of + step)
        elif event.key() == Qt.Key.Key_End:
            self.desk.back_to_now()
        else:
            event.ignore()

    def focusInEvent(self, event: QFocusEvent) -> None:
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        self.update()

    # the drawing

    def paintEvent(self, event: QPaintEvent) -> None:
        px = look().px
        top, base = px(OVER_PX), self.height() - px(16)
        left, right = self._span()
        with Ink(self) as ink:
            ink.fill(0, top, self.width(), self.height(), "band")
            ink.level(0, self.width(), top, 1, "rule")
            ink.text(px(SIDE_PX), top + px(24), self.tr("Hour handle"), 18, SEMIBOLD, family=SERIF)
            ink.text(px(SIDE_PX), top + px(44), self.tr("left, right: 1 hour"), 14, color="ink2")
            ink.painter.save()
            ink.painter.setClipRect(left, 0, right - left, self.height())
            self._paint_days(ink, top, base)
            ink.painter.restore()
            ink.level(left, right, base, 1, "rule")
            self._paint_grip(ink, base)
            if self.hasFocus():
                ink.frame(0, top, self.width(), self.height() - top, 3, "focus")

    def _paint_days(self, ink: Ink, top: float, base: float) -> None:
        px, instant = look().px, self.desk.time.instant
        right = self._span()[1]
        now = max(self.x_of(self.desk.present), self._span()[0])
        days = [self.first + timedelta(days=n) for n in range(DAYS_D + 1)]
        for day in days:
            dusk, dawn = self.x_of(instant(day, DARK_FROM_H) - DAY_S), self.x_of(instant(day, DARK_UNTIL_H))
            ink.fill(dusk, top + 1, dawn - dusk, base - top - 1, "night")
        if now < right:
            ink.pattern(now, top + 1, right - now, base - top - 1, "estimated", "hair")
            self._write_ahead(ink, now, right, (top + base) / 2)
        for day in days[:-1]:
            x, mm = self.x_of(instant(day)), self.rain.get(day)
            after = self.x_of(instant(day + timedelta(days=1)))
            ink.upright(x, top, base, 1, "rule")
            words = self.desk.words
            ink.text(
                x + px(4), self.height() - px(3), f"{words.say(WEEKDAYS[day.weekday()])} {day.day}", 13, color="ink2"
            )
            if mm:
                high = max(px(3), round(px(18) * min(1.0, mm / FULL_RAIN_MM) ** 0.5))
                end = min(after, now) if day == self.desk.time.calendar_day(self.desk.present) else after
                ink.fill(x + 1, base - high, max(2.0, end - x - 1), high, "ink2")
                said = words.number(mm, 0, "mm")
                wide = ink.width(said, 13, SEMIBOLD)
                middle = max((x + end) / 2, x + wide / 2 + 4)
                ink.text(middle, base - high - px(4), said, 13, SEMIBOLD, align="middle")

    def _write_ahead(self, ink: Ink, left: float, right: float, middle: float) -> None:
        words = self.tr("ahead: not known yet")
        wide = ink.width(words, 14)
        if right - left > wide + look().px(24):
            x = (left + right - wide) / 2
            ink.fill(x - 6, middle - look().px(9), wide + 12, look().px(18), "band")
            ink.text(x, middle + look().px(5), words, 14, color="ink2")

    def _paint_grip(self, ink: Ink, base: float) -> None:
        px = look().px
        left, right = self._span()
        x = round(self.x_of(self.desk.as_of))
        if not left - 1 <= x <= right + 1:
            return
        half, low = px(7), px(OVER_PX) + px(7)
        ink.upright(x, 0, base + px(3), 2, "ink", dashed=not self.desk.at_present)
        grip = [QPointF(x - half, 0), QPointF(x + half, 0), QPointF(x + half, low - half / 2), QPointF(x, low + 1),
                QPointF(x - half, low - half / 2)]  # fmt: skip
        ink.shape(QPolygonF(grip), "ink")
        said = f"{self.desk.time.local(self.desk.as_of):%H:%M}"
        wide = ink.width(said, 13, SEMIBOLD)
        at = x + px(11) if x + px(14) + wide < right else x - px(11) - wide
        ink.fill(at - 3, px(OVER_PX) + 2, wide + 6, px(16), "band")
        ink.text(at, px(OVER_PX) + px(15), said, 13, SEMIBOLD)
