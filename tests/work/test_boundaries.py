"""A block's boundary: read as it is pasted, refused where it cannot be, asked about once where it is unlikely."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from farmdesk import clock
from farmdesk.errors import Asked, NotPossible
from farmdesk.work import boundaries, carrying, registers
from farmdesk.work.cards import blocks_of
from farmdesk.work.changes import Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.setup import save
from tests.published.test_ground import square


def pasted(plot: np.ndarray, decimals: int = 6) -> str:
    return "; ".join(f"{lat:.{decimals}f}, {lon:.{decimals}f}" for lat, lon in plot)


A = square(np.sqrt(7000))  # block A is 0.7 ha


def save_a(farm: OpenFarm, text: str, **answers: str) -> None:
    save(farm, replace(farm.things.blocks["A"], boundary=text), hand=Hand(answers=answers))


@pytest.mark.parametrize(
    "text",
    [
        pasted(A),
        pasted(A).replace("; ", "\n"),
        pasted(A).replace(", ", " "),
        f"({pasted(A)})",
        pasted(np.vstack([A, A[:1]])),
    ],
)
def test_corners_are_read_as_they_are_pasted(text: str) -> None:
    np.testing.assert_allclose(boundaries.corners(text), A, atol=1e-6)


def test_nothing_typed_is_no_boundary(farm: OpenFarm) -> None:
    assert len(boundaries.corners("")) == 0
    save_a(farm, "")
    assert farm.things.blocks["A"].boundary == ""


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        ("by the creek", "latitude, longitude"),
        ("14.123456", "latitude, longitude"),
        (pasted(A[:, ::-1]).replace("-88", "-98"), "latitude comes first"),
        (pasted(A[:2]), "crosses itself"),
        (pasted(A[[0, 2, 1, 3]]), "crosses itself"),
    ],
)
def test_what_is_no_boundary_is_refused(farm: OpenFarm, text: str, sentence: str) -> None:
    with pytest.raises(NotPossible, match=sentence):
        save_a(farm, text)
    assert farm.things.blocks["A"].boundary == ""


@pytest.mark.parametrize(
    ("plot", "decimals", "sentence"),
    [
        (square(np.sqrt(7500)), 6, "holds 0.75.ha, but 0.70.ha is typed"),  # 7 %
        (A, 5, "fewer than 6 decimals"),
    ],
)
def test_what_is_unlikely_is_asked_once_and_then_kept(farm: OpenFarm, plot, decimals: int, sentence: str) -> None:
    with pytest.raises(Asked, match=sentence):
        save_a(farm, pasted(plot, decimals))
    save_a(farm, pasted(plot, decimals), **{"boundary A": "keep"})
    assert farm.things.blocks["A"].boundary == pasted(plot, decimals)


def test_five_per_cent_is_not_asked_about(farm: OpenFarm) -> None:
    save_a(farm, pasted(square(np.sqrt(7000 * 1.04))))


def test_a_block_over_another_and_one_far_away(farm: OpenFarm) -> None:
    save_a(farm, pasted(A))
    other = replace(farm.things.blocks["B"], boundary=pasted(square(np.sqrt(5000))))
    with pytest.raises(Asked, match=r"Blocks B and A share 0\.5"):
        save(farm, other)
    with pytest.raises(Asked, match="swapped"):
        save(farm, replace(other, boundary=pasted(square(np.sqrt(5000), 15.5))))


def test_a_block_split_next_season_leaves_last_seasons_lots_where_they_were(practice: OpenFarm, tmp_path) -> None:
    end = practice.picture.book.last_written_utc_s
    before = {code: blocks_of(practice.picture, lot) for code, lot in practice.picture.lots.items()}
    whole = practice.things.blocks["E"]
    with clock.set_to(end):
        new = carrying.carry_over(practice, tmp_path / "26.season", "26", end)
        try:
            registers.take_out(new, "blocks", "E", hand=Hand(answers={"out E": "out"}))
            for code in ("E1", "E2"):
                save(new, replace(whole, code=code, name=f"Half {code}", area_ha=0.4, trees_n=1800))
            assert "E" not in new.things.blocks
            assert {"E1", "E2"} <= set(new.things.blocks)
        finally:
            new.close()
    assert practice.things.blocks["E"] == whole
    assert {code: blocks_of(practice.picture, lot) for code, lot in practice.picture.lots.items()} == before
    assert any("E" in blocks for blocks in before.values())
