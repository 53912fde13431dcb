"""Goals and days away, typed by real keys: what is stored, what is refused, what it changes."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from desktop.catalogue import load_catalogue
from desktop.planning.absences import next_session
from desktop.planning.goals import kinds_of, maximum_of
from desktop.planning.history import read_history
from desktop.planning.progress import progress
from desktop.training.position import ScaledVariation, Surroundings
from desktop.training.quantities import Unit
from desktop.training.reasons import ReasonCode
from desktop.training.trainee import Absence, AbsenceKind, Goal, GoalKind
from tests.strength_room import DAY, MONDAY, WEEK, Room, closed, copy_of, open_room
from views.absence_texts import absence_text
from views.goal_texts import goal_text
from views.progress_area import ProgressArea
from views.record import Record
from views.theme import Theme
from views.trainee_form import TraineeForm

pytestmark = pytest.mark.usefixtures("english")

TODAY = MONDAY + 3 * WEEK  # a Monday with the squat in the program
CTRL = Qt.KeyboardModifier.ControlModifier
CATALOGUE = {each.key: each for each in load_catalogue()}


@pytest.fixture(scope="module")
def trained_file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("goals")
    room = open_room(folder)
    room.train_weeks(3)
    room.repository.sync_catalogue(CATALOGUE.values())
    return closed(room, folder)


@pytest.fixture
def room(trained_file: Path, tmp_path: Path) -> Iterator[Room]:
    with copy_of(trained_file, tmp_path) as room:
        yield room


def opened(qtbot: QtBot, room: Room, today: date = TODAY) -> TraineeForm:
    form = TraineeForm(Record(room.repository), today, Theme("light", calm=True))
    qtbot.addWidget(form)
    form.resize(1064, 776)
    form.show_trainee(room.trainee_id)
    with qtbot.waitExposed(form):
        form.show()
    form.activateWindow()
    return form


def focus() -> QWidget:
    widget = QApplication.focusWidget()
    assert widget is not None
    return widget


def write(*texts: str) -> None:
    """Type texts, each with Return after it."""
    for text in texts:
        for letter in text:
            QTest.keyClick(focus(), letter)  # type: ignore[call-overload]
        QTest.keyClick(focus(), Qt.Key.Key_Return)


def pick(widget: QWidget, letter: str) -> None:
    """Choose from a list by its first letter."""
    widget.setFocus()
    QTest.keyClick(widget, letter)  # type: ignore[call-overload]


def button(parent: QWidget, spoken: str) -> QPushButton:
    found = [each for each in parent.findChildren(QPushButton) if each.accessibleName() == spoken]
    assert len(found) == 1, [each.accessibleName() for each in parent.findChildren(QPushButton)]
    return found[0]


def said(parent: QWidget) -> str:
    """Every text that is seen."""
    QApplication.processEvents()
    shown = [label.text() for label in parent.findChildren(QLabel) if label.isVisibleTo(parent)]
    return "\n".join(shown).replace("\N{NO-BREAK SPACE}", " ")


# Days away


def test_an_illness_is_typed_by_keys_and_undone(qtbot: QtBot, room: Room) -> None:
    form = opened(qtbot, room)
    form.begin_absence()
    assert focus() is form.absences.form.kind
    QTest.keyClick(focus(), "i")  # type: ignore[call-overload]
    QTest.keyClick(focus(), Qt.Key.Key_Tab)
    write("7/9/2026", "11/9/2026", "a cold")
    (absence,) = room.repository.absences(room.trainee_id)
    assert (absence.kind, absence.first, absence.last, absence.note) == (
        AbsenceKind.ILLNESS, MONDAY, MONDAY + 4 * DAY, "a cold",
    )  # fmt: skip
    assert "ill, Mon 7 Sept \N{EN DASH} Fri 11 Sept (5 days)" in said(form.absences)
    assert focus() is form.absences.form.kind  # the next one can be typed
    assert form.absences.form.first.text() == ""
    form.record.undo_stack.undo()
    assert room.repository.absences(room.trainee_id) == ()
    assert "None on record" in said(form.absences)
    form.record.undo_stack.redo()
    assert len(room.repository.absences(room.trainee_id)) == 1


@pytest.mark.parametrize(
    ("typed", "why"),
    [
        (("", "", ""), "Needed: the first day, such as 28/09/2026."),
        (("soon",), "Not a date: write it like 28/09/2026 or 2026-09-28."),
        (("31/2",), "Not a date"),
        (("10/9/2026", "9/9/2026", ""), "The last day is 10/09/2026 at the earliest"),
        (("19/9/2026", "", ""), "On record already: away, Sun 20 Sept."),
    ],
)
def test_days_away_that_cannot_be_are_refused_beside_the_field(
    qtbot: QtBot, room: Room, typed: tuple[str, ...], why: str
) -> None:
    day = date(2026, 9, 20)
    room.save(Absence(room.trainee_id, day, day))
    form = opened(qtbot, room)
    absences = form.absences.form
    absences.first.setFocus()
    write(*typed)
    assert why in absences.error.text()
    assert len(room.repository.absences(room.trainee_id)) == 1
    assert focus() in (absences.first, absences.last)


def test_a_journey_ahead_says_at_once_what_the_next_session_asks(qtbot: QtBot, room: Room) -> None:
    form = opened(qtbot, room)
    assert not form.absences.effect.isVisibleTo(form.absences)
    form.absences.form.first.setFocus()
    write(TODAY.isoformat(), (TODAY + 20 * DAY).isoformat(), "boat camp")
    text = "Next session: Mon 19 Oct."
    qtbot.waitUntil(lambda: text in said(form.absences), timeout=3_000)
    # 28 days, of which the 7 of the program's deload do not count
    assert "Back squat: 21 days since the last time: the last again." in said(form.absences)
    found = next_session(read_history(room.repository, room.trainee_id), TODAY)
    assert found.day == MONDAY + 6 * WEEK
    assert [gap.reason.code for gap in found.gaps] == [ReasonCode.GAP_REPEAT]
    assert "Days away, ill or injured count as days without training" in said(form.absences)


def test_days_away_with_sessions_on_record_are_told_so(qtbot: QtBot, room: Room) -> None:
    form = opened(qtbot, room)
    heard: list[str] = []
    form.record.message.connect(lambda text, _kind: heard.append(text))
    form.absences.form.first.setFocus()
    write(MONDAY.isoformat(), MONDAY.isoformat(), "")
    assert "A session of these days is on record; it counts as ever." in heard[-1]


def test_days_away_are_changed_ended_and_removed(qtbot: QtBot, room: Room) -> None:
    away = room.save(Absence(room.trainee_id, TODAY - 5 * DAY, None, AbsenceKind.INJURY))
    form = opened(qtbot, room)
    text = absence_text(away, TODAY)
    assert text == "injured since Wed 23 Sept"
    button(form.absences, f"Change: {text}").click()
    typing = form.absences.form
    assert focus() is typing.first
    assert typing.kind.choice is AbsenceKind.INJURY
    QTest.keyClick(focus(), Qt.Key.Key_Escape)
    assert typing.changed_one is None
    button(form.absences, f"Back since today: {text}").click()
    (ended,) = room.repository.absences(room.trainee_id)
    assert ended.last == TODAY - DAY
    button(form.absences, f"Change: {absence_text(ended, TODAY)}").click()
    write("24/9/2026", "", "")
    (changed,) = room.repository.absences(room.trainee_id)
    assert (changed.first, changed.last) == (date(2026, 9, 24), TODAY - DAY)
    button(form.absences, f"Remove: {absence_text(changed, TODAY)}").click()
    assert room.repository.absences(room.trainee_id) == ()
    for _ in range(3):
        form.record.undo_stack.undo()
    assert room.repository.absences(room.trainee_id)[0].last is None


def test_what_is_being_typed_stays_when_something_else_changes(qtbot: QtBot, room: Room) -> None:
    form = opened(qtbot, room)
    form.absences.form.first.setFocus()
    QTest.keyClicks(focus(), "10/9/2026")
    form.goals.form.load.setText("100")
    form.record.save("note", room.repository.trainee(room.trainee_id))
    room.update_trainee(notes="x")
    form.refresh()
    assert form.absences.form.first.text() == "10/9/2026"
    assert form.goals.form.load.text() == "100"


# Goals


def test_a_load_for_repetitions_is_typed_by_keys_and_undone(qtbot: QtBot, room: Room) -> None:
    form = opened(qtbot, room)
    form.begin_goal()
    assert focus() is form.goals.form.line
    while form.goals.form.line.currentText() != "Bench press":
        QTest.keyClick(focus(), Qt.Key.Key_Down)
    QTest.keyClick(focus(), Qt.Key.Key_Tab)
    assert focus() is form.goals.form.load
    write("62,5", "5", "1/3/2027", "with a pause")
    (goal,) = room.repository.goals(room.trainee_id)
    assert goal.line_id == room.line_id("bench-press")
    assert (goal.kind, goal.value, goal.reps, goal.by, goal.note) == (
        GoalKind.ONE_REP_MAX, 62_500, 5, date(2027, 3, 1), "with a pause",
    )  # fmt: skip
    text = "Bench press: 5 \N{MULTIPLICATION SIGN} 62.5 kg by Mon 1 Mar 2027"
    assert text in said(form.goals)
    qtbot.waitUntil(lambda: "That is an estimated maximum of" in said(form.goals), timeout=3_000)
    assert focus() is form.goals.form.line
    form.record.undo_stack.undo()
    assert room.repository.goals(room.trainee_id) == ()
    assert "None set." in said(form.goals)


def test_a_goal_of_an_exercise_without_a_line_makes_the_line_in_one_act(
    qtbot: QtBot, room: Room
) -> None:
    form = opened(qtbot, room)
    typing = form.goals.form
    typing.line.setFocus()
    QTest.keyClick(typing.line, Qt.Key.Key_End)
    assert typing.line.currentText() == "another exercise…"
    QTest.keyClick(focus(), Qt.Key.Key_Tab)
    assert focus() is typing.finder
    write("pull up")
    assert typing.aimed_at is not None
    assert typing.aimed_at.exercise.key == "pull-up"
    assert focus() is typing.kind
    pick(typing.kind, "a")
    assert typing.kind.currentText() == "added load"
    typing.load.setFocus()
    write("20", "3")
    typing.note.setFocus()
    QTest.keyClick(focus(), Qt.Key.Key_Return)
    (goal,) = room.repository.goals(room.trainee_id)
    assert (goal.kind, goal.value, goal.reps) == (GoalKind.ONE_REP_MAX, 20_000, 3)
    assert room.repository.line(goal.line_id).exercise == "pull-up"
    form.record.undo_stack.undo()
    assert room.repository.goals(room.trainee_id) == ()
    assert room.repository.line_of(room.trainee_id, "pull-up") is None


@pytest.mark.parametrize(
    ("kind", "typed", "why"),
    [
        ("back-squat", ("",) * 4, "Needed: a load above 0."),
        ("back-squat", ("heavy",), "Not a number"),
        ("back-squat", ("1e9",), "Not a number"),
        ("back-squat", ("100000",), "Allowed: 0 to 1000."),
        ("back-squat", ("100", "900"), "Allowed: 1 to 100."),
        ("back-squat", ("100", "5", "1/9/2026", ""), "This day is over: from 28/09/2026 on"),
        ("l-sit", ("",) * 3, "Needed: 1 to 3600 seconds."),
        ("l-sit", ("-5",), "Allowed: 1 to 3600."),
    ],
)
def test_goals_that_cannot_be_are_refused_beside_the_field(
    qtbot: QtBot, room: Room, kind: str, typed: tuple[str, ...], why: str
) -> None:
    form = opened(qtbot, room)
    typing = form.goals.form
    aimed = next(one for one in typing._lines if one.exercise.key == kind and not one.name)
    typing.line.choose(aimed)
    typing._take_line()
    (typing.seconds if kind == "l-sit" else typing.load).setFocus()
    write(*typed[:-1]) if len(typed) > 2 else write(*typed)
    if len(typed) > 2:
        typing.note.setFocus()
        QTest.keyClick(focus(), Qt.Key.Key_Return)
    assert why in typing.error.text()
    assert room.repository.goals(room.trainee_id) == ()


def test_a_goal_is_changed_and_removed(qtbot: QtBot, room: Room) -> None:
    goal = room.save(Goal(room.trainee_id, room.line_id("l-sit"), GoalKind.HOLD, 30, "full"))
    form = opened(qtbot, room)
    (name,) = [each.name for each in CATALOGUE["l-sit"].variations if each.key == "full"]
    text = goal_text(goal, "L-sit", Unit.KG, {"full": name}, TODAY)
    button(form.goals, f"Change: {text}").click()
    typing = form.goals.form
    assert focus() is typing.seconds
    assert typing.variation.choice == "full"
    QTest.keyClicks(focus(), "20")
    QTest.keyClick(focus(), Qt.Key.Key_Return)
    typing.save.click()
    (changed,) = room.repository.goals(room.trainee_id)
    assert (changed.value, changed.variation, changed.id) == (20, "full", goal.id)
    text = goal_text(changed, "L-sit", Unit.KG, {"full": name}, TODAY)
    button(form.goals, f"Remove: {text}").click()
    assert room.repository.goals(room.trainee_id) == ()
    form.record.undo_stack.undo()
    assert room.repository.goals(room.trainee_id)[0].value == 20


def test_pounds_are_typed_and_shown_for_ever(qtbot: QtBot, room: Room) -> None:
    room.update_trainee(unit=Unit.LB)
    form = opened(qtbot, room)
    typing = form.goals.form
    aimed = next(one for one in typing._lines if one.exercise.key == "bench-press")
    typing.line.choose(aimed)
    typing.load.setFocus()
    write("135")
    typing.save.click()
    assert "Bench press: 135 lb" in said(form.goals)
    (goal,) = room.repository.goals(room.trainee_id)
    assert goal.value == 61_235
    assert goal.reps is None


def test_a_goal_set_at_the_chart_is_drawn_and_forecast_at_once(qtbot: QtBot, room: Room) -> None:
    area = ProgressArea(Record(room.repository), TODAY, Theme("light", calm=True))
    qtbot.addWidget(area)
    area.resize(1064, 776)
    area.show_trainee(room.trainee_id)
    with qtbot.waitExposed(area):
        area.show()
    area.activateWindow()
    qtbot.waitUntil(lambda: area.block is not None)
    assert area.block is not None
    while area.lines.line_id != room.line_id("back-squat"):
        area.lines.step(1)
    area.block.chart.setFocus()
    QTest.keyClick(area.block.chart, Qt.Key.Key_G)
    assert focus() is area.goal_here.form.load
    write("80", "", "", "")
    assert not area.goal_here.panel.isVisible()
    assert focus() is area.block.chart
    assert area.block.chart.series is not None
    assert [value for value, _ in area.block.chart.series.goals] == [80.0]
    assert "80 kg" in area.statement.text()
    area.record.undo_stack.undo()
    assert area.block.chart.series.goals == ()
    QTest.keyClick(area.block.chart, Qt.Key.Key_G)
    QTest.keyClick(focus(), Qt.Key.Key_Escape)
    assert focus() is area.block.chart


# What a goal asks


def test_each_exercise_has_its_kinds_of_goals() -> None:
    def kinds(key: str) -> tuple[GoalKind, ...]:
        return kinds_of(CATALOGUE[key])

    assert kinds("back-squat") == (GoalKind.ONE_REP_MAX,)
    assert kinds("l-sit") == (GoalKind.HOLD, GoalKind.VARIATION)
    assert kinds("push-up") == (GoalKind.REPS, GoalKind.ONE_REP_MAX, GoalKind.VARIATION)


def goal(value: int, reps: int | None, kind: GoalKind = GoalKind.ONE_REP_MAX) -> Goal:
    return Goal(1, 1, kind, value, reps=reps)


def test_the_maximum_of_a_goal_is_reckoned_from_load_and_repetitions() -> None:
    weights = Surroundings()
    assert maximum_of(goal(100_000, None), weights, None, "") == 100_000
    assert maximum_of(goal(100_000, 1), weights, None, "") == 100_000
    assert maximum_of(goal(90_000, 10), weights, None, "epley") == pytest.approx(120_000)
    assert maximum_of(goal(90_000, 40), weights, None, "") is None  # no equation reaches so far
    assert maximum_of(goal(0, None), weights, None, "") is None
    assert maximum_of(goal(20, None, GoalKind.REPS), weights, None, "") is None
    hanging = Surroundings(
        scale=(ScaledVariation("hang", "", 1.0),), body_mass_g=70_000, bodyweight=True
    )
    assert maximum_of(goal(20_000, 1), hanging, "hang", "") == 90_000
    assert maximum_of(goal(20_000, 1), hanging, None, "") is None


def test_a_goal_for_repetitions_is_reached_when_its_maximum_is(room: Room) -> None:
    line_id = room.line_id("back-squat")
    room.save(Goal(room.trainee_id, line_id, GoalKind.ONE_REP_MAX, 75_000, reps=5))
    room.save(Goal(room.trainee_id, line_id, GoalKind.ONE_REP_MAX, 86_000))
    shown = progress(room.repository, line_id, TODAY)
    by_reps, plain = shown.goals
    assert by_reps.maximum_g == pytest.approx(86_000, rel=0.02)
    assert plain.maximum_g == 86_000


def test_while_an_illness_goes_on_it_is_told_what_a_return_today_would_mean(
    qtbot: QtBot, room: Room
) -> None:
    room.save(Absence(room.trainee_id, TODAY - 6 * DAY, None, AbsenceKind.ILLNESS))
    history = read_history(room.repository, room.trainee_id)
    found = next_session(history, TODAY)
    assert found.if_back
    form = opened(qtbot, room)
    text = "Nothing is expected until the return; back today, the next session is Mon 28 Sept."
    qtbot.waitUntil(lambda: text in said(form.absences), timeout=3_000)
    assert "No gap changes what is asked." in said(form.absences)
