"""The least: the same strings, paths, pens and fonts on a bare canvas, as they were written down call by call."""

import json
import statistics
import sys
import time
from io import BytesIO
from pathlib import Path

from reportlab.lib.colors import HexColor
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas

sheet = json.loads((Path(sys.argv[1]) / "sheet.json").read_text(encoding="utf-8"))
for name, file in sheet["fonts"].items():
    pdfmetrics.registerFont(TTFont(name, file, asciiReadable=0))
colors = {}


def value(arg, paths):
    if not isinstance(arg, dict):
        return arg
    if "path" in arg:
        return paths[arg["path"]]
    return colors.setdefault(arg["color"], HexColor(arg["color"]))


def draw() -> bytes:
    target = BytesIO()
    canvas = Canvas(target, **sheet["canvas"])
    paths = {0: canvas}
    for number, (on, called, args, more) in enumerate(sheet["calls"], 1):
        made = getattr(paths[on], called)(
            *[value(arg, paths) for arg in args], **{key: value(arg, paths) for key, arg in more.items()}
        )
        if called in ("beginPath", "beginText"):
            paths[number] = made
    return target.getvalue()


took = []
for _ in range(6):
    begun = time.perf_counter()
    made = draw()
    took.append(time.perf_counter() - begun)
assert made.startswith(b"%PDF")
print(json.dumps({"sheet_ms": statistics.median(took[1:]) * 1000}))
