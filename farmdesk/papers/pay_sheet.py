"""The pay sheet: one page to sign or put a thumb on, and how many notes and coins it takes."""

from __future__ import annotations

from collections.abc import Sequence

from farmdesk.clock import FarmTime
from farmdesk.errors import NotPossible
from farmdesk.papers.letters import BOLD, DISPLAY, LEAST_PT, SEMIBOLD, fitted, shortened
from farmdesk.papers.page import Page, Target
from farmdesk.text import N_, Days, Moment, Num, Text, Words
from farmdesk.work.pay import PayRow, PayWeek
from farmdesk.work.pay_story import PayStory

CODE_PT, SIGN_PT = 38.0, 112.0
ROW_MOST_PT, ROW_LEAST_PT, BODY_PT = 22.0, 17.0, 10.5  # a thumb needs 6 mm
COINS_ACROSS = 5


def columns(week: PayWeek) -> list[tuple[Text, list[int]]]:
    """Heads and amounts [cents] of the columns that hold anything this week; the net always."""
    rows = week.rows
    every: list[tuple[Text, list[int]]] = [
        (N_("papers", "piece"), [row.piece_cents - row.bonus_cents for row in rows]),
        (N_("papers", "bonus"), [row.bonus_cents for row in rows]),
        (N_("papers", "top-up"), [row.top_up_cents for row in rows]),
        (N_("papers", "day work"), [row.day_work_cents for row in rows]),
        (N_("papers", "advance"), [-row.advance_cents for row in rows]),
        (N_("papers", "adjusted"), [row.adjustment_cents for row in rows]),
        (N_("papers", "rounded"), [row.rounded_cents for row in rows]),
        (N_("papers", "carried"), [row.carried_cents for row in rows]),
    ]
    kept = [column for column in every if any(column[1])]
    return [*kept, (N_("papers", "net"), [row.net_cents for row in rows])]


def write_pay_sheet(
    story: PayStory, words: Words, target: Target, *, time: FarmTime, farm: str, practice: bool = False,
    paper: str = "a4",
) -> None:  # fmt: skip
    """Write the chosen week: a row for each picker with room to sign, the payroll, the notes for the bank.

    More pickers than a page holds go on overleaf. Raises NotPossible where the week cannot be reckoned;
    FileTrouble when the disk refuses.
    """
    if story.week is None:
        raise NotPossible(story.headline)
    say = words.say
    title = say(N_("papers", "Pay sheet"))
    page = Page(
        target, words, title=title, farm=farm, made=time.farm_day(story.at_utc_s), paper=paper, practice=practice
    )
    made = Moment(time.local(story.at_utc_s), weekday=True)
    foot = say(N_("papers", "{title}, {farm}, made {at}.", title=title, farm=farm, at=made))
    _Sheet(page, story, story.week, title, foot).draw()
    page.done()


