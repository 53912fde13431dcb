"""Printing a program: as a PDF, or on a printer."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QStandardPaths, Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QFileDialog, QMenu, QWidget

from desktop.planning.program_weeks import ProgramWeeks
from views.record import MessageKind, Record
from views.sentences import worded
from views.theme import Theme

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrinter


class ProgramPrinting(QObject):
    """Asks how a program is to be printed. ``now`` gives its weeks as they stand."""

    def __init__(
        self, owner: QWidget, record: Record, theme: Theme, now: Callable[[], ProgramWeeks]
    ) -> None:
        super().__init__(owner)
        self._owner, self._record, self._theme, self._now = owner, record, theme, now
        self.actions = [
            self._action(self.tr("Save as PDF…"), self.ask_where),
            self._action(self.tr("Print…"), self.ask_printer),
        ]

    def ask_how(self, below: QWidget) -> None:
        """Offer both ways in a menu under a button."""
        menu = QMenu(self._owner)
        menu.addActions(self.actions)
        menu.aboutToHide.connect(menu.deleteLater)
        menu.popup(below.mapToGlobal(below.rect().bottomLeft()))
        menu.setActiveAction(self.actions[0])

    def ask_where(self) -> None:
        """Ask where, and save a PDF."""
        folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
        dialog = QFileDialog(self._owner, self.tr("Save the program"), folder)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setDefaultSuffix("pdf")
        dialog.setNameFilter("PDF (*.pdf)")
        dialog.selectFile(f"{_file_name(self._now().program.name)}.pdf")
        dialog.fileSelected.connect(lambda path: self.save(Path(path)))
        dialog.finished.connect(dialog.deleteLater)
        dialog.open()

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
        from PySide6.QtPrintSupport import QPrintDialog, QPrinter

        from views.program_print import make_program_sheet
        from views.sheets import set_paper

        sheet = make_program_sheet(self._now(), self._theme.paper)
        printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        set_paper(printer, sheet.paper)
        printer.setDocName(sheet.title)
        dialog = QPrintDialog(printer, self._owner)
        dialog.setMinMax(1, len(sheet.pages))
        dialog.setWindowModality(Qt.WindowModality.WindowModal)
        dialog.accepted.connect(lambda: self.print_on(printer))
        dialog.finished.connect(dialog.deleteLater)
        dialog.show()

    def print_on(self, printer: QPrinter) -> None:
        """Print the program, or the pages chosen, and say how it went."""
        from views.program_print import make_program_sheet
        from views.sheets import print_sheet

        sheet = make_program_sheet(self._now(), self._theme.paper)
        if print_sheet(sheet, printer, max(1, printer.fromPage()), printer.toPage()):
            text = self.tr("Program sent to {printer}")
            name = printer.printerName() or printer.outputFileName()
            self._record.say(text.format(printer=name), MessageKind.DONE)
        else:
            self._record.say(self.tr("The printer did not take the program."), MessageKind.ERROR)

    def _action(self, text: str, slot: Callable[[], None]) -> QAction:
        action = QAction(text, self)
        action.triggered.connect(lambda _checked=False: slot())
        return action


def _file_name(name: str) -> str:
    """``name`` with nothing in it that a file system might refuse."""
    kept = "".join(sign if sign.isalnum() or sign in " -,_" else " " for sign in name)
    return " ".join(kept.split())[:80] or "program"
