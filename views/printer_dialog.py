"""The question on which printer pages go, and which of them."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget

from views.sheet_parts import Sheet
from views.sheets import print_sheet, set_paper

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrinter


def ask_printer(owner: QWidget, sheet: Sheet, then: Callable[[QPrinter], object]) -> None:
    """Ask for a printer that takes the pages of ``sheet`` whole."""
    from PySide6.QtPrintSupport import QAbstractPrintDialog, QPrintDialog, QPrinter

    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    set_paper(printer, sheet.paper)
    printer.setDocName(sheet.title)
    dialog = QPrintDialog(printer, owner)
    dialog.setMinMax(1, len(sheet.pages))
    dialog.setWindowModality(Qt.WindowModality.WindowModal)
    dialog.setOption(QAbstractPrintDialog.PrintDialogOption.PrintPageRange)
    dialog.accepted.connect(lambda: then(printer))
    dialog.finished.connect(dialog.deleteLater)
    dialog.show()


def print_chosen(sheet: Sheet, printer: QPrinter) -> bool:
    """Print the pages that were chosen; whether the printer took them."""
    return print_sheet(sheet, printer, max(1, printer.fromPage()), printer.toPage())


def name_of(printer: QPrinter) -> str:
    """What a printer is called, or the file that it writes."""
    return printer.printerName() or printer.outputFileName()
