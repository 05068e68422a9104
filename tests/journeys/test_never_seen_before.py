"""Somebody sits down before it for the first time: finds a lot, reads it, writes a reading, prints its sheet.

By keys alone, through the real window, in the practice season on the evening of 14 January.
"""

from __future__ import annotations

import re
from pathlib import Path

import pypdfium2
import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QFileDialog, QWidget

from farmdesk.desk.charts.chart import Chart
from farmdesk.desk.window import Window
from tests.desk import samples
from tests.desk.evening import open_window, season_copy, type_keys, until

ALT, CTRL = Qt.KeyboardModifier.AltModifier, Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def window(qtbot, at, tmp_path, request) -> Window:
    at(samples.EVENING + 60)
    return open_window(qtbot, season_copy(tmp_path, practice="first_evening" in request.node.name))


def press(qtbot, key: Qt.Key, modifier: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
    widget = QApplication.focusWidget()
    assert widget is not None, "nothing has the keys"
    qtbot.keyClick(widget, key, modifier)


def heard(window: Window) -> str:
    """What a screen reader can read on the page that is shown."""
    assert window.page is not None
    parts = [window.page.accessibleName()]
    parts += [w.accessibleName() for w in window.page.findChildren(QWidget) if w.isVisible() and w.accessibleName()]
    return "\n".join(parts)


def walk(qtbot, most: int = 30) -> list[QWidget]:
    """Everything that Tab reaches, in order, until it comes round."""
    found: list[QWidget] = []
    for _ in range(most):
        widget = QApplication.focusWidget()
        if widget is None or widget in found:
            break
        found.append(widget)
        press(qtbot, Qt.Key.Key_Tab)
    return found


def test_a_first_evening_by_keys_alone(window, qtbot, tmp_path, monkeypatch):
    assert window.page.place == "today"
    assert "practice" in heard(window)
    litres_before = window.page.story.water_g

    # finds the lot: its code, typed anywhere
    type_keys(qtbot, "25-13\n")
    assert window.page.place == "lots"
    assert window.page.accessibleName().startswith("25-13W")
    assert "washed, block C" in heard(window)

    # reads its two curves: Tab comes to each, and each is one sentence
    charts = [widget for widget in walk(qtbot) if isinstance(widget, Chart)]
    assert len(charts) == 2
    ferment, drying = (chart.accessibleName() for chart in charts)
    assert "pH 5.54 to" in ferment
    assert "target 4.4–4.7" in ferment
    assert "19.7\u202f% on 14 Jan" in drying
    assert "12\u202f% on" in drying

    # and as a table, and back
    while QApplication.focusWidget() is not charts[1]:
        press(qtbot, Qt.Key.Key_Tab)
    type_keys(qtbot, "t\n")
    assert charts[1].as_table
    type_keys(qtbot, "t\n")
    assert not charts[1].as_table

    # writes a reading: the number, and one key
    type_keys(qtbot, "19.4\n")
    until(qtbot, lambda: "19.4\u202f% on 14 Jan" in charts[1].accessibleName())
    assert re.search(r"written \d\d:\d\d", heard(window))
    cards = window.page.list.model()
    told = [cards.index(i, 0).data() for i in range(cards.rowCount())]
    assert any("25-13W T" in card and "19.4\u202f%" in card for card in told)

    # Today and the yard have followed
    press(qtbot, Qt.Key.Key_T, ALT)
    assert window.page.place == "today"
    assert window.page.story.water_g < litres_before
    lying = {lot.lot: lot.moisture_wb_frac for bed in window.page.story.yard.places for lot in bed.lying}
    assert lying["25-13W"] == pytest.approx(0.194)
    press(qtbot, Qt.Key.Key_Y, ALT)
    assert window.page.place == "yard"
    lying = {lot.lot: lot.moisture_wb_frac for bed in window.page.story.places for lot in bed.lying}
    assert lying["25-13W"] == pytest.approx(0.194)

    # back to the lot, and its sheet on paper
    press(qtbot, Qt.Key.Key_Left, ALT)
    press(qtbot, Qt.Key.Key_Left, ALT)
    assert window.page.accessibleName().startswith("25-13W")
    type_keys(qtbot, "p\n")
    assert window.page.place == "papers"
    assert "Lot sheet 25-13W: 1 page." in heard(window)
    sheet = tmp_path / "25-13W.pdf"
    monkeypatch.setattr(QFileDialog, "open", lambda dialog: dialog.fileSelected.emit(str(sheet)))
    type_keys(qtbot, "w\n")
    text = read(sheet)
    assert "25-13W" in text
    assert "practice" in text


def read(path: Path) -> str:
    """The words on a PDF's first page."""
    document = pypdfium2.PdfDocument(path)
    page = document[0]
    words = page.get_textpage()
    text = words.get_text_bounded()
    words.close()
    page.close()
    document.close()
    return str(text)


def test_a_slip_of_the_hand_is_asked_about_and_undone(window, qtbot):
    type_keys(qtbot, "25-13\n")
    type_keys(qtbot, "91.4\n")  # the digits swapped: above what a meter can tell
    assert "above what a meter can tell" in heard(window)
    type_keys(qtbot, "0")  # goes back; the box is whole again under the hand
    type_keys(qtbot, "19.4\n")
    until(qtbot, lambda: "19.4\u202f% on 14 Jan" in heard(window))
    press(qtbot, Qt.Key.Key_Z, CTRL)
    until(qtbot, lambda: "19.7\u202f% on 14 Jan" in heard(window))


def test_yesterday_is_read_but_not_written(window, qtbot):
    type_keys(qtbot, "25-13\n")
    type_keys(qtbot, "d13\n")
    until(qtbot, lambda: "22.7\u202f% on 13 Jan" in heard(window) or "23.0\u202f% on 13 Jan" in heard(window))
    before = heard(window)
    type_keys(qtbot, "r\n")
    assert "past" in window.notice.sentence
    press(qtbot, Qt.Key.Key_Escape)
    press(qtbot, Qt.Key.Key_End, CTRL)
    until(qtbot, lambda: "19.7\u202f% on 14 Jan" in heard(window))
    assert before != heard(window)
