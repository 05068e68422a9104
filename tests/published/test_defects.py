"""Defect tables against what the published tables print, figure by figure."""

from __future__ import annotations

import pytest

from farmdesk.science.defects import Standard, judge, standards

WORTH = {
    # wall chart "green coffee defect classification", 2018: beans for one full defect
    "full_350g_2018": {
        "full_black": 1, "full_sour": 1, "dried_cherry": 1, "fungus": 1, "foreign": 1, "insect_severe": 5,
        "partial_black": 3, "partial_sour": 3, "parchment_bean": 5, "floater": 5, "immature": 5, "withered": 5,
        "shell": 5, "broken": 5, "hull": 5, "insect_slight": 10,
    },
    # Brazil, Instrução Normativa 8 of 11 June 2003, as printed by cccmg.com.br (part II)
    "brazil_2003": {
        "full_black": 1, "full_sour": 2, "shell": 3, "immature": 5, "broken": 5, "withered": 5, "dried_cherry": 1,
        "parchment_bean": 2, "hull_large": 1, "foreign_large": 1 / 5, "foreign_medium": 1 / 2, "foreign_small": 1,
        "insect_dirty": 2, "insect_laced": 3, "insect_clean": 5,
    },
    # SNI 01-2907-2008, values as printed by aeki-aice.org: one over the value
    "indonesia_2008": {
        "full_black": 1, "partial_black": 2, "broken_black": 2, "dried_cherry": 1, "brown": 4, "hull_large": 1,
        "hull_medium": 2, "hull_small": 5, "parchment_bean": 2, "parchment_large": 2, "parchment_medium": 5,
        "parchment_small": 10, "broken": 5, "immature": 5, "insect_one_hole": 10, "insect_two_holes": 5,
        "spotted": 10, "foreign_large": 1 / 5, "foreign_medium": 1 / 2, "foreign_small": 1,
    },
    # Hawaii Administrative Rules 4-143-6; slight borer damage 1/5 since July 2017
    "hawaii_4_143": {"full_imperfection": 1, "lesser_imperfection": 5},
}  # fmt: skip


def table(key: str) -> Standard:
    return standards()[key]


@pytest.mark.parametrize("key", WORTH)
def test_every_kind_is_worth_what_is_printed(key: str) -> None:
    for kind, beans in WORTH[key].items():
        worth = {k: item.beans / item.defects for item in table(key).items for k in item.kinds}
        assert worth[kind] == pytest.approx(beans), kind


def test_seven_broken_four_immature_twelve_slight_insect_are_two() -> None:
    # 7/5 -> 1, 4/5 -> 0, 12/10 -> 1 by the two-category method
    found = judge({"broken": 7, "immature": 4, "insect_slight": 12}, 350.0, table("full_350g_2018"))
    assert found.sums == {"total": 2.0, "primary": 0.0, "secondary": 2.0}
    assert found.scaled_from_g is None


def test_rounding_is_by_type_not_by_sum() -> None:
    counts = {"full_black": 1, "insect_severe": 7, "partial_black": 5, "broken": 14, "insect_slight": 19, "shell": 4}
    found = judge(counts, 350.0, table("full_350g_2018"))
    assert (found.sums["primary"], found.sums["secondary"]) == (2.0, 4.0)  # fractions would make 9.57 together


@pytest.mark.parametrize(
    ("secondary", "moisture", "activity", "quakers", "met"),
    [
        (25, 0.112, 0.58, 0, True),
        (25, 0.100, 0.58, 0, True),
        (25, 0.120, 0.58, 0, True),
        (30, 0.112, 0.58, 0, False),
        (25, 0.121, 0.58, 0, False),
        (25, 0.099, 0.58, 0, False),
        (25, 0.112, 0.70, 0, False),
        (25, 0.112, 0.58, 1, False),
    ],
)
def test_limits_for_specialty(secondary: int, moisture: float, activity: float, quakers: int, met: bool) -> None:
    # 0 primary, 5 secondary, 10 to 12 % moisture, activity under 0.70, no quaker in 100 g
    measured = {"moisture_wb_frac": moisture, "activity_frac": activity, "quakers_count": quakers}
    found = judge({"broken": secondary}, 350.0, table("full_350g_2018"), measured=measured)
    assert found.answers[0].met is met


