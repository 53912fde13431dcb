"""Cautions: every check of recovery on one trainee's record, without what was set aside."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import pairwise
from typing import Final

from db.repository import Repository
from desktop.planning.clearance import red_flags, uncleared_red_flag, uncleared_screening
from desktop.planning.history import History, read_history
from desktop.planning.progress import plateau_probability, points_of, surroundings_by_day, trend_of
from desktop.planning.schedule import (
    DAY,
    WEEK,
    deload_on,
    deload_windows,
    place_on,
    slot_in_phase,
    training_days,
    weekdays_of,
)
from desktop.planning.signals import deload_signals
from desktop.planning.standing import LineKey, Standing, key_of, lines_of_slots, standings_on
from desktop.planning.surroundings import trained_parts
from desktop.training import recovery
from desktop.training.asking import untrained_days
from desktop.training.deload import reactive_deload
from desktop.training.demand import effective_load_g, position_demand
from desktop.training.exercises import Muscle, Pattern
from desktop.training.limits import Limit, LimitId, Severity
from desktop.training.program import Line
from desktop.training.reasons import ReasonCode
from desktop.training.recovery import Caution, HardDay, evidence_key, is_dismissed
from desktop.training.schedule import frequency_done, frequency_planned
from desktop.training.state import Step
from desktop.training.trainee import DismissedCaution
from desktop.training.volume import sets_done
from desktop.training.workload import daily_loads, monotony

RECENT: Final = 4 * WEEK
"""Steps and sessions further back are no longer looked at."""

IN_USE: Final = 8 * WEEK
"""A line trained within this time is in use, whatever the program says."""

PLATEAU_SPAN: Final = 26 * WEEK
"""How far back a plateau is looked for; the present slope hardly depends on what is older."""

A_BREAK: Final = timedelta(days=10)
"""So long without a session is as good as an easier week (common practice)."""

HARD_SETS: Final = 2
"""So many working sets make a session hard for a pattern (common practice)."""

SPACED: Final = frozenset(Pattern) - {Pattern.TRUNK, Pattern.SINGLE_JOINT}
"""Patterns whose hard sessions want a full day between them."""

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

_SEVERITIES: Final = (Severity.STOP, Severity.CAUTION, Severity.NOTE)
_IDS: Final = tuple(LimitId)


def cautions(repository: Repository, trainee_id: int, today: date) -> tuple[Caution, ...]:
    """What speaks against asking more of a trainee ``today``, the most serious first.

    Cautions that the coach set aside are left out while their evidence is the same.
    """
    history = read_history(repository, trainee_id)
    return cautions_of(history, today, standings_in_use(history, after_today(history, today)))


def after_today(history: History, today: date) -> date:
    """The day from which standings tell of all that is known: the next one where somebody has
    trained ``today`` already, so that what was just typed is cautioned about at once.
    """
    trained = any(session.day == today for session in history.sessions)
    return today + DAY if trained else today


def dismissal(caution: Caution, trainee_id: int, day: date, why: str) -> DismissedCaution:
    """The record of a caution set aside on ``day``; to be saved."""
    return DismissedCaution(trainee_id, caution.limit, evidence_key(caution), day, why)


def standings_in_use(history: History, day: date) -> dict[LineKey, Standing]:
    """Where the lines stand that the phase of ``day`` asks for or that were trained lately."""
    place = place_on(history, day)
    lines: dict[LineKey, Line] = {}
    if place is not None and place.phase is not None:
        slots = [slot for planned in place.phase.days for slot in planned.slots]
        for line in lines_of_slots(history, slots, place.assignment):
            lines[key_of(line)] = line
    lately = {
        part.line_id
        for session in history.sessions
        if day - IN_USE <= session.day <= day
        for part in session.lines
    }
    for line in history.lines:
        if line.id in lately:
            lines.setdefault(key_of(line), line)
    return standings_on(history, day, lines.values())


def cautions_of(
    history: History, today: date, standings: Mapping[LineKey, Standing]
) -> tuple[Caution, ...]:
    """The cautions of ``today`` from what was read and where the lines in use stand."""
    desk = _Desk(history, today)
    plateaus = _plateaus(desk, standings.values())
    found: list[Caution | None] = [
        *_of_trainee(desk),
        *(caution for standing in standings.values() for caution in _of_line(desk, standing)),
        *(
            recovery.plateau(desk.limit(LimitId.PLATEAU), probability, line_id=line_id)
            for line_id, probability in plateaus.items()
        ),
        *_too_close(desk),
        _too_seldom(desk),
        _no_deload(desk),
        _reactive_deload(desk, plateaus),
        _monotonous(desk),
    ]
    open_ones = [
        c for c in found if c is not None and not is_dismissed(c, history.dismissed, today)
    ]
    return tuple(
        sorted(open_ones, key=lambda c: (_SEVERITIES.index(c.severity), _IDS.index(c.limit)))
    )


@dataclass(frozen=True, slots=True)
class _Desk:
    """What every check looks at."""

    history: History
    today: date

    def limit(self, limit_id: LimitId) -> Limit:
        return self.history.library.limits[limit_id]

    @property
    def session_days(self) -> list[date]:
        return [session.day for session in self.history.sessions if session.day <= self.today]


def _of_trainee(desk: _Desk) -> list[Caution | None]:
    history, today = desk.history, desk.today
    trainee = history.trainee
    flagged = uncleared_red_flag(history, today)
    refused = uncleared_screening(history, today)
    ids = tuple(s.id for s in red_flags(history, today) if s.day == flagged and s.id is not None)
    return [
        recovery.red_flag(desk.limit(LimitId.RED_FLAG), flagged, ids) if flagged else None,
        recovery.clearance(desk.limit(LimitId.CLEARANCE), refused) if refused else None,
        recovery.screening(desk.limit(LimitId.SCREENING), trainee.screened),
        recovery.minor(desk.limit(LimitId.MINOR), trainee.birth_year, today),
        recovery.older(desk.limit(LimitId.OLDER), trainee.birth_year, today),
        recovery.load_incomplete(desk.limit(LimitId.LOAD_INCOMPLETE), trainee.activities_recorded),
        recovery.gap(desk.limit(LimitId.GAP), max(desk.session_days, default=None), today),
    ]


def _of_line(desk: _Desk, standing: Standing) -> list[Caution | None]:
    line_id = standing.line.id
    reason = standing.target.reason
    found = [_pain(desk, standing), _gap(desk, standing), *_last_step(desk, standing)]
    if reason.code is ReasonCode.IN_BETWEEN:
        limit = desk.limit(LimitId.EQUIPMENT_JUMP)
        found.append(recovery.equipment_jump(limit, reason, line_id=line_id))
    if reason.code is ReasonCode.COMPLETE and standing.state.position is not None:
        limit = desk.limit(LimitId.RULE_COMPLETE)
        found.append(recovery.rule_complete(limit, standing.state.position, line_id=line_id))
    return found


def _pain(desk: _Desk, standing: Standing) -> Caution | None:
    state, line_id = standing.state, standing.line.id
    if not state.sore and state.held is None:
        return None
    sore = [
        (session, part)
        for session, part in trained_parts(desk.history, standing.line)
        if part.worst_pain and session.day <= desk.today
    ]
    ids = tuple(session.id for session, _ in sore[-1:] if session.id is not None)
    if state.held is not None:
        limit = desk.limit(LimitId.PAIN_HOLD)
        return recovery.pain_hold(limit, state.held, line_id=line_id, sessions=ids)
    session, part = sore[-1]
    return recovery.pain(
        desk.limit(LimitId.PAIN),
        part.worst_pain,
        session.day,
        state.sore,
        line_id=line_id,
        sessions=ids,
    )


def _gap(desk: _Desk, standing: Standing) -> Caution | None:
    """A line of the phase that was left out while others were trained; a gap of everything is
    said once, for the trainee.
    """
    limit, last = desk.limit(LimitId.GAP), standing.state.last_trained
    trained = max(desk.session_days, default=None)
    if last is None or trained is None or (desk.today - trained).days >= limit.threshold:
        return None
    place = place_on(desk.history, desk.today)
    if place is None or place.phase is None:
        return None
    if slot_in_phase(place.phase, *key_of(standing.line)) is None:
        return None
    days = untrained_days(last, desk.today, standing.state.deloads)
    since = desk.today - timedelta(days=days)
    return recovery.gap(limit, max(last, since), desk.today, line_id=standing.line.id)


def _last_step(desk: _Desk, standing: Standing) -> list[Caution | None]:
    """The step that the line stands on, if it is recent and demand really rose too fast.

    A line that follows another has no steps of its own to be told of.
    """
    if standing.state.rule.follow is not None:
        return []
    step = _standing_step(standing)
    if step is None or step.before is None or step.after is None or desk.today - step.day > RECENT:
        return []
    line_id = standing.line.id
    ids = (step.session_id,) if step.session_id is not None else ()
    around, scheme = standing.state.surroundings, standing.state.rule.scheme
    found = [
        recovery.several_at_once(
            desk.limit(LimitId.SEVERAL_AT_ONCE),
            step.before,
            step.after,
            step.day,
            scale=[each.key for each in around.scale],
            line_id=line_id,
            sessions=ids,
        )
    ]
    limit = desk.limit(LimitId.LOAD_STEP)
    old, new = (position_demand(at, scheme, around) for at in (step.before, step.after))
    before, after = (
        effective_load_g(at.load_g, at.variation, around) for at in (step.before, step.after)
    )
    if old and new and new > old * (1 + limit.threshold) and before and after:
        found.append(
            recovery.load_step(limit, before, after, step.day, line_id=line_id, sessions=ids)
        )
    return found


def _standing_step(standing: Standing) -> Step | None:
    """The last step that moved the line, if it has stood there since."""
    moved = [step for step in standing.replay.steps if step.before != step.after]
    return moved[-1] if moved and moved[-1].after == standing.state.position else None


def _plateaus(desk: _Desk, standings: Iterable[Standing]) -> dict[int, float]:
    """The probability of a plateau of each line that has a trend."""
    history, settings = desk.history, desk.history.library.settings
    found: dict[int, float] = {}
    for standing in standings:
        line = standing.line
        done = [
            (session, part)
            for session, part in trained_parts(history, line)
            if desk.today - PLATEAU_SPAN < session.day <= desk.today
        ]
        if line.id is None or not done or desk.today - done[-1][0].day > RECENT:
            continue
        around = surroundings_by_day(history, line, [session.day for session, _ in done])
        trend = trend_of(points_of(history, line, done, around), settings)
        if trend is not None and trend.long_enough:
            found[line.id] = plateau_probability(trend, settings)
    return found


def _too_close(desk: _Desk) -> tuple[Caution, ...]:
    """Hard days of a pattern without a full day between, done in the last two weeks or, where
    those were well spaced, planned in the next.
    """
    limit = desk.limit(LimitId.TOO_CLOSE)
    done: dict[Pattern, list[HardDay]] = {}
    for session in desk.history.sessions:
        if not desk.today - 2 * WEEK < session.day <= desk.today:
            continue
        sets: dict[Pattern, int] = {}
        for part in session.lines:
            pattern = desk.history.library.exercises[part.exercise].pattern
            if not part.deload:
                sets[pattern] = sets.get(pattern, 0) + sets_done(part)
        for pattern, count in sets.items():
            if count >= HARD_SETS and pattern in SPACED:
                done.setdefault(pattern, []).append(HardDay(session.day, session.id))
    found = recovery.too_close(limit, done)
    said = {caution["pattern"] for caution in found}
    planned = recovery.too_close(limit, _planned_days(desk))
    return (*found, *(caution for caution in planned if caution["pattern"] not in said))


def _planned_days(desk: _Desk) -> dict[Pattern, list[HardDay]]:
    planned: dict[Pattern, list[HardDay]] = {}
    for day, training_day in training_days(desk.history, desk.today - DAY):
        if day >= desk.today + WEEK + DAY:
            break
        if deload_on(desk.history, day):
            continue
        sets: dict[Pattern, int] = {}
        for slot in training_day.slots:
            pattern = desk.history.library.exercises[slot.exercise].pattern
            sets[pattern] = sets.get(pattern, 0) + slot.start.sets
        for pattern, count in sets.items():
            if count >= HARD_SETS and pattern in SPACED:
                planned.setdefault(pattern, []).append(HardDay(day))
    return planned


def _too_seldom(desk: _Desk) -> Caution | None:
    """By the program's week where there is one, else by the last four weeks done."""
    history = desk.history
    birth_year = history.trainee.birth_year
    if recovery.minor(desk.limit(LimitId.MINOR), birth_year, desk.today) is not None:
        return None
    exercises = history.library.exercises
    place = place_on(history, desk.today)
    if place is not None and place.phase is not None:
        days = weekdays_of(history, place)
        times = frequency_planned(place.phase, exercises, float(len(days)) if days else None)
    else:
        recent = [s for s in history.sessions if desk.today - RECENT < s.day <= desk.today]
        if not recent or min(desk.session_days) > desk.today - RECENT:
            return None
        times = frequency_done(recent, exercises, weeks=RECENT / WEEK)
    return recovery.too_seldom(
        desk.limit(LimitId.TOO_SELDOM),
        {muscle: times.by_muscle.get(muscle, 0.0) for muscle in MAJOR},
        planned=place is not None and place.phase is not None,
    )


