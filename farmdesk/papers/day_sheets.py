"""Papers for the crew, in the crew's language: the night sheet, the yard sheet, the rain list.

Black and white. Boxes stand in the order of the form they are typed into, and are big enough for a hand
(22 by 7.5 mm); the last value stands beside its box. Where a meter would say something false its boxes
are struck beforehand.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import timedelta

from farmdesk.clock import FarmTime
from farmdesk.papers.blocks import paint_lines
from farmdesk.papers.crew import BOX_WIDE, STEP, TICK, CrewPaper, write
from farmdesk.papers.letters import (
    BOLD,
    LEADING,
    LEAST_PT,
    SANS,
    SEMIBOLD,
    SERIF_SEMIBOLD,
    fitted,
    lines,
    shortened,
    width,
)
from farmdesk.papers.page import Target
from farmdesk.papers.place import Box
from farmdesk.papers.yard import BAR_PT, paint_measure, paint_yard
from farmdesk.science.gas import CAUTION, CAUTION_SOURCE
from farmdesk.text import N_, Day, Fact, Listing, Moment, Num, Text, Words, kg
from farmdesk.work.stories import Lying, TodayStory, VesselStory

BODY, STRUCK_PT = 12.0, 14.0
HOUR_PT, HEADS_PT = 46.0, 11.0  # before the night's boxes, and above them
NIGHT_COLUMNS = (
    N_("papers", "hour"), N_("papers", "pH"), N_("papers", "mass °C"), N_("papers", "°Bx"), N_("papers", "note"),
)  # fmt: skip
METER_UP_TO_WB_FRAC = 0.35  # above it a grain meter stands outside its scale (common practice, no source)
FEW_N = 6  # more vessels than this are small sealed ones, walked every second round (common practice, no source)
NIGHT_CHECKS = ((20, 30), (23, 30), (2, 30), (4, 45))  # hours of the night round (common practice, no source)
READ_AT_H, MORNING_H = 16, 6
SQUARE_PT, YARD_LEAST_PT = TICK * 1.4, 190.0  # the rain list's tick boxes, and the least room for its drawing

TARP = N_("papers", "A wet tarp is heavy: lift it by two.")
TARP_SOURCE = N_("papers", "At most {load} alone and close to the body (NIOSH 94-110, 1994).", load=Num(23, "kg"))


# the night sheet


def write_night_sheet(
    story: TodayStory, words: Words, path_or_file: Target, *, time: FarmTime, farm: str, practice: bool = False,
    paper: str = "a4",
) -> None:  # fmt: skip
    """Write the night's round: every vessel at work, its likely end, and boxes for each check.

    `time` and `farm` are the farm's own; raises FileTrouble when the disk refuses.
    """
    write(_night, N_("papers", "Night sheet"), story, words, path_or_file, time, farm, practice, paper)


def _night(sheet: CrewPaper) -> None:
    story = sheet.story
    checks = _checks(story, sheet.time)
    sheet.head(N_("papers", "night of {day}", day=Day(story.day, weekday=True, year=True, long=True)))
    _caution(sheet)
    if not story.vessels:
        sheet.sentences(sheet.say(N_("papers", "No vessel is at work tonight.")), 13)
    for n, vessel in enumerate(story.vessels):
        head = _head_of(sheet, vessel)
        if n and sheet.y + 10 + head.height + HEADS_PT + STEP * len(checks) > sheet.floor:
            sheet.turn()
        elif n:
            sheet.rule()
        _vessel(sheet, vessel, head, checks)


def _checks(story: TodayStory, time: FarmTime) -> list[str]:
    """The hours of the round that are still to come; fewer where there are many vessels to walk."""
    start = time.instant(story.day)
    hours = [
        f"{h:02d}:{m:02d}" for h, m in NIGHT_CHECKS if start + (h + 24 * (h < 12)) * 3600 + m * 60 > story.at_utc_s
    ]
    every = 1 if len(story.vessels) <= FEW_N else 2
    return (hours or [f"{h:02d}:{m:02d}" for h, m in NIGHT_CHECKS])[::-1][::every][::-1]


def _cautions(sheet: CrewPaper) -> list[tuple[Text, float, str]]:
    """The rule about gas, what the vessels of now would make of their room, and the source."""
    gas = [(sheet.story.gas[1], BODY, BOLD)] if sheet.story.gas else []
    return [(CAUTION, 13.0, SERIF_SEMIBOLD), *gas, (CAUTION_SOURCE, LEAST_PT, SANS)]


def _caution_height(sheet: CrewPaper) -> float:
    room = sheet.width - 18
    return sum(len(lines(sheet.say(t), pt, room, font)) * pt * LEADING for t, pt, font in _cautions(sheet)) + 22


def _caution(sheet: CrewPaper) -> None:
    """The rule about gas, in a heavy frame, with its source."""
    high = _caution_height(sheet) - 8
    sheet.page.frame(Box(sheet.left + 1.5, sheet.y + 1.5, sheet.right - 1.5, sheet.y + high), 3.0)
    y = sheet.y + 7
    for text, size, font in _cautions(sheet):
        y = paint_lines(sheet.page, sheet.left + 9, y, lines(sheet.say(text), size, sheet.width - 18, font), size, font)
    sheet.y += high + 8


@dataclass(frozen=True)
class _Head:
    """What stands above a vessel's boxes: on the left lot and last reading, on the right its end."""

    left: tuple[tuple[str, float, str], ...]  # line, size, token of colour
    right: tuple[str, ...]
    code_pt: float

    @property
    def height(self) -> float:
        return 6 + 14.5 * max(len(self.left), len(self.right), 1)


