"""Two to six lots over one another on axes they share, and what may be concluded from it.

The lines are of the chosen lots. What is said under them is of all finished lots of their methods, for two
lines never tell two methods apart; it is said with every reason not to believe it.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np

from farmdesk.clock import DAY_S
from farmdesk.errors import NotPossible
from farmdesk.picture.curves import meter_points, tray_curves
from farmdesk.picture.entries import Cup
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.measures import fills, method_of, on_beds, pick_days, stored_g
from farmdesk.picture.picture import Picture
from farmdesk.science.counting import Comparison, LotOf, compare, too_few
from farmdesk.text import N_, Listing, Num, Text
from farmdesk.work.cards import blocks_of
from farmdesk.work.figures import LOT, Curve, Figure, Floats
from farmdesk.work.goodhours import GoodHours
from farmdesk.work.lots import lot_of
from farmdesk.work.portions import TARGET_WB_FRAC, method_words, rain_blocks

if TYPE_CHECKING:
    from farmdesk.ahead.ferment_fit import FermentLot
    from farmdesk.work.farm import OpenFarm

X_KINDS = ("days", "time", "good_h", "h20")
MOST_LOTS, MOST_OTHERS = 6, 8
NO_TARGET = float("nan")  # no pH is at or below it
FACTORS = {"block": N_("compare", "block"), "month": N_("compare", "month")}
WHAT = {
    "days": (N_("compare", "Days to {target}", target=Num(TARGET_WB_FRAC * 100, "%")), 1),
    "good_h": (N_("compare", "Good drying hours to {target}", target=Num(TARGET_WB_FRAC * 100, "%")), 0),
    "h20": (N_("compare", "Hours at 20 °C to the target pH"), 0),
    "cup": (N_("compare", "Cup score"), 1),
}
WHAT["time"] = WHAT["days"]


@dataclass(frozen=True, slots=True)
class Other:
    """A lot that may be laid over the first one."""

    code: str
    method: Text
    blocks: tuple[str, ...]


@dataclass(frozen=True, eq=False)
class CompareStory:
    """The lots chosen, their figure, what may be concluded (a sentence each), and lots that could join them."""

    codes: tuple[str, ...]
    figure: Figure
    said: tuple[Text, ...]
    others: tuple[Other, ...]


@dataclass(frozen=True, slots=True, eq=False)
class _Line:
    """A lot's course: x [d, UTC s, good h or h at 20 °C], y [% wet basis or pH], and d or h to the target.

    target_at is None where the target is not met.
    """

    x: Floats
    y: Floats
    target_at: float | None
    aims: bool = True  # whether its method has a target at all


def compare_story(
    farm: OpenFarm, codes: Sequence[str], at_utc_s: int | None = None, x_kind: str = "days"
) -> CompareStory:
    """Lots over one another at an instant [UTC s], as known then.

    x_kind: `days` since spreading, `time` (dates), `good_h` (good drying hours) or, for ferments, `h20` (hours at
    20 °C).
    Raises NotPossible for an unknown lot, none at all, or more than six.
    """
    chosen = tuple(dict.fromkeys(codes))
    if not 1 <= len(chosen) <= MOST_LOTS:
        raise NotPossible(N_("compare", "One to {most} lots can lie over one another.", most=MOST_LOTS))
    picture = farm.seen(at_utc_s)
    lots = [lot_of(picture, code) for code in chosen]
    course = _course(farm, picture, x_kind)
    lines = {lot.code: course(lot) for lot in lots}
    figure = _figure(picture, lines, x_kind)
    said = list(_concluded(picture, lots, x_kind, lambda lot: line.target_at if (line := course(lot)) else None))
    said += _concluded(picture, lots, "cup", _cup)
    return CompareStory(chosen, figure, tuple(dict.fromkeys(said)), _others(picture, lots))


def _others(picture: Picture, lots: Sequence[LotPicture]) -> tuple[Other, ...]:
    """What else has been on the beds, at most eight: of the first lot's method before others, the nearest in time."""
    first = lots[0]
    begun = list(picture.lots)
    method = method_of(first, picture.things)

    def far(lot: LotPicture) -> tuple[bool, int]:
        return method_of(lot, picture.things) != method, abs(begun.index(lot.code) - begun.index(first.code))

    free = [lot for lot in picture.lots.values() if lot not in lots and on_beds(lot, picture.things, picture.time)]
    return tuple(
        Other(lot.code, method_words(lot), tuple(blocks_of(picture, lot)))
        for lot in sorted(free, key=far)[:MOST_OTHERS]
    )


