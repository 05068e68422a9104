"""When a lot will be dry: the fitted lot carried on through many possible weathers.

Each draw is one possible lot in one possible weather. The answer counts them: earliest, likely, latest, the chance
by a date, of being too dry by a date, of not getting there at all. Ready means the first daylight hour at which
the coffee is down at the target.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from typing import Final

import numpy as np

from farmdesk.ahead.drying_fit import (
    DAY_FREEDOM,
    DAY_SCALE,
    LEARNT_N,
    DryingLot,
    LotModel,
    cut,
    drying_layers,
    drying_settings,
    key_of,
    model_of,
)
from farmdesk.ahead.learning import LotTaught, prior_for, stretch_of, surprise_of, taught_alone
from farmdesk.ahead.posterior import normal_draws
from farmdesk.ahead.range import Ahead, ahead_of, stretched
from farmdesk.ahead.weather import DryingDays, Stories, WeatherLog, day_hour, day_share, drying_days, stories
from farmdesk.clock import DAY_S, HOUR_S
from farmdesk.science.drying import drive_between, gap_left
from farmdesk.science.limits import FloatArray, single
from farmdesk.text import N_, Num, Text, pct

DRAWS_N: Final = 800
HORIZON_D: Final = 60  # slow naturals take 30 days; a shorter view would call a late lot "never"
FAN_D: Final = 30
OVER_DRY_WB_FRAC: Final = 0.095  # Kamau's stages end at 10 %; half a point below is over-dried
NEAR_REST_WB_FRAC: Final = 0.002  # a target this close to where the air holds the coffee is not reached in it
SEED: Final = 20  # one fixed seed: the same question gives the same range


@dataclass(frozen=True, slots=True, eq=False)
class Future:
    """What each draw does: when it is ready and too dry [UTC s, inf = not], and the fan's times and moistures."""

    ready_utc_s: FloatArray
    over_utc_s: FloatArray
    times_utc_s: FloatArray = field(default_factory=lambda: np.empty(0))
    moisture_wb_frac: FloatArray = field(default_factory=lambda: np.empty((0, 0)))
    rest_db_frac: FloatArray = field(default_factory=lambda: np.empty(0))


def forecast_drying(
    lot: DryingLot,
    log: WeatherLog,
    now_utc_s: float,
    target_wb_frac: float,
    taught: Sequence[LotTaught] = (),
    outlook: Sequence[str | None] = (),
    *,
    draws_n: int = DRAWS_N,
    seed: int = SEED,
) -> Ahead:
    """The range in which a lot comes down to a target moisture [wet basis], asked at an instant [UTC s].

    Only what was known by then is used: readings, weather rows of days begun, finished lots given in `taught`.
    outlook: typed words for the days from the first one not in the log (sun, mixed, grey, rain or None).
    Raises NotPossible for input no lot can have.
    """
    target = single(target_wb_frac, 0.06, 0.60, N_("drying", "A target moisture"), "%", 100.0)
    known = log.known_by(now_utc_s)
    prior = prior_for(key_of(lot), drying_settings(lot, known), drying_layers(), taught)
    model = model_of(lot, known, prior, now_utc_s)
    rng = np.random.default_rng(seed)
    theta = normal_draws(model.fit(), draws_n, rng)
    own = model.unfold(theta)
    now_db = model.path(own)[-1]
    last_e = own["days"][:, -1]
    future = _carry_on(model, own, now_db, last_e, known, outlook, target, rng)
    source, rests_on = _rests_on(model, prior.says)
    wet = future.moisture_wb_frac
    fan = (future.times_utc_s, *np.percentile(wet, [10, 50, 90], axis=1)) if wet.size else None
    remark = _remark(future, target)
    ends = np.full(draws_n, np.inf) if remark is not None else future.ready_utc_s
    ahead = ahead_of(ends, rests_on, source, remark=remark, over_utc_s=future.over_utc_s, fan=fan)
    return ahead if source == "typical" else stretched(ahead, stretch_of(taught, key_of(lot)), now_utc_s)


