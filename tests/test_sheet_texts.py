"""What a printed sheet says: words only, nothing painted."""

from __future__ import annotations

from dataclasses import replace

import pytest

from desktop.planning.days import SlotPlan, WhyEmpty
from desktop.training.equipment import Band, Bar, Stack
from desktop.training.exercises import LoadingKind
from desktop.training.loading import Loading, MadeWith
from desktop.training.position import Position, SchemeKind, SetScheme
from desktop.training.program import Slot
from desktop.training.quantities import Unit
from desktop.training.reasons import Reason, ReasonCode, reason
from desktop.training.session import AskedSet, LineDone, SetDone
from desktop.training.target import InBetween, Target
from tests.sheet_plans import (
    BEFORE,
    DAY,
    L_SIT,
    POUNDS,
    PRESS,
    PUSH_UP,
    ROW,
    RULE,
    SQUAT,
    TRAINEE,
    asked,
    exercise,
    full_slot,
    plan,
    slot,
)
from views.loading_texts import loading_text
from views.sheet_texts import SheetError, sheet_aloud, sheet_text, slot_numbers
from views.slot_texts import SlotText, slot_text

pytestmark = pytest.mark.usefixtures("english")

BAR = Bar("club bar", 20_000)
BANDED = exercise("Band row", LoadingKind.BAND)
TOTAL = replace(RULE, scheme=SetScheme(SchemeKind.TOTAL))


def said(one: SlotPlan, unit: Unit = Unit.KG) -> SlotText:
    """What the sheet says of one slot; no-break spaces as spaces, to be read here."""
    text = slot_text(one, "1", (), unit, DAY)
    return replace(
        text,
        asked=tuple(part.replace("\N{NO-BREAK SPACE}", " ") for part in text.asked),
        notes=tuple(part.replace("\N{NO-BREAK SPACE}", " ") for part in text.notes),
        between=text.between.replace("\N{NO-BREAK SPACE}", " "),
        before=tuple(part.replace("\N{NO-BREAK SPACE}", " ") for part in text.before),
    )


@pytest.mark.parametrize(
    ("one", "target"),
    [
        (slot(), ("3 × 10 at 62.5 kg",)),
        (slot(PRESS, asked(load_g=16_000)), ("3 × 10 at 2 × 16 kg",)),
        (slot(ROW, asked(load_g=20_000)), ("3 × 10 each side at 20 kg",)),
        (slot(PUSH_UP, asked(load_g=0)), ("3 × 10",)),
        (slot(PUSH_UP, asked(load_g=5_000)), ("3 × 10 with 5 kg",)),
        (slot(PUSH_UP, asked(load_g=-20_000)), ("3 × 10 with 20 kg of help",)),
        (slot(L_SIT, asked(4, 0, reps=None, seconds=20)), ("4 × 20 s",)),
        (slot(BANDED, asked(load_g=15_000)), ("3 × 10",)),
        (
            slot(SQUAT, (*asked(1, 100_000, reps=5), *asked(2, 90_000, reps=5))),
            ("1 × 5 at 100 kg,", "then 2 × 5 at 90 kg"),
        ),
        (
            slot(SQUAT, tuple(AskedSet(load, 5) for load in (80_000, 90_000, 100_000))),
            ("3 sets,", "from 5 at 80 kg", "to 5 at 100 kg"),
        ),
        (slot(PUSH_UP, asked(3, 0, reps=8), rule=TOTAL), ("24 reps in 3 sets",)),
    ],
)
def test_what_is_asked_is_said_in_the_trade_s_shorthand(
    one: SlotPlan, target: tuple[str, ...]
) -> None:
    assert said(one).asked == target


def test_a_trainee_in_pounds_reads_pounds_everywhere() -> None:
    text = said(
        slot(
            SQUAT,
            asked(load_g=102_058),
            discs=(20_412, 15_876, 4_536),
            loading=Loading(102_058, MadeWith.BAR, bar=BAR, discs_per_side=(20_412, 15_876, 4_536)),
            warm_up=(AskedSet(43_091, 5),),
            best=SetDone(99_790, 8),
        ),
        Unit.LB,
    )
    assert text.asked == ("3 × 10 at 225 lb",)
    assert [disc.label for disc in text.discs] == ["45", "35", "10"]
    assert text.set_up == "club bar: 45 + 35 + 10 a side"
    assert text.warm_up == "Warm-up 5 × 95 lb"
    assert text.before == ("Best: 8 at 220 lb",)
    assert ("load lb",) in text.boxes