class _Sheet:
    """The page as it fills."""

    def __init__(self, page: Page, story: PayStory, week: PayWeek, title: str, foot: str) -> None:
        self.page, self.story, self.week, self.title, self.foot = page, story, week, title, foot
        self.columns = columns(week)
        self.say = page.words.say
        self.kg_pt = 46.0
        self.each = (page.width - CODE_PT - self.kg_pt - SIGN_PT) / len(self.columns)
        lines = -(-len(week.bank) // COINS_ACROSS)
        self.coins_pt = 30 + 17 * lines
        room = page.foot_top(foot) - 8 - page.top - 62 - 24 - self.coins_pt
        fit = max(1, len(week.rows))
        self.row_pt = min(ROW_MOST_PT, max(ROW_LEAST_PT, room / fit))
        self.first_n = max(1, int(room / self.row_pt))

    def draw(self) -> None:
        """All rows, the sum, notes and coins."""
        rows = self.week.rows
        pages = [rows[: self.first_n]] if len(rows) <= self.first_n else self._shared(rows)
        for n, part in enumerate(pages, start=1):
            y = self._head()
            for row in part:
                self._row(row, y, rows.index(row))
                y += self.row_pt
            if n == len(pages):
                y = self._total(y)
                self._coins(y)
            self.page.foot(self.foot, n, len(pages))
            if n < len(pages):
                self.page.turn()

    def _shared(self, rows: Sequence[PayRow]) -> list[Sequence[PayRow]]:
        return [rows[i : i + self.first_n] for i in range(0, len(rows), self.first_n)]

    def _head(self) -> float:
        page, y = self.page, self.page.top
        size, broken = fitted(self.title, 27, page.width * 0.45, DISPLAY)
        x = page.text(page.left, y + 24, broken[0], size, DISPLAY)
        page.practice_word(x + 9, y + 24)
        days = self.say(Days(self.week.first_day, self.week.last_day, year=True))
        page.text(page.right, y + 11, days, 13, BOLD, align="right")
        state = N_("papers", "signed") if self.week.closed else N_("papers", "to be signed")
        page.text(page.right, y + 26, self.say(state), 11, color="ink2", align="right")
        y += 34
        page.level(page.left, page.right, y, 1.5, "ink")
        y += 14
        page.text(page.left, y, self.say(N_("papers", "code")), LEAST_PT)
        page.text(page.left + CODE_PT + self.kg_pt - 4, y, self.say(N_("papers", "kg")), LEAST_PT, align="right")
        for x, (head, _) in zip(self._rights(), self.columns, strict=True):
            said = shortened(self.say(head), LEAST_PT, self.each - 4)
            page.text(x, y, said, LEAST_PT, align="right")
        page.text(page.right - SIGN_PT + 10, y, self.say(N_("papers", "signature or thumb")), LEAST_PT)
        page.level(page.left, page.right, y + 5, 0.9, "ink")
        return y + 6

    def _rights(self) -> list[float]:
        first = self.page.left + CODE_PT + self.kg_pt
        return [first + self.each * (n + 1) - 4 for n in range(len(self.columns))]

    def _row(self, row: PayRow, y: float, n: int) -> None:
        page, base = self.page, y + self.row_pt - 6
        page.text(page.left, base, row.picker, 12, BOLD)
        kilos = page.words.number(row.grams / 1000, 1)
        page.text(page.left + CODE_PT + self.kg_pt - 4, base, kilos, BODY_PT, align="right")
        for i, (x, (_, cents)) in enumerate(zip(self._rights(), self.columns, strict=True)):
            last = i == len(self.columns) - 1
            if cents[n] or last:
                amount = page.words.number(cents[n] / 100, 2)
                page.text(x, base, amount, 12 if last else BODY_PT, BOLD if last else SEMIBOLD, align="right")
        page.level(page.right - SIGN_PT + 8, page.right, y + self.row_pt - 3, 0.6, "ink")
        page.level(page.left, page.right - SIGN_PT, y + self.row_pt, 0.4, "rule")

    def _total(self, y: float) -> float:
        page, base = self.page, y + 17
        page.level(page.left, page.right, y + 1, 1.2, "ink")
        said = self.say(N_("papers", "{n} {n:envelope|envelopes}", n=len(self.week.envelopes)))
        page.text(page.left, base, said, 11)
        total = self.say(Num(self.week.total_cents / 100, self.story.money, 2))
        page.text(self._rights()[-1], base, total, 14, BOLD, align="right")
        return y + 24

    def _coins(self, y: float) -> None:
        """How many of each note and coin, all envelopes together."""
        page = self.page
        page.text(page.left, y + 14, self.say(N_("papers", "Notes and coins")), 12, SEMIBOLD)
        check = sum(note * n for note, n in self.week.bank.items())
        adds = N_("papers", "together {total}", total=Num(check / 100, self.story.money, 2))
        page.text(page.right, y + 14, self.say(adds), 11, color="ink2", align="right")
        y += 18
        wide = page.width / COINS_ACROSS
        for i, (note, n) in enumerate(self.week.bank.items()):
            x, base = page.left + wide * (i % COINS_ACROSS), y + 13 + 17 * (i // COINS_ACROSS)
            name = page.words.number(note / 100, 0 if note >= 100 else 2)
            page.text(x + 34, base, name, 11, BOLD, align="right")
            page.text(x + 40, base, f"× {n}", 11)
