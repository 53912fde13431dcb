"""Drafts in the data file: kept at every field, gone with saving, back after the program ended."""

from __future__ import annotations

import sqlite3
import time
from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from db.codec import from_text, to_text
from db.database import MEMORY, Database
from db.errors import FileBusy
from db.repository import Repository
from db.session_drafts import DraftKey, StoredDraft, keep_draft
from desktop.planning import kept_drafts
from desktop.planning.session_draft import Field, LineDraft, SessionDraft, SetDraft
from desktop.planning.typed_cells import Row
from desktop.planning.typed_session import CellPlace
from desktop.training.trainee import Trainee
from tests import strategies
from tests.keyboard import strike, type_in
from tests.scenario import TODAY, closed_club, copy_of
from views.gallery import ForgottenSettings
from views.main_window import MainWindow
from views.past_area import PastArea
from views.record import Record
from views.session_form import SessionForm
from views.theme import Scheme, Theme
from views.work_areas import PAST, SESSION

DAY = date(2026, 11, 23)
CTRL = Qt.KeyboardModifier.ControlModifier

sets = st.builds(
    SetDraft,
    strategies.texts,
    strategies.texts,
    asked=st.none() | strategies.asked_sets,
    was=st.lists(strategies.sets_done(), max_size=2).map(tuple),
    was_texts=strategies.tuples_of(strategies.texts, 4),
    variation=st.none() | strategies.keys,
)
lines = st.builds(
    LineDraft,
    strategies.keys,
    st.none() | st.integers(1, 9),
    strategies.texts,
    sets=st.lists(sets, max_size=3).map(tuple),
    note=strategies.texts,
)
drafts = st.builds(
    SessionDraft,
    st.integers(1, 9),
    strategies.days,
    lines=st.lists(lines, max_size=2).map(tuple),
    note=strategies.texts,
    red_flag=st.booleans(),
    session_id=st.none() | st.integers(1, 9),
)


@given(drafts)
def test_a_draft_is_read_as_it_was_written(draft: SessionDraft) -> None:
    assert from_text(to_text(draft), SessionDraft) == draft


@pytest.fixture
def store() -> Iterator[Repository]:
    with closing(Database.open(MEMORY)) as database:
        repository = Repository(database)
        repository.save(Trainee("Bow"), Trainee("Stroke"))
        yield repository


def test_one_draft_is_kept_of_each_session_and_day(store: Repository) -> None:
    first = SessionDraft(1, DAY, note="one")
    for draft in (
        first,
        first.with_field(Field.NOTE, "two"),
        replace(first, session_id=7),
        replace(first, day=DAY + timedelta(days=1)),
        replace(first, trainee_id=2),
    ):
        kept_drafts.keep(store, draft)
    assert len(kept_drafts.all_kept(store)) == 4
    assert len(kept_drafts.all_kept(store, 1)) == 3
    found = kept_drafts.kept(store, first)
    assert found is not None
    assert found.note == "two"
    kept_drafts.drop(store, first)
    assert kept_drafts.kept(store, first) is None
    store.remove(store.trainee(2))
    assert len(kept_drafts.all_kept(store)) == 2


def test_the_draft_that_stood_in_the_form_is_known(store: Repository) -> None:
    draft = SessionDraft(1, DAY, note="typed")
    assert kept_drafts.at_work(store) is None
    kept_drafts.keep(store, draft, at_work=True)
    assert kept_drafts.at_work(store) == draft
    kept_drafts.keep(store, draft)
    assert kept_drafts.at_work(store) is None


def test_what_another_version_wrote_is_left_alone(store: Repository) -> None:
    key = DraftKey(1, DAY)
    for text in ("{}", "[]", '{"trainee_id": "x"}', to_text(SessionDraft(2, DAY))):
        keep_draft(store.database, StoredDraft(key, text, at_work=True))
        assert kept_drafts.kept(store, SessionDraft(1, DAY)) is None
        assert kept_drafts.at_work(store) is None
        assert len(store.database.execute("SELECT * FROM session_draft")) == 1


def test_keeping_never_waits_for_another_process(tmp_path: Path) -> None:
    path = tmp_path / "data.db"
    with closing(Database.open(path)) as database:
        repository = Repository(database)
        trainee = repository.save(Trainee("Bow")).saved[0]
        draft = SessionDraft(trainee.id, DAY, note="typed")
        with closing(sqlite3.connect(path, isolation_level=None)) as other:
            other.execute("BEGIN IMMEDIATE")
            began = time.perf_counter()
            with pytest.raises(FileBusy):
                kept_drafts.keep(repository, draft)
            assert time.perf_counter() - began < 1
            other.execute("ROLLBACK")
        kept_drafts.keep(repository, draft)
        assert database.execute("PRAGMA synchronous") == [(2,)]
        assert database.execute("PRAGMA busy_timeout") == [(5000,)]


# In the form and the window


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
def theme(qapp: QApplication) -> Theme:
    theme = Theme(Scheme.LIGHT, calm=True)
    theme.apply(qapp)
    return theme


def shown_form(repository: Repository, theme: Theme, qtbot: QtBot) -> SessionForm:
    form = SessionForm(Record(repository), TODAY, theme)
    qtbot.addWidget(form)
    with qtbot.waitExposed(form):
        form.show()
    form.activateWindow()
    bow = repository.trainee_named("Bow")
    assert bow is not None
    form.show_trainee(bow.id)
    return form


