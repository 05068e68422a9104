"""Care of the data: everything out as tables, a copy tried, a season carried over."""

from __future__ import annotations

import csv
import json
import os
from collections.abc import Callable
from dataclasses import asdict, dataclass, fields, is_dataclass, replace
from pathlib import Path
from typing import Any

from farmdesk.clock import FarmTime
from farmdesk.errors import Answer, FileTrouble, NotPossible
from farmdesk.notebook.season_file import SeasonFile
from farmdesk.picture.entries import (
    CARRIED,
    GREEN,
    KINDS,
    RETAINED,
    STORE,
    Birth,
    Body,
    Entry,
    Flow,
    LoggerFile,
    Posting,
)
from farmdesk.picture.picture import fold
from farmdesk.picture.things import Farm, Person, Things
from farmdesk.text import N_, Num, Text
from farmdesk.work.changes import Changes, Done, Hand
from farmdesk.work.farm import OpenFarm
from farmdesk.work.guards import ask
from farmdesk.work.people import coded, shown
from farmdesk.work.setup import free_path

PIECE = 20_000


@dataclass(frozen=True, slots=True)
class Exported:
    """What was written out: the folder, how many tables, how many rows."""

    folder: Path
    tables_n: int
    rows_n: int


def cell(value: object) -> object:
    """A cell that no spreadsheet takes for a formula: text that begins with = + - @ gets an apostrophe."""
    if isinstance(value, str) and value[:1] in ("=", "+", "-", "@", "\t", "\r"):
        return "'" + value
    return value


def export_all(farm: OpenFarm, folder: Path, on_progress: Callable[[int], bool] | None = None) -> Exported:
    """Everything as CSV, a table for each kind of paper and of thing, and once as JSON.

    Instants are ISO with the farm's offset. Nobody is named who is not ticked. Raises FileTrouble where the
    folder cannot be written; NotPossible where it holds something already.
    """
    if folder.exists() and any(folder.iterdir()):
        raise NotPossible(N_("carrying", "The folder {folder} is not empty; choose a new one.", folder=folder.name))
    try:
        folder.mkdir(parents=True, exist_ok=True)
        return _export(farm, folder, on_progress)
    except OSError as error:
        text = N_(
            "carrying",
            "The folder {folder} cannot be written: {why}.",
            folder=folder.name,
            why=error.strerror or str(error),
        )
        raise FileTrouble(text, N_("carrying", "Choose another folder, or make room.")) from error


def _export(farm: OpenFarm, folder: Path, on_progress: Callable[[int], bool] | None) -> Exported:
    entries = farm.file.entries()
    struck = farm.picture.book.struck
    people = farm.things.people
    leaving = replace(farm.things, people={code: shown(person) for code, person in people.items()})
    rows_n = tables = 0
    for kind in KINDS:
        own = [e for e in entries if type(e.body) is kind]
        if own:
            rows = [_unnamed(_row(farm, e, e.id in struck), people) for e in own]
            rows_n += _table(folder / f"{_snake(kind.__name__)}.csv", rows)
            tables += 1
        if on_progress and not on_progress(rows_n):
            return Exported(folder, tables, rows_n)
    for register in fields(leaving):
        values = getattr(leaving, register.name)
        if register.name == "farm":
            things = [asdict(values)]
        elif register.name == "settings":
            things = [{"name": name, "value": value} for name, value in values.items()]
        else:
            things = [asdict(value) for value in values.values()]
        if things:
            rows_n += _table(folder / f"thing_{register.name}.csv", things)
            tables += 1
    rows_n += _logger(farm, folder / "logger_rows.csv", [e for e in entries if type(e.body) is LoggerFile])
    document = {
        "things": asdict(leaving),
        "entries": [
            _unnamed({"kind": type(e.body).__name__, **_plain(e), "struck": e.id in struck}, people) for e in entries
        ],
    }
    (folder / "season.json").write_text(json.dumps(document, ensure_ascii=False, indent=1), encoding="utf-8")
    return Exported(folder, tables, rows_n)


