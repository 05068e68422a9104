"""What lies on the season's sheet and can be opened: boards, picks, fills, rests, mill runs, samples and sales."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from math import sqrt

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPolygonF
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from farmdesk.desk.theme import SEMIBOLD, look
from farmdesk.desk.widgets import boards
from farmdesk.desk.widgets.boards import Stack
from farmdesk.desk.widgets.ink import Ink, Measure
from farmdesk.desk.widgets.season_scale import EVENT_PX, MILL_PX, STORE_PX, Days, Levels, SceneInk, packed
from farmdesk.desk.widgets.yard import short
from farmdesk.text import N_, Day, Fact, Moment, Text, Words, kg
from farmdesk.work.season_story import Pick, SeasonStory, VesselBar

FULL_PICK_G = 1_000_000  # a notch as high as its row; heavier days are cut there, their kilograms still said
EVENT_TICK_PX = 6


class Piece(QGraphicsItem):
    """A thing of a lot on the sheet: where it lies, what it says, how it is drawn. `key` finds it again."""

    is_board = False

    def __init__(self, key: tuple[object, ...], rect: QRectF, lot: str, said: str, label_px: float = 0.0) -> None:
        super().__init__()
        self.key, self.rect, self.lot, self.said = (type(self), lot, *key), rect, lot, said
        self._room = rect.adjusted(-6, -6, 6 + label_px, 6)
        self.setToolTip(said)

    def boundingRect(self) -> QRectF:
        return self._room

    def paint(self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None) -> None:
        self.draw(SceneInk(painter))

    def draw(self, ink: Ink) -> None:
        """Draw it at its place on the sheet."""
        raise NotImplementedError


class BoardPiece(Piece):
    """A lot's adjoining shelves."""

    is_board = True

    def __init__(self, stack: Stack, days: Days, high: float, seen: Callable[[], QRectF], words: Words) -> None:
        shelves = stack.shelves
        left, right = min(s.left for s in shelves), max(s.end for s in shelves)
        rect = QRectF(left, shelves[0].top, right - left, shelves[-1].top + high - shelves[0].top)
        super().__init__(
            (stack.first.place, stack.first.first_day), rect, stack.first.lot, words.say(boards.told(stack, days))
        )
        self.stack, self.days, self.high, self.seen, self.words = stack, days, high, seen, words
        self.setZValue(1 if stack.first.planned else 2)  # what lies there is never hidden by a plan

    def draw(self, ink: Ink) -> None:
        boards.paint_stack(ink, self.stack, self.days, self.high, self.seen(), self.words)


class PickPiece(Piece):
    """A notch in a block's row, as high as the kilograms of the day."""

    def __init__(self, pick: Pick, days: Days, base: float, high: float, words: Words) -> None:
        tall = max(3.0, round((high - 2) * min(1.0, pick.grams / FULL_PICK_G)))
        wide = max(3.0, min(look().px(10), round(days.day_px * 0.34)))
        rect = QRectF(round(days.x(pick.day) + (days.day_px - wide) / 2), base - tall, wide, tall)
        facts: dict[str, Fact] = {"lot": pick.lot, "day": Day(pick.day), "block": pick.block, "kg": kg(pick.grams)}
        text = (
            N_("season", "{lot}: picking planned in block {block}, {day}, about {kg}.", **facts)
            if pick.planned
            else N_("season", "{lot}: {kg} picked in block {block}, {day}.", **facts)
        )
        super().__init__((pick.block, pick.day), rect, pick.lot, words.say(text))
        self.planned = pick.planned

    def draw(self, ink: Ink) -> None:
        r = self.rect
        if self.planned:
            ink.fill(r.x(), r.y(), r.width(), r.height(), "paper")
            ink.pattern(r.x(), r.y(), r.width(), r.height(), "estimated")
            ink.frame(r.x(), r.y(), r.width(), r.height(), 1, "ink")
        else:
            ink.fill(r.x(), r.y(), r.width(), r.height(), "ink")


