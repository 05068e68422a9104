"""Gas sums against figures others have published."""

from __future__ import annotations

import pytest

from farmdesk.science import gas
from farmdesk.science.air import pressure_kpa


def test_a_litre_of_must_gives_off_forty_five_litres() -> None:
    """Winery safety pages: 44 to 45 L of carbon dioxide for each litre of must; 170 g/L of sugar at 20 °C."""
    assert gas.co2_volume_l(gas.co2_from_sugar_g(170.0), 20.0) == pytest.approx(45.0, abs=1.0)


def test_density_of_carbon_dioxide() -> None:
    """1.84 kg/m³ at 20 °C and one atmosphere, 1.98 at 0 °C (NIST REFPROP; ideal gas is half a percent off)."""
    assert 1000.0 / gas.co2_volume_l(1000.0, 20.0) == pytest.approx(1.839, rel=0.01)
    assert 1000.0 / gas.co2_volume_l(1000.0, 0.0) == pytest.approx(1.977, rel=0.01)


@pytest.mark.parametrize(("height_m", "kpa"), [(1000, 89.87), (1500, 84.56), (1600, 83.52), (2000, 79.50)])
def test_pressure_up_the_mountain(height_m: float, kpa: float) -> None:
    """ISO 2533 standard atmosphere; the same gas takes 1.213 times the room at 1,600 m."""
    assert pressure_kpa(float(height_m)) == pytest.approx(kpa, abs=0.02)
    there, here = (gas.co2_volume_l(100.0, 20.0, p) for p in (pressure_kpa(1600.0), 101.325))
    assert there / here == pytest.approx(1.213, abs=0.001)


def test_limits_are_todays() -> None:
    """NIOSH IDLH documentation 124-38-9, May 1994: 5,000 over a day, 30,000 for 15 minutes, 40,000 at once.

    Older print still has 10,000 (criteria of 1976) and 50,000.
    """
    assert (gas.DAY_LIMIT_PPM, gas.SHORT_LIMIT_PPM, gas.DANGER_PPM) == (5_000.0, 30_000.0, 40_000.0)


def test_an_oxygen_alarm_comes_too_late() -> None:
    """29 CFR 1910.146 calls under 19.5 % oxygen hazardous; carbon dioxide alone must reach 67,000 ppm for that."""
    assert gas.oxygen_beside_co2_pct(gas.DANGER_PPM) > 19.5
    assert gas.oxygen_beside_co2_pct(67_000.0) == pytest.approx(19.5, abs=0.01)


@pytest.mark.parametrize(("temp", "litres"), [(20.0, 0.5466), (25.0, 0.5559)])
def test_litres_of_a_gram(temp: float, litres: float) -> None:
    """Ideal gas at one atmosphere, 44.0095 g/mol, worked by hand."""
    assert gas.co2_volume_l(1.0, temp) == pytest.approx(litres, abs=1e-4)


def test_a_kilogram_of_cherry() -> None:
    """All of 100 g of sugar by yeast: 27.2 L at 25 °C and the sea; 60 % of 25 g, 85 % of that by yeast, up high: 4.2 L."""
    assert gas.co2_volume_l(gas.co2_from_sugar_g(gas.BOUND_SUGAR_G_KG), 25.0) == pytest.approx(27.2, abs=0.05)
    likely = gas.gas_of(60.0 * gas.CHERRY_SUGAR_G_KG, 22.0, pressure_kpa(1600.0), used_frac=0.60, alcoholic_frac=0.85)
    assert likely.volume_l / 60.0 == pytest.approx(4.2, abs=0.05)
    assert likely.co2_g / gas.CO2_G_MOL == pytest.approx(8.49, abs=0.02)
