"""Noted training: from free text to what the record would take, and names that are remembered."""

from __future__ import annotations

import json
from collections.abc import Sequence
from datetime import date
from pathlib import Path

import pytest

from db.database import Database
from db.repository import Repository
from desktop.command_line import main
from desktop.planning.days import DayPlan
from desktop.planning.noted import (
    Alternative,
    Doubt,
    Noted,
    ProposedLine,
    corrections,
    read_noted,
    remembered,
)
from desktop.planning.program_weeks import ProgramWeeks
from desktop.planning.report import TraineeReport
from desktop.training.program import Line
from desktop.training.session import Session, SetDone
from desktop.training.trainee import Trainee
from tests.strength_room import DAY, MONDAY, Room, open_room
from views import reason_texts


@pytest.fixture
def room(tmp_path: Path) -> Room:
    return open_room(tmp_path)


def noted(room: Room, text: str) -> Noted:
    return read_noted(room.repository, room.trainee_id, text, MONDAY + DAY)


def lines(room: Room, text: str) -> list[ProposedLine]:
    return [line for day in noted(room, text).days for line in day.lines]


def test_notes_propose_what_the_record_takes(room: Room) -> None:
    (line,) = lines(room, "push ups 12/10/9 on the chair, 2 rir, wrist pain 2/10, rest 90s")
    assert line.line is not None
    assert line.line.id == room.line_id("push-up")
    assert line.ready
    done = line.line_done(room.line_id("push-up"))
    assert done.sets == (
        SetDone(0, 12, variation="hands-450", rir=2.0),
        SetDone(0, 10, variation="hands-450", rir=2.0),
        SetDone(0, 9, variation="hands-450", rir=2.0, pain=2),
    )
    assert done.note == "pain 2/10; rest 90s"
    room.save(Session(room.trainee_id, MONDAY + DAY, (done,)))


def test_a_variation_that_is_not_named_is_the_one_last_trained(room: Room) -> None:
    room.train(MONDAY)
    trained = room.repository.sessions(room.trainee_id)[-1]
    part = next(part for part in trained.lines if part.exercise == "push-up")
    (line,) = lines(room, "push ups 12/10/9")
    assert {one.done.variation for one in line.sets if one.done} == {part.sets[-1].variation}
    assert {one.read.variation for one in line.sets} == {None}


def test_nothing_is_saved_by_reading(room: Room) -> None:
    before = list(room.repository.database.execute("select count(*) from sqlite_sequence"))
    token = room.repository.database.execute("select total_changes()")
    noted(room, "squat 3x5 100kg\npush ups 12/10/9\nthe thing 3x8 20kg")
    assert room.repository.database.execute("select total_changes()") == token
    assert list(room.repository.database.execute("select count(*) from sqlite_sequence")) == before


def test_what_is_missing_cannot_be_recorded(room: Room) -> None:
    (line,) = lines(room, "squat 3x5")
    assert not line.ready
    assert not line.certain
    with pytest.raises(ValueError, match="in full"):
        line.line_done(room.line_id("back-squat"))


def test_a_line_that_is_not_there_yet_is_named(room: Room) -> None:
    new = room.save(Trainee("Seat 3")).id
    assert new is not None
    (line,) = read_noted(room.repository, new, "bench press 3x8 60kg", MONDAY).days[0].lines
    assert (line.line, line.name) == (None, "")
    assert line.ready
    made = room.save(Line(new, "bench-press"))
    (line,) = read_noted(room.repository, new, "bench press 3x8 60kg", MONDAY).days[0].lines
    assert line.line == made


def test_of_several_lines_the_one_planned_on_the_day_is_meant(room: Room) -> None:
    text = "squat 3x5 100kg"
    (planned,) = read_noted(room.repository, room.trainee_id, text, MONDAY).days[0].lines
    assert planned.certain
    (other,) = lines(room, text)
    assert [one.doubt for one in other.entry.questions] == [Doubt.LINE]


def test_a_doubtful_day_makes_its_sets_doubtful(room: Room) -> None:
    (line,) = lines(room, "Saturday\nbench 3x5 100kg")
    assert all(one.read.certain and not one.certain for one in line.sets)


