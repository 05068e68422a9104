"""A register as a sheet: its rows, one row of boxes in the same order, and beside it what they come to."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any

from farmdesk.desk.pages import Desk
from farmdesk.desk.pages.short_form import Side
from farmdesk.desk.pages.typed_rows import TypedPane
from farmdesk.desk.theme import SEMIBOLD, look
from farmdesk.desk.widgets.form_row import Act, Field
from farmdesk.desk.widgets.rows_pane import Written
from farmdesk.errors import FarmError
from farmdesk.picture.things import Things
from farmdesk.text import N_, Counted, Days
from farmdesk.work import registers
from farmdesk.work.changes import Hand
from farmdesk.work.registers import CODE, COLUMNS, TEXT, WAY, YES, Column

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm
    from farmdesk.work.instruments import Trust

WIDE_PX = {
    "blocks": (54, 92, 92, 62, 64, 64, 142, 54, 62, 62, 90, 72),
    "places": (72, 78, 86, 86, 100, 104, 100, 104),
    "vessels": (96, 150, 104, 140, 92),
    "trays": (96, 120),
    "instruments": (104, 176, 142, 96, 106, 100, 142),
    "people": (104, 150, 130, 220, 92, 100),
    "buyers": (100, 0),
}


@dataclass(frozen=True)
class RegisterStory:
    """A register: the farm's things, its rows as they would be typed, and what the next one most likely says."""

    things: Things
    typed: dict[str, dict[str, str]]
    proposed: dict[str, str]
    trusts: tuple[Trust, ...] = field(default=())


class RegisterPane(TypedPane):
    """One of the farm's registers of things."""

    def question(self) -> Callable[[OpenFarm, int], Any]:
        register = self.register

        def ask(farm: OpenFarm, at_utc_s: int) -> RegisterStory:
            from farmdesk.work.instruments import trusts

            rows = registers.of(farm.things, register)
            typed = {key: registers.typed(register, thing) for key, thing in rows.items()}
            trusted = trusts(farm.seen(at_utc_s)) if register == "instruments" else ()
            return RegisterStory(farm.things, typed, registers.proposed(farm, register), trusted)

        return ask

    def columns(self) -> tuple[Column, ...]:
        """The columns, in the order of the boxes."""
        return COLUMNS[self.register]

    def fields(self) -> Sequence[Field]:
        return [
            Field(c.name, self.desk.words.say(c.label), wide, words=self._takes_signs(c), needed=c.name == "code")
            for c, wide in zip(self.columns(), WIDE_PX[self.register], strict=True)
        ]

    def _takes_signs(self, column: Column) -> bool:
        """Whether + and − are typed into it: words, codes like `scale-1`, a clock that is behind."""
        signs = column.kind == CODE and self.register in ("instruments", "people")
        return signs or column.kind in (TEXT, WAY) or column.name == "clock_shift_s"

    def show_story(self, story: RegisterStory) -> None:
        """The register as it is now."""
        self.story = story
        say = self.desk.words.say
        self.say(self.heading(), self.hint(), "", self.tr("rows: {n}").format(n=len(story.typed)))
        rows = []
        for key, typed in story.typed.items():
            cells = {c.name: self._shown(c, typed[c.name], say) for c in self.columns()}
            rows.append(Written(key, "", cells, self.note(key), self.doubtful(key)))
        self.show_rows(rows)

    def _shown(self, column: Column, typed: str, say: Callable[[Any], str]) -> str:
        way = next((words for way, words in column.ways if way == typed), None)
        return say(way) if way is not None else typed

    def heading(self) -> str:
        """The sheet's title."""
        return {"trays": self.tr("Trays"), "buyers": self.tr("Buyers")}.get(self.register, "")

    def hint(self) -> str:
        """A line under the title."""
        return self.tr("A code that is there already opens its row. What is not known stays empty.")

    def note(self, key: str) -> str:
        """What stands behind a row."""
        return ""

    def doubtful(self, key: str) -> bool:
        """Whether a row is in doubt."""
        return False

    def proposed(self) -> dict[str, str]:
        return self._said(self.story.proposed)

    def typed_of(self, key: str) -> dict[str, str]:
        return self._said(self.story.typed[key])

    def _said(self, typed: dict[str, str]) -> dict[str, str]:
        """Ways in the screen's words."""
        by_name = {column.name: column for column in self.columns()}
        return {name: self._shown(by_name[name], value, self.desk.words.say) for name, value in typed.items()}

    def act(self, values: dict[str, str], key: str) -> Act:
        register, say = self.register, self.desk.words.say
        meant = dict(values)
        for column in self.columns():
            if column.kind in (WAY, YES):
                try:
                    meant[column.name] = registers.way_of(column, values[column.name], say)
                except FarmError:
                    continue  # the verb says what it may be
        return lambda farm, answers: registers.write_row(
            farm, register, meant, before=key, hand=Hand("processor", answers=answers)
        )

    def out(self, key: str) -> Act:
        register = self.register
        return lambda farm, answers: registers.take_out(farm, register, key, hand=Hand("processor", answers=answers))

    # beside

    def paint_beside(self, side: Side, values: dict[str, str]) -> None:
        self.ways_of_the_box(side)

    def ways_of_the_box(self, side: Side) -> None:
        """Where the keys stand in a box that offers words: what it offers, by number."""
        held = next((box for box in self.row.boxes if box.hasFocus()), None)
        column = next((c for c in self.columns() if held is not None and c.name == held.field.name), None)
        if column is None or not column.ways:
            return
        say = self.desk.words.say
        side.heading(say(column.label))
        for n, (_, words) in enumerate(column.ways, start=1):
            side.line(f"{n}  {say(words)}")
        if column.free:
            side.note(self.tr("or other words"))


