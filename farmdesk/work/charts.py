"""The two curves of a lot as figures: its ferments and its drying. Screen and paper paint the same ones."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta

import numpy as np

from farmdesk.ahead.range import Ahead
from farmdesk.clock import DAY_S, HOUR_S
from farmdesk.picture.curves import TrayCurve, meter_points, moisture_known, tray_curves
from farmdesk.picture.entries import LoggerFile, Reading
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.measures import Fill, fills, method_of, on_beds
from farmdesk.picture.picture import Picture
from farmdesk.text import N_, Day, Days, Fact, Moment, Num, Text, pct
from farmdesk.work.farm import OpenFarm
from farmdesk.work.figures import (
    ANCHOR,
    HAND,
    LOGGER,
    METER,
    RAW,
    TRAY,
    Band,
    Curve,
    Fan,
    Figure,
    Flag,
    Floats,
)
from farmdesk.work.forecasts import drying_ready, ferment_ready, now_of
from farmdesk.work.goodhours import GoodHours
from farmdesk.work.portions import TARGET_WB_FRAC, is_whole, rain_blocks
from farmdesk.work.settings import asleep_h

GAP_INTERVALS, GAP_LEAST_S = 1.75, 4 * HOUR_S  # a hole this much wider than usual is no line (common practice)
WETTED_FRAC = 0.02  # a rise of two points between two weighings is water taken up, not noise

PARCHMENT_STAGES = (
    (44.5, 55.0, N_("stages", "skin-dry")),
    (32.5, 44.5, N_("stages", "white")),
    (21.5, 32.5, N_("stages", "soft black")),
    (15.5, 21.5, N_("stages", "medium")),
    (11.5, 15.5, N_("stages", "hard black")),
    (9.5, 11.5, N_("stages", "dry")),
)
CHERRY_STAGES = (
    (60.0, 70.0, N_("stages", "fresh")),
    (35.0, 60.0, N_("stages", "wilted")),
    (25.0, 35.0, N_("stages", "half dry")),
    (12.5, 25.0, N_("stages", "rattling")),
    (9.5, 12.5, N_("stages", "dry")),
)


def _broken(x: Floats, y: Floats, breaks: list[int]) -> tuple[Floats, Floats]:
    """Put a hole into a curve before each of these points."""
    at = np.asarray(breaks, dtype=np.intp)
    return np.insert(x, at, x[at] if at.size else x[:0]), np.insert(y, at, np.nan)


def _gaps(x: Floats) -> list[int]:
    """Before which points there is a hole in the readings: much longer than the usual step [x in UTC s]."""
    steps = np.diff(x)
    if steps.size < 2:
        return []
    usual = float(np.median(steps))
    return [int(i) + 1 for i in np.flatnonzero((steps > GAP_INTERVALS * usual) & (steps > GAP_LEAST_S))]


def _nights(picture: Picture, low: float, high: float) -> tuple[Band, ...]:
    asleep, awake = asleep_h(picture.things)
    bands = []
    day = picture.time.calendar_day(low) - timedelta(days=1)
    while picture.time.instant(day) < high:
        a = picture.time.instant(day, *_hour(asleep))
        b = picture.time.instant(day + timedelta(days=int(awake <= asleep)), *_hour(awake))
        if b > low and a < high:
            bands.append(Band("night", max(a, low), min(b, high), "x"))
        day += timedelta(days=1)
    return tuple(bands)


def _hour(hours: float) -> tuple[int, int]:
    return int(hours) % 24, round(60 * (hours % 1)) % 60


@dataclass(frozen=True, slots=True)
class _Series:
    x: Floats
    y: Floats


def _hand(lot: LotPicture, fill: Fill, quantity: str, until: int) -> _Series:
    rows = [
        (e.happened_utc_s, e.body.value)
        for e in lot.of(Reading)
        if e.body.quantity == quantity and e.body.place == fill.place and fill.from_utc_s <= e.happened_utc_s <= until
    ]
    table = np.array(rows, dtype=np.float64).reshape(-1, 2)
    return _Series(table[:, 0], table[:, 1])


def _logged(farm: OpenFarm, lot: LotPicture, place: str, low: float, high: float) -> _Series:
    """The logger's temperatures of a vessel between two instants [UTC s]."""
    files = [e.id for e in lot.of(LoggerFile) if e.body.place == place and e.body.quantity == "mass_c"]
    if not files:
        return _Series(np.empty(0), np.empty(0))
    at, values = farm.file.logger_rows(files)
    keep = (at >= low) & (at <= high)
    return _Series(at[keep], values[keep])


