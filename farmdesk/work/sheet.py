"""The lot sheet's story: what a buyer may read, facts only. No person's name, no coordinates, no price."""

from __future__ import annotations

from farmdesk.picture.codes import check_character
from farmdesk.picture.curves import meter_points
from farmdesk.picture.entries import (
    SAMPLE,
    SOLD,
    TOP,
    Cup,
    Defects,
    Hold,
    LoggerFile,
    PaperGiven,
    Reading,
    Remark,
    Rinse,
    Screens,
    Yeast,
)
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.measures import (
    bed_days,
    dry_days_d,
    end_wb_frac,
    fills,
    first_beds,
    floaters_g,
    green_g,
    loading_kg_m2,
    on_beds,
    pick_days,
    ripe_frac,
    sorted_g,
    stored_g,
    top_g,
)
from farmdesk.picture.picture import Picture
from farmdesk.text import N_, Day, Days, Fact, Listing, Num, Text, kg, pct
from farmdesk.work.balances import mill_balance
from farmdesk.work.cards import blocks_of, lot_stages
from farmdesk.work.charts import drying_figure
from farmdesk.work.farm import OpenFarm
from farmdesk.work.forecasts import now_of, ready, work_out
from farmdesk.work.goodhours import GoodHours
from farmdesk.work.lots import deviations, lot_of
from farmdesk.work.portions import form_words, method_words, place_list, rain_days, state_of, where
from farmdesk.work.reading_in import coverage_frac
from farmdesk.work.standards import judged
from farmdesk.work.stories import SheetStory, Weight
from farmdesk.work.strips import lot_strip

BOX_KG = 30  # what a box holds (a setting)
SIEVES = {"PB": N_("sheet", "peaberry"), "<14": N_("sheet", "under 14")}

Line = tuple[Text, "Text | None"]


def sheet_story(farm: OpenFarm, code: str, at_utc_s: int | None = None) -> SheetStory:
    """The sheet of one lot, as known at an instant [UTC s]; None is now. Raises NotPossible."""
    lot_of(farm.seen(at_utc_s), code)
    work_out(farm, at_utc_s, frozenset({code}))
    picture = farm.seen(at_utc_s)
    lot = lot_of(picture, code)
    time, things = picture.time, picture.things
    blocks = blocks_of(picture, lot)
    state = state_of(picture, lot)
    balance, balance_of = mill_balance(picture, lot)
    given = [e.body.version_n for e in lot.of(PaperGiven) if e.body.paper == "lot sheet"]
    milled = next((time.farm_day(m.at_utc_s) for m in lot.trail if m.act in ("back", "join")), None)
    unfinished = None
    if green_g(lot) is None:
        unfinished = N_(
            "sheet", "Not finished: {where}. What is not yet known is left open.", where=where(picture, lot)
        )
    weights = list(lot_stages(picture, lot))
    if top_g(lot) is not None:
        weights.append((N_("stages", "top grade"), Weight(top_g(lot))))
    return SheetStory(
        code,
        check_character(code),
        things.farm.name,
        things.farm.practice,
        max(given, default=1),
        time.calendar_day(now_of(picture)),
        _who_and_where(picture, lot, blocks),
        tuple(
            (b.code, b.low_m, b.high_m, b.code in blocks) for b in sorted(things.blocks.values(), key=lambda b: b.low_m)
        ),
        lot_strip(picture, lot, ready(picture, lot)),
        unfinished,
        _done(farm, picture, lot),
        drying_figure(farm, picture, lot),
        tuple(weights),
        _ratio(lot),
        balance,
        balance_of,
        milled,
        _screens(lot),
        _green(picture, lot, state),
        _differed(picture, lot),
        tuple(first_beds(lot, things)),
    )


