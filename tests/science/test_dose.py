"""Yeast, water, steps."""

from __future__ import annotations

import pytest

from farmdesk.errors import NotPossible
from farmdesk.science.dose import yeast_dose


def test_sixty_kilograms_at_one_gram() -> None:
    dose = yeast_dose(60_000.0, 1.0, 38.0, 18.0)
    assert dose.yeast_g == pytest.approx(60)
    assert dose.water_ml == pytest.approx(600)
    assert dose.cells_per_g == pytest.approx(2e7)
    assert dose.steps_count == 1
    assert dose.juice_ml == pytest.approx(600)


def test_a_warm_mass_needs_no_step() -> None:
    dose = yeast_dose(60_000.0, 1.0, 37.0, 27.0)
    assert dose.steps_count == 0
    assert dose.juice_ml == 0.0


@pytest.mark.parametrize("water", [15.0, 29.9, 44.0, float("nan")])
def test_water_that_kills_is_refused(water: float) -> None:
    with pytest.raises(NotPossible):
        yeast_dose(60_000.0, 1.0, water, 18.0)
