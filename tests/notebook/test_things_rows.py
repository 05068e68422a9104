"""Things are edited in place; versions of methods stay."""

from __future__ import annotations

import dataclasses
import sqlite3
from pathlib import Path

import pytest

from farmdesk.errors import NotPossible
from farmdesk.notebook.season_file import SeasonFile
from farmdesk.picture.things import Buyer, Farm, Method, Person, Place, Things
from tests.notebook.made import THINGS, WASHED, season


def test_things_come_back_in_their_order(tmp_path: Path) -> None:
    with season(tmp_path):
        pass
    with SeasonFile.open(tmp_path / "25.season") as file:
        assert file.things == THINGS
        assert list(file.things.places) == ["1", "2", "10"]
        assert file.things.farm.practice is True
        assert file.things.methods["W1"].sealed is False


def test_every_kind_of_thing_is_in_the_sample() -> None:
    for field in dataclasses.fields(Things):
        assert getattr(THINGS, field.name), field.name


def test_things_are_edited_added_and_taken_away(tmp_path: Path) -> None:
    changed = dataclasses.replace(
        THINGS,
        farm=Farm("La Prueba y más", "25", "Africa/Nairobi"),
        places={
            "1": dataclasses.replace(THINGS.places["1"], depth_m=30.0),
            "10": THINGS.places["10"],
            "3": Place("3", "patio", 0, 0, 4, 5),
        },
        people={"08": Person("08", "picker", "kg")},
        buyers={},
        settings={"bag_g": "69000", "other": "ü"},
    )
    with season(tmp_path) as file:
        file.save_things(changed)
        assert file.things == changed
        assert file.time.zone == "Africa/Nairobi"
    with SeasonFile.open(file.path) as file:
        assert file.things == changed
        assert list(file.things.places) == ["1", "10", "3"]
        file.save_things(THINGS)
        assert file.things == THINGS


def test_a_version_of_a_method_stays_as_it_is(tmp_path: Path) -> None:
    longer = dataclasses.replace(WASHED, hours_high_h=48.0)
    with season(tmp_path) as file:
        with pytest.raises(NotPossible, match="Version 1 of method W stays as it is; save the change as version 2"):
            file.save_things(dataclasses.replace(THINGS, methods={"W1": longer}, buyers={}))
        assert file.things == THINGS
        second = dataclasses.replace(longer, version=2)
        file.save_things(dataclasses.replace(THINGS, methods={"W2": second}))
        assert file.things.methods == {"W1": WASHED, "W2": second}
        assert file.things.method("W") == second


def test_the_database_itself_keeps_versions_of_methods(tmp_path: Path) -> None:
    with season(tmp_path) as file:
        pass
    for sql in ("UPDATE method SET name = 'x'", "DELETE FROM method", "REPLACE INTO method SELECT * FROM method"):
        raw = sqlite3.connect(file.path)
        with pytest.raises(sqlite3.IntegrityError, match="make a new version instead"):
            raw.execute(sql)
        raw.close()


def test_a_thing_under_a_wrong_key_is_a_bug(tmp_path: Path) -> None:
    with season(tmp_path) as file:
        with pytest.raises(ValueError):
            file.save_things(dataclasses.replace(THINGS, buyers={"X": Buyer("R")}))
        assert file.things == THINGS


def test_a_bad_zone_is_not_saved(tmp_path: Path) -> None:
    with season(tmp_path) as file:
        with pytest.raises(NotPossible):
            file.save_things(dataclasses.replace(THINGS, farm=Farm("F", "25", "Mars/Base")))
        assert file.things == THINGS


def test_a_method_keeps_its_empty_limits(tmp_path: Path) -> None:
    bare = Method(
        "N", 1, "natural", True, False, None, None, None, None, "hand", None, None, None, None, 8.0, 30, 0.6, 0.02
    )
    with season(tmp_path) as file:
        file.save_things(dataclasses.replace(THINGS, methods={"W1": WASHED, "N1": bare}))
    with SeasonFile.open(file.path) as file:
        assert file.things.methods["N1"] == bare
