"""What happened to the practice season, evening by evening: each event can be asked of it."""

from __future__ import annotations

from datetime import date, timedelta
from itertools import pairwise

import pytest

from farmdesk.clock import HOUR_S
from farmdesk.picture.curves import tray_curves
from farmdesk.picture.entries import (
    Check,
    Cover,
    Cup,
    Flow,
    Hold,
    LoggerFile,
    PaperGiven,
    Parcel,
    ParcelNews,
    Platform,
    Reading,
    Remark,
    Sale,
    WeighIn,
    Yeast,
)
from farmdesk.picture.measures import fills, meter_readings, meter_wb_frac
from farmdesk.picture.picture import Picture
from farmdesk.work.crop import crop
from farmdesk.work.farm import OpenFarm
from farmdesk.work.forecasts import work_out
from farmdesk.work.today import vessel_stories


def seen(farm: OpenFarm, text: str) -> Picture:
    """The farm at an evening, as it was known then (farm time)."""
    at = farm.time.read(text)
    return farm.picture.at(at, at)


def test_p07_brought_pounds_and_they_were_found_two_days_later(practice: OpenFarm) -> None:
    for evening, counted, total in (("2024-12-09T20:00", 128_000, 812_200), ("2024-12-12T06:00", 58_060, 742_260)):
        lot = seen(practice, evening).lots["25-06W"]
        day = [e for e in lot.of(WeighIn) if practice.time.calendar_day(e.happened_utc_s) == date(2024, 12, 9)]
        (sack,) = [e for e in day if e.body.picker == "P07"]
        assert sack.body.gross_g == counted
        assert sum(e.body.gross_g for e in day) == total
        platform = min(lot.of(Platform), key=lambda e: e.happened_utc_s)
        assert platform.body.grams == 742_300
        assert round((total - platform.body.grams) / 1000, 1) == (69.9 if counted == 128_000 else -0.0)
    lot = practice.lot("25-06W")
    assert [e.body.typed for e in lot.struck if isinstance(e.body, WeighIn)] == ["128 kg"]
    assert "128 lb" in [e.body.typed for e in lot.of(WeighIn)]


def test_power_failed_after_nineteen_of_twenty_six_slips(practice: OpenFarm) -> None:
    def slips(moment: str) -> int:
        lot = seen(practice, "2025-01-15T12:00").at(known_at=practice.time.read(moment)).lots["25-16W"]
        return sum(practice.time.calendar_day(e.happened_utc_s) == date(2025, 1, 14) for e in lot.of(WeighIn))

    assert slips("2025-01-14T18:41:00") == slips("2025-01-15T05:20") == 19
    assert slips("2025-01-15T07:00") == 26
    dry = seen(practice, "2025-01-14T20:00").lots["25-13W"]
    assert practice.time.calendar_day(dry.of(Reading)[-1].happened_utc_s) == date(2025, 1, 14)


def test_a_liner_with_two_half_days_of_two_blocks(practice: OpenFarm) -> None:
    lot = practice.lot("25-05A")
    parts = [
        (f"{practice.time.local(e.happened_utc_s):%H:%M}", p.grams, e.note)
        for e in lot.of(Flow)
        if e.body.act == "fill"
        for p in e.body.postings
        if p.account == "S07"
    ]
    assert parts == [("12:40", 28_000, "half-day am, block E"), ("17:30", 18_000, "half-day pm, block D")]
    assert [e.body.place for e in lot.of(Remark) if e.body.about == "deviation"] == ["S07"]


def test_covered_for_nineteen_hours_in_december(practice: OpenFarm) -> None:
    assert covered_h(practice, "12", date(2024, 12, 14)) + covered_h(practice, "12", date(2024, 12, 15)) == 19


def covered_h(farm: OpenFarm, place: str, day: date) -> float:
    """Hours of a calendar day that a place lay under its cover [h]."""
    low, high = farm.time.instant(day), farm.time.instant(day + timedelta(days=1))
    steps = [(e.happened_utc_s, e.body.on) for e in farm.picture.covers if place in e.body.places]
    return sum(
        max(0, min(until, high) - max(since, low)) / HOUR_S
        for (since, on), (until, off) in pairwise(steps)
        if on and not off
    )


