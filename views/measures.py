"""Measures: what of a line's sessions is shown, and the value of each session by it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence
from enum import StrEnum

from desktop.planning.progress import BestSet, GoalLine, LineProgress
from desktop.training.exercises import LoadingKind, Measure
from desktop.training.trainee import GoalKind

Value = Callable[[BestSet], float | None]


class Shown(StrEnum):
    """What the chart shows of a line. ``AT_LOAD``: repetitions at one load; ``MOMENT``: a hold's
    share of the full position.
    """

    ESTIMATE = "estimate"
    LOAD = "load"
    SET = "set"
    AT_LOAD = "at load"
    HOLD = "hold"
    MOMENT = "moment"
    VARIATION = "variation"


def measures_of(progress: LineProgress) -> tuple[Shown, ...]:
    """What can be shown of a line, the most telling first; nothing before its first session."""
    if not progress.best_sets:
        return ()
    held = progress.exercise.measure is Measure.HOLD
    loads = {best.done.load_g for best in progress.best_sets}
    told = any(best.top_g is not None for best in progress.best_sets)
    used = variations_used(progress)
    shares = {share for share in _shares(progress, used).values() if share is not None}
    able = {
        Shown.HOLD: held,
        Shown.MOMENT: held and len(shares) > 1,
        Shown.ESTIMATE: bool(progress.points),
        Shown.LOAD: told and (not held or len(loads) > 1),
        Shown.SET: not held,
        Shown.AT_LOAD: not held and not is_bodyweight(progress),
        Shown.VARIATION: len(used) > 1,
    }
    return tuple(shown for shown, possible in able.items() if possible)


def is_bodyweight(progress: LineProgress) -> bool:
    """Whether body mass counts for the line's loads."""
    return progress.exercise.loading is LoadingKind.BODYWEIGHT


def loads_done(progress: LineProgress) -> tuple[int, ...]:
    """The loads of working sets on record, in grams, lightest first."""
    return tuple(sorted({one.load_g for best in progress.best_sets for one in best.working}))


def usual_load(progress: LineProgress) -> int | None:
    """The load, in grams, of the most sessions; of several the heaviest. None without any."""
    counts = Counter(
        load for best in progress.best_sets for load in {one.load_g for one in best.working}
    )
    return max(counts, key=lambda load: (counts[load], load), default=None)


def at_load(progress: LineProgress, load_g: int) -> tuple[BestSet, ...]:
    """Of each session with working sets at this load, that of the most repetitions."""
    found: list[BestSet] = []
    for best in progress.best_sets:
        there = [one for one in best.working if one.load_g == load_g]
        if there:
            most = max(there, key=lambda one: one.amount)
            found.append(best._replace(done=most, amount=most.amount))
    return tuple(found)


def value_by(progress: LineProgress, shown: Shown, factor: float) -> Value:
    """The value of a session's best set by a measure, masses times ``factor``."""
    bodyweight = is_bodyweight(progress)
    used = variations_used(progress)
    shares = _shares(progress, used)

    def value(best: BestSet) -> float | None:
        match shown:
            case Shown.LOAD:
                return None if best.top_g is None else best.top_g * factor
            case Shown.SET if not bodyweight:
                return None if best.work_g is None else best.work_g * factor
            case Shown.MOMENT:
                share = shares.get(best.done.variation or "")
                return None if share is None else share * 100
            case Shown.VARIATION:
                key = best.done.variation
                return float(used.index(key)) if key in used else None
        return float(best.amount)

    return value


def variations_used(progress: LineProgress) -> tuple[str, ...]:
    """The variations on record and in goals, easiest first."""
    keys = {best.done.variation for best in progress.best_sets}
    keys |= {goal.goal.variation for goal in progress.goals}
    return tuple(step.key for step in progress.scale if step.key in keys)


def goals_by(
    progress: LineProgress, shown: Shown, factor: float, load_g: int | None = None
) -> tuple[tuple[float, GoalLine], ...]:
    """The goals that lie on a measure's axis, each with its value there. ``load_g``: where
    repetitions at one load are shown, that load.
    """
    used = variations_used(progress)
    found: list[tuple[float, GoalLine]] = []
    for line in progress.goals:
        goal = line.goal
        match (goal.kind, shown):
            case (GoalKind.ONE_REP_MAX, Shown.ESTIMATE):
                if line.maximum_g is not None:
                    found.append((line.maximum_g * factor, line))
            case (GoalKind.ONE_REP_MAX, Shown.LOAD) if goal.reps and not is_bodyweight(progress):
                found.append((goal.value * factor, line))
            case (GoalKind.ONE_REP_MAX, Shown.AT_LOAD) if goal.reps and goal.value == load_g:
                found.append((float(goal.reps), line))
            case (GoalKind.HOLD, Shown.HOLD):
                found.append((float(goal.value), line))
            case (GoalKind.REPS, Shown.SET) if is_bodyweight(progress):
                found.append((float(goal.value), line))
            case (GoalKind.VARIATION, Shown.VARIATION) if goal.variation in used:
                found.append((float(used.index(goal.variation)), line))
    return tuple(found)


def _shares(progress: LineProgress, used: Sequence[str]) -> dict[str, float | None]:
    return {step.key: step.share for step in progress.scale if step.key in used}
