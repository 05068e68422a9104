"""A logger's file in, readings and faults out: the layouts that makers write, and what goes wrong with them."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from farmdesk.clock import FarmTime
from farmdesk.errors import FileTrouble, NotPossible, Problem
from farmdesk.readers.logger_file import Fault, LoggerRows, look_at, read_logger_file
from tests.conftest import Hands

FARM = FarmTime("America/Costa_Rica")  # six hours behind UTC all year
START = 1_735_945_200  # 3 January 2025 17:00 on the farm
STEP_S = 900


def read(tmp_path: Path, text: str | bytes, quantity: str = "", **more: object) -> tuple[LoggerRows, list[Problem]]:
    path = tmp_path / "logger.csv"
    path.write_bytes(text if isinstance(text, bytes) else text.encode())
    return read_logger_file(path, FARM, quantity, **more)  # type: ignore[arg-type]


def kinds(problems: list[Problem]) -> list[str]:
    return [problem.kind for problem in problems if isinstance(problem, Fault)]


def lines(stamp: str, value: str = "{:.2f}", n: int = 8, sep: str = ",") -> str:
    """Rows every 15 minutes from 3 January 17:00, in a maker's way of writing."""
    rows = []
    for i in range(n):
        at = FARM.local(START + i * STEP_S)
        rows.append(at.strftime(stamp) + sep + value.format(20 + i / 4))
    return "\n".join(rows) + "\n"


def numbered(rows: str) -> str:
    return "".join(f"{i},{row}\n" for i, row in enumerate(rows.splitlines(), 1))


def hot(unit: str = "") -> str:
    """The same rows in degrees Fahrenheit."""
    stamps = lines("%Y-%m-%d %H:%M", "").split(",\n")
    return "".join(f"{stamp},{(20 + i / 4) * 1.8 + 32:.2f}{unit}\n" for i, stamp in enumerate(stamps[:-1]))


ISO = "%Y-%m-%d %H:%M:%S"
LAYOUTS = {
    "iso": "time,temp C\n" + lines("%Y-%m-%dT%H:%M:%S"),
    "iso with a blank": "time,temp C\n" + lines("%Y-%m-%d %H:%M"),
    "fractions of seconds": "time,temp C\n" + lines("%Y-%m-%d %H:%M:%S.250"),
    "with the farm's offset": "time,temp C\n" + lines("%Y-%m-%dT%H:%M:%S-06:00"),
    "offset without a colon": "time,temp C\n" + lines("%Y-%m-%dT%H:%M:%S-0600"),
    "day first": "Fecha;Temp (°C)\n" + lines("%d/%m/%Y %H:%M:%S", sep=";").replace(".", ","),
    "month first, twelve hours": "Date,Temp °C\n" + lines("%m/%d/%Y %I:%M:%S %p"),
    "short year": "Date,Temp °C\n" + lines("%m/%d/%y %H:%M"),
    "points": "Datum;Celsius\n" + lines("%d.%m.%Y %H:%M", sep=";"),
    "two columns": "Date\tTime\tTemperature [°C]\n" + lines("%Y-%m-%d\t%H:%M:%S", sep="\t"),
    "hour before day": "Time,Date,Temp C\n" + lines("%H:%M:%S,%d/%m/%Y"),
    "month as a word": "When,Celsius\n" + lines("%d-%b-%Y %H:%M:%S"),
    "month as a word first": "When,Celsius\n" + lines('"%b %d, %Y %I:%M %p"'),
    "spanish": "Cuando;Celsius\n" + lines("%d de ene. de %Y %H:%M", sep=";"),
    "packed": "When,Celsius\n" + lines("%Y%m%dT%H%M%S"),
    "epoch": "when,celsius\n" + "".join(f"{START + i * STEP_S},{20 + i / 4}\n" for i in range(8)),
    "no header": lines(ISO),
    "numbered rows": "#,Date Time,Temp (°C)\n" + numbered(lines(ISO)),
    "humidity beside it": "Time,Celsius(°C),Humidity(%rh),Dew Point(°C)\n" + lines(ISO, "{:.2f},65.0,12.5"),
    "unit in the cell": "time,value\n" + lines(ISO, "{:.2f} °C"),
    "fahrenheit in the header": "time,Temp (°F)\n" + hot(),
    "fahrenheit in the cell": "time,Temp\n" + hot("F"),
    "quoted, comma as decimal": '"When","Temp °C"\n' + lines('"%d/%m/%Y %H:%M:%S"', '"{:.2f}"').replace(".", ","),
    "a zone in the header": 'n,"Date Time, GMT-06:00","Temp, °C (S/N: 1)"\n' + numbered(lines("%m/%d/%y %I:%M:%S %p")),
    "prose above": "Serial: 4711\nStarted by: wet side\nUnit: C\n\nTime;Channel\n" + lines(ISO, sep=";"),
    "spaces between": "date       hour   celsius\n" + lines("%Y-%m-%d  %H:%M:%S", sep="   "),
    "old line ends": ("time,temp C\n" + lines("%Y-%m-%d %H:%M")).replace("\n", "\r"),
    "windows line ends": ("time,temp C\n" + lines("%Y-%m-%d %H:%M")).replace("\n", "\r\n"),
    "no last line end": ("time,temp C\n" + lines("%Y-%m-%d %H:%M")).rstrip("\n"),
    "narrow space before pm": ("time,temp C\n" + lines("%m/%d/%Y, %I:%M:%S %p")).replace(" PM", "\u202fPM"),
    "weekday": "time,temp C\n" + lines("%a %d %b %Y %H:%M"),
}  # fmt: skip


