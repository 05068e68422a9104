"""Humidity ratio, dew point and wet bulb of a million points of air."""

from __future__ import annotations

import json
import sys
import time

import numpy as np

from farmdesk.science.air import dew_point_c, humidity_ratio_kg_kg, wet_bulb_c

POINTS_N = 2_000 if "--tiny" in sys.argv else 1_000_000
order = np.arange(POINTS_N)
temp_c = 5.0 + 35.0 * order / POINTS_N
rh_frac = 0.2 + 0.75 * (order * 7 % POINTS_N) / POINTS_N

begun = time.perf_counter()
ratio = humidity_ratio_kg_kg(temp_c, rh_frac, 85.0)
dew_c = dew_point_c(temp_c, rh_frac)
wet_c = wet_bulb_c(temp_c, rh_frac, 85.0)
took = time.perf_counter() - begun

assert ((dew_c <= wet_c) & (wet_c <= temp_c) & (ratio > 0)).all()
print(json.dumps({"air_s": took}))
