"""Everything out of a season, beside the window: tables, JSON, every lot's sheet; it tells how far it is, and stops."""

from __future__ import annotations

import threading
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject, Signal


class Progress(QObject):
    """Tells the page how far a long work is, from whatever lane it runs on, and lets it be stopped."""

    came = Signal(int)

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self.stopped = threading.Event()

    def tell(self, done_n: int) -> bool:
        """So much is done; False says to stop."""
        self.came.emit(done_n)
        return not self.stopped.is_set()


def everything_out(path: Path, folder: Path, language: str, tell: Callable[[int], bool]) -> tuple[int, int, int]:
    """All tables, the JSON, and every lot's sheet; returns tables, rows and sheets. What is done so far stays."""
    from farmdesk.desk.words import words
    from farmdesk.papers.lot_sheet import write_lot_sheet
    from farmdesk.work.carrying import export_all
    from farmdesk.work.farm import OpenFarm
    from farmdesk.work.people import for_papers
    from farmdesk.work.sheet import sheet_story

    farm, sheets = OpenFarm.open(path, read_only=True), 0
    try:
        going = True

        def on(done_n: int) -> bool:
            nonlocal going
            going = tell(done_n)
            return going

        out = export_all(farm, folder, on)
        (folder / "sheets").mkdir(exist_ok=True)
        for code, lot in sorted(farm.picture.lots.items()):
            if not going:
                break
            if lot.birth is not None:
                story = sheet_story(farm, code)
                said = for_papers(words(language), farm.things)
                write_lot_sheet(story, said, folder / "sheets" / f"{code}.pdf", time=farm.time)
                sheets += 1
                going = tell(out.rows_n + sheets)
        return out.tables_n, out.rows_n, sheets
    finally:
        farm.close()
