"""Week and load: the week in words and bars, other activities typed, sixteen weeks by keyboard."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from desktop.planning.history import read_history
from desktop.planning.load import LoadHistory, load_history_of
from desktop.training.exercises import Muscle
from desktop.training.program import Program
from desktop.training.session import Activity, Wellness
from desktop.training.trainee import Absence, DeloadWindow
from tests.load_screen import load_area
from tests.strength_room import DAY, MONDAY, PROGRAM, WEEK, Room, closed, copy_of, open_room
from views.load_area import CAUTIONS, DELOAD, LoadArea
from views.load_texts import figures_of, load_text, sources_text, week_sentence, week_title
from views.load_weeks_layout import laid_out, least_column, week_rows
from views.load_weeks_painter import aside_word, average_points
from views.muscle_bars import muscle_sets
from views.record import Record
from views.theme import Theme
from views.work_areas import LOAD, SESSION, WORK_AREAS
from views.work_areas import PROGRAM as PROGRAM_AREA

pytestmark = pytest.mark.usefixtures("english", "qapp")  # fonts are measured

TODAY = MONDAY + 3 * WEEK + 4 * DAY  # a Friday in the fourth week
LONG = Program("Long", (replace(PROGRAM.phases[0], weeks=30),), deload_every=6)


@pytest.fixture
def room(tmp_path: Path) -> Room:
    return open_room(tmp_path, LONG)


@pytest.fixture(scope="module")
def trained_file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Three weeks and a day of training, made once and copied for each test."""
    folder = tmp_path_factory.mktemp("trained")
    room = open_room(folder, LONG)
    room.train_weeks(3)
    for session in room.repository.sessions(room.trainee_id):
        room.save(replace(session, effort=6, minutes=50))
    room.train(MONDAY + 3 * WEEK, effort=7, minutes=60, wellness=Wellness(3, 4, 4, 5))
    room.save(Activity(room.trainee_id, MONDAY + 3 * WEEK + DAY, "rowing outing", 90, 4))
    return closed(room, folder)


@pytest.fixture
def trained(trained_file: Path, tmp_path: Path) -> Iterator[Room]:
    with copy_of(trained_file, tmp_path) as room:
        yield room


def opened(qtbot: QtBot, room: Room, today: date = TODAY) -> LoadArea:
    return load_area(qtbot, room, today)


def loads(room: Room, today: date) -> LoadHistory:
    return load_history_of(read_history(room.repository, room.trainee_id), today)


def type_activity(qtbot: QtBot, area: LoadArea, name: str, minutes: str, effort: str) -> None:
    """Type an activity as from the keyboard, Return after each field."""
    area.week.activities.begin()
    row = area.week.activities.new
    for field, text in ((row.name, name), (row.day, ""), (row.minutes, minutes)):
        qtbot.keyClicks(field, text)
        qtbot.keyClick(field, Qt.Key.Key_Return)
    qtbot.keyClicks(row.effort, effort)
    qtbot.keyClick(row.effort, Qt.Key.Key_Return)


# The area


def test_the_area_stands_in_the_table_with_a_key() -> None:
    assert LOAD in [entry.key for entry in WORK_AREAS]


def test_parts_are_chosen_by_their_letters(qtbot: QtBot, trained: Room) -> None:
    area = opened(qtbot, trained)
    assert area.title.text() == "This week"
    for key, part, title in (
        (Qt.Key.Key_D, area.deload, "Deload"),
        (Qt.Key.Key_C, area.cautions, "Cautions"),
        (Qt.Key.Key_W, area.week, "This week"),
    ):
        area.week.weeks.setFocus() if part is area.week else area.parts.setFocus()
        qtbot.keyClick(area, key)
        assert area.stack.currentWidget() is part
        assert area.title.text() == title
    assert {DELOAD, CAUTIONS} < set(area.parts.codes)


# The week in words


def test_a_running_week_is_told_against_those_before_it(qtbot: QtBot, trained: Room) -> None:
    area = opened(qtbot, trained)
    assert area.week.sentence.text() == (
        "The load so far is 780; the weeks before had 900 on average."
    )
    figures = {f.name: f.value for f in figures_of(area.week.week)}  # type: ignore[arg-type]
    assert figures == {
        "Load": "780",
        "Monotony": "–",
        "Strain": "–",
        "Trend": "–",
        "Sessions": "1 of 3",
        "Hard sets": "6 of 14",
    }
    assert area.week.wellness.text() == (
        "Wellness, 1 bad to 5 good: sleep 3 · soreness 4 · stress 4 · motivation 5"
    )


