"""The command line: everything that needs no window, in words a farmer can read.

Bad input ends with one plain sentence and exit code 2, and nothing is written. Heavy parts are imported by
the command that needs them.
"""

from __future__ import annotations

import argparse
import json
import os
import sys
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import NoReturn

from farmdesk.errors import Asked, FarmError

TROUBLE, WRONG = 2, 1

HEAD = """The season desk of a small coffee farm.

  farmdesk                       open the season that was open last; at first the practice season
  farmdesk my-farm.season        open a season of your own
"""
TAIL = """Where any other command names no season, the practice season is meant.

examples:
  farmdesk practice --fresh
  farmdesk new my-farm.season --farm "La ladera" --season 26 --zone America/Tegucigalpa --beds 10
  farmdesk sheet 25-13W -o 25-13W.pdf --paper letter --lang es
  farmdesk ahead 25-13W --at 2025-01-14T18:41
  farmdesk read tank.csv --lot 25-19A --place C1 --logger L1 my-farm.season
  farmdesk verify my-farm.season
  farmdesk copy my-farm.season /media/stick/my-farm.season
  farmdesk export my-farm.season --to everything
"""


class Parser(argparse.ArgumentParser):
    """Says what is wrong in one sentence, without the usage."""

    def error(self, message: str) -> NoReturn:
        print(f"{_plain(message)} Type “farmdesk --help” to see what can be typed.", file=sys.stderr)
        sys.exit(TROUBLE)


def _plain(message: str) -> str:
    """Argparse's message as a sentence."""
    for theirs, ours in (
        ("the following arguments are required: ", "Missing: "),
        ("unrecognized arguments: ", "Not understood: "),
        ("argument ", ""),
        ("invalid choice: ", "not one of the words known here: "),
        ("expected one argument", "something must follow it"),
    ):
        message = message.replace(theirs, ours)
    return f"{message[:1].upper()}{message[1:].rstrip('.')}."


def parser() -> argparse.ArgumentParser:
    """All commands and their words."""
    top = Parser(
        "farmdesk", description=HEAD, epilog=TAIL, formatter_class=argparse.RawDescriptionHelpFormatter,
        usage="farmdesk [COMMAND] [SEASON]",
    )  # fmt: skip
    commands = top.add_subparsers(dest="command", metavar="COMMAND", parser_class=Parser)

    def command(name: str, words: str) -> argparse.ArgumentParser:
        return commands.add_parser(name, help=words, description=words[0].upper() + words[1:] + ".")

    def season(to: argparse.ArgumentParser) -> None:
        to.add_argument("season", nargs="?", type=Path, metavar="SEASON", help="the season file")

    opened = command("open", "open the window on a season (also without this word)")
    season(opened)
    opened.add_argument("--quit-after-paint", action="store_true", help="close again once the first page is drawn")

    practice = command("practice", "open the practice season, an invented farm to try things on")
    practice.add_argument("--fresh", action="store_true", help="throw away what was typed into it before")

    sheet = command("sheet", "write the lot sheet as a PDF")
    sheet.add_argument("code", metavar="LOT")
    season(sheet)
    sheet.add_argument("-o", "--to", type=Path, required=True, metavar="FILE", help="the PDF to write")
    sheet.add_argument("--paper", choices=("a4", "letter"), default="a4", help="size of the paper")
    sheet.add_argument("--mono", action="store_true", help="black only, for a printer without greys")
    sheet.add_argument("--lang", choices=("en", "es"), default="en", help="language of the sheet")
    sheet.add_argument("--at", default="", metavar="INSTANT", help="as known then, like 2025-03-22T08:00")

    ahead = command("ahead", "say when a lot will be ready, as a range")
    ahead.add_argument("code", metavar="LOT")
    season(ahead)
    ahead.add_argument("--at", required=True, metavar="INSTANT", help="asked then, farm time: 2025-01-14T18:41")
    ahead.add_argument("--json", action="store_true", help="as JSON, instants in UTC seconds")
    ahead.add_argument("--lang", choices=("en", "es"), default="en")

    read = command("read", "read a logger's file in")
    read.add_argument("file", type=Path, metavar="FILE")
    season(read)
    read.add_argument("--lot", required=True, metavar="LOT")
    read.add_argument("--place", required=True, metavar="PLACE", help="the vessel or bed it hung in")
    read.add_argument("--logger", required=True, metavar="LOGGER")
    read.add_argument("--sure", action="store_true", help="take the file as it is, without asking")

    verify = command("verify", "check that a season file is whole and as it was written")
    season(verify)

    copy = command("copy", "make a checked copy of a season, to a stick or a folder")
    copy.add_argument("season", type=Path, metavar="SEASON")
    copy.add_argument("to", type=Path, metavar="TO")

    new = command("new", "begin a season file for a farm of your own")
    new.add_argument("file", type=Path, metavar="FILE", help="the file to be made")
    new.add_argument("--farm", required=True, metavar="NAME", help="the name that stands on papers")
    new.add_argument("--season", required=True, metavar="YY", help="two figures, as in the codes of the lots: 26")
    new.add_argument("--zone", required=True, metavar="ZONE", help="the farm's own time, like America/Tegucigalpa")
    new.add_argument("--beds", type=int, default=1, metavar="N", help="how many beds to begin with (1)")
    new.add_argument("--bed", default="1.2x12", metavar="WxL", help="width and length of a bed in metres (1.2x12)")

    export = command("export", "write everything out as tables and once as JSON, to an empty folder")
    season(export)
    export.add_argument("--to", type=Path, required=True, metavar="FOLDER")

    pictures = command("pictures", "write a picture of every page, and the practice papers, to a folder")
    pictures.add_argument("--to", type=Path, required=True, metavar="FOLDER")
    pictures.add_argument("--lang", choices=("en", "es"), default="en")
    pictures.add_argument("--dark", action="store_true", help="the dark look")
    return top


