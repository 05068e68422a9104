"""The practice season: tables of what hands wrote down, typed in again by the same verbs the window uses.

`demo_data/` holds one table for each kind of paper; every row says when it happened and when it was written,
in farm time. The rows of all tables are written in the order in which hands wrote them, with the program's
clock set from each. Nothing that the picture derives stands in a table.
"""

from __future__ import annotations

import csv
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from pathlib import Path
from typing import Any, cast, get_type_hints

import numpy as np

from farmdesk import clock
from farmdesk.clock import FarmTime
from farmdesk.notebook.season_file import SeasonFile
from farmdesk.paths import demo_data
from farmdesk.picture.entries import Entry
from farmdesk.picture.things import (
    Block,
    Buyer,
    Farm,
    Instrument,
    Landmark,
    Method,
    Person,
    Place,
    Things,
    Tray,
    Vessel,
)
from farmdesk.units import read_number
from farmdesk.work import drying, fermenting, grading, keeping, picking, selling, storing
from farmdesk.work.changes import Done, Hand
from farmdesk.work.farm import OpenFarm

REGISTERS: dict[str, type] = {
    "blocks": Block,
    "vessels": Vessel,
    "places": Place,
    "landmarks": Landmark,
    "instruments": Instrument,
    "trays": Tray,
    "people": Person,
    "methods": Method,
    "buyers": Buyer,
}
# In the tables no column is named after something the picture derives; these limits are called otherwise there.
CALLED = {"dry_days_max_d": "dry_at_most_d", "rest_days_d": "rest_d"}


@dataclass(frozen=True)
class Row:
    """One line of one table: its cells as written, and the farm's time to read its instants by."""

    table: str
    line_n: int
    cells: Mapping[str, str]
    time: FarmTime

    def __getitem__(self, name: str) -> str:
        return self.cells.get(name, "")

    def several(self, name: str) -> list[str]:
        """The parts of a cell that names several things."""
        return self[name].split()

    def kept(self, *names: str) -> dict[str, str]:
        """Those of these cells that are not empty, by name."""
        return {name: self[name] for name in names if self[name]}

    def instant(self, name: str) -> int:
        """An instant [UTC s] written in a cell in farm time."""
        return self.time.read(self[name])

    @property
    def at(self) -> int:
        """When it happened [UTC s]."""
        return self.instant("happened")

    @property
    def day(self) -> date:
        """The day a row is about."""
        return date.fromisoformat(self["day"])

    @property
    def hand(self) -> Hand:
        """Who wrote, with which instrument, and what was answered when the program asked."""
        answers = dict(pair.split("=", 1) for pair in self.several("answered"))
        return Hand(self["who"], self["instrument"], note=self["note"], answers=answers)


@dataclass
class Desk:
    """The farm while it is being typed in: `named` keeps the rows that later rows speak of."""

    farm: OpenFarm
    named: dict[str, tuple[Row, tuple[str, ...]]] = field(default_factory=dict)

    def type_in(self, row: Row) -> Done:
        """Write one row by its verb."""
        done = WRITERS[row.table](self, row)
        if row["name"]:
            self.named[row["name"]] = row, done.entries
        return done

    def entry(self, name: str) -> str:
        """The entry that a named row made; empty for no name."""
        return self.named[name][1][0] if name else ""


def _lot(desk: Desk, row: Row) -> Done:
    return picking.begin_lot(desk.farm, row["method"], row.at, code=row["lot"], hand=row.hand)


def _weigh_in(desk: Desk, row: Row) -> Done:
    return picking.weigh_in(
        desk.farm,
        row["lot"],
        block=row["block"],
        picker=row["picker"],
        half_day=row["half_day"],
        gross=row["gross"],
        tare=row["tare"],
        at_utc_s=row.at,
        hand=row.hand,
    )


def _platform(desk: Desk, row: Row) -> Done:
    return picking.platform_total(desk.farm, row["lot"], row["total"], row.at, row.hand)


def _count(desk: Desk, row: Row) -> Done:
    counts = {name: int(row[name]) for name in ("green", "turning", "ripe", "over_ripe", "dried", "bored")}
    return picking.count_ripeness(desk.farm, row["lot"], row["block"], row["half_day"], counts, row.at, row.hand)


def _sort(desk: Desk, row: Row) -> Done:
    return picking.sort_and_float(
        desk.farm, row["lot"], sorted_out=row["sorted_out"], floaters=row["floaters"], at_utc_s=row.at, hand=row.hand
    )


def _fill(desk: Desk, row: Row) -> Done:
    return fermenting.fill(desk.farm, row["lot"], {row["vessel"]: row["weighed"]}, row.at, hand=row.hand)


