"""The guide: pages at the left, one to read at the right. Only files that ship are ever shown."""

from __future__ import annotations

import re
from typing import Any

from PySide6.QtCore import QEvent, QLocale, QSize, Qt, QTimer, QUrl
from PySide6.QtGui import QImage, QKeySequence, QResizeEvent, QShortcut, QTextCursor, QTextDocument
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QListWidget,
    QListWidgetItem,
    QTextBrowser,
    QVBoxLayout,
    QWidget,
)

from views.blocks import WordButton
from views.guide_pages import FIRST, PICTURES, contents, page_at, page_text
from views.theme import TextSize, Theme

_LIST_WIDTH = 30
_TEXT_WIDTH = 88
_SETTLE_MS = 80
_UNIT = re.compile(r"(\d) (kg|cm|s|%)(?!\w)")
_KEY = Qt.ItemDataRole.UserRole


class Guide(QDialog):
    """A window to read in beside the work. `open_page` shows a page; links between pages lead on,
    Alt+Left goes back.
    """

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._language = QLocale().name().partition("_")[0]
        self._been: list[str] = []
        self.setWindowTitle(self.tr("Guide"))
        self.setModal(False)
        self.list = QListWidget()
        self.list.setAccessibleName(self.tr("Pages of the guide"))
        self.list.setProperty("kind", "quiet")
        self.text = GuideText(theme)
        self.text.setAccessibleName(self.tr("Page"))
        self.back = WordButton(self.tr("Back"), "Alt+Left")
        self.closing = WordButton(self.tr("Close"), tone="muted")
        self._fill()
        self._assemble()
        self.list.currentItemChanged.connect(self._chosen)
        self.text.anchorClicked.connect(self._follow)
        self.back.clicked.connect(self.go_back)
        self.closing.clicked.connect(self.close)
        QShortcut(QKeySequence("Alt+Home"), self).activated.connect(self.list.setFocus)
        theme.changed.connect(self._space)
        self._space()
        self.resize(theme.grid(130), theme.grid(90))

    @property
    def page(self) -> str:
        """The key of the page shown."""
        row = self.list.currentRow()
        return str(self.list.item(row).data(_KEY)) if row >= 0 else ""

    def open_page(self, key: str = "") -> None:
        """Show a page, in front; the first one where there is none for ``key``."""
        self._go(key if key in self._rows else FIRST)
        self.show()
        self.raise_()
        self.activateWindow()
        self.text.setFocus(Qt.FocusReason.OtherFocusReason)

    def go_back(self) -> None:
        """Show the page that was shown before."""
        if len(self._been) > 1:
            self._been.pop()
            self._go(self._been.pop())

    def _go(self, key: str) -> None:
        item = self.list.item(self._rows[key])
        if item is self.list.currentItem():
            self._chosen(item)
        else:
            self.list.setCurrentItem(item)

    def _fill(self) -> None:
        self._rows: dict[str, int] = {}
        self._parts: list[QListWidgetItem] = []
        part = ""
        for page in contents(self._language):
            if page.part != part:
                part = page.part
                head = QListWidgetItem(part)
                head.setFlags(Qt.ItemFlag.NoItemFlags)
                self._parts.append(head)
                self.list.addItem(head)
            item = QListWidgetItem(page.title)
            item.setData(_KEY, page.key)
            self._rows[page.key] = self.list.count()
            self.list.addItem(item)

    def _chosen(self, item: QListWidgetItem | None) -> None:
        if item is None:
            return
        key = str(item.data(_KEY))
        if self._been[-1:] != [key]:
            self._been.append(key)
        self.text.show_markdown(page_text(key, self._language))
        self.text.setAccessibleDescription(item.text())
        self.back.setEnabled(len(self._been) > 1)

    def _follow(self, link: QUrl) -> None:
        key = page_at(link.toString())
        if key in self._rows:
            self._go(key)
            self.text.setFocus(Qt.FocusReason.OtherFocusReason)

    def _assemble(self) -> None:
        foot = QHBoxLayout()
        foot.addWidget(self.back)
        foot.addStretch(1)
        foot.addWidget(self.closing)
        self._right = QVBoxLayout()
        self._right.addWidget(self.text, 1)
        self._right.addLayout(foot)
        self._across = QHBoxLayout(self)
        self._across.addWidget(self.list)
        self._across.addLayout(self._right, 1)

    def _space(self) -> None:
        grid = self._theme.grid
        self._across.setContentsMargins(grid(), grid(2), grid(2), grid())
        self._across.setSpacing(grid(2))
        self._right.setSpacing(grid())
        self.list.setFixedWidth(grid(_LIST_WIDTH))
        self.list.setWordWrap(True)
        self.list.setSpacing(self._theme.px(2))
        for head in self._parts:
            head.setFont(self._theme.font(TextSize.SMALL))
            head.setForeground(self._theme.colour("muted"))