def _head_of(sheet: CrewPaper, vessel: VesselStory) -> _Head:
    end = sheet.say(_end_words(sheet, vessel))
    if _ends_by_night(sheet, vessel):
        end = sheet.say(N_("papers", "in the night: {end}", end=end))
    weight = kg(vessel.grams)
    name = N_("papers", "{lot}, {method}, {weight}", lot=vessel.lot, method=vessel.method, weight=weight)
    since = Moment(sheet.time.local(vessel.filled_utc_s), weekday=True)
    said = N_("papers", "since {since}; {last}", since=since, last=_last_words(sheet, vessel))
    if vessel.look_utc_s is not None:
        by = Moment(sheet.time.local(vessel.look_utc_s), clock=True)
        said = N_("papers", "{said}; look again by {time}", said=said, time=by)
    code_pt = width(vessel.code, 18, BOLD) + 9
    room = sheet.width * 0.58 - code_pt
    left = [(line, BODY, "ink") for line in lines(sheet.say(name), BODY, room)]
    left += [(line, 11.0, "ink2") for line in lines(sheet.say(said), 11, room)]
    for worry in vessel.worries[:2]:
        left += [(line, BODY, "ink") for line in lines(sheet.say(worry.text), BODY, room)]
    return _Head(tuple(left), tuple(lines(end, BODY, sheet.width * 0.4, BOLD)), code_pt)


def _vessel(sheet: CrewPaper, vessel: VesselStory, head: _Head, checks: Sequence[str]) -> None:
    page, top = sheet.page, sheet.y
    page.text(sheet.left, top + 15, vessel.code, 18, BOLD)
    if _ends_by_night(sheet, vessel):
        page.fill(Box(sheet.left, top + 20, sheet.left + head.code_pt - 9, top + 23), "ink")
    for n, (line, size, color) in enumerate(head.left):
        page.text(sheet.left + head.code_pt, top + 12 + n * 14.5, line, size, color=color)
    for n, line in enumerate(head.right):
        page.text(sheet.right, top + 12 + n * 14.5, line, BODY, BOLD, align="right")
    sheet.y = top + head.height
    wides = [BOX_WIDE] * 4
    at = sheet.left + HOUR_PT
    wides.append(sheet.right - at - sum(wides) - 3 * len(wides))
    for name, wide in zip(NIGHT_COLUMNS, wides, strict=True):
        page.text(at + 2, sheet.y + 8, shortened(sheet.say(name), LEAST_PT, wide), LEAST_PT, color="ink2")
        at += wide + 3
    sheet.y += HEADS_PT
    for check in checks:
        page.text(sheet.left, sheet.y + 15, check, 13, SEMIBOLD)
        sheet.boxes(sheet.left + HOUR_PT, sheet.y, wides)
        sheet.y += STEP
    sheet.y += 3