def test_a_full_slot_has_something_to_say_in_every_place() -> None:
    text = said(full_slot())
    assert text.name == "Back squat"
    assert text.how == "2 in reserve · rest 2:30"
    assert text.set_up == "club bar: 20 + 1.25 a side"
    assert [disc.label for disc in text.discs] == ["20", "1.25"]
    assert text.warm_up == "Warm-up 5 × 25 · 3 × 37.5 kg"
    assert text.why == "Every set reached 9 reps on Mon 23 Nov: now 10 reps"
    assert text.cue == "Big breath, stand up tall."
    assert text.before == ("Last time, Mon 23 Nov: 9 · 8 at 62.5 kg", "Best: 9 at 62.5 kg")
    assert text.sets == ("10", "10", "10")
    assert text.strip
    assert not text.held


def test_numbers_and_dates_follow_the_locale(german: None) -> None:
    text = said(full_slot())
    assert text.asked == ("3 × 10 at 62,5 kg",)
    assert [disc.label for disc in text.discs] == ["20", "1,25"]
    assert "Mo. 23. Nov." in text.before[0]
    assert sheet_text(plan(full_slot())).day == "Donnerstag, 26. November 2026"


@pytest.mark.parametrize(
    ("made", "words"),
    [
        (Loading(20_000, MadeWith.BAR, bar=BAR), "club bar alone"),
        (
            Loading(60_500, MadeWith.BAR, bar=BAR, collars_g=500, discs_per_side=(20_000,)),
            "club bar: 20 a side, with collars",
        ),
        (
            Loading(12_000, MadeWith.HANDLE, 2, handle_g=2_000, discs_per_side=(2_500, 2_500)),
            "dumbbell handle: 2.5 + 2.5 at each end",
        ),
        (Loading(2_000, MadeWith.HANDLE, handle_g=2_000), "dumbbell handle alone"),
        (
            Loading(45_000, MadeWith.STACK, stack=Stack("low row", 5_000, 5_000, 90_000)),
            "low row: pin at 45 kg",
        ),
        (
            Loading(
                47_500,
                MadeWith.STACK,
                stack=Stack("low row", 5_000, 5_000, 90_000, 2_500),
                half_step=True,
            ),
            "low row: pin at 45 kg, with the small plate",
        ),
        (
            Loading(15_000, MadeWith.BAND, band=Band("green", 300, 9_000, 600, 21_000)),
            "band: green",
        ),
        (
            Loading(-15_000, MadeWith.ASSISTANCE, band=Band("green", 300, 9_000, 600, 21_000)),
            "help of green",
        ),
        (Loading(16_000, MadeWith.DUMBBELL, 2), ""),
        (None, ""),
    ],
)
def test_how_a_load_is_made_is_said_where_the_load_does_not_say_it(
    made: Loading | None, words: str
) -> None:
    assert loading_text(made, Unit.KG) == words


def test_discs_of_unlike_sets_are_those_of_the_heaviest() -> None:
    sets = (*asked(1, 100_000, reps=5), *asked(2, 90_000, reps=5))
    made = Loading(100_000, MadeWith.BAR, bar=BAR, discs_per_side=(20_000, 20_000))
    text = said(slot(SQUAT, sets, loading=made))
    assert text.set_up == "100 kg, club bar: 20 + 20 a side"
    assert text.sets == ("5 × 100", "5 × 90", "5 × 90")


def test_a_variation_is_named_as_this_trainee_sets_it_up() -> None:
    text = said(slot(PUSH_UP, asked(load_g=0, variation="hands-450"), set_up="chair, 45 cm"))
    assert text.name == "Push-up, hands on chair, 45 cm"
    assert text.set_up == ""  # it stands in the name
    other = said(slot(PUSH_UP, asked(load_g=0, variation="floor"), set_up="mat"))
    assert other.set_up == "mat"


def test_a_variation_that_holds_the_exercise_s_name_says_it_once() -> None:
    pull_up = exercise("Knees", LoadingKind.BODYWEIGHT)
    assert said(slot(pull_up, asked(load_g=0, variation="tuck"))).name == "Knees tucked"


def test_reasons_tell_variations_by_name() -> None:
    back = reason(
        ReasonCode.BACK_OFF, variable="variation", before="floor", after="hands-450", misses=2
    )
    why = said(slot(PUSH_UP, asked(load_g=0, variation="hands-450"), why=back)).why
    assert "hands and feet on the floor becomes hands on chair, 45 cm" in why


def test_an_open_ended_last_set_says_where_to_stop() -> None:
    last = AskedSet(60_000, 8, open_ended=True, stop_at=11)
    text = said(slot(SQUAT, (*asked(2, 60_000, reps=8), last)))
    assert text.notes == ("Last set: as many clean reps as you can, stop at 11",)
    assert text.sets == ("8", "8", "8+")
    hold = AskedSet(seconds=20, open_ended=True, stop_at=30)
    assert said(slot(L_SIT, (hold,))).notes == (
        "Last set: hold as long as it is clean, stop at 30 s",
    )


