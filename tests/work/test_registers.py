"""Registers as they are typed: a row to its thing and back, what is refused, what stays because it is named."""

from __future__ import annotations

from collections.abc import Iterator
from io import BytesIO

import pypdfium2
import pytest

from farmdesk import clock
from farmdesk.errors import Asked, NotPossible
from farmdesk.papers.lot_sheet import write_lot_sheet
from farmdesk.picture.entries import Check, Entry
from farmdesk.picture.measures import meter_readings, meter_wb_frac
from farmdesk.science.defects import judge
from farmdesk.text import ENGLISH
from farmdesk.work import drying, grading, instruments, keeping, picking, registers, standards
from farmdesk.work.changes import Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.sheet import sheet_story
from tests.work.season import instant, new_farm


@pytest.fixture
def farm(tmp_path) -> Iterator[OpenFarm]:
    with clock.set_to(instant(40, 0)):
        farm = new_farm(tmp_path)
        yield farm
        farm.close()


@pytest.mark.parametrize("register", registers.NAMES)
def test_a_row_is_typed_back_as_the_same_thing(practice: OpenFarm, register: str) -> None:
    rows = registers.of(practice.things, register)
    assert rows
    for thing in rows.values():
        typed = registers.typed(register, thing)
        assert registers.read(register, typed, thing, Hand()) == thing


@pytest.mark.parametrize(
    ("register", "typed", "sentence"),
    [
        ("places", {"code": "9", "width_m": "4 kg", "depth_m": "12"}, "another unit"),
        ("places", {"code": "49", "width_m": "1.2"}, "width and length"),
        ("places", {"code": "9", "kind": "roof", "width_m": "1", "depth_m": "9"}, "none of 1 bed, 2 patio"),
        ("trays", {"code": "1", "tare_g": "412.5"}, "no whole number"),
        ("vessels", {"code": "T9"}, "needs its volume"),
        ("vessels", {"code": "T9", "gross_l": "1000", "usable_l": "120 %"}, "not 1,200"),
        ("blocks", {"code": "", "name": "x"}, "needs a code"),
        ("people", {"code": "P01x", "role": ""}, None),
    ],
)
def test_what_cannot_be_is_refused_in_one_sentence(farm: OpenFarm, register: str, typed, sentence) -> None:
    before = farm.things
    if sentence is None:  # nothing more than a code is needed
        assert registers.write_row(farm, register, typed).changes.things
        return
    with pytest.raises(NotPossible, match=sentence):
        registers.write_row(farm, register, typed)
    assert farm.things == before


def test_what_is_not_known_stays_empty(farm: OpenFarm) -> None:
    registers.write_row(farm, "blocks", {"code": "G", "name": "Over the creek", "low_m": "1500"})
    block = farm.things.blocks["G"]
    assert (block.low_m, block.high_m, block.planted) == (1500, 1500, None)
    typed = registers.typed("blocks", block)
    assert (typed["area_ha"], typed["trees_n"], typed["planted"]) == ("", "", "")


def test_ways_by_number_word_or_own_words(farm: OpenFarm) -> None:
    registers.write_row(farm, "vessels", {"code": "T9", "kind": "2", "gross_l": "1000", "usable_l": "85 %"})
    vessel = farm.things.vessels["T9"]
    assert (vessel.kind, vessel.usable_l, vessel.sealed) == ("sealed tank", 850, True)
    registers.write_row(farm, "vessels", {"code": "T8", "kind": "old bath", "gross_l": "200", "sealed": "no"})
    assert farm.things.vessels["T8"].kind == "old bath"
    assert registers.way_of(registers.COLUMNS["places"][6], "hand", str) == "tarp"


def test_the_next_row_is_proposed(practice: OpenFarm) -> None:
    bed = registers.proposed(practice, "places")
    assert (bed["code"], bed["width_m"], bed["cover"]) == ("23", "1.2", "tarp")
    assert registers.proposed(practice, "people") == {"code": "P27", "role": "picker", "pay": "by weight"}
    assert registers.proposed(practice, "blocks") == {"code": "G"}


