"""When a lot will be done: the one question that pages, papers and the command line all ask, `ready`.

Working a forecast out takes SciPy and a tenth of a second a lot, so no story waits for one: until it is
there, a story says what is typical for the method, and says that it does. `Forecasts` keeps what was worked
out for as long as it rests on the same papers; the window works the rest out beside itself.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from farmdesk.ahead.range import Ahead, typical
from farmdesk.clock import HOUR_S
from farmdesk.errors import NotPossible
from farmdesk.picture.fold import NEVER, LotPicture
from farmdesk.picture.measures import Fill, bed_days, fills, method_of, on_beds
from farmdesk.picture.picture import Picture
from farmdesk.picture.things import Method

if TYPE_CHECKING:
    from farmdesk.ahead.learning import LotTaught
    from farmdesk.work.farm import OpenFarm

Key = tuple[str, str]  # lot, and the vessel; "" for the beds
Rests = tuple[object, ...]  # what a forecast rests on; while it is equal, the answer is


@dataclass(frozen=True, eq=False)
class Seen(Picture):
    """A picture, and the forecasts that have been worked out for it."""

    worked_out: Mapping[Key, Ahead] = field(default_factory=dict)


def now_of(picture: Picture) -> int:
    """The instant [UTC s] a picture stands at: its own, or that of the last row it knows."""
    return picture.as_of if picture.as_of != NEVER else picture.book.last_written_utc_s


def _finished_h(picture: Picture, method: Method, kind: str) -> list[float]:
    """How long the farm's own finished lots of a method took [h]: on the beds, or in a vessel."""
    took: list[float] = []
    for lot in picture.lots.values():
        other = method_of(lot, picture.things)
        if other is None or other.letter != method.letter:
            continue
        if kind == "drying":
            span = bed_days(lot, picture.things, picture.time)
            if span and span[1]:
                took.append(24.0 * max((span[1] - span[0]).days, 1))
        else:
            hours = [fill.hours_h for fill in fills(lot, picture.things) if fill.hours_h]
            took += [max(hours)] if hours else []
    return took


def running_fill(picture: Picture, lot: LotPicture, place: str) -> Fill | None:
    """The lot's time in a vessel that is not over yet; None when nothing of it is in there."""
    return next((f for f in fills(lot, picture.things) if f.place == place and f.until_utc_s is None), None)


def spread_at(picture: Picture, lot: LotPicture) -> int | None:
    """When a lot that lies on drying places was first spread [UTC s]; None when it does not lie there."""
    stays = on_beds(lot, picture.things, picture.time)
    if not any(stay.until_utc_s is None for stay in stays):
        return None
    return min(stay.from_utc_s for stay in stays)


def typical_drying(picture: Picture, lot: LotPicture) -> Ahead | None:
    """What is typical for the method from the day it was spread; None when it does not lie on the beds."""
    method, start = method_of(lot, picture.things), spread_at(picture, lot)
    if method is None or start is None:
        return None
    longest_h = method.dry_days_max_d * 24.0
    settings_h = (0.7 * longest_h, 0.85 * longest_h, longest_h)
    return typical(_finished_h(picture, method, "drying"), settings_h, start, now_of(picture))


def typical_ferment(picture: Picture, lot: LotPicture, place: str) -> Ahead | None:
    """What is typical for the method from the hour of filling; None when nothing of the lot is in the vessel."""
    method, fill = method_of(lot, picture.things), running_fill(picture, lot, place)
    if method is None or fill is None:
        return None
    return ferment_if_filled(picture, method, fill.from_utc_s, now_of(picture))


def ferment_if_filled(picture: Picture, method: Method, filled_utc_s: float, now_utc_s: float) -> Ahead | None:
    """When a vessel filled at an instant [UTC s] would be ready, by what is typical; None without a method's hours."""
    if not method.hours_low_h or not method.hours_high_h:
        return None
    low_h, high_h = method.hours_low_h, method.hours_high_h
    settings_h = (low_h, (low_h + high_h) / 2, max(high_h, low_h * 1.05))
    return typical(_finished_h(picture, method, "ferment"), settings_h, filled_utc_s, now_utc_s)


