"""The rows of the bench: what is measured, against what, and how good is good enough."""

from __future__ import annotations

from tests.bench.pairs import Figure, Row

ROWS = (
    Row(
        "start",
        (Figure("painted_s", "process start to Today painted", "s", ratio_at_most=1.6),),
        floor="start",
        needs=("practice.farm",),
        painted=True,
    ),
    Row(
        "fold",
        (
            Figure("whole_ms", "300 lots, 20,000 entries to a picture", "ms", at_most=150),
            Figure("end_ms", "one more entry at the end", "ms", at_most=15),
            Figure("back_ms", "one more entry three weeks back", "ms", at_most=150),
        ),
    ),
    Row(
        "read",
        (
            Figure("file_s", "1,000,000 logger rows, file to season file", "s", ratio_at_most=1.5),
            Figure("peak_mb", "most memory meanwhile", "MB", at_most=500),
        ),
        floor="read",
        needs=("logger.csv",),
    ),
    Row(
        "draw",
        (Figure("drawn_s", "1,000,000 rows, season file to a painted curve", "s", ratio_at_most=1.5),),
        floor="draw",
        needs=("rows.farm",),
    ),
    Row(
        "sheet",
        (
            Figure("sheet_ms", "lot sheet of 25-13W from its story", "ms", ratio_at_most=2.0),
            Figure("many_s", "300 lot sheets", "s", at_most=20),
        ),
        floor="sheet",
        needs=("practice.farm", "sheet.json"),
    ),
    Row(
        "stall",
        (Figure("gap_ms", "longest wait of the window at work", "ms", at_most=50),),
        needs=("practice.farm", "logger.csv"),
    ),
    Row(
        "drying",
        (
            Figure("ensemble_s", "40 lots × 500 members × 720 hours", "s", at_most=1.0, faster_at_least=100),
            Figure("fit_ms", "one lot fitted", "ms", at_most=100),
        ),
        floor="solve_ivp_drying",
    ),
    Row("ferment", (Figure("forecast_ms", "one ferment's forecast", "ms", at_most=40),), needs=("practice.farm",)),
    Row(
        "air",
        (Figure("air_s", "humidity ratio, dew point, wet bulb of 1,000,000", "s", faster_at_least=50),),
        floor="psychrolib_air",
    ),
)
