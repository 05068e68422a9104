"""The short forms of a lot's first day: a few boxes in the order of the paper, and what is usual beside them."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING, Any

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QRect, Slot
from PySide6.QtGui import QPolygonF

from farmdesk.desk.pages.sheet_head import instants
from farmdesk.desk.theme import BOLD, DISPLAY, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.form_row import Act, Field
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.rows_pane import RowsPane, Written
from farmdesk.work.changes import Done
from farmdesk.work.intake import IntakeLot, IntakeStory

if TYPE_CHECKING:
    from farmdesk.desk.pages.picking import PickingPage
    from farmdesk.work.farm import OpenFarm

OUTLINE_PX = 150


class Side:
    """Lines beside a sheet, each below the one before."""

    def __init__(self, ink: Ink, box: QRect) -> None:
        self.ink, self.left, self.right = ink, float(box.left()), float(box.right())
        self.y = 0.0

    def title(self, name: str, small: str = "", beside: str = "") -> None:
        """A name in display letters over a rule."""
        px = look().px
        x = self.ink.text(self.left, px(40), name, 26, SEMIBOLD, family=DISPLAY)
        if small:
            x = self.ink.text(x + px(8), px(40), small, 17, color="ink2")
        room = self.right - x - px(24)
        self.ink.text(self.right, px(40), self.ink.fitted(beside, room, 17), 17, align="right")
        self.ink.level(self.left, self.right, px(54), 1.6, "ink")
        self.y = px(54)

    def big(self, number: str, beside: str) -> None:
        """The number that matters."""
        px = look().px
        self.y += px(38)
        x = self.ink.text(self.left, self.y, number, 28, BOLD)
        self.ink.text(x + px(10), self.y, self.ink.fitted(beside, self.right - x - px(10), 15), 15)

    def line(self, said: str, value: str = "", *, strong: bool = False) -> None:
        """Words, and a number at the right."""
        self.y += look().px(23)
        wide = self.ink.width(value, 15, SEMIBOLD)
        self.ink.text(self.left, self.y, self.ink.fitted(said, self.right - self.left - wide - 8, 15), 15)
        self.ink.text(self.right, self.y, value, 15, SEMIBOLD if strong else 400, align="right")

    def note(self, said: str) -> None:
        """What something rests on."""
        self.y += look().px(20)
        after = self.ink.wrapped(self.left, self.y, self.right - self.left, said, 14, color="ink2")
        self.y = after - self.ink.leading(14)

    def sentence(self, said: str) -> None:
        """The program speaks: serif."""
        self.y += look().px(25)
        after = self.ink.wrapped(self.left, self.y, self.right - self.left, said, 17, family=SERIF)
        self.y = after - self.ink.leading(17)

    def outline(self, points_m: NDArray[np.float64]) -> None:
        """A plot (n, 2) [m east, m north] to scale, north up."""
        px = look().px
        low, size = points_m.min(axis=0), np.ptp(points_m, axis=0)
        room = self.right - self.left, float(px(OUTLINE_PX))
        scale = min(room[0] / max(size[0], 1e-9), room[1] / max(size[1], 1e-9))
        top = self.y + px(12)
        flat = [QPointF(self.left + (x - low[0]) * scale, top + (low[1] + size[1] - y) * scale) for x, y in points_m]
        self.ink.shape(QPolygonF(flat), None, 1.4, "ink")
        self.y = top + float(size[1]) * scale

    def heading(self, said: str) -> None:
        """A heading below a hair."""
        self.y += look().px(16)
        self.ink.level(self.left, self.right, self.y, 1, "hair")
        self.y += look().px(25)
        self.ink.text(self.left, self.y, said, 18, SEMIBOLD, family=SERIF)


class ShortForm(RowsPane):
    """Subclasses give `name`, `hint`, `fields`, `propose`, `act` and `paint_beside`."""

    def __init__(self, page: PickingPage) -> None:
        super().__init__(page.desk, page)
        self.page = page
        self.story: IntakeStory | None = None
        self.rows: list[Written] = []
        self.said = ""
        self.row.submitted.connect(self._submitted)
        self.row.wrote.connect(self._wrote)
        self.row.left.connect(page.leave)
        self.row.ended.connect(page.leave)
        self.row.edited.connect(self.update)
        self.correct.connect(self._open_row)

    # what a form is

    def name(self) -> str:
        """Its title."""
        raise NotImplementedError

    def hint(self) -> str:
        """A line under the title."""
        return ""

    def fields(self) -> Sequence[Field]:
        """Its boxes, in the order of the paper."""
        raise NotImplementedError

    def propose(self, story: IntakeStory) -> dict[str, str]:
        """What stands in the boxes of a new row."""
        return {}

    def first_box(self) -> str:
        """Where the keys go in a new row."""
        return ""

    def act(self, values: dict[str, str]) -> Act:
        """The verb for what was typed."""
        raise NotImplementedError

    def cells(self, done: Done, values: dict[str, str]) -> dict[str, str]:
        """What stands in the written row."""
        return values

    def paint_beside(self, side: Side, story: IntakeStory, values: dict[str, str]) -> None:
        """What is usual, and what it will come to."""

    # the way of a row

    def question(self) -> Callable[[OpenFarm, int], Any]:
        """Ask what the forms need."""
        from farmdesk.work.intake import intake_story

        at, now = instants(self.desk)
        return lambda farm, _: intake_story(farm, at, now_utc_s=now)

    def show_story(self, story: IntakeStory) -> None:
        """Newer facts; what is being typed stays."""
        self.story = story
        if not self.row.boxes:
            self.set_fields(self.fields())
        self._words()

    def _words(self) -> None:
        n = len(self.rows)
        self.say(self.name(), self.hint(), self.desk.words.day(self.story.day, weekday=True) if self.story else "",
                 self.tr("{n} written").format(n=n) if n else "")  # fmt: skip

    def enter(self) -> None:
        """Chosen: an empty row with what is likely."""
        assert self.story is not None
        self.set_fields(self.fields())
        self.rows, self.said = [], ""
        self.show_written([])
        self.row.fill(self.propose(self.story), self.first_box())
        self._words()

    def letters(self) -> Sequence[Any]:
        """In a form letters belong to the boxes."""
        return ()

    @Slot(object)
    def _submitted(self, values: dict[str, str]) -> None:
        act = self.act(values)
        if self.correcting is None:
            self.row.do(act)
            return
        ids = self.rows[self.correcting].key.split()

        def again(farm: OpenFarm, answers: dict[str, str]) -> Done:
            from farmdesk.work.keeping import correct

            # the books still hold the row that is being corrected, so they are not asked whether they hold enough
            return correct(farm, ids, "typed wrong", lambda f: act(f, {"held": "keep"} | answers))

        self.row.do(again)

    @Slot(str)
    def _open_row(self, key: str) -> None:
        row = next(row for row in self.rows if row.key == key)
        self.row.fill(dict(row.cells))

    @Slot(object, object)
    def _wrote(self, done: Done, values: dict[str, str]) -> None:
        self.said = self.desk.words.say(done.label)
        hour = f"{self.desk.time.local(self.desk.present):%H:%M}"
        ids = done.entries[:1] if self.correcting is not None else done.entries
        row = Written(" ".join(ids), "", self.cells(done, values), self.tr("written {hour}").format(hour=hour))
        if self.correcting is not None:
            self.rows[self.correcting] = row
            self.correcting = None
        else:
            self.rows.append(row)
        self.show_written(self.rows)
        self.desk.lanes.ask(self._again(), self._next, self.desk.lanes.stray)
        self.row.next_row({}, self.first_box())

    def _again(self) -> Callable[[OpenFarm], Any]:
        ask, at = self.question(), self.desk.as_of
        return lambda farm: ask(farm, at)

    @Slot(object)
    def _next(self, story: IntakeStory) -> None:
        """The proposals of the next row, where nothing was typed in it yet."""
        self.show_story(story)
        for name, value in self.propose(story).items():
            box = self.row.box(name)
            if not box.text():
                box.setText(value)
                if box.hasFocus():
                    box.selectAll()

    def lot_typed(self) -> IntakeLot | None:
        """The lot that stands in the box, where there is one."""
        if self.story is None or not self.row.boxes:
            return None
        return self.story.lot(self.row.values().get("lot", ""))

    # beside

    def paint_lot(self, side: Side, lot: IntakeLot | None) -> None:
        """The lot's name above what stands beside its form."""
        if lot is None:
            side.title(self.tr("no lot"), "", "")
        else:
            side.title(lot.code, lot.check, self.desk.words.say(lot.method))

    def paint_side(self, ink: Ink, box: QRect) -> None:
        if self.story is None:
            return
        self.paint_beside(Side(ink, box), self.story, self.row.values())

    def kg(self, grams: float, decimals: int = 1) -> str:
        """Grams [g] as kilograms with the unit."""
        return self.desk.words.number(grams / 1000, decimals, "kg")

    def between(self, low_g: float, high_g: float) -> str:
        """A range of weights [g] in whole kilograms; ≈ where both ends are the same."""
        low, high = self.desk.words.number(low_g / 1000), self.kg(high_g, 0)
        return f"≈ {high}" if high.startswith(low) else f"{low}–{high}"

    def will_come(self, side: Side, lot: IntakeLot) -> None:
        """What the lot will come to, and what that rests on."""
        say = self.desk.words.say
        if lot.will_come is None:
            return
        side.heading(self.tr("It will come to"))
        side.sentence(f"{say(lot.will_come)}.")
        if lot.will_rest is not None:
            side.note(f"{say(lot.will_rest)}.")

    def waits(self, code_of: Callable[[IntakeLot], bool]) -> str:
        """The newest lot for which something is still to be done; empty where there is none."""
        return next((lot.code for lot in (self.story.lots if self.story else ()) if code_of(lot)), "")


def read_lot_typed(farm: OpenFarm, values: dict[str, str]) -> str:
    """The lot's code from its box. Raises NotPossible."""
    from farmdesk.work.picking import read_lot

    return read_lot(farm, values["lot"])
