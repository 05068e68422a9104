"""The mill's balance: what was sent, cut in pieces in the mill's order; what nobody can explain is always drawn."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from farmdesk.desk.charts.scale import apart
from farmdesk.desk.theme import SEMIBOLD, look
from farmdesk.desk.widgets.drawn import Drawn
from farmdesk.desk.widgets.ink import Ink
from farmdesk.text import Text, Words
from farmdesk.work.stories import BalancePart

HEAD_PX, BAR_PX, FOOT_PX = 26, 24, 22
LEAST_PX = 4  # of the unexplained, so that it is seen however small
GROUNDS = {"top": "paper", "light": "hair", "small": "band"}
PATTERNS = {
    "peaberry": "expected", ">husk": "resting", ">water": "target", ">unexplained": "doubtful", ">sample": "estimated",
}  # fmt: skip


class Balance(Drawn):
    """One bar, as wide as it is given."""

    def __init__(self, words: Words, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.words = words
        self.parts: tuple[BalancePart, ...] = ()
        self.of: Text | None = None

    def show_balance(self, parts: tuple[BalancePart, ...], of: Text | None) -> None:
        """Draw these pieces, and the line that stands above them."""
        self.parts, self.of = parts, of
        self.told()

    def sentence(self) -> str:
        pieces = ", ".join(self._label(part) for part in self.parts)
        said = self.words.say(self.of) if self.of else ""
        return self.tr("Mill: {of}. {pieces} kg.").format(of=said, pieces=pieces)

    def table(self) -> tuple[list[str], list[list[str]]]:
        rows = [[self.words.say(part.label), self._kg(part.grams)] for part in self.parts]
        return [self.tr("piece"), self.tr("kg")], rows

    def _kg(self, grams: int) -> str:
        return self.words.number(grams / 1000, 0 if abs(grams) >= 10_000 else 1)

    def _label(self, part: BalancePart) -> str:
        return f"{self.words.say(part.label)} {self._kg(part.grams)}"

    def widths(self, room_px: float) -> list[float]:
        """How wide each piece is [px]: by its kilograms, the unexplained never narrower than it can be seen."""
        grams = [max(part.grams, 0) for part in self.parts]
        wide = [room_px * g / (sum(grams) or 1) for g in grams]
        least = look().px(LEAST_PX)
        narrow = [part.name == ">unexplained" and w < least for part, w in zip(self.parts, wide, strict=True)]
        rest = sum(w for w, is_narrow in zip(wide, narrow, strict=True) if not is_narrow) or 1.0
        scale = (room_px - least * sum(narrow)) / rest
        return [least if is_narrow else w * scale for w, is_narrow in zip(wide, narrow, strict=True)]

    def paint(self, ink: Ink) -> None:
        px = look().px
        ink.heading(0, px(17), self.tr("Mill"), self.words.say(self.of) if self.of else "")
        top, tall = px(HEAD_PX), px(BAR_PX)
        x = 0.0
        outside: list[tuple[float, str]] = []
        for part, width in zip(self.parts, self.widths(self.width()), strict=True):
            ink.fill(x, top, width, tall, GROUNDS.get(part.name, "paper"))
            if part.name in PATTERNS:
                ink.pattern(x, top, width, tall, PATTERNS[part.name])
            ink.frame(x, top, width + 1, tall, 1)
            text = self._label(part)
            if ink.width(text, 14, SEMIBOLD) + px(12) < width:
                middle, half = x + width / 2, ink.width(text, 14, SEMIBOLD) / 2 + px(4)
                if part.name in PATTERNS:
                    ink.fill(middle - half, top + 2, 2 * half, tall - 4, "paper")
                ink.text(middle, top + px(17), text, 14, SEMIBOLD, align="middle")
            else:
                outside.append((x + width / 2, text))
            x += width
        ink.frame(0, top, self.width(), tall, 1.2)
        widths = [ink.width(text, 14) for _, text in outside]
        lefts = apart([at for at, _ in outside], widths, px(14), 0, self.width())
        for left, (_, text) in zip(lefts, outside, strict=True):
            ink.text(left, top + tall + px(17), text, 14)

    def paint_focus(self, ink: Ink) -> None:
        px = look().px
        ink.frame(0, px(HEAD_PX) - 3, self.width(), px(BAR_PX) + 6, 3, "focus")
