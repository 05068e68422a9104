"""The clerk's weigh-in sheet: codes down, half-days across, the columns' totals below; for a hand to fill."""

from __future__ import annotations

from farmdesk.clock import FarmTime
from farmdesk.papers.crew import BOX_HIGH, MM
from farmdesk.papers.letters import BOLD, DISPLAY, SEMIBOLD, fitted
from farmdesk.papers.page import Page, Target
from farmdesk.papers.place import Box
from farmdesk.text import N_, Day, Moment, Words
from farmdesk.work.weigh_grid import WeighSheet

CODE_PT, GAP_PT = 40.0, 10.0
SPARE_N = 4  # empty rows for codes that are not on the list
SACKS_N = 3  # boxes of one picker in a half-day


def write_weigh_sheet(
    sheet: WeighSheet, words: Words, target: Target, *, time: FarmTime, farm: str, practice: bool = False,
    paper: str = "a4",
) -> None:  # fmt: skip
    """Write the sheet of a lot, block and day: a row for each code, boxes for the sacks of both half-days.

    Raises FileTrouble when the disk refuses.
    """
    say = words.say
    title = say(N_("papers", "Weigh-in sheet"))
    page = Page(target, words, title=title, farm=farm, made=sheet.key.day, paper=paper, practice=practice)
    made = Moment(time.local(sheet.at_utc_s), weekday=True)
    foot = say(N_("papers", "{title}, {farm}, made {at}.", title=title, farm=farm, at=made))
    y = _head(page, sheet, title)
    floor = page.foot_top(foot) - 6
    _grid(page, sheet, y, floor)
    page.foot(foot)
    page.done()


def _head(page: Page, sheet: WeighSheet, title: str) -> float:
    """Title and day, then the lines that the clerk fills; the y below."""
    say, y = page.words.say, page.top
    size, broken = fitted(title, 27, page.width * 0.5, DISPLAY)
    x = page.text(page.left, y + 24, broken[0], size, DISPLAY)
    page.practice_word(x + 9, y + 24)
    day = say(Day(sheet.key.day, weekday=True, year=True, long=True))
    page.text(page.right, y + 11, day, 13, BOLD, align="right")
    _blank(page, page.right, y + 28, say(N_("papers", "done by")), 90)
    y += 36
    page.level(page.left, page.right, y, 1.5, "ink")
    y += 17
    x = page.text(page.left, y, f"{sheet.key.lot} {sheet.check}", 14, BOLD)
    block = say(N_("papers", "block {block} {variety}", block=sheet.key.block, variety=sheet.variety))
    page.text(x + 14, y, block, 12)
    _blank(page, page.right, y, say(N_("papers", "empty sack, kg")), 50)
    _blank(page, page.right - 160, y, say(N_("papers", "test weight")), 50)
    return y + 9


def _blank(page: Page, right: float, y: float, said: str, line_pt: float) -> None:
    page.level(right - line_pt, right, y + 1, 0.6, "ink")
    page.text(right - line_pt - 5, y, said, 11, align="right")


def _grid(page: Page, sheet: WeighSheet, y: float, floor: float) -> None:
    say = page.words.say
    halves = (N_("weigh_grid", "morning"), N_("weigh_grid", "afternoon"))
    each = (page.width - CODE_PT - GAP_PT) / 2 / (SACKS_N + 1)
    lefts = (page.left + CODE_PT, page.left + CODE_PT + each * (SACKS_N + 1) + GAP_PT)
    for left, half in zip(lefts, halves, strict=True):
        page.text(left, y + 11, say(half), 12, SEMIBOLD)
        page.text(left + each * SACKS_N + each / 2, y + 11, say(N_("papers", "sum")), 10, align="middle")
    page.text(page.left, y + 11, say(N_("papers", "code")), 10)
    y += 16
    page.level(page.left, page.right, y, 1.2, "ink")
    total = BOX_HIGH + 4
    rows = min(len(sheet.crew) + SPARE_N, int((floor - total - y) / BOX_HIGH))
    for n in range(rows):
        code = sheet.crew[n] if n < len(sheet.crew) else ""
        page.text(page.left, y + BOX_HIGH - 6, code, 13, BOLD)
        for left in lefts:
            for sack in range(SACKS_N + 1):
                x = left + sack * each
                page.frame(Box(x, y, x + each, y + BOX_HIGH), 0.9 if sack == SACKS_N else 0.5)
        y += BOX_HIGH
    y += 4
    page.text(page.left, y + BOX_HIGH - 6, say(N_("papers", "total")), 12, BOLD)
    for left in lefts:
        wide = each * (SACKS_N + 1)
        page.frame(Box(left + wide - 30 * MM, y, left + wide, y + BOX_HIGH), 1.5)
