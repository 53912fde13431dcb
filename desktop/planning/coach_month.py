"""A coach's month, or another span: everybody's sessions, adherence, progress and cautions."""

from __future__ import annotations

from collections.abc import Generator
from dataclasses import dataclass
from datetime import date

from db.repository import Repository
from db.series import weekly_volume_of_all
from desktop.planning.history import read_history, read_library
from desktop.planning.report import LineReport, ReportError, TraineeReport, report_of
from desktop.training.sentence import sentence


@dataclass(frozen=True, slots=True)
class CoachMonth:
    """The reports of all trainees by name, and the hard sets of everybody by week (its Monday)."""

    first: date
    last: date
    reports: tuple[TraineeReport, ...]
    weeks: tuple[tuple[date, int], ...]

    @property
    def sessions(self) -> int:
        """Everybody's sessions."""
        return sum(report.sessions for report in self.reports)

    @property
    def kept(self) -> float | None:
        """Days trained of those planned, over all who had a plan; more than planned is not counted.
        None where nothing was planned.
        """
        planned = sum(report.planned for report in self.reports)
        done = sum(min(report.days, report.planned) for report in self.reports)
        return done / planned if planned else None


def coach_month(
    repository: Repository, first: date, last: date
) -> Generator[float, None, CoachMonth]:
    """Everybody who is not archived, from ``first`` to ``last``; yields the share done after each
    trainee. Raises ReportError.
    """
    if last < first:
        raise ReportError(sentence("The span ends before it begins: choose a later last day."))
    library = read_library(repository)
    reports: list[TraineeReport] = []
    ids = [one.id for one in repository.trainees() if one.id is not None]
    for done, trainee_id in enumerate(ids, start=1):
        reports.append(report_of(read_history(repository, trainee_id, library), first, last))
        yield done / len(ids)
    return CoachMonth(first, last, tuple(reports), _weeks(repository, first, last))


def progressed(report: TraineeReport) -> tuple[list[LineReport], list[LineReport]]:
    """The lines that rose and those that fell, by the 80 % band of their trend; most first."""
    up: list[LineReport] = []
    down: list[LineReport] = []
    for line in report.lines:
        told = line.progress.statement
        if told is not None and told.gain_low > 0:
            up.append(line)
        elif told is not None and told.gain_high < 0:
            down.append(line)
    return sorted(up, key=_gain, reverse=True), sorted(down, key=_gain)


def _gain(line: LineReport) -> float:
    return line.gain or 0.0


def _weeks(repository: Repository, first: date, last: date) -> tuple[tuple[date, int], ...]:
    series = weekly_volume_of_all(repository.database, first, last).weeks
    sets: dict[int, int] = {}
    for monday, count in zip(series["monday"].tolist(), series["sets"].tolist(), strict=True):
        sets[monday] = sets.get(monday, 0) + count
    return tuple((date.fromordinal(monday), count) for monday, count in sorted(sets.items()))
