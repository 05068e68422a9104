"""The yard to scale: beds where they stand, filled by what lies on them, the blue of their water.

This is how Today draws it: numbers and brackets outside the rows. The Yard page draws more (widgets/yard_full.py).
A bed is never moved for tidiness and never coloured by lot.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent, QPainterPath, QPen, QResizeEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.pages import Desk
from farmdesk.desk.theme import BOLD, look
from farmdesk.desk.widgets.drawn import Drawn
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.twin import Table
from farmdesk.text import pct
from farmdesk.work.stories import Lying, YardPlace, YardStory

MOST_PX_M = 22.0  # pixels a metre; 10.4 on Today and 16.8 on the Yard page come of the room at 1366 wide
OUTSIDE_PX = 46  # numbers and brackets at a row's outer end
GAP_PX = 2.5  # between a bed's edge and its frame


def short(code: str) -> str:
    """Inside a picture the season is dropped: `25-13W` is `13W`."""
    return code.split("-", 1)[-1]


def _around(rects: Iterable[QRectF]) -> QRectF:
    whole = QRectF()
    for rect in rects:
        whole = whole.united(rect)
    return whole


class YardPlan(Drawn):
    """The plan. `chosen` carries the code of a bed that was pressed or entered."""

    chosen = Signal(str)

    number_px = 15  # of the numbers outside the rows

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.desk = desk
        self.story: YardStory | None = None
        self.rects: dict[str, QRectF] = {}
        self.held = ""  # the bed that has the keys
        self._wanted = ""
        self.scale = 1.0
        self.setMouseTracking(True)

    def show_story(self, story: YardStory) -> None:
        """Draw the yard of this instant."""
        self.story = story
        self._lay_out()
        if self._wanted:
            self.held, self._wanted = self._wanted, ""
        if self.held not in self.rects:
            self.held = ""
        self.told()

    @property
    def _yard(self) -> YardStory:
        assert self.story is not None  # there are no beds to ask about before a story has come
        return self.story

    def hold(self, code: str) -> None:
        """Give a bed the keys."""
        self._wanted = code if self.story is None else ""  # its story may still be on the way
        self.held = code if code in self.rects else ""
        self.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.told()

    def sentence(self) -> str:
        if self.story is None:
            return ""
        said = [self.desk.words.say(self.story.headline)]
        place = next((p for p in self.story.places if p.code == self.held), None)
        if place is not None:
            said.append(" ".join(self._row(place)[:4]))
        return " ".join(said)

    def table(self) -> Table | None:
        if self.story is None:
            return None
        heads = [self.tr("place"), self.tr("lot"), self.tr("moisture"), self.tr("kg"), self.tr("still to leave")]
        return [*heads, self.tr("cover"), self.tr("due")], [self._row(place) for place in self.story.places]

    def _row(self, place: YardPlace) -> list[str]:
        say = self.desk.words.number
        lots, wet, kilos, litres = [], [], [], []
        for lies in place.lying:
            lots.append(lies.lot)
            wet.append(self._wet(lies) or self.tr("not measured"))
            kilos.append("" if lies.now_g is None else say(lies.now_g / 1000, 0, "kg"))
            litres.append("" if lies.water_left_g is None else say(lies.water_left_g / 1000, 0, "L"))
        cover = (
            self.tr("covered") if place.covered else (self.tr("open") if place.cover not in ("open", "roof") else "")
        )
        due = {"now": self.tr("now"), "today": self.tr("today")}.get(place.due, "")
        free = self.tr("{lot} comes").format(lot=place.arriving) if place.arriving else self.tr("free")
        return [place.code, " ".join(lots) or free, " ".join(wet), " ".join(kilos), " ".join(litres), cover, due]

    def _wet(self, lies: Lying) -> str:
        if lies.moisture_wb_frac is None:
            return ""
        say = self.desk.words.say
        about = lies.mark == "estimated"
        return say(pct(lies.moisture_wb_frac, 0, about=about))

    # where things stand

    def _lay_out(self) -> None:
        """Fit the plan: the beds' rows and what stands outside them, never larger than drawn to read."""
        self.rects = {}
        if self.story is None:
            return
        px = look().px
        places = [p for p in self.story.places if p.kind == "bed"]
        if not places:
            return
        stores = [m for m in self.story.marks if m.kind == "store"]
        top, low = max(p.y_m + p.depth_m for p in places), min(p.y_m for p in places)
        left, right = min(p.x_m for p in places), max(p.x_m + p.width_m for p in places)
        right = max([right, *(m.x_m + m.width_m for m in stores)])
        room_h, room_w = self.height() - 2 * px(OUTSIDE_PX), self.width() - px(16)
        most = look().scale * MOST_PX_M
        self.scale = min(room_h / (top - low), room_w / (right - left), most)
        self._left = px(12) - left * self.scale
        self._base = px(OUTSIDE_PX) + top * self.scale
        for place in places:
            self.rects[place.code] = self._rect(place.x_m, place.y_m, place.width_m, place.depth_m)

    def _rect(self, x_m: float, y_m: float, width_m: float, depth_m: float) -> QRectF:
        """Metres from the south-west corner to pixels; beds stand on whole pixels."""
        left, right = round(self._left + x_m * self.scale), round(self._left + (x_m + width_m) * self.scale)
        top, low = round(self._base - (y_m + depth_m) * self.scale), round(self._base - y_m * self.scale)
        return QRectF(left, top, right - left, low - top)

    @property
    def upper_row(self) -> QRectF:
        """The rectangle of the upper row of beds; empty where there is none."""
        return _around(rect for code, rect in self.rects.items() if self._upper(code))

    @property
    def beside(self) -> QRectF:
        """The beds that text may stand to the right of: the upper row, or all where none lies in the upper half."""
        upper = self.upper_row
        return _around(self.rects.values()) if upper.isNull() else upper

    def _upper(self, code: str) -> bool:
        place = self._place(code)
        return place.kind == "bed" and place.y_m + place.depth_m / 2 > self._yard.depth_m / 2

    def _place(self, code: str) -> YardPlace:
        return next(p for p in self._yard.places if p.code == code)

    # the drawing

    def paint(self, ink: Ink) -> None:
        if self.story is None:
            return
        self._paint_marks(ink)
        beds = [p for p in self.story.places if p.kind == "bed"]
        for place in beds:
            self._paint_bed(ink, place, self.rects[place.code])
        for upper in (True, False):
            row = sorted((p for p in beds if self._upper(p.code) == upper), key=lambda p: p.x_m)
            self._paint_outside(ink, row, upper)

    def _paint_marks(self, ink: Ink) -> None:
        for mark in self._yard.marks:
            if mark.kind == "tree":
                middle = QPointF(self._left + mark.x_m * self.scale, self._base - mark.y_m * self.scale)
                for radius, style in ((1.0, Qt.PenStyle.SolidLine), (0.86, Qt.PenStyle.DotLine)):
                    ring = QPainterPath()
                    ring.addEllipse(middle, mark.width_m * self.scale * radius, mark.width_m * self.scale * radius)
                    ink.painter.setRenderHint(ink.painter.RenderHint.Antialiasing)
                    ink.painter.strokePath(ring, QPen(look()["hair"], 1.2, style))
                    ink.painter.setRenderHint(ink.painter.RenderHint.Antialiasing, False)
            elif mark.kind == "store":
                rect = self._rect(mark.x_m, mark.y_m, mark.width_m, mark.depth_m)
                high = min(rect.height(), self.height() - 2 - rect.y())
                ink.frame(rect.x(), rect.y(), rect.width(), high, 1.6, "ink")
                ink.text(rect.center().x(), rect.y() - 6, self.tr("store"), 14, color="ink2", align="middle")

    def _paint_bed(self, ink: Ink, place: YardPlace, rect: QRectF) -> None:
        x, y, w, h = rect.x(), rect.y(), rect.width(), rect.height()
        if not place.lying:
            if place.arriving:
                ink.pattern(x + 1, y + 1, w - 2, h - 2, "expected")
            ink.frame(x, y, w, h, 1, "ink2" if place.arriving else "rule", dashed=True)
        else:
            self._paint_lying(ink, place.lying, rect)
            ink.frame(x, y, w, h, 1.1, "ink")
            if sum(lies.filled_frac for lies in place.lying) < 0.99:
                ink.frame(x, y, w, h, 1, "ink", dashed=True)
        if place.due:
            line = 4 if place.due == "now" else 2
            out = GAP_PX + line
            ink.frame(x - out, y - out, w + 2 * out, h + 2 * out, line, place.due)

    def _paint_lying(self, ink: Ink, lying: Sequence[Lying], rect: QRectF) -> None:
        """Lengthwise, from the south or west end, each as much of the length as it takes."""
        upright = rect.height() >= rect.width()
        at = rect.bottom() if upright else rect.left()
        for lies in lying:
            long = (rect.height() if upright else rect.width()) * min(1.0, lies.filled_frac)
            part = (
                QRectF(rect.x(), at - long, rect.width(), long)
                if upright
                else QRectF(at, rect.y(), long, rect.height())
            )
            at += -long if upright else long
            ground = look().water(lies.moisture_wb_frac)
            ink.fill(part.x(), part.y(), part.width(), part.height(), ground)
            kind = "doubtful" if lies.doubtful else "estimated" if lies.mark == "estimated" else ""
            if lies.moisture_wb_frac is None:
                kind = "doubtful"
            if kind:
                ink.pattern(part.x(), part.y(), part.width(), part.height(), kind, look().text_on(ground))

    def _paint_outside(self, ink: Ink, row: Sequence[YardPlace], upper: bool) -> None:
        """Numbers at the outer end, then a bracket for each lot's neighbouring beds."""
        px = look().px
        for place in row:
            rect = self.rects[place.code]
            y = rect.top() - px(8) if upper else rect.bottom() + px(18)
            ink.text(rect.center().x(), y, place.code, self.number_px, BOLD, align="middle")
        taken = -1e9
        groups = self._groups(row)
        for i, group in enumerate(groups):
            first, last = self.rects[group[0].code], self.rects[group[-1].code]
            left, right = first.left() - px(1), last.right() + px(1)
            if upper:
                line, tick, words_y = first.top() - px(25), px(5), first.top() - px(31)
            else:
                line, tick, words_y = first.bottom() + px(29), -px(5), first.bottom() + px(46)
            ink.level(left, right, line, 1, "ink")
            ink.upright(left + 0.5, line, line + tick, 1, "ink")
            ink.upright(right - 0.5, line, line + tick, 1, "ink")
            room = right - left + 2 * px(9)
            if i + 1 < len(groups):
                room = min(room, 2 * (self.rects[groups[i + 1][0].code].left() - (left + right) / 2))
            for words in self._labels(group):
                if ink.width(words, 14) <= max(room, right - left):
                    break
            middle = max((left + right) / 2, taken + px(2) + ink.width(words, 14) / 2)
            color = "ink" if group[0].lying else "ink2"
            taken = ink.text(middle - ink.width(words, 14) / 2, words_y, words, 14, color=color)

    def _groups(self, row: Sequence[YardPlace]) -> list[list[YardPlace]]:
        """Neighbours that hold the same lot at the same water."""
        groups: list[list[YardPlace]] = []
        for i, place in enumerate(row):
            key = self._same(place)
            if key is None:
                continue
            near = i > 0 and place.x_m - (row[i - 1].x_m + row[i - 1].width_m) < 2.5
            if near and groups and groups[-1][-1] is row[i - 1] and self._same(row[i - 1]) == key:
                groups[-1].append(place)
            else:
                groups.append([place])
        return groups

    def _same(self, place: YardPlace) -> tuple[str, ...] | None:
        if place.lying:
            return tuple(lies.lot for lies in place.lying)
        return (place.arriving,) if place.arriving else None

    def _labels(self, group: Sequence[YardPlace]) -> list[str]:
        """What a bracket may say, the fullest first."""
        if not group[0].lying:
            return [short(group[0].arriving)]
        lies = group[0].lying[0]
        codes = "+".join(short(one.lot) for one in group[0].lying)
        wet = self._wet(lies)
        same = {self._wet(one) for place in group for one in place.lying}
        return [f"{codes} {wet}", codes] if wet and len(same) == 1 else [codes]

    def paint_focus(self, ink: Ink) -> None:
        rect = self.rects.get(self.held)
        if rect is None:
            super().paint_focus(ink)
        else:
            ink.frame(rect.x() - 3, rect.y() - 3, rect.width() + 6, rect.height() + 6, 3, "focus")

    # hands

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._lay_out()

    def _at(self, point: QPointF) -> str:
        around = {code: rect.adjusted(-8, -30, 8, 30) for code, rect in self.rects.items()}
        hits = [code for code, rect in around.items() if rect.contains(point)]
        return min(hits, key=lambda c: abs(self.rects[c].center().x() - point.x()), default="")

    def mousePressEvent(self, event: QMouseEvent) -> None:
        code = self._at(event.position())
        if code:
            self.held = code
            self.told()
            self.chosen.emit(code)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        code = self._at(event.position())
        self.setCursor(Qt.CursorShape.PointingHandCursor if code else Qt.CursorShape.ArrowCursor)
        self.setToolTip(" · ".join(part for part in self._row(self._place(code)) if part) if code else "")

    def focusInEvent(self, event: QFocusEvent) -> None:
        if not self.held and self.rects:
            self.held = next(iter(self.rects))
            self.told()
        super().focusInEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        way: Mapping[int, tuple[int, int]] = {
            Qt.Key.Key_Left: (-1, 0), Qt.Key.Key_Right: (1, 0), Qt.Key.Key_Up: (0, -1), Qt.Key.Key_Down: (0, 1),
        }  # fmt: skip
        if event.key() in way and self.held in self.rects:
            self._step(*way[event.key()])
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.held:
            self.chosen.emit(self.held)
        else:
            event.ignore()

    def _step(self, dx: int, dy: int) -> None:
        """The nearest place in that direction; sideways only within the row."""
        here = self.rects[self.held].center()
        found = []
        for code, rect in self.rects.items():
            away = rect.center() - here
            ahead, aside = (away.x() * dx, abs(away.y())) if dx else (away.y() * dy, abs(away.x()))
            if ahead > 1 and (not dx or aside < 40):
                found.append((ahead + 2 * aside, code))
        if found:
            self.held = min(found)[1]
            self.told()
