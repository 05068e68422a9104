"""The fold: from the notebook's entries to the picture of one lot, and of the farm.

Pure. Each lot is folded by itself, in the order in which things happened (not in which they were
written), so one more entry costs only the lots it speaks of. Folding never fails: what is impossible
against the books stays as a doubt with the entries that made it, and heals when the missing paper comes.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from itertools import groupby
from operator import attrgetter
from typing import NamedTuple

from farmdesk.picture.entries import ALL, REST, B, Birth, Entry, Flow, Plan, Strike, lots_of
from farmdesk.text import N_, Text, kg

NEVER = 1 << 62


class Moved(NamedTuple):
    """An entry's postings once filled in: (account, grams [g]) of this lot; the book's own order."""

    at_utc_s: int
    act: str
    lines: tuple[tuple[str, int], ...]
    entry: str


class Stay(NamedTuple):
    """A heap lay at a place from an instant to another; None while it still lies there."""

    place: str
    from_utc_s: int
    until_utc_s: int | None


@dataclass(frozen=True, slots=True)
class Doubt:
    """Something that cannot be so, or is not known; it heals when the missing paper is typed."""

    kind: str  # "below zero", "empty", "unborn", "two lots", "overweight", ...
    lot: str
    place: str
    at_utc_s: int
    text: Text
    entries: tuple[str, ...]


@dataclass(frozen=True, eq=False)
class LotPicture:
    """One lot at an instant, as known at an instant. Grams [g] by account; entries in order of happening."""

    code: str
    birth: Birth | None
    born_utc_s: int
    balance: dict[str, int]
    trail: tuple[Moved, ...]
    stays: tuple[Stay, ...]
    entries: tuple[Entry, ...]
    struck: tuple[Entry, ...]
    doubts: tuple[Doubt, ...]
    _by_kind: dict[str, dict[type, list[Entry]]] = field(default_factory=dict, repr=False)

    @property
    def heaps(self) -> dict[str, int]:
        """Grams [g] that lie at places of the farm, the mill or the green store; empty heaps left out."""
        return {account: grams for account, grams in self.balance.items() if grams and account[0] not in "<>"}

    @property
    def streams(self) -> dict[str, int]:
        """Grams [g] that have left in named streams."""
        return {account: grams for account, grams in self.balance.items() if account[0] == ">"}

    @property
    def delivered_g(self) -> int:
        """Grams [g] of cherry that came from the field."""
        return -self.balance.get("<field", 0)

    def of(self, kind: type[B]) -> list[Entry[B]]:
        """The entries of one kind, in order of happening."""
        by_kind: dict[type, list[Entry]] | None = self._by_kind.get("all")
        if by_kind is None:
            by_kind = {}
            for entry in self.entries:
                by_kind.setdefault(type(entry.body), []).append(entry)
            self._by_kind["all"] = by_kind
        return by_kind.get(kind, [])  # type: ignore[return-value]

    def on(self, at_utc_s: int) -> dict[str, int]:
        """The heaps and streams [g] as the books stood at an earlier instant [UTC s]."""
        balance: dict[str, int] = {}
        for moved in self.trail:
            if moved.at_utc_s > at_utc_s:
                break
            for account, grams in moved.lines:
                balance[account] = balance.get(account, 0) + grams
        return {account: grams for account, grams in balance.items() if grams}


_moment = attrgetter("happened_utc_s", "body.rank")


def in_order(entries: Iterable[Entry]) -> list[Entry]:
    """Entries in order of happening. What happened at one instant is put in an order that does not
    depend on when it was written: by rank of kind, then by content.
    """
    ordered = sorted(entries, key=_moment)
    for i in range(1, len(ordered)):
        if _moment(ordered[i]) == _moment(ordered[i - 1]):
            break
    else:
        return ordered
    found: list[Entry] = []
    for _, same in groupby(ordered, key=_moment):
        run = list(same)
        found += sorted(run, key=lambda e: (repr(e.body), e.instrument, e.id)) if len(run) > 1 else run
    return found


def fold_lot(code: str, entries: Sequence[Entry], struck: Sequence[Entry] = (), as_of: int = NEVER) -> LotPicture:
    """Fold the live entries of one lot, already in order of happening, up to an instant [UTC s]."""
    balance: dict[str, int] = {}
    trail: list[Moved] = []
    since: dict[str, int] = {}
    stays: list[Stay] = []
    doubts: list[Doubt] = []
    birth: Birth | None = None
    born = NEVER
    seen = len(entries)
    for index, entry in enumerate(entries):
        at, body = entry.happened_utc_s, entry.body
        if at > as_of:
            seen = index
            break
        kind = type(body)
        if kind is Birth:
            if birth is None:
                birth, born = body, at  # type: ignore[assignment]
            continue
        postings = getattr(body, "postings", None)
        if not postings:
            continue
        if kind is Flow:
            lines = _filled(code, body, balance, entry, doubts)  # type: ignore[arg-type]
            act = body.act  # type: ignore[union-attr]
        else:
            lines = tuple((p[1], p[2]) for p in postings)
            act = kind.__name__.lower()
        if birth is None:
            doubts.append(_unborn(code, entry))
        for account, grams in lines:
            before = balance.get(account, 0)
            after = balance[account] = before + grams
            if account[0] in "<>":
                continue
            if after < 0 and grams < 0:
                doubts.append(_below_zero(code, account, after, entry))
            if before <= 0 < after:
                since[account] = at
            elif after <= 0 < before:
                stays.append(Stay(account, since.pop(account, at), at))
        trail.append(Moved(at, act, lines, entry.id))
    stays.extend(Stay(account, from_utc_s, None) for account, from_utc_s in since.items())
    if birth is None and not doubts:  # a plan comes before its lot
        doubts += [_unborn(code, entry) for entry in entries[:seen] if type(entry.body) is not Plan][:1]
    return LotPicture(
        code, birth, born, balance, tuple(trail), tuple(sorted(stays, key=_stay_order)),
        tuple(entries[:seen]), tuple(struck), tuple(doubts),
    )  # fmt: skip


def _stay_order(stay: Stay) -> tuple[int, str, int]:
    return stay.from_utc_s, stay.place, stay.until_utc_s or NEVER


def _filled(
    code: str, body: Flow, balance: dict[str, int], entry: Entry, doubts: list[Doubt]
) -> tuple[tuple[str, int], ...]:
    """A flow's lines for this lot, with ALL and REST filled in so that they sum to zero."""
    lines: list[tuple[str, int]] = []
    rests: list[str] = []
    carried = 0
    for lot, account, grams, way, _ in body.postings:
        if lot != code:
            carried += grams
            continue
        if way == ALL:
            grams = -balance.get(account, 0)
            if grams >= 0:
                doubts.append(_empty(code, account, entry))
        elif way == REST:
            rests.append(account)
            continue
        carried += grams
        lines.append((account, grams))
    if rests:
        share, left = divmod(-carried, len(rests))
        for i, account in enumerate(rests):
            rest = share + (1 if i < left else 0)
            if rest < 0 and account[0] == ">":
                doubts.append(_overweight(code, account, -rest, entry))
            if rest:
                lines.append((account, rest))
    return tuple(lines)


