"""Brix, gravity, grams of sugar."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk.errors import NotPossible
from farmdesk.science.sugar import brix_of_gravity_brix, solids_g_l, specific_gravity_ratio, sugar_used_brix


def test_table_of_gravity_and_solids() -> None:
    brix = np.array([5.0, 10, 15, 18, 20, 22, 24])
    assert specific_gravity_ratio(brix) == pytest.approx(
        [1.01966, 1.03998, 1.06104, 1.07404, 1.08287, 1.09183, 1.10092], abs=2e-5
    )
    assert solids_g_l(brix) == pytest.approx([50.9, 103.8, 158.9, 193.0, 216.2, 239.8, 263.7], abs=0.1)


@given(st.floats(0.0, 60.0))
def test_there_and_back(brix: float) -> None:
    assert brix_of_gravity_brix(specific_gravity_ratio(brix)) == pytest.approx(brix, abs=1e-7)


def test_alcohol_hides_part_of_the_fall() -> None:
    assert sugar_used_brix(20.0, 14.38) == pytest.approx(1.29 * 5.62)
    with pytest.raises(NotPossible):
        sugar_used_brix(14.0, 14.5)
    with pytest.raises(NotPossible):
        specific_gravity_ratio(-1.0)