# --- the lines --------------------------------------------------------------------------------------------------


def _course(farm: OpenFarm, picture: Picture, x_kind: str) -> Callable[[LotPicture], _Line | None]:
    """How a lot becomes a line; each lot is drawn once, though its methods ask for it again."""
    kept: dict[str, _Line | None] = {}

    def course(lot: LotPicture) -> _Line | None:
        if lot.code not in kept:
            kept[lot.code] = _ferment(farm, picture, lot) if x_kind == "h20" else _drying(picture, lot, x_kind)
        return kept[lot.code]

    return course


def _drying(picture: Picture, lot: LotPicture, x_kind: str) -> _Line | None:
    """The tray with the most weighings, else the meter; from the instant the lot was first spread."""
    stays = on_beds(lot, picture.things, picture.time)
    if not stays:
        return None
    trays = tray_curves(lot, picture.things, picture.corrections)
    if trays:
        tray = max(trays, key=lambda t: t.grams.size)
        at, wb_frac = tray.at_utc_s, tray.moisture_wb_frac
    else:
        points = meter_points(lot, picture.corrections)
        at = np.array([p.at_utc_s for p in points], dtype=np.float64)
        wb_frac = np.array([p.wb_frac for p in points], dtype=np.float64)
    begin = float(min(stay.from_utc_s for stay in stays))
    keep = at >= begin
    at, wb_frac = at[keep], wb_frac[keep]
    if not at.size:
        return None
    since = GoodHours(picture, begin, float(at[-1])).at(at) if x_kind == "good_h" else (at - begin) / DAY_S
    met = _met(since, wb_frac * 100, TARGET_WB_FRAC * 100)
    return _Line(at if x_kind == "time" else since, wb_frac * 100, met)


def _ferment(farm: OpenFarm, picture: Picture, lot: LotPicture) -> _Line | None:
    """The vessel with the most pH readings."""
    from farmdesk.ahead.ferment_fit import hours_of  # SciPy comes with it, so only when it is needed
    from farmdesk.work.foresight import ferment_lot

    found: list[FermentLot] = []
    for fill in fills(lot, picture.things):
        one = ferment_lot(farm, picture, lot, fill, NO_TARGET)
        if one is not None and one.ph.size > 1:
            found.append(one)
    if not found:
        return None
    best = max(found, key=lambda one: one.ph.size)
    x = hours_of(best, float(best.at_utc_s[-1])).readings_h20
    return _Line(x, best.ph, _met(x, best.ph, best.target_ph), not np.isnan(best.target_ph))


def _met(x: Floats, y: Floats, target: float) -> float | None:
    """Where a falling course first meets its target, between two readings; None where it never does."""
    below = np.flatnonzero(y <= target)
    if not below.size:
        return None
    i = int(below[0])
    if i == 0:
        return float(x[0])
    return float(x[i - 1] + (x[i] - x[i - 1]) * (y[i - 1] - target) / (y[i - 1] - y[i]))


def _figure(picture: Picture, lines: dict[str, _Line | None], x_kind: str) -> Figure:
    drawn = {code: line for code, line in lines.items() if line is not None}
    ferment = x_kind == "h20"
    dated = x_kind == "time"
    begin = min([float(line.x[0]) for line in drawn.values()], default=0.0) if dated else 0.0
    last = max([float(line.x[-1]) for line in drawn.values()], default=begin + 1.0)
    span = last - begin or 1.0
    values = np.concatenate([line.y for line in drawn.values()] or [np.array([4.0, 5.5] if ferment else [10.0, 54.0])])
    if ferment:
        low, high = float(values.min()) - 0.2, float(values.max()) + 0.2
    else:
        low, high = min(8.0, float(values.min()) - 1), float(np.ceil((values.max() + 2) / 5) * 5)
    curves = tuple(
        Curve(LOT, line.x, line.y, N_("compare", "{lot}", lot=code), style=list(lines).index(code))
        for code, line in drawn.items()
    )
    target = N_("figures", "{target}", target=Num(TARGET_WB_FRAC * 100, "%"))
    return Figure(
        N_("compare", "Ferments") if ferment else N_("compare", "Drying"),
        _sentence(lines, x_kind),
        x_kind,
        "pH" if ferment else "%",
        begin - 0.02 * span,
        begin + 1.14 * span,  # room for the names at the ends
        low,
        high,
        curves,
        target=None if ferment else (TARGET_WB_FRAC * 100, target),
        rain=rain_blocks(picture, begin, last) if dated else (),
        y_decimals=2 if ferment else 1,
    )


