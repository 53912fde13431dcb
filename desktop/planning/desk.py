"""The desk: everybody in one table, with what to know of each today."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import date, timedelta
from enum import StrEnum
from itertools import takewhile
from typing import Final

from db.briefs import KeptBrief
from db.errors import CannotWrite, FileBusy
from db.repository import Repository
from desktop.planning.briefs import brief_of, build_mark
from desktop.planning.cautions import Desk, easier_since, plateaus_on
from desktop.planning.goals import maximum_of, reached_by
from desktop.planning.history import History, Library, read_history
from desktop.planning.progress import best_of, points_of, surroundings_by_day, trend_of
from desktop.planning.roster import RosterEntry, entry_on, need, roster_without_cautions
from desktop.planning.schedule import (
    DAY,
    WEEK,
    days_planned,
    next_is_certain,
    place_on,
    training_days,
)
from desktop.training.brief import NO_SPARK, Brief, GoalBrief, Spark, SparkKind
from desktop.training.limits import LimitId
from desktop.training.program import Line
from desktop.training.trainee import Goal, GoalKind
from desktop.training.volume import sets_done

ADHERENCE_SPAN: Final = 4 * WEEK
"""So far back the sessions done are held against those planned."""

SPARK_SPAN: Final = 26 * WEEK
"""So far back a spark line reaches."""

LEAST_SPARK: Final = 3
"""Fewer weeks make no line."""

DAYS_AHEAD: Final = 8 * WEEK
"""So far ahead training days are kept with a brief."""


class DeloadWhen(StrEnum):
    """How an easier week stands with somebody; the comment says what its day is."""

    RUNS = "runs"  # the last day
    ADVISED = "advised"  # today: what is seen asks for one
    PLANNED = "planned"  # the first day
    DUE = "due"  # the Monday on which the program's rhythm asks for one


@dataclass(frozen=True, slots=True)
class DeloadDue:
    """When the next easier week comes, or should have."""

    when: DeloadWhen
    day: date


@dataclass(frozen=True, slots=True)
class Still:
    """A line on a plateau, and how probable that is."""

    line_id: int
    probability: float


@dataclass(frozen=True, slots=True)
class DeskRow:
    """One trainee on the desk. ``done`` of ``planned`` sessions in the last four weeks; ``still``
    are the lines on a plateau, the most certain first; ``goal`` is the one that comes first;
    ``names`` holds line id, exercise and line name of every line that the row speaks of. A row
    that is not ``known`` yet has dates only.
    """

    entry: RosterEntry
    done: int = 0
    planned: int = 0
    deload: DeloadDue | None = None
    still: tuple[Still, ...] = ()
    goal: GoalBrief | None = None
    spark: Spark = NO_SPARK
    names: tuple[tuple[int, str, str], ...] = ()
    known: bool = True

    def line_name(self, line_id: int | None) -> tuple[str, str]:
        """The exercise's name and the line's own name."""
        return next(((e, n) for each, e, n in self.names if each == line_id), ("", ""))


def row_on(brief: Brief, library: Library, today: date) -> DeskRow:
    """One trainee's row on a day on which ``brief`` holds."""
    desk = Desk.of(brief, library, today)
    entry = entry_on(desk)
    done, planned = _adherence(desk)
    row = DeskRow(
        entry=entry,
        done=done,
        planned=planned,
        deload=_deload(desk, entry),
        still=_still(desk),
        goal=min(brief.goals, key=_goal_order, default=None),
        spark=brief.spark,
    )
    return replace(row, names=_names(row, brief, library))


def _still(desk: Desk) -> tuple[Still, ...]:
    at_least = desk.limit(LimitId.PLATEAU).threshold
    found = [
        Still(line_id, probability)
        for line_id, probability in plateaus_on(desk).items()
        if probability >= at_least
    ]
    return tuple(sorted(found, key=lambda one: (-one.probability, one.line_id)))


