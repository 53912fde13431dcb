"""Pages on the screen become a PDF or go to a printer; each asks where, and says how it went."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QWidget

from views.file_dialogs import ask_target, file_name
from views.printer_dialog import ask_printer, name_of, print_chosen
from views.record import MessageKind, Record
from views.sentences import worded
from views.sheet_parts import Sheet
from views.sheet_texts import SheetError
from views.sheets import write_sheet

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrinter

Now = Callable[[], Sheet | None]


class PaperOutput(QObject):
    """Saves and prints the pages that ``now`` gives; None: there are none."""

    def __init__(self, owner: QWidget, record: Record, now: Now) -> None:
        super().__init__(owner)
        self._owner, self._record, self._now = owner, record, now

    def ask_where(self, name: str) -> None:
        """Ask for a file, called ``name`` at first, and save the pages there."""
        if self._now() is None:
            return
        proposed = file_name(name, "report")
        ask_target(self._owner, self.tr("Save the report"), proposed, "pdf", self.save_pdf)

    def save_pdf(self, path: Path) -> None:
        """Save the pages, and say so."""
        sheet = self._now()
        if sheet is None:
            return
        try:
            write_sheet(sheet, path)
        except SheetError as error:
            self._record.say(worded(error), MessageKind.ERROR)
        else:
            text = self.tr("Report saved to {path}")
            self._record.say(text.format(path=path), MessageKind.DONE)

    def ask_printer(self) -> None:
        """Ask for a printer, and print the pages."""
        sheet = self._now()
        if sheet is not None:
            ask_printer(self._owner, sheet, self.print_on)

    def print_on(self, printer: QPrinter) -> None:
        """Print the pages, or those chosen, and say how it went."""
        sheet = self._now()
        if sheet is None:
            return
        if print_chosen(sheet, printer):
            text = self.tr("Report sent to {printer}")
            self._record.say(text.format(printer=name_of(printer)), MessageKind.DONE)
        else:
            self._record.say(self.tr("The printer did not take the report."), MessageKind.ERROR)
