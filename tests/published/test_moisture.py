"""Water in coffee against printed sums and remembered coffee figures."""

from __future__ import annotations

import math

import pytest

from farmdesk.science import isotherms as iso
from farmdesk.science import moisture as m


def test_maize_shrink_sheet() -> None:
    # Pioneer agronomy sheet "moisture shrink": 25.5 to 15.5 %, 1.1834 % of weight a point, 11.83 % of 1,000 lb
    assert m.points_per_point_ratio(0.155) == pytest.approx(1.1834, abs=5e-5)
    assert 100.0 * m.shrink_frac(0.255, 0.155) == pytest.approx(11.83, abs=0.01)
    assert m.mass_at_g(1000.0, 0.255, 0.155) / 56.0 == pytest.approx(15.8, abs=0.1)


def test_two_web_sums_for_maize() -> None:
    # tools.gera.services (18 to 15 %, 100,000 lb) and agcalculator.com (19 to 15 %, 12,000 bu)
    assert m.mass_at_g(100_000.0, 0.18, 0.15) == pytest.approx(96_470, abs=1.0)
    assert m.mass_at_g(12_000.0, 0.19, 0.15) == pytest.approx(11_435, abs=1.0)


def test_washed_coffee_of_oliveros() -> None:
    # Oliveros, López, Buitrago, Moreno 2010, Cenicafé 61(2):108-118: 53 to 11 % loses 47.3 % (exactly 47.19)
    assert 100.0 * m.shrink_frac(0.53, 0.11) == pytest.approx(47.3, abs=0.15)
    assert 100.0 * m.shrink_frac(0.53, 0.11) == pytest.approx(47.191, abs=1e-3)


def test_whole_cherry_of_dardengo() -> None:
    # Dardengo, Sant'Ana, Pereira 2013, Enciclopédia Biosfera 9(17):2348: 65.19 to 12.6 % loses 60.17 %
    assert 100.0 * m.shrink_frac(0.6519, 0.126) == pytest.approx(60.17, abs=0.01)


@pytest.mark.parametrize(("db", "wb"), [(1.9, 65.52), (0.56, 35.90), (0.41, 29.08), (0.28, 21.88), (0.20, 16.67)])
def test_dry_basis_of_coffee_papers(db: float, wb: float) -> None:
    # Alves et al. 2013, Coffee Science 8(2):238-247, and Siqueira et al. 2017, Coffee Science 12(3):400-409
    assert 100.0 * m.to_wet_basis(db) == pytest.approx(wb, abs=0.006)


@pytest.mark.parametrize(
    ("mass", "now", "ref", "there"),
    [
        (100.0, 0.105, 0.12, 101.7045),
        (100.0, 0.130, 0.12, 98.8636),
        (100.0, 0.120, 0.11, 98.8764),
        (60.0, 0.125, 0.11, 58.9888),
        (100.0, 0.53, 0.11, 52.8090),
        (1000.0, 0.20, 0.14, 930.2326),
    ],
)
def test_weight_at_another_moisture(mass: float, now: float, ref: float, there: float) -> None:
    # W (100 - M) / (100 - Mref), worked by hand
    assert m.mass_at_g(mass, now, ref) == pytest.approx(there, abs=1e-3)


@pytest.mark.parametrize(
    ("temp", "row"),
    [
        (15.0, (8.84, 9.78, 10.51, 10.89, 11.33, 11.87, 12.55, 13.40, 14.44, 15.69, 17.17)),
        (25.0, (8.38, 9.28, 10.01, 10.41, 10.88, 11.45, 12.16, 13.03, 14.10, 15.37, 16.86)),
        (40.0, (7.74, 8.57, 9.31, 9.73, 10.23, 10.84, 11.59, 12.50, 13.60, 14.90, 16.41)),
    ],
)
def test_parchment_at_rest(temp: float, row: tuple[float, ...]) -> None:
    # Trejos, Roa, Oliveros 1989, Cenicafé 40(1):5-15, coefficients from memory, worked with independent code
    for rh, printed in zip((0.30, 0.40, 0.50, 0.55, 0.60, 0.65, 0.70, 0.75, 0.80, 0.85, 0.90), row, strict=True):
        assert 100.0 * m.to_wet_basis(iso.PARCHMENT.equilibrium(temp, rh).moisture_db_frac) == pytest.approx(
            printed, abs=0.01
        )