@pytest.mark.parametrize("name", LAYOUTS)
def test_every_layout_gives_the_same_readings(tmp_path: Path, at: Hands, name: str) -> None:
    at("2025-01-04T18:00-06:00")
    rows, problems = read(tmp_path, LAYOUTS[name])
    assert rows.at_utc_s.tolist() == [START + i * STEP_S for i in range(8)]
    assert rows.value == pytest.approx([20 + i / 4 for i in range(8)], abs=0.003)
    assert (rows.quantity, rows.questions, problems) == ("mass_c", (), [])
    assert rows.at_utc_s.dtype == np.int64
    assert rows.value.dtype == np.float64


@pytest.mark.parametrize("encoding", ["utf-8-sig", "utf-16", "utf-16-le", "utf-16-be", "cp1252"])
def test_every_encoding(tmp_path: Path, encoding: str) -> None:
    rows, problems = read(tmp_path, LAYOUTS["fahrenheit in the header"].encode(encoding))
    assert rows.value == pytest.approx([20 + i / 4 for i in range(8)], abs=0.003)
    assert (rows.columns, problems) == (("time", "Temp (°F)"), [])


def test_a_zone_in_the_header_counts_before_the_farms(tmp_path: Path) -> None:
    rows, _ = read(tmp_path, '"Date Time, GMT+02:00","Temp, °C"\n' + lines(ISO))
    assert rows.at_utc_s[0] == START - 8 * 3600
    rows, _ = read(tmp_path, "when (UTC),celsius\n" + lines(ISO))
    assert rows.at_utc_s[0] == START - 6 * 3600


def test_ph_and_humidity_by_name(tmp_path: Path) -> None:
    text = "time,temp C,pH,RH %\n" + lines(ISO, "{:.2f},4.65,62.5")
    ph, _ = read(tmp_path, text, "ph")
    assert (ph.quantity, set(ph.value.tolist())) == ("ph", {4.65})
    rh, _ = read(tmp_path, text, "store_rh_frac")
    assert set(rh.value.tolist()) == {0.625}
    with pytest.raises(NotPossible, match=r"No column of .+ holds pH"):
        read(tmp_path, "time,temp C\n" + lines(ISO), "ph")


def test_frost_on_the_yard_with_a_printed_minus(tmp_path: Path) -> None:
    rows, _ = read(tmp_path, "time;air °C\n2025-01-03 05:00;\u22121,5\n2025-01-03 05:15;-0,5\n", "air_c")
    assert (rows.value.tolist(), rows.questions) == ([-1.5, -0.5], ())


def test_two_columns_that_could_be_meant_are_asked(tmp_path: Path, at: Hands) -> None:
    text = "time,T1,T2\n" + lines(ISO, "{:.2f},25.5")
    rows, _ = read(tmp_path, text)
    assert [answer.value for answer in rows.questions[0].answers] == ["1", "2"]
    assert str(rows.questions[0].answers[1].text) == "T2, at first 25.5"
    rows, _ = read(tmp_path, text, answers={"column": "2"})
    assert rows.questions == ()
    assert set(rows.value.tolist()) == {25.5}


