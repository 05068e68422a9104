"""The dry-matter ledger: what must not change except through a named stream, and the spread it is judged by.

Wet weight changes all day; dry matter does not. Each stage carries it as a value with a spread; what leaves
is named (sorted out, floaters, pulp and juice, gas, picked out, husk), and what no name explains is shown
beside the spread of all that led to it. The drying stage is judged by the lot's own tray, its twin: it lost
the same water and the same gas, so the ratio of its weights is known far better than either moisture.
"""

from __future__ import annotations

from dataclasses import dataclass

from farmdesk.picture.curves import (
    BIAS_WB_FRAC,
    NOISE_WB_FRAC,
    TRAY_SD_FRAC,
    TrayCurve,
    tray_curves,
)
from farmdesk.picture.entries import (
    FLOATERS,
    GREEN,
    HUSK,
    JUICE,
    PICKED_OUT,
    PULP,
    SORTED,
    WATER,
    Correction,
)
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.measures import (
    accepted_g,
    end_wb_frac,
    graded_g,
    green_g,
    husk_g,
    method_of,
    sent_g,
    spread_g,
    stored_g,
)
from farmdesk.picture.things import Things
from farmdesk.science.moisture import DryMatter, dry_matter

CHERRY_WB_FRAC, CHERRY_SD_FRAC = 0.65, 0.03  # ripe cherry 60-70 %: Alves et al. 2013, Coffee Science 8(2); FAO text
SCALE_SD_FRAC = 0.001  # of a weight put together from many sacks (common practice, no source)
PICKED_FRAC, PICKED_SD_FRAC = 0.005, 0.004  # picked out by hand on the beds, where not weighed (from memory)
GAS_FRAC, GAS_SD_FRAC = 0.010, 0.006  # lost to respiration on the beds, 1-3 % on long naturals (from memory)
TWIN_SD_FRAC = 0.006  # how well one tray stands for all beds (from memory)
FLAG_SD = 2.5  # beyond this many spreads somebody should look
MILL_TOLERANCE_FRAC, MILL_TOLERANCE_G = 0.01, 1000.0  # of what was sent; common practice, no source


@dataclass(frozen=True, slots=True)
class Stream:
    """What left under a name: grams [g] as posted and dry matter with its spread."""

    name: str
    grams: int
    dry: DryMatter


@dataclass(frozen=True, slots=True)
class Stage:
    """A lot at a stage (delivered, accepted, spread, dry, sent, green): grams [g], dry matter, and what
    left since the stage before it. `missing` is the dry matter no name explains, with the spread it must
    be judged by; None where nothing can be said.
    """

    name: str
    grams: int
    dry: DryMatter
    left: tuple[Stream, ...] = ()
    missing: DryMatter | None = None
    flagged: bool = False
    by: str = ""  # tray, moistures, scale


def ledger(lot: LotPicture, things: Things, corrections: list[Correction]) -> list[Stage]:
    """The stages of a lot as far as its papers go."""
    stages: list[Stage] = []
    method = method_of(lot, things)
    start = (method.start_wb_frac, method.start_wb_sd_frac) if method else (0.54, 0.02)
    cherry = start if method and method.whole else (CHERRY_WB_FRAC, CHERRY_SD_FRAC)
    delivered, accepted = lot.delivered_g, accepted_g(lot)
    if delivered > 0:
        stages.append(Stage("delivered", delivered, _dry(delivered, *cherry)))
        if accepted != delivered:
            left = [(name, lot.balance.get(name, 0)) for name in (SORTED, FLOATERS)]
            streams = tuple(Stream(name, grams, _dry(grams, *cherry)) for name, grams in left if grams)
            stages.append(Stage("accepted", accepted, _dry(accepted, *cherry), streams))
    wet, stored = spread_g(lot), stored_g(lot)
    if wet:
        trays = tray_curves(lot, things, corrections)
        first = next((t for t in trays if not t.place), trays[0] if trays else None)
        dry = _wet_dry(wet, first, start)
        gone = sum(lot.balance.get(name, 0) for name in (PULP, JUICE))
        before = stages[-1].dry if stages else dry
        pulp = DryMatter(before.dry_g - dry.dry_g, (before.dry_sd_g**2 + dry.dry_sd_g**2) ** 0.5)
        streams = (Stream(JUICE if method and method.whole else PULP, gone, pulp),) if gone else ()
        stages.append(Stage("spread", wet, dry, streams))
        end = end_wb_frac(lot, corrections)
        lies = any(grams > 0 and account in things.places for account, grams in lot.heaps.items())
        if stored and end is not None:
            stages.append(_dried(lot, wet, stored, dry, end, first, lies))
    sent, green = sent_g(lot), green_g(lot)
    if sent and green is not None and stages and stages[-1].name == "dry":
        stages += _milled(lot, sent, green, stages[-1])
    return stages


