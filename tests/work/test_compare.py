"""Lots over one another: the lines are the lots' own, and no method is credited with what its blocks may have done."""

from __future__ import annotations

import numpy as np
import pytest

from farmdesk.errors import NotPossible
from farmdesk.picture.curves import tray_curves
from farmdesk.picture.entries import Cup
from farmdesk.picture.fold import LotPicture
from farmdesk.science.counting import compare
from farmdesk.work.compare import FACTORS, MOST_LOTS, compare_story, lots_of
from farmdesk.work.farm import OpenFarm


def score(lot: LotPicture) -> float | None:
    tables = lot.of(Cup)
    return tables[-1].body.score if tables else None


def test_no_credit_goes_to_the_sealed_for_their_cup(practice: OpenFarm) -> None:
    lots = lots_of(practice.picture, ("X", "W"), score)
    told = compare(lots, "X", "W", FACTORS)
    assert told.first_median > told.second_median  # they do score higher ...
    assert not told.credit
    story = compare_story(practice, ("25-07X", "25-08W"))
    said = next(str(text) for text in story.said if str(text).startswith("Cup score"))
    assert "X 87.0 (lots: 3), W 85.0 (lots: 13)" in said
    assert "It may not be credited to X." in said  # ... and this is why it does not count
    assert "from B no W; from F only 25-24W of W, in part" in said
    assert "under 4 is too few to say" in said


def test_a_line_is_the_tray_since_it_was_spread_and_meets_the_target_between_two_weighings(practice: OpenFarm) -> None:
    story = compare_story(practice, ("25-08W", "25-10W"))
    curve = tray_curves(practice.picture.lots["25-08W"], practice.things, practice.picture.corrections)[0]
    first, second = story.figure.curves
    np.testing.assert_allclose(first.y, curve.moisture_wb_frac * 100)
    assert 0 <= first.x[0] < 1
    assert (first.style, second.style) == (0, 1)
    assert [str(one.name) for one in (first, second)] == ["25-08W", "25-10W"]
    met = float(np.interp(-12.0, -first.y, first.x))
    assert f"25-08W {met:.1f}\u202fd" in str(story.figure.sentence)


def test_one_method_alone_concludes_nothing_of_methods(practice: OpenFarm) -> None:
    said = [str(text) for text in compare_story(practice, ("25-08W", "25-10W")).said]
    assert all("nothing can be concluded" in text for text in said)
    assert not any("credited" in text for text in said)


def test_good_hours_and_hours_at_20_degrees(practice: OpenFarm) -> None:
    days, good = (compare_story(practice, ("25-08W",), None, kind).figure.curves[0] for kind in ("days", "good_h"))
    assert good.x[-1] > days.x[-1]
    np.testing.assert_array_equal(days.y, good.y)
    ferments = compare_story(practice, ("25-08W", "25-07X", "25-03N"), None, "h20").figure
    assert [str(curve.name) for curve in ferments.curves] == ["25-08W", "25-07X"]  # a natural is in no vessel
    assert all((np.diff(curve.x) > 0).all() for curve in ferments.curves)
    assert "25-07X aims at no pH" in str(ferments.sentence)
    assert "25-03N was not read" in str(ferments.sentence)


def test_a_lot_that_is_not_dry_and_one_that_has_not_begun(practice: OpenFarm) -> None:
    at = practice.picture.time.instant(practice.picture.time.farm_day(1736870000), 18)  # 14 Jan
    story = compare_story(practice, ("25-13W", "25-16W"), at)
    assert str(story.figure.sentence) == "Days to 12\u202f%: 25-13W not there yet, 25-16W was not read."
    assert not any(str(text).startswith("Cup") for text in story.said)


def test_too_many_none_and_unknown_ones_are_refused(practice: OpenFarm) -> None:
    codes = list(practice.picture.lots)
    for chosen in (codes[: MOST_LOTS + 1], [], ["25-99W"]):
        with pytest.raises(NotPossible):
            compare_story(practice, chosen)


def test_on_dates_the_lines_stand_where_they_were_dried_with_the_rain_of_those_days(practice: OpenFarm) -> None:
    dated = compare_story(practice, ("25-13W", "25-16W"), None, "time")
    days = compare_story(practice, ("25-13W", "25-16W"), None, "days")
    for on_dates, since in zip(dated.figure.curves, days.figure.curves, strict=True):
        np.testing.assert_allclose(np.diff(on_dates.x), np.diff(since.x) * 86_400)
    assert str(dated.figure.sentence) == str(days.figure.sentence)  # what it took does not depend on the axis
    assert sum(mm for _, _, mm in dated.figure.rain) > 160  # the four days of January are among them
    assert dated.said == days.said
    assert not days.figure.rain


def test_a_lot_alone_concludes_nothing_and_names_what_could_be_laid_over_it(practice: OpenFarm) -> None:
    story = compare_story(practice, ("25-13W",))
    assert [str(text) for text in story.said] == [
        "One lot alone tells nothing of another; type a code to lay it over this one."
    ]
    assert len({other.code for other in story.others} - {"25-13W"}) == 8
    assert all(str(other.method) == "washed" for other in story.others)
    few = compare_story(practice, ("25-07X", "25-14X", "25-21X"))
    assert "25-13W" not in [other.code for other in compare_story(practice, ("25-07X", "25-13W")).others]
    assert str(few.others[0].method) != "sealed, washed"  # no more of them
