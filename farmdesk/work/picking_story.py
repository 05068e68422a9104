"""The page Picking: blocks up the hill with their crop, the next rounds, today's weigh-in, and how ripe it came."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, timedelta

from farmdesk.picture.entries import Entry, Ripeness, Round, WeighIn
from farmdesk.picture.picture import Picture
from farmdesk.science.counting import Range, wilson
from farmdesk.text import N_, Day, Days, Listing, Num, Text, kg
from farmdesk.work.crop import BlockCrop, Crop, crop, next_rounds, pickers_needed
from farmdesk.work.farm import OpenFarm
from farmdesk.work.forecasts import now_of
from farmdesk.work.picking import UNASSIGNED
from farmdesk.work.settings import number
from farmdesk.work.slips import net_g
from farmdesk.work.weigh_grid import Column, kept_of, planned

COUNTS_D = 7  # counts of so many days are shown, and pooled by block
LIKE_N, LIKE_A, LIKE_B = 100, 3, 5  # the example that the sentence about chance is made of


@dataclass(frozen=True, slots=True)
class BlockStory:
    """One block: its heights [m], what was picked [g], its crop, its next round, and who is needed for it."""

    code: str
    name: str
    variety: str
    low_m: float
    high_m: float
    picked_g: int
    crop: BlockCrop | None
    last_day: date | None
    next_days: tuple[date, date] | None
    pinned: bool
    next_g: int | None
    ripe: Text | None
    pickers: Text | None
    pickers_rest_on: Text | None


@dataclass(frozen=True, slots=True)
class CountStory:
    """A ripeness count, or several pooled: fruits looked at, and two shares with their 95 % range."""

    block: str
    said: Text
    fruits_n: int
    ripe: Range
    green: Range
    passes: bool  # the low end of the not-ripe share stays within the farm's limit


@dataclass(frozen=True, eq=False)
class PickingStory:
    """Everything the overview shows."""

    at_utc_s: int
    day: date
    headline: Text
    blocks: tuple[BlockStory, ...]  # the highest first
    crop: Crop
    columns: tuple[tuple[str, Column], ...]  # lot, its half-days today
    day_g: int
    plan_g: int | None
    plan_rests_on: Text | None
    counts: tuple[CountStory, ...]
    limit_pct: float
    chance: Text
    kept: Text | None


def picking_story(farm: OpenFarm, at_utc_s: int | None = None, *, now_utc_s: int | None = None) -> PickingStory:
    """The overview at an instant [UTC s] as known then; without one all that is known, said at `now_utc_s` [UTC s]."""
    picture = farm.seen(at_utc_s)
    now = now_of(picture) if now_utc_s is None else now_utc_s
    today = picture.time.farm_day(now)
    estimate = crop(picture)
    blocks = _blocks(picture, estimate, today)
    columns = tuple(_today(picture, today))
    day_g = sum(column.grams for _, column in columns)
    plan_g, rests = _plan(picture, columns, today)
    limit = number(picture.things, "unripe_limit_pct") or 0.0
    return PickingStory(
        now, today, _headline(blocks, columns, day_g, today), blocks, estimate, columns, day_g, plan_g,
        rests, _counts(picture, today, limit), limit, chance(), kept_of(picture, now),
    )  # fmt: skip


def chance(tries_n: int = LIKE_N, a_n: int = LIKE_A, b_n: int = LIKE_B) -> Text:
    """Why two counts that lie so near are no difference, in one sentence (Wilson 1927)."""
    a, b = wilson(a_n, tries_n), wilson(b_n, tries_n)
    return N_(
        "picking_story",
        "{a} green in {n} may be {a_low}–{a_high}, {b} in {n} may be {b_low}–{b_high}: the ranges overlap, so it is no difference.",
        a=a_n, b=b_n, n=tries_n, a_low=Num(100 * a.low, "", 1), a_high=Num(100 * a.high, "%", 1),
        b_low=Num(100 * b.low, "", 1), b_high=Num(100 * b.high, "%", 1),
    )  # fmt: skip


def _blocks(picture: Picture, estimate: Crop, today: date) -> tuple[BlockStory, ...]:
    crops = {row.block: row for row in estimate.blocks}
    picked: dict[str, int] = {}
    last: dict[str, date] = {}
    for lot in picture.lots.values():
        for e in lot.of(WeighIn):
            picked[e.body.block] = picked.get(e.body.block, 0) + net_g(e.body)
            day = picture.time.farm_day(e.happened_utc_s)
            last[e.body.block] = max(day, last.get(e.body.block, day))
    ahead: dict[str, Entry[Round]] = {}
    for entry in picture.general_of(Round):
        if date.fromisoformat(entry.body.day) >= today:
            ahead[entry.body.block] = entry
    rows = []
    for row in next_rounds(picture):
        block = picture.things.blocks[row.block]
        plan = ahead.get(row.block)
        days = (row.first, row.last) if row.first and row.last else None
        if plan is not None and not row.pinned:
            days = (date.fromisoformat(plan.body.day),) * 2
        pickers, rest = _pickers(picture, row.block, plan.body.grams) if plan else (None, None)
        rows.append(
            BlockStory(
                row.block, block.name_local or block.name, block.variety, block.low_m, block.high_m, picked.get(row.block, 0),
                crops.get(row.block), last.get(row.block), days, row.pinned, plan.body.grams if plan else None,
                row.ripe, pickers, rest,
            )
        )  # fmt: skip
    return tuple(sorted(rows, key=lambda b: (-(b.low_m + b.high_m), b.code)))


def _pickers(picture: Picture, block: str, grams: int) -> tuple[Text, Text | None]:
    """How many pickers, and what that rests on, as two lines of the one sentence."""
    said = pickers_needed(picture, block, grams)
    facts = dict(said.facts)
    if "few" not in facts:
        return said, None
    few, many, likely = facts["few"], facts["many"], facts["likely"]
    return (
        N_("picking_story", "{few}–{many} pickers, likely {likely}", few=few, many=many, likely=likely),
        N_("picking_story", "each brought {each} a day; last {n} {n:round|rounds}", each=facts["each"], n=facts["n"]),
    )


def _today(picture: Picture, today: date) -> Iterable[tuple[str, Column]]:
    for lot in picture.lots.values():
        sums: dict[tuple[str, str], tuple[int, int]] = {}
        for e in lot.of(WeighIn):
            if picture.time.farm_day(e.happened_utc_s) == today:
                grams, n = sums.get((e.body.half_day, e.body.block), (0, 0))
                sums[(e.body.half_day, e.body.block)] = grams + net_g(e.body), n + 1
        for (half, block), (grams, n) in sorted(sums.items()):
            yield lot.code, Column(block, half, grams, n)


def _plan(picture: Picture, columns: tuple[tuple[str, Column], ...], today: date) -> tuple[int | None, Text | None]:
    """Today's plan [g]: of what is being weighed in, else of the round that is meant for today."""
    for lot, column in columns:
        return planned(picture, lot, column.block, today)
    for e in picture.general_of(Round):
        if e.body.day == today.isoformat():
            return planned(picture, "", e.body.block, today)
    return None, None


