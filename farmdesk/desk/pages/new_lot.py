"""A lot begins: its method, its code with the check character, what else it is called."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from farmdesk.desk.pages.short_form import ShortForm, Side
from farmdesk.desk.widgets.form_row import Act, Field
from farmdesk.errors import FarmError
from farmdesk.picture.codes import check_character, read_code
from farmdesk.work.changes import Done, Hand
from farmdesk.work.intake import IntakeStory

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm


class NewLotView(ShortForm):
    def name(self) -> str:
        return self.tr("A lot begins")

    def hint(self) -> str:
        return self.tr(
            "Method by letter or number; the code is proposed; a typed check character must be the right one."
        )

    def fields(self) -> Sequence[Field]:
        return [
            Field("method", self.tr("method"), 84, needed=True), Field("code", self.tr("code"), 132, code=True),
            Field("alias", self.tr("also called"), 220, words=True),
        ]  # fmt: skip

    def propose(self, story: IntakeStory) -> dict[str, str]:
        if story.plans:
            code, method, _ = story.plans[0]
            return {"method": method, "code": code}
        return {"method": story.methods[0][0]} if story.methods else {}

    def method(self, typed: str) -> tuple[str, str, str, str] | None:
        """Letter, words, next code and check character of the method that was typed."""
        methods = self.story.methods if self.story else ()
        at = int(typed) - 1 if typed.isdigit() else -1
        named = [m for n, m in enumerate(methods) if n == at or m[0] == typed.upper()]
        found = named[0] if named else None
        return (found[0], self.desk.words.say(found[1]), found[2], found[3]) if found else None

    def set_fields(self, fields: Sequence[Field]) -> None:
        super().set_fields(fields)
        box = self.row.box("method")
        box.textEdited.disconnect()
        box.textEdited.connect(self._method_typed)

    def _method_typed(self) -> None:
        """Another method proposes another code, unless a code was written by hand."""
        box, method = self.row.box("code"), self.method(self.row.values()["method"])
        story = self.story
        if story is not None and method is not None and box.text() in ("", *self._proposed()):
            box.setText(next((plan[0] for plan in story.plans if plan[1] == method[0]), method[2]))
        self.row.edited.emit()

    def _proposed(self) -> set[str]:
        """Codes that the form itself may have put there."""
        story = self.story
        return {plan[0] for plan in story.plans} | {m[2] for m in story.methods} if story else set()

    def act(self, values: dict[str, str]) -> Act:
        method = self.method(values["method"])
        letter, code = method[0] if method else values["method"].upper(), values["code"]

        def begin(farm: OpenFarm, answers: dict[str, str]) -> Done:
            from farmdesk.work.picking import begin_lot

            # without an hour it began with its work day: slips of this morning are typed in the evening
            at = farm.time.instant(farm.time.farm_day(farm.written_now()), farm.time.day_starts_h)
            return begin_lot(
                farm, letter, at, code=code, alias=values["alias"], hand=Hand("processor", answers=answers)
            )

        return begin

    def cells(self, done: Done, values: dict[str, str]) -> dict[str, str]:
        return {**values, "code": f"{done.lot} {check_character(done.lot)}"}

    def paint_beside(self, side: Side, story: IntakeStory, values: dict[str, str]) -> None:
        method = self.method(values["method"])
        code, check = (method[2], method[3]) if method else ("", "")
        if values["code"]:
            try:
                code = read_code(values["code"])
                check = check_character(code)
            except FarmError:
                code, check = values["code"], ""
        side.title(code or self.tr("new lot"), check, method[1] if method else "")
        if self.rows:
            side.sentence(self.tr("{said}. Weigh-in is next: Esc, then w.").format(said=self.said))
        else:
            side.note(self.tr("The small character guards a hand-copied code; it is written behind it on every paper."))
        side.heading(self.tr("Methods"))
        for n, (letter, words, following, mark) in enumerate(story.methods, start=1):
            side.line(f"{n}  {letter}  {self.desk.words.say(words)}", f"{following} {mark}")
        if story.plans:
            side.heading(self.tr("Planned"))
            for _, _, words in story.plans[:5]:
                side.line(self.desk.words.say(words))
