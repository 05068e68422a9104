"""People are codes: their names stay in the season file, and leave it only where that was ticked for the person."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace

from farmdesk.picture.things import Person, Things
from farmdesk.text import Words

ADULT_YEARS = 18  # under it no hazardous work (ILO convention 182, article 2); local rules may say more


def may_be_minor(person: Person, year: int) -> bool:
    """Whether a person may still be under 18 in a calendar year; False where the year of birth is not known."""
    return person.born is not None and year - person.born <= ADULT_YEARS


def coded(text: str, people: Mapping[str, Person]) -> str:
    """What a hand wrote, with the code in place of each name, whole or the first part of it, that may not be shown."""
    for person in people.values():
        if person.name and not person.named:
            first = person.name.split()[0]
            for name, flags in ((person.name, re.IGNORECASE), (first, 0)):
                text = re.sub(rf"(?<!\w){re.escape(name)}(?!\w)", person.code, text, flags=flags)
    return text


def for_papers(words: Words, things: Things) -> Words:
    """The words of a paper of this farm: it names nobody who is not ticked.

    A block called La Rosa keeps its name though somebody is called Rosa: the farm's registers name no people.
    """
    hidden = {code: person for code, person in things.people.items() if person.name and not person.named}
    blocks = things.blocks.values()
    own = {things.farm.name, *(name for block in blocks for name in (block.name, block.name_local, block.variety))}
    return replace(words, told=lambda text: text if text in own else coded(text, hidden)) if hidden else words


def shown(person: Person) -> Person:
    """What of a person leaves the farm: code, work and pay; the name where it is ticked, the year of birth never."""
    return replace(person, name=person.name if person.named else "", born=None)