def _no_deload(desk: _Desk) -> Caution | None:
    if _easier_about_now(desk):
        return None
    return recovery.no_deload(
        desk.limit(LimitId.NO_DELOAD),
        last_easier(desk.history, desk.today),
        desk.today,
        desk.history.trainee.experience,
    )


def last_easier(history: History, today: date) -> date | None:
    """The day on which training last began again after an easier span or a break, or began at
    all; None without sessions.
    """
    days = sorted({session.day for session in history.sessions if session.day <= today})
    if not days:
        return None
    after_break = [later for earlier, later in pairwise(days) if later - earlier >= A_BREAK]
    deloads = [one.last + DAY for one in deload_windows(history) if one.last < today]
    return max((days[0], *after_break, *deloads))


def _easier_about_now(desk: _Desk) -> bool:
    """Whether a deload runs, begins within a week or has just ended, or nobody trains anyway."""
    last = max(desk.session_days, default=None)
    if last is None or desk.today - last >= A_BREAK:
        return True
    return any(
        one.first <= desk.today + WEEK and one.last >= desk.today - WEEK
        for one in deload_windows(desk.history)
    )


def _reactive_deload(desk: _Desk, plateaus: Mapping[int, float]) -> Caution | None:
    if _easier_about_now(desk):
        return None
    at_least = desk.limit(LimitId.PLATEAU).threshold
    seen = deload_signals(desk.history, desk.today, plateaus, at_least)
    return reactive_deload(desk.limit(LimitId.REACTIVE_DELOAD), seen)


def _monotonous(desk: _Desk) -> Caution | None:
    """The last calendar week, Monday to Sunday, that is over."""
    history = desk.history
    week_ends = desk.today - timedelta(days=desk.today.weekday() + 1)
    loads = daily_loads([*history.sessions, *history.activities], week_ends - 6 * DAY, week_ends)
    value = monotony(loads, history.library.settings.monotony_sample)
    return recovery.monotonous(desk.limit(LimitId.MONOTONY), value, week_ends)