def _ends_by_night(sheet: CrewPaper, vessel: VesselStory) -> bool:
    """Whether the latest end, or else the method's latest hour, falls before six in the morning."""
    latest = vessel.ahead.latest_utc_s if vessel.ahead and vessel.ahead.latest_utc_s else vessel.latest_utc_s
    morning = sheet.time.instant(sheet.story.day + timedelta(days=1), MORNING_H)
    return latest is not None and latest < morning


def _end_words(sheet: CrewPaper, vessel: VesselStory) -> Text:
    """The range of its end, or the latest hour of its method; never one hour alone."""
    ahead, time = vessel.ahead, sheet.time
    if ahead is not None and ahead.earliest_utc_s is not None:
        first = time.local(ahead.earliest_utc_s)
        same = time.farm_day(ahead.earliest_utc_s) == sheet.story.day
        a: Fact = Moment(first, weekday=not same, clock=same)
        if ahead.latest_utc_s is None:
            return N_("papers", "ready {a} at the earliest, end open", a=a)
        last = time.local(ahead.latest_utc_s)
        b = Moment(last, clock=last - first < timedelta(hours=24), weekday=True)
        return N_("papers", "ready {a}–{b}", a=a, b=b)
    if vessel.latest_utc_s is not None:
        latest = Moment(time.local(vessel.latest_utc_s), weekday=True)
        return N_("papers", "end not known; by the method at latest {at}", at=latest)
    return N_("papers", "end not known")


def _last_words(sheet: CrewPaper, vessel: VesselStory) -> Text:
    if vessel.last_utc_s is None:
        return N_("papers", "not measured yet")
    parts: list[Fact] = []
    if vessel.last_ph is not None:
        parts.append(N_("papers", "pH {value}", value=Num(vessel.last_ph, "", 2)))
    if vessel.last_mass_c is not None:
        parts.append(N_("papers", "mass {value}", value=Num(vessel.last_mass_c, "°C", 1)))
    at = Moment(sheet.time.local(vessel.last_utc_s), clock=True)
    return N_("papers", "last {values} at {at}", values=Listing(tuple(parts)), at=at)


# the yard sheet


def write_yard_sheet(
    story: TodayStory, words: Words, path_or_file: Target, *, time: FarmTime, farm: str, practice: bool = False,
    paper: str = "a4",
) -> None:  # fmt: skip
    """Write the yard's day: beds in the order of opening to tick, and a row of boxes for each bed's reading.

    `time` and `farm` are the farm's own; raises FileTrouble when the disk refuses.
    """
    write(_yard, N_("papers", "Yard sheet"), story, words, path_or_file, time, farm, practice, paper)


def _yard(sheet: CrewPaper) -> None:
    sheet.head(Day(sheet.story.day, weekday=True, year=True, long=True))
    rows = [(place.code, lying) for place in sheet.story.yard.places for lying in place.lying]
    if not rows:
        sheet.sentences(sheet.say(N_("papers", "Nothing lies on the beds.")), 13)
        return
    _opening(sheet)
    sheet.rule()
    hour = f"{READ_AT_H:02d}:00"
    sheet.heading(N_("papers", "Readings, {hour}", hour=hour), N_("papers", "three depths; beans cooled in the shade"))
    _columns(sheet)
    for code, lying in rows:
        if sheet.y + STEP + STRUCK_PT > sheet.floor:
            _struck_words(sheet)
            sheet.turn()
            _columns(sheet)
        _reading(sheet, code, lying)
    _struck_words(sheet)


