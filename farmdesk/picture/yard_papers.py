"""Papers of the field, the wet side and the yard: picking, vessels, beds, readings, sky."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from farmdesk.picture.accounts import FIELD, INTAKE, Line, Posting


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
