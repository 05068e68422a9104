"""Two to six lots over one another: codes typed into one box, the lines, and what may be concluded from them.

Enter adds a lot, `-` in the empty box takes the last away, `d` turns what the lines run against.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QKeyEvent, QPaintEvent
from PySide6.QtWidgets import QLineEdit, QWidget

from farmdesk.desk.charts.chart import Chart
from farmdesk.desk.go import Target
from farmdesk.desk.pages import Action, Desk, Page
from farmdesk.desk.theme import SANS, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.drawn import Drawn
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.keys import HIGH_PX as KEYS_PX
from farmdesk.desk.widgets.keys import KeyRow
from farmdesk.desk.widgets.title import HEIGHT_PX as TITLE_PX
from farmdesk.desk.widgets.title import Title
from farmdesk.work.compare import MOST_LOTS, X_KINDS, CompareStory, Other
from farmdesk.work.portions import block_words

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

MARGIN_PX, SIDE_PX, GUTTER_PX, BOX_PX, ROW_PX, OTHER_PX = 20, 400, 32, 34, 21, 24


class CodeBox(QLineEdit):
    """One more code. While it is empty, letters and `-` belong to the page."""

    def __init__(self, page: ComparePage) -> None:
        super().__init__(page)
        self.page = page
        self.setAccessibleName(self.tr("Code of one more lot; Enter adds it, minus takes the last away"))
        self.setPlaceholderText(self.tr("one more code, Enter; − takes the last away"))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        typed, empty = event.text(), not self.text()
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.page.add(self.text())
        elif event.key() == Qt.Key.Key_Escape and not empty:
            self.clear()
        elif empty and typed == "-":
            self.page.drop()
        elif empty and (typed.isalpha() or event.key() == Qt.Key.Key_Escape):
            event.ignore()
        else:
            super().keyPressEvent(event)


class Conclusions(Drawn):
    """What may and may not be concluded, in paragraphs; down and up where they are more than there is room for.

    Under them, while there is room and another line can be told apart, lots that could be laid over the first.
    """

    def __init__(self, desk: Desk, parent: QWidget) -> None:
        super().__init__(parent)
        self.desk = desk
        self.said: tuple[str, ...] = ()
        self.others: tuple[Other, ...] = ()
        self.first = 0

    def show_said(self, said: tuple[str, ...], others: tuple[Other, ...]) -> None:
        """Show these."""
        self.said, self.others, self.first = said, others, 0
        self.told()

    def sentence(self) -> str:
        return " ".join(self.said)

    def paint(self, ink: Ink) -> None:
        px = look().px
        ink.heading(0, px(18), self.tr("What may be concluded"))
        y: float = px(44)
        for i, text in enumerate(self.said[self.first :]):
            rows = ink.lines(text, self.width(), 15, family=SERIF)
            if i and y + px(ROW_PX) * (len(rows) - 1) > self.height():
                left = len(self.said) - self.first - i
                ink.text(0, self.height() - px(4), self.tr("↓ {n} more").format(n=left), 14, color="ink2", family=SANS)
                return
            for row in rows:
                ink.text(0, y, row, 15, family=SERIF)
                y += px(ROW_PX)
            y += px(10)
        self._paint_others(ink, y + px(14))

    def _paint_others(self, ink: Ink, top: float) -> None:
        px = look().px
        others = self.others[: int((self.height() - top - px(12)) / px(OTHER_PX))]
        if not others:
            return
        ink.heading(0, top, self.tr("To lay over it"))
        for i, other in enumerate(others, start=1):
            y = top + px(6) + i * px(OTHER_PX)
            ink.text(0, y, other.code, 15, SEMIBOLD)
            words = [self.desk.words.say(other.method)]
            if other.blocks:
                words.append(
                    self.tr("block {blocks}").format(blocks=self.desk.words.say(block_words(" ".join(other.blocks))))
                )
            ink.text(px(72), y, ", ".join(words), 15)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        step = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1}.get(Qt.Key(event.key()), 0)
        if step and 0 <= self.first + step < len(self.said):
            self.first += step
            self.update()
        elif not step:
            event.ignore()


class ComparePage(Page):
    place = "lots"

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, parent)
        self.setWindowTitle(self.tr("Over one another"))
        self.codes: tuple[str, ...] = ()
        self.x_kind = X_KINDS[0]
        self.title = Title(desk, self)
        self.box = CodeBox(self)
        self.chart = Chart(desk, self)
        self.side = Conclusions(desk, self)
        self.keys = KeyRow(self)
        self.setFocusProxy(self.box)

    # asking and showing

    def query(self, farm: OpenFarm, at_utc_s: int) -> CompareStory | None:
        from farmdesk.work.compare import compare_story

        lots = farm.seen(at_utc_s).lots
        codes = [code for code in self.codes if code in lots] or list(lots)[-1:]
        return compare_story(farm, codes, at_utc_s, self.x_kind) if codes else None

    def show_story(self, story: CompareStory | None) -> None:
        if story is None:
            self.title.say(self.windowTitle(), self.tr("No lot has begun."))
            return
        say = self.desk.words.say
        self.codes = story.codes
        self.title.say(self.windowTitle(), ", ".join(story.codes))
        self.chart.show_figure(story.figure)
        room = len(story.codes) < MOST_LOTS
        self.side.show_said(tuple(say(text) for text in story.said), story.others if room else ())
        self.setAccessibleName(f"{self.title.accessibleName()}. {say(story.figure.sentence)}")
        self.keys.show_actions(self.letters())
        self.update()

    def open_at(self, target: Target) -> None:
        if target.kind == "compare" and target.value not in self.codes:
            self.codes = (target.value,)
            self.refresh()

    def letters(self) -> Sequence[Action]:
        following = {
            "days": self.tr("days since spread"), "time": self.tr("dates"), "good_h": self.tr("good hours"), "h20": self.tr("ferments"),
        }  # fmt: skip
        words = self.tr("picture") if self.chart.as_table else self.tr("table")
        return [
            Action("d", following[self._next()], self._turn_axis), Action("t", words, self._table),
            Action("o", self.tr("the lot"), self._back),
        ]  # fmt: skip

    def _next(self) -> str:
        return X_KINDS[(X_KINDS.index(self.x_kind) + 1) % len(X_KINDS)]

    def _turn_axis(self) -> None:
        self.x_kind = self._next()
        self.refresh()

    def _table(self) -> None:
        self.chart.toggle_twin()
        self.keys.show_actions(self.letters())

    def _back(self) -> None:
        if self.codes:
            self.desk.go(Target("lot", self.codes[0]))

    # which lots

    def add(self, typed: str) -> None:
        """Lay one more lot over the others; what cannot be read stays in the box."""
        if not typed.strip():
            return
        if len(self.codes) >= MOST_LOTS:
            self.desk.tell(self.tr("More than {n} lines tell nothing apart.").format(n=MOST_LOTS))
            return
        at_utc_s = self.desk.as_of

        def find(farm: OpenFarm) -> str:
            from farmdesk.work.lots import lot_of
            from farmdesk.work.picking import read_lot

            return lot_of(farm.seen(at_utc_s), read_lot(farm, typed)).code

        self.desk.lanes.ask(find, self._found, self._refused)

    @Slot(str)
    def _found(self, code: str) -> None:
        self.box.clear()
        self.desk.tell("")
        if code not in self.codes:
            self.codes = (*self.codes, code)
            self.refresh()

    def drop(self) -> None:
        """Take the last lot away; one stays."""
        if len(self.codes) > 1:
            self.codes = self.codes[:-1]
            self.refresh()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self._back()
        else:
            event.ignore()

    # room

    def lay_out(self) -> None:
        px = look().px
        left, wide = px(MARGIN_PX), self.width() - 2 * px(MARGIN_PX)
        top, bottom = px(TITLE_PX + 18), self.height() - px(KEYS_PX + 10)
        room = wide - px(SIDE_PX + GUTTER_PX)
        self.title.setGeometry(left, px(8), wide, px(TITLE_PX))
        self.box.setGeometry(left, top, min(room, px(360)), px(BOX_PX))
        self.chart.setGeometry(left, top + px(BOX_PX + 10), room, bottom - top - px(BOX_PX + 10))
        self.side.setGeometry(left + room + px(GUTTER_PX), top, px(SIDE_PX), bottom - top)
        self.keys.move(left, self.height() - px(KEYS_PX + 4))

    def paintEvent(self, event: QPaintEvent) -> None:
        px = look().px
        with Ink(self) as ink:
            x = self.width() - px(MARGIN_PX + SIDE_PX + GUTTER_PX // 2)
            ink.upright(x, px(TITLE_PX + 18), self.height() - px(KEYS_PX + 10), 1, "hair")
