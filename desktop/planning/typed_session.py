"""From a draft to a session: what is wrong with it, what is doubtful, and the session itself."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from typing import Final

from desktop.planning.session_draft import (
    ACTIVITY,
    WELLNESS,
    Field,
    LineDraft,
    SessionDraft,
    SetDraft,
    asked_amount,
)
from desktop.planning.typed_cells import (
    CellKind,
    N,
    Row,
    read_amount,
    read_cell,
    read_load,
    read_mass,
    read_number,
    read_pain,
    read_reserve,
    read_whole,
)
from desktop.training.quantities import InvalidQuantity, same_load
from desktop.training.session import Activity, LineDone, Session, SetDone, Wellness

MOST_MINUTES: Final = 600
MOST_DAY: Final = 1_440
"""Minutes of another activity: a day at most."""
LineKey = tuple[str, str]


@dataclass(frozen=True, slots=True)
class CellPlace:
    """One cell: line, set, row."""

    line: int
    index: int
    row: Row


Place = CellPlace | Field


@dataclass(frozen=True, slots=True)
class Problem:
    """What cannot be taken, where; ``wrong`` carries code and values of what is allowed."""

    place: Place
    wrong: InvalidQuantity


class NotReady(ValueError):
    """The draft holds texts that cannot be taken, so there is no session of it."""


def cell_problem(draft: SessionDraft, place: CellPlace) -> InvalidQuantity | None:
    """What is wrong with one cell, None where nothing is."""
    line = draft.lines[place.line]
    each = line.sets[place.index]
    if each.as_stored:
        return None
    try:
        read_cell(place.row, each.text(place.row), line.kind)
    except InvalidQuantity as wrong:
        return wrong
    if place.row is Row.DONE and not each.done.strip() and not each.blank:
        return InvalidQuantity("say how many were done", "needs_done")
    if place.row is Row.LOAD and each.done.strip() and not loads_of(line, place.index):
        return InvalidQuantity("say the load: none was asked", "needs_load")
    return None


def in_own_unit(draft: SessionDraft, place: CellPlace) -> str:
    """The text of a load that is typed in the other unit, in the trainee's; "" elsewhere."""
    wrong = cell_problem(draft, place)
    if wrong is None or wrong.code != "other_unit":
        return ""
    return str(wrong.values["value"]).replace(".", draft.mark)


def field_problem(draft: SessionDraft, field: Field) -> InvalidQuantity | None:
    """What is wrong with one of the session's own fields, None where nothing is."""
    try:
        _read_field(draft, field)
    except InvalidQuantity as wrong:
        return wrong
    return None


def problems(draft: SessionDraft) -> tuple[Problem, ...]:
    """Everything that cannot be taken, in the order of the form."""
    found: list[tuple[Place, InvalidQuantity | None]] = [
        *((place, cell_problem(draft, place)) for place in cell_places(draft)),
        *((field, field_problem(draft, field) or _missing(draft, field)) for field in Field),
    ]
    return tuple(Problem(place, wrong) for place, wrong in found if wrong is not None)


def cell_places(draft: SessionDraft) -> Iterator[CellPlace]:
    """Every cell, in the order of the form: line by line, row by row."""
    for number, line in enumerate(draft.lines):
        for row in Row:
            for index in range(len(line.sets)):
                yield CellPlace(number, index, row)


def load_when_blank(line: LineDraft, index: int) -> int | None:
    """Grams that a blank load cell stands for: the load asked; where none was, that of the set
    before, or the line's usual one. None: it must be typed.
    """
    asked = line.sets[index].asked
    if asked is not None:
        return asked.load_g
    if line.sets[index].was:
        return line.sets[index].was[0].load_g
    if index == 0:
        return line.usual_g
    try:
        before = read_load(line.sets[index - 1].load, line.kind)
    except InvalidQuantity:
        before = ()
    return before[0] if before else load_when_blank(line, index - 1)


