"""Doubts: typed values that can be, but are far from what was asked, as after a slip."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from desktop.planning.session_draft import LineDraft, SessionDraft, asked_amount
from desktop.planning.typed_cells import Row, read_amount
from desktop.planning.typed_session import (
    CellPlace,
    cell_places,
    cell_problem,
    load_when_blank,
    loads_of,
)

DOUBTFUL_FACTOR: Final = 2
"""A load this many times what was asked is asked about: a slip of a decimal mark is ten times."""
DOUBTFUL_BEYOND: Final = 10
"""So many repetitions (tenths of a minute held: seconds) above twice the asked are asked about."""
DOUBTFUL_HELP_G: Final = 100_000


@dataclass(frozen=True, slots=True)
class Doubt:
    """A value that can be, but is far from what was asked: grams, repetitions or seconds."""

    place: CellPlace
    value: int
    asked: int


def doubt_at(draft: SessionDraft, place: CellPlace) -> Doubt | None:
    """What is doubtful in one cell, unless the coach said that it is meant."""
    line = draft.lines[place.line]
    each = line.sets[place.index]
    if each.sure or each.as_stored or cell_problem(draft, place) is not None:
        return None
    if place.row is Row.LOAD and each.load.strip():
        return _load_doubt(line, place)
    if place.row is Row.DONE and each.done.strip():
        asked = asked_amount(each.asked)
        most = max(read_amount(each.done, line.kind))
        beyond = DOUBTFUL_BEYOND * (6 if line.kind.hold else 1)
        if asked is not None and most > DOUBTFUL_FACTOR * asked + beyond:
            return Doubt(place, most, asked)
    return None


def doubts(draft: SessionDraft) -> tuple[Doubt, ...]:
    """Everything that is doubtful, in the order of the form."""
    found = (doubt_at(draft, place) for place in cell_places(draft))
    return tuple(each for each in found if each is not None)


def _load_doubt(line: LineDraft, place: CellPlace) -> Doubt | None:
    heaviest = max(loads_of(line, place.index), key=abs)
    asked = load_when_blank(line, place.index)
    if asked is None or heaviest == asked:
        return None
    if heaviest < 0:
        return Doubt(place, heaviest, asked) if heaviest < -DOUBTFUL_HELP_G else None
    if asked <= 0:
        return Doubt(place, heaviest, asked) if heaviest > DOUBTFUL_HELP_G else None
    return Doubt(place, heaviest, asked) if heaviest >= DOUBTFUL_FACTOR * asked else None
