"""The notes screen by its keys: read, asked, corrected, taken over; nothing saved before."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QTextCharFormat
from pytestqt.qtbot import QtBot

from db.repository import Repository
from desktop.planning.noted import Alternative, Answer, Doubt, Span
from desktop.planning.session_draft import SessionDraft
from tests.scenario import TODAY, closed_club, copy_of
from tests.work_area_scene import Said, area_in_use
from views.notes_area import NotesArea
from views.notes_text import moved_answers
from views.record import MessageKind

pytestmark = pytest.mark.usefixtures("english")

CONTROL = Qt.KeyboardModifier.ControlModifier
TWO_DAYS = "2025-11-10\nback squat 3x5 60kg\n2025-11-12\nback squat 3x5 62,5kg\nblurgh\n"


@pytest.fixture(scope="module")
def shelved(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return closed_club(tmp_path_factory.mktemp("club"))


@pytest.fixture
def club(shelved: Path, tmp_path: Path) -> Iterator[Repository]:
    with copy_of(shelved, tmp_path) as club:
        yield club


@pytest.fixture
def said() -> Said:
    return []


@pytest.fixture
def area(qtbot: QtBot, club: Repository, said: Said) -> NotesArea:
    made = area_in_use(NotesArea, club, TODAY, said, qtbot)
    made.show_trainee(bow(club))
    return made


def bow(club: Repository) -> int:
    found = club.trainee_named("Bow")
    assert found is not None
    assert found.id is not None
    return found.id


def written(area: NotesArea, text: str) -> None:
    area.page.text.setPlainText(text)
    area.read()


def done(club: Repository, day: date) -> list[tuple[str, int, int | None]]:
    return [
        (part.exercise, each.load_g, each.reps)
        for session in club.session_on(bow(club), day)
        for part in session.lines
        for each in part.sets
    ]


def shapes(area: NotesArea) -> dict[str, QTextCharFormat.UnderlineStyle]:
    found = {}
    for mark in area.page.text.extraSelections():
        found[mark.cursor.selectedText()] = mark.format.underlineStyle()
    return found


def test_typing_is_read_after_a_moment(area: NotesArea, qtbot: QtBot) -> None:
    assert area.page.text.hasFocus()
    assert area.page.empty.isVisible()
    qtbot.keyClicks(area.page.text, "back squat 3x5 60kg")
    qtbot.waitUntil(lambda: area.noted is not None)
    assert area.page.proposal.names[0].text() == "Back squat"
    assert not area.page.empty.isVisible()


def test_read_doubtful_and_unread_words_differ_by_shape_and_word(area: NotesArea) -> None:
    written(area, "back squat 3x5 60kg\nblurgh bench press 8-10 40kg\n")
    found = shapes(area)
    styles = QTextCharFormat.UnderlineStyle
    assert found["3x5"] is styles.SingleUnderline
    assert found["blurgh"] is styles.DashUnderline
    assert styles.WaveUnderline in found.values()
    cursor = area.page.text.textCursor()
    cursor.setPosition(1)
    area.page.text.setTextCursor(cursor)
    assert area.page.place.text() == "here: read as an exercise"


def test_a_question_is_answered_by_a_digit(area: NotesArea, qtbot: QtBot) -> None:
    written(area, "bench press 8-10 40kg\n")
    question = area.question
    assert question is not None
    assert question.doubt is Doubt.RANGE
    assert not area.found.days
    qtbot.keyClick(area, Qt.Key.Key_F8)
    answers = area.page.asking.list
    assert answers.hasFocus()
    assert answers.accessibleName() == area.page.asking.said.text()
    qtbot.keyClick(answers, Qt.Key.Key_1)
    assert area.question is None
    assert area.found.days
    assert area.page.take.hasFocus()


def test_f8_goes_through_the_questions_and_round(area: NotesArea, qtbot: QtBot) -> None:
    written(area, "bench press 8-10 40kg\nback squat 5-6 60kg\n")
    assert area.page.asking.place.text() == "Question 1 of 2"
    qtbot.keyClick(area, Qt.Key.Key_F8)
    assert area.page.asking.place.text() == "Question 2 of 2"
    qtbot.keyClick(area.page.asking.list, Qt.Key.Key_F8)
    assert area.page.asking.place.text() == "Question 1 of 2"


def test_one_day_fills_the_session_form_and_saves_nothing(
    area: NotesArea, club: Repository, qtbot: QtBot
) -> None:
    drafts: list[SessionDraft] = []
    area.draft_wanted.connect(drafts.append)
    written(area, "2025-11-10\nback squat 3x5 60kg rir 2\n")
    assert area.page.take.text() == "Take over"
    qtbot.keyClick(area.page.text, Qt.Key.Key_Return, CONTROL)
    (draft,) = drafts
    assert draft.day == date(2025, 11, 10)
    squat = next(line for line in draft.lines if line.exercise == "back-squat")
    assert [(each.done, each.load, each.reserve) for each in squat.sets[:3]] == [
        ("5", "60", "2"), ("5", "60", "2"), ("5", "60", "2"),
    ]  # fmt: skip
    assert not club.session_on(bow(club), draft.day)
    assert area.page.text.toPlainText() == ""


def test_several_days_are_saved_as_one_step(
    area: NotesArea, club: Repository, qtbot: QtBot, said: Said
) -> None:
    written(area, TWO_DAYS)
    assert area.page.take.text() == "Save 2 sessions"
    area.page.take.setFocus()
    qtbot.keyClick(area.page.take, Qt.Key.Key_Space)
    assert done(club, date(2025, 11, 10)) == [("back-squat", 60_000, 5)] * 3
    assert done(club, date(2025, 11, 12)) == [("back-squat", 62_500, 5)] * 3
    assert said[-1] == ("Saved 6 sets on 2 days.", MessageKind.DONE.value)
    area.record.undo_stack.undo()
    assert not done(club, date(2025, 11, 10))
    area.record.undo_stack.redo()
    assert done(club, date(2025, 11, 12))


def test_what_is_on_record_is_not_taken_twice(area: NotesArea, club: Repository) -> None:
    written(area, TWO_DAYS)
    area.take_over()
    written(area, TWO_DAYS)
    assert not area.found.days
    assert area.found.there == 2
    assert not area.page.take.isEnabled()
    written(area, TWO_DAYS.replace("blurgh", "bench press 3x8 40kg"))
    assert [line.exercise.key for line in area.found.days[0].lines if line.exercise] == [
        "bench-press"
    ]
    area.take_over()  # the day has a session: it gets what it has not
    assert len(club.session_on(bow(club), date(2025, 11, 12))) == 1
    assert ("bench-press", 40_000, 8) in done(club, date(2025, 11, 12))


def test_a_corrected_exercise_is_remembered_for_the_trainee(
    area: NotesArea, club: Repository, qtbot: QtBot
) -> None:
    written(area, TWO_DAYS.replace("back squat", "the big one"))
    area.page.proposal.names[0].click()
    field = area.page.chooser.field
    assert field.hasFocus()
    qtbot.keyClicks(field, "back squat")
    qtbot.keyClick(field, Qt.Key.Key_Return)
    area.take_over()
    names = club.remembered_names(bow(club))
    assert [(each.text, each.exercise) for each in names] == [("the big one", "back-squat")]
    written(area, "the big one 3x5 60kg")
    assert area.question is None
    assert area.found.sets == 3


def test_a_draft_being_typed_is_not_written_over(area: NotesArea, said: Said) -> None:
    drafts: list[SessionDraft] = []
    area.draft_wanted.connect(drafts.append)
    for _ in range(2):
        written(area, "2025-11-10\nback squat 3x5 60kg\n")
        area.take_over()
    assert len(drafts) == 1
    assert "being typed" in said[-1][0]
    assert area.page.text.toPlainText()


def test_each_trainee_keeps_the_text(area: NotesArea, club: Repository) -> None:
    other = next(each.id for each in club.trainees() if each.name != "Bow")
    written(area, "back squat 3x5 60kg")
    area.show_trainee(other)
    assert area.page.text.toPlainText() == ""
    area.show_trainee(bow(club))
    assert area.page.text.toPlainText() == "back squat 3x5 60kg"


def test_a_text_file_is_opened_and_anything_else_refused(
    area: NotesArea, tmp_path: Path, said: Said
) -> None:
    (tmp_path / "notes.txt").write_bytes("back squat 3x5 60kg\r\n".encode("utf-16"))
    area.open_file(tmp_path / "notes.txt")
    assert area.found.sets == 3
    (tmp_path / "photo.txt").write_bytes(b"\x89PNG\0\0")
    area.open_file(tmp_path / "photo.txt")
    assert said[-1] == ("photo.txt is no text", MessageKind.ERROR.value)


def test_marks_stand_under_their_words_behind_an_emoji(area: NotesArea) -> None:
    written(area, "💪 back squat 3x5 60kg\n")
    assert "3x5" in shapes(area)


ANSWER = Answer(Doubt.RANGE, Span(10, 14), Alternative(load_g=1))


@pytest.mark.parametrize(
    ("old", "new", "start"),
    [
        ("0123456789abcdefg", "0123456789abcdefgh", 10),
        ("0123456789abcdefg", "x0123456789abcdefg", 11),
        ("0123456789abcdefg", "23456789abcdefg", 8),
        ("0123456789abcdefg", "0123456789abXcdefg", None),
        ("0123456789abcdefg", "", None),
    ],
)
def test_answers_stay_with_their_words(old: str, new: str, start: int | None) -> None:
    kept = moved_answers((ANSWER,), old, new)
    assert [each.span.start for each in kept] == ([] if start is None else [start])