@pytest.mark.parametrize(
    ("load", "words"),
    [
        (1800, "The week's load was 1800, twice as much"),
        (900, "The week's load was 900, as in the weeks before."),
        (630, "The week's load was 630, 30 % less than the weeks before (900)."),
        (1170, "The week's load was 1170, 30 % more than the weeks before (900)."),
    ],
)
def test_a_week_that_is_over_says_more_or_less(trained: Room, load: float, words: str) -> None:
    told = loads(trained, TODAY + WEEK)
    week = told.weeks[-2]
    changed = replace(week, load=replace(week.load, load=load))
    told = replace(told, weeks=(*told.weeks[:-2], changed, told.weeks[-1]))
    said = week_sentence(told, 14)
    if load == 1800:
        assert said == "The week's load was 1800, 100 % more than the weeks before (900)."
    else:
        assert said == words


def test_what_is_missing_is_said(qtbot: QtBot, trained: Room) -> None:
    trained.train(TODAY - 2 * DAY)
    trained.update_trainee(activities_recorded=False)
    area = opened(qtbot, trained)
    assert "at least 780" in area.week.sentence.text()
    assert "Incomplete: one session has no effort or no minutes." in area.week.sentence.text()
    assert "not every activity of Seat 2 is recorded" in area.week.sentence.text()
    assert figures_of(area.week.week)[0].value == "≥ 780"  # type: ignore[arg-type]
    assert [day.unrated for day in area.week.days.days][2] == 1
    assert not area.week.all_recorded.isChecked()


def test_every_figure_has_its_meaning_and_the_sources_are_readable(
    qtbot: QtBot, trained: Room
) -> None:
    area = opened(qtbot, trained)
    week = area.week.week
    assert week is not None
    assert all(figure.meaning.endswith(".") for figure in figures_of(week))
    assert "sample's" in figures_of(week, sample=True)[1].meaning
    assert area.week.sources.isHidden()
    area.week.why.setFocus()
    qtbot.keyClick(area.week.why, Qt.Key.Key_Space)
    assert area.week.sources.isVisible()
    for source in ("Foster 1998", "Williams 2017", "Impellizzeri 2021", "Schoenfeld 2017"):
        assert source in sources_text()


def test_a_new_trainee_is_told_what_to_do(qtbot: QtBot, room: Room) -> None:
    area = opened(qtbot, room)
    assert area.week.beginning.isVisible()
    assert not area.week.weeks.isVisible()
    with qtbot.waitSignal(area.area_wanted) as asked:
        area.week.start.click()
    assert asked.args == [SESSION]


def test_without_a_program_that_comes_first(qtbot: QtBot, room: Room) -> None:
    room.repository.remove(*room.repository.assignments(room.trainee_id))
    area = opened(qtbot, room)
    with qtbot.waitSignal(area.area_wanted) as asked:
        area.week.start.click()
    assert asked.args == [PROGRAM_AREA]


# Other activities


def test_an_activity_is_typed_and_undone(qtbot: QtBot, trained: Room) -> None:
    area = opened(qtbot, trained)
    type_activity(qtbot, area, "running", "40", "5,5")
    added = trained.repository.activities(trained.trainee_id)[-1]
    assert (added.name, added.day, added.minutes, added.effort) == ("running", TODAY, 40, 5.5)
    assert "1000" in area.week.sentence.text()
    assert area.week.activities.new.name.text() == ""
    qtbot.waitUntil(lambda: area.focusWidget() is area.week.activities.new.name)
    area.record.undo_stack.undo()
    assert len(trained.repository.activities(trained.trainee_id)) == 1
    assert len(area.week.activities.rows) == 2


def test_an_activity_is_changed_where_it_stands(qtbot: QtBot, trained: Room) -> None:
    area = opened(qtbot, trained)
    row = area.week.activities.rows[0]
    assert (row.name.text(), row.minutes.text(), row.effort.text()) == ("rowing outing", "90", "4")
    row.minutes.selectAll()
    qtbot.keyClicks(row.minutes, "60")
    qtbot.keyClick(row.minutes, Qt.Key.Key_Return)
    (activity,) = trained.repository.activities(trained.trainee_id)
    assert activity.minutes == 60
    area.record.undo_stack.undo()
    assert area.week.activities.rows[0].minutes.text() == "90"