class BlocksPane(RegisterPane):
    side_px = 244  # many columns

    def heading(self) -> str:
        return self.tr("Blocks")

    def paint_beside(self, side: Side, values: dict[str, str]) -> None:
        number = self.desk.words.number
        blocks = self.story.things.blocks.values()
        side.title(self.tr("All blocks"))
        side.big(
            number(sum(b.area_ha for b in blocks), 2, "ha"),
            self.tr("in {n} {n:block|blocks}").format(n=Counted(len(blocks))),
        )
        side.line(self.tr("trees"), number(sum(b.trees_n for b in blocks)), strong=True)
        heights = [h for b in blocks for h in (b.low_m, b.high_m) if h]
        if heights:
            side.line(self.tr("height"), f"{number(min(heights))}–{number(max(heights), 0, 'm')}", strong=True)
        area, trees = self.number_in(values, "area_ha"), self.number_in(values, "trees_n")
        if area and trees:
            side.heading(self.tr("Block {code}").format(code=values["code"].upper()))
            side.line(self.tr("trees on a hectare"), number(trees / area), strong=True)
        self._paint_boundary(side, values["boundary"])
        self.ways_of_the_box(side)

    def _paint_boundary(self, side: Side, typed: str) -> None:
        """The outline that stands in the box, north up, and what it holds."""
        from farmdesk.science.ground import area_ha, flat_m
        from farmdesk.work.boundaries import corners

        try:
            found = corners(typed)
        except FarmError:
            return
        if len(found) < 3:
            return
        side.heading(self.tr("Boundary"))
        side.line(self.tr("it holds"), self.desk.words.number(area_ha(found), 2, "ha"), strong=True)
        side.outline(flat_m(found))


class VesselsPane(RegisterPane):
    def heading(self) -> str:
        return self.tr("Vessels")

    def paint_beside(self, side: Side, values: dict[str, str]) -> None:
        from farmdesk.work.settings import number as setting

        number, things = self.desk.words.number, self.story.things
        side.title(self.tr("All vessels"))
        side.big(number(sum(v.usable_l for v in things.vessels.values()), 0, "L"), self.tr("usable"))
        gross, typed = self.number_in(values, "gross_l"), values.get("usable_l", "")
        usable = self.number_in(values, "usable_l") or gross
        if usable and gross and typed.endswith("%"):
            usable = gross * usable / 100
        if usable:
            cherry = setting(things, "bulk_cherry_kg_l") or 1.0
            pulped = setting(things, "bulk_pulped_kg_l") or 1.0
            side.heading(self.tr("{code} takes").format(code=values["code"] or self.tr("It")))
            side.line(self.tr("whole cherry, at {n} kg a litre").format(n=number(cherry, 2)),
                      number(usable * cherry, 0, "kg"), strong=True)  # fmt: skip
            side.line(self.tr("pulped, at {n} kg a litre").format(n=number(pulped, 2)),
                      number(usable * pulped, 0, "kg"), strong=True)  # fmt: skip
        self.ways_of_the_box(side)


