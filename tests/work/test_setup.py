"""A farm of one's own, its registers, and the care of its data."""

from __future__ import annotations

import csv
import json
from collections.abc import Iterator
from dataclasses import replace

import pytest

from farmdesk import clock
from farmdesk.errors import Asked, NotPossible
from farmdesk.picture.things import Block, Instrument, Place, Tray, Vessel
from farmdesk.work import carrying, drying, keeping, picking, setup
from farmdesk.work.changes import Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.practice import build_practice
from tests.work.season import instant


@pytest.fixture
def farm(tmp_path) -> Iterator[OpenFarm]:
    with clock.set_to(instant(100, 0)):
        farm = setup.begin_farm(tmp_path / "own.season", "La ladera", "25", "America/Bogota")
        yield farm
        farm.close()


@pytest.mark.parametrize(
    ("name", "season", "zone"), [("", "25", "UTC"), ("Farm", "2025", "UTC"), ("Farm", "25", "Nowhere/Land")]
)
def test_a_farm_needs_a_name_a_season_and_a_zone(tmp_path, name: str, season: str, zone: str) -> None:
    with pytest.raises(NotPossible):
        setup.begin_farm(tmp_path / "own.season", name, season, zone)
    assert not (tmp_path / "own.season").exists()


def test_from_an_empty_program_to_a_first_lot_on_a_first_bed(farm: OpenFarm) -> None:
    lot = picking.begin_lot(farm, "N", instant(1, 13)).lot
    setup.save(farm, setup.next_bed(farm, 1.2, 12))
    picking.weigh_in(farm, lot, block="A", picker="?", half_day="pm", gross="120", at_utc_s=instant(1, 20))
    drying.spread(farm, lot, {"1": "118"}, instant(1, 22))
    assert farm.lot(lot).heaps == {"1": 118_000}
    assert not farm.picture.doubts


@pytest.mark.parametrize(
    ("thing", "sentence"),
    [
        (Vessel("T1", "tank", 1000, 1200, False), "Of 1,000.L not 1,200.L"),
        (Vessel("T1", "tank", 0, 0, False), "needs its volume"),
        (Place("1", "bed", 0, 0, 0, 12), "width and length"),
        (Block("", "x", 1, 1, 2, "y"), "needs a code"),
        (Block("A", "x", 1, 1700, 1600, "y"), "cannot be so"),
        (Tray("1", 0), "empty weight"),
    ],
)
def test_things_that_cannot_be_are_refused(farm: OpenFarm, thing, sentence: str) -> None:
    before = farm.things
    with pytest.raises(NotPossible, match=sentence):
        setup.save(farm, thing)
    assert farm.things == before


def test_overlapping_beds_and_absurd_trees_are_asked_once(farm: OpenFarm) -> None:
    setup.save(farm, Place("1", "bed", 0, 0, 1.2, 12))
    with pytest.raises(Asked, match="2 would lie over 1"):
        setup.save(farm, Place("2", "bed", 1, 6, 1.2, 12))
    setup.save(farm, Place("2", "bed", 1, 6, 1.2, 12), hand=Hand(answers={"over 1": "keep"}))
    with pytest.raises(Asked, match="trees on a hectare"):
        setup.save(farm, Block("A", "Upper", 0.5, 1600, 1650, "Catuaí", trees_n=90_000))
    third = setup.next_bed(farm, 1.2, 12)
    assert third.code == "3"
    setup.save(farm, third)
    with pytest.raises(NotPossible, match="taken already"):
        setup.save(farm, third, new=True)


def test_a_method_that_lots_were_made_by_is_never_changed(farm: OpenFarm) -> None:
    first = farm.things.method("W")
    lot = picking.begin_lot(farm, "W", instant(1, 12)).lot
    with pytest.raises(NotPossible, match="stays as it was"):
        setup.save(farm, replace(first, hours_high_h=20.0))
    second = replace(setup.next_version(farm, first), hours_high_h=20.0)
    setup.save(farm, second)
    assert farm.things.method("W").version == 2
    assert farm.lot(lot).birth.method_version == 1
    with pytest.raises(NotPossible, match="latest hour"):
        setup.save(farm, replace(setup.next_version(farm, first), hours_high_h=None))


def test_a_changed_register_is_taken_back(farm: OpenFarm) -> None:
    done = setup.save(farm, Tray("1", 412))
    done.inverse(farm)
    assert "1" not in farm.things.trays


