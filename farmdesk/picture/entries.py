"""What a hand writes down: the kinds of entry, and what each one says.

An entry is a fact with its circumstances: when it happened, when it was written, by whom, with which
instrument, and how far it can be trusted (`mark`). Its body is one of the frozen kinds of `yard_papers` and
`office_papers`; nothing that can be computed stands in one. Grams are whole; instants are UTC seconds.

Coffee moves in postings (see `accounts`). A posting is typed, or takes ALL that the books hold in its heap,
or receives the REST; once the fold has filled these in, an entry's postings sum to exactly zero.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Generic, Union

from typing_extensions import TypeVar  # a default for a type variable comes with Python 3.13

from farmdesk.picture.accounts import (
    ALL,
    CARRIED,
    FIELD,
    FLOATERS,
    GAS,
    GREEN,
    HUSK,
    INTAKE,
    JUICE,
    LIGHT,
    MARKS,
    MILL,
    PEABERRY,
    PICKED_OUT,
    PULP,
    REST,
    RETAINED,
    SAMPLE,
    SMALL,
    SOLD,
    SORTED,
    STORE,
    STREAMS,
    TESTS,
    TOP,
    TYPED,
    UNEXPLAINED,
    WATER,
    Line,
    Posting,
)
from farmdesk.picture.office_papers import (
    Advance,
    Check,
    Correction,
    CropCount,
    Cup,
    DayWork,
    Defects,
    Hold,
    HullTest,
    PaperGiven,
    Parcel,
    ParcelNews,
    PaySheet,
    Plan,
    Remark,
    RipeLook,
    Round,
    Sale,
    Screens,
    Shelved,
    Skipped,
    Strike,
)
from farmdesk.picture.yard_papers import (
    Birth,
    Cover,
    Flow,
    LoggerFile,
    Outlook,
    Platform,
    Reading,
    Rinse,
    Ripeness,
    VesselStep,
    Weather,
    WeighIn,
    Yeast,
)

__all__ = [
    "ALL",
    "CARRIED",
    "FIELD",
    "FLOATERS",
    "GAS",
    "GREEN",
    "HUSK",
    "INTAKE",
    "JUICE",
    "KINDS",
    "LIGHT",
    "MARKS",
    "MILL",
    "PEABERRY",
    "PICKED_OUT",
    "PULP",
    "REST",
    "RETAINED",
    "SAMPLE",
    "SMALL",
    "SOLD",
    "SORTED",
    "STORE",
    "STREAMS",
    "TESTS",
    "TOP",
    "TYPED",
    "UNEXPLAINED",
    "WATER",
    "Advance",
    "B",
    "Birth",
    "Body",
    "Check",
    "Correction",
    "Cover",
    "CropCount",
    "Cup",
    "DayWork",
    "Defects",
    "Entry",
    "Flow",
    "Hold",
    "HullTest",
    "Line",
    "LoggerFile",
    "Outlook",
    "PaperGiven",
    "Parcel",
    "ParcelNews",
    "PaySheet",
    "Plan",
    "Platform",
    "Posting",
    "Reading",
    "Remark",
    "Rinse",
    "RipeLook",
    "Ripeness",
    "Round",
    "Sale",
    "Screens",
    "Shelved",
    "Skipped",
    "Strike",
    "VesselStep",
    "Weather",
    "WeighIn",
    "Yeast",
    "lots_of",
]

Body = Union[
    Birth,
    WeighIn,
    Platform,
    Ripeness,
    Flow,
    VesselStep,
    Yeast,
    Rinse,
    Reading,
    LoggerFile,
    Cover,
    Weather,
    Outlook,
    Shelved,
    HullTest,
    Screens,
    Defects,
    Cup,
    Check,
    Correction,
    Parcel,
    ParcelNews,
    Hold,
    Sale,
    Remark,
    Plan,
    Skipped,
    PaperGiven,
    CropCount,
    RipeLook,
    Round,
    Advance,
    DayWork,
    PaySheet,
    Strike,
]
KINDS: tuple[type, ...] = Body.__args__  # type: ignore[attr-defined]


B = TypeVar("B", bound=Body, default=Body, covariant=True)


@dataclass(frozen=True, slots=True)
class Entry(Generic[B]):
    """One line of the notebook.

    `id` is unique across computers; `happened_utc_s` is when it was so, `written_utc_s` when it was
    written down; `replaces` names the struck entry that this one corrects; `batch` binds the entries of
    one act, undone together.
    """

    id: str
    happened_utc_s: int
    written_utc_s: int
    body: B
    who: str = ""
    instrument: str = ""
    mark: str = "measured"
    note: str = ""
    replaces: str = ""
    batch: str = ""


def lots_of(body: Body) -> Sequence[str]:
    """The codes of the lots an entry speaks of; none for weather, instruments and strikes."""
    lot = getattr(body, "lot", "")
    if type(body) is Flow:
        others = {posting.lot for posting in body.postings}
        others.discard(lot)
        return (lot, *sorted(others)) if others else (lot,)
    return (lot,) if lot else ()
