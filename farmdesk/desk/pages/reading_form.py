"""One reading of one lot, in the order of the paper: a number typed on the lot's page opens it, Enter writes it.

Enter writes the row; + goes to the next box, − to the one before, * leaves a box not measured, / corrects
the row just written, Esc leaves.
What was typed stays until it is written. A question stands under its box, once.
"""

from __future__ import annotations

from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QLineEdit, QWidget

from farmdesk.desk.pages import Desk
from farmdesk.desk.theme import BOLD, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.guard import Guard
from farmdesk.desk.widgets.ink import Ink
from farmdesk.errors import Asked, FarmError, NotPossible
from farmdesk.text import N_, Listing
from farmdesk.units import read_number
from farmdesk.work.changes import Done, Hand
from farmdesk.work.drying import read_at_bed
from farmdesk.work.farm import OpenFarm
from farmdesk.work.fermenting import read_ferment
from farmdesk.work.stories import LotStory

HEAD_PX, LABEL_PX, BOX_PX, FOOT_PX = 26, 20, 36, 26
ABOUT = {"meter": "1", "tray": "tray", "bean_c": "bean", "ph": "ph", "mass_c": "mass", "brix": "brix", "bed": "bed"}


class Box(QLineEdit):
    """A box of the row. `typed_away` carries what cannot be a reading and so must be a place to go."""

    entered = Signal()
    moved_on = Signal(int)
    typed_away = Signal(str)
    left = Signal()

    def __init__(self, name: str, width_px: int, parent: QWidget) -> None:
        super().__init__(parent)
        self.name, self.width_px = name, width_px
        self.alone = False  # nothing else of the row is filled, so letters may still mean a place to go

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, typed = event.key(), event.text()
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.entered.emit()
        elif key == Qt.Key.Key_Escape:
            self.left.emit()
        elif self.name == "note":
            super().keyPressEvent(event)
        elif self.alone and (typed.isalpha() or (typed == "-" and len(self.text()) == 2 and self.text().isdigit())):
            self.typed_away.emit(self.text() + typed)
        elif typed == "+":
            self.moved_on.emit(1)
        elif typed == "-":
            self.moved_on.emit(-1)
        elif typed == "*":
            self.clear()
            self.setPlaceholderText(self.tr("not meas."))
            self.moved_on.emit(1)
        else:
            super().keyPressEvent(event)


@dataclass(frozen=True, slots=True)
class WrittenRow:
    """What was written last, shown without boxes."""

    values: dict[str, str]
    at: str
    back: Callable[[OpenFarm], Done] | None


