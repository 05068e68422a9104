"""Whatever names and numbers a farm has, its sheet is one page, readable, and inside its margins."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from hypothesis import given, settings
from hypothesis import strategies as st

from farmdesk.text import ENGLISH, N_
from farmdesk.work.stories import BalancePart, SheetStory, Strip, StripDay, Weight
from tests.papers.made import SPANISH, covered, outside, read_back, said, sheet_13w, sheet_pdf, watched

LETTERS = "aeiouáéíóúñüÁÑWMil lrst.-&<\"'()"
NAME = st.text(LETTERS, min_size=1, max_size=60)
FACT = st.one_of(st.none(), st.text(LETTERS, max_size=120).map(said))
GRAMS = st.integers(0, 9_999_999)
ACCOUNTS = ("top", "peaberry", "light", "small", ">husk", ">sample", ">water", ">unexplained")


@st.composite
def strips(draw: st.DrawFn) -> Strip:
    """A lot's days in an order that can happen, from a day to most of a year."""
    first = date(2024, 11, 10) + timedelta(days=draw(st.integers(0, 90)))
    picks = sorted(draw(st.sets(st.integers(0, 5), max_size=4)))
    beds_n = draw(st.integers(0, 40))
    known = st.one_of(st.none(), st.floats(0.09, 0.7))
    beds = tuple(StripDay(first + timedelta(days=3 + n), draw(known)) for n in range(beds_n) if n % 11 != 5)
    dried = first + timedelta(days=4 + beds_n)
    gate = dried if beds and draw(st.booleans()) else None
    sent = gate + timedelta(days=draw(st.integers(1, 200))) if gate and draw(st.booleans()) else None
    milled = sent + timedelta(days=draw(st.integers(0, 6))) if sent and draw(st.booleans()) else None
    today = max(filter(None, (first + timedelta(days=beds_n), gate, sent, milled)))
    ahead = None
    if not gate and beds:
        earliest = today + timedelta(days=draw(st.integers(0, 9)))
        latest = draw(st.sampled_from([None, earliest + timedelta(days=5)]))
        ahead = (earliest, earliest + timedelta(days=2), latest)
    last = max(filter(None, (today, *(ahead or ())))) + timedelta(days=1)
    noon = 1_731_254_400 + (first - date(2024, 11, 10)).days * 86_400
    return Strip(
        first, last, today,
        tuple((first + timedelta(days=n), draw(GRAMS)) for n in picks),
        tuple((noon + n * 7200.0, draw(st.sampled_from([None, noon + 180_000.0]))) for n in range(draw(st.integers(0, 12)))),
        beds, tuple((day.day, 12.0) for day in beds[:9:2]), gate, None, sent, milled, ahead,
    )  # fmt: skip


@st.composite
def stories(draw: st.DrawFn) -> SheetStory:
    """Any sheet that a farm with long names could ask for."""
    blocks = draw(st.lists(NAME, min_size=1, max_size=4))
    who = "; ".join(f"block {name}, {name}, Pacas, 1,560–1,600 m ({n} %)" for n, name in enumerate(blocks))
    hill = tuple(
        (name, low, low + draw(st.floats(0, 80)), draw(st.booleans()))
        for name in draw(st.lists(NAME, max_size=8))
        for low in [draw(st.floats(900, 1800))]
    )
    rows = st.lists(st.tuples(st.text(LETTERS, min_size=1, max_size=24).map(said), FACT), max_size=11).map(tuple)
    marks = st.sampled_from(["measured", "computed", "estimated", "corrected"])
    weight = st.builds(Weight, st.one_of(st.none(), GRAMS), marks)
    named = st.text(LETTERS, min_size=1, max_size=24).map(said)
    milled = draw(st.booleans())
    return replace(
        sheet_13w(practice=draw(st.booleans())),
        farm=draw(NAME), blocks_line=said(who), hill=hill, strip=draw(strips()),
        version_n=draw(st.integers(1, 400)), unfinished=draw(FACT), done=draw(rows), green=draw(rows),
        drying=draw(st.sampled_from([None, sheet_13w().drying])),
        weights=tuple(draw(st.lists(st.tuples(named, weight), max_size=7))),
        balance=tuple(BalancePart(name, draw(named), draw(st.integers(-5000, 2_000_000))) for name in ACCOUNTS) if milled else (),
        balance_of=draw(FACT), ratio=draw(FACT), milled=date(2025, 3, 20) if milled else None,
        screens=tuple(draw(st.lists(st.tuples(named, GRAMS), max_size=9))),
        differed=tuple(draw(st.lists(st.text(LETTERS, max_size=200).map(said), max_size=8))),
    )  # fmt: skip


@settings(max_examples=40)
@given(stories(), st.sampled_from([ENGLISH, SPANISH]), st.sampled_from(["a4", "letter"]))
def test_always_one_readable_page_inside_the_margins(story: SheetStory, words, paper: str) -> None:
    with watched() as drawn:
        sheet_pdf(story, words, paper=paper)
    assert drawn.pages_n == 1
    assert min(size for _, _, size, _, _ in drawn.letters) >= 9.5
    assert not outside(drawn)
    assert not covered(drawn)


def test_twelve_beds_two_long_names_and_two_blocks_lose_nothing() -> None:
    farm = "Finca Ñuñoa de la Santísima Trinidad y los Ángeles del Río Yá"
    block = "Parcela Alta de los Cedros y las Águilas Harpías del Ñandú X"
    assert len(farm) >= 60
    assert len(block) >= 60
    who = N_(
        "sheet", "washed; block A, {name}, Pacas, 1,560–1,600 m (60 %); block B, {name}, Gesha (40 %).", name=block
    )
    story = sheet_13w(farm=farm, blocks_line=who, practice=True)
    for paper in ("a4", "letter"):
        (text,) = read_back(sheet_pdf(story, paper=paper))
        assert farm in text
        assert text.count(block) == 2
        assert "1–6 9–14" in text
        assert "more in the notebook" not in text
