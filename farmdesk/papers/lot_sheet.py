"""The lot sheet: one page of facts that a buyer may keep.

Who and where, time to scale, what was done, drying, weights from cherry to green, the mill's bar, sieves,
green coffee, what differed from the method. What was not measured says so; a band with nothing in it yet is
left out. The page is always one: charts give way first, then letters get smaller down to 9.5 pt, and what
then still has no room is counted in words.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from farmdesk.clock import FarmTime
from farmdesk.papers.balance import (
    NOT_MEASURED,
    Heaps,
    MillBar,
    paint_hill,
    paint_screens,
    screens_of,
)
from farmdesk.papers.blocks import Heading, Rows, facts, paint_lines, paragraph
from farmdesk.papers.figures import caption, paint_figure
from farmdesk.papers.letters import (
    BOLD,
    DISPLAY,
    LEADING,
    LEAST_PT,
    SANS,
    SEMIBOLD,
    SERIF,
    SERIF_SEMIBOLD,
    STEP_PT,
    fitted,
    lines,
    width,
)
from farmdesk.papers.page import SIZES, Page, Target
from farmdesk.papers.place import Box
from farmdesk.papers.strip import StripDrawing
from farmdesk.text import N_, Day, Text, Words
from farmdesk.work.stories import SheetStory

CODE_PT, WISH_PT, SENTENCE_PT, LEGEND_PT = 36.0, 12.0, 15.0, 10.0
SQUARE_PT = 18 * 72 / 25.4  # the QR code
HEADER_PT = SQUARE_PT + 6
PAD_PT, LEAST_PAD_PT = 7.0, 4.5  # above and below a rule
GUTTER_PT = 24.0
SIEVES_FRAC = 0.42  # of the width, beside the green coffee's facts
CHART_PT, HEAPS_PT = 176.0, 66.0
LEAST_CHART_PT, LEAST_HEAPS_PT = 96.0, 24.0
SMALLEST_CHARTS = ((72.0, 8.0), (0.0, 1.0))  # where words would have to go; 0: the drying curve is left out
EASY_PT, EASE_FRAC = 10.5, 0.4  # charts keep this much of their wish while letters can still give way
LEAST_LINES = {"differed": 2, "done": 4, "green": 3, "who": 3}  # no block is cut below these


def write_lot_sheet(
    story: SheetStory, words: Words, path_or_file: Target, *, time: FarmTime, paper: str = "a4", mono: bool = False
) -> None:
    """Write one lot's sheet as a PDF of one page, on `a4` or `letter`, in the language of `words`.

    `time` is the farm's own; `mono` keeps water grey as well. Raises FileTrouble when the disk refuses.
    """
    title = words.say(N_("papers", "Lot sheet {code}", code=f"{story.code} {story.check}".strip()))
    page = Page(
        path_or_file, words, title=title, farm=story.farm, made=story.made, paper=paper, mono=mono,
        practice=story.practice,
    )  # fmt: skip
    _Sheet(page, story, words, time).paint()
    page.done()


@dataclass(frozen=True)
class _Band:
    """A band of the sheet: the least height it can be painted in, and the height it would like [pt]."""

    least: float
    wish: float
    paint: Callable[[Box], None]
    ruled: bool = True


class _Sheet:
    def __init__(self, page: Page, story: SheetStory, words: Words, time: FarmTime) -> None:
        self.page, self.story, self.words, self.time = page, story, words, time
        self.say = words.say
        self.left, self.right, self.width = page.left, page.right, page.width
        self.column = (self.width - GUTTER_PT) / 2
        self.size = WISH_PT
        self.pad = PAD_PT
        self.chart_pt, self.heaps_pt = LEAST_CHART_PT, LEAST_HEAPS_PT
        self.most: dict[str, int] = {}  # lines left to a block, where it had to be cut
        self.used: dict[str, int] = {}  # lines it takes now

    def paint(self) -> None:
        """Lay the bands out until they fit, then paint them from above."""
        foot = self._foot_words()
        top = self._header()
        room = self.page.foot_top(foot) - top
        bands = self._fit(room)
        left_over = room - self._total(bands)
        wanted = sum(band.wish - band.least for band in bands)
        share = min(1.0, left_over / wanted) if wanted > 0 else 0.0
        for n, band in enumerate(bands):
            if n and band.ruled:
                self.page.level(self.left, self.right, top, 0.6, "rule")
            top += self.pad
            height = band.least + (band.wish - band.least) * share
            band.paint(Box(self.left, top, self.right, top + height))
            top += height + self.pad
        self.page.foot(foot)

    def _total(self, bands: list[_Band], ease: float = 0.0) -> float:
        return sum(band.least + ease * (band.wish - band.least) + 2 * self.pad for band in bands)

    def _fit(self, room: float) -> list[_Band]:
        """Bands that fit: charts give way first, then letters and pads, then charts to their least, then lines."""
        shorter = SIZES["a4"][1] - self.page.high  # what Letter lacks is taken from charts
        while True:
            bands = self._bands()
            easy = self.size <= EASY_PT or self._total(bands, EASE_FRAC) <= room + shorter
            if easy and self._total(bands) <= room:
                return bands
            if self.size <= LEAST_PT:
                break
            self.size = max(LEAST_PT, self.size - STEP_PT)
            self.pad = max(LEAST_PAD_PT, self.pad - STEP_PT)
        for self.chart_pt, self.heaps_pt in SMALLEST_CHARTS:
            bands = self._cut(room)
            if self._total(bands) <= room:
                break
        return bands

    def _cut(self, room: float) -> list[_Band]:
        """Take lines from the longest block until all fit, then give back those that were not needed."""
        self.most = {}
        bands = self._bands()
        whole = dict(self.used)
        while self._total(bands) > room:
            spare = {key: n - LEAST_LINES[key] for key, n in self.used.items() if n > LEAST_LINES[key]}
            if not spare:
                return bands
            longest = max(spare, key=lambda key: (spare[key], key))
            self.most[longest] = self.used[longest] - 1
            bands = self._bands()
        for key in sorted(self.most):
            while self.most[key] < whole[key]:
                self.most[key] += 1
                longer = self._bands()
                if self._total(longer) > room:
                    self.most[key] -= 1
                    break
                bands = longer
        return bands

    def _bands(self) -> list[_Band]:
        self.used = {}
        found = [self._who(), self._method(), self._weights(), self._mill(), self._green(), self._differed()]
        return [band for band in found if band is not None]

    # header

    def _header(self) -> float:
        """Code, hill, version and farm, the QR code; gives where the bands begin [pt]."""
        page, story, top = self.page, self.story, self.page.top
        square = Box(self.right - SQUARE_PT, top, self.right, top + SQUARE_PT)
        page.code_square(square, f"{story.code}-{story.check}" if story.check else story.code)
        base = top + SQUARE_PT - 3
        right = square.left - 14
        name = self.say(N_("papers", "Lot sheet"))
        beside = [
            (name, 12.0, BOLD),
            (self.say(N_("papers", "version {n}", n=story.version_n)), 11.0, SANS),
            (self.say(Day(story.made, year=True)), 11.0, SANS),
        ]
        for n, (text, size, font) in enumerate(beside):
            page.text(right, base - 32 + n * 16, text, size, font, align="right")
        own = max(width(text, size, font) for text, size, font in beside)
        farm_pt, farm = fitted(story.farm, 11.5, right - own - 16 - self.left, SEMIBOLD)
        if len(farm) == 1:
            page.text(self.left, top + 9, farm[0], farm_pt, SEMIBOLD)
        size, code = fitted(story.code, CODE_PT, 190, DISPLAY)
        x = page.text(self.left, base, code[0], size, DISPLAY)
        x = page.text(x + 7, base, story.check, 18, color="ink2")
        x = page.practice_word(x + 9, base)
        paint_hill(page, Box(x + 12, top + 16, right - own - 14, base), story.hill, self.words)
        top += HEADER_PT
        page.level(self.left, self.right, top, 1.5, "ink")
        if len(farm) > 1:  # a name too long to stand above the code
            top = paint_lines(page, self.left, top + 5, farm, farm_pt, SEMIBOLD)
        return top

    def _foot_words(self) -> str:
        story = self.story
        return " ".join(
            self.say(text)
            for text in (
                N_("papers", "{code} {check}, version {n}.", code=story.code, check=story.check, n=story.version_n),
                N_(
                    "papers",
                    "Solid marks were measured with an instrument; hollow or hatched ones were computed or "
                    "estimated; darker on the strip is wetter.",
                ),
                N_("papers", "No people are named on this sheet, and no place is given by coordinates."),
            )
        )

    # bands

    def _who(self) -> _Band:
        story = self.story
        said = self.say(story.blocks_line)
        least = min(self.size, 11.0)
        said = said[:1].upper() + said[1:]
        size, who = fitted(said, SENTENCE_PT, self.width, SERIF, least_pt=max(least, 13.5))
        if len(who) > 1:
            size, who = fitted(said, SENTENCE_PT, self.width, SERIF, most_n=2, least_pt=least)
        who = self._kept("who", who)
        open_pt = min(self.size, 12.0)
        unfinished = lines(self.say(story.unfinished), open_pt, self.width, SERIF_SEMIBOLD) if story.unfinished else []
        strip = StripDrawing(story.strip, self.width, self.words, self.time)
        height = (len(who) * size + len(unfinished) * open_pt) * LEADING + 6 + strip.height

        def paint(box: Box) -> None:
            top = paint_lines(self.page, box.left, box.top, who, size, SERIF)
            top = paint_lines(self.page, box.left, top, unfinished, open_pt, SERIF_SEMIBOLD)
            strip.paint(self.page, box.left, top + 6)

        return _Band(height, height, paint)

    def _kept(self, key: str, broken: list[str]) -> list[str]:
        """Lines of a sentence, the last one given up where it had to be cut."""
        most = self.most.get(key)
        self.used[key] = len(broken) if most is None else min(most, len(broken))
        if most is None or len(broken) <= most:
            return broken
        return [*broken[: most - 1], self.say(N_("papers", "(the rest stands in the notebook)"))]

    def _rows(self, key: str, rows: tuple[tuple[Text, Text | None], ...], wide: float) -> Rows:
        said = [(self.say(head), None if fact is None else self.say(fact)) for head, fact in rows]
        made = facts(said, wide, self.size, self.words, self.say(NOT_MEASURED), self.most.get(key))
        self.used[key] = made.lines_n
        return made

    def _method(self) -> _Band | None:
        """What was done, and beside it the drying curve."""
        story = self.story
        figure = story.drying if self.chart_pt else None
        if not story.done and figure is None:
            return None
        wide = self.column if figure is not None else self.width
        head = Heading(self.say(N_("papers", "What was done")), "", wide)
        rows = self._rows("done", story.done, wide)
        if figure is None:
            height = head.height + rows.height

            def paint_rows(box: Box) -> None:
                head.paint(self.page, box.left, box.top)
                rows.paint(self.page, box.left, box.top + head.height)

            return _Band(height, height, paint_rows)
        beside = Heading(self.say(figure.title), self.say(N_("papers", "moisture, % wet basis")), self.column)
        legend = lines(caption(figure, self.words), LEGEND_PT, self.column)
        above = beside.height + len(legend) * LEGEND_PT * LEADING
        least = max(head.height + rows.height, above + self.chart_pt)
        tall = CHART_PT if story.balance else CHART_PT * 1.35
        left = self.right - self.column

        def paint(box: Box) -> None:
            head.paint(self.page, box.left, box.top)
            rows.paint(self.page, box.left, box.top + head.height, box.height - head.height)
            beside.paint(self.page, left, box.top)
            paint_lines(self.page, left, box.top + beside.height - 1, legend, LEGEND_PT, color="ink2")
            chart = Box(left, box.top + above, self.right, box.bottom)
            paint_figure(self.page, chart, figure, self.words, self.time)

        return _Band(least, max(least, above + tall), paint)

    def _weights(self) -> _Band | None:
        story = self.story
        if not story.weights:
            return None
        head = Heading(self.say(N_("papers", "Weights")), self.say(story.ratio) if story.ratio else "", self.width)
        heaps = Heaps(story.weights, self.width, self.words, final=bool(story.balance))
        fixed = head.height + heaps.words_height()

        def paint(box: Box) -> None:
            head.paint(self.page, box.left, box.top)
            heaps.paint(self.page, Box(box.left, box.top + head.height, box.right, box.bottom))

        return _Band(fixed + self.heaps_pt, fixed + HEAPS_PT, paint)

    def _mill(self) -> _Band | None:
        story = self.story
        if not story.balance:
            return None
        name = self.say(
            N_("papers", "Mill, {day}", day=Day(story.milled, long=True)) if story.milled else N_("papers", "Mill")
        )
        head = Heading(name, self.say(story.balance_of) if story.balance_of else "", self.width)
        bar = MillBar(story.balance, self.width, self.words)
        height = head.height + bar.height + 1

        def paint(box: Box) -> None:
            head.paint(self.page, box.left, box.top)
            bar.paint(self.page, box.left, box.top + head.height + 1)

        return _Band(height, height, paint)

    def _green(self) -> _Band | None:
        """Sieves, and beside them what is known of the green coffee; neither before there is any."""
        story = self.story
        known = any(fact is not None for _, fact in story.green) or (story.green and not story.unfinished)
        if not known and not story.screens:
            return None
        narrow = (self.width - GUTTER_PT) * SIEVES_FRAC
        wide = self.width - GUTTER_PT - narrow if story.screens else self.width
        head = Heading(self.say(N_("papers", "Green coffee")), "", wide)
        rows = self._rows("green", story.green if known else (), wide)
        right = head.height + rows.height if known else 0.0
        _, total = screens_of(story.screens, self.words)
        beside = self.say(N_("papers", "of {total}; round holes, 1/64 inch", total=total))
        sieves = Heading(self.say(N_("papers", "Screens")), beside, narrow)
        step = self.size * 1.24
        left = sieves.height + step * len(story.screens) if story.screens else 0.0
        left_wish = sieves.height + self.size * 1.36 * len(story.screens) if story.screens else 0.0

        def paint(box: Box) -> None:
            at = box.left
            if story.screens:
                sieves.paint(self.page, box.left, box.top)
                there = Box(box.left, box.top + sieves.height, box.left + narrow, box.bottom)
                paint_screens(self.page, there, story.screens, self.words, self.size)
                at = self.right - wide
            if known:
                head.paint(self.page, at, box.top)
                rows.paint(self.page, at, box.top + head.height, box.height - head.height)

        return _Band(max(left, right), max(left_wish, right), paint)

    def _differed(self) -> _Band | None:
        story = self.story
        if not story.differed:
            return None
        head = Heading(self.say(N_("papers", "What differed from the method")), "", self.width)
        size = max(LEAST_PT, self.size - 0.5)
        said = [self.say(text) for text in story.differed]
        broken = paragraph(said, self.width, size, self.words, self.most.get("differed"))
        self.used["differed"] = len(broken)
        height = head.height + len(broken) * size * LEADING

        def paint(box: Box) -> None:
            head.paint(self.page, box.left, box.top)
            paint_lines(self.page, box.left, box.top + head.height, broken, size, SERIF)

        return _Band(height, height, paint)
