"""What the drying forecaster may and may not say, lot by lot."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk.ahead.drying import drying_taught, forecast_drying
from farmdesk.ahead.drying_fit import DryingLot, Meter, Tray, drying_layers, drying_settings, key_of, model_of
from farmdesk.ahead.learning import prior_for
from farmdesk.ahead.range import Ahead
from farmdesk.ahead.weather import WeatherLog
from farmdesk.clock import DAY_S, HOUR_S
from farmdesk.errors import NotPossible
from tests.ahead.made_drying import made_lots

FIRST = 1_730_440_800.0
TARGET = 0.12


def steady(days_n: int = 60, good: float = 6.0, rh: float = 0.65, rain: float = 0.0, warm: float = 28.0) -> WeatherLog:
    full = [np.full(days_n, x) for x in (good, warm - 9.0, warm, rh, rain)]
    return WeatherLog(FIRST + DAY_S * np.arange(days_n), *full)


def lot_of(days: float, log: WeatherLog, rate: float = 0.45, start_wb: float = 0.54, **other: object) -> DryingLot:
    """A washed lot spread ten days before `now_of`, that dries at a plain rate; tray and meter each evening."""
    start = FIRST + 30 * DAY_S + 16 * HOUR_S
    at = start + DAY_S * np.arange(int(days) + 1)
    good = np.array([log.good_h[30 + d] for d in range(1, int(days) + 1)]) / 6.0
    x = 0.105 + (start_wb / (1 - start_wb) - 0.105) * np.exp(-rate * np.concatenate([[0.0], np.cumsum(good)]))
    meter = Meter(at, x / (1 + x), np.full(at.size, 3.0), np.zeros(at.size, dtype=bool))
    full = {"trays": (Tray(at, 900.0 * (1 + x)),), "meter": meter, **other}
    return DryingLot("washed", "raised", start, 8.0, start_wb, 0.02, **full)


def now_of(lot: DryingLot) -> float:
    return lot.trays[0].at_utc_s[-1] + HOUR_S if lot.trays else lot.start_utc_s + 5 * DAY_S


def days_of(ahead: Ahead, lot: DryingLot) -> list[float]:
    ends = (ahead.earliest_utc_s, ahead.likely_utc_s, ahead.latest_utc_s)
    return [np.inf if end is None else (end - lot.start_utc_s) / DAY_S for end in ends]


def test_a_steady_lot_in_steady_weather_ends_when_its_curve_says() -> None:
    log = steady()
    lot = lot_of(5, log)
    ahead = forecast_drying(lot, log.known_by(now_of(lot)), now_of(lot), TARGET)
    true = np.log((0.54 / 0.46 - 0.105) / (0.12 / 0.88 - 0.105)) / 0.45
    early, likely, late = days_of(ahead, lot)
    assert early < true < late
    assert likely == pytest.approx(true, abs=0.8)
    assert ahead.source == "tray+meter"
    assert "6 tray weights and 3 meter readings" in str(ahead.rests_on)
    assert "from the settings" in str(ahead.rests_on)


@pytest.mark.parametrize("kind", ["tray", "meter", "typical"])
def test_the_source_is_named(kind: str) -> None:
    log = steady()
    lot = lot_of(6, log)
    part = DryingLot(
        "washed", "raised", lot.start_utc_s, 8.0, 0.54, 0.02,
        lot.trays if kind == "tray" else (), lot.meter if kind == "meter" else None,
    )  # fmt: skip
    assert forecast_drying(part, log, now_of(lot), TARGET).source == kind


def test_a_meter_settles_what_a_tray_cannot_know() -> None:
    log = steady()
    lot = lot_of(6, log, start_wb=0.54)
    unsure = DryingLot("washed", "raised", lot.start_utc_s, 8.0, 0.48, 0.03, lot.trays)  # six points too low
    joined = DryingLot("washed", "raised", lot.start_utc_s, 8.0, 0.48, 0.03, lot.trays, lot.meter)
    tray, both = (forecast_drying(part, log, now_of(lot), TARGET) for part in (unsure, joined))
    true = np.log((0.54 / 0.46 - 0.105) / (0.12 / 0.88 - 0.105)) / 0.45
    assert abs(days_of(both, lot)[1] - true) < 0.5 < abs(days_of(tray, lot)[1] - true)
    assert np.ptp(days_of(both, lot)) < np.ptp(days_of(tray, lot))


def test_a_meter_above_thirty_percent_changes_nothing() -> None:
    log = steady()
    lot = lot_of(6, log)
    assert lot.meter is not None
    high = lot.meter.mean_wb_frac > 0.30
    assert high.any()
    nonsense = np.where(high, 0.31 + 0.4 * np.arange(high.size) / high.size, lot.meter.mean_wb_frac)
    other = Meter(lot.meter.at_utc_s, nonsense, lot.meter.reps_n, lot.meter.corrected)
    a, b = (
        forecast_drying(
            DryingLot("washed", "raised", lot.start_utc_s, 8.0, 0.54, 0.02, lot.trays, m), log, now_of(lot), TARGET
        )
        for m in (lot.meter, other)
    )
    assert a.draws_utc_s == pytest.approx(b.draws_utc_s)


def test_only_what_was_known_by_then_counts() -> None:
    log = steady()
    whole = lot_of(9, log)
    now = whole.start_utc_s + 4 * DAY_S + HOUR_S
    a = forecast_drying(whole, log, now, TARGET)
    b = forecast_drying(whole.known_by(now), log.known_by(now), now, TARGET)
    assert a.draws_utc_s == pytest.approx(b.draws_utc_s)


def test_a_wetting_starts_it_anew_and_does_not_bend_the_rate() -> None:
    log = steady()
    dry = lot_of(8, log)
    at, x = dry.trays[0].at_utc_s, dry.trays[0].net_g / 900.0 - 1
    x = np.where(np.arange(x.size) >= 6, 0.105 + (x - 0.105) * np.exp(0.45 * 1.6), x)  # 1.6 days of drying undone
    wet = DryingLot("washed", "raised", dry.start_utc_s, 8.0, 0.54, 0.02, (Tray(at, 900.0 * (1 + x)),))
    now = now_of(dry)
    plain = DryingLot("washed", "raised", dry.start_utc_s, 8.0, 0.54, 0.02, dry.trays)
    before, after = (forecast_drying(lot, log, now, TARGET) for lot in (plain, wet))
    model = model_of(wet, log, prior_for(key_of(wet), drying_settings(wet, log), drying_layers(), ()), now)
    assert model.wettings.size == 1
    rate = float(model.unfold(model.fit().values[None])["rate"][0, 0])
    assert 0.35 < rate < 0.75
    assert 0.8 < days_of(after, wet)[1] - days_of(before, plain)[1] < 2.6


def test_a_told_wetting_may_hide_between_two_readings() -> None:
    log = steady()
    lot = lot_of(6, log)
    told = DryingLot(
        "washed", "raised", lot.start_utc_s, 8.0, 0.54, 0.02, lot.trays, lot.meter, (lot.start_utc_s + 2.5 * DAY_S,)
    )
    a, b = (forecast_drying(x, log, now_of(lot), TARGET) for x in (lot, told))
    assert days_of(b, lot)[1] == pytest.approx(days_of(a, lot)[1], abs=0.7)


def test_rainy_days_lost_push_the_end_out() -> None:
    log = steady()
    good = log.good_h.copy()
    good[36:40] = 0.8
    rainy = WeatherLog(log.midnight_utc_s, good, log.min_c, log.max_c, log.rh_frac, np.where(good < 1, 20.0, 0.0))
    lot = lot_of(5, log)
    now = lot.start_utc_s + 9 * DAY_S + HOUR_S  # no reading since the rain began; both logs are known up to now
    dry, wet = (forecast_drying(lot, one, now, TARGET) for one in (log, rainy))
    assert days_of(wet, lot)[1] > days_of(dry, lot)[1] + 1.5


def test_an_outlook_moves_it() -> None:
    log = steady(good=5.0)
    rng = np.random.default_rng(1)
    good = np.clip(5.0 + 1.8 * rng.normal(size=60), 0.3, 9.0)
    log = WeatherLog(log.midnight_utc_s, good, log.min_c, log.max_c, log.rh_frac, np.where(good < 2.5, 9.0, 0.0))
    lot = lot_of(4, log, rate=0.5)
    now = now_of(lot)
    sun, rain = (forecast_drying(lot, log.known_by(now), now, TARGET, (), [word] * 7) for word in ("sun", "rain"))
    assert days_of(rain, lot)[1] > days_of(sun, lot)[1] + 1.0


def test_air_too_damp_is_said_instead_of_a_date() -> None:
    log = steady(good=4.0, rh=0.88, warm=28.0)
    lot = lot_of(5, steady())
    ahead = forecast_drying(lot, log, now_of(lot), 0.115)
    assert ahead.likely_utc_s is None
    assert ahead.never_frac == 1.0
    assert "will not reach 11.5" in str(ahead.remark)


def test_chances_rise_with_time_and_too_dry_comes_after_ready() -> None:
    log = steady()
    lot = lot_of(5, log)
    ahead = forecast_drying(lot, log, now_of(lot), TARGET)
    at = [now_of(lot) + d * DAY_S for d in (0, 2, 4, 8, 20, 50)]
    ready, over = [ahead.chance_by(t) for t in at], [ahead.chance_over_by(t) for t in at]
    assert ready == sorted(ready)
    assert over == sorted(over)
    assert all(o <= r for o, r in zip(over, ready, strict=True))
    assert ready[0] == 0.0
    assert ready[-1] > 0.9


def test_the_fan_starts_where_the_readings_end_and_widens() -> None:
    log = steady()
    lot = lot_of(5, log)
    ahead = forecast_drying(lot, log, now_of(lot), TARGET)
    assert ahead.times_utc_s[0] == now_of(lot)
    assert (np.diff(ahead.times_utc_s) > 0).all()
    assert (ahead.low <= ahead.mid).all()
    assert (ahead.mid <= ahead.high).all()
    assert lot.meter is not None
    assert ahead.mid[0] == pytest.approx(lot.meter.mean_wb_frac[-1], abs=0.01)
    assert (ahead.high - ahead.low)[8] > (ahead.high - ahead.low)[0]
    assert ahead.mid[-1] < ahead.mid[0]


def test_a_lot_at_its_target_is_ready_now() -> None:
    log = steady()
    lot = lot_of(12, log, rate=0.6)
    ahead = forecast_drying(lot, log, now_of(lot), TARGET)
    assert ahead.chance_by(now_of(lot)) > 0.9


def test_open_coffee_takes_rain_that_covered_coffee_does_not() -> None:
    log = steady(good=5.0, rain=0.0)
    good = np.tile([5.5, 5.5, 2.0], 20)
    log = WeatherLog(log.midnight_utc_s, good, log.min_c, log.max_c, log.rh_frac, np.where(good < 3, 6.0, 0.0))
    lot = lot_of(4, log)
    open_lot = DryingLot(
        "washed", "raised", lot.start_utc_s, 8.0, 0.54, 0.02, lot.trays, lot.meter, (), False, covered_rain=False
    )
    covered, opened = (forecast_drying(x, log, now_of(lot), TARGET) for x in (lot, open_lot))
    assert opened.chance_by(now_of(lot) + 6 * DAY_S) < covered.chance_by(now_of(lot) + 6 * DAY_S) - 0.1


def test_own_finished_lots_sharpen_the_range_and_are_named() -> None:
    log = steady()
    done = [lot_of(10, log, rate=r) for r in (0.40, 0.42, 0.44, 0.41, 0.43, 0.42)]
    taught = [drying_taught(lot, log, now_of(lot)) for lot in done]
    young = lot_of(2, log, rate=0.42)
    fresh, learnt = (forecast_drying(young, log, now_of(young), TARGET, t) for t in ((), taught))
    assert np.ptp(days_of(learnt, young)) < np.ptp(days_of(fresh, young))
    assert "from 6 own lots" in str(learnt.rests_on)
    true = np.log((0.54 / 0.46 - 0.105) / (0.12 / 0.88 - 0.105)) / 0.42
    assert days_of(learnt, young)[1] == pytest.approx(true, abs=1.0)
    assert all(one.surprise is not None for one in taught)


def test_the_same_question_has_the_same_answer() -> None:
    log = steady()
    lot = lot_of(4, log)
    a, b = (forecast_drying(lot, log, now_of(lot), TARGET) for _ in range(2))
    assert (a.draws_utc_s == b.draws_utc_s).all()


def test_thinner_layers_and_faster_surfaces_are_expected_sooner() -> None:
    log = steady()
    now = FIRST + 59 * DAY_S + 9 * HOUR_S
    at = {
        (surface, kg): forecast_drying(DryingLot("washed", surface, now, kg), log, now, TARGET).likely_utc_s or np.inf
        for surface in ("patio", "raised", "shade")
        for kg in (8.0, 25.0)
    }
    assert at["raised", 8.0] < at["patio", 8.0] < at["shade", 8.0]
    assert at["raised", 8.0] < at["raised", 25.0]


GOOD = {"method": "washed", "surface": "raised", "start_utc_s": FIRST + 30 * DAY_S, "loading_kg_m2": 8.0}


@pytest.mark.parametrize(
    "bad",
    [
        {"method": "roasted"},
        {"method": "surface"},
        {"surface": "roof tiles"},
        {"loading_kg_m2": 0.0},
        {"start_wb_frac": 0.99},
        {"start_wb_sd": 0.0},
        {"start_utc_s": FIRST + 50 * DAY_S},
        {"start_utc_s": float("nan")},
        {"start_utc_s": float("-inf")},
        {"start_utc_s": 0.0},
        {"wettings_utc_s": (float("inf"), float("nan"))},
    ],
)
def test_lots_that_cannot_be_are_refused(bad: dict[str, object]) -> None:
    with pytest.raises(NotPossible):
        forecast_drying(DryingLot(**{**GOOD, **bad}), steady(), FIRST + 35 * DAY_S, TARGET)


def test_readings_that_cannot_be_are_refused() -> None:
    start, now = GOOD["start_utc_s"], FIRST + 35 * DAY_S
    assert isinstance(start, float)
    two = np.array([start + DAY_S, start + 2 * DAY_S])
    for at, grams in ((two, [100.0, 0.0]), (two[::-1], [100.0, 90.0]), (two - 9 * DAY_S, [100.0, 90.0])):
        with pytest.raises(NotPossible):
            forecast_drying(DryingLot(**GOOD, trays=(Tray(at, np.array(grams)),)), steady(), now, TARGET)
    with pytest.raises(NotPossible):
        Tray(two, np.array([100.0]))
    with pytest.raises(NotPossible):
        Meter(two, np.array([0.2, 0.19]), np.array([3.0]), np.zeros(2, dtype=bool))
    meter = Meter(two, np.array([0.2, 0.99]), np.full(2, 3.0), np.zeros(2, dtype=bool))
    with pytest.raises(NotPossible):
        forecast_drying(DryingLot(**GOOD, meter=meter), steady(), now, TARGET)
    with pytest.raises(NotPossible):
        forecast_drying(DryingLot(**GOOD), steady(), now, 0.9)


@given(st.data())
def test_any_allowed_lot_has_an_answer_without_a_gap(data: st.DataObject) -> None:
    n = data.draw(st.integers(0, 5))
    start = FIRST + 20 * DAY_S
    hours = np.sort(
        np.array(data.draw(st.lists(st.integers(1, 200), min_size=n, max_size=n, unique=True)), dtype=float)
    )
    at = start + hours * HOUR_S
    grams = np.array(data.draw(st.lists(st.floats(1.0, 1e5), min_size=n, max_size=n)))
    wet = np.array(data.draw(st.lists(st.floats(0.02, 0.8), min_size=n, max_size=n)))
    log = steady(data.draw(st.integers(0, 35)), data.draw(st.floats(0, 12)), data.draw(st.floats(0.1, 1.0)))
    lot = DryingLot(
        data.draw(st.sampled_from(["washed", "honey", "natural"])),
        data.draw(st.sampled_from(["patio", "raised", "roof", "shade"])),
        start,
        data.draw(st.one_of(st.none(), st.floats(0.5, 60.0))),
        data.draw(st.one_of(st.none(), st.floats(0.3, 0.75))),
        None,
        (Tray(at, grams),) if n else (),
        Meter(at, wet, np.full(n, 3.0), np.zeros(n, dtype=bool)) if n else None,
        (),
        data.draw(st.booleans()),
        data.draw(st.booleans()),
    )
    now = start + 210 * HOUR_S
    ahead = forecast_drying(lot, log, now, data.draw(st.floats(0.08, 0.4)), draws_n=40)
    assert not np.isnan(ahead.draws_utc_s).any()
    assert (ahead.draws_utc_s >= now).all()
    for curve in (ahead.low, ahead.mid, ahead.high):
        assert np.isfinite(curve).all()
        assert ((curve >= 0) & (curve < 1)).all()


def test_one_fit_and_one_forecast_are_quick() -> None:
    import time

    made = made_lots(7, 1)[0]
    now = made.lot.start_utc_s + 6 * DAY_S
    known = made.log.known_by(now)
    prior = prior_for(key_of(made.lot), drying_settings(made.lot, known), drying_layers(), ())
    took = []
    for _ in range(5):
        begun = time.process_time()
        model_of(made.lot, known, prior, now).fit()
        took.append(time.process_time() - begun)
    assert min(took) < 0.1
