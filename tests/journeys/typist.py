"""Somebody types a weigh-in, in a process of its own: `python -m tests.journeys.typist SEASON AT_UTC_S`.

The real window with its real lanes. It says `row N` once the N-th row is on the disk, and goes on until it is
killed, or all rows are typed.
"""

from __future__ import annotations

import sys
import time
from collections.abc import Callable
from functools import partial
from pathlib import Path

from PySide6.QtCore import QObject, Qt, Slot
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from farmdesk import clock
from farmdesk.clock import FarmTime
from farmdesk.desk import theme
from farmdesk.desk.go import Target
from farmdesk.desk.lanes import Lanes, share_the_interpreter
from farmdesk.desk.pages import Desk
from farmdesk.desk.pages.weigh_in import WeighInView
from farmdesk.desk.season import facts, put_handle
from farmdesk.desk.window import Window
from farmdesk.desk.words import speak
from farmdesk.work.farm import OpenFarm
from tests.journeys.slips import SLIPS

WAIT_S = 20.0


class Begun(QObject):
    """Takes home what is to be known of the season."""

    opened = None

    @Slot(object)
    def take(self, opened: object) -> None:
        self.opened = opened


def until(true: Callable[[], bool]) -> None:
    """Let the window run until something is so."""
    end = time.monotonic() + WAIT_S
    while not true():
        if time.monotonic() > end:
            raise TimeoutError("the window did not come to rest")
        QTest.qWait(5)


def has_rows(view: WeighInView, n: int) -> bool:
    """Whether so many rows stand on the sheet, the next one open."""
    return len(view.written) >= n and not view.row.busy


def keys(text: str) -> None:
    for letter in text:
        widget = QApplication.focusWidget()
        if letter == "\n":
            QTest.keyClick(widget, Qt.Key.Key_Return)
        else:
            QTest.keyClicks(widget, letter)


def main() -> None:
    path, at_utc_s = Path(sys.argv[1]), int(sys.argv[2])
    share_the_interpreter()
    qt = QApplication(sys.argv[:1])
    theme.load_fonts()
    clock.stand_at(at_utc_s)
    lanes = Lanes()
    desk = Desk(lanes, speak("en"), FarmTime("UTC"))
    window = Window(lanes, desk)
    window.go_box.wait.setInterval(20_000)  # on a busy computer the second of two letters still counts
    window.resize(1366, 768)
    window.show()
    lanes.open(lambda: OpenFarm.open(path))
    begun = Begun()
    lanes.ask(facts, begun.take)
    until(lambda: begun.opened is not None)
    put_handle(desk, begun.opened)
    window.begin()
    desk.back_to_now()
    window.open(Target("page", "picking"))
    until(lambda: window.page.view.story is not None)
    keys("w")
    view = window.page.views["weigh"]
    until(lambda: bool(view.row.boxes) and view.row.has_keys())
    keys("16\nD\n2\n14\n1505\n1+")
    until(lambda: view.mode == "rows" and view.row.has_keys())
    for n, (picker, weight) in enumerate(SLIPS, start=1):
        keys(f"{picker}\n{weight}")
        keys("+")
        until(partial(has_rows, view, n))
        sys.stdout.write(f"row {n}\n")
        sys.stdout.flush()
    qt.processEvents()
    window.close()


if __name__ == "__main__":
    main()
