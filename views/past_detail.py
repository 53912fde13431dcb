"""One session of the past in full: what was done, exercise by exercise, and its change log."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from PySide6.QtWidgets import QVBoxLayout, QWidget

from desktop.planning.past import LoggedChange
from desktop.training.exercises import Exercise
from desktop.training.quantities import Unit
from desktop.training.session import LineDone, Session
from views import words
from views.blocks import Block, Label, Page, Size, Tone, rule
from views.past_names import PastNames
from views.past_texts import logged, set_done
from views.theme import Theme


class PastDetail(Page):
    """Shows a session; nothing is typed here."""

    def __init__(self, theme: Theme, today: date, parent: QWidget | None = None) -> None:
        super().__init__(theme, parent)
        self._today = today
        self.block = Block(theme)
        self.body.addWidget(self.block)
        self.body.addStretch(1)
        self.said: tuple[str, ...] = ()
        self._groups: list[QVBoxLayout] = []

    def show_session(
        self,
        session: Session | None,
        names: PastNames,
        log: Sequence[LoggedChange],
    ) -> None:
        """Show another session (None: none)."""
        self._clear()
        self.block.setVisible(session is not None)
        self.said = ()
        if session is None:
            return
        self._say(words.long_day(session.day), "heading")
        self._say(_about(session), "small", "muted")
        for part in session.lines:
            exercise, line = names.exercises.get(part.exercise), names.lines.get(part.line_id)
            if exercise is not None and line is not None:
                self._say_together(
                    (names.of_line(line), "body", "accent"),
                    (_sets(part, exercise, names.unit), "body", ""),
                    (part.note, "small", "muted"),
                )
        self._say(session.note, "small")
        self.block.body.addWidget(rule())
        for change in log:
            self._say(logged(change, names.exercises, names.unit, self._today), "small", "muted")
        self.verticalScrollBar().setValue(0)

    def _clear(self) -> None:
        for group in (*self._groups, self.block.body):
            while (item := group.takeAt(0)) is not None:
                if (widget := item.widget()) is not None:
                    widget.hide()
                    widget.deleteLater()
        self._groups = []

    def _space(self) -> None:
        """In line with the table beside it."""
        super()._space()
        bar = self.verticalScrollBar()
        self.body.setContentsMargins(0, 0, self._theme.grid() if bar.maximum() > 0 else 0, 0)

    def _say(self, text: str, size: Size = "body", tone: Tone = "") -> None:
        self._say_together((text, size, tone))

    def _say_together(self, *lines: tuple[str, Size, Tone]) -> None:
        """Lines that belong together stand closer."""
        group = QVBoxLayout()
        group.setSpacing(self._theme.px(1))
        for text, size, tone in lines:
            if text:
                self.said = (*self.said, text)
                group.addWidget(Label(text, size, tone, wrap=True))
        self._groups.append(group)
        self.block.body.addLayout(group)


def _about(session: Session) -> str:
    parts = [session.day_name]
    if session.effort is not None:
        parts.append(f"{words.number(session.effort, 1)}/10")
    if session.minutes is not None:
        parts.append(words.minutes(session.minutes))
    return words.DOT.join(part for part in parts if part)


def _sets(part: LineDone, exercise: Exercise, unit: Unit) -> str:
    """Every set on a line of its own is too long for a glance: one after the other."""
    said = (set_done(done, exercise, unit) for done in part.sets)
    return words.DOT.join(text.replace(" ", "\N{NO-BREAK SPACE}") for text in said)