def drying_ready(picture: Picture, lot: LotPicture) -> Ahead | None:
    """When a lot on the beds will be dry enough for the store; None when it does not lie there."""
    kept = picture.worked_out.get((lot.code, "")) if isinstance(picture, Seen) else None
    return kept or typical_drying(picture, lot)


def ferment_ready(picture: Picture, lot: LotPicture, place: str) -> Ahead | None:
    """When a vessel's ferment will be done; None when nothing of the lot is in it."""
    kept = picture.worked_out.get((lot.code, place)) if isinstance(picture, Seen) else None
    return kept or typical_ferment(picture, lot, place)


def ready(picture: Picture, lot: LotPicture) -> Ahead | None:
    """When the lot is done with what it is at now: its ferment, or its drying; None when neither runs."""
    for account, grams in lot.heaps.items():
        if grams > 0 and account in picture.things.vessels:
            return ferment_ready(picture, lot, account)
    return drying_ready(picture, lot)


@dataclass(frozen=True, eq=False)
class Asked:
    """A forecast that is not there yet. `work_out` needs no season file and may run anywhere."""

    key: Key
    rests: Rests
    work_out: Callable[[], Ahead]


class Forecasts:
    """What was worked out, by what it rests on, and what finished lots have taught."""

    def __init__(self) -> None:
        self._ends: dict[tuple[Key, Rests], Ahead] = {}
        self.taught: dict[tuple[str, str, int], LotTaught | None] = {}

    def of(self, picture: Picture) -> dict[Key, Ahead]:
        """The forecasts that hold for a picture."""
        found = {}
        for key in running(picture):
            kept = self._ends.get((key, rests_of(picture, key)))
            if kept is not None:
                found[key] = kept
        return found

    def missing(self, farm: OpenFarm, at_utc_s: int | None = None, lots: frozenset[str] | None = None) -> list[Asked]:
        """The forecasts a story at an instant [UTC s] could show (of some lots) and that are not worked out yet."""
        picture = farm.seen(at_utc_s)
        keys = [key for key in running(picture) if lots is None or key[0] in lots]
        rests = {key: rests_of(picture, key) for key in keys}
        wanted = {key: on for key, on in rests.items() if (key, on) not in self._ends}
        if not wanted:
            return []
        from farmdesk.work.foresight import question  # SciPy comes with it, so only when it is needed

        return [Asked(key, on, question(farm, picture, key)) for key, on in wanted.items()]

    def keep(self, asked: Asked, answer: Ahead) -> None:
        """Keep an answer; the oldest go when there are very many."""
        if len(self._ends) > 2000:
            for old in list(self._ends)[:1000]:
                del self._ends[old]
        self._ends[asked.key, asked.rests] = answer


def running(picture: Picture) -> list[Key]:
    """All ferments and dryings that run at the instant of a picture."""
    keys: list[Key] = []
    for lot in picture.lots.values():
        if any(grams > 0 and account in picture.things.places for account, grams in lot.heaps.items()):
            keys.append((lot.code, ""))
        keys += [(lot.code, a) for a, grams in lot.heaps.items() if grams > 0 and a in picture.things.vessels]
    return keys


def rests_of(picture: Picture, key: Key) -> Rests:
    """What a forecast rests on: the lot's papers, the weather rows, the corrections, and the hour it is asked in."""
    lot = picture.lots[key[0]]
    last = lot.entries[-1].id if lot.entries else ""
    return len(lot.entries), last, len(picture.weather), len(picture.corrections), now_of(picture) // HOUR_S


def work_out(farm: OpenFarm, at_utc_s: int | None = None, lots: frozenset[str] | None = None) -> None:
    """Work out, here and now, what is missing (of some lots): for papers and the command line."""
    for asked in farm.forecasts.missing(farm, at_utc_s, lots):
        try:
            farm.keep_forecast(asked, asked.work_out())
        except NotPossible:  # too little is known: what is typical stands
            continue
