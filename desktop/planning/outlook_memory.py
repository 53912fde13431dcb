"""Outlooks kept while what they were computed from stays the same: an edit of one slot computes
that one, and those of the same exercise.
"""

from __future__ import annotations

from dataclasses import dataclass

from desktop.planning.outlook import SESSIONS, Onlooker, SlotOutlook, outlook
from desktop.training.program import PhasePurpose, Program, Slot
from desktop.training.program_edits import SlotPlace, slot_at

_Day = tuple[int | None, str, tuple[Slot, ...]]
_Skeleton = tuple[tuple[int, PhasePurpose, tuple[_Day, ...]], ...]
"""A program as far as it concerns one exercise: weeks, purposes, days, and the slots with it."""


@dataclass(frozen=True, slots=True)
class _Known:
    slot: Slot
    skeleton: _Skeleton
    count: int
    seen: SlotOutlook


class OutlookMemory:
    """Remembers the outlook of every slot of one program."""

    def __init__(self) -> None:
        self._facts: tuple[object, ...] = ()
        self._known: dict[SlotPlace, _Known] = {}

    def outlook(
        self, program: Program, place: SlotPlace, onlooker: Onlooker, count: int = SESSIONS
    ) -> SlotOutlook:
        """Where the slot at ``place`` stands and its next ``count`` sessions.

        Raises UnknownExercise.
        """
        self._meet(onlooker)
        slot = slot_at(program, place)
        skeleton = _skeleton(program, slot.exercise)
        known = self._known.get(place)
        if known is not None and (known.slot, known.count, known.skeleton) == (
            slot,
            count,
            skeleton,
        ):
            return known.seen
        seen = outlook(program, place.phase, slot, onlooker.with_program(program), count)
        self._known[place] = _Known(slot, skeleton, count, seen)
        return seen

    def _meet(self, onlooker: Onlooker) -> None:
        """Forget everything where anything but the program is not what it was."""
        history, library = onlooker.history, onlooker.library
        facts: tuple[object, ...] = (onlooker.today, library.exercises, library.settings)
        if history is not None:
            facts += (
                history.trainee,
                history.lines,
                history.assignments,
                history.sessions,
                history.body_masses,
                history.equipment,
                history.deloads,
                history.absences,
            )
        same = len(facts) == len(self._facts) and all(
            one is other for one, other in zip(facts, self._facts, strict=True)
        )
        if not same:
            self._known.clear()
            self._facts = facts


def _skeleton(program: Program, exercise: str) -> _Skeleton:
    return tuple(
        (
            phase.weeks,
            phase.purpose,
            tuple(
                (day.weekday, day.name, tuple(s for s in day.slots if s.exercise == exercise))
                for day in phase.days
            ),
        )
        for phase in program.phases
    )
