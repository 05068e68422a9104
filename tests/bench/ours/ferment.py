"""One running ferment's forecast from its readings in hand."""

from __future__ import annotations

import json
import statistics
import sys
import time
from contextlib import closing
from pathlib import Path

from farmdesk.ahead.ferment import forecast_ferment
from farmdesk.work.farm import OpenFarm
from farmdesk.work.forecasts import running_fill
from farmdesk.work.foresight import ferment_lot

CODE, PLACE, AT = "25-19A", "C1", "2025-01-24T18:46"


def main() -> None:
    with closing(OpenFarm.open(Path(sys.argv[1]) / "practice.farm", read_only=True)) as farm:
        at_utc_s = farm.time.read(AT)
        picture = farm.seen(at_utc_s)
        lot = picture.lots[CODE]
        fill = running_fill(picture, lot, PLACE)
        assert fill is not None
        known = ferment_lot(farm, picture, lot, fill)
        assert known is not None
        assert known.ph.size >= 4
        took = []
        for seed in range(6):  # the first loads the solvers
            begun = time.perf_counter()
            ahead = forecast_ferment(known, float(at_utc_s), seed=seed)
            took.append(time.perf_counter() - begun)
            assert ahead.source == "ph"
    print(json.dumps({"forecast_ms": statistics.median(took[1:]) * 1000}))


main()
