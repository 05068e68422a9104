"""A message with its facts, not yet in any language.

Floors below the desk never hold a finished sentence: they hold a `Text`, an English template with
named facts. `Words` turns it into the reader's language; English is what stands in the template.
The marker `N_` is found by Qt's lupdate, so every floor's words reach the translators.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import date, datetime
from typing import Union

THIN = "\u202f"  # narrow no-break space: between a number and its unit


class Counted(str):
    """A number as it is written, which also chooses the words that go with it: `{n} {n:lot|lots}`.

    `n` decides: one of something, or any other number of it; `shown` is how it is written where that is not plain.
    """

    one: bool

    def __new__(cls, n: float, shown: str = "") -> Counted:
        made = super().__new__(cls, shown or str(n))
        made.one = n == 1
        return made

    def __format__(self, spec: str) -> str:
        if "|" not in spec:
            return super().__format__(spec)
        one, _, many = spec.partition("|")
        return one if self.one else many


Fact = Union[str, int, "Text", "Num", "Day", "Days", "Moment", "Listing"]


@dataclass(frozen=True, slots=True)
class Text:
    """An English template and its facts; the context is the translators' heading."""

    context: str
    template: str
    facts: tuple[tuple[str, Fact], ...] = ()

    def __str__(self) -> str:
        return ENGLISH.say(self)


def N_(context: str, template: str, **facts: Fact) -> Text:
    """Mark a sentence for translation and fill in its facts later."""
    return Text(context, template, tuple(facts.items()))


@dataclass(frozen=True, slots=True)
class Num:
    """A number with its unit, written with the decimals given; `about` puts ≈ before it."""

    value: float
    unit: str = ""
    decimals: int = 0
    about: bool = False


def kg(grams: float, decimals: int = 0, about: bool = False) -> Num:
    """Grams [g] shown as kilograms."""
    return Num(grams / 1000.0, "kg", decimals, about)


def pct(frac: float, decimals: int = 1, about: bool = False) -> Num:
    """A fraction 0..1 shown in percent."""
    return Num(frac * 100.0, "%", decimals, about)


@dataclass(frozen=True, slots=True)
class Day:
    """A farm day: `14 Jan`; with `weekday` `Tue 14 Jan`; with `year` `14 Jan 2025`; `long` spells it out."""

    day: date
    weekday: bool = False
    year: bool = False
    long: bool = False


@dataclass(frozen=True, slots=True)
class Days:
    """A range of farm days: `17–19 Jan`, `27 Jan–1 Feb`; one day alone is written once."""

    first: date
    last: date
    year: bool = False


@dataclass(frozen=True, slots=True)
class Moment:
    """A local instant: `14 Jan 18:41`; with `weekday` `Tue 14 Jan 18:41`; `clock` alone gives `18:41`."""

    local: datetime
    weekday: bool = False
    clock: bool = False
    year: bool = False


@dataclass(frozen=True, slots=True)
class Listing:
    """Several facts in a row, parted by `sep`."""

    items: tuple[Fact, ...]
    sep: str = ", "


MONTHS = (
    N_("dates", "Jan"), N_("dates", "Feb"), N_("dates", "Mar"), N_("dates", "Apr"),
    N_("dates", "May"), N_("dates", "Jun"), N_("dates", "Jul"), N_("dates", "Aug"),
    N_("dates", "Sep"), N_("dates", "Oct"), N_("dates", "Nov"), N_("dates", "Dec"),
)  # fmt: skip
MONTHS_LONG = (
    N_("dates", "January"), N_("dates", "February"), N_("dates", "March"), N_("dates", "April"),
    N_("dates", "May "), N_("dates", "June"), N_("dates", "July"), N_("dates", "August"),
    N_("dates", "September"), N_("dates", "October"), N_("dates", "November"), N_("dates", "December"),
)  # fmt: skip
WEEKDAYS = (
    N_("dates", "Mon"), N_("dates", "Tue"), N_("dates", "Wed"), N_("dates", "Thu"),
    N_("dates", "Fri"), N_("dates", "Sat"), N_("dates", "Sun"),
)  # fmt: skip
WEEKDAYS_LONG = (
    N_("dates", "Monday"), N_("dates", "Tuesday"), N_("dates", "Wednesday"), N_("dates", "Thursday"),
    N_("dates", "Friday"), N_("dates", "Saturday"), N_("dates", "Sunday"),
)  # fmt: skip


