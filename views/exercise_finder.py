"""Finding an exercise by typing part of its name, with what it is beside it, all by key."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import (
    QAbstractListModel,
    QEvent,
    QModelIndex,
    QPersistentModelIndex,
    QPoint,
    QRect,
    QSize,
    Qt,
    QTimer,
    Signal,
)
from PySide6.QtGui import QFocusEvent, QFontMetrics, QKeyEvent, QPainter
from PySide6.QtWidgets import (
    QLineEdit,
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from desktop.planning.exercise_search import find_exercises
from desktop.training.exercises import Exercise
from desktop.training.quantities import Unit
from desktop.training.shorthand import Shorthand, read_shorthand
from views.exercise_words import exercise_kind
from views.theme import TextSize, Theme

_Index = QModelIndex | QPersistentModelIndex
_EXERCISE = Qt.ItemDataRole.UserRole + 1
_MOST = 7


class ExerciseFinder(QLineEdit):
    """A field that finds exercises. ``taken(Exercise, Shorthand)`` when one is chosen.

    The likeliest stand in a list beneath while something is typed: arrows choose, Return takes,
    Escape clears. ``left(step)`` when an arrow leaves the empty field (-1 up, 1 down), and
    ``given_up`` when Escape is pressed in it.
    """

    taken = Signal(object, object)
    left = Signal(int)
    given_up = Signal()

    def __init__(
        self, theme: Theme, placeholder: str, name: str, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self._exercises: tuple[Exercise, ...] = ()
        self._unit = Unit.KG
        self._list: _CandidateList | None = None
        self.setPlaceholderText(placeholder)
        self.setAccessibleName(name)
        self.textEdited.connect(self._search)

    def offer(self, exercises: Sequence[Exercise], unit: Unit) -> None:
        """Search among these; loads without a unit are in ``unit``."""
        self._exercises = tuple(exercises)
        self._unit = unit

    @property
    def said(self) -> Shorthand:
        """What is typed, as it is understood."""
        return read_shorthand(self.text(), self._unit)

    @property
    def candidates(self) -> tuple[Exercise, ...]:
        """The exercises that are offered for what is typed."""
        return self._list.shown if self._list is not None and self._list.isVisible() else ()

    def _search(self) -> None:
        found = find_exercises(self.said.name, self._exercises, _MOST)
        if not found:
            self._close()
            return
        if self._list is None:
            self._list = _CandidateList(self._theme, self.window())
            self._list.clicked.connect(lambda index: self._take(index.data(_EXERCISE)))
        self._list.offer(found)
        self._place()
        QTimer.singleShot(0, self, self._place_again)  # the page may still be scrolling to us

    def _place(self) -> None:
        if self._list is None:
            return
        wide = max(self.width(), self._theme.px(420))
        tall = self._list.sizeHintForRow(0) * len(self._list.shown) + self._theme.px(4)
        top_left = self.mapTo(self.window(), QPoint(0, self.height() + 1))
        if top_left.y() + tall > self.window().height():
            top_left = self.mapTo(self.window(), QPoint(0, -tall - 1))
        self._list.setGeometry(QRect(top_left, QSize(wide, tall)))
        self._list.show()
        self._list.raise_()

    def _place_again(self) -> None:
        if self.candidates:
            self._place()

    def _close(self) -> None:
        if self._list is not None:
            self._list.hide()

    def _take(self, exercise: Exercise | None) -> None:
        said = self.said
        if exercise is None:
            found = find_exercises(said.name, self._exercises, 1)
            exercise = found[0] if found else None
        if exercise is None:
            return
        self._close()
        self.clear()
        self.taken.emit(exercise, said)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        open_list = self._list if self.candidates else None
        step = {Qt.Key.Key_Up: -1, Qt.Key.Key_Down: 1}.get(key, 0)
        plain = not event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
        if step and plain and open_list is not None:
            open_list.step(step)
        elif step and plain and not self.text():
            self.left.emit(step)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and plain:
            self._take(open_list.current if open_list is not None else None)
        elif key == Qt.Key.Key_Escape:
            if self.text():
                self._close()
                self.clear()
            else:
                self.given_up.emit()
        else:
            super().keyPressEvent(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self._close()

    def event(self, event: QEvent) -> bool:
        if event.type() is QEvent.Type.Hide:
            self._close()
        return super().event(event)


class _CandidateList(QListView):
    """The exercises offered, over what lies beneath."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._model = _Candidates(self)
        self.setModel(self._model)
        self.setItemDelegate(_CandidateDelegate(theme, self))
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(self.tr("Exercises found"))
        self.hide()

    @property
    def shown(self) -> tuple[Exercise, ...]:
        return self._model.shown

    @property
    def current(self) -> Exercise | None:
        found: Exercise | None = self.currentIndex().data(_EXERCISE)
        return found

    def offer(self, exercises: Sequence[Exercise]) -> None:
        self._model.set_exercises(exercises)
        self.setCurrentIndex(self._model.index(0))

    def step(self, by: int) -> None:
        row = max(0, min(len(self.shown) - 1, self.currentIndex().row() + by))
        self.setCurrentIndex(self._model.index(row))


class _Candidates(QAbstractListModel):
    """The exercises found; `set_exercises` is the only way they change."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.shown: tuple[Exercise, ...] = ()

    def set_exercises(self, exercises: Sequence[Exercise]) -> None:
        self.beginResetModel()
        self.shown = tuple(exercises)
        self.endResetModel()

    def rowCount(self, parent: _Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self.shown)

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid() or index.row() >= len(self.shown):
            return None
        exercise = self.shown[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return exercise.name
        if role == _EXERCISE:
            return exercise
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"{exercise.name}, {exercise_kind(exercise)}"
        return None


class _CandidateDelegate(QStyledItemDelegate):
    """Draws a name at the left, what the exercise is at the right."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme = theme

    def sizeHint(self, option: QStyleOptionViewItem, index: _Index) -> QSize:
        return QSize(0, QFontMetrics(self._theme.font()).height() + self._theme.px(10))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: _Index) -> None:
        exercise: Exercise | None = index.data(_EXERCISE)
        if exercise is None:
            return
        rect: QRect = option.rect
        state: QStyle.StateFlag = option.state
        chosen = bool(state & QStyle.StateFlag.State_Selected)
        painter.save()
        if chosen:
            painter.fillRect(rect, self._theme.colour("accent_soft"))
        inside = rect.adjusted(self._theme.px(8), 0, -self._theme.px(8), 0)
        middle = Qt.AlignmentFlag.AlignVCenter
        painter.setFont(self._theme.font(bold=chosen))
        painter.setPen(self._theme.colour("text"))
        painter.drawText(inside, middle | Qt.AlignmentFlag.AlignLeft, exercise.name)
        painter.setFont(self._theme.font(TextSize.SMALL))
        painter.setPen(self._theme.colour("text" if chosen else "muted"))
        painter.drawText(inside, middle | Qt.AlignmentFlag.AlignRight, exercise_kind(exercise))
        painter.restore()