@pytest.mark.parametrize(
    ("defects", "name"),
    [(4, "2"), (5, "3"), (12, "3"), (26, "4"), (46, "5"), (86, "6"), (87, "7"), (160, "7"), (360, "8"), (361, None)],
)
def test_brazilian_types(defects: int, name: str | None) -> None:
    # guaxupe.com.br/classificacao-do-cafe: most defects of each type in 300 g
    found = judge({"full_black": defects}, 300.0, table("brazil_2003"))
    assert (str(found.grade) if found.grade else None) == (f"type {name}" if name else None)


@pytest.mark.parametrize(
    ("value", "species", "name"),
    [
        (11, "arabica", "1"), (12, "arabica", "2"), (25, "arabica", "2"), (26, "arabica", "3"), (44, "arabica", "3"),
        (45, "arabica", "4"), (80, "arabica", "4"), (60, "robusta", "4a"), (61, "robusta", "4b"),
        (81, "arabica", "5"), (150, "arabica", "5"), (151, "arabica", "6"), (225, "arabica", "6"), (226, "arabica", None),
    ],
)  # fmt: skip
def test_indonesian_grades(value: int, species: str, name: str | None) -> None:
    measured = {"moisture_wb_frac": 0.12}
    found = judge({"full_black": value}, 300.0, table("indonesia_2008"), species=species, measured=measured)
    assert (str(found.grade) if found.grade else None) == (f"grade {name}" if name else None)


def test_a_gap_in_the_indonesian_table_goes_to_the_lower_grade() -> None:
    found = judge({"full_black": 11, "partial_black": 1}, 300.0, table("indonesia_2008"))
    assert found.sums["total"] == 11.5
    assert str(found.grade_by_count) == "grade 2"


@pytest.mark.parametrize(("species", "most"), [("arabica", 86), ("robusta", 150)])
def test_export_limits_of_ico_resolution_420(species: str, most: int) -> None:
    for defects, moisture, met in (
        (most, 0.125, True),
        (most + 1, 0.12, False),
        (most, 0.126, False),
        (most, 0.079, False),
    ):
        found = judge(
            {"full_black": defects}, 300.0, table("ico_420"), species=species, measured={"moisture_wb_frac": moisture}
        )
        assert [answer.met for answer in found.answers] == [met]
    assert most == 150 or str(judge({"full_black": 86}, 300.0, table("brazil_2003")).grade) == "type 6"


def test_hawaii_extra_fancy() -> None:
    # 3 full and 21 lesser imperfections are 3 + 4.2 = 7.2, within the 8 of Extra Fancy
    measured = {"moisture_wb_frac": 0.11, "other_type_frac": 0.0}
    found = judge({"full_imperfection": 3, "lesser_imperfection": 21}, 300.0, table("hawaii_4_143"), measured=measured)
    assert found.sums["total"] == pytest.approx(7.2)
    assert str(found.grade) == "Extra Fancy"


@pytest.mark.parametrize(
    ("full", "defective", "moisture", "process", "name"),
    [
        (8, 0.0, 0.12, "", "Extra Fancy"),
        (9, 0.0, 0.12, "", "Fancy"),
        (18, 0.0, 0.12, "", "No. 1"),
        (19, 0.05, 0.12, "", "Select"),
        (19, 0.15, 0.12, "", "Prime"),
        (19, 0.35, 0.12, "", "No. 3"),
        (19, 0.36, 0.12, "", None),
        (8, 0.0, 0.122, "", None),
        (8, 0.0, 0.089, "", None),
        (19, 0.15, 0.13, "natural", "Natural Prime"),
    ],
)
def test_hawaiian_grades(full: int, defective: float, moisture: float, process: str, name: str | None) -> None:
    # law.cornell.edu Haw-Code-R-SS-4-143-6 and 4-143-11
    measured = {
        "moisture_wb_frac": moisture,
        "other_type_frac": 0.0,
        "defective_frac": defective,
        "black_mouldy_frac": 0.0,
    }
    found = judge({"full_imperfection": full}, 300.0, table("hawaii_4_143"), process=process, measured=measured)
    assert (str(found.grade) if found.grade else None) == name


def test_raw_counts_are_scaled_to_the_tables_sample() -> None:
    # count x 300/350: seven black beans in 350 g are six in 300 g
    assert judge({"full_black": 7}, 350.0, table("brazil_2003")).sums["total"] == pytest.approx(6.0)
