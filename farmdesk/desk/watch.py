"""A watched folder: a logger's file that grows there moves the open ferment's curve by itself.

Which vessel a file belongs to is asked once, on the lot's page, and remembered by the file's name. The
system's own notice of a change is used where it comes; a look each second stands in where it does not (some
network folders and USB sticks never give notice). Only whole lines are read: a line still being written waits.
"""

from __future__ import annotations

import json
import tempfile
import time
from collections.abc import Callable
from dataclasses import asdict, dataclass, field
from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QEvent, QFileSystemWatcher, QObject, QSettings, QTimer, Signal, Slot

from farmdesk import paths
from farmdesk.desk.pages import Desk
from farmdesk.errors import Answer, Asked, FarmError, Question
from farmdesk.text import N_
from farmdesk.work.changes import Hand

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm
    from farmdesk.work.reading_in import ReadIn

LOOK_MS = 1000
REST_S = 5.0  # a last line without an end that stands so long is not being written any more
ENDINGS = (".csv", ".txt", ".tsv", ".log")
NOT_HERE, NEVER = "not here", "never"


@dataclass(frozen=True)
class Placed:
    """Where a file's readings belong; an empty lot: its file is left alone."""

    lot: str = ""
    place: str = ""
    logger: str = ""
    answers: dict[str, str] = field(default_factory=dict)


def _store() -> QSettings:
    return QSettings(str(paths.data_folder() / "desk.ini"), QSettings.Format.IniFormat)


