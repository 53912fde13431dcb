"""One line's history: of the sessions, that line's part alone. Ten years of it are read at once
where reading all that was trained would keep the coach waiting.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from db.line_parts import line_parts
from db.repository import Repository
from desktop.planning.history import History, read_facts, read_library
from desktop.planning.tracks import Tracks
from desktop.training.exercises import LoadingKind
from desktop.training.program import Line


def read_about(repository: Repository, trainee_id: int) -> History:
    """All that is known of a trainee but the sessions. It has tracks of its own, since the
    sessions of one line are another record than all of them.
    """
    facts = read_facts(repository, trainee_id)
    return replace(facts, library=read_library(repository), tracks=Tracks())


def with_line(repository: Repository, about: History, line: Line, today: date) -> History:
    """``about`` with the sessions of one line up to ``today``, cut down to that line."""
    if line.id is None:
        return about
    # Of what was asked only the variations concern a chart.
    asked = about.exercise_of(line).loading is LoadingKind.BODYWEIGHT
    return about.with_sessions(line_parts(repository.database, line.id, today, asked=asked))
