"""What makes a record valid: each check raises InvalidRecord with a sentence and the field."""

from __future__ import annotations

import math
from collections.abc import Iterable
from datetime import date
from itertools import pairwise

from db.errors import InvalidRecord
from desktop.training.coach import CoachSettings
from desktop.training.exercises import Exercise
from desktop.training.program import Assignment, Line, Program, Slot
from desktop.training.quantities import MAX_LOAD_G
from desktop.training.sentence import sentence
from desktop.training.session import Activity, AskedSet, Session, SetDone
from desktop.training.strength import EQUATIONS
from desktop.training.trainee import (
    Absence,
    BodyMass,
    DeloadWindow,
    DismissedCaution,
    Goal,
    RememberedName,
    Trainee,
)

MOST_REPS = 1_000
MOST_SECONDS = 36_000
MOST_MINUTES = 1_440
MOST_SETS = 100
MOST_TEXT = 20_000


def check_trainee(trainee: Trainee) -> None:
    """A name, a plausible year of birth and stature, each weekday once."""
    _named("name", trainee.name)
    _within("birth year", trainee.birth_year, 1900, 2100, "birth_year")
    _within("stature in millimetres", trainee.stature_mm, 500, 2_500, "stature_mm")
    _within(
        "minutes per session", trainee.minutes_per_session, 1, MOST_MINUTES, "minutes_per_session"
    )
    _weekdays(trainee.weekdays)
    for index, clearance in enumerate(trainee.clearances):
        _named(f"clearances[{index}].by", clearance.by, "the name of who gave the clearance")
    _texts(aims=trainee.aims, avoid=trainee.avoid, notes=trainee.notes)


def check_body_mass(body_mass: BodyMass) -> None:
    """From 10 to 500 kg."""
    _within("body mass in grams", body_mass.mass_g, 10_000, 500_000, "mass_g")


def check_exercise(exercise: Exercise) -> None:
    """Key and name, at least one muscle, no muscle or variation twice."""
    _named("key", exercise.key)
    _named("name", exercise.name)
    _within("implements", exercise.implements, 1, 2, "implements")
    _within("increment in grams", exercise.increment_g, 1, MAX_LOAD_G, "increment_g")
    if not exercise.direct:
        raise InvalidRecord(
            sentence("{name}: name at least one direct muscle.", name=exercise.name), field="direct"
        )
    _once("muscles", (*exercise.direct, *exercise.indirect), "indirect")
    _once("variations", [variation.key for variation in exercise.variations], "variations")
    for index, variation in enumerate(exercise.variations):
        _named(f"variations[{index}].key", variation.key)
        _named(f"variations[{index}].name", variation.name)


def check_line(line: Line) -> None:
    """Each day at most one revision of the rule and one start; starts have a known kind."""
    _texts(name=line.name)
    _once("dated rules", [revision.day for revision in line.revisions], "revisions")
    _once("dated starts", [start.day for start in line.starts], "starts")
    for index, start in enumerate(line.starts):
        if start.plus_minus is not None and not 0 <= start.plus_minus <= 1:
            raise InvalidRecord(
                sentence(
                    "The uncertainty of a start is a fraction from 0 to 1, not {plus_minus}.",
                    plus_minus=start.plus_minus,
                ),
                field=f"starts[{index}].plus_minus",
            )


def check_program(program: Program) -> None:
    """A name, phases of at least a week, weekdays within a week, known rests."""
    _named("name", program.name)
    _within("weeks between deloads", program.deload_every, 1, 520, "deload_every")
    for p, phase in enumerate(program.phases):
        _within(f"{phase.name}: weeks", phase.weeks, 1, 520, f"phases[{p}].weeks")
        for d, day in enumerate(phase.days):
            where = f"phases[{p}].days[{d}]"
            _within(f"{day.name}: weekday", day.weekday, 0, 6, f"{where}.weekday")
            for s, slot in enumerate(day.slots):
                _check_slot(slot, f"{where}.slots[{s}]")


def _check_slot(slot: Slot, where: str) -> None:
    _within(f"{slot.exercise}: rest in seconds", slot.rest_s, 0, 3_600, f"{where}.rest_s")
    _load(f"{slot.exercise}: starting load", slot.start.load_g, f"{where}.start.load_g")


