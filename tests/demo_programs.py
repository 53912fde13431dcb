"""The programs of the demo's club, and the rules by which its lines move."""

from __future__ import annotations

from typing import Final

from desktop.training.position import (
    TWO_FOR_TWO,
    BackOff,
    Follow,
    MissPolicy,
    Position,
    ProgressionRule,
    SchemeKind,
    SetScheme,
    Variable,
    VariableRange,
)
from desktop.training.program import Phase, PhasePurpose, Program, Slot, TrainingDay
from desktop.training.quantities import Unit, grams

INVENTED: Final = "Invented for the demo: a village rowing club's winter strength room."

# --- rules --------------------------------------------------------------------------------------


def double(low: int, high: int, step_g: int, rir: float | None = 2) -> ProgressionRule:
    """Repetitions first, then the load."""
    return ProgressionRule(
        (VariableRange(Variable.REPS, low, high), VariableRange(Variable.LOAD, increment=step_g)),
        target_rir=rir,
    )


def triple(low: int, high: int, sets: tuple[int, int], step_g: int) -> ProgressionRule:
    """Repetitions, then one set more, then the load."""
    return ProgressionRule(
        (
            VariableRange(Variable.REPS, low, high),
            VariableRange(Variable.SETS, *sets),
            VariableRange(Variable.LOAD, increment=step_g),
        ),
        target_rir=2,
    )


def two_for_two(low: int, high: int, step_g: int) -> ProgressionRule:
    """A step only when the last set goes two repetitions over, twice running."""
    return ProgressionRule(double(low, high, step_g).ranges, criterion=TWO_FOR_TWO, target_rir=2)


def top_set(low: int, high: int, step_g: int) -> ProgressionRule:
    """A top set that grows, and lighter ones after it."""
    return ProgressionRule(
        double(low, high, step_g).ranges,
        scheme=SetScheme(SchemeKind.TOP_AND_BACK_OFF, 10),
        target_rir=2,
    )


def harder(low: int, high: int, easiest: str | None, hardest: str | None) -> ProgressionRule:
    """Repetitions, then a harder variation."""
    return ProgressionRule(
        (
            VariableRange(Variable.REPS, low, high),
            VariableRange(Variable.VARIATION, easiest=easiest, hardest=hardest),
        ),
        miss=MissPolicy(back_off=BackOff.VARIATION),
        target_rir=2,
    )


def held(low: int, high: int, step: int, easiest: str, hardest: str) -> ProgressionRule:
    """Seconds, then a harder variation."""
    return ProgressionRule(
        (
            VariableRange(Variable.HOLD, low, high, step),
            VariableRange(Variable.VARIATION, easiest=easiest, hardest=hardest),
        ),
        miss=MissPolicy(back_off=BackOff.REPS),
    )


def carried(low: int, high: int, step_g: int) -> ProgressionRule:
    """Seconds under the load, then the load."""
    return ProgressionRule(
        (
            VariableRange(Variable.HOLD, low, high, 10),
            VariableRange(Variable.LOAD, increment=step_g),
        )
    )


LIGHT: Final = ProgressionRule(follow=Follow("heavy", 85))


def reps(sets: int, count: int, kg: float = 0, variation: str | None = None) -> Position:
    """A position of repetitions."""
    return Position(round(kg * 1000), count, sets, variation=variation)


def hold(sets: int, seconds: int, kg: float = 0, variation: str | None = None) -> Position:
    """A position of seconds."""
    return Position(round(kg * 1000), None, sets, seconds, variation=variation)


# --- programs -----------------------------------------------------------------------------------


def _barbell_days(
    step_g: int, hand_step_g: int, weekdays: tuple[int, int, int]
) -> tuple[TrainingDay, ...]:
    first, second, third = weekdays
    return (
        TrainingDay(
            "Squat and push",
            (
                Slot("back-squat", double(5, 8, step_g), reps(3, 5, 40), "heavy", rest_s=180),
                Slot("bench-press", double(6, 10, step_g), reps(3, 6, 30), rest_s=150),
                Slot("bent-over-row", triple(8, 12, (3, 4), step_g), reps(3, 8, 30)),
                Slot(
                    "plank", held(20, 60, 10, "full", "one-leg"), hold(3, 20, 0, "full"), rest_s=60
                ),
            ),
            first,
        ),
        TrainingDay(
            "Hinge and pull",
            (
                Slot("deadlift", top_set(4, 7, 2 * step_g), reps(3, 4, 60), rest_s=180),
                Slot("overhead-press", two_for_two(6, 8, step_g), reps(3, 6, 20), rest_s=150),
                Slot("pull-up", double(4, 8, 2500), reps(3, 4, 0, "full"), rest_s=150),
                Slot("l-sit", held(5, 20, 3, "tuck", "full"), hold(4, 5, 0, "tuck"), rest_s=90),
            ),
            second,
        ),
        TrainingDay(
            "One side at a time",
            (
                Slot("back-squat", LIGHT, reps(2, 6, 34), "light", note="fast up, easy breathing"),
                Slot("dumbbell-bench-press", double(8, 12, hand_step_g), reps(3, 8, 10)),
                Slot("dumbbell-row", double(8, 12, hand_step_g), reps(3, 8, 12), pair="r"),
                Slot("dumbbell-split-squat", double(8, 12, hand_step_g), reps(3, 8, 8), pair="r"),
                Slot("farmer-carry", carried(30, 60, hand_step_g), hold(3, 30, 16), rest_s=90),
            ),
            third,
        ),
    )


def _winter(days: tuple[TrainingDay, ...], spans: tuple[int, int, int]) -> tuple[Phase, ...]:
    first, second, third = spans
    return (
        Phase("Groundwork", first, days),
        Phase("Deload", 1, days, PhasePurpose.DELOAD),
        Phase("Strength", second, days),
        Phase("Deload", 1, days, PhasePurpose.DELOAD),
        Phase("Towards the spring", third, days),
    )


