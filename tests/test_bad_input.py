"""Bad input by real keys: said beside the field with what is allowed, and nothing is lost."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QLineEdit
from pytestqt.qtbot import QtBot

from db.repository import Repository
from desktop.planning.session_draft import Field
from desktop.planning.typed_cells import Row
from desktop.planning.typed_session import CellPlace
from tests.keyboard import focused, strike, type_in
from tests.scenario import TODAY, closed_club, copy_of
from views.record import Record
from views.session_form import SessionForm
from views.theme import Scheme, Theme

KEY = Qt.Key
CTRL = Qt.KeyboardModifier.ControlModifier
BENCH, L_SIT = 0, 1

NUMBER = "Not a number: digits"
CELLS = (
    (BENCH, Row.DONE, "eight", NUMBER),
    (BENCH, Row.DONE, "12.5", "A whole number"),
    (BENCH, Row.DONE, "-3", "Allowed: 0 to 100"),
    (BENCH, Row.DONE, "900", "Allowed: 0 to 100"),
    (BENCH, Row.DONE, "1e9", NUMBER),
    (BENCH, Row.DONE, "8/7", "both sides work at once"),
    (BENCH, Row.DONE, "8 8", "No separators between thousands"),
    (L_SIT, Row.DONE, "1:75", NUMBER),
    (L_SIT, Row.DONE, "9000", "Allowed: 0 to 3600"),
    (L_SIT, Row.DONE, "-5 s", NUMBER),
    (BENCH, Row.LOAD, "heavy", NUMBER),
    (BENCH, Row.LOAD, "1e9 kg", NUMBER),
    (BENCH, Row.LOAD, "1000000000 kg", "Allowed: 0 to 1000"),
    (BENCH, Row.LOAD, "-20", "help is typed for bodyweight only"),
    (BENCH, Row.LOAD, "42.555", "At most 2 places"),
    (BENCH, Row.LOAD, "1,250.5", "No separators between thousands"),
    (BENCH, Row.LOAD, "135 lb", "that is 61.24"),
    (BENCH, Row.RESERVE, "-1", "Allowed: 0 to 10"),
    (BENCH, Row.RESERVE, "11", "Allowed: 0 to 10"),
    (BENCH, Row.RESERVE, "rpe", NUMBER),
    (BENCH, Row.PAIN, "11", "Allowed: 0 to 10"),
    (BENCH, Row.PAIN, "2.5", "A whole number"),
    (BENCH, Row.PAIN, "knee", NUMBER),
)
FIELDS = (
    (Field.EFFORT, "11", "Allowed: 0 to 10"),
    (Field.EFFORT, "hard", NUMBER),
    (Field.MINUTES, "1.5", "A whole number"),
    (Field.MINUTES, "-5", "Allowed: 0 to 600"),
    (Field.MINUTES, "9999", "Allowed: 0 to 600"),
    (Field.MASS, "5", "Allowed: 10 to 500"),
    (Field.MASS, "1e9", NUMBER),
    (Field.MASS, "150 lb", "that is 68.04"),
    (Field.SLEEP, "0", "Allowed: 1 to 5"),
    (Field.SORENESS, "6", "Allowed: 1 to 5"),
    (Field.STRESS, "bad", NUMBER),
    (Field.MOTIVATION, "-1", "Allowed: 1 to 5"),
    (Field.ACTIVITY_MINUTES, "2000", "Allowed: 1 to 1440"),
    (Field.ACTIVITY_EFFORT, "11", "Allowed: 0 to 10"),
)
DATES = (
    ("2027-01-01", "today at the latest"),
    ("32/13/2026", "Not a date"),
    ("tomorrow", "Not a date"),
)


@pytest.fixture(scope="module")
def club(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The club's file, made once."""
    return closed_club(tmp_path_factory.mktemp("club"), weeks=2)


@pytest.fixture
def repository(club: Path, tmp_path: Path, english: None) -> Iterator[Repository]:
    """A copy of the club."""
    with copy_of(club, tmp_path) as repository:
        yield repository


