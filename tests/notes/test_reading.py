"""The rules of reading: what is certain, what is doubtful and asked, what stays unread."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from desktop.notes.known import Known, KnownHeight
from desktop.notes.reader import read_notes
from desktop.notes.reading import Alternative, Doubt, PartKind, Question, Reading, ReadSet
from desktop.training.quantities import Unit
from tests.notes.corpus import KNOWN


def read(text: str, known: Known = KNOWN) -> Reading:
    return read_notes(text, known)


def sets(text: str, known: Known = KNOWN) -> list[ReadSet]:
    return [one for entry in read(text, known).entries for one in entry.sets]


def doubts(text: str, known: Known = KNOWN) -> set[Doubt]:
    return {question.doubt for question in read(text, known).questions}


def question(text: str, doubt: Doubt) -> Question:
    return next(one for one in read(text).questions if one.doubt is doubt)


# --- loads and units ------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("unit", "load_g"), [(Unit.KG, 100_000), (Unit.LB, 45_359)], ids=["kilograms", "pounds"]
)
def test_numbers_without_a_unit_are_in_the_trainees(unit: Unit, load_g: int) -> None:
    assert {one.load_g for one in sets("squat 3x5 100", replace(KNOWN, unit=unit))} == {load_g}


def test_a_number_behind_one_in_the_other_unit_is_asked_about() -> None:
    text = "squat 3x5 100lb, then 2x5 95"
    assert [one.certain for one in sets(text)] == [True] * 3 + [False] * 2
    asked = question(text, Doubt.UNIT)
    assert [one.load_g for one in asked.alternatives] == [95_000, 43_091]
    assert all(one.certain for one in sets(text, replace(KNOWN, unit=Unit.LB)))


@pytest.mark.parametrize("text", ["db bench 2x24kg 3x10", "farmers carry 2 x 24kg 3x40s"])
def test_two_times_a_load_before_dumbbells_or_a_carry_is_a_pair(text: str) -> None:
    assert [one.load_g for one in sets(text)] == [24_000] * 3
    assert doubts(text) == set()


def test_two_times_a_load_of_a_barbell_is_no_pair() -> None:
    assert doubts("squat 2x100kg") == {Doubt.ORDER}


def test_load_repetitions_sets_only_where_the_first_is_no_number_of_sets() -> None:
    assert [(one.load_g, one.reps, one.certain) for one in sets("row 40x5x3")] == [
        (40_000, 5, True)
    ] * 3
    for text in ("row 20x5x3", "row 5x5x80", "row 10x5x3"):
        assert doubts(text) == {Doubt.ORDER}, text


def test_what_stands_behind_at() -> None:
    assert [one.rir for one in sets("bench 3x5 80kg @8")] == [2.0] * 3
    assert [one.load_g for one in sets("bench 3x5 @ 70kg")] == [70_000] * 3
    assert doubts("bench 3x5 80kg @8") == doubts("bench 3x5 @ 70kg") == set()
    assert Doubt.AT in doubts("bench 3x5 @8")
    assert Doubt.AT in doubts("bench 3x5 @ 70")
    assert Doubt.AT in doubts("pull ups 3x5 @8")
    assert doubts("bench 3x5 80kg @70") == {Doubt.LEFT_OVER}


def test_each_set_may_have_its_own_rating() -> None:
    assert [one.rir for one in sets("squat 100kg 3x5 @7 @8 @9")] == [3.0, 2.0, 1.0]
    assert [one.rir for one in sets("squat 100kg 5/5/5 rpe 7/8/9")] == [3.0, 2.0, 1.0]


def test_ratings_follow_the_published_scale() -> None:
    """RIR-based RPE of Zourdos 2016, J Strength Cond Res 30(1):267-275."""
    for rating, rir in (("10", 0), ("9.5", 0), ("9", 1), ("8", 2), ("7", 3)):
        assert {one.rir for one in sets(f"bench 3x5 80kg rpe {rating}")} == {rir}
    for rating, ends in (("8.5", [1, 2]), ("7.5", [2, 3]), ("6", [4, 6])):
        asked = question(f"bench 3x5 80kg rpe {rating}", Doubt.EFFORT)
        assert [one.rir for one in asked.alternatives] == ends
    assert {one.rir for one in sets("bench 3x5 80kg rpe 6.5")} == {None}


@pytest.mark.parametrize(
    ("text", "load_g"),
    [
        ("squat 62,5kg 3x5", 62_500),
        ("squat 102,5 x 5", 102_500),
        ("dips +7,5: 5,5,5", 7_500),
        ("bench 60kg 8,8,7", 60_000),
    ],
)
def test_a_comma_is_a_decimal_mark_or_parts_a_list(text: str, load_g: int) -> None:
    assert {one.load_g for one in sets(text)} == {load_g}
    assert doubts(text) == set()


def test_a_load_is_never_taken_from_other_sets_without_asking() -> None:
    text = "squat 3x5 100kg, 2x8"
    assert [one.certain for one in sets(text)] == [True] * 3 + [False] * 2
    assert doubts(text) == {Doubt.LOAD}


def test_help_is_below_zero_only_for_the_body() -> None:
    assert {one.load_g for one in sets("pull-ups -20 assisted 3x5")} == {-20_000}
    assert {one.load_g for one in sets("pull-ups 3x5 20kg assistance")} == {-20_000}
    assert doubts("squat 3x5 -20kg") == {Doubt.LOAD, Doubt.LEFT_OVER}


# --- amounts, sides, words ------------------------------------------------------------------------


def test_sides_are_left_and_right() -> None:
    assert [(one.reps, one.side) for one in sets("split squat left 8 right 7")] == [
        (8, "left"),
        (7, "right"),
    ]
    asked = question("split squat 8/7 each", Doubt.SIDES)
    first, second = asked.alternatives
    assert [one.side for one in first.sets or ()] == ["", ""]
    assert [one.side for one in second.sets or ()] == ["left", "right"]


def test_times_are_seconds() -> None:
    assert [one.seconds for one in sets("plank 1:30, 1:15, 60s")] == [90, 75, 60]
    assert doubts("push ups 30s") == {Doubt.AMOUNT}


def test_same_is_proposed_from_what_was_noted_and_asked_about() -> None:
    text = "Fri\nbench 3x8 60kg\nSun\nbench same"
    assert [(one.load_g, one.reps) for one in sets(text)] == [(60_000, 8)] * 6
    assert [one.certain for one in sets(text)] == [True] * 3 + [False] * 3
    assert doubts("bench same as last time") == {Doubt.REPEAT}
    assert sets("bench same as last time") == []


@pytest.mark.parametrize(
    ("text", "pain"),
    [
        ("squat 3x5 100kg, knee hurt 3/10", 3),
        ("squat 3x5 100kg pain 4", 4),
        ("squat 3x5 100kg, 2/10 knee pain", 2),
        ("Kniebeuge 3x5 100kg, Schmerzen im Knie 5/10", 5),
        ("squat 3x5 100kg", 0),
        ("squat 3x5 100kg, felt sore", 0),
    ],
)
def test_pain_is_told_with_its_exercise(text: str, pain: int) -> None:
    (entry,) = read(text).entries
    assert entry.pain == pain
    assert len(entry.sets) == 3


def test_pain_in_a_line_of_its_own_is_asked_about() -> None:
    assert doubts("squat 3x5 100kg\nknee hurt 3/10") == {Doubt.PAIN}


@pytest.mark.parametrize(
    "words", ["rest 2 min", "2 min rest", "tempo 3-1-1", "3-0-1 tempo", "Pause 90s"]
)
def test_rest_and_tempo_are_notes_and_no_sets(words: str) -> None:
    (entry,) = read(f"squat 3x5 100kg, {words}").entries
    assert [(one.reps, one.certain) for one in entry.sets] == [(5, True)] * 3
    assert [span.of(f"squat 3x5 100kg, {words}") for span in entry.notes] == [words]


def test_unread_words_stay_in_their_places() -> None:
    reading = read("squat 3x5 100kg felt like flying\nthen tea with Ada")
    assert [span.of(reading.text) for span in reading.unread] == [
        "felt like flying",
        "tea with Ada",
    ]


def test_a_number_that_fits_nowhere_makes_its_sets_doubtful() -> None:
    assert doubts("bench 3x8 60kg 12") == {Doubt.LEFT_OVER}
    assert doubts("bench 3x8 60kg. Slept 5 hours") == set()


def test_words_that_change_what_numbers_mean_are_asked_about() -> None:
    assert doubts("push ups 100 total") == {Doubt.SCHEME}
    assert Doubt.LOAD in doubts("pull ups green band 3x8")


@pytest.mark.parametrize(
    ("text", "variation"),
    [
        ("push ups 12/10/9 on the chair", "hands-450"),
        ("push ups, feet on the chair: 12/10/9", "feet-450"),
        ("push ups 3x10 on the stair", "hands-180"),
        ("knee push ups 3x10", "knees"),
        ("tuck L-sit 4x15s", "tuck"),
        ("push ups 3x10", None),
    ],
)
def test_words_say_the_variation(text: str, variation: str | None) -> None:
    known = replace(KNOWN, heights=(KnownHeight("kitchen chair", 450), KnownHeight("stair", 180)))
    assert {(one.variation, one.certain) for one in sets(text, known)} == {(variation, True)}


def test_a_box_that_is_not_owned_is_asked_about() -> None:
    assert doubts("push ups 12/10/9 on the barrel") == {Doubt.VARIATION}
    assert doubts("push ups 12/10/9 feet up") == {Doubt.VARIATION}
    assert doubts("squat 3x5 100kg on the platform") == set()


# --- days -----------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("heading", "day"),
    [
        ("2026-11-28", date(2026, 11, 28)),
        ("28/11", date(2026, 11, 28)),
        ("28.11.", date(2026, 11, 28)),
        ("28.11.2026", date(2026, 11, 28)),
        ("28/11/26", date(2026, 11, 28)),
        ("Sat 28 Nov", date(2026, 11, 28)),
        ("November 28th", date(2026, 11, 28)),
        ("Samstag, 28. November 2026", date(2026, 11, 28)),
        ("Sa 28.11.", date(2026, 11, 28)),
        ("sa 28.11", date(2026, 11, 28)),
        ("Mo 23. Nov.", date(2026, 11, 23)),
        ("28 de noviembre", date(2026, 11, 28)),
        ("sáb 28 nov", date(2026, 11, 28)),
        ("mar 24 nov", date(2026, 11, 24)),
        ("mar 24", date(2026, 3, 24)),
        ("5 ene", date(2026, 1, 5)),
        ("## 28/11 ##", date(2026, 11, 28)),
        ("yesterday:", date(2026, 11, 29)),
        ("Monday", date(2026, 11, 30)),
        ("3 March", date(2026, 3, 3)),
        ("28 Dec 2025", date(2025, 12, 28)),
    ],
)
def test_dates_are_read_in_many_forms(heading: str, day: date) -> None:
    reading = read(f"{heading}\nsquat 3x5 100kg")
    assert [(one.day, len(one.entries)) for one in reading.days] == [(day, 1)]
    assert reading.questions == ()


def test_dates_by_order_weekdays_and_days_soon_to_come_are_asked_about() -> None:
    either = read_notes("3/4\nsquat 3x5 100kg", replace(KNOWN, day_first=None))
    assert [one.day for one in either.questions[0].alternatives] == [
        date(2026, 4, 3),
        date(2026, 3, 4),
    ]
    american = read_notes("3/4\nsquat 3x5 100kg", replace(KNOWN, day_first=False))
    assert american.days[0].day == date(2026, 3, 4)
    assert doubts("Friday\nsquat 3x5 100kg") == {Doubt.DATE}
    assert doubts("3 Dec\nsquat 3x5 100kg") == {Doubt.DATE}


def test_several_days_stand_in_one_text() -> None:
    reading = read("squat 3x5 90kg\n\n26/11\nsquat 3x5 100kg\n28/11: bench 3x8 60kg")
    assert [(one.day.day, one.entries[0].exercise) for one in reading.days] == [
        (30, "back-squat"),
        (26, "back-squat"),
        (28, "bench-press"),
    ]


def test_repetitions_are_no_date() -> None:
    assert [one.reps for one in sets("push ups\n12/10/9\n12/10")] == [12, 10, 9, 12, 10]


# --- names, lines, answers ------------------------------------------------------------------------


def test_a_remembered_name_goes_before_the_catalogue() -> None:
    known = replace(KNOWN, remembered=(("rows", "dumbbell-row"), ("the thing", "hip-thrust")))
    assert read("rows 3x8 30kg", known).entries[0].exercise == "dumbbell-row"
    assert read("the thing 3x8 80kg", known).entries[0].exercise == "hip-thrust"
    assert doubts("The Thing 3x8 80kg", known) == set()


def test_one_of_several_lines_is_asked_for_unless_named() -> None:
    assert read("deadlift heavy 3x5 130kg").entries[0].line == "heavy"
    asked = question("deadlift 3x5 130kg", Doubt.LINE)
    assert [one.line for one in asked.alternatives] == ["heavy", "light"]


def test_an_unknown_name_is_asked_about_with_the_nearest() -> None:
    asked = question("bnch 3x8 60kg", Doubt.EXERCISE)
    assert "bench-press" in [one.exercise for one in asked.alternatives]


def test_an_answer_settles_its_question_and_nothing_else() -> None:
    text = "bnch 3x8 60kg, 2x12"
    before = read(text)
    asked = question(text, Doubt.EXERCISE)
    after = read_notes(text, KNOWN, [asked.answered(Alternative(exercise="bench-press"))])
    assert after.entries[0].exercise == "bench-press"
    assert {one.doubt for one in before.questions} - {one.doubt for one in after.questions} == {
        Doubt.EXERCISE
    }
    load = next(one for one in after.questions if one.doubt is Doubt.LOAD)
    answers = [
        asked.answered(Alternative(exercise="bench-press")),
        load.answered(Alternative(load_g=50_000)),
    ]
    done = read_notes(text, KNOWN, answers)
    assert done.questions == ()
    assert [one.load_g for one in done.entries[0].sets] == [60_000] * 3 + [50_000] * 2
    assert all(one.certain for one in done.entries[0].sets)


def test_a_certain_name_can_be_put_right_too() -> None:
    (entry,) = read("rows 3x8 30kg").entries
    assert entry.name is not None
    said = Question(Doubt.EXERCISE, entry.name).answered(Alternative(exercise="dumbbell-row"))
    assert read_notes("rows 3x8 30kg", KNOWN, [said]).entries[0].exercise == "dumbbell-row"


def test_the_order_can_be_answered() -> None:
    text = "row 20x5x3"
    asked = question(text, Doubt.ORDER)
    for meant in asked.alternatives:
        reading = read_notes(text, KNOWN, [asked.answered(meant)])
        assert reading.questions == ()
        kept = [replace(one, certain=False) for one in reading.entries[0].sets]
        assert kept == [replace(one, certain=False) for one in meant.sets or ()]


def test_the_parts_tell_what_was_taken_for_what() -> None:
    reading = read("28/11\n- squat 3x5 100kg, rest 2 min, sunny")
    told = {part.kind: part.span.of(reading.text) for part in reading.parts}
    assert told[PartKind.DATE] == "28/11"
    assert told[PartKind.NAME] == "squat"
    assert told[PartKind.NOTE] == "rest 2 min"
    assert told[PartKind.UNREAD] == "sunny"
    assert told[PartKind.WORK] == "100kg"
