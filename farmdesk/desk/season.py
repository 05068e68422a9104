"""What the desk must know of a season once it is open, and where its handle stands first."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from farmdesk import clock
from farmdesk.clock import FarmTime
from farmdesk.desk.pages import Desk
from farmdesk.text import N_, Moment, Num, Text
from farmdesk.work.seasons import clock_behind, clock_leapt_h, opens_at

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm


@dataclass(frozen=True)
class Opened:
    """Facts of an open season; `held`, `behind` and `kept` are sentences to be told, where there is something to tell."""

    time: FarmTime
    practice: bool
    last_written_utc_s: int
    opens_at_utc_s: int | None
    held: Text | None
    behind: Text | None  # of a clock that stands before the last row, or long after it
    kept: Text | None = None  # of a sheet that was not finished
    past: bool = False  # a season that was opened only to be read
    settings: Mapping[str, str] = field(default_factory=dict)


def facts(farm: OpenFarm) -> Opened:
    """Ask an open season for them; on the desk lane."""
    from farmdesk.work.weigh_grid import kept_of

    last, practice = farm.picture.book.last_written_utc_s, farm.things.farm.practice
    kept = kept_of(farm.picture, clock.now()) if not practice else None
    behind = None
    if not practice and clock_behind(last):
        behind = N_(
            "season",
            "This computer’s clock shows {shown}, but the last row was written {last}. Set the clock; until then new rows are dated {last}.",
            shown=Moment(farm.time.local(clock.now()), year=True),
            last=Moment(farm.time.local(last), year=True),
        )
    elif not practice and kept is None and (leapt_h := clock_leapt_h(last)):
        behind = N_(
            "season", "This computer’s clock shows {shown}, {n} h after the last row. Where that is wrong, set the clock first.",
            shown=Moment(farm.time.local(clock.now()), weekday=True, year=True), n=Num(leapt_h),
        )  # fmt: skip
    past = farm.reading_only and farm.file.held is None
    held = farm.file.held.sentence(farm.time) if farm.file.held is not None else None
    if past:
        held = N_("season", "Season {code} is only read here; nothing can be written.", code=farm.things.farm.season)
    if kept is not None:
        kept = N_("season", "Picking, weigh-in: {kept}.", kept=kept)
    opens = opens_at(farm.things, farm.time)
    return Opened(farm.time, practice, last, opens, held, behind, kept, past, dict(farm.things.settings))


def put_handle(desk: Desk, opened: Opened) -> None:
    """The present is now, or the last row where the clock is behind it; a practice season begins at an hour of its own."""
    if desk.practice:
        clock.stand_at(None)  # out of the practice season's own time
    desk.time, desk.practice = opened.time, opened.practice
    desk.latest = opened.last_written_utc_s
    if opened.practice:
        clock.stand_at(opened.opens_at_utc_s or desk.latest)
        desk.present = clock.now()
    else:
        desk.present = max(clock.now(), opened.last_written_utc_s)
    desk.as_of, desk.at_present = (opened.last_written_utc_s, False) if opened.past else (desk.present, True)
    desk.reading_only = desk.words.say(opened.held) if opened.held is not None else ""
