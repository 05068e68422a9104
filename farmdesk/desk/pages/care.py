"""Care of the data: copies, a stick, a restore tried, everything out as tables, seasons past and to come."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent, QPaintEvent
from PySide6.QtWidgets import QWidget

from farmdesk.clock import DAY_S
from farmdesk.desk.go import Target
from farmdesk.desk.pages import Action, Desk
from farmdesk.desk.pages.care_acts import CareActs
from farmdesk.desk.pages.care_story import CareStory, care_story
from farmdesk.desk.tables.rows import Rows
from farmdesk.desk.theme import SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.ask_line import HIGH_PX as ASK_PX
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.keys import HIGH_PX as KEYS_PX
from farmdesk.desk.widgets.title import HEIGHT_PX
from farmdesk.text import Counted, Moment, Num

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

MARGIN_PX, LEFT_PX, GUTTER_PX, LINE_PX = 20, 560, 40, 23


class CarePage(CareActs):
    place = "farm"

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, parent)
        self.setWindowTitle(self.tr("Care of the data"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.copies = Rows(self.tr("Copies on this computer"), self)
        self.seasons = Rows(self.tr("Seasons on this computer"), self)
        self.seasons.activated.connect(self._open_season)

    def query(self, farm: OpenFarm, at_utc_s: int) -> CareStory:
        return care_story(farm)

    def show_story(self, story: Any) -> None:
        self.story = story
        self.title.say(self.tr("Care of the data"), self._stick_words())
        self.setAccessibleName(". ".join([self.title.accessibleName(), *self.said[:1]]))
        self._fill_copies()
        self._fill_seasons()
        self.keys.show_actions(self.letters())
        self.keys.setVisible(self.line.isHidden() and self.guard.isHidden())
        self.lay_out()

    def _stick_words(self) -> str:
        story, say = self.story, self.desk.words.say
        if story is None or self.desk.practice:
            return self.tr("In the practice season nothing can be lost.")
        if story.stick_utc_s is None:
            return self.tr("There is no copy on a stick yet.")
        day = say(Moment(self.desk.time.local(story.stick_utc_s), weekday=True))
        days = (self.desk.present - story.stick_utc_s) // DAY_S
        told = self.tr("The last copy on a stick was made {at}, {n} {n:day|days} ago.")
        return (
            told.format(at=day, n=Counted(days))
            if days > 1
            else self.tr("The last copy on a stick was made {at}.").format(at=day)
        )

    def _fill_copies(self) -> None:
        assert self.story is not None
        say, number, time = self.desk.words.say, self.desk.words.number, self.desk.time
        at = max(self.copies.currentIndex().row(), 0)
        self.copies.fill([self.tr("made"), self.tr("size"), self.tr("kept as")], [
            [say(Moment(time.local(copy.made_utc_s), weekday=True, year=True)), number(copy.bytes_n / 1e6, 1, "MB"),
             self.tr("the month’s last") if copy.for_month else self.tr("one of the last 14")]
            for copy in self.story.copies
        ])  # fmt: skip
        self.copies.selectRow(at)
        self.copies.setVisible(bool(self.story.copies))

    def _fill_seasons(self) -> None:
        assert self.story is not None
        say, number, time = self.desk.words.say, self.desk.words.number, self.desk.time
        heads = [self.tr("season"), self.tr("farm"), self.tr("size"), self.tr("last written")]
        self.seasons.fill(heads, [
            [one.season, one.farm, number(one.bytes_n / 1e6, 1, "MB"), say(Moment(time.local(one.changed_utc_s), year=True))]
            for one in self.story.seasons
        ])  # fmt: skip
        self.seasons.selectRow(0)

    def letters(self) -> Sequence[Action]:
        return (
            Action("s", self.tr("copy to the stick"), self._ask_stick),
            Action("r", self.tr("try a restore"), self._try_restore),
            Action("x", self.tr("everything out"), self._ask_out),
            Action("p", self.tr("past seasons"), self.seasons.setFocus),
            Action("k", self.tr("carry over"), self._ask_carry),
            Action("v", self.tr("verify"), self._verify),
        )

    # keys and room

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() != Qt.Key.Key_Escape:
            event.ignore()
        elif self.progress is not None:
            self.progress.stopped.set()
        else:
            self.desk.go(Target("page", "farm"))

    def lay_out(self) -> None:
        px = look().px
        left, wide = px(MARGIN_PX), self.width() - 2 * px(MARGIN_PX)
        self.title.setGeometry(left, px(8), wide, px(HEIGHT_PX))
        top, low = px(8 + HEIGHT_PX + 46), self.height() - px(KEYS_PX + 12)
        if not self.line.isHidden():
            low = self.height() - px(ASK_PX + 12)
            self.line.setGeometry(left, low, wide, px(ASK_PX))
        elif not self.guard.isHidden():
            low = self.height() - self.guard.height_px() - px(8)
            self.guard.setGeometry(left, low, wide, self.guard.height_px())
        self.keys.move(left - px(4), self.height() - px(KEYS_PX + 4))
        self.copies.setGeometry(left, top, px(LEFT_PX), low - top - px(8))
        right = left + px(LEFT_PX + GUTTER_PX)
        seasons = px(32) * (min(len(self.story.seasons), 5) if self.story else 0) + px(36)
        self.seasons.setVisible(bool(self.story and self.story.seasons))
        self._seasons_top = top + 4 * px(LINE_PX) + px(36)
        self.seasons.setGeometry(right, self._seasons_top, left + wide - right, seasons)
        self._said_top = self._seasons_top + (seasons if self.seasons.isVisible() or self.story else px(36)) + px(40)
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        px, story = look().px, self.story
        with Ink(self) as ink:
            ink.fill(0, 0, self.width(), self.height(), "paper")
            if story is None:
                return
            left, top = px(MARGIN_PX), px(8 + HEIGHT_PX + 30)
            right = left + px(LEFT_PX + GUTTER_PX)
            room = self.width() - px(MARGIN_PX) - right
            ink.heading(
                left, top, self.tr("Copies on this computer"), self.tr("the last 14, and the last of each month")
            )
            if not story.copies:
                words = self.tr("None yet; one is made each time the program closes.")
                ink.text(left, top + px(80), words, 17, family=SERIF)
            ink.upright(right - px(GUTTER_PX / 2), top - px(10), self.copies.geometry().bottom(), 1, "hair")
            ink.heading(right, top, self.tr("The season file"))
            y: float = top + px(26)
            for n, fact in enumerate(self._facts(story)):
                weight = SEMIBOLD if n == 0 else 400
                ink.text(right, y, ink.fitted(fact, room, 15, weight), 15, weight)
                y += px(LINE_PX)
            ink.heading(right, self._seasons_top - px(12), self.tr("Other seasons here"),
                        self.tr("Enter opens one to be read") if story.seasons else self.tr("none"))  # fmt: skip
            y = self._said_top + (px(12) if self.said else 0)
            if self.said:
                ink.heading(right, self._said_top - px(14), self.tr("Done just now"))
            for n, told in enumerate(self.said):
                y = ink.wrapped(right, y, room, told, 17, color="ink" if n == 0 else "ink2", family=SERIF) + px(8)

    def _facts(self, story: CareStory) -> list[str]:
        number, say = self.desk.words.number, self.desk.words.say
        size = say(Num(story.path.stat().st_size / 1e6, "MB", 1)) if story.path.exists() else "–"
        return [
            self.tr("{name}, season {season}").format(name=story.name, season=story.season),
            self.tr("{rows} {rows:row|rows}, {lots} {lots:lot|lots}, {size}").format(
                rows=Counted(story.rows_n, number(story.rows_n)), lots=Counted(story.lots_n), size=size
            ),
            str(story.path),
        ]
