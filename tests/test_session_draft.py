"""The session while it is typed: nothing typed is lost, and what is typed says one session."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop.planning.opened_draft import draft_of_session, kind_of
from desktop.planning.session_draft import Field, LineDraft, SessionDraft, SetDraft
from desktop.planning.typed_cells import (
    CellKind,
    Row,
    load_text,
    read_amount,
    read_cell,
    read_load,
)
from desktop.planning.typed_doubts import doubts
from desktop.planning.typed_session import (
    CellPlace,
    NotReady,
    amount_difference,
    cell_problem,
    lines_missing,
    load_difference,
    problems,
    session_of,
    training_load,
)
from desktop.training.exercises import Exercise, LoadingKind, Measure, Muscle, Pattern
from desktop.training.quantities import InvalidQuantity, Unit
from desktop.training.session import AskedSet, LineDone, Session, SetDone
from desktop.training.trainee import Trainee
from tests import strategies

SQUAT = Exercise("squat", "Squat", Pattern.SQUAT, LoadingKind.BARBELL, (Muscle.QUADRICEPS,))
LUNGE = replace(SQUAT, key="lunge", name="Lunge", pattern=Pattern.LUNGE, unilateral=True)
DIP = replace(SQUAT, key="dip", name="Dip", loading=LoadingKind.BODYWEIGHT)
HOLD = replace(DIP, key="hold", name="Hold", measure=Measure.HOLD)
EXERCISES = {each.key: each for each in (SQUAT, LUNGE, DIP, HOLD)}
BOW = Trainee("Bow", id=1)
DAY = date(2026, 11, 26)
KG = CellKind()


def asked(reps: int = 10, load_g: int = 60_000, sets: int = 3) -> tuple[AskedSet, ...]:
    return (AskedSet(load_g, reps),) * sets


def line(exercise: Exercise = SQUAT, *sets: AskedSet, **changes: object) -> LineDraft:
    made = LineDraft(
        exercise.key,
        line_id=7,
        kind=kind_of(exercise, Unit.KG),
        asked=sets,
        sets=tuple(SetDraft(asked=each) for each in sets),
    )
    return replace(made, **changes)  # type: ignore[arg-type]


def draft(*lines: LineDraft) -> SessionDraft:
    return SessionDraft(1, DAY, lines=lines)


def sets_of(typed: SessionDraft) -> tuple[SetDone, ...]:
    return session_of(typed, {}).lines[0].sets


@pytest.mark.parametrize(
    ("text", "kind", "amounts"),
    [
        ("12", KG, (12,)),
        (" 12 reps ", KG, (12,)),
        ("0", KG, (0,)),
        ("", KG, ()),
        ("8/7", CellKind(sided=True), (8, 7)),
        ("75", CellKind(hold=True), (75,)),
        ("1:15", CellKind(hold=True), (75,)),
        ("20s", CellKind(hold=True), (20,)),
    ],
)
def test_amounts_are_read_as_they_are_written(
    text: str, kind: CellKind, amounts: tuple[int, ...]
) -> None:
    assert read_amount(text, kind) == amounts


@pytest.mark.parametrize(
    ("text", "kind", "grams"),
    [
        ("62.5", KG, (62_500,)),
        ("62,5", KG, (62_500,)),
        ("62.5 kg", KG, (62_500,)),
        ("135", CellKind(Unit.LB), (61_235,)),
        ("+10", CellKind(signed=True), (10_000,)),
        ("10", CellKind(signed=True), (10_000,)),
        ("-20", CellKind(signed=True), (-20_000,)),
        ("−20", CellKind(signed=True), (-20_000,)),
        ("16/14", CellKind(sided=True), (16_000, 14_000)),
    ],
)
def test_loads_are_read_in_the_trainees_unit(
    text: str, kind: CellKind, grams: tuple[int, ...]
) -> None:
    assert read_load(text, kind) == grams


@pytest.mark.parametrize(
    ("row", "text", "kind", "code"),
    [
        (Row.DONE, "ten", KG, "not_a_number"),
        (Row.DONE, "-3", KG, "out_of_range"),
        (Row.DONE, "900", KG, "out_of_range"),
        (Row.DONE, "8.5", KG, "too_many_decimals"),
        (Row.DONE, "8/7", KG, "one_side"),
        (Row.DONE, "8/7/6", CellKind(sided=True), "two_sides"),
        (Row.DONE, "8/", CellKind(sided=True), "two_sides"),
        (Row.DONE, "3601", CellKind(hold=True), "out_of_range"),
        (Row.LOAD, "1e9", KG, "not_a_number"),
        (Row.LOAD, "1000000000", KG, "out_of_range"),
        (Row.LOAD, "1,250", KG, "ambiguous_group"),
        (Row.LOAD, "-5", KG, "no_help"),
        (Row.LOAD, "100 lb", KG, "other_unit"),
        (Row.RESERVE, "11", KG, "out_of_range"),
        (Row.PAIN, "12", KG, "out_of_range"),
    ],
)
def test_what_cannot_be_taken_says_why(row: Row, text: str, kind: CellKind, code: str) -> None:
    with pytest.raises(InvalidQuantity) as wrong:
        read_cell(row, text, kind)
    assert wrong.value.code == code


def test_another_unit_is_refused_with_its_value_in_this_one() -> None:
    with pytest.raises(InvalidQuantity) as wrong:
        read_load("100 lb", KG)
    assert wrong.value.values["value"] == "45.36"


def test_as_asked_fills_what_is_blank_and_leaves_what_is_typed() -> None:
    typed = draft(line(SQUAT, *asked())).with_cell(0, 1, Row.DONE, "8").all_as_asked()
    assert [each.reps for each in sets_of(typed)] == [10, 8, 10]
    assert [each.load_g for each in sets_of(typed)] == [60_000] * 3


def test_a_blank_set_was_not_done_and_a_blank_reserve_is_unknown() -> None:
    typed = draft(line(SQUAT, *asked())).with_cell(0, 0, Row.DONE, "10")
    (only,) = sets_of(typed)
    assert only == SetDone(60_000, 10)
    assert only.rir is None


def test_an_exercise_with_nothing_done_was_skipped() -> None:
    (part,) = session_of(draft(line(SQUAT, *asked())), {}).lines
    assert part.skipped
    assert part.asked == asked()
    assert session_of(draft(line(SQUAT)), {}).lines == ()


def test_a_load_of_nobody_asked_must_be_typed() -> None:
    extra = line(SQUAT, sets=(SetDraft(done="5"), SetDraft(done="5")))
    assert {each.wrong.code for each in problems(draft(extra))} == {"needs_load"}
    typed = draft(extra).with_cell(0, 0, Row.LOAD, "40")
    assert [each.load_g for each in sets_of(typed)] == [40_000, 40_000]


def test_reserve_without_repetitions_is_pointed_at() -> None:
    typed = draft(line(SQUAT, *asked())).with_cell(0, 1, Row.RESERVE, "2")
    wrong = cell_problem(typed, CellPlace(0, 1, Row.DONE))
    assert wrong is not None
    assert wrong.code == "needs_done"
    with pytest.raises(NotReady):
        session_of(typed, {})


def test_two_sides_become_two_sets() -> None:
    typed = draft(line(LUNGE, *asked(sets=1))).with_cell(0, 0, Row.DONE, "8/7")
    left, right = sets_of(typed.with_cell(0, 0, Row.RESERVE, "2/1").with_cell(0, 0, Row.PAIN, "3"))
    assert (left.side, left.reps, left.rir, left.pain) == ("left", 8, 2, 3)
    assert (right.side, right.reps, right.rir, right.pain) == ("right", 7, 1, 3)


def test_holds_are_kept_in_seconds() -> None:
    typed = draft(line(HOLD, AskedSet(seconds=20))).all_as_asked()
    assert sets_of(typed) == (SetDone(seconds=20),)


@pytest.mark.parametrize(
    ("load", "doubtful"),
    [("119", False), ("120", True), ("625", True), ("6", False), ("60", False)],
)
def test_a_load_twice_the_asked_is_asked_about(load: str, doubtful: bool) -> None:
    typed = draft(line(SQUAT, *asked())).with_cell(0, 0, Row.LOAD, load)
    assert bool(doubts(typed)) is doubtful
    assert not doubts(typed.with_sure(0, 0))


def test_another_text_is_asked_about_again() -> None:
    typed = draft(line(SQUAT, *asked())).with_cell(0, 0, Row.LOAD, "150").with_sure(0, 0)
    assert doubts(typed.with_cell(0, 0, Row.LOAD, "160"))
    assert not doubts(typed.with_cell(0, 0, Row.RESERVE, "1"))


def test_differences_are_told_by_the_weaker_side() -> None:
    typed = draft(line(LUNGE, *asked(sets=2))).with_cell(0, 0, Row.DONE, "12/9")
    typed = typed.with_cell(0, 1, Row.LOAD, "62.5")
    assert amount_difference(typed.lines[0], 0) == -1
    assert amount_difference(typed.lines[0], 1) is None
    assert load_difference(typed.lines[0], 1) == 2_500


def test_extra_sets_come_and_go_but_asked_ones_are_only_cleared() -> None:
    typed = draft(line(SQUAT, *asked())).with_extra_set(0).with_cell(0, 3, Row.DONE, "6")
    assert sets_of(typed)[0].load_g == 60_000
    assert len(typed.without_set(0, 3).lines[0].sets) == 3
    assert len(typed.all_as_asked().without_set(0, 0).lines[0].sets) == 4
    assert typed.all_as_asked().without_set(0, 0).lines[0].sets[0].blank


def test_a_variation_holds_from_its_set_on() -> None:
    sets = tuple(AskedSet(reps=8, variation="floor") for _ in range(3))
    typed = draft(line(DIP, *sets)).all_as_asked().with_variation(0, 2, "knees")
    assert [each.variation for each in sets_of(typed)] == ["floor", "floor", "knees"]


def test_lines_that_do_not_exist_are_named_only_where_they_are_needed() -> None:
    fresh = line(SQUAT, line_id=None, sets=(SetDraft(),), usual_g=20_000)
    assert lines_missing(draft(fresh)) == ()
    typed = draft(fresh).with_cell(0, 0, Row.DONE, "5")
    assert lines_missing(typed) == (("squat", ""),)
    assert session_of(typed, {("squat", ""): 9}).lines[0].line_id == 9
    with pytest.raises(NotReady):
        session_of(typed, {})


def test_effort_times_minutes_is_the_training_load() -> None:
    typed = draft().with_field(Field.EFFORT, "7").with_field(Field.MINUTES, "55")
    assert training_load(typed) == 385
    assert training_load(typed.with_field(Field.MINUTES, "an hour")) is None
    assert training_load(typed.with_field(Field.MINUTES, "")) is None


@given(strategies.loads_g, st.sampled_from(list(Unit)), st.sampled_from(".,"))
def test_a_load_written_and_read_again_is_the_same_load(load_g: int, unit: Unit, mark: str) -> None:
    kind = CellKind(unit, signed=True)
    text = load_text(load_g, kind, mark)
    (again,) = read_load(text, kind)
    assert abs(again - load_g) <= 5
    assert load_text(again, kind, mark) == text


stored = strategies.sessions(1, [(1, "squat"), (2, "lunge"), (3, "dip"), (4, "hold")]).map(
    lambda session: replace(
        session,
        effort=None if session.effort is None else round(session.effort * 2) / 2,
        lines=tuple(
            replace(
                part,
                note=part.note.strip(),
                skipped=not any(not done.warm_up for done in part.sets),
            )
            for part in session.lines
            if part.sets or part.asked or part.note.strip()
        ),
        note=session.note.strip(),
        id=5,
        revision=3,
    )
)


def opened(session: Session, mark: str = ".") -> SessionDraft:
    return draft_of_session(session, BOW, EXERCISES, {}, mark=mark)


@given(stored, st.sampled_from(".,"))
def test_a_stored_session_opened_and_saved_is_the_same_session(session: Session, mark: str) -> None:
    assert session_of(opened(session, mark), {}) == session


cells = st.tuples(
    st.integers(0, 50), st.integers(0, 50), st.sampled_from(list(Row)), st.text(max_size=6)
)


@given(stored, st.lists(cells, max_size=8))
def test_no_text_is_refused_and_none_is_lost(
    session: Session, typed: list[tuple[int, int, Row, str]]
) -> None:
    current = opened(session)
    said: dict[CellPlace, str] = {}
    for line_at, set_at, row, text in typed:
        if not current.lines:
            return
        number = line_at % len(current.lines)
        index = set_at % len(current.lines[number].sets)
        current = current.with_cell(number, index, row, text)
        said[CellPlace(number, index, row)] = text
    for place, text in said.items():
        assert current.lines[place.line].sets[place.index].text(place.row) == text
    if problems(current):
        with pytest.raises(NotReady):
            session_of(current, {})
    else:
        session_of(current, {})


@given(stored, st.lists(cells, max_size=4))
def test_one_cell_changes_one_exercise_only(
    session: Session, typed: list[tuple[int, int, Row, str]]
) -> None:
    before = opened(session)
    for line_at, set_at, row, text in typed:
        if not before.lines:
            return
        number = line_at % len(before.lines)
        index = set_at % len(before.lines[number].sets)
        after = before.with_cell(number, index, row, text)
        for other, (old, new) in enumerate(zip(before.lines, after.lines, strict=True)):
            assert other == number or old == new
        before = after


def test_a_corrected_set_keeps_what_the_form_does_not_show() -> None:
    was = SetDone(60_003, 10, rir=2, tempo_s=4, note="belt")
    session = Session(1, DAY, (LineDone(7, "squat", asked(sets=1), (was,)),), id=5)
    (done,) = sets_of(opened(session).with_cell(0, 0, Row.DONE, "9"))
    assert done == replace(was, reps=9)
