"""Signals: what in one trainee's record points to a deload."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date

from desktop.planning.history import History
from desktop.training.deload import (
    COMPARED,
    Effort,
    Seen,
    WorkDone,
    aches,
    effort_rising,
    mean_wellness,
    plateaus,
    wellness_down,
)
from desktop.training.exercises import LoadingKind
from desktop.training.session import Session


def deload_signals(
    history: History, today: date, plateau_of: Mapping[int, float], at_least: float
) -> tuple[Seen, ...]:
    """The signals seen ``today``; ``plateau_of`` gives each line's probability of a plateau, of
    which ``at_least`` counts.
    """
    sessions = [one for one in history.sessions if today - COMPARED < one.day <= today]
    felt = [(one.day, mean_wellness(one.wellness)) for one in sessions]
    sore = [one.day for one in sessions if any(part.worst_pain for part in one.lines)]
    seen = (
        plateaus(plateau_of, at_least),
        wellness_down([(day, mean) for day, mean in felt if mean is not None], today),
        effort_rising(_work(sessions), _efforts(history, sessions), today),
        aches(sore, today),
    )
    return tuple(each for each in seen if each is not None)


def _work(sessions: list[Session]) -> list[WorkDone]:
    """The last working set of each line outside of easier weeks, where its reserve was told."""
    return [
        WorkDone(part.line_id, (last.load_g, last.variation, last.amount), one.day, last.rir)
        for one in sessions
        for part in one.lines
        if part.working_sets and not part.deload
        for last in part.working_sets[-1:]
        if last.rir is not None
    ]


def _efforts(history: History, sessions: list[Session]) -> list[Effort]:
    """Each rated session with its volume load; added load only where the body is the load."""
    return [
        Effort(one.day, one.effort, _volume(history, one))
        for one in sessions
        if one.effort is not None and not any(part.deload for part in one.lines)
    ]


def _volume(history: History, session: Session) -> float:
    """Load times repetitions; for bodyweight exercises with the body's own mass."""
    total = 0.0
    for part in session.lines:
        exercise = history.library.exercises[part.exercise]
        body_g = 0
        if exercise.loading is LoadingKind.BODYWEIGHT:
            body_g = history.body_mass_on(session.day) or 0
        reps_and_loads = ((one.reps or 0, one.load_g + body_g) for one in part.working_sets)
        total += exercise.implements * sum(reps * load_g for reps, load_g in reps_and_loads)
    return total
