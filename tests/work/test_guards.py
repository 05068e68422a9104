"""What is unlikely against the yard itself: a vessel too small, floaters by the quarter, a scale that failed its test
weight, a weight far from what own lots came to. Each is asked once, or kept as a doubt until somebody lets it stand.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import pytest

from farmdesk import clock
from farmdesk.errors import Asked, NotPossible
from farmdesk.picture.entries import FLOATERS, INTAKE, SORTED
from farmdesk.picture.things import Instrument, Vessel
from farmdesk.work import drying, fermenting, keeping, picking, storing
from farmdesk.work.cards import lot_card
from farmdesk.work.changes import Hand
from farmdesk.work.doubts import WEIGHTS, doubts_of
from farmdesk.work.farm import OpenFarm
from farmdesk.work.gaps import gaps
from farmdesk.work.notebook import notebook_rows
from tests.desk import samples
from tests.desk.evening import season_copy
from tests.work.season import LOT, instant, new_farm

NATURAL = "25-01N"


@pytest.fixture
def farm(tmp_path) -> Iterator[OpenFarm]:
    with clock.set_to(instant(30, 0)):
        farm = new_farm(tmp_path)
        things = farm.things
        tools = {**things.instruments, "scale-1": Instrument("scale-1", "platform scale", WEIGHTS, 50, 50)}
        vessels = {**things.vessels, "T8": Vessel("T8", "tank", 1000, 800, False)}
        methods = {**things.methods, "N1": replace(things.methods["W1"], letter="N", whole=True)}
        farm.save_things(replace(things, instruments=tools, vessels=vessels, methods=methods))
        yield farm
        farm.close()


@pytest.fixture
def evening(tmp_path) -> Iterator[OpenFarm]:
    """The practice season's rows of the evening of 14 January, as a farm's own season."""
    with clock.set_to(samples.EVENING + 60):
        farm = OpenFarm.open(season_copy(tmp_path))
        yield farm
        farm.close()


def weigh(farm: OpenFarm, lot: str, kg: str, at: int, scale: str = "scale-1") -> None:
    hand = Hand("clerk", scale, answers={"far": "keep"})  # many sacks in one row
    picking.weigh_in(farm, lot, block="A", picker="P01", half_day="am", gross=kg, at_utc_s=at, hand=hand)


def test_five_hundred_kilograms_of_cherry_are_six_litres_too_much_for_eight_hundred(farm: OpenFarm) -> None:
    """500 kg at 0.62 kg/L are 806 L, by division; the usable share of a vessel is the farm's own."""
    picking.begin_lot(farm, "N", instant(1, 8))
    weigh(farm, NATURAL, "500", instant(1, 13))
    with pytest.raises(Asked) as asked:
        fermenting.fill(farm, NATURAL, {"T8": "500"}, instant(1, 17))
    said = str(asked.value.question.text).replace("\u202f", " ")
    assert said == "6 L too much for T8: at 0.62 kg of cherry a litre it is 806 L, and T8 takes 800 L."
    assert not farm.lot(NATURAL).balance.get("T8")
    fermenting.fill(farm, NATURAL, {"T8": "500"}, instant(1, 17), hand=Hand(answers={"full T8": "keep"}))
    assert farm.lot(NATURAL).balance["T8"] == 500_000


def test_a_vessel_that_takes_it_is_not_asked_about(farm: OpenFarm) -> None:
    picking.begin_lot(farm, "N", instant(1, 8))
    weigh(farm, NATURAL, "496", instant(1, 13))  # 800 L at 0.62 kg/L
    fermenting.fill(farm, NATURAL, {"T8": "496"}, instant(1, 17))


def test_floaters_by_the_quarter_are_asked_about(farm: OpenFarm) -> None:
    picking.begin_lot(farm, "W", instant(1, 8))
    weigh(farm, LOT, "100", instant(1, 13))
    with pytest.raises(Asked):
        picking.sort_and_float(farm, LOT, sorted_out="1", floaters="26", at_utc_s=instant(1, 16))
    picking.sort_and_float(farm, LOT, sorted_out="1", floaters="24", at_utc_s=instant(1, 16))
    balance = farm.lot(LOT).balance
    assert (balance[SORTED], balance[FLOATERS], balance[INTAKE]) == (1000, 24_000, 75_000)


def test_floaters_weighed_wet_keep_their_weight_and_say_so(farm: OpenFarm) -> None:
    picking.begin_lot(farm, "W", instant(1, 8))
    picking.weigh_in(farm, LOT, block="A", picker="P01", half_day="am", gross="100", at_utc_s=instant(1, 9))
    picking.sort_and_float(farm, LOT, sorted_out="1", floaters="4", drained="10 min", at_utc_s=instant(1, 16))
    assert farm.lot(LOT).balance[FLOATERS] == 4000
    said = [str(row.text).replace("\u202f", " ") for row in notebook_rows(farm)]
    assert any("weighed wet, drained for 10 min" in text for text in said), said
    with pytest.raises(NotPossible, match="1,440"):
        picking.sort_and_float(farm, LOT, sorted_out="1", floaters="4", drained="3000", at_utc_s=instant(1, 16))