def test_an_open_ended_top_set_says_so_though_easier_sets_follow() -> None:
    top = AskedSet(60_000, 8, open_ended=True, stop_at=11)
    text = said(slot(SQUAT, (top, *asked(2, 52_500, reps=8))))
    assert text.notes[0] == "First set: as many clean reps as you can, stop at 11"


def test_what_lies_in_between_is_offered_and_not_asked() -> None:
    ways = (
        InBetween(Position(20_000, 13, 3), 0.0238, "one more rep"),
        InBetween(Position(20_000, 12, 4), 0.0, "one more set"),
        InBetween(Position(20_000, 12, 3), None, "slower tempo"),
    )
    one = slot(PRESS, asked(load_g=20_000))
    text = said(replace(one, target=replace(one.target, in_betweens=ways)))
    assert text.between == (
        "In between, if your coach agrees: one more rep (3 × 13 at 2 × 20 kg, 2 % harder);"
        " one more set (4 × 12 at 2 × 20 kg); slower (3 × 12 at 2 × 20 kg)"
    )


def test_the_coach_s_own_note_and_tempo_stand_with_what_is_asked() -> None:
    one = slot()
    told = replace(one.slot, note="fast up", tempo="3-1-1", rest_s=0)
    text = slot_text(replace(one, slot=told), "A1", ("A2", "A3"), Unit.KG, DAY)
    assert text.notes == ("fast up",)
    assert text.how == "tempo 3-1-1 · in turn with A2 and A3"
    timed = said(slot(SQUAT, asked(tempo_s=4)))
    assert timed.how == "4 s a repetition · rest 2:30"


def test_left_and_right_have_boxes_of_their_own() -> None:
    assert said(slot(ROW)).boxes[0] == ("left", "right")
    assert said(slot(replace(L_SIT, unilateral=True))).boxes[0] == ("left s", "right s")
    assert said(slot(L_SIT)).boxes[0] == ("seconds", "clean")
    assert said(slot()).boxes == (("reps", "clean"), ("load kg",), ("reserve", "pain"))


def test_last_time_tells_sides_loads_and_other_variations() -> None:
    sides = tuple(
        SetDone(20_000, reps, side=side) for reps, side in ((8, "left"), (7, "right")) * 2
    )
    text = said(slot(ROW, last_time=LineDone(1, ROW.key, sets=sides), last_day=BEFORE))
    assert text.before == ("Last time, Mon 23 Nov: 8/7 · 8/7 at 20 kg",)
    mixed = (SetDone(90_000, 5), SetDone(80_000, 5), SetDone(80_000, 4))
    text = said(slot(last_time=LineDone(1, SQUAT.key, sets=mixed), last_day=BEFORE))
    assert text.before == ("Last time, Mon 23 Nov: 5 at 90 kg, 5 · 4 at 80 kg",)
    harder = SetDone(0, 9, variation="floor")
    text = said(slot(PUSH_UP, asked(load_g=0, variation="hands-450"), best=harder))
    assert text.before == ("Best: 9 (hands and feet on the floor)",)
    text = said(slot(last_time=LineDone(1, SQUAT.key, skipped=True), last_day=BEFORE))
    assert text.before == ("Last time, Mon 23 Nov: not done",)


def test_a_warm_up_by_the_body_alone_names_no_unit() -> None:
    assert said(slot(PUSH_UP, warm_up=(AskedSet(0, 5),))).warm_up == "Warm-up 5 without load"
    pair = said(slot(PRESS, warm_up=(AskedSet(8_000, 5), AskedSet(12_000, 3))))
    assert pair.warm_up == "Warm-up 5 × 8 · 3 × 12 kg each"


@pytest.mark.parametrize(
    ("why", "words"),
    [
        (
            reason(ReasonCode.PAIN_HOLD, pain=5, times=1),
            "Not asked: pain 5 of 10 on Mon 23 Nov; ask your coach",
        ),
        (
            reason(ReasonCode.GAP_RESTART, days=200),
            "Not asked: 200 days since the last time; ask your coach where to start",
        ),
        (reason(ReasonCode.START_NEEDED), "Not set yet: ask your coach where to start"),
        (
            reason(ReasonCode.SKIPPED),
            "Not asked: Not done the last time: the same again; ask your coach",
        ),
    ],
)
def test_a_line_with_nothing_asked_says_why(why: Reason, words: str) -> None:
    text = said(slot(sets=(), why=why, last_day=BEFORE))
    assert (text.held, text.sets, text.boxes) == (words, (), ())


