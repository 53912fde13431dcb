"""The rows above a chart: the line, what can be done with it, what is shown and over which span."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QWidget

from views.flow_layout import FlowLayout, together
from views.theme import Theme


class ProgressHead(QWidget):
    """The line with its ``detail``, and ``actions`` beside it; below it where there is no room, in
    as many rows as they need.
    """

    def __init__(
        self, theme: Theme, line: QWidget, detail: QWidget, actions: Sequence[QWidget]
    ) -> None:
        super().__init__()
        self._theme, self._line, self._detail = theme, line, detail
        self._actions = tuple(actions)
        title = QHBoxLayout()
        title.addWidget(line)
        title.addWidget(detail, 1)
        self._acts = QWidget()
        flow = FlowLayout(self._acts, in_line=True)
        flow.setContentsMargins(0, 0, 0, 0)
        for action in actions:
            flow.addWidget(action)
        for row in (title, flow):
            row.setSpacing(theme.grid(2))
        self._row = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.addLayout(title, 1)
        self._row.addWidget(self._acts)
        theme.changed.connect(self.arrange)

    def arrange(self) -> None:
        """Actions beside the line where there is room, else below."""
        spaced, ways = self._theme.grid(2), QBoxLayout.Direction
        shown = [action for action in self._actions if not action.isHidden()]
        needed = sum(action.sizeHint().width() + spaced for action in shown) - spaced
        words = self._line.sizeHint().width() + self._detail.sizeHint().width()
        below = words + needed + self._theme.grid(4) > self.width()
        if self._row.spacing() != (0 if below else spaced):  # each setting lays out anew
            self._row.setDirection(ways.TopToBottom if below else ways.LeftToRight)
            self._row.setSpacing(0 if below else spaced)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.arrange()

    def event(self, event: QEvent) -> bool:
        handled = super().event(event)
        if event.type() == QEvent.Type.LayoutRequest:  # words or their size are others now
            self.arrange()
        return handled


class ChoicesAbove(QWidget):
    """What is shown, with ``steps`` of a load where it needs them, and the span at the right; below
    where there is no room.
    """

    def __init__(self, theme: Theme, measures: QWidget, steps: QWidget, spans: QWidget) -> None:
        super().__init__()
        between = QHBoxLayout()
        between.addWidget(steps)
        between.addStretch(1)
        flow = FlowLayout(self)
        flow.setContentsMargins(0, 0, 0, 0)
        flow.setSpacing(theme.px(2))
        for part in (measures, together(between, growing=True), spans):
            flow.addWidget(part)
