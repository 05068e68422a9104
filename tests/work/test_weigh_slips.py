"""Slips: the same one again, pounds, swapped digits, a column that does not add up; each asked once."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk import clock
from farmdesk.clock import FarmTime
from farmdesk.errors import Asked, NotPossible
from farmdesk.picture.entries import Remark, WeighIn
from farmdesk.picture.things import Person
from farmdesk.work import picking, slips
from farmdesk.work.changes import Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.gaps import gaps
from farmdesk.work.slips import Usual
from farmdesk.work.weigh_grid import SheetKey, rows_of
from tests.work.season import LOT, instant, new_farm

TIME = FarmTime("America/Tegucigalpa")
NOON = 18  # UTC, of noon on the farm


@pytest.fixture
def hour() -> list[int]:
    return [instant(100, 0)]


@pytest.fixture
def farm(tmp_path, hour) -> Iterator[OpenFarm]:
    with clock.set_to(lambda: float(hour[0])):
        farm = new_farm(tmp_path)
        people = {f"P{n:02d}": Person(f"P{n:02d}", "picker") for n in range(1, 10)}
        farm.save_things(replace(farm.things, people=people))
        picking.begin_lot(farm, "W", instant(1, 12))
        yield farm
        farm.close()


def weigh(farm: OpenFarm, picker: str, gross: str, day: int = 10, half: str = "am", **more):
    return picking.weigh_in(
        farm, LOT, block="A", picker=picker, half_day=half, gross=gross, at_utc_s=instant(day, NOON), **more
    )  # fmt: skip


def usually(farm: OpenFarm, picker: str, *kilograms: float) -> None:
    for day, weight in enumerate(kilograms, start=1):
        weigh(farm, picker, str(weight), day)


def asked(call) -> Asked:
    with pytest.raises(Asked) as caught:
        call()
    return caught.value


def nets(farm: OpenFarm, picker: str = "") -> list[int]:
    return [slips.net_g(e.body) for e in slips.sacks_of(farm.picture, picker)]


@pytest.mark.parametrize(("typed", "meant"), [("86", "68"), ("86.4", "68.4")])
def test_swapped_digits_are_asked_once_and_either_answer_stands(farm: OpenFarm, typed: str, meant: str) -> None:
    usually(farm, "P01", 66, 68, 70, 67)
    question = asked(lambda: weigh(farm, "P01", typed)).question
    assert (question.key, question.answers[0].value) == ("swap", meant)
    assert f"{typed} does not fit, {meant} would" in str(question.text)
    weigh(farm, "P01", typed, hand=Hand(answers={"swap": meant}))
    assert nets(farm, "P01")[-1] == round(float(meant) * 1000)
    weigh(farm, "P01", typed, day=11, hand=Hand(answers={"swap": "keep"}))
    assert nets(farm, "P01")[-1] == round(float(typed) * 1000)


def test_swapped_is_not_asked_with_a_unit_nor_of_a_new_picker_nor_on_a_poor_day(farm: OpenFarm) -> None:
    weigh(farm, "P02", "86")  # nothing known of P02
    for picker in ("P03", "P04", "P05", "P06", "P07", "P08"):
        usually(farm, picker, 40, 42, 44)
    weigh(farm, "P03", "24.0 kg")  # the unit was written, so the digits were looked at
    question = asked(lambda: weigh(farm, "P04", "24")).question
    assert question.key == "swap"
    for n, picker in enumerate(("P04", "P05", "P06", "P07", "P08")):
        weigh(farm, picker, f"{24 + n / 10:.1f}", hand=Hand(answers={"swap": "keep"}))
    usually(farm, "P09", 40, 42, 44)
    weigh(farm, "P09", "24")  # a day that gives little gives little to everybody


@pytest.mark.parametrize(("typed", "meant"), [("341", "34.1"), ("3.6", "36"), ("3,6", "36")])
def test_a_forgotten_point_is_asked_about(farm: OpenFarm, typed: str, meant: str) -> None:
    usually(farm, "P01", 34.1, 38, 36, 33.5, 40)
    question = asked(lambda: weigh(farm, "P01", typed)).question
    assert (question.key, question.answers[0].value) == ("point", meant)
    weigh(farm, "P01", typed, hand=Hand(answers={"point": meant}))
    assert nets(farm, "P01")[-1] == round(float(meant) * 1000)


def test_far_more_than_anybody_carries_is_asked_about_and_far_less_is_only_marked(farm: OpenFarm) -> None:
    usually(farm, "P01", 34.1, 38, 36, 33.5, 40)
    question = asked(lambda: weigh(farm, "P01", "150")).question
    assert question.key == "far"
    assert "4.2 times what P01 usually brings" in str(question.text)
    assert asked(lambda: weigh(farm, "P01", "150 kg")).question.key == "far"  # with its unit as well
    assert asked(lambda: weigh(farm, "P02", "341")).question.key == "far"  # nothing known of P02: the scale's reach
    weigh(farm, "P01", "150", hand=Hand(answers={"far": "keep"}))
    weigh(farm, "P01", "14", half="pm")
    weigh(farm, "P01", "36", day=11)
    sacks = slips.sacks_of(farm.picture, "P01")
    assert [slips.net_g(e.body) for e in sacks if slips.unusual(farm.picture, e)] == [150_000, 14_000]
    marked = [
        row.unusual for row in rows_of(farm.picture, SheetKey(LOT, "A", "pm", farm.time.farm_day(instant(10, NOON))))
    ]
    assert marked == [True]
    evening = farm.picture.at(instant(10, 20), instant(200, 0))
    said = [str(gap.text).replace("\u202f", " ") for gap in gaps(evening)]
    assert "25-01W: P01 brought 14.0 kg, usually 27–45 kg" in said
    assert not any("P01 brought" in str(gap.text) for gap in gaps(farm.picture.at(instant(11, 20), instant(200, 0))))


def test_pounds_come_before_swapped_and_only_one_is_asked(farm: OpenFarm) -> None:
    usually(farm, "P07", 58.4, 59.4, 57.8, 58.0)
    assert asked(lambda: weigh(farm, "P07", "128")).question.key == "pounds"
    weigh(farm, "P07", "128", hand=Hand(answers={"pounds": "lb"}))
    assert nets(farm, "P07")[-1] == 58_060
    weigh(farm, "P07", "128", day=11, hand=Hand(answers={"pounds": "kg"}))
    assert nets(farm, "P07")[-1] == 128_000


def test_a_sheet_in_pounds_asks_for_no_pounds(farm: OpenFarm) -> None:
    usually(farm, "P07", 58, 59, 57)
    weigh(farm, "P07", "128", unit="lb")
    entry = slips.sacks_of(farm.picture, "P07")[-1]
    assert (entry.body.gross_g, entry.body.typed) == (58_060, "128 lb")


def test_the_same_slip_again_is_asked_and_kept_once(farm: OpenFarm) -> None:
    weigh(farm, "P01", "41.5")
    question = asked(lambda: weigh(farm, "P01", "41.5")).question
    assert question.key == "same"
    assert "already. The same slip?" in str(question.text)
    done = weigh(farm, "P01", "41.5", hand=Hand(answers={"same": "same"}))
    assert (done.entries, nets(farm)) == ((), [41_500])
    weigh(farm, "P01", "41.5", hand=Hand(answers={"same": "keep"}))
    assert nets(farm) == [41_500, 41_500]


def test_another_half_day_or_block_is_another_slip(farm: OpenFarm) -> None:
    weigh(farm, "P01", "41.5")
    weigh(farm, "P01", "41.5", half="pm")
    picking.weigh_in(farm, LOT, block="B", picker="P01", half_day="am", gross="41.5", at_utc_s=instant(10, NOON) + 900)
    assert len(nets(farm)) == 3


def test_next_morning_the_rows_of_the_sheet_are_named(farm: OpenFarm, hour: list[int]) -> None:
    for n in range(1, 4):
        weigh(farm, f"P0{n}", f"{40 + n}.5")
    hour[0] += 39_000
    question = asked(lambda: weigh(farm, "P01", "41.5")).question
    last = TIME.local(instant(100, 0))
    assert f"3 rows of this sheet were kept, the last {last:%a} {last.day} {last:%b %H:%M}. Same slips?" in str(
        question.text
    )


def test_slips_typed_again_pass_silently_and_only_what_differs_is_asked(farm: OpenFarm, hour: list[int]) -> None:
    for n in range(1, 5):
        weigh(farm, f"P0{n}", f"{40 + n}.5")
    hour[0] += 39_000
    again = {"retyped_from_utc_s": hour[0]}
    assert weigh(farm, "P01", "41.5", **again).entries == ()
    assert weigh(farm, "P02", "42.5", **again).entries == ()
    question = asked(lambda: weigh(farm, "P03", "45.3", **again)).question
    assert question.key == "slip"
    assert "says 43.5\u202fkg; this one says 45.3\u202fkg" in str(question.text)
    kept, correct, both = (answer.value for answer in question.answers)
    assert weigh(farm, "P03", "45.3", hand=Hand(answers={"slip": kept}), **again).entries == ()
    assert nets(farm, "P03") == [43_500]
    done = weigh(farm, "P03", "45.3", hand=Hand(answers={"slip": correct}), **again)
    assert nets(farm, "P03") == [45_300]
    back = done.inverse(farm)  # undo brings the kept one back
    assert nets(farm, "P03") == [43_500]
    back.inverse(farm)
    assert nets(farm, "P03") == [45_300]
    weigh(farm, "P04", "20.5", hand=Hand(answers={"slip": both}), **again)
    assert nets(farm, "P04") == [44_500, 20_500]
    weigh(farm, "P05", "39", **again)  # the first that was not kept
    assert nets(farm, "P05") == [39_000]


def test_a_correction_strikes_with_its_reason_and_says_what_it_replaces(farm: OpenFarm) -> None:
    usually(farm, "P07", 58, 59, 57)
    weigh(farm, "P07", "128", hand=Hand(answers={"pounds": "kg"}))
    wrong = slips.sacks_of(farm.picture, "P07")[-1]
    with pytest.raises(NotPossible, match="needs its reason"):
        picking.correct_slip(farm, wrong.id, picker="P07", gross="128 lb", reason=" ")
    picking.correct_slip(farm, wrong.id, picker="P07", gross="128 lb", reason="the scale stood on pounds")
    right = slips.sacks_of(farm.picture, "P07")[-1]
    assert (right.body.gross_g, right.replaces, right.happened_utc_s) == (58_060, wrong.id, wrong.happened_utc_s)
    assert wrong.id in farm.picture.book.struck
    with pytest.raises(NotPossible, match="no such row"):
        picking.correct_slip(farm, wrong.id, picker="P07", gross="58", reason="again")


def test_a_column_total_is_asked_once_and_names_the_row_that_explains_it(farm: OpenFarm) -> None:
    weigh(farm, "P01", "61.3")
    weigh(farm, "P07", "128")
    day = TIME.farm_day(instant(10, NOON))

    def check(written: str, hand: Hand = Hand()):
        return picking.check_column(farm, LOT, "A", "am", day, written, instant(10, NOON), hand)

    assert "as the paper says" in str(check("189,3").label)
    assert farm.lot(LOT).of(Remark) == []
    question = asked(lambda: check("119.4")).question
    assert "69.9\u202fkg apart. P07 128.0\u202fkg taken as pounds would close it." in str(question.text)
    assert "P01 61.3\u202fkg as 16.3\u202fkg" in str(asked(lambda: check("144.3")).question.text)
    check("119.4", Hand(answers={"column": "keep"}))
    assert "column 119.4 kg, rows 189.3 kg" in farm.lot(LOT).of(Remark)[0].body.text


def test_an_unknown_code_is_kept_as_it_was_written(farm: OpenFarm) -> None:
    weigh(farm, "p77", "40")
    weigh(farm, "", "41")
    assert [e.body.picker for e in farm.lot(LOT).of(WeighIn)] == ["?", "P77"]


@pytest.mark.parametrize(
    ("typed", "code"), [("1", LOT), ("01", LOT), (LOT.lower(), LOT), (LOT[3:].lower(), LOT), (LOT[4:], LOT)]
)
def test_a_lot_is_named_by_its_number_alone(farm: OpenFarm, typed: str, code: str) -> None:
    assert picking.read_lot(farm, typed) == code


@pytest.mark.parametrize("typed", ["7", "25-07W", "abc", ""])
def test_a_lot_that_is_not_there_is_refused(farm: OpenFarm, typed: str) -> None:
    with pytest.raises(NotPossible):
        picking.read_lot(farm, typed)


@given(st.integers(100, 999), st.integers(0, 1))
def test_what_a_swap_proposes_holds_the_same_digits_and_hits_the_usual(tenths: int, at: int) -> None:
    right = f"{tenths / 10:.1f}"
    signs = [sign for sign in right if sign != "."]
    signs[at], signs[at + 1] = signs[at + 1], signs[at]
    typed = f"{''.join(signs[:-1])}.{signs[-1]}"
    middle = round(float(right) * 1000)
    found = slips.swapped(typed, Usual(middle, round(middle * 0.8), round(middle * 1.2), ()), 0)
    if typed == right:
        assert found is None or abs(float(found) * 1000 / middle - 1) < 0.062
    else:
        assert found == right


DAY = date(2025, 1, 14)


@pytest.mark.parametrize(
    ("typed", "said"),
    [("02:30", "15T02:30"), ("0230", "15T02:30"), ("2.30", "15T02:30"), ("00:30", "15T00:30"), ("4", "14T04:00"),
     ("15:20", "14T15:20"), ("23:59", "14T23:59"), ("3h59", "15T03:59")],
)  # fmt: skip
def test_a_time_on_a_sheet_belongs_to_its_work_day(typed: str, said: str) -> None:
    at = TIME.typed(DAY, typed)
    assert f"{TIME.local(at):%dT%H:%M}" == said
    assert TIME.farm_day(at) == DAY


@pytest.mark.parametrize("typed", ["24:00", "12:60", "", "noon", "1:2:3", "123456"])
def test_what_is_no_time_is_refused(typed: str) -> None:
    with pytest.raises(NotPossible, match="not a time of day"):
        TIME.typed(DAY, typed)


def test_a_small_hour_is_said_with_its_night() -> None:
    assert str(TIME.night(TIME.typed(DAY, "02:30"))) == "02:30 (night of Tue 14 Jan)"
    assert str(TIME.night(TIME.typed(DAY, "15:20"))) == "14 Jan 15:20"
