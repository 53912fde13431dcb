"""One line's history: of the sessions, that line's part alone. Ten years of it are read at once
where reading all that was trained would keep the coach waiting.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date

from db.line_parts import line_parts
from db.repository import Repository
from desktop.planning.history import History, Library, library_known, shipped_limits
from desktop.training.exercises import LoadingKind
from desktop.training.program import Assignment, Line


def read_about(repository: Repository, trainee_id: int) -> History:
    """All that is known of a trainee but the sessions, the activities and what was dismissed.

    Of a library not in memory, the exercises of the trainee's lines and the programs assigned.
    """
    lines = repository.lines(trainee_id)
    assignments = repository.assignments(trainee_id)
    return History(
        trainee=repository.trainee(trainee_id),
        library=library_known(repository) or _library_of(repository, lines, assignments),
        lines=lines,
        assignments=assignments,
        body_masses=repository.body_masses(trainee_id),
        equipment=repository.equipment(trainee_id),
        deloads=repository.deloads(trainee_id),
        absences=repository.absences(trainee_id),
        goals=repository.goals(trainee_id),
    )


def _library_of(
    repository: Repository, lines: Iterable[Line], assignments: Iterable[Assignment]
) -> Library:
    return Library(
        repository.exercises_called({line.exercise for line in lines}),
        {key: repository.program(key) for key in {one.program_id for one in assignments}},
        repository.coach_settings(),
        shipped_limits(),
    )


def with_line(repository: Repository, about: History, line: Line, today: date) -> History:
    """``about`` with the sessions of one line up to ``today``, cut down to that line."""
    if line.id is None:
        return about
    # Of what was asked only the variations concern a chart.
    asked = about.exercise_of(line).loading is LoadingKind.BODYWEIGHT
    return about.with_sessions(line_parts(repository.database, line.id, today, asked=asked))
