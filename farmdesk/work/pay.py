"""The week's pay: kilograms times rate, top-up to the day's least, day work, advances, notes and coins.

Money is whole cents of the farm's own money. A row is rounded once, half up to the smallest coin, and the payroll
is the sum of the rounded rows, so the envelopes add up to it; what rounding added or took is settled next week. A closed sheet is never changed: what a later correction of
a weigh-in makes of it is an adjustment of the next one.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from decimal import ROUND_HALF_UP, Decimal
from functools import lru_cache
from weakref import WeakKeyDictionary

from farmdesk.errors import NotPossible
from farmdesk.picture.entries import Advance, DayWork, Line, PaySheet, Ripeness, WeighIn
from farmdesk.picture.picture import Picture
from farmdesk.picture.things import Things
from farmdesk.science.counting import wilson
from farmdesk.text import N_, Day, Num
from farmdesk.units import read_number, value_of
from farmdesk.work.changes import Done, Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.guards import weight
from farmdesk.work.picking import UNASSIGNED
from farmdesk.work.settings import by_block, number, numbers, sign_of_money

RATE, BONUS, BONUS_FROM = "picking_local_kg", "picking_bonus_local_kg", "picking_bonus_from_pct"
LEAST = "day_least_local"
_AGAIN: WeakKeyDictionary[Picture, dict[date, PayWeek]] = WeakKeyDictionary()


@dataclass(frozen=True, slots=True)
class PayDay:
    """One picker's day: grams [g], cents for the weight, of these the bonus, and the top-up to the day's least."""

    day: date
    grams: int
    piece_cents: int
    top_up_cents: int
    share_frac: float
    bonus_cents: int = 0


@dataclass(frozen=True, slots=True)
class PayRow:
    """One picker's week, in cents; `bonus_cents` is a part of the piece. `rounded_cents` is what rounding to the smallest coin added, `carried_cents`
    what an advance left owing for the next week.
    """

    picker: str
    days: tuple[PayDay, ...]
    grams: int
    piece_cents: int
    top_up_cents: int
    day_work_cents: int
    advance_cents: int
    adjustment_cents: int
    rounded_cents: int
    net_cents: int
    carried_cents: int
    bonus_cents: int = 0


@dataclass(frozen=True, slots=True)
class PayWeek:
    """A pay week: rows by picker, the payroll, what each envelope holds, and what the bank must give."""

    first_day: date
    last_day: date
    rows: tuple[PayRow, ...]
    total_cents: int
    envelopes: dict[str, dict[int, int]]  # picker -> note or coin [cents] -> how many
    bank: dict[int, int]
    unassigned_n: int
    closed: bool


@dataclass(frozen=True, slots=True)
class _Line:
    """One sack [g] with its rates [cents for a kilogram]."""

    grams: int
    base: Decimal
    bonus: Decimal
    half_day: str


def _cents(local: float | Decimal) -> int:
    return int((Decimal(str(local)) * 100).quantize(Decimal(1), ROUND_HALF_UP))


def terms_of(things: Things) -> dict[str, float]:
    """What a week is reckoned by, by the names of the settings: rates [money/kg], limit [%], least for a day [money]."""
    named = {name: number(things, name) for name in (RATE, BONUS, BONUS_FROM, LEAST)}
    own = {f"{RATE} {block}": rate for block, rate in by_block(things, "picking_block_local_kg").items()}
    return {name: value for name, value in named.items() if value is not None} | own


def _terms(picture: Picture, first_day: date) -> dict[str, float]:
    """A signed week keeps the terms it was signed under; any other has those of today."""
    for sheet in picture.general_of(PaySheet):
        if sheet.body.first_day == first_day.isoformat() and sheet.body.terms:
            return {line.name: line.value for line in sheet.body.terms}
    return terms_of(picture.things)


def rate_parts(
    picture: Picture, terms: Mapping[str, float], lot: str, block: str, half_day: str, day: date
) -> tuple[Decimal, Decimal]:
    """Base and bonus [cents for a kilogram]: the bonus unless the count shows that fewer are ripe than the limit.

    "Shows" means beyond chance: the low end of the 95 % range of the not-ripe share (Wilson 1927) passes
    100 − limit. Three in a hundred is no evidence against five. Raises NotPossible where no rate is set.
    """
    base = terms.get(f"{RATE} {block}", terms.get(RATE))
    if base is None:
        raise NotPossible(
            N_("pay", "No picking rate is set, so nothing can be paid by weight."),
            N_("pay", "Set the rate for a kilogram on the page Farm: r, figures."),
        )
    bonus, limit = terms.get(BONUS, 0.0), terms.get(BONUS_FROM)
    counts = [
        e.body
        for e in (picture.lots[lot].of(Ripeness) if lot in picture.lots else ())
        if e.body.block == block and e.body.half_day == half_day and picture.time.farm_day(e.happened_utc_s) == day
    ]
    total = sum(c.green + c.turning + c.ripe + c.over_ripe + c.dried + c.bored for c in counts)
    if bonus and total and limit is not None:
        not_ripe = wilson(total - sum(c.ripe for c in counts), total)
        if not_ripe.low > 1 - limit / 100:
            bonus = 0.0
    elif not total:
        bonus = 0.0
    return Decimal(str(base)) * 100, Decimal(str(bonus)) * 100


def pay_week(picture: Picture, first_day: date) -> PayWeek:
    """The pay of seven days from `first_day`. Raises NotPossible where no rate is set."""
    return _pay_week(picture, first_day, adjust=True)


def _pay_week(picture: Picture, first_day: date, *, adjust: bool) -> PayWeek:
    last_day, terms = first_day + timedelta(days=6), _terms(picture, first_day)
    picked: dict[str, dict[date, list[_Line]]] = {}
    unassigned = 0
    for lot in picture.lots.values():
        for entry in lot.of(WeighIn):
            day = picture.time.farm_day(entry.happened_utc_s)
            if not first_day <= day <= last_day:
                continue
            body = entry.body
            if body.picker == UNASSIGNED or (picture.things.people and body.picker not in picture.things.people):
                unassigned += 1
                continue
            base, bonus = rate_parts(picture, terms, lot.code, body.block, body.half_day, day)
            line = _Line(body.gross_g - body.tare_g, base, bonus, body.half_day)
            picked.setdefault(body.picker, {}).setdefault(day, []).append(line)
    worked: dict[str, int] = {}
    advances: dict[str, int] = {}
    for work in (entry.body for entry in picture.general_of(DayWork)):
        if first_day <= date.fromisoformat(work.day) <= last_day:
            worked[work.picker] = worked.get(work.picker, 0) + work.amount_cents
    for advance in picture.general_of(Advance):
        if first_day <= picture.time.farm_day(advance.happened_utc_s) <= last_day:
            advances[advance.body.picker] = advances.get(advance.body.picker, 0) + advance.body.amount_cents
    owing = _owing(picture, first_day) if adjust else {}
    least = _cents(terms.get(LEAST, 0.0))
    notes = sorted((_cents(n) for n in numbers(picture.things, "notes_local")), reverse=True)
    coin = notes[-1] if notes else 1
    rows = []
    for picker in sorted({*picked, *worked, *advances, *owing}):
        days = tuple(_pay_day(day, lines, least) for day, lines in sorted(picked.get(picker, {}).items()))
        piece, top_up = sum(d.piece_cents for d in days), sum(d.top_up_cents for d in days)
        advance_cents, adjustment = advances.get(picker, 0), owing.get(picker, 0)
        due = piece + top_up + worked.get(picker, 0) + adjustment - advance_cents
        net, carried = _to_coin(max(due, 0), coin), max(-due, 0)
        rows.append(
            PayRow(
                picker, days, sum(d.grams for d in days), piece, top_up, worked.get(picker, 0), advance_cents,
                adjustment, net - max(due, 0), net, carried, sum(d.bonus_cents for d in days),
            )
        )  # fmt: skip
    envelopes = {row.picker: note_count(row.net_cents, notes) for row in rows if row.net_cents}
    bank: dict[int, int] = {}
    for envelope in envelopes.values():
        for note, n in envelope.items():
            bank[note] = bank.get(note, 0) + n
    closed = any(e.body.first_day == first_day.isoformat() for e in picture.general_of(PaySheet))
    total = sum(row.net_cents for row in rows)
    return PayWeek(
        first_day, last_day, tuple(rows), total, envelopes, dict(sorted(bank.items(), reverse=True)), unassigned, closed
    )


def _to_coin(amount_cents: int, coin_cents: int) -> int:
    """An amount rounded to the smallest coin [cents], half up: what an envelope can hold."""
    return (2 * amount_cents + coin_cents) // (2 * coin_cents) * coin_cents


def _pay_day(day: date, lines: list[_Line], least_cents: int) -> PayDay:
    whole = Decimal(1)
    piece = int(
        sum((Decimal(line.grams) / 1000 * (line.base + line.bonus) for line in lines), Decimal(0)).quantize(
            whole, ROUND_HALF_UP
        )
    )
    bonus = int(
        sum((Decimal(line.grams) / 1000 * line.bonus for line in lines), Decimal(0)).quantize(whole, ROUND_HALF_UP)
    )
    share = len({line.half_day for line in lines}) / 2
    least = int((Decimal(least_cents) * Decimal(str(share))).quantize(whole, ROUND_HALF_UP))
    return PayDay(day, sum(line.grams for line in lines), piece, max(0, least - piece), share, bonus)


def _again(picture: Picture, first_day: date) -> PayWeek:
    """A signed week by what is known now; kept as long as the picture lives, for every later week asks it."""
    kept = _AGAIN.setdefault(picture, {})
    if first_day not in kept:
        kept[first_day] = _pay_week(picture, first_day, adjust=False)
    return kept[first_day]


def _owing(picture: Picture, first_day: date) -> dict[str, int]:
    """What the signed weeks before this one would pay by what is known now, less what their sheets paid [cents].

    Positive after a weight was found too low, negative where an advance was more than the week earned.
    """
    owing: dict[str, int] = {}
    sheets = sorted(picture.general_of(PaySheet), key=lambda e: e.body.first_day)
    sheets = [sheet for sheet in sheets if sheet.body.first_day < first_day.isoformat()]
    for sheet in sheets:
        again = _again(picture, date.fromisoformat(sheet.body.first_day))
        for row in again.rows:
            due = row.piece_cents + row.top_up_cents + row.day_work_cents - row.advance_cents
            owing[row.picker] = owing.get(row.picker, 0) + due
        for line in sheet.body.nets:
            owing[line.name] = owing.get(line.name, 0) - round(line.value)
    return {picker: cents for picker, cents in owing.items() if cents}


def note_count(amount_cents: int, notes_cents: Sequence[int]) -> dict[int, int]:
    """The fewest notes and coins that make an amount [cents], largest first.

    Taking the largest that fits is fewest where the set allows it, which is looked up once for a set of notes;
    otherwise every smaller sum is counted. Raises NotPossible where the coins cannot make the amount.
    """
    notes = tuple(sorted(notes_cents, reverse=True))
    found: dict[int, int] = {}
    left = amount_cents
    if notes and _greedy_is_fewest(notes):
        for note in notes:
            n, left = divmod(left, note)
            if n:
                found[note] = n
    elif notes:
        last = _fewest(notes, amount_cents)
        while left and last[left]:
            found[last[left]] = found.get(last[left], 0) + 1
            left -= last[left]
    if left:
        amount, coin = Num(amount_cents / 100, "", 2), Num(min(notes, default=0) / 100, "", 2)
        raise NotPossible(
            N_("pay", "{amount} cannot be paid out: the smallest coin is {coin}.", amount=amount, coin=coin)
        )
    return dict(sorted(found.items(), reverse=True))


def _fewest(notes: tuple[int, ...], amount_cents: int) -> list[int]:
    """For every sum up to an amount [cents] one note of its fewest; 0 where the notes cannot make it."""
    far = amount_cents + 1
    count, last = [0] + [far] * amount_cents, [0] * (amount_cents + 1)
    for amount in range(min(notes), amount_cents + 1):
        for note in notes:
            if note <= amount and count[amount - note] + 1 < count[amount]:
                count[amount], last[amount] = count[amount - note] + 1, note
    return last


@lru_cache(maxsize=8)
def _greedy_is_fewest(notes: tuple[int, ...]) -> bool:
    """Whether taking the largest note that fits always gives the fewest: it does if it does for all sums under
    the two largest together (Kozen & Zaks 1994, Theoretical Computer Science 123:377-388).
    """
    step = math.gcd(*notes)
    units = tuple(note // step for note in notes)
    if min(units) != 1:
        return False
    bound = sum(units[:2])
    count, greedy = [0] * bound, [0] * bound
    for amount in range(1, bound):
        fits = [unit for unit in units if unit <= amount]
        count[amount] = 1 + min(count[amount - unit] for unit in fits)
        greedy[amount] = 1 + greedy[amount - fits[0]]
        if greedy[amount] != count[amount]:
            return False
    return True


def give_advance(
    farm: OpenFarm, picker: str, money: str, at_utc_s: int, *, text: str = "", hand: Hand = Hand()
) -> Done:
    """Money given to a picker ahead of the pay day."""
    cents = _money(farm, money, hand)
    label = N_("pay", "advance to {picker}", picker=picker)
    return farm.write([Advance(picker, cents, text)], at_utc_s, hand, label)


def day_work(
    farm: OpenFarm,
    picker: str,
    day: date,
    money: str,
    at_utc_s: int,
    *,
    share_frac: float = 1.0,
    task: str = "",
    hand: Hand = Hand(),
) -> Done:
    """A day, or part of one, paid by the day: `money` is for a whole day, of which the share is paid."""
    if not 0 < share_frac <= 1:
        raise NotPossible(N_("pay", "A share of a day lies between nothing and one."))
    whole = Decimal(_money(farm, money, hand)) * Decimal(str(share_frac))
    body = DayWork(picker, day.isoformat(), share_frac, int(whole.quantize(Decimal(1), ROUND_HALF_UP)), task)
    return farm.write([body], at_utc_s, hand, N_("pay", "day work of {picker}", picker=picker))


def close_week(farm: OpenFarm, first_day: date, at_utc_s: int, hand: Hand = Hand()) -> Done:
    """Sign a week's pay. Raises NotPossible where it is signed already or sacks have no picker."""
    week = pay_week(farm.picture, first_day)
    if week.closed:
        raise NotPossible(N_("pay", "The week from {day} is signed already.", day=Day(first_day)))
    if week.unassigned_n:
        raise NotPossible(
            N_(
                "pay",
                "{n} {n:sack has|sacks have} no known picker; name {n:it|them} before the week is signed.",
                n=week.unassigned_n,
            )
        )
    nets = tuple(Line(row.picker, float(row.net_cents)) for row in week.rows)
    terms = tuple(Line(name, value) for name, value in terms_of(farm.things).items())
    body = PaySheet(first_day.isoformat(), week.last_day.isoformat(), nets, terms)
    return farm.write([body], at_utc_s, hand, N_("pay", "pay of the week from {day}", day=Day(first_day)))


def share_of(typed: str) -> float:
    """The part of a day that a hand writes: `1/2`, `0,5`, `50 %`; nothing is a whole one. Raises NotPossible."""
    over, slash, under = typed.replace("½", "1/2").partition("/")
    if not over.strip():
        return 1.0
    share = value_of(read_number(over), "%" if "%" in over else "") / (100 if "%" in over else 1)
    parts = read_number(under).value if slash else 1.0
    if not parts or not 0 < share / parts <= 1:
        raise NotPossible(N_("pay", "A share of a day lies between nothing and one."))
    return share / parts


def _money(farm: OpenFarm, typed: str, hand: Hand) -> int:
    amount = value_of(read_number(typed, answers=hand.answers), sign_of_money(farm.things))
    cents = _cents(Decimal(str(amount)))
    if cents <= 0:
        raise NotPossible(N_("pay", "An amount of money must be above nothing."))
    return cents


def column_total(weights: Sequence[str], written: str) -> int:
    """How far a column of weights [g] is from the total written under it: the sum less the total."""
    total, _ = weight(written, Hand())
    return sum(weight(typed, Hand())[0] for typed in weights if typed.strip()) - total
