"""The weight river: a lot's kilograms from the field on, and the dry matter inside them, on one scale.

The inner band may narrow only where a stream is named; a narrowing without a name is a mistake, a spill
or a theft. Straight edges, so that no kilogram is hidden in a curve.
"""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QPolygonF
from PySide6.QtWidgets import QWidget

from farmdesk.desk.charts.scale import Taken
from farmdesk.desk.theme import BOLD, REGULAR, SERIF, look
from farmdesk.desk.widgets.drawn import Drawn
from farmdesk.desk.widgets.ink import Ink
from farmdesk.text import N_, Text, Words
from farmdesk.work.stories import RiverPart, Unexplained

HEAD_PX, FOOT_PX, BAND_PX = 26, 24, 96
LEVEL_FRAC = 0.45  # of the way between two stages the band runs level; the rest is the narrowing
WATER = N_("river", "{grams} {name}, left upwards")


class River(Drawn):
    """A lot's weights as one narrowing band."""

    def __init__(self, words: Words, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.words = words
        self.parts: tuple[RiverPart, ...] = ()
        self.unexplained: tuple[Unexplained, ...] = ()

    def show_river(self, parts: tuple[RiverPart, ...], unexplained: tuple[Unexplained, ...]) -> None:
        """Draw these stages."""
        self.parts, self.unexplained = parts, unexplained
        self.told()

    def sentence(self) -> str:
        say = self.words.say
        stages = ", ".join(f"{self._kg(part.grams, part.mark)} {say(part.name)}" for part in self.parts)
        left = "; ".join(
            self.tr("{kg} kg {name} left").format(kg=self._kg(grams), name=say(name))
            for part in self.parts
            for name, grams in part.left
        )
        told = [self.tr("Weights: {stages} kg.").format(stages=stages), f"{left}." if left else ""]
        return " ".join([*(part for part in told if part), *(say(item.text) for item in self.unexplained)])

    def table(self) -> tuple[list[str], list[list[str]]]:
        say, number = self.words.say, self.words.number
        rows = [
            [
                say(part.name),
                self._kg(part.grams, part.mark),
                f"{number(part.dry_matter_g / 1000)} ± {number(part.dry_matter_sd_g / 1000)}",
                ", ".join(f"{self._kg(grams)} {say(name)}" for name, grams in part.left),
            ]
            for part in self.parts
        ]
        rows += [[say(item.stage), say(item.text), "", ""] for item in self.unexplained]
        return [self.tr("stage"), self.tr("kg"), self.tr("of it dry, kg"), self.tr("left before it, kg")], rows

    def _kg(self, grams: int, mark: str = "measured") -> str:
        return self.words.number(grams / 1000, about=mark != "measured")

    def paint(self, ink: Ink) -> None:
        px = look().px
        self._head(ink)
        if not self.parts:
            return
        top, foot = px(HEAD_PX), self.height() - px(FOOT_PX)
        middle, most = (top + foot) / 2, max(part.grams for part in self.parts)
        per_g = (foot - top - px(4)) / most
        edges = self._edges()
        taken = Taken()
        self._band(ink, edges, middle, [part.grams * per_g for part in self.parts], look().water(0.2), 1.0)
        self._band(ink, edges, middle, [part.dry_matter_g * per_g for part in self.parts], look()["ink2"], 0)
        for i, part in enumerate(self.parts):
            if part.mark == "estimated":
                left, right = edges[i]
                tall = part.grams * per_g
                ink.fill(left, middle - tall / 2, right - left, tall, "paper")
                ink.pattern(left, middle - tall / 2, right - left, tall, "estimated")
                ink.frame(left, middle - tall / 2, right - left, tall, 1)
        self._unnamed(ink, edges, middle, per_g, taken)
        for i, part in enumerate(self.parts):
            self._streams(ink, i, part, edges, middle, per_g, taken)
        self._stages(ink, edges)

    def _edges(self) -> list[tuple[float, float]]:
        """Between which pixels each stage runs level."""
        n = len(self.parts)
        step = (self.width() - look().px(8)) / n
        return [(i * step, i * step + step * (LEVEL_FRAC if i < n - 1 else 1.0)) for i in range(n)]

    def _band(
        self, ink: Ink, edges: list[tuple[float, float]], middle: float, tall: list[float], color: QColor, line: float
    ) -> None:
        above = [QPointF(x, middle - h / 2) for (a, b), h in zip(edges, tall, strict=True) for x in (a, b)]
        below = [QPointF(x, middle + h / 2) for (a, b), h in zip(edges, tall, strict=True) for x in (a, b)]
        ink.shape(QPolygonF([*above, *reversed(below)]), color, line)

    def _streams(
        self, ink: Ink, i: int, part: RiverPart, edges: list[tuple[float, float]], middle: float, per_g: float,
        taken: Taken,
    ) -> None:  # fmt: skip
        """What left on the way to a stage, written where the band narrows: inside where there is room."""
        if not part.left or i == 0:
            return
        px = look().px
        pieces = [f"{self._kg(grams)} {self.words.say(name)}" for name, grams in part.left]
        text = ", ".join(pieces)
        if part.up and len(part.left) == 1:
            name, grams = part.left[0]
            text = self.words.say(Text(WATER.context, WATER.template, (("grams", self._kg(grams)), ("name", name))))
        width, height = ink.width(text, 14), px(17)
        before, now = self.parts[i - 1], part
        start, end = edges[i - 1][1], edges[i][0]
        centre = min(max((start + end) / 2, width / 2), self.width() - width / 2)
        inside = QRectF(centre - width / 2, middle - now.grams * per_g / 2 + px(2), width, height)
        left = min(end - px(12), self.width() - width)
        share = min(max((left - start) / (end - start), 0.0), 1.0)
        edge = middle - (before.grams + (now.grams - before.grams) * share) * per_g / 2
        over = QRectF(left, edge - height - px(1), width, height)
        within = QRectF(0, px(HEAD_PX) - px(4), self.width(), self.height())
        if (now.grams - before.dry_matter_g) * per_g / 2 > height:
            taken.take(inside)
            ink.text(inside.left(), inside.bottom() - px(4), text, 14, color=look().text_on(look().water(0.2)))
        elif spot := taken.place([over.translated(px(x), y) for y in (0, -height) for x in (0, 14, 40, 80)], within):
            ink.text(spot.left(), spot.bottom() - px(4), text, 14)

    def _unnamed(self, ink: Ink, edges: list[tuple[float, float]], middle: float, per_g: float, taken: Taken) -> None:
        """Dry matter that went without a name: crossed, and said below the band that is left."""
        px = look().px
        within = QRectF(0, 0, self.width(), self.height() - px(FOOT_PX))
        for i, part in enumerate(self.parts):
            if part.missing_g <= 0 or i == 0:
                continue
            start, end = edges[i - 1][1], edges[i][0]
            tall, wide = self.parts[i - 1].dry_matter_g * per_g, max(end - start, px(8))
            ink.fill(start, middle - tall / 2, wide, tall, "paper")
            ink.pattern(start, middle - tall / 2, wide, tall, "doubtful")
            ink.frame(start, middle - tall / 2, wide, tall, 1)
            text = self.tr("{kg} kg dry, unexplained").format(kg=self._kg(round(part.missing_g), "computed"))
            width, height = ink.width(text, 14, BOLD), px(17)
            under = QRectF(min(end, self.width() - width), middle + part.grams * per_g / 2 + px(2), width, height)
            if spot := taken.place((under, under.translated(0, -px(4))), within):
                ink.text(spot.left(), spot.bottom() - px(3), text, 14, BOLD)

    def _stages(self, ink: Ink, edges: list[tuple[float, float]]) -> None:
        y = self.height() - look().px(6)
        free = -1.0
        for (left, _), part in zip(edges, self.parts, strict=True):
            runs = [
                (self._kg(part.grams, part.mark), 17, BOLD, "ink"),
                (self.words.say(part.name), 14, REGULAR, "ink2"),
            ]
            width = ink.width(runs[0][0], 17, BOLD) + ink.width(runs[1][0], 14) + look().px(6)
            x = min(max(left, free), self.width() - width)
            free = ink.runs(x, y, runs, look().px(6)) + look().px(14)

    def paint_focus(self, ink: Ink) -> None:
        px = look().px
        ink.frame(0, px(HEAD_PX) - 3, self.width(), self.height() - px(HEAD_PX + FOOT_PX) + 6, 3, "focus")

    def _head(self, ink: Ink) -> None:
        px = look().px
        said = self.words.say(self.unexplained[-1].text) if self.unexplained else self.tr("nothing weighed twice yet")
        heading, note = (
            self.tr("Weight river"),
            self.tr("inner band: dry matter; it narrows only where a stream is named"),
        )
        used = ink.width(heading, 18, 600, SERIF) + px(9)
        wide, noted = ink.width(said, 14), ink.width(note, 14)
        if used + noted + px(24) + wide > self.width():
            note = ""
        ink.heading(0, px(17), heading, note)
        room = self.width() - used - (noted if note else 0) - px(20)
        ink.text(self.width(), px(17), ink.fitted(said, room, 14), 14, align="right")
