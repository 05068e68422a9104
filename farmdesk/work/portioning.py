"""Merge and split, and the family tree both ways with its shares."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from farmdesk.errors import NotPossible
from farmdesk.picture.entries import GREEN, INTAKE, MILL, STORE, UNEXPLAINED, Birth, Body, Flow, Posting
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.matter import ledger
from farmdesk.picture.measures import blocks_g, family, method_of, pick_days
from farmdesk.picture.picture import Picture
from farmdesk.text import N_, Listing, Num, Text, kg, pct
from farmdesk.work.changes import Done, Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.guards import ask, held, not_ahead, weight
from farmdesk.work.picking import next_code
from farmdesk.work.portions import portions

# Where coffee lies, and the stage of the dry-matter ledger that says how wet it is there.
STAGE_OF = {INTAKE: "accepted", STORE: "dry", MILL: "sent", **dict.fromkeys(GREEN, "green")}
APART_WB_FRAC, BELOW_WB_FRAC = 0.010, 0.20  # do not mix further apart than a point below 20 % (common practice)
SCALE_FRAC, SCALE_LEAST_G, SCALE_MOST_G = (
    0.005,
    200,
    1000,
)  # what children may differ from their parent (common practice)


@dataclass(frozen=True, slots=True)
class Share:
    """A part of a lot: another lot or a block, and its share [fraction] and weight [g]."""

    code: str
    share_frac: float
    grams: int


def merge(
    farm: OpenFarm,
    parts: Mapping[str, Sequence[str]],
    to_place: str,
    at_utc_s: int,
    *,
    alias: str = "",
    hand: Hand = Hand(),
) -> Done:
    """Portions of several lots, whole, go together at a place as a new lot.

    `parts` names the places of each lot; everything the books hold there is taken. Asked once where the
    moistures are more than a point apart below 20 %, or organic status or variety differ.
    """
    if len(parts) < 2:
        raise NotPossible(N_("portioning", "A merge takes two lots at least."))
    not_ahead(farm, at_utc_s, hand)
    lots = {code: farm.lot(code) for code in parts}
    if apart := _apart(farm, lots, parts):
        text = N_("portioning", "{differences} Merge all the same?", differences=Listing(tuple(apart), " "))
        ask(hand, "lots", "apart", text)
    letters = {lot.birth.method for lot in lots.values() if lot.birth}
    letter = letters.pop() if len(letters) == 1 else "J"
    joint = next_code(farm, letter)
    postings: list[Posting] = []
    for code, places in parts.items():
        for place in places:
            grams = lots[code].balance.get(place, 0)
            if grams <= 0:
                raise NotPossible(
                    N_("portioning", "Nothing of {lot} lies at {place} in the books.", lot=code, place=place)
                )
            postings += [Posting(code, place, -grams), Posting(joint, to_place, grams)]
    bodies: list[Body] = [Birth(joint, letter, 1, alias), Flow(joint, "join", tuple(postings))]
    label = N_("portioning", "{lots} merged as {joint}", lots=", ".join(parts), joint=joint)
    return farm.write(bodies, at_utc_s, hand, label, lot=joint)


def _apart(farm: OpenFarm, lots: Mapping[str, LotPicture], parts: Mapping[str, Sequence[str]]) -> list[Text]:
    """In what the parts of a merge differ."""
    found = []
    wet = [
        p.moisture.wb_frac
        for code, lot in lots.items()
        for p in portions(farm.picture, lot)
        if p.place in parts[code] and p.moisture
    ]
    if len(wet) > 1 and max(wet) < BELOW_WB_FRAC and max(wet) - min(wet) > APART_WB_FRAC:
        text = N_(
            "portioning", "They are {gap} points apart, {low} and {high}.",
            gap=Num((max(wet) - min(wet)) * 100, "", 1), low=pct(min(wet)), high=pct(max(wet)),
        )  # fmt: skip
        found.append(text)
    blocks = [
        farm.things.blocks[share.code]
        for code in lots
        for share in block_shares(farm.picture, code)
        if share.code in farm.things.blocks
    ]
    if len({b.organic for b in blocks}) > 1:
        found.append(N_("portioning", "Their blocks differ in organic status; the joint lot has none."))
    if len({b.variety for b in blocks}) > 1:
        names = ", ".join(sorted({b.variety for b in blocks}))
        found.append(N_("portioning", "They are of several varieties: {names}.", names=names))
    return found


def split(
    farm: OpenFarm,
    lot: str,
    from_place: str,
    children: Mapping[str, str],
    at_utc_s: int,
    *,
    own_lots: bool = False,
    hand: Hand = Hand(),
) -> Done:
    """One heap becomes several, a weight as typed for each place; or lots of their own (`own_lots`).

    What the children do not sum to is asked about beyond the scale's tolerance, and posted as unexplained,
    never spread silently.
    """
    parent = farm.lot(lot)
    weighed = {place: weight(typed, hand) for place, typed in children.items()}
    total = sum(grams for grams, _ in weighed.values())
    books = parent.balance.get(from_place, 0)
    not_ahead(farm, at_utc_s, hand)
    held(parent, from_place, total if total > books * (1 + SCALE_FRAC) else 0, hand)
    missing = books - total
    if missing > max(SCALE_LEAST_G, min(SCALE_FRAC * books, SCALE_MOST_G)):
        text = N_(
            "portioning", "The parts sum to {total}, the books hold {books}. Where are the other {missing}?",
            total=kg(total, 1), books=kg(books, 1), missing=kg(missing, 1),
        )  # fmt: skip
        ask(hand, "weight", "missing", text)
    bodies: list[Body] = []
    postings = [Posting(lot, from_place, -books)]
    method = method_of(parent, farm.things)
    code = lot
    for n, (place, (grams, typed)) in enumerate(weighed.items()):
        if own_lots and n:
            code = _next(code if n > 1 else "", farm, method.letter if method else "J")
            bodies.append(Birth(code, method.letter if method else "J", method.version if method else 1))
        postings.append(Posting(code if own_lots and n else lot, place, grams, typed=typed))
    if missing:
        postings.append(Posting(lot, UNEXPLAINED, missing))
    bodies.append(Flow(lot, "cut", tuple(postings)))
    return farm.write(bodies, at_utc_s, hand, N_("portioning", "{lot} split", lot=lot), lot=lot)


def _next(after: str, farm: OpenFarm, letter: str) -> str:
    if not after:
        return next_code(farm, letter)
    return f"{after[:3]}{int(after[3:5]) + 1:02d}{letter}"


def block_shares(picture: Picture, code: str) -> list[Share]:
    """The blocks a lot's coffee came from, with shares that sum to one: through all its parents."""
    sums = _blocks(picture, code, 1.0, frozenset())
    total = sum(sums.values())
    lot = picture.lots.get(code)
    weight_g = sum(g for g in (lot.heaps.values() if lot else ()) if g > 0)
    return [
        Share(block, part / total, round(weight_g * part / total))
        for block, part in sorted(sums.items(), key=lambda item: (-item[1], item[0]))
        if total
    ]


