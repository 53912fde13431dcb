"""The preview of a printed sheet: its pages one below the other, larger and smaller by keys."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QPointF, QRectF, QSize, QSizeF, Qt
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QFrame, QScrollArea, QWidget

from views.sheet_painter import paint_page
from views.sheet_parts import Sheet
from views.step_strip import PAPER as INK
from views.theme import Theme

LARGEST: Final = 2.0
SMALLEST: Final = 0.25
STEP: Final = 1.25
_PER_MM: Final = 96 / 25.4


class SheetPreview(QScrollArea):
    """Pages as they will be printed. Keys while it has the focus: plus and minus, 0 for the whole
    page, 1 for the width; the arrows and page keys scroll.
    """

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._zoom = 1.0
        self._fit = "width"
        self._pages = _Pages(theme)
        self.setWidget(self._pages)
        self.setAlignment(Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(self.tr("Preview of the sheet"))
        theme.changed.connect(self._resize_pages)

    @property
    def zoom(self) -> float:
        """Size on the screen: 1.0 is as large as on paper, where the screen tells the truth."""
        return self._zoom

    def show_sheet(self, sheet: Sheet | None) -> None:
        """Show another sheet, from its top; None: nothing."""
        self._pages.sheet = sheet
        self.setAccessibleDescription(sheet.spoken if sheet else "")
        self._resize_pages()
        self.verticalScrollBar().setValue(0)

    def larger(self) -> None:
        """One step larger."""
        self._choose(self._zoom * STEP)

    def smaller(self) -> None:
        """One step smaller."""
        self._choose(self._zoom / STEP)

    def fit_page(self) -> None:
        """As large as a whole page can be shown."""
        self._fit = "page"
        self._resize_pages()

    def fit_width(self) -> None:
        """As wide as the window, but no larger than on paper at this size of text."""
        self._fit = "width"
        self._resize_pages()

    def _choose(self, zoom: float) -> None:
        self._fit = ""
        self._zoom = max(SMALLEST, min(LARGEST, zoom))
        self._resize_pages()

    def _resize_pages(self) -> None:
        sheet = self._pages.sheet
        if sheet is None:
            self._pages.resize(0, 0)
            return
        room = self.viewport().size()
        across = (room.width() - 2 * self._pages.gap) / (sheet.paper.width_mm * _PER_MM)
        down = (room.height() - 2 * self._pages.gap) / (sheet.paper.height_mm * _PER_MM)
        if self._fit == "width":
            self._zoom = max(SMALLEST, min(across, self._theme.text_percent / 100))
        elif self._fit == "page":
            self._zoom = max(SMALLEST, min(across, down))
        self._pages.per_mm = _PER_MM * self._zoom
        self._pages.resize(self._pages.sizeHint())
        self._pages.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        acts = {
            Qt.Key.Key_Plus: self.larger,
            Qt.Key.Key_Equal: self.larger,
            Qt.Key.Key_Minus: self.smaller,
            Qt.Key.Key_0: self.fit_page,
            Qt.Key.Key_1: self.fit_width,
        }
        act = acts.get(Qt.Key(event.key()))
        plain = not event.modifiers() & (
            Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.AltModifier
        )
        if act is not None and plain:
            act()
        else:
            super().keyPressEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._resize_pages()


class _Pages(QWidget):
    """White pages with a hairline round each, on the ground of the window."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self.sheet: Sheet | None = None
        self.per_mm = _PER_MM

    @property
    def gap(self) -> int:
        """Space round a page."""
        return self._theme.grid(1)

    def _page_rect(self, page: int) -> QRectF:
        assert self.sheet is not None
        paper = self.sheet.paper
        size = QSizeF(paper.width_mm, paper.height_mm) * self.per_mm
        return QRectF(QPointF(self.gap, self.gap + page * (size.height() + self.gap)), size)

    def sizeHint(self) -> QSize:
        if self.sheet is None:
            return QSize(0, 0)
        last = self._page_rect(len(self.sheet.pages) - 1)
        return QSize(round(last.right()) + self.gap, round(last.bottom()) + self.gap)

    def paintEvent(self, event: QPaintEvent) -> None:
        if self.sheet is None:
            return
        painter = QPainter(self)
        for page in range(len(self.sheet.pages)):
            rect = self._page_rect(page)
            if not rect.intersects(QRectF(event.rect())):
                continue
            painter.setPen(QPen(self._theme.colour("line"), 1))
            painter.setBrush(INK.ground)
            painter.drawRect(rect)
            painter.save()
            painter.translate(rect.topLeft())
            paint_page(painter, self.sheet, page, self.per_mm)
            painter.restore()
        painter.end()
