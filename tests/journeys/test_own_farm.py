"""A farm of one's own: from an empty program to the first lot on the first bed, typing only what is known.

Every key and every box is counted. Then the farm's registers grow, its meter is corrected, it says its own words,
and its data are cared for: through the real program, on its real lanes.
"""

from __future__ import annotations

import re

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLineEdit, QWidget

from farmdesk import clock
from farmdesk.app import App
from farmdesk.desk import habits, theme, words
from farmdesk.desk.theme import look
from farmdesk.notebook.season_file import SeasonFile
from farmdesk.picture.picture import fold

MOST_KEYS, MOST_BOXES = 150, 14
KEY = Qt.Key


class Typist:
    """Hands on the keyboard of one program; counts the keys, and the boxes in which something was typed."""

    def __init__(self, qtbot, app: App) -> None:
        self.qtbot, self.app = qtbot, app
        self.keys, self.boxes = 0, set[int]()
        self._held: list[QWidget] = []  # a box that is gone must not lend its number to another one

    def focus(self) -> QWidget:
        self.qtbot.waitUntil(lambda: QApplication.focusWidget() is not None)
        return QApplication.focusWidget()

    def type(self, text: str) -> None:
        """Type signs into whatever has the keys; a new line is Enter, a backspace is Escape."""
        for sign in text:
            widget = self.focus()
            self.keys += 1
            if isinstance(widget, QLineEdit) and widget is not self.app.window.go_box and sign not in "\n\b+":
                self.boxes.add(id(widget))
                self._held.append(widget)
            special = {"\n": KEY.Key_Return, "\b": KEY.Key_Escape}.get(sign)
            if special is not None:
                self.qtbot.keyClick(widget, special)
            else:
                self.qtbot.keyClicks(widget, sign)
            QApplication.processEvents()

    def until(self, true) -> None:
        self.qtbot.waitUntil(true, timeout=20_000)

    def on(self, name: str) -> bool:
        return self.app.window.page is not None and self.app.window.page is self.app.window.pages.get(name)


@pytest.fixture
def typist(qtbot, own_data):
    """The program as it is when it has just been installed: no season of one's own, the practice season open."""
    theme.load_fonts()
    app = App(None)
    app.window.go_box.wait.setInterval(20_000)  # of two letters typed on a busy computer the second still counts
    with qtbot.waitSignal(app.window.painted, timeout=30_000):
        app.start()
    yield Typist(qtbot, app)
    app.window.close()
    app.finish()
    app.window.deleteLater()
    app.deleteLater()
    words.wear({})
    QApplication.processEvents()
    look().wear("light", 1.0)


def begin_farm(typist: Typist) -> None:
    app = typist.app
    typist.type("fa\n")
    typist.until(lambda: typist.on("farm") and app.window.page.story is not None)
    typist.type("n\n")
    typist.until(lambda: typist.on("begin"))
    typist.type("La ladera\n\ntegu\n1.2\n12\n")
    typist.until(lambda: not app.desk.practice and typist.on("today") and app.window.page.story is not None)


def first_lot(typist: Typist) -> None:
    app = typist.app
    typist.until(lambda: not app.window.page.story.begun)
    typist.type("g")
    typist.until(
        lambda: typist.on("picking") and app.window.page.name == "lot" and isinstance(typist.focus(), QLineEdit)
    )
    typist.type("+")  # the method and the code as proposed
    typist.until(lambda: bool(app.window.page.view.rows))
    typist.type("\bw")
    typist.until(lambda: app.window.page.name == "weigh" and isinstance(typist.focus(), QLineEdit))
    typist.type("+")  # today, this half-day, no block known yet
    typist.until(lambda: app.window.page.view.mode == "rows")
    typist.type("\n58.1\n\n")
    typist.until(
        lambda: app.window.page.view.sheet_story is not None and len(app.window.page.view.sheet_story.rows) == 1
    )
    typist.type("\bx")
    typist.until(lambda: app.window.page.name == "spread" and isinstance(typist.focus(), QLineEdit))
    typist.type("1\n23\n+")
    typist.until(lambda: bool(app.window.page.view.rows))


def test_from_an_empty_program_to_a_first_lot_on_a_first_bed(typist, own_data):
    begin_farm(typist)
    today = typist.app.window.page
    assert "Press g to begin the first" in today.vessels.sentence()
    assert [place.code for place in today.story.yard.places] == ["1"]
    assert not today.story.yard.places[0].lying
    first_lot(typist)
    assert typist.keys <= MOST_KEYS, typist.keys
    assert len(typist.boxes) <= MOST_BOXES, len(typist.boxes)

    path = next(own_data.glob("la-ladera-*.season"))
    season = path.stem[-2:]
    app = typist.app
    app.window.close()
    with SeasonFile.open(path, read_only=True) as file:
        picture = fold(file.entries(), file.things)
    lot = picture.lots[f"{season}-01W"]
    assert lot.heaps == {"1": 23_000}
    assert lot.delivered_g == 58_100
    assert not picture.doubts
    assert abs(picture.book.last_written_utc_s - clock.of_the_computer()) < 120  # today, not the practice season's day
    app.finish()
    assert habits.load().season == str(path)


def test_one_lot_on_one_bed_is_said_in_the_singular(typist):
    begin_farm(typist)
    first_lot(typist)
    typist.type("\b")
    for letters, name in (
        ("to", "today"),
        ("se", "season"),
        ("lo", "lots"),
        ("pic", "picking"),
        ("ya", "yard"),
        ("fa", "farm"),
    ):
        typist.type(letters + "\n")
        typist.until(lambda name=name: typist.on(name) and not typist.app.window.page._asking)
        page = typist.app.window.page
        said = [page.accessibleName(), *(child.accessibleName() for child in page.findChildren(QWidget))]
        assert any(said)
        wrong = [
            one for one in said if re.search(r"\b1 (lots|beds|rows|sacks|copies|doubts|trees|blocks|pickers)\b", one)
        ]
        assert not wrong, wrong


def test_the_farm_says_its_own_words_at_once(typist):
    begin_farm(typist)
    app = typist.app
    typist.type("fa\n")
    typist.until(lambda: typist.on("farm") and app.window.page.story is not None)
    typist.type("r")
    typist.until(lambda: typist.on("registers") and app.window.page.pane.story is not None)
    for _ in range(11):
        typist.qtbot.keyClick(typist.focus(), KEY.Key_Right)
    typist.until(lambda: app.window.page.name == "words" and app.window.page.pane.story is not None)
    assert isinstance(app.window.page.pane.story, tuple)
    typist.type("\n1\nbed\nrack\n")
    typist.until(lambda: app.window.page.name == "words" and bool(app.window.page.pane.story))
    assert app.window.page.pane.story == (("en", "bed", "rack"),)
    typist.until(lambda: app.window.pages["registers"].isVisible())
    typist.until(lambda: app.desk.words.say(words_of_a_gap()) == "rack 7")
    typist.until(lambda: isinstance(typist.focus(), QLineEdit))  # the keys are in the boxes again
    typist.type("\b")
    app.window.undo()
    typist.until(lambda: app.desk.words.say(words_of_a_gap()) == "bed 7")


def words_of_a_gap():
    from farmdesk.text import N_

    return N_("gaps", "bed {place}", place="7")
