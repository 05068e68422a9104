"""The longest time the window's thread was held, by a timer of 5 ms, while both lanes are busy.

Today and a lot are repainted ten times a second; meanwhile a million rows are read in, a season is folded, 40
forecasts are worked out and 100 sheets are written.
"""

from __future__ import annotations

import json
import sys
import tempfile
import time
from io import BytesIO
from pathlib import Path

from PySide6.QtCore import QObject, Qt, QTimer, Slot
from PySide6.QtWidgets import QApplication

from farmdesk.clock import FarmTime
from farmdesk.desk.go import Target
from farmdesk.desk.lanes import Lanes, share_the_interpreter
from farmdesk.desk.pages import Desk, Page
from farmdesk.desk.pages.lots import LotsPage
from farmdesk.desk.pages.today import TodayPage
from farmdesk.desk.theme import load_fonts, look
from farmdesk.papers.lot_sheet import write_lot_sheet
from farmdesk.picture.picture import fold
from farmdesk.text import ENGLISH
from farmdesk.work.farm import OpenFarm
from farmdesk.work.reading_in import read_logger_file
from farmdesk.work.sheet import sheet_story
from tests.bench import data
from tests.bench.ours.fold import notebook

CODE = "25-13W"
EVENING = "2025-01-14T18:41"
BEAT_MS, REPAINT_MS = 5, 50
TINY = "--tiny" in sys.argv


class Bench(QObject):
    """Two pages that repaint, a beat that is clocked, and the work one after the other."""

    def __init__(self, farm_path: Path, logger_path: Path) -> None:
        super().__init__()
        self.logger_path = logger_path
        self.lanes = Lanes(self)
        self.lanes.trouble.connect(self.fail)
        self.lanes.open(lambda: OpenFarm.open(farm_path), self.opened)
        self.longest_s, self.last, self.left, self.failed = 0.0, 0.0, 4, False
        self.entries = notebook(10, 200) if TINY else notebook(300, 20_000)
        self.pages: list[Page] = []
        self.beat, self.paints = QTimer(self), QTimer(self)
        self.beat.setTimerType(Qt.TimerType.PreciseTimer)
        self.beat.timeout.connect(self.beaten)
        self.paints.timeout.connect(self.paint)

    @Slot(object)
    def opened(self, _: object) -> None:
        self.lanes.ask(lambda farm: farm.time, self.at_home)

    @Slot(object)
    def at_home(self, farm_time: FarmTime) -> None:
        desk = Desk(self.lanes, ENGLISH, farm_time, self)
        desk.as_of = desk.present = farm_time.read(EVENING)
        for kind in (TodayPage, LotsPage):
            page = kind(desk)
            page.resize(1366, 700)
            page.shown.connect(self.shown)
            page.show()
            page.refresh()
            self.pages.append(page)
        self.pages[1].open_at(Target("lot", CODE))

    @Slot()
    def shown(self) -> None:
        if not self.beat.isActive() and not any(page.stale for page in self.pages):
            QTimer.singleShot(500, self, self.work)  # what comes with the first painting is no work beside it

    def work(self) -> None:
        if self.beat.isActive():
            return
        self.last = time.perf_counter()
        self.beat.start(BEAT_MS)
        self.paints.start(REPAINT_MS)
        path = self.logger_path
        self.lanes.do(
            lambda farm: read_logger_file(farm, path, lot=CODE, place="T1", logger="L1", sure=True).done,
            self.one_done,
        )
        self.lanes.count(lambda: fold(self.entries, data.things()), self.one_done)
        self.lanes.ask(forecasts, self.foresee)
        self.lanes.ask(stories, self.sheets)

    @Slot(object)
    def foresee(self, asked: list) -> None:
        self.lanes.count(lambda: [one.work_out() for one in asked], self.one_done)

    @Slot(object)
    def sheets(self, answer: tuple) -> None:
        told, farm_time = answer
        self.lanes.count(lambda: write(told, farm_time), self.one_done)

    @Slot(object)
    def one_done(self, _: object) -> None:
        self.left -= 1
        if not self.left:
            self.beat.stop()
            QApplication.quit()

    @Slot()
    def beaten(self) -> None:
        now = time.perf_counter()
        self.longest_s, self.last = max(self.longest_s, now - self.last), now

    @Slot()
    def paint(self) -> None:
        page = self.pages.pop(0)  # by turns: each of the two ten times a second
        self.pages.append(page)
        page.repaint()

    @Slot(object)
    def fail(self, error: Exception) -> None:
        self.failed = True
        print(error, file=sys.stderr)
        QApplication.quit()


def forecasts(farm: OpenFarm) -> list:
    """Forty forecasts: every one of some evenings."""
    first, asked = farm.time.read(EVENING), []
    for evening in range(2 if TINY else 12):
        asked += farm.forecasts.missing(farm, first + evening * 86_400)
    assert TINY or len(asked) >= 40
    return asked[: 2 if TINY else 40]


def stories(farm: OpenFarm) -> tuple:
    codes = sorted(code for code, lot in farm.picture.lots.items() if lot.birth is not None)
    return [sheet_story(farm, code) for code in codes[: 2 if TINY else None]], farm.time


def write(told: list, farm_time: FarmTime) -> None:
    for n in range(2 if TINY else 100):
        write_lot_sheet(told[n % len(told)], ENGLISH, BytesIO(), time=farm_time)


def main() -> int:
    folder = Path(sys.argv[1])
    app = QApplication(sys.argv[:1])
    share_the_interpreter()
    load_fonts()
    look().wear()
    with tempfile.TemporaryDirectory() as own:
        copy = Path(own) / "practice.farm"
        copy.write_bytes((folder / "practice.farm").read_bytes())
        bench = Bench(copy, folder / "logger.csv")
        app.exec()
        bench.lanes.close()
    print(json.dumps({"gap_ms": bench.longest_s * 1000}))
    return int(bench.failed)


if __name__ == "__main__":
    sys.exit(main())