def _dry(grams: int, wb_frac: float, sd_frac: float) -> DryMatter:
    return dry_matter(float(grams), grams * SCALE_SD_FRAC, wb_frac, sd_frac)


def _wet_dry(wet: int, tray: TrayCurve | None, start: tuple[float, float]) -> DryMatter:
    """Dry matter at spreading: by the tray's anchored start where it has one, else by the method's default."""
    if tray is None or not tray.anchors:
        return _dry(wet, *start)
    sd_frac = (tray.dry_sd_g**2 / float(tray.grams[0]) ** 2 + (TWIN_SD_FRAC * (1 - tray.start_wb_frac)) ** 2) ** 0.5
    return _dry(wet, tray.start_wb_frac, sd_frac)


def _dried(
    lot: LotPicture, wet: int, stored: int, dry: DryMatter, end: float, tray: TrayCurve | None, lies: bool
) -> Stage:
    """Spread to store. While some of it still lies on beds nothing is missing yet."""
    at_store = _dry(stored, end, (NOISE_WB_FRAC**2 / 3 + BIAS_WB_FRAC**2) ** 0.5)
    posted = lot.balance.get(PICKED_OUT, 0)
    water = Stream(WATER, lot.balance.get(WATER, 0), DryMatter(0.0, 0.0))
    if lies:
        return Stage("dry", stored, at_store, (water,))
    if posted:
        picked = Stream(PICKED_OUT, posted, _dry(posted, end, 0.05))
    else:
        picked = Stream(PICKED_OUT, 0, DryMatter(dry.dry_g * PICKED_FRAC, dry.dry_g * PICKED_SD_FRAC))
    if tray is not None and len(tray.grams) > 1 and tray.anchors:
        # the tray has breathed like the lot: its ratio of weights needs no moisture and no gas
        expected = wet * float(tray.grams[-1] / tray.grams[0])
        at_end = 1 - float(tray.moisture_wb_frac[-1])
        matter = expected * at_end
        gas_g = dry.dry_g - matter
        gas = Stream(">gas", 0, DryMatter(gas_g, dry.dry_g * GAS_SD_FRAC))
        missing_g = matter - picked.dry.dry_g - at_store.dry_g
        relative = (2 * TRAY_SD_FRAC**2 + TWIN_SD_FRAC**2 + (NOISE_WB_FRAC / (1 - end)) ** 2 / 3) ** 0.5
        sd = ((matter * relative) ** 2 + picked.dry.dry_sd_g**2 + (stored * SCALE_SD_FRAC) ** 2) ** 0.5
        by = "tray"
    else:
        gas = Stream(">gas", 0, DryMatter(dry.dry_g * GAS_FRAC, dry.dry_g * GAS_SD_FRAC))
        missing_g = dry.dry_g - gas.dry.dry_g - picked.dry.dry_g - at_store.dry_g
        sd = (dry.dry_sd_g**2 + gas.dry.dry_sd_g**2 + picked.dry.dry_sd_g**2 + at_store.dry_sd_g**2) ** 0.5
        by = "moistures"
    missing = DryMatter(missing_g, sd)
    return Stage("dry", stored, at_store, (water, gas, picked), missing, abs(missing_g) > FLAG_SD * sd, by)


def _milled(lot: LotPicture, sent: int, green: int, dry: Stage) -> list[Stage]:
    """Sent and returned: judged by the scale, since husk and grades are weighed at one moisture."""
    share = dry.dry.dry_g / dry.grams
    sent_dry = DryMatter(sent * share, dry.dry.dry_sd_g * sent / dry.grams)
    husk = husk_g(lot) or 0
    missing = sum(g for m in lot.trail if m.act == "back" for a, g in m.lines if a == ">unexplained")
    tolerance = max(MILL_TOLERANCE_FRAC * sent, MILL_TOLERANCE_G)
    flagged = abs(missing) > tolerance or any((graded_g(lot, name) or 0) < 0 for name in GREEN)
    stream = (Stream(HUSK, husk, DryMatter(husk * share, husk * share * 0.02)),) if husk else ()
    green_dry = DryMatter(green * share, green * share * 0.01)
    return [
        Stage("sent", sent, sent_dry),
        Stage("green", green, green_dry, stream, DryMatter(missing * share, tolerance * share / 2), flagged, "scale"),
    ]
