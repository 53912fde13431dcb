"""The past put right: joining keeps every set, moving there and back changes nothing."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

from hypothesis import given
from hypothesis import strategies as st

from db.past_rows import past_sessions
from desktop.limits import load_limits
from desktop.planning.past import (
    NoRepair,
    What,
    change_log,
    differences,
    joined,
    moved,
    near,
    repaired,
    why_not,
)
from desktop.planning.past_effects import past_effect
from desktop.training.exercises import Exercise, LoadingKind, Measure, Muscle, Pattern
from desktop.training.program import Line
from desktop.training.quantities import Unit
from desktop.training.reasons import ReasonCode
from desktop.training.session import ChangeKind, LineDone, Session, SessionChange, SetDone
from tests import strategies
from tests.scenario import TODAY, open_club
from tests.strength_room import MONDAY, WEEK, as_asked, open_room, two_short
from views.past_texts import effect_lines, steps_change
from views.words import short_day

SQUAT = Exercise("squat", "Squat", Pattern.SQUAT, LoadingKind.BARBELL, (Muscle.QUADRICEPS,))
FRONT = replace(SQUAT, key="front", name="Front squat")
PLANK = replace(SQUAT, key="plank", name="Plank", measure=Measure.HOLD)
DAY = date(2026, 11, 2)


@st.composite
def two_sessions(draw: st.DrawFn) -> tuple[Session, Session]:
    """Two sessions of one trainee, which share lines or not."""
    parts = st.lists(
        st.sampled_from([1, 2, 3]).flatmap(lambda n: strategies.lines_done(n, f"exercise-{n}")),
        max_size=4,
    )
    one, other = (
        Session(
            1,
            DAY + timedelta(days=draw(st.integers(0, 3))),
            tuple(draw(parts)),
            entry=draw(st.integers(0, 2)),
            effort=draw(st.none() | st.integers(0, 10).map(float)),
            minutes=draw(st.none() | st.integers(1, 120)),
            note=draw(strategies.texts),
            id=identity,
        )
        for identity in (1, 2)
    )
    return one, other


def sets_of(*sessions: Session) -> Counter[tuple[int, str, SetDone]]:
    return Counter(
        (part.line_id, part.exercise, done)
        for session in sessions
        for part in session.lines
        for done in part.sets
    )


@strategies.examples(0.4)
@given(two_sessions())
def test_joining_two_sessions_keeps_every_set(pair: tuple[Session, Session]) -> None:
    kept, gone = pair
    one = joined(kept, gone)
    assert sets_of(one) == sets_of(kept, gone)
    assert (one.id, one.day, one.entry) == (kept.id, kept.day, kept.entry)
    assert (one.minutes or 0) == (kept.minutes or 0) + (gone.minutes or 0)
    for note in (kept.note.strip(), gone.note.strip()):
        assert note in one.note


@strategies.examples(0.4)
@given(two_sessions())
def test_joining_adds_up_the_training_load(pair: tuple[Session, Session]) -> None:
    one, other = pair
    together = joined(one, other)
    if all(each.effort is not None and each.minutes for each in pair):
        loads = sum((each.effort or 0) * (each.minutes or 0) for each in pair)
        assert abs((together.effort or 0) * (together.minutes or 0) - loads) <= 0.005 * 240 + 1e-6


@strategies.examples(0.4)
@given(two_sessions(), strategies.days)
def test_moving_there_and_back_changes_nothing(pair: tuple[Session, Session], day: date) -> None:
    session = pair[0]
    assert moved(moved(session, day), session.day) == session


@strategies.examples(0.4)
@given(two_sessions())
def test_another_exercise_keeps_every_set(pair: tuple[Session, Session]) -> None:
    source, target = Line(1, "exercise-1", id=1), Line(1, "exercise-2", id=2)
    repair = repaired(pair, source, target, replace(FRONT, key="exercise-2"))
    changed = {each.id: each for each in repair.sessions}
    after = [changed.get(each.id, each) for each in pair]
    assert not any(part.line_id == 1 for each in after for part in each.lines)
    assert sum(sets_of(*after).values()) == sum(sets_of(*pair).values())
    held = {each.day for each in pair if {1, 2} <= {part.line_id for part in each.lines}}
    assert held <= set(repair.joined)


@strategies.examples(0.4)
@given(two_sessions())
def test_only_what_differs_is_said(pair: tuple[Session, Session]) -> None:
    one, other = pair
    assert differences(one, one) == ()
    told = {each.what for each in differences(one, other)}
    assert (What.DAY in told) == (one.day != other.day)
    assert (What.NOTE in told) == (one.note != other.note)


def test_only_an_exercise_that_is_counted_alike_can_take_sessions() -> None:
    squat, front, plank = (Line(1, each.key, id=n) for n, each in enumerate((SQUAT, FRONT, PLANK)))
    helped = Session(1, DAY, (LineDone(0, "squat", sets=(SetDone(-5_000, 5),)),))
    assert why_not([], squat, front, (SQUAT, FRONT)) is NoRepair.POSSIBLE
    assert why_not([], squat, squat, (SQUAT, SQUAT)) is NoRepair.SAME
    assert why_not([], squat, plank, (SQUAT, PLANK)) is NoRepair.MEASURE
    assert why_not([helped], squat, front, (SQUAT, FRONT)) is NoRepair.HELP


def test_the_log_tells_what_each_correction_changed() -> None:
    first = Session(1, DAY, (LineDone(1, "squat", sets=(SetDone(60_000, 8),)),), id=1)
    second = replace(first, lines=(LineDone(1, "squat", sets=(SetDone(60_000, 7),)),))
    third = replace(second, day=DAY + timedelta(days=1))
    at = datetime(2026, 11, 3, 12, 0, tzinfo=UTC)
    changes = (
        SessionChange(1, 1, at, ChangeKind.ENTERED),
        SessionChange(1, 1, at, ChangeKind.CORRECTED, first),
        SessionChange(1, 1, at, ChangeKind.CORRECTED, second),
    )
    log = change_log(changes, third)
    assert [[each.what for each in one.differences] for one in log] == [[What.DAY], [What.SET], []]
    (changed,) = log[1].differences
    assert (changed.number, changed.before, changed.after) == (
        1,
        SetDone(60_000, 8),
        SetDone(60_000, 7),
    )


def test_near_sessions_come_nearest_first() -> None:
    sessions = [Session(1, DAY + timedelta(days=n), id=n) for n in (0, 1, 3, 4)]
    assert [one.id for one in near(sessions[1], sessions)] == [0, 3, 4]


def test_the_list_of_the_past_is_the_record_in_one_query(tmp_path: Path) -> None:
    repository = open_club(tmp_path)
    bow = repository.trainee_named("Bow")
    assert bow is not None
    assert bow.id is not None
    asked: list[object] = []
    repository.database.query_hooks.append(asked.append)
    rows = past_sessions(repository.database, bow.id)
    repository.database.query_hooks.clear()
    sessions = repository.sessions(bow.id)
    assert len(asked) == 1
    assert [row.session_id for row in rows] == [one.id for one in reversed(sessions)]
    for row, one in zip(rows, reversed(sessions), strict=True):
        assert [(p.line_id, len(p.sets)) for p in row.lines] == [
            (p.line_id, len(p.sets)) for p in one.lines
        ]
    repository.database.close()


def test_a_correction_tells_bests_and_cautions_that_change(tmp_path: Path) -> None:
    repository = open_club(tmp_path)
    bow = repository.trainee_named("Bow")
    assert bow is not None
    assert bow.id is not None
    last = repository.sessions(bow.id)[-1]
    part = last.lines[0]
    hurt = replace(part.sets[0], reps=40, pain=7)
    changed = replace(last, lines=(replace(part, sets=(hurt, *part.sets[1:])), *last.lines[1:]))
    effect = past_effect(repository, [last], [changed], TODAY)
    assert [each.line.id for each in effect.bests] == [part.line_id]
    assert effect.bests[0].after is not None
    assert effect.bests[0].after.reps == 40
    assert any(each.line_id == part.line_id for each in effect.raised)
    assert effect.targets
    assert not effect.later
    back = past_effect(repository, [changed], [last], TODAY)
    assert past_effect(repository, [last], [last], TODAY).none
    assert not back.raised
    first = repository.sessions(bow.id)[0]
    noted = replace(first, note="seen")
    nothing = past_effect(repository, [first], [noted], TODAY)
    assert nothing.none
    assert nothing.later
    repository.database.close()


def test_a_correction_tells_which_later_sessions_count_differently(
    tmp_path: Path, english: None
) -> None:
    room = open_room(tmp_path)
    days = [MONDAY + weeks * WEEK for weeks in range(4)]
    done = [room.train(day, two_short if day == days[-1] else as_asked) for day in days]
    squat = replace(done[2].lines[0], sets=tuple(map(two_short, done[2].lines[0].asked)))
    missed = replace(done[2], lines=(squat, *done[2].lines[1:]))
    # The week after, short as well, is then more in all than the time before: no miss any more.
    effect = past_effect(room.repository, [done[2]], [missed], days[-1] + WEEK)
    (changed,) = effect.steps
    (step,) = changed.steps
    assert step.before is not None
    assert step.after is not None
    assert (step.session_id, step.before.reason.code) == (done[3].id, ReasonCode.MISSED)
    assert step.after.reason.code is ReasonCode.IMPROVED
    assert not effect.none
    said = effect_lines(effect, Unit.KG, load_limits(), days[-1] + WEEK, lambda _: "")
    day = short_day(days[-1])
    assert f"Back squat: the session of {day} counts differently" in said
    twice = replace(changed, steps=(step, step))
    assert steps_change(twice, days[-1] + WEEK) == (
        f"Back squat: 2 sessions count differently, the first on {day}"
    )
    room.repository.database.close()
