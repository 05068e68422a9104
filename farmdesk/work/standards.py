"""Tables of defects: the published ones that ship with the program, and one that the farm types itself."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from farmdesk.errors import NotPossible
from farmdesk.picture.entries import Defects
from farmdesk.picture.things import Things
from farmdesk.science.defects import KINDS, Item, Standard, judge, standards
from farmdesk.text import N_, Text
from farmdesk.units import read_number, value_of
from farmdesk.work.changes import Done, Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.registers import WAY, Column

CHOSEN = "standards"  # a setting: keys of published tables
OWN, ROOM = "own", "standard"  # settings `standard:name`, `standard:item:full_black` hold the farm's own table
SAMPLE_G = (20.0, 5000.0)
RULES = Column("rule", N_("standards", "rule"), WAY, ways=(
    ("floor", N_("standards", "each rounded down")), ("sum", N_("standards", "fractions added")),
))  # fmt: skip
GROUPS = Column("group", N_("standards", "group"), WAY, ways=(
    ("primary", N_("standards", "primary")), ("secondary", N_("standards", "secondary")),
))  # fmt: skip
DEFECTS = Column("kind", N_("standards", "defect"), WAY, ways=tuple(KINDS.items()))


@dataclass(frozen=True, slots=True)
class OwnTable:
    """The farm's own table as typed: name, year, sample [g], rule, source; items as (kind, beans, group)."""

    name: str = ""
    year: str = ""
    sample_g: float = 0.0
    rule: str = "floor"
    source: str = ""
    items: tuple[tuple[str, int, str], ...] = ()


def own_table(things: Things) -> OwnTable:
    """The farm's own table; empty where none was typed."""
    own = {name.removeprefix(f"{ROOM}:"): value for name, value in things.settings.items() if name.startswith(ROOM)}
    items = []
    for name, value in own.items():
        if name.startswith("item:"):
            beans, _, group = value.partition(" ")
            items.append((name.removeprefix("item:"), int(beans), group))
    return OwnTable(
        own.get("name", ""), own.get("year", ""), float(own.get("sample_g", "0")), own.get("rule", "floor"),
        own.get("source", ""), tuple(items),
    )  # fmt: skip


def farm_standards(things: Things) -> Mapping[str, Standard]:
    """The tables a count may be judged by: the shipped ones, and the farm's own under `own` once it has items."""
    table = own_table(things)
    if not table.name or not table.items:
        return standards()
    items = tuple(Item((kind,), beans, 1, group) for kind, beans, group in table.items)
    label = N_("standards", "{name}, the farm’s own", name=table.name)
    note = N_("standards", "Typed by the farm itself.")
    own = Standard(
        OWN, label, table.sample_g, table.rule == "floor", False, items, (), table.source, table.year, note
    )  # fmt: skip
    return {**standards(), OWN: own}


def judged(things: Things, count: Defects) -> tuple[Text, ...]:
    """One count of kinds by every table it is judged by, each result with the table's name.

    The table named in the count comes first, then those the farm chose beside it, then its own; nothing where only
    a result was written, or a kind is counted that no table knows.
    """
    tables = farm_standards(things)
    counts = {line.name: round(line.value) for line in count.counts}
    if not counts or counts.keys() - KINDS.keys():
        return ()
    named = [key for key, table in tables.items() if count.standard in (key, str(table.label))]
    keys = dict.fromkeys([*named, *chosen(things), OWN])
    return tuple(judge(counts, count.sample_g, tables[key]).text for key in keys if key in tables)


def chosen(things: Things) -> tuple[str, ...]:
    """The published tables by which the farm wants every count judged too."""
    return tuple(key for key in things.settings.get(CHOSEN, "").split() if key in standards())


def save_table(farm: OpenFarm, values: Mapping[str, str], rule: str, hand: Hand = Hand()) -> Done:
    """What stands above the farm's own table: name, year, sample, rule, source; and the tables chosen beside it.

    `also` are numbers of published tables, in the order of `standards`. A farm may choose them without a table of
    its own. Raises NotPossible.
    """
    keys, numbers = list(standards()), values.get("also", "").replace(",", " ").split()
    if not all(number.isdigit() and 1 <= int(number) <= len(keys) for number in numbers):
        raise NotPossible(N_("standards", "The published tables are numbered 1 to {n}.", n=len(keys)))
    also = {CHOSEN: " ".join(keys[int(number) - 1] for number in numbers)}
    if (numbers or chosen(farm.things)) and not any(
        values[name].strip() for name in ("name", "year", "sample_g", "source")
    ):
        return _saved(farm, farm.things.settings | also)
    if not values["name"].strip():
        raise NotPossible(N_("standards", "A table needs its name; it stands beside every result."))
    sample_g = value_of(read_number(values["sample_g"], "g", answers=hand.answers), "g")
    if not SAMPLE_G[0] <= sample_g <= SAMPLE_G[1]:
        raise NotPossible(N_("standards", "A sample has 20 to 5,000 g."))
    head = {name: values[name].strip() for name in ("name", "year", "source")}
    head |= {"sample_g": f"{sample_g:g}", "rule": rule or "floor"}
    return _saved(farm, farm.things.settings | also | {f"{ROOM}:{name}": value for name, value in head.items()})


def save_item(farm: OpenFarm, kind: str, typed: str, group: str, *, before: str = "", hand: Hand = Hand()) -> Done:
    """So many beans of a kind make one full defect. Raises NotPossible."""
    if kind not in KINDS:
        raise NotPossible(N_("standards", "There is no kind of defect called {kind}.", kind=kind))
    beans = value_of(read_number(typed, answers=hand.answers), "")
    if beans < 1 or beans != round(beans):
        raise NotPossible(N_("standards", "How many beans make one full defect? A whole number, from 1."))
    settings = {name: value for name, value in farm.things.settings.items() if name != f"{ROOM}:item:{before}"}
    if f"{ROOM}:item:{kind}" in settings:
        raise NotPossible(N_("standards", "{kind} stands in the table already.", kind=KINDS[kind]))
    return _saved(farm, settings | {f"{ROOM}:item:{kind}": f"{round(beans)} {group}"})


def drop_item(farm: OpenFarm, kind: str) -> Done:
    """Take a kind out of the farm's own table."""
    return _saved(farm, {k: v for k, v in farm.things.settings.items() if k != f"{ROOM}:item:{kind}"})


def _saved(farm: OpenFarm, settings: dict[str, str]) -> Done:
    done = farm.save_things(replace(farm.things, settings=settings))
    label: Text = N_("standards", "the farm’s own table of defects")
    return Done(done.changes, done.entries, label, done.inverse)
