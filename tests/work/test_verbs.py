"""The verbs: what is refused, what is asked once, what is kept as a doubt, and how it is taken back."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from farmdesk import clock
from farmdesk.errors import Asked, NotPossible
from farmdesk.picture.entries import PEABERRY, RETAINED, SAMPLE, SOLD, TOP
from farmdesk.picture.measures import accepted_g, end_wb_frac, green_g, outturn_frac, stored_g, unexplained_g
from farmdesk.work import drying, fermenting, keeping, picking, selling, storing
from farmdesk.work.changes import Hand
from farmdesk.work.farm import OpenFarm
from tests.work.season import LOT, instant, new_farm


@pytest.fixture
def farm(tmp_path) -> Iterator[OpenFarm]:
    with clock.set_to(instant(100, 0)):
        farm = new_farm(tmp_path)
        yield farm
        farm.close()


def pick(farm: OpenFarm, gross: str = "100", picker: str = "P01", **more) -> None:
    picking.weigh_in(
        farm, LOT, block="A", picker=picker, half_day="am", gross=gross, at_utc_s=instant(1, 13), **more
    )  # fmt: skip


def to_the_store(farm: OpenFarm) -> None:
    """A lot from the first sack into the store."""
    picking.begin_lot(farm, "W", instant(1, 8))
    for n in range(1, 11):
        pick(farm, picker=f"P{n:02d}")
    picking.sort_and_float(farm, LOT, sorted_out="20", floaters="40", at_utc_s=instant(1, 16))
    fermenting.fill(farm, LOT, {"T1": "940"}, instant(1, 17))
    drying.spread(farm, LOT, {"9": "190", "10": "185"}, instant(2, 7))
    drying.move(farm, LOT, ["10"], ["9"], instant(6, 8))
    drying.read_at_bed(farm, LOT, instant(12, 16), meter=["11.2", "11.4", "11.3"])
    storing.shelve(farm, LOT, "190", instant(12, 17), bags_n=7, pallet="2")


def test_a_lot_from_sack_to_sale(farm: OpenFarm) -> None:
    to_the_store(farm)
    storing.send_to_mill(farm, LOT, "189", instant(40, 9))
    storing.mill_return(
        farm, LOT, {"top": "120", "light": "15", "small": "12", "peaberry": "8"}, instant(42, 15), husk="33"
    )
    selling.send_sample(farm, LOT, "R1", "300 g", instant(50, 9))
    storing.keep_back(farm, LOT, "0.5", instant(50, 9))
    selling.sell(farm, LOT, "R1", "60", instant(60, 9), price_usd_kg=10.0)
    lot = farm.lot(LOT)
    assert (lot.delivered_g, accepted_g(lot), stored_g(lot), green_g(lot)) == (1_000_000, 940_000, 190_000, 155_000)
    assert outturn_frac(lot) == pytest.approx(155 / 189)
    assert unexplained_g(lot) == 1000
    assert end_wb_frac(lot, []) == pytest.approx(0.113)
    assert lot.balance[TOP] == 120_000 - 300 - 500 - 60_000
    assert (lot.balance[SAMPLE], lot.balance[SOLD], lot.balance[RETAINED], lot.balance[PEABERRY]) == (
        300,
        60_000,
        500,
        8000,
    )
    assert not farm.picture.doubts


def test_undo_strikes_and_redo_brings_back(farm: OpenFarm) -> None:
    picking.begin_lot(farm, "W", instant(1, 8))
    done = picking.weigh_in(farm, LOT, block="A", picker="P01", half_day="am", gross="50", at_utc_s=instant(1, 13))
    assert farm.lot(LOT).delivered_g == 50_000
    undone = done.inverse(farm)
    assert farm.lot(LOT).delivered_g == 0
    undone.inverse(farm)
    assert farm.lot(LOT).delivered_g == 50_000
    assert len(farm.file.entries()) == 4  # honest history: nothing was deleted


@pytest.mark.parametrize(
    ("verb", "sentence"),
    [
        (lambda f: drying.read_at_bed(f, LOT, instant(3, 16), meter=["112"]), "between 0 and 100"),
        (lambda f: drying.read_at_bed(f, LOT, instant(3, 16), tray="1", tray_gross="390"), "Tray 1 weighs 400.g when empty"),
        (lambda f: drying.read_at_bed(f, LOT, instant(3, 16), tray="7", tray_gross="900"), "no tray 7"),
        (lambda f: drying.read_at_bed(f, LOT, instant(3, 16)), "Nothing was read"),
        (lambda f: pick(f, "abc"), "not a number"),
        (lambda f: pick(f, "50 litres"), "not a weight"),
        (lambda f: pick(f, "50", tare="60"), "not less than"),
        (lambda f: pick(f, "-4"), "below nothing"),
        (lambda f: picking.begin_lot(f, "Q", instant(1, 8)), "no method Q"),
        (lambda f: picking.begin_lot(f, "W", instant(1, 8), code="25-01W"), "exists already"),
        (lambda f: picking.begin_lot(f, "W", instant(1, 8), code="25-31W T"), "check character"),
        (lambda f: fermenting.fill(f, LOT, {"T9": "10"}, instant(1, 17)), "no vessel T9"),
        (lambda f: drying.spread(f, LOT, {"99": "10"}, instant(2, 7)), "no bed or cell 99"),
        (lambda f: fermenting.read_ferment(f, LOT, "T1", instant(1, 18), ph="15"), "between 0 and 14"),
        (lambda f: storing.shelve(f, LOT, "10", instant(9, 9)), "lies on no bed"),
        (lambda f: selling.hold(f, LOT, "R1", "10", instant(1, 0), instant(2, 0)), "must end after it begins"),
        (lambda f: keeping.correct_instrument(f, "meter-1", "meter_wb_frac", -0.008, 200, 300, until_utc_s=100), "end after"),
        (lambda f: f.strike(["nothing"]), "no such row"),
        (lambda f: drying.write_weather(f, clock.FarmTime("UTC").farm_day(instant(1, 12)), min_c="20", max_c="10", rh="60",
                                        rain_mm="0", good_h="6", at_utc_s=instant(1, 18)), "above the highest"),
    ],
)  # fmt: skip
def test_what_cannot_be_is_refused_and_nothing_is_written(farm: OpenFarm, verb, sentence: str) -> None:
    picking.begin_lot(farm, "W", instant(1, 8))
    before = len(farm.file.entries())
    with pytest.raises(NotPossible, match=sentence):
        verb(farm)
    assert len(farm.file.entries()) == before


@pytest.mark.parametrize(
    ("verb", "key"),
    [
        (lambda f, h: drying.read_at_bed(f, LOT, instant(9, 16), meter=["22.9", "22.8", "27.2"], hand=h), "uneven"),
        (lambda f, h: drying.read_at_bed(f, LOT, instant(9, 16), meter=["41"], hand=h), "too wet"),
        (lambda f, h: drying.read_at_bed(f, LOT, instant(9, 16), meter=["12"], bean_c="44", hand=h), "hot"),
        (lambda f, h: drying.move(f, LOT, ["14"], ["15"], instant(9, 8), hand=h), "empty 14"),
        (lambda f, h: storing.send_to_mill(f, LOT, "250", instant(20, 9), hand=h), "held"),
        (lambda f, h: fermenting.read_ferment(f, LOT, "T1", instant(1, 20), ph="7.9", hand=h), "ph range"),
        (lambda f, h: fermenting.pitch_yeast(f, LOT, "T1", "4000", instant(1, 18), hand=h), "dose"),
        (lambda f, h: picking.weigh_in(f, LOT, block="A", picker="P01", half_day="pm", gross="1,250", at_utc_s=instant(1, 15), hand=h), "comma"),
        (lambda f, h: drying.cover(f, ["9"], True, instant(130, 2), hand=h), "ahead"),
    ],
)  # fmt: skip
def test_what_is_unlikely_is_asked_once_and_then_kept(farm: OpenFarm, verb, key: str) -> None:
    picking.begin_lot(farm, "W", instant(1, 8))
    pick(farm, "1000", hand=Hand(answers={"far": "keep"}))
    fermenting.fill(farm, LOT, {"T1": "940"}, instant(1, 17))
    before = len(farm.file.entries())
    with pytest.raises(Asked) as asked:
        verb(farm, Hand())
    assert asked.value.question.key == key
    assert len(farm.file.entries()) == before
    answer = asked.value.question.answers[0].value
    verb(farm, Hand(answers={key: answer}))
    assert len(farm.file.entries()) > before


def test_more_out_than_the_books_hold_stays_as_a_doubt_and_heals(farm: OpenFarm) -> None:
    to_the_store(farm)
    with pytest.raises(Asked):
        storing.send_to_mill(farm, LOT, "250", instant(40, 9))
    storing.send_to_mill(farm, LOT, "250", instant(40, 9), hand=Hand(answers={"held": "keep"}))
    assert [d.kind for d in farm.picture.doubts] == ["below zero"]
    # the missing sheet: sixty-one kilograms more had come into the store
    drying.spread(farm, LOT, {"11": "61"}, instant(13, 9), from_places=["T1"])
    storing.shelve(farm, LOT, "61", instant(14, 9), from_places=["11"])
    assert "below zero" not in [d.kind for d in farm.picture.doubts]


def test_pounds_typed_as_kilograms_are_asked_about(farm: OpenFarm) -> None:
    picking.begin_lot(farm, "W", instant(1, 8))
    for gross in ("58", "61", "57.5"):
        pick(farm, gross)
    with pytest.raises(Asked, match="Kilograms or pounds"):
        pick(farm, "128")
    pick(farm, "128", hand=Hand(answers={"pounds": "lb"}))
    assert farm.lot(LOT).delivered_g == 58_000 + 61_000 + 57_500 + 58_060
    assert farm.file.entries()[-1].body.typed == "128 lb"


def test_a_correction_strikes_and_types_again_in_one_act(farm: OpenFarm) -> None:
    picking.begin_lot(farm, "W", instant(1, 8))
    done = picking.weigh_in(farm, LOT, block="A", picker="P07", half_day="am", gross="128", at_utc_s=instant(1, 13))

    def again(farm: OpenFarm):
        return picking.weigh_in(
            farm, LOT, block="A", picker="P07", half_day="am", gross="128 lb", at_utc_s=instant(1, 13)
        )

    corrected = keeping.correct(farm, done.entries, "it was pounds", again)
    assert farm.lot(LOT).delivered_g == 58_060
    corrected.inverse(farm)
    assert farm.lot(LOT).delivered_g == 128_000
    with pytest.raises(NotPossible, match="needs its reason"):
        keeping.correct(farm, done.entries, " ", again)


def test_joined_lots_keep_their_histories(farm: OpenFarm) -> None:
    to_the_store(farm)
    storing.send_to_mill(farm, LOT, "189", instant(40, 9))
    storing.mill_return(farm, LOT, {"top": "120", "small": "30"}, instant(42, 15), husk="38")
    other = picking.begin_lot(farm, "W", instant(3, 8)).lot
    picking.weigh_in(farm, other, block="B", picker="P01", half_day="am", gross="500", at_utc_s=instant(3, 13),
                     hand=Hand(answers={"far": "keep"}))  # fmt: skip
    fermenting.fill(farm, other, {"T2": "500"}, instant(3, 17))
    drying.spread(farm, other, {"12": "195"}, instant(4, 7))
    drying.read_at_bed(farm, other, instant(14, 16), meter=["11"])
    storing.shelve(farm, other, "99", instant(14, 17))
    storing.send_to_mill(farm, other, "99", instant(40, 9))
    storing.mill_return(farm, other, {"top": "60", "small": "20"}, instant(42, 15), husk="18")
    joint = storing.join_lots(farm, [LOT, other], instant(45, 9), alias="25-01/02W").lot
    assert joint == "25-03W"
    assert green_g(farm.lot(joint)) == 230_000
    assert farm.lot(joint).balance[TOP] == 180_000
    assert farm.lot(LOT).balance[TOP] == 0
    assert green_g(farm.lot(LOT)) == 150_000  # as the mill wrote it


def test_a_clock_that_ran_back_writes_under_the_last_row(farm: OpenFarm) -> None:
    picking.begin_lot(farm, "W", instant(1, 8))
    with clock.set_to(instant(-1000, 0)):
        pick(farm, hand=Hand(answers={"ahead": "keep"}))
    last = farm.file.entries()[-1]
    assert last.written_utc_s == instant(100, 0)


def test_a_copy_can_only_be_read(farm: OpenFarm, tmp_path) -> None:
    second = OpenFarm.open(farm.file.path)
    try:
        assert second.reading_only
        with pytest.raises(NotPossible, match="only be read"):
            picking.begin_lot(second, "W", instant(1, 8))
    finally:
        second.close()
