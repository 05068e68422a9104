"""Notebook: everything that was written, by time; searched by typing, struck out with a reason, brought back."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QModelIndex, Qt, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QLineEdit, QWidget

from farmdesk.clock import FarmTime
from farmdesk.desk.go import Target
from farmdesk.desk.pages import Action, Desk, Page
from farmdesk.desk.problems import sentence
from farmdesk.desk.tables.rows import Rows
from farmdesk.desk.theme import look
from farmdesk.desk.widgets.ask_line import HIGH_PX as ASK_PX
from farmdesk.desk.widgets.ask_line import AskLine
from farmdesk.desk.widgets.keys import KeyRow
from farmdesk.desk.widgets.title import HEIGHT_PX, Title
from farmdesk.errors import FarmError
from farmdesk.text import MONTHS, Counted, Day, Moment

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm
    from farmdesk.work.notebook import NotebookRow

MARGIN_PX, FIELD_PX = 20, 34


@dataclass(frozen=True)
class Line:
    """A row of the notebook, its cells in words, and all that a search looks at."""

    row: NotebookRow
    cells: tuple[str, ...]
    heard: str
    exact: frozenset[str]  # its days, `23 jan`, and its beds, `b12`: found whole or not at all


class SearchBox(QLineEdit):
    """What the rows are searched for; Down and Enter give the keys to the rows."""

    def __init__(self, page: NotebookPage) -> None:
        super().__init__(page)
        self.page = page
        self.setAccessibleName(self.tr("Search the notebook"))
        self.setPlaceholderText(self.tr("s: lot, person, b12, 23 Jan, word"))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Down, Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.page.keys_to_rows()
        elif event.key() == Qt.Key.Key_Escape:
            self.clear()
            self.page.keys_to_rows()
        else:
            super().keyPressEvent(event)


def wanted(typed: str, months: set[str]) -> tuple[set[str], list[str]]:
    """What a search names whole (a day `23 jan`, a bed `b12`), and the parts of words it looks for besides."""
    words, whole, parts = typed.casefold().split(), set[str](), list[str]()
    for word in words:
        if word in months and parts and parts[-1].isdigit():
            whole.add(f"{int(parts.pop())} {word}")
        elif re.fullmatch(r"b\d+", word):
            whole.add(word)
        else:
            parts.append(word)
    return whole, parts


class NotebookPage(Page):
    place = "notebook"

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, parent)
        self.setWindowTitle(self.tr("Notebook"))
        self.all: list[Line] = []
        self.seen: list[Line] = []
        self.title = Title(desk, self)
        self.search = SearchBox(self)
        self.rows = Rows(self.tr("Rows of the notebook"), self)
        self.ask = AskLine(self)
        self.keys = KeyRow(self)
        self.setFocusProxy(self.rows)
        self.search.textChanged.connect(self._filter)
        self.rows.activated.connect(self._open)
        self.rows.selectionModel().currentRowChanged.connect(self._moved)
        self.ask.answered.connect(self._strike)
        self.ask.left.connect(self.keys_to_rows)

    def query(self, farm: OpenFarm, at_utc_s: int) -> list[Line]:
        from farmdesk.work.notebook import notebook_rows

        rows = notebook_rows(farm, at_utc_s)
        return [self._line(row, farm.time) for row in rows]

    def _line(self, row: NotebookRow, time: FarmTime) -> Line:
        """A row in words; thousands are put into words beside the window, not in it."""
        say = self.desk.words.say
        happened = (
            "" if abs(row.written_utc_s - row.happened_utc_s) < 60 else say(Moment(time.local(row.happened_utc_s)))
        )
        text = say(row.text)
        if row.mark in ("estimated", "computed"):
            text = f"≈ {text}"
        note = f"{self.tr('struck out')}: {row.struck}" if row.struck else row.note
        written = say(Moment(time.local(row.written_utc_s), weekday=True))
        cells = (written, happened, row.who, row.lot, row.place, text, row.instrument, note)
        days = {self._day(time.farm_day(at)) for at in (row.happened_utc_s, row.written_utc_s)}
        beds = {f"b{place}" if place.isdigit() else place.casefold() for place in row.places}
        heard = " ".join((*cells[2:], *row.places)).casefold()
        return Line(row, cells, heard, frozenset({self._day(time.calendar_day(row.happened_utc_s)), *days, *beds}))

    def _day(self, day: date) -> str:
        return self.desk.words.say(Day(day)).casefold()

    def show_story(self, story: Any) -> None:
        self.all = story
        self._filter()

    def _said(self) -> str:
        """How many rows there are, or how many of them a search finds."""
        number = self.desk.words.number
        n, found = (Counted(len(lines), number(len(lines))) for lines in (self.all, self.seen))
        if not self.all:
            return self.tr("Nothing is written yet.")
        if not self.search.text().strip():
            return self.tr("{n} {n:row|rows}; the last was written {at}.").format(n=n, at=self.all[0].cells[0])
        if not self.seen:
            return self.tr("None of {n} {n:row|rows} says so; Esc shows all again.").format(n=n)
        return self.tr("{found} of {n} {n:row|rows}; Esc shows all again.").format(found=found, n=n)

    def letters(self) -> Sequence[Action]:
        row = self._current()
        found = [Action("s", self.tr("search"), self._to_search, opens=True)]
        if row is not None and row.ids:
            words = self.tr("strike out") if row.struck is None else self.tr("bring back")
            found.append(Action("x", words, self._ask_strike))
        return found

    def open_at(self, target: Target) -> None:
        if target.kind == "rows":
            self.search.setText(target.value)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and self.search.text():
            self.search.clear()
        else:
            event.ignore()

    def keys_to_rows(self) -> None:
        """Give the keys to the rows."""
        self.rows.setFocus(Qt.FocusReason.OtherFocusReason)
        if self._current() is None and self.seen:
            self.rows.selectRow(0)

    def _current(self) -> NotebookRow | None:
        at = self.rows.currentIndex().row()
        return self.seen[at].row if 0 <= at < len(self.seen) else None

    def _to_search(self) -> None:
        self.search.setFocus(Qt.FocusReason.OtherFocusReason)
        self.search.selectAll()

    @Slot()
    def _filter(self) -> None:
        held = self._current()
        whole, parts = wanted(self.search.text(), {self.desk.words.say(month).casefold() for month in MONTHS})
        self.seen = [line for line in self.all if whole <= line.exact and all(part in line.heard for part in parts)]
        heads = [
            self.tr("written"), self.tr("happened"), self.tr("by"), self.tr("lot"), self.tr("where"), self.tr("what"),
            self.tr("with"), self.tr("note"),
        ]  # fmt: skip
        self.title.say(self.tr("Notebook"), self._said())
        self.setAccessibleName(self._said())
        self.rows.fill(heads, [line.cells for line in self.seen], [line.row.struck is not None for line in self.seen])
        if held is not None:
            at = next((i for i, line in enumerate(self.seen) if line.row.id == held.id), 0)
            self.rows.selectRow(at)
        self.keys.show_actions(self.letters())

    @Slot(QModelIndex, QModelIndex)
    def _moved(self, now: QModelIndex, before: QModelIndex) -> None:
        self.keys.show_actions(self.letters())

    @Slot(QModelIndex)
    def _open(self, index: QModelIndex) -> None:
        row = self._current()
        if row is not None and row.lot:
            self.desk.go(Target("lot", row.lot))

    def _ask_strike(self) -> None:
        row, why = self._current(), self.desk.why_not_write()
        if row is None:
            return
        if why:
            self.desk.tell(why)
        elif row.struck is not None:
            from farmdesk.work.notebook import bring_back

            ids = row.ids
            self.desk.lanes.do(lambda farm: bring_back(farm, ids))
        else:
            what = self.desk.words.say(row.text)
            self.ask.ask(self.tr("Why is “{row}” struck out? The row stays to be read.").format(row=what))

    @Slot(str)
    def _strike(self, reason: str) -> None:
        from farmdesk.work.notebook import strike_rows

        row = self._current()
        if row is not None:
            ids = row.ids
            self.desk.lanes.do(lambda farm: strike_rows(farm, ids, reason), self._struck, self._not_struck)

    @Slot(object)
    def _struck(self, done: object) -> None:
        self.ask.hide()
        self.keys_to_rows()

    @Slot(object)
    def _not_struck(self, error: Exception) -> None:
        if isinstance(error, FarmError):
            self.ask.refuse(sentence(error, self.desk.words))
        else:
            self.desk.lanes.stray(error)

    def lay_out(self) -> None:
        px = look().px
        left, wide, top = px(MARGIN_PX), self.width() - 2 * px(MARGIN_PX), px(8)
        self.title.setGeometry(left, top, wide, px(HEIGHT_PX))
        top += px(HEIGHT_PX) + px(10)
        self.search.setGeometry(left, top, px(352), px(FIELD_PX))
        self.keys.move(left + px(372), top + px(1))
        top += px(FIELD_PX) + px(8)
        self.rows.setGeometry(left, top, wide, self.height() - top - px(4))
        self.ask.setGeometry(left, self.height() - px(ASK_PX) - px(8), wide, px(ASK_PX))
