"""The application with its window: the one place where all parts are put together."""

from __future__ import annotations

import gc
import sys
from contextlib import suppress
from datetime import date
from functools import partial
from pathlib import Path
from types import TracebackType
from typing import TYPE_CHECKING, Final

from PySide6.QtCore import (
    QCoreApplication,
    QLocale,
    QObject,
    QTimer,
    Signal,
)
from PySide6.QtGui import QIcon
from PySide6.QtWidgets import QApplication

from db.errors import DamagedFile, PassphraseNeeded, StoreError, WrongPassphrase
from db.first_look import first_look
from desktop import paths
from desktop.keeper import Keeper
from desktop.settings import Paper as PaperSetting
from desktop.settings import Settings
from desktop.settings import Theme as SchemeSetting
from desktop.translators import Translators, languages, locale_for
from views.main_window import MainWindow
from views.record import MessageKind, Record
from views.theme import Theme
from views.work_areas import DESK, PROGRESS

if TYPE_CHECKING:
    from collections.abc import Callable
    from logging import Logger

    from db.database import Database
    from db.repository import Repository
    from desktop.training.exercises import Exercise
    from views.notice import Notice

_LOOK_ELSEWHERE_MS: Final = 3000
_CHART_MS: Final = 2000
"""How long all the rest waits for a chart at most."""

ICON: Final = Path(__file__).parent.parent / "resources" / "desktop" / "rungwise.svg"

translate = QCoreApplication.translate


def run(database: Path | None = None, arriving: Path | None = None) -> int:
    """Open the window over ``database`` (None: the last one, else the default), with a file that is
    to be brought in, if any; the exit code.
    """
    settings = Settings(paths.config_folder() / "settings.ini")
    application = QApplication(sys.argv[:1])
    application.setApplicationName(paths.NAME)
    application.setDesktopFileName("rungwise")
    theme = Theme(settings.theme.value, settings.text_percent, paper=settings.paper.value)
    theme.apply(application)
    desk = Desk(settings, theme, application)
    sys.excepthook = desk.unexpected
    opened = desk.start(database or settings.last_file or paths.default_data_file())
    if opened and arriving is not None:
        desk.bring_in(arriving.absolute())
    code = application.exec()
    desk.close()
    return code


