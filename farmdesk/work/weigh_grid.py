"""The weigh-in sheet: one lot, block and half-day at a time, its rows in the order they were typed.

What stands beside it: what each picker usually brings, what the day has brought against its plan, and what
was kept of a sheet that was not finished.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta

from farmdesk.errors import NotPossible
from farmdesk.picture.codes import check_character
from farmdesk.picture.entries import Entry, Plan, Platform, Round, Skipped, WeighIn
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.picture import Picture
from farmdesk.text import N_, Day, Moment, Num, Text, kg
from farmdesk.work.farm import OpenFarm
from farmdesk.work.forecasts import now_of
from farmdesk.work.picking import HALF_DAYS, UNASSIGNED, next_code
from farmdesk.work.portions import block_words
from farmdesk.work.slips import Usual, kept_rows, net_g, sacks_of, unusual, usual_of

CREW_D = 14  # who weighed in so many days before is expected on the sheet (common practice, no source)
HOURS = {"am": 12, "pm": 16}  # when a half-day's sacks are weighed, where no hour was written (common practice)
ROUND_OPEN_D = 3  # a round's later days count against its plan (common practice, no source)


@dataclass(frozen=True, slots=True)
class SheetKey:
    """Which sheet: a lot, a block, a half-day (`am`, `pm`) of a farm day."""

    lot: str
    block: str
    half_day: str
    day: date


@dataclass(frozen=True, slots=True)
class SlipRow:
    """One row as written: weights [g], the number as typed, when, whether the code is known and the weight usual."""

    entry: str
    picker: str
    gross_g: int
    tare_g: int
    typed: str
    written_utc_s: int
    known: bool
    unusual: bool = False  # far from what its picker brings

    @property
    def net_g(self) -> int:
        """What was in the sack [g]."""
        return self.gross_g - self.tare_g


@dataclass(frozen=True, slots=True)
class Column:
    """The total of one half-day and block of the lot on that day [g], and its sacks."""

    block: str
    half_day: str
    grams: int
    sacks_n: int


@dataclass(frozen=True, eq=False)
class WeighSheet:
    """A sheet with everything that its page shows, at an instant [UTC s]. `crew` are the codes on the paper."""

    at_utc_s: int
    key: SheetKey
    check: str
    variety: str
    rows: tuple[SlipRow, ...]
    skipped: tuple[str, ...]  # pickers whose sack was not weighed
    columns: tuple[Column, ...]
    total_g: int
    day_g: int
    plan_g: int | None
    plan_rests_on: Text | None
    platform_g: int | None
    crew: tuple[str, ...]
    usual: dict[str, Usual]
    kept: Text | None
    next_hour_utc_s: int

    @property
    def next_picker(self) -> str:
        """The code that the paper's next row most likely carries: the one after the last row's."""
        if not self.rows:
            return self.crew[0] if self.crew else ""
        last = self.rows[-1].picker
        done = {row.picker for row in self.rows} | set(self.skipped)
        after = self.crew[self.crew.index(last) + 1 :] if last in self.crew else self.crew
        return next((code for code in after if code not in done), "")


def sheet_of(
    farm: OpenFarm, key: SheetKey | None = None, at_utc_s: int | None = None, *, now_utc_s: int | None = None
) -> WeighSheet:
    """A sheet at an instant [UTC s]; without a key the one that is most likely typed at `now_utc_s` [UTC s].

    Without an instant all that is known counts, sacks of the coming minutes too. Raises NotPossible where no
    lot has begun.
    """
    picture = farm.seen(at_utc_s)
    now = now_of(picture) if now_utc_s is None else now_utc_s
    key = key or likely(picture, now)
    if key is None:
        raise NotPossible(
            N_("weigh_grid", "No lot has begun, so there is nothing to weigh in."),
            N_("weigh_grid", "Begin one: g on the page Picking."),
        )
    lot = picture.lots.get(key.lot)
    rows = rows_of(picture, key)
    columns = _columns(picture, lot, key.day) if lot else ()
    plan, rests = planned(picture, key.lot, key.block, key.day)
    variety = picture.things.blocks[key.block].variety if key.block in picture.things.blocks else ""
    crew = crew_of(picture, key.day)
    by_picker: dict[str, list[Entry[WeighIn]]] = {}
    own = {row.entry for row in rows}
    for sack in sacks_of(picture):
        if sack.id not in own:
            by_picker.setdefault(sack.body.picker, []).append(sack)
    usual = {picker: found for picker, sacks in by_picker.items() if (found := usual_of(sacks))}
    day = key.day.isoformat()
    skipped = tuple(
        e.body.place
        for e in (lot.of(Skipped) if lot else ())
        if e.body.quantity == f"weight {key.half_day}" and e.body.day == day
    )
    return WeighSheet(
        now, key, check_character(key.lot), variety, rows, skipped, columns, sum(row.net_g for row in rows),
        sum(column.grams for column in columns), plan, rests, _platform(picture, lot, key.day), crew, usual,
        kept_of(picture, now, key), _hour(picture, now, key, rows),
    )  # fmt: skip


def rows_of(picture: Picture, key: SheetKey) -> tuple[SlipRow, ...]:
    """The rows of a sheet in the order they were written."""
    people, sacks = picture.things.people, sacks_of(picture)
    return tuple(
        SlipRow(
            e.id, e.body.picker, e.body.gross_g, e.body.tare_g, e.body.typed, e.written_utc_s,
            e.body.picker in people if people else e.body.picker != UNASSIGNED, unusual(picture, e, sacks) is not None,
        )
        for e in kept_rows(picture, key.lot, key.block, key.half_day, key.day)
    )  # fmt: skip


def likely(picture: Picture, now_utc_s: int) -> SheetKey | None:
    """The sheet most likely typed at an instant [UTC s]: an unfinished one, else today's plan, else the newest lot."""
    last = _last_written(picture)
    if last is not None and _unfinished(picture, last):
        return last
    time = picture.time
    today, local = time.farm_day(now_utc_s), time.local(now_utc_s)
    half = "am" if local.hour < 14 and local.date() == today else "pm"
    lots = _lots(picture)
    if not lots:
        return None
    plan = next((e.body for e in picture.general_of(Round) if e.body.day == today.isoformat()), None)
    open_lots = [code for code in lots if _open(picture.lots[code], today, picture)]
    code = open_lots[0] if open_lots else lots[0]
    lot = picture.lots[code]
    sacks = lot.of(WeighIn)
    block = plan.block if plan else sacks[-1].body.block if sacks else next(iter(picture.things.blocks), UNASSIGNED)
    return SheetKey(code, block, half, today)