class FolderWatch(QObject):
    """Watches one folder. `waiting` tells that a file wants to be placed, or that none does any more."""

    waiting = Signal()
    grew = Signal(str, int)  # file name, rows that were new

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self.desk = desk
        self.folder: Path | None = None
        self.placed: dict[str, Placed] = {}
        self.unplaced: list[str] = []
        self.asked: dict[str, Question] = {}  # what a file's own reader wants to know first
        self._seen: dict[str, tuple[int, int]] = {}
        self._unended: dict[str, float] = {}  # since when a file has stood with its last line not ended
        self._reading = ""
        self._told = ""
        self._system = QFileSystemWatcher(self)
        self._system.directoryChanged.connect(self.look)
        self._system.fileChanged.connect(self.look)
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(LOOK_MS)
        self._soon.timeout.connect(self.look)
        window = desk.parent()
        if window is not None:
            window.installEventFilter(self)
        self._load()

    # what is remembered

    def _load(self) -> None:
        store = _store()
        rows = json.loads(str(store.value("watch/files") or "{}"))
        self.placed = {name: Placed(**row) for name, row in rows.items()}
        folder = str(store.value("watch/folder") or "")
        if folder and Path(folder).is_dir():
            self._begin(Path(folder))

    def _save(self) -> None:
        store = _store()
        store.setValue("watch/folder", str(self.folder or ""))
        store.setValue("watch/files", json.dumps({name: asdict(row) for name, row in self.placed.items()}))
        store.sync()

    def set_folder(self, folder: Path | None) -> None:
        """Watch this folder from now on; None watches nothing."""
        self.stop()
        self.folder, self.unplaced, self.asked = None, [], {}
        if folder is not None:
            self._begin(folder)
        self._save()
        self.waiting.emit()

    def _begin(self, folder: Path) -> None:
        self.folder = folder
        self._seen = {}
        self._system.addPath(str(folder))
        self.look()

    def stop(self) -> None:
        """Look no more: the window closes, or another folder is watched."""
        self._soon.stop()
        known = [*self._system.directories(), *self._system.files()]
        if known:
            self._system.removePaths(known)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Close:
            self.stop()
        return False

    # looking

    @Slot()
    def look(self, _path: str = "") -> None:
        """Look at the folder now: new files want to be placed, placed ones that grew are read."""
        if self.folder is None:
            return
        self._soon.start()
        changed = []
        before = list(self.unplaced)
        for path in self._files():
            size = path.stat()
            now = (size.st_size, size.st_mtime_ns)
            if self._seen.get(path.name) == now and not self._rests(path.name):
                continue
            placed = self.placed.get(path.name)
            if placed is None:
                self._seen[path.name] = now
                if path.name not in self.unplaced:
                    self.unplaced.append(path.name)
            elif placed.lot and path.name not in self.asked:
                changed.append((path, now))
        if self.unplaced != before:
            self.waiting.emit()
        if changed and not self._reading:
            path, now = changed[0]
            rests, self._seen[path.name] = self._seen.get(path.name) == now, now
            self._read(path, self.placed[path.name], whole=rests)

    def _rests(self, name: str) -> bool:
        """Whether a last line without an end has stood so long that it is whole."""
        since = self._unended.get(name)
        return since is not None and time.monotonic() - since >= REST_S

    def _files(self) -> list[Path]:
        assert self.folder is not None
        try:
            found = sorted(p for p in self.folder.iterdir() if p.suffix.lower() in ENDINGS and p.is_file())
        except OSError:  # the stick was pulled; it may come back
            return []
        new = [str(p) for p in found if str(p) not in self._system.files()]
        if new:
            self._system.addPaths(new)
        return found

    def _read(self, path: Path, placed: Placed, *, sure: bool = True, whole: bool = False) -> None:
        self._reading = path.name
        self._unended.pop(path.name, None)
        if not whole and not _ended(path):
            self._unended[path.name] = time.monotonic()
        hand = Hand(mark="logger", answers=dict(placed.answers))
        self.desk.lanes.ask(_reader(path, placed, hand, sure=sure, whole=whole), self._was_read, self._refused)

    @Slot(object)
    def _was_read(self, read: ReadIn) -> None:
        name, self._reading, self._told = self._reading, "", ""
        if read.done is not None:
            # Not on the undo list: rows come by themselves each minute and would push out what hands have done.
            self.desk.lanes.changed.emit(read.done.changes)
            self.grew.emit(name, read.added_n)
        self.look()

    @Slot(object)
    def _refused(self, error: Exception) -> None:
        name, self._reading = self._reading, ""
        if isinstance(error, Asked):
            self.asked[name] = error.question
            self.waiting.emit()
        elif isinstance(error, FarmError):
            said = " ".join(self.desk.words.say(text) for text in (error.text, error.hint) if text)
            if said != self._told:  # a file that cannot be read says so once, not each second
                self._told = said
                self.desk.tell(said)
        else:
            self.desk.lanes.stray(error)

    # placing

    def question_for(self, lot: str, vessels: tuple[str, ...], loggers: tuple[str, ...]) -> tuple[str, Question] | None:
        """What is to be asked on a lot's page: a file's name and the question, or None."""
        for name, question in self.asked.items():
            if self.placed[name].lot == lot:
                return name, question
        if not self.unplaced or not vessels:
            return None
        name = self.unplaced[0]
        named = [code for code in loggers if code.casefold() in name.casefold()] or list(loggers) or [""]
        answers = [
            Answer(
                json.dumps([vessel, logger]),
                N_("watch", "{vessel}, logger {logger}", vessel=vessel, logger=logger or "–"),
            )
            for vessel in vessels
            for logger in named
        ][:7]
        answers.append(Answer(NOT_HERE, N_("watch", "not of this lot")))
        answers.append(Answer(NEVER, N_("watch", "leave this file alone")))
        text = N_("watch", "{file} is new in the watched folder. Where does it measure {lot}?", file=name, lot=lot)
        return name, Question("file", f"file {name}", text, tuple(answers))

    def answer(self, name: str, lot: str, question: Question, value: str) -> None:
        """Place a file, or answer what its reader asked."""
        if name in self.asked:
            before = self.placed[name]
            del self.asked[name]
            placed = Placed(before.lot, before.place, before.logger, {**before.answers, question.key: value})
        elif value == NOT_HERE:
            self.unplaced.remove(name)  # asked again when it grows: another lot's vessel may be open by then
            self.waiting.emit()
            return
        elif value == NEVER:
            placed = Placed()
        else:
            vessel, logger = json.loads(value)
            placed = Placed(lot, vessel, logger)
        self.placed[name] = placed
        if name in self.unplaced:
            self.unplaced.remove(name)
        self._save()
        self.waiting.emit()
        if placed.lot and self.folder is not None:
            self._read(self.folder / name, placed, sure=False)


def _reader(path: Path, placed: Placed, hand: Hand, *, sure: bool, whole: bool) -> Callable[[OpenFarm], Any]:
    """What the desk lane does with a file: reads its whole lines, in pieces."""

    def read(farm: OpenFarm) -> Any:
        from farmdesk.work.reading_in import read_logger_file

        with tempfile.TemporaryDirectory(prefix="farmdesk-") as folder:
            file = path if whole else whole_lines(path, Path(folder))
            return read_logger_file(
                farm, file, lot=placed.lot, place=placed.place, logger=placed.logger, hand=hand, sure=sure
            )

    return read


def _ended(path: Path) -> bool:
    """Whether the last line of a file has its end."""
    with path.open("rb") as file:
        size = file.seek(0, 2)
        file.seek(max(0, size - 1))
        return file.read() in (b"\n", b"")


def whole_lines(path: Path, folder: Path) -> Path:
    """The file itself where its last line is ended, else a copy without the line still being written."""
    with path.open("rb") as file:
        data = file.read()
    if data.endswith(b"\n"):
        return path
    copy = folder / path.name
    copy.write_bytes(data[: data.rfind(b"\n") + 1])
    return copy


def watch_of(desk: Desk) -> FolderWatch:
    """The one watch of a desk."""
    found = desk.findChild(FolderWatch)
    return found if found is not None else FolderWatch(desk)
