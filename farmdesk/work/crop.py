"""The crop ahead: an estimate with its range, rounds, how many pickers, and what a lot will come to in boxes."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import date, timedelta
from statistics import median

from farmdesk.errors import NotPossible
from farmdesk.picture.entries import CropCount, RipeLook, Round, WeighIn
from farmdesk.picture.measures import method_of, pick_days, stored_g, top_g
from farmdesk.picture.picture import Picture
from farmdesk.science.counting import t_factor, wilson
from farmdesk.text import N_, Num, Text, kg
from farmdesk.work.changes import Done, Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.guards import ask, between, weight
from farmdesk.work.settings import number


@dataclass(frozen=True, slots=True)
class BlockCrop:
    """A block's crop [kg] with its 95 % range, from so many trees; `from_day` when the fruit should ripen."""

    block: str
    kg: float
    low_kg: float
    high_kg: float
    trees_n: int
    from_day: date | None


@dataclass(frozen=True, slots=True)
class Crop:
    """All blocks and their sum; the sum's range adds variances, never ranges."""

    blocks: tuple[BlockCrop, ...]
    kg: float
    low_kg: float
    high_kg: float
    text: Text


def count_trees(
    farm: OpenFarm,
    block: str,
    *,
    trees_n: int,
    mean_kg: str,
    sd_kg: str,
    at_utc_s: int,
    loss_pct: str = "0",
    flowered: str = "",
    hand: Hand = Hand(),
) -> Done:
    """Fruit on a sample of trees of a block: mean and spread in kilograms a tree."""
    if block not in farm.things.blocks:
        raise NotPossible(N_("crop", "The farm has no block {block}.", block=block))
    if trees_n < 2:
        raise NotPossible(N_("crop", "An estimate needs two trees at least; 250 are asked for an error under a fifth."))
    mean, _ = between(mean_kg, 0, 100, "kg", hand)
    spread, _ = between(sd_kg, 0, 100, "kg", hand)
    loss, _ = between(loss_pct, 0, 100, "%", hand)
    if flowered:
        date.fromisoformat(flowered)
    body = CropCount(block, trees_n, mean, spread, loss / 100, flowered)
    return farm.write([body], at_utc_s, hand, N_("crop", "crop estimate of block {block}", block=block))


def crop(picture: Picture) -> Crop:
    """The crop by the newest count of each block, each with a range from its sampling error.

    kg = trees × mean × (1 − loss); the mean's error is sd/√n (Student's t). Published counts of flowers were
    within a fifth in under half of the cases even with care (Rendón-Sáenz et al. 2008, Cenicafé 59(3)), so
    no estimate stands without its range.
    """
    newest = {e.body.block: e.body for e in picture.general_of(CropCount)}
    weeks = number(picture.things, "weeks_from_flower") or 32
    rows, variance = [], 0.0
    for code, count in sorted(newest.items()):
        block = picture.things.blocks.get(code)
        trees = block.trees_n if block else 0
        total = trees * count.mean_kg * (1 - count.loss_frac)
        sd = trees * (1 - count.loss_frac) * count.sd_kg / math.sqrt(count.trees_n)
        half = t_factor(count.trees_n - 1) * sd
        variance += (half / 1.96) ** 2
        ripe = date.fromisoformat(count.flowered) + timedelta(weeks=weeks) if count.flowered else None
        rows.append(BlockCrop(code, total, max(0.0, total - half), total + half, count.trees_n, ripe))
    total_kg, half = sum(r.kg for r in rows), 1.96 * math.sqrt(variance)
    if not rows:
        return Crop((), 0.0, 0.0, 0.0, N_("crop", "No trees were counted yet."))
    low = max(0.0, total_kg - half)
    few = [r.block for r in rows if r.trees_n < 250]
    text = N_(
        "crop",
        "{low}–{high} of cherry from {n} {n:block|blocks}",
        low=Num(low),
        high=Num(total_kg + half, "kg"),
        n=len(rows),
    )
    if few:
        text = N_("crop", "{text}; under 250 trees were looked at in {blocks}", text=text, blocks=" ".join(few))
    return Crop(tuple(rows), total_kg, low, total_kg + half, text)


def look_at_ripeness(
    farm: OpenFarm, block: str, ripe_n: int, looked_n: int, at_utc_s: int, hand: Hand = Hand()
) -> Done:
    """Fruits counted on a block's marked branches: how many are ripe, of how many."""
    if block not in farm.things.blocks:
        raise NotPossible(N_("crop", "The farm has no block {block}.", block=block))
    if not 0 <= ripe_n <= looked_n or looked_n == 0:
        raise NotPossible(N_("crop", "{ripe} of {all} cannot be a count.", ripe=ripe_n, all=looked_n))
    label = N_("crop", "ripeness of block {block}", block=block)
    return farm.write([RipeLook(block, ripe_n, looked_n)], at_utc_s, hand, label)


def plan_round(
    farm: OpenFarm, block: str, day: date, weighed: str, at_utc_s: int, *, pinned: bool = False, hand: Hand = Hand()
) -> Done:
    """A picking round meant for a day; asked once when the block was picked under a week before."""
    if block not in farm.things.blocks:
        raise NotPossible(N_("crop", "The farm has no block {block}.", block=block))
    grams, _ = weight(weighed, hand)
    last = last_round(farm.picture, block)
    if last and 0 <= (day - last).days < 7:
        days = Num((day - last).days, "d")
        ask(
            hand,
            "day",
            "too soon",
            N_("crop", "Block {block} was picked {days} before. Again so soon?", block=block, days=days),
        )
    body = Round(block, day.isoformat(), grams, pinned)
    return farm.write([body], at_utc_s, hand, N_("crop", "round of block {block}", block=block))


