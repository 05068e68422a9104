"""Work beside the window: one lane owns the season file, one counts. The window itself never waits.

`ask` reads, `do` writes and remembers how to take it back, `count` runs what needs no season file.
Results come only to bound methods of QObjects: Qt then brings them to the window's own thread, and
drops them where the receiver is gone. Tests use `Inline`, which does everything on the spot.
"""

from __future__ import annotations

import contextlib
import gc
import logging
import sys
from collections.abc import Callable
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, QRunnable, QThreadPool, Signal, Slot

from farmdesk.errors import FarmError
from farmdesk.text import Text
from farmdesk.work.changes import Changes, Done

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

COLLECT = (2_000, 20, 100_000)  # allocations, small ones, middle ones: the last is as good as never
SWITCH_S = 0.0001  # how long one thread may hold the interpreter while another waits; the default is 5 ms
UNDO_STEPS = 50

log = logging.getLogger(__name__)


class _Carrier(QObject):
    """Carries one result home. It lives on the window's thread, so Qt queues what a lane emits."""

    done = Signal(object)
    failed = Signal(object)
    ended = Signal(object)


class _Job(QRunnable):
    def __init__(self, call: Callable[[], Any], carrier: _Carrier) -> None:
        super().__init__()
        self.call, self.carrier = call, carrier

    def run(self) -> None:
        try:
            result = self.call()
        except Exception as error:  # every failure goes home as a value: nothing may be lost on a lane
            self.carrier.failed.emit(error)
        else:
            self.carrier.done.emit(result)
        self.carrier.ended.emit(self.carrier)


def _at_home(method: Callable[..., None] | None) -> None:
    if method is not None and not isinstance(getattr(method, "__self__", None), QObject):
        raise TypeError("a result may only come to a bound method of a QObject")


class Lanes(QObject):
    """The two lanes, and the undo list. `changed` tells what a written act touched; `trouble` what went wrong.

    `trouble` carries an exception: a `FarmError` holds words for the person, anything else is a bug.
    """

    changed = Signal(object)
    trouble = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.undo_list = UndoList()
        self._farm: OpenFarm | None = None
        self._on_the_way: set[_Carrier] = set()
        self._closing = False
        self._desk, self._bench = self._pool(), self._pool()

    def _pool(self) -> QThreadPool | None:
        pool = QThreadPool(self)
        pool.setMaxThreadCount(1)
        pool.setExpiryTimeout(-1)
        return pool

    def open(
        self,
        opener: Callable[[], OpenFarm],
        then: Callable[[Any], None] | None = None,
        failed: Callable[[Any], None] | None = None,
    ) -> None:
        """Open a season on the desk lane: the thread that opens a file is the one that keeps it."""

        def opened() -> None:
            if self._farm is not None:
                self._farm.close()
                self._farm = None
            self._farm = opener()

        self.undo_list.clear()
        self._send(self._desk, opened, then, failed)

    def ask(
        self,
        query: Callable[[OpenFarm], Any],
        then: Callable[[Any], None],
        failed: Callable[[Any], None] | None = None,
    ) -> None:
        """Read from the season on the desk lane; the answer comes to `then`, a trouble to `failed`."""
        self._send(self._desk, lambda: query(self._open_farm()), then, failed)

    def do(
        self,
        act: Callable[[OpenFarm], Done],
        then: Callable[[Done], None] | None = None,
        failed: Callable[[Any], None] | None = None,
    ) -> None:
        """Write one act on the desk lane. Then: `then`, the undo list, and `changed` for every page.

        A question (`Asked`) comes to `failed` like any other trouble; the form asks and calls again.
        """
        self._act(act, _Written(self, then, None), failed)

    def count(
        self, job: Callable[[], Any], then: Callable[[Any], None], failed: Callable[[Any], None] | None = None
    ) -> None:
        """Work without the season file on the bench lane: a curve, a PDF, a file to read."""
        self._send(self._bench, job, then, failed)

    def close(self) -> None:
        """Take no more work, wait for what is under way, close the season file."""
        if self._closing:
            return
        self._send(self._desk, self._shut, None, None)
        self._closing = True
        for pool in (self._desk, self._bench):
            if pool is not None:
                pool.waitForDone()

    def _shut(self) -> None:
        if self._farm is not None:
            self._farm.close()
            self._farm = None

    def _open_farm(self) -> OpenFarm:
        if self._farm is None:
            raise LookupError("no season is open")
        return self._farm

    def _act(self, act: Callable[[OpenFarm], Done], written: _Written, failed: Callable[[Any], None] | None) -> None:
        self._send(self._desk, lambda: act(self._open_farm()), written.arrived, failed, keep=written)

    def _send(
        self,
        pool: QThreadPool | None,
        call: Callable[[], Any],
        then: Callable[[Any], None] | None,
        failed: Callable[[Any], None] | None,
        keep: QObject | None = None,
    ) -> None:
        _at_home(then)
        _at_home(failed)
        if self._closing:
            return
        carrier = _Carrier()
        if keep is not None:
            keep.setParent(carrier)
        if then is not None:
            carrier.done.connect(then)
        carrier.failed.connect(failed if failed is not None else self.stray)
        carrier.ended.connect(self._came_home)
        self._on_the_way.add(carrier)
        self._start(pool, _Job(call, carrier))

    def _start(self, pool: QThreadPool | None, job: _Job) -> None:
        assert pool is not None
        pool.start(job)

    @Slot(object)
    def _came_home(self, carrier: _Carrier) -> None:
        self._on_the_way.discard(carrier)
        carrier.deleteLater()  # here, and not on the lane, which may hold the last reference

    @Slot(object)
    def stray(self, error: Exception) -> None:
        """A trouble nobody asked for: the window tells it."""
        if not isinstance(error, FarmError):
            log.error("a lane stopped on a mistake of the program", exc_info=error)
        self.trouble.emit(error)


