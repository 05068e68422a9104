"""Made-up lots whose truth is not the forecaster's model, to ask it about ends that are known here alone.

The truth is a Page state (exponent 1.06) in hours of sun that follow a flat-topped day, with its own day-to-day noise
(correlated more than the model thinks), damp nights, rest moisture that moves with the day, a meter that saturates
above 25 %, and rain in spells, one wet day in four leaking onto the lot. Nothing here is taken from the program.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from farmdesk.ahead.drying_fit import DryingLot, Meter, Tray
from farmdesk.ahead.weather import WeatherLog

DAY, HOUR = 86_400.0, 3_600.0
MIDNIGHT = 1_730_440_800.0  # some first of November, 00:00 at UTC-6
RATE = {"washed": 0.45, "honey": 0.36, "natural": 0.28}  # 1/d, plain exponential, by end records of patios
SURFACE = {"raised": 1.2, "patio": 1.0, "roof": 1.2}
START = {"washed": (0.53, 0.02), "honey": (0.55, 0.03), "natural": (0.65, 0.03)}


@dataclass
class Made:
    lot: DryingLot
    log: WeatherLog
    end_utc_s: float
    readings_utc_s: np.ndarray
    start_guess: float


def made_log(rng: np.random.Generator, days_n: int) -> WeatherLog:
    wet = np.zeros(days_n, dtype=bool)
    sky = np.zeros(days_n)
    for d in range(1, days_n):
        wet[d] = rng.random() < (0.5 if wet[d - 1] else 0.07)
        sky[d] = 0.45 * sky[d - 1] + np.sqrt(1 - 0.45**2) * rng.normal()
    good = np.clip(np.where(wet, rng.uniform(0.5, 3.0, days_n), 6.0 + 0.9 * sky), 0.3, 9.5)
    rh = np.clip(np.where(wet, 0.85, 0.66 - 0.02 * sky) + rng.normal(0, 0.02, days_n), 0.4, 0.98)
    low = rng.normal(17.0, 1.0, days_n)
    high = np.where(wet, 22.0, 27.5) + rng.normal(0, 1.0, days_n)
    rain = np.where(wet, rng.gamma(1.5, 8.0, days_n), 0.0)
    return WeatherLog(MIDNIGHT + DAY * np.arange(days_n), good, low, np.maximum(high, low + 1), rh, rain)


def made_lot(rng: np.random.Generator, target_wb: float = 0.115, slower: float = 1.0, exponent: float = 1.06) -> Made:
    days_n, first = 150, int(rng.integers(20, 70))
    log = made_log(rng, days_n)
    method = str(rng.choice(["washed", "washed", "honey", "natural"]))
    surface = str(rng.choice(["raised", "patio", "roof"]))
    mean, sd = START[method]
    start_wb = mean + sd * rng.normal()
    rate = RATE[method] * SURFACE[surface] * np.exp(0.35 * rng.normal()) / slower
    offset = rng.normal(0, 0.012)
    noise = np.zeros(days_n)
    for d in range(1, days_n):
        noise[d] = 0.45 * noise[d - 1] + 0.22 * np.sqrt(1 - 0.45**2) * rng.normal()
    start = MIDNIGHT + DAY * first + rng.choice([9.0, 13.0, 16.0]) * HOUR
    hours = np.arange(0, (days_n - first - 1) * 24)
    x, moisture = start_wb / (1 - start_wb), np.empty(hours.size + 1)
    x0, moisture[0] = x, x
    leaks = (log.rain_mm > 0) & (rng.random(days_n) < 0.25)
    age = 0.0
    end = np.inf
    for i in hours:
        at = start + i * HOUR
        day = int((at - MIDNIGHT) // DAY)
        hour = ((at - MIDNIGHT) % DAY) / HOUR
        if leaks[day] and hour == 3.0:
            x = min(x + 0.05 * np.exp(0.5 * rng.normal()), x0)
        before = x
        if 8.0 <= hour < 16.0:
            rest = 0.10 + offset + 0.15 * max(log.rh_frac[day] - 0.66, 0.0)
            step = rate * log.good_h[day] / 6.0 * np.exp(noise[day]) / 8.0
            ratio = min(max((x - rest) / (x0 - rest), 1e-6), 1.0)
            age = (-np.log(ratio)) ** (1 / exponent) + step
            if x > rest:
                x = rest + (x0 - rest) * np.exp(-(age**exponent))
        elif x < 0.35:
            x += (0.20 - x) * 0.0015
        moisture[i + 1] = x
        goal = target_wb / (1 - target_wb)
        if np.isinf(end) and x <= goal:
            end = at + HOUR * (before - goal) / max(before - x, 1e-12)
    evenings = start - (start - MIDNIGHT) % DAY + DAY * np.arange(1, 80) + 16.5 * HOUR
    reads = np.concatenate([[start + 60.0], evenings])
    reads = reads[reads < start + hours.size * HOUR]
    true_x = np.interp(reads, start + np.arange(hours.size + 1) * HOUR, moisture)
    true_wb = true_x / (1 + true_x)
    dry = rng.uniform(600, 1200)
    net = np.round(dry * (1 + true_x) * np.exp(rng.normal(0, 0.0035, reads.size)))
    bias = 0.005 * rng.normal()
    seen = np.where(true_wb > 0.25, 0.25 + 0.6 * (true_wb - 0.25), true_wb) + bias
    spread = 0.0075 + 0.2 * np.maximum(true_wb - 0.18, 0)
    mean_wb = np.clip(seen + spread * rng.normal(0, 1, (3, reads.size)).mean(axis=0), 0.05, 0.6)
    lot = DryingLot(
        method, surface, start, float(rng.uniform(8, 25)), None, None, (Tray(reads, net),),
        Meter(reads, mean_wb, np.full(reads.size, 3.0), np.zeros(reads.size, dtype=bool)),
    )  # fmt: skip
    return Made(lot, log, end, reads, mean)


def made_lots(
    seed: int, lots_n: int, slower: float = 1.0, exponent: float = 1.06, target_wb: float = 0.115
) -> list[Made]:
    """So many lots that do end within three weeks, and not within a day."""
    rng, lots = np.random.default_rng(seed), []
    while len(lots) < lots_n:
        made = made_lot(rng, target_wb, slower, exponent)
        if 1.0 * DAY < made.end_utc_s - made.lot.start_utc_s < 21 * DAY:
            lots.append(made)
    return lots


def part_of(made: Made, kind: str) -> DryingLot:
    lot = made.lot
    return DryingLot(
        lot.method, lot.surface, lot.start_utc_s, lot.loading_kg_m2, None, None,
        lot.trays if "tray" in kind else (), lot.meter if "meter" in kind else None,
    )  # fmt: skip


def straight_line(made: Made, now: float, target_wb: float, kind: str) -> float:
    """What a hand does on log paper: a line through ln(X - 0.10) against days, run on to the target."""
    lot, points = made.lot, []
    tray, meter = lot.trays[0], lot.meter
    rows = tray.at_utc_s <= now
    if "tray" in kind:
        dry = tray.net_g[0] * (1 - made.start_guess)
        points += list(zip(tray.at_utc_s[rows], tray.net_g[rows] / dry - 1, strict=True))
    if "meter" in kind:
        wet = meter.mean_wb_frac[rows]
        points += list(zip(meter.at_utc_s[rows], wet / (1 - wet), strict=True))
    at, x = np.array(points).T
    slope, level = np.polyfit((at - now) / DAY, np.log(np.maximum(x - 0.10, 0.002)), 1)
    goal = np.log(target_wb / (1 - target_wb) - 0.10)
    days = (goal - level) / slope if slope < -1e-3 else 60.0
    return now + DAY * float(np.clip(days, 0.0, 60.0))
