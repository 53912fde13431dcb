"""Words of the session form: rows, cells, what is wrong, what is doubtful, what is asked.

Plain text, never markup.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from itertools import groupby

from PySide6.QtCore import QCoreApplication

from desktop.planning.days import DayPlan, SlotPlan, WhyEmpty
from desktop.planning.session_draft import Field
from desktop.planning.typed_cells import CellKind, Row
from desktop.planning.typed_doubts import Doubt
from desktop.training.exercises import LoadingKind
from desktop.training.position import Position
from desktop.training.quantities import InvalidQuantity, Unit
from desktop.training.session import Activity, AskedSet, SetDone
from views import words
from views.exercise_words import variation_name
from views.number_fields import quantity_words
from views.reason_texts import reason_text

translate = QCoreApplication.translate


def row_word(row: Row) -> str:
    """A row's word at the left of the sheet."""
    return {
        Row.DONE: translate("Session", "done"),
        Row.LOAD: translate("Session", "load"),
        Row.RESERVE: translate("Session", "in reserve"),
        Row.PAIN: translate("Session", "pain 0-10"),
    }[row]


def cell_name(exercise: str, index: int, row: Row, kind: CellKind) -> str:
    """A cell read aloud: "Back squat, set 2, repetitions done"."""
    what = {
        Row.DONE: translate("Session", "seconds held")
        if kind.hold
        else translate("Session", "repetitions done"),
        Row.LOAD: translate("Session", "load in {unit}").format(unit=kind.unit.value),
        Row.RESERVE: translate("Session", "repetitions in reserve"),
        Row.PAIN: translate("Session", "pain, 0 to 10"),
    }[row]
    text = translate("Session", "{exercise}, set {number}, {what}")
    return text.format(exercise=exercise, number=words.number(index + 1), what=what)


def field_word(field: Field) -> str:
    """The word before one of the session's own fields."""
    return {
        Field.EFFORT: translate("Session", "Effort"),
        Field.MINUTES: translate("Session", "Minutes"),
        Field.MASS: translate("Session", "Body mass"),
        Field.SLEEP: translate("Session", "Sleep"),
        Field.SORENESS: translate("Session", "Soreness"),
        Field.STRESS: translate("Session", "Stress"),
        Field.MOTIVATION: translate("Session", "Motivation"),
        Field.ACTIVITY: translate("Session", "Other activity"),
        Field.ACTIVITY_MINUTES: translate("Session", "Minutes of the other activity"),
        Field.ACTIVITY_EFFORT: translate("Session", "Effort of the other activity, 0 to 10"),
        Field.NOTE: translate("Session", "Note"),
    }[field]


def problem_text(wrong: InvalidQuantity, *, converts: bool = False) -> str:
    """What is wrong in a cell and what is allowed. ``converts``: Return can put a load right that
    is typed in the other unit.
    """
    text = {
        "one_side": translate("Session", "One number: both sides work at once here."),
        "two_sides": translate("Session", "Left and right, like 8/7."),
        "no_help": translate("Session", "0 or more: help is typed for bodyweight only."),
        "other_unit": translate(
            "Session", "{unit} are typed here: that is {value}. Return again takes it."
        )
        if converts
        else translate("Session", "{unit} are typed here: that is {value}."),
        "needs_done": translate("Session", "How many? Type 0 if none was clean."),
        "needs_activity": translate("Session", "Which activity? Its minutes or effort are typed."),
        "needs_minutes": translate(
            "Session", "How many minutes? Name, minutes, effort: all three."
        ),
        "needs_effort": translate(
            "Session", "How hard, 0 to 10? Name, minutes, effort: all three."
        ),
        "needs_load": translate("Session", "Which load? None was asked."),
    }.get(wrong.code)
    return quantity_words(wrong) if text is None else text.format(**wrong.values)


def doubt_text(doubt: Doubt, kind: CellKind) -> str:
    """What is doubtful in a cell, and how to say that it is meant."""
    if doubt.place.row is Row.LOAD:
        value, asked = words.load(doubt.value, kind.unit), words.load(doubt.asked, kind.unit)
    else:
        value, asked = words.number(doubt.value), words.number(doubt.asked)
    text = translate("Session", "{value} against {asked}: Return again if it is meant.")
    return text.format(value=value, asked=asked)


def spoken_difference(sign: int, amount: str) -> str:
    """A difference from what was asked, read aloud; ``amount`` without its sign."""
    if sign > 0:
        return translate("Session", "{amount} more than asked").format(amount=amount)
    return translate("Session", "{amount} less than asked").format(amount=amount)


def slot_name(slot: SlotPlan, variation: str | None = None) -> str:
    """The exercise with its line's name and the variation in the trainee's words."""
    name = slot.exercise.name
    if slot.line.name:
        name = f"{name}, {slot.line.name}"
    position = slot.target.position
    key = variation or (position.variation if position else None)
    shown = variation_name(key, slot.state.surroundings, slot.exercise)
    if shown.casefold().startswith(slot.exercise.name.casefold()) and not slot.line.name:
        return f"{shown[:1].upper()}{shown[1:]}"
    return f"{name}, {shown}" if shown else name