def check_assignment(assignment: Assignment) -> None:
    """It ends on or after its start."""
    _weekdays(assignment.weekdays)
    for move in assignment.moves:
        _weekdays(move.weekdays)
        _in_order(assignment.start, move.day, "moves")
    for before, after in pairwise(assignment.moves):
        _in_order(before.day, after.day, "moves")
    _in_order(assignment.start, assignment.ended, "ended")


def check_sessions(sessions: Iterable[Session]) -> None:
    """Effort 0-10, wellness 1-5, and every set with loads, repetitions and pain that can be; a set
    that stands in several places is looked at once.
    """
    sound: set[int] = set()
    for session in sessions:
        _check_session(session, sound)


def _check_session(session: Session, sound: set[int]) -> None:
    _number("session effort", session.effort, 0, 10, "effort")
    _within("minutes", session.minutes, 0, MOST_MINUTES, "minutes")
    _within("week of the program", session.week, 1, 10_000, "week")
    if session.entry < 0:
        raise InvalidRecord(
            sentence("The order on a day counts from 0, not {entry}.", entry=session.entry),
            field="entry",
        )
    for name in ("sleep", "soreness", "stress", "motivation"):
        _within(name, getattr(session.wellness, name), 1, 5, f"wellness.{name}")
    _texts(note=session.note, day_name=session.day_name)
    for index, line in enumerate(session.lines):
        where = f"lines[{index}]"
        if line.reason or line.note:
            _texts(where, reason=line.reason, note=line.note)
        if max(len(line.sets), len(line.asked)) > MOST_SETS:
            _count(f"{line.exercise}: sets", len(line.sets), where)
            _count(f"{line.exercise}: sets asked", len(line.asked), where)
        if not sound.issuperset(map(id, line.asked)):
            for number, asked in enumerate(line.asked):
                name = f"{line.exercise}, set {number + 1}"
                _check_asked(asked, name, f"{where}.asked[{number}]")
            sound.update(map(id, line.asked))
        if not sound.issuperset(map(id, line.sets)):
            for number, done in enumerate(line.sets):
                name = f"{line.exercise}, set {number + 1}"
                _check_done(done, name, f"{where}.sets[{number}]")
            sound.update(map(id, line.sets))


def _check_asked(asked: AskedSet, name: str, where: str) -> None:
    _load(f"{name}: load asked", asked.load_g, f"{where}.load_g")
    _within(f"{name}: repetitions asked", asked.reps, 0, MOST_REPS, f"{where}.reps")
    _within(f"{name}: seconds asked", asked.seconds, 0, MOST_SECONDS, f"{where}.seconds")
    _within(f"{name}: tempo asked", asked.tempo_s, 0, 600, f"{where}.tempo_s")
    _number(f"{name}: repetitions in reserve asked", asked.rir, 0, 20, f"{where}.rir")


def _check_done(done: SetDone, name: str, where: str) -> None:
    if done.reps is None and done.seconds is None:
        raise InvalidRecord(
            sentence("{name}: give clean repetitions or seconds.", name=name), field=f"{where}.reps"
        )
    _load(f"{name}: load", done.load_g, f"{where}.load_g")
    _within(f"{name}: clean repetitions", done.reps, 0, MOST_REPS, f"{where}.reps")
    _within(f"{name}: seconds", done.seconds, 0, MOST_SECONDS, f"{where}.seconds")
    _number(f"{name}: repetitions in reserve", done.rir, 0, 20, f"{where}.rir")
    _within(f"{name}: tempo in seconds", done.tempo_s, 0, 600, f"{where}.tempo_s")
    _within(f"{name}: pain", done.pain, 0, 10, f"{where}.pain")
    if done.side not in ("", "left", "right"):
        raise InvalidRecord(
            sentence(
                "{name}: the side is left, right or empty, not {side!r}.", name=name, side=done.side
            ),
            field=f"{where}.side",
        )
    _texts(where, note=done.note)


def check_activity(activity: Activity) -> None:
    """A name, minutes of a day, effort 0-10."""
    _named("name", activity.name)
    _within("minutes", activity.minutes, 0, MOST_MINUTES, "minutes")
    _number("effort", activity.effort, 0, 10, "effort")


def check_deload(deload: DeloadWindow) -> None:
    """First day not after the last, a factor above 0 up to 1, 0-100 % off."""
    _in_order(deload.first, deload.last, "last")
    _factor(deload.sets_factor, "sets_factor")
    _number("percent off the load", deload.load_percent, 0, 100, "load_percent")
    _texts(note=deload.note)


def check_absence(absence: Absence) -> None:
    """First day not after the last."""
    _in_order(absence.first, absence.last, "last")
    _texts(note=absence.note)


