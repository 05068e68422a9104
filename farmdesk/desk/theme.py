"""How the desk looks: colours, type, patterns of doubt, and the one place that sets them for all widgets.

Colours stand in resources/styles/palettes.toml, which paper reads too. A widget asks `look()` while it
paints and keeps nothing, so light, dark and larger letters take effect with the next paint.
"""

from __future__ import annotations

import math
import tomllib
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from PySide6.QtCore import QObject, QPointF, Qt, Signal
from PySide6.QtGui import (
    QBrush,
    QColor,
    QFont,
    QFontDatabase,
    QFontMetricsF,
    QGuiApplication,
    QPainter,
    QPalette,
    QPixmap,
    QTransform,
)
from PySide6.QtWidgets import QApplication

from farmdesk import paths

SANS, SERIF, DISPLAY = "Source Sans 3", "Source Serif 4 SmText", "Source Serif 4 Display"
REGULAR, SEMIBOLD, BOLD = 400, 600, 700
SIZES = (1.0, 1.15, 1.3)  # "larger", as a setting
TINTS = ("paper", "sheet", "band", "night", "ink", "ink2", "rule", "hair", "now", "today", "tint", "focus")


@dataclass(frozen=True)
class Palette:
    """One set of colours; every name has one meaning (resources/styles/palettes.toml)."""

    name: str
    paper: QColor
    sheet: QColor
    band: QColor
    night: QColor
    ink: QColor
    ink2: QColor
    rule: QColor
    hair: QColor
    water: tuple[QColor, ...]
    now: QColor
    today: QColor
    tint: QColor
    focus: QColor

    def __getitem__(self, token: str) -> QColor:
        color: QColor = getattr(self, token)
        return color


@lru_cache(maxsize=1)
def _table() -> dict[str, Any]:
    return tomllib.loads(paths.resource("styles", "palettes.toml").read_text(encoding="utf-8"))


@lru_cache(maxsize=3)
def palette(name: str) -> Palette:
    """The colours of `light`, `dark` or `print`."""
    row = _table()[name]
    return Palette(name, water=tuple(map(QColor, row["water"])), **{token: QColor(row[token]) for token in TINTS})


def water_step(moisture_wb_frac: float) -> int:
    """Which of the six steps of water [0–5] a moisture [fraction wet basis] falls in."""
    return sum(moisture_wb_frac > top for top in _table()["water_up_to_wb_frac"])