def test_an_activity_is_removed_and_comes_back(qtbot: QtBot, trained: Room) -> None:
    area = opened(qtbot, trained)
    area.week.activities.rows[0].remove.setFocus()
    qtbot.keyClick(area.week.activities.rows[0].remove, Qt.Key.Key_Space)
    assert trained.repository.activities(trained.trainee_id) == ()
    area.record.undo_stack.undo()
    assert len(trained.repository.activities(trained.trainee_id)) == 1


def test_what_is_not_allowed_is_said_and_not_kept(qtbot: QtBot, trained: Room) -> None:
    area = opened(qtbot, trained)
    type_activity(qtbot, area, "running", "40", "12")
    assert "Allowed: 0 to 10." in area.week.activities.error.text()
    assert len(trained.repository.activities(trained.trainee_id)) == 1
    assert area.week.activities.new.name.text() == "running"


def test_an_activity_of_another_week_is_looked_at_there(qtbot: QtBot, trained: Room) -> None:
    area = opened(qtbot, trained)
    row = area.week.activities.new
    row.day.set_day(TODAY - WEEK)
    type_activity(qtbot, area, "running", "40", "5")
    assert area.week.at == 14
    assert [row.name.text() for row in area.week.activities.rows] == ["running", ""]


def test_what_is_recorded_is_said_here(qtbot: QtBot, trained: Room) -> None:
    area = opened(qtbot, trained)
    area.week.ask_what_is_recorded()
    qtbot.keyClick(area.week.all_recorded, Qt.Key.Key_Space)
    assert not trained.repository.trainee(trained.trainee_id).activities_recorded
    area.record.undo_stack.undo()
    assert area.week.all_recorded.isChecked()


def test_tab_goes_through_the_week_as_it_is_read(qtbot: QtBot, trained: Room) -> None:
    area = opened(qtbot, trained)
    week = area.week
    seen: list[QWidget] = []
    widget = week.why.nextInFocusChain()
    while widget is not None and widget is not week.why:
        if widget.isVisible() and widget.focusPolicy() & Qt.FocusPolicy.TabFocus:
            seen.append(widget)
        widget = widget.nextInFocusChain()
    row, new = week.activities.rows
    assert seen[:12] == [
        *row.fields, row.remove, *new.fields, week.all_recorded, week.numbers, week.weeks
    ]  # fmt: skip


# Sixteen weeks


def test_weeks_are_chosen_by_keys(qtbot: QtBot, trained: Room) -> None:
    area = opened(qtbot, trained)
    weeks = area.week.weeks
    weeks.setFocus()
    for key, at in (
        (Qt.Key.Key_Left, 14),
        (Qt.Key.Key_Home, 0),
        (Qt.Key.Key_Left, 0),
        (Qt.Key.Key_End, 15),
        (Qt.Key.Key_Right, 15),
    ):
        qtbot.keyClick(weeks, key)
        assert area.week.at == at
    control = Qt.KeyboardModifier.ControlModifier
    qtbot.keyClick(area, Qt.Key.Key_PageUp, control)
    assert area.title.text() == "Week from Mon 21 Sept"
    qtbot.keyClick(area, Qt.Key.Key_PageDown, control)
    assert area.title.text() == "This week"


def test_a_week_is_chosen_by_a_click(qtbot: QtBot, trained: Room) -> None:
    area = opened(qtbot, trained)
    layout = area.week.weeks.drawn
    assert layout is not None
    where = layout.cell(5, 13).center().toPoint()
    qtbot.mouseClick(area.week.weeks, Qt.MouseButton.LeftButton, pos=where)
    assert area.week.at == 13
    qtbot.mouseClick(area.week.weeks, Qt.MouseButton.LeftButton, pos=QPoint(2, 20))
    assert area.week.at == 13


def test_the_week_looked_at_stays_when_something_is_saved(qtbot: QtBot, trained: Room) -> None:
    area = opened(qtbot, trained)
    area.week.step(-2)
    area.record.save("Note", replace(trained.repository.trainee(trained.trainee_id), notes="hm"))
    assert area.week.at == 13


def test_the_table_shows_numbers_and_shades_by_them(trained: Room) -> None:
    told = loads(trained, TODAY)
    rows = {row.name: row for row in week_rows(told.weeks)}
    assert rows["load"].texts[-2:] == ("900", "780")
    assert rows["monotony"].texts[-2:] == ("0.87", "")  # 900/7 over sqrt(3·300²/7 - (900/7)²)
    assert rows["strain"].texts[-2:] == ("779", "")
    assert rows["sessions"].texts[-2:] == ("3/3", "1/3")
    quads = rows["quadriceps"]
    done = [week.sets_done.by_muscle.get(Muscle.QUADRICEPS, 0.0) for week in told.weeks]
    assert quads.texts[-2:] == ("6.5", "3")
    assert quads.texts[0] == ""
    assert quads.shades == tuple(sets / 10 for sets in done)
    assert rows["load"].shades == (None,) * 16


