"""Assessments: what a test day asks of each line, and the starts that its session gives."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date
from typing import Final

from desktop.planning.clearance import clearance_needed
from desktop.planning.history import History
from desktop.planning.lines import ASSESSMENT_START as ASSESSMENT_START
from desktop.planning.lines import PROGRAM_START, rule_revisions
from desktop.planning.schedule import place_on, slot_in_phase
from desktop.planning.standing import Standing
from desktop.planning.surroundings import scope_of, surroundings_at
from desktop.training.assessment import AssessmentError, EffortLimits, limits_for
from desktop.training.assessment_day import LineTest, line_test, start_from_test
from desktop.training.position import Position, ProgressionRule
from desktop.training.program import Line, LineStart, PhasePurpose
from desktop.training.reasons import ReasonCode, reason
from desktop.training.sentence import sentence, sentence_of
from desktop.training.session import LineDone, Session
from desktop.training.target import Target

USUAL_SETS: Final = 3


@dataclass(frozen=True, slots=True)
class AssessmentRead:
    """What one line's test gave: the line with its new start, to be saved; or why none could be
    read (``why`` "" where one was). ``before``: where the line began or stood by its last start.
    """

    line: Line
    start: LineStart | None
    before: LineStart | None
    why: str = ""


def is_test_day(history: History, day: date) -> bool:
    """Whether the program has its tests on ``day``."""
    place = place_on(history, day)
    return (
        place is not None and place.phase is not None and place.phase.purpose is PhasePurpose.ASSESS
    )


def effort_limits(history: History, day: date) -> EffortLimits:
    """How hard the trainee may be tested on ``day``. The age is taken at its lowest, since only
    the year of birth is known; cleared is who has a clear screening, or a clearance.
    """
    trainee = history.trainee
    age = None if trainee.birth_year is None else day.year - trainee.birth_year - 1
    given = trainee.screening_clear is True or any(one.day <= day for one in trainee.clearances)
    cleared = given and clearance_needed(history, day) is None
    return limits_for(trainee.experience, age, cleared=cleared)


def line_test_on(history: History, standing: Standing, day: date) -> LineTest | None:
    """The test of a line on ``day``; None where nothing may be asked of it (pain)."""
    state = standing.state
    if state.held is not None:
        return None
    trained = any(
        session.day < day and not part.test for session, part in history.trained(standing.line)
    )
    return line_test(
        standing.exercise,
        state.rule,
        state.surroundings,
        effort_limits(history, day),
        position=state.position,
        known_strength=trained,
    )


def target_of(standing: Standing, test: LineTest) -> Target:
    """The test as what the day asks."""
    limits = test.limits
    why = reason(
        ReasonCode.TEST,
        fewest=limits.fewest_reps,
        most=limits.most_reps,
        stop_rir=limits.stop_rir,
        hold=test.sets[0].seconds is not None,
        rising=len(test.sets) > 1,
    )
    return Target(standing.state.position or _position_of(test), test.sets, why)


def _position_of(test: LineTest) -> Position:
    """A test as a position, for a line that stands nowhere yet."""
    first = test.sets[0]
    return Position(
        first.load_g,
        first.reps,
        len(test.sets),
        hold_s=first.seconds,
        variation=first.variation,
    )


def read_test(history: History, session: Session, part: LineDone) -> AssessmentRead:
    """What the test ``part`` of a session gave; the session need not be among the record's."""
    line = history.line(part.line_id)
    exercise = history.exercise_of(line)
    before = max(line.starts, key=lambda one: one.day, default=None)
    if part.exercise != line.exercise:
        return AssessmentRead(line, None, before, sentence("another exercise was done"))
    rule, sets = _rule_after(history, line, session.day)
    scope = scope_of(history, line, (rule,))
    around = surroundings_at(history, line, session.day, scope)
    try:
        position, plus_minus = start_from_test(exercise, part.sets, sets, rule, around)
    except AssessmentError as error:
        return AssessmentRead(line, None, before, sentence_of(error))
    start = LineStart(session.day, position, ASSESSMENT_START, plus_minus)
    return AssessmentRead(replace(line, starts=_with(history, line, start)), start, before)


def _rule_after(history: History, line: Line, day: date) -> tuple[ProgressionRule, int]:
    """The rule that the line trains by, or will, and the sets of the phase after the tests."""
    revisions = rule_revisions(history, line)
    begun = [one.rule for one in revisions if one.day <= day]
    coming = [one.rule for one in revisions if one.day > day]
    rule = begun[-1] if begun else coming[0] if coming else ProgressionRule()
    place = place_on(history, day)
    if place is not None and place.phase is not None:
        phases = place.program.phases
        for phase in phases[phases.index(place.phase) :]:
            slot = slot_in_phase(phase, line.exercise, line.name)
            if slot is not None and phase.purpose is PhasePurpose.BUILD:
                return rule, slot.start.sets
    return rule, _sets_of(line)


def _sets_of(line: Line) -> int:
    last = max(line.starts, key=lambda one: one.day, default=None)
    return last.position.sets if last else USUAL_SETS


def _with(history: History, line: Line, start: LineStart) -> tuple[LineStart, ...]:
    """The line's starts with that of the test in place of an earlier reading of the same day, and,
    where nothing was trained before, of what the program had supposed.
    """
    trained = any(session.day < start.day for session, _ in history.trained(line))
    kept = [
        one
        for one in line.starts
        if not (one.kind == ASSESSMENT_START and one.day == start.day)
        and not (one.kind == PROGRAM_START and one.day <= start.day and not trained)
    ]
    return tuple(sorted((*kept, start), key=lambda one: one.day))
