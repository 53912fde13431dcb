"""Everything out and in again is the same, record by record; what does not fit is refused whole."""

from __future__ import annotations

import csv
import json
import os
import re
from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from db.database import MEMORY, Database
from db.errors import CannotWrite, InvalidRecord, StoreError
from db.everything import (
    Everything,
    fill,
    of_trainee,
    read_everything,
    read_file,
    write_file,
)
from db.json_files import InvalidFile
from db.repository import Repository
from db.session_drafts import DraftKey, StoredDraft, keep_draft
from desktop import demo
from desktop.catalogue import load_catalogue
from desktop.training.program import WeekdaysFrom
from desktop.training.session import Activity
from desktop.training.trainee import (
    Absence,
    AbsenceKind,
    DeloadWindow,
    DismissedCaution,
    Goal,
    GoalKind,
    RememberedName,
    Trainee,
)
from tests import strategies
from tests.test_command_line import FORMATS, Line, example, line  # noqa: F401
from tests.test_repository import a_world, full_record

TODAY = date(2026, 11, 30)


def rows_of(database: Database) -> dict[str, list[tuple[Any, ...]]]:
    """Every row of every table, except what is drawn up from them or belongs to this build."""
    tables = [
        row[0]
        for row in database.execute(
            "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'"
        )
    ]
    return {
        table: sorted(database.execute(f"SELECT * FROM {table}"), key=repr)
        for table in tables
        if table not in ("brief", "file_fact")
    }


def check_round_trip(database: Database, path: Path) -> Everything:
    content = read_everything(database)
    write_file(content, path)
    assert read_file(path) == content
    with closing(Database.open(MEMORY)) as fresh:
        fill(fresh, read_file(path))
        assert rows_of(fresh) == rows_of(database)
        assert fresh.quick_check() == []
        write_file(read_everything(fresh), path.with_name("again.json"))
    assert path.with_name("again.json").read_bytes() == path.read_bytes()
    return content


@pytest.fixture
def demo_data() -> Iterator[Database]:
    with closing(Database.open(MEMORY)) as database:
        repository = Repository(database)
        repository.sync_catalogue(load_catalogue())
        demo.fill(repository, TODAY)
        yield database


def test_the_demo_comes_back_row_by_row(demo_data: Database, tmp_path: Path) -> None:
    content = check_round_trip(demo_data, tmp_path / "all.json")
    assert len(content.sessions) > 50
    raw = json.loads((tmp_path / "all.json").read_text(encoding="utf-8"))
    assert raw["schema"] == "rungwise everything"
    if os.name == "posix":
        assert (tmp_path / "all.json").stat().st_mode & 0o77 == 0


def test_one_of_everything_comes_back_row_by_row(tmp_path: Path) -> None:
    with a_world() as world:
        full_record(world)
        first = world.repository.sessions(world.trainee_id)[0]
        world.repository.save(first)
        keep_draft(
            world.repository.database,
            StoredDraft(DraftKey(world.trainee_id, TODAY), '{"note": "half ty'),
        )
        world.saved(Trainee("Gone", archived=True))
        world.repository.save(world.repository.coach_settings())
        content = check_round_trip(world.repository.database, tmp_path / "all.json")
    assert all(getattr(content, name) for name in content.__dataclass_fields__)


@given(st.data())
@strategies.examples(0.3)
def test_whatever_the_store_takes_comes_back_row_by_row(
    tmp_path_factory: pytest.TempPathFactory, data: st.DataObject
) -> None:
    with a_world() as world:
        sessions = data.draw(
            st.lists(strategies.sessions(world.trainee_id, world.line_exercises), max_size=3)
        )
        others = data.draw(
            st.tuples(
                strategies.exercises(),
                strategies.programs(["squat", "press"]),
                strategies.trainees.filter(lambda one: one.name != "Ada"),
                strategies.equipment_from(world.trainee_id),
                strategies.coach_settings,
            )
        )
        world.repository.save(*sessions, *others)
        check_round_trip(
            world.repository.database, tmp_path_factory.mktemp("all") / "everything.json"
        )


def test_an_empty_file_comes_back_empty(tmp_path: Path) -> None:
    with closing(Database.open(MEMORY)) as database:
        assert check_round_trip(database, tmp_path / "all.json") == Everything()


