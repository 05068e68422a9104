"""The list of lots: a card of fixed height for each at work, one line for each group that lies still."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QAbstractListModel, QModelIndex, QPersistentModelIndex, QRectF, QSize, Qt
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QAbstractItemView, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from farmdesk.clock import DAY_S, FarmTime
from farmdesk.desk.charts.view import On
from farmdesk.desk.theme import BOLD, REGULAR, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.strip import CARD_PX, paint_strip
from farmdesk.text import N_, Day, Days, Fact, Moment, Words, kg, pct
from farmdesk.work.cards import STATES
from farmdesk.work.portions import TARGET_WB_FRAC, block_words
from farmdesk.work.stories import LotCard

Index = QModelIndex | QPersistentModelIndex

CARD_WIDE_PX = 400
CARD_HIGH_PX, LINE_HIGH_PX, HEAD_HIGH_PX = 112, 32, 34
AT_WORK = ("picking", "vessel", "beds")  # these are shown as cards; the rest wait behind their word
ROW = Qt.ItemDataRole.UserRole


@dataclass(frozen=True, slots=True)
class ListRow:
    """A row: a `card`, the `head` of a group, or the `line` of a group that is folded (`state` opens it)."""

    kind: str
    text: str
    card: LotCard | None = None
    state: str = ""


HEADS = {
    "picking": N_("cards", "Being picked"), "vessel": N_("cards", "In a tank"), "beds": N_("cards", "On beds"),
    "store": N_("cards", "In store"), "mill": N_("cards", "At the mill"), "green": N_("cards", "Green"),
    "gone": N_("cards", "Gone"), "to come": N_("cards", "Still to come"),
}  # fmt: skip


def matching(cards: Iterable[LotCard], typed: str, words: Words) -> list[LotCard]:
    """The cards in whose words every typed word stands, in English or the screen's language.

    A letter alone must be a word by itself: a block.
    """
    wanted = typed.casefold().split()
    if not wanted:
        return list(cards)
    found = []
    for card in cards:
        said = f"{card.words} {words.say(card.method)} {words.say(card.where)} {words.say(STATES[card.state])}"
        said = f" {said.casefold()} "
        if all((word if len(word) > 1 else f" {word} ") in said for word in wanted):
            found.append(card)
    return found


def arranged(cards: Sequence[LotCard], typed: str, words: Words) -> list[ListRow]:
    """Rows of the list. With nothing typed, lots at rest are one line a group; typed words show cards alone."""
    found = matching(cards, typed, words)
    folded = not typed.strip() and any(card.state in AT_WORK for card in found)
    rows: list[ListRow] = []
    lines: list[ListRow] = []
    for state in dict.fromkeys(card.state for card in found):
        group = [card for card in found if card.state == state]
        if folded and state not in AT_WORK:
            grams = sum(card.now.grams or 0 for card in group)
            facts: dict[str, Fact] = {"group": HEADS[state], "n": len(group), "word": _word(state, words)}
            if grams:
                text = N_(
                    "cards",
                    "{group}: {n} {n:lot|lots}, {weight}. Type “{word}” to see them.",
                    **facts,
                    weight=kg(grams),
                )
            else:
                text = N_("cards", "{group}: {n} {n:lot|lots}. Type “{word}” to see them.", **facts)
            lines.append(ListRow("line", words.say(text), None, state))
            continue
        if rows or state != "beds":
            rows.append(ListRow("head", words.say(HEADS[state]), None, state))
        rows += [ListRow("card", spoken(card, words), card, state) for card in group]
    return rows + lines


def _word(state: str, words: Words) -> str:
    return words.say(STATES[state]).split()[-1]


def spoken(card: LotCard, words: Words) -> str:
    """A card in one breath, for a screen reader."""
    parts = [f"{card.code} {card.check}", words.say(card.method), words.say(card.where), weights(card, words)]
    if card.moisture_wb_frac is not None:
        parts.append(moisture(card, words))
    if card.doubts:
        parts.append(words.say(N_("cards", "{n} {n:doubt|doubts}", n=card.doubts)))
    return ", ".join(parts)


def moisture(card: LotCard, words: Words) -> str:
    """`19.7 %`, `≈ 62.7 %`, or that it was not measured."""
    if card.moisture_wb_frac is None:
        return words.say(N_("cards", "not measured"))
    return words.number(card.moisture_wb_frac * 100, 1, "%", about=card.moisture_mark != "measured")


def weights(card: LotCard, words: Words) -> str:
    """`1,960 → 1,882 → 734 → now 414 kg`."""
    shown = [words.number(weight.grams / 1000) for _, weight in card.stages if weight.grams is not None]
    if card.now.grams is not None:
        now = kg(card.now.grams, about=card.now.mark not in ("measured", "computed"))
        shown.append(words.say(N_("cards", "now {weight}", weight=now)))
    return " → ".join(shown) or words.say(N_("cards", "not weighed yet"))


def ends(card: LotCard, words: Words, time: FarmTime, as_of_utc_s: float) -> str:
    """When it will be done: `12 % 17–19 Jan` on beds, `05:00–07:00` in a vessel; open ends say so.

    Hours of the next day and night go without their day; what is further off is told in days.
    """
    ahead = card.ahead
    if ahead is None or ahead.earliest_utc_s is None or card.state not in ("vessel", "beds"):
        return ""
    first = time.local(ahead.earliest_utc_s)
    if card.state == "vessel":
        if ahead.latest_utc_s is None:
            return words.say(N_("cards", "from {moment}", moment=Moment(first)))
        if ahead.latest_utc_s == ahead.earliest_utc_s:
            return words.say(N_("cards", "ready since {moment}", moment=Moment(first, clock=True)))
        last = time.local(ahead.latest_utc_s)
        if ahead.latest_utc_s < as_of_utc_s + DAY_S:
            return f"{first:%H:%M}–{last:%H:%M}"
        return words.say(Days(first.date(), last.date()))
    target, day = pct(TARGET_WB_FRAC, 0), time.farm_day(ahead.earliest_utc_s)
    if ahead.latest_utc_s is None:
        return words.say(N_("cards", "{target} not before {day}", target=target, day=Day(day)))
    days = Days(day, time.farm_day(ahead.latest_utc_s))
    return words.say(N_("cards", "{target} {days}", target=target, days=days))


class CardsModel(QAbstractListModel):
    """The arranged rows; set whole, so that three hundred lots are one reset."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.rows: list[ListRow] = []

    def fill(self, rows: list[ListRow]) -> None:
        """Show these rows."""
        self.beginResetModel()
        self.rows = rows
        self.endResetModel()

    def row_of(self, code: str) -> int:
        """Where a lot's card stands; −1 where it is folded away."""
        return next((i for i, row in enumerate(self.rows) if row.card is not None and row.card.code == code), -1)

    def rowCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self.rows)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role == ROW:
            return self.rows[index.row()]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            return self.rows[index.row()].text
        return None

    def flags(self, index: Index) -> Qt.ItemFlag:
        if not index.isValid() or self.rows[index.row()].kind == "head":
            return Qt.ItemFlag.NoItemFlags
        return Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable


