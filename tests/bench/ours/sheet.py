"""The lot sheet of 25-13W from its story; and 300 sheets of all lots in turn, each asked for and written.

`record` keeps what one sheet draws, call by call, for the floor to draw again on a bare canvas.
"""

from __future__ import annotations

import json
import statistics
import sys
import tempfile
import time
from contextlib import closing
from io import BytesIO
from pathlib import Path
from typing import Any

from reportlab.lib.colors import Color

from farmdesk import paths
from farmdesk.papers import page
from farmdesk.papers.lot_sheet import write_lot_sheet
from farmdesk.text import ENGLISH
from farmdesk.work.farm import OpenFarm
from farmdesk.work.sheet import sheet_story

CODE = "25-13W"
SHEETS_N = 300


class Recorder:
    """Stands for a canvas, or a path of it: keeps each call and passes it on."""

    def __init__(self, kept: list[list[Any]], real: Any, name: int) -> None:
        self._kept, self._real, self._name = kept, real, name

    def __getattr__(self, called: str) -> Any:
        real = getattr(self._real, called)
        if not callable(real):
            return real

        def call(*args: Any, **more: Any) -> Any:
            made = real(*map(plain, args), **{key: plain(value) for key, value in more.items()})
            if not any(callable(arg) for arg in args):
                self._kept.append([self._name, called, [*map(told, args)], {k: told(v) for k, v in more.items()}])
            if called in ("beginPath", "beginText"):
                return Recorder(self._kept, made, len(self._kept))
            return made

        return call


def plain(arg: Any) -> Any:
    return arg._real if isinstance(arg, Recorder) else arg


def told(arg: Any) -> Any:
    """An argument as JSON: colours and paths by name."""
    if isinstance(arg, Recorder):
        return {"path": arg._name}
    if isinstance(arg, Color):
        return {"color": "#" + arg.hexval()[2:]}
    return arg


def record(path: Path) -> None:
    """Write down what the sheet draws, and with which fonts, from the practice season beside `path`."""
    kept: list[list[Any]] = []
    made = page.pdfcanvas.Canvas
    options: dict[str, Any] = {}

    def canvas(target: Any, **more: Any) -> Recorder:
        options.update(more)
        return Recorder(kept, made(target, **more), 0)

    with closing(OpenFarm.open(path.with_name("practice.farm"), read_only=True)) as farm:
        page.pdfcanvas.Canvas = canvas
        try:
            write_lot_sheet(sheet_story(farm, CODE), ENGLISH, BytesIO(), time=farm.time)
        finally:
            page.pdfcanvas.Canvas = made
    fonts = {file.stem: str(file) for file in paths.resource("fonts").glob("*.ttf")}  # registered under these names
    path.write_text(json.dumps({"fonts": fonts, "canvas": options, "calls": kept}), encoding="utf-8")


def main() -> None:
    folder = Path(sys.argv[1])
    with (
        closing(OpenFarm.open(folder / "practice.farm", read_only=True)) as farm,
        tempfile.TemporaryDirectory() as made,
    ):
        story = sheet_story(farm, CODE)
        one = []
        for _ in range(6):
            begun = time.perf_counter()
            write_lot_sheet(story, ENGLISH, BytesIO(), time=farm.time)
            one.append(time.perf_counter() - begun)
        codes = [code for code, lot in sorted(farm.picture.lots.items()) if lot.birth is not None]
        sheets_n = 3 if "--tiny" in sys.argv else SHEETS_N
        begun = time.perf_counter()
        for n in range(sheets_n):
            code = codes[n % len(codes)]
            write_lot_sheet(sheet_story(farm, code), ENGLISH, Path(made) / f"{n}.pdf", time=farm.time)
        many = time.perf_counter() - begun
    # the first one reads the font files, on both sides
    print(json.dumps({"sheet_ms": statistics.median(one[1:]) * 1000, "many_s": many}))


if __name__ == "__main__":
    main()
