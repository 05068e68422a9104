"""Papers of the store, the mill, the table and the office: bags, slips, counts, samples, sales, remarks, pay."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from farmdesk.picture.accounts import SAMPLE, SOLD, TOP, Line, Posting


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


@dataclass(frozen=True, slots=True)
class CropCount:
    """Trees of a block looked at before the harvest: how many, mean and spread of fruit [kg] on a tree.

    `loss_frac` is what will not be picked; `flowered` the ISO day of the main flowering.
    """

    rank: ClassVar[int] = 6
    block: str
    trees_n: int
    mean_kg: float
    sd_kg: float
    loss_frac: float = 0.0
    flowered: str = ""


@dataclass(frozen=True, slots=True)
class RipeLook:
    """Fruits counted on a block's marked branches before a round: how many are ripe, of how many."""

    rank: ClassVar[int] = 6
    block: str
    ripe_n: int
    looked_n: int


@dataclass(frozen=True, slots=True)
class Round:
    """A picking round meant for a block on a day (ISO), with the weight expected; pinned days never move."""

    rank: ClassVar[int] = 8
    block: str
    day: str
    grams: int
    pinned: bool = False


@dataclass(frozen=True, slots=True)
class Advance:
    """Money [cents] given to a picker ahead of the pay day, or carried over."""

    rank: ClassVar[int] = 8
    picker: str
    amount_cents: int
    text: str = ""


@dataclass(frozen=True, slots=True)
class DayWork:
    """A day, or part of one, that a picker was paid by the day [cents], and the task."""

    rank: ClassVar[int] = 8
    picker: str
    day: str
    share_frac: float
    amount_cents: int
    task: str = ""


@dataclass(frozen=True, slots=True)
class PaySheet:
    """A week's pay was closed and signed: net cents by picker, and the rates it was reckoned by. It is never
    changed; what is found later is an adjustment of the next one, at the rates of its own week.
    """

    rank: ClassVar[int] = 9
    first_day: str
    last_day: str
    nets: tuple[Line, ...]
    terms: tuple[Line, ...] = ()  # settings by name; none on sheets of older versions
