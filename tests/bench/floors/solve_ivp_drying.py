"""The least with the reference solver: SciPy's RK45, one member at a time, on 20 seeded members scaled up."""

import json
import sys
import time

import numpy as np
from scipy.integrate import solve_ivp

MEMBERS_N, HOURS_N = 20, 720
WHOLE_N = 20 if "--tiny" in sys.argv else 40 * 500
TARGET_DB = 0.12 / 0.88

rng = np.random.default_rng(5)
hour = np.arange(HOURS_N) % 24
sun = np.where((hour >= 8) & (hour < 16), 1 / 8, 0.0)
drive = sun * np.repeat(rng.uniform(0.2, 1.4, (MEMBERS_N, HOURS_N // 24)), 24, axis=1)
rest, start = 0.11 + 0.03 * rng.random(MEMBERS_N), rng.uniform(0.8, 1.3, MEMBERS_N)
rate, layer = rng.uniform(0.12, 0.45, MEMBERS_N), rng.uniform(0.5, 2.0, MEMBERS_N)


def fall(t, x, i):
    gap = x[0] - rest[i]
    return [-drive[i, min(int(t), HOURS_N - 1)] * rate[i] * gap / (1.0 + rate[i] * layer[i] * abs(gap))]


def dry(t, x, i):
    return x[0] - TARGET_DB


dry.terminal = True

begun = time.perf_counter()
for i in range(MEMBERS_N):
    span = (0.0, float(HOURS_N))
    solve_ivp(fall, span, [start[i]], "RK45", events=dry, args=(i,), rtol=1e-6, atol=1e-8, max_step=1.0)
took = time.perf_counter() - begun

print(json.dumps({"ensemble_s": took * WHOLE_N / MEMBERS_N}))