def test_a_layout_is_found_once_and_remembered(tmp_path: Path, at: Hands) -> None:
    path = tmp_path / "logger.csv"
    path.write_text("time,temp C\n" + lines("%d/%m/%Y %H:%M"))
    found = look_at(path)
    assert (found.columns, found.rows[0]) == (("time", "temp C"), ("03/01/2025 17:00", "20.00"))
    rows, _ = read_logger_file(path, FARM)
    again, _ = read_logger_file(path, FARM, layout=rows.layout)
    assert (rows.layout.day_order, again.at_utc_s.tolist()) == ("dmy", rows.at_utc_s.tolist())
    path.write_text("time;temp C\n" + lines("%d/%m/%Y %H:%M", sep=";"))
    with pytest.raises(NotPossible, match="laid out otherwise"):
        read_logger_file(path, FARM, layout=rows.layout)


class TestDayOrMonth:
    def test_told_by_a_thirteenth(self, tmp_path: Path) -> None:
        rows, _ = read(tmp_path, "t,temp C\n12/01/2025 17:00,20\n13/01/2025 17:00,21\n")
        assert FARM.local(int(rows.at_utc_s[0])).isoformat() == "2025-01-12T17:00:00-06:00"
        rows, _ = read(tmp_path, "t,temp C\n01/12/2025 17:00,20\n01/13/2025 17:00,21\n")
        assert FARM.local(int(rows.at_utc_s[0])).isoformat() == "2025-01-12T17:00:00-06:00"
        assert rows.questions == ()

    def test_told_by_readings_that_follow_each_other(self, tmp_path: Path, at: Hands) -> None:
        at("2026-01-01T12:00Z")  # both days have long gone by
        rows, _ = read(tmp_path, "t,temp C\n03/01/2025 17:00,20\n04/01/2025 17:00,21\n05/01/2025 17:00,21\n")
        assert (rows.layout.day_order, rows.questions) == ("dmy", ())
        rows, _ = read(tmp_path, "t,temp C\n01/03/2025 17:00,20\n01/04/2025 17:00,21\n01/05/2025 17:00,21\n")
        assert (rows.layout.day_order, rows.questions) == ("mdy", ())

    def test_told_by_today(self, tmp_path: Path, at: Hands) -> None:
        at("2025-01-04T18:00-06:00")  # 1 March has not been yet
        rows, _ = read(tmp_path, "t,temp C\n03/01/2025 17:00,20\n03/01/2025 17:15,21\n")
        assert (rows.layout.day_order, rows.questions) == ("dmy", ())

    def test_asked_where_nothing_tells(self, tmp_path: Path, at: Hands) -> None:
        at("2025-06-01T12:00Z")
        text = "t,temp C\n03/01/2025 17:00,20\n03/01/2025 17:15,21\n"
        rows, _ = read(tmp_path, text)
        question = rows.questions[0]
        assert (question.key, str(question.text)) == ("day order", "Which day does this logger mean by 3/1/2025?")
        assert [str(answer.text) for answer in question.answers] == ["3 January 2025", "1 March 2025"]
        rows, _ = read(tmp_path, text, answers={"day order": "mdy"})
        assert (FARM.local(int(rows.at_utc_s[0])).month, rows.questions) == (3, ())

    def test_not_asked_where_both_are_the_same_day(self, tmp_path: Path, at: Hands) -> None:
        at("2025-06-01T12:00Z")
        rows, _ = read(tmp_path, "t,temp C\n03/03/2025 17:00,20\n03/03/2025 17:15,21\n")
        assert rows.questions == ()

    def test_a_broken_cell_decides_nothing(self, tmp_path: Path, at: Hands) -> None:
        at("2026-01-01T12:00Z")
        good = "".join(f"{day:02}/01/2025 {hour:02}:00,20\n" for day in range(2, 12) for hour in range(24))
        rows, problems = read(tmp_path, "t,temp C\n" + good + "01/31/2025 10:00,20\n")
        assert (rows.layout.day_order, len(rows), kinds(problems)[0]) == ("dmy", 240, "date")
        assert problems[0].where == "242"