@pytest.mark.parametrize(
    ("pairs", "numbers"),
    [
        (["", "", ""], ("1", "2", "3")),
        (["", "a", "a", ""], ("1", "A1", "A2", "4")),
        (["b", "b", "c", "c"], ("B1", "B2", "C1", "C2")),
        (["a", ""], ("1", "2")),
        ([], ()),
    ],
)
def test_slots_are_numbered_and_pairs_have_their_letter(
    pairs: list[str], numbers: tuple[str, ...]
) -> None:
    assert slot_numbers(pairs) == numbers


def test_the_head_tells_who_when_and_what_the_day_belongs_to() -> None:
    text = sheet_text(plan(full_slot()))
    assert (text.trainee, text.day) == ("Seat 2", "Thursday, 26 November 2026")
    assert text.belongs_to == "Winter strength · Base · week 3 of 12 · Squat and push"
    assert text.minutes == "about 48 min"
    assert sheet_text(plan(full_slot(), deload=True, minutes=0)).belongs_to.endswith("deload")


def test_the_foot_says_for_whom_and_when_to_stop() -> None:
    caution = sheet_text(plan(full_slot())).caution
    for words in ("healthy people", "licensed", "Local rules", "Chest pain", "fainting", "numb"):
        assert words in caution


def test_boxes_of_the_session_are_in_the_trainee_s_unit() -> None:
    assert "body mass lb" in sheet_text(plan(full_slot(), trainee=POUNDS)).afterwards
    assert sheet_text(plan(full_slot())).afterwards[:2] == ("effort 0-10", "minutes")


def test_partners_of_a_pair_are_named() -> None:
    slots = [
        replace(slot(one), slot=Slot(one.key, RULE, Position(), pair="a")) for one in (SQUAT, ROW)
    ]
    first, second = sheet_text(plan(*slots)).slots
    assert (first.number, second.number) == ("A1", "A2")
    assert first.how.endswith("in turn with A2")
    assert second.how.endswith("in turn with A1")


@pytest.mark.parametrize(
    ("why", "words"),
    [
        (WhyEmpty.NO_PROGRAM, "Seat 2 has no program: assign one, and its days can be printed."),
        (WhyEmpty.NOT_STARTED, "The program of Seat 2 has not begun on Thu 26 Nov."),
        (WhyEmpty.ENDED, "The program of Seat 2 has ended before Thu 26 Nov."),
        (WhyEmpty.REST_DAY, "Thu 26 Nov is a rest day of Seat 2: nothing is asked."),
        (WhyEmpty.AWAY, "Seat 2 is away on Thu 26 Nov: nothing is asked."),
        (
            WhyEmpty.CLEARANCE_NEEDED,
            "Nothing is asked of Seat 2 until a licensed professional's clearance is recorded.",
        ),
        (WhyEmpty.NOT_EMPTY, "Nothing is asked of Seat 2 on Thu 26 Nov."),
    ],
)
def test_a_sheet_with_nothing_asked_is_refused(why: WhyEmpty, words: str) -> None:
    with pytest.raises(SheetError) as refused:
        sheet_text(plan(why_empty=why))
    assert str(refused.value) == words


def test_a_day_whose_lines_are_all_held_is_refused_with_their_reasons() -> None:
    held = slot(sets=(), why=reason(ReasonCode.START_NEEDED))
    with pytest.raises(SheetError, match="Back squat: Not set yet"):
        sheet_text(plan(held))


def test_imported_markup_and_line_breaks_are_plain_text() -> None:
    marked = exercise("<b>Squat</b>\nheavy & slow", cue="<img src=x>\ttall")
    text = sheet_text(plan(slot(marked), trainee=replace(TRAINEE, name="<i>Bow</i>\r\n")))
    assert text.trainee == "<i>Bow</i>"
    assert text.slots[0].name == "<b>Squat</b> heavy & slow"
    assert text.slots[0].cue == "<img src=x> tall"


def test_the_sheet_can_be_read_aloud() -> None:
    held = slot(ROW, (), reason(ReasonCode.START_NEEDED))
    aloud = sheet_aloud(sheet_text(plan(full_slot(), held)))
    assert aloud.splitlines()[0].startswith("Seat 2, Thursday, 26 November 2026.")
    assert "1 Back squat: 3" in aloud
    assert "2 One-arm row: Not set yet" in aloud


def test_a_target_without_notes_has_one_reason() -> None:
    one = slot()
    easier = reason(ReasonCode.DELOAD, sets_factor=0.6, load_percent=10)
    changed = Target(one.target.position, one.target.sets, easier, notes=(one.target.reason,))
    why = said(replace(one, target=changed)).why
    assert why.startswith("Deload")
    assert "Every set reached 9 reps" in why
