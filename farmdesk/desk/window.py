"""The window: the road above, a page between, the season's ruler below. It moves between pages and instants."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date
from importlib import import_module
from typing import Any

from PySide6.QtCore import QEvent, Qt, QTimer, Signal, Slot
from PySide6.QtGui import QCloseEvent, QKeyEvent, QKeySequence, QPaintEvent, QResizeEvent, QShortcut
from PySide6.QtWidgets import QApplication, QLineEdit, QPlainTextEdit, QWidget

from farmdesk.desk import go, problems, road, ruler
from farmdesk.desk.go import Known, Target
from farmdesk.desk.go_box import GoBox
from farmdesk.desk.lanes import Lanes
from farmdesk.desk.pages import PAGES, TURN, Action, Desk, Page
from farmdesk.desk.road import Road, RoadAsker, road_query
from farmdesk.desk.ruler import Ruler
from farmdesk.desk.theme import SIZES, look
from farmdesk.desk.widgets.edge import Edge
from farmdesk.desk.widgets.ink import Ink
from farmdesk.errors import FarmError
from farmdesk.text import Words
from farmdesk.work.changes import Changes
from farmdesk.work.stories import RoadStory

FOLD_MS = 100  # written acts that come in a burst are shown once
LOW_HEIGHT_PX = 740  # under this the ruler leaves out the names of the months
# Places of the road without a page of their own lead to the lots that lie there.
PAGE_OF = {
    "lot": "lots", "reading": "lots", "lying": "lots", "bed": "yard", "vessel": "ferments", "paper": "papers",
    "rows": "notebook", "family": "family", "compare": "compare", "register": "registers", "picking": "picking",
}  # fmt: skip
MOST_BEEN = 50
LYING = {"picking": "picking", "store": "store", "mill": "mill", "cup": "green", "samples": "gone"}


class Window(QWidget):
    """The one window. `painted` comes when the first page has been drawn with its story."""

    painted = Signal()
    settled = Signal()  # a setting of the looks was changed by keys

    def __init__(
        self,
        lanes: Lanes,
        desk: Desk,
        pages: dict[str, Callable[[Desk, QWidget], Page]] | None = None,
        road_query: Callable[[Any, int], tuple[RoadStory, Known]] = road_query,
    ) -> None:
        super().__init__()
        self.desk, self.lanes = desk, lanes
        desk.setParent(self)
        self._makers = pages or {}
        self._asker = RoadAsker(desk, road_query, self)
        self._asker.answered.connect(self._road_answered)
        self.pages: dict[str, Page] = {}
        self.page: Page | None = None
        self.known = Known()
        self.story: RoadStory | None = None
        self._been: list[Target] = []
        self._target = Target("page", "today")
        self._keys_from: QWidget | None = None
        self._seen = False
        self._turned = ""  # the letter that turned a moment ago
        self._turning = QTimer(self, singleShot=True)
        self.go_box = GoBox(lambda typed: go.begins(typed, self.known) or bool(self._found(typed)))
        self.road = Road(self.go_box, self)
        self.ruler = Ruler(desk, self)
        self.notice = problems.Notice(self)
        self.edge = Edge(self)
        self.setMinimumSize(900, 560)
        self._connect()
        self._fold = QTimer(self, singleShot=True, interval=FOLD_MS)
        self._fold.timeout.connect(self._show_changes)

    def _connect(self) -> None:
        self.go_box.entered.connect(self._go_typed)
        self.go_box.textEdited.connect(self._hint)
        self.go_box.acted.connect(self._act)
        self.go_box.left.connect(self._keys_back)
        self.go_box.back.connect(self.desk.back_to_now)
        self.road.went.connect(self._road_went)
        self.notice.gone.connect(self._tell)
        self.desk.moved.connect(self._moved)
        self.desk.asked_for.connect(self.open)
        self.desk.told.connect(self._tell)
        self.lanes.changed.connect(self._changed)
        self.lanes.trouble.connect(self._trouble)
        for keys, slot in (
            ("Ctrl+G", self._focus_go), ("Alt+Left", self.back), ("Ctrl+Z", self.undo), ("Ctrl+Y", self.redo),
            ("Ctrl+Shift+Z", self.redo), ("F11", self._full_screen), ("Ctrl++", self._larger), ("Ctrl+=", self._larger),
            ("Ctrl+-", self._smaller), ("Ctrl+Left", self.ruler.back), ("Ctrl+Right", self.ruler.on),
            ("Ctrl+End", self.desk.back_to_now),
        ):  # fmt: skip
            QShortcut(QKeySequence(keys), self, slot)

    # the season

    def begin(self) -> None:
        """A season has been opened: forget what was shown of another one, and show the first page."""
        self._drop_pages()
        self._been.clear()
        self.go_box.note, self.go_box.off_present = self.desk.reading_only, not self.desk.at_present
        self.edge.setVisible(self.desk.practice)
        self.open(self._target)
        self.refresh_road()

    @Slot(object)
    def cannot(self, error: Exception) -> None:
        """Say calmly what went wrong."""
        self._trouble(error)

    def refresh_road(self) -> None:
        """Ask what lies where now."""
        self._asker.ask()

    @Slot(object)
    def _road_answered(self, answer: tuple[RoadStory, Known]) -> None:
        self.story, known = answer
        self.known = replace(known, pages=self.road.page_names())
        self.ruler.show_story(self.story)
        self.road.say(self.road.words_under(self.story, known.season, self.desk))
        self.edge.setVisible(self.story.practice)
        self._name_window()

    def _name_window(self) -> None:
        """The page and the farm's own name."""
        names = self.page.windowTitle() if self.page else "", self.story.farm if self.story else ""
        self.setWindowTitle(" – ".join(filter(None, names)))

    # pages

    def open(self, target: Target) -> None:
        """Go to a page, a lot, a bed, a vessel, the lots lying somewhere, a day, or now."""
        if target.kind == "day":
            self.ruler.go_to_day(date.fromisoformat(target.value))
            return
        if target.kind == "now":
            self.desk.back_to_now()
            return
        name = PAGE_OF.get(target.kind, target.value)
        if name in LYING and name not in self._available():
            target, name = Target("lying", LYING[name]), "lots"
        if name not in self._available():
            return
        if self.page is not None and target != self._target:
            self._been = [*self._been[1 - MOST_BEEN :], self._target]
        self._show(name, target)

    def back(self) -> None:
        """Where one was before."""
        if self._been:
            target = self._been.pop()
            self._show(PAGE_OF.get(target.kind, target.value), target)

    def _available(self) -> set[str]:
        return set(self._makers or PAGES)

    def _make(self, name: str) -> Page:
        maker = self._makers.get(name)
        if maker is None:
            module, kind = PAGES[name].split(":")
            maker = getattr(import_module(module), kind)
        page = maker(self.desk, self)
        page.shown.connect(self._page_shown)
        page.spans.connect(self.ruler.show_span)
        return page

    def _show(self, name: str, target: Target) -> None:
        self._target = target
        page = self.pages.get(name)
        if page is None:
            page = self.pages[name] = self._make(name)
        if page is not self.page:
            before, self.page = self.page, page
            if before is not None and before.trouble and before.trouble == self.notice.sentence:
                self._tell("")  # it could not be answered there; here it means nothing
            self.ruler.show_span(None)
            self._lay_out()
            page.show()
            if before:
                before.hide()
            self.edge.raise_()
            self.ruler.raise_()
            page.setFocus(Qt.FocusReason.OtherFocusReason)
            self._name_window()
        self.road.choose(page.place or name)
        if page.stale:
            page.refresh()
        page.open_at(target)

    @Slot()
    def _page_shown(self) -> None:
        if not self._seen:
            self._seen = True
            QTimer.singleShot(0, self, self.painted.emit)

    def _moved(self) -> None:
        self.go_box.off_present = not self.desk.at_present
        self.go_box.update()
        for page in self.pages.values():
            page.stale = True
        if self.page is not None:
            self.page.refresh()
        self.refresh_road()

    @Slot(object)
    def _changed(self, changes: Changes) -> None:
        for page in self.pages.values():
            if page.concerns(changes):
                page.stale = True
        self._fold.start()

    def _show_changes(self) -> None:
        if self.desk.advance():  # a row just written is known only from now on
            return
        if self.page is not None and self.page.stale:
            self.page.refresh()
        self.refresh_road()

    # words

    def _tell(self, sentence: str) -> None:
        self.notice.say(sentence)
        self._lay_out()

    @Slot(object)
    def _trouble(self, error: Exception) -> None:
        if isinstance(error, FarmError):
            self._tell(problems.sentence(error, self.desk.words))
        else:
            self._tell(self.tr("Something went wrong in the program and was written down. What you typed is kept."))

    def speak(self, words: Words) -> None:
        """Another language, or other letters: every page is made anew."""
        self.desk.words = words
        self._drop_pages()
        if self.story is not None:
            self.road.say(self.road.words_under(self.story, self.known.season, self.desk))
            self.known = replace(self.known, pages=self.road.page_names())
        self._lay_out()
        self.open(self._target)

    def _drop_pages(self) -> None:
        for page in self.pages.values():
            page.hide()
            page.deleteLater()
        self.pages.clear()
        self.page = None

    # keys

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, text = event.key(), event.text()
        mods = event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
        if key == Qt.Key.Key_Alt:
            self.road.show_letters(True)
        elif mods == Qt.KeyboardModifier.AltModifier and (item := self.road.item_of(chr(key) if key < 128 else "")):
            item.click()
        elif key == Qt.Key.Key_Escape and self.notice.sentence:
            self._tell("")
        elif text.isalnum() and not mods & ~Qt.KeyboardModifier.ShiftModifier:
            self._typed(text)
        else:
            super().keyPressEvent(event)

    def keyReleaseEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Alt:
            self.road.show_letters(False)
        super().keyReleaseEvent(event)

    def _typed(self, text: str) -> None:
        """A letter acts at once where it leads nowhere; where it may, it waits in the go box for a second one.

        `t` always turns at once: turned over again, it is as before, should a second letter lead elsewhere.
        """
        turned, self._turned = self._turned if self._turning.isActive() else "", ""
        if turned:
            self._act(TURN)
            if text == turned:
                return
            text = turned + text
        action = self._action(text)
        if action is not None and (action.key == TURN or not go.begins(text, self.known)):
            action.run()
            if action.key == TURN:  # a slow computer paints meanwhile: a timer comes after the keys that wait
                self._turned = text
                self._turning.start(self.go_box.wait.interval())
            return
        self._keys_from = QApplication.focusWidget()
        self.go_box.begin(text, action.words if action else "", opens=action is not None and action.opens)

    def _action(self, letter: str) -> Action | None:
        letters = self.page.all_letters() if self.page is not None else ()
        return next((action for action in letters if action.key == letter.lower()), None)

    def _act(self, letter: str) -> None:
        if (action := self._action(letter)) is not None:
            action.run()

    def _focus_go(self) -> None:
        self._keys_from = QApplication.focusWidget()
        self.go_box.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.go_box.selectAll()

    def _keys_back(self) -> None:
        back, self._keys_from = self._keys_from, None
        if back is None or back is self.go_box or not back.isVisible():
            back = self.page or self
        back.setFocus(Qt.FocusReason.OtherFocusReason)

    def _found(self, typed: str) -> list[tuple[str, Target]]:
        return go.find(typed, self.known, self.desk.time.calendar_day(self.desk.as_of))

    def _hint(self, typed: str) -> None:
        found = self._found(typed)
        self.go_box.say(("→ " + found[0][0]) if found else (self.tr("not known") if len(typed) > 1 else ""))

    def _go_typed(self, typed: str) -> None:
        found = self._found(typed)
        if not found:
            self._hint(typed)
            return
        self.go_box.empty()
        self._keys_back()
        self.open(found[0][1])

    def _road_went(self, name: str) -> None:
        self.open(Target("page", name))

    # acts of the window itself

    def undo(self) -> None:
        """Take back the last act; the notebook keeps both."""
        if self._may():
            self.lanes.undo_list.undo()

    def redo(self) -> None:
        """Do again what was taken back."""
        if self._may():
            self.lanes.undo_list.redo()

    def _may(self) -> bool:
        """Fields undo their own typing first; a season that is only read has nothing to take back."""
        why = self.desk.reading_only
        if why:
            self._tell(why)
        return not why and not isinstance(QApplication.focusWidget(), (QLineEdit, QPlainTextEdit))

    def _full_screen(self) -> None:
        self.showNormal() if self.isFullScreen() else self.showFullScreen()

    def _larger(self) -> None:
        self._resize_letters(1)

    def _smaller(self) -> None:
        self._resize_letters(-1)

    def _resize_letters(self, by: int) -> None:
        at = min(max(SIZES.index(look().scale) + by, 0), len(SIZES) - 1)
        if SIZES[at] != look().scale:
            look().wear(scale=SIZES[at])
            self.settled.emit()
            self.speak(self.desk.words)

    # room

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._lay_out()

    def changeEvent(self, event: QEvent) -> None:
        if event.type() == QEvent.Type.FontChange:
            self._lay_out()
        super().changeEvent(event)

    def _lay_out(self) -> None:
        px = look().px
        width, height, top = self.width(), self.height(), px(road.HEIGHT_PX)
        band = px(ruler.HEIGHT_PX if height >= LOW_HEIGHT_PX * look().scale else ruler.LOW_PX)
        low = height - band
        said, over = self.notice.height_for(width) if self.notice.sentence else 0, px(ruler.OVER_PX)
        self.road.setGeometry(0, 0, width, top)
        self.ruler.setGeometry(0, low - over, width, band + over)
        self.notice.setGeometry(0, low - said, width, said)
        self.edge.setGeometry(0, top, px(8), low - top)
        if self.page is not None:
            self.page.setGeometry(0, top, width, low - said - top)

    def paintEvent(self, event: QPaintEvent) -> None:
        with Ink(self) as ink:
            ink.fill(0, 0, self.width(), self.height(), "paper")

    def closeEvent(self, event: QCloseEvent) -> None:
        self._fold.stop()
        self.lanes.close()
        super().closeEvent(event)