def _blocks(picture: Picture, code: str, part: float, seen: frozenset[str]) -> dict[str, float]:
    lot = picture.lots.get(code)
    if lot is None or code in seen:  # a loop of joins would be a fault of the papers, not of the tree
        return {}
    own = {block: float(grams) for block, grams in blocks_g(lot, picture.time).items()}
    came = parents(picture, lot)
    sums: dict[str, float] = {}
    own_total = sum(own.values())
    if own_total and not came:
        return {block: part * grams / own_total for block, grams in own.items()}
    for share in came:
        for block, value in _blocks(picture, share.code, part * share.share_frac, seen | {code}).items():
            sums[block] = sums.get(block, 0.0) + value
    return sums


def parents(picture: Picture, lot: LotPicture) -> list[Share]:
    """The lots that a lot came from directly, with their grams [g] and their shares [fraction] of its dry matter.

    Wet cherry and half-dry parchment are not counted alike: each part counts what is left of it without its water,
    as known of the stage it was taken from; by weight alone where one of them has no such stage.
    """
    grams = family(lot)[0]
    dry: dict[str, float] = dict.fromkeys(grams, 0.0)
    for entry in lot.entries:
        for posting in getattr(entry.body, "postings", ()):
            if posting.lot in dry and posting.grams < 0:
                frac = _dry_frac(picture, posting.lot, posting.account)
                dry[posting.lot] += -posting.grams * frac if frac else float("nan")
    parts = dry if all(value > 0 for value in dry.values()) else grams  # no more than one is missing: nan
    total = sum(parts.values())
    return [Share(code, parts[code] / total, g) for code, g in grams.items()]


