"""The season as a table: everything that lies on the sheet, in order of days."""

from __future__ import annotations

from datetime import date

from farmdesk.clock import FarmTime
from farmdesk.text import N_, Day, Days, Words, kg, pct
from farmdesk.work.portions import place_list
from farmdesk.work.season_story import Board, SeasonStory

HEADS = (
    N_("season", "from"), N_("season", "until"), N_("season", "what"), N_("season", "lot"), N_("season", "where"),
    N_("season", "figure"), N_("season", "ahead"),
)  # fmt: skip
LOT = 3  # the column of the lot
PICKED, PICK_PLANNED = N_("season", "picked"), N_("season", "picking planned")
IN_VESSEL, ON_BEDS, BEDS_PLANNED = N_("season", "vessel"), N_("season", "beds"), N_("season", "beds planned")
STORED, SENT, STILL = N_("season", "store"), N_("season", "sent to the mill"), N_("season", "still there")
NOT_MEASURED = N_("season", "not measured")


def heads(words: Words) -> list[str]:
    """The words above the columns."""
    return [words.say(head) for head in HEADS]


def rows(story: SeasonStory, words: Words, time: FarmTime) -> list[list[str]]:
    """One row for each pick, fill, stay on beds, rest, mill run and event."""
    say = words.say
    found: list[tuple[date, list[str]]] = []
    for pick in story.picks:
        what = PICK_PLANNED if pick.planned else PICKED
        weight = say(kg(pick.grams, about=pick.planned))
        found.append((pick.day, [say(Day(pick.day)), "", say(what), pick.lot, pick.block, weight, ""]))
    for bar in story.vessel_bars:
        start = time.local(bar.from_utc_s)
        end = say(STILL) if bar.until_utc_s is None else _clock(time, bar.until_utc_s, words)
        found.append(
            (start.date(), [_clock(time, bar.from_utc_s, words), end, say(IN_VESSEL), bar.lot, bar.vessel, "", ""])
        )
    stays: dict[tuple[date, str, date | None, bool], list[Board]] = {}
    for board in story.boards:
        stays.setdefault((board.first_day, board.lot, board.last_day, board.planned), []).append(board)
    for (first, lot, last, planned), boards in stays.items():
        found.append((first, _stay(boards, lot, first, last, planned, words)))
    for lot, came, sent, grams in story.rests:
        until = say(STILL) if sent is None else say(Day(sent))
        found.append((came, [say(Day(came)), until, say(STORED), lot, "", say(kg(grams)), ""]))
    for day, lots, grams in story.mill_runs:
        found.append((day, [say(Day(day)), "", say(SENT), " ".join(lots), "", say(kg(grams)), ""]))
    for day, lot, text in story.events:
        found.append((day, [say(Day(day)), "", say(text), lot, "", "", ""]))
    return [row for _, row in sorted(found, key=lambda pair: pair[0])]


def _clock(time: FarmTime, at_utc_s: int, words: Words) -> str:
    local = time.local(at_utc_s)
    return f"{words.say(Day(local.date()))} {local:%H:%M}"


def _stay(
    boards: list[Board], lot: str, first: date, last: date | None, planned: bool, words: Words
) -> list[str]:  # fmt: skip
    say = words.say
    until = "" if planned else say(STILL) if last is None else say(Day(last))
    known = [row.moisture_wb_frac for row in boards[0].days if row.moisture_wb_frac is not None]
    figure = "" if planned else say(pct(known[-1])) if known else say(NOT_MEASURED)
    ahead = boards[0].ahead if last is None else None
    soft = ""
    if ahead is not None:
        early, likely, late = ahead
        range_ = N_("season", "from {day}", day=Day(early)) if late is None else Days(early, late)
        soft = say(N_("season", "{range}, likely {day}", range=range_, day=Day(likely)))
    what = BEDS_PLANNED if planned else ON_BEDS
    return [say(Day(first)), until, say(what), lot, place_list([b.place for b in boards]), figure, soft]
