"""Weeks table: what was unrolled, set out as weeks across and slots down."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace
from datetime import date, timedelta
from typing import Final

from desktop.planning.line_memory import LineMemory
from desktop.planning.outlook import Onlooker
from desktop.planning.program_weeks import (
    DaySession,
    DayWeeks,
    ProgramWeeks,
    SlotSession,
    SlotWeeks,
    WeekColumn,
)
from desktop.planning.schedule import WEEK
from desktop.planning.standing import LineKey, key_of
from desktop.planning.weeks_plan import PlannedDay, WeeksPlan, phase_of_week, unrolled, weeks_plan
from desktop.training.demand import effective_load_g
from desktop.training.limits import LimitId
from desktop.training.line_ahead import LineAhead
from desktop.training.position import Position, Surroundings
from desktop.training.program import Program, Slot, TrainingDay
from desktop.training.program_edits import SlotPlace
from desktop.training.reasons import ReasonCode
from desktop.training.recovery import Caution, no_deload
from desktop.training.session import LineDone, Session
from desktop.training.volume import exercise_of, hard_sets, sets_done
from desktop.training.weeks import target_cautions

_RANK_G: Final = 10_000_000  # harder variations weigh more than any load

_SAID: Final = frozenset({ReasonCode.IN_BETWEEN, ReasonCode.COMPLETE})

RowKey = tuple[str, str, int]
"""Exercise, line, and which of several alike on one day."""


def program_weeks(
    program: Program, onlooker: Onlooker, memory: LineMemory | None = None
) -> ProgramWeeks:
    """The whole program as ``onlooker`` sees it. Raises UnknownExercise."""
    *_, whole = weeks_in_steps(program, onlooker, memory or LineMemory())
    assert whole is not None
    return whole


def weeks_in_steps(
    program: Program, onlooker: Onlooker, memory: LineMemory
) -> Iterator[ProgramWeeks | None]:
    """The same line by line: None while more is to come, then the whole; what ``memory`` knows
    already takes no step.
    """
    plan = weeks_plan(program, onlooker)
    for _ in unrolled(plan, memory):
        yield None
    yield _Table(plan, memory).shown()


@dataclass(slots=True)
class _Row:
    """A row being filled."""

    slot: Slot
    past: list[tuple[int, Session, LineDone]] = field(default_factory=list)
    coming: list[tuple[int, date, SlotPlace]] = field(default_factory=list)
    slots: dict[SlotPlace, Slot] = field(default_factory=dict)


@dataclass(slots=True)
class _Group:
    """A training day being filled."""

    day: TrainingDay
    weeks: list[list[DaySession]]
    rows: dict[RowKey, _Row] = field(default_factory=dict)


class _Table:
    """Fills the table, first with the days that are over, then with those to come."""

    def __init__(self, plan: WeeksPlan, memory: LineMemory) -> None:
        self._plan, self._memory = plan, memory
        self._count = plan.program.weeks
        self._exercises = plan.history.library.exercises
        self._limits = plan.history.library.limits
        self._groups = self._empty_groups()
        self._sets: list[list[tuple[str, float]]] = [[] for _ in range(self._count)]

    def shown(self) -> ProgramWeeks:
        """The table filled."""
        self._fill_past()
        for each in self._plan.days:
            self._fill(each)
        plan = self._plan
        days = tuple(
            DayWeeks(
                group.day,
                tuple(map(tuple, group.weeks)),
                tuple(self._slot_weeks(at, key, row) for key, row in group.rows.items()),
            )
            for at, group in self._groups.items()
        )
        columns = self._columns()
        return ProgramWeeks(plan.program, plan.history, plan.dated, columns, days, self._memory)

    def _empty_groups(self) -> dict[object, _Group]:
        """Every day of every phase with its slots, by weekday; then the days done in turn."""
        groups: dict[object, _Group] = {}
        for phase in self._plan.program.phases:
            for day in phase.days:
                key = _group_key(day)
                group = groups.setdefault(key, _Group(day, [[] for _ in range(self._count)]))
                for row, slot in _numbered(day.slots):
                    group.rows.setdefault(row, _Row(slot))
        fixed = [key for key in groups if isinstance(key, int)]
        order = [*sorted(fixed), *(key for key in groups if not isinstance(key, int))]
        return {key: groups[key] for key in order}

    def _week(self, day: date) -> int | None:
        week = (day - self._plan.monday) // WEEK
        return week if 0 <= week < self._count else None

    # Days that are over

    def _fill_past(self) -> None:
        plan = self._plan
        if not plan.dated:
            return
        keys = {line.id: (line.exercise, line.name) for line in plan.history.lines}
        for session in plan.history.sessions:
            week = self._week(session.day)
            if week is None or not plan.assignment.start <= session.day < plan.first:
                continue
            seen: Counter[LineKey] = Counter()
            for part in session.lines:
                self._sets[week].append((part.exercise, sets_done(part)))
                key = keys.get(part.line_id)
                if key is None or part.skipped:
                    continue
                row = self._row_of(session, (*key, seen[key]))
                seen[key] += 1
                if row is not None:
                    row.past.append((week, session, part))

    def _row_of(self, session: Session, key: RowKey) -> _Row | None:
        """The row of the day that the session was; where that day has none, of any day."""
        groups = list(self._groups.values())
        likely = [
            group
            for group in groups
            if group.day.weekday == session.day.weekday() or group.day.name == session.day_name
        ]
        found = (group.rows.get(key) for group in (*likely, *groups))
        return next((row for row in found if row is not None), None)

    # Days to come

    def _fill(self, each: PlannedDay) -> None:
        week = self._week(each.day)
        if week is None:
            return
        group = self._groups[_group_key(each.planned)]
        positions: list[Position] = []
        for at, (key, slot) in enumerate(_numbered(each.planned.slots)):
            row, place = group.rows[key], SlotPlace(each.place.phase, each.place.day, at)
            row.coming.append((week, each.day, place))
            row.slots.setdefault(place, slot)
            target = self._ahead(slot).targets[each.day]
            positions.append(target.position if target.sets and target.position else slot.start)
            self._sets[week].append((slot.exercise, len(target.sets)))
        group.weeks[week].append(DaySession(each.day, each.place, each.planned, tuple(positions)))

    def _ahead(self, slot: Slot) -> LineAhead:
        ahead = self._memory.ahead(key_of(slot))
        assert ahead is not None
        return ahead

    def _slot_weeks(self, group: object, key: RowKey, row: _Row) -> SlotWeeks:
        """The row; as it was before where nothing of it has changed."""
        ahead = self._memory.ahead(key_of(row.slot))
        past = tuple((week, session.day) for week, session, _ in row.past)
        inputs = (self._count, past, tuple(row.coming), row.slots, row.slot)

        def make() -> SlotWeeks:
            around = ahead.last.surroundings if ahead is not None else Surroundings()
            exercise = exercise_of(self._exercises, row.slot.exercise)
            cells = self._cells(row)
            return SlotWeeks(exercise, row.slot, around, cells, _shades(cells, around))

        return self._memory.row((group, key), ahead, inputs, make)

    def _cells(self, row: _Row) -> tuple[tuple[SlotSession, ...], ...]:
        """What is over, then what is to come; what goes on from one session to the next is said
        once.
        """
        weeks: list[list[SlotSession]] = [[] for _ in range(self._count)]
        for week, session, part in row.past:
            weeks[week].append(_done(session, part, row.slot))
        before: ReasonCode | None = None
        for week, day, place in row.coming:
            made = _session(day, row.slots[place], place, self._ahead(row.slots[place]))
            assert made.target is not None
            code = made.target.reason.code
            if code in _SAID and code is not before:
                made = replace(made, cautions=target_cautions(made.target, self._limits))
            weeks[week].append(made)
            before = code
        return tuple(map(tuple, weeks))

    # Weeks

    def _columns(self) -> tuple[WeekColumn, ...]:
        plan = self._plan
        today = plan.first if plan.dated else None
        columns: list[WeekColumn] = []
        said: set[date] = set()
        for week in range(self._count):
            first = plan.monday + week * WEEK
            last = first + timedelta(days=6)
            column = WeekColumn(
                number=week + 1,
                first=first,
                phase=phase_of_week(plan.program, week + 1),
                easier=any(w.first <= last and w.last >= first for w in plan.deloads),
                proposed=any(w.first <= last and w.last >= first for w in plan.proposed),
                now=today is not None and first <= today <= last,
                volume=hard_sets(
                    (exercise_of(self._exercises, key), sets) for key, sets in self._sets[week]
                ),
            )
            columns.append(replace(column, cautions=self._no_deload(column, said)))
        return tuple(columns)

    def _no_deload(self, column: WeekColumn, said: set[date]) -> tuple[Caution, ...]:
        """No easier week for long: said once for each span, in its first week."""
        plan = self._plan
        if column.easier or column.proposed or column.first + WEEK <= plan.first:
            return ()
        windows = (*plan.deloads, *plan.proposed)
        ended = [window.last for window in windows if window.last < column.first]
        since = max(ended, default=plan.assignment.start)
        if since in said:
            return ()
        limit = self._limits[LimitId.NO_DELOAD]
        caution = no_deload(limit, since, column.first, plan.history.trainee.experience)
        if caution is None:
            return ()
        said.add(since)
        return (caution,)


def _group_key(day: TrainingDay) -> object:
    return day.weekday if day.weekday is not None else f"in turn: {day.name}"


def _numbered(slots: Sequence[Slot]) -> Iterator[tuple[RowKey, Slot]]:
    seen: Counter[LineKey] = Counter()
    for slot in slots:
        key = key_of(slot)
        yield (*key, seen[key]), slot
        seen[key] += 1


def _session(day: date, slot: Slot, place: SlotPlace, ahead: LineAhead) -> SlotSession:
    target = ahead.targets[day]
    return SlotSession(
        day,
        slot,
        target.position if target.sets else None,
        place,
        target,
        deload=target.deload,
        rolls_over=target.reason.code is ReasonCode.ROLL_OVER and not target.deload,
    )


def _done(session: Session, part: LineDone, slot: Slot) -> SlotSession:
    """A session that is over, as it was asked; as it was done where nothing was asked."""
    asked, sets = part.asked, part.working_sets
    position = None
    if asked:
        lead = asked[0]
        position = Position(
            lead.load_g, lead.reps, len(asked), lead.seconds, lead.tempo_s, lead.variation
        )
    elif sets:
        first = sets[0]
        position = Position(
            first.load_g, first.reps, len(sets), first.seconds, None, first.variation
        )
    return SlotSession(session.day, slot, position, done=part, deload=part.deload)


def _shades(
    cells: Sequence[Sequence[SlotSession]], around: Surroundings
) -> tuple[float | None, ...]:
    """How hard each week's last session is between the row's easiest (0) and hardest (1)."""
    found = [_difficulty(cell[-1].position, around) if cell else None for cell in cells]
    known = [each for each in found if each is not None]
    if not known or max(known) - min(known) < 1:
        return (None,) * len(cells)
    low, span = min(known), max(known) - min(known)
    return tuple(None if each is None else (each - low) / span for each in found)


def _difficulty(position: Position | None, around: Surroundings) -> float | None:
    """Grams of effective load; where a variation's share is not known, its rank and the load."""
    if position is None:
        return None
    shares_known = all(each.share is not None for each in around.scale)
    if not around.scale or (shares_known and around.body_mass_g is not None):
        return effective_load_g(position.load_g, position.variation, around)
    keys = [each.key for each in around.scale]
    rank = keys.index(position.variation) if position.variation in keys else 0
    return rank * _RANK_G + position.load_g
