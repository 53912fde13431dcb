"""The answer in a sentence: gain a week and how sure that is, plateau or not, when a goal comes."""

from __future__ import annotations

from datetime import timedelta
from typing import Final

from PySide6.QtCore import QCoreApplication

from desktop.planning.progress import (
    LEAST_POINTS,
    LEAST_SPAN,
    BestSet,
    GoalLine,
    LineProgress,
    Statement,
)
from desktop.training.exercises import LoadingKind, Measure
from desktop.training.quantities import Unit
from desktop.training.trainee import GoalKind
from views import words
from views.progress_texts import done_words, goal_words, month_day, tenths

translate = QCoreApplication.translate

LEVEL: Final = 0.0005
"""A gain a week that rounds to nothing."""

_UNLIKELY, _LIKELY, _VERY_LIKELY = 0.2, 0.55, 0.85
_LONG_AGO: Final = timedelta(days=14)


def statement_text(progress: LineProgress, unit: Unit) -> str:
    """The answer in words: gain a week, plateau or not, when the goal comes; or what is missing."""
    if not progress.best_sets:
        return ""
    sentences: list[str] = []
    if progress.statement is not None:
        sentences += [_gain(progress.statement), _plateau(progress.statement)]
    else:
        sentences += [_best(progress, unit), _missing(progress)]
    sentences += [goal_sentence(line, progress, unit) for line in progress.goals]
    sentences.append(_pause(progress))
    return " ".join(sentence for sentence in sentences if sentence)


def _gain(statement: Statement) -> str:
    gain = statement.gain_per_week
    if abs(gain) < LEVEL:
        text = translate("Progress", "Level: {gain} a week (80 %: {low} to {high}).")
    elif gain > 0:
        text = translate("Progress", "Up {gain} a week (80 %: {low} to {high}).")
    else:
        text = translate("Progress", "Down {gain} a week (80 %: {low} to {high}).")
    return text.format(
        gain=f"{tenths(abs(gain) * 100)} %",
        low=tenths(statement.gain_low * 100),
        high=tenths(statement.gain_high * 100),
    )


def _plateau(statement: Statement) -> str:
    p = statement.plateau
    if statement.gain_per_week <= -LEVEL and p >= _LIKELY:
        text = translate("Progress", "No gain is to be seen ({share}).")
    elif p < _UNLIKELY:
        text = translate("Progress", "A plateau is unlikely ({share}).")
    elif p < _LIKELY:
        text = translate("Progress", "A plateau is possible ({share}).")
    elif p < _VERY_LIKELY:
        text = translate("Progress", "A plateau is likely ({share}).")
    else:
        text = translate("Progress", "A plateau is very likely ({share}).")
    return text.format(share=words.percent(min(max(p, 0.01), 0.99)))


def _best(progress: LineProgress, unit: Unit) -> str:
    """The best of what little there is."""
    names = {step.key: step.name for step in progress.scale}
    bodyweight = progress.exercise.loading is LoadingKind.BODYWEIGHT
    best = _hardest(progress)
    text = translate("Progress", "Best so far ({day}): {done}.")
    return text.format(
        done=done_words(best.done, unit, names, bodyweight=bodyweight),
        day=words.short_day(best.day, progress.today),
    )


def _hardest(progress: LineProgress) -> BestSet:
    places = {step.key: place for place, step in enumerate(progress.scale)}

    def worth(best: BestSet) -> tuple[float, int, int, int]:
        done = best.done
        demand = (best.top_g or 0.0) * (1 + (done.reps or 0) / 30)
        return (demand, places.get(done.variation or "", -1), done.load_g, best.amount)

    if progress.exercise.measure is Measure.HOLD:
        return max(progress.best_sets, key=lambda best: worth(best)[1:])
    return max(progress.best_sets, key=worth)


def _missing(progress: LineProgress) -> str:
    """What a trend still needs."""
    if progress.exercise.measure is Measure.HOLD:
        return ""
    counted = [point for point in progress.points if point.counted]
    if not counted:
        if progress.points:
            return translate("Progress", "Sessions of deload or pain make no trend.")
        if all(best.top_g is None for best in progress.best_sets):
            return translate("Progress", "Variations known by their order alone make no trend.")
        return translate("Progress", "Such sets give no estimate of the maximum, so no trend.")
    short = LEAST_POINTS - len(counted)
    if short == 1:
        return translate("Progress", "One more session makes a trend.")
    if short > 1:
        text = translate("Progress", "{count} more sessions make a trend.")
        return text.format(count=_spelled(short))
    ready = counted[0].day + LEAST_SPAN
    text = translate("Progress", "A trend needs two weeks: from {day} on.")
    return text.format(day=month_day(ready, progress.today))


def _spelled(count: int) -> str:
    return {
        2: translate("Progress", "Two"),
        3: translate("Progress", "Three"),
        4: translate("Progress", "Four"),
    }.get(count, words.number(count))


def goal_sentence(line: GoalLine, progress: LineProgress, unit: Unit) -> str:
    """A goal and when the trend reaches it, where it can."""
    names = {step.key: step.name for step in progress.scale}
    what = goal_words(line, unit, names)
    today = progress.today
    if line.goal.by is not None:
        wanted = translate("Progress", "{goal} (wanted by {day})")
        what = wanted.format(goal=what, day=month_day(line.goal.by, today))
    told = line.goal.kind is GoalKind.ONE_REP_MAX and not (
        line.goal.reps is not None and line.maximum_g is None
    )
    if not told or progress.statement is None:
        return translate("Progress", "Goal: {goal}.").format(goal=what)
    if line.latest is not None and line.latest <= today:
        text = translate("Progress", "{goal} is reached.")
    elif line.earliest is None:
        text = translate("Progress", "{goal}: not within a year at this rate.")
    elif line.latest is None:
        text = translate("Progress", "{goal}: {first} at the earliest, perhaps not within a year.")
        if line.earliest <= today:
            text = translate("Progress", "{goal} may be reached, or not within a year.")
    elif line.earliest <= today:
        text = translate("Progress", "{goal} by {last}, perhaps already.")
    else:
        text = translate("Progress", "{goal} between {first} and {last}.")
    return text.format(
        goal=what,
        first=month_day(line.earliest, today) if line.earliest else "",
        last=month_day(line.latest, today) if line.latest else "",
    )


def _pause(progress: LineProgress) -> str:
    """That nothing was done lately, which the trend cannot know."""
    last = progress.best_sets[-1].day
    if progress.today - last <= _LONG_AGO:
        return ""
    text = translate("Progress", "Last done {days} ago.")
    return text.format(days=words.days((progress.today - last).days))
