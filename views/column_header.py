"""The heading of a table of somebody else's: names as they stand there, a chooser under each."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QEvent, QObject, QRect, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QResizeEvent
from PySide6.QtWidgets import QHeaderView, QTableView

from desktop.training.table_mapping import Role
from views.captioned import ChoiceBox
from views.import_texts import role_word
from views.theme import Theme


class ColumnHeader(QHeaderView):
    """Sections with a chooser of roles from section ``first`` on. ``role_chosen(place, role)``,
    places counted from the first column of the file.
    """

    role_chosen = Signal(int, object)

    def __init__(self, theme: Theme, table: QTableView, first: int) -> None:
        super().__init__(Qt.Orientation.Horizontal, table)
        self._theme, self._table, self._first = theme, table, first
        self.choosers: list[ChoiceBox] = []
        self.setSectionsClickable(False)
        self.setHighlightSections(False)
        self.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.sectionResized.connect(lambda _section, _before, _after: self.place())
        self.geometriesChanged.connect(self.place)
        table.horizontalScrollBar().valueChanged.connect(lambda _value: self.place())

    def offer(self, names: Sequence[str], roles: Sequence[Role]) -> None:
        """Show these roles; without any, there is nothing to choose."""
        while len(self.choosers) > len(roles):
            chooser = self.choosers.pop()
            chooser.hide()
            chooser.deleteLater()
        while len(self.choosers) < len(roles):
            self._add(len(self.choosers))
        choices: list[tuple[Any, str]] = [(role, role_word(role)) for role in Role]
        for name, role, chooser in zip(names, roles, self.choosers, strict=False):
            chooser.setAccessibleName(self.tr("What {column} holds").format(column=name))
            chooser.setProperty("tone", "muted" if role is Role.NOTHING else "")
            chooser.offer(choices, role)
        # The table looks at the height that its heading wants when a section is resized.
        self._table.updateGeometries()
        self.place()

    def place(self) -> None:
        """Put every chooser under the name of its column."""
        high = self._chooser_height()
        top = self.height() - high - self._theme.px(3)
        for place, chooser in enumerate(self.choosers):
            section = place + self._first
            left = self.sectionViewportPosition(section)
            wide = self.sectionSize(section)
            chooser.setFixedWidth(max(0, wide - 4))  # however long the words of its list are
            chooser.setGeometry(QRect(left + 2, top, max(0, wide - 4), high))
            chooser.setVisible(wide > 0)

    def width_for(self, place: int) -> int:
        """How wide the chooser of a column would like to be, for the word that it shows."""
        if place >= len(self.choosers):
            return 0
        word = self.choosers[place].currentText()
        return self.choosers[place].fontMetrics().horizontalAdvance(word) + self._theme.px(40)

    def _add(self, place: int) -> None:
        chooser = ChoiceBox("", self.viewport())
        chooser.setSizeAdjustPolicy(ChoiceBox.SizeAdjustPolicy.AdjustToContents)
        chooser.picked.connect(lambda: self.role_chosen.emit(place, chooser.choice))
        chooser.installEventFilter(self)
        self.choosers.append(chooser)

    def _chooser_height(self) -> int:
        return self.fontMetrics().height() + self._theme.px(12)

    def _name_height(self) -> int:
        return self.fontMetrics().height() + self._theme.px(8)

    def sizeHint(self) -> QSize:
        high = self._name_height()
        if self.choosers:
            high += self._chooser_height() + self._theme.px(3)
        return QSize(super().sizeHint().width(), high)

    def paintSection(self, painter: QPainter, rect: QRect, section: int) -> None:
        painter.fillRect(rect, self._theme.colour("surface"))
        upper = QRect(rect.left(), rect.top(), rect.width(), self._name_height())
        gap = self._theme.px(6)
        painter.setFont(self.font())
        painter.setPen(self._theme.colour("muted"))
        room = upper.adjusted(gap, 0, -gap, 0)
        text = str(self.model().headerData(section, Qt.Orientation.Horizontal) or "")
        shown = self.fontMetrics().elidedText(text, Qt.TextElideMode.ElideRight, room.width())
        middle = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        painter.drawText(room, middle, shown)
        painter.setPen(self._theme.colour("line"))
        painter.drawLine(rect.bottomLeft(), rect.bottomRight())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.place()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Letters choose a word in a chooser; they are no keys of the table then."""
        override = event.type() == QEvent.Type.ShortcutOverride
        if override and isinstance(event, QKeyEvent) and event.text().isalpha():
            event.accept()
            return True
        if event.type() == QEvent.Type.FocusIn and watched in self.choosers:
            self._show(self.choosers.index(watched))
        return super().eventFilter(watched, event)

    def _show(self, place: int) -> None:
        """Scroll sideways until the column can be seen."""
        section = place + self._first
        left, wide = self.sectionPosition(section), self.sectionSize(section)
        bar = self._table.horizontalScrollBar()
        if left < bar.value():
            bar.setValue(left)
        elif left + wide > bar.value() + self.viewport().width():
            bar.setValue(left + wide - self.viewport().width())
