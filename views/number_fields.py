"""Fields for numbers: both decimal marks are understood, and nothing is guessed.

Standard spin boxes drop the other decimal mark and so read 2.5 as 25 in half of the world. Every
field here reads with the one parser of the model. A text that cannot be read stays as typed,
the field says beside it what is allowed, and ``value`` is `WRONG` until it is mended.
"""

from __future__ import annotations

from decimal import Decimal
from enum import Enum
from typing import Final

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent
from PySide6.QtWidgets import QLineEdit, QSizePolicy, QWidget

from desktop.training.quantities import InvalidQuantity, Unit, grams, in_unit, parse_decimal
from views import words
from views.blocks import Label, restyle


class Wrong(Enum):
    """The field holds a text that is not allowed."""

    WRONG = "wrong"


WRONG: Final = Wrong.WRONG
translate = QCoreApplication.translate


class FieldError(Label):
    """The place beside a field for what is wrong; keeps its height, so that nothing jumps."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(size="small", tone="stop", wrap=True, parent=parent)
        policy = self.sizePolicy()
        policy.setRetainSizeWhenHidden(True)
        self.setSizePolicy(policy)


class NumberField(QLineEdit):
    """One number, typed as text.

    ``least`` and ``most`` bound it (included), ``decimals`` is how many places are kept (0: whole
    numbers). Empty is None where ``optional``. ``committed`` is emitted when another allowed
    value stands after leaving the field or pressing Return; ``error_changed`` with the text of
    what is wrong, or "". Return goes to the next field.
    """

    committed = Signal()
    error_changed = Signal(str)

    def __init__(
        self,
        name: str,
        least: Decimal | int = 0,
        most: Decimal | int = 9999,
        *,
        decimals: int = 2,
        optional: bool = True,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._least = Decimal(least)
        self._most = Decimal(most)
        self._decimals = decimals
        self._optional = optional
        self._error = ""
        self._last: Decimal | None = None
        self.setAccessibleName(name)
        self.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self.setInputMethodHints(Qt.InputMethodHint.ImhFormattedNumbersOnly)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self.setMaxLength(20)
        self.textEdited.connect(self._check_while_typed)
        self.editingFinished.connect(self._finish)

    @property
    def value(self) -> Decimal | Wrong | None:
        """What stands in the field: a number, None for empty, `WRONG` for what is not allowed."""
        try:
            return self._read(self.text())
        except InvalidQuantity:
            return WRONG

    @property
    def error(self) -> str:
        """What is wrong, in words; "" when all is well."""
        return self._error

    def set_value(self, value: Decimal | int | None) -> None:
        """Show a value; emits nothing."""
        number = None if value is None else Decimal(value)
        self._last = number
        self.setText(self._shown(number))
        self._show_error("")

    def bind_error(self, label: FieldError) -> None:
        """Show what is wrong in ``label``, and read it aloud with the field."""
        self.error_changed.connect(label.setText)
        label.setText(self._error)

    def check(self) -> bool:
        """Whether an allowed value stands; if not, says beside the field what is allowed."""
        try:
            self._read(self.text())
        except InvalidQuantity as wrong:
            self._show_error(quantity_words(wrong))
            return False
        self._show_error("")
        return True

    def _read(self, text: str) -> Decimal | None:
        if not text.strip():
            if self._optional:
                return None
            raise InvalidQuantity("a number is needed", "needed", self._limits())
        number = parse_decimal(text)
        rounded = round(number, self._decimals)
        if rounded != number:
            values = {"decimals": self._decimals}
            raise InvalidQuantity("too many decimals", "too_many_decimals", values)
        if not self._least <= number <= self._most:
            raise InvalidQuantity("out of range", "out_of_range", self._limits())
        return number

    def _limits(self) -> dict[str, object]:
        return {
            "least": words.number(self._least, self._decimals),
            "most": words.number(self._most, self._decimals),
        }

    def _shown(self, number: Decimal | None) -> str:
        if number is None:
            return ""
        # The typed minus is the plain hyphen; both are read.
        return words.number(number, self._decimals).replace(words.MINUS, "-")

    def _check_while_typed(self) -> None:
        """A fault disappears as soon as it is mended; a new one waits until the field is left."""
        if self._error:
            self.check()

    def _finish(self) -> None:
        if not self.check():
            return
        value = self._read(self.text())
        self.setText(self._shown(value))
        if value != self._last:
            self._last = value
            self.committed.emit()

    def _show_error(self, text: str) -> None:
        if text == self._error:
            return
        self._error = text
        self.setProperty("wrong", "true" if text else "false")
        self.setAccessibleDescription(text)
        restyle(self)
        self.error_changed.emit(text)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        plain = event.modifiers() in (
            Qt.KeyboardModifier.NoModifier,
            Qt.KeyboardModifier.KeypadModifier,
        )
        if plain and event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            super().keyPressEvent(event)
            if not self._error:
                self.focusNextChild()
            event.accept()
            return
        super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if event.reason() is not Qt.FocusReason.MouseFocusReason:
            self.selectAll()


class WholeField(NumberField):
    """A whole number: repetitions, seconds, minutes, a year."""

    def __init__(
        self,
        name: str,
        least: int = 0,
        most: int = 9999,
        *,
        optional: bool = True,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(name, least, most, decimals=0, optional=optional, parent=parent)
        self.setInputMethodHints(Qt.InputMethodHint.ImhDigitsOnly)

    @property
    def whole(self) -> int | None:
        """The number; None for empty or not allowed."""
        value = self.value
        return None if value is None or isinstance(value, Wrong) else int(value)


class LoadField(NumberField):
    """A mass in the trainee's unit, given and taken in grams; ``signed`` allows assistance.

    ``likely_g`` (largest, in grams) is a bound on sense: a larger value is taken, and the field
    asks beside it whether it is meant, since a slip of a decimal mark is ten times the load.
    """

    def __init__(
        self,
        name: str,
        unit: Unit = Unit.KG,
        *,
        signed: bool = False,
        optional: bool = True,
        most_g: int = 1_000_000,
        likely_g: int | None = None,
        parent: QWidget | None = None,
    ) -> None:
        self._most_g = most_g
        self._signed = signed
        self._likely_g = likely_g
        self._exact_g: int | None = None
        most = in_unit(most_g, unit)
        super().__init__(name, -most if signed else 0, most, optional=optional, parent=parent)
        self._unit = unit

    @property
    def grams(self) -> int | None:
        """The mass in grams; None for empty or not allowed. A mass that was shown and not typed
        over stays exact, though the unit shows it rounded.
        """
        value = self.value
        if value is None or isinstance(value, Wrong):
            return None
        if self._exact_g is not None and value == in_unit(self._exact_g, self._unit):
            return self._exact_g
        return grams(value, self._unit)

    @property
    def unlikely(self) -> bool:
        """Whether the value is larger than what is likely here."""
        mass = self.grams
        return mass is not None and self._likely_g is not None and abs(mass) > self._likely_g

    def set_grams(self, mass_g: int | None) -> None:
        """Show a mass; emits nothing."""
        self._exact_g = mass_g
        self.set_value(None if mass_g is None else in_unit(mass_g, self._unit))

    def set_unit(self, unit: Unit) -> None:
        """Show the same mass in another unit."""
        mass = self.grams
        self._unit = unit
        most = in_unit(self._most_g, unit)
        self._least, self._most = (-most if self._signed else Decimal(0)), most
        if mass is not None:
            self.set_grams(mass)

    def check(self) -> bool:
        """As for every number; an unlikely one is allowed, and asked about."""
        if not super().check():
            return False
        if self.unlikely:
            text = translate("Numbers", "{value}: is this meant?")
            value = words.load(self.grams or 0, self._unit)
            self.error_changed.emit(text.format(value=value))
        return True


class LengthField(NumberField):
    """A length in centimetres, given and taken in millimetres."""

    def __init__(
        self,
        name: str,
        most_cm: int = 400,
        *,
        least_cm: int = 0,
        optional: bool = True,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(name, least_cm, most_cm, decimals=1, optional=optional, parent=parent)

    @property
    def mm(self) -> int | None:
        """The length in millimetres; None for empty or not allowed."""
        value = self.value
        return None if value is None or isinstance(value, Wrong) else int(value * 10)

    def set_mm(self, mm: int | None) -> None:
        """Show a length; emits nothing."""
        self.set_value(None if mm is None else Decimal(mm) / 10)


def quantity_words(wrong: InvalidQuantity) -> str:
    """What is wrong with a number and what is allowed, in the coach's language."""
    text = {
        "grouped_number": translate(
            "Numbers", "No separators between thousands: write 1250.5 or 1250,5."
        ),
        "ambiguous_group": translate(
            "Numbers",
            "Thousands or a decimal? Write it without the mark, or with two places after it.",
        ),
        "not_a_number": translate(
            "Numbers", "Not a number: digits, and one decimal point or comma."
        ),
        "other_decimal_mark": translate("Numbers", "The other decimal mark."),
        "needed": translate("Numbers", "Needed: {least} to {most}."),
        "out_of_range": translate("Numbers", "Allowed: {least} to {most}."),
        "load_out_of_range": translate("Numbers", "At most {most} {unit}."),
        "too_many_decimals": translate(
            "Numbers", "At most {decimals} places after the decimal mark."
        ),
    }.get(wrong.code, str(wrong))
    if wrong.code == "too_many_decimals" and wrong.values.get("decimals") == 0:
        return translate("Numbers", "A whole number.")
    return text.format(**wrong.values)
