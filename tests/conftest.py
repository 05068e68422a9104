"""What every test stands on: a screen in memory, folders of its own, a clock it sets, and silence."""

from __future__ import annotations

import itertools
import logging
import os
import shutil
import sys
import tempfile
import threading
from collections.abc import Iterator
from datetime import datetime
from pathlib import Path
from typing import Any

import pytest
from hypothesis import settings

from farmdesk import clock

# Before anything can import Qt. The folders hold what the desk remembers, so that no test meets the person's own.
SCRATCH = Path(tempfile.mkdtemp(prefix="farmdesk-tests-"))
COUNT = itertools.count(1)
os.environ["QT_QPA_PLATFORM"] = "offscreen"
os.environ["FARMDESK_DATA"] = str(SCRATCH / "data")
for name in ("XDG_CONFIG_HOME", "XDG_DATA_HOME"):
    os.environ[name] = str(SCRATCH / name.lower())

# The same examples on every run: a check that passes by luck says nothing.
settings.register_profile("quick", max_examples=50, deadline=None, derandomize=True, database=None)
settings.register_profile("ci", settings.get_profile("quick"))
settings.register_profile("long", settings.get_profile("quick"), max_examples=2000)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "quick"))


def pytest_unconfigure() -> None:
    shutil.rmtree(SCRATCH, ignore_errors=True)


@pytest.fixture(autouse=True)
def silent_log(caplog: pytest.LogCaptureFixture) -> Iterator[None]:
    """Fail on a log record at WARNING or above; a test that wants one reads `caplog` and then clears it."""
    yield
    loud = [
        f"{record.name}: {record.getMessage()}"
        for phase in ("setup", "call", "teardown")
        for record in caplog.get_records(phase)
        if record.levelno >= logging.WARNING
    ]
    if loud:
        pytest.fail("the log was not silent:\n" + "\n".join(loud), pytrace=False)


@pytest.fixture(autouse=True)
def nothing_left_behind(silent_log: None) -> Iterator[None]:
    """Fail when a thread, a shown window or a running timer of this test outlives it."""
    threads, windows = set(threading.enumerate()), _windows()
    yield
    clock.stand_at(None)
    left = [f"thread {thread.name}" for thread in set(threading.enumerate()) - threads if _is_ours(thread)]
    for address, window in _windows().items():
        if address not in windows:
            left += _alive(window)
    if left:
        pytest.fail("still there after the test: " + ", ".join(sorted(left)), pytrace=False)


@pytest.fixture(autouse=True)
def own_data(monkeypatch: pytest.MonkeyPatch) -> Path:
    """A data folder of this test alone; it comes into being when the program first asks for it."""
    folder = SCRATCH / f"data-{next(COUNT)}"
    monkeypatch.setenv("FARMDESK_DATA", str(folder))
    return folder


class Hands:
    """The hands of the program's clock: `at(1_736_898_060)`, `at("2025-01-14T18:41-05:00")`, `at.forward(3600)`."""

    def __init__(self) -> None:
        self.at_utc_s = 1_736_856_000.0  # Tuesday 14 January 2025, 12:00 UTC

    def __call__(self, at: float | str) -> int:
        """Set the clock to an instant [UTC s], or to ISO text with its offset."""
        if isinstance(at, str):
            moment = datetime.fromisoformat(at)
            if moment.tzinfo is None:
                raise ValueError(f"{at!r} has no offset")
            at = moment.timestamp()
        self.at_utc_s = float(at)
        return int(self.at_utc_s)

    def forward(self, by_s: float) -> int:
        """Move the clock on by a time [s]."""
        return self(self.at_utc_s + by_s)


@pytest.fixture
def at() -> Iterator[Hands]:
    """The program's clock, standing still until the test moves it."""
    hands = Hands()
    with clock.set_to(lambda: hands.at_utc_s):
        yield hands


def _is_ours(thread: threading.Thread) -> bool:
    # A dummy stands for a thread that Qt made; Python keeps it in the list after the thread has ended.
    if isinstance(thread, threading._DummyThread):
        return False
    thread.join(0.2)
    return thread.is_alive()


def _qt(module: str) -> Any:
    """A Qt module if somebody has loaded it: the check must not be what loads it."""
    return sys.modules.get(f"PySide6.{module}")


def _windows() -> dict[int, Any]:
    widgets = _qt("QtWidgets")
    if widgets is None or not isinstance(widgets.QApplication.instance(), widgets.QApplication):
        return {}
    core = _qt("QtCore")
    core.QCoreApplication.sendPostedEvents(None, core.QEvent.Type.DeferredDelete)
    address = sys.modules["shiboken6"].getCppPointer
    return {address(window)[0]: window for window in widgets.QApplication.topLevelWidgets()}


def _alive(window: Any) -> list[str]:
    name = window.objectName() or type(window).__name__
    found = [f"window {name}"] if window.isVisible() else []
    timers = window.findChildren(_qt("QtCore").QTimer)
    return found + [f"timer in {name}" for timer in timers if timer.isActive()]
