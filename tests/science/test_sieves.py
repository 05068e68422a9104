"""Sieves: shares that close, slips of the hand, and what is no screen."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk.errors import NotPossible
from farmdesk.science import sieves
from farmdesk.science.sieves import sieve

stacks = st.dictionaries(st.integers(8, 20), st.floats(0.1, 500.0), min_size=2, max_size=8)


@given(stacks, st.floats(0.0, 200.0), st.floats(0.0, 200.0), st.floats(1.0, 3000.0))
def test_shares_close_and_means_stay_inside(on: dict[int, float], pan: float, peaberry: float, start: float) -> None:
    test = sieve(start, on, pan, peaberry)
    total = sum(test.on_frac(n) for n in test.screens) + test.pan_frac + test.peaberry_frac
    assert total == pytest.approx(1.0)
    ups = [test.up_frac(n) for n in test.screens]
    assert ups == sorted(ups)
    assert ups[-1] == pytest.approx(1.0 - test.pan_frac - test.peaberry_frac)
    assert min(on) - 1e-9 <= test.mean_screen() <= max(on) + 1e-9
    assert 0.0 <= test.sd_screens() <= (max(on) - min(on)) / 2.0 + 1e-9
    assert test.mean_screen(pan_as=min(on) - 1) <= test.mean_screen() + 1e-9
    upper, lower, share = test.best_two()
    assert upper > lower
    assert share == pytest.approx(test.on_frac(upper) + test.on_frac(lower))
    assert all(
        share >= test.on_frac(a) + test.on_frac(b) - 1e-12 for a, b in zip(test.screens, test.screens[1:], strict=False)
    )
    size = sieves.brazil_size(test)
    assert size.declared is None or 1.0 - test.up_frac(size.declared) <= 0.1 + 1e-9


def test_the_order_of_typing_does_not_matter() -> None:
    assert sieve(100.0, {15: 20.0, 17: 50.0, 16: 30.0}) == sieve(100.0, {17: 50.0, 16: 30.0, 15: 20.0})


def test_ounces_and_pounds_are_caught() -> None:
    doubt = sieve(300.0, {18: 3.0, 17: 5.0, 16: 2.0}, 0.6).doubt()
    assert doubt is not None
    assert "oz" in str(doubt)
    doubt = sieve(0.661, {18: 100.0, 17: 150.0, 16: 45.0}, 4.0).doubt()
    assert doubt is not None
    assert "lb" in str(doubt)


def test_a_loss_over_one_percent_is_said_with_both_weights() -> None:
    assert sieve(300.0, {17: 200.0, 16: 98.0}).doubt() is None
    doubt = sieve(300.0, {17: 190.0, 16: 98.0}).doubt()
    assert str(doubt).replace("\u202f", " ") == "The screens add up to 288.0 g, the sample was 300.0 g: 4.0 % apart."
    assert sieve(300.0, {17: 210.0, 16: 98.0}).doubt() is not None  # more came out than went in


def test_nothing_can_be_declared_where_most_falls_through() -> None:
    size = sieves.brazil_size(sieve(100.0, {18: 40.0, 17: 30.0}, 30.0))
    assert (size.declared, size.run_of_mill) == (None, True)


def test_a_table_label_is_a_text_with_its_source_beside() -> None:
    book = sieves.apertures()["india"]
    assert str(book.label) == "Round holes, India"
    assert book.source


@pytest.mark.parametrize(
    "call",
    [
        lambda: sieves.screen_mm(3.0),
        lambda: sieves.screen_mm(np.array([16.0, 70.0])),
        lambda: sieves.typed_aperture_mm(17.0),
        lambda: sieves.typed_aperture_mm(0.0),
        lambda: sieves.typed_aperture_mm(np.array([6.0, 7.0])),  # type: ignore[arg-type]
        lambda: sieves.sieve(300.0, {"a": 1.0}),  # type: ignore[dict-item]
        lambda: sieves.sieve(300.0, {17: 100.0}, 20.0).mean_screen(pan_as=99),
        lambda: sieves.typed_aperture_mm(float("nan")),
        lambda: sieves.nominal_mm(18, "indonesia_2008"),
        lambda: sieves.nominal_mm(18, "nowhere"),
        lambda: sieve(300.0, {}),
        lambda: sieve(300.0, {17: 0.0, 16: 0.0}, 300.0),
        lambda: sieve(0.0, {17: 10.0}),
        lambda: sieve(300.0, {17: -1.0}),
        lambda: sieve(300.0, {17: float("nan")}),
        lambda: sieve(300.0, {170: 10.0}),
        lambda: sieve(300.0, {17: 10.0}).best_two(),
    ],
)
def test_what_is_no_sieve_test_is_refused(call: Any) -> None:
    with pytest.raises(NotPossible):
        call()


def test_seventeen_millimetres_are_a_screen_number() -> None:
    with pytest.raises(NotPossible) as caught:
        sieves.typed_aperture_mm(17.0)
    assert "screen" in str(caught.value.hint)
