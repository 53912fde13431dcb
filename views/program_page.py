"""One program on the page: head, phases, the days of the phase looked at, balance below."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QWidget

from desktop.training.exercises import Exercise
from desktop.training.program import PhasePurpose
from desktop.training.program_edits import DayPlace, SlotPlace, slot_at
from desktop.training.shorthand import Shorthand
from views.acting_row import RowAct
from views.balance_block import BalanceBlock
from views.blocks import Page
from views.captioned import keyed_word
from views.day_block import DayBlock
from views.marked_panel import MarkedPanel
from views.more_days_block import MoreDaysBlock
from views.phase_line import PhaseLine
from views.place_panels import DayPanel, PhasePanel
from views.program_head import (
    GIVE_KEY,
    REPLACE_KEY,
    SHELF_KEY,
    TEST_KEY,
    AssignPanel,
    ProgramHead,
)
from views.program_scene import ProgramScene
from views.replace_bar import ReplaceBar
from views.slot_face import SlotFace
from views.slot_panel import SlotPanel
from views.theme import Theme

PHASE: Final = "phase"
DAY_KEY: Final = "Ctrl+Shift+D"
Place = SlotPlace | DayPlace | str
"""What is edited or has the focus; PHASE is the phase looked at."""


class ProgramPage(Page):
    """Shows a scene and tells what the coach wants.

    ``acted(place, RowAct)`` for what keys ask of a slot, a day or the phase; ``added(DayPlace,
    Exercise, Shorthand)`` for a new slot; ``phase_chosen(int)``; ``day_wanted``;
    ``slot_opened(SlotPlace)`` whenever the panel of a slot was filled.
    """

    acted = Signal(object, object)
    added = Signal(object, object, object)
    phase_chosen = Signal(int)
    slot_opened = Signal(object)
    day_wanted = Signal()

    def __init__(self, theme: Theme, scene: ProgramScene, parent: QWidget | None = None) -> None:
        super().__init__(theme, parent)
        self._theme = theme
        self._scene = scene
        self._open: Place | None = None
        self.head = ProgramHead(theme)
        self.assign_panel = AssignPanel(theme, scene.today)
        self.replace_bar = ReplaceBar(theme)
        self.marked = MarkedPanel(theme)
        self._marks: frozenset[SlotPlace] = frozenset()
        self.phases = PhaseLine(theme)
        self.phase_panel = PhasePanel(theme)
        self.day_panel = DayPanel(theme)
        self.slot_panel = SlotPanel(theme)
        self.days: list[DayBlock] = []
        self.more = keyed_word(self.tr("Add a training day"), DAY_KEY, tone="", flush=True)
        self.more_days = MoreDaysBlock(theme)
        self.balance = BalanceBlock(theme)
        for part in (
            self.head,
            self.assign_panel,
            self.replace_bar,
            self.phases,
            self.phase_panel,
            self.marked,
        ):
            self.body.addWidget(part)
        foot = QHBoxLayout()
        foot.addWidget(self.more)
        foot.addStretch(1)
        self.body.addLayout(foot)
        self.body.addWidget(self.more_days)
        self.body.addWidget(self.balance)
        self.body.addStretch(1)
        for panel in (
            self.assign_panel,
            self.replace_bar,
            self.phase_panel,
            self.day_panel,
            self.slot_panel,
        ):
            panel.hide()
        self.day_panel.setParent(self)
        self.slot_panel.setParent(self)
        self._connect()

    @property
    def scene(self) -> ProgramScene:
        """What is shown."""
        return self._scene

    @property
    def open_place(self) -> Place | None:
        """What is edited."""
        return self._open

    @property
    def marks(self) -> frozenset[SlotPlace]:
        """The slots that are marked, to be changed together."""
        return self._marks

    def set_marks(self, places: Iterable[SlotPlace]) -> None:
        """Mark these slots of the phase looked at, and no others."""
        self._marks = frozenset(each for each in places if self._exists(each))
        for number, block in enumerate(self.days):
            for place, row in enumerate(block.rows):
                row.set_marked(SlotPlace(self._scene.at, number, place) in self._marks)
        program = self._scene.program
        self.marked.show_slots([slot_at(program, each) for each in sorted(self._marks)])

    @property
    def focused(self) -> Place | None:
        """The slot, day or phase that has the focus, or that a field belongs to."""
        if self.phases.hasFocus():
            return PHASE
        for number, block in enumerate(self.days):
            if block.head.hasFocus() or block.finder.hasFocus():
                return DayPlace(self._scene.at, number)
            for place, row in enumerate(block.rows):
                if row.hasFocus():
                    return SlotPlace(self._scene.at, number, place)
        return None

    def show_scene(self, scene: ProgramScene) -> None:
        """Show another scene; widgets, focus and an open panel stay where they can."""
        if scene.trainee != self._scene.trainee or scene.assignment is not None:
            self.assign_panel.hide()
        self._scene = scene
        days_a_week = len(scene.phase.days)
        self.head.show_program(
            scene.program, days_a_week, scene.trainee, scene.assignment, scene.today
        )
        self.phases.show_program(scene.program, scene.at, scene.week)
        if not self._exists(self._open):
            self._release()
        self._fit_days(len(scene.days))
        for block, face in zip(self.days, scene.days, strict=True):
            block.show_day(face, scene.offered)
        self.set_marks(self._marks)
        self._fill_panel()
        self.more_days.show_days(scene.more_days, scene.others)
        self.balance.show_balance(scene.program, scene.volume, scene.found, scene.exercises)
        # A week of tests is no training to be balanced.
        self.balance.setVisible(scene.phase.purpose is not PhasePurpose.ASSESS)
        if self.replace_bar.isVisible():
            self._offer_replacement(None)

    def show_draft(self, place: SlotPlace, face: SlotFace) -> None:
        """Show what would come of a number that is still being typed."""
        self.days[place.day].rows[place.slot].show_face(face)

    def open(self, place: Place, act: RowAct = RowAct.EDIT) -> None:
        """Edit a slot beneath its row, a day beneath its heading, or the phase."""
        self._release()
        self._open = place
        self._fill_panel()
        match place:
            case SlotPlace():
                self.slot_panel.take_focus(act)
                self._show_later(self.slot_panel)
            case DayPlace():
                self.day_panel.name.setFocus(Qt.FocusReason.TabFocusReason)
                self.day_panel.name.selectAll()
                self._show_later(self.day_panel)
            case _:
                self.phase_panel.name.setFocus(Qt.FocusReason.TabFocusReason)
                self.phase_panel.name.selectAll()
                self._show_later(self.phase_panel)

    def close(self) -> bool:
        """Leave what is edited; the focus goes back to its row."""
        place = self._open
        if place is not None:
            self.focus(place)
        self._release()
        return True

    def focus(self, place: Place) -> None:
        """Put the focus on a slot's row, a day's heading or the line of phases."""
        match place:
            case SlotPlace():
                row = self.days[place.day].rows[place.slot]
                row.setFocus(Qt.FocusReason.OtherFocusReason)
                self._show_later(row)
            case DayPlace():
                head = self.days[place.day].head
                head.setFocus(Qt.FocusReason.OtherFocusReason)
                self._show_later(head)
            case _:
                self.phases.setFocus(Qt.FocusReason.OtherFocusReason)
                self._show_later(self.phases)

    def focus_finder(self, day: int) -> None:
        """Put the cursor into the field that adds to a day."""
        self.days[day].finder.setFocus(Qt.FocusReason.OtherFocusReason)
        self._show_later(self.days[day].finder)

    def step(self, place: Place, by: int) -> None:
        """Put the focus on the next stop of the page: headings, rows and fields to add to."""
        stops = self._stops()
        at = -1 if place == PHASE else stops.index(self._stop_of(place))
        self._go(stops, at + by)

    def ask_replacement(self) -> None:
        """Show the bar that replaces an exercise, with the one that has the focus."""
        focused = self.focused if self._open is None else self._open
        key = None
        if isinstance(focused, SlotPlace):
            key = slot_at(self._scene.program, focused).exercise
        self._offer_replacement(key)
        self.replace_bar.show()
        self.replace_bar.take_focus()
        self._show_later(self.replace_bar)

    def _offer_replacement(self, key: str | None) -> None:
        exercises = tuple(self._scene.exercises.values())
        self.replace_bar.offer(self._scene.program, exercises, key)

    def _stops(self) -> list[QWidget]:
        return [stop for block in self.days for stop in (block.head, *block.rows, block.finder)]

    def _stop_of(self, place: Place) -> QWidget:
        match place:
            case SlotPlace():
                return self.days[place.day].rows[place.slot]
            case DayPlace():
                return self.days[place.day].head
            case _:
                return self.phases

    def _go(self, stops: list[QWidget], to: int) -> None:
        stop: QWidget = self.phases if to < 0 else stops[min(to, len(stops) - 1)]
        stop.setFocus(Qt.FocusReason.OtherFocusReason)
        self._show_later(stop)

    def _finder_left(self, day: int, by: int) -> None:
        stops = self._stops()
        self._go(stops, stops.index(self.days[day].finder) + by)

    def _show_later(self, widget: QWidget) -> None:
        """Scroll once the layout knows where the widget lies."""
        QTimer.singleShot(0, widget, lambda: self.ensureWidgetVisible(widget, 0, 40))

    def _exists(self, place: Place | None) -> bool:
        days = self._scene.phase.days
        match place:
            case SlotPlace(phase, day, slot):
                here = phase == self._scene.at and day < len(days)
                return here and slot < len(days[day].slots)
            case DayPlace(phase, day):
                return phase == self._scene.at and day < len(days)
            case _:
                return True

    def _fill_panel(self) -> None:
        place, program = self._open, self._scene.program
        for number, block in enumerate(self.days):
            if not (isinstance(place, SlotPlace | DayPlace) and place.day == number):
                block.show_panel(None, None)
        match place:
            case SlotPlace():
                scene = self._scene.panel_scene(place)
                self.slot_panel.show_slot(slot_at(program, place), scene)
                self.days[place.day].show_panel(self.slot_panel, place.slot)
                self.slot_opened.emit(place)
            case DayPlace():
                self.day_panel.show_day(self._scene.phase.days[place.day])
                self.days[place.day].show_panel(self.day_panel, None)
            case str():
                self.phase_panel.show_phase(self._scene.phase, only=len(program.phases) == 1)
                self.phase_panel.show()
            case None:
                pass

    def _release(self) -> None:
        """Take the panels out of the days, which may go."""
        self._open = None
        for block in self.days:
            block.show_panel(None, None)
        for panel in (self.slot_panel, self.day_panel):
            panel.hide()
            panel.setParent(self)
        self.phase_panel.hide()

    def _fit_days(self, count: int) -> None:
        while len(self.days) > count:
            block = self.days.pop()
            self.body.removeWidget(block)
            block.hide()
            block.deleteLater()
        while len(self.days) < count:
            self._add_block(len(self.days))

    def _add_block(self, number: int) -> None:
        block = DayBlock(self._theme)
        block.row_acted.connect(
            lambda slot, act: self.acted.emit(SlotPlace(self._scene.at, number, slot), act)
        )
        block.head_acted.connect(lambda act: self.acted.emit(DayPlace(self._scene.at, number), act))
        block.added.connect(lambda exercise, said: self._add(number, exercise, said))
        block.finder_left.connect(lambda by: self._finder_left(number, by))
        self.body.insertWidget(self._days_end() + number, block)
        block.show()  # at once, so that its field can take the focus
        self.days.append(block)

    def _days_end(self) -> int:
        return self.body.indexOf(self.marked) + 1

    def _add(self, day: int, exercise: Exercise, said: Shorthand) -> None:
        self.added.emit(DayPlace(self._scene.at, day), exercise, said)

    def _connect(self) -> None:
        self.phases.chosen.connect(self.phase_chosen)
        self.phases.acted.connect(lambda act: self.acted.emit(PHASE, act))
        self.phase_panel.acted.connect(lambda act: self.acted.emit(PHASE, act))
        self.day_panel.acted.connect(lambda act: self._act_open(act))
        self.slot_panel.acted.connect(lambda act: self._act_open(act))
        for panel in (self.phase_panel, self.day_panel, self.slot_panel):
            panel.closed.connect(self.close)
        self.slot_panel.shown_anew.connect(self._fill_panel)
        self.more.clicked.connect(self.day_wanted)
        for key, act in (
            (DAY_KEY, self.day_wanted.emit),
            (REPLACE_KEY, self.ask_replacement),
            (SHELF_KEY, self.head.shelf_wanted.emit),
            (TEST_KEY, self.head.test_wanted.emit),
            (GIVE_KEY, self.head.give),
        ):
            QShortcut(QKeySequence(key), self).activated.connect(act)
        self.replace_bar.closed.connect(self._close_replacement)
        self.assign_panel.closed.connect(self._close_assignment)
        self.head.name.given_up.connect(lambda: self.step(PHASE, 1))
        self.head.name.done.connect(self._go_on)
        self.head.replace_wanted.connect(self.ask_replacement)
        self.head.assign_wanted.connect(self._ask_assignment)

    def _act_open(self, act: RowAct) -> None:
        if self._open is not None:
            self.acted.emit(self._open, act)

    def _go_on(self) -> None:
        """From the name to where something is missing: an empty day, else the phases."""
        empty = next((n for n, block in enumerate(self.days) if not block.rows), None)
        if empty is None:
            self.focus(PHASE)
        else:
            self.focus_finder(empty)

    def _close_replacement(self) -> None:
        self.replace_bar.hide()
        self.step(PHASE, 1)

    def _close_assignment(self) -> None:
        self.assign_panel.hide()
        self.step(PHASE, 1)

    def _ask_assignment(self) -> None:
        if self._scene.trainee is not None:
            self.assign_panel.ask(self._scene.program, self._scene.trainee)
