"""The keys of the program area, for the keyboard map."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QKeySequence

from views.program_head import GIVE_KEY, REPLACE_KEY, SHELF_KEY, TEST_KEY
from views.program_page import DAY_KEY
from views.program_shelf import DRAFT_KEY, NEW_KEY
from views.weeks_page import PRINT_KEY, WEEKS_KEY

translate = QCoreApplication.translate


def program_keys() -> tuple[tuple[str, str], ...]:
    """What can be done, and its key as this system writes it."""
    keys = (
        (translate("ProgramKeys", "New program"), NEW_KEY),
        (translate("ProgramKeys", "Draft a program"), DRAFT_KEY),
        (translate("ProgramKeys", "All programs"), SHELF_KEY),
        (translate("ProgramKeys", "Give it to the trainee"), GIVE_KEY),
        (translate("ProgramKeys", "Weeks ahead"), WEEKS_KEY),
        (translate("ProgramKeys", "Put a test week first, or test again"), TEST_KEY),
        (translate("ProgramKeys", "Add a training day"), DAY_KEY),
        (translate("ProgramKeys", "Replace an exercise everywhere"), REPLACE_KEY),
        (translate("ProgramKeys", "Edit a slot, a day or a phase"), "Return"),
        (translate("ProgramKeys", "Exchange the exercise"), "F2"),
        (translate("ProgramKeys", "Earlier or later"), "Alt+Up"),
        (translate("ProgramKeys", "Duplicate"), "Ctrl+D"),
        (translate("ProgramKeys", "Remove"), "Delete"),
        (translate("ProgramKeys", "Mark a slot, or all of a day"), "Space"),
        (translate("ProgramKeys", "Mark this and the next"), "Shift+Down"),
        (translate("ProgramKeys", "Mark everything"), "Ctrl+A"),
        (translate("ProgramKeys", "Copy what is marked, a slot, a day or a phase"), "Ctrl+C"),
        (translate("ProgramKeys", "Paste, also into another program"), "Ctrl+V"),
        (translate("ProgramKeys", "Print or save as PDF"), PRINT_KEY),
    )
    native = QKeySequence.SequenceFormat.NativeText
    return tuple((does, QKeySequence(key).toString(native)) for does, key in keys)
