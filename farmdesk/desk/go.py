"""Where typed words lead: `25-13` a lot, `25-13 19.7` its reading, `b7` a bed, `d14` a day, `ya` a page.

No Qt in here.
"""

from __future__ import annotations

import calendar
import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date


@dataclass(frozen=True, slots=True)
class Target:
    """A place to go. `kind`: page, lot, reading, bed, vessel, lying (lots lying somewhere), day, now.

    `value`: the page's name, the lot's code (of a reading the number too), the bed's code, the kind of
    place, the day (ISO).
    """

    kind: str
    value: str = ""


@dataclass(frozen=True)
class Known:
    """What can be typed: lots and places as their codes, pages by name in the screen's language."""

    lots: Sequence[str] = ()
    beds: Sequence[str] = ()
    vessels: Sequence[str] = ()
    pages: Mapping[str, str] | None = None  # shown name -> page
    season: str = ""


def find(typed: str, known: Known, today: date) -> list[tuple[str, Target]]:
    """Where the typed words may lead, best first, each with its shown name; nothing when nowhere."""
    typed = " ".join(typed.split())
    if not typed:
        return []
    low = typed.casefold()
    found: list[tuple[str, Target]] = []
    if match := re.fullmatch(r"(?:b|c)\s?(\w+)", low):
        found += [(code, Target("bed", code)) for code in known.beds if code.casefold() == match[1]]
    if match := re.fullmatch(r"d\s?(\d{1,2})(?:[./\s-](\d{1,2}))?", low):
        found += _day(int(match[1]), int(match[2]) if match[2] else None, today)
    found += [(code, Target("bed", code)) for code in known.beds if code.casefold() == low and not code.isdigit()]
    found += [(code, Target("vessel", code)) for code in known.vessels if code.casefold() == low]
    found += _lots(low, known)
    if match := re.fullmatch(r"(\S+) ([\d.,]+)", low):
        found += [
            (f"{code}: {match[2]}", Target("reading", f"{code} {match[2]}")) for code, _ in _lots(match[1], known)
        ]
    for name, page in (known.pages or {}).items():
        if name.casefold().startswith(low):
            found.append((name, Target("page", page)))
    return found


def begins(typed: str, known: Known) -> bool:
    """Whether what is typed may be the beginning of somewhere to go, so that it must wait for more."""
    low = typed.casefold()
    names = [*(known.pages or {}), *known.vessels, *known.beds, *known.lots]
    return low in ("b", "d") or any(name.casefold().startswith(low) for name in names)


def _lots(low: str, known: Known) -> list[tuple[str, Target]]:
    """Lots whose code begins so; within the season its first digits may be left out: `13`, `13w`."""
    if not low[0].isdigit():
        return []
    full = low if "-" in low else f"{known.season}-{low.zfill(2) if low.isdigit() else low}"
    return [(code, Target("lot", code)) for code in known.lots if code.casefold().startswith(full.casefold())]


def _day(day: int, month: int | None, today: date) -> list[tuple[str, Target]]:
    """A day of this month, or of the month named: the one nearest to today."""
    best: date | None = None
    for year in (today.year - 1, today.year, today.year + 1):
        in_month = month or today.month
        if month is None and year != today.year:
            continue
        if 1 <= in_month <= 12 and 1 <= day <= calendar.monthrange(year, in_month)[1]:
            at = date(year, in_month, day)
            if best is None or abs(at - today) < abs(best - today):
                best = at
    return [(best.isoformat(), Target("day", best.isoformat()))] if best else []
