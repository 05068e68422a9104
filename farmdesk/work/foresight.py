"""From the picture to the forecasters: what a lot's papers say of its drying or ferment, as plain arrays.

Loaded only when a forecast is worked out, since the forecasters bring SciPy with them.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date, timedelta
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from farmdesk.ahead.drying import drying_taught, forecast_drying
from farmdesk.ahead.drying_fit import DryingLot, Meter, Tray
from farmdesk.ahead.ferment import ferment_taught, forecast_ferment, next_check_utc_s
from farmdesk.ahead.ferment_fit import FermentLot
from farmdesk.ahead.ferment_limits import worries
from farmdesk.ahead.learning import LotTaught
from farmdesk.ahead.range import ALARM, Ahead, Worry
from farmdesk.ahead.weather import WeatherLog
from farmdesk.clock import HOUR_S
from farmdesk.errors import NotPossible
from farmdesk.picture.curves import meter_points, tray_curves
from farmdesk.picture.entries import LoggerFile, Outlook, Reading, Yeast
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.measures import Fill, fills, loading_kg_m2, method_of, on_beds
from farmdesk.picture.picture import Picture
from farmdesk.picture.things import ROOF, Method
from farmdesk.text import N_
from farmdesk.work.forecasts import Forecasts, Key, now_of, running_fill, typical_drying, typical_ferment

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

Floats = NDArray[np.float64]
TARGET_WB_FRAC = 0.12
WETTED_FRAC = 0.02
SKIES = {"dry": "sun", "cloud": "grey", "rain": "rain"}
NO_TARGET_PH = 4.0  # stands in where a method aims at none: no worry rests on it
LOOK_S = 900  # hands look on the quarter of an hour
THIN_S = 900  # a logger's readings are taken every quarter of an hour


def question(farm: OpenFarm, picture: Picture, key: Key) -> Callable[[], Ahead]:
    """A forecast as something to be worked out later: everything it needs is gathered here and now."""
    code, place = key
    lot = picture.lots[code]
    if place:
        return _ferment_question(farm, picture, lot, place)
    return _drying_question(farm.forecasts, picture, lot)


def weather_log(picture: Picture) -> WeatherLog:
    """The weather rows of a picture, oldest first."""
    rows = [(date.fromisoformat(day), w) for day, w in sorted(picture.weather.items())]
    columns = [
        [float(picture.time.instant(day)) for day, _ in rows],
        *([getattr(w, name) for _, w in rows] for name in ("good_h", "min_c", "max_c", "rh_frac", "rain_mm")),
    ]
    return WeatherLog(*(np.array(column, dtype=np.float64) for column in columns))


def ferment_style(method: Method) -> str:
    """What pH curve to expect of a method: whole cherry is slow and long, pulped coffee in a shut vessel between."""
    return "extended" if method.whole else "honey" if method.sealed else "washed"


def drying_style(method: Method) -> str:
    """What speed to expect on the beds: whole cherry, parchment with its mucilage on (never rinsed), or washed."""
    return "natural" if method.whole else "honey" if method.rinses_n == 0 else "washed"


def drying_lot(picture: Picture, lot: LotPicture) -> DryingLot | None:
    """A lot on its beds as the forecaster takes it; None before it was spread or without a method."""
    method = method_of(lot, picture.things)
    stays = on_beds(lot, picture.things, picture.time)
    if method is None or not stays:
        return None
    start = float(min(stay.from_utc_s for stay in stays))
    kinds = [picture.things.places[stay.place] for stay in stays]
    beds = [place for place in kinds if place.kind == "bed"]
    surface = "patio" if not beds else "roof" if all(bed.cover == ROOF for bed in beds) else "raised"
    trays, wettings = [], []
    for curve in tray_curves(lot, picture.things, picture.corrections):
        rows = _rising(curve.at_utc_s) & (curve.at_utc_s >= start)
        if rows.any():
            at, grams, wet = curve.at_utc_s[rows], curve.grams[rows], curve.moisture_wb_frac[rows]
            trays.append(Tray(at, grams))
            wettings += [float(at[i]) for i in np.flatnonzero(np.diff(wet) > WETTED_FRAC) + 1]
    points = [p for p in meter_points(lot, picture.corrections) if p.at_utc_s >= start]
    points = [p for p in points if not p.place] or points
    meter = None
    if points:
        at = np.array([p.at_utc_s for p in points], dtype=np.float64)
        rows = _rising(at)
        meter = Meter(
            at[rows],
            np.array([p.wb_frac for p in points])[rows],
            np.array([p.repeats_n for p in points], dtype=np.float64)[rows],
            np.array([p.mark == "corrected" for p in points])[rows],
        )
    return DryingLot(
        drying_style(method),
        surface,
        start,
        loading_kg_m2(lot, picture.things),
        method.start_wb_frac,
        method.start_wb_sd_frac,
        tuple(trays),
        meter,
        tuple(sorted(set(wettings))),
    )


def _rising(at: Floats) -> NDArray[np.bool_]:
    """Which of some instants come after all before them."""
    return np.concatenate([[True], np.diff(np.maximum.accumulate(at)) > 0]) if at.size else np.empty(0, dtype=bool)


def _skies(picture: Picture, log: WeatherLog) -> list[str | None]:
    """The typed outlook, from the first day that is not in the log on."""
    words = {e.body.day: SKIES.get(e.body.words) for e in picture.general_of(Outlook)}
    today = picture.time.farm_day(now_of(picture))
    first = (
        max(picture.time.calendar_day(float(log.midnight_utc_s[-1]) + HOUR_S) + timedelta(days=1), today)
        if log.midnight_utc_s.size
        else today
    )
    last = max((date.fromisoformat(day) for day in words), default=first)
    return [words.get((first + timedelta(days=n)).isoformat()) for n in range((last - first).days + 1)][:14]


def _drying_question(kept: Forecasts, picture: Picture, lot: LotPicture) -> Callable[[], Ahead]:
    running, log, now = drying_lot(picture, lot), weather_log(picture), float(now_of(picture))
    standard = typical_drying(picture, lot)
    finished = [
        (other.code, len(other.entries), done, float(ended))
        for other in picture.lots.values()
        if (ended := _dried_at(other)) and (done := drying_lot(picture, other)) and other.code != lot.code
    ]
    skies = _skies(picture, log)

    def work_out() -> Ahead:
        if running is None or not log.midnight_utc_s.size:
            return _or_refuse(standard)
        taught: list[tuple[float, LotTaught]] = []
        for code, n, done, ended in sorted(finished, key=lambda row: row[3]):
            before = [one for at, one in taught if at <= done.start_utc_s]
            if one := _drying_taught(kept, code, n, done, log, ended, before):
                taught.append((ended, one))
        return forecast_drying(running, log, now, TARGET_WB_FRAC, [one for _, one in taught], skies)

    return work_out


def _dried_at(lot: LotPicture) -> int | None:
    gates = [moved.at_utc_s for moved in lot.trail if moved.act == "shelve"]
    return gates[0] if gates else None


def _drying_taught(
    kept: Forecasts, code: str, n: int, lot: DryingLot, log: WeatherLog, ended: float, before: list[LotTaught]
) -> LotTaught | None:
    key = code, "drying", n
    if key not in kept.taught:
        try:
            kept.taught[key] = drying_taught(lot, log, ended, TARGET_WB_FRAC, before)
        except (NotPossible, np.linalg.LinAlgError):
            kept.taught[key] = None  # it has too little to teach
    return kept.taught[key]


def ferment_lot(
    farm: OpenFarm, picture: Picture, lot: LotPicture, fill: Fill, otherwise_ph: float | None = None
) -> FermentLot | None:
    """A filled vessel as the forecaster takes it; None where its method aims at no pH and no other is given."""
    method = method_of(lot, picture.things)
    target_ph = otherwise_ph if method is None or method.ph_target is None else method.ph_target
    if method is None or target_ph is None:
        return None
    until = fill.until_utc_s or now_of(picture)
    ph = _series(lot, fill, "ph", until)
    mass = _series(lot, fill, "mass_c", until)
    files = [e.id for e in lot.of(LoggerFile) if e.body.place == fill.place and e.body.quantity == "mass_c"]
    if files:
        at, values = farm.file.logger_rows(files)
        keep = (at >= fill.from_utc_s) & (at <= until)
        at, values = at[keep], values[keep]
        thin = np.unique(at // THIN_S, return_index=True)[1]
        mass = _joined(mass, np.column_stack([at[thin], values[thin]]))
    tools = {e.happened_utc_s: e.instrument for e in lot.of(Reading) if e.body.quantity == "ph"}
    paper = np.array([_is_paper(picture, tools.get(int(at), "")) for at in ph[:, 0]], dtype=bool)
    return FermentLot(
        ferment_style(method), float(fill.from_utc_s), target_ph, ph[:, 0], ph[:, 1], paper,
        mass[:, 0], mass[:, 1], pitched=bool(lot.of(Yeast)),
    )  # fmt: skip


def _is_paper(picture: Picture, instrument: str) -> bool:
    tool = picture.things.instruments.get(instrument)
    return bool(tool and "paper" in tool.kind)


def _series(lot: LotPicture, fill: Fill, quantity: str, until: int) -> Floats:
    rows = [
        (float(e.happened_utc_s), e.body.value)
        for e in lot.of(Reading)
        if e.body.quantity == quantity and e.body.place == fill.place and fill.from_utc_s <= e.happened_utc_s <= until
    ]
    table = np.array(rows, dtype=np.float64).reshape(-1, 2)
    return table[_rising(table[:, 0])]


def _joined(a: Floats, b: Floats) -> Floats:
    both = np.concatenate([a, b])
    both = both[np.argsort(both[:, 0], kind="stable")]
    return both[_rising(both[:, 0])]


def _ferment_question(farm: OpenFarm, picture: Picture, lot: LotPicture, place: str) -> Callable[[], Ahead]:
    fill = running_fill(picture, lot, place)
    running = ferment_lot(farm, picture, lot, fill) if fill else None
    method = method_of(lot, picture.things)
    watched = ferment_lot(farm, picture, lot, fill, otherwise_ph=NO_TARGET_PH) if fill else None
    brix = _series(lot, fill, "brix", now_of(picture))[:, 1] if fill else np.empty(0)
    standard, now, kept = typical_ferment(picture, lot, place), float(now_of(picture)), farm.forecasts
    closed = [
        (f"{other.code}/{done.place}", len(other.entries), taught, float(done.until_utc_s))
        for other in picture.lots.values()
        for done in fills(other, picture.things)
        if done.until_utc_s is not None and (taught := ferment_lot(farm, picture, other, done))
    ]

    def work_out() -> Ahead:
        ahead = end()
        said = _worries(watched, now, bool(method and method.sealed), brix)
        look = None  # an alarm wants to be looked at now
        if watched is not None and all(worry.level != ALARM for worry in said):
            look = next_check_utc_s(ahead, now, watched.style) // LOOK_S * LOOK_S
        return replace(ahead, worries=said, look_utc_s=look)

    def end() -> Ahead:
        if running is None or running.ph.size < 2:
            return _or_refuse(standard)
        taught: list[tuple[float, LotTaught]] = []
        for code, n, done, ended in sorted(closed, key=lambda row: row[3]):
            before = [one for at, one in taught if at <= done.start_utc_s]
            if one := _ferment_taught(kept, code, n, done, ended, before):
                taught.append((ended, one))
        return forecast_ferment(running, now, [one for _, one in taught])

    return work_out


def _worries(lot: FermentLot | None, now_utc_s: float, sealed: bool, brix: Floats) -> tuple[Worry, ...]:
    if lot is None:
        return ()
    fell = brix.size > 1 and brix[-1] <= brix[0]  # a Brix that rose is a bad sample
    sugar = {"first_brix": float(brix[0]), "now_brix": float(brix[-1])} if fell else {}
    try:
        return worries(lot, now_utc_s, sealed=sealed, **sugar)
    except NotPossible:  # a reading that no mass can have: the notebook marks it
        return ()


def _ferment_taught(
    kept: Forecasts, code: str, n: int, lot: FermentLot, ended: float, before: list[LotTaught]
) -> LotTaught | None:
    key = code, "ferment", n
    if key not in kept.taught:
        try:
            kept.taught[key] = ferment_taught(lot, ended, before)
        except (NotPossible, np.linalg.LinAlgError):
            kept.taught[key] = None
    return kept.taught[key]


def _or_refuse(standard: Ahead | None) -> Ahead:
    if standard is None:
        raise NotPossible(N_("ahead", "There is nothing to count a range from."))
    return standard
