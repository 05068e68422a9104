"""A picture of every page, and the practice papers, for a computer without a display."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from PySide6.QtWidgets import QApplication

from farmdesk import clock
from farmdesk.clock import FarmTime
from farmdesk.desk import theme
from farmdesk.desk.go import Target
from farmdesk.desk.lanes import Inline
from farmdesk.desk.pages import PAGES, Desk
from farmdesk.desk.pages.papers import KINDS, Wish, basis_of, make
from farmdesk.desk.season import facts, put_handle
from farmdesk.desk.window import Window
from farmdesk.desk.words import speak
from farmdesk.work.farm import OpenFarm
from farmdesk.work.seasons import opens_at, practice_file

SIZE_PX = (1366, 768)
LOT = "25-13W"  # the lot that the lots' page opens on


def draw_pages(farm: OpenFarm, folder: Path, *, language: str = "en", dark: bool = False) -> Iterator[Path]:
    """Draw each page of an open season at the instant it opens at; yields each file. Closes the season."""
    _running = QApplication.instance() or QApplication(["farmdesk"])  # kept until the last picture is drawn
    QApplication.setStyle("Fusion")
    theme.load_fonts()
    theme.look().wear("dark" if dark else "light", 1.0)
    lanes = Inline()
    with clock.set_to(float(farm.picture.book.last_written_utc_s)):
        lanes.open(lambda: farm)
        desk = Desk(lanes, speak(language), FarmTime("UTC"))
        put_handle(desk, facts(farm))
        window = Window(lanes, desk)
        window.resize(*SIZE_PX)
        window.show()
        window.begin()
        for name in PAGES:
            window.open(Target("lot", LOT) if name == "lots" else Target("page", name))
            path = folder / f"{name.replace(' ', '-')}.png"
            window.grab().save(str(path))
            yield path
        window.close()


def draw_papers(folder: Path) -> Iterator[Path]:
    """The practice papers in the language each is usually given in: the crew's sheets, and one lot's sheet."""
    farm = OpenFarm.open(practice_file(), read_only=True)
    try:
        at_utc_s = opens_at(farm.things, farm.time)
        for kind in KINDS:
            wish = Wish(kind, LOT if kind == "lot sheet" else "")
            at = None if kind == "lot sheet" else at_utc_s
            path = folder / f"{kind.replace(' ', '-')}.pdf"
            path.write_bytes(make(basis_of(farm, wish, at)))
            yield path
    finally:
        farm.close()
