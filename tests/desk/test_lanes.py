"""Two lanes: results come home to the window's thread, acts stand on the undo list, nothing outlives closing."""

from __future__ import annotations

import threading

import pytest
from PySide6.QtCore import QObject, Slot
from PySide6.QtWidgets import QApplication

from farmdesk.desk.lanes import UNDO_STEPS, Inline, Lanes, next_undo
from farmdesk.errors import NotPossible
from farmdesk.text import N_
from farmdesk.work.changes import Changes, Done


class Receiver(QObject):
    """Notes what comes, and on which thread."""

    def __init__(self):
        super().__init__()
        self.came, self.threads = [], []

    @Slot(object)
    def take(self, what):
        self.came.append(what)
        self.threads.append(threading.current_thread())


class Books:
    """Stands in for an open farm: a list that verbs write into."""

    def __init__(self):
        self.rows = []
        self.thread = threading.current_thread()
        self.closed = False

    def close(self):
        self.closed = True


def write(row):
    def act(books):
        books.rows.append(row)
        return Done(Changes(frozenset({row})), (row,), N_("test", "wrote {row}", row=row), take_back(row), row)

    return act


def take_back(row):
    def act(books):
        books.rows.remove(row)
        return Done(Changes(frozenset({row})), (), N_("test", "took back"), write(row), row)

    return act


def refuse(books):
    raise NotPossible(N_("test", "There is no such bed."))


@pytest.fixture
def receiver(qapp):
    return Receiver()


@pytest.fixture
def lanes(qapp):
    lanes = Lanes()
    yield lanes
    lanes.close()
    QApplication.processEvents()


@pytest.fixture
def inline(qapp):
    lanes = Inline()
    books = Books()
    lanes.open(lambda: books)
    lanes.books = books
    return lanes


def test_results_come_home_from_a_thread_of_their_own(qtbot, lanes, receiver):
    lanes.open(Books)
    lanes.ask(lambda books: (books.thread, threading.current_thread()), receiver.take)
    qtbot.waitUntil(lambda: bool(receiver.came))
    opened_on, asked_on = receiver.came[0]
    assert opened_on is asked_on
    assert asked_on is not threading.main_thread()
    assert receiver.threads == [threading.main_thread()]


def test_the_bench_does_not_wait_for_the_desk(qtbot, lanes, receiver):
    go_on = threading.Event()
    lanes.open(Books)
    lanes.ask(lambda books: go_on.wait(5), receiver.take)
    lanes.count(lambda: "counted", receiver.take)
    qtbot.waitUntil(lambda: receiver.came == ["counted"])
    go_on.set()
    qtbot.waitUntil(lambda: receiver.came == ["counted", True])


def test_one_lane_keeps_the_order(qtbot, lanes, receiver):
    lanes.open(Books)
    for n in range(50):
        lanes.ask(lambda books, n=n: n, receiver.take)
    qtbot.waitUntil(lambda: len(receiver.came) == 50)
    assert receiver.came == list(range(50))


def test_a_receiver_that_is_gone_is_not_called(qtbot, lanes, receiver):
    gone = Receiver()
    came = gone.came
    lanes.open(Books)
    go_on = threading.Event()
    lanes.ask(lambda books: go_on.wait(5), gone.take)
    gone.deleteLater()
    QApplication.sendPostedEvents(None, 52)  # QEvent.DeferredDelete
    go_on.set()
    lanes.ask(lambda books: "after", receiver.take)
    qtbot.waitUntil(lambda: receiver.came == ["after"])
    assert came == []


def test_a_result_may_only_come_to_a_qobject(inline):
    with pytest.raises(TypeError):
        inline.ask(lambda books: 1, print)
    with pytest.raises(TypeError):
        inline.ask(lambda books: 1, lambda answer: None)


def test_trouble_comes_to_whoever_asked_or_to_the_window(qtbot, inline, receiver):
    inline.ask(refuse, receiver.take, receiver.take)
    assert isinstance(receiver.came.pop(), NotPossible)
    with qtbot.waitSignal(inline.trouble) as told:
        inline.ask(refuse, receiver.take)
    assert str(told.args[0]) == "There is no such bed."
    assert receiver.came == []


def test_a_mistake_of_the_program_is_logged_and_told(qtbot, inline, receiver, caplog):
    with qtbot.waitSignal(inline.trouble) as told:
        inline.ask(lambda books: 1 / 0, receiver.take)
    assert isinstance(told.args[0], ZeroDivisionError)
    assert "mistake of the program" in caplog.text
    caplog.clear()


def test_an_act_is_taken_back_and_done_again(inline, receiver):
    touched = []
    inline.changed.connect(touched.append)
    inline.do(write("25-13W"), receiver.take)
    assert inline.books.rows == ["25-13W"]
    assert receiver.came[0].lot == "25-13W"
    assert str(next_undo(inline)) == "wrote 25-13W"
    inline.undo_list.undo()
    assert inline.books.rows == []
    assert next_undo(inline) is None
    inline.undo_list.redo()
    assert inline.books.rows == ["25-13W"]
    inline.undo_list.undo()
    assert inline.books.rows == []
    assert [set(changes.lots) for changes in touched] == [{"25-13W"}] * 4


def test_a_refused_act_stands_nowhere(inline, receiver):
    touched = []
    inline.changed.connect(touched.append)
    inline.do(refuse, receiver.take, receiver.take)
    assert touched == []
    assert next_undo(inline) is None


def test_a_new_act_ends_what_could_be_done_again_and_the_oldest_fall_off(inline, receiver):
    for n in range(UNDO_STEPS + 5):
        inline.do(write(f"25-{n:02d}W"), receiver.take)
    for _ in range(UNDO_STEPS + 5):  # more often than there is anything to take back
        inline.undo_list.undo()
    assert inline.books.rows == [f"25-{n:02d}W" for n in range(5)]
    inline.undo_list.redo()
    inline.do(write("25-99W"), receiver.take)
    inline.undo_list.redo()
    assert inline.books.rows == [*[f"25-{n:02d}W" for n in range(6)], "25-99W"]
    inline.undo_list.clear()
    inline.undo_list.undo()
    assert inline.books.rows[-1] == "25-99W"


def test_closing_waits_and_takes_no_more(qtbot, receiver, qapp):
    lanes = Lanes()
    books = Books()
    lanes.open(lambda: books)
    lanes.ask(lambda books: books.rows.append("late"), receiver.take)
    lanes.close()
    assert books.rows == ["late"]
    assert books.closed
    lanes.ask(lambda books: "never", receiver.take)
    QApplication.processEvents()
    assert receiver.came == [None]
    lanes.close()