def _who_and_where(picture: Picture, lot: LotPicture, blocks: dict[str, int]) -> Text:
    total = sum(blocks.values()) or 1
    parts: list[Fact] = []
    for code, grams in blocks.items():
        block = picture.things.blocks.get(code)
        if block is None:
            parts.append(N_("sheet", "block {code}", code=code))
            continue
        heights = N_("sheet", "{low}–{high}", low=Num(block.low_m), high=Num(block.high_m, "m"))
        name: Fact = block.name
        if block.name_local:
            name = N_("sheet", "{name} ({local})", name=name, local=block.name_local)
        facts: dict[str, Fact] = {"code": code, "name": name, "variety": block.variety, "heights": heights}
        if len(blocks) > 1:
            parts.append(
                N_(
                    "sheet",
                    "block {code}, {name}, {variety}, {heights} ({share})",
                    **facts,
                    share=pct(grams / total, 0),
                )
            )
        else:
            parts.append(N_("sheet", "block {code}, {name}, {variety}, {heights}", **facts))
    facts = {"method": method_words(lot), "blocks": Listing(tuple(parts), "; ")}
    days = pick_days(lot, picture.time)
    if days:
        return N_("sheet", "{method}; {blocks}. Picked {days}.", **facts, days=Days(days[0], days[-1], True))
    if lot.birth and lot.birth.alias:
        return N_("sheet", "{method}, joined from {alias}; {blocks}.", **facts, alias=lot.birth.alias)
    return N_("sheet", "{method}; {blocks}.", **facts)


def _done(farm: OpenFarm, picture: Picture, lot: LotPicture) -> tuple[Line, ...]:
    """What was done, in factual lines; None where it was not measured."""
    rows: list[Line] = []
    ripe = ripe_frac(lot)
    if lot.delivered_g:
        delivered = kg(lot.delivered_g)
        line = (
            N_("sheet", "{ripe} ripe by count; {weight}", ripe=pct(ripe, 0), weight=delivered)
            if ripe is not None
            else N_("sheet", "{weight}; ripeness not counted", weight=delivered)
        )
        rows.append((N_("sheet", "Picked"), line))
        line = N_(
            "sheet", "{sorted} by hand, {floated} floated off", sorted=kg(sorted_g(lot)), floated=kg(floaters_g(lot))
        )
        was_sorted = any(moved.act == "sort" for moved in lot.trail)
        rows.append((N_("sheet", "Sorted"), line if was_sorted else None))
    rows += _ferment(farm, picture, lot)
    rows += _drying(picture, lot)
    return tuple(rows)


def _ferment(farm: OpenFarm, picture: Picture, lot: LotPicture) -> list[Line]:
    held = fills(lot, picture.things)
    if not held:
        return []
    sealed = any(picture.things.vessels[f.place].sealed for f in held)
    vessels = place_list([f.place for f in held])
    hours = sorted(f.hours_h for f in held if f.hours_h)
    facts: dict[str, Fact] = {"vessels": vessels, "how": N_("sheet", "sealed") if sealed else N_("sheet", "open")}
    if not hours:
        line = N_("sheet", "{vessels}, {how}, still in it", **facts)
    elif hours[-1] - hours[0] < 0.75:
        line = N_("sheet", "{vessels}, {hours}, {how}", **facts, hours=Num(hours[-1], "h"))
    else:
        line = N_("sheet", "{vessels}, {a}–{b}, {how}", **facts, a=Num(hours[0]), b=Num(hours[-1], "h"))
    rows: list[Line] = [(N_("sheet", "Vessels"), line)]
    ph = [e.body.value for e in lot.of(Reading) if e.body.quantity == "ph"]
    rows.append((N_("sheet", "pH"), _ph_line(farm, picture, lot, ph) if ph else None))
    yeast = sum(e.body.yeast_g for e in lot.of(Yeast))
    if yeast:
        rows.append((N_("sheet", "Added"), N_("sheet", "yeast, {grams}", grams=Num(yeast, "g"))))
    rinses = [e.body for e in lot.of(Rinse)]
    if rinses:
        times = max(r.times_n for r in rinses if isinstance(r, Rinse))
        litres = [r.litres_l for r in rinses if isinstance(r, Rinse) and r.litres_l is not None]
        if litres:
            line = N_("sheet", "{n} {n:time|times}, {litres}", n=times, litres=Num(sum(litres), "L"))
        else:
            line = N_("sheet", "{n} {n:time|times}; litres not measured", n=times)
        rows.append((N_("sheet", "Rinsed"), line))
    return rows


