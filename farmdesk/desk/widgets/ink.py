"""Painting as on a printed sheet: text on its own baseline, lines on whole device pixels, patterns of doubt."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPaintDevice, QPainter, QPainterPath, QPen, QPolygonF

from farmdesk.desk.theme import REGULAR, SANS, SEMIBOLD, SERIF, look
from farmdesk.text import THIN

NO_BREAK = "\u00a0"
Run = tuple[str, float, int, str]  # text, size [px], weight, token of colour


def as_set(text: str) -> str:
    """Text as it is set: Source Sans 3's own space is a fifth of an em, as thin as a thin space should be; its
    narrow one glues number and unit together at arm's length.
    """
    return text.replace(THIN, NO_BREAK)


class Measure:
    """How much room words take, without painting."""

    def __init__(self) -> None:
        self.look = look()

    def width(
        self, text: str, size: float = 15, weight: int = REGULAR, family: str = SANS, *, italic: bool = False
    ) -> float:
        """How wide a text is [px]."""
        return self.look.metrics(size, weight, family, italic=italic).horizontalAdvance(as_set(text))

    def lines(self, text: str, width: float, size: float = 15, weight: int = REGULAR, family: str = SANS) -> list[str]:
        """A text broken between words to a width [px]."""
        metrics = self.look.metrics(size, weight, family)
        broken: list[str] = []
        line = ""
        for word in as_set(text).split(" "):
            longer = f"{line} {word}" if line else word
            if line and metrics.horizontalAdvance(longer) > width:
                broken.append(line)
                line = word
            else:
                line = longer
        return [*broken, line] if line else broken

    def fitted(self, text: str, width: float, size: float = 15, weight: int = REGULAR, family: str = SANS) -> str:
        """The text, cut with … where it is wider than there is room."""
        return self.look.metrics(size, weight, family).elidedText(as_set(text), Qt.TextElideMode.ElideRight, width)

    def leading(self, size: float) -> float:
        """From one baseline to the next [px]: 1.33 of the size."""
        return round(self.look.px(size) * 4 / 3)


class Ink(Measure):
    """A painter that speaks in the look's tokens. Positions are screen pixels; sizes of letters are drawn px.

    Use as a context: `with Ink(self) as ink: ink.text(20, 97, "Season", 32, ...)`.
    """

    def __init__(self, device: QPaintDevice) -> None:
        super().__init__()
        self.painter = QPainter(device)
        self.ratio = device.devicePixelRatioF()
        self.painter.setRenderHints(QPainter.RenderHint.TextAntialiasing)

    def __enter__(self) -> Ink:
        return self

    def __exit__(self, *_: object) -> None:
        self.painter.end()

    def color(self, token: str | QColor) -> QColor:
        """A colour by token, or as it is."""
        return self.look[token] if isinstance(token, str) else token

    # text

    def text(
        self, x: float, y: float, text: str, size: float = 15, weight: int = REGULAR, color: str | QColor = "ink",
        family: str = SANS, *, align: str = "left", italic: bool = False, struck: bool = False,
    ) -> float:  # fmt: skip
        """Write on the baseline y, from, to or about x; the x where the next word would begin is returned."""
        width = self.width(text, size, weight, family, italic=italic)
        left = x - {"left": 0.0, "right": width, "middle": width / 2}[align]
        self.painter.setFont(self.look.font(size, weight, family, italic=italic))
        self.painter.setPen(self.color(color))
        self.painter.drawText(QPointF(left, y), as_set(text))
        if struck:
            self.level(left, left + width, y - self.look.px(size) * 0.28, 1, color)
        return left + width

    def runs(self, x: float, y: float, runs: Sequence[Run], gap: float = 0.0, *, align: str = "left") -> float:
        """Several pieces of text on one baseline; returns the x after the last."""
        if align == "right":
            x -= sum(self.width(t, s, w) for t, s, w, _ in runs) + gap * (len(runs) - 1)
        for text, size, weight, color in runs:
            x = self.text(x, y, text, size, weight, color) + gap
        return x - gap

    def wrapped(
        self, x: float, y: float, width: float, text: str, size: float = 15, weight: int = REGULAR,
        color: str | QColor = "ink", family: str = SANS, *, most: int = 0,
    ) -> float:  # fmt: skip
        """Write in lines of a width from the first baseline y; returns the baseline after the last line."""
        rows = self.lines(text, width, size, weight, family)
        if most and len(rows) > most:
            rest = " ".join(rows[most - 1 :])
            metrics = self.look.metrics(size, weight, family)
            rows = [*rows[: most - 1], metrics.elidedText(rest, Qt.TextElideMode.ElideRight, width)]
        for row in rows:
            self.text(x, y, row, size, weight, color, family)
            y += self.leading(size)
        return y

    def heading(self, x: float, y: float, text: str, note: str = "", size: float = 18) -> float:
        """A zone's heading in serif, and a note beside it."""
        x = self.text(x, y, text, size, SEMIBOLD, family=SERIF)
        return self.text(x + 9, y, note, 14, color="ink2") if note else x

    # lines and grounds

    def snap(self, value: float) -> float:
        """The nearest whole device pixel."""
        return round(value * self.ratio) / self.ratio

    def _thick(self, width: float) -> float:
        return max(1, round(width * self.ratio)) / self.ratio

    def level(
        self, x1: float, x2: float, y: float, width: float = 1, color: str | QColor = "rule", *, dashed: bool = False
    ) -> None:
        """A level line, crisp: its middle at y, on whole device pixels."""
        thick = self._thick(width)
        self._stroke(
            QRectF(self.snap(x1), self.snap(y - thick / 2), self.snap(x2) - self.snap(x1), thick), color, dashed
        )

    def upright(
        self, x: float, y1: float, y2: float, width: float = 1, color: str | QColor = "rule", *, dashed: bool = False
    ) -> None:
        """An upright line, crisp."""
        thick = self._thick(width)
        self._stroke(
            QRectF(self.snap(x - thick / 2), self.snap(y1), thick, self.snap(y2) - self.snap(y1)), color, dashed
        )

    def _stroke(self, rect: QRectF, color: str | QColor, dashed: bool) -> None:
        tint = self.color(color)
        if not dashed:
            self.painter.fillRect(rect, tint)
            return
        level = rect.width() >= rect.height()
        at, end = (rect.left(), rect.right()) if level else (rect.top(), rect.bottom())
        thick = rect.height() if level else rect.width()
        dash, gap = (6.0, 4.0) if thick > 1.4 else (3.0, 3.0)
        while at < end:
            long = min(dash, end - at)
            piece = (
                QRectF(at, rect.top(), long, rect.height()) if level else QRectF(rect.left(), at, rect.width(), long)
            )
            self.painter.fillRect(piece, tint)
            at += dash + gap

    def line(self, x1: float, y1: float, x2: float, y2: float, width: float = 1, color: str | QColor = "ink") -> None:
        """A slanted line, smooth."""
        self.painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self.painter.setPen(QPen(self.color(color), width, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap))
        self.painter.drawLine(QPointF(x1, y1), QPointF(x2, y2))
        self.painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)

    def fill(self, x: float, y: float, width: float, height: float, color: str | QColor) -> QRectF:
        """Ground, snapped to whole device pixels."""
        left, top = self.snap(x), self.snap(y)
        rect = QRectF(left, top, self.snap(x + width) - left, self.snap(y + height) - top)
        self.painter.fillRect(rect, self.color(color))
        return rect

    def frame(
        self, x: float, y: float, width: float, height: float, line: float = 1, color: str | QColor = "ink",
        *, dashed: bool = False,
    ) -> None:  # fmt: skip
        """A square frame, its lines inside the measures given."""
        left, top, right, bottom = self.snap(x), self.snap(y), self.snap(x + width), self.snap(y + height)
        thick = self._thick(line)
        for rect in (
            QRectF(left, top, right - left, thick),
            QRectF(left, bottom - thick, right - left, thick),
            QRectF(left, top, thick, bottom - top),
            QRectF(right - thick, top, thick, bottom - top),
        ):
            self._stroke(rect, color, dashed)

    def pattern(self, x: float, y: float, width: float, height: float, kind: str, color: str | QColor = "ink") -> None:
        """A pattern of doubt or state over a rectangle."""
        left, top = self.snap(x), self.snap(y)
        self.painter.setBrushOrigin(QPointF(left, top))
        brush = self.look.pattern(kind, self.color(color), self.ratio)
        self.painter.fillRect(QRectF(left, top, self.snap(x + width) - left, self.snap(y + height) - top), brush)

    def shape(
        self, path: QPainterPath | QPolygonF, fill: QColor | QBrush | str | None = None,
        line: float = 0, color: str | QColor = "ink",
    ) -> None:  # fmt: skip
        """A free shape, smooth: filled, outlined or both."""
        if isinstance(path, QPolygonF):
            polygon, path = path, QPainterPath()
            path.addPolygon(polygon)
            path.closeSubpath()
        self.painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if fill is not None:
            self.painter.fillPath(path, self.color(fill) if isinstance(fill, str) else fill)
        if line:
            self.painter.strokePath(path, QPen(self.color(color), line))
        self.painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)

    def swatch(self, x: float, y: float, kind: str, side: float = 14) -> float:
        """A small patterned square before a word or number, standing on the baseline y; returns its right edge."""
        top = y - side + self.look.px(15) * 0.1
        self.pattern(x, top, side, side, kind)
        self.frame(x, top, side, side, 1)
        return x + side

    def ring(self, x: float, y: float, width: float, height: float) -> None:
        """The focus ring: outside the measures given, always seen."""
        self.frame(x - 3, y - 3, width + 6, height + 6, 3, "focus")
