"""Defects in green coffee: one count of beans, judged by several published tables side by side.

A count is beans (or pieces) by kind in a sample. A bean with two faults counts once, as the worse. Each table
(`resources/tables/defects_*.toml`) says what a kind is worth, for which sample, whether types are rounded down
("floor") or fractions added ("sum"), and where its grades end. Counts from another sample weight are scaled before
they are judged, and the result says so. What a table gives no value is named, never guessed.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from pathlib import Path
from typing import Any, Final

from farmdesk import paths
from farmdesk.errors import NotPossible
from farmdesk.science.limits import single
from farmdesk.text import N_, Listing, Num, Text, pct

SAMPLE_G: Final = (20.0, 5000.0)  # below, a count says nothing; above, nobody counts

KINDS: Final[dict[str, Text]] = {
    "full_black": N_("defects", "full black"),
    "partial_black": N_("defects", "partial black"),
    "broken_black": N_("defects", "broken black"),
    "full_sour": N_("defects", "full sour"),
    "partial_sour": N_("defects", "partial sour"),
    "brown": N_("defects", "brown"),
    "dried_cherry": N_("defects", "dried cherry"),
    "fungus": N_("defects", "fungus damage"),
    "foreign": N_("defects", "foreign matter"),
    "foreign_large": N_("defects", "large stone, stick or clod"),
    "foreign_medium": N_("defects", "medium stone, stick or clod"),
    "foreign_small": N_("defects", "small stone, stick or clod"),
    "insect_severe": N_("defects", "insect damage, three holes or more"),
    "insect_slight": N_("defects", "insect damage, under three holes"),
    "insect_one_hole": N_("defects", "insect damage, one hole"),
    "insect_two_holes": N_("defects", "insect damage, two holes"),
    "insect_clean": N_("defects", "bored, clean"),
    "insect_laced": N_("defects", "bored, laced"),
    "insect_dirty": N_("defects", "bored, dirty"),
    "broken": N_("defects", "broken, chipped or cut"),
    "immature": N_("defects", "immature"),
    "withered": N_("defects", "withered"),
    "shell": N_("defects", "shell"),
    "floater": N_("defects", "floater"),
    "spotted": N_("defects", "spotted"),
    "parchment_bean": N_("defects", "bean in parchment"),
    "parchment_large": N_("defects", "large piece of parchment"),
    "parchment_medium": N_("defects", "medium piece of parchment"),
    "parchment_small": N_("defects", "small piece of parchment"),
    "hull": N_("defects", "husk"),
    "hull_large": N_("defects", "large piece of husk"),
    "hull_medium": N_("defects", "medium piece of husk"),
    "hull_small": N_("defects", "small piece of husk"),
    "full_imperfection": N_("defects", "full imperfection"),
    "lesser_imperfection": N_("defects", "lesser imperfection"),
}

# What a limit can be about: a sum of the count (the first three), or a measurement taken beside it.
COUNTED: Final = ("total", "primary", "secondary")
MEASURES: Final[dict[str, Text]] = {
    "total": N_("defects", "defects"),
    "primary": N_("defects", "primary full defects"),
    "secondary": N_("defects", "secondary full defects"),
    "moisture_wb_frac": N_("defects", "moisture"),
    "activity_frac": N_("defects", "water activity"),
    "quakers_count": N_("defects", "quakers in 100 g roasted"),
    "defective_frac": N_("defects", "defective beans by weight"),
    "black_mouldy_frac": N_("defects", "black or mouldy beans by weight"),
    "other_type_frac": N_("defects", "beans of the other type by weight"),
}


@dataclass(frozen=True, slots=True)
class Item:
    """One type of a table: so many beans of these kinds make so many defects."""

    kinds: tuple[str, ...]
    beans: int
    defects: int
    group: str


@dataclass(frozen=True, slots=True)
class Grade:
    """One grade: limits that may be reached (`most`, `least`) and one that may not (`below`)."""

    label: Text
    species: str
    process: str
    most: Mapping[str, float]
    least: Mapping[str, float]
    below: Mapping[str, float]


@dataclass(frozen=True, slots=True)
class Standard:
    """A published table with its source."""

    key: str
    label: Text
    sample_g: float
    whole: bool  # each type is rounded down to whole defects
    own_count: bool  # its kinds are sorted by the rule itself: another count says nothing about it
    items: tuple[Item, ...]
    grades: tuple[Grade, ...]
    source: str
    edition: str
    note: Text


@dataclass(frozen=True, slots=True)
class GradeAnswer:
    """Whether a grade's limits are met: True, False, or None where something was not measured, and why."""

    label: Text
    met: bool | None
    counts_met: bool | None  # by the count alone; None where the grade sets no limit on it
    because: tuple[Text, ...]


