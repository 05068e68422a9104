"""The farm's registers as they are typed: columns in the order of the boxes, a row to its thing and back.

What is not known is left empty: it can come later, or never.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any, cast

from farmdesk.errors import Answer, NotPossible
from farmdesk.picture.things import Instrument, Method, Things
from farmdesk.text import N_, Listing, Text
from farmdesk.units import read_number, value_of
from farmdesk.work import setup
from farmdesk.work.changes import Done, Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.guards import ask
from farmdesk.work.setup import REGISTERS, Thing, key_of

CODE, TEXT, NUMBER, WHOLE, WAY, YES = "code", "text", "number", "whole", "way", "yes"
Way = tuple[str, Text]


@dataclass(frozen=True, slots=True)
class Column:
    """A box: the field it fills, its label, what is typed there, its unit.

    `ways` are the words it offers; a way may be typed by its number. `free` takes other words too. `times` [1] is
    what a typed number counts in the base unit.
    """

    name: str
    label: Text
    kind: str = TEXT
    unit: str = ""
    ways: tuple[Way, ...] = ()
    free: bool = False
    times: float = 1.0


YES_NO: tuple[Way, ...] = (("yes", N_("registers", "yes")), ("no", N_("registers", "no")))
QUANTITIES: tuple[Way, ...] = (
    ("mass_g", N_("registers", "weight")), ("meter_wb_frac", N_("registers", "moisture")),
    ("ph", N_("registers", "pH")), ("mass_c", N_("registers", "mass °C")), ("brix", N_("registers", "°Bx")),
    ("aw", N_("registers", "water activity")), ("store_rh_frac", N_("registers", "air humidity")),
    ("air_c", N_("registers", "air °C")), ("rain_mm", N_("registers", "rain")),
)  # fmt: skip
COLUMNS: dict[str, tuple[Column, ...]] = {
    "blocks": (
        Column("code", N_("registers", "block"), CODE), Column("name", N_("registers", "name")),
        Column("name_local", N_("registers", "called here")),
        Column("area_ha", N_("registers", "area, ha"), NUMBER), Column("low_m", N_("registers", "from, m"), NUMBER),
        Column("high_m", N_("registers", "to, m"), NUMBER), Column("variety", N_("registers", "variety")),
        Column("trees_n", N_("registers", "trees"), WHOLE), Column("planted", N_("registers", "planted"), WHOLE),
        Column("shade", N_("registers", "shade"), WAY, free=True, ways=(
            ("light", N_("registers", "light")), ("medium", N_("registers", "medium")), ("high", N_("registers", "high")),
        )),
        Column("organic", N_("registers", "organic"), WAY, ways=(
            ("yes", N_("registers", "yes")), ("converting", N_("registers", "converting")), ("no", N_("registers", "no")),
        )),
        Column("boundary", N_("registers", "boundary")),
    ),
    "places": (
        Column("code", N_("registers", "place"), CODE),
        Column("kind", N_("registers", "kind"), WAY, ways=(
            ("bed", N_("registers", "bed")), ("patio", N_("registers", "patio")))),
        Column("width_m", N_("registers", "width, m"), NUMBER), Column("depth_m", N_("registers", "length, m"), NUMBER),
        Column("x_m", N_("registers", "from west, m"), NUMBER), Column("y_m", N_("registers", "from south, m"), NUMBER),
        Column("cover", N_("registers", "cover"), WAY, ways=(
            ("roof", N_("registers", "roof")), ("hoops", N_("registers", "hoops")),
            ("tarp", N_("registers", "hand tarp")), ("open", N_("registers", "none")))),
        Column("cover_min", N_("registers", "to cover, min"), NUMBER),
    ),
    "vessels": (
        Column("code", N_("registers", "vessel"), CODE),
        Column("kind", N_("registers", "kind"), WAY, free=True, ways=(
            ("tank", N_("registers", "tank")), ("sealed tank", N_("registers", "sealed tank")),
            ("barrel", N_("registers", "barrel")), ("liner", N_("registers", "liner")),
            ("box", N_("registers", "box")))),
        Column("gross_l", N_("registers", "holds, L"), NUMBER), Column("usable_l", N_("registers", "usable, L or %"), NUMBER),
        Column("sealed", N_("registers", "sealed"), YES, ways=YES_NO),
    ),
    "trays": (Column("code", N_("registers", "tray"), CODE), Column("tare_g", N_("registers", "empty, g"), WHOLE)),
    "instruments": (
        Column("code", N_("registers", "instrument"), CODE),
        Column("kind", N_("registers", "kind"), WAY, free=True, ways=(
            ("platform scale", N_("registers", "platform scale")), ("bench scale", N_("registers", "bench scale")),
            ("moisture meter", N_("registers", "moisture meter")), ("ph meter", N_("registers", "pH meter")),
            ("thermometer", N_("registers", "thermometer")), ("logger", N_("registers", "logger")),
            ("refractometer", N_("registers", "refractometer")), ("hygrometer", N_("registers", "hygrometer")),
            ("rain gauge", N_("registers", "rain gauge")),
            ("max and min thermometer", N_("registers", "max and min thermometer")))),
        Column("quantity", N_("registers", "measures"), WAY, ways=QUANTITIES),
        Column("sd", N_("registers", "spread, ±"), NUMBER), Column("step", N_("registers", "last digit"), NUMBER),
        Column("check_every_d", N_("registers", "check, days"), WHOLE),
        Column("clock_shift_s", N_("registers", "clock off, h"), NUMBER, times=3600.0),
    ),
    "people": (
        Column("code", N_("registers", "code"), CODE),
        Column("role", N_("registers", "work"), WAY, free=True, ways=(
            ("picker", N_("registers", "picker")), ("wet-side hand", N_("registers", "wet-side hand")),
            ("yard hand", N_("registers", "yard hand")), ("weigh clerk", N_("registers", "weigh clerk")),
            ("field foreman", N_("registers", "field foreman")), ("processor", N_("registers", "processor")))),
        Column("pay", N_("registers", "pay"), WAY, free=True, ways=(
            ("by weight", N_("registers", "by weight")), ("day work", N_("registers", "day work")),
            ("monthly", N_("registers", "monthly")))),
        Column("name", N_("registers", "name")),
        Column("named", N_("registers", "on papers"), YES, ways=YES_NO),
        Column("born", N_("registers", "born, year"), WHOLE),
    ),
    "methods": (
        Column("letter", N_("registers", "letter"), CODE), Column("name", N_("registers", "name")),
        Column("whole", N_("registers", "dried whole"), YES, ways=YES_NO),
        Column("sealed", N_("registers", "sealed"), YES, ways=YES_NO),
        Column("hours_low_h", N_("registers", "hours from"), NUMBER),
        Column("hours_high_h", N_("registers", "to"), NUMBER),
        Column("ends_by", N_("registers", "ends by"), WAY, ways=(
            ("hand", N_("registers", "hand test")), ("ph", N_("registers", "pH")), ("clock", N_("registers", "clock")))),
        Column("ph_low", N_("registers", "pH from"), NUMBER), Column("ph_high", N_("registers", "pH to"), NUMBER),
        Column("ph_target", N_("registers", "pH aimed at"), NUMBER),
        Column("mass_max_c", N_("registers", "mass at most, °C"), NUMBER),
        Column("yeast_g_kg", N_("registers", "yeast, g/kg"), NUMBER), Column("rinses_n", N_("registers", "rinses"), WHOLE),
        Column("loading_kg_m2", N_("registers", "loading, kg/m²"), NUMBER),
        Column("dry_days_max_d", N_("registers", "dry within, days"), WHOLE),
        Column("start_wb_frac", N_("registers", "water when spread, %"), NUMBER, times=0.01),
        Column("start_wb_sd_frac", N_("registers", "± points"), NUMBER, times=0.01),
        Column("store_low_wb_frac", N_("registers", "store from, %"), NUMBER, times=0.01),
        Column("store_high_wb_frac", N_("registers", "to, %"), NUMBER, times=0.01),
        Column("rest_days_d", N_("registers", "rest, days"), WHOLE),
    ),
    "buyers": (Column("code", N_("registers", "buyer"), CODE), Column("kind", N_("registers", "kind"))),
}  # fmt: skip
NAMES = tuple(COLUMNS)
_CLASS: dict[str, type] = {room: kind for kind, room in REGISTERS.items()}
# The unit a box is read in, by how its field is called; another one is turned into it, or refused.
UNITS = {"_kg_m2": "kg/m²", "_g_kg": "g/kg", "_ha": "ha", "_min": "min", "_frac": "%", "_m": "m", "_l": "L", "_g": "g",
         "_s": "h", "_d": "d", "_h": "h", "_c": "°C"}  # fmt: skip
# What may stay unknown; of anything else that is left empty 0 is kept, and shown as not known.
OPEN = frozenset(
    "planted born hours_low_h hours_high_h ph_low ph_high ph_target mass_max_c yeast_g_kg rinses_n store_low_wb_frac "
    "store_high_wb_frac".split()
)
# Where a thing may be named in a row of the notebook.
_NAMED: dict[str, tuple[str, ...]] = {
    "blocks": ("block",), "places": ("place", "places"), "vessels": ("place",), "trays": ("tray",),
    "instruments": ("instrument", "logger"), "people": ("picker",), "buyers": ("buyer",),
}  # fmt: skip


def of(things: Things, register: str) -> dict[str, Any]:
    """The things of a register, by code."""
    found: dict[str, Any] = getattr(things, register)
    return found


def typed(register: str, thing: Thing) -> dict[str, str]:
    """A thing as a hand would type it, box by box; what is not known is empty. Ways stand as their own names."""
    return {column.name: _typed(column, thing) for column in COLUMNS[register]}


def _typed(column: Column, thing: Any) -> str:
    value = getattr(thing, column.name)
    times = 0.01 if column.name in ("sd", "step") and _is_share(thing) else column.times
    if column.kind == YES:
        return "yes" if value else "" if column.name == "named" else "no"
    if column.kind in (NUMBER, WHOLE):
        empty = value is None or (value == 0 and column.name not in ("x_m", "y_m"))
        return "" if empty else f"{value / times:.6g}"
    return str(value)


def _is_share(thing: Any) -> bool:
    return isinstance(thing, Instrument) and thing.quantity.endswith("_frac")


def proposed(farm: OpenFarm, register: str) -> dict[str, str]:
    """What the next row most likely says: the next free code, and what all rows share."""
    rows = of(farm.things, register)
    codes = list(rows)
    last = rows[codes[-1]] if codes else None
    if register == "places":
        beds = [p for p in rows.values() if p.kind == "bed"]
        if not beds:
            return {"code": "1", "kind": "bed", "x_m": "2", "y_m": "4", "cover": "open"}
        width, depth, cover = beds[-1].width_m, beds[-1].depth_m, beds[-1].cover
        return typed(register, setup.next_bed(farm, width, depth, cover=cover, cover_min=beds[-1].cover_min))
    code = _after(codes)
    same = {"people": ("role", "pay"), "vessels": ("kind", "gross_l", "usable_l", "sealed")}.get(register, ())
    shared = {name: value for name, value in typed(register, last).items() if name in same} if last else {}
    return {"code": code, **shared} if code else {}


def _after(codes: Sequence[str]) -> str:
    """The code after the last one: `P26` → `P27`, `F` → `G`; empty where it cannot be told."""
    if not codes:
        return ""
    last = codes[-1]
    match = re.fullmatch(r"(.*?)(\d+)", last)
    if match:
        following = f"{match[1]}{str(int(match[2]) + 1).zfill(len(match[2]))}"
    elif len(last) == 1 and last.upper() < "Z":
        following = chr(ord(last) + 1)
    else:
        return ""
    return "" if following in codes else following


def read(register: str, values: Mapping[str, str], before: Thing | None, hand: Hand) -> Thing:
    """The thing that a row of boxes says. `before` keeps what has no box. Raises NotPossible, Asked."""
    cls = _CLASS[register]
    found: dict[str, Any] = {}
    for column in COLUMNS[register]:
        found[column.name] = _read(column, values.get(column.name, "").strip(), hand)
    _tidy(register, found, values)
    if before is not None:
        made: Thing = replace(before, **found)
        return made
    thing: Thing = cls(**found)
    return thing


def _read(column: Column, text: str, hand: Hand) -> Any:
    if column.kind in (NUMBER, WHOLE):
        if not text:
            return None
        number = read_number(text, answers=hand.answers)
        unit = next((unit for end, unit in UNITS.items() if column.name.endswith(end)), "")
        of_it = column.name == "usable_l" and number.unit == "%"  # a part of what the vessel holds
        plain = column.name in ("sd", "step")  # in whatever unit the instrument shows
        value = (number.value if of_it or plain else value_of(number, unit)) * column.times
        if column.kind == WHOLE and value != round(value):
            raise NotPossible(N_("registers", "{box}: “{typed}” is no whole number.", box=column.label, typed=text))
        return round(value) if column.kind == WHOLE or column.name == "clock_shift_s" else value
    if column.kind == YES:
        return way_of(column, text) == "yes"
    return way_of(column, text) if column.kind == WAY else text


def way_of(column: Column, text: str, say: Callable[[Text], str] = str) -> str:
    """The way that was typed: by number, or by the beginning of its word as `say` says it. Raises NotPossible."""
    if not text:
        return ""
    if text.isdigit() and 0 < int(text) <= len(column.ways):
        return column.ways[int(text) - 1][0]
    low = text.casefold()
    names = [way for way, _ in column.ways if way.casefold() == low]
    said = [way for way, words in column.ways if say(words).casefold() == low]
    begun = [way for way, words in column.ways if say(words).casefold().startswith(low)]
    for found in (names, said, begun if len(begun) == 1 else []):
        if found:
            return found[0]
    if column.free:
        return text
    ways = Listing(tuple(N_("registers", "{n} {way}", n=n, way=way) for n, (_, way) in enumerate(column.ways, 1)))
    raise NotPossible(N_("registers", "{box}: “{typed}” is none of {ways}.", box=column.label, typed=text, ways=ways))


def _tidy(register: str, found: dict[str, Any], values: Mapping[str, str]) -> None:
    """What was left empty, and what one box says about another."""
    if register == "blocks" and found["high_m"] is None:
        found["high_m"] = found["low_m"]
    if register == "vessels" and found["gross_l"] is not None:
        if found["usable_l"] is None:
            found["usable_l"] = found["gross_l"]
        elif values["usable_l"].strip().endswith("%"):
            found["usable_l"] *= found["gross_l"] / 100
    for column in COLUMNS[register]:
        if column.kind in (NUMBER, WHOLE) and found[column.name] is None and column.name not in OPEN:
            found[column.name] = 0
    if register == "places":
        found["kind"], found["cover"] = found["kind"] or "bed", found["cover"] or "open"
    elif register == "vessels":
        found["kind"] = found["kind"] or "tank"
        if not values.get("sealed", "").strip():
            found["sealed"] = found["kind"] in ("sealed tank", "barrel", "liner")
    elif register == "instruments" and found["quantity"].endswith("_frac"):
        found["sd"], found["step"] = found["sd"] / 100, found["step"] / 100
    elif register == "methods":
        _store_band(found)
        found["letter"], found["ends_by"] = found["letter"].upper(), found["ends_by"] or "hand"


def _store_band(found: dict[str, Any]) -> None:
    """A method without its own band for the store takes the usual one."""
    for name in ("store_low_wb_frac", "store_high_wb_frac"):
        if found[name] is None:
            found[name] = Method.__dataclass_fields__[name].default


def write_row(
    farm: OpenFarm, register: str, values: Mapping[str, str], *, before: str = "", hand: Hand = Hand()
) -> Done:
    """Save a row of a register as typed. `before` is the key of the row that is changed; empty for a new one.

    A method is always saved as its next version. Raises NotPossible, Asked.
    """
    rows = of(farm.things, register)
    old = rows.get(before)
    if register == "methods":
        thing = read(register, values, old or Method(**_bare_method()), hand)
        assert isinstance(thing, Method)
        return setup.save(farm, setup.next_version(farm, thing), hand=hand)
    thing = read(register, values, old, hand)
    if old is not None and key_of(thing) != before:
        raise NotPossible(
            N_("registers", "A code stays as it is: {code} may stand on papers.", code=before),
            N_("registers", "Write a new row, and take the old one out."),
        )
    return setup.save(farm, thing, hand=hand, new=old is None)


def _bare_method() -> dict[str, Any]:
    """A method of which nothing is said yet."""
    given = {"letter": "", "version": 0, "name": "", "whole": False, "sealed": False, "ends_by": "hand"}
    numbers = {"loading_kg_m2": 0.0, "dry_days_max_d": 0, "start_wb_frac": 0.0, "start_wb_sd_frac": 0.0}
    return {**dict.fromkeys(OPEN - {"planted", "born"}), **given, **numbers}


def named_n(farm: OpenFarm, register: str, code: str) -> int:
    """In how many rows of the notebook a thing is named, struck rows too."""
    names = _NAMED[register]
    n = 0
    for entry in farm.picture.book.by_id.values():
        said = [getattr(entry.body, name, "") for name in names]
        if register in ("places", "vessels"):
            said.append(tuple(posting.account for posting in getattr(entry.body, "postings", ())))
        elif register == "instruments":
            said.append(entry.instrument)
        elif register == "people":
            said.append(entry.who)
        n += any(code == one or (isinstance(one, tuple) and code in one) for one in said)
    return n


def take_out(farm: OpenFarm, register: str, code: str, *, hand: Hand = Hand()) -> Done:
    """Take a thing out of its register; asked once. What a row of the notebook names stays. Raises NotPossible, Asked."""
    rows = of(farm.things, register)
    if code not in rows:
        raise NotPossible(N_("registers", "There is no {code} in this register.", code=code))
    if register == "methods":
        raise NotPossible(N_("registers", "A version of a method stays: lots point to it."))
    n = named_n(farm, register, code)
    if n:
        raise NotPossible(
            N_("registers", "{code} is named in the notebook ({n}×), so it stays.", code=code, n=n),
            N_("registers", "What has been written must always be able to say what it was about."),
        )
    text = N_("registers", "No row names {code}. Take it out of the register?", code=code)
    ask(hand, "code", f"out {code}", text, Answer("out", N_("registers", "take it out")))
    left = {key: thing for key, thing in rows.items() if key != code}
    return farm.save_things(replace(farm.things, **cast(Any, {register: left})))
