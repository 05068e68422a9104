"""What this computer remembers about its desk: language, light or dark, size of letters, the last season.

Facts about the farm live in the season file and travel with it; these stay here, in `desk.ini` of the data folder.
"""

from __future__ import annotations

from dataclasses import asdict, dataclass, fields
from typing import Any

from PySide6.QtCore import QSettings

from farmdesk import paths
from farmdesk.desk.theme import SIZES
from farmdesk.desk.words import LANGUAGES, system_language

LOOKS = ("system", "light", "dark")


@dataclass(frozen=True)
class Habits:
    """`language` "" is the computer's own; `theme` system, light or dark; `scale` 1, 1.15 or 1.3."""

    language: str = ""
    theme: str = "system"
    scale: float = 1.0
    season: str = ""
    width: int = 1366
    height: int = 768

    @property
    def speaks(self) -> str:
        """The language in force."""
        return self.language if self.language in LANGUAGES else system_language()


def _store() -> QSettings:
    return QSettings(str(paths.data_folder() / "desk.ini"), QSettings.Format.IniFormat)


def load() -> Habits:
    """What was kept; what cannot be read counts as never set."""
    store, unset = _store(), Habits()
    found: dict[str, Any] = {}
    for field in fields(Habits):
        raw = store.value(field.name)  # an ini file hands everything back as text
        if raw is not None:
            try:
                found[field.name] = type(getattr(unset, field.name))(raw)
            except (TypeError, ValueError):
                continue
    habits = Habits(**found)
    if habits.theme not in LOOKS or habits.scale not in SIZES:
        return Habits(language=habits.language, season=habits.season)
    return habits


def save(habits: Habits) -> None:
    """Keep these."""
    store = _store()
    for name, value in asdict(habits).items():
        store.setValue(name, value)
    store.sync()
