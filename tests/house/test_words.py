"""Every sentence reaches the translators, and what they wrote fits the sentence it stands for."""

from __future__ import annotations

import ast
import re
import shutil
import string
import subprocess
import sys
from pathlib import Path
from xml.etree import ElementTree

import pytest

from tests.house.tree import ROOT, name_of, python, syntax

FOLDER = ROOT / "resources" / "translations"
SOURCES = sorted(FOLDER.glob("farmdesk_*.ts"))
TOOLS = Path(sys.executable).parent
AGAIN = "run installer/words.sh"


def holes(text: str) -> set[str]:
    """The names of the facts that a sentence leaves room for."""
    return {name.split(".")[0] for _, name, _, _ in string.Formatter().parse(text) if name is not None}


def messages(file: Path) -> list[tuple[str, str, str, bool]]:
    """Context, sentence, translation, and whether it is finished."""
    found = []
    for context in ElementTree.parse(file).getroot().iter("context"):
        for message in context.iter("message"):
            said = message.find("translation")
            assert said is not None
            found.append(
                (
                    context.findtext("name") or "",
                    message.findtext("source") or "",
                    "".join(said.itertext()),
                    said.get("type") != "unfinished",
                )
            )
    return found


@pytest.mark.parametrize("source", SOURCES, ids=lambda path: path.stem)
def test_the_list_of_sentences_is_fresh(source: Path, tmp_path: Path) -> None:
    copy = tmp_path / source.name
    shutil.copy(source, copy)
    subprocess.run([sys.executable, ROOT / "installer" / "words.py", copy], check=True)
    had = {(context, text) for context, text, _, _ in messages(source)}
    has = {(context, text) for context, text, _, _ in messages(copy)}
    assert has - had == set(), AGAIN
    assert had - has == set(), AGAIN


@pytest.mark.parametrize("source", SOURCES, ids=lambda path: path.stem)
def test_what_the_program_reads_was_made_of_what_was_translated(source: Path, tmp_path: Path) -> None:
    made = tmp_path / "made.qm"
    subprocess.run([TOOLS / "pyside6-lrelease", "-silent", source, "-qm", made], check=True, capture_output=True)
    assert made.read_bytes() == source.with_suffix(".qm").read_bytes(), AGAIN


@pytest.mark.parametrize("source", SOURCES, ids=lambda path: path.stem)
def test_every_sentence_is_translated(source: Path) -> None:
    left = [f"{context}: {text}" for context, text, said, finished in messages(source) if not (finished and said)]
    assert left == []


@pytest.mark.parametrize("source", SOURCES, ids=lambda path: path.stem)
def test_the_places_of_the_road_have_letters_of_their_own(source: Path) -> None:
    """Alt and a letter leads to a place, in every language; && is a sign to be read."""
    pairs = [(text, said) for context, text, said, _ in messages(source) if context == "Road" and "&" in text]
    assert len(pairs) > 10
    for words in zip(*pairs, strict=True):
        letters = [re.findall("&(.)", each.replace("&&", "")) for each in words]
        assert all(len(found) == 1 for found in letters), words
        assert len({found[0].lower() for found in letters}) == len(words), words


@pytest.mark.parametrize("source", SOURCES, ids=lambda path: path.stem)
def test_a_translation_leaves_room_for_the_same_facts(source: Path) -> None:
    wrong = [
        f"{context}: {text!r} -> {said!r}"
        for context, text, said, _ in messages(source)
        if said and holes(said) != holes(text)
    ]
    assert wrong == []


def calls() -> list[tuple[str, ast.Call]]:
    """Every N_(…) of the program."""
    return [
        (f"{name_of(path)}:{node.lineno}", node)
        for path in python()
        if name_of(path).startswith("farmdesk/")
        for node in ast.walk(syntax(path))
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "N_"
    ]


def test_every_marked_sentence_is_written_out() -> None:
    """Lupdate reads the sources: a sentence put together at run time would never reach a translator."""
    wrong = [
        where
        for where, call in calls()
        if len(call.args) != 2 or not all(isinstance(a, ast.Constant) and isinstance(a.value, str) for a in call.args)
    ]
    assert wrong == []


def waiting() -> set[str]:
    """Sentences that are put under a name first, and given their facts by whoever says them."""
    return {
        f"{name_of(path)}:{call.lineno}"
        for path in python()
        if name_of(path).startswith("farmdesk/")
        for node in ast.walk(syntax(path))
        if isinstance(node, ast.Assign | ast.AnnAssign) and node.value is not None
        for call in ast.walk(node.value)
        if isinstance(call, ast.Call)
    }


def test_every_marked_sentence_is_given_its_facts() -> None:
    wrong = []
    named = waiting()
    for where, call in calls():
        if any(word.arg is None for word in call.keywords) or (not call.keywords and where in named):
            continue
        given = {str(word.arg) for word in call.keywords}
        text = call.args[1]
        assert isinstance(text, ast.Constant)
        if holes(str(text.value)) != given:
            wrong.append(f"{where}: {text.value!r} is given {sorted(given)}")
    assert wrong == []


def test_no_sentence_raises_its_voice() -> None:
    loud = [text for _, call in calls() if "!" in (text := str(getattr(call.args[1], "value", "")))]
    loud += [text for source in SOURCES for _, text, _, _ in messages(source) if re.search(r"[!¡]", text)]
    assert loud == []


def test_the_list_takes_in_sentences_with_facts_and_the_words_of_tables() -> None:
    has = {(context, text) for source in SOURCES for context, text, _, _ in messages(source)}
    assert ("dates", "{day} {month}") in has
    assert ("tables", "grade 1") in has
    said = [call.args for path in python() if name_of(path).startswith("farmdesk/") for call in ast.walk(syntax(path))
            if isinstance(call, ast.Call) and isinstance(call.func, ast.Attribute) and call.func.attr == "tr"]  # fmt: skip
    assert all(len(args) == 1 and isinstance(args[0], ast.Constant) for args in said)
