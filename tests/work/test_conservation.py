"""Whatever a tired hand does, in whatever order, by all verbs: not a gram appears or vanishes, and undo is undo."""

from __future__ import annotations

import random
from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest

from farmdesk import clock
from farmdesk.errors import Asked, NotPossible
from farmdesk.notebook.verify import verify
from farmdesk.picture.accounts import FIELD
from farmdesk.picture.entries import GREEN, STORE, Strike, WeighIn
from farmdesk.picture.measures import family
from farmdesk.picture.picture import fold
from farmdesk.picture.things import Buyer, Person
from farmdesk.work import (
    crop,
    drying,
    fermenting,
    grading,
    keeping,
    notebook,
    pay,
    picking,
    portioning,
    selling,
    storing,
)
from farmdesk.work.changes import Done, Hand
from farmdesk.work.farm import OpenFarm
from tests.work.season import instant, new_farm

BEDS, VESSELS = ("9", "10", "11", "12", "13"), ("T1", "T2")
ACTS_N, SEQUENCES_N, MANY_N = 70, 12, 400


class Crew:
    """Somebody who does anything to any lot, now plausibly, now not."""

    def __init__(self, farm: OpenFarm, chance: random.Random) -> None:
        self.farm, self.chance, self.hour = farm, chance, 24.0

    def now(self) -> int:
        self.hour += self.chance.choice([0.02, 0.5, 3, 12, 30])
        return instant(0, self.hour)

    def lot(self) -> str:
        return self.chance.choice([*self.farm.picture.lots, "25-77W"])

    def kilos(self, lot: str, *places: str) -> str:
        """A weight as a hand types it: now what the books hold there, now a part of it, now anything."""
        books = self.farm.picture.lots.get(lot)
        held = sum(books.balance.get(place, 0) for place in places) if books else 0
        grams = self.chance.choice([held, held * self.chance.random(), 1000 * self.chance.uniform(0.1, 900)])
        return f"{abs(grams) / 1000:.{self.chance.choice([0, 1, 3])}f}"

    def some(self, places: tuple[str, ...]) -> list[str]:
        return self.chance.sample(places, self.chance.randint(1, 3 if len(places) > 2 else 1))

    def verbs(self) -> dict[str, Callable[[Hand], Done]]:
        """Every verb that writes about coffee, with what this hand would type into it now."""
        f, c, at, lot, day = (
            self.farm,
            self.chance,
            self.now(),
            self.lot(),
            self.farm.time.farm_day(instant(0, self.hour)),
        )
        other, beds, vessel = self.lot(), self.some(BEDS), c.choice(VESSELS)
        heaps = {code: [p for p, g in p.heaps.items() if g > 0] for code, p in f.picture.lots.items()}
        sacks = [e for p in f.picture.lots.values() for e in p.of(WeighIn)]
        written = [e.id for p in f.picture.lots.values() for e in p.entries]
        block, picker, half = c.choice("AB"), c.choice(["P01", "P02", ""]), c.choice(["am", "pm"])
        sack = self.kilos("") + c.choice(["", " lb", " kg"])
        grades = {name: self.kilos(lot, "mill") for name in c.sample(GREEN, 3)}
        week = day - timedelta(days=day.weekday())
        return {
            "begin": lambda h: picking.begin_lot(f, "W", at, hand=h),
            "weigh": lambda h: picking.weigh_in(f, lot, block=block, picker=picker, half_day=half, gross=sack,
                                                tare=c.choice(["", "0.5"]), at_utc_s=at, hand=h),
            "weigh again": lambda h: picking.weigh_in(f, lot, block=block, picker="P03", half_day=half, gross="58",
                                                      at_utc_s=at, hand=h),
            "correct a slip": lambda h: picking.correct_slip(f, c.choice(sacks).id if sacks else "none", picker="P02",
                                                             gross=sack, reason="read wrong", hand=h),
            "platform": lambda h: picking.platform_total(f, lot, self.kilos(lot, "intake"), at, hand=h),
            "count": lambda h: picking.count_ripeness(f, lot, block, half, {"ripe": 95, "green": 5}, at, hand=h),
            "sort": lambda h: picking.sort_and_float(f, lot, sorted_out=self.kilos(""), floaters=self.kilos(""),
                                                     at_utc_s=at, hand=h),
            "fill": lambda h: fermenting.fill(f, lot, {vessel: self.kilos(lot, "intake")}, at, hand=h),
            "yeast": lambda h: fermenting.pitch_yeast(f, lot, vessel, "400", at, hand=h),
            "step": lambda h: fermenting.vessel_step(f, lot, vessel, c.choice(fermenting.STEPS), at, hand=h),
            "rinse": lambda h: fermenting.rinse(f, lot, vessel, 2, at, hand=h),
            "read vessel": lambda h: fermenting.read_ferment(f, lot, vessel, at, ph="4.4", mass_c="68 F", hand=h),
            "spread": lambda h: drying.spread(f, lot, {bed: self.kilos(lot, *VESSELS) for bed in beds}, at, hand=h),
            "spread from": lambda h: drying.spread(f, lot, {beds[0]: self.kilos(lot, vessel)}, at, from_places=[vessel],
                                                   hand=h),
            "move": lambda h: drying.move(f, lot, heaps.get(lot, [])[:2] or ["9"], self.some(BEDS), at, hand=h),
            "cover": lambda h: drying.cover(f, beds, c.random() < 0.5, at, hand=h),
            "read bed": lambda h: drying.read_at_bed(f, lot, at, place=beds[0], meter=[f"{c.uniform(9, 40):.1f}"], hand=h),
            "shelve": lambda h: storing.shelve(f, lot, self.kilos(lot, *BEDS), at, picked_out=c.choice(["", "0.8"]), hand=h),
            "shelve some": lambda h: storing.shelve(f, lot, self.kilos(lot, beds[0]), at, from_places=beds[:1], hand=h),
            "air": lambda h: storing.read_store_air(f, "62", at, hand=h),
            "tests": lambda h: storing.use_for_tests(f, lot, "0.3", at, place=STORE, hand=h),
            "hull": lambda h: storing.hull_test(f, lot, in_g="250", green_g="200", husk_g="48", at_utc_s=at, hand=h),
            "send": lambda h: storing.send_to_mill(f, lot, self.kilos(lot, STORE), at, hand=h),
            "return": lambda h: storing.mill_return(f, lot, grades, at, husk=c.choice(["", self.kilos("")]), hand=h),
            "keep back": lambda h: storing.keep_back(f, lot, "0.5", at, hand=h),
            "join": lambda h: storing.join_lots(f, [lot, other], at, hand=h),
            "merge": lambda h: portioning.merge(f, {x: heaps.get(x, ["9"]) for x in (lot, other)}, beds[0], at, hand=h),
            "split": lambda h: portioning.split(f, lot, (heaps.get(lot) or ["9"])[0],
                                                {bed: self.kilos(lot, "9") for bed in beds}, at,
                                                own_lots=c.random() < 0.5, hand=h),
            "sample": lambda h: selling.send_sample(f, lot, "R1", "300 g", at, hand=h),
            "hold": lambda h: selling.hold(f, lot, "R1", "30", at + 90_000, at, hand=h),
            "sell": lambda h: selling.sell(f, lot, "R1", self.kilos(lot, "top"), at, approved=c.random() < 0.7,
                                           account=c.choice(GREEN), hand=h),
            "defects": lambda h: grading.count_defects(f, lot, standard="own", sample_g=350, full_n=4, at_utc_s=at, hand=h),
            "cup": lambda h: grading.cup(f, lot, score="84", sittings_n=2, at_utc_s=at, hand=h),
            "read green": lambda h: grading.read_green(f, lot, "aw", "0.55", at, hand=h),
            "remark": lambda h: keeping.remark(f, "looked at", at, lot=lot, hand=h),
            "plan": lambda h: keeping.plan_lot(f, lot, method="W", block=block, day=day, weighed="500", at_utc_s=at, hand=h),
            "not measured": lambda h: keeping.not_measured(f, "tray_g", day, at, lot=lot, place="9", hand=h),
            "given": lambda h: keeping.paper_given(f, lot, "lot sheet", at, hand=h),
            "check": lambda h: keeping.check_instrument(f, "scale-1", c.random() < 0.8, at, hand=h),
            "correct meter": lambda h: keeping.correct_instrument(f, "meter-1", "meter_wb_frac", -0.008, at - 90_000, at, hand=h),
            "trees": lambda h: crop.count_trees(f, block, trees_n=20, mean_kg="2", sd_kg="1", at_utc_s=at, hand=h),
            "round": lambda h: crop.plan_round(f, block, day, "400", at, hand=h),
            "look": lambda h: crop.look_at_ripeness(f, block, 60, 100, at, hand=h),
            "advance": lambda h: pay.give_advance(f, "P01", "100", at, hand=h),
            "day work": lambda h: pay.day_work(f, "P01", day, "400", at, hand=h),
            "sign": lambda h: pay.close_week(f, week, at, h),
            "strike": lambda h: notebook.strike_rows(f, (c.choice(written or ["none"]),), "wrong row"),
        }  # fmt: skip


