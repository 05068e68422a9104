"""The practice season, built once for all tests of this floor that only look at it, and a small farm to write in."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from farmdesk import clock
from farmdesk.work.farm import OpenFarm
from farmdesk.work.practice import build_practice
from tests.work.season import instant, new_farm


@pytest.fixture(scope="session")
def practice(tmp_path_factory: pytest.TempPathFactory) -> Iterator[OpenFarm]:
    """The whole practice season, open. Read it; a test that writes builds its own."""
    farm = build_practice(tmp_path_factory.mktemp("practice") / "practice.season")
    yield farm
    farm.close()


@pytest.fixture
def farm(tmp_path) -> Iterator[OpenFarm]:
    """A small farm of its own, on its thirtieth day, with nothing written yet."""
    with clock.set_to(instant(30, 0)):
        farm = new_farm(tmp_path)
        yield farm
        farm.close()
