"""The season's sheet: days from left to right, rows from the hill to the buyer, today's thread through all.

Drag or the arrow keys move the sheet, Ctrl with the wheel or + and - zoom about the pointer or the middle, Home
is today, 0 the whole season. Tab takes hold of a board; then the arrows walk from one thing to the next, Enter
opens its lot, Esc lets go.
"""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QEvent, QPoint, QPointF, QRect, QRectF, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent, QPainter, QResizeEvent, QWheelEvent
from PySide6.QtWidgets import QApplication, QFrame, QGraphicsScene, QGraphicsView, QWidget

from farmdesk.clock import FarmTime
from farmdesk.desk.theme import look
from farmdesk.desk.widgets.season_edges import GUTTER_PX, WEATHER_PX, WEEKS_PX, Gutter, Head
from farmdesk.desk.widgets.season_ground import paint_ground, paint_thread, paint_tide
from farmdesk.desk.widgets.season_pieces import Piece, event_lanes, nearest, pieces_of, under
from farmdesk.desk.widgets.season_scale import (
    DAY_PX,
    LEAST_DAY_PX,
    MOST_DAY_PX,
    Days,
    Levels,
    SceneInk,
    days_of,
)
from farmdesk.text import Words
from farmdesk.work.season_story import SeasonStory

TODAY_AT_FRAC = 0.39  # of the width lies behind today: eighteen days of forty-six
ZOOM_STEP = 1.15
NEAR_PX = 10  # a press this close still means the thing


