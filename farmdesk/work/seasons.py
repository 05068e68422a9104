"""Which season file is opened where none is named: the practice season, made once and then copied to work on."""

from __future__ import annotations

import hashlib
import shutil
from dataclasses import dataclass, replace
from pathlib import Path

from farmdesk import clock, paths
from farmdesk.clock import HOUR_S, FarmTime
from farmdesk.errors import FileTrouble, Problem
from farmdesk.notebook.steps import steps
from farmdesk.picture.things import Things
from farmdesk.text import N_

SUFFIX = ".season"
NIGHT_H = 12  # a longer silence is said when a season is opened: the clock may have leapt (the farm's habit)
OPENS_AT = "opens_at"  # a setting: farm time, ISO


def practice_file(*, fresh: bool = False) -> Path:
    """The practice season to open: a working copy; `fresh` throws away what was typed into it.

    The season itself is typed in once and kept beside it. Raises FileTrouble where the disk refuses.
    """
    folder, tables = paths.data_folder(), _tables_digest()
    made, work = folder / f"practice-as-made-{tables}{SUFFIX}", folder / f"practice-{tables}{SUFFIX}"
    try:
        if not made.exists():
            _build(made)
        if fresh or not work.exists():
            part = work.with_name(work.name + ".new")
            shutil.copyfile(made, part)
            part.replace(work)
    except OSError as error:
        raise FileTrouble(
            N_("seasons", "The practice season could not be laid out in {folder}.", folder=str(folder)),
            N_("seasons", "Free some room on the disk, or name another folder in FARMDESK_DATA."),
        ) from error
    return work


def _tables_digest() -> str:
    """A short name for what the practice tables say and the file they are kept in: with others it is another season."""
    digest = hashlib.sha256("".join(steps()).encode())
    for path in sorted(paths.demo_data().rglob("*.csv")):
        digest.update(path.name.encode() + path.read_bytes())
    return digest.hexdigest()[:8]


def opens_at(things: Things, time: FarmTime) -> int | None:
    """The instant [UTC s] at which a season wants to be seen first (a setting); None: at the present."""
    typed = things.settings.get(OPENS_AT, "").strip()
    return time.read(typed) if typed else None


def clock_behind(last_written_utc_s: int) -> bool:
    """Whether the computer's clock stands before the last row that was written."""
    return clock.now() < last_written_utc_s - 60


def clock_leapt_h(last_written_utc_s: int) -> int:
    """How many hours [h] the computer's clock stands after the last row; 0 where that is no more than a night."""
    ahead_s = clock.now() - last_written_utc_s
    return ahead_s // HOUR_S if last_written_utc_s and ahead_s > NIGHT_H * HOUR_S else 0


def _build(path: Path, until_utc_s: int | None = None) -> None:
    from farmdesk.work.practice import build_practice  # the tables are read only when they are needed

    part = path.with_name(path.name + ".making")
    part.unlink(missing_ok=True)
    farm = build_practice(part, until_utc_s)
    if until_utc_s is not None:
        local = farm.time.local(until_utc_s)
        farm.save_things(replace(farm.things, settings={**farm.things.settings, OPENS_AT: local.isoformat()}))
    farm.close()
    part.replace(path)


@dataclass(frozen=True, slots=True)
class SeasonOnDisk:
    """A season file that lies on this computer, its size [bytes], and when it was last changed [UTC s]."""

    path: Path
    farm: str
    season: str
    bytes_n: int
    changed_utc_s: int


def others(open_path: Path, file_id: str) -> list[SeasonOnDisk]:
    """The farm's other season files in the data folder and beside the open one, the newest season first.

    Practice seasons, copies of the open one (they carry its `file_id`) and files that cannot be read are left out.
    """
    from farmdesk.notebook.season_file import SeasonFile

    found = []
    for path in sorted({p.resolve() for d in (paths.data_folder(), open_path.parent) for p in d.glob(f"*{SUFFIX}")}):
        if path == open_path.resolve():
            continue
        try:
            with SeasonFile.open(path, read_only=True) as file:
                farm, is_copy = file.things.farm, file.file_id == file_id
        except FileTrouble:
            continue
        if not farm.practice and not is_copy:
            about = path.stat()
            found.append(SeasonOnDisk(path, farm.name, farm.season, about.st_size, int(about.st_mtime)))
    return sorted(found, key=lambda one: one.season, reverse=True)


def verify(path: Path) -> list[Problem]:
    """What is wrong with a season file, the first row changed by hand first; [] when all is well."""
    from farmdesk.notebook.verify import verify as looked_at

    return looked_at(path)