def test_shipped_exercises_give_way_but_records_do_not(tmp_path: Path) -> None:
    with a_world() as world, closing(Database.open(MEMORY)) as fresh:
        full_record(world)
        content = read_everything(world.repository.database)
        Repository(fresh).sync_catalogue(load_catalogue())
        fill(fresh, content)
        assert rows_of(fresh) == rows_of(world.repository.database)
        with pytest.raises(InvalidRecord, match="records in the data file already"):
            fill(fresh, content)
        assert rows_of(fresh) == rows_of(world.repository.database)


def broken(content: dict[str, Any], *path: Any, value: Any) -> dict[str, Any]:
    place: Any = content
    for part in path[:-1]:
        place = place[part]
    place[path[-1]] = value
    return content


@pytest.mark.parametrize(
    ("path", "value", "said"),
    [
        (("sessions", 0, "trainee_id"), 99, "no trainee with the number 99"),
        (("sessions", 0, "lines", 0, "exercise"), "nothing", "no exercise called 'nothing'"),
        (("sessions", 0, "lines", 0, "sets", 0, "pain"), 11, "pain"),
        (("sessions", 1, "id"), 1, "already there"),
        (("trainees", 0, "name"), "", "name"),
        (("trainees", 0, "id"), "one", r"\$\.trainees\[0\]\.id"),
        (("trainees", 0, "nmae"), "Bow", "unknown field `nmae`"),
        (("goals", 0, "line_id"), 77, "no line"),
        (("version",), 9, "update the program"),
    ],
)
def test_what_does_not_go_together_is_refused_whole(
    tmp_path: Path, path: tuple[Any, ...], value: Any, said: str
) -> None:
    file = tmp_path / "all.json"
    with a_world() as world:
        full_record(world)
        write_file(read_everything(world.repository.database), file)
    file.write_text(json.dumps(broken(json.loads(file.read_text()), *path, value=value)))
    with closing(Database.open(MEMORY)) as fresh:
        before = rows_of(fresh)
        with pytest.raises((InvalidFile, StoreError), match=said):
            fill(fresh, read_file(file))
        assert rows_of(fresh) == before


@pytest.mark.parametrize("deep", ["[" * 100_000, '{"a":' * 100_000])
def test_a_file_nested_too_deep_is_refused(tmp_path: Path, deep: str) -> None:
    (tmp_path / "deep.json").write_text(deep)
    with pytest.raises(InvalidFile, match=r"deep\.json: this is no JSON"):
        read_file(tmp_path / "deep.json")


def test_a_file_too_large_is_refused_unread(tmp_path: Path) -> None:
    with (tmp_path / "large.json").open("wb") as file:
        file.truncate(1_000_000_001)
    with pytest.raises(InvalidFile, match="too large"):
        read_file(tmp_path / "large.json")


def test_a_file_that_cannot_be_written_leaves_nothing(tmp_path: Path) -> None:
    with pytest.raises(CannotWrite):
        write_file(Everything(), tmp_path / "nowhere" / "all.json")


# One person


def test_what_is_given_to_one_person_holds_nobody_else(demo_data: Database) -> None:
    everything = read_everything(demo_data)
    one, *others = everything.trainees
    own = of_trainee(everything, one.id or 0)
    assert own.trainees == (one,)
    assert own.sessions
    assert {record.trainee_id for record in own.records if hasattr(record, "trainee_id")} == {
        one.id
    }
    assert 0 < len(own.exercises) < len(everything.exercises)
    assert own.settings is None
    with closing(Database.open(MEMORY)) as fresh:
        fill(fresh, own)
        assert fresh.quick_check() == []
    text = repr(own)
    assert not any(other.name in text for other in others if len(other.name) > 4)


# The command line


