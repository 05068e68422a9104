"""What the ferment forecaster may and may not say, lot by lot."""

from __future__ import annotations

import time

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk.ahead.ferment import crossing_utc_s, ferment_taught, forecast_ferment, next_check_utc_s
from farmdesk.ahead.ferment_fit import FermentLot, ferment_prior, ferment_settings
from farmdesk.ahead.range import Ahead
from farmdesk.clock import HOUR_S
from farmdesk.errors import NotPossible
from farmdesk.science.ferment import gompertz_end_h20, gompertz_ph

START = 1_736_200_800.0
CURVE = (5.35, 1.7, 0.085, 5.0)


def lot_of(hours, ph, *, style="washed", target=4.5, temp=20.0, paper=False, pitched=False) -> FermentLot:
    at = START + np.asarray(hours, dtype=float) * HOUR_S
    mass = np.full(at.size, temp) if np.isscalar(temp) else np.asarray(temp, dtype=float)
    return FermentLot(style, START, target, at, np.asarray(ph, dtype=float), np.full(at.size, paper), at, mass, pitched)


def hours_of(ahead: Ahead) -> list[float]:
    ends = (ahead.earliest_utc_s, ahead.likely_utc_s, ahead.latest_utc_s)
    return [np.inf if end is None else (end - START) / HOUR_S for end in ends]


def now_after(hours: float) -> float:
    return START + hours * HOUR_S


@pytest.mark.parametrize(
    ("style", "target", "early", "likely", "late", "never"),
    [("washed", 4.5, 9.5, 15.7, 26.6, 0.012), ("extended", 4.0, 37.6, 68.6, np.inf, 0.135)],
)
def test_the_prior_alone_says_what_is_printed(style, target, early, likely, late, never) -> None:
    mean, layers = ferment_settings(FermentLot(style, START, target))
    sd = np.sqrt(layers.farm_sd**2 + layers.method_sd**2 + layers.lot_sd**2)
    own = mean + sd * np.random.default_rng(5).normal(size=(40_000, 4))
    ends = gompertz_end_h20(target, own[:, 0], *np.exp(own[:, 1:]).T)
    got = np.quantile(ends, [0.1, 0.5, 0.9], method="nearest")
    assert got[0] == pytest.approx(early, rel=0.02)
    assert got[1] == pytest.approx(likely, rel=0.02)
    assert got[2] == pytest.approx(late, rel=0.02) if np.isfinite(late) else np.isinf(got[2])
    assert np.isinf(ends[ends > 0]).mean() == pytest.approx(never, abs=0.005)


def test_without_readings_it_is_typical_and_shows_no_curve() -> None:
    ahead = forecast_ferment(lot_of([], [], temp=[]), START, wider=1.0)
    assert ahead.source == "typical"
    assert ahead.times_utc_s.size == 0
    assert hours_of(ahead) == pytest.approx([9.5, 15.7, 26.6], rel=0.12)
    one = forecast_ferment(lot_of([0.0], [5.3]), now_after(0.5))
    assert one.source == "typical"


@pytest.mark.parametrize(("n", "want"), [(2, (10.7, 15.8, 23.9)), (3, (11.3, 14.9, 21.4))])
def test_the_worked_case(n: int, want: tuple[float, float, float]) -> None:
    hours = [0.0, 3.0, 6.0, 9.0][:n]
    lot = lot_of(hours, [5.32, 5.28, 5.12, 4.93][:n], temp=np.full(n, np.nan))
    early, likely, late = hours_of(forecast_ferment(lot, lot.at_utc_s[-1], wider=1.0))
    assert (early, likely) == pytest.approx(want[:2], abs=0.4)
    assert late == pytest.approx(want[2], rel=0.05)  # the far end is the noisiest


def test_warm_tanks_end_sooner_by_the_clock() -> None:
    hours = np.arange(0.0, 9.0, 2.0)
    ends = []
    for temp, speed in ((20.0, 1.0), (25.0, 1.459)):
        lot = lot_of(hours / speed, gompertz_ph(hours, *CURVE), temp=temp)
        ends.append(hours_of(forecast_ferment(lot, lot.at_utc_s[-1]))[1])
    assert ends[0] / ends[1] == pytest.approx(1.459, rel=0.08)
    assert ends[0] == pytest.approx(15.05, abs=2.0)


def test_without_a_temperature_it_counts_plain_hours_and_says_so() -> None:
    hours = np.arange(0.0, 11.0, 2.0)
    lot = lot_of(hours, gompertz_ph(hours, *CURVE), temp=np.full(hours.size, np.nan))
    ahead = forecast_ferment(lot, lot.at_utc_s[-1])
    assert "plain clock hours" in str(ahead.remark)
    assert hours_of(ahead)[1] == pytest.approx(15.05, abs=1.5)