def _unborn(code: str, entry: Entry) -> Doubt:
    text = N_("doubts", "{lot}: written before the lot was made; its beginning is missing.", lot=code)
    return Doubt("unborn", code, getattr(entry.body, "place", ""), entry.happened_utc_s, text, (entry.id,))


def _below_zero(code: str, account: str, grams: int, entry: Entry) -> Doubt:
    text = N_(
        "doubts",
        "{lot}: {short} more left {place} than the books hold; a paper is missing.",
        lot=code,
        short=kg(-grams, 1),
        place=account,
    )
    return Doubt("below zero", code, account, entry.happened_utc_s, text, (entry.id,))


def _empty(code: str, account: str, entry: Entry) -> Doubt:
    text = N_(
        "doubts", "{lot}: nothing lies at {place} in the books, but it was moved from there.", lot=code, place=account
    )
    return Doubt("empty", code, account, entry.happened_utc_s, text, (entry.id,))


def _overweight(code: str, account: str, grams: int, entry: Entry) -> Doubt:
    text = N_("doubts", "{lot}: weighed {more} more than the books hold there.", lot=code, more=kg(grams, 1))
    return Doubt("overweight", code, account, entry.happened_utc_s, text, (entry.id,))


def struck_by(strikes: Iterable[Entry[Strike]]) -> set[str]:
    """The ids that are struck: a strike counts unless a later live strike strikes it in turn."""
    struck: set[str] = set()
    for strike in sorted(strikes, key=lambda e: (e.written_utc_s, e.id), reverse=True):
        if strike.id not in struck:
            struck.add(strike.body.target)
    return struck