class SeasonView(QGraphicsView):
    """`opened` carries the lot of a thing that was pressed or entered; `spanned` the first and last day seen."""

    opened = Signal(str)
    spanned = Signal(object)

    def __init__(self, time: FarmTime, words: Words, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.time, self.words = time, words
        self.story: SeasonStory | None = None
        self.days: Days | None = None
        self.levels: Levels | None = None
        self.at_present = True
        self.day_px = 0.0
        self.pieces: list[Piece] = []
        self.held: Piece | None = None
        self._let_go = False
        self._follows = True  # today stays where it stands until a hand moves the sheet
        self._pressed: QPoint | None = None
        self._dragged = False
        self.head, self.gutter = Head(self), Gutter(self)
        self.setScene(QGraphicsScene(self))
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setViewportUpdateMode(QGraphicsView.ViewportUpdateMode.FullViewportUpdate)
        self.setTransformationAnchor(QGraphicsView.ViewportAnchor.NoAnchor)
        self.setResizeAnchor(QGraphicsView.ViewportAnchor.NoAnchor)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.viewport().setMouseTracking(True)
        self.horizontalScrollBar().valueChanged.connect(self._scrolled)
        self.verticalScrollBar().valueChanged.connect(self._scrolled)

    # what is shown

    @property
    def left(self) -> int:
        """The sheet's pixel at the left edge of what is seen."""
        return self.horizontalScrollBar().value()

    def seen(self) -> QRectF:
        """The part of the sheet that is seen."""
        size = self.viewport().size()
        return QRectF(self.left, self.verticalScrollBar().value(), size.width(), size.height())

    @property
    def _laid(self) -> Days:
        assert self.days is not None  # no day has a place before a story has come
        return self.days

    def days_seen(self) -> tuple[date, date]:
        """The first and the last day in view."""
        right = self.left + self.viewport().width() - 1
        return self._laid.day_at(self.left), self._laid.day_at(right)

    def show_story(self, story: SeasonStory, at_present: bool = True) -> None:
        """Draw this season; what was seen stays in view, unless today has left it."""
        before = self.days_seen()[0] if self.days is not None else None
        self.story, self.at_present = story, at_present
        self._rebuild()
        if self._follows or before is None:
            self._to_today()
        else:
            self.horizontalScrollBar().setValue(round(self._laid.x(before)))
        self._scrolled()

    def _rebuild(self) -> None:
        """Lay everything anew: after a story, a zoom or another size."""
        if self.story is None:
            return
        was = self.held.key if self.held is not None else None
        self.day_px = self.day_px or look().px(DAY_PX)
        self.days = days_of(self.story, self.day_px, self.time)
        room = self.viewport().height()
        self.levels = Levels(self.story, room, len(event_lanes(self.story, self.days, self.words)))
        scene = self.scene()
        self.held = None
        scene.clear()
        self.pieces = pieces_of(self.story, self.days, self.levels, self.seen, self.words)
        for piece in self.pieces:
            scene.addItem(piece)
        # Paper enough below that Page Down can bring the store to the top.
        scene.setSceneRect(0, 0, round(self.days.end), max(self.levels.end, round(self._second_top()) + room))
        if was is not None:
            self.held = next((piece for piece in self.pieces if piece.key == was), None)

    def go_to_today(self) -> None:
        """Today's thread to its usual place, and there it stays when the handle moves."""
        self._follows = True
        self._to_today()
        self.verticalScrollBar().setValue(0)

    def _to_today(self) -> None:
        if self.days is not None:
            self.horizontalScrollBar().setValue(round(self.days.thread - TODAY_AT_FRAC * self.viewport().width()))

    def fit_season(self) -> None:
        """The whole season in the width there is."""
        if self.story is not None:
            whole = (self.story.last_day - self.story.first_day).days + 1
            self._follows = False
            self.zoom_to(self.viewport().width() / whole)
            self.horizontalScrollBar().setValue(round(self._laid.x(self.story.first_day)))

    def zoom_to(self, day_px: float, about_px: float | None = None) -> None:
        """Another width of a day [px]; the day under the pointer, or in the middle, stays where it is."""
        if self.days is None:
            return
        about = self.viewport().width() / 2 if about_px is None else about_px
        day = (self.left + about) / self.day_px
        self.day_px = min(max(day_px, LEAST_DAY_PX), MOST_DAY_PX * look().scale)
        self._rebuild()
        if self._follows:
            self._to_today()
        else:
            self.horizontalScrollBar().setValue(round(day * self.day_px - about))
        self._scrolled()

    def _scrolled(self) -> None:
        self.head.update()
        self.gutter.update()
        self.viewport().update()
        if self.days is not None:
            self.spanned.emit(self.days_seen())

    # the ground and the thread

    def drawBackground(self, painter: QPainter, rect: QRectF | QRect) -> None:
        ink = SceneInk(painter)
        ink.fill(rect.x(), rect.y(), rect.width(), rect.height(), "paper")
        if self.story is not None and self.days is not None and self.levels is not None:
            paint_ground(ink, self.story, self.days, self.levels, self.seen())
            paint_tide(ink, self.story, self.days, self.levels, self.seen())
            # Below the tide the words of the rows stand on the thread, above it the thread crosses all.
            paint_thread(ink, self.days, self.levels.tide_base, self.seen().bottom() + 1, self.at_present)

    def drawForeground(self, painter: QPainter, rect: QRectF | QRect) -> None:
        if self.days is None or self.levels is None:
            return
        ink = SceneInk(painter)
        paint_thread(ink, self.days, 0, self.levels.tide_base, self.at_present)
        if self.held is not None:
            r = self.held.rect
            ink.ring(r.x(), r.y(), r.width() + 1, r.height() + 1)

    # room

    def resizeEvent(self, event: QResizeEvent) -> None:
        px = look().px
        gutter, head = px(GUTTER_PX), px(WEEKS_PX) + px(WEATHER_PX)
        self.setViewportMargins(gutter, head, 0, 0)
        super().resizeEvent(event)
        self.head.setGeometry(0, 0, self.width(), head)
        self.gutter.setGeometry(0, head, gutter, self.height() - head)
        if self.story is not None:
            left = self.left
            self._rebuild()
            if self._follows:
                self._to_today()
            else:
                self.horizontalScrollBar().setValue(left)
            self._scrolled()

    # hands

    def piece_at(self, at: QPointF) -> Piece | None:
        """The thing under a point of the sheet, or the one nearest to it."""
        return under(self.pieces, at, look().px(NEAR_PX))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self._pressed, self._dragged = event.position().toPoint(), False

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        here = event.position().toPoint()
        if self._pressed is None:
            piece = self.piece_at(self.mapToScene(here))
            self.viewport().setCursor(
                Qt.CursorShape.PointingHandCursor if piece is not None else Qt.CursorShape.OpenHandCursor
            )
            return
        moved = here - self._pressed
        if not self._dragged and moved.manhattanLength() < QApplication.startDragDistance():
            return
        self._dragged = True
        self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)
        self._pan(-moved.x(), -moved.y())
        self._pressed = here

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        pressed, self._pressed = self._pressed, None
        if pressed is None or self._dragged:
            self.viewport().setCursor(Qt.CursorShape.OpenHandCursor)
            return
        piece = self.piece_at(self.mapToScene(event.position().toPoint()))
        if piece is not None:
            self.hold(piece)
            self.opened.emit(piece.lot)

    def wheelEvent(self, event: QWheelEvent) -> None:
        turn = event.angleDelta()
        mods = event.modifiers()
        if mods & Qt.KeyboardModifier.ControlModifier:
            self.zoom_to(self.day_px * ZOOM_STEP ** (turn.y() / 120), event.position().x())
        elif mods & Qt.KeyboardModifier.ShiftModifier or turn.x():
            self._pan(-(turn.x() or turn.y()), 0)
        else:
            self._pan(0, -turn.y() / 2)
        event.accept()

    def _pan(self, dx: float, dy: float) -> None:
        self._follows = self._follows and not dx
        self.horizontalScrollBar().setValue(self.left + round(dx))
        self.verticalScrollBar().setValue(self.verticalScrollBar().value() + round(dy))

    # keys

    def hold(self, piece: Piece | None) -> None:
        """Give a thing the keys and bring it into view; None lets go."""
        self.held = piece
        if piece is not None:
            self._bring(piece.rect)
        said = f"{self.sentence} {piece.said}" if piece is not None else self.sentence
        self.setAccessibleName(said)
        self.viewport().update()

    def _bring(self, r: QRectF) -> None:
        """Move the sheet only where too little of a thing is seen."""
        dx, dy = self._short_of(r)
        if dx or dy:
            self._pan(dx, dy)

    def _short_of(self, r: QRectF) -> tuple[float, float]:
        """How far the sheet must move to show a thing [px]; nothing where enough of it is seen."""
        seen, edge, least = self.seen(), look().px(24), look().px(60)
        across = min(r.right(), seen.right()) - max(r.left(), seen.left())
        dx = dy = 0.0
        if across < min(r.width(), least):
            dx = r.left() - edge - seen.left() if r.left() < seen.left() else r.left() + least + edge - seen.right()
        if r.top() < seen.top():
            dy = r.top() - edge - seen.top()
        elif r.bottom() > seen.bottom():
            dy = r.bottom() + edge - seen.bottom()
        return dx, dy

    @property
    def sentence(self) -> str:
        """The season in one sentence."""
        return "" if self.story is None else self.words.say(self.story.headline)

    def _walk(self, by: int) -> bool:
        """The next board of those in view; False past the last."""
        order = [p for p in self.pieces if p.is_board and (p is self.held or not any(self._short_of(p.rect)))]
        if self.held in order:
            at = order.index(self.held) + by
        else:
            at = 0 if by > 0 else len(order) - 1
        if not 0 <= at < len(order):
            return False
        self.hold(order[at])
        return True

    def _step(self, held: Piece, dx: int, dy: int) -> None:
        """The nearest thing in that direction."""
        piece = nearest(self.pieces, held, dx, dy)
        if piece is not None:
            self.hold(piece)

    def focusNextPrevChild(self, forward: bool) -> bool:
        if self._let_go or not self._walk(1 if forward else -1):
            self.hold(None)
            return super().focusNextPrevChild(forward)
        return True

    def focusInEvent(self, event: QFocusEvent) -> None:
        self._let_go = False
        super().focusInEvent(event)
        if event.reason() in (Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason):
            self._walk(1 if event.reason() == Qt.FocusReason.TabFocusReason else -1)

    def event(self, event: QEvent) -> bool:
        # Qt asks the view for its tab chain before keyPressEvent; the boards come first.
        tab = (Qt.Key.Key_Tab, Qt.Key.Key_Backtab)
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress and event.key() in tab:
            return self.focusNextPrevChild(event.key() == Qt.Key.Key_Tab)
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, shift = event.key(), bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        ways: dict[int, tuple[int, int]] = {
            Qt.Key.Key_Left: (-1, 0), Qt.Key.Key_Right: (1, 0), Qt.Key.Key_Up: (0, -1), Qt.Key.Key_Down: (0, 1),
        }  # fmt: skip
        way = ways.get(key)
        if event.modifiers() & (Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.AltModifier):
            event.ignore()
        elif way is not None and self.held is not None and not shift:
            self._step(self.held, *way)
        elif way is not None:
            many = self.day_px * (7 if shift else 1)
            self._pan(way[0] * many, way[1] * look().px(48))
        elif key in (Qt.Key.Key_PageDown, Qt.Key.Key_PageUp):
            self._turn(key == Qt.Key.Key_PageDown)
        elif key == Qt.Key.Key_Home:
            self.go_to_today()
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.held is not None:
            self.opened.emit(self.held.lot)
        elif key == Qt.Key.Key_Escape and self.held is not None:
            self.hold(None)
            self._let_go = True
        elif key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self.zoom_to(self.day_px * ZOOM_STEP)
        elif key == Qt.Key.Key_Minus:
            self.zoom_to(self.day_px / ZOOM_STEP)
        elif key == Qt.Key.Key_0:
            self.fit_season()
        else:
            event.ignore()

    def _second_top(self) -> float:
        return self.levels.store_top - look().px(17) if self.levels is not None else 0.0

    def _turn(self, down: bool) -> None:
        """A screenful down begins at the store, where the first one ends with the beds."""
        bar = self.verticalScrollBar()
        store = round(self._second_top())
        if down and bar.value() < min(store, bar.maximum()):
            bar.setValue(store)
        elif not down and bar.value() <= store:
            bar.setValue(0)
        else:
            bar.setValue(bar.value() + (1 if down else -1) * (self.viewport().height() - look().px(40)))