def check_goal(goal: Goal) -> None:
    """A value of at least 0 (help of a machine or band: below), and 1 or more repetitions of it."""
    least = 0 if goal.reps is None else -MAX_LOAD_G
    _within("goal", goal.value, least, MAX_LOAD_G, "value")
    _within("repetitions of the goal", goal.reps, 1, MOST_REPS, "reps")
    _texts(note=goal.note)


def check_dismissed(dismissed: DismissedCaution) -> None:
    """A limit and a reason."""
    _named("limit", dismissed.limit)
    _texts(evidence=dismissed.evidence, why=dismissed.why)


def check_remembered_name(remembered: RememberedName) -> None:
    """Some text."""
    _named("text", remembered.text)


def check_settings(settings: CoachSettings) -> None:
    """A known equation, and deloads that ask for less."""
    if settings.equation and settings.equation not in EQUATIONS:
        raise InvalidRecord(
            sentence(
                "{equation!r} is no equation: allowed are {listed}.",
                equation=settings.equation,
                listed=", ".join(EQUATIONS),
            ),
            field="equation",
        )
    _within("weeks between deloads", settings.deload_every_weeks, 1, 520, "deload_every_weeks")
    _factor(settings.deload_sets_factor, "deload_sets_factor")
    _number("percent off the load", settings.deload_load_percent, 0, 100, "deload_load_percent")


def _factor(factor: float, field: str) -> None:
    if not 0 < factor <= 1:
        raise InvalidRecord(
            sentence("The factor on sets is above 0 and at most 1, not {factor}.", factor=factor),
            field=field,
        )


def _named(field: str, value: str, what: str = "") -> None:
    if not value.strip():
        raise InvalidRecord(
            sentence("Give {value}.", value=what or "a " + field.split(".")[-1]), field=field
        )
    _texts(**{field: value})


def _texts(where: str = "", **texts: str) -> None:
    for name, text in texts.items():
        field = f"{where}.{name}" if where else name
        if len(text) > MOST_TEXT:
            raise InvalidRecord(
                sentence(
                    "{name}: at most {most_text} characters, not {text}.",
                    name=name,
                    most_text=MOST_TEXT,
                    text=len(text),
                ),
                field=field,
            )
        if "\0" in text:
            raise InvalidRecord(
                sentence("{name}: holds a character that is no text.", name=name), field=field
            )


def _within(what: str, value: int | None, least: int, most: int, field: str) -> None:
    if value is not None and not least <= value <= most:
        raise InvalidRecord(
            sentence(
                "{what}: {least} to {most}, not {value}.",
                what=_upper(what),
                least=least,
                most=most,
                value=value,
            ),
            field=field,
        )


def _number(what: str, value: float | None, least: int, most: int, field: str) -> None:
    if value is not None and not (math.isfinite(value) and least <= value <= most):
        raise InvalidRecord(
            sentence(
                "{what}: {least} to {most}, not {value}.",
                what=_upper(what),
                least=least,
                most=most,
                value=value,
            ),
            field=field,
        )


def _load(what: str, load_g: int, field: str) -> None:
    _within(f"{what} in grams", load_g, -MAX_LOAD_G, MAX_LOAD_G, field)


def _count(what: str, count: int, field: str) -> None:
    if count > MOST_SETS:
        raise InvalidRecord(
            sentence(
                "{what}: at most {most_sets}, not {count}.",
                what=_upper(what),
                most_sets=MOST_SETS,
                count=count,
            ),
            field=field,
        )


def _weekdays(weekdays: tuple[int, ...]) -> None:
    for weekday in weekdays:
        _within("weekday (Monday is 0)", weekday, 0, 6, "weekdays")
    _once("weekdays", weekdays, "weekdays")


def _once(what: str, values: Iterable[object], field: str) -> None:
    seen: set[object] = set()
    for value in values:
        if value in seen:
            raise InvalidRecord(
                sentence("{what}: {value} stands twice.", what=_upper(what), value=value),
                field=field,
            )
        seen.add(value)


def _in_order(first: date, last: date | None, field: str) -> None:
    if last is not None and last < first:
        raise InvalidRecord(
            sentence(
                "The last day, {last}, is before the first, {first}.",
                last=last.isoformat(),
                first=first.isoformat(),
            ),
            field=field,
        )


def _upper(what: str) -> str:
    return what[:1].upper() + what[1:]