def _dry_frac(picture: Picture, code: str, account: str) -> float | None:
    """What of the weight in the books at a place is dry matter [0..1]; None where no stage says so."""
    things = picture.things
    name = "spread" if account in things.places else "accepted" if account in things.vessels else STAGE_OF.get(account)
    stages = {stage.name: stage for stage in ledger(picture.lots[code], things, picture.corrections)}
    stage = stages.get(name or "") or (stages.get("delivered") if name == "accepted" else None)
    return stage.dry.dry_g / stage.grams if stage is not None and stage.grams else None


def ancestors(picture: Picture, code: str) -> list[Share]:
    """All lots whose coffee is in this one, with their shares [fraction] and grams [g] of it."""
    found: dict[str, float] = {}
    _up(picture, code, 1.0, found, frozenset())
    lot = picture.lots.get(code)
    total = sum(family(lot)[0].values()) if lot else 0
    return [Share(c, s, round(total * s)) for c, s in sorted(found.items(), key=lambda item: -item[1])]


def _up(picture: Picture, code: str, part: float, found: dict[str, float], seen: frozenset[str]) -> None:
    lot = picture.lots.get(code)
    if lot is None or code in seen:
        return
    for share in parents(picture, lot):
        found[share.code] = found.get(share.code, 0.0) + part * share.share_frac
        _up(picture, share.code, part * share.share_frac, found, seen | {code})


def descendants(picture: Picture, code: str) -> list[Share]:
    """All lots that hold coffee of this one: grams [g] that went there, and the share [fraction] of its outgoing."""
    lot = picture.lots.get(code)
    if lot is None:
        return []
    found: dict[str, int] = {}
    ahead = [code]
    seen = {code}
    while ahead:
        at = ahead.pop()
        for child, grams in (family(picture.lots[at])[1] if at in picture.lots else {}).items():
            found[child] = found.get(child, 0) + grams
            if child not in seen:
                seen.add(child)
                ahead.append(child)
    total = sum(found.values())
    return [Share(c, g / total, g) for c, g in sorted(found.items(), key=lambda item: -item[1])]


def lots_of_block(picture: Picture, block: str) -> list[Share]:
    """All lots that hold coffee of a block, with its share of each, largest weight first."""
    rows = []
    for code in picture.lots:
        rows += [Share(code, s.share_frac, s.grams) for s in block_shares(picture, code) if s.code == block]
    return sorted(rows, key=lambda row: (-row.grams, row.code))


def picked_when(picture: Picture, code: str) -> list[tuple[str, str]]:
    """Lots at the root of a lot and the ISO days on which they were picked."""
    roots = [share.code for share in ancestors(picture, code)] or [code]
    rows = []
    for root in roots:
        lot = picture.lots.get(root)
        rows += [(root, day.isoformat()) for day in (pick_days(lot, picture.time) if lot else ())]
    return sorted(set(rows), key=lambda row: (row[1], row[0]))
