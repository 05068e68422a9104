"""The window by keys: roads to pages, the go box, the handle on the ruler, letters, trouble told calmly."""

from __future__ import annotations

from datetime import date

import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtWidgets import QApplication, QLineEdit

from farmdesk.desk import theme
from farmdesk.desk.go import Target
from farmdesk.desk.go_box import WAIT_MS
from farmdesk.desk.lanes import Inline
from farmdesk.desk.pages import Action, Desk, Page
from farmdesk.desk.theme import look
from farmdesk.desk.window import Window
from farmdesk.errors import NotPossible
from farmdesk.text import ENGLISH, N_
from farmdesk.work.changes import Changes
from tests.desk import samples_today as samples
from tests.desk.stand_season import drag

KEY, ALT, CTRL = Qt.Key, Qt.KeyboardModifier.AltModifier, Qt.KeyboardModifier.ControlModifier


class Plain(Page):
    """A page that notes what it was asked, opened at and told to do."""

    def __init__(self, desk, parent=None):
        super().__init__(desk, parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.asked, self.opened, self.done = [], [], []
        self.field = QLineEdit(self)

    def query(self, farm, at_utc_s):
        self.asked.append(at_utc_s)
        return at_utc_s

    def show_story(self, story):
        pass

    def concerns(self, changes):
        return "25-13W" in changes.lots

    def open_at(self, target):
        self.opened.append(target)

    def letters(self):
        return [
            Action("r", "rain list", lambda: self.done.append("r")),
            Action("y", "type the yard sheet", lambda: self.done.append("y")),
        ]


@pytest.fixture
def window(qtbot, at):
    at(samples.MORNING)
    theme.load_fonts()
    theme.look().wear("light", 1.0)
    lanes = Inline()
    lanes.open(object)
    lanes.close = lambda: None
    desk = Desk(lanes, ENGLISH, samples.TIME)
    desk.as_of = desk.present = samples.MORNING
    makers = dict.fromkeys(("today", "season", "lots", "yard", "ferments", "notebook", "papers", "farm"), Plain)
    window = Window(lanes, desk, makers, lambda farm, at: (samples.road(at), samples.KNOWN))
    qtbot.addWidget(window)
    window.resize(1366, 768)
    window.show()
    window.begin()
    QApplication.processEvents()
    yield window
    look().wear("light", 1.0)


def type_in(qtbot, window, text):
    for letter in text:
        qtbot.keyClicks(QApplication.focusWidget() or window, letter)


def name_of(window):
    return next(name for name, page in window.pages.items() if page is window.page)


@pytest.mark.parametrize(
    ("typed", "page", "target"),
    [
        ("25-13", "lots", Target("lot", "25-13W")),
        ("b7", "yard", Target("bed", "7")),
        ("ya", "yard", Target("page", "yard")),
        ("t1", "ferments", Target("vessel", "T1")),
        ("not", "notebook", Target("page", "notebook")),
    ],
)
def test_typing_anywhere_goes_there(qtbot, window, typed, page, target):
    type_in(qtbot, window, typed)
    assert window.go_box.text() == typed
    assert window.go_box.hint.startswith("→")
    assert name_of(window) == "today"
    qtbot.keyClick(QApplication.focusWidget(), KEY.Key_Return)
    assert name_of(window) == page
    assert window.page.opened[-1] == target
    assert window.go_box.text() == ""
    assert window.page.hasFocus()


def test_escape_leaves_the_go_box(qtbot, window):
    type_in(qtbot, window, "25-1")
    qtbot.keyClick(window.go_box, KEY.Key_Escape)
    assert window.go_box.text() == ""
    assert window.page.hasFocus()
    assert name_of(window) == "today"


def test_what_is_not_known_stays_and_says_so(qtbot, window):
    type_in(qtbot, window, "25-99")
    qtbot.keyClick(window.go_box, KEY.Key_Return)
    assert window.go_box.text() == "25-99"
    assert window.go_box.hint == "not known"
    assert name_of(window) == "today"


def test_in_a_field_digits_belong_to_the_field(qtbot, window):
    window.page.field.setFocus()
    type_in(qtbot, window, "25-13r")
    assert window.page.field.text() == "25-13r"
    assert window.go_box.text() == ""
    assert window.page.done == []
    qtbot.keyClick(window.page.field, KEY.Key_G, CTRL)
    assert window.go_box.hasFocus()


def test_a_letter_that_leads_nowhere_acts_at_once(qtbot, window):
    type_in(qtbot, window, "r")
    assert window.page.done == ["r"]
    assert window.go_box.text() == ""


def test_a_letter_that_may_lead_somewhere_waits_for_a_second_one(qtbot, window):
    page = window.page
    type_in(qtbot, window, "y")
    assert window.go_box.hint == "type the yard sheet"
    assert page.done == []
    qtbot.keyClick(window.go_box, KEY.Key_Return)
    assert page.done == ["y"]
    assert page.hasFocus()
    type_in(qtbot, window, "y")
    qtbot.waitUntil(lambda: page.done == ["y", "y"], timeout=4 * WAIT_MS)
    assert window.go_box.text() == ""
    type_in(qtbot, window, "ya")
    qtbot.keyClick(window.go_box, KEY.Key_Return)
    assert name_of(window) == "yard"
    assert page.done == ["y", "y"]


@pytest.mark.parametrize(("letter", "page"), [(KEY.Key_S, "season"), (KEY.Key_L, "lots"), (KEY.Key_Y, "yard")])
def test_every_page_is_one_key_away(qtbot, window, letter, page):
    qtbot.keyPress(window.page, KEY.Key_Alt)
    assert window.road.letters_shown
    qtbot.keyClick(window.page, letter, ALT)
    qtbot.keyRelease(window.page, KEY.Key_Alt)
    assert not window.road.letters_shown
    assert name_of(window) == page
    assert window.road.chosen == window.page.place or page


def test_every_word_of_the_road_has_a_letter_of_its_own(window):
    letters = [item.letter for name, item in window.road.items.items()]
    assert all(letters)
    assert len(set(letters)) == len(letters)


def test_a_place_without_a_page_leads_to_the_lots_that_lie_there(qtbot, window):
    qtbot.mouseClick(window.road.items["store"], Qt.MouseButton.LeftButton)
    assert name_of(window) == "lots"
    assert window.page.opened[-1] == Target("lying", "store")


def test_back_goes_where_one_was(qtbot, window):
    for typed in ("ya", "25-13", "sea"):
        type_in(qtbot, window, typed)
        qtbot.keyClick(QApplication.focusWidget(), KEY.Key_Return)
    been = []
    for _ in range(4):
        qtbot.keyClick(window, KEY.Key_Left, ALT)
        been.append(name_of(window))
    assert been == ["lots", "yard", "today", "today"]


def test_the_road_says_what_lies_where(window):
    under = {name: item.under for name, item in window.road.items.items()}
    assert under["today"] == "Tue 21 Jan"
    assert under["yard"] == "1,630\u202fkg"
    assert under["mill"] == "—"
    assert window.road.items["yard"].accessibleName() == "Yard, 1,630\u202fkg"
    assert window.road.items["mill"].accessibleName() == "Mill"


def test_a_small_window_folds_the_office(window):
    assert window.road.items["notebook"].isVisible()
    window.resize(1000, 700)
    assert not window.road.items["notebook"].isVisible()
    assert window.road.items["office"].isVisible()


def test_the_handle_moves_by_keys_and_hand(qtbot, window):
    desk, ruler = window.desk, window.ruler
    ruler.setFocus()
    qtbot.keyClick(ruler, KEY.Key_Left)
    assert desk.time.local(desk.as_of).isoformat()[:16] == "2025-01-20T05:45"
    assert not desk.at_present
    qtbot.keyClick(ruler, KEY.Key_Left, Qt.KeyboardModifier.ShiftModifier)
    assert desk.time.local(desk.as_of).date() == date(2025, 1, 13)
    assert window.page.asked[-1] == desk.as_of
    assert "13 Jan 05:45" in ruler.accessibleName()
    grip = QPointF(ruler.x_of(desk.as_of), 30)
    drag(ruler, grip, QPointF(ruler.x_of(desk.time.instant(date(2024, 12, 24), 12)), 30))
    assert desk.time.local(desk.as_of).date() == date(2024, 12, 24)
    drag(ruler, QPointF(ruler.x_of(desk.as_of), 30), QPointF(ruler.width() - 5, 30))
    assert desk.at_present
    assert desk.as_of == samples.MORNING


def test_off_the_present_the_go_box_leads_back(qtbot, window):
    type_in(qtbot, window, "d14")
    qtbot.keyClick(window.go_box, KEY.Key_Return)
    assert window.desk.time.local(window.desk.as_of).date() == date(2025, 1, 14)
    assert window.go_box.off_present
    assert window.desk.why_not_write() == "This is the past; go back to now to write."
    qtbot.mouseClick(window.go_box, Qt.MouseButton.LeftButton)
    assert window.desk.at_present
    assert not window.go_box.off_present
    assert window.desk.why_not_write() == ""


def test_a_written_act_refreshes_what_it_concerns(qtbot, window, at):
    page = window.page
    qtbot.keyClick(window.page, KEY.Key_Y, ALT)
    yard = window.page
    n, m = len(page.asked), len(yard.asked)
    window.lanes.changed.emit(Changes(frozenset({"25-01W"})))
    window.lanes.changed.emit(Changes(frozenset({"25-13W"})))
    qtbot.waitUntil(lambda: len(yard.asked) == m + 1)
    assert len(page.asked) == n
    assert page.stale
    qtbot.keyClick(window.page, KEY.Key_T, ALT)
    assert len(page.asked) == n + 1
    at.forward(90)
    window.lanes.changed.emit(Changes())
    qtbot.waitUntil(lambda: page.asked[-1] == samples.MORNING + 90)


def test_trouble_is_one_sentence_and_escape_takes_it_away(qtbot, window):
    high = window.page.height()
    window.lanes.trouble.emit(NotPossible(N_("test", "Bed 99 is not there."), N_("test", "Type another one.")))
    assert window.notice.isVisible()
    assert window.notice.accessibleName() == "Bed 99 is not there. Type another one."
    assert window.page.height() < high
    qtbot.keyClick(window.page, KEY.Key_Escape)
    assert not window.notice.isVisible()
    assert window.page.height() == high


def test_a_mistake_of_the_program_is_told_without_its_words(window):
    window.cannot(ZeroDivisionError("division by zero"))
    assert "division" not in window.notice.sentence
    assert "written down" in window.notice.sentence


def test_letters_grow_and_shrink(qtbot, window):
    for _ in range(3):
        qtbot.keyClick(window, KEY.Key_Plus, CTRL)
    assert look().scale == 1.3
    assert window.road.height() == round(56 * 1.3)
    for _ in range(3):
        qtbot.keyClick(window, KEY.Key_Minus, CTRL)
    assert look().scale == 1.0
    assert window.road.height() == 56


def test_a_low_window_leaves_out_the_months(window):
    assert window.ruler.height() == 54 + 6
    window.resize(1366, 690)
    assert window.ruler.height() == 40 + 6
    assert window.page.geometry().bottom() == 690 - 40 - 1


def test_t_turns_at_once_and_still_begins_a_place(qtbot, window):
    turned = []
    page = window.page
    page.letters = lambda: [Action("t", "table", lambda: turned.append("t"))]
    type_in(qtbot, window, "t")
    assert turned == ["t"]
    assert window.go_box.text() == ""
    type_in(qtbot, window, "1")
    assert turned == ["t", "t"]
    assert window.go_box.text() == "t1"
    qtbot.keyClick(window.go_box, KEY.Key_Return)
    assert name_of(window) == "ferments"
