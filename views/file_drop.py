"""A file dropped anywhere on the window."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QEvent, QMimeData, QObject, Signal
from PySide6.QtGui import QDropEvent
from PySide6.QtWidgets import QWidget


class FileDrop(QObject):
    """Takes one local file at a time; ``dropped(Path)``."""

    dropped = Signal(object)

    def __init__(self, window: QWidget) -> None:
        super().__init__(window)
        window.setAcceptDrops(True)
        window.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        kinds = (QEvent.Type.DragEnter, QEvent.Type.DragMove, QEvent.Type.Drop)
        if event.type() not in kinds or not isinstance(event, QDropEvent):
            return super().eventFilter(watched, event)
        path = file_in(event.mimeData())
        if path is None:
            return super().eventFilter(watched, event)
        event.acceptProposedAction()
        if event.type() is QEvent.Type.Drop:
            self.dropped.emit(path)
        return True


def file_in(data: QMimeData) -> Path | None:
    """The one local file that is dragged; None for anything else."""
    urls = data.urls()
    if len(urls) != 1 or not urls[0].isLocalFile():
        return None
    path = Path(urls[0].toLocalFile())
    return path if path.is_file() else None
