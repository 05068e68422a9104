"""Every kind of entry goes into the file and comes back as it was."""

from __future__ import annotations

import dataclasses
import hashlib
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st

from farmdesk.notebook import rows
from farmdesk.notebook.season_file import SeasonFile
from farmdesk.notebook.verify import verify
from farmdesk.picture.entries import KINDS, Cover, Entry, Flow, Line, Posting, Reading, Remark
from tests.notebook.made import entries, entry, season


@pytest.fixture(scope="module")
def file(tmp_path_factory: pytest.TempPathFactory) -> Iterator[SeasonFile]:
    folder = tmp_path_factory.mktemp("rows")
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("FARMDESK_DATA", str(folder / "data"))
        with season(folder) as made:
            yield made


# No shrinking: what is in the file stays there, so a second try would meet the first one's rows.
@settings(max_examples=15, phases=[Phase.generate], suppress_health_check=list(HealthCheck))
@given(written=st.tuples(*(entries(kind) for kind in KINDS)))
def test_every_kind_comes_back(file: SeasonFile, written: tuple[Entry, ...]) -> None:
    file.append(written)
    assert tuple(file.entries()[-len(written) :]) == written
    assert verify(file.path) == []


def test_lists_keep_their_order_and_their_own_entry(tmp_path: Path) -> None:
    written = [
        entry(Cover(("10", "2", "1"), True)),
        entry(Reading("25-1W", "T1", "ph", tuple(Line(f"{i}", i / 7, f"{i}!") for i in range(30, 0, -1)))),
        entry(
            Flow("25-1W", "move", (Posting("25-1W", "2", 5), Posting("25-1W", "1", 0, 1), Posting("25-1W", "3", 0, 2)))
        ),
        entry(Cover((), False, "none")),
    ]
    with season(tmp_path) as file:
        file.append(written)
        assert file.entries() == written


def test_whole_numbers_where_fractions_may_stand_and_minus_zero_keep_the_chain(tmp_path: Path) -> None:
    with season(tmp_path) as file:
        file.append([entry(Reading("25-1W", "T1", "ph", (Line("a", 4), Line("b", -0.0))))])
        (back,) = file.entries()
        assert back.body.values == (Line("a", 4.0), Line("b", 0.0))  # type: ignore[union-attr]
    assert verify(file.path) == []


@pytest.mark.parametrize("value", [float("nan"), float("inf")])
def test_what_is_no_number_is_a_bug_and_writes_nothing(value: float, tmp_path: Path) -> None:
    with season(tmp_path) as file:
        with pytest.raises(ValueError):
            file.append([entry(Reading("25-1W", "T1", "ph", (Line("a", value),)))])
        assert file.entries() == []


def head(one: Entry, prev_hash: str = "") -> rows.Head:
    return rows.head_of(one, 1, "here", prev_hash)


def test_the_hash_hangs_on_every_field_and_on_what_stood_before(tmp_path: Path) -> None:
    one = entry(Remark("25-1W", "T1", "note", "clean"), who="ana")
    hashes = {head(one).hash, head(one, "x").hash, rows.head_of(one, 1, "there", "").hash}
    for field in dataclasses.fields(Entry):
        if field.name in ("body", "happened_utc_s", "written_utc_s"):
            continue
        hashes.add(head(dataclasses.replace(one, **{field.name: "other"})).hash)
    hashes.add(head(dataclasses.replace(one, happened_utc_s=5)).hash)
    hashes.add(head(dataclasses.replace(one, written_utc_s=5)).hash)
    for field in dataclasses.fields(Remark):
        hashes.add(head(dataclasses.replace(one, body=dataclasses.replace(one.body, **{field.name: "other"}))).hash)
    hashes.add(rows.head_of(one, 1, "here", "", "digest").hash)
    assert len(hashes) == 3 + len(dataclasses.fields(Entry)) - 3 + 2 + len(dataclasses.fields(Remark)) + 1


def test_the_hash_leaves_out_the_number_in_the_file_and_what_stands_at_its_default() -> None:
    one = entry(Remark("25-1W", "T1", "note", "clean"))
    assert rows.head_of(one, 1, "here", "").hash == rows.head_of(one, 7, "here", "").hash
    first = Entry("A", 5, 6, Cover(("1",), True))
    told = '[["A", "cover", 5, 6, "", "", "measured", "", "", "", "here", ""], {"on": 1, "places": [["1"]]}]'
    assert head(first).hash == hashlib.sha256(told.encode()).hexdigest()
    assert head(first).hash.startswith("84fba3980105b447")  # a file of the first release must still verify