def ferment_figures(farm: OpenFarm, picture: Picture, lot: LotPicture) -> tuple[Figure, ...]:
    """One figure for each filled vessel that has been read: pH above, °C of the mass below."""
    all_fills = fills(lot, picture.things)
    figures = [
        figure
        for n, fill in enumerate(all_fills)
        if (figure := _ferment(farm, picture, lot, fill, n, len(all_fills))) is not None
    ]
    return tuple(figures)


def _ferment(farm: OpenFarm, picture: Picture, lot: LotPicture, fill: Fill, n: int, of: int) -> Figure | None:
    method = method_of(lot, picture.things)
    now = now_of(picture)
    end = fill.until_utc_s or now
    ahead = ferment_ready(picture, lot, fill.place) if fill.until_utc_s is None else None
    ph = _hand(lot, fill, "ph", end)
    mass = _hand(lot, fill, "mass_c", end)
    logged = _logged(farm, lot, fill.place, fill.from_utc_s - HOUR_S, end)
    if not ph.x.size and not mass.x.size and not logged.x.size and fill.until_utc_s is not None:
        return None
    low = float(fill.from_utc_s)
    latest = max(filter(None, (ahead.likely_utc_s, ahead.latest_utc_s)), default=end) if ahead else end
    high = float(max(end, latest or end))
    pad = 0.04 * max(high - low, HOUR_S)
    bands = list(_nights(picture, low - pad, high + pad))
    if method and method.ph_low is not None and method.ph_high is not None:
        bands.append(Band("target", method.ph_low, method.ph_high, "y", N_("figures", "target")))
    breaks = _gaps(ph.x)
    for i in breaks:
        hours = Num((ph.x[i] - ph.x[i - 1]) / HOUR_S, "h")
        bands.append(Band("gap", ph.x[i - 1], ph.x[i], "x", N_("figures", "no reading for {hours}", hours=hours)))
    x, y = _broken(ph.x, ph.y, breaks)
    flags = _flags(picture, ahead, clock=True)
    marks: tuple[Flag, ...] = ()
    if fill.until_utc_s is not None:
        clock = Moment(picture.time.local(fill.until_utc_s), clock=True)
        word = (
            N_("figures", "opened {at}", at=clock)
            if method and method.sealed
            else N_("figures", "washed {at}", at=clock)
        )
        marks = (Flag(float(fill.until_utc_s), word),)
    y_low = min([3.8, *(ph.y - 0.15), *([method.ph_low - 0.2] if method and method.ph_low else [])])
    y_high = max([5.6, *(ph.y + 0.15)])
    subtitle: Text = N_("figures", "{vessel}", vessel=fill.place)
    if of > 1:
        subtitle = N_("figures", "fill {n} of {all}, {vessel}", n=n + 1, all=of, vessel=fill.place)
    return Figure(
        N_("figures", "Ferment"),
        _ferment_sentence(picture, fill, ph, method.ph_low if method else None, method.ph_high if method else None),
        "time",
        "pH",
        low - pad,
        high + pad,
        float(y_low),
        float(y_high),
        curves=(Curve(HAND, x, y, labelled=True),) if ph.x.size else (),
        bands=tuple(bands),
        flags=flags,
        marks=marks,
        subtitle=subtitle,
        rests_on=ahead.says if ahead else None,
        under=_mass(picture, mass, logged, low - pad, high + pad),
        y_decimals=2,
    )


def _mass(picture: Picture, mass: _Series, logged: _Series, low: float, high: float) -> Figure | None:
    if not mass.x.size and not logged.x.size:
        return None
    curves: list[Curve] = []
    if logged.x.size:
        curves.append(Curve(LOGGER, *_broken(logged.x, logged.y, _gaps(logged.x))))
    if mass.x.size:
        curves.append(Curve(HAND, *_broken(mass.x, mass.y, _gaps(mass.x))))
    values = np.concatenate([mass.y, logged.y])
    sentence = N_(
        "figures", "Mass {low}–{high}.", low=Num(float(values.min()), "", 1), high=Num(float(values.max()), "°C", 1)
    )
    return Figure(
        N_("figures", "mass °C"), sentence, "time", "°C", low, high,
        float(np.floor(values.min() - 1)), float(np.ceil(values.max() + 1)), tuple(curves), y_decimals=1,
    )  # fmt: skip


