"""Starters: the programs that ship, ready to be taken into the data and edited."""

from __future__ import annotations

from dataclasses import dataclass, replace
from importlib.resources import as_file, files
from typing import Final

from db.program_files import read_program
from desktop.training.name_order import name_key
from desktop.training.program import Program

FOLDER: Final = "programs"


@dataclass(frozen=True, slots=True)
class Starter:
    """A program that ships, and the name of its file."""

    file: str
    program: Program


def starters() -> tuple[Starter, ...]:
    """The programs that ship, by name. Raises InvalidFile."""
    found: list[Starter] = []
    for entry in (files("resources") / FOLDER).iterdir():
        if entry.name.endswith(".json"):
            with as_file(entry) as path:
                found.append(Starter(entry.name, read_program(path)))
    return tuple(sorted(found, key=lambda each: name_key(each.program.name)))


def named(program: Program, name: str) -> Program:
    """The program under another name, as a new one."""
    return replace(program, name=name, id=None, revision=0)
