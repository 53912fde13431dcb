"""Pages on the screen become a PDF or go to a printer; each asks where, and says how it went."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QStandardPaths, Qt
from PySide6.QtWidgets import QFileDialog, QWidget

from views.record import MessageKind, Record
from views.sentences import worded
from views.sheet_parts import Sheet
from views.sheet_texts import SheetError
from views.sheets import print_sheet, set_paper, write_sheet

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
        folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
        dialog = QFileDialog(self._owner, self.tr("Save the report"), folder)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setDefaultSuffix("pdf")
        dialog.setNameFilter("PDF (*.pdf)")
        dialog.selectFile(f"{file_name(name)}.pdf")
        dialog.fileSelected.connect(lambda path: self.save_pdf(Path(path)))
        dialog.finished.connect(dialog.deleteLater)
        dialog.open()

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
        if sheet is None:
            return
        from PySide6.QtPrintSupport import QAbstractPrintDialog, QPrintDialog, QPrinter

        printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        set_paper(printer, sheet.paper)
        printer.setDocName(sheet.title)
        dialog = QPrintDialog(printer, self._owner)
        dialog.setMinMax(1, len(sheet.pages))
        dialog.setWindowModality(Qt.WindowModality.WindowModal)
        dialog.setOption(QAbstractPrintDialog.PrintDialogOption.PrintPageRange)
        dialog.accepted.connect(lambda: self.print_on(printer))
        dialog.finished.connect(dialog.deleteLater)
        dialog.show()

    def print_on(self, printer: QPrinter) -> None:
        """Print the pages, or those chosen, and say how it went."""
        sheet = self._now()
        if sheet is None:
            return
        if print_sheet(sheet, printer, max(1, printer.fromPage()), printer.toPage()):
            text = self.tr("Report sent to {printer}")
            name = printer.printerName() or printer.outputFileName()
            self._record.say(text.format(printer=name), MessageKind.DONE)
        else:
            self._record.say(self.tr("The printer did not take the report."), MessageKind.ERROR)


def file_name(text: str) -> str:
    """``text`` as a name that every file system takes."""
    kept = "".join(sign if sign.isalnum() or sign in " -_" else " " for sign in text)
    return " ".join(kept.split())[:80] or "report"
