"""A sheet of paper to draw on: A4 or Letter, margins of 13 mm, letters that travel along, patterns of doubt.

Everything is measured in points from the upper left corner, y downwards. Colours come from the one table
that the screen reads too; on paper they are greys, and with `mono=False` water is blue as on the screen.
The same story gives the same bytes: dates come from the story, never from the clock.
"""

from __future__ import annotations

import os
import tomllib
from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager
from datetime import date
from functools import lru_cache
from io import BytesIO
from itertools import groupby
from pathlib import Path
from typing import IO, Any

from reportlab.graphics.barcode import qrencoder
from reportlab.lib.colors import HexColor
from reportlab.lib.units import mm
from reportlab.pdfgen import canvas as pdfcanvas

from farmdesk import paths
from farmdesk.errors import FileTrouble
from farmdesk.papers import letters
from farmdesk.papers.letters import ITALIC, LEAST_PT, SANS
from farmdesk.papers.place import Box, Point
from farmdesk.text import N_, Words

SIZES = {"a4": (210 * mm, 297 * mm), "letter": (612.0, 792.0)}  # ISO 216; ANSI Y14.1
MARGIN_PT = 13 * mm
EDGE_PT, EDGE_ROOM_PT = 6.0, 13.0  # the hatched edge of the practice season, and the room it takes
PX_PT = 0.75  # a drawn pixel of the screen is three quarters of a point

Target = str | Path | IO[bytes]
Run = tuple[str, float, str, str]  # text, size [pt], font, token of colour


@lru_cache(maxsize=1)
def _table() -> dict[str, Any]:
    return tomllib.loads(paths.resource("styles", "palettes.toml").read_text(encoding="utf-8"))


@lru_cache(maxsize=64)
def _color(code: str) -> Any:
    return HexColor(code)