def test_a_code_stays_and_a_named_thing_is_not_taken_out(farm: OpenFarm) -> None:
    registers.write_row(farm, "places", {"code": "40", "width_m": "1.2", "depth_m": "12", "x_m": "90", "y_m": "0"})
    lot = picking.begin_lot(farm, "W", instant(1, 12)).lot
    picking.weigh_in(farm, lot, block="A", picker="P01", half_day="am", gross="58", at_utc_s=instant(1, 20))
    with pytest.raises(NotPossible, match="code stays"):
        registers.write_row(
            farm, "places", registers.typed("places", farm.things.places["40"]) | {"code": "41"}, before="40"
        )
    with pytest.raises(Asked, match="No row names 40"):
        registers.take_out(farm, "places", "40")
    drying.spread(farm, lot, {"40": "57"}, instant(1, 22))
    with pytest.raises(NotPossible, match="40 is named in the notebook"):
        registers.take_out(farm, "places", "40", hand=Hand(answers={"out 40": "out"}))
    with pytest.raises(NotPossible, match="A is named in the notebook"):
        registers.take_out(farm, "blocks", "A")
    done = registers.take_out(farm, "blocks", "B", hand=Hand(answers={"out B": "out"}))
    assert "B" not in farm.things.blocks
    assert done.inverse is not None
    done.inverse(farm)
    assert "B" in farm.things.blocks


def test_a_method_is_always_saved_as_its_next_version(farm: OpenFarm) -> None:
    typed = registers.typed("methods", farm.things.methods["W1"]) | {"hours_high_h": "20", "start_wb_frac": "54"}
    registers.write_row(farm, "methods", typed, before="W1")
    first, second = farm.things.methods["W1"], farm.things.method("W")
    assert second is not None
    assert (second.version, second.hours_high_h, second.start_wb_frac) == (2, 20.0, 0.54)
    assert first.hours_high_h != 20.0
    registers.write_row(farm, "methods", {"letter": "h", "name": "pulped, with mucilage", "dry_days_max_d": "20",
                                          "loading_kg_m2": "10", "start_wb_frac": "60", "start_wb_sd_frac": "3"})  # fmt: skip
    assert farm.things.methods["H1"].store_high_wb_frac == 0.12


# instruments


def test_trust_runs_from_a_passed_check_until_its_interval_or_a_failed_one(farm: OpenFarm) -> None:
    def check(day: int, passed: bool) -> None:
        keeping.check_instrument(farm, "meter-1", passed, instant(day, 12))

    every_d = farm.things.instruments["meter-1"].check_every_d
    assert every_d == 7
    check(1, True)
    check(8, True)  # in time: one band
    check(20, True)
    check(23, False)
    check(24, True)
    trust = next(t for t in instruments.trusts(farm.picture.at(instant(33, 12))) if t.code == "meter-1")
    assert trust.bands == (
        (instant(1, 12), instant(15, 12)), (instant(20, 12), instant(23, 12)), (instant(24, 12), instant(31, 12)),
    )  # fmt: skip
    assert trust.overdue_utc_s == instant(31, 12)
    assert trust.last == (instant(24, 12), True)
    early = next(t for t in instruments.trusts(farm.picture.at(instant(26, 12))) if t.code == "meter-1")
    assert early.overdue_utc_s is None
    never = next(t for t in instruments.trusts(farm.picture) if t.code == "pH-1")
    assert (never.bands, never.last, never.overdue_utc_s) == ((), None, None)


