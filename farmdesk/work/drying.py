"""Beds and patio: spread, move, cover; trays weighed, moisture read; the day's weather."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date

from farmdesk.errors import NotPossible
from farmdesk.picture.entries import (
    ALL,
    INTAKE,
    JUICE,
    PULP,
    REST,
    UNEXPLAINED,
    Cover,
    Flow,
    Line,
    Outlook,
    Posting,
    Reading,
    Weather,
)
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.measures import spread_g
from farmdesk.text import N_, Num, kg
from farmdesk.work.changes import Done, Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.guards import ask, between, not_ahead, share, weight
from farmdesk.work.normals import like_own_lots

METER_ASK_FRAC = 0.35  # grain-type meters drift above this (Jimenez & Bulgarelli 1992, Agronomia Costarricense 16(2))
HOT_BEANS_C = 35.0  # beans warmer than this are left to cool first (common practice, no source)


def _places(farm: OpenFarm, codes: Sequence[str]) -> None:
    for code in codes:
        if farm.things.places and code not in farm.things.places:
            raise NotPossible(N_("drying", "There is no bed or cell {code} in the yard.", code=code))


def _lying(farm: OpenFarm, lot: LotPicture | None, kinds: str) -> list[str]:
    """Where the lot lies now: vessels or drying places."""
    known = farm.things.vessels if kinds == "vessels" else farm.things.places
    return [account for account, grams in (lot.heaps if lot else {}).items() if grams > 0 and account in known]


def spread(
    farm: OpenFarm,
    lot: str,
    beds: Mapping[str, str],
    at_utc_s: int,
    *,
    from_places: Sequence[str] = (),
    hand: Hand = Hand(),
) -> Done:
    """Coffee onto beds, a weight as typed for each; what the vessels held besides is pulp, skin and juice.

    Without `from_places` everything in the lot's vessels is taken, or what lies at the intake.
    """
    _places(farm, list(beds))
    not_ahead(farm, at_utc_s, hand)
    books = farm.picture.lots.get(lot)
    sources = list(from_places) or _lying(farm, books, "vessels") or [INTAKE]
    method = farm.things.method(books.birth.method, books.birth.method_version) if books and books.birth else None
    if method is not None and method.whole:
        rest = JUICE if method.sealed else UNEXPLAINED
    else:
        rest = PULP
    weighed = {code: weight(typed, hand) for code, typed in beds.items()}
    for code in beds:
        others = [other for other in farm.picture.lying_at(code) if other != lot]
        if others:
            text = N_(
                "drying",
                "{other} lies on {bed} in the books. Is {lot} to lie there too?",
                other=others[0],
                bed=code,
                lot=lot,
            )
            ask(hand, "bed", f"bed {code}", text)
    postings = [Posting(lot, code, way=ALL) for code in sources]
    postings += [Posting(lot, code, grams, typed=text) for code, (grams, text) in weighed.items()]
    postings.append(Posting(lot, rest, way=REST))
    total = sum(grams for grams, _ in weighed.values())
    if books is not None and not [
        a for a, g in books.heaps.items() if g > 0 and a not in (*sources, *farm.things.places)
    ]:
        like_own_lots(farm, books, "spread", (spread_g(books) or 0) + total, hand)
    label = N_("drying", "{weight} of {lot} spread", weight=kg(total), lot=lot)
    return farm.write([Flow(lot, "spread", tuple(postings))], at_utc_s, hand, label, lot=lot)


def move(
    farm: OpenFarm, lot: str, from_places: Sequence[str], to_places: Sequence[str], at_utc_s: int, hand: Hand = Hand()
) -> Done:
    """Everything of the lot on some places goes, unweighed, in equal parts to others.

    It may also leave a vessel: washed parchment or opened cherry drains on the patio before it is weighed.
    """
    _places(farm, [code for code in from_places if code not in farm.things.vessels])
    _places(farm, to_places)
    not_ahead(farm, at_utc_s, hand)
    books = farm.picture.lots.get(lot)
    for place in from_places:
        if not books or books.balance.get(place, 0) <= 0:
            text = N_(
                "drying", "Nothing of {lot} lies on {place} in the books. Move it all the same?", lot=lot, place=place
            )
            ask(hand, "from", f"empty {place}", text)
    postings = [Posting(lot, code, way=ALL) for code in from_places]
    postings += [Posting(lot, code, way=REST) for code in to_places]
    label = N_("drying", "{lot} moved", lot=lot)
    return farm.write([Flow(lot, "move", tuple(postings))], at_utc_s, hand, label, lot=lot)


def cover(
    farm: OpenFarm, places: Sequence[str], on: bool, at_utc_s: int, *, text: str = "", hand: Hand = Hand()
) -> Done:
    """Beds covered, or opened."""
    _places(farm, places)
    not_ahead(farm, at_utc_s, hand)
    label = N_("drying", "beds covered") if on else N_("drying", "beds opened")
    return farm.write([Cover(tuple(places), on, text)], at_utc_s, hand, label)


def read_at_bed(
    farm: OpenFarm,
    lot: str,
    at_utc_s: int,
    *,
    place: str = "",
    meter: Sequence[str] = (),
    tray: str = "",
    tray_gross: str = "",
    bean_c: str = "",
    meter_code: str = "meter-1",
    scale_code: str = "scale-2",
    hand: Hand = Hand(),
) -> Done:
    """One row of the yard sheet: up to three meter readings in percent, a tray as it stands on the scale.

    Impossible by itself: moisture beyond 0–100 %, a tray lighter than its own tare. Asked once: above
    35 % by meter, repeats more than a point apart, beans above 35 °C, a tray heavier than last time.
    """
    not_ahead(farm, at_utc_s, hand)
    books = farm.lot(lot)
    pairs: list[tuple[Reading, str]] = []
    warm = between(bean_c, -5, 90, "°C", hand)[0] if bean_c.strip() else None
    values = [Line(str(i + 1), *share(typed, hand)) for i, typed in enumerate(meter) if typed.strip()]
    if values:
        _likely_meter(values, warm, hand)
        pairs.append((Reading(lot, place, "meter_wb_frac", tuple(values), bean_c=warm), meter_code))
    if tray_gross.strip():
        known = farm.things.trays.get(tray)
        if known is None:
            raise NotPossible(N_("drying", "There is no tray {code}; its empty weight is needed.", code=tray or "?"))
        gross_g, text = weight(tray_gross if not tray_gross.strip()[-1:].isdigit() else f"{tray_gross} g", hand)
        net_g = gross_g - known.tare_g
        if net_g <= 0:
            raise NotPossible(
                N_("drying", "Tray {code} weighs {tare} when empty; {gross} is not more.", code=tray,
                   tare=Num(known.tare_g, "g"), gross=Num(gross_g, "g"))
            )  # fmt: skip
        _likely_tray(books, tray, place, net_g, at_utc_s, hand)
        pairs.append((Reading(lot, place, "tray_g", (Line("", float(net_g), text),), tray=tray), scale_code))
    if not pairs:
        raise NotPossible(N_("drying", "Nothing was read: give a moisture or a tray weight."))
    label = N_("drying", "reading of {lot}", lot=lot)
    return farm.write_with(pairs, at_utc_s, hand, label, lot)


def _likely_meter(values: list[Line], warm_c: float | None, hand: Hand) -> None:
    highest, lowest = max(v.value for v in values), min(v.value for v in values)
    if highest > METER_ASK_FRAC:
        text = N_(
            "drying", "{value} is above what a meter can tell; the tray can. Keep it?", value=Num(highest * 100, "%", 1)
        )
        ask(hand, "meter", "too wet", text)
    elif highest - lowest > 0.01 + 1e-9:
        text = N_(
            "drying",
            "{high} is {gap} points above the lowest reading. Is it right? Then the bed is uneven: rake it.",
            high=Num(highest * 100, "%", 1),
            gap=Num((highest - lowest) * 100, "", 1),
        )
        ask(hand, "meter", "uneven", text)
    elif warm_c is not None and warm_c > HOT_BEANS_C:
        ask(
            hand,
            "bean_c",
            "hot",
            N_("drying", "At {t} the meter misreads; let the beans cool. Keep it?", t=Num(warm_c, "°C")),
        )


def _likely_tray(lot: LotPicture, tray: str, place: str, net_g: int, at_utc_s: int, hand: Hand) -> None:
    before = [
        e.body.value
        for e in lot.of(Reading)
        if e.body.tray == tray and e.body.place == place and e.happened_utc_s < at_utc_s
    ]
    if before and net_g > before[-1] * 1.01:
        text = N_(
            "drying",
            "Tray {tray} is {more} heavier than last time. Rain, dew, or another tray?",
            tray=tray,
            more=Num(net_g - before[-1], "g"),
        )
        ask(hand, "tray", "heavier", text)


def write_weather(
    farm: OpenFarm,
    day: date,
    *,
    min_c: str,
    max_c: str,
    rh: str,
    rain_mm: str,
    good_h: str,
    at_utc_s: int,
    hand: Hand = Hand(),
) -> Done:
    """The day's lowest and highest °C, mean humidity in percent, rain in mm, good drying hours."""
    low, _ = between(min_c, -30, 60, "°C", hand)
    high, _ = between(max_c, -30, 60, "°C", hand)
    if low > high:
        raise NotPossible(
            N_(
                "drying",
                "The lowest, {low}, is above the highest, {high}.",
                low=Num(low, "°C", 1),
                high=Num(high, "°C", 1),
            )
        )
    rain, _ = between(rain_mm, 0, 1000, "mm", hand)
    good, _ = between(good_h, 0, 14, "h", hand)
    body = Weather(day.isoformat(), low, high, share(rh, hand)[0], rain, good)
    return farm.write([body], at_utc_s, hand, N_("drying", "weather of {day}", day=day.isoformat()))


def write_outlook(farm: OpenFarm, day: date, words: str, at_utc_s: int, hand: Hand = Hand()) -> Done:
    """What is expected of a day's sky: dry, cloud, rain."""
    if words not in ("dry", "cloud", "rain"):
        raise NotPossible(N_("drying", "The sky is dry, cloud or rain, not “{typed}”.", typed=words))
    return farm.write([Outlook(day.isoformat(), words)], at_utc_s, hand, N_("drying", "outlook"))