COMMANDS = ("open", "practice", "sheet", "ahead", "read", "verify", "copy", "new", "export", "pictures")


def main(argv: Sequence[str] | None = None) -> int:
    """Run one command; answers the exit code."""
    typed = list(sys.argv[1:] if argv is None else argv)
    first = next((word for word in typed if not word.startswith("-")), "")
    if first not in COMMANDS and not {"-h", "--help"} & set(typed[:1]):
        typed.insert(0, "open")
    try:
        words = parser().parse_args(typed)
    except SystemExit as end:
        return int(end.code or 0)
    run: Callable[[argparse.Namespace], int] = globals()[f"_{words.command}"]
    try:
        return run(words)
    except Asked as asked:
        return _said(f"{asked.question.text} {_answers(asked)}")
    except FarmError as error:
        return _said(str(error))
    except OSError as error:
        return _said(f"{error.filename or 'The file'}: {error.strerror or error}.")


def _said(sentence: str) -> int:
    print(sentence, file=sys.stderr)
    return TROUBLE


def _answers(asked: Asked) -> str:
    ways = " / ".join(str(answer.text) for answer in asked.question.answers)
    return f"({ways}) Read it in the window to answer, or add --sure to take the file as it is."


def _path(words: argparse.Namespace) -> Path:
    """The season that is named, or the practice season."""
    from farmdesk.work.seasons import practice_file

    return words.season if words.season is not None else practice_file()


def _missing(path: Path | None) -> bool:
    return path is not None and not path.is_file()


# the commands


def _open(words: argparse.Namespace) -> int:
    if _missing(words.season):
        return _said(f"There is no season file called {words.season}.")
    from farmdesk.app import run
    from farmdesk.desk.habits import load

    season, last = words.season, load().season
    if season is None and last and not _missing(Path(last)):
        season = Path(last)
    return run(season, quit_after_paint=words.quit_after_paint)


def _practice(words: argparse.Namespace) -> int:
    from farmdesk.app import run

    return run(None, fresh=words.fresh)


def _sheet(words: argparse.Namespace) -> int:
    from farmdesk.desk.words import wear
    from farmdesk.desk.words import words as language
    from farmdesk.papers.lot_sheet import write_lot_sheet
    from farmdesk.work.farm import OpenFarm
    from farmdesk.work.people import for_papers
    from farmdesk.work.sheet import sheet_story

    farm = OpenFarm.open(_path(words), read_only=True)
    try:
        wear(farm.things.settings)  # the sheet says the farm's own words
        at_utc_s = farm.time.read(words.at) if words.at else None
        story = sheet_story(farm, words.code, at_utc_s)
        said = for_papers(language(words.lang), farm.things)
        write_lot_sheet(story, said, words.to, time=farm.time, paper=words.paper, mono=words.mono)
    finally:
        farm.close()
    return 0


