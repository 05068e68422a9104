"""Tables of defects: the published ones to read, and the farm's own, typed kind by kind."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Slot

from farmdesk.desk.pages.short_form import Side
from farmdesk.desk.pages.typed_rows import TypedPane
from farmdesk.desk.theme import look
from farmdesk.desk.widgets.form_row import Act, Field, RowBox
from farmdesk.desk.widgets.rows_pane import Written
from farmdesk.errors import FarmError
from farmdesk.science.defects import KINDS, Standard, standards
from farmdesk.text import Num
from farmdesk.work.changes import Done, Hand
from farmdesk.work.registers import Column, way_of
from farmdesk.work.standards import (
    DEFECTS,
    GROUPS,
    RULES,
    OwnTable,
    chosen,
    drop_item,
    own_table,
    save_item,
    save_table,
)

if TYPE_CHECKING:
    from farmdesk.desk.pages.registers import RegistersPage
    from farmdesk.work.farm import OpenFarm

KINDS_SHOWN = 20


@dataclass(frozen=True)
class StandardsStory:
    """The shipped tables and the farm's own."""

    shipped: tuple[Standard, ...]
    own: OwnTable
    chosen: tuple[str, ...]


class StandardsPane(TypedPane):
    """Two modes: the head of the own table (name, year, sample, rule, source), then its rows; ↑ leads back up."""

    def __init__(self, page: RegistersPage, register: str) -> None:
        super().__init__(page, register)
        self.head = True
        self.above.connect(self._to_head)
        self.row.about = {"value": "beans"}

    def question(self) -> Callable[[OpenFarm, int], Any]:
        def ask(farm: OpenFarm, at_utc_s: int) -> StandardsStory:
            return StandardsStory(tuple(standards().values()), own_table(farm.things), chosen(farm.things))

        return ask

    def fields(self) -> Sequence[Field]:
        if self.head:
            return [
                Field("name", self.tr("name of the own table"), 200, words=True),
                Field("year", self.tr("year"), 64), Field("sample_g", self.tr("sample, g"), 90),
                Field("rule", self.tr("rule"), 214, words=True), Field("source", self.tr("source"), 190, words=True),
                Field("also", self.tr("judge also by"), 112),
            ]  # fmt: skip
        return [
            Field("kind", self.tr("defect"), 340, words=True, needed=True),
            Field("beans", self.tr("beans for one"), 120, needed=True),
            Field("group", self.tr("group"), 150, words=True),
        ]  # fmt: skip

    def show_story(self, story: StandardsStory) -> None:
        """The own table as it is."""
        first = self.story is None
        self.story, say, own = story, self.desk.words.say, story.own
        if first and own.name:
            self.head = False
        if self.head:
            small = self.tr(
                "The farm’s own table: its name and sample. Published tables that judge each count too: by their numbers."
            )
            self.say(self.tr("Standards"), small)
            self.show_rows([])
            return
        sample = say(Num(own.sample_g, "g"))
        rule = say(next(words for way, words in RULES.ways if way == own.rule))
        small = self.tr("{sample}, {year}; {rule}. A defect by its word or number; ↑ above the first row: the head.")
        self.say(own.name, small.format(sample=sample, year=own.year or "–", rule=rule), "",
                 self.tr("kinds: {n}").format(n=len(own.items)))  # fmt: skip
        self.show_rows([Written(kind, "", self._cells(kind, beans, group)) for kind, beans, group in own.items])

    def _cells(self, kind: str, beans: int, group: str) -> dict[str, str]:
        say = self.desk.words.say
        said = next((say(words) for way, words in GROUPS.ways if way == group), "")
        return {"kind": say(KINDS[kind]), "beans": str(beans), "group": said}

    def code_of(self, row: Written) -> str:
        return row.cells["kind"]

    def proposed(self) -> dict[str, str]:
        own: OwnTable = self.story.own
        if not self.head:
            return {}
        rule = self.desk.words.say(next(words for way, words in RULES.ways if way == own.rule))
        sample = f"{own.sample_g:g}" if own.sample_g else ""
        return {
            "name": own.name,
            "year": own.year,
            "sample_g": sample,
            "rule": rule,
            "source": own.source,
            "also": " ".join(str(n) for n, t in self._numbered() if t.key in self.story.chosen),
        }

    def _numbered(self) -> list[tuple[int, Standard]]:
        return list(enumerate(self.story.shipped, start=1))

    def typed_of(self, key: str) -> dict[str, str]:
        return self._cells(*next(item for item in self.story.own.items if item[0] == key))

    def _way(self, column: Column, typed: str) -> str:
        try:
            return way_of(column, typed, self.desk.words.say)
        except FarmError:
            return typed

    def act(self, values: dict[str, str], key: str) -> Act:
        if self.head:
            rule = self._way(RULES, values["rule"])
            return lambda farm, answers: save_table(farm, values, rule, Hand(answers=answers))
        kind, group = self._way(DEFECTS, values["kind"]), self._way(GROUPS, values["group"])
        return lambda farm, answers: save_item(
            farm, kind, values["beans"], group, before=key, hand=Hand(answers=answers)
        )

    def out(self, key: str) -> Act:
        return lambda farm, answers: drop_item(farm, key)

    def has_written(self, done: Done) -> None:
        if self.head:
            self._turn(False)

    @Slot()
    def _to_head(self) -> None:
        if not self.head:
            self._turn(True)
            self.page.refresh()

    def _turn(self, head: bool) -> None:
        self.head, self._fresh = head, True
        self.at, self.correcting = None, None
        self.show_written([])
        self.set_fields(self.fields())
        self.row.fill({})

    def _pressed(self, box: RowBox, key: str) -> bool:
        if self.head and key in ("-", "enter") and box is not self.row.boxes[-1]:
            return False  # the head has one row only
        return super()._pressed(box, key)

    def paint_beside(self, side: Side, values: dict[str, str]) -> None:
        held = next((box.field.name for box in self.row.boxes if box.hasFocus()), "")
        column = {"kind": DEFECTS, "group": GROUPS, "rule": RULES}.get(held)
        say = self.desk.words.say
        if column is not None:
            side.title(say(column.label))
            typed = values.get(held, "").casefold()
            ways = [(n, say(words)) for n, (_, words) in enumerate(column.ways, start=1)]
            for n, words in [way for way in ways if typed in way[1].casefold() or typed.isdigit()][:KINDS_SHOWN]:
                side.line(f"{n}  {words}")
            return
        side.title(self.tr("Published tables"))
        for n, table in self._numbered():
            side.y += look().px(8)
            side.line(f"{n}  {say(table.label)}", say(Num(table.sample_g, "g")), strong=True)
            rule = say(RULES.ways[0 if table.whole else 1][1])
            side.note(self.tr("{year}; {rule}. {source}").format(year=table.edition, rule=rule, source=table.source))