def _step(desk: Desk, row: Row) -> Done:
    return fermenting.vessel_step(
        desk.farm, row["lot"], row["vessel"], row["step"], row.at, text=row["text"], hand=row.hand
    )


def _yeast(desk: Desk, row: Row) -> Done:
    return fermenting.pitch_yeast(
        desk.farm,
        row["lot"],
        row["vessel"],
        row["yeast_g"],
        row.at,
        water_ml=int(row["water_ml"]) if row["water_ml"] else None,
        water_c=float(row["water_c"]) if row["water_c"] else None,
        product=row["product"],
        hand=row.hand,
    )


def _ferment(desk: Desk, row: Row) -> Done:
    read = row.kept("ph", "mass_c", "brix")
    return fermenting.read_ferment(
        desk.farm, row["lot"], row["vessel"], row.at, thermometer=row["thermometer"], hand=row.hand, **read
    )


def _rinse(desk: Desk, row: Row) -> Done:
    return fermenting.rinse(
        desk.farm, row["lot"], row["vessel"], int(row["times"]), row.at, litres=row["litres"], hand=row.hand
    )


def _spread(desk: Desk, row: Row) -> Done:
    beds = dict(zip(row.several("beds"), row.several("weighed"), strict=True))
    return drying.spread(desk.farm, row["lot"], beds, row.at, from_places=row.several("from"), hand=row.hand)


def _move(desk: Desk, row: Row) -> Done:
    return drying.move(desk.farm, row["lot"], row.several("from"), row.several("to"), row.at, row.hand)


def _cover(desk: Desk, row: Row) -> Done:
    return drying.cover(desk.farm, row.several("places"), row["cover"] == "on", row.at, text=row["text"], hand=row.hand)


def _at_bed(desk: Desk, row: Row) -> Done:
    return drying.read_at_bed(
        desk.farm,
        row["lot"],
        row.at,
        place=row["place"],
        meter=row.several("meter"),
        tray=row["tray"],
        tray_gross=row["tray_gross_g"],
        bean_c=row["bean_c"],
        hand=row.hand,
    )


def _weather(desk: Desk, row: Row) -> Done:
    return drying.write_weather(
        desk.farm,
        row.day,
        min_c=row["min_c"],
        max_c=row["max_c"],
        rh=row["rh"],
        rain_mm=row["rain_mm"],
        good_h=row["good_h"],
        at_utc_s=row.at,
        hand=row.hand,
    )


def _outlook(desk: Desk, row: Row) -> Done:
    return drying.write_outlook(desk.farm, row.day, row["words"], row.at, row.hand)


def _store(desk: Desk, row: Row) -> Done:
    return storing.shelve(
        desk.farm,
        row["lot"],
        row["weighed"],
        row.at,
        from_places=row.several("from"),
        bags_n=int(row["bags"]),
        pallet=row["pallet"],
        layer=row["layer"],
        hand=row.hand,
    )


def _store_air(desk: Desk, row: Row) -> Done:
    return storing.read_store_air(desk.farm, row["rh"], row.at, place=row["place"], hand=row.hand)


def _hull_test(desk: Desk, row: Row) -> Done:
    return storing.hull_test(
        desk.farm,
        row["lot"],
        in_g=row["in_g"],
        green_g=row["green_g"],
        husk_g=row["husk_g"],
        at_utc_s=row.at,
        hand=row.hand,
    )


def _used(desk: Desk, row: Row) -> Done:
    return storing.use_for_tests(desk.farm, row["lot"], row["weighed"], row.at, hand=row.hand)


def _sent(desk: Desk, row: Row) -> Done:
    return storing.send_to_mill(desk.farm, row["lot"], row["weighed"], row.at, row.hand)


def _slip(desk: Desk, row: Row) -> Done:
    return storing.mill_return(
        desk.farm,
        row["lot"],
        row.kept("top", "light", "small", "peaberry"),
        row.at,
        husk=row["husk"],
        screens=row.kept("18+", "17", "16", "15", "14", "<14", "PB"),
        hand=row.hand,
    )


def _retained(desk: Desk, row: Row) -> Done:
    return storing.keep_back(desk.farm, row["lot"], row["weighed"], row.at, row.hand)


def _join(desk: Desk, row: Row) -> Done:
    return storing.join_lots(desk.farm, row.several("lots"), row.at, alias=row["alias"], hand=row.hand)


def _defects(desk: Desk, row: Row) -> Done:
    return grading.count_defects(
        desk.farm,
        row["lot"],
        standard=row["standard"],
        sample_g=int(row["sample_g"]),
        full_n=float(row["full"]),
        at_utc_s=row.at,
        hand=row.hand,
    )


