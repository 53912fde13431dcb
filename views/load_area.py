"""Week and load: how much a trainee does, when an easier week comes, and what speaks for care."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import Final

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QStackedWidget, QWidget

from db.errors import StoreError
from desktop.planning.caution_ways import WayKind
from desktop.planning.history import History, read_history
from desktop.training.limits import Proposal
from desktop.training.recovery import Caution
from views.blocks import Label, WordButton
from views.caution_part import CautionPart
from views.choice_row import Choice, ChoiceRow
from views.deload_part import DeloadPart
from views.elided_label import ElidedLabel
from views.flow_layout import FlowLayout
from views.load_part import LoadPart
from views.load_texts import week_span, week_title
from views.load_week import LoadWeek
from views.record import Record
from views.theme import Theme
from views.work_area import WorkArea
from views.work_areas import CAUTIONS as CAUTIONS
from views.work_areas import DELOAD as DELOAD
from views.work_areas import WEEK as WEEK

_PARTS: Final = {
    Proposal.PLAN_A_DELOAD: DELOAD,
    Proposal.VARY_THE_DAYS: WEEK,
    Proposal.RECORD_ACTIVITIES: WEEK,
}
_WAYS: Final = {
    WayKind.PLANNER: DELOAD,
    WayKind.WEEK: WEEK,
    WayKind.ACTIVITIES: WEEK,
    WayKind.CLEARANCE: CAUTIONS,
}


class LoadArea(WorkArea):
    """One trainee: the week, the easier week to come, and cautions, one at a time."""

    def __init__(
        self, record: Record, today: date, theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(record, today, theme, parent)
        self._history: History | None = None
        self.title = Label(size="title")
        self.detail = ElidedLabel(tone="muted")
        self.earlier = WordButton("\N{SINGLE LEFT-POINTING ANGLE QUOTATION MARK}")
        self.later = WordButton("\N{SINGLE RIGHT-POINTING ANGLE QUOTATION MARK}")
        self.parts = ChoiceRow(theme, self.tr("What is shown"), self)
        self.week = LoadWeek(record, today, theme)
        self.deload = DeloadPart(record, today, theme)
        self.cautions = CautionPart(record, today, theme)
        self.stack = QStackedWidget()
        self._built: dict[str, LoadPart] = {
            WEEK: self.week,
            DELOAD: self.deload,
            CAUTIONS: self.cautions,
        }
        for part in self._built.values():
            self.stack.addWidget(part)
        self._assemble()
        self._connect()

    def refresh(self) -> None:
        """Read the trainee again and show what is chosen."""
        if self.trainee_id is None:
            return
        try:
            self._history = read_history(self.record.repository, self.trainee_id)
        except StoreError as error:
            self.record.reported(error)
            return
        self._show()

    def keys(self) -> Sequence[tuple[str, str]]:
        """What keys do in the part that is shown."""
        if self.parts.code == WEEK:
            return ((self.tr("A week earlier or later"), "Ctrl+PgUp, Ctrl+PgDown"),)
        if self.parts.code == DELOAD:
            return (
                (self.tr("The deload earlier or later"), "Alt+Left, Alt+Right"),
                (self.tr("Plan it"), "Ctrl+Return"),
            )
        return ()

    def show_part(self, code: str) -> None:
        """Show the week, the deload or the cautions; the arrows move the deload at once."""
        self.parts.choose(code)
        self._show()
        if code == DELOAD:
            self.deload.begin()

    def take_up(self, caution: Caution) -> None:
        """Show what can be done about a caution, with the cursor there."""
        self.show_part(_PARTS.get(caution.proposal, CAUTIONS))
        if caution.proposal is Proposal.RECORD_ACTIVITIES:
            self.week.ask_what_is_recorded()
        elif self.parts.code == CAUTIONS:
            self.cautions.show_caution(caution)

    def follow(self, caution: Caution, kind: WayKind) -> None:
        """Go where a way leads that changes nothing by itself, and ends in this area."""
        self.show_part(_WAYS[kind])
        if kind is WayKind.ACTIVITIES:
            self.week.ask_what_is_recorded()
        elif kind is WayKind.CLEARANCE:
            self.cautions.ask_clearance(caution)

    def leave(self) -> None:
        """Something else will be shown."""
        for part in self._built.values():
            part.leave()

    def _show(self) -> None:
        """Fill the part that is chosen; the others are filled when they are."""
        if self._history is None:
            return
        part = self._built[self.parts.code]
        self.stack.setCurrentWidget(part)
        for button in (self.earlier, self.later):
            button.setVisible(part is self.week)
        part.show_history(self._history)
        if part is not self.week:
            deload = part is self.deload
            self.title.setText(self.tr("Deload") if deload else self.tr("Cautions"))
            self.detail.say(self._history.trainee.name)

    def _say_week(self) -> None:
        week = self.week.week
        if week is None or self._history is None:
            return
        self.title.setText(week_title(week, self.today))
        self.detail.say(f"{self._history.trainee.name}, {week_span(week, self.today)}")

    def _assemble(self) -> None:
        head = QWidget()
        self._head = FlowLayout(head)
        arrows = QWidget()
        row = QHBoxLayout(arrows)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self.earlier)
        row.addWidget(self.later)
        self.detail.setMinimumWidth(self.theme.grid(12))
        for widget in (self.title, self.detail, arrows, self.parts):
            self._head.addWidget(widget)
        self._head.setAlignment(self.parts, Qt.AlignmentFlag.AlignRight)
        self.parts.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        arrows.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self._space()
        self.theme.changed.connect(self._space)
        self.earlier.setAccessibleName(self.tr("A week earlier"))
        self.later.setAccessibleName(self.tr("A week later"))
        self.outer.addWidget(head)
        self.outer.addWidget(self.stack, 1)

    def _space(self) -> None:
        edge = self.theme.grid(3)
        self._head.setContentsMargins(edge, self.theme.grid(2), edge, 0)
        self._head.setSpacing(self.theme.grid(3))

    def _connect(self) -> None:
        self.parts.offer(
            (
                Choice(WEEK, self.tr("Week"), "W"),
                Choice(DELOAD, self.tr("Deload"), "D"),
                Choice(CAUTIONS, self.tr("Cautions"), "C"),
            ),
            WEEK,
        )
        self.parts.chosen.connect(lambda _code: self._show())
        self.week.week_changed.connect(self._say_week)
        self.cautions.part_wanted.connect(self.follow)
        for part in self._built.values():
            part.area_wanted.connect(self.area_wanted)
            part.session_wanted.connect(self.session_wanted)
        for key, by, button in (
            ("Ctrl+PgUp", -1, self.earlier),
            ("Ctrl+PgDown", 1, self.later),
        ):
            shortcut = QShortcut(QKeySequence(key), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(lambda by=by: self.week.step(by))
            button.clicked.connect(lambda _on=False, by=by: self.week.step(by))
