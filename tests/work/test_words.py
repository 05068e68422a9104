"""The farm's own words: whole words in sentences, each language apart, and never in what a hand once wrote."""

from __future__ import annotations

from collections.abc import Iterator

import pypdfium2
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk.desk import words as languages
from farmdesk.errors import NotPossible
from farmdesk.papers.lot_sheet import write_lot_sheet
from farmdesk.text import N_
from farmdesk.work import keeping, picking
from farmdesk.work.farm import OpenFarm
from farmdesk.work.sheet import sheet_story
from farmdesk.work.words import all_words, drop_word, instead, own_words, save_word
from tests.work.season import instant

BED = N_("gaps", "bed {place}", place="7")


@pytest.fixture(autouse=True)
def plain_words() -> Iterator[None]:
    yield
    languages.wear({})


@pytest.mark.parametrize(
    ("sentence", "says"),
    [
        ("bed {place}", "rack {place}"),
        ("Bed {bed} and beds {beds}; bedrock.", "Rack {bed} and racks {beds}; bedrock."),
        ("the wet bed", "the wide rack"),
        ("{bed}", "{bed}"),
        ("St&ore", "Barn"),  # the farm's word has no o to keep the letter at
        ("&Samples && beds", "&Samples && racks"),
        ("nothing of it", "nothing of it"),
    ],
)
def test_whole_words_are_changed_and_facts_are_not(sentence: str, says: str) -> None:
    own = {"word:en:bed": "rack", "word:en:beds": "racks", "word:en:wet bed": "wide rack", "word:en:store": "barn"}
    assert instead(sentence, own_words(own, "en")) == says


@given(st.text(alphabet="abc {}&.", max_size=40))
def test_without_own_words_nothing_changes(sentence: str) -> None:
    assert instead(sentence, ()) == sentence


@given(st.lists(st.sampled_from(["bed", "{bed}", "beds", "a", "{n}"]), max_size=8).map(" ".join))
def test_holes_for_facts_are_never_touched(sentence: str) -> None:
    said = instead(sentence, (("beds", "racks"), ("bed", "rack"), ("n", "m")))
    assert [part for part in said.split() if part.startswith("{")] == [
        part for part in sentence.split() if part.startswith("{")
    ]


def test_each_language_has_its_own(farm: OpenFarm) -> None:
    save_word(farm, "es", "cama", "tarima")
    assert languages.wear(farm.things.settings)
    assert languages.words("es").say(BED) == "tarima 7"
    assert languages.words("en").say(BED) == "bed 7"
    save_word(farm, "en", "bed", "rack")
    assert languages.wear(farm.things.settings)
    assert not languages.wear(farm.things.settings)
    assert languages.words("en").say(BED) == "rack 7"
    assert all_words(farm.things) == (("es", "cama", "tarima"), ("en", "bed", "rack"))


def test_a_word_is_changed_dropped_and_taken_back(farm: OpenFarm) -> None:
    save_word(farm, "en", "bed", "rack")
    with pytest.raises(NotPossible, match="has a word already"):
        save_word(farm, "en", "bed", "shelf")
    done = save_word(farm, "en", "bed", "shelf", before="en:bed")
    assert all_words(farm.things) == (("en", "bed", "shelf"),)
    assert done.inverse is not None
    done.inverse(farm)
    assert all_words(farm.things) == (("en", "bed", "rack"),)
    drop_word(farm, "en:bed")
    assert all_words(farm.things) == ()


@pytest.mark.parametrize(("said", "own"), [("", "rack"), ("bed", " "), ("{bed}", "rack"), ("bed", "r&d")])
def test_what_is_no_word_is_refused(farm: OpenFarm, said: str, own: str) -> None:
    with pytest.raises(NotPossible):
        save_word(farm, "en", said, own)
    assert all_words(farm.things) == ()


def test_screens_and_sheets_change_and_old_records_do_not(farm: OpenFarm, tmp_path, qapp) -> None:
    lot = picking.begin_lot(farm, "W", instant(1, 12)).lot
    picking.weigh_in(farm, lot, block="A", picker="P01", half_day="am", gross="58", at_utc_s=instant(1, 20))
    keeping.remark(farm, "delivered on a mule", instant(1, 21), lot=lot)
    said = list(farm.picture.book.by_id.values())
    before = sheet(farm, lot, tmp_path)
    assert "delivered" in before.lower()

    save_word(farm, "en", "delivered", "brought in")
    languages.wear(farm.things.settings)
    languages.speak("en")
    after = sheet(farm, lot, tmp_path)
    assert "brought in" in after.lower()
    assert qapp.translate("LotPage", "delivered") == "brought in"
    assert list(farm.picture.book.by_id.values()) == said
    assert "delivered on a mule" in {getattr(entry.body, "text", "") for entry in farm.file.entries()}
    languages.wear({})
    languages.speak("en")
    assert qapp.translate("LotPage", "delivered") == "delivered"
    assert sheet(farm, lot, tmp_path) == before


def sheet(farm: OpenFarm, lot: str, folder) -> str:
    """The words of a lot's sheet on paper."""
    path = folder / "sheet.pdf"
    write_lot_sheet(sheet_story(farm, lot), languages.words("en"), path, time=farm.time)
    document = pypdfium2.PdfDocument(path)
    text = document[0].get_textpage()
    said = str(text.get_text_bounded())
    text.close()
    document.close()
    return said
