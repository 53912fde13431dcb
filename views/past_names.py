"""How a trainee's past is written: names of lines, and the rows of the list."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date

from PySide6.QtCore import QCoreApplication

from desktop.planning.past_list import PastLine, PastSession
from desktop.planning.session_draft import SessionDraft
from desktop.training.exercises import Exercise, LoadingKind
from desktop.training.program import Line
from desktop.training.quantities import Unit
from desktop.training.session import Session
from views import words
from views.past_table import PastRow
from views.past_texts import sets_done

translate = QCoreApplication.translate


@dataclass(frozen=True, slots=True)
class PastNames:
    """The exercises by key and the trainee's lines by id, as they are said."""

    today: date
    exercises: Mapping[str, Exercise] = field(default_factory=dict)
    lines: Mapping[int, Line] = field(default_factory=dict)
    unit: Unit = Unit.KG

    def of_line(self, line: Line) -> str:
        """A line: "Back squat, heavy"."""
        return self._said(line.exercise, line.name)

    def of_part(self, part: PastLine) -> str:
        """The line of a part of a session."""
        return self._said(part.exercise, part.line_name)

    def of_session(self, session: Session) -> str:
        """A session: its day, and what was done."""
        names = [self.of_line(self.lines[part.line_id]) for part in session.lines]
        return words.DOT.join((words.short_day(session.day, self.today), words.listed(names)))

    def days(self, session: PastSession) -> tuple[str, ...]:
        """How the day of a session may be written in a search."""
        return words.short_day(session.day, self.today), words.long_day(session.day)

    def row(self, session: PastSession, parts: Sequence[PastLine], *, sets: bool) -> PastRow:
        """A session in the list with some of its exercises, and their ``sets`` or only names."""
        if sets:
            shown = words.DOT.join(self._with_sets(part) for part in parts)
        else:
            shown = words.listed([self.of_part(part) for part in parts])
        count = sum(not done.warm_up for part in parts for done in part.sets)
        notes = [session.note, *(part.note for part in parts)]
        note = "; ".join(each for each in notes if each)
        day = words.short_day(session.day, self.today)
        return PastRow(session.session_id, session.day, day, shown, count, note)

    def draft_row(self, draft: SessionDraft) -> PastRow:
        """What was typed and not saved yet, in the list."""
        typed = [each for each in draft.lines if not each.blank]
        shown = words.listed([self._said(each.exercise, each.line_name) for each in typed])
        count = sum(bool(done.done.strip()) for part in draft.lines for done in part.sets)
        day = words.short_day(draft.day, self.today)
        note = translate("Past", "not saved yet")
        return PastRow(None, draft.day, day, shown, count, note)

    def _with_sets(self, part: PastLine) -> str:
        exercise = self.exercises.get(part.exercise)
        bodyweight = exercise is not None and exercise.loading is LoadingKind.BODYWEIGHT
        done = sets_done(part.sets, self.unit, bodyweight=bodyweight)
        return f"{self.of_part(part)} {done}".strip()

    def _said(self, exercise: str, name: str) -> str:
        known = self.exercises.get(exercise)
        said = known.name if known else exercise
        return f"{said}, {name}" if name else said