def _opening_rows(sheet: CrewPaper) -> list[tuple[str, list[list[str]], list[str]]]:
    """When, the beds in rows of boxes, and why."""
    found = []
    for when, beds, why in sheet.story.open_first:
        rows: list[list[str]] = [[]]
        x = 0.0
        for bed in beds:
            wide = TICK + 4 + width(bed, 13, BOLD) + 13
            if rows[-1] and x + wide > _opening_room(sheet):
                rows.append([])
                x = 0.0
            rows[-1].append(bed)
            x += wide
        found.append((sheet.say(when), rows, lines(sheet.say(why), LEAST_PT, sheet.width - 132)))
    return found


def _opening_room(sheet: CrewPaper) -> float:
    return sheet.width - 132 - 82


def _opening(sheet: CrewPaper) -> None:
    sheet.heading(N_("papers", "Open, in this order"))
    hour = sheet.say(N_("papers", "hour"))
    for when, rows, why in _opening_rows(sheet):
        size, said = fitted(when, BODY, 124, SEMIBOLD, most_n=2)
        high = max(len(rows) * 21 + len(why) * LEAST_PT * LEADING, len(said) * size * 1.25) + 6
        if sheet.y + high > sheet.floor:
            sheet.turn()
        after = sheet.y + high
        for n, line in enumerate(said):
            sheet.page.text(sheet.left, sheet.y + 12 + n * size * 1.25, line, size, SEMIBOLD)
        for n, beds in enumerate(rows):
            x = sheet.left + 132
            for bed in beds:
                x = sheet.tick(x, sheet.y, bed)
            if n == 0:
                sheet.blank(sheet.right, sheet.y + 12, hour, 44)
            sheet.y += 21
        paint_lines(sheet.page, sheet.left + 132, sheet.y - 2, why, LEAST_PT, SANS, "ink2")
        sheet.y = after


COLUMNS = (
    N_("papers", "bed"), N_("papers", "lot"), N_("papers", "last"), N_("papers", "1"), N_("papers", "2"),
    N_("papers", "3"), N_("papers", "tray g"), N_("papers", "bean °C"), N_("papers", "note"),
)  # fmt: skip


def _edges(sheet: CrewPaper) -> list[float]:
    """Where the columns begin: bed, lot, last value, then the boxes in the order of the form."""
    boxes = sheet.right - 6 * BOX_WIDE - 5 * 3
    return [sheet.left, sheet.left + 26, boxes - 5, *(boxes + i * (BOX_WIDE + 3) for i in range(6))]


def _columns(sheet: CrewPaper) -> None:
    for n, (head, x) in enumerate(zip(COLUMNS, _edges(sheet), strict=True)):
        align = "right" if n == 2 else "left"
        said = shortened(sheet.say(head), 10, (BOX_WIDE if n > 2 else 40) - 2)
        sheet.page.text(x + (2 if n > 2 else 0), sheet.y + 9, said, 10, color="ink2", align=align)
    sheet.y += 14


def _reading(sheet: CrewPaper, code: str, lying: Lying) -> None:
    page, edges, base = sheet.page, _edges(sheet), sheet.y + 15
    page.text(edges[0], base, code, 13, BOLD)
    page.text(edges[1], base, shortened(lying.lot, 11, edges[2] - edges[1] - 34), 11)
    known = lying.moisture_wb_frac
    said = "–" if known is None else sheet.words.number(known * 100, 1)
    old = lying.last_utc_s is not None and sheet.time.farm_day(lying.last_utc_s) < sheet.story.day - timedelta(days=1)
    if old and lying.last_utc_s is not None:  # an old value says its day
        page.text(edges[2], base - 5, said, 11, align="right")
        day = Day(sheet.time.farm_day(lying.last_utc_s))
        page.text(edges[2], base + 5.5, sheet.say(day), LEAST_PT, color="ink2", align="right")
    else:
        page.text(edges[2], base, said, 12, align="right")
    sheet.boxes(
        edges[3], sheet.y, [BOX_WIDE] * 6, (0, 1, 2) if known is not None and known > METER_UP_TO_WB_FRAC else ()
    )
    sheet.y += STEP