def test_every_field_is_in_the_file_when_the_next_begins(
    repository: Repository, theme: Theme, qtbot: QtBot
) -> None:
    shown_form(repository, theme, qtbot)
    for number, text in enumerate(("12", "10", "9"), start=1):
        type_in(text)
        strike(Qt.Key.Key_Return)
        (kept,) = kept_drafts.all_kept(repository)
        assert [s.done for s in kept.lines[0].sets[:number]] == ["12", "10", "9"][:number]
    assert kept_drafts.at_work(repository) is not None
    for _ in range(3):  # each cell is one step back
        strike(Qt.Key.Key_Z, modifier=CTRL)
    assert kept_drafts.all_kept(repository) == ()


def test_within_a_field_it_follows_soon(repository: Repository, theme: Theme, qtbot: QtBot) -> None:
    form = shown_form(repository, theme, qtbot)
    form.typing.foot.go_to(Field.NOTE)
    type_in("slept badly")

    def is_kept() -> None:
        (kept,) = kept_drafts.all_kept(repository)
        assert kept.note == "slept badly"

    qtbot.waitUntil(is_kept, timeout=2_000)


def test_a_file_that_is_busy_is_told_once_and_written_later(
    repository: Repository, theme: Theme, qtbot: QtBot
) -> None:
    form = shown_form(repository, theme, qtbot)
    said: list[str] = []
    form.record.message.connect(lambda text, _kind: said.append(text))
    with closing(sqlite3.connect(repository.database.path, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        type_in("12")
        strike(Qt.Key.Key_Return)
        type_in("10")
        strike(Qt.Key.Key_Return)
        assert len(said) == 1
        other.execute("ROLLBACK")
    qtbot.waitUntil(lambda: len(kept_drafts.all_kept(repository)) == 1, timeout=3_000)
    (kept,) = kept_drafts.all_kept(repository)
    assert [each.done for each in kept.lines[0].sets[:2]] == ["12", "10"]


def test_saving_takes_the_draft_away_and_undo_brings_it_back(
    repository: Repository, theme: Theme, qtbot: QtBot
) -> None:
    form = shown_form(repository, theme, qtbot)
    strike(Qt.Key.Key_F9)
    assert len(kept_drafts.all_kept(repository)) == 1
    strike(Qt.Key.Key_Return, modifier=CTRL)
    assert form.showing_outcomes
    assert kept_drafts.all_kept(repository) == ()
    form.record.undo_stack.undo()
    assert len(kept_drafts.all_kept(repository)) == 1
    form.record.undo_stack.redo()
    assert kept_drafts.all_kept(repository) == ()


def test_the_window_opens_where_the_program_was_ended(
    repository: Repository, theme: Theme, qtbot: QtBot
) -> None:
    form = shown_form(repository, theme, qtbot)
    day = TODAY - timedelta(days=10)
    form.open_day(day)
    form.page.go_to(CellPlace(0, 0, Row.DONE))
    type_in("7")
    typed = form.draft
    window = MainWindow(Record(repository), TODAY, theme, ForgottenSettings())
    qtbot.addWidget(window)
    window.show()
    again = window.areas.area
    assert window.areas.key == SESSION
    assert isinstance(again, SessionForm)
    assert again.draft == typed
    window.close()
    assert kept_drafts.at_work(repository) is None
    assert len(kept_drafts.all_kept(repository)) == 1


def test_a_draft_that_was_left_is_listed_with_the_past(
    repository: Repository, theme: Theme, qtbot: QtBot
) -> None:
    form = shown_form(repository, theme, qtbot)
    type_in("7")
    form.leave()
    window = MainWindow(Record(repository), TODAY, theme, ForgottenSettings())
    qtbot.addWidget(window)
    window.show()
    window.roster.choose(form.trainee_id)
    window.show_area(PAST)
    area = window.areas.area
    assert isinstance(area, PastArea)
    row = area.table.past.rows[0]
    assert (row.session_id, row.note) == (None, "not saved yet")
    area.table.selectRow(0)
    area.open_session()
    shown = window.areas.area
    assert isinstance(shown, SessionForm)
    assert shown.draft == form.draft


def test_what_is_typed_goes_and_comes_with_the_trainee(
    repository: Repository, theme: Theme, qtbot: QtBot
) -> None:
    record = Record(repository)
    window = MainWindow(record, TODAY, theme, ForgottenSettings())
    qtbot.addWidget(window)
    with qtbot.waitExposed(window):
        window.show()
    window.activateWindow()
    bow = repository.trainee_named("Bow")
    assert bow is not None
    window.roster.choose(bow.id)
    window.show_area(SESSION)
    type_in("7")
    strike(Qt.Key.Key_Return)
    said: list[str] = []
    record.message.connect(lambda text, _kind: said.append(text))
    for _ in range(2):  # removed while the form stands there, and again
        assert record.remove("Remove Bow", repository.trainee(bow.id or 0))
        assert kept_drafts.all_kept(repository) == ()
        record.undo_stack.undo()
        window.roster.choose(bow.id)
        form = window.areas.area
        assert isinstance(form, SessionForm)
        assert form.draft is not None
        assert form.draft.lines[0].sets[0].done == "7"
    assert said == []
