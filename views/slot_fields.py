"""The fields of a slot beside its rule: where it starts, and what is asked on the day."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from decimal import Decimal
from typing import Final

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from desktop.training.exercises import LoadingKind, Measure
from desktop.training.position import SchemeKind, Variable
from desktop.training.program import Slot
from views.captioned import Captioned, ChoiceBox
from views.clock_field import ClockField
from views.flow_layout import FieldFlow
from views.number_fields import FieldError, LoadField, NumberField, WholeField
from views.range_row import RuleScene
from views.rows_editor import TextField
from views.terms import Term, meaning
from views.theme import Theme

_LIKELY_G: Final = 400_000


class SlotFields(QWidget):
    """Sets, repetitions or seconds, load and variation at the start; reserve, rest, tempo, the
    letter of slots done in turn, the line's name and a note.

    ``edited(Slot, str)`` with the slot after one edit and what it was called; ``typed`` while a
    number is being typed.
    """

    edited = Signal(object, str)
    typed = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._slot: Slot | None = None
        self._scene: RuleScene | None = None
        self.sets = WholeField(self.tr("Sets at the start"), 1, 20, optional=False)
        self.amount = WholeField(self.tr("Repetitions at the start"), 1, 999, optional=False)
        self._load: LoadField | None = None
        self.variation = ChoiceBox(self.tr("Variation at the start"))
        self.percent = NumberField(
            self.tr("Load at the start as a percentage of the maximum"), 1, 100, decimals=1
        )
        self.percent.setToolTip(
            self.tr(
                "Reckoned once, from the trend on the day the program is given; without a trend "
                "the load beside it holds"
            )
        )
        self.reserve = NumberField(self.tr("Repetitions in reserve"), 0, 10, decimals=1)
        self.reserve.setToolTip(meaning(Term.RIR))
        self.rest = ClockField(self.tr("Rest after a set"))
        self.tempo = TextField(self.tr("Tempo: seconds down, held, up"))
        self.tempo_s = WholeField(self.tr("Seconds a repetition at the start"), 1, 60)
        self.pair = TextField(self.tr("Letter of slots done in turn"))
        self.line = TextField(self.tr("Name of the line"))
        self.note = TextField(self.tr("Note for the sheet"))
        self.error = FieldError()
        self._parts: dict[QWidget, Captioned] = {}
        self._assemble()
        self._connect()

    @property
    def load(self) -> LoadField:
        """The load's field."""
        assert self._load is not None
        return self._load

    def show_slot(self, slot: Slot, scene: RuleScene) -> None:
        """Show a slot; a field that holds a wrong text keeps it."""
        self._slot, self._scene = slot, scene
        start, rule = slot.start, slot.rule
        hold = scene.exercise.measure is Measure.HOLD
        total = rule.scheme.kind is SchemeKind.TOTAL
        amount = self.tr("in all") if total else self.tr("hold s") if hold else self.tr("reps")
        self._parts[self.amount].caption.setText(amount)
        load = self.tr("load")
        self._parts[self.load].caption.setText(f"{load} {scene.unit.value}")
        self.load.set_unit(scene.unit)
        _show(self.sets, start.sets)
        _show(self.amount, start.amount)
        if not self.load.error:
            self.load.set_grams(start.load_g)
        self.variation.offer(scene.variations, start.variation)
        bodyweight = scene.exercise.loading is LoadingKind.BODYWEIGHT
        self._parts[self.variation].setVisible(bodyweight and bool(scene.variations))
        _show(self.tempo_s, start.tempo_s)
        self._parts[self.tempo_s].setVisible(rule.range_of(Variable.TEMPO) is not None)
        self._parts[self.tempo].setVisible(rule.range_of(Variable.TEMPO) is None)
        if not self.reserve.error:
            rir = rule.target_rir
            self.reserve.set_value(None if rir is None else Decimal(repr(rir)))
        self._parts[self.reserve].setVisible(not hold)
        if not self.percent.error:
            share = rule.start_percent
            self.percent.set_value(None if share is None else Decimal(repr(share)))
        self._parts[self.percent].setVisible(not hold)
        _show(self.rest, slot.rest_s)
        for field, text in self._texts(slot):
            if not field.hasFocus():
                field.set_value(text)
        self._warn(slot)

    def read(self, slot: Slot) -> Slot | None:
        """``slot`` with what stands in the fields; None where something is wrong."""
        numbers = (
            self.sets, self.amount, self.load, self.percent, self.reserve, self.rest, self.tempo_s,
        )  # fmt: skip
        fine = [field.check() for field in numbers]
        if not all(fine) or self._scene is None:
            return None
        hold = self._scene.exercise.measure is Measure.HOLD
        start = replace(
            slot.start,
            sets=self.sets.whole or 1,
            reps=None if hold else self.amount.whole,
            hold_s=self.amount.whole if hold else None,
            load_g=self.load.grams or 0,
            variation=self.variation.choice if self.variation.count() else slot.start.variation,
        )
        if slot.rule.range_of(Variable.TEMPO) is not None:
            start = replace(start, tempo_s=self.tempo_s.whole)
        reserve = self.reserve.value
        rir = float(reserve) if isinstance(reserve, Decimal) else None
        share = self.percent.value
        percent = float(share) if isinstance(share, Decimal) else None
        return replace(
            slot,
            start=start,
            rule=replace(
                slot.rule,
                target_rir=None if hold else rir,
                start_percent=None if hold else percent,
            ),
            rest_s=self.rest.whole or 0,
            tempo=self.tempo.text().strip(),
            pair=self.pair.text().strip()[:1].upper(),
            line_name=self.line.text().strip(),
            note=self.note.text().strip(),
        )

    def _texts(self, slot: Slot) -> Iterable[tuple[TextField, str]]:
        return (
            (self.tempo, slot.tempo),
            (self.pair, slot.pair),
            (self.line, slot.line_name),
            (self.note, slot.note),
        )

    def _warn(self, slot: Slot) -> None:
        """A start outside the rule's range is allowed, and said."""
        counted = slot.rule.range_of(Variable.HOLD) or slot.rule.range_of(Variable.REPS)
        text = ""
        if counted is not None and counted.ceiling is not None:
            floor = counted.floor_at(slot.start.variation)
            if not floor <= slot.start.amount <= counted.ceiling:
                text = self.tr("The start lies outside the rule's {floor} to {ceiling}.").format(
                    floor=floor, ceiling=counted.ceiling
                )
        self.error.set_tone("caution" if text else "stop")
        self.error.setText(text)
        self.error.setVisible(bool(text))

    def _assemble(self) -> None:
        self._load = LoadField(
            self.tr("Load at the start"), signed=True, optional=False, likely_g=_LIKELY_G
        )
        line = QWidget()
        flow = FieldFlow(self._theme.px(10), self._theme.px(6), line)
        parts: tuple[tuple[str, QWidget, int, bool], ...] = (
            (self.tr("Start: sets"), self.sets, 64, False),
            (self.tr("reps"), self.amount, 48, False),
            (self.tr("load"), self._load, 68, False),
            (self.tr("or % of max"), self.percent, 68, False),
            (self.tr("variation"), self.variation, 176, False),
            (self.tr("In reserve"), self.reserve, 60, False),
            (self.tr("Rest"), self.rest, 56, False),
            (self.tr("Tempo"), self.tempo, 60, False),
            (self.tr("Seconds each"), self.tempo_s, 72, False),
            (self.tr("In turn"), self.pair, 44, False),
            (self.tr("Line"), self.line, 104, False),
            (self.tr("Note for the sheet"), self.note, 120, True),
        )
        for caption, field, width, grow in parts:
            part = Captioned(self._theme, caption, field, width, grow=grow)
            self._parts[field] = part
            flow.addWidget(part)
        self.variation.setSizeAdjustPolicy(
            ChoiceBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.line.setPlaceholderText(self.tr("the only one"))
        self.line.setToolTip(
            self.tr("A name tells two lines of one exercise apart, such as heavy and light")
        )
        self.pair.setMaxLength(1)
        self.tempo.setPlaceholderText("3-1-1")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(self._theme.px(4))
        column.addWidget(line)
        column.addWidget(self.error)

    def _connect(self) -> None:
        named = (
            (self.sets, self.tr("sets")),
            (self.amount, self.tr("start")),
            (self.load, self.tr("load")),
            (self.percent, self.tr("load")),
            (self.reserve, self.tr("reserve")),
            (self.rest, self.tr("rest")),
            (self.tempo_s, self.tr("tempo")),
        )
        for number, what in named:
            number.committed.connect(lambda what=what: self._emit(what))
            number.textEdited.connect(lambda _text: self.typed.emit())
            number.error_changed.connect(self._say)
        texts = (
            (self.tempo, self.tr("tempo")),
            (self.pair, self.tr("slots in turn")),
            (self.line, self.tr("name of the line")),
            (self.note, self.tr("note")),
        )
        for field, what in texts:
            field.committed.connect(lambda what=what: self._emit(what))
        self.variation.picked.connect(lambda: self._emit(self.tr("variation")))

    def _say(self, text: str) -> None:
        self.error.set_tone("stop")
        self.error.setText(text)
        self.error.setVisible(bool(text))

    def _emit(self, what: str) -> None:
        if self._slot is None:
            return
        slot = self.read(self._slot)
        if slot is not None:
            self.edited.emit(slot, what)


def _show(field: WholeField, value: int | None) -> None:
    """Show a number, unless a wrong text stands there: it waits to be mended."""
    if not field.error:
        field.set_value(value)
