"""Briefs: a trainee's record boiled down to the dated facts that cautions and the desk rest on."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import date, timedelta
from itertools import pairwise
from typing import Final

from desktop.planning.build import build_mark as build_mark
from desktop.planning.clearance import red_flags, uncleared_red_flag, uncleared_screening
from desktop.planning.history import History
from desktop.planning.line_briefs import line_brief
from desktop.planning.schedule import DAY, WEEK, phase_spans, place_on, weekdays_of
from desktop.planning.standing import LineKey, Standing, key_of, lines_of_slots, standings_on
from desktop.training import recovery
from desktop.training.brief import ActivityBrief, Brief, LineName, SessionBrief, Told, Turn
from desktop.training.deload import COMPARED, WorkDone, mean_wellness
from desktop.training.exercises import LoadingKind, Muscle, Pattern
from desktop.training.limits import LimitId
from desktop.training.program import Line
from desktop.training.recovery import Caution
from desktop.training.schedule import frequency_planned
from desktop.training.session import Session
from desktop.training.volume import muscle_shares, sets_done

IN_USE: Final = 8 * WEEK
"""A line trained within this time is in use, whatever the program says."""

KEPT: Final = COMPARED + DAY
"""Sessions and activities of so long go into a brief one by one."""

A_BREAK: Final = timedelta(days=10)
"""So long without a session is as good as an easier week (common practice)."""

MAJOR: Final = (
    Muscle.QUADRICEPS,
    Muscle.HAMSTRINGS,
    Muscle.GLUTES,
    Muscle.CHEST,
    Muscle.UPPER_BACK,
    Muscle.LATS,
    Muscle.SHOULDERS,
    Muscle.TRUNK,
)
"""The major muscle groups that are to be trained twice a week."""


def standings_in_use(
    history: History, day: date, *, evening: bool = False
) -> dict[LineKey, Standing]:
    """Where the lines stand that the phase of ``day`` asks for or that were trained lately:
    before the day's session, or with it, in the ``evening``.
    """
    lines = {key_of(line): line for line in _lines_of_phase(history, day)}
    lately = {
        part.line_id
        for session in history.sessions
        if day - IN_USE <= session.day <= day
        for part in session.lines
    }
    for line in history.lines:
        if line.id in lately:
            lines.setdefault(key_of(line), line)
    return standings_on(history, day, lines.values(), evening=evening)


def brief_of(
    history: History, day: date, standings: Mapping[LineKey, Standing] | None = None
) -> Brief:
    """The trainee in brief as of ``day``; the lines as ``standings`` says (None: as in the evening,
    with the sessions of that day). Goals and spark line are not in it: see `desk.desk_brief_of`.
    """
    if standings is None:
        standings = standings_in_use(history, day, evening=True)
    asked = {key_of(line) for line in _lines_of_phase(history, day)}
    done = [session for session in history.sessions if session.day <= day]
    days = sorted({session.day for session in done})
    return Brief(
        trainee=history.trainee,
        first=day,
        until=next_change(history, day),
        assignments=history.assignments,
        deloads=history.deloads,
        absences=history.absences,
        dismissed=history.dismissed,
        activities=tuple(
            ActivityBrief(one.day, one.effort, one.minutes)
            for one in history.activities
            if one.day >= day - KEPT
        ),
        sessions=tuple(session_brief(history, one) for one in done if one.day >= day - KEPT),
        turns=_turns(done),
        began=days[0] if days else None,
        last=days[-1] if days else None,
        began_again=began_again(days),
        holds=tuple(Told.of(one) for one in _holding(history, day) if one is not None),
        lines=tuple(
            line_brief(history, day, standing, standings, key in asked)
            for key, standing in standings.items()
        ),
        names=tuple(
            LineName(line.id, line.exercise, line.name)
            for line in history.lines
            if line.id is not None
        ),
    )


def next_change(history: History, day: date) -> date:
    """The first day after ``day`` on which something on record or in the program may move a line,
    at the latest the new year, when everybody is a year older.
    """
    return min(one for one in _changes(history, day) if one > day)


def began_again(days: Iterable[date]) -> date | None:
    """Of the ``days`` trained (ascending), the first one after the last break; None without any."""
    ordered = list(days)
    if not ordered:
        return None
    after_break = [later for earlier, later in pairwise(ordered) if later - earlier >= A_BREAK]
    return max((ordered[0], *after_break))


def session_brief(history: History, session: Session) -> SessionBrief:
    """A session without its sets."""
    exercises = history.library.exercises
    hard: dict[Pattern, int] = {}
    muscles: dict[Muscle, None] = {}
    for part in session.lines:
        exercise, count = exercises[part.exercise], sets_done(part)
        if not part.deload:
            hard[exercise.pattern] = hard.get(exercise.pattern, 0) + count
        if count:
            muscles |= dict.fromkeys(muscle_shares(exercise))
    return SessionBrief(
        day=session.day,
        id=session.id,
        effort=session.effort,
        minutes=session.minutes,
        wellness=mean_wellness(session.wellness),
        sore=any(part.worst_pain for part in session.lines),
        eased=any(part.deload for part in session.lines),
        volume_g=_volume(history, session),
        hard=tuple(hard.items()),
        muscles=tuple(muscles),
        work=_work(session),
    )


def _lines_of_phase(history: History, day: date) -> list[Line]:
    place = place_on(history, day)
    if place is None or place.phase is None:
        return []
    slots = [slot for planned in place.phase.days for slot in planned.slots]
    return lines_of_slots(history, slots, place.assignment)


def _changes(history: History, day: date) -> Iterable[date]:
    yield date(day.year + 1, 1, 1)
    for dated in (history.sessions, history.equipment, history.body_masses):
        yield from (one.day for one in dated)
    for line in history.lines:
        for told in (line.revisions, line.starts, line.overrides):
            yield from (one.day for one in told)
    yield from (one.day for one in history.trainee.clearances)
    if history.trainee.screened is not None:
        yield history.trainee.screened
    for assignment in history.assignments:
        yield assignment.start
        yield from (move.day for move in assignment.moves)
        if assignment.ended is not None:
            yield assignment.ended + DAY
        for span in phase_spans(assignment, history.library.programs[assignment.program_id]):
            yield from (span.first, span.last + DAY)


def _turns(done: Iterable[Session]) -> tuple[Turn, ...]:
    """The last session of each training day of each program, and the last of all, by day."""
    last: dict[tuple[int | None, str], Turn] = {}
    for one in done:  # they come by day and entry
        turn = Turn(one.day, one.entry, one.program_id, one.day_name)
        last[turn.program_id, turn.day_name] = turn
    return tuple(sorted(last.values(), key=lambda turn: (turn.day, turn.entry)))


def _holding(history: History, day: date) -> tuple[Caution | None, ...]:
    """The cautions of the trainee that hold until something is written or the phase ends."""
    limits, trainee = history.library.limits, history.trainee
    flagged, refused = uncleared_red_flag(history, day), uncleared_screening(history, day)
    ids = tuple(s.id for s in red_flags(history, day) if s.day == flagged and s.id is not None)
    return (
        recovery.red_flag(limits[LimitId.RED_FLAG], flagged, ids) if flagged else None,
        recovery.clearance(limits[LimitId.CLEARANCE], refused) if refused else None,
        recovery.screening(limits[LimitId.SCREENING], trainee.screened),
        recovery.minor(limits[LimitId.MINOR], trainee.birth_year, day),
        recovery.older(limits[LimitId.OLDER], trainee.birth_year, day),
        recovery.load_incomplete(limits[LimitId.LOAD_INCOMPLETE], trainee.activities_recorded),
        _planned_too_seldom(history, day),
    )


def _planned_too_seldom(history: History, day: date) -> Caution | None:
    """Muscle groups that the phase's week trains too seldom; minors have guidance of their own."""
    limits = history.library.limits
    place = place_on(history, day)
    if place is None or place.phase is None:
        return None
    if recovery.minor(limits[LimitId.MINOR], history.trainee.birth_year, day) is not None:
        return None
    days = weekdays_of(history, place)
    times = frequency_planned(
        place.phase, history.library.exercises, float(len(days)) if days else None
    )
    by_muscle = {muscle: times.by_muscle.get(muscle, 0.0) for muscle in MAJOR}
    return recovery.too_seldom(limits[LimitId.TOO_SELDOM], by_muscle, planned=True)


def _work(session: Session) -> tuple[WorkDone, ...]:
    """The last working set of each line outside of easier weeks, where its reserve was told."""
    return tuple(
        WorkDone(part.line_id, (last.load_g, last.variation, last.amount), session.day, last.rir)
        for part in session.lines
        if not part.deload
        for last in part.working_sets[-1:]
        if last.rir is not None
    )


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
