"""The notebook read back: every row that was written, in the order it was written, in words."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from typing import Any

from farmdesk.clock import FarmTime
from farmdesk.errors import NotPossible
from farmdesk.picture.entries import Body, Entry
from farmdesk.picture.office_papers import (
    Advance,
    Check,
    Correction,
    CropCount,
    Cup,
    DayWork,
    Defects,
    Hold,
    HullTest,
    PaperGiven,
    Parcel,
    ParcelNews,
    PaySheet,
    Plan,
    Remark,
    RipeLook,
    Round,
    Sale,
    Screens,
    Shelved,
    Skipped,
    Strike,
)
from farmdesk.picture.yard_papers import (
    Birth,
    Cover,
    Flow,
    LoggerFile,
    Outlook,
    Platform,
    Reading,
    Rinse,
    Ripeness,
    VesselStep,
    Weather,
    WeighIn,
    Yeast,
)
from farmdesk.text import N_, Day, Listing, Moment, Num, Text, kg, pct
from farmdesk.work.changes import Done
from farmdesk.work.farm import OpenFarm
from farmdesk.work.portions import ACCOUNT_WORDS, block_words, place_list


@dataclass(frozen=True, slots=True)
class NotebookRow:
    """One row: when it was written and when it happened [UTC s], by whom, of what, in words.

    `struck` tells why it counts no more ("" where no reason was given); None: it counts. `ids` are all rows
    of the act, struck and brought back together; a strike itself has none, so it is not struck by hand. `places`
    are all beds, vessels and heaps that the row names.
    """

    id: str
    written_utc_s: int
    happened_utc_s: int
    who: str
    lot: str
    place: str
    instrument: str
    mark: str
    text: Text
    note: str
    struck: str | None
    ids: tuple[str, ...]
    places: tuple[str, ...] = ()


def notebook_rows(farm: OpenFarm, at_utc_s: int | None = None) -> list[NotebookRow]:
    """All rows known at an instant [UTC s], the last written first; None is now."""
    book = farm.seen(at_utc_s).book
    reasons = {e.body.target: e.body.reason for e in book.strikes if e.id not in book.struck}
    batches: dict[str, list[str]] = {}
    for entry in book.by_id.values():
        if entry.batch:
            batches.setdefault(entry.batch, []).append(entry.id)
    rows = []
    for entry in sorted(book.by_id.values(), key=lambda e: (e.written_utc_s, e.id), reverse=True):
        ids = tuple(batches.get(entry.batch, ())) or (entry.id,)
        body = entry.body
        struck_text = farm.picture.book.by_id.get(body.target) if isinstance(body, Strike) else None
        rows.append(
            NotebookRow(
                entry.id,
                entry.written_utc_s,
                entry.happened_utc_s,
                entry.who,
                str(getattr(body, "lot", "") or getattr(struck_text and struck_text.body, "lot", "")),
                str(getattr(body, "place", "")) or place_list(getattr(body, "places", ())),
                entry.instrument,
                entry.mark,
                words_of(entry, farm.time, struck_text),
                entry.note,
                reasons.get(entry.id) if entry.id in book.struck else None,
                () if isinstance(body, Strike) else ids,
                _places(struck_text.body if struck_text else body),
            )
        )
    return rows


def _places(body: Body) -> tuple[str, ...]:
    moved = (posting.account for posting in getattr(body, "postings", ()) if posting.account[:1] not in "<>")
    return tuple(dict.fromkeys((*filter(None, (getattr(body, "place", ""),)), *getattr(body, "places", ()), *moved)))


def strike_rows(farm: OpenFarm, ids: tuple[str, ...], reason: str) -> Done:
    """Strike the rows of one act, and say why. Raises NotPossible without a reason, or where they are struck."""
    if not reason.strip():
        raise NotPossible(N_("notebook_page", "Say why the row is struck out."))
    struck = farm.picture.book.struck
    live = [i for i in ids if i not in struck]
    if not live:
        raise NotPossible(N_("notebook_page", "The row is struck out already."))
    return farm.strike(live, reason.strip(), N_("notebook_page", "struck out"))


def words_of(entry: Entry[Body], time: FarmTime, target: Entry[Body] | None = None) -> Text:
    """What a row says; `target` is the row that a strike is about."""
    if isinstance(entry.body, Strike):
        said = words_of(target, time) if target is not None else N_("notebook_page", "a row that is not here")
        return N_("notebook_page", "struck out: {row}", row=said)
    tell: Callable[[Any, FarmTime], Text] = SAID[type(entry.body)]
    return tell(entry.body, time)


def _day(iso: str) -> Day:
    return Day(date.fromisoformat(iso), weekday=True)


def _flow(body: Flow, time: FarmTime) -> Text:
    weights = [p for p in body.postings if p.grams > 0]
    parts = tuple(
        N_("notebook_page", "{weight} {account}", weight=kg(p.grams, 1), account=_account(p.account)) for p in weights
    )
    rest = place_list([p.account for p in body.postings if p.grams == 0 and p.account[:1] not in "<>"])
    act = ACTS.get(body.act, N_("notebook_page", "moved"))
    if parts:
        return N_("notebook_page", "{act}: {parts}", act=act, parts=Listing(parts))
    return N_("notebook_page", "{act}: {places}", act=act, places=rest)


def _account(account: str) -> Text:
    words = ACCOUNT_WORDS.get(account)
    if words is not None:
        return words
    return N_("notebook_page", "on {place}", place=account) if account.isdigit() else N_(
        "notebook_page", "in {place}", place=account
    )  # fmt: skip


ACTS = {
    "sort": N_("notebook_page", "sorted"), "fill": N_("notebook_page", "filled"),
    "spread": N_("notebook_page", "spread"), "move": N_("notebook_page", "moved"),
    "shelve": N_("notebook_page", "weighed into the store"), "send": N_("notebook_page", "sent to the mill"),
    "back": N_("notebook_page", "back from the mill"), "test": N_("notebook_page", "used for tests"),
    "retain": N_("notebook_page", "kept as a sample"), "join": N_("notebook_page", "joined"),
    "cut": N_("notebook_page", "cut off"),
}  # fmt: skip
QUANTITIES: dict[str, tuple[Text, float, str, int]] = {  # name, shown value per unit, unit, decimals
    "ph": (N_("notebook_page", "pH"), 1, "", 2),
    "mass_c": (N_("notebook_page", "mass"), 1, "°C", 1),
    "air_c": (N_("notebook_page", "air"), 1, "°C", 1),
    "brix": (N_("notebook_page", "sugar"), 1, "°Bx", 1),
    "tray_g": (N_("notebook_page", "tray"), 1, "g", 0),
    "meter_wb_frac": (N_("notebook_page", "moisture"), 100, "%", 1),
    "aw": (N_("notebook_page", "water activity"), 1, "", 2),
    "store_rh_frac": (N_("notebook_page", "air of the store"), 100, "%", 0),
    "density_g_l": (N_("notebook_page", "density"), 1, "g/L", 0),
    "drained_min": (N_("notebook_page", "weighed wet, drained for"), 1, "min", 0),
}


def _reading(body: Reading, time: FarmTime) -> Text:
    name, per, unit, decimals = QUANTITIES.get(body.quantity, (N_("notebook_page", "reading"), 1, "", 2))
    values = Listing(tuple(Num(v.value * per, unit, decimals) for v in body.values))
    return N_("notebook_page", "{name} {values}", name=name, values=values)


def _crop(body: CropCount, time: FarmTime) -> Text:
    return N_(
        "notebook_page", "crop count in {block}: {n} {n:tree|trees}, {mean} a tree", block=body.block, n=body.trees_n,
        mean=Num(body.mean_kg, "kg", 2),
    )  # fmt: skip


def _weather(body: Weather, time: FarmTime) -> Text:
    return N_(
        "notebook_page", "weather of {day}: {low}–{high}, {rh}, {rain}, {good} good", day=_day(body.day),
        low=Num(body.min_c, "", 1), high=Num(body.max_c, "°C", 1), rh=pct(body.rh_frac, 0),
        rain=Num(body.rain_mm, "mm"), good=Num(body.good_h, "h", 1),
    )  # fmt: skip


def _sale(body: Sale, time: FarmTime) -> Text:
    weight, buyer = kg(body.grams, 1), body.buyer
    if not body.approved:
        return N_("notebook_page", "{weight} sold to {buyer}, if approved", weight=weight, buyer=buyer)
    return N_("notebook_page", "{weight} sold to {buyer}", weight=weight, buyer=buyer)


def _check(body: Check, time: FarmTime) -> Text:
    if body.passed:
        return N_("notebook_page", "check of {tool}: good", tool=body.instrument)
    return N_("notebook_page", "check of {tool}: off", tool=body.instrument)


def _weigh_in(body: WeighIn, time: FarmTime) -> Text:
    return N_(
        "notebook_page", "weigh-in of {who}, block {block}: {weight}", who=body.picker, block=block_words(body.block),
        weight=kg(body.gross_g - body.tare_g, 1),
    )  # fmt: skip


def _logger(body: LoggerFile, time: FarmTime) -> Text:
    return N_(
        "notebook_page", "{n} {n:row|rows} of {logger} read from {file}", n=Num(body.rows_n), logger=body.logger,
        file=body.file_name,
    )  # fmt: skip


def _yeast(body: Yeast, time: FarmTime) -> Text:
    return N_("notebook_page", "{weight} of yeast pitched", weight=Num(body.yeast_g, "g"))


def _rinse(body: Rinse, time: FarmTime) -> Text:
    if body.litres_l is None:
        return N_("notebook_page", "rinsed {n} {n:time|times}", n=body.times_n)
    return N_("notebook_page", "rinsed {n} {n:time|times}, {litres}", n=body.times_n, litres=Num(body.litres_l, "L"))


def _ripe(body: Ripeness, time: FarmTime) -> Text:
    counted = body.green + body.turning + body.ripe + body.over_ripe + body.dried + body.bored
    return N_("notebook_page", "{ripe} ripe of {n} counted", ripe=body.ripe, n=counted)


SKY = {"dry": N_("notebook_page", "dry"), "cloud": N_("notebook_page", "cloud"), "rain": N_("notebook_page", "rain")}
STEPS = {
    "seal": N_("notebook_page", "sealed"), "open": N_("notebook_page", "opened"),
    "wash": N_("notebook_page", "washed"), "cool": N_("notebook_page", "cooled"),
}  # fmt: skip
NEWS = {
    "arrived": N_("notebook_page", "sample arrived"), "lost": N_("notebook_page", "sample lost"),
    "answered": N_("notebook_page", "sample answered"),
}  # fmt: skip

SAID: dict[type, Callable[[Any, FarmTime], Text]] = {
    Birth: lambda b, t: N_("notebook_page", "lot begun"),
    WeighIn: _weigh_in,
    Platform: lambda b, t: N_("notebook_page", "platform total {weight}", weight=kg(b.grams, 1)),
    Ripeness: _ripe,
    Flow: _flow,
    VesselStep: lambda b, t: STEPS.get(b.step, N_("notebook_page", "vessel")),
    Yeast: _yeast,
    Rinse: _rinse,
    Reading: _reading,
    LoggerFile: _logger,
    Cover: lambda b, t: N_("notebook_page", "covered") if b.on else N_("notebook_page", "opened"),
    Weather: _weather,
    Outlook: lambda b, t: N_("notebook_page", "expected of {day}: {words}", day=_day(b.day), words=SKY[b.words]),
    Shelved: lambda b, t: N_("notebook_page", "{n} {n:bag|bags} on pallet {pallet}", n=b.bags_n, pallet=b.pallet),
    HullTest: lambda b, t: N_("notebook_page", "hull test: {g} green of {all}", g=Num(b.green_g, "g"),
                              all=Num(b.in_g, "g")),
    Screens: lambda b, t: N_("notebook_page", "screens: {weight}", weight=kg(sum(f.value for f in b.fractions), 1)),
    Defects: lambda b, t: N_("notebook_page", "defects counted in {g}", g=Num(b.sample_g, "g")),
    Cup: lambda b, t: N_("notebook_page", "cup {score}, {n} {n:sitting|sittings}", score=Num(b.score, "", 1), n=b.sittings_n),
    Check: _check,
    Correction: lambda b, t: N_("notebook_page", "correction of {tool} from {day}", tool=b.instrument,
                                day=Moment(t.local(b.from_utc_s))),
    Parcel: lambda b, t: N_("notebook_page", "sample of {weight} to {buyer}", weight=kg(b.grams, 1), buyer=b.buyer),
    ParcelNews: lambda b, t: NEWS.get(b.news, N_("notebook_page", "news of a sample")),
    Hold: lambda b, t: N_("notebook_page", "{weight} held for {buyer}", weight=kg(b.grams, 1), buyer=b.buyer),
    Sale: _sale,
    Remark: lambda b, t: N_("notebook_page", "{words}", words=b.text),
    Plan: lambda b, t: N_("notebook_page", "plan: {weight} of {block} on {day}", weight=kg(b.grams), block=b.block,
                          day=_day(b.day)),
    Skipped: lambda b, t: N_("notebook_page", "not measured on {day}", day=_day(b.day)),
    PaperGiven: lambda b, t: N_("notebook_page", "paper given, version {n}", n=b.version_n),
    CropCount: _crop,
    RipeLook: lambda b, t: N_("notebook_page", "block {block}: {ripe} ripe of {n} looked at", block=b.block,
                              ripe=b.ripe_n, n=b.looked_n),
    Round: lambda b, t: N_("notebook_page", "round in {block} on {day}, {weight}", block=b.block, day=_day(b.day),
                           weight=kg(b.grams)),
    Advance: lambda b, t: N_("notebook_page", "advance to {who}: {amount}", who=b.picker,
                             amount=Num(b.amount_cents / 100, "", 2)),
    DayWork: lambda b, t: N_("notebook_page", "day work of {who} on {day}: {amount}", who=b.picker, day=_day(b.day),
                             amount=Num(b.amount_cents / 100, "", 2)),
    PaySheet: lambda b, t: N_("notebook_page", "pay closed, {first} to {last}", first=_day(b.first_day),
                              last=_day(b.last_day)),
}  # fmt: skip


def bring_back(farm: OpenFarm, ids: tuple[str, ...]) -> Done:
    """Let struck rows count again: their strikes are struck. Raises NotPossible where nothing is struck."""
    book = farm.picture.book
    strikes = [e.id for e in book.strikes if e.body.target in ids and e.id not in book.struck]
    if not strikes:
        raise NotPossible(N_("notebook_page", "The row is not struck out."))
    return farm.strike(strikes, "", N_("notebook_page", "brought back"))
