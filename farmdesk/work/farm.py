"""An open farm: the season file and the picture folded from it. All verbs write through here."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from farmdesk import clock
from farmdesk.ahead.range import Ahead
from farmdesk.clock import FarmTime
from farmdesk.errors import NotPossible
from farmdesk.notebook.season_file import SeasonFile, new_id
from farmdesk.picture.entries import Body, Entry, Strike, lots_of
from farmdesk.picture.fold import NEVER, LotPicture
from farmdesk.picture.picture import Picture, fold
from farmdesk.picture.things import Things
from farmdesk.text import N_, Text
from farmdesk.work.changes import Changes, Done, Hand
from farmdesk.work.forecasts import Asked, Forecasts, Seen


class OpenFarm:
    """One season file that is open, and its picture as it is now known."""

    def __init__(self, file: SeasonFile) -> None:
        self.file = file
        self.picture: Picture = fold(file.entries(), file.things)
        self.forecasts = Forecasts()
        self._seen: dict[int, Seen] = {}

    @classmethod
    def open(cls, path: Path, *, read_only: bool = False) -> OpenFarm:
        """Open a season file and fold it. Raises FileTrouble with one sentence where it cannot be."""
        return cls(SeasonFile.open(path, read_only=read_only))

    @classmethod
    def create(cls, path: Path, things: Things) -> OpenFarm:
        """A new, empty season file with these things."""
        return cls(SeasonFile.create(path, things))

    @property
    def things(self) -> Things:
        """The farm's registers."""
        return self.picture.things

    @property
    def time(self) -> FarmTime:
        """The farm's own time."""
        return self.picture.time

    @property
    def reading_only(self) -> bool:
        """Whether this is a private copy, or a file opened only to be read."""
        return not self.file.can_write

    def seen(self, at_utc_s: int | None = None) -> Seen:
        """The farm at an instant [UTC s] as it was known then, with the forecasts worked out for it.

        From the last row written on, all that is known counts; None stands at the last row. Kept for the last
        few instants asked for, until something new is written.
        """
        at = NEVER if at_utc_s is None else at_utc_s
        kept = self._seen.get(at)
        if kept is None:
            if len(self._seen) > 7:
                self._seen.clear()
            known = at if at < self.picture.book.last_written_utc_s else NEVER
            picture = self.picture if at == NEVER else self.picture.at(at, known)
            kept = Seen(
                picture.things, picture.as_of, picture.known_at, picture.lots, picture.book,
                worked_out=self.forecasts.of(picture),
            )  # fmt: skip
            self._seen[at] = kept
        return kept

    def keep_forecast(self, asked: Asked, answer: Ahead) -> Changes:
        """Keep a forecast that was worked out, and say whose story it changes."""
        self.forecasts.keep(asked, answer)
        self._seen.clear()
        return Changes(frozenset({asked.key[0]}))

    def lot(self, code: str) -> LotPicture:
        """One lot's picture. Raises NotPossible where the books have no such lot."""
        lot = self.picture.lots.get(code)
        if lot is None:
            raise NotPossible(N_("farm", "There is no lot {code} in this season.", code=code))
        return lot

    def write(
        self, bodies: Sequence[Body], at_utc_s: int, hand: Hand, label: Text, *, replaces: str = "", lot: str = ""
    ) -> Done:
        """Write the entries of one act in one transaction, and fold them in.

        The written-instant never runs backwards: where the computer's clock did, the last row's stands.
        Raises NotPossible on a copy that can only be read; FileTrouble where the disk refuses.
        """
        pairs = [(body, hand.instrument) for body in bodies]
        return self.write_with(pairs, at_utc_s, hand, label, lot, replaces)

    def write_with(
        self,
        pairs: Sequence[tuple[Body, str]],
        at_utc_s: int,
        hand: Hand,
        label: Text,
        lot: str = "",
        replaces: str = "",
    ) -> Done:
        """Like `write`, each body with the instrument that gave it."""
        self._may_write()
        written = self.written_now()
        batch = new_id() if len(pairs) > 1 else ""
        return self.add(
            [
                Entry(new_id(), at_utc_s, written, body, hand.who, tool, hand.mark, hand.note, replaces, batch)
                for body, tool in pairs
            ],
            label,
            lot,
        )

    def add(self, entries: Sequence[Entry], label: Text, lot: str = "") -> Done:
        """Append ready entries and fold them in."""
        self.file.append(entries)
        return self.folded_in(entries, label, lot)

    def folded_in(self, entries: Sequence[Entry], label: Text, lot: str = "") -> Done:
        """Fold in entries that stand in the file already."""
        self.picture = self.picture.after(entries)
        self._seen.clear()
        ids = tuple(entry.id for entry in entries)
        return Done(self._changes(entries), ids, label, lambda farm: farm.strike(ids), lot)

    def strike(self, ids: Sequence[str], reason: str = "", label: Text | None = None) -> Done:
        """Strike entries out, and say why: the honest undo. Striking a strike brings its entry back."""
        self._may_write()
        written = self.written_now()
        missing = [i for i in ids if i not in self.picture.book.by_id]
        if missing:
            raise NotPossible(N_("farm", "There is no such row in the notebook."))
        entries = [Entry(new_id(), written, written, Strike(target, reason)) for target in ids]
        done = self.add(entries, label or N_("farm", "struck out"))
        targets = [self.picture.book.by_id[i] for i in ids]
        changes = done.changes | self._changes(targets)
        return Done(changes, done.entries, done.label, done.inverse)

    def save_things(self, things: Things) -> Done:
        """Save the farm's registers as edited."""
        self._may_write()
        before = self.things
        self.file.save_things(things)
        self.picture = self.picture.after((), things)
        self._seen.clear()
        label = N_("farm", "farm set-up")
        return Done(Changes(things=True), (), label, lambda farm: farm.save_things(before))

    def close(self) -> None:
        """Close the season file; its copy on closing is made by the notebook."""
        self.file.close()

    def written_now(self) -> int:
        """The instant to write under: never before the last row's, save in the practice season, where
        the past is played again.
        """
        if self.things.farm.practice:
            return clock.now()
        return max(clock.now(), self.picture.book.last_written_utc_s)

    def _may_write(self) -> None:
        if self.reading_only:
            raise NotPossible(
                N_("farm", "This is a copy that can only be read."),
                N_("farm", "Close the other window, then open the season again."),
            )

    def _changes(self, entries: Sequence[Entry]) -> Changes:
        lots = {lot for entry in entries for lot in lots_of(entry.body)}
        places = {str(place) for entry in entries if (place := getattr(entry.body, "place", ""))}
        for entry in entries:
            places.update(p.account for p in getattr(entry.body, "postings", ()))
            places.update(getattr(entry.body, "places", ()))
        if any(type(entry.body) is Strike for entry in entries):
            targets = [self.picture.book.by_id[e.body.target] for e in entries if type(e.body) is Strike]
            lots |= {lot for target in targets for lot in lots_of(target.body)}
        return Changes(frozenset(lots), frozenset(places))
