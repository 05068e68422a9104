"""The clerk's sheet of Tuesday 14 January, block D, afternoon: 26 slips, as the practice tables hold them."""

from __future__ import annotations

import csv

from farmdesk.paths import demo_data

with demo_data("weighins.csv").open(encoding="utf-8", newline="") as file:
    SLIPS = [
        (row["picker"], row["gross"])
        for row in csv.DictReader(file)
        if row["lot"] == "25-16W" and row["happened"].startswith("2025-01-14")
    ]
