"""One range of a rule as a row: what grows, from where to where, by how much."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Final

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QWidget

from desktop.training.exercises import Exercise, LoadingKind
from desktop.training.position import (
    DEFAULT_WHEN_SLOWER,
    InvalidRule,
    Surroundings,
    Variable,
    VariableRange,
    WhenSlower,
)
from desktop.training.quantities import Unit
from views import words
from views.blocks import Label, WordButton
from views.captioned import ChoiceBox
from views.number_fields import FieldError, LoadField, NumberField, WholeField
from views.rule_words import then_word, variable_name
from views.sentences import worded
from views.theme import Theme

NAME_WIDTH: Final = 92
NUMBER_WIDTH: Final = 58
THEN_WIDTH: Final = 196
_LEAST: Final = 72
_WIDE: Final = 720
_MOST: Final = {Variable.SETS: 20, Variable.TEMPO: 60}


@dataclass(frozen=True, slots=True)
class RuleScene:
    """What a rule is edited against: the exercise, what surrounds it, the unit of loads."""

    exercise: Exercise
    around: Surroundings
    unit: Unit
    total: bool = False

    @property
    def variations(self) -> tuple[tuple[str, str], ...]:
        """Keys and names of the variations to choose from, easiest first."""
        if self.around.scale:
            return tuple((each.key, each.name) for each in self.around.scale)
        return tuple((each.key, each.name) for each in self.exercise.variations)


class RangeRow(QWidget):
    """One variable's range. Alt with left and right moves it among the others.

    ``edited`` when an allowed value was typed or chosen; ``typed`` while typing; ``moved(-1)``
    towards faster, ``moved(1)`` towards slower; ``removed``.
    """

    edited = Signal()
    typed = Signal()
    moved = Signal(int)
    removed = Signal()

    def __init__(
        self, theme: Theme, ranged: VariableRange, scene: RuleScene, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._theme, self._range, self._scene = theme, ranged, scene
        self._fields: list[NumberField] = []
        self._ends: list[ChoiceBox] = []
        self.error = FieldError()
        self._name = variable_name(ranged.variable, total=scene.total)
        self._label = Label(self._name)
        self._slowest = False
        self._then = ChoiceBox(self.tr("{name}: when a slower one moves").format(name=self._name))
        self.faster = WordButton(self.tr("Faster"), tone="muted")
        self.slower = WordButton(self.tr("Slower"), tone="muted")
        self.remove = WordButton(self.tr("Remove"), tone="muted")
        self.faster.hide()
        self.slower.hide()
        self._build()
        self._connect()
        self.show_range(ranged)

    @property
    def variable(self) -> Variable:
        """Which variable it is."""
        return self._range.variable

    @property
    def range(self) -> VariableRange:
        """The range last shown."""
        return self._range

    @property
    def fields(self) -> tuple[NumberField, ...]:
        """The fields from, to and by; none for a variation."""
        return tuple(self._fields)

    def take_focus(self) -> None:
        """Put the cursor into the first field."""
        first: QWidget = self._fields[0] if self._fields else self._ends[0]
        first.setFocus(Qt.FocusReason.OtherFocusReason)

    def show_range(self, ranged: VariableRange) -> None:
        """Show a range; a field that is being typed in keeps its text."""
        self._range = ranged
        if ranged.variable is Variable.VARIATION:
            known = self._scene.variations
            easiest = [(None, self.tr("the easiest there is")), *known]
            hardest = [(None, self.tr("the hardest there is")), *known]
            self._ends[0].offer(easiest, ranged.easiest)
            self._ends[1].offer(hardest, ranged.hardest)
        else:
            values = (ranged.floor, ranged.ceiling, ranged.increment)
            for field, value in zip(self._fields, values, strict=True):
                if field.hasFocus() and field.isModified() and field.error:
                    continue
                if isinstance(field, LoadField):
                    field.set_grams(value)
                else:
                    field.set_value(value)
        usual = DEFAULT_WHEN_SLOWER[ranged.variable]
        choices = [(None, then_word(usual))]
        offered = list(WhenSlower) if ranged.variable is Variable.REPS else [
            WhenSlower.RESET, WhenSlower.KEEP,
        ]  # fmt: skip
        choices += [(each, then_word(each)) for each in offered if each is not usual]  # type: ignore[misc]
        chosen = None if ranged.when_slower is usual else ranged.when_slower
        self._then.offer(choices, chosen)

    def set_place(self, place: int, count: int) -> None:
        """Where it stands among the others: the slowest has nobody to follow."""
        self._slowest = place == count - 1
        self._then.setVisible(not self._slowest)
        self._space()
        self.faster.setEnabled(place > 0)
        self.slower.setEnabled(place < count - 1)

    def _space(self) -> None:
        """Widths by the size of text; where nothing is slower two choices share the room."""
        room = 3 * NUMBER_WIDTH + 8 + (THEN_WIDTH + 8 if self._slowest else 0)
        between(self._label, self._theme.px(60), self._theme.px(NAME_WIDTH))
        between(self._then, self._theme.px(_LEAST), self._theme.px(THEN_WIDTH))
        for field in self._fields:
            between(field, self._theme.px(40), self._theme.px(NUMBER_WIDTH))
        for box in self._ends:
            between(box, self._theme.px(_LEAST), self._theme.px(room // 2))

    def read(self, *, slowest: bool) -> VariableRange | None:
        """The range as it stands; None where something is wrong, which is said beside it."""
        if not all(field.check() for field in self._fields):
            return None
        try:
            ranged = self._made()
            wrong = self._wrong(ranged, slowest)
        except InvalidRule as error:
            wrong = worded(error)
        self.error.setText(wrong)
        return None if wrong else ranged

    def _made(self) -> VariableRange:
        then = self._then.choice
        if self.variable is Variable.VARIATION:
            return replace(
                self._range,
                easiest=self._ends[0].choice,
                hardest=self._ends[1].choice,
                when_slower=then,
            )
        floor, ceiling, increment = (_value(field) for field in self._fields)
        self._check_order(floor, ceiling, increment or 1)
        return replace(
            self._range, floor=floor, ceiling=ceiling, increment=increment or 1, when_slower=then
        )

    def _check_order(self, floor: int | None, ceiling: int | None, increment: int) -> None:
        """The model's own checks, in the units that are typed here."""
        if floor is None or ceiling is None:
            return
        if ceiling < floor:
            text = self.tr("To {ceiling} is below from {floor}: allowed is {floor} and more.")
            raise InvalidRule(text.format(ceiling=self._said(ceiling), floor=self._said(floor)))
        if self.variable is not Variable.LOAD and (ceiling - floor) % increment:
            below = ceiling - (ceiling - floor) % increment
            text = self.tr("In steps of {by} from {floor}: allowed is {below} or {above}.")
            raise InvalidRule(
                text.format(
                    by=increment, floor=floor, below=max(below, floor), above=below + increment
                )
            )

    def _said(self, value: int) -> str:
        if self.variable is Variable.LOAD:
            return words.load(value, self._scene.unit)
        return words.number(value)

    def _wrong(self, ranged: VariableRange, slowest: bool) -> str:
        open_ended = ranged.ceiling is None and ranged.variable is not Variable.VARIATION
        if open_ended and not slowest:
            return self.tr("Say how far: only the slowest may go on without an end.")
        keys = [key for key, _ in self._scene.variations]
        ends = [keys.index(key) for key in (ranged.easiest, ranged.hardest) if key in keys]
        if len(ends) == 2 and ends[1] < ends[0]:
            return self.tr("The hardest is easier than the easiest: exchange them.")
        return ""

    def _build(self) -> None:
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(self._theme.grid())
        row.addWidget(self._label)
        if self.variable is Variable.VARIATION:
            for what in (self.tr("easiest"), self.tr("hardest")):
                box = ChoiceBox(f"{self._name}, {what}")
                box.setSizeAdjustPolicy(
                    ChoiceBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
                )
                box.setMinimumContentsLength(12)
                self._ends.append(box)
                row.addWidget(box)
        else:
            for field in self._number_fields():
                field.bind_error(self.error)
                self._fields.append(field)
                row.addWidget(field)
        row.addWidget(self._then)
        self._then.setSizeAdjustPolicy(
            ChoiceBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self._then.setMinimumContentsLength(14)
        policy = self._then.sizePolicy()
        policy.setRetainSizeWhenHidden(not self._ends)
        self._then.setSizePolicy(policy)
        for button in (self.faster, self.slower, self.remove):
            row.addWidget(button)
        self.error.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        row.addWidget(self.error, 1)

    def _number_fields(self) -> tuple[NumberField, NumberField, NumberField]:
        name, scene = self._name, self._scene
        floor = self.tr("{name}, from").format(name=name)
        ceiling = self.tr("{name}, to").format(name=name)
        increment = self.tr("{name}, by").format(name=name)
        if self.variable is Variable.LOAD:
            signed = scene.exercise.loading is LoadingKind.BODYWEIGHT
            return (
                LoadField(floor, scene.unit, signed=signed),
                LoadField(ceiling, scene.unit, signed=signed),
                LoadField(increment, scene.unit, optional=False),
            )
        most = _MOST.get(self.variable, 999)
        return (
            WholeField(floor, 1, most, optional=False),
            WholeField(ceiling, 1, most),
            WholeField(increment, 1, most, optional=False),
        )

    def _connect(self) -> None:
        for field in self._fields:
            field.committed.connect(self.edited)
            field.textEdited.connect(lambda _text: self.typed.emit())
        for box in (*self._ends, self._then):
            box.picked.connect(self.edited)
        self.faster.clicked.connect(lambda: self.moved.emit(-1))
        self.slower.clicked.connect(lambda: self.moved.emit(1))
        self.remove.clicked.connect(lambda: self.removed.emit())
        self._theme.changed.connect(self._space)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Where there is little room the keys alone move the row."""
        super().resizeEvent(event)
        wide = self.width() >= self._theme.px(_WIDE)
        self.faster.setVisible(wide)
        self.slower.setVisible(wide)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        step = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}.get(Qt.Key(event.key()), 0)
        if step and event.modifiers() & Qt.KeyboardModifier.AltModifier:
            self.moved.emit(step)
        else:
            super().keyPressEvent(event)


def between(widget: QWidget, least: int, most: int) -> None:
    """As wide as ``most``; less, down to ``least``, only where there is no room."""
    widget.setMinimumWidth(least)
    widget.setMaximumWidth(most)
    policy = widget.sizePolicy()
    policy.setHorizontalPolicy(QSizePolicy.Policy.Expanding)
    policy.setHorizontalStretch(most)
    widget.setSizePolicy(policy)


def _value(field: NumberField) -> int | None:
    if isinstance(field, LoadField):
        return field.grams
    return field.whole if isinstance(field, WholeField) else None