class TestFaults:
    def test_all_at_once_with_their_lines(self, tmp_path: Path, at: Hands) -> None:
        text = (
            "time,temp C\n"
            "2025-01-03 17:00,20.0\n"
            "2025-01-03 17:15,20.1\n"
            "2025-01-03 17:15,20.1\n"  # line 4: twice
            "2025-01-03 17:30,ERR\n"  # line 5
            "2025-13-03 17:45,20.3\n"  # line 6: month 13
            "2025-01-03 18:15,20.5\n"
            "2025-01-03 18:00,20.4\n"  # line 8: back
            "2025-01-03 18:30,\n"  # line 9: nothing
            "2025-01-03 18:45,999.9\n"  # line 10: broken wire
            "\n"
            "2025-01-03 19:00,20.8\n"
            "2025-01-03 19:00,20.9\n"  # line 13: another value
            "end of data\n"  # line 14
            "2025-01-03 19:15,21.0\n"
            "2025-01-05 19:15,22.0\n"  # two days on
        )
        rows, problems = read(tmp_path, text)
        assert [(p.where, p.kind) for p in problems if isinstance(p, Fault)] == [
            ("4", "repeated"), ("5", "number"), ("6", "date"), ("8", "order"), ("9", "blank"), ("10", "impossible"),
            ("13", "two values"), ("14", "date"), ("", "gap"), ("", "gap"), ("", "gap"),
        ]  # fmt: skip
        assert "Line 5: “ERR” is no number." in [str(p.text) for p in problems]
        assert "No reading for 48\u202fh, from 3 Jan 19:15 to 5 Jan 19:15." in [str(p.text) for p in problems]
        assert rows.value.tolist() == [20.0, 20.1, 20.4, 20.5, 20.8, 21.0, 22.0]
        assert (np.diff(rows.at_utc_s) > 0).all()
        assert rows.repeated_n == 2

    def test_a_thousand_of_a_kind_are_counted(self, tmp_path: Path) -> None:
        rows, problems = read(tmp_path, "time,temp C\n" + lines(ISO) + "2025-01-03 23:00,ERR\n" * 1000)
        assert kinds(problems) == ["number"] * 10 + ["more"]
        assert str(problems[-1].text) == "990 more of the kind “no number”."
        assert len(rows) == 8

    def test_what_stands_above_the_first_reading_is_no_fault(self, tmp_path: Path) -> None:
        _, problems = read(tmp_path, "Site: wet side, 2024\nbattery,good\n" * 300 + "time,temp C\n" + lines(ISO))
        assert problems == []

    def test_a_comma_for_columns_and_decimals_is_refused(self, tmp_path: Path) -> None:
        with pytest.raises(NotPossible, match="parts both the columns and the decimals"):
            read(tmp_path, "time,temp C\n" + lines(ISO, "{:.1f}").replace(".", ","))

    def test_a_workbook_is_named(self, tmp_path: Path) -> None:
        with pytest.raises(NotPossible, match="is a workbook"):
            read(tmp_path, b"PK\x03\x04 and so on")

    def test_no_file_no_table_no_reading(self, tmp_path: Path) -> None:
        with pytest.raises(FileTrouble, match="cannot be read"):
            read_logger_file(tmp_path / "none.csv", FARM)
        with pytest.raises(FileTrouble, match="cannot be read"):
            read_logger_file(tmp_path, FARM)
        with pytest.raises(NotPossible, match="is empty"):
            read(tmp_path, "\n\n  \n")
        with pytest.raises(NotPossible, match=r"No line of .+ holds both"):
            read(tmp_path, "Dear reader,\nthis is a letter of 3 January 2025.\n")