def loads_of(line: LineDraft, index: int) -> tuple[int, ...]:
    """The loads of a set in grams: one, or left and right; () where it must be typed.

    A text that still says what was stored stands for the stored grams.
    """
    each = line.sets[index]
    typed = read_load(each.load, line.kind)
    if not typed:
        default = load_when_blank(line, index)
        typed = () if default is None else (default,)
    return tuple(
        each.was[at].load_g
        if at < len(each.was) and same_load(load_g, each.was[at].load_g)
        else load_g
        for at, load_g in enumerate(typed)
    )


def sets_done(line: LineDraft) -> tuple[SetDone, ...]:
    """The sets that were done. Raises InvalidQuantity where a text cannot be taken."""
    return tuple(
        done
        for index, each in enumerate(line.sets)
        if each.done.strip()
        for done in _set_done(line, index)
    )


def amount_difference(line: LineDraft, index: int) -> int | None:
    """How much more (less: negative) was done than asked: repetitions, or seconds; by the weaker
    side. None where nothing was asked or done, or the text cannot be taken.
    """
    each = line.sets[index]
    asked = asked_amount(each.asked)
    try:
        done = read_amount(each.done, line.kind)
    except InvalidQuantity:
        return None
    return None if asked is None or not done else min(done) - asked


def load_difference(line: LineDraft, index: int) -> int | None:
    """How many grams more (less: negative) were lifted than asked; None as above."""
    each = line.sets[index]
    if each.asked is None or not each.load.strip():
        return None
    try:
        loads = loads_of(line, index)
    except InvalidQuantity:
        return None
    lightest = min(loads, default=each.asked.load_g)
    return 0 if same_load(lightest, each.asked.load_g) else lightest - each.asked.load_g


def body_mass_g(draft: SessionDraft) -> int | None:
    """The body mass typed, in grams; None where none was or the text cannot be taken."""
    try:
        return read_mass(draft.mass, draft.unit)
    except InvalidQuantity:
        return None


def training_load(draft: SessionDraft) -> float | None:
    """Effort times minutes, arbitrary units; None unless both are given and can be taken."""
    try:
        effort, minutes = (
            read_number(draft.effort, 0, 10),
            read_whole(draft.minutes, 0, MOST_MINUTES),
        )
    except InvalidQuantity:
        return None
    return None if effort is None or minutes is None else effort * minutes


def typed_activity(draft: SessionDraft) -> Activity | None:
    """The other activity typed; None where none is. Raises NotReady while part of it is missing
    or cannot be taken.
    """
    if not draft.has_activity:
        return None
    wrong = [field_problem(draft, field) or _missing(draft, field) for field in ACTIVITY]
    if any(wrong):
        raise NotReady(f"the activity is not complete: {next(each for each in wrong if each)}")
    minutes = read_whole(draft.activity_minutes, 1, MOST_DAY)
    effort = read_number(draft.activity_effort, 0, 10)
    assert minutes is not None
    assert effort is not None
    name = " ".join(draft.activity.split())
    return Activity(draft.trainee_id, draft.day, name, minutes, effort)


def session_of(draft: SessionDraft, line_ids: Mapping[LineKey, int]) -> Session:
    """The session that the draft says; ``line_ids`` gives lines made since, by exercise and name.

    An exercise of which nothing is done was skipped if anything was asked, and is left out
    otherwise. Raises NotReady while `problems` finds anything, or a line is missing.
    """
    found = problems(draft)
    if found:
        raise NotReady(f"{len(found)} texts cannot be taken: {found[0].wrong}")
    parts = (_line_done(line, line_ids) for line in draft.lines)
    return Session(
        trainee_id=draft.trainee_id,
        day=draft.day,
        lines=tuple(part for part in parts if part is not None),
        entry=draft.entry,
        effort=read_number(draft.effort, 0, 10),
        minutes=read_whole(draft.minutes, 0, MOST_MINUTES),
        wellness=Wellness(*(read_whole(draft.text(field), 1, 5) for field in WELLNESS)),
        note=draft.note.strip(),
        red_flag=draft.red_flag,
        program_id=draft.program_id,
        week=draft.week,
        day_name=draft.day_name,
        id=draft.session_id,
        revision=draft.revision,
    )


