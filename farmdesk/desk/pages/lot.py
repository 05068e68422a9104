"""One lot: its strip, its two curves, its weights, its numbers beside the own normal, and what is doubtful.

When the height is short, bands drop in this order: numbers, weight river, mill, notes. What is dropped
stands behind the key `m`, in place of the curves. An open reading row takes the room of the strip.
"""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QRect, Signal, Slot
from PySide6.QtGui import QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.charts.balance import Balance
from farmdesk.desk.charts.chart import Chart
from farmdesk.desk.charts.river import River
from farmdesk.desk.go import Target
from farmdesk.desk.pages import Action, Desk
from farmdesk.desk.pages.lot_words import Notes, Numbers
from farmdesk.desk.pages.reading_form import ReadingForm
from farmdesk.desk.pages.worked_out import WorkedOutPane
from farmdesk.desk.theme import look
from farmdesk.desk.widgets.guard import Guard
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.strip import StripWidget
from farmdesk.desk.widgets.title import HEIGHT_PX as TITLE_PX
from farmdesk.desk.widgets.title import Title
from farmdesk.errors import Question
from farmdesk.work.stories import LotStory

STRIP_PX, CHARTS_LEAST_PX, BALANCE_PX, RIVER_PX, NUMBERS_PX = 68, 204, 74, 124, 66
FERMENT_PX, GUTTER_PX, GAP_PX = 280, 32, 6
DROPS = ("numbers", "river", "balance", "notes")


