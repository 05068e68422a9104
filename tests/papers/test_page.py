"""The sheet itself: fonts inside, the same bytes, no person, no clock, whole files or none."""

from __future__ import annotations

import re
import zlib
from datetime import date
from io import BytesIO
from pathlib import Path

import pypdfium2
import pytest

from farmdesk.errors import FileTrouble
from farmdesk.papers.page import MARGIN_PT, Page, water_step
from farmdesk.papers.place import Box
from farmdesk.text import ENGLISH
from tests.papers.made import SPANISH, sheet_13w, sheet_pdf


def fonts_of(pdf: bytes) -> dict[str, bool]:
    """Every font the file names, and whether its letters are inside."""
    objects = dict(re.findall(rb"(?s)\n(\d+) 0 obj\r?\n(.*?)\r?\nendobj", pdf))
    found = {}
    for body in objects.values():
        if b"/Type /Font\n" in body or re.search(rb"/Type /Font\s", body):
            name = re.search(rb"/BaseFont /(\S+)", body)
            described = re.search(rb"/FontDescriptor (\d+)", body)
            assert name is not None
            found[name.group(1).decode()] = bool(described and b"/FontFile2" in objects[described.group(1)])
    return found


@pytest.mark.parametrize("words", [ENGLISH, SPANISH], ids=["en", "es"])
def test_every_font_travels_along(words) -> None:
    fonts = fonts_of(sheet_pdf(sheet_13w(practice=True), words))
    assert fonts
    assert all(fonts.values())
    assert all("Source" in name for name in fonts), "no font of the viewer's own is named"


def test_a_font_left_out_is_seen() -> None:
    from reportlab.pdfgen.canvas import Canvas

    target = BytesIO()
    canvas = Canvas(target, invariant=1)
    canvas.drawString(10, 10, "x")
    canvas.save()
    assert fonts_of(target.getvalue()) == {"Helvetica": False}


def test_the_same_story_gives_the_same_bytes() -> None:
    assert sheet_pdf(sheet_13w()) == sheet_pdf(sheet_13w())
    assert sheet_pdf(sheet_13w()) != sheet_pdf(sheet_13w(version_n=2))


def test_who_made_it_and_when_come_from_the_story() -> None:
    document = pypdfium2.PdfDocument(sheet_pdf(sheet_13w(farm="Finca <Ñandú> & hijos")))
    try:
        told = document.get_metadata_dict()
    finally:
        document.close()
    assert told["Title"] == "Lot sheet 25-13W T"
    assert told["Author"] == "Finca <Ñandú> & hijos"
    assert told["CreationDate"].startswith("D:20250322")
    assert told["ModDate"] == told["CreationDate"]


@pytest.mark.parametrize(("paper", "size"), [("a4", (595.3, 841.9)), ("letter", (612.0, 792.0))])
def test_paper_sizes(paper: str, size: tuple[float, float]) -> None:
    document = pypdfium2.PdfDocument(sheet_pdf(sheet_13w(), paper=paper))
    try:
        assert document[0].get_size() == pytest.approx(size, abs=0.1)
    finally:
        document.close()


def colors_of(pdf: bytes) -> set[tuple[float, float, float]]:
    """Every colour that is set on the first page."""
    found = set()
    for stream in re.findall(rb"stream\r?\n(.*?)endstream", pdf, re.DOTALL):
        drawn = zlib.decompressobj().decompress(stream)
        for three in re.findall(rb"([\d.]+) ([\d.]+) ([\d.]+) (?:rg|RG)\b", drawn):
            found.add(tuple(float(n) for n in three))
    return found


def test_mono_is_grey_and_colour_is_water_alone() -> None:
    grey = colors_of(sheet_pdf(sheet_13w(), mono=True))
    assert len(grey) > 4
    assert all(r == g == b for r, g, b in grey)
    coloured = {c for c in colors_of(sheet_pdf(sheet_13w())) if not c[0] == c[1] == c[2]}
    assert coloured
    assert all(r <= g and r < 0.96 for r, g, b in coloured), "no warm colour on paper"


def page_of(target: BytesIO | Path) -> Page:
    return Page(target, ENGLISH, title="x", farm="y", made=date(2025, 1, 1))


def test_small_letters_are_refused() -> None:
    with pytest.raises(AssertionError):
        page_of(BytesIO()).text(100, 100, "too small", 9)


def test_a_paper_is_written_whole_or_not_at_all(tmp_path: Path) -> None:
    there = tmp_path / "25-13W.pdf"
    there.write_bytes(b"an older paper")
    page = page_of(there)
    page.text(100, 100, "new", 12)
    page.done()
    assert there.read_bytes().startswith(b"%PDF")
    assert [file.name for file in tmp_path.iterdir()] == ["25-13W.pdf"]


def test_a_folder_that_is_not_there_is_told(tmp_path: Path) -> None:
    page = page_of(tmp_path / "gone" / "25-13W.pdf")
    with pytest.raises(FileTrouble, match=r"25-13W\.pdf"):
        page.done()


def test_the_steps_of_water() -> None:
    assert [water_step(m) for m in (0.11, 0.125, 0.15, 0.2, 0.3, 0.45, 0.55)] == [0, 0, 1, 2, 3, 4, 5]


def test_words_on_water_stand_out() -> None:
    page = page_of(BytesIO())
    assert page.text_on(page.water(0.6)) == "paper"
    assert page.text_on(page.water(0.11)) == "ink"
    assert page.water(None) == "#FFFFFF"


def test_the_practice_edge_stands_inside_the_margin_and_the_words_beside_it() -> None:
    page = Page(BytesIO(), ENGLISH, title="x", farm="y", made=date(2025, 1, 1), practice=True)
    assert page.left > MARGIN_PT + 6
    assert page_of(BytesIO()).left == MARGIN_PT


def test_an_empty_pattern_draws_nothing() -> None:
    page = page_of(BytesIO())
    before = len(page.canvas._code)
    page.pattern(Box(10, 10, 10, 20), "estimated")
    assert len(page.canvas._code) == before
