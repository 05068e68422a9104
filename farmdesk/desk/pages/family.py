"""Family: where a lot's coffee came from and where it went, with its shares; portions merged and split."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QKeyEvent, QPaintEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.go import Target
from farmdesk.desk.pages import Action, Desk, Page
from farmdesk.desk.pages.sheet_head import instants
from farmdesk.desk.theme import SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.form_row import Act, Field, FormRow
from farmdesk.desk.widgets.ink import Ink
from farmdesk.desk.widgets.keys import HIGH_PX as KEYS_PX
from farmdesk.desk.widgets.keys import KeyRow
from farmdesk.desk.widgets.title import HEIGHT_PX as TITLE_PX
from farmdesk.desk.widgets.title import Title
from farmdesk.desk.widgets.tree import Tree
from farmdesk.errors import NotPossible
from farmdesk.picture.entries import RETAINED, SAMPLE
from farmdesk.text import N_, Day
from farmdesk.work.changes import Done, Hand
from farmdesk.work.family_story import FamilyStory, mixed_words

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

MARGIN_PX, SIDE_PX, GUTTER_PX, LINE_PX = 20, 392, 32, 22
PARTS = 4


class FamilyPage(Page):
    place = "lots"

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, parent)
        self.setWindowTitle(self.tr("Family"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.code, self.form, self.said = "", "", ""
        self.story: FamilyStory | None = None
        self.title = Title(desk, self)
        self.tree = Tree(desk, self)
        self.row = FormRow(desk, self)
        self.row.hide()
        self.keys = KeyRow(self)
        self.setFocusProxy(self.tree)
        self.row.submitted.connect(self._submitted)
        self.row.wrote.connect(self._wrote)
        self.row.left.connect(self.close_form)
        self.row.ended.connect(self.close_form)
        self.row.resized.connect(self.lay_out)

    # asking and showing

    def query(self, farm: OpenFarm, at_utc_s: int) -> FamilyStory | None:
        from farmdesk.work.family_story import family_story

        at, _ = instants(self.desk)
        codes = sorted(farm.seen(at).lots)
        code = self.code or (codes[-1] if codes else "")
        return family_story(farm, code, at) if code else None

    def show_story(self, story: FamilyStory | None) -> None:
        self.story = story
        if story is None:
            self.title.say(self.tr("Family"), self.tr("No lot has begun."))
            return
        self.code = story.code
        say = self.desk.words.say
        self.title.say(story.code, f"{say(story.headline)}; {say(story.status)}.", small=story.check)
        self.setAccessibleName(self.title.accessibleName())
        self.tree.show_story(story)
        self.keys.show_actions(self.letters())
        self.lay_out()
        self.update()

    def open_at(self, target: Target) -> None:
        if target.kind == "family" and target.value and target.value != self.code:
            self.code = target.value
            self.close_form()
            self.refresh()

    def letters(self) -> Sequence[Action]:
        return [
            Action("o", self.tr("the lot"), self._lot), Action("j", self.tr("merge"), self._merge),
            Action("k", self.tr("split"), self._split), Action("i", self.tr("next forebear"), self._climb),
        ]  # fmt: skip

    def _lot(self) -> None:
        self.desk.go(Target("lot", self.code))

    def _climb(self) -> None:
        """The family of the next lot of this one's family."""
        story = self.story
        if story is None:
            return
        codes = list(dict.fromkeys([*(s.code for s in story.parents), *(s.code for s in story.children)]))
        if codes:
            self.desk.go(Target("family", codes[0]))

    # forms

    def _open(self, form: str, fields: Sequence[Field], values: dict[str, str], focus: str) -> None:
        why = self.desk.why_not_write()
        if why:
            self.desk.tell(why)
            return
        self.form = form
        self.row.set_fields(fields)
        self.row.show()
        self.row.fill(values, focus)
        self.lay_out()

    def _merge(self) -> None:
        heaps = self._places(self.code)
        fields = [
            Field("lot1", self.tr("lot"), 100, code=True, needed=True), Field("at1", self.tr("lies at"), 130, needed=True),
            Field("lot2", self.tr("with lot"), 100, code=True, needed=True), Field("at2", self.tr("lies at"), 130, needed=True),
            Field("to", self.tr("goes to"), 90, needed=True), Field("alias", self.tr("also called"), 0, words=True),
        ]  # fmt: skip
        self._open("merge", fields, {"lot1": self.code, "at1": " ".join(heaps)}, "lot2")

    def _split(self) -> None:
        heaps = self._places(self.code)
        fields = [Field("from", self.tr("from"), 74, needed=True)]
        for n in range(1, PARTS + 1):
            fields.append(Field(f"to{n}", self.tr("to"), 54, needed=n == 1))
            fields.append(Field(f"kg{n}", self.tr("kg"), 84, needed=n == 1))
        fields.append(Field("own", self.tr("own lots? 1"), 96))
        self._open("split", fields, {"from": heaps[0] if heaps else ""}, "from")

    def _places(self, code: str) -> list[str]:
        """Where the lot lies on the farm; what is kept back or a sample is not offered."""
        heaps = self.story.heaps if self.story else ()
        return [heap.place for heap in heaps if heap.lot == code and heap.place not in (RETAINED, SAMPLE)]

    @Slot()
    def close_form(self) -> None:
        """Put the form away; the drawing has the keys."""
        self.row.hide()
        self.form = ""
        self.lay_out()
        self.tree.setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot(object)
    def _submitted(self, values: dict[str, str]) -> None:
        self.row.do(self._act_merge(values) if self.form == "merge" else self._act_split(values))

    def _act_merge(self, values: dict[str, str]) -> Act:
        def merge(farm: OpenFarm, answers: dict[str, str]) -> Done:
            from farmdesk.work.family_story import heap_name
            from farmdesk.work.picking import read_lot
            from farmdesk.work.portioning import merge as join

            parts = {}
            for n in (1, 2):
                code = read_lot(farm, values[f"lot{n}"])
                parts[code] = [heap_name(farm, code, place) for place in values[f"at{n}"].split()]
            to = heap_name(farm, next(iter(parts)), values["to"])
            hand = Hand("processor", answers=answers)
            return join(farm, parts, to, farm.written_now(), alias=values["alias"], hand=hand)

        return merge

    def _act_split(self, values: dict[str, str]) -> Act:
        code = self.code

        def split(farm: OpenFarm, answers: dict[str, str]) -> Done:
            from farmdesk.work.family_story import heap_name
            from farmdesk.work.portioning import split as cut

            children: dict[str, str] = {}
            for n in range(1, PARTS + 1):
                typed, weight = values[f"to{n}"], values[f"kg{n}"]
                if not typed and not weight:
                    continue
                place = heap_name(farm, code, typed)
                if not weight or place in children:
                    raise NotPossible(N_("family", "Each place stands there once, with its weight."))
                children[place] = weight
            hand = Hand("processor", "scale-1", answers=answers)
            source = heap_name(farm, code, values["from"])
            return cut(farm, code, source, children, farm.written_now(), own_lots=values["own"] == "1", hand=hand)

        return split

    @Slot(object, object)
    def _wrote(self, done: Done, values: dict[str, str]) -> None:
        self.said = self.desk.words.say(done.label)
        if self.form == "merge" and done.lot:
            self.code = done.lot
        self.close_form()
        self.refresh()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and not self.row.isHidden():
            self.close_form()
        else:
            event.ignore()

    # room and painting

    @Slot()
    def lay_out(self) -> None:
        px = look().px
        left, wide = px(MARGIN_PX), self.width() - 2 * px(MARGIN_PX)
        self.title.setGeometry(left, px(8), wide, px(TITLE_PX))
        top, bottom = px(TITLE_PX + 20), self.height() - px(KEYS_PX + 8)
        self.keys.move(left, self.height() - px(KEYS_PX + 4))
        form = self.row.height_px()
        tree = wide - px(SIDE_PX + GUTTER_PX)
        if form:
            self.row.setGeometry(left, bottom - form, tree, form)
        high = min(bottom - top - form - px(50), px(430))
        self.tree.setGeometry(left, top + px(34), tree, max(px(80), high))
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        story, px = self.story, look().px
        with Ink(self) as ink:
            if story is None:
                return
            left, top = px(MARGIN_PX), px(TITLE_PX + 20)
            ink.heading(left, top + px(18), self.tr("Came from, went to"), self.tr("bands as wide as their share"))
            if self.said:
                ink.text(left + self.tree.width(), top + px(18), f"{self.said}.", 15, family=SERIF, align="right")
            x = self.width() - px(MARGIN_PX + SIDE_PX)
            ink.upright(x - px(GUTTER_PX // 2), top, self.height() - px(KEYS_PX + 8), 1, "hair")
            self._side(ink, story, x, self.width() - px(MARGIN_PX), top)

    def _side(self, ink: Ink, story: FamilyStory, x: float, right: float, y: float) -> None:
        px, words, floor = look().px, self.desk.words, self.height() - look().px(KEYS_PX + 10)
        ink.heading(x, y + px(18), self.tr("Blocks"), self.tr("shares sum to 100 %"))
        y += px(20)
        for share, block in story.blocks:
            y += px(LINE_PX)
            end = ink.text(x, y, share.code, 15, SEMIBOLD)
            name = f"{block.name}, {block.variety}" if block else ""
            ink.text(end + px(10), y, ink.fitted(name, px(230), 15), 15)
            ink.text(right, y, f"{words.number(100 * share.share_frac, 1)} %", 15, SEMIBOLD, align="right")
        y = self._picked(ink, story, x, right, y + px(12), floor)
        several = [mixed for mixed in story.mixed if len(mixed.fillings) > 1]
        for mixed in several[:3]:
            y += px(14)
            ink.level(x, right, y, 1, "hair")
            y = ink.wrapped(x, y + px(24), right - x, f"{words.say(mixed_words(mixed))}.", 15, SEMIBOLD, family=SERIF)
            for filling in mixed.fillings:
                at = words.say(self.desk.time.night(filling.at_utc_s))
                said = " ".join(f"{b} {words.number(100 * s)} %" for b, s in filling.shares.items())
                ink.text(x, y, self.tr("filled {at}").format(at=at), 15)
                ink.text(right, y, f"{words.number(filling.grams / 1000, 1, 'kg')}  {said}", 15, align="right")
                y += px(LINE_PX)
            y -= px(LINE_PX)
        if y + px(80) < floor:
            self._elsewhere(ink, story, x, right, y + px(14), floor)

    def _picked(self, ink: Ink, story: FamilyStory, x: float, right: float, y: float, floor: float) -> float:
        px, words = look().px, self.desk.words
        if not story.picked:
            return y
        ink.level(x, right, y, 1, "hair")
        ink.heading(x, y + px(24), self.tr("Picked"))
        y += px(26)
        for lot, day, sums in story.picked[:7]:
            y += px(LINE_PX)
            if y > floor:
                break
            end = ink.text(x, y, words.say(Day(day, weekday=True)), 15)
            if lot != story.code:
                ink.text(end + px(10), y, lot, 15, color="ink2")
            said = "  ".join(f"{b} {words.number(g / 1000, 1)}" for b, g in sums.items())
            ink.text(right, y, f"{said} kg", 15, align="right")
        return y

    def _elsewhere(self, ink: Ink, story: FamilyStory, x: float, right: float, y: float, floor: float) -> None:
        """Every other lot that holds coffee of the same blocks."""
        px = look().px
        ink.level(x, right, y, 1, "hair")
        ink.heading(x, y + px(24), self.tr("The same blocks are in"))
        y += px(28)
        for block, shares in story.with_blocks.items():
            codes = " ".join(s.code.split("-")[1] for s in shares)
            if y + px(24) > floor:
                break
            ink.text(x, y + px(18), block, 15, SEMIBOLD)
            after = ink.wrapped(x + px(26), y + px(18), right - x - px(26), codes, 15, most=2)
            y = after - px(16)
