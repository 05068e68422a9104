"""The practice season, built once for all tests of this floor that only look at it."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from farmdesk.work.farm import OpenFarm
from farmdesk.work.practice import build_practice


@pytest.fixture(scope="session")
def practice(tmp_path_factory: pytest.TempPathFactory) -> Iterator[OpenFarm]:
    """The whole practice season, open. Read it; a test that writes builds its own."""
    farm = build_practice(tmp_path_factory.mktemp("practice") / "practice.season")
    yield farm
    farm.close()