class InstrumentsPane(RegisterPane):
    def heading(self) -> str:
        return self.tr("Instruments")

    def hint(self) -> str:
        return self.tr("Spread and last digit in the unit it shows: g, points of moisture, pH, °C.")

    def _trust(self, key: str) -> Trust | None:
        return next((trust for trust in self.story.trusts if trust.code == key), None)

    def doubtful(self, key: str) -> bool:
        trust = self._trust(key)
        return trust is not None and trust.overdue_utc_s is not None

    def paint_beside(self, side: Side, values: dict[str, str]) -> None:
        side.title(self.tr("Trusted from–to"))
        paint_trust(side, self.story.trusts, self.desk)
        never = [trust.code for trust in self.story.trusts if not trust.bands]
        if never:
            side.note(self.tr("Not checked yet: {codes}").format(codes=" ".join(never)))
        self.ways_of_the_box(side)


def paint_trust(side: Side, trusts: Sequence[Trust], desk: Desk) -> None:
    """Each checked instrument's time: solid while it is trusted, crossed while it is not; the last band in words."""
    px, ink, say, time = look().px, side.ink, desk.words.say, desk.time
    checked = [trust for trust in trusts if trust.bands]
    if not checked:
        return
    first = min(trust.bands[0][0] for trust in checked)
    now = max(desk.as_of, first + 1)
    left, right = side.left + px(84), side.right - px(136)

    def x(at_utc_s: float) -> float:
        return left + (right - left) * min(1.0, (at_utc_s - first) / (now - first))

    side.y += px(6)
    for trust in checked:
        side.y += px(24)
        ink.text(side.left, side.y, ink.fitted(trust.code, px(80), 15), 15, SEMIBOLD)
        top, high = side.y - px(11), px(10)
        begun = x(trust.bands[0][0])
        ink.pattern(begun, top, right - begun, high, "doubtful", "ink2")
        for a, b in trust.bands:
            ink.fill(x(a), top, x(b) - x(a), high, "paper")
            ink.fill(x(a), top + px(3), x(b) - x(a), px(4), "ink")
        days = say(Days(time.farm_day(trust.bands[-1][0]), time.farm_day(trust.bands[-1][1])))
        late = trust.overdue_utc_s is not None
        ink.text(side.right, side.y, days, 15, SEMIBOLD if late else 400, align="right")
    late_ones = [trust.code for trust in checked if trust.overdue_utc_s is not None]
    if late_ones:
        side.line(say(N_("instruments", "Overdue: {codes}", codes=" ".join(late_ones))))


class PeoplePane(RegisterPane):
    def heading(self) -> str:
        return self.tr("People")

    def hint(self) -> str:
        return self.tr(
            "Papers show the code. A name leaves the farm only where “on papers” says yes; a year of birth never."
        )

    def doubtful(self, key: str) -> bool:
        from farmdesk.work.people import may_be_minor

        return may_be_minor(self.story.things.people[key], self.desk.time.local(self.desk.as_of).year)

    def paint_beside(self, side: Side, values: dict[str, str]) -> None:
        people = self.story.things.people
        side.title(self.tr("All people"))
        side.big(self.desk.words.number(len(people)), self.tr("codes"))
        young = [code for code in people if self.doubtful(code)]
        if young:
            side.line(self.tr("may be under 18: {codes}").format(codes=" ".join(young)), strong=True)
            side.note(self.tr("Under 18 no hazardous work (ILO convention 182); local rules may say more."))
        self.ways_of_the_box(side)