def _counts(picture: Picture, today: date, limit_pct: float) -> tuple[CountStory, ...]:
    """The counts of the last days, newest first; several of a block are pooled in one more line."""
    first = today - timedelta(days=COUNTS_D - 1)
    found = [
        e
        for lot in picture.lots.values()
        for e in lot.of(Ripeness)
        if first <= picture.time.farm_day(e.happened_utc_s) <= today
    ]
    found.sort(key=lambda e: e.happened_utc_s, reverse=True)
    rows = []
    by_block: dict[str, list[Ripeness]] = {}
    for e in found:
        half = N_("weigh_grid", "morning") if e.body.half_day == "am" else N_("weigh_grid", "afternoon")
        day = Day(picture.time.farm_day(e.happened_utc_s), weekday=True)
        said = N_("picking_story", "{block} {day} {half}", block=e.body.block, day=day, half=half)
        rows.append(counted([e.body], said, limit_pct))
        by_block.setdefault(e.body.block, []).append(e.body)
    for block, bodies in by_block.items():
        if len(bodies) > 1:
            pooled = N_("picking_story", "{block} together, {n} counts", block=block, n=len(bodies))
            rows.append(counted(bodies, pooled, limit_pct))
    return tuple(rows)


def counted(bodies: list[Ripeness], said: Text, limit_pct: float) -> CountStory:
    """One count, or several of a block pooled: shares with their range, held against a limit [%]. Raises NotPossible."""
    green, ripe = sum(b.green for b in bodies), sum(b.ripe for b in bodies)
    n = sum(b.green + b.turning + b.ripe + b.over_ripe + b.dried + b.bored for b in bodies)
    greens = wilson(green, n)
    return CountStory(bodies[0].block, said, n, wilson(ripe, n), greens, greens.low <= limit_pct / 100)


def _headline(blocks: tuple[BlockStory, ...], columns: tuple[tuple[str, Column], ...], day_g: int, today: date) -> Text:
    ahead = sorted((b.next_days[0], b.code) for b in blocks if b.next_days and b.next_days[0] > today)
    if day_g:
        codes = [code for code in dict.fromkeys(column.block for _, column in columns) if code != UNASSIGNED]
        now = N_("picking_story", "{weight} weighed in today", weight=kg(day_g))
        if codes:
            from_ = Listing(tuple(codes), " ")
            now = N_("picking_story", "{weight} weighed in today from {blocks}", weight=kg(day_g), blocks=from_)
    else:
        now = N_("picking_story", "Nothing weighed in today")
    if not ahead:
        return N_("picking_story", "{now}.", now=now)
    first = next(b for b in blocks if b.code == ahead[0][1])
    assert first.next_days is not None
    return N_(
        "picking_story", "{now}. Next block {block}, {days}.", now=now, block=first.code, days=Days(*first.next_days)
    )
