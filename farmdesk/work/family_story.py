"""A lot's family tree both ways: blocks and half-days it came from, lots, samples and sales it went to."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date

from farmdesk.errors import NotPossible
from farmdesk.picture.codes import check_character, read_code
from farmdesk.picture.entries import INTAKE, RETAINED, STORE, Parcel, Sale, WeighIn
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.measures import family
from farmdesk.picture.picture import Picture
from farmdesk.picture.things import Block
from farmdesk.text import N_, Day, Listing, Text, kg, pct
from farmdesk.work.farm import OpenFarm
from farmdesk.work.forecasts import now_of
from farmdesk.work.portioning import Share, ancestors, block_shares, descendants, lots_of_block, parents, picked_when
from farmdesk.work.portions import portions


@dataclass(frozen=True, slots=True)
class Filling:
    """A vessel was filled at an instant [UTC s] with grams [g] of these blocks (shares that sum to one)."""

    at_utc_s: int
    grams: int
    shares: Mapping[str, float]


@dataclass(frozen=True, slots=True)
class Mixed:
    """What a vessel holds of one lot: its fillings in order, and each block's share of all of them."""

    vessel: str
    fillings: tuple[Filling, ...]
    shares: Mapping[str, float]


@dataclass(frozen=True, slots=True)
class Heap:
    """A heap that may be merged or split: grams [g] of a lot at a place, its moisture [fraction wet basis]."""

    lot: str
    place: str
    grams: int
    moisture_wb_frac: float | None


@dataclass(frozen=True, slots=True)
class Out:
    """Where coffee of the lot went outside the farm: to whom, grams [g], when."""

    text: Text
    grams: int


@dataclass(frozen=True, eq=False)
class FamilyStory:
    """Everything the page shows of one lot."""

    at_utc_s: int
    code: str
    check: str
    headline: Text
    grams: int
    blocks: tuple[tuple[Share, Block | None], ...]
    parents: tuple[Share, ...]  # direct ones
    forebears: tuple[Share, ...]  # all, with their share of this lot
    picked: tuple[tuple[str, date, Mapping[str, int]], ...]  # lot, farm day, block -> grams
    children: tuple[Share, ...]
    later: tuple[Share, ...]
    outs: tuple[Out, ...]
    mixed: tuple[Mixed, ...]
    heaps: tuple[Heap, ...]
    status: Text
    with_blocks: Mapping[str, tuple[Share, ...]] = field(default_factory=dict)  # block -> all lots that hold it
    matrix: tuple[tuple[str, float, Mapping[str, float]], ...] = ()  # parent, its share, its blocks' shares


def family_story(farm: OpenFarm, code: str, at_utc_s: int | None = None) -> FamilyStory:
    """The family of a lot at an instant [UTC s]. Raises NotPossible for a lot there is not."""
    picture = farm.seen(at_utc_s)
    code = read_code(code)
    lot = picture.lots.get(code)
    if lot is None:
        raise NotPossible(N_("lots", "There is no lot {code} in this season at this time.", code=code))
    shares = block_shares(picture, code)
    blocks = tuple((share, picture.things.blocks.get(share.code)) for share in shares)
    children = family(lot)[1]
    all_out = sum(children.values())
    direct = tuple(parents(picture, lot))
    matrix = tuple(
        (share.code, share.share_frac, {b.code: b.share_frac for b in block_shares(picture, share.code)})
        for share in direct
    )
    return FamilyStory(
        now_of(picture), code, check_character(code), _headline(shares, direct), sum(lot.heaps.values()), blocks,
        direct, tuple(ancestors(picture, code)), _picked(picture, code),
        tuple(Share(c, g / all_out, g) for c, g in children.items()), tuple(descendants(picture, code)),
        _outs(picture, lot), vessel_blocks(picture, lot), _heaps(picture), _status(picture, blocks),
        {share.code: tuple(lots_of_block(picture, share.code)) for share in shares}, matrix,
    )  # fmt: skip


def _headline(shares: Sequence[Share], parents: Sequence[Share]) -> Text:
    if not shares:
        return N_("family", "Nothing was weighed in yet.")
    said = Listing(
        tuple(N_("family", "block {block} {share}", block=s.code, share=pct(s.share_frac, 0)) for s in shares)
    )
    if parents:
        codes = Listing(tuple(s.code for s in parents), " + ")
        return N_("family", "{blocks}; of {parents}", blocks=said, parents=codes)
    return N_("family", "{blocks}", blocks=said)


