"""Printing a program: as a PDF, or on a printer."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.planning.program_weeks import ProgramWeeks
from views.file_dialogs import ask_target, file_name
from views.offered_actions import OfferedActions
from views.record import MessageKind, Record
from views.sentences import worded
from views.theme import Theme

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrinter


class ProgramPrinting(OfferedActions):
    """Asks how a program is to be printed. ``now`` gives its weeks as they stand."""

    def __init__(
        self, owner: QWidget, record: Record, theme: Theme, now: Callable[[], ProgramWeeks]
    ) -> None:
        super().__init__(owner)
        self._record, self._theme, self._now = record, theme, now
        self.add(self.tr("Save as PDF…"), self.ask_where)
        self.add(self.tr("Print…"), self.ask_printer)

    def ask_where(self) -> None:
        """Ask where, and save a PDF."""
        name = file_name(self._now().program.name, "program")
        ask_target(self.owner, self.tr("Save the program"), name, "pdf", self.save)

    def save(self, path: Path) -> None:
        """Save a PDF and say so, or say why not."""
        from views.sheets import SheetError, write_program_pdf

        try:
            write_program_pdf(self._now(), path, self._theme.paper)
        except SheetError as error:
            self._record.say(worded(error), MessageKind.ERROR)
        else:
            text = self.tr("Program saved to {path}")
            self._record.say(text.format(path=path), MessageKind.DONE)

    def ask_printer(self) -> None:
        """Ask for a printer, and print."""
        from views.printer_dialog import ask_printer
        from views.program_print import make_program_sheet

        ask_printer(self.owner, make_program_sheet(self._now(), self._theme.paper), self.print_on)

    def print_on(self, printer: QPrinter) -> None:
        """Print the program, or the pages chosen, and say how it went."""
        from views.printer_dialog import name_of, print_chosen
        from views.program_print import make_program_sheet

        if print_chosen(make_program_sheet(self._now(), self._theme.paper), printer):
            text = self.tr("Program sent to {printer}")
            self._record.say(text.format(printer=name_of(printer)), MessageKind.DONE)
        else:
            self._record.say(self.tr("The printer did not take the program."), MessageKind.ERROR)
