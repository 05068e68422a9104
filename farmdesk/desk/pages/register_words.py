"""The farm's own words, in each language apart, and the sentences they change as they are typed."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING, Any

from farmdesk.desk import words as languages
from farmdesk.desk.go import Target
from farmdesk.desk.pages.short_form import Side
from farmdesk.desk.pages.typed_rows import TypedPane
from farmdesk.desk.widgets.form_row import Act, Field
from farmdesk.desk.widgets.rows_pane import Written
from farmdesk.work.changes import Done
from farmdesk.work.words import FACT, instead

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

SENTENCES_SHOWN = 8
# Said differently from valley to valley; in no order of right or wrong.
OFTEN = {
    "en": "bed – rack; store – barn; liner – bag",
    "es": "pila – tanque; bodega – almacén; saco – costal; uva – cereza",
}


class WordsPane(TypedPane):
    def question(self) -> Callable[[OpenFarm, int], Any]:
        def ask(farm: OpenFarm, at_utc_s: int) -> tuple[tuple[str, str, str], ...]:
            from farmdesk.work.words import all_words

            return all_words(farm.things)

        return ask

    def fields(self) -> Sequence[Field]:
        return [
            Field("language", self.tr("language"), 130, words=True, needed=True),
            Field("said", self.tr("the program says"), 320, words=True, needed=True),
            Field("own", self.tr("the farm says"), 320, words=True, needed=True),
        ]  # fmt: skip

    def show_story(self, story: tuple[tuple[str, str, str], ...]) -> None:
        """The words as they are."""
        self.story = story
        self.say(
            self.tr("Words"),
            self.tr("Language: 1 English, 2 Español. A phrase wins over a word; sentences change, old records do not."),
            "", self.tr("own words: {n}").format(n=len(story)),
        )  # fmt: skip
        self.show_rows([
            Written(f"{language}:{said}", "", {"language": languages.LANGUAGES.get(language, language), "said": said,
                                               "own": own})
            for language, said, own in story
        ])  # fmt: skip

    def code_of(self, row: Written) -> str:
        return ""

    def keys(self) -> Sequence[tuple[str, str]]:
        pairs = super().keys()
        return [pair for pair in pairs if pair[0] != "+"]  # in words + is a sign like any other

    def proposed(self) -> dict[str, str]:
        return {"language": languages.LANGUAGES[self.desk.words.language]}

    def typed_of(self, key: str) -> dict[str, str]:
        language, _, said = key.partition(":")
        own = next(own for lang, word, own in self.story if (lang, word) == (language, said))
        return {"language": languages.LANGUAGES.get(language, language), "said": said, "own": own}

    def language(self, typed: str) -> str:
        """The language that was typed, by number or the beginning of its name; the screen's where none fits."""
        codes = list(languages.LANGUAGES)
        if typed.isdigit() and 0 < int(typed) <= len(codes):
            return codes[int(typed) - 1]
        found = [code for code, name in languages.LANGUAGES.items() if name.casefold().startswith(typed.casefold())]
        return found[0] if typed and found else self.desk.words.language

    def act(self, values: dict[str, str], key: str) -> Act:
        from farmdesk.work.words import save_word

        language = self.language(values["language"])
        return lambda farm, answers: save_word(farm, language, values["said"], values["own"], before=key)

    def out(self, key: str) -> Act:
        from farmdesk.work.words import drop_word

        return lambda farm, answers: drop_word(farm, key)

    def has_written(self, done: Done) -> None:
        """Every page is made anew in the new words; the keys come back here."""
        self.desk.go(Target("register", f"{self.register} type"))

    def paint_beside(self, side: Side, values: dict[str, str]) -> None:
        said, own, language = values["said"], values["own"], self.language(values["language"])
        if not said:
            side.title(self.tr("Said otherwise elsewhere"))
            side.sentence(self.tr("Any word the screens or sheets say can be the farm’s own."))
            side.note(OFTEN[language])
            return
        side.title(self.tr("Sentences with it"))
        found = [s for s in languages.sentences(language) if instead(s, ((said, "\0"),)) != s]
        changed = self.tr("sentences of screens and sheets: {n}").format(n=len(found))
        side.note(changed if found else self.tr("The program does not say “{word}”.").format(word=said))
        told = [instead(sentence, ((said, own),)) if own else sentence for sentence in sorted(found, key=len)]
        plain = dict.fromkeys(FACT.sub("…", sentence).replace("&", "") for sentence in told)
        for sentence in list(plain)[:SENTENCES_SHOWN]:
            side.line(sentence)
