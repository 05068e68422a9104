"""A farm of one's own is begun: its name, season, zone and first bed. What is not known comes later, or never."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, QTimeZone, Slot
from PySide6.QtGui import QKeyEvent, QPaintEvent
from PySide6.QtWidgets import QWidget

from farmdesk import clock, paths
from farmdesk.clock import FarmTime
from farmdesk.desk.go import Target
from farmdesk.desk.pages import Desk, Page
from farmdesk.desk.theme import BOLD, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.form_lines import FormLines
from farmdesk.desk.widgets.form_row import Field
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.title import HEIGHT_PX, Title
from farmdesk.errors import FarmError
from farmdesk.units import read_number, value_of

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

MARGIN_PX, SHEET_PX, PAD_PX = 20, 560, 24
LONGEST_M = 30.0  # the drawing holds a bed of this length; longer ones are drawn smaller
NAMED_IN = 8  # from this month on a season is called by the next year (common practice, no source)


class BeginPage(Page):
    place = "farm"

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, parent)
        self.setWindowTitle(self.tr("A farm of your own"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.title = Title(desk, self)
        self.title.marks_practice = False
        self.row = FormLines(desk, self)
        self.row.about = {"value": "width"}
        self.row.set_fields([
            Field("name", self.tr("name of the farm"), 0, words=True, needed=True),
            Field("season", self.tr("season, two figures"), 150, needed=True),
            Field("zone", self.tr("time zone: part of its name"), 354, words=True, needed=True),
            Field("width", self.tr("first bed: width"), 150, "m"), Field("length", self.tr("length"), 150, "m"),
        ])  # fmt: skip
        self.row.submitted.connect(self._submitted)
        self.row.left.connect(self._leave)
        self.row.edited.connect(self.update)
        self.row.resized.connect(self.lay_out)
        self.row.fill({"season": _season(), "zone": _zone()})

    def query(self, farm: OpenFarm, at_utc_s: int) -> None:
        return None

    def show_story(self, story: Any) -> None:
        self.title.say(self.tr("A farm of your own"), self.tr("What is not known now can come later, or never."))
        self.setAccessibleName(self.title.accessibleName())

    def open_at(self, target: Target) -> None:
        self.row.focus()

    # writing

    @Slot(object)
    def _submitted(self, values: dict[str, str]) -> None:
        folder, answers = paths.data_folder(), {"comma": "decimal"}  # nobody has a bed of a thousand metres

        def begin() -> Path:
            from farmdesk.work.setup import begin_season

            return begin_season(
                folder, values["name"], values["season"], values["zone"], values["width"], values["length"],
                answers=answers,
            )  # fmt: skip

        self.row.busy = True
        if self.desk.practice:
            clock.stand_at(None)  # it begins today, not in the practice season's own time
        self.desk.lanes.count(begin, self._made, self._not_made)

    @Slot(object)
    def _made(self, path: Path) -> None:
        self.row.busy = False
        self.desk.go(Target("page", "today"))
        self.desk.open_season.emit(path)

    @Slot(object)
    def _not_made(self, error: Exception) -> None:
        if self.desk.practice:
            clock.stand_at(self.desk.present)
        self.row.trouble(error)

    @Slot()
    def _leave(self) -> None:
        self.desk.go(Target("page", "farm"))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self._leave()
        else:
            event.ignore()

    # room

    @Slot()
    def lay_out(self) -> None:
        px = look().px
        self.title.setGeometry(px(MARGIN_PX), px(8), self.width() - 2 * px(MARGIN_PX), px(HEIGHT_PX))
        wide = px(SHEET_PX - 2 * PAD_PX)
        self.row.setGeometry(px(MARGIN_PX + PAD_PX), px(8 + HEIGHT_PX + 20 + 16), wide, self.row.fit(wide))
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        px, values = look().px, self.row.values()
        with Ink(self) as ink:
            ink.fill(0, 0, self.width(), self.height(), "paper")
            left, top, wide = px(MARGIN_PX), px(8 + HEIGHT_PX + 20), px(SHEET_PX)
            high = self.row.height() + px(70)
            ink.fill(left, top, wide, high, "sheet")
            ink.frame(left, top, wide, high, 1, "rule")
            low = top + high - px(50)
            ink.level(left + px(PAD_PX), left + wide - px(PAD_PX), low, 1, "hair")
            x = float(left + px(PAD_PX))
            for key, words in ((self.tr("Enter"), self.tr("next box, the last one begins")), ("+", self.tr("begins")),
                               (self.tr("Esc"), self.tr("leave"))):  # fmt: skip
                box = ink.width(key, 15, BOLD) + px(16)
                ink.fill(x, low + px(12), box, px(26), "paper")
                ink.frame(x, low + px(12), box, px(26), 1, "rule")
                ink.text(x + px(8), low + px(31), key, 15, BOLD)
                x = ink.text(x + box + px(7), low + px(31), words, 15) + px(18)
            self._paint_beside(ink, left + wide + px(40), top, values)

    def _paint_beside(self, ink: Ink, x: float, y: float, values: dict[str, str]) -> None:
        """Which zone is meant, the bed to scale, and where the file will lie."""
        px, number = look().px, self.desk.words.number
        room = self.width() - px(MARGIN_PX) - x
        zones = clock.zones_like(values["zone"])
        ink.heading(x, y + px(16), self.tr("Time zone"))
        if zones:
            hour = f"{FarmTime(zones[0]).local(clock.of_the_computer()):%H:%M}"
            said = self.tr("{zone}, where it is {hour} now").format(zone=zones[0], hour=hour)
            ink.text(x, y + px(42), ink.fitted(said, room, 17, SEMIBOLD), 17, SEMIBOLD)
            more = ", ".join(zones[1:5])
            if more:
                ink.text(
                    x, y + px(64), ink.fitted(self.tr("or {zones}").format(zones=more), room, 14), 14, color="ink2"
                )
        else:
            ink.text(x, y + px(42), self.tr("no zone is called so; type a part of a large town’s name"), 15)
        y += px(96)
        ink.heading(x, y + px(16), self.tr("First bed"))
        size = _metres(values["width"]), _metres(values["length"])
        if all(size):
            wide_m, long_m = (side or 0.0 for side in size)
            k = min(room / max(long_m, LONGEST_M), px(120) / max(wide_m, 0.5))
            ink.frame(x, y + px(34), long_m * k, wide_m * k, 1.2, "ink", dashed=True)
            said = self.tr("1: {area}, drawn to scale").format(area=number(wide_m * long_m, 1, "m²"))
            ink.text(x, y + px(34) + wide_m * k + px(24), said, 15)
            y += px(34) + wide_m * k
        else:
            ink.text(x, y + px(42), self.tr("none yet; beds can be added under Farm, registers"), 15)
            y += px(24)
        y += px(56)
        ink.heading(x, y + px(16), self.tr("One file"))
        text = self.tr("All of it is kept in one file in {folder}, and copied each time the program closes.")
        ink.wrapped(x, y + px(42), room, text.format(folder=str(paths.data_folder())), 17, family=SERIF)


def _metres(typed: str) -> float | None:
    """A measure as typed [m]; None where it is none yet."""
    try:
        value = value_of(read_number(typed, "m", answers={"comma": "decimal"}), "m")
    except FarmError:
        return None
    return value if 0 < value < 1000 else None


def _season() -> str:
    """How the season that comes next is most likely called."""
    now = FarmTime(_zone()).local(clock.of_the_computer())
    return f"{(now.year + (1 if now.month >= NAMED_IN else 0)) % 100:02d}"


def _zone() -> str:
    """The computer's own zone, where it has one."""
    name = bytes(QTimeZone.systemTimeZoneId().data()).decode("ascii", "ignore")
    return name if name in clock.zones_like(name) else "UTC"
