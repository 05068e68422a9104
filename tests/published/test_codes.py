"""Lot codes. The check characters are held against python-stdnum's own ISO 7064 and its published example."""

import string

import pytest
from hypothesis import given
from hypothesis import strategies as st
from stdnum.iso7064 import mod_37_36

from farmdesk.errors import NotPossible
from farmdesk.picture.codes import check_character, is_code, lot_code, read_code

codes = st.builds(lot_code, st.integers(0, 99).map("{:02d}".format), st.integers(1, 999), st.sampled_from("WXNAJ"))


@given(codes)
def test_check_character_agrees_with_an_independent_library(code: str) -> None:
    assert check_character(code) == mod_37_36.calc_check_digit(code.replace("-", ""))


def test_published_example() -> None:
    # from memory: the GRid standard (IFPI) prints A1-2425G-ABC1234002-M, ISO 15706 prints 0000-3BAB-9352-0000-G
    assert check_character("A12425GABC1234002") == "M"
    assert check_character("00003BAB93520000") == "G"


@given(codes, st.sampled_from(string.digits + string.ascii_uppercase), st.integers(0, 5))
def test_one_wrong_sign_is_caught(code: str, sign: str, at: int) -> None:
    plain = code.replace("-", "")
    at %= len(plain)
    if plain[at] != sign:
        assert check_character(plain[:at] + sign + plain[at + 1 :]) != check_character(plain)


def test_a_swapped_code_is_refused_with_its_right_character() -> None:
    assert read_code("25-13w t") == "25-13W"
    with pytest.raises(NotPossible, match="25-31W carries the check character L, not T"):
        read_code("25-31W-T")


@given(st.text(max_size=12))
def test_reading_a_code_answers_or_says_why_not(typed: str) -> None:
    answer = ""
    try:
        answer = read_code(typed)
    except NotPossible as no:
        answer = str(no)
    assert (
        answer == typed.strip().upper()
        or typed.strip().upper() in answer.upper()
        or "carries" in answer
        or is_code(answer)
    )