def contrast(a: QColor, b: QColor) -> float:
    """How far two colours stand apart, 1 to 21 (WCAG 2.2, contrast ratio)."""
    light, dark = sorted((_luminance(a), _luminance(b)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def _luminance(color: QColor) -> float:
    """Relative luminance of sRGB (WCAG 2.2, definition)."""
    red, green, blue = (
        c / 12.92 if c <= 0.04045 else math.pow((c + 0.055) / 1.055, 2.4)
        for c in (color.redF(), color.greenF(), color.blueF())
    )
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def load_fonts() -> None:
    """Make the program's own letters known to Qt; they travel with it."""
    for file in sorted(paths.resource("fonts").glob("*.ttf")):
        QFontDatabase.addApplicationFont(str(file))


@lru_cache(maxsize=256)
def _font(family: str, size_px: int, weight: int, italic: bool) -> QFont:
    font = QFont([family, "DejaVu Sans"])
    font.setPixelSize(size_px)
    font.setWeight(QFont.Weight(weight))
    font.setItalic(italic)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    font.setStyleStrategy(QFont.StyleStrategy.PreferAntialias)
    return font


@lru_cache(maxsize=256)
def _metrics(family: str, size_px: int, weight: int, italic: bool) -> QFontMetricsF:
    return QFontMetricsF(_font(family, size_px, weight, italic))


@lru_cache(maxsize=128)
def _tile(kind: str, rgba: int, ratio: float) -> QPixmap:
    """A pattern as a seamless square of device pixels; Qt's own hatches are too fine and do not scale."""
    row = _table()["patterns"][kind]
    slopes = row.get("slopes", ())
    # A diagonal of pitch p repeats every p·√2 along both axes; whole device pixels keep the seam unseen.
    pitch = row["pitch_px"] * (2**0.5 if set(slopes) & {45, 135} else 1.0)
    side = max(2, round(pitch * ratio))
    tile = QPixmap(side, side)
    tile.fill(Qt.GlobalColor.transparent)
    painter = QPainter(tile)
    color = QColor.fromRgba(rgba)
    width = max(1.0, row["line_px"] * ratio)
    if row.get("dots"):
        dot = max(1, round(width))
        painter.fillRect((side - dot) // 2, (side - dot) // 2, dot, dot, color)
    for slope in slopes:
        if slope in (0, 90):
            whole = max(1, round(width))
            painter.fillRect(*((0, 0, side, whole) if slope == 0 else (0, 0, whole, side)), color)
            continue
        # As filled bands that run past the tile: a stroked line falls between pixels and shows the seams.
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        half = width / 2**0.5
        for shift in (-side, 0, side):
            left, right, low, high = shift - 1, shift + side + 1, side + 1, -1
            ends = ((left, low), (right, high)) if slope == 45 else ((left, high), (right, low))
            (x1, y1), (x2, y2) = ends
            band = [QPointF(x1 - half, y1), QPointF(x1 + half, y1), QPointF(x2 + half, y2), QPointF(x2 - half, y2)]
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(color)
            painter.drawPolygon(band)
    painter.end()
    return tile


class Look(QObject):
    """The colours and sizes in force. `changed` comes after light, dark or the size of letters has changed."""

    changed = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.palette = palette("light")
        self.scale = 1.0
        self._wish = "system"

    def __getitem__(self, token: str) -> QColor:
        return self.palette[token]

    @property
    def dark(self) -> bool:
        return self.palette.name == "dark"

    def px(self, size: float) -> int:
        """Screen pixels of a drawn size [px], with "larger" counted in."""
        return round(size * self.scale)

    def font(self, size_px: float, weight: int = REGULAR, family: str = SANS, *, italic: bool = False) -> QFont:
        """A font of a drawn size [px]; families are SANS, SERIF, DISPLAY."""
        return _font(family, self.px(size_px), weight, italic)

    def metrics(
        self, size_px: float, weight: int = REGULAR, family: str = SANS, *, italic: bool = False
    ) -> QFontMetricsF:
        """The measures of that font."""
        return _metrics(family, self.px(size_px), weight, italic)

    def water(self, moisture_wb_frac: float | None) -> QColor:
        """The blue of a moisture [fraction wet basis]; the ground where none is known."""
        return self.palette.paper if moisture_wb_frac is None else self.palette.water[water_step(moisture_wb_frac)]

    def text_on(self, ground: QColor) -> QColor:
        """Ink or paper, whichever reads better on a ground."""
        return max((self.palette.ink, self.palette.paper), key=lambda color: contrast(color, ground))

    def pattern(self, kind: str, color: QColor | None = None, ratio: float = 1.0) -> QBrush:
        """A brush of `estimated`, `doubtful`, `expected`, `resting` or `target` at a screen's device ratio."""
        tile = _tile(kind, (color or self.palette.ink).rgba(), ratio)
        brush = QBrush(tile)
        brush.setTransform(QTransform.fromScale(1 / ratio, 1 / ratio))
        return brush

    def wear(self, wish: str | None = None, scale: float | None = None) -> None:
        """Put on `light`, `dark` or what the `system` wears, and a size of letters; all widgets follow."""
        self._wish = wish or self._wish
        self.scale = scale or self.scale
        scheme = QGuiApplication.styleHints().colorScheme()
        system = "dark" if scheme == Qt.ColorScheme.Dark else "light"
        self.palette = palette(system if self._wish == "system" else self._wish)
        app = QApplication.instance()
        assert isinstance(app, QApplication)
        app.setFont(self.font(15))
        app.setPalette(_qt_palette(self.palette))
        app.setStyleSheet(sheet(self))
        self.changed.emit()

    def follow_system(self) -> None:
        """Change with the system's light and dark, where that is the wish."""
        QGuiApplication.styleHints().colorSchemeChanged.connect(self._system_changed)

    def _system_changed(self) -> None:
        if self._wish == "system":
            self.wear()


def _qt_palette(own: Palette) -> QPalette:
    """Qt's roles from ours: colour schemes of the system change nothing on some platforms, so it is painted here."""
    role = QPalette.ColorRole
    made = QPalette()
    for target, token in (
        (role.Window, "paper"), (role.Base, "sheet"), (role.AlternateBase, "band"), (role.Button, "sheet"),
        (role.WindowText, "ink"), (role.Text, "ink"), (role.ButtonText, "ink"), (role.PlaceholderText, "ink2"),
        (role.ToolTipBase, "sheet"), (role.ToolTipText, "ink"), (role.Highlight, "focus"),
        (role.HighlightedText, "paper"), (role.Link, "ink"), (role.Mid, "rule"), (role.Light, "hair"),
    ):  # fmt: skip
        made.setColor(target, own[token])
    for target in (role.WindowText, role.Text, role.ButtonText):
        made.setColor(QPalette.ColorGroup.Disabled, target, own.ink2)
    return made


def sheet(own: Look) -> str:
    """The style sheet: grounds, fields, tables, buttons, and the focus ring that is always seen."""
    c = {token: own[token].name() for token in TINTS}
    px = own.px
    return f"""
    QWidget {{ color: {c["ink"]}; }}
    QLineEdit, QPlainTextEdit, QComboBox, QSpinBox {{
        background: {c["sheet"]}; color: {c["ink"]}; border: 1px solid {c["rule"]}; border-radius: 0;
        padding: 0 {px(8)}px; min-height: {px(32)}px; selection-background-color: {c["focus"]};
        selection-color: {c["paper"]}; }}
    QLineEdit:focus, QPlainTextEdit:focus, QComboBox:focus, QSpinBox:focus {{
        border: 3px solid {c["focus"]}; padding: 0 {px(6)}px; }}
    QLineEdit:read-only {{ background: transparent; border: none; border-bottom: 1px solid {c["rule"]}; }}
    QPushButton {{
        background: {c["sheet"]}; color: {c["ink"]}; border: 1px solid {c["ink"]}; border-radius: 0;
        padding: 0 {px(12)}px; min-height: {px(32)}px; font-weight: 600; }}
    QPushButton:hover {{ background: {c["band"]}; }}
    QPushButton:pressed, QPushButton:checked {{ background: {c["ink"]}; color: {c["paper"]}; }}
    QPushButton:disabled {{ color: {c["ink2"]}; border-color: {c["hair"]}; background: {c["paper"]}; }}
    QPushButton:focus {{ border: 3px solid {c["focus"]}; padding: 0 {px(10)}px; }}
    QTableView, QListView, QTreeView, QScrollArea, QTextBrowser {{
        background: {c["paper"]}; border: none; gridline-color: {c["hair"]}; outline: none; }}
    QTableView::item, QListView::item {{ padding: 0 {px(8)}px; }}
    QTableView::item:selected, QListView::item:selected {{ background: {c["sheet"]}; color: {c["ink"]}; }}
    QTableView::item:focus, QListView::item:focus {{ border: 3px solid {c["focus"]}; }}
    QHeaderView {{ background: {c["paper"]}; border: none; }}
    QHeaderView::section {{
        background: {c["paper"]}; color: {c["ink2"]}; border: none; border-bottom: 1px solid {c["ink"]};
        padding: 0 {px(8)}px 0 {px(8) + 3}px; min-height: {px(28)}px; font-size: {px(14)}px; }}
    QScrollBar {{ background: {c["paper"]}; border: none; width: 12px; height: 12px; margin: 0; }}
    QScrollBar::handle {{ background: {c["hair"]}; min-height: 32px; min-width: 32px; }}
    QScrollBar::handle:hover {{ background: {c["rule"]}; }}
    QScrollBar::add-line, QScrollBar::sub-line {{ width: 0; height: 0; }}
    QScrollBar::add-page, QScrollBar::sub-page {{ background: transparent; }}
    QToolTip {{ background: {c["sheet"]}; color: {c["ink"]}; border: 1px solid {c["rule"]}; padding: 4px; }}
    QMenu, QComboBox QAbstractItemView {{ background: {c["sheet"]}; color: {c["ink"]}; border: 1px solid {c["rule"]}; }}
    QMenu::item {{ padding: 6px 16px; }}
    QMenu::item:selected {{ background: {c["band"]}; }}
    """


_look: Look | None = None


def look() -> Look:
    """The look in force; there is one for the whole program."""
    global _look
    if _look is None:
        _look = Look()
    return _look