def test_four_days_of_rain_with_every_bed_taken(practice: OpenFarm) -> None:
    rain = practice.picture.weather
    assert [rain[f"2025-01-{day}"].rain_mm for day in range(22, 26)] == [38, 61, 44, 17]
    assert sum(row.rain_mm for row in rain.values()) == 9 + 4 + 12 + 5 + 3 + 2 + 160 + 7 + 3 + 6
    beds = [place.code for place in practice.things.places.values() if place.kind == "bed"]
    for day, taken in ((21, 17), (22, 22), (23, 22), (24, 22), (25, 22), (26, 20), (27, 16)):
        picture = seen(practice, f"2025-01-{day}T20:00")
        assert sum(len(picture.lying_at(bed)) for bed in beds) == taken
    for day in range(22, 26):
        for bed in ("18", "19", "20", "21", "22"):
            assert 21 <= covered_h(practice, bed, date(2025, 1, day)) <= 23.2


def test_the_tarp_of_bed_17_and_the_part_that_went_to_the_patio(practice: OpenFarm) -> None:
    picture, lot = practice.picture, practice.lot("25-16W")
    read = {
        (practice.time.calendar_day(e.happened_utc_s).isoformat(), place): round(100 * value, 1)
        for place in ("17", "P1")
        for e in meter_readings(lot, place)
        for value in [meter_wb_frac(e, picture.corrections)]
    }
    assert [read[f"2025-01-{day}", "17"] for day in (22, 23)] == [15.9, 20.4]
    assert (read["2025-01-27", "P1"], read["2025-01-31", "P1"]) == (15.8, 11.2)
    stays = {s.place: s for s in lot.stays}
    assert practice.time.calendar_day(stays["P1"].from_utc_s) == date(2025, 1, 27)
    assert practice.time.calendar_day(stays["P1"].until_utc_s or 0) == date(2025, 1, 31)
    gates = [(m.at_utc_s, dict(m.lines)["store"]) for m in lot.trail if m.act == "shelve"]
    assert [(practice.time.calendar_day(at).day, grams) for at, grams in gates] == [(29, 265_000), (31, 66_000)]


def test_the_meter_read_high_for_a_fortnight(practice: OpenFarm) -> None:
    (fix,) = practice.picture.corrections
    assert (fix.instrument, fix.quantity, fix.add) == ("meter-1", "meter_wb_frac", -0.008)
    assert practice.time.local(fix.from_utc_s).date() == date(2025, 1, 10)
    assert practice.time.local(fix.until_utc_s or 0).date() == date(2025, 1, 26)
    assert not seen(practice, "2025-01-25T20:00").corrections
    checks = [e for e in practice.picture.general_of(Check) if e.body.instrument == "meter-1"]
    assert [(e.body.passed, e.body.off) for e in checks if e.happened_utc_s in (fix.from_utc_s, fix.until_utc_s)] == [
        (True, None),
        (False, 0.008),
    ]


@pytest.mark.parametrize("code", ["25-09N", "25-11W", "25-12A", "25-13W", "25-14X", "25-15N", "25-16W"])
def test_corrected_meter_and_tray_agree(practice: OpenFarm, code: str) -> None:
    """In those two weeks the raw meter is a good half point above the tray by itself, corrected it is not."""
    lot, time = practice.lot(code), practice.time
    low, high = time.read("2025-01-10T12:00"), time.read("2025-01-26T09:00")
    method = practice.things.method(code[-1])
    assert method
    raw, corrected = [], []
    for curve in tray_curves(lot, practice.things, []):
        dry = curve.grams[0] * (1 - method.start_wb_frac)  # the tray alone, hung on no meter
        for e in meter_readings(lot, curve.place):
            beside = abs(curve.at_utc_s - e.happened_utc_s) < 2 * HOUR_S
            if low <= e.happened_utc_s <= high and beside.any() and e.body.value < 0.30:
                tray = 1 - dry / curve.grams[beside][0]
                raw.append(100 * (e.body.value - tray))
                corrected.append(100 * (meter_wb_frac(e, practice.picture.corrections) - tray))
    assert len(raw) >= 2
    assert sum(raw) / len(raw) > 0.4
    assert abs(sum(corrected) / len(corrected)) < 0.45


def test_the_truth_about_25_13w_by_its_tray(practice: OpenFarm) -> None:
    (curve,) = tray_curves(practice.lot("25-13W"), practice.things, [])
    days = [practice.time.calendar_day(at).isoformat() for at in curve.at_utc_s]
    alone = 100 * (1 - curve.grams[0] * 0.46 / curve.grams)
    assert [round(float(alone[days.index(day)]), 1) for day in ("2025-01-18", "2025-01-19")] == [12.1, 11.6]


def test_the_wetted_natural(practice: OpenFarm) -> None:
    lot = practice.lot("25-17N")
    curve = next(c for c in tray_curves(lot, practice.things, []) if c.place == "18")
    days = {practice.time.calendar_day(at).isoformat(): i for i, at in enumerate(curve.at_utc_s)}
    alone = 100 * (1 - curve.grams[0] * 0.32 / curve.grams)
    found = [round(float(alone[days[f"2025-{day}"]]), 1) for day in ("01-22", "01-24", "01-30", "02-14")]
    assert found == pytest.approx([49.5, 57.0, 45.0, 11.6], abs=0.06)
    assert curve.tray == "4"


