"""What stands beside the sheets: the sheet itself, the overview, the first day of a lot, the family, what moves."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest

from farmdesk import clock
from farmdesk.clock import FarmTime
from farmdesk.errors import NotPossible
from farmdesk.picture.entries import WeighIn
from farmdesk.work import pay, picking
from farmdesk.work.changes import Hand
from farmdesk.work.family_story import family_story, heap_name, mixed_words, vessel_blocks
from farmdesk.work.farm import OpenFarm
from farmdesk.work.intake import intake_story, will_come_to
from farmdesk.work.pay_story import loose_sacks, name_sack, pay_story, picker_of, read_picker, week_of
from farmdesk.work.picking_story import chance, picking_story
from farmdesk.work.practice import build_practice
from farmdesk.work.slips import sacks_of
from farmdesk.work.weigh_grid import SheetKey, crew_of, kept_of, sheet_of
from farmdesk.work.what_moves import moves
from tests.work.season import instant

TIME = FarmTime("America/Tegucigalpa")
CUT = TIME.instant(date(2025, 1, 14), 18, 45)
SHEET = SheetKey("25-16W", "D", "pm", date(2025, 1, 14))


@pytest.fixture(scope="module")
def made(tmp_path_factory) -> Path:
    path = tmp_path_factory.mktemp("evening") / "evening.season"
    build_practice(path, CUT).close()
    return path


@pytest.fixture
def evening(made, tmp_path) -> Iterator[OpenFarm]:
    """The evening of 14 January, 19 of 26 slips typed; a copy to write into."""
    path = tmp_path / "evening.season"
    shutil.copyfile(made, path)
    farm = OpenFarm.open(path)
    with clock.set_to(CUT + 60):
        yield farm
    farm.close()


def test_the_sheet_is_the_unfinished_one_with_its_sums(evening: OpenFarm) -> None:
    sheet = sheet_of(evening, now_utc_s=CUT)
    assert sheet.key == SHEET
    assert (len(sheet.rows), sheet.total_g, sheet.next_picker) == (19, 654_600, "P20")
    assert (sheet.plan_g, str(sheet.plan_rests_on)) == (1_750_000, "round of block D planned for Tue 14 Jan")
    assert [(c.block, c.half_day, c.sacks_n) for c in sheet.columns] == [("D", "pm", 19)]
    assert len(sheet.crew) == 26
    assert sheet.usual["P07"].holds(50_000)


def test_what_was_kept_is_said_until_something_else_is_written(evening: OpenFarm) -> None:
    assert str(kept_of(evening.picture, CUT)) == "19 rows of 26 kept, the last at 18:40"
    morning = TIME.instant(date(2025, 1, 15), 5)
    assert str(kept_of(evening.picture, morning)) == "19 rows of 26 kept, the last at Tue 14 Jan 18:40"
    picking.platform_total(evening, "25-16W", "900", CUT)
    assert kept_of(evening.picture, CUT) is None


def test_a_full_sheet_has_nothing_left_open(evening: OpenFarm) -> None:
    for n in range(20, 27):
        picking.weigh_in(evening, "25-16W", block="D", picker=f"P{n}", half_day="pm", gross="30", at_utc_s=CUT)
    assert kept_of(evening.picture, CUT) is None


def test_the_crew_is_who_picked_of_late_or_everybody_at_first(evening: OpenFarm) -> None:
    november = crew_of(evening.picture, date(2024, 11, 22))
    assert november == tuple(f"P{n:02d}" for n in range(1, 9))
    assert crew_of(evening.picture, date(2024, 10, 1)) == tuple(f"P{n:02d}" for n in range(1, 27))


def test_a_sheet_needs_a_lot(tmp_path) -> None:
    from farmdesk.work.setup import begin_farm

    farm = begin_farm(tmp_path / "new.season", "New", "25", "UTC")
    with pytest.raises(NotPossible, match="No lot has begun"):
        sheet_of(farm)
    story = picking_story(farm)
    assert (story.blocks, story.day_g, story.plan_g) == ((), 0, None)
    farm.close()


def test_the_overview_pins_days_and_counts_with_ranges(evening: OpenFarm) -> None:
    story = picking_story(evening, now_utc_s=CUT)
    blocks = {block.code: block for block in story.blocks}
    assert [block.code for block in story.blocks] == list("BAFCDE")
    assert (blocks["A"].pinned, blocks["A"].next_g) == (True, 940_000)
    assert blocks["D"].picked_g == 5_543_960
    assert (story.day_g, story.plan_g) == (654_600, 1_750_000)
    first = story.counts[0]
    assert (first.block, first.fruits_n, first.passes) == ("B", 100, True)
    assert first.green.low < first.green.value < first.green.high
    pooled = [count for count in story.counts if "together" in str(count.said)]
    assert pooled[0].fruits_n == 200
    assert pooled[0].green.high - pooled[0].green.low < first.green.high - first.green.low


def test_three_and_five_in_a_hundred_are_no_difference() -> None:
    said = str(chance())
    assert "3 green in 100 may be 1.0–8.5\u202f%, 5 in 100 may be 2.2–11.2\u202f%" in said


def test_a_lot_comes_to_boxes_by_own_lots_or_says_that_it_rests_on_common_ones(evening: OpenFarm) -> None:
    washed, rests = will_come_to(evening.picture, "25-16W")
    assert str(washed) == "98–112\u202fkg of green; boxes of 30\u202fkg: 3, rest 8.5\u202fkg, for samples first"
    assert str(rests) == "rests on 0.20 of 7 own lots and 0.81 as is common, no own lots yet"
    _, natural = will_come_to(evening.picture, "25-15N")
    assert "0.34 as is common, no own lots yet" in str(natural)
    story = intake_story(evening, now_utc_s=CUT)
    assert story.lot("16") == story.lot("25-16w")
    assert story.lot("99") is None
    assert [plan[0] for plan in story.plans] == ["25-17N", "25-18W", "25-19A"]


def test_yeast_is_for_what_lies_in_the_vessel_and_never_for_what_was_delivered(practice: OpenFarm) -> None:
    at = practice.time.read("2025-01-03T18:19:56")  # sorted and floated, not filled yet
    lot = intake_story(practice, at).lot("12")
    assert lot is not None
    assert (lot.delivered_g, lot.at_intake_g) == (880_000, 848_000)
    whole, first, second = (lot.dose(grams) for grams in (848_000, 433_000, 415_000))
    assert whole is not None
    assert first is not None
    assert second is not None
    assert (whole.yeast_g, round(whole.water_ml / 1000, 1)) == (848, 8.5)
    assert (first.yeast_g, second.yeast_g) == (433, 415)
    assert (first.water_ml, second.water_ml) == (4330, 4150)  # as the practice season's own paper has it
    washed = intake_story(practice, at).lot("11")
    assert washed is not None
    assert washed.dose(500_000) is None


@pytest.mark.parametrize(
    ("filled", "ready", "later_h"),
    [("17:00", ("05:00", "07:00"), 0.0), ("14:30", ("02:30", "04:30"), 1.5), ("16:00", ("04:00", "06:00"), 0.0)],
)
def test_a_filling_says_when_it_would_be_ready_and_how_much_later_lets_people_sleep(
    farm: OpenFarm, filled: str, ready: tuple[str, str], later_h: float
) -> None:
    """A method of 12 to 14 h and no own lots: sums of hours; people sleep from 20:00 to 04:00."""
    picking.begin_lot(farm, "W", instant(29, 12))
    story = intake_story(farm)
    day = farm.time.farm_day(instant(29, 20))
    ends = story.lots[0].ready(farm.time.instant(day, *map(int, filled.split(":"))))
    assert ends is not None
    first, last = (farm.time.local(round(end / 60) * 60) for end in ends)
    assert (f"{first:%H:%M}", f"{last:%H:%M}") == ready
    assert story.later_h(first.hour + first.minute / 60) == later_h
    assert [story.later_h(hour) for hour in (19.5, 20.0, 23.0, 3.0, 4.0)] == [0.0, 8.0, 5.0, 1.0, 0.0]


def test_a_vessel_knows_which_blocks_lie_in_it(practice: OpenFarm) -> None:
    mixed = {m.vessel: m for m in vessel_blocks(practice.picture, practice.lot("25-05A"))}
    s07 = mixed["S07"]
    assert [f"{practice.time.local(f.at_utc_s):%H:%M}" for f in s07.fillings] == ["12:40", "17:30"]
    assert s07.shares == {"E": pytest.approx(28 / 46), "D": pytest.approx(18 / 46)}
    assert str(mixed_words(s07)) == "S07, 46.0\u202fkg: block E 61\u202f%, block D 39\u202f%"
    assert mixed["S01"].shares == {"E": pytest.approx(1)}


def test_every_lots_shares_sum_to_one_both_ways(practice: OpenFarm) -> None:
    for code in practice.picture.lots:
        story = family_story(practice, code)
        if story.blocks:
            assert sum(share.share_frac for share, _ in story.blocks) == pytest.approx(1)
        for parent in story.parents:
            assert any(child.code == code for child in family_story(practice, parent.code).children)
        for share, _ in story.blocks:
            assert any(one.code == code for one in story.with_blocks[share.code])


def test_a_joint_lot_reaches_its_half_days_and_its_buyers(practice: OpenFarm) -> None:
    story = family_story(practice, "25-25W")
    assert {code for code, _, _ in story.picked} == {"25-04W", "25-06W"}
    assert {str(out.text).split(",")[0] for out in story.outs} >= {"sold to R5", "sample to R5"}
    assert str(story.status) == "organic: all its blocks are certified"
    assert str(family_story(practice, "25-05A").status) == "not organic: its blocks differ in status"
    with pytest.raises(NotPossible, match="There is no lot 25-99W"):
        family_story(practice, "25-99W")


def test_a_place_is_read_as_hands_write_it(practice: OpenFarm) -> None:
    assert heap_name(practice, "25-25W", "p1") == "P1"
    assert heap_name(practice, "25-25W", "STORE") == "store"
    with pytest.raises(NotPossible, match="There is no place 99"):
        heap_name(practice, "25-25W", "99")


# pay


def test_weeks_run_from_the_day_after_pay_day_or_in_step_with_the_signed(evening: OpenFarm) -> None:
    assert week_of(evening.picture, date(2025, 1, 14)) == date(2025, 1, 12)
    assert week_of(evening.picture, date(2025, 1, 18)) == date(2025, 1, 12)
    pay.close_week(evening, date(2024, 12, 9), CUT)  # somebody signs from Monday on
    assert week_of(evening.picture, date(2025, 1, 14)) == date(2025, 1, 13)


def test_the_week_the_list_and_the_money_agree(evening: OpenFarm) -> None:
    story = pay_story(evening, now_utc_s=CUT)
    assert story.week is not None
    assert story.weeks[0].total_cents == story.week.total_cents == 591_600
    assert str(story.headline) == "12–18 Jan: 5,916.00\u202fL for 22 pickers, not signed yet."
    row = next(row for row in story.week.rows if row.picker == "P07")
    assert 0 < row.bonus_cents < row.piece_cents
    assert row.bonus_cents <= row.piece_cents * 0.8 / 6.8  # one of the two lots was ripe enough


def test_a_sack_gets_its_picker_and_keeps_its_weight(evening: OpenFarm) -> None:
    picking.weigh_in(evening, "25-16W", block="D", picker="P77", half_day="pm", gross="73 lb", tare="1", at_utc_s=CUT)
    (loose,) = loose_sacks(evening.picture, date(2025, 1, 12), date(2025, 1, 18))
    assert loose.picker == "P77"
    with pytest.raises(NotPossible, match="no picker P99"):
        name_sack(evening, loose.entry, "P99")
    name_sack(evening, loose.entry, "20")
    assert loose_sacks(evening.picture, date(2025, 1, 12), date(2025, 1, 18)) == ()
    sack = sacks_of(evening.picture, "P20")[-1]
    assert (sack.body.gross_g, sack.body.tare_g, sack.body.typed) == (33_112, 1000, "73 lb")


@pytest.mark.parametrize(("typed", "code"), [("7", "P07"), ("07", "P07"), ("p07", "P07"), ("W1", "W1"), ("88", "88")])
def test_a_picker_is_named_by_number(evening: OpenFarm, typed: str, code: str) -> None:
    assert picker_of(evening.things, typed) == code
    if code == "88":
        with pytest.raises(NotPossible):
            read_picker(evening, typed)


# what a correction moves


def wrong_sack(farm: OpenFarm):
    return next(e for e in sacks_of(farm.picture, "P07") if e.body.lot == "25-16W")


def test_what_moves_is_told_without_writing_anything(evening: OpenFarm) -> None:
    old = wrong_sack(evening)
    before = len(evening.file.entries())
    told = [str(text) for text in moves(evening, old.id, WeighIn("25-16W", "D", "P07", "pm", 17_736, 0, "39.1 lb"))]
    assert told[0] == "25-16W 654.6 → 633.2\u202fkg delivered"
    assert told[1].startswith("pay of P07 579.")
    assert len(evening.file.entries()) == before
    assert evening.lot("25-16W").delivered_g == 654_600


def test_a_signed_week_stays_and_the_next_settles(evening: OpenFarm) -> None:
    pay.close_week(evening, date(2025, 1, 12), CUT, Hand("processor"))
    old = wrong_sack(evening)
    told = [str(text) for text in moves(evening, old.id, WeighIn("25-16W", "D", "P07", "pm", 17_736, 0, "39.1 lb"))]
    assert told[1].startswith("the week from 12 Jan is signed and stays; P07 gets −")


def test_yeast_that_was_pitched_stays(practice: OpenFarm) -> None:
    sack = sacks_of(practice.picture, "P07")
    old = next(e for e in sack if e.body.lot == "25-12A")
    told = [str(t) for t in moves(practice, old.id, WeighIn("25-12A", "A", "P07", "am", 25_000, 0, "25"))]
    assert any(text.startswith("yeast stays 848\u202fg, 1.00 → ") for text in told)
