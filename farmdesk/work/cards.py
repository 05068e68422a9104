"""The cards of the lots: who, where, how wet, how heavy, and when it will be done."""

from __future__ import annotations

from farmdesk.picture.codes import check_character
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.measures import (
    accepted_g,
    blocks_g,
    came_from_field,
    family,
    green_g,
    pick_days,
    spread_g,
    stored_g,
)
from farmdesk.picture.picture import Picture
from farmdesk.text import ENGLISH, N_, Text
from farmdesk.work.doubts import weights_in_doubt
from farmdesk.work.farm import OpenFarm
from farmdesk.work.forecasts import ready
from farmdesk.work.portions import current, form_words, lies_at, method_words, state_of, where
from farmdesk.work.stories import LotCard, Weight
from farmdesk.work.strips import lot_strip

STATES = {
    "to come": N_("states", "to come"),
    "picking": N_("states", "picking"),
    "vessel": N_("states", "in a vessel"),
    "beds": N_("states", "on beds"),
    "store": N_("states", "in store"),
    "mill": N_("states", "at the mill"),
    "green": N_("states", "green"),
    "gone": N_("states", "gone"),
}


def lot_stages(picture: Picture, lot: LotPicture) -> tuple[tuple[Text, Weight], ...]:
    """Weights by stage as far as they came: delivered, accepted, spread, dry, green."""
    wet, dry = form_words(picture, lot)
    rows: list[tuple[Text, Weight]] = []
    if came_from_field(lot):
        rows.append((N_("stages", "delivered"), Weight(lot.delivered_g)))
        rows.append((N_("stages", "accepted"), Weight(accepted_g(lot))))
    for name, grams in ((wet, spread_g(lot)), (dry, stored_g(lot)), (N_("stages", "green"), green_g(lot))):
        if grams is not None:
            rows.append((name, Weight(grams)))
    return tuple(rows)


def blocks_of(picture: Picture, lot: LotPicture) -> dict[str, int]:
    """Grams [g] by block, through the parents of a joint lot."""
    own = blocks_g(lot, picture.time)
    if own:
        return own
    sums: dict[str, int] = {}
    for code, grams in family(lot)[0].items():
        parent = picture.lots.get(code)
        if parent is not None and code != lot.code:
            shares = blocks_of(picture, parent)
            total = sum(shares.values()) or 1
            for block, share in shares.items():
                sums[block] = sums.get(block, 0) + round(grams * share / total)
    return dict(sorted(sums.items(), key=lambda item: -item[1]))


def lot_card(picture: Picture, lot: LotPicture) -> LotCard:
    """One lot's card."""
    ahead = ready(picture, lot)
    state = state_of(picture, lot)
    grams, mark, moisture = current(picture, lot)
    days = pick_days(lot, picture.time)
    blocks = "+".join(blocks_of(picture, lot))
    place = where(picture, lot)
    alias = lot.birth.alias if lot.birth else ""
    places = tuple(lies_at(lot, (*picture.things.vessels, *picture.things.places)))
    method = method_words(lot)
    words = [lot.code, alias, str(method), f"block {blocks}", str(place), str(STATES[state]), *places]
    words += [ENGLISH.days(days[0], days[-1])] if days else []
    return LotCard(
        lot.code,
        check_character(lot.code),
        method,
        blocks,
        (days[0], days[-1]) if days else None,
        state,
        place,
        places,
        lot_strip(picture, lot, ahead),
        lot_stages(picture, lot),
        Weight(grams, mark),
        moisture.wb_frac if moisture else None,
        moisture.mark if moisture else "measured",
        ahead,
        len(lot.doubts) + len(weights_in_doubt(picture, lot)),
        " ".join(words).lower(),
        alias,
    )


def lot_cards(farm: OpenFarm, at_utc_s: int | None = None) -> list[LotCard]:
    """All lots as cards: those at work first (beds, vessels), then store and mill, the newest code first."""
    picture = farm.seen(at_utc_s)
    order = ["picking", "vessel", "beds", "store", "mill", "green", "gone", "to come"]
    cards = [lot_card(picture, lot) for lot in picture.lots.values() if lot.trail or lot.birth]
    cards.sort(key=lambda card: card.code, reverse=True)
    return sorted(cards, key=lambda card: order.index(card.state))