def _picked(picture: Picture, code: str) -> tuple[tuple[str, date, Mapping[str, int]], ...]:
    rows = []
    for root, iso in picked_when(picture, code):
        day = date.fromisoformat(iso)
        sums: dict[str, int] = {}
        for e in picture.lots[root].of(WeighIn):
            if picture.time.farm_day(e.happened_utc_s) == day:
                sums[e.body.block] = sums.get(e.body.block, 0) + e.body.gross_g - e.body.tare_g
        rows.append((root, day, sums))
    return tuple(rows)


def _outs(picture: Picture, lot: LotPicture) -> tuple[Out, ...]:
    """Samples and sales, and what is kept back."""
    local = picture.time.calendar_day
    found = []
    for sale in lot.of(Sale):
        day = Day(local(sale.happened_utc_s))
        found.append(Out(N_("family", "sold to {buyer}, {day}", buyer=sale.body.buyer, day=day), sale.body.grams))
    for parcel in lot.of(Parcel):
        day = Day(local(parcel.happened_utc_s))
        found.append(Out(N_("family", "sample to {buyer}, {day}", buyer=parcel.body.buyer, day=day), parcel.body.grams))
    if kept := lot.balance.get(RETAINED, 0):
        found.append(Out(N_("family", "kept back"), kept))
    return tuple(found)


def _heaps(picture: Picture) -> tuple[Heap, ...]:
    rows = []
    for lot in picture.lots.values():
        wet = {p.place: p.moisture.wb_frac if p.moisture else None for p in portions(picture, lot)}
        rows += [Heap(lot.code, place, grams, wet.get(place)) for place, grams in lot.heaps.items() if grams > 0]
    return tuple(sorted(rows, key=lambda heap: (heap.lot, heap.place)))


def _status(picture: Picture, blocks: Sequence[tuple[Share, Block | None]]) -> Text:
    """Organic status follows the blocks: where they differ the lot has none."""
    states = {block.organic for _, block in blocks if block is not None}
    if states == {"yes"}:
        return N_("family", "organic: all its blocks are certified")
    if "yes" in states:
        return N_("family", "not organic: its blocks differ in status")
    return N_("family", "not organic")


def vessel_blocks(picture: Picture, lot: LotPicture) -> tuple[Mixed, ...]:
    """Which blocks lie in which vessel, from the order of weighing, sorting and filling.

    What waits at the intake is taken as mixed: a filling takes each block in proportion to what waits then.
    """
    waits: dict[str, float] = {}
    fillings: dict[str, list[Filling]] = {}
    for moved in lot.trail:
        came = sum(g for account, g in moved.lines if account == INTAKE)
        entry = picture.book.by_id.get(moved.entry)
        if entry is not None and isinstance(entry.body, WeighIn):
            waits[entry.body.block] = waits.get(entry.body.block, 0.0) + came
            continue
        total = sum(waits.values())
        if came >= 0 or total <= 0:
            continue
        shares = {block: grams / total for block, grams in waits.items() if grams > 0}
        left = max(0.0, 1 + came / total)
        waits = {block: grams * left for block, grams in waits.items() if grams * left > 0.5}
        for account, grams in moved.lines:
            if grams > 0 and account in picture.things.vessels:
                fillings.setdefault(account, []).append(Filling(moved.at_utc_s, grams, shares))
    return tuple(Mixed(vessel, tuple(rows), _mixed(rows)) for vessel, rows in fillings.items())


def _mixed(fillings: Sequence[Filling]) -> dict[str, float]:
    total = sum(f.grams for f in fillings)
    sums: dict[str, float] = {}
    for filling in fillings:
        for block, share in filling.shares.items():
            sums[block] = sums.get(block, 0.0) + filling.grams * share / total
    return dict(sorted(sums.items(), key=lambda item: -item[1]))


def mixed_words(mixed: Mixed) -> Text:
    """A vessel with its blocks: `S07: block E 61 %, block D 39 %`."""
    shares = Listing(
        tuple(N_("family", "block {block} {share}", block=b, share=pct(s, 0)) for b, s in mixed.shares.items())
    )
    total = kg(sum(f.grams for f in mixed.fillings), 1)
    return N_("family", "{vessel}, {weight}: {shares}", vessel=mixed.vessel, weight=total, shares=shares)


def heap_name(farm: OpenFarm, code: str, typed: str) -> str:
    """A place as typed where coffee of a lot lies, or may go: bed, vessel, store, a grade. Raises NotPossible."""
    lot = farm.picture.lots.get(code)
    known: list[str] = [*(lot.heaps if lot else ()), *farm.things.places, *farm.things.vessels, STORE]
    found = next((place for place in known if place.casefold() == typed.strip().casefold()), None)
    if found is None:
        raise NotPossible(N_("family", "There is no place {place}.", place=typed.strip() or "?"))
    return found
