"""People are codes: no name leaves the farm that was not ticked, wherever a hand wrote it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from io import BytesIO
from pathlib import Path

import pypdfium2
import pytest

from farmdesk import clock
from farmdesk.desk.words import words
from farmdesk.errors import NotPossible
from farmdesk.papers.lot_sheet import write_lot_sheet
from farmdesk.picture.things import Person
from farmdesk.text import N_
from farmdesk.work import carrying, keeping, picking, registers
from farmdesk.work.changes import Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.people import coded, for_papers, may_be_minor
from farmdesk.work.sheet import sheet_story
from tests.work.season import instant, new_farm

HIDDEN, TICKED = "Maricela Zúniga", "Teodoro Paz"


@pytest.fixture
def farm(tmp_path: Path) -> Iterator[OpenFarm]:
    with clock.set_to(instant(40, 0)):
        farm = new_farm(tmp_path)
        write_down(farm, "P01", HIDDEN, "no", "2009")
        write_down(farm, "P02", TICKED, "yes", "1980")
        lot = picking.begin_lot(farm, "W", instant(1, 12)).lot
        picking.weigh_in(farm, lot, block="A", picker="P01", half_day="am", gross="58", at_utc_s=instant(1, 20))
        for text in (f"{HIDDEN.upper()} found the tarp open", "Maricela said it, Teodoro Paz closed it"):
            keeping.remark(farm, text, instant(2, 12), lot=lot, about="event", hand=Hand(note=f"told by {HIDDEN}"))
        yield farm
        farm.close()


def write_down(farm: OpenFarm, code: str, name: str, named: str, born: str) -> None:
    values = {"code": code, "role": "picker", "pay": "by weight", "name": name, "named": named, "born": born}
    registers.write_row(farm, "people", values, hand=Hand())


def test_an_export_scan_finds_no_name_that_is_not_ticked(farm: OpenFarm, tmp_path: Path) -> None:
    carrying.export_all(farm, tmp_path / "out")
    files = list((tmp_path / "out").iterdir())
    assert len(files) > 5
    everything = "\n".join(path.read_text(encoding="utf-8") for path in files)
    for part in HIDDEN.split():
        assert part.casefold() not in everything.casefold()
    assert "P01 found the tarp open" in everything
    assert "P01 said it, Teodoro Paz closed it" in everything
    assert "2009" not in (tmp_path / "out" / "thing_people.csv").read_text(encoding="utf-8")
    assert farm.things.people["P01"].name == HIDDEN  # the season itself keeps it


def test_no_sheet_names_a_person_who_is_not_ticked(farm: OpenFarm) -> None:
    (code,) = farm.picture.lots
    for language in ("en", "es"):
        file = BytesIO()
        write_lot_sheet(sheet_story(farm, code), for_papers(words(language), farm.things), file, time=farm.time)
        pages = pypdfium2.PdfDocument(file.getvalue())
        text = "".join(page.get_textpage().get_text_bounded() for page in pages)
        pages.close()
        assert "P01 found the tarp open" in text
        assert "Teodoro Paz" in text
        assert "zúniga" not in text.casefold()
        assert "Maricela" not in text


def test_a_block_keeps_its_name_though_somebody_is_called_so(farm: OpenFarm) -> None:
    block = replace(farm.things.blocks["A"], name="La Maricela")
    farm.save_things(replace(farm.things, blocks={**farm.things.blocks, "A": block}))
    said = for_papers(words("en"), farm.things)
    assert said.say(N_("papers", "{name}", name="La Maricela")) == "La Maricela"
    assert said.say(N_("papers", "{name}", name="from La Maricela, by Maricela")) == "from La P01, by P01"


def test_a_name_is_a_whole_word() -> None:
    people = {"P1": Person("P1", "picker", name="Ana Paz"), "P2": Person("P2", "picker")}
    assert coded("Ana, ana paz; banana, Anabel", people) == "P1, P1; banana, Anabel"


@pytest.mark.parametrize(
    ("born", "year", "young"), [(2009, 2025, True), (2007, 2025, True), (2006, 2025, False), (None, 2025, False)]
)
def test_who_may_be_under_18_is_told_by_the_year_of_birth(born: int | None, year: int, young: bool) -> None:
    assert may_be_minor(Person("P", "picker", born=born), year) is young


@pytest.mark.parametrize(
    ("name", "named", "born", "sentence"),
    [("", "yes", "", "no name that could stand"), ("x", "no", "1850", "was born in 1850"), ("x", "no", "85", "born in 85"),
     ("x", "no", "2090", "born in 2090"), ("x", "maybe", "", "none of 1 yes, 2 no")],
)  # fmt: skip
def test_what_cannot_be_of_a_person_is_refused(farm: OpenFarm, name, named, born, sentence) -> None:
    with pytest.raises(NotPossible, match=sentence):
        write_down(farm, "P09", name, named, born)
    assert "P09" not in farm.things.people