class Desk(QObject):
    """One data file with its window; another file takes its place."""

    checked = Signal(object, list)

    def __init__(
        self, settings: Settings, theme: Theme, application: QCoreApplication | None = None
    ) -> None:
        """``application``: where to install translators; None leaves the language as it is."""
        super().__init__()
        self._settings = settings
        self._theme = theme
        self._translators = None if application is None else Translators(application)
        self._translated = False
        self._take_language()
        self._path = paths.default_data_file()
        self.record: Record | None = None
        self.notice: Notice | None = None
        self.keeper = Keeper(self, theme, settings, self)
        self.window: MainWindow | None = None
        self._look = QTimer(self)
        self._look.setInterval(_LOOK_ELSEWHERE_MS)
        self._look.timeout.connect(self.look_elsewhere)
        self._rest = QTimer(self)
        self._rest.setSingleShot(True)
        self._rest.setInterval(_CHART_MS)
        self._rest.timeout.connect(self._go_further)
        self.checked.connect(self._tell_problems)
        theme.changed.connect(self._keep_look)

    def start(self, path: Path) -> bool:
        """Show the window at once with what a first look gives, where it opens on the desk or on
        a chart, and open the file in earnest after the first paint. Otherwise as `open`.
        """
        quick = self._settings.last_screen in ("", DESK, PROGRESS)
        glimpses = first_look(path, date.today()) if quick else None
        if glimpses is None:
            _start_log()
            return self.open(path)
        self._show(path, Record(glimpses=glimpses))
        return True

    def open(self, path: Path, *, create: bool = True, passphrase: str = "") -> bool:
        """Open a data file and show its window; False, with a notice or a question, where it
        cannot be.
        """
        repository = self._opened(path, create, passphrase)
        if repository is None:
            return False
        self.close()
        self._show(path, Record(repository))
        return True

    def bring_in(self, path: Path) -> None:
        """Show a file where files are brought in, as soon as the data file is open."""
        if self.record is None or self.window is None:
            return
        if self.record.attached:
            self.window.bring_in(path)
        else:
            self.record.opened.connect(partial(self.window.bring_in, path))

    def _opened(self, path: Path, create: bool, passphrase: str = "") -> Repository | None:
        from desktop.data_file import open_data_file
        from views.sentences import worded  # only where something went wrong

        try:
            repository = open_data_file(path, create, passphrase)
            repository.said = self._exercise_names()
            return repository
        except (PassphraseNeeded, WrongPassphrase) as error:
            self.keeper.ask_passphrase(path, error)
            return None
        except StoreError as error:
            damaged = isinstance(error, DamagedFile)
            if not (damaged and self.keeper.offer_backup(path, worded(error))):
                self.tell(worded(error), worded(error.remedy))
            return None

    def _show(self, path: Path, record: Record) -> None:
        self._path, self.record = path, record
        self.window = MainWindow(record, date.today(), self._theme, self._settings)
        self.window.setWindowTitle(f"{path.stem}[*] · {paths.NAME}")
        self.window.open_wanted.connect(self._choose_file)
        self.window.demo_wanted.connect(self._open_demo)
        self.window.backup_wanted.connect(self._back_up)
        self.window.language_wanted.connect(self.speak)
        self.window.menus.offer_languages(languages(), self._settings.language)
        self.keeper.attend(path, self.window)
        self.window.painted.connect(self._go_on)
        self.window.show()
        self._settings.last_file = None if path == paths.default_data_file() else path

    def _go_on(self) -> None:
        """After the first paint: the file in earnest. Where it cannot be opened the notice says so
        and the window goes. A chart that waits for it comes before all the rest.
        """
        if self.record is None or self.window is None:
            return
        chart_first = bool(self.window.area_waiting)
        if chart_first:
            self.window.waiting_painted.connect(self._go_further)
        if not self.record.attached:
            _start_log()
            repository = self._opened(self._path, create=False)
            if repository is None:
                self.close()
                return
            self.record.attach(repository, roster=not chart_first)
        if chart_first:
            self._rest.start()
        else:
            self._go_further()

    def _go_further(self) -> None:
        """The roster where it is not read yet, newer shipped exercises, a look through the file."""
        self._rest.stop()
        gc.freeze()  # what is there now stays: to look through it again and again finds nothing
        gc.enable()
        if self.record is None or not self.record.attached:
            return
        if not self.record.reads_roster:
            self.record.read_roster()
        self._look.start()
        if self.window is not None:
            self.window.setWindowIcon(QIcon(str(ICON)))
        self._check(self.record)

    def speak(self, language: str) -> None:
        """Take another language ("" for the system's), at once: the window is made anew over the
        same file, where it stood. What was done before can no longer be undone there.
        """
        self._settings.language = language
        self._take_language()
        window, record = self.window, self.record
        if window is None or record is None or not record.attached:
            return  # not past the first paint: from the next window on
        window.leave()
        record.repository.said = self._exercise_names()
        self.keeper.close()
        self._show(self._path, Record(record.repository))
        window.close()
        window.deleteLater()
        record.deleteLater()

    def _take_language(self) -> None:
        if self._translators is not None:
            locale = locale_for(self._settings.language, QLocale.system())
            self._translated = self._translators.use(locale)

    def _exercise_names(self) -> Callable[[Exercise], Exercise] | None:
        if not self._translated:
            return None
        from views.language import ExerciseNames

        return ExerciseNames()

    def close(self) -> None:
        """Close the window and the file, with a backup."""
        self._look.stop()
        self._rest.stop()
        self.keeper.close()
        if self.window is not None:
            self.window.close()
            self.window.deleteLater()
            self.window = None
        if self.record is not None:
            if self.record.attached:
                self._close_file(self.record.repository)
            self.record.deleteLater()
            self.record = None
        self._settings.sync()

    def _close_file(self, repository: Repository) -> None:
        from desktop.data_file import back_up

        try:
            back_up(repository, self._backups(), date.today())
        except StoreError:
            _log().warning("no backup on closing", exc_info=True)
        repository.database.close()

    def unexpected(
        self, kind: type[BaseException], error: BaseException, trace: TracebackType | None
    ) -> None:
        """Anything that nobody expected: log it, say so once, go on."""
        if issubclass(kind, KeyboardInterrupt):
            QCoreApplication.quit()
            return
        from desktop.log import described

        _log().error("unexpected", exc_info=(kind, error, trace))
        if isinstance(error, StoreError) and self.record is not None:
            self.record.reported(error)
            return
        self.tell(
            translate("Application", "Something went wrong that should not have."),
            translate(
                "Application",
                "What was saved is safe. The text below helps to mend it; it holds places in the "
                "program, and no names or health data.",
            ),
            described(kind, trace),
        )

    def tell(self, sentence: str, remedy: str, details: str = "") -> None:
        """One notice at a time, never modal; later ones wait in the log."""
        if self.notice is not None and self.notice.isVisible():
            return
        from views.notice import Notice

        self.notice = Notice(self._theme, sentence, remedy, details)
        self.notice.show()

    def _keep_look(self) -> None:
        self._settings.theme = SchemeSetting(self._theme.scheme.value)
        self._settings.text_percent = self._theme.text_percent
        self._settings.paper = PaperSetting(self._theme.paper_chosen)

    def look_elsewhere(self) -> None:
        """Show what another process wrote meanwhile."""
        if self.record is not None and self.record.attached:
            self.record.look_for_changes_elsewhere()

    def _check(self, record: Record) -> None:
        from desktop.data_file import bring_catalogue, problems_of

        changes = bring_catalogue(record.repository)
        if changes.kinds:
            record.took_in(changes)
        database = record.repository.database

        from threading import Thread

        def look_through() -> None:
            from views.sentences import worded  # only where something went wrong

            try:
                found = problems_of(database)
            except StoreError as error:
                found = [worded(error)]
            with suppress(RuntimeError):  # the desk went before its file was looked through
                self.checked.emit(database, found)

        Thread(target=look_through, daemon=True).start()

    def _tell_problems(self, database: Database, found: list[str]) -> None:
        record = self.record
        if not found or record is None or not record.attached:
            return
        if record.repository.database is database:
            text = translate(
                "Application", "The data file is damaged: take the newest backup from {folder}."
            )
            record.say(text.format(folder=self._backups()), MessageKind.ERROR)
            damaged = translate("Application", "The data file {name} is damaged.")
            self.keeper.offer_backup(self._path, damaged.format(name=self._path.name))

    def _backups(self) -> Path:
        """Where the backups of the open file go."""
        return paths.backups_of(self._path)

    def _back_up(self) -> None:
        if self.record is None or not self.record.attached:
            return
        from desktop.data_file import back_up

        try:
            copy = back_up(self.record.repository, self._backups(), date.today())
        except StoreError as error:
            self.record.reported(error)
            return
        self.record.say(translate("Application", "Backed up to {path}").format(path=copy))

    def _choose_file(self) -> None:
        from views.file_dialogs import ask_source

        title = translate("Application", "Open a data file")
        kinds = (translate("Application", "Data files (*.db)"),)
        ask_source(self.window, title, kinds, self.open, paths.data_folder())

    def _open_demo(self) -> None:
        """The demo has a data file of its own, filled the first time."""
        from desktop.data_file import fill_demo
        from views.sentences import worded  # only where something went wrong

        path = paths.data_folder() / "demo.db"
        if not path.exists():
            try:
                fill_demo(path, date.today())
            except StoreError as error:
                self.tell(worded(error), worded(error.remedy))
                return
        self.open(path)


def _start_log() -> None:
    from desktop.log import start_log

    start_log(paths.log_folder())


def _log() -> Logger:
    import logging

    return logging.getLogger("rungwise")