def test_a_changed_correction_moves_only_readings_after_it_and_names_the_lots(farm: OpenFarm) -> None:
    registers.write_row(farm, "places", {"code": "40", "width_m": "1.2", "depth_m": "12", "x_m": "90", "y_m": "0"})
    lots = [picking.begin_lot(farm, "W", instant(1, 12 + n)).lot for n in range(2)]
    for day, lot, percent in ((9, 0, "14.0"), (12, 0, "12.0"), (9, 1, "20.0")):
        drying.read_at_bed(farm, lots[lot], instant(day, 22), meter=[percent])
    done = keeping.correct_instrument(farm, "meter-1", "meter_wb_frac", -0.008, instant(10, 0), instant(20, 0))
    row = instruments.correction_rows(farm.picture)[0]
    assert row.entry == done.entries[0]

    # as typed again: from the 8th, one point
    add = instruments.read_add("-1,0", "meter_wb_frac", Hand())
    before = list(farm.picture.corrections)
    changed = type(row.body)("meter-1", "meter_wb_frac", add, instant(8, 0))
    foreseen = instruments.moved(farm.picture, [changed])
    keeping.correct(farm, [row.entry], "typed wrong", lambda f: keeping.correct_instrument(
        f, "meter-1", "meter_wb_frac", add, instant(8, 0), instant(21, 0)))  # fmt: skip
    assert instruments.moved(farm.picture, farm.picture.corrections, before) == foreseen
    told = {move.lot: (move.readings_n, round(move.was_wb_frac, 4), round(move.now_wb_frac, 4)) for move in foreseen}
    assert told == {lots[0]: (2, 0.112, 0.11), lots[1]: (1, 0.2, 0.19)}
    raw = [entry.body.value for entry in meter_readings(farm.lot(lots[0]))]
    assert raw == pytest.approx([0.14, 0.12])
    now = [meter_wb_frac(entry, farm.picture.corrections) for entry in meter_readings(farm.lot(lots[0]))]
    assert now == pytest.approx([0.13, 0.11])
    later = [changed.__class__("meter-1", "meter_wb_frac", -0.02, instant(11, 0))]
    assert [move.lot for move in instruments.moved(farm.picture, later, [])] == [lots[0]]


@pytest.mark.parametrize(
    ("typed", "quantity", "add"),
    [
        ("-0.8", "meter_wb_frac", -0.008),
        ("0,5 kg", "mass_g", 500.0),
        ("+0.05", "ph", 0.05),
        ("1.8 F", "mass_c", 1.0),
        ("-0.8 %", "meter_wb_frac", -0.008),
    ],
)
def test_a_difference_is_typed_in_the_unit_it_is_read_in(typed: str, quantity: str, add: float) -> None:
    assert instruments.read_add(typed, quantity, Hand()) == pytest.approx(add)
    with pytest.raises(NotPossible):
        instruments.read_add("0", quantity, Hand())
    with pytest.raises(NotPossible, match=r"unit|not a temperature|not a weight"):
        instruments.read_add("1 h", quantity, Hand())


def test_checks_are_listed_in_order(farm: OpenFarm) -> None:
    for day in (3, 1):
        keeping.check_instrument(farm, "scale-1", True, instant(day, 12), text=f"day {day}")
    rows = instruments.check_rows(farm.picture)
    assert [row.body.text for row in rows] == ["day 1", "day 3"]
    assert all(isinstance(farm.picture.book.by_id[row.entry], Entry) and type(row.body) is Check for row in rows)


# standards


def test_the_farms_own_table_judges_beside_the_published_ones(farm: OpenFarm) -> None:
    head = {"name": "House", "year": "2024", "sample_g": "300", "source": "own sorting table"}
    assert standards.OWN not in standards.farm_standards(farm.things)
    standards.save_table(farm, head, "sum")
    standards.save_item(farm, "full_black", "1", "primary")
    standards.save_item(farm, "broken", "5", "secondary")
    own = standards.farm_standards(farm.things)[standards.OWN]
    counts = {"full_black": 2, "broken": 6}
    judged = judge(counts, 300, own)
    assert str(judged.text) == "House, the farm’s own: 2 primary full defects, 1.2 secondary full defects"
    published = standards.farm_standards(farm.things)["full_350g_2018"]
    assert str(published.label) in str(judge(counts, 300, published).text)
    standards.save_item(farm, "broken", "4", "", before="broken")
    standards.drop_item(farm, "full_black")
    assert standards.own_table(farm.things).items == (("broken", 4, ""),)


