"""Lots: the list at the left, filtered by typing, and the chosen lot at the right.

A number typed here is a reading of the lot that is shown; anything else leads away. Enter gives the lot the keys.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QItemSelectionModel, QModelIndex, Qt, Slot
from PySide6.QtGui import QKeyEvent, QPaintEvent
from PySide6.QtWidgets import QFileDialog, QLineEdit, QWidget

from farmdesk.desk.go import Target
from farmdesk.desk.pages import Action, Desk, Page
from farmdesk.desk.pages.lot import LotView
from farmdesk.desk.tables.cards import ROW, CardDelegate, CardsModel, ListRow, arranged, matching
from farmdesk.desk.theme import SERIF, look
from farmdesk.desk.watch import NOT_HERE, watch_of
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.keys import HIGH_PX as KEYS_PX
from farmdesk.desk.widgets.keys import KeyRow
from farmdesk.desk.widgets.lists import Lines
from farmdesk.errors import Question
from farmdesk.text import Counted
from farmdesk.work.cards import STATES
from farmdesk.work.stories import LotCard, LotStory

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

MARGIN_PX, LIST_PX, GUTTER_PX, FILTER_PX = 20, 400, 26, 34
BAR_PX = 12  # of the scroll bar, which stands in the gutter


@dataclass(frozen=True, eq=False)
class LotsStory:
    """All cards, and the page of one lot; none where the season has no lot yet."""

    cards: list[LotCard]
    lot: LotStory | None
    loggers: tuple[str, ...] = ()


class FilterBox(QLineEdit):
    """What the list is filtered by; how many are left stands at its right edge."""

    def __init__(self, page: LotsPage) -> None:
        super().__init__(page)
        self.page = page
        self.count = ""
        self.setAccessibleName(self.tr("Filter the lots by code, method, block or place"))
        self.setPlaceholderText(self.tr("l: code, method, block, place, “store”"))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        if key in (Qt.Key.Key_Down, Qt.Key.Key_Up):
            self.page.list.keyPressEvent(event)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.page.keys_to_lot()
        elif key == Qt.Key.Key_Escape:
            self.clear()
            self.textEdited.emit("")
            self.page.list.setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        with Ink(self) as ink:
            base = self.height() / 2 + look().px(5)
            ink.text(self.width() - look().px(10), base, self.count, 14, color="ink2", align="right")


class CardList(Lines):
    """The list of cards; a stroke passes on to the page as letters do."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.text() == "/":
            event.ignore()
        else:
            super().keyPressEvent(event)


