"""Days past as coffee felt them, and stories of days to come."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk.ahead.weather import (
    OUTLOOK_TRUST,
    REFERENCE_GOOD_H,
    REFERENCE_THIRST_KPA,
    WeatherLog,
    climate_thirst_kpa,
    day_hour,
    day_share,
    drying_days,
    rests_of,
    stories,
)
from farmdesk.clock import DAY_S, HOUR_S
from farmdesk.errors import NotPossible

FIRST = 1_730_440_800.0
EMPTY = WeatherLog(*[np.empty(0)] * 6)


def log_of(good: np.ndarray, **other: float) -> WeatherLog:
    full = {"min_c": 14.0, "max_c": 25.0, "rh_frac": 0.7, "rain_mm": 0.0, **other}
    columns = [np.full(good.size, full[name]) for name in ("min_c", "max_c", "rh_frac", "rain_mm")]
    return WeatherLog(FIRST + DAY_S * np.arange(good.size), good, *columns)


def test_a_days_drying_is_shared_out_over_its_daylight() -> None:
    hours = np.array([0.0, 7.0, 12.0, 17.0, 24.0])
    assert day_share(hours) == pytest.approx([0, 0, 0.5, 1, 1])
    share = np.linspace(0.0, 1.0, 11)
    assert day_share(day_hour(share)) == pytest.approx(share)


def test_drive_is_good_hours_over_six() -> None:
    days = drying_days(log_of(np.array([6.0, 3.0, 0.0])), FIRST + HOUR_S, FIRST + 2.5 * DAY_S)
    assert days.drive_d == pytest.approx([1.0, 0.5, 0.0])
    assert days.known.all()


def test_days_without_hours_dry_as_their_air_is_thirsty_and_days_without_a_row_as_usual() -> None:
    good = np.array([6.0, 6.0, 6.0, np.nan, np.nan])
    log = log_of(good)
    damp = WeatherLog(log.midnight_utc_s, good, log.min_c, log.max_c, np.array([0.7, 0.7, 0.7, 0.7, 0.95]), log.rain_mm)
    days = drying_days(damp, FIRST, FIRST + 7.5 * DAY_S)
    assert days.drive_d.size == 8
    assert days.drive_d[3] == pytest.approx(1.0)
    assert days.drive_d[4] < 0.75
    assert days.drive_d[5:] == pytest.approx([1.0, 1.0, 1.0])
    assert days.known.tolist() == [True] * 3 + [False] * 5


def test_without_any_log_there_is_a_usual_day() -> None:
    days = drying_days(EMPTY, FIRST, FIRST + DAY_S)
    assert (days.drive_d > 0.5).all()
    assert climate_thirst_kpa(EMPTY) == REFERENCE_THIRST_KPA
    told = stories(EMPTY, 30, 50, np.random.default_rng(1))
    assert told.drive_d.shape == (50, 30)
    assert told.drive_d.min() < 0.3 < 1.0 < told.drive_d.max()


def test_damper_air_holds_more_water_and_nights_more_than_days() -> None:
    day, night = rests_of(np.full(2, 14.0), np.full(2, 25.0), np.array([0.6, 0.85]))
    assert day[1] > day[0]
    assert (night > day).all()
    soaked, _ = rests_of(np.array([2.0]), np.array([60.0]), np.array([1.0]))  # beyond the isotherm: held at its edge
    assert np.isfinite(soaked).all()


def test_stories_keep_the_logs_days_and_their_company() -> None:
    rng = np.random.default_rng(3)
    sky = np.zeros(120)
    for d in range(1, 120):
        sky[d] = 0.6 * sky[d - 1] + 0.8 * rng.normal()
    log = log_of(np.clip(5.5 + 1.2 * sky, 0.5, 9.0))
    told = stories(log, 40, 400, np.random.default_rng(4)).drive_d
    own = log.good_h / REFERENCE_GOOD_H
    assert told.mean() == pytest.approx(own.mean(), abs=0.05)
    assert told.std() == pytest.approx(own.std(), rel=0.2)
    later = told[:, 5:]
    kept = np.corrcoef(later[:, :-1].ravel(), later[:, 1:].ravel())[0, 1]
    assert kept == pytest.approx(np.corrcoef(own[:-1], own[1:])[0, 1], abs=0.15)


def test_a_typed_outlook_is_followed_by_three_stories_in_four() -> None:
    good = np.tile([7.0, 6.5, 5.0, 2.0, 6.0, 6.2], 15)
    log = log_of(good)
    rain = np.where(good == 2.0, 8.0, 0.0)
    log = WeatherLog(log.midnight_utc_s, good, log.min_c, log.max_c, log.rh_frac, rain)
    told = stories(log, 3, 4000, np.random.default_rng(5), ("rain", None, "sun"))
    assert (told.rain_mm[:, 0] >= 1.0).mean() >= OUTLOOK_TRUST - 0.02
    assert ((told.rain_mm[:, 2] < 1.0) & (told.drive_d[:, 2] >= 0.95)).mean() >= OUTLOOK_TRUST - 0.02
    for word in ("sun", "mixed", "grey", "rain"):
        assert stories(EMPTY, 2, 20, np.random.default_rng(6), (word,)).drive_d.shape == (20, 2)
    with pytest.raises(NotPossible):
        stories(log, 3, 10, np.random.default_rng(5), ("hail",))


def test_what_was_not_written_by_then_is_not_known() -> None:
    log = log_of(np.full(10, 6.0))
    assert log.known_by(FIRST + 3.5 * DAY_S).good_h.size == 4
    assert log.known_by(FIRST - 1).good_h.size == 0


@given(st.data())
def test_any_log_gives_numbers(data: st.DataObject) -> None:
    n = data.draw(st.integers(0, 12))
    column = lambda low, high: np.array(  # noqa: E731
        data.draw(st.lists(st.one_of(st.just(float("nan")), st.floats(low, high)), min_size=n, max_size=n)), dtype=float
    )
    log = WeatherLog(
        FIRST + DAY_S * np.arange(n), column(0, 16), column(-20, 45), column(-20, 55), column(0.05, 1.0), column(0, 500)
    )
    days = drying_days(log, FIRST - 2 * DAY_S, FIRST + 20 * DAY_S)
    told = stories(log, 5, 8, np.random.default_rng(1))
    for values in (days.drive_d, days.day_rest_db_frac, days.night_rest_db_frac, told.drive_d, told.rain_mm):
        assert np.isfinite(values).all()
        assert (values >= 0).all()
    assert np.isfinite(climate_thirst_kpa(log))


@pytest.mark.parametrize(
    "bad",
    [{"good_h": 20.0}, {"min_c": -60.0}, {"max_c": 70.0}, {"rh_frac": 1.5}, {"rain_mm": -1.0}, {"rh_frac": 0.0}],
)
def test_weather_that_cannot_be_is_refused(bad: dict[str, float]) -> None:
    good = np.full(3, bad.pop("good_h", 6.0))
    with pytest.raises(NotPossible):
        log_of(good, **bad)


def test_days_out_of_order_or_ragged_are_refused() -> None:
    one = np.full(2, 6.0)
    with pytest.raises(NotPossible):
        WeatherLog(np.array([FIRST, FIRST]), one, one, one, one / 10, one)
    with pytest.raises(NotPossible):
        WeatherLog(np.array([FIRST]), one, one, one, one / 10, one)