class FillPiece(Piece):
    """A thin bar: a lot in its vessel; the code stands after it."""

    def __init__(
        self, bars: Sequence[VesselBar], days: Days, top: float, high: float, words: Words, next_px: float
    ) -> None:
        bar = bars[0]
        left = days.x_at(bar.from_utc_s)
        ends = [b.until_utc_s for b in bars]
        right = days.thread if None in ends else days.x_at(max(e for e in ends if e is not None))
        vessels = " ".join(b.vessel for b in bars)
        since = Moment(days.time.local(bar.from_utc_s), weekday=True)
        facts: dict[str, Fact] = {"lot": bar.lot, "vessels": vessels, "since": since}
        if bar.planned:
            text: Text = N_("season", "{lot} planned for {vessels}, {since}.", **facts)
        elif None in ends:
            text = N_("season", "{lot} in {vessels} since {since}.", **facts)
        else:
            until = Moment(days.time.local(max(e for e in ends if e is not None)), weekday=True)
            text = N_("season", "{lot} in {vessels}, {since} to {until}.", until=until, **facts)
        self.code = short(bar.lot)
        rect = QRectF(round(left), top + 2, max(3.0, round(right - left)), high - 4)
        super().__init__(
            (bar.vessel, bar.from_utc_s), rect, bar.lot, words.say(text), Measure().width(self.code, 13) + 8
        )
        self.planned = bar.planned
        self.labelled = rect.right() + Measure().width(self.code, 13) + 8 < next_px

    def draw(self, ink: Ink) -> None:
        r = self.rect
        if self.planned:
            ink.pattern(r.x(), r.y(), r.width(), r.height(), "estimated")
            ink.frame(r.x(), r.y(), r.width(), r.height(), 1, "ink", dashed=True)
        else:
            ink.fill(r.x(), r.y(), r.width(), r.height(), "ink2")
            ink.frame(r.x(), r.y(), r.width(), r.height(), 1, "ink")
        if self.labelled:
            base = round(r.center().y() + look().px(13) * 0.34)
            wide = ink.width(self.code, 13)
            ink.fill(r.right() + 2, r.y(), wide + 4, r.height(), "paper")
            ink.text(r.right() + 4, base, self.code, 13)


class RestPiece(Piece):
    """A lot at rest in the store, from the day it came until the day it was sent; open while it lies there."""

    def __init__(
        self, row: tuple[str, date, date | None, int], days: Days, top: float, seen: Callable[[], QRectF], words: Words
    ) -> None:
        lot, came, sent, grams = row
        right = days.thread if sent is None else days.x(sent)
        rect = QRectF(days.x(came), top + 2, max(3.0, right - days.x(came)), look().px(STORE_PX) - 4)
        facts: dict[str, Fact] = {"lot": lot, "kg": kg(grams), "came": Day(came)}
        text = (
            N_("season", "{lot} in the store since {came}, {kg}.", **facts)
            if sent is None
            else N_("season", "{lot} in the store {came} to {sent}, {kg}.", sent=Day(sent), **facts)
        )
        super().__init__((came,), rect, lot, words.say(text))
        self.words, self.seen, self.open = f"{short(lot)}  {words.say(kg(grams))}", seen, sent is None

    def draw(self, ink: Ink) -> None:
        r = self.rect
        ink.fill(r.x(), r.y(), r.width(), r.height(), "paper")
        ink.pattern(r.x(), r.y(), r.width(), r.height(), "resting", "ink2")
        for y in (r.top(), r.bottom()):
            ink.level(r.left(), r.right(), y, 1, "ink2")
        ink.upright(r.left(), r.top(), r.bottom(), 1.4, "ink")
        if not self.open:
            ink.upright(r.right(), r.top(), r.bottom(), 1.4, "ink")
        left, wide = max(r.left(), self.seen().left()) + 5, ink.width(self.words, 13, SEMIBOLD)
        if left + wide > r.right() - 4:
            left = r.right() + 5
        ink.fill(left - 3, r.y() + 1, wide + 6, r.height() - 2, "paper")
        ink.text(left, round(r.center().y() + look().px(13) * 0.34), self.words, 13, SEMIBOLD)


class MillPiece(Piece):
    """The peak of a mill run, and what was sent there."""

    def __init__(self, row: tuple[date, tuple[str, ...], int], days: Days, base: float, words: Words) -> None:
        day, lots, grams = row
        high = look().px(16)
        middle = round(days.x(day) + days.day_px / 2)
        self.label = f"{' '.join(short(lot) for lot in lots)}  {words.say(kg(grams))}"
        text = N_("season", "{kg} sent to the mill on {day}: {lots}.", kg=kg(grams), day=Day(day), lots=" ".join(lots))
        rect = QRectF(middle - high * 0.55, base - high, high * 1.1, high)
        super().__init__((day,), rect, lots[0] if lots else "", words.say(text), Measure().width(self.label, 14) + 8)

    def draw(self, ink: Ink) -> None:
        r = self.rect
        peak = QPolygonF([QPointF(r.left(), r.bottom()), QPointF(r.center().x(), r.top()), r.bottomRight()])
        ink.shape(peak, "paper", 1.4, "ink")
        ink.fill(r.right() + 3, r.top(), ink.width(self.label, 14) + 4, r.height(), "paper")
        ink.text(r.right() + 5, r.bottom() - 1, self.label, 14)


