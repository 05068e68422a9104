"""Weights in doubt: the platform says otherwise than the sacks, or the scale failed its test weight.

What the books themselves cannot hold is a doubt of the fold (`picture/fold.py`); these are doubts of the instruments.
"""

from __future__ import annotations

from collections.abc import Iterator
from weakref import WeakKeyDictionary

from farmdesk.clock import DAY_S
from farmdesk.picture.entries import Check, Platform, Skipped, WeighIn
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.picture import Picture
from farmdesk.text import N_, Day, Text, kg
from farmdesk.work.forecasts import now_of
from farmdesk.work.stories import Gap

PLATFORM_FRAC, PLATFORM_G = 0.01, 2000  # platform and sacks may differ by 1 % or 2 kg (common practice, no source)
WEIGHTS = "mass_g"
_AGAIN: WeakKeyDictionary[Picture, list[tuple[str, int, int, int]]] = WeakKeyDictionary()  # every lot asks for the same


def weights_in_doubt(picture: Picture, lot: LotPicture) -> list[tuple[float, Gap]]:
    """A lot's doubtful weights and since when [UTC s]; a test weight that failed until somebody lets them stand."""
    return [*_platform(picture, lot), *_scales(picture, lot)]


def doubts_of(picture: Picture, lot: LotPicture) -> tuple[Text, ...]:
    """Everything doubtful about a lot, in words: what the books cannot hold, then its weights."""
    return (
        *(doubt.text for doubt in picture.doubts if doubt.lot == lot.code),
        *(gap.text for _, gap in weights_in_doubt(picture, lot)),
    )


def _platform(picture: Picture, lot: LotPicture) -> Iterator[tuple[float, Gap]]:
    """Days on which the platform's total and the sum of the sacks are further apart than scales may be."""
    sums: dict[str, int] = {}
    for entry in lot.of(WeighIn):
        day = picture.time.farm_day(entry.happened_utc_s).isoformat()
        sums[day] = sums.get(day, 0) + entry.body.gross_g - entry.body.tare_g
    totals: dict[str, int] = {}
    at: dict[str, int] = {}
    for said in lot.of(Platform):
        day = picture.time.farm_day(said.happened_utc_s).isoformat()
        totals[day] = totals.get(day, 0) + said.body.grams
        at[day] = said.happened_utc_s
    for day, total in totals.items():
        apart = sums.get(day, 0) - total
        if sums.get(day) and abs(apart) > max(PLATFORM_FRAC * total, PLATFORM_G):
            text = N_(
                "gaps", "{lot}: sacks sum to {sum}, the platform says {total}", lot=lot.code,
                sum=kg(sums[day], 1), total=kg(total, 1),
            )  # fmt: skip
            yield float(at[day]), Gap("doubtful", text, lot.code)


def _failed(picture: Picture) -> list[tuple[str, int, int, int]]:
    """Scales that failed a test weight: code, the last pass before it, the failure, and the pass after it [UTC s]."""
    if picture in _AGAIN:
        return _AGAIN[picture]
    scales = {code for code, tool in picture.things.instruments.items() if tool.quantity == WEIGHTS}
    found: list[tuple[str, int, int, int]] = []
    passed: dict[str, int] = {}
    failed: dict[str, int] = {}
    for entry in picture.general_of(Check):
        code, at = entry.body.instrument, entry.happened_utc_s
        if code not in scales:
            continue
        if not entry.body.passed:
            failed.setdefault(code, at)
            continue
        if code in failed:
            found.append((code, passed.get(code, 0), failed.pop(code), at))
        passed[code] = at
    found += [(code, passed.get(code, 0), at, now_of(picture) + DAY_S) for code, at in failed.items()]
    _AGAIN[picture] = found
    return found


def _scales(picture: Picture, lot: LotPicture) -> Iterator[tuple[float, Gap]]:
    """Weights of the lot by a scale between its last good test weight and the next one after it failed."""
    for code, passed, failed, until in _failed(picture):
        day = picture.time.farm_day(failed)
        stands = any(e.body.quantity == WEIGHTS and e.body.day == day.isoformat() for e in lot.of(Skipped))
        n = sum(e.instrument == code and passed < e.happened_utc_s < until for e in lot.entries)
        if n and not stands:
            text = N_(
                "gaps", "{lot}: weights by {scale} since its last good check: {n}; it failed on {day}", lot=lot.code,
                scale=code, n=n, day=Day(day, weekday=True),
            )  # fmt: skip
            yield float(failed), Gap("doubtful", text, lot.code, "", WEIGHTS, day.isoformat())
