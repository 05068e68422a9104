"""The farm's things: ordinary rows that are edited, not events.

Blocks, vessels, drying places, instruments, people as codes, methods by version, buyers and settings.
Lengths in metres, areas in hectares or square metres, volumes in litres.
"""

from __future__ import annotations

from dataclasses import dataclass, field

ROOF, HOOPS, TARP, OPEN = "roof", "hoops", "tarp", "open"


@dataclass(frozen=True, slots=True)
class Farm:
    """The farm as papers name it, its zone and the season this file holds."""

    name: str
    season: str  # "25"
    zone: str = "UTC"
    practice: bool = False
    first_day: str = ""  # ISO: the season's ruler begins
    last_day: str = ""
    altitude_m: float = 0.0
    language: str = "en"  # of papers for the crew
    day_starts_h: int = 4
    yard_width_m: float = 42.0
    yard_depth_m: float = 32.0


@dataclass(frozen=True, slots=True)
class Block:
    code: str
    name: str
    area_ha: float
    low_m: float
    high_m: float
    variety: str
    trees_n: int = 0
    planted: int | None = None
    shade: str = ""
    organic: str = ""  # yes, converting, no
    name_local: str = ""
    boundary: str = ""  # corners in degrees: latitude, longitude; …


@dataclass(frozen=True, slots=True)
class Vessel:
    code: str
    kind: str  # tank, sealed tank, barrel, liner
    gross_l: float
    usable_l: float
    sealed: bool


@dataclass(frozen=True, slots=True)
class Place:
    """A drying place on the yard plan: a bed or a cell of the patio; origin is the south-west corner."""

    code: str
    kind: str  # bed, patio
    x_m: float
    y_m: float
    width_m: float
    depth_m: float
    cover: str = OPEN
    cover_min: float = 0.0

    @property
    def area_m2(self) -> float:
        """Ground it covers [m²]."""
        return self.width_m * self.depth_m


@dataclass(frozen=True, slots=True)
class Landmark:
    """Something else on the yard plan: `tree` (radius in width_m), `store`."""

    code: str
    kind: str
    x_m: float
    y_m: float
    width_m: float
    depth_m: float = 0.0


@dataclass(frozen=True, slots=True)
class Instrument:
    """`sd` is one reading's spread in the base unit, `step` its last digit; `check_every_d` in days."""

    code: str
    kind: str  # platform scale, bench scale, moisture meter, ph meter, logger, ...
    quantity: str
    sd: float
    step: float
    check_every_d: int = 7
    clock_shift_s: int = 0  # a logger's own clock: what must be added to its times


@dataclass(frozen=True, slots=True)
class Tray:
    code: str
    tare_g: int


@dataclass(frozen=True, slots=True)
class Person:
    """A code that papers show. The name stays in the season file unless `named` is ticked; so does the year of birth."""

    code: str
    role: str
    pay: str = ""
    name: str = ""
    named: bool = False
    born: int | None = None


@dataclass(frozen=True, slots=True)
class Method:
    """A way of making a lot, by version: targets and limits; None where the method sets none."""

    letter: str
    version: int
    name: str
    whole: bool  # whole cherry is dried; otherwise parchment
    sealed: bool
    hours_low_h: float | None
    hours_high_h: float | None
    ph_low: float | None
    ph_high: float | None
    ends_by: str  # "hand" (the hand test near the target), "clock", "ph"
    ph_target: float | None
    mass_max_c: float | None
    yeast_g_kg: float | None
    rinses_n: int | None
    loading_kg_m2: float
    dry_days_max_d: int
    start_wb_frac: float  # moisture at spreading where it was not measured
    start_wb_sd_frac: float
    store_low_wb_frac: float = 0.10
    store_high_wb_frac: float = 0.12
    rest_days_d: int = 30


@dataclass(frozen=True, slots=True)
class Buyer:
    code: str
    kind: str = ""


@dataclass(frozen=True, slots=True)
class Things:
    """All of the farm's things, by code; settings are figures the farm may change, with their source."""

    farm: Farm
    blocks: dict[str, Block] = field(default_factory=dict)
    vessels: dict[str, Vessel] = field(default_factory=dict)
    places: dict[str, Place] = field(default_factory=dict)
    landmarks: dict[str, Landmark] = field(default_factory=dict)
    instruments: dict[str, Instrument] = field(default_factory=dict)
    trays: dict[str, Tray] = field(default_factory=dict)
    people: dict[str, Person] = field(default_factory=dict)
    methods: dict[str, Method] = field(default_factory=dict)  # key "W1": letter and version
    buyers: dict[str, Buyer] = field(default_factory=dict)
    settings: dict[str, str] = field(default_factory=dict)

    def method(self, letter: str, version: int = 0) -> Method | None:
        """The method of a letter, of a version or the newest."""
        if version:
            return self.methods.get(f"{letter}{version}")
        own = [m for m in self.methods.values() if m.letter == letter]
        return max(own, key=lambda m: m.version) if own else None
