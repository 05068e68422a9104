"""Sentences with their facts: one lot, two lots, in every language."""

from __future__ import annotations

from string import Formatter

import pytest

from farmdesk.desk.words import words
from farmdesk.text import ENGLISH, N_, Counted, Num

LOTS = N_("season", "{n} {n:lot|lots}; every bed is free.", n=3)


@pytest.mark.parametrize(
    ("n", "english", "spanish"),
    [
        (0, "0 lots; every bed is free.", "0 lotes; todas las camas libres."),
        (1, "1 lot; every bed is free.", "1 lote; todas las camas libres."),
        (2, "2 lots; every bed is free.", "2 lotes; todas las camas libres."),
    ],
)
def test_one_and_many(n: int, english: str, spanish: str) -> None:
    said = N_(LOTS.context, LOTS.template, n=n)
    assert ENGLISH.say(said) == english
    assert words("es").say(said) == spanish


def test_a_whole_number_with_its_unit_counts_and_anything_else_is_many() -> None:
    template = "{n} {n:day|days}"
    assert ENGLISH.say(N_("t", template, n=Num(1.0))) == "1 day"
    assert ENGLISH.say(N_("t", template, n=Num(1.0, decimals=1))) == "1.0 days"
    assert ENGLISH.say(N_("t", template, n="1–2")) == "1–2 days"


def test_a_number_that_is_written_otherwise_still_counts() -> None:
    assert "{rows} {rows:row|rows}".format(rows=Counted(1459, "1,459")) == "1,459 rows"
    assert "{rows} {rows:row|rows}".format(rows=Counted(1)) == "1 row"
    assert f"{Counted(7):>3}" == "  7"  # any other format is a string's own


def test_every_choice_of_words_has_two() -> None:
    from farmdesk.desk.words import sentences

    for language in ("en", "es"):
        for said in sentences(language):
            for _, name, spec, _ in Formatter().parse(said):
                if name is not None and spec and "|" in spec:
                    assert spec.count("|") == 1, said
                    assert all(part.strip() for part in spec.split("|")), said