class TestUnlikely:
    def test_a_silence_of_54_hours(self, tmp_path: Path) -> None:
        """Situation: the battery died in a sealed lot, and nobody looked for two days."""
        at_s = [*range(0, 36 * 3600, 900), *range(90 * 3600, 100 * 3600, 900)]
        text = "".join(f"{FARM.local(START + s):%Y-%m-%d %H:%M},{20 + i % 7 / 10}\n" for i, s in enumerate(at_s))
        rows, problems = read(tmp_path, "t,temp C\n" + text)
        (gap,) = problems
        assert isinstance(gap, Fault)
        assert (gap.kind, gap.until_utc_s - gap.from_utc_s) == ("gap", 54 * 3600 + 900)  # type: ignore[operator]
        assert rows.usual_step_s == 900

    def test_an_interval_set_anew_is_no_silence(self, tmp_path: Path) -> None:
        at_s = [*range(0, 7200, 60), *range(7200, 7200 + 40 * 900, 900)]
        text = "".join(f"{FARM.local(START + s):%Y-%m-%d %H:%M},{20 + i % 7 / 10}\n" for i, s in enumerate(at_s))
        _, problems = read(tmp_path, "t,temp C\n" + text)
        assert problems == []

    def test_a_flat_tail_is_asked_and_cut(self, tmp_path: Path) -> None:
        flat = "".join(f"2025-01-03 {19 + i // 4}:{i % 4 * 15:02},23.4\n" for i in range(13))
        text = "t,temp C\n" + lines(ISO) + flat
        rows, problems = read(tmp_path, text)
        assert kinds(problems) == ["stopped"]
        assert str(rows.questions[0].text) == (
            "The last 3.0\u202fh stand at 23.4\u202f°C to the last digit, from 3 Jan 19:00. Did the logger stop?"
        )
        assert len(rows) == 21
        rows, _ = read(tmp_path, text, answers={"stopped": "cut"})
        assert (len(rows), rows.value[-1], rows.questions) == (9, 23.4, ())
        rows, _ = read(tmp_path, text, answers={"stopped": "keep"})
        assert (len(rows), rows.questions) == (21, ())
        rows, problems = read(tmp_path, text.rsplit("\n", 2)[0])  # a quarter of an hour less
        assert (rows.questions, problems) == ((), [])

    def test_values_out_of_range_are_asked(self, tmp_path: Path) -> None:
        text = "t,temp C\n2025-01-03 16:45,85.0\n" + lines(ISO)
        rows, problems = read(tmp_path, text)
        assert str(rows.questions[0].text) == (
            "Outside 5.0\u202f°C to 45.0\u202f°C: 1 of the readings, from 85.0\u202f°C to 85.0\u202f°C. Are they true?"
        )
        assert (len(rows), problems) == (9, [])
        rows, _ = read(tmp_path, text, answers={"range": "drop"})
        assert (len(rows), rows.questions) == (8, ())
        rows, _ = read(tmp_path, text, answers={"range": "keep"})
        assert (len(rows), rows.questions) == (9, ())

    def test_bare_numbers_that_can_only_be_fahrenheit(self, tmp_path: Path) -> None:
        text = "t,temp\n" + hot()
        rows, _ = read(tmp_path, text)
        assert [q.key for q in rows.questions] == ["unit"]
        assert rows.value == pytest.approx([20 + i / 4 for i in range(8)], abs=0.003)
        rows, _ = read(tmp_path, text, answers={"unit": "F"})
        assert (rows.layout.unit, rows.questions) == ("F", ())
        rows, _ = read(tmp_path, text, answers={"unit": "C"})
        assert [q.key for q in rows.questions] == ["range"]
        assert rows.value[0] == 68.0

    def test_a_logger_in_utc_lines_up_after_one_answer(self, tmp_path: Path) -> None:
        """Situation: logger L2 runs in UTC, so that its file looks six hours off."""
        utc = "".join(f"2025-01-03 23:{m:02},20.{m}\n" for m in (0, 15, 30, 45))
        rows, _ = read(tmp_path, "t,temp C\n" + utc, filled_utc_s=START)
        (question,) = rows.questions
        assert str(question.text) == (
            "The first reading says 3 Jan 23:00, but it was filled 3 Jan 17:00. Is the logger's clock in UTC?"
        )
        answers = {"clock": question.answers[0].value}
        rows, _ = read(tmp_path, "t,temp C\n" + utc, filled_utc_s=START, answers=answers)
        assert (rows.at_utc_s[0], rows.clock_shift_s, rows.questions) == (START, -6 * 3600, ())
        again, _ = read(tmp_path, "t,temp C\n" + utc, filled_utc_s=START, clock_shift_s=rows.clock_shift_s)
        assert (again.at_utc_s.tolist(), again.questions) == (rows.at_utc_s.tolist(), ())


def test_stopping_and_progress(tmp_path: Path) -> None:
    path = tmp_path / "logger.csv"
    path.write_text("t,temp C\n" + "2025-01-03 17:00:00,20.0\n" * 50_000)
    shares: list[float] = []
    read_logger_file(path, FARM, on_progress=shares.append)
    assert shares == sorted(shares)
    assert len(shares) >= 3
    assert shares[-1] == 1.0
    with pytest.raises(NotPossible, match="was stopped"):
        read_logger_file(path, FARM, stop=lambda: True)
