"""What is drawn around and upon a chart's curves, on whole pixels: bands, fan, flags, points, words.

`below` comes before the curves, `above` after them. A gap is a gap, a range is a hatch, a reading has the
shape of its instrument. Nothing here knows how curves are drawn.
"""

from __future__ import annotations

from datetime import date
from itertools import zip_longest

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainterPath, QPen, QPolygonF

from farmdesk.desk.charts.readings import draw_points, write_latest, write_names, write_values
from farmdesk.desk.charts.scale import Scale, apart, around
from farmdesk.desk.charts.view import On, View
from farmdesk.desk.theme import BOLD, SEMIBOLD, look
from farmdesk.text import N_, Day, Num, Words
from farmdesk.work.figures import HAND, LOGGER, LOT, TRAY, Band, Fan, Flag

X_WORDS = {
    "good_h": N_("charts", "against good drying hours"),
    "hours": N_("charts", "against hours"),
    "days": N_("charts", "against days since it was spread"),
    "h20": N_("charts", "against hours at 20 °C since it was filled"),
}
LOT_LINES: tuple[tuple[float, list[float]], ...] = (  # width [px], dashes in widths: told apart without a colour
    (2.4, []), (1.4, []), (1.8, [6, 3]), (1.6, [1.5, 2.5]), (1.6, [7, 2.5, 1.5, 2.5]), (3.2, [1, 1.5]),
)  # fmt: skip
EARLIEST_LATEST = N_("charts", "earliest, likely, latest")


def below(ink: On, view: View) -> None:
    """Ground, bands, grid, rain, target and fan."""
    figure, scale, box = view.figure, view.scale, view.scale.box
    ink.painter.save()
    ink.painter.setClipRect(box)
    for band in figure.bands:
        if band.kind == "night":
            left, right = scale.x(band.low), scale.x(band.high)
            ink.fill(left, box.top(), right - left, box.height(), "night")
    for y, _ in view.y_ticks:
        ink.level(box.left(), box.right(), scale.y(y), 0.8, "hair")
    if figure.x_kind == "time" and scale.x_high - scale.x_low < 3 * 86_400:
        for x, _ in view.x_ticks:
            ink.upright(scale.x(x), box.top(), box.bottom(), 0.8, "hair")
    for band in figure.bands:
        if band.kind in ("target", "estimated"):
            _patterned(ink, scale, band)
    if figure.fan is not None and figure.fan.x.size > 1:
        _fan(ink, scale, figure.fan)
    _rain(ink, view)
    ink.painter.restore()


def above(ink: On, view: View) -> None:
    """Points, their values, flags, marks, stages."""
    figure, scale, box = view.figure, view.scale, view.scale.box
    px = ink.look.px
    ink.painter.save()
    ink.painter.setClipRect(box.adjusted(-px(6), -px(22), px(6), px(6)))
    if figure.target is not None:
        _target(ink, view)
    for band in figure.bands:
        if band.kind == "gap":
            _gap(ink, view, band)
    for mark in figure.marks:
        if scale.shows(mark.x):
            _mark(ink, view, mark.x, view.words.say(mark.text))
    if figure.flags:
        _flags(ink, view)
    for curve in figure.curves:
        draw_points(ink, view, curve)
    for curve in figure.curves:
        write_values(ink, view, curve)
    write_latest(ink, view)
    write_names(ink, view)
    ink.painter.restore()
    if figure.stages:
        _stages(ink, view)
    if view.second:
        _name(ink, view)
    else:
        ink.text(box.left() - px(8), box.top() - px(6), figure.y_unit, 13, color="ink2", align="right")
        if figure.x_kind in X_WORDS:
            ink.text(box.left(), box.top() - px(6), view.words.say(X_WORDS[figure.x_kind]), 13, color="ink2")


def _patterned(ink: On, scale: Scale, band: Band) -> None:
    box = scale.box
    if band.along == "x":
        left, right = scale.x(band.low), scale.x(band.high)
        ink.pattern(left, box.top(), right - left, box.height(), band.kind, "rule")
        return
    top, bottom = scale.y(band.high), scale.y(band.low)
    ink.pattern(box.left(), top, box.width(), bottom - top, band.kind, "rule")
    for y in (top, bottom):
        ink.level(box.left(), box.right(), y, 1, "rule")


def _fan(ink: On, scale: Scale, fan: Fan) -> None:
    """A hatch between the low and the high course; the middle one is dashed by `above`'s curve."""
    there = [QPointF(scale.x(x), scale.y(y)) for x, y in zip(fan.x, fan.high, strict=True)]
    back = [QPointF(scale.x(x), scale.y(y)) for x, y in zip(fan.x, fan.low, strict=True)]
    ink.painter.setBrushOrigin(scale.box.topLeft())
    hatch = ink.look.pattern("estimated", ink.color("ink"), ink.ratio)
    ink.shape(QPolygonF([*there, *reversed(back)]), hatch, 0.8, "ink2")


