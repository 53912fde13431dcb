"""Saving a chart: as a picture, as a drawing, or the numbers behind it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from db.errors import StoreError
from views.file_dialogs import ask_target, file_name
from views.offered_actions import OfferedActions
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


class ChartSaving(OfferedActions):
    """The actions that save a chart, and the question where to. ``now`` gives what there is."""

    def __init__(self, owner: QWidget, record: Record, now: Callable[[], Saved]) -> None:
        super().__init__(owner)
        self._record, self._now = record, now
        self.add(self.tr("Save as picture (PNG)…"), self.save_png)
        self.add(self.tr("Save as drawing (SVG)…"), self.save_svg)
        self.add(self.tr("Save the numbers (CSV)…"), self.save_csv)
        self.add(self.tr("Save the numbers (spreadsheet)…"), self.save_book)

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

    def _ask(self, name: str, suffix: str, how: Write) -> None:
        title, proposed = self.tr("Save the chart"), file_name(name, "chart")
        ask_target(self.owner, title, proposed, suffix, lambda path: self.write(path, how))
