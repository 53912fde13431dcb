"""What a file brought in as one step that can be undone, although it was written in slices."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication

from db.changes import Changes
from db.steps import uncollected
from views.undo_commands import Desk, SaveCommand

Place = tuple[type, Any]


class TakeCommand(SaveCommand):
    """Something that is written already: pushed, it only tells. Undone, what was new goes and what
    stood ``before`` (by type and id) stands again; redone, it comes back as itself.
    """

    def __init__(
        self, text: str, desk: Desk, changes: Changes, before: Mapping[Place, Any]
    ) -> None:
        latest = {(type(each), each.id): each for each in changes.saved}
        super().__init__(text, desk, (), tuple(before.get(place) for place in latest))
        self.saved = tuple(latest.values())
        self._changes = changes
        self._told = False

    def redo(self) -> None:
        if self._told:
            super().redo()
            return
        self._told = self.done = True
        self._desk.lineage.wrote(self.saved)
        self._desk.changed(self._changes)

    def _run(self, work: Callable[[], Iterable[Changes]]) -> None:
        """A hundred thousand sets take a second or two, in which the cursor asks for patience."""
        QGuiApplication.setOverrideCursor(Qt.CursorShape.WaitCursor)
        try:
            with uncollected():
                super()._run(work)
        finally:
            QGuiApplication.restoreOverrideCursor()
