"""Pay as the office sees it: weeks, each picker's row, notes and coins, and sacks whose picker is not known."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta

from farmdesk.errors import NotPossible
from farmdesk.picture.entries import Advance, DayWork, PaySheet, WeighIn
from farmdesk.picture.picture import Picture
from farmdesk.picture.things import Things
from farmdesk.text import N_, Days, Fact, Num, Text
from farmdesk.work.changes import Done, Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.forecasts import now_of
from farmdesk.work.pay import PayWeek, pay_week
from farmdesk.work.picking import correct_slip
from farmdesk.work.settings import numbers, sign_of_money
from farmdesk.work.slips import net_g, sacks_of

PAY_WEEKDAY = 5  # Saturday, so a week runs from Sunday (common practice, no source)


@dataclass(frozen=True, slots=True)
class WeekLine:
    """A week in the list: its days, its payroll [cents], its pickers; None where it cannot be reckoned."""

    first_day: date
    last_day: date
    total_cents: int | None
    pickers_n: int
    closed: bool


@dataclass(frozen=True, slots=True)
class LooseSack:
    """A sack under a code that the farm does not have [g]."""

    entry: str
    picker: str
    lot: str
    day: date
    grams: int


@dataclass(frozen=True, eq=False)
class PayStory:
    """The chosen week with its list; `refused` says why nothing can be paid."""

    at_utc_s: int
    farm: str
    money: str  # the name of the farm's own money
    weeks: tuple[WeekLine, ...]  # the newest first
    week: PayWeek | None
    refused: Text | None
    loose: tuple[LooseSack, ...]
    advances: tuple[tuple[str, date, int, str], ...]  # picker, day, cents, words
    day_works: tuple[tuple[str, date, int, str], ...]
    notes_cents: tuple[int, ...]
    pickers: tuple[str, ...]
    headline: Text


def week_of(picture: Picture, day: date) -> date:
    """The first day of the pay week a day lies in: the day after pay day, or in step with the signed sheets."""
    signed = [date.fromisoformat(e.body.first_day) for e in picture.general_of(PaySheet)]
    starts = signed[0].weekday() if signed else (PAY_WEEKDAY + 1) % 7
    return day - timedelta(days=(day.weekday() - starts) % 7)


def money(cents: int | float, name: str) -> Num:
    """An amount [cents] of the farm's own money."""
    return Num(cents / 100, name, 2)


def pay_story(
    farm: OpenFarm, first_day: date | None = None, at_utc_s: int | None = None, *, now_utc_s: int | None = None
) -> PayStory:
    """The pay of a week (without one: the week of `now_utc_s` [UTC s]), and the list of all weeks with work in them.

    As known at an instant [UTC s], or without one by all that is known.
    """
    picture = farm.seen(at_utc_s)
    now = now_of(picture) if now_utc_s is None else now_utc_s
    today = picture.time.farm_day(now)
    first = week_of(picture, first_day or today)
    name = sign_of_money(picture.things)
    week, refused = _week(picture, first)
    last = first + timedelta(days=6)
    weeks = _weeks(picture, first, today)
    local = picture.time.farm_day
    given = tuple(
        (e.body.picker, local(e.happened_utc_s), e.body.amount_cents, e.body.text)
        for e in picture.general_of(Advance)
        if first <= local(e.happened_utc_s) <= last
    )
    works = tuple(
        (e.body.picker, date.fromisoformat(e.body.day), e.body.amount_cents, e.body.task)
        for e in picture.general_of(DayWork)
        if first <= date.fromisoformat(e.body.day) <= last
    )
    notes = tuple(sorted((round(100 * n) for n in numbers(picture.things, "notes_local")), reverse=True))
    return PayStory(
        now, picture.things.farm.name, name, weeks, week, refused, loose_sacks(picture, first, last),
        given, works, notes, tuple(picture.things.people), _headline(week, refused, name, first, last),
    )  # fmt: skip


def _week(picture: Picture, first: date) -> tuple[PayWeek | None, Text | None]:
    try:
        return pay_week(picture, first), None
    except NotPossible as error:
        return None, error.text


