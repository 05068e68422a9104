"""Letters: measured as they are drawn, broken without losing any, never too small."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk.papers.letters import (
    BOLD,
    DISPLAY,
    ITALIC,
    LEAST_PT,
    SANS,
    SEMIBOLD,
    SERIF,
    SERIF_SEMIBOLD,
    clean,
    fitted,
    lines,
    shortened,
    signs,
    width,
)
from tests.house.test_fonts import sentences

FONTS = (SANS, SEMIBOLD, BOLD, SERIF, SERIF_SEMIBOLD, ITALIC, DISPLAY)
WORDS = st.text(st.characters(whitelist_categories=("Lu", "Ll", "Nd", "Po", "Zs")), max_size=120)


@given(WORDS, st.floats(20, 300), st.sampled_from(FONTS))
def test_no_letter_is_lost_in_breaking_and_no_line_is_too_wide(text: str, wide: float, font: str) -> None:
    broken = lines(text, 11, wide, font)
    assert "".join(broken).replace(" ", "") == clean(text, font).replace(" ", "")
    assert all(width(line, 11, font) <= wide + 1e-6 or len(line) == 1 for line in broken)


@given(WORDS, st.floats(40, 300), st.integers(1, 3))
def test_smaller_letters_come_before_more_lines(text: str, wide: float, most: int) -> None:
    size, broken = fitted(text, 14, wide, most_n=most)
    assert LEAST_PT <= size <= 14
    assert len(broken) <= most or size == LEAST_PT
    if size < 14:
        assert len(lines(text, size + 0.5, wide)) > most


def test_accents_written_in_two_signs_become_one() -> None:
    assert clean("cafe\u0301 man\u0303ana") == "café mañana"


def test_line_ends_become_spaces_and_marks_of_direction_go() -> None:
    assert clean("Finca\nEl\tOjo\u200b\u202e") == "Finca El Ojo"


@pytest.mark.parametrize("font", FONTS)
def test_a_sign_the_font_lacks_is_seen_to_be_missing(font: str) -> None:
    assert clean("Finca 咖 <&>", font) == "Finca ? <&>"


@pytest.mark.parametrize("font", FONTS)
def test_every_sentence_of_the_program_can_be_drawn(font: str) -> None:
    lacking = {c for text in sentences().values() for c in text if not c.isspace()} - signs(font)
    assert not lacking


def test_what_is_shortened_shows_it() -> None:
    long = shortened("under the smallest sieve", 10, 60)
    assert long.endswith("…")
    assert width(long, 10) <= 60
    assert shortened("18+", 10, 60) == "18+"


def test_figures_line_up() -> None:
    assert len({width(figure, 12) for figure in "0123456789"}) == 1
