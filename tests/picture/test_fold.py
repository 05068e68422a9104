"""The fold: grams are conserved, late papers heal, order of writing does not matter, a correction is as if right at once."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk.picture.entries import (
    ALL,
    FIELD,
    INTAKE,
    REST,
    STREAMS,
    TYPED,
    Birth,
    Entry,
    Flow,
    Parcel,
    Posting,
    Remark,
    Sale,
    Strike,
    WeighIn,
)  # fmt: skip
from farmdesk.picture.picture import Picture, fold
from tests.picture.journal import LOT, START, THINGS, instant, journal

WHOLE = """
    day 1 08: begin W
    day 1 13: pick 600
    day 1 16: pick 400
    day 1 16.5: sort 20, float 40
    day 1 17: fill T1 940
    day 2 07: spread 9 190, 10 185
    day 5 08: move 10 -> 9 11
    day 12 16: shelve 9 11 190
    day 20 09: send 189
    day 30 10: back top 120 light 15 small 12 peaberry 8, husk 33
"""

PLACES = (INTAKE, "T1", "9", "10", "store", "mill", "top")
LOTS = (LOT, "25-02N")


@st.composite
def postings(draw: st.DrawFn) -> tuple[Posting, ...]:
    """Postings of one lot: typed ones that sum to zero, or with ALL and REST."""
    lot = draw(st.sampled_from(LOTS))
    grams = draw(st.lists(st.integers(-50_000, 50_000), min_size=1, max_size=4))
    typed = [Posting(lot, draw(st.sampled_from(PLACES + STREAMS)), g) for g in grams]
    if draw(st.booleans()):
        closing = draw(st.lists(st.sampled_from(PLACES + STREAMS), min_size=1, max_size=3, unique=True))
        taken = draw(st.lists(st.sampled_from(PLACES), max_size=2, unique=True))
        return (*(Posting(lot, p, way=ALL) for p in taken), *typed, *(Posting(lot, p, way=REST) for p in closing))
    return (*typed, Posting(lot, draw(st.sampled_from(PLACES)), -sum(grams), TYPED))


@st.composite
def bodies(draw: st.DrawFn):
    lines = draw(postings())
    lot = lines[0].lot
    return draw(
        st.one_of(
            st.just(Flow(lot, draw(st.sampled_from(["sort", "spread", "move", "shelve"])), lines)),
            st.just(Birth(lot, "W")),
            st.builds(WeighIn, st.just(lot), st.just("A"), st.just("P01"), st.just("am"), st.integers(1, 90_000)),
            st.builds(Parcel, st.just(lot), st.just("R1"), st.integers(1, 500)),
            st.builds(Sale, st.just(lot), st.just("R1"), st.integers(1, 90_000), st.none(), st.booleans()),
            st.just(Remark(lot, "", "note", "words")),
        )
    )


@st.composite
def books(draw: st.DrawFn) -> list[Entry]:
    said = draw(st.lists(bodies(), max_size=25))
    entries = [
        Entry(f"e{n:03d}", START + draw(st.integers(0, 20)) * 3600, START + 100_000 + n, body)
        for n, body in enumerate(said)
    ]
    for n in draw(st.lists(st.integers(0, 30), max_size=4)):
        targets = [entry.id for entry in entries]
        if targets:
            at = START + 200_000 + len(entries)
            entries.append(Entry(f"s{len(entries):03d}{n}", at, at, Strike(draw(st.sampled_from(targets)))))
    return entries


def seen(picture: Picture) -> object:
    """All that a picture says, without who wrote it when."""
    return {
        code: (lot.balance, lot.stays, [(m.at_utc_s, m.act, m.lines) for m in lot.trail], [(d.kind, d.place, d.at_utc_s, d.text) for d in lot.doubts])
        for code, lot in picture.lots.items()
    }  # fmt: skip


@given(books())
def test_grams_are_conserved_exactly_and_folding_never_fails(entries: list[Entry]) -> None:
    picture = fold(entries, THINGS)
    for lot in picture.lots.values():
        assert sum(lot.balance.values()) == 0
        for moved in lot.trail:
            assert sum(grams for _, grams in moved.lines) == 0
    assert picture.doubts is not None


@given(books(), st.randoms(use_true_random=False))
def test_the_order_of_writing_does_not_matter(entries: list[Entry], random) -> None:
    strikes = [e for e in entries if isinstance(e.body, Strike)]
    plain = [e for e in entries if not isinstance(e.body, Strike)]
    shuffled = plain[:]
    random.shuffle(shuffled)
    # written anew in another order: other ids, other instants, the same facts
    again = {old.id: replace(old, id=f"x{n:03d}", written_utc_s=START + 100_000 + n) for n, old in enumerate(shuffled)}
    once = {e.body.target for e in strikes if e.body.target in again}
    gone = [Entry(f"z{n}", START + 300_000, START + 300_000, Strike(again[t].id)) for n, t in enumerate(sorted(once))]
    gone_first = [Entry(f"z{n}", START + 300_000, START + 300_000, Strike(t)) for n, t in enumerate(sorted(once))]
    assert seen(fold([*plain, *gone_first], THINGS)) == seen(fold([*again.values(), *gone], THINGS))


@given(books(), st.integers(0, 25))
def test_one_more_row_folds_as_all_at_once(entries: list[Entry], cut: int) -> None:
    picture = fold(entries[:cut], THINGS)
    for entry in entries[cut:]:
        picture = picture.after([entry])
    assert seen(picture) == seen(fold(entries, THINGS))


@given(books(), st.integers(START, START + 250_000), st.integers(0, 21))
def test_an_earlier_instant_is_the_fold_of_what_was_known_and_done(entries: list[Entry], known: int, hour: int) -> None:
    as_of = START + hour * 3600
    picture = fold(entries, THINGS).at(as_of, known)
    strikes = [e for e in entries if isinstance(e.body, Strike) and e.written_utc_s <= known]
    alone = fold(
        [e for e in entries if e.written_utc_s <= known and e.happened_utc_s <= as_of and e not in strikes] + strikes,
        THINGS,
    )
    assert seen(picture) == seen(alone)


def test_a_season_of_one_lot() -> None:
    lot = fold(journal(WHOLE), THINGS).lots[LOT]
    assert lot.delivered_g == 1_000_000
    assert lot.heaps == {"store": 1000, "top": 120_000, "light": 15_000, "small": 12_000, "peaberry": 8000}
    assert lot.streams == {
        ">sorted": 20_000, ">floaters": 40_000, ">pulp": 565_000, ">water": 185_000, ">husk": 33_000, ">unexplained": 1000,
    }  # fmt: skip
    assert [(s.place, s.from_utc_s, s.until_utc_s) for s in lot.stays if s.place in ("9", "10", "11")] == [
        ("10", instant(2, 7), instant(5, 8)),
        ("9", instant(2, 7), instant(12, 16)),
        ("11", instant(5, 8), instant(12, 16)),
    ]
    assert not lot.doubts


@pytest.mark.parametrize("missing", ["begin W", "pick 600", "fill T1", "spread 9", "move 10", "send 189"])
def test_a_missing_paper_is_a_doubt_and_heals_when_it_comes(missing: str) -> None:
    entries = journal(WHOLE)
    at = next(n for n, line in enumerate(WHOLE.strip().splitlines()) if missing in line)
    without = fold(entries[:at] + entries[at + 1 :], THINGS)
    doubts = without.lots[LOT].doubts
    assert doubts
    assert all(set(d.entries) <= {e.id for e in entries} and d.entries for d in doubts)
    late = replace(entries[at], id="late", written_utc_s=instant(60, 0))
    healed = without.after([late])
    assert not healed.lots[LOT].doubts
    assert seen(healed) == seen(fold(entries, THINGS))


def test_a_correction_equals_having_typed_it_right_the_first_time() -> None:
    right = journal(WHOLE)
    wrong = replace(right[1], id="wrong", body=replace(right[1].body, gross_g=1_322_000))
    strike = Entry("strike", instant(40, 0), instant(40, 0), Strike("wrong", "pounds"))
    picture = fold([right[0], wrong, *right[2:]], THINGS)
    before = picture.lots[LOT].delivered_g
    corrected = picture.after([strike]).after(
        [replace(right[1], id="again", written_utc_s=instant(40, 0), replaces="wrong")]
    )
    assert before == 1_722_000
    assert seen(corrected) == seen(fold(right, THINGS))
    assert [e.id for e in corrected.lots[LOT].struck] == ["wrong"]
    # what was believed on that evening is still there
    assert corrected.at(known_at=instant(39, 0)).lots[LOT].delivered_g == before


def test_the_undo_of_an_undo_brings_the_row_back() -> None:
    entries = journal(WHOLE)
    first = Entry("s1", instant(41, 0), instant(41, 0), Strike(entries[1].id))
    second = Entry("s2", instant(41, 1), instant(41, 1), Strike("s1"))
    assert seen(fold([*entries, first, second], THINGS)) == seen(fold(entries, THINGS))


def test_two_lots_on_one_bed_is_a_doubt_of_the_farm() -> None:
    other = journal("day 3 08: begin W\nday 3 09: pick 100\nday 3 10: fill T1 100\nday 4 07: spread 9 40", "25-02W")
    picture = fold([*journal(WHOLE), *other], THINGS)
    assert [(d.kind, d.lot, d.place) for d in picture.doubts] == [("two lots", "25-02W", "9")]
    assert picture.stays_at("9")[0][0] == LOT


def test_the_field_is_where_all_comes_from() -> None:
    lot = fold(journal(WHOLE), THINGS).lots[LOT]
    assert -lot.balance[FIELD] == sum(lot.heaps.values()) + sum(lot.streams.values())
    assert lot.on(instant(4, 0)) == {
        FIELD: -1_000_000,
        ">sorted": 20_000,
        ">floaters": 40_000,
        "9": 190_000,
        "10": 185_000,
        ">pulp": 565_000,
    }
