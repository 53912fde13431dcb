"""Programs as files: JSON with the schema "rungwise program", described in resources/formats.md."""

from __future__ import annotations

from dataclasses import dataclass, replace
from pathlib import Path
from typing import Final

from db.json_files import InvalidFile, decode_json, encode_json, read_json, write_json
from desktop.training.position import Variable
from desktop.training.program import Program, Slot
from desktop.training.sentence import sentence

SCHEMA: Final = "rungwise program"
VERSION: Final = 1


@dataclass(frozen=True, slots=True)
class ProgramFile:
    """What a program file holds beside its schema."""

    program: Program


def read_program(path: Path) -> Program:
    """The program in ``path``, as a new one (without id). Raises InvalidFile and OSError."""
    program = read_json(path, SCHEMA, VERSION, ProgramFile).program
    try:
        _check(program)
    except InvalidFile as error:
        raise InvalidFile(sentence("{file}: {error}", file=path.name, error=error)) from error
    return replace(program, id=None, revision=0)


def program_from(data: bytes) -> Program:
    """The program that ``data`` holds, as a new one (without id). Raises InvalidFile."""
    program = decode_json(data, SCHEMA, VERSION, ProgramFile).program
    _check(program)
    return replace(program, id=None, revision=0)


def write_program(program: Program, path: Path) -> None:
    """Write ``program`` to ``path``, whole or not at all. Raises OSError."""
    write_json(ProgramFile(_without_id(program)), SCHEMA, VERSION, path)


def program_bytes(program: Program) -> bytes:
    """The bytes that `write_program` writes."""
    return encode_json(ProgramFile(_without_id(program)), SCHEMA, VERSION)


def exercises_of(program: Program) -> tuple[str, ...]:
    """The keys of all exercises that the program asks for, each once."""
    slots = (slot for phase in program.phases for day in phase.days for slot in day.slots)
    return tuple(dict.fromkeys(slot.exercise for slot in slots))


def _without_id(program: Program) -> Program:
    return replace(program, id=None, revision=0)


def _check(program: Program) -> None:
    """What the dataclasses cannot know of each other, with the path in the file."""
    if not program.name.strip():
        raise InvalidFile(sentence("a program needs a name - at `$.program.name`"))
    if program.deload_every is not None and not 1 <= program.deload_every <= 52:
        raise InvalidFile(
            sentence("a deload every 1 to 52 weeks, or null - at `$.program.deload_every`")
        )
    if not program.phases:
        raise InvalidFile(sentence("a program needs at least one phase - at `$.program.phases`"))
    for p, phase in enumerate(program.phases):
        path = f"$.program.phases[{p}]"
        if not 1 <= phase.weeks <= 104:
            raise InvalidFile(
                sentence(
                    "a phase lasts 1 to 104 weeks, not {weeks} - at `{path}.weeks`",
                    weeks=phase.weeks,
                    path=path,
                )
            )
        for d, day in enumerate(phase.days):
            at = f"{path}.days[{d}]"
            if day.weekday is not None and not 0 <= day.weekday <= 6:
                raise InvalidFile(
                    sentence(
                        "a weekday is 0 (Monday) to 6 or null, not {weekday} - at `{at}.weekday`",
                        weekday=day.weekday,
                        at=at,
                    )
                )
            for s, slot in enumerate(day.slots):
                _check_slot(slot, f"{at}.slots[{s}]")


def _check_slot(slot: Slot, path: str) -> None:
    start = slot.start
    if not slot.exercise:
        raise InvalidFile(sentence("which exercise? - at `{path}.exercise`", path=path))
    if not 0 <= slot.rest_s <= 3600:
        raise InvalidFile(sentence("a rest is 0 to 3600 seconds - at `{path}.rest_s`", path=path))
    if not 1 <= start.sets <= 50:
        raise InvalidFile(
            sentence(
                "1 to 50 sets, not {sets} - at `{path}.start.sets`", sets=start.sets, path=path
            )
        )
    if (start.reps is None) == (start.hold_s is None):
        raise InvalidFile(
            sentence("give reps or hold_s, one of them - at `{path}.start`", path=path)
        )
    if not 1 <= start.amount <= 10_000:
        raise InvalidFile(
            sentence("at least one repetition or second - at `{path}.start`", path=path)
        )
    counted = Variable.HOLD if start.hold_s is None else Variable.REPS
    if slot.rule.range_of(counted) is not None:
        raise InvalidFile(
            sentence(
                "the rule counts {counted}, the start does not - at `{path}.rule.ranges`",
                counted=counted,
                path=path,
            )
        )
