"""Stories for papers, a Spanish reader, and a canvas that keeps where everything is drawn."""

from __future__ import annotations

import re
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field, replace
from datetime import date, timedelta
from io import BytesIO
from typing import Any

import pypdfium2
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfgen.canvas import Canvas

from farmdesk.clock import FarmTime
from farmdesk.papers import page
from farmdesk.papers.lot_sheet import write_lot_sheet
from farmdesk.text import ENGLISH, N_, Num, Text, Words, kg, pct
from farmdesk.work.stories import BalancePart, SheetStory, Strip, StripDay, Weight
from tests.desk.samples import drying, strip_13w

TIME = FarmTime("America/Guatemala")
HILL = (
    ("E", 1460.0, 1500.0, False), ("D", 1500.0, 1550.0, False), ("C", 1560.0, 1600.0, True),
    ("F", 1600.0, 1640.0, False), ("B", 1640.0, 1680.0, False),
)  # fmt: skip
MONTHS = dict(zip("Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec".split(),
                  "ene feb mar abr may jun jul ago sep oct nov dic".split(), strict=True))  # fmt: skip
SAID = {
    "What was done": "Lo que se hizo", "Drying": "Secado", "Weights": "Pesos", "Screens": "Zarandas",
    "Green coffee": "Café oro", "not measured": "no se midió", "Lot sheet": "Hoja de lote", "practice": "práctica",
    "What differed from the method": "Lo que fue distinto del método", "at rest, {n} days": "en reposo, {n} días",
    "beds {days}, {a} → {b}": "camas {days}, {a} → {b}", "picked {days}": "cortado {days}", "top": "primera",
    "moisture, % wet basis": "humedad, % base húmeda", "unexplained": "sin explicación", "Mill, {day}": "Trilla, {day}",
    "Night sheet": "Hoja de noche", "Yard sheet": "Hoja del patio", "If rain comes": "Si viene lluvia",
    "Open outdoors and stand aside. The gas kills without a smell. Never lean in, never open alone in a closed room.":
        "Destapar al aire libre y hacerse a un lado. El gas mata sin olor. No asomarse ni destapar solo en un cuarto.",
    **MONTHS,
}  # fmt: skip
OUTSIDE = re.compile(r"(\{[^{}]*\})")


