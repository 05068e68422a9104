"""The window's start: wired together on real lanes, from a file, a held file, a bad file, and with a wrong clock."""

from __future__ import annotations

import logging
import os
import subprocess
import sys
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

from farmdesk import clock
from farmdesk.app import App, Hook, write_log
from farmdesk.desk import habits, theme
from farmdesk.desk.go import Target
from farmdesk.desk.theme import look
from farmdesk.notebook.season_file import SeasonFile
from farmdesk.picture.things import Farm, Things
from farmdesk.work.farm import OpenFarm
from farmdesk.work.keeping import remark
from tests.desk.evening import season_copy

ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture
def path(tmp_path):
    return season_copy(tmp_path, practice=True)


@pytest.fixture
def start(qtbot):
    """Start the program on a file and wait for its first page."""
    apps = []

    def start(path, **words):
        theme.load_fonts()
        app = App(path, **words)
        apps.append(app)
        with qtbot.waitSignal(app.window.painted, timeout=20_000):
            app.start()
        return app

    yield start
    for app in apps:
        app.window.close()
        app.finish()
        app.window.deleteLater()
        app.deleteLater()
    QApplication.processEvents()
    look().wear("light", 1.0)


def shown(app):
    return next(name for name, page in app.window.pages.items() if page is app.window.page)


def test_it_opens_on_today(start):
    app = start(None)
    assert shown(app) == "today"
    assert app.desk.practice
    assert app.desk.time.zone == "America/Tegucigalpa"
    assert app.window.edge.isVisible()
    assert app.code == 0


def test_the_practice_season_opens_on_the_morning_it_names_and_goes_on_from_there(start):
    before = clock.now()
    app = start(None)
    opens_at = app.desk.time.instant(date(2025, 1, 15), 5, 46)
    assert app.desk.as_of == pytest.approx(opens_at, abs=60)
    assert opens_at <= clock.now() < opens_at + 60
    assert app.desk.at_present
    assert app.desk.why_not_write() == ""
    app.window.close()
    app.finish()
    assert clock.now() >= before


def test_what_only_papers_and_charts_need_is_not_loaded_for_the_first_page(path, own_data):
    program = (
        "import sys\nfrom farmdesk.cli import main\n"
        f"code = main(['open', '--quit-after-paint', {str(path)!r}])\n"
        "print(code, *sorted({name.split('.')[0] for name in sys.modules} & "
        "{'scipy', 'pandas', 'reportlab', 'pyqtgraph', 'pypdfium2', 'PIL'}))"
    )
    env = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "PYTHONPATH": str(ROOT)}
    done = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, env=env, check=False)
    assert done.stderr == ""
    assert done.stdout == "painted\n0\n"


def test_a_second_window_reads_a_private_copy(start, path):
    with SeasonFile.open(path):
        app = start(path)
        assert app.desk.reading_only
        assert "nothing can be written here" in app.desk.why_not_write()
        assert app.window.go_box.note == app.desk.reading_only
        assert app.window.notice.sentence == app.desk.reading_only
        assert shown(app) == "today"


def test_a_bad_file_is_said_and_the_practice_season_stands_in(start, tmp_path, capsys):
    bad = tmp_path / "notes.season"
    bad.write_text("bring rope\n", encoding="utf-8")
    app = start(bad)
    assert app.code == 2
    assert app.window.notice.sentence
    assert app.desk.practice
    assert bad.read_text(encoding="utf-8") == "bring rope\n"
    assert capsys.readouterr().err.count("\n") == 1


def test_a_clock_that_is_behind_is_said_once(start, tmp_path, at):
    path = tmp_path / "own.season"
    at("2024-12-30T18:00-06:00")
    farm = OpenFarm.create(path, Things(Farm("Own farm", "25", "America/Tegucigalpa", first_day="2024-11-10",
                                             last_day="2025-03-12")))  # fmt: skip
    remark(farm, "first day", clock.now())
    farm.close()
    at("2019-01-01T00:00-06:00")
    app = start(path)
    assert "This computer’s clock shows 1 Jan 2019 00:00, but the last row was written 30 Dec 2024 18:00." in (
        app.window.notice.sentence
    )
    assert app.desk.time.local(app.desk.present).date() == date(2024, 12, 30)
    assert not app.desk.practice


