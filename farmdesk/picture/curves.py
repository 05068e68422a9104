"""Moisture of a lot over time: trays give the shape, a meter the height.

A tray's dry matter is what its starting weight and moisture say, joined by precision with what every
credible meter reading beside it says; the whole curve hangs on these anchors, and moves when the meter is
corrected. Noise of one reading .75 points below 18 %, growing by .2 points for each point above, and a
bias of .5 points that repeats do not average out: from memory, after the comparison of bench meters with
the oven by Jimenez & Bulgarelli (1992), Agronomia Costarricense 16(2), who found them erratic above 35 %.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from farmdesk.clock import DAY_S, HOUR_S
from farmdesk.picture.entries import Correction, Entry, Reading
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.measures import correction_at, meter_readings, method_of
from farmdesk.picture.things import Things

Floats = NDArray[np.float64]

TRUSTED_WB_FRAC = 0.30  # a meter reading above this hangs no curve
BESIDE_S = 6 * HOUR_S  # a meter reading belongs to a tray weighing this near
NOISE_WB_FRAC, NOISE_PER_FRAC, NOISE_FROM_FRAC, BIAS_WB_FRAC = 0.0075, 0.2, 0.18, 0.005
TRAY_SD_FRAC = 0.0035  # of a tray's weight: scale and what the handful stands for (from memory)
START_WB_FRAC, START_SD_FRAC = 0.54, 0.02  # where the lot's method is not known


@dataclass(frozen=True, slots=True)
class MeterPoint:
    """One look with a meter: corrected mean, lowest and highest repeat [fraction wet basis], and the raw mean."""

    at_utc_s: int
    place: str
    wb_frac: float
    low_wb_frac: float
    high_wb_frac: float
    raw_wb_frac: float
    instrument: str
    entry: str
    mark: str
    repeats_n: int

    @property
    def sd_frac(self) -> float:
        """The noise of its mean, without the meter's own bias [fraction]."""
        noise = NOISE_WB_FRAC + NOISE_PER_FRAC * max(0.0, self.wb_frac - NOISE_FROM_FRAC)
        return float(noise / self.repeats_n**0.5)


@dataclass(frozen=True, eq=False)
class TrayCurve:
    """One tray of a lot: instants [UTC s], net weights [g], moistures [fraction wet basis], shape (n,) each.

    `dry_g` is its dry matter with its spread; `start_wb_frac` what that makes of its first weight;
    `anchors` are the instants and moistures it hangs on.
    """

    tray: str
    place: str
    at_utc_s: Floats
    grams: Floats
    moisture_wb_frac: Floats
    dry_g: float
    dry_sd_g: float
    start_wb_frac: float
    anchors: tuple[tuple[int, float], ...]


@dataclass(frozen=True, slots=True)
class KnownMoisture:
    """The newest moisture of a portion [fraction wet basis], its spread, how and when it is known."""

    wb_frac: float
    sd_frac: float
    mark: str  # measured, computed
    source: str  # meter, tray
    at_utc_s: int
    doubtful: bool = False


def meter_points(lot: LotPicture, corrections: list[Correction]) -> list[MeterPoint]:
    """All meter readings of a lot, corrected, in order."""
    points = []
    for entry in meter_readings(lot):
        body = entry.body
        add = correction_at(corrections, entry.instrument, "meter_wb_frac", entry.happened_utc_s)
        values = [line.value for line in body.values]
        points.append(
            MeterPoint(
                entry.happened_utc_s,
                body.place,
                body.value + add,
                min(values) + add,
                max(values) + add,
                body.value,
                entry.instrument,
                entry.id,
                "corrected" if add else entry.mark,
                len(values),
            )
        )
    return points


def tray_curves(lot: LotPicture, things: Things, corrections: list[Correction]) -> list[TrayCurve]:
    """The trays of a lot, each hung on the meter readings beside it."""
    by_tray: dict[tuple[str, str], list[Entry[Reading]]] = {}
    for entry in lot.of(Reading):
        body = entry.body
        if body.quantity == "tray_g":
            by_tray.setdefault((body.tray, body.place), []).append(entry)
    points = meter_points(lot, corrections)
    method = method_of(lot, things)
    start = (method.start_wb_frac, method.start_wb_sd_frac) if method else (START_WB_FRAC, START_SD_FRAC)
    return [_curve(tray, place, entries, points, start) for (tray, place), entries in by_tray.items()]


