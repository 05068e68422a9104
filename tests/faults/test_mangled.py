"""Three hundred season files with bytes changed, cut, doubled or wiped: each opens, or says one sentence."""

from __future__ import annotations

import random
from contextlib import suppress
from pathlib import Path

import numpy as np
import pytest

from farmdesk.errors import FileTrouble
from farmdesk.notebook.season_file import SeasonFile
from farmdesk.notebook.verify import verify
from farmdesk.picture.entries import Entry
from farmdesk.picture.picture import fold
from tests.notebook.made import day, logger_entry, season
from tests.notebook.test_logger_rows import rows

PAGE = 4096
FILES_N, MANY_N = 300, 10_000


def mangled(whole: bytes, chance: random.Random) -> bytes:
    """The file after an accident."""
    made = bytearray(whole)
    accident = chance.choice(["flip", "flip", "flip", "header", "cut", "wipe", "swap", "double", "noise", "longer"])
    if accident == "flip":
        for _ in range(chance.choice([1, 3, 30, 300])):
            made[chance.randrange(len(made))] ^= 1 << chance.randrange(8)
    elif accident == "header":
        for _ in range(chance.choice([1, 2, 8])):
            made[chance.randrange(100)] = chance.randrange(256)
    elif accident == "cut":
        del made[chance.randrange(len(made)) :]
    elif accident == "longer":
        made += chance.randbytes(chance.choice([1, PAGE]))
    else:
        pages = len(made) // PAGE
        one, other = chance.randrange(pages), chance.randrange(pages)
        here, there = slice(one * PAGE, (one + 1) * PAGE), slice(other * PAGE, (other + 1) * PAGE)
        if accident == "wipe":
            made[here] = bytes(PAGE)
        elif accident == "noise":
            made[here] = chance.randbytes(PAGE)
        elif accident == "double":
            made[here] = made[there]
        else:
            made[here], made[there] = made[there], made[here]
    return bytes(made)


def used(path: Path) -> tuple[list[Entry], np.ndarray, np.ndarray]:
    """Open a file and do what a day does with it: read, fold, write, close."""
    with SeasonFile.open(path) as file:
        written = file.entries()
        at, values = file.logger_rows([one.id for one in written])
        fold(written, file.things)
        return written, at, values


@pytest.fixture(scope="module")
def whole(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("mangled")
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("FARMDESK_DATA", str(folder / "data"))
        with season(folder, 400) as file:
            file.append_logger(logger_entry(), *rows(0, 5000))
        return file.path


@pytest.mark.parametrize("share", range(10))
def test_a_mangled_file_opens_or_says_one_sentence(share: int, whole: Path, tmp_path: Path) -> None:
    hold(range(share * FILES_N // 10, (share + 1) * FILES_N // 10), whole, tmp_path)


@pytest.mark.parametrize("number", [666, 1701])
def test_an_index_that_answers_with_row_numbers_is_a_damaged_file(number: int, whole: Path, tmp_path: Path) -> None:
    path = tmp_path / "25.season"
    path.write_bytes(mangled(whole.read_bytes(), random.Random(number)))
    assert verify(path)
    with pytest.raises(FileTrouble, match="damaged"):
        used(path)


@pytest.mark.long
@pytest.mark.parametrize("share", range(10))
def test_ten_thousand_mangled_files(share: int, whole: Path, tmp_path: Path) -> None:
    hold(range(FILES_N + share * MANY_N // 10, FILES_N + (share + 1) * MANY_N // 10), whole, tmp_path)


def hold(numbers: range, whole: Path, tmp_path: Path) -> None:
    """Every mangled file opens with what was written, or is refused in one sentence; or `verify` finds the fault."""
    written, at, values = used(whole)
    path = tmp_path / "25.season"
    refused: list[FileTrouble] = []
    opened = found = 0
    for number in numbers:
        path.write_bytes(mangled(whole.read_bytes(), random.Random(number)))
        problems = verify(path)
        found += bool(problems)
        back = None
        try:
            back = used(path)
            opened += 1
        except FileTrouble as trouble:
            refused.append(trouble)
        if problems:
            continue
        assert back is not None, f"mangled {number}: refused, but verify finds nothing"
        assert back[0] == written, f"mangled {number}: not what was written, but verify finds nothing"
        np.testing.assert_array_equal(back[1:], (at, values))
    assert all("25.season" in str(trouble) and trouble.hint for trouble in refused)
    assert not any("\n" in str(trouble) for trouble in refused)
    assert min(len(refused), opened, found) > 0


@pytest.mark.parametrize("number", range(40))
def test_writing_into_a_mangled_file_is_no_traceback_either(number: int, whole: Path, tmp_path: Path) -> None:
    path = tmp_path / "25.season"
    path.write_bytes(mangled(whole.read_bytes(), random.Random(10_000 + number)))
    with suppress(FileTrouble), SeasonFile.open(path) as file:
        file.append([day(1)])
        file.save_things(file.things)
        file.copy_to(tmp_path / "stick.season")
    assert not list(tmp_path.glob("*.lock"))
