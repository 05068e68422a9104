"""Figures the farm may change, by name, with what stands where none is set."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from farmdesk.errors import NotPossible
from farmdesk.picture.things import Things
from farmdesk.text import N_, Text
from farmdesk.units import read_number, value_of
from farmdesk.work.changes import Done, Hand

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

DEFAULTS = {
    "crew": "3",
    "picking_local_kg": "",
    "picking_block_local_kg": "",
    "picking_bonus_local_kg": "0",
    "picking_bonus_from_pct": "95",
    "unripe_limit_pct": "2.5",  # trouble from about 2.5 % unripe: Cenicafé 51(2), 2000
    "day_least_local": "0",
    "notes_local": "500 200 100 50 20 10 5 2 1 0.50 0.20 0.10 0.05",
    "weeks_from_flower": "32",  # 30 to 34 weeks from flowering (Rendón-Sáenz et al. 2008, Cenicafé 59(3)); local
    "round_days_low": "14",
    "round_days_high": "21",
    "room_m3": "",
    "box_kg": "30",
    "mill_least_kg": "",
    "sleep_from_h": "20",  # common practice, no source
    "sleep_until_h": "4",
    "bulk_cherry_kg_l": "0.62",  # bulk weights of a farm that has not weighed its own (common practice, no source)
    "bulk_pulped_kg_l": "0.85",
    "pulp_pct": "41",  # of the cherry's weight goes with the pulp: 40 to 43 (general extension figure, from memory)
}
MOST_PULP_PCT = 90.0  # something is left of every cherry
NUMBER, NUMBERS, TEXT, BLOCKS = "number", "numbers", "text", "blocks"


@dataclass(frozen=True, slots=True)
class Figure:
    """A figure that a farm may set: its name among the settings, what it is, its unit, and how it is written."""

    name: str
    label: Text
    unit: Text | None = None
    kind: str = NUMBER


_MONEY_KG, _MONEY = N_("settings", "money for a kg"), N_("settings", "money")
_LITRE, _DAYS, _KG = N_("settings", "kg a litre"), N_("settings", "days"), N_("settings", "kg")
_ROOM = N_("settings", "m³")
_PERCENT, _HOUR = N_("settings", "%"), N_("settings", "hour of the day")
_READ_IN = {
    _PERCENT: "%",
    _KG: "kg",
    _DAYS: "d",
    _LITRE: "kg/L",
    _HOUR: "h",
    _ROOM: "m³",
}  # as it may be written behind the number
FIGURES = (
    Figure("local_money", N_("settings", "sign of the money"), kind=TEXT),
    Figure("picking_local_kg", N_("settings", "picking, for ripe cherry"), _MONEY_KG),
    Figure("picking_block_local_kg", N_("settings", "other prices by block: D 7.20 E 6.80"), _MONEY_KG, BLOCKS),
    Figure("picking_bonus_local_kg", N_("settings", "bonus for a clean picking"), _MONEY_KG),
    Figure("picking_bonus_from_pct", N_("settings", "bonus from so much ripe"), _PERCENT),
    Figure("day_least_local", N_("settings", "least pay for a day of picking"), _MONEY),
    Figure("day_work_local", N_("settings", "day work"), _MONEY),
    Figure("notes_local", N_("settings", "notes and coins, from the largest"), _MONEY, NUMBERS),
    Figure("unripe_limit_pct", N_("settings", "green fruit at most"), _PERCENT),
    Figure("weeks_from_flower", N_("settings", "from flowering to harvest"), N_("settings", "weeks")),
    Figure("round_days_low", N_("settings", "from one round to the next, at least"), _DAYS),
    Figure("round_days_high", N_("settings", "from one round to the next, at most"), _DAYS),
    Figure("bulk_cherry_kg_l", N_("settings", "whole cherry"), _LITRE),
    Figure("bulk_pulped_kg_l", N_("settings", "pulped coffee"), _LITRE),
    Figure("pulp_pct", N_("settings", "of the cherry goes with the pulp"), _PERCENT),
    Figure("box_kg", N_("settings", "a box of green coffee"), _KG),
    Figure("mill_least_kg", N_("settings", "the mill takes at least, dry"), _KG),
    Figure("room_m3", N_("settings", "the closed room where vessels stand"), _ROOM),
    Figure("crew", N_("settings", "hands that cover the beds"), N_("settings", "people")),
    Figure("sleep_from_h", N_("settings", "people sleep from"), _HOUR),
    Figure("sleep_until_h", N_("settings", "until"), _HOUR),
)


def stands(things: Things, name: str) -> str:
    """What stands for a figure now, as a hand would type it: the farm's own, or what is common; empty for neither."""
    return things.settings.get(name, DEFAULTS.get(name, ""))


