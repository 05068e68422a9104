"""A lot's family drawn: blocks at the left, the lots it was made of, the lot, and where it went; as wide as the kilograms."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainterPath
from PySide6.QtWidgets import QWidget

from farmdesk.desk.pages import Desk
from farmdesk.desk.theme import BOLD, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.drawn import Drawn
from farmdesk.desk.widgets.ink import Ink
from farmdesk.work.family_story import FamilyStory, mixed_words

BOX_PX, NARROW_PX, GAP_PX, LEAST_PX = 132, 118, 18, 46


@dataclass(frozen=True, slots=True)
class Knot:
    """A box of the drawing: its key, two lines, and how much of the lot it stands for (0..1)."""

    key: str
    name: str
    small: str
    share_frac: float


@dataclass(frozen=True, slots=True)
class Band:
    """Coffee that went from one knot to another, as a share of the lot (0..1)."""

    left: str
    right: str
    share_frac: float


class Tree(Drawn):
    """Columns from left to right; bands between them are as high as their share."""

    def __init__(self, desk: Desk, parent: QWidget) -> None:
        super().__init__(parent)
        self.desk = desk
        self.story: FamilyStory | None = None
        self.columns: list[list[Knot]] = []
        self.bands: list[Band] = []
        self.spots: dict[str, tuple[float, float, float, float]] = {}
        self.whole = 0.0

    def show_story(self, story: FamilyStory) -> None:
        """Lay out the knots."""
        self.story = story
        self._knots(story)
        self.told()

    def sentence(self) -> str:
        if self.story is None:
            return ""
        say = self.desk.words.say
        gone = ", ".join(f"{c.code} {self._pct(c.share_frac)}" for c in self.story.children)
        outs = ", ".join(say(out.text) for out in self.story.outs)
        went = "; ".join(part for part in (gone, outs) if part) or self.tr("nothing has left it yet")
        told = self.tr("{lot}: {blocks}. Went to: {went}.").format(
            lot=self.story.code, blocks=say(self.story.headline), went=went
        )
        for mixed in self.story.mixed:
            if len(mixed.fillings) > 1 and len(mixed.shares) > 1:
                hours = ", ".join(say(self.desk.time.night(filling.at_utc_s)) for filling in mixed.fillings)
                told += " " + self.tr("{vessel}; filled {hours}.").format(vessel=say(mixed_words(mixed)), hours=hours)
        return told

    def table(self) -> tuple[Sequence[str], Sequence[Sequence[str]]] | None:
        heads = [self.tr("from"), self.tr("to"), self.tr("share of the lot")]
        names = {knot.key: knot.name for column in self.columns for knot in column}
        return heads, [[names[b.left], names[b.right], self._pct(b.share_frac)] for b in self.bands]

    def _pct(self, share_frac: float) -> str:
        return f"{self.desk.words.number(100 * share_frac, 1)} %"

    def _kg(self, grams: float) -> str:
        return self.desk.words.number(grams / 1000, 1 if grams < 100_000 else 0, "kg")

    def _knots(self, story: FamilyStory) -> None:
        say = self.desk.words.say
        blocks = [
            Knot(f"b{s.code}", self.tr("block {code}").format(code=s.code), self._pct(s.share_frac), s.share_frac)
            for s, _ in story.blocks
        ]
        order = [share.code for share, _ in story.blocks]
        main = {parent: max(made, key=lambda b: made[b]) for parent, _, made in story.matrix if made}
        nearest = sorted(story.parents, key=lambda s: order.index(main[s.code]) if s.code in main else 0)
        parents = [Knot(f"p{s.code}", s.code, self._kg(s.grams), s.share_frac) for s in nearest]
        own = [Knot("lot", f"{story.code} {story.check}", self._kg(story.grams) if story.grams else "", 1.0)]
        out_g = sum(out.grams for out in story.outs)
        all_g = out_g + sum(child.grams for child in story.children) + max(0, story.grams - out_g)
        rights = [Knot(f"c{s.code}", s.code, self._kg(s.grams), s.grams / all_g) for s in story.children if all_g]
        for n, out in enumerate(story.outs[:6]):
            name, _, when = say(out.text).partition(", ")
            rights.append(
                Knot(f"o{n}", name, f"{self._kg(out.grams)} {when}".strip(), out.grams / all_g if all_g else 0)
            )
        self.columns = [column for column in (blocks, parents, own, rights) if column]
        self.bands = []
        if parents:
            for parent, share, made in story.matrix:
                self.bands += [Band(f"b{b}", f"p{parent}", share * part) for b, part in made.items()]
                self.bands.append(Band(f"p{parent}", "lot", share))
        else:
            self.bands += [Band(knot.key, "lot", knot.share_frac) for knot in blocks]
        self.bands += [Band("lot", knot.key, knot.share_frac) for knot in rights]

    def paint(self, ink: Ink) -> None:
        if self.story is None:
            return
        px = look().px
        if not self.columns or len(self.columns) == 1:
            ink.text(0, px(30), self.desk.words.say(self.story.headline), 17, family=SERIF)
        self._place()
        for band in self.bands:
            self._paint_band(ink, band)
        for column in self.columns:
            for knot in column:
                x, y, wide, high = self.spots[knot.key]
                own = knot.key == "lot"
                ink.fill(x, y, wide, high, "sheet")
                ink.frame(x, y, wide, high, 2 if own else 1.2, "ink")
                base = y + high / 2
                ink.text(x + px(10), base - px(2), ink.fitted(knot.name, wide - px(16), 17 if own else 15), 17 if own else 15,
                         BOLD if own else SEMIBOLD)  # fmt: skip
                ink.text(x + px(10), base + px(16), ink.fitted(knot.small, wide - px(16), 14), 14, color="ink2")

    def _place(self) -> None:
        """Boxes in their columns: as high as their share of the lot, never too low to be read."""
        px = look().px
        n = len(self.columns)
        wide = px(BOX_PX if n < 4 else NARROW_PX)
        step = (self.width() - wide) / max(1, n - 1)
        room = self.height() - px(4)
        low, whole = 0.0, float(room)  # the height of the whole lot, by halving: every column must find room
        for _ in range(12):
            middle = (low + whole) / 2
            fits = max(self._tall(column, middle) for column in self.columns) <= room
            low, whole = (middle, whole) if fits else (low, middle)
        self.whole = low
        self.spots = {}
        for i, column in enumerate(self.columns):
            y = (self.height() - self._tall(column, low)) / 2
            for knot in column:
                high = max(px(LEAST_PX), knot.share_frac * low)
                self.spots[knot.key] = (i * step, y, wide, high)
                y += high + px(GAP_PX)

    def _tall(self, column: list[Knot], whole: float) -> float:
        """The height of a column [px] where the whole lot is so high [px]."""
        px = look().px
        return sum(max(px(LEAST_PX), k.share_frac * whole) for k in column) + px(GAP_PX) * (len(column) - 1)

    def _paint_band(self, ink: Ink, band: Band) -> None:
        """A band leaves its knot where the bands above it end."""
        a, b = self.spots[band.left], self.spots[band.right]
        y1, h1 = self._along(band, a, left=True)
        y2, h2 = self._along(band, b, left=False)
        x1, x2 = a[0] + a[2], b[0]
        mid = (x1 + x2) / 2
        path = QPainterPath(QPointF(x1, y1))
        path.cubicTo(mid, y1, mid, y2, x2, y2)
        path.lineTo(x2, y2 + h2)
        path.cubicTo(mid, y2 + h2, mid, y1 + h1, x1, y1 + h1)
        path.closeSubpath()
        ink.shape(path, "band", 0.8, "rule")
        if h1 > look().px(22) and x2 - x1 > look().px(70):
            ink.text(mid, (y1 + y2 + h1 / 2 + h2 / 2) / 2 + look().px(5), self._pct(band.share_frac), 14, color="ink2",
                     align="middle")  # fmt: skip

    def _along(self, band: Band, spot: tuple[float, float, float, float], *, left: bool) -> tuple[float, float]:
        """Top and height [px] of a band where it meets a knot: its share, one below the other, in the middle."""
        mates = [b for b in self.bands if (b.left == band.left if left else b.right == band.right)]
        mates.sort(key=lambda b: self.spots[b.right if left else b.left][1])
        total = sum(b.share_frac for b in mates)
        before = sum(b.share_frac for b in mates[: mates.index(band)])
        top = spot[1] + (spot[3] - total * self.whole) / 2
        return top + before * self.whole, max(1.0, band.share_frac * self.whole)
