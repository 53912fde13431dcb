"""Printed sheets: a day's plan as a PDF, on a printer, or as pictures of its pages.

Needs no window and no screen: without a running application one is made for the time being.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from datetime import date
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QIODevice, QLocale, QMarginsF, QSaveFile
from PySide6.QtGui import (
    QGuiApplication,
    QPagedPaintDevice,
    QPageLayout,
    QPageSize,
    QPainter,
    QPdfWriter,
)

from desktop.planning.days import DayPlan
from desktop.planning.program_weeks import ProgramWeeks
from desktop.planning.report import TraineeReport
from views.group_sheet import group_text, lay_out_group
from views.paper import Paper, usual_paper
from views.sheet_layout import lay_out_sheet
from views.sheet_painter import paint_page
from views.sheet_parts import Sheet
from views.sheet_texts import SheetError as SheetError
from views.sheet_texts import sheet_text, translate

_DOTS_PER_INCH = 600
_MM_PER_INCH = 25.4


def make_sheet(plan: DayPlan, paper: Paper | None = None) -> Sheet:
    """The sheet of ``plan`` on ``paper`` (None: as usual in the locale's country).

    Raises SheetError where nothing is asked on the day. Needs a QGuiApplication.
    """
    return lay_out_sheet(sheet_text(plan), paper or usual_paper())


def write_pdf(plan: DayPlan, path: Path, paper: Paper | None = None) -> int:
    """Write the sheet of ``plan`` as a PDF with its fonts inside; how many pages it has.

    What stood at ``path`` stays whole until the new file is complete. Raises SheetError where
    nothing is asked on the day or the file cannot be written.
    """
    with drawing_application():
        sheet = make_sheet(plan, paper)
        write_sheet(sheet, path)
        return len(sheet.pages)


def make_group_sheet(plans: Sequence[DayPlan], day: date, paper: Paper | None = None) -> Sheet:
    """The sheet of several trainees' plans of one day. Raises SheetError where nobody is asked
    anything. Needs a QGuiApplication.
    """
    return lay_out_group(group_text(plans, day), paper or usual_paper())


def write_group_pdf(
    plans: Sequence[DayPlan], day: date, path: Path, paper: Paper | None = None
) -> int:
    """Write the sheet of a group as a PDF, as `write_pdf` does; how many pages it has."""
    with drawing_application():
        sheet = make_group_sheet(plans, day, paper)
        write_sheet(sheet, path)
        return len(sheet.pages)


def write_program_pdf(weeks: ProgramWeeks, path: Path, paper: Paper | None = None) -> int:
    """Write a whole program as a PDF with its fonts inside; how many pages it has.

    Raises SheetError where the file cannot be written.
    """
    from views.program_print import make_program_sheet  # the words of the editor, fetched late

    with drawing_application():
        sheet = make_program_sheet(weeks, paper)
        write_sheet(sheet, path)
        return len(sheet.pages)


def write_report_pdf(report: TraineeReport, path: Path, paper: Paper | None = None) -> int:
    """Write the progress report of a trainee as a PDF, as `write_pdf` does; its pages."""
    from views.report_layout import lay_out_report  # numpy: only where charts are drawn

    with drawing_application():
        sheet = lay_out_report(report, paper or usual_paper(), QLocale().firstDayOfWeek().value - 1)
        write_sheet(sheet, path)
        return len(sheet.pages)


def write_sheet(sheet: Sheet, path: Path) -> None:
    """Write a sheet that was laid out as a PDF. Raises SheetError where it cannot be written."""
    file = QSaveFile(str(path))
    if not file.open(QIODevice.OpenModeFlag.WriteOnly):
        raise _not_written(path, file.errorString())
    writer = QPdfWriter(file)
    writer.setResolution(_DOTS_PER_INCH)
    writer.setTitle(sheet.title)
    writer.setCreator("Rungwise")
    set_paper(writer, sheet.paper)
    painter = QPainter(writer)
    _paint_pages(painter, writer, sheet, range(len(sheet.pages)), _DOTS_PER_INCH / _MM_PER_INCH)
    painter.end()
    if not file.commit():
        raise _not_written(path, file.errorString())


def print_sheet(sheet: Sheet, printer: QPagedPaintDevice, first: int = 1, last: int = 0) -> bool:
    """Paint pages ``first`` to ``last`` (from 1; 0: the last) on ``printer``; whether it took
    them. The printer uses the whole page and the sheet's paper (`set_paper`).
    """
    pages = range(first - 1, last or len(sheet.pages))
    painter = QPainter()
    if not painter.begin(printer):
        return False
    _paint_pages(painter, printer, sheet, pages, printer.logicalDpiX() / _MM_PER_INCH)
    return painter.end()


def set_paper(device: QPagedPaintDevice, paper: Paper) -> None:
    """Let a printer or PDF use all of an upright page of ``paper``."""
    names = {Paper.A4: QPageSize.PageSizeId.A4, Paper.LETTER: QPageSize.PageSizeId.Letter}
    portrait = QPageLayout.Orientation.Portrait
    layout = QPageLayout(QPageSize(names[paper]), portrait, QMarginsF(0, 0, 0, 0))
    layout.setMode(QPageLayout.Mode.FullPageMode)
    device.setPageLayout(layout)


def _paint_pages(
    painter: QPainter, device: QPagedPaintDevice, sheet: Sheet, pages: range, per_mm: float
) -> None:
    for page in pages:
        if page != pages.start:
            device.newPage()
        paint_page(painter, sheet, page, per_mm)


def _not_written(path: Path, why: str) -> SheetError:
    text = translate("Sheet", "The sheet cannot be written to {path}: {why}")
    return SheetError(text.format(path=path, why=why))


@contextmanager
def drawing_application() -> Iterator[None]:
    """The running application, or one without a screen for as long as it is needed."""
    if QCoreApplication.instance() is not None:
        yield
        return
    application = QGuiApplication(["rungwise", "-platform", "offscreen"])
    try:
        yield
    finally:
        application.shutdown()
