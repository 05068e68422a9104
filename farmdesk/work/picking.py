"""From the picker's sack to the lot: lots begun, sacks weighed, ripeness counted, sort and float."""

from __future__ import annotations

from collections.abc import Mapping
from statistics import median

from farmdesk.errors import Answer, NotPossible
from farmdesk.picture.codes import lot_code, read_code
from farmdesk.picture.entries import FLOATERS, INTAKE, SORTED, Birth, Flow, Platform, Posting, Ripeness, WeighIn
from farmdesk.text import N_, Num, kg
from farmdesk.units import LB_G
from farmdesk.work.changes import Done, Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.guards import ask, held, not_ahead, weight

HALF_DAYS = ("am", "pm")


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
    hand: Hand = Hand(),
) -> Done:
    """One sack on the scale, as typed (`58.1`, `128 lb`); a bare number is kilograms.

    Asks once when the weight is about 2.2 times, or half, what this picker usually brings.
    """
    if half_day not in HALF_DAYS:
        raise NotPossible(N_("picking", "A half-day is am or pm, not “{typed}”.", typed=half_day))
    if farm.things.blocks and block not in farm.things.blocks:
        raise NotPossible(N_("picking", "The farm has no block {block}.", block=block))
    gross_g, text = weight(gross, hand)
    tare_g = weight(tare, hand)[0] if tare.strip() else 0
    if tare_g >= gross_g:
        raise NotPossible(
            N_("picking", "The tare of {tare} is not less than {gross}.", tare=kg(tare_g, 1), gross=kg(gross_g, 1))
        )
    not_ahead(farm, at_utc_s, hand)
    if text.replace(" ", "").lower().endswith("kg"):
        answer = _kilograms_or_pounds(farm, picker, gross_g - tare_g, hand)
        if answer == "lb":
            gross_g, text = round(gross_g / 1000 * LB_G), text.lower().replace("kg", "lb")
    body = WeighIn(lot, block, picker, half_day, gross_g, tare_g, text)
    label = N_("picking", "{weight} of {picker} for {lot}", weight=kg(gross_g - tare_g, 1), picker=picker, lot=lot)
    return farm.write([body], at_utc_s, hand, label, lot=lot)


def _kilograms_or_pounds(farm: OpenFarm, picker: str, net_g: int, hand: Hand) -> str:
    """The pound trap: a weight within 6 % of 2.2046 or 0.4536 times the picker's last ten median."""
    usual = [
        entry.body.gross_g - entry.body.tare_g
        for lot in farm.picture.lots.values()
        for entry in lot.of(WeighIn)
        if entry.body.picker == picker
    ][-10:]
    if len(usual) < 3:
        return "kg"
    ratio = net_g / median(usual)
    if not any(abs(ratio / trap - 1) < 0.06 for trap in (1000 / LB_G, LB_G / 1000)):
        return "kg"
    text = N_(
        "picking",
        "{typed} is {ratio} times what {picker} usually brings. Kilograms or pounds?",
        typed=Num(net_g / 1000, "", 1),
        ratio=Num(ratio, "", 1),
        picker=picker,
    )
    return ask(
        hand, "weight", "pounds", text, Answer("kg", N_("picking", "kilograms")), Answer("lb", N_("picking", "pounds"))
    )


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
    farm: OpenFarm, lot: str, *, sorted_out: str, floaters: str, at_utc_s: int, hand: Hand = Hand()
) -> Done:
    """What leaves the delivery by hand sort and by floating; what stays is accepted."""
    sorted_g, sorted_text = weight(sorted_out, hand)
    floaters_g, floaters_text = weight(floaters, hand)
    books = farm.picture.lots.get(lot)
    if books is not None:
        held(books, INTAKE, sorted_g + floaters_g, hand)
        if books.delivered_g and floaters_g > 0.25 * books.delivered_g:
            text = N_(
                "picking",
                "{share} of this delivery floated; usually it is under a quarter.",
                share=Num(100 * floaters_g / books.delivered_g, "%"),
            )
            ask(hand, "floaters", "floaters", text)
    postings = (
        Posting(lot, INTAKE, -sorted_g - floaters_g),
        Posting(lot, SORTED, sorted_g, typed=sorted_text),
        Posting(lot, FLOATERS, floaters_g, typed=floaters_text),
    )
    label = N_("picking", "sort and float of {lot}", lot=lot)
    return farm.write([Flow(lot, "sort", postings)], at_utc_s, hand, label, lot=lot)
