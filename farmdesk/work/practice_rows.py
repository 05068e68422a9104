"""The papers of the practice season, row by row: which table is typed in by which verb."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from datetime import date

from farmdesk.clock import FarmTime
from farmdesk.paths import demo_data
from farmdesk.units import read_number
from farmdesk.work import crop, drying, fermenting, grading, keeping, pay, picking, selling, storing
from farmdesk.work.changes import Done, Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.reading_in import read_logger_file


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

    def number(self, name: str) -> float | None:
        """The number in a cell, in its base unit: `0.8 %` is .008; None where nothing is written."""
        if not self[name]:
            return None
        read = read_number(self[name])
        return read.value / 100 if read.unit == "%" else read.value

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
        answers = dict(pair.split("=", 1) for pair in self["answered"].split("; ") if pair)
        return Hand(self["who"], self["instrument"], note=self["note"], answers=answers)


@dataclass
class Desk:
    """The farm while it is being typed in; `named` keeps the rows that later rows speak of."""

    farm: OpenFarm
    named: dict[str, tuple[Row, tuple[str, ...]]] = field(default_factory=dict)

    def type_in(self, row: Row) -> Done:
        """Write one row by its verb. Raises NotPossible and Asked as the verb does."""
        done = WRITERS[row.table](self, row)
        if row["name"]:
            self.named[row["name"]] = row, done.entries
        return done

    def entry(self, name: str) -> str:
        """The entry that a named row made; empty for no name."""
        return self.named[name][1][0] if name else ""


def _crop_count(desk: Desk, row: Row) -> Done:
    return crop.count_trees(
        desk.farm, row["block"], trees_n=int(row["trees"]), mean_kg=row["kg_a_tree"], sd_kg=row["spread_kg"],
        loss_pct=row["loss_pct"], flowered=row["flowered"], at_utc_s=row.at, hand=row.hand,
    )  # fmt: skip


def _day_work(desk: Desk, row: Row) -> Done:
    part = row.number("part_of_day") or 1.0
    return pay.day_work(
        desk.farm, row["picker"], row.day, row["money"], row.at, share_frac=part, task=row["task"], hand=row.hand
    )


def _weigh_in(desk: Desk, row: Row) -> Done:
    return picking.weigh_in(
        desk.farm, row["lot"], block=row["block"], picker=row["picker"], half_day=row["half_day"], gross=row["gross"],
        tare=row["tare"], at_utc_s=row.at, hand=row.hand,
    )  # fmt: skip


def _count(desk: Desk, row: Row) -> Done:
    counts = {name: int(row[name]) for name in ("green", "turning", "ripe", "over_ripe", "dried", "bored")}
    return picking.count_ripeness(desk.farm, row["lot"], row["block"], row["half_day"], counts, row.at, row.hand)


def _sort(desk: Desk, row: Row) -> Done:
    out = {name: row[name] for name in ("sorted_out", "floaters")}
    return picking.sort_and_float(desk.farm, row["lot"], **out, at_utc_s=row.at, hand=row.hand)


def _yeast(desk: Desk, row: Row) -> Done:
    water_ml, water_c = row.number("water_ml"), row.number("water_c")
    return fermenting.pitch_yeast(
        desk.farm, row["lot"], row["vessel"], row["yeast_g"], row.at,
        water_ml=None if water_ml is None else round(water_ml), water_c=water_c, product=row["product"], hand=row.hand,
    )  # fmt: skip


def _ferment(desk: Desk, row: Row) -> Done:
    read = row.kept("ph", "mass_c", "brix", "thermometer")
    return fermenting.read_ferment(desk.farm, row["lot"], row["vessel"], row.at, **read, hand=row.hand)


def _logger(desk: Desk, row: Row) -> Done:
    file = demo_data("loggers", row["file"])
    read = read_logger_file(
        desk.farm, file, lot=row["lot"], place=row["place"], logger=row["logger"], hand=row.hand
    )  # fmt: skip
    assert read.done is not None, f"nothing new in {file.name}"
    return read.done


def _spread(desk: Desk, row: Row) -> Done:
    beds = dict(zip(row.several("beds"), row.several("weighed"), strict=True))
    return drying.spread(desk.farm, row["lot"], beds, row.at, from_places=row.several("from"), hand=row.hand)


def _at_bed(desk: Desk, row: Row) -> Done:
    return drying.read_at_bed(
        desk.farm, row["lot"], row.at, place=row["place"], meter=row.several("meter"), tray=row["tray"],
        tray_gross=row["tray_gross_g"], bean_c=row["bean_c"], hand=row.hand,
    )  # fmt: skip


def _weather(desk: Desk, row: Row) -> Done:
    seen = {name: row[name] for name in ("min_c", "max_c", "rh", "rain_mm", "good_h")}
    return drying.write_weather(desk.farm, row.day, **seen, at_utc_s=row.at, hand=row.hand)


def _store(desk: Desk, row: Row) -> Done:
    return storing.shelve(
        desk.farm, row["lot"], row["weighed"], row.at, from_places=row.several("from"),
        bags_n=int(row["bags"]), pallet=row["pallet"], layer=row["layer"], picked_out=row["picked_out"], hand=row.hand,
    )  # fmt: skip


def _hull_test(desk: Desk, row: Row) -> Done:
    parts = {name: row[name] for name in ("in_g", "green_g", "husk_g")}
    return storing.hull_test(desk.farm, row["lot"], **parts, at_utc_s=row.at, hand=row.hand)


def _slip(desk: Desk, row: Row) -> Done:
    grades = row.kept("top", "light", "small", "peaberry")
    screens = row.kept("18+", "17", "16", "15", "14", "<14", "PB")
    return storing.mill_return(
        desk.farm, row["lot"], grades, row.at, husk=row["husk"], screens=screens, hand=row.hand
    )  # fmt: skip


def _defects(desk: Desk, row: Row) -> Done:
    return grading.count_defects(
        desk.farm, row["lot"], standard=row["standard"], sample_g=int(row["sample_g"]), full_n=row.number("full"),
        at_utc_s=row.at, hand=row.hand,
    )  # fmt: skip


def _cup(desk: Desk, row: Row) -> Done:
    return grading.cup(
        desk.farm, row["lot"], score=row["score"], sittings_n=int(row["sittings"]), words=row["words"],
        at_utc_s=row.at, hand=row.hand,
    )  # fmt: skip


def _check(desk: Desk, row: Row) -> Done:
    return keeping.check_instrument(
        desk.farm,
        row["checked"],
        row["passed"] == "yes",
        row.at,
        off=row.number("off"),
        text=row["text"],
        hand=row.hand,
    )


def _instrument_correction(desk: Desk, row: Row) -> Done:
    return keeping.correct_instrument(
        desk.farm, row["corrected"], row["quantity"], row.number("add") or 0.0, row.instant("from"), row.at,
        until_utc_s=row.instant("until") if row["until"] else None, hand=row.hand,
    )  # fmt: skip


def _correction(desk: Desk, row: Row) -> Done:
    wrong, entries = desk.named[row["of"]]
    right = replace(wrong, cells={**wrong.cells, row["column"]: row["right"], "name": "", "answered": ""})
    return keeping.correct(desk.farm, entries, row["reason"], lambda _: desk.type_in(right), hand=row.hand)


def _remark(desk: Desk, row: Row) -> Done:
    return keeping.remark(
        desk.farm, row["text"], row.at, lot=row["lot"], place=row["place"], about=row["about"], hand=row.hand
    )


def _plan(desk: Desk, row: Row) -> Done:
    return keeping.plan_lot(
        desk.farm, row["lot"], method=row["method"], block=row["block"], day=row.day, weighed=row["weighed"],
        at_utc_s=row.at, places=row.several("places"), hand=row.hand,
    )  # fmt: skip


def _sample(desk: Desk, row: Row) -> Done:
    return selling.send_sample(
        desk.farm, row["lot"], row["buyer"], row["weighed"], row.at, sample_kind=row["kind"],
        due_utc_s=row.instant("due"), instead_of=desk.entry(row["instead_of"]), hand=row.hand,
    )  # fmt: skip


def _hold(desk: Desk, row: Row) -> Done:
    return selling.hold(
        desk.farm, row["lot"], row["buyer"], row["weighed"], row.instant("until"), row.at,
        price_usd_kg=row.number("price_usd_kg"), hand=row.hand,
    )  # fmt: skip


def _sale(desk: Desk, row: Row) -> Done:
    return selling.sell(
        desk.farm, row["lot"], row["buyer"], row["weighed"], row.at, price_usd_kg=row.number("price_usd_kg"),
        approved=row["approved"] == "yes", account=row["grade"], hand=row.hand,
    )  # fmt: skip


# The tables by name, and the verb that types each in; of rows written at one instant the earlier table's comes first.
WRITERS: dict[str, Callable[[Desk, Row], Done]] = {
    "crop_counts": _crop_count,
    "ripe_looks": lambda desk, r: crop.look_at_ripeness(
        desk.farm, r["block"], int(r["ripe"]), int(r["looked"]), r.at, r.hand
    ),
    "rounds": lambda desk, r: crop.plan_round(
        desk.farm, r["block"], r.day, r["weighed"], r.at, pinned=r["pinned"] == "yes", hand=r.hand
    ),
    "lots": lambda desk, r: picking.begin_lot(desk.farm, r["method"], r.at, code=r["lot"], hand=r.hand),
    "weighins": _weigh_in,
    "platform": lambda desk, r: picking.platform_total(desk.farm, r["lot"], r["total"], r.at, r.hand),
    "counts": _count,
    "sorts": _sort,
    "fills": lambda desk, r: fermenting.fill(desk.farm, r["lot"], {r["vessel"]: r["weighed"]}, r.at, hand=r.hand),
    "steps": lambda desk, r: fermenting.vessel_step(
        desk.farm, r["lot"], r["vessel"], r["step"], r.at, text=r["text"], hand=r.hand
    ),
    "yeast": _yeast,
    "ferment_readings": _ferment,
    "loggers": _logger,
    "rinses": lambda desk, r: fermenting.rinse(
        desk.farm, r["lot"], r["vessel"], int(r["times"]), r.at, litres=r["litres"], hand=r.hand
    ),
    "moves": lambda desk, r: drying.move(desk.farm, r["lot"], r.several("from"), r.several("to"), r.at, r.hand),
    "spreads": _spread,
    "covers": lambda desk, r: drying.cover(
        desk.farm, r.several("places"), r["cover"] == "on", r.at, text=r["text"], hand=r.hand
    ),
    "trays_and_meter": _at_bed,
    "weather": _weather,
    "outlook": lambda desk, r: drying.write_outlook(desk.farm, r.day, r["words"], r.at, r.hand),
    "store": _store,
    "store_air": lambda desk, r: storing.read_store_air(desk.farm, r["rh"], r.at, place=r["place"], hand=r.hand),
    "hull_tests": _hull_test,
    "used_for_tests": lambda desk, r: storing.use_for_tests(desk.farm, r["lot"], r["weighed"], r.at, hand=r.hand),
    "mill_sent": lambda desk, r: storing.send_to_mill(desk.farm, r["lot"], r["weighed"], r.at, r.hand),
    "mill_slips": _slip,
    "joins": lambda desk, r: storing.join_lots(desk.farm, r.several("lots"), r.at, alias=r["alias"], hand=r.hand),
    "retained": lambda desk, r: storing.keep_back(desk.farm, r["lot"], r["weighed"], r.at, r.hand),
    "defects": _defects,
    "cups": _cup,
    "green_readings": lambda desk, r: grading.read_green(
        desk.farm, r["lot"], r["quantity"], r["read"], r.at, hand=r.hand
    ),
    "checks": _check,
    "instrument_corrections": _instrument_correction,
    "corrections": _correction,
    "strikes": lambda desk, r: desk.farm.strike(desk.named[r["of"]][1], r["reason"]),
    "advances": lambda desk, r: pay.give_advance(desk.farm, r["picker"], r["money"], r.at, text=r["text"], hand=r.hand),
    "day_work": _day_work,
    "remarks": _remark,
    "plans": _plan,
    "not_measured": lambda desk, r: keeping.not_measured(
        desk.farm, r["quantity"], r.day, r.at, lot=r["lot"], place=r["place"], hand=r.hand
    ),
    "papers": lambda desk, r: keeping.paper_given(desk.farm, r["lot"], r["paper"], r.at, buyer=r["buyer"], hand=r.hand),
    "samples": _sample,
    "parcels": lambda desk, r: selling.parcel_news(
        desk.farm, r["lot"], desk.entry(r["of"]), r["news"], r.at, text=r["text"], hand=r.hand
    ),
    "holds": _hold,
    "sales": _sale,
}