def test_a_failed_test_weight_puts_the_weights_since_the_last_pass_in_doubt_until_they_are_let_stand(
    farm: OpenFarm,
) -> None:
    picking.begin_lot(farm, "W", instant(1, 8))
    keeping.check_instrument(farm, "scale-1", True, instant(1, 9))
    weigh(farm, LOT, "100", instant(1, 13))
    second = picking.begin_lot(farm, "W", instant(2, 8)).lot
    keeping.check_instrument(farm, "scale-1", True, instant(2, 9))
    weigh(farm, second, "50", instant(2, 13))
    weigh(farm, second, "55", instant(2, 14))
    weigh(farm, second, "57", instant(2, 15), scale="")  # by another scale
    assert not doubts_of(farm.picture, farm.lot(second))
    keeping.check_instrument(farm, "scale-1", False, instant(3, 9), text="20.0 kg test weight reads 20.6")
    picture = farm.picture
    assert not doubts_of(picture, picture.lots[LOT])  # weighed before a check that was passed
    (said,) = doubts_of(picture, picture.lots[second])
    assert "scale-1 since its last good check: 2" in str(said)
    assert lot_card(picture, picture.lots[second]).doubts == 1
    assert [gap.lot for gap in gaps(picture) if gap.quantity == WEIGHTS] == [second]
    keeping.check_instrument(farm, "scale-1", True, instant(4, 9))
    assert doubts_of(farm.picture, farm.lot(second))  # a scale that is right again does not mend what it weighed
    day = farm.time.farm_day(instant(3, 9))
    keeping.not_measured(farm, WEIGHTS, day, instant(4, 10), lot=second)
    assert not doubts_of(farm.picture, farm.lot(second))
    assert lot_card(farm.picture, farm.lot(second)).doubts == 0


def test_a_platform_total_that_differs_stands_on_the_card(farm: OpenFarm) -> None:
    """1 % or 2 kg may lie between a platform and the sum of its sacks: common practice, no source."""
    picking.begin_lot(farm, "W", instant(1, 8))
    weigh(farm, LOT, "500", instant(1, 13))
    picking.platform_total(farm, LOT, "495.1", instant(1, 16))
    assert not doubts_of(farm.picture, farm.lot(LOT))
    last = farm.file.entries()[-1]
    farm.strike([last.id])
    picking.platform_total(farm, LOT, "494.9", instant(1, 16))
    assert "the platform says" in str(doubts_of(farm.picture, farm.lot(LOT))[0])


def test_a_weight_far_from_what_own_lots_came_to_is_asked_about_once(evening: OpenFarm) -> None:
    """Eight washed lots have been spread, all near 0.39 of what was accepted."""
    lot = evening.lot("25-16W")
    accepted = lot.balance["intake"]
    fermenting.fill(evening, "25-16W", {"T1": f"{accepted / 1000}"}, samples.EVENING)
    with pytest.raises(Asked) as asked:
        drying.spread(evening, "25-16W", {"9": f"{0.30 * accepted / 1000:.1f}"}, samples.EVENING)
    said = str(asked.value.question.text)
    assert "by your 8 other lots of this method" in said
    drying.spread(evening, "25-16W", {"9": f"{0.39 * accepted / 1000:.1f}"}, samples.EVENING)


def test_dry_parchment_is_held_against_seven_own_lots(evening: OpenFarm) -> None:
    with pytest.raises(Asked) as asked:
        storing.shelve(evening, "25-13W", "300", samples.EVENING, hand=Hand(answers={"too wet": "keep"}))
    assert asked.value.question.key == "own normal"
    keep = Hand(answers={"too wet": "keep", "own normal": "keep"})
    storing.shelve(evening, "25-13W", "300", samples.EVENING, hand=keep)
    assert evening.lot("25-13W").balance["store"] == 300_000


def test_a_farm_with_few_lots_has_no_normal_to_be_far_from(farm: OpenFarm) -> None:
    picking.begin_lot(farm, "W", instant(1, 8))
    weigh(farm, LOT, "100", instant(1, 13))
    drying.spread(farm, LOT, {"9": "10"}, instant(2, 7))


def test_a_clock_fourteen_hours_ahead_is_not_believed_for_long(farm: OpenFarm) -> None:
    """Rows written by a clock that ran ahead stay; once it is right, later rows are written under them."""
    picking.begin_lot(farm, "W", instant(1, 8))
    right = clock.now()
    with clock.set_to(right + 14 * clock.HOUR_S):
        weigh(farm, LOT, "50", instant(1, 13))
    ahead = farm.file.entries()[-1].written_utc_s
    weigh(farm, LOT, "51", instant(1, 14))
    assert farm.file.entries()[-1].written_utc_s == ahead
    assert farm.lot(LOT).delivered_g == 101_000
    assert not farm.picture.doubts


def test_a_question_of_time_names_the_day_as_people_do(farm: OpenFarm) -> None:
    picking.begin_lot(farm, "W", instant(1, 8))
    with pytest.raises(Asked) as asked:
        weigh(farm, LOT, "50", clock.now() + 3 * clock.HOUR_S)
    said = str(asked.value.question.text)
    assert said.startswith(f"{farm.time.local(clock.now() + 3 * clock.HOUR_S):%a} ")
