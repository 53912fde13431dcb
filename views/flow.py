"""A layout that sets its parts in a line and goes on in the next one where there is no room."""

from __future__ import annotations

from PySide6.QtCore import QMargins, QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QStyle, QWidget


class FlowLayout(QLayout):
    """Parts from left to right, line by line; ``across`` and ``down`` pixels between them.

    ``centred``: parts of different heights share a middle, else a foot.
    """

    def __init__(
        self, across: int, down: int, parent: QWidget | None = None, *, centred: bool = False
    ) -> None:
        super().__init__(parent)
        self._centred = centred
        self._items: list[QLayoutItem] = []
        self._across, self._down = across, down
        self.setContentsMargins(0, 0, 0, 0)

    def _laid_out(self, rect: QRect, *, place: bool) -> int:
        """The height that is needed in the width of ``rect``; ``place``: set the parts there."""
        margins: QMargins = self.contentsMargins()
        inner = rect.marginsRemoved(margins)
        lines: list[list[QLayoutItem]] = [[]]
        used = 0
        for item in self._items:
            if item.isEmpty():
                continue
            width = item.sizeHint().width()
            if lines[-1] and used + width > inner.width():
                lines.append([])
                used = 0
            lines[-1].append(item)
            used += width + self._across
        y = inner.y()
        for line in lines:
            tall = max((item.sizeHint().height() for item in line), default=0)
            if place:
                self._place_line(line, inner, y, tall)
            y += tall + self._down
        return y - self._down - rect.y() + margins.bottom()

    def _place_line(self, line: list[QLayoutItem], inner: QRect, y: int, tall: int) -> None:
        """Set one line; what may grow takes the room that is left."""
        wide = sum(item.sizeHint().width() for item in line) + self._across * (len(line) - 1)
        growing = [item for item in line if item.expandingDirections() & Qt.Orientation.Horizontal]
        spare = max(0, inner.width() - wide) // max(1, len(growing))
        x = inner.x()
        for item in line:
            hint = item.sizeHint()
            width = min(hint.width() + (spare if item in growing else 0), inner.width())
            spare_height = tall - hint.height()
            top = y + (spare_height // 2 if self._centred else spare_height)
            there = QRect(QPoint(x, top), QSize(width, hint.height()))
            parent = self.parentWidget()
            if parent is not None:  # mirrored where words are read from the right
                there = QStyle.visualRect(parent.layoutDirection(), inner, there)
            item.setGeometry(there)
            x += width + self._across

    def addItem(self, item: QLayoutItem) -> None:
        self._items.append(item)

    def count(self) -> int:
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        return self._laid_out(QRect(0, 0, width, 0), place=False)

    def setGeometry(self, rect: QRect) -> None:
        super().setGeometry(rect)
        self._laid_out(rect, place=True)

    def sizeHint(self) -> QSize:
        return self.minimumSize()

    def minimumSize(self) -> QSize:
        widest = max((item.minimumSize().width() for item in self._items), default=0)
        margins = self.contentsMargins()
        side = margins.left() + margins.right()
        return QSize(widest + side, self.heightForWidth(max(widest + side, 400)))
