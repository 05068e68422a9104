"""Figures a farm sets for itself: written as read, refused where they cannot be, as is common where none is set."""

from __future__ import annotations

import pytest

from farmdesk.errors import Asked, NotPossible
from farmdesk.work import fermenting, picking, settings
from farmdesk.work.changes import Hand
from farmdesk.work.charts import ferment_figures
from farmdesk.work.farm import OpenFarm
from tests.work.season import instant


def test_a_figure_is_set_read_and_taken_back(farm: OpenFarm) -> None:
    assert settings.number(farm.things, "picking_local_kg") is None
    done = settings.save_figure(farm, "picking_local_kg", "6,50")
    assert settings.number(farm.things, "picking_local_kg") == 6.5
    done.inverse(farm)
    assert settings.number(farm.things, "picking_local_kg") is None
    assert str(done.label) == "picking, for ripe cherry: 6,50"


def test_an_emptied_figure_is_as_is_common(farm: OpenFarm) -> None:
    settings.save_figure(farm, "unripe_limit_pct", "3")
    settings.save_figure(farm, "unripe_limit_pct", " ")
    assert "unripe_limit_pct" not in farm.things.settings
    assert settings.stands(farm.things, "unripe_limit_pct") == "2.5"


def test_notes_are_a_list_and_the_sign_of_the_money_a_word(farm: OpenFarm) -> None:
    settings.save_figure(farm, "notes_local", "100 20 5 0,25")
    assert settings.numbers(farm.things, "notes_local") == [100, 20, 5, 0.25]
    settings.save_figure(farm, "local_money", "Q")
    assert farm.things.settings["local_money"] == "Q"


@pytest.mark.parametrize(
    ("name", "typed", "sentence"),
    [
        ("picking_local_kg", "six", "not a number"),
        ("picking_local_kg", "-1", "cannot be"),
        ("unripe_limit_pct", "112", "cannot be"),
        ("sleep_from_h", "25", "cannot be"),
        ("notes_local", "100 20 x", "not a number"),
        ("notes_local", "100 0", "cannot be"),
        ("unripe_limit_pct", "3 kg", "is read in %"),
        ("day_work_local", "5 kg", "read without one"),
        ("favourite_colour", "1", "no such figure"),
    ],
)
def test_what_cannot_be_is_refused(farm: OpenFarm, name: str, typed: str, sentence: str) -> None:
    before = dict(farm.things.settings)
    with pytest.raises(NotPossible, match=sentence):
        settings.save_figure(farm, name, typed)
    assert farm.things.settings == before


def test_a_number_that_may_be_two_is_asked_about(farm: OpenFarm) -> None:
    with pytest.raises(Asked):
        settings.save_figure(farm, "day_work_local", "1,250")
    settings.save_figure(farm, "day_work_local", "1,250", Hand(answers={"comma": "thousands"}))
    assert settings.number(farm.things, "day_work_local") == 1250


def test_a_unit_behind_a_figure_is_turned_into_its_own(farm: OpenFarm) -> None:
    settings.save_figure(farm, "local_money", "qz")
    for name, typed, value in (
        ("box_kg", "66 lb", 29.937),
        ("round_days_low", "14 d", 14),
        ("day_work_local", "90 qz", 90),
    ):
        settings.save_figure(farm, name, typed)
        assert settings.number(farm.things, name) == pytest.approx(value, abs=0.001)


def test_every_default_can_be_set_or_is_nobodys_to_set() -> None:
    assert set(settings.DEFAULTS) - {figure.name for figure in settings.FIGURES} == set()


def test_a_figure_of_the_bulk_is_used_at_once(farm: OpenFarm) -> None:
    assert settings.kg_a_litre(farm.things, whole=True) == 0.62
    settings.save_figure(farm, "bulk_cherry_kg_l", "0.60")
    assert settings.kg_a_litre(farm.things, whole=True) == 0.60
    settings.save_figure(farm, "pulp_pct", "40")
    assert settings.kg_a_litre(farm.things, whole=False) == pytest.approx(0.85 / 0.6)
    settings.save_figure(farm, "pulp_pct", "100")
    assert settings.kg_a_litre(farm.things, whole=False) == pytest.approx(8.5)


@pytest.mark.parametrize(("asleep", "awake", "hours"), [("", "", 8), ("22.5", "5", 6.5), ("1", "5", 4)])
def test_the_nights_of_a_chart_are_when_people_sleep(farm: OpenFarm, asleep: str, awake: str, hours: float) -> None:
    settings.save_figure(farm, "sleep_from_h", asleep)
    settings.save_figure(farm, "sleep_until_h", awake)
    lot = picking.begin_lot(farm, "W", instant(1, 12)).lot
    picking.weigh_in(farm, lot, block="A", picker="P01", half_day="am", gross="58", at_utc_s=instant(1, 12))
    fermenting.fill(farm, lot, {"T1": "58"}, instant(1, 17))
    fermenting.read_ferment(farm, lot, "T1", instant(3, 12), ph="4.5")
    (figure,) = ferment_figures(farm, farm.picture, farm.lot(lot))
    whole = [band for band in figure.bands if band.kind == "night"][1]
    assert (whole.high - whole.low) / 3600 == hours
    assert farm.time.local(whole.low).hour == int(float(asleep or 20))
