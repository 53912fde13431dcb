"""What the coach does on a program's page, as edits of the program, each with its own name."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import QObject

from desktop.planning.assessment_weeks import with_test_week
from desktop.training.balance import Finding
from desktop.training.exercises import Exercise
from desktop.training.mending import mended
from desktop.training.program import Phase, PhasePurpose, Program, Slot, TrainingDay
from desktop.training.program_edits import (
    DayPlace,
    SlotPlace,
    add_day,
    add_phase,
    add_slot,
    duplicate_day,
    duplicate_slot,
    free_weekday,
    move_day,
    move_phase,
    move_slot,
    phase_after,
    remove_day,
    remove_phase,
    remove_slot,
    replace_exercise,
    slot_at,
    with_day,
    with_phase,
    with_slot,
)
from desktop.training.rules import exchanged
from desktop.training.shorthand import Shorthand, slot_from
from views import words
from views.acting_row import RowAct
from views.day_words import day_name, held_words
from views.phase_line import phase_name
from views.program_clipboard import ProgramClipboard
from views.program_head import tests_come_first
from views.program_marks import ProgramMarks
from views.program_page import PHASE, Place, ProgramPage

Save = Callable[[Program, str], bool]


class ProgramActs(QObject):
    """Listens to a page. ``save(program, text)`` writes an edit, after which the page has been
    shown anew; ``look_at(phase)`` shows another phase.
    """

    def __init__(
        self,
        page: ProgramPage,
        save: Save,
        look_at: Callable[[int], None],
        say: Callable[[str], None],
    ) -> None:
        super().__init__(page)
        self._page, self._save, self._look_at = page, save, look_at
        self._marks = ProgramMarks(page, save)
        self._clipboard = ProgramClipboard(page, save, say)
        page.acted.connect(self._acted)
        page.added.connect(self._added)
        page.phase_chosen.connect(look_at)
        page.day_wanted.connect(self._add_day)
        page.slot_panel.edited.connect(self._slot_edited)
        page.slot_panel.exchanged.connect(self._exchanged)
        page.day_panel.edited.connect(self._day_edited)
        page.phase_panel.edited.connect(self._phase_edited)
        page.phase_panel.added.connect(self._add_phase)
        page.balance.mended.connect(self._mend)
        page.replace_bar.replaced.connect(self._replace)
        page.head.renamed.connect(self._rename)
        page.head.test_wanted.connect(self._test)

    @property
    def _program(self) -> Program:
        return self._page.scene.program

    @property
    def _at(self) -> int:
        return self._page.scene.at

    def _name_of(self, slot: Slot) -> str:
        exercise = self._page.scene.exercises.get(slot.exercise)
        return exercise.name if exercise is not None else slot.exercise

    def _said(self, slot: Slot, what: str) -> str:
        return self.tr("{exercise}: {what}").format(exercise=self._name_of(slot), what=what)

    def _acted(self, place: Place, act: RowAct) -> None:
        page = self._page
        match act:
            case RowAct.BEFORE | RowAct.AFTER:
                page.step(place, 1 if act is RowAct.AFTER else -1)
            case RowAct.EDIT if page.marks and page.open_place is None:
                page.marked.take_focus()
            case RowAct.REMOVE if isinstance(place, SlotPlace) and page.marks:
                self._marks.remove()
            case RowAct.MARK | RowAct.MARK_ALL | RowAct.MARK_BEFORE | RowAct.MARK_AFTER:
                self._marks.act(place, act)
            case RowAct.COPY:
                self._clipboard.copy(place)
            case RowAct.PASTE:
                self._clipboard.paste(place)
            case RowAct.EDIT | RowAct.EXCHANGE:
                if page.open_place == place:
                    page.close()
                else:
                    page.open(place, act)
            case RowAct.LEAVE:
                self._leave(place)
            case RowAct.FIRST | RowAct.LAST:
                self._end_of_day(place, act)
            case _:
                self._change(place, act)

    def _leave(self, place: Place) -> None:
        """Escape: out of the panel, then from the slot to its day, then to the phases."""
        page = self._page
        if page.open_place is not None:
            page.close()
        elif self._marks.clear():
            return
        elif isinstance(place, SlotPlace):
            page.focus(place.of_day)
        elif isinstance(place, DayPlace):
            page.focus(PHASE)
        else:
            page.step(PHASE, 1)

    def _end_of_day(self, place: Place, act: RowAct) -> None:
        if isinstance(place, SlotPlace):
            last = len(self._page.days[place.day].rows) - 1
            self._page.focus(replace(place, slot=0 if act is RowAct.FIRST else last))

    def _change(self, place: Place, act: RowAct) -> None:
        match place:
            case SlotPlace():
                self._change_slot(place, act)
            case DayPlace():
                self._change_day(place, act)
            case _:
                self._change_phase(act)

    # Slots

    def _change_slot(self, place: SlotPlace, act: RowAct) -> None:
        program, slot = self._program, slot_at(self._program, place)
        was_open = self._page.open_place is not None
        match act:
            case RowAct.MOVE_UP | RowAct.MOVE_DOWN:
                moved, there = move_slot(program, place, 1 if act is RowAct.MOVE_DOWN else -1)
                text = self._said(slot, self.tr("move"))
            case RowAct.DUPLICATE:
                moved, there = duplicate_slot(program, place)
                text = self._said(slot, self.tr("duplicate"))
            case RowAct.REMOVE:
                self._remove_slot(place, slot)
                return
            case _:
                return
        if moved != program and self._save_closed(moved, text):
            if was_open and act is not RowAct.DUPLICATE:
                self._page.open(there)
            else:
                self._page.focus(there)

    def _remove_slot(self, place: SlotPlace, slot: Slot) -> None:
        text = self._said(slot, self.tr("remove"))
        if not self._save_closed(remove_slot(self._program, place), text):
            return
        left = len(self._page.days[place.day].rows)
        if left:
            self._page.focus(replace(place, slot=min(place.slot, left - 1)))
        else:
            self._page.focus_finder(place.day)

    def _added(self, day: DayPlace, exercise: Exercise, said: Shorthand) -> None:
        slot = slot_from(said, exercise)
        end = len(self._page.days[day.day].rows)
        place = SlotPlace(day.phase, day.day, end)
        text = self._said(slot, self.tr("add"))
        if self._save(add_slot(self._program, place, slot), text):
            self._page.focus_finder(day.day)

    def _slot_edited(self, slot: Slot, what: str) -> None:
        place = self._page.open_place
        if self._page.slot_panel.for_one:
            return  # it is the trainee's line that changes, not the program
        if isinstance(place, SlotPlace) and slot != slot_at(self._program, place):
            # The row shows it in this very frame; saving and the rest of the page follow.
            self._page.slot_panel.drafted.emit(slot)
            self._page.days[place.day].rows[place.slot].repaint()
            self._save(with_slot(self._program, place, slot), self._said(slot, what))

    def _exchanged(self, exercise: Exercise) -> None:
        place = self._page.open_place
        if not isinstance(place, SlotPlace):
            return
        slot = slot_at(self._program, place)
        before = self._page.scene.exercises[slot.exercise]
        text = self.tr("{old} becomes {new}").format(old=before.name, new=exercise.name)
        changed = with_slot(self._program, place, exchanged(slot, exercise, before))
        if self._save(changed, text):
            self._page.slot_panel.take_focus()

    def _replace(self, key: str, exercise: Exercise) -> None:
        exercises = self._page.scene.exercises
        text = self.tr("{old} becomes {new} everywhere")
        text = text.format(old=exercises[key].name, new=exercise.name)
        self._save(replace_exercise(self._program, key, exercise, exercises), text)

    # Days

    def _change_day(self, place: DayPlace, act: RowAct) -> None:
        program = self._program
        day = program.phases[place.phase].days[place.day]
        name = day_name(day, self._held(day))
        match act:
            case RowAct.MOVE_UP | RowAct.MOVE_DOWN:
                moved, there = move_day(program, place, 1 if act is RowAct.MOVE_DOWN else -1)
                text = self.tr("Move {day}").format(day=name)
            case RowAct.DUPLICATE:
                moved, there = duplicate_day(program, place)
                text = self.tr("Duplicate {day}").format(day=name)
            case RowAct.REMOVE:
                moved, there = remove_day(program, place), place
                text = self.tr("Remove {day}").format(day=name)
            case _:
                return
        if moved != program and self._save_closed(moved, text):
            days = len(self._page.days)
            if days:
                self._page.focus(replace(there, day=min(there.day, days - 1)))
            else:
                self._page.more.setFocus()

    def _add_day(self) -> None:
        phase = self._page.scene.phase
        weekday = free_weekday(phase)
        number = len(phase.days)
        name = "" if weekday is not None else self._turn_name(number)
        place = DayPlace(self._at, number)
        program = add_day(self._program, place, TrainingDay(name, weekday=weekday))
        if self._save(program, self.tr("Add a training day")):
            self._page.focus_finder(number)

    def _day_edited(self, day: TrainingDay, text: str) -> None:
        place = self._page.open_place
        if not isinstance(place, DayPlace):
            return
        others = [d for n, d in enumerate(self._page.scene.phase.days) if n != place.day]
        taken = next(
            (d for d in others if d.weekday is not None and d.weekday == day.weekday), None
        )
        panel = self._page.day_panel
        if taken is not None:
            said = self.tr("{weekday} is taken: choose another one, or move that day first.")
            panel.error.setText(said.format(weekday=words.weekday(day.weekday or 0)))
            return
        panel.error.setText("")
        if day.weekday is None and not day.name:
            # Days in turn are told apart by their names.
            day = replace(day, name=self._held(day) or self._turn_name(place.day))
        self._save(with_day(self._program, place, day), text)

    def _held(self, day: TrainingDay) -> str:
        return held_words(day, self._page.scene.exercises)

    def _turn_name(self, number: int) -> str:
        return self.tr("Day {number}").format(number=words.number(number + 1))

    # Phases

    def _change_phase(self, act: RowAct) -> None:
        program, at = self._program, self._at
        name = phase_name(self._page.scene.phase)
        match act:
            case RowAct.MOVE_UP | RowAct.MOVE_DOWN:
                moved, there = move_phase(program, at, 1 if act is RowAct.MOVE_DOWN else -1)
                text = self.tr("Move {phase}").format(phase=name)
            case RowAct.DUPLICATE:
                moved, there = add_phase(program, at + 1, self._page.scene.phase), at + 1
                text = self.tr("Duplicate {phase}").format(phase=name)
            case RowAct.REMOVE:
                moved, there = remove_phase(program, at), max(0, at - 1)
                text = self.tr("Remove {phase}").format(phase=name)
            case _:
                return
        if moved != program and self._save_closed(moved, text):
            self._look_at(there)
            self._page.focus(PHASE)

    def _add_phase(self, purpose: PhasePurpose) -> None:
        if purpose is PhasePurpose.ASSESS:
            self._add_tests(self._at + 1)
            return
        deload = purpose is PhasePurpose.DELOAD
        name = self.tr("Deload") if deload else self.tr("Next phase")
        phase = phase_after(self._program, self._at, name, purpose)
        text = self.tr("Add a deload week") if deload else self.tr("Add a phase")
        there = self._at + 1
        if self._save_closed(add_phase(self._program, there, phase), text):
            self._look_at(there)
            self._page.open(PHASE)

    def _test(self) -> None:
        """A week of tests first of all; where that is there or past, a re-test at the end."""
        scene = self._page.scene
        first = tests_come_first(scene.program, scene.assignment, scene.today)
        self._add_tests(0 if first else len(scene.program.phases))

    def _add_tests(self, at: int) -> None:
        scene = self._page.scene
        name = self.tr("Re-test") if at else self.tr("Test week")
        text = self.tr("Test again") if at else self.tr("Put a test week first")
        program = with_test_week(scene.program, scene.exercises, at, name, scene.owned)
        if program != scene.program and self._save_closed(program, text):
            self._look_at(at)
            self._page.focus(PHASE)

    def _phase_edited(self, phase: Phase, text: str) -> None:
        self._save(with_phase(self._program, self._at, phase), text)

    # The whole program

    def _rename(self, name: str) -> None:
        if not name:
            self._page.head.name.set_value(self._program.name)
        elif name != self._program.name:
            text = self.tr("Rename {name}").format(name=self._program.name)
            self._save(replace(self._program, name=name), text)

    def _mend(self, finding: Finding) -> None:
        program = mended(self._program, finding, self._page.scene.exercises)
        if program != self._program:
            self._save(program, self.tr("Mend the balance"))

    def _save_closed(self, program: Program, text: str) -> bool:
        """Save an edit that moves places: what is open closes first, marks go."""
        self._page.set_marks(())
        if self._page.open_place is not None:
            self._page.close()
        return self._save(program, text)
