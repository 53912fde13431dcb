"""Saving a chart: as a picture, as a drawing, or the numbers behind it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QStandardPaths
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QFileDialog, QMenu, QWidget

from db.errors import StoreError
from views.record import MessageKind, Record

if TYPE_CHECKING:
    from views.progress_picture import Picture

Write = Callable[[Path], object]


@dataclass(frozen=True, slots=True)
class Saved:
    """What there is to save now: the name to propose, the picture, and who writes the numbers."""

    name: str
    picture: Picture
    write_numbers: Write
    write_book: Write


class ChartSaving(QObject):
    """The actions that save a chart, and the question where to. ``now`` gives what there is."""

    def __init__(self, owner: QWidget, record: Record, now: Callable[[], Saved]) -> None:
        super().__init__(owner)
        self._owner, self._record, self._now = owner, record, now
        self.actions = [
            self._action(self.tr("Save as picture (PNG)…"), self.save_png),
            self._action(self.tr("Save as drawing (SVG)…"), self.save_svg),
            self._action(self.tr("Save the numbers (CSV)…"), self.save_csv),
            self._action(self.tr("Save the numbers (spreadsheet)…"), self.save_book),
        ]

    def ask_how(self, below: QWidget) -> None:
        """Offer the ways in a menu under a button."""
        menu = QMenu(self._owner)
        menu.addActions(self.actions)
        menu.aboutToHide.connect(menu.deleteLater)
        menu.popup(below.mapToGlobal(below.rect().bottomLeft()))
        menu.setActiveAction(self.actions[0])

    def save_png(self) -> None:
        """Ask where, and save an image."""
        from views.progress_picture import save_png

        now = self._now()
        self._ask(now.name, "png", lambda target: save_png(now.picture, target))

    def save_svg(self) -> None:
        """Ask where, and save lines and text."""
        from views.progress_picture import save_svg

        now = self._now()
        self._ask(now.name, "svg", lambda target: save_svg(now.picture, target))

    def save_csv(self) -> None:
        """Ask where, and save the numbers of every session."""
        now = self._now()
        self._ask(now.name, "csv", now.write_numbers)

    def save_book(self) -> None:
        """Ask where, and save the same numbers as a workbook."""
        now = self._now()
        self._ask(now.name, "xlsx", now.write_book)

    def write(self, target: Path, how: Write) -> None:
        """Write a file and say so, or say why not."""
        try:
            how(target)
        except (OSError, StoreError) as error:
            text = self.tr("Not saved: {why}")
            self._record.say(text.format(why=error), MessageKind.ERROR)
        else:
            text = self.tr("Saved to {path}")
            self._record.say(text.format(path=target), MessageKind.DONE)

    def _action(self, text: str, slot: Callable[[], None]) -> QAction:
        action = QAction(text, self)
        action.triggered.connect(lambda _checked=False: slot())
        return action

    def _ask(self, name: str, suffix: str, how: Write) -> None:
        folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
        dialog = QFileDialog(self._owner, self.tr("Save the chart"), folder)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setDefaultSuffix(suffix)
        dialog.setNameFilter(f"{suffix.upper()} (*.{suffix})")
        dialog.selectFile(f"{_plain(name)}.{suffix}")
        dialog.fileSelected.connect(lambda path: self.write(Path(path), how))
        dialog.finished.connect(dialog.deleteLater)
        dialog.open()


def _plain(name: str) -> str:
    """``name`` with nothing in it that a file system might refuse."""
    kept = "".join(sign if sign.isalnum() or sign in " -,_" else " " for sign in name)
    return " ".join(kept.split())[:80] or "chart"
