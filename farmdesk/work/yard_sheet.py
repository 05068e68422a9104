"""The yard sheet typed in: which beds are read, in the order of the paper, and what stands written of each."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, timedelta

from farmdesk.clock import FarmTime
from farmdesk.errors import NotPossible
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.office_papers import Skipped
from farmdesk.picture.picture import Picture
from farmdesk.picture.yard_papers import Reading
from farmdesk.text import N_
from farmdesk.work.changes import Done, Hand
from farmdesk.work.drying import METER_ASK_FRAC, read_at_bed
from farmdesk.work.farm import OpenFarm
from farmdesk.work.keeping import correct, not_measured
from farmdesk.work.yard import yard_of

READ_AT_H = 16  # the sheet's readings are taken at four, on cooled beans (common practice, no source)
BOXES = ("1", "2", "3", "tray", "bean", "note")


@dataclass(frozen=True, slots=True)
class SheetRow:
    """One bed of the sheet. `values` is what is written of it already, as typed; `entries` are those rows.

    `last_wb_frac` [fraction wet basis] is what was known before this reading; None: not measured. `too_wet`:
    the meter does not serve yet. `tray` is the one that hung here before; "" where none is known. `scope` is the
    place that was written: the bed, or "" for a reading of the lot as a whole, which counts for all its beds.
    """

    bed: str
    lot: str
    tray: str
    last_wb_frac: float | None
    last_mark: str
    too_wet: bool
    values: Mapping[str, str]
    entries: tuple[str, ...]
    written_utc_s: int | None
    skipped: bool
    scope: str


@dataclass(frozen=True, eq=False)
class SheetToType:
    """The sheet of one day: when its readings were taken [UTC s], and its beds in the order of the paper."""

    day: date
    read_at_utc_s: int
    rows: tuple[SheetRow, ...]


def read_instant(time: FarmTime, now_utc_s: int) -> int:
    """The reading hour [UTC s] that was last passed: today's from four on, before that yesterday's."""
    day = time.calendar_day(now_utc_s)
    at_utc_s = time.instant(day, READ_AT_H)
    return at_utc_s if at_utc_s <= now_utc_s else time.instant(day - timedelta(days=1), READ_AT_H)


def sheet_to_type(farm: OpenFarm, at_utc_s: int) -> SheetToType:
    """The sheet that an evening [UTC s] types in, or the next morning: every bed with coffee at the reading hour."""
    read_at = read_instant(farm.time, at_utc_s)
    seen, day = farm.seen(at_utc_s), farm.time.farm_day(read_at)
    picture = seen.at(read_at, seen.known_at)
    before = yard_of(seen.at(farm.time.instant(day, READ_AT_H - 4), seen.known_at))
    known = {(place.code, lies.lot): lies for place in before.places for lies in place.lying}
    rows = []
    for place in yard_of(picture).places:
        for lies in place.lying:
            was = known.get((place.code, lies.lot))
            rows.append(_row(picture, place.code, lies.lot, day, was.moisture_wb_frac if was else None,
                             was.mark if was else "measured"))  # fmt: skip
    return SheetToType(day, read_at, tuple(rows))


def _row(picture: Picture, bed: str, code: str, day: date, last_wb_frac: float | None, mark: str) -> SheetRow:
    lot = picture.lots[code]
    values: dict[str, str] = {}
    ids: list[str] = []
    written: int | None = None
    scope = bed
    for entry in lot.of(Reading):
        body = entry.body
        if body.place not in (bed, "") or picture.time.farm_day(entry.happened_utc_s) != day:
            continue
        if body.quantity == "meter_wb_frac":
            values |= {line.name: line.typed or f"{line.value * 100:.1f}" for line in body.values}
            values |= {"bean": f"{body.bean_c:g}"} if body.bean_c is not None else {}
        elif body.quantity == "tray_g":
            values["tray"] = body.values[0].typed or f"{body.value:g}"
        else:
            continue
        values |= {"note": entry.note} if entry.note else {}
        ids.append(entry.id)
        scope = body.place
        written = entry.written_utc_s
    skipped = any(
        e.body.place in (bed, "") and e.body.day == day.isoformat() and e.body.quantity in ("moisture", "meter_wb_frac")
        for e in lot.of(Skipped)
    )
    wet = last_wb_frac is not None and last_wb_frac > METER_ASK_FRAC
    return SheetRow(bed, code, _tray(lot, bed), last_wb_frac, mark, wet, values, tuple(ids), written, skipped, scope)


def _tray(lot: LotPicture, bed: str) -> str:
    """The tray that was weighed last on this bed of the lot, or the lot's last one."""
    own = [e.body for e in lot.of(Reading) if e.body.tray]
    here = [body for body in own if body.place == bed]
    return (here or own)[-1].tray if own else ""


def write_row(
    farm: OpenFarm, row: SheetRow, values: Mapping[str, str], sheet: SheetToType, *, hand: Hand = Hand(),
    reason: str = "",
) -> Done:  # fmt: skip
    """Write one row of the sheet as typed; with `reason` it corrects what is written of the bed already.

    A tray's weight may be typed with the tray before it: `2:938`. A row with every box left out says that
    nothing was measured. Raises NotPossible and Asked as `read_at_bed` does.
    """
    tray, _, gross = values.get("tray", "").rpartition(":")
    meter = [values.get(name, "") for name in ("1", "2", "3")]

    def read(farm: OpenFarm) -> Done:
        if not gross.strip() and not any(value.strip() for value in meter):
            if values.get("bean", "").strip():
                raise NotPossible(N_("yard_sheet", "The beans’ warmth alone is no reading."))
            return not_measured(farm, "moisture", sheet.day, sheet.read_at_utc_s, lot=row.lot, place=row.bed, hand=hand)
        return read_at_bed(
            farm, row.lot, sheet.read_at_utc_s, place=row.scope, meter=meter, tray=tray.strip() or row.tray,
            tray_gross=gross, bean_c=values.get("bean", ""), hand=hand,
        )  # fmt: skip

    return correct(farm, row.entries, reason, read, hand=hand) if row.entries and reason else read(farm)