def test_it_has_not_ended_yet() -> None:
    lot = lot_of([0.0, 3.0], [5.35, 5.3])
    soon, late = (forecast_ferment(lot, now_after(h)) for h in (3.0, 20.0))
    assert (late.draws_utc_s > now_after(20.0)).all()
    assert hours_of(late)[1] > hours_of(soon)[1]


def test_four_readings_and_a_fall_show_a_curve_and_fewer_do_not() -> None:
    hours = np.array([0.0, 4.0, 8.0, 11.0])
    lot = lot_of(hours, gompertz_ph(hours, *CURVE))
    ahead = forecast_ferment(lot, now_after(11.0))
    assert ahead.times_utc_s[0] == now_after(11.0)
    assert (ahead.low <= ahead.mid).all()
    assert (ahead.mid <= ahead.high).all()
    assert ahead.mid[0] == pytest.approx(gompertz_ph(11.0, *CURVE), abs=0.08)
    assert "4 readings" in str(ahead.rests_on)
    assert "%" in str(ahead.rests_on)
    three = forecast_ferment(lot_of(hours[:3], lot.ph[:3]), now_after(8.0))
    assert three.times_utc_s.size == 0
    assert "mostly" in str(three.rests_on)


def test_more_readings_narrow_it_and_paper_less_than_a_meter() -> None:
    hours = np.arange(0.0, 13.0, 2.0)
    ph = gompertz_ph(hours, *CURVE)
    widths = [np.ptp(hours_of(forecast_ferment(lot_of(hours[:n], ph[:n]), now_after(hours[n - 1])))) for n in (2, 4, 6)]
    assert widths == sorted(widths, reverse=True)
    paper = forecast_ferment(lot_of(hours[:6], ph[:6], paper=True), now_after(hours[5]))
    assert np.ptp(hours_of(paper)) > widths[2]


def test_flat_ph_says_nothing_yet_and_a_jumping_one_is_doubted() -> None:
    flat = forecast_ferment(lot_of([0.0, 3.0, 6.0], [5.35, 5.34, 5.33]), now_after(6.0))
    assert "nothing yet" in str(flat.remark)
    jumps = lot_of([0.0, 2.0, 4.0, 6.0, 8.0], [5.35, 5.3, 5.95, 5.1, 4.9])
    assert "check the probe" in str(forecast_ferment(jumps, now_after(8.0)).remark)


def test_one_reading_three_sd_off_is_doubted_and_a_quiet_lot_is_not() -> None:
    hours = np.arange(0.0, 11.0, 1.0)
    quiet = gompertz_ph(hours, *CURVE)
    assert "check the probe" not in str(forecast_ferment(lot_of(hours, quiet), now_after(10.0)).remark)
    for sds, doubted in ((2.5, False), (4.0, True)):
        ph = quiet.copy()
        ph[5] += sds * 0.07
        said = str(forecast_ferment(lot_of(hours, ph), now_after(10.0)).remark)
        assert ("check the probe" in said) is doubted


def test_a_target_met_is_told_with_its_hour() -> None:
    lot = lot_of([0.0, 6.0, 9.0], [5.3, 4.7, 4.4])
    ahead = forecast_ferment(lot, now_after(9.5))
    assert hours_of(ahead) == pytest.approx([8.0] * 3)
    assert crossing_utc_s(lot) == pytest.approx(now_after(8.0))
    assert crossing_utc_s(lot_of([0.0], [5.3])) is None


def test_a_fall_that_stops_above_the_target_is_left_open() -> None:
    hours = np.arange(0.0, 40.0, 4.0)
    ph = gompertz_ph(hours, 5.35, 0.6, 0.1, 4.0)
    ahead = forecast_ferment(lot_of(hours, ph), now_after(36.0))
    assert ahead.never_frac > 0.7
    assert ahead.likely_utc_s is None


def test_the_mass_follows_its_own_day() -> None:
    hours = np.arange(0.0, 49.0, 4.0)
    wave = 20.0 + 5.0 * np.sin(2 * np.pi * hours / 24)
    lot = lot_of(hours, gompertz_ph(hours, 5.1, 1.5, 0.02, 14.0), style="extended", target=4.0, temp=wave)
    ahead = forecast_ferment(lot, now_after(48.0))
    assert ahead.likely_utc_s is not None
    assert np.isfinite(ahead.mid).all()


def test_own_closed_lots_teach_and_are_named() -> None:
    hours = np.arange(0.0, 15.0, 2.0)
    rng = np.random.default_rng(2)
    taught = []
    for _ in range(7):
        ph = gompertz_ph(hours, 5.4, 1.0, 0.17, 2.0) + 0.02 * rng.normal(size=hours.size)
        taught.append(ferment_taught(lot_of(hours, ph, target=4.6), now_after(15.0), list(taught)))
    young = lot_of([0.0, 2.0], [5.4, 5.36], target=4.6)
    fresh, learnt = (forecast_ferment(young, now_after(2.0), t) for t in ((), taught))
    end = float(gompertz_end_h20(4.6, 5.4, 1.0, 0.17, 2.0))
    assert abs(hours_of(learnt)[1] - end) < abs(hours_of(fresh)[1] - end)
    assert hours_of(learnt)[1] == pytest.approx(end, abs=1.5)
    assert np.ptp(hours_of(learnt)) < 0.6 * np.ptp(hours_of(fresh))
    assert "from 7 own lots" in str(learnt.rests_on)
    assert ferment_prior(young, taught).own_n == 7
    with pytest.raises(NotPossible):
        ferment_taught(lot_of([0.0], [5.3]), now_after(1.0))


