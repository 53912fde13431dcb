"""Cases: one line's rule, start and events as a file, to see the model work without a data file.

JSON with the schema "rungwise case", described in resources/formats.md.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Final

from db.json_files import InvalidFile, read_json
from desktop.training.position import (
    Position,
    ProgressionRule,
    ProgressionSettings,
    Surroundings,
)
from desktop.training.program import LineStart, RuleRevision
from desktop.training.state import (
    Cleared,
    DeloadDays,
    Event,
    Overridden,
    SessionDone,
    Surrounded,
)
from desktop.training.trainee import DeloadWindow

SCHEMA: Final = "rungwise case"
VERSION: Final = 1


@dataclass(frozen=True, slots=True)
class CaseEvent:
    """One event; exactly one of the fields is given."""

    session: SessionDone | None = None
    override: Overridden | None = None
    surroundings: Surrounded | None = None
    deload: DeloadDays | None = None
    clearance: Cleared | None = None

    def __post_init__(self) -> None:
        if len(self._given()) != 1:
            raise ValueError(
                "an event is one of session, override, surroundings, deload, clearance"
            )

    @property
    def event(self) -> Event:
        """The event itself."""
        return self._given()[0]

    def _given(self) -> list[Event]:
        fields = (self.session, self.override, self.surroundings, self.deload, self.clearance)
        return [field for field in fields if field is not None]


@dataclass(frozen=True, slots=True)
class Case:
    """One line: the ``rule`` that holds at its ``start``, later revisions, and what happened.

    ``ask_on``: the day for which the target is wanted as well.
    """

    rule: ProgressionRule
    start: LineStart
    events: tuple[CaseEvent, ...] = ()
    revisions: tuple[RuleRevision, ...] = ()
    surroundings: Surroundings = Surroundings()
    settings: ProgressionSettings = ProgressionSettings()
    ask_on: date | None = None
    about: str = ""

    def eased_on(self, day: date) -> DeloadWindow | None:
        """The easier span that ``day`` lies in, cut as usual: a case tells its days alone."""
        for each in self.events:
            if each.deload is not None and each.deload.first <= day <= each.deload.last:
                return DeloadWindow(0, each.deload.first, each.deload.last)
        return None


def read_case(path: Path) -> Case:
    """The case in ``path``. Raises InvalidFile and OSError."""
    case = read_json(path, SCHEMA, VERSION, Case)
    _check(case.start.position, path)
    return case


def _check(position: Position, path: Path) -> None:
    if position.sets < 1 or (position.reps is None) == (position.hold_s is None):
        raise InvalidFile(
            f"{path.name}: at least one set, and reps or hold_s, one of them - "
            "at `$.start.position`"
        )