def test_twelve_percent_at_seventy_humidity() -> None:
    # Trade rule, and ITC Coffee Guide: coffee in 70 % humidity comes to about 12 %
    assert m.to_wet_basis(iso.PARCHMENT.equilibrium(25.0, 0.70).moisture_db_frac) == pytest.approx(0.12, abs=0.008)


@pytest.mark.parametrize(
    ("moisture", "activity"),
    [(0.10, 0.499), (0.11, 0.612), (0.115, 0.654), (0.12, 0.690), (0.125, 0.721), (0.13, 0.748), (0.15, 0.836)],
)
def test_water_activity_at_25_degrees(moisture: float, activity: float) -> None:
    found = iso.PARCHMENT.activity(m.to_dry_basis(moisture), 25.0)
    assert found.activity_frac == pytest.approx(activity, abs=0.002)
    assert not found.wet


def test_heat_of_vaporisation_towards_free_water() -> None:
    # Wet coffee costs what water costs: 2,442 kJ/kg at 25 °C (ASHRAE 2017 ch. 1 table 3); dry coffee more
    assert iso.vaporisation_kj_kg(25.0, 1.1277) == pytest.approx(2442.0, abs=2.0)
    assert iso.vaporisation_kj_kg(25.0, 0.25) == pytest.approx(2458.0, abs=1.0)
    assert iso.vaporisation_kj_kg(25.0, 0.13636) == pytest.approx(2629.4, abs=1.0)


def test_named_forms_by_hand() -> None:
    # The forms as the Viçosa papers print them, each worked in one line with made-up coefficients [% dry basis]
    r, t = 0.65, 25.0
    by_hand = {
        "modified Henderson": ((1e-4, 40.0, 2.0), (math.log(1 - r) / (-1e-4 * (t + 40.0))) ** (1 / 2.0)),
        "modified Chung-Pfost": ((35.0, 6.0, 30.0), 35.0 - 6.0 * math.log(-(t + 30.0) * math.log(r))),
        "modified Oswin": ((13.0, -0.05, 2.5), (13.0 - 0.05 * t) * (r / (1 - r)) ** (1 / 2.5)),
        "modified Halsey": ((5.0, 0.02, 2.2), (math.exp(5.0 - 0.02 * t) / -math.log(r)) ** (1 / 2.2)),
        "GAB": ((6.0, 15.0, 0.8), 6 * 15 * 0.8 * r / ((1 - 0.8 * r) * (1 - 0.8 * r + 15 * 0.8 * r))),
        "Sabbah": ((25.0, 1.3, 0.1), 25.0 * r**1.3 / t**0.1),
        "Copace": ((1.2, 0.005, 2.0), math.exp(1.2 - 0.005 * t + 2.0 * r)),
        "Sigma-Copace": ((0.5, 0.005, 1.1), math.exp(0.5 - 0.005 * t + 1.1 * math.exp(r))),
    }
    assert by_hand.keys() == iso.FORMS.keys()
    for form, (coefficients, expected) in by_hand.items():
        made = iso.isotherm(form, coefficients, (15.0, 35.0), (0.2, 0.9), "by hand")
        assert 100.0 * made.equilibrium(t, r).moisture_db_frac == pytest.approx(expected, rel=1e-12)


def test_the_shrink_sheets_to_the_last_digit() -> None:
    # the same three sheets, worked exactly: 881.657 lb or 15.744 bu of 56 lb; 96,470.59 lb; 11,435.29 bu
    assert 100.0 * m.shrink_frac(0.255, 0.155) == pytest.approx(11.834, abs=1e-3)
    assert m.mass_at_g(1000.0, 0.255, 0.155) == pytest.approx(881.657, abs=1e-3)
    assert m.mass_at_g(1000.0, 0.255, 0.155) / 56.0 == pytest.approx(15.744, abs=1e-3)
    assert m.mass_at_g(100_000.0, 0.18, 0.15) == pytest.approx(96_470.59, abs=0.01)
    assert m.mass_at_g(12_000.0, 0.19, 0.15) == pytest.approx(11_435.29, abs=0.01)
    assert m.mass_at_g(100.0, 0.125, 0.11) == pytest.approx(98.315, abs=1e-3)
    assert m.mass_at_g(100.0, 0.11, 0.12) == pytest.approx(101.1364, abs=1e-4)  # coffee that took water again
    assert m.water_to_leave_g(1000.0, 0.20, 0.14) == pytest.approx(69.767, abs=1e-3)


