"""A farm of one's own: begun with what is known, and its registers edited as more is."""

from __future__ import annotations

import re
import tomllib
import unicodedata
from collections.abc import Callable
from dataclasses import fields, replace
from pathlib import Path
from typing import Any, cast

from farmdesk.clock import FarmTime, zones_like
from farmdesk.errors import NotPossible
from farmdesk.paths import resource
from farmdesk.picture.things import (
    Block,
    Buyer,
    Farm,
    Instrument,
    Method,
    Person,
    Place,
    Things,
    Tray,
    Vessel,
)
from farmdesk.text import N_, Num
from farmdesk.units import read_number, value_of
from farmdesk.work import boundaries
from farmdesk.work.changes import Done, Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.guards import ask
from farmdesk.work.seasons import SUFFIX

Thing = Block | Vessel | Place | Instrument | Tray | Person | Method | Buyer
REGISTERS: dict[type, str] = {
    Block: "blocks",
    Vessel: "vessels",
    Place: "places",
    Instrument: "instruments",
    Tray: "trays",
    Person: "people",
    Method: "methods",
    Buyer: "buyers",
}
LEAST_TREES_HA, MOST_TREES_HA = 1500, 7000  # outside this a count of trees is asked about (common practice)


def method_templates() -> list[Method]:
    """The ways of making a lot that a new farm begins from."""
    with resource("methods", "templates.toml").open("rb") as file:
        rows: list[dict[str, Any]] = tomllib.load(file)["method"]
    known = {f.name for f in fields(Method)}
    return [
        Method(**{"version": 1, **{name: None for name in known - {*row, "version"} if _may_be_none(name)}, **row})
        for row in rows
    ]


def _may_be_none(name: str) -> bool:
    return name in (
        "hours_low_h",
        "hours_high_h",
        "ph_low",
        "ph_high",
        "ph_target",
        "mass_max_c",
        "yeast_g_kg",
        "rinses_n",
    )


def begin_farm(path: Path, name: str, season: str, zone: str, *, first_day: str = "", last_day: str = "") -> OpenFarm:
    """A new season file of a farm: its name, the season's two figures, its time zone, the usual methods.

    Raises NotPossible for an empty name, a season that is not two figures, or a zone there is not;
    FileTrouble where the file cannot be made.
    """
    if not name.strip():
        raise NotPossible(N_("setup", "The farm needs a name; it stands on every paper."))
    if len(season) != 2 or not season.isdigit():
        raise NotPossible(N_("setup", "A season is two figures, like 25; “{typed}” is not.", typed=season))
    FarmTime(zone).local(0)  # a zone there is not raises its sentence
    farm = Farm(name.strip(), season, zone, first_day=first_day, last_day=last_day)
    methods = {f"{m.letter}{m.version}": m for m in method_templates()}
    return OpenFarm.create(path, Things(farm, methods=methods))


def free_path(folder: Path, name: str, season: str) -> Path:
    """A file name for a farm's season that is not taken: `la-ladera-26.season`, then `la-ladera-26-2.season`."""
    plain = unicodedata.normalize("NFKD", name).encode("ascii", "ignore").decode().casefold()
    stem = "-".join([*re.findall(r"[a-z0-9]+", plain), season])
    path, n = folder / f"{stem}{SUFFIX}", 2
    while path.exists():
        path, n = folder / f"{stem}-{n}{SUFFIX}", n + 1
    return path


def begin_season(
    folder: Path, name: str, season: str, zone: str, width: str, length: str, *, answers: dict[str, str] | None = None
) -> Path:
    """Begin a farm with what is known, and the first bed where its width and length [m] are; returns its new file.

    `zone` may be a part of its name. The file lies in `folder`, named after farm and season; none is written over.
    Raises NotPossible, Asked, FileTrouble; nothing is left behind then.
    """
    known = zones_like(zone)
    if not known:
        raise NotPossible(
            N_("setup", "There is no time zone like “{typed}”.", typed=zone),
            N_("setup", "Type a part of the nearest large town’s name."),
        )
    size_m = [value_of(read_number(text, "m", answers=answers), "m") for text in (width, length) if text.strip()]
    if len(size_m) == 1 or any(side <= 0 for side in size_m):
        raise NotPossible(N_("setup", "A bed needs its width and its length in metres; or leave both empty."))
    path = free_path(folder, name, season)
    farm = begin_farm(path, name, season, known[0])
    try:
        if size_m:
            save(farm, next_bed(farm, *size_m))
    finally:
        farm.close()
    return path


def key_of(thing: Thing) -> str:
    """Under which key a thing stands in its register."""
    return f"{thing.letter}{thing.version}" if isinstance(thing, Method) else thing.code


def save(farm: OpenFarm, thing: Thing, *, hand: Hand = Hand(), new: bool = False) -> Done:
    """Put a thing into its register, or change it. `new` refuses a code that is taken.

    Impossible by itself: no code, no area, more usable than gross volume, a method without a latest hour.
    Asked once: places that overlap on the plan, an absurd number of trees. A method's version that lots
    were made by is never changed: save it under the next version.
    """
    if not key_of(thing).strip():
        raise NotPossible(N_("setup", "It needs a code."))
    register = REGISTERS[type(thing)]
    rows: dict[str, Any] = getattr(farm.things, register)
    if new and key_of(thing) in rows:
        raise NotPossible(N_("setup", "{code} is taken already.", code=key_of(thing)))
    _CHECKS.get(type(thing), _fine)(farm, thing, hand)
    changed: Things = replace(farm.things, **cast(Any, {register: rows | {key_of(thing): thing}}))
    return farm.save_things(changed)


