"""A small farm in a real season file, for tests of the verbs."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from farmdesk.picture.things import Block, Farm, Instrument, Things
from farmdesk.work.farm import OpenFarm
from tests.picture import journal

LOT = journal.LOT
instant = journal.instant


def things() -> Things:
    """The journal's farm with blocks, scale, meter and trays."""
    return replace(
        journal.THINGS,
        farm=Farm("Test farm", "25", "America/Tegucigalpa", first_day="2023-11-10", last_day="2024-03-12"),
        blocks={"A": Block("A", "Upper", 0.7, 1620, 1660, "Catuaí"), "B": Block("B", "Rock", 0.5, 1640, 1680, "Gesha")},
        instruments={
            "scale-1": Instrument("scale-1", "platform scale", "weight", 0.05, 0.05),
            "meter-1": Instrument("meter-1", "moisture meter", "meter_wb_frac", 0.0075, 0.001),
            "pH-1": Instrument("pH-1", "pH meter", "ph", 0.07, 0.01),
        },
    )


def new_farm(folder: Path) -> OpenFarm:
    """An empty season of this farm."""
    return OpenFarm.create(folder / "season.season", things())
