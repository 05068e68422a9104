"""Sack tags: eight to a page, to be cut apart; a big letter for the block, and room to write who picked it.

A sack that took fruit of a second block says so on its tag, with the weight of each: so its shares can be typed.
"""

from __future__ import annotations

from farmdesk.clock import FarmTime
from farmdesk.papers.crew import MM
from farmdesk.papers.letters import BOLD, DISPLAY, fitted
from farmdesk.papers.page import Page, Target
from farmdesk.papers.place import Box
from farmdesk.text import N_, Day, Words
from farmdesk.work.portions import block_words
from farmdesk.work.weigh_grid import SheetKey, WeighSheet

COLUMNS, ROWS = 2, 4
LETTER_PT, TICK_PT, PAD_PT = 72.0, 5 * MM, 9.0


def write_sack_tags(
    sheet: WeighSheet, words: Words, target: Target, *, time: FarmTime, farm: str, practice: bool = False,
    paper: str = "a4",
) -> None:  # fmt: skip
    """Write a page of tags for a lot, block and day. Raises FileTrouble when the disk refuses."""
    say = words.say
    title = say(N_("papers", "Sack tags"))
    page = Page(target, words, title=title, farm=farm, made=sheet.key.day, paper=paper, practice=practice)
    day = Day(sheet.key.day, weekday=True)
    text = N_(
        "papers",
        "{title}, {farm}, {lot}, {day}; cut along the lines.",
        title=title,
        farm=farm,
        lot=sheet.key.lot,
        day=day,
    )
    foot = say(text)
    floor = page.foot_top(foot) - 6
    wide, high = page.width / COLUMNS, (floor - page.top) / ROWS
    for n in range(COLUMNS * ROWS):
        left, top = page.left + n % COLUMNS * wide, page.top + n // COLUMNS * high
        _tag(page, sheet.key, sheet.check, sheet.variety, Box(left, top, left + wide, top + high))
    page.foot(foot)
    page.done()


def _tag(page: Page, key: SheetKey, check: str, variety: str, box: Box) -> None:
    say = page.words.say
    page.frame(box, 0.5)
    left, right, top = box.left + PAD_PT, box.right - PAD_PT, box.top + PAD_PT
    size, (letter, *_) = fitted(key.block, LETTER_PT, 62, DISPLAY)
    page.text(left, top + 56, letter, size, DISPLAY)
    x = left + 74
    page.text(x, top + 14, f"{key.lot} {check}", 17, BOLD)
    block = say(N_("papers", "block {block} {variety}", block=block_words(key.block), variety=variety))
    size, (line, *_) = fitted(block, 12, right - x)
    page.text(x, top + 31, line, size)
    end = page.text(x, top + 48, say(Day(key.day, weekday=True, year=True)), 12)
    page.practice_word(end + 9, top + 48, 12)
    y = top + 80
    for half, said in (("am", N_("weigh_grid", "morning")), ("pm", N_("weigh_grid", "afternoon"))):
        tick = left if half == "am" else left + (right - left) / 2
        page.frame(Box(tick, y - TICK_PT + 2, tick + TICK_PT, y + 2), 1.0)
        page.text(tick + TICK_PT + 5, y, say(said), 12)
    lines = (N_("papers", "pickers"), N_("papers", "mixed: this block, kg"), N_("papers", "and block … , kg"))
    pitch = (box.bottom - PAD_PT - y) / len(lines)
    for n, words in enumerate(lines, start=1):
        base = y + n * pitch
        end = page.text(left, base, say(words), 11)
        page.level(end + 5, right, base + 1, 0.6, "ink")
