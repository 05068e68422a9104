"""Pages, and what a page may count on.

A page is a `Page`: it says what to ask of the season (`query`, on the desk lane) and shows the answer
(`show_story`, on the window's thread). The window does the rest: it makes a page when it is first shown,
asks again when the as-of handle moves or a written act concerns the page, and lets hidden pages go stale
until they are shown. A page keeps no copy of a fact beyond the story it was last given.

    class YardPage(Page):
        place = "yard"                                   # the item of the road that is lit

        def query(self, farm, at_utc_s):                 # desk lane; no Qt in here
            return yard_story(farm, at_utc_s)

        def show_story(self, story): ...                 # paint it; set the accessible name to its sentence

        def lay_out(self): ...                           # its parts in their places, whenever the size changes

        def letters(self):                               # letters that act on this page; words with the key first
            return [Action("p", self.tr("day sheet"), self.print_sheet)]

        def open_at(self, target): ...                   # `b7` came from the go box: Target("bed", "7")

What a page has: `self.desk` with `lanes` (ask, do, count), `words` (say a Text in the screen's language),
`time` (the farm's own), `as_of` [UTC s], `at_present`, `why_not_write()` (a sentence, or "" when forms may
be filled), `go(Target)`, `tell(sentence)`, `practice`. `look()` of `desk.theme` gives colours and type;
`desk.widgets.ink.Ink` paints text on baselines and crisp lines.

Keys: letters that no field takes travel up to the window, which runs the page's action or fills the go
box. A page's lists must let letters pass (`widgets.lists.Lines`). Esc in a form gives the keys back.
PAGES names every page that exists; a new one is one line there.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QApplication, QWidget

from farmdesk import clock
from farmdesk.clock import FarmTime
from farmdesk.desk.go import Target
from farmdesk.desk.habits import Habits
from farmdesk.desk.lanes import Lanes
from farmdesk.desk.widgets.drawn import Drawn
from farmdesk.errors import FarmError
from farmdesk.text import Words
from farmdesk.work.changes import Changes

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

PAGES = {
    "today": "farmdesk.desk.pages.today:TodayPage",
    "season": "farmdesk.desk.pages.season:SeasonPage",
    "lots": "farmdesk.desk.pages.lots:LotsPage",  # the list and, beside it, the lot (pages/lot.py)
    "family": "farmdesk.desk.pages.family:FamilyPage",  # of one lot, from its page
    "compare": "farmdesk.desk.pages.compare:ComparePage",  # o on a lot: lots over one another
    "ferments": "farmdesk.desk.pages.ferments:FermentsPage",
    "yard": "farmdesk.desk.pages.yard:YardPage",
    "picking": "farmdesk.desk.pages.picking:PickingPage",  # hill, weigh-in, first forms of a lot, pay
    "yard sheet": "farmdesk.desk.pages.yard_form:YardFormPage",  # y on Today: the paper typed in
    "notebook": "farmdesk.desk.pages.notebook:NotebookPage",
    "papers": "farmdesk.desk.pages.papers:PapersPage",
    "farm": "farmdesk.desk.pages.farm:FarmPage",
    "begin": "farmdesk.desk.pages.begin:BeginPage",  # n on Farm: a farm of one's own
    "care": "farmdesk.desk.pages.care:CarePage",  # c on Farm: copies, restores, everything out, seasons
    "registers": "farmdesk.desk.pages.registers:RegistersPage",  # r on Farm
}
TURN = "t"  # the letter that turns pictures into tables


@dataclass(frozen=True)
class Action:
    """Something a page does: the letter that does it, its words, and the deed.

    `opens`: a box to type in, which takes what a quick hand types on after the letter.
    """

    key: str
    words: str
    run: Callable[[], None]
    opens: bool = False


class Desk(QObject):
    """What every page shares. `moved` comes when the as-of handle stands elsewhere; `asked_for` asks for a page."""

    moved = Signal()
    asked_for = Signal(object)  # Target
    told = Signal(str)
    settle = Signal(object)  # Habits: language, look or size were chosen anew
    open_season = Signal(object)  # Path of another season file; None is the practice season
    read_season = Signal(object)  # Path of a season file that is only to be read

    def __init__(self, lanes: Lanes, words: Words, time: FarmTime, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.lanes, self.words, self.time = lanes, words, time
        self.as_of = 0
        self.present = 0
        self.latest = 0  # the last row of a practice season
        self.at_present = True
        self.practice = False
        self.reading_only = ""
        self.habits = Habits()

    def move_to(self, at_utc_s: int) -> None:
        """Put the handle at an instant [UTC s]; at the present or beyond it is the present.

        In the practice season the handle's hour is now: the clock goes on from there, and one may type.
        """
        if self.practice:
            self.present = min(at_utc_s, self.latest)
            clock.stand_at(self.present)
        self.at_present = at_utc_s >= self.present
        at_utc_s = min(at_utc_s, self.present)
        if at_utc_s != self.as_of:
            self.as_of = at_utc_s
            self.moved.emit()

    def advance(self) -> bool:
        """Where the handle stands at the present, let it go on with the clock; says whether it moved."""
        self.present = max(clock.now(), self.present)
        if not self.at_present or self.as_of == self.present:
            return False
        self.as_of = self.present
        self.moved.emit()
        return True

    def back_to_now(self) -> None:
        """Let the handle go: the present, or the end of the practice season."""
        self.move_to(self.latest if self.practice else self.present)

    def why_not_write(self) -> str:
        """Why no form can be filled now; empty when it can."""
        if self.reading_only:
            return self.reading_only
        if self.at_present:
            return ""
        return self.tr("This is the past; go back to now to write.")

    def go(self, target: Target) -> None:
        """Ask the window for a page."""
        self.asked_for.emit(target)

    def tell(self, sentence: str) -> None:
        """Say one calm sentence under the page's title; an empty one takes it back."""
        self.told.emit(sentence)