def test_the_prior_is_wider_until_five_own_lots_are_closed() -> None:
    young = lot_of([], [], temp=[])
    printed = ferment_prior(young, wider=1.0).covariance
    assert ferment_prior(young).covariance == pytest.approx(2.25 * printed)


def test_pitched_lots_start_sooner_and_fall_less() -> None:
    own, pitched = (ferment_settings(lot_of([], [], temp=[], pitched=p))[0] for p in (False, True))
    assert np.exp(pitched - own) == pytest.approx([1.0, 0.8, 1.0, 0.7])


def test_look_again_half_way_to_the_early_bound_or_within_four_hours() -> None:
    lot = lot_of([0.0, 3.0], [5.35, 5.3])
    ahead = forecast_ferment(lot, now_after(3.0))
    assert now_after(3.5) <= next_check_utc_s(ahead, now_after(3.0), "washed") <= now_after(7.0)
    long = forecast_ferment(lot_of([0.0, 12.0], [5.1, 5.05], style="extended", target=4.0), now_after(12.0))
    assert next_check_utc_s(long, now_after(12.0), "extended") <= now_after(24.0)


@pytest.mark.parametrize(
    ("hours", "ph", "now"),
    [
        ([0.0, 1.0], [5.3, 9.0], 2.0),
        ([0.0, 1.0], [5.3, np.nan], 2.0),
        ([1.0, 1.0], [5.3, 5.2], 2.0),
        ([-2.0, 1.0], [5.3, 5.2], 2.0),
        ([0.0, 1.0], [5.3, 5.2], -5.0),
        ([0.0, 1.0], [5.3, 5.2], np.nan),
    ],
)
def test_readings_that_cannot_be_are_refused(hours, ph, now) -> None:
    with pytest.raises(NotPossible):
        forecast_ferment(lot_of(hours, ph), now_after(now))


def test_lots_that_cannot_be_are_refused() -> None:
    with pytest.raises(NotPossible):
        forecast_ferment(lot_of([0.0, 1.0], [5.3, 5.2], style="spread"), now_after(2.0))
    for wider in (0.0, -1.0, float("nan")):
        with pytest.raises(NotPossible):
            forecast_ferment(lot_of([0.0, 1.0], [5.3, 5.2]), now_after(2.0), wider=wider)
    with pytest.raises(NotPossible):
        forecast_ferment(lot_of([0.0, 1.0], [5.3, 5.2], style="pickled"), now_after(2.0))
    with pytest.raises(NotPossible):
        forecast_ferment(lot_of([0.0, 1.0], [5.3, 5.2], target=9.0), now_after(2.0))
    with pytest.raises(NotPossible):
        forecast_ferment(lot_of([0.0, 1.0], [5.3, 5.2], temp=95.0), now_after(2.0))
    with pytest.raises(NotPossible):
        FermentLot("washed", START, 4.5, np.array([START]), np.empty(0), np.empty(0, dtype=bool))


@given(st.data())
def test_any_allowed_lot_has_an_answer_without_a_gap(data: st.DataObject) -> None:
    n = data.draw(st.integers(0, 6))
    hours = np.sort(data.draw(st.lists(st.integers(0, 100), min_size=n, max_size=n, unique=True)))
    ph = data.draw(st.lists(st.floats(2.8, 7.0), min_size=n, max_size=n))
    temp = data.draw(st.lists(st.one_of(st.just(float("nan")), st.floats(-5.0, 80.0)), min_size=n, max_size=n))
    style = data.draw(st.sampled_from(["washed", "extended", "honey"]))
    lot = lot_of(
        hours, ph, style=style, target=data.draw(st.floats(3.0, 6.0)), temp=temp, pitched=data.draw(st.booleans())
    )
    ahead = forecast_ferment(lot, now_after(101.0))
    assert not np.isnan(ahead.draws_utc_s).any()
    for curve in (ahead.low, ahead.mid, ahead.high):
        assert np.isfinite(curve).all()


def test_one_forecast_is_quick() -> None:
    hours = np.arange(0.0, 12.0, 2.0)
    lot = lot_of(hours, gompertz_ph(hours, *CURVE))
    forecast_ferment(lot, now_after(10.0))
    took = []
    for _ in range(5):
        begun = time.process_time()
        forecast_ferment(lot, now_after(10.0))
        took.append(time.process_time() - begun)
    assert min(took) < 0.04