def _ph_line(farm: OpenFarm, picture: Picture, lot: LotPicture, ph: list[float]) -> Text:
    """PH first to last, and the mass temperature; beside a logger its coverage of the time is said."""
    facts: dict[str, Fact] = {"first": Num(ph[0], "", 2), "last": Num(ph[-1], "", 2)}
    mass = [e.body.value for e in lot.of(Reading) if e.body.quantity == "mass_c"]
    files = [e.id for e in lot.of(LoggerFile) if e.body.quantity == "mass_c"]
    if files:
        held = fills(lot, picture.things)
        low, high = min(f.from_utc_s for f in held), max(f.until_utc_s or now_of(picture) for f in held)
        at, values = farm.file.logger_rows(files)
        keep = (at >= low) & (at <= high)
        if keep.any():
            covered = coverage_frac(at[keep].tolist(), low, high)
            facts |= {"mean": Num(float(values[keep].mean()), "°C", 1), "share": pct(covered, 0)}
            return N_("sheet", "{first} to {last}; mass {mean}, readings cover {share} of the time", **facts)
    if not mass:
        return N_("sheet", "{first} to {last}; mass temperature not measured", **facts)
    facts |= {"low": Num(min(mass), "", 1), "high": Num(max(mass), "°C", 1)}
    return N_("sheet", "{first} to {last}; mass {low}–{high}", **facts)


def _drying(picture: Picture, lot: LotPicture) -> list[Line]:
    things, time = picture.things, picture.time
    stays = on_beds(lot, things, time)
    if not stays:
        return []
    rows: list[Line] = []
    beds = first_beds(lot, things)
    loading = loading_kg_m2(lot, things)
    facts: dict[str, Fact] = {"n": len(beds), "beds": place_list(beds)}
    if loading is None:
        rows.append((N_("sheet", "Beds"), N_("sheet", "{n}: {beds}", **facts)))
    else:
        rows.append(
            (N_("sheet", "Beds"), N_("sheet", "{n}: {beds}; {loading}", **facts, loading=Num(loading, "kg/m²", 1)))
        )
    span, days = bed_days(lot, things, time), dry_days_d(lot, things, time)
    begin = min(s.from_utc_s for s in stays)
    end = max(s.until_utc_s or now_of(picture) for s in stays)
    good = Num(GoodHours(picture, begin, end).between(begin, end), "h")
    if days is not None:
        rows.append(
            (
                N_("sheet", "Drying"),
                N_(
                    "sheet",
                    "{days}, {good} of good drying",
                    days=N_("sheet", "{n} {n:day|days}", n=Num(days)),
                    good=good,
                ),
            )
        )
    elif span:
        rows.append(
            (
                N_("sheet", "Drying"),
                N_("sheet", "since {day}, {good} of good drying so far", day=Day(span[0]), good=good),
            )
        )
    rain = rain_days(picture, begin, end)
    if rain:
        total = Num(sum(mm for _, mm in rain), "mm")
        line = N_("sheet", "{total} on {days}", total=total, days=Listing(tuple(Day(day) for day, _ in rain[:4])))
        if len(rain) > 4:
            line = N_("sheet", "{total} on {n} {n:day|days}", total=total, n=len(rain))
        rows.append((N_("sheet", "Rain"), line))
    stored = stored_g(lot)
    if stored is not None and span and span[1]:
        end_wb = end_wb_frac(lot, picture.corrections)
        facts = {"day": Day(span[1]), "weight": kg(stored)}
        if end_wb is None:
            line = N_("sheet", "{day}, {weight}, moisture not measured", **facts)
        else:
            line = N_("sheet", "{day}, {weight}, {moisture}", **facts, moisture=pct(end_wb))
        rows.append((N_("sheet", "Store"), line))
    return rows


def _ratio(lot: LotPicture) -> Text | None:
    green = green_g(lot)
    if not green or not lot.delivered_g:
        return None
    return N_("sheet", "{ratio} of cherry for 1 kg of green", ratio=Num(lot.delivered_g / green, "kg", 2))


def _screens(lot: LotPicture) -> tuple[tuple[Text, int], ...]:
    slips = lot.of(Screens)
    if not slips:
        return ()
    body = slips[-1].body
    return tuple((SIEVES.get(line.name, N_("sheet", "{n}", n=line.name)), round(line.value)) for line in body.fractions)


