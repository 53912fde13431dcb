"""Copying slots, days and phases, and pasting them, also into another program or as text."""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

from PySide6.QtCore import QCoreApplication, QMimeData, QObject
from PySide6.QtGui import QGuiApplication

from desktop.planning.copied_parts import (
    CannotPaste,
    CopiedPart,
    PartKind,
    copied_day,
    copied_phase,
    copied_slots,
    part_from,
    pasted,
)
from desktop.training.program import Program
from desktop.training.program_edits import DayPlace, SlotPlace
from views import words
from views.program_page import PHASE, Place, ProgramPage
from views.sentences import worded

FORMAT: Final = "application/x-rungwise-part"

translate = QCoreApplication.translate

Save = Callable[[Program, str], bool]


class ProgramClipboard(QObject):
    """``save(program, text)`` writes what was pasted; ``say(text)`` tells what happened."""

    def __init__(self, page: ProgramPage, save: Save, say: Callable[[str], None]) -> None:
        super().__init__(page)
        self._page, self._save, self._say = page, save, say

    def copy(self, place: Place) -> None:
        """Copy what is marked; where nothing is, the slot, day or phase that has the focus."""
        program, at = self._page.scene.program, self._page.scene.at
        marked = sorted(self._page.marks)
        match place:
            case SlotPlace() | DayPlace() if marked:
                part = copied_slots(program, marked)
            case SlotPlace():
                part = copied_slots(program, [place])
            case DayPlace():
                part = copied_day(program, place)
            case _:
                part = copied_phase(program, at)
        data = QMimeData()
        data.setText(part.text)
        data.setData(FORMAT, part.kind.value.encode())
        QGuiApplication.clipboard().setMimeData(data)
        self._say(self.tr("{what} copied; Ctrl+V pastes it.").format(what=_what(part)))

    def paste(self, place: Place) -> None:
        """Paste behind what has the focus; what cannot be pasted is said."""
        data = QGuiApplication.clipboard().mimeData()
        text = data.text() if data.hasText() else ""
        if not text.strip():
            self._say(self.tr("Nothing was copied yet."))
            return
        kind = bytes(data.data(FORMAT).data()).decode() if data.hasFormat(FORMAT) else ""
        try:
            part = part_from(text, kind, self._page.scene.exercises)
        except CannotPaste as wrong:
            said = worded(wrong)
            self._say(f"{said[:1].upper()}{said[1:]}.")
            return
        at = self._page.scene.at if place == PHASE or isinstance(place, str) else place
        changed, there = pasted(self._page.scene.program, at, part)
        self._page.set_marks(())
        if self._save(changed, self.tr("Paste {what}").format(what=_what(part))):
            if isinstance(there, int):
                self._page.phase_chosen.emit(there)
                self._page.focus(PHASE)
            else:
                self._page.focus(there)


def _what(part: CopiedPart) -> str:
    """What was copied, in words."""
    phase = part.program.phases[0]
    match part.kind:
        case PartKind.SLOTS:
            count = len(part.slots)
            if count == 1:
                return translate("Clipboard", "1 slot")
            return translate("Clipboard", "{count} slots").format(count=words.number(count))
        case PartKind.DAY:
            return phase.days[0].name or translate("Clipboard", "a day")
        case PartKind.PHASE:
            return phase.name or translate("Clipboard", "a phase")
