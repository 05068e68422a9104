"""Only the ground floor's clock reads the computer's clock or knows a zone, and no instant is naive."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

from tests.house.tree import name_of, python, syntax

READS_THE_CLOCK = {
    "datetime.now", "datetime.utcnow", "datetime.today", "datetime.utcfromtimestamp", "date.today", "date.fromtimestamp",
    "time.time", "time.time_ns", "time.localtime", "time.gmtime", "time.ctime", "time.strftime",
    "QDateTime.currentDateTime", "QDateTime.currentDateTimeUtc", "QDateTime.currentSecsSinceEpoch",
    "QDateTime.currentMSecsSinceEpoch", "QDate.currentDate", "QTime.currentTime",
    "Timestamp.now", "Timestamp.utcnow", "Timestamp.today",
}  # fmt: skip
FROM_TIME = {"time", "time_ns", "localtime", "gmtime", "ctime"}


def naive(tree: ast.Module) -> list[str]:
    """Where a file asks the computer for the hour, names a zone, or makes an instant without one."""
    found = []
    for node in ast.walk(tree):
        if isinstance(node, ast.Attribute):
            name = ".".join(ast.unparse(node).split(".")[-2:])
            if name in READS_THE_CLOCK:
                found.append(f"line {node.lineno}: {name}")
        elif isinstance(node, ast.ImportFrom) and node.module == "time":
            found += [f"line {node.lineno}: time.{a.name}" for a in node.names if a.name in FROM_TIME]
        elif isinstance(node, ast.Import | ast.ImportFrom):
            modules = [a.name for a in node.names] if isinstance(node, ast.Import) else [node.module or ""]
            found += [f"line {node.lineno}: {m}" for m in modules if m in ("zoneinfo", "dateutil", "pytz")]
        elif isinstance(node, ast.Call):
            arguments, words = len(node.args), {word.arg for word in node.keywords}
            made = ast.unparse(node.func).split(".")[-2:]
            if made[-1] == "datetime" and arguments < 8 and "tzinfo" not in words:
                found.append(f"line {node.lineno}: a datetime without a zone")
            elif made[-1] == "fromtimestamp" and arguments < 2 and "tz" not in words:
                found.append(f"line {node.lineno}: fromtimestamp without a zone")
    return found


@pytest.mark.parametrize(
    "path", [p for p in python("farmdesk", "demo_data") if name_of(p) != "farmdesk/clock.py"], ids=name_of
)
def test_no_naive_time(path: Path) -> None:
    assert not naive(syntax(path)), name_of(path)


@pytest.mark.parametrize(
    "line",
    [
        "import time\nt = time.time()",
        "from time import time",
        "from datetime import datetime\nt = datetime.now()",
        "import datetime as d\nt = d.datetime.utcnow()",
        "from datetime import datetime\nt = datetime(2025, 1, 14, 18)",
        "from datetime import datetime\nt = datetime.fromtimestamp(5)",
        "from zoneinfo import ZoneInfo",
        "t = QDateTime.currentDateTime()",
    ],
)
def test_naive_time_is_seen(line: str) -> None:
    assert naive(ast.parse(line))


def test_measuring_a_while_is_no_clock() -> None:
    assert not naive(ast.parse("import time\nt = time.perf_counter() - time.monotonic()\ntime.sleep(0)"))
