"""The farm at an instant, as it was known at an instant.

`fold(entries, things, as_of, known_at)` is the one way in; `Picture.after(entries)` is the same fold with
one row more, made again only where the row touches it.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from itertools import pairwise

from farmdesk.clock import FarmTime
from farmdesk.picture.entries import B, Correction, Cover, Entry, Plan, Weather
from farmdesk.picture.fold import NEVER, Book, Doubt, LotPicture, Stay
from farmdesk.picture.things import Farm, Things
from farmdesk.text import N_


@dataclass(frozen=True, eq=False)
class Picture:
    """All lots, and what concerns no lot (weather, covers, instruments), at `as_of` as known at `known_at`."""

    things: Things
    as_of: int
    known_at: int
    lots: dict[str, LotPicture]
    book: Book
    _general: list[list[Entry]] = field(default_factory=list, repr=False)  # kept once asked for
    _stays: dict[str, list[tuple[str, Stay]]] = field(default_factory=dict, repr=False)

    @property
    def time(self) -> FarmTime:
        """The farm's own time."""
        return FarmTime(self.things.farm.zone, self.things.farm.day_starts_h)

    def after(self, entries: Iterable[Entry], things: Things | None = None) -> Picture:
        """The picture with these entries added."""
        book, touched = self.book.after(entries)
        lots = self.lots | {code: book.lot(code, self.as_of) for code in touched}
        lots = {code: lot for code, lot in lots.items() if lot.entries or lot.struck}
        return Picture(things or self.things, self.as_of, self.known_at, lots, book)

    def at(self, as_of: int = NEVER, known_at: int = NEVER) -> Picture:
        """The same notebook seen at another instant, or as known at another one."""
        book = self.book
        if known_at != book.known_at:
            if known_at > book.known_at:
                raise ValueError("a picture cannot be made to know more than its book")
            book = Book(book.by_id.values(), known_at)
        return _pictured(book, self.things, as_of, known_at)

    @property
    def general(self) -> list[Entry]:
        """Live entries that concern no lot, in order of happening, up to `as_of`."""
        if not self._general:
            struck, as_of = self.book.struck, self.as_of
            self._general.append([e for e in self.book.general if e.happened_utc_s <= as_of and e.id not in struck])
        return self._general[0]

    def general_of(self, kind: type[B]) -> list[Entry[B]]:
        """The entries of one kind that concern no lot, in order of happening."""
        return [e for e in self.general if type(e.body) is kind]  # type: ignore[misc]

    @property
    def weather(self) -> dict[str, Weather]:
        """The weather by day (ISO); of two rows for a day the later written counts."""
        rows = sorted(self.general_of(Weather), key=lambda e: (e.written_utc_s, e.id))
        return {e.body.day: e.body for e in rows}

    @property
    def corrections(self) -> list[Correction]:
        """Corrections of instruments, known by now. They hold for the past too, so `as_of` does not hide them."""
        struck = self.book.struck
        return [e.body for e in self.book.general if type(e.body) is Correction and e.id not in struck]

    @property
    def covers(self) -> list[Entry[Cover]]:
        """Covering and opening of beds, in order."""
        return self.general_of(Cover)

    @property
    def plans(self) -> list[Entry[Plan]]:
        """Plans for lots to come, the newest for each code; a lot that has begun has none any more."""
        newest: dict[str, Entry[Plan]] = {}
        for lot in self.lots.values():
            if lot.birth is None:
                for entry in lot.of(Plan):
                    newest[lot.code] = entry
        return list(newest.values())

    def stays_at(self, place: str) -> list[tuple[str, Stay]]:
        """Which lots lay at a place, and when: (code, stay) in order of time."""
        if not self._stays:
            for lot in self.lots.values():
                for stay in lot.stays:
                    self._stays.setdefault(stay.place, []).append((lot.code, stay))
            for rows in self._stays.values():
                rows.sort(key=lambda row: (row[1].from_utc_s, row[0]))
        return self._stays.get(place, [])

    def lying_at(self, place: str) -> list[str]:
        """The codes of the lots that lie at a place now."""
        return [code for code, stay in self.stays_at(place) if stay.until_utc_s is None]

    @property
    def doubts(self) -> list[Doubt]:
        """Everything that cannot be so, of all lots, oldest first."""
        found = [doubt for lot in self.lots.values() for doubt in lot.doubts]
        found += self._two_lots()
        return sorted(found, key=lambda d: (d.at_utc_s, d.lot, d.kind))

    def _two_lots(self) -> list[Doubt]:
        """Two lots on one bed, in one vessel or on one cell at a time, without having been joined."""
        found = []
        for place in (*self.things.places, *self.things.vessels):
            rows = self.stays_at(place)
            for (code, stay), (other, later) in pairwise(rows):
                if code != other and later.from_utc_s < (stay.until_utc_s or NEVER):
                    text = N_("doubts", "{a} and {b} both lie at {place} in the books.", a=code, b=other, place=place)
                    found.append(Doubt("two lots", other, place, later.from_utc_s, text, ()))
        return found


def _pictured(book: Book, things: Things, as_of: int, known_at: int) -> Picture:
    lots = {code: book.lot(code, as_of) for code in book.by_lot}
    return Picture(things, as_of, known_at, {c: lot for c, lot in lots.items() if lot.entries or lot.struck}, book)


def fold(entries: Iterable[Entry], things: Things | None = None, as_of: int = NEVER, known_at: int = NEVER) -> Picture:
    """Fold a notebook: the farm as it was at `as_of` [UTC s], as it was known at `known_at` [UTC s]."""
    return _pictured(Book(entries, known_at), things or Things(Farm("", "")), as_of, known_at)