class Page(QWidget):
    """One page. Subclasses give `place`, `query` and `show_story`; see the head of this file."""

    place = ""
    shown = Signal()  # a story has arrived and stands on the page
    spans = Signal(object)  # (first, last) instant the page shows, drawn on the season's ruler; None: all

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.desk = desk
        self.stale = True
        self.trouble = ""
        self._asking = self._again = False

    def query(self, farm: OpenFarm, at_utc_s: int) -> Any:
        """Ask the season; on the desk lane, so without any widget."""
        raise NotImplementedError

    def show_story(self, story: Any) -> None:
        """Show what was answered."""
        raise NotImplementedError

    def concerns(self, changes: Changes) -> bool:
        """Whether a written act can change what this page shows."""
        return True

    def letters(self) -> Sequence[Action]:
        """What the letters do here."""
        return ()

    def all_letters(self) -> list[Action]:
        """The page's own letters, and `t`, which turns pictures into tables on every page that has one."""
        found = list(self.letters())
        if all(action.key != TURN for action in found) and self.findChild(Drawn) is not None:
            found.append(Action(TURN, self.tr("table"), self.turn_pictures))
        return found

    def turn_pictures(self) -> None:
        """Turn the picture that has the keys, or else all of the page, into tables and back."""
        held = QApplication.focusWidget()
        while held is not None and not isinstance(held, Drawn):
            held = held.parentWidget()
        for picture in [held] if isinstance(held, Drawn) else self.findChildren(Drawn):
            if picture.isVisible():
                picture.toggle_twin()

    def lay_out(self) -> None:
        """Put the parts of the page in their places; done whenever its size changes."""

    def resizeEvent(self, event: QResizeEvent) -> None:
        self.lay_out()

    def open_at(self, target: Target) -> None:
        """Show the part of the page that was asked for."""

    def refresh(self) -> None:
        """Ask again. While an answer is on its way, one more question is kept and asked after it."""
        if self._asking:
            self._again = True
            return
        self.stale, self._asking = False, True
        at_utc_s = self.desk.as_of
        self.desk.lanes.ask(lambda farm: self.query(farm, at_utc_s), self._answered, self._refused)

    @Slot(object)
    def _answered(self, story: Any) -> None:
        self._asking, self.trouble = False, ""
        self.show_story(story)
        self.shown.emit()
        self._once_more()

    @Slot(object)
    def _refused(self, error: Exception) -> None:
        self._asking = False
        if isinstance(error, FarmError):
            self.trouble = " ".join(self.desk.words.say(text) for text in (error.text, error.hint) if text)
            self.desk.tell(self.trouble)
        else:
            self.desk.lanes.stray(error)
        self.shown.emit()
        self._once_more()

    def _once_more(self) -> None:
        if self._again:
            self._again = False
            self.refresh()