@pytest.mark.parametrize(
    ("kind", "beans", "sentence"),
    [("full_black", "0", "whole number"), ("full_black", "1.5", "whole number"), ("hollow", "1", "no kind of defect")],
)
def test_a_row_of_the_own_table_that_cannot_be(farm: OpenFarm, kind: str, beans: str, sentence: str) -> None:
    with pytest.raises(NotPossible, match=sentence):
        standards.save_item(farm, kind, beans, "")
    with pytest.raises(NotPossible, match="needs its name"):
        standards.save_table(farm, {"name": "", "year": "", "sample_g": "300", "source": ""}, "sum")
    with pytest.raises(NotPossible, match="numbered 1 to 5"):
        standards.save_table(farm, {"name": "x", "year": "", "sample_g": "300", "source": "", "also": "6"}, "sum")
    with pytest.raises(NotPossible, match="20 to"):
        standards.save_table(farm, {"name": "x", "year": "", "sample_g": "3", "source": ""}, "sum")


def test_one_count_by_two_tables_stands_on_the_sheet_with_both_names(farm: OpenFarm) -> None:
    standards.save_table(
        farm, {"name": "House", "year": "2024", "sample_g": "300", "source": "own sorting table"}, "sum"
    )
    standards.save_item(farm, "full_black", "1", "primary")
    standards.save_item(farm, "broken", "6", "secondary")
    lot = picking.begin_lot(farm, "W", instant(1, 12)).lot
    counts = {"full_black": 2, "broken": 10}
    grading.count_defects(farm, lot, standard="full_350g_2018", sample_g=350, counts=counts, at_utc_s=instant(2, 12))
    head = {"name": "House", "year": "2024", "sample_g": "300 g", "source": "own sorting table"}
    standards.save_table(farm, {**head, "also": "2"}, "sum")
    told = {str(head): str(line) for head, line in sheet_story(farm, lot).green}["defects"]
    assert told.split("; ") == [
        "350 g full defects, 2018: 2 primary full defects, 2 secondary full defects",
        told.split("; ")[1],
        "House, the farm’s own: 1.7 primary full defects, 1.4 secondary full defects (scaled from 350\u202fg)",
    ]
    assert told.split("; ")[1].startswith("300 g defects by type, Brazil 2003: ")
    file = BytesIO()
    write_lot_sheet(sheet_story(farm, lot), ENGLISH, file, time=farm.time)
    pages = pypdfium2.PdfDocument(file.getvalue())
    text = " ".join("".join(page.get_textpage().get_text_bounded() for page in pages).split())
    pages.close()
    assert "350 g full defects, 2018" in text.replace("\u202f", " ")
    assert "House, the farm’s own" in text


def test_published_tables_are_chosen_without_a_table_of_ones_own(farm: OpenFarm) -> None:
    bare = {"name": "", "year": "", "sample_g": "", "source": ""}
    standards.save_table(farm, {**bare, "also": "4, 1"}, "floor")
    assert standards.chosen(farm.things) == ("ico_420", "full_350g_2018")
    standards.save_table(farm, {**bare, "also": ""}, "floor")
    assert standards.chosen(farm.things) == ()


def test_a_count_of_unknown_kinds_is_printed_as_it_was_written(farm: OpenFarm) -> None:
    lot = picking.begin_lot(farm, "W", instant(1, 12)).lot
    grading.count_defects(farm, lot, standard="the mill’s", sample_g=300, counts={"odd": 3}, at_utc_s=instant(2, 12))
    told = {str(head): str(line) for head, line in sheet_story(farm, lot).green}["defects"]
    assert told.endswith(", the mill’s")