def done(verb: Callable[[Hand], Done], hand: Hand, chance: random.Random) -> Done | None:
    """The verb with its questions answered; None where it was refused. Questions come one at a time, each once."""
    asked: set[str] = set()
    for _ in range(8):
        state = chance.getstate()  # the same hand types the same words again
        try:
            return verb(hand)
        except NotPossible:
            return None
        except Asked as error:
            question = error.question
        if question.key in asked:
            break
        asked.add(question.key)
        hand.answers[question.key] = question.answers[0].value
        chance.setstate(state)
    raise AssertionError(f"asked again: {question}")


def books(farm: OpenFarm) -> dict[str, dict[str, int]]:
    return {
        code: {a: g for a, g in lot.balance.items() if g}
        for code, lot in farm.picture.lots.items()
        if any(lot.balance.values())
    }


def season(seed: int, folder: Path) -> set[str]:
    """One random season; the names of the verbs that wrote something."""
    chance, did = random.Random(seed), set[str]()
    with clock.set_to(instant(400, 0)):
        farm = new_farm(folder)
        people = {code: Person(code, "picker") for code in ("P01", "P02", "P03")}
        settings = {"picking_local_kg": "6", "notes_local": "100 10 1 0.01"}
        farm.save_things(replace(farm.things, people=people, settings=settings, buyers={"R1": Buyer("R1", "roaster")}))
        crew = Crew(farm, chance)
        picking.begin_lot(farm, "W", instant(1, 0))
        picking.weigh_in(farm, "25-01W", block="A", picker="P01", half_day="am", gross="90", at_utc_s=instant(1, 2))
        for _ in range(ACTS_N):
            verbs = crew.verbs()
            name = chance.choice(list(verbs))
            before, rows_n = books(farm), len(farm.file.entries())
            wrote = done(verbs[name], Hand(), chance)
            if wrote is None:
                assert (books(farm), len(farm.file.entries())) == (before, rows_n), name
                continue
            did.add(name)
            balanced(farm, name)
            if wrote.inverse is not None and chance.random() < 0.2:
                after = books(farm)
                undone = wrote.inverse(farm)
                assert books(farm) == before, f"{name}, taken back"
                if undone.inverse is not None and chance.random() < 0.5:
                    undone.inverse(farm)
                    assert books(farm) == after, f"{name}, brought back"
        came = {code: -farm.lot(code).balance.get(FIELD, 0) for code in farm.picture.lots}
        entries = farm.file.entries()
        struck = set[str]()
        for entry in reversed(entries):  # a strike that was struck itself strikes nothing
            if isinstance(entry.body, Strike) and entry.id not in struck:
                struck.add(entry.body.target)
        sacks = [e.body for e in entries if isinstance(e.body, WeighIn) and e.id not in struck]
        assert sum(came.values()) == sum(body.gross_g - body.tare_g for body in sacks)
        shown = books(farm)
        farm.close()
        again = OpenFarm.open(folder / "season.season")
        assert books(again) == shown
        assert {c: lot.balance for c, lot in fold(again.file.entries(), again.things).lots.items() if c in shown} == {
            c: again.lot(c).balance for c in shown
        }
        again.close()
    assert not verify(folder / "season.season")
    return did


