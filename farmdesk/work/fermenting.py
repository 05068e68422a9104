"""Vessels: filled, pitched, sealed, read, opened, rinsed."""

from __future__ import annotations

from collections.abc import Mapping

from farmdesk.errors import NotPossible
from farmdesk.picture.entries import INTAKE, Flow, Line, Posting, Reading, Rinse, VesselStep, Yeast
from farmdesk.picture.fold import LotPicture
from farmdesk.text import N_, Num, kg
from farmdesk.work.changes import Done, Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.guards import ask, between, held, not_ahead, weight
from farmdesk.work.portions import is_whole
from farmdesk.work.settings import kg_a_litre

STEPS = ("seal", "open", "wash", "cool")
YEAST_ASK_G_KG = 3.0  # a dose above this is asked about (common practice, no source)


def fill(
    farm: OpenFarm,
    lot: str,
    vessels: Mapping[str, str],
    at_utc_s: int,
    *,
    from_place: str = INTAKE,
    hand: Hand = Hand(),
) -> Done:
    """Coffee into vessels: a weight as typed for each vessel's code. More than a vessel takes is asked once."""
    for code in vessels:
        if farm.things.vessels and code not in farm.things.vessels:
            raise NotPossible(N_("fermenting", "The farm has no vessel {code}.", code=code))
    weighed = {code: weight(typed, hand) for code, typed in vessels.items()}
    total_g = sum(grams for grams, _ in weighed.values())
    not_ahead(farm, at_utc_s, hand)
    if books := farm.picture.lots.get(lot):
        held(books, from_place, total_g, hand)
        for code, (grams, _) in weighed.items() if total_g <= books.balance.get(from_place, 0) else ():
            _fits(farm, books, code, grams, hand)
    postings = [Posting(lot, from_place, -total_g)]
    postings += [Posting(lot, code, grams, typed=text) for code, (grams, text) in weighed.items()]
    label = N_("fermenting", "{weight} of {lot} filled", weight=kg(total_g), lot=lot)
    return farm.write([Flow(lot, "fill", tuple(postings))], at_utc_s, hand, label, lot=lot)


def _fits(farm: OpenFarm, lot: LotPicture, vessel: str, grams: int, hand: Hand) -> None:
    """Ask once when a vessel would hold more litres than it may; what foams over blocks the airlock."""
    known = farm.things.vessels.get(vessel)
    if known is None or known.usable_l <= 0:
        return
    each = kg_a_litre(farm.things, is_whole(farm.picture, lot))
    litres = (lot.balance.get(vessel, 0) + grams) / 1000 / each
    if litres > known.usable_l:
        text = N_(
            "fermenting",
            "{over} too much for {vessel}: at {each} of cherry a litre it is {litres}, and {vessel} takes {room}.",
            over=Num(litres - known.usable_l, "L"), vessel=vessel, each=Num(each, "kg", 2), litres=Num(litres, "L"),
            room=Num(known.usable_l, "L"),
        )  # fmt: skip
        ask(hand, "weight", f"full {vessel}", text)


def vessel_step(
    farm: OpenFarm, lot: str, place: str, step: str, at_utc_s: int, *, text: str = "", hand: Hand = Hand()
) -> Done:
    """A vessel is sealed, opened, washed or cooled. Open sealed vessels outdoors: the gas kills without smell."""
    if step not in STEPS:
        raise NotPossible(N_("fermenting", "“{step}” is not done to a vessel.", step=step))
    not_ahead(farm, at_utc_s, hand)
    label = N_("fermenting", "{step} of {place} with {lot}", step=step, place=place, lot=lot)
    return farm.write([VesselStep(lot, place, step, text)], at_utc_s, hand, label, lot=lot)