def _cup(desk: Desk, row: Row) -> Done:
    return grading.cup(
        desk.farm,
        row["lot"],
        score=row["score"],
        sittings_n=int(row["sittings"]),
        words=row["words"],
        at_utc_s=row.at,
        hand=row.hand,
    )


def _green(desk: Desk, row: Row) -> Done:
    return grading.read_green(desk.farm, row["lot"], row["quantity"], row["read"], row.at, hand=row.hand)


def _check(desk: Desk, row: Row) -> Done:
    return keeping.check_instrument(
        desk.farm,
        row["checked"],
        row["passed"] == "yes",
        row.at,
        off=_base(row["off"]),
        text=row["text"],
        hand=row.hand,
    )


def _instrument_correction(desk: Desk, row: Row) -> Done:
    return keeping.correct_instrument(
        desk.farm,
        row["corrected"],
        row["quantity"],
        _base(row["add"]) or 0.0,
        row.instant("from"),
        row.at,
        until_utc_s=row.instant("until") if row["until"] else None,
        hand=row.hand,
    )


def _base(typed: str) -> float | None:
    """What a deviation of an instrument is in its base unit: `0.8 %` is .008."""
    if not typed:
        return None
    read = read_number(typed)
    return read.value / 100 if read.unit == "%" else read.value


def _correction(desk: Desk, row: Row) -> Done:
    wrong, entries = desk.named[row["of"]]
    right = replace(wrong, cells={**wrong.cells, row["column"]: row["right"], "name": "", "answered": ""})
    return keeping.correct(desk.farm, entries, row["reason"], lambda _: desk.type_in(right), hand=row.hand)


def _strike(desk: Desk, row: Row) -> Done:
    return desk.farm.strike(desk.named[row["of"]][1], row["reason"])


def _remark(desk: Desk, row: Row) -> Done:
    return keeping.remark(
        desk.farm, row["text"], row.at, lot=row["lot"], place=row["place"], about=row["about"], hand=row.hand
    )


def _plan(desk: Desk, row: Row) -> Done:
    return keeping.plan_lot(
        desk.farm,
        row["lot"],
        method=row["method"],
        block=row["block"],
        day=row.day,
        weighed=row["weighed"],
        at_utc_s=row.at,
        places=row.several("places"),
        hand=row.hand,
    )


def _skipped(desk: Desk, row: Row) -> Done:
    return keeping.not_measured(
        desk.farm, row["quantity"], row.day, row.at, lot=row["lot"], place=row["place"], hand=row.hand
    )


def _paper(desk: Desk, row: Row) -> Done:
    return keeping.paper_given(desk.farm, row["lot"], row["paper"], row.at, buyer=row["buyer"], hand=row.hand)


def _sample(desk: Desk, row: Row) -> Done:
    return selling.send_sample(
        desk.farm,
        row["lot"],
        row["buyer"],
        row["weighed"],
        row.at,
        sample_kind=row["kind"],
        due_utc_s=row.instant("due"),
        instead_of=desk.entry(row["instead_of"]),
        hand=row.hand,
    )


def _parcel(desk: Desk, row: Row) -> Done:
    return selling.parcel_news(
        desk.farm, row["lot"], desk.entry(row["of"]), row["news"], row.at, text=row["text"], hand=row.hand
    )


def _hold(desk: Desk, row: Row) -> Done:
    return selling.hold(
        desk.farm,
        row["lot"],
        row["buyer"],
        row["weighed"],
        row.instant("until"),
        row.at,
        price_usd_kg=float(row["price_usd_kg"]) if row["price_usd_kg"] else None,
        hand=row.hand,
    )


def _sale(desk: Desk, row: Row) -> Done:
    return selling.sell(
        desk.farm,
        row["lot"],
        row["buyer"],
        row["weighed"],
        row.at,
        price_usd_kg=float(row["price_usd_kg"]),
        approved=row["approved"] == "yes",
        account=row["grade"],
        hand=row.hand,
    )


