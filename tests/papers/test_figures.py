"""Charts on paper: gaps stay gaps, ranges are hatched, each instrument has its shape, inside the box."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from io import BytesIO
from typing import Any

import numpy as np
import pytest

from farmdesk.papers.figures import caption, paint_figure
from farmdesk.papers.page import Page
from farmdesk.papers.place import Box
from farmdesk.text import ENGLISH, N_
from farmdesk.work.figures import HAND, LOGGER, METER, RAW, TRAY, Band, Curve, Figure, Flag
from tests.desk.samples import drying, ferment, jan
from tests.papers.made import TIME, Drawn, covered, read_back, watched

BOX = Box(60, 60, 320, 260)


def painted(figure: Figure, box: Box = BOX) -> tuple[Drawn, bytes, list[tuple[str, Any]]]:
    """What a figure leaves on the paper: marks, the file, and the calls of course, dot, frame, fill, pattern."""
    calls: list[tuple[str, Any]] = []
    with watched() as drawn:
        target = BytesIO()
        page = Page(target, ENGLISH, title="chart", farm="farm", made=date(2025, 1, 14))
        for name in ("course", "dot", "frame", "fill", "pattern", "shape", "level"):
            real = getattr(page, name)

            def kept(*args: Any, _name: str = name, _real: Any = real, **more: Any) -> None:
                calls.append((_name, args))
                _real(*args, **more)

            setattr(page, name, kept)
        paint_figure(page, box, figure, ENGLISH, TIME)
        page.done()
    return drawn, target.getvalue(), calls


def of(calls: list[tuple[str, Any]], name: str) -> list[Any]:
    """The arguments of all calls of one kind."""
    return [args for called, args in calls if called == name]


@pytest.mark.parametrize("figure", [drying(), drying(x_kind="good_h"), ferment(), ferment(9)], ids=str)
def test_a_chart_stays_in_its_box_and_its_words_apart(figure: Figure) -> None:
    drawn, _, _ = painted(figure)
    high = drawn.high
    for left, low, right, top in drawn.edges:
        assert left >= BOX.left - 3
        assert right <= BOX.right + 3
        assert high - top >= BOX.top - 6
        assert high - low <= BOX.bottom + 3
    assert not covered(drawn)
    assert min(size for _, _, size, _, _ in drawn.letters) >= 9.5


def test_a_hole_in_the_readings_is_no_line() -> None:
    x = np.array([jan(8, 16) + n * 86_400.0 for n in range(6)])
    whole = Curve(TRAY, x, np.array([50.0, 45, 40, 35, 30, 25]))
    holed = Curve(TRAY, x, np.array([50.0, 45, np.nan, 35, 30, 25]))
    base = replace(drying(), curves=(whole,), fan=None, flags=(), target=None)
    assert [len(args[0]) for args in of(painted(base)[2], "course")] == [6]
    assert [len(args[0]) for args in of(painted(replace(base, curves=(holed,)))[2], "course")] == [2, 3]


def test_each_instrument_has_its_shape() -> None:
    calls = painted(replace(drying(), fan=None, flags=(), rain=()))[2]
    squares = [args for args in of(calls, "frame") if len(args) > 3 and args[3] == "paper"]
    assert len(squares) == 7, "seven tray weights"
    assert [args[2] for args in of(calls, "dot")] == ["ink"] * 3, "three days of meter"
    assert len([args for args in of(calls, "shape") if args[1] == "ink"]) == 1, "one anchor, a triangle"


def test_a_second_curve_is_hollow_and_hangs_below() -> None:
    grounds = [args[2] for args in of(painted(ferment())[2], "dot")]
    assert grounds == ["ink"] * 5 + ["paper"] * 5


def test_every_ph_is_written() -> None:
    text = read_back(painted(ferment())[1])[0]
    for value in ("5.54", "5.40", "4.97", "4.67", "4.61", "mass °C", "washed 07:00"):
        assert value in text


def test_what_may_come_is_hatched_and_flagged_never_one_date() -> None:
    _, pdf, calls = painted(drying())
    assert "estimated" in [args[1] for args in of(calls, "pattern")]
    text = read_back(pdf)[0]
    for words in ("17 Jan", "18 Jan", "19 Jan", "earliest, likely, latest", "12 %", "skin-dry", "19.7"):
        assert words in text


def test_the_target_of_a_ferment_is_a_band_of_level_lines() -> None:
    assert "target" in [args[1] for args in of(painted(ferment())[2], "pattern")]


def test_wet_days_in_a_row_share_one_figure() -> None:
    days = tuple((float(jan(9 + n, 6)), float(jan(9 + n, 18)), mm) for n, mm in enumerate((38.0, 61.0, 44.0)))
    _, pdf, calls = painted(replace(drying(), rain=days))
    blocks = [args[0] for args in of(calls, "fill")]
    assert len(blocks) == 3
    assert blocks[1].height == max(block.height for block in blocks)
    assert "143 mm" in read_back(pdf)[0]


def struck(by_points: float) -> Figure:
    """Readings of a meter found to read high, as corrected and as read."""
    x = np.array([float(jan(n, 16)) for n in (12, 13, 14)])
    y = np.array([27.0, 22.0, 19.0])
    return replace(drying(), curves=(Curve(METER, x, y), Curve(RAW, x, y + by_points)), fan=None, flags=())


def test_values_as_read_are_crossed_where_they_can_be_told_apart() -> None:
    assert "crosses" in caption(struck(18.0), ENGLISH)
    assert "crosses" not in caption(struck(0.8), ENGLISH)
    assert len(painted(struck(18.0))[0].edges) > len(painted(struck(0.8))[0].edges)


def test_a_long_logger_file_keeps_its_peaks_and_stays_small() -> None:
    x = np.linspace(float(jan(6, 17)), float(jan(8, 7)), 60_000)
    y = np.full(x.size, 18.0)
    y[31_234] = 23.5
    figure = replace(
        ferment(), under=None, curves=(Curve(LOGGER, x, y),), y_low=15.0, y_high=25.0, x_high=float(jan(8, 8))
    )
    _, pdf, calls = painted(figure)
    (course,) = (args[0] for args in of(calls, "course"))
    assert len(course) < 2000
    assert min(at[1] for at in course) < BOX.top + 60
    assert len(pdf) < 60_000


def test_hours_on_the_axis_have_their_name() -> None:
    assert "good hours" in read_back(painted(drying(x_kind="good_h"))[1])[0]
    assert "good hours" not in read_back(painted(drying())[1])[0]


def test_a_gap_says_its_words() -> None:
    words = N_("figures", "no reading for {hours}", hours="54 h")
    band = Band("gap", float(jan(6, 19)), float(jan(7, 4)), "x", words)
    assert "no reading for 54 h" in read_back(painted(replace(ferment(), bands=(band,)))[1])[0]


@pytest.mark.parametrize("role", [TRAY, METER, HAND, LOGGER])
def test_one_reading_is_a_chart(role: str) -> None:
    x = np.array([float(jan(9))])
    figure = replace(drying(), curves=(Curve(role, x, np.array([40.0])),), fan=None, flags=(), rain=())
    assert painted(figure)[1].startswith(b"%PDF")


def test_a_figure_without_readings_still_has_its_axes() -> None:
    figure = replace(drying(), curves=(), fan=None, flags=(Flag(float(jan(17)), N_("f", "17 Jan")),), rain=())
    assert "17 Jan" in read_back(painted(figure)[1])[0]