def test_a_tray_serves_one_lot_at_a_time(practice: OpenFarm) -> None:
    spans: dict[str, list[tuple[int, int, str]]] = {}
    for lot in practice.picture.lots.values():
        for tray in {e.body.tray for e in lot.of(Reading)} - {""}:
            at = [e.happened_utc_s for e in lot.of(Reading) if e.body.tray == tray]
            assert len({e.body.place for e in lot.of(Reading) if e.body.tray == tray}) == 1
            spans.setdefault(tray, []).append((min(at), max(at), lot.code))
    assert set(spans) == set(practice.things.trays)
    for tray, rows in spans.items():
        for (_, until, _), (since, _, _) in pairwise(sorted(rows)):
            assert until < since, tray


@pytest.mark.parametrize(("code", "places"), [("25-15N", {"8", "19"}), ("25-18W", {"7", "12", "13", "14", "16"})])
def test_lots_read_bed_by_bed(practice: OpenFarm, code: str, places: set[str]) -> None:
    assert places <= {e.body.place for e in practice.lot(code).of(Reading)}


def test_the_last_night_of_the_year_counts_to_the_minute(practice: OpenFarm) -> None:
    first, second = fills(practice.lot("25-11W"), practice.things)
    assert (first.place, second.place) == ("T1", "T2")
    assert second.hours_h == pytest.approx(12 + 5 / 60)
    assert f"{practice.time.local(second.until_utc_s or 0):%Y-%m-%d %H:%M}" == "2025-01-01 05:10"


def test_yeast_of_25_12a(practice: OpenFarm) -> None:
    doses = {e.body.place: (e.body.yeast_g, e.body.water_ml) for e in practice.lot("25-12A").of(Yeast)}
    assert doses == {"C1": (433, 4330), "C2": (415, 4150)}
    assert {f.place: f.grams for f in fills(practice.lot("25-12A"), practice.things)} == {"C1": 433_000, "C2": 415_000}


def test_a_logger_in_utc_lines_up_with_the_filling(practice: OpenFarm) -> None:
    (entry,) = practice.lot("25-12A").of(LoggerFile)
    at, values = practice.file.logger_rows([entry.id])
    assert len(at) == 4 * 96 + 1
    (fill,) = [f for f in fills(practice.lot("25-12A"), practice.things) if f.place == "C1"]
    assert (at[0], at[-1]) == (fill.from_utc_s, fill.until_utc_s)
    by_hand = [e for e in practice.lot("25-12A").of(Reading) if e.body.quantity == "mass_c"]
    for e in by_hand:
        assert values[at == e.happened_utc_s][0] == pytest.approx(e.body.value, abs=1.2)


def test_a_logger_silent_for_54_hours(practice: OpenFarm) -> None:
    lot = practice.lot("25-19A")
    (entry,) = lot.of(LoggerFile)
    at, _ = practice.file.logger_rows([entry.id])
    widest = max(pairwise(at), key=lambda pair: pair[1] - pair[0])
    assert [f"{practice.time.local(x):%d %H:%M}" for x in widest] == ["25 05:00", "27 11:00"]
    ph = [(e.happened_utc_s, e.body.value) for e in lot.of(Reading) if e.body.quantity == "ph"]
    before, after = max(pairwise(ph), key=lambda pair: pair[1][0] - pair[0][0])
    assert (after[0] - before[0], before[1], after[1]) == (54 * HOUR_S, 4.65, 3.55)


def test_a_shut_vessel_is_worried_about_and_a_washed_tank_on_its_way_is_not(practice: OpenFarm) -> None:
    """A pH below 4.6 within 48 h is the hurdle of 21 CFR 114; of barrels that nobody read, that is what is said."""

    def said(text: str) -> dict[str, list[tuple[str, str]]]:
        at = practice.time.read(text)
        work_out(practice, at)
        vessels = vessel_stories(practice.seen(at))
        return {v.code: [(w.level, str(w.text).replace("\u202f", " ")) for w in v.worries] for v in vessels}

    found = said("2025-01-26T06:00")
    assert found.keys() == {"C1", "B5", "B6"}
    assert found["C1"] == [
        ("alarm", "Open it: no pH below 4.6 after 61 h in a shut vessel; harmful germs may have grown.")
    ]
    assert found["B5"] == [("alarm", "Take a pH: none was read in 61 h in a shut vessel.")]
    assert said("2025-01-25T08:00")["C1"] == [("warn", "Take a pH: none below 4.6 yet after 39 h in a shut vessel.")]
    assert said("2025-01-21T05:45") == {"T1": []}
    at = practice.time.read("2025-01-21T02:00")
    work_out(practice, at)
    (tank,) = vessel_stories(practice.seen(at))
    assert tank.ahead is not None
    assert tank.look_utc_s is not None
    early = tank.ahead.earliest_utc_s or 0.0
    assert tank.look_utc_s % 900 == 0
    assert at < tank.look_utc_s <= min(max(early, at + HOUR_S), at + 4 * HOUR_S)  # half-way, and never past 4 h


