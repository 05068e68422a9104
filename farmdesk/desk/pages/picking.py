"""Picking: the hill with its blocks, today's weigh-in, and the sheets that are typed there.

The page is several views of one place: the overview, the weigh-in, the short forms of a lot's first day, and
pay. Each view asks its own story; Esc leads back to the overview.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from importlib import import_module
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QKeyEvent, QPaintEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.go import Target
from farmdesk.desk.pages import Action, Desk, Page
from farmdesk.desk.theme import look
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.keys import HIGH_PX as KEYS_PX
from farmdesk.desk.widgets.keys import KeyRow

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

MARGIN_PX = 20
VIEWS = {
    "hill": "farmdesk.desk.pages.picking_hill:HillView",
    "weigh": "farmdesk.desk.pages.weigh_in:WeighInView",
    "lot": "farmdesk.desk.pages.new_lot:NewLotView",
    "count": "farmdesk.desk.pages.intake:CountView",
    "sort": "farmdesk.desk.pages.intake:SortView",
    "fill": "farmdesk.desk.pages.vessels_beds:FillView",
    "spread": "farmdesk.desk.pages.vessels_beds:SpreadView",
    "pay": "farmdesk.desk.pages.pay:PayView",
}


class View:
    """What the page counts on in a view, which is a QWidget too."""

    def question(self) -> Callable[[OpenFarm, int], Any]:
        """What to ask of the season; made on the window's thread, run on the desk lane, so it keeps no widget."""
        raise NotImplementedError

    def show_story(self, story: Any) -> None:
        """Show what was answered."""
        raise NotImplementedError

    def enter(self) -> None:
        """The view has been chosen: take the keys."""

    def letters(self) -> Sequence[Action]:
        """What the letters do here, besides leading to the other views."""
        return ()


class PickingPage(Page):
    place = "picking"

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, parent)
        self.setWindowTitle(self.tr("Picking"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.views: dict[str, Any] = {}
        self.name = "hill"
        self._entering = False
        self.keys = KeyRow(self)
        self._view("hill")

    @property
    def view(self) -> Any:
        """The view that is shown."""
        return self.views[self.name]

    def _view(self, name: str) -> Any:
        if name not in self.views:
            module, kind = VIEWS[name].split(":")
            self.views[name] = getattr(import_module(module), kind)(self)
            self.lay_out()
            self.views[name].setVisible(name == self.name)
        return self.views[name]

    # asking

    def query(self, farm: OpenFarm, at_utc_s: int) -> tuple[str, Any]:
        name, ask = self._asked
        return name, ask(farm, at_utc_s)

    def refresh(self) -> None:
        self._asked = (self.name, self.view.question())
        super().refresh()

    def show_story(self, story: tuple[str, Any]) -> None:
        name, told = story
        if name != self.name:  # another view was chosen while this answer was on its way
            self.refresh()
            return
        self.view.show_story(told)
        self.setAccessibleName(self.view.accessibleName())
        if self._entering:
            self._entering = False
            self.view.enter()
        self.show_keys()

    # going

    def open_at(self, target: Target) -> None:
        if target.kind == "picking":
            self.go(target.value)

    def go(self, name: str) -> None:
        """Show a view; its forms can be filled only at the present."""
        why = self.desk.why_not_write()
        if name not in ("hill", "pay") and why:
            self.desk.tell(why)
            return
        before = self.view
        self.name = name
        self._view(name).show()
        if before is not self.view:
            before.hide()
        self._entering = True
        self.refresh()

    @Slot()
    def leave(self) -> None:
        """Back to the overview."""
        self.go("hill")
        self.setFocus(Qt.FocusReason.OtherFocusReason)

    def letters(self) -> Sequence[Action]:
        found = list(self.view.letters())
        taken = {action.key for action in found}
        for name, key, words in (
            ("weigh", "w", self.tr("weigh-in")), ("lot", "g", self.tr("begin a lot")),
            ("count", "r", self.tr("ripeness")), ("sort", "o", self.tr("sort and float")),
            ("fill", "v", self.tr("fill vessels")), ("spread", "x", self.tr("spread")), ("pay", "z", self.tr("pay")),
        ):  # fmt: skip
            if name != self.name and key not in taken:
                found.append(Action(key, words, self._going(name)))
        return found

    def _going(self, name: str) -> Callable[[], None]:
        return lambda: self.go(name)

    def show_keys(self) -> None:
        """The keys at the foot of the page."""
        self.keys.show_actions(self.letters())
        self.keys.setVisible(self.name in ("hill", "pay"))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and self.name != "hill":
            self.leave()
        else:
            event.ignore()

    # room

    def lay_out(self) -> None:
        px = look().px
        left, top = px(MARGIN_PX), px(8)
        self.keys.move(left, self.height() - px(KEYS_PX + 4))
        for name, view in self.views.items():
            low = px(KEYS_PX + 8) if name in ("hill", "pay") else px(12)
            view.setGeometry(left, top, self.width() - 2 * left, self.height() - top - low)

    def paintEvent(self, event: QPaintEvent) -> None:
        with Ink(self) as ink:
            ink.fill(0, 0, self.width(), self.height(), "paper")
