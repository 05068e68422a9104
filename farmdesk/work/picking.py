"""From the picker's sack to the lot: lots begun, sacks weighed, ripeness counted, sort and float."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from datetime import date

from farmdesk.errors import Answer, NotPossible
from farmdesk.picture.codes import lot_code, read_code
from farmdesk.picture.entries import (
    FLOATERS,
    INTAKE,
    SORTED,
    Birth,
    Body,
    Entry,
    Flow,
    Line,
    Platform,
    Posting,
    Reading,
    Remark,
    Ripeness,
    Skipped,
    WeighIn,
)
from farmdesk.text import N_, Num, Text, kg
from farmdesk.units import LB_G
from farmdesk.work.changes import Changes, Done, Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.guards import KEEP, ask, between, held, not_ahead, weight
from farmdesk.work.slips import CORRECT, SAME, Slip, kept_rows, known_now, look, net_g

HALF_DAYS = ("am", "pm")
UNASSIGNED = "?"  # a sack whose picker, or whose block, is not known yet
DRAINED = "drained_min"  # cherry weighed wet after floating, and for how long it had drained [min]
COLUMN_G = 50  # the scale's last digit: so far apart a column and its rows are equal


def next_code(farm: OpenFarm, method: str) -> str:
    """The code the next lot of a method will carry."""
    season = farm.things.farm.season
    numbers = [int(code[3:5]) for code in farm.picture.lots if code.startswith(season + "-") and code[3:5].isdigit()]
    return lot_code(season, max(numbers, default=0) + 1, method)


def begin_lot(
    farm: OpenFarm, method: str, at_utc_s: int, *, code: str = "", alias: str = "", hand: Hand = Hand()
) -> Done:
    """Make a lot: its code is given, or the next number with the method's letter.

    Raises NotPossible for a code that exists, or a method the farm does not have.
    """
    known = farm.things.method(method)
    if known is None:
        raise NotPossible(N_("picking", "The farm has no method {letter}.", letter=method))
    code = read_code(code) if code else next_code(farm, method)
    lot = farm.picture.lots.get(code)
    if lot is not None and lot.birth is not None:
        raise NotPossible(N_("picking", "{code} exists already.", code=code))
    not_ahead(farm, at_utc_s, hand)
    label = N_("picking", "{code} begun", code=code)
    return farm.write([Birth(code, method, known.version, alias)], at_utc_s, hand, label, lot=code)


def weigh_in(
    farm: OpenFarm,
    lot: str,
    *,
    block: str,
    picker: str,
    half_day: str,
    gross: str,
    at_utc_s: int,
    tare: str = "",
    unit: str = "kg",
    retyped_from_utc_s: int | None = None,
    replaces: str = "",
    hand: Hand = Hand(),
) -> Done:
    """One sack on the scale, as typed (`58.1`, `128 lb`); a bare number is in `unit`, kilograms or what the sheet is in.

    Asks once, about what is likeliest: the same slip again, pounds for kilograms, two digits swapped. Nothing
    is written of a slip that is kept already. `retyped_from_utc_s`: rows of this sheet written before that
    instant [UTC s] are known to be typed again, so those that agree are not asked about. `replaces` names
    a row that this one corrects. Raises NotPossible, Asked.
    """
    if half_day not in HALF_DAYS:
        raise NotPossible(N_("picking", "A half-day is am or pm, not “{typed}”.", typed=half_day))
    if farm.things.blocks and block not in farm.things.blocks:
        raise NotPossible(N_("picking", "The farm has no block {block}.", block=block))
    number = gross.strip()
    bare = re.fullmatch(r"\d+([.,]\d+)?", number) is not None
    gross_g, text = weight(_in_unit(number, unit), hand)
    tare_g = weight(_in_unit(tare.strip(), unit), hand)[0] if tare.strip() else 0
    if tare_g >= gross_g:
        raise NotPossible(
            N_("picking", "The tare of {tare} is not less than {gross}.", tare=kg(tare_g, 1), gross=kg(gross_g, 1))
        )
    not_ahead(farm, at_utc_s, hand)
    picker = picker.strip().upper() or UNASSIGNED
    label = N_("picking", "{weight} of {picker} for {lot}", weight=kg(gross_g - tare_g, 1), picker=picker, lot=lot)
    slip = Slip(lot, block, picker, half_day, farm.time.farm_day(at_utc_s), at_utc_s, gross_g, tare_g, number)
    found = look(
        known_now(farm), slip, hand, bare=bare and unit == "kg", retyped_from_utc_s=retyped_from_utc_s, without=replaces
    )
    if found == SAME:
        return Done(Changes(), (), N_("picking", "{picker} is kept already", picker=picker), None, lot)
    if found == "lb":
        gross_g, text = round(gross_g / 1000 * LB_G), text.lower().replace("kg", "lb")
    elif found not in ("write", SAME) and not found.startswith(CORRECT):
        gross_g, text = weight(found, hand)
    body = WeighIn(lot, block, picker, half_day, gross_g, tare_g, text)
    kept = found.removeprefix(CORRECT) if found.startswith(CORRECT) else ""
    done = farm.write([body], at_utc_s, hand, label, replaces=replaces or kept, lot=lot)
    return _instead(farm, done, kept, "typed again from the slip") if kept else done


def _in_unit(typed: str, unit: str) -> str:
    """A bare number with the unit its sheet is in; a unit that was typed stays."""
    return f"{typed} {unit}" if typed and unit != "kg" and not typed[-1].isalpha() else typed


def _instead(farm: OpenFarm, done: Done, kept: str, reason: str) -> Done:
    """Strike the row that another one has taken the place of; both are one act."""
    struck = farm.strike([kept], reason)
    ids = (*done.entries, *struck.entries)
    label = N_("picking", "correction of a slip")
    return Done(done.changes | struck.changes, ids, label, lambda farm: farm.strike(ids), done.lot)


def correct_slip(
    farm: OpenFarm, entry: str, *, picker: str, gross: str, tare: str = "", reason: str, hand: Hand = Hand()
) -> Done:
    """A row of a sheet as it should have been: the new one is written, the old one struck with its reason.

    Raises NotPossible for a row that is not there or no reason; Asked as `weigh_in` does.
    """
    found = farm.picture.book.by_id.get(entry)
    if found is None or not isinstance(found.body, WeighIn) or entry in farm.picture.book.struck:
        raise NotPossible(N_("picking", "There is no such row on the sheet."))
    if not reason.strip():
        raise NotPossible(N_("picking", "A correction needs its reason."))
    body = found.body
    done = weigh_in(
        farm, body.lot, block=body.block, picker=picker, half_day=body.half_day, gross=gross, tare=tare,
        at_utc_s=found.happened_utc_s, replaces=entry, hand=hand,
    )  # fmt: skip
    return _instead(farm, done, entry, reason) if done.entries else done


def check_column(
    farm: OpenFarm, lot: str, block: str, half_day: str, day: date, written: str, at_utc_s: int, hand: Hand = Hand()
) -> Done:
    """The total that the clerk wrote under a column, held against its rows; asked once where they differ.

    Names the row that as pounds, or with two digits swapped, would make them equal. A total that is kept
    although it differs stays as a remark on the lot. Raises Asked, NotPossible.
    """
    total_g, typed = weight(written, hand)
    rows = kept_rows(known_now(farm), lot, block, half_day, day)
    sum_g = sum(net_g(e.body) for e in rows)
    agrees = N_("picking", "{n} {n:row sums|rows sum} to {sum}, as the paper says", n=len(rows), sum=kg(sum_g, 1))
    if abs(sum_g - total_g) <= COLUMN_G:
        return Done(Changes(), (), agrees, None, lot)
    apart = N_(
        "picking", "The rows sum to {sum}, the paper says {total}: {apart} apart.", sum=kg(sum_g, 1),
        total=kg(total_g, 1), apart=kg(abs(sum_g - total_g), 1),
    )  # fmt: skip
    why = explains(rows, total_g - sum_g)
    asked = N_("picking", "{apart} {why}", apart=apart, why=why) if why else apart
    ask(hand, "column", "column", asked, Answer(KEEP, N_("picking", "the rows are right")))
    text = (
        f"{farm.time.farm_day(at_utc_s).isoformat()}: column {typed}, rows {sum_g / 1000:.1f} kg ({block} {half_day})"
    )
    return farm.write([Remark(lot, "", "note", text)], at_utc_s, hand, apart, lot=lot)


def explains(rows: Sequence[Entry[WeighIn]], apart_g: int) -> Text | None:
    """The row that would close a gap [g] if it were pounds, or two of its digits stood the other way round."""
    for entry in rows:
        body = entry.body
        if abs(body.gross_g * (LB_G / 1000 - 1) - apart_g) <= COLUMN_G:
            return N_(
                "picking", "{picker} {weight} taken as pounds would close it.", picker=body.picker,
                weight=kg(body.gross_g, 1),
            )  # fmt: skip
    for entry in rows:
        body = entry.body
        tens, ones = divmod(body.gross_g // 1000, 10)
        other_g = (ones * 10 + tens) * 1000 + body.gross_g % 1000
        if tens and tens < 10 and tens != ones and abs(other_g - body.gross_g - apart_g) <= COLUMN_G:
            return N_(
                "picking", "{picker} {weight} as {other} would close it.", picker=body.picker,
                weight=kg(body.gross_g, 1), other=kg(other_g, 1),
            )  # fmt: skip
    return None


def read_lot(farm: OpenFarm, typed: str) -> str:
    """A lot as a hand names it: its code, or in this season `13W` or `13` alone. Raises NotPossible."""
    typed = typed.strip().upper()
    season = farm.things.farm.season + "-"
    short = re.fullmatch(r"0*(\d+)([A-Z]?)", typed.removeprefix(season))
    lots = known_now(farm).lots
    found = []
    if short:
        wanted = re.compile(f"{season}0*{short[1]}{short[2] or '[A-Z]'}")
        found = [code for code in lots if wanted.fullmatch(code)]
    code = found[0] if len(found) == 1 else read_code(typed)
    lot = lots.get(code)
    if lot is None or lot.birth is None:
        raise NotPossible(
            N_("picking", "There is no lot {code} in this season.", code=code),
            N_("picking", "Begin it first: g on the page Picking."),
        )
    return code


def platform_total(farm: OpenFarm, lot: str, total: str, at_utc_s: int, hand: Hand = Hand()) -> Done:
    """The receiving scale's own total of a delivery, kept beside the sum of the sacks."""
    grams, text = weight(total, hand)
    label = N_("picking", "platform total {weight} for {lot}", weight=kg(grams, 1), lot=lot)
    return farm.write([Platform(lot, grams, text)], at_utc_s, hand, label, lot=lot)


