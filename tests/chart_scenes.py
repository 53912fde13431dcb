"""An invented winter of one rower, on a real data file: a line for every kind of chart.

Nobody in it exists. A squat that rises, a bench press that stands still, a hold, a push-up over
its variations, a deadlift of three sessions; a deload, days away, an ache, a goal, body mass.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import date, timedelta

from db.database import Database
from db.repository import Repository
from desktop.catalogue import load_catalogue
from desktop.planning.assignments import assign
from desktop.training.equipment import Bar, Discs, Equipment, Height, Place
from desktop.training.position import Position, ProgressionRule, Variable, VariableRange
from desktop.training.program import Line, LineStart, Phase, Program, Slot, TrainingDay
from desktop.training.session import LineDone, Session, SetDone
from desktop.training.trainee import (
    Absence,
    BodyMass,
    DeloadWindow,
    EquipmentFrom,
    Goal,
    GoalKind,
    Trainee,
)

TODAY = date(2026, 11, 26)
WEEKS = 16
FIRST = date(2026, 8, 10)
DAY = timedelta(days=1)
WEEK = timedelta(weeks=1)

RULE = ProgressionRule(
    (VariableRange(Variable.REPS, 5, 12), VariableRange(Variable.LOAD, increment=2500))
)
PROGRAM = Program(
    "Winter strength",
    tuple(
        Phase(
            name,
            weeks,
            (
                TrainingDay("squat", (Slot("back-squat", RULE, Position(60_000, 8, 4)),), 0),
                TrainingDay("bench", (Slot("bench-press", RULE, Position(50_000, 8, 3)),), 2),
            ),
        )
        for name, weeks in (("Base", 8), ("Build", 8))
    ),
)
VARIATIONS = ("hands-750", "hands-450", "hands-180", "floor")
HOLDS = ("tuck", "one-leg")
KEYS = ("back-squat", "bench-press", "deadlift", "push-up", "l-sit")


@dataclass(frozen=True)
class Scene:
    """The data file, who trains in it, and who has only just been added."""

    repository: Repository
    trainee_id: int
    newcomer_id: int

    def line_id(self, exercise: str) -> int:
        line = self.repository.line_of(self.trainee_id, exercise)
        assert line is not None
        assert line.id is not None
        return line.id


def open_scene(database: Database) -> Scene:
    """Fill an empty data file with the scenario."""
    repository = Repository(database)
    catalogue = [one for one in load_catalogue() if one.key in KEYS]
    repository.sync_catalogue(catalogue)
    rower = Trainee("Stroke", birth_year=1994, stature_mm=1780, weekdays=(0, 2, 4))
    trainee_id, newcomer_id, program_id = (
        one.id for one in repository.save(rower, Trainee("Cox"), PROGRAM).saved
    )
    owned = Equipment(
        bars=(Bar("bar", 20_000),),
        discs=(Discs(20_000, 4), Discs(10_000, 2), Discs(2_500, 4), Discs(1_250, 2)),
        boxes=(Height("table", 750), Height("chair", 450), Height("stair", 180)),
        places=(Place.BENCH, Place.PARALLEL_BARS),
    )
    repository.save(EquipmentFrom(trainee_id, FIRST - WEEK, owned))
    repository.save(*assign(repository, trainee_id, program_id, FIRST).aggregates)
    repository.save(
        *(BodyMass(trainee_id, FIRST + i * 4 * WEEK, 74_000 + 300 * i) for i in range(4))
    )
    for key in KEYS:
        if repository.line_of(trainee_id, key) is None:
            start = LineStart(FIRST, Position(20_000, reps=8, sets=3))
            repository.save(Line(trainee_id, key, starts=() if key == "l-sit" else (start,)))
    scene = Scene(repository, trainee_id, newcomer_id)
    _happen(scene)
    repository.save(*_sessions(scene))
    return scene


def _happen(scene: Scene) -> None:
    who = scene.trainee_id
    scene.repository.save(
        DeloadWindow(who, FIRST + 7 * WEEK, FIRST + 7 * WEEK + 6 * DAY),
        Absence(who, FIRST + 10 * WEEK, FIRST + 11 * WEEK + 2 * DAY),
        Goal(who, scene.line_id("back-squat"), GoalKind.ONE_REP_MAX, 112_000),
        Goal(who, scene.line_id("l-sit"), GoalKind.HOLD, 30),
        Goal(who, scene.line_id("push-up"), GoalKind.VARIATION, variation="archer"),
    )


def _sessions(scene: Scene) -> list[Session]:
    made: list[Session] = []
    for week in range(WEEKS):
        if week in (10,):
            continue
        monday = FIRST + week * WEEK
        parts = {0: [_squat(scene, week)], 2: [_bench(scene, week), _l_sit(scene, week)]}
        parts[4] = [_push_up(scene, week)]
        if week >= WEEKS - 4:
            parts[4].append(_deadlift(scene, week))
        for weekday, lines in parts.items():
            if monday + weekday * DAY <= TODAY:
                made.append(Session(scene.trainee_id, monday + weekday * DAY, tuple(lines)))
    return made


def _squat(scene: Scene, week: int) -> LineDone:
    able = 84_000 * (1 + 0.007 * week + 0.012 * math.sin(5 * week))
    reps = (5, 8, 12)[week % 3]
    rir = 2.0
    load = round(able / (1 + (reps + rir) / 30) / 2500) * 2500
    deload = week == 7
    sets = [SetDone(load - (10_000 if deload else 0), reps, rir=rir)] * 4
    if week == 9:
        sets[1] = SetDone(load, reps, rir=rir, pain=3)
    return LineDone(
        scene.line_id("back-squat"), "back-squat", sets=tuple(sets[: 2 if deload else 4]),
        deload=deload,
    )  # fmt: skip


def _bench(scene: Scene, week: int) -> LineDone:
    reps = 8 - (week % 2)
    load = (50_000, 52_500, 55_000)[min(week // 2, 2)]
    rir = 1.0 if week % 3 else 0.0
    sets = (SetDone(load, reps, rir=rir),) * 3
    return LineDone(scene.line_id("bench-press"), "bench-press", sets=sets)


def _push_up(scene: Scene, week: int) -> LineDone:
    variation = VARIATIONS[min(week // 4, 3)]
    reps = 6 + 2 * (week % 4)
    sets = (SetDone(0, reps, variation=variation, rir=2.0),) * 3
    return LineDone(scene.line_id("push-up"), "push-up", sets=sets)


def _l_sit(scene: Scene, week: int) -> LineDone:
    harder = week >= 8
    seconds = 10 + 2 * (week - 8 if harder else week)
    sets = (SetDone(seconds=seconds, variation=HOLDS[harder]),) * 3
    return LineDone(scene.line_id("l-sit"), "l-sit", sets=sets)


def _deadlift(scene: Scene, week: int) -> LineDone:
    sets = (SetDone(90_000 + 2500 * (week - WEEKS + 4), 5, rir=2.0),) * 3
    return LineDone(scene.line_id("deadlift"), "deadlift", sets=sets)