def save_figure(farm: OpenFarm, name: str, typed: str, hand: Hand = Hand()) -> Done:
    """Set one of the figures above; nothing typed takes the farm's own away, and what is common stands again.

    Raises NotPossible for a figure that is not there or what it cannot be, Asked for a number that may be two.
    """
    figure = next((one for one in FIGURES if one.name == name), None)
    if figure is None:
        raise NotPossible(N_("settings", "There is no such figure; type its number or the beginning of its name."))
    settings = {key: value for key, value in farm.things.settings.items() if key != name}
    if typed.strip():
        settings[name] = _checked(farm, figure, typed, hand)
    done = farm.save_things(replace(farm.things, settings=settings))
    label = N_(
        "settings", "{figure}: {value}", figure=figure.label, value=typed.strip() or N_("settings", "as is common")
    )
    return Done(done.changes, done.entries, label, done.inverse)


def _checked(farm: OpenFarm, figure: Figure, typed: str, hand: Hand) -> str:
    if figure.kind == TEXT:
        return typed.strip()
    if figure.kind == BLOCKS:
        return _by_block(farm, figure, typed, hand)
    parts = typed.split() if figure.kind == NUMBERS else [typed]
    own = _READ_IN.get(figure.unit, "") if figure.unit else ""
    unit = sign_of_money(farm.things) if "local" in figure.name else own
    values = [value_of(read_number(part, answers=hand.answers), unit) for part in parts]
    most = 100.0 if figure.unit == _PERCENT else 24.0 if figure.unit == _HOUR else float("inf")
    if not all(0 <= value <= most for value in values) or (figure.kind == NUMBERS and not all(values)):
        raise NotPossible(N_("settings", "{figure}: “{typed}” cannot be.", figure=figure.label, typed=typed.strip()))
    return " ".join(f"{value:.10g}" for value in values)


def _by_block(farm: OpenFarm, figure: Figure, typed: str, hand: Hand) -> str:
    """Blocks and their numbers in turn, `D 7.20 E 6.80`."""
    parts = typed.replace(";", " ").split()
    codes = [code.upper() for code in parts[::2]]
    if len(parts) % 2 or not set(codes) <= farm.things.blocks.keys():
        raise NotPossible(N_("settings", "A block and its number, and so on, like D 7.20 E 6.80."))
    values = [read_number(part, answers=hand.answers).value for part in parts[1::2]]
    if min(values) < 0:
        raise NotPossible(N_("settings", "{figure}: “{typed}” cannot be.", figure=figure.label, typed=typed.strip()))
    return " ".join(f"{code} {value:.10g}" for code, value in zip(codes, values, strict=True))


def by_block(things: Things, name: str) -> dict[str, float]:
    """A setting that gives some blocks a number of their own."""
    parts = things.settings.get(name, DEFAULTS.get(name, "")).split()
    return {code: float(value) for code, value in zip(parts[::2], parts[1::2], strict=True)}


def number(things: Things, name: str) -> float | None:
    """A setting as a number; None where neither the farm nor the defaults set one. Raises NotPossible."""
    text = things.settings.get(name, DEFAULTS.get(name, "")).strip()
    if not text:
        return None
    try:
        return float(text.replace(",", "."))
    except ValueError:
        raise NotPossible(
            N_("settings", "The setting {name} is “{text}”, which is not a number.", name=name, text=text)
        ) from None


def numbers(things: Things, name: str) -> list[float]:
    """A setting that lists several numbers. Raises NotPossible."""
    text = things.settings.get(name, DEFAULTS.get(name, ""))
    try:
        return [float(part.replace(",", ".")) for part in text.split()]
    except ValueError:
        raise NotPossible(
            N_("settings", "The setting {name} is “{text}”, which is no list of numbers.", name=name, text=text)
        ) from None


def kg_a_litre(things: Things, whole: bool) -> float:
    """Kilograms of cherry that fill a litre [kg/L]: whole, or after pulping, for vessels are filled by cherry weight."""
    if whole:
        return number(things, "bulk_cherry_kg_l") or 1.0
    return (number(things, "bulk_pulped_kg_l") or 1.0) / (
        1 - min(number(things, "pulp_pct") or 0.0, MOST_PULP_PCT) / 100
    )


def sign_of_money(things: Things) -> str:
    """How the farm's money is written behind a number; empty where it has not said."""
    return things.settings.get("local_money", "")


def asleep_h(things: Things) -> tuple[float, float]:
    """The hours of the day [h] from and until which people sleep."""
    return number(things, "sleep_from_h") or 0.0, number(things, "sleep_until_h") or 0.0
