"""The step strip says where a line stands, in cells, in words and on paper."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QImage, QPainter
from pytestqt.qtbot import QtBot

from desktop.training.quantities import Unit
from desktop.training.target import StripCell, StripVariable
from views import words
from views.step_strip import PAPER, StepStrip, paint_strip, strip_fonts
from views.strip_layout import fitted, lay_out, shortened
from views.theme import Scheme, Theme


def part(
    name: str, values: list[int], here: int, after: int | None = None, *, rolls: bool = False
) -> StripVariable:
    cells = tuple(StripCell(value, here=value == here, next=value == after) for value in values)
    return StripVariable(name, cells, rolls_next=rolls)


REPS = part("reps", [9, 10, 11, 12], 10, 11)
SETS = part("sets", [3, 4], 3)
LOAD = part("load", [62_500, 65_000], 62_500)
LONG = part("reps", list(range(1, 31)), 12, 13)
TOP = part("reps", [8, 12], 12, rolls=True)
HANDS = StripVariable(
    "variation",
    (StripCell("hands-450", "hands on 45 cm", here=True), StripCell("floor", "floor", next=True)),
)


@pytest.fixture
def theme(qtbot: QtBot) -> Theme:
    return Theme(Scheme.LIGHT, calm=True)


def test_it_reads_itself_aloud_as_a_sentence(english: None) -> None:
    assert words.strip_sentence((REPS, SETS, LOAD), Unit.KG) == (
        "Reps 10 of 9 to 12, next 11; sets 3 of 3 to 4; load 62.5 of 62.5 to 65 kg."
    )
    assert words.strip_sentence((TOP, HANDS), Unit.KG) == (
        "Reps 12 of 8 to 12, then variation moves; "
        "variation hands on 45 cm of hands on 45 cm to floor, next floor."
    )
    assert words.strip_sentence((), Unit.KG) == ""


def test_loads_follow_unit_and_locale(german: None) -> None:
    assert [words.cell("load", cell, Unit.KG) for cell in LOAD.cells] == ["62,5", "65"]
    assert words.cell("load", LOAD.cells[0], Unit.LB) == "137,79"


def test_the_widget_is_named_by_its_sentence(theme: Theme, qtbot: QtBot, english: None) -> None:
    strip = StepStrip(theme, (REPS,))
    qtbot.addWidget(strip)
    assert strip.accessibleName() == "Reps 10 of 9 to 12, next 11."
    strip.set_strip((SETS,), Unit.LB)
    assert strip.accessibleName() == "Sets 3 of 3 to 4."


def test_a_long_range_gives_way_to_counts_and_keeps_the_place(theme: Theme) -> None:
    fonts = strip_fonts(theme)
    layout = fitted((LONG,), fonts, Unit.KG, 200)
    assert layout.size.width() <= 200
    shown = [cell.value for cell in layout.cells]
    assert {12, 13} <= set(shown)
    counts = [int(count.text.removeprefix("+")) for count in layout.counts]
    assert sum(counts) + len(shown) == 30


def test_shortening_never_hides_the_place_or_what_comes_next() -> None:
    strip = LONG
    for _ in range(28):
        strip = shortened(strip)
    assert [cell.value for cell in strip.cells] == [12, 13]
    assert strip.more_below + strip.more_above == 28


def test_the_arrow_is_lit_only_where_the_next_step_rolls_over(theme: Theme) -> None:
    fonts = strip_fonts(theme)
    assert [arrow.lit for arrow in lay_out((TOP, HANDS), fonts, Unit.KG).arrows] == [True]
    assert [arrow.lit for arrow in lay_out((REPS, SETS), fonts, Unit.KG).arrows] == [False]


def test_on_paper_it_is_drawn_in_black_alone(theme: Theme) -> None:
    image = QImage(400, 60, QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.TextAntialiasing, False)
    paint_strip(painter, QRectF(0, 0, 400, 60), (TOP, HANDS), PAPER, strip_fonts(theme), Unit.KG)
    painter.end()
    pixels = [image.pixelColor(x, y) for x in range(400) for y in range(60)]
    assert len({pixel.name() for pixel in pixels}) > 2
    assert all(pixel.red() == pixel.green() == pixel.blue() for pixel in pixels)


def test_by_keyboard_a_cell_can_be_chosen(theme: Theme, qtbot: QtBot) -> None:
    strip = StepStrip(theme, (REPS, SETS), choosable=True)
    qtbot.addWidget(strip)
    strip.resize(strip.sizeHint())
    chosen: list[tuple[str, object]] = []
    strip.cell_chosen.connect(lambda variable, value: chosen.append((variable, value)))
    for _ in range(4):
        qtbot.keyClick(strip, Qt.Key.Key_Right)
    qtbot.keyClick(strip, Qt.Key.Key_Return)
    assert chosen == [("sets", 3)]
    qtbot.mouseClick(
        strip,
        Qt.MouseButton.LeftButton,
        pos=lay_out((REPS, SETS), strip_fonts(theme), Unit.KG).cells[1].rect.center().toPoint(),
    )
    assert chosen[-1] == ("reps", 10)


def test_a_roll_over_slides_and_stops(qtbot: QtBot, qapp: object) -> None:
    from PySide6.QtWidgets import QApplication

    theme = Theme(Scheme.LIGHT)
    application = QApplication.instance()
    assert isinstance(application, QApplication)
    theme.apply(application)
    strip = StepStrip(theme, (part("reps", [8, 12], 12, rolls=True), SETS))
    qtbot.addWidget(strip)
    with qtbot.waitExposed(strip):
        strip.show()
    strip.set_strip((part("reps", [8, 12], 8), part("sets", [3, 4], 4)))
    assert strip.sliding
    qtbot.waitUntil(lambda: not strip.sliding, timeout=2000)


def test_where_the_system_asks_for_less_nothing_moves(theme: Theme, qtbot: QtBot) -> None:
    strip = StepStrip(theme, (TOP, SETS))
    qtbot.addWidget(strip)
    with qtbot.waitExposed(strip):
        strip.show()
    strip.set_strip((part("reps", [8, 12], 8), part("sets", [3, 4], 4)))
    assert not strip.sliding


def test_a_strip_that_hides_all_it_can_cuts_its_names(theme: Theme) -> None:
    cells = (
        StripCell("a", "a long name here", here=True),
        StripCell("b", "another long", next=True),
    )
    strip = (part("hold", [20, 30, 60], 60, 20, rolls=True), StripVariable("variation", cells))
    fonts = strip_fonts(theme)
    whole = lay_out(strip, fonts, Unit.KG).size.width()
    tight = fitted(strip, fonts, Unit.KG, whole * 0.75)
    assert tight.size.width() <= whole * 0.75
    assert [each.text for each in tight.cells if each.here][1].endswith("…")
