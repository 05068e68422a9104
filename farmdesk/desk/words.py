"""Languages: what the screen says, and what papers say, which may be another language.

Every floor marks its sentences (`N_`, `self.tr`); installer/words.sh gathers them into
resources/translations/farmdesk_es.ts and makes the .qm that is read here. English needs no file.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache
from xml.etree import ElementTree

from PySide6.QtCore import QCoreApplication, QLocale, QTranslator

from farmdesk import paths
from farmdesk.text import Words
from farmdesk.work.words import Pairs, instead, own_words

LANGUAGES = {"en": "English", "es": "Español"}
# Central America writes 12.5 and 1,250 as English does (CLDR 46: es-GT, es-HN, es-SV, es-MX).
SIGNS = {"en": (".", ","), "es": (".", ",")}

_worn: QTranslator | None = None
_settings: dict[str, str] = {}  # of the farm that is open: its own words are among them


def wear(settings: Mapping[str, str]) -> bool:
    """From now on screens and sheets say the own words of a farm with these settings; says whether any is new."""
    global _settings
    before = [own_words(_settings, language) for language in LANGUAGES]
    _settings = dict(settings)
    return before != [own_words(_settings, language) for language in LANGUAGES]


@lru_cache(maxsize=4)
def translator(language: str) -> QTranslator | None:
    """Qt's translator of a language; None for English, or where its file is missing."""
    if language == "en":
        return None
    made = QTranslator()
    try:
        file = paths.resource("translations", f"farmdesk_{language}.qm")
    except FileNotFoundError:
        return None
    return made if made.load(str(file)) else None


class FarmTranslator(QTranslator):
    """A language with the farm's own words in it."""

    def __init__(self, base: QTranslator | None, pairs: Pairs) -> None:
        super().__init__()
        self.base, self.pairs = base, pairs
        self._said: dict[tuple[str, str], str] = {}

    def isEmpty(self) -> bool:
        return False

    def translate(self, context: str, source: str, disambiguation: str | None = None, n: int = -1) -> str:
        """The sentence in the language, the farm's words in place of ours."""
        said = self._said.get((context, source))
        if said is None:
            theirs = self.base.translate(context, source) if self.base is not None else ""
            said = self._said[context, source] = instead(theirs or source, self.pairs)
        return said


@lru_cache(maxsize=4)
def _spoken(language: str, pairs: Pairs) -> QTranslator | None:
    return FarmTranslator(translator(language), pairs) if pairs else translator(language)


def words(language: str) -> Words:
    """The words of a language, for screen or paper; unknown languages speak English."""
    if language not in LANGUAGES:
        language = "en"
    return _words(language, own_words(_settings, language))


@lru_cache(maxsize=4)
def _words(language: str, pairs: Pairs) -> Words:
    decimal, thousands = SIGNS[language]
    source = _spoken(language, pairs)
    if source is None:
        return Words(decimal=decimal, thousands=thousands, language=language)
    return Words(lambda context, english: source.translate(context, english) or "", decimal, thousands, language)


def speak(language: str) -> Words:
    """Let the desk's own widgets speak a language from now on; returns its words."""
    global _worn
    app = QCoreApplication.instance()
    if app is not None:
        if _worn is not None:
            app.removeTranslator(_worn)
        _worn = _spoken(language, own_words(_settings, language))
        if _worn is not None:
            app.installTranslator(_worn)
    return words(language)


@lru_cache(maxsize=2)
def sentences(language: str) -> tuple[str, ...]:
    """Every sentence that the program can say in a language, each once."""
    found: dict[str, None] = {}
    for message in ElementTree.parse(paths.resource("translations", "farmdesk_es.ts")).iter("message"):
        said = message.find("translation") if language != "en" else message.find("source")
        found["".join(said.itertext()) if said is not None else ""] = None
    return tuple(said for said in found if said)


def system_language() -> str:
    """The computer's language where we have it, else English."""
    language = QLocale.system().name().split("_")[0]
    return language if language in LANGUAGES else "en"