def last_round(picture: Picture, block: str) -> date | None:
    """The last farm day on which sacks of a block were weighed."""
    days = [
        picture.time.farm_day(e.happened_utc_s)
        for lot in picture.lots.values()
        for e in lot.of(WeighIn)
        if e.body.block == block
    ]
    return max(days, default=None)


@dataclass(frozen=True, slots=True)
class NextRound:
    """When a block's next round may fall, and what speaks for it; a pinned day is never moved."""

    block: str
    first: date | None
    last: date | None
    pinned: bool
    ripe: Text | None


def next_rounds(picture: Picture) -> list[NextRound]:
    """The window of the next round of each block: pinned where it was pinned, else so many days after the last."""
    low = int(number(picture.things, "round_days_low") or 14)
    high = int(number(picture.things, "round_days_high") or 21)
    today = (
        picture.time.farm_day(picture.as_of)
        if picture.as_of < 1 << 61
        else picture.time.farm_day(picture.book.last_written_utc_s)
    )
    pins = {e.body.block: date.fromisoformat(e.body.day) for e in picture.general_of(Round) if e.body.pinned}
    looks = {e.body.block: e.body for e in picture.general_of(RipeLook)}
    rows = []
    for code in picture.things.blocks:
        look = looks.get(code)
        ripe = None
        if look:
            span = wilson(look.ripe_n, look.looked_n)
            ripe = N_("crop", "{low}–{high} ripe", low=Num(span.low * 100), high=Num(span.high * 100, "%"))
        if code in pins and pins[code] >= today:
            rows.append(NextRound(code, pins[code], pins[code], True, ripe))
            continue
        last = last_round(picture, code)
        first = last + timedelta(days=low) if last else None
        rows.append(NextRound(code, first, last + timedelta(days=high) if last else None, False, ripe))
    return rows


def pickers_needed(picture: Picture, block: str, grams: int) -> Text:
    """How many pickers a round of so many grams [g] needs, by the median of the block's last three rounds."""
    per_day: dict[date, dict[str, int]] = {}
    for lot in picture.lots.values():
        for e in lot.of(WeighIn):
            if e.body.block == block:
                day = per_day.setdefault(picture.time.farm_day(e.happened_utc_s), {})
                day[e.body.picker] = day.get(e.body.picker, 0) + e.body.gross_g - e.body.tare_g
    rounds = sorted(per_day)[-3:]
    each = [g for day in rounds for g in per_day[day].values()]
    if len(each) < 5:
        return N_("crop", "too few weigh-ins of block {block} to say how many pickers", block=block)
    middle = median(each)
    low, high = sorted(each)[len(each) // 10], sorted(each)[-1 - len(each) // 10]
    few, many = math.ceil(grams / high), math.ceil(grams / max(low, 1))
    return N_(
        "crop", "{few}–{many} pickers, likely {likely}; each brought {each} a day in the last {n} {n:round|rounds}",
        few=few, many=many, likely=math.ceil(grams / middle), each=kg(middle), n=len(rounds),
    )  # fmt: skip


@dataclass(frozen=True, slots=True)
class Boxes:
    """What top grade a lot will give [g], as a range, and the boxes it fills at its low end."""

    low_g: int
    high_g: int
    boxes_n: int
    rest_g: int
    text: Text


def boxes(picture: Picture, code: str) -> Boxes:
    """Top grade expected of a lot in boxes: measured once milled, before that its dry weight times own ratios.

    Raises NotPossible where nothing dry was weighed and fewer than five own lots are milled.
    """
    lot = picture.lots[code]
    box_g = int((number(picture.things, "box_kg") or 30) * 1000)
    top = top_g(lot)
    if top is not None:
        low = high = top
    else:
        method = method_of(lot, picture.things)
        ratios = sorted(
            other_top / other_dry
            for other in picture.lots.values()
            if method_of(other, picture.things) == method
            and (other_dry := stored_g(other))
            and (other_top := top_g(other))
        )
        dry = stored_g(lot)
        if dry is None or len(ratios) < 5:
            raise NotPossible(N_("crop", "Too few own lots are milled to say what {lot} will come to.", lot=code))
        low, high = round(dry * ratios[len(ratios) // 10]), round(dry * ratios[-1 - len(ratios) // 10])
    n, rest = divmod(low, box_g)
    text = N_(
        "crop",
        "{low}–{high} of top grade: {n} {n:box|boxes} of {box} and {rest} rest",
        low=Num(low / 1000),
        high=kg(high),
        n=n,
        box=kg(box_g),
        rest=kg(rest, 1),
    )
    if low == high:
        text = N_(
            "crop",
            "{top} of top grade: {n} {n:box|boxes} of {box} and {rest} rest",
            top=kg(low),
            n=n,
            box=kg(box_g),
            rest=kg(rest, 1),
        )
    return Boxes(low, high, n, rest, text)


def picked_by_round(picture: Picture, block: str) -> list[tuple[date, int]]:
    """Grams [g] of a block by picking day."""
    sums: dict[date, int] = {}
    for lot in picture.lots.values():
        if block in {e.body.block for e in lot.of(WeighIn)}:
            for day in pick_days(lot, picture.time):
                sums.setdefault(day, 0)
            for e in lot.of(WeighIn):
                if e.body.block == block:
                    day = picture.time.farm_day(e.happened_utc_s)
                    sums[day] = sums.get(day, 0) + e.body.gross_g - e.body.tare_g
    return sorted((day, grams) for day, grams in sums.items() if grams)
