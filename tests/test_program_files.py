"""Program files: what is written is read, and what is wrong is said with its place."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from db.json_files import InvalidFile
from db.program_files import exercises_of, read_program, write_program
from desktop.training.position import (
    Position,
    ProgressionRule,
    Variable,
    VariableRange,
)
from desktop.training.program import Phase, Program, Slot, TrainingDay

RULE = ProgressionRule(
    ranges=(
        VariableRange(Variable.REPS, 8, 12),
        VariableRange(Variable.LOAD, increment=2500),
    ),
    target_rir=2,
)
PROGRAM = Program(
    name="Wintertraining – Stufe ½",
    phases=(
        Phase(
            "Build",
            6,
            (
                TrainingDay(
                    "Monday",
                    (Slot("back-squat", RULE, Position(load_g=60_000, reps=8, sets=3)),),
                    weekday=0,
                ),
            ),
        ),
    ),
    about="=1+1 is plain text",
)


def test_what_is_written_is_read(tmp_path: Path) -> None:
    write_program(PROGRAM, tmp_path / "p.json")
    assert read_program(tmp_path / "p.json") == PROGRAM
    assert [path.name for path in tmp_path.iterdir()] == ["p.json"]


def test_defaults_are_left_out(tmp_path: Path) -> None:
    write_program(PROGRAM, tmp_path / "p.json")
    slot = plain(tmp_path / "p.json")["program"]["phases"][0]["days"][0]["slots"][0]
    assert slot["start"] == {"load_g": 60_000, "reps": 8, "sets": 3}
    assert "miss" not in slot["rule"]


def test_a_file_brings_no_id_along(tmp_path: Path) -> None:
    changed(tmp_path, lambda file: file["program"].update(id=7, revision=3))
    program = read_program(tmp_path / "p.json")
    assert (program.id, program.revision) == (None, 0)


def test_a_mark_at_the_beginning_is_no_trouble(tmp_path: Path) -> None:
    write_program(PROGRAM, tmp_path / "p.json")
    data = (tmp_path / "p.json").read_bytes()
    (tmp_path / "p.json").write_bytes(b"\xef\xbb\xbf" + data)
    assert read_program(tmp_path / "p.json") == PROGRAM


def test_a_program_names_its_exercises() -> None:
    assert exercises_of(PROGRAM) == ("back-squat",)


def slot_of(file: dict[str, Any]) -> dict[str, Any]:
    slot: dict[str, Any] = file["program"]["phases"][0]["days"][0]["slots"][0]
    return slot


@pytest.mark.parametrize(
    ("change", "said"),
    [
        (lambda f: f.update(schema="something"), "no rungwise program file"),
        (lambda f: f.update(version=2), "version 2; this program reads up to 1"),
        (lambda f: f.update(version="1"), '"version" is a whole number'),
        (lambda f: f.update(programm={}), "unknown field `programm` at `$`"),
        (lambda f: f.pop("program"), "missing required field `program`"),
        (lambda f: f["program"].update(name=" "), "needs a name - at `$.program.name`"),
        (lambda f: f["program"].update(deload_every=0), "$.program.deload_every"),
        (lambda f: f["program"].update(phases=[]), "at least one phase"),
        (lambda f: f["program"]["phases"][0].update(weeks=0), "$.program.phases[0].weeks"),
        (lambda f: f["program"]["phases"][0].update(weeks="6"), "$.program.phases[0].weeks"),
        (lambda f: f["program"]["phases"][0]["days"][0].update(weekday=7), "days[0].weekday"),
        (lambda f: slot_of(f).update(exercise=""), "slots[0].exercise"),
        (lambda f: slot_of(f).update(rest_s=-1), "slots[0].rest_s"),
        (lambda f: slot_of(f).update(start={"sets": 3}), "reps or hold_s"),
        (lambda f: slot_of(f).update(start={"reps": 3, "hold_s": 3}), "reps or hold_s"),
        (lambda f: slot_of(f).update(start={"reps": 0}), "at least one repetition"),
        (lambda f: slot_of(f).update(start={"reps": 8, "sets": 0}), "slots[0].start.sets"),
        (lambda f: slot_of(f).update(start={"hold_s": 8}), "slots[0].rule.ranges"),
        (
            lambda f: slot_of(f)["rule"]["ranges"][0].update(ceilling=12),
            "unknown field `ceilling` at `$.program.phases[0].days[0].slots[0].rule.ranges[0]`",
        ),
        (lambda f: slot_of(f)["rule"]["ranges"][0].update(ceiling=4), "below the floor 8"),
        (lambda f: slot_of(f)["rule"]["ranges"][0].update(variable="speed"), "ranges[0].variable"),
    ],
)
def test_a_wrong_file_is_refused_with_the_place(tmp_path: Path, change: Any, said: str) -> None:
    changed(tmp_path, change)
    with pytest.raises(InvalidFile) as caught:
        read_program(tmp_path / "p.json")
    assert said in str(caught.value)
    assert str(caught.value).startswith("p.json: ")


@pytest.mark.parametrize("data", [b"", b"{", b"[]", b"\xff\xfe", b"null", b"[" * 100_000])
def test_what_is_no_json_is_refused(tmp_path: Path, data: bytes) -> None:
    (tmp_path / "p.json").write_bytes(data)
    with pytest.raises(InvalidFile):
        read_program(tmp_path / "p.json")


def test_a_failed_writing_leaves_the_old_file(tmp_path: Path) -> None:
    write_program(PROGRAM, tmp_path / "p.json")
    with pytest.raises(OSError, match="missing"):
        write_program(PROGRAM, tmp_path / "missing" / "p.json")
    assert read_program(tmp_path / "p.json") == PROGRAM


def plain(path: Path) -> dict[str, Any]:
    value: dict[str, Any] = json.loads(path.read_text(encoding="utf-8"))
    return value


def changed(folder: Path, change: Any) -> None:
    write_program(PROGRAM, folder / "p.json")
    file = plain(folder / "p.json")
    change(file)
    (folder / "p.json").write_text(json.dumps(file), encoding="utf-8")
