"""Units stand in names and in docstrings, and every public thing says what it is for."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from farmdesk.units import SUFFIXES
from tests.house.tree import ROOT, name_of, public, python

FLOORS_WITH_NUMBERS = ("farmdesk/science", "farmdesk/ahead", "farmdesk/work")
FLOORS_WITH_DOCSTRINGS = (
    *FLOORS_WITH_NUMBERS,
    "farmdesk/picture",
    "farmdesk/notebook",
    "farmdesk/readers",
    "farmdesk/papers",
)
A_NUMBER = re.compile(r"\bfloat\b|\bFloats\b|\bFloatArray\b|\bArrayLike\b|\bR\b")

# Numbers without a unit (letters and powers of published equations, sums of squares, the day of a year), numbers of
# whatever unit the caller brings (ranges, medians, axes of a drawing), and what a fit holds of all its parameters.
NO_UNIT = frozenset(
    "a b c k n s x y shape exponent power fourier rss aicc specific_gravity day_of_year "
    "value values low mid high x_low x_high y_low y_high target scale difference result like "
    "first_median second_median theta covariance z freedom starts wider cost".split()
)

UNITS_IN_FULL = ("grams", "minutes", "hours", "days")
BY_LENGTH = sorted(SUFFIXES, key=len, reverse=True)
# How a suffix is written in a docstring, where that is not the suffix with its strokes put back. An empty one needs
# no bracket: the name says it all.
WRITTEN = {
    "_c": ("°C",), "_k": ("K",), "_pa": ("Pa",), "_kpa": ("kPa",), "_l": ("L",), "_ml": ("mL",), "_l_h": ("L/h",),
    "_l_kg": ("L/kg",), "_m2": ("m²", "m2"), "_m3": ("m³", "m3"), "_g_l": ("g/L",), "_kg_l": ("kg/L",),
    "_kg_m3": ("kg/m³", "kg/m3"), "_g_m2": ("g/m²", "g/m2"), "_kg_m2": ("kg/m²", "kg/m2"), "_utc_s": ("UTC s", "UTC"),
    "_wb_frac": ("wet basis", "0"), "_db_frac": ("dry basis", "0"), "_pct": ("%",),
    "_per_h": ("1/h", "per h"), "_per_d": ("1/d", "per d"), "_h20": ("h",), "_d": ("d", "days"), "_h": ("h", "hours"),
    "_usd_kg": ("USD/kg",), "_usd": ("USD",), "_kg_kg": ("kg/kg", "kg per kg"), "_kj_kg": ("kJ/kg",), "_m2_d": ("m²",),
    "_mj_m2_d": ("MJ/m2/d", "MJ/m²/d"), "_w_m2": ("W/m2", "W/m²"), "_j_mol": ("J/mol",), "_g_kg": ("g/kg", "per kg"),
    "_kg_m2_d": ("kg/m2/d", "kg/m²/d"), "_frac": (), "_m3_h": ("m³/h", "m3/h"), "_ph": (), "_brix": (), "_count": (), "_ratio": (), "_index": (), "_n": (), "_sd": (),
}  # fmt: skip


def suffix_of(name: str) -> str | None:
    """The unit at the end of a name; `temp_air_c` ends in `_c`, `brix` is one, a bare letter is none."""
    return next((suffix for suffix in BY_LENGTH if f"_{name}".endswith(suffix) and len(name) > 1), None)


def says_unit(doc: str, suffix: str) -> bool:
    """Whether a docstring shows this suffix's unit in square brackets."""
    written = WRITTEN.get(suffix, (suffix[1:].replace("_", "/"),))
    brackets = " ; ".join(re.findall(r"\[([^\]]*)\]", doc))
    return not written or any(re.search(rf"(?<![\w/]){re.escape(unit)}(?![\w/])", brackets) for unit in written)


def numbers(node: ast.FunctionDef | ast.ClassDef) -> Iterator[str]:
    """Names of the parameters of a function, or the fields of a dataclass, that are floats or arrays of them."""
    if isinstance(node, ast.FunctionDef):
        named = [(a.arg, a.annotation) for a in (*node.args.posonlyargs, *node.args.args, *node.args.kwonlyargs)]
    else:
        fields = [f for f in node.body if isinstance(f, ast.AnnAssign) and isinstance(f.target, ast.Name)]
        named = [(f.target.id, f.annotation) for f in fields if isinstance(f.target, ast.Name)]
    for name, annotation in named:
        kind = ast.unparse(annotation) if annotation else ""
        if A_NUMBER.search(kind) and not kind.startswith(("tuple", "Mapping", "dict", "Callable", "Sequence[tuple")):
            yield name


def faults(path: Path) -> list[str]:
    """What a file's names and docstrings leave unsaid about units."""
    found = []
    for name, node in public(path):
        doc = " ".join((ast.get_docstring(node) or "").split())
        where = f"{name_of(path)}:{node.lineno} {name}"
        for number in numbers(node):
            suffix = suffix_of(number)
            explained = re.search(rf"\b{re.escape(number)}\b[^\[\]]{{0,80}}\[", doc)
            if "as for `" in doc or number in NO_UNIT or number.endswith(UNITS_IN_FULL):
                continue
            if suffix is None and not explained:
                found.append(f"{where}: {number} has no unit in its name, nor in brackets after it in the docstring")
            if suffix and isinstance(node, ast.FunctionDef) and not says_unit(doc, suffix):
                found.append(f"{where}: the docstring shows no unit in brackets for {number}")
    return found


@pytest.mark.parametrize("path", python(*FLOORS_WITH_NUMBERS), ids=name_of)
def test_a_number_names_its_unit(path: Path) -> None:
    found = faults(path)
    assert not found, "\n".join(found)


def silent(path: Path) -> list[str]:
    """Public functions and methods of a file without a docstring; a method that answers for a base class needs none."""
    said = {name.split(".")[-1] for name, node in public(path) if ast.get_docstring(node)}
    return [
        name
        for name, node in public(path)
        if isinstance(node, ast.FunctionDef) and not ast.get_docstring(node) and not ("." in name and node.name in said)
    ]


@pytest.mark.parametrize("path", python(*FLOORS_WITH_DOCSTRINGS, "installer", "demo_data"), ids=name_of)
def test_public_functions_have_docstrings(path: Path) -> None:
    assert not silent(path)


def test_the_reading_of_names_is_no_dream() -> None:
    assert suffix_of("temp_air_c") == "_c"
    assert suffix_of("moisture_wb_frac") == "_wb_frac"
    assert suffix_of("weight") is None
    assert suffix_of("s") is None
    assert says_unit("Saturation pressure [kPa] at an air temperature [°C].", "_c")
    assert not says_unit("Saturation pressure [kPa].", "_c")
    tree = ast.parse("def f(mass_g: float, size: Floats | None, note: str, by: dict[str, float]): ...").body[0]
    assert isinstance(tree, ast.FunctionDef)
    assert list(numbers(tree)) == ["mass_g", "size"]


def test_there_are_floors_to_read() -> None:
    assert {path.parent.name for path in python(*FLOORS_WITH_NUMBERS)} >= {"science", "ahead", "work"}
    assert (ROOT / "farmdesk" / "units.py").is_file()
