"""Languages: what the screen says, and what papers say, which may be another language.

Every floor marks its sentences (`N_`, `self.tr`); installer/words.sh gathers them into
resources/translations/farmdesk_es.ts and makes the .qm that is read here. English needs no file.
"""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QCoreApplication, QLocale, QTranslator

from farmdesk import paths
from farmdesk.text import Words

LANGUAGES = {"en": "English", "es": "Español"}
# Central America writes 12.5 and 1,250 as English does (CLDR 46: es-GT, es-HN, es-SV, es-MX).
SIGNS = {"en": (".", ","), "es": (".", ",")}

_worn: QTranslator | None = None


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


@lru_cache(maxsize=4)
def words(language: str) -> Words:
    """The words of a language, for screen or paper; unknown languages speak English."""
    if language not in LANGUAGES:
        language = "en"
    decimal, thousands = SIGNS[language]
    source = translator(language)
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
        _worn = translator(language)
        if _worn is not None:
            app.installTranslator(_worn)
    return words(language)


def system_language() -> str:
    """The computer's language where we have it, else English."""
    language = QLocale.system().name().split("_")[0]
    return language if language in LANGUAGES else "en"
