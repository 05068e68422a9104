"""What the page about the care of the data shows: the file, its copies, sticks, and the other seasons."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QStorageInfo

from farmdesk.work.seasons import SeasonOnDisk

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

KEPT_N = 14  # so many copies are kept whatever their month (notebook.copies)


@dataclass(frozen=True)
class Copy:
    """An automatic copy: where, when it was made [UTC s], its size [bytes], and whether it is kept for its month."""

    path: Path
    made_utc_s: int
    bytes_n: int
    for_month: bool


@dataclass(frozen=True)
class CareStory:
    """The file, its copies, the last one on a stick [UTC s], and the other seasons that lie here."""

    path: Path
    name: str
    season: str
    rows_n: int
    lots_n: int
    copies: tuple[Copy, ...]
    stick_utc_s: int | None
    seasons: tuple[SeasonOnDisk, ...]
    next_season: str


def care_story(farm: OpenFarm) -> CareStory:
    """Ask an open season; on the desk lane."""
    from farmdesk.work.carrying import next_season, stick_copy_utc_s
    from farmdesk.work.seasons import others

    made = []
    for n, path in enumerate(farm.file.copies):
        day, _, hour = path.stem.partition(" ")
        at = farm.time.read(f"{day}T{hour[:2]}:{hour[2:4]}:{hour[4:6]}")
        made.append(Copy(path, at, path.stat().st_size, n >= KEPT_N))
    about, path = farm.things.farm, farm.file.path
    return CareStory(
        path, about.name, about.season, len(farm.picture.book.by_id), len(farm.picture.lots), tuple(made),
        stick_copy_utc_s(farm.things, farm.time), tuple(others(path, farm.file.file_id)), next_season(farm),
    )  # fmt: skip


def sticks(season: Path) -> list[Path]:
    """Where a copy could lie on another disk that is in this computer now, by its season's file name."""
    here, found = QStorageInfo(str(season.parent)).device(), []
    for disk in QStorageInfo.mountedVolumes():
        root = Path(disk.rootPath())
        taken_out = any(str(root).startswith(start) for start in ("/media", "/run/media", "/mnt", "/Volumes"))
        lettered = len(str(root)) <= 3 and str(root)[1:2] == ":"
        if disk.isReady() and not disk.isReadOnly() and disk.device() != here and (taken_out or lettered):
            found.append(root / season.name)
    return found
