"""Into the store, to the mill and back: weights, bags, slips."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from farmdesk.errors import NotPossible
from farmdesk.picture.entries import (
    ALL,
    GREEN,
    HUSK,
    MILL,
    PICKED_OUT,
    REST,
    RETAINED,
    STORE,
    TESTS,
    TOP,
    UNEXPLAINED,
    WATER,
    Birth,
    Flow,
    HullTest,
    Line,
    Posting,
    Reading,
    Screens,
    Shelved,
)
from farmdesk.picture.measures import stored_g
from farmdesk.text import N_, Num, kg
from farmdesk.work.changes import Done, Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.guards import ask, between, held, not_ahead, share, weight
from farmdesk.work.normals import like_own_lots
from farmdesk.work.picking import next_code

LIMIT_WB_FRAC = 0.125  # never above this into the store (Codex CXC 69-2009; ICO Resolution 420, 2004)


def shelve(
    farm: OpenFarm,
    lot: str,
    weighed: str,
    at_utc_s: int,
    *,
    from_places: Sequence[str] = (),
    bags_n: int = 0,
    pallet: str = "",
    layer: str = "",
    picked_out: str = "",
    hand: Hand = Hand(),
) -> Done:
    """Everything on these places (or on all the lot's beds) is weighed into the store; the rest was water.

    `picked_out` is what was picked out by hand before bagging, where it was weighed.

    Asked once when the last reading is above 12.5 %, or there is none.
    """
    grams, text = weight(weighed, hand)
    not_ahead(farm, at_utc_s, hand)
    books = farm.lot(lot)
    places = list(from_places) or [a for a, g in books.heaps.items() if g > 0 and a in farm.things.places]
    if not places:
        raise NotPossible(
            N_("storing", "{lot} lies on no bed in the books, so nothing can come into the store.", lot=lot)
        )
    last = [e for e in books.of(Reading) if e.body.quantity == "meter_wb_frac"]
    if not last:
        ask(
            hand, "weight", "unread", N_("storing", "{lot} has no meter reading. Into the store all the same?", lot=lot)
        )
    elif last[-1].body.value > LIMIT_WB_FRAC + 0.008:  # within a point of a meter's own error
        value = Num(last[-1].body.value * 100, "%", 1)
        ask(
            hand,
            "weight",
            "too wet",
            N_("storing", "{lot} last read {value}, above 12.5 %. Into the store all the same?", lot=lot, value=value),
        )
    if {account for account, left_g in books.heaps.items() if left_g > 0 and account in farm.things.places} <= set(
        places
    ):
        like_own_lots(farm, books, "stored", (stored_g(books) or 0) + grams, hand)
    postings = [Posting(lot, place, way=ALL) for place in places]
    postings.append(Posting(lot, STORE, grams, typed=text))
    if picked_out.strip():
        picked_g, picked_text = weight(picked_out, hand)
        postings.append(Posting(lot, PICKED_OUT, picked_g, typed=picked_text))
    postings.append(Posting(lot, WATER, way=REST))
    bodies: list[Flow | Shelved] = [Flow(lot, "shelve", tuple(postings))]
    if bags_n or pallet:
        bodies.append(Shelved(lot, bags_n, pallet, layer))
    label = N_("storing", "{weight} of {lot} into the store", weight=kg(grams), lot=lot)
    return farm.write(bodies, at_utc_s, hand, label, lot=lot)


def read_store_air(farm: OpenFarm, rh: str, at_utc_s: int, *, place: str = STORE, hand: Hand = Hand()) -> Done:
    """Relative humidity of the store's air in percent, there or between the bags of a pallet."""
    not_ahead(farm, at_utc_s, hand)
    body = Reading("", place, "store_rh_frac", (Line("", *share(rh, hand)),))
    return farm.write([body], at_utc_s, hand, N_("storing", "air of the store"))


def hull_test(
    farm: OpenFarm, lot: str, *, in_g: str, green_g: str, husk_g: str, at_utc_s: int, hand: Hand = Hand()
) -> Done:
    """A sample hulled by hand: what went in, green and husk that came out, in grams."""
    parts = [between(typed, 0, 5000, "g", hand)[0] for typed in (in_g, green_g, husk_g)]
    if parts[1] + parts[2] > parts[0] * 1.005:
        raise NotPossible(
            N_(
                "storing",
                "{parts} came out of {whole}: more than went in.",
                parts=Num(parts[1] + parts[2], "g", 1),
                whole=Num(parts[0], "g", 1),
            )
        )
    return farm.write([HullTest(lot, *parts)], at_utc_s, hand, N_("storing", "hull test of {lot}", lot=lot), lot=lot)


def send_to_mill(farm: OpenFarm, lot: str, weighed: str, at_utc_s: int, hand: Hand = Hand()) -> Done:
    """A weight of the lot leaves the store for the mill; it is still the farm's, in another place."""
    grams, text = weight(weighed, hand)
    not_ahead(farm, at_utc_s, hand)
    held(farm.lot(lot), STORE, grams, hand)
    postings = (Posting(lot, STORE, -grams), Posting(lot, MILL, grams, typed=text))
    label = N_("storing", "{weight} of {lot} to the mill", weight=kg(grams), lot=lot)
    return farm.write([Flow(lot, "send", postings)], at_utc_s, hand, label, lot=lot)


def mill_return(
    farm: OpenFarm,
    lot: str,
    grades: Mapping[str, str],
    at_utc_s: int,
    *,
    husk: str = "",
    screens: Mapping[str, str] | None = None,
    hand: Hand = Hand(),
) -> Done:
    """The mill's slip for a lot: weights of top, light, small, peaberry, husk if it was weighed, sieves.

    What was sent and is on no line of the slip is posted as unexplained.
    """
    unknown = [name for name in grades if name not in GREEN]
    if unknown:
        raise NotPossible(
            N_("storing", "The slip's grades are top, light, small and peaberry, not “{name}”.", name=unknown[0])
        )
    lines = {name: weight(typed, hand) for name, typed in grades.items() if typed.strip()}
    if husk.strip():
        lines[HUSK] = weight(husk, hand)
    green_g = sum(grams for name, (grams, _) in lines.items() if name != HUSK)
    sent_g = farm.lot(lot).balance.get(MILL, 0)
    not_ahead(farm, at_utc_s, hand)
    if green_g > sent_g:
        text = N_(
            "storing",
            "The mill returned {green} of {lot} for {sent} sent.",
            green=kg(green_g),
            lot=lot,
            sent=kg(sent_g),
        )
        ask(hand, "top", "returned", text)
    postings = [Posting(lot, MILL, way=ALL)]
    postings += [Posting(lot, account, grams, typed=text) for account, (grams, text) in lines.items()]
    postings.append(Posting(lot, UNEXPLAINED, way=REST))
    bodies: list[Flow | Screens] = [Flow(lot, "back", tuple(postings))]
    if screens:
        bodies.append(Screens(lot, tuple(Line(n, float(weight(t, hand)[0]), t) for n, t in screens.items())))
    label = N_("storing", "{weight} of {lot} back from the mill", weight=kg(green_g), lot=lot)
    return farm.write(bodies, at_utc_s, hand, label, lot=lot)


def keep_back(farm: OpenFarm, lot: str, weighed: str, at_utc_s: int, hand: Hand = Hand()) -> Done:
    """A sealed reference of the top grade is kept on the farm."""
    grams, text = weight(weighed, hand)
    held(farm.lot(lot), TOP, grams, hand)
    postings = (Posting(lot, TOP, -grams), Posting(lot, RETAINED, grams, typed=text))
    return farm.write(
        [Flow(lot, "retain", postings)], at_utc_s, hand, N_("storing", "retained sample of {lot}", lot=lot), lot=lot
    )


def use_for_tests(
    farm: OpenFarm, lot: str, weighed: str, at_utc_s: int, *, place: str = STORE, hand: Hand = Hand()
) -> Done:
    """Coffee used up by hull tests and moisture ovens."""
    grams, text = weight(weighed, hand)
    held(farm.lot(lot), place, grams, hand)
    postings = (Posting(lot, place, -grams), Posting(lot, TESTS, grams, typed=text))
    return farm.write([Flow(lot, "test", postings)], at_utc_s, hand, N_("storing", "tests of {lot}", lot=lot), lot=lot)


def join_lots(farm: OpenFarm, lots: Sequence[str], at_utc_s: int, *, alias: str = "", hand: Hand = Hand()) -> Done:
    """All green of several lots becomes one joint lot; each keeps its own history, reachable both ways.

    The joint lot's letter is the lots' own where they share one, else J.
    """
    if len(set(lots)) < 2:
        raise NotPossible(N_("storing", "A joint lot is made of two lots at least."))
    pictures = [farm.lot(code) for code in lots]
    postings: list[Posting] = []
    letters = {code[-1] for code in lots}
    letter = letters.pop() if len(letters) == 1 else "J"
    joint = next_code(farm, letter)
    for lot in pictures:
        for account in GREEN:
            grams = lot.balance.get(account, 0)
            if grams > 0:
                postings += [Posting(lot.code, account, -grams), Posting(joint, account, grams)]
    if not postings:
        raise NotPossible(N_("storing", "None of these lots has green coffee to join."))
    bodies: list[Birth | Flow] = [Birth(joint, letter, 1, alias), Flow(joint, "join", tuple(postings))]
    label = N_("storing", "{lots} joined as {joint}", lots=", ".join(lots), joint=joint)
    return farm.write(bodies, at_utc_s, hand, label, lot=joint)
