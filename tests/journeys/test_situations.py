"""Hard evenings, by keys through the real window: the power cut, two half-days in one liner, pounds found late,
a clock that woke up in 2019 and hours after midnight.
"""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from collections import Counter
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from farmdesk.desk.go import Target
from farmdesk.notebook.verify import verify
from farmdesk.paths import demo_data
from farmdesk.picture.entries import Flow, LoggerFile, PaySheet, WeighIn
from farmdesk.work.farm import OpenFarm
from tests.desk import samples
from tests.desk.evening import open_window, season_copy
from tests.journeys.slips import SLIPS

ROOT = Path(__file__).resolve().parents[2]
TIME = samples.TIME


def keys(text: str) -> None:
    """Type as a hand does; a new line is Enter."""
    for letter in text:
        widget = QApplication.focusWidget()
        assert widget is not None
        if letter == "\n":
            QTest.keyClick(widget, Qt.Key.Key_Return)
        else:
            QTest.keyClicks(widget, letter)


def escape() -> None:
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Escape)


def heard(window) -> str:
    """What a screen reader can read on the page that is shown."""
    named = [w for w in window.page.findChildren(QWidget) if w.isVisible() and w.accessibleName()]
    return "\n".join([window.page.accessibleName(), *(w.accessibleName() for w in named)])


def farm(window) -> OpenFarm:
    return window.lanes._farm


def sacks(window, lot: str) -> list[tuple[str, int]]:
    return sorted((e.body.picker, e.body.gross_g) for e in farm(window).lot(lot).of(WeighIn))


def at_picking(qtbot, path: Path):
    window = open_window(qtbot, path)
    window.open(Target("page", "picking"))
    return window


# 2: the power is cut while typing


def killed_after(path: Path, rows: int, at_utc_s: int) -> int:
    """Let another process type the sheet and kill it after a row was said to be saved; how many were said."""
    child = subprocess.Popen(
        [sys.executable, "-m", "tests.journeys.typist", str(path), str(at_utc_s)], cwd=ROOT, stdout=subprocess.PIPE,
        stderr=subprocess.PIPE, text=True,
    )  # fmt: skip
    said = 0
    assert child.stdout is not None
    assert child.stderr is not None
    for line in child.stdout:
        said = int(line.removeprefix("row "))
        if said == rows:
            os.kill(child.pid, signal.SIGKILL)
            break
    child.wait(20)
    error = child.stderr.read()
    child.stdout.close()
    child.stderr.close()
    assert said == rows, error
    return said


def test_2_the_power_is_cut_at_row_19_and_nothing_is_doubled(qtbot, at, tmp_path, own_data):
    evening = samples.jan(14, 18) + 38 * 60 + 20
    path = season_copy(tmp_path, evening)
    killed_after(path, 19, evening + 60)
    assert verify(path) == []

    morning = at(float(samples.jan(15, 5) + 15 * 60))
    window = at_picking(qtbot, path)
    kept = len(sacks(window, "25-16W"))
    assert kept in (19, 20)  # row 20 may have been on its way; row 19 was said to be saved
    last = max(e.written_utc_s for e in farm(window).lot("25-16W").of(WeighIn))
    said = f"{kept} rows of 26 kept, the last at Tue 14 Jan {TIME.local(last):%H:%M}."
    assert said in window.page.accessibleName()  # one sentence

    keys("w")
    view = window.page.view
    assert (view.key.lot, view.key.block, view.key.half_day) == ("25-16W", "D", "pm")
    first = SLIPS[0]
    keys(f"{first[0]}\n{first[1]}+")  # from the top, as one does
    assert f"{kept} rows of this sheet were kept, the last Tue 14 Jan" in view.row.guard.sentence
    keys("1")
    for picker, weight in SLIPS[1:]:
        keys(f"{picker}\n{weight}+")
        assert view.row.guard.isHidden(), view.row.guard.sentence
    assert len(view.retyping) == kept
    wanted = sorted((picker, round(float(weight) * 1000)) for picker, weight in SLIPS)
    assert sacks(window, "25-16W") == wanted
    assert set(Counter(picker for picker, _ in sacks(window, "25-16W")).values()) == {1}
    after = [row for row in view.sheet_story.rows if row.written_utc_s >= morning]
    assert len(after) == 26 - kept  # and a mark shows which were typed after the cut
    assert view.written[0].note.startswith("kept")
    assert view.written[-1].note.startswith("written")
    total = sum(grams for _, grams in wanted)
    keys(f"+{total / 1000:.1f}\n\n")
    assert view.sums == f"26 rows sum to {total / 1000:.1f}\u202fkg, as the paper says"


