"""The season: picks, vessels, beds as boards in a shed, the tide of area, store, mill, samples and sales."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Slot
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.go import Target
from farmdesk.desk.pages import Action, Desk, Page
from farmdesk.desk.tables import season as table
from farmdesk.desk.tables.rows import Rows
from farmdesk.desk.theme import look
from farmdesk.desk.widgets.season_view import SeasonView
from farmdesk.desk.widgets.title import HEIGHT_PX, Title
from farmdesk.work.season_story import SeasonStory

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

MARGIN_PX = 20


class SeasonPage(Page):
    place = "season"

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, parent)
        self.setWindowTitle(self.tr("Season"))
        self.story: SeasonStory | None = None
        self.empty = False
        self.title = Title(desk, self)
        self.view = SeasonView(desk.time, desk.words, self)
        self.twin: Rows | None = None
        self.setFocusProxy(self.view)
        self.view.opened.connect(self._open)
        self.view.spanned.connect(self._span)

    def query(self, farm: OpenFarm, at_utc_s: int) -> SeasonStory:
        from farmdesk.work.season import season_story

        return season_story(farm, at_utc_s)

    def show_story(self, story: Any) -> None:
        self.story = story
        sentence = self.desk.words.say(story.headline)
        self.empty = not story.boards and not story.picks
        told = self.tr("Nothing is written yet; p goes to Picking, where the first sack is weighed.")
        self.title.say(self.tr("Season"), told if self.empty else sentence)
        self.view.show_story(story, self.desk.at_present)
        self.view.setAccessibleName(sentence)
        self.setAccessibleName(sentence)
        if self.twin is not None:
            self.twin.fill(table.heads(self.desk.words), self._rows())

    def letters(self) -> Sequence[Action]:
        found = [
            Action("t", self.tr("picture") if self.twin is not None else self.tr("table"), self.toggle_twin),
            Action("0", self.tr("whole season"), self.view.fit_season),
        ]
        if self.empty:
            found.append(Action("p", self.tr("weigh the first sack"), self._begin))
        return found

    def _begin(self) -> None:
        self.desk.go(Target("page", "picking"))

    @Slot(str)
    def _open(self, lot: str) -> None:
        if lot:
            self.desk.go(Target("lot", lot))

    # the table twin

    def toggle_twin(self) -> None:
        """Turn from picture to table and back."""
        if self.twin is not None:
            self.twin.hide()
            self.twin.deleteLater()
            self.twin = None
            self.setFocusProxy(self.view)
            self.view.show()
            self.view.setFocus()
            return
        if self.story is None:
            return
        self.twin = Rows(self.view.sentence, self)
        self.twin.fill(table.heads(self.desk.words), self._rows())
        self.twin.setGeometry(self.view.geometry())
        self.twin.doubleClicked.connect(self._row_chosen)
        self.twin.activated.connect(self._row_chosen)
        self.view.hide()
        self.twin.show()
        self.setFocusProxy(self.twin)
        self.twin.setFocus()

    def _rows(self) -> list[list[str]]:
        return table.rows(self.story, self.desk.words, self.desk.time) if self.story is not None else []

    @Slot(object)
    def _row_chosen(self, index: Any) -> None:
        if self.twin is not None:
            self._open(self.twin.table.rows[index.row()][table.LOT].split(" ")[0])

    # room

    @Slot(object)
    def _span(self, days: tuple[date, date]) -> None:
        if self.isVisible():
            first, last = days
            instant = self.desk.time.instant
            self.spans.emit((instant(first), instant(last + timedelta(days=1))))

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self.view.days is not None:
            self._span(self.view.days_seen())

    def lay_out(self) -> None:
        px = look().px
        left, wide, top = px(MARGIN_PX), self.width() - 2 * px(MARGIN_PX), px(2)
        self.title.setGeometry(left, top, wide, px(HEIGHT_PX))
        below = top + px(HEIGHT_PX)
        self.view.setGeometry(left, below, wide, self.height() - below - px(8))
        if self.twin is not None:
            self.twin.setGeometry(self.view.geometry())