class ReadingForm(QWidget):
    """Hidden until a number is typed. `resized`: it takes more or less room now; `closed`: the keys go back."""

    resized = Signal()
    closed = Signal()
    wrote = Signal()
    questioned = Signal(str, object)  # the box's name and the number [%, pH] that is asked about; None: no more
    typed_away = Signal(str)

    def __init__(self, desk: Desk, parent: QWidget) -> None:
        super().__init__(parent)
        self.desk = desk
        self.story: LotStory | None = None
        self.written: WrittenRow | None = None
        self.boxes: list[Box] = []
        self._answers: dict[str, str] = {}
        self._asked_key = ""
        self._last: Box | None = None
        self._busy = False
        self.guard = Guard(self)
        self.guard.answered.connect(self._answered)
        self.guard.went_back.connect(self._keys_to_box)
        self.hide()

    # what stands in it

    def open_for(self, story: LotStory, typed: str = "") -> None:
        """Open the row for a lot; the typed number stands in the box it is most likely meant for."""
        self.story, self.written = story, None
        self._answers = {}
        self.guard.close_up()
        self._make_boxes()
        first = self._box("1" if story.sensible == "moisture" else "ph")
        first.setText(typed)
        self._edited()
        self.setAccessibleName(self.tr("Reading of {lot}").format(lot=story.card.code))
        self.show()
        first.setFocus(Qt.FocusReason.OtherFocusReason)
        self.resized.emit()

    def names(self) -> list[tuple[str, str, int]]:
        """The boxes in the order of the paper: name, label, width [px]; 0 takes what is left."""
        assert self.story is not None
        if self.story.sensible == "ph":
            return [
                ("vessel", self.tr("vessel"), 72), ("ph", self.tr("pH"), 88), ("mass", self.tr("mass °C"), 88),
                ("brix", self.tr("°Bx"), 88), ("note", self.tr("note"), 0),
            ]  # fmt: skip
        tray = self.story.trays[0] if self.story.trays else ""
        tray_label = self.tr("tray {tray}, g").format(tray=tray) if tray else self.tr("tray g")
        return [
            ("bed", self.tr("bed"), 72), ("1", "1", 84), ("2", "2", 84), ("3", "3", 84), ("tray", tray_label, 92),
            ("bean", self.tr("bean °C"), 76), ("note", self.tr("note"), 0),
        ]  # fmt: skip

    def _make_boxes(self) -> None:
        for box in self.boxes:
            box.deleteLater()
        self.boxes = []
        for name, label, width in self.names():
            box = Box(name, width, self)
            box.setAccessibleName(label)
            box.setFont(look().font(17, SEMIBOLD if name != "note" else 400))
            box.entered.connect(self.write)
            box.left.connect(self.close_row)
            box.moved_on.connect(self._move_on)
            box.typed_away.connect(self._typed_away)
            box.textEdited.connect(self._edited)
            box.show()
            self.boxes.append(box)
        assert self.story is not None
        place = self._box("vessel" if self.story.sensible == "ph" else "bed")
        if self.story.sensible == "ph":
            place.setText(self.story.vessels[0] if self.story.vessels else "")
        else:
            place.setPlaceholderText(self.tr("all"))
        self._lay_out()

    def _box(self, name: str) -> Box:
        return next(box for box in self.boxes if box.name == name)

    def value(self, name: str) -> str:
        """What stands in a box."""
        return next((box.text().strip() for box in self.boxes if box.name == name), "")

    # keys

    @Slot()
    def _edited(self) -> None:
        filled = [box for box in self.boxes if box.text().strip() and box.name not in ("vessel", "bed")]
        for box in self.boxes:
            box.alone = len(filled) <= 1 and box.name in ("1", "ph") and (not filled or filled == [box])
        self._answers = {}  # another number is another question

    @Slot(int)
    def _move_on(self, by: int) -> None:
        box = self.sender()
        assert isinstance(box, Box)  # only boxes are connected here
        at = self.boxes.index(box)
        target = self.boxes[min(max(at + by, 0), len(self.boxes) - 1)]
        target.setFocus(Qt.FocusReason.OtherFocusReason)
        target.selectAll()

    @Slot(str)
    def _typed_away(self, text: str) -> None:
        self.close_row()
        self.typed_away.emit(text)

    @Slot()
    def _keys_to_box(self) -> None:
        self.questioned.emit("", None)
        box = self._last or self.boxes[0]
        box.setFocus(Qt.FocusReason.OtherFocusReason)
        box.selectAll()
        self.resized.emit()

    def correct(self, story: LotStory) -> None:
        """Strike the row just written and lay its values out again, to be put right."""
        row = self.written
        if row is None or row.back is None:
            return
        self.desk.lanes.do(row.back)
        self.open_for(story)
        for box in self.boxes:
            box.setText(row.values.get(box.name, ""))
        self._edited()

    @Slot()
    def close_row(self) -> None:
        """Leave without writing."""
        self.guard.close_up()
        self.questioned.emit("", None)
        self.hide()
        self.closed.emit()
        self.resized.emit()

    # writing

    @Slot()
    def write(self) -> None:
        """Write the row; a question or a refusal comes back to it."""
        if self._busy or self.story is None:
            return
        focus = next((box for box in self.boxes if box.hasFocus()), None)
        self._last = focus or self._last or self.boxes[1]
        why = self.desk.why_not_write()
        if why:
            self._refuse(why, "")
            return
        self._busy = True
        self.desk.lanes.do(self._act(), self._written, self._refused)

    def _act(self) -> Callable[[OpenFarm], Done]:
        story, at_utc_s = self.story, self.desk.as_of
        assert story is not None
        hand = Hand(note=self.value("note"), answers=dict(self._answers))
        values = {box.name: box.text().strip() for box in self.boxes}
        code = story.card.code
        if story.sensible == "ph":

            def read_mass(farm: OpenFarm) -> Done:
                place = _one_of(values["vessel"].upper(), story.vessels, code)
                return read_ferment(
                    farm, code, place, at_utc_s, ph=values["ph"], mass_c=values["mass"], brix=values["brix"], hand=hand
                )  # fmt: skip

            return read_mass

        def read_bed(farm: OpenFarm) -> Done:
            place = _one_of(values["bed"], story.beds, code) if values["bed"] else ""
            return read_at_bed(
                farm, code, at_utc_s, place=place, meter=[values[n] for n in ("1", "2", "3")],
                tray=story.trays[0] if story.trays else "", tray_gross=values["tray"], bean_c=values["bean"], hand=hand,
            )  # fmt: skip

        return read_bed

    @Slot(object)
    def _written(self, done: Done) -> None:
        self._busy = False
        local = self.desk.time.local(self.desk.as_of)
        values = {box.name: box.text().strip() for box in self.boxes}
        self.written = WrittenRow(values, f"{local:%H:%M}", done.inverse)
        for box in self.boxes:
            box.hide()
        self.setAccessibleName(self.tr("written {hour}").format(hour=self.written.at))
        self.closed.emit()
        self.resized.emit()
        self.update()
        self.wrote.emit()

    @Slot(object)
    def _refused(self, error: Exception) -> None:
        self._busy = False
        if isinstance(error, Asked):
            question = error.question
            self._asked_key = question.key
            self._point(question.about)
            self.guard.ask(question, self.desk.words, self._notch())
            self.questioned.emit(ABOUT.get(question.about, ""), _number_in(self._last.text()) if self._last else None)
            self.resized.emit()
        elif isinstance(error, FarmError):
            say = self.desk.words.say
            self._refuse(" ".join(say(text) for text in (error.text, error.hint) if text), "")
        else:
            self.desk.lanes.stray(error)

    def _refuse(self, sentence: str, about: str) -> None:
        self._point(about)
        self.guard.refuse(sentence, self._notch())
        self.resized.emit()

    def _point(self, about: str) -> None:
        """Let the notch point to the box a question is about; of three repeats, to the highest."""
        name = ABOUT.get(about, "")
        if name == "1":
            name = max(("1", "2", "3"), key=lambda n: _number_in(self.value(n)) or 0.0)
        found = next((box for box in self.boxes if box.name == name), None)
        self._last = found or self._last

    def _notch(self) -> int:
        return self._last.geometry().center().x() if self._last else look().px(40)

    @Slot(str)
    def _answered(self, value: str) -> None:
        self._answers[self._asked_key] = value
        self.questioned.emit("", None)
        self.resized.emit()
        self.write()

    # room

    def height_px(self) -> int:
        """How much room the row takes now."""
        if self.isHidden():
            return 0
        px = look().px
        foot = 0 if not self.guard.isHidden() else px(FOOT_PX)
        return px(HEAD_PX + LABEL_PX + BOX_PX) + self.guard.height_px() + foot

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._lay_out()

    def _lay_out(self) -> None:
        px = look().px
        x, top = 0, px(HEAD_PX + LABEL_PX)
        for box in self.boxes:
            width = px(box.width_px) if box.width_px else max(px(90), self.width() - x)
            box.setGeometry(x, top, width, px(BOX_PX))
            x += width + px(8)
        self.guard.resize(self.width(), self.guard.height())
        self.guard.setGeometry(0, top + px(BOX_PX) + 1, self.width(), self.guard.height_px())

    def paintEvent(self, event: QPaintEvent) -> None:
        if self.story is None:
            return
        px = look().px
        with Ink(self) as ink:
            x = ink.text(0, px(17), self.tr("Reading"), 18, SEMIBOLD, family=SERIF)
            last = self.desk.words.say(self.story.last_reading) if self.story.last_reading else self.tr("none yet")
            ink.text(x + px(9), px(17), last, 14, color="ink2")
            for box in self.boxes:
                ink.text(box.x() + px(2), px(HEAD_PX + LABEL_PX - 6), box.accessibleName(), 14, color="ink2")
            if self.written is not None:
                self._paint_written(ink)
            elif self.guard.isHidden():
                keys = self.tr("Enter writes   + next box   − box before   * not measured   Esc leaves")
                ink.text(0, px(HEAD_PX + LABEL_PX + BOX_PX + 18), keys, 14, color="ink2")

    def _paint_written(self, ink: Ink) -> None:
        """A written row has no boxes any more: an underline, and when it was written."""
        px = look().px
        assert self.written is not None
        base = px(HEAD_PX + LABEL_PX + 24)
        for box in self.boxes:
            value = self.written.values.get(box.name, "")
            if box.name == "note":
                said = self.tr("written {hour}; / corrects, Ctrl+Z takes it back").format(hour=self.written.at)
                ink.text(box.x() + px(8), base, f"{value}  {said}".strip(), 14, color="ink2")
            else:
                if value:
                    ink.text(box.x() + px(8), base, value, 17, BOLD)
                ink.level(box.x(), box.x() + box.width(), base + px(9), 1, "rule")


def _number_in(typed: str) -> float | None:
    with suppress(FarmError):
        return read_number(typed).value
    return None


def _one_of(typed: str, places: tuple[str, ...], lot: str) -> str:
    """A place as typed, where the lot lies. Raises NotPossible elsewhere."""
    found = next((place for place in places if place.casefold() == typed.casefold()), None)
    if found is None:
        raise NotPossible(
            N_("reading", "{lot} does not lie at {typed}; it lies at {places}.", lot=lot, typed=typed or "?",
               places=Listing(places, " "))
        )  # fmt: skip
    return found
