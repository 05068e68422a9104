"""The clerk's weigh-in sheet and the pay sheet: every code and every cent on paper, readable, inside the margins."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date
from io import BytesIO

import pytest

from farmdesk.errors import NotPossible
from farmdesk.papers.pay_sheet import columns, write_pay_sheet
from farmdesk.papers.sack_tags import COLUMNS, ROWS, write_sack_tags
from farmdesk.papers.weigh_sheet import write_weigh_sheet
from farmdesk.text import ENGLISH, N_, Words
from farmdesk.work.pay import PayRow, PayWeek, note_count
from farmdesk.work.pay_story import PayStory
from farmdesk.work.weigh_grid import SheetKey, WeighSheet
from tests.papers.made import TIME, covered, outside, read_back, watched

CREW = tuple(f"P{n:02d}" for n in range(1, 27))
NOTES = (50_000, 10_000, 5_000, 2_000, 1_000, 500, 200, 100, 50, 20, 10, 5)
AT = TIME.instant(date(2025, 1, 18), 17, 30)


def weigh_sheet(**changes) -> WeighSheet:
    key = SheetKey("25-16W", "D", "pm", date(2025, 1, 14))
    made = WeighSheet(
        AT, key, "H", "Parainema", (), (), (), 0, 0, 1_750_000, None, None, CREW, {}, None, AT
    )  # fmt: skip
    return replace(made, **changes)


def pay_row(n: int, **changes) -> PayRow:
    net = 54_330 + 5 * n
    made = PayRow(f"P{n:02d}", (), 79_900, 54_332, 0, 0, 0, 0, -2, net, 0, 6_392)
    return replace(made, **changes)


def pay_week(rows: tuple[PayRow, ...]) -> PayWeek:
    envelopes = {row.picker: note_count(row.net_cents, NOTES) for row in rows}
    bank: dict[int, int] = {}
    for envelope in envelopes.values():
        for note, n in envelope.items():
            bank[note] = bank.get(note, 0) + n
    total = sum(row.net_cents for row in rows)
    return PayWeek(
        date(2025, 1, 12), date(2025, 1, 18), rows, total, envelopes, dict(sorted(bank.items(), reverse=True)), 0, False
    )


def pay_story(n: int = 26, **changes) -> PayStory:
    week = pay_week(tuple(pay_row(i) for i in range(1, n + 1)))
    made = PayStory(AT, "Demo farm", "L", (), week, None, (), (), (), NOTES, CREW, N_("pay_story", "x"))
    return replace(made, **changes)


Writer = Callable[..., None]
PAPERS: tuple[tuple[Writer, Callable[[], object]], ...] = (
    (write_weigh_sheet, weigh_sheet),
    (write_pay_sheet, pay_story),
)


def pdf_of(write: Writer, story: object, **options) -> bytes:
    target = BytesIO()
    write(story, options.pop("words", ENGLISH), target, time=TIME, farm="Demo farm, hillside", **options)
    return target.getvalue()


@pytest.mark.parametrize("size", ["a4", "letter"])
@pytest.mark.parametrize(("write", "made"), PAPERS, ids=["weigh", "pay"])
def test_one_readable_page_inside_the_margins_no_words_upon_words(write: Writer, made, size: str) -> None:
    with watched() as drawn:
        pdf_of(write, made(), paper=size, practice=True)
    assert drawn.pages_n == 1
    assert min(letters[2] for letters in drawn.letters) >= 9.5
    assert not outside(drawn, 1.6)
    assert not covered(drawn)


@pytest.mark.parametrize(("write", "made"), PAPERS, ids=["weigh", "pay"])
def test_the_same_bytes_from_the_same_story(write: Writer, made) -> None:
    assert pdf_of(write, made()) == pdf_of(write, made())


def test_every_code_stands_on_the_weigh_in_sheet_with_spare_rows() -> None:
    (text,) = read_back(pdf_of(write_weigh_sheet, weigh_sheet()))
    assert all(code in text for code in CREW)
    assert "25-16W H" in text
    assert "Tuesday 14 January 2025" in text
    assert "morning" in text
    assert "afternoon" in text


def test_a_crew_too_large_for_a_page_keeps_inside_it() -> None:
    with watched() as drawn:
        pdf_of(write_weigh_sheet, weigh_sheet(crew=tuple(f"P{n:02d}" for n in range(1, 60))))
    assert not outside(drawn, 1.6)


def test_the_pay_sheet_adds_up_to_the_last_coin() -> None:
    story = pay_story()
    (text,) = read_back(pdf_of(write_pay_sheet, story))
    assert story.week is not None
    total = f"{story.week.total_cents / 100:,.2f} L"
    assert text.count(total) == 2  # the payroll, and what the notes and coins come to
    for row in story.week.rows:
        assert f"{row.net_cents / 100:,.2f}" in text
    assert "26 envelopes" in text
    assert "signature or thumb" in text


def test_columns_without_an_amount_are_left_out() -> None:
    week = pay_week((pay_row(1), pay_row(2, advance_cents=30_000)))
    heads = [str(head) for head, _ in columns(week)]
    assert heads == ["piece", "bonus", "advance", "rounded", "net"]
    assert dict(zip(heads, (cents for _, cents in columns(week)), strict=True))["advance"] == [0, -30_000]


def test_many_pickers_go_on_overleaf_and_none_is_lost() -> None:
    story = pay_story(70)
    pages = read_back(pdf_of(write_pay_sheet, story))
    assert len(pages) == 3
    assert all(f"P{n:02d}" in " ".join(pages) for n in range(1, 71))
    assert "2 of 3" in pages[1]


def test_a_week_that_cannot_be_reckoned_says_why() -> None:
    why = N_("pay", "No picking rate is set, so nothing can be paid by weight.")
    with pytest.raises(NotPossible, match="No picking rate"):
        pdf_of(write_pay_sheet, pay_story(week=None, headline=why))


def test_the_crews_language() -> None:
    spanish = {"Weigh-in sheet": "Hoja de pesada", "Pay sheet": "Planilla", "afternoon": "tarde", "net": "neto"}
    words = Words(lambda context, said: spanish.get(said, ""), ".", ",", "es")
    assert "Hoja de pesada" in read_back(pdf_of(write_weigh_sheet, weigh_sheet(), words=words))[0]
    assert "tarde" in read_back(pdf_of(write_weigh_sheet, weigh_sheet(), words=words))[0]
    assert "Planilla" in read_back(pdf_of(write_pay_sheet, pay_story(), words=words))[0]


@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_sack_tags_carry_the_letter_the_lot_and_its_check(paper: str) -> None:
    with watched() as drawn:
        pdf = BytesIO()
        write_sack_tags(weigh_sheet(), ENGLISH, pdf, time=TIME, farm="Demo farm, hillside", paper=paper)
    assert not outside(drawn)
    (text,) = read_back(pdf.getvalue())
    assert text.count("25-16W H") == COLUMNS * ROWS
    assert text.count("block D Parainema") == COLUMNS * ROWS
    assert text.count("mixed: this block, kg") == COLUMNS * ROWS


def test_a_tag_of_a_block_that_is_not_known_and_of_a_long_name() -> None:
    key = replace(weigh_sheet().key, block="?")
    with watched() as drawn:
        pdf = BytesIO()
        long = weigh_sheet(
            key=key, variety="Red Catuaí, Yellow Bourbon, Caturra, Parainema and some of which nobody knows"
        )
        write_sack_tags(long, ENGLISH, pdf, time=TIME, farm="F" * 60, practice=True)
    assert not outside(drawn)
    assert "block not known Red Catua" in read_back(pdf.getvalue())[0]
