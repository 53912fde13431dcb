"""Lines of a log by session and exercise, and what in them does not go together."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from typing import Any

import msgspec

from db.log_rows import LogRow, Problem
from desktop.training.sentence import sentence
from desktop.training.session import AskedSet, LineDone, SetDone

SessionKey = tuple[str, date, int]
"""Trainee, day and which session of the day, from 0."""


@dataclass(slots=True)
class SessionRows:
    """The lines of one session, in the order of the file: those of each exercise and line name,
    those ``telling`` something of the whole session, and those without an exercise.
    """

    parts: dict[tuple[str, str], list[LogRow]] = field(default_factory=dict)
    telling: list[LogRow] = field(default_factory=list)
    bare: list[LogRow] = field(default_factory=list)


def by_session(rows: Iterable[LogRow]) -> dict[SessionKey, SessionRows]:
    """The lines that belong to sessions, by session; the others are left out."""
    found: dict[SessionKey, SessionRows] = {}
    for row in rows:
        if not row.session:
            continue
        said = row.said
        key = row.trainee, row.day, said.entry
        group = found.get(key)
        if group is None:
            group = found[key] = SessionRows()
        if row.exercise:
            part = row.exercise, row.line_name
            alike = group.parts.get(part)
            if alike is None:
                group.parts[part] = [row]
            else:
                alike.append(row)
        else:
            group.bare.append(row)
        if said.told or said.red_flag:
            group.telling.append(row)
    return found


def contradictions(
    rows: Iterable[LogRow], groups: Mapping[SessionKey, SessionRows]
) -> Iterator[Problem]:
    """Lines that do not go together: a set twice, two efforts of a session, two body masses of a
    day.
    """
    for group in groups.values():
        for part in group.parts.values():
            yield from _sets_twice(part)
        told = ((row, (), row.said.told) for row in group.telling)
        yield from _told_otherwise(told)
    yield from _told_otherwise(
        (row, (row.trainee, row.day), (("body_mass", row.said.body_mass_g),))
        for row in rows
        if row.said.body_mass_g is not None
    )


def _sets_twice(part: Sequence[LogRow]) -> Iterator[Problem]:
    numbers = {row.set_number for row in part}
    if len(numbers) == len(part) and None not in numbers:
        return
    lines: dict[tuple[int, str], int] = {}
    for row in part:
        if row.set_number is None or not (row.done or row.asked):
            continue
        place = row.set_number, row.done.side if row.done else ""
        if place in lines:
            text = sentence(
                "set {number} of {exercise} stands in line {line} already",
                number=row.set_number,
                exercise=row.exercise,
                line=lines[place],
            )
            yield Problem(row.line, "set", text)
        lines.setdefault(place, row.line)


def _told_otherwise(
    told: Iterable[tuple[LogRow, tuple[object, ...], tuple[tuple[str, Any], ...]]],
) -> Iterator[Problem]:
    """Where lines about the same say different things of it."""
    known: dict[tuple[tuple[object, ...], str], tuple[Any, int]] = {}
    for row, about, values in told:
        for name, value in values:
            before, line = known.setdefault((about, name), (value, row.line))
            if value != before:
                text = sentence("line {line} says {before}", line=line, before=before)
                yield Problem(row.line, name, text)


class PlannedPart(msgspec.Struct, frozen=True, gc=False):
    """What would be recorded of one exercise in a session, as in `LineDone`: its line may have
    no id yet. ``line_name`` is that of the line.
    """

    exercise: str
    line_name: str
    asked: tuple[AskedSet, ...]
    sets: tuple[SetDone, ...]
    deload: bool
    test: bool
    skipped: bool
    reason: str
    note: str

    def on_line(self, line_id: int) -> LineDone:
        """The part on its line."""
        return LineDone(
            line_id, self.exercise, self.asked, self.sets, self.deload, self.test, self.skipped,
            self.reason, self.note,
        )  # fmt: skip


def planned_part(exercise: str, line_name: str, rows: Sequence[LogRow]) -> PlannedPart:
    """One exercise of one session; sets in the order of their numbers, else of the file."""
    ordered: Sequence[LogRow] = rows
    numbers = [row.set_number or 0 for row in rows]
    if numbers != sorted(numbers) and all(
        row.set_number is not None for row in rows if row.done or row.asked
    ):
        ordered = sorted(rows, key=lambda row: row.set_number or 0)
    said = tuple({id(row.said): row.said for row in rows}.values())
    states = {state for each in said for state in each.states}
    return PlannedPart(
        exercise,
        line_name,
        tuple([row.asked for row in ordered if row.asked is not None]),
        tuple([row.done for row in ordered if row.done is not None]),
        "deload" in states,
        "test" in states,
        "skipped" in states,
        next((each.reason for each in said if each.reason), ""),
        next((each.exercise_note for each in said if each.exercise_note), ""),
    )