@pytest.mark.parametrize(
    ("wb", "db"),
    [
        (10.0, 0.11111), (11.0, 0.12360), (11.5, 0.12994), (12.0, 0.13636), (12.5, 0.14286), (15.0, 0.17647), (20.0, 0.25),
        (30.0, 0.42857), (50.0, 1.0), (53.0, 1.12766), (55.0, 1.22222), (60.0, 1.5), (65.19, 1.87274), (10.71, 0.12),
    ],
)  # fmt: skip
def test_both_bases_of_the_moistures_coffee_passes(wb: float, db: float) -> None:
    # M / (100 - M), worked by hand; 0.12 is a green coffee's moisture as Siqueira et al. 2017 print it
    assert m.to_dry_basis(wb / 100.0) == pytest.approx(db, abs=1e-4)
    assert 100.0 * m.to_wet_basis(db) == pytest.approx(wb, abs=0.01)


def test_a_natural_tray_misleads_nearly_threefold() -> None:
    # (100 - M2) / (100 - M1) from 68 to 12 %, worked by hand
    assert m.tray_gain_ratio(0.68, 0.12) == pytest.approx(2.75, abs=1e-9)


@pytest.mark.parametrize(
    ("percent", "word"), [(60.0, "fresh"), (35.0, "half dry"), (30.0, "half dry"), (20.0, "rattling"), (12.0, "dry")]
)
def test_stages_of_whole_cherry(percent: float, word: str) -> None:
    # Silva and Roberto (FAO, Hygienic coffee drying): 60 % and over fresh, 35 to 30 half dry, 12 dry; 20 is trade use
    assert m.stage(percent / 100.0, whole_cherry=True) == word


@pytest.mark.parametrize(
    ("temp", "row"),
    [
        (20.0, (8.61, 9.53, 10.26, 10.65, 11.10, 11.66, 12.35, 13.21, 14.27, 15.53, 17.02)),
        (30.0, (8.17, 9.03, 9.77, 10.18, 10.66, 11.24, 11.96, 12.85, 13.93, 15.21, 16.71)),
        (35.0, (7.95, 8.80, 9.54, 9.95, 10.44, 11.04, 11.77, 12.67, 13.76, 15.06, 16.56)),
    ],
)
def test_parchment_at_rest_in_other_air(temp: float, row: tuple[float, ...]) -> None:
    # the other rows of the same table (Trejos, Roa, Oliveros 1989, from memory)
    test_parchment_at_rest(temp, row)


@pytest.mark.parametrize(
    ("temp", "activity", "moisture"),
    [
        (25.0, 0.60, 10.9), (25.0, 0.65, 11.45), (25.0, 0.68, 11.86), (25.0, 0.75, 13.03), (25.0, 0.80, 14.1),
        (25.0, 0.85, 15.4), (25.0, 0.796, 14.0), (30.0, 0.65, 11.2), (30.0, 0.70, 12.0),
    ],
)  # fmt: skip
def test_the_moisture_behind_an_activity_limit(temp: float, activity: float, moisture: float) -> None:
    # limits of ICO and FAO (0.68), Puerta 2006 (0.70, 0.60) and Codex (0.80) as moistures of the same isotherm
    rest = iso.PARCHMENT.equilibrium(temp, activity)
    assert 100.0 * m.to_wet_basis(rest.moisture_db_frac) == pytest.approx(moisture, abs=0.05)
    assert iso.PARCHMENT.activity(rest.moisture_db_frac, temp).activity_frac == pytest.approx(activity, abs=1e-6)