def _unnamed(value: Any, people: dict[str, Person]) -> Any:
    """The same, with the code in place of every name that may not leave the farm."""
    if isinstance(value, str):
        return coded(value, people)
    if isinstance(value, dict):
        return {name: _unnamed(part, people) for name, part in value.items()}
    return [_unnamed(part, people) for part in value] if isinstance(value, list) else value


def _snake(name: str) -> str:
    return "".join("_" + c.lower() if c.isupper() else c for c in name).lstrip("_")


def _plain(value: object) -> Any:
    if is_dataclass(value) and not isinstance(value, type):
        return {f.name: _plain(getattr(value, f.name)) for f in fields(value)}
    if isinstance(value, tuple) and hasattr(value, "_asdict"):
        return {name: _plain(part) for name, part in value._asdict().items()}
    if isinstance(value, tuple):
        return [_plain(part) for part in value]
    return value


def _row(farm: OpenFarm, entry: Entry, struck: bool) -> dict[str, object]:
    """One entry as one line; lists inside it as text."""
    row: dict[str, object] = {
        "id": entry.id,
        "happened": farm.time.local(entry.happened_utc_s).isoformat(),
        "written": farm.time.local(entry.written_utc_s).isoformat(),
        "struck": "yes" if struck else "",
        "who": entry.who,
        "instrument": entry.instrument,
        "mark": entry.mark,
        "note": entry.note,
        "replaces": entry.replaces,
    }
    for f in fields(entry.body):
        value = getattr(entry.body, f.name)
        if isinstance(value, tuple):
            value = "; ".join(
                " ".join(str(p) for p in part) if isinstance(part, tuple) else str(part) for part in value
            )
        elif f.name.endswith("_utc_s") and value is not None:
            value = farm.time.local(value).isoformat()
        row[f.name] = value
    return row


def _table(path: Path, rows: list[dict[str, object]]) -> int:
    with path.open("w", newline="", encoding="utf-8-sig") as file:
        writer = csv.writer(file)
        writer.writerow(rows[0])
        writer.writerows([cell(value) for value in row.values()] for row in rows)
    return len(rows)


def _logger(farm: OpenFarm, path: Path, files: list[Entry]) -> int:
    if not files:
        return 0
    n = 0
    with path.open("w", newline="", encoding="utf-8-sig") as file:
        writer = csv.writer(file)
        writer.writerow(["file", "at", "value"])
        for entry in files:
            at, values = farm.file.logger_rows([entry.id])
            for start in range(0, len(at), PIECE):
                piece = zip(at[start : start + PIECE].tolist(), values[start : start + PIECE].tolist(), strict=True)
                writer.writerows((entry.id, farm.time.local(a).isoformat(), v) for a, v in piece)
            n += len(at)
    return n


@dataclass(frozen=True, slots=True)
class Tried:
    """A copy opened and folded in a scratch folder, its counts beside those of the season in use."""

    entries_n: int
    lots_n: int
    last_written_utc_s: int
    as_now: bool
    text: Text


def try_restore(farm: OpenFarm, copy: Path, scratch: Path) -> Tried:
    """Restore a copy into a scratch folder, open it, fold it, and compare its counts. Raises FileTrouble."""
    scratch.mkdir(parents=True, exist_ok=True)
    with SeasonFile.open(copy, read_only=True) as there:
        there.copy_to(scratch / copy.name)
    with SeasonFile.open(scratch / copy.name, read_only=True) as again:
        picture = fold(again.entries(), again.things)
    mine = farm.picture
    entries, lots = len(picture.book.by_id), len(picture.lots)
    as_now = entries == len(mine.book.by_id) and lots == len(mine.lots)
    facts = {"entries": entries, "lots": lots}
    if as_now:
        text = N_(
            "carrying",
            "The copy opens and holds all of it: {entries} {entries:row|rows}, {lots} {lots:lot|lots}.",
            **facts,
        )
    else:
        text = N_(
            "carrying", "The copy opens and holds {entries} {entries:row|rows} and {lots} {lots:lot|lots}; the season in use holds {more} {more:row|rows}.",
            **facts, more=len(mine.book.by_id),
        )  # fmt: skip
    return Tried(entries, lots, picture.book.last_written_utc_s, as_now, text)


STICK = "stick_copy"  # a setting: when the last copy was made on another disk, farm time, ISO


