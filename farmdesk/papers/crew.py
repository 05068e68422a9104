"""What the crew's papers have in common: a title, lines to write on, boxes for a hand, pages that turn."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from farmdesk.clock import FarmTime
from farmdesk.papers.blocks import Heading, paint_lines
from farmdesk.papers.letters import BOLD, DISPLAY, SERIF, fitted, lines
from farmdesk.papers.page import Page, Target
from farmdesk.papers.place import Box
from farmdesk.text import N_, Day, Moment, Text, Words
from farmdesk.work.stories import TodayStory

MM = 72 / 25.4
BOX_WIDE, BOX_HIGH, TICK = 22 * MM, 7.5 * MM, 5 * MM
STEP = BOX_HIGH + 3.0  # from one row of boxes to the next


class CrewPaper:
    """What these papers have in common: a page, where the next line goes, and its turning."""

    def __init__(
        self, title: Text, story: TodayStory, words: Words, target: Target, time: FarmTime, farm: str, practice: bool,
        paper: str, of_n: int = 1,
    ) -> None:  # fmt: skip
        self.words, self.say, self.story, self.time = words, words.say, story, time
        self.title, self.farm = self.say(title), farm
        self.page = Page(
            target, words, title=self.title, farm=farm, made=story.day, paper=paper, mono=True, practice=practice
        )
        self.left, self.right, self.width = self.page.left, self.page.right, self.page.width
        made = Moment(time.local(story.at_utc_s), weekday=True)
        self.made = self.say(N_("papers", "{title}, {farm}, made {at}.", title=self.title, farm=farm, at=made))
        self.y = self.page.top
        self.page_n, self.of_n = 1, of_n

    def head(self, day: Text | Day) -> None:
        """Title on the left; day and a line for the name on the right."""
        size, title = fitted(self.title, 27, self.width * 0.5, DISPLAY)
        for n, line in enumerate(title):
            x = self.page.text(self.left, self.y + 24 + n * 30, line, size, DISPLAY)
        self.y += 30 * (len(title) - 1)
        x = self.page.practice_word(x + 9, self.y + 24)
        said = self.say(day)
        day_pt, days = fitted(said, 13, self.right - x - 24, BOLD)
        for n, line in enumerate(days):
            self.page.text(self.right, self.y + 9 + n * 15, line, day_pt, BOLD, align="right")
        self.y += 15 * (len(days) - 1)
        self.blank(self.right, self.y + 26, self.say(N_("papers", "done by")), 74)
        self.y += 33
        self.page.level(self.left, self.right, self.y, 1.5, "ink")
        self.y += 7

    def blank(self, right: float, y: float, said: str, line_pt: float) -> None:
        """Words and behind them a line to write on, ending at the right."""
        self.page.level(right - line_pt, right, y + 1, 0.6, "ink")
        self.page.text(right - line_pt - 5, y, said, 11, align="right")

    def rule(self) -> None:
        """The line between two bands."""
        self.page.level(self.left, self.right, self.y, 0.6, "rule")
        self.y += 7

    @property
    def floor(self) -> float:
        """Where the footer begins."""
        return self.page.foot_top(self.made) - 4

    def heading(self, title: Text, beside: Text | None = None) -> None:
        """A heading of a band."""
        made = Heading(self.say(title), self.say(beside) if beside else "", self.width)
        made.paint(self.page, self.left, self.y)
        self.y += made.height + 3

    def sentences(self, said: str, size: float = 12.0, font: str = SERIF, color: str = "ink", wide: float = 0) -> None:
        """A paragraph below."""
        broken = lines(said, size, wide or self.width, font)
        self.y = paint_lines(self.page, self.left, self.y, broken, size, font, color)

    def turn(self) -> None:
        """The footer of this page, and the next page begun with its title."""
        self.page.foot(self.made, self.page_n, self.of_n)
        self.page.turn()
        self.page_n += 1
        self.y = self.page.top
        self.page.text(self.left, self.y + 11, self.title, 13, BOLD)
        self.y += 18

    def tick(self, x: float, y: float, said: str) -> float:
        """A box to tick with its word behind it; where the next one may begin."""
        self.page.frame(Box(x, y, x + TICK, y + TICK), 0.9)
        return self.page.text(x + TICK + 4, y + TICK - 3, said, 13, BOLD) + 13

    def boxes(self, x: float, y: float, wides: Sequence[float], struck: Sequence[int] = ()) -> None:
        """Boxes for a hand; some are struck beforehand."""
        for n, wide in enumerate(wides):
            there = Box(x, y, x + wide, y + BOX_HIGH)
            self.page.frame(there, 0.8)
            if n in struck:
                middle = (there.top + there.bottom) / 2
                self.page.level(there.left + 5, there.right - 5, middle, 0.9, "ink2")
            x += wide + 3


def write(
    draw: Callable[[CrewPaper], None], title: Text, story: TodayStory, words: Words, target: Target, time: FarmTime,
    farm: str, practice: bool, paper: str,
) -> None:  # fmt: skip
    """Draw a paper and write it; one of several pages is drawn again once their number is known."""
    sheet = CrewPaper(title, story, words, target, time, farm, practice, paper)
    draw(sheet)
    if sheet.page_n > 1:
        sheet = CrewPaper(title, story, words, target, time, farm, practice, paper, sheet.page_n)
        draw(sheet)
    sheet.page.foot(sheet.made, sheet.page_n, sheet.of_n)
    sheet.page.done()
