"""The dry-matter ledger: it closes, and "unexplained" is judged by its own spread."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk.picture.curves import moisture_known, tray_curves
from farmdesk.picture.entries import Correction, Entry
from farmdesk.picture.matter import ledger
from farmdesk.picture.picture import fold
from tests.picture.journal import LOT, THINGS, journal

START_WB, END_WB = 0.54, 0.109
RATIO = (1 - START_WB) / (1 - END_WB)


def book(stored_kg: float, *, gas: float = 0.01, meter_off: float = 0.0, tray_end: float | None = None) -> list[Entry]:
    """A lot of 734 kg of wet parchment dried to 10.9 %; the tray breathes like the lot."""
    end = 2000 * RATIO * (1 - gas) if tray_end is None else tray_end
    meter = 100 * (END_WB + meter_off)
    return journal(
        f"""
        day 1 08: begin W
        day 1 13: pick 1960
        day 1 16: sort 24, float 54
        day 1 17: fill T1 1882
        day 2 07: spread 12 367, 13 367
        day 2 16: tray 2000
        day 12 16: tray {end + 12:.0f}
        day 13 16: tray {end:.0f}
        day 13 16.2: meter {meter:.1f} {meter + 0.1:.1f} {meter - 0.1:.1f}
        day 13 17: shelve 12 13 {stored_kg:.1f}
        day 20 09: send {stored_kg - 1:.1f}
        day 30 10: back top {0.64 * stored_kg:.1f} light 18 small 24 peaberry 24, husk {0.36 * stored_kg - 70:.1f}
        """
    )


HONEST = 734 * RATIO * 0.99 * 0.995  # gas and picking out


def dried(entries: list[Entry], corrections: list[Correction] | None = None):
    lot = fold(entries, THINGS).lots[LOT]
    return {stage.name: stage for stage in ledger(lot, THINGS, corrections or [])}


@given(
    st.floats(0.0, 0.03), st.floats(-0.008, 0.008), st.floats(0.97, 1.01), st.floats(0.0, 0.008), st.booleans()
)  # fmt: skip
def test_dry_matter_changes_only_by_name(gas: float, off: float, share: float, picked: float, with_tray: bool) -> None:
    entries = book(HONEST * share, gas=gas, meter_off=off)
    if not with_tray:
        entries = [e for e in entries if getattr(e.body, "quantity", "") != "tray_g"]
    stages = dried(entries)
    for before, after in (("delivered", "accepted"), ("accepted", "spread"), ("spread", "dry"), ("sent", "green")):
        named = sum(stream.dry.dry_g for stream in stages[after].left)
        missing = stages[after].missing.dry_g if stages[after].missing else 0.0
        assert stages[before].dry.dry_g == pytest.approx(stages[after].dry.dry_g + named + missing, abs=1.0)
        assert stages[after].dry.dry_sd_g > 0


@pytest.mark.parametrize("gas", [0.0, 0.01, 0.02])
@pytest.mark.parametrize("picked", [0.0, 0.005, 0.01])
def test_ordinary_loss_to_gas_and_picking_out_is_not_flagged(gas: float, picked: float) -> None:
    assert not dried(book(734 * RATIO * (1 - gas) * (1 - picked), gas=gas))["dry"].flagged


@pytest.mark.parametrize("gas", [0.0, 0.01, 0.02])
def test_a_theft_of_three_percent_is_flagged(gas: float) -> None:
    stage = dried(book(734 * RATIO * (1 - gas) * 0.995 * 0.97, gas=gas))["dry"]
    assert stage.flagged
    assert stage.by == "tray"
    assert 8_000 < stage.missing.dry_g < 14_000


def test_without_a_tray_the_spread_is_too_wide_to_accuse_anybody() -> None:
    entries = [e for e in book(HONEST * 0.97) if getattr(e.body, "quantity", "") != "tray_g"]
    stage = dried(entries)["dry"]
    assert stage.by == "moistures"
    assert stage.missing.dry_sd_g > 10_000
    assert not stage.flagged


def test_coffee_still_on_the_beds_is_not_missing() -> None:
    entries = [e for e in book(HONEST) if getattr(e.body, "act", "") not in ("send", "back")]
    half = journal("day 13 17: shelve 12 180")[0]
    half_stored = [e for e in entries if getattr(e.body, "act", "") != "shelve"] + [half]
    assert dried(half_stored)["dry"].missing is None


def test_a_corrected_meter_moves_the_tray_curve_on_its_anchors() -> None:
    entries = book(HONEST, meter_off=0.008)
    lot = fold(entries, THINGS).lots[LOT]
    fix = Correction("", "meter_wb_frac", -0.008, entries[0].happened_utc_s)
    before, after = (tray_curves(lot, THINGS, c)[0] for c in ([], [fix]))
    moved = before.moisture_wb_frac[-1] - after.moisture_wb_frac[-1]
    assert 0.005 < moved < 0.008  # the prior of its starting weight holds it back a little
    assert moisture_known(lot, THINGS, [fix]).wb_frac == pytest.approx(END_WB, abs=1e-9)
    assert moisture_known(lot, THINGS, []).wb_frac == pytest.approx(END_WB + 0.008, abs=1e-9)


def test_a_meter_reading_above_thirty_percent_hangs_nothing() -> None:
    lot = fold(
        journal(
            "day 1 08: begin W\nday 1 13: pick 10\nday 1 14: fill T1 10\nday 2 07: spread 9 4\nday 2 16: tray 2000\nday 4 16: tray 1500\nday 4 16.1: meter 41 42 43"
        ),
        THINGS,
    ).lots[LOT]
    curve = tray_curves(lot, THINGS, [])[0]
    assert curve.anchors == ()
    assert curve.moisture_wb_frac[-1] == pytest.approx(1 - 2000 * 0.46 / 1500)
    assert moisture_known(lot, THINGS, []).source == "tray"