class EventPiece(Piece):
    """A sample, a hold or a sale: a tick on its day, and its words."""

    def __init__(self, x: float, top: float, lot: str, said: str, label: str) -> None:
        high = look().px(EVENT_PX) - 4
        super().__init__((said,), QRectF(round(x), top, 2, high), lot, said, Measure().width(label, 14) + 10)
        self.label = label

    def draw(self, ink: Ink) -> None:
        r = self.rect
        ink.upright(r.x() + 1, r.top(), r.bottom(), 2, "ink")
        ink.fill(r.right() + 3, r.top(), ink.width(self.label, 14) + 4, r.height(), "paper")
        ink.text(r.right() + 5, round(r.center().y() + look().px(14) * 0.34), self.label, 14)


def event_lanes(story: SeasonStory, days: Days, words: Words) -> list[list[tuple[float, str, str, str]]]:
    """Events on as few lines as their words need: where [px], lot, what is said, what is written."""
    ink = Measure()
    spans = []
    for day, lot, text in story.events:
        label = f"{short(lot)} {words.say(text)}"
        said = words.say(N_("season", "{lot}: {what}, {day}.", lot=lot, what=text, day=Day(day)))
        x = days.x(day) + days.day_px / 2
        spans.append((x, x + ink.width(label, 14) + EVENT_TICK_PX, (x, lot, said, label)))
    return packed(spans, look().px(12))


def pieces_of(story: SeasonStory, days: Days, levels: Levels, seen: Callable[[], QRectF], words: Words) -> list[Piece]:
    """Everything that lies on the sheet, from the top."""
    px = look().px
    found: list[Piece] = []
    for n, (code, _, _) in enumerate(story.blocks):
        base = levels.blocks_top + levels.block * (n + 1)
        found += [PickPiece(pick, days, base, levels.block, words) for pick in story.picks if pick.block == code]
    for n, row in enumerate(levels.vessels):
        top = levels.vessels_top + levels.vessel * n
        lefts = [days.x_at(bars[0].from_utc_s) for bars in row.bars] + [float("inf")]
        found += [FillPiece(bars, days, top, levels.vessel, words, lefts[i + 1]) for i, bars in enumerate(row.bars)]
    found += [BoardPiece(stack, days, levels.shelf, seen, words) for stack in boards.stacks(story.boards, days, levels)]
    for n, rest in enumerate(story.rests):
        found.append(RestPiece(rest, days, levels.store_top + px(STORE_PX) * n, seen, words))
    found += [MillPiece(run, days, levels.mill_top + px(MILL_PX) - px(6), words) for run in story.mill_runs]
    for n, lane in enumerate(event_lanes(story, days, words)):
        top = levels.events_top + px(EVENT_PX) * n + 2
        found += [EventPiece(x, top, lot, said, label) for x, lot, said, label in lane]
    for piece in found:
        piece.setAcceptedMouseButtons(Qt.MouseButton.NoButton)
    return found


def under(pieces: Sequence[Piece], at: QPointF, reach_px: float) -> Piece | None:
    """The thing under a point of the sheet, or the nearest one within reach [px]."""
    hits = [piece for piece in pieces if piece.rect.contains(at)]
    if hits:
        return max(hits, key=lambda piece: piece.zValue())
    best = min(pieces, key=lambda piece: _away(piece.rect, at), default=None)
    return best if best is not None and _away(best.rect, at) <= reach_px else None


def _away(rect: QRectF, at: QPointF) -> float:
    dx = max(rect.left() - at.x(), 0.0, at.x() - rect.right())
    dy = max(rect.top() - at.y(), 0.0, at.y() - rect.bottom())
    return sqrt(dx * dx + dy * dy)


def nearest(pieces: Sequence[Piece], held: Piece, dx: int, dy: int) -> Piece | None:
    """The next thing in a direction: sideways along the same rows first, up and down at the same days first."""
    here, found = held.rect, []
    for piece in pieces:
        r = piece.rect
        gap_x = max(0.0, r.left() - here.right(), here.left() - r.right())
        gap_y = max(0.0, r.top() - here.bottom(), here.top() - r.bottom())
        away_x, away_y = r.left() - here.left(), r.center().y() - here.center().y()
        if dx and away_x * dx > 1:
            found.append((abs(away_x) + 4 * gap_y, piece))
        elif dy and away_y * dy > 1:
            found.append((abs(away_y) + 3 * gap_x, piece))
    return min(found, key=lambda pair: pair[0])[1] if found else None
