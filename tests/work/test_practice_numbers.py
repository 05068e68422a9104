"""Every number of the season's book of results comes back from the papers."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

import pytest

from farmdesk.picture.codes import check_character
from farmdesk.picture.entries import Cup, Defects, Screens
from farmdesk.picture.fold import NEVER, LotPicture
from farmdesk.picture.measures import (
    accepted_g,
    area_days_m2_d,
    bed_days,
    blocks_g,
    came_from_field,
    dry_days_d,
    end_wb_frac,
    family,
    fills,
    first_beds,
    floaters_g,
    graded_g,
    green_g,
    husk_g,
    loading_kg_m2,
    method_of,
    outturn_frac,
    pick_days,
    ripe_frac,
    sent_g,
    sorted_g,
    spread_g,
    stored_g,
    top_g,
    unexplained_g,
)
from farmdesk.work.balances import river, unexplained
from farmdesk.work.farm import OpenFarm
from tests.work.practice_story import DRYING, INTAKE, LOTS, MILL, MIXED, expanded, ferment, lines


def kg(grams: int | None) -> int:
    assert grams is not None
    return round(grams / 1000)


def month_day(day: object) -> str:
    return f"{day:%m-%d}"


@pytest.mark.parametrize("code", LOTS)
def test_intake_and_ferment_come_back(practice: OpenFarm, code: str) -> None:
    picture, lot = practice.picture, practice.lot(code)
    check, picked, block, ripe, delivered, sorted_out, floats, accepted, vessels, hours, *looks = lines(INTAKE)[code]
    assert check_character(code) == check
    assert [month_day(day) for day in pick_days(lot, picture.time)] == picked.split("/")
    blocks = blocks_g(lot, picture.time)
    if code == "25-05A":  # the fruit in liner S07 came from two blocks
        assert blocks == {"E": 540_600, "D": 19_400}
    else:
        assert set(blocks) == set(block.split("+"))
    assert round(100 * (ripe_frac(lot) or 0), 6) == int(ripe)
    assert kg(lot.delivered_g) == int(delivered)
    assert kg(sorted_g(lot)) == int(sorted_out)
    assert kg(floaters_g(lot)) == int(floats)
    assert kg(accepted_g(lot)) == int(accepted)
    assert lot.birth
    assert lot.birth.method == code[-1]
    if vessels == "-":
        assert fills(lot, picture.things) == []
        return
    assert {fill.place for fill in fills(lot, picture.things)} == expanded(vessels)
    found = ferment(picture, lot)
    assert round(found.hours_h) == int(hours)
    assert found.mass_c == pytest.approx(float(looks[0]), abs=0.051)
    assert found.ph == pytest.approx([float(looks[1]), float(looks[2])], abs=0.051)


@pytest.mark.parametrize("code", LOTS)
def test_drying_and_store_come_back(practice: OpenFarm, code: str) -> None:
    picture, lot = practice.picture, practice.lot(code)
    things, time = picture.things, picture.time
    spread, beds, loading, start, gate, days, end, dry, ratio, area = lines(DRYING)[code]
    method = method_of(lot, things)
    assert method
    assert method.start_wb_frac == (0.68 if method.whole else 0.54)
    assert kg(spread_g(lot)) == int(spread)
    assert first_beds(lot, things) == beds.split(",")
    assert loading_kg_m2(lot, things) == pytest.approx(float(loading), abs=0.0501)
    span = bed_days(lot, things, time)
    assert span
    assert [month_day(day) for day in span] == [start, gate]
    assert dry_days_d(lot, things, time) == int(days)
    assert round(100 * (end_wb_frac(lot, picture.corrections) or 0), 6) == float(end)
    assert kg(stored_g(lot)) == int(dry)
    assert round((stored_g(lot) or 0) / accepted_g(lot), 3) == float(ratio)
    assert round(area_days_m2_d(lot, things, time)) == int(area)


@pytest.mark.parametrize("code", [code for code in LOTS if code not in MIXED])
def test_mill_screens_and_grade_come_back(practice: OpenFarm, code: str) -> None:
    lot = practice.lot(code)
    sent, green, outturn, husk, unexplained, *screens, top, light, small, full, score = lines(MILL)[code]
    assert (kg(sent_g(lot)), kg(green_g(lot)), kg(husk_g(lot))) == (int(sent), int(green), int(husk))
    assert round(100 * (outturn_frac(lot) or 0), 1) == float(outturn)
    assert unexplained_g(lot) == 1000 * int(unexplained)
    grades = [graded_g(lot, name) for name in ("top", "light", "small", "peaberry")]
    assert grades == [1000 * int(part) for part in (top, light, small, screens[-1])]
    (slip,) = [entry.body for entry in lot.of(Screens)]
    assert [line.name for line in slip.fractions] == ["18+", "17", "16", "15", "14", "<14", "PB"]
    assert [line.value / 1000 for line in slip.fractions] == [int(part) for part in screens]
    assert sum(line.value for line in slip.fractions) == green_g(lot)
    (defects,) = [entry.body for entry in lot.of(Defects)]
    assert (defects.full_n, defects.sample_g) == (int(full), 350)
    (cup,) = [entry.body for entry in lot.of(Cup)]
    assert (cup.score, cup.sittings_n, cup.words) == (int(score), 3, "")


def test_the_mixed_pair_is_as_the_mill_wrote_it_until_it_is_joined(practice: OpenFarm) -> None:
    road, ridge = practice.lot("25-04W"), practice.lot("25-06W")
    assert (kg(green_g(road)), kg(sent_g(road))) == (205, 214)
    assert (kg(green_g(ridge)), kg(sent_g(ridge))) == (193, 277)
    assert [round(100 * (outturn_frac(lot) or 0), 1) for lot in (road, ridge)] == [95.8, 69.7]
    (joint,) = [lot for lot in practice.picture.lots.values() if lot.birth and lot.birth.alias == "25-04/06W"]
    assert (kg(green_g(joint)), kg(top_g(joint))) == (398, 296)
    assert round(100 * 398_000 / ((sent_g(road) or 0) + (sent_g(ridge) or 0)), 1) == 81.1
    for name, one, other in (("top", 126, 170), ("light", 14, 17), ("small", 19, 18), ("peaberry", 14, 20)):
        assert graded_g(joint, name) == 1000 * (one + other)
    assert not {"top", "light", "small", "peaberry"} & (set(road.heaps) | set(ridge.heaps))


def own(farm: OpenFarm, letters: str = "WXNA") -> list[LotPicture]:
    """The lots born from fruit, of these methods."""
    return [lot for lot in farm.picture.lots.values() if came_from_field(lot) and lot.code[-1] in letters]


@pytest.mark.parametrize(
    ("total", "measure"),
    [
        (24_090, lambda lot: lot.delivered_g), (363, sorted_g), (834, floaters_g), (22_893, accepted_g),
        (5_250, stored_g), (5_226, sent_g), (3_666, green_g), (1_519, husk_g), (41, unexplained_g), (2_703, top_g),
        (303, lambda lot: graded_g(lot, "light")), (352, lambda lot: graded_g(lot, "small")),
        (308, lambda lot: graded_g(lot, "peaberry")),
    ],
)  # fmt: skip
def test_season_totals(practice: OpenFarm, total: int, measure: Callable[[LotPicture], int | None]) -> None:
    assert len(own(practice)) == 24
    assert kg(sum(measure(lot) or 0 for lot in own(practice))) == total


@pytest.mark.parametrize(
    ("letter", "lots_n", "dry", "outturn", "area"),
    [
        ("W", 13, 0.198, 81.0, 0.47),
        ("X", 3, 0.198, 81.1, 0.48),
        ("N", 5, 0.345, 47.4, 1.55),
        ("A", 3, 0.331, 48.0, 1.58),
    ],
)
def test_pooled_by_method(
    practice: OpenFarm, letter: str, lots_n: int, dry: float, outturn: float, area: float
) -> None:
    lots, picture = own(practice, letter), practice.picture
    accepted = sum(accepted_g(lot) for lot in lots)
    area_days = sum(area_days_m2_d(lot, picture.things, picture.time) for lot in lots)
    assert len(lots) == lots_n
    assert round(sum(stored_g(lot) or 0 for lot in lots) / accepted, 3) == dry
    assert round(100 * sum(green_g(lot) or 0 for lot in lots) / sum(sent_g(lot) or 0 for lot in lots), 1) == outturn
    assert area_days / (accepted / 1000) == pytest.approx(area, abs=0.0055)


def test_bed_days_of_the_season(practice: OpenFarm) -> None:
    picture = practice.picture
    used = sum(area_days_m2_d(lot, picture.things, picture.time) for lot in own(practice))
    assert round(sum(round(area_days_m2_d(lot, picture.things, picture.time)) for lot in own(practice))) == 16_285
    area = sum(place.area_m2 for place in picture.things.places.values() if place.kind == "bed")
    assert round(area, 1) == 316.8
    assert round(100 * used / (area * 122)) == 42


def test_every_weight_closes(practice: OpenFarm) -> None:
    lots = practice.picture.lots.values()
    joined = {code for lot in lots for code in family(lot)[0] | family(lot)[1]}
    assert len(joined) == 6
    assert sum(sum(lot.balance.values()) for lot in lots) == 0
    for lot in lots:
        assert sum(lot.balance.values()) == 0 or lot.code in joined
        assert all(lot.balance.get(place, 0) == 0 for place in practice.things.places), lot.code
        assert all(lot.balance.get(place, 0) == 0 for place in (*practice.things.vessels, "intake", "mill")), lot.code


@pytest.mark.parametrize("kind", ["vessels", "places"])
def test_no_bed_and_no_vessel_holds_two_lots(practice: OpenFarm, kind: str) -> None:
    rooms = practice.things.vessels if kind == "vessels" else practice.things.places
    used = 0
    for code in rooms:
        stays = practice.picture.stays_at(code)
        used += len(stays)
        for (_, stay), (_, later) in pairwise(stays):
            assert (stay.until_utc_s or NEVER) <= later.from_utc_s, code
    assert used > 40


LEFT = {
    "25-15N": 2.3, "25-21X": 3.9, "25-12A": 15.8, "25-14X": 26.1, "25-07X": 18.2, "25-13W": 26.7, "25-08W": 86.6,
    "25-04/06W": 115.2, "25-11W": 43.1, "25-09N": 14.2, "25-23N": 29.2, "25-05A": 29.2, "early": 44.5, "25-03N": 0.5,
    "25-24W": 88.5, "25-17N": 0.0, "25-19A": 0.0,
}  # fmt: skip


@pytest.mark.parametrize(("name", "left_kg"), LEFT.items())
def test_what_is_left_of_the_top_grade_at_the_end_of_june(practice: OpenFarm, name: str, left_kg: float) -> None:
    at = practice.time.read("2025-06-30T20:00")
    picture = practice.picture.at(at, at)
    lot = next(lot for lot in picture.lots.values() if name in (lot.code, lot.birth.alias if lot.birth else ""))
    held = 7_500 if name == "25-21X" else 0  # R2 holds it until 15 July
    assert lot.balance["top"] - held == round(1000 * left_kg)


def test_by_products_are_sold_but_for_some_peaberry(practice: OpenFarm) -> None:
    left = {
        name: sum(lot.balance.get(name, 0) for lot in practice.picture.lots.values())
        for name in ("light", "small", "peaberry")
    }
    assert left == {"light": 0, "small": 0, "peaberry": 120_000}


def test_the_river_marks_only_what_the_ledger_flags(practice: OpenFarm) -> None:
    """What was picked out has a name; only a lot whose ledger says so carries the crossed piece."""
    for lot in practice.picture.lots.values():
        flagged = any(item.flagged and item.grams > 0 for item in unexplained(practice.picture, lot))
        assert any(part.missing_g > 0 for part in river(practice.picture, lot)) == flagged, lot.code
