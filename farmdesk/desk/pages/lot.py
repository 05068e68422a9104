"""One lot: its strip, its two curves, its weights, its numbers beside the own normal, and what is doubtful.

When the height is short, bands drop in this order: numbers, weight river, mill, notes. What is dropped
stands behind the key `m`, in place of the curves. An open reading row takes the room of the strip.
"""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QRect, QSize, Qt, Signal, Slot
from PySide6.QtGui import QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QAbstractButton, QWidget

from farmdesk.desk.charts.balance import Balance
from farmdesk.desk.charts.chart import Chart
from farmdesk.desk.charts.river import River
from farmdesk.desk.go import Target
from farmdesk.desk.pages import Desk
from farmdesk.desk.pages.reading_form import ReadingForm
from farmdesk.desk.theme import BOLD, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.drawn import Drawn
from farmdesk.desk.widgets.ink import Ink, Measure
from farmdesk.desk.widgets.strip import StripWidget
from farmdesk.desk.widgets.title import HEIGHT_PX as TITLE_PX
from farmdesk.desk.widgets.title import Title
from farmdesk.text import Text, Words, kg
from farmdesk.work.stories import LotStory, Normal

STRIP_PX, CHARTS_LEAST_PX, BALANCE_PX, RIVER_PX, NUMBERS_PX = 68, 206, 74, 126, 62
FERMENT_PX, GUTTER_PX, GAP_PX = 280, 32, 6
NORMAL_OF_PX = 252  # the first column of the numbers
NOTES_MOST = 4  # sentences; more stand behind `m`
DROPS = ("numbers", "river", "balance", "notes")


class Numbers(Drawn):
    """As measured, and the own normal of the method under it."""

    def __init__(self, words: Words, parent: QWidget) -> None:
        super().__init__(parent)
        self.words = words
        self.rows: tuple[Normal, ...] = ()
        self.of: Text | None = None

    def show_normals(self, rows: tuple[Normal, ...], of: Text) -> None:
        """Show these numbers."""
        self.rows, self.of = rows, of
        self.told()

    def _cells(self) -> list[tuple[str, str, str, bool]]:
        say, missing = self.words.say, self.tr("not measured")
        return [
            (say(row.name), say(row.own) if row.own else missing, say(row.normal) if row.normal else "–", row.unusual)
            for row in self.rows
        ]

    def sentence(self) -> str:
        of = self.words.say(self.of) if self.of else ""
        return "; ".join(
            self.tr("{name} {own}, {of} {normal}").format(name=name, own=own, of=of, normal=normal)
            for name, own, normal, _ in self._cells()
        )

    def table(self) -> tuple[list[str], list[list[str]]]:
        of = self.words.say(self.of) if self.of else ""
        return ["", self.tr("as measured"), of], [list(cell[:3]) for cell in self._cells()]

    def _columns(self, ink: Ink, room: float) -> list[tuple[tuple[str, str, str, bool], float]]:
        """The cells that have room, and how wide each is; what was measured comes before what was not."""
        missing = self.tr("not measured")
        cells = self._cells()
        wanted: list[tuple[int, float]] = []
        for i in sorted(range(len(cells)), key=lambda i: (cells[i][1] == missing, i)):
            name, own, normal, _ = cells[i]
            wide = max(ink.width(name, 14), ink.width(own, 17, BOLD) if own != missing else 0, ink.width(normal, 15))
            wide = max(wide, ink.width(missing, 14)) if own == missing else wide
            if sum(w for _, w in wanted) + wide + look().px(20) * len(wanted) > room:
                break
            wanted.append((i, wide))
        return [(cells[i], wide) for i, wide in sorted(wanted)]

    def paint(self, ink: Ink) -> None:
        px = look().px
        if self.of is None:
            return
        first = px(NORMAL_OF_PX)
        ink.text(0, px(37), self.tr("as measured"), 14, color="ink2")
        ink.text(0, px(57), ink.fitted(self.words.say(self.of), first - px(8), 14), 14, color="ink2")
        columns = self._columns(ink, self.width() - first)
        spare = self.width() - first - sum(wide for _, wide in columns)
        gap = min(spare / max(1, len(columns) - 1), px(52))
        x: float = first
        for (name, own, normal, unusual), wide in columns:
            ink.text(x, px(15), name, 14, color="ink2")
            if own == self.tr("not measured"):
                ink.text(x, px(37), own, 14, color="ink2")
            else:
                end = ink.text(x, px(37), own, 17, BOLD)
                if unusual:  # outside its usual range: a rule under it, for colour means only time
                    ink.level(x, end, px(41), 1.6, "ink")
            ink.text(x, px(57), normal, 15)
            x += wide + gap

    def paint_focus(self, ink: Ink) -> None:
        ink.frame(look().px(NORMAL_OF_PX) - 6, 0, self.width() - look().px(NORMAL_OF_PX) + 6, self.height(), 3, "focus")


