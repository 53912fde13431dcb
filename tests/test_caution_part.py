"""Cautions on their own screen: every way out, clearances, and what was set aside."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from desktop.planning.caution_ways import Way, WayKind
from desktop.planning.cautions import cautions, dismissal
from desktop.planning.history import read_history
from desktop.planning.set_aside import Standing, remembered, set_aside
from desktop.training.limits import LimitId, Proposal
from desktop.training.position import Position, Variable, VariableRange
from desktop.training.program import Override
from desktop.training.quantities import Unit
from desktop.training.recovery import Caution, evidence_key
from desktop.training.trainee import Clearance, DismissedCaution
from tests.load_screen import load_area
from tests.strength_room import DAY, MONDAY, Room, as_asked, open_room
from views.caution_row import CautionRow
from views.gallery import ForgottenSettings
from views.load_area import CAUTIONS, DELOAD, WEEK, LoadArea
from views.main_window import MainWindow
from views.proposals import screen_for
from views.record import Record
from views.theme import Theme
from views.way_texts import AREAS, way_text
from views.work_areas import LOAD, PROGRAM, WORK_AREAS

pytestmark = pytest.mark.usefixtures("english")

TODAY = MONDAY + 2 * DAY


@pytest.fixture
def room(tmp_path: Path) -> Iterator[Room]:
    made = open_room(tmp_path)
    yield made
    made.repository.database.close()


def opened(qtbot: QtBot, room: Room) -> LoadArea:
    return load_area(qtbot, room, TODAY, CAUTIONS)


def row_of(area: LoadArea, limit: LimitId) -> CautionRow:
    return next(row for row in area.cautions.rows if row.caution.limit is limit)


def limits_of(room: Room) -> set[LimitId]:
    return {one.limit for one in cautions(room.repository, room.trainee_id, TODAY)}


def press(qtbot: QtBot, button: QPushButton) -> None:
    button.setFocus()
    qtbot.keyClick(button, Qt.Key.Key_Space)


def texts(widget: QWidget) -> list[str]:
    QApplication.processEvents()
    return [label.text() for label in widget.findChildren(QLabel) if label.isVisible()]


# Ways


def test_a_stop_is_cleared_and_never_set_aside(qtbot: QtBot, room: Room) -> None:
    room.train(MONDAY, red_flag=True)
    area = opened(qtbot, room)
    row = row_of(area, LimitId.RED_FLAG)
    assert row.aside.isHidden()
    press(qtbot, row.ways[0])
    assert row.form is not None
    form = row.form
    qtbot.keyClick(form.note, Qt.Key.Key_Return)
    assert form.error.text() == "Needed: the name of the licensed professional."
    qtbot.keyClicks(form.by, "a physician of the town")
    qtbot.keyClick(form.by, Qt.Key.Key_Return)
    qtbot.keyClicks(form.note, "may train")
    qtbot.keyClick(form.note, Qt.Key.Key_Return)
    assert room.repository.trainee(room.trainee_id).clearances == (
        Clearance(TODAY, "a physician of the town", "may train"),
    )
    assert LimitId.RED_FLAG not in {row.caution.limit for row in area.cautions.rows}
    assert "Cleared by a physician of the town" in texts(area.cautions)
    area.record.undo_stack.undo()
    assert LimitId.RED_FLAG in {row.caution.limit for row in area.cautions.rows}


def test_a_clearance_of_tomorrow_is_refused(qtbot: QtBot, room: Room) -> None:
    room.train(MONDAY, red_flag=True)
    area = opened(qtbot, room)
    row = row_of(area, LimitId.RED_FLAG)
    row.ask_clearance()
    assert row.form is not None
    row.form.by.setText("somebody")
    row.form.day.set_day(TODAY + DAY)
    row.form.take()
    assert row.form.error.text() == "Needed: the day, today or before."
    assert room.repository.trainee(room.trainee_id).clearances == ()
    qtbot.keyClick(row.form.by, Qt.Key.Key_Escape)
    assert row.form.isHidden()


def test_backing_off_for_pain_is_one_act(qtbot: QtBot, room: Room) -> None:
    room.train(MONDAY, lambda one: replace(as_asked(one), pain=6))
    area = opened(qtbot, room)
    held = [row for row in area.cautions.rows if row.caution.limit is LimitId.PAIN_HOLD]
    row = held[0]
    assert row.ways[0].accessibleName().startswith("Back off to 3 × ")
    press(qtbot, row.ways[0])
    assert area.record.undo_stack.count() == 1
    left = [row for row in area.cautions.rows if row.caution.limit is LimitId.PAIN_HOLD]
    assert len(left) == len(held) - 1
    area.record.undo_stack.undo()
    assert len([r for r in area.cautions.rows if r.caution.limit is LimitId.PAIN_HOLD]) == len(held)


def test_a_step_is_taken_back_by_holding(qtbot: QtBot, room: Room) -> None:
    room.train(MONDAY)
    line = room.line("back-squat")
    room.save(replace(line, overrides=(Override(TODAY, Position(70_000, 8, 3)),)))
    area = opened(qtbot, room)
    row = row_of(area, LimitId.LOAD_STEP)
    assert row.ways[0].accessibleName() == "Stay at 3 × 9 at 60 kg"
    press(qtbot, row.ways[0])
    assert LimitId.LOAD_STEP not in limits_of(room)
    assert "Stay at 3 × 9 at 60 kg (Back squat)" in area.record.undo_stack.undoText()


def test_ways_without_a_change_lead_to_their_place(qtbot: QtBot, room: Room) -> None:
    room.update_trainee(activities_recorded=False)
    area = opened(qtbot, room)
    row = row_of(area, LimitId.TOO_SELDOM)
    with qtbot.waitSignal(area.area_wanted) as asked:
        press(qtbot, row.ways[0])
    assert asked.args == [PROGRAM]
    press(qtbot, row_of(area, LimitId.LOAD_INCOMPLETE).ways[0])
    assert area.parts.code == WEEK
    assert area.focusWidget() is area.week.all_recorded


def test_every_way_has_words_and_a_place(room: Room) -> None:
    inside = {WayKind.CLEARANCE, WayKind.PLANNER, WayKind.WEEK, WayKind.ACTIVITIES}
    acts = {WayKind.HOLD, WayKind.LIGHTER, WayKind.DELOAD, WayKind.DAY_OFF, WayKind.GROW}
    assert set(AREAS) | inside | acts == set(WayKind)
    for kind in WayKind:
        grows = VariableRange(Variable.SETS, 3, 4)
        way = Way(kind, position=Position(60_000, 8, 3), day=TODAY, weekday=2, grows=grows)
        assert way_text(way, Unit.KG, None)


def test_a_session_behind_a_caution_is_opened(qtbot: QtBot, room: Room) -> None:
    session = room.train(MONDAY, lambda one: replace(as_asked(one), pain=2))
    area = opened(qtbot, room)
    row = row_of(area, LimitId.PAIN)
    link = next(
        b for b in row.findChildren(QPushButton) if b.accessibleName().startswith("Session of")
    )
    with qtbot.waitSignal(area.session_wanted) as asked:
        press(qtbot, link)
    assert asked.args == [session.id]


# Setting aside


def test_a_caution_is_set_aside_with_its_reason_and_taken_up_again(
    qtbot: QtBot, room: Room
) -> None:
    area = opened(qtbot, room)
    row = row_of(area, LimitId.TOO_SELDOM)
    press(qtbot, row.aside)
    qtbot.keyClicks(row.reason, "the second day comes in January")
    qtbot.keyClick(row.reason, Qt.Key.Key_Return)
    assert LimitId.TOO_SELDOM not in limits_of(room)
    shown = texts(area.cautions)
    assert any(text.startswith("Trained less than twice a week") for text in shown)
    assert "Wed 9 Sept: the second day comes in January" in shown
    assert "stays aside" in shown
    again = next(
        b
        for b in area.cautions.findChildren(QPushButton)
        if b.accessibleName().startswith("Take up again")
    )
    press(qtbot, again)
    assert room.repository.dismissed(room.trainee_id) == ()
    assert LimitId.TOO_SELDOM in {row.caution.limit for row in area.cautions.rows}
    area.record.undo_stack.undo()
    assert len(room.repository.dismissed(room.trainee_id)) == 1


def test_what_was_set_aside_says_whether_it_still_holds(room: Room) -> None:
    caution = next(
        c
        for c in cautions(room.repository, room.trainee_id, TODAY)
        if c.limit is LimitId.TOO_SELDOM
    )
    room.save(dismissal(caution, room.trainee_id, TODAY - DAY, "known"))
    old = "line 1; before_g 60000; after_g 70000; over 0.2; day 2026-08-01"
    room.save(DismissedCaution(room.trainee_id, "load-step", old, TODAY - 30 * DAY, ""))
    found = set_aside(read_history(room.repository, room.trainee_id), TODAY)
    assert [(one.dismissed.limit, one.standing) for one in found] == [
        ("too-seldom", Standing.HOLDS),
        ("load-step", Standing.GONE),
    ]
    step = found[1].caution
    assert (step.line_id, step["before_g"], step["over"]) == (1, 60000, 0.2)
    assert str(step["day"]) == "2026-08-01"


def test_what_is_measured_anew_is_open_again_after_a_month(room: Room) -> None:
    room.train_weeks(1)
    later = MONDAY + 70 * DAY
    gap = next(
        c for c in cautions(room.repository, room.trainee_id, later) if c.limit is LimitId.GAP
    )
    room.save(dismissal(gap, room.trainee_id, later, "on holiday"))
    history = read_history(room.repository, room.trainee_id)
    assert [one.standing for one in set_aside(history, later + DAY)] == [Standing.HOLDS]
    assert [one.standing for one in set_aside(history, later + 28 * DAY)] == [Standing.BACK]


@pytest.mark.parametrize("line_id", [None, 7])
def test_evidence_is_read_back_as_it_was_written(room: Room, line_id: int | None) -> None:
    limits = read_history(room.repository, room.trainee_id).library.limits
    limit = limits[LimitId.TOO_CLOSE]
    evidence = (("pattern", "squat"), ("first", TODAY), ("second", TODAY + DAY), ("planned", False))
    caution = Caution(limit.id, limit.severity, evidence, limit.source, limit.proposal, line_id)
    kept = dismissal(caution, 1, TODAY, "")
    again = remembered(kept, limits)
    assert (again.evidence, again.line_id) == (evidence, line_id)
    assert evidence_key(again) == kept.evidence


def test_nothing_set_aside_teaches_what_it_means(qtbot: QtBot, room: Room) -> None:
    area = opened(qtbot, room)
    assert any(text.startswith("Nothing was set aside.") for text in texts(area.cautions))
    assert area.cautions.sentence.text() == "One caution is open."


# From the banner


def test_every_proposal_leads_to_a_work_area() -> None:
    keys = {entry.key for entry in WORK_AREAS}
    assert {screen_for(proposal) for proposal in Proposal} <= keys


@pytest.mark.parametrize(
    ("proposal", "part"),
    [
        (Proposal.PLAN_A_DELOAD, DELOAD),
        (Proposal.RECORD_ACTIVITIES, WEEK),
        (Proposal.VARY_THE_DAYS, WEEK),
        (Proposal.MOVE_A_DAY, CAUTIONS),
        (Proposal.CHOOSE_FOR_PAIN, CAUTIONS),
    ],
)
def test_the_area_takes_a_caution_up_in_its_part(
    qtbot: QtBot, room: Room, proposal: Proposal, part: str
) -> None:
    area = opened(qtbot, room)
    limits = read_history(room.repository, room.trainee_id).library.limits
    limit = next(each for each in limits.values() if each.proposal is proposal)
    area.take_up(Caution(limit.id, limit.severity, (), limit.source, limit.proposal))
    assert area.parts.code == part


def test_the_banners_action_opens_what_it_proposes(qtbot: QtBot, room: Room) -> None:
    room.train(MONDAY, red_flag=True)
    record = Record(room.repository)
    window = MainWindow(record, TODAY, Theme("light", calm=True), ForgottenSettings())
    qtbot.addWidget(window)
    with qtbot.waitExposed(window):
        window.show()
    window.roster.choose(room.trainee_id)
    caution = next(
        c for c in cautions(room.repository, room.trainee_id, TODAY) if c.limit is LimitId.RED_FLAG
    )
    window.banner.proposed.emit(caution)
    assert window.areas.key == LOAD
    area = window.areas.area
    assert isinstance(area, LoadArea)
    row = row_of(area, LimitId.RED_FLAG)
    assert row.form is not None
    assert window.focusWidget() is row.form.by
