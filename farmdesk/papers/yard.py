"""The yard drawn to scale on paper, north up: beds by number, the grey of their water, the lots in brackets."""

from __future__ import annotations

from collections.abc import Callable
from itertools import groupby

from farmdesk.papers.letters import LEAST_PT, SEMIBOLD, width
from farmdesk.papers.page import Page
from farmdesk.papers.place import Box, apart
from farmdesk.text import N_, Words
from farmdesk.work.stories import YardPlace, YardStory

NUMBER_PT, ROOM_PT = 10.0, 33.0  # numbers, and the room for numbers and brackets above and below


BAR_PT = 90.0  # at most so long is the measure beside the plan


def paint_yard(page: Page, box: Box, story: YardStory, words: Words) -> float:
    """Paint the beds and what lies on them into a rectangle; free beds are dashed, more water is darker.

    Returns how long a metre of the yard is on the paper [pt]; 0 where there is nothing to paint.
    """
    beds = [place for place in story.places if place.kind == "bed" or place.lying]
    if not beds or story.width_m <= 0 or story.depth_m <= 0:
        return 0.0
    marks = [mark for mark in story.marks if mark.kind == "store"]
    low = min(place.y_m for place in beds)
    high = max(place.y_m + place.depth_m for place in beds)
    left = min(place.x_m for place in beds)
    right = max([*(p.x_m + p.width_m for p in beds), *(m.x_m + m.width_m for m in marks)])
    scale = min(box.width / (right - left), (box.height - 2 * ROOM_PT) / (high - low))
    top, edge = box.top + ROOM_PT, box.left

    def at(x_m: float, y_m: float) -> tuple[float, float]:
        return edge + (x_m - left) * scale, top + (high - y_m) * scale

    for place in beds:
        (x0, y1), (x1, y0) = at(place.x_m, place.y_m), at(place.x_m + place.width_m, place.y_m + place.depth_m)
        _bed(page, Box(x0, y0, x1, y1), place)
    for mark in marks:
        (x0, y1), (x1, y0) = at(mark.x_m, mark.y_m), at(mark.x_m + mark.width_m, mark.y_m + mark.depth_m)
        there = Box(x0, max(y0, box.top), x1, min(y1, box.bottom))
        if there.height > 4:
            page.frame(there, 1.0)
            said = words.say(N_("papers", "store"))
            if width(said, LEAST_PT) < there.width:
                page.text((x0 + x1) / 2, (there.top + there.bottom) / 2 + 3, said, LEAST_PT, align="middle")
    middle = (low + high) / 2
    for _, row in groupby(sorted(beds, key=lambda p: (p.y_m, p.x_m)), key=lambda p: p.y_m):
        places = list(row)
        upper = places[0].y_m + places[0].depth_m / 2 > middle
        foot = at(0, places[0].y_m + (places[0].depth_m if upper else 0))[1]
        _names(page, places, foot, -1 if upper else 1, lambda x_m: at(x_m, 0)[0], box)
    return scale


def paint_measure(page: Page, right: float, y: float, metre_pt: float) -> None:
    """So many metres of the yard as a line on the paper, to lay a rule to; it ends at `right` [pt]."""
    long_m = next((n for n in (20, 10, 5, 2) if n * metre_pt <= BAR_PT), 1)
    left = right - long_m * metre_pt
    page.course([(left, y - 3), (left, y), (right, y), (right, y - 3)], 0.9)
    page.text(left - 5, y, page.words.number(long_m, 0, "m"), LEAST_PT, align="right")


def _bed(page: Page, there: Box, place: YardPlace) -> None:
    if not place.lying:
        page.frame(there, 0.7, "ink2", dash=(2.0, 2.0))
        if place.arriving:
            page.pattern(there, "expected", "ink2")
        return
    top = there.top
    for lying in place.lying:
        bottom = min(there.bottom, top + there.height * lying.filled_frac)
        portion = Box(there.left, top, there.right, bottom)
        page.fill(portion, page.water(lying.moisture_wb_frac))
        if lying.doubtful:
            page.pattern(portion, "doubtful")
        if lying.moisture_wb_frac is not None:
            said = page.words.number(lying.moisture_wb_frac * 100)
            if width(said, LEAST_PT) < portion.width - 1 and portion.height > 14:
                shade = page.water(lying.moisture_wb_frac)
                y = (portion.top + portion.bottom) / 2 + 3
                if lying.doubtful:
                    page.fill(Box(portion.left + 0.5, y - 9, portion.right - 0.5, y + 3), shade)
                page.text(
                    (portion.left + portion.right) / 2, y, said, LEAST_PT, color=page.text_on(shade), align="middle"
                )
        top = bottom
    page.frame(there, 0.8)


def _names(
    page: Page, places: list[YardPlace], foot: float, way: int, x_of: Callable[[float], float], box: Box
) -> None:  # fmt: skip
    """Numbers at the outer end, and outside them one bracket for the neighbours of one lot."""
    for place in places:
        middle = x_of(place.x_m + place.width_m / 2)
        page.text(middle, foot + (11 if way > 0 else -4), place.code, NUMBER_PT, SEMIBOLD, align="middle")
    runs = []
    for lot, run in groupby(places, key=lambda p: p.lying[0].lot if p.lying else p.arriving):
        members = list(run)
        if lot:
            ends = x_of(members[0].x_m), x_of(members[-1].x_m + members[-1].width_m)
            runs.append((lot.partition("-")[2] or lot, *ends))
    line = foot + way * 16.5
    for _, a, b in runs:
        page.course([(a, line - way * 2.5), (a, line), (b, line), (b, line - way * 2.5)], 0.7)
    wides = [width(lot, LEAST_PT) for lot, _, _ in runs]
    wanted = [(a + b - wide) / 2 for (_, a, b), wide in zip(runs, wides, strict=True)]
    lefts = apart(wanted, wides, 3, box.left, box.right)
    for (lot, _, _), at in zip(runs, lefts, strict=True):
        page.text(at, line + (10 if way > 0 else -3.5), lot, LEAST_PT)
