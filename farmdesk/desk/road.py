"""The road: the band at the top. Three views of time, the places in the order the coffee meets them, the office.

Under each place stands what lies there now, so the way to a page is itself a picture of the season.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any

from PySide6.QtCore import QEvent, QObject, QPointF, QRect, Qt, Signal, Slot
from PySide6.QtGui import QAction, QEnterEvent, QKeyEvent, QPainterPath, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QAbstractButton, QMenu, QWidget

from farmdesk.desk.go import Known
from farmdesk.desk.pages import Desk
from farmdesk.desk.theme import SEMIBOLD, look
from farmdesk.desk.widgets.ink import Ink, Measure
from farmdesk.text import Day, Moment
from farmdesk.work.stories import RoadStory

HEIGHT_PX = 56
TIMES = ("today", "season", "lots")
PLACES = ("picking", "ferments", "yard", "store", "mill", "cup", "samples")
OFFICE = ("notebook", "papers", "farm")
FOLDS_BELOW_PX = 1180
BOX_MOST_PX = 300


def road_query(farm: Any, at_utc_s: int) -> tuple[RoadStory, Known]:
    """The road's story, and what can be typed to go somewhere; on the desk lane."""
    from farmdesk.work.road import road_story

    things, lots = farm.things, farm.seen(at_utc_s).lots
    known = Known(tuple(sorted(lots)), tuple(things.places), tuple(things.vessels), None, things.farm.season)
    return road_story(farm, at_utc_s), known


class RoadAsker(QObject):
    """Asks for the road; while an answer is on its way one more question is kept. `answered` carries what came."""

    answered = Signal(object)

    def __init__(
        self, desk: Desk, query: Callable[[Any, int], tuple[RoadStory, Known]], parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self.desk, self.query = desk, query
        self._asking = self._again = False

    def ask(self) -> None:
        """Ask at the instant of the handle."""
        if self._asking:
            self._again = True
            return
        self._asking = True
        at_utc_s, query = self.desk.as_of, self.query
        self.desk.lanes.ask(lambda farm: query(farm, at_utc_s), self._came, self._refused)

    @Slot(object)
    def _came(self, answer: object) -> None:
        self._asking = False
        self.answered.emit(answer)
        if self._again:
            self._again = False
            self.ask()

    @Slot(object)
    def _refused(self, error: Exception) -> None:
        self._asking = False
        self.desk.lanes.stray(error)


class RoadItem(QAbstractButton):
    """One word of the road and what stands under it."""

    def __init__(self, name: str, road: Road) -> None:
        super().__init__(road)
        self.road = road
        self.name, self.plain, self.under = name, "", ""
        self.letter, self.letter_at = "", -1
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)

    def say(self, words: str, under: str) -> None:
        """The word, with & before its Alt letter, and what lies there."""
        # Qt's own mnemonics click only after a tenth of a second, so the window handles Alt itself
        words = words.replace("&&", "\0")
        self.letter_at = words.find("&")
        self.letter = words[self.letter_at + 1].lower() if self.letter_at >= 0 else ""
        self.plain = words.replace("&", "").replace("\0", "&")
        self.under = under
        self.setAccessibleName(f"{self.plain}, {under}" if under not in ("", "—") else self.plain)
        self.update()

    def wide(self) -> float:
        """How much room its words take [px]."""
        ink = Measure()
        return max(ink.width(self.plain, 17, SEMIBOLD), ink.width(self.under, 14))

    def paintEvent(self, event: QPaintEvent) -> None:
        px = look().px
        road = self.road
        chosen = road.chosen == self.name
        with Ink(self) as ink:
            width, height = self.width(), self.height()
            pad = px(8)
            if chosen:
                ink.fill(0, 0, width, height, "paper")
                ink.fill(0, 0, width, 3, "ink")
                ink.upright(0.5, 0, height, 1, "rule")
                ink.upright(width - 0.5, 0, height, 1, "rule")
            elif self.underMouse():
                ink.fill(0, px(12), width, height - px(12) - 1, "night")
            ink.text(pad, px(29), self.plain, 17, SEMIBOLD)
            ink.text(pad, px(47), self.under, 14, color="ink2")
            if road.letters_shown and self.letter:
                left = ink.width(self.plain[: self.letter_at], 17, SEMIBOLD)
                ink.fill(pad + left, px(31), ink.width(self.plain[self.letter_at], 17, SEMIBOLD), 2, "ink")
            if self.hasFocus():
                ink.frame(0, 0, width, height, 3, "focus")

    def enterEvent(self, event: QEnterEvent) -> None:
        self.update()

    def leaveEvent(self, event: QEvent) -> None:
        self.update()