# 7: two half-days in one liner


def test_7_two_half_days_in_one_liner_keep_their_shares_and_their_hours(qtbot, at, tmp_path):
    at(samples.jan(16, 12) + 30 * 60)
    window = at_picking(qtbot, season_copy(tmp_path, samples.jan(16, 4)))
    keys("g4\n25-21A\n\n")
    escape()
    keys("w")
    keys("21\nE\n1\n16\n1205\n1+")
    keys("7\n28+")
    escape()
    at(samples.jan(16, 12) + 45 * 60)
    window.desk.advance()
    window.page.go("fill")
    keys("S07\n28\n1240+")
    escape()
    at(samples.jan(16, 17) + 35 * 60)
    window.desk.advance()
    keys("w")
    if window.page.view.mode == "rows":
        keys("-" * 4)
    keys("21\nD\n2\n16\n1708\n1+")
    keys("11\n18+1")  # a small sack: asked, and kilograms it is
    escape()
    window.page.go("fill")
    keys("S07\n18\n1730+")
    assert window.page.view.written[0].cells["vessel"] == "S07"
    fills = [e for e in farm(window).lot("25-21A").of(Flow) if e.body.act == "fill"]
    assert [f"{TIME.local(e.happened_utc_s):%H:%M}" for e in fills] == ["12:40", "17:30"]
    escape()

    window.open(Target("lot", "25-21A"))
    keys("j")
    page = window.page
    assert "block E 61\u202f%, block D 39\u202f%" in page.accessibleName()
    assert "not organic: its blocks differ in status" in page.accessibleName()
    (mixed,) = page.story.mixed
    assert [(f"{TIME.local(f.at_utc_s):%H:%M}", f.grams) for f in mixed.fillings] == [
        ("12:40", 28_000),
        ("17:30", 18_000),
    ]
    assert {block: round(100 * share) for block, share in mixed.shares.items()} == {"E": 61, "D": 39}
    assert "S07, 46.0\u202fkg: block E 61\u202f%, block D 39\u202f%" in heard(window)
    assert "12:40" in heard(window)
    assert "17:30" in heard(window)


# 9: pounds typed as kilograms, and found when the pay is signed


def test_9_pounds_are_asked_about_and_what_is_found_later_is_listed_and_settled(qtbot, at, tmp_path):
    at(TIME.instant(date(2024, 12, 14), 17))
    path = season_copy(tmp_path, TIME.instant(date(2024, 12, 11), 18))  # 128 stands there as kilograms
    window = at_picking(qtbot, path)
    keys("z")
    pay = window.page.view
    week = pay.story.week
    assert (week.first_day, week.last_day) == (date(2024, 12, 8), date(2024, 12, 14))
    before = {row.picker: row for row in week.rows}["P07"].net_cents
    keys("q1")
    (signed,) = farm(window).picture.general_of(PaySheet)
    assert {line.name: line.value for line in signed.body.nets}["P07"] == before

    at(TIME.instant(date(2024, 12, 16), 19))
    window.desk.advance()
    window.page.leave()
    keys("w")
    view = window.page.view
    if view.mode == "rows":
        keys("-" * 30)
    keys("6\nD\n2\n9.12\n\n1+")
    assert view.key.day == date(2024, 12, 9)
    at_row = next(i for i, row in enumerate(view.written) if row.cells["picker"] == "P07")
    keys("-" * (len(view.written) - at_row))
    assert view.at == at_row
    delivered = farm(window).lot("25-06W").delivered_g
    keys("/")
    assert view.row.values() == {"picker": "P07", "gross": "128", "tare": ""}
    keys("128 lb+")
    told = view.row.guard.sentence
    assert "P07: 128.0\u202fkg → 58.1\u202fkg" in told
    assert f"25-06W {delivered / 1000:,.1f} → {(delivered - 69_940) / 1000:,.1f}\u202fkg delivered" in told
    assert "the week from 8 Dec is signed and stays; P07 gets" in told
    keys("1")
    assert farm(window).lot("25-06W").delivered_g == delivered - 69_940
    assert signed in farm(window).picture.general_of(PaySheet)  # the signed sheet is as it was
    escape()
    keys("z")
    now = window.page.view.story.week
    assert now.first_day == date(2024, 12, 15)
    settled = {row.picker: row for row in now.rows}["P07"]
    assert settled.adjustment_cents < -40_000
    assert settled.carried_cents == -settled.adjustment_cents  # nothing earned yet: it is carried
    assert "adjusted" in window.page.view.rows.table.heads

    # and the same trap, typed today, is asked about in its box
    window.page.leave()
    keys("w")
    view = window.page.view
    if view.mode == "rows":
        keys("-" * 30)
    keys("6\nD\n2\n16\n\n1+7\n122+")
    assert "times what P07 usually brings. Kilograms or pounds?" in view.row.guard.sentence
    keys("2")
    assert ("P07", 55_338) in sacks(window, "25-06W")


