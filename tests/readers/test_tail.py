"""A file that grows: only what is new is read, and a line still being written waits."""

from __future__ import annotations

from pathlib import Path

import pytest

from farmdesk.clock import FarmTime
from farmdesk.errors import FileTrouble
from farmdesk.readers.logger_file import Fault, read_logger_file, read_tail

FARM = FarmTime("America/Costa_Rica")
HEAD = "time,temp C\n13/01/2025 17:00,20.0\n13/01/2025 17:15,20.2\n"


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16"])
def test_new_lines_alone(tmp_path: Path, encoding: str) -> None:
    path = tmp_path / "l.csv"
    text = HEAD + "13/01/2025 17:30,2"
    path.write_bytes(text.encode(encoding))
    rows, _ = read_logger_file(path, FARM, clock_shift_s=60)
    tail = rows.tail
    assert tail.layout.day_order == "dmy"

    more = "0.4\n14/01/2025 17:45,ERR\n14/01/2025 18:00,21"
    path.write_bytes((text + more).encode(encoding))
    rows, problems, tail = read_tail(path, tail)
    assert rows.value.tolist() == [20.4]
    assert FARM.local(int(rows.at_utc_s[0])).isoformat() == "2025-01-13T17:31:00-06:00"
    assert [(p.where, p.kind) for p in problems if isinstance(p, Fault)] == [("5", "number")]

    rows, problems, tail = read_tail(path, tail)
    assert (len(rows), problems) == (0, [])

    path.write_bytes((text + more + ".5\n").encode(encoding))
    rows, problems, tail = read_tail(path, tail)
    assert (rows.value.tolist(), problems, tail.line_n) == ([21.5], [], 6)
    assert tail.offset_bytes == path.stat().st_size


def test_a_file_begun_anew_or_gone(tmp_path: Path) -> None:
    path = tmp_path / "l.csv"
    path.write_text(HEAD)
    rows, _ = read_logger_file(path, FARM)
    path.write_text(HEAD[:20])
    with pytest.raises(FileTrouble, match="began it anew"):
        read_tail(path, rows.tail)
    path.unlink()
    with pytest.raises(FileTrouble, match="cannot be read"):
        read_tail(path, rows.tail)


def test_any_cut_gives_the_same_as_the_whole(tmp_path: Path) -> None:
    path = tmp_path / "l.csv"
    whole = HEAD + "".join(f"14/01/2025 {h:02}:{m:02},{20 + m / 60:.2f}\r\n" for h in range(3) for m in range(0, 60, 7))
    path.write_bytes(whole.encode())
    expected, _ = read_logger_file(path, FARM)
    for cut in range(len(HEAD), len(whole), 11):
        path.write_bytes(whole[:cut].encode())
        rows, _ = read_logger_file(path, FARM)
        path.write_bytes(whole.encode())
        rest, problems, tail = read_tail(path, rows.tail)
        kept = dict(zip(rows.at_utc_s.tolist(), rows.value.tolist(), strict=True))
        kept |= dict(zip(rest.at_utc_s.tolist(), rest.value.tolist(), strict=True))
        assert sorted(kept.items()) == list(zip(expected.at_utc_s.tolist(), expected.value.tolist(), strict=True))
        assert (problems, tail.offset_bytes) == ([], len(whole))
