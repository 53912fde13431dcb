"""Plans of a day for sheets: an invented rower, slots of every kind, no data file."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from desktop.planning.days import DayPlan, SlotPlan
from desktop.training.equipment import Bar
from desktop.training.exercises import Exercise, LoadingKind, Measure, Muscle, Pattern
from desktop.training.loading import Loading, MadeWith
from desktop.training.position import (
    Position,
    ProgressionRule,
    ScaledVariation,
    Surroundings,
    Variable,
    VariableRange,
)
from desktop.training.program import Line, Phase, Program, Slot, TrainingDay
from desktop.training.quantities import Unit
from desktop.training.reasons import Reason, ReasonCode, reason
from desktop.training.session import AskedSet, LineDone, SetDone
from desktop.training.state import Context, State
from desktop.training.strip import strip
from desktop.training.target import Target
from desktop.training.trainee import Trainee

DAY = date(2026, 11, 26)
BEFORE = date(2026, 11, 23)
GROWN = reason(ReasonCode.GROW, variable="reps", before=9, after=10, amount=10, day=BEFORE)
RULE = ProgressionRule((VariableRange(Variable.REPS, 8, 12), VariableRange(Variable.LOAD, 0)))
TRAINEE = Trainee("Seat 2", id=1)


def exercise(name: str, loading: LoadingKind = LoadingKind.BARBELL, **fields: object) -> Exercise:
    made = Exercise(name.lower().replace(" ", "-"), name, Pattern.SQUAT, loading, (Muscle.GLUTES,))
    return replace(made, **fields)  # type: ignore[arg-type]


SQUAT = exercise("Back squat", cue="Big breath, stand up tall.")
PRESS = exercise("Dumbbell press", LoadingKind.DUMBBELL, implements=2)
ROW = exercise("One-arm row", LoadingKind.DUMBBELL, unilateral=True)
PUSH_UP = exercise("Push-up", LoadingKind.BODYWEIGHT)
L_SIT = exercise("L-sit", LoadingKind.BODYWEIGHT, measure=Measure.HOLD)
SCALE = (
    ScaledVariation("hands-450", "hands on chair, 45 cm"),
    ScaledVariation("floor", "hands and feet on the floor"),
    ScaledVariation("tuck", "knees tucked"),
)


def asked(count: int = 3, load_g: int = 62_500, **fields: object) -> tuple[AskedSet, ...]:
    """``count`` like sets."""
    made = AskedSet(load_g, **({"reps": 10} | fields))  # type: ignore[arg-type]
    return tuple(made for _ in range(count))


def slot(
    trained: Exercise = SQUAT,
    sets: tuple[AskedSet, ...] | None = None,
    why: Reason = GROWN,
    rule: ProgressionRule = RULE,
    **fields: object,
) -> SlotPlan:
    """One slot with a strip, asked ``sets``."""
    given = asked() if sets is None else sets
    lead = given[0] if given else AskedSet(reps=8)
    position = Position(
        lead.load_g, lead.reps, max(1, len(given)), lead.seconds, variation=lead.variation
    )
    state = State(position=position, rule=rule, surroundings=Surroundings(scale=SCALE))
    plan = SlotPlan(
        Slot(trained.key, rule, position, rest_s=150),
        trained,
        Line(1, trained.key, id=1),
        state,
        Target(position, given, why),
        strip=strip(state, Context()),
    )
    return replace(plan, **fields)  # type: ignore[arg-type]


def full_slot(trained: Exercise = SQUAT) -> SlotPlan:
    """A slot that has something to say in every place."""
    bar = Bar("club bar", 20_000)
    discs = (20_000, 1_250)
    return slot(
        trained,
        asked(rir=2.0),
        discs=discs,
        bar=bar,
        loading=Loading(62_500, MadeWith.BAR, bar=bar, discs_per_side=discs),
        warm_up=(AskedSet(25_000, 5), AskedSet(37_500, 3)),
        last_time=LineDone(1, trained.key, sets=(SetDone(62_500, 9), SetDone(62_500, 8))),
        last_day=BEFORE,
        best=SetDone(62_500, 9),
    )


def plan(*slots: SlotPlan, trainee: Trainee = TRAINEE, **fields: object) -> DayPlan:
    """A day of a program with these slots."""
    made = DayPlan(
        trainee,
        DAY,
        Program("Winter strength", (Phase("Base", 12),)),
        3,
        Phase("Base", 12),
        TrainingDay("Squat and push"),
        slots,
        minutes=48,
    )
    return replace(made, **fields)  # type: ignore[arg-type]


POUNDS = replace(TRAINEE, unit=Unit.LB)
