"""Erased for good: nothing of a trainee is left in the file, its log, its copies."""

from __future__ import annotations

import os
import shutil
from contextlib import closing
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path

import pytest

from db.backup import back_up_on_closing
from db.copies import copies_of
from db.database import Database
from db.erasing import Mention, erase_trainee
from db.errors import CannotWrite, FileBusy
from db.repository import Repository
from db.restoring import backups_in, restore
from db.session_drafts import DraftKey, StoredDraft, keep_draft
from desktop.catalogue import load_catalogue
from desktop.planning.desk import row_of
from desktop.planning.history import read_library
from desktop.planning.starters import starters
from desktop.training.equipment import Bar, Equipment
from desktop.training.position import Position, ProgressionRule, Variable, VariableRange
from desktop.training.program import (
    Assignment,
    Line,
    LineStart,
    Override,
    RuleRevision,
    WeekdaysFrom,
)
from desktop.training.session import Activity, AskedSet, LineDone, Session, SetDone
from desktop.training.table_mapping import TableMapping
from desktop.training.trainee import (
    Absence,
    AbsenceKind,
    BodyMass,
    Clearance,
    DeloadWindow,
    DismissedCaution,
    EquipmentFrom,
    Goal,
    GoalKind,
    RememberedName,
    Trainee,
)

