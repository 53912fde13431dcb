"""File > Export: the log of one trainee or of all, and any program, each as a file."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QLocale, QObject
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMainWindow, QMenu

from db.errors import StoreError
from views import calendar_words as words
from views.record import MessageKind, Record

if TYPE_CHECKING:
    from desktop.training.program import Program
    from desktop.training.trainee import Trainee

Write = Callable[[Path], str]


class ExportMenu(QObject):
    """Fills a menu when it is opened. ``trainee_id`` tells whose log "of this trainee" is."""

    def __init__(
        self, window: QMainWindow, record: Record, trainee_id: Callable[[], int | None]
    ) -> None:
        super().__init__(window)
        self._window, self._record, self._trainee_id = window, record, trainee_id
        self.menu = QMenu(self.tr("&Export"), window)
        self.menu.aboutToShow.connect(self._fill)
        self._fill_empty()

    def _fill_empty(self) -> None:
        self.menu.clear()
        self.menu.addAction(self.tr("Nothing yet")).setEnabled(False)

    def _fill(self) -> None:
        if not self._record.attached:
            return
        self.menu.clear()
        people = self._record.repository.trainees()
        chosen = next((each for each in people if each.id == self._trainee_id()), None)
        if chosen is not None:
            text = self.tr("Training log of {name}…").format(name=_plain(chosen.name))
            self._add(text, self.log_of_one)
        if people:
            self._add(self.tr("Training logs of &all…"), self.log_of_all)
        programs = self._record.repository.programs()
        if programs:
            self.menu.addSeparator()
        for program in programs:
            text = self.tr("Program {name}…").format(name=_plain(program.name))
            self._add(text, partial(self.program, program))
        if not people and not programs:
            self._fill_empty()

    def _add(self, text: str, slot: Callable[[], object]) -> QAction:
        action = self.menu.addAction(text)
        action.triggered.connect(lambda _checked=False: slot())
        return action

    def log_of_one(self) -> None:
        """Ask for a file, and write the log of the trainee chosen."""
        people = self._record.repository.trainees()
        chosen = [each for each in people if each.id == self._trainee_id()]
        for one in chosen:
            title = self.tr("Training log of {name}").format(name=one.name)
            self._ask(title, "csv", lambda path: self._log(path, chosen))

    def log_of_all(self) -> None:
        """Ask for a file, and write the logs of everybody."""
        people = self._record.repository.trainees()
        self._ask(self.tr("Training logs"), "csv", lambda path: self._log(path, people))

    def program(self, program: Program) -> None:
        """Ask for a file, and write a program."""
        from desktop.planning.departing_files import export_program

        def write(path: Path) -> str:
            name = export_program(self._record.repository, program.id or 0, path)
            return self.tr("{name} saved to {path}").format(name=name, path=path)

        self._ask(program.name, "rungwise.json", write)

    def _log(self, path: Path, people: Sequence[Trainee]) -> str:
        from desktop.planning.departing_files import export_log

        comma = QLocale().decimalPoint() == ","
        lines = export_log(self._record.repository, people, path, decimal_comma=comma)
        text = self.tr("{count} lines saved to {path}")
        return text.format(count=words.number(lines), path=path)

    def _ask(self, title: str, suffix: str, write: Write) -> None:
        from PySide6.QtCore import QStandardPaths
        from PySide6.QtWidgets import QFileDialog

        folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
        dialog = QFileDialog(self._window, title, folder)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setDefaultSuffix(suffix)
        kind = suffix.rpartition(".")[2]
        dialog.setNameFilter(f"{kind.upper()} (*.{kind})")
        dialog.selectFile(f"{file_name(title)}.{suffix}")
        dialog.fileSelected.connect(lambda path: self.write(Path(path), write))
        dialog.finished.connect(dialog.deleteLater)
        dialog.open()

    def write(self, path: Path, write: Write) -> None:
        """Write a file, and say how it went."""
        try:
            said = write(path)
        except StoreError as error:
            self._record.reported(error)
        except OSError as error:
            text = self.tr("{path} cannot be written: {why}")
            why = error.strerror or str(error)
            self._record.say(text.format(path=path, why=why), MessageKind.ERROR)
        else:
            self._record.say(said)


def file_name(text: str) -> str:
    """A name that every file system takes."""
    kept = "".join(c if c.isalnum() or c in " -_" else " " for c in text)
    return " ".join(kept.split())[:60] or "export"


def _plain(name: str) -> str:
    """A name in a menu: its ampersands are no mnemonics."""
    return name.replace("&", "&&")
