"""The line that a screen is about, as its title: a list of the trainee's lines behind it."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QSize, Qt, Signal
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import (
    QComboBox,
    QSizePolicy,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from desktop.planning.trained_lines import TrainedLine
from views import words
from views.theme import Theme

_LAST = Qt.ItemDataRole.UserRole + 1


class LineChoice(QComboBox):
    """Lines in the order given; ``chosen(line id)`` when the coach takes another one."""

    chosen = Signal(int)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._offered: list[tuple[str, int | None, str]] = []
        self.setProperty("kind", "title")
        self.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)
        self.currentTextChanged.connect(lambda _text: self.updateGeometry())
        self.setAccessibleName(self.tr("Line"))
        self.setItemDelegate(_WithLast(theme, self))
        self.activated.connect(lambda _index: self._tell())

    @property
    def line_id(self) -> int | None:
        """The line shown."""
        found = self.currentData()
        return found if isinstance(found, int) else None

    def show_lines(
        self,
        lines: Sequence[TrainedLine],
        line_id: int | None,
        name: Callable[[int | None], str],
        today: date,
    ) -> None:
        """Offer ``lines``, ``line_id`` chosen; nobody is told."""
        offered = [
            (
                name(one.line.id),
                one.line.id,
                words.short_day(one.last, today) if one.last else self.tr("not yet"),
            )
            for one in lines
        ]
        if offered == self._offered:
            self.setCurrentIndex(max(self.findData(line_id), 0))
            return
        self._offered = offered
        self.clear()
        for place, (word, each, last) in enumerate(offered):
            self.addItem(word, each)
            self.setItemData(place, last, _LAST)
        self.setCurrentIndex(max(self.findData(line_id), 0))
        self.view().setMinimumWidth(self.view().sizeHintForColumn(0) + self._theme.grid(4))

    def step(self, by: int) -> None:
        """Go to the next line of the list, or back."""
        place = self.currentIndex() + by
        if 0 <= place < self.count():
            self.setCurrentIndex(place)
            self._tell()

    def sizeHint(self) -> QSize:
        """As wide as the line shown, not as the longest of the list."""
        wide = self.fontMetrics().horizontalAdvance(self.currentText())
        return QSize(wide + self._theme.grid(4), super().sizeHint().height())

    def minimumSizeHint(self) -> QSize:
        return QSize(self._theme.grid(12), super().minimumSizeHint().height())

    def _tell(self) -> None:
        if self.line_id is not None:
            self.chosen.emit(self.line_id)


class _WithLast(QStyledItemDelegate):
    """Each line of the list with the day that it was last trained on, in the size of a list."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme = theme

    def initStyleOption(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        super().initStyleOption(option, index)
        option.font = self._theme.font()
        option.fontMetrics = QFontMetrics(option.font)
        option.text = f"{option.text}{words.DOT}{index.data(_LAST)}"
