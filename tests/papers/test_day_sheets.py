"""Papers for the crew: every vessel and bed, boxes a hand can fill, the caution where the work is done."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from io import BytesIO
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from farmdesk.ahead.range import ALARM, Worry
from farmdesk.errors import FileTrouble
from farmdesk.papers.crew import BOX_HIGH, BOX_WIDE
from farmdesk.papers.day_sheets import write_night_sheet, write_rain_list, write_yard_sheet
from farmdesk.papers.page import Page
from farmdesk.papers.place import Box
from farmdesk.text import ENGLISH, N_, Num, Words
from farmdesk.work.stories import Lying, TodayStory, VesselStory, YardPlace
from tests.desk.samples_today import TIME, calm, on, tank, today
from tests.papers.made import SPANISH, covered, outside, read_back, said, watched
from tests.papers.test_page import colors_of, fonts_of

Writer = Callable[..., None]
WRITERS: tuple[Writer, ...] = (write_night_sheet, write_yard_sheet, write_rain_list)
EACH = pytest.mark.parametrize("write", WRITERS)


def paper(write: Writer, story: TodayStory | None = None, words: Words = ENGLISH, **more: Any) -> bytes:
    """One of the papers as bytes."""
    target = BytesIO()
    write(story or today(), words, target, time=TIME, farm="Finca La Ladera", **more)
    return target.getvalue()


@EACH
@pytest.mark.parametrize("size", ["a4", "letter"])
@pytest.mark.parametrize("words", [ENGLISH, SPANISH], ids=["en", "es"])
@pytest.mark.parametrize("story", [today(), calm()], ids=["busy", "calm"])
def test_readable_and_inside_the_margins(write: Writer, size: str, words: Words, story: TodayStory) -> None:
    with watched() as drawn:
        paper(write, story, words, paper=size, practice=True)
    assert drawn.pages_n == 1
    assert min(letters[2] for letters in drawn.letters) >= 9.5
    assert not outside(drawn, 1.6)
    assert not covered(drawn)


@EACH
def test_black_and_white_the_same_bytes_fonts_inside(write: Writer) -> None:
    made = paper(write)
    assert made == paper(write)
    assert all(r == g == b for r, g, b in colors_of(made))
    assert all(fonts_of(made).values())


@EACH
def test_practice_and_the_hour_of_making_stand_on_it(write: Writer) -> None:
    (text,) = read_back(paper(write, practice=True))
    assert " practice " in text
    assert "made Tue 21 Jan 05:45" in text
    assert "1 of 1" in text
    assert " practice " not in read_back(paper(write))[0]


@EACH
def test_a_disk_that_refuses_is_told(write: Writer, tmp_path: Path) -> None:
    with pytest.raises(FileTrouble):
        write(today(), ENGLISH, tmp_path / "gone" / "x.pdf", time=TIME, farm="f")


def boxes_of(monkeypatch: pytest.MonkeyPatch, write: Writer, story: TodayStory) -> tuple[list[Box], list[float]]:
    """The boxes for a hand, and the heights of the lines that strike them."""
    found: list[Box] = []
    struck: list[float] = []
    frame, level = Page.frame, Page.level

    def kept(page: Page, box: Box, *rest: Any, **more: Any) -> None:
        if box.height > 18 and box.width > 40:
            found.append(box)
        frame(page, box, *rest, **more)

    def lined(page: Page, x0: float, x1: float, y: float, *rest: Any, **more: Any) -> None:
        if any(box.left < x0 and x1 < box.right and box.top < y < box.bottom for box in found):
            struck.append(y)
        level(page, x0, x1, y, *rest, **more)

    monkeypatch.setattr(Page, "frame", kept)
    monkeypatch.setattr(Page, "level", lined)
    paper(write, story)
    return found, struck


def test_yard_boxes_are_big_enough_and_wet_coffee_has_its_meter_boxes_struck(monkeypatch: pytest.MonkeyPatch) -> None:
    story = today()
    lying = [one for place in story.yard.places for one in place.lying]
    boxes, struck = boxes_of(monkeypatch, write_yard_sheet, story)
    assert len(boxes) == 6 * len(lying)
    assert all(box.width >= BOX_WIDE - 1e-6 and box.height >= BOX_HIGH - 1e-6 for box in boxes)
    wet = [one for one in lying if (one.moisture_wb_frac or 0) > 0.35]
    assert wet
    assert len(struck) == 3 * len(wet)


def test_night_boxes_are_big_enough(monkeypatch: pytest.MonkeyPatch) -> None:
    boxes, struck = boxes_of(monkeypatch, write_night_sheet, today())
    assert len([box for box in boxes if box.height < 30]) == 4 * 5
    assert not struck


def test_the_yard_sheet_walks_in_the_order_of_the_form_with_the_last_value_beside() -> None:
    (text,) = read_back(paper(write_yard_sheet))
    heads = re.search(r"bed lot last 1 2 3 tray g bean °C note", text)
    assert heads
    rows = re.findall(r"(?<=\s)(\d+) (25-\d\d[A-Z]) (\d+\.\d)", text[heads.end() :])
    assert [int(bed) for bed, _, _ in rows] == sorted(int(bed) for bed, _, _ in rows)
    assert len(rows) == 17
    assert ("9", "25-16W", "22.8") in rows
    assert "above 35 % the meter does not serve" in text
    assert "when RH is under 72 %" in text


def test_an_old_value_says_its_day_and_a_missing_one_is_no_nought() -> None:
    bed = YardPlace(
        "7", "bed", 0, 0, 1, 12, "roof", False,
        (Lying("25-12A", on(10, 8), 0.181, "measured", 1, 1, last_utc_s=on(17, 16)), Lying("25-13W", on(10, 8), None, "measured", 1, None)),
    )  # fmt: skip
    story = replace(today(), yard=replace(today().yard, places=(bed,)))
    (text,) = read_back(paper(write_yard_sheet, story))
    assert "18.1 17 Jan" in text
    assert "25-13W –" in text


def test_the_night_sheet_has_ranges_last_readings_and_the_caution_with_its_source() -> None:
    (text,) = read_back(paper(write_night_sheet))
    for words in (
        "night of Tuesday 21 January 2025", "T1", "25-18W", "since Mon 20 Jan 17:00", "ready 06:00–08:00",
        "last pH 4.11, mass 16.7 °C at 05:00", "20:30", "02:30", "Open outdoors and stand aside.",
        "The gas kills without a smell.", "NIOSH", "40,000 ppm", "Nothing here measures the air.",
    ):  # fmt: skip
        assert words in text
    assert "safe" not in text.replace("safety", "")
    assert "El gas mata sin olor." in read_back(paper(write_night_sheet, words=SPANISH))[0]


def test_what_to_act_on_stands_above_the_boxes_of_its_vessel() -> None:
    worry = Worry(ALARM, N_("ferment", "Cool it now: the mass is at {temp}.", temp=Num(36.0, "°C", 1)))
    hot = replace(tank(), ahead=replace(tank().ahead, worries=(worry,), look_utc_s=on(21, 22, 40)))  # type: ignore[type-var]
    (text,) = read_back(paper(write_night_sheet, replace(today(), vessels=(hot,))))
    assert "Cool it now: the mass is at 36.0" in text
    assert "look again by 22:40" in text
    assert text.index("Cool it now") < text.index("20:30")


def test_what_ends_before_morning_is_called_out() -> None:
    early = replace(tank(), ahead=replace(tank().ahead, earliest_utc_s=on(22, 1), latest_utc_s=on(22, 4)))  # type: ignore[type-var]
    late = replace(early, code="T2", ahead=replace(early.ahead, latest_utc_s=on(22, 9)))  # type: ignore[type-var]
    (text,) = read_back(paper(write_night_sheet, replace(today(), vessels=(early, late))))
    assert text.count("in the night:") == 1


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"ahead": None, "latest_utc_s": None}, "end not known"),
        ({"ahead": None}, "by the method at latest Tue 21 Jan 10:00"),
        ({"last_utc_s": None}, "not measured yet"),
    ],
)
def test_what_is_not_known_is_said(change: dict[str, Any], words: str) -> None:
    story = replace(today(), vessels=(replace(tank(), **change),))
    assert words in read_back(paper(write_night_sheet, story))[0]


def test_nothing_to_do_is_one_calm_sentence() -> None:
    empty = replace(calm(), yard=replace(calm().yard, places=()))
    assert "No vessel is at work tonight." in read_back(paper(write_night_sheet, empty))[0]
    assert "Nothing lies on the beds." in read_back(paper(write_yard_sheet, empty))[0]
    assert "No bed in the open holds coffee." in read_back(paper(write_rain_list, empty))[0]


def test_the_rain_list_keeps_its_order_and_adds_up_the_minutes() -> None:
    (text,) = read_back(paper(write_rain_list))
    order = ["9 10 11 15", "12 13", "18 20 21 22"]
    places = [text.index(beds) for beds in order]
    assert places == sorted(places)
    for minutes in (4, 9, 11, 17, 38):
        assert f"after {minutes} min" in text
    assert "lift it by two" in text
    assert "north" in text


VESSEL = st.builds(
    lambda n, method, known: replace(
        tank(), code=f"S{n:02d}", method=said(method), ahead=tank().ahead if known else None
    ),
    st.integers(1, 40), st.text("aeiñ W", max_size=60), st.booleans(),
)  # fmt: skip


@settings(max_examples=25)
@given(st.lists(VESSEL, max_size=14), st.sampled_from(["a4", "letter"]), st.sampled_from([ENGLISH, SPANISH]))
def test_many_vessels_turn_the_page_and_none_is_lost(vessels: list[VesselStory], size: str, words: Words) -> None:
    with watched() as drawn:
        pages = read_back(paper(write_night_sheet, replace(today(), vessels=tuple(vessels)), words, paper=size))
    for vessel in vessels:
        assert any(vessel.code in page for page in pages)
    assert not outside(drawn, 1.6)
    for n, page in enumerate(pages, start=1):
        assert re.search(rf"{n} (of|óf) {len(pages)}", page)


@settings(max_examples=25)
@given(st.integers(0, 70), st.sampled_from(["a4", "letter"]))
def test_many_beds_turn_the_page_and_none_is_lost(beds_n: int, size: str) -> None:
    beds = tuple(
        YardPlace(
            str(n), "bed", 2.0 * n, 0, 1, 12, "tarp", False, (Lying(f"25-{n:02d}W", on(1, 8), 0.3, "measured", 1, 1),)
        )
        for n in range(1, beds_n + 1)
    )
    first = (said("first"), tuple(bed.code for bed in beds), said("wetter than any morning air"))
    story = replace(today(), yard=replace(today().yard, places=beds), open_first=(first,) if beds else ())
    with watched() as drawn:
        pages = read_back(paper(write_yard_sheet, story, paper=size))
    assert not outside(drawn, 1.6)
    assert not (len(pages) == 1 and covered(drawn))
    for bed in beds:
        assert sum(page.count(f"25-{int(bed.code):02d}W") for page in pages) == 1
    assert all(f"{n} of {len(pages)}" in page for n, page in enumerate(pages, start=1))


@pytest.mark.parametrize("size", ["a4", "letter"])
def test_a_rule_laid_on_the_printed_plan_gives_the_yard_to_half_a_metre(
    monkeypatch: pytest.MonkeyPatch, size: str
) -> None:
    """Every bed, and every way from one bed to another, measured by the line of metres printed beside the plan."""
    frames: list[Box] = []
    courses: list[list[tuple[float, float]]] = []
    said: list[tuple[float, str]] = []
    frame, course, text = Page.frame, Page.course, Page.text
    monkeypatch.setattr(Page, "frame", lambda page, box, *a, **k: (frames.append(box), frame(page, box, *a, **k))[1])
    monkeypatch.setattr(
        Page, "course", lambda page, at, *a, **k: (courses.append(list(at)), course(page, at, *a, **k))[1]
    )
    monkeypatch.setattr(
        Page, "text", lambda page, x, y, t, *a, **k: (said.append((y, t)), text(page, x, y, t, *a, **k))[1]
    )
    story = today()
    paper(write_rain_list, story, paper=size)
    measure = courses[-1]
    metres = next(int(t.split()[0]) for y, t in reversed(said) if y == measure[1][1] and t.endswith("m"))
    metre_pt = (measure[2][0] - measure[1][0]) / metres
    beds = [place for place in story.yard.places if place.kind == "bed" or place.lying]
    plan = frames[-len(beds) - len([m for m in story.yard.marks if m.kind == "store"]) :][: len(beds)]
    assert len(beds) > 20
    for bed, drawn in zip(beds, plan, strict=True):
        assert drawn.width / metre_pt == pytest.approx(bed.width_m, abs=0.05)
        assert drawn.height / metre_pt == pytest.approx(bed.depth_m, abs=0.05)
        assert (drawn.left - plan[0].left) / metre_pt == pytest.approx(bed.x_m - beds[0].x_m, abs=0.5)
        assert (plan[0].bottom - drawn.bottom) / metre_pt == pytest.approx(bed.y_m - beds[0].y_m, abs=0.5)
