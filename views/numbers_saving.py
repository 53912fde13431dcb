"""Saving the numbers behind a picture: as text, a table a file, or all of them as a workbook."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QMenu, QWidget

from db.errors import StoreError
from views.file_dialogs import ask_target, file_name
from views.record import MessageKind, Record
from views.sentences import worded

if TYPE_CHECKING:
    from desktop.planning.number_files import BookTable


@dataclass(frozen=True, slots=True)
class Numbers:
    """What there is to save now: the name to propose, tables that are saved one by one, each with
    its word in the menu, and those that make a workbook.
    """

    name: str
    tables: Sequence[tuple[str, BookTable]]
    book: Sequence[BookTable]


class NumbersSaving(QObject):
    """Asks as what and where to. ``now`` gives what there is; None: nothing."""

    def __init__(self, owner: QWidget, record: Record, now: Callable[[], Numbers | None]) -> None:
        super().__init__(owner)
        self._owner, self._record, self._now = owner, record, now

    def ask_how(self, below: QWidget) -> None:
        """Offer the ways in a menu under a button."""
        menu = self.menu()
        if menu is None:
            return
        menu.popup(below.mapToGlobal(below.rect().bottomLeft()))
        menu.setActiveAction(menu.actions()[0])

    def menu(self) -> QMenu | None:
        """The ways as a menu that goes when it is left; None where there is nothing to save."""
        now = self._now()
        if now is None:
            return None
        menu = QMenu(self._owner)
        menu.aboutToHide.connect(menu.deleteLater)
        for word, table in now.tables:
            text = self.tr("{what} (CSV)…").format(what=word)
            action = menu.addAction(text)
            action.triggered.connect(lambda _on=False, table=table: self._ask_table(now, table))
        whole = menu.addAction(self.tr("All of it (spreadsheet)…"))
        whole.triggered.connect(lambda _on=False: self._ask_book(now))
        return menu

    def save_table(self, table: BookTable, target: Path) -> None:
        """Save one table as text, and say how it went."""
        from desktop.planning.number_files import write_numbers

        self._write(target, lambda: write_numbers(table, target))

    def save_book(self, now: Numbers, target: Path) -> None:
        """Save all as a workbook, and say how it went."""
        from desktop.planning.number_files import write_workbook

        self._write(target, lambda: write_workbook(now.book, target))

    def _ask_table(self, now: Numbers, table: BookTable) -> None:
        name = file_name(f"{now.name} {table.name}", "numbers")
        title = self.tr("Save the numbers")
        ask_target(self._owner, title, name, "csv", lambda path: self.save_table(table, path))

    def _ask_book(self, now: Numbers) -> None:
        name, title = file_name(now.name, "numbers"), self.tr("Save the numbers")
        ask_target(self._owner, title, name, "xlsx", lambda path: self.save_book(now, path))

    def _write(self, target: Path, how: Callable[[], None]) -> None:
        try:
            how()
        except (OSError, StoreError) as error:
            text = self.tr("Not saved: {why}").format(why=worded(error))
            self._record.say(text, MessageKind.ERROR)
        else:
            text = self.tr("Saved to {path}").format(path=target)
            self._record.say(text, MessageKind.DONE)
