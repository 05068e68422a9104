"""Everything can be read in light, in dark and on paper, also by eyes that miss a colour."""

from __future__ import annotations

import tomllib
from itertools import pairwise

import numpy as np
import pytest

from tests.house.tree import ROOT

TABLE = tomllib.loads((ROOT / "resources" / "styles" / "palettes.toml").read_text(encoding="utf-8"))
SCREEN = ("light", "dark")
ALL = (*SCREEN, "print")

# WCAG 2.2: text 4.5:1 (1.4.3), lines and signs that carry a meaning 3:1 (1.4.11).
TEXT = [
    *((ink, ground) for ink in ("ink", "ink2") for ground in ("paper", "sheet", "band", "night", "tint")),
    *((ink, ground) for ink in ("now", "today") for ground in ("paper", "sheet", "tint")),
]
LINES = [
    *(("rule", ground) for ground in ("paper", "sheet", "band", "tint")),
    *(("focus", ground) for ground in ("paper", "sheet", "band")),
]

# Machado, Oliveira and Fernandes 2009, table 1, severity 1.0: what red-, green- and blue-blind eyes see of linear RGB.
EYES = {
    "all cones": np.eye(3),
    "no red": [[0.152286, 1.052583, -0.204868], [0.114503, 0.786281, 0.099216], [-0.003882, -0.048116, 1.051998]],
    "no green": [[0.367322, 0.860646, -0.227968], [0.280085, 0.672501, 0.047413], [-0.011820, 0.042940, 0.968881]],
    "no blue": [[1.255528, -0.076749, -0.178779], [-0.078411, 0.930809, 0.147602], [0.004733, 0.691367, 0.303900]],
}
# sRGB to XYZ (D65), IEC 61966-2-1; its second row is WCAG's relative luminance.
XYZ = np.array([[0.4124, 0.3576, 0.1805], [0.2126, 0.7152, 0.0722], [0.0193, 0.1192, 0.9505]])


def linear(color: str) -> np.ndarray:
    """Linear RGB [0..1] of `#rrggbb`."""
    parts = np.array([int(color[i : i + 2], 16) for i in (1, 3, 5)]) / 255.0
    return np.where(parts <= 0.04045, parts / 12.92, ((parts + 0.055) / 1.055) ** 2.4)


def contrast(one: str, other: str) -> float:
    """WCAG's contrast ratio of two colours, 1 to 21."""
    dark, light = sorted(float(XYZ[1] @ linear(color)) for color in (one, other))
    return (light + 0.05) / (dark + 0.05)


def lab(color: str, eyes: str = "all cones") -> np.ndarray:
    """CIE L*a*b* 1976 of a colour as these eyes see it."""
    seen = np.clip(np.asarray(EYES[eyes]) @ linear(color), 0.0, 1.0)
    t = XYZ @ seen / XYZ.sum(axis=1)
    f = np.where(t > (6 / 29) ** 3, np.cbrt(t), t / (3 * (6 / 29) ** 2) + 4 / 29)
    return np.array([116 * f[1] - 16, 500 * (f[0] - f[1]), 200 * (f[1] - f[2])])


def apart(one: str, other: str, eyes: str) -> float:
    """How different two colours look to these eyes (CIE 1976 ΔE)."""
    return float(np.linalg.norm(lab(one, eyes) - lab(other, eyes)))


@pytest.mark.parametrize("name", ALL)
def test_text_can_be_read(name: str) -> None:
    colors = TABLE[name]
    faint = {
        f"{ink} on {ground}": round(ratio, 2)
        for ink, ground in TEXT
        if (ratio := contrast(colors[ink], colors[ground])) < 4.5
    }
    assert not faint


@pytest.mark.parametrize("name", ALL)
def test_lines_that_mean_something_can_be_seen(name: str) -> None:
    colors = TABLE[name]
    faint = {
        f"{line} on {ground}": round(ratio, 2)
        for line, ground in LINES
        if (ratio := contrast(colors[line], colors[ground])) < 3.0
    }
    assert not faint


@pytest.mark.parametrize("name", ALL)
def test_a_number_on_water_can_be_read(name: str) -> None:
    colors = TABLE[name]
    for step in colors["water"]:
        assert max(contrast(colors[ink], step) for ink in ("ink", "paper")) >= 4.5, step


@pytest.mark.parametrize("eyes", EYES)
@pytest.mark.parametrize("name", SCREEN)
def test_every_eye_tells_the_steps_of_water_apart(name: str, eyes: str) -> None:
    water = TABLE[name]["water"]
    assert len(water) == len(TABLE["water_up_to_wb_frac"]) + 1
    assert round(min(apart(one, after, eyes) for one, after in pairwise(water))) >= 7


@pytest.mark.parametrize("eyes", EYES)
@pytest.mark.parametrize("name", SCREEN)
def test_every_eye_tells_what_is_urgent_from_water(name: str, eyes: str) -> None:
    colors = TABLE[name]
    assert min(apart(colors[due], step, eyes) for due in ("now", "today") for step in colors["water"]) >= 50.0


@pytest.mark.parametrize("name", ALL)
def test_more_water_stands_further_from_the_ground(name: str) -> None:
    colors = TABLE[name]
    steps = [contrast(step, colors["paper"]) for step in colors["water"]]
    assert steps == sorted(steps)


@pytest.mark.parametrize("name", SCREEN)
def test_only_what_is_due_is_warm(name: str) -> None:
    calm = {token: color for token, color in TABLE[name].items() if token not in ("now", "today", "tint", "water")}
    calm |= {f"water{step}": color for step, color in enumerate(TABLE[name]["water"])}
    for token, color in calm.items():
        _, red, yellow = lab(color)
        assert red < 6.0 or yellow < 6.0, token
    assert all(lab(TABLE[name][due])[1:].min() > 6.0 for due in ("now", "today"))
