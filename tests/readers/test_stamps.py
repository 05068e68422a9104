"""Dates and numbers by the column: as Python's own reading has them, and true across a set clock."""

from __future__ import annotations

from datetime import datetime, timedelta, timezone

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farmdesk.clock import UTC, FarmTime
from farmdesk.readers.numbers import UNITS, numbers
from farmdesk.readers.pieces import Bytes, Piece, by_shape, script_of
from farmdesk.readers.stamps import NO_OFFSET, days_in, instants, recipe, stamps, wall_s

FORMS = (
    "%Y-%m-%dT%H:%M:%S", "%Y/%m/%d %H:%M:%S", "%d-%b-%Y %H:%M:%S", "%B %d, %Y %I:%M:%S %p", "%Y%m%d %H%M%S",
    "%H:%M:%S %Y-%m-%d", "%A, %d %B %Y %H.%M.%S", "%Y-%m-%d, %I:%M:%S%p",
)  # fmt: skip
MOMENTS = st.datetimes(datetime(1990, 1, 1), datetime(2099, 12, 31, 23, 59, 59))  # noqa: DTZ001 (a wall clock's own)


def column(cells: list[str]) -> Bytes:
    return Piece("\n".join(cells).encode(), ";").cells(0)


@given(st.sampled_from(FORMS), st.lists(MOMENTS, min_size=1, max_size=20))
def test_a_column_reads_as_it_was_written(form: str, moments: list[datetime]) -> None:
    read = stamps(column([at.strftime(form) for at in moments]))
    walls, real = wall_s(read, "dmy")
    assert real.all()
    assert (read.dated & read.timed).all()
    assert walls.tolist() == [int(at.replace(tzinfo=UTC).timestamp()) for at in moments]


@given(st.lists(MOMENTS, min_size=1, max_size=20), st.sampled_from(["dmy", "mdy"]))
def test_free_dates_read_in_their_order(moments: list[datetime], order: str) -> None:
    form = "%d/%m/%Y %H:%M:%S" if order == "dmy" else "%m/%d/%Y %H:%M:%S"
    read = stamps(column([at.strftime(form) for at in moments]))
    walls, real = wall_s(read, order)
    assert real.all()
    assert walls.tolist() == [int(at.replace(tzinfo=UTC).timestamp()) for at in moments]


@given(MOMENTS, st.integers(-14 * 60, 14 * 60))
def test_an_offset_is_kept(at: datetime, ahead_min: int) -> None:
    aware = at.replace(tzinfo=timezone(timedelta(minutes=ahead_min)))
    read = stamps(column([aware.isoformat(timespec="seconds")]))
    assert read.offset_s.tolist() == [ahead_min * 60]
    assert stamps(column([at.isoformat(timespec="seconds")])).offset_s.tolist() == [NO_OFFSET]
    assert stamps(column([at.isoformat(timespec="seconds") + "Z"])).offset_s.tolist() == [0]


@pytest.mark.parametrize(
    "cell",
    ["2025-02-29 10:00", "2025-13-01 10:00", "2025-01-32 10:00", "2025-01-03 24:00", "2025-01-03 10:60", "32/01/2025 10:00",
     "13:10 PM 2025-01-03", "1889-01-03 10:00", "29/02/2023 10:00", "3 Foo 2025 10:00", "2025-01-03 10:00 +15:00", "9999999999"],
)  # fmt: skip
def test_what_does_not_exist_is_no_date(cell: str) -> None:
    assert not stamps(column([cell])).ok.any()


def test_a_temperature_is_no_hour() -> None:
    assert recipe("00.00") is None
    assert recipe("00:00") is not None


def test_days_in_every_order() -> None:
    parts = np.array([25]), np.array([1]), np.array([13])
    assert days_in("dmy", *parts)[1].tolist() == [True]
    assert days_in("mdy", *parts)[1].tolist() == [False]
    assert days_in("ymd", *parts)[0].tolist() == [
        (datetime(2025, 1, 13, tzinfo=UTC) - datetime(1970, 1, 1, tzinfo=UTC)).days
    ]


@given(st.sampled_from(["America/New_York", "Australia/Lord_Howe", "America/Costa_Rica", "Asia/Kathmandu"]), st.data())
def test_walls_become_instants_as_the_clock_has_them(zone: str, data: st.DataObject) -> None:
    farm = FarmTime(zone)
    moments = data.draw(st.lists(st.integers(1_700_000_000, 1_760_000_000), min_size=1, max_size=30, unique=True))
    walls = [int(farm.local(at).replace(tzinfo=UTC).timestamp()) for at in sorted(moments)]
    read, _ = instants(np.array(walls), farm)
    for wall, found in zip(walls, read.tolist(), strict=True):
        assert int(farm.local(found).replace(tzinfo=UTC).timestamp()) == wall


