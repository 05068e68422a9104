"""Pay, crop, merge and split."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk import clock
from farmdesk.errors import Asked, NotPossible
from farmdesk.picture.entries import Advance, PaySheet
from farmdesk.picture.things import Person
from farmdesk.work import crop, drying, fermenting, keeping, pay, picking, portioning, settings
from farmdesk.work.changes import Hand
from farmdesk.work.family_story import family_story
from farmdesk.work.farm import OpenFarm
from tests.work.season import LOT, instant, new_farm

SETTINGS = {
    "picking_local_kg": "6.00",
    "picking_bonus_local_kg": "0.80",
    "picking_bonus_from_pct": "95",
    "day_least_local": "350",
    "notes_local": "500 100 50 20 10 5 2 1 0.50 0.20 0.10 0.05 0.01",
}


@pytest.fixture
def farm(tmp_path) -> Iterator[OpenFarm]:
    with clock.set_to(instant(100, 0)):
        farm = new_farm(tmp_path)
        people = {f"P{n:02d}": Person(f"P{n:02d}", "picker") for n in range(1, 6)}
        farm.save_things(replace(farm.things, people=people, settings=SETTINGS))
        picking.begin_lot(farm, "W", instant(1, 12))
        yield farm
        farm.close()


def weigh(farm: OpenFarm, picker: str, kilograms: str, day: int = 1, half: str = "am"):
    at = instant(day, 18 if half == "am" else 22)
    return picking.weigh_in(
        farm,
        LOT,
        block="A",
        picker=picker,
        half_day=half,
        gross=kilograms,
        at_utc_s=at,
        hand=Hand(answers={"pounds": "kg"}),
    )


MONDAY = clock.FarmTime("America/Tegucigalpa").farm_day(instant(1, 18))


def test_piece_bonus_and_top_up(farm: OpenFarm) -> None:
    weigh(farm, "P01", "60.5")
    weigh(farm, "P01", "41", half="pm")
    weigh(farm, "P02", "30")
    picking.count_ripeness(farm, LOT, "A", "am", {"green": 3, "ripe": 97}, instant(1, 18))
    week = pay.pay_week(farm.picture, MONDAY)
    rows = {row.picker: row for row in week.rows}
    # 60.5 kg at 6.80 and 41 kg, uncounted, at 6.00; P02's half day earns 204.00, under none of the least
    assert rows["P01"].piece_cents == 41_140 + 24_600
    assert rows["P01"].top_up_cents == 0
    assert (rows["P02"].piece_cents, rows["P02"].top_up_cents) == (20_400, 0)
    assert week.total_cents == sum(row.net_cents for row in week.rows)
    weigh(farm, "P03", "10", day=2)
    third = {row.picker: row for row in pay.pay_week(farm.picture, MONDAY).rows}["P03"]
    assert (third.piece_cents, third.top_up_cents) == (6_000, 11_500)


@pytest.mark.parametrize(("green", "bonus"), [(3, True), (8, True), (12, False)])
def test_a_count_takes_the_bonus_only_beyond_chance(farm: OpenFarm, green: int, bonus: bool) -> None:
    # 8 in 100 may be 4.1 % (Wilson), so it does not show more than 5; 12 in 100 is 7.0 at the least
    weigh(farm, "P01", "10")
    picking.count_ripeness(farm, LOT, "A", "am", {"green": green, "ripe": 100 - green}, instant(1, 18))
    row = pay.pay_week(farm.picture, MONDAY).rows[0]
    assert row.piece_cents == (6_800 if bonus else 6_000)


def test_an_amount_that_may_be_two_is_asked_once_and_other_units_are_no_money(farm: OpenFarm) -> None:
    weigh(farm, "P01", "100")
    with pytest.raises(Asked):
        pay.give_advance(farm, "P01", "1,250", instant(2, 12))
    with pytest.raises(NotPossible, match="has a unit"):
        pay.give_advance(farm, "P01", "700 kg", instant(2, 12))
    pay.give_advance(farm, "P01", "1,250", instant(2, 12), hand=Hand(answers={"comma": "thousands"}))
    assert [e.body.amount_cents for e in farm.picture.general_of(Advance)] == [125_000]


def test_an_advance_above_the_pay_is_carried(farm: OpenFarm) -> None:
    weigh(farm, "P01", "100")
    pay.give_advance(farm, "P01", "700", instant(2, 12))
    week = pay.pay_week(farm.picture, MONDAY)
    assert (week.rows[0].net_cents, week.rows[0].carried_cents) == (0, 10_000)
    pay.close_week(farm, MONDAY, instant(6, 12))
    weigh(farm, "P01", "100", day=8)
    later = pay.pay_week(farm.picture, date.fromordinal(MONDAY.toordinal() + 7))
    assert (later.rows[0].adjustment_cents, later.rows[0].net_cents) == (-10_000, 50_000)


def test_a_rate_that_changes_leaves_a_signed_week_at_its_own(farm: OpenFarm) -> None:
    done = weigh(farm, "P01", "100")
    pay.close_week(farm, MONDAY, instant(6, 12))
    settings.save_figure(farm, "picking_local_kg", "9")
    settings.save_figure(farm, "day_least_local", "900")
    signed, later = (pay.pay_week(farm.picture, date.fromordinal(MONDAY.toordinal() + n)) for n in (0, 7))
    assert (signed.closed, signed.rows[0].piece_cents, signed.total_cents) == (True, 60_000, 60_000)
    assert not later.rows
    (entry,) = done.entries
    picking.correct_slip(
        farm, entry, picker="P01", gross="110", reason="read wrong", hand=Hand(answers={"pounds": "kg"})
    )
    weigh(farm, "P01", "100", day=8)
    (row,) = pay.pay_week(farm.picture, date.fromordinal(MONDAY.toordinal() + 7)).rows
    assert (row.adjustment_cents, row.piece_cents) == (10 * 600, 100 * 900)  # each kilogram at its own week's rate


def test_a_block_may_have_a_price_of_its_own(farm: OpenFarm) -> None:
    settings.save_figure(farm, "picking_block_local_kg", "b 7,50 A 5")
    assert settings.by_block(farm.things, "picking_block_local_kg") == {"B": 7.5, "A": 5.0}
    weigh(farm, "P01", "100")
    assert pay.pay_week(farm.picture, MONDAY).rows[0].piece_cents == 50_000
    for typed in ("Q 7", "A", "A -1", "A x"):
        with pytest.raises(NotPossible):
            settings.save_figure(farm, "picking_block_local_kg", typed)


@pytest.mark.parametrize(
    ("typed", "share"), [("", 1.0), ("1/2", 0.5), ("½", 0.5), ("3/4", 0.75), ("0,5", 0.5), ("50 %", 0.5), ("1", 1.0)]
)
def test_a_part_of_a_day_is_paid_as_such(farm: OpenFarm, typed: str, share: float) -> None:
    assert pay.share_of(typed) == share
    pay.day_work(farm, "P05", MONDAY, "400", instant(1, 20), share_frac=pay.share_of(typed))
    assert pay.pay_week(farm.picture, MONDAY).rows[0].day_work_cents == round(40_000 * share)


@pytest.mark.parametrize("typed", ["0", "2", "3/2", "1/0", "half", "1/x", "-1/2", "1 kg"])
def test_what_is_no_part_of_a_day_is_refused(typed: str) -> None:
    with pytest.raises(NotPossible):
        pay.share_of(typed)


def test_a_correction_after_closing_is_an_adjustment_of_the_next_week(farm: OpenFarm) -> None:
    done = weigh(farm, "P01", "128")
    weigh(farm, "P02", "60")
    pay.close_week(farm, MONDAY, instant(6, 12))
    signed = farm.picture.general_of(PaySheet)
    with pytest.raises(NotPossible, match="signed already"):
        pay.close_week(farm, MONDAY, instant(6, 13))
    keeping.correct(farm, done.entries, "pounds", lambda f: weigh(f, "P01", "128 lb"))
    weigh(farm, "P01", "50", day=8)
    row = pay.pay_week(farm.picture, date.fromordinal(MONDAY.toordinal() + 7)).rows[0]
    assert row.picker == "P01"
    assert row.adjustment_cents == 34_836 - 76_800  # 58.06 kg at 6.00, above the half day's least of 175
    assert farm.picture.general_of(PaySheet) == signed


def test_a_sack_without_a_picker_stops_the_signing(farm: OpenFarm) -> None:
    weigh(farm, "?", "50")
    assert pay.pay_week(farm.picture, MONDAY).unassigned_n == 1
    with pytest.raises(NotPossible, match="no known picker"):
        pay.close_week(farm, MONDAY, instant(6, 12))


NOTES = [50_000, 10_000, 5_000, 2_000, 1_000, 500, 200, 100, 50, 20, 10, 5, 1]


@given(st.integers(0, 2_000_000))
def test_notes_add_up_to_the_last_coin(cents: int) -> None:
    found = pay.note_count(cents, NOTES)
    assert sum(note * n for note, n in found.items()) == cents


@given(st.integers(0, 400))
def test_notes_are_the_fewest_even_where_greed_fails(cents: int) -> None:
    coins = [25, 10, 1]
    found = sum(pay.note_count(cents, coins).values())
    best = min(
        a + b + (cents - 25 * a - 10 * b) for a in range(cents // 25 + 1) for b in range((cents - 25 * a) // 10 + 1)
    )
    assert found == best


def test_an_amount_under_the_smallest_coin_cannot_be_paid() -> None:
    with pytest.raises(NotPossible, match="smallest coin"):
        pay.note_count(103, [500, 100, 5])


def test_the_crops_range_adds_variances(farm: OpenFarm) -> None:
    things = farm.things
    blocks = {code: replace(block, trees_n=1000) for code, block in things.blocks.items()}
    farm.save_things(replace(things, blocks=blocks))
    crop.count_trees(farm, "A", trees_n=250, mean_kg="2.0", sd_kg="1.0", at_utc_s=instant(1, 1), flowered="2023-04-10")
    crop.count_trees(farm, "B", trees_n=250, mean_kg="3.0", sd_kg="1.5", at_utc_s=instant(1, 1), loss_pct="10")
    found = crop.crop(farm.picture)
    assert found.kg == pytest.approx(2000 + 2700)
    halves = [(b.high_kg - b.low_kg) / 2 for b in found.blocks]
    assert halves[0] == pytest.approx(1.9695 * 1000 / 250**0.5, rel=1e-3)
    assert (found.high_kg - found.low_kg) / 2 == pytest.approx((halves[0] ** 2 + halves[1] ** 2) ** 0.5, rel=1e-9)
    assert found.blocks[0].from_day == date(2023, 11, 20)
    five = crop.count_trees(farm, "A", trees_n=5, mean_kg="2.0", sd_kg="1.0", at_utc_s=instant(2, 1))
    assert five.entries
    assert crop.crop(farm.picture).blocks[0].high_kg - 2000 > 1200  # five trees: the range is huge, and shown


def lots_on_beds(farm: OpenFarm) -> tuple[str, str]:
    """Two lots, 181 kg on bed 9 and 115 kg on bed 12, from blocks A and B."""
    weigh(farm, "P01", "500")
    fermenting.fill(farm, LOT, {"T1": "500"}, instant(1, 23))
    drying.spread(farm, LOT, {"9": "181"}, instant(2, 13))
    other = picking.begin_lot(farm, "W", instant(3, 12)).lot
    picking.weigh_in(
        farm,
        other,
        block="B",
        picker="P01",
        half_day="am",
        gross="300",
        at_utc_s=instant(3, 18),
        hand=Hand(answers={"pounds": "kg"}),
    )
    fermenting.fill(farm, other, {"T2": "300"}, instant(3, 23))
    drying.spread(farm, other, {"12": "115"}, instant(4, 13))
    return LOT, other


def test_merge_gives_the_shares_and_both_histories(farm: OpenFarm) -> None:
    first, second = lots_on_beds(farm)
    with pytest.raises(Asked, match="varieties"):
        portioning.merge(farm, {first: ["9"], second: ["12"]}, "9", instant(9, 12))
    joint = portioning.merge(
        farm, {first: ["9"], second: ["12"]}, "9", instant(9, 12), hand=Hand(answers={"apart": "keep"})
    ).lot
    assert farm.lot(joint).heaps == {"9": 296_000}
    shares = {s.code: round(100 * s.share_frac) for s in portioning.block_shares(farm.picture, joint)}
    assert shares == {"A": 61, "B": 39}
    assert sum(s.share_frac for s in portioning.block_shares(farm.picture, joint)) == pytest.approx(1.0)
    assert {s.code for s in portioning.ancestors(farm.picture, joint)} == {first, second}
    assert [s.code for s in portioning.descendants(farm.picture, second)] == [joint]
    assert joint in [s.code for s in portioning.lots_of_block(farm.picture, "B")]
    assert {row[0] for row in portioning.picked_when(farm.picture, joint)} == {first, second}


def test_all_that_differs_is_asked_in_one_question_and_the_status_is_lost(farm: OpenFarm) -> None:
    blocks = farm.things.blocks
    farm.save_things(replace(farm.things, blocks={**blocks, "A": replace(blocks["A"], organic="yes")}))
    first, second = lots_on_beds(farm)
    for lot, place, wet in ((first, "9", "14.0"), (second, "12", "16.5")):
        drying.read_at_bed(farm, lot, instant(8, 12), place=place, meter=[wet])
    assert str(family_story(farm, first).status) == "organic: all its blocks are certified"
    parts = {first: ["9"], second: ["12"]}
    with pytest.raises(Asked) as asked:
        portioning.merge(farm, parts, "9", instant(9, 12))
    sentence = str(asked.value.question.text)
    for words in ("2.5 points apart", "the joint lot has none", "several varieties: Catuaí, Gesha"):
        assert words in sentence
    joint = portioning.merge(farm, parts, "9", instant(9, 12), hand=Hand(answers={"apart": "keep"})).lot
    assert str(family_story(farm, joint).status) == "not organic: its blocks differ in status"


def test_shares_of_a_joint_lot_are_of_dry_matter(farm: OpenFarm) -> None:
    """Whole cherry and parchment of the same weight: more of the parchment is coffee."""
    washed = farm.things.methods["W1"]
    natural = replace(washed, letter="N", name="natural", whole=True, start_wb_frac=0.68, start_wb_sd_frac=0.02)
    farm.save_things(replace(farm.things, methods={"W1": washed, "N1": natural}))
    weigh(farm, "P01", "500")
    fermenting.fill(farm, LOT, {"T1": "500"}, instant(1, 23))
    drying.spread(farm, LOT, {"9": "100"}, instant(2, 13))
    whole = picking.begin_lot(farm, "N", instant(3, 12)).lot
    answers = {"pounds": "kg"}
    picking.weigh_in(
        farm,
        whole,
        block="A",
        picker="P01",
        half_day="am",
        gross="100",
        at_utc_s=instant(3, 18),
        hand=Hand(answers=answers),
    )
    drying.spread(farm, whole, {"12": "100"}, instant(3, 22))
    joint = portioning.merge(farm, {LOT: ["9"], whole: ["12"]}, "9", instant(9, 12)).lot
    dry = {LOT: 1 - washed.start_wb_frac, whole: 1 - natural.start_wb_frac}
    shares = {s.code: s.share_frac for s in portioning.parents(farm.picture, farm.lot(joint))}
    assert shares[LOT] == pytest.approx(dry[LOT] / sum(dry.values()))
    assert shares[LOT] > 0.55
    assert sum(shares.values()) == pytest.approx(1.0)
    assert {s.code: s.grams for s in portioning.parents(farm.picture, farm.lot(joint))} == {
        LOT: 100_000,
        whole: 100_000,
    }


def test_split_asks_about_the_missing_three_kilograms(farm: OpenFarm) -> None:
    weigh(farm, "P01", "1500")
    fermenting.fill(farm, LOT, {"T1": "607"}, instant(1, 23))
    parts = {"9": "204", "10": "201", "11": "199"}
    with pytest.raises(Asked, match=r"other 3\.0.kg"):
        portioning.split(farm, LOT, "T1", parts, instant(2, 13))
    portioning.split(farm, LOT, "T1", parts, instant(2, 13), hand=Hand(answers={"missing": "keep"}))
    lot = farm.lot(LOT)
    assert (lot.balance["9"], lot.balance["10"], lot.balance["11"], lot.balance[">unexplained"]) == (
        204_000,
        201_000,
        199_000,
        3000,
    )


def test_split_into_lots_of_their_own(farm: OpenFarm) -> None:
    first, _ = lots_on_beds(farm)
    portioning.split(farm, first, "9", {"9": "120", "13": "61"}, instant(9, 12), own_lots=True)
    child = next(s.code for s in portioning.descendants(farm.picture, first))
    assert farm.lot(child).heaps == {"13": 61_000}
    assert farm.lot(first).balance["9"] == 120_000
    assert [s.code for s in portioning.block_shares(farm.picture, child)] == ["A"]
    assert not farm.picture.doubts
