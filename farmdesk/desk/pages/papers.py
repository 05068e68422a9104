"""Papers: what can be printed for the crew and for others, a picture of it, and the file or the printer."""

from __future__ import annotations

import io
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QModelIndex, Qt, Slot
from PySide6.QtGui import QImage, QPaintEvent
from PySide6.QtWidgets import QDialog, QFileDialog, QLineEdit, QWidget

from farmdesk.clock import FarmTime
from farmdesk.desk.go import Target
from farmdesk.desk.pages import Action, Desk, Page
from farmdesk.desk.tables.rows import Rows
from farmdesk.desk.theme import look
from farmdesk.desk.widgets.choices import HIGH_PX as CHOICE_PX
from farmdesk.desk.widgets.choices import Choices
from farmdesk.desk.widgets.drawn import Drawn
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.keys import HIGH_PX as KEYS_PX
from farmdesk.desk.widgets.keys import KeyRow
from farmdesk.desk.widgets.title import HEIGHT_PX, Title
from farmdesk.desk.words import LANGUAGES, words
from farmdesk.text import Counted

if TYPE_CHECKING:
    from farmdesk.picture.things import Things
    from farmdesk.work.farm import OpenFarm

MARGIN_PX, LEFT_PX, FIELD_PX = 20, 420, 34
PRINT_PX = 2480  # A4 across at 300 dots an inch
KINDS = ("yard sheet", "night sheet", "rain list", "weigh sheet", "sack tags", "pay sheet", "lot sheet")


@dataclass(frozen=True)
class Wish:
    """Which paper, of which lot or pay week, on what, in which language ("" is the farm's for the crew, English
    for others).
    """

    kind: str = "yard sheet"
    lot: str = ""
    size: str = "a4"
    language: str = ""
    mono: bool = False
    week: str = ""  # first day of the pay week, ISO


@dataclass(frozen=True)
class Basis:
    """What a paper is drawn from: its story, and the facts of the farm that stand on every paper."""

    wish: Wish
    story: Any
    time: FarmTime
    farm: str
    practice: bool
    crew_language: str
    codes: tuple[str, ...]
    things: Things


@dataclass(frozen=True)
class Drawing:
    """A finished paper and the picture of its first page."""

    wish: Wish
    pdf: bytes
    pages_n: int
    image: QImage


def basis_of(farm: OpenFarm, wish: Wish, at_utc_s: int | None) -> Basis:
    """Ask the season for what a paper needs, at an instant [UTC s]; None is now. On the desk lane."""
    from farmdesk.work.pay_story import pay_story
    from farmdesk.work.sheet import sheet_story
    from farmdesk.work.today import today_story
    from farmdesk.work.weigh_grid import sheet_of

    lots = farm.seen(at_utc_s).lots
    codes = tuple(sorted(code for code, lot in lots.items() if lot.birth is not None))
    if wish.kind == "lot sheet":
        wish = replace(wish, lot=wish.lot or next(iter(codes), ""))
        story: Any = sheet_story(farm, wish.lot, at_utc_s) if wish.lot else None
    elif wish.kind in ("weigh sheet", "sack tags"):
        story = sheet_of(farm, None, at_utc_s)
    elif wish.kind == "pay sheet":
        story = pay_story(farm, date.fromisoformat(wish.week) if wish.week else None, at_utc_s)
    else:
        story = today_story(farm, at_utc_s)
    about = farm.things.farm
    return Basis(wish, story, farm.time, about.name, about.practice, about.language, codes, farm.things)


def make(basis: Basis) -> bytes:
    """Write the PDF; on the bench lane."""
    from farmdesk.papers.day_sheets import write_night_sheet, write_rain_list, write_yard_sheet
    from farmdesk.papers.lot_sheet import write_lot_sheet
    from farmdesk.papers.pay_sheet import write_pay_sheet
    from farmdesk.papers.sack_tags import write_sack_tags
    from farmdesk.papers.weigh_sheet import write_weigh_sheet
    from farmdesk.work.people import for_papers

    wish, file = basis.wish, io.BytesIO()
    language = wish.language or ("en" if wish.kind == "lot sheet" else basis.crew_language)
    said = for_papers(words(language), basis.things)
    if wish.kind == "lot sheet":
        write_lot_sheet(basis.story, said, file, time=basis.time, paper=wish.size, mono=wish.mono)
    else:
        crew: dict[str, Callable[..., None]] = {
            "yard sheet": write_yard_sheet, "night sheet": write_night_sheet, "rain list": write_rain_list,
            "weigh sheet": write_weigh_sheet, "sack tags": write_sack_tags, "pay sheet": write_pay_sheet,
        }  # fmt: skip
        crew[wish.kind](
            basis.story, said, file, time=basis.time, farm=basis.farm, practice=basis.practice,
            paper=wish.size,
        )  # fmt: skip
    return file.getvalue()


def draw(basis: Basis, width_px: int) -> Drawing:
    """Make the PDF and a picture [px wide] of its first page; on the bench lane."""
    from farmdesk.papers.preview import page_count

    pdf = make(basis)
    return Drawing(basis.wish, pdf, page_count(pdf), page_picture(pdf, 0, width_px))


