"""Ground: corners in degrees laid flat round their middle, and what may be said of the plots they bound.

Corners are (n, 2) arrays of latitude and longitude [deg]; on the few hundred metres of a farm's block the
ellipsoid of WGS 84 (NIMA TR8350.2, 2000: a = 6,378,137 m, 1/f = 298.257223563) is flat to less than a millimetre
a metre.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

A_M, FLATTENING = 6_378_137.0, 1 / 298.257223563
GRID_N = 160  # points a side that are asked whether two plots share them

Corners = NDArray[np.float64]


def metres_a_degree(latitude_deg: float) -> tuple[float, float]:
    """Metres that one degree of latitude, and one of longitude, span at a latitude [deg]. WGS 84, see above."""
    e2 = FLATTENING * (2 - FLATTENING)
    sin = np.sin(np.radians(latitude_deg))
    w = np.sqrt(1 - e2 * sin**2)
    degree = np.pi / 180
    north = A_M * (1 - e2) / w**3 * degree
    east = A_M / w * np.cos(np.radians(latitude_deg)) * degree
    return float(north), float(east)


def flat_m(corners: ArrayLike, around: ArrayLike | None = None) -> Corners:
    """Metres east and north, (n, 2), of a point `around` [deg], or of the mean of the `corners` [deg] themselves."""
    points = np.asarray(corners, dtype=np.float64)
    middle = points.mean(axis=0) if around is None else np.asarray(around, dtype=np.float64)
    north, east = metres_a_degree(float(middle[0]))
    return np.column_stack([(points[:, 1] - middle[1]) * east, (points[:, 0] - middle[0]) * north])


def area_ha(corners: ArrayLike) -> float:
    """Area [ha] that at least three `corners` [deg] bound, in order; 0 for fewer. The shoelace formula on flat ground."""
    x, y = flat_m(corners).T
    if x.size < 3:
        return 0.0
    return float(abs(np.dot(x, np.roll(y, -1)) - np.dot(y, np.roll(x, -1))) / 2 / 10_000)


def crosses_itself(corners: ArrayLike) -> bool:
    """Whether two sides of the outline through `corners` [deg] cross, other than at a shared corner."""
    points = flat_m(corners)
    n = len(points)
    ends = np.roll(points, -1, axis=0)
    for i in range(n):
        for j in range(i + 2, n):
            if (j + 1) % n != i and _cross(points[i], ends[i], points[j], ends[j]):
                return True
    return False


def _side(a: Corners, b: Corners, c: Corners) -> float:
    """Twice the signed area [m²] of a triangle: above 0 where it turns to the left."""
    return float((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]))


def _cross(a: Corners, b: Corners, c: Corners, d: Corners) -> bool:
    return _side(a, b, c) * _side(a, b, d) < 0 and _side(c, d, a) * _side(c, d, b) < 0


def shared_ha(first: ArrayLike, second: ArrayLike) -> float:
    """Area [ha] that plots `first` [deg] and `second` [deg] share, to a hundredth of their common box: counted on a grid."""
    around = np.vstack([np.asarray(first, dtype=np.float64), np.asarray(second, dtype=np.float64)]).mean(axis=0)
    one, two = flat_m(first, around), flat_m(second, around)
    low = np.maximum(one.min(axis=0), two.min(axis=0))
    high = np.minimum(one.max(axis=0), two.max(axis=0))
    if (high <= low).any():
        return 0.0
    steps = (np.arange(GRID_N) + 0.5) / GRID_N
    x, y = np.meshgrid(low[0] + steps * (high[0] - low[0]), low[1] + steps * (high[1] - low[1]))
    both = _inside(one, x, y) & _inside(two, x, y)
    return float(both.mean() * (high - low).prod() / 10_000)


def _inside(corners: Corners, x: NDArray[np.float64], y: NDArray[np.float64]) -> NDArray[np.bool_]:
    """Which points (any shape) lie inside: an odd number of sides to the east of them."""
    found = np.zeros(x.shape, dtype=bool)
    for (ax, ay), (bx, by) in zip(corners, np.roll(corners, -1, axis=0), strict=True):
        if ay != by:
            found ^= ((ay > y) != (by > y)) & (x < ax + (y - ay) * (bx - ax) / (by - ay))
    return found


def apart_km(first: ArrayLike, second: ArrayLike) -> float:
    """Distance [km] of the middles of `first` [deg] and `second` [deg], flat: enough to tell an own block from a slip."""
    one, two = np.asarray(first, dtype=np.float64).mean(axis=0), np.asarray(second, dtype=np.float64).mean(axis=0)
    return float(np.hypot(*flat_m(two[None, :], one)[0]) / 1000)
