"""A page as a picture: as wide as asked, white where nothing is, the same page as on paper."""

from __future__ import annotations

import numpy as np
import pytest

from farmdesk.papers.preview import page_count, page_image
from tests.papers.made import sheet_13w, sheet_pdf

PDF = sheet_pdf(sheet_13w())


@pytest.mark.parametrize("wide", [16, 333, 595, 900])
def test_as_wide_as_asked_in_the_paper_s_proportion(wide: int) -> None:
    data, width, height = page_image(PDF, 0, wide)
    assert width == wide
    assert height == pytest.approx(wide * 297 / 210, abs=1)
    assert len(data) == width * height * 4


def test_red_green_blue_and_no_hole() -> None:
    data, width, height = page_image(PDF, 0, 600)
    picture = np.frombuffer(data, dtype=np.uint8).reshape(height, width, 4)
    assert (picture[:, :, 3] == 255).all()
    assert (picture[:20] == 255).all(), "the margin is white"
    assert (picture[:, :, :3].min(axis=2) < 60).any(), "letters are black"
    water = picture.reshape(-1, 4).astype(int)
    assert (water[:, 2] - water[:, 0]).max() > 30, "water is blue, so red and blue are not changed about"
    assert (water[:, 0] - water[:, 2]).max() < 12, "nothing on paper is warm"


def test_pages_are_counted_and_a_page_that_is_not_there_is_told() -> None:
    assert page_count(PDF) == 1
    for index in (-1, 1):
        with pytest.raises(IndexError):
            page_image(PDF, index, 100)
