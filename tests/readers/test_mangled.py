"""Whatever the bytes: readings and problems, or a sentence; never anything else, and never for long."""

from __future__ import annotations

import random
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk.clock import FarmTime
from farmdesk.errors import FileTrouble, NotPossible
from farmdesk.readers.logger_file import read_logger_file, read_tail

FARM = FarmTime("America/New_York")  # a farm whose clock is set twice a year

GOOD = (
    b"time,temp C,RH\n" + b"".join(b"2025-03-%02d %02d:00:00,%d.5,60\n" % (d, h, 15 + h // 2) for d in (8, 9) for h in range(24)),
    b"Fecha;Hora;Celsius\r\n" + b"".join(b"%02d/11/2024;%02d:30:00;2%d,5\r\n" % (d, h, h % 10) for d in (2, 3) for h in range(24)),
    "#\t\"Date Time, GMT-05:00\"\tTemp °F\n".encode("cp1252")
    + b"".join(b"%d\t%d/3/25 %d:15:00 PM\t7%d.25\n" % (h, 1 + h // 12, 1 + h % 12, h % 10) for h in range(48)),
    ("Zeit;Wert\n" + "".join(f"{1_736_000_000 + 60 * i};4,{i}\n" for i in range(10, 60))).encode("utf-16"),
)  # fmt: skip
PIECES = [b",", b";", b"\t", b"\n", b"\r", b"\0", b'"', b"\xff", b"\xc2\xb0", b"-", b"9" * 60, b"e9", b"inf", b"nan", b"24:00", b"29/02/2025", b"\n\n", b" "]  # fmt: skip


def mangled(dice: random.Random) -> bytes:
    """A good file with bytes flipped, cut, doubled, swapped or stuffed."""
    data = bytearray(dice.choice(GOOD))
    for _ in range(dice.choice((1, 1, 2, 5, 40))):
        at = dice.randrange(len(data) + 1)
        way = dice.randrange(6)
        if way == 0 and at < len(data):
            data[at] ^= 1 << dice.randrange(8)
        elif way == 1:
            del data[at : at + dice.randrange(1, 200)]
        elif way == 2:
            data[at:at] = data[at : at + dice.randrange(1, 300)]
        elif way == 3:
            data[at:at] = dice.choice(PIECES) * dice.choice((1, 1, 3))
        elif way == 4:
            data[at:at] = dice.randbytes(dice.randrange(1, 30))
        else:
            data = data[at:] + data[:at]
    return bytes(data)


def check(path: Path, data: bytes, quantity: str) -> bool:
    """Read it; answers whether there were readings."""
    path.write_bytes(data)
    try:
        rows, problems = read_logger_file(path, FARM, quantity, filled_utc_s=1_736_000_000)
    except (NotPossible, FileTrouble):
        return False
    assert len(rows) == len(rows.value) > 0
    assert (np.diff(rows.at_utc_s) > 0).all()
    assert np.isfinite(rows.value).all()
    for problem in problems:
        assert str(problem.text)
    for question in rows.questions:
        assert str(question.text)
        assert len({answer.value for answer in question.answers}) == len(question.answers) >= 2
    more, _, tail = read_tail(path, rows.tail)
    assert (len(more), tail.offset_bytes) == (0, rows.tail.offset_bytes)
    return True


def many(path: Path, seed: int, n: int) -> int:
    dice = random.Random(seed)
    return sum(check(path, mangled(dice), dice.choice(("", "mass_c", "ph", "store_rh_frac"))) for _ in range(n))


def test_three_hundred_mangled_files(tmp_path: Path) -> None:
    assert many(tmp_path / "m.csv", 1, 300) > 100  # most still give what can be read


@pytest.mark.long
def test_ten_thousand_mangled_files(tmp_path: Path) -> None:
    assert many(tmp_path / "m.csv", 2, 10_000) > 3000


@given(st.binary(max_size=2000))
def test_any_bytes(tmp_path_factory: pytest.TempPathFactory, data: bytes) -> None:
    check(tmp_path_factory.getbasetemp() / "any.csv", data, "")


@given(st.text('0123456789:/-., ;\tTZ\n"apm°F', max_size=600))
def test_any_text_that_looks_like_a_table(tmp_path_factory: pytest.TempPathFactory, text: str) -> None:
    check(tmp_path_factory.getbasetemp() / "any.csv", text.encode(), "")


def test_garbage_behind_a_good_beginning_is_not_slow(tmp_path: Path) -> None:
    """Twenty thousand lines, each of a shape of its own."""
    dice = random.Random(3)
    junk = b"".join(dice.randbytes(20).replace(b"\n", b"") + b"\n" for _ in range(20_000))
    assert check(tmp_path / "g.csv", GOOD[0] + junk, "")


def test_a_line_without_end(tmp_path: Path) -> None:
    assert check(tmp_path / "g.csv", GOOD[0] + b"x" * 3_000_000, "")
    assert not check(tmp_path / "g.csv", b"x" * 3_000_000, "")
