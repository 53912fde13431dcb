"""The application with its window: the one place where all parts are put together."""

from __future__ import annotations

import logging
import sys
from datetime import date
from pathlib import Path
from types import TracebackType
from typing import Final

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QObject, QTimer, QTranslator
from PySide6.QtWidgets import QApplication, QFileDialog

from db.backup import back_up_on_closing
from db.database import Database
from db.errors import StoreError
from db.repository import Repository
from desktop import paths
from desktop.catalogue import load_catalogue
from desktop.log import described, start_log
from desktop.settings import Paper as PaperSetting
from desktop.settings import Settings
from desktop.settings import Theme as SchemeSetting
from views.main_window import MainWindow
from views.notice import Notice
from views.record import MessageKind, Record
from views.theme import Theme

_LOG: Final = logging.getLogger("rungwise")
_LOOK_ELSEWHERE_MS: Final = 3000
TRANSLATIONS: Final = Path(__file__).parent.parent / "resources" / "translations"

translate = QCoreApplication.translate


def run(database: Path | None = None) -> int:
    """Open the window over ``database`` (None: the last one, else the default); the exit code."""
    start_log(paths.log_folder())
    settings = Settings(paths.config_folder() / "settings.ini")
    application = QApplication(sys.argv[:1])
    application.setApplicationName(paths.NAME)
    application.setDesktopFileName("rungwise")
    QLocale.setDefault(QLocale(settings.language) if settings.language else QLocale.system())
    translators = install_translators(application, QLocale())
    theme = Theme(settings.theme.value, settings.text_percent, paper=settings.paper.value)
    theme.apply(application)
    desk = Desk(settings, theme)
    sys.excepthook = desk.unexpected
    opened = desk.open(database or settings.last_file or paths.default_data_file())
    if not opened:
        return application.exec() and 1
    code = application.exec()
    desk.close()
    del translators
    return code


