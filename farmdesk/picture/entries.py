"""What a hand writes down: the kinds of entry, and what each one says.

An entry is a fact with its circumstances: when it happened, when it was written, by whom, with which
instrument, and how far it can be trusted (`mark`). Its body is one of the frozen kinds below; nothing
that can be computed stands in one. Grams are whole; instants are UTC seconds.

Coffee moves in postings. An account is a heap of one lot at a place (`25-13W` at `T1`, `12`, `store`,
`mill`, `top`), a source (`<field`) or a named stream (`>pulp`, `>water`, `>unexplained`): see `ACCOUNTS`.
A posting is typed, or takes ALL that the books hold in its heap, or receives the REST; once the fold has
filled these in, an entry's postings sum to exactly zero.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import ClassVar, Generic, NamedTuple, Union

from typing_extensions import TypeVar  # a default for a type variable comes with Python 3.13

# how far a value can be trusted
MARKS = ("measured", "logger", "computed", "estimated", "corrected")

# accounts that are no place of the farm's own
FIELD = "<field"
INTAKE = "intake"
STORE = "store"
MILL = "mill"
TOP, LIGHT, SMALL, PEABERRY = "top", "light", "small", "peaberry"
GREEN = (TOP, LIGHT, SMALL, PEABERRY)
RETAINED = "retained"
SORTED, FLOATERS, PULP, JUICE, WATER, GAS, PICKED_OUT, HUSK, SAMPLE, SOLD, UNEXPLAINED, TESTS = (
    ">sorted", ">floaters", ">pulp", ">juice", ">water", ">gas", ">picked out", ">husk", ">sample", ">sold",
    ">unexplained", ">tests",
)  # fmt: skip
STREAMS = (
    SORTED, FLOATERS, PULP, JUICE, WATER, GAS, PICKED_OUT, HUSK, SAMPLE, SOLD, UNEXPLAINED, TESTS,
)  # fmt: skip

TYPED, ALL, REST = 0, 1, 2


class Posting(NamedTuple):
    """Grams [g] in (+) or out (−) of an account of a lot; `way` says whether they were typed.

    `way` ALL: everything the books hold there leaves. REST: what is left over arrives here (shared
    equally between several). `typed` is the weight as it was written (`128 lb`).
    """

    lot: str
    account: str
    grams: int = 0
    way: int = TYPED
    typed: str = ""


class Line(NamedTuple):
    """One named value of a list: a sieve's grams, a defect's count, one of three meter readings."""

    name: str
    value: float
    typed: str = ""


@dataclass(frozen=True, slots=True)
class Birth:
    """A lot is made: its code carries the method's letter at birth."""

    rank: ClassVar[int] = 0
    lot: str
    method: str
    method_version: int = 1
    alias: str = ""  # what else it is called: "25-04/06W" for a joint lot


@dataclass(frozen=True, slots=True)
class WeighIn:
    """One sack of one picker on the scale."""

    rank: ClassVar[int] = 1
    lot: str
    block: str
    picker: str
    half_day: str  # "am" or "pm"
    gross_g: int
    tare_g: int = 0
    typed: str = ""

    @property
    def postings(self) -> tuple[Posting, ...]:
        """Fruit comes in from the field."""
        net_g = self.gross_g - self.tare_g
        return Posting(self.lot, FIELD, -net_g), Posting(self.lot, INTAKE, net_g)


@dataclass(frozen=True, slots=True)
class Platform:
    """The receiving scale's own total for a lot's delivery: a check on the sum of the sacks."""

    rank: ClassVar[int] = 2
    lot: str
    grams: int
    typed: str = ""


@dataclass(frozen=True, slots=True)
class Ripeness:
    """Fruits counted by class in a sample of a delivery."""

    rank: ClassVar[int] = 2
    lot: str
    block: str
    half_day: str
    green: int
    turning: int
    ripe: int
    over_ripe: int = 0
    dried: int = 0
    bored: int = 0