def page_picture(pdf: bytes, page_index: int, width_px: int) -> QImage:
    """One page as a picture [px wide]."""
    from farmdesk.papers.preview import page_image

    rgba, wide, high = page_image(pdf, page_index, width_px)
    return QImage(rgba, wide, high, 4 * wide, QImage.Format.Format_RGBA8888).copy()


class Sheet(Drawn):
    """The picture of a paper, as it will lie on the table."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.image: QImage | None = None
        self.said = ""

    def show_image(self, image: QImage | None, said: str) -> None:
        """Show a page."""
        self.image, self.said = image, said
        self.told()

    def sentence(self) -> str:
        return self.said

    def paint(self, ink: Ink) -> None:
        if self.image is None:
            return
        image = self.image
        scale = min(self.width() / image.width(), self.height() / image.height())
        wide, high = round(image.width() * scale), round(image.height() * scale)
        ratio = self.devicePixelRatioF()
        shown = image.scaled(
            round(wide * ratio), round(high * ratio), Qt.AspectRatioMode.IgnoreAspectRatio,
            Qt.TransformationMode.SmoothTransformation,
        )  # fmt: skip
        shown.setDevicePixelRatio(ratio)
        ink.painter.drawImage(0, 0, shown)
        ink.frame(0, 0, wide, high, 1, "rule")


class PapersPage(Page):
    place = "papers"

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, parent)
        self.setWindowTitle(self.tr("Papers"))
        self.wish = Wish()
        self.drawing: Drawing | None = None
        self.basis: Basis | None = None
        self.title = Title(desk, self)
        self.list = Rows(self.tr("Papers"), self)
        self.lot = QLineEdit(self)
        self.lot.setAccessibleName(self.tr("Lot of the lot sheet"))
        self.size_choice = Choices(self.tr("Paper"), self)
        self.language = Choices(self.tr("Language"), self)
        self.ink_choice = Choices(self.tr("Greys"), self)
        self.sheet = Sheet(self)
        self.keys = KeyRow(self)
        self.setFocusProxy(self.list)
        self.list.selectionModel().currentRowChanged.connect(self._chosen)
        self.lot.returnPressed.connect(self._lot_typed)
        self.size_choice.chosen.connect(self._size)
        self.language.chosen.connect(self._language)
        self.ink_choice.chosen.connect(self._greys)
        self._offer()

    def _offer(self) -> None:
        names = {
            "yard sheet": (self.tr("Yard sheet"), self.tr("opening, readings, for the yard")),
            "night sheet": (self.tr("Night sheet"), self.tr("vessels and their likely ends")),
            "rain list": (self.tr("Rain list"), self.tr("the order of covering, by the tarps")),
            "weigh sheet": (self.tr("Weigh-in sheet"), self.tr("codes down, half-days across")),
            "sack tags": (self.tr("Sack tags"), self.tr("the block’s letter, the lot, the half-day")),
            "pay sheet": (self.tr("Pay sheet"), self.tr("to be signed, with notes and coins")),
            "lot sheet": (self.tr("Lot sheet"), self.tr("one lot on one page, for a buyer")),
        }
        self.names = {kind: name for kind, (name, _) in names.items()}
        self.list.fill([self.tr("paper"), self.tr("what it is")], [list(names[kind]) for kind in KINDS])
        self.list.selectRow(KINDS.index(self.wish.kind))
        self.size_choice.offer([("a4", "A4"), ("letter", "Letter")], self.wish.size)
        ways = [("", self.tr("as usual")), *LANGUAGES.items()]
        self.language.offer(ways, self.wish.language)
        self.ink_choice.offer(
            [("", self.tr("with greys")), ("mono", self.tr("black only"))], "mono" if self.wish.mono else ""
        )

    def query(self, farm: OpenFarm, at_utc_s: int) -> Basis:
        return basis_of(farm, self.wish, at_utc_s)

    def show_story(self, story: Any) -> None:
        self.basis = story
        if story.story is None:
            self.title.say(
                self.tr("Papers"), self.tr("The season has no lot yet; the sheets for the crew can be made.")
            )
            self.sheet.show_image(None, "")
            return
        wide = round(self.sheet.width() * self.devicePixelRatioF()) or 800
        self.desk.lanes.count(lambda: draw(story, wide), self._drawn, self._not_drawn)

    @Slot(object)
    def _drawn(self, drawing: Drawing) -> None:
        if self.basis is None or drawing.wish != self.basis.wish:
            return  # another one was asked for meanwhile
        self.drawing = drawing
        name = self.names[drawing.wish.kind]
        if drawing.wish.kind == "lot sheet":
            name = f"{name} {drawing.wish.lot}"
            self.lot.setText(drawing.wish.lot)
        pages = self.tr("{n} {n:page|pages}").format(n=Counted(drawing.pages_n))
        told = self.tr("{paper}: {pages}.").format(paper=name, pages=pages)
        self.title.say(self.tr("Papers"), told)
        self.setAccessibleName(told)
        self.sheet.show_image(drawing.image, told)
        self.lot.setVisible(drawing.wish.kind == "lot sheet")
        self.keys.show_actions(self.letters())
        self.lay_out()

    @Slot(object)
    def _not_drawn(self, error: Exception) -> None:
        self._refused(error)

    def letters(self) -> Sequence[Action]:
        if self.drawing is None:
            return ()
        return (
            Action("w", self.tr("write the PDF"), self._ask_file),
            Action("i", self.tr("print"), self._print),
        )

    def open_at(self, target: Target) -> None:
        if target.kind != "paper":
            return
        kind = next(
            (kind for kind in KINDS if target.value.replace("yard day sheet", "yard sheet").startswith(kind)), ""
        )
        if kind:
            lot = target.value.removeprefix("lot sheet").strip() if kind == "lot sheet" else ""
            week = target.value.removeprefix("pay sheet").strip() if kind == "pay sheet" else ""
            self._want(replace(self.wish, kind=kind, lot=lot or self.wish.lot, week=week or self.wish.week))
            self.list.selectRow(KINDS.index(kind))

    # wishes

    def _want(self, wish: Wish) -> None:
        if wish != self.wish:
            self.wish = wish
            self.refresh()

    @Slot(QModelIndex, QModelIndex)
    def _chosen(self, index: QModelIndex, before: QModelIndex) -> None:
        if index.isValid() and before.isValid():
            self._want(replace(self.wish, kind=KINDS[index.row()]))

    def _lot_typed(self) -> None:
        typed = self.lot.text().strip().upper()
        code = next(
            (c for c in (self.basis.codes if self.basis else ()) if c == typed or c.endswith(f"-{typed}")), typed
        )
        self._want(replace(self.wish, lot=code))

    def _size(self, value: str) -> None:
        self._want(replace(self.wish, size=value))

    def _language(self, value: str) -> None:
        self._want(replace(self.wish, language=value))

    def _greys(self, value: str) -> None:
        self._want(replace(self.wish, mono=value == "mono"))

    # out into the world

    def _ask_file(self) -> None:
        name = self.wish.kind.replace(" ", "-")
        if self.drawing is not None and self.drawing.wish.lot:
            name = f"{name}-{self.drawing.wish.lot}"
        asked = QFileDialog(self, self.tr("Where is the PDF to be written?"), f"{name}.pdf", "PDF (*.pdf)")
        asked.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        asked.setDefaultSuffix("pdf")
        asked.selectFile(f"{name}.pdf")
        asked.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        asked.fileSelected.connect(self.write_to)
        asked.open()

    @Slot(str)
    def write_to(self, path: str) -> None:
        """Write the paper to a file."""
        if self.drawing is None:
            return
        try:
            Path(path).write_bytes(self.drawing.pdf)
        except OSError as error:
            self.desk.tell(self.tr("{file} could not be written: {why}.").format(file=path, why=error.strerror))
            return
        self.desk.tell(self.tr("{file} was written.").format(file=path))

    def _print(self) -> None:
        from PySide6.QtPrintSupport import QPrintDialog, QPrinter

        self._printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        asked = QPrintDialog(self._printer, self)
        asked.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        asked.accepted.connect(self._print_now)
        QDialog.open(asked)  # QPrintDialog's own open asks for a slot by name

    def _print_now(self) -> None:
        """Each page as a picture at the printer's own size; the PDF stays the better way where a viewer can print."""
        from PySide6.QtGui import QPainter

        if self.drawing is None:
            return
        painter = QPainter(self._printer)
        for i in range(self.drawing.pages_n):
            if i:
                self._printer.newPage()
            image = page_picture(self.drawing.pdf, i, PRINT_PX)
            area = painter.viewport()
            size = image.size().scaled(area.size(), Qt.AspectRatioMode.KeepAspectRatio)
            painter.drawImage(area.adjusted(0, 0, size.width() - area.width(), size.height() - area.height()), image)
        painter.end()

    # room

    def lay_out(self) -> None:
        px = look().px
        left, wide, top = px(MARGIN_PX), self.width() - 2 * px(MARGIN_PX), px(8)
        self.title.setGeometry(left, top, wide, px(HEIGHT_PX))
        top += px(HEIGHT_PX) + px(10)
        side = px(LEFT_PX)
        y = top
        self.list.setGeometry(left, y, side, px(32) * (len(KINDS) + 1) + px(6))
        y += self.list.height() + px(10)
        if self.wish.kind == "lot sheet":
            self.lot.setGeometry(left, y, px(160), px(FIELD_PX))
            y += px(FIELD_PX) + px(12)
        for choice in (self.language, self.size_choice, self.ink_choice):
            choice.move(left, y)
            y += px(22) + px(CHOICE_PX) + px(12)
        self.keys.move(left - px(4), min(y, self.height() - px(KEYS_PX)))
        self.sheet.setGeometry(left + side + px(32), top, wide - side - px(32), self.height() - top - px(10))

    def paintEvent(self, event: QPaintEvent) -> None:
        px = look().px
        with Ink(self) as ink:
            x = px(MARGIN_PX) + px(LEFT_PX) + px(16)
            ink.upright(x, px(HEIGHT_PX) + px(16), self.height() - px(10), 1, "hair")
