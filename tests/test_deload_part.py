"""The deload planner: moved by keys, planned as one act, with the coach's factors; and old ones."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from desktop.planning.deload_effect import DeloadEffect, change_of
from desktop.planning.deload_plan import DeloadBasis, DeloadProposal
from desktop.training.deload import Seen, Signal
from desktop.training.program import Program
from desktop.training.trainee import Clearance, DeloadWindow
from tests.load_screen import load_area
from tests.strength_room import DAY, MONDAY, PROGRAM, WEEK, Room, closed, copy_of, open_room
from views.deload_texts import (
    change_text,
    effect_text,
    factors_text,
    proposal_sentence,
    signal_text,
    signals_sentence,
)
from views.load_area import DELOAD, LoadArea
from views.record import MessageKind

pytestmark = pytest.mark.usefixtures("english")

TODAY = MONDAY + 3 * WEEK + DAY  # a Tuesday
DUE = MONDAY + 6 * WEEK
LONG = Program("Long", (replace(PROGRAM.phases[0], weeks=30),), deload_every=6)
CONTROL, ALT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.AltModifier


@pytest.fixture(scope="module")
def trained_file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("trained")
    room = open_room(folder, LONG)
    room.train_weeks(3)
    return closed(room, folder)


@pytest.fixture
def room(trained_file: Path, tmp_path: Path) -> Iterator[Room]:
    with copy_of(trained_file, tmp_path) as room:
        yield room


def opened(qtbot: QtBot, room: Room, today: date = TODAY) -> LoadArea:
    return load_area(qtbot, room, today, DELOAD)


def texts(area: LoadArea) -> list[str]:
    """Every text that is seen, once what was added is laid out."""
    QApplication.processEvents()
    shown = [label.text() for label in area.deload.findChildren(QLabel) if label.isVisible()]
    return [text.replace("\N{NO-BREAK SPACE}", " ") for text in shown]


# Planning


def test_it_opens_where_the_cycle_puts_it(qtbot: QtBot, room: Room) -> None:
    area = opened(qtbot, room)
    assert area.deload.shown is not None
    assert area.deload.shown.first == DUE
    assert area.deload.sentence.text() == (
        "The next deload is due from Mon 19 Oct on. 3 weeks of building since Mon 7 Sept; "
        "one is proposed every 6 weeks."
    )
    assert area.deload.plan.text() == "Plan this week"
    assert room.repository.deloads(room.trainee_id) == ()


def test_it_is_moved_and_planned_by_keys_as_one_act(qtbot: QtBot, room: Room) -> None:
    area = opened(qtbot, room)
    area.deload.begin()
    weeks = area.deload.weeks
    qtbot.keyClick(weeks, Qt.Key.Key_Left)
    qtbot.keyClick(weeks, Qt.Key.Key_Left)
    qtbot.keyClick(weeks, Qt.Key.Key_Right)
    assert room.repository.deloads(room.trainee_id) == ()  # moving keeps nothing yet
    qtbot.keyClick(weeks, Qt.Key.Key_Return)
    (window,) = room.repository.deloads(room.trainee_id)
    assert (window.first, window.last) == (DUE - WEEK, DUE - DAY)
    assert (window.sets_factor, window.load_percent, window.planned) == (0.6, 10.0, True)
    assert not area.deload.plan.isEnabled()
    assert area.deload.plan.text() == "Planned"
    assert area.record.undo_stack.count() == 1
    area.record.undo_stack.undo()
    assert room.repository.deloads(room.trainee_id) == ()
    assert area.deload.plan.isEnabled()


def test_the_words_have_keys_of_their_own(qtbot: QtBot, room: Room) -> None:
    area = opened(qtbot, room)
    area.deload.begin()
    qtbot.keyClick(area.deload.weeks, Qt.Key.Key_Right, ALT)
    assert area.deload.shown is not None
    qtbot.waitUntil(lambda: area.deload.shown is not None and area.deload.shown.first == DUE + WEEK)
    qtbot.keyClick(area.deload.weeks, Qt.Key.Key_Return, CONTROL)
    (window,) = room.repository.deloads(room.trainee_id)
    assert window.first == DUE + WEEK


def test_it_never_begins_in_the_past(qtbot: QtBot, room: Room) -> None:
    area = opened(qtbot, room)
    said: list[tuple[str, str]] = []
    area.record.message.connect(lambda text, kind: said.append((text, kind)))
    for _ in range(8):
        area.deload.move_by(-1)
    assert area.deload.shown is not None
    assert area.deload.shown.first == TODAY - DAY  # this week's Monday
    assert said[-1] == ("It cannot begin before this week.", MessageKind.NOTE)


def test_a_planned_week_is_moved_not_doubled(qtbot: QtBot, room: Room) -> None:
    area = opened(qtbot, room)
    area.deload.accept()
    area.deload.move_by(1)
    assert area.deload.plan.text() == "Move it here"
    area.deload.accept()
    (window,) = room.repository.deloads(room.trainee_id)
    assert window.first == DUE + WEEK
    assert area.deload.sentence.text().startswith("A deload is planned from Mon 26 Oct on.")


def test_a_week_is_taken_by_a_click(qtbot: QtBot, room: Room) -> None:
    area = opened(qtbot, room)
    weeks = area.deload.weeks
    assert weeks.place == 3
    where = weeks.column(1).center().toPoint()
    qtbot.mouseClick(weeks, Qt.MouseButton.LeftButton, pos=where)
    assert weeks.place == 1
    qtbot.mouseClick(weeks, Qt.MouseButton.LeftButton, pos=QPoint(where))
    assert weeks.place == 1


def test_two_easier_weeks_do_not_overlap(qtbot: QtBot, room: Room) -> None:
    room.save(DeloadWindow(room.trainee_id, DUE, DUE + 6 * DAY))
    room.save(DeloadWindow(room.trainee_id, DUE + WEEK, DUE + WEEK + 6 * DAY))
    area = opened(qtbot, room)
    said: list[str] = []
    area.record.message.connect(lambda text, _kind: said.append(text))
    area.deload.move_by(1)
    area.deload.accept()
    assert said == ["There is a deload already: Mon 26 Oct – Sun 1 Nov."]
    assert [d.first for d in room.repository.deloads(room.trainee_id)] == [DUE, DUE + WEEK]


def test_what_was_moved_stays_while_something_else_is_saved(qtbot: QtBot, room: Room) -> None:
    area = opened(qtbot, room)
    area.deload.move_by(-1)
    area.record.save("Note", replace(room.repository.trainee(room.trainee_id), notes="hm"))
    assert area.deload.shown is not None
    assert area.deload.shown.first == DUE - WEEK


# Factors


def test_factors_are_the_coachs_settings_and_change_what_is_asked(qtbot: QtBot, room: Room) -> None:
    area = opened(qtbot, room)
    assert any(text.startswith("2 × ") for text in texts(area))
    field = area.deload.factor
    field.setFocus()
    field.selectAll()
    qtbot.keyClicks(field, "1")
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert room.repository.coach_settings().deload_sets_factor == 1.0
    assert area.deload.shown is not None
    assert area.deload.shown.sets_factor == 1.0
    assert {text[:3] for text in texts(area) if text[1:3] == " ×"} == {"2 ×", "3 ×"}
    assert not any(week.sets < week.usual_sets for week in area.deload.weeks.weeks)
    area.record.undo_stack.undo()
    assert room.repository.coach_settings().deload_sets_factor == 0.6
    assert area.deload.factor.text() == "0.6"


def test_a_factor_that_is_not_allowed_is_said(qtbot: QtBot, room: Room) -> None:
    area = opened(qtbot, room)
    field = area.deload.percent
    field.setFocus()
    field.selectAll()
    qtbot.keyClicks(field, "80")
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert area.deload.error.text() == "Allowed: 0 to 50."
    assert room.repository.coach_settings().deload_load_percent == 10.0


# What it asks, and the old ones


def test_slots_stand_beside_what_they_would_ask(qtbot: QtBot, room: Room) -> None:
    area = opened(qtbot, room)
    shown = texts(area)
    place = shown.index("Back squat")
    assert shown[place + 1].startswith("3 × ")
    assert shown[place + 3].startswith("2 × ")
    assert "Positions resume where they stood." in area.deload.after.text()


def test_windows_are_listed_and_can_be_taken_back(qtbot: QtBot, room: Room) -> None:
    room.save(DeloadWindow(room.trainee_id, MONDAY + WEEK, MONDAY + WEEK + 6 * DAY, planned=False))
    area = opened(qtbot, room)
    assert "by the signs · sets × 0.6, load − 10 %" in texts(area)
    assert any(text.startswith("Too few sessions to say") for text in texts(area))
    (row,) = area.deload.past.rows
    area.deload.past.removed.emit(room.repository.deloads(room.trainee_id)[0])
    assert room.repository.deloads(room.trainee_id) == ()
    assert row not in area.deload.past.rows
    area.record.undo_stack.undo()
    assert len(area.deload.past.rows) == 1


def test_nobody_with_a_program_has_no_weeks_to_show(qtbot: QtBot, room: Room) -> None:
    room.repository.remove(*room.repository.assignments(room.trainee_id))
    area = opened(qtbot, room)
    assert not area.deload.weeks.isVisible()
    assert any(text.startswith("No training is planned") for text in texts(area))


# Words


def proposal(basis: DeloadBasis, **fields: object) -> DeloadProposal:
    made = DeloadProposal(DeloadWindow(1, DUE, DUE + 6 * DAY), basis, 6, 3, MONDAY, DUE, (), 2)
    return replace(made, **fields)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("basis", "fields", "words"),
    [
        (DeloadBasis.CYCLE, {"due": TODAY - DAY}, "A deload is due. "),
        (DeloadBasis.SIGNALS, {}, "Several signs at once speak for a deload soon. "),
        (DeloadBasis.PROGRAM, {}, "The program has a deload from Mon 19 Oct on. "),
        (
            DeloadBasis.RECORDED,
            {"window": DeloadWindow(1, TODAY - DAY, TODAY + 5 * DAY)},
            "A deload runs until Sun 4 Oct. ",
        ),
        (DeloadBasis.NONE, {"every": None}, "Nothing asks for a deload now. "),
    ],
)
def test_the_sentence_says_when_and_why(
    basis: DeloadBasis, fields: dict[str, object], words: str
) -> None:
    said = proposal_sentence(proposal(basis, **fields), TODAY)
    assert said.startswith(words)
    assert "3 weeks of building since Mon 7 Sept" in said


def test_signs_are_told_with_their_numbers() -> None:
    seen = (
        Seen(Signal.PLATEAUS, (("lines", 2),)),
        Seen(Signal.WELLNESS, (("wellness_before", 4.0), ("wellness_now", 3.25))),
        Seen(Signal.EFFORT, (("rir_before", 2.0), ("rir_now", 0.5))),
        Seen(Signal.EFFORT, (("effort_before", 6.0), ("effort_now", 7.5))),
        Seen(Signal.ACHES, (("ache_days", 2), ("last_ache", TODAY))),
    )
    assert [signal_text(each) for each in seen] == [
        "2 exercises have probably stopped growing",
        "wellness fell from 4 to 3.2 (of 5)",
        "reps in reserve fell from 2 to 0.5 at the same work",
        "effort rose from 6 to 7.5 at no more work",
        "aches noted on 2 of the last 14 days",
    ]
    assert signals_sentence(seen[:1], 2) == (
        "Signs seen (1; 2 make a deload due): 2 exercises have probably stopped growing."
    )
    assert signals_sentence((), 2).startswith("Signs seen: none of")


def test_an_effect_is_told_with_its_band() -> None:
    window = DeloadWindow(1, MONDAY, MONDAY + 6 * DAY)
    clear = change_of(0.02, 0.01)
    assert change_text(clear) == ("Performance after against before: +2 % (80 %: +0.7 % to +3.3 %)")
    unclear = change_text(change_of(0.01, 0.02))
    assert unclear == "No clear difference of performance: +1 % (80 %: −1.6 % to +3.6 %)"
    waiting = DeloadEffect(window, waiting=MONDAY + 5 * WEEK)
    assert effect_text(waiting, MONDAY + 2 * WEEK) == (
        "Too few sessions to say: 3 before and 2 after it are needed of an exercise. "
        "More is known by Mon 12 Oct."
    )
    assert effect_text(waiting, MONDAY) == ""  # it is not over
    assert factors_text(window) == "sets × 0.6, load − 10 %"


def test_nothing_is_proposed_while_a_clearance_is_needed(qtbot: QtBot, room: Room) -> None:
    room.train(MONDAY, red_flag=True)
    area = opened(qtbot, room)
    deload = area.deload
    assert deload.sentence.text() == (
        "Nothing is proposed until a licensed professional's clearance is recorded."
    )
    assert not deload.plan.isVisible()
    assert not deload.slots.isVisible()
    deload.accept()
    assert room.repository.deloads(room.trainee_id) == ()
    room.update_trainee(clearances=(Clearance(MONDAY, "a physician of the town"),))
    area.stale = True
    area.bring_up_to_date()
    assert deload.plan.isVisible()
