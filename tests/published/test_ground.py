"""Ground: lengths of a degree on the WGS 84 ellipsoid, and plots worked by hand."""

from __future__ import annotations

import numpy as np
import pytest

from farmdesk.science import ground


@pytest.mark.parametrize(
    ("latitude", "north_m", "east_m"),
    [  # NIMA TR8350.2 ellipsoid; the lengths as handbooks of navigation print them, from memory
        (0, 110_574, 111_320),
        (15, 110_649, 107_550),
        (30, 110_852, 96_486),
        (45, 111_132, 78_847),
        (60, 111_412, 55_800),
        (75, 111_618, 28_902),
        (90, 111_694, 0),
    ],
)
def test_metres_a_degree(latitude: float, north_m: float, east_m: float) -> None:
    north, east = ground.metres_a_degree(latitude)
    assert north == pytest.approx(north_m, abs=0.6)
    assert east == pytest.approx(east_m, abs=0.6)


def square(side_m: float, latitude: float = 14.5, longitude: float = -88.0) -> np.ndarray:
    """A square plot with its south-west corner there."""
    north, east = ground.metres_a_degree(latitude)
    high, wide = side_m / north, side_m / east
    return np.array(
        [
            [latitude, longitude],
            [latitude + high, longitude],
            [latitude + high, longitude + wide],
            [latitude, longitude + wide],
        ]
    )


def test_a_hectare_is_a_square_of_a_hundred_metres() -> None:
    plot = square(100)
    assert ground.area_ha(plot) == pytest.approx(1.0, rel=1e-5)
    assert ground.area_ha(plot[::-1]) == pytest.approx(1.0, rel=1e-5)  # either way round
    assert ground.area_ha(plot[:3]) == pytest.approx(0.5, rel=1e-5)
    assert ground.area_ha(plot[:2]) == 0


def test_an_hourglass_crosses_itself() -> None:
    plot = square(100)
    assert not ground.crosses_itself(plot)
    assert ground.crosses_itself(plot[[0, 2, 1, 3]])


def test_what_two_plots_share() -> None:
    plot, step = square(100), ground.metres_a_degree(14.5)[1]
    aside = plot + np.array([0, 50 / step])
    assert ground.shared_ha(plot, aside) == pytest.approx(0.5, rel=0.02)
    assert ground.shared_ha(plot, plot + np.array([0, 100 / step])) == pytest.approx(0, abs=0.01)  # neighbours
    assert ground.shared_ha(plot, plot + 1) == 0
    assert ground.shared_ha(plot, square(20)) == pytest.approx(0.04, rel=0.02)


def test_how_far_apart_plots_lie() -> None:
    assert ground.apart_km(square(100), square(100) + np.array([1.0, 0.0])) == pytest.approx(110.65, abs=0.1)