def count_ripeness(
    farm: OpenFarm, lot: str, block: str, half_day: str, counts: Mapping[str, int], at_utc_s: int, hand: Hand = Hand()
) -> Done:
    """Fruits counted by class (green, turning, ripe, over_ripe, dried, bored)."""
    wrong = [name for name, n in counts.items() if n < 0 or name not in Ripeness.__dataclass_fields__]
    if wrong or sum(counts.values()) == 0:
        raise NotPossible(N_("picking", "A count needs whole numbers of fruits in its classes."))
    body = Ripeness(lot, block, half_day, **({"green": 0, "turning": 0, "ripe": 0} | dict(counts)))
    label = N_("picking", "ripeness count for {lot}", lot=lot)
    return farm.write([body], at_utc_s, hand, label, lot=lot)


def sort_and_float(
    farm: OpenFarm,
    lot: str,
    *,
    sorted_out: str,
    floaters: str,
    at_utc_s: int,
    drained: str = "",
    hand: Hand = Hand(),
) -> Done:
    """What leaves the delivery by hand sort and by floating; what stays is accepted.

    An empty weight was not measured: it is said so, and never posted as nothing. `drained` [min]: the cherry was
    weighed wet, after so long; its weight stays as it was read. Raises NotPossible, Asked.
    """
    if not sorted_out.strip() and not floaters.strip():
        raise NotPossible(N_("picking", "Neither what was sorted out nor what floated is there."))
    sorted_g, sorted_text = weight(sorted_out, hand) if sorted_out.strip() else (0, "")
    floaters_g, floaters_text = weight(floaters, hand) if floaters.strip() else (0, "")
    books = known_now(farm).lots.get(lot)
    if books is not None:
        held(books, INTAKE, sorted_g + floaters_g, hand)
        if books.delivered_g and floaters_g > 0.25 * books.delivered_g:
            text = N_(
                "picking",
                "{share} of this delivery floated; usually it is under a quarter.",
                share=Num(100 * floaters_g / books.delivered_g, "%"),
            )
            ask(hand, "floaters", "floaters", text)
    postings = [Posting(lot, INTAKE, -sorted_g - floaters_g)]
    day = farm.time.farm_day(at_utc_s).isoformat()
    bodies: list[Body] = []
    for account, grams, typed in ((SORTED, sorted_g, sorted_text), (FLOATERS, floaters_g, floaters_text)):
        if typed:
            postings.append(Posting(lot, account, grams, typed=typed))
        else:
            bodies.append(Skipped(lot, "", account.removeprefix(">"), day))
    if drained.strip():
        bodies.append(Reading(lot, "", DRAINED, (Line("", *between(drained, 0, 24 * 60, "min", hand)),)))
    label = N_("picking", "sort and float of {lot}", lot=lot)
    return farm.write([Flow(lot, "sort", tuple(postings)), *bodies], at_utc_s, hand, label, lot=lot)
