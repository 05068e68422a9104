"""Stories as the floors below would tell them: the practice season's 25-13W on the evening of 14 January.

The desk's tests paint these, so that a page is tested without a season file.
"""

from __future__ import annotations

from datetime import date, timedelta

import numpy as np

from farmdesk.ahead.range import Ahead
from farmdesk.clock import DAY_S, HOUR_S, FarmTime
from farmdesk.text import N_, Day, Num, Text, kg, pct
from farmdesk.work.figures import ANCHOR, HAND, METER, TRAY, Band, Curve, Fan, Figure, Flag
from farmdesk.work.stories import (
    BalancePart,
    LotCard,
    LotStory,
    Normal,
    Reached,
    RiverPart,
    Strip,
    StripDay,
    Unexplained,
    Weight,
)

TIME = FarmTime("America/Guatemala")
EVENING = TIME.instant(date(2025, 1, 14), 18, 41)
WASHED, NATURAL, SEALED = N_("lots", "washed"), N_("lots", "natural"), N_("lots", "sealed whole, dried whole")
STAGES = (N_("lots", "delivered"), N_("lots", "accepted"), N_("lots", "spread"), N_("lots", "dry"))


def jan(day: int, hour: int = 0, minute: int = 0) -> int:
    """An instant [UTC s] of January 2025 on the farm; days past 31 run on."""
    return TIME.instant(date(2025, 1, 1) + timedelta(days=day - 1), hour, minute)


def ahead(earliest: float | None, likely: float | None, latest: float | None, source: str = "tray+meter") -> Ahead:
    rests_on = N_("lots", "Rests on 7 tray weights, 3 days of meter, and own good hours of 5.0–6.8 a day.")
    return Ahead(earliest, likely, latest, earliest, latest, 0.0, rests_on, source)


def strip_13w(until: int = 14) -> Strip:
    water = (0.546, 0.453, 0.395, 0.337, 0.275, 0.230, 0.197)
    return Strip(
        date(2025, 1, 6),
        date(2025, 2, 21),
        date(2025, 1, until),
        picks=((date(2025, 1, 6), 980_000), (date(2025, 1, 7), 980_000)),
        vessel=((jan(6, 17), jan(7, 7)), (jan(7, 17), jan(8, 7))),
        beds=tuple(StripDay(date(2025, 1, 8) + timedelta(days=i), w) for i, w in enumerate(water)),
        rain=((date(2025, 1, 9), 2.0),),
        rest_until=date(2025, 2, 18),
        ahead=(date(2025, 1, 17), date(2025, 1, 18), date(2025, 1, 19)),
    )


def card(
    code: str = "25-13W",
    check: str = "T",
    method: Text = WASHED,
    *,
    state: str = "beds",
    where: Text | None = None,
    places: tuple[str, ...] = ("12", "13", "14", "16"),
    blocks: str = "C",
    picked: tuple[date, date] | None = (date(2025, 1, 6), date(2025, 1, 7)),
    strip: Strip | None = None,
    grams: tuple[int | None, ...] = (1_960_000, 1_882_000, 734_000),
    now_g: int = 414_000,
    moisture: float | None = 0.197,
    ends: Ahead | None = None,
    doubts: int = 0,
    words: str = "",
) -> LotCard:
    where = where or N_("lots", "beds {beds}", beds=" ".join(places))
    return LotCard(
        code=code,
        check=check,
        method=method,
        blocks=blocks,
        picked=picked,
        state=state,
        where=where,
        places=places,
        strip=strip or strip_13w(),
        stages=tuple((STAGES[i], Weight(g)) for i, g in enumerate(grams)),
        now=Weight(now_g, "computed"),
        moisture_wb_frac=moisture,
        moisture_mark="measured",
        ahead=ends,
        doubts=doubts,
        words=words or f"{code} {check} {method} block {blocks} {where} {state} on {state}".lower(),
    )


def cards() -> list[LotCard]:
    """What the list shows on 14 January: four lots on beds, one in a tank, eleven in the store."""
    likely = ahead(jan(17, 15), jan(18, 12), jan(19, 15))
    found = [
        card(ends=likely),
        card(
            "25-12A", "5", SEALED, blocks="A", picked=(date(2025, 1, 3),) * 2, places=("3", "4", "5", "6", "7"),
            where=N_("lots", "beds 3–7"), grams=(880_000, 848_000, 818_000), now_g=391_000, moisture=0.362,
            ends=ahead(jan(27), jan(29), jan(32)),
            strip=Strip(
                date(2025, 1, 3), date(2025, 2, 10), date(2025, 1, 14), picks=((date(2025, 1, 3), 880_000),),
                vessel=((jan(3, 17), jan(7, 5)),), rain=((date(2025, 1, 9), 2.0),),
                beds=tuple(StripDay(date(2025, 1, 7) + timedelta(days=i), 0.62 - 0.037 * i) for i in range(8)),
                ahead=(date(2025, 1, 27), date(2025, 1, 29), date(2025, 2, 1)),
            ),
        ),
        card(
            "25-14X", "N", N_("lots", "sealed, washed"), blocks="F", picked=(date(2025, 1, 9),) * 2, places=("1", "2"),
            grams=(760_000, 732_000, 285_000), now_g=225_000, moisture=0.426, ends=ahead(jan(24), jan(26), jan(29)),
        ),
        card(
            "25-15N", "4", NATURAL, blocks="B", picked=(date(2025, 1, 13),) * 2, places=("8", "19"),
            grams=(290_000, 281_000, 281_000), now_g=232_000, moisture=0.627, ends=ahead(jan(33), jan(37), None),
            doubts=1,
        ),
        card(
            "25-16W", "H", blocks="D", picked=(date(2025, 1, 14),) * 2, state="vessel", places=("T1",),
            where=N_("lots", "{vessel} since {hour}", vessel="T1", hour="17:00"), grams=(830_000, 802_000),
            now_g=802_000, moisture=None, ends=ahead(jan(15, 5), jan(15, 6), jan(15, 7), "ph"),
            words="25-16w h washed block d t1 in a tank vessel",
        ),
    ]  # fmt: skip
    return found + [stored(n + 1) for n in range(11)]


