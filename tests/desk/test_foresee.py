"""What is typical stands until the lot's own forecast has been worked out beside the window."""

from __future__ import annotations

import pytest

from farmdesk.desk.foresee import Foresight
from farmdesk.desk.go import Target
from farmdesk.errors import NotPossible
from farmdesk.text import N_
from tests.desk import samples
from tests.desk.evening import open_window, season_copy, until


@pytest.fixture
def window(qtbot, at, tmp_path):
    at(samples.EVENING + 60)
    made = open_window(qtbot, season_copy(tmp_path))
    made.open(Target("lot", "25-13W"))
    return made


def test_the_open_lots_own_forecast_replaces_what_is_typical(window, qtbot):
    page = window.page
    assert page.lot.story.card.ahead.source == "typical"
    assert page.lot.drying.figure.fan is None
    foresight = Foresight(window)
    order = []
    window.lanes.changed.connect(lambda changes: order.append(next(iter(changes.lots))))
    foresight.look()
    until(qtbot, lambda: page.lot.drying.figure.fan is not None)
    assert order[0] == "25-13W"
    assert page.lot.story.card.ahead.source != "typical"
    foresight.stop()


def test_what_is_there_is_not_worked_out_again(window, monkeypatch):
    foresight = Foresight(window)
    foresight.look()
    counted = []
    monkeypatch.setattr(window.lanes, "count", lambda *call: counted.append(call))
    foresight.look()
    assert counted == []
    foresight.stop()


def test_too_little_known_is_tried_once_and_told_to_nobody(window, monkeypatch):
    foresight = Foresight(window)

    def refuse(call, then, failed):
        tries.append(call)
        failed(NotPossible(N_("test", "too little is known")))

    tries: list[object] = []
    monkeypatch.setattr(window.lanes, "count", refuse)
    foresight.look()
    first = len(tries)
    assert first >= 4
    foresight.look()
    assert len(tries) == first
    assert window.notice.sentence == ""
    assert window.page.lot.story.card.ahead.source == "typical"
    foresight.stop()
