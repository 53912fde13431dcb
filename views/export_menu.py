"""File > Export: logs, programs, all about one trainee for that person, everything."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cached_property, partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QLocale, QObject
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMainWindow, QMenu

from db.errors import StoreError
from views import calendar_words as words
from views.record import MessageKind, Record
from views.theme import Theme

if TYPE_CHECKING:
    from desktop.planning.everything_files import Everything
    from desktop.training.program import Program
    from desktop.training.trainee import Trainee
    from views.long_work import LongWork

Write = Callable[[Path], str]


class ExportMenu(QObject):
    """Fills a menu when it is opened. ``trainee_id`` tells whose log "of this trainee" is."""

    def __init__(
        self,
        window: QMainWindow,
        record: Record,
        theme: Theme,
        trainee_id: Callable[[], int | None],
    ) -> None:
        super().__init__(window)
        self._window, self._record, self._trainee_id = window, record, trainee_id
        self._theme = theme
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
            text = self.tr("For {name}: all that is kept…").format(name=_plain(chosen.name))
            self._add(text, self.all_about_one)
        if people:
            self._add(self.tr("Training logs of &all…"), self.log_of_all)
        if people or self._record.repository.programs():
            self._add(self.tr("&Everything, for another computer…"), self.everything)
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

    def all_about_one(self) -> None:
        """Ask for a folder, and write there all about the trainee chosen, for that person."""
        from views.file_dialogs import ask_folder

        people = self._record.repository.trainees()
        chosen = next((each for each in people if each.id == self._trainee_id()), None)
        if chosen is None:
            self._record.say(self.tr("Choose a trainee first."))
            return
        title = self.tr("Where to put all that is kept of {name}").format(name=chosen.name)
        ask_folder(
            self._window,
            title,
            lambda path: self.write(path, lambda folder: self.give(chosen, folder)),
        )

    def give(self, trainee: Trainee, folder: Path) -> str:
        """Write all about a trainee into a folder of their own in ``folder``; what was done."""
        from desktop.planning.everything_files import give_to_trainee
        from views.file_dialogs import file_name
        from views.safe_keeping import sessions_text

        own = folder / file_name(trainee.name, "export")
        content = give_to_trainee(self._record.repository, trainee, own)
        text = self.tr("All of {name}, {sessions}, saved to {path}")
        return text.format(
            name=trainee.name, sessions=sessions_text(len(content.sessions)), path=own
        )

    def everything(self) -> None:
        """Ask for a file, and write everything."""
        self._ask_for(self.tr("Everything"), "json", self.write_everything)

    def write_everything(self, path: Path) -> None:
        """Write everything into a file; it can be cancelled while it takes long."""
        from desktop.planning.everything_files import writing_everything

        database = self._record.repository.database
        work = writing_everything(Path(database.path), database.passphrase, path)

        def written(content: Everything) -> None:
            from views.safe_keeping import sessions_text, trainees_text

            text = self.tr("{trainees} and {sessions} saved to {path}")
            whose, what = trainees_text(len(content.trainees)), sessions_text(len(content.sessions))
            self._record.say(text.format(trainees=whose, sessions=what, path=path))

        self.work.start(self.tr("Writing everything…"), work, written, self._wrong)

    @cached_property
    def work(self) -> LongWork:
        """What takes long, in its panel."""
        from views.long_work import LongWork

        made = LongWork(self._theme, self._window)
        made.cancelled.connect(lambda: self._record.say(self.tr("Cancelled: no file was written.")))
        return made

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
        self._ask_for(title, suffix, lambda path: self.write(path, write))

    def _ask_for(self, title: str, suffix: str, then: Callable[[Path], None]) -> None:
        from views.file_dialogs import ask_target, file_name

        ask_target(self._window, title, file_name(title, "export"), suffix, then)

    def write(self, path: Path, write: Write) -> None:
        """Write a file, and say how it went."""
        try:
            said = write(path)
        except (StoreError, OSError) as error:
            self._wrong(error)
        else:
            self._record.say(said)

    def _wrong(self, error: Exception) -> None:
        from views.sentences import worded  # only where something went wrong

        if isinstance(error, StoreError):
            self._record.reported(error)
        elif isinstance(error, OSError):
            text = self.tr("{path} cannot be written: {why}")
            why = worded(error.strerror or error)
            said = text.format(path=error.filename, why=why)
            self._record.say(said, MessageKind.ERROR)
        else:
            raise error


def _plain(name: str) -> str:
    """A name in a menu: its ampersands are no mnemonics."""
    return name.replace("&", "&&")