def pitch_yeast(
    farm: OpenFarm,
    lot: str,
    place: str,
    grams: str,
    at_utc_s: int,
    *,
    water_ml: int | None = None,
    water_c: float | None = None,
    product: str = "",
    hand: Hand = Hand(),
) -> Done:
    """Yeast into a vessel, woken in water [mL] so warm [°C]; a dose above 3 g for each kg in the vessel is asked about once."""
    yeast_g, _ = between(grams, 0, 20_000, "g", hand)
    books = farm.picture.lots.get(lot)
    in_vessel_g = books.balance.get(place, 0) if books else 0
    if in_vessel_g > 0 and yeast_g / (in_vessel_g / 1000) > YEAST_ASK_G_KG:
        dose = Num(yeast_g / (in_vessel_g / 1000), "g/kg", 1)
        ask(hand, "yeast", "dose", N_("fermenting", "That is {dose}; is the weight of yeast right?", dose=dose))
    label = N_("fermenting", "yeast for {lot}", lot=lot)
    return farm.write([Yeast(lot, place, round(yeast_g), water_ml, water_c, product)], at_utc_s, hand, label, lot=lot)


def rinse(
    farm: OpenFarm, lot: str, place: str, times_n: int, at_utc_s: int, *, litres: str = "", hand: Hand = Hand()
) -> Done:
    """Rinses after the ferment; litres only where the meter was read."""
    litres_l = between(litres, 0, 200_000, "L", hand)[0] if litres.strip() else None
    label = N_("fermenting", "rinse of {lot}", lot=lot)
    return farm.write([Rinse(lot, place, times_n, litres_l)], at_utc_s, hand, label, lot=lot)


def read_ferment(
    farm: OpenFarm,
    lot: str,
    place: str,
    at_utc_s: int,
    *,
    ph: str = "",
    mass_c: str = "",
    brix: str = "",
    probe: str = "pH-1",
    thermometer: str = "",
    hand: Hand = Hand(),
) -> Done:
    """One look at a vessel: pH, °C of the mass, °Bx; what was not read is left empty.

    pH outside 2.8–7.0 and °C outside 5–45 are asked about once; a rise of more than 0.3 pH too.
    """
    not_ahead(farm, at_utc_s, hand)
    bodies: list[tuple[Reading, str]] = []
    if ph.strip():
        value, text = between(ph, 0, 14, "", hand)
        _likely_ph(farm, lot, place, value, at_utc_s, hand)
        bodies.append((Reading(lot, place, "ph", (Line("", value, text),)), probe))
    if mass_c.strip():
        value, text = between(mass_c, -10, 90, "°C", hand)
        if not 5 <= value <= 45:
            ask(
                hand,
                "mass_c",
                "mass",
                N_("fermenting", "{value} in a ferment is unusual. Is it right?", value=Num(value, "°C", 1)),
            )
        bodies.append((Reading(lot, place, "mass_c", (Line("", value, text),)), thermometer or hand.instrument))
    if brix.strip():
        value, text = between(brix, 0, 60, "°Bx", hand)
        bodies.append((Reading(lot, place, "brix", (Line("", value, text),)), hand.instrument))
    if not bodies:
        raise NotPossible(N_("fermenting", "Nothing was read: give a pH, a temperature or a Brix."))
    label = N_("fermenting", "reading of {lot}", lot=lot)
    return farm.write_with(bodies, at_utc_s, hand, label, lot)


def _likely_ph(farm: OpenFarm, lot: str, place: str, ph: float, at_utc_s: int, hand: Hand) -> None:
    if not 2.8 <= ph <= 7.0:
        ask(
            hand,
            "ph",
            "ph range",
            N_("fermenting", "pH {ph} is outside what coffee shows. Is it right?", ph=Num(ph, "", 2)),
        )
    books = farm.picture.lots.get(lot)
    if books is None:
        return
    fills = [m.at_utc_s for m in books.trail if m.act == "fill" and place in dict(m.lines) and m.at_utc_s <= at_utc_s]
    before = [
        e.body.value
        for e in books.of(Reading)
        if e.body.quantity == "ph"
        and e.body.place == place
        and max(fills, default=0) <= e.happened_utc_s < at_utc_s  # a second filling of the vessel starts anew
    ]
    if before and ph > before[-1] + 0.3:
        text = N_(
            "fermenting",
            "pH rose from {old} to {new}. Is the probe clean?",
            old=Num(before[-1], "", 2),
            new=Num(ph, "", 2),
        )
        ask(hand, "ph", "ph rise", text)
