"""What a picker usually brings, and the one question about a slip that looks wrong.

A slip is one line of the weigh-in paper. Asked, at most once a weight, the likeliest first: the same slip
again, pounds for kilograms, two digits swapped, the decimal point forgotten, far more than anybody carries.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import date
from itertools import pairwise
from statistics import median

from farmdesk.errors import Answer, Asked, Question
from farmdesk.picture.entries import Entry, WeighIn
from farmdesk.picture.picture import Picture
from farmdesk.text import N_, Moment, Num, Text, kg
from farmdesk.units import LB_G
from farmdesk.work.changes import Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.guards import KEEP

LAST_N = 10  # sacks a picker's usual rests on
LEAST_N = 3  # fewer sacks are no usual (common practice, no source)
TRAP_FRAC = 0.06  # how near the ratio must come to a pound's (common practice, no source)
WIDE_FRAC = 0.20  # a picker's usual is at least so wide either way (common practice, no source)
HIT_FRAC = 0.06  # swapped digits are only asked about where they come so near the middle (common practice, no source)
LEVEL_N = 5  # rows of a sheet that say what the day gives (common practice, no source)
NEAR_S = 300  # the same weight so soon after is the same sack twice
FAR_TIMES = 2.0  # so many times the usual is asked about (common practice, no source)
SACKS_MOST_KG = (
    150.0  # of a picker of whom nothing is known; what a platform scale reaches (common practice, no source)
)
KEYS = (
    "comma",
    "same",
    "slip",
    "pounds",
    "swap",
    "point",
    "far",
)  # one question a value: any of these answered, no other is asked
SAME, CORRECT = "same", "correct "  # nothing is written; the kept row behind it gives way


@dataclass(frozen=True, slots=True)
class Usual:
    """What a picker brings in a sack [g]: the middle of the last ten, and the band that surprises nobody."""

    middle_g: int
    low_g: int
    high_g: int
    nets_g: tuple[int, ...]  # the sacks it rests on, in order

    def holds(self, net_g: float) -> bool:
        """Whether a net weight [g] lies in the band."""
        return self.low_g <= net_g <= self.high_g

    def times(self, level: float) -> Usual:
        """The same where the day gives less, or more, to everybody: level [kg/kg]."""
        return Usual(round(self.middle_g * level), round(self.low_g * level), round(self.high_g * level), self.nets_g)


def known_now(farm: OpenFarm) -> Picture:
    """What is known at the hour of writing: everything, but in a practice season not the rows that come after it."""
    return farm.seen(farm.written_now()) if farm.things.farm.practice else farm.picture


def net_g(body: WeighIn) -> int:
    """What was in the sack [g]."""
    return body.gross_g - body.tare_g


def sacks_of(picture: Picture, picker: str = "") -> list[Entry[WeighIn]]:
    """All sacks, or one picker's, in order of happening."""
    found = [e for lot in picture.lots.values() for e in lot.of(WeighIn) if not picker or e.body.picker == picker]
    return sorted(found, key=lambda e: (e.happened_utc_s, e.written_utc_s, e.id))


def usual_of(sacks: list[Entry[WeighIn]]) -> Usual | None:
    """The usual of these sacks of one picker, in order; None for too few. Spread by the median deviation."""
    nets = [net_g(e.body) for e in sacks][-LAST_N:]
    if len(nets) < LEAST_N:
        return None
    middle = median(nets)
    half = max(3 * 1.4826 * median(abs(n - middle) for n in nets), WIDE_FRAC * middle)
    return Usual(round(middle), round(middle - half), round(middle + half), tuple(nets))


def level_of(picture: Picture, lot: str, block: str, half_day: str, day: date) -> float:
    """What this half-day gives against what its pickers usually bring: the median ratio of the rows so far."""
    rows = kept_rows(picture, lot, block, half_day, day)
    own = {e.id for e in rows}
    by_picker: dict[str, list[Entry[WeighIn]]] = {}
    for sack in sacks_of(picture):
        if sack.id not in own:
            by_picker.setdefault(sack.body.picker, []).append(sack)
    usual = {e.id: usual_of(by_picker.get(e.body.picker, [])) for e in rows}
    ratios = [net_g(e.body) / u.middle_g for e in rows if (u := usual[e.id])]
    return median(ratios) if len(ratios) >= LEVEL_N else 1.0


def swapped(typed: str, usual: Usual, tare_g: int) -> str | None:
    """A typed number with two neighbouring digits swapped so that it hits the usual; None where none does."""
    best: tuple[float, str] | None = None
    at = [i for i, sign in enumerate(typed) if sign.isdigit()]
    for i, j in pairwise(at):
        signs = list(typed)
        signs[i], signs[j] = signs[j], signs[i]
        other = "".join(signs)
        net = float(other.replace(",", ".")) * 1000 - tare_g
        if other == typed or net <= 0:
            continue
        apart = abs(math.log(net / usual.middle_g))
        if apart < HIT_FRAC:
            best = min(best, (apart, other)) if best else (apart, other)
    return best[1] if best else None


