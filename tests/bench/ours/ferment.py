"""One running ferment's forecast, by the question that pages and papers ask; its readings are in hand."""

from __future__ import annotations

import json
import statistics
import sys
import time
from contextlib import closing
from pathlib import Path

from farmdesk.work.farm import OpenFarm
from farmdesk.work.forecasts import ferment_ready

CODE, PLACE, AT = "25-19A", "C1", "2025-01-24T12:00"


def main() -> None:
    with closing(OpenFarm.open(Path(sys.argv[1]) / "practice.farm", read_only=True)) as farm:
        at_utc_s = farm.time.read(AT)
        took = []
        for _ in range(6):
            picture = farm.picture.at(at_utc_s)  # a fresh one: nothing of the last answer is kept
            begun = time.perf_counter()
            ahead = ferment_ready(picture, picture.lots[CODE], PLACE)
            took.append(time.perf_counter() - begun)
            assert ahead is not None
    print(json.dumps({"forecast_ms": statistics.median(took[1:]) * 1000}))


main()
