"""Beds and patio: their measures typed, the yard drawn to scale beside them as the numbers change."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRect
from PySide6.QtGui import QPainterPath, QPen

from farmdesk.desk.pages.register_rows import RegisterPane
from farmdesk.desk.pages.short_form import Side
from farmdesk.desk.theme import BOLD, look
from farmdesk.desk.widgets.ink import Ink
from farmdesk.picture.things import Place, Things
from farmdesk.text import Counted
from farmdesk.work.setup import overlap

NUMBER_PX = 20  # room for a bed's number outside it


@dataclass(frozen=True)
class Plan:
    """Metres to pixels: the yard's west and south edges stand at `left` and `base` [px]."""

    left: float
    base: float
    px_m: float

    def rect(self, x_m: float, y_m: float, width_m: float, depth_m: float) -> tuple[float, float, float, float]:
        """Left, top, width and height [px] of a rectangle measured from the south-west corner [m]."""
        k = self.px_m
        return self.left + x_m * k, self.base - (y_m + depth_m) * k, width_m * k, depth_m * k


def plan_of(things: Things, box: QRect, more: Place | None = None) -> Plan:
    """The largest scale at which the yard, and what is being typed, fits into a box."""
    px = look().px
    places = [*things.places.values(), *([more] if more else [])]
    wide = max([things.farm.yard_width_m, *(p.x_m + p.width_m for p in places)])
    deep = max([things.farm.yard_depth_m, *(p.y_m + p.depth_m for p in places)])
    k = min((box.width() - 2) / wide, (box.height() - 2 * px(NUMBER_PX)) / deep)
    return Plan(box.left() + 1, box.top() + px(NUMBER_PX) + deep * k, k)


class PlacesPane(RegisterPane):
    def heading(self) -> str:
        return self.tr("Beds and patio")

    def hint(self) -> str:
        return self.tr("Measured from the yard’s south-west corner. A code that is there already opens its row.")

    def being_typed(self) -> Place | None:
        """The place that the boxes describe, as far as they do."""
        if not self.row.boxes:
            return None
        values = self.row.values()
        if not values["code"]:
            return None
        numbers = {name: self.number_in(values, name) or 0.0 for name in ("x_m", "y_m", "width_m", "depth_m")}
        if numbers["width_m"] <= 0 or numbers["depth_m"] <= 0:
            return None
        return Place(
            values["code"].upper(), "bed", x_m=numbers["x_m"], y_m=numbers["y_m"],
            width_m=numbers["width_m"], depth_m=numbers["depth_m"],
        )  # fmt: skip

    def paint_side(self, ink: Ink, box: QRect) -> None:
        if self.story is None:
            return
        px, number, things = look().px, self.desk.words.number, self.story.things
        side = Side(ink, box)
        side.title(self.tr("The yard"))
        beds = [p for p in things.places.values() if p.kind == "bed"]
        area = sum(p.area_m2 for p in things.places.values())
        side.big(
            number(area, 0, "m²"),
            self.tr("{n} {n:bed|beds}, {m} {m:place|places} in all").format(
                n=Counted(len(beds)), m=Counted(len(things.places))
            ),
        )
        typed = self.being_typed()
        room = QRect(box.left(), round(side.y + px(18)), box.width(), px(350))
        plan = plan_of(things, room, typed)
        self._paint_plan(ink, plan, typed)
        side.y = plan.base + px(NUMBER_PX)
        if typed is not None:
            area = typed.area_m2
            side.line(self.tr("{code} as typed").format(code=typed.code), number(area, 1, "m²"), strong=True)
            over = [p.code for p in things.places.values() if p.code != typed.code and overlap(p, typed)]
            if over:
                side.line(self.tr("lies over {codes}").format(codes=" ".join(over)))
        self.ways_of_the_box(side)

    def _paint_plan(self, ink: Ink, plan: Plan, typed: Place | None) -> None:
        things = self.story.things
        farm = things.farm
        walked = self.written[self.at].key if self.at is not None else ""
        x, y, wide, deep = plan.rect(0, 0, farm.yard_width_m, farm.yard_depth_m)
        ink.frame(x, y, wide, deep, 1, "hair")
        self._paint_marks(ink, plan)
        middle = farm.yard_depth_m / 2
        for place in things.places.values():
            if typed is not None and place.code == typed.code:
                rect = plan.rect(place.x_m, place.y_m, place.width_m, place.depth_m)
                ink.frame(*rect, 1, "rule", dashed=True)  # where it stands now
                continue
            self._paint_place(ink, plan, place, middle, "ink", 2.4 if place.code == walked else 1.1)
        if typed is not None:
            self._paint_place(ink, plan, typed, middle, "focus", 2.4)
        bar = next(n for n in (5, 10, 2) if n * plan.px_m >= look().px(30)) if plan.px_m >= 3 else 10
        right = x + wide
        ink.level(right - bar * plan.px_m, right, y - look().px(8), 1.6, "ink")
        said = self.desk.words.number(bar, 0, "m")
        ink.text(
            right - bar * plan.px_m - look().px(6), y - look().px(4), f"N ↑   {said}", 14, color="ink2", align="right"
        )

    def _paint_place(self, ink: Ink, plan: Plan, place: Place, middle_m: float, color: str, line: float) -> None:
        px = look().px
        x, y, wide, deep = plan.rect(place.x_m, place.y_m, place.width_m, place.depth_m)
        ink.frame(x, y, wide, deep, line, color)
        room = max(ink.width(place.code, 13, BOLD) + 4, px(24))  # a row of narrow beds is numbered in one line
        if wide >= room and deep >= px(16):
            ink.text(x + wide / 2, y + min(deep / 2 + px(5), px(16)), place.code, 13, BOLD, color, align="middle")
        else:
            above = place.y_m + place.depth_m / 2 > middle_m
            ink.text(
                x + wide / 2, y - px(4) if above else y + deep + px(14), place.code, 13, BOLD, color, align="middle"
            )

    def _paint_marks(self, ink: Ink, plan: Plan) -> None:
        for mark in self.story.things.landmarks.values():
            if mark.kind == "tree":
                ring = QPainterPath()
                centre = QPointF(plan.left + mark.x_m * plan.px_m, plan.base - mark.y_m * plan.px_m)
                ring.addEllipse(centre, mark.width_m * plan.px_m, mark.width_m * plan.px_m)
                ink.painter.setRenderHint(ink.painter.RenderHint.Antialiasing)
                ink.painter.strokePath(ring, QPen(look()["hair"], 1.2))
                ink.painter.setRenderHint(ink.painter.RenderHint.Antialiasing, False)
            else:
                x, y, wide, deep = plan.rect(mark.x_m, mark.y_m, mark.width_m, mark.depth_m)
                ink.frame(x, y, wide, deep, 1.6, "rule")
