"""Marked slots of the phase looked at: marked by key, changed, copied and removed together."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import QObject

from desktop.training.program import Program
from desktop.training.program_edits import DayPlace, SlotPlace
from desktop.training.several_slots import SharedEdit, with_shared_edit, without_slots
from views import words
from views.acting_row import RowAct
from views.program_page import PHASE, Place, ProgramPage

Save = Callable[[Program, str], bool]


class ProgramMarks(QObject):
    """Keeps which slots are marked; ``save(program, text)`` writes an edit of them."""

    def __init__(self, page: ProgramPage, save: Save) -> None:
        super().__init__(page)
        self._page, self._save = page, save
        page.marked.edited.connect(self._edit)
        page.marked.closed.connect(self._closed)
        page.marked.acted.connect(self._acted)

    @property
    def places(self) -> tuple[SlotPlace, ...]:
        """The slots that are marked, in order."""
        return tuple(sorted(self._page.marks))

    def act(self, place: Place, act: RowAct) -> None:
        """What a key asks: mark this one, all, or this and the next."""
        page = self._page
        match act, place:
            case RowAct.MARK_ALL, _:
                everything = self._of_phase()
                same = set(everything) == page.marks
                page.set_marks(() if same else everything)
            case RowAct.MARK, SlotPlace():
                page.set_marks(page.marks ^ {place})
            case RowAct.MARK, DayPlace():
                slots = {each for each in self._of_phase() if each.day == place.day}
                marked = page.marks - slots if slots <= page.marks else page.marks | slots
                page.set_marks(marked)
            case RowAct.MARK_AFTER | RowAct.MARK_BEFORE, SlotPlace():
                self._extend(place, 1 if act is RowAct.MARK_AFTER else -1)
            case _:
                pass

    def remove(self) -> bool:
        """Remove what is marked; False where nothing is."""
        places = self.places
        if not places:
            return False
        text = self.tr("Remove {count} slots").format(count=words.number(len(places)))
        day = places[0].day
        self._page.set_marks(())
        if self._save(without_slots(self._page.scene.program, places), text):
            self._page.focus(DayPlace(places[0].phase, day))
        return True

    def clear(self) -> bool:
        """Unmark everything; False where nothing was marked."""
        there = bool(self._page.marks)
        self._page.set_marks(())
        return there

    def _extend(self, place: SlotPlace, by: int) -> None:
        """Mark this slot and the one beside it, and go there."""
        order = self._of_phase()
        to = order.index(place) + by
        there = order[to] if 0 <= to < len(order) else place
        page = self._page
        page.set_marks(page.marks | {place, there})
        page.focus(there)

    def _of_phase(self) -> list[SlotPlace]:
        at = self._page.scene.at
        days = self._page.scene.phase.days
        return [
            SlotPlace(at, day, slot)
            for day, each in enumerate(days)
            for slot in range(len(each.slots))
        ]

    def _edit(self, edit: SharedEdit, name: str) -> None:
        program = self._page.scene.program
        changed = with_shared_edit(program, self.places, edit)
        if changed == program:
            return
        count = words.number(len(self.places))
        text = self.tr("{count} slots: {what}").format(count=count, what=name)
        self._save(changed, text)

    def _acted(self, act: RowAct) -> None:
        if act is RowAct.REMOVE:
            self.remove()
        elif self.places:
            self._page.acted.emit(replace(self.places[0]), act)

    def _closed(self) -> None:
        first = next(iter(self.places), None)
        self.clear()
        self._page.focus(first if first is not None else PHASE)