BARBELL: Final = Program(
    "Winter room, barbell",
    _winter(_barbell_days(2500, 2000, (0, 2, 5)), (6, 7, 9)),
    INVENTED,
)
POUNDS: Final = Program(
    "Garage, pound discs",
    _winter(_barbell_days(grams(5, Unit.LB), grams(5, Unit.LB), (1, 3, 5)), (6, 6, 9)),
    INVENTED,
)
DUMBBELLS: Final = Program(
    "Dumbbells at home",
    (
        Phase(
            "Autumn and winter",
            24,
            (
                TrainingDay(
                    "Squat and push",
                    (
                        Slot("goblet-squat", double(8, 12, 2000), reps(3, 8, 12)),
                        Slot("dumbbell-overhead-press", double(6, 10, 2000), reps(3, 6, 6)),
                        Slot("push-up", harder(5, 12, None, None), reps(3, 5, 0, "hands-450")),
                        Slot("plank", held(20, 60, 10, "full", "one-leg"), hold(3, 20, 0, "full")),
                    ),
                    1,
                ),
                TrainingDay(
                    "Hinge and pull",
                    (
                        Slot("romanian-deadlift", double(8, 12, 2500), reps(3, 8, 30)),
                        Slot("dumbbell-row", double(8, 12, 2000), reps(3, 8, 10)),
                        Slot(
                            "split-squat",
                            harder(6, 12, "floor", "rear-raised"),
                            reps(3, 6, 0, "floor"),
                        ),
                        Slot(
                            "bridge",
                            harder(8, 15, "floor", "single-raised"),
                            reps(3, 8, 0, "floor"),
                        ),
                    ),
                    3,
                ),
                TrainingDay(
                    "Whole body",
                    (
                        Slot("goblet-squat", double(8, 12, 2000), reps(3, 8, 12)),
                        Slot("push-up", harder(5, 12, None, None), reps(3, 5, 0, "hands-450")),
                        Slot("dumbbell-row", double(8, 12, 2000), reps(3, 8, 10)),
                        Slot("farmer-carry", carried(30, 60, 2000), hold(3, 30, 12)),
                    ),
                    5,
                ),
            ),
        ),
    ),
    INVENTED,
)
BODYWEIGHT: Final = Program(
    "Floor and bar",
    _winter(
        (
            TrainingDay(
                "Push, row, squat",
                (
                    Slot("push-up", harder(6, 12, None, "close"), reps(3, 6, 0, "floor")),
                    Slot("bar-row", harder(6, 12, None, "feet-high"), reps(3, 6, 0, "lean-45")),
                    Slot(
                        "squat-to-single-leg",
                        harder(5, 10, "full", "single"),
                        reps(3, 5, 0, "full"),
                    ),
                    Slot("l-sit", held(5, 20, 3, "tuck", "full"), hold(4, 5, 0, "tuck"), rest_s=90),
                ),
                0,
            ),
            TrainingDay(
                "Pull, dip, hinge",
                (
                    Slot("pull-up", double(4, 8, 2500), reps(4, 4, 0, "full"), rest_s=150),
                    Slot("dip", double(5, 10, 2500), reps(3, 5, 0, "full"), rest_s=150),
                    Slot(
                        "bridge", harder(8, 15, "floor", "single-raised"), reps(3, 8, 0, "single")
                    ),
                    Slot("plank", held(20, 60, 10, "full", "long"), hold(3, 30, 0, "full")),
                ),
                2,
            ),
            TrainingDay(
                "Push, row, lunge",
                (
                    Slot("push-up", harder(6, 12, None, "close"), reps(3, 6, 0, "floor")),
                    Slot("bar-row", harder(6, 12, None, "feet-high"), reps(3, 6, 0, "lean-45")),
                    Slot(
                        "split-squat", harder(6, 12, "floor", "rear-raised"), reps(3, 8, 0, "floor")
                    ),
                    Slot("l-sit", held(5, 20, 3, "tuck", "full"), hold(4, 5, 0, "tuck"), rest_s=90),
                ),
                5,
            ),
        ),
        (7, 7, 8),
    ),
    INVENTED,
)
FIRST_WINTER: Final = Program(
    "First winter",
    (
        Phase(
            "Learning",
            20,
            (
                TrainingDay(
                    "Tuesday",
                    (
                        Slot("goblet-squat", double(8, 12, 2000, 3), reps(2, 8, 6)),
                        Slot("push-up", harder(5, 10, None, "floor"), reps(2, 5, 0, "wall")),
                        Slot("bar-row", harder(5, 10, None, None), reps(2, 5, 0, "lean-30")),
                        Slot("plank", held(10, 40, 10, "knees", "full"), hold(2, 10, 0, "knees")),
                    ),
                    1,
                ),
                TrainingDay(
                    "Saturday",
                    (
                        Slot("goblet-squat", double(8, 12, 2000, 3), reps(2, 8, 6)),
                        Slot("push-up", harder(5, 10, None, "floor"), reps(2, 5, 0, "wall")),
                        Slot("bar-row", harder(5, 10, None, None), reps(2, 5, 0, "lean-30")),
                        Slot("bridge", harder(8, 12, "floor", "single"), reps(2, 8, 0, "floor")),
                        Slot("farmer-carry", carried(20, 40, 2000), hold(2, 20, 6)),
                    ),
                    5,
                ),
            ),
        ),
    ),
    INVENTED,
)
PROGRAMS: Final = (BARBELL, POUNDS, DUMBBELLS, BODYWEIGHT, FIRST_WINTER)
