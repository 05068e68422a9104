"""Three faces of trouble, and two that are not trouble.

`NotPossible`: a rule of the farm or of arithmetic says no, with the numbers and what to do next.
`FileTrouble`: the world says no (disk, file, version), with a way out.
Anything else that is raised is a bug. Bad *data* is no exception: readers and checks return lists of
`Problem`. An *unlikely* value is a `Question` that a form asks once.
"""

from __future__ import annotations

from dataclasses import dataclass

from farmdesk.text import Text


class FarmError(Exception):
    """A trouble that a person can do something about; it carries a `Text`, never a ready sentence."""

    def __init__(self, text: Text, hint: Text | None = None) -> None:
        super().__init__(text, hint)
        self.text = text
        self.hint = hint

    def __str__(self) -> str:
        return f"{self.text} {self.hint}" if self.hint else str(self.text)


class NotPossible(FarmError):
    """The farm's rules, or arithmetic, do not allow it."""


class FileTrouble(FarmError):
    """The world does not allow it: disk, file, version."""


@dataclass(frozen=True, slots=True)
class Problem:
    """One fault in data: where it stands (a line, an entry, a bed) and what it is."""

    where: str
    text: Text


@dataclass(frozen=True, slots=True)
class Answer:
    """One numbered way to answer a question; `value` goes back to the verb as the answer."""

    value: str
    text: Text


@dataclass(frozen=True, slots=True)
class Question:
    """An unlikely value, asked once: `about` names the field, `key` the question (one per value)."""

    about: str
    key: str
    text: Text
    answers: tuple[Answer, ...]


class Asked(FarmError):
    """A verb stopped to ask; call it again with `answers={question.key: answer.value}`."""

    def __init__(self, question: Question) -> None:
        super().__init__(question.text)
        self.question = question
