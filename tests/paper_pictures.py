"""Pages as pictures, for tests that look at what is printed."""

from __future__ import annotations

from PySide6.QtCore import QSizeF
from PySide6.QtGui import QImage, QPainter

from views.sheet_painter import paint_page
from views.sheet_parts import Sheet

_MM_PER_INCH = 25.4


def page_image(sheet: Sheet, page: int, dots_per_inch: float = 96) -> QImage:
    """A picture of one page (from 0), black on white."""
    per_mm = dots_per_inch / _MM_PER_INCH
    size = QSizeF(sheet.paper.width_mm, sheet.paper.height_mm) * per_mm
    image = QImage(size.toSize(), QImage.Format.Format_RGB32)
    image.fill(0xFFFFFFFF)
    painter = QPainter(image)
    paint_page(painter, sheet, page, per_mm)
    painter.end()
    return image