def _green(picture: Picture, lot: LotPicture, state: str) -> tuple[Line, ...]:
    """Moisture, water activity, defects, density, cup, what is free; None is "not measured"."""
    points = meter_points(lot, picture.corrections)
    moisture = None
    if points and stored_g(lot) is not None:
        last = points[-1]
        moisture = N_(
            "sheet",
            "{value} by {tool}, {day}, {form}",
            value=pct(last.wb_frac),
            tool=last.instrument or N_("sheet", "meter"),
            day=Day(picture.time.farm_day(last.at_utc_s)),
            form=form_words(picture, lot)[1],
        )
    rows: list[Line] = [(N_("sheet", "moisture"), moisture)]
    for head, quantity, unit, decimals in (
        (N_("sheet", "water activity"), "aw", "", 2),
        (N_("sheet", "density"), "density_g_l", "g/L", 0),
    ):
        found = [e.body.value for e in lot.of(Reading) if e.body.quantity == quantity]
        rows.append((head, N_("sheet", "{value}", value=Num(found[-1], unit, decimals)) if found else None))
    rows.append((N_("sheet", "defects"), _defects(picture, lot)))
    rows.append((N_("sheet", "cup"), _cup(lot)))
    top = lot.balance.get(TOP, 0)
    if top_g(lot) is not None:
        held = sum(
            e.body.grams for e in lot.of(Hold) if e.body.until_utc_s > now_of(picture)
        )  # fmt: skip
        free = max(top - held, 0)
        boxes, rest = divmod(free, BOX_KG * 1000)
        if boxes:
            line = N_(
                "sheet",
                "{free}: {n} × {size}, {rest} rest",
                free=kg(free, 1),
                n=boxes,
                size=kg(BOX_KG * 1000),
                rest=kg(rest, 1),
            )
        else:
            line = N_("sheet", "{free}", free=kg(free, 1))
        rows.append((N_("sheet", "free"), line))
        gone = lot.balance.get(SOLD, 0) + lot.balance.get(SAMPLE, 0)
        if gone and state == "gone":
            rows[-1] = (N_("sheet", "free"), N_("sheet", "nothing left"))
    return tuple(rows)


def _defects(picture: Picture, lot: LotPicture) -> Text | None:
    counts = lot.of(Defects)
    if not counts:
        return None
    body = counts[-1].body
    if by_tables := judged(picture.things, body):
        return N_("sheet", "{results}", results=Listing(by_tables, "; "))
    facts: dict[str, Fact] = {"grams": Num(body.sample_g, "g"), "standard": body.standard}
    if body.full_n is not None and f"{body.sample_g} g" in body.standard:
        return N_("sheet", "{n} full, {standard}", n=Num(body.full_n), standard=body.standard)
    if body.full_n is not None:
        return N_("sheet", "{n} full in {grams}, {standard}", n=Num(body.full_n), **facts)
    beans = Num(sum(line.value for line in body.counts))
    return N_("sheet", "{n} {n:bean|beans} in {grams}, {standard}", n=beans, **facts)


def _cup(lot: LotPicture) -> Text | None:
    tables = lot.of(Cup)
    if not tables:
        return None
    body = tables[-1].body
    facts: dict[str, Fact] = {"score": Num(body.score, "", 1), "n": body.sittings_n}
    if body.words:
        return N_("sheet", "{score} at own table, {n} {n:sitting|sittings}: {words}", **facts, words=body.words)
    return N_("sheet", "{score} at own table, {n} {n:sitting|sittings}; words not recorded", **facts)


def _differed(picture: Picture, lot: LotPicture) -> tuple[Text, ...]:
    """What differed from the method: instruments found wrong, deviations as written, beds joined, mixing."""
    found = list(deviations(picture, lot))
    notes = [e.body.text for e in lot.of(Remark) if e.body.about == "event"]
    found += [N_("sheet", "{text}", text=text) for text in notes]
    if not any(m.act == "join" for m in lot.trail):
        found.append(N_("sheet", "The lot was not mixed with another."))
    return tuple(found)
