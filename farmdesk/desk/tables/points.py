"""The table twin of a chart: every point in a row, for those who read figures rather than lines."""

from __future__ import annotations

import math

from farmdesk.clock import FarmTime
from farmdesk.text import N_, Moment, Text, Words
from farmdesk.work.figures import Figure

Row = tuple[str, str, str, str]

HEADS = (N_("points", "when"), N_("points", "what"), N_("points", "value"), N_("points", "from–to"))
X_HEADS = {
    "good_h": N_("points", "good hours"),
    "hours": N_("points", "hours"),
    "days": N_("points", "days"),
    "h20": N_("points", "hours at 20 °C"),
}
ROLES = {
    "tray": N_("points", "tray"),
    "meter": N_("points", "meter"),
    "anchor": N_("points", "anchor"),
    "hand": N_("points", "by hand"),
    "logger": N_("points", "logger"),
    "raw": N_("points", "as read, before it was corrected"),
    "usual": N_("points", "usual"),
}
LOW_HIGH = N_("points", "ahead")
MOST_ROWS = 20_000  # a logger's whole file is read on the chart, not in a table


def heads_of(figure: Figure, words: Words) -> list[str]:
    """The words above the columns."""
    heads = [words.say(head) for head in HEADS]
    if figure.x_kind in X_HEADS:
        heads[0] = words.say(X_HEADS[figure.x_kind])
    return heads


def rows_of(figure: Figure, words: Words, time: FarmTime) -> list[Row]:
    """Rows (when, what, value, spread) of a figure and of the smaller one under it, in order of x."""
    found: list[tuple[float, Row]] = []
    for part in (figure, figure.under):
        if part is None:
            continue
        decimals = max(part.y_decimals, 1)
        for curve in part.curves:
            what = words.say(curve.name or ROLES.get(curve.role, Text("points", curve.role)))
            if part is not figure:
                what = f"{words.say(part.title)}, {what}"
            spread = curve.low.size == curve.x.size and curve.high.size == curve.x.size
            for i in range(min(curve.x.size, MOST_ROWS)):
                x, y = float(curve.x[i]), float(curve.y[i])
                if not math.isfinite(y):
                    continue
                low, high = (float(curve.low[i]), float(curve.high[i])) if spread else (y, y)
                range_ = f"{words.number(low, decimals)}–{words.number(high, decimals)}" if high > low else ""
                found.append((x, (_when(part, x, words, time), what, words.number(y, decimals, part.y_unit), range_)))
        if part.fan is not None:
            for x, low, mid, high in zip(part.fan.x, part.fan.low, part.fan.mid, part.fan.high, strict=True):
                range_ = f"{words.number(min(low, high), decimals)}–{words.number(max(low, high), decimals)}"
                value = words.number(float(mid), decimals, part.y_unit, about=True)
                found.append((float(x), (_when(part, float(x), words, time), words.say(LOW_HIGH), value, range_)))
    found.sort(key=lambda row: row[0])
    return [row for _, row in found]


def _when(figure: Figure, x: float, words: Words, time: FarmTime) -> str:
    if figure.x_kind == "time":
        return words.say(Moment(time.local(x)))
    return words.number(x, 1, "d" if figure.x_kind == "days" else "h")
