"""The lot sheet says every fact of its story, on one page, and nothing it does not know."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from typing import Any

import numpy as np
import pytest

from farmdesk.papers.page import Page
from farmdesk.papers.place import Box
from farmdesk.papers.preview import page_image
from farmdesk.text import ENGLISH, N_, Words
from farmdesk.work.stories import BalancePart, SheetStory, StripDay, Weight
from tests.desk.samples_today import on
from tests.papers.made import (
    SPANISH,
    covered,
    empty_sheet,
    outside,
    plain,
    read_back,
    said,
    sheet_13w,
    sheet_on_beds,
    sheet_pdf,
    watched,
)

STORIES = {"milled": sheet_13w(), "on beds": sheet_on_beds(), "practice": sheet_13w(practice=True)}
ALL = pytest.mark.parametrize("story", STORIES.values(), ids=list(STORIES))
PAPERS = pytest.mark.parametrize("paper", ["a4", "letter"])
LANGUAGES = pytest.mark.parametrize("words", [ENGLISH, SPANISH], ids=["en", "es"])


def facts_of(story: SheetStory, words: Words) -> Iterator[str]:
    """Everything of a story that its sheet must say."""
    say = words.say
    yield from (story.code, story.check, story.farm)
    yield say(story.blocks_line)[1:]  # the first letter is made a capital
    for text in (story.unfinished, story.ratio, story.balance_of):
        if text is not None:
            yield say(text)
    for head, fact in story.done:
        yield say(head)
        yield say(fact) if fact is not None else say(N_("papers", "not measured"))
    for head, fact in story.green if not story.unfinished else ():
        yield say(head)
        yield say(fact) if fact is not None else say(N_("papers", "not measured"))
    for name, weight in story.weights:
        yield say(name)
        if weight.grams is not None:
            yield words.number(weight.grams / 1000, 0, "kg")
    for part in story.balance:
        yield say(part.label)
        yield words.number(part.grams / 1000, 0, "kg")
    total = sum(grams for _, grams in story.screens)
    for name, grams in story.screens:
        yield say(name)
        yield words.number(grams / 1000, 0, "kg")
        yield words.number(100 * grams / total, 0, "%")
    yield from (say(text) for text in story.differed)


@ALL
@PAPERS
@LANGUAGES
@pytest.mark.parametrize("mono", [False, True], ids=["colour", "mono"])
def test_one_page_with_every_fact(story: SheetStory, paper: str, words: Words, mono: bool) -> None:
    pages = read_back(sheet_pdf(story, words, paper=paper, mono=mono))
    assert len(pages) == 1
    missing = [fact for fact in facts_of(story, words) if plain(fact).strip() not in pages[0]]
    assert not missing


@ALL
@PAPERS
@LANGUAGES
def test_within_the_margins_and_large_enough_to_read(story: SheetStory, paper: str, words: Words) -> None:
    with watched() as drawn:
        sheet_pdf(story, words, paper=paper)
    assert drawn.pages_n == 1
    assert min(size for _, _, size, _, _ in drawn.letters) >= 9.5
    assert not outside(drawn)


def test_marks_beyond_the_margin_are_seen() -> None:
    with watched() as drawn:
        sheet_pdf(sheet_13w())
    drawn.edges.append((20, 100, 50, 110))
    assert outside(drawn) == [(20, 100, 50, 110)]


def test_letter_takes_its_lesser_height_from_the_charts() -> None:
    sizes = {}
    for paper in ("a4", "letter"):
        with watched() as drawn:
            sheet_pdf(sheet_13w(), paper=paper)
        sizes[paper] = next(size for text, _, size, _, _ in drawn.letters if text.startswith("97"))
    assert sizes["letter"] == sizes["a4"]


@ALL
def test_words_do_not_cover_one_another(story: SheetStory) -> None:
    with watched() as drawn:
        sheet_pdf(story)
    assert not covered(drawn)
    drawn.letters += drawn.letters[:1]
    assert covered(drawn)


def test_the_year_long_road_from_picking_to_mill() -> None:
    text = read_back(sheet_pdf(sheet_13w()))[0]
    for words in ("picked 6–7 Jan", "beds 8–20 Jan, 55 → 12 %", "at rest, 57 days", "milled 20 Mar"):
        assert words in text


def test_what_was_not_measured_says_so() -> None:
    text = read_back(sheet_pdf(sheet_13w()))[0]
    assert text.count("not measured") == 4  # air, dry parchment, litres, water activity
    assert "None" not in text
    assert "nan" not in text


def test_what_was_estimated_says_so() -> None:
    text = read_back(sheet_pdf(sheet_13w()))[0]
    assert "≈ 734 kg" in text
    assert "≈ 1,960 kg" not in text


def test_a_lot_on_the_beds_says_so_and_leaves_out_what_is_not_yet() -> None:
    text = read_back(sheet_pdf(sheet_on_beds()))[0]
    assert "Not finished: beds 12–14 16." in text
    assert "dry on 17–19 Jan, expected" in text
    for band in ("Mill", "Screens", "Green coffee", "top grade"):
        assert band not in text


def test_an_open_end_is_said_and_never_closed() -> None:
    story = sheet_on_beds()
    strip = replace(story.strip, ahead=(date(2025, 1, 17), date(2025, 1, 25), None))
    assert "dry on 17 Jan at the earliest" in read_back(sheet_pdf(replace(story, strip=strip)))[0]


def test_what_lies_ahead_of_a_lot_in_its_vessel_is_the_end_of_the_ferment() -> None:
    story = sheet_on_beds()
    vessel = ((on(23, 17), None),)
    strip = replace(
        story.strip, vessel=vessel, beds=(), ahead=(date(2025, 1, 26), date(2025, 1, 26), date(2025, 1, 27))
    )
    text = read_back(sheet_pdf(replace(story, strip=strip)))[0]
    assert "ferment ends on 26–27 Jan, expected" in text
    assert "dry on" not in text


def test_practice_is_marked_and_a_real_season_is_not() -> None:
    assert " practice " in read_back(sheet_pdf(sheet_13w(practice=True)))[0]
    assert "práctica" in read_back(sheet_pdf(sheet_13w(practice=True), SPANISH))[0]
    assert "practice" not in read_back(sheet_pdf(sheet_13w()))[0]


def test_signs_of_markup_are_plain_text() -> None:
    story = sheet_13w(farm='A <b>&amp; "B" & C', differed=(said("<i>5 < 6</i> & more %s {x}"),))
    text = read_back(sheet_pdf(story))[0]
    assert 'A <b>&amp; "B" & C' in text
    assert "<i>5 < 6</i> & more %s {x}" in text


def test_nothing_known_is_still_a_sheet() -> None:
    pages = read_back(sheet_pdf(empty_sheet()))
    assert len(pages) == 1
    assert "25-30W" in pages[0]
    assert "not measured" not in pages[0]


def test_a_lot_joined_from_others_needs_no_picking_nor_beds() -> None:
    story = sheet_13w()
    strip = replace(story.strip, picks=(), vessel=(), beds=(), rain=(), gate=None, sent=None)
    pages = read_back(sheet_pdf(replace(story, strip=strip, drying=None, done=())))
    assert len(pages) == 1
    assert "What was done" not in pages[0]


@pytest.mark.parametrize("grams", [-4_000, 0, 4_000])
def test_the_unexplained_is_always_drawn_and_said(grams: int) -> None:
    parts = (*sheet_13w().balance[:-1], BalancePart(">unexplained", N_("accounts", "unexplained"), grams))
    text = read_back(sheet_pdf(sheet_13w(balance=parts)))[0]
    assert f"unexplained {'−' if grams < 0 else ''}{abs(grams) // 1000} kg" in text


def test_grams_of_a_hand_sieve_are_told_in_grams() -> None:
    text = read_back(sheet_pdf(sheet_13w(screens=((said("17"), 120), (said("16"), 180)))))[0]
    assert "120 g" in text
    assert "40 %" in text


def test_cut_lines_are_counted() -> None:
    story = sheet_13w(differed=tuple(said(f"Deviation {n}: " + "word " * 30) for n in range(30)))
    text = read_back(sheet_pdf(story))[0]
    shown = sum(f"Deviation {n}:" in text for n in range(30))
    assert 0 < shown < 30
    assert f"and {30 - shown} more in the notebook" in text


def test_a_bed_day_without_a_reading_keeps_the_ground() -> None:
    days = tuple(StripDay(date(2025, 1, 8 + n), None) for n in range(10))
    strip = replace(sheet_13w().strip, beds=days)
    assert "beds 8–20 Jan," not in read_back(sheet_pdf(sheet_13w(strip=strip)))[0]


def test_heaps_are_to_scale(monkeypatch: pytest.MonkeyPatch) -> None:
    weights = (
        (N_("stages", "delivered"), Weight(1_000_000)), (N_("stages", "accepted"), Weight(500_000)),
        (N_("stages", "green"), Weight(250_000)),
    )  # fmt: skip
    tall: list[float] = []
    frame = Page.frame

    def kept(page: Page, box: Box, *rest: Any, **more: Any) -> None:
        tall.append(box.height)
        frame(page, box, *rest, **more)

    monkeypatch.setattr(Page, "frame", kept)
    sheet_pdf(replace(sheet_on_beds(), weights=weights, drying=None))
    assert tall[-3] / tall[-2] == pytest.approx(2, rel=0.01)
    assert tall[-2] / tall[-1] == pytest.approx(2, rel=0.01)


# the square code, read from the picture as a camera would


ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:"
MASKS = (
    lambda r, c: (r + c) % 2 == 0, lambda r, c: r % 2 == 0, lambda r, c: c % 3 == 0, lambda r, c: (r + c) % 3 == 0,
    lambda r, c: (r // 2 + c // 3) % 2 == 0, lambda r, c: r * c % 2 + r * c % 3 == 0,
    lambda r, c: (r * c % 2 + r * c % 3) % 2 == 0, lambda r, c: ((r + c) % 2 + r * c % 3) % 2 == 0,
)  # fmt: skip


def scanned(pdf: bytes) -> str:
    """The text of a version 1 code at the upper right of the first page (ISO/IEC 18004: 6.8 masks, 7.4 data)."""
    data, wide, high = page_image(pdf, 0, 1654)  # 200 dots an inch
    dark = np.frombuffer(data, dtype=np.uint8).reshape(high, wide, 4)[:, :, 0] < 128
    side, margin = 18 / 210 * wide / 21, 13 / 210 * wide
    grid = np.array(
        [
            [dark[int(margin + (r + 0.5) * side), int(wide - margin - (20.5 - c) * side)] for c in range(21)]
            for r in range(21)
        ]
    )
    assert grid[0:7, 0].all(), "the upper left finder stands where a camera looks for it"
    assert grid[0, 14:21].all()
    told = [grid[8, c] for c in (2, 3, 4)]
    mask = MASKS[int("".join(str(int(bit)) for bit in told), 2) ^ 0b101]
    taken = np.zeros((21, 21), dtype=bool)
    taken[:9, :9] = taken[:9, 13:] = taken[13:, :9] = taken[6, :] = taken[:, 6] = True
    bits, upward = [], True
    for right in (20, 18, 16, 14, 12, 10, 8, 5, 3, 1):
        for r in range(20, -1, -1) if upward else range(21):
            bits += [str(int(grid[r, c] ^ mask(r, c))) for c in (right, right - 1) if not taken[r, c]]
        upward = not upward
    stream = "".join(bits)
    assert stream[:4] == "0010", "letters and figures"
    count, at, found = int(stream[4:13], 2), 13, ""
    for _ in range(count // 2):
        pair = int(stream[at : at + 11], 2)
        found, at = found + ALPHABET[pair // 45] + ALPHABET[pair % 45], at + 11
    return found + (ALPHABET[int(stream[at : at + 6], 2)] if count % 2 else "")


@pytest.mark.parametrize(("code", "check"), [("25-13W", "T"), ("25-05A", "Y"), ("25-15N", "4")])
def test_a_camera_reads_code_and_check_character_and_no_address(code: str, check: str) -> None:
    assert scanned(sheet_pdf(sheet_13w(code=code, check=check))) == f"{code}-{check}"
