"""The window's start: the only place, beside the command line, where the parts are wired together.

The window stands first, empty; the season is opened on the desk lane and Today is asked for. What only
charts, papers and file readers need is imported when they are first used.
"""

from __future__ import annotations

import faulthandler
import logging
import logging.handlers
import sys
from dataclasses import replace
from pathlib import Path
from types import TracebackType
from typing import IO

from PySide6.QtCore import QObject, QTimer, Signal, Slot
from PySide6.QtWidgets import QApplication

from farmdesk import clock, paths
from farmdesk.clock import FarmTime
from farmdesk.desk import habits, theme
from farmdesk.desk.foresee import Foresight
from farmdesk.desk.lanes import Lanes, share_the_interpreter
from farmdesk.desk.pages import Desk
from farmdesk.desk.season import Opened, facts, put_handle
from farmdesk.desk.window import Window
from farmdesk.desk.words import speak
from farmdesk.desk.words import wear as wear_words
from farmdesk.errors import FarmError
from farmdesk.work.changes import Changes

MINUTE_MS = 60_000
LOG_BYTES = 1_000_000

log = logging.getLogger("farmdesk")


class Hook(QObject):
    """Mistakes of the program, from any thread: written down whole, and told once, calmly, by the window."""

    caught = Signal(object)

    def __call__(self, kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        if issubclass(kind, KeyboardInterrupt):
            sys.__excepthook__(kind, error, trace)
            return
        log.critical("a mistake of the program", exc_info=(kind, error, trace))
        self.caught.emit(error)


class App(QObject):
    """One run of the window on one season at a time."""

    def __init__(self, path: Path | None, *, fresh: bool = False, quit_after_paint: bool = False) -> None:
        super().__init__()
        self.path, self.fresh = path, fresh
        self.habits = habits.load()
        self.code = 0
        self._sorry = ""
        theme.look().wear(self.habits.theme, self.habits.scale)
        theme.look().follow_system()
        words = speak(self.habits.speaks)
        self.lanes = Lanes()
        self.desk = Desk(self.lanes, words, FarmTime("UTC"))
        self.desk.habits = self.habits
        self.window = Window(self.lanes, self.desk)
        self.foresight = Foresight(self.window)
        self.window.resize(self.habits.width, self.habits.height)
        self.window.settled.connect(self._settled)
        self.desk.settle.connect(self._settle)
        self.desk.open_season.connect(self.open)
        self.desk.read_season.connect(self.read)
        self.lanes.changed.connect(self._changed)
        self._minute = QTimer(self)
        self._minute.setInterval(MINUTE_MS)
        self._minute.timeout.connect(self.desk.advance)
        if quit_after_paint:
            self.window.painted.connect(self._painted)

    def start(self) -> None:
        """Show the window, then open the season."""
        self.window.show()
        self.open(self.path)

    @Slot(object)
    def read(self, path: Path) -> None:
        """Open a season file only to be read."""
        self.open(path, read_only=True)

    @Slot(object)
    def open(self, path: Path | None, read_only: bool = False) -> None:
        """Open a season file; None is the practice season."""
        fresh = self.fresh
        self.fresh = False

        def opener():
            from farmdesk.work.farm import OpenFarm
            from farmdesk.work.seasons import practice_file

            return OpenFarm.open(path if path is not None else practice_file(fresh=fresh), read_only=read_only)

        self.path = path
        self.lanes.open(opener, self._is_open, self._not_open)

    @Slot(object)
    def _is_open(self, _: object) -> None:
        self.lanes.ask(facts, self._begin, self._not_open)

    @Slot(object)
    def _begin(self, opened: Opened) -> None:
        desk, say = self.desk, self.desk.words.say
        put_handle(desk, opened)
        if wear_words(opened.settings):
            desk.words = speak(self.habits.speaks)
        self.window.begin()
        told = opened.behind or opened.kept
        desk.tell(self._sorry or desk.reading_only or (say(told) if told is not None else ""))
        self._sorry = ""
        self._minute.start()
        if self.path is not None and not opened.past:
            self.habits = desk.habits = replace(self.habits, season=str(self.path))

    @Slot(object)
    def _changed(self, changes: Changes) -> None:
        if changes.things:
            self.lanes.ask(lambda farm: dict(farm.things.settings), self._wear_words)

    @Slot(object)
    def _wear_words(self, settings: dict[str, str]) -> None:
        """The farm says something otherwise from now on: every page is made anew."""
        if wear_words(settings):
            self.window.speak(speak(self.habits.speaks))

    @Slot(object)
    def _not_open(self, error: Exception) -> None:
        """The named season cannot be opened: say why, and show the practice season instead."""
        self.window.cannot(error)
        if self.path is not None and isinstance(error, FarmError):
            self.code, self._sorry = 2, self.window.notice.sentence
            sys.stderr.write(self._sorry + "\n")
            self.open(None)

    # settings of this computer

    def _settle(self, changed: habits.Habits) -> None:
        """Another language, look or size: wear it, keep it, and make the pages anew."""
        self.habits = changed
        self.desk.habits = changed
        theme.look().wear(changed.theme, changed.scale)
        self.window.speak(speak(changed.speaks))
        habits.save(changed)

    def _settled(self) -> None:
        self.habits = self.desk.habits = replace(self.habits, scale=theme.look().scale)
        habits.save(self.habits)

    def _painted(self) -> None:
        sys.stdout.write("painted\n")
        sys.stdout.flush()
        self.window.close()

    def finish(self) -> None:
        """Keep the window's size, and put the clock back."""
        self._minute.stop()
        self.foresight.stop()
        if not self.window.isMaximized() and not self.window.isFullScreen():
            self.habits = replace(self.habits, width=self.window.width(), height=self.window.height())
        habits.save(self.habits)
        if self.desk.practice:
            clock.stand_at(None)


def write_log() -> IO[str]:
    """Mistakes go to a file in the data folder, and nowhere else; returns the file for crashes below Python."""
    folder = paths.data_folder()
    handler = logging.handlers.RotatingFileHandler(
        folder / "farmdesk.log", maxBytes=LOG_BYTES, backupCount=1, encoding="utf-8", delay=True
    )
    handler.setFormatter(logging.Formatter("%(asctime)s %(levelname)s %(name)s: %(message)s"))
    logging.getLogger().addHandler(handler)
    return (folder / "crash.log").open("a", encoding="utf-8")


def run(path: Path | None, *, fresh: bool = False, quit_after_paint: bool = False) -> int:
    """Open the window on a season (None: the practice season) until it is closed; returns the exit code."""
    share_the_interpreter()
    qt = QApplication(sys.argv[:1])
    qt.setApplicationName("farmdesk")
    qt.setStyle("Fusion")
    theme.load_fonts()
    crashes = write_log()
    faulthandler.enable(crashes)
    hook = Hook()
    sys.excepthook = hook
    app = App(path, fresh=fresh, quit_after_paint=quit_after_paint)
    hook.caught.connect(app.window.cannot)
    app.start()
    code = qt.exec()
    app.finish()
    sys.excepthook = sys.__excepthook__
    faulthandler.disable()
    crashes.close()
    return code or app.code
