"""Three guards on what is typed: impossible by itself (refused), unlikely (asked once), unusual (kept).

A form refuses only what cannot be by itself. What cannot be against the books is asked once, written if
the answer is to keep it, and stays in the picture as a doubt.
"""

from __future__ import annotations

from farmdesk import clock
from farmdesk.errors import Answer, Asked, NotPossible, Question
from farmdesk.picture.fold import LotPicture
from farmdesk.text import N_, Moment, Num, Text, kg
from farmdesk.units import Typed, grams_of, read_number, value_of
from farmdesk.work.changes import Hand
from farmdesk.work.farm import OpenFarm

KEEP = "keep"
MAX_KG = 20_000  # more than a truck of cherry in one weight is a slip of the hand (common practice, no source)


def ask(hand: Hand, about: str, key: str, text: Text, *answers: Answer) -> str:
    """The answer given to this question; raises Asked where it was not answered yet."""
    given = hand.answers.get(key)
    if given is not None:
        return given
    keep = Answer(KEEP, N_("guards", "it is right"))
    raise Asked(Question(about, key, text, answers or (keep, Answer("back", N_("guards", "correct it")))))


def weight(typed: str, hand: Hand, about: str = "weight") -> tuple[int, str]:
    """Whole grams [g] of a weight as typed, and the text to keep. Raises NotPossible, Asked."""
    read: Typed = read_number(typed, "kg", answers=hand.answers)
    grams = grams_of(read)
    if grams < 0:
        raise NotPossible(N_("guards", "A weight cannot be below nothing; “{typed}” is.", typed=typed))
    if grams > MAX_KG * 1000:
        raise NotPossible(N_("guards", "{weight} is more than one weighing can be.", weight=kg(grams)))
    return grams, f"{read.text}" if read.text.lower().endswith(read.unit.lower()) else f"{read.text} {read.unit}"


def share(typed: str, hand: Hand, about: str = "moisture") -> tuple[float, str]:
    """A fraction 0..1 of a percentage as typed. Raises NotPossible beyond 0 to 100 %."""
    value = value_of(read_number(typed, "%", answers=hand.answers), "%")
    if not 0.0 <= value <= 100.0:
        raise NotPossible(
            N_("guards", "{value} cannot be: a percentage lies between 0 and 100.", value=Num(value, "%", 1))
        )
    return value / 100.0, typed.strip()


def between(typed: str, low: float, high: float, unit: str, hand: Hand) -> tuple[float, str]:
    """A number that must lie in a range by itself, in `unit`, whatever unit it was written in. Raises NotPossible."""
    value = value_of(read_number(typed, unit, answers=hand.answers), unit)
    if not low <= value <= high:
        raise NotPossible(
            N_(
                "guards",
                "{value} cannot be: it must lie between {low} and {high}.",
                value=Num(value, unit, 2 if abs(value) < 20 else 0),
                low=Num(low, unit, 0 if low == int(low) else 1),
                high=Num(high, unit, 0 if high == int(high) else 1),
            )
        )
    return value, typed.strip()


def not_ahead(farm: OpenFarm, at_utc_s: int, hand: Hand) -> None:
    """Ask once when something is said to have happened more than an hour after now."""
    if at_utc_s > farm.written_now() + clock.HOUR_S:
        when = Moment(farm.time.local(at_utc_s), weekday=True)
        text = N_("guards", "{when} is still to come. Is the time right?", when=when)
        ask(hand, "time", "ahead", text)


def held(lot: LotPicture, place: str, grams: int, hand: Hand) -> None:
    """Ask once when more leaves a heap than the books hold; kept, it stays as a doubt."""
    books = lot.balance.get(place, 0)
    if grams > books:
        text = N_(
            "guards",
            "The books hold {books} of {lot} at {place}; {grams} would leave it. A paper may be missing.",
            books=kg(max(books, 0), 1),
            lot=lot.code,
            place=place,
            grams=kg(grams, 1),
        )
        ask(hand, "weight", "held", text)
