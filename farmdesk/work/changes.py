"""What a verb has done: which entries it wrote, what it touched, and how to take it back."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from farmdesk.text import Text

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm


@dataclass(frozen=True, slots=True)
class Changes:
    """The lots and places touched; `things` when the farm's own registers were edited."""

    lots: frozenset[str] = frozenset()
    places: frozenset[str] = frozenset()
    things: bool = False

    def __or__(self, other: Changes) -> Changes:
        return Changes(self.lots | other.lots, self.places | other.places, self.things or other.things)


@dataclass(frozen=True)
class Done:
    """One act, written: its entries, what it changed, its name for the undo list, and the inverse verb."""

    changes: Changes
    entries: tuple[str, ...]
    label: Text
    inverse: Callable[[OpenFarm], Done] | None = None
    lot: str = ""


@dataclass(frozen=True)
class Hand:
    """Who writes, with which instrument, how sure, and what was answered to a question asked before."""

    who: str = ""
    instrument: str = ""
    mark: str = "measured"
    note: str = ""
    answers: dict[str, str] = field(default_factory=dict)
