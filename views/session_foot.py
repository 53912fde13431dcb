"""The foot of the session form: effort, minutes, note, what is asked seldom, and saving."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QCoreApplication, QSize, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QLineEdit, QSizePolicy, QVBoxLayout, QWidget

from desktop.planning.session_draft import ACTIVITY, WELLNESS, Field, SessionDraft
from desktop.planning.typed_session import field_problem, training_load
from views import words
from views.blocks import Label, restyle, rule
from views.callout import Callout
from views.flow_layout import FlowLayout
from views.key_word import KeyWord
from views.session_texts import field_word, problem_text
from views.theme import Theme

translate = QCoreApplication.translate

_WIDTHS: Final = {Field.NOTE: 0, Field.MASS: 64, Field.ACTIVITY: 130}
_WORDED: Final = (Field.NOTE, Field.ACTIVITY)
_SELDOM: Final = (Field.MASS, *WELLNESS, *ACTIVITY)


class FootField(QLineEdit):
    """One of the session's own fields. ``typed(text)``; ``entered``, ``left``, ``returned``."""

    typed = Signal(str)
    entered = Signal()
    left = Signal()
    returned = Signal()

    def __init__(self, theme: Theme, field: Field) -> None:
        super().__init__()
        self._theme = theme
        self.field = field
        self.setProperty("kind", "field")
        self.setAccessibleName(_spoken(field))
        self.setMaxLength(2_000)
        if field not in _WORDED:
            self.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self.textEdited.connect(self.typed)
        theme.changed.connect(self._space)
        self._space()

    def show_state(self, wrong: str) -> None:
        """Mark what is wrong; "" where nothing is."""
        state = "wrong" if wrong else ""
        self.setAccessibleDescription(wrong)
        if self.property("state") != state:
            self.setProperty("state", state)
            restyle(self)

    def _space(self) -> None:
        wide = _WIDTHS.get(self.field, 44)
        if wide:
            self.setFixedWidth(self._theme.px(wide))
        else:
            self.setMinimumWidth(self._theme.px(100))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not (
            event.modifiers() & Qt.KeyboardModifier.ControlModifier
        ):
            self.returned.emit()
            return
        super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if event.reason() is not Qt.FocusReason.MouseFocusReason:
            self.selectAll()
        self.entered.emit()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.left.emit()