def test_the_crop_estimate_of_october(practice: OpenFarm) -> None:
    found = crop(seen(practice, "2024-10-15T20:00"))
    assert [round(kg / 1000) for kg in (found.kg, found.low_kg, found.high_kg)] == [27, 22, 32]


def test_at_a_quarter_to_six_the_night_is_known(practice: OpenFarm) -> None:
    """The night's slate is typed before breakfast: the first screen of 21 January stands on it."""
    lot = seen(practice, "2025-01-21T05:45").lots["25-18W"]
    read = [e for e in lot.of(Reading) if e.body.quantity == "ph"]
    assert f"{practice.time.local(read[-1].happened_utc_s):%d %H:%M}" == "21 05:00"
    assert fills(lot, practice.things)[-1].until_utc_s is None


def test_the_plan_of_12_january(practice: OpenFarm) -> None:
    picture = seen(practice, "2025-01-12T20:00")
    plans = {e.body.lot: (e.body.method, e.body.grams, len(e.body.places)) for e in picture.plans}
    assert plans == {
        "25-15N": ("N", 300_000, 2), "25-16W": ("W", 1_750_000, 5), "25-17N": ("N", 940_000, 5),
        "25-18W": ("W", 1_600_000, 5), "25-19A": ("A", 700_000, 3),
    }  # fmt: skip
    assert not picture.doubts
    assert not practice.picture.plans


def test_the_only_doubt_of_the_season_is_the_mills(practice: OpenFarm) -> None:
    assert [(doubt.kind, doubt.lot) for doubt in practice.picture.doubts] == [("overweight", "25-04W")]
    day = date(2024, 11, 18)
    while day < date(2025, 2, 27):
        wrong = [str(doubt.text) for doubt in seen(practice, f"{day}T20:00").doubts]
        assert not wrong, (day, wrong)
        day += timedelta(days=1)


def test_a_lost_sample_and_what_was_sent_instead(practice: OpenFarm) -> None:
    parcels = [e for e in practice.lot("25-08W").of(Parcel) if e.body.buyer == "R3"]
    lost, again = sorted(parcels, key=lambda e: e.happened_utc_s)
    assert (lost.body.grams, again.body.grams, again.body.instead_of) == (300, 300, lost.id)
    assert practice.time.local(lost.body.due_utc_s or 0).date() == date(2025, 3, 11)
    news = {e.body.parcel: e.body.news for e in practice.lot("25-08W").of(ParcelNews) if e.body.news == "lost"}
    assert set(news) == {lost.id}
    known = seen(practice, "2025-03-17T20:00").lots["25-08W"]
    assert not known.of(ParcelNews)


def test_holds_and_the_sale_that_is_not_yet_one(practice: OpenFarm) -> None:
    (hold,) = practice.lot("25-08W").of(Hold)
    assert (hold.body.buyer, hold.body.grams) == ("R6", 60_000)
    assert practice.time.local(hold.body.until_utc_s).date() == date(2025, 6, 1)
    waiting = [e.body for code in ("25-16W", "25-18W") for e in practice.lot(code).of(Sale) if e.body.account == "top"]
    assert (sum(s.grams for s in waiting), {s.approved for s in waiting}) == (240_000, {False})


def test_a_lot_sheet_went_out_before_the_meter_was_found_out(practice: OpenFarm) -> None:
    given = practice.lot("25-09N").of(PaperGiven)
    assert (given[0].body.version_n, given[0].body.buyer) == (1, "R3")
    assert practice.time.calendar_day(given[0].happened_utc_s) == date(2025, 1, 22)


def test_no_flavour_words_are_invented(practice: OpenFarm) -> None:
    assert {e.body.words for lot in practice.picture.lots.values() for e in lot.of(Cup)} == {""}


def test_covers_name_beds_that_have_one(practice: OpenFarm) -> None:
    covered = {place for e in practice.picture.general_of(Cover) for place in e.body.places}
    assert covered <= {code for code, place in practice.things.places.items() if place.cover in ("hoops", "tarp")}
