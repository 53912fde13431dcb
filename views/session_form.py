"""The session form: what was done, typed from paper by keyboard alone."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date, timedelta
from typing import Final

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QApplication, QStackedWidget, QVBoxLayout, QWidget

from db.errors import StoreError
from desktop.planning.outcomes import LineOutcome
from desktop.planning.past_effects import PastEffect
from desktop.planning.session_days import due_next
from desktop.planning.session_draft import SessionDraft
from desktop.training.position import Position
from desktop.training.trainee import Trainee
from views.draft_keeper import DraftKeeper
from views.effect_panel import EffectPanel
from views.feet import Feet
from views.next_time import NextTime
from views.outcome_foot import OutcomeFoot
from views.record import MessageKind, Record
from views.red_flag import RedFlagBanner
from views.session_desk import Opened, SessionDesk, detail_text
from views.session_heading import SessionHeading
from views.session_keys import session_keys
from views.session_page import SessionPage
from views.session_typing import SessionTyping
from views.session_way import SessionWay
from views.theme import Theme
from views.work_area import WorkArea
from views.work_areas import DAYS_AWAY, DESK, PAST

DAY: Final = timedelta(days=1)


class SessionForm(WorkArea):
    """One trainee's session of one day: typed, saved, and what follows from it."""

    def __init__(
        self, record: Record, today: date, theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(record, today, theme, parent)
        self.desk = SessionDesk(record, today)
        self._day = today
        self._session_id: int | None = None
        self._another = False
        self._busy = False
        self._effect: PastEffect | None = None
        self.heading = SessionHeading(theme, today)
        self.page = SessionPage(theme, today)
        self.typing = SessionTyping(record, self.desk, theme, self.page)
        self.keeper = DraftKeeper(lambda: self._keep(at_work=True), self)
        self.way = SessionWay(record)
        self.outcomes = NextTime(theme, today)
        self.effects = EffectPanel(record, theme, today)
        self.after = OutcomeFoot(theme)
        self._assemble()
        self._connect()
        self._add_keys()
        theme.changed.connect(self._space)
        self._space()

    @property
    def draft(self) -> SessionDraft | None:
        """The session as typed so far."""
        return self.typing.draft

    @property
    def showing_outcomes(self) -> bool:
        """Whether what comes next is shown instead of the cells."""
        return self._middle.currentWidget() is self.outcomes

    # Opening

    def open_day(self, day: date, session_id: int | None = None) -> None:
        """Show the session of another day."""
        self.leave()
        self._day, self._session_id, self._another = day, session_id, False
        self._show_form()
        self._read()
        self.typing.begin()

    def resume(self, draft: SessionDraft) -> None:
        """Show a draft that was left, as it was; it is this trainee's."""
        self.leave()
        opened = self.desk.resume(draft)
        self._day, self._session_id = draft.day, draft.session_id
        self._another = opened.stored is None and any(
            each.day == draft.day for each in opened.history.sessions
        )
        self._show_form()
        self._show_opened(opened)
        self.typing.begin()

    def refresh(self) -> None:
        """Read again; what is typed and not saved stays."""
        if self._busy or self.trainee_id is None:
            return
        focus = QApplication.focusWidget()
        mine = focus is None or self.isAncestorOf(focus) or not focus.isVisible()
        clicked = QApplication.mouseButtons() != Qt.MouseButton.NoButton
        self.desk.forget_undone(self.trainee_id)
        same = self.draft is not None and self.draft.trainee_id == self.trainee_id
        place = self.page.place if same else None
        self.leave()
        if not same:
            self._session_id, self._another = None, False
            self._show_form()
        self._read()
        if self.showing_outcomes:
            self._show_outcomes()
        elif mine or clicked:
            self.typing.begin(place)

    def show_session(self, session_id: int) -> None:
        """Show one session of the trainee."""
        session = self.record.repository.session(session_id)
        self.open_day(session.day, session.id)

    def keys(self) -> Sequence[tuple[str, str]]:
        """What keys do here."""
        return session_keys()

    def leave(self) -> None:
        """Keep what is typed."""
        self.keeper.forget()
        self._keep(at_work=False)

    def _keep(self, *, at_work: bool) -> bool:
        return self.typing.opened is None or self.desk.keep(self.typing.opened, at_work=at_work)

    def _read(self) -> None:
        if self.trainee_id is None:
            return
        try:
            opened = (
                self.desk.open_another(self.trainee_id, self._day)
                if self._another
                else self.desk.open(self.trainee_id, self._day, self._session_id)
            )
        except StoreError as error:
            self.record.reported(error)
            return
        self._session_id = opened.stored.id if opened.stored else None
        self._show_opened(opened)

    def showEvent(self, event: object) -> None:
        super().showEvent(event)
        if not self.showing_outcomes:
            self.typing.begin(self.page.place)

    def _show_opened(self, opened: Opened, *, hidden: bool = False) -> None:
        self.effects.hide()
        self.typing.open(opened, hidden=hidden)
        if opened.changed:
            self.keeper.keep()
        self._say_heading()

    def _say_heading(self) -> None:
        opened = self.typing.opened
        if opened is None:
            return
        draft = opened.draft
        can_fill = any(line.asked for line in draft.lines) and not draft.red_flag
        fillable = can_fill and not self.showing_outcomes
        self.heading.show_day(draft.day, detail_text(opened), can_fill=fillable)
        self._flag.setVisible(draft.red_flag)

    def _typed(self, going_on: bool) -> None:
        self.keeper.typed(going_on)
        self.effects.hide()
        self._say_heading()

    # Other days

    def _another_session(self) -> None:
        """One more session on a day that has one."""
        if self.trainee_id is not None:
            self.leave()
            self._session_id, self._another = None, True
            self._show_form()
            self._read()
            self.typing.act("add")

    # Saving

    def _save(self) -> None:
        """Save, where nothing is wrong or doubtful; of the past say first what it changes."""
        opened = self.typing.opened
        if opened is None or self.showing_outcomes or not self.typing.ready():
            return
        draft = opened.draft
        if draft.day > self.today:
            self.heading.refuse(self.tr("This day has not come yet: today at the latest."))
        elif draft.has_activity and draft.without_activity() == opened.untouched:
            self._add_activity()
        elif opened.stored is not None and not opened.changed:
            self._effect = None
            self._show_outcomes()
        elif opened.stored is None and draft.blank:
            self.record.say(self.tr("Nothing is typed yet."))
        else:
            self._say_effects(opened)

    def _add_activity(self) -> None:
        """Only another activity is typed, or is complete: the session goes on."""
        self._busy = True
        try:
            self.typing.add_activity()
        finally:
            self._busy = False

    def _say_effects(self, opened: Opened) -> None:
        try:
            self._effect = self.desk.effects(opened)
        except StoreError as error:
            self.record.reported(error)
            return
        if self._effect is None:
            self._write()
        else:
            save, correct = self.tr("Save"), self.tr("Save the correction")
            act = save if opened.stored is None else correct
            self.effects.ask(self._effect, opened.history.trainee, act)

    def _write(self) -> None:
        opened = self.typing.opened
        if opened is None:
            return
        self._busy = True
        try:
            saved = self.desk.save(opened)
        finally:
            self._busy = False
        if saved is not None:
            self._session_id, self._another = saved.id, False
            self._show_opened(self.desk.reopened(opened, saved), hidden=True)
            self._show_outcomes()
            self.record.say(self.tr("Saved"), MessageKind.DONE)

    # After saving

    def _show_outcomes(self) -> None:
        opened = self.typing.opened
        stored = opened.stored if opened else None
        if opened is None or stored is None:
            self._show_form()
            self.typing.begin()
            return
        try:
            outcomes = self.desk.outcomes_after(opened)
            told = self.desk.cautions_after(opened)
            starts = self.desk.starts_after(opened)
            following = self._next_due()
        except StoreError as error:
            self.record.reported(error)
            return
        targets = self._effect.targets if self._effect else None
        unit = opened.draft.unit
        if self.desk.stopped(opened):
            self.outcomes.show_stopped(outcomes, told, unit)
        else:
            self.outcomes.show_outcomes(outcomes, told, unit, targets, starts)
        self.after.show_next(following.name if following else "")
        self._middle.setCurrentWidget(self.outcomes)
        self._feet.show_foot(self.after)
        self._say_heading()
        self.outcomes.begin()

    def _next_due(self) -> Trainee | None:
        return due_next(self.record.repository, self._day, self.trainee_id)

    def _go_to_next(self) -> None:
        following = self._next_due()
        self._show_form()
        if following is not None and following.id is not None:
            self.trainee_wanted.emit(following.id)
            self.typing.begin()
        else:
            self.area_wanted.emit(DESK)

    def _back_to_form(self) -> None:
        self._effect = None
        self._show_form()
        self._say_heading()
        self.typing.begin()

    def _override(self, outcome: LineOutcome, position: Position, note: str) -> None:
        """The coach's word: it holds from the last session of the line on."""
        if self.typing.opened is not None:
            self.desk.override(self.typing.opened, outcome, position, note)

    def _remove(self) -> None:
        opened = self.typing.opened
        if opened is not None and self.desk.remove(opened):
            self.record.say(self.tr("Removed. Undo brings it back."), MessageKind.DONE)

    # Parts

    def _assemble(self) -> None:
        self._flag = RedFlagBanner()
        self._above = QVBoxLayout()
        self._above.addWidget(self.heading)
        self._flagged = QVBoxLayout()
        self._flagged.addWidget(self._flag)
        self._above.addLayout(self._flagged)
        self._middle = QStackedWidget()
        self._middle.addWidget(self.page)
        self._middle.addWidget(self.outcomes)
        self._docked = QVBoxLayout()
        self._docked.addWidget(self.typing.choice)
        self._docked.addWidget(self.effects)
        self._feet = Feet(self.typing.foot, self.after)
        self.outer.addLayout(self._above)
        self.outer.addWidget(self._middle, 1)
        self.outer.addLayout(self._docked)
        self.outer.addWidget(self._feet)

    def _show_form(self) -> None:
        self.typing.fill()
        self._middle.setCurrentWidget(self.page)
        self._feet.show_foot(self.typing.foot)

    def _connect(self) -> None:
        self.heading.day_wanted.connect(self.open_day)
        self.way.found.connect(self.open_day)
        self.heading.stepped.connect(lambda days: self.open_day(self._day + days * DAY))
        self.heading.all_as_asked.connect(lambda: self.typing.act("all as asked"))
        self.typing.changed.connect(self._typed)
        self.page.empty.add_wanted.connect(lambda: self._act("add"))
        self.page.empty.next_wanted.connect(
            lambda: self.way.training_day(self.typing.opened, after=True)
        )
        self.page.empty.away_wanted.connect(lambda: self.area_wanted.emit(DAYS_AWAY))
        self.typing.foot.save_wanted.connect(self._save)
        self.typing.foot.activity_typed.connect(self._add_activity)
        self.effects.agreed.connect(self._write)
        self.effects.given_up.connect(lambda: self.typing.begin(self.page.place))
        self.outcomes.override_wanted.connect(self._override)
        self.after.back_wanted.connect(self._back_to_form)
        self.after.undo_wanted.connect(self.record.undo_stack.undo)
        self.after.remove_wanted.connect(self._remove)
        self.after.next_wanted.connect(self._go_to_next)

    def _add_keys(self) -> None:
        """Keys that hold anywhere in the form."""
        keys: dict[str, Callable[[], object]] = {
            "F2": lambda: self._act("load"),
            "F3": lambda: self._act("add"),
            "Shift+F3": lambda: self._act("instead"),
            "F4": lambda: self._act("variation"),
            "F6": lambda: self._act("note"),
            "F8": lambda: self._act("slot as asked"),
            "Ctrl+D": self.heading.go_to_field,
            "F7": self.typing.foot.toggle,
            "F9": lambda: self._act("all as asked"),
            "Alt+Left": self._back_to_form,
            "Ctrl+Return": self._enter,
            "Alt+Home": lambda: self.open_day(self.today),
            "Alt+PgUp": lambda: self.open_day(self._day - DAY),
            "Alt+PgDown": lambda: self.open_day(self._day + DAY),
            "Ctrl+PgUp": lambda: self.way.training_day(self.typing.opened, after=False),
            "Ctrl+PgDown": lambda: self.way.training_day(self.typing.opened, after=True),
            "Ctrl+Shift+PgUp": lambda: self.way.session(self.typing.opened, after=False),
            "Ctrl+Shift+PgDown": lambda: self.way.session(self.typing.opened, after=True),
            "Ctrl+F": lambda: self.area_wanted.emit(PAST),
            "Ctrl+Shift+N": self._another_session,
            "Ctrl+Enter": self._enter,
        }
        for key, does in keys.items():
            shortcut = QShortcut(QKeySequence(key), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(does)

    def _act(self, name: str) -> None:
        if not self.showing_outcomes:
            self.typing.act(name)

    def _enter(self) -> None:
        """Save; and when what comes next is shown, on to the next trainee."""
        if self.showing_outcomes:
            self._go_to_next()
        elif self.effects.isVisible():
            self.effects.agree()
        elif not self.typing.choice.isVisible():
            self._save()

    def _space(self) -> None:
        edge = self.theme.grid(3)
        inset = self.theme.px(7)  # words to act on have a margin of their own
        self._above.setContentsMargins(edge, self.theme.grid(2), edge - inset, 0)
        self._above.setSpacing(self.theme.grid())
        self._flagged.setContentsMargins(0, 0, inset, 0)
        self._docked.setContentsMargins(edge, 0, edge, self.theme.grid())