def _names(row: DeskRow, brief: Brief, library: Library) -> tuple[tuple[int, str, str], ...]:
    named = {caution.line_id for caution in row.entry.cautions}
    named |= {one.line_id for one in row.still} | {row.spark.line_id}
    named |= {row.goal.line_id} if row.goal else set()
    lines = {name.line_id: name for name in brief.names}
    return tuple(
        (line_id, library.exercises[lines[line_id].exercise].name, lines[line_id].name)
        for line_id in sorted(each for each in named if each is not None and each in lines)
    )


def desk_brief_of(history: History, day: date) -> Brief:
    """A trainee's brief with goals and spark line."""
    brief = brief_of(history, day)
    known = replace(history, sessions=tuple(one for one in history.sessions if one.day <= day))
    goals = tuple(_goal(known, goal) for goal in history.goals)
    return replace(brief, goals=goals, spark=_spark(known, brief))


def kept_rows(
    repository: Repository, library: Library, today: date
) -> tuple[dict[int, DeskRow], tuple[int, ...]]:
    """The rows of everybody who is not archived: from kept briefs, in two queries for any number
    of trainees. The ids that come second have none that holds: their rows know only dates until
    `draw_up` was called for them.
    """
    briefs = repository.briefs(build_mark(), today)
    present = repository.trainee_ids()
    rows = {each: row_on(briefs[each], library, today) for each in present if each in briefs}
    missing = tuple(each for each in present if each not in briefs)
    if missing:
        for entry in roster_without_cautions(repository, today, library):
            if entry.trainee.id in missing:
                rows[entry.trainee.id] = DeskRow(entry, known=False)
    return rows, missing


def by_need(rows: Iterable[DeskRow]) -> tuple[DeskRow, ...]:
    """The rows sorted by need, as in the roster."""
    return tuple(sorted(rows, key=lambda row: need(row.entry)))


def draw_up(repository: Repository, library: Library, trainee_id: int, day: date) -> Brief:
    """Read one trainee's record, draw up the brief and keep it. Raises NotFound, and FileBusy or
    CannotWrite where it cannot be kept.
    """
    with repository.transaction():
        history = read_history(repository, trainee_id, library)
        brief = desk_brief_of(history, day)
        repository.keep_briefs(build_mark(), [KeptBrief(brief, _next_days(history, brief))])
    return brief


def row_of(repository: Repository, library: Library, trainee_id: int, today: date) -> DeskRow:
    """One trainee's row from the record, whose brief is kept where the file lets it. Raises
    NotFound.
    """
    try:
        brief = draw_up(repository, library, trainee_id, today)
    except (CannotWrite, FileBusy):
        brief = desk_brief_of(read_history(repository, trainee_id, library), today)
    return row_on(brief, library, today)


def _next_days(history: History, brief: Brief) -> tuple[date, ...] | None:
    """The training days from the brief's first day on, as if each were done."""
    if not next_is_certain(history, brief.first):
        return None
    end = min(brief.until, brief.first + DAYS_AHEAD)
    days = (day for day, _ in training_days(history, brief.first - DAY))
    return tuple(takewhile(lambda day: day < end, days))


def _adherence(desk: Desk) -> tuple[int, int]:
    """Days trained, and days planned, in the four weeks before today; today counts once done."""
    brief, today = desk.brief, desk.today
    first = today - ADHERENCE_SPAN
    last = today if brief.last == today else today - DAY
    done = {one.day for one in brief.sessions if first <= one.day <= last}
    return len(done), days_planned(desk.history, first, last)


def _deload(desk: Desk, entry: RosterEntry) -> DeloadDue | None:
    today = desk.today
    running = [one.last for one in desk.windows if one.first <= today <= one.last]
    if running:
        return DeloadDue(DeloadWhen.RUNS, max(running))
    if any(one.limit is LimitId.REACTIVE_DELOAD for one in entry.cautions):
        return DeloadDue(DeloadWhen.ADVISED, today)
    planned = min((one.first for one in desk.windows if one.first > today), default=None)
    due = _rhythm(desk)
    if planned is not None and (due is None or planned <= max(due, today) + WEEK):
        return DeloadDue(DeloadWhen.PLANNED, planned)
    return DeloadDue(DeloadWhen.DUE, due) if due is not None else None


