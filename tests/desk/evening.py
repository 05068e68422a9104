"""The practice season’s rows as a farm’s own season on the evening of 14 January, in the real window: a copy for
each test that types into it.
"""

from __future__ import annotations

import atexit
import shutil
import tempfile
from collections.abc import Callable
from dataclasses import replace
from functools import lru_cache
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from farmdesk.desk import theme
from farmdesk.desk.lanes import Inline
from farmdesk.desk.pages import Desk
from farmdesk.desk.season import facts, put_handle
from farmdesk.desk.window import Window
from farmdesk.text import ENGLISH
from farmdesk.work.farm import OpenFarm
from farmdesk.work.practice import build_practice
from tests.desk.samples import EVENING, TIME


@lru_cache(maxsize=4)
def _as_made(until_utc_s: int, practice: bool) -> Path:
    folder = Path(tempfile.mkdtemp(prefix="farmdesk-evening-"))
    atexit.register(shutil.rmtree, folder, ignore_errors=True)
    path = folder / "evening.season"
    farm = build_practice(path, until_utc_s)
    things = farm.things
    farm.save_things(replace(things, farm=replace(things.farm, practice=practice)))
    farm.close()
    return path


def season_copy(folder: Path, until_utc_s: int = EVENING, *, practice: bool = False) -> Path:
    """A season file of one's own, with what was written by an instant [UTC s].

    As a farm's own season: in a practice season every hour would be now.
    """
    path = folder / "evening.season"
    shutil.copyfile(_as_made(until_utc_s, practice), path)
    return path


def open_window(qtbot, path: Path, size_px: tuple[int, int] = (1366, 768)) -> Window:
    """The real window on a season file, everything done on the spot. The caller has set the clock."""
    theme.load_fonts()
    theme.look().wear("light", 1.0)
    farm = OpenFarm.open(path)
    lanes = Inline()
    lanes.open(lambda: farm)
    desk = Desk(lanes, ENGLISH, TIME)
    put_handle(desk, facts(farm))
    window = Window(lanes, desk)
    window.go_box.wait.setInterval(20_000)  # on a busy computer the second of two letters still counts
    qtbot.addWidget(window)
    window.resize(*size_px)
    window.show()
    window.begin()
    desk.back_to_now()
    QApplication.processEvents()
    return window


def type_keys(qtbot, text: str) -> None:
    """Keys into whatever has them, as a hand does; a new line is Enter."""
    for letter in text:
        widget = QApplication.focusWidget()
        assert widget is not None
        if letter == "\n":
            qtbot.keyClick(widget, Qt.Key.Key_Return)
        else:
            qtbot.keyClicks(widget, letter)


def until(qtbot, true: Callable[[], bool]) -> None:
    """Let the window come to rest."""
    qtbot.waitUntil(true, timeout=3000)
