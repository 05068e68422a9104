"""Charts: what is painted, moved by keys and mouse, read aloud, and turned into a table."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pyqtgraph as pg
import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QColor, QImage, QMouseEvent, QWheelEvent
from PySide6.QtWidgets import QApplication

from farmdesk.clock import DAY_S, HOUR_S
from farmdesk.desk import theme
from farmdesk.desk.charts.chart import Chart
from farmdesk.desk.charts.marks import said_once
from farmdesk.desk.charts.paint import Plot
from farmdesk.desk.charts.readings import ends_of
from farmdesk.desk.lanes import Inline
from farmdesk.desk.pages import Desk
from farmdesk.desk.tables.points import heads_of, rows_of
from farmdesk.text import ENGLISH
from farmdesk.work.figures import HAND, LOGGER, METER, Curve, Figure
from tests.desk import samples


@pytest.fixture
def chart(qtbot) -> Chart:
    theme.load_fonts()
    theme.look().wear("light", 1.0)
    made = Chart(Desk(Inline(), ENGLISH, samples.TIME))
    qtbot.addWidget(made)
    made.resize(560, 300)
    made.show_figure(samples.drying())
    made.show()
    QApplication.processEvents()
    return made


def painted(chart: Chart) -> QImage:
    QApplication.processEvents()
    return chart.plot.grab().toImage()


def count(image: QImage, wanted: Callable[[QColor], bool], left: int = 0, right: int = 10_000) -> int:
    columns = range(max(0, left), min(right, image.width()))
    return sum(wanted(image.pixelColor(x, y)) for x in columns for y in range(image.height()))


def drawn(color: QColor) -> bool:
    return color.lightness() < 170  # a thin line spread over two rows of pixels; a hair line is lighter


def x_of(chart: Chart, at: float) -> int:
    view = chart.plot.upper.view(ENGLISH)
    assert view is not None
    return round(view.scale.x(at))


def test_its_accessible_name_is_its_sentence(chart):
    assert chart.accessibleName().startswith("19.7\u202f% on 14 Jan (three readings")
    assert chart.accessibleDescription().startswith("Rests on 7 tray weights")
    chart.show_figure(samples.ferment())
    assert "No reading between 05:00 and 07:00." in chart.accessibleName()
    assert "mass 16.3 to 18.6 °C" in chart.accessibleName()
    chart.show_figure(None)
    assert chart.accessibleName() == "There is nothing to draw yet."


def logged(gap: bool) -> Figure:
    at = samples.jan(6, 17) + np.arange(0.0, 12 * HOUR_S, 60.0)
    value = np.full(at.size, 5.07)
    if gap:
        value[240:480] = np.nan
    base = replace(samples.ferment(), bands=(), marks=(), under=None)
    return replace(base, y_low=4.2, y_high=5.8, curves=(Curve(LOGGER, at, value),))


@pytest.mark.parametrize("gap", [True, False])
def test_no_line_is_drawn_over_a_gap(chart, gap):
    chart.show_figure(logged(gap))
    image = painted(chart)
    a, b = x_of(chart, samples.jan(6, 21) + 900), x_of(chart, samples.jan(7, 1) - 900)
    view = chart.plot.upper.view(ENGLISH)
    assert view is not None
    row = round(view.scale.y(5.07))
    strip = image.copy(0, row - 2, image.width(), 5)  # grid lines stand elsewhere, for 5.07 lies on none
    assert (count(strip, drawn, a, b) == 0) is gap
    assert count(strip, drawn, x_of(chart, samples.jan(6, 18)), a - 20) > 50


def test_keys_move_along_come_closer_and_show_all(chart, qtbot):
    whole = chart.plot.in_view()
    qtbot.keyClick(chart, Qt.Key.Key_Plus)
    low, high = chart.plot.in_view()
    assert high - low == pytest.approx((whole[1] - whole[0]) / 1.25)
    qtbot.keyClick(chart, Qt.Key.Key_Right)
    moved = chart.plot.in_view()
    assert moved[0] == pytest.approx(low + 0.1 * (high - low))
    qtbot.keyClick(chart, Qt.Key.Key_Left)
    assert chart.plot.in_view() == pytest.approx((low, high))
    qtbot.keyClick(chart, Qt.Key.Key_Minus)
    assert chart.plot.in_view() == pytest.approx(whole)
    qtbot.keyClick(chart, Qt.Key.Key_Plus)
    qtbot.keyClick(chart, Qt.Key.Key_Home)
    assert chart.plot.in_view() == pytest.approx(whole)


def wheel(plot: Plot, steps: int) -> None:
    at = QPointF(plot.width() / 2, plot.height() / 2)
    event = QWheelEvent(
        at, plot.mapToGlobal(at), QPoint(), QPoint(0, 120 * steps), Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase, False,
    )  # fmt: skip
    QApplication.sendEvent(plot.viewport(), event)


def drag(plot: Plot, start: int, end: int) -> None:
    view, left, none = plot.viewport(), Qt.MouseButton.LeftButton, Qt.MouseButton.NoButton
    steps = [(QEvent.Type.MouseButtonPress, start, left, left)]
    steps += [(QEvent.Type.MouseMove, x, none, left) for x in range(start, end, -10)]
    steps += [(QEvent.Type.MouseButtonRelease, end, left, none)]
    for kind, x, button, held in steps:
        at = QPointF(x, 120)
        QApplication.sendEvent(
            view, QMouseEvent(kind, at, view.mapToGlobal(at), button, held, Qt.KeyboardModifier.NoModifier)
        )


def test_the_wheel_comes_closer_a_drag_moves_and_a_double_click_shows_all(chart, qtbot, monkeypatch):
    whole = chart.plot.in_view()
    wheel(chart.plot, 3)
    low, high = chart.plot.in_view()
    assert high - low < 0.9 * (whole[1] - whole[0])
    view = chart.plot.viewport()
    monkeypatch.setitem(pg.CONFIG_OPTIONS, "mouseRateLimit", 0)  # the moves of a test come faster than a hand's
    drag(chart.plot, 300, 240)
    assert chart.plot.in_view()[0] > low
    y_range = chart.plot.upper.box.viewRange()[1]
    assert y_range == pytest.approx([8.0, 57.0])
    qtbot.mouseDClick(view, Qt.MouseButton.LeftButton, pos=QPoint(300, 120))
    assert chart.plot.in_view() == pytest.approx(whole)


def test_a_new_reading_leaves_a_moved_view_alone_and_another_chart_does_not(chart, qtbot):
    qtbot.keyClick(chart, Qt.Key.Key_Plus)
    closer = chart.plot.in_view()
    chart.show_figure(samples.drying(6))
    assert chart.plot.in_view() == pytest.approx(closer)
    chart.show_figure(samples.ferment())
    assert chart.plot.in_view() == pytest.approx((samples.jan(6, 16), samples.jan(7, 8)))


def test_curves_are_kept_and_given_new_data(chart):
    first = list(chart.plot.upper.curves)
    for days_n in (3, 5, 7):
        chart.show_figure(samples.drying(days_n))
        chart.show_figure(samples.ferment())
    chart.show_figure(samples.drying(7))
    assert chart.plot.upper.curves[: len(first)] == first
    assert len(chart.plot.upper.curves) == len(first)


def test_a_long_logger_file_is_thinned_to_its_peaks(chart):
    x = np.linspace(samples.jan(6, 17), samples.jan(9, 17), 500_000)
    y = np.full(x.size, 18.0)
    y[123_457] = 24.0  # one hot minute must not be lost
    base = replace(samples.ferment(), y_low=10, y_high=25, x_low=x[0], x_high=x[-1], under=None, bands=(), marks=())
    chart.show_figure(replace(base, curves=(Curve(LOGGER, x, y),)))
    painted(chart)
    shown_x, shown_y = chart.plot.upper.curves[0].getData()
    assert shown_x.size < 20_000
    assert np.nanmax(shown_y) == 24.0


def test_points_are_float64_whatever_comes(chart):
    at = np.array([samples.jan(6, 17), samples.jan(6, 20)])  # integers
    chart.show_figure(replace(samples.ferment(), curves=(Curve(HAND, at, np.array([5, 4])),)))
    x, y = chart.plot.upper.curves[0].getData()
    assert x.dtype == y.dtype == np.float64


def test_it_changes_with_the_look(chart):
    light = painted(chart)
    theme.look().wear("dark")
    try:
        image = painted(chart)
        assert image.pixelColor(3, 3) == theme.palette("dark").paper
        assert light.pixelColor(3, 3) == theme.palette("light").paper
        assert chart.plot.upper.curves[0].opts["pen"].color() == theme.palette("dark").ink
    finally:
        theme.look().wear("light")


def test_its_table_has_every_point_and_turns_back(chart, qtbot):
    chart.setFocus()
    chart.toggle_twin()
    assert chart.as_table
    rows = rows_of(samples.drying(), ENGLISH, samples.TIME)
    assert ("14 Jan 16:12", "meter", "19.7\u202f%", "19.5–20.2") in rows
    assert sum(row[1] == "tray 1" for row in rows) == 7
    table = chart.findChild(type(chart._twin))
    assert table.model().rowCount() == len(rows)
    assert table.model().index(0, 2).data() == rows[0][2]
    chart.show_figure(samples.drying(3))
    assert table.model().rowCount() < len(rows)
    chart.toggle_twin()
    assert not chart.as_table


def test_good_hours_are_their_own_axis(chart):
    figure = samples.drying(x_kind="good_h")
    assert heads_of(figure, ENGLISH)[0] == "good hours"
    assert rows_of(figure, ENGLISH, samples.TIME)[0][0].endswith("h")
    chart.show_figure(figure)
    view = chart.plot.upper.view(ENGLISH)
    assert view is not None
    assert [label for _, label in view.x_ticks][:2] == ["0", "10"]


def test_flags_of_one_month_name_it_once():
    assert said_once(list(samples.drying().flags), ENGLISH) == ["17", "18", "19 Jan"]


def test_the_lots_own_reading_is_written_large_and_a_portions_with_its_bed():
    figure = samples.drying()
    wetted = Curve(METER, np.array([float(samples.jan(14, 17))]), np.array([24.1]), place="17")
    ends = ends_of(replace(figure, curves=(*figure.curves, wetted)))
    assert [(end.place, end.y) for end in ends] == [("", 19.7), ("17", 24.1)]


def test_with_three_flags_the_view_ends_a_little_after_the_last_and_stepping_back_shows_the_fan(chart, qtbot):
    base = samples.drying()
    far = base.x_high + 20 * DAY_S
    chart.show_figure(replace(base, x_high=far, subtitle=None))
    low, high = chart.plot.in_view()
    last = base.flags[-1].x
    assert last < high < last + 0.2 * (last - low)
    for _ in range(8):
        qtbot.keyClick(chart, Qt.Key.Key_Minus)
    assert chart.plot.in_view()[1] >= far
    chart.show_figure(replace(base, x_high=far, flags=base.flags[:2]))  # an open end: the whole fan
    assert chart.plot.in_view()[1] == pytest.approx(far)
