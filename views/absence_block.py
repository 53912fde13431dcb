"""Days away of a trainee: those on record, what they change, and a form for further ones."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from functools import partial

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from db.errors import StoreError
from desktop.planning.absences import next_session
from desktop.planning.history import read_history
from desktop.planning.schedule import DAY
from desktop.training.trainee import Absence, Trainee
from views import words
from views.absence_form import AbsenceForm
from views.absence_texts import absence_text, next_text, what_it_changes
from views.blocks import Block, Label
from views.listed_row import Act, ListedRow
from views.record import MessageKind, Record
from views.tab_order import put_before
from views.theme import Theme

_SHOWN = 6
"""So many are listed, the latest ones."""


class AbsenceBlock(Block):
    """Each change is one act that can be undone; what it changes stands there at once."""

    def __init__(self, record: Record, today: date, theme: Theme) -> None:
        super().__init__(theme)
        self._record, self._today, self._look = record, today, theme
        self._trainee: Trainee | None = None
        self.rows: list[QWidget] = []
        self.form = AbsenceForm(theme, today)
        self.changes = Label(tone="muted", wrap=True)
        self.effect = Label(wrap=True)
        self._none = Label(
            self.tr("None on record. Note an illness or a journey, and the gap explains itself."),
            tone="muted",
            wrap=True,
        )
        self._list = QVBoxLayout()
        self._list.setSpacing(theme.px(2))
        self.body.addWidget(Label(self.tr("Days away"), "heading"))
        self.body.addWidget(self.changes)
        self.body.addLayout(self._list)
        self.body.addWidget(self._none)
        self.body.addWidget(self.effect)
        self.body.addWidget(self.form)
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.timeout.connect(self._say_effect)
        self.form.wanted.connect(self._take)

    def show_trainee(self, trainee: Trainee | None) -> None:
        """Show a trainee's days away; None: nobody yet."""
        same = self._trainee is not None and trainee is not None and self._trainee.id == trainee.id
        self._trainee = trainee
        store = self._record.repository
        self.changes.setText(what_it_changes(store.coach_settings().progression))
        known = store.absences(trainee.id) if trainee is not None and trainee.id else ()
        self.form.show_known(trainee.id or 0 if trainee else 0, known)
        self._show_rows(known)
        if not same:
            self.effect.setText("")
        # What comes next is reckoned from the whole record: not before the rest is seen.
        recent = any((one.last or self._today) >= self._today - 60 * DAY for one in known)
        self.effect.setVisible(recent)
        if recent:
            self._later.start(0)
        else:
            self._later.stop()

    def _show_rows(self, known: Sequence[Absence]) -> None:
        for row in self.rows:
            row.hide()
            row.deleteLater()
        self.rows = [self._row(one) for one in reversed(known[-_SHOWN:])]
        for row in self.rows:
            self._list.addWidget(row)
        put_before(self.form.kind, [b for row in self.rows for b in row.findChildren(QPushButton)])
        self._none.setVisible(not known)

    def _row(self, absence: Absence) -> QWidget:
        acts: list[Act] = [
            (self.tr("Change"), "", partial(self.form.change, absence)),
            (self.tr("Remove"), "muted", partial(self._remove, absence)),
        ]
        if absence.last is None and absence.first < self._today:
            acts.insert(0, (self.tr("Back since today"), "", partial(self._end, absence)))
        text = absence_text(absence, self._today)
        return ListedRow(self._look, text, absence.note, acts)

    def _say_effect(self) -> None:
        trainee = self._trainee
        if trainee is None or trainee.id is None:
            return
        try:
            history = read_history(self._record.repository, trainee.id)
        except StoreError as error:
            self._record.reported(error)
            return
        self.effect.setText(
            next_text(next_session(history, self._today), trainee.unit, self._today)
        )

    # Doing

    def _take(self, absence: Absence) -> None:
        if self._keep(absence):
            self.form.clear()
            self.form.begin()

    def _keep(self, absence: Absence) -> bool:
        if self._trainee is None:
            return False
        text = self.tr("{name}: {absence}").format(
            name=self._trainee.name, absence=absence_text(absence, self._today)
        )
        if not self._record.save(text, absence):
            return False
        self._record.say(" ".join((f"{text}.", self._done(absence))).strip(), MessageKind.DONE)
        return True

    def _done(self, absence: Absence) -> str:
        """That sessions are on record within the days noted."""
        last = absence.last or self._today
        within = self._record.repository.sessions(absence.trainee_id, absence.first, last)
        if not within:
            return ""
        if len(within) == 1:
            return self.tr("A session of these days is on record; it counts as ever.")
        text = self.tr("{count} sessions of these days are on record; they count as ever.")
        return text.format(count=words.number(len(within)))

    def _end(self, absence: Absence) -> None:
        self._keep(replace(absence, last=max(absence.first, self._today - DAY)))

    def _remove(self, absence: Absence) -> None:
        text = self.tr("Remove: {absence}").format(absence=absence_text(absence, self._today))
        if self._record.remove(text, absence):
            self._record.say(text, MessageKind.DONE)
            self.form.begin()
