"""Frozen rows that pages and papers show: facts and `Text`s, never colours or finished sentences.

Grams, fractions wet basis, UTC seconds; `None` means "not measured" (never 0 for nothing).
"""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date

from farmdesk.ahead.range import Ahead, Worry
from farmdesk.text import Text
from farmdesk.work.figures import Figure


@dataclass(frozen=True, slots=True)
class Weight:
    """Grams [g] at a stage, and how they are known; None: not measured."""

    grams: int | None
    mark: str = "measured"


@dataclass(frozen=True, slots=True)
class StripDay:
    """One day on the beds: its moisture [fraction wet basis] where one is known."""

    day: date
    moisture_wb_frac: float | None


@dataclass(frozen=True, slots=True)
class Strip:
    """The strip of life: a ruler in days with what was when. `today` is where knowledge ends."""

    first_day: date
    last_day: date
    today: date
    picks: tuple[tuple[date, int], ...] = ()  # day, grams
    vessel: tuple[tuple[float, float | None], ...] = ()  # from, until [UTC s]
    beds: tuple[StripDay, ...] = ()
    rain: tuple[tuple[date, float], ...] = ()  # day, mm while it lay on the beds
    gate: date | None = None  # into the store
    rest_until: date | None = None
    sent: date | None = None
    milled: date | None = None
    ahead: tuple[date, date, date | None] | None = None  # earliest, likely, latest (None: open)

    @property
    def in_vessel(self) -> bool:
        """Whether something of it is in a vessel still: then what lies ahead is the end of its ferment."""
        return any(until is None for _, until in self.vessel)


@dataclass(frozen=True, slots=True)
class LotCard:
    """A lot in the list."""

    code: str
    check: str
    method: Text
    blocks: str
    picked: tuple[date, date] | None
    state: str  # to come, picking, vessel, beds, store, mill, green, gone
    where: Text
    places: tuple[str, ...]
    strip: Strip
    stages: tuple[tuple[Text, Weight], ...]  # delivered, accepted, spread, dry, green as far as they came
    now: Weight
    moisture_wb_frac: float | None
    moisture_mark: str  # measured, computed, estimated
    ahead: Ahead | None
    doubts: int
    words: str  # everything the filter looks at, lower case
    alias: str = ""


@dataclass(frozen=True, slots=True)
class RiverPart:
    """A stage of the weight river: wet weight and dry matter [g] with its spread, and what left before it."""

    name: Text
    grams: int
    dry_matter_g: float
    dry_matter_sd_g: float
    left: tuple[tuple[Text, int], ...] = ()
    up: bool = False  # what left was water
    mark: str = "measured"
    missing_g: float = 0.0  # dry, without a name, to be looked for


@dataclass(frozen=True, slots=True)
class Unexplained:
    """Dry matter or kilograms missing [g], the spread [g] it must be judged by, and the verdict in words."""

    stage: Text
    grams: float
    sd_g: float
    flagged: bool
    text: Text


@dataclass(frozen=True, slots=True)
class Normal:
    """One number of a lot beside the own normal of its method."""

    name: Text
    own: Text | None
    normal: Text | None
    unusual: bool = False


@dataclass(frozen=True, slots=True)
class BalancePart:
    """A piece of the mill balance [g]: `name` is the account: top, peaberry, light, small, >husk, >unexplained..."""

    name: str
    label: Text
    grams: int


@dataclass(frozen=True, slots=True)
class Reached:
    """One line of a family tree: another lot, and the grams [g] that went between them."""

    code: str
    grams: int


@dataclass(frozen=True, eq=False)
class LotStory:
    """A lot's page."""

    card: LotCard
    headline: Text
    ferments: tuple[Figure, ...]
    drying: Figure | None
    river: tuple[RiverPart, ...]
    unexplained: tuple[Unexplained, ...]
    normals: tuple[Normal, ...]
    normal_of: Text
    deviations: tuple[Text, ...]
    doubts: tuple[Text, ...]
    balance: tuple[BalancePart, ...]
    balance_of: Text | None
    parents: tuple[Reached, ...]
    children: tuple[Reached, ...]
    beds: tuple[str, ...]  # where a reading may be taken now
    trays: tuple[str, ...]
    vessels: tuple[str, ...]
    last_reading: Text | None
    sensible: str  # what a bare number typed here would be: moisture, ph, none


@dataclass(frozen=True, slots=True)
class Lying:
    """What lies on a place of the yard: lot, moisture [fraction], grams now, litres still to leave."""

    lot: str
    since_utc_s: int
    moisture_wb_frac: float | None
    mark: str
    now_g: int | None
    water_left_g: int | None
    filled_frac: float = 1.0  # how much of the place's length it takes
    last_utc_s: int | None = None
    doubtful: bool = False
    was_wb_frac: float | None = None  # before it took up water again


@dataclass(frozen=True, slots=True)
class YardPlace:
    """A bed or patio cell on the plan, to scale (metres, origin south-west)."""

    code: str
    kind: str
    x_m: float
    y_m: float
    width_m: float
    depth_m: float
    cover: str
    covered: bool
    lying: tuple[Lying, ...]
    arriving: str = ""
    due: str = ""  # "", "today", "now"
    covered_since_utc_s: int | None = None