def _sentence(lines: dict[str, _Line | None], x_kind: str) -> Text:
    """What each lot took, and which were never read."""
    unit, decimals = ("d", 1) if x_kind in ("days", "time") else ("h", 0)
    parts: list[Text] = []
    for code, line in lines.items():
        if line is None:
            parts.append(N_("compare", "{lot} was not read", lot=code))
        elif not line.aims:
            parts.append(N_("compare", "{lot} aims at no pH", lot=code))
        elif line.target_at is None:
            parts.append(N_("compare", "{lot} not there yet", lot=code))
        else:
            parts.append(N_("compare", "{lot} {took}", lot=code, took=Num(line.target_at, unit, decimals)))
    return N_("compare", "{what}: {lots}.", what=WHAT[x_kind][0], lots=Listing(tuple(parts)))


# --- what may be concluded --------------------------------------------------------------------------------------


def _cup(lot: LotPicture) -> float | None:
    tables = lot.of(Cup)
    return tables[-1].body.score if tables else None


def lots_of(picture: Picture, methods: Sequence[str], value_of: Callable[[LotPicture], float | None]) -> list[LotOf]:
    """All finished lots of some methods that have the value, with the blocks and months they were picked in."""
    found = []
    for lot in picture.lots.values():
        method, days = method_of(lot, picture.things), pick_days(lot, picture.time)
        if method is None or method.letter not in methods or not days or not stored_g(lot):
            continue
        value = value_of(lot)
        if value is not None:
            months = frozenset(f"{day:%Y-%m}" for day in days)
            labels = {"block": frozenset(blocks_of(picture, lot)), "month": months}
            found.append(LotOf(lot.code, method.letter, value, labels))
    return found


def _concluded(
    picture: Picture, lots: Sequence[LotPicture], what: str, value_of: Callable[[LotPicture], float | None]
) -> list[Text]:
    """The chosen methods against the first of them; nothing for a cup score that no chosen lot has."""
    if what == "cup" and not any(value_of(lot) is not None for lot in lots):
        return []
    if len(lots) == 1:
        return [N_("compare", "One lot alone tells nothing of another; type a code to lay it over this one.")]
    named = [method.letter for lot in lots if (method := method_of(lot, picture.things)) is not None]
    methods = list(dict.fromkeys(named))
    name, decimals = WHAT[what]
    all_lots = lots_of(picture, methods, value_of)
    had = {letter: sum(lot.group == letter for lot in all_lots) for letter in methods}
    if len(methods) == 1:
        few = too_few(methods[0], had[methods[0]])
        alone = N_(
            "compare",
            "{what}: all are {method}. They may be compared as lots; of methods nothing can be concluded.",
            what=name,
            method=methods[0],
        )
        return [alone if few is None else N_("compare", "{said} {doubt}", said=alone, doubt=few)]
    found = []
    for other in methods[1:]:
        first = methods[0]
        if not had[first] or not had[other]:
            none = first if not had[first] else other
            found.append(
                N_(
                    "compare",
                    "{what}: no finished {method} lot has it, so nothing can be concluded.",
                    what=name,
                    method=none,
                )
            )
        else:
            # the rarer method is the one somebody would give the credit to
            less, more = sorted((first, other), key=lambda letter: had[letter])
            found.append(_verdict(name, decimals, less, more, compare(all_lots, less, more, FACTORS)))
    return found


def _verdict(name: Text, decimals: int, first: str, second: str, told: Comparison) -> Text:
    seen = N_(
        "compare",
        "{what}, all finished lots: {first} {a} (lots: {n}), {second} {b} (lots: {m}), a gap of {low} to {high}.",
        what=name,
        first=first,
        a=Num(told.first_median, "", decimals),
        n=told.first_n,
        second=second,
        b=Num(told.second_median, "", decimals),
        m=told.second_n,
        low=Num(told.gap.low, "", decimals),
        high=Num(told.gap.high, "", decimals),
    )
    if told.credit:
        return N_(
            "compare",
            "{seen} They met in the same blocks and months, and chance seldom parts them so far: the difference may go "
            "with the method.",
            seen=seen,
        )
    return N_(
        "compare",
        "{seen} It may not be credited to {first}. {doubts}",
        seen=seen,
        first=first,
        doubts=Listing(told.doubts, " "),
    )
