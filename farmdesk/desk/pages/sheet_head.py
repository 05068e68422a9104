"""The head of a sheet as hands write it: lot by number, block by letter or place, half-day, day, hour, unit."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from farmdesk import clock
from farmdesk.desk.pages import Desk
from farmdesk.errors import NotPossible
from farmdesk.text import N_
from farmdesk.work.changes import Changes, Done
from farmdesk.work.weigh_grid import SheetKey

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

HALVES = {"1": "am", "2": "pm", "am": "am", "pm": "pm", "a": "am", "p": "pm"}
UNITS = {"1": "kg", "2": "lb", "3": "qq"}


def instants(desk: Desk) -> tuple[int | None, int]:
    """At which instant [UTC s] to ask for a sheet, and which is now: at the present all that is known counts, so that
    a row is seen the moment it is written. A practice season has rows from after the present: they are not known.
    """
    now = max(desk.as_of, clock.now()) if desk.at_present else desk.as_of
    return None if desk.at_present and now >= desk.latest else now, now


def read_head(farm: OpenFarm, values: dict[str, str], today: date) -> tuple[SheetKey, int | None, str]:
    """The head of a sheet as typed: which one, when it was weighed [UTC s, None: its usual hour], its unit.

    Raises NotPossible for what is not known.
    """
    from farmdesk.work.picking import read_lot

    lot = read_lot(farm, values["lot"])
    blocks = list(farm.things.blocks)
    block = values["block"].upper()
    if block.isdigit() and 0 < int(block) <= len(blocks):
        block = blocks[int(block) - 1]
    if blocks and block not in blocks:  # a farm that has written down no blocks yet weighs in all the same
        raise NotPossible(N_("picking", "The farm has no block {block}.", block=block or "?"))
    half = HALVES.get(values["half"].lower())
    if half is None:
        raise NotPossible(N_("picking", "A half-day is 1 for the morning or 2 for the afternoon."))
    day = read_day(values["day"], today)
    hour = farm.time.typed(day, values["hour"]) if values["hour"] else None
    unit = UNITS.get(values["unit"], values["unit"].lower() or "kg")
    if unit not in UNITS.values():
        raise NotPossible(N_("picking", "A sheet is in kg, lb or qq."))
    return SheetKey(lot, block, half, day), hour, unit


def read_day(typed: str, today: date) -> date:
    """A day as typed, the newest that is not ahead: `14`, `14.1`, `9/12`. Raises NotPossible."""
    parts = typed.replace("/", ".").replace("-", ".").split(".")
    try:
        day, month = int(parts[0]), int(parts[1]) if len(parts) > 1 and parts[1] else 0
        for back in range(13):
            year, at = divmod(today.year * 12 + today.month - 1 - back, 12)
            if month in (0, at + 1):
                found = date(year, at + 1, day)
                if found <= today:
                    return found
    except (ValueError, IndexError):
        pass
    raise NotPossible(N_("picking", "“{typed}” is no day; write it like 14 or 14.1.", typed=typed))


def joined(first: Done, second: Done) -> Done:
    """Two acts of one form as one, named by the first."""
    if not first.entries:
        return Done(second.changes, second.entries, first.label, second.inverse, second.lot)
    ids = (*first.entries, *second.entries)
    return Done(first.changes | second.changes, ids, first.label, lambda farm: farm.strike(ids), second.lot)


def nothing(lot: str) -> Done:
    """A form that was left empty."""
    return Done(Changes(), (), N_("picking", "no total written"), None, lot)
