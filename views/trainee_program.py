"""A program as one trainee has it: given, ended, one more day, and what is changed for them."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date, timedelta

from PySide6.QtCore import QObject

from desktop.planning.assignments import CannotAssign, assign
from desktop.planning.line_changes import LineChange, with_own_rule, without
from desktop.planning.more_days import MoreDay, taken
from desktop.planning.outlook import Onlooker
from desktop.training.program import Program, Slot
from desktop.training.program_edits import SlotPlace, slot_at
from views.program_page import ProgramPage
from views.record import Record
from views.sentences import worded


class TraineeProgram(QObject):
    """Listens to a page. ``begun`` is called when the program was given to the trainee."""

    def __init__(
        self,
        page: ProgramPage,
        record: Record,
        onlooker: Callable[[], Onlooker],
        begun: Callable[[], None],
    ) -> None:
        super().__init__(page)
        self._page, self._record, self._begun = page, record, begun
        self._onlooker = onlooker
        page.head.end_wanted.connect(self._end)
        page.assign_panel.assigned.connect(self._assign)
        page.more_days.taken.connect(self._take_day)
        page.slot_panel.changes.taken_back.connect(self._take_back)
        page.slot_panel.edited.connect(self._edit_for_one)

    @property
    def _program(self) -> Program:
        return self._page.scene.program

    def _assign(self, start: date, weekdays: tuple[int, ...]) -> None:
        page, program, history = self._page, self._program, self._onlooker().history
        if program.id is None or history is None:
            return
        try:
            given = assign(self._record.repository, history.trainee_id, program.id, start, weekdays)
        except CannotAssign as wrong:
            text = worded(wrong)
            page.assign_panel.say(f"{text[:1].upper()}{text[1:]}.")
            return
        text = self.tr("Give {program} to {name}").format(
            program=program.name, name=history.trainee.name
        )
        if self._record.save(text, *given.aggregates) is not None:
            page.assign_panel.hide()
            self._begun()

    def _end(self) -> None:
        """From today on nothing more is asked; a program that has not begun is taken back."""
        program, onlooker = self._program, self._onlooker()
        assignment = onlooker.assignment_of(program)
        if assignment is None:
            return
        name = onlooker.trainee.name
        text = self.tr("End {program} for {name}").format(program=program.name, name=name)
        yesterday = onlooker.today - timedelta(days=1)
        if assignment.start > yesterday:
            self._record.remove(text, assignment)
        else:
            self._record.save(text, replace(assignment, ended=yesterday))

    def _take_day(self, more: MoreDay) -> None:
        assignment = self._onlooker().assignment_of(self._program)
        if assignment is None:
            return
        changed = taken(self._program, more, assignment)
        if changed != self._program:
            text = self.tr("{exercise}: one more day a week").format(exercise=more.exercise.name)
            self._record.save(text, changed)

    def _take_back(self, change: LineChange) -> None:
        history, slot = self._onlooker().history, self._open_slot()
        line = history.line_of(slot.exercise, slot.line_name) if history and slot else None
        if line is None or history is None:
            return
        text = self.tr("Take back a change for {name}").format(name=history.trainee.name)
        self._record.save(text, without(line, change))

    def _edit_for_one(self, slot: Slot, what: str) -> None:
        """A rule that is changed for this trainee only: the line's, not the program's."""
        onlooker = self._onlooker()
        history, assignment = onlooker.history, onlooker.assignment_of(self._program)
        if not self._page.slot_panel.for_one or history is None or assignment is None:
            return
        line = with_own_rule(history, slot, assignment, slot.rule, onlooker.today)
        text = self.tr("{what}, for {name}").format(what=what, name=history.trainee.name)
        self._record.save(f"{text[:1].upper()}{text[1:]}", line)

    def _open_slot(self) -> Slot | None:
        place = self._page.open_place
        return slot_at(self._program, place) if isinstance(place, SlotPlace) else None