@dataclass(frozen=True)
class Words:
    """One language: a lookup of templates and the signs of its numbers.

    `lookup(context, english)` answers the translation, or an empty string where there is none. `told` says again
    what a hand wrote, for a paper that leaves out people's names.
    """

    lookup: Callable[[str, str], str] = field(default=lambda context, english: "")
    decimal: str = "."
    thousands: str = ","
    language: str = "en"
    told: Callable[[str], str] = str

    def say(self, text: Fact) -> str:
        """The sentence in this language, its facts filled in."""
        if isinstance(text, Text):
            template = self.lookup(text.context, text.template) or text.template
            if not text.facts:
                return template.strip() if text.context == "dates" else template
            return template.format_map({name: Counted(_count(fact), self.say(fact)) for name, fact in text.facts})
        if isinstance(text, Num):
            return self.number(text.value, text.decimals, text.unit, text.about)
        if isinstance(text, Day):
            return self.day(text.day, weekday=text.weekday, year=text.year, long=text.long)
        if isinstance(text, Days):
            return self.days(text.first, text.last, year=text.year)
        if isinstance(text, Moment):
            return self.moment(text)
        if isinstance(text, Listing):
            return text.sep.join(self.say(item) for item in text.items)
        return self.told(str(text))

    def number(self, value: float, decimals: int = 0, unit: str = "", about: bool = False) -> str:
        """`1,960 kg`, `19.7 %`, `≈ 470 L`, with this language's signs."""
        shown = f"{value:,.{decimals}f}"
        if float(f"{value:.{decimals}f}") == 0:
            shown = shown.lstrip("-")
        shown = shown.translate({ord(","): self.thousands, ord("."): self.decimal, ord("-"): "\u2212"})
        return f"{'≈' + THIN if about else ''}{shown}{THIN + unit if unit else ''}"

    def day(self, day: date, *, weekday: bool = False, year: bool = False, long: bool = False) -> str:
        """`14 Jan`, `Tue 14 Jan`, `Tuesday 14 January`."""
        months, names = (MONTHS_LONG, WEEKDAYS_LONG) if long else (MONTHS, WEEKDAYS)
        parts = [self.say(names[day.weekday()])] if weekday else []
        month = self.say(months[day.month - 1])
        if long and year:
            parts.append(self.say(N_("dates", "{day} {month} {year}", day=day.day, month=month, year=day.year)))
        elif long:
            parts.append(self.say(N_("dates", "{day} {month}", day=day.day, month=month)))
        else:
            parts += [str(day.day), month] + ([str(day.year)] if year else [])
        return " ".join(parts)

    def days(self, first: date, last: date, *, year: bool = False) -> str:
        """`17–19 Jan`, `27 Jan–1 Feb`."""
        if first == last:
            return self.day(first, year=year)
        if (first.year, first.month) == (last.year, last.month):
            return f"{first.day}–{self.day(last, year=year)}"
        return f"{self.day(first, year=year and first.year != last.year)}–{self.day(last, year=year)}"

    def moment(self, at: Moment) -> str:
        """`14 Jan 18:41`."""
        clock = f"{at.local:%H:%M}"
        return clock if at.clock else f"{self.day(at.local.date(), weekday=at.weekday, year=at.year)} {clock}"


def _count(fact: Fact) -> float:
    """How many a fact says there are; what is no whole number counts as many."""
    if isinstance(fact, int):
        return fact
    if not isinstance(fact, Num) or fact.decimals or not math.isfinite(fact.value):
        return 0
    return round(fact.value)


ENGLISH = Words()