@dataclass(frozen=True, slots=True)
class Judgement:
    """One count by one table: defects by type and in sum, grades, and what must be said with them."""

    standard: Standard
    by_type: tuple[tuple[Item, float], ...]
    sums: Mapping[str, float]
    scaled_from_g: float | None
    no_value: tuple[str, ...]
    answers: tuple[GradeAnswer, ...]

    @property
    def grade(self) -> Text | None:
        """The best grade all of whose limits are met; None where none is, or a better one is still open."""
        for answer in self.answers:
            if answer.met is not False:
                return answer.label if answer.met else None
        return None

    @property
    def grade_by_count(self) -> Text | None:
        """The best grade as far as the defect count goes."""
        return next((answer.label for answer in self.answers if answer.counts_met), None)

    @property
    def text(self) -> Text:
        """The result with the table's name, and the sample it was scaled from."""
        if not self.sums:
            return N_("defects", "{table}: not counted by its own kinds", table=self.standard.label)
        names = [name for name in COUNTED if name in self.sums and (name != "total" or len(self.sums) == 1)]
        said = Listing(tuple(_amount(name, self.sums[name]) for name in names))
        if self.scaled_from_g is None:
            return N_("defects", "{table}: {result}", table=self.standard.label, result=said)
        return N_(
            "defects",
            "{table}: {result} (scaled from {sample})",
            table=self.standard.label,
            result=said,
            sample=Num(self.scaled_from_g, "g"),
        )


@cache
def standards() -> Mapping[str, Standard]:
    """The shipped tables, by key."""
    return read_standards(sorted(paths.resource("tables").glob("defects_*.toml")))


def read_standards(files: Sequence[Path]) -> Mapping[str, Standard]:
    """Tables from TOML files, by key; a table may take another's items.

    Raises NotPossible for a kind, a measure or a rule this program does not know.
    """
    raw = {}
    for file in files:
        with file.open("rb") as stream:
            table = tomllib.load(stream)
        raw[table["key"]] = table
    return {key: _standard(table, raw) for key, table in raw.items()}


def _standard(table: dict[str, Any], others: dict[str, dict[str, Any]]) -> Standard:
    rows = others[table["items_of"]]["item"] if "items_of" in table else table["item"]
    items = tuple(Item(tuple(r["kinds"]), r["beans"], r.get("defects", 1), r.get("group", "")) for r in rows)
    limits = [limit for grade in table["grade"] for side in ("max", "min", "below") for limit in grade.get(side, {})]
    unknown = [kind for item in items for kind in item.kinds if kind not in KINDS]
    unknown += [name for name in limits if name not in MEASURES]
    unknown += [] if table["rule"] in ("floor", "sum") else [table["rule"]]
    if unknown:
        raise NotPossible(
            N_("defects", "The table {table} speaks of {what}.", table=table["key"], what=Listing(tuple(unknown)))
        )
    return Standard(
        table["key"],
        Text("tables", table["label"]),
        float(table["sample_g"]),
        table["rule"] == "floor",
        table.get("own_count", False),
        items,
        tuple(
            Grade(
                Text("tables", grade["label"]),
                grade.get("species", ""),
                grade.get("process", ""),
                grade.get("max", {}),
                grade.get("min", {}),
                grade.get("below", {}),
            )
            for grade in table["grade"]
        ),
        table["source"],
        table["edition"],
        Text("tables", table["note"]),
    )


