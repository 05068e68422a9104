"""Water in coffee: sums that must close, trays that mislead, stages, resting coffee."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk.errors import NotPossible
from farmdesk.science import isotherms as iso
from farmdesk.science import moisture as m

moistures = st.floats(*m.MOISTURE_WB_FRAC)
masses = st.floats(1.0, 1e8)


@given(moistures)
def test_wet_and_dry_basis_undo_each_other(wet: float) -> None:
    assert m.to_wet_basis(m.to_dry_basis(wet)) == pytest.approx(wet, abs=1e-12)


@given(masses, moistures, moistures, moistures)
def test_drying_in_two_steps_is_drying_in_one(mass: float, first: float, middle: float, last: float) -> None:
    once = m.mass_at_g(mass, first, last)
    if m.mass_at_g(mass, first, middle) <= m.MASS_G[1] and once <= m.MASS_G[1]:
        twice = m.mass_at_g(m.mass_at_g(mass, first, middle), middle, last)
        assert twice == pytest.approx(once, rel=1e-12)


@given(masses, moistures, moistures)
def test_weight_is_what_stays_and_what_leaves(mass: float, first: float, last: float) -> None:
    there = m.mass_at_g(mass, first, last)
    assert there + m.water_to_leave_g(mass, first, last) == pytest.approx(mass, rel=1e-9)
    assert there == pytest.approx(mass * (1.0 - m.shrink_frac(first, last)), rel=1e-9, abs=1e-6)
    assert m.dry_matter_g(there, last) == pytest.approx(m.dry_matter_g(mass, first), rel=1e-9) or there > m.MASS_G[1]
    assert there >= mass * (1.0 - 1e-12) if last >= first else there <= mass


def test_water_of_a_washed_lot() -> None:
    # 734 kg wet parchment at 54 % going to 10.9 %
    assert m.water_to_leave_g(734_000.0, 0.54, 0.109) == pytest.approx(355_000.0, abs=500.0)


# --- trays ------------------------------------------------------------------------------------------------------


def test_a_tray_of_two_kilograms() -> None:
    assert 100.0 * m.tray_wb_frac(2000.0, 0.54, 1032.0) == pytest.approx(10.9, abs=0.05)


@pytest.mark.parametrize(
    ("start", "true_start", "end", "reads"),
    [(0.51, 0.53, 0.11, 7.21), (0.55, 0.53, 0.11, 14.79), (0.63, 0.65, 0.11, 5.91), (0.67, 0.65, 0.11, 16.09)],
)
def test_a_wrong_start_misleads_the_tray(start: float, true_start: float, end: float, reads: float) -> None:
    weight = m.mass_at_g(2000.0, true_start, end)
    assert 100.0 * m.tray_wb_frac(2000.0, start, weight) == pytest.approx(reads, abs=0.01)


@pytest.mark.parametrize(("start", "now", "gain"), [(0.53, 0.11, 1.89), (0.55, 0.11, 1.98), (0.65, 0.11, 2.54)])
def test_the_tray_gain(start: float, now: float, gain: float) -> None:
    assert m.tray_gain_ratio(start, now) == pytest.approx(gain, abs=0.006)


@given(st.floats(0.40, 0.70), st.floats(0.08, 0.30))
def test_the_tray_gain_is_the_slope_of_the_error(start: float, now: float) -> None:
    weight, step = m.mass_at_g(1000.0, start, now), 1e-6
    slope = (m.tray_wb_frac(1000.0, start + step, weight) - m.tray_wb_frac(1000.0, start, weight)) / step
    assert slope == pytest.approx(m.tray_gain_ratio(start, now), rel=1e-5)


def test_dry_matter_carries_its_doubt() -> None:
    heap = m.dry_matter(2000.0, 2.0, 0.54, 0.01)
    assert heap.dry_g == pytest.approx(920.0)
    assert heap.dry_sd_g == pytest.approx(np.hypot(0.46 * 2.0, 2000.0 * 0.01))
    both = heap + m.DryMatter(100.0, 15.0)
    assert (both.dry_g, both.dry_sd_g) == (pytest.approx(1020.0), pytest.approx(np.hypot(heap.dry_sd_g, 15.0)))
    assert heap.share(0.25) == m.DryMatter(heap.dry_g / 4.0, heap.dry_sd_g / 4.0)


def test_the_doubt_of_a_tray_moisture_matches_many_trays() -> None:
    random = np.random.default_rng(3)
    start = random.normal(0.54, 0.01, 200_000)
    dry = 2000.0 * (1.0 - start)
    read = 1.0 - dry / random.normal(1032.0, 2.0, 200_000)
    told = m.moisture_sd_wb_frac(1032.0, 2.0, m.dry_matter(2000.0, 0.0, 0.54, 0.01))
    assert told == pytest.approx(read.std(), rel=0.02)


# --- refusals ---------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "call",
    [
        lambda: m.to_dry_basis(1.12),
        lambda: m.to_dry_basis(-0.01),
        lambda: m.to_dry_basis(np.array([0.5, np.nan])),
        lambda: m.to_wet_basis(25.0),
        lambda: m.mass_at_g(-1.0, 0.5, 0.1),
        lambda: m.shrink_frac(np.array([0.5, 0.97]), np.array([0.1, 0.1])),
        lambda: m.moisture_from_dry_wb_frac(0.0, 0.0),
        lambda: m.moisture_from_dry_wb_frac(900.0, 920.0),
        lambda: m.tray_wb_frac(2000.0, 0.54, np.array([1032.0, 800.0])),
        lambda: m.DryMatter(10.0, 1.0).share(1.2),
        lambda: m.stage(0.99),
        lambda: iso.PARCHMENT.equilibrium(9.0, 0.5),
        lambda: iso.PARCHMENT.equilibrium(25.0, 0.1),
        lambda: iso.PARCHMENT.equilibrium(25.0, 1.01),
        lambda: iso.PARCHMENT.equilibrium(np.array([25.0, 51.0]), np.array([0.5, 0.5])),
        lambda: iso.PARCHMENT.activity(0.05, 25.0),
        lambda: iso.vaporisation_kj_kg(25.0, 0.01),
        lambda: iso.isotherm("GAB", (6.0, 15.0), (15.0, 35.0), (0.2, 0.9), "x"),
        lambda: iso.isotherm("Peleg", (6.0, 15.0, 1.0), (15.0, 35.0), (0.2, 0.9), "x"),
        lambda: iso.isotherm("Copace", (1.0, 0.0, -2.0), (15.0, 35.0), (0.2, 0.9), "x"),
        lambda: iso.isotherm("modified Oswin", (13.0, -1.0, 2.5), (15.0, 35.0), (0.2, 0.9), "x"),
        lambda: iso.isotherm("Copace", (1.0, 0.0, 2.0), (15.0, 35.0), (0.2, 0.9), " "),
        lambda: iso.isotherm("Copace", (1.0, 0.0, 2.0), (35.0, 15.0), (0.2, 0.9), "x"),
        lambda: iso.anchors([0.5], [0.1], (15.0, 35.0), "x"),
        lambda: iso.anchors([0.5, 0.6], [0.11, 0.10], (15.0, 35.0), "x"),
        lambda: iso.anchors([0.5, 0.6, 0.55], [0.10, 0.11, 0.12], (15.0, 35.0), "x"),
    ],
)
def test_what_cannot_be_is_refused(call: Any) -> None:
    with pytest.raises(NotPossible):
        call()


# --- stages -----------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("percent", "word"),
    [
        (56, "not skin-dry"),
        (55, "skin drying"),
        (45, "skin drying"),
        (44, "white"),
        (33, "white"),
        (32, "soft black"),
        (22, "soft black"),
        (21, "medium black"),
        (16, "medium black"),
        (15, "hard black"),
        (12, "hard black"),
        (11, "dry"),
        (10, "dry"),
        (9, "over-dried"),
    ],
)
def test_stage_words_of_parchment(percent: int, word: str) -> None:
    # Kamau 1980, Kenya Coffee 45:343-355: every whole number lies in its band
    assert m.stage(percent / 100.0) == word
    assert str(m.STAGE_WORDS[m.stage(percent / 100.0)]) == word


@pytest.mark.parametrize(
    ("percent", "word"),
    [(65, "fresh"), (50, "wilted"), (32, "half dry"), (20, "rattling"), (12, "dry"), (9, "over-dried")],
)
def test_stage_words_of_whole_cherry(percent: int, word: str) -> None:
    assert m.stage(percent / 100.0, whole_cherry=True) == word


@given(moistures, moistures)
def test_every_moisture_has_a_word_and_stages_never_turn_back(one: float, other: float) -> None:
    down = [m.stage(wet) for wet in np.linspace(0.9, 0.0, 901).tolist()]
    assert set(down) <= m.STAGE_WORDS.keys()
    order = list(dict.fromkeys(down))
    assert sorted(down, key=order.index) == down
    wetter, drier = max(one, other), min(one, other)
    assert order.index(m.stage(wetter)) <= order.index(m.stage(drier))


# --- isotherms --------------------------------------------------------------------------------------------------

temps = st.floats(*iso.ISOTHERM_TEMP_C)
humidities = st.floats(*iso.ISOTHERM_RH_FRAC)
OWN = iso.anchors([0.5, 0.6, 0.7, 0.8], [0.10, 0.109, 0.122, 0.141], (15.0, 30.0), "own table")
COPACE = iso.isotherm("Copace", (1.2, 0.005, 2.0), (15.0, 35.0), (0.2, 0.95), "made up")


@given(temps, humidities)
def test_parchment_both_ways(temp: float, rh: float) -> None:
    rest = iso.PARCHMENT.equilibrium(temp, rh)
    assert not rest.wetting
    back = iso.PARCHMENT.activity(rest.moisture_db_frac, temp)
    assert back.activity_frac == pytest.approx(rh, abs=1e-6)


@given(st.floats(15.0, 30.0), st.floats(0.5, 0.8))
def test_an_own_table_both_ways(temp: float, rh: float) -> None:
    assert OWN.activity(OWN.equilibrium(temp, rh).moisture_db_frac, temp).activity_frac == pytest.approx(rh, abs=1e-9)


def test_an_own_table_is_met_at_its_anchors_and_straight_between() -> None:
    assert m.to_wet_basis(OWN.equilibrium(20.0, 0.7).moisture_db_frac) == pytest.approx(0.122)
    assert m.to_wet_basis(OWN.equilibrium(20.0, 0.65).moisture_db_frac) == pytest.approx(0.1155)


def test_fog_and_rain_only_wet() -> None:
    air = np.array([0.85, 0.93, 1.0])
    rest = iso.PARCHMENT.equilibrium(np.full(3, 25.0), air)
    assert rest.wetting.tolist() == [False, True, True]
    assert (
        rest.moisture_db_frac[1] == rest.moisture_db_frac[2] == iso.PARCHMENT.equilibrium(25.0, 0.92).moisture_db_frac
    )
    assert not COPACE.equilibrium(25.0, 0.94).wetting  # measured that far
    assert COPACE.equilibrium(25.0, 0.96).wetting
    assert OWN.equilibrium(25.0, 0.97).wetting


def test_a_short_table_says_nothing_between_its_end_and_fog() -> None:
    with pytest.raises(NotPossible):
        OWN.equilibrium(25.0, 0.85)
    with pytest.raises(NotPossible):
        OWN.activity(m.to_dry_basis(0.16), 25.0)


def test_wet_parchment_has_more_activity_than_the_isotherm_knows() -> None:
    found = iso.PARCHMENT.activity(m.to_dry_basis(np.array([0.53, 0.12])), np.full(2, 25.0))
    assert found.wet.tolist() == [True, False]
    assert found.activity_frac[0] == pytest.approx(0.92)


@given(temps, humidities, st.floats(0.001, 0.05))
def test_damper_air_rests_wetter_and_warmer_air_drier(temp: float, rh: float, step: float) -> None:
    here = iso.PARCHMENT.equilibrium(temp, rh).moisture_db_frac
    if rh + step <= 0.92:
        assert iso.PARCHMENT.equilibrium(temp, rh + step).moisture_db_frac > here
    if temp + 100.0 * step <= 50.0:
        assert iso.PARCHMENT.equilibrium(temp + 100.0 * step, rh).moisture_db_frac < here


@pytest.mark.parametrize(
    "call",
    [
        lambda: m.mass_at_g(np.array([1.0, 2.0]), np.array([0.5, 0.4, 0.3]), 0.1),
        lambda: m.moisture_from_dry_wb_frac(1e-320, 1e-321),
        lambda: m.dry_matter(float("nan"), 1.0, 0.5, 0.01),
        lambda: m.dry_matter(1000.0, 1.0, 0.5, np.array([0.01, 0.02])),  # type: ignore[arg-type]
        lambda: m.stage(np.array([0.5, 0.4])),  # type: ignore[arg-type]
        lambda: iso.PARCHMENT.equilibrium(np.array([20.0, 25.0]), np.array([0.5, 0.6, 0.7])),
        lambda: iso.isotherm("modified Chung-Pfost", (5.0, 6.0, 30.0), (15.0, 35.0), (0.2, 0.9), "below nothing"),
        lambda: iso.isotherm("GAB", ("a", 15.0, 0.8), (15.0, 35.0), (0.2, 0.9), "x"),  # type: ignore[arg-type]
    ],
)
def test_ragged_rows_and_coffee_drier_than_dry_are_refused(call: Any) -> None:
    with pytest.raises(NotPossible):
        call()