# 10: a clock that woke up in 2019, midnight, and a logger in UTC


def test_10_a_clock_in_2019_is_said_and_the_notebook_does_not_run_backwards(qtbot, at, tmp_path):
    at("2019-01-01T00:03:20+00:00")
    cut = samples.jan(14, 18) + 45 * 60
    window = at_picking(qtbot, season_copy(tmp_path, cut))
    last = farm(window).picture.book.last_written_utc_s
    assert window.desk.present == last  # the handle stands at the last row, not in 2019
    keys("w\n29.2+")
    entry = max(farm(window).lot("25-16W").of(WeighIn), key=lambda e: (e.written_utc_s, e.id))
    assert (entry.body.picker, entry.written_utc_s) == ("P20", last)
    assert TIME.farm_day(entry.happened_utc_s) == date(2025, 1, 14)


def test_10_half_past_two_on_tuesdays_sheet_is_the_night_of_tuesday(qtbot, at, tmp_path):
    at(samples.jan(15, 3))  # Wednesday, three in the morning: still Tuesday's work day
    window = at_picking(qtbot, season_copy(tmp_path, samples.jan(14, 18) + 45 * 60))
    window.page.go("fill")
    assert window.page.view.beside == "Tue 14 Jan"
    keys("T2\n600\n0230")
    assert "02:30 (night of Tue 14 Jan)" in window.page.view.told_hour()
    keys("+")
    (fill,) = [e for e in farm(window).lot("25-16W").of(Flow) if e.body.act == "fill"]
    assert f"{TIME.local(fill.happened_utc_s):%Y-%m-%d %H:%M}" == "2025-01-15 02:30"
    assert TIME.farm_day(fill.happened_utc_s) == date(2025, 1, 14)


def test_10_a_logger_in_utc_is_read_in_the_farms_hours(qtbot, at, tmp_path):
    now = samples.jan(6, 20)
    at(now)
    window = open_window(qtbot, season_copy(tmp_path, now))
    folder = tmp_path / "loggers"
    folder.mkdir()
    rows = demo_data("loggers", "L2_2025-01-07.csv").read_text(encoding="utf-8").splitlines()
    until = "2025-01-07 01:00"  # UTC, an hour ago on the farm
    head = next(i for i, row in enumerate(rows) if row.startswith("2025"))
    kept = [*rows[:head], *(row for row in rows[head:] if row[:16] <= until)]
    (folder / "L2_sealed.csv").write_text("\n".join(kept) + "\n", encoding="utf-8")
    window.open(Target("lot", "25-12A"))
    window.page.watch.set_folder(folder)
    guard = window.page.lot.file
    assert "L2_sealed.csv is new in the watched folder" in guard.accessibleName()
    keys("w1")  # w gives the keys to the question; C1, logger L2
    if not guard.isHidden():
        keys("1")
    (file,) = farm(window).lot("25-12A").of(LoggerFile)
    assert f"{TIME.local(file.body.first_utc_s):%d %H:%M}" == "03 17:00"  # the file says 23:00
    assert file.body.last_utc_s <= now


@pytest.mark.parametrize("text", ["02:30", "0230", "2.30"])
def test_10_hours_after_midnight_are_read_as_hands_write_them(text):
    assert f"{TIME.local(TIME.typed(date(2025, 1, 14), text)):%d %H:%M}" == "15 02:30"
