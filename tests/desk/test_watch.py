"""The watched folder: a growing logger file moves the open curve; a new one is placed once; a half line waits."""

from __future__ import annotations

import time
from pathlib import Path

import pytest
from PySide6.QtWidgets import QFileDialog

from farmdesk.desk.go import Target
from farmdesk.desk.watch import FolderWatch, watch_of, whole_lines
from tests.desk import samples
from tests.desk.evening import open_window, season_copy, type_keys, until

NOW = samples.jan(7, 4)
HEAD = "Logger,L1\nDate time,Temperature (C)\n"


def lines(first_h: int, until_h: float, each_min: int = 15) -> str:
    """A logger's lines from an hour on the farm's 6 January on, in farm time."""
    rows = []
    minute = first_h * 60
    while minute <= until_h * 60:
        local = samples.TIME.local(samples.jan(6) + minute * 60)
        rows.append(f"{local:%Y-%m-%d %H:%M:%S},{17 + 0.01 * (minute - first_h * 60) / each_min:.1f}\n")
        minute += each_min
    return "".join(rows)


@pytest.fixture
def folder(tmp_path) -> Path:
    made = tmp_path / "loggers"
    made.mkdir()
    return made


@pytest.fixture
def window(qtbot, at, tmp_path):
    at(NOW + 60)
    made = open_window(qtbot, season_copy(tmp_path, NOW))
    made.open(Target("lot", "25-13W"))
    assert made.page.lot.story.vessels == ("T1",)
    return made


def logged(window) -> int:
    """Points of the logger's curve on the open chart."""
    under = window.page.lot.ferment.figure.under
    return sum(curve.x.size for curve in under.curves if curve.role == "logger") if under else 0


def place(window, qtbot, folder: Path) -> Path:
    """Put a file there and answer where it belongs, by keys."""
    file = folder / "L1_tank.csv"
    file.write_text(HEAD + lines(17, 24), encoding="utf-8")
    window.page.watch.set_folder(folder)
    guard = window.page.lot.file
    assert not guard.isHidden()
    assert not guard.hasFocus()  # nobody typed it: the keys stay where they were
    next(action for action in window.page.letters() if action.key == "w").run()
    type_keys(qtbot, "1")
    assert guard.isHidden()
    return file


def test_a_new_file_is_asked_about_once_and_then_read(window, qtbot, folder):
    place(window, qtbot, folder)
    until(qtbot, lambda: logged(window) == 29)
    assert window.page.watch.unplaced == []
    watch = window.page.watch
    watch.look()
    assert window.page.lot.file.isHidden()
    assert watch.placed["L1_tank.csv"].place == "T1"


def test_a_file_that_grows_moves_the_open_curve_within_two_seconds(window, qtbot, folder):
    file = place(window, qtbot, folder)
    until(qtbot, lambda: logged(window) == 29)
    began = time.perf_counter()
    with file.open("a", encoding="utf-8") as growing:
        growing.write(lines(25, 27))
    qtbot.waitUntil(lambda: logged(window) == 38, timeout=2000)
    assert time.perf_counter() - began < 2.0


def test_without_the_systems_notice_the_look_each_second_is_enough(window, qtbot, folder):
    file = place(window, qtbot, folder)
    watch = window.page.watch
    watch._system.removePaths([*watch._system.files(), *watch._system.directories()])
    watch._system.blockSignals(True)
    with file.open("a", encoding="utf-8") as growing:
        growing.write(lines(25, 27))
    qtbot.waitUntil(lambda: logged(window) == 38, timeout=2000)


def test_a_line_still_being_written_waits_for_its_end(window, qtbot, folder):
    file = place(window, qtbot, folder)
    watch = window.page.watch
    with file.open("a", encoding="utf-8") as growing:
        growing.write(lines(25, 26) + "2025-01-07 02:15:00,1")
    watch.look()
    until(qtbot, lambda: logged(window) == 34)
    for _ in range(9):
        watch.look()
    assert max(window.page.lot.ferment.figure.under.curves[0].y) < 18
    with file.open("a", encoding="utf-8") as growing:
        growing.write("7.9\n")
    watch.look()
    until(qtbot, lambda: logged(window) == 35)
    assert min(window.page.lot.ferment.figure.under.curves[0].y) > 16.5


def test_a_last_line_without_an_end_counts_once_the_file_rests(window, qtbot, folder, monkeypatch):
    file = place(window, qtbot, folder)
    with file.open("a", encoding="utf-8") as growing:
        growing.write("2025-01-07 00:15:00,17.9")
    watch = window.page.watch
    watch.look()
    until(qtbot, lambda: logged(window) == 29)
    monkeypatch.setattr("farmdesk.desk.watch.REST_S", 0.0)
    watch.look()
    until(qtbot, lambda: logged(window) == 30)


def test_a_file_may_be_left_alone_for_good(window, qtbot, folder):
    (folder / "notes.txt").write_text("not a logger\n", encoding="utf-8")
    watch = window.page.watch
    watch.set_folder(folder)
    guard = window.page.lot.file
    guard.setFocus()
    never = next(box for box in guard.boxes if box.text() == "leave this file alone")
    type_keys(qtbot, str(never.number))
    (folder / "notes.txt").write_text("not a logger, and longer\n", encoding="utf-8")
    watch.look()
    assert guard.isHidden()


def test_a_file_that_cannot_be_read_says_so_once(window, qtbot, folder):
    (folder / "L1.csv").write_text("nothing here\nat all\n", encoding="utf-8")
    watch = window.page.watch
    watch.set_folder(folder)
    window.page.lot.file.setFocus()
    told = []
    window.desk.told.connect(told.append)
    type_keys(qtbot, "1")
    for _ in range(3):
        watch.look()
    assert len([sentence for sentence in told if sentence]) == 1


def test_folder_and_places_are_remembered(window, qtbot, folder):
    place(window, qtbot, folder)
    window.page.watch.stop()
    again = FolderWatch(window.desk)
    assert again.folder == folder
    assert again.placed["L1_tank.csv"].lot == "25-13W"
    again.stop()


def test_nothing_is_watched_and_no_timer_runs_without_a_folder(window):
    watch = watch_of(window.desk)
    assert watch is window.page.watch
    assert watch.folder is None
    assert not watch._soon.isActive()


def test_whole_lines(tmp_path):
    file = tmp_path / "a.csv"
    file.write_bytes(b"a\nb\n")
    assert whole_lines(file, tmp_path) == file
    file.write_bytes(b"a\nb\nc")
    copies = tmp_path / "copies"
    copies.mkdir()
    assert whole_lines(file, copies).read_bytes() == b"a\nb\n"


def test_the_folder_is_chosen_by_key(window, folder, monkeypatch):
    monkeypatch.setattr(QFileDialog, "open", lambda dialog: None)
    next(action for action in window.page.letters() if action.key == "w").run()
    window.page.findChild(QFileDialog).fileSelected.emit(str(folder))
    assert window.page.watch.folder == folder
    assert str(folder) in window.notice.sentence
