"""Files that go out: training logs and programs, as they come in again."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from db.log_export import COMMA_STYLE, LogStyle, write_log
from db.program_files import write_program
from db.repository import Repository
from desktop.training.trainee import Trainee


def export_log(
    repository: Repository, trainees: Sequence[Trainee], path: Path, *, decimal_comma: bool
) -> int:
    """Write what ``trainees`` did as a training log; the number of lines. Where the decimal mark
    is a comma, columns are told apart by semicolons. Raises StoreError and OSError.
    """
    style = COMMA_STYLE if decimal_comma else LogStyle()
    return write_log(repository, path, trainees, style)


def export_program(repository: Repository, program_id: int, path: Path) -> str:
    """Write a program as a file; its name. Raises StoreError and OSError."""
    program = repository.program(program_id)
    write_program(program, path)
    return program.name
