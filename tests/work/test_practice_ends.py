"""The practice season's lots, asked half-way with only what was written by then: do the ranges hold the real ends?

Drying ends at the first weighing at which the tray, hung on all that was known later, stands at 12.0 % or less; a
ferment at its first crossing of the method's target pH. Lots ended by the clock do not count. What the forecast is
held against is what one knew without it: the median of the other lots of the method and their spread.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
import pytest

from farmdesk.ahead.ferment import crossing_utc_s
from farmdesk.ahead.range import Ahead, spread_of
from farmdesk.clock import DAY_S
from farmdesk.picture.curves import tray_curves
from farmdesk.picture.entries import Reading
from farmdesk.picture.measures import fills, method_of
from farmdesk.work.farm import OpenFarm
from farmdesk.work.foresight import drying_style, ferment_lot, ferment_style, question
from farmdesk.work.setup import method_templates

TARGET_WB_FRAC = 0.12
NORMAL_90 = 1.2816


@dataclass
class Ended:
    code: str
    place: str
    method: str
    start_utc_s: float
    end_utc_s: float
    readings_utc_s: np.ndarray

    @property
    def took_s(self) -> float:
        return self.end_utc_s - self.start_utc_s

    @property
    def asked_utc_s(self) -> float:
        """The first reading after half of the true time."""
        later = self.readings_utc_s[self.readings_utc_s > self.start_utc_s + self.took_s / 2]
        return float(later[0])


def dried(practice: OpenFarm) -> list[Ended]:
    picture, ended = practice.picture, []
    for code, lot in picture.lots.items():
        method = method_of(lot, picture.things)
        for curve in tray_curves(lot, picture.things, picture.corrections):
            below = np.flatnonzero(curve.moisture_wb_frac <= TARGET_WB_FRAC)
            if method and not curve.place and below.size:
                end = float(curve.at_utc_s[below[0]])
                ended.append(Ended(code, "", method.letter, float(curve.at_utc_s[0]), end, curve.at_utc_s))
    return ended


def fermented(practice: OpenFarm) -> list[Ended]:
    picture, ended = practice.picture, []
    for code, lot in picture.lots.items():
        method = method_of(lot, picture.things)
        for fill in fills(lot, picture.things):
            running = ferment_lot(practice, picture, lot, fill)
            end = crossing_utc_s(running) if running else None
            if method and running and end and method.ends_by != "clock":
                one = Ended(code, fill.place, method.letter, running.start_utc_s, end, running.at_utc_s)
                if one.asked_utc_s < end:
                    ended.append(one)
    return ended


def asked(practice: OpenFarm, one: Ended, quantity: str) -> Ahead:
    """Asked as of the reading, knowing what was on paper when that reading was: the night's slate is typed at dawn."""
    entries = practice.picture.lots[one.code].of(Reading)
    written = next(
        e.written_utc_s for e in entries if e.body.quantity == quantity and e.happened_utc_s == one.asked_utc_s
    )
    as_of = written if quantity == "tray_g" else int(one.asked_utc_s)
    return question(practice, practice.picture.at(as_of=as_of, known_at=written), (one.code, one.place))()


def others_width_s(all_of: list[Ended], one: Ended) -> float:
    """The 80 % width of the median and spread of the other lots of the method."""
    took_h = [o.took_s / 3600 for o in all_of if o.method == one.method and o is not one]
    middle_h, sd_ln = spread_of(took_h)
    return float(2 * np.sinh(NORMAL_90 * sd_ln) * middle_h * 3600)


@pytest.mark.parametrize(("ends", "quantity", "least_n"), [(dried, "tray_g", 20), (fermented, "ph", 12)])
def test_half_way_ranges_hold_the_real_ends_and_are_no_wider_than_the_other_lots(
    practice, ends, quantity, least_n
) -> None:
    all_of = ends(practice)
    assert len(all_of) >= least_n
    inside, widths, others = [], [], []
    for one in all_of:
        ahead = asked(practice, one, quantity)
        early = np.inf if ahead.earliest_utc_s is None else ahead.earliest_utc_s
        late = np.inf if ahead.latest_utc_s is None else ahead.latest_utc_s
        inside.append(early <= one.end_utc_s <= late)
        widths.append(late - early if np.isfinite(early) else np.inf)
        others.append(others_width_s(all_of, one))
    assert np.mean(inside) >= 0.8
    assert np.median(widths) <= np.median(others)


def test_the_evening_of_the_fourteenth_of_january(practice: OpenFarm) -> None:
    then = practice.time.read("2025-01-14T18:30")
    ahead = question(practice, practice.picture.at(as_of=then, known_at=then), ("25-13W", ""))()
    days = [practice.time.local(at).day for at in (ahead.earliest_utc_s, ahead.likely_utc_s, ahead.latest_utc_s) if at]
    assert days[0] >= 17
    assert days[1] in (18, 19)
    assert days[2] <= 22
    assert ahead.chance_by(then + DAY_S) < 0.1


def test_a_methods_style_comes_from_what_is_done_and_not_from_its_letter() -> None:
    made = {m.letter: m for m in method_templates()}
    assert {letter: ferment_style(m) for letter, m in made.items() if m.ph_target} == {
        "W": "washed", "X": "honey", "A": "extended",
    }  # fmt: skip
    assert {letter: drying_style(m) for letter, m in made.items()} == {
        "W": "washed", "X": "washed", "N": "natural", "A": "natural",
    }  # fmt: skip
    own = replace(made["W"], letter="H", name="dried in its mucilage", rinses_n=0)
    assert (ferment_style(own), drying_style(own)) == ("washed", "honey")
