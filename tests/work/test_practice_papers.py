"""The tables hold only what a hand writes down, each row with its own two instants."""

from __future__ import annotations

import csv
import re
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from farmdesk.clock import HOUR_S
from farmdesk.errors import Asked
from farmdesk.paths import demo_data
from farmdesk.picture.entries import Strike, WeighIn
from farmdesk.work.farm import OpenFarm
from farmdesk.work.practice import REGISTERS, build_practice, practice_rows
from farmdesk.work.practice_rows import WRITERS, Desk
from tests.conftest import Hands

FOLDER = demo_data("README.txt").parent
TABLES = sorted(FOLDER.glob("*.csv"))
FARM = sorted((FOLDER / "farm").glob("*.csv"))

# what the picture derives is never read from a table
DERIVED = {"outturn", "ratio", "days", "unexplained", "share", "cost"}
DERIVED_OF_PAPERS = DERIVED | {
    "accepted",
    "loading",
    "hours",
    "net",
    "yield",
    "margin",
    "mean",
    "corrected_pct",
    "moisture",
}


def header(path: Path) -> list[str]:
    with path.open(encoding="utf-8", newline="") as file:
        return next(csv.reader(file))


def words(name: str) -> set[str]:
    """`dry_days` -> dry, days; `m²·days` -> m, days."""
    return {word for word in re.split(r"[^a-z]+", name.lower()) if word}


def derived(names: list[str], refused: set[str]) -> list[str]:
    return [name for name in names if words(name) & refused]


@pytest.mark.parametrize(
    "name", ["outturn", "outturn_pct", "dry_days", "m²·days", "m2_days", "Unexplained kg", "share", "cost_usd"]
)
def test_the_guard_knows_a_derived_column(name: str) -> None:
    assert derived(["lot", name], DERIVED) == [name]


@pytest.mark.parametrize("path", TABLES + FARM, ids=lambda path: path.stem)
def test_no_table_holds_what_the_picture_derives(path: Path) -> None:
    assert derived(header(path), DERIVED_OF_PAPERS if path in TABLES else DERIVED) == []


@pytest.mark.parametrize("path", [path for path in TABLES if path.stem != "pc_clock"], ids=lambda path: path.stem)
def test_every_row_says_when_it_happened_and_when_it_was_written(path: Path, practice: OpenFarm) -> None:
    assert path.stem in WRITERS
    assert header(path)[:3] == ["happened", "written", "who"]
    with path.open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    assert rows
    for row in rows:
        happened, written = practice.time.read(row["happened"]), practice.time.read(row["written"])
        assert happened <= written + HOUR_S, row
        assert row["who"] in practice.things.people, row


def test_all_tables_are_typed_in(practice: OpenFarm) -> None:
    assert {path.stem for path in FARM} == {"farm", "settings", *REGISTERS}
    rows = practice_rows(practice.time)
    assert len({row["written"] for row in rows}) > 0.95 * len(rows)  # no row borrows another row's instant
    assert [row["written"] for row in rows] == sorted(row["written"] for row in rows)
    assert {row.table for row in rows} == {path.stem for path in TABLES} - {"pc_clock"}


def test_the_files_of_two_loggers_lie_beside_the_tables() -> None:
    assert sorted(path.name for path in (FOLDER / "loggers").iterdir()) == ["L1_2025-01-28.csv", "L2_2025-01-07.csv"]


