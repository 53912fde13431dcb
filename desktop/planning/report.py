"""A progress report of one trainee over a span: what was trained, what came of it, what is next."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Final

from db.repository import Repository
from desktop.planning.cautions import cautions_in
from desktop.planning.goals import variation_names
from desktop.planning.history import History, Library, body_mass_on, read_history
from desktop.planning.progress import BestSet, Curve, LineProgress, progress_of
from desktop.planning.schedule import days_planned
from desktop.planning.session_days import training_day_after
from desktop.planning.trained_lines import line_name
from desktop.training.exercises import Muscle
from desktop.training.recovery import Caution
from desktop.training.sentence import sentence
from desktop.training.session import Session
from desktop.training.trainee import Goal, Trainee
from desktop.training.volume import Volume, volume_done

_LEVEL_POINTS: Final = 2


class ReportError(Exception):
    """A span of which no report can be made; the text is a sentence."""


@dataclass(frozen=True, slots=True)
class LineReport:
    """One line over the span. ``sessions`` and ``hard_sets`` of the span; ``best``: its best set,
    ``is_record``: nothing before that was as much; ``first_g`` and ``last_g``: the level of the
    trend at its first and last session of the span (None: no trend).
    """

    name: str
    progress: LineProgress
    sessions: int
    hard_sets: int
    best: BestSet
    is_record: bool
    first_g: float | None = None
    last_g: float | None = None

    @property
    def gain(self) -> float | None:
        """The change of the trend over the span, as a fraction."""
        if self.first_g is None or self.last_g is None:
            return None
        return self.last_g / self.first_g - 1


@dataclass(frozen=True, slots=True)
class ReportGoal:
    """A goal of a line, trained in the span or not; ``variations``: their names by key."""

    line: str
    goal: Goal
    variations: tuple[tuple[str, str], ...] = ()


@dataclass(frozen=True, slots=True)
class TraineeReport:
    """All that a report says, as of ``last``. ``planned``: days that programs asked for; of
    ``minutes`` None where no session tells; ``volume``: hard sets of the span; masses in grams;
    ``goals``: those with the nearest day first.
    """

    trainee: Trainee
    first: date
    last: date
    sessions: int
    days: int
    planned: int
    minutes: int | None
    lines: tuple[LineReport, ...]
    volume: Volume
    cautions: tuple[Caution, ...]
    library: Library
    line_names: tuple[tuple[int, str], ...]
    first_mass_g: int | None = None
    last_mass_g: int | None = None
    next_day: date | None = None
    pains: int = 0
    goals: tuple[ReportGoal, ...] = ()

    @property
    def weeks(self) -> float:
        """How many weeks the span has."""
        return ((self.last - self.first).days + 1) / 7


def trainee_report(
    repository: Repository, trainee_id: int, first: date, last: date, week_starts: int = 0
) -> TraineeReport:
    """The report of a trainee from ``first`` to ``last``, both included. Raises ReportError."""
    return report_of(read_history(repository, trainee_id), first, last, week_starts)


def report_of(history: History, first: date, last: date, week_starts: int = 0) -> TraineeReport:
    """The report from what was read, as it stood in the evening of ``last``. Raises ReportError."""
    if last < first:
        raise ReportError(sentence("The span ends before it begins: choose a later last day."))
    known = history.with_sessions(one for one in history.sessions if one.day <= last)
    span = [session for session in known.sessions if session.day >= first]
    minutes = [session.minutes for session in span if session.minutes is not None]
    lines = sorted(_lines(known, first, last, week_starts), key=_order)
    names = ((line.id, line_name(history, line.id)) for line in history.lines if line.id)
    return TraineeReport(
        trainee=history.trainee,
        first=first,
        last=last,
        sessions=len(span),
        days=len({session.day for session in span}),
        planned=days_planned(history, first, last),
        minutes=sum(minutes) if minutes else None,
        lines=tuple(lines),
        volume=volume_done(span, history.library.exercises),
        cautions=cautions_in(known, last),
        library=history.library,
        line_names=tuple(names),
        first_mass_g=body_mass_on(history.body_masses, first),
        last_mass_g=body_mass_on(history.body_masses, last),
        next_day=training_day_after(known, last),
        pains=_pains(span),
        goals=tuple(sorted(_goals(history, last), key=_goal_order)),
    )


def _goals(history: History, last: date) -> Iterator[ReportGoal]:
    for goal in history.goals:
        line = history.line(goal.line_id)
        names = variation_names(history, history.exercise_of(line), last)
        yield ReportGoal(line_name(history, line.id), goal, tuple(names.items()))


def _goal_order(goal: ReportGoal) -> tuple[date, str]:
    return goal.goal.by or date.max, goal.line


def _lines(history: History, first: date, last: date, week_starts: int) -> Iterator[LineReport]:
    for line in history.lines:
        if line.id is None or not any(day >= first for day in _days(history, line.id)):
            continue
        progress = progress_of(history, line, last, week_starts)
        found = [best for best in progress.best_sets if best.day >= first]
        if not found:
            continue
        ends = _ends(progress.trend, first)
        best, is_record = _best(progress, first)
        yield LineReport(
            line_name(history, line.id),
            progress,
            len(found),
            sum(len(one.working) for one in found),
            best,
            is_record,
            *ends,
        )


def _days(history: History, line_id: int) -> list[date]:
    return [session.day for session, _ in history.done(line_id)]


def _order(line: LineReport) -> tuple[bool, bool, int, str]:
    """Lines with a trend first, of those the ones with a goal, then by how much was done."""
    return line.gain is None, not line.progress.goals, -line.hard_sets, line.name


def _ends(trend: Curve | None, first: date) -> tuple[float | None, float | None]:
    if trend is None:
        return None, None
    inside = trend.level_g[trend.days >= first.toordinal()]
    if inside.size < _LEVEL_POINTS:
        return None, None
    return float(inside[0]), float(inside[-1])


def _best(progress: LineProgress, first: date) -> tuple[BestSet, bool]:
    """The best set of the span, and whether nothing before it was as much, though there was some
    before.
    """
    places = {step.key: place for place, step in enumerate(progress.scale)}

    def worth(best: BestSet) -> tuple[float, int, int, int]:
        done = best.done
        reps = done.reps or 0
        demand = (best.top_g or 0.0) * (1 + reps / 30) if reps else 0.0
        return demand, places.get(done.variation or "", -1), done.load_g, best.amount

    best = max((one for one in progress.best_sets if one.day >= first), key=worth)
    before = [worth(one) for one in progress.best_sets if one.day < best.day]
    return best, bool(before) and worth(best) > max(before)


def _pains(span: Sequence[Session]) -> int:
    return sum(any(part.worst_pain for part in session.lines) for session in span)


def weekly_sets(report: TraineeReport) -> tuple[tuple[Muscle, float], ...]:
    """Hard sets a week of each muscle trained in the span, most first."""
    weekly = [(one, sets / report.weeks) for one, sets in report.volume.by_muscle.items() if sets]
    return tuple(sorted(weekly, key=lambda one: (-one[1], one[0].value)))