class LotsPage(Page):
    place = "lots"

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, parent)
        self.setWindowTitle(self.tr("Lots"))
        self.wanted, self.x_kind = "", "time"
        self.cards: list[LotCard] = []
        self.loggers: tuple[str, ...] = ()
        self.watch = watch_of(desk)
        self._file: tuple[str, Question] | None = None
        self._typed = ""  # a number that came with the code: it waits for the lot's story
        self._asking_lot = ""
        self.filter = FilterBox(self)
        self.list = CardList(self.tr("Lots"), self)
        self.model = CardsModel(self)
        self.list.setModel(self.model)
        self.list.setUniformItemSizes(False)
        self.cards_drawn = CardDelegate(desk.time, desk.words, self.list)
        self.list.setItemDelegate(self.cards_drawn)
        self.lot = LotView(desk, self)
        self.keys = KeyRow(self)
        self.setFocusProxy(self.list)
        self.filter.textEdited.connect(self._filtered)
        self.list.selectionModel().currentChanged.connect(self._chosen)
        self.list.activated.connect(self._activated)
        self.lot.form.closed.connect(self._keys_to_list)
        self.lot.worked.closed.connect(self._keys_to_list)
        self.lot.form.typed_away.connect(self._lead_away)
        self.lot.dropped_changed.connect(self._show_keys)
        self.lot.file.answered.connect(self._file_answered)
        self.lot.file.went_back.connect(self._file_back)
        self.watch.waiting.connect(self._ask_about_file)

    def query(self, farm: OpenFarm, at_utc_s: int) -> LotsStory:
        from farmdesk.work.lots import lot_cards, lot_story

        cards = lot_cards(farm, at_utc_s)
        codes = [card.code for card in cards]
        code = self.wanted if self.wanted in codes else next(iter(codes), "")
        loggers = tuple(code for code, tool in farm.things.instruments.items() if tool.kind == "logger")
        return LotsStory(cards, lot_story(farm, code, at_utc_s, self.x_kind) if code else None, loggers)

    def show_story(self, story: LotsStory) -> None:
        self.cards, self.loggers = story.cards, story.loggers
        self.cards_drawn.as_of_utc_s = self.desk.as_of
        self._arrange()
        self.lot.setVisible(story.lot is not None)
        if story.lot is not None:
            self._show_lot(story.lot)
        self.update()

    @Slot(object)
    def _show_lot(self, story: LotStory) -> None:
        self._asking_lot = ""
        self.lot.show_story(story)
        if self.wanted and self.wanted != story.card.code and any(c.code == self.wanted for c in self.cards):
            self._ask_lot()  # another one was chosen while this one was on its way
            return
        self.wanted = story.card.code
        self.setAccessibleName(self.lot.title.accessibleName())
        self._select()
        self._ask_about_file()
        self._show_keys()
        if self._typed:
            typed, self._typed = self._typed, ""
            self.start_reading(typed)

    def _ask_lot(self) -> None:
        """Ask for the chosen lot alone; the list stays as it is."""
        from farmdesk.work.lots import lot_story

        if self._asking_lot or not self.wanted:
            return
        code, at_utc_s, x_kind = self.wanted, self.desk.as_of, self.x_kind
        self._asking_lot = code
        self.desk.lanes.ask(lambda farm: lot_story(farm, code, at_utc_s, x_kind), self._show_lot, self._no_lot)

    @Slot(object)
    def _no_lot(self, error: Exception) -> None:
        self._asking_lot = ""
        self._refused(error)

    # where one may be sent

    def open_at(self, target: Target) -> None:
        if target.kind == "lot":
            self._want(target.value)
            self.list.setFocus(Qt.FocusReason.OtherFocusReason)
        elif target.kind == "reading":
            code, _, self._typed = target.value.partition(" ")
            self._want(code)
        elif target.kind == "lying":
            self.filter.setText(self.desk.words.say(STATES[target.value]))
            self._filtered()
            self.list.setFocus(Qt.FocusReason.OtherFocusReason)

    def _want(self, code: str) -> None:
        self.wanted = code
        if code not in (card.code for card in matching(self.cards, self.filter.text(), self.desk.words)):
            self.filter.clear()
            self._arrange()
        if not self.stale and self.cards:
            self._ask_lot()

    def letters(self) -> Sequence[Action]:
        found = [Action("p", self.tr("lot sheet"), self._lot_sheet)]
        story = self.lot.story
        if story is not None and story.sensible != "none":
            found.insert(0, Action("r", self.tr("reading"), self._reading, opens=True))
        if story is not None and story.drying is not None:
            other = self.tr("good hours") if self.x_kind == "time" else self.tr("dates")
            found.append(Action("d", other, self._turn_axis))
        found += self.lot.letters()
        if self.lot.dropped or self.lot.turned:
            found.append(Action("m", self.tr("curves") if self.lot.turned else self.tr("more"), self._turn))
        found.append(Action("l", self.tr("list"), self._keys_to_filter, opens=True))
        found.append(Action("w", self.tr("answer the file") if self._file else self.tr("watch folder"), self._folder))
        return found

    def _lot_sheet(self) -> None:
        if self.lot.story is not None:
            self.desk.go(Target("paper", f"lot sheet {self.lot.story.card.code}"))

    def _reading(self) -> None:
        self.start_reading("")

    def _turn_axis(self) -> None:
        self.x_kind = "good_h" if self.x_kind == "time" else "time"
        self._ask_lot()

    def _turn(self) -> None:
        self.lot.turn()
        self._show_keys()

    def _show_keys(self) -> None:
        self.keys.show_actions(self.letters())

    # the watched folder

    @Slot()
    def _ask_about_file(self) -> None:
        """Ask where a new file belongs, on the page of a lot that lies in a vessel."""
        story, before = self.lot.story, self._file
        if story is None or self.lot.isHidden():
            return
        self._file = self.watch.question_for(story.card.code, story.vessels, self.loggers)
        if self._file != before:
            self.lot.ask_about_file(self._file[1] if self._file else None)
            self._show_keys()

    @Slot(str)
    def _file_answered(self, value: str) -> None:
        story, asked, self._file = self.lot.story, self._file, None
        if story is not None and asked is not None:
            self.lot.ask_about_file(None)
            self.watch.answer(asked[0], story.card.code, asked[1], value)
        self._show_keys()
        self._keys_to_list()

    @Slot()
    def _file_back(self) -> None:
        self._file_answered(NOT_HERE)

    def _folder(self) -> None:
        """Answer what is asked about a file, or choose the folder where loggers leave theirs."""
        if self._file is not None:
            self.lot.file.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        asked = QFileDialog(self, self.tr("Where do the loggers leave their files?"))
        asked.setFileMode(QFileDialog.FileMode.Directory)
        asked.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        if self.watch.folder is not None:
            asked.setDirectory(str(self.watch.folder))
        asked.fileSelected.connect(self._folder_chosen)
        asked.open()

    @Slot(str)
    def _folder_chosen(self, folder: str) -> None:
        self.watch.set_folder(Path(folder))
        self.desk.tell(self.tr("Files that grow in {folder} are read by themselves.").format(folder=folder))

    # the list

    @Slot()
    def _filtered(self) -> None:
        self._arrange()
        first = next((row.card.code for row in self.model.rows if row.card is not None), "")
        if self.filter.text().strip() and first and self.model.row_of(self.wanted) < 0:
            self.wanted = first
            self._ask_lot()
        self._select()

    def _arrange(self) -> None:
        typed, words = self.filter.text(), self.desk.words
        kept = self.list.verticalScrollBar().value()
        self.model.fill(arranged(self.cards, typed, words))
        n = len(matching(self.cards, typed, words))
        text = self.tr("{n} of {all} {all:lot|lots}") if typed.strip() else self.tr("{all} {all:lot|lots}")
        self.filter.count = text.format(n=n, all=Counted(len(self.cards)))
        self.filter.update()
        self._select()
        self.list.verticalScrollBar().setValue(kept)

    def _select(self) -> None:
        """Let the list show which lot is open, without asking for it again."""
        row = self.model.row_of(self.wanted)
        selection = self.list.selectionModel()
        selection.blockSignals(True)
        index = self.model.index(row) if row >= 0 else QModelIndex()
        flag = QItemSelectionModel.SelectionFlag
        selection.setCurrentIndex(index, flag.ClearAndSelect if row >= 0 else flag.Clear)
        selection.blockSignals(False)
        if row >= 0:
            self.list.scrollTo(index)
        self.list.viewport().update()

    @Slot(QModelIndex, QModelIndex)
    def _chosen(self, index: QModelIndex, before: QModelIndex) -> None:
        row: ListRow | None = index.data(ROW) if index.isValid() else None
        if row is not None and row.card is not None and row.card.code != self.wanted:
            self.wanted = row.card.code
            self._ask_lot()

    @Slot(QModelIndex)
    def _activated(self, index: QModelIndex) -> None:
        row: ListRow = index.data(ROW)
        if row.kind == "line":
            self.filter.setText(self.desk.words.say(STATES[row.state]))
            self._filtered()
        else:
            self.keys_to_lot()

    def keys_to_lot(self) -> None:
        """Give the keys to the first picture of the lot."""
        pictures = [p for p in self.lot.pictures() if p.focusPolicy() != Qt.FocusPolicy.NoFocus]
        curves = [p for p in pictures if p in (self.lot.drying, self.lot.ferment)]
        for picture in (*reversed(curves), *pictures):
            picture.setFocus(Qt.FocusReason.OtherFocusReason)
            return

    @Slot()
    def _keys_to_list(self) -> None:
        self.list.setFocus(Qt.FocusReason.OtherFocusReason)

    def _keys_to_filter(self) -> None:
        self.filter.setFocus(Qt.FocusReason.OtherFocusReason)
        self.filter.selectAll()

    # a reading

    def start_reading(self, typed: str) -> None:
        """Open the reading row of the lot that is shown, with what was typed already in it."""
        story = self.lot.story
        if story is None:
            return
        why = self.desk.why_not_write()
        if why:
            self.desk.tell(why)
        elif story.sensible == "none":
            self.desk.tell(self.tr("{lot} lies in no vessel and on no bed, so there is nothing to read.").format(
                lot=story.card.code))  # fmt: skip
        else:
            self.lot.form.open_for(story, typed)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        typed = event.text()
        story = self.lot.story
        plain = not event.modifiers() & ~(Qt.KeyboardModifier.KeypadModifier | Qt.KeyboardModifier.ShiftModifier)
        if (
            typed.isdigit()
            and plain
            and story is not None
            and story.sensible != "none"
            and not self.desk.why_not_write()
        ):
            self.start_reading(typed)
        elif typed == "/" and story is not None and not self.desk.why_not_write():
            self.lot.form.correct(story)
        elif event.key() == Qt.Key.Key_Escape and not self.lot.form.isHidden():
            self.lot.form.close_row()
        else:
            event.ignore()

    @Slot(str)
    def _lead_away(self, typed: str) -> None:
        """What was typed is no number: it means a lot, a bed or a page, and belongs to the go box."""
        go_box = getattr(self.window(), "go_box", None)
        if go_box is not None:
            go_box.begin(typed)

    # room

    def lay_out(self) -> None:
        px = look().px
        left, top, wide = px(MARGIN_PX), px(12), px(LIST_PX)
        self.filter.setGeometry(left, top, wide, px(FILTER_PX))
        list_top = top + px(FILTER_PX + 10)
        bottom = self.height() - px(KEYS_PX + 6)
        self.list.setGeometry(left, list_top, wide + px(BAR_PX), self.height() - list_top)
        x = left + wide + px(GUTTER_PX)
        self.keys.move(x, self.height() - px(KEYS_PX + 2))
        self.lot.setGeometry(x, px(8), self.width() - x - px(MARGIN_PX), bottom - px(8))

    def paintEvent(self, event: QPaintEvent) -> None:
        px = look().px
        with Ink(self) as ink:
            x = px(MARGIN_PX + LIST_PX + GUTTER_PX // 2)
            ink.upright(x + 0.5, px(12), self.height() - px(8), 1, "rule")
            if not self.cards and not self.stale:
                text = self.tr("No lot has begun. The page Picking begins one: g.")
                ink.text(x + px(GUTTER_PX // 2), px(35), text, 17, family=SERIF)
