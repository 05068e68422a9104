"""What is said of a vessel, at its bounds."""

from __future__ import annotations

import numpy as np
import pytest

from farmdesk.ahead.ferment_fit import FermentLot
from farmdesk.ahead.ferment_limits import worries
from farmdesk.clock import HOUR_S
from farmdesk.errors import NotPossible

START = 1_736_200_800.0


def levels(ph, hours=6.0, style="washed", temp=20.0, pitched=False, **other) -> list[str]:
    ph = np.asarray(ph, dtype=float)
    at = START + np.linspace(0.0, hours * HOUR_S, ph.size) if ph.size else np.empty(0)
    lot = FermentLot(
        style, START, 4.5, at, ph, np.zeros(ph.size, dtype=bool), np.array([START]), np.array([temp]), pitched
    )
    return [worry.level for worry in worries(lot, START + hours * HOUR_S, **other)]


@pytest.mark.parametrize(
    ("style", "pitched", "ph", "want"),
    [
        ("washed", False, 4.31, []),
        ("washed", False, 4.3, ["warn"]),
        ("washed", False, 4.0, ["alarm"]),
        ("washed", True, 4.25, []),
        ("washed", True, 4.2, ["warn"]),
        ("washed", True, 3.9, ["alarm"]),
        ("extended", False, 3.71, []),
        ("extended", False, 3.7, ["warn"]),
        ("extended", False, 3.5, ["alarm"]),
        ("honey", False, 4.1, ["warn"]),
        ("honey", False, 3.8, ["alarm"]),
    ],
)
def test_ph_bounds_by_style(style: str, pitched: bool, ph: float, want: list[str]) -> None:
    assert levels([5.3, ph], style=style, pitched=pitched) == want


def test_rising_ph_is_alarming_in_extended_lots_only() -> None:
    assert levels([5.1, 3.9, 4.1], style="extended") == ["alarm"]
    assert levels([5.1, 3.9, 4.05], style="extended") == []
    assert levels([5.3, 4.4, 4.6]) == []


def test_pitched_and_slow() -> None:
    assert levels([5.4, 5.3], 12.0, pitched=True) == ["warn"]
    assert levels([5.4, 4.87], 12.0, pitched=True) == []  # the best lot of a published trial: nothing to say
    assert levels([5.4, 5.3], 11.0, pitched=True) == []


@pytest.mark.parametrize(
    ("temp", "want"),
    [(14.9, ["warn"]), (15.0, []), (28.0, []), (28.1, ["warn"]), (35.1, ["alarm"]), (41.0, ["alarm"]), (np.nan, [])],
)
def test_mass_temperature(temp: float, want: list[str]) -> None:
    assert levels([5.3, 5.0], temp=temp) == want


@pytest.mark.parametrize(
    ("hours", "ph", "want"),
    [(35.0, 4.7, []), (36.0, 4.7, ["warn"]), (48.0, 4.7, ["alarm"]), (48.0, 4.5, [])],
)
def test_a_shut_vessel_must_fall_below_the_hurdle(hours: float, ph: float, want: list[str]) -> None:
    assert levels([5.1, ph], hours, style="extended", sealed=True) == want
    assert levels([5.1, ph], hours, style="extended") == []
    assert levels([], 48.0, style="extended", sealed=True) == ["alarm"]


@pytest.mark.parametrize(("after", "want"), [(2.9, []), (3.0, ["warn"]), (6.0, ["alarm"])])
def test_hours_after_the_hand_test(after: float, want: list[str]) -> None:
    assert levels([5.3, 4.6], 20.0, passed_utc_s=START + (20.0 - after) * HOUR_S) == want


def test_half_the_brix_gone() -> None:
    assert levels([5.1, 4.2], style="extended", first_brix=20.0, now_brix=9.0) == ["warn"]
    assert levels([5.1, 4.2], style="extended", first_brix=20.0, now_brix=11.0) == []
    with pytest.raises(NotPossible):
        levels([5.1, 4.2], style="extended", first_brix=12.0, now_brix=14.0)


def test_alarms_come_first_and_every_line_has_its_figure() -> None:
    lot = FermentLot(
        "extended", START, 4.0, START + HOUR_S * np.array([0.0, 40.0]), np.array([5.1, 4.7]), np.zeros(2, dtype=bool),
        np.array([START]), np.array([36.0]),
    )  # fmt: skip
    found = worries(lot, START + 40 * HOUR_S, sealed=True)
    assert [w.level for w in found] == ["alarm", "warn"]
    assert "36.0" in str(found[0].text)
    assert "4.6" in str(found[1].text)
    with pytest.raises(NotPossible):
        levels([5.0], style="pickled")
