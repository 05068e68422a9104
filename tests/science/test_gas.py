"""Gas: stoichiometry, volumes, rooms, lids, words."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk.errors import NotPossible
from farmdesk.science import gas
from farmdesk.science.air import pressure_kpa


def test_grams_from_sugar() -> None:
    assert pytest.approx(0.4886, abs=1e-4) == gas.HEXOSE_CO2_FRAC
    assert pytest.approx(0.5114, abs=1e-4) == gas.HEXOSE_ETHANOL_FRAC
    assert pytest.approx(0.5143, abs=1e-4) == gas.SUCROSE_CO2_FRAC
    assert pytest.approx(0.5384, abs=1e-4) == gas.SUCROSE_ETHANOL_FRAC
    assert pytest.approx(0.2443, abs=1e-4) == gas.HETEROLACTIC_CO2_FRAC
    whole = gas.HETEROLACTIC_CO2_FRAC + gas.HETEROLACTIC_ACID_FRAC + gas.HETEROLACTIC_ETHANOL_FRAC
    assert whole == pytest.approx(1.0, abs=1e-4)
    assert gas.ethanol_from_sugar_g(100.0) == pytest.approx(47.05, abs=0.01)


@pytest.mark.parametrize(
    ("temp", "litres"), [(0.0, 0.2488), (20.0, 0.2670), (22.0, 0.2689), (25.0, 0.2716), (30.0, 0.2762)]
)
def test_litres_per_gram_of_hexose(temp: float, litres: float) -> None:
    assert gas.co2_volume_l(gas.co2_from_sugar_g(1.0), temp) == pytest.approx(litres, abs=3e-4)


def test_a_sealed_liner_at_sixteen_hundred_metres() -> None:
    there = pressure_kpa(1600.0)
    likely = gas.gas_of(60 * 25.0, 22.0, there, used_frac=0.60, alcoholic_frac=0.85)
    bound = gas.gas_of(60 * 100.0, 22.0, there)
    assert likely.co2_g == pytest.approx(374, rel=0.01)
    assert likely.volume_l == pytest.approx(249.5, rel=0.01)
    assert likely.flow_l_h == pytest.approx(3.4, rel=0.02)
    assert bound.co2_g == pytest.approx(2931, rel=0.01)
    assert bound.volume_l == pytest.approx(1957, rel=0.01)
    assert bound.flow_l_h == pytest.approx(26.9, rel=0.01)
    assert gas.gas_of(60 * 25.0, 22.0, 101.325, used_frac=0.60, alcoholic_frac=0.85).volume_l == pytest.approx(
        205.7, rel=0.01
    )
    assert gas.pressure_rise_kpa(likely.co2_g, 20.0, 22.0) == pytest.approx(1042, rel=0.01)
    assert gas.pressure_rise_kpa(gas.co2_from_sugar_g(7.34), 20.0, 22.0) == pytest.approx(10.0, rel=0.01)
    assert gas.closed_room_ppm(10 * likely.volume_l, 40.0) == pytest.approx(62_400, rel=0.01)
    assert gas.closed_room_ppm(likely.volume_l, 10.0) == pytest.approx(24_950, rel=0.01)
    assert gas.aired_room_ppm(10 * likely.flow_l_h, 20.0) == pytest.approx(2_135, rel=0.01)
    assert gas.aired_room_ppm(10 * bound.flow_l_h, 20.0) == pytest.approx(13_875, rel=0.01)
    assert gas.purge_h(20.0, likely.flow_l_h) == pytest.approx(17.5, rel=0.01)


def test_three_kilograms_of_sugar_in_a_room_of_thirty_cubic_metres_warn() -> None:
    made = gas.gas_of(3000.0, 22.0, 86.0, room_m3=30.0)
    assert made.volume_l == pytest.approx(950, rel=0.01)
    assert made.room_ppm == pytest.approx(32_000, abs=500)
    level, words = gas.gas_words(made.room_ppm)
    assert level == "danger"
    assert "never lean" in str(words)
    assert "Open" in str(words)


def test_purging_and_the_oxygen_trap() -> None:
    assert [gas.oxygen_left_pct(float(n)) for n in (1, 2, 3)] == pytest.approx([7.69, 2.83, 1.04], abs=0.01)
    assert gas.oxygen_beside_co2_pct(40_000.0) == pytest.approx(20.06, abs=0.01)
    assert gas.oxygen_beside_co2_pct(67_000.0) == pytest.approx(19.5, abs=0.01)
    assert gas.water_seal_kpa(5.0) == pytest.approx(0.49, abs=0.005)


@given(st.floats(0.0, 1e6), st.floats(0.1, 1e4))
def test_a_room_is_never_more_than_full(litres: float, room: float) -> None:
    assert 0.0 <= gas.closed_room_ppm(litres, room) <= 1e6


def test_words_by_how_bad() -> None:
    assert [gas.gas_words(ppm)[0] for ppm in (None, 1000.0, 5000.0, 29_000.0, 30_000.0)] == [
        "note", "none", "warn", "warn", "danger",
    ]  # fmt: skip
    with pytest.raises(NotPossible):
        gas.gas_words(-1.0)
    with pytest.raises(NotPossible):
        gas.gas_words(float("nan"))
    with pytest.raises(NotPossible):
        gas.closed_room_ppm(10.0, 0.0)
    with pytest.raises(NotPossible):
        gas.co2_volume_l(10.0, 20.0, 1000.0)


@pytest.mark.parametrize(
    "call",
    [
        lambda: gas.peak_flow_l_h(10.0, float("nan")),
        lambda: gas.purge_h(20.0, 3.0, float("nan")),
        lambda: gas.gas_of(float("inf"), 20.0, 90.0),
        lambda: gas.gas_words(2e6),
        lambda: gas.closed_room_ppm(np.array([1.0, 2.0]), np.array([10.0, 20.0, 30.0])),
        lambda: gas.water_seal_kpa(np.array([5.0, 6.0])),  # type: ignore[arg-type]
    ],
)
def test_other_input_is_refused(call) -> None:
    with pytest.raises(NotPossible):
        call()
