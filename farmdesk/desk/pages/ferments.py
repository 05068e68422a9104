"""Ferments: every vessel at work on its clock, with its straight figures; the empty ones in one line."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPaintEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.go import Target
from farmdesk.desk.pages import Action, Desk, Page
from farmdesk.desk.pages.today_zones import code_list, worry_color
from farmdesk.desk.theme import BOLD, REGULAR, SANS, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.clock import LARGE_R_PX, SMALL_R_PX, paint_clock
from farmdesk.desk.widgets.drawn import Drawn
from farmdesk.desk.widgets.ink import Ink, Measure
from farmdesk.desk.widgets.title import HEIGHT_PX, Title
from farmdesk.desk.widgets.twin import Table
from farmdesk.science.gas import CAUTION, CAUTION_SOURCE
from farmdesk.text import Days, Moment, Text
from farmdesk.work.stories import TodayStory, VesselStory

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

MARGIN_PX, CELL_PX = 20, 420
FIGURES_PX = 184  # room below a clock for its figures


class Clocks(Drawn):
    """All clocks on one ground, as large as there is room; `chosen` carries a vessel's code."""

    chosen = Signal(str)

    def __init__(self, desk: Desk, parent: QWidget) -> None:
        super().__init__(parent)
        self.desk = desk
        self.vessels: Sequence[VesselStory] = ()
        self.sleep_h = (0.0, 0.0)  # until a story says when people sleep
        self.at_utc_s = 0
        self.held = 0

    def show_vessels(self, vessels: Sequence[VesselStory], at_utc_s: int, sleep_h: tuple[float, float]) -> None:
        """These, as they stand at an instant [UTC s]."""
        self.vessels, self.at_utc_s, self.sleep_h = vessels, at_utc_s, sleep_h
        self.held = min(self.held, max(0, len(vessels) - 1))
        self.told()

    def hold(self, code: str) -> None:
        """Give a vessel the keys."""
        at = next((i for i, vessel in enumerate(self.vessels) if vessel.code == code), None)
        if at is not None:
            self.held = at
        self.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.update()

    def sentence(self) -> str:
        if not self.vessels:
            return self.tr("Nothing is in a vessel.")
        return " ".join(f"{' '.join(filter(None, self._row(vessel))).rstrip('.')}." for vessel in self.vessels)

    def table(self) -> Table | None:
        heads = [self.tr("vessel"), self.tr("lot"), self.tr("method"), self.tr("since"), self.tr("ready"), self.tr("pH"),
                 self.tr("°C"), self.tr("latest"), self.tr("look again by"), self.tr("to do")]  # fmt: skip
        return heads, [self._row(vessel) for vessel in self.vessels]

    def ready(self, vessel: VesselStory) -> str:
        """The range of the end; with its day where that is not today."""
        ahead, local, say = vessel.ahead, self.desk.time.local, self.desk.words.say
        if ahead is None or ahead.earliest_utc_s is None:
            return self.tr("not known")
        first = local(ahead.earliest_utc_s)
        if ahead.latest_utc_s is None:
            return self.tr("from {time}").format(time=say(Moment(first, weekday=True)))
        if ahead.latest_utc_s == ahead.earliest_utc_s:
            return self.tr("since {time}").format(time=say(Moment(first, weekday=True)))
        last = local(ahead.latest_utc_s)
        if first.date() != last.date():
            return say(Days(first.date(), last.date()))
        today = local(self.at_utc_s).date()
        day = "" if first.date() == today else say(Moment(first, weekday=True)).rsplit(" ", 1)[0] + " "
        return f"{day}{say(Moment(first, clock=True))}–{say(Moment(last, clock=True))}"

    def _row(self, vessel: VesselStory) -> list[str]:
        say, number, local = self.desk.words.say, self.desk.words.number, self.desk.time.local
        none = self.tr("not measured")
        return [
            vessel.code, vessel.lot, say(vessel.method), say(Moment(local(vessel.filled_utc_s), weekday=True)),
            self.ready(vessel), none if vessel.last_ph is None else number(vessel.last_ph, 2),
            none if vessel.last_mass_c is None else number(vessel.last_mass_c, 1, "°C"),
            "" if vessel.latest_utc_s is None else say(Moment(local(vessel.latest_utc_s), weekday=True)),
            "" if vessel.look_utc_s is None else self._moment(vessel.look_utc_s),
            " ".join(say(worry.text) for worry in vessel.worries),
        ]  # fmt: skip

    def _moment(self, at_utc_s: float) -> str:
        """`09:30`, with its day where that is not today."""
        at, today = self.desk.time.local(at_utc_s), self.desk.time.local(self.at_utc_s).date()
        return self.desk.words.say(Moment(at, clock=True) if at.date() == today else Moment(at, weekday=True))

    # places of the clocks

    def _grid(self) -> tuple[int, float, float, float]:
        """Columns, width and height of a cell, and the radius [px] that fits all of them."""
        px = look().px
        n = max(1, len(self.vessels))
        best = (1, float(self.width()), float(self.height()), 0.0)
        for columns in range(1, n + 1):
            rows = -(-n // columns)
            wide, high = self.width() / columns, self.height() / rows
            radius = min((high - px(FIGURES_PX + 50)) / 2, (wide - px(60)) / 2, px(LARGE_R_PX))
            if radius > best[3]:
                best = (columns, min(wide, px(CELL_PX)), high, radius)
        return best

    def _cell(self, i: int) -> tuple[float, float, float]:
        """Left, top and radius of the i-th clock's cell."""
        columns, wide, high, radius = self._grid()
        return (i % columns) * wide, (i // columns) * high, radius

    def paint(self, ink: Ink) -> None:
        px = look().px
        if not self.vessels:
            ink.wrapped(0, px(30), self.width(), self.tr("The page Picking fills vessels: v."), 17, family=SERIF)
            return
        for i, vessel in enumerate(self.vessels):
            left, top, radius = self._cell(i)
            if radius < px(SMALL_R_PX) / 2:
                self._paint_line(ink, vessel, top)
                continue
            middle = left + radius + px(30)
            paint_clock(ink, middle, top + radius + px(26), radius, vessel, self.at_utc_s, self.desk.time, self.sleep_h)
            self._paint_figures(ink, vessel, left + px(12), top + 2 * radius + px(76), self._grid()[1] - px(36))

    def _paint_figures(self, ink: Ink, vessel: VesselStory, x: float, y: float, room: float) -> None:
        px, say, number = look().px, self.desk.words.say, self.desk.words.number
        local = self.desk.time.local
        end = ink.text(x, y, vessel.code, 26, BOLD)
        end = ink.text(end + px(10), y, vessel.lot, 17, SEMIBOLD)
        ink.text(end + px(8), y, say(vessel.method), 14, color="ink2")
        end = ink.text(x, y + px(29), self.ready(vessel), 21, BOLD, vessel.due or "ink")
        ink.text(end + px(8), y + px(29), self.tr("ready"), 15)
        hours, minutes = divmod(round((self.at_utc_s - vessel.filled_utc_s) / 60), 60)
        end = ink.text(x, y + px(52), f"{number(hours, 0, 'h')} {minutes:02d}", 17, SEMIBOLD)
        since = self.tr("since {time}").format(time=say(Moment(local(vessel.filled_utc_s), weekday=True)))
        ink.text(end + px(8), y + px(52), since, 14, color="ink2")
        ph = self.tr("pH not measured") if vessel.last_ph is None else f"pH {number(vessel.last_ph, 2)}"
        end = ink.text(x, y + px(74), ph, 17, SEMIBOLD)
        more = [] if vessel.last_mass_c is None else [number(vessel.last_mass_c, 1, "°C")]
        more += [] if vessel.last_utc_s is None else [say(Moment(local(vessel.last_utc_s), weekday=True))]
        ink.text(end + px(8), y + px(74), ", ".join(more), 14, color="ink2")
        y += px(97)
        if vessel.look_utc_s is not None:
            ink.text(x, y, self.tr("look again by {time}").format(time=self._moment(vessel.look_utc_s)), 15)
            y += px(23)
        for worry in vessel.worries[:1]:
            ink.wrapped(x, y, room, say(worry.text), 15, SEMIBOLD, worry_color(worry), most=2)

    def _paint_line(self, ink: Ink, vessel: VesselStory, top: float) -> None:
        ink.text(0, top + look().px(20), " · ".join(self._row(vessel)[:5]), 15)

    def paint_focus(self, ink: Ink) -> None:
        if not self.vessels:
            return
        left, top, radius = self._cell(self.held)
        _, wide, _, _ = self._grid()
        high = 2 * radius + look().px(FIGURES_PX + 44)
        ink.frame(left, top, min(wide, self.width() - left) - look().px(8), high, 3, "focus")

    # hands

    def _at(self, x: float, y: float) -> int | None:
        columns, wide, high, _ = self._grid()
        i = int(y // high) * columns + int(x // wide)
        return i if x < wide * columns and 0 <= i < len(self.vessels) else None

    def mousePressEvent(self, event: QMouseEvent) -> None:
        i = self._at(event.position().x(), event.position().y())
        if i is not None:
            self.held = i
            self.update()
            self.chosen.emit(self.vessels[i].code)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        columns = self._grid()[0]
        step = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1, Qt.Key.Key_Up: -columns, Qt.Key.Key_Down: columns}.get(
            Qt.Key(event.key())
        )
        if step and 0 <= self.held + step < len(self.vessels):
            self.held += step
            self.update()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.vessels:
            self.chosen.emit(self.vessels[self.held].code)
        elif step is None:
            event.ignore()


class Caution(QWidget):
    """What stands over every opening of a vessel, in a heavy frame as on the night sheet."""

    def __init__(self, desk: Desk, parent: QWidget) -> None:
        super().__init__(parent)
        self.desk = desk
        self.gas: tuple[str, Text] | None = None
        self.show_gas(None)

    def show_gas(self, gas: tuple[str, Text] | None) -> None:
        """What the vessels of now would make of their room; None where its size is not known."""
        self.gas = gas
        said = [CAUTION, *([gas[1]] if gas else [])]
        self.setAccessibleName(" ".join(self.desk.words.say(text) for text in said))
        self.update()

    def high(self, wide: int) -> int:
        """How high it stands in a width, both in pixels."""
        ink = Measure()
        return round(sum(ink.leading(size) for _, size, *_ in self._lines(ink, wide))) + look().px(16)

    def _lines(self, ink: Measure, wide: float) -> list[tuple[str, float, int, str, str]]:
        """What stands there: words, size, weight, colour, family."""
        room, say = wide - look().px(28), self.desk.words.say
        found = [(line, 17.0, SEMIBOLD, "ink", SERIF) for line in ink.lines(say(CAUTION), room, 17, SEMIBOLD, SERIF)]
        if self.gas is not None:
            level, text = self.gas
            color = "now" if level in ("warn", "danger") else "ink"
            found += [(line, 15.0, SEMIBOLD, color, SANS) for line in ink.lines(say(text), room, 15, SEMIBOLD)]
        return found + [(line, 13.0, REGULAR, "ink2", SANS) for line in ink.lines(say(CAUTION_SOURCE), room, 13)]

    def paintEvent(self, event: QPaintEvent) -> None:
        px = look().px
        with Ink(self) as ink:
            ink.frame(0, 0, self.width(), self.height(), 3)
            y = float(px(6))
            for line, size, weight, color, family in self._lines(ink, self.width()):
                y += ink.leading(size)
                ink.text(px(14), y - px(3), line, size, weight, color, family)


class FermentsPage(Page):
    place = "ferments"

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, parent)
        self.setWindowTitle(self.tr("Ferments"))
        self.title = Title(desk, self)
        self.clocks = Clocks(desk, self)
        self.caution = Caution(desk, self)
        self.setFocusProxy(self.clocks)
        self.clocks.chosen.connect(self._vessel)
        self._wanted = ""

    def query(self, farm: OpenFarm, at_utc_s: int) -> tuple[TodayStory, tuple[float, float]]:
        from farmdesk.work.settings import asleep_h
        from farmdesk.work.today import today_story

        return today_story(farm, at_utc_s), asleep_h(farm.things)

    def show_story(self, story: Any) -> None:
        day, asleep = story
        free = code_list(day.free_vessels)
        n = len(day.vessels)
        told = self.tr("{n} at work.").format(n=n) if n else self.tr("Nothing is in a vessel.")
        if free:
            told += " " + self.tr("{vessels}: empty.").format(vessels=free)
        self.title.say(self.tr("Ferments"), told)
        self.setAccessibleName(told)
        self.clocks.show_vessels(day.vessels, day.at_utc_s, asleep)
        self.caution.show_gas(day.gas)
        self.caution.setVisible(bool(day.vessels))
        self.lay_out()
        if self._wanted:
            wanted, self._wanted = self._wanted, ""
            self.clocks.hold(wanted)

    def letters(self) -> Sequence[Action]:
        words = self.tr("picture") if self.clocks.as_table else self.tr("table")
        return [Action("t", words, self.clocks.toggle_twin)]

    def open_at(self, target: Target) -> None:
        if target.kind == "vessel":
            self._wanted = target.value
            if not self._asking:
                self.clocks.hold(target.value)
                self._wanted = ""

    def _vessel(self, code: str) -> None:
        vessel = next((v for v in self.clocks.vessels if v.code == code), None)
        if vessel is not None:
            self.desk.go(Target("lot", vessel.lot))

    def lay_out(self) -> None:
        px = look().px
        left, wide, top = px(MARGIN_PX), self.width() - 2 * px(MARGIN_PX), px(8)
        self.title.setGeometry(left, top, wide, px(HEIGHT_PX))
        high = 0 if self.caution.isHidden() else self.caution.high(wide)
        self.caution.setGeometry(left, self.height() - high - px(8), wide, high)
        top += px(HEIGHT_PX + 8)
        self.clocks.setGeometry(left, top, wide, self.height() - top - px(14) - high)
