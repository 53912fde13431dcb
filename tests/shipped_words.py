"""Shipped words: what stands on screens in English but does not come from the screens' code.

Names of exercises and of their variations, cues, the texts of limits, the ready-made programs, the
sentences of the store and of the model, and keys: as they are printed on keyboards, which is
shorter than what Qt calls them in some languages.
"""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

from db.changes import Kind
from desktop.catalogue import load_catalogue
from desktop.limits import load_limits
from desktop.planning.starters import starters
from desktop.training.position import Variable
from desktop.training.volume import MARKS

ROOT = Path(__file__).resolve().parent.parent

KEYS = (
    *("Alt", "Backspace", "Ctrl", "Del", "Down", "End", "Enter", "Esc", "Home", "Left", "PgDown"),
    *("PgUp", "Return", "Right", "Shift", "Space", "Tab", "Up"),
)
"""What Qt calls the keys that the screens name, in its own context."""

Message = tuple[str, str]
"""Context and English text."""


def messages() -> tuple[Message, ...]:
    """All of them, each once, by context and text."""
    found = {*_exercises(), *_limits(), *_programs(), *_sentences(), *_keys()}
    return tuple(sorted(found))


def listing() -> str:
    """A Python file in which the translators' tool finds them."""
    lines = [f"translate({_quoted(context)}, {_quoted(text)})" for context, text in messages()]
    return "\n".join([*lines, ""])


def _exercises() -> Iterator[Message]:
    for exercise in load_catalogue():
        yield "ExerciseNames", exercise.name
        yield "ExerciseCues", exercise.cue
        for variation in exercise.variations:
            yield "ExerciseVariations", variation.name
            yield "VariationKeys", variation.key.replace("-", " ")


def _limits() -> Iterator[Message]:
    for limit in load_limits().values():
        yield "Limits", limit.text
        yield "Sources", limit.source
    for mark in MARKS:
        yield "Marks", mark.said_of
        yield "Sources", mark.source


def _programs() -> Iterator[Message]:
    for starter in starters():
        yield "Starters", starter.program.name
        yield "Starters", starter.program.about
        for phase in starter.program.phases:
            yield "Starters", phase.name
            yield from (("Starters", day.name) for day in phase.days)


def _keys() -> Iterator[Message]:
    return (("QShortcut", key) for key in KEYS)


def _sentences() -> Iterator[Message]:
    for named in (*Kind, *Variable):
        yield "Sentences", named.value
    for package in ("db", "desktop"):
        for path in sorted((ROOT / package).rglob("*.py")):
            for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
                match node:
                    case ast.Call(ast.Name("sentence"), [ast.Constant(str() as text), *_]):
                        yield "Sentences", text


def _quoted(text: str) -> str:
    escaped = text.replace("\\", "\\\\").replace('"', '\\"').replace("\n", "\\n")
    return f'"{escaped}"'
