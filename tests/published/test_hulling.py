"""The dry mill's sums against printed trade figures."""

from __future__ import annotations

import pytest

from farmdesk.science import hulling as h
from farmdesk.units import LB_G


def test_ico_factors_of_the_itc_coffee_guide() -> None:
    # 60 kg green = 120 kg dried cherry = 75 kg parchment = 50.4 kg roasted
    for form, mass in (("dried cherry", 120.0), ("parchment", 75.0), ("roasted", 50.42)):
        assert h.green_equivalent_g(1000.0 * mass, form) / 1000.0 == pytest.approx(60.0, abs=0.01)
    assert h.green_equivalent_g(1000.0, "soluble") == h.green_equivalent_g(1000.0, "liquid") == 2600.0
    assert h.green_equivalent_g(1000.0, "decaffeinated green") == 1050.0


def test_yield_factor_of_a_cooperative_leaflet() -> None:
    # 250 g parchment giving 195.5 g excelso is factor 89.5
    assert h.yield_factor_kg(250.0, 195.5) == pytest.approx(89.5141, abs=1e-4)


def test_federation_split_of_92_2_kilograms() -> None:
    # 92.2 kg parchment = 70 kg excelso (75.92 %) + 18.2 husk (19.74 %) + 4.0 lower grade (4.34 %)
    assert 100.0 * h.yield_frac(70.0, 92.2) == pytest.approx(75.92, abs=0.01)
    back = h.mill_balance(h.Return(h.Intake.PARCHMENT, 92_200.0, {"excelso": 70_000.0}, {"lower": 4_000.0}, 18_200.0))
    assert back.unexplained_g == pytest.approx(0.0, abs=1e-6)
    assert 100.0 * h.yield_frac(back.green_g, 92_200.0) == pytest.approx(75.92 + 4.34, abs=0.01)


@pytest.mark.parametrize(
    ("factor", "share"), [(86, 81.395), (90, 77.778), (92, 76.087), (92.8, 75.431), (94, 74.468), (98, 71.429)]
)
def test_factor_table(factor: float, share: float) -> None:
    # yield % = 7000 / F, as printed in Colombian factor tables
    assert 100.0 * h.yield_frac(70.0, factor) == pytest.approx(share, abs=1e-3)
    assert h.yield_factor_kg(100.0, share) == pytest.approx(factor, abs=0.01)


def test_price_at_another_factor() -> None:
    # a carga of 125 kg at 2,005,000: 16,040.00 a kg at base 94; 16,752.89 at 90; 15,385.31 at 98
    base = 2_005_000.0 / 125.0
    for factor, price in ((94.0, 16_040.00), (90.0, 16_752.89), (98.0, 15_385.31)):
        assert base * h.price_ratio(factor) == pytest.approx(price, abs=0.01)


def test_best_lots_of_puerta() -> None:
    # Puerta 2016, Cenicafé 67(1):7-40: factor 92.4 to 93.5 with 75.3 to 74.4 % healthy beans (0.6 for the tolerance)
    for factor, share in ((92.4, 75.3), (93.5, 74.4)):
        assert 100.0 * h.yield_frac(70.0, factor) == pytest.approx(share, abs=0.6)


def test_mass_chains_of_a_physical_table() -> None:
    # barriehouse.com: 120 dry parchment -> 100 green; 198 dried cherry -> 100 green; 550 cherry before both
    washed = h.outturn(120_000.0, 100_000.0, 80_000.0, cherry_g=550_000.0)
    assert washed.yield_frac == pytest.approx(0.8333, abs=1e-4)
    assert washed.cherry_per_green_kg_kg == pytest.approx(5.5)
    assert h.yield_frac(100.0, 198.0) == pytest.approx(0.5051, abs=1e-4)
    assert h.impossible(h.Intake.PARCHMENT, 120_000.0, 100_000.0) is None
    assert h.impossible(h.Intake.DRY_CHERRY, 198_000.0, 100_000.0) is None


def test_both_sides_at_one_moisture() -> None:
    # 200 kg at 12.5 % giving 158 kg at 11.2 %: 0.7900 as weighed, 0.80174 at any common moisture
    assert h.yield_frac(158.0, 200.0) == pytest.approx(0.79)
    assert h.yield_dry_frac(158.0, 0.112, 200.0, 0.125) == pytest.approx(0.80174, abs=1e-5)


def test_top_green_of_a_carga() -> None:
    # 125 kg of parchment by factor tables: 93.085 kg at 94, 97.222 at 90, 89.286 at 98; 70 % at 100
    for factor, top in ((94.0, 93.085), (90.0, 97.222), (98.0, 89.286)):
        assert h.yield_factor_kg(125.0, top) == pytest.approx(factor, abs=1e-3)
        assert 125.0 * h.BAG_KG / factor == pytest.approx(top, abs=1e-3)
    assert h.yield_frac(70.0, 100.0) == pytest.approx(0.70)


def test_roast_loss_behind_the_agreed_factor() -> None:
    # 1 - 1/1.19 = 15.97 %; a 60-kg bag is 132.277 lb (132.276 in the ITC Coffee Guide)
    assert 1.0 - 1.0 / h.ICO_GREEN_RATIO["roasted"] == pytest.approx(0.1597, abs=1e-4)
    assert pytest.approx(132.2774, abs=1e-4) == 60_000.0 / LB_G
