"""Shared Hypothesis strategies: valid values of the model, as wide as its types allow."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import Any, TypeVar

from hypothesis import settings
from hypothesis import strategies as st

from desktop.training.coach import CoachSettings
from desktop.training.equipment import (
    AdjustableDumbbell,
    Band,
    Bar,
    Discs,
    Equipment,
    Height,
    Place,
    Stack,
)
from desktop.training.exercises import (
    BodyShare,
    Exercise,
    HeightUse,
    HoldGeometry,
    LoadingKind,
    Measure,
    Muscle,
    Pattern,
    PushUpGeometry,
    RowGeometry,
    Sex,
    Variation,
)
from desktop.training.position import (
    BackOff,
    Criterion,
    CriterionKind,
    Follow,
    FrequencyCondition,
    MissPolicy,
    Position,
    ProgressionRule,
    ProgressionSettings,
    SchemeKind,
    SetScheme,
    Variable,
    VariableRange,
    WhenSlower,
)
from desktop.training.program import (
    Assignment,
    Line,
    LineStart,
    Override,
    Phase,
    PhasePurpose,
    Program,
    RuleRevision,
    Slot,
    TrainingDay,
    WeekdaysFrom,
)
from desktop.training.quantities import Unit
from desktop.training.session import Activity, AskedSet, LineDone, Session, SetDone, Wellness
from desktop.training.trainee import (
    Absence,
    AbsenceKind,
    BodyMass,
    Clearance,
    DeloadWindow,
    DismissedCaution,
    EquipmentFrom,
    Experience,
    Goal,
    GoalKind,
    RememberedName,
    Trainee,
)

T = TypeVar("T")


def examples(times: float) -> settings:
    """So many times the examples of the profile in use, for what costs less or more than most."""
    return settings(max_examples=max(1, round(settings().max_examples * times)))


# Words and quantities

texts = st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\0"), max_size=12)
names = texts.filter(lambda text: bool(text.strip()))
keys = st.text("abcdefghijklmnopqrstuvwxyz-", min_size=1, max_size=10)
days = st.dates(date(1990, 1, 1), date(2090, 12, 31))
masses_g = st.integers(1, 500_000)
loads_g = st.integers(-200_000, 600_000)
weekdays = st.lists(st.integers(0, 6), unique=True, max_size=7).map(tuple)


def tuples_of(values: st.SearchStrategy[T], most: int = 3) -> st.SearchStrategy[tuple[T, ...]]:
    """Tuples of up to ``most`` values."""
    return st.lists(values, max_size=most).map(tuple)


# Exercises

push_ups = st.builds(PushUpGeometry, st.integers(0, 900), st.integers(0, 650), st.booleans())
rows = st.builds(
    RowGeometry,
    st.integers(300, 1800),
    st.integers(0, 600),
    st.booleans(),
    st.none() | st.floats(0, 90),
)
holds = st.builds(
    HoldGeometry,
    st.sampled_from(["front lever", "planche", "l-sit"]),
    st.floats(0, 120),
    st.floats(0, 150),
    st.floats(0, 60),
    st.booleans(),
)
shares = st.builds(BodyShare, st.floats(0, 1), st.floats(0, 1), st.floats(0, 0.1), texts)
needs = tuples_of(st.sampled_from(["bar", "rings", "box", "straps", "parallel bars", "step"]), 2)


@st.composite
def variations(draw: st.DrawFn) -> Variation:
    """One variation with one geometry or none."""
    kind, values = draw(
        st.sampled_from(
            [
                ("", st.none()),
                ("push_up", push_ups),
                ("row", rows),
                ("hold", holds),
                ("share", shares),
            ]
        )
    )
    geometry: dict[str, Any] = {kind: draw(values)} if kind else {}
    return Variation(
        key=draw(keys), name=draw(names), family=draw(texts), needs=draw(needs), **geometry
    )


@st.composite
def exercises(draw: st.DrawFn) -> Exercise:
    """An exercise that was never saved."""
    muscles = draw(st.lists(st.sampled_from(list(Muscle)), min_size=1, max_size=5, unique=True))
    direct = draw(st.integers(1, len(muscles)))
    return Exercise(
        key=draw(keys),
        name=draw(names),
        pattern=draw(st.sampled_from(Pattern)),
        loading=draw(st.sampled_from(LoadingKind)),
        direct=tuple(muscles[:direct]),
        indirect=tuple(muscles[direct:]),
        measure=draw(st.sampled_from(Measure)),
        implements=draw(st.integers(1, 2)),
        unilateral=draw(st.booleans()),
        increment_g=draw(st.integers(1, 20_000)),
        variations=tuple(
            draw(st.lists(variations(), max_size=4, unique_by=lambda variation: variation.key))
        ),
        heights=draw(tuples_of(st.sampled_from(HeightUse), 2)),
        cue=draw(texts),
        other_names=draw(tuples_of(names)),
        needs=draw(needs),
        own=draw(st.booleans()),
        retired=draw(st.booleans()),
    )


# Equipment

discs = st.builds(Discs, masses_g, st.integers(0, 20))


@st.composite
def bands(draw: st.DrawFn) -> Band:
    """A measured band, which pulls more the longer it is."""
    short_mm, short_g = draw(st.integers(1, 500)), draw(st.integers(1, 20_000))
    longer, more = draw(st.integers(1, 500)), draw(st.integers(1, 20_000))
    return Band(draw(names), short_mm, short_g, short_mm + longer, short_g + more)


@st.composite
def stacks(draw: st.DrawFn) -> Stack:
    """A stack of up to 20 steps."""
    first, step = draw(st.integers(1, 10_000)), draw(st.integers(1, 10_000))
    steps = draw(st.integers(0, 20))
    return Stack(draw(names), first, step, first + step * steps, draw(st.integers(0, step)))


equipments = st.builds(
    Equipment,
    bars=tuples_of(st.builds(Bar, names, masses_g, st.none() | masses_g), 2),
    discs=tuples_of(discs),
    collars_g=st.integers(0, 5_000),
    dumbbells_g=tuples_of(masses_g),
    adjustable=tuples_of(
        st.builds(AdjustableDumbbell, masses_g, st.integers(1, 2), tuples_of(discs, 2)), 1
    ),
    kettlebells_g=tuples_of(masses_g),
    stacks=tuples_of(stacks(), 1),
    vest_g=tuples_of(masses_g),
    assistance_g=tuples_of(masses_g),
    bands=tuples_of(bands(), 1),
    boxes=tuples_of(st.builds(Height, names, st.integers(50, 1_200)), 2),
    bar_heights=tuples_of(st.builds(Height, names, st.integers(300, 2_500)), 2),
    places=st.lists(st.sampled_from(Place), unique=True, max_size=3).map(tuple),
)


# Positions and rules

positions = st.builds(
    Position,
    load_g=loads_g,
    reps=st.none() | st.integers(1, 50),
    sets=st.integers(1, 10),
    hold_s=st.none() | st.integers(1, 120),
    tempo_s=st.none() | st.integers(1, 20),
    variation=st.none() | keys,
)


@st.composite
def ranges(draw: st.DrawFn, variable: Variable, slowest: bool) -> VariableRange:
    """A range of ``variable``; only the ``slowest`` one may be open above."""
    when = draw(st.none() | st.sampled_from(WhenSlower))
    if variable is Variable.VARIATION:
        easiest, hardest = draw(st.none() | keys), draw(st.none() | keys)
        return VariableRange(variable, when_slower=when, easiest=easiest, hardest=hardest)
    floor, increment = draw(st.integers(1, 20)), draw(st.integers(1, 5))
    ceiling: int | None = floor + increment * draw(st.integers(0, 6))
    if slowest and draw(st.booleans()):
        ceiling = None
    return VariableRange(variable, floor, ceiling, increment, when)


@st.composite
def rules(draw: st.DrawFn) -> ProgressionRule:
    """A valid rule over any variables."""
    amount = draw(st.sampled_from([Variable.REPS, Variable.HOLD]))
    others = [v for v in Variable if v not in (Variable.REPS, Variable.HOLD)]
    order = draw(st.lists(st.sampled_from([amount, *others]), unique=True, max_size=4))
    frequency = st.builds(
        FrequencyCondition, st.integers(1, 9), st.none() | st.integers(1, 9), st.integers(1, 7)
    )
    percents = st.floats(0.5, 50)
    return ProgressionRule(
        ranges=tuple(draw(ranges(variable, variable is order[-1])) for variable in order),
        criterion=draw(
            st.builds(
                Criterion, st.sampled_from(CriterionKind), st.integers(1, 10), st.integers(1, 10)
            )
        ),
        miss=draw(st.builds(MissPolicy, st.integers(1, 5), st.sampled_from(BackOff), percents)),
        scheme=draw(st.builds(SetScheme, st.sampled_from(SchemeKind), percents)),
        target_rir=draw(st.none() | st.floats(0, 10)),
        least_share_step=draw(st.floats(0, 0.2)),
        frequency=draw(st.none() | frequency),
        follow=draw(st.none() | st.builds(Follow, texts, st.floats(1, 100))),
        start_percent=draw(st.none() | st.floats(1, 100)),
    )


# Trainees and facts about them

trainees = st.builds(
    Trainee,
    name=names,
    birth_year=st.none() | st.integers(1900, 2100),
    sex=st.sampled_from(Sex),
    stature_mm=st.none() | st.integers(500, 2_500),
    unit=st.sampled_from(Unit),
    weekdays=weekdays,
    minutes_per_session=st.none() | st.integers(1, 300),
    experience=st.sampled_from(Experience),
    aims=texts,
    avoid=texts,
    screened=st.none() | days,
    screening_clear=st.none() | st.booleans(),
    consent=st.none() | days,
    clearances=tuples_of(st.builds(Clearance, days, names, texts), 2),
    activities_recorded=st.booleans(),
    notes=texts,
    archived=st.booleans(),
)


@st.composite
def spans(draw: st.DrawFn) -> tuple[date, date]:
    """Two days, the first not after the last."""
    first, last = sorted((draw(days), draw(days)))
    return first, last


def body_masses(trainee_id: int) -> st.SearchStrategy[BodyMass]:
    """One body mass."""
    return st.builds(BodyMass, st.just(trainee_id), days, st.integers(20_000, 300_000))


def equipment_from(trainee_id: int) -> st.SearchStrategy[EquipmentFrom]:
    """Equipment from a day on."""
    return st.builds(EquipmentFrom, st.just(trainee_id), days, equipments)


def activities(trainee_id: int) -> st.SearchStrategy[Activity]:
    """One other activity."""
    return st.builds(
        Activity, st.just(trainee_id), days, names, st.integers(0, 1_440), st.floats(0, 10)
    )


@st.composite
def deload_windows(draw: st.DrawFn, trainee_id: int) -> DeloadWindow:
    """One easier span."""
    first, last = draw(spans())
    factor, percent = draw(st.floats(0.1, 1)), draw(st.floats(0, 100))
    return DeloadWindow(trainee_id, first, last, factor, percent, draw(st.booleans()), draw(texts))


@st.composite
def absences(draw: st.DrawFn, trainee_id: int) -> Absence:
    """One span without training, perhaps a lasting one."""
    first, last = draw(spans())
    ends = last if draw(st.booleans()) else None
    return Absence(trainee_id, first, ends, draw(st.sampled_from(AbsenceKind)), draw(texts))


def goals(trainee_id: int, line_id: int) -> st.SearchStrategy[Goal]:
    """One goal on a line."""
    return st.builds(
        Goal,
        st.just(trainee_id),
        st.just(line_id),
        st.sampled_from(GoalKind),
        st.integers(0, 300_000),
        st.none() | keys,
        st.none() | days,
        texts,
        st.none() | st.integers(1, 30),
    )


def dismissed_cautions(trainee_id: int) -> st.SearchStrategy[DismissedCaution]:
    """One caution set aside."""
    return st.builds(DismissedCaution, st.just(trainee_id), names, texts, days, texts)


def remembered_names(trainee_id: int, exercise: str) -> st.SearchStrategy[RememberedName]:
    """What one exercise is called in notes."""
    return st.builds(RememberedName, st.just(trainee_id), names, st.just(exercise))


# Lines and programs


def lines(trainee_id: int, exercise: str) -> st.SearchStrategy[Line]:
    """A line with its dated rules, starts and overrides."""
    revisions = st.builds(RuleRevision, days, rules())
    fractions = st.none() | st.floats(0, 1)
    kinds = st.sampled_from(["coach", "assessment", "history", "program"])
    starts = st.builds(LineStart, days, positions, kinds, fractions)
    overrides = st.builds(Override, days, positions, texts, st.integers(0, 9))
    return st.builds(
        Line,
        st.just(trainee_id),
        st.just(exercise),
        texts,
        st.lists(revisions, max_size=2, unique_by=lambda one: one.day).map(tuple),
        st.lists(starts, max_size=2, unique_by=lambda one: one.day).map(tuple),
        tuples_of(overrides, 2),
    )


def programs(
    exercise_keys: Sequence[str], slots: st.SearchStrategy[Slot] | None = None
) -> st.SearchStrategy[Program]:
    """A program over these exercises, or of these ``slots`` where it does not matter what they
    hold.
    """
    if slots is None:
        slots = st.builds(
            Slot,
            st.sampled_from(exercise_keys),
            rules(),
            positions,
            line_name=texts,
            rest_s=st.integers(0, 600),
            tempo=st.sampled_from(["", "3-1-1"]),
            pair=st.sampled_from(["", "a", "b"]),
            note=texts,
        )
    training_days = st.builds(
        TrainingDay, texts, tuples_of(slots, 2), st.none() | st.integers(0, 6)
    )
    phases = st.builds(
        Phase, texts, st.integers(1, 12), tuples_of(training_days, 2), st.sampled_from(PhasePurpose)
    )
    every = st.none() | st.integers(1, 12)
    return st.builds(Program, names, tuples_of(phases, 2), texts, every)


@st.composite
def assignments(draw: st.DrawFn, trainee_id: int, program_id: int) -> Assignment:
    """A program given to a trainee, perhaps ended."""
    start, last = draw(spans())
    ended = last if draw(st.booleans()) else None
    moves: tuple[WeekdaysFrom, ...] = ()
    if draw(st.booleans()):
        moves = (WeekdaysFrom(start, draw(weekdays)), WeekdaysFrom(last, draw(weekdays)))
    return Assignment(trainee_id, program_id, start, draw(weekdays), ended, moves)


# Sessions

asked_sets = st.builds(
    AskedSet,
    load_g=loads_g,
    reps=st.none() | st.integers(1, 50),
    seconds=st.none() | st.integers(1, 120),
    variation=st.none() | keys,
    tempo_s=st.none() | st.integers(1, 20),
    rir=st.none() | st.floats(0, 10),
    open_ended=st.booleans(),
    stop_at=st.none() | st.integers(1, 50),
)


@st.composite
def sets_done(draw: st.DrawFn) -> SetDone:
    """One set as done, in repetitions or seconds."""
    held = draw(st.booleans())
    amount = draw(st.integers(0, 60))
    return SetDone(
        load_g=draw(loads_g),
        reps=None if held else amount,
        seconds=amount if held else None,
        variation=draw(st.none() | keys),
        rir=draw(st.none() | st.floats(0, 10)),
        tempo_s=draw(st.none() | st.integers(1, 20)),
        warm_up=draw(st.booleans()),
        pain=draw(st.integers(0, 10)),
        side=draw(st.sampled_from(["", "left", "right"])),
        note=draw(texts),
    )


def lines_done(line_id: int, exercise: str) -> st.SearchStrategy[LineDone]:
    """One line's part of a session."""
    return st.builds(
        LineDone,
        st.just(line_id),
        st.just(exercise),
        tuples_of(asked_sets),
        tuples_of(sets_done()),
        st.booleans(),
        st.booleans(),
        st.booleans(),
        texts,
        texts,
    )


