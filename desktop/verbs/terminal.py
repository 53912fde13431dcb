"""What every verb works with: the words and papers handed in, and the terminal to print on."""

from __future__ import annotations

import argparse
import json
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any, Protocol

if TYPE_CHECKING:
    from db.repository import Repository
    from desktop.planning.days import DayPlan
    from desktop.planning.program_weeks import ProgramWeeks
    from desktop.planning.report import TraineeReport
    from desktop.training.quantities import Unit
    from desktop.training.reasons import Reason

Options = argparse.Namespace
Fetch = Callable[[], "Sheets"]
Painter = Callable[["Repository", date, Path], Sequence[Path]]


class Wrong(Exception):
    """Something is wrong; the text is the line that says what."""


class Words(Protocol):
    """What says a reason in words."""

    def reason_text(self, reason: Reason, unit: Unit, today: date | None = None) -> str:
        """One sentence."""
        ...


class Sheets(Protocol):
    """What makes the printed sheet of a day."""

    SheetError: type[Exception]

    def write_pdf(self, plan: DayPlan, path: Path) -> None:
        """Write the sheet as PDF."""
        ...

    def write_program_pdf(self, weeks: ProgramWeeks, path: Path) -> int:
        """Write a whole program as PDF; how many pages it has."""
        ...

    def write_report_pdf(self, report: TraineeReport, path: Path) -> int:
        """Write a trainee's progress report as PDF; how many pages it has."""
        ...

    def write_group_pdf(self, plans: Sequence[DayPlan], day: date, path: Path) -> int:
        """Write the sheet of several trainees as PDF; how many pages it has."""
        ...


@dataclass(frozen=True, slots=True)
class Terminal:
    """``sheets`` is called only when a sheet is wanted; ``pictures`` draws the screens of a data
    file into a folder.
    """

    words: Words
    sheets: Fetch
    pictures: Painter | None = None

    def sentence(self, reason: Reason, unit: Unit, day: date) -> str:
        """A reason in words, seen from a day."""
        return self.words.reason_text(reason, unit, day)

    def write_sheet(self, plan: DayPlan, path: Path) -> None:
        """Write the sheet of a day. Raises Wrong."""
        sheets = self.sheets()
        try:
            sheets.write_pdf(plan, path)
        except sheets.SheetError as error:
            raise Wrong(str(error)) from error


def print_lines(lines: Iterable[str]) -> None:
    """A line each."""
    for line in lines:
        print(line)


def print_json(values: Any) -> None:
    """As JSON to read."""
    print(json.dumps(values, ensure_ascii=False, indent=2))
