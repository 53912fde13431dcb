"""A layout that goes on in the next line where the width ends, as words in a text do."""

from __future__ import annotations

from PySide6.QtCore import QMargins, QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import (
    QBoxLayout,
    QLayout,
    QLayoutItem,
    QSizePolicy,
    QStyle,
    QWidget,
)

Line = list[tuple[QLayoutItem, int]]

_NARROW_FORM = 400  # pixels


class FlowLayout(QLayout):
    """Items from left to right in lines, mirrored where words are read from the right. Those that
    expand share what is left of their line; a line whose last item is aligned to the right ends at
    the right. ``in_line``: one line is asked for.
    """

    def __init__(self, parent: QWidget | None = None, *, in_line: bool = False) -> None:
        super().__init__(parent)
        self._items: list[QLayoutItem] = []
        self._in_line = in_line
        self.line_gap = 0

    def addItem(self, item: QLayoutItem) -> None:
        self._items.append(item)

    def count(self) -> int:
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        margins = self.contentsMargins()
        return self._place(QRect(0, 0, width, 0).marginsRemoved(margins), move=False) + _high(
            margins
        )

    def sizeHint(self) -> QSize:
        least = self.minimumSize()
        if not self._in_line:
            return least
        shown = [item.sizeHint().width() for item in self._items if not item.isEmpty()]
        margins = self.contentsMargins()
        gaps = self.spacing() * max(len(shown) - 1, 0)
        return QSize(sum(shown) + gaps + margins.left() + margins.right(), least.height())

    def minimumSize(self) -> QSize:
        shown = [item for item in self._items if not item.isEmpty()]
        widest = max((item.minimumSize().width() for item in shown), default=0)
        highest = max((item.sizeHint().height() for item in shown), default=0)
        margins = self.contentsMargins()
        wide = margins.left() + margins.right()
        return QSize(widest + wide, highest + _high(margins))

    def setGeometry(self, rect: QRect) -> None:
        super().setGeometry(rect)
        self._place(rect.marginsRemoved(self.contentsMargins()), move=True)

    def _direction(self) -> Qt.LayoutDirection:
        parent = self.parentWidget()
        return parent.layoutDirection() if parent else Qt.LayoutDirection.LeftToRight

    def _place(self, room: QRect, *, move: bool) -> int:
        """Place the items in ``room``; the height that they take."""
        top = room.top()
        for line in self._lines(room.width()):
            high = max(_tall(item, wide) for item, wide in line)
            left = room.left() + _shift(line, room.width(), self.spacing())
            for item, wide in line:
                if move:
                    size = QSize(wide, _tall(item, wide))
                    there = QRect(QPoint(left, top + self._lowered(high - size.height())), size)
                    item.setGeometry(QStyle.visualRect(self._direction(), room, there))
                left += wide + self.spacing()
            top += high + self.line_gap
        return max(0, top - self.line_gap - room.top())

    def _lines(self, width: int) -> list[Line]:
        lines: list[Line] = []
        used = width + 1
        for item in self._items:
            if item.isEmpty():
                continue
            wide = self._asked(item)
            if used + self.spacing() + wide > width:
                lines.append([])
                used = -self.spacing()
            lines[-1].append((item, wide))
            used += self.spacing() + wide
        return [self._stretched(line, width) for line in lines]

    def _stretched(self, line: Line, width: int) -> Line:
        spare = width - sum(wide for _, wide in line) - self.spacing() * (len(line) - 1)
        growing = [item for item, _ in line if _grows(item)]
        if not growing or spare <= 0:
            return [(item, min(wide, width)) for item, wide in line]
        share = spare // len(growing)
        return [(item, wide + (share if item in growing else 0)) for item, wide in line]

    def _asked(self, item: QLayoutItem) -> int:
        """An item that grows asks for its least width, any other for the one it likes."""
        return item.minimumSize().width() if _grows(item) else item.sizeHint().width()

    def _lowered(self, spare: int) -> int:
        """How far below the top of its line an item stands that leaves ``spare`` of its height."""
        return spare // 2


class FieldFlow(FlowLayout):
    """Fields with captions, whose feet are in a line; ``centred``: their middles. ``across`` and
    ``down`` pixels are between them. Those that expand ask for the width that they like.
    """

    def __init__(
        self, across: int, down: int, parent: QWidget | None = None, *, centred: bool = False
    ) -> None:
        super().__init__(parent)
        self._centred = centred
        self.setSpacing(across)
        self.line_gap = down
        self.setContentsMargins(0, 0, 0, 0)

    def _asked(self, item: QLayoutItem) -> int:
        return item.sizeHint().width()

    def _lowered(self, spare: int) -> int:
        return super()._lowered(spare) if self._centred else spare

    def expandingDirections(self) -> Qt.Orientation:
        return Qt.Orientation.Horizontal | Qt.Orientation.Vertical

    def minimumSize(self) -> QSize:
        """Room for what it takes where a form is narrow, so that no line is cut off there."""
        wide = super().minimumSize().width()
        return QSize(wide, self.heightForWidth(max(wide, _NARROW_FORM)))


def together(row: QBoxLayout, *, growing: bool = False) -> QWidget:
    """What stands in ``row`` as one item of a line; ``growing``: it takes the room left there."""
    row.setContentsMargins(0, 0, 0, 0)
    holder = QWidget()
    holder.setLayout(row)
    across = QSizePolicy.Policy.Expanding if growing else QSizePolicy.Policy.Maximum
    holder.setSizePolicy(across, QSizePolicy.Policy.Fixed)
    return holder


def _shift(line: Line, width: int, spacing: int) -> int:
    """How far a line begins from the left: where its last item belongs to the right, so that it
    ends there.
    """
    if not line[-1][0].alignment() & Qt.AlignmentFlag.AlignRight:
        return 0
    return max(0, width - sum(wide for _, wide in line) - spacing * (len(line) - 1))


def _tall(item: QLayoutItem, wide: int) -> int:
    """How high an item is, also where it got less than the width it likes."""
    liked = item.sizeHint()
    if wide < liked.width() and item.hasHeightForWidth() and not _grows(item):
        return item.heightForWidth(wide)
    return liked.height()


def _grows(item: QLayoutItem) -> bool:
    return bool(item.expandingDirections() & Qt.Orientation.Horizontal)


def _high(margins: QMargins) -> int:
    return margins.top() + margins.bottom()
