"""When 40 running lots will be dry, 500 members each, hour by hour for 30 days; and one lot fitted to its readings."""

from __future__ import annotations

import json
import sys
import time

import numpy as np

from farmdesk.ahead.drying_fit import drying_layers, drying_settings, key_of, model_of
from farmdesk.ahead.learning import prior_for
from farmdesk.clock import DAY_S
from farmdesk.science.drying import ready_after_steps
from tests.ahead.made_drying import made_lots

LOTS_N, MEMBERS_N, HOURS_N = (2, 10, 720) if "--tiny" in sys.argv else (40, 500, 720)
TARGET_DB_FRAC = 0.12 / 0.88


def ensemble_s() -> float:
    """Seconds for all members, each with its own start, rate and weather; some are wet to the end of the month."""
    rng = np.random.default_rng(5)
    hour = np.arange(HOURS_N) % 24
    sun = np.where((hour >= 8) & (hour < 16), 1 / 8, 0.0)
    drive_d = sun * np.repeat(rng.uniform(0.2, 1.4, (LOTS_N, MEMBERS_N, HOURS_N // 24)), 24, axis=2)
    rest_db = 0.11 + 0.03 * rng.random((LOTS_N, 1, 1)) * np.ones_like(drive_d)
    start_db = rng.uniform(0.8, 1.3, (LOTS_N, MEMBERS_N))
    rate_per_d = rng.uniform(0.12, 0.45, (LOTS_N, MEMBERS_N))
    layer_d = rng.uniform(0.5, 2.0, (LOTS_N, MEMBERS_N))
    begun = time.perf_counter()
    ready = ready_after_steps(start_db, drive_d, rest_db, rate_per_d, layer_d, TARGET_DB_FRAC)
    took = time.perf_counter() - begun
    assert ready.shape == (LOTS_N, MEMBERS_N)
    assert np.isinf(ready).any()
    assert (ready > 24).all()
    return took


def fit_s() -> float:
    """Seconds to fit a washed lot in the middle of its drying."""
    made = made_lots(7, 1)[0]
    now = made.lot.start_utc_s + 6 * DAY_S
    known = made.log.known_by(now)
    prior = prior_for(key_of(made.lot), drying_settings(made.lot, known), drying_layers(), ())
    model_of(made.lot, known, prior, now).fit()  # the first loads the solvers
    begun = time.perf_counter()
    fit = model_of(made.lot, known, prior, now).fit()
    took = time.perf_counter() - begun
    assert np.isfinite(fit.values).all()
    return took


print(json.dumps({"ensemble_s": ensemble_s(), "fit_ms": fit_s() * 1000}))
