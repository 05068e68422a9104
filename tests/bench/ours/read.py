"""A logger's file into a season file: read, checked, written, in one verb's two steps."""

from __future__ import annotations

import json
import resource
import sys
import time
from pathlib import Path

from farmdesk.clock import FarmTime
from farmdesk.notebook.season_file import SeasonFile
from farmdesk.readers.logger_file import read_logger_file
from tests.bench import data


def main() -> None:
    folder = Path(sys.argv[1])
    target = folder / "ours-read.farm"
    target.unlink(missing_ok=True)
    with SeasonFile.create(target, data.things()) as season:
        begun = time.perf_counter()
        rows, problems = read_logger_file(folder / "logger.csv", FarmTime(data.ZONE))
        added_n = season.append_logger(data.entry(len(rows), rows.at_utc_s), rows.at_utc_s, rows.value)
        took = time.perf_counter() - begun
        peak_mb = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    assert added_n == (data.TINY_N if "--tiny" in sys.argv else data.ROWS_N)
    assert problems == []
    assert rows.at_utc_s[0] == data.FIRST_UTC_S
    print(json.dumps({"file_s": took, "peak_mb": peak_mb}))


main()