@dataclass(frozen=True, slots=True)
class YardMark:
    code: str
    kind: str  # tree, store
    x_m: float
    y_m: float
    width_m: float
    depth_m: float


@dataclass(frozen=True, slots=True)
class Dated:
    """A line of words with its instant: what changed, what was written."""

    at_utc_s: int
    head: Text
    more: Text | None = None


@dataclass(frozen=True, slots=True)
class ToDo:
    """A job that is due: where, what, minutes by how many hands where known, and how pressing."""

    where: str
    what: Text
    minutes: float | None = None
    due: str = "today"  # "now", "today"
    lot: str = ""


@dataclass(frozen=True, slots=True)
class LotWater:
    """Water still to leave of one lot on the yard [g], by place."""

    lot: str
    parts: tuple[tuple[str, int, float | None], ...]  # place, grams, moisture
    grams: int


@dataclass(frozen=True, eq=False)
class YardStory:
    """The yard at an instant."""

    at_utc_s: int
    headline: Text
    width_m: float
    depth_m: float
    places: tuple[YardPlace, ...]
    marks: tuple[YardMark, ...]
    changed: tuple[Dated, ...]
    todo: tuple[ToDo, ...]
    water: tuple[LotWater, ...]
    water_g: int
    usual_day_g: int | None
    rain: tuple[tuple[date, float], ...]  # of the week around
    used: int
    beds: int


@dataclass(frozen=True, slots=True)
class VesselStory:
    """A vessel at work: since when, readings, and the range of its end."""

    code: str
    lot: str
    method: Text
    filled_utc_s: int
    grams: int
    readings: tuple[tuple[int, float], ...]  # instant, pH
    last_ph: float | None
    last_mass_c: float | None
    last_utc_s: int | None
    ahead: Ahead | None
    latest_utc_s: int | None  # the method's latest hour
    due: str = ""
    sealed: bool = False

    @property
    def look_utc_s(self) -> float | None:
        """By when to look at it again [UTC s]; None until that is worked out."""
        return self.ahead.look_utc_s if self.ahead else None

    @property
    def worries(self) -> tuple[Worry, ...]:
        """What to look at twice or to act on now, alarms first."""
        return self.ahead.worries if self.ahead else ()


@dataclass(frozen=True, slots=True)
class Gap:
    """Something missing or doubtful: `doubtful` or `missing`; `key` tells what "not measured" would answer."""

    kind: str
    text: Text
    lot: str = ""
    place: str = ""
    quantity: str = ""
    day: str = ""


@dataclass(frozen=True, eq=False)
class TodayStory:
    """The first screen."""

    at_utc_s: int
    day: date
    work_day_n: int
    last_night: Text | None
    beds_used: int
    beds: int
    water_g: int
    vessels: tuple[VesselStory, ...]
    free_vessels: tuple[str, ...]
    yard: YardStory
    open_first: tuple[tuple[Text, tuple[str, ...], Text], ...]  # when, beds, why
    rain_words: Text | None
    rain_list: tuple[tuple[tuple[str, ...], float], ...]  # beds, minutes
    rain_minutes: float
    picking: tuple[tuple[str, Text], ...]  # block, words
    fruit: tuple[tuple[Text, Text], ...]
    waiting: tuple[tuple[str, Text], ...]  # who, what
    gaps: tuple[Gap, ...]
    jobs: tuple[tuple[str, float, float, Text, str], ...]  # lane, from, until [h of the day 0-24], words, due
    calm: Text | None
    begun: bool = True  # whether there is a lot at all
    gas: tuple[str, Text] | None = None  # how bad the room of the vessels would be, shut; and what to do


@dataclass(frozen=True, slots=True)
class DayWeather:
    day: date
    good_h: float | None
    rain_mm: float | None


@dataclass(frozen=True, slots=True)
class RoadStory:
    """What stands under each place of the road, and on the season's ruler."""

    today: date
    work_day_n: int
    as_of_utc_s: int
    known_utc_s: int
    begun: int
    under: dict[str, Text | None]  # picking, ferments, yard, store, mill, cup, samples
    weather: tuple[DayWeather, ...]
    first_day: date
    last_day: date
    practice: bool
    farm: str


@dataclass(frozen=True, eq=False)
class SheetStory:
    """The lot sheet: facts only, no person's name, no coordinates."""

    code: str
    check: str
    farm: str
    practice: bool
    version_n: int
    made: date
    blocks_line: Text
    hill: tuple[tuple[str, float, float, bool], ...]  # block, low, high [m], is of this lot
    strip: Strip
    unfinished: Text | None
    done: tuple[tuple[Text, Text | None], ...]  # head, facts; None: not measured
    drying: Figure | None
    weights: tuple[tuple[Text, Weight], ...]
    ratio: Text | None
    balance: tuple[BalancePart, ...]
    balance_of: Text | None
    milled: date | None
    screens: tuple[tuple[Text, int], ...]  # sieve, grams
    green: tuple[tuple[Text, Text | None], ...]
    differed: tuple[Text, ...]
    beds: tuple[str, ...] = field(default=())
