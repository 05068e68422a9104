"""Beside the yard sheet that is typed in: the lot of the open row with its curve, and what is on disk so far."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Slot
from PySide6.QtGui import QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QWidget

from farmdesk.desk.charts.chart import Chart
from farmdesk.desk.pages import Desk
from farmdesk.desk.theme import DISPLAY, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.ink import Ink
from farmdesk.text import Counted
from farmdesk.work.stories import LotStory
from farmdesk.work.yard_sheet import SheetRow

CHART_TOP_PX, CHART_PX = 60, 300
MOST_MISSING = 4


class SheetSide(QWidget):
    """`tell` gives it the row that is open; it asks for the lot itself."""

    def __init__(self, desk: Desk, parent: QWidget) -> None:
        super().__init__(parent)
        self.desk = desk
        self.lot: LotStory | None = None
        self.written_n, self.rows_n, self.last_utc_s = 0, 0, 0
        self.missing: Sequence[SheetRow] = ()
        self._wanted = self._asking = ""
        self.chart = Chart(desk, self)
        self.chart.hide()

    def tell(self, lot: str, written_n: int, rows_n: int, last_utc_s: int, missing: Sequence[SheetRow]) -> None:
        """The lot of the open row; rows on disk of so many, the last at an instant [UTC s]; rows passed over."""
        self._wanted, self.written_n, self.rows_n = lot, written_n, rows_n
        self.last_utc_s, self.missing = last_utc_s, missing
        self.setAccessibleName(" ".join([*self.written_words(), *map(self.missing_words, missing)]))
        self._ask()
        self.update()

    def _ask(self) -> None:
        from farmdesk.work.lots import lot_story

        if not self._wanted or self._asking:
            return
        code, at_utc_s = self._wanted, self.desk.as_of
        self._asking = code
        self.desk.lanes.ask(lambda farm: lot_story(farm, code, at_utc_s), self._came, self._refused)

    @Slot(object)
    def _came(self, story: LotStory) -> None:
        came, self._asking = self._asking, ""
        self.lot = story
        self.chart.setVisible(story.drying is not None)
        self.chart.show_figure(story.drying)
        self.update()
        if came != self._wanted:
            self._ask()

    @Slot(object)
    def _refused(self, error: Exception) -> None:
        self._asking = ""
        self.desk.lanes.stray(error)

    def written_words(self) -> list[str]:
        """How much is on disk."""
        if not self.last_utc_s:
            return [self.tr("{n} of {m} {m:row|rows}.").format(n=self.written_n, m=Counted(self.rows_n))]
        hour = f"{self.desk.time.local(self.last_utc_s):%H:%M:%S}"
        return [
            self.tr("{n} of {m} {m:row|rows}, the last at {hour}.").format(
                n=self.written_n, m=Counted(self.rows_n), hour=hour
            )
        ]

    def missing_words(self, row: SheetRow) -> str:
        """A row that was passed over."""
        return self.tr("bed {bed}, {lot}: no reading").format(bed=row.bed, lot=row.lot)

    def resizeEvent(self, event: QResizeEvent) -> None:
        self.chart.setGeometry(0, look().px(CHART_TOP_PX), self.width(), look().px(CHART_PX))

    def paintEvent(self, event: QPaintEvent) -> None:
        px, wide = look().px, self.width()
        with Ink(self) as ink:
            if self.lot is not None:
                card, base = self.lot.card, px(30)
                end = ink.text(0, base, card.code, 26, SEMIBOLD, family=DISPLAY)
                end = ink.text(end + px(8), base, card.check, 17, color="ink2")
                where = ink.fitted(self.desk.words.say(card.where), wide - end - px(20), 14)
                ink.text(wide, base, where, 14, align="right")
                ink.level(0, wide, base + px(14), 1.6, "ink")
            y = px(CHART_TOP_PX + CHART_PX + 30)
            ink.level(0, wide, y - px(16), 1, "hair")
            ink.text(0, y + px(8), self.tr("Written so far"), 18, SEMIBOLD, family=SERIF)
            ink.text(0, y + px(34), self.written_words()[0], 15)
            ink.text(0, y + px(56), self.tr("Each row is on disk before the next one opens."), 14, color="ink2")
            if not self.missing:
                return
            ink.text(0, y + px(88), self.tr("For the gap list tonight"), 18, SEMIBOLD, family=SERIF)
            for i, row in enumerate(self.missing[:MOST_MISSING]):
                base = y + px(112 + 22 * i)
                ink.swatch(0, base, "estimated")
                ink.text(px(22), base, self.missing_words(row), 15)