def lines_missing(draft: SessionDraft) -> tuple[LineKey, ...]:
    """Lines that must exist before the session can be saved: exercise and name of each."""
    return tuple(
        dict.fromkeys(
            (line.exercise, line.line_name)
            for line in draft.lines
            if line.line_id is None and _worth_keeping(line)
        )
    )


def _worth_keeping(line: LineDraft) -> bool:
    return bool(line.asked or line.note.strip() or any(s.done.strip() for s in line.sets))


def _line_done(line: LineDraft, line_ids: Mapping[LineKey, int]) -> LineDone | None:
    if not _worth_keeping(line):
        return None
    line_id = line.line_id or line_ids.get((line.exercise, line.line_name))
    if line_id is None:
        raise NotReady(f"there is no line of {line.exercise} yet")
    sets = sets_done(line)
    return LineDone(
        line_id,
        line.exercise,
        line.asked,
        sets,
        deload=line.deload,
        test=line.test,
        skipped=not any(not done.warm_up for done in sets),
        reason=line.reason,
        note=line.note.strip(),
    )


def _set_done(line: LineDraft, index: int) -> tuple[SetDone, ...]:
    each, kind = line.sets[index], line.kind
    if each.as_stored:
        return tuple(
            replace(was, variation=each.variation, tempo_s=each.tempo_s, warm_up=each.warm_up)
            for was in each.was
        )
    amounts = read_amount(each.done, kind)
    loads = loads_of(line, index)
    reserves = read_reserve(each.reserve, kind)
    pains = read_pain(each.pain, kind)
    sides = max(map(len, (amounts, loads, reserves, pains, each.was)))
    return tuple(
        replace(
            _counted(_as_it_was(each, at, sides), _at(amounts, at), hold=_is_hold(each, kind)),
            load_g=_at(loads, at),
            rir=_at(reserves, at) if reserves else None,
            pain=_at(pains, at) if pains else 0,
            variation=each.variation,
            tempo_s=each.tempo_s,
            warm_up=each.warm_up,
        )
        for at in range(sides)
    )


def _at(values: tuple[N, ...], side: int) -> N:
    return values[min(side, len(values) - 1)]


def _is_hold(each: SetDraft, kind: CellKind) -> bool:
    """Whether the amount is seconds: what was stored goes before the exercise's measure."""
    if not each.was:
        return kind.hold
    return each.was[0].reps is None and each.was[0].seconds is not None


def _counted(done: SetDone, amount: int, *, hold: bool) -> SetDone:
    return replace(done, seconds=amount) if hold else replace(done, reps=amount)


def _as_it_was(each: SetDraft, at: int, sides: int) -> SetDone:
    """What is kept of the stored set: its note, its side, and what the form does not show."""
    kept = each.was[min(at, len(each.was) - 1)] if each.was else SetDone()
    if sides == 2:
        return replace(kept, side=("left", "right")[at])
    return replace(kept, side="" if len(each.was) == 2 else kept.side)


def _missing(draft: SessionDraft, field: Field) -> InvalidQuantity | None:
    """What is missing of another activity, of which something is typed."""
    if field not in ACTIVITY or draft.text(field).strip() or not draft.has_activity:
        return None
    code = {Field.ACTIVITY: "needs_activity", Field.ACTIVITY_MINUTES: "needs_minutes"}
    return InvalidQuantity(
        "name, minutes and effort belong together", code.get(field, "needs_effort")
    )


def _read_field(draft: SessionDraft, field: Field) -> object:
    text = draft.text(field)
    match field:
        case Field.EFFORT:
            return read_number(text, 0, 10)
        case Field.MINUTES:
            return read_whole(text, 0, MOST_MINUTES)
        case Field.MASS:
            return read_mass(text, draft.unit)
        case Field.ACTIVITY_MINUTES:
            return read_whole(text, 1, MOST_DAY)
        case Field.ACTIVITY_EFFORT:
            return read_number(text, 0, 10)
        case Field.NOTE | Field.ACTIVITY:
            return text
        case _:
            return read_whole(text, 1, 5)
