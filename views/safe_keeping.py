"""The backups in a panel: which there are, and what going back to one would change."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QCoreApplication, QLocale, Qt, Signal
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QListWidget,
    QListWidgetItem,
    QVBoxLayout,
    QWidget,
)

from db.errors import StoreError
from desktop.planning.safe_keeping import Backup, Contents, Difference, Preview, SafeKeeping
from views import words
from views.blocks import Label, MainButton, Page, WordButton
from views.sentences import worded
from views.theme import Theme

translate = QCoreApplication.translate


class SafeKeepingPanel(QDialog):
    """``restore_wanted(Backup)`` when the coach wants to go back to one; the panel closes itself.

    ``trouble`` is what is wrong with the present file, if that is why the panel is shown.
    """

    restore_wanted = Signal(object)

    def __init__(
        self,
        theme: Theme,
        keeping: SafeKeeping,
        today: date,
        trouble: str = "",
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._theme, self._keeping, self._today = theme, keeping, today
        self._backups: tuple[Backup, ...] = ()
        self.setWindowTitle(self.tr("Backups"))
        self.setModal(False)
        self.setAttribute(Qt.WidgetAttribute.WA_QuitOnClose)
        self.list = QListWidget()
        self.list.setAccessibleName(self.tr("Backups, the newest first"))
        self.list.currentRowChanged.connect(self._show)
        self.then = Label(wrap=True)
        self.changes = Label(wrap=True)
        self.go_back = MainButton(self.tr("Go back to this backup"))
        self.go_back.clicked.connect(self._go_back)
        self.closing = WordButton(self.tr("Close"))
        self.closing.clicked.connect(self.close)
        self._assemble(trouble)
        self._offer(bool(trouble))

    def _assemble(self, trouble: str) -> None:
        theme = self._theme
        column = QVBoxLayout(self)
        edge = theme.grid(3)
        column.setContentsMargins(edge, edge, edge, edge)
        column.setSpacing(theme.px(12))
        column.addWidget(Label(trouble or self.tr("Backups"), "heading", wrap=True))
        where = self.tr(
            "A copy of everything is made on closing, and kept for the last 7 days, 4 weeks and 12"
            " months. The copies lie in {folder}. What is there now is copied before anything is"
            " put in its place."
        )
        column.addWidget(Label(where.format(folder=self._keeping.folder), wrap=True))
        page = Page(theme)
        page.body.addWidget(self.then)
        page.body.addWidget(self.changes)
        page.body.addStretch(1)
        middle = QHBoxLayout()
        middle.setSpacing(theme.grid(2))
        middle.addWidget(self.list, 1)
        middle.addWidget(page, 2)
        column.addLayout(middle, 1)
        foot = QHBoxLayout()
        foot.addStretch(1)
        foot.addWidget(self.closing)
        foot.addWidget(self.go_back)
        column.addLayout(foot)
        self.resize(theme.grid(100), theme.grid(60))

    def _offer(self, damaged: bool) -> None:
        try:
            self._backups = self._keeping.backups()
        except StoreError as error:
            self._say(f"{worded(error)} {worded(error.remedy)}")
            return
        for backup in self._backups:
            self.list.addItem(QListWidgetItem(_named(backup)))
        if not self._backups:
            self._say(self.tr("There is no backup yet."))
            return
        good = self._keeping.newest_good() if damaged else None
        self.list.setCurrentRow(self._backups.index(good) if good else 0)
        self.list.setFocus()

    def _show(self, row: int) -> None:
        if row < 0:
            return
        try:
            seen = self._keeping.preview(self._backups[row])
        except StoreError as error:
            self._say(worded(error))
            return
        self.then.setText(contents_text(seen.then, self._today))
        self.changes.setText(changes_text(seen))
        self.go_back.setEnabled(True)

    def _say(self, why_not: str) -> None:
        self.then.setText(why_not)
        self.changes.setText("")
        self.go_back.setEnabled(False)

    def _go_back(self) -> None:
        backup = self._backups[self.list.currentRow()]
        self.close()
        self.restore_wanted.emit(backup)


def contents_text(contents: Contents, today: date) -> str:
    """ "In it: 12 trainees, 340 sessions, the last on Monday 2 March"."""
    text = translate("SafeKeeping", "In it: {trainees}, {sessions}.")
    if contents.last_session is not None:
        text = translate("SafeKeeping", "In it: {trainees}, {sessions}, the last of {day}.")
    return text.format(
        trainees=trainees_text(contents.trainees),
        sessions=sessions_text(contents.sessions),
        day=words.short_day(contents.last_session or today, today),
    )


def changes_text(seen: Preview) -> str:
    """What going back would change, a line for each trainee."""
    if seen.now is None:
        return translate(
            "SafeKeeping", "The present file cannot be read, so it cannot be compared with it."
        )
    lines = [_difference_text(one) for one in seen.differences]
    if seen.programs:
        lines.append(translate("SafeKeeping", "Programs change back."))
    if not lines:
        return translate("SafeKeeping", "It holds the same as the present file.")
    return "\n".join([translate("SafeKeeping", "Going back to it would change:"), *lines])


def _difference_text(one: Difference) -> str:
    others = one.others_lost + one.others_back + one.others_changed
    parts = [
        (one.sessions_lost, translate("SafeKeeping", "{sessions} lost")),
        (one.sessions_back, translate("SafeKeeping", "{sessions} come back")),
        (one.sessions_changed, translate("SafeKeeping", "{sessions} as they were before")),
    ]
    said = [text.format(sessions=sessions_text(count)) for count, text in parts if count]
    if others == 1:
        said.append(translate("SafeKeeping", "1 other fact goes, comes back or changes"))
    elif others:
        text = translate("SafeKeeping", "{count} other facts go, come back or change")
        said.append(text.format(count=words.number(others)))
    return f"{one.trainee}: {'; '.join(said)}"


def _named(backup: Backup) -> str:
    size = QLocale().formattedDataSize(backup.size)
    return f"{words.full_day(backup.day)}{words.DOT}{size}"


def trainees_text(count: int) -> str:
    """So many trainees."""
    if count == 1:
        return translate("SafeKeeping", "1 trainee")
    return translate("SafeKeeping", "{count} trainees").format(count=words.number(count))


def sessions_text(count: int) -> str:
    """So many sessions."""
    if count == 1:
        return translate("SafeKeeping", "1 session")
    return translate("SafeKeeping", "{count} sessions").format(count=words.number(count))
