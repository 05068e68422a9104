"""Boards in a shed: each lot on its shelves, a shelf high for a bed, a day long for a day, paling as it dries.

Adjoining shelves of one lot are one board with one outline. What lies ahead has soft ends: dots until the
earliest, hatching to the latest, a bar at the likely day. A day without a reading is hatched, never bridged.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta

from PySide6.QtCore import QRectF

from farmdesk.desk.theme import SEMIBOLD, contrast, look
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.season_scale import Days, Levels
from farmdesk.desk.widgets.yard import short
from farmdesk.text import N_, Day, Fact, Num, Text, Words
from farmdesk.text import Days as DayRange
from farmdesk.work.portions import place_list
from farmdesk.work.season_story import Board

LEAST_CONTRAST = 4.5  # of letters on a ground (WCAG 2.2, 1.4.3)
ONE_DAY = timedelta(days=1)


@dataclass(frozen=True)
class Shelf:
    """One board on its shelf: what is known of it, and what lies ahead [px].

    A plan is clear from where nothing that lies there already covers it.
    """

    board: Board
    top: float
    left: float
    known_end: float
    end: float
    clear: float = 0.0


@dataclass(frozen=True)
class Stack:
    """Adjoining shelves of one lot, joined; from the upper to the lower. `chief` is the lot's largest."""

    shelves: tuple[Shelf, ...]
    chief: bool = True

    @property
    def first(self) -> Board:
        return self.shelves[0].board

    @property
    def places(self) -> list[str]:
        return [shelf.board.place for shelf in self.shelves if shelf.board.place]


def known_until(board: Board, today: date) -> date:
    """The day on which what is known of a board ends: the day it left, or tomorrow."""
    if board.planned:
        return board.first_day
    return board.last_day if board.last_day is not None else today + ONE_DAY


def ahead_of(board: Board, days: Days) -> tuple[date, date, date | None] | None:
    """Earliest, likely and latest day, none before tomorrow; None where the board has ended."""
    if board.ahead is None or board.last_day is not None:
        return None
    tomorrow = max(days.today + ONE_DAY, board.first_day)
    early, likely, late = board.ahead
    return max(early, tomorrow), max(likely, tomorrow), None if late is None else max(late, tomorrow)


def shelf_of(board: Board, days: Days, levels: Levels) -> Shelf:
    """Where a board lies on the sheet."""
    known_end = days.x(known_until(board, days.today))
    ahead = ahead_of(board, days)
    end = known_end if ahead is None else days.end if ahead[2] is None else days.x(ahead[2] + ONE_DAY)
    return Shelf(board, levels.top_of(board), days.x(board.first_day), known_end, max(end, known_end), known_end)


def stacks(boards: Sequence[Board], days: Days, levels: Levels) -> list[Stack]:
    """Boards joined where the same lot lies on neighbouring shelves at the same time."""
    found: list[list[Shelf]] = []
    laid = [shelf_of(board, days, levels) for board in boards]
    real: dict[float, list[Shelf]] = {}
    for shelf in laid:
        if not shelf.board.planned:
            real.setdefault(shelf.top, []).append(shelf)
    for shelf in sorted((_cleared(s, real.get(s.top, ())) for s in laid), key=lambda s: (s.top, s.left)):
        for stack in found:
            if any(_touch(other, shelf, levels.shelf) for other in stack):
                stack.append(shelf)
                break
        else:
            found.append([shelf])
    most: dict[tuple[str, bool], list[Shelf]] = {}
    for stack in found:
        key = (stack[0].board.lot, stack[0].board.planned)
        most[key] = max(most.get(key, stack), stack, key=len)
    joined = (Stack(tuple(s), most[s[0].board.lot, s[0].board.planned] is s) for s in found)
    return sorted(joined, key=lambda s: (s.first.first_day, s.shelves[0].top))


def _cleared(shelf: Shelf, real: Sequence[Shelf]) -> Shelf:
    if not shelf.board.planned:
        return shelf
    over = [s.end for s in real if s.left < shelf.end and s.end > shelf.left]
    return replace(shelf, clear=max([shelf.clear, *over]))


def _touch(a: Shelf, b: Shelf, high: float) -> bool:
    same = a.board.lot == b.board.lot and a.board.planned == b.board.planned
    return same and b.top == a.top + high and a.left < b.end and b.left < a.end