def _ferment_sentence(picture: Picture, fill: Fill, ph: _Series, ph_low: float | None, ph_high: float | None) -> Text:
    if not ph.x.size:
        return N_("figures", "pH was not measured in {vessel}.", vessel=fill.place)
    hours = Num((ph.x[-1] - fill.from_utc_s) / HOUR_S, "h")
    facts: dict[str, Fact] = {
        "first": Num(float(ph.y[0]), "", 2),
        "last": Num(float(ph.y[-1]), "", 2),
        "hours": hours,
    }
    if ph.x.size == 1:
        said = N_("figures", "pH {first} at the start.", **facts)
    elif ph_low is None or ph_high is None:
        said = N_("figures", "pH {first} to {last} in {hours}.", **facts)
    else:
        facts |= {"low": Num(ph_low, "", 1), "high": Num(ph_high, "", 1)}
        said = N_("figures", "pH {first} to {last} in {hours}; target {low}–{high}.", **facts)
    end = fill.until_utc_s or now_of(picture)
    holes = [(ph.x[i - 1], ph.x[i]) for i in _gaps(ph.x)]
    if end - ph.x[-1] > 1.5 * HOUR_S:
        holes.append((float(ph.x[-1]), float(end)))
    if not holes:
        return said
    a, b = max(holes, key=lambda hole: hole[1] - hole[0])
    far = b - a > 20 * HOUR_S
    return N_(
        "figures",
        "{said} No reading between {a} and {b}.",
        said=said,
        a=Moment(picture.time.local(a), clock=not far),
        b=Moment(picture.time.local(b), clock=not far),
    )


def _flags(picture: Picture, ahead: Ahead | None, *, clock: bool) -> tuple[Flag, ...]:
    """Three flags at earliest, likely and latest; what is open has none."""
    if ahead is None:
        return ()
    found = []
    month: int | None = None
    for at, likely in ((ahead.earliest_utc_s, False), (ahead.likely_utc_s, True), (ahead.latest_utc_s, False)):
        if at is not None:
            local = picture.time.local(at)
            text = (
                N_("figures", "{at}", at=Moment(local, clock=True))
                if clock
                else N_("figures", "{day}", day=Day(local.date()))
            )
            month = local.month if month is None else month
            found.append(Flag(at, text, likely))
    return tuple(found)