@lru_cache(maxsize=64)
def _light(code: str) -> float:
    """Relative luminance of sRGB (WCAG 2.2, definition)."""
    parts = [int(code[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    parts = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts]
    return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2]


def water_step(moisture_wb_frac: float) -> int:
    """Which of the six steps of water [0–5] a moisture [fraction wet basis] falls in."""
    return sum(moisture_wb_frac > top for top in _table()["water_up_to_wb_frac"])


class Page:
    """A document that is drawn page by page; `done` writes it.

    `target` is a path or an open binary file. The author is the farm, never a person. Raises FileTrouble
    from `done` when the disk refuses; an older paper at that path is then still whole.
    """

    def __init__(
        self, target: Target, words: Words, *, title: str, farm: str, made: date, paper: str = "a4", mono: bool = True,
        practice: bool = False,
    ) -> None:  # fmt: skip
        letters.load()
        self.target, self.words, self.practice = target, words, practice
        self.wide, self.high = SIZES[paper]
        self.left = MARGIN_PT + (EDGE_ROOM_PT if practice else 0.0)
        self.right, self.top, self.bottom = self.wide - MARGIN_PT, MARGIN_PT, self.high - MARGIN_PT
        self._buffer = BytesIO()
        self.canvas = pdfcanvas.Canvas(
            self._buffer, pagesize=(self.wide, self.high), initialFontName=SANS, invariant=1, lang=words.language,
            pageCompression=1,
        )  # fmt: skip
        self.canvas.setTitle(title)
        self.canvas.setAuthor(farm)
        self.canvas.setSubject(title)
        stamp = f"D:{made:%Y%m%d}000000Z"
        self.canvas.setDateFormatter(lambda *_: stamp)
        self._shades: dict[str, str] = {**_table()["print"]}
        self._waters: list[str] = _table()["print" if mono else "light"]["water"]
        self._begin()

    @property
    def width(self) -> float:
        """Between the margins [pt]."""
        return self.right - self.left

    # pages

    def _begin(self) -> None:
        self._now: dict[str, Any] = {}
        self.canvas.setLineCap(0)
        self.canvas.setLineJoin(0)
        if self.practice:
            self.pattern(Box(MARGIN_PT, self.top, MARGIN_PT + EDGE_PT, self.bottom), "estimated")

    def turn(self) -> None:
        """Begin the next page."""
        self.canvas.showPage()
        self._begin()

    def foot_lines(self, said: str) -> list[str]:
        """The words of a footer, broken beside the count of pages."""
        return letters.lines(said, LEAST_PT, self.width - 52)

    def foot_top(self, said: str) -> float:
        """Where the footer's rule stands for these words [pt]."""
        return self.bottom - 6 - LEAST_PT * letters.LEADING * len(self.foot_lines(said))

    def foot(self, said: str, page_n: int = 1, of_n: int = 1) -> None:
        """The footer: a rule, words on the left, `1 of 1` on the right."""
        self.level(self.left, self.right, self.foot_top(said), 1.2, "ink")
        count = self.words.say(N_("papers", "{n} of {all}", n=page_n, all=of_n))
        broken = self.foot_lines(said)
        for n, line in enumerate(broken):
            y = self.bottom - 3 - LEAST_PT * letters.LEADING * (len(broken) - 1 - n)
            self.text(self.left, y, line, LEAST_PT, color="ink2")
        self.text(self.right, self.bottom - 3, count, LEAST_PT, color="ink2", align="right")

    def done(self) -> None:
        """Write the document where it belongs, whole or not at all."""
        self.canvas.save()
        made = self._buffer.getvalue()
        if not isinstance(self.target, str | Path):
            self.target.write(made)
            return
        path = Path(self.target)
        half = path.with_name(path.name + ".part")
        try:
            half.write_bytes(made)
            os.replace(half, path)
        except OSError as error:
            half.unlink(missing_ok=True)
            raise FileTrouble(
                N_("papers", "{file} could not be written: {why}.", file=path.name, why=error.strerror or str(error)),
                N_("papers", "Close it in other programs, or choose another folder."),
            ) from error

    # colours and pens: set only when they change, so that files stay small

    def water(self, moisture_wb_frac: float | None) -> str:
        """The shade of a moisture [fraction wet basis]; paper where none is known."""
        return self._shades["paper"] if moisture_wb_frac is None else self._waters[water_step(moisture_wb_frac)]

    def text_on(self, shade: str) -> str:
        """Ink or paper, whichever reads better on a shade (WCAG 2.2, contrast)."""
        light = _light(shade)
        return "ink" if (light + 0.05) / 0.05 > 1.05 / (light + 0.05) else "paper"

    def _shade(self, color: str) -> str:
        return color if color.startswith("#") else self._shades[color]

    def _ink(self, color: str) -> None:
        shade = self._shade(color)
        if self._now.get("fill") != shade:
            self.canvas.setFillColor(_color(shade))
            self._now["fill"] = shade

    def _pen(self, color: str, weight: float, dash: tuple[float, ...] = ()) -> None:
        shade = self._shade(color)
        if self._now.get("stroke") != shade:
            self.canvas.setStrokeColor(_color(shade))
            self._now["stroke"] = shade
        if self._now.get("weight") != weight:
            self.canvas.setLineWidth(weight)
            self._now["weight"] = weight
        if self._now.get("dash", ()) != dash:
            self.canvas.setDash(list(dash))
            self._now["dash"] = dash

    # text

    def text(
        self, x: float, y: float, text: str, size: float = 11, font: str = SANS, color: str = "ink", align: str = "left"
    ) -> float:
        """Write on the baseline y, from, to or about x; the x behind the last letter is returned."""
        assert size >= LEAST_PT, f"{size} pt is too small to read"
        text = letters.clean(text, font)
        wide = letters.width(text, size, font)
        left = x - (wide if align == "right" else wide / 2 if align == "middle" else 0.0)
        self._ink(color)
        self.canvas.setFont(font, size)
        self.canvas.drawString(left, self.high - y, text)
        return left + wide

    def runs(self, x: float, y: float, runs: Iterable[Run], gap: float = 0.0) -> float:
        """Write several runs one behind the other on one baseline."""
        for text, size, font, color in runs:
            x = self.text(x, y, text, size, font, color) + gap
        return x

    # lines and areas

    def level(
        self, x0: float, x1: float, y: float, weight: float = 0.6, color: str = "rule", dash: tuple[float, ...] = ()
    ) -> None:
        """A line across."""
        self.strokes([((x0, y), (x1, y))], weight, color, dash)

    def upright(
        self, x: float, y0: float, y1: float, weight: float = 0.6, color: str = "rule", dash: tuple[float, ...] = ()
    ) -> None:
        """A line down."""
        self.strokes([((x, y0), (x, y1))], weight, color, dash)

    def strokes(
        self, pieces: Iterable[tuple[Point, Point]], weight: float = 0.6, color: str = "ink",
        dash: tuple[float, ...] = (),
    ) -> None:  # fmt: skip
        """Separate straight lines with one pen."""
        self._pen(color, weight, dash)
        self.canvas.lines([(x0, self.high - y0, x1, self.high - y1) for (x0, y0), (x1, y1) in pieces])

    def course(
        self, points: Sequence[Point], weight: float = 1.0, color: str = "ink", dash: tuple[float, ...] = ()
    ) -> None:
        """A line through points."""
        self.shape(points, None, weight, color, dash=dash, closed=False)

    def fill(self, box: Box, color: str) -> None:
        """A filled rectangle."""
        self._ink(color)
        self.canvas.rect(box.left, self.high - box.bottom, box.width, box.height, stroke=0, fill=1)

    def frame(
        self, box: Box, weight: float = 0.75, color: str = "ink", ground: str | None = None,
        dash: tuple[float, ...] = (),
    ) -> None:  # fmt: skip
        """The outline of a rectangle, on a ground where one is given."""
        if ground is not None:
            self._ink(ground)
        self._pen(color, weight, dash)
        self.canvas.rect(
            box.left, self.high - box.bottom, box.width, box.height, stroke=1, fill=1 if ground is not None else 0
        )

    def shape(
        self, points: Sequence[Point], ground: str | None, weight: float = 0.75, color: str = "ink", *,
        dash: tuple[float, ...] = (), closed: bool = True,
    ) -> None:  # fmt: skip
        """A polygon with an outline, or (not `closed`) a line through points."""
        if len(points) < 2:
            return
        if ground is not None:
            self._ink(ground)
        self._pen(color, weight, dash)
        self.canvas.drawPath(self._path(points, closed), stroke=1, fill=1 if ground is not None else 0)

    def _path(self, points: Sequence[Point], closed: bool) -> Any:
        path = self.canvas.beginPath()
        path.moveTo(points[0][0], self.high - points[0][1])
        for x, y in points[1:]:
            path.lineTo(x, self.high - y)
        if closed:
            path.close()
        return path

    def dot(self, at: Point, radius: float, ground: str = "ink", weight: float = 0.9) -> None:
        """A round mark."""
        self._ink(ground)
        self._pen("ink", weight)
        self.canvas.circle(at[0], self.high - at[1], radius, stroke=1, fill=1)

    # patterns

    def pattern(self, box: Box, kind: str, color: str = "ink", within: Sequence[Point] = ()) -> None:
        """Fill with `estimated`, `doubtful`, `expected`, `resting` or `target`; `within` is a polygon in the box."""
        if box.width <= 0 or box.height <= 0:
            return
        row = _table()["patterns"][kind]
        pitch, weight = row["pitch_px"] * PX_PT, row["line_px"] * PX_PT
        with self._only(within):
            if row.get("dots"):
                rows_n = max(1, int(box.height / pitch))
                first = box.top + (box.height - (rows_n - 1) * pitch) / 2
                pieces = [
                    (
                        (box.left + pitch / (2 if i % 2 else 1) - weight, first + i * pitch),
                        (box.right, first + i * pitch),
                    )
                    for i in range(rows_n)
                    if box.width > pitch
                ]
                self.strokes(pieces, weight, color, (weight, pitch - weight))
            for slope in row.get("slopes", ()):
                self.strokes(_hatched(box, slope, pitch), weight, color)

    @contextmanager
    def _only(self, points: Sequence[Point]) -> Iterator[None]:
        """Draw inside a polygon only; no points: everywhere."""
        if not points:
            yield
            return
        kept = dict(self._now)
        self.canvas.saveState()
        self.canvas.clipPath(self._path(points, True), stroke=0, fill=0)
        yield
        self.canvas.restoreState()
        self._now = kept

    # marks of their own

    def practice_word(self, x: float, y: float, size: float = 14) -> float:
        """The word *practice* behind a title, in the practice season; the x behind it."""
        if not self.practice:
            return x
        return self.text(x, y, self.words.say(N_("papers", "practice")), size, ITALIC)

    def code_square(self, box: Box, payload: str) -> None:
        """A QR code (ISO/IEC 18004, level M) of plain text; the white around it is the caller's to keep."""
        made: Any = qrencoder.QRCode(None, qrencoder.QRErrorCorrectLevel.M)
        made.addData(payload)
        made.make()
        side = box.width / made.moduleCount
        path = self.canvas.beginPath()
        for n, row in enumerate(made.modules):
            at = 0
            for dark, run in groupby(row):
                far = at + len(list(run))
                if dark:
                    path.rect(box.left + at * side, self.high - box.top - (n + 1) * side, (far - at) * side, side)
                at = far
        self._ink("ink")
        self.canvas.drawPath(path, stroke=0, fill=1)


def _hatched(box: Box, slope: int, pitch: float) -> list[tuple[Point, Point]]:
    """Parallel lines of a slope [0, 45, 90 or 135 degrees], cut at the edges of a box."""
    if slope == 0:
        n = int(box.height / pitch)
        return [((box.left, y), (box.right, y)) for i in range(n) if (y := box.top + pitch * (i + 0.5)) < box.bottom]
    if slope == 90:
        n = int(box.width / pitch) + 1
        return [((x, box.top), (x, box.bottom)) for i in range(n) if (x := box.left + pitch * (i + 0.5)) < box.right]
    step = pitch * 2**0.5
    pieces: list[tuple[Point, Point]] = []
    far = step / 2
    while far < box.width + box.height:
        # a line that climbs to the right leaves the left or lower edge and meets the upper or right one
        x0, y0 = box.left + max(0.0, far - box.height), box.top + min(far, box.height)
        x1, y1 = box.left + min(far, box.width), box.top + max(0.0, far - box.width)
        if slope == 135:
            y0, y1 = box.top + box.bottom - y0, box.top + box.bottom - y1
        pieces.append(((x0, y0), (x1, y1)))
        far += step
    return pieces
