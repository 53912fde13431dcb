"""What keeps a data file safe while its window is open: backups, passphrase, lock, erasing.

Each act that needs the file for itself closes the window and opens it again.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QCoreApplication, QObject

from db.errors import PassphraseNeeded, StoreError
from desktop import paths
from desktop.settings import Settings
from views.record import Record
from views.theme import Theme

if TYPE_CHECKING:
    from PySide6.QtWidgets import QDialog

    from desktop.moving import Moving
    from desktop.planning.safe_keeping import Backup, SafeKeeping
    from views.lock_panel import IdleWatch, LockPanel
    from views.main_window import MainWindow
    from views.safe_keeping import SafeKeepingPanel

translate = QCoreApplication.translate


class Desk(Protocol):
    """What the keeper asks of the desk."""

    record: Record | None
    window: MainWindow | None

    def open(self, path: Path, *, create: bool = True, passphrase: str = "") -> bool: ...
    def close(self) -> None: ...
    def tell(self, sentence: str, remedy: str, details: str = "") -> None: ...


class Keeper(QObject):
    """The safe keeping of one desk's file."""

    def __init__(self, desk: Desk, theme: Theme, settings: Settings, parent: QObject) -> None:
        super().__init__(parent)
        self._desk, self._theme, self._settings = desk, theme, settings
        self._path = paths.default_data_file()
        self._watch: IdleWatch | None = None
        self.moving: Moving | None = None
        self.panel: SafeKeepingPanel | None = None
        self.question: QDialog | None = None
        self.lock_panel: LockPanel | None = None

    def attend(self, path: Path, window: MainWindow) -> None:
        """Serve the wishes of a window."""
        self._path = path
        self.lock_panel = None
        self.moving = None
        window.keeping_wanted.connect(self._serve)
        window.everything_brought.connect(self.take_over)
        window.menus.mark_lock(self._settings.lock_minutes)

    def begin(self) -> None:
        """After the first paint: count the idle minutes, if the window is to be locked."""
        self.lock_after(self._settings.lock_minutes)

    def close(self) -> None:
        """Nothing is watched or asked any more."""
        if self._watch is not None:
            self._watch.wait(0)
        if self.question is not None:
            self.question.close()
        if self.moving is not None:
            self.moving.close()

    # Backups

    def show_backups(self) -> None:
        """Show the backups of the open file."""
        self._show(self._keeping(), "")

    def offer_backup(self, path: Path, trouble: str) -> bool:
        """Offer the newest good backup of a damaged file; False where there is none."""
        from desktop.planning.safe_keeping import SafeKeeping

        keeping = SafeKeeping(path, paths.backups_of(path), True, self._passphrase())
        if keeping.newest_good() is None:
            return False
        self._show(keeping, trouble)
        return True

    def _show(self, keeping: SafeKeeping, trouble: str) -> None:
        from views.safe_keeping import SafeKeepingPanel

        if self.panel is not None:
            self.panel.close()
            self.panel.deleteLater()
        self.panel = SafeKeepingPanel(self._theme, keeping, date.today(), trouble)
        self.panel.restore_wanted.connect(lambda backup: self._go_back(keeping, backup))
        self.panel.show()

    def _go_back(self, keeping: SafeKeeping, backup: Backup) -> None:
        from views.sentences import worded  # only where something went wrong

        if keeping.damaged:  # no window may hold on to it
            self._desk.close()
        try:
            kept = keeping.restore(backup, date.today())
        except StoreError as error:
            self._desk.tell(worded(error), worded(error.remedy))
            return
        text = translate("Application", "Went back to the backup; what was there is in {name}")
        self._reopen(keeping.path, keeping.passphrase, text.format(name=kept.name))

    # Everything of another computer

    def take_over(self, source: Path | None = None) -> None:
        """Look at a file of everything (None: one that is asked for), to take it over."""
        from desktop.moving import Moving

        record, window = self._desk.record, self._desk.window
        if record is None or window is None or not record.attached:
            return
        if self.moving is None:
            path, passphrase = self._path, self._passphrase()
            ended = partial(self._reopen, path, passphrase)
            self.moving = Moving(self._theme, window, path, passphrase, ended)
        if source is None:
            self.moving.ask_file()
        else:
            self.moving.look_at(source)

    # The passphrase

    def ask_passphrase(self, path: Path, error: StoreError) -> None:
        """Ask for the passphrase of a file, and open it."""
        from views.passphrase import PassphraseQuestion
        from views.sentences import worded  # only where something went wrong

        sentence = worded(error)
        if isinstance(error, PassphraseNeeded):
            text = translate("Application", "{name} is locked by a passphrase.")
            sentence = text.format(name=path.name)
        question = PassphraseQuestion(self._theme, sentence)
        question.given.connect(lambda typed: self._desk.open(path, passphrase=typed))
        self._ask(question)

    def _change_passphrase(self) -> None:
        from views.passphrase import PassphraseChange

        change = PassphraseChange(self._theme, there=bool(self._passphrase()))
        change.wanted.connect(self._set_passphrase)
        self._ask(change)

    def _set_passphrase(self, new: str) -> None:
        keeping = self._keeping()

        def change() -> str:
            left = keeping.change_passphrase(new)
            if left:
                text = translate("Application", "Left as they were, without it: {names}")
                return text.format(names=", ".join(path.name for path in left))
            if new:
                return translate("Application", "The data file and its backups have a passphrase")
            return translate("Application", "The data file and its backups have no passphrase")

        self._alone(keeping, change, new)

    # Erasing

    def _erase(self) -> None:
        from views.erase_question import EraseQuestion

        record, window = self._desk.record, self._desk.window
        chosen = window.roster.trainee_id if window is not None else None
        if record is None or not record.attached:
            return
        if chosen is None:
            record.say(translate("Application", "Choose a trainee first."))
            return
        name = record.repository.trainee(chosen).name
        question = EraseQuestion(self._theme, name)
        question.confirmed.connect(lambda: self._erase_now(chosen, name))
        self._ask(question)

    def _erase_now(self, trainee_id: int, name: str) -> None:
        keeping = self._keeping()

        def erase() -> str:
            erased = keeping.erase(trainee_id, name)
            if erased.left:
                text = translate("Application", "These copies still hold everything: {names}")
                return text.format(names=", ".join(path.name for path, _ in erased.left))
            text = translate("Application", "Erased from the data file and {count} copies")
            if erased.mentions:
                text = translate(
                    "Application",
                    "Erased from the data file and {count} copies; the name still stands in texts "
                    "of others",
                )
            return text.format(count=len(erased.rewritten) + len(erased.removed))

        self._alone(keeping, erase, keeping.passphrase)

    # The lock

    def lock_after(self, minutes: int) -> None:
        """Lock after so many idle minutes from now on; 0 is never."""
        if minutes == 0 and self._watch is None:
            return
        from views.lock_panel import IdleWatch

        if self._watch is None:
            self._watch = IdleWatch(self)
            self._watch.idle.connect(self.lock)
        self._watch.wait(minutes)

    def lock(self) -> None:
        """Cover the window until the passphrase is typed."""
        window = self._desk.window
        if window is None or self.lock_panel is not None:
            return
        from views.lock_panel import LockPanel

        self.lock_panel = LockPanel(self._theme, window, self._passphrase())
        self.lock_panel.opened.connect(self._opened)

    def _opened(self) -> None:
        self.lock_panel = None

    # Shared

    def _serve(self, wish: str) -> None:
        acts: dict[str, Callable[[], None]] = {
            "backups": self.show_backups,
            "take over": self.take_over,
            "passphrase": self._change_passphrase,
            "erase": self._erase,
            "lock": self.lock,
        }
        if wish in acts:
            acts[wish]()
            return
        minutes = int(wish.removeprefix("lock after "))
        self._settings.lock_minutes = minutes
        self.lock_after(minutes)

    def _ask(self, question: QDialog) -> None:
        if self.question is not None:
            self.question.close()
            self.question.deleteLater()
        self.question = question
        question.show()

    def _passphrase(self) -> str:
        record = self._desk.record
        if record is None or not record.attached:
            return ""
        return record.repository.database.passphrase

    def _keeping(self) -> SafeKeeping:
        from desktop.planning.safe_keeping import SafeKeeping

        return SafeKeeping(self._path, paths.backups_of(self._path), passphrase=self._passphrase())

    def _alone(self, keeping: SafeKeeping, act: Callable[[], str], passphrase: str) -> None:
        """Do something with the file while nobody has it open here, and open it again."""
        from views.sentences import worded  # only where something went wrong

        self._desk.close()
        try:
            said = act()
        except StoreError as error:
            said, passphrase = f"{worded(error)} {worded(error.remedy)}", keeping.passphrase
        self._reopen(keeping.path, passphrase, said)

    def _reopen(self, path: Path, passphrase: str, said: str) -> None:
        if self._desk.open(path, passphrase=passphrase) and self._desk.record is not None:
            self._desk.record.say(said)
