"""A slot edited beneath its row: what it asks, where it starts, the rule by which it moves."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QVBoxLayout, QWidget

from desktop.training.exercises import Exercise
from desktop.training.position import ProgressionRule
from desktop.training.program import Slot
from views.acting_row import RowAct
from views.ahead_block import AheadBlock
from views.blocks import rule
from views.captioned import keyed_word
from views.changes_list import ChangesList, ChangesScene
from views.exercise_finder import ExerciseFinder
from views.flow_layout import FieldFlow
from views.range_row import RuleScene
from views.rule_editor import RuleEditor
from views.slot_fields import SlotFields
from views.theme import Theme


@dataclass(frozen=True, slots=True)
class PanelScene:
    """What a slot is edited against: the rule's scene, the names of the exercise's other lines,
    and the exercises it may be exchanged for; what is changed of it for the trainee chosen, and
    the rule that holds for them.
    """

    rule: RuleScene
    other_lines: tuple[str, ...]
    exercises: Sequence[Exercise]
    changes: ChangesScene | None = None
    own_rule: ProgressionRule | None = None


class SlotPanel(QFrame):
    """Edits one slot. ``edited(Slot, str)`` after each edit that is allowed, with its name;
    ``drafted(Slot)`` while a number is typed; ``exchanged(Exercise)``; ``acted(RowAct)``;
    ``closed`` on Escape.
    """

    edited = Signal(object, str)
    drafted = Signal(object)
    exchanged = Signal(object)
    acted = Signal(object)
    shown_anew = Signal()
    closed = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "inset")
        self._theme = theme
        self._slot: Slot | None = None
        self.fields = SlotFields(theme)
        self.rule = RuleEditor(theme)
        self.exchange = ExerciseFinder(
            theme, self.tr("Another exercise here"), self.tr("Exchange the exercise of this slot")
        )
        self.ahead = AheadBlock(theme)
        self.changes = ChangesList(theme)
        self._scene: PanelScene | None = None
        self._column = QVBoxLayout(self)
        self._column.addWidget(self.fields)
        self._column.addWidget(self.changes)
        self._column.addWidget(rule())
        self._column.addWidget(self.rule)
        self._column.addWidget(self.ahead)
        self._column.addWidget(rule())
        self._column.addWidget(self._actions())
        self.fields.edited.connect(self._edited)
        self.rule.edited.connect(self._edited)
        self.fields.typed.connect(self._typed)
        self.rule.typed.connect(self._typed)
        self.exchange.taken.connect(lambda exercise, _said: self.exchanged.emit(exercise))
        self.exchange.given_up.connect(self.closed)
        self.changes.only_changed.connect(lambda _on: self.shown_anew.emit())
        theme.changed.connect(self._space)
        self._space()

    def show_slot(self, slot: Slot, scene: PanelScene) -> None:
        """Show a slot; the focus and what is wrong in a field stay."""
        self._scene = scene
        self.changes.show_changes(scene.changes)
        self.fields.show_slot(slot, scene.rule)
        for_one = self.for_one and scene.own_rule is not None
        if for_one and scene.own_rule is not None:
            slot = replace(slot, rule=scene.own_rule)
        self._slot = slot
        self.fields.setEnabled(not for_one)
        self.rule.show_slot(slot, scene.rule, scene.other_lines)
        self.exchange.offer(scene.exercises, scene.rule.unit)

    @property
    def for_one(self) -> bool:
        """Whether the rule is changed for the trainee chosen alone."""
        return self.changes.only.isChecked()

    def take_focus(self, act: RowAct = RowAct.EDIT) -> None:
        """Put the cursor where it is wanted: into the first field, or to exchange the exercise."""
        field: QWidget = self.exchange if act is RowAct.EXCHANGE else self.fields.sets
        field.setFocus(Qt.FocusReason.TabFocusReason)

    def _edited(self, slot: Slot, what: str) -> None:
        if slot != self._slot:
            self.edited.emit(slot, what)

    def _typed(self) -> None:
        """While a number is typed the row above shows what would come of it."""
        if self._slot is None:
            return
        slot = self.fields.read(self._slot)
        made = self.rule.read()
        if slot is None or made is None:
            return
        drafted = replace(
            made, target_rir=slot.rule.target_rir, start_percent=slot.rule.start_percent
        )
        self.drafted.emit(replace(slot, rule=drafted))

    def _actions(self) -> QWidget:
        line = QWidget()
        flow = FieldFlow(self._theme.px(4), self._theme.px(4), line, centred=True)
        self.exchange.setFixedWidth(self._theme.px(220))
        flow.addWidget(self.exchange)
        for text, key, act in (
            (self.tr("Up"), "Alt+Up", RowAct.MOVE_UP),
            (self.tr("Down"), "Alt+Down", RowAct.MOVE_DOWN),
            (self.tr("Duplicate"), "Ctrl+D", RowAct.DUPLICATE),
            (self.tr("Remove"), "Delete", RowAct.REMOVE),
            (self.tr("Close"), "Esc", RowAct.LEAVE),
        ):
            button = keyed_word(text, key, tone="" if act is RowAct.LEAVE else "muted")
            button.clicked.connect(lambda _on=False, act=act: self._act(act))
            flow.addWidget(button)
        return line

    def _act(self, act: RowAct) -> None:
        if act is RowAct.LEAVE:
            self.closed.emit()
        else:
            self.acted.emit(act)

    def _space(self) -> None:
        inside = self._theme.grid(2)
        edge = self._theme.px(3) if self.property("kind") == "inset" else 0
        self._column.setContentsMargins(
            inside - edge, self._theme.px(6), inside, self._theme.px(10)
        )
        self._column.setSpacing(self._theme.px(10))

    def event(self, event: QEvent) -> bool:
        wanted = event.type() is QEvent.Type.ShortcutOverride
        if wanted and isinstance(event, QKeyEvent) and _moves(event):
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        moved = _moves(event)
        if moved is not None:
            self.acted.emit(moved)
        elif event.key() == Qt.Key.Key_Escape:
            self.closed.emit()
        else:
            super().keyPressEvent(event)


def _moves(event: QKeyEvent) -> RowAct | None:
    """The whole slot moves from within the panel too."""
    if event.modifiers() & Qt.KeyboardModifier.AltModifier:
        return {
            Qt.Key.Key_Up: RowAct.MOVE_UP,
            Qt.Key.Key_Down: RowAct.MOVE_DOWN,
        }.get(Qt.Key(event.key()))
    return None
