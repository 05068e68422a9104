"""Where coffee is, in the books: accounts, and the postings that move grams between them.

An account is a heap of one lot at a place (`25-13W` at `T1`, `12`, `store`, `mill`, `top`), a source
(`<field`) or a named stream (`>pulp`, `>water`, `>unexplained`).
"""

from __future__ import annotations

from typing import NamedTuple

# how far a value can be trusted
MARKS = ("measured", "logger", "computed", "estimated", "corrected")

# accounts that are no place of the farm's own
FIELD = "<field"
CARRIED = "<carried"  # from the season before
INTAKE = "intake"
STORE = "store"
MILL = "mill"
TOP, LIGHT, SMALL, PEABERRY = "top", "light", "small", "peaberry"
GREEN = (TOP, LIGHT, SMALL, PEABERRY)
RETAINED = "retained"
SORTED, FLOATERS, PULP, JUICE, WATER, GAS, PICKED_OUT, HUSK, SAMPLE, SOLD, UNEXPLAINED, TESTS = (
    ">sorted", ">floaters", ">pulp", ">juice", ">water", ">gas", ">picked out", ">husk", ">sample", ">sold",
    ">unexplained", ">tests",
)  # fmt: skip
STREAMS = (
    SORTED, FLOATERS, PULP, JUICE, WATER, GAS, PICKED_OUT, HUSK, SAMPLE, SOLD, UNEXPLAINED, TESTS,
)  # fmt: skip

TYPED, ALL, REST = 0, 1, 2


class Posting(NamedTuple):
    """Grams [g] in (+) or out (−) of an account of a lot; `way` says whether they were typed.

    `way` ALL: everything the books hold there leaves. REST: what is left over arrives here (shared
    equally between several). `typed` is the weight as it was written (`128 lb`).
    """

    lot: str
    account: str
    grams: int = 0
    way: int = TYPED
    typed: str = ""


class Line(NamedTuple):
    """One named value of a list: a sieve's grams, a defect's count, one of three meter readings."""

    name: str
    value: float
    typed: str = ""
