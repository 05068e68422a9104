"""What is done about the care of the data: each act asks for one line at most, and says in a sentence what came of it."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QModelIndex, Qt, Slot
from PySide6.QtWidgets import QWidget

from farmdesk import paths
from farmdesk.desk.go import Target
from farmdesk.desk.pages import Desk, Page
from farmdesk.desk.pages.care_story import CareStory, sticks
from farmdesk.desk.pages.everything_out import Progress, everything_out
from farmdesk.desk.problems import lines, sentence
from farmdesk.desk.tables.rows import Rows
from farmdesk.desk.theme import look
from farmdesk.desk.widgets.ask_line import AskLine
from farmdesk.desk.widgets.guard import Guard
from farmdesk.desk.widgets.keys import KeyRow
from farmdesk.desk.widgets.title import Title
from farmdesk.errors import Asked, FarmError
from farmdesk.text import Counted, Moment
from farmdesk.work.changes import Done

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

MARGIN_PX = 20
SAID_MOST = 3


class CareActs(Page):
    """The acts; the page that shows them is `care.CarePage`."""

    copies: Rows

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, parent)
        self.story: CareStory | None = None
        self.said: list[str] = []
        self.progress: Progress | None = None
        self._asking_for = ""
        self._target = Path()
        self.title = Title(desk, self)
        self.keys = KeyRow(self)
        self.line = AskLine(self)
        self.line.answered.connect(self._line_answered)
        self.line.left.connect(self._keys_back)
        self.guard = Guard(self)
        self.guard.answered.connect(self._disk_answered)
        self.guard.went_back.connect(self._other_disk)

    # saying

    def say(self, told: str) -> None:
        """What was done, the newest first."""
        self.said = [told, *self.said][:SAID_MOST]
        self.setAccessibleName(". ".join([self.title.accessibleName(), told]))
        self.update()

    @Slot(object)
    def _trouble(self, error: Exception) -> None:
        self._busy_no_more()
        if isinstance(error, FarmError):
            self.say(sentence(error, self.desk.words))
        else:
            self.desk.lanes.stray(error)

    def _busy(self, words: str) -> None:
        self.title.reading(0.0, words)

    def _busy_no_more(self) -> None:
        self.title.reading(1.0)

    # a line that is asked for

    def _ask(self, what: str, said: str, typed: str) -> None:
        self._asking_for = what
        self.keys.hide()
        self.line.ask(said, typed)
        self.lay_out()

    @Slot(str)
    def _line_answered(self, typed: str) -> None:
        if not typed.strip():
            return
        self.line.hide()
        self._keys_back()
        {"stick": self.copy_to, "out": self.write_out, "carry": self.carry_to}[self._asking_for](typed.strip())

    @Slot()
    def _keys_back(self) -> None:
        self.keys.show()
        self.setFocus(Qt.FocusReason.OtherFocusReason)
        self.lay_out()

    # the stick

    def _ask_stick(self) -> None:
        found = sticks(self.story.path) if self.story is not None else []
        if found:
            said = self.tr("Where is the copy to lie? This disk was found.")
        else:
            said = self.tr("No stick is found. Put it in, or type a folder on another disk.")
        self._ask("stick", said, str(found[0]) if found else "")

    def copy_to(self, typed: str, answers: dict[str, str] | None = None) -> None:
        """Make a checked copy, on another disk; the same disk is asked about."""
        self._target, given = Path(typed).expanduser(), answers or {}
        self._busy(self.tr("copying, opening and comparing"))

        def copy(farm: OpenFarm) -> Done:
            from farmdesk.work.carrying import copy_to_stick
            from farmdesk.work.changes import Hand

            return copy_to_stick(farm, self._target, hand=Hand(answers=given))

        self.desk.lanes.do(copy, self._copied, self._not_copied)

    @Slot(object)
    def _copied(self, done: Done) -> None:
        self._busy_no_more()
        self.say(f"{self.desk.words.say(done.label)}.")
        self.refresh()

    @Slot(object)
    def _not_copied(self, error: Exception) -> None:
        if not isinstance(error, Asked):
            self._trouble(error)
            return
        self._busy_no_more()
        self.keys.hide()
        self.guard.resize(self.width() - 2 * look().px(MARGIN_PX), self.guard.height())
        self.guard.ask(error.question, self.desk.words, look().px(60))
        self.lay_out()

    @Slot(str)
    def _disk_answered(self, value: str) -> None:
        self._keys_back()
        self.copy_to(str(self._target), {"disk": value})

    @Slot()
    def _other_disk(self) -> None:
        self._ask("stick", self.tr("Where is the copy to lie instead?"), str(self._target))

    # a restore

    def _try_restore(self) -> None:
        if self.story is None or not self.story.copies:
            self.say(self.tr("There is no copy yet; one is made each time the program closes."))
            return
        self.try_copy(self.story.copies[max(self.copies.currentIndex().row(), 0)].path)

    def try_copy(self, path: Path) -> None:
        """Restore a copy into a folder that is thrown away, and compare its counts."""
        self._busy(self.tr("opening and counting"))

        def restore(farm: OpenFarm) -> Any:
            import tempfile

            from farmdesk.work.carrying import try_restore

            with tempfile.TemporaryDirectory(prefix="farmdesk-restore-") as scratch:
                return try_restore(farm, path, Path(scratch))

        self.desk.lanes.ask(restore, self._restored, self._trouble)

    @Slot(object)
    def _restored(self, tried: Any) -> None:
        self._busy_no_more()
        say = self.desk.words.say
        last = (
            say(Moment(self.desk.time.local(tried.last_written_utc_s), year=True)) if tried.last_written_utc_s else "–"
        )
        told = self.tr("{text} Its last row was written {last}. The folder it was tried in is gone again.")
        self.say(told.format(text=say(tried.text), last=last))

    # everything out

    def _ask_out(self) -> None:
        if self.story is None:
            return
        day = self.desk.time.calendar_day(self.desk.present).isoformat()
        folder = Path.home() / f"{self.story.path.stem} {day}"
        self._ask("out", self.tr("Into which folder? It must be new or empty."), str(folder))

    def write_out(self, typed: str) -> None:
        """Write all tables, the JSON and the lot sheets into a folder; Esc stops."""
        assert self.story is not None
        path, folder, language = self.story.path, Path(typed).expanduser(), self.desk.words.language
        self.progress = Progress(self)
        self.progress.came.connect(self._on_the_way)
        tell = self.progress.tell
        self._busy(self.tr("opening"))
        self.desk.lanes.count(lambda: (folder, everything_out(path, folder, language, tell)), self._out, self._trouble)

    @Slot(int)
    def _on_the_way(self, done_n: int) -> None:
        story = self.story
        if story is not None and self.progress is not None:
            all_n = max(story.rows_n + story.lots_n, 1)
            told = self.tr("{n} of {all} rows and sheets; Esc stops")
            number = self.desk.words.number
            words = told.format(n=number(min(done_n, all_n)), all=number(all_n))
            self.title.reading(min(done_n / all_n, 0.99), words)

    @Slot(object)
    def _out(self, result: tuple[Path, tuple[int, int, int]]) -> None:
        folder, (tables, rows, sheets) = result
        stopped = self.progress is not None and self.progress.stopped.is_set()
        self.progress = None
        self._busy_no_more()
        told = (
            self.tr(
                "Stopped. What was written so far lies in {folder}: {tables} {tables:table|tables}, "
                "{rows} {rows:row|rows}, {sheets} {sheets:sheet|sheets}."
            )
            if stopped
            else self.tr(
                "{tables} {tables:table|tables} with {rows} {rows:row|rows}, season.json and {sheets} lot "
                "{sheets:sheet|sheets} lie in {folder}."
            )
        )
        shown = Counted(rows, self.desk.words.number(rows))
        self.say(told.format(folder=str(folder), tables=Counted(tables), rows=shown, sheets=Counted(sheets)))

    # seasons

    @Slot(QModelIndex)
    def _open_season(self, index: QModelIndex) -> None:
        """A past season, only to be read."""
        if self.story is None:
            return
        path = self.story.seasons[index.row()].path
        self.desk.go(Target("page", "season"))
        self.desk.read_season.emit(path)

    def _ask_carry(self) -> None:
        why = self.desk.why_not_write()
        if self.desk.practice or why or self.story is None:
            self.say(why or self.tr("The practice season is not carried over."))
            return
        said = self.tr("Set-up and stock go into a new season. Which two figures does it carry?")
        self._ask("carry", said, self.story.next_season)

    def carry_to(self, season: str) -> None:
        """Begin the next season with the set-up and what still lies here, and open it."""
        folder = paths.data_folder()

        def carry(farm: OpenFarm) -> Path:
            from farmdesk.work.carrying import carry_on

            return carry_on(farm, folder, season)

        self._busy(self.tr("carrying over"))
        self.desk.lanes.ask(carry, self._carried, self._trouble)

    @Slot(object)
    def _carried(self, path: Path) -> None:
        self._busy_no_more()
        self.desk.go(Target("page", "today"))
        self.desk.open_season.emit(path)

    # verifying

    def _verify(self) -> None:
        if self.story is None:
            return
        path = self.story.path

        def look_through() -> Any:
            from farmdesk.work.seasons import verify

            return verify(path)

        self._busy(self.tr("reading every row"))
        self.desk.lanes.count(look_through, self._verified, self._trouble)

    @Slot(object)
    def _verified(self, problems: Any) -> None:
        self._busy_no_more()
        faults = lines(problems, self.desk.words)
        if not faults:
            self.say(self.tr("The file is whole, and as it was written."))
        else:
            more = self.tr("faults in all: {n}").format(n=len(faults))
            self.say(self.tr("The first fault: {fault} ({more})").format(fault=faults[0], more=more))
