"""One more day a week: proposed when its own condition holds, never taken by itself."""

from __future__ import annotations

from collections.abc import Collection
from datetime import date

from desktop.training.position import FrequencyCondition
from desktop.training.reasons import Reason, ReasonCode, reason
from desktop.training.state import State

WEEKDAYS = range(7)


def propose_day(
    state: State,
    condition: FrequencyCondition,
    trained: Collection[int],
    possible: Collection[int],
    today: date,
) -> Reason | None:
    """The proposal of one more training day for a line, or why none fits; None while the
    condition does not hold or the most days a week are reached.

    ``trained`` are the weekdays (0 = Monday) on which the line's pattern is trained now,
    ``possible`` those on which the trainee can train. At least one full day stays between days of
    the pattern, over the turn of the week too. Accepting is an override; nothing resets.
    """
    if not _holds(state, condition, today) or len(set(trained)) >= condition.most:
        return None
    free = [day for day in WEEKDAYS if day in possible and day not in trained]
    for day in free:
        if not _neighbours(day) & set(trained):
            return reason(ReasonCode.PROPOSE_DAY, weekday=day)
    in_the_way = sorted({near for day in free for near in _neighbours(day) & set(trained)})
    return reason(
        ReasonCode.PROPOSE_DAY_IMPOSSIBLE,
        weekdays=",".join(str(day) for day in in_the_way or sorted(trained)),
    )


def _holds(state: State, condition: FrequencyCondition, today: date) -> bool:
    if condition.steps is not None and state.steps >= condition.steps:
        return True
    if condition.weeks is None or state.counting_from is None:
        return False
    return (today - state.counting_from).days >= 7 * condition.weeks


def _neighbours(weekday: int) -> set[int]:
    return {(weekday - 1) % 7, (weekday + 1) % 7}