class GuideText(QTextBrowser):
    """Shows Markdown of our own: nothing is fetched, HTML in it is text, pictures come from one
    folder alone.
    """

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._markdown = ""
        self._width = 0
        self._settle = QTimer(self)
        self._settle.setSingleShot(True)
        self._settle.setInterval(_SETTLE_MS)
        self._settle.timeout.connect(self._again)
        self.setOpenLinks(False)
        self.setOpenExternalLinks(False)
        self.setFrameShape(QTextBrowser.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        theme.changed.connect(self._settle.start)

    def show_markdown(self, text: str) -> None:
        """Show a page from its beginning."""
        self._markdown = _kept_together(text)
        self._draw()
        self.moveCursor(QTextCursor.MoveOperation.Start)
        self.verticalScrollBar().setValue(0)

    def loadResource(self, kind: int, name: QUrl | str) -> Any:
        """Pictures that ship, no wider than the page; nothing else, from nowhere."""
        if kind != QTextDocument.ResourceType.ImageResource.value:
            return None
        path = PICTURES / QUrl(name).fileName()
        picture = QImage(str(path)) if path.is_file() else QImage()
        if picture.isNull():
            return None
        ratio = self.devicePixelRatioF()
        width = round(min(self._width * ratio, picture.width()))
        shown = picture.scaledToWidth(width, Qt.TransformationMode.SmoothTransformation)
        shown.setDevicePixelRatio(ratio)
        return shown

    def _again(self) -> None:
        """Another size or other colours: the same page, at the same place."""
        bar = self.verticalScrollBar()
        place = bar.value() / max(1, bar.maximum())
        self._draw()
        self.moveCursor(QTextCursor.MoveOperation.Start)
        bar.setValue(round(place * bar.maximum()))

    def _draw(self) -> None:
        page = self.document()
        page.clear()
        page.setDefaultFont(self._theme.font())
        page.setDocumentMargin(self._theme.grid(2))
        self._width = self.viewport().width() - self._theme.grid(5)
        features = QTextDocument.MarkdownFeature
        page.setMarkdown(self._markdown, features.MarkdownDialectGitHub | features.MarkdownNoHTML)

    def _narrow(self) -> None:
        """Lines that the eye can follow."""
        spare = self.width() - self._theme.grid(_TEXT_WIDTH)
        self.setViewportMargins(0, 0, max(0, spare), 0)

    def sizeHint(self) -> QSize:
        return QSize(self._theme.grid(_TEXT_WIDTH), self._theme.grid(60))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self._narrow()
            self._settle.start()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._settle.start()


def _kept_together(text: str) -> str:
    """Figures with their signs and units, which no line may part."""
    together = text.replace(" \N{MULTIPLICATION SIGN} ", "\N{NBSP}\N{MULTIPLICATION SIGN}\N{NBSP}")
    return _UNIT.sub("\\1\N{NBSP}\\2", together)