class Desk(QObject):
    """One data file with its window; another file takes its place."""

    def __init__(self, settings: Settings, theme: Theme) -> None:
        super().__init__()
        self._settings = settings
        self._theme = theme
        self.record: Record | None = None
        self.notice: Notice | None = None
        self.window: MainWindow | None = None
        self._look = QTimer(self)
        self._look.setInterval(_LOOK_ELSEWHERE_MS)
        self._look.timeout.connect(self.look_elsewhere)
        theme.changed.connect(self._keep_look)

    def open(self, path: Path, *, create: bool = True) -> bool:
        """Open a data file and show its window; False, with a notice, where it cannot be."""
        try:
            database = Database.open(path, create)
            repository = Repository(database)
            if not repository.exercises(retired=True):
                repository.sync_catalogue(load_catalogue())
        except StoreError as error:
            self._tell(str(error), error.remedy)
            return False
        self.close()
        self.record = Record(repository)
        self.window = MainWindow(self.record, date.today(), self._theme, self._settings)
        self.window.setWindowTitle(f"{path.stem}[*] · {paths.NAME}")
        self.window.open_wanted.connect(self._choose_file)
        self.window.demo_wanted.connect(self._open_demo)
        self.window.backup_wanted.connect(self._back_up)
        self.window.show()
        is_default = path == paths.default_data_file()
        self._settings.last_file = None if is_default else path
        self._look.start()
        QTimer.singleShot(0, self._check)
        return True

    def close(self) -> None:
        """Close the window and the file, with a backup."""
        self._look.stop()
        if self.window is not None:
            self.window.close()
            self.window.deleteLater()
            self.window = None
        if self.record is not None:
            database = self.record.repository.database
            try:
                back_up_on_closing(database, self._backups(), date.today())
            except StoreError:
                _LOG.warning("no backup on closing", exc_info=True)
            database.close()
            self.record.deleteLater()
            self.record = None
        self._settings.sync()

    def unexpected(
        self, kind: type[BaseException], error: BaseException, trace: TracebackType | None
    ) -> None:
        """Anything that nobody expected: log it, say so once, go on."""
        if issubclass(kind, KeyboardInterrupt):
            QCoreApplication.quit()
            return
        _LOG.error("unexpected", exc_info=(kind, error, trace))
        if isinstance(error, StoreError) and self.record is not None:
            self.record.reported(error)
            return
        self._tell(
            translate("Application", "Something went wrong that should not have."),
            translate(
                "Application",
                "What was saved is safe. The text below helps to mend it; it holds places in the "
                "program, and no names or health data.",
            ),
            described(kind, trace),
        )

    def _tell(self, sentence: str, remedy: str, details: str = "") -> None:
        """One notice at a time, never modal; later ones wait in the log."""
        if self.notice is not None and self.notice.isVisible():
            return
        self.notice = Notice(self._theme, sentence, remedy, details)
        self.notice.show()

    def _keep_look(self) -> None:
        self._settings.theme = SchemeSetting(self._theme.scheme.value)
        self._settings.text_percent = self._theme.text_percent
        self._settings.paper = PaperSetting(self._theme.paper_chosen)

    def look_elsewhere(self) -> None:
        """Show what another process wrote meanwhile."""
        if self.record is not None:
            self.record.look_for_changes_elsewhere()

    def _check(self) -> None:
        """After the first paint: newer shipped exercises, and is the file whole?"""
        if self.record is None:
            return
        changes = self.record.repository.sync_catalogue(load_catalogue())
        if changes.kinds:
            self.record.took_in(changes)
        found = self.record.repository.database.quick_check()
        if found:
            text = translate(
                "Application", "The data file is damaged: take the newest backup from {folder}."
            )
            self.record.say(text.format(folder=self._backups()), MessageKind.ERROR)

    def _backups(self) -> Path:
        """Where the backups of the open file go: the default file's beside it, so others' too."""
        path = self.record.repository.database.path if self.record is not None else None
        if not isinstance(path, Path) or path == paths.default_data_file():
            return paths.backup_folder()
        return paths.backup_folder() / path.stem

    def _back_up(self) -> None:
        if self.record is None:
            return
        try:
            copy = back_up_on_closing(
                self.record.repository.database, self._backups(), date.today()
            )
        except StoreError as error:
            self.record.reported(error)
            return
        self.record.say(translate("Application", "Backed up to {path}").format(path=copy))

    def _choose_file(self) -> None:
        dialog = QFileDialog(
            self.window, translate("Application", "Open a data file"), str(paths.data_folder())
        )
        dialog.setNameFilter(translate("Application", "Data files (*.db)"))
        dialog.fileSelected.connect(lambda path: self.open(Path(path)))
        dialog.open()

    def _open_demo(self) -> None:
        """The demo has a data file of its own, filled the first time."""
        path = paths.data_folder() / "demo.db"
        if not path.exists():
            try:
                _fill_demo(path)
            except StoreError as error:
                self._tell(str(error), error.remedy)
                return
        self.open(path)


def _fill_demo(path: Path) -> None:
    from desktop import demo  # reads spreadsheets of exercises and logs: only when asked for

    database = Database.open(path)
    repository = Repository(database)
    try:
        with repository.transaction():
            repository.sync_catalogue(load_catalogue())
            demo.fill(repository, date.today())
    except BaseException:
        database.close()
        path.unlink(missing_ok=True)
        raise
    database.close()


def install_translators(application: QApplication, locale: QLocale) -> tuple[QTranslator, ...]:
    """Our translation and Qt's own for ``locale``, where there are any; keep what is returned."""
    qt_folder = QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)
    installed = []
    for name, folder in (("rungwise", str(TRANSLATIONS)), ("qtbase", qt_folder)):
        translator = QTranslator(application)
        if translator.load(locale, name, "_", folder):
            application.installTranslator(translator)
            installed.append(translator)
    return tuple(installed)
