"""Lot codes and their check character.

A code is season, running number and the letter of the method at birth: `25-13W`. Hand-copied codes are
caught by one more character, ISO 7064 Mod 37,36 over the letters and digits (the hyphen is not counted).
"""

from __future__ import annotations

import re

from farmdesk.errors import NotPossible
from farmdesk.text import N_

ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"
_CODE = re.compile(r"^(\d{2})-(\d{1,3})([A-Z])$")
_LOOSE = re.compile(r"^(\d{2})[-\s]?(\d{1,3})([A-Z])?[-·\s]?([0-9A-Z])?$")


def check_character(code: str) -> str:
    """The check character of a code (ISO 7064:2003, hybrid system Mod 37,36)."""
    carry = 36
    for sign in code.upper():
        if sign in ALPHABET:
            carry = (carry + ALPHABET.index(sign)) % 36 or 36
            carry = carry * 2 % 37
    return ALPHABET[(37 - carry) % 36]


def lot_code(season: str, number: int, method: str) -> str:
    """`25`, 13, `W` -> `25-13W`."""
    return f"{season}-{number:02d}{method}"


def read_code(typed: str) -> str:
    """The lot code in what was typed: `25-13w`, `25-13W T`, `2513W-T`.

    A check character, where one was typed, must be the right one. Raises NotPossible otherwise.
    """
    match = _LOOSE.match(typed.strip().upper())
    if not match or not match.group(3):
        raise NotPossible(N_("codes", "“{typed}” is not a lot code; one looks like 25-13W.", typed=typed.strip()))
    season, number, method, check = match.groups()
    code = lot_code(season, int(number), method)
    if check and check != check_character(code):
        raise NotPossible(
            N_(
                "codes",
                "{code} carries the check character {right}, not {typed}: was another lot meant?",
                code=code,
                right=check_character(code),
                typed=check,
            )
        )
    return code


def is_code(text: str) -> bool:
    """Whether this is a whole lot code, written exactly."""
    return bool(_CODE.match(text))
