"""Which season file is opened where none is named: the practice season, made once and then copied to work on."""

from __future__ import annotations

import shutil
from pathlib import Path

from farmdesk import clock, paths
from farmdesk.clock import FarmTime
from farmdesk.errors import FileTrouble, Problem
from farmdesk.picture.things import Things
from farmdesk.text import N_

SUFFIX = ".season"


def practice_file(*, fresh: bool = False) -> Path:
    """The practice season to open: a working copy; `fresh` throws away what was typed into it.

    The season itself is typed in once and kept beside it. Raises FileTrouble where the disk refuses.
    """
    folder = paths.data_folder()
    made, work = folder / f"practice-as-made{SUFFIX}", folder / f"practice{SUFFIX}"
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


def practice_from(at_utc_s: int, time: FarmTime) -> Path:
    """A practice season that ends at an instant [UTC s], so that one can go on typing from there."""
    local = time.local(at_utc_s)
    path = paths.data_folder() / f"practice-from-{local:%Y-%m-%d-%H%M}{SUFFIX}"
    if not path.exists():
        _build(path, at_utc_s)
    return path


def opens_at(things: Things, time: FarmTime) -> int | None:
    """The instant [UTC s] at which a season wants to be seen first (a setting); None: at the present."""
    typed = things.settings.get("opens_at", "").strip()
    return time.read(typed) if typed else None


def clock_behind(last_written_utc_s: int) -> bool:
    """Whether the computer's clock stands before the last row that was written."""
    return clock.now() < last_written_utc_s - 60


def _build(path: Path, until_utc_s: int | None = None) -> None:
    from farmdesk.work.practice import build_practice  # the tables are read only when they are needed

    part = path.with_name(path.name + ".making")
    part.unlink(missing_ok=True)
    build_practice(part, until_utc_s).close()
    part.replace(path)


def verify(path: Path) -> list[Problem]:
    """What is wrong with a season file, the first row changed by hand first; [] when all is well."""
    from farmdesk.notebook.verify import verify as looked_at

    return looked_at(path)
