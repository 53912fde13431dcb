"""The easier week: when it is due, what it asks, what comes after it, and those that were."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from decimal import Decimal

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from desktop.planning.clearance import clearance_needed
from desktop.planning.deload_effect import effect_of
from desktop.planning.deload_plan import (
    DeloadBasis,
    DeloadProposal,
    eased_as,
    moved,
    plan_of,
    proposal_of,
)
from desktop.planning.history import History
from desktop.planning.load_export import ahead_table
from desktop.planning.schedule import deload_windows
from desktop.training.trainee import DeloadWindow
from views import words
from views.blocks import Block, Label, MainButton, Page, WordButton
from views.captioned import Captioned
from views.deload_days import DeloadDays
from views.deload_list import DeloadList
from views.deload_texts import (
    later_sentences,
    proposal_sentence,
    signals_sentence,
    sources_text,
    stopped_sentence,
    window_text,
)
from views.deload_weeks import DeloadWeeks
from views.flow_layout import FieldFlow, together
from views.load_part import LoadPart
from views.number_fields import FieldError, NumberField, WholeField
from views.numbers_saving import Numbers, NumbersSaving
from views.record import MessageKind, Record
from views.terms import Term, explain
from views.theme import Theme

_SHOWN = 8
"""So many windows are listed, the latest ones."""


class DeloadPart(LoadPart):
    """Plans one easier week of one trainee. Saving it is one act."""

    def __init__(self, record: Record, today: date, theme: Theme) -> None:
        super().__init__()
        self._record, self._today, self._theme = record, today, theme
        self._history: History | None = None
        self._proposal: DeloadProposal | None = None
        self._window: DeloadWindow | None = None
        self._stopped = False
        self.sentence = Label(size="answer", wrap=True)
        explain(self.sentence, Term.DELOAD)
        self.days = Label(size="asked")
        self.earlier = WordButton(self.tr("A week earlier"), "Alt+Left")
        self.later = WordButton(self.tr("A week later"), "Alt+Right")
        self.weeks = DeloadWeeks(theme)
        self.numbers = WordButton(self.tr("Numbers…"), "Ctrl+S")
        self.saving = NumbersSaving(self, record, self.numbers_shown)
        self.factor = NumberField(self.tr("Sets times"), Decimal("0.2"), 1, optional=False)
        self.percent = NumberField(
            self.tr("Load lower by percent"), 0, 50, decimals=1, optional=False
        )
        self.every = WholeField(self.tr("Weeks between, without a program"), 2, 26, optional=False)
        self.error = FieldError()
        self._note = Label(
            self.tr(
                "These are your settings: they hold for everybody from now on; the weeks between, "
                "where no program says how many."
            ),
            "small",
            "muted",
            wrap=True,
        )
        self.plan = MainButton(self.tr("Plan this week"))
        self.signals = Label(tone="muted", wrap=True)
        self.why = WordButton(self.tr("Sources"))
        self.sources = Label(sources_text(), "small", "muted", wrap=True)
        self.slots = DeloadDays(theme)
        self.after = Label(wrap=True)
        self.past = DeloadList(theme, today)
        self._assemble()
        self._connect()

    @property
    def shown(self) -> DeloadWindow | None:
        """The easier week as it stands on the screen, saved or not."""
        return self._window

    def begin(self) -> None:
        """Put the cursor on the weeks, where the arrows move the easier one."""
        self.weeks.setFocus(Qt.FocusReason.OtherFocusReason)

    # Showing

    def show_history(self, history: History) -> None:
        """Show a trainee; a week that was moved and not planned yet stays where it was moved."""
        proposal = proposal_of(history, self._today)
        kept = self._moved_before(history, proposal)
        self._history, self._proposal = history, proposal
        by_program = proposal.basis is DeloadBasis.PROGRAM and kept is None
        window = kept or proposal.window
        self._window = window if by_program else eased_as(history, window)
        settings = history.library.settings
        self.factor.set_value(Decimal(str(settings.deload_sets_factor)))
        self.percent.set_value(Decimal(str(settings.deload_load_percent)))
        self.every.set_value(settings.deload_every_weeks)
        self._stopped = clearance_needed(history, self._today) is not None
        for block in (self._board, self.slots):
            block.setVisible(not self._stopped)
        said = stopped_sentence() if self._stopped else proposal_sentence(proposal, self._today)
        self.sentence.setText(said)
        self.signals.setText(signals_sentence(proposal.signals, proposal.needed))
        windows = sorted(deload_windows(history), key=lambda one: one.first, reverse=True)
        self.past.show_effects([effect_of(history, w, self._today) for w in windows[:_SHOWN]])
        self._show_window()

    def _moved_before(self, history: History, proposal: DeloadProposal) -> DeloadWindow | None:
        """The week where the coach has moved it without planning it yet; None where the proposal
        is another one now.
        """
        before, here = self._proposal, self._window
        if before is None or here is None or self._history is None:
            return None
        same = (
            self._history.trainee_id == history.trainee_id
            and before.window.id == proposal.window.id
            and before.window.first == proposal.window.first
            and here.first != before.window.first
        )
        return replace(proposal.window, first=here.first, last=here.last) if same else None

    def _show_window(self) -> None:
        history, window, proposal = self._history, self._window, self._proposal
        if history is None or window is None or proposal is None:
            return
        made = plan_of(history, window, self._today)
        unit = history.trainee.unit
        self.days.setText(window_text(window, self._today))
        self.weeks.show_weeks(made.weeks, window, self._today)
        self.weeks.setVisible(bool(made.weeks))
        self.slots.show_days(made.days, unit, self._today)
        self.after.setText("\n".join(later_sentences(made, unit)))
        self._after.setVisible(bool(made.weeks) and not self._stopped)
        asked = self._what_to_do(window, proposal)
        self.plan.setText(asked)
        self.plan.setAccessibleName(asked)
        self.plan.setEnabled(not self._stands(window, proposal))

    def _stands(self, window: DeloadWindow, proposal: DeloadProposal) -> bool:
        """Whether the week is on record just so."""
        there = proposal.basis in (DeloadBasis.RECORDED, DeloadBasis.PROGRAM)
        return there and window == proposal.window

    def _what_to_do(self, window: DeloadWindow, proposal: DeloadProposal) -> str:
        if self._stands(window, proposal):
            by_program = proposal.basis is DeloadBasis.PROGRAM
            return self.tr("In the program") if by_program else self.tr("Planned")
        if window.id is None:
            return self.tr("Plan this week")
        same_days = window.first == proposal.window.first
        return self.tr("Ease it so") if same_days else self.tr("Move it here")

    # Doing

    def numbers_shown(self) -> Numbers | None:
        history, window = self._history, self._window
        if history is None or window is None:
            return None
        table = ahead_table(plan_of(history, window, self._today))
        title = self.tr("Deload of {name}").format(name=history.trainee.name)
        name = f"{title} {window.first.isoformat()}"
        return Numbers(name, ((self.tr("Weeks to come"), table),), (table,))

    def move_by(self, weeks: int) -> None:
        """Move the week; it is kept only when it is planned."""
        if self._window is None or self._history is None:
            return
        there = moved(self._window, weeks, self._today)
        if there == self._window:
            self._record.say(self.tr("It cannot begin before this week."), MessageKind.NOTE)
            return
        self._window = eased_as(self._history, there)
        self._show_window()

    def accept(self) -> None:
        """Save the week as it stands, as one act."""
        window, history = self._window, self._history
        if window is None or history is None or self._stopped or not self.plan.isEnabled():
            return
        act = self.tr("Plan a deload for {name}").format(name=history.trainee.name)
        clash = next(
            (
                one
                for one in history.deloads
                if one.id != window.id and one.first <= window.last and window.first <= one.last
            ),
            None,
        )
        if clash is not None:
            text = self.tr("There is a deload already: {days}.")
            self._record.say(text.format(days=window_text(clash, self._today)), MessageKind.ERROR)
            return
        if self._record.save(act, window):
            said = self.tr("Deload {days} for {name}").format(
                days=window_text(window, self._today), name=history.trainee.name
            )
            self._record.say(said, MessageKind.DONE)

    def _remove(self, window: DeloadWindow) -> None:
        text = self.tr("Remove the deload from {day}")
        act = text.format(day=words.short_day(window.first, self._today))
        if self._record.remove(act, window):
            self._record.say(act, MessageKind.DONE)

    def _save_settings(self) -> None:
        factor, percent, every = self.factor.value, self.percent.value, self.every.whole
        if self._history is None or every is None:
            return
        if not isinstance(factor, Decimal) or not isinstance(percent, Decimal):
            return
        settings = self._record.repository.coach_settings()
        wanted = replace(
            settings,
            deload_sets_factor=float(factor),
            deload_load_percent=float(percent),
            deload_every_weeks=every,
        )
        if wanted != settings:
            self._record.save(self.tr("How deloads ease"), wanted)

    def _show_error(self, text: str) -> None:
        """What is wrong stands in place of what the fields are."""
        self.error.setVisible(bool(text))
        self._note.setVisible(not text)

    # Putting together

    def _connect(self) -> None:
        self.earlier.clicked.connect(lambda: self.move_by(-1))
        self.later.clicked.connect(lambda: self.move_by(1))
        self.weeks.moved.connect(self.move_by)
        self.numbers.clicked.connect(lambda: self.saving.ask_how(self.numbers))
        self.weeks.accepted.connect(self.accept)
        self.plan.clicked.connect(self.accept)
        self.past.removed.connect(self._remove)
        self.why.clicked.connect(lambda: self.sources.setVisible(self.sources.isHidden()))
        for field in (self.factor, self.percent, self.every):
            field.committed.connect(self._save_settings)
            field.bind_error(self.error)
            field.error_changed.connect(self._show_error)
        save = QShortcut(QKeySequence("Ctrl+Return"), self)
        save.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        save.activated.connect(self.accept)

    def _assemble(self) -> None:
        page = Page(self._theme)
        self._after = Block(self._theme)
        self._after.body.addWidget(Label(self.tr("The weeks after it"), "heading"))
        self._after.body.addWidget(self.after)
        self._board = self._week_block()
        for widget in (self.sentence, self._board, self.slots, self._after, self.past):
            page.body.addWidget(widget)
        page.body.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(page)

    def _week_block(self) -> Block:
        theme = self._theme
        block = Block(theme)
        head = QWidget()
        words_in_line = FieldFlow(theme.grid(), theme.px(2), head, centred=True)
        self.days.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        ways = QHBoxLayout()
        ways.addWidget(self.earlier)
        ways.addWidget(self.later)
        for widget in (self.days, together(ways)):
            words_in_line.addWidget(widget)
        block.body.addWidget(head)
        legend = QHBoxLayout()
        explained = self.tr("Sets a week, eased over usual; hatched: deload")
        legend.addWidget(Label(explained, "small", "muted", wrap=True), 1)
        legend.addWidget(self.numbers)
        block.body.addLayout(legend)
        block.body.addWidget(self.weeks)
        fields = QWidget()
        flow = FieldFlow(theme.grid(2), theme.px(4), fields)
        for caption, field in (
            (self.tr("sets ×"), self.factor),
            (self.tr("load lower by %"), self.percent),
            (self.tr("weeks between"), self.every),
        ):
            flow.addWidget(Captioned(theme, caption, field, 72))
        gap = QWidget()
        gap.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        flow.addWidget(gap)
        flow.addWidget(self.plan)
        block.body.addWidget(fields)
        block.body.addWidget(self._note)
        policy = self.error.sizePolicy()
        policy.setRetainSizeWhenHidden(False)
        self.error.setSizePolicy(policy)
        self.error.hide()
        block.body.addWidget(self.error)
        foot = QHBoxLayout()
        foot.addWidget(self.signals, 1)
        foot.addWidget(self.why, 0, Qt.AlignmentFlag.AlignTop)
        block.body.addLayout(foot)
        self.sources.hide()
        block.body.addWidget(self.sources)
        return block