def _carry_on(
    model: LotModel,
    own: dict[str, FloatArray],
    now_db: FloatArray,
    last_e: FloatArray,
    log: WeatherLog,
    outlook: Sequence[str | None],
    target_wb: float,
    rng: np.random.Generator,
) -> Future:
    now, m = model.until_utc_s, now_db.size
    lot, noise = model.lot, model.noise
    target, over = (w / (1.0 - w) for w in (target_wb, OVER_DRY_WB_FRAC))
    days = drying_days(log, now, now + HORIZON_D * DAY_S)
    today_known = bool(days.known[0])
    told = stories(log, days.midnight_utc_s.size, m, rng, outlook)
    drive, day_rest, night_rest, rain = _spread_out(told, days, today_known)
    follow, sd = float(noise["day_correlation"]), float(noise["day_ln"])
    fresh = DAY_SCALE * sd * float(np.sqrt(1.0 - follow**2))
    steps = cut(days.midnight_utc_s, now, float(days.midnight_utc_s[-1]), np.empty(0))
    rate, held, shape = own["rate"][:, 0], (own["rate"] * own["layer"])[:, 0], own["shape"][:, 0]
    layer, offset = own["layer"][:, 0], own["rest"][:, 0]
    night_share = float(noise["night_share"][0 if lot.covered_nights else 1])
    x, e, day_before = now_db.copy(), last_e, 0
    ready = np.where(x <= target, now, np.inf)
    too_dry = np.where(x <= over, now, np.inf)
    times, curve = [now], [x]
    for i in range(steps.day.size):
        day, end = int(steps.day[i]), float(steps.ends_utc_s[i])
        if day != day_before:
            e, day_before = follow * e + fresh * rng.standard_t(DAY_FREEDOM, m), day
            x = np.minimum(x + _wetted(rain[:, day], lot.covered_rain, model, rng), np.maximum(own["start"][:, 0], x))
        before = x
        if steps.night[i]:
            xe = np.maximum(night_rest[:, day] + offset, 0.02)
            x = xe + gap_left(x - xe, rate * (night_share * steps.length_d[i]), np.zeros(1))
            crossed = np.full(m, end)
        else:
            xe = np.maximum(day_rest[:, day] + offset, 0.02)
            power = drive[:, day] * np.exp(e)
            x = xe + gap_left(x - xe, rate * power * steps.share[i], held, shape)
            crossed = None
        for limit, found in ((target, ready), (over, too_dry)):
            hit = np.isinf(found) & (x <= limit)
            if hit.any():
                found[hit] = (
                    crossed[hit]
                    if crossed is not None
                    else _hour_of(
                        (before - xe)[hit], limit - xe[hit], rate[hit], layer[hit], shape[hit], power[hit],
                        float(days.midnight_utc_s[day]), end, float(steps.share[i]),
                    )
                )  # fmt: skip
        if end <= now + FAN_D * DAY_S:
            times.append(end)
            curve.append(x)
        if np.isfinite(too_dry).all():
            break
    wet = np.array(curve)
    return Future(ready, too_dry, np.array(times), wet / (1.0 + wet), np.median(day_rest + offset[:, None], axis=1))


def _wetted(rain_mm: FloatArray, covered: bool, model: LotModel, rng: np.random.Generator) -> FloatArray:
    """What a day's rain adds to each draw [dry basis]: part of it on open coffee, now and then a leak under a cover."""
    noise = model.noise
    if not covered:
        return np.asarray(float(noise["rain_taken"]) * rain_mm / model.dry_kg_m2)
    leaks = (rain_mm >= 1.0) & (rng.random(rain_mm.size) < float(noise["leak_chance"]))
    return np.asarray(np.where(leaks, rng.exponential(float(noise["leak_db"]), rain_mm.size), 0.0))


def _spread_out(
    told: Stories, days: DryingDays, today_known: bool
) -> tuple[FloatArray, FloatArray, FloatArray, FloatArray]:
    """Stories on the days from today on: today's own row where it is in the log, the stories after it."""
    columns = []
    for name in ("drive_d", "day_rest_db_frac", "night_rest_db_frac", "rain_mm"):
        story: FloatArray = getattr(told, name)
        if today_known:
            first = np.full((story.shape[0], 1), getattr(days, name)[0])
            story = np.concatenate([first, story[:, :-1]], axis=1)
        columns.append(story)
    return columns[0], columns[1], columns[2], columns[3]


