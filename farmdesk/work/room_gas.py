"""What the vessels at work would make of the room they stand in, were it shut: a caution, never a measurement."""

from __future__ import annotations

from farmdesk.picture.measures import fills, method_of
from farmdesk.picture.picture import Picture
from farmdesk.science.air import pressure_kpa
from farmdesk.science.gas import CHERRY_SUGAR_G_KG, MUCILAGE_SUGAR_G_KG, gas_of, gas_words
from farmdesk.text import Text
from farmdesk.work.settings import number

ROOM_C = 22.0  # of the room's air; ten degrees more are 3 % more gas


def room_gas(picture: Picture) -> tuple[str, Text] | None:
    """How bad ("none", "warn", "danger") and what to do about all that ferments now, as if every sugar became gas and
    nothing leaked; None where nothing ferments or the room's size is not set.
    """
    room_m3 = number(picture.things, "room_m3")
    sugar_g = 0.0
    for lot in picture.lots.values():
        method = method_of(lot, picture.things)
        each = CHERRY_SUGAR_G_KG if method and method.whole else MUCILAGE_SUGAR_G_KG  # both a kilogram of cherry
        sugar_g += sum(fill.grams / 1000 * each for fill in fills(lot, picture.things) if fill.until_utc_s is None)
    if not room_m3 or not sugar_g:
        return None
    gas = gas_of(sugar_g, ROOM_C, float(pressure_kpa(picture.things.farm.altitude_m)), room_m3=room_m3)
    return gas_words(gas.room_ppm)