def stored(n: int) -> LotCard:
    """One of the lots at rest in the store."""
    return card(
        f"25-{n:02d}W", "X", blocks="D", picked=(date(2024, 11, 18),) * 2, state="store", places=("store",),
        where=N_("lots", "store, pallet {n}", n=n // 2 + 1), grams=(1_040_000, 1_010_000, 395_000, 209_700),
        now_g=209_700, moisture=0.111,
    )  # fmt: skip


def ferment(last_h: int = 12) -> Figure:
    """T1, first fill: five readings, then none before the wash at 07:00."""
    at = np.array([jan(6, 17) + h * HOUR_S for h in (0, 3, 6, 9, 12) if h <= last_h], dtype=np.float64)
    ph = np.array((5.54, 5.40, 4.97, 4.67, 4.61))[: at.size]
    mass = np.array((16.3, 17.3, 18.5, 18.6, 17.4))[: at.size]
    low, high = float(jan(6, 16)), float(jan(7, 8))
    night = Band("night", float(jan(6, 20)), float(jan(7, 5)), "x")
    return Figure(
        N_("lots", "Ferment"),
        N_(
            "lots", "pH {a} to {b} in {h}; target {t}. No reading between 05:00 and 07:00.",
            a=Num(5.54, "", 2), b=Num(float(ph[-1]), "", 2), h=Num(last_h, "h"), t="4.4–4.7",
        ),
        "time", "", low, high, 4.0, 6.0,
        curves=(Curve(HAND, at, ph, labelled=True),),
        bands=(Band("target", 4.4, 4.7), night, Band("gap", float(jan(7, 5)), float(jan(7, 7)), "x")),
        marks=(Flag(float(jan(7, 7)), N_("lots", "washed {hour}", hour="07:00")),),
        subtitle=N_("lots", "first fill, {vessel}", vessel="T1"),
        under=Figure(
            N_("lots", "mass °C"), N_("lots", "mass 16.3 to 18.6 °C"), "time", "°C", low, high, 15.0, 20.0,
            curves=(Curve(HAND, at, mass),), bands=(night,), y_decimals=1,
        ),
        y_decimals=2,
    )  # fmt: skip


def drying(days_n: int = 7, x_kind: str = "time") -> Figure:
    """The tray's line hung on the meter, three meter days with their spread, and the fan to 12 %."""
    net_g = np.array((2001, 1660, 1503, 1370, 1253, 1180, 1132), dtype=np.float64)[:days_n]
    water_pct = 100 * (1 - 1132 * (1 - 0.1973) / net_g)
    good_h = 6.1  # of a day, all through these weeks

    def x(day: float, hour: float = 16.0) -> float:
        return (day - 8) * good_h if x_kind == "good_h" else float(jan(8)) + (day - 8) * DAY_S + hour * HOUR_S

    meter = ((12, 27.4, 27.3, 27.6), (13, 22.7, 22.6, 22.8), (14, 19.7, 19.5, 20.2))
    shown = [row for row in meter if row[0] < 8 + days_n]
    start = 7 + days_n
    ahead_d = np.linspace(0.0, 7.0, 15)
    fan = []
    for good_a_day_h in (6.8, 6.1, 5.0):
        x0, end = 0.2457, 0.115
        db = end + (x0 - end) * np.exp(-0.078 * good_a_day_h * ahead_d)
        fan.append(100 * db / (1 + db))
    days = [
        (N_("lots", "{day}", day=Day(date(2025, 1, d))), float(d), likely)
        for d, likely in ((17, False), (18, True), (19, False))
    ]
    return Figure(
        N_("lots", "Drying"),
        N_(
            "lots", "{m} on {day} (three readings, 19.5–20.2). About 22 good hours to 12 %: 17–19 Jan.",
            m=pct(0.197), day=Day(date(2025, 1, 14)),
        ),
        x_kind, "%", x(8, 0), x(21.5), 8.0, 57.0,
        curves=(
            Curve(TRAY, np.array([x(8 + i) for i in range(days_n)]), water_pct, N_("lots", "tray 1")),
            Curve(
                METER, np.array([x(d, 16.2) for d, *_ in shown]), np.array([m for _, m, *_ in shown]),
                N_("lots", "meter"), np.array([lo for *_, lo, _ in shown]), np.array([hi for *_, hi in shown]),
            ),
            Curve(ANCHOR, np.array([x(14)]), np.array([19.7]), N_("lots", "anchor")),
        ),
        bands=(),
        flags=tuple(Flag(x(d, 15), text, likely) for text, d, likely in days),
        fan=Fan(np.array([x(start + d) for d in ahead_d]), *(np.array(line) for line in fan)),
        target=(12.0, N_("lots", "{target}", target=pct(0.12, 0))),
        stages=(
            (45.0, 57.0, N_("lots", "skin-dry")), (33.0, 45.0, N_("lots", "white")),
            (21.0, 33.0, N_("lots", "soft black")), (16.0, 21.0, N_("lots", "medium")),
            (12.0, 16.0, N_("lots", "hard black")), (8.0, 12.0, N_("lots", "dry")),
        ),
        rain=((x(9, 12), x(9, 18), 2.0),),
        subtitle=N_("lots", "beds 12–14 16 joined from six on 13 Jan; tray line hung on the meter"),
        y_decimals=1,
        rests_on=N_("lots", "Rests on 7 tray weights, 3 days of meter, and own good hours of 5.0–6.8 a day."),
    )  # fmt: skip


def river() -> tuple[RiverPart, ...]:
    """From the field to the beds: what stays, what left, and the dry matter inside."""
    return (
        RiverPart(N_("lots", "delivered"), 1_960_000, 600_000, 26_000),
        RiverPart(
            N_("lots", "accepted"), 1_882_000, 583_000, 25_000,
            ((N_("lots", "sorted out"), 24_000), (N_("lots", "floaters"), 54_000)),
        ),
        RiverPart(
            N_("lots", "wet parchment"), 734_000, 333_000, 9_000,
            ((N_("lots", "pulp, mucilage, juice"), 1_148_000),),
        ),
        RiverPart(N_("lots", "now"), 414_000, 332_400, 6_000, ((N_("lots", "water"), 320_000),), True, "computed"),
        RiverPart(N_("lots", "expected"), 373_000, 332_400, 6_000, (), True, "estimated"),
    )  # fmt: skip


def normals() -> tuple[Normal, ...]:
    def row(name: str, own: str, normal: str, unusual: bool = False) -> Normal:
        return Normal(
            N_("lots", "{name}", name=name), N_("lots", "{own}", own=own), N_("lots", "{n}", n=normal), unusual
        )

    return (
        row("ripe", "97 %", "91–96", True),
        row("floaters", "2.8 %", "3.3–6.2"),
        row("ferment", "14 h", "12–13", True),
        row("wet parchment", "0.390", "0.390–0.391"),
        row("loading", "8.5 kg/m²", "7.3–8.4"),
        row("to 30 %", "4 days", "3–4"),
    )


def lot_13w(*, milled: bool = False, x_kind: str = "time") -> LotStory:
    """25-13W on the evening of 14 January; `milled` is the same lot on 22 March."""
    balance: tuple[BalancePart, ...] = ()
    if milled:
        balance = tuple(
            BalancePart(account, N_("lots", "{name}", name=name), grams)
            for account, name, grams in (
                ("top", "top", 238_000), ("peaberry", "peaberry", 24_000), ("light", "light", 18_000),
                ("small", "small", 24_000), (">husk", "husk", 65_000), (">unexplained", "unexplained", 3_000),
            )
        )  # fmt: skip
    none_yet = N_("lots", "unexplained: none yet")
    return LotStory(
        card=card(ends=ahead(jan(17, 15), jan(18, 12), jan(19, 15))),
        headline=N_(
            "lots", "washed {h}, block C, picked 6–7 Jan, on beds {beds}, now {kg} at {m}",
            h=Num(14, "h"), beds="12 13 14 16", kg=kg(414_000), m=pct(0.197),
        ),
        ferments=(ferment(), ferment(9)),
        drying=drying(x_kind=x_kind),
        river=river(),
        unexplained=(Unexplained(N_("lots", "accepted"), 0.0, 7_000.0, False, none_yet),),
        normals=normals(),
        normal_of=N_("lots", "own normal, {n} washed lots", n=7),
        deviations=(N_("lots", "No pH reading between 05:00 and the wash at 07:00."),),
        doubts=(N_("lots", "The moisture meter was last checked on 10 January."),),
        balance=balance,
        balance_of=N_("lots", "{kg} of parchment sent", kg=kg(372_000)) if milled else None,
        parents=(),
        children=(Reached("25-04W", 12_000),),
        beds=("12", "13", "14", "16"),
        trays=("tray1",),
        vessels=(),
        last_reading=N_("lots", "19.7 % on 14 Jan 16:12"),
        sensible="moisture",
    )  # fmt: skip
