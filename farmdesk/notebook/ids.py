"""Ids that sort by time and are unique across computers."""

from __future__ import annotations

import hashlib
import platform
import secrets
import threading

from farmdesk import clock

# Crockford's base 32: no I, L, O, U, so that an id can be read aloud (D. Crockford, "Base 32", 2002).
DIGITS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
TIME, COUNT, COMPUTER, CHANCE = 10, 3, 3, 4

_lock = threading.Lock()
_last_ms, _count = 0, 0


def computer_name() -> str:
    """The name of this computer, as its owner gave it."""
    return platform.node() or "computer"


def new_id() -> str:
    """A new id: 10 digits of time [ms], 3 that count within it, 3 of the computer's name, 4 by chance.

    Ids of one program always rise, even while the computer's clock is set back.
    """
    global _last_ms, _count
    with _lock:
        now_ms = clock.now_ms()
        if now_ms > _last_ms:
            _last_ms, _count = now_ms, 0
        else:
            _count += 1
            if _count == 32**COUNT:
                _last_ms, _count = _last_ms + 1, 0
        at_ms, count = _last_ms, _count
    computer = int.from_bytes(hashlib.sha256(computer_name().encode()).digest()[:4], "big")
    return (
        _digits(at_ms, TIME)
        + _digits(count, COUNT)
        + _digits(computer, COMPUTER)
        + _digits(secrets.randbits(5 * CHANCE), CHANCE)
    )


def rise_above(an_id: str) -> None:
    """Let the ids to come sort after this one: the newest of a file written while the clock stood wrong."""
    global _last_ms, _count
    head = an_id[:TIME]
    if len(an_id) != TIME + COUNT + COMPUTER + CHANCE or set(an_id) - set(DIGITS):
        return  # an id of another making
    at_ms = 0
    for digit in head:
        at_ms = at_ms * 32 + DIGITS.index(digit)
    with _lock:
        if at_ms >= _last_ms:
            _last_ms, _count = at_ms + 1, -1


def _digits(number: int, length: int) -> str:
    return "".join(DIGITS[number >> shift & 31] for shift in range(5 * (length - 1), -1, -5))