class CardDelegate(QStyledItemDelegate):
    """Paints the rows; every kind has one height, whatever is in it."""

    def __init__(self, time: FarmTime, words: Words, parent: QWidget) -> None:
        super().__init__(parent)
        self.time, self.words, self.as_of_utc_s = time, words, 0.0

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        kind = index.data(ROW).kind
        tall = {"card": CARD_HIGH_PX, "line": LINE_HIGH_PX, "head": HEAD_HIGH_PX}[kind]
        return QSize(look().px(300), look().px(tall))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        row: ListRow = index.data(ROW)
        view = option.widget
        chosen = isinstance(view, QAbstractItemView) and view.selectionModel().isSelected(index)
        rings = chosen and view.hasFocus()
        painter.save()
        painter.translate(option.rect.topLeft())
        width, height = min(option.rect.width(), look().px(CARD_WIDE_PX)), option.rect.height()
        painter.setClipRect(0, 0, width, height)
        with On(painter) as ink:
            if row.card is not None:
                self._card(ink, row.card, width, height, chosen)
            else:
                self._line(ink, row, width, height, chosen)
            if rings:
                ink.frame(0, 0, width, height, 3, "focus")
        painter.restore()

    def _line(self, ink: On, row: ListRow, width: int, height: int, chosen: bool) -> None:
        px = look().px
        if row.kind == "head":
            ink.text(0, height - px(9), row.text, 18, SEMIBOLD, family=SERIF)
            return
        if chosen:
            ink.fill(0, 0, width, height, "sheet")
            ink.fill(0, 0, px(5), height, "ink")
        ink.text(px(14), height / 2 + px(5), ink.fitted(row.text, width - px(20), 15), 15)

    def _card(self, ink: On, card: LotCard, width: int, height: int, chosen: bool) -> None:
        px, say = look().px, self.words.say
        left, right = px(14), width - px(12)
        if chosen:
            ink.fill(0, 0, width, height, "sheet")
            ink.frame(0, 0, width, height, 1.2)
            ink.fill(0, 0, px(5), height, "ink")
        else:
            ink.level(0, width, height - 0.5, 0.8, "rule")
        x = ink.text(left, px(27), card.code, 21, BOLD)
        x = ink.text(x + px(6), px(27), card.check, 16, color="ink2")
        ink.text(x + px(18), px(27), say(card.method), 15)
        self._water(ink, card, right)
        place = say(card.where)
        days = f", {say(Days(*card.picked))}" if card.picked else ""
        block = say(N_("cards", "block {code}", code=block_words(card.blocks))) if card.blocks else ""
        after = ends(card, self.words, self.time, self.as_of_utc_s) if card.state == "beds" else ""
        room = right - left - (ink.width(after, 15, SEMIBOLD) + px(12) if after else 0)
        told = f"{block}{days}   {place}".strip(", ")
        if ink.width(told, 15) > room:  # the days of picking stand on the strip as well; the place stands nowhere else
            told = f"{block}   {place}".strip()
        ink.text(left, px(49), ink.fitted(told, room, 15), 15)
        ink.text(right, px(49), after, 15, SEMIBOLD, align="right")
        paint_strip(ink, QRectF(left, px(52), right - left, px(32)), card.strip, look().scale * CARD_PX, self.time)
        ink.text(left, px(103), ink.fitted(weights(card, self.words), right - left, 14), 14, color="ink2")

    def _water(self, ink: On, card: LotCard, right: float) -> None:
        """What matters about it now: the range of its end in a vessel, else its moisture."""
        px = look().px
        if card.state == "vessel":
            text, size, weight, color = ends(card, self.words, self.time, self.as_of_utc_s), 17.0, SEMIBOLD, "ink"
        elif card.moisture_wb_frac is None and card.state in ("picking", "to come"):
            return
        elif card.moisture_wb_frac is None:
            text, size, weight, color = moisture(card, self.words), 14.0, REGULAR, "ink2"
        else:
            text, size, weight, color = moisture(card, self.words), 21.0, BOLD, "ink"
        ink.text(right, px(27), text, size, weight, color, align="right")
        if card.doubts:
            ink.swatch(right - ink.width(text, size, weight) - px(20), px(26), "doubtful")
