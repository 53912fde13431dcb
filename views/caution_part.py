"""Cautions of one trainee: those that are open with what can be done, and what was set aside."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtWidgets import QApplication, QHBoxLayout, QVBoxLayout, QWidget

from db.errors import StoreError
from desktop.planning.briefs import standings_in_use
from desktop.planning.caution_ways import Way
from desktop.planning.cautions import cautions_of, dismissal
from desktop.planning.history import History
from desktop.planning.set_aside import SetAside, Standing, set_aside
from desktop.training.limits import Proposal, Severity
from desktop.training.recovery import Caution
from desktop.training.trainee import Clearance, DismissedCaution
from views import words
from views.blocks import Block, Label, Page, WordButton, rule
from views.caution_acts import sentence_of, take, words_of
from views.caution_row import CautionRow
from views.caution_seen import CautionsSeen
from views.clearance_form import cleared
from views.general_caution import general_caution
from views.load_part import LoadPart
from views.record import MessageKind, Record
from views.theme import Theme
from views.way_texts import AREAS


class CautionPart(LoadPart):
    """``part_wanted(Caution, WayKind)`` where a way leads to another part of the area."""

    part_wanted = Signal(object, object)

    def __init__(self, record: Record, today: date, theme: Theme) -> None:
        super().__init__()
        self._record, self._today, self._theme = record, today, theme
        self._history: History | None = None
        self.setAccessibleName(QCoreApplication.translate("LoadArea", "Cautions"))
        self.sentence = Label(size="answer", wrap=True)
        self.rows: list[CautionRow] = []
        self._open = QVBoxLayout()
        self._open.setSpacing(theme.px(12))
        self._aside = Block(theme)
        self._list = QVBoxLayout()
        self.past: list[QWidget] = []
        self.seen = CautionsSeen(record, today, theme)
        self._assemble()

    # Showing

    def show_history(self, history: History) -> None:
        """Show a trainee's cautions."""
        self._history = history
        standings = standings_in_use(history, self._today, evening=True)
        found = cautions_of(history, self._today, standings)
        aside = set_aside(history, self._today)
        self._fill(found, history)
        self._fill_aside(aside, history)
        self.sentence.setText(self._counted(found, aside))
        self.seen.show_history(history)

    def leave(self) -> None:
        """Something else is shown: read the past no further."""
        self.seen.leave()

    def show_caution(self, caution: Caution) -> None:
        """Put the cursor on what can be done about ``caution``."""
        for row in self.rows:
            if (row.caution.limit, row.caution.line_id) == (caution.limit, caution.line_id):
                first = row.ways[0] if row.ways else row.aside
                first.setFocus(Qt.FocusReason.OtherFocusReason)
                if caution.proposal is Proposal.RECORD_CLEARANCE:
                    row.ask_clearance()
                return

    def ask_clearance(self, caution: Caution) -> None:
        """Open the form for a clearance of ``caution``, with the cursor in it."""
        for row in self.rows:
            if (row.caution.limit, row.caution.line_id) == (caution.limit, caution.line_id):
                row.ask_clearance()
                return

    def _counted(self, found: Sequence[Caution], aside: Sequence[SetAside]) -> str:
        if not found and not aside:
            return self.tr("Nothing speaks against asking more.")
        stops = sum(each.severity is Severity.STOP for each in found)
        if stops:
            return self.tr("Something stops the training; it is cleared, never set aside.")
        if not found:
            return self.tr("Nothing is open.")
        if len(found) == 1:
            return self.tr("One caution is open.")
        return self.tr("{count} cautions are open.").format(count=len(found))

    def _fill(self, found: Sequence[Caution], history: History) -> None:
        focus = QApplication.focusWidget()
        acted = focus is not None and any(row.isAncestorOf(focus) for row in self.rows)
        if acted:
            self.setFocus(Qt.FocusReason.OtherFocusReason)  # it goes no further than this screen
        for row in self.rows:
            self._open.removeWidget(row)
            row.hide()
            row.deleteLater()
        self.rows = [self._row(caution, history) for caution in found]
        for row in self.rows:
            self._open.addWidget(row)

    def _row(self, caution: Caution, history: History) -> CautionRow:
        shown = words_of(self._record, history, caution, self._today)
        row = CautionRow(self._theme, self._today, shown)
        row.taken.connect(self._take)
        row.dismissed.connect(self._set_aside)
        row.session_wanted.connect(self.session_wanted)
        row.cleared.connect(self._clear)
        return row

    def _fill_aside(self, aside: Sequence[SetAside], history: History) -> None:
        for row in self.past:
            row.hide()
            row.deleteLater()
        self.past = [
            *(self._aside_row(each, history) for each in aside),
            *(self._clearance_row(each) for each in reversed(history.trainee.clearances)),
        ]
        for place, row in enumerate(self.past):
            self._list.insertWidget(place, row)
        self._none.setVisible(not self.past)

    def _aside_row(self, aside: SetAside, history: History) -> QWidget:
        text = sentence_of(self._record, history, aside.caution, self._today)
        text = text[:1].upper() + text[1:]
        state = {
            Standing.HOLDS: self.tr("stays aside"),
            Standing.BACK: self.tr("is open again"),
            Standing.GONE: self.tr("no longer so"),
        }[aside.standing]
        day = words.short_day(aside.dismissed.day, self._today)
        why = aside.dismissed.why or self.tr("no reason given")
        made, head = self._past_row(f"{day}: {why}", text, state)
        if aside.standing is Standing.HOLDS:
            again = WordButton(self.tr("Take it up again"))
            again.setAccessibleName(self.tr("Take up again: {text}").format(text=text))
            again.clicked.connect(lambda _on=False: self._take_up(aside.dismissed))
            head.addWidget(again)
        return made

    def _clearance_row(self, clearance: Clearance) -> QWidget:
        day = words.short_day(clearance.day, self._today)
        text = self.tr("Cleared by {name}").format(name=clearance.by)
        made, _ = self._past_row(f"{day}: {clearance.note}" if clearance.note else day, text, "")
        return made

    def _past_row(self, detail: str, text: str, state: str) -> tuple[QWidget, QHBoxLayout]:
        made = QWidget()
        column = QVBoxLayout(made)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(self._theme.px(2))
        head = QHBoxLayout()
        head.setSpacing(self._theme.px(12))
        head.addWidget(Label(text, wrap=True), 1)
        head.addWidget(Label(state, tone="muted"))
        column.addWidget(rule())
        column.addLayout(head)
        column.addWidget(Label(detail, "small", "muted", wrap=True))
        return made, head

    # Doing

    def _take(self, caution: Caution, way: Way) -> None:
        history = self._history
        if history is None:
            return
        if way.changed is None:
            area = AREAS.get(way.kind)
            if area is None:
                self.part_wanted.emit(caution, way.kind)
            else:
                self.area_wanted.emit(area)
            return
        take(self._record, history, caution, way, self._today)

    def _set_aside(self, caution: Caution, why: str) -> None:
        if self._history is not None:
            aside = dismissal(caution, self._history.trainee_id, self._today, why)
            self._record.save(self.tr("Set a caution aside"), aside)

    def _take_up(self, dismissed: DismissedCaution) -> None:
        text = self.tr("Take a caution up again")
        if self._record.remove(text, dismissed):
            self._record.say(text, MessageKind.DONE)

    def _clear(self, clearance: Clearance) -> None:
        history = self._history
        if history is None:
            return
        try:
            trainee = self._record.repository.trainee(history.trainee_id)
        except StoreError as error:
            self._record.reported(error)
            return
        text = self.tr("Record the clearance of {name}").format(name=trainee.name)
        if self._record.save(text, cleared(trainee, clearance)):
            self._record.say(text, MessageKind.DONE)

    # Putting together

    def _assemble(self) -> None:
        page = Page(self._theme)
        self._none = Label(
            self.tr(
                "Nothing was set aside. A caution that you set aside is kept here with your "
                "reason; it comes back when what it rests on changes."
            ),
            tone="muted",
            wrap=True,
        )
        self._list.setSpacing(self._theme.grid())
        self._aside.body.addWidget(Label(self.tr("Set aside and cleared"), "heading"))
        self._aside.body.addWidget(self._none)
        self._aside.body.addLayout(self._list)
        page.body.addWidget(self.sentence)
        page.body.addLayout(self._open)
        page.body.addWidget(self._aside)
        page.body.addWidget(self.seen)
        page.body.addStretch(1)
        page.body.addWidget(Label(general_caution(), "small", "muted", wrap=True))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(page)