def _ahead(words: argparse.Namespace) -> int:
    from farmdesk.desk.words import wear
    from farmdesk.desk.words import words as language
    from farmdesk.text import N_, Days, Moment
    from farmdesk.work.farm import OpenFarm
    from farmdesk.work.lots import ahead_of

    farm = OpenFarm.open(_path(words), read_only=True)
    try:
        wear(farm.things.settings)
        at_utc_s = farm.time.read(words.at)
        answer = ahead_of(farm, words.code, at_utc_s)
        time = farm.time
    finally:
        farm.close()
    points = {
        "earliest_utc_s": answer.earliest_utc_s, "quarter_utc_s": answer.quarter_utc_s,
        "likely_utc_s": answer.likely_utc_s, "three_quarters_utc_s": answer.three_quarters_utc_s,
        "latest_utc_s": answer.latest_utc_s,
    }  # fmt: skip
    say = language(words.lang).say
    if words.json:
        facts = {"lot": words.code, "at_utc_s": at_utc_s, **points, "never_frac": answer.never_frac}
        print(json.dumps({**facts, "source": answer.source, "rests_on": say(answer.rests_on)}, ensure_ascii=False))
        return 0
    first, last, code = answer.earliest_utc_s, answer.latest_utc_s, words.code
    if first is None:
        told = N_("cli", "{lot}: open.", lot=code)
    elif last is None:
        told = N_("cli", "{lot}: not before {first}, open at the end.", lot=code, first=Moment(time.local(first), True))
    else:
        days = Days(time.calendar_day(first), time.calendar_day(last))
        told = N_("cli", "{lot}: {days}.", lot=code, days=days)
        if answer.likely_utc_s is not None:
            likely = Moment(time.local(answer.likely_utc_s))
            told = N_("cli", "{lot}: {days}, likely {likely}.", lot=code, days=days, likely=likely)
    print(say(told))
    print(say(answer.says))
    return 0


def _read(words: argparse.Namespace) -> int:
    from farmdesk.work.farm import OpenFarm
    from farmdesk.work.reading_in import read_logger_file

    if _missing(words.file):
        return _said(f"There is no file called {words.file}.")
    farm = OpenFarm.open(_path(words))
    try:
        if farm.file.held is not None:
            return _said(str(farm.file.held.sentence(farm.time)))
        read = read_logger_file(
            farm, words.file, lot=words.lot, place=words.place, logger=words.logger, sure=words.sure
        )
    finally:
        farm.close()
    for problem in read.problems:
        print(f"{problem.where}: {problem.text}")
    print(f"{read.added_n:,} of {read.rows_n:,} rows were new.")
    return 0


def _verify(words: argparse.Namespace) -> int:
    from farmdesk.work.seasons import verify

    path = _path(words)
    if _missing(path):
        return _said(f"There is no season file called {path}.")
    problems = verify(path)
    if problems:
        print(f"{problems[0].where}: {problems[0].text}")
        return WRONG
    print(f"{path.name} is whole, and as it was written.")
    return 0


def _copy(words: argparse.Namespace) -> int:
    from farmdesk.work.farm import OpenFarm

    farm = OpenFarm.open(words.season, read_only=True)
    try:
        to = words.to / words.season.name if words.to.is_dir() else words.to
        if to.exists() and to.samefile(words.season):
            return _said("The copy would lie on the season itself; name another place.")
        farm.file.copy_to(to)
    finally:
        farm.close()
    print(f"{to} was copied, opened and compared: it is the same.")
    return 0


def _new(words: argparse.Namespace) -> int:
    from farmdesk.units import read_number, value_of
    from farmdesk.work import setup

    sides = words.bed.lower().replace("×", "x").split("x")
    if len(sides) != 2 or not 0 <= words.beds <= 500:
        return _said("Beds are said like --beds 10 --bed 1.2x12: how many, and how wide and long in metres.")
    width_m, depth_m = (value_of(read_number(side, "m"), "m") for side in sides)
    if words.file.exists():
        return _said(f"{words.file.name} is there already; name another file.")
    farm = setup.begin_farm(words.file, words.farm, words.season, words.zone)
    try:
        for _ in range(words.beds):
            setup.save(farm, setup.next_bed(farm, width_m, depth_m))
    finally:
        farm.close()
    print(f"{words.file} is ready: farmdesk {words.file}")
    return 0


def _export(words: argparse.Namespace) -> int:
    from farmdesk.work.carrying import export_all
    from farmdesk.work.farm import OpenFarm

    farm = OpenFarm.open(_path(words), read_only=True)
    try:
        out = export_all(farm, words.to)
    finally:
        farm.close()
    print(f"{out.tables_n} tables and season.json, {out.rows_n} rows, were written to {out.folder}.")
    return 0


def _pictures(words: argparse.Namespace) -> int:
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from farmdesk.desk.pictures import draw_pages, draw_papers
    from farmdesk.work.farm import OpenFarm
    from farmdesk.work.seasons import practice_file

    words.to.mkdir(parents=True, exist_ok=True)
    farm = OpenFarm.open(practice_file(), read_only=True)
    for path in draw_pages(farm, words.to, language=words.lang, dark=words.dark):
        print(path)
    for path in draw_papers(words.to):
        print(path)
    return 0
