"""Number fields: both decimal marks in every locale, nothing guessed, nothing lost."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

import pytest
from PySide6.QtCore import QLocale, Qt
from PySide6.QtWidgets import QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from desktop.training.quantities import Unit
from views.number_fields import WRONG, FieldError, LengthField, LoadField, NumberField, WholeField

LOCALES = ("en_US", "en_GB", "de_DE", "fr_FR", "sv_SE", "de_CH")


@pytest.fixture(params=LOCALES)
def locale(request: pytest.FixtureRequest) -> Iterator[QLocale]:
    before = QLocale()
    QLocale.setDefault(QLocale(request.param))
    yield QLocale()
    QLocale.setDefault(before)


@pytest.mark.parametrize(
    ("typed", "meant"),
    [("2.5", "2.5"), ("2,5", "2.5"), ("102.5", "102.5"), ("62,25", "62.25"), (" 7 ", "7")],
)
def test_both_marks_mean_the_same_everywhere(
    locale: QLocale, qtbot: QtBot, typed: str, meant: str
) -> None:
    field = NumberField("Load")
    qtbot.addWidget(field)
    qtbot.keyClicks(field, typed)
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert field.value == Decimal(meant)
    assert field.text() == meant.replace(".", locale.decimalPoint())


@pytest.mark.parametrize("typed", ["1,250", "1 250", "1.250,5", "ten", "2..5", "5 kg"])
def test_what_cannot_be_read_stays_as_typed_and_says_why(
    locale: QLocale, qtbot: QtBot, typed: str
) -> None:
    field = NumberField("Load")
    error = FieldError()
    qtbot.addWidget(field)
    qtbot.addWidget(error)
    field.bind_error(error)
    committed: list[None] = []
    field.committed.connect(lambda: committed.append(None))
    qtbot.keyClicks(field, typed)
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert field.value is WRONG
    assert field.text() == typed
    assert error.text() == field.accessibleDescription() != ""
    assert not committed


def test_a_fault_disappears_as_soon_as_it_is_mended(qtbot: QtBot, english: None) -> None:
    field = WholeField("Reps", 1, 100)
    qtbot.addWidget(field)
    qtbot.keyClicks(field, "1000")
    assert not field.check()
    assert field.error == "Allowed: 1 to 100."
    qtbot.keyClick(field, Qt.Key.Key_Backspace)
    assert field.error == ""


def test_whole_numbers_refuse_parts(qtbot: QtBot) -> None:
    field = WholeField("Reps", 0, 100)
    qtbot.addWidget(field)
    qtbot.keyClicks(field, "8.5")
    assert field.value is WRONG
    assert field.whole is None


def test_return_goes_to_the_next_field_unless_something_is_wrong(qtbot: QtBot) -> None:
    window = QWidget()
    column = QVBoxLayout(window)
    first, second = NumberField("First"), NumberField("Second")
    column.addWidget(first)
    column.addWidget(second)
    qtbot.addWidget(window)
    with qtbot.waitActive(window):
        window.show()
    first.setFocus()
    qtbot.keyClicks(first, "x")
    qtbot.keyClick(first, Qt.Key.Key_Return)
    assert first.hasFocus()
    first.clear()
    qtbot.keyClicks(first, "8")
    qtbot.keyClick(first, Qt.Key.Key_Return)
    assert second.hasFocus()


def test_pounds_come_back_as_the_pounds_typed(qtbot: QtBot, english: None) -> None:
    field = LoadField("Load", Unit.LB)
    qtbot.addWidget(field)
    qtbot.keyClicks(field, "137.5")
    assert field.grams == 62_369
    field.set_grams(field.grams)
    assert field.text() == "137.5"


def test_a_mass_shown_rounded_stays_exact_until_typed_over(qtbot: QtBot, english: None) -> None:
    field = LoadField("Disc", Unit.LB)
    qtbot.addWidget(field)
    field.set_grams(1250)
    assert (field.text(), field.grams) == ("2.76", 1250)
    field.set_unit(Unit.KG)
    assert (field.text(), field.grams) == ("1.25", 1250)


def test_an_unlikely_load_is_asked_about_and_taken(qtbot: QtBot, english: None) -> None:
    field = LoadField("Load", likely_g=80_000)
    error = FieldError()
    qtbot.addWidget(field)
    qtbot.addWidget(error)
    field.bind_error(error)
    qtbot.keyClicks(field, "625")
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert error.text() == "625 kg: is this meant?"
    assert (field.grams, field.unlikely) == (625_000, True)


def test_assistance_is_typed_with_a_minus(qtbot: QtBot, english: None) -> None:
    field = LoadField("Load", signed=True)
    qtbot.addWidget(field)
    qtbot.keyClicks(field, "-20")
    assert field.grams == -20_000
    unsigned = LoadField("Load")
    qtbot.addWidget(unsigned)
    qtbot.keyClicks(unsigned, "-20")
    assert unsigned.grams is None


def test_lengths_are_typed_in_centimetres(qtbot: QtBot, german: None) -> None:
    field = LengthField("Height")
    qtbot.addWidget(field)
    qtbot.keyClicks(field, "45,5")
    assert field.mm == 455
