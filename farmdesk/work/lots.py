"""A lot's page: everything the books say of it, at an instant, as known then."""

from __future__ import annotations

from farmdesk.ahead.range import Ahead
from farmdesk.errors import NotPossible
from farmdesk.picture.codes import read_code
from farmdesk.picture.curves import moisture_known
from farmdesk.picture.entries import Correction, Reading, Remark
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.measures import correction_in_force, family, meter_readings
from farmdesk.picture.picture import Picture
from farmdesk.text import N_, Day, Days, Fact, Moment, Num, Text, kg, pct
from farmdesk.work.balances import mill_balance, river, unexplained
from farmdesk.work.cards import lot_card, lot_cards
from farmdesk.work.charts import drying_figure, ferment_figures
from farmdesk.work.doubts import doubts_of
from farmdesk.work.farm import OpenFarm
from farmdesk.work.forecasts import ready, work_out
from farmdesk.work.normals import normals
from farmdesk.work.portions import block_words, lies_at
from farmdesk.work.stories import LotCard, LotStory, Reached

__all__ = ["ahead_of", "lot_cards", "lot_story"]


def lot_of(picture: Picture, code: str) -> LotPicture:
    """A lot of a picture. Raises NotPossible where it has none of that code."""
    lot = picture.lots.get(code)
    if lot is None:
        raise NotPossible(N_("lots", "There is no lot {code} in this season at this time.", code=code))
    return lot


def ahead_of(farm: OpenFarm, code: str, at_utc_s: int) -> Ahead:
    """When a lot will be done with what it was at, asked at an instant [UTC s] and as known then.

    Raises NotPossible for an unknown lot, or one that was neither in a vessel nor on the beds.
    """
    code = read_code(code)
    lot_of(farm.seen(at_utc_s), code)
    work_out(farm, at_utc_s, frozenset({code}))
    picture = farm.seen(at_utc_s)
    answer = ready(picture, lot_of(picture, code))
    if answer is None:
        raise NotPossible(
            N_("lots", "{code} was in no vessel and on no bed then, so there is no end to ask for.", code=code)
        )
    return answer


def lot_story(farm: OpenFarm, code: str, at_utc_s: int | None = None, x_kind: str = "time") -> LotStory:
    """The story of one lot; `x_kind` of its drying chart is `time` or `good_h`. Raises NotPossible."""
    picture = farm.seen(at_utc_s)
    lot = lot_of(picture, code)
    card = lot_card(picture, lot)
    rows, of = normals(picture, lot)
    balance, balance_of = mill_balance(picture, lot)
    parents, children = family(lot)
    beds = tuple(lies_at(lot, picture.things.places))
    vessels = tuple(lies_at(lot, picture.things.vessels))
    trays = tuple(dict.fromkeys(e.body.tray for e in lot.of(Reading) if e.body.tray))
    return LotStory(
        card,
        headline(card),
        ferment_figures(farm, picture, lot),
        drying_figure(farm, picture, lot, x_kind),
        river(picture, lot),
        unexplained(picture, lot),
        rows,
        of,
        deviations(picture, lot),
        doubts_of(picture, lot),
        balance,
        balance_of,
        tuple(Reached(c, g) for c, g in parents.items()),
        tuple(Reached(c, g) for c, g in children.items()),
        beds,
        trays,
        vessels,
        _last_reading(picture, lot),
        "ph" if vessels else "moisture" if beds else "none",
    )


def headline(card: LotCard) -> Text:
    """The line beside the code: method, blocks, picking days, where it is, its weight and moisture."""
    facts: dict[str, Fact] = {"method": card.method, "block": block_words(card.blocks), "where": card.where}
    if card.picked:
        facts["days"] = Days(*card.picked)
        line = N_("lots", "{method}, block {block}, picked {days}, {where}", **facts)
    elif card.alias:
        line = N_("lots", "{method}, joint lot {alias}, block {block}, {where}", **facts, alias=card.alias)
    else:
        line = N_("lots", "{method}, {where}", **facts)
    if card.now.grams is None:
        return line
    now = kg(card.now.grams, about=card.now.mark != "measured")
    if card.moisture_wb_frac is None:
        return N_("lots", "{line}, now {now}", line=line, now=now)
    return N_("lots", "{line}, now {now} at {moisture}", line=line, now=now, moisture=pct(card.moisture_wb_frac))


def meter_corrected(picture: Picture, lot: LotPicture) -> tuple[Text, ...]:
    """How far off the meter was that read this lot, and when: one line for each correction in force."""
    found = (
        correction_in_force(picture.corrections, e.instrument, "meter_wb_frac", e.happened_utc_s)
        for e in meter_readings(lot)
    )
    return tuple(_off(picture, c) for c in dict.fromkeys(found) if c is not None and c.add)


def _off(picture: Picture, c: Correction) -> Text:
    day = picture.time.farm_day
    when = N_("lots", "since {first}", first=Day(day(c.from_utc_s)))
    if c.until_utc_s is not None:
        when = N_("lots", "from {first} to {last}", first=Day(day(c.from_utc_s)), last=Day(day(c.until_utc_s)))
    facts: dict[str, Fact] = {"off": Num(abs(c.add) * 100, "", 1), "when": when}
    if c.add < 0:
        return N_(
            "lots", "The moisture meter read {off} points high {when}; its readings are shown corrected.", **facts
        )
    return N_("lots", "The moisture meter read {off} points low {when}; its readings are shown corrected.", **facts)


def deviations(picture: Picture, lot: LotPicture) -> tuple[Text, ...]:
    """What differed: a meter found wrong, then what was written of it, oldest first."""
    written = tuple(
        N_("lots", "{day}: {text}", day=Day(picture.time.farm_day(e.happened_utc_s)), text=e.body.text)
        for e in lot.of(Remark)
        if e.body.about == "deviation"
    )
    return meter_corrected(picture, lot) + written


def _last_reading(picture: Picture, lot: LotPicture) -> Text | None:
    known = moisture_known(lot, picture.things, picture.corrections)
    rows = lot.of(Reading)
    if not rows:
        return None
    last = rows[-1]
    at = Moment(picture.time.local(last.happened_utc_s), weekday=True)
    if last.body.quantity == "ph":
        return N_("lots", "last reading pH {value}, {at}", value=Num(last.body.value, "", 2), at=at)
    if known is None:
        return N_("lots", "last reading {at}", at=at)
    at = Moment(picture.time.local(known.at_utc_s), weekday=True)
    return N_("lots", "last reading {value}, {at}", value=pct(known.wb_frac), at=at)
