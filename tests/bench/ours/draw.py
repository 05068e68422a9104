"""A million rows from the season file to a painted curve on the chart that the pages use."""

from __future__ import annotations

import json
import sys
import time
from pathlib import Path

from PySide6.QtWidgets import QApplication

from farmdesk.clock import FarmTime
from farmdesk.desk.charts.paint import Plot
from farmdesk.desk.theme import load_fonts, look
from farmdesk.notebook.season_file import SeasonFile
from farmdesk.text import ENGLISH, N_
from farmdesk.work.figures import LOGGER, Curve, Figure
from tests.bench import data


def main() -> None:
    app = QApplication(sys.argv[:1])
    load_fonts()
    look().wear()
    plot = Plot()
    plot.resize(1000, 600)
    plot.show()
    app.processEvents()
    time_of = FarmTime(data.ZONE)
    begun = time.perf_counter()
    with SeasonFile.open(Path(sys.argv[1]) / "rows.farm", read_only=True) as season:
        opened = time.perf_counter()
        x, y = season.logger_rows(["bench-1"])
        said = N_("bench", "A million rows.")
        curve = Curve(LOGGER, x, y)
        figure = Figure(said, said, "time", "°C", float(x[0]), float(x[-1]), float(y.min()), float(y.max()), (curve,))
        plot.show_figure(figure, ENGLISH, time_of)
        plot.viewport().repaint()
        app.processEvents()
        took = time.perf_counter() - opened
    assert len(x) == (data.TINY_N if "--tiny" in sys.argv else data.ROWS_N)
    assert opened > begun
    print(json.dumps({"drawn_s": took}))


main()
