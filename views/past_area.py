"""The past as a work area: every session of a trainee, searched, opened and put right."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from typing import Final

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QSizePolicy, QVBoxLayout, QWidget

from db.errors import StoreError
from desktop.planning.exercise_search import find_exercises
from desktop.planning.kept_drafts import all_kept
from desktop.planning.past import LoggedChange, change_log
from desktop.planning.past_list import PastSession, found, past_list
from desktop.planning.session_draft import SessionDraft
from desktop.training.exercises import Exercise
from desktop.training.program import Line
from desktop.training.session import Session
from desktop.training.trainee import Trainee
from views import words
from views.blocks import Label
from views.chooser import Chooser, Options
from views.effect_panel import EffectPanel
from views.elided_label import ElidedLabel
from views.flow_layout import FlowLayout
from views.key_word import KeyWord
from views.past_date import PastDate
from views.past_desk import Act, PastDesk
from views.past_detail import PastDetail
from views.past_names import PastNames
from views.past_table import PastTable
from views.past_texts import refusal
from views.record import MessageKind, Record
from views.theme import Theme
from views.work_area import WorkArea

_MOST_FOUND: Final = 8


class PastArea(WorkArea):
    """The list at the left, one session at the right, what can be done at the foot."""

    def __init__(
        self, record: Record, today: date, theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(record, today, theme, parent)
        self.desk = PastDesk(record, today)
        self._trainee: Trainee | None = None
        self._names = PastNames(today)
        self._sessions: tuple[PastSession, ...] = ()
        self._drafts: tuple[SessionDraft, ...] = ()
        self._act: Act | None = None
        self._then: Callable[[object], None] = lambda _value: None
        self._build()
        self._connect()
        self._add_keys()
        self._space()

    # What is shown

    def refresh(self) -> None:
        """Read the list again; the cursor stays on its session."""
        if self.trainee_id is None:
            return
        repository = self.record.repository
        try:
            self._trainee = repository.trainee(self.trainee_id)
            self._names = PastNames(
                self.today,
                {each.key: each for each in repository.exercises(retired=True)},
                {each.id or 0: each for each in repository.lines(self.trainee_id)},
                self._trainee.unit,
            )
            self._sessions = past_list(repository, self.trainee_id)
            self._drafts = all_kept(repository, self.trainee_id)
        except StoreError as error:
            self.record.reported(error)
            return
        self._show_list()

    def show_session(self, session_id: int) -> None:
        """Put the cursor on one session."""
        self.search.clear()
        self._show_list()
        self.table.stand_on(session_id)

    def keys(self) -> Sequence[tuple[str, str]]:
        """What keys do here."""
        keys = (
            (self.tr("Search"), "Ctrl+F"),
            (self.tr("Open the session"), "Return"),
            (self.tr("Move to another date"), "F2"),
            (self.tr("Join with another session"), "F3"),
            (self.tr("Another exercise, in all sessions"), "F4"),
            (self.tr("Remove the session"), "Delete"),
        )
        native = QKeySequence.SequenceFormat.NativeText
        return tuple((does, QKeySequence(key).toString(native)) for does, key in keys)

    @property
    def session(self) -> Session | None:
        """The session under the cursor as stored; None where there is none, or a draft."""
        row = self.table.row
        if row is None or row.session_id is None:
            return None
        try:
            return self.record.repository.session(row.session_id)
        except StoreError as error:
            self.record.reported(error)
            return None

    def leave(self) -> None:
        """Nothing that was asked stands any more."""
        for panel in (self.effects, self.chooser, self.dates):
            panel.hide()
        self._act = None

    def _show_list(self) -> None:
        names, search = self._names, self.search.text()
        hits = found(self._sessions, search, names.of_part, names.days)
        drafts = [] if search.strip() else [names.draft_row(each) for each in self._drafts]
        self.table.show_rows(
            [*drafts, *(names.row(one, parts, sets=bool(search.strip())) for one, parts in hits)]
        )
        name = self._trainee.name if self._trainee else ""
        if len(hits) == len(self._sessions):
            said = self.tr("{count} sessions").format(count=words.number(len(hits)))
        else:
            text = self.tr("{count} of {all} sessions")
            said = text.format(count=words.number(len(hits)), all=words.number(len(self._sessions)))
        self._detail_word.say(words.DOT.join((name, said)))
        self.empty.setText(self._why_empty())
        self.empty.setVisible(not self.table.past.rows)
        self.table.setVisible(bool(self.table.past.rows))
        self._show_detail()

    def _why_empty(self) -> str:
        if self._sessions:
            return self.tr("No session holds all of these words. Esc shows them all.")
        return self.tr(
            "Nothing is on record yet. Sessions typed in the session form, read from notes or "
            "imported stand here, the latest first."
        )

    def _show_detail(self) -> None:
        session = self.session
        for button in self._acts:
            button.setEnabled(session is not None)
        self.open_word.setEnabled(self.table.row is not None)
        log: tuple[LoggedChange, ...] = ()
        if session is not None and session.id is not None:
            log = change_log(self.record.repository.session_changes(session.id), session)
        self.detail.show_session(session, self._names, log)

    # What can be done

    def open_session(self) -> None:
        """Open what stands under the cursor in the session form."""
        row = self.table.row
        if row is None:
            return
        if row.session_id is not None:
            self.session_wanted.emit(row.session_id)
            return
        for draft in self._drafts:
            if draft.day == row.day:
                self.draft_wanted.emit(draft)
                return

    def ask_date(self) -> None:
        """Ask to which day the session goes."""
        session = self.session
        if session is not None:
            self.leave()
            self.dates.ask(session.day)

    def _move(self, day: date) -> None:
        session = self.session
        if session is not None and day != session.day:
            self._propose(self.desk.move(session, day))
        else:
            self._back()

    def ask_partner(self) -> None:
        """Ask which session is to be joined to this one."""
        session = self.session
        if session is None:
            return
        others = self.desk.near(session)
        if not others:
            self.record.say(self.tr("No other session lies within three days."))
            return
        options = [(self._names.of_session(one), one) for one in others]
        title = self.tr("Join with which session? It goes into the one chosen in the list.")
        self._choose(title, lambda text: _holding(text, options), self._join)

    def _join(self, other: object) -> None:
        session = self.session
        if session is not None and isinstance(other, Session):
            self._propose(self.desk.join(session, other))

    def ask_exercise(self) -> None:
        """Ask which exercise was recorded wrongly, then what it was."""
        session = self.session
        if session is None or not session.lines:
            return
        lines = self._names.lines
        ids = dict.fromkeys(part.line_id for part in session.lines)
        options = [(self._names.of_line(lines[key]), lines[key]) for key in ids]
        title = self.tr("Which exercise was another one, in all sessions?")
        self._choose(title, lambda text: _holding(text, options), self._ask_target)

    def _ask_target(self, line: object) -> None:
        if not isinstance(line, Line):
            return
        title = self.tr("{line}: which exercise was it?").format(line=self._names.of_line(line))

        def take(target: object) -> None:
            if isinstance(target, tuple):
                self._repair(line, *target)

        self._choose(title, self._targets, take)

    def _targets(self, text: str) -> Options:
        """Lines there are already, and exercises."""
        exercises = self._names.exercises
        known = [
            (self._names.of_line(line), (exercises[line.exercise], line.name))
            for line in self._names.lines.values()
            if line.exercise in exercises
        ]
        options: list[tuple[str, object]] = list(_holding(text, known)) if text.strip() else []
        there = {name for name, _ in options}
        for each in find_exercises(text, [e for e in exercises.values() if not e.retired]):
            if each.name not in there:
                options.append((each.name, (each, "")))
        return options[:_MOST_FOUND]

    def _repair(self, line: Line, exercise: Exercise, name: str) -> None:
        act, why = self.desk.repair(line, exercise, name)
        if act is None:
            self.record.say(refusal(why), MessageKind.ERROR)
            self._back()
        else:
            self._propose(act)

    def ask_removal(self) -> None:
        """Ask whether the session is to go."""
        session = self.session
        if session is not None:
            self._propose(self.desk.remove(session))

    def _propose(self, act: Act) -> None:
        """Say what an act changes, and ask for it."""
        self.leave()
        if self._trainee is not None:
            self._act = act
            self.effects.ask(act.effect, self._trainee, act.word, act.title, act.more)

    def _do(self) -> None:
        act, self._act = self._act, None
        if act is not None and act.do():
            self.record.say(self.tr("Done. Undo takes it back."), MessageKind.DONE)
        self._back()

    def _choose(
        self, title: str, find: Callable[[str], Options], then: Callable[[object], None]
    ) -> None:
        self.leave()
        self._then = then
        self.chooser.ask(title, self.tr("A few letters, or the arrow keys"), find)

    def _back(self) -> None:
        """To the list."""
        self.leave()
        self.table.setFocus(Qt.FocusReason.OtherFocusReason)

    # How it is built

    def _build(self) -> None:
        self._detail_word = ElidedLabel(tone="muted")
        self.search = _Search()
        self.search.setPlaceholderText(self.tr("Exercise, day or note"))
        self.search.setAccessibleName(self.tr("Search the sessions"))
        self.search.setClearButtonEnabled(True)
        self.search.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.table, self.detail = PastTable(self.theme), PastDetail(self.theme, self.today)
        self.empty = Label("", tone="muted", wrap=True)
        self.effects = EffectPanel(self.record, self.theme, self.today)
        self.chooser, self.dates = Chooser(self.theme), PastDate(self.theme, self.today)
        self.open_word = KeyWord(self.tr("Open"), "Return", strong=True)
        self._acts = [
            KeyWord(text, key, tone="muted")
            for text, key in (
                (self.tr("Other date"), "F2"),
                (self.tr("Join"), "F3"),
                (self.tr("Other exercise"), "F4"),
                (self.tr("Remove"), "Delete"),
            )
        ]
        self._lay_out()

    def _lay_out(self) -> None:
        self._head, self._middle = FlowLayout(), QHBoxLayout()
        self._head.setContentsMargins(0, 0, 0, 0)
        self._head.addWidget(Label(self.tr("Sessions on record"), "title"))
        self._detail_word.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        self._head.addWidget(self._detail_word)
        self._head.addWidget(self.search)
        self._middle.addWidget(self.table, 3)
        self._middle.addWidget(self.empty, 3, Qt.AlignmentFlag.AlignTop)
        self._middle.addWidget(self.detail, 2)
        self._foot = FlowLayout()
        for button in self._acts:
            self._foot.addWidget(button)
        self._foot.addWidget(self.open_word)
        self._foot.setAlignment(self.open_word, Qt.AlignmentFlag.AlignRight)
        ground = QWidget()
        ground.setProperty("kind", "page")
        self._column = QVBoxLayout(ground)
        self._column.addLayout(self._head)
        self._column.addLayout(self._middle, 1)
        for panel in (self.chooser, self.dates, self.effects):
            self._column.addWidget(panel)
        self._column.addLayout(self._foot)
        self.outer.addWidget(ground)

    def _connect(self) -> None:
        self.search.textChanged.connect(lambda _text: self._show_list())
        self.search.left.connect(lambda: self.table.setFocus(Qt.FocusReason.OtherFocusReason))
        self.table.chosen.connect(lambda _row: self._show_detail())
        self.table.opened.connect(self.open_session)
        self.effects.agreed.connect(self._do)
        self.effects.given_up.connect(self._back)
        self.chooser.chosen.connect(lambda value: self._then(value))
        self.chooser.given_up.connect(self._back)
        self.dates.chosen.connect(self._move)
        self.dates.given_up.connect(self._back)
        self.open_word.clicked.connect(self.open_session)
        does = (self.ask_date, self.ask_partner, self.ask_exercise, self.ask_removal)
        for button, act in zip(self._acts, does, strict=True):
            button.clicked.connect(act)
        self.theme.changed.connect(self._space)

    def _add_keys(self) -> None:
        for key, act, anywhere in (
            ("Ctrl+F", self.go_to_search, True),
            ("F2", self.ask_date, True),
            ("F3", self.ask_partner, True),
            ("F4", self.ask_exercise, True),
            ("Delete", self.ask_removal, False),
        ):
            shortcut = QShortcut(QKeySequence(key), self if anywhere else self.table)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(act)

    def go_to_search(self) -> None:
        """Put the cursor into the search."""
        self.search.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.search.selectAll()

    def _space(self) -> None:
        edge = self.theme.grid(3)
        self._column.setContentsMargins(edge, self.theme.grid(2), edge, self.theme.grid(1))
        self._column.setSpacing(self.theme.px(10))
        self._head.setSpacing(self.theme.grid(3))
        self._middle.setSpacing(self.theme.grid(2))
        self.search.setFixedWidth(self.theme.px(210))
        self.detail.setMinimumWidth(self.theme.px(240))
        self._foot.setSpacing(self.theme.px(2))

    def showEvent(self, event: object) -> None:
        super().showEvent(event)
        self.table.setFocus(Qt.FocusReason.OtherFocusReason)


class _Search(QLineEdit):
    """The search field; the arrows, Return and Escape go on to the list (``left``)."""

    left = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        keys = Qt.Key
        if event.key() == keys.Key_Escape and self.text():
            self.clear()
        elif event.key() in (keys.Key_Down, keys.Key_Return, keys.Key_Enter, keys.Key_Escape):
            self.left.emit()
        else:
            super().keyPressEvent(event)


def _holding(text: str, options: Sequence[tuple[str, object]]) -> Options:
    """The options in which every word of ``text`` is found."""
    wanted = text.casefold().split()
    return [each for each in options if all(word in each[0].casefold() for word in wanted)]