def test_the_registers(practice: OpenFarm) -> None:
    things = practice.things
    assert things.farm.practice
    assert (
        practice.time.local(practice.time.instant(date(2025, 7, 1))).utcoffset()
        == practice.time.local(practice.time.instant(date(2025, 1, 1))).utcoffset()
    )
    assert practice.time.instant(date(2025, 1, 1)) == 1_735_711_200  # six hours behind UTC
    assert round(sum(block.area_ha for block in things.blocks.values()), 2) == 4.70
    assert sum(block.trees_n for block in things.blocks.values()) == 19_900
    assert [things.trays[str(n)].tare_g for n in range(1, 6)] == [412, 405, 418, 409, 411]
    assert {things.places[str(n)].cover for n in range(1, 9)} == {"roof"}
    assert {things.places[str(n)].cover for n in range(9, 17)} == {"hoops"}
    assert {things.places[str(n)].cover for n in range(17, 23)} == {"tarp"}
    beds = [place for place in things.places.values() if place.kind == "bed"]
    corners = {(place.x_m, place.y_m) for place in things.places.values()}
    assert len(corners) == len(things.places) == 28
    assert max(place.x_m + place.width_m for place in things.places.values()) <= things.farm.yard_width_m
    assert {round(place.area_m2, 2) for place in beds} == {14.4}
    assert set(things.methods) == {"W1", "X1", "N1", "A1"}
    assert len(things.vessels) == 50
    picker_codes = {code for code, person in things.people.items() if person.role == "picker"}
    assert picker_codes == {f"P{n:02d}" for n in range(1, 27)}


def test_a_season_made_until_an_evening_is_what_was_known_that_evening(practice: OpenFarm, tmp_path: Path) -> None:
    for evening in ("2024-12-09T20:00", "2025-01-14T18:41", "2025-01-23T12:00"):
        until = practice.time.read(evening)
        early = build_practice(tmp_path / f"{evening[:10]}.season", until)
        known = practice.picture.at(known_at=until)
        assert {code: lot.balance for code, lot in early.picture.lots.items()} == {
            code: lot.balance for code, lot in known.lots.items()
        }
        assert len(early.picture.book.by_id) == len(known.book.by_id) < len(practice.picture.book.by_id)
        early.close()


def test_the_file_reads_back_as_the_picture_it_was_made_with(tmp_path: Path) -> None:
    path = tmp_path / "practice.season"
    made = build_practice(path)
    made.close()
    again = OpenFarm.open(path)
    assert {code: lot.balance for code, lot in again.picture.lots.items()} == {
        code: lot.balance for code, lot in made.picture.lots.items()
    }
    assert again.things == made.things
    again.close()


def test_a_failed_build_leaves_no_file(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def torn(desk: Desk, row: object) -> None:
        raise RuntimeError("torn paper")

    monkeypatch.setitem(WRITERS, "weather", torn)
    path = tmp_path / "practice.season"
    with pytest.raises(RuntimeError, match="torn paper"):
        build_practice(path)
    assert not path.exists()


def test_written_instants_never_run_backwards_though_the_clock_did(practice: OpenFarm) -> None:
    entries = practice.file.entries()
    written = [entry.written_utc_s for entry in entries]
    assert written == sorted(written)
    early = {
        practice.time.calendar_day(entry.happened_utc_s)
        for entry in entries
        if entry.happened_utc_s > entry.written_utc_s + 12 * HOUR_S
    }
    assert early == {date(2024, 12, 30)}  # typed while the computer stood in 2019


def test_what_was_asked_was_answered_on_the_paper(practice: OpenFarm, tmp_path: Path, at: Hands) -> None:
    """The 128 of P07 is a question by itself: without its answer the row is not written."""
    row = next(row for row in practice_rows(practice.time) if row["name"] == "128")
    farm = build_practice(tmp_path / "p.season", row.instant("written") - 1)
    desk = Desk(farm)
    at(row.instant("written"))
    with pytest.raises(Asked) as asked:
        desk.type_in(replace(row, cells={**row.cells, "answered": ""}))
    assert asked.value.question.key == "pounds"
    farm.close()


def test_a_slip_typed_twice_is_struck(practice: OpenFarm) -> None:
    lot = practice.lot("25-08W")
    (twice,) = lot.struck
    assert any(entry.body == twice.body and entry.happened_utc_s == twice.happened_utc_s for entry in lot.of(WeighIn))
    reasons = {e.body.reason for e in practice.picture.book.strikes if isinstance(e.body, Strike)}
    assert reasons == {"the same slip was typed twice", "the scale stood on pounds: 128 lb, not kg"}
