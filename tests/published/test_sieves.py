"""Sieves against printed hole sizes and sums worked by hand."""

from __future__ import annotations

import numpy as np
import pytest

from farmdesk.science import sieves


@pytest.mark.parametrize(
    ("screen", "printed"),
    [
        (20, 7.9375),
        (19, 7.5406),
        (18, 7.1437),
        (17, 6.7469),
        (16, 6.3500),
        (15, 5.9531),
        (14, 5.5562),
        (13, 5.1594),
        (12, 4.7625),
        (11, 4.3656),
        (10, 3.9688),
        (9, 3.5719),
        (8, 3.1750),
    ],
)
def test_sixty_fourths_of_an_inch(screen: int, printed: float) -> None:
    assert sieves.screen_mm(float(screen)) == pytest.approx(printed, abs=1e-4)


def test_printed_apertures_stay_what_the_books_print() -> None:
    # Coffee Board of India specifications (two reproductions) and SNI 01-2907-2008 (AEKI): No. 16 differs
    assert sieves.nominal_mm(16, "india") == 6.30
    assert sieves.nominal_mm(16, "indonesia_2008") == 6.5
    assert sieves.screen_mm(16.0) == 6.35
    for book in sieves.apertures().values():
        sizes = [book.round_mm[number] for number in sorted(book.round_mm)]
        assert sizes == sorted(sizes)
        for number, size in book.round_mm.items():
            assert size == pytest.approx(sieves.screen_mm(float(number)), rel=0.035)  # 13 is 3.1 % off in India


def test_a_sample_worked_by_hand() -> None:
    test = sieves.sieve(300.0, {19: 6.0, 18: 54.0, 17: 90.0, 16: 78.0, 15: 42.0, 14: 21.0}, pan_g=8.4)
    assert test.recovered_g == pytest.approx(299.4)
    assert 100.0 * test.lost_frac == pytest.approx(0.20, abs=0.01)
    shares = [2.00, 18.04, 30.06, 26.05, 14.03, 7.01]
    assert [100.0 * test.on_frac(n) for n in test.screens] == pytest.approx(shares, abs=0.01)
    assert 100.0 * test.pan_frac == pytest.approx(2.81, abs=0.01)
    ups = [20.04, 50.10, 76.15, 90.18, 97.19]
    assert [100.0 * test.up_frac(n) for n in (18, 17, 16, 15, 14)] == pytest.approx(ups, abs=0.01)
    assert test.mean_screen() == pytest.approx(16.4536, abs=1e-4)
    assert test.sd_screens() == pytest.approx(1.2101, abs=1e-4)
    assert test.mean_screen(pan_as=13) == pytest.approx(16.3567, abs=1e-4)
    upper, lower, share = test.best_two()
    assert (upper, lower) == (17, 16)
    assert 100.0 * share == pytest.approx(56.11, abs=0.01)
    # a mean taken through printed millimetres would be another number: 6.503 mm is 16.39 in exact 64ths
    holes = [sieves.nominal_mm(n, "india") for n in test.screens]
    through_mm = float(np.average(holes, weights=test.on_g))
    assert through_mm == pytest.approx(6.5031, abs=1e-4)
    assert test.mean_screen() != pytest.approx(through_mm / 25.4 * 64.0, abs=0.05)


def test_brazil_rule_on_leak_and_run_of_mill() -> None:
    # IN MAPA 8 of 11 June 2003: at most 10 % through the declared screen; four screens or more is bica corrida
    wide = sieves.sieve(300.0, {19: 6.0, 18: 54.0, 17: 90.0, 16: 78.0, 15: 42.0, 14: 21.0}, pan_g=8.4)
    assert sieves.brazil_size(wide).run_of_mill
    good = sieves.brazil_size(sieves.sieve(100.0, {18: 40.0, 17: 52.0, 16: 6.0}, pan_g=2.0))
    assert (good.declared, good.run_of_mill, str(good.name)) == (17, False, "flat, large")
    assert good.leak_frac == pytest.approx(0.08)
    leaky = sieves.brazil_size(sieves.sieve(100.0, {18: 40.0, 17: 49.0, 16: 9.0}, pan_g=2.0))
    assert (leaky.declared, str(leaky.name)) == (16, "flat, medium")  # 11 % through 17: a lower screen
    small = sieves.sieve(100.0, {11: 10.0, 10: 83.0}, pan_g=7.0, holes=sieves.Holes.SLOT)
    assert str(sieves.brazil_size(small).name) == "peaberry, medium"