class Book:
    """The entries, grouped by lot and kept in order of happening; `known_at` hides what was written later.

    Immutable by habit: `after` makes a new book that shares every untouched group.
    """

    __slots__ = ("by_id", "by_lot", "general", "known_at", "last_written_utc_s", "strikes", "struck")

    def __init__(self, entries: Iterable[Entry], known_at: int = NEVER) -> None:
        self.known_at = known_at
        known = [entry for entry in entries if entry.written_utc_s <= known_at]
        self.by_id = {entry.id: entry for entry in known}
        self.last_written_utc_s = max((entry.written_utc_s for entry in known), default=0)
        self.strikes: list[Entry[Strike]] = [e for e in known if type(e.body) is Strike]  # type: ignore[misc]
        self.struck = struck_by(self.strikes)
        groups: dict[str, list[Entry]] = {}
        general: list[Entry] = []
        for entry in known:
            lots = lots_of(entry.body)
            if not lots:
                general.append(entry)
            for lot in lots:
                group = groups.get(lot)
                if group is None:
                    groups[lot] = [entry]
                else:
                    group.append(entry)
        self.by_lot = {lot: in_order(group) for lot, group in groups.items()}
        self.general = in_order(general)

    def after(self, entries: Iterable[Entry]) -> tuple[Book, set[str]]:
        """The book with these entries added, and the codes of the lots they touch."""
        new = [entry for entry in entries if entry.written_utc_s <= self.known_at and entry.id not in self.by_id]
        book = Book.__new__(Book)
        book.known_at = self.known_at
        book.by_id = self.by_id | {entry.id: entry for entry in new}
        book.last_written_utc_s = max([self.last_written_utc_s, *(entry.written_utc_s for entry in new)])
        book.strikes = [*self.strikes, *(e for e in new if type(e.body) is Strike)]  # type: ignore[list-item]
        book.struck = struck_by(book.strikes) if len(book.strikes) > len(self.strikes) else self.struck
        groups: dict[str, list[Entry]] = {}
        general: list[Entry] = []
        for entry in new:
            lots = lots_of(entry.body)
            if not lots:
                general.append(entry)
            for lot in lots:
                groups.setdefault(lot, []).append(entry)
        book.by_lot = self.by_lot | {
            lot: in_order([*self.by_lot.get(lot, ()), *group]) for lot, group in groups.items()
        }
        book.general = in_order([*self.general, *general]) if general else self.general
        touched = set(groups)
        for changed in book.struck ^ self.struck:
            if changed in book.by_id:
                touched.update(lots_of(book.by_id[changed].body))
        return book, touched

    def lot(self, code: str, as_of: int = NEVER) -> LotPicture:
        """The picture of one lot."""
        group = self.by_lot.get(code, [])
        if not self.struck:
            return fold_lot(code, group, (), as_of)
        live = [entry for entry in group if entry.id not in self.struck]
        gone = [entry for entry in group if entry.id in self.struck] if len(live) < len(group) else ()
        return fold_lot(code, live, gone, as_of)
