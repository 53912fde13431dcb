"""What a rule asks besides its ranges: one more day a week, and the smallest harder step."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QWidget

from desktop.training.position import (
    FrequencyCondition,
    ProgressionRule,
    Variable,
)
from views.blocks import Label
from views.flow_layout import FieldFlow
from views.number_fields import FieldError, NumberField, WholeField, Wrong
from views.range_row import RuleScene
from views.theme import Theme


class RuleExtras(QWidget):
    """``edited(str)`` with the name of the edit; ``typed`` while a number is being typed. Without
    steps and weeks no day is proposed.
    """

    edited = Signal(str)
    typed = Signal()

    def __init__(self, theme: Theme, error: FieldError, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.steps = WholeField(self.tr("One more day a week after so many steps"), 1, 99)
        self.weeks = WholeField(self.tr("One more day a week after so many weeks"), 1, 99)
        self.most = WholeField(self.tr("At most so many days a week"), 1, 7, optional=False)
        self.least = NumberField(
            self.tr("Smallest step of the variation, in percent of body mass"),
            Decimal("0.1"),
            50,
            decimals=1,
            optional=False,
        )
        self._fields = (self.steps, self.weeks, self.most, self.least)
        flow = FieldFlow(theme.px(14), theme.px(6), self, centred=True)
        flow.addWidget(
            self._phrase(
                self.tr("One more day a week after"), self.steps, self.tr("steps or"), self.weeks,
                self.tr("weeks, up to"), self.most, self.tr("days"),
            )
        )  # fmt: skip
        self._variation = self._phrase(
            self.tr("A harder variation is at least"), self.least, self.tr("% of body mass more")
        )
        flow.addWidget(self._variation)
        for field in self._fields:
            field.bind_error(error)
            field.textEdited.connect(lambda _text: self.typed.emit())
        for field in (self.steps, self.weeks, self.most):
            field.committed.connect(lambda: self.edited.emit(self.tr("one more day a week")))
        self.least.committed.connect(lambda: self.edited.emit(self.tr("smallest step")))
        theme.changed.connect(self._space)
        self._space()

    def show_rule(self, rule: ProgressionRule, scene: RuleScene) -> None:
        """Show a rule's; a field with a slip keeps its text."""
        condition = rule.frequency
        _show(self.steps, condition.steps if condition else None)
        _show(self.weeks, condition.weeks if condition else None)
        _show(self.most, condition.most if condition else 4)
        if not self.least.error:
            self.least.set_value(Decimal(repr(round(100 * rule.least_share_step, 1))))
        scaled = any(each.share is not None for each in scene.around.scale)
        self._variation.setVisible(scaled and rule.range_of(Variable.VARIATION) is not None)

    def read(self, rule: ProgressionRule) -> ProgressionRule | None:
        """The rule with what stands here; None where a number is not allowed."""
        if not all(field.check() for field in self._fields):
            return None
        steps, weeks = self.steps.whole, self.weeks.whole
        condition = None
        if steps is not None or weeks is not None:
            condition = FrequencyCondition(steps, weeks, self.most.whole or 4)
        share = self.least.value
        least = rule.least_share_step
        if share is not None and not isinstance(share, Wrong):
            least = float(share) / 100
        return replace(rule, frequency=condition, least_share_step=least)

    def _phrase(self, *parts: str | NumberField) -> QWidget:
        phrase = QWidget()
        row = QHBoxLayout(phrase)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(self._theme.px(6))
        for part in parts:
            row.addWidget(Label(part, "small", "muted") if isinstance(part, str) else part)
        return phrase

    def _space(self) -> None:
        for field in self._fields:
            field.setFixedWidth(self._theme.px(44))


def _show(field: WholeField, value: int | None) -> None:
    if not field.error:
        field.set_value(value)
