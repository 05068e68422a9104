"""300 lots and 20,000 entries with three postings each, in memory, to a picture; then one entry more."""

from __future__ import annotations

import json
import random
import sys
import time

from farmdesk.clock import DAY_S
from farmdesk.picture.entries import Birth, Entry, Flow, Posting
from farmdesk.picture.picture import fold
from farmdesk.picture.things import Farm, Things

SEASON_D = 120
FIRST_UTC_S = 1_731_304_800


def notebook(lots_n: int, entries_n: int) -> list[Entry]:
    """Entries in the order in which they were written, a few of them days after they happened."""
    dice = random.Random(4)
    entries = []
    codes = [f"25-{n:03}W" for n in range(lots_n)]
    step_s = SEASON_D * DAY_S / entries_n
    for n in range(entries_n):
        at = FIRST_UTC_S + int(n * step_s)
        if n < lots_n:
            body: Birth | Flow = Birth(codes[n], "W")
        else:
            code, grams = dice.choice(codes), dice.randrange(1, 50_000)
            postings = (
                Posting(code, "<field", -2 * grams),
                Posting(code, f"{n % 22}", grams),
                Posting(code, ">pulp", grams),
            )
            body = Flow(code, "move", postings)
        late_s = dice.randrange(3 * DAY_S) if dice.random() < 0.05 else 600
        entries.append(Entry(f"{n:08}", at, at + late_s, body, "p", "scale-1"))
    return sorted(entries, key=lambda e: (e.written_utc_s, e.id))


def extra(at_utc_s: int, written_utc_s: int) -> Entry:
    postings = Posting("25-000W", "<field", -20), Posting("25-000W", "7", 10), Posting("25-000W", ">pulp", 10)
    return Entry("99999999", at_utc_s, written_utc_s, Flow("25-000W", "move", postings))


def main() -> None:
    tiny = "--tiny" in sys.argv
    entries = notebook(10, 200) if tiny else notebook(300, 20_000)
    things = Things(Farm("Bench", "25"))
    last = entries[-1].written_utc_s
    begun = time.perf_counter()
    picture = fold(entries, things)
    whole = time.perf_counter() - begun

    begun = time.perf_counter()
    after = picture.after([extra(last + 60, last + 120)])
    end = time.perf_counter() - begun
    begun = time.perf_counter()
    before = picture.after([extra(last - 21 * DAY_S, last + 120)])
    back = time.perf_counter() - begun

    size = sum(len(lot.entries) for lot in picture.lots.values())
    assert sum(len(lot.entries) for lot in after.lots.values()) == size + 1 == len(entries) + 1
    assert before.lots["25-000W"].balance == after.lots["25-000W"].balance
    print(json.dumps({"whole_ms": whole * 1000, "end_ms": end * 1000, "back_ms": back * 1000}))


if __name__ == "__main__":
    main()
