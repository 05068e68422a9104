"""A real window around one of these pages, everything done on the spot, with a page that notes where one went."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QColor, QImage, QMouseEvent
from PySide6.QtWidgets import QApplication, QWidget

from farmdesk.desk import theme
from farmdesk.desk.go import Known, Target
from farmdesk.desk.lanes import Inline
from farmdesk.desk.pages import Desk, Page
from farmdesk.desk.window import Window
from farmdesk.text import ENGLISH
from tests.desk import samples_season as samples

KNOWN = Known(("25-13W",), tuple(str(n) for n in range(1, 23)), (), None, "25")


class Gone(Page):
    """Stands for every other page, and keeps what it was asked to open."""

    been: list[Target]

    def query(self, farm: Any, at_utc_s: int) -> None:
        return None

    def show_story(self, story: Any) -> None:
        pass

    def open_at(self, target: Target) -> None:
        self.been.append(target)


def stand(qtbot, name: str, page: type[Page], tell: Callable[[int], Any], at_utc_s: int, size=(1366, 768)) -> Window:
    """A window on one page whose story is told by `tell(instant)`; `window.been` keeps what was opened besides."""
    theme.load_fonts()
    theme.look().wear("light", 1.0)
    been: list[Target] = []
    shown = type("Shown", (page,), {"query": lambda self, farm, at: tell(at)})
    gone = type("Kept", (Gone,), {"been": been})
    lanes = Inline()
    lanes.open(object)
    desk = Desk(lanes, ENGLISH, samples.TIME)
    desk.as_of = desk.present = at_utc_s
    makers = dict.fromkeys(("lots", "picking", "today", "season", "yard"), gone)
    window = Window(lanes, desk, {**makers, name: shown}, lambda farm, at: (samples.road(at), KNOWN))
    window.been = been
    lanes.close = lambda: None  # there is no season file behind these stories
    qtbot.addWidget(window)
    window.resize(*size)
    window._target = Target("page", name)
    window.begin()
    window.show()
    QApplication.processEvents()
    return window


def press(widget: QWidget, at: QPointF, kind: QEvent.Type = QEvent.Type.MouseButtonPress) -> None:
    """One event of the left mouse button."""
    button = Qt.MouseButton.NoButton if kind == QEvent.Type.MouseMove else Qt.MouseButton.LeftButton
    held = Qt.MouseButton.NoButton if kind == QEvent.Type.MouseButtonRelease else Qt.MouseButton.LeftButton
    where = QPointF(widget.mapToGlobal(QPoint(0, 0))) + at
    QApplication.sendEvent(widget, QMouseEvent(kind, at, where, button, held, Qt.KeyboardModifier.NoModifier))


def drag(widget: QWidget, start: QPointF, end: QPointF) -> None:
    """Press, move in steps, let go."""
    press(widget, start)
    for n in range(1, 5):
        press(widget, start + (end - start) * n / 4, QEvent.Type.MouseMove)
    press(widget, end, QEvent.Type.MouseButtonRelease)


def picture(widget: QWidget) -> QImage:
    """What it looks like now."""
    QApplication.processEvents()
    return widget.grab().toImage()


def has(image: QImage, color: QColor) -> bool:
    """Whether a colour stands anywhere in a picture."""
    wanted = color.rgb()
    return any(image.pixel(x, y) == wanted for y in range(image.height()) for x in range(image.width()))
