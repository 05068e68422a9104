"""The farm's figures: pay, limits, bulk weights, hours. What is common stands until the farm has its own."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING, Any

from farmdesk.desk.pages.short_form import Side
from farmdesk.desk.pages.typed_rows import TypedPane
from farmdesk.desk.widgets.form_row import Act, Field
from farmdesk.desk.widgets.rows_pane import Written
from farmdesk.picture.things import Things
from farmdesk.work.changes import Hand
from farmdesk.work.settings import FIGURES, Figure, save_figure, stands

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm


class FiguresPane(TypedPane):
    def question(self) -> Callable[[OpenFarm, int], Any]:
        return lambda farm, at_utc_s: farm.things

    def fields(self) -> Sequence[Field]:
        return [
            Field("figure", self.tr("figure"), 380, words=True, needed=True),
            Field("value", self.tr("what it is here"), 210, words=True),
        ]

    def show_story(self, story: Things) -> None:
        """The figures as they stand."""
        self.story = story
        own = sum(figure.name in story.settings for figure in FIGURES)
        self.say(
            self.tr("Figures"),
            self.tr("A number or the beginning of a name opens a figure; an emptied value is as is common again."),
            "", self.tr("own: {n} of {all}").format(n=own, all=len(FIGURES)),
        )  # fmt: skip
        self.show_rows([
            Written(figure.name, "", {"figure": self._said(n, figure), "value": stands(story, figure.name)},
                    self._note(figure))
            for n, figure in enumerate(FIGURES, start=1)
        ])  # fmt: skip

    def _said(self, n: int, figure: Figure) -> str:
        return f"{n}  {self.desk.words.say(figure.label)}"

    def _note(self, figure: Figure) -> str:
        unit = self._unit(figure)
        common = (
            "" if figure.name in self.story.settings or not stands(self.story, figure.name) else self.tr("as is common")
        )
        return ", ".join(part for part in (unit, common) if part)

    def _unit(self, figure: Figure) -> str:
        return self.desk.words.say(figure.unit) if figure.unit is not None else ""

    def _found(self, typed: str) -> Figure | None:
        """The figure that was typed: by its number, or by the beginning of its name where only one begins so."""
        text = typed.strip().casefold()
        figure = next((f for n, f in enumerate(FIGURES, 1) if text in (str(n), self._said(n, f).casefold())), None)
        begun = [f for f in FIGURES if text and self.desk.words.say(f.label).casefold().startswith(text)]
        return figure or (begun[0] if len(begun) == 1 else None)

    def code_of(self, row: Written) -> str:
        """The row's own number, or its name once it has been typed far enough."""
        typed = self.row.values()["figure"]
        found = self._found(typed)
        return typed.strip() if found is not None and found.name == row.key else ""

    def typed_of(self, key: str) -> dict[str, str]:
        n, figure = next((n, f) for n, f in enumerate(FIGURES, 1) if f.name == key)
        return {"figure": self._said(n, figure), "value": self.story.settings.get(key, "")}

    def act(self, values: dict[str, str], key: str) -> Act:
        found = self._found(values["figure"])
        name = found.name if found is not None else key
        return lambda farm, answers: save_figure(farm, name, values["value"], Hand("processor", answers=answers))

    def out(self, key: str) -> Act:
        return lambda farm, answers: save_figure(farm, key, "")

    def paint_beside(self, side: Side, values: dict[str, str]) -> None:
        found = self._found(values["figure"])
        side.title(self.tr("What it does"))
        if found is None:
            side.sentence(self.tr("Each of these can be the farm’s own; papers and forecasts follow at once."))
            return
        side.line(self.desk.words.say(found.label), self._unit(found))
        side.line(self.tr("stands now"), stands(self.story, found.name) or self.tr("not set"), strong=True)