def _rain(ink: On, view: View) -> None:
    """Blocks standing on the axis; their height grows with the root of the mm, their words say them."""
    scale, px = view.scale, ink.look.px
    blocks = []
    for low, high, mm in view.figure.rain:
        left = scale.x(low)
        block = QRectF(left, 0, max(px(6), scale.x(high) - left), px(min(40.0, 5.5 * mm**0.5)))
        block.moveBottom(scale.box.bottom())
        if block.right() >= scale.box.left() and block.left() <= scale.box.right():
            ink.fill(block.left(), block.top(), block.width(), block.height(), "ink2")
            view.taken.take(block)
            blocks.append((block, mm))
    for block, mm in blocks:
        text = view.words.number(mm, 0 if mm >= 1 else 1, "mm")
        width, height = ink.width(text, 13), px(15)
        beside = QRectF(block.right() + px(4), scale.box.bottom() - height - px(1), width, height)
        over = QRectF(block.center().x() - width / 2, block.top() - height - px(2), width, height)
        if spot := view.taken.place([beside, over, over.translated(0, -height)], scale.box):
            ink.text(spot.left(), spot.bottom() - px(3), text, 13, color="ink2")


def _target(ink: On, view: View) -> None:
    assert view.figure.target is not None
    level, text = view.figure.target
    box, y, px = view.scale.box, view.scale.y(level), ink.look.px
    if not box.top() <= y <= box.bottom():
        return
    ink.level(box.left(), box.right(), y, 1.4, "ink", dashed=True)
    said = view.words.say(text)
    label = QRectF(box.left() + px(3), y - px(18), ink.width(said, 14, SEMIBOLD), px(16))
    view.taken.take(label)
    ink.text(label.left(), label.bottom() - px(4), said, 14, SEMIBOLD)


def _gap(ink: On, view: View, band: Band) -> None:
    """A measure with two ends where nothing was read, and its words where they have room."""
    scale, px = view.scale, ink.look.px
    left, right = scale.x(band.low), scale.x(band.high)
    y = scale.box.bottom() - px(8)
    ink.level(left, right, y, 1, "rule", dashed=True)
    for x in (left, right):
        ink.upright(x, y - px(4), y + px(4), 1, "rule")
    text = view.words.say(band.text) if band.text else ""
    width = ink.width(text, 13)
    middle = (max(left, scale.box.left()) + min(right, scale.box.right())) / 2
    spot = QRectF(middle - width / 2, y - px(20), width, px(16))
    if text and right - left > width * 0.5 and view.taken.place([spot], scale.box):
        ink.fill(spot.left() - 2, spot.top(), spot.width() + 4, spot.height(), "paper")
        ink.text(spot.left(), spot.bottom() - px(4), text, 13, color="ink2")


def _mark(ink: On, view: View, x: float, text: str) -> None:
    """An instant with its words: opened, washed, wetted."""
    box, at, px = view.scale.box, view.scale.x(x), ink.look.px
    ink.upright(at, box.top(), box.bottom(), 2, "ink", dashed=True)
    view.taken.take(QRectF(at - 1, box.top(), 2, box.height()))
    width = ink.width(text, 14)
    left = min(max(at - width / 2, box.left()), box.right() - width)
    label = QRectF(left, box.top() - px(20), width, px(18))
    view.taken.take(label)
    ink.text(label.left(), label.bottom() - px(5), text, 14)


def _flags(ink: On, view: View) -> None:
    """Earliest, likely and latest, standing on the target; the likely one is heavier."""
    figure, scale, px = view.figure, view.scale, ink.look.px
    flags = [flag for flag in figure.flags if scale.shows(flag.x)]
    if not flags:
        return
    texts = said_once(flags, view.words)
    weights = [BOLD if flag.likely else SEMIBOLD for flag in flags]
    widths = [ink.width(text, 14, weight) + px(10) for text, weight in zip(texts, weights, strict=True)]
    tall = px(20)
    foot = scale.y(figure.target[0]) if figure.target else scale.box.bottom()
    if figure.fan is not None and figure.fan.x.size:
        top = min(scale.y(float(figure.fan.high[0])), foot - px(40)) - tall
    else:
        top = foot - scale.box.height() * (0.45 if figure.target else 1.0)
    top = max(top, scale.box.top() + px(18))
    lefts = apart([scale.x(flag.x) for flag in flags], widths, px(5), scale.box.left(), scale.box.right())
    for flag, text, weight, width, left in zip(flags, texts, weights, widths, lefts, strict=True):
        x = scale.x(flag.x)
        ink.upright(x, top + tall + px(5), foot, 2.2 if flag.likely else 1.2, "ink")
        near = min(max(x, left + 1), left + width - 1)  # the box moved aside, so its pole leans
        ink.line(x, top + tall + px(5), near, top + tall, 2.2 if flag.likely else 1.2)
        box = QRectF(left, top, width, tall)
        ink.fill(box.left(), box.top(), box.width(), box.height(), "paper")
        ink.frame(box.left(), box.top(), box.width(), box.height(), 2 if flag.likely else 1.2)
        ink.text(box.center().x(), box.bottom() - px(5), text, 14, weight, align="middle")
        view.taken.take(box)
    said = view.words.say(EARLIEST_LATEST)
    width = ink.width(said, 13)
    left = min(max(lefts[0], scale.box.left()), scale.box.right() - width)
    if len(flags) == 3 and left >= scale.box.left():
        label = QRectF(left, top - px(19), width, px(17))
        view.taken.take(label)
        ink.text(label.left(), label.bottom() - px(5), said, 13, color="ink2")


