"""How was this worked out: the figures said are those that went in, and whose formula it is."""

from __future__ import annotations

from datetime import date

import pytest

from farmdesk.errors import NotPossible
from farmdesk.picture.curves import tray_curves
from farmdesk.picture.entries import Correction
from farmdesk.work.farm import OpenFarm
from farmdesk.work.forecasts import work_out
from farmdesk.work.foresight import drying_lot
from farmdesk.work.lots import lot_story
from farmdesk.work.sheet import sheet_story
from farmdesk.work.worked_out import WorkedOut, worked_out

CORRECTED = "The moisture meter read 0.8 points high from 10 Jan to 26 Jan; its readings are shown corrected."


def instant(farm: OpenFarm, month: int, day: int, hour: int) -> int:
    return farm.picture.time.instant(date(2024 if month > 8 else 2025, month, day), hour)


def said(one: WorkedOut) -> dict[str, str]:
    return {str(name): str(figure) for name, figure in one.inputs}


def test_a_drying_says_what_went_into_its_range(practice: OpenFarm) -> None:
    at = instant(practice, 1, 14, 19)
    work_out(practice, at, frozenset({"25-13W"}))
    drying, tray = worked_out(practice, "25-13W", at)
    picture = practice.seen(at)
    lot = drying_lot(picture, picture.lots["25-13W"])
    assert lot is not None
    assert lot.meter is not None
    rows = said(drying)
    assert rows["tray"] == f"weighings: {lot.trays[0].net_g.size}; trays: 1"
    assert rows["meter"].startswith(f"{lot.meter.mean_wb_frac.size} readings of {int(lot.meter.reps_n.sum())} repeats")
    assert rows["loading"] == "8.5\u202fkg/m²"
    assert rows["weather rows"] == f"{len(picture.weather)} days, 10 Nov–14 Jan"
    assert rows["own lots that taught it"] == "11 finished, of all methods"
    assert "30\u202f% shown, not fitted" in str(drying.holds)
    assert "Parra-Coronado et al. 2008" in str(drying.source)
    assert said(tray)["meter readings it hangs on"] == "3"


def test_before_it_is_worked_out_only_what_is_typical_is_claimed(practice: OpenFarm) -> None:
    at = instant(practice, 12, 22, 12)
    assert ("25-08W", "") not in practice.forecasts.of(practice.seen(at))
    first = worked_out(practice, "25-08W", at)[0]
    assert "Nothing of this lot's own readings went in" in str(first.formula)
    assert "draws" not in said(first)


def test_a_ferment_counts_its_readings_and_its_hours(practice: OpenFarm) -> None:
    at = instant(practice, 1, 6, 12)
    work_out(practice, at, frozenset({"25-12A"}))
    first, second = worked_out(practice, "25-12A", at)[:2]
    assert str(first.head) == "When the ferment in C1 will be done"
    assert said(first)["target"] == "pH 3.9"
    assert said(first)["pH readings"] == "11, 0 of them with paper"
    assert "Zwietering et al. 1990" in str(first.source)
    assert "Zwietering" not in str(second.source)  # the other vessel was never read


def test_the_tray_names_the_correction_in_force_and_what_is_missing_its_spread(practice: OpenFarm) -> None:
    tray, beds, mill = worked_out(practice, "25-13W")
    assert said(tray)["meter correction"] == CORRECTED
    curve = tray_curves(practice.picture.lots["25-13W"], practice.things, practice.picture.corrections)[0]
    assert said(tray)["meter readings it hangs on"] == str(len(curve.anchors))
    texts = [str(row.text) for row in lot_story(practice, "25-13W").unexplained]
    for one, text in zip((beds, mill), texts, strict=True):
        assert said(one)["missing"].split(" ±")[0] in text
    assert said(worked_out(practice, "25-01W")[0])["meter correction"] == "none in force"


def test_a_meter_found_wrong_is_said_alike_on_the_lot_and_on_its_sheet(practice: OpenFarm) -> None:
    assert any(isinstance(c, Correction) and c.add < 0 for c in practice.picture.corrections)
    assert str(lot_story(practice, "25-13W").deviations[0]) == CORRECTED
    assert CORRECTED in [str(text) for text in sheet_story(practice, "25-13W").differed]
    assert not any("moisture meter" in str(text) for text in lot_story(practice, "25-01W").deviations)


def test_an_unknown_lot_is_refused(practice: OpenFarm) -> None:
    with pytest.raises(NotPossible):
        worked_out(practice, "25-99W")
