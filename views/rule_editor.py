"""The rule of a slot: a ready-made one by its name, its ranges, and when and how it moves."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from desktop.training.exercises import LoadingKind, Measure
from desktop.training.position import (
    BackOff,
    Criterion,
    CriterionKind,
    Follow,
    InvalidRule,
    MissPolicy,
    ProgressionRule,
    SchemeKind,
    SetScheme,
    Variable,
    VariableRange,
)
from desktop.training.program import Slot
from desktop.training.rules import (
    ReadyRule,
    ready_rule,
    ready_rule_of,
    rules_for,
    with_ready_rule,
)
from views.blocks import Label, WordButton
from views.captioned import ChoiceBox
from views.flow_layout import FieldFlow
from views.number_fields import FieldError, NumberField, WholeField
from views.range_row import RuleScene
from views.range_rows import RangeRows
from views.rule_extras import RuleExtras
from views.rule_words import (
    back_off_word,
    criterion_word,
    rule_name,
    rule_sentence,
    scheme_word,
    variable_name,
)
from views.theme import Theme


class RuleEditor(QWidget):
    """Edits a slot's rule. ``edited(Slot, str)`` with the slot after one edit and what it was
    called; ``typed`` while a number is being typed.
    """

    edited = Signal(object, str)
    typed = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._slot: Slot | None = None
        self._scene: RuleScene | None = None
        self.ready = ChoiceBox(self.tr("Rule"))
        self._sentence = Label(tone="muted", wrap=True)
        self.ranges = RangeRows(theme)
        self.error = FieldError()
        self.more: dict[Variable, WordButton] = {}
        self._criterion = ChoiceBox(self.tr("A step when"))
        self._sessions = WholeField(self.tr("So many times in a row"), 1, 10, optional=False)
        self._over = WholeField(self.tr("Repetitions over in the last set"), 1, 10, optional=False)
        self._misses = WholeField(self.tr("Misses in a row"), 1, 5, optional=False)
        self._back_off = ChoiceBox(self.tr("What gets easier after misses"))
        self._percent = NumberField(
            self.tr("Back off by percent"), 1, 50, decimals=1, optional=False
        )
        self._scheme = ChoiceBox(self.tr("How the sets relate"))
        self._lower = NumberField(
            self.tr("Lighter sets lower by percent"), 1, 50, decimals=1, optional=False
        )
        self._leader = ChoiceBox(self.tr("Follows another line"))
        self._share = NumberField(
            self.tr("Percent of the line followed"), 1, 100, decimals=1, optional=False
        )
        self.extras = RuleExtras(theme, self.error)
        self._phrases: dict[QWidget, QWidget] = {}
        self._assemble()
        self._connect()

    def show_slot(self, slot: Slot, scene: RuleScene, other_lines: Sequence[str]) -> None:
        """Show a slot's rule; ``other_lines`` of the same exercise may be followed."""
        self._slot, self._scene = slot, scene
        rule = slot.rule
        kind = ready_rule_of(rule)
        offered: list[ReadyRule | None] = list(rules_for(scene.exercise))
        if kind not in offered:
            offered.append(kind)
        self.ready.offer([(each, rule_name(each)) for each in offered], kind)
        self._sentence.setText(rule_sentence(kind))
        self.ranges.show_ranges(rule.ranges, scene)
        self._show_more(rule, scene)
        self._show_criterion(rule)
        self._show_misses(rule)
        self._show_scheme(rule, scene)
        self._show_follow(rule, slot, other_lines)
        self.extras.show_rule(rule, scene)

    def read(self) -> ProgressionRule | None:
        """The rule as it stands; None where something is wrong, which is said beside it."""
        slot = self._slot
        if slot is None:
            return None
        ranges = self.ranges.read()
        numbers = (self._sessions, self._over, self._misses, self._percent, self._lower)
        fine = [field.check() for field in (*numbers, self._share)]
        if ranges is None or not all(fine):
            return None
        try:
            made = self.extras.read(self._made(slot.rule, ranges))
        except InvalidRule as wrong:
            self.error.setText(str(wrong))
            return None
        if made is not None:
            self.error.setText("")
        return made

    def _made(self, rule: ProgressionRule, ranges: tuple[VariableRange, ...]) -> ProgressionRule:
        criterion = Criterion(
            self._criterion.choice or rule.criterion.kind,
            self._sessions.whole or 1,
            self._over.whole or rule.criterion.over,
        )
        miss = MissPolicy(
            self._misses.whole or 1, self._back_off.choice or BackOff.LOAD, _number(self._percent)
        )
        scheme = SetScheme(self._scheme.choice or rule.scheme.kind, _number(self._lower))
        follow = rule.follow
        if self._leader.isEnabled():
            name = self._leader.choice
            follow = None if name is None else Follow(name, _number(self._share))
        return replace(
            rule, ranges=ranges, criterion=criterion, miss=miss, scheme=scheme, follow=follow
        )

    def _show_more(self, rule: ProgressionRule, scene: RuleScene) -> None:
        growing = {ranged.variable for ranged in rule.ranges}
        for variable, button in self.more.items():
            button.setVisible(variable not in growing and _can_grow(variable, scene))

    def _show_criterion(self, rule: ProgressionRule) -> None:
        total = rule.scheme.kind is SchemeKind.TOTAL
        kinds = [CriterionKind.TOTAL] if total else [
            CriterionKind.ALL_SETS, CriterionKind.LAST_SET_OVER, CriterionKind.RESERVE,
        ]  # fmt: skip
        offered = [(each, criterion_word(each)) for each in kinds]
        self._criterion.offer(offered, rule.criterion.kind)
        self._sessions.set_value(rule.criterion.sessions)
        self._over.set_value(rule.criterion.over)
        self._phrases[self._over].setVisible(rule.criterion.kind is CriterionKind.LAST_SET_OVER)

    def _show_misses(self, rule: ProgressionRule) -> None:
        self._misses.set_value(rule.miss.misses)
        self._back_off.offer([(e, back_off_word(e)) for e in BackOff], rule.miss.back_off)
        self._percent.set_value(_exact(rule.miss.percent))
        self._phrases[self._percent].setVisible(rule.miss.back_off is BackOff.LOAD)

    def _show_scheme(self, rule: ProgressionRule, scene: RuleScene) -> None:
        kinds: list[SchemeKind] = [e for e in SchemeKind if e is not SchemeKind.TOTAL]
        if rule.scheme.kind is SchemeKind.TOTAL:
            kinds = [SchemeKind.TOTAL]
        elif scene.exercise.measure is Measure.HOLD:
            kinds = [SchemeKind.STRAIGHT]
        self._scheme.offer([(e, scheme_word(e)) for e in kinds], rule.scheme.kind)
        self._lower.set_value(_exact(rule.scheme.percent))
        graded = rule.scheme.kind in (SchemeKind.TOP_AND_BACK_OFF, SchemeKind.ASCENDING)
        self._phrases[self._lower].setVisible(graded)

    def _show_follow(self, rule: ProgressionRule, slot: Slot, others: Sequence[str]) -> None:
        names = [name for name in others if name != slot.line_name]
        if rule.follow is not None and rule.follow.line_name not in names:
            names.append(rule.follow.line_name)
        choices: list[tuple[str | None, str]] = [(None, self.tr("its own rule"))]
        choices += [(name, name or self.tr("the main line")) for name in names]
        self._leader.offer(choices, rule.follow.line_name if rule.follow else None)
        self._leader.setEnabled(bool(names))
        self._phrases[self._leader].setVisible(bool(names))
        self._share.set_value(_exact(rule.follow.percent if rule.follow else 85.0))
        self._phrases[self._share].setVisible(rule.follow is not None)

    def _assemble(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(self._theme.grid())
        top = QHBoxLayout()
        top.setSpacing(self._theme.px(12))
        top.addWidget(Label(self.tr("Rule")))
        self.ready.setMinimumWidth(self._theme.px(232))
        top.addWidget(self.ready)
        top.addWidget(self._sentence, 1)
        column.addLayout(top)
        column.addWidget(self.ranges)
        under = QHBoxLayout()
        under.setSpacing(self._theme.px(12))
        under.addWidget(self._more_words(), 1)
        under.addWidget(self.error, 1)
        column.addLayout(under)
        column.addWidget(self._sentences())
        column.addWidget(self.extras)

    def _more_words(self) -> QWidget:
        line = QWidget()
        flow = FieldFlow(self._theme.px(4), self._theme.px(2), line, centred=True)
        flow.addWidget(Label(self.tr("Let grow too:"), "small", "muted"))
        for variable in Variable:
            button = WordButton(variable_name(variable))
            button.clicked.connect(lambda _on=False, v=variable: self._add(v))
            self.more[variable] = button
            flow.addWidget(button)
        return line

    def _sentences(self) -> QWidget:
        line = QWidget()
        flow = FieldFlow(self._theme.px(14), self._theme.px(6), line, centred=True)
        percent = self.tr("%")
        parts = (
            (self.tr("A step when"), self._criterion, ""),
            (self.tr("by"), self._over, self.tr("reps")),
            ("", self._sessions, self.tr("in a row")),
            (self.tr("After"), self._misses, self.tr("misses in a row")),
            (self.tr("less"), self._back_off, ""),
            (self.tr("by"), self._percent, percent),
            (self.tr("Sets"), self._scheme, ""),
            (self.tr("lower by"), self._lower, percent),
            (self.tr("Moves by"), self._leader, ""),
            (self.tr("at"), self._share, percent),
        )
        for before, field, after in parts:
            flow.addWidget(self._phrase(before, field, after))
        return line

    def _space(self) -> None:
        for field in self._phrases:
            if isinstance(field, NumberField):
                field.setFixedWidth(self._theme.px(44))

    def _phrase(self, before: str, field: QWidget, after: str) -> QWidget:
        phrase = QWidget()
        row = QHBoxLayout(phrase)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(self._theme.px(6))
        if before:
            row.addWidget(Label(before, "small", "muted"))
        if isinstance(field, NumberField):
            field.bind_error(self.error)
        row.addWidget(field)
        if after:
            row.addWidget(Label(after, "small", "muted"))
        self._phrases[field] = phrase
        return phrase

    def _connect(self) -> None:
        self._theme.changed.connect(self._space)
        self._space()
        self.ready.picked.connect(self._choose_ready)
        self.ranges.edited.connect(lambda: self._emit(self.tr("range of the rule")))
        self.ranges.typed.connect(self.typed)
        self.extras.edited.connect(self._emit)
        self.extras.typed.connect(self.typed)
        named = (
            (self._criterion, self.tr("when it steps")),
            (self._back_off, self.tr("what follows misses")),
            (self._scheme, self.tr("how sets relate")),
            (self._leader, self.tr("what it follows")),
        )
        for box, what in named:
            box.picked.connect(lambda what=what: self._emit(what))
        numbers = (
            (self._sessions, self.tr("when it steps")),
            (self._over, self.tr("when it steps")),
            (self._misses, self.tr("what follows misses")),
            (self._percent, self.tr("what follows misses")),
            (self._lower, self.tr("how sets relate")),
            (self._share, self.tr("what it follows")),
        )
        for field, what in numbers:
            field.committed.connect(lambda what=what: self._emit(what))
            field.textEdited.connect(lambda _text: self.typed.emit())

    def _choose_ready(self) -> None:
        kind = self.ready.choice
        if self._slot is None or self._scene is None or kind is None:
            return
        changed = with_ready_rule(self._slot, kind, self._scene.exercise)
        self.edited.emit(changed, rule_name(kind))

    def _add(self, variable: Variable) -> None:
        if self._scene is not None:
            self.ranges.add(_usual_range(variable, self._scene))

    def _emit(self, what: str) -> None:
        rule = self.read()
        if rule is not None and self._slot is not None:
            self.edited.emit(replace(self._slot, rule=rule), what)


def _number(field: NumberField) -> float:
    """What stands in a field that was checked."""
    value = field.value
    return float(value) if isinstance(value, Decimal) else 0.0


def _exact(value: float) -> Decimal:
    return Decimal(repr(float(value)))


def _can_grow(variable: Variable, scene: RuleScene) -> bool:
    exercise = scene.exercise
    holds = exercise.measure is Measure.HOLD
    match variable:
        case Variable.HOLD:
            return holds
        case Variable.REPS | Variable.TEMPO:
            return not holds
        case Variable.VARIATION:
            return exercise.loading is LoadingKind.BODYWEIGHT and len(scene.variations) > 1
    return True


def _usual_range(variable: Variable, scene: RuleScene) -> VariableRange:
    """The range that a ready-made rule would give the variable; a few sets more for sets."""
    for kind in (*rules_for(scene.exercise), ReadyRule.REPS_SETS_LOAD, ReadyRule.TEMPO_REPS):
        found = ready_rule(kind, scene.exercise).range_of(variable)
        if found is not None and kind is not ReadyRule.TOTAL_REPS:
            return found
    return VariableRange(variable)
