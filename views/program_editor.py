"""The program editor: programs on a shelf, and one of them open; every edit can be undone."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date

from PySide6.QtCore import QTimer
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QApplication, QStackedWidget, QWidget

from db.changes import Changes, Kind
from db.errors import NotFound
from desktop.planning.history import History, Library, read_history, read_library
from desktop.planning.line_changes import onlooker_with_own_rule
from desktop.planning.outlook import Onlooker, outlook
from desktop.planning.outlook_memory import OutlookMemory
from desktop.planning.program_weeks import ProgramWeeks
from desktop.planning.schedule import assignment_on
from desktop.planning.starters import starters
from desktop.training.program import Phase, Program, Slot, TrainingDay
from desktop.training.program_edits import DayPlace, SlotPlace, free_name, with_slot
from views.ahead_lines import ahead_lines
from views.draft_panel import DraftPanel
from views.language import program_said
from views.program_acts import ProgramActs
from views.program_keys import program_keys
from views.program_page import PHASE, ProgramPage
from views.program_printing import ProgramPrinting
from views.program_scene import program_scene, running_phase
from views.program_shelf import DRAFT_KEY, NEW_KEY, ProgramShelf, shelf_entries
from views.record import Record
from views.slot_face import slot_face
from views.theme import Theme
from views.trainee_program import TraineeProgram
from views.weeks_ahead import WeeksAhead
from views.weeks_page import PRINT_KEY, WEEKS_KEY
from views.work_area import WorkArea

_NEW_WEEKS = 6


class ProgramEditor(WorkArea):
    """Opens on the program of the trainee chosen, else on the shelf."""

    def __init__(
        self, record: Record, today: date, theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(record, today, theme, parent)
        self._library: Library | None = None
        self._history: History | None = None
        self._program_id: int | None = None
        self._at = 0
        self._shown_for: int | None = None
        self._begun = False
        self._starters: tuple[Program, ...] | None = None
        self.shelf = ProgramShelf(theme)
        self.page: ProgramPage | None = None
        self._faces = QStackedWidget()
        self._faces.addWidget(self.shelf)
        self.weeks = WeeksAhead(self._faces, theme, today)
        self.weeks.left.connect(self.show_rule)
        self.weeks.rule_wanted.connect(self.show_rule)
        self.weeks.print_wanted.connect(self._ask_print)
        self.printing = ProgramPrinting(self, record, theme, self._weeks_now)
        self._ahead = False
        self.drafting: DraftPanel | None = None
        self._drafts = False
        self._memory = OutlookMemory()
        self._drafted: tuple[Program, Onlooker] | None = None
        self._ahead_timer = QTimer(self)
        self._ahead_timer.setSingleShot(True)
        self._ahead_timer.timeout.connect(self._fill_ahead)
        self.outer.addWidget(self._faces)
        QShortcut(QKeySequence(NEW_KEY), self).activated.connect(self.new_program)
        QShortcut(QKeySequence(WEEKS_KEY), self).activated.connect(self._toggle_weeks)
        QShortcut(QKeySequence(PRINT_KEY), self).activated.connect(self._ask_print)
        QShortcut(QKeySequence(DRAFT_KEY), self).activated.connect(self.draft_program)
        self.shelf.draft_wanted.connect(self.draft_program)
        self.shelf.opened.connect(self.open_program)
        self.shelf.new_wanted.connect(self.new_program)
        self.shelf.duplicated.connect(self._duplicate)
        self.shelf.removed.connect(self._remove)
        self.shelf.starter_taken.connect(self._take_starter)

    @property
    def program(self) -> Program | None:
        """The program that is open; None on the shelf."""
        if self._program_id is None or self._library is None:
            return None
        return self._library.programs.get(self._program_id)

    def refresh(self) -> None:
        """Read what changed and show it."""
        self._read()
        if self.trainee_id != self._shown_for or not self._begun:
            self._shown_for, self._begun = self.trainee_id, True
            self._open_running()
        if self._drafts:
            self._show_drafting()
        elif self.program is None:
            self._show_shelf()
        elif self._ahead:
            self._show_weeks()
        else:
            self._show_page()

    def keys(self) -> Sequence[tuple[str, str]]:
        """What keys do here."""
        return program_keys()

    def leave(self) -> None:
        """A field that is being typed in takes its value."""
        focused = QApplication.focusWidget()
        if focused is not None and self.isAncestorOf(focused):
            focused.clearFocus()

    def concerns(self, changes: Changes) -> bool:
        """Whether it shows; and what has to be read again."""
        if not super().concerns(changes):
            return False
        if changes.kinds != {Kind.PROGRAM}:
            self._library = self._history = None
        return True

    def show_trainee(self, trainee_id: int | None) -> None:
        """Show another trainee's program."""
        if trainee_id != self.trainee_id:
            self._history = None
        super().show_trainee(trainee_id)

    def take_focus(self) -> None:
        """Stand on a program of the shelf, or in the phases of the one that is open."""
        if QApplication.focusWidget() is not None:
            return
        if self._faces.currentWidget() is self.shelf:
            self.shelf.take_focus()
        elif self.page is not None and self._faces.currentWidget() is self.page:
            self.page.step(PHASE, 1)

    def open_program(self, program_id: int) -> None:
        """Open a program, at the week that runs where it runs."""
        self._program_id = program_id
        self._ahead = self._drafts = False
        self._at = self._running_phase()
        self.refresh()
        if self.page is not None:
            self.page.step("phase", 1)

    def show_shelf(self) -> None:
        """Go back to all programs."""
        before = self._program_id
        self.leave()
        self._program_id = None
        self._ahead = self._drafts = False
        self.refresh()
        self.shelf.take_focus(before)

    def show_weeks(self) -> None:
        """Show the weeks ahead of the program that is open, the cursor on the slot that had it."""
        if self.program is None:
            return
        page = self.page
        place = page.focused or page.open_place if page is not None else None
        self.leave()
        self._ahead, self._drafts = True, False
        self.refresh()
        if self.weeks.page is not None:
            self.weeks.page.go_to(place if isinstance(place, SlotPlace) else None)

    def show_rule(self, place: SlotPlace | DayPlace | None = None) -> None:
        """Leave the weeks ahead for the program: to a slot's rule, a day, or the phases."""
        self._ahead = False
        if place is not None:
            self._at = place.phase
        self.refresh()
        page = self.page
        if page is None:
            return
        if isinstance(place, SlotPlace):
            page.open(place)
        elif place is not None:
            page.focus(place)
        else:
            page.step(PHASE, 1)

    def new_program(self) -> None:
        """Start a program with one phase and one day, its name ready to be typed."""
        day = TrainingDay("", weekday=0)
        phase = Phase(self.tr("Build"), _NEW_WEEKS, (day,))
        self._add(Program(self.tr("New program"), (phase,)), self.tr("New program"))
        if self.page is not None:
            self.page.head.name.setFocus()
            self.page.head.name.selectAll()

    def draft_program(self) -> None:
        """Ask for the wishes that a program is drafted from; where it was begun, it goes on."""
        self.leave()
        self._drafts = True
        self.refresh()
        if self.drafting is not None:
            self.drafting.take_focus()

    # Reading

    def _read(self) -> None:
        store = self.record.repository
        if self._library is None:
            self._library = read_library(store)
        else:
            programs = {one.id: one for one in store.programs() if one.id is not None}
            self._library = replace(self._library, programs=programs)
        if self.trainee_id is None:
            self._history = None
        elif self._history is None:
            self._history = self._history_of(self.trainee_id)
        if self._history is not None:
            self._history = replace(self._history, library=self._library)

    def _history_of(self, trainee_id: int) -> History | None:
        try:
            return read_history(self.record.repository, trainee_id, self._library)
        except NotFound:
            return None

    @property
    def onlooker(self) -> Onlooker:
        """For whom the program is looked at."""
        assert self._library is not None
        return Onlooker(self._library, self.today, self._history)

    def _open_running(self) -> None:
        """The program that the trainee trains by; where there is none, what is open stays."""
        if self._history is None:
            return
        running = assignment_on(self._history.assignments, self.today)
        coming = next((one for one in self._history.assignments if one.start > self.today), None)
        found = running or coming
        if found is not None:
            self._program_id = found.program_id
            self._at = self._running_phase()

    def _running_phase(self) -> int:
        program = self.program
        return 0 if program is None else running_phase(program, self.onlooker)

    # Showing

    def _show_shelf(self) -> None:
        assert self._library is not None
        self._program_id = None
        entries = shelf_entries(self.record.repository, self._library.programs, self.today)
        if self._starters is None:
            self._starters = tuple(program_said(each.program) for each in starters())
        self.shelf.show_programs(entries, self._starters)
        self._faces.setCurrentWidget(self.shelf)

    def _show_page(self) -> None:
        program = self.program
        assert program is not None
        if not program.phases:
            program = replace(program, phases=(Phase(self.tr("Build"), _NEW_WEEKS),))
        self._at = min(self._at, len(program.phases) - 1)
        scene = program_scene(program, self._at, self.onlooker, self._memory)
        if scene.more_days:
            scene = replace(scene, others=self._others(program))
        if self.page is None:
            self.page = ProgramPage(self.theme, scene)
            self._listen(self.page)
            self._faces.addWidget(self.page)
        self.page.show_scene(scene)
        self._faces.setCurrentWidget(self.page)

    def _others(self, program: Program) -> tuple[str, ...]:
        """Who else trains by a program today."""
        store = self.record.repository
        names = {each.id: each.name for each in store.trainees() if each.id != self.trainee_id}
        return tuple(
            names[each.trainee_id]
            for each in store.all_assignments()
            if each.program_id == program.id
            and each.trainee_id in names
            and (each.ended is None or each.ended >= self.today)
        )

    def _show_weeks(self) -> None:
        program = self.program
        assert program is not None
        self.weeks.show(program, self.onlooker)

    def _show_drafting(self) -> None:
        if self.drafting is None:
            self.drafting = DraftPanel(self.record, self.today, self.theme)
            self.drafting.taken.connect(self._take_draft)
            self.drafting.left.connect(self._leave_drafting)
            self._faces.addWidget(self.drafting)
        self.drafting.begin(self.trainee_id)
        self._faces.setCurrentWidget(self.drafting)

    def _leave_drafting(self) -> None:
        self._drafts = False
        self.refresh()
        if self.program is None:
            self.shelf.take_focus()
        elif self.page is not None:
            self.page.step(PHASE, 1)

    def _weeks_now(self) -> ProgramWeeks:
        program = self.program
        assert program is not None
        return self.weeks.now(program, self.onlooker)

    def _ask_print(self) -> None:
        """Ask how to print, below the word for it on the face that is shown."""
        if self.program is None or self.page is None:
            return
        ahead = self.weeks.page if self._ahead else None
        self.printing.ask_how(ahead.print if ahead is not None else self.page.head.print)

    def _toggle_weeks(self) -> None:
        if self._ahead:
            self.show_rule()
        else:
            self.show_weeks()

    def _listen(self, page: ProgramPage) -> None:
        ProgramActs(page, self._save, self._look_at, self.record.say)
        page.head.shelf_wanted.connect(self.show_shelf)
        page.head.weeks_wanted.connect(self.show_weeks)
        page.head.print_wanted.connect(self._ask_print)
        TraineeProgram(page, self.record, lambda: self.onlooker, self._program_begun)
        page.slot_panel.drafted.connect(self._draft)
        page.slot_opened.connect(self._show_ahead)

    def _program_begun(self) -> None:
        self._look_at(self._running_phase())
        if self.page is not None:
            self.page.step(PHASE, 1)

    def _look_at(self, phase: int) -> None:
        self._at = phase
        self._show_page()

    def _draft(self, slot: Slot) -> None:
        """The row shows what would come of what is typed, before it is saved."""
        page, program = self.page, self.program
        place = page.open_place if page is not None else None
        if page is None or program is None or not isinstance(place, SlotPlace):
            return
        drafted = with_slot(program, place, slot)
        onlooker = self.onlooker
        if page.slot_panel.for_one:
            onlooker, drafted = onlooker_with_own_rule(onlooker, program, slot), program
            seen = outlook(program, place.phase, slot, onlooker.with_program(program))
        else:
            seen = self._memory.outlook(drafted, place, onlooker)
        page.show_draft(place, slot_face(slot, seen, onlooker.trainee.unit, self.today))
        self._drafted = (drafted, onlooker)
        self._ahead_timer.start()

    def _show_ahead(self, _place: SlotPlace) -> None:
        self._drafted = None
        self._ahead_timer.start()

    def _fill_ahead(self) -> None:
        """The sessions to come of the slot that is edited, as it is typed; after its row."""
        page, program = self.page, self.program
        place = page.open_place if page is not None else None
        if page is None or program is None or not isinstance(place, SlotPlace):
            return
        drafted, onlooker = self._drafted or (program, self.onlooker)
        page.slot_panel.ahead.show_lines(ahead_lines(drafted, place, onlooker))

    # Saving

    def _save(self, program: Program, text: str) -> bool:
        return self.record.save(text, program) is not None

    def _add(self, program: Program, text: str) -> None:
        assert self._library is not None
        taken = [one.name for one in self._library.programs.values()]
        named = replace(program, name=free_name(program.name, taken), id=None, revision=0)
        saved = self.record.save(text, named)
        if saved is not None:
            self.open_program(saved[0].id)

    def _duplicate(self, program: Program) -> None:
        self._add(program, self.tr("Duplicate {name}").format(name=program.name))

    def _take_starter(self, program: Program) -> None:
        self._add(program, self.tr("Load {name}").format(name=program.name))

    def _take_draft(self, program: Program) -> None:
        self._add(program, self.tr("Draft {name}").format(name=program.name))

    def _remove(self, program: Program) -> None:
        rows = [row.program.id for row in self.shelf.rows]
        place = rows.index(program.id) if program.id in rows else 0
        if self.record.remove(self.tr("Remove {name}").format(name=program.name), program):
            said = self.tr("{name} is removed; Undo brings it back.").format(name=program.name)
            self.record.say(said)
        left = self.shelf.rows
        self.shelf.take_focus(left[min(place, len(left) - 1)].program.id if left else None)