def balanced(farm: OpenFarm, name: str) -> None:
    """To the gram: what lots got is where it lies or left by a name; less than nothing anywhere is a doubt."""
    doubted = {(doubt.lot, doubt.place) for doubt in farm.picture.doubts}
    assert sum(sum(lot.balance.values()) for lot in farm.picture.lots.values()) == 0, name
    for code, lot in farm.picture.lots.items():
        parents, children = family(lot)
        kept = sum(lot.balance.values())
        assert parents or children or kept == 0, f"{name}: {code} {lot.balance}"
        for account, grams in lot.heaps.items():
            assert grams >= 0 or (code, account) in doubted, f"{name}: {code} {account} {grams}"


@pytest.mark.parametrize("seed", range(SEQUENCES_N))
def test_not_a_gram_appears_or_vanishes(seed: int, tmp_path: Path) -> None:
    season(seed, tmp_path)


def test_every_verb_takes_part(tmp_path: Path) -> None:
    did = set[str]()
    for seed in range(100, 100 + SEQUENCES_N):
        (tmp_path / str(seed)).mkdir()
        did |= season(seed, tmp_path / str(seed))
    with clock.set_to(instant(400, 0)):
        farm = new_farm(tmp_path)
        assert set(Crew(farm, random.Random(0)).verbs()) - did == set()
        farm.close()


@pytest.mark.long
@pytest.mark.parametrize("seed", range(1000, 1000 + MANY_N))
def test_four_hundred_seasons(seed: int, tmp_path: Path) -> None:
    season(seed, tmp_path)
