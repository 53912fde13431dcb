"""The tables as peewee sees them; private to the store.

Models belong to no database: each query is bound to the one that it is run on. They declare no
foreign keys (the SQL of the schema does), so that no attribute can ever query behind one's back.
Fields convert between columns and the values of the model.
"""

from __future__ import annotations

from datetime import UTC, date, datetime
from enum import StrEnum
from typing import Any

import peewee

from db.codec import from_text, to_text
from desktop.training.equipment import Equipment
from desktop.training.exercises import HeightUse, LoadingKind, Measure, Muscle, Pattern, Sex
from desktop.training.position import Position, ProgressionRule
from desktop.training.program import PhasePurpose, WeekdaysFrom
from desktop.training.quantities import Unit
from desktop.training.session import ChangeKind
from desktop.training.session import Session as SessionRecord
from desktop.training.trainee import AbsenceKind, Clearance, Experience, GoalKind


class DayField(peewee.IntegerField):
    """A calendar day, kept as its ordinal."""

    def db_value(self, value: date | int | None) -> int | None:
        return value.toordinal() if isinstance(value, date) else value

    def python_value(self, value: int | None) -> date | None:
        return None if value is None else date.fromordinal(value)


class FlagField(peewee.IntegerField):
    """True or false, kept as 1 or 0."""

    def db_value(self, value: bool | None) -> int | None:
        return None if value is None else int(value)

    def python_value(self, value: int | None) -> bool | None:
        return None if value is None else bool(value)


class CodeField(peewee.TextField):
    """One of a set of codes."""

    def __init__(self, codes: type[StrEnum], **options: Any) -> None:
        super().__init__(**options)
        self.codes = codes

    def db_value(self, value: str) -> str:
        return self.codes(value).value

    def python_value(self, value: str) -> StrEnum:
        return self.codes(value)


class ValueField(peewee.TextField):
    """A value object of the model, or a tuple of them, kept as JSON text."""

    def __init__(self, kind: Any, **options: Any) -> None:
        super().__init__(**options)
        self.kind = kind

    def db_value(self, value: object) -> str | None:
        return None if value is None else to_text(value)

    def python_value(self, value: str | None) -> Any:
        return None if value is None else from_text(value, self.kind)


class MomentField(peewee.TextField):
    """A moment in UTC, kept as text by ISO 8601."""

    def db_value(self, value: datetime) -> str:
        return value.astimezone(UTC).isoformat(timespec="microseconds")

    def python_value(self, value: str) -> datetime:
        return datetime.fromisoformat(value)


PLAIN = (peewee.IntegerField, peewee.FloatField, peewee.TextField)
"""Fields whose values stand in the file as they are."""


class Table(peewee.Model):
    """A table without key of its own."""

    class Meta:
        legacy_table_names = False
        primary_key = False


class Aggregate(peewee.Model):
    """A table of aggregates: each row has an identity and the number of its revision."""

    id = peewee.AutoField()
    revision = peewee.IntegerField()

    class Meta:
        legacy_table_names = False


class OfTrainee(Aggregate):
    """A table of dated facts about one trainee."""

    trainee_id = peewee.IntegerField()


class FileFact(Table):
    name = peewee.TextField()
    value = peewee.TextField()


class Trainee(Aggregate):
    name = peewee.TextField()
    birth_year = peewee.IntegerField(null=True)
    sex = CodeField(Sex)
    stature_mm = peewee.IntegerField(null=True)
    unit = CodeField(Unit)
    weekdays = ValueField(tuple[int, ...])
    minutes_per_session = peewee.IntegerField(null=True)
    experience = CodeField(Experience)
    aims = peewee.TextField()
    avoid = peewee.TextField()
    screened = DayField(null=True)
    screening_clear = FlagField(null=True)
    consent = DayField(null=True)
    clearances = ValueField(tuple[Clearance, ...])
    activities_recorded = FlagField()
    notes = peewee.TextField()
    archived = FlagField()


class BodyMass(OfTrainee):
    day = DayField()
    mass_g = peewee.IntegerField()


class EquipmentFrom(OfTrainee):
    day = DayField()
    equipment = ValueField(Equipment)


class Exercise(Aggregate):
    key = peewee.TextField()
    name = peewee.TextField()
    pattern = CodeField(Pattern)
    loading = CodeField(LoadingKind)
    measure = CodeField(Measure)
    implements = peewee.IntegerField()
    unilateral = FlagField()
    increment_g = peewee.IntegerField()
    heights = ValueField(tuple[HeightUse, ...])
    cue = peewee.TextField()
    other_names = ValueField(tuple[str, ...])
    needs = ValueField(tuple[str, ...])
    own = FlagField()
    retired = FlagField()


class MuscleShare(Table):
    exercise_id = peewee.IntegerField()
    place = peewee.IntegerField()
    muscle = CodeField(Muscle)
    direct = FlagField()


class Variation(Table):
    exercise_id = peewee.IntegerField()
    place = peewee.IntegerField()
    key = peewee.TextField()
    name = peewee.TextField()
    family = peewee.TextField()
    geometry_kind = peewee.TextField(null=True)
    geometry = peewee.TextField(null=True)
    needs = ValueField(tuple[str, ...])


