"""What stands in words on a lot's page: its numbers beside the own normal, what is doubtful, its family."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QKeyEvent, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QAbstractButton, QWidget

from farmdesk.desk.go import Target
from farmdesk.desk.pages import Desk
from farmdesk.desk.theme import BOLD, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.drawn import Drawn
from farmdesk.desk.widgets.ink import Ink, Measure
from farmdesk.text import Text, Words, kg
from farmdesk.work.stories import LotStory, Normal

NORMAL_OF_PX = 252  # the first column of the numbers
NOTES_MOST = 4  # sentences; more stand behind `m`


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
        rows = ink.lines(self.words.say(self.of), first - px(8), 14)
        for i, row in enumerate(rows[:2]):
            ink.text(0, px(57 if len(rows) == 1 else 50 + 14 * i), row, 14 if len(rows) == 1 else 13, color="ink2")
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

    def keyPressEvent(self, event: QKeyEvent) -> None:
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
        self.more: list[tuple[str, str]] = []  # what is as it should be, told where there is room
        self.links: list[LotLink] = []
        self.family: list[tuple[str, list[LotLink]]] = []
        self.all = False

    def show_story(self, story: LotStory) -> None:
        """Collect the sentences of a lot."""
        say = self.desk.words.say
        self.lines = [("doubtful", say(item.text)) for item in story.unexplained if item.flagged]
        self.more = [("", say(item.text)) for item in story.unexplained if not item.flagged]
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
        return not self.lines and not self.links and not (self.all and self.more)

    def _rows(self, width: int) -> list[tuple[str, str]]:
        """Broken lines with their swatch; at most NOTES_MOST sentences unless all are wanted."""
        shown = self.lines + self.more if self.all else self.lines[:NOTES_MOST]
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