def judge(
    counts: Mapping[str, int],
    sample_g: float,
    standard: Standard,
    *,
    species: str = "arabica",
    process: str = "",
    measured: Mapping[str, float] | None = None,
) -> Judgement:
    """Judge a count of beans [kind -> pieces] in a sample [g] by one table.

    `measured` holds what else the grades ask for (see MEASURES): `moisture_wb_frac`, `quakers_count` and so on.
    `process` "natural" picks grades made for naturals where a table has them.
    Raises NotPossible for an unknown kind or measure, a count that is no whole number of pieces, a sample outside 20..5,000 g.
    """
    sample = Fraction(single(sample_g, *SAMPLE_G, N_("defects", "A sample weight"), "g")).limit_denominator(1000)
    for kind, pieces in counts.items():
        if kind not in KINDS:
            raise NotPossible(N_("defects", "There is no kind of defect called {kind}.", kind=kind))
        what = N_("defects", "{kind}: a count", kind=KINDS[kind])
        if (counted := single(pieces, 0.0, 1e6, what)) != int(counted):
            raise NotPossible(N_("defects", "{kind}: a count is a whole number.", kind=KINDS[kind]))
    scale = Fraction(standard.sample_g) / sample
    by_type = tuple((item, _defects(item, counts, scale, standard.whole)) for item in standard.items)
    sums = {"total": float(sum(value for _, value in by_type))}
    for group in sorted({item.group for item in standard.items} - {""}):
        sums[group] = float(sum(value for item, value in by_type if item.group == group))
    unknown = [name for name in measured or {} if name not in MEASURES]
    if unknown:
        raise NotPossible(N_("defects", "There is no measure called {name}.", name=unknown[0]))
    valued = {kind for item in standard.items for kind in item.kinds}
    if standard.own_count and not valued & counts.keys():
        sums = {}
    grades = [grade for grade in standard.grades if grade.species in ("", species)]
    grades = [grade for grade in grades if grade.process == process] or [g for g in grades if not g.process]
    return Judgement(
        standard,
        tuple((item, float(value)) for item, value in by_type),
        sums,
        None if scale == 1 else float(sample),
        tuple(kind for kind, pieces in counts.items() if pieces and kind not in valued),
        tuple(_answer(grade, sums, measured or {}) for grade in grades),
    )


def _defects(item: Item, counts: Mapping[str, int], scale: Fraction, whole: bool) -> Fraction:
    full = sum((Fraction(int(counts.get(kind, 0))) for kind in item.kinds), Fraction(0)) * scale / item.beans
    return Fraction(full.__floor__() if whole else full) * item.defects


def _answer(grade: Grade, sums: Mapping[str, float], measured: Mapping[str, float]) -> GradeAnswer:
    broken: list[Text] = []
    missing: list[Text] = []
    counts_met: bool | None = None
    for side, limits in (("most", grade.most), ("least", grade.least), ("below", grade.below)):
        for name, limit in limits.items():
            value = sums.get(name) if name in COUNTED else measured.get(name)
            if value is None or value != value:  # a gap (NaN) is not measured either
                missing.append(N_("defects", "not measured: {what}", what=MEASURES[name]))
                continue
            kept = (
                value <= limit + 1e-9 if side == "most" else value >= limit - 1e-9 if side == "least" else value < limit
            )
            if name in COUNTED:
                counts_met = kept and counts_met is not False
            if not kept:
                broken.append(
                    N_(
                        "defects",
                        "{value}, the limit is {limit}",
                        value=_amount(name, value),
                        limit=_number(name, limit),
                    )
                )
    met = False if broken else None if missing else True
    return GradeAnswer(grade.label, met, counts_met, tuple(dict.fromkeys(broken + missing)))


def _amount(name: str, value: float) -> Text:
    return N_("defects", "{number} {what}", number=_number(name, value), what=MEASURES[name])


def _number(name: str, value: float) -> Num:
    if name == "activity_frac":
        return Num(value, "", 2)
    if name.endswith("_frac"):
        return pct(value)
    return Num(value, "", 0 if value == int(value) else 1)


def worst_of(*kinds: str, standard: Standard) -> str:
    """Of two faults on one bean, the one that counts: worth most by this table, primary before secondary."""
    worth = {
        kind: (item.group == "primary", Fraction(item.defects, item.beans))
        for item in standard.items
        for kind in item.kinds
    }
    return max(kinds, key=lambda kind: worth.get(kind, (False, Fraction(0))))
