"""Cautions: what speaks against asking more of a trainee on a day, without what was set aside.

The record is first boiled down to a `Brief`, dated facts that rest on no particular day; here the
cautions of one day are read from it. A brief that was kept gives the same as one drawn up anew.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final

from db.repository import Repository
from desktop.planning.briefs import (
    A_BREAK,
    IN_USE,
    MAJOR,
    began_again,
    brief_of,
)
from desktop.planning.briefs import standings_in_use as standings_in_use
from desktop.planning.history import History, Library, read_history
from desktop.planning.line_briefs import RECENT
from desktop.planning.schedule import (
    DAY,
    WEEK,
    deload_windows,
    place_on,
    training_days,
)
from desktop.planning.signals import deload_signals
from desktop.planning.standing import LineKey, Standing
from desktop.training import recovery
from desktop.training.asking import untrained_days
from desktop.training.brief import Brief, LineBrief, SessionBrief
from desktop.training.deload import reactive_deload
from desktop.training.exercises import Muscle, Pattern
from desktop.training.limits import Limit, LimitId, Severity
from desktop.training.program import TrainingDay
from desktop.training.recovery import Caution, HardDay, evidence_key, is_dismissed
from desktop.training.state import DeloadDays
from desktop.training.trainee import DeloadWindow, DismissedCaution
from desktop.training.workload import daily_loads, monotony

HARD_SETS: Final = 2
"""So many working sets make a session hard for a pattern (common practice)."""

SPACED: Final = frozenset(Pattern) - {Pattern.TRUNK, Pattern.SINGLE_JOINT}
"""Patterns whose hard sessions want a full day between them."""

_SEVERITIES: Final = {one: place for place, one in enumerate(reversed(Severity))}
_IDS: Final = {one: place for place, one in enumerate(LimitId)}


def cautions(repository: Repository, trainee_id: int, today: date) -> tuple[Caution, ...]:
    """What speaks against asking more of a trainee ``today``, the most serious first; a session of
    that day counts.

    Cautions that the coach set aside are left out while their evidence is the same.
    """
    return cautions_in(read_history(repository, trainee_id), today)


def cautions_in(history: History, today: date) -> tuple[Caution, ...]:
    """The same from a record that was read."""
    return cautions_on(Desk.of(brief_of(history, today), history.library, today))


def dismissal(caution: Caution, trainee_id: int, day: date, why: str) -> DismissedCaution:
    """The record of a caution set aside on ``day``; to be saved."""
    return DismissedCaution(trainee_id, caution.limit, evidence_key(caution), day, why)


def cautions_of(
    history: History, today: date, standings: Mapping[LineKey, Standing]
) -> tuple[Caution, ...]:
    """The cautions of ``today`` from what was read and where the lines in use stand."""
    return cautions_on(Desk.of(brief_of(history, today, standings), history.library, today))


def cautions_on(desk: Desk) -> tuple[Caution, ...]:
    """The cautions of the desk's day."""
    brief, today = desk.brief, desk.today
    plateaus = plateaus_on(desk)
    found: list[Caution | None] = [
        *(told.caution(desk.library.limits) for told in brief.holds),
        recovery.gap(desk.limit(LimitId.GAP), brief.last, today),
        *(caution for line in desk.lines for caution in _of_line(desk, line)),
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
    open_ones = [c for c in found if c is not None and not is_dismissed(c, brief.dismissed, today)]
    return tuple(sorted(open_ones, key=_rank))


def plateaus_on(desk: Desk) -> dict[int, float]:
    """The probability of a plateau of each line trained lately that has a trend."""
    return {
        line.line_id: line.plateau
        for line in desk.lines
        if line.line_id is not None
        and line.plateau is not None
        and _is_recent(line.worked, desk.today)
    }


def lines_in_use(brief: Brief, today: date) -> list[LineBrief]:
    """The lines that the phase asks for or that were trained lately, and those that they follow."""
    by_key = {(line.exercise, line.name): line for line in brief.lines}
    used: dict[LineKey, LineBrief] = {}

    def use(line: LineBrief) -> None:
        key = (line.exercise, line.name)
        if key in used:
            return
        used[key] = line
        leader = by_key.get((line.exercise, line.follows)) if line.follows is not None else None
        if leader is not None:
            use(leader)

    for line in brief.lines:
        lately = line.last_seen is not None and today - line.last_seen <= IN_USE
        if line.in_phase or lately:
            use(line)
    return list(used.values())


def last_easier(history: History, today: date) -> date | None:
    """The day on which training last began again after an easier span or a break, or began at
    all; None without sessions.
    """
    again = began_again(sorted({one.day for one in history.sessions if one.day <= today}))
    return easier_since(again, deload_windows(history), today)


def easier_since(again: date | None, windows: Iterable[DeloadWindow], today: date) -> date | None:
    """The later of ``again`` and the day after the last of the windows that are over."""
    if again is None:
        return None
    return max((again, *(one.last + DAY for one in windows if one.last < today)))


@dataclass(frozen=True, slots=True)
class Desk:
    """One trainee on a day on which the brief holds. ``history`` holds what tells the schedule,
    ``windows`` are the easier spans, ``lines`` the lines in use, ``coming`` the training days of
    today and the next seven days.
    """

    brief: Brief
    library: Library
    today: date
    history: History
    windows: tuple[DeloadWindow, ...]
    lines: tuple[LineBrief, ...]
    coming: tuple[tuple[date, TrainingDay], ...]

    @classmethod
    def of(cls, brief: Brief, library: Library, today: date) -> Desk:
        """The desk of one trainee on one day."""
        history = schedule_of(brief, library)
        lines = tuple(lines_in_use(brief, today))
        coming = tuple(training_days(history, today - DAY, WEEK + DAY))
        return cls(brief, library, today, history, deload_windows(history), lines, coming)

    def limit(self, limit_id: LimitId) -> Limit:
        """What is watched under this id."""
        return self.library.limits[limit_id]

    @property
    def eased(self) -> bool:
        """Whether today lies in an easier span."""
        return any(one.first <= self.today <= one.last for one in self.windows)

    @property
    def late(self) -> list[SessionBrief]:
        """The sessions of the last four weeks."""
        return [one for one in self.brief.sessions if self.today - RECENT < one.day <= self.today]


def schedule_of(brief: Brief, library: Library) -> History:
    """As much of a history as tells which days are training days."""
    trainee_id = brief.trainee.id
    assert trainee_id is not None
    return History(
        brief.trainee,
        library,
        assignments=brief.assignments,
        sessions=tuple(turn.as_session(trainee_id) for turn in brief.turns),
        deloads=brief.deloads,
        absences=brief.absences,
    )


def _of_line(desk: Desk, line: LineBrief) -> list[Caution | None]:
    limits = desk.library.limits
    told = [line.pain] if line.pain is not None else []
    if _is_recent(line.stepped, desk.today):
        told += line.step
    if line.asks and not desk.eased and not _waited(desk, line):
        told += line.asks
    return [_gap(desk, line), *(one.caution(limits) for one in told)]


def _gap(desk: Desk, line: LineBrief) -> Caution | None:
    """A line of the phase that was left out while others were trained; a gap of everything is
    said once, for the trainee.
    """
    limit, last, trained = desk.limit(LimitId.GAP), line.last_trained, desk.brief.last
    if not line.in_phase or last is None or trained is None:
        return None
    if (desk.today - trained).days >= limit.threshold:
        return None
    days = _untrained(desk, last)
    since = desk.today - timedelta(days=days)
    return recovery.gap(limit, max(last, since), desk.today, line_id=line.line_id)


def _waited(desk: Desk, line: LineBrief) -> bool:
    """Whether the line waited so long that less is asked of it."""
    since = max((day for day in (line.last_trained, line.vouched) if day), default=None)
    repeats = desk.library.settings.progression.gap_repeat_days
    return since is not None and _untrained(desk, since) >= repeats


def _untrained(desk: Desk, since: date) -> int:
    spans = (DeloadDays(one.first, one.last) for one in desk.windows)
    return untrained_days(since, desk.today, spans)


def _too_close(desk: Desk) -> tuple[Caution, ...]:
    """Hard days of a pattern without a full day between, done in the last two weeks or, where
    those were well spaced, planned in the next.
    """
    limit = desk.limit(LimitId.TOO_CLOSE)
    done: dict[Pattern, list[HardDay]] = {}
    for session in desk.late:
        if session.day <= desk.today - 2 * WEEK:
            continue
        for pattern, count in session.hard:
            if count >= HARD_SETS and pattern in SPACED:
                done.setdefault(pattern, []).append(HardDay(session.day, session.id))
    found = recovery.too_close(limit, done)
    said = {caution["pattern"] for caution in found}
    planned = recovery.too_close(limit, _planned_days(desk))
    return (*found, *(caution for caution in planned if caution["pattern"] not in said))


def _planned_days(desk: Desk) -> dict[Pattern, list[HardDay]]:
    planned: dict[Pattern, list[HardDay]] = {}
    for day, training_day in desk.coming:
        if any(one.first <= day <= one.last for one in desk.windows):
            continue
        for pattern in _hard_patterns(training_day, desk.library):
            planned.setdefault(pattern, []).append(HardDay(day))
    return planned


def _hard_patterns(training_day: TrainingDay, library: Library) -> list[Pattern]:
    sets: dict[Pattern, int] = {}
    for slot in training_day.slots:
        pattern = library.exercises[slot.exercise].pattern
        sets[pattern] = sets.get(pattern, 0) + slot.start.sets
    return [p for p, count in sets.items() if count >= HARD_SETS and p in SPACED]


def _too_seldom(desk: Desk) -> Caution | None:
    """By the last four weeks done, where no program says what is planned (see `Brief.holds`)."""
    brief, today = desk.brief, desk.today
    if recovery.minor(desk.limit(LimitId.MINOR), brief.trainee.birth_year, today) is not None:
        return None
    place = place_on(desk.history, today)
    if place is not None and place.phase is not None:
        return None
    late = desk.late
    if not late or brief.began is None or brief.began > today - RECENT:
        return None
    days: dict[date, set[Muscle]] = {}
    for session in late:
        days.setdefault(session.day, set()).update(session.muscles)
    times = {m: sum(m in done for done in days.values()) / (RECENT / WEEK) for m in MAJOR}
    return recovery.too_seldom(desk.limit(LimitId.TOO_SELDOM), times, planned=False)


def _no_deload(desk: Desk) -> Caution | None:
    if _easier_about_now(desk):
        return None
    return recovery.no_deload(
        desk.limit(LimitId.NO_DELOAD),
        easier_since(desk.brief.began_again, desk.windows, desk.today),
        desk.today,
        desk.brief.trainee.experience,
    )


def _easier_about_now(desk: Desk) -> bool:
    """Whether a deload runs, begins within a week or has just ended, or nobody trains anyway."""
    last = desk.brief.last
    if last is None or desk.today - last >= A_BREAK:
        return True
    return any(
        one.first <= desk.today + WEEK and one.last >= desk.today - WEEK for one in desk.windows
    )


def _reactive_deload(desk: Desk, plateaus: Mapping[int, float]) -> Caution | None:
    if _easier_about_now(desk):
        return None
    at_least = desk.limit(LimitId.PLATEAU).threshold
    seen = deload_signals(desk.brief.sessions, desk.today, plateaus, at_least)
    return reactive_deload(desk.limit(LimitId.REACTIVE_DELOAD), seen)


def _monotonous(desk: Desk) -> Caution | None:
    """The last calendar week, Monday to Sunday, that is over."""
    brief = desk.brief
    week_ends = desk.today - timedelta(days=desk.today.weekday() + 1)
    loads = daily_loads([*brief.sessions, *brief.activities], week_ends - 6 * DAY, week_ends)
    value = monotony(loads, desk.library.settings.monotony_sample)
    return recovery.monotonous(desk.limit(LimitId.MONOTONY), value, week_ends)


def _is_recent(day: date | None, today: date) -> bool:
    return day is not None and today - day <= RECENT


def _rank(caution: Caution) -> tuple[int, int, int]:
    return (_SEVERITIES[caution.severity], _IDS[caution.limit], caution.line_id or 0)