class Line(OfTrainee):
    exercise = peewee.TextField()
    name = peewee.TextField()


class RuleRevision(Table):
    line_id = peewee.IntegerField()
    place = peewee.IntegerField()
    day = DayField()
    rule = ValueField(ProgressionRule)


class LineStart(Table):
    line_id = peewee.IntegerField()
    place = peewee.IntegerField()
    day = DayField()
    position = ValueField(Position)
    kind = peewee.TextField()
    plus_minus = peewee.FloatField(null=True)


class LineOverride(Table):
    line_id = peewee.IntegerField()
    place = peewee.IntegerField()
    day = DayField()
    position = ValueField(Position)
    note = peewee.TextField()
    entry = peewee.IntegerField()


class Program(Aggregate):
    name = peewee.TextField()
    about = peewee.TextField()
    deload_every = peewee.IntegerField(null=True)


class Phase(Table):
    program_id = peewee.IntegerField()
    place = peewee.IntegerField()
    name = peewee.TextField()
    weeks = peewee.IntegerField()
    purpose = CodeField(PhasePurpose)


class TrainingDay(Table):
    program_id = peewee.IntegerField()
    phase_place = peewee.IntegerField()
    place = peewee.IntegerField()
    name = peewee.TextField()
    weekday = peewee.IntegerField(null=True)


class Slot(Table):
    program_id = peewee.IntegerField()
    phase_place = peewee.IntegerField()
    day_place = peewee.IntegerField()
    place = peewee.IntegerField()
    exercise = peewee.TextField()
    line_name = peewee.TextField()
    rule = ValueField(ProgressionRule)
    start = ValueField(Position)
    rest_s = peewee.IntegerField()
    tempo = peewee.TextField()
    pair = peewee.TextField()
    note = peewee.TextField()


class Assignment(OfTrainee):
    program_id = peewee.IntegerField()
    start = DayField()
    weekdays = ValueField(tuple[int, ...])
    ended = DayField(null=True)
    moves = ValueField(tuple[WeekdaysFrom, ...])


class Session(OfTrainee):
    day = DayField()
    entry = peewee.IntegerField()
    effort = peewee.FloatField(null=True)
    minutes = peewee.IntegerField(null=True)
    sleep = peewee.IntegerField(null=True)
    soreness = peewee.IntegerField(null=True)
    stress = peewee.IntegerField(null=True)
    motivation = peewee.IntegerField(null=True)
    note = peewee.TextField()
    red_flag = FlagField()
    program_id = peewee.IntegerField(null=True)
    week = peewee.IntegerField(null=True)
    day_name = peewee.TextField()


class LineDone(Table):
    session_id = peewee.IntegerField()
    place = peewee.IntegerField()
    line_id = peewee.IntegerField()
    exercise = peewee.TextField()
    asked = peewee.TextField()
    deload = FlagField()
    test = FlagField()
    skipped = FlagField()
    reason = peewee.TextField()
    note = peewee.TextField()


class SetDone(Table):
    session_id = peewee.IntegerField()
    line_place = peewee.IntegerField()
    place = peewee.IntegerField()
    line_id = peewee.IntegerField()
    exercise = peewee.TextField()
    day = DayField()
    load_g = peewee.IntegerField()
    reps = peewee.IntegerField(null=True)
    seconds = peewee.IntegerField(null=True)
    variation = peewee.TextField(null=True)
    rir = peewee.FloatField(null=True)
    tempo_s = peewee.IntegerField(null=True)
    warm_up = FlagField()
    pain = peewee.IntegerField()
    side = peewee.TextField()
    note = peewee.TextField()


class SessionChange(OfTrainee):
    session_id = peewee.IntegerField()
    at = MomentField()
    what = CodeField(ChangeKind)
    before = ValueField(SessionRecord, null=True)


class Activity(OfTrainee):
    day = DayField()
    name = peewee.TextField()
    minutes = peewee.IntegerField()
    effort = peewee.FloatField()


class DeloadWindow(OfTrainee):
    first = DayField()
    last = DayField()
    sets_factor = peewee.FloatField()
    load_percent = peewee.FloatField()
    planned = FlagField()
    note = peewee.TextField()


class Absence(OfTrainee):
    first = DayField()
    last = DayField(null=True)
    kind = CodeField(AbsenceKind)
    note = peewee.TextField()


class Goal(OfTrainee):
    line_id = peewee.IntegerField()
    kind = CodeField(GoalKind)
    value = peewee.IntegerField()
    variation = peewee.TextField(null=True)
    by = DayField(null=True, column_name="by_day")
    note = peewee.TextField()
    reps = peewee.IntegerField(null=True)


class DismissedCaution(OfTrainee):
    limit = peewee.TextField(column_name="limit_id")
    evidence = peewee.TextField()
    day = DayField()
    why = peewee.TextField()


class RememberedName(OfTrainee):
    text = peewee.TextField()
    exercise = peewee.TextField()
