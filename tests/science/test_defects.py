"""Defects: one count and several tables, scaled samples, and what a table does not know."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk.errors import NotPossible
from farmdesk.science import defects as d

COUNTS = {"broken": 7, "immature": 4, "insect_slight": 12, "partial_sour": 2}
counted = st.dictionaries(st.sampled_from(sorted(d.KINDS)), st.integers(0, 400), max_size=12)


def test_one_count_has_a_named_result_in_every_table() -> None:
    said = [
        str(d.judge(COUNTS, 350.0 if key == "full_350g_2018" else 300.0, s).text) for key, s in d.standards().items()
    ]
    assert said == [
        "350 g full defects, 2018: 0 primary full defects, 2 secondary full defects",
        "300 g defects by type, Brazil 2003: 4.6 defects",
        "300 g imperfections, Hawaii 4-143: not counted by its own kinds",
        "Export limits, ICO resolution 420: 4.6 defects",
        "300 g weighted defects, Indonesia 2008: 4.6 defects",
    ]


def test_another_sample_is_scaled_and_says_so() -> None:
    found = d.judge({"broken": 7}, 100.0, d.standards()["full_350g_2018"])
    assert found.sums["secondary"] == 4.0  # 24.5 beans in 350 g
    assert found.scaled_from_g == 100.0
    assert str(found.text).replace("\u202f", " ").endswith("(scaled from 100 g)")


def test_scaling_comes_before_rounding() -> None:
    # 7 in 350 g are 6.0 in 300 g: exactly one more than the limit of 5 would allow, never by a rounding error
    assert d.judge({"full_black": 7}, 350.0, d.standards()["brazil_2003"]).sums["total"] == 6.0
    third = d.judge({"broken": 1}, 70.0, d.standards()["full_350g_2018"])  # 1 x 350 / 70 is 5, one full defect
    assert third.sums["secondary"] == 1.0


def test_what_has_no_value_is_named() -> None:
    found = d.judge(COUNTS, 300.0, d.standards()["brazil_2003"])
    assert found.no_value == ("partial_sour",)
    assert d.judge({"partial_sour": 0}, 300.0, d.standards()["brazil_2003"]).no_value == ()


def test_a_grade_stays_open_until_everything_is_measured() -> None:
    found = d.judge(COUNTS, 350.0, d.standards()["full_350g_2018"])
    assert found.grade is None
    assert str(found.grade_by_count) == "within the limits for specialty"
    assert {str(reason) for reason in found.answers[0].because} == {
        "not measured: moisture",
        "not measured: water activity",
        "not measured: quakers in 100 g roasted",
    }


def test_a_broken_limit_is_said_with_both_numbers() -> None:
    found = d.judge({"full_black": 1}, 350.0, d.standards()["full_350g_2018"], measured={"moisture_wb_frac": 0.128})
    said = {str(reason).replace("\u202f", " ") for reason in found.answers[0].because}
    assert "1 primary full defects, the limit is 0" in said
    assert "12.8 % moisture, the limit is 12.0 %" in said


def test_hawaii_says_nothing_on_a_count_by_other_kinds() -> None:
    found = d.judge(COUNTS, 300.0, d.standards()["hawaii_4_143"])
    assert found.grade is None
    assert found.grade_by_count is None
    clean = d.judge({"full_imperfection": 0}, 300.0, d.standards()["hawaii_4_143"])
    assert str(clean.grade_by_count) == "Extra Fancy"


def test_the_worse_of_two_faults_counts() -> None:
    table = d.standards()["full_350g_2018"]
    assert d.worst_of("insect_slight", "full_black", standard=table) == "full_black"
    assert d.worst_of("partial_black", "insect_severe", standard=table) == "insect_severe"  # primary goes before
    assert d.worst_of("broken", "partial_sour", standard=table) == "partial_sour"


@given(counted, st.integers(20, 1000), st.sampled_from(sorted(d.standards())))
def test_more_beans_are_never_fewer_defects(counts: dict[str, int], sample: int, key: str) -> None:
    table = d.standards()[key]
    before = d.judge(counts, float(sample), table).sums
    after = d.judge({kind: count + 1 for kind, count in counts.items()}, float(sample), table).sums
    assert before.keys() == after.keys()
    assert all(0.0 <= before[name] <= after[name] for name in before)


@given(counted, st.sampled_from(["brazil_2003", "indonesia_2008"]), st.integers(1, 5))
def test_pooled_samples_say_the_same(counts: dict[str, int], key: str, times: int) -> None:
    table = d.standards()[key]
    once = d.judge(counts, 300.0, table).sums["total"]
    pooled = d.judge({kind: times * count for kind, count in counts.items()}, 300.0 * times, table).sums["total"]
    assert pooled == pytest.approx(once)


@given(counted)
def test_whole_defects_are_whole_and_sum_up(counts: dict[str, int]) -> None:
    found = d.judge(counts, 350.0, d.standards()["full_350g_2018"])
    assert all(value == int(value) for _, value in found.by_type)
    assert found.sums["total"] == found.sums["primary"] + found.sums["secondary"] == sum(v for _, v in found.by_type)


def test_a_gap_beside_the_count_is_not_measured_and_an_unknown_measure_is_refused() -> None:
    table = d.standards()["full_350g_2018"]
    gap = {"moisture_wb_frac": float("nan"), "activity_frac": 0.5, "quakers_count": 0.0}
    assert d.judge({}, 350.0, table, measured=gap).answers[0].met is None
    with pytest.raises(NotPossible):
        d.judge({}, 350.0, table, measured={"moisture": 0.11})
    for pieces in (float("nan"), float("inf"), None, "three"):
        with pytest.raises(NotPossible):
            d.judge({"broken": pieces}, 350.0, table)  # type: ignore[dict-item]


@pytest.mark.parametrize(
    ("counts", "sample"),
    [
        ({"broken": -1}, 350.0),
        ({"broken": 1.5}, 350.0),
        ({"purple": 1}, 350.0),
        ({"broken": 1}, 0.0),
        ({"broken": 1}, float("nan")),
        ({"broken": 1}, 6000.0),
    ],
)
def test_what_is_no_count_is_refused(counts: Any, sample: float) -> None:
    with pytest.raises(NotPossible):
        d.judge(counts, sample, d.standards()["full_350g_2018"])


TABLE = """
key = "own"
label = "own"
sample_g = 300
rule = "{rule}"
source = "x"
edition = "x"
note = "x"
[[item]]
kinds = ["{kind}"]
beans = 1
[[grade]]
label = "good"
max = {{ {limit} = 1 }}
"""


@pytest.mark.parametrize(
    ("rule", "kind", "limit", "ok"),
    [("sum", "broken", "total", True), ("half", "broken", "total", False), ("sum", "purple", "total", False), ("sum", "broken", "taste", False)],
)  # fmt: skip
def test_a_table_of_ones_own_is_read_or_refused(tmp_path: Path, rule: str, kind: str, limit: str, ok: bool) -> None:
    file = tmp_path / "defects_own.toml"
    file.write_text(TABLE.format(rule=rule, kind=kind, limit=limit), encoding="utf-8")
    if ok:
        assert str(d.judge({"broken": 1}, 300.0, d.read_standards([file])["own"]).grade) == "good"
    else:
        with pytest.raises(NotPossible):
            d.read_standards([file])


def test_every_shipped_table_names_its_source_and_stands_in_the_list() -> None:
    listed = (Path(__file__).parents[2] / "resources" / "licences" / "TABLES.md").read_text(encoding="utf-8")
    for file in (Path(__file__).parents[2] / "resources" / "tables").glob("*.toml"):
        assert f"`{file.name}`" in listed
    for table in d.standards().values():
        assert table.source
        assert table.edition
        assert table.grades
