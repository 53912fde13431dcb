"""Words for the ways out of a caution, and the work area that each leads to."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QCoreApplication

from desktop.planning.caution_ways import Way, WayKind
from desktop.training.exercises import Exercise, LoadingKind
from desktop.training.position import Variable, VariableRange
from desktop.training.quantities import Unit
from views import words
from views.exercise_words import short_variation
from views.work_areas import PROGRAM, PROGRESS, SESSION, TRAINEE

translate = QCoreApplication.translate

AREAS: Final = {
    WayKind.RULE: PROGRAM,
    WayKind.SUBSTITUTE: PROGRAM,
    WayKind.VARIABLE: PROGRAM,
    WayKind.PROGRAM: PROGRAM,
    WayKind.PROGRESS: PROGRESS,
    WayKind.SESSION: SESSION,
    WayKind.TRAINEE: TRAINEE,
}
"""Where ways lead that change nothing by themselves; the others stay on the screen."""


def way_text(way: Way, unit: Unit, exercise: Exercise | None) -> str:
    """A way as the words of a button."""
    match way.kind:
        case WayKind.HOLD:
            return translate("Ways", "Stay at {work}").format(work=_work(way, unit, exercise))
        case WayKind.LIGHTER:
            return translate("Ways", "Back off to {work}").format(work=_work(way, unit, exercise))
        case WayKind.DELOAD if way.day is not None:
            text = translate("Ways", "Deload from {day}")
            return text.format(day=words.short_day(way.day))
        case WayKind.DAY_OFF if way.weekday is not None:
            text = translate("Ways", "Add a day off: from {day} train on {weekday}")
            day = words.short_day(way.day) if way.day is not None else ""
            return text.format(weekday=words.weekday(way.weekday), day=day)
        case WayKind.GROW if way.grows is not None:
            return _grows_text(way.grows)
    return _place_text(way.kind)


def _grows_text(added: VariableRange) -> str:
    text = (
        translate("Ways", "Let sets grow too, from {floor} to {ceiling}")
        if added.variable is Variable.SETS
        else translate("Ways", "Let repetitions grow first, from {floor} to {ceiling}")
    )
    return text.format(
        floor=words.number(added.floor or 0), ceiling=words.number(added.ceiling or 0)
    )


def _place_text(kind: WayKind) -> str:
    return {
        WayKind.CLEARANCE: translate("Ways", "Record a clearance"),
        WayKind.PLANNER: translate("Ways", "Look at the deload"),
        WayKind.RULE: translate("Ways", "Look at the rule"),
        WayKind.SUBSTITUTE: translate("Ways", "Take another exercise"),
        WayKind.VARIABLE: translate("Ways", "Let another variable grow"),
        WayKind.PROGRAM: translate("Ways", "Look at the program"),
        WayKind.PROGRESS: translate("Ways", "Look at the progress"),
        WayKind.SESSION: translate("Ways", "Look at the targets"),
        WayKind.TRAINEE: translate("Ways", "Look at the trainee"),
        WayKind.WEEK: translate("Ways", "Look at the week"),
        WayKind.ACTIVITIES: translate("Ways", "Say what is recorded"),
    }[kind]


def _work(way: Way, unit: Unit, exercise: Exercise | None) -> str:
    position = way.position
    if position is None:
        return ""
    bodyweight = exercise is not None and exercise.loading is LoadingKind.BODYWEIGHT
    text = words.prescription(position, unit, bodyweight=bodyweight)
    if position.variation is None or exercise is None:
        return text
    names = {each.key: each.name for each in exercise.variations}
    key = position.variation
    return f"{text}, {short_variation(key, names.get(key, key))}"
