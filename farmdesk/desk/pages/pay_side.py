"""Beside the pay of a week: the list of weeks, one picker's envelope, and what the bank must give."""

from __future__ import annotations

from datetime import date

from PySide6.QtWidgets import QWidget

from farmdesk.desk.pages import Desk
from farmdesk.desk.theme import SEMIBOLD, look
from farmdesk.desk.widgets.ink import Ink
from farmdesk.text import Counted, Day, Days
from farmdesk.work.pay import PayRow
from farmdesk.work.pay_story import PayStory

WEEKS_PX, SIDE_PX, LINE_PX = 216, 292, 22


class PaySide(QWidget):
    """What stands at both sides of the pay sheet."""

    desk: Desk

    def is_shown(self, first_day: date) -> bool:
        """Whether this week is the chosen one."""
        raise NotImplementedError

    def current(self) -> PayRow | None:
        """The chosen picker."""
        raise NotImplementedError

    def paint_weeks(self, ink: Ink, story: PayStory, y: float) -> None:
        px, words = look().px, self.desk.words
        ink.heading(0, y + px(18), self.tr("Weeks"), self.tr("← → another"))
        y += px(30)
        for week in story.weeks:
            if y + px(44) > self.height():
                break
            shown = self.is_shown(week.first_day)
            if shown:
                ink.fill(0, y, px(WEEKS_PX), px(42), "sheet")
                ink.fill(0, y, px(5), px(42), "ink")
            days = words.say(Days(week.first_day, week.last_day))
            ink.text(px(12), y + px(17), days, 15, SEMIBOLD if shown else 400)
            total = words.number(week.total_cents / 100, 2) if week.total_cents is not None else "—"
            ink.text(px(WEEKS_PX - 6), y + px(17), total, 15, align="right")
            state = self.tr("signed") if week.closed else self.tr("open")
            said = self.tr("{n} {n:picker|pickers}, {state}").format(n=Counted(week.pickers_n), state=state)
            ink.text(px(12), y + px(35), said, 14, color="ink2")
            y += px(44)

    def paint_envelope(self, ink: Ink, story: PayStory, x: float, y: float) -> None:
        px, words = look().px, self.desk.words
        right, row = float(self.width()), self.current()
        if row is not None and story.week is not None:
            note = words.number(row.net_cents / 100, 2, story.money)
            ink.heading(x, y + px(18), self.tr("Envelope of {picker}").format(picker=row.picker), note)
            y += px(18)
            for day in row.days:
                y += px(LINE_PX)
                ink.text(x, y, words.say(Day(day.day, weekday=True)), 15)
                ink.text(x + px(150), y, words.number(day.grams / 1000, 1, "kg"), 15, align="right")
                extra = f"+{words.number(day.top_up_cents / 100, 2)} " if day.top_up_cents else ""
                ink.text(right, y, extra + words.number(day.piece_cents / 100, 2), 15, align="right")
            for picker, on, cents, text in (*story.day_works, *((p, d, -c, t) for p, d, c, t in story.advances)):
                if picker == row.picker:
                    y += px(LINE_PX)
                    said = text or (self.tr("day work") if cents > 0 else self.tr("advance"))
                    ink.text(x, y, ink.fitted(f"{words.say(Day(on))} {said}", px(180), 15), 15)
                    ink.text(right, y, words.number(cents / 100, 2), 15, align="right")
            if row.adjustment_cents:
                y += px(LINE_PX)
                ink.text(x, y, self.tr("from signed weeks"), 15)
                ink.text(right, y, words.number(row.adjustment_cents / 100, 2), 15, align="right")
            y = self._notes(ink, story.week.envelopes.get(row.picker, {}), x, right, y + px(8))
        if story.week is not None and story.week.bank:
            y += px(14)
            ink.level(x, right, y, 1, "hair")
            ink.heading(x, y + px(24), self.tr("For the bank"), self.tr("notes and coins, all envelopes"))
            y = self._notes(ink, story.week.bank, x, right, y + px(28), totals=True)
        if story.loose:
            y += px(14)
            ink.level(x, right, y, 1, "hair")
            y += px(24)
            end = ink.swatch(x, y, "doubtful")
            ink.text(end + px(8), y, self.tr("without a known picker"), 15, SEMIBOLD)
            for sack in story.loose[:4]:
                y += px(LINE_PX)
                said = f"{sack.picker} {words.say(Day(sack.day))} {sack.lot}"
                ink.text(x, y, said, 15)
                ink.text(right, y, words.number(sack.grams / 1000, 1, "kg"), 15, align="right")

    def _notes(
        self, ink: Ink, counted: dict[int, int], x: float, right: float, y: float, *, totals: bool = False
    ) -> float:
        """Denomination × how many; in two columns where they are many."""
        px, words = look().px, self.desk.words
        items = list(counted.items())
        if not totals:  # an envelope: on as few lines as they need
            said = "   ".join(f"{words.number(n / 100, 0 if n >= 100 else 2)} × {k}" for n, k in items)
            after = ink.wrapped(x, y + px(18), right - x, said, 15, SEMIBOLD)
            return after - ink.leading(15)
        for note, n in items:
            y += px(LINE_PX)
            if y > self.height():
                break
            ink.text(x + px(62), y, words.number(note / 100, 0 if note >= 100 else 2), 15, SEMIBOLD, align="right")
            ink.text(x + px(80), y, f"× {n}", 15)
            ink.text(right, y, words.number(note * n / 100, 2), 15, align="right")
        return y
