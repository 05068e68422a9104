"""Drying as a state: water leaves through two resistances in series, driven by the weather.

Early on the layer can give off no more than sun and air carry away (the evaporation ceiling); later the bean itself
holds the water back. With y = X - Xe the water above equilibrium (dry basis) and w the drive, counted in days of
reference drying weather,

    dy/dw = - 1 / [ 1 / (K y (y/y_ref)^s) + b ],     b = dry matter per area / evaporation ceiling.

s = 0 is the plain two-resistance law with its Lambert solution. A small s lets the inner resistance rise (s > 0)
or fall with drying, as Page exponents under or over 1 do, but as a state: it means the same after a rainy day.
Where coffee is drier than its air, the same law carries it up towards equilibrium. Nothing crosses it.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

import numpy as np

from farmdesk.errors import NotPossible
from farmdesk.science.limits import FloatArray, Floats, R, fitting, give, single, within
from farmdesk.text import N_

MOISTURE_DB_FRAC: Final = (0.0, 19.0)  # as in `moisture`: 95 % wet basis
RATE_PER_D: Final = (1e-4, 50.0)  # far beyond any layer: a mechanical dryer does 2 to 3 a day
LAYER_D: Final = (0.0, 100.0)
DRIVE_D: Final = (0.0, 1e4)
SHAPE: Final = (-0.5, 0.5)
REFERENCE_GAP_DB_FRAC: Final = 0.3  # y_ref: where K is K whatever s; midway of drying on a log scale. Our choice.

_CLOSE = 1e-6  # a Newton step below this leaves its square as error
_MOST_STEPS = 40  # two or three do for an hour, six for a dose of weeks
_GONE = 30.0  # with s < 0 the gap closes in finite time: 1e-13 of it is as good as none


def gap_left(gap: FloatArray, dose: FloatArray, layer: FloatArray, shape: FloatArray | None = None) -> FloatArray:
    """The gap to equilibrium after a dose of drying; the unchecked kernel, arrays that broadcast.

    gap: X - Xe [dry basis, either sign]. dose: K w [-]. layer: K b [-]. shape: s, or None for 0.
    With y = y0 exp(-e) the law is  q (exp(s e) - 1)/s + K b y0 (1 - exp(-e)) = K w,  q = (y0/y_ref)^-s:
    one unknown e, rising and concave (s <= 0) or nearly so, solved by Newton steps from a midpoint guess.
    """
    size = np.abs(gap)
    held = layer * size
    e = dose / (1.0 + held * np.exp(-0.5 * dose / (1.0 + held)))
    if shape is None:
        for _ in range(_MOST_STEPS):
            fade = np.exp(-e)
            step = (e + held * (1.0 - fade) - dose) / (1.0 + held * fade)
            e = e - step
            if np.abs(step).max(initial=0.0) < _CLOSE:
                break
        return np.asarray(gap * np.exp(-e))
    s = np.where(np.abs(shape) < 1e-9, 1e-9, shape)
    q = (np.maximum(size, 1e-9) / REFERENCE_GAP_DB_FRAC) ** -s
    e = np.minimum(e / np.where(held < 1.0, q, 1.0), _GONE)
    for _ in range(_MOST_STEPS):
        fade, bend = np.exp(-e), np.expm1(s * e)
        step = (q * bend / s + held * (1.0 - fade) - dose) / (q * (bend + 1.0) + held * fade)
        before, e = e, np.clip(e - step, 0.0, _GONE)
        if np.abs(e - before).max(initial=0.0) < _CLOSE:
            break
    return np.asarray(gap * np.exp(-e))


@fitting
def moisture_after_db_frac(
    start_db_frac: R,
    drive_d: Floats,
    equilibrium_db_frac: Floats,
    rate_per_d: Floats,
    layer_d: Floats = 0.0,
    shape: Floats = 0.0,
) -> R:
    """Moisture [dry basis] after a stretch of steady weather.

    start, equilibrium [dry basis]; drive_d [days of reference weather]; rate_per_d K [1/d]; layer_d b [d];
    shape s [-]. All broadcast. Never past equilibrium; unchanged at zero drive. Raises NotPossible outside the
    limits named above.
    """
    start, drive, rest, rate, layer, s = _checked(
        start_db_frac, drive_d, equilibrium_db_frac, rate_per_d, layer_d, shape
    )
    return give(rest + gap_left(start - rest, rate * drive, rate * layer, s if np.any(s) else None), start_db_frac)


@fitting
def drive_needed_d(
    start_db_frac: Floats,
    target_db_frac: R,
    equilibrium_db_frac: Floats,
    rate_per_d: Floats,
    layer_d: Floats = 0.0,
    shape: Floats = 0.0,
) -> R:
    """How much steady reference weather [d] it takes from one moisture [dry basis] to another.

    ln(y0/y)/K + b (y0 - y) for s = 0. Infinite where equilibrium lies between or on the target. Arguments as for
    `moisture_after_db_frac`.
    """
    start, _, rest, rate, layer, s = _checked(start_db_frac, 0.0, equilibrium_db_frac, rate_per_d, layer_d, shape)
    target = within(target_db_frac, *MOISTURE_DB_FRAC, N_("drying", "A moisture on dry basis"))
    return give(drive_between(start - rest, target - rest, rate, layer, s), target_db_frac)


def drive_between(
    gap: FloatArray, target: FloatArray, rate: FloatArray, layer: FloatArray, s: FloatArray
) -> FloatArray:
    """Drive [d] from one gap to equilibrium to another, unchecked; infinite where it is not on the way.

    gap, target: X - Xe [dry basis]. rate: K [1/d]. layer: b [d]. s [-].
    """
    on_way = (gap * target > 0.0) & (np.abs(target) <= np.abs(gap))
    y0, y = np.where(on_way, np.abs(gap), 1.0), np.where(on_way, np.abs(target), 1.0)
    s = np.where(np.abs(s) < 1e-9, 1e-9, s)
    inner = (y0 / REFERENCE_GAP_DB_FRAC) ** -s * np.expm1(s * np.log(y0 / y)) / s
    return np.asarray(np.where(on_way, inner / rate + layer * (y0 - y), np.where(gap == target, 0.0, np.inf)))


def _checked(start: Floats, drive: Floats, rest: Floats, rate: Floats, layer: Floats, s: Floats) -> list[FloatArray]:
    return [
        within(start, *MOISTURE_DB_FRAC, N_("drying", "A moisture on dry basis")),
        within(drive, *DRIVE_D, N_("drying", "A drive"), "d"),
        within(rest, *MOISTURE_DB_FRAC, N_("drying", "An equilibrium moisture on dry basis")),
        within(rate, *RATE_PER_D, N_("drying", "A drying rate"), "1/d"),
        within(layer, *LAYER_D, N_("drying", "A layer resistance"), "d"),
        within(s, *SHAPE, N_("drying", "A shape of the drying curve")),
    ]


# --- changing weather -------------------------------------------------------------------------------------------


def _steps(
    start: FloatArray, drive: FloatArray, rest: FloatArray, *others: FloatArray
) -> tuple[FloatArray, FloatArray]:
    """Drive and rest step by step, once the rest is known to fit; refuses weather without a step."""
    try:
        drive, rest = np.broadcast_arrays(drive, rest)
        np.broadcast_shapes(start.shape, drive.shape[:-1], *(other.shape for other in others))
    except ValueError:
        raise NotPossible(N_("science", "These rows of numbers do not have the same length.")) from None
    if drive.ndim == 0 or drive.shape[-1] == 0:
        raise NotPossible(N_("drying", "Changing weather needs one drive for each step."))
    return drive, rest


def hour_by_hour(
    start: FloatArray,
    drive: FloatArray,
    rest: FloatArray,
    rate: FloatArray,
    layer: FloatArray,
    s: FloatArray | None = None,
) -> Iterator[FloatArray]:
    """The moisture after each step of changing weather, unchecked; steps lie on the last axis of drive and rest.

    start, rest [dry basis]. drive [days of reference weather]. rate: K [1/d]. layer: b [d]. s [-].
    """
    x = start
    held = rate * layer
    for i in range(drive.shape[-1]):
        w, xe = drive[..., i], rest[..., i]
        if w.any():
            x = xe + gap_left(x - xe, rate * w, held, s)
        yield x


def path_db_frac(
    start_db_frac: Floats,
    drive_d: FloatArray,
    equilibrium_db_frac: FloatArray,
    rate_per_d: Floats,
    layer_d: Floats = 0.0,
    shape: Floats = 0.0,
) -> FloatArray:
    """Moisture [dry basis] after every step of changing weather, shape (..., steps).

    drive_d [days of reference weather in the step] and equilibrium_db_frac, steps on the last axis; the rest,
    rate_per_d [1/d] and layer_d [d] among it, broadcasts over the other axes. Each step goes towards that step's own equilibrium and not past it.
    Raises NotPossible outside the limits, also for a gap (NaN) in the weather.
    """
    start, drive, rest, rate, layer, s = _checked(
        start_db_frac, drive_d, equilibrium_db_frac, rate_per_d, layer_d, shape
    )
    drive, rest = _steps(start, drive, rest, rate, layer, s)
    return np.stack(list(hour_by_hour(start, drive, rest, rate, layer, s if np.any(s) else None)), axis=-1)


def ready_after_steps(
    start_db_frac: Floats,
    drive_d: FloatArray,
    equilibrium_db_frac: FloatArray,
    rate_per_d: Floats,
    layer_d: Floats,
    target_db_frac: float,
) -> FloatArray:
    """After how many steps (with the part of the last one) each member is down at the target; inf where never.

    Arguments as for `path_db_frac`, members on the leading axes: 40 lots x 500 members x 720 hours is its
    everyday load. Within the last step the moisture is taken as a straight line.
    """
    start, drive, rest, rate, layer, _ = _checked(start_db_frac, drive_d, equilibrium_db_frac, rate_per_d, layer_d, 0.0)
    target = single(target_db_frac, *MOISTURE_DB_FRAC, N_("drying", "A moisture on dry basis"))
    drive, rest = _steps(start, drive, rest, rate, layer)
    shape = np.broadcast_shapes(start.shape, drive.shape[:-1], rate.shape, layer.shape)
    before = np.broadcast_to(start, shape)
    ready = np.where(before <= target, 0.0, np.inf)
    waiting = np.isinf(ready)
    for i, x in enumerate(hour_by_hour(before, drive, rest, rate, layer)):
        hit = waiting & (x <= target)
        if hit.any():
            ready[hit] = i + (before[hit] - target) / (before[hit] - x[hit])
            waiting &= ~hit
            if not waiting.any():
                break
        before = x
    return ready


# --- the station's equation for steady warm air -----------------------------------------------------------------

ROA_M: Final = 0.0143  # the three: Parra-Coronado, Roa-Mejía, Oliveros-Tascón 2008, from memory; lands within
ROA_N: Final = 0.87898  # 7 to 25 % of dryer times measured at 35, 45 and 55 °C (AIMS Agric. Food 2023), thin
ROA_Q: Final = 1.06439  # layer being the faster. Take it as good to 30 %.


def roa_ratio_frac(hours_h: R, deficit_kpa: float) -> R:
    """Moisture ratio of parchment in steady warm air: ln MR = -m (Pvs - Pv)^n t^q.

    hours_h [h], deficit_kpa [kPa] of the drying air (saturation minus actual vapour pressure).
    Source: Parra-Coronado et al. 2008, Rev. Bras. Eng. Agríc. Amb. 12(4):415-427, from memory.
    """
    hours = within(hours_h, 0.0, 10_000.0, N_("drying", "A drying time"), "h")
    thirst = single(deficit_kpa, 0.0, 50.0, N_("drying", "A vapour pressure deficit"), "kPa")
    return give(np.exp(-ROA_M * thirst**ROA_N * hours**ROA_Q), hours_h)


@fitting
def page_state_after_frac(ratio_frac: R, drive_d: Floats, rate_per_d: Floats, exponent: float) -> R:
    """Moisture ratio after more drive, for MR = exp(-(k w)^n) carried as a state from the ratio reached.

    Under steady weather it equals Page in clock time. ratio_frac in 0..1; drive_d [d]; rate_per_d [1/d].
    """
    ratio = within(ratio_frac, 0.0, 1.0, N_("drying", "A moisture ratio"))
    n = single(exponent, 0.3, 3.0, N_("drying", "A Page exponent"))
    drive = within(drive_d, *DRIVE_D, N_("drying", "A drive"), "d")
    rate = within(rate_per_d, *RATE_PER_D, N_("drying", "A drying rate"), "1/d")
    with np.errstate(divide="ignore"):
        been = (-np.log(ratio)) ** (1.0 / n)
    return give(np.exp(-((been + rate * drive) ** n)), ratio_frac)