def _open(lot: LotPicture, today: date, picture: Picture) -> bool:
    """Whether a lot may still take sacks: begun, and nothing weighed yet or not before yesterday."""
    days = [picture.time.farm_day(e.happened_utc_s) for e in lot.of(WeighIn)]
    return not days or max(days) >= today - timedelta(days=1)


def _lots(picture: Picture) -> tuple[str, ...]:
    """Lots that have begun, the newest first."""
    begun = [lot for lot in picture.lots.values() if lot.birth is not None]
    return tuple(lot.code for lot in sorted(begun, key=lambda lot: (lot.born_utc_s, lot.code), reverse=True))


def crew_of(picture: Picture, day: date) -> tuple[str, ...]:
    """The codes on the paper, in its order: pickers of the last days; before anybody weighed, all pickers."""
    first = day - timedelta(days=CREW_D)
    seen = {
        e.body.picker
        for e in sacks_of(picture)
        if first <= picture.time.farm_day(e.happened_utc_s) <= day and e.body.picker != UNASSIGNED
    }
    known = [code for code, person in picture.things.people.items() if person.role == "picker"]
    if not seen:
        return tuple(known)
    return tuple(sorted(seen))


def planned(picture: Picture, lot: str, block: str, day: date) -> tuple[int | None, Text | None]:
    """What is meant to come [g]: the round planned for the block, else the lot's plan; and what says so."""
    for e in reversed(picture.general_of(Round)):
        if e.body.block == block and 0 <= (day - date.fromisoformat(e.body.day)).days <= ROUND_OPEN_D:
            text = N_("weigh_grid", "round of block {block} planned for {day}", block=block,
                      day=Day(date.fromisoformat(e.body.day), weekday=True))  # fmt: skip
            return e.body.grams, text
    known = picture.lots.get(lot)
    for plan in reversed(known.of(Plan) if known else ()):
        return plan.body.grams, N_("weigh_grid", "planned for {lot}", lot=lot)
    return None, None


