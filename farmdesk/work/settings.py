"""Figures the farm may change, by name, with what stands where none is set."""

from __future__ import annotations

from farmdesk.errors import NotPossible
from farmdesk.picture.things import Things
from farmdesk.text import N_

DEFAULTS = {
    "crew": "3",
    "picking_local_kg": "",
    "picking_bonus_local_kg": "0",
    "picking_bonus_from_pct": "95",
    "unripe_limit_pct": "2.5",  # trouble from about 2.5 % unripe: Cenicafé 51(2), 2000
    "day_least_local": "0",
    "notes_local": "500 200 100 50 20 10 5 2 1 0.50 0.20 0.10 0.05",
    "weeks_from_flower": "32",  # 30 to 34 weeks from flowering (Rendón-Sáenz et al. 2008, Cenicafé 59(3)); local
    "round_days_low": "14",
    "round_days_high": "21",
    "box_kg": "30",
    "mill_least_kg": "0",
    "bulk_cherry_kg_l": "0.62",  # bulk weights of a farm that has not weighed its own (common practice, no source)
    "bulk_pulped_kg_l": "0.85",
    "pulp_pct": "41",  # of the cherry's weight goes with the pulp: 40 to 43 (general extension figure, from memory)
}


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
    return (number(things, "bulk_pulped_kg_l") or 1.0) / (1 - (number(things, "pulp_pct") or 0.0) / 100)
