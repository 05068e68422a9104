"""The farm's registers, typed row by row: what the farm has, by which codes, words and standards it is called.

One register at a time: its name is chosen above, its rows and boxes stand below. Enter goes into the boxes, Esc
comes back to the names, and once more to the page Farm.
"""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QKeyEvent, QPaintEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.go import Target
from farmdesk.desk.pages import Desk, Page
from farmdesk.desk.theme import look
from farmdesk.desk.widgets.choices import Choices
from farmdesk.desk.widgets.ink import Ink

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

MARGIN_PX = 20
PANES = {
    "blocks": "register_rows:BlocksPane",
    "places": "register_plan:PlacesPane",
    "vessels": "register_rows:VesselsPane",
    "trays": "register_rows:RegisterPane",
    "instruments": "register_rows:InstrumentsPane",
    "checks": "register_checks:ChecksPane",
    "corrections": "register_checks:CorrectionsPane",
    "methods": "register_methods:MethodsPane",
    "people": "register_rows:PeoplePane",
    "buyers": "register_rows:RegisterPane",
    "figures": "register_figures:FiguresPane",
    "words": "register_words:WordsPane",
    "standards": "register_standards:StandardsPane",
}


class RegistersPage(Page):
    place = "farm"

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, parent)
        self.setWindowTitle(self.tr("Registers"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.name = "blocks"
        self.panes: dict[str, Any] = {}
        self._entering = False
        self.choice = Choices(self.tr("Registers: Enter types in one, Esc leaves"), self)
        self.choice.chosen.connect(self._chosen)
        names = {
            "blocks": self.tr("blocks"), "places": self.tr("beds and patio"), "vessels": self.tr("vessels"),
            "trays": self.tr("trays"), "instruments": self.tr("instruments"), "checks": self.tr("checks"),
            "corrections": self.tr("corrections"), "methods": self.tr("methods"), "people": self.tr("people"),
            "buyers": self.tr("buyers"), "figures": self.tr("figures"), "words": self.tr("words"), "standards": self.tr("standards"),
        }  # fmt: skip
        self.choice.offer([(name, names[name]) for name in PANES], self.name)
        self._pane(self.name)

    @property
    def pane(self) -> Any:
        """The register that is shown."""
        return self.panes[self.name]

    def _pane(self, name: str) -> Any:
        if name not in self.panes:
            module, kind = PANES[name].split(":")
            made = getattr(import_module(f"farmdesk.desk.pages.{module}"), kind)(self, name)
            self.panes[name] = made
            self.lay_out()
            made.setVisible(name == self.name)
        return self.panes[name]

    # asking

    def refresh(self) -> None:
        self._asked = (self.name, self.pane.question())
        super().refresh()

    def query(self, farm: OpenFarm, at_utc_s: int) -> tuple[str, Any]:
        name, ask = self._asked
        return name, ask(farm, at_utc_s)

    def show_story(self, story: tuple[str, Any]) -> None:
        name, told = story
        if name != self.name:  # another register was chosen while this answer was on its way
            self.refresh()
            return
        self.pane.show_story(told)
        self.setAccessibleName(self.pane.accessibleName())
        self._enter_asked()
        self.update()

    def _enter_asked(self) -> None:
        if self._entering:
            self._entering = False
            self.pane.enter()

    # going

    @Slot(str)
    def _chosen(self, name: str) -> None:
        self.desk.go(Target("register", name))

    def open_at(self, target: Target) -> None:
        name, _, types = target.value.partition(" ") if target.kind == "register" else ("", "", "")
        if name in PANES and name != self.name:
            self.choice.choose(name)
            self.show_register(name)
        self.choice.take_keys()
        self._entering = bool(types)
        if self.pane.story is not None:
            self._enter_asked()

    def show_register(self, name: str) -> None:
        """Show a register."""
        before = self.pane
        self.name = name
        self._pane(name).show()
        if before is not self.pane:
            before.hide()
        self.refresh()

    @Slot()
    def leave_form(self) -> None:
        """From the boxes back to the names."""
        self.choice.take_keys()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.choice.has_keys():
            why = self.desk.why_not_write()
            if why:
                self.desk.tell(why)
            else:
                self.pane.enter()
        elif event.key() == Qt.Key.Key_Escape and not self.choice.has_keys():
            self.choice.take_keys()
        elif event.key() == Qt.Key.Key_Escape:
            self.desk.go(Target("page", "farm"))
        else:
            event.ignore()

    # room

    def lay_out(self) -> None:
        px = look().px
        left, wide = px(MARGIN_PX), self.width() - 2 * px(MARGIN_PX)
        self.choice.move(left, px(6))
        self.choice.fit(wide)
        top = px(6) + self.choice.height() + px(12)
        for pane in self.panes.values():
            pane.setGeometry(left, top, wide, self.height() - top - px(12))

    def paintEvent(self, event: QPaintEvent) -> None:
        with Ink(self) as ink:
            ink.fill(0, 0, self.width(), self.height(), "paper")