def said_once(flags: list[Flag], words: Words) -> list[str]:
    """The flags' words; days of one month name it once, at the end."""
    said = []
    for flag, after in zip_longest(flags, flags[1:]):
        day, next_day = (_day_of(f) for f in (flag, after))
        same = day is not None and next_day is not None and (day.month, day.year) == (next_day.month, next_day.year)
        said.append(str(day.day) if day is not None and same else words.say(flag.text))
    return said


def _day_of(flag: Flag | None) -> date | None:
    return next((fact.day for _, fact in flag.text.facts if isinstance(fact, Day)), None) if flag else None


def _stages(ink: On, view: View) -> None:
    """Names of the stretches of y at the right edge, a mark at each border."""
    figure, scale, px = view.figure, view.scale, ink.look.px
    shown = [
        (max(low, scale.y_low), min(high, scale.y_high), view.words.say(text))
        for low, high, text in figure.stages
        if high > scale.y_low and low < scale.y_high
    ]
    shown.sort(reverse=True)
    right = scale.box.right()
    for low, high, _ in shown:
        for edge in {low, high} - {scale.y_low}:
            ink.level(right + px(2), right + px(7), scale.y(edge), 1, "rule")
    tall = float(px(15))
    tops = apart(
        [scale.y((low + high) / 2) for low, high, _ in shown],
        [tall] * len(shown),
        1,
        scale.box.top(),
        scale.box.bottom(),
    )
    for (_, _, text), top in zip(shown, tops, strict=True):
        ink.text(right + px(12), top + tall - px(4), text, 13, color="ink2")


def _name(ink: On, view: View) -> None:
    """The smaller chart's own name, inside its upper edge where no curve runs."""
    box, px = view.scale.box, ink.look.px
    text = view.words.say(view.figure.title)
    width = ink.width(text, 13)
    spots = [
        QRectF(box.right() - width - px(4), box.top(), width, px(16)),
        QRectF(box.left() + px(4), box.top(), width, px(16)),
        QRectF(box.center().x() - width / 2, box.top(), width, px(16)),
        QRectF(box.right() - width - px(4), box.bottom() - px(17), width, px(16)),
    ]
    spot = view.taken.place(spots, box) or spots[0]
    ink.text(spot.left(), spot.bottom() - px(4), text, 13, color="ink2")


def asked(ink: On, view: View, x: float, y: float) -> None:
    """A reading that is being asked about: crossed, in the colour of what waits for a hand."""
    px = ink.look.px
    at = view.scale.point(x, min(max(y, view.scale.y_low), view.scale.y_high))
    dot = QPainterPath()
    dot.addEllipse(at, px(5), px(5))
    ink.shape(dot, "paper")
    ink.shape(dot, ink.look.pattern("doubtful", ink.color("today"), ink.ratio), 1.6, "today")
    text = view.words.say(N_("charts", "{value} asked", value=Num(y, "", max(1, view.figure.y_decimals))))
    spots = around(at, ink.width(text, 14, SEMIBOLD), px(17), px(8))
    spot = view.taken.place(spots, view.scale.box.adjusted(0, -px(18), px(80), 0)) or spots[0]
    ink.text(spot.left(), spot.bottom() - px(4), text, 14, SEMIBOLD, "today")


def line_pen(role: str, *, second: bool = False, style: int = 0) -> QPen | None:
    """The pen of a curve's line by its role, of one lot among others by its style; None where only points are drawn."""
    own = look()
    if role == TRAY:
        pen = QPen(own["ink"], 1.3)
    elif role == HAND:
        pen = QPen(own["ink"], 1.2 if second else 1.6)
        if second:
            pen.setDashPattern([4, 3])
    elif role == LOGGER:
        pen = QPen(own["ink2"], 1.0)
    elif role == LOT:
        width, dashes = LOT_LINES[style % len(LOT_LINES)]
        pen = QPen(own["ink"], width)
        if dashes:
            pen.setDashPattern(dashes)
    elif role == "usual":
        pen = QPen(own["ink"], 1.6)
        pen.setDashPattern([4, 3])
    else:
        return None
    pen.setCosmetic(True)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    return pen
