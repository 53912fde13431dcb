"""The table of work areas: what the window offers in its middle, in the order of their keys."""

from __future__ import annotations

from datetime import date
from importlib import import_module
from typing import Final, NamedTuple, cast

from PySide6.QtCore import QCoreApplication

from views.record import Record
from views.theme import Theme
from views.work_area import WorkArea


class WorkAreaEntry(NamedTuple):
    """One work area: its key in settings and where it is made. The module is imported when the
    area is first shown.
    """

    key: str
    module: str
    maker: str
    needs_trainee: bool = True

    def make(self, record: Record, today: date, theme: Theme) -> WorkArea:
        """Build the area."""
        maker = getattr(import_module(self.module), self.maker)
        return cast(WorkArea, maker(record, today, theme))


translate = QCoreApplication.translate

DESK: Final = "desk"
PROGRAM: Final = "program"
SESSION: Final = "session"
PAST: Final = "past"
PROGRESS: Final = "progress"
LOAD: Final = "load"
SHEET: Final = "sheet"
TRAINEE: Final = "trainee"
IMPORT: Final = "import"
NOTES: Final = "notes"
REPORT: Final = "report"

DAYS_AWAY: Final = "days away"
GOALS: Final = "goals"
"""Parts of the trainee's screen that may be asked for as areas are."""

WEEK: Final = "week"
DELOAD: Final = "deload"
CAUTIONS: Final = "cautions"
"""Parts of week and load that may be asked for as areas are."""

CAUTION: Final = "caution"
"""Where the trainee's most serious caution is dealt with; may be asked for as areas are."""

WORK_AREAS: Final = (
    WorkAreaEntry(DESK, "views.desk_overview", "DeskOverview", needs_trainee=False),
    WorkAreaEntry(PROGRAM, "views.program_editor", "ProgramEditor", needs_trainee=False),
    WorkAreaEntry(SESSION, "views.session_form", "SessionForm"),
    WorkAreaEntry(PROGRESS, "views.progress_area", "ProgressArea"),
    WorkAreaEntry(SHEET, "views.sheet_area", "SheetArea"),
    WorkAreaEntry(LOAD, "views.load_area", "LoadArea"),
    WorkAreaEntry(PAST, "views.past_area", "PastArea"),
    WorkAreaEntry(TRAINEE, "views.trainee_form", "TraineeForm", needs_trainee=False),
    WorkAreaEntry(NOTES, "views.notes_area", "NotesArea"),
    WorkAreaEntry(REPORT, "views.report_area", "ReportArea", needs_trainee=False),
    WorkAreaEntry(IMPORT, "views.import_area", "ImportArea", needs_trainee=False),
)

UNNUMBERED: Final = frozenset({TRAINEE, IMPORT})
"""Areas that stand in another menu than View."""


def place_word(key: str) -> str:
    """The word for a work area, or for a part of week and load, without a mnemonic."""
    parts = {
        DELOAD: translate("LoadArea", "Deload"),
        CAUTIONS: translate("LoadArea", "Cautions"),
    }
    return parts.get(key) or area_word(LOAD if key == WEEK else key).replace("&", "")


def area_word(key: str) -> str:
    """The word for a work area in the View menu, with its mnemonic."""
    return {
        DESK: translate("WorkAreas", "&Desk"),
        PROGRAM: translate("WorkAreas", "&Program"),
        SESSION: translate("WorkAreas", "&Session"),
        PROGRESS: translate("WorkAreas", "P&rogress"),
        SHEET: translate("WorkAreas", "S&heet"),
        LOAD: translate("WorkAreas", "&Week and load"),
        PAST: translate("WorkAreas", "P&ast"),
        TRAINEE: translate("WorkAreas", "&Trainee"),
        NOTES: translate("WorkAreas", "&Notes"),
        REPORT: translate("WorkAreas", "Rep&orts"),
        IMPORT: translate("WorkAreas", "&Import"),
    }[key]
