"""The farm's own words: what its screens and sheets say instead of a word of ours, in each language apart.

Only sentences of the program are changed, before their facts are filled in: what a hand once wrote stays as it
was written.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace
from typing import TYPE_CHECKING

from farmdesk.errors import NotPossible
from farmdesk.picture.things import Things
from farmdesk.text import N_
from farmdesk.work.changes import Done

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

WORD = "word"  # a setting `word:es:pila` holds what the farm says for “pila” on a Spanish screen or sheet
Pairs = tuple[tuple[str, str], ...]
FACT = re.compile(r"(\{[^{}]*\})")


def own_words(settings: Mapping[str, str], language: str) -> Pairs:
    """What the farm says instead, longest first: (the program's word, the farm's word)."""
    start = f"{WORD}:{language}:"
    found = [(name.removeprefix(start), own) for name, own in settings.items() if name.startswith(start)]
    return tuple(sorted(found, key=lambda pair: (-len(pair[0]), pair[0])))


def all_words(things: Things) -> tuple[tuple[str, str, str], ...]:
    """All of them in the order in which they were typed: language, the program's word, the farm's word."""
    found = []
    for name, own in things.settings.items():
        room, _, rest = name.partition(":")
        language, _, said = rest.partition(":")
        if room == WORD:
            found.append((language, said, own))
    return tuple(found)


def instead(sentence: str, pairs: Pairs) -> str:
    """A sentence with the farm's words in it: whole words only, capitals kept, facts in braces left alone."""
    if not pairs:
        return sentence
    if "&" in sentence.replace("&&", ""):
        return _with_letter(sentence, pairs)
    meant = {said.casefold(): own for said, own in pairs}
    pattern = re.compile(rf"(?<!\w)(?:{'|'.join(re.escape(said) for said, _ in pairs)})(?!\w)", re.IGNORECASE)

    def own(match: re.Match[str]) -> str:
        word = meant[match[0].casefold()]
        return word[:1].upper() + word[1:] if match[0][:1].isupper() else word

    return "".join(part if part.startswith("{") else pattern.sub(own, part) for part in FACT.split(sentence))


def _with_letter(sentence: str, pairs: Pairs) -> str:
    """A word with its Alt letter marked by &: the letter stays where the farm's word has it too."""
    at = sentence.replace("&&", "\0\0").find("&")
    letter, plain = sentence[at + 1 : at + 2], sentence[:at] + sentence[at + 1 :]
    own = instead(plain.replace("&&", "\0"), pairs).replace("\0", "&&")
    if own == plain:
        return sentence
    where = own.casefold().find(letter.casefold())
    return own[:where] + "&" + own[where:] if where >= 0 else own


def save_word(farm: OpenFarm, language: str, said: str, own: str, *, before: str = "") -> Done:
    """Say `own` for `said` on screens and sheets of a language; `before` is the word whose row is changed.

    Raises NotPossible for an empty word, one with braces, or one that stands there already.
    """
    said, own = " ".join(said.split()), " ".join(own.split())
    if not said or not own:
        raise NotPossible(N_("words", "Both words are needed: what the program says, and what the farm says."))
    if re.search(r"[{}&]", said + own):
        raise NotPossible(N_("words", "A word has no braces and no & in it."))
    name, old = f"{WORD}:{language}:{said}", f"{WORD}:{before}" if before else ""
    settings = dict(farm.things.settings)
    if name in settings and name != old:
        raise NotPossible(N_("words", "“{said}” has a word already.", said=said))
    settings.pop(old, None)
    return _renamed(farm, settings | {name: own}, said, own)


def drop_word(farm: OpenFarm, key: str) -> Done:
    """Say the program's own word again; `key` is language and word, `es:pila`."""
    settings = {name: value for name, value in farm.things.settings.items() if name != f"{WORD}:{key}"}
    said = key.partition(":")[2]
    return _renamed(farm, settings, farm.things.settings.get(f"{WORD}:{key}", said), said)


def _renamed(farm: OpenFarm, settings: dict[str, str], was: str, now: str) -> Done:
    done = farm.save_things(replace(farm.things, settings=settings))
    label = N_("words", "“{was}” is now “{now}”", was=was, now=now)
    return Done(done.changes, done.entries, label, done.inverse)
