"""Qt's binding gives back what it takes.

PySide6 6.12.0 under Python 3.11 loses one reference to True at each signal and one to None at each setter; after some
thousand calls the interpreter aborts. Newer Pythons make these objects immortal and hide it.
"""

from __future__ import annotations

import subprocess
import sys

PROBE = """
import sys
from PySide6.QtCore import QAbstractListModel, QCoreApplication, QIdentityProxyModel, QObject, Qt, Signal

class Bell(QObject):
    rung = Signal(int)

class Silent(QAbstractListModel):
    def headerData(self, section, orientation, role=Qt.ItemDataRole.DisplayRole):
        return None

app = QCoreApplication([])
bell, silent, through_qt = Bell(), Silent(), QIdentityProxyModel()
through_qt.setSourceModel(silent)

def ring(times):
    for turn in range(times):
        bell.rung.emit(turn)
        bell.setObjectName("bell")
        through_qt.headerData(0, Qt.Orientation.Horizontal)

ring(10)
before = sys.getrefcount(True), sys.getrefcount(None)
ring(1000)
print(before[0] - sys.getrefcount(True), before[1] - sys.getrefcount(None))
ring(20_000)
"""


def test_signals_and_setters_lose_no_reference() -> None:
    ran = subprocess.run([sys.executable, "-c", PROBE], capture_output=True, text=True, timeout=60)
    assert ran.returncode == 0, ran.stderr
    lost = [int(n) for n in ran.stdout.split()]
    assert len(lost) == 2
    assert max(lost) < 50, f"lost in 1000 rounds: {lost[0]} of True, {lost[1]} of None"
