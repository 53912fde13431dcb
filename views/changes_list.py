"""What was changed for one trainee beside the program, each with a word that takes it back."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import QCoreApplication, Signal
from PySide6.QtWidgets import QCheckBox, QVBoxLayout, QWidget

from desktop.planning.line_changes import ChangeKind, LineChange
from desktop.planning.percent_starts import PercentStart
from desktop.training.exercises import Exercise, LoadingKind
from desktop.training.quantities import Unit
from desktop.training.rules import ready_rule_of
from desktop.training.trainee import Trainee
from views import words
from views.blocks import Label, WordButton
from views.flow_layout import FieldFlow
from views.rule_words import rule_name
from views.theme import Theme

translate = QCoreApplication.translate


@dataclass(frozen=True, slots=True)
class ChangesScene:
    """For whom the program is looked at, whether it is ``running`` for them, and what was changed;
    ``start`` says where they would start by a percentage.
    """

    trainee: str
    exercise: Exercise
    unit: Unit
    today: date
    changes: tuple[LineChange, ...] = ()
    running: bool = False
    start: str = ""


def change_text(change: LineChange, scene: ChangesScene) -> str:
    """One change: "from Mon 3 Nov: 3 × 8 at 60 kg (slow week)"."""
    day = words.short_day(change.day, scene.today)
    if change.kind is ChangeKind.RULE:
        rule = getattr(change.part, "rule", None)
        name = rule_name(ready_rule_of(rule)) if rule is not None else ""
        return translate("Changes", "from {day}: moves by {rule}").format(day=day, rule=name)
    assert change.position is not None
    bodyweight = scene.exercise.loading is LoadingKind.BODYWEIGHT
    work = words.prescription(change.position, scene.unit, bodyweight=bodyweight)
    text = translate("Changes", "from {day}: {work}")
    if change.kind is ChangeKind.START:
        text = {
            "assessment": translate("Changes", "from {day}: starts at {work}, by assessment"),
            "history": translate("Changes", "from {day}: starts at {work}, from the record"),
        }.get(change.note, translate("Changes", "from {day}: starts at {work}"))
        return text.format(day=day, work=work)
    said = text.format(day=day, work=work)
    return f"{said} ({change.note})" if change.note else said


def start_text(found: PercentStart | None, trainee: Trainee) -> str:
    """Where a trainee would start by a percentage of the maximum, or that nothing tells it."""
    if found is None:
        text = translate("Changes", "No trend tells the maximum of {name}: the load is as typed.")
        return text.format(name=trainee.name)
    text = translate(
        "Changes", "{name} would start at {load} today: {percent} % of about {maximum} (± {off})."
    )
    return text.format(
        name=trainee.name,
        load=words.load(found.position.load_g, trainee.unit),
        percent=words.number(found.percent, 1),
        maximum=words.load(round(found.maximum_g / 500) * 500, trainee.unit),
        off=words.percent(found.plus_minus),
    )


class ChangesList(QWidget):
    """``taken_back(LineChange)``; ``only_changed(bool)`` when rules are to be edited for this
    trainee alone, or for everybody again.
    """

    taken_back = Signal(object)
    only_changed = Signal(bool)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._scene: ChangesScene | None = None
        self.only = QCheckBox()
        self.start = Label(size="small", tone="muted")
        self.buttons: list[WordButton] = []
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(theme.px(2))
        line = QWidget()
        flow = FieldFlow(theme.px(14), theme.px(2), line, centred=True)
        flow.addWidget(self.only)
        flow.addWidget(self.start)
        self._column.addWidget(line)
        self._rows: list[QWidget] = []
        self.only.toggled.connect(self.only_changed)
        self.hide()

    def show_changes(self, scene: ChangesScene | None) -> None:
        """Show what was changed; None where the program runs for nobody chosen."""
        if scene == self._scene:
            return
        if scene is None or self._scene is None or scene.trainee != self._scene.trainee:
            self.only.setChecked(False)
        self._scene = scene
        for row in self._rows:
            self._column.removeWidget(row)
            row.hide()
            row.deleteLater()
        self._rows, self.buttons = [], []
        self.setVisible(scene is not None)
        if scene is None:
            return
        name = scene.trainee.replace("&", "&&")
        self.only.setVisible(scene.running)
        self.only.setText(self.tr("Change the rule for {name} only").format(name=name))
        self.start.setText(scene.start)
        self.start.setVisible(bool(scene.start))
        self._fill(scene.changes, scene)

    def _fill(self, changes: Sequence[LineChange], scene: ChangesScene) -> None:
        for change in changes:
            row = QWidget()
            flow = FieldFlow(self._theme.px(10), 0, row, centred=True)
            text = self.tr("{name}, {change}")
            said = text.format(name=scene.trainee, change=change_text(change, scene))
            flow.addWidget(Label(said, "small"))
            button = WordButton(self.tr("Take back"))
            button.setAccessibleDescription(said)
            button.clicked.connect(lambda _on=False, c=change: self.taken_back.emit(c))
            flow.addWidget(button)
            self.buttons.append(button)
            self._rows.append(row)
            self._column.addWidget(row)