def test_settings_are_kept_and_worn(start, path):
    app = start(path)
    app.desk.settle.emit(replace(app.desk.habits, theme="dark", scale=1.15, language="en"))
    assert look().palette.name == "dark"
    assert look().scale == 1.15
    kept = habits.load()
    assert (kept.theme, kept.scale, kept.language) == ("dark", 1.15, "en")
    assert shown(app) == "today"


@pytest.mark.parametrize("typed", ["scale=2.5", "scale=big", "theme=pink", "width=-"])
def test_spoilt_settings_count_as_never_set(own_data, typed):
    own_data.mkdir(parents=True, exist_ok=True)
    (own_data / "desk.ini").write_text(f"[General]\n{typed}\n", encoding="utf-8")
    found = habits.load()
    assert (found.scale, found.theme, found.width) == (1.0, "system", 1366)


def test_in_the_practice_season_the_handles_hour_is_now(qtbot, start):
    app = start(None)
    at = app.desk.time.instant(date(2025, 1, 12), 8)
    app.desk.move_to(at)
    assert app.desk.at_present
    assert app.desk.why_not_write() == ""
    assert 0 <= clock.now() - at < 60
    app.window.open(Target("page", "notebook"))
    qtbot.waitUntil(lambda: bool(app.window.page.all))
    assert all(line.row.written_utc_s <= app.desk.present for line in app.window.page.all)
    app.desk.back_to_now()
    assert app.desk.time.local(app.desk.as_of).year == 2025
    assert app.desk.as_of == app.desk.latest


def test_mistakes_are_written_down_and_told(qtbot, own_data, caplog):
    crashes = write_log()
    hook = Hook()
    try:
        raise ZeroDivisionError("by zero")
    except ZeroDivisionError as error:
        with qtbot.waitSignal(hook.caught) as caught:
            hook(type(error), error, error.__traceback__)
    crashes.close()
    handler = logging.getLogger().handlers[-1]
    logging.getLogger().removeHandler(handler)
    handler.close()
    assert isinstance(caught.args[0], ZeroDivisionError)
    assert "ZeroDivisionError: by zero" in (own_data / "farmdesk.log").read_text(encoding="utf-8")
    caplog.clear()


@pytest.mark.parametrize(("hours", "told"), [(14, True), (11, False), (24 * 400, True)])
def test_a_clock_that_leapt_ahead_is_said_once_and_nothing_written_then_is_lost(
    qtbot, start, tmp_path, at, hours, told
):
    path, last = tmp_path / "own.season", "2024-12-30T18:00-06:00"
    at(last)
    farm = OpenFarm.create(path, Things(Farm("Own farm", "25", "America/Tegucigalpa")))
    remark(farm, "first day", clock.now())
    written = farm.picture.book.last_written_utc_s
    farm.close()
    at.forward(hours * 3600)
    app = start(path)
    assert (f"{hours:,} h after the last row" in app.window.notice.sentence) is told
    app.lanes.do(lambda farm: remark(farm, "typed while the clock was wrong", clock.now()))
    qtbot.waitUntil(lambda: len(app.lanes._farm.picture.book.by_id) == 2)
    at(last)
    at.forward(60)  # the clock is set right again: written instants do not run backwards
    app.lanes.do(lambda farm: remark(farm, "after the clock was set", clock.now()))
    qtbot.waitUntil(lambda: len(app.lanes._farm.picture.book.by_id) == 3)
    with SeasonFile.open(path, read_only=True) as file:
        there = file.entries()
    assert [entry.written_utc_s for entry in there] == [written, written + hours * 3600, written + hours * 3600]
    assert there[2].happened_utc_s == written + 60
    assert not app.lanes._farm.picture.doubts
