"""`python -m tests.bench [--json] [row …]`: how fast we are beside the least that anyone must do. Nothing is asserted."""

from __future__ import annotations

import argparse
import json
import os
import sys
import tempfile
from dataclasses import asdict
from pathlib import Path

from tests.bench import data
from tests.bench.pairs import NotThere, Result, Row, measure
from tests.bench.rows import ROWS

HEADS = ("row", "what", "ours", "floor", "ratio", "goal", "met")
WIDTHS = (8, 50, 11, 11, 8, 22, 3)


def main() -> int:
    asked = argparse.ArgumentParser(prog="python -m tests.bench", description=__doc__)
    asked.add_argument("--json", action="store_true", help="print the figures as JSON")
    asked.add_argument("--tiny", action="store_true", help="one pair on small data: only to see that it runs")
    asked.add_argument("rows", nargs="*", metavar="row", help=", ".join(row.name for row in ROWS))
    args = asked.parse_args()
    unknown = set(args.rows) - {row.name for row in ROWS}
    if unknown:
        asked.error(f"there is no row called {', '.join(sorted(unknown))}")
    chosen = [row for row in ROWS if not args.rows or row.name in args.rows]
    results: list[Result] = []
    if not args.json:
        print(line(HEADS))
    with tempfile.TemporaryDirectory(prefix="bench-") as folder:
        for row in chosen:
            found = of_row(row, Path(folder), args.tiny)
            results += found
            if not args.json:
                for result in found:
                    print(line(cells(result)), flush=True)
    if not args.json and hasattr(os, "getloadavg"):
        print(
            f"({os.cpu_count()} cores, load {os.getloadavg()[0]:.1f}: above one a core, figures without a floor say little)"
        )
    if args.json:
        print(json.dumps([asdict(result) for result in results], indent=1))
    return 0


def of_row(row: Row, folder: Path, tiny: bool) -> list[Result]:
    """A row's results; one that cannot run says why, and the others go on."""
    try:
        for name in row.needs:
            data.make(name, folder, tiny)
        return measure(row, folder, tiny)
    except (NotThere, RuntimeError) as error:
        why = str(error)
    return [Result(row.name, f.what, None, None, None, f.unit, f.goal, None, why) for f in row.figures]


def cells(result: Result) -> tuple[str, ...]:
    """A result as the words of one line."""
    if result.ours is None:
        return (result.row, result.what, result.why)
    shown = [f"{value:.3g} {result.unit}" if value is not None else "" for value in (result.ours, result.floor)]
    ratio = f"{result.ratio:.2g}×" if result.ratio is not None else ""
    return (result.row, result.what, *shown, ratio, result.goal, "yes" if result.met else "NO")


def line(words: tuple[str, ...]) -> str:
    return "  ".join(word.ljust(width) for word, width in zip(words, WIDTHS, strict=False)).rstrip()


if __name__ == "__main__":
    sys.exit(main())
