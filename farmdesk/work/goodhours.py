"""Good drying hours: the clock that drying keeps. A rainy day moves it by its few good hours, not by a day."""

from __future__ import annotations

from datetime import date, timedelta

import numpy as np
from numpy.typing import NDArray

from farmdesk.clock import DAY_S
from farmdesk.picture.picture import Picture

OPEN_FROM_H, OPEN_UNTIL_H = 8, 17  # within these a day's good hours are counted evenly (common practice)
USUAL_DAYS_D = 14  # how many days back the usual good hours of a day are taken from


class GoodHours:
    """Good hours counted from an instant [UTC s] on, over the weather that is written down.

    Days whose weather is not written count the median of the last fourteen that are.
    """

    def __init__(self, picture: Picture, begin_utc_s: float, end_utc_s: float) -> None:
        time, weather = picture.time, picture.weather
        days = [date.fromisoformat(day) for day in sorted(weather)]
        lately = [weather[d.isoformat()].good_h for d in days if d <= time.farm_day(begin_utc_s)][-USUAL_DAYS_D:]
        usual = float(np.median(lately)) if lately else 6.0
        knots, hours, total = [float(begin_utc_s)], [0.0], 0.0
        day = time.farm_day(begin_utc_s)
        last = time.farm_day(end_utc_s) + timedelta(days=1)
        while day <= last:
            row = weather.get(day.isoformat())
            good = usual if row is None else row.good_h
            opens, closes = time.instant(day, OPEN_FROM_H), time.instant(day, OPEN_UNTIL_H)
            left = max(0.0, closes - max(opens, begin_utc_s)) / (closes - opens)
            if left > 0:
                knots += [max(opens, begin_utc_s) + 1e-3, float(closes)]
                hours += [total, total + good * left]
                total += good * left
            day += timedelta(days=1)
        self._knots = np.maximum.accumulate(np.array(knots))
        self._hours = np.array(hours)
        self._end = max(float(end_utc_s), self._knots[-1])
        self._rate_h_d = usual

    def at(self, at_utc_s: NDArray[np.float64]) -> NDArray[np.float64]:
        """Good hours [h] passed at instants [UTC s], same shape; negative before the beginning."""
        at = np.asarray(at_utc_s, dtype=np.float64)
        before = np.minimum(0.0, at - self._knots[0]) / DAY_S * self._rate_h_d
        return np.asarray(np.interp(at, self._knots, self._hours) + before)

    def between(self, first_utc_s: float, last_utc_s: float) -> float:
        """Good hours [h] between two instants [UTC s]."""
        a, b = self.at(np.array([first_utc_s, last_utc_s]))
        return float(b - a)
