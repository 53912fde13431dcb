"""The middle of the window: one work area at a time, each built when it is first shown."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QStackedWidget, QVBoxLayout, QWidget

from views.blocks import Label, Page
from views.record import Record
from views.theme import Theme
from views.work_area import WorkArea
from views.work_areas import SESSION, WorkAreaEntry

if TYPE_CHECKING:
    from desktop.planning.session_draft import SessionDraft
    from desktop.training.recovery import Caution


class AreaStack(QStackedWidget):
    """Shows work areas by key; ``area_built(key, area)`` before one is shown for the first time,
    ``area_shown(key)`` when another one stands there.
    """

    area_built = Signal(str, WorkArea)
    area_shown = Signal(str)
    trainee_wanted = Signal(int)
    area_wanted = Signal(str)
    everything_brought = Signal(Path)

    def __init__(
        self,
        entries: Sequence[WorkAreaEntry],
        record: Record,
        today: date,
        theme: Theme,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._entries = {entry.key: entry for entry in entries}
        self._built: dict[str, WorkArea] = {}
        self._record, self._today, self._theme = record, today, theme
        self._key = ""
        self._trainee_id: int | None = None

    @cached_property
    def _nobody(self) -> _Nobody:
        made = _Nobody(self._theme)
        self.addWidget(made)
        return made

    @property
    def key(self) -> str:
        """Which area is shown."""
        return self._key

    @property
    def area(self) -> WorkArea | None:
        """The area shown; None where it needs a trainee and none is chosen."""
        shown = self.currentWidget()
        return shown if isinstance(shown, WorkArea) else None

    def show_area(self, key: str) -> None:
        """Show another area, for the trainee chosen."""
        if key not in self._entries:
            raise KeyError(f"no work area {key!r}; there are {', '.join(self._entries)}")
        if key != self._key and self.area is not None:
            self.area.leave()
        self._key = key
        self._show()
        if self.area is not None:
            self.area.take_focus()
        self.area_shown.emit(key)

    def show_trainee(self, trainee_id: int | None) -> None:
        """Show another trainee in the area that stands there."""
        if trainee_id != self._trainee_id and self.area is not None:
            self.area.leave()
        self._trainee_id = trainee_id
        if self._key:
            self._show()

    def show_session(self, session_id: int) -> None:
        """Open one session of the trainee chosen, where sessions are typed."""
        self.show_area(SESSION)
        if self.area is not None:
            self.area.show_session(session_id)

    def resume(self, draft: SessionDraft) -> None:
        """Open a draft of the trainee chosen, where sessions are typed."""
        self.show_area(SESSION)
        if self.area is not None:
            self.area.resume(draft)

    def take_up(self, caution: Caution) -> None:
        """Let the area shown put the cursor on what can be done about a caution."""
        if self.area is not None:
            self.area.take_up(caution)

    def to_recall(self) -> dict[str, str]:
        """What is to be kept of how each area built was left."""
        return {key: area.to_recall() for key, area in self._built.items()}

    def leave(self) -> None:
        """The window closes: every area built keeps its draft."""
        for area in self._built.values():
            area.leave()

    def _show(self) -> None:
        entry = self._entries[self._key]
        if entry.needs_trainee and self._trainee_id is None:
            self.setCurrentWidget(self._nobody)
            return
        area = self._built.get(self._key)
        if area is None:
            area = self._built[self._key] = entry.make(self._record, self._today, self._theme)
            area.trainee_wanted.connect(self.trainee_wanted)
            area.area_wanted.connect(self.area_wanted)
            area.session_wanted.connect(self.show_session)
            area.draft_wanted.connect(self.resume)
            area.everything_brought.connect(self.everything_brought)
            self.addWidget(area)
            self.area_built.emit(self._key, area)
        self.setCurrentWidget(area)
        area.show_trainee(self._trainee_id)


class _Nobody(QWidget):
    """What stands where a trainee is needed and none is chosen."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        page = Page(theme)
        title = Label(self.tr("Choose a trainee"), "title")
        text = Label(
            self.tr("Pick one in the roster at the left, or type a name after Ctrl+L."),
            tone="muted",
            wrap=True,
        )
        for label in (title, text):
            page.body.addWidget(label, 0, Qt.AlignmentFlag.AlignTop)
        page.body.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(page)