def _curve(
    tray: str, place: str, entries: list[Entry[Reading]], points: list[MeterPoint], start: tuple[float, float]
) -> TrayCurve:
    at = np.array([e.happened_utc_s for e in entries], dtype=np.float64)
    grams = np.array([e.body.value for e in entries], dtype=np.float64)
    dry, variance = grams[0] * (1 - start[0]), (grams[0] * start[1]) ** 2
    anchors: list[tuple[int, float]] = []
    weights: list[float] = []
    dries: list[float] = []
    beside: list[float] = []
    for point in points:
        nearest = int(np.argmin(np.abs(at - point.at_utc_s)))
        if point.wb_frac <= TRUSTED_WB_FRAC and point.place == place and abs(at[nearest] - point.at_utc_s) <= BESIDE_S:
            anchors.append((point.at_utc_s, point.wb_frac))
            weight_g = float(grams[nearest])
            sd = weight_g * (point.sd_frac**2 + TRAY_SD_FRAC**2) ** 0.5
            weights.append(1 / sd**2)
            dries.append(weight_g * (1 - point.wb_frac))
            beside.append(weight_g)
    if anchors:
        hung = float(np.average(dries, weights=weights))
        hung_variance = 1 / sum(weights) + (float(np.mean(beside)) * BIAS_WB_FRAC) ** 2
        precision = 1 / variance + 1 / hung_variance
        dry = (dry / variance + hung / hung_variance) / precision
        variance = 1 / precision
    return TrayCurve(
        tray,
        place,
        at,
        grams,
        1 - dry / grams,
        float(dry),
        float(variance**0.5),
        float(1 - dry / grams[0]),
        tuple(anchors),
    )


def _newest(points: list[MeterPoint], trays: list[TrayCurve]) -> float:
    return max([float(p.at_utc_s) for p in points[-1:]] + [float(t.at_utc_s[-1]) for t in trays], default=0.0)


def moisture_known(
    lot: LotPicture, things: Things, corrections: list[Correction], place: str = ""
) -> KnownMoisture | None:
    """The newest moisture of the portion at a place, or of the lot where the place has none of its own.

    A portion's own reading counts as long as the lot has none that is a day younger. A credible meter reading
    counts before the tray of the same day; above 30 % the tray does. None where nothing was read.
    """
    points = meter_points(lot, corrections)
    trays = tray_curves(lot, things, corrections)
    of_lot = [p for p in points if not p.place] or points, [t for t in trays if not t.place] or trays
    own = [p for p in points if place and p.place == place], [t for t in trays if place and t.place == place]
    own_points, own_trays = own if _newest(*own) >= _newest(*of_lot) - DAY_S else of_lot
    meter = own_points[-1] if own_points else None
    tray = max(own_trays, key=lambda t: t.at_utc_s[-1]) if own_trays else None
    if meter and (
        tray is None or (meter.wb_frac <= TRUSTED_WB_FRAC and meter.at_utc_s >= tray.at_utc_s[-1] - BESIDE_S)
        or meter.at_utc_s > tray.at_utc_s[-1] + BESIDE_S
    ):  # fmt: skip
        sd = (meter.sd_frac**2 + BIAS_WB_FRAC**2) ** 0.5
        uneven = meter.high_wb_frac - meter.low_wb_frac > 0.01 + 1e-9
        return KnownMoisture(meter.wb_frac, sd, meter.mark, "meter", meter.at_utc_s, uneven)
    if tray is None:
        return None
    wb = float(tray.moisture_wb_frac[-1])
    sd = tray.dry_sd_g / float(tray.grams[-1])
    return KnownMoisture(wb, sd, "computed", "tray", int(tray.at_utc_s[-1]))