def drying_figure(farm: OpenFarm, picture: Picture, lot: LotPicture, x_kind: str = "time") -> Figure | None:
    """Moisture against dates (`time`) or good drying hours (`good_h`); None before the lot lay on beds."""
    stays = on_beds(lot, picture.things, picture.time)
    if not stays:
        return None
    corrections, now = picture.corrections, now_of(picture)
    begin = min(s.from_utc_s for s in stays)
    ended = None if any(s.until_utc_s is None for s in stays) else max(s.until_utc_s or 0 for s in stays)
    points = meter_points(lot, corrections)
    trays = tray_curves(lot, picture.things, corrections)
    ahead = drying_ready(picture, lot)
    ends = [float(ended or now), *(float(p.at_utc_s) for p in points[-1:])]
    if ahead:
        ends += [t + DAY_S for t in (ahead.likely_utc_s, ahead.latest_utc_s) if t is not None]
    low, high = float(begin), max(ends)
    good = GoodHours(picture, begin, high)
    scale = good.at if x_kind == "good_h" else (lambda t: np.asarray(t, dtype=np.float64))
    curves: list[Curve] = []
    for tray in trays:
        curves += _tray_curves(tray, scale)
    places = sorted({p.place for p in points})
    for place in places:
        own = [p for p in points if p.place == place]
        x = scale(np.array([p.at_utc_s for p in own], dtype=np.float64))
        columns = [
            np.array([getattr(p, name) for p in own]) * 100 for name in ("wb_frac", "low_wb_frac", "high_wb_frac")
        ]
        curves.append(Curve(METER, x, columns[0], low=columns[1], high=columns[2], place=place))
        raw = [p for p in own if p.raw_wb_frac != p.wb_frac]
        if raw:
            x = scale(np.array([p.at_utc_s for p in raw], dtype=np.float64))
            curves.append(Curve(RAW, x, np.array([p.raw_wb_frac for p in raw]) * 100, place=place))
    values = np.concatenate([c.y[np.isfinite(c.y)] for c in curves] or [np.array([54.0])])
    fan = None
    if ahead is not None and ahead.times_utc_s.size:
        near = ahead.times_utc_s <= high  # past its latest end a fan says nothing that is asked
        fan = Fan(scale(ahead.times_utc_s[near]), ahead.low[near] * 100, ahead.mid[near] * 100, ahead.high[near] * 100)
    flags = tuple(Flag(float(scale(np.array([f.x]))[0]), f.text, f.likely) for f in _flags(picture, ahead, clock=False))
    blocks = rain_blocks(picture, begin, ended or now)
    rain = tuple((float(scale(np.array([a]))[0]), float(scale(np.array([b]))[0]), mm) for a, b, mm in blocks)
    span = float(scale(np.array([low]))[0]), float(scale(np.array([high]))[0])
    pad = 0.03 * (span[1] - span[0])
    return Figure(
        N_("figures", "Drying"),
        drying_sentence(picture, lot, ahead),
        x_kind,
        "%",
        span[0] - pad,
        span[1] + pad,
        8.0 if values.min() > 9 else 5.0,
        float(np.ceil((values.max() + 2) / 5) * 5),
        tuple(curves),
        flags=flags,
        fan=fan,
        target=(TARGET_WB_FRAC * 100, N_("figures", "{target}", target=Num(TARGET_WB_FRAC * 100, "%"))),
        stages=CHERRY_STAGES if is_whole(picture, lot) else PARCHMENT_STAGES,
        rain=rain,
        subtitle=_hung(trays),
        rests_on=ahead.says if ahead else None,
        y_decimals=1,
    )


def _hung(trays: list[TrayCurve]) -> Text:
    if any(tray.anchors for tray in trays):
        return N_("figures", "squares: tray, hung on the meter; dots: meter")
    if trays:
        return N_("figures", "squares: tray, from the usual starting moisture; no meter reading it could hang on")
    return N_("figures", "dots: meter")


def _tray_curves(tray: TrayCurve, scale) -> list[Curve]:  # type: ignore[no-untyped-def]
    wb = tray.moisture_wb_frac * 100
    wetted = [int(i) + 1 for i in np.flatnonzero(np.diff(tray.moisture_wb_frac) > WETTED_FRAC)]
    breaks = sorted({*_gaps(tray.at_utc_s), *wetted})
    x, y = _broken(scale(tray.at_utc_s), wb, breaks)
    curves = [Curve(TRAY, x, y, place=tray.place)]
    if tray.anchors:
        at = np.array([a for a, _ in tray.anchors], dtype=np.float64)
        curves.append(Curve(ANCHOR, scale(at), np.array([m for _, m in tray.anchors]) * 100, place=tray.place))
    return curves


def drying_sentence(picture: Picture, lot: LotPicture, ahead: Ahead | None) -> Text:
    """The drying chart in one factual sentence."""
    known = moisture_known(lot, picture.things, picture.corrections)
    if known is None:
        return N_("figures", "Moisture was not measured.")
    day = Day(picture.time.farm_day(known.at_utc_s))
    source = N_("figures", "by meter") if known.source == "meter" else N_("figures", "by tray")
    facts: dict[str, Fact] = {"moisture": pct(known.wb_frac), "day": day, "source": source}
    if ahead is None or ahead.earliest_utc_s is None:
        return N_("figures", "{moisture} on {day}, {source}.", **facts)
    first = picture.time.farm_day(ahead.earliest_utc_s)
    facts["target"] = Num(TARGET_WB_FRAC * 100, "%")
    if ahead.latest_utc_s is None:
        facts["first"] = Day(first)
        return N_("figures", "{moisture} on {day}, {source}. {target} not before {first}; the end is open.", **facts)
    facts["days"] = Days(first, picture.time.farm_day(ahead.latest_utc_s))
    return N_("figures", "{moisture} on {day}, {source}. {target} on {days}.", **facts)