class LotLink(QAbstractButton):
    """Another lot of the family: Enter or a click goes there."""

    def __init__(self, desk: Desk, code: str, grams: int, parent: QWidget) -> None:
        super().__init__(parent)
        self.desk, self.code = desk, code
        self.setText(f"{code} {desk.words.say(kg(grams))}")
        self.setAccessibleName(self.tr("go to lot {code}").format(code=code))
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.clicked.connect(self._go)

    def _go(self) -> None:
        self.desk.go(Target("lot", self.code))

    def sizeHint(self) -> QSize:
        return QSize(round(Measure().width(self.text(), 15, SEMIBOLD)) + look().px(10), look().px(24))

    def paintEvent(self, event: QPaintEvent) -> None:
        px = look().px
        with Ink(self) as ink:
            end = ink.text(px(4), px(17), self.text(), 15, SEMIBOLD)
            ink.level(px(4), end, px(20), 1, "ink")
            if self.hasFocus():
                ink.frame(0, 0, self.width(), self.height(), 3, "focus")

    def keyPressEvent(self, event) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.click()
        else:
            super().keyPressEvent(event)


class Notes(QWidget):
    """What differed from the method, what is doubtful, what is unexplained, and the family."""

    def __init__(self, desk: Desk, parent: QWidget) -> None:
        super().__init__(parent)
        self.desk = desk
        self.lines: list[tuple[str, str]] = []  # swatch or "", sentence
        self.links: list[LotLink] = []
        self.family: list[tuple[str, list[LotLink]]] = []
        self.all = False

    def show_story(self, story: LotStory) -> None:
        """Collect the sentences of a lot."""
        say = self.desk.words.say
        self.lines = [("doubtful", say(item.text)) for item in story.unexplained if item.flagged]
        self.lines += [("doubtful", say(text)) for text in story.doubts]
        self.lines += [("", say(text)) for text in story.deviations]
        for link in self.links:
            link.deleteLater()
        self.links, self.family = [], []
        for name, reached in ((self.tr("made from"), story.parents), (self.tr("went into"), story.children)):
            links = [LotLink(self.desk, lot.code, lot.grams, self) for lot in reached]
            if links:
                self.family.append((name, links))
                self.links += links
        for link in self.links:
            link.show()
        told = [text for _, text in self.lines]
        told += [f"{name} {', '.join(link.text() for link in links)}" for name, links in self.family]
        self.setAccessibleName(". ".join(told) or self.tr("Nothing differed from the method and nothing is doubtful."))
        self._lay_out()

    @property
    def empty(self) -> bool:
        """Whether there is nothing to say."""
        return not self.lines and not self.links

    def _rows(self, width: int) -> list[tuple[str, str]]:
        """Broken lines with their swatch; at most NOTES_MOST sentences unless all are wanted."""
        shown = self.lines if self.all else self.lines[:NOTES_MOST]
        rows = []
        for swatch, text in shown:
            for i, row in enumerate(Measure().lines(text, width - look().px(22), 15, family=SERIF)):
                rows.append((swatch if i == 0 else "-", row))
        if len(shown) < len(self.lines):
            rows.append(("-", self.tr("and {n} more: m").format(n=len(self.lines) - len(shown))))
        return rows

    def height_for(self, width: int) -> int:
        """How much room it needs at a width [px]."""
        if self.empty:
            return 0
        return look().px(4 + 20 * len(self._rows(width)) + (26 if self.links else 0))

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._lay_out()

    def _lay_out(self) -> None:
        px, x = look().px, 0
        y = self.height_for(self.width()) - px(26)
        for name, links in self.family:
            x += round(Measure().width(name, 15)) + px(6)
            for link in links:
                size = link.sizeHint()
                link.setGeometry(x, y, size.width(), size.height())
                x += size.width() + px(2)
            x += px(20)
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        px = look().px
        with Ink(self) as ink:
            y = px(16)
            for swatch, text in self._rows(self.width()):
                if swatch not in ("", "-"):
                    ink.swatch(0, y, swatch)
                ink.text(px(22) if swatch else 0, y, text, 15, family=SERIF)
                y += px(20)
            for name, links in self.family:
                first = links[0]
                ink.text(first.x() - px(2), first.y() + px(17), name, 15, color="ink2", align="right")


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
        self.strip = StripWidget(desk.time, desk.words, self)
        self.ferment, self.drying = Chart(desk, self), Chart(desk, self)
        self.balance, self.river = Balance(desk.words, self), River(desk.words, self)
        self.numbers, self.notes = Numbers(desk.words, self), Notes(desk, self)
        self.form.resized.connect(self._lay_out)
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
        self._lay_out()

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
        pictures = (self.ferment, self.drying, self.river, self.balance, self.numbers, self.strip)
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
        y = self._rule(y + (form or px(STRIP_PX)) + gap // 2) + gap
        curves = self.story.drying is not None or bool(self.story.ferments)
        self.notes.all = self.turned
        wanted = self._wanted()
        dropped = self._fit(wanted, self.height() - y - (px(CHARTS_LEAST_PX) + gap if curves else 0), gap)
        if self.turned and not dropped:
            self.turned = False
        shown = dropped if self.turned else tuple(name for name in wanted if name not in dropped)
        self.notes.all = self.turned
        below = sum(wanted[name] + 2 * gap for name in shown)
        tall = max(0, self.height() - y - below)
        self._curves(QRect(0, y, width, tall), curves and not self.turned)
        if curves and not self.turned:
            y += tall
        for name in ("balance", "river", "numbers", "notes"):
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
        found = (self.strip, self.ferment, self.drying, self.balance, self.river, self.numbers, self.notes)
        return [picture for picture in found if picture.isVisible()]
