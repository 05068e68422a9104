"""Farm: the season file and its registers, and what this computer remembers about its desk."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Slot
from PySide6.QtGui import QPaintEvent
from PySide6.QtWidgets import QFileDialog, QWidget

from farmdesk.desk.go import Target
from farmdesk.desk.habits import LOOKS
from farmdesk.desk.pages import Action, Desk, Page
from farmdesk.desk.tables.rows import Rows
from farmdesk.desk.theme import SEMIBOLD, SERIF, SIZES, look
from farmdesk.desk.widgets.choices import HIGH_PX as CHOICE_PX
from farmdesk.desk.widgets.choices import Choices
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.keys import HIGH_PX as KEYS_PX
from farmdesk.desk.widgets.keys import KeyRow
from farmdesk.desk.widgets.title import HEIGHT_PX, Title
from farmdesk.desk.words import LANGUAGES
from farmdesk.picture.things import Things
from farmdesk.text import Counted
from farmdesk.work.seasons import SUFFIX

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

MARGIN_PX, LEFT_PX, LINE_PX = 20, 420, 22
REGISTERS = ("blocks", "places", "vessels", "instruments", "methods", "people", "buyers")


@dataclass(frozen=True)
class FarmStory:
    """The registers, and the facts of the file."""

    things: Things
    path: Path
    rows_n: int
    lots_n: int
    copies_n: int


class FarmPage(Page):
    place = "farm"

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, parent)
        self.setWindowTitle(self.tr("Farm"))
        self.story: FarmStory | None = None
        self.register = "blocks"
        self.title = Title(desk, self)
        self.language = Choices(self.tr("Language of the screen"), self)
        self.look_choice = Choices(self.tr("Light or dark"), self)
        self.size_choice = Choices(self.tr("Letters"), self)
        self.registers = Choices(self.tr("Registers of the farm"), self)
        self.rows = Rows(self.tr("Register"), self)
        self.keys = KeyRow(self)
        self.language.chosen.connect(self._language)
        self.look_choice.chosen.connect(self._look)
        self.size_choice.chosen.connect(self._letters)
        self.registers.chosen.connect(self._register)
        self.rows.activated.connect(self._to_register)
        self._offer()

    def _offer(self) -> None:
        habits = self.desk.habits
        self.language.offer(list(LANGUAGES.items()), habits.speaks)
        names = {"system": self.tr("as the computer"), "light": self.tr("light"), "dark": self.tr("dark")}
        self.look_choice.offer([(name, names[name]) for name in LOOKS], habits.theme)
        sizes = (self.tr("as drawn"), self.tr("larger"), self.tr("largest"))
        self.size_choice.offer([(str(s), words) for s, words in zip(SIZES, sizes, strict=True)], str(habits.scale))
        names = {
            "blocks": self.tr("blocks"), "places": self.tr("beds and patio"), "vessels": self.tr("vessels"),
            "instruments": self.tr("instruments"), "methods": self.tr("methods"), "people": self.tr("people"),
            "buyers": self.tr("buyers"),
        }  # fmt: skip
        self.registers.offer([(name, names[name]) for name in REGISTERS], self.register)

    def query(self, farm: OpenFarm, at_utc_s: int) -> FarmStory:
        book = farm.picture.book
        return FarmStory(farm.things, farm.file.path, len(book.by_id), len(farm.picture.lots), len(farm.file.copies))

    def show_story(self, story: Any) -> None:
        self.story = story
        about = story.things.farm
        self.title.say(self.tr("Farm"), about.name)
        self.setAccessibleName(f"{self.title.accessibleName()}. {'. '.join(self._facts())}.")
        self._show_register()
        self.keys.show_actions(self.letters())
        self.update()

    def _facts(self) -> list[str]:
        story, number = self.story, self.desk.words.number
        if story is None:
            return []
        about = story.things.farm
        return [
            self.tr("season {code}, {zone}").format(code=about.season, zone=about.zone),
            self.tr("{n} {n:lot|lots}, {rows} {rows:row|rows}").format(
                n=Counted(story.lots_n), rows=Counted(story.rows_n, number(story.rows_n))
            ),
            self.tr("file {name}").format(name=story.path.name),
            self.tr("in {folder}").format(folder=str(story.path.parent)),
            self.tr("{n} {n:copy|copies} kept by itself").format(n=Counted(story.copies_n)),
        ]

    def letters(self) -> Sequence[Action]:
        found = [
            Action("r", self.tr("change the registers"), self._to_register),
            Action("c", self.tr("care of the data"), self._to_care),
            Action("n", self.tr("new farm"), self._to_begin),
            Action("o", self.tr("open a season"), self._ask_open),
        ]
        if self.desk.practice:
            found.append(Action("e", self.tr("end of the season"), self.desk.back_to_now))
        else:
            found.append(Action("h", self.tr("practice season"), self._to_practice))
        return found

    def _to_register(self) -> None:
        self.desk.go(Target("register", self.register))

    def _to_care(self) -> None:
        self.desk.go(Target("page", "care"))

    def _to_begin(self) -> None:
        self.desk.go(Target("page", "begin"))

    # the registers

    def _show_register(self) -> None:
        if self.story is None:
            return
        say, about = self.desk.words.number, self.story.things
        heads: list[str]
        match self.register:
            case "blocks":
                heads = [self.tr("block"), self.tr("name"), self.tr("area"), self.tr("height"), self.tr("variety"),
                         self.tr("trees"), self.tr("planted")]  # fmt: skip
                rows = [
                    [b.code, b.name_local or b.name, say(b.area_ha, 2, "ha"),
                     f"{say(b.low_m)}–{say(b.high_m, 0, 'm')}", b.variety, say(b.trees_n), str(b.planted or "")]
                    for b in about.blocks.values()
                ]  # fmt: skip
            case "places":
                heads = [self.tr("place"), self.tr("area"), self.tr("from west"), self.tr("from south"),
                         self.tr("cover"), self.tr("to cover")]  # fmt: skip
                rows = [
                    [p.code, say(p.area_m2, 1, "m²"), say(p.x_m, 1, "m"), say(p.y_m, 1, "m"), p.cover,
                     say(p.cover_min, 0, "min") if p.cover_min else ""]
                    for p in about.places.values()
                ]  # fmt: skip
            case "vessels":
                heads = [self.tr("vessel"), self.tr("kind"), self.tr("holds"), self.tr("of it usable")]
                rows = [
                    [v.code, v.kind, say(v.gross_l, 0, "L"), say(v.usable_l, 0, "L")] for v in about.vessels.values()
                ]
            case "instruments":
                heads = [self.tr("instrument"), self.tr("kind"), self.tr("check every")]
                rows = [[i.code, i.kind, say(i.check_every_d, 0, "d")] for i in about.instruments.values()]
            case "methods":
                heads = [self.tr("letter"), self.tr("version"), self.tr("method"), self.tr("hours"), self.tr("pH"),
                         self.tr("loading"), self.tr("dry within")]  # fmt: skip
                rows = [
                    [m.letter, str(m.version), m.name, self._span(m.hours_low_h, m.hours_high_h, 0),
                     self._span(m.ph_low, m.ph_high, 1), say(m.loading_kg_m2, 1, "kg/m²"),
                     say(m.dry_days_max_d, 0, "d")]
                    for m in about.methods.values()
                ]  # fmt: skip
            case "people":
                heads = [self.tr("person"), self.tr("work"), self.tr("pay")]
                rows = [[p.code, p.role, p.pay] for p in about.people.values()]
            case _:
                heads = [self.tr("buyer"), self.tr("kind")]
                rows = [[b.code, b.kind] for b in about.buyers.values()]
        self.rows.fill(heads, rows)
        self.rows.setVisible(bool(rows))
        self.update()

    def _span(self, low: float | None, high: float | None, decimals: int) -> str:
        say = self.desk.words.number
        known = [say(value, decimals) for value in (low, high) if value is not None]
        return "–".join(known)

    @Slot(str)
    def _register(self, name: str) -> None:
        self.register = name
        self._show_register()

    # this computer

    @Slot(str)
    def _language(self, value: str) -> None:
        self.desk.settle.emit(replace(self.desk.habits, language=value))

    @Slot(str)
    def _look(self, value: str) -> None:
        self.desk.settle.emit(replace(self.desk.habits, theme=value))

    @Slot(str)
    def _letters(self, value: str) -> None:
        self.desk.settle.emit(replace(self.desk.habits, scale=float(value)))

    # the file

    def _dialog(self, sentence: str) -> QFileDialog:
        asked = QFileDialog(self, sentence)
        asked.setNameFilters([self.tr("Seasons") + f" (*{SUFFIX})", self.tr("All files") + " (*)"])
        asked.setDefaultSuffix(SUFFIX.lstrip("."))
        return asked

    def _ask_open(self) -> None:
        asked = self._dialog(self.tr("Which season is to be opened?"))
        asked.setFileMode(QFileDialog.FileMode.ExistingFile)
        asked.fileSelected.connect(self.open_file)
        asked.open()

    @Slot(str)
    def open_file(self, path: str) -> None:
        """Open another season."""
        self.desk.open_season.emit(Path(path))

    def _to_practice(self) -> None:
        self.desk.open_season.emit(None)

    # room

    def lay_out(self) -> None:
        px = look().px
        left, wide, top = px(MARGIN_PX), self.width() - 2 * px(MARGIN_PX), px(8)
        self.title.setGeometry(left, top, wide, px(HEIGHT_PX))
        top += px(HEIGHT_PX) + px(10)
        y = top + px(24) + 5 * px(LINE_PX) + px(16)
        for choice in (self.language, self.look_choice, self.size_choice):
            choice.move(left, y)
            y += px(22) + px(CHOICE_PX) + px(12)
        self.keys.move(left - px(4), self.height() - px(KEYS_PX + 4))
        right = left + px(LEFT_PX) + px(32)
        self.registers.move(right, top)
        table = top + px(22) + px(CHOICE_PX) + px(10)
        self.rows.setGeometry(right, table, left + wide - right, self.height() - table - px(KEYS_PX + 12))

    def paintEvent(self, event: QPaintEvent) -> None:
        px = look().px
        with Ink(self) as ink:
            y = px(8 + HEIGHT_PX + 10 + 14)
            ink.heading(px(MARGIN_PX), y, self.tr("The season file"))
            for i, fact in enumerate(self._facts()):
                fact = ink.fitted(fact, px(LEFT_PX), 15, SEMIBOLD if i == 0 else 400)
                ink.text(px(MARGIN_PX), y + px(24 + i * LINE_PX), fact, 15, SEMIBOLD if i == 0 else 400)
            if self.rows.isHidden() and self.story is not None:
                said = self.tr("Nothing is written here yet; r begins.")
                ink.text(self.rows.x(), self.rows.y() + px(24), said, 17, family=SERIF)
            x = px(MARGIN_PX + LEFT_PX + 16)
            ink.upright(x, px(HEIGHT_PX + 16), self.height() - px(KEYS_PX + 12), 1, "hair")