@dataclass(frozen=True, slots=True)
class Slip:
    """A line about to be written: where it belongs, and its weights [g] with the number as typed."""

    lot: str
    block: str
    picker: str
    half_day: str
    day: date
    at_utc_s: int
    gross_g: int
    tare_g: int
    number: str  # digits as typed, without a unit

    @property
    def net_g(self) -> int:
        """What is in the sack [g]."""
        return self.gross_g - self.tare_g

    def is_of(self, entry: Entry[WeighIn], day: date) -> bool:
        """Whether a sack stands on the same sheet under the same code."""
        body = entry.body
        own = (self.lot, self.block, self.picker, self.half_day, self.day)
        return own == (body.lot, body.block, body.picker, body.half_day, day)


def look(picture: Picture, slip: Slip, hand: Hand, *, bare: bool, retyped_from_utc_s: int | None, without: str) -> str:
    """What is to be done with a slip: `write`, `same` (it is kept already), `correct` a kept row, `lb`, or the
    number meant.

    `bare`: the number was typed without a unit, so pounds or swapped digits may be asked about.
    `retyped_from_utc_s`: slips kept before that instant [UTC s] are being typed again. `without`: a row that
    is being corrected does not count. Raises Asked.
    """
    answers = hand.answers
    asked = next((key for key in KEYS if key in answers and key != "comma"), "")
    time = picture.time
    sacks = [e for e in sacks_of(picture, slip.picker) if e.id != without]
    kept = [e for e in sacks if slip.is_of(e, time.farm_day(e.happened_utc_s))]
    before = [e for e in kept if retyped_from_utc_s is not None and e.written_utc_s < retyped_from_utc_s]
    if any(net_g(e.body) == slip.net_g for e in before) and not asked:
        return SAME
    if asked:
        answer = answers[asked]
        acts = answer in (SAME, "lb") or answer.startswith(CORRECT) or (asked in ("swap", "point") and answer != KEEP)
        return answer if acts else "write"
    if "comma" in answers:
        return "write"
    if before:
        raise Asked(_other_weight(picture, slip, before[-1]))
    twin = next((e for e in reversed(kept) if net_g(e.body) == slip.net_g), None) or next(
        (
            e
            for e in reversed(sacks)
            if net_g(e.body) == slip.net_g
            and e.body.half_day == slip.half_day
            and abs(e.happened_utc_s - slip.at_utc_s) <= NEAR_S
        ),
        None,
    )
    if twin is not None:
        raise Asked(_same(picture, slip, twin))
    usual = usual_of(sacks)
    if bare and usual is not None:
        _pounds(slip, usual)
    if usual is not None and not usual.holds(slip.net_g):
        here = usual.times(level_of(picture, slip.lot, slip.block, slip.half_day, slip.day))
        if bare and not here.holds(slip.net_g):
            _swap(slip, here)
            _point(slip, here)
        _far(slip, here)
    elif usual is None and slip.net_g > SACKS_MOST_KG * 1000:
        text = N_("picking", "{weight} is more than a platform scale reaches. Is it right?", weight=kg(slip.net_g, 1))
        raise Asked(Question("gross", "far", text, (Answer(KEEP, N_("picking", "it is right")),)))
    return "write"


def unusual(picture: Picture, sack: Entry[WeighIn], all_sacks: list[Entry[WeighIn]] | None = None) -> Usual | None:
    """The usual that a written sack falls out of, by its picker's sacks before it and what its half-day gives.

    `all_sacks` are those of the picture in order, where somebody has them already.
    """
    body = sack.body
    sacks = sacks_of(picture) if all_sacks is None else all_sacks
    before = [e for e in sacks if e.body.picker == body.picker and e.happened_utc_s < sack.happened_utc_s]
    usual = usual_of(before)
    if usual is None or usual.holds(net_g(body)):
        return None
    day = picture.time.farm_day(sack.happened_utc_s)
    here = usual.times(level_of(picture, body.lot, body.block, body.half_day, day))
    return None if here.holds(net_g(body)) else here


def _same(picture: Picture, slip: Slip, twin: Entry[WeighIn]) -> Question:
    """The same code, half-day and weight: is it one slip? On a sheet kept earlier, all its rows are meant."""
    sheet = kept_rows(picture, slip.lot, slip.block, slip.half_day, slip.day)
    last = max((e.written_utc_s for e in sheet), default=twin.written_utc_s)
    local = picture.time.local(last)
    text = N_(
        "picking", "{picker} {weight} stands there already; {n} {n:row|rows} of this sheet {n:was|were} kept, the last {at}. Same slips?",
        picker=slip.picker, weight=Num(slip.net_g / 1000, "kg", 1), n=len(sheet), at=Moment(local, weekday=True),
    )  # fmt: skip
    if twin.body.lot != slip.lot or len(sheet) < 2:
        text = N_(
            "picking", "{picker} {weight} was written at {at} already. The same slip?",
            picker=slip.picker, weight=Num(slip.net_g / 1000, "kg", 1),
            at=Moment(picture.time.local(twin.written_utc_s), clock=True),
        )  # fmt: skip
    same = Answer(SAME, N_("picking", "the same, kept once"))
    return Question("gross", "same", text, (same, Answer(KEEP, N_("picking", "another sack"))))


