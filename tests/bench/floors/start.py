"""The least: an application, a window with one empty plot, the database library loaded, painted once."""

import sys

import pyqtgraph as pg
import sqlalchemy  # noqa: F401 (its loading is what is clocked)
from PySide6.QtCore import QEvent, QObject, QTimer
from PySide6.QtWidgets import QApplication, QMainWindow


class Eye(QObject):
    """Sees the first painting of the plot, says so, and ends the program."""

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Paint:
            watched.removeEventFilter(self)
            QTimer.singleShot(0, self.said)
        return False

    def said(self) -> None:
        print("painted", flush=True)
        QApplication.quit()


app = QApplication(sys.argv[:1])
window = QMainWindow()
plot = pg.PlotWidget()
window.setCentralWidget(plot)
eye = Eye()
plot.viewport().installEventFilter(eye)
window.resize(1366, 768)
window.show()
app.exec()
