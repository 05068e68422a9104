"""How a lot's numbers were worked out: the formula in plain words, what went in, whose it is, where it holds.

One answer for each thing the lot's page shows that nobody measured: the end of a drying or a ferment, the
curve of a tray, the dry matter that is missing. Loaded when it is asked for, since it names the forecasters.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

import numpy as np

from farmdesk.ahead import drying, ferment, ferment_fit
from farmdesk.ahead.drying_fit import METER_TOP_WB_FRAC, DryingLot
from farmdesk.ahead.ferment_fit import FermentLot
from farmdesk.ahead.range import OWN_LOTS_NEEDED, Ahead
from farmdesk.clock import HOUR_S
from farmdesk.picture.codes import read_code
from farmdesk.picture.curves import TRUSTED_WB_FRAC, TrayCurve, meter_points, tray_curves
from farmdesk.picture.entries import GAS, HUSK, PICKED_OUT
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.matter import FLAG_SD, MILL_TOLERANCE_FRAC, MILL_TOLERANCE_G, Stage, ledger
from farmdesk.picture.measures import method_of
from farmdesk.picture.picture import Picture
from farmdesk.science.ferment import PH
from farmdesk.science.isotherms import ISOTHERM_RH_FRAC, ISOTHERM_TEMP_C
from farmdesk.science.thermal_time import MIXED
from farmdesk.text import N_, Day, Days, Fact, Listing, Moment, Num, Text, kg, pct
from farmdesk.work.balances import unexplained
from farmdesk.work.forecasts import drying_ready, ferment_ready, running_fill
from farmdesk.work.foresight import TARGET_WB_FRAC, drying_lot, ferment_lot
from farmdesk.work.lots import lot_of, meter_corrected
from farmdesk.work.portions import lies_at
from farmdesk.work.stories import Unexplained

if TYPE_CHECKING:
    from farmdesk.work.farm import OpenFarm

Inputs = tuple[tuple[Text, Text], ...]


@dataclass(frozen=True, slots=True)
class WorkedOut:
    """One thing that was worked out. `inputs` are names with their figures and units."""

    head: Text
    formula: Text
    inputs: Inputs
    source: Text
    holds: Text


def worked_out(farm: OpenFarm, code: str, at_utc_s: int | None = None) -> tuple[WorkedOut, ...]:
    """How everything was worked out that a lot's page shows at an instant [UTC s]; empty where all was measured.

    Raises NotPossible for an unknown lot.
    """
    picture = farm.seen(at_utc_s)
    lot = lot_of(picture, read_code(code))
    found = [_ferment(farm, picture, lot, vessel) for vessel in lies_at(lot, picture.things.vessels)]
    found.append(_drying(farm, picture, lot))
    found += [_tray(picture, lot, tray) for tray in tray_curves(lot, picture.things, picture.corrections)]
    stages = ledger(lot, picture.things, picture.corrections)
    judged = [stage for stage in stages if stage.missing is not None]
    found += [_missing(stage, said) for stage, said in zip(judged, unexplained(picture, lot), strict=True)]
    return tuple(one for one in found if one is not None)


# --- when it will be done ---------------------------------------------------------------------------------------


def _taught_n(farm: OpenFarm, picture: Picture, lot: LotPicture, what: str) -> int:
    """How many other finished lots have taught the forecaster, as their papers stand in this picture."""
    return sum(
        taught is not None
        and kind == what
        and (other := picture.lots.get(key.partition("/")[0])) is not None
        and other.code != lot.code
        and len(other.entries) == n
        for (key, kind, n), taught in farm.forecasts.taught.items()
    )


def _range(picture: Picture, ahead: Ahead) -> tuple[Text, Text]:
    """The line that gives the answer itself."""
    ends = (ahead.earliest_utc_s, ahead.likely_utc_s, ahead.latest_utc_s)
    still_open = N_("worked_out", "open")
    said = tuple(still_open if at is None else _moment(picture, at) for at in ends)
    return N_("worked_out", "earliest, likely, latest"), N_("worked_out", "{ends}", ends=Listing(said))


def _moment(picture: Picture, at_utc_s: float) -> Text:
    return N_("worked_out", "{at}", at=Moment(picture.time.local(at_utc_s)))


def _typical(picture: Picture, head: Text, ahead: Ahead) -> WorkedOut:
    """An end that no reading says anything about yet."""
    rests = (N_("worked_out", "rests on"), N_("worked_out", "{what}", what=ahead.says))
    return WorkedOut(
        head,
        N_(
            "worked_out",
            "Nothing of this lot's own readings went in. Its beginning plus how long such lots take: the middle of the "
            "farm's own finished lots and their spread, or, with fewer than {n}, the hours and days of the method in "
            "the settings. Ends that lie in the past are left out.",
            n=OWN_LOTS_NEEDED,
        ),
        (rests, _range(picture, ahead)),
        N_("worked_out", "Median and median absolute deviation of the logarithm of the hours; a count of own lots."),
        N_(
            "worked_out",
            "For lots made and dried as the farm's others were. It knows neither the weather nor this lot; the first "
            "readings replace it.",
        ),
    )


def _drying(farm: OpenFarm, picture: Picture, lot: LotPicture) -> WorkedOut | None:
    ahead, running = drying_ready(picture, lot), drying_lot(picture, lot)
    if ahead is None:
        return None
    head = N_("worked_out", "When it will be dry")
    if ahead.source == "typical" or running is None:
        return _typical(picture, head, ahead)
    return WorkedOut(
        head,
        N_(
            "worked_out",
            "Water leaves through two resistances one after the other: what sun and air can carry off a square metre, "
            "and the bean itself, which gives off the slower the nearer it is to the air. Good drying hours drive it, "
            "six to a day. Tray weights give the shape of the curve and the meter its height; what they leave open is "
            "drawn many times and carried on through many possible weathers, and the range is counted from the draws.",
        ),
        _drying_inputs(farm, picture, lot, running, ahead),
        N_(
            "worked_out",
            "The law is this program's own; warmer, drier air after Parra-Coronado et al. 2008 (Rev. Bras. Eng. Agríc. "
            "Amb. 12:415). Rest moisture: Trejos, Roa and Oliveros 1989 (Cenicafé 40:5), from memory. Usual rates: "
            "Osorio et al. 2022 (Cenicafé 73:e73101), Dardengo et al. 2013. Weathers: Lall and Sharma 1996 (Water "
            "Resour. Res. 32:679). Own lots: Robinson 1991 (Stat. Sci. 6:15).",
        ),
        N_(
            "worked_out",
            "Meter above {top} shown, not fitted (Jiménez and Bulgarelli 1992). Air {cold} to {warm} and {dry} to {damp} "
            "humidity. Looks {days} ahead at most; a lot not dry by then is open.",
            top=pct(METER_TOP_WB_FRAC, 0),
            cold=Num(ISOTHERM_TEMP_C[0]),
            warm=Num(ISOTHERM_TEMP_C[1], "°C"),
            dry=Num(ISOTHERM_RH_FRAC[0] * 100),
            damp=pct(ISOTHERM_RH_FRAC[1], 0),
            days=Num(drying.HORIZON_D, "d"),
        ),
    )


def _drying_inputs(farm: OpenFarm, picture: Picture, lot: LotPicture, running: DryingLot, ahead: Ahead) -> Inputs:
    weighed_n, trays_n = sum(tray.net_g.size for tray in running.trays), len(running.trays)
    rows = [
        (N_("worked_out", "target"), _one(pct(TARGET_WB_FRAC, 0))),
        (N_("worked_out", "tray"), N_("worked_out", "weighings: {n}; trays: {trays}", n=weighed_n, trays=trays_n)),
    ]
    if running.meter is not None:
        wb_frac = running.meter.mean_wb_frac
        facts: dict[str, Fact] = {
            "n": int((wb_frac <= METER_TOP_WB_FRAC).sum()),
            "repeats": int(running.meter.reps_n[wb_frac <= METER_TOP_WB_FRAC].sum()),
            "wet": int((wb_frac > METER_TOP_WB_FRAC).sum()),
            "top": pct(METER_TOP_WB_FRAC, 0),
        }
        said = N_(
            "worked_out",
            "{n} {n:reading|readings} of {repeats} {repeats:repeat|repeats}; {wet} above {top} left out",
            **facts,
        )
        rows.append((N_("worked_out", "meter"), said))
        if running.meter.corrected.any():
            n = int(running.meter.corrected.sum())
            rows.append((N_("worked_out", "of these corrected"), N_("worked_out", "{n} {n:reading|readings}", n=n)))
    if running.start_wb_frac is not None:
        sd = pct(running.start_wb_sd or 0.0)
        said = N_("worked_out", "{start} ± {sd}, of the method", start=pct(running.start_wb_frac), sd=sd)
        rows.append((N_("worked_out", "moisture when spread"), said))
    if running.loading_kg_m2 is not None:
        rows.append((N_("worked_out", "loading"), _one(Num(running.loading_kg_m2, "kg/m²", 1))))
    if running.wettings_utc_s:
        rows.append(
            (N_("worked_out", "wetted again"), N_("worked_out", "{n} {n:time|times}", n=len(running.wettings_utc_s)))
        )
    days = sorted(picture.weather)
    if days:
        span = Days(date.fromisoformat(days[0]), date.fromisoformat(days[-1]))
        said = N_("worked_out", "{n} {n:day|days}, {days}", n=len(days), days=span)
        rows.append((N_("worked_out", "weather rows"), said))
    taught = N_("worked_out", "{n} finished, of all methods", n=_taught_n(farm, picture, lot, "drying"))
    rows.append((N_("worked_out", "own lots that taught it"), taught))
    rows.append((N_("worked_out", "draws"), N_("worked_out", "{n}, the same ones every time", n=drying.DRAWS_N)))
    return (*rows, _range(picture, ahead))


def _ferment(farm: OpenFarm, picture: Picture, lot: LotPicture, vessel: str) -> WorkedOut | None:
    ahead, fill = ferment_ready(picture, lot, vessel), running_fill(picture, lot, vessel)
    if ahead is None or fill is None:
        return None
    head = N_("worked_out", "When the ferment in {vessel} will be done", vessel=vessel)
    running = ferment_lot(farm, picture, lot, fill)
    if ahead.source == "typical" or running is None:
        return _typical(picture, head, ahead)
    return WorkedOut(
        head,
        N_(
            "worked_out",
            "pH falls along a curve with a lag, a steepest fall and a floor, in hours at 20 °C: an hour in a warmer mass "
            "counts for more, in a colder one for less. The curve is fitted to the readings and to what such lots do, "
            "what they leave open is drawn many times, and the range is counted from the hours at which the draws "
            "meet the target.",
        ),
        _ferment_inputs(farm, picture, lot, running, ahead),
        N_(
            "worked_out",
            "Gompertz curve and its logistic twin as written by Zwietering et al. 1990 (AEM 56:1875). Hours at 20 °C: Rosso, "
            "Lobry and Flandrois 1993 (J. Theor. Biol. 162:447). Own lots: Robinson 1991 (Stat. Sci. 6:15).",
        ),
        N_(
            "worked_out",
            "pH {low} to {high}; growth between {cold} and {warm} of the mass, never of the air. A curve is drawn from "
            "{n} readings and a fall of {fall} on; before that the range is mostly what is typical. Looks {hours} ahead. "
            "Nose and hand decide.",
            low=Num(PH[0], "", 1),
            high=Num(PH[1], "", 1),
            cold=Num(MIXED.min_c),
            warm=Num(MIXED.max_c, "°C"),
            n=ferment.CURVE_READINGS_N,
            fall=Num(ferment.CURVE_FALL_PH, "", 2),
            hours=Num(ferment.HORIZON_H, "h"),
        ),
    )


def _ferment_inputs(farm: OpenFarm, picture: Picture, lot: LotPicture, running: FermentLot, ahead: Ahead) -> Inputs:
    rows = [
        (N_("worked_out", "target"), N_("worked_out", "pH {value}", value=Num(running.target_ph, "", 1))),
        (N_("worked_out", "pH readings"), N_("worked_out", "{n}, {paper} of them with paper",
                                             n=running.ph.size, paper=int(running.paper.sum()))),
    ]  # fmt: skip
    if running.mass_c.size:
        warm = Num(float(np.nanmedian(running.mass_c)), "°C", 1)
        said = N_(
            "worked_out", "{n} {n:temperature|temperatures}, the middle one {warm}", n=running.mass_c.size, warm=warm
        )
    else:
        said = N_("worked_out", "not read: clock hours stand in")
    rows.append((N_("worked_out", "mass"), said))
    hours = Num((running.at_utc_s[-1] - running.start_utc_s) / HOUR_S, "h", 1)
    rows.append((N_("worked_out", "filled to last reading"), _one(hours)))
    yeast = N_("worked_out", "pitched") if running.pitched else N_("worked_out", "none")
    rows.append((N_("worked_out", "yeast"), yeast))
    taught = N_(
        "worked_out",
        "{n} {n:vessel|vessels} of finished lots, of all methods",
        n=_taught_n(farm, picture, lot, "ferment"),
    )
    rows.append((N_("worked_out", "own lots that taught it"), taught))
    facts: dict[str, Fact] = {"n": ferment_fit.DRAWS_N, "ends": ferment.ENDS_N}
    said = N_("worked_out", "{n} curves, {ends} ends, the same ones every time", **facts)
    rows.append((N_("worked_out", "draws"), said))
    return (*rows, _range(picture, ahead))


# --- what has been ----------------------------------------------------------------------------------------------


def _tray(picture: Picture, lot: LotPicture, tray: TrayCurve) -> WorkedOut:
    method = method_of(lot, picture.things)
    rows = [
        (N_("worked_out", "weighings"), N_("worked_out", "{n}, {first} to {last}", n=tray.grams.size,
                                           first=Num(float(tray.grams[0]), "g"), last=Num(float(tray.grams[-1]), "g"))),
    ]  # fmt: skip
    if method is not None:
        facts = {"start": pct(method.start_wb_frac), "sd": pct(method.start_wb_sd_frac)}
        rows.append(
            (N_("worked_out", "moisture when spread"), N_("worked_out", "{start} ± {sd}, of the method", **facts))
        )
    rows.append((N_("worked_out", "meter readings it hangs on"), _one(Num(len(tray.anchors)))))
    if tray.anchors:
        day, wb_frac = tray.anchors[-1]
        facts_: dict[str, Fact] = {"moisture": pct(wb_frac), "day": Day(picture.time.farm_day(day))}
        rows.append((N_("worked_out", "the last of them"), N_("worked_out", "{moisture} on {day}", **facts_)))
    dry = N_("worked_out", "{dry} ± {sd}", dry=Num(tray.dry_g, "g"), sd=Num(tray.dry_sd_g, "g", 1))
    rows.append((N_("worked_out", "dry matter on the tray"), dry))
    rows.append((N_("worked_out", "that makes the start"), _one(pct(tray.start_wb_frac))))
    high = [p for p in meter_points(lot, picture.corrections) if p.wb_frac > TRUSTED_WB_FRAC]
    if high:
        top = pct(TRUSTED_WB_FRAC, 0)
        rows.append((N_("worked_out", "meter above {top}, not used", top=top), _one(Num(len(high)))))
    corrected = meter_corrected(picture, lot) or (N_("worked_out", "none in force"),)
    rows.append((N_("worked_out", "meter correction"), N_("worked_out", "{all}", all=Listing(corrected, " "))))
    head = N_("worked_out", "The curve of the tray")
    if tray.place:
        head = N_("worked_out", "The curve of the tray on {place}", place=tray.place)
    return WorkedOut(
        head,
        N_(
            "worked_out",
            "Moisture is one minus dry matter over weight. The tray's dry matter is the mean of two: its first weight at "
            "the method's usual moisture, and its weights beside each meter reading, the surer counting for more. The "
            "whole curve hangs on it and moves when the meter is corrected.",
        ),
        tuple(rows),
        N_(
            "worked_out",
            "Weighing by certainty is plain statistics. The noise of a meter, 0.75 points and more above 18 %, is from "
            "memory, after Jiménez and Bulgarelli 1992 (Agron. Costarric. 16:211).",
        ),
        N_(
            "worked_out",
            "Meter readings of {top} or less, at the tray's own place and within six hours of its weighing. No dry matter "
            "may leave the tray but by breathing, which is not taken out here.",
            top=pct(TRUSTED_WB_FRAC, 0),
        ),
    )


BY = {
    "tray": N_("worked_out", "the tray's weights, first to last"),
    "moistures": N_("worked_out", "the moistures when spread and at the store"),
    "scale": N_("worked_out", "the scales, at one moisture"),
}
LEFT = {
    GAS: N_("worked_out", "breathed off"),
    PICKED_OUT: N_("worked_out", "picked out"),
    HUSK: N_("worked_out", "husk"),
}


def _missing(stage: Stage, said: Unexplained) -> WorkedOut:
    """Beds in dry matter, the mill in the weights of its slip: as the lot's page says it."""
    mill = stage.name == "green"
    left = [(s, LEFT[s.name]) for s in stage.left if s.name in LEFT]
    rows = [(N_("worked_out", "judged by"), BY[stage.by]), (N_("worked_out", "weight now"), _one(kg(stage.grams, 1)))]
    if mill:
        rows += [(name, _one(kg(s.grams, 1))) for s, name in left]
        rows.append((N_("worked_out", "missing"), _one(kg(said.grams, 1))))
        rows.append((N_("worked_out", "scales may differ"), _one(kg(2 * said.sd_g, 1))))
    else:
        rows.append((N_("worked_out", "dry matter in it"), _spread(stage.dry.dry_g, stage.dry.dry_sd_g)))
        rows += [(name, _spread(s.dry.dry_g, s.dry.dry_sd_g)) for s, name in left]
        rows.append((N_("worked_out", "missing"), _spread(said.grams, said.sd_g)))
    return WorkedOut(
        N_("worked_out", "Unexplained at the mill") if mill else N_("worked_out", "Unexplained on the beds"),
        N_(
            "worked_out",
            "Wet weight changes all day, dry matter does not: what went in, less every stream with a name, less what "
            "came out. What is left over is unexplained, and is held against the spread of all that led to it.",
        ),
        tuple(rows),
        N_(
            "worked_out",
            "Conservation of mass; spreads added in squares. Cherry 60 to 70 % water: Alves et al. 2013 (Coffee Science "
            "8:238). What breathing and picking take is from memory.",
        ),
        _allowed(mill),
    )


def _allowed(mill: bool) -> Text:
    if mill:
        return N_(
            "worked_out",
            "Beyond {share} of what was sent, or {least} where that is more, somebody should look: scales differ by so "
            "much. It holds as long as every weighing was of the whole lot.",
            share=pct(MILL_TOLERANCE_FRAC, 0),
            least=kg(MILL_TOLERANCE_G),
        )
    return N_(
        "worked_out",
        "Beyond {n} times its spread somebody should look; within it there is nothing to look for. It holds as long as "
        "every weighing was of the whole lot.",
        n=Num(FLAG_SD, "", 1),
    )


def _spread(dry_g: float, sd_g: float) -> Text:
    return N_("worked_out", "{dry} ± {sd}", dry=kg(dry_g, 1), sd=kg(sd_g, 1))


def _one(number: Num) -> Text:
    return N_("worked_out", "{value}", value=number)