def test_a_correction_is_remembered_for_that_trainee(room: Room) -> None:
    text = "the low thing 3x5 100kg"
    first = noted(room, text)
    asked = next(one for one in first.reading.questions if one.doubt is Doubt.EXERCISE)
    answer = asked.answered(Alternative(exercise="bench-press"))
    settled = read_noted(room.repository, room.trainee_id, text, MONDAY, [answer])
    assert corrections(settled, [answer]) == (("the low thing", "bench-press"),)
    for written, key in corrections(settled, [answer]):
        room.save(remembered(room.repository, room.trainee_id, written, key))
    (line,) = lines(room, "The low things: 3x5 100kg")
    assert line.certain
    assert line.exercise is not None
    assert line.exercise.key == "bench-press"


def test_what_was_remembered_can_be_changed(room: Room) -> None:
    room.save(remembered(room.repository, room.trainee_id, "low thing", "back-squat"))
    again = remembered(room.repository, room.trainee_id, "Low things", "bench-press")
    room.save(again)
    known = room.repository.remembered_names(room.trainee_id)
    assert [(one.text, one.exercise) for one in known] == [("low thing", "bench-press")]
    with pytest.raises(ValueError, match="letters"):
        remembered(room.repository, room.trainee_id, "!!", "bench-press")


# --- the command line -----------------------------------------------------------------------------


class NoSheets:
    SheetError: type[Exception] = RuntimeError

    def write_pdf(self, plan: DayPlan, path: Path) -> None:
        raise AssertionError("reading notes prints no sheet")

    def write_program_pdf(self, weeks: ProgramWeeks, path: Path) -> int:
        raise AssertionError("reading notes prints no program")

    def write_report_pdf(self, report: TraineeReport, path: Path) -> int:
        raise AssertionError("reading notes prints no report")

    def write_group_pdf(self, plans: Sequence[DayPlan], day: date, path: Path) -> int:
        raise AssertionError("reading notes prints no sheet")


@pytest.fixture
def data(tmp_path: Path) -> Path:
    room = open_room(tmp_path)
    room.repository.database.close()
    return tmp_path / "room.db"


def run(data: Path, notes: Path, *more: str) -> int:
    asked = ["read-notes", str(notes), "--trainee", "Seat 2", "--date", "2026-09-07"]
    return main([*asked, *more, "--database", str(data)], reason_texts, NoSheets)


def test_the_command_line_prints_one_object_per_set(
    data: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    notes = tmp_path / "notes.txt"
    notes.write_text("squat 3x5 100kg rpe 8, then 2x5 @ 90\nL-sit 2x15s\n", encoding="utf-8")
    assert run(data, notes, "--json") == 0
    told = json.loads(capsys.readouterr().out)
    assert [one["exercise"] for one in told] == ["back-squat"] * 5 + ["l-sit"] * 2
    assert {key: told[0][key] for key in ("line", "load_g", "reps", "seconds", "rir")} == {
        "line": "",
        "load_g": 100_000,
        "reps": 5,
        "seconds": None,
        "rir": 2.0,
    }
    assert [one["certain"] for one in told] == [True] * 3 + [False] * 2 + [True] * 2
    assert told[3]["asked"] == ["at"]
    assert (told[5]["load_g"], told[5]["seconds"], told[5]["text_line"]) == (0, 15, 2)
    database = Database.open(data)
    assert Repository(database).last_sessions() == {}
    database.close()


def test_the_command_line_tells_it_in_words_too(
    data: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    notes = tmp_path / "notes.txt"
    notes.write_text("squat 3x5, sunny day\n", encoding="utf-8")
    assert run(data, notes) == 0
    told = capsys.readouterr().out
    assert "Back squat: 3 × 5 at ? ?" in told
    assert "load? '3x5'" in told
    assert "unread, line 1: 'sunny day'" in told


def test_a_file_that_is_no_text_is_said(
    data: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    notes = tmp_path / "notes.txt"
    notes.write_bytes(b"\xff\xfe\x00squat")
    assert run(data, notes) == 1
    assert "UTF-8" in capsys.readouterr().err
