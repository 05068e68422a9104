"""The three guards on what a hand types: signs, units, what cannot be, what is asked once."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from farmdesk import clock
from farmdesk.errors import Asked, NotPossible
from farmdesk.picture.entries import Reading
from farmdesk.units import LB_G, read_number, value_of
from farmdesk.work import drying, fermenting, picking
from farmdesk.work.changes import Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.guards import between, share, weight
from tests.work.season import instant, new_farm


@pytest.fixture
def farm(tmp_path) -> Iterator[OpenFarm]:
    with clock.set_to(instant(40, 0)):
        farm = new_farm(tmp_path)
        yield farm
        farm.close()


# The pound is 0.45359237 kg (international agreement of 1959); a quintal here is the accounting one of 46 kg.
@pytest.mark.parametrize(
    ("typed", "grams"),
    [
        ("12,5", 12_500), ("12.5", 12_500), (" 12.5 kg", 12_500), ("152 lb", round(152 * LB_G)), ("152lb", 68_946),
        ("1.5 qq", 69_000), ("1,5 QQ", 69_000), ("900 g", 900), ("1 250", 1_250_000), ("1.250,5", 1_250_500),
        ("1,250.5", 1_250_500), ("0,250", 250), (".5", 500), ("2 t", 2_000_000), ("16 oz", 454),
    ],
)  # fmt: skip
def test_a_weight_as_hands_write_it(typed: str, grams: int) -> None:
    assert weight(typed, Hand())[0] == grams


def test_a_comma_before_three_figures_is_asked_once(farm: OpenFarm) -> None:
    with pytest.raises(Asked) as asked:
        weight("1,250", Hand())
    assert [answer.value for answer in asked.value.question.answers] == ["thousands", "decimal"]
    assert weight("1,250", Hand(answers={"comma": "thousands"}))[0] == 1_250_000
    assert weight("1,250", Hand(answers={"comma": "decimal"}))[0] == 1250


@pytest.mark.parametrize(
    ("typed", "unit", "value"),
    [
        ("68 F", "°C", 20.0), ("68°F", "°C", 20.0), ("20 °C", "°C", 20.0), ("20", "°C", 20.0), ("-40 F", "°C", -40.0),
        ("900 g", "kg", 0.9), ("2 kg", "g", 2000.0), ("1 lb", "g", LB_G), ("2.5 cm", "mm", 25.0), ("500 ml", "L", 0.5),
        ("90 min", "h", 1.5), ("11,7 %", "%", 11.7), ("4.2 pH", "", 4.2), ("19 Bx", "°Bx", 19.0),
    ],
)  # fmt: skip
def test_another_unit_is_turned_into_the_expected_one(typed: str, unit: str, value: float) -> None:
    assert value_of(read_number(typed, unit), unit) == pytest.approx(value)


@pytest.mark.parametrize(
    ("typed", "unit"), [("20 kg", "°C"), ("4.2 kg", ""), ("68 F", "%"), ("3 h", "mm"), ("12 m", "L"), ("5 €", "kg")]
)
def test_what_is_in_no_such_unit_is_never_taken_for_it(typed: str, unit: str) -> None:
    with pytest.raises(NotPossible, match=r"unit|not a temperature|not a weight"):
        between(typed, -100, 1000, unit, Hand())


@pytest.mark.parametrize("typed", ["", "abc", "--3", "1e5", "12..5", "5 8.1", "1,2,3", "12,5.5", "∞", "nan", "kg"])
def test_what_is_no_number_is_one_sentence(typed: str) -> None:
    for read in (lambda: weight(typed, Hand()), lambda: share(typed, Hand())):
        with pytest.raises(NotPossible) as said:
            read()
        assert str(said.value).count("\n") == 0


def test_moisture_beyond_a_hundred_cannot_be() -> None:
    with pytest.raises(NotPossible, match="between 0 and 100"):
        share("112 %", Hand())
    with pytest.raises(NotPossible, match="below nothing"):
        weight("-3", Hand())
    with pytest.raises(NotPossible, match="more than one weighing"):
        weight("58100", Hand())


def test_a_temperature_in_fahrenheit_is_kept_as_typed_and_counted_in_celsius(farm: OpenFarm) -> None:
    lot = picking.begin_lot(farm, "W", instant(1, 12)).lot
    fermenting.read_ferment(farm, lot, "T1", instant(1, 20), mass_c="68 F")
    (entry,) = farm.lot(lot).of(Reading)
    (line,) = entry.body.values
    assert (line.value, line.typed) == (pytest.approx(20.0), "68 F")


def test_an_unlikely_value_is_one_question_and_then_kept(farm: OpenFarm) -> None:
    lot = picking.begin_lot(farm, "W", instant(1, 12)).lot
    answers: dict[str, str] = {}
    asked = 0
    for _ in range(5):
        try:
            drying.read_at_bed(farm, lot, instant(2, 12), place="1", meter=["44"], hand=Hand(answers=answers))
            break
        except Asked as error:
            asked += 1
            answers[error.question.key] = error.question.answers[0].value
    assert asked == 1
    assert len(farm.lot(lot).of(Reading)) == 1
