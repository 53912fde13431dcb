"""Undo and redo over the real store: whole aggregates, the same identities, no silent overwrite."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from typing import Any

import pytest
from pytestqt.qtbot import QtBot

from db.changes import Changes, Kind
from db.database import Database
from db.log_files import read_log_text
from db.log_import import plan_import
from db.repository import Repository
from db.session_drafts import DraftKey, StoredDraft, drafts, keep_draft
from db.steps import finished
from desktop.catalogue import load_catalogue
from desktop.planning.taking_in import taking_in
from desktop.training.program import Line
from desktop.training.session import LineDone, Session, SetDone
from desktop.training.trainee import BodyMass, Trainee
from tests.test_everything import rows_of
from views.record import MessageKind, Record

DAY = date(2026, 11, 2)
LOGGED = {"session", "session_change"}
"""What tells that a session was corrected there and back: its revision, and the change log."""


@pytest.fixture
def record(qtbot: QtBot) -> Iterator[Record]:
    database = Database.open(":memory:")
    yield Record(Repository(database))
    database.close()


def saved(record: Record, text: str, aggregate: Any) -> Any:
    """Save one aggregate that must be accepted."""
    done = record.save(text, aggregate)
    assert done is not None
    return done[0]


def names(record: Record) -> list[str]:
    return [trainee.name for trainee in record.repository.trainees()]


def test_a_save_tells_every_screen_what_it_touched(record: Record) -> None:
    heard: list[Changes] = []
    record.changed.connect(heard.append)
    bow = saved(record, "Add Bow", Trainee("Bow"))
    assert heard[-1].kinds == {Kind.TRAINEE}
    assert heard[-1].trainees == {bow.id}
    record.undo_stack.undo()
    assert heard[-1].kinds == {Kind.TRAINEE}


def test_a_chain_of_edits_can_be_undone_and_redone_twice(record: Record) -> None:
    bow = saved(record, "Add Bow", Trainee("Bow"))
    saved(record, "Weigh Bow", BodyMass(bow.id, DAY, 68_500))
    renamed = saved(record, "Rename Bow", replace(bow, name="Bow seat"))
    saved(record, "Note on Bow", replace(renamed, notes="early riser"))
    for _ in range(2):
        for _ in range(4):
            record.undo_stack.undo()
        assert names(record) == []
        for _ in range(4):
            record.undo_stack.redo()
        trainee = record.repository.trainee(bow.id)
        assert (trainee.name, trainee.notes) == ("Bow seat", "early riser")
        assert [mass.mass_g for mass in record.repository.body_masses(bow.id)] == [68_500]


def test_the_undo_text_names_the_act(record: Record) -> None:
    saved(record, "Add Bow", Trainee("Bow"))
    assert record.undo_stack.undoText() == "Add Bow"


def test_what_went_with_a_removed_trainee_comes_back_with_the_same_identity(
    record: Record,
) -> None:
    bow = saved(record, "Add Bow", Trainee("Bow"))
    mass = saved(record, "Weigh Bow", BodyMass(bow.id, DAY, 68_500))
    assert record.remove("Remove Bow", bow)
    assert names(record) == []
    record.undo_stack.undo()
    assert record.repository.trainee(bow.id).name == "Bow"
    assert record.repository.body_masses(bow.id) == (mass,)
    record.undo_stack.redo()
    assert names(record) == []


def test_a_stale_save_is_refused_in_words_and_leaves_no_command(record: Record) -> None:
    bow = saved(record, "Add Bow", Trainee("Bow"))
    saved(record, "Rename Bow", replace(bow, name="Bow seat"))
    heard: list[tuple[str, str]] = []
    record.message.connect(lambda text, kind: heard.append((text, kind)))
    assert record.save("Rename Bow", replace(bow, name="Stern")) is None
    assert [kind for _, kind in heard] == [MessageKind.ERROR]
    assert record.undo_stack.count() == 2
    assert names(record) == ["Bow seat"]


def test_an_undo_never_overwrites_what_another_process_wrote(record: Record) -> None:
    bow = saved(record, "Add Bow", Trainee("Bow"))
    renamed = saved(record, "Rename Bow", replace(bow, name="Bow seat"))
    record.repository.save(replace(renamed, notes="from elsewhere"))
    record.undo_stack.undo()
    trainee = record.repository.trainee(bow.id)
    assert (trainee.name, trainee.notes) == ("Bow seat", "from elsewhere")
    assert record.undo_stack.count() == 1


def test_an_edit_after_another_process_does_not_hide_that_from_older_undos(
    record: Record,
) -> None:
    bow = saved(record, "Add Bow", Trainee("Bow"))
    renamed = saved(record, "Rename Bow", replace(bow, name="Bow seat"))
    (elsewhere,) = record.repository.save(replace(renamed, notes="from elsewhere")).saved
    saved(record, "Note aims", replace(elsewhere, aims="row"))
    record.undo_stack.undo()
    record.undo_stack.undo()
    trainee = record.repository.trainee(bow.id)
    assert (trainee.name, trainee.notes, trainee.aims) == ("Bow seat", "from elsewhere", "")


def test_several_writes_together_are_one_act(record: Record) -> None:
    with record.together("Add Bow with a body mass"):
        bow = saved(record, "Add Bow", Trainee("Bow"))
        saved(record, "Weigh Bow", BodyMass(bow.id, DAY, 68_500))
    assert record.undo_stack.count() == 1
    record.undo_stack.undo()
    assert names(record) == []
    record.undo_stack.redo()
    assert record.repository.body_masses(bow.id)


def test_the_coachs_settings_can_be_undone(record: Record) -> None:
    settings = record.repository.coach_settings()
    saved(record, "Deload every 5 weeks", replace(settings, deload_every_weeks=5))
    record.undo_stack.undo()
    assert record.repository.coach_settings().deload_every_weeks == settings.deload_every_weeks
    record.undo_stack.redo()
    assert record.repository.coach_settings().deload_every_weeks == 5


def test_what_was_being_typed_comes_back_with_a_removed_trainee(record: Record) -> None:
    bow, stroke = (saved(record, "Add", Trainee(name)) for name in ("Bow", "Stroke"))
    database = record.repository.database
    texts = {
        DraftKey(bow.id, DAY): "a",
        DraftKey(bow.id, DAY, 7): "b",
        DraftKey(stroke.id, DAY): "c",
    }
    for key, text in texts.items():
        keep_draft(database, StoredDraft(key, text, at_work=key.session_id is None))
    for _ in range(2):
        assert record.remove("Remove Bow", record.repository.trainee(bow.id))
        assert [each.key.trainee_id for each in drafts(database)] == [stroke.id]
        record.undo_stack.undo()
        assert {each.key: each.text for each in drafts(database)} == texts
    # nothing of the removed one stands in a form any more
    assert [each.at_work for each in drafts(database)] == [False, False, True]


def test_what_was_typed_for_somebody_new_comes_back_when_adding_is_done_again(
    record: Record,
) -> None:
    bow = saved(record, "Add Bow", Trainee("Bow"))
    keep_draft(record.repository.database, StoredDraft(DraftKey(bow.id, DAY), "a"))
    record.undo_stack.undo()
    assert drafts(record.repository.database) == ()
    record.undo_stack.redo()
    assert [each.text for each in drafts(record.repository.database)] == ["a"]


LOG = """trainee,date,exercise,set,load,unit,reps,effort,body_mass
Bow,2026-10-05,Back squat,1,60,kg,8,7,61.5
Bow,2026-10-05,Back squat,2,60,kg,8,,
Bow,2026-10-07,Bench press,1,40,kg,10,6,
Stroke,2026-10-05,Back squat,1,80,kg,5,,
"""


def test_what_a_file_brought_in_goes_and_comes_back_row_by_row(record: Record) -> None:
    repository = record.repository
    repository.sync_catalogue(load_catalogue())
    bow = saved(record, "Add Bow", Trainee("Bow"))
    line = saved(record, "A line", Line(bow.id, "back-squat"))
    squat = LineDone(line.id, "back-squat", sets=(SetDone(50_000, 10),))
    there = saved(record, "A session", Session(bow.id, date(2026, 10, 7), (squat,)))
    before = rows_of(repository.database)
    changes, stood = finished(taking_in(repository, plan_import(repository, read_log_text(LOG))))
    record.took("The log", changes, stood)
    after = rows_of(repository.database)
    assert len(after["set_done"]) == len(before["set_done"]) + 4
    for _ in range(2):
        record.undo_stack.undo()
        undone = rows_of(repository.database)
        assert {table for table in before if undone[table] != before[table]} == LOGGED
        assert repository.session(there.id).lines == there.lines
        record.undo_stack.redo()
        again = rows_of(repository.database)
        assert {table for table in after if again[table] != after[table]} == LOGGED
