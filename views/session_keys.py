"""The keys of the session form, for the keyboard map."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QKeySequence

translate = QCoreApplication.translate


def session_keys() -> tuple[tuple[str, str], ...]:
    """What can be done, and its key as this system writes it."""
    keys = (
        (translate("SessionKeys", "Next cell"), "Return"),
        (translate("SessionKeys", "Next row"), "Down"),
        (translate("SessionKeys", "Next exercise"), "PgDown"),
        (translate("SessionKeys", "Set as asked"), "Space"),
        (translate("SessionKeys", "Exercise as asked"), "F8"),
        (translate("SessionKeys", "All as asked"), "F9"),
        (translate("SessionKeys", "Clear a cell"), "Delete"),
        (translate("SessionKeys", "Extra set"), "Ctrl+N"),
        (translate("SessionKeys", "Drop a set"), "Ctrl+Delete"),
        (translate("SessionKeys", "Load, where none is asked"), "F2"),
        (translate("SessionKeys", "Add an exercise"), "F3"),
        (translate("SessionKeys", "Done instead"), "Shift+F3"),
        (translate("SessionKeys", "Other variation"), "F4"),
        (translate("SessionKeys", "Warm-up set"), "F5"),
        (translate("SessionKeys", "Note"), "F6"),
        (translate("SessionKeys", "Body mass, wellness, other activity, red flag"), "F7"),
        (translate("SessionKeys", "Take typing back"), "Ctrl+Z"),
        (translate("SessionKeys", "Save; then next trainee"), "Ctrl+Return"),
        (translate("SessionKeys", "Go to a date"), "Ctrl+D"),
        (translate("SessionKeys", "Next day"), "Alt+PgDown"),
        (translate("SessionKeys", "Next training day"), "Ctrl+PgDown"),
        (translate("SessionKeys", "Next session on record"), "Ctrl+Shift+PgDown"),
        (translate("SessionKeys", "Today"), "Alt+Home"),
        (translate("SessionKeys", "Search the past"), "Ctrl+F"),
        (translate("SessionKeys", "One more session on this day"), "Ctrl+Shift+N"),
    )
    native = QKeySequence.SequenceFormat.NativeText
    return tuple((does, QKeySequence(key).toString(native)) for does, key in keys)