def test_a_correction_of_an_instrument_moves_only_readings_after_it(farm: OpenFarm) -> None:
    setup.save(farm, Instrument("meter-1", "moisture meter", "meter_wb_frac", 0.0075, 0.001))
    setup.save(farm, setup.next_bed(farm, 1.2, 12))
    lot = picking.begin_lot(farm, "W", instant(1, 12)).lot
    for day, percent in ((9, "14.0"), (12, "12.0")):
        drying.read_at_bed(farm, lot, instant(day, 22), meter=[percent])
    keeping.correct_instrument(farm, "meter-1", "meter_wb_frac", -0.008, instant(10, 0), instant(20, 0))
    from farmdesk.picture.curves import meter_points

    points = meter_points(farm.lot(lot), farm.picture.corrections)
    assert [round(p.wb_frac, 4) for p in points] == [0.14, 0.112]
    assert [p.raw_wb_frac for p in points] == [0.14, 0.12]


@pytest.fixture(scope="module")
def practice(tmp_path_factory) -> Iterator[OpenFarm]:
    farm = build_practice(tmp_path_factory.mktemp("practice") / "practice.season")
    yield farm
    farm.close()


def test_everything_leaves_as_tables_and_json(practice: OpenFarm, tmp_path) -> None:
    out = carrying.export_all(practice, tmp_path / "out")
    names = {path.name for path in (tmp_path / "out").iterdir()}
    assert {
        "weigh_in.csv",
        "flow.csv",
        "reading.csv",
        "strike.csv",
        "thing_places.csv",
        "thing_farm.csv",
        "season.json",
        "logger_rows.csv",
    } <= names
    document = json.loads((tmp_path / "out" / "season.json").read_text(encoding="utf-8"))
    assert len(document["entries"]) == len(practice.picture.book.by_id)
    with (tmp_path / "out" / "weigh_in.csv").open(encoding="utf-8-sig", newline="") as file:
        rows = list(csv.DictReader(file))
    lots = practice.picture.lots.values()
    live = sum(int(r["gross_g"]) - int(r["tare_g"]) for r in rows if not r["struck"])
    assert live == sum(lot.delivered_g for lot in lots)
    assert all("T" in r["happened"] and r["happened"].endswith("-06:00") for r in rows)
    assert out.rows_n > 3000
    with pytest.raises(NotPossible, match="not empty"):
        carrying.export_all(practice, tmp_path / "out")


@pytest.mark.parametrize("text", ["=1+1", "+cmd", "-2", "@SUM(A1)"])
def test_no_cell_is_a_formula(farm: OpenFarm, tmp_path, text: str) -> None:
    keeping.remark(farm, text, instant(1, 1))
    carrying.export_all(farm, tmp_path / "out")
    with (tmp_path / "out" / "remark.csv").open(encoding="utf-8-sig", newline="") as file:
        assert next(csv.DictReader(file))["text"] == "'" + text


def test_a_restore_is_tried_and_its_counts_compared(farm: OpenFarm, tmp_path) -> None:
    picking.begin_lot(farm, "W", instant(1, 12))
    farm.file.copy_to(tmp_path / "stick.season")
    tried = carrying.try_restore(farm, tmp_path / "stick.season", tmp_path / "scratch")
    assert tried.as_now
    picking.begin_lot(farm, "W", instant(2, 12))
    later = carrying.try_restore(farm, tmp_path / "stick.season", tmp_path / "scratch again")
    assert (later.entries_n, later.as_now) == (1, False)


def test_set_up_and_stock_carry_over(practice: OpenFarm, tmp_path) -> None:
    with clock.set_to(practice.picture.book.last_written_utc_s):
        new = carrying.carry_over(practice, tmp_path / "26.season", "26", practice.picture.book.last_written_utc_s)
    try:
        assert new.things.places == practice.things.places
        for code, lot in new.picture.lots.items():
            old = practice.picture.lots[code]
            assert lot.heaps == {
                a: g for a, g in old.heaps.items() if a in ("top", "light", "small", "peaberry", "retained", "store")
            }
            assert lot.delivered_g == 0
        assert "25-13W" in new.picture.lots
        with clock.set_to(practice.picture.book.last_written_utc_s):
            assert picking.next_code(new, "W") == "26-01W"
    finally:
        new.close()
