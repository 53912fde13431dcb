"""The next twelve sessions of a slot, if all goes well and if one in four is missed, as cells."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QCoreApplication

from desktop.planning.outlook import NextSession, Onlooker, SlotOutlook, outlook
from desktop.training.loading import Loading, loading
from desktop.training.program import Program
from desktop.training.program_edits import SlotPlace, slot_at
from desktop.training.quantities import Unit
from views.loading_texts import DiscText, disc_texts, loading_text
from views.slot_face import NextCell, next_cell

translate = QCoreApplication.translate

SESSIONS: Final = 12
MISSED: Final = 4
"""One session in so many is imagined as missed."""


@dataclass(frozen=True, slots=True)
class AheadCell:
    """One session: what is asked, and the discs of one side of the bar; ``missed``: imagined so."""

    cell: NextCell
    discs: tuple[DiscText, ...] = ()
    how: str = ""
    missed: bool = False

    @property
    def words(self) -> str:
        """All of it in words."""
        return ". ".join(part for part in (self.cell.words, self.how) if part)


@dataclass(frozen=True, slots=True)
class AheadLine:
    """Sessions under what is assumed of them."""

    heading: str
    cells: tuple[AheadCell, ...]


def ahead_lines(program: Program, place: SlotPlace, onlooker: Onlooker) -> tuple[AheadLine, ...]:
    """Both lines for the slot at ``place``. Raises UnknownExercise."""
    here = onlooker.with_program(program)
    told = (
        (translate("Ahead", "If all goes as asked"), None),
        (translate("Ahead", "If one in four is missed"), MISSED),
    )
    return tuple(
        AheadLine(heading, _cells(program, place, here, miss_every)) for heading, miss_every in told
    )


def _cells(
    program: Program, place: SlotPlace, onlooker: Onlooker, miss_every: int | None
) -> tuple[AheadCell, ...]:
    slot = slot_at(program, place)
    seen = outlook(program, place.phase, slot, onlooker, SESSIONS, miss_every=miss_every)
    unit, today = onlooker.trainee.unit, onlooker.today
    cells: list[AheadCell] = []
    for session in seen.sessions:
        made = _made(session, seen, onlooker)
        discs = disc_texts(made.discs_per_side, unit) if made else ()
        shown = next_cell(slot, session, seen, unit, today)
        cells.append(AheadCell(shown, discs, _how(made, unit), session.missed))
    return tuple(cells)


def _made(session: NextSession, seen: SlotOutlook, onlooker: Onlooker) -> Loading | None:
    """How the load is made with what the trainee has; None where nothing is recorded."""
    equipment = onlooker.equipment
    if equipment is None:
        return None
    made = loading(equipment, seen.exercise, session.position.load_g)
    return made if isinstance(made, Loading) else None


def _how(made: Loading | None, unit: Unit) -> str:
    return loading_text(made, unit) if made is not None else ""


def line_words(line: AheadLine) -> str:
    """A line read aloud."""
    return f"{line.heading}: " + "; ".join(each.words for each in line.cells)


def discs_text(cell: AheadCell) -> str:
    """The discs of one side in a small cell: "20+2.5"."""
    return "+".join(disc.label for disc in cell.discs)
