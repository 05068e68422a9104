"""The practice season built once, and the story its papers must tell again: the season's own book of results."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

from farmdesk.clock import HOUR_S
from farmdesk.picture.entries import Reading
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.measures import fills
from farmdesk.picture.picture import Picture
from farmdesk.work.farm import OpenFarm

# lot | check | picked | block | ripe % | delivered | sorted | floaters | accepted | vessels | hours | mass °C | pH from to
INTAKE = """
25-01W 6 11-18 E 91 640 18 40 582 T1 13 19.4 5.3 4.5
25-02W 2 11-22 D 93 980 21 50 909 T2 12 19.8 5.4 4.5
25-03N G 11-27 D 94 520 10 23 487 - - - - -
25-04W T 12-02/12-03 C 95 1150 20 46 1084 T1 12 19.1 5.4 4.6
25-05A Y 12-05 E 96 560 8 21 531 S01-S12 72 20.6 5.2 4.1
25-06W L 12-09/12-10 D 95 1480 24 57 1399 T1+T2 12 18.7 5.4 4.6
25-07X F 12-13 F 97 430 5 12 413 B1-B2 48 19.6 5.3 3.9
25-08W D 12-17 C 96 1520 21 51 1448 T1 13 18.3 5.4 4.6
25-09N R 12-20 A 96 610 8 19 583 - - - - -
25-10W 6 12-23 E 95 1310 21 48 1241 T2 13 18.0 5.4 4.5
25-11W 2 12-30/12-31 D 96 1890 26 62 1802 T1+T2 12 18.4 5.4 4.6
25-12A 5 01-03 A 98 880 9 23 848 C1+C2 96 20.9 5.2 3.9
25-13W T 01-06/01-07 C 97 1960 24 54 1882 T1+T2 14 17.6 5.5 4.6
25-14X N 01-09 F 97 760 8 20 732 B1-B4 60 19.2 5.3 3.9
25-15N 4 01-13 B 98 290 3 6 281 - - - - -
25-16W H 01-14/01-15 D 96 1740 23 52 1665 T1+T2 13 17.9 5.4 4.6
25-17N V 01-18 A 97 940 11 25 904 - - - - -
25-18W 9 01-20/01-21 C 96 1620 23 50 1547 T1 14 17.2 5.5 4.6
25-19A E 01-23 F 96 690 10 22 658 C1+B5-B6 118 23.8 5.2 3.5
25-20W X 01-29 E 94 860 15 37 808 T2 13 18.1 5.4 4.5
25-21X R 02-01 B 98 380 3 8 369 B1-B2 72 18.8 5.3 3.9
25-22W P 02-06 C 96 1180 18 37 1125 T1 12 18.8 5.4 4.6
25-23N 4 02-12 A 96 760 11 25 724 - - - - -
25-24W H 02-20 F+A 92 940 23 46 871 T2 12 19.5 5.4 4.5
"""

# lot | kg spread | beds | kg/m² | on beds | to store | days | end % | dry kg | dry/accepted | m²·days
DRYING = """
25-01W 227 9,10 7.9 11-19 11-29 10 10.9 115 0.198 288
25-02W 355 11,12,13 8.2 11-23 12-03 10 11.0 181 0.199 360
25-03N 487 1,2,3 11.3 11-27 12-18 21 10.8 168 0.345 734
25-04W 423 9,10,11,12 7.3 12-04 12-15 11 10.8 215 0.198 547
25-05A 512 3,4,5 11.9 12-09 12-31 22 10.9 176 0.331 763
25-06W 546 12,13,14,15,16 7.6 12-11 12-22 11 11.1 278 0.199 619
25-07X 161 6 11.2 12-16 12-28 12 10.7 82 0.199 173
25-08W 565 9,10,11,15,16 7.8 12-18 12-29 11 10.9 287 0.198 619
25-09N 583 1,2,5 13.5 12-20 01-11 22 10.9 201 0.345 763
25-10W 484 12,13,14,15 8.4 12-24 01-05 12 11.0 246 0.198 590
25-11W 703 9,10,11,15,16,17 8.1 01-01 01-13 12 11.0 358 0.199 835
25-12A 818 3,4,5,6,7 11.4 01-08 01-31 23 10.8 280 0.330 1253
25-13W 734 12,13,14,16,17,18 8.5 01-08 01-20 12 10.9 373 0.198 835
25-14X 285 1,2 9.9 01-13 01-26 13 10.8 145 0.198 374
25-15N 281 8,19 9.8 01-13 02-06 24 10.9 97 0.345 691
25-16W 649 9,10,11,15,17 9.0 01-16 01-29 13 11.2 331 0.199 878
25-17N 904 18,20,21,22,6 12.6 01-18 02-14 27 11.4 314 0.347 1426
25-18W 603 12,13,14,16,7 8.4 01-22 02-06 15 11.1 307 0.198 850
25-19A 635 1,2,6,15 11.0 01-29 02-23 25 11.0 218 0.331 1210
25-20W 315 9,10,11 7.3 01-30 02-10 11 10.9 160 0.198 389
25-21X 144 3 10.0 02-05 02-18 13 10.7 73 0.198 187
25-22W 439 11,12,13,14 7.6 02-07 02-18 11 10.8 223 0.198 547
25-23N 724 4,5,7,8 12.6 02-12 03-04 20 10.7 249 0.344 994
25-24W 340 9,10,11 7.9 02-21 03-03 10 10.8 173 0.199 360
"""

# lot | sent | green | outturn % | husk | unexplained | 18+ 17 16 15 14 <14 PB | top | light | small | full defects | cup
MILL = """
25-01W 114 91 79.8 22 1 11 19 25 16 8 4 8 61 10 12 7 83
25-02W 180 145 80.6 34 1 25 35 36 22 10 4 13 104 14 14 6 84
25-03N 167 79 47.3 87 1 12 19 21 13 6 2 6 57 8 8 6 85
25-04W 214 173 80.8 39 2 19 38 50 33 14 5 14 126 14 19 4 85
25-05A 175 84 48.0 90 1 11 18 23 15 7 3 7 60 7 10 5 86
25-06W 277 225 81.2 50 2 43 58 57 29 14 4 20 170 17 18 4 85
25-07X 81 66 81.5 14 1 6 13 20 14 6 1 6 49 4 7 3 87
25-08W 286 233 81.5 51 2 28 56 67 42 16 5 19 178 15 21 3 85
25-09N 200 97 48.5 101 2 16 24 26 16 6 2 7 75 7 8 4 86
25-10W 245 198 80.8 45 2 26 44 54 36 16 6 16 144 16 22 5 84
25-11W 357 290 81.2 64 3 58 78 73 35 14 6 26 224 20 20 4 85
25-12A 279 136 48.7 141 2 23 35 38 20 7 3 10 107 9 10 3 88
25-13W 372 304 81.7 65 3 40 76 88 52 18 6 24 238 18 24 2 86
25-14X 144 117 81.2 26 1 12 25 35 23 9 2 11 87 8 11 3 87
25-15N 96 45 46.9 50 1 3 7 13 12 5 1 4 33 2 6 1 89
25-16W 330 267 80.9 60 3 51 69 67 35 16 5 24 202 20 21 4 85
25-17N 313 145 46.3 166 2 22 35 39 23 10 4 12 93 26 14 17 81
25-18W 306 247 80.7 57 2 30 57 71 44 20 5 20 182 20 25 5 85
25-19A 217 102 47.0 113 2 9 20 31 21 9 3 9 68 13 12 9 81
25-20W 159 128 80.5 30 1 15 27 36 24 10 4 12 90 12 14 6 84
25-21X 72 58 80.6 13 1 3 9 17 16 7 1 5 42 3 8 1 90
25-22W 222 180 81.1 40 2 20 40 53 34 14 5 14 134 13 19 4 85
25-23N 248 119 48.0 127 2 18 29 33 20 7 2 10 90 10 9 4 86
25-24W 172 137 79.7 34 1 12 26 39 29 15 5 11 89 17 20 8 83
"""

MIXED = ("25-04W", "25-06W")  # the mill mixed these two; their true grades are known only together


def lines(table: str) -> dict[str, list[str]]:
    """The rows of a table above, by lot."""
    return {line.split()[0]: line.split()[1:] for line in table.strip().splitlines()}


LOTS = tuple(lines(INTAKE))


def expanded(vessels: str) -> set[str]:
    """`C1+B5-B6` -> C1, B5, B6."""
    found: set[str] = set()
    for part in vessels.split("+"):
        first, _, last = part.partition("-")
        digits = len(first) - 1
        found |= {f"{first[0]}{n:0{digits}d}" for n in range(int(first[1:]), int((last or first)[1:]) + 1)}
    return found


@dataclass(frozen=True)
class Ferment:
    """A lot's ferment over its vessels: hours from fill to wash, °C of the mass over them, pH first and last."""

    hours_h: float
    mass_c: float
    ph: tuple[float, float]