def _columns(picture: Picture, lot: LotPicture, day: date) -> tuple[Column, ...]:
    sums: dict[tuple[str, str], tuple[int, int]] = {}
    for e in lot.of(WeighIn):
        if picture.time.farm_day(e.happened_utc_s) == day:
            grams, n = sums.get((e.body.block, e.body.half_day), (0, 0))
            sums[(e.body.block, e.body.half_day)] = (grams + net_g(e.body), n + 1)
    order = sorted(sums, key=lambda key: (HALF_DAYS.index(key[1]), key[0]))
    return tuple(Column(block, half, *sums[(block, half)]) for block, half in order)


def _platform(picture: Picture, lot: LotPicture | None, day: date) -> int | None:
    said = [e.body.grams for e in (lot.of(Platform) if lot else ()) if picture.time.farm_day(e.happened_utc_s) == day]
    return sum(said) if said else None


def _hour(picture: Picture, now_utc_s: int, key: SheetKey, rows: tuple[SlipRow, ...]) -> int:
    """When the sacks of the sheet were weighed: the hour of its last row, else its half-day's usual hour."""
    if rows:
        return picture.book.by_id[rows[-1].entry].happened_utc_s
    return min(picture.time.instant(key.day, HOURS[key.half_day]), now_utc_s)


# what was kept


def _last_written(picture: Picture) -> SheetKey | None:
    """The sheet of the newest row of the notebook; None where something else was written after it."""
    if not picture.book.by_id:
        return None
    newest = max(picture.book.by_id.values(), key=lambda e: (e.written_utc_s, e.id))
    body = newest.body
    if not isinstance(body, WeighIn) or newest.id in picture.book.struck:
        return None
    return SheetKey(body.lot, body.block, body.half_day, picture.time.farm_day(newest.happened_utc_s))


def _unfinished(picture: Picture, key: SheetKey) -> bool:
    rows = rows_of(picture, key)
    return 0 < len(rows) < len(crew_of(picture, key.day))


def kept_of(picture: Picture, now_utc_s: int, key: SheetKey | None = None) -> Text | None:
    """One sentence about the sheet that was being typed last, as said at an instant [UTC s], while its rows are
    fewer than its pickers: `19 rows of 26 kept, the last at 18:41`; None when nothing is left open.
    """
    last = _last_written(picture)
    if last is None or (key is not None and key != last) or not _unfinished(picture, last):
        return None
    rows = rows_of(picture, last)
    at = picture.time.local(rows[-1].written_utc_s)
    today = picture.time.local(now_utc_s).date()
    return N_(
        "weigh_grid", "{n} {n:row|rows} of {all} kept, the last at {at}", n=len(rows), all=len(crew_of(picture, last.day)),
        at=Moment(at, weekday=True, clock=at.date() == today),
    )  # fmt: skip


def said_of(key: SheetKey) -> Text:
    """A sheet as it is spoken of: `25-16W, block D, pm, Tue 14 Jan`."""
    half = N_("weigh_grid", "morning") if key.half_day == "am" else N_("weigh_grid", "afternoon")
    return N_(
        "weigh_grid", "block {block}, {half}, {day}", block=block_words(key.block), half=half, day=Day(key.day, weekday=True)
    )  # fmt: skip


def usual_words(usual: Usual | None) -> Text | None:
    """What a picker usually brings, as it stands left of the box."""
    return None if usual is None else N_("weigh_grid", "{weight}", weight=Num(usual.middle_g / 1000, "", 1))


def plan_words(sheet: WeighSheet) -> Text:
    """The day's sum beside its plan."""
    if sheet.plan_g is None:
        return N_("weigh_grid", "{weight} today; nothing was planned", weight=kg(sheet.day_g, 1))
    return N_("weigh_grid", "{weight} of {plan} planned", weight=kg(sheet.day_g, 1), plan=kg(sheet.plan_g, about=True))


def proposed_code(farm: OpenFarm, method: str) -> tuple[str, str]:
    """The next lot's code of a method, and its check character."""
    code = next_code(farm, method)
    return code, check_character(code)
