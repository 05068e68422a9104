"""Works out beside the window when lots will be done: a story shows what is typical until its forecast is there.

After a page has come to rest, the forecasts it could show are asked for on the desk lane, worked out one by
one on the bench, and kept; each one lets the page ask again. The lot that is open comes first. What cannot
be worked out is not tried again while it rests on the same papers.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, QTimer, Slot

from farmdesk.errors import FarmError
from farmdesk.work.changes import Changes

if TYPE_CHECKING:
    from farmdesk.ahead.range import Ahead
    from farmdesk.desk.window import Window
    from farmdesk.work.forecasts import Asked

REST_MS = 400  # how long a page must stand still first; the handle may be on its way
MOST_HOPELESS = 500


class Foresight(QObject):
    """One for the window. `look` may be called at any time."""

    def __init__(self, window: Window) -> None:
        super().__init__(window)
        self.window, self.lanes = window, window.lanes
        self._queue: list[Asked] = []
        self._working: Asked | None = None
        self._hopeless: set[Any] = set()
        self._rest = QTimer(self)
        self._rest.setSingleShot(True)
        self._rest.setInterval(REST_MS)
        self._rest.timeout.connect(self.look)
        window.desk.moved.connect(self.soon)
        window.lanes.changed.connect(self.soon)
        window.painted.connect(self.soon)

    @Slot()
    def soon(self, *_: object) -> None:
        """Look once the page has come to rest."""
        self._rest.start()

    @Slot()
    def look(self) -> None:
        """Ask which forecasts are missing at the instant that is shown."""
        if not self.window.isVisible():
            return
        at_utc_s = self.window.desk.as_of
        self.lanes.ask(lambda farm: farm.forecasts.missing(farm, at_utc_s), self._missing)

    def stop(self) -> None:
        """Work nothing more out: the window closes."""
        self._rest.stop()
        self._queue = []

    @Slot(object)
    def _missing(self, asked: Sequence[Asked]) -> None:
        shown = getattr(self.window.page, "wanted", "")
        wanted = [one for one in asked if (one.key, one.rests) not in self._hopeless]
        self._queue = sorted(wanted, key=lambda one: one.key[0] != shown)
        if self._working is None:
            self._next()

    def _next(self) -> None:
        if not self._queue or not self.window.isVisible():
            return
        self._working = self._queue.pop(0)
        self.lanes.count(self._working.work_out, self._worked_out, self._not_worked_out)

    @Slot(object)
    def _worked_out(self, answer: Ahead) -> None:
        asked = self._working
        assert asked is not None  # one is worked out at a time, and kept before the next
        self.lanes.ask(lambda farm: farm.keep_forecast(asked, answer), self._kept)

    @Slot(object)
    def _kept(self, changes: Changes) -> None:
        self._working = None
        self.lanes.changed.emit(changes)
        self._next()

    @Slot(object)
    def _not_worked_out(self, error: Exception) -> None:
        """Too little is known: what is typical stands."""
        asked, self._working = self._working, None
        if asked is not None:
            if len(self._hopeless) > MOST_HOPELESS:
                self._hopeless.clear()
            self._hopeless.add((asked.key, asked.rests))
        if not isinstance(error, FarmError):
            self.lanes.stray(error)
        self._next()
