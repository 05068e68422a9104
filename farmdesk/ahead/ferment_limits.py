"""What to look at twice in a vessel, and what to act on now, by style: bounds are data, the hand decides.

Every worry is one line with its figures, action first, at one of two levels.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np

from farmdesk.ahead.ferment_fit import FermentLot, check
from farmdesk.ahead.learning import row_of
from farmdesk.ahead.range import ALARM, WARN, Worry
from farmdesk.clock import HOUR_S
from farmdesk.errors import NotPossible
from farmdesk.science.limits import within
from farmdesk.text import N_, Num, pct


def worries(
    lot: FermentLot,
    now_utc_s: float,
    *,
    sealed: bool = False,
    passed_utc_s: float | None = None,
    first_brix: float | None = None,
    now_brix: float | None = None,
) -> tuple[Worry, ...]:
    """All that is to be said of a lot at an instant [UTC s], alarms first.

    sealed: the vessel is shut. passed_utc_s [UTC s]: when the hand test passed. first_brix, now_brix [°Bx]: juice at
    filling and now. Raises NotPossible for a lot that cannot be, or a style without limits.
    """
    lot = lot.known_by(now_utc_s)
    check(lot, now_utc_s)
    row = row_of("ferment_limits", "pitched" if lot.pitched and lot.style == "washed" else lot.style)
    if "ph_alarm" not in row:
        raise NotPossible(N_("ferment", "There is no way of fermenting called “{name}”.", name=lot.style))
    hours_h = (now_utc_s - lot.start_utc_s) / HOUR_S
    found = _low_ph(lot, row) + _slow(lot, row, hours_h) + _mass(lot)
    if sealed:
        found += _hurdle(lot, hours_h)
    if passed_utc_s is not None:
        found += _after(row, (now_utc_s - passed_utc_s) / HOUR_S)
    if first_brix is not None and now_brix is not None:
        found += _sugar(row, first_brix, now_brix)
    return tuple(sorted(found, key=lambda worry: worry.level != ALARM))


def _low_ph(lot: FermentLot, row: Mapping[str, Any]) -> list[Worry]:
    if not lot.ph.size:
        return []
    last, facts = float(lot.ph[-1]), Num(float(lot.ph[-1]), "", 2)
    rise = row.get("rise_alarm_ph")
    if rise is not None and last - float(lot.ph.min()) >= rise - 1e-9:
        words = N_("ferment", "Open it and smell: pH has risen again to {ph}, which is the sign of spoilage.", ph=facts)
        return [Worry(ALARM, words)]
    if last <= row["ph_alarm"]:
        limit = Num(float(row["ph_alarm"]), "", 1)
        return [Worry(ALARM, N_("ferment", "End it now: pH {ph} is at or below {limit}.", ph=facts, limit=limit))]
    if last <= row["ph_warn"]:
        limit = Num(float(row["ph_warn"]), "", 1)
        return [Worry(WARN, N_("ferment", "Feel and smell it: pH {ph} is at or below {limit}.", ph=facts, limit=limit))]
    return []


def _slow(lot: FermentLot, row: Mapping[str, Any], hours_h: float) -> list[Worry]:
    if "slow_ph" not in row or not lot.ph.size or hours_h < row["slow_h"] or lot.ph[-1] <= row["slow_ph"]:
        return []
    words = N_(
        "ferment",
        "Look at the yeast: pH is still {ph} after {hours}.",
        ph=Num(float(lot.ph[-1]), "", 2),
        hours=Num(hours_h, "h"),
    )
    return [Worry(WARN, words)]


def _hurdle(lot: FermentLot, hours_h: float) -> list[Worry]:
    row = row_of("ferment_limits", "sealed")
    limit = float(row["hurdle_ph"])
    if hours_h < row["hurdle_warn_h"] or (lot.ph.size and float(lot.ph.min()) < limit):
        return []
    facts = {"limit": Num(limit, "", 1), "hours": Num(hours_h, "h")}
    if not lot.ph.size:
        level = ALARM if hours_h >= row["hurdle_alarm_h"] else WARN
        words = N_("ferment", "Take a pH: none was read in {hours} in a shut vessel.", hours=facts["hours"])
        return [Worry(level, words)]
    if hours_h >= row["hurdle_alarm_h"]:
        words = N_(
            "ferment",
            "Open it: no pH below {limit} after {hours} in a shut vessel; harmful germs may have grown.",
            **facts,
        )
        return [Worry(ALARM, words)]
    return [Worry(WARN, N_("ferment", "Take a pH: none below {limit} yet after {hours} in a shut vessel.", **facts))]


def _mass(lot: FermentLot) -> list[Worry]:
    read = lot.mass_c[~np.isnan(lot.mass_c)]
    if not read.size:
        return []
    row, last = row_of("ferment_limits", "mass"), float(read[-1])
    temp = Num(last, "°C", 1)
    if last > row["dying_c"]:
        return [Worry(ALARM, N_("ferment", "Cool it now: at {temp} yeast and good bacteria die.", temp=temp))]
    if last > row["alarm_c"]:
        return [Worry(ALARM, N_("ferment", "Cool it now: the mass is at {temp}.", temp=temp))]
    if last > row["high_c"]:
        return [Worry(WARN, N_("ferment", "Cool it: the mass is at {temp}.", temp=temp))]
    if last < row["low_c"]:
        return [Worry(WARN, N_("ferment", "It will be slow: the mass is at {temp}.", temp=temp))]
    return []


def _after(row: Mapping[str, Any], after_h: float) -> list[Worry]:
    if "after_warn_h" not in row or after_h < row["after_warn_h"]:
        return []
    level = ALARM if after_h >= row["after_alarm_h"] else WARN
    return [Worry(level, N_("ferment", "Rinse it: the hand test passed {hours} ago.", hours=Num(after_h, "h", 1)))]


def _sugar(row: Mapping[str, Any], first_brix: float, now_brix: float) -> list[Worry]:
    first = float(within(first_brix, 0.1, 60.0, N_("ferment", "A Brix reading"), "°Bx"))
    now = float(within(now_brix, 0.0, 60.0, N_("ferment", "A Brix reading"), "°Bx"))
    if now > first:
        raise NotPossible(N_("ferment", "The Brix rose; take a new sample from several depths."))
    used = 1.0 - now / first
    if "sugar_warn_frac" not in row or used <= row["sugar_warn_frac"]:
        return []
    return [Worry(WARN, N_("ferment", "Feel and smell it: {used} of the Brix is gone.", used=pct(used, 0)))]