class TestTheHourThatComesTwice:
    FARM = FarmTime("America/New_York")  # 3 November 2024: at 02:00 the clock goes back to 01:00

    def walls(self, instants_s: list[int]) -> np.ndarray:
        return np.array([int(self.FARM.local(at).replace(tzinfo=UTC).timestamp()) for at in instants_s])

    def test_rows_after_the_step_back_are_of_the_second_hour(self) -> None:
        true = list(range(1_730_606_400, 1_730_606_400 + 8 * 3600, 900))
        read, unsure_n = instants(self.walls(true), self.FARM)
        assert (read.tolist(), unsure_n) == (true, 0)

    def test_without_a_step_back_they_are_counted(self) -> None:
        read, unsure_n = instants(self.walls([1_730_611_800]), self.FARM)  # 01:30, the first time
        assert (read.tolist(), unsure_n) == ([1_730_611_800], 1)

    def test_the_hour_that_never_comes(self) -> None:
        true = list(range(1_710_050_400, 1_710_050_400 + 8 * 3600, 900))  # 10 March 2024
        read, unsure_n = instants(self.walls(true), self.FARM)
        assert (read.tolist(), unsure_n) == (true, 0)


@given(
    st.lists(st.decimals(-9999, 9999, places=4, allow_nan=False, allow_infinity=False), min_size=1),
    st.sampled_from(".,"),
)
def test_numbers_read_as_float_does(values: list, sign: str) -> None:
    read = numbers(column([str(value).replace(".", sign) for value in values]))
    assert read.ok.all()
    assert read.value.tolist() == [float(value) for value in values]


@given(st.lists(st.floats(-200, 200, width=32).filter(lambda x: abs(x) > 1e-3 or x == 0), min_size=1))
def test_long_decimals_are_cut_not_refused(values: list[float]) -> None:
    read = numbers(column([f"{value:.17f}" for value in values]))
    assert read.value == pytest.approx(values, abs=1e-11)


def test_units_and_what_is_no_number() -> None:
    read = numbers(
        column(["23.5 °C", "74.3F", "4.65 pH", "62 %RH", "+.5", "-3", "1.2.3", "ERR", "--", "", "1,234.5", "nan"])
    )
    assert read.ok.tolist() == [True] * 6 + [False] * 6
    assert [UNITS[unit] for unit in read.unit[:6]] == ["C", "F", "pH", "%", "", ""]
    assert read.value[:6].tolist() == [23.5, 74.3, 4.65, 62.0, 0.5, -3.0]
    assert read.blank.tolist() == [False] * 9 + [True, False, False]


@given(st.lists(st.lists(st.text("ab1 ;\"'\t", max_size=9), min_size=1, max_size=5), min_size=1, max_size=9))
def test_cells_part_as_plain_splitting_does(rows: list[list[str]]) -> None:
    lines = [";".join(cell.replace(";", "").replace('"', "") for cell in row) for row in rows]
    piece = Piece("".join(f"{line}\n" for line in lines).encode(), ";")
    for j in range(6):
        cells = [c.tobytes().rstrip(b"\0").decode() for c in piece.cells(j)]
        split = [line.split(";") for line in lines]
        assert cells == [parts[j].strip(" \t") if j < len(parts) else "" for parts in split]


def test_a_quoted_delimiter_does_not_part_and_a_lost_quote_ends_with_its_line() -> None:
    piece = Piece(b'"a,b",c\n"a,b\nd,e\n', ",")
    assert [piece.row(line) for line in range(3)] == [["a,b", "c"], ["a,b"], ["d", "e"]]
    assert [c.tobytes().rstrip(b"\0") for c in piece.cells(1)] == [b"c", b"", b"e"]


def test_shapes_group_all_rows() -> None:
    cells = column([f"{i}/{i % 13}/2025 {'AM' if i % 2 else 'PM'}" for i in range(200)])
    found = dict(by_shape(cells))
    assert "00/0/0000 am" in found
    assert sorted(row for rows in found.values() for row in rows.tolist()) == list(range(200))


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "utf-16-le", "utf-16-be"])
def test_the_script_is_told_from_the_first_bytes(encoding: str) -> None:
    script = script_of("time,temp\n2025-01-03,20\n".encode(encoding))
    expected = {"utf-8-sig": "utf-8", "utf-16": "utf-16-le"}.get(encoding, encoding)
    assert (script.encoding, script.newline) == (expected, "\n".encode(expected))
