"""The look: steps of water, text that can be read on them, crisp lines, patterns that tile without a seam."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QFontInfo, QImage

from farmdesk.desk import theme
from farmdesk.desk.theme import BOLD, DISPLAY, SANS, SEMIBOLD, SERIF, look
from farmdesk.desk.widgets.ink import Ink, Measure


@pytest.fixture(autouse=True)
def light(qapp):
    theme.load_fonts()
    look().wear("light", 1.0)
    yield
    look().wear("light", 1.0)


@pytest.mark.parametrize(
    ("moisture_wb_frac", "step"),
    [(0.10, 0), (0.125, 0), (0.126, 1), (0.18, 1), (0.26, 2), (0.38, 3), (0.50, 4), (0.51, 5)],
)
def test_water_has_six_steps(moisture_wb_frac, step):
    assert theme.water_step(moisture_wb_frac) == step
    assert look().water(moisture_wb_frac) == look().palette.water[step]


@pytest.mark.parametrize("name", ["light", "dark", "print"])
def test_text_on_water_can_be_read(name):
    look().palette = theme.palette(name)
    for ground in look().palette.water:
        assert theme.contrast(look().text_on(ground), ground) >= 4.5


@pytest.mark.parametrize(
    ("family", "weight"), [(SANS, 400), (SANS, SEMIBOLD), (SANS, BOLD), (SERIF, 400), (SERIF, SEMIBOLD), (DISPLAY, 600)]
)
def test_the_program_brings_its_own_letters(family, weight):
    info = QFontInfo(look().font(17, weight, family))
    assert info.family() == family
    assert info.weight() == weight


def test_digits_stand_in_columns():
    for weight in (400, SEMIBOLD, BOLD):
        assert len({round(Measure().width(str(n) * 8, 17, weight), 3) for n in range(10)}) == 1


def test_larger_letters_are_larger():
    before = Measure().width("25-13W", 15)
    look().wear(scale=1.3)
    assert Measure().width("25-13W", 15) == pytest.approx(1.3 * before, rel=0.05)


def sheet(paint, ratio=1.0, side=60):
    image = QImage(round(side * ratio), round(side * ratio), QImage.Format.Format_RGB32)
    image.setDevicePixelRatio(ratio)
    image.fill(look()["paper"])
    with Ink(image) as ink:
        paint(ink)
    return image


@pytest.mark.parametrize("ratio", [1.0, 1.25, 1.5, 2.0])
def test_lines_stand_on_whole_device_pixels(ratio):
    image = sheet(lambda ink: (ink.level(5, 50, 10.3, 1), ink.upright(20.7, 5, 50, 2, "ink")), ratio)
    colours = {image.pixel(x, y) for x in range(image.width()) for y in range(image.height())}
    assert colours == {look()[token].rgb() for token in ("paper", "rule", "ink")}


@pytest.mark.parametrize("kind", ["estimated", "doubtful", "expected", "resting", "target"])
@pytest.mark.parametrize("ratio", [1.0, 1.5])
def test_patterns_leave_ground_and_ink(kind, ratio):
    image = sheet(lambda ink: ink.pattern(0, 0, 60, 60, kind), ratio)
    grey = [image.pixelColor(x, y).lightnessF() for x in range(image.width()) for y in range(image.height())]
    ground, ink = look()["paper"].lightnessF(), look()["ink"].lightnessF()
    share = (ground - sum(grey) / len(grey)) / (ground - ink)
    assert 0.02 < share < 0.5
    assert max(grey) == pytest.approx(ground, abs=0.01)


def test_a_frame_keeps_inside_its_measures():
    image = sheet(lambda ink: ink.frame(10, 10, 30, 20, 4, "now"))
    now = look()["now"].rgb()
    xs = [x for x in range(60) if image.pixel(x, 20) == now]
    assert xs == [10, 11, 12, 13, 36, 37, 38, 39]


def test_words_are_broken_between_words():
    rows = Measure().lines("no bed from Wed 22 to Mon 27 if it rains as you say", 120, 15)
    assert " ".join(rows) == "no bed from Wed 22 to Mon 27 if it rains as you say"
    assert all(Measure().width(row, 15) <= 120 for row in rows)


def test_a_number_and_its_unit_stay_together_and_apart():
    rows = Measure().lines("about 470\u202fL are left", 60, 15)
    assert rows == ["about", "470\u00a0L are", "left"]
    assert QRectF(0, 0, Measure().width("470\u202fL"), 1).width() > Measure().width("470L") + 2