TODAY = date(2026, 3, 2)
NAME = "Zoë Quillington"
TRACES = ("Zoë Quillington".encode(), b"Quillington", b"torn meniscus", b"half-typed ache")
SHARED = {
    "file_fact", "coach_settings", "exercise", "muscle_share", "variation",
    "program", "phase", "training_day", "slot",
}  # fmt: skip
"""Tables that are about nobody."""


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A closed file with two people, backups, and what was kept before restoring."""
    with closing(Database.open(tmp_path / "club.db")) as database:
        repository = Repository(database)
        repository.sync_catalogue(load_catalogue())
        for name in (NAME, "Bo"):
            trainee = repository.save(Trainee(name, notes=f"torn meniscus of {name}")).saved[0]
            line = repository.save(Line(trainee.id, "back-squat")).saved[0]
            repository.save(BodyMass(trainee.id, TODAY, 70_000))
            done = LineDone(line.id, "back-squat", sets=(SetDone(60_000, 8, note=name),))
            session = repository.save(Session(trainee.id, TODAY, (done,), note=name)).saved[0]
            repository.save(replace(session, note=f"{name}: torn meniscus"))
            keep_draft(
                database, StoredDraft(DraftKey(trainee.id, TODAY), f"half-typed ache {name}")
            )
        bo = repository.trainee_named("Bo")
        assert bo is not None
        repository.save(replace(bo, notes="the left hip"))
        for session in repository.sessions(2):
            lines = tuple(replace(done, sets=(SetDone(60_000, 8),)) for done in session.lines)
            repository.save(replace(session, lines=lines, note="fine"))
        database.execute("UPDATE session_change SET before = NULL WHERE trainee_id = 2")
        database.execute("UPDATE session_draft SET value = '' WHERE trainee_id = 2")
        for days in range(3):
            back_up_on_closing(database, tmp_path / "backups", TODAY + timedelta(days=days))
    backup = backups_in(tmp_path / "backups")[0].path
    restore(tmp_path / "club.db", backup, TODAY)
    return tmp_path / "club.db"


def files_with_traces(folder: Path) -> list[str]:
    files = [file for file in folder.rglob("*") if file.is_file()]
    return sorted(file.name for file in files if any(t in file.read_bytes() for t in TRACES))


def copies(path: Path) -> tuple[Path, ...]:
    return copies_of(path, path.parent / "backups")


def names_in(path: Path) -> list[str]:
    with closing(Database.open(path)) as database:
        assert database.quick_check() == []
        return [one.name for one in Repository(database).trainees(archived=True)]


def test_nothing_is_left_in_file_log_and_copies(path: Path) -> None:
    listed = copies(path)
    assert len(listed) == 4
    assert len(files_with_traces(path.parent)) == 5
    erased = erase_trainee(path, listed, 1, NAME)
    assert set(erased.rewritten) == set(listed)
    assert (erased.removed, erased.left, erased.mentions) == ((), (), ())
    assert files_with_traces(path.parent) == []
    for file in (path, *listed):
        assert names_in(file) == ["Bo"]
    with closing(Database.open(path)) as database:
        (session,) = Repository(database).sessions(2)
        assert session.lines[0].sets[0].load_g == 60_000


def test_of_a_whole_life_nothing_is_left_in_any_table(tmp_path: Path) -> None:
    """Everything that can be on record of somebody, the name in every text of it."""
    path = tmp_path / "club.db"
    with closing(Database.open(path)) as database:
        repository = Repository(database)
        repository.sync_catalogue(load_catalogue())
        who = repository.save(Trainee("Bo"), whole_person()).saved[1].id
        whole_life(repository, who)
        row_of(repository, read_library(repository), who, TODAY)  # a brief is drawn up and kept
        before = rows_by_table(database)
        back_up_on_closing(database, tmp_path / "backups", TODAY)
        crashed = tmp_path / "crashed"
        crashed.mkdir()
        for name in ("club.db", "club.db-wal"):
            shutil.copy(path.with_name(name), crashed)
    dated = before.keys() - SHARED
    assert {table for table in dated if not before[table]} == set()  # one of everything
    for file in (path, crashed / "club.db"):
        erased = erase_trainee(file, copies_of(file, tmp_path / "backups"), who, NAME)
        assert erased.mentions == ()
    assert files_with_traces(tmp_path) == []
    with closing(Database.open(path)) as database:
        assert database.quick_check() == []
        after = rows_by_table(database)
        assert {table for table in dated if after[table]} == {"trainee"}
        assert [one.name for one in Repository(database).trainees(archived=True)] == ["Bo"]
        (mapping,) = Repository(database).coach_settings().tables
        assert mapping == TableMapping("club", trainee="", names=(("squats", "back-squat"),))


def rows_by_table(database: Database) -> dict[str, int]:
    listed = "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'"
    return {
        table: database.execute(f"SELECT count(*) FROM {table}")[0][0]
        for (table,) in database.execute(listed)
    }


def whole_person() -> Trainee:
    return Trainee(
        NAME,
        aims=f"{NAME} wants to row",
        avoid=f"torn meniscus of {NAME}",
        clearances=(Clearance(TODAY, f"the doctor of {NAME}", "torn meniscus"),),
        notes=NAME,
    )


def whole_life(repository: Repository, who: int) -> None:
    """One of everything, and traces in each of it that holds text."""
    start = TODAY - timedelta(days=28)
    starts = (LineStart(start, Position(60_000, 8, 3)),)
    line = repository.save(
        Line(
            who,
            "back-squat",
            f"heavy {NAME}",
            (RuleRevision(start, ProgressionRule((VariableRange(Variable.LOAD),))),),
            starts,
            (Override(start, Position(62_500, 8, 3), f"{NAME} felt strong"),),
        )
    ).saved[0]
    program = repository.save(starters()[0].program).saved[0]
    moves = (WeekdaysFrom(start + timedelta(days=14), (1, 4)),)
    sets = (SetDone(60_000, 8, pain=3, note=f"torn meniscus, {NAME}"),)
    done = LineDone(line.id, "back-squat", (AskedSet(60_000, 8),), sets, reason=NAME, note=NAME)
    session = repository.save(
        Session(who, TODAY, (done,), note=NAME, day_name=NAME),
        Activity(who, TODAY, f"rowing with {NAME}", 60, 5.0),
        BodyMass(who, TODAY, 70_000),
        EquipmentFrom(who, start, Equipment(bars=(Bar(f"bar of {NAME}", 20_000),))),
        Assignment(who, program.id, start, moves=moves),
        DeloadWindow(who, TODAY, TODAY + timedelta(days=6), note=NAME),
        Absence(who, start, start, AbsenceKind.INJURY, "torn meniscus"),
        Goal(who, line.id, GoalKind.ONE_REP_MAX, 90_000, note=f"for {NAME}", reps=5),
        DismissedCaution(who, "gap", NAME, TODAY, f"{NAME} was away"),
        RememberedName(who, f"squat of {NAME}", "back-squat"),
    ).saved[0]
    repository.save(replace(session, note=f"{NAME}, corrected"))
    keep_draft(repository.database, StoredDraft(DraftKey(who, TODAY), f"half-typed ache {NAME}"))
    names = (("Zoe Q.", NAME), ("squats", "back-squat"))
    tables = (TableMapping("club", trainee=NAME, names=names),)
    repository.save(replace(repository.coach_settings(), tables=tables))


def test_removing_alone_leaves_traces_in_the_copies(path: Path) -> None:
    """Why erasing is more than removing: a check of the search itself."""
    with closing(Database.open(path)) as database:
        Repository(database).remove(Repository(database).trainee(1))
    assert len(files_with_traces(path.parent)) >= 4


def test_what_a_crash_left_in_the_log_goes_too(path: Path, tmp_path: Path) -> None:
    crashed = tmp_path / "crashed"
    crashed.mkdir()
    with closing(Database.open(path)) as database:
        zoe = Repository(database).trainee(1)
        Repository(database).save(replace(zoe, notes="torn meniscus, again"))
        for name in ("club.db", "club.db-wal"):
            shutil.copy(path.with_name(name), crashed)
    (crashed / "club.db.99999999.unfinished").write_bytes(TRACES[0])
    erase_trainee(crashed / "club.db", (), 1, NAME)
    assert files_with_traces(crashed) == []
    assert names_in(crashed / "club.db") == ["Bo"]


def test_a_copy_from_before_a_new_name_is_known_by_the_number(path: Path) -> None:
    with closing(Database.open(path)) as database:
        zoe = Repository(database).trainee(1)
        Repository(database).save(replace(zoe, name="Zoe"))
    erase_trainee(path, copies(path), 1, "Zoe")
    assert files_with_traces(path.parent) == []


def test_a_damaged_copy_is_removed_because_it_cannot_be_rewritten(path: Path) -> None:
    damaged = path.with_name("club.damaged-2026-03-02.db")
    damaged.write_bytes(path.read_bytes()[:20_000])
    shutil.copyfile(path, f"{damaged}-wal")
    erased = erase_trainee(path, copies(path), 1, NAME)
    assert erased.removed == (damaged,)
    assert files_with_traces(path.parent) == []


def test_copies_without_the_trainee_are_left_as_they_are(path: Path) -> None:
    erase_trainee(path, copies(path), 1, NAME)
    before = [copy.read_bytes() for copy in copies(path)]
    assert erase_trainee(path, copies(path), 1, NAME).rewritten == ()
    assert [copy.read_bytes() for copy in copies(path)] == before


def test_a_name_in_the_texts_of_others_is_told_and_left(path: Path) -> None:
    with closing(Database.open(path)) as database:
        bo = Repository(database).trainee(2)
        Repository(database).save(replace(bo, notes=f"trains with {NAME}"))
    erased = erase_trainee(path, copies(path), 1, NAME)
    assert erased.mentions == (Mention("trainee", "notes", 2),)


def test_while_it_is_open_elsewhere_nothing_is_erased(path: Path) -> None:
    with closing(Database.open(path)), pytest.raises(FileBusy):
        erase_trainee(path, (), 1, NAME)
    assert NAME in names_in(path)


def test_a_full_disk_leaves_every_file_as_it_was(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def no_space(_path: Path) -> None:
        raise OSError(28, "No space left on device")

    with monkeypatch.context() as patched:
        patched.setattr("db.files.write_through", no_space)
        with pytest.raises(CannotWrite):
            erase_trainee(path, copies(path), 1, NAME)
    for file in (path, *copies(path)):
        assert NAME in names_in(file)


def test_a_file_with_a_passphrase_keeps_it(path: Path) -> None:
    pytest.importorskip("sqlcipher3")
    from db.passphrases import change_passphrase

    secret = "three wet oars"
    change_passphrase(path, copies(path), "", secret)
    erased = erase_trainee(path, copies(path), 1, NAME, secret)
    assert len(erased.rewritten) == 4
    for file in (path, *copies(path)):
        with closing(Database.open(file, passphrase=secret)) as database:
            assert [one.name for one in Repository(database).trainees()] == ["Bo"]
        assert b"SQLite" not in file.read_bytes()[:16]


def test_the_copies_stay_private(path: Path) -> None:
    erase_trainee(path, copies(path), 1, NAME)
    if os.name == "posix":
        assert all(file.stat().st_mode & 0o77 == 0 for file in (path, *copies(path)))
