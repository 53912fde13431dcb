"""The desk of the past: what can be done to sessions on record, each with its effect beforehand.

It holds no widget. Each act is one step for undo.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import date

from PySide6.QtCore import QCoreApplication

from desktop.planning.assessment_starts import lines_to_save
from desktop.planning.past import NoRepair, Repair, joined, moved, near, repaired, why_not
from desktop.planning.past_effects import PastEffect, past_effect
from desktop.training.exercises import Exercise
from desktop.training.program import Line
from desktop.training.session import Session
from views import words
from views.past_texts import repair_text
from views.record import Record

translate = QCoreApplication.translate

_NEW = -1


@dataclass(frozen=True, slots=True)
class Act:
    """What would be done: its word, what to say first, what it changes, and the doing itself,
    which says whether it succeeded.
    """

    title: str
    word: str
    effect: PastEffect
    do: Callable[[], bool]
    more: str = ""


class PastDesk:
    """Acts on the sessions of one trainee."""

    def __init__(self, record: Record, today: date) -> None:
        self._record, self._today = record, today

    def near(self, session: Session) -> tuple[Session, ...]:
        """Sessions that may be another part of this one."""
        assert session.id is not None
        return near(session, self._record.repository.sessions(session.trainee_id))

    def move(self, session: Session, day: date) -> Act:
        """The session on another day."""
        after = moved(session, day)
        said = translate("Past", "Move the session of {day} to {other}")
        title = said.format(day=self._day(session.day), other=self._day(day))
        effect = past_effect(self._record.repository, [session], [after], self._today)
        word = translate("Past", "Move it")
        return Act(title, word, effect, lambda: self._save(title, [session], [after]))

    def join(self, kept: Session, gone: Session) -> Act:
        """Two sessions as one, on the day of ``kept``."""
        after = joined(kept, gone)
        said = translate("Past", "Join the session of {other} into that of {day}")
        title = said.format(day=self._day(kept.day), other=self._day(gone.day))
        effect = past_effect(self._record.repository, [kept, gone], [after], self._today)
        return Act(
            title,
            translate("Past", "Join them"),
            effect,
            lambda: self._join(title, kept, gone, after),
            translate("Past", "Every set of both is kept."),
        )

    def remove(self, session: Session) -> Act:
        """The session no more."""
        title = translate("Past", "Remove the session of {day}").format(day=self._day(session.day))
        effect = past_effect(self._record.repository, [session], [], self._today)
        word = translate("Past", "Remove it")
        return Act(title, word, effect, lambda: self._remove(title, session))

    def repair(self, source: Line, exercise: Exercise, name: str) -> tuple[Act | None, NoRepair]:
        """All sessions of a line as those of another exercise and line name; None and why where
        that cannot be.
        """
        repository = self._record.repository
        assert source.id is not None
        sessions = repository.sessions_with_line(source.id)
        known = repository.line_of(source.trainee_id, exercise.key, name)
        target = known or Line(source.trainee_id, exercise.key, name)
        was = repository.exercise(source.exercise)
        why = why_not(sessions, source, target, (was, exercise))
        if why is not NoRepair.POSSIBLE:
            return None, why
        seen = target if known is not None else replace(target, id=_NEW)
        repair = repaired(sessions, source, seen, exercise)
        effect = past_effect(
            repository, sessions, repair.sessions, self._today, () if known else (seen,)
        )
        said = translate("Past", "{count} sessions of {line} become {other}")
        title = said.format(
            count=words.number(len(repair.sessions)),
            line=_said(was, source.name),
            other=_said(exercise, name),
        )
        act = Act(
            title,
            translate("Past", "Change them all"),
            effect,
            lambda: self._carry_out(title, repair, target, exercise, source),
            repair_text(repair, self._today),
        )
        return act, why

    def _carry_out(
        self, title: str, repair: Repair, target: Line, exercise: Exercise, source: Line
    ) -> bool:
        before = [self._record.repository.session(each.id or 0) for each in repair.sessions]
        if target.id is not None:
            return self._save(title, before, repair.sessions)
        with self._record.together(title):
            made = self._record.save(translate("Past", "Add an exercise"), target)
            if made is None:
                return False
            again = repaired(before, source, made[0], exercise)
            return self._save(title, before, again.sessions)

    def _save(self, title: str, before: Sequence[Session], after: Sequence[Session]) -> bool:
        """Sessions in place of ``before``, with the starts that their tests give."""
        lines = lines_to_save(self._record.repository, before, after)
        return self._record.save(title, *after, *lines) is not None

    def _join(self, title: str, kept: Session, gone: Session, after: Session) -> bool:
        lines = lines_to_save(self._record.repository, [kept, gone], [after])
        return self._record.replace(title, [gone], [after, *lines]) is not None

    def _remove(self, title: str, session: Session) -> bool:
        lines = lines_to_save(self._record.repository, [session], [])
        if not lines:
            return self._record.remove(title, session)
        return self._record.replace(title, [session], lines) is not None

    def _day(self, day: date) -> str:
        return words.short_day(day, self._today)


def _said(exercise: Exercise, name: str) -> str:
    return f"{exercise.name}, {name}" if name else exercise.name
