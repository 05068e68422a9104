"""The least: fetchall to NumPy, and one repaint of a plot that draws the peaks."""

import json
import sqlite3
import sys
import time
from pathlib import Path

import numpy as np
import pyqtgraph as pg
from PySide6.QtWidgets import QApplication

app = QApplication(sys.argv[:1])
plot = pg.PlotWidget()
plot.setDownsampling(auto=True, mode="peak")
plot.setClipToView(True)
plot.resize(1000, 600)
plot.show()
app.processEvents()

begun = time.perf_counter()
db = sqlite3.connect(Path(sys.argv[1]) / "rows.farm")
rows = np.array(db.execute("SELECT at_utc_s, value FROM logger_row WHERE entry_seq = 1").fetchall(), dtype=np.float64)
plot.plot(rows[:, 0], rows[:, 1])
plot.viewport().repaint()
app.processEvents()
took = time.perf_counter() - begun

db.close()
print(json.dumps({"drawn_s": took}))