def stick_copy_utc_s(things: Things, time: FarmTime) -> int | None:
    """When the season was last copied onto another disk [UTC s]; None where it never was."""
    typed = things.settings.get(STICK, "")
    return time.read(typed) if typed else None


def same_disk(a: Path, b: Path) -> bool:
    """Whether two files lie, or would lie, on one disk. Raises FileTrouble where a folder is not there."""
    try:
        return os.stat(a.parent).st_dev == os.stat(b.parent).st_dev
    except OSError as error:
        raise FileTrouble(
            N_("carrying", "There is no folder {folder}.", folder=str(b.parent)),
            N_("carrying", "Put the stick in, or name a folder that is there."),
        ) from error


def copy_to_stick(farm: OpenFarm, target: Path, *, hand: Hand = Hand()) -> Done:
    """A checked copy onto another disk; asked once where it is the same disk. The label says what the copy holds.

    The season remembers when it was last copied onto another disk. Raises Asked, FileTrouble.
    """
    if target.is_dir():
        target = target / farm.file.path.name
    elsewhere = not same_disk(farm.file.path, target)
    if not elsewhere:
        text = N_(
            "carrying", "That is the disk the season itself lies on: when it goes, both go. Is there another one?"
        )
        ask(hand, "target", "disk", text, Answer("keep", N_("carrying", "copy it there all the same")))
    made = farm.file.copy_to(target)
    label = N_(
        "carrying", "{file} holds {rows} {rows:row|rows} and {lots} {lots:lot|lots}, {size}; it was opened and compared", file=str(target),
        rows=Num(made.entries_n), lots=made.lots_n, size=Num(made.bytes_n / 1e6, "MB", 1),
    )  # fmt: skip
    if elsewhere and not farm.reading_only:
        at = farm.time.local(made.copied_at_utc_s).isoformat()
        farm.save_things(replace(farm.things, settings=farm.things.settings | {STICK: at}))
    return Done(Changes(things=True), (), label)


def next_season(farm: OpenFarm) -> str:
    """The two figures of the season after this one."""
    return f"{(int(farm.things.farm.season) + 1) % 100:02d}"


def carry_on(farm: OpenFarm, folder: Path, season: str) -> Path:
    """Carry over into the next season's own file in a folder, its days a year later; returns that file."""
    own = farm.things.farm
    path = free_path(folder, own.name, season)
    first, last = (_year_later(day) for day in (own.first_day, own.last_day))
    carry_over(farm, path, season, farm.written_now(), first_day=first, last_day=last).close()
    return path


def _year_later(day: str) -> str:
    return f"{int(day[:4]) + 1}{day[4:]}" if day and day[5:] != "02-29" else ""


def carry_over(
    farm: OpenFarm, path: Path, season: str, at_utc_s: int, *, first_day: str = "", last_day: str = ""
) -> OpenFarm:
    """The next season's file: the farm's set-up, and what still lies in the store and as green, by lot.

    Codes stay; a carried lot's past is read in its own season's file.
    """
    if len(season) != 2 or not season.isdigit() or season == farm.things.farm.season:
        raise NotPossible(
            N_("carrying", "The next season is two other figures than {season}.", season=farm.things.farm.season)
        )
    own = farm.things.farm
    new = Farm(
        **{**asdict(own), "season": season, "first_day": first_day, "last_day": last_day, "practice": own.practice}
    )
    opened = OpenFarm.create(path, replace(farm.things, farm=new))
    for lot in farm.picture.lots.values():
        left = {a: g for a, g in lot.heaps.items() if a in (*GREEN, RETAINED, STORE) and g > 0}
        if not left or lot.birth is None:
            continue
        postings = [Posting(lot.code, CARRIED, -sum(left.values()))]
        postings += [Posting(lot.code, account, grams) for account, grams in left.items()]
        bodies: list[Body] = [
            Birth(lot.code, lot.birth.method, lot.birth.method_version, lot.birth.alias),
            Flow(lot.code, "carry", tuple(postings)),
        ]
        opened.write(bodies, at_utc_s, Hand(), N_("carrying", "{lot} carried over", lot=lot.code), lot=lot.code)
    return opened
