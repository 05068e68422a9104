"""The yard as its own page draws it: code and moisture along each bed, litres outside, patio, covers in words.

True to scale throughout; the store hangs below the rows where its place is, and nothing is moved for tidiness.
"""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QFocusEvent, QKeyEvent

from farmdesk.desk.theme import BOLD, SEMIBOLD, look
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.yard import OUTSIDE_PX, YardPlan, short
from farmdesk.text import Moment, Num, pct
from farmdesk.work.portions import place_list
from farmdesk.work.stories import Lying, YardPlace

MOST_PX_M = 25.0  # pixels a metre at most; 16.8 at 1366 wide
MARGIN_PX = 12


class YardSheet(YardPlan):
    """The plan of the Yard page."""

    number_px = 17

    def _wet(self, lies: Lying) -> str:
        """`52.6 %`; `≈ 49 %` where it is estimated; `15.9 → 20.4 %` where it took up water."""
        if lies.moisture_wb_frac is None:
            return ""
        about = lies.mark == "estimated"
        now = self.desk.words.say(pct(lies.moisture_wb_frac, 0 if about else 1, about=about))
        if lies.was_wb_frac is None:
            return now
        return f"{self.desk.words.number(lies.was_wb_frac * 100, 1)} → {now}"

    # where things stand

    def _lay_out(self) -> None:
        """Fit everything drawn on the plan; a store below the rows may use the room of the brackets."""
        self.rects = {}
        if self.story is None or not self.story.places:
            return
        px, places = look().px, self.story.places
        stores = [m for m in self.story.marks if m.kind == "store"]
        top, low = max(p.y_m + p.depth_m for p in places), min(p.y_m for p in places)
        left, right = min(p.x_m for p in places), max(p.x_m + p.width_m for p in places)
        right = max([right, *(m.x_m + m.width_m for m in stores)])
        deep = max(0.0, low - min((m.y_m for m in stores), default=low))
        outside, high = px(OUTSIDE_PX), self.height()
        self.scale = min(
            (high - 2 * outside) / (top - low),
            (high - outside - 2) / (top - low + deep),
            (self.width() - 2 * px(MARGIN_PX)) / (right - left),
            look().scale * MOST_PX_M,
        )
        self._left = px(MARGIN_PX) - left * self.scale
        self._base = outside + top * self.scale
        for place in places:
            self.rects[place.code] = self._rect(place.x_m, place.y_m, place.width_m, place.depth_m)

    # keys: a page that has just been opened shows no ring until one of them is pressed

    def paint_focus(self, ink: Ink) -> None:
        if self.held in self.rects:
            super().paint_focus(ink)

    def focusInEvent(self, event: QFocusEvent) -> None:
        if event.reason() in (Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason):
            super().focusInEvent(event)
        else:
            self.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        arrows = (Qt.Key.Key_Left, Qt.Key.Key_Right, Qt.Key.Key_Up, Qt.Key.Key_Down)
        if not self.held and event.key() in arrows and self.rects:
            self.hold(next(iter(self.rects)))
        elif event.key() == Qt.Key.Key_Escape and self.held:
            self.held = ""
            self.told()
        else:
            super().keyPressEvent(event)

    # the drawing

    def paint(self, ink: Ink) -> None:
        if self.story is None:
            return
        cells = [p for p in self.story.places if p.kind != "bed"]
        for cell in cells:
            self._paint_cell(ink, cell, self.rects[cell.code])
        super().paint(ink)
        for place in self.story.places:
            if place.kind == "bed" and place.lying:
                self._write_along(ink, place.lying, self.rects[place.code])
        self._write_patio(ink, cells)
        self._write_covers(ink)
        self._paint_compass(ink)

    def _write_along(self, ink: Ink, lying: Sequence[Lying], rect: QRectF) -> None:
        """Code and moisture along the bed, read from the south or the west."""
        px, painter = look().px, ink.painter
        upright = rect.height() >= rect.width()
        whole, across = (rect.height(), rect.width()) if upright else (rect.width(), rect.height())
        at = 0.0
        for lies in lying:
            long, ground = whole * min(1.0, lies.filled_frac), look().water(lies.moisture_wb_frac)
            words, size = self._fitting(ink, lies, long - px(8), across)
            drop = px(size) * 0.34  # from the middle of the letters to their baseline
            painter.save()
            if upright:
                painter.translate(rect.center().x(), rect.bottom() - at - px(6))
                painter.rotate(-90)
            else:
                painter.translate(rect.left() + at + px(6), rect.center().y())
            if lies.mark == "estimated" or lies.doubtful or lies.moisture_wb_frac is None:
                wide = ink.width(words, size, SEMIBOLD)
                painter.fillRect(QRectF(-px(3), 1 - across / 2, wide + px(6), across - 2), ground)
            ink.text(0, round(drop), words, size, SEMIBOLD, look().text_on(ground))
            painter.restore()
            at += long

    def _fitting(self, ink: Ink, lies: Lying, room: float, across: float) -> tuple[str, int]:
        """The fullest words that fit along and across, and their size."""
        code = short(lies.lot)
        full = f"{code}   {self._wet(lies) or self.tr('not measured')}"
        for words in (full, code):
            for size in (17, 15, 14, 13):
                if ink.width(words, size, SEMIBOLD) <= room and (look().px(size) * 1.2 <= across or size == 13):
                    return words, size
        return "", 13

    def _paint_cell(self, ink: Ink, place: YardPlace, rect: QRectF) -> None:
        px = look().px
        x, y, w, h = rect.x(), rect.y(), rect.width() + 1, rect.height() + 1
        ground = look()["paper"]
        if place.lying:
            self._paint_lying(ink, place.lying, rect)
            ground = look().water(place.lying[0].moisture_wb_frac)
        ink.frame(x, y, w, h, 1, "ink" if place.lying else "hair")
        color = look().text_on(ground) if place.lying else "ink2"
        ink.text(x + px(7), y + px(18), place.code, 14, BOLD if place.lying else 400, color)
        for i, lies in enumerate(place.lying):
            ink.text(x + px(7), y + px(38 + 18 * i), f"{short(lies.lot)}  {self._wet(lies)}", 15, SEMIBOLD, color)
        if place.due:
            line = 4 if place.due == "now" else 2
            ink.frame(x - 3, y - 3, w + 6, h + 6, line, place.due)

    def _write_patio(self, ink: Ink, cells: Sequence[YardPlace]) -> None:
        if not cells or any(cell.lying for cell in cells):
            return
        names = f"{cells[0].code}–{cells[-1].code}" if len(cells) > 1 else cells[0].code
        rects = [self.rects[cell.code] for cell in cells]
        right, low = max(r.right() for r in rects), max(r.bottom() for r in rects)
        words = self.tr("patio {cells}, empty").format(cells=names)
        ink.text(right - look().px(4), low + look().px(18), words, 14, color="ink2", align="right")

    def _write_covers(self, ink: Ink) -> None:
        """What covers each group of beds, in words: between the rows, from the west."""
        px = look().px
        groups: dict[tuple[bool, str], list[YardPlace]] = {}
        for place in self._yard.places:
            if place.kind == "bed":
                groups.setdefault((not self._upper(place.code), place.cover), []).append(place)
        upper, lower = self.upper_row, [self.rects[p.code] for (low, _), ps in groups.items() if low for p in ps]
        between = lower and upper.height() > 0 and min(r.top() for r in lower) - upper.bottom() < px(60)
        spots: list[tuple[float, float, Sequence[YardPlace], bool]] = []
        for (low, _), places in sorted(groups.items(), key=lambda item: self.rects[item[1][0].code].left()):
            rects = [self.rects[p.code] for p in places]
            base: float
            if between:
                base = round((upper.bottom() + min(r.top() for r in lower)) / 2 + px(3))
            else:
                base = min(r.top() for r in rects) - px(10) if low else max(r.bottom() for r in rects) + px(18)
            spots.append((rects[0].left(), base, places, low))
        for brief in (False, True):
            words = [self.cover_words(places, bool(between), low, brief) for _, _, places, low in spots]
            ends: dict[float, float] = {}
            lefts = []
            for (left, base, _, _), said in zip(spots, words, strict=True):
                lefts.append(max(left, ends.get(base, -1e9) + px(28)))
                ends[base] = lefts[-1] + ink.width(said, 14)
            if max(ends.values(), default=0.0) <= self.width():
                break
        for left, (_, base, _, _), said in zip(lefts, spots, words, strict=True):
            ink.text(left, base, said, 14, color="ink2")

    def cover_words(
        self, places: Sequence[YardPlace], between: bool = False, low: bool = False, brief: bool = False
    ) -> str:
        """`hoops, down since Wed 22 Jan 13:20`; the roof says which row it covers where two share the line."""
        cover, on = places[0].cover, [p for p in places if p.covered]
        names = {"roof": self.tr("clear roof"), "hoops": self.tr("hoops"), "tarp": self.tr("hand tarps")}
        name = names.get(cover, self.tr("in the open"))
        if between and cover == "roof":
            return self.tr("{cover} below").format(cover=name) if low else self.tr("{cover} above").format(cover=name)
        if cover not in ("hoops", "tarp"):
            return name
        hoops = cover == "hoops"
        if not on:
            return self.tr("hoops, up") if hoops else self.tr("hand tarps, off")
        if len(on) < len(places):
            beds = place_list([p.code for p in on])
            words = self.tr("hoops, down over {beds}") if hoops else self.tr("hand tarps, on {beds}")
            return words.format(beds=beds)
        since = [p.covered_since_utc_s for p in on if p.covered_since_utc_s is not None]
        if brief or not since:
            return self.tr("hoops, down") if hoops else self.tr("hand tarps, on")
        when = self.desk.words.say(Moment(self.desk.time.local(min(since)), weekday=True))
        words = self.tr("hoops, down since {when}") if hoops else self.tr("hand tarps, on since {when}")
        return words.format(when=when)

    def _labels(self, group: Sequence[YardPlace]) -> list[str]:
        """Litres still to leave from the beds of a bracket."""
        lying = [lies for place in group for lies in place.lying]
        litres = [lies.water_left_g for lies in lying if lies.water_left_g is not None]
        if not litres or len(litres) < len(lying):
            return super()._labels(group)
        return [self.desk.words.say(Num(sum(litres) / 1000, "L"))]

    def _paint_compass(self, ink: Ink) -> None:
        """North, and five metres, above the patio or at the right of the beds."""
        px, long = look().px, 5 * self.scale
        patio = [r for code, r in self.rects.items() if self._place(code).kind != "bed"]
        cells = patio or list(self.rects.values())
        right, top = max(r.right() for r in cells), min(r.top() for r in cells) - px(5)
        if not patio:
            right, top = right + px(100) + long, top + px(20)
        ink.level(right - long, right, top, 1.2, "ink")
        for x in (right - long, right):
            ink.upright(x, top - px(4), top + px(4), 1.2, "ink")
        ink.text(right - long / 2, top - px(7), self.desk.words.say(Num(5, "m")), 14, align="middle")
        ink.text(right - long - px(14), top + px(2), self.tr("N ↑"), 14, SEMIBOLD, align="right")
