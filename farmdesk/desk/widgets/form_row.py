"""A row of boxes in the order of the paper, and the question that may open under one of them.

The numeric pad alone suffices: Enter goes to the next box and from the last one writes, + writes and goes to
the next row, − a row back, * leaves a box not measured, / corrects the row above. Esc gives the keys back.
The row is written before its boxes are free again: keys that come meanwhile wait and are typed afterwards.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QEvent, Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QApplication, QLineEdit, QWidget

from farmdesk.desk.pages import Desk
from farmdesk.desk.theme import SEMIBOLD, look
from farmdesk.desk.widgets.guard import Guard
from farmdesk.desk.widgets.ink import Ink
from farmdesk.errors import Asked, FarmError
from farmdesk.work.changes import Done
from farmdesk.work.farm import OpenFarm

ROW_PX, BOX_PX, LABEL_PX, GAP_PX = 48, 36, 20, 8
Act = Callable[[OpenFarm, dict[str, str]], Done]  # the verb, with what was answered so far


@dataclass(frozen=True, slots=True)
class Field:
    """A box: its name, its label, its width [px] (0 takes what is left), the unit shown in it.

    `keeps` its value for the next row; `words` takes every sign; `code` takes the − inside a lot's code; a row
    without a `needed` value is no row.
    """

    name: str
    label: str
    width_px: int
    unit: str = ""
    keeps: bool = False
    words: bool = False
    code: bool = False
    needed: bool = False


class RowBox(QLineEdit):
    """One box of a row."""

    def __init__(self, field: Field, row: FormRow) -> None:
        super().__init__(row)
        self.field, self.row = field, row
        self.unit = field.unit
        self.setAccessibleName(f"{field.label} {field.unit}".strip())
        self.setFont(look().font(17, SEMIBOLD if not field.words else 400))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, typed = event.key(), event.text()
        if self.row.busy:
            self.row.waiting.append((event.key(), event.modifiers(), typed))
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.row.pressed(self, "enter")
        elif key == Qt.Key.Key_Escape:
            self.row.left.emit()
        elif typed == "-" and self.field.code and re.fullmatch(r"\d\d", self.text()) and not self.hasSelectedText():
            super().keyPressEvent(event)
        elif typed and typed in "+-*/" and (not self.field.words or (typed == "+" and not self.text())):
            self.row.pressed(self, typed)
        elif key == Qt.Key.Key_Up:
            self.row.pressed(self, "-")
        elif key == Qt.Key.Key_Down:
            self.row.pressed(self, "+" if not self.row.filled() else "down")
        else:
            super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        own = self.text().rstrip()
        if self.unit and not own[-1:].isalpha():
            with Ink(self) as ink:
                base = self.height() / 2 + look().px(5)
                ink.text(self.width() - look().px(9), base, self.unit, 14, color="ink2", align="right")


class FormRow(QWidget):
    """`submitted` carries the values; the owner answers with `do`. `wrote` carries what was done and the values."""

    submitted = Signal(object)
    wrote = Signal(object, object)
    resized = Signal()
    left = Signal()
    ended = Signal()  # + on a row without its needed values: there is no further row
    edited = Signal()
    questioned = Signal(object)  # the Question that is open; None: no more

    def __init__(self, desk: Desk, parent: QWidget, *, labels: bool = True) -> None:
        super().__init__(parent)
        self.desk, self.labels = desk, labels
        self.boxes: list[RowBox] = []
        self.busy = False
        self.waiting: list[tuple[int, Qt.KeyboardModifier, str]] = []
        self.intercept: Callable[[RowBox, str], bool] = lambda box, key: False
        self.about: dict[str, str] = {}  # what a question is about -> box
        self._answers: dict[str, str] = {}
        self._asked_key = ""
        self._act: Act | None = None
        self._last: RowBox | None = None
        self.guard = Guard(self)
        self.guard.answered.connect(self._answered)
        self.guard.went_back.connect(self._back)

    # boxes

    def set_fields(self, fields: Sequence[Field]) -> None:
        """Make the boxes anew, empty."""
        self.guard.close_up()
        for box in self.boxes:
            box.hide()
            box.deleteLater()
        self.boxes = [RowBox(field, self) for field in fields]
        for box in self.boxes:
            box.textEdited.connect(self._edited)
            box.show()
        self._last = None
        self._lay_out()

    def box(self, name: str) -> RowBox:
        """The box of a name."""
        return next(box for box in self.boxes if box.field.name == name)

    def values(self) -> dict[str, str]:
        """What stands in the boxes."""
        return {box.field.name: box.text().strip() for box in self.boxes}

    def fill(self, values: dict[str, str], focus: str = "") -> None:
        """Put values into the boxes, the others emptied; the keys go to a box, by default the first."""
        self._answers = {}
        self.guard.close_up()
        for box in self.boxes:
            box.setText(values.get(box.field.name, ""))
            box.setPlaceholderText("")
        self.focus(focus)
        self.resized.emit()

    def next_row(self, values: dict[str, str] | None = None, focus: str = "") -> None:
        """Empty the boxes for the next row, but for those that keep their value."""
        kept = {box.field.name: box.text() for box in self.boxes if box.field.keeps}
        self.fill(kept | (values or {}), focus)

    def focus(self, name: str = "") -> None:
        """Give the keys to a box."""
        box = self.box(name) if name else self.boxes[0]
        box.setFocus(Qt.FocusReason.OtherFocusReason)
        box.selectAll()

    def filled(self) -> bool:
        """Whether the needed boxes hold something."""
        return all(box.text().strip() or box.placeholderText() for box in self.boxes if box.field.needed)

    def has_keys(self) -> bool:
        """Whether a box of it, or its question, has the keys."""
        held = QApplication.focusWidget()
        return held is not None and self.isAncestorOf(held)

    @Slot()
    def _edited(self) -> None:
        self._answers = {}  # another number is another question
        if not self.guard.isHidden():
            self._close()
        self.edited.emit()

    # keys

    def pressed(self, box: RowBox, key: str) -> None:
        """A key of the row's own was pressed in a box."""
        self._last = box
        if self.intercept(box, key):
            return
        at = self.boxes.index(box)
        if key == "enter" and at + 1 < len(self.boxes):
            self.focus(self.boxes[at + 1].field.name)
        elif key in ("enter", "+"):
            if self.filled():
                self.submitted.emit(self.values())
            elif key == "+":
                self.ended.emit()
            else:
                self.focus(next(b.field.name for b in self.boxes if b.field.needed and not b.text().strip()))
        elif key == "*":
            box.clear()
            box.setPlaceholderText(self.tr("not meas."))
            self._edited()
            if at + 1 < len(self.boxes):
                self.focus(self.boxes[at + 1].field.name)
        elif key == "-" and at > 0:
            self.focus(self.boxes[at - 1].field.name)

    # writing

    def do(self, act: Act) -> None:
        """Run a verb with what was answered; a question or a refusal opens under its box."""
        why = self.desk.why_not_write()
        if why:
            self.refuse(why)
            return
        self._act, self.busy = act, True
        answers = dict(self._answers)
        self.desk.lanes.do(lambda farm: act(farm, answers), self._written, self.trouble)

    @Slot(object)
    def _written(self, done: Done) -> None:
        self.busy, self._answers = False, {}
        self._close()
        self.wrote.emit(done, self.values())
        self._type_waiting()

    def _type_waiting(self) -> None:
        """Type what came while the row was being written."""
        waiting, self.waiting = self.waiting, []
        for n, (key, modifiers, text) in enumerate(waiting):
            box = QApplication.focusWidget()
            if box is None or self.busy:
                self.waiting += waiting[n:]
                return
            QApplication.sendEvent(box, QKeyEvent(QEvent.Type.KeyPress, key, modifiers, text))

    @Slot(object)
    def trouble(self, error: Exception) -> None:
        """Ask or say what a verb came back with."""
        self.busy, self.waiting = False, []  # keys typed ahead are no answer to a question
        if isinstance(error, Asked):
            question = error.question
            self._asked_key = question.key
            self._point(question.about)
            self.guard.resize(self.width(), self.guard.height())
            self.guard.ask(question, self.desk.words, self._notch())
            self.questioned.emit(question)
            self.resized.emit()
        elif isinstance(error, FarmError):
            say = self.desk.words.say
            self.refuse(" ".join(say(text) for text in (error.text, error.hint) if text))
        else:
            self.desk.lanes.stray(error)

    def refuse(self, sentence: str, about: str = "") -> None:
        """Say why it cannot be, under a box."""
        self._point(about)
        self.guard.resize(self.width(), self.guard.height())
        self.guard.refuse(sentence, self._notch())
        self.resized.emit()

    def _point(self, about: str) -> None:
        name = self.about.get(about, about)
        found = next((box for box in self.boxes if box.field.name == name), None)
        self._last = found or self._last or self.boxes[-1]

    def _notch(self) -> int:
        return self._last.geometry().center().x() if self._last else look().px(40)

    @Slot(str)
    def _answered(self, value: str) -> None:
        self._answers[self._asked_key] = value
        self._close()
        if self._last is not None:
            self._last.setFocus(Qt.FocusReason.OtherFocusReason)
        if self._act is not None:
            self.do(self._act)

    @Slot()
    def _back(self) -> None:
        self._close()
        (self._last or self.boxes[0]).setFocus(Qt.FocusReason.OtherFocusReason)
        (self._last or self.boxes[0]).selectAll()

    def _close(self) -> None:
        self.guard.close_up()
        self.questioned.emit(None)
        self.resized.emit()

    # room

    def height_px(self) -> int:
        """How much room it takes now."""
        if self.isHidden():
            return 0
        px = look().px
        return (px(LABEL_PX) if self.labels else 0) + px(ROW_PX) + self.guard.height_px()

    def spots(self) -> list[tuple[str, int, int]]:
        """Name, left edge and width [px] of each box."""
        return [(box.field.name, box.x(), box.width()) for box in self.boxes]

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._lay_out()

    def _lay_out(self) -> None:
        px = look().px
        x, top = 0, (px(LABEL_PX) if self.labels else 0) + px((ROW_PX - BOX_PX) // 2)
        gaps = px(GAP_PX) * len(self.boxes)
        fixed = sum(px(box.field.width_px) for box in self.boxes)
        tight = min(1.0, max(1, self.width() - gaps) / fixed) if fixed else 1.0  # larger letters: narrower boxes
        for box in self.boxes:
            wide = int(px(box.field.width_px) * tight) or max(px(60), self.width() - fixed - gaps)
            box.setGeometry(x, top, wide, px(BOX_PX))
            x += wide + px(GAP_PX)
        self.guard.resize(self.width(), self.guard.height())
        self.guard.setGeometry(0, top + px(BOX_PX) + 1, self.width(), self.guard.height_px())

    def paintEvent(self, event: QPaintEvent) -> None:
        if not self.labels:
            return
        with Ink(self) as ink:
            for box in self.boxes:
                label = ink.fitted(box.field.label, box.width() + look().px(GAP_PX - 4), 14)
                ink.text(box.x() + look().px(2), look().px(15), label, 14, color="ink2")