def _hour_of(
    gap: FloatArray, target: FloatArray, rate: FloatArray, layer: FloatArray, shape: FloatArray, power: FloatArray,
    midnight_utc_s: float, end_utc_s: float, share: float,
) -> FloatArray:  # fmt: skip
    """The instant [UTC s] within a daylight step at which a gap has closed to the target's."""
    done = float(day_share(np.array([(end_utc_s - midnight_utc_s) / HOUR_S]))[0]) - share
    needed = drive_between(gap, target, rate, layer, shape) / np.maximum(power, 1e-12)
    at = midnight_utc_s + day_hour(np.clip(done + needed, done, done + share)) * HOUR_S
    return np.minimum(at, end_utc_s)


def _remark(future: Future, target_wb: float) -> Text | None:
    """Say so where the days to come would hold the coffee above its target; then no date is printed."""
    rest = float(np.median(future.rest_db_frac))
    rest_wb = rest / (1.0 + rest)
    if rest_wb >= target_wb - NEAR_REST_WB_FRAC and not np.isfinite(future.ready_utc_s).mean() > 0.5:
        return N_(
            "drying",
            "It will not reach {target} in this weather: the air would hold it at about {rest}.",
            target=pct(target_wb),
            rest=pct(rest_wb),
        )
    return None


def _rests_on(model: LotModel, speed: Text) -> tuple[str, Text]:
    """Where the range comes from, as a word and as a sentence."""
    trays = sum(tray.at_utc_s.size for tray in model.lot.trays if tray.at_utc_s.size > 1)
    metered = int(model.meter_rows.size)
    over = Num((model.until_utc_s - model.lot.start_utc_s) / DAY_S, "d", 0)
    if trays and metered:
        return "tray+meter", N_(
            "drying",
            "Rests on {trays} tray {trays:weight|weights} and {meter} meter {meter:reading|readings} over {days}, your weather log, and what to "
            "expect {speed}.",
            trays=trays,
            meter=metered,
            days=over,
            speed=speed,
        )
    if trays:
        return "tray", N_(
            "drying",
            "Rests on {trays} tray {trays:weight|weights} over {days} and no meter reading yet, your weather log, and what to "
            "expect {speed}.",
            trays=trays,
            days=over,
            speed=speed,
        )
    if metered:
        return "meter", N_(
            "drying",
            "Rests on {meter} meter {meter:reading|readings} over {days}, your weather log, and what to expect {speed}.",
            meter=metered,
            days=over,
            speed=speed,
        )
    return "typical", N_(
        "drying",
        "Typical for this method in your weather, {speed}; no reading of this lot says more yet.",
        speed=speed,
    )


# --- what a finished lot teaches --------------------------------------------------------------------------------


def drying_taught(
    lot: DryingLot,
    log: WeatherLog,
    finished_utc_s: float,
    target_wb_frac: float = 0.12,
    before: Sequence[LotTaught] = (),
) -> LotTaught:
    """What a finished lot teaches the next ones: its four parameters, and how well it would have been foretold.

    Fitted on all its readings up to finished_utc_s [UTC s]. target_wb_frac [wet basis]: the target its end is asked
    for again half-way; `before`: what lots finished earlier taught. Raises NotPossible for input no lot can have.
    """
    known = log.known_by(finished_utc_s)
    prior = prior_for(key_of(lot), drying_settings(lot, known), drying_layers(), ())
    model = model_of(lot, known, prior, finished_utc_s)
    fit = model.fit()
    learnt = slice(0, LEARNT_N)
    surprise = _surprise(model, model.path(model.unfold(fit.values[None]))[:, 0], log, target_wb_frac, before)
    return taught_alone(key_of(lot), fit.values[learnt], fit.covariance[learnt, learnt], model.root, surprise)


def _surprise(
    model: LotModel, path_db: FloatArray, log: WeatherLog, target_wb_frac: float, before: Sequence[LotTaught]
) -> float | None:
    """The lot asked again at its first reading after half its time, knowing only what was known then."""
    lot = model.lot
    at = np.concatenate([[lot.start_utc_s], model.steps.ends_utc_s])
    target = target_wb_frac / (1.0 - target_wb_frac)
    below = np.flatnonzero(path_db <= target)
    if not below.size or below[0] == 0:
        return None
    i = int(below[0])
    end = float(np.interp(-target, -path_db[i - 1 : i + 1], at[i - 1 : i + 1]))
    later = model.readings_utc_s[model.readings_utc_s > (lot.start_utc_s + end) / 2.0]
    if not later.size or later[0] >= end:
        return None
    unscaled = [replace(one, surprise=None) for one in before]
    return surprise_of(forecast_drying(lot, log, float(later[0]), target_wb_frac, unscaled), end)