def test_as_many_weeks_are_shown_as_have_room_and_the_chosen_one_is_among_them(
    trained: Room,
) -> None:
    told = loads(trained, TODAY)
    theme = Theme("light", calm=True)
    rows = week_rows(told.weeks)
    wide = laid_out(theme, told, 15, rows, 1000)
    assert wide.seen == range(16)
    room = wide.left + 5.5 * least_column(theme)
    narrow = laid_out(theme, told, 15, rows, room)
    assert narrow.seen == range(11, 16)
    assert laid_out(theme, told, 3, rows, room).seen == range(3, 8)
    assert narrow.week_at(narrow.left + 1) == 11
    assert narrow.week_at(2) is None


def test_averages_are_drawn_where_their_values_are(trained: Room) -> None:
    told = loads(trained, TODAY)
    assert told.trend is not None
    layout = laid_out(Theme("light", calm=True), told, 15, week_rows(told.weeks), 1000)
    short, long = average_points(layout, 0.2)
    assert short.size() == long.size() == len(told.trend.days) == 26
    last = short.last()
    assert last.y() == pytest.approx(layout.plot.bottom() - 0.2 * told.trend.short[-1])
    assert layout.cell(0, 15).left() <= last.x() <= layout.cell(0, 15).right()


def test_weeks_say_in_a_word_what_was_special(trained: Room) -> None:
    first = MONDAY + WEEK
    trained.save(DeloadWindow(trained.trainee_id, first, first + 6 * DAY))
    trained.save(Absence(trained.trainee_id, MONDAY - WEEK, MONDAY - DAY))
    trained.train(TODAY - 2 * DAY)
    told = loads(trained, TODAY)
    assert [aside_word(week) for week in told.weeks[-5:]] == ["away", "", "deload", "", "in part"]
    assert week_title(told.weeks[-2], TODAY) == "Week from Mon 21 Sept"


def test_a_running_week_is_held_against_the_marks_by_what_is_planned(trained: Room) -> None:
    week = loads(trained, TODAY).weeks[-1]
    sets = {each.muscle: each for each in muscle_sets(week.sets_done, week.sets_planned)}
    assert sets[Muscle.QUADRICEPS].judged == 3
    assert sets[Muscle.QUADRICEPS].told == "3 of 6.5"
    coming = muscle_sets(week.sets_done, week.sets_planned, to_come=True)
    assert {each.muscle: each.judged for each in coming}[Muscle.QUADRICEPS] == 6.5


def test_days_to_come_and_days_left_out_are_told_apart(trained: Room) -> None:
    week = loads(trained, TODAY).weeks[-1]
    assert [day.planned for day in week.days] == [False, False, True, False, True, False, False]


# What is read aloud, and pictures


def test_pictures_have_words(qtbot: QtBot, trained: Room) -> None:
    area = opened(qtbot, trained)
    assert "Mon 28 Sept: 420 in sessions" in area.week.days.accessibleName()
    assert "360 in other activities" in area.week.days.accessibleName()
    assert "load 780" in area.week.weeks.accessibleName()
    assert "quadriceps 3 of 6.5" in area.week.muscles.accessibleName()


@pytest.mark.parametrize("percent", [100, 200])
@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_every_part_paints(qtbot: QtBot, trained: Room, scheme: str, percent: int) -> None:
    area = LoadArea(Record(trained.repository), TODAY, Theme(scheme, percent, calm=True))
    qtbot.addWidget(area)
    area.resize(900, 700)
    area.show_trainee(trained.trainee_id)
    with qtbot.waitExposed(area):
        area.show()
    for code in area.parts.codes:
        area.show_part(code)
        QApplication.processEvents()
        picture = area.grab().toImage()
        across, down = range(0, picture.width(), 7), range(0, picture.height(), 5)
        assert len({picture.pixel(x, y) for x in across for y in down}) > 2


def test_loads_are_whole_numbers() -> None:
    assert [load_text(value) for value in (0.4, 1234.5, 99.6)] == ["0", "1234", "100"]


def test_sessions_without_any_effort_still_make_a_picture(qtbot: QtBot, room: Room) -> None:
    room.train(MONDAY)
    area = opened(qtbot, room, MONDAY)
    area.grab()
    assert "at least 0" in area.week.sentence.text()
    assert [day.unrated for day in area.week.days.days][:2] == [1, 0]
