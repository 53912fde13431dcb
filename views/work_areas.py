"""The table of work areas: what the window offers in its middle, in the order of their keys."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from importlib import import_module
from typing import Final, cast

from PySide6.QtCore import QT_TRANSLATE_NOOP

from views.record import Record
from views.theme import Theme
from views.work_area import WorkArea


@dataclass(frozen=True, slots=True)
class WorkAreaEntry:
    """One work area: its key in settings, its word in the menu (with a mnemonic), where it is
    made. The module is imported when the area is first shown.
    """

    key: str
    word: str
    module: str
    maker: str
    needs_trainee: bool = True

    def make(self, record: Record, today: date, theme: Theme) -> WorkArea:
        """Build the area."""
        maker = getattr(import_module(self.module), self.maker)
        return cast(WorkArea, maker(record, today, theme))


DESK: Final = "desk"
PROGRAM: Final = "program"
SESSION: Final = "session"
PROGRESS: Final = "progress"
SHEET: Final = "sheet"

WORK_AREAS: Final = (
    WorkAreaEntry(
        DESK, QT_TRANSLATE_NOOP("WorkAreas", "&Desk"), "views.desk_overview", "DeskOverview", False
    ),
    WorkAreaEntry(
        PROGRAM, QT_TRANSLATE_NOOP("WorkAreas", "&Program"), "views.program_editor", "ProgramEditor"
    ),
    WorkAreaEntry(
        SESSION, QT_TRANSLATE_NOOP("WorkAreas", "&Session"), "views.session_form", "SessionForm"
    ),
    WorkAreaEntry(
        PROGRESS, QT_TRANSLATE_NOOP("WorkAreas", "P&rogress"), "views.progress_area", "ProgressArea"
    ),
    WorkAreaEntry(SHEET, QT_TRANSLATE_NOOP("WorkAreas", "S&heet"), "views.sheet_area", "SheetArea"),
)