def told(stack: Stack, days: Days) -> Text:
    """The board in one sentence: lot, beds, since when, how wet on which day, when it may be done."""
    board = stack.first
    codes = place_list(stack.places)
    beds = N_("places", "bed {bed}", bed=codes) if len(stack.places) == 1 else N_("places", "beds {beds}", beds=codes)
    facts: dict[str, Fact] = {"lot": board.lot, "beds": beds, "day": Day(board.first_day)}
    if board.planned:
        line = N_("season", "{lot} planned for {beds} from {day}", **facts)
    elif board.last_day is not None:
        lasts = [s.board.last_day for s in stack.shelves if s.board.last_day is not None]
        line = N_("season", "{lot} on {beds}, {day} to {last}", last=Day(max(lasts)), **facts)
    else:
        line = N_("season", "{lot} on {beds} since {day}", **facts)
    wet = [(row.day, row.moisture_wb_frac) for row in board.days if row.moisture_wb_frac is not None]
    if wet:
        pct = Num(wet[-1][1] * 100, "%", 1)
        line = N_("season", "{line}, {pct} on {day}", line=line, pct=pct, day=Day(wet[-1][0]))
    ahead = ahead_of(board, days)
    if ahead is None:
        return N_("season", "{line}.", line=line)
    early, likely, late = ahead
    if late is None:
        return N_("season", "{line}; done not before {early}, likely {likely}.",
                  line=line, early=Day(early), likely=Day(likely))  # fmt: skip
    return N_("season", "{line}; done {range}, likely {likely}.",
              line=line, range=DayRange(early, late), likely=Day(likely))  # fmt: skip


def range_words(board: Board, days: Days) -> Text | None:
    """`27 Jan–1 Feb`; `from 27 Jan` while it is open."""
    ahead = ahead_of(board, days)
    if ahead is None:
        return None
    return N_("season", "from {day}", day=Day(ahead[0])) if ahead[2] is None else N_(
        "season", "{days}", days=DayRange(ahead[0], ahead[2])
    )  # fmt: skip


# painting


def paint_stack(ink: Ink, stack: Stack, days: Days, high: float, seen: QRectF, words: Words) -> None:
    """Draw a joined board; its words stay in the part that is seen."""
    for shelf in stack.shelves:
        _paint_known(ink, shelf, days, high)
        _paint_ahead(ink, shelf, days, high)
    _outline(ink, [(s.top, s.left, s.known_end) for s in stack.shelves if not s.board.planned], high, "ink")
    ahead = [(s.top, s.known_end, s.end) for s in stack.shelves if s.end > s.known_end]
    _outline(ink, ahead, high, "ink2", dashed=True, closed=False)
    for shelf in stack.shelves:
        if shelf.board.planned:
            ink.upright(shelf.left, shelf.top, shelf.top + high, 1.4, "ink2")
    _write(ink, stack, days, high, seen, words)


def _paint_known(ink: Ink, shelf: Shelf, days: Days, high: float) -> None:
    x = shelf.left
    for row in shelf.board.days:
        x = days.x(row.day)
        ink.fill(x, shelf.top, ink.snap(x + days.day_px) - ink.snap(x), high, look().water(row.moisture_wb_frac))
        if row.moisture_wb_frac is None:
            _hatch(ink, x, x + days.day_px, shelf.top, high, "estimated", "rule")


def _paint_ahead(ink: Ink, shelf: Shelf, days: Days, high: float) -> None:
    ahead = ahead_of(shelf.board, days)
    if ahead is None:
        return
    early, likely, late = ahead
    left, soft = shelf.known_end, days.x(early)
    ink.fill(left, shelf.top, shelf.end - left, high, "paper")
    if soft > left:
        _hatch(ink, left, soft, shelf.top, high, "expected", "ink2")
    _hatch(ink, soft, shelf.end, shelf.top, high, "estimated", "ink")
    if late is not None:
        ink.upright(shelf.end, shelf.top, shelf.top + high, 1, "ink")
    ink.upright(soft, shelf.top, shelf.top + high, 1, "rule")
    middle = min(days.x(likely) + days.day_px / 2, shelf.end)
    ink.fill(ink.snap(middle) - 2, shelf.top, 5, high, "paper")
    ink.upright(middle, shelf.top, shelf.top + high, 2.4, "ink")


def _hatch(ink: Ink, left: float, right: float, top: float, high: float, kind: str, color: str) -> None:
    """A pattern that runs through from shelf to shelf."""
    ink.painter.setBrushOrigin(0, 0)
    x = ink.snap(left)
    ink.painter.fillRect(QRectF(x, top, ink.snap(right) - x, high), look().pattern(kind, look()[color], ink.ratio))