def spanish(context: str, english: str) -> str:
    """Known sentences in Spanish; others a third longer and full of accents, as Spanish would be."""
    if english in SAID:
        return SAID[english]
    accents = str.maketrans("aeioun", "áéíóúñ")
    parts = [p if p.startswith("{") else p.translate(accents) for p in OUTSIDE.split(english)]
    return "".join(parts) + " ¿ya? ½ día"[: max(0, len(english) // 3)]


SPANISH = Words(spanish, ".", ",", "es")


def said(text: str) -> Text:
    """A text that is the same in every language."""
    return N_("sheet", "{text}", text=text)


def sheet_13w(**changes: Any) -> SheetStory:
    """25-13W milled and graded, on 22 March."""
    strip = replace(
        strip_13w(), last_day=date(2025, 3, 22), today=date(2025, 3, 22), gate=date(2025, 1, 20), rest_until=None,
        sent=date(2025, 3, 18), milled=date(2025, 3, 20), ahead=None,
        beds=tuple(
            StripDay(date(2025, 1, 8) + timedelta(days=n), w)
            for n, w in enumerate((0.546, 0.453, 0.395, 0.337, 0.275, 0.23, 0.197, 0.17, 0.15, 0.135, 0.124, 0.116))
        ),
    )  # fmt: skip
    story = SheetStory(
        "25-13W", "T", "Finca La Ladera", False, 1, date(2025, 3, 22),
        N_("sheet", "{method}; block {code}, {name}, {variety}, {heights} m. Picked {days}.", method=N_("methods", "washed"),
           code="C", name="Spring (El Ojo)", variety="Pacas", heights="1,560–1,600", days="6–7 Jan 2025"),
        HILL, strip, None,
        (
            (N_("sheet", "Picked"), N_("sheet", "{ripe} ripe by count; {weight}", ripe=pct(0.97, 0), weight=kg(1_960_000))),
            (N_("sheet", "Vessels"), N_("sheet", "{vessels}, {hours}, {how}", vessels="T1 T2", hours=Num(14, "h"), how="open")),
            (N_("sheet", "pH"), N_("sheet", "{first} to {last}", first=Num(5.54, "", 2), last=Num(4.61, "", 2))),
            (N_("sheet", "Rinsed"), N_("sheet", "{n} times; litres not measured", n=3)),
            (N_("sheet", "Beds"), N_("sheet", "{n}: {beds}", n=12, beds="1–6 9–14")),
            (N_("sheet", "Drying"), N_("sheet", "{days}, {good} of good drying", days=Num(12, "days"), good=Num(74, "h"))),
            (N_("sheet", "Air"), None),
        ),
        drying(),
        (
            (N_("stages", "delivered"), Weight(1_960_000)), (N_("stages", "accepted"), Weight(1_882_000)),
            (N_("forms", "wet parchment"), Weight(734_000, "estimated")), (N_("forms", "dry parchment"), Weight(None)),
            (N_("stages", "green"), Weight(304_000)), (N_("stages", "top grade"), Weight(238_000)),
        ),
        N_("sheet", "{ratio} of cherry for 1 kg of green", ratio=Num(6.45, "kg", 2)),
        tuple(
            BalancePart(account, N_("accounts", "{name}", name=N_("accounts", name)), grams)
            for account, name, grams in (
                ("top", "top", 238_000), ("peaberry", "peaberry", 24_000), ("light", "light", 18_000),
                ("small", "small", 24_000), (">husk", "husk", 65_000), (">unexplained", "unexplained", 3_000),
            )
        ),
        N_("balance", "{sent} of dry parchment sent; outturn {green}, {share}", sent=kg(372_000), green=kg(304_000),
           share=pct(0.817)),
        date(2025, 3, 20),
        tuple((said(name), grams) for name, grams in (
            ("18", 40_000), ("17", 76_000), ("16", 88_000), ("15", 52_000), ("14", 18_000), ("<14", 6_000), ("PB", 24_000)
        )),
        (
            (N_("sheet", "moisture"), said("10.9 %, grain meter M1, 20 Jan, in parchment")),
            (N_("sheet", "water activity"), None),
            (N_("sheet", "defects"), said("2 full in 350 g, two-category table, 2018")),
            (N_("sheet", "cup"), said("86.0 at own table, 3 sittings: clean, orange")),
            (N_("sheet", "free"), said("237.5 kg: 7 boxes of 30 kg, 27.5 kg rest")),
        ),
        (said("The moisture meter read 0.8 points high; its readings are shown corrected."),
         said("The lot was not mixed with another.")),
    )  # fmt: skip
    return replace(story, **changes)


def sheet_on_beds(**changes: Any) -> SheetStory:
    """The same lot on the evening of 14 January."""
    return replace(
        sheet_13w(), made=date(2025, 1, 14), strip=strip_13w(), weights=sheet_13w().weights[:3], ratio=None,
        unfinished=N_("sheet", "Not finished: {where}. What is not yet known is left open.", where="beds 12–14 16"),
        balance=(), balance_of=None, milled=None, screens=(), green=tuple((head, None) for head, _ in sheet_13w().green),
        **changes,
    )  # fmt: skip


def empty_sheet() -> SheetStory:
    """A lot of which nothing is known but its code."""
    strip = Strip(date(2025, 1, 6), date(2025, 1, 6), date(2025, 1, 6))
    return SheetStory(
        "25-30W",
        "",
        "",
        False,
        1,
        date(2025, 1, 6),
        said(""),
        (),
        strip,
        None,
        (),
        None,
        (),
        None,
        (),
        None,
        None,
        (),
        (),
        (),
    )


def sheet_pdf(story: SheetStory, words: Words = ENGLISH, **options: Any) -> bytes:
    """A lot sheet as bytes."""
    target = BytesIO()
    write_lot_sheet(story, words, target, time=TIME, **options)
    return target.getvalue()


def plain(text: str) -> str:
    """A text with every kind of space made one space."""
    return re.sub(r"[\s\u202f\u00a0]+", " ", text)


def read_back(pdf: bytes) -> list[str]:
    """The text of every page, as a reader of the file finds it."""
    document = pypdfium2.PdfDocument(pdf)
    try:
        return [plain(document[n].get_textpage().get_text_range()) for n in range(len(document))]
    finally:
        document.close()


@dataclass
class Drawn:
    """What was drawn, page by page [pt, y upwards]: letters with their size, and the edges of every mark."""

    wide: float = 0.0
    high: float = 0.0
    pages_n: int = 0
    letters: list[tuple[str, str, float, float, float]] = field(default_factory=list)  # text, font, size, x, y
    edges: list[tuple[float, float, float, float]] = field(default_factory=list)  # left, low, right, high


def recording(drawn: Drawn) -> type[Canvas]:
    """A canvas that also keeps what is drawn; inside a clip only what the clip lets through."""

    class Recorded(Canvas):
        def __init__(self, target: Any, **options: Any) -> None:
            self._clips: list[Any] = [None]
            drawn.wide, drawn.high = options["pagesize"]
            super().__init__(target, **options)

        def _mark(self, points: list[tuple[float, float]], by: float = 0.0) -> None:
            xs, ys = [p[0] for p in points], [p[1] for p in points]
            box = (min(xs) - by, min(ys) - by, max(xs) + by, max(ys) + by)
            clip = self._clips[-1]
            if clip is not None:
                box = (max(box[0], clip[0]), max(box[1], clip[1]), min(box[2], clip[2]), min(box[3], clip[3]))
            drawn.edges.append(box)

        def drawString(self, x: float, y: float, text: str, *rest: Any, **more: Any) -> None:
            size, font = self._fontsize, self._fontname
            drawn.letters.append((text, font, size, x, y))
            face = pdfmetrics.getFont(font).face
            wide = pdfmetrics.stringWidth(text, font, size)
            self._mark([(x, y - 0.2 * size), (x + wide, y + face.capHeight / 1000 * size)])
            super().drawString(x, y, text, *rest, **more)

        def rect(self, x: float, y: float, width: float, height: float, stroke: int = 1, fill: int = 0) -> None:
            self._mark([(x, y), (x + width, y + height)])
            super().rect(x, y, width, height, stroke=stroke, fill=fill)

        def lines(self, linelist: Any) -> None:
            linelist = list(linelist)
            for x0, y0, x1, y1 in linelist:
                self._mark([(x0, y0), (x1, y1)])
            super().lines(linelist)

        def circle(self, x: float, y: float, r: float, stroke: int = 1, fill: int = 0) -> None:
            self._mark([(x, y)], r)
            super().circle(x, y, r, stroke=stroke, fill=fill)

        def drawPath(self, path: Any, stroke: int = 1, fill: int = 0, **more: Any) -> None:
            self._mark(_corners(path))
            super().drawPath(path, stroke=stroke, fill=fill, **more)

        def clipPath(self, path: Any, stroke: int = 1, fill: int = 0, **more: Any) -> None:
            xs, ys = zip(*_corners(path), strict=True)
            self._clips[-1] = (min(xs), min(ys), max(xs), max(ys))
            super().clipPath(path, stroke=stroke, fill=fill, **more)

        def saveState(self) -> None:
            self._clips.append(self._clips[-1])
            super().saveState()

        def restoreState(self) -> None:
            self._clips.pop()
            super().restoreState()

        def showPage(self) -> None:
            drawn.pages_n += 1
            super().showPage()

    return Recorded


def _corners(path: Any) -> list[tuple[float, float]]:
    """The corners of a path from the operators it was made of."""
    found = []
    for line in path.getCode().splitlines():
        numbers = [float(n) for n in re.findall(r"-?\d*\.?\d+", line)]
        if line.rstrip().endswith(" re"):
            x, y, wide, high = numbers[:4]
            found += [(x, y), (x + wide, y + high)]
        else:
            found += list(zip(numbers[::2], numbers[1::2], strict=False))
    return found


@contextmanager
def watched() -> Iterator[Drawn]:
    """Draw papers onto a recording canvas for as long as the block lasts."""
    drawn, real = Drawn(), page.pdfcanvas.Canvas
    page.pdfcanvas.Canvas = recording(drawn)
    try:
        yield drawn
    finally:
        page.pdfcanvas.Canvas = real


def outside(drawn: Drawn, by: float = 0.6) -> list[tuple[float, float, float, float]]:
    """Marks that leave the margins by more than half a line's width [pt]."""
    low, right, top = page.MARGIN_PT - by, drawn.wide - page.MARGIN_PT + by, drawn.high - page.MARGIN_PT + by
    return [e for e in drawn.edges if e[0] < low or e[1] < low or e[2] > right or e[3] > top]


def covered(drawn: Drawn) -> list[tuple[str, str]]:
    """Words that cover one another."""
    boxes = [
        (x, y, x + pdfmetrics.stringWidth(t, f, s), y + 0.6 * s, t) for t, f, s, x, y in drawn.letters if t.strip()
    ]
    return [
        (a[4], b[4])
        for i, a in enumerate(boxes)
        for b in boxes[i + 1 :]
        if a[0] < b[2] - 0.5 and b[0] < a[2] - 0.5 and a[1] < b[3] - 0.5 and b[1] < a[3] - 0.5
    ]
