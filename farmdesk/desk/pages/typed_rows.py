"""Rows that are typed into a register: corrected in their place, taken out by emptying their first box."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QRect, Slot

from farmdesk.desk.pages.short_form import Side
from farmdesk.desk.widgets.form_row import Act, Field, RowBox
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.rows_pane import NARROW_PX, RowsPane, Written
from farmdesk.errors import FarmError
from farmdesk.units import read_number
from farmdesk.work.changes import Done

if TYPE_CHECKING:
    from farmdesk.desk.pages.registers import RegistersPage
    from farmdesk.work.farm import OpenFarm


class TypedPane(RowsPane):
    """Rows that are typed, corrected in their place, and taken out by emptying their first box.

    Subclasses give `fields`, `act`, `out` and show their story with `show_rows`.
    """

    side_px = NARROW_PX

    def __init__(self, page: RegistersPage, register: str, *, lead_px: int = 0, lead: str = "") -> None:
        super().__init__(page.desk, page, lead_px=lead_px, lead=lead)
        self.page, self.register = page, register
        self.story: Any = None
        self.said = ""
        self._fresh = True  # the open row waits for its proposal
        self.row.submitted.connect(self._submitted)
        self.row.wrote.connect(self._wrote)
        self.row.left.connect(self._left)
        self.row.ended.connect(page.leave_form)
        self.row.edited.connect(self.update)
        self.correct.connect(self._open_row)

    # what a register is

    def question(self) -> Callable[[OpenFarm, int], Any]:
        """What to ask of the season; made on the window's thread, run on the desk lane, so it keeps no widget."""
        raise NotImplementedError

    def fields(self) -> Sequence[Field]:
        """Its boxes."""
        raise NotImplementedError

    def act(self, values: dict[str, str], key: str) -> Act:
        """The verb that writes a row; `key` is the row that is changed."""
        raise NotImplementedError

    def out(self, key: str) -> Act:
        """The verb that takes a row out."""
        raise NotImplementedError

    def proposed(self) -> dict[str, str]:
        """What the next row most likely says."""
        return {}

    def typed_of(self, key: str) -> dict[str, str]:
        """A row as a hand would type it."""
        raise NotImplementedError

    def has_written(self, done: Done) -> None:
        """Something was written."""

    # showing

    def show_rows(self, rows: Sequence[Written]) -> None:
        """These rows are on disk; what is being typed stays."""
        if not self.row.boxes:
            self.set_fields(self.fields())
            self.plain = frozenset(box.field.name for box in self.row.boxes if box.field.words)
        self.show_written(rows)
        if self._fresh and self.correcting is None:
            self._fresh = False
            for name, value in self.proposed().items():
                box = self.row.box(name)
                if not box.text():
                    box.setText(value)
                    if box.hasFocus():
                        box.selectAll()
        self.update()

    def keys(self) -> Sequence[tuple[str, str]]:
        return (
            (self.tr("Enter"), self.tr("next box, the last one writes")), ("+", self.tr("writes")), ("↑ ↓", self.tr("walk the rows")),
            (self.tr("empty first box"), self.tr("takes the row out")), (self.tr("Esc"), self.tr("leave")),
        )  # fmt: skip

    def enter(self) -> None:
        """The keys go into the boxes."""
        self.at = None
        self.row.focus()

    # typing

    def _pressed(self, box: RowBox, key: str) -> bool:
        """A known code opens its row; an opened row without its code is taken out."""
        first = self.row.boxes[0]
        if key in ("enter", "+") and self.correcting is not None and not first.text().strip():
            self.row.do(self.out(self.written[self.correcting].key))
            return True
        if key == "enter" and box is first and self.correcting is None and self.at is None:
            wanted = first.text().strip().casefold()
            known = [i for i, row in enumerate(self.written) if self.code_of(row).casefold() == wanted]
            if wanted and known:
                self.begin_correction(known[0])
                return True
        return super()._pressed(box, key)

    def code_of(self, row: Written) -> str:
        """What opens a row when it is typed into the first box; empty where nothing does."""
        return row.key

    @Slot(object)
    def _submitted(self, values: dict[str, str]) -> None:
        key = self.written[self.correcting].key if self.correcting is not None else ""
        self.row.do(self.act(values, key))

    @Slot(str)
    def _open_row(self, key: str) -> None:
        self.row.fill(self.typed_of(key))

    @Slot(object, object)
    def _wrote(self, done: Done, values: dict[str, str]) -> None:
        self.correcting, self._fresh = None, True
        self.said = self.desk.words.say(done.label)
        self.row.next_row({})
        self.has_written(done)
        self.page.refresh()

    @Slot()
    def _left(self) -> None:
        if self.correcting is not None:
            self.correcting, self._fresh = None, True
            self.row.next_row({})
            self.page.refresh()
        self.at = None
        self.lay_out()
        self.page.leave_form()

    # beside

    def paint_side(self, ink: Ink, box: QRect) -> None:
        if self.story is not None:
            self.paint_beside(Side(ink, box), self.row.values())

    def paint_beside(self, side: Side, values: dict[str, str]) -> None:
        """What the rows come to."""

    def number_in(self, values: dict[str, str], name: str) -> float | None:
        """A typed number; None where there is none yet."""
        try:
            return read_number(values.get(name, ""), answers={"comma": "decimal"}).value
        except FarmError:
            return None
