"""Words for goals: what is wanted of which exercise, by when, and how far it is."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date

from PySide6.QtCore import QCoreApplication

from desktop.planning.progress import GoalLine, LineProgress
from desktop.training.quantities import Unit, in_unit
from desktop.training.trainee import Goal, GoalKind
from views import words
from views.progress_texts import asked_words
from views.statement_texts import goal_sentence

translate = QCoreApplication.translate


def kind_word(kind: GoalKind, *, added: bool = False) -> str:
    """What a goal is measured in; ``added``: a load beside body mass."""
    if kind is GoalKind.ONE_REP_MAX:
        return translate("Goals", "added load") if added else translate("Goals", "load")
    return {
        GoalKind.REPS: translate("Goals", "repetitions"),
        GoalKind.HOLD: translate("Goals", "seconds held"),
        GoalKind.VARIATION: translate("Goals", "variation"),
    }[kind]


def goal_text(goal: Goal, line_name: str, unit: Unit, names: Mapping[str, str], today: date) -> str:
    """A goal with its exercise: "Back squat, heavy: 85 kg by Sat 13 Mar 2027"."""
    what = asked_words(goal, unit, names)
    if goal.variation is not None and goal.kind is not GoalKind.VARIATION:
        what = f"{what}, {names.get(goal.variation, goal.variation)}"
    text = translate("Goals", "{line}: {goal}")
    if goal.by is not None:
        text = translate("Goals", "{line}: {goal} by {day}")
    return text.format(line=line_name, goal=what, day=_day(goal.by, today))


def how_far(goal: GoalLine, progress: LineProgress, unit: Unit) -> str:
    """When the trend reaches it, or the best so far."""
    asked = goal.goal
    if asked.kind is GoalKind.ONE_REP_MAX:
        return _by_trend(goal, progress, unit)
    if asked.kind is GoalKind.VARIATION:
        return ""
    bests = [
        one
        for one in progress.best_sets
        if asked.variation is None or one.done.variation == asked.variation
    ]
    if not bests:
        return translate("Goals", "Nothing on record yet.")
    reached = next((one for one in bests if one.amount >= asked.value), None)
    if reached is not None:
        text = translate("Goals", "Reached on {day}.")
        return text.format(day=words.short_day(reached.day, progress.today))
    best = max(bests, key=lambda one: one.amount)
    amount = words.hold(best.amount) if asked.kind is GoalKind.HOLD else words.reps(best.amount)
    text = translate("Goals", "Best so far {amount}, on {day}.")
    return text.format(amount=amount, day=words.short_day(best.day, progress.today))


def _by_trend(goal: GoalLine, progress: LineProgress, unit: Unit) -> str:
    parts = []
    if goal.goal.reps is not None and goal.goal.reps > 1 and goal.maximum_g is not None:
        text = translate("Goals", "That is an estimated maximum of {load}.")
        about = words.number(in_unit(round(goal.maximum_g), unit), 1)
        parts.append(text.format(load=f"{about} {unit.value}"))
    if goal.maximum_g is None:
        parts.append(
            translate("Goals", "No estimate of the maximum: too many repetitions, or no body mass.")
        )
    elif progress.statement is None:
        parts.append(
            translate("Goals", "No forecast yet: four sessions over two weeks make a trend.")
        )
    else:
        parts.append(goal_sentence(goal, progress, unit))
    return " ".join(parts)


def _day(day: date | None, today: date) -> str:
    return "" if day is None else words.short_day(day, today)
