"""A weight corrected long after: everything that follows from it is said before it is written."""

from __future__ import annotations

from typing import cast

from farmdesk.errors import Answer, NotPossible
from farmdesk.picture.entries import Entry, PaperGiven, Strike, WeighIn, Yeast
from farmdesk.picture.measures import accepted_g
from farmdesk.picture.picture import Picture
from farmdesk.text import N_, Day, Listing, Num, Text, kg
from farmdesk.work.changes import Done, Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.guards import ask, weight
from farmdesk.work.pay import pay_week
from farmdesk.work.pay_story import money, week_of
from farmdesk.work.picking import correct_slip
from farmdesk.work.settings import sign_of_money
from farmdesk.work.slips import known_now, net_g

REASONS = (
    Answer("the scale stood on pounds", N_("moves", "it was pounds")),
    Answer("digits swapped", N_("moves", "digits swapped")),
    Answer("read wrong from the slip", N_("moves", "read wrong")),
)
LOOKED_AT = {"same": "keep"}  # a weight corrected with its reason is asked nothing more


def moves(farm: OpenFarm, entry: str, corrected: WeighIn) -> tuple[Text, ...]:
    """What would follow from a row as corrected, without writing it: the lot, yeast, pay, papers given.

    `entry` is a sack of the notebook. Real grams stay: yeast that was pitched, money that was paid.
    """
    before = known_now(farm)
    old = cast("Entry[WeighIn]", before.book.by_id[entry])
    at = farm.written_now()
    after = before.after(
        [Entry("~corrected", old.happened_utc_s, at, corrected), Entry("~struck", at, at, Strike(entry))]
    )
    was, now = before.lots[old.body.lot], after.lots[old.body.lot]
    said: list[Text] = []
    if was.delivered_g != now.delivered_g:
        said.append(
            N_(
                "moves", "{lot} {was} → {now} delivered", lot=was.code, was=Num(was.delivered_g / 1000, "", 1),
                now=kg(now.delivered_g, 1),
            )
        )  # fmt: skip
    pitched = sum(e.body.yeast_g for e in was.of(Yeast))
    if pitched and accepted_g(was) > 0 and accepted_g(now) > 0:
        each = [1000 * pitched / accepted_g(lot) for lot in (was, now)]
        said.append(
            N_(
                "moves", "yeast stays {grams}, {was} → {now} on a kilogram", grams=Num(pitched, "g"),
                was=Num(each[0], "", 2), now=Num(each[1], "g", 2),
            )
        )  # fmt: skip
    said += _pay(before, after, old, corrected)
    for paper in was.of(PaperGiven):
        said.append(
            N_(
                "moves", "{paper} {n} of {day} went out with the old weight", paper=paper.body.paper,
                n=paper.body.version_n, day=Day(before.time.farm_day(paper.happened_utc_s)),
            )
        )  # fmt: skip
    return tuple(said)


def _pay(before: Picture, after: Picture, old: Entry[WeighIn], corrected: WeighIn) -> list[Text]:
    """Each picker's pay: an open week follows, a signed one stays and the next week settles it."""
    first = week_of(before, before.time.farm_day(old.happened_utc_s))
    name = sign_of_money(before.things)
    try:
        weeks = [pay_week(picture, first) for picture in (before, after)]
    except NotPossible:
        return []
    said = []
    for picker in dict.fromkeys((old.body.picker, corrected.picker)):
        rows = [next((row for row in week.rows if row.picker == picker), None) for week in weeks]
        was, now = (row.piece_cents + row.top_up_cents if row else 0 for row in rows)
        if was == now:
            continue
        if weeks[0].closed:
            text = N_(
                "moves", "the week from {day} is signed and stays; {picker} gets {money} in the next", day=Day(first),
                picker=picker, money=money(now - was, name),
            )  # fmt: skip
        else:
            text = N_(
                "moves", "pay of {picker} {was} → {now}", picker=picker, was=Num(was / 100, "", 2),
                now=money(now, name),
            )  # fmt: skip
        said.append(text)
    return said


def correct_later(
    farm: OpenFarm, entry: str, *, picker: str, gross: str, tare: str = "", sitting_utc_s: int, hand: Hand = Hand()
) -> Done:
    """A row of a sheet as it should have been. One written since the sitting began [UTC s] is put right at once;
    of an older one all that moves is said, and why is asked. Raises Asked, NotPossible.
    """
    old = farm.picture.book.by_id.get(entry)
    if old is None or not isinstance(old.body, WeighIn):
        raise NotPossible(N_("picking", "There is no such row on the sheet."))
    reason, answers, body = "typed wrong", hand.answers, old.body
    if old.written_utc_s < sitting_utc_s:
        gross_g, text = weight(gross, hand)
        tare_g = weight(tare, hand)[0] if tare.strip() else 0
        if tare_g >= gross_g:
            raise NotPossible(
                N_("picking", "The tare of {tare} is not less than {gross}.", tare=kg(tare_g, 1), gross=kg(gross_g, 1))
            )
        follows = moves(farm, entry, WeighIn(body.lot, body.block, picker, body.half_day, gross_g, tare_g, text))
        told = N_(
            "moves", "{picker}: {was} → {now}. It moves: {follows}. Why?", picker=picker, was=kg(net_g(body), 1),
            now=kg(gross_g - tare_g, 1), follows=Listing(follows, "; ") if follows else N_("moves", "nothing else"),
        )  # fmt: skip
        reason = ask(hand, "gross", "reason", told, *REASONS)
        answers = answers | LOOKED_AT
    again = Hand(hand.who or old.who, hand.instrument or old.instrument, hand.mark, hand.note, answers)
    return correct_slip(farm, entry, picker=picker, gross=gross, tare=tare, reason=reason, hand=again)