class Inline(Lanes):
    """Lanes that do everything at once on the spot, so that a test waits for nothing."""

    def _pool(self) -> QThreadPool | None:
        return None

    def _start(self, pool: QThreadPool | None, job: _Job) -> None:
        job.run()


class _Written(QObject):
    """Receives a written act: first the form that asked, then the undo list, then all pages."""

    def __init__(self, lanes: Lanes, then: Callable[[Done], None] | None, step: _Step | None) -> None:
        super().__init__()
        self.lanes, self.then, self.step = lanes, then, step

    @Slot(object)
    def arrived(self, done: Done) -> None:
        if self.then is not None:
            with contextlib.suppress(RuntimeError):  # the form was closed meanwhile; the act stands all the same
                self.then(done)
        if self.step is not None:
            self.step.back = done.inverse
        elif done.inverse is not None:
            self.lanes.undo_list.push(_Step(self.lanes, done))
        self.lanes.changed.emit(done.changes)


class _Step:
    """One act on the undo list. Taking back and doing again are acts of their own, honest rows in the notebook."""

    def __init__(self, lanes: Lanes, done: Done) -> None:
        self.lanes, self.label, self.back = lanes, done.label, done.inverse

    def run(self) -> None:
        """Take it back, or do it again, whichever comes next."""
        if self.back is not None:
            self.lanes._act(self.back, _Written(self.lanes, None, self), self.lanes.stray)


class UndoList:
    """Acts that can be taken back, the newest last, and those that were, to be done again.

    Plain lists, not Qt's stack: it frees its commands and so does Python, in whatever order a collection of waste
    comes upon them, and the program can fall.
    """

    def __init__(self) -> None:
        self.done: list[_Step] = []
        self.undone: list[_Step] = []

    def push(self, step: _Step) -> None:
        """An act was done; what was taken back before it can be done again no more."""
        self.done = [*self.done, step][-UNDO_STEPS:]
        self.undone.clear()

    def undo(self) -> None:
        """Take back the last act, if there is one."""
        if self.done:
            self.undone.append(self.done.pop())
            self.undone[-1].run()

    def redo(self) -> None:
        """Do again what was taken back last, if anything was."""
        if self.undone:
            self.done.append(self.undone.pop())
            self.done[-1].run()

    def clear(self) -> None:
        """Another season: nothing of this one can be taken back any more."""
        self.done.clear()
        self.undone.clear()


def next_undo(lanes: Lanes) -> Text | None:
    """The name of the act that undo would take back."""
    return lanes.undo_list.done[-1].label if lanes.undo_list.done else None


def share_the_interpreter() -> None:
    """Let the window's thread get its turn quickly while a lane works.

    A collection of the oldest generation holds every thread for about a tenth of a second here. What stands
    at the start is set aside from it, and it comes only after very many of the small ones.
    """
    sys.setswitchinterval(SWITCH_S)
    gc.collect()
    gc.freeze()
    gc.set_threshold(*COLLECT)


NOTHING_CHANGED = Changes()