def _struck_words(sheet: CrewPaper) -> None:
    limit = Num(METER_UP_TO_WB_FRAC * 100, "%")
    said = sheet.say(N_("papers", "Struck: above {limit} the meter does not serve, only the tray.", limit=limit))
    size, broken = fitted(said, 10, sheet.width)
    sheet.y = paint_lines(sheet.page, sheet.left, sheet.y, broken, size, SANS, "ink2")


# the rain list


def write_rain_list(
    story: TodayStory, words: Words, path_or_file: Target, *, time: FarmTime, farm: str, practice: bool = False,
    paper: str = "a4",
) -> None:  # fmt: skip
    """Write the order of covering, to hang by the tarps: beds, minutes added up, and the yard to scale.

    `time` and `farm` are the farm's own; raises FileTrouble when the disk refuses.
    """
    write(_rain, N_("papers", "If rain comes"), story, words, path_or_file, time, farm, practice, paper)


def _rain(sheet: CrewPaper) -> None:
    story, page = sheet.story, sheet.page
    sheet.head(Day(story.day, weekday=True, year=True, long=True))
    if not story.rain_list:
        sheet.sentences(sheet.say(N_("papers", "No bed in the open holds coffee.")), 13)
        return
    minutes = Num(story.rain_minutes, "min")
    sheet.heading(N_("papers", "Cover in this order"), N_("papers", "all of it takes {minutes}", minutes=minutes))
    total = 0.0
    for beds, minutes_n in story.rain_list:
        total += minutes_n
        said = sheet.say(N_("papers", "after {minutes}", minutes=Num(total, "min")))
        broken = lines(" ".join(beds), 18, sheet.width - width(said, 13) - SQUARE_PT - 28, BOLD)
        if sheet.y + max(len(broken), 1) * 23 + 8 > sheet.floor:
            sheet.turn()
        page.frame(Box(sheet.left, sheet.y, sheet.left + SQUARE_PT, sheet.y + SQUARE_PT), 0.9)
        page.text(sheet.right, sheet.y + 16, said, 13, align="right")
        for n, line in enumerate(broken):
            page.text(sheet.left + SQUARE_PT + 12, sheet.y + 16 + n * 23, line, 18, BOLD)
        sheet.y += max(len(broken), 1) * 23 + 8
    if sheet.y + 64 > sheet.floor:
        sheet.turn()
    sheet.y += 4
    sheet.blank(sheet.right, sheet.y + 10, sheet.say(N_("papers", "covered at")), 74)
    sheet.sentences(sheet.say(TARP), 13, SERIF_SEMIBOLD, wide=sheet.width * 0.6)
    sheet.sentences(sheet.say(TARP_SOURCE), LEAST_PT, SANS, "ink2", wide=sheet.width * 0.6)
    sheet.y += 10
    room = Box(sheet.left, sheet.y + 7, sheet.right, min(sheet.floor, sheet.y + 340))
    if room.height < YARD_LEAST_PT:
        return
    sheet.rule()
    legend = sheet.say(N_("papers", "darker: more water, in %; dashed: free; north ↑"))
    size, broken = fitted(legend, 10, sheet.width - BAR_PT - 40)
    paint_lines(page, sheet.left, sheet.y, broken, size, SANS, "ink2")
    top = sheet.y + 4 + LEADING * size * len(broken)
    metre_pt = paint_yard(page, Box(room.left, top, room.right, room.bottom), story.yard, sheet.words)
    if metre_pt:
        paint_measure(page, sheet.right, sheet.y + size, metre_pt)