@pytest.fixture
def form(repository: Repository, qtbot: QtBot, qapp: QApplication) -> SessionForm:
    """Bow's Thursday: bench press in kilograms, and a hold."""
    theme = Theme(Scheme.LIGHT, calm=True)
    theme.apply(qapp)
    form = SessionForm(Record(repository), TODAY, theme)
    qtbot.addWidget(form)
    form.resize(1040, 760)
    with qtbot.waitExposed(form):
        form.show()
    form.activateWindow()
    bow = repository.trainee_named("Bow")
    assert bow is not None
    form.show_trainee(bow.id)
    return form


def of_day(form: SessionForm, day: date) -> int:
    assert form.trainee_id is not None
    return len(form.record.repository.session_on(form.trainee_id, day))


@pytest.mark.parametrize(("line", "row", "text", "said"), CELLS)
def test_a_cell_says_what_is_allowed_and_keeps_the_text(
    form: SessionForm, line: int, row: Row, text: str, said: str
) -> None:
    place = CellPlace(line, 0, row)
    strike(KEY.Key_F9)
    form.page.go_to(place)
    type_in(text)
    assert said in form.page.callout.text
    strike(KEY.Key_Return)
    assert form.page.place == place
    assert said in form.page.callout.text
    strike(KEY.Key_Return, modifier=CTRL)
    assert form.page.place == place
    assert of_day(form, TODAY) == 0
    field = focused()
    assert isinstance(field, QLineEdit)
    assert field.text() == text
    assert said in field.accessibleDescription()


@pytest.mark.parametrize(("field", "text", "said"), FIELDS)
def test_a_field_says_what_is_allowed_and_keeps_the_text(
    form: SessionForm, field: Field, text: str, said: str
) -> None:
    strike(KEY.Key_F9)
    foot = form.typing.foot
    foot.go_to(field)
    type_in(text)
    assert said in foot.callout.text
    strike(KEY.Key_Return, modifier=CTRL)
    if field not in (Field.ACTIVITY_MINUTES, Field.ACTIVITY_EFFORT):  # their name is missing, too
        assert focused() is foot.fields[field]
        assert said in foot.callout.text
    assert of_day(form, TODAY) == 0
    assert foot.fields[field].text() == text


@pytest.mark.parametrize(("text", "said"), DATES)
def test_a_day_says_what_is_allowed(form: SessionForm, text: str, said: str) -> None:
    strike(KEY.Key_D, modifier=CTRL)
    type_in(text)
    strike(KEY.Key_Return)
    if said == "today at the latest":  # the plan of a day to come may be read, not recorded
        strike(KEY.Key_F3)
        type_in("squat")
        strike(KEY.Key_Return)
        type_in("8")
        strike(KEY.Key_Return)
        type_in("60")
        strike(KEY.Key_Return, modifier=CTRL)
    assert said in form.heading._said().text
    assert form.trainee_id is not None
    sessions = form.record.repository.sessions(form.trainee_id)
    assert all(one.day < TODAY for one in sessions)


def test_an_unknown_exercise_is_said_beside_the_question(form: SessionForm) -> None:
    strike(KEY.Key_F3)
    type_in("zzqqxx")
    assert form.typing.choice.shown == ()
    assert "Nothing is called like that" in form.typing.choice.said
    strike(KEY.Key_Return)
    assert form.typing.choice.isVisible()
    assert form.draft is not None
    assert len(form.draft.lines) == 2


def test_a_load_pasted_in_the_other_unit_is_converted_when_return_comes_again(
    form: SessionForm,
) -> None:
    place = CellPlace(BENCH, 0, Row.LOAD)
    form.page.go_to(CellPlace(BENCH, 0, Row.DONE))
    type_in("9")
    form.page.go_to(place)
    QGuiApplication.clipboard().setText("135 lb")
    strike(KEY.Key_V, modifier=CTRL)
    assert "that is 61.24. Return again takes it" in form.page.callout.text
    strike(KEY.Key_Return)
    assert form.page.place == place
    strike(KEY.Key_Return)
    assert form.page.place != place
    assert form.draft is not None
    assert form.draft.lines[BENCH].sets[0].load == "61.24"


def test_a_value_far_from_what_was_asked_is_asked_about(form: SessionForm) -> None:
    form.page.go_to(CellPlace(BENCH, 0, Row.LOAD))
    type_in("425")
    assert "Return again if it is meant" in form.page.callout.text
    form.open_day(TODAY - timedelta(days=1))
    assert form.draft is not None