@dataclass(frozen=True, slots=True)
class Flow:
    """Coffee goes from heaps to heaps or leaves in named streams.

    `act`: sort, fill, spread, move, shelve, send, back, test, retain, join, cut.
    """

    rank: ClassVar[int] = 3
    lot: str
    act: str
    postings: tuple[Posting, ...]


@dataclass(frozen=True, slots=True)
class VesselStep:
    """Something done to a vessel: `seal`, `open`, `wash`, `cool`."""

    rank: ClassVar[int] = 4
    lot: str
    place: str
    step: str
    text: str = ""


@dataclass(frozen=True, slots=True)
class Yeast:
    """Yeast pitched: grams [g], wetting water [mL] and its temperature [°C]."""

    rank: ClassVar[int] = 4
    lot: str
    place: str
    yeast_g: int
    water_ml: int | None = None
    water_c: float | None = None
    product: str = ""


@dataclass(frozen=True, slots=True)
class Rinse:
    """Rinses after the ferment; litres [L] where the meter was read."""

    rank: ClassVar[int] = 4
    lot: str
    place: str
    times_n: int
    litres_l: float | None = None


@dataclass(frozen=True, slots=True)
class Reading:
    """One look at an instrument: one value or several repeats, in the base unit.

    `quantity`: ph, mass_c, air_c, brix, tray_g (net), meter_wb_frac, aw, store_rh_frac, density_g_l.
    `place` is the vessel, bed or heap; empty means the lot as a whole. `tray` names a drying tray.
    """

    rank: ClassVar[int] = 5
    lot: str
    place: str
    quantity: str
    values: tuple[Line, ...]
    tray: str = ""
    product: str = ""
    bean_c: float | None = None

    @property
    def value(self) -> float:
        """The mean of the repeats, in the base unit."""
        return sum(line.value for line in self.values) / len(self.values)


@dataclass(frozen=True, slots=True)
class LoggerFile:
    """A logger's file was read in: its rows stand in the bulk table under this entry."""

    rank: ClassVar[int] = 5
    lot: str
    place: str
    logger: str
    quantity: str
    file_name: str
    sha256: str
    rows_n: int
    first_utc_s: int
    last_utc_s: int
    clock_shift_s: int = 0


@dataclass(frozen=True, slots=True)
class Cover:
    """Beds covered (`on`) or opened."""

    rank: ClassVar[int] = 5
    places: tuple[str, ...]
    on: bool
    text: str = ""


@dataclass(frozen=True, slots=True)
class Weather:
    """One day's weather from the yard's own instruments; `day` is ISO (2025-01-14)."""

    rank: ClassVar[int] = 6
    day: str
    min_c: float
    max_c: float
    rh_frac: float
    rain_mm: float
    good_h: float


@dataclass(frozen=True, slots=True)
class Outlook:
    """What is expected of a day's sky, in the farm's words: dry, cloud, rain."""

    rank: ClassVar[int] = 6
    day: str
    words: str


@dataclass(frozen=True, slots=True)
class Shelved:
    """Where the bags of a lot stand in the store."""

    rank: ClassVar[int] = 6
    lot: str
    bags_n: int
    pallet: str
    layer: str = ""


@dataclass(frozen=True, slots=True)
class HullTest:
    """A hand-hulled sample: parchment or dry cherry in, green and husk out [g]."""

    rank: ClassVar[int] = 6
    lot: str
    in_g: float
    green_g: float
    husk_g: float


@dataclass(frozen=True, slots=True)
class Screens:
    """The mill's sieve slip: kilograms of green on each screen, written in grams."""

    rank: ClassVar[int] = 6
    lot: str
    fractions: tuple[Line, ...]


@dataclass(frozen=True, slots=True)
class Defects:
    """A defect count by a named standard on a sample [g]; `full_n` where only the result was written."""

    rank: ClassVar[int] = 6
    lot: str
    standard: str
    sample_g: int
    counts: tuple[Line, ...] = ()
    full_n: float | None = None