# The tables by name, and the verb that each is typed in by; of rows written at one instant the earlier table's is first.
WRITERS: dict[str, Callable[[Desk, Row], Done]] = {
    "lots": _lot,
    "weighins": _weigh_in,
    "platform": _platform,
    "counts": _count,
    "sorts": _sort,
    "fills": _fill,
    "steps": _step,
    "yeast": _yeast,
    "ferment_readings": _ferment,
    "rinses": _rinse,
    "moves": _move,
    "spreads": _spread,
    "covers": _cover,
    "trays_and_meter": _at_bed,
    "weather": _weather,
    "outlook": _outlook,
    "store": _store,
    "store_air": _store_air,
    "hull_tests": _hull_test,
    "used_for_tests": _used,
    "mill_sent": _sent,
    "mill_slips": _slip,
    "retained": _retained,
    "joins": _join,
    "defects": _defects,
    "cups": _cup,
    "green_readings": _green,
    "checks": _check,
    "instrument_corrections": _instrument_correction,
    "corrections": _correction,
    "strikes": _strike,
    "remarks": _remark,
    "plans": _plan,
    "not_measured": _skipped,
    "papers": _paper,
    "samples": _sample,
    "parcels": _parcel,
    "holds": _hold,
    "sales": _sale,
}


def practice_things() -> Things:
    """The practice farm's registers, from the tables in `demo_data/farm`."""
    (farm,) = _things(Farm, "farm")
    rooms: dict[str, Any] = {}
    for name, kind in REGISTERS.items():
        made = _things(kind, name)
        key = (lambda m: f"{m.letter}{m.version}") if kind is Method else (lambda m: m.code)
        rooms[name] = {key(thing): thing for thing in made}
    settings = {line["name"]: line["value"] for line in _lines("farm", "settings.csv")}
    return Things(farm, settings=settings, **rooms)


def practice_rows(time: FarmTime) -> list[Row]:
    """All rows of all tables, in the order in which hands wrote them."""
    rows = [Row(table, n, cells, time) for table in WRITERS for n, cells in enumerate(_lines(f"{table}.csv"), start=2)]
    return sorted(rows, key=lambda row: row["written"])


def build_practice(path: Path, until_utc_s: int | None = None) -> OpenFarm:
    """Make the practice season as a new season file, with what was written by an instant [UTC s], or all of it.

    Raises FileTrouble when there is a file at `path` already, or the disk refuses.
    """
    things = practice_things()
    farm = OpenFarm.create(path, things)
    hour = 0
    try:
        with _Gathered.under(farm), clock.set_to(lambda: float(hour)):
            desk = Desk(farm)
            wrong = [Row("pc_clock", n, cells, farm.time) for n, cells in enumerate(_lines("pc_clock.csv"), start=2)]
            for row in practice_rows(farm.time):
                written = row.instant("written")
                if until_utc_s is not None and written > until_utc_s:
                    break
                hour = _shown(written, wrong)
                desk.type_in(row)
    except BaseException:
        farm.close()
        path.unlink(missing_ok=True)
        raise
    return farm


def _shown(at_utc_s: int, wrong: Sequence[Row]) -> int:
    """What the computer's clock showed [UTC s]: the hour itself, but for the evenings when it was wrong."""
    for row in wrong:
        if row.instant("from") <= at_utc_s < row.instant("until"):
            return row.instant("shows") + at_utc_s - row.instant("from")
    return at_utc_s


class _Gathered:
    """Keeps what the verbs append, and writes all of it in one transaction: a whole season in a second."""

    def __init__(self, farm: OpenFarm) -> None:
        self.farm, self.file = farm, farm.file
        self.entries: list[Entry] = []

    @classmethod
    def under(cls, farm: OpenFarm) -> _Gathered:
        """Gather under a farm for as long as the block lasts."""
        return cls(farm)

    def __enter__(self) -> None:
        self.farm.file = cast(SeasonFile, self)

    def __exit__(self, kind: type[BaseException] | None, *_: object) -> None:
        self.farm.file = self.file
        if kind is None:
            self.flush()

    def __getattr__(self, name: str) -> Any:
        return getattr(self.file, name)

    def append(self, entries: Sequence[Entry]) -> None:
        self.entries += entries

    def append_logger(self, entry: Entry, at_utc_s: np.ndarray, values: np.ndarray) -> int:
        self.flush()
        return self.file.append_logger(entry, at_utc_s, values)

    def flush(self) -> None:
        self.file.append(self.entries)
        self.entries = []


def _lines(*parts: str) -> list[dict[str, str]]:
    with demo_data(*parts).open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def _things(kind: type, name: str) -> list[Any]:
    """The rows of a register as the frozen things they are; an empty cell leaves the thing's own default."""
    hints = get_type_hints(kind)
    return [
        kind(**{f: _read(hints[f], line[CALLED.get(f, f)]) for f in hints if line.get(CALLED.get(f, f))})
        for line in _lines("farm", f"{name}.csv")
    ]


def _read(hint: object, cell: str) -> object:
    """A cell as the type its field has; `-` is None."""
    if cell == "-":
        return None
    if hint is bool:
        return cell == "yes"
    if hint in (int, int | None):
        return int(cell)
    if hint in (float, float | None):
        return float(cell)
    return cell
