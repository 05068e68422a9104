"""A block's boundary as hands and telephones write it: corners in degrees, checked before they are kept."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

import numpy as np

from farmdesk.errors import NotPossible
from farmdesk.science import ground
from farmdesk.text import N_, Num, Text
from farmdesk.work.changes import Hand
from farmdesk.work.guards import ask

if TYPE_CHECKING:
    from farmdesk.picture.things import Block
    from farmdesk.work.farm import OpenFarm

DECIMALS = 6  # of a degree, which buyers' papers ask for: Regulation (EU) 2023/1115, Article 2(28)
AREA_APART_FRAC = 0.05  # typed area and boundary may differ by so much (a handheld receiver; common practice)
FAR_KM = 50.0  # a block further from the farm's others has its numbers swapped
SHARED_FRAC = 0.02  # of the smaller of two blocks: less is the noise of the receiver (common practice, no source)
_NUMBER = re.compile(r"[-+]?\d+(?:\.\d+)?")


def corners(text: str) -> ground.Corners:
    """The corners (n, 2) [deg] of a boundary as typed: `14.123456, -88.123456; …`; none for nothing typed.

    Raises NotPossible where it is no list of latitudes and longitudes.
    """
    numbers, rest = _NUMBER.findall(text), _NUMBER.sub("", text)
    if re.search(r"[^\s,;/()°]", rest) or len(numbers) % 2:
        raise NotPossible(N_("boundaries", "A boundary is latitude, longitude; and so on: 14.123456, -88.123456; …"))
    found = np.array([float(number) for number in numbers], dtype=np.float64).reshape(-1, 2)
    if len(found) and (np.abs(found[:, 0]).max() > 90 or np.abs(found[:, 1]).max() > 180):
        raise NotPossible(N_("boundaries", "A latitude is at most 90: latitude comes first, then longitude."))
    if len(found) > 1 and np.array_equal(found[0], found[-1]):
        found = found[:-1]  # a ring that names its first corner again
    return found


def check(farm: OpenFarm, block: Block, hand: Hand) -> None:
    """Refuse a boundary that cannot be, ask once about one that is unlikely. Raises NotPossible, Asked."""
    own = corners(block.boundary)
    if not len(own):
        return
    if len(own) == 2 or (len(own) > 2 and ground.crosses_itself(own)):
        raise NotPossible(
            N_("boundaries", "The boundary of block {code} crosses itself; type its corners in order.", code=block.code)
        )
    text = _unlikely(farm, block, own)
    if text is not None:
        ask(hand, "boundary", f"boundary {block.code}", text)


def _unlikely(farm: OpenFarm, block: Block, own: ground.Corners) -> Text | None:
    """The first thing that is odd about a boundary, for one question is enough; None where nothing is."""
    others = {b.code: corners(b.boundary) for b in farm.things.blocks.values() if b.code != block.code and b.boundary}
    for code, theirs in others.items():
        away_km = ground.apart_km(own, theirs)
        if away_km > FAR_KM:
            return N_(
                "boundaries", "Block {code} would lie {far} from block {other}. Latitude and longitude swapped?",
                code=block.code, far=Num(away_km, "km"), other=code,
            )  # fmt: skip
    area = ground.area_ha(own)
    for code, theirs in others.items():
        shared, smaller = ground.shared_ha(own, theirs), min(area, ground.area_ha(theirs))
        if smaller and shared > SHARED_FRAC * smaller:
            return N_(
                "boundaries", "Blocks {a} and {b} share {area}. Is the boundary right?", a=block.code, b=code,
                area=Num(shared, "ha", 2),
            )  # fmt: skip
    if area and block.area_ha and abs(area - block.area_ha) > AREA_APART_FRAC * block.area_ha:
        return N_(
            "boundaries", "The boundary of block {code} holds {area}, but {typed} is typed. Keep both?",
            code=block.code, area=Num(area, "ha", 2), typed=Num(block.area_ha, "ha", 2),
        )  # fmt: skip
    if min(len(number.partition(".")[2]) for number in _NUMBER.findall(block.boundary)) < DECIMALS:
        return N_(
            "boundaries", "A corner of block {code} has fewer than {n} decimals, too few where a plot must be named. Keep it?",
            code=block.code, n=DECIMALS,
        )  # fmt: skip
    return None
