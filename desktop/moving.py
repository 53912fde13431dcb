"""Moving to another computer: everything of a file is looked at beside ours, then taken over."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QObject

from db.errors import StoreError
from views.theme import Theme

if TYPE_CHECKING:
    from desktop.planning.everything_files import TakingOver
    from views.long_work import LongWork
    from views.main_window import MainWindow
    from views.take_over import TakeOverPanel

translate = QCoreApplication.translate

Ended = Callable[[str], None]


class Moving(QObject):
    """Takes everything over into the data file at ``path``, whose window is open; ``ended`` opens
    it again and says a sentence.
    """

    def __init__(
        self, theme: Theme, window: MainWindow, path: Path, passphrase: str, ended: Ended
    ) -> None:
        super().__init__(window)
        self._theme, self._window, self._path = theme, window, path
        self._passphrase, self._ended = passphrase, ended
        self._taking: TakingOver | None = None
        self._work: LongWork | None = None
        self.panel: TakeOverPanel | None = None

    def ask_file(self) -> None:
        """Ask for a file of everything, and look into it."""
        from views.file_dialogs import ask_source

        title = translate("Application", "Choose a file that holds everything")
        ask_source(self._window, title, ("JSON (*.json)",), self.look_at)

    def look_at(self, source: Path) -> None:
        """Read a file of everything and show what taking it over would change."""
        from desktop.planning.everything_files import arriving
        from views.long_work import LongWork

        self.close()
        if self._work is None:
            self._work = LongWork(self._theme, self._window)
        text = translate("Application", "Reading everything in {name}…").format(name=source.name)
        work = arriving(source, self._path, self._passphrase)
        self._work.start(text, work, lambda taking: self._show(source, taking), self._wrong)

    def close(self) -> None:
        """Leave what was looked at."""
        if self.panel is not None:
            self.panel.close()
            self.panel.deleteLater()
            self.panel = None
        self._leave()

    def _show(self, source: Path, taking: TakingOver) -> None:
        from views.take_over import TakeOverPanel

        self._taking = taking
        self.panel = TakeOverPanel(self._theme, source.name, taking.people, date.today())
        self.panel.confirmed.connect(self._take_over)
        self.panel.left.connect(self._leave)
        self.panel.show()

    def _take_over(self) -> None:
        from desktop.planning.everything_files import take_over

        taking, self._taking = self._taking, None
        if taking is None:
            return
        try:
            kept = take_over(taking, self._path, self._passphrase, date.today())
        except StoreError as error:
            self._taking = taking
            self._wrong(error)
            self._leave()
            return
        text = translate("Application", "Everything is taken over; what was there is in {name}")
        self._ended(text.format(name=kept.name))

    def _leave(self) -> None:
        from desktop.planning.everything_files import leave

        taking, self._taking = self._taking, None
        if taking is not None:
            leave(taking)

    def _wrong(self, error: Exception) -> None:
        if not isinstance(error, StoreError):
            raise error
        self._window.say_wrong(error)