def _outline(
    ink: Ink, parts: Sequence[tuple[float, float, float]], high: float, color: str, *, dashed: bool = False,
    closed: bool = True,
) -> None:  # fmt: skip
    """The outer edge of joined rectangles (top, left, right): level edges only where no neighbour lies."""
    for top, left, right in parts:
        if right <= left:
            continue
        for edge, other in ((top, top - high), (top + high, top + high)):
            for a, b in _without(left, right, [(p[1], p[2]) for p in parts if p[0] == other]):
                ink.level(a, b + (0 if dashed else 1), edge, 1, color, dashed=dashed)
        if closed or not dashed:
            ink.upright(left, top, top + high, 1.4, color, dashed=dashed)
        if closed:
            ink.upright(right, top, top + high, 1.4, color, dashed=dashed)


def _without(left: float, right: float, taken: Sequence[tuple[float, float]]) -> list[tuple[float, float]]:
    """What is left of a stretch when others are taken out of it."""
    pieces = [(left, right)]
    for a, b in taken:
        cut = []
        for x, y in pieces:
            if b <= x or a >= y:
                cut.append((x, y))
                continue
            cut += [(x, a)] * (a > x) + [(b, y)] * (b < y)
        pieces = cut
    return pieces


def _write(ink: Ink, stack: Stack, days: Days, high: float, seen: QRectF, words: Words) -> None:
    """The code on what is known, the range on what lies ahead, each where there is room."""
    size = 14 if high * len(stack.shelves) > look().px(13) else 13
    board, code = stack.first, short(stack.first.lot)
    known = _longest([s for s in stack.shelves if s.left == min(x.left for x in stack.shelves)], high)
    written = False
    if not board.planned:
        left = max(known[0].left, seen.left()) + 5
        wide = ink.width(code, size, SEMIBOLD)
        if left + wide <= min(s.known_end for s in known) - 1:
            write_over(ink, left, _base(known, high, size), code, size, known[0], days)
            written = True
    text = range_words(board, days)
    open_ = [s for s in stack.shelves if s.end > s.known_end]
    if text is None or not open_:
        return
    said = words.say(text)
    tries = [said] if written else [f"{code}  {said}", code]
    if board.planned:
        tries = [words.say(N_("season", "{lot} planned, {days}", lot=code, days=text)), code][not stack.chief :]
    start, end = (
        max(*(s.clear for s in open_), seen.left()) + look().px(7),
        min(min(s.end for s in open_), seen.right()),
    )
    for line in tries:
        wide = ink.width(line, size, SEMIBOLD)
        if start + wide <= end - 4:
            base = _base(_longest(open_, high), high, size)
            ink.fill(start - 3, base - look().px(size) * 0.74, wide + 6, look().px(size) * 0.78 + 1, "paper")
            ink.text(start, base, line, size, SEMIBOLD)
            return


def _base(shelves: Sequence[Shelf], high: float, size: float) -> float:
    """The baseline in the middle of some shelves."""
    return round((shelves[0].top + shelves[-1].top + high) / 2 + look().px(size) * 0.34)


def _longest(shelves: Sequence[Shelf], high: float) -> list[Shelf]:
    """The longest run of neighbours with the same end."""
    runs: list[list[Shelf]] = []
    for shelf in shelves:
        if runs and runs[-1][-1].top + high == shelf.top and runs[-1][-1].end == shelf.end:
            runs[-1].append(shelf)
        else:
            runs.append([shelf])
    return max(runs, key=len)


def write_over(
    ink: Ink, x: float, base: float, text: str, size: float, shelf: Shelf, days: Days, weight: int = SEMIBOLD
) -> None:
    """Write over days of different water: one colour where one is readable on all of them, else cut at the days."""
    right = x + ink.width(text, size, weight)
    own = look()
    under = [
        (days.x(row.day), own.water(row.moisture_wb_frac))
        for row in shelf.board.days
        if days.x(row.day) < right and days.x(row.day) + days.day_px > x
    ]
    for color in (own["paper"], own["ink"]):
        if all(contrast(color, ground) >= LEAST_CONTRAST for _, ground in under):
            ink.text(x, base, text, size, weight, color)
            return
    for left, ground in under:
        ink.painter.save()
        ink.painter.setClipRect(QRectF(left, base - 2 * size, days.day_px, 3 * size))
        ink.text(x, base, text, size, weight, own.text_on(ground))
        ink.painter.restore()
