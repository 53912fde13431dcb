"""Typing a session: what keys and fields do to the draft, and where the cursor goes next."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QObject, Qt, Signal

from desktop.planning.session_draft import ACTIVITY, Field, SessionDraft, SetDraft
from desktop.planning.typed_cells import Row
from desktop.planning.typed_doubts import doubts
from desktop.planning.typed_session import (
    CellPlace,
    Place,
    Problem,
    field_problem,
    in_own_unit,
    problems,
)
from desktop.training.exercises import Exercise
from views.exercise_choice import ExerciseChoice
from views.record import Record
from views.session_desk import Opened, SessionDesk
from views.session_foot import SessionFoot
from views.session_page import SessionPage
from views.session_texts import problem_text
from views.set_cell import Command
from views.theme import Theme
from views.typing_history import TypingHistory

LAST = 1_000
"""An index beyond every set: the last one is meant."""
NO_LINE = -1
"""What changed is one of the session's own fields."""


class SessionTyping(QObject):
    """The draft in work, its steps back and on, and the widgets it is typed in.

    ``changed(going_on)`` when the draft is another one; going on: in the same field as before.
    """

    changed = Signal(bool)

    def __init__(self, record: Record, desk: SessionDesk, theme: Theme, page: SessionPage) -> None:
        super().__init__(page)
        self._record, self._desk = record, desk
        self._history: TypingHistory[Opened] = TypingHistory()
        self._asked_about: tuple[CellPlace, SetDraft] | None = None
        self._unfilled = False
        self.opened: Opened | None = None
        self.page = page
        self.foot = SessionFoot(theme)
        self.choice = ExerciseChoice(theme)
        page.may_step = self.may_step
        self._connect()

    @property
    def draft(self) -> SessionDraft | None:
        """The session as typed so far."""
        return self.opened.draft if self.opened else None

    def open(self, opened: Opened, *, hidden: bool = False) -> None:
        """Type in another session. ``hidden``: something else stands in front of the cells, which
        are filled when `fill` is called.
        """
        self._history.clear()
        self._asked_about = None
        self.choice.hide()
        self.opened = opened
        self._unfilled = True
        if not hidden:
            self.fill()

    def fill(self) -> None:
        """Fill the cells with the session opened, where that was put off."""
        if self._unfilled:
            self._show_all()

    def begin(self, place: CellPlace | None = None) -> None:
        """Put the cursor where typing goes on."""
        wanted = place or self.page.first_blank() or CellPlace(0, 0, Row.DONE)
        if not self.page.go_to(wanted):
            self.page.setFocus(Qt.FocusReason.OtherFocusReason)

    def ready(self) -> bool:
        """Whether all texts can be taken; if not, the cursor goes to the first that cannot, or
        that is doubtful.
        """
        if self.draft is None:
            return False
        wrong, doubtful = problems(self.draft), doubts(self.draft)
        if wrong:
            self._refuse(wrong[0])
        elif doubtful:
            self._go_to(doubtful[0].place)
            self._ask_about(doubtful[0].place)
        return not wrong and not doubtful

    def _refuse(self, problem: Problem) -> None:
        """Put the cursor on what cannot be taken, and say why beside it."""
        self._go_to(problem.place)
        if isinstance(problem.place, Field):
            field = self.foot.fields[problem.place]
            self.foot.callout.say(field, problem_text(problem.wrong))

    def may_step(self, command: Command) -> bool:
        """Whether typing can be taken back, or done again."""
        return self._history.can_undo if command is Command.UNTYPE else self._history.can_redo

    # What is typed

    def _change(self, draft: SessionDraft, key: object = None, line: int | None = None) -> None:
        """Another draft with the same lines. An equal ``key`` makes several changes one step;
        None is a step of its own. ``line``: the only one that changed (NO_LINE: none did).
        """
        opened = self.opened
        if opened is None or draft == opened.draft:
            return
        going_on = self._history.note(opened, object() if key is None else key)
        self.opened = replace(opened, draft=draft)
        shown = None if line is None else () if line == NO_LINE else (line,)
        self.page.show_draft(draft, shown)
        self.foot.show_draft(draft)
        self.changed.emit(going_on)

    def _change_lines(self, opened: Opened) -> None:
        """Another draft with other lines."""
        if self.opened is not None:
            self._history.note(self.opened, object())
        self.opened = opened
        self._show_all()
        self.changed.emit(False)

    def _show_all(self) -> None:
        self._unfilled = False
        if self.opened is not None:
            self.page.show_opened(self.opened)
            self.foot.begin(self.opened.draft)
            self.foot.show_activities(self._desk.activities_of_week(self.opened))

    def _typed(self, place: CellPlace, text: str) -> None:
        if self.draft is not None:
            draft = self.draft.with_cell(place.line, place.index, place.row, text)
            self._change(draft, place, place.line)

    def _typed_field(self, field: Field, text: str) -> None:
        if self.draft is not None:
            self._change(self.draft.with_field(field, text), field, NO_LINE)
            self._say_field(field)

    def _noted(self, line: int, text: str) -> None:
        if self.draft is not None:
            self._change(self.draft.with_line_note(line, text), ("note", line), line)

    def _red_flag(self, raised: bool) -> None:
        if self.draft is not None:
            self._change(self.draft.with_red_flag(raised))

    def _step(self, command: Command) -> None:
        if self.opened is None or not self.may_step(command):
            return
        before, place = self.opened, self.page.place
        step = self._history.undo if command is Command.UNTYPE else self._history.redo
        self.opened = step(before)
        if before.slots == self.opened.slots:
            self.page.show_draft(self.opened.draft)
            self.foot.show_draft(self.opened.draft)
        else:
            self._show_all()
        self.changed.emit(False)
        if place is not None:
            self.page.go_to(place)

    def add_activity(self) -> None:
        """Put another activity on record, where it is complete; the session goes on."""
        if self.opened is None or self.draft is None:
            return
        wrong = next((one for one in problems(self.draft) if one.place in ACTIVITY), None)
        if wrong is not None:  # what else is wrong with the session can wait
            self._refuse(wrong)
            return
        if self.draft.has_activity and self._desk.add_activity(self.opened):
            self._change(self.draft.without_activity(), line=NO_LINE)
            self.foot.show_activities(self._desk.activities_of_week(self.opened))
        self.foot.go_to(Field.ACTIVITY)

    # Keys in cells

    def _commanded(self, place: CellPlace, command: Command) -> None:
        draft = self.draft
        if draft is None:
            return
        line, index = place.line, place.index
        match command:
            case Command.CONFIRM:
                self._confirm(draft, place)
            case Command.AS_ASKED:
                self._as_asked(draft, place)
            case Command.EXTRA_SET:
                self._change(draft.with_extra_set(line), line=line)
                self.page.go_to(CellPlace(line, LAST, Row.DONE))
            case Command.DROP_SET:
                self._change(draft.without_set(line, index), line=line)
                self.page.go_to(place)
            case Command.WARM_UP:
                self._change(draft.with_warm_up(line, index), line=line)
            case Command.UNTYPE | Command.RETYPE:
                self._step(command)
            case _:
                self._move(place, command)

    def _confirm(self, draft: SessionDraft, place: CellPlace) -> None:
        """Return: on to the next cell, unless something is wrong. A doubtful value is meant, and
        one in the other unit is converted, when Return comes a second time.
        """
        message, doubt = self.page.message(draft, place)
        asked = self._asked_about == (place, _set_at(draft, place))
        converted = in_own_unit(draft, place)
        if converted and asked:
            self._change(draft.with_cell(place.line, place.index, place.row, converted))
            self._move(place, Command.NEXT)
        elif message and not doubt:
            if converted:
                self._ask_about(place)
            self.page.go_to(place)
        elif doubt and not asked:
            self._ask_about(place)
        else:
            if doubt:
                self._change(draft.with_sure(place.line, place.index), line=place.line)
            self._move(place, Command.NEXT)

    def _ask_about(self, place: CellPlace) -> None:
        if self.draft is not None:
            self._asked_about = (place, _set_at(self.draft, place))

    def _as_asked(self, draft: SessionDraft, place: CellPlace) -> None:
        if draft.red_flag:
            return
        if _set_at(draft, place).asked is None:
            self._record.say(self.tr("Nothing was asked of this set: type what was done."))
            return
        self._change(draft.as_asked(place.line, place.index), line=place.line)
        self._move(place, Command.NEXT)

    def _move(self, place: CellPlace, command: Command) -> None:
        following = self.page.beside(place, command)
        if following is not None:
            self.page.go_to(following)
        elif command in (Command.NEXT, Command.DOWN, Command.SLOT_DOWN):
            self._go_to(Field.EFFORT)

    def _go_to(self, place: Place) -> None:
        if isinstance(place, CellPlace):
            self.page.go_to(place)
        else:
            self.foot.go_to(place)

    def _go_on(self, line: int) -> None:
        """To the first set not done from ``line`` on, else to the session's own fields."""
        self._go_to(self.page.first_blank(line) or Field.EFFORT)

    # Words and keys that act on the cell with the cursor

    def act(self, name: str) -> None:
        """Do what a word at the foot says: "as asked", "slot as asked", "all as asked",
        "extra set", "load", "variation", "warm-up", "note", "add", "instead".
        """
        place = self.page.place or CellPlace(0, 0, Row.DONE)
        commands = {
            "as asked": Command.AS_ASKED,
            "extra set": Command.EXTRA_SET,
            "warm-up": Command.WARM_UP,
        }
        if self.opened is None or (name != "add" and not self.opened.draft.lines):
            return
        if name in commands:
            self._commanded(place, commands[name])
        elif name in ("slot as asked", "all as asked"):
            self._fill(self.opened.draft, place.line if name == "slot as asked" else None)
        elif name == "load":
            self.page.show_load_row(place.line, self.opened.draft)
            self.page.go_to(CellPlace(place.line, place.index, Row.LOAD))
        elif name == "note":
            self.page.go_to_note(place.line)
        elif name == "variation":
            self._ask_variation(self.opened, place)
        else:
            self._ask_exercise(self.opened, place if name == "instead" else None)

    def _fill(self, draft: SessionDraft, line: int | None) -> None:
        if draft.red_flag:
            return
        if line is None:
            self._change(draft.all_as_asked())
            self._go_on(0)
        else:
            self._change(draft.line_as_asked(line), line=line)
            self._go_on(line + 1)

    def _ask_exercise(self, opened: Opened, place: CellPlace | None) -> None:
        known = opened.history.library.exercises.values()
        after = None if place is None else place.line
        self.choice.ask_exercise(
            [each for each in known if not each.retired],
            lambda found: self._add(found, after),
            instead=place is not None,
        )

    def _add(self, exercise: Exercise, after: int | None) -> None:
        if self.opened is None:
            return
        added, line = self._desk.added(self.opened, exercise, after)
        if after is not None:
            added = replace(added, draft=added.draft.with_replaced(after))
        if after is not None and not added.draft.lines[after].note.strip():
            note = self.tr("Instead: {exercise}").format(exercise=exercise.name)
            added = replace(added, draft=added.draft.with_line_note(after, note))
        self._change_lines(added)
        self.page.go_to(CellPlace(line, 0, Row.DONE))

    def _ask_variation(self, opened: Opened, place: CellPlace) -> None:
        slot = opened.slots[place.line]
        if not self.choice.ask_variation(
            slot, place.index, lambda key: self._set_variation(place, key)
        ):
            self._record.say(self.tr("This exercise has no variations."))

    def _set_variation(self, place: CellPlace, key: str) -> None:
        if self.draft is not None:
            draft = self.draft.with_variation(place.line, place.index, key)
            self._change(draft, line=place.line)
            self.page.go_to(place)

    def _back_to_cell(self) -> None:
        self.begin(self.page.place)

    def _remove(self, line: int) -> None:
        opened = self.opened
        if opened is None or opened.draft.lines[line].planned:
            return
        slots = (*opened.slots[:line], *opened.slots[line + 1 :])
        self._change_lines(replace(opened, draft=opened.draft.without_line(line), slots=slots))
        self.begin(CellPlace(max(0, line - 1), 0, Row.DONE))

    def _say_field(self, field: Field) -> None:
        edit = self.foot.fields[field]
        wrong = field_problem(self.draft, field) if self.draft and edit.hasFocus() else None
        self.foot.callout.say(edit, "" if wrong is None else problem_text(wrong))

    def _connect(self) -> None:
        page, foot = self.page, self.foot
        page.typed.connect(self._typed)
        page.commanded.connect(self._commanded)
        page.noted.connect(self._noted)
        page.note_done.connect(lambda line: self._go_on(line + 1))
        page.note_left.connect(lambda _line: self._back_to_cell())
        page.remove_wanted.connect(self._remove)
        foot.typed.connect(self._typed_field)
        foot.red_flag.connect(self._red_flag)
        foot.acted.connect(self.act)
        foot.entered.connect(self._say_field)
        foot.left.connect(self._say_field)
        foot.stepped.connect(self._step)
        self.choice.given_up.connect(self._back_to_cell)


def _set_at(draft: SessionDraft, place: CellPlace) -> SetDraft:
    return draft.lines[place.line].sets[place.index]
