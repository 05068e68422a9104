"""The mill: every gram accounted for, impossible returns, lots that were mixed."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk.errors import NotPossible
from farmdesk.science import hulling as h
from farmdesk.science.moisture import mass_at_g

PARCHMENT, CHERRY = h.Intake.PARCHMENT, h.Intake.DRY_CHERRY
RUN = [
    h.RunLot("25-04W", PARCHMENT, 214_000.0, 205_000.0),
    h.RunLot("25-06W", PARCHMENT, 277_000.0, 193_000.0),
    h.RunLot("25-08W", PARCHMENT, 286_000.0, 233_000.0),
    h.RunLot("25-09N", CHERRY, 200_000.0, 97_000.0),
]


def plain(text: Any) -> str:
    return str(text).replace("\u202f", " ")


def test_two_lots_with_opposite_errors_are_found_with_the_kilograms() -> None:
    (pair,) = h.mixed_pairs(RUN)
    assert (pair.rich, pair.poor) == ("25-04W", "25-06W")
    assert (pair.rich_frac, pair.poor_frac) == (pytest.approx(0.958, abs=5e-4), pytest.approx(0.697, abs=5e-4))
    assert pair.together_frac == pytest.approx(398.0 / 491.0)
    assert pair.moved_g == pytest.approx(31_500.0, abs=100.0)
    assert plain(pair.text) == "Together 81.1 %, normal: about 32 kg of 25-06W was labelled 25-04W."


def test_moving_the_kilograms_brings_both_to_their_common_yield() -> None:
    (pair,) = h.mixed_pairs(RUN)
    assert (205_000.0 - pair.moved_g) / 214_000.0 == pytest.approx(pair.together_frac)
    assert (193_000.0 + pair.moved_g) / 277_000.0 == pytest.approx(pair.together_frac)


def test_no_pair_where_one_lot_is_merely_short_or_the_two_are_of_other_kind() -> None:
    short = [h.RunLot("a", PARCHMENT, 200_000.0, 140_000.0), h.RunLot("b", PARCHMENT, 200_000.0, 162_000.0)]
    assert h.mixed_pairs(short) == ()
    kinds = [h.RunLot("a", PARCHMENT, 214_000.0, 205_000.0), h.RunLot("b", CHERRY, 277_000.0, 100_000.0)]
    assert h.mixed_pairs(kinds) == ()
    both_gone = [h.RunLot("a", PARCHMENT, 200_000.0, 172_000.0), h.RunLot("b", PARCHMENT, 200_000.0, 100_000.0)]
    assert h.mixed_pairs(both_gone) == ()  # together 68 %: something else went missing too


def test_the_likeliest_pair_comes_first() -> None:
    run = [*RUN, h.RunLot("25-10W", PARCHMENT, 245_000.0, 178_000.0)]
    pairs = h.mixed_pairs(run)
    assert {pair.poor for pair in pairs} == {"25-06W", "25-10W"}
    middle = 0.81
    assert abs(pairs[0].together_frac - middle) <= abs(pairs[1].together_frac - middle)


def test_a_lots_own_band_counts_before_the_usual_one() -> None:
    own = (0.70, 0.99)
    run = [h.RunLot(lot.code, lot.intake, lot.in_g, lot.green_g, own) for lot in RUN[:2]]
    assert h.mixed_pairs(run) == ()


@given(
    st.floats(50_000.0, 400_000.0),
    st.floats(50_000.0, 400_000.0),
    st.floats(0.795, 0.825),
    st.floats(0.05, 0.15),
)
def test_any_mix_is_found_and_undone(first: float, second: float, share: float, swapped: float) -> None:
    moved = swapped * min(first, second)
    run = [
        h.RunLot("a", PARCHMENT, first, share * first + moved),
        h.RunLot("b", PARCHMENT, second, share * second - moved),
    ]
    outside = (share * first + moved) / first > 0.84 and (share * second - moved) / second < 0.78
    pairs = h.mixed_pairs(run)
    assert len(pairs) == int(outside)
    for pair in pairs:
        assert pair.moved_g == pytest.approx(moved, rel=1e-6)


# --- balance ----------------------------------------------------------------------------------------------------


def test_a_return_is_accounted_for() -> None:
    parts = {"light": 14_000.0, "small": 19_000.0, "peaberry": 14_000.0}
    back = h.mill_balance(h.Return(PARCHMENT, 214_000.0, {"top": 126_000.0}, parts, 39_000.0))
    assert (back.green_g, back.unexplained_g, back.within) == (173_000.0, 2_000.0, True)
    assert back.water_g is None  # a moisture is missing: marked
    assert back.trouble is None


def test_husk_that_was_not_weighed_is_expected_and_reported_together() -> None:
    back = h.Return(PARCHMENT, 100_000.0, {"top": 80_000.0}, {})
    alone = h.mill_balance(back)
    assert (alone.husk_g, alone.unexplained_g, alone.within) == (None, None, None)
    assert alone.husk_and_unexplained_g == 20_000.0
    expected = h.mill_balance(back, expected_husk_frac=0.185)
    assert expected.husk_estimated
    assert (expected.husk_g, expected.unexplained_g) == (18_500.0, 1_500.0)
    assert expected.within is False


def test_green_that_dried_at_the_mill_is_water_not_loss() -> None:
    back = h.Return(PARCHMENT, 200_000.0, {"top": 158_000.0}, {}, 39_000.0, 0.0, 0.125, 0.112)
    found = h.mill_balance(back)
    assert found.water_g == pytest.approx(mass_at_g(158_000.0, 0.112, 0.125) - 158_000.0)
    assert found.water_g == pytest.approx(2_347.0, abs=1.0)
    assert found.unexplained_g == pytest.approx(653.0, abs=1.0)


@given(
    st.floats(50_000.0, 1e6),
    st.floats(0.0, 0.84),
    st.floats(0.0, 0.02),
    st.floats(0.0, 0.2),
    st.floats(0.09, 0.14),
    st.floats(0.09, 0.14),
)
def test_the_parts_always_sum_to_what_went_in(
    fed: float, green: float, samples: float, husk: float, wet: float, later: float
) -> None:
    back = h.Return(PARCHMENT, fed, {"top": green * fed}, {"small": 0.0}, husk * fed, samples * fed, wet, later)
    found = h.mill_balance(back)
    assert found.husk_g is not None
    assert found.water_g is not None
    assert found.unexplained_g is not None
    total = found.green_g + found.husk_g + found.samples_g + found.water_g + found.unexplained_g
    assert total == pytest.approx(fed, rel=1e-9)
    assert found.within is (abs(found.unexplained_g) <= found.tolerance_g)


@pytest.mark.parametrize(
    ("fed", "weighings", "step", "allowed"),
    [(50_000.0, 6, 200.0, 1_600.0), (300_000.0, 6, 200.0, 3_000.0), (50_000.0, 0, 0.0, 1_000.0)],
)
def test_tolerance_is_the_larger_of_two(fed: float, weighings: int, step: float, allowed: float) -> None:
    assert h.tolerance_g(fed, weighings, step) == allowed


@pytest.mark.parametrize(
    ("intake", "green", "said"),
    [
        (PARCHMENT, 86_000.0, None),
        (PARCHMENT, 87_000.0, "87.0 kg of 100.0 kg is 87.0 %; it cannot be more than 86 %."),
        (CHERRY, 58_000.0, None),
        (CHERRY, 59_000.0, "59.0 kg of 100.0 kg is 59.0 %; it cannot be more than 58 %."),
        (PARCHMENT, 102_000.0, "102.0 kg came back of 100.0 kg sent."),
    ],
)
def test_impossible_returns(intake: h.Intake, green: float, said: str | None) -> None:
    found = h.impossible(intake, 100_000.0, green)
    assert (None if found is None else plain(found)) == said
    balance = h.mill_balance(h.Return(intake, 100_000.0, {"top": green}, {}))
    assert balance.trouble == found  # still balanced: it has to be talked about


# --- yields -----------------------------------------------------------------------------------------------------


@given(st.floats(1e4, 1e6), st.floats(0.4, 0.84), st.floats(0.08, 0.14), st.floats(0.08, 0.14), st.floats(0.0, 0.3))
def test_a_dry_yield_does_not_know_the_common_moisture(
    fed: float, share: float, in_wet: float, out_wet: float, ref: float
) -> None:
    green = share * fed
    at_ref = mass_at_g(green, out_wet, ref) / mass_at_g(fed, in_wet, ref)
    assert h.yield_dry_frac(green, out_wet, fed, in_wet) == pytest.approx(at_ref, rel=1e-9)


def test_the_four_figures_of_a_lot_card() -> None:
    card = h.outturn(214_000.0, 173_000.0, 126_000.0, 0.108, 0.110, 1_084_000.0)
    assert card.yield_frac == pytest.approx(0.808, abs=5e-4)
    assert card.top_frac == pytest.approx(126.0 / 214.0)
    assert card.yield_dry_frac == pytest.approx(173.0 * 0.890 / (214.0 * 0.892))
    assert card.in_per_top_kg_kg == pytest.approx(214.0 / 126.0)
    assert card.cherry_per_green_kg_kg == pytest.approx(1084.0 / 173.0)
    bare = h.outturn(214_000.0, 173_000.0, 126_000.0)
    assert bare.yield_dry_frac is None
    assert bare.cherry_per_green_kg_kg is None


def test_arrays_of_lots() -> None:
    shares = h.yield_frac(np.array([173.0, 145.0]), np.array([214.0, 180.0]))
    assert shares == pytest.approx([0.8084, 0.8056], abs=1e-4)
    assert h.yield_factor_kg(np.array([250.0, 214.0]), np.array([195.5, 126.0])) == pytest.approx(
        [89.514, 118.889], abs=1e-3
    )


# --- hull test --------------------------------------------------------------------------------------------------


def test_three_hulled_samples_give_a_mean_with_its_range() -> None:
    samples = [h.HullSample(250.0, 203.0, 195.5), h.HullSample(250.0, 205.0, 194.0), h.HullSample(300.0, 243.0, 232.0)]
    found = h.hull_test(samples)
    shares = np.array([0.812, 0.820, 0.810])
    assert found.yield_mean_frac == pytest.approx(shares.mean())
    assert found.yield_half_frac == pytest.approx(4.3027 * shares.std(ddof=1) / np.sqrt(3.0), rel=1e-4)
    assert found.factor_kg == pytest.approx(70.0 * 800.0 / 621.5)
    assert found.husk_mean_frac == pytest.approx(1.0 - shares.mean())
    assert h.hull_test([h.HullSample(250.0, 203.0, 195.5, 45.0)]).husk_mean_frac == pytest.approx(0.18)


def test_one_sample_says_nothing_of_its_doubt() -> None:
    found = h.hull_test([h.HullSample(250.0, 203.0, 195.5)])
    assert found.yield_half_frac is None
    assert found.factor_kg == pytest.approx(89.514, abs=1e-3)


@pytest.mark.parametrize(
    "call",
    [
        lambda: h.hull_test([]),
        lambda: h.hull_test([h.HullSample(180.0, 150.0, 140.0)]),
        lambda: h.hull_test([h.HullSample(250.0, 195.0, 203.0)]),
        lambda: h.hull_test([h.HullSample(250.0, 203.0, 195.0, 60.0)]),
        lambda: h.hull_test([h.HullSample(250.0, 203.0, 0.0)]),
        lambda: h.hull_test([h.HullSample(float("nan"), 203.0, 195.0)]),
        lambda: h.yield_frac(10.0, 0.0),
        lambda: h.yield_frac(np.array([10.0, 30.0]), np.array([20.0, 20.0])),
        lambda: h.yield_factor_kg(250.0, 0.0),
        lambda: h.price_ratio(0.0),
        lambda: h.green_equivalent_g(1.0, "husk"),
        lambda: h.mill_balance(h.Return(PARCHMENT, 0.0, {}, {})),
        lambda: h.mill_balance(h.Return(PARCHMENT, 1e5, {"top": -1.0}, {})),
        lambda: h.mill_balance(h.Return(PARCHMENT, 1e5, {"top": float("nan")}, {})),
        lambda: h.outturn(1e5, 9e4, 9.5e4, 0.11, float("nan")),
        lambda: h.outturn(1e5, 1.1e5, 9e4),
        lambda: h.outturn(1e5, 8e4, 8.1e4),
        lambda: h.hull_test([h.HullSample(250.0, 200.0, 190.0, -10.0)]),
        lambda: h.yield_factor_kg(np.array([250.0, 250.0]), np.array([195.0, 196.0, 197.0])),
        lambda: h.yield_factor_kg(250.0, 195.5, float("nan")),
        lambda: h.price_ratio(94.0, float("nan")),
        lambda: h.tolerance_g(float("nan"), 1, 1.0),
        lambda: h.tolerance_g(1e5, -1, 100.0),
        lambda: h.mixed_pairs([h.RunLot("a", PARCHMENT, 0.0, 1.0), h.RunLot("b", PARCHMENT, 1e5, 8e4)]),
    ],
)
def test_what_no_mill_can_do_is_refused(call: Any) -> None:
    with pytest.raises(NotPossible):
        call()