class Road(QWidget):
    """`went` carries the name of the item that was chosen."""

    went = Signal(str)

    def __init__(self, go_box: QWidget, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.chosen = ""
        self.letters_shown = False
        self._folded = False
        self.items = {name: RoadItem(name, self) for name in (*TIMES, *PLACES, *OFFICE, "office")}
        for item in self.items.values():
            item.clicked.connect(self._clicked)
        self.line = _Line(self)
        self.go_box = go_box
        go_box.setParent(self)
        self.setAccessibleName(self.tr("Road"))
        self.say({})

    def names(self) -> dict[str, str]:
        """The words of the road, & before each Alt letter."""
        return {
            "today": self.tr("&Today"), "season": self.tr("&Season"), "lots": self.tr("&Lots"),
            "picking": self.tr("&Picking"), "ferments": self.tr("&Ferments"), "yard": self.tr("&Yard"),
            "store": self.tr("St&ore"), "mill": self.tr("&Mill"), "cup": self.tr("&Cup && grade"),
            "samples": self.tr("S&amples && sales"), "notebook": self.tr("&Notebook"), "papers": self.tr("Pap&ers"),
            "farm": self.tr("Fa&rm"),
            "office": self.tr("Off&ice"),
        }  # fmt: skip

    def say(self, under: Mapping[str, str]) -> None:
        """What stands under each item; — where nothing lies."""
        names = self.names()
        for name, item in self.items.items():
            item.say(names[name], under.get(name, ""))
        self._lay_out()

    def page_names(self) -> dict[str, str]:
        """Every word of the road, and the page or place it names."""
        return {item.plain: name for name, item in self.items.items() if name != "office"}

    def words_under(self, story: RoadStory, season: str, desk: Desk) -> dict[str, str]:
        """What a story puts under each item."""
        say = desk.words.say
        under = {name: say(text) if text is not None else "—" for name, text in story.under.items()}
        under["today"] = say(Day(story.today, weekday=True))
        under["season"] = self.tr("day {n}").format(n=story.work_day_n)
        under["lots"] = self.tr("{n} begun").format(n=story.begun)
        under["notebook"] = say(Moment(desk.time.local(story.known_utc_s))) if story.known_utc_s else "—"
        under["farm"] = self.tr("season {code}").format(code=season) if season else ""
        return under

    def choose(self, name: str) -> None:
        """Light the item of the page that is shown."""
        self.chosen = name
        self.update()
        for item in self.items.values():
            item.update()

    def show_letters(self, shown: bool) -> None:
        """Underline the Alt letters while Alt is held."""
        if shown != self.letters_shown:
            self.letters_shown = shown
            for item in self.items.values():
                item.update()

    def item_of(self, letter: str) -> RoadItem | None:
        """The item an Alt letter belongs to."""
        return next((item for item in self.items.values() if item.letter == letter.lower() and item.isVisible()), None)

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._lay_out()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        event.ignore()

    def _clicked(self) -> None:
        item = self.sender()
        assert isinstance(item, RoadItem)
        if item.name == "office":
            menu = QMenu(self)
            for name in OFFICE:
                menu.addAction(self.items[name].plain).setData(name)
            menu.triggered.connect(self._picked)
            menu.popup(self.mapToGlobal(QRect(item.geometry()).bottomLeft()))
            return
        self.went.emit(item.name)

    def _picked(self, action: QAction) -> None:
        self.went.emit(action.data())

    def _lay_out(self) -> None:
        """Groups from left to right; the gaps give way first, then the office folds into one word."""
        px = look().px
        wide = {name: item.wide() for name, item in self.items.items()}
        box = px(184)
        room = self.width() - px(20) - px(20) - box

        def needed(office: Sequence[str], gap: float) -> float:
            names = (*TIMES, *PLACES, *office)
            return sum(wide[n] for n in names) + gap * (len(names) - 1) + 2.2 * gap

        self._folded = self.width() < px(FOLDS_BELOW_PX) or needed(OFFICE, px(12)) > room
        office = ("office",) if self._folded else OFFICE
        for name in (*OFFICE, "office"):
            self.items[name].setVisible(name in office)
        spare = room - needed(office, 0)
        gap = max(px(8), min(px(24), spare / (len(TIMES) + len(PLACES) + len(office) + 2.2)))
        x = float(px(20))
        for group in (TIMES, PLACES, office):
            for name in group:
                item = self.items[name]
                left, right = round(x - px(8)), round(x + wide[name] + px(8))
                item.setGeometry(left, 0, right - left, self.height())
                x += wide[name] + gap
            x += 1.1 * gap
        left = max(round(min(x - gap, self.width() - px(20) - box)), self.width() - px(20) - px(BOX_MOST_PX))
        self.go_box.setGeometry(left, px(12), self.width() - px(20) - left, px(32))
        self.line.setGeometry(0, 0, self.width(), px(16))
        self.line.raise_()
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        with Ink(self) as ink:
            ink.fill(0, 0, self.width(), self.height(), "band")
            left, right = 0, self.width()
            chosen = self.items.get(self.chosen)
            y = self.height() - 0.5
            if chosen is not None and chosen.isVisible():
                ink.level(left, chosen.x(), y, 1, "rule")
                left = chosen.x() + chosen.width()
            ink.level(left, right, y, 1, "rule")


class _Line(QWidget):
    """The drawn line the places hang on: it falls from the hill to the yard and runs level to the buyer."""

    def __init__(self, road: Road) -> None:
        super().__init__(road)
        self.road = road
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)

    def paintEvent(self, event: QPaintEvent) -> None:
        road, px = self.road, look().px
        yard = PLACES.index("yard")
        items = [road.items[name] for name in PLACES]
        points = [
            QPointF(item.x() + px(8) + 1.5, px(4) + (px(11) - px(4)) * min(1.0, i / yard))
            for i, item in enumerate(items)
        ]
        path = QPainterPath(points[0])
        for point in points[1:]:
            path.lineTo(point)
        path.lineTo(items[-1].x() + items[-1].width() - px(8), points[-1].y())
        with Ink(self) as ink:
            ink.shape(path, None, 1.2, "rule")
            for item, point in zip(items, points, strict=True):
                dot = QPainterPath()
                dot.addEllipse(point, px(3), px(3))
                ink.shape(dot, "ink" if item.name == road.chosen else "band", 1.3, "ink")