def test_all_goes_out_and_into_a_new_file(line: Line, tmp_path: Path) -> None:  # noqa: F811
    assert line("demo", "--date", "2026-11-30").code == 0
    out = line("export-all", tmp_path / "all.json")
    assert re.search(r"\d+ trainees, \d+ sessions written to", out.out)
    old, line.database = line.database, tmp_path / "new.db"
    assert "taken into" in line("import-all", tmp_path / "all.json").out
    with closing(Database.open(line.database)) as there, closing(Database.open(old)) as here:
        assert rows_of(there) == rows_of(here)
    assert line("check").code == 0
    again = line("import-all", tmp_path / "all.json")
    assert again.code == 1
    assert "Name a new data file" in again.err


def test_a_bad_file_leaves_no_data_file_behind(line: Line, tmp_path: Path) -> None:  # noqa: F811
    bad = tmp_path / "bad.json"
    bad.write_text(
        '{"schema": "rungwise everything", "version": 1, "lines": [{"trainee_id": 1,'
        ' "exercise": "x", "id": 1}]}'
    )
    line.database = tmp_path / "new.db"
    answer = line("import-all", bad)
    assert answer.code == 1
    assert [path.name for path in tmp_path.glob("new*")] == []


def test_a_person_gets_their_data(line: Line, tmp_path: Path) -> None:  # noqa: F811
    line("demo", "--date", "2026-11-30")
    with closing(Database.open(line.database)) as database:
        trainee = next(t for t in Repository(database).trainees() if t.id == 1)
    assert line("export-trainee", "--trainee", trainee.name, "--out", tmp_path / "for").code == 0
    own = read_file(tmp_path / "for" / "everything.json")
    assert own.trainees == (trainee,)
    with (tmp_path / "for" / "training-log.csv").open(newline="", encoding="utf-8-sig") as file:
        names = {row["trainee"] for row in csv.DictReader(file)}
    assert names == {trainee.name}


def test_the_example_on_the_formats_page_is_taken(tmp_path: Path) -> None:
    (tmp_path / "all.json").write_text(example("rungwise everything"), encoding="utf-8")
    with closing(Database.open(MEMORY)) as fresh:
        fill(fresh, read_file(tmp_path / "all.json"))
        assert Repository(fresh).sessions(1)[0].lines[0].sets[0].reps == 5


def test_every_list_stands_on_the_formats_page() -> None:
    page = FORMATS[FORMATS.index("## Everything") : FORMATS.index("## Cases")]
    named = set(re.findall(r"`([a-z_]+)`", page))
    assert named >= set(Everything.__dataclass_fields__)


def test_one_person_is_given_every_row_that_is_left_when_all_others_are_removed(
    demo_data: Database, tmp_path: Path
) -> None:
    """The demo, and beside it one of everything that it does not hold."""
    repository = Repository(demo_data)
    who, *others = repository.trainees()
    assert who.id is not None
    squat, (given, *_) = repository.lines(who.id)[0], repository.assignments(who.id)
    assert squat.id is not None
    (session, *_) = repository.sessions(who.id)
    moves = (WeekdaysFrom(TODAY, (1, 3, 5)),)
    repository.save(
        replace(given, moves=moves),
        replace(session, note="corrected"),
        Goal(who.id, squat.id, GoalKind.ONE_REP_MAX, 90_000, note="by spring", reps=5),
        Absence(who.id, TODAY, None, AbsenceKind.INJURY, "a knee"),
        DeloadWindow(who.id, TODAY, TODAY, note="an easy day"),
        DismissedCaution(who.id, "gap", "21", TODAY, "was away"),
        RememberedName(who.id, "sq", squat.exercise),
        Activity(who.id, TODAY, "rowing", 60, 5.0),
    )
    keep_draft(demo_data, StoredDraft(DraftKey(who.id, TODAY), '{"note": "half ty'))
    write_file(of_trainee(read_everything(demo_data), who.id), tmp_path / "own.json")
    own = read_file(tmp_path / "own.json")
    assert moves in [one.moves for one in own.assignments]
    assert [one.reps for one in own.goals if one.reps] == [5]
    repository.remove(*others)
    with closing(Database.open(MEMORY)) as fresh:
        fill(fresh, own)
        given_to_them, left = rows_of(fresh), rows_of(demo_data)
    shared = {
        "coach_settings", "exercise", "muscle_share", "variation",
        "program", "phase", "training_day", "slot",
    }  # fmt: skip
    for table in left.keys() - shared:
        assert given_to_them[table] == left[table], table