class LotView(QWidget):
    """The right-hand side of the lots page."""

    dropped_changed = Signal()

    def __init__(self, desk: Desk, parent: QWidget) -> None:
        super().__init__(parent)
        self.desk = desk
        self.story: LotStory | None = None
        self.vessel = 0
        self.turned = False  # the dropped bands stand in place of the curves
        self.title = Title(desk, self)
        self.form = ReadingForm(desk, self)
        self.file = Guard(self)  # a file of the watched folder wants to be placed
        self.strip = StripWidget(desk.time, desk.words, self)
        self.ferment, self.drying = Chart(desk, self), Chart(desk, self)
        self.balance, self.river = Balance(desk.words, self), River(desk.words, self)
        self.numbers, self.notes = Numbers(desk.words, self), Notes(desk, self)
        self.worked = WorkedOutPane(desk, self)
        self.worked.changed.connect(self._lay_out)
        self.form.resized.connect(self._lay_out)
        self.form.questioned.connect(self._show_asked)
        self.dropped: tuple[str, ...] = ()
        self._rules: list[int] = []

    def show_story(self, story: LotStory) -> None:
        """Show a lot; the same lot with newer facts keeps its vessel and views."""
        other = self.story is None or self.story.card.code != story.card.code
        self.story = story
        if other:
            self.vessel, self.turned = max(0, len(story.ferments) - 1) if story.vessels else 0, False
            self.form.hide()
            self.form.guard.close_up()
        card, say = story.card, self.desk.words.say
        self.title.say(card.code, say(story.headline), small=card.check)
        self.strip.show_strip(card.strip, say(story.headline))
        self._show_ferment()
        self.drying.show_figure(story.drying)
        self.river.show_river(story.river, story.unexplained)
        self.balance.show_balance(story.balance, story.balance_of)
        self.numbers.show_normals(story.normals, story.normal_of)
        self.notes.show_story(story)
        self.worked.follow(card.code)
        self._lay_out()

    def letters(self) -> list[Action]:
        """What the letters do with the lot that is shown."""
        found = [Action("t", self.tr("table"), self.toggle_tables), Action("j", self.tr("family"), self.family)]
        if self.story is not None:
            found.append(Action("h", self.tr("how worked out"), self._worked_out))
            found.append(Action("o", self.tr("over others"), self._compare))
            if len(self.story.ferments) > 1:
                found.append(Action("f", self.tr("vessel"), self.next_vessel))
        return found

    def _worked_out(self) -> None:
        if self.story is not None:
            self.worked.turn(self.story.card.code)

    def _compare(self) -> None:
        """Lay the lot over others, on axes they share."""
        if self.story is not None:
            self.desk.go(Target("compare", self.story.card.code))

    @Slot(str, object)
    def _show_asked(self, name: str, number: float | None) -> None:
        """A number that is asked about stands on its curve, crossed, until it is answered."""
        at = float(self.desk.as_of)
        self.drying.plot.show_asked(at, number if name == "1" else None)
        self.ferment.plot.show_asked(at, number if name == "ph" else None)

    def ask_about_file(self, question: Question | None) -> None:
        """Ask where a file of the watched folder belongs; the keys stay where they are. None asks no more."""
        if question is None:
            self.file.close_up()
        else:
            self.file.resize(self.width(), self.file.height())
            self.file.ask(question, self.desk.words, look().px(60), take_keys=False)
        self._lay_out()

    def family(self) -> None:
        """Where this lot came from and went, on the page of its family."""
        if self.story is not None:
            self.desk.go(Target("family", self.story.card.code))

    def next_vessel(self) -> None:
        """The ferment of the next vessel the lot was in."""
        if self.story is not None and self.story.ferments:
            self.vessel = (self.vessel + 1) % len(self.story.ferments)
            self._show_ferment()

    def _show_ferment(self) -> None:
        assert self.story is not None
        ferments = self.story.ferments
        self.vessel = min(self.vessel, max(0, len(ferments) - 1))
        several = len(ferments) > 1
        self.ferment.note = self.tr("f: next of {n}").format(n=len(ferments)) if several else ""
        self.ferment.show_figure(ferments[self.vessel] if ferments else None)

    def toggle_tables(self) -> None:
        """Turn the focused picture, or else both curves, into tables and back."""
        pictures = (self.ferment, self.drying, self.river, self.balance, self.numbers, self.worked, self.strip)
        focused = [p for p in pictures if p.isVisible() and (p.hasFocus() or p.isAncestorOf(self._focused()))]
        for picture in focused or [c for c in (self.ferment, self.drying) if c.isVisible() and c.figure is not None]:
            picture.toggle_twin()

    def _focused(self) -> QWidget:
        return self.window().focusWidget() or self

    def turn(self) -> None:
        """Show what was dropped in place of the curves, or the curves again."""
        if self.dropped or self.turned:
            self.turned = not self.turned
            self._lay_out()

    # room

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._lay_out()

    def _wanted(self) -> dict[str, int]:
        """The bands below the curves that have something to show, and their heights [px]."""
        px, story = look().px, self.story
        assert story is not None
        if self.worked.code:
            return {"worked": self.worked.height_for(self.width())}
        wanted = {"balance": px(BALANCE_PX) if story.balance else 0, "river": px(RIVER_PX) if story.river else 0}
        wanted |= {"numbers": px(NUMBERS_PX) if story.normals else 0}
        wanted |= {"notes": self.notes.height_for(self.width())}
        return {name: tall for name, tall in wanted.items() if tall}

    @Slot()
    def _lay_out(self) -> None:
        if self.story is None:
            return
        px, width = look().px, self.width()
        gap = px(GAP_PX)
        self._rules = []
        self.title.setGeometry(0, 0, width, px(TITLE_PX))
        y = px(TITLE_PX) + px(4)
        form = self.form.height_px()
        self.form.setGeometry(0, y, width, form)
        self.strip.setVisible(not form)
        self.strip.setGeometry(0, y, width, px(STRIP_PX))
        y += (form or px(STRIP_PX)) + gap // 2
        curves = self.story.drying is not None or bool(self.story.ferments)
        if self.worked.code:  # curves lower than that say nothing; the words have the room to themselves
            curves = curves and self.height() - y - self.worked.height_for(width) - 3 * gap >= px(CHARTS_LEAST_PX)
        asked = self.file.height_px()
        self.file.setGeometry(0, y, width, asked)
        y += asked + (gap if asked else 0)
        if curves and not self.turned:
            y = self._rule(y) + gap
        self.notes.all = self.turned
        wanted = self._wanted()
        dropped = self._fit(wanted, self.height() - y - (px(CHARTS_LEAST_PX) + gap if curves else 0), gap)
        if self.turned and not dropped:
            self.turned = False
        shown = tuple(name for name in wanted if self.turned or name not in dropped)
        self.notes.all = self.turned
        below = sum(wanted[name] + 2 * gap for name in shown)
        tall = max(0, self.height() - y - below)
        self._curves(QRect(0, y, width, tall), curves and not self.turned)
        if curves and not self.turned:
            y += tall
        elif self.turned:
            y -= gap
        for name in ("balance", "river", "numbers", "notes", "worked"):
            band: QWidget = getattr(self, name)
            band.setVisible(name in shown)
            if name in shown:
                y = self._rule(y + gap // 2) + gap
                band.setGeometry(0, y, width, wanted[name])
                y += wanted[name] + gap // 2
        if dropped != self.dropped:
            self.dropped = dropped
            self.dropped_changed.emit()
        self.update()

    def _fit(self, wanted: dict[str, int], room: int, gap: int) -> tuple[str, ...]:
        """Which bands have no room, dropped in the stated order; in the order of the page."""
        kept = dict(wanted)
        for name in DROPS:
            if sum(tall + 2 * gap for tall in kept.values()) <= room:
                break
            kept.pop(name, None)
        return tuple(name for name in wanted if name not in kept)

    def _curves(self, box: QRect, shown: bool) -> None:
        """Ferment at the left, drying beside it; one alone takes the whole width."""
        assert self.story is not None
        px = look().px
        both = bool(self.story.ferments) and self.story.drying is not None
        wide = px(FERMENT_PX) if box.width() < px(1100) else round(box.width() * 0.34)
        left = QRect(box.left(), box.top(), wide if both else box.width(), box.height())
        right = QRect(wide + px(GUTTER_PX), box.top(), box.width() - wide - px(GUTTER_PX), box.height())
        self.ferment.setVisible(shown and bool(self.story.ferments))
        self.drying.setVisible(shown and self.story.drying is not None)
        self.ferment.setGeometry(left)
        self.drying.setGeometry(right if both else box)
        self._between = QRect(wide + px(GUTTER_PX) // 2, box.top(), 1, box.height()) if both and shown else QRect()

    def _rule(self, y: int) -> int:
        self._rules.append(y)
        return y

    def paintEvent(self, event: QPaintEvent) -> None:
        with Ink(self) as ink:
            if self.story is None:
                return
            for y in self._rules:
                ink.level(0, self.width(), y + 0.5, 1, "hair")
            if self._between.isValid():
                box = self._between
                ink.upright(box.left() + 0.5, box.top(), box.bottom(), 1, "hair")

    def pictures(self) -> Sequence[QWidget]:
        """Everything here that can be read aloud, in the order of the page."""
        found = (self.strip, self.ferment, self.drying, self.balance, self.river, self.numbers, self.notes, self.worked)
        return [picture for picture in found if picture.isVisible()]
