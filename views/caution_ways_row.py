"""What can be done about a caution, and the sessions it rests on, as words in a row."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from desktop.planning.caution_ways import Way
from desktop.training.session import Session
from views import words
from views.blocks import WordButton
from views.flow_layout import FlowLayout
from views.theme import Theme


class CautionWaysRow(QWidget):
    """``taken(Way)`` when one is chosen, ``session_wanted(id)`` for a session. ``add`` puts another
    button behind them.
    """

    taken = Signal(object)
    session_wanted = Signal(int)

    def __init__(
        self,
        theme: Theme,
        today: date,
        ways: Sequence[tuple[Way, str]],
        sessions: Sequence[Session],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._flow = FlowLayout(self)
        self._flow.setSpacing(theme.px(16))
        self._flow.line_gap = theme.px(2)
        self._flow.setContentsMargins(0, 0, 0, 0)
        self.ways: list[WordButton] = []
        self.sessions: list[WordButton] = []
        for place, (way, text) in enumerate(ways):
            button = WordButton(text, strong=not place, flush=True)
            button.clicked.connect(lambda _on=False, way=way: self.taken.emit(way))
            self.ways.append(button)
        for session in sessions:
            text = self.tr("Session of {day}").format(day=words.short_day(session.day, today))
            link = WordButton(text, flush=True, tone="muted")
            link.clicked.connect(lambda _on=False, session=session: self._open(session))
            self.sessions.append(link)
        for each in (*self.ways, *self.sessions):
            self._flow.addWidget(each)

    @property
    def buttons(self) -> list[WordButton]:
        """The ways, then the sessions."""
        return [*self.ways, *self.sessions]

    def add(self, button: WordButton) -> None:
        """Put ``button`` at the end."""
        self._flow.addWidget(button)

    def _open(self, session: Session) -> None:
        if session.id is not None:
            self.session_wanted.emit(session.id)