def sessions(
    trainee_id: int, line_exercises: Sequence[tuple[int, str]]
) -> st.SearchStrategy[Session]:
    """A session of a trainee over these lines (number and exercise), planned or not."""
    done = st.sampled_from(line_exercises).flatmap(lambda line: lines_done(*line))
    felt = st.none() | st.integers(1, 5)
    return st.builds(
        Session,
        trainee_id=st.just(trainee_id),
        day=days,
        lines=tuples_of(done),
        entry=st.integers(0, 5),
        effort=st.none() | st.floats(0, 10),
        minutes=st.none() | st.integers(0, 300),
        wellness=st.builds(Wellness, felt, felt, felt, felt),
        note=texts,
        red_flag=st.booleans(),
        program_id=st.none() | st.integers(1, 99),
        week=st.none() | st.integers(1, 99),
        day_name=texts,
    )


coach_settings = st.builds(
    CoachSettings,
    progression=st.builds(ProgressionSettings, jump_limit=st.floats(0.01, 0.5)),
    equation=st.sampled_from(["", "epley", "brzycki"]),
    monotony_sample=st.booleans(),
    deload_every_weeks=st.integers(1, 20),
    deload_sets_factor=st.floats(0.1, 1),
    deload_load_percent=st.floats(0, 50),
)
