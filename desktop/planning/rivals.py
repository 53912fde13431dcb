"""Rivals: what the progress of a line can be compared with."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from db.line_parts import last_trained, lines_of_others
from db.repository import Repository
from desktop.planning.history import History
from desktop.planning.line_history import read_about, with_line
from desktop.planning.progress import LineProgress, progress_of
from desktop.planning.trained_lines import line_name, trained_lines
from desktop.training.name_order import name_key
from desktop.training.program import Line


class RivalKind(StrEnum):
    """What a line is compared with: the same span earlier, another variation or line of the same
    trainee, the same exercise of another trainee.
    """

    EARLIER = "earlier"
    VARIATION = "variation"
    LINE = "line"
    TRAINEE = "trainee"


@dataclass(frozen=True, slots=True)
class Rival:
    """One thing to compare with. ``name``: of the line, variation or trainee; ``days``: how much
    earlier; ``line_id``: of another line, ``key`` of a variation.
    """

    kind: RivalKind
    name: str = ""
    line_id: int | None = None
    key: str = ""
    days: int = 0


def rivals_of(
    repository: Repository, about: History, progress: LineProgress, spans: tuple[int, ...]
) -> tuple[Rival, ...]:
    """What ``progress`` can be compared with, by kind: spans of so many days as far as the record
    goes, the variations done, the trainee's lines, other trainees by name.
    """
    return (
        *_earlier(progress, spans),
        *_variations(progress),
        *_lines(repository, about, progress),
        *_trainees(repository, progress),
    )


def rival_progress(
    repository: Repository, rival: Rival, today: date, week_starts: int = 0
) -> LineProgress | None:
    """The progress of a rival's line; None where the rival is of the same line."""
    if rival.line_id is None:
        return None
    line = repository.line(rival.line_id)
    about = read_about(repository, line.trainee_id)
    return progress_of(with_line(repository, about, line, today), line, today, week_starts)


def _earlier(progress: LineProgress, spans: tuple[int, ...]) -> Iterator[Rival]:
    if not progress.best_sets:
        return
    reach = (progress.today - progress.best_sets[0].day).days
    for days in dict.fromkeys(spans):
        if reach >= days:
            yield Rival(RivalKind.EARLIER, days=days)


def _variations(progress: LineProgress) -> Iterator[Rival]:
    done = {one.variation for best in progress.best_sets for one in best.working}
    steps = [step for step in progress.scale if step.key in done]
    if len(steps) > 1:
        for step in steps:
            yield Rival(RivalKind.VARIATION, step.name, key=step.key)


def _lines(repository: Repository, about: History, progress: LineProgress) -> Iterator[Rival]:
    for trained in trained_lines(repository, about, progress.today):
        line: Line = trained.line
        alike = about.exercise_of(line).measure is progress.exercise.measure
        if trained.last is not None and line.id != progress.line.id and alike:
            yield Rival(RivalKind.LINE, line_name(about, line.id), line.id)


def _trainees(repository: Repository, progress: LineProgress) -> Iterator[Rival]:
    exercise, own = progress.line.exercise, progress.line.trainee_id
    others = lines_of_others(repository.database, exercise, own)
    if not others:
        return
    trained = last_trained(repository.database, dict.fromkeys(others, exercise), progress.today)
    names = {one.id: one.name for one in repository.trainees()}
    found = [(names[others[line_id]], line_id) for line_id in trained]
    lines = {line_id: repository.line(line_id).name for _, line_id in found}
    for name, line_id in sorted(found, key=lambda one: (name_key(one[0]), name_key(lines[one[1]]))):
        said = ", ".join(part for part in (name, lines[line_id]) if part)
        yield Rival(RivalKind.TRAINEE, said, line_id)