def ferment(picture: Picture, lot: LotPicture) -> Ferment:
    """Each vessel counts by the kilograms in it; between two looks the mass is taken to change evenly."""
    sums = dict.fromkeys(("g", "h", "mass_g", "mass", "ph_g", "ph0", "ph1"), 0.0)
    for fill in fills(lot, picture.things):
        sums["g"] += fill.grams
        sums["h"] += fill.grams * (fill.hours_h or 0.0)
        looks = {"mass_c": [], "ph": []}  # type: dict[str, list[tuple[float, float]]]
        for entry in lot.of(Reading):
            inside = fill.from_utc_s <= entry.happened_utc_s <= (fill.until_utc_s or 0)
            if entry.body.place == fill.place and inside and entry.body.quantity in looks:
                at_h = (entry.happened_utc_s - fill.from_utc_s) / HOUR_S
                looks[entry.body.quantity].append((at_h, entry.body.value))
        if mass := looks["mass_c"]:
            pairs = [*pairwise(mass), (mass[-1], (fill.hours_h or 0.0, mass[-1][1]))]
            area = sum((b[0] - a[0]) * (a[1] + b[1]) / 2 for a, b in pairs)
            sums["mass_g"] += fill.grams
            sums["mass"] += fill.grams * area / (fill.hours_h or 1.0)
        if ph := looks["ph"]:
            sums["ph_g"] += fill.grams
            sums["ph0"] += fill.grams * ph[0][1]
            sums["ph1"] += fill.grams * ph[-1][1]
    return Ferment(
        sums["h"] / sums["g"],
        sums["mass"] / sums["mass_g"],
        (sums["ph0"] / sums["ph_g"], sums["ph1"] / sums["ph_g"]),
    )


def instant(farm: OpenFarm, text: str) -> int:
    """An instant [UTC s] in farm time."""
    return farm.time.read(text)