def save_farm(farm: OpenFarm, changed: Farm) -> Done:
    """Change the farm's own name, days or language of papers; zone and season stay once something is written."""
    now = farm.things.farm
    if farm.picture.book.by_id and (changed.zone, changed.season) != (now.zone, now.season):
        raise NotPossible(N_("setup", "Zone and season stay as they are once something is written."))
    if not changed.name.strip():
        raise NotPossible(N_("setup", "The farm needs a name; it stands on every paper."))
    return farm.save_things(replace(farm.things, farm=changed))


def next_version(farm: OpenFarm, method: Method) -> Method:
    """The same method under the next free version, ready to be changed."""
    taken = [m.version for m in farm.things.methods.values() if m.letter == method.letter]
    return replace(method, version=max(taken, default=0) + 1)


def _fine(farm: OpenFarm, thing: Any, hand: Hand) -> None:
    return None


def _block(farm: OpenFarm, block: Block, hand: Hand) -> None:
    if block.area_ha < 0 or block.low_m > block.high_m:
        raise NotPossible(N_("setup", "Block {code}: area or heights cannot be so.", code=block.code))
    if block.trees_n and block.area_ha:
        per_ha = block.trees_n / block.area_ha
        if not LEAST_TREES_HA <= per_ha <= MOST_TREES_HA:
            text = N_(
                "setup",
                "Block {code} would have {n} trees on a hectare. Is that right?",
                code=block.code,
                n=Num(per_ha),
            )
            ask(hand, "trees_n", f"trees {block.code}", text)
    boundaries.check(farm, block, hand)


def _person(farm: OpenFarm, person: Person, hand: Hand) -> None:
    this_year = farm.time.local(farm.written_now()).year
    if person.born is not None and not this_year - 110 <= person.born <= this_year:
        raise NotPossible(N_("setup", "Nobody at work was born in {year}.", year=person.born))
    if person.named and not person.name:
        raise NotPossible(N_("setup", "{code} has no name that could stand on papers.", code=person.code))


def _vessel(farm: OpenFarm, vessel: Vessel, hand: Hand) -> None:
    if vessel.gross_l <= 0 or vessel.usable_l <= 0:
        raise NotPossible(N_("setup", "Vessel {code} needs its volume in litres.", code=vessel.code))
    if vessel.usable_l > vessel.gross_l:
        raise NotPossible(
            N_(
                "setup",
                "Of {gross} not {usable} can be used.",
                gross=Num(vessel.gross_l, "L"),
                usable=Num(vessel.usable_l, "L"),
            )
        )


def _place(farm: OpenFarm, place: Place, hand: Hand) -> None:
    if place.width_m <= 0 or place.depth_m <= 0:
        raise NotPossible(N_("setup", "{code} needs its width and length in metres.", code=place.code))
    for other in farm.things.places.values():
        if other.code != place.code and overlap(place, other):
            text = N_("setup", "{a} would lie over {b} on the plan. Is that right?", a=place.code, b=other.code)
            ask(hand, "x_m", f"over {other.code}", text)


def overlap(a: Place, b: Place) -> bool:
    """Whether two places share ground on the plan."""
    wide = min(a.x_m + a.width_m, b.x_m + b.width_m) - max(a.x_m, b.x_m)
    deep = min(a.y_m + a.depth_m, b.y_m + b.depth_m) - max(a.y_m, b.y_m)
    return wide > 1e-6 and deep > 1e-6


def _method(farm: OpenFarm, method: Method, hand: Hand) -> None:
    if method.hours_low_h is not None and (method.hours_high_h is None or method.hours_high_h < method.hours_low_h):
        raise NotPossible(
            N_(
                "setup",
                "Method {letter} needs a latest hour: “until it smells right” is no limit.",
                letter=method.letter,
            )
        )
    made = [
        lot.code
        for lot in farm.picture.lots.values()
        if lot.birth and (lot.birth.method, lot.birth.method_version) == (method.letter, method.version)
    ]
    if made and farm.things.methods.get(key_of(method)) != method:
        raise NotPossible(
            N_(
                "setup",
                "Lots were made by version {n} of method {letter}, so it stays as it was.",
                n=method.version,
                letter=method.letter,
            ),
            N_("setup", "Save it under the next version."),
        )


def _tray(farm: OpenFarm, tray: Tray, hand: Hand) -> None:
    if tray.tare_g <= 0:
        raise NotPossible(N_("setup", "Tray {code} needs its empty weight in grams.", code=tray.code))


_CHECKS: dict[type, Callable[[OpenFarm, Any, Hand], None]] = {
    Block: _block,
    Vessel: _vessel,
    Place: _place,
    Method: _method,
    Tray: _tray,
    Person: _person,
}


def next_bed(farm: OpenFarm, width_m: float, depth_m: float, *, cover: str = "open", cover_min: float = 0.0) -> Place:
    """The next bed, beside the last one on the plan, with the next free number.

    Width and length [m], and how long covering it takes one person [min].
    """
    numbers = [int(code) for code in farm.things.places if code.isdigit()]
    beds = [p for p in farm.things.places.values() if p.kind == "bed"]
    x = max((p.x_m + p.width_m for p in beds), default=0.0) + 1.2
    y = beds[-1].y_m if beds else 4.0
    return Place(str(max(numbers, default=0) + 1), "bed", x, y, width_m, depth_m, cover, cover_min)
