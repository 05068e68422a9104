"""What ferments would make of a closed room: said before anybody goes in, and never as a measurement."""

from __future__ import annotations

from dataclasses import replace

import pytest

from farmdesk.science.air import pressure_kpa
from farmdesk.work import fermenting, picking, settings
from farmdesk.work.changes import Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.room_gas import room_gas
from farmdesk.work.today import today_story
from tests.work.season import instant


def fill(farm: OpenFarm, kilograms: str) -> str:
    """Whole cherry into a vessel; a farm at the height where the air presses with 86 kPa."""
    washed = farm.things.methods["W1"]
    natural = replace(washed, letter="A", name="sealed whole", whole=True, sealed=True)
    about = replace(farm.things.farm, altitude_m=1360.0)
    assert float(pressure_kpa(1360.0)) == pytest.approx(86.0, abs=0.1)
    farm.save_things(replace(farm.things, farm=about, methods={"W1": washed, "A1": natural}))
    lot = picking.begin_lot(farm, "A", instant(1, 12)).lot
    hand = Hand(answers={"far": "keep"})
    picking.weigh_in(
        farm, lot, block="A", picker="P01", half_day="am", gross=kilograms, at_utc_s=instant(1, 18), hand=hand
    )
    fermenting.fill(farm, lot, {"T1": kilograms}, instant(1, 20))
    return lot


def test_three_kilograms_of_sugar_in_thirty_cubic_metres(farm: OpenFarm) -> None:
    """120 kg of cherry at 25 g/kg hold 3 kg of sugar: 1.47 kg of gas, 950 L, 31,700 ppm (CODATA, IUPAC; by hand)."""
    lot = fill(farm, "120")
    assert room_gas(farm.picture) is None  # nobody has said how large the room is
    settings.save_figure(farm, "room_m3", "30")
    found = room_gas(farm.picture)
    assert found is not None
    level, words = found
    assert level == "danger"
    assert "≈\u202f31,700\u202fppm" in str(words)
    assert "30,000" in str(words)
    assert "never lean into the vessel" in str(words)
    assert today_story(farm).gas == found
    settings.save_figure(farm, "room_m3", "300")
    assert room_gas(farm.picture)[0] == "none"  # type: ignore[index]
    settings.save_figure(farm, "room_m3", "100")
    assert room_gas(farm.picture)[0] == "warn"  # type: ignore[index]
    fermenting.vessel_step(farm, lot, "T1", "open", instant(4, 12))
    assert room_gas(farm.picture) is not None  # an open vessel gives gas all the same


def test_nothing_in_a_vessel_is_nothing_to_be_said(farm: OpenFarm) -> None:
    settings.save_figure(farm, "room_m3", "30")
    assert room_gas(farm.picture) is None
    assert today_story(farm).gas is None