def _rhythm(desk: Desk) -> date | None:
    """The Monday on which, by the program, an easier week is due after the building weeks since
    the last one; None without a program or where it asks for none.
    """
    place = place_on(desk.history, desk.today)
    since = easier_since(desk.brief.began_again, desk.windows, desk.today)
    if place is None or place.phase is None or place.program.deload_every is None or since is None:
        return None
    first_monday = since + timedelta(days=-since.weekday() % 7)
    return first_monday + place.program.deload_every * WEEK


def _goal(history: History, goal: Goal) -> GoalBrief:
    """A goal and, by the trend at the last session, the days between which it is reached."""
    brief = GoalBrief(goal.line_id, goal.kind, goal.value, goal.variation, goal.by)
    line = history.line(goal.line_id)
    done = history.trained(line)
    if goal.kind is not GoalKind.ONE_REP_MAX or not done:
        return brief
    around = surroundings_by_day(history, line, [session.day for session, _ in done])
    session, part = done[-1]
    here, settings = around[session.day], history.library.settings
    variation = best_of(part.working_sets, here).variation
    trend = trend_of(points_of(history, line, done, around), settings)
    reached = reached_by(trend, maximum_of(goal, here, variation, settings.equation))
    return replace(brief, earliest=reached.earliest, likely=reached.likely, latest=reached.latest)


def _goal_order(goal: GoalBrief) -> tuple[date, date]:
    return (goal.likely or date.max, goal.by or date.max)


def _spark(history: History, brief: Brief) -> Spark:
    """The estimated maximum of the main line, else hard sets a week, up to the last session."""
    if brief.last is None:
        return NO_SPARK
    since = brief.last - SPARK_SPAN
    for line in _main_lines(history, brief):
        points = _maxima(history, line, since)
        if len(points) >= LEAST_SPARK:
            return Spark(SparkKind.MAXIMUM, points, line.id)
    return Spark(SparkKind.SETS, _weekly_sets(history, since))


def _main_lines(history: History, brief: Brief) -> Iterable[Line]:
    """The lines that may be the main one: those with a goal, then those of the phase in the order
    of its slots, then the others.
    """
    aimed = [goal.line_id for goal in brief.goals]
    asked = [line.line_id for line in brief.lines if line.in_phase and line.line_id is not None]
    others = [line.id for line in history.lines if line.id is not None]
    for line_id in dict.fromkeys((*aimed, *asked, *others)):
        yield history.line(line_id)


def _maxima(history: History, line: Line, since: date) -> tuple[tuple[int, float], ...]:
    """The best estimate of each week, in grams."""
    done = [each for each in history.trained(line) if each[0].day > since]
    around = surroundings_by_day(history, line, [session.day for session, _ in done])
    weeks: dict[int, tuple[int, float]] = {}
    for point in points_of(history, line, done, around):
        ordinal = point.day.toordinal()
        best = weeks.get(ordinal // 7)
        if point.counted and (best is None or point.one_rep_max_g > best[1]):
            weeks[ordinal // 7] = (ordinal, round(point.one_rep_max_g))
    return tuple(weeks[week] for week in sorted(weeks))


def _weekly_sets(history: History, since: date) -> tuple[tuple[int, float], ...]:
    weeks: dict[date, int] = {}
    for session in history.sessions:
        if session.day > since:
            monday = session.day - timedelta(days=session.day.weekday())
            count = sum(sets_done(part) for part in session.lines)
            weeks[monday] = weeks.get(monday, 0) + count
    return tuple((monday.toordinal(), float(weeks[monday])) for monday in sorted(weeks))