def _other_weight(picture: Picture, slip: Slip, kept: Entry[WeighIn]) -> Question:
    text = N_(
        "picking", "The slip of {picker} kept {at} says {kept}; this one says {now}. Which is right?",
        picker=slip.picker, at=Moment(picture.time.local(kept.written_utc_s), weekday=True),
        kept=Num(net_g(kept.body) / 1000, "kg", 1), now=Num(slip.net_g / 1000, "kg", 1),
    )  # fmt: skip
    return Question(
        "gross", "slip", text,
        (
            Answer(SAME, N_("picking", "the one kept")),
            Answer(CORRECT + kept.id, N_("picking", "this one, correct it")),
            Answer(KEEP, N_("picking", "both: another sack")),
        ),
    )  # fmt: skip


def _pounds(slip: Slip, usual: Usual) -> None:
    ratio = slip.net_g / usual.middle_g
    if any(abs(ratio / trap - 1) < TRAP_FRAC for trap in (1000 / LB_G, LB_G / 1000)):
        text = N_(
            "picking",
            "{typed} is {ratio} times what {picker} usually brings. Kilograms or pounds?",
            typed=Num(slip.net_g / 1000, "", 1),
            ratio=Num(ratio, "", 1),
            picker=slip.picker,
        )
        pounds = (
            Answer("kg", N_("picking", "kilograms")),
            Answer("lb", N_("picking", "pounds: {weight}", weight=kg(slip.gross_g / 1000 * LB_G, 1))),
        )
        raise Asked(Question("gross", "pounds", text, pounds))


def _point(slip: Slip, usual: Usual) -> None:
    value = float(slip.number.replace(",", "."))
    meant = next((f"{value * by:g}" for by in (0.1, 10) if usual.holds(value * by * 1000 - slip.tare_g)), None)
    if meant is None:
        return
    text = N_(
        "picking", "{picker} usually brings {low}–{high}; {typed} does not fit, {other} would. Is the point right?",
        picker=slip.picker, low=Num(usual.low_g / 1000), high=Num(usual.high_g / 1000, "kg"), typed=slip.number,
        other=meant,
    )  # fmt: skip
    answers = (Answer(meant, N_("picking", "{other} is meant", other=meant)), _right(slip))
    raise Asked(Question("gross", "point", text, answers))


def _far(slip: Slip, usual: Usual) -> None:
    if slip.net_g <= FAR_TIMES * usual.middle_g:
        return
    text = N_(
        "picking", "{weight} is {ratio} times what {picker} usually brings. Is it right?",
        weight=kg(slip.net_g, 1), ratio=Num(slip.net_g / usual.middle_g, "", 1), picker=slip.picker,
    )  # fmt: skip
    raise Asked(Question("gross", "far", text, (_right(slip),)))


def _right(slip: Slip) -> Answer:
    return Answer(KEEP, N_("picking", "{typed} is right", typed=slip.number))


def _swap(slip: Slip, usual: Usual) -> None:
    other = swapped(slip.number, usual, slip.tare_g)
    if other is not None:
        text = N_(
            "picking", "{picker} usually brings {low}–{high}; {typed} does not fit, {other} would. Digits swapped?",
            picker=slip.picker, low=Num(usual.low_g / 1000), high=Num(usual.high_g / 1000, "kg"), typed=slip.number,
            other=other,
        )  # fmt: skip
        meant = Answer(other, N_("picking", "{other}, swapped", other=other))
        raise Asked(Question("gross", "swap", text, (meant, _right(slip))))


def kept_rows(picture: Picture, lot: str, block: str, half_day: str, day: date) -> list[Entry[WeighIn]]:
    """The rows of one sheet, in the order they were written."""
    known = picture.lots.get(lot)
    rows = [
        e
        for e in (known.of(WeighIn) if known else ())
        if e.body.block == block and e.body.half_day == half_day and picture.time.farm_day(e.happened_utc_s) == day
    ]
    return sorted(rows, key=lambda e: (e.written_utc_s, e.happened_utc_s, e.id))


def kept_words(n: int, of_n: int, last: Moment) -> Text:
    """What is on disk of a sheet: `19 rows of 26 kept, the last at 18:41`."""
    if of_n > n:
        return N_("picking", "{n} {n:row|rows} of {all} kept, the last at {at}", n=n, all=of_n, at=last)
    return N_("picking", "{n} {n:row|rows} kept, the last at {at}", n=n, at=last)