class SessionFoot(QWidget):
    """``typed(Field, text)``, ``red_flag(bool)``, ``save_wanted``; ``entered`` and ``left`` of a
    field; ``acted(name)`` for the words that act on the cell with the cursor; ``activity_typed``
    when Return ends another activity.
    """

    typed = Signal(object, str)
    red_flag = Signal(bool)
    save_wanted = Signal()
    acted = Signal(str)
    entered = Signal(object)
    left = Signal(object)
    stepped = Signal(object)
    activity_typed = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._callout: Callout | None = None
        self.fields = {field: FootField(theme, field) for field in Field}
        self.load = Label("", tone="muted")
        self.unit = Label("", "small", "muted")
        self.activities = Label("", "small", "muted")
        self.more = KeyWord(self.tr("More"), "F7", tone="muted")
        self.more.setToolTip(
            self.tr("Body mass, sleep, soreness, stress, motivation, other activities, red flags")
        )
        self.save = KeyWord(self.tr("Save"), "Ctrl+Return", strong=True)
        self.flag = QCheckBox(
            self.tr("Red flag: chest pain, fainting, sudden severe pain or numbness")
        )
        self._assemble()
        self._connect()
        theme.changed.connect(self._space)
        self._space()

    def begin(self, draft: SessionDraft) -> None:
        """Show another session; what is asked seldom is folded where nothing of it is typed."""
        self._seldom.hide()
        self.show_draft(draft)

    def show_draft(self, draft: SessionDraft) -> None:
        """Show the session's own fields of a draft."""
        for field, edit in self.fields.items():
            if edit.text() != draft.text(field):
                edit.setText(draft.text(field))
            wrong = field_problem(draft, field)
            edit.show_state("" if wrong is None else problem_text(wrong))
        if self.flag.isChecked() != draft.red_flag:
            self.flag.setChecked(draft.red_flag)
        self.unit.setText(draft.unit.value)
        load = training_load(draft)
        self.load.setText(
            ""
            if load is None
            else self.tr("training load {load}").format(load=words.number(load, 0))
        )
        if any(draft.text(field) for field in _SELDOM) or draft.red_flag:
            self.unfold()

    def show_activities(self, text: str) -> None:
        """Show which activities of the week are on record."""
        self.activities.setText(text)
        self.activities.setVisible(bool(text))

    def unfold(self) -> None:
        """Show what is asked seldom."""
        self._seldom.show()

    @property
    def callout(self) -> Callout:
        """What is said of a field; it lies over the window, since the foot is low."""
        if self._callout is None:
            self._callout = Callout(self._theme, self.window())
        return self._callout

    def go_to(self, field: Field) -> None:
        """Put the cursor into a field."""
        if field in _SELDOM:
            self.unfold()
        self.fields[field].setFocus(Qt.FocusReason.TabFocusReason)

    def toggle(self) -> None:
        """Fold or unfold what is asked seldom; unfolded, the cursor goes there."""
        self._seldom.setVisible(self._seldom.isHidden())
        if self._seldom.isVisible():
            self.fields[Field.MASS].setFocus(Qt.FocusReason.ShortcutFocusReason)

    def _assemble(self) -> None:
        px = self._theme.px
        self._column = QVBoxLayout(self)
        self._line = QHBoxLayout()
        self._line.addWidget(rule())
        self._column.addLayout(self._line)
        self._column.addWidget(self._actions())
        self._column.addWidget(self._folded())
        self._bottom = FlowLayout()
        effort, minutes = self.fields[Field.EFFORT], self.fields[Field.MINUTES]
        of_ten, unit = Label(self.tr("of 10"), tone="muted"), Label(self.tr("min"), tone="muted")
        self._bottom.addWidget(
            _together(px(6), _word(Field.EFFORT), effort, of_ten, minutes, unit, self.load)
        )
        note = self.fields[Field.NOTE]
        note.setPlaceholderText(self.tr("Note on the session"))
        note.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self._bottom.addWidget(note)
        saving = _together(px(2), self.more, self.save)
        self._bottom.addWidget(saving)
        self._bottom.setAlignment(saving, Qt.AlignmentFlag.AlignRight)
        self._column.addLayout(self._bottom)

    def _actions(self) -> QWidget:
        row = _KeyWords(self._theme)
        offers = (
            ("as asked", self.tr("Set as asked"), "="),
            ("slot as asked", self.tr("Exercise as asked"), "F8"),
            ("extra set", self.tr("Extra set"), "Ctrl+N"),
            ("load", self.tr("Load"), "F2"),
            ("variation", self.tr("Variation"), "F4"),
            ("warm-up", self.tr("Warm-up"), "F5"),
            ("note", self.tr("Note"), "F6"),
            ("add", self.tr("Add exercise"), "F3"),
        )
        for name, text, key in offers:
            button = KeyWord(text, key, tone="muted")
            button.clicked.connect(lambda _checked=False, n=name: self.acted.emit(n))
            row.add(button)
        return row

    def _folded(self) -> QWidget:
        px = self._theme.px
        self._seldom = QWidget()
        flow = FlowLayout(self._seldom)
        flow.setContentsMargins(0, 0, 0, 0)
        flow.setSpacing(px(14))
        flow.line_gap = px(6)
        mass = self.fields[Field.MASS]
        flow.addWidget(_together(px(6), _word(Field.MASS), mass, self.unit))
        for field in WELLNESS:
            flow.addWidget(_together(px(6), _word(field), self.fields[field]))
        flow.addWidget(Label(self.tr("1 bad, 5 good"), "small", "muted"))
        flow.addWidget(self._activity())
        flow.addWidget(self.activities)
        flow.addWidget(self.flag)
        self._seldom.hide()
        return self._seldom

    def _activity(self) -> QWidget:
        """Another activity of the day."""
        name, minutes, effort = (self.fields[field] for field in ACTIVITY)
        name.setPlaceholderText(self.tr("cycling, a match"))
        return _together(
            self._theme.px(6),
            _word(Field.ACTIVITY),
            name,
            minutes,
            Label(self.tr("min"), tone="muted"),
            _word(Field.EFFORT),
            effort,
            Label(self.tr("of 10"), tone="muted"),
        )

    def _returned(self, field: Field) -> None:
        if field is Field.ACTIVITY_EFFORT:
            self.activity_typed.emit()
        else:
            self.fields[field].focusNextChild()

    def _connect(self) -> None:
        for field, edit in self.fields.items():
            edit.typed.connect(lambda text, f=field: self.typed.emit(f, text))
            edit.entered.connect(lambda f=field: self.entered.emit(f))
            edit.left.connect(lambda f=field: self.left.emit(f))
            edit.returned.connect(lambda f=field: self._returned(f))
        self.flag.clicked.connect(self.red_flag)
        self.more.clicked.connect(self.toggle)
        self.save.clicked.connect(self.save_wanted)

    def _space(self) -> None:
        edge = self._theme.grid(3)
        inset = self._theme.px(7)  # words to act on have a margin of their own
        self._line.setContentsMargins(0, 0, inset, 0)
        self._column.setContentsMargins(edge, 0, edge - inset, self._theme.px(10))
        self._column.setSpacing(self._theme.px(6))
        self._bottom.setSpacing(self._theme.grid(2))
        self._bottom.line_gap = self._theme.px(6)


class _KeyWords(QWidget):
    """Words beside each other; those for which there is no room are left out."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._buttons: list[KeyWord] = []
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def add(self, button: KeyWord) -> None:
        """One more word at the right."""
        button.setParent(self)
        self._buttons.append(button)
        self.updateGeometry()

    def sizeHint(self) -> QSize:
        hints = [button.sizeHint() for button in self._buttons]
        return QSize(sum(h.width() for h in hints), max((h.height() for h in hints), default=0))

    def minimumSizeHint(self) -> QSize:
        return QSize(0, self.sizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        left = -self._theme.px(6)  # the first word stands flush with the edge
        for button in self._buttons:
            size = button.sizeHint()
            button.setGeometry(left, 0, size.width(), size.height())
            button.setVisible(left + size.width() <= self.width())
            left += size.width() + self._theme.px(2)


def _together(gap: int, *widgets: QWidget) -> QWidget:
    """Widgets that stay side by side."""
    holder = QWidget()
    holder.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
    row = QHBoxLayout(holder)
    row.setContentsMargins(0, 0, 0, 0)
    row.setSpacing(gap)
    for widget in widgets:
        row.addWidget(widget)
    return holder


def _word(field: Field) -> Label:
    return Label(field_word(field), tone="muted")


def _spoken(field: Field) -> str:
    return {
        Field.EFFORT: translate("Session", "Effort of the session, 0 to 10"),
        Field.MINUTES: translate("Session", "Minutes"),
        Field.NOTE: translate("Session", "Note on the session"),
        Field.SLEEP: translate("Session", "Sleep, 1 bad to 5 good"),
        Field.SORENESS: translate("Session", "Soreness, 1 bad to 5 good"),
        Field.STRESS: translate("Session", "Stress, 1 bad to 5 good"),
        Field.MOTIVATION: translate("Session", "Motivation, 1 bad to 5 good"),
    }.get(field, field_word(field))