@dataclass(frozen=True, slots=True)
class Cup:
    """An own cup table: the median score of so many sittings, and the words written there."""

    rank: ClassVar[int] = 6
    lot: str
    score: float
    sittings_n: int
    words: str = ""


@dataclass(frozen=True, slots=True)
class Check:
    """An instrument held against a reference; `off` is what it read too high, in its base unit."""

    rank: ClassVar[int] = 6
    instrument: str
    passed: bool
    off: float | None = None
    text: str = ""


@dataclass(frozen=True, slots=True)
class Correction:
    """From one instant to another an instrument's readings count `add` more, in the base unit."""

    rank: ClassVar[int] = 6
    instrument: str
    quantity: str
    add: float
    from_utc_s: int
    until_utc_s: int | None = None


@dataclass(frozen=True, slots=True)
class Parcel:
    """A sample packed for a buyer; it leaves the lot's top grade."""

    rank: ClassVar[int] = 7
    lot: str
    buyer: str
    grams: int
    sample_kind: str = "stock-lot"
    due_utc_s: int | None = None
    instead_of: str = ""

    @property
    def postings(self) -> tuple[Posting, ...]:
        """Top green goes into a bag for samples."""
        return Posting(self.lot, TOP, -self.grams), Posting(self.lot, SAMPLE, self.grams)


@dataclass(frozen=True, slots=True)
class ParcelNews:
    """What became of a parcel: `arrived`, `lost`, `answered`."""

    rank: ClassVar[int] = 8
    lot: str
    parcel: str
    news: str
    text: str = ""


@dataclass(frozen=True, slots=True)
class Hold:
    """Kept for a buyer until an instant."""

    rank: ClassVar[int] = 7
    lot: str
    buyer: str
    grams: int
    price_usd_kg: float | None
    until_utc_s: int


@dataclass(frozen=True, slots=True)
class Sale:
    """Sold from an account of the lot; `approved` is False while it is subject to approval."""

    rank: ClassVar[int] = 7
    lot: str
    buyer: str
    grams: int
    price_usd_kg: float | None
    approved: bool = True
    account: str = TOP

    @property
    def postings(self) -> tuple[Posting, ...]:
        """It leaves the books once the buyer has approved."""
        if not self.approved:
            return ()
        return Posting(self.lot, self.account, -self.grams), Posting(self.lot, SOLD, self.grams)


@dataclass(frozen=True, slots=True)
class Remark:
    """Words about a lot, a place or the farm; `about`: note, deviation, event, lesson."""

    rank: ClassVar[int] = 8
    lot: str
    place: str
    about: str
    text: str


@dataclass(frozen=True, slots=True)
class Plan:
    """What is meant to be done: a lot to come, its day (ISO), weight, method and beds."""

    rank: ClassVar[int] = 8
    lot: str
    method: str
    block: str
    day: str
    grams: int
    places: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Skipped:
    """A gap answered: this was not measured, and will not be."""

    rank: ClassVar[int] = 8
    lot: str
    place: str
    quantity: str
    day: str


@dataclass(frozen=True, slots=True)
class PaperGiven:
    """A paper was made for others: which, for which lot, the how-manyeth version, to whom."""

    rank: ClassVar[int] = 8
    lot: str
    paper: str
    version_n: int
    buyer: str = ""


@dataclass(frozen=True, slots=True)
class Strike:
    """An entry is struck out, and why; the undo of a strike is a strike of it."""

    rank: ClassVar[int] = 9
    target: str
    reason: str = ""


Body = Union[
    Birth, WeighIn, Platform, Ripeness, Flow, VesselStep, Yeast, Rinse, Reading, LoggerFile, Cover, Weather, Outlook,
    Shelved, HullTest, Screens, Defects, Cup, Check, Correction, Parcel, ParcelNews, Hold, Sale, Remark, Plan, Skipped,
    PaperGiven, Strike,
]  # fmt: skip
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
