"""What a saved session meant for each line, and what a change of one would do."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from desktop.planning.history import read_history
from desktop.planning.outcomes import LineOutcome, effect_of, outcomes_of
from desktop.training.position import Position
from desktop.training.reasons import ReasonCode
from desktop.training.session import Outcome, Session
from tests.strength_room import DAY, MONDAY, WEEK, Room, open_room, two_short


@pytest.fixture
def room(tmp_path: Path) -> Room:
    return open_room(tmp_path)


def after_saving(room: Room, session: Session) -> tuple[LineOutcome, ...]:
    return outcomes_of(read_history(room.repository, room.trainee_id), session)


def test_a_session_tells_how_each_line_went_and_what_comes_next(room: Room) -> None:
    squat, push_up = after_saving(room, room.train(MONDAY))
    assert (squat.outcome, push_up.outcome) == (Outcome.MET, Outcome.MET)
    assert squat.step is not None
    assert squat.step.before == Position(60_000, reps=8, sets=3)
    assert squat.target.position == Position(60_000, reps=9, sets=3)
    assert (squat.next_day, squat.planned) == (MONDAY + WEEK, True)
    assert [each.reps for each in squat.asked] == [8, 8, 8]
    assert squat.exercise.name == "Back squat"


def test_a_miss_repeats_what_was_asked(room: Room) -> None:
    room.train_weeks(2)
    squat, _ = after_saving(room, room.train(MONDAY + 2 * WEEK, two_short))
    assert squat.outcome is Outcome.MISSED
    assert squat.target.reason.code is ReasonCode.MISSED
    assert squat.target.position == Position(60_000, reps=10, sets=3)


def test_a_first_miss_corrects_the_start_that_a_program_gave(room: Room) -> None:
    squat, _ = after_saving(room, room.train(MONDAY, two_short))
    assert squat.target.reason.code is ReasonCode.START_CORRECTED


def test_after_the_last_day_of_a_program_the_next_day_is_taken(room: Room) -> None:
    last = MONDAY + 7 * WEEK
    (squat,) = after_saving(room, room.train(last))
    assert (squat.next_day, squat.planned) == (last + DAY, False)


def test_an_old_session_tells_the_next_target_after_all_that_followed(room: Room) -> None:
    first = room.train(MONDAY)
    room.train(MONDAY + WEEK)
    squat = after_saving(room, first)[0]
    assert squat.step is not None
    assert squat.step.day == MONDAY
    assert squat.next_day == MONDAY + 2 * WEEK
    assert squat.target.position == Position(60_000, reps=10, sets=3)


def test_a_line_that_stands_twice_in_a_session_is_told_once(room: Room) -> None:
    session = room.train(MONDAY)
    twice = room.save(replace(session, lines=(*session.lines, session.lines[0])))
    assert len(after_saving(room, twice)) == 2


def test_a_correction_of_the_last_session_changes_the_next_target(room: Room) -> None:
    session = room.train(MONDAY)
    squat = session.lines[0]
    missed = replace(squat, sets=tuple(replace(done, reps=6) for done in squat.sets))
    corrected = replace(session, lines=(missed, session.lines[1]))
    (effect,) = effect_of(room.repository, session, corrected)
    assert effect.exercise.key == "back-squat"
    assert effect.day == MONDAY + WEEK
    assert effect.before.position == Position(60_000, reps=9, sets=3)
    assert effect.after.position == Position(60_000, reps=8, sets=3)
    assert room.repository.sessions(room.trainee_id) == (session,)  # nothing written


def test_a_correction_long_ago_changes_nothing_where_targets_were_stored(room: Room) -> None:
    session = room.train(MONDAY)
    room.train(MONDAY + WEEK)
    squat = session.lines[0]
    missed = replace(squat, sets=tuple(replace(done, reps=6) for done in squat.sets))
    assert effect_of(room.repository, session, replace(session, lines=(missed,))) == ()


def test_adding_and_removing_a_session_have_effects(room: Room) -> None:
    session = room.train(MONDAY)
    removed = effect_of(room.repository, session, None)
    assert removed[0].after.position == Position(60_000, reps=8, sets=3)
    unplanned = tuple(replace(part, asked=()) for part in session.lines)
    more = tuple(
        replace(part, sets=tuple(replace(done, reps=9) for done in part.sets)) for part in unplanned
    )
    new = replace(session, id=None, revision=0, day=MONDAY + WEEK, lines=more)
    added = effect_of(room.repository, None, new)
    assert [one.exercise.key for one in added] == ["back-squat", "push-up"]
    assert added[0].day == MONDAY + 2 * WEEK


def test_an_effect_needs_sessions_of_one_trainee(room: Room) -> None:
    session = room.train(MONDAY)
    with pytest.raises(ValueError, match="of one trainee"):
        effect_of(room.repository, None, None)
    with pytest.raises(ValueError, match="of one trainee"):
        effect_of(room.repository, session, replace(session, trainee_id=99))
