"""Samples, holds and sales. What is promised never leaves the books; it is counted against what is free."""

from __future__ import annotations

from farmdesk.errors import NotPossible
from farmdesk.picture.entries import TOP, Hold, Parcel, ParcelNews, Sale
from farmdesk.text import N_, kg
from farmdesk.work.changes import Done, Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.guards import held, weight

NEWS = ("arrived", "lost", "answered", "approved", "declined")


def send_sample(
    farm: OpenFarm,
    lot: str,
    buyer: str,
    weighed: str,
    at_utc_s: int,
    *,
    sample_kind: str = "stock-lot",
    due_utc_s: int | None = None,
    instead_of: str = "",
    hand: Hand = Hand(),
) -> Done:
    """A sample leaves the top grade for a buyer; `instead_of` names the parcel that was lost."""
    grams, _ = weight(weighed, hand)
    if due_utc_s is not None and due_utc_s < at_utc_s:
        raise NotPossible(N_("selling", "A sample cannot be due before it is sent."))
    held(farm.lot(lot), TOP, grams, hand)
    label = N_("selling", "sample of {lot} to {buyer}", lot=lot, buyer=buyer)
    body = Parcel(lot, buyer, grams, sample_kind, due_utc_s, instead_of)
    return farm.write([body], at_utc_s, hand, label, lot=lot)


def parcel_news(
    farm: OpenFarm, lot: str, parcel: str, news: str, at_utc_s: int, *, text: str = "", hand: Hand = Hand()
) -> Done:
    """What became of a parcel: arrived, lost, answered, approved, declined."""
    if news not in NEWS:
        raise NotPossible(N_("selling", "“{news}” is no news of a parcel.", news=news))
    sent = farm.picture.book.by_id.get(parcel)
    if sent is not None and sent.happened_utc_s > at_utc_s:
        raise NotPossible(N_("selling", "A sample cannot arrive before it was sent."))
    label = N_("selling", "sample of {lot}: {news}", lot=lot, news=news)
    return farm.write([ParcelNews(lot, parcel, news, text)], at_utc_s, hand, label, lot=lot)


def hold(
    farm: OpenFarm,
    lot: str,
    buyer: str,
    weighed: str,
    until_utc_s: int,
    at_utc_s: int,
    *,
    price_usd_kg: float | None = None,
    hand: Hand = Hand(),
) -> Done:
    """Kept for a buyer at a price [USD/kg] until an instant; after it the kilograms are free again and the hold stays in history."""
    grams, _ = weight(weighed, hand)
    if until_utc_s <= at_utc_s:
        raise NotPossible(N_("selling", "A hold must end after it begins."))
    label = N_("selling", "{weight} of {lot} held for {buyer}", weight=kg(grams, 1), lot=lot, buyer=buyer)
    return farm.write([Hold(lot, buyer, grams, price_usd_kg, until_utc_s)], at_utc_s, hand, label, lot=lot)


def sell(
    farm: OpenFarm,
    lot: str,
    buyer: str,
    weighed: str,
    at_utc_s: int,
    *,
    price_usd_kg: float | None = None,
    approved: bool = True,
    account: str = TOP,
    hand: Hand = Hand(),
) -> Done:
    """Sold to a buyer at a price [USD/kg]; subject to approval (`approved=False`) nothing leaves the books yet."""
    grams, _ = weight(weighed, hand)
    if approved:
        held(farm.lot(lot), account, grams, hand)
    label = N_("selling", "{weight} of {lot} sold to {buyer}", weight=kg(grams, 1), lot=lot, buyer=buyer)
    return farm.write([Sale(lot, buyer, grams, price_usd_kg, approved, account)], at_utc_s, hand, label, lot=lot)
