"""The least with the reference library: its own functions, point by point, on 2,000 points scaled up."""

import json
import sys
import time

import psychrolib

POINTS_N = 2_000
WHOLE_N = POINTS_N if "--tiny" in sys.argv else 1_000_000
psychrolib.SetUnitSystem(psychrolib.SI)
temps = [5.0 + 35.0 * i / POINTS_N for i in range(POINTS_N)]
humidities = [0.2 + 0.75 * (i * 7 % POINTS_N) / POINTS_N for i in range(POINTS_N)]

begun = time.perf_counter()
for temp, humidity in zip(temps, humidities, strict=True):
    psychrolib.GetHumRatioFromRelHum(temp, humidity, 85_000.0)
    psychrolib.GetTDewPointFromRelHum(temp, humidity)
    psychrolib.GetTWetBulbFromRelHum(temp, humidity, 85_000.0)
took = time.perf_counter() - begun

print(json.dumps({"air_s": took * WHOLE_N / POINTS_N}))