def _weeks(picture: Picture, chosen: date, today: date) -> tuple[WeekLine, ...]:
    days = {picture.time.farm_day(e.happened_utc_s) for e in sacks_of(picture)}
    days |= {picture.time.farm_day(e.happened_utc_s) for e in picture.general_of(Advance)}
    days |= {date.fromisoformat(e.body.day) for e in picture.general_of(DayWork)} | {today, chosen}
    lines = []
    for first in sorted({week_of(picture, day) for day in days}, reverse=True):
        week, _ = _week(picture, first)
        total, n, closed = (week.total_cents, len(week.rows), week.closed) if week else (None, 0, False)
        lines.append(WeekLine(first, first + timedelta(days=6), total, n, closed))
    return tuple(lines)


def loose_sacks(picture: Picture, first: date, last: date) -> tuple[LooseSack, ...]:
    """Sacks of these days under codes the farm does not have; they must be named before the week is signed."""
    people = picture.things.people
    return tuple(
        LooseSack(e.id, e.body.picker, e.body.lot, day, net_g(e.body))
        for e in sacks_of(picture)
        if people and e.body.picker not in people and first <= (day := picture.time.farm_day(e.happened_utc_s)) <= last
    )


def name_sack(farm: OpenFarm, entry: str, picker: str, hand: Hand = Hand()) -> Done:
    """Give a sack its picker. Raises NotPossible for a code the farm does not have."""
    picker = read_picker(farm, picker)
    found = farm.picture.book.by_id.get(entry)
    if found is None or not isinstance(found.body, WeighIn):
        raise NotPossible(N_("picking", "There is no such row on the sheet."))
    body = found.body
    typed, tare = body.typed or f"{body.gross_g} g", f"{body.tare_g} g" if body.tare_g else ""
    reason = f"{body.picker} = {picker}"
    # its weight was looked at when it was typed
    answers = {"slip": "keep", "same": "keep"} | hand.answers
    asked = Hand(hand.who or found.who, found.instrument, found.mark, hand.note, answers)
    return correct_slip(farm, entry, picker=picker, gross=typed, tare=tare, reason=reason, hand=asked)


def read_picker(farm: OpenFarm, typed: str) -> str:
    """A picker's code as a hand writes it: `P07`, or `7` where one code alone has that number. Raises NotPossible."""
    code = picker_of(farm.things, typed)
    if code not in farm.things.people:
        raise NotPossible(
            N_("pay", "The farm has no picker {code}.", code=code or "?"),
            N_("pay", "Add the code on the page Farm, under people."),
        )
    return code


def picker_of(things: Things, typed: str) -> str:
    """The code that was meant, or what was typed where the farm has none like it: `7` is the picker P07."""
    typed = typed.strip().upper()
    people = things.people
    if typed in people or not typed.isdigit():
        return typed
    meant = [code for code in people if code[1:].isdigit() and int(code[1:]) == int(typed)]
    meant = [code for code in meant if people[code].role == "picker"] or meant
    return meant[0] if len(meant) == 1 else typed


def _headline(week: PayWeek | None, refused: Text | None, name: str, first: date, last: date) -> Text:
    if week is None:
        return refused or N_("pay_story", "Nothing to pay.")
    facts: dict[str, Fact] = {"total": money(week.total_cents, name), "n": len(week.rows), "days": Days(first, last)}
    if week.closed:
        return N_("pay_story", "{days} is signed: {total} for {n} {n:picker|pickers}.", **facts)
    if not week.rows:
        return N_("pay_story", "Nobody has worked in the week {days}.", days=Days(first, last))
    if week.unassigned_n:
        return N_("pay_story", "{days}: {total} for {n} {n:picker|pickers}; {loose} {loose:sack has|sacks have} no known picker.",
                  **facts, loose=week.unassigned_n)  # fmt: skip
    return N_("pay_story", "{days}: {total} for {n} {n:picker|pickers}, not signed yet.", **facts)
