"""Where things lie on this computer: resources that ship with the program, and the person's own data."""

from __future__ import annotations

import os
from pathlib import Path

import platformdirs

_HERE = Path(__file__).resolve().parent


def resource(*parts: str) -> Path:
    """A file that ships with the program: from a checkout or from an installed package."""
    for root in (_HERE / "resources", _HERE.parent / "resources"):
        path = root.joinpath(*parts)
        if path.exists():
            return path
    raise FileNotFoundError("/".join(parts))


def demo_data(*parts: str) -> Path:
    """A table of the practice season: from a checkout or from an installed package."""
    for root in (_HERE / "demo_data", _HERE.parent / "demo_data"):
        path = root.joinpath(*parts)
        if path.exists():
            return path
    raise FileNotFoundError("/".join(parts))


def data_folder() -> Path:
    """The person's own folder for season files and copies; FARMDESK_DATA names another one."""
    folder = Path(os.environ.get("FARMDESK_DATA") or platformdirs.user_data_dir("farmdesk", appauthor=False))
    folder.mkdir(parents=True, exist_ok=True)
    return folder