def asked_text(asked: Sequence[AskedSet], unit: Unit, *, bodyweight: bool) -> str:
    """What a line is asked: "3 × 10 at 62.5 kg", "5 at 100 kg, 2 × 5 at 90 kg"."""
    runs = [(each, len(list(same))) for each, same in groupby(asked, key=_work)]
    return ", ".join(
        _kept_together(
            words.prescription(
                Position(load_g=load_g, reps=reps, hold_s=seconds, sets=count),
                unit,
                bodyweight=bodyweight,
            )
        )
        for (load_g, reps, seconds), count in runs
    )


def reserve_asked(asked: Sequence[AskedSet]) -> str:
    """The reserve that is asked for: "with 2 in reserve"."""
    last = asked[-1].rir if asked else None
    if last is None:
        return ""
    return translate("Session", "with {count} in reserve").format(count=words.number(last, 1))


def set_asked(asked: AskedSet | None) -> str:
    """What stands above one cell: "10", "10+" where the set is open-ended."""
    if asked is None:
        return ""
    amount = asked.reps if asked.reps is not None else asked.seconds
    text = "" if amount is None else words.number(amount)
    return f"{text}+" if asked.open_ended else text


def set_before(done: SetDone, asked: AskedSet | None, unit: Unit) -> str:
    """What stands above one cell of last time: the amount, with the load where it differed."""
    amount = words.number(done.amount)
    if asked is None or asked.load_g == done.load_g or done.load_g == 0:
        return amount
    return f"{amount}{words.TIMES}{words.load_number(done.load_g, unit)}"


def best_text(slot: SlotPlan, unit: Unit) -> str:
    """The best set so far, shortly; "" where nothing was done yet."""
    best = slot.best
    if best is None or not best.amount:
        return ""
    amount = words.hold(best.seconds) if best.seconds is not None else f"{best.reps or 0}"
    if slot.exercise.loading is LoadingKind.BODYWEIGHT:
        shown = " ".join(w for w in (amount, words.added_load(best.load_g, unit)) if w)
    else:
        shown = words.set_words(best, unit)
    variation = variation_name(best.variation, slot.state.surroundings, slot.exercise)
    text = translate("Session", "best {work}").format(work=shown)
    return f"{text}, {variation}" if variation else text


def why_text(slot: SlotPlan, unit: Unit, today: date) -> str:
    """Why this is asked, in one sentence, and what else changed it on the day."""
    reasons = (*slot.target.notes, slot.target.reason)
    text = ". ".join(reason_text(each, unit, today) for each in reasons)
    return f"{text[:1].upper()}{text[1:]}"


def plan_text(plan: DayPlan) -> str:
    """What the day belongs to: "Winter strength, week 8 of 12"."""
    if plan.program is None or plan.week is None:
        return ""
    text = translate("Session", "{program}, week {week} of {weeks}").format(
        program=plan.program.name, week=plan.week, weeks=plan.program.weeks
    )
    return translate("Session", "{text}, deload").format(text=text) if plan.deload else text


def empty_text(plan: DayPlan) -> str:
    """Why nothing is asked on a day, and what can be done."""
    return {
        WhyEmpty.NOT_EMPTY: "",
        WhyEmpty.NO_PROGRAM: translate("Session", "No program is assigned to this trainee."),
        WhyEmpty.NOT_STARTED: translate("Session", "The program has not started yet."),
        WhyEmpty.ENDED: translate("Session", "The program has ended: assign the next one."),
        WhyEmpty.REST_DAY: translate("Session", "A rest day: nothing is planned."),
        WhyEmpty.AWAY: translate("Session", "Away on this day: nothing is asked."),
        WhyEmpty.CLEARANCE_NEEDED: translate(
            "Session",
            "Nothing is asked until a licensed professional's clearance is recorded with name "
            "and date.",
        ),
    }[plan.why_empty]


def activities_text(activities: Sequence[Activity], today: date) -> str:
    """Other activities on record: "Mon 16 Nov cycling 40 min, effort 5"."""
    text = translate("Session", "{day} {name} {minutes}, effort {effort}")
    return words.DOT.join(
        text.format(
            day=words.short_day(each.day, today),
            name=each.name,
            minutes=words.minutes(each.minutes),
            effort=words.number(each.effort, 1),
        )
        for each in activities
    )


def _kept_together(text: str) -> str:
    """A prescription breaks nowhere but between its parts."""
    return text.replace(" ", "\N{NO-BREAK SPACE}")


def _work(asked: AskedSet) -> tuple[int, int | None, int | None]:
    return asked.load_g, asked.reps, asked.seconds
