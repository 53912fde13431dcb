"""Programs: phases, training days and slots go in and out as one."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from db import schema
from db.changes import Kind
from db.codec import to_text
from db.database import Database
from db.shelf import Dependants, Shelf, delete_of, missing, parts_by_owner
from db.validity import check_program
from desktop.training.program import Phase, Program, Slot, TrainingDay
from desktop.training.sentence import sentence

_SLOT = ("exercise", "rule", "start", "line_name", "rest_s", "tempo", "pair", "note")


class ProgramShelf(Shelf[Program]):
    """Programs. Removing one removes its assignments; sessions keep what they were planned as."""

    kind = Kind.PROGRAM
    record = Program
    table = schema.Program
    unique = ("name",)
    dependants = (Dependants(Kind.ASSIGNMENT, "program_id"),)

    def called(self, aggregate: Program) -> str:
        return sentence("a program called {name}", name=aggregate.name)

    def check(self, aggregates: Sequence[Program]) -> None:
        for program in aggregates:
            check_program(program)

    def check_references(self, database: Database, aggregates: Sequence[Program]) -> None:
        keys = {row[0] for row in database.execute("SELECT key FROM exercise")}
        for program in aggregates:
            for p, phase in enumerate(program.phases):
                for d, day in enumerate(phase.days):
                    for s, slot in enumerate(day.slots):
                        if slot.exercise not in keys:
                            where = f"phases[{p}].days[{d}].slots[{s}].exercise"
                            raise missing("exercise", slot.exercise, where)

    def build(self, database: Database, rows: list[tuple[Any, ...]]) -> tuple[Program, ...]:
        identities = [row[0] for row in rows]
        phases = parts_by_owner(
            database,
            schema.Phase,
            "program_id",
            identities,
            ("place", "name", "weeks", "purpose"),
        )
        days = parts_by_owner(
            database,
            schema.TrainingDay,
            "program_id",
            identities,
            ("phase_place", "place", "name", "weekday"),
            ("phase_place", "place"),
        )
        slots = parts_by_owner(
            database,
            schema.Slot,
            "program_id",
            identities,
            ("phase_place", "day_place", *_SLOT),
            ("phase_place", "day_place", "place"),
        )
        return tuple(
            Program(
                **dict(zip(self._names, row, strict=True)),
                phases=_built(phases.get(row[0], []), days.get(row[0], []), slots.get(row[0], [])),
            )
            for row in rows
        )

    def write_parts(self, database: Database, aggregates: Sequence[Program]) -> None:
        phases: list[tuple[object, ...]] = []
        days: list[tuple[object, ...]] = []
        slots: list[tuple[object, ...]] = []
        for program in aggregates:
            for p, phase in enumerate(program.phases):
                phases.append((program.id, p, phase.name, phase.weeks, phase.purpose.value))
                for d, day in enumerate(phase.days):
                    days.append((program.id, p, d, day.name, day.weekday))
                    place = (program.id, p, d)
                    slots += [(*place, s, *_row(slot)) for s, slot in enumerate(day.slots)]
        database.insert("phase (program_id, place, name, weeks, purpose)", phases)
        database.insert("training_day (program_id, phase_place, place, name, weekday)", days)
        database.insert(
            f"slot (program_id, phase_place, day_place, place, {', '.join(_SLOT)})",
            slots,
        )

    def delete_parts(self, database: Database, identities: list[int]) -> None:
        delete_of(database, "phase", "program_id", identities)


def _row(slot: Slot) -> tuple[object, ...]:
    return (
        slot.exercise,
        to_text(slot.rule),
        to_text(slot.start),
        slot.line_name,
        slot.rest_s,
        slot.tempo,
        slot.pair,
        slot.note,
    )


def _built(
    phases: list[tuple[Any, ...]], days: list[tuple[Any, ...]], slots: list[tuple[Any, ...]]
) -> tuple[Phase, ...]:
    slots_of: dict[tuple[int, int], list[Slot]] = {}
    for p, d, *slot in slots:
        slots_of.setdefault((p, d), []).append(Slot(*slot))
    days_of: dict[int, list[TrainingDay]] = {}
    for p, d, name, weekday in days:
        day = TrainingDay(name, tuple(slots_of.get((p, d), ())), weekday)
        days_of.setdefault(p, []).append(day)
    return tuple(
        Phase(name, weeks, tuple(days_of.get(p, ())), purpose) for p, name, weeks, purpose in phases
    )
